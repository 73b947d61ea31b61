#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes a C++ program that asks every function of the library twice, once through C and once through the headers of
bindings/cpp, and compares status, problem and every byte of what comes back.

usage: every_call.py FILE

The C side is written here from lib/abi/api.json, on its own: nothing of bindings/cpp/generate.py is used. Requests come
from a row of numbers by chance: initial values, some of whose members are other values that are likely to be taken, so
that every function both answers and refuses. every_call.hpp has the numbers, the two quilts that are asked about, and
the comparisons.
"""
import json
import re
import sys
from pathlib import Path
from typing import Any, Dict, List, Tuple

ROOT = Path(__file__).resolve().parent.parent.parent
API = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))

Record = Dict[str, Any]

STRUCTS: Dict[str, Record] = {struct["name"]: struct for struct in API["structs"]}
ENUMS: Dict[str, Record] = {enum["name"]: enum for enum in API["enums"]}
INITS = {init["struct"]: init["name"] for init in API["inits"]}
HANDLES: Dict[str, Record] = {handle["name"]: handle for handle in API["handles"]}
FREE = {handle["free"] for handle in API["handles"]}
MOST_ROWS = 4096
KINDS = {"muslin_len": "length", "muslin_id": "node"}
CPP = {"muslin_len": "muslin::length", "muslin_id": "muslin::id", "int64_t": "std::int64_t", "int32_t": "std::int32_t",
       "muslin_status": "muslin::status"}


def cpp_name(name: str) -> str:
    return re.sub("^(struct )?muslin_", "", name)


def struct_of(argument: Record) -> str:
    of = str(argument["type"])
    return of[len("struct "):] if of.startswith("struct ") else ""


# ---- requests -------------------------------------------------------------------------------------------------------

def enum_of(holder: Record) -> str:
    """The enum of an integer, told by a comment or by its name."""
    for name in (holder.get("enum", ""), f"muslin_{holder['name']}"):
        if name in ENUMS and holder["type"] in ("int32_t", "uint32_t"):
            return str(name)
    return ""


def value_of(holder: Record, struct: str = "") -> str:
    """An expression for a value by chance."""
    enum, of, name = enum_of(holder), holder["type"], holder["name"]
    if name == "mirrored":
        return "from.yes()"
    if enum:
        return f"from.one_of({{{', '.join(map(str, ENUMS[enum]['values'].values()))}}})"
    if of == "muslin_id":
        for kind in ("fabric", "measure"):
            if kind in name or kind == "measure" and re.search("width|height|length|border|sash|log|first|cell", name):
                return f"from.{kind}()"
        return "from.part()" if name == "id" else "from.node()"
    if of == "muslin_len":
        return "from.length()"
    return "from.small()"


def vary(struct: Record) -> List[str]:
    """A function that gives some members of a struct other values."""
    lines = [f"inline void vary(muslin::{cpp_name(struct['name'])} *, {struct['name']} &it, requests &from)", "{",
             f"    it = {INITS[struct['name']]};" if struct["name"] in INITS else "    it = {};",
             "    it.size = sizeof it;", "    (void)from;"]
    for flag in struct.get("flags", []):
        lines.append(f"    if (from.now_and_then()) it.flags |= {flag};")
    for member in struct["members"]:
        name = member["name"]
        if name in ("size", "flags", "tag", "decimal_sign") or name.startswith("pad") or "count" in member:
            continue
        lines += [f"    if (it.{name} == 0 ? from.mostly() : from.often())",
                  f"        it.{name} = static_cast<decltype(it.{name})>({value_of(member)});"]
    return [*lines, "    known(it, from);", "}", ""]


# ---- one function ---------------------------------------------------------------------------------------------------

class Asked:
    """One function asked twice: lines that prepare, what C gets, what C++ gets, and what is compared."""

    def __init__(self, function: Record) -> None:
        self.function, self.name = function, function["name"]
        self.arguments: List[Record] = function["arguments"]
        self.names = [argument["name"] for argument in self.arguments]
        self.before: List[str] = []
        self.c: List[str] = []
        self.cpp: List[str] = []
        self.outputs: List[Tuple[str, str]] = []  # C++ member, C expression
        self.after: List[str] = []
        self.method = ""
        self.makes = ""
        self.many = "statuses" in self.names
        self.paged = sum(name.endswith("capacity") for name in self.names) == 2
        self.counted = ""
        at = 0
        while at < len(self.arguments):
            at += self.take(at)

    def following(self, at: int, count: int = 1) -> str:
        return str(self.names[at + count]) if at + count < len(self.names) else ""

    def take(self, at: int) -> int:
        argument = self.arguments[at]
        name, of, const, pointer = argument["name"], argument["type"], argument.get("const"), argument.get("pointer", 0)
        struct = struct_of(argument)
        if struct == "muslin_problem":
            self.c.append("&problem")
        elif struct == "muslin_allocator":
            self.c.append("&from.allocator")
            self.cpp.append("from.allocator")
        elif struct in HANDLES:
            self.take_handle(at, name, struct, pointer, bool(const))
        elif struct and self.following(at).endswith("_size"):
            return self.take_rows(at, name, struct, bool(const))
        elif struct:
            self.take_struct(name, struct, bool(const))
        elif of == "muslin_progress":
            self.c += ["nullptr", "nullptr"]
            return 2
        elif of == "char":
            return self.take_text(name, bool(const))
        elif of == "size_t":
            self.take_size(name, pointer)
        elif pointer:
            return self.take_numbers(at, argument)
        else:
            self.take_number(argument)
        return 1

    def take_handle(self, at: int, name: str, struct: str, pointer: int, const: bool) -> None:
        if pointer == 2:
            self.before.append(f"    {'const ' if const else ''}{struct} *{name} = nullptr;")
            self.c.append(f"&{name}")
            self.makes = name
            self.after += [] if const else [f"    {HANDLES[struct]['free']}({name});"]
            return
        which = cpp_name(struct)
        self.c.append(f"from.c_{which}()")
        prefix = f"muslin_{which}_"
        if at == 0 and self.name.startswith(prefix) and not any(a.get("pointer") == 2 and struct_of(a) == struct
                                                                for a in self.arguments):
            self.method = f"from.cpp_{which}()."
        else:
            self.cpp.append(f"from.cpp_{which}()")

    def take_struct(self, name: str, struct: str, const: bool) -> None:
        twin = f"muslin::{cpp_name(struct)}"
        self.before.append(f"    {struct} {name} = {{}};")
        if const:
            self.before.append(f"    vary(static_cast<{twin} *>(nullptr), {name}, from);")
            self.cpp.append(f"twin<{twin}>({name})")
        else:
            self.before.append(f"    {name}.size = sizeof {name};")
            self.outputs.append((name, name))
        self.c.append(f"&{name}")

    def take_rows(self, at: int, name: str, struct: str, const: bool) -> int:
        twin = f"muslin::{cpp_name(struct)}"
        if not const and "capacity" in self.names:
            self.before.append(f"    std::vector<{struct}> {name}({MOST_ROWS});")
            if self.paged:
                self.before.append(f"    std::vector<{twin}> {name}_too = twins<{twin}>({name});")
                self.c += [f"{name}.data()", f"sizeof({struct})", str(MOST_ROWS)]
                self.cpp.append(f"{name}_too")
                self.after.append(f"    same_bytes({name}_too.data(), {name}.data(), {name}.size() * sizeof({struct}));")
                return 3
            self.before.append(f"    std::size_t {name}_count = 0;")
            self.c += [f"{name}.data()", f"sizeof({struct})", str(MOST_ROWS), f"&{name}_count"]
            self.outputs.append((name, f"cut_to({name}, {name}_count)"))
            return 4
        self.before += [f"    std::vector<{struct}> {name}(from.rows());",
                        f"    for ({struct} &row : {name}) vary(static_cast<{twin} *>(nullptr), row, from);",
                        f"    known({name}, from);", f"    std::vector<{twin}> {name}_too = twins<{twin}>({name});"]
        self.c += [f"{name}.data()", f"sizeof({struct})", f"{name}.size()"]
        self.cpp.append(f"{name}_too")
        if not const:
            self.after.append(f"    same_bytes({name}_too.data(), {name}.data(), {name}.size() * sizeof({struct}));")
        return 3

    def take_text(self, name: str, const: bool) -> int:
        if const:
            self.before.append(f"    const std::string {name} = from.text();")
            self.c += [f"{name}.data()", f"{name}.size()"]
            self.cpp.append(name)
            return 2
        self.before += ["    char text[256] = {};", "    std::size_t need = 0;"]
        self.c += ["text", "sizeof text", "&need"]
        self.outputs.append(("text", "std::string(text)"))
        return 3

    def take_size(self, name: str, pointer: int) -> None:
        if not pointer:
            self.c.append(f"{self.counted}.size()")
            return
        self.before.append(f"    std::size_t {name} = 0;")
        self.c.append(f"&{name}")
        if name != "failed":
            self.outputs.append((name, name))

    def take_numbers(self, at: int, argument: Record) -> int:
        name, of = argument["name"], argument["type"]
        if not argument.get("const") and self.following(at) == "capacity":
            self.before += [f"    std::vector<{of}> {name}({MOST_ROWS});", f"    std::size_t {name}_count = 0;"]
            self.c += [f"{name}.data()", str(MOST_ROWS), f"&{name}_count"]
            self.outputs.append((name, f"cut_to({name}, {name}_count)"))
            return 3
        if self.many and name == "statuses":
            self.before += [f"    std::vector<muslin_status> statuses(from.often() ? {self.counted}.size() : 0);",
                            "    std::vector<muslin::status> statuses_too(statuses.size());"]
            self.c.append("statuses.empty() ? nullptr : statuses.data()")
            self.cpp.append("statuses_too")
            self.after.append("    same_bytes(statuses_too.data(), statuses.data(), 4 * statuses.size());")
        elif self.many and not argument.get("const"):
            self.before += [f"    std::vector<{of}> {name}({self.counted}.size());",
                            f"    std::vector<{CPP[of]}> {name}_too({self.counted}.size());"]
            self.c.append(f"{name}.data()")
            self.cpp.append(f"{name}_too")
            self.after.append(f"    same_bytes({name}_too.data(), {name}.data(), {name}.size() * sizeof({of}));")
        elif argument.get("const"):
            self.take_array(name, argument)
        elif name == "out" and any(m["name"] == "places" for a in self.arguments if a["name"] == "spec"
                                   for m in STRUCTS[struct_of(a)]["members"]):
            self.before.append(f"    std::vector<{of}> {name}(from.places(spec.places));")
            self.c.append(f"{name}.data()")
            self.outputs.append((name, name))
        else:
            self.before.append(f"    {of} {name} = 0;")
            self.c.append(f"&{name}")
            self.outputs.append((name, name))
        return 1

    def take_array(self, name: str, argument: Record) -> None:
        of = argument["type"]
        if name == "given":
            self.before += [f"    std::vector<{of}> {name}(from.often() ? from.places(spec.places) : 0, -1);"]
            self.c.append(f"{name}.empty() ? nullptr : {name}.data()")
        else:
            size = f"{self.counted}.size()" if self.counted and (self.many or self.names.index(name) and
                                                                 name == "counts") else "from.rows()"
            self.before += [f"    std::vector<{of}> {name}({size});",
                            f"    for ({of} &number : {name}) number = static_cast<{of}>({value_of(argument)});"]
            self.c.append(f"{name}.data()")
            self.counted = self.counted if self.many and self.counted else name
        self.cpp.append(f"span_of<{CPP[of]}>({name})")

    def take_number(self, argument: Record) -> None:
        name, of = argument["name"], argument["type"]
        told = {"muslin_status": "muslin::status"}.get(of, "auto")
        self.before.append(f"    const {of} {name} = static_cast<{of}>({value_of(argument)});")
        self.c.append(name)
        self.cpp.append(f"given<{told}>({name})" if told != "auto" else f"any{{{name}}}")

    # ---- what is written ----

    def compare(self) -> List[str]:
        if self.many:
            return [f"same(got, {self.counted}.size());"]
        if self.makes and not self.outputs:
            return [f"same(static_cast<bool>(got), {self.makes} != nullptr);"]
        if len(self.outputs) == 1:
            return [f"same(got, {self.outputs[0][1]});"]
        return [f"same(got.{member}, {value});" for member, value in self.outputs]

    def lines(self) -> List[str]:
        own = next((f"muslin_{cpp_name(handle)}_" for handle in HANDLES
                    if self.method == f"from.cpp_{cpp_name(handle)}()."), "muslin_")
        call = f"{self.method or 'muslin::'}{self.name[len(own):]}"
        handle = next((struct_of(a) for a in self.arguments if a.get("pointer") == 2 and not a.get("const")), "")
        if handle:
            call = f"muslin::{cpp_name(handle)}::create"
        asked = f"{call}({', '.join(self.cpp)})"
        head = [f"inline void ask_{cpp_name(self.name)}(requests &from)", "{", "    (void)from;", *self.before]
        c = f"{self.name}({', '.join(self.c)})"
        if self.function["returns"]["type"] != "muslin_status":
            return [*head, f"    same({asked}, {c});", f'    tally("{self.name}", MUSLIN_OK);', "}", ""]
        has = "&problem" if "&problem" in self.c else "nullptr"
        problem = ["    muslin_problem problem = MUSLIN_PROBLEM_INIT;"] if has == "&problem" else []
        return [*head, *problem, f"    const muslin_status status = {c};",
                f'    attempt("{self.name}", status, {has}, [&] {{ return {asked}; }}, [&](const auto &got) {{',
                *(f"        {line}" for line in self.compare()), "        (void)got;", "    });", *self.after, "}", ""]


def program() -> str:
    functions = [function for function in API["functions"]
                 if function["name"] not in FREE and not function["name"].endswith("_init")
                 and function["name"] != "muslin_allocator_libc"]
    lines = ['#include "every_call.hpp"', ""]
    for struct in API["structs"]:
        if struct["name"] in ("muslin_problem", "muslin_allocator"):
            continue
        twin = f"muslin::{cpp_name(struct['name'])}"
        lines += [f"static_assert(offsetof({twin}, {member['name']}) == offsetof({struct['name']}, {member['name']}));"
                  for member in struct["members"]]
        lines += ["", *vary(struct)]
        if struct["name"] in INITS:
            lines += [f"inline void start_{cpp_name(struct['name'])}()", "{",
                      f"    const {struct['name']} c = {INITS[struct['name']]};", f"    const {twin} cpp;",
                      "    same_bytes(&cpp, &c, sizeof c);", "}", ""]
    for function in functions:
        lines += Asked(function).lines()
    names = [cpp_name(function["name"]) for function in functions]
    lines += ["int main()", "{", *(f"    start_{cpp_name(name)}();" for name in INITS),
              "    requests from;", "    for (int round = 0; round < ROUNDS; round++) {",
              *(f"        ask_{name}(from);" for name in names), "    }", f"    return report({len(names)});", "}"]
    return "\n".join(lines) + "\n"


if __name__ == "__main__":
    if len(sys.argv) != 2:
        sys.exit(__doc__)
    Path(sys.argv[1]).write_text(program(), encoding="utf-8")
