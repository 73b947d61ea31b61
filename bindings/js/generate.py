#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the parts of the package that follow from the API.

    generate.py            writes muslin/api.js, muslin/statuses.js and muslin/api.d.ts
    generate.py --check    exits 1 and names the files that are not current

api.js is what calls.js goes by: where the members of structs lie, and what each function takes, in C's order. api.d.ts
says the same in types, with the words of the headers. All follow from lib/abi/api.json.
"""
import re
import sys
import textwrap
from pathlib import Path
from typing import Dict, List, NamedTuple, Optional

HERE = Path(__file__).resolve().parent
PACKAGE = HERE / "muslin"
sys.path[:0] = [str(HERE.parent), str(HERE)]

from described import (OPTIONAL_ARRAYS, TOLD_ENUMS, TRUTHS, TRUTHS_GIVEN, Api, Member, Record, counts_follow,
                       enum_class, enum_members, inches, keep_current, one_a_place, plain, start_of, without_prefix,
                       without_struct)
from wording import Wording

WIDTH = 120

# 64-bit results that are no counts: they are BigInt, as lengths are. Names of members, and of outputs of functions.
LARGE = re.compile(r"area|^(waste|worth|scale|rank_key|cost|total)$")
# Bounds of a cost, in structs of this prefix, are in its unit.
BOUND, BOUND_OF = "least", "muslin_cutplan_"
# Prefixes of enum values that are longer than the enum's name.
SHORTER = {"muslin_status_code": "ERR_"}

HEAD = """// {about}
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
"""


# ---- names ----------------------------------------------------------------------------------------------------------

def small(name: str) -> str:
    """muslin_seam_row_equal -> seamRowEqual, SEAM_ALLOWANCE -> seamAllowance"""
    first, *rest = without_prefix(name).lower().split("_")
    return first + "".join(word.capitalize() for word in rest)


def large(name: str) -> str:
    """muslin_border_style -> BorderStyle; what is so already stays"""
    word = name if name[:1].isupper() and "_" not in name and not name.isupper() else small(name)
    return word[:1].upper() + word[1:]


def choices(enum: Record) -> Dict[str, int]:
    """MUSLIN_EDGE_PINKED_TIPS of muslin_edge is "pinkedTips"."""
    cut = SHORTER.get(enum["name"], "")
    return {small(short[len(cut):] if short.startswith(cut) else short): value
            for _, short, value in enum_members(enum)}


def error_class(status: str) -> str:
    return "Muslin" + large(status.replace("MUSLIN_ERR_", "")) + "Error"


# ---- functions ------------------------------------------------------------------------------------------------------

class Token(NamedTuple):
    """What C takes at one place, or at a few that belong together. How it is written in api.js: see calls.js."""

    name: str
    kind: str
    detail: str = ""
    way: str = ""  # "" taken, ">" given back, "?" taken but may be left out

    def text(self) -> str:
        detail = "/".join(map(large, self.detail.split("/")))
        of = f"{self.kind}={detail}" if detail else self.kind
        return f"{self.way}{self.name}:{of}" if self.name else of


class Function:
    """A function of the library as a row of tokens."""

    def __init__(self, api: Api, function: Record) -> None:
        self.api, self.function = api, function
        self.c_name: str = function["name"]
        self.arguments: List[Record] = function["arguments"]
        self.names = [argument["name"] for argument in self.arguments]
        self.elementwise = "statuses" in self.names
        self.makes = next((self.api.handle(argument["type"]) for argument in self.arguments
                           if argument.get("pointer") == 2 and not argument.get("const")), None)
        first = self.api.handle(self.arguments[0]["type"]) if self.arguments else None
        self.owner = self.makes or first
        self.tokens: List[Token] = []
        at = 0
        while at < len(self.arguments):
            at += self.take(at)

    @property
    def name(self) -> str:
        """Without the prefix, and of a method without what its class says."""
        own = self.owner["free"][:-len("free")] if self.owner else ""
        return small(self.c_name[len(own):] if own and self.c_name.startswith(own) else self.c_name)

    def put(self, name: str, kind: str, detail: str = "", way: str = "") -> None:
        self.tokens.append(Token(small(name) if name else "", kind, detail, way))

    def take(self, at: int) -> int:
        """Takes what begins with an argument, and says how many arguments that is."""
        argument = self.arguments[at]
        name, of, const = argument["name"], argument["type"], argument.get("const", False)
        if of == "struct muslin_problem":
            self.put("", "problem")
        elif self.api.handle(of):
            self.take_handle(at, argument)
        elif self.api.frozen(of):
            self.put("", "allocator")
        elif of.startswith("struct "):
            return self.take_struct(at, argument)
        elif of in self.api.callbacks:
            self.put(name, "progress", way="?")
            return 2
        elif of == "char":
            self.put(name if const else "", "text" if const else "askText")
            return 2 if const else 3
        elif of == "size_t":
            self.take_size(name, argument)
        elif argument.get("pointer"):
            return self.take_pointer(at, argument)
        else:
            kind, *detail = self.plain(argument)
            self.put(name, kind, *detail)
        return 1

    def take_handle(self, at: int, argument: Record) -> None:
        handle = large(argument["type"])
        if argument.get("pointer") == 2:
            self.put(argument["name"], "made" if self.makes else "lent", handle, ">")
        elif at == 0 and not self.makes:
            self.put("", "self")
        else:
            self.put(argument["name"], "handle", handle)

    def take_size(self, name: str, argument: Record) -> None:
        if not argument.get("pointer"):
            self.put("", "count")
        elif name == "failed":
            self.put("", "failed")
        else:
            self.put(name, "size", way=">")

    def take_struct(self, at: int, argument: Record) -> int:
        name, const = argument["name"], argument.get("const", False)
        struct = without_prefix(without_struct(argument["type"]))
        if not any(following.endswith("_size") for following in self.names[at + 1:at + 2]):
            kind = "given" if const and at == 0 and name != "spec" else "spec"
            self.put(name, kind if const else "struct", struct, "" if const else ">")
            return 1
        if const or "capacity" not in self.names:
            way = "?" if name in OPTIONAL_ARRAYS else ""
            self.put(name, "rows" if const else "filled", struct, way)
            return 3
        if "written" in self.names[at:]:
            parts = without_prefix(without_struct(self.arguments[at + 3]["type"]))
            self.tokens.pop()  # the number of the first row, which pages tell
            self.put(name, "askPages", f"{struct}/{parts}", ">")
            return 8
        self.put(name, "askRows", struct, ">")
        return 4

    def take_pointer(self, at: int, argument: Record) -> int:
        name, of = argument["name"], argument["type"]
        many = {"muslin_len": "lengths", "muslin_id": "ids", "int64_t": "int64s", "int32_t": "int32s"}
        if argument.get("const"):
            if counts_follow(self.arguments, at):
                self.put(name, many[of])
            else:
                self.put(name, "places", way="?")
        elif self.names[at + 1:at + 2] == ["capacity"]:
            self.put(name, "ask" + many[of].capitalize(), way=">")
            return 3
        elif self.elementwise:
            self.put(name, "statuses" if name == "statuses" else "many", way="?" if name == "statuses" else ">")
        elif name == "out" and of == "int64_t" and one_a_place(self.api, self.function):
            self.put(name, "places", way=">")
        else:
            kind, detail = (self.plain(argument, out=True) + [""])[:2]
            self.put(name, kind, detail, ">")
        return 1

    def plain(self, argument: Record, out: bool = False) -> List[str]:
        """The kind of a plain number."""
        name, of = argument["name"], argument["type"]
        told = TOLD_ENUMS.get(f"{self.c_name}.{name}")
        enum = enum_class(told) if told else self.api.enum_of_name(argument)
        if of == "muslin_len":
            return ["length"]
        if of == "muslin_id":
            return ["id"]
        if name == "warnings":
            return ["warnings"]
        if name in (TRUTHS if out else TRUTHS_GIVEN):
            return ["truth"]
        if enum:
            return ["choice", enum]
        if out and of == "int64_t" and LARGE.search(name):
            return ["large"]
        return [of.replace("muslin_status", "int32_t").replace("_t", "")]

    @property
    def returns(self) -> List[str]:
        """What a function returns that is no status."""
        result = self.function["returns"]
        if result["type"] == "muslin_status":
            return []
        if result.get("pointer"):
            return ["words"]
        if self.c_name in TOLD_ENUMS:
            return ["maybe", enum_class(TOLD_ENUMS[self.c_name])]
        return ["length"] if result["type"] == "muslin_len" else [result["type"].replace("_t", "")]

    # ---- as JavaScript calls it ----

    @property
    def positional(self) -> List[Token]:
        return [token for token in self.tokens
                if token.name and not token.way and token.kind != "spec"]

    @property
    def specs(self) -> List[Token]:
        """The specs, the one that is called so first."""
        return sorted((token for token in self.tokens if token.kind == "spec"), key=lambda token: token.name != "spec")

    @property
    def optional(self) -> List[Token]:
        return [token for token in self.tokens if token.way == "?"]

    @property
    def outputs(self) -> List[Token]:
        return [token for token in self.tokens if token.way == ">"]

    def parameters(self) -> str:
        """Values first, then the specs; what else may be left out is said with the first spec, statuses last."""
        def typed(token: Token) -> str:
            mark = "?" if token.way == "?" else ""
            return f"{token.name}{mark}: {GIVEN[token.kind].format(large(token.detail))}"

        beside = [typed(token) for token in self.optional if token.kind != "statuses"]
        parts = [typed(token) for token in self.positional]
        for token in self.specs:
            more = f" & {{ {'; '.join('readonly ' + one for one in beside)} }}" if beside else ""
            parts.append(f"{token.name}?: {large(token.detail)}{more}")
            beside = []
        if beside:
            parts.append(f"more?: {{ {'; '.join('readonly ' + one for one in beside)} }}")
        return ", ".join(parts + [typed(token) for token in self.optional if token.kind == "statuses"])

    def result(self) -> str:
        if self.makes:
            return large(self.makes["name"])
        if self.function["returns"]["type"] == "void":
            return "void"
        if self.returns:
            kind, enum = (self.returns + [""])[:2]
            return GIVEN_BACK[kind].format(enum)
        if any(token.kind == "askText" for token in self.tokens):
            return "Formatted" if any(token.name == "exact" for token in self.outputs) else "string"
        types = {token.name: self.type_of(token) for token in self.tokens
                 if token.way == ">" or token.kind == "filled"}
        if len(types) == 1:
            return next(iter(types.values()))
        return "{ " + "; ".join(f"readonly {name}: {of}" for name, of in types.items()) + " }"

    def type_of(self, token: Token) -> str:
        """The type of an output. A struct that is asked with as well comes back with every member."""
        struct = token.detail.split("/")[0]
        of = large(struct)
        return GIVEN_BACK[token.kind].format(f"Filled<{of}>" if struct in self.asked_with else of)

    asked_with: List[str] = []


GIVEN = {"length": "LengthLike", "id": "Id", "int64": "Whole", "int32": "Whole", "uint32": "Whole", "choice": "{}",
         "truth": "boolean", "text": "string", "given": "{}", "rows": "readonly {}[]", "filled": "readonly {}[]",
         "lengths": "LengthsLike", "ids": "WholeNumbers", "int64s": "WholeNumbers", "int32s": "WholeNumbers",
         "places": "WholeNumbers", "handle": "{}", "progress": "Progress",
         "statuses": "Int32Array"}
GIVEN_BACK = {"length": "Length", "id": "Id", "int64": "number", "int32": "number", "uint32": "number",
              "large": "bigint", "choice": "{}", "maybe": "{} | null", "truth": "boolean",
              "warnings": "readonly Warning[]", "size": "number", "words": "string", "struct": "{}", "made": "{}",
              "lent": "{}", "places": "readonly number[]",
              "many": "BigInt64Array", "filled": "readonly {}[]", "askRows": "readonly {}[]",
              "askIds": "readonly Id[]", "askInt64s": "readonly number[]", "askPages": "IterableIterator<{}>"}


def functions_of(api: Api) -> List[Function]:
    """All functions but those that free handles, those that write initial values, and the one that writes an
    allocator: the package calls these by itself."""
    freed = {handle["free"] for handle in api.handles.values()}
    return [Function(api, function) for function in api.data["functions"]
            if function["name"] not in freed and not function["name"].endswith("_init")
            and not any(api.frozen(argument["type"]) and not argument.get("const")
                        for argument in function["arguments"])]


# ---- api.js ---------------------------------------------------------------------------------------------------------

def is_large(api: Api, struct: str, name: str) -> bool:
    """Whether a number of a result is no count. What is asked with is measured by the library."""
    is_bound = name == BOUND and struct.startswith(BOUND_OF)
    return (is_bound or LARGE.search(name) is not None) and any(member["name"] == name and member["type"] == "int64_t"
                                                  for member in api.structs[struct]["members"])


def member_text(api: Api, struct: str, member: Member, asked: bool) -> str:
    """A member in api.js: its name, its kind with a detail, and where it lies."""
    places = {of["name"]: of for of in api.structs[struct]["members"]}
    if member.kind == "flag":
        return f"{small(member.name)}:flag={api.constants['MUSLIN_' + member.detail]}@4"
    place = places[member.name]
    kind, detail = member.kind, ""
    if place["type"] == "char":
        kind = "chars"
    elif struct == "muslin_problem" and member.name in ("value", "limit"):
        kind = "large"
    elif kind == "number":
        kind = "large" if not asked and is_large(api, struct, member.name) else place["type"].replace("_t", "")
    elif kind in ("enum", "maybe"):
        kind, detail = "choice" if kind == "enum" else kind, member.detail
    elif kind == "parts":
        detail = str(places[start_of(member.name)]["offset"])
    elif kind == "numbers":
        detail = str(place["count"])
    return f"{small(member.name)}:{kind}{'=' + detail if detail else ''}@{place['offset']}"


def structs_of(api: Api) -> List[str]:
    """Those that JavaScript sees."""
    return [name for name in api.structs if not api.frozen("struct " + name) and name != "muslin_problem"]


def row_of(opening: str, words: List[str], closing: str) -> List[str]:
    """opening, then words, then closing; broken into several strings where it is too long."""
    lines, line = [], opening
    indent = re.match(r" *", opening).group() + "    "  # type: ignore[union-attr]
    for at, word in enumerate(words):
        last = at == len(words) - 1
        if len(line) + len(word) + len(closing if last else ' " +') > WIDTH:
            lines.append(line + '" +')
            line = indent + '"' + word + ("" if last else " ")
        else:
            line += word + ("" if last else " ")
    return lines + [line + closing]


def write_tables(api: Api) -> List[str]:
    lines = HEAD.format(about="What calls.js goes by: the enums, structs and functions of the library.").splitlines()
    lines += ["", f'export const version = "{api.data["version"]}";', "", "export const constants = Object.freeze({"]
    lines += [f"    {without_prefix(name)}: {value}{'n' if abs(value) >= 1 << 53 else ''},"
              for name, value in api.constants.items()]
    lines += ["});", "", "// What each number is called.", "export const enums = {"]
    for enum in api.data["enums"]:
        words = [f"{name}={value}" for name, value in choices(enum).items()]
        lines += row_of(f'    {enum_class(enum["name"])}: "', words, '",')
    functions = functions_of(api)
    asked = asked_structs(api, functions)
    lines += ["};", "", "// Bytes of a struct, its members, and the function that writes its initial values.",
              "export const structs = {"]
    for struct in ["muslin_problem", *structs_of(api)]:
        words = [member_text(api, struct, member, struct in asked) for member in api.members(struct)]
        init = f', "{struct}_init"' if struct in api.inits else ""
        lines += row_of(f'    {large(struct)}: [{api.structs[struct]["bytes"]}, "', words, f'"{init}],')
    lines += ["};", "",
              "// Functions that take no handle: what C takes, in its order, and what comes back if no status.",
              "export const functions = {"]
    lines += [line for function in functions if not function.owner for line in function_lines(function, "    ")]
    lines += ["};", "", "// The handles.", "export const handles = {"]
    for handle in api.data["handles"]:
        own = [function for function in functions if function.owner == handle]
        lines += [f'    {large(handle["name"])}: {{', f'        free: "{handle["free"]}",']
        lines += [line for function in own if function.makes for line in function_lines(function, " " * 8, "make")]
        lines += ["        methods: {"]
        lines += [line for function in own if not function.makes for line in function_lines(function, " " * 12)]
        lines += ["        },", "    },"]
    return lines + ["};"]


def function_lines(function: Function, indent: str, name: Optional[str] = None) -> List[str]:
    words = [token.text() for token in function.tokens]
    back = f', "{"=".join(function.returns)}"' if function.returns else ""
    return row_of(f'{indent}{name or function.name}: ["{function.c_name}", "', words, f'"{back}],')


# ---- statuses.js ----------------------------------------------------------------------------------------------------

def write_statuses(api: Api) -> List[str]:
    lines = HEAD.format(about="The errors, one class for each status.").splitlines()
    statuses = {name: value for name, value in api.enums["muslin_status_code"]["values"].items() if value}
    lines += ['import { MuslinError } from "./errors.js";']
    for name in statuses:
        words = api.words.beside[name]
        lines += ["", *comment("", f"{words[0].upper()}{words[1:]}."),
                  f"export class {error_class(name)} extends MuslinError {{}}"]
    lines += ["", "/** The classes by status. */", "export default new Map([["]
    return lines[:-1] + ["export default new Map(["] + \
        [f"    [{value}, {error_class(name)}]," for name, value in statuses.items()] + ["]);"]


# ---- api.d.ts -------------------------------------------------------------------------------------------------------

def comment(indent: str, text: str, *tags: str) -> List[str]:
    text = text.replace("*/", "* /")
    if not text:
        return []
    if len(indent) + len(text) + 7 <= WIDTH and not tags:
        return [f"{indent}/** {text} */"]
    wrapped = textwrap.wrap(text, WIDTH - len(indent) - 3, break_long_words=False, break_on_hyphens=False)
    return [f"{indent}/**", *(f"{indent} * {line}" for line in [*wrapped, *tags]), f"{indent} */"]


def words_of(api: Api, wording: Wording, struct: str, member: Member) -> str:
    """What the header says beside a member, and its initial value."""
    beside = f"MUSLIN_{member.detail}" if member.kind == "flag" else f"{struct}.{member.name}"
    words = wording.renamed(api.words.beside.get(beside, ""), api.structs[struct]["header"])
    if struct in api.inits:
        words += ("" if not words or words.endswith(".") else ".") + f" Initially {initial(api, struct, member)}."
    return words.strip()


def initial(api: Api, struct: str, member: Member) -> str:
    if member.kind == "flag":
        return str(api.starts_with(struct, member)).lower()
    value = api.inits[struct][member.name]
    if member.kind == "length":
        return inches(value) if value else "0"
    if member.kind == "sign":
        return f'"{chr(value)}"'
    if member.kind == "truth":
        return str(bool(value)).lower()
    if member.kind in ("enum", "maybe"):
        enum = next(enum for name, enum in api.enums.items() if enum_class(name) == member.detail)
        return next((f'"{name}"' for name, number in choices(enum).items() if number == value), "none")
    return str(value)


def member_type(member: Member, asked: bool) -> str:
    if member.kind in ("enum", "maybe"):
        return member.detail + (" | null" if member.kind == "maybe" or asked else "")
    if asked:
        return {"length": "LengthLike", "id": "Id", "number": "Whole", "sign": "string"}.get(member.kind, "boolean")
    return {"length": "Length", "id": "Id", "number": "number", "sign": "string", "warnings": "readonly Warning[]",
            "numbers": "readonly number[]", "parts": f"readonly {member.detail}[]"}.get(member.kind, "boolean")


def write_struct(api: Api, wording: Wording, struct: str, asked: bool) -> List[str]:
    header = api.structs[struct]["header"]
    said = wording.said(plain(api.words.before.get(struct, "")), header)
    lines = ["", *comment("", f"{said} struct {struct} in muslin/{header}.".strip()),
             f"export interface {large(struct)} {{"]
    for member in api.members(struct):
        of = member_type(member, asked)
        if not asked and member.kind == "number" and is_large(api, struct, member.name):
            of = "bigint"
        lines += comment("    ", words_of(api, wording, struct, member))
        lines.append(f"    readonly {small(member.name)}{'?' if asked else ''}: {of};")
    return lines + ["}"]


# Of calls with many values at a time.
ELEMENTWISE = ("The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` "
               "says which it is. With `statuses`, an Int32Array with a place for each value, each gets its own "
               "status there, 0 where all is well, and the result of one that failed is 0.")


def words_before(function: Function, wording: Wording) -> List[str]:
    """All that the header says of a function, and the errors that it throws."""
    header = function.function["header"]
    subject = wording.subject(function.function)
    words = ELEMENTWISE if function.elementwise else plain(function.api.words.before[subject]) if subject else ""
    said = re.sub(r" ?Since 0[.]\d+( all)?[.]?$", "", wording.said(words, header))
    thrown = [f"@throws {{{name}}}" for name in wording.errors(words)]
    where = f"{function.c_name}() in muslin/{header}. Since {function.function['since']}."
    return [f"{said} {where}".strip(), *thrown]


def write_function(function: Function, wording: Wording, indent: str = "    ",
                   name: Optional[str] = None) -> List[str]:
    opening = f"{indent}{name or function.name}("
    # No line may end after `readonly`.
    whole = f"{function.parameters()}): {function.result()};".replace("readonly ", "readonly@")
    lines = textwrap.wrap(opening + whole, WIDTH, subsequent_indent=indent + "    ", break_long_words=False,
                          break_on_hyphens=False)
    return [*comment(indent, *words_before(function, wording)), *(line.replace("@", " ") for line in lines)]


def asked_structs(api: Api, functions: List[Function]) -> List[str]:
    """Structs that JavaScript gives."""
    given = {token.detail for function in functions for token in function.tokens
             if token.kind in ("spec", "given", "rows", "filled")}
    return [struct for struct in structs_of(api) if without_prefix(struct) in given]


def write_types(api: Api) -> List[str]:
    functions = functions_of(api)
    asked = asked_structs(api, functions)
    Function.asked_with = [without_prefix(struct) for struct in asked]
    wording = Wording(api, small, large, choices, error_class)
    lines = HEAD.format(about="The types of the library, with the words of its headers.").splitlines()
    lines += ["", 'import type { Filled, Formatted, Handle, Id, Length, LengthLike, LengthsLike, Progress, Whole,',
              '    WholeNumbers } from "./muslin.js";']
    for enum in api.data["enums"]:
        lines += ["", *comment("", f"enum {enum['name']} in muslin/{enum['header']}."),
                  f"export type {enum_class(enum['name'])} ="]
        for (c_name, _, _), name in zip(enum_members(enum), choices(enum)):
            lines += [*comment("    ", wording.renamed(api.words.beside.get(c_name, ""), enum["header"])),
                      f'    | "{name}"']
        lines[-1] += ";"
    for struct in structs_of(api):
        lines += write_struct(api, wording, struct, struct in asked)
    for handle in api.data["handles"]:
        own = [function for function in functions if function.owner == handle and not function.makes]
        lines += ["", *comment("", f"struct {handle['name']} in muslin/{handle['header']}."),
                  f"export interface {large(handle['name'])} extends Handle {{"]
        for function in own:
            lines += write_function(function, wording)
        lines.append("}")
    lines += ["", "/** The functions of the library, and the classes of its handles. */", "export interface Calls {"]
    for function in functions:
        if function.makes:
            lines.append(f"    readonly {large(function.makes['name'])}: {{")
            lines += write_function(function, wording, "        ", "new ") + ["    };"]
    for function in functions:
        if not function.owner:
            lines += write_function(function, wording)
    for struct in api.inits:
        lines += [*comment("    ", f"The initial values. {struct}_init() in muslin/{api.structs[struct]['header']}."),
                  f"    {small(struct)}(): Filled<{large(struct)}>;"]
    lines += ["}", "", "/** The errors' classes by status. */"]
    for status, value in api.enums["muslin_status_code"]["values"].items():
        if value:
            words = api.words.beside[status]
            lines += [*comment("", f"{words[0].upper()}{words[1:]}."),
                      f"export declare class {error_class(status)} extends MuslinError {{}}"]
    lines += ["", *comment("", "The constants of the headers."), "export declare const constants: {"]
    lines += [f"    readonly {without_prefix(name)}: {'bigint' if abs(value) >= 1 << 53 else 'number'};"
              for name, value in api.constants.items()]
    lines += ["};"]
    lines[lines.index("    WholeNumbers } from \"./muslin.js\";")] += '\nimport { MuslinError } from "./muslin.js";'
    return lines


# ---- the files ------------------------------------------------------------------------------------------------------

def files(api: Api) -> Dict[str, str]:
    written = {"api.js": write_tables(api), "statuses.js": write_statuses(api), "api.d.ts": write_types(api)}
    return {name: "\n".join(lines) + "\n" for name, lines in written.items()}


def main(arguments: List[str]) -> int:
    if arguments not in ([], ["--check"]):
        print(__doc__)
        return 2
    return keep_current(PACKAGE, files(Api()), check=bool(arguments), program="bindings/js/generate.py")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
