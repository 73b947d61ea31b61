#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes from lib/abi/api.json, for tests/fuzz, a C function for each export, which draws its arguments from the bytes
of a fuzzer: arrays and texts lie in memory just as large as the call is told.

    calls.py code        the functions, and the list of them
    calls.py dictionary  the bytes that name each call, for the fuzzer to put in
"""
import json
import sys
import zlib
from pathlib import Path
from typing import Any, Dict, List

ROOT = Path(__file__).resolve().parent.parent.parent
LICENCE = "/* Written by tests/fuzz/calls.py.\n *\n * SPDX-License-Identifier: MIT */\n"
WIDTH = {"uint32_t": 4, "int32_t": 4, "int64_t": 8, "uint64_t": 8, "muslin_len": 8, "muslin_id": 8, "muslin_status": 4,
         "char": 1}
SLOTS = {"muslin_quilt": "quilt", "muslin_solution": "solution", "muslin_pressing": "pressing",
         "muslin_yardage": "yardage", "muslin_cutplan": "plan"}
# What is made of a handle is given back before it.
MADE_OF = {"quilt": ["pressing", "solution"], "solution": ["pressing"]}
FABRIC, MEASURE, NODE = 1, 2, 3
# Ids that are measures; those that are fabrics say so; all others are nodes.
MEASURES = {"width", "height", "left_width", "right_width", "top_width", "bottom_width", "measure", "corner", "sash",
            "set_off"}
MEASURED = {"muslin_quilt_trim_spec", "muslin_quilt_patch_spec"} # so are the sides of these

Record = Dict[str, Any]


def key(name: str) -> int:
    """24 bits of its checksum."""
    return zlib.crc32(name.encode()) >> 8


def sort_of(name: str, struct: str = "") -> int:
    if name in ("id", "ids"):
        return 0
    if "fabric" in name:
        return FABRIC
    sides = struct in MEASURED and name in ("left", "right", "top", "bottom")
    return MEASURE if sides or name in MEASURES else NODE


class Writer:
    def __init__(self, api: Record) -> None:
        self.api = api
        self.structs = {struct["name"]: struct for struct in api["structs"]}
        self.enums = {enum["name"]: max(enum["values"].values()) for enum in api["enums"]}
        self.inits = {init["struct"] for init in api["inits"]}
        self.constants = {constant["name"]: constant["value"] for constant in api["constants"]}

    # ---- structs ----------------------------------------------------------------------------------------------------

    def member(self, struct: str, member: Record) -> str:
        kind, most = "A_NUMBER", 0
        if member["type"] == "muslin_id":
            kind, most = "AN_ID", sort_of(member["name"], struct)
        elif member["type"] == "int32_t" and member.get("enum") in self.enums:
            kind, most = "A_CHOICE", self.enums[member["enum"]]
        elif member["name"] == "places":
            kind = "THE_PLACES"
        elif member["name"] == "work_limit":
            kind = "THE_WORK_LIMIT"
        return f"{{ {member['offset']}, {WIDTH[member['type']]}, {kind}, {most} }}"

    def form(self, struct: Record) -> List[str]:
        name = struct["name"]
        members = [self.member(name, member) for member in struct["members"]
                   if member["name"] not in ("size", "flags") and not member["name"].startswith("pad")
                   and "count" not in member]
        flags = sum(self.constants[flag] for flag in struct.get("flags", []))
        lines = [f"static const struct member members_of_{name}[] = {{"]
        lines += [f"    {member}," for member in members] + ["};"]
        if name in self.inits:
            lines += [f"static muslin_status begin_{name}(void *spec, uint32_t size)", "{",
                      f"    return {name}_init(spec, size);", "}"]
        begin = f"begin_{name}" if name in self.inits else "NULL"
        return lines + [f"static const struct form form_of_{name} = {{ sizeof(struct {name}), {len(members)}, "
                        f"members_of_{name}, {begin}, {flags} }};", ""]

    # ---- functions --------------------------------------------------------------------------------------------------

    def of_tree(self, function: Record) -> bool:
        names = {argument["type"].replace("struct ", "") for argument in function["arguments"]}
        return bool(names & set(SLOTS)) or any(argument["type"] == "muslin_id" for argument in function["arguments"])

    def number(self, argument: Record) -> str:
        enum = argument.get("enum", f"muslin_{argument['name']}")
        if argument["type"] == "muslin_id":
            return f"draw_id(&call, {sort_of(argument['name'])})"
        if argument["type"] in ("int32_t", "uint32_t"):
            return f"({argument['type']})draw_choice(&call, {self.enums.get(enum, 12)})"
        return f"({argument['type']})draw_number(input)"

    def struct(self, function: str, arguments: List[Record], at: int, made: Dict[str, str]) -> List[str]:
        """The lines that give a struct, or an array of them, and its sizes."""
        argument, struct = arguments[at], arguments[at]["type"].replace("struct ", "")
        name, form = argument["name"], f"&form_of_{struct}"
        if function.endswith("_init"):
            made.update({name: name, "size": "size"})
            return [f"    const uint32_t size = draw_size(&call, sizeof(struct {struct}));",
                    f"    void *{name} = give_output(&call, size < 8 || size > 4096 ? 8 : size);"]
        made[name] = name
        if name == "problem":
            return ["    struct muslin_problem *problem = give_problem(&call);"]
        sizes = [other["name"] for other in arguments[at + 1:at + 3] if other["type"] == "size_t" and
                 "pointer" not in other]
        if len(sizes) == 2:
            made.update({size: size for size in sizes})
            asked = argument.get("const") or struct in self.inits and sizes[1] == "n"
            draw = "draw_rows" if asked else "give_rows"
            return [f"    size_t {sizes[0]}, {sizes[1]};",
                    f"    struct {struct} *{name} = {draw}(&call, {form}, &{sizes[0]}, &{sizes[1]});"]
        draw = "draw_spec" if argument.get("const") else "give_struct"
        return [f"    struct {struct} *{name} = {draw}(&call, {form});"]

    def array(self, function: Record, arguments: List[Record], at: int, made: Dict[str, str]) -> List[str]:
        """The lines that give numbers, texts, or room for them."""
        argument, name, kind = arguments[at], arguments[at]["name"], arguments[at]["type"]
        made[name] = name
        following = [other["name"] for other in arguments[at + 1:] if other["type"] == "size_t" and
                     "pointer" not in other]
        if argument.get("const") and kind == "char":
            made[following[0]] = following[0]
            return [f"    size_t {following[0]};", f"    char *{name} = draw_text(&call, &{following[0]});"]
        if argument.get("const"):
            length, lines = "", []
            if name == "given":
                length = "(size_t)(call.places > 0 ? call.places : 0)"
            else:
                length = following[0]
                if length not in made:
                    made[length] = length
                    lines = [f"    const size_t {length} = draw_n(&call);"]
            draw = {"muslin_id": f"draw_ids(&call, {length}, {sort_of(name)})",
                    "int32_t": f"draw_words(&call, {length})"}.get(kind, f"draw_numbers(&call, {length})")
            optional = "draw_below(input, 2) == 0 ? NULL : " if name == "given" else ""
            return lines + [f"    {kind} *{name} = {optional}{draw};"]
        rest = [other["name"] for other in arguments[at + 1:at + 2]]
        if rest in (["cap"], ["capacity"]):
            made[rest[0]] = rest[0]
            return [f"    const size_t {rest[0]} = draw_below(input, 80);",
                    f"    {kind} *{name} = give_output(&call, {rest[0]} * sizeof *{name});"]
        if name == "count":
            capacity = "corner_capacity" if "corner_capacity" in made else "capacity"
            plain = "capacity" in made and "corner_capacity" not in made
            return [f"    size_t *count = give_count(&call, {capacity});"] if plain else \
                [f"    size_t *count = give_output(&call, sizeof *count);"]
        several = "1"
        if function["name"].endswith("_n") and name in ("out", "statuses"):
            several = "n"
        elif name in ("out", "places") and function["name"].startswith("muslin_scatter_"):
            several = "ROOM" if name == "out" else "1"
        optional = "draw_below(input, 4) == 0 ? NULL : " if name in ("statuses", "failed") else ""
        return [f"    {kind} *{name} = {optional}give_output(&call, {several} * sizeof *{name});"]

    def handle(self, function: Record, argument: Record, made: Dict[str, str]) -> List[str]:
        slot = SLOTS[argument["type"].replace("struct ", "")]
        if argument["pointer"] == 1:
            made[argument["name"]] = f"tree->{slot}"
            return []
        made[argument["name"]] = "&made"
        const = "const " if argument.get("const") else ""
        return [f"    {const}{argument['type']} *made = NULL;"]

    def after(self, function: Record) -> List[str]:
        """What is kept of what a call made."""
        lines = []
        for argument in function["arguments"]:
            slot = SLOTS.get(argument["type"].replace("struct ", ""))
            if slot and argument["pointer"] == 2 and not argument.get("const"):
                lines.append("    MUST((status == MUSLIN_OK) == (made != NULL));")
                lines.append("    if (made != NULL) {")
                if slot == "quilt":
                    lines.append("        tree_free(tree);")
                else:
                    for of in MADE_OF.get(slot, []) + [slot]:
                        handle = next(name for name, other in SLOTS.items() if other == of)
                        lines += [f"        {handle}_free(tree->{of});", f"        tree->{of} = NULL;"]
                lines += [f"        tree->{slot} = made;", "    }"]
            elif argument["type"] == "muslin_id" and argument.get("pointer") and not argument.get("const") and \
                    argument["name"] == "out":
                lines.append("    keep_id(&call, status, *out);")
        return lines

    def free(self, function: Record) -> List[str]:
        slot = SLOTS[function["arguments"][0]["type"].replace("struct ", "")]
        if slot == "quilt":
            return ["    tree_free(tree);"]
        lines = []
        for of in MADE_OF.get(slot, []) + [slot]:
            handle = next(name for name, other in SLOTS.items() if other == of)
            lines += [f"    {handle}_free(tree->{of});", f"    tree->{of} = NULL;"]
        return lines

    def function(self, function: Record) -> List[str]:
        name, arguments = function["name"], function["arguments"]
        lines = [f"static muslin_status make_{name}(struct input *input, struct tree *tree, "
                 "struct failing_allocator *failing)", "{", "    struct call call;",
                 "    call_start(&call, input, tree, failing);"]
        if name.endswith("_free"):
            return lines + self.free(function) + ["    return call_end(&call, MUSLIN_OK, NULL);", "}", ""]
        if name.endswith("_n"):
            lines.append("    call.in_part = 1;")
        made: Dict[str, str] = {}
        for at, argument in enumerate(arguments):
            kind = argument["type"].replace("struct ", "")
            if argument["name"] in made:
                continue
            if name == "muslin_allocator_libc":
                made["out"] = "&allocator"
                lines.append("    struct muslin_allocator allocator;")
            elif kind == "muslin_allocator":
                made["allocator"] = "allocator"
                lines.append("    const struct muslin_allocator *allocator = draw_allocator(&call);")
            elif kind == "muslin_progress":
                made["progress"] = "progress"
                lines.append("    const muslin_progress progress = draw_progress(&call);")
            elif kind == "void":
                made["context"] = "context"
                lines.append("    void *context = draw_below(input, 2) == 0 ? NULL : failing;")
            elif kind in SLOTS:
                lines += self.handle(function, argument, made)
            elif argument["type"].startswith("struct "):
                lines += self.struct(name, arguments, at, made)
            elif "pointer" in argument:
                lines += self.array(function, arguments, at, made)
            else:
                made[argument["name"]] = argument["name"]
                lines.append(f"    const {argument['type']} {argument['name']} = {self.number(argument)};")
        asked = f"{name}({', '.join(made[argument['name']] for argument in arguments)})"
        returned = function["returns"]
        if returned.get("pointer"):
            return lines + [f"    MUST({asked} != NULL);", "    return call_end(&call, MUSLIN_OK, NULL);", "}", ""]
        if returned["type"] != "muslin_status":
            return lines + [f"    (void){asked};", "    return call_end(&call, MUSLIN_OK, NULL);", "}", ""]
        problem = "problem" if "problem" in made else "NULL"
        return lines + [f"    const muslin_status status = {asked};"] + self.after(function) + \
            [f"    return call_end(&call, status, {problem});", "}", ""]

    def write(self) -> str:
        lines = ['#include "draw.h"', ""]
        asked = {argument["type"].replace("struct ", "") for function in self.api["functions"]
                 for argument in function["arguments"]}
        for struct in self.api["structs"]:
            if struct["name"] in asked - {"muslin_problem"} and not struct.get("frozen"):
                lines += self.form(struct)
        for function in self.api["functions"]:
            lines += self.function(function)
        lines.append("const struct known_call known_calls[] = {")
        for function in self.api["functions"]:
            name = function["name"]
            lines.append(f"    {{ \"{name}\", make_{name}, {key(name)}, {int(self.of_tree(function))} }},")
        return LICENCE + "\n".join(lines + ["};", "const size_t known_count = sizeof known_calls / sizeof known_calls[0];"])


def dictionary(api: Record) -> str:
    words = ["".join(f"\\x{byte:02x}" for byte in key(function["name"]).to_bytes(3, "big"))
             for function in api["functions"]]
    return "\n".join(f'"{word}"' for word in words)


def main() -> int:
    api = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))
    keys = [key(function["name"]) for function in api["functions"]]
    if len(set(keys)) < len(keys):
        print("two exports have one key: take another hash", file=sys.stderr)
        return 1
    what, = sys.argv[1:]
    print({"code": lambda: Writer(api).write(), "dictionary": lambda: dictionary(api)}[what]())
    return 0


if __name__ == "__main__":
    sys.exit(main())
