#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes C from lib/abi/api.json.

    layout.py layout     a program that prints each public struct's members with offset and size, each enum value and
                         each constant: the table recorded in layout.txt, which must come out the same on every target
    layout.py inits      a file, valid as C99 and C++11, that starts a struct from each ..._SPEC_INIT
    layout.py members    the members of each struct as a string of their widths, for tests/golden
    layout.py asserts    a file that compiles only where the table is as recorded: for targets whose programs are not run
    layout.py rules      no C: says which struct breaks the layout rules

The table leaves out the library's version, which changes with every release, and struct muslin_allocator, whose
pointers are as wide as the target's. When a change is meant, run the layout program into layout.txt and give the reason
in the commit.
"""
import json
import sys
from pathlib import Path
from typing import Any, Dict, List

ROOT = Path(__file__).resolve().parent.parent.parent
WIDTH = {"uint32_t": 4, "int32_t": 4, "int64_t": 8, "uint64_t": 8, "muslin_len": 8, "muslin_id": 8, "muslin_status": 4,
         "char": 1}
LICENCE = "/* Written by tests/abi/layout.py.\n *\n * SPDX-License-Identifier: MIT */\n"

Record = Dict[str, Any]


def sized_structs(api: Record) -> List[Record]:
    return [struct for struct in api["structs"] if not struct.get("frozen")]


def layout(api: Record) -> List[str]:
    lines = ["#include <muslin/muslin.h>", "#include <stddef.h>", "#include <stdio.h>", "",
             "#define STRUCT(of) printf(#of \" %u\\n\", (unsigned)sizeof(struct of));",
             "#define MEMBER(of, name) printf(\"  %u %u \" #name \"\\n\", (unsigned)offsetof(struct of, name), \\",
             "                                (unsigned)sizeof((struct of *)0)->name);",
             "#define NUMBER(name) printf(\"  %lld \" #name \"\\n\", (long long)(name));", "",
             "int main(void)", "{"]
    for struct in sized_structs(api):
        lines.append(f"    STRUCT({struct['name']})")
        lines += [f"    MEMBER({struct['name']}, {member['name']})" for member in struct["members"]]
    for enum in api["enums"]:
        lines.append(f"    puts(\"{enum['name']}\");")
        lines += [f"    NUMBER({name})" for name in enum["values"]]
    lines.append("    puts(\"constants\");")
    lines += [f"    NUMBER({constant['name']})" for constant in api["constants"]
              if not constant["name"].startswith("MUSLIN_VERSION")]
    return lines + ["    return 0;", "}"]


def asserts(_: Record) -> List[str]:
    lines = ["#include <muslin/muslin.h>", "#include <stddef.h>", "",
             "#define HOLDS(what) _Static_assert(what, #what);"]
    of = ""
    for line in (ROOT / "tests" / "abi" / "layout.txt").read_text(encoding="utf-8").splitlines():
        words = line.split()
        if line.startswith("  ") and len(words) == 3:
            offset, width, member = words
            lines.append(f"HOLDS(offsetof(struct {of}, {member}) == {offset} && "
                         f"sizeof((struct {of} *)0)->{member} == {width})")
        elif line.startswith("  "):
            lines.append(f"HOLDS({words[1]} == {words[0]})")
        elif len(words) == 2:
            of = words[0]
            lines.append(f"HOLDS(sizeof(struct {of}) == {words[1]})")
    return lines


def inits(api: Record) -> List[str]:
    lines = ["#include <muslin/muslin.h>", "#include <stdio.h>", "#include <string.h>", "", "int main(void)", "{",
             "    int wrong = 0;"]
    for init in api["inits"]:
        struct = init["struct"]
        lines += ["    {",
                  f"        struct {struct} macro = {init['name']};",
                  f"        struct {struct} call;",
                  "        memset(&call, 0xa5, sizeof call);",
                  f"        if ({struct}_init(&call, (uint32_t)sizeof call) != MUSLIN_OK || "
                  "memcmp(&macro, &call, sizeof call) != 0) {",
                  f"            puts(\"{init['name']} and {struct}_init differ\");",
                  "            wrong++;",
                  "        }",
                  "    }"]
    return lines + [f"    printf(\"{len(api['inits'])} initial values, %d wrong\\n\", wrong);",
                    "    return wrong != 0;", "}"]


def members(api: Record) -> List[str]:
    """One digit a member; text is left out."""
    lines = []
    for struct in sized_structs(api):
        widths = "".join(str(WIDTH[member["type"]]) * member.get("count", 1) for member in struct["members"]
                         if member["type"] != "char")
        lines.append(f"#define MEMBERS_{struct['name']} \"{widths}\"")
    return lines


def broken_rules(struct: Record) -> List[str]:
    """size and flags first, fixed-width members without gaps, 64-bit ones at multiples of 8, the whole one too."""
    wrong = []
    begin = [(member["name"], member["type"]) for member in struct["members"][:2]]
    if begin != [("size", "uint32_t"), ("flags", "uint32_t")]:
        wrong.append("does not begin with size and flags")
    end = 0
    for member in struct["members"]:
        width = WIDTH.get(member["type"])
        if width is None:
            wrong.append(f"{member['name']} has no fixed width")
            continue
        if member["offset"] != end:
            wrong.append(f"gap before {member['name']}")
        if member["offset"] % width:
            wrong.append(f"{member['name']} is not aligned")
        end = member["offset"] + width * member.get("count", 1)
    if end != struct["bytes"] or end % 8:
        wrong.append("does not end at a multiple of 8")
    return [f"struct {struct['name']}: {text}" for text in wrong]


def main(arguments: List[str]) -> int:
    api = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))
    if arguments == ["rules"]:
        wrong = [text for struct in sized_structs(api) for text in broken_rules(struct)]
        frozen = [struct["name"] for struct in api["structs"] if struct.get("frozen")]
        if frozen != ["muslin_allocator"]:
            wrong.append(f"structs with pointers: {frozen}; only muslin_allocator may be one")
        print("\n".join(wrong + [f"{len(sized_structs(api))} structs, {len(wrong)} wrong"]))
        return 1 if wrong else 0
    writers = {"layout": layout, "inits": inits, "members": members, "asserts": asserts}
    which, = arguments
    print(LICENCE + "\n".join(writers[which](api)))
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
