#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the C++ headers that follow from the API, one for each header of C, and muslin.hpp, which includes all.

    generate.py            writes include/muslin/*.hpp, all but core.hpp
    generate.py --check    exits 1 and names the files that are not current

What is written follows from lib/abi/api.json; only the words of comments, and what a header includes, come from the
headers of C.
"""
import re
import sys
import textwrap
from pathlib import Path
from typing import Dict, Iterable, List, NamedTuple, Optional

HERE = Path(__file__).resolve().parent
INCLUDES = HERE / "include" / "muslin"
sys.path.insert(0, str(HERE.parent))

from described import (INCLUDE, OPTIONAL_ARRAYS, TOLD_ENUMS, TRUTHS, TRUTHS_GIVEN, Api, Record, counts_follow,
                       enum_class, enum_members, flag_keyword, keep_current, one_a_place, plain, without_prefix,
                       without_struct)

WIDTH = 120

PLAIN_TYPES = {"int32_t": "std::int32_t", "uint32_t": "std::uint32_t", "int64_t": "std::int64_t",
               "size_t": "std::size_t", "muslin_len": "muslin::length", "muslin_id": "muslin::id",
               "muslin_status": "muslin::status", "char": "char"}
# Words of the headers that C++ keeps for itself.
KEPT = {"double", "template"}
# Structs that core.hpp has.
OWN_STRUCTS = {"muslin_problem", "muslin_allocator"}
# Enums whose numbers are a sum's bits.
UNSIGNED = {"muslin_warning"}

HEAD = """// muslin/{name} - {about}
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_{guard}_HPP
#define MUSLIN_{guard}_HPP
"""


# ---- names ----------------------------------------------------------------------------------------------------------

def enum_name(enum: str) -> str:
    """muslin_status_code -> status"""
    return re.sub(r"_code$", "", without_prefix(enum))


def enumerators(enum: Record) -> Dict[str, str]:
    """MUSLIN_FOLD_DOUBLE of muslin_fold is fold::double_."""
    names = {}
    for c_name, short, _ in enum_members(enum):
        name = re.sub("^ERR_", "", short).lower()
        names[c_name] = name + "_" if name in KEPT else name
    return names


def type_of_struct(struct: str) -> str:
    return "muslin::" + without_prefix(without_struct(struct))


class Names:
    """What things of C are called in C++."""

    def __init__(self, api: Api) -> None:
        self.api = api
        self.enum_of_class = {enum_class(name): name for name in api.enums}
        self.words: Dict[str, str] = {}  # a name of C in a comment, and what stands there instead
        for enum in api.data["enums"]:
            self.words[enum["name"]] = enum_name(enum["name"])
            for c_name, name in enumerators(enum).items():
                self.words[c_name] = f"{enum_name(enum['name'])}::{name}"
        for name in [*api.structs, *api.handles, "muslin_id"]:
            self.words[name] = without_prefix(name)
        self.words["muslin_len"] = "length"
        for function in api.data["functions"]:
            owner = owner_of(api, function)
            self.words[function["name"]] = method_name(owner, function["name"]) if owner else \
                without_prefix(function["name"])
            if owner:
                self.words[function["name"]] = f"{without_prefix(owner)}::{self.words[function['name']]}"

    def enum(self, name: str) -> str:
        """A class of the bindings, as C++ calls it: LengthUnit -> muslin::length_unit"""
        return "muslin::" + enum_name(self.enum_of_class[name])

    def in_words(self, comment: str) -> str:
        """A header's comment in C++ terms, without its examples, which are in C, and without the room a caller gives."""
        text = re.sub(r"\s*\bExamples?: .*?(?=\s*Since \d|$)", "", plain(comment))
        text = re.sub(r"\s*Since [\d.]+\d( all)?\.", "", text)
        text = re.sub(r"(?<=\.) [^.:]*\bcapacity\b[^.]*\.", "", text)
        text = re.sub(r":[^.:]*\bcapacity\b[^.]*(?=\.)", "", text)
        text = re.sub(r"\bstruct (?=muslin_)", "", text)
        return re.sub(r"\b(muslin|MUSLIN)_\w+", lambda found: self.words.get(found.group(0), found.group(0)), text)


def owner_of(api: Api, function: Record) -> Optional[str]:
    """The handle whose method a function is: its name says so."""
    return next((name for name, handle in api.handles.items()
                 if function["name"].startswith(handle["free"][:-len("free")])
                 and any(api.handle(argument["type"]) == handle for argument in function["arguments"])), None)


def method_name(owner: str, name: str) -> str:
    return name[len(owner) + 1:]


# ---- writing --------------------------------------------------------------------------------------------------------

def fill(opening: str, parts: Iterable[str], closing: str, indent_to_come: int = 0) -> List[str]:
    """opening part, part, ... closing, broken into lines below the opening bracket, or indented where that is far."""
    parts, width = list(parts), WIDTH - indent_to_come
    if len(opening + ", ".join(parts) + closing) <= width or not parts:
        return [opening + ", ".join(parts) + closing]
    indent, lines = " " * len(opening), []
    if max(map(len, parts)) + len(opening) + len(closing) >= width:
        indent = re.match(" *", opening).group() + "    "  # type: ignore[union-attr]
        lines, opening = [opening], indent
    line = opening
    for at, part in enumerate(parts):
        text = part + (closing if at == len(parts) - 1 else ",")
        if len(line.rstrip()) + 1 + len(text) > width and line.strip() and at:
            lines.append(line.rstrip())
            line = indent
        line += text + " "
    return lines + [line.rstrip()]


def comment(indent: str, *texts: str) -> List[str]:
    """One comment; every text begins a line."""
    texts = tuple(text.replace("*/", "* /") for text in texts if text)
    if not texts:
        return []
    if len(texts) == 1 and len(indent) + len(texts[0]) + 7 <= WIDTH:
        return [f"{indent}/** {texts[0]} */"]
    lines = [line for text in texts for line in
             textwrap.wrap(text, WIDTH - len(indent) - 8, break_long_words=False, break_on_hyphens=False)]
    return [f"{indent}/** {lines[0]}", *(f"{indent} * {line}" for line in lines[1:-1]), f"{indent} * {lines[-1]} */"] \
        if len(lines) > 1 else [f"{indent}/** {lines[0]} */"]


def indented(lines: Iterable[str], indent: str = "    ") -> List[str]:
    return [indent + line if line else line for line in lines]


# ---- enums and structs ----------------------------------------------------------------------------------------------

def write_enum(names: Names, enum: Record) -> List[str]:
    base = "std::uint32_t" if enum["name"] in UNSIGNED else "std::int32_t"
    lines = ["", *comment("", f"enum {enum['name']}"), f"enum class {enum_name(enum['name'])} : {base} {{"]
    for c_name, name in enumerators(enum).items():
        lines += comment("    ", names.in_words(names.api.words.beside.get(c_name, "")))
        lines.append(f"    {name} = {c_name},")
    return lines + ["};"]


def member_enum(names: Names, member: Record) -> Optional[str]:
    if member["type"] != "int32_t" or member["name"] == "decimal_sign":
        return None
    if "enum" in member:
        return "muslin::" + enum_name(member["enum"])
    found = names.api.enum_of_name(member)
    return names.enum(found) if found else None


def member_type(names: Names, member: Record) -> str:
    if "truth" in member:
        return "muslin::truth"
    return member_enum(names, member) or PLAIN_TYPES[member["type"]]


def initial(names: Names, of: str, member: Record, value: int) -> str:
    """= 4, or {} where that is what it is."""
    if member["name"] == "size":
        return " = sizeof(c_type)"
    if not value or "count" in member:
        return "{}" if of.startswith("muslin::") or "count" in member else " = 0"
    if of == "muslin::length":
        return f" = muslin::length::of_ticks({value})"
    if of == "muslin::truth":
        return " = true"
    if member_enum(names, member) == of:
        enum = next(enum for enum in names.api.data["enums"] if "muslin::" + enum_name(enum["name"]) == of)
        return f" = {of}::" + enumerators(enum)[next(c for c, number in enum["values"].items() if number == value)]
    return f" = {value}"


def write_struct(names: Names, struct: Record) -> List[str]:
    api, name = names.api, struct["name"]
    lines = ["", *comment("", f"struct {name}. {names.in_words(struct_words(api, name))}".strip()),
             f"struct MUSLIN_CPP_TWIN {without_prefix(name)} {{", f"    using c_type = {name};", ""]
    for flag in struct.get("flags", []):
        lines += [f"    static constexpr std::uint32_t {flag_keyword(flag, name)} = {flag};"]
    lines += [""] if struct.get("flags") else []
    for member in struct["members"]:
        of = member_type(names, member)
        words = api.words.beside.get(f"{name}.{member['name']}", "")
        if member["name"] not in ("size", "flags") and not re.fullmatch(r"pad\d*", member["name"]):
            lines += comment("    ", names.in_words(words))
        array = f"[{member['count']}]" if "count" in member else ""
        value = int(api.inits.get(name, {}).get(member["name"], 0))
        lines.append(f"    {of} {member['name']}{array}{initial(names, of, member, value)};")
    return lines + ["};", f"static_assert(detail::is_twin<{without_prefix(name)}>);"]


def struct_words(api: Api, struct: str) -> str:
    """What a header says before a struct, unless that is on the struct that ends before it."""
    words = api.words.before.get(struct, "")
    return "" if words.lstrip().startswith("Writes the values above") else words


# ---- functions ------------------------------------------------------------------------------------------------------

class Parameter(NamedTuple):
    """A parameter of a C++ function; one with a default value may be left out at the end."""

    type: str
    name: str
    default: str = ""


class Output(NamedTuple):
    """What a call answers with: its type, its name, and how it begins."""

    type: str
    name: str
    start: str


class Function:
    """A function of the library, sorted into what C++ takes, what C gets, and what comes back."""

    def __init__(self, names: Names, function: Record) -> None:
        self.names, self.api, self.function = names, names.api, function
        self.c_name: str = function["name"]
        self.arguments: List[Record] = function["arguments"]
        self.argument_names = [argument["name"] for argument in self.arguments]
        self.owner = owner_of(self.api, function)
        self.elementwise = "statuses" in self.argument_names
        self.parameters: List[Parameter] = []
        self.passed: List[str] = []          # what C gets
        self.checks: List[str] = []          # (array, wanted, argument) of arrays that belong together
        self.outputs: List[Output] = []
        self.rows: Optional[str] = None      # the vector that an ask-then-fill call fills
        self.text: Optional[str] = None
        self.makes = False
        self.callback: Optional[str] = None
        self.counted: Optional[str] = None   # the array before, whose count follows
        self.is_const = True
        at = 0
        while at < len(self.arguments):
            at += self.take(at)

    @property
    def name(self) -> str:
        return method_name(self.owner, self.c_name) if self.owner else without_prefix(self.c_name)

    # ---- what C takes ----

    def take(self, at: int) -> int:
        """Takes what begins with an argument, and says how many arguments that is."""
        argument = self.arguments[at]
        name, of, const = argument["name"], argument["type"], argument.get("const", False)
        if of == "struct muslin_problem":
            self.passed.append("problem")
        elif self.api.handle(of):
            self.take_handle(at, argument)
        elif self.api.frozen(of):
            self.parameters.append(Parameter("const muslin_allocator &", name, "libc_allocator()"))
            self.passed.append(f"&{name}")
        elif of.startswith("struct "):
            return self.take_struct(at, argument)
        elif of in self.api.callbacks:
            return self.take_callback(name, of)
        elif of == "char":
            return self.take_text(name, const)
        elif of == "size_t":
            self.take_size(argument)
        elif argument.get("pointer"):
            return self.take_pointer(at, argument)
        else:
            self.take_number(argument)
        return 1

    def take_handle(self, at: int, argument: Record) -> None:
        handle = type_of_struct(argument["type"])
        if argument.get("pointer") == 2:
            self.makes = not argument.get("const")
            self.outputs.append(Output(handle, argument["name"], ""))
            self.passed.append(f"{argument['name']}.{'made' if self.makes else 'lent'}()")
        elif at == 0 and self.owner and handle == type_of_struct(self.owner):
            self.is_const = argument.get("const", False)
            self.passed.append("get()")
        else:
            self.parameters.append(Parameter(f"const {handle} &", argument["name"]))
            self.passed.append(f"{argument['name']}.get()")

    def take_size(self, argument: Record) -> None:
        name = argument["name"]
        if not argument.get("pointer"):
            self.passed.append(f"{self.counted}.size()")
        elif name == "failed":
            self.passed.append("&failed")
        else:
            self.outputs.append(Output("std::size_t", name, " = 0"))
            self.passed.append(f"&{name}")

    def take_struct(self, at: int, argument: Record) -> int:
        name, of, const = argument["name"], type_of_struct(argument["type"]), argument.get("const", False)
        if not any(following.endswith("_size") for following in self.argument_names[at + 1:at + 2]):
            if const:
                default = "{}" if without_struct(argument["type"]) in self.api.inits else ""
                self.parameters.append(Parameter(f"const {of} &", name, default))
            else:
                self.outputs.append(Output(of, name, ""))
            self.passed.append(f"detail::in_c(&{name})")
            return 1
        if not const and "capacity" in self.argument_names:
            return self.take_filled(at, name, of)
        self.parameters.append(Parameter(f"muslin::span<{'const ' if const else ''}{of}>", name,
                                         "{}" if name in OPTIONAL_ARRAYS or self.may_be_empty(at) else ""))
        self.passed += [f"detail::in_c({name}.data())", f"sizeof({of})"]
        self.counted = name
        return 2

    def may_be_empty(self, at: int) -> bool:
        """Whether all that follows may be left out, so that these rows may be as well."""
        return all(self.api.frozen(other["type"]) or other["type"] in self.api.callbacks or other["type"] == "void" or
                   other.get("pointer") and not other.get("const") for other in self.arguments[at + 3:]) and at > 0 \
            and any(self.api.frozen(other["type"]) for other in self.arguments[at:])

    def take_filled(self, at: int, name: str, of: str) -> int:
        """Rows that a call fills: a vector, or the caller's own spans where a call fills a page."""
        if sum(other.endswith("capacity") for other in self.argument_names) == 2:
            self.parameters.append(Parameter(f"muslin::span<{of}>", name))
            self.passed += [f"detail::in_c({name}.data())", f"sizeof({of})", f"{name}.size()"]
            return 3
        self.rows = name
        self.outputs.insert(0, Output(f"std::vector<{of}>", name, ""))
        self.passed += ["to.rows", f"sizeof({of})", "to.capacity", "to.count"]
        return 4

    def take_callback(self, name: str, of: str) -> int:
        self.callback = name
        self.parameters.append(Parameter("Progress &&", name, "{}"))
        self.passed += [f"{name}_.template callback<{of}>()", f"{name}_.context()"]
        return 2

    def take_text(self, name: str, const: bool) -> int:
        if const:
            self.parameters.append(Parameter("std::string_view", name))
            self.passed += [f"{name}.data()", f"{name}.size()"]
            return 2
        self.text = "text"
        self.outputs.append(Output("std::string", "text", ""))
        self.passed += ["to.text", "to.capacity", "to.need"]
        return 3

    def take_pointer(self, at: int, argument: Record) -> int:
        name, of, const = argument["name"], PLAIN_TYPES[argument["type"]], argument.get("const", False)
        data = f"detail::in_c({name}.data())" if of.startswith("muslin::") else f"{name}.data()"
        if const:
            follows = counts_follow(self.arguments, at)
            self.parameters.append(Parameter(f"muslin::span<const {of}>", name, "" if follows else "{}"))
            if not follows:
                self.checks.append(f"{name}.empty() ? 0 : {name}.size(), {name}.empty() ? 0 : "
                                   f"detail::places(spec.places), {self.argument_number(name)}")
                data = f"{name}.empty() ? nullptr : {data}"
            elif self.counted and at and self.arguments[at - 1].get("const") and self.arguments[at - 1].get("pointer") \
                    and self.counted == self.argument_names[at - 1]:
                self.checks.append(f"{name}.size(), {self.counted}.size(), {self.argument_number(name)}")
            self.counted = self.counted if self.elementwise and self.counted else name
            self.passed.append(data)
        elif self.argument_names[at + 1:at + 2] == ["capacity"]:
            self.rows = name
            self.outputs.insert(0, Output(f"std::vector<{of}>", name, ""))
            self.passed += ["to.rows", "to.capacity", "to.count"]
            return 3
        elif self.elementwise:
            self.take_elements(name, of)
        elif name == "out" and one_a_place(self.api, self.function):
            self.outputs.append(Output(f"std::vector<{of}>", name, "(detail::places(spec.places))"))
            self.passed.append(f"{name}.data()")
        else:
            self.take_output(argument)
        return 1

    def take_elements(self, name: str, of: str) -> None:
        """What an array form writes: one for each element."""
        optional = name == "statuses"
        self.parameters.append(Parameter(f"muslin::span<{of}>", name, "{}" if optional else ""))
        self.passed.append(f"detail::in_c({name}.data())")
        wanted = f"{self.counted}.size()"
        self.checks.append(f"{name}.empty() ? {wanted} : {name}.size(), {wanted}, MUSLIN_ARG_OUTPUT" if optional else
                           f"{name}.size(), {wanted}, MUSLIN_ARG_OUTPUT")

    @staticmethod
    def argument_number(name: str) -> str:
        return {"factors": "MUSLIN_ARG_FACTOR", "counts": "MUSLIN_ARG_FACTOR", "given": "MUSLIN_ARG_PLACES"}.get(
            name, "MUSLIN_ARG_ROWS")

    def enum_of(self, argument: Record) -> Optional[str]:
        told = TOLD_ENUMS.get(f"{self.c_name}.{argument['name']}")
        found = enum_class(told) if told else self.api.enum_of_name(argument)
        return self.names.enum(found) if found else None

    def take_output(self, argument: Record) -> None:
        name = argument["name"]
        of = self.enum_of(argument) or ("muslin::truth" if name in TRUTHS else PLAIN_TYPES[argument["type"]])
        own = of.startswith("muslin::")
        self.outputs.append(Output(of, name, "{}" if own else " = 0"))
        self.passed.append(f"detail::in_c(&{name})" if own else f"&{name}")

    def take_number(self, argument: Record) -> None:
        name = argument["name"]
        of = self.enum_of(argument) or ("bool" if name in TRUTHS_GIVEN else PLAIN_TYPES[argument["type"]])
        self.parameters.append(Parameter(of, name))
        self.passed.append(f"detail::in_c({name})" if of.startswith("muslin::") else name)

    # ---- what C++ sees ----

    @property
    def several(self) -> Optional[str]:
        """The struct of several outputs."""
        return f"{without_prefix(self.c_name)}_answer" if len(self.outputs) > 1 else None

    @property
    def returns(self) -> str:
        result = self.function["returns"]
        if result["type"] != "muslin_status":
            if result.get("pointer"):
                return "std::string_view"
            told = TOLD_ENUMS.get(self.c_name)
            return "muslin::" + enum_name(told) if told else PLAIN_TYPES[result["type"]]
        if self.elementwise:
            return "std::size_t"
        return f"muslin::{self.several}" if self.several else self.outputs[0].type

    def signature(self) -> List[str]:
        last = len(self.parameters)
        while last and self.parameters[last - 1].default:
            last -= 1
        words = [f"{of.type}{'' if of.type.endswith('&') else ' '}{of.name}" +
                 (f" = {of.default}" if at >= last else "") for at, of in enumerate(self.parameters)]
        opening = ["template <class Progress = no_progress>"] if self.callback else []
        before = "static " if self.makes else "inline " if not self.owner else ""
        if self.callback and not self.owner:
            before = ""
        after = " const" if self.owner and not self.makes and self.is_const else ""
        after += " noexcept" if not self.is_asked else ""
        of = f"answer<{self.returns}>" if self.is_asked else self.returns
        nodiscard = "" if self.is_asked else "[[nodiscard]] "
        return [*opening, *fill(f"{nodiscard}{before}{of} {self.name}(", words, ")" + after, 4 if self.owner else 0)]

    @property
    def is_asked(self) -> bool:
        """Whether it can fail."""
        return bool(self.function["returns"]["type"] == "muslin_status")

    def body(self) -> List[str]:
        if not self.is_asked:
            answer = f"{self.c_name}({', '.join(self.passed)})"
            if self.returns == "muslin::length":
                answer = f"length::of_ticks({answer})"
            elif self.returns.startswith("muslin::"):
                answer = f"static_cast<{self.returns}>({answer})"
            return [f"    return {answer};"]
        lines, result, instead = self.results()
        if self.callback:
            lines.append(f"    detail::teller<std::remove_reference_t<Progress>> {self.callback}_({self.callback});")
        told = "problem" in self.passed or self.checks
        how, first, taken = "ask", result, "muslin_problem *problem" if told else "muslin_problem *"
        if self.rows or self.text:
            within = f"{result}." if self.several else ""
            how, first = "ask_rows" if self.rows else "ask_text", f"{result}, {within}{self.rows or self.text}"
            first = first if self.several else f"{result}, {result}"
            taken = "auto to, " + taken
        inner = self.inner([instead.get(value, value) for value in self.passed])
        return [*lines, f"    return asking::{how}({first}, [&]({taken}) {{", *indented(inner, " " * 8), "    });"]

    def results(self) -> "tuple[List[str], str, Dict[str, str]]":
        """The lines that declare what is written, its name, and what C gets instead of the outputs' own names."""
        if self.elementwise:
            return ([f"    std::size_t count = {self.counted}.size();"], "count", {})
        if not self.several:
            of = self.outputs[0]
            return [f"    {of.type} {of.name}{of.start};"], of.name, {}
        instead = {}
        for of in self.outputs:
            for value in (f"detail::in_c(&{of.name})", f"&{of.name}", f"{of.name}.data()", f"{of.name}.made()"):
                instead[value] = value.replace(of.name, f"answer.{of.name}")
        lines = [f"    muslin::{self.several} answer;"]
        lines += [f"    answer.{of.name}.resize{of.start};" for of in self.outputs if of.start.startswith("(")]
        return lines, "answer", instead

    def inner(self, passed: List[str]) -> List[str]:
        """What is done in C's terms."""
        lines: List[str] = []
        deep = 12 if self.owner else 8

        def call(before: str, after: str) -> List[str]:
            return fill(f"{before}{self.c_name}(", passed, after, deep)

        for check in self.checks:
            lines += fill("if (const muslin_status status = detail::same_size(", [*check.split(", "), "problem"], "))",
                          deep)
            lines += ["    return status;"]
        if self.elementwise:
            return [*lines, "std::size_t failed = 0;", *call("const muslin_status status = ", ");"),
                    "return detail::failed_at(status, failed, problem);"]
        if self.callback:
            return [*lines, *call(f"return {self.callback}_.done(", "));")]
        return [*lines, *call("return ", ");")]

    def words(self) -> List[str]:
        before = self.api.words.before.get(self.c_name, "") or self.words_of_spec()
        text = self.names.in_words(before) or self.names.in_words(self.api.sentence(self.function))
        where = f"{self.c_name}() in muslin/{self.function['header']}. Since {self.function['since']}."
        return [text, where] if text else [where]

    def words_of_spec(self) -> str:
        spec = next((without_struct(argument["type"]) for argument in self.arguments
                     if argument["name"] == "spec"), "")
        return self.api.words.before.get(spec, "")

    def lines(self) -> List[str]:
        whole = ["", *comment("", *self.words()), *self.signature(), "{", *self.body(), "}"]
        return indented(whole) if self.owner else whole


def functions_of(names: Names) -> List[Function]:
    """All functions but those that free handles, those that write initial values, which the structs have, and the one
    that writes an allocator, which core.hpp has."""
    api = names.api
    freed = {handle["free"] for handle in api.handles.values()}
    return [Function(names, function) for function in api.data["functions"]
            if function["name"] not in freed and not function["name"].endswith("_init")
            and not any(api.frozen(argument["type"]) and not argument.get("const")
                        for argument in function["arguments"])]


# ---- the headers ----------------------------------------------------------------------------------------------------

def write_answer(function: Function) -> List[str]:
    """The struct of several outputs."""
    return ["", *comment("", f"What {function.names.words[function.c_name]}() answers."),
            f"struct {function.several} {{",
            *(f"    {of.type} {of.name}{'{}' if of.start in ('{}',) else of.start if of.start == ' = 0' else ''};"
              for of in function.outputs), "};"]


def write_handle(names: Names, handle: Record, own: List[Function]) -> List[str]:
    name = without_prefix(handle["name"])
    lines = ["", *comment("", f"struct {handle['name']}, owned: it is moved, never copied, and given back at its end."),
             f"class {name} : public handle<{handle['name']}, {handle['free']}> {{", "public:"]
    body = [line for function in own for line in function.lines()]
    return [*lines, *body[1:], "};"]


def includes_of(header: str) -> List[str]:
    """The C++ headers that stand for those that a header of C includes."""
    found = re.findall(r'^#include "(\w+)\.h"', (INCLUDE / header).read_text(encoding="utf-8"), re.M)
    return [f"#include <muslin/{name}.hpp>" for name in found] or ["#include <muslin/core.hpp>"]


def write_header(names: Names, header: str, functions: List[Function]) -> str:
    api = names.api

    def here(kind: str) -> List[Record]:
        return [record for record in api.data[kind] if record["header"] == header]

    own = [function for function in functions if function.function["header"] == header]
    about = re.match(r"/\* muslin/\w+\.h - (.*?)(?:\n \*\n|\*/)", (INCLUDE / header).read_text(encoding="utf-8"), re.S)
    stem = header[:-len(".h")]
    lines = HEAD.format(name=f"{stem}.hpp", about=plain(about.group(1)) if about else stem,
                        guard=stem.upper()).splitlines()
    lines[0:1] = [line for line in textwrap.wrap(lines[0], WIDTH, subsequent_indent="// ")]
    lines += ["", f"#include <muslin/{header}>", *includes_of(header), "", "namespace muslin {"]
    for enum in here("enums"):
        lines += write_enum(names, enum)
    for struct in here("structs"):
        if struct["name"] not in OWN_STRUCTS:
            lines += write_struct(names, struct)
    free = [function for function in own if not function.owner]
    handles = here("handles")
    answers = [line for function in free if function.several for line in write_answer(function)]
    if own:
        lines += answers + ["", "inline namespace MUSLIN_CPP_FORM {"]
        for handle in handles:
            methods = [function for function in own if function.owner == handle["name"]]
            before = [line for function in methods if function.several for line in write_answer(function)]
            lines[-2:-2] = before
            lines += write_handle(names, handle, methods)
        for function in free:
            lines += function.lines()
        lines += ["", "} // namespace MUSLIN_CPP_FORM"]
    lines += ["", "} // namespace muslin", "", "#endif"]
    return "\n".join(lines) + "\n"


def files(api: Api) -> Dict[str, str]:
    names = Names(api)
    functions = functions_of(names)
    written = {header.replace(".h", ".hpp"): write_header(names, header, functions) for header in api.data["headers"]}
    whole = HEAD.format(name="muslin.hpp", about="all of the library.", guard="MUSLIN").splitlines()
    whole += ["", *(f"#include <muslin/{name}>" for name in written), "", "#endif"]
    return {**written, "muslin.hpp": "\n".join(whole) + "\n"}


def main(arguments: List[str]) -> int:
    if arguments not in ([], ["--check"]):
        print(__doc__)
        return 2
    return keep_current(INCLUDES, files(Api()), check=bool(arguments), program="bindings/cpp/generate.py")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
