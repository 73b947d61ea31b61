#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Writes the parts of the package that follow from the API.

    generate.py            writes muslin/_api.py, constants.py, errors.py, records.py, calls.py and handles.py
    generate.py --check    exits 1 and names the files that are not current

What is written follows from lib/abi/api.json; only the words of docstrings and comments come from the headers.
"""
import builtins
import re
import sys
import textwrap
from pathlib import Path
from typing import Dict, Iterable, List, NamedTuple, Optional, Tuple

HERE = Path(__file__).resolve().parent
PACKAGE = HERE / "muslin"
sys.path.insert(0, str(HERE.parent))

from described import (HOW_MUCH, OPTIONAL_ARRAYS, TRUTHS, Api, camel, counts_follow, enum_class, enum_members, inches,
                       keep_current, Member, one_a_place, plain, Record, without_prefix, without_struct)

WIDTH = 120

C_TYPES = {"char": "ctypes.c_char", "int32_t": "ctypes.c_int32", "uint32_t": "ctypes.c_uint32",
           "int64_t": "ctypes.c_int64", "muslin_len": "ctypes.c_int64", "muslin_id": "ctypes.c_int64",
           "muslin_status": "ctypes.c_int32", "size_t": "ctypes.c_size_t", "void": "None"}
BITS = {"int32_t": "32", "muslin_status": "32", "uint32_t": "32, signed=False", "int64_t": "64", "muslin_id": "64"}

# Enums for whose members the library has words.
WORDS = {"muslin_status_code": [("sentence", "muslin_status_sentence")],
         "muslin_argument": [("words", "muslin_argument_words")],
         "muslin_warning": [("sentence", "muslin_warning_sentence")],
         "muslin_length_unit": [("word", "muslin_length_unit_word")]}

HEAD = '''# SPDX-License-Identifier: MIT
"""{about}

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
'''


# ---- members, as Python sees them -----------------------------------------------------------------------------------

def given_type(member: Member) -> str:
    """Its type where it is asked for."""
    return {"length": "LengthLike", "id": "Id", "number": "int", "truth": "bool", "sign": "str",
            "flag": "bool"}.get(member.kind, member.detail)


def answered_type(member: Member) -> str:
    """Its type in a result."""
    return {"length": "Length", "id": "Id", "number": "int", "truth": "bool", "warnings": "Tuple[Warning, ...]",
            "numbers": "Tuple[int, ...]", "maybe": f"Optional[{member.detail}]", "flag": "bool",
            "parts": f'Tuple["{member.detail}", ...]'}.get(member.kind, member.detail)


def either_type(member: Member, initial: int, completed: bool) -> str:
    """Its type and initial value in a record that is both: a row that a call completes, or a spec that can be read
    back, where lengths may be given as text. A choice that is not given is none."""
    if member.kind == "enum":
        return f"Optional[{member.detail}] = None"
    value = {"length": f"Length({initial})", "truth": str(bool(initial)), "flag": str(bool(initial))}.get(
        member.kind, str(initial))
    return f"{answered_type(member) if completed else given_type(member)} = {value}"


def reading(member: Member) -> str:
    value = f"struct.{member.name}"
    return {"length": f"Length({value})", "id": f"int({value})", "number": f"int({value})",
            "truth": f"bool({value})", "warnings": f"warnings_in({value})", "numbers": f"tuple({value})",
            "flag": f"bool(struct.flags & {member.detail})", "parts": f"parts_{member.name}",
            "maybe": f"{member.detail}({value}) if {value} else None"}.get(member.kind, f"{member.detail}({value})")


def writing(member: Member) -> str:
    value = f"self.{member.name}"
    if member.kind == "flag":
        return f"put_flag(struct, {member.detail}, {value})"
    helper = {"length": "put_length", "sign": "put_sign"}.get(member.kind, "put")
    return f'{helper}(struct, "{member.name}", {value})'


def initial_words(api: Api, struct: str, member: Member) -> str:
    """The initial value of a spec's member in words."""
    if member.kind == "flag":
        return str(api.starts_with(struct, member))
    value = api.inits[struct][member.name]
    if member.kind == "length":
        return inches(value) if value else "0"
    if member.kind == "sign":
        return repr(chr(value))
    if member.kind == "enum":
        enum = next(enum for name, enum in api.enums.items() if enum_class(name) == member.detail)
        return f"{member.detail}." + {number: name for _, name, number in enum_members(enum)}[value]
    return str(value)


def error_class(status: str) -> str:
    return camel(status.replace("MUSLIN_ERR_", "").lower()) + "Error"


# ---- writing --------------------------------------------------------------------------------------------------------

def fill(opening: str, parts: Iterable[str], closing: str) -> List[str]:
    """opening part, part, ... closing, broken into lines below the opening bracket."""
    indent = " " * len(opening)
    parts = list(parts)
    whole = opening + ", ".join(parts) + closing
    if len(whole) <= WIDTH or not parts:
        return [whole]
    lines, line = [], opening + parts[0]
    for at, part in enumerate(parts[1:], 2):
        room = WIDTH - (len(closing) if at == len(parts) else 1)
        if len(line) + 2 + len(part) > room:
            lines.append(line + ",")
            line = indent + part
        else:
            line += ", " + part
    return lines + [line + closing]


def statement(opening: str, parts: Iterable[str], indent: str = "    ") -> List[str]:
    """A call in the body of a function, into which it is still to be indented."""
    return [line[len(indent):] for line in fill(indent + opening, parts, ")")]


def wrap(text: str, indent: str, then: str = "") -> List[str]:
    return textwrap.wrap(text, WIDTH, initial_indent=indent, subsequent_indent=indent + then, break_long_words=False,
                         break_on_hyphens=False)


def docstring(indent: str, first: str, *paragraphs: List[str]) -> List[str]:
    """A docstring of a sentence and lists."""
    lines = wrap('"""' + first, indent)
    for paragraph in paragraphs:
        if paragraph:
            lines.append("")
        for line in paragraph:
            lines += wrap(line, indent, "    ")
    if len(lines) == 1 and len(lines[0]) + 3 <= WIDTH:
        return [lines[0] + '"""']
    return lines + [indent + '"""']


def exported(names: Iterable[str]) -> List[str]:
    return fill("__all__ = [", [f'"{name}"' for name in names], "]")


# ---- _api.py --------------------------------------------------------------------------------------------------------

def callback_type(of: str) -> str:
    """The type of a pointer to a function."""
    result, arguments = re.fullmatch(r"(.*) ?\(\*\)\((.*)\)", of).groups()  # type: ignore[union-attr]
    plain_types = [argument.strip() for argument in [result, *arguments.split(",")]]
    return "ctypes.CFUNCTYPE(" + ", ".join("ctypes.c_void_p" if name.endswith("*") else C_TYPES[name]
                                           for name in plain_types) + ")"


def ctypes_type(of: Record, callbacks: Iterable[str] = ()) -> str:
    if of.get("function"):
        return callback_type(str(of["type"]))
    name, depth = of["type"], of.get("pointer", 0)
    if name in callbacks:
        return str(name)
    if name == "char" and depth:
        return "ctypes.c_char_p"
    if name == "void" and depth:
        return "ctypes.c_void_p"
    base = without_struct(name) if name.startswith("struct ") else C_TYPES[name]
    for _ in range(depth):
        base = f"ctypes.POINTER({base})"
    return f"{base} * {of['count']}" if "count" in of else base


def write_api(api: Api) -> List[str]:
    lines = HEAD.format(about="The C side: structs, and what every function takes and returns.").splitlines()
    lines += ["import ctypes", "from typing import Any, Dict, Tuple", "",
              f'__version__ = "{api.data["version"]}"', f"VERSION = {api.constants['MUSLIN_VERSION']}", ""]
    lines += [f"{name} = {callback_type(of)}" for name, of in api.callbacks.items()] + [""]
    for struct in api.data["structs"]:
        lines += ["", f"class {struct['name']}(ctypes.Structure):", f'    """muslin/{struct["header"]}"""', "",
                  "    _fields_ = ["]
        for member in struct["members"]:
            line = f'        ("{member["name"]}", {ctypes_type(member)}),'
            lines += [line] if len(line) <= WIDTH else line.replace(", ", ",\n         ", 1).split("\n")
        lines += ["    ]", ""]
    for handle in api.data["handles"]:
        lines += ["", f"class {handle['name']}(ctypes.Structure):", f'    """muslin/{handle["header"]}, opaque"""', ""]
    lines += ["", "PROTOTYPES: Dict[str, Tuple[Any, Tuple[Any, ...]]] = {"]
    for function in api.data["functions"]:
        types = [ctypes_type(argument, api.callbacks) for argument in function["arguments"]]
        tail = "," if len(types) == 1 else ""
        opening = f'    "{function["name"]}": ({ctypes_type(function["returns"])}, ('
        if len(opening) + sum(len(of) + 2 for of in types) > WIDTH:
            lines.append(opening.rstrip("("))
            opening = "        ("
        lines += fill(opening, types, tail + ")),")
    return lines + ["}"]


# ---- constants.py ---------------------------------------------------------------------------------------------------

def write_constants(api: Api) -> List[str]:
    lines = HEAD.format(about="The library's constants and enums.").splitlines()
    lines += ["from ._library import library", "from ._values import Choice", ""]
    names = {without_prefix(name): value for name, value in api.constants.items()}
    lines += exported([*names, *(enum_class(name) for name in api.enums)]) + [""]
    lines += [f"{name} = {value}" for name, value in names.items()]
    for enum in api.data["enums"]:
        lines += ["", "", f"class {enum_class(enum['name'])}(Choice):", f'    """enum {enum["name"]}"""', ""]
        for name, short, value in enum_members(enum):
            comment = api.words.beside.get(name)
            lines += [f"    {short} = {value}"] if not comment else \
                wrap(f"{short} = {value}  # {comment}", "    ") if len(comment) + len(short) < 100 else \
                [*wrap(comment, "    # "), f"    {short} = {value}"]
        for name, function in WORDS.get(enum["name"], []):
            lines += ["", "    @property", f"    def {name}(self) -> str:", '        """In the library\'s words."""',
                      f'        return str(library.{function}(int(self)).decode("utf-8"))']
    return lines


# ---- errors.py ------------------------------------------------------------------------------------------------------

def write_errors(api: Api) -> List[str]:
    about = "One exception for each status. Where Python has one of the same name, it is one of those too."
    statuses = {name: number for name, number in api.enums["muslin_status_code"]["values"].items() if number}
    lines = HEAD.format(about=about).splitlines() + ["import builtins", "",
                                                     "from ._problem import CLASSES, MuslinError", ""]
    lines += exported(["MuslinError", *map(error_class, statuses)])
    for status in statuses:
        name = error_class(status)
        bases = f"MuslinError, builtins.{name}" if hasattr(builtins, name) else "MuslinError"
        words = api.words.beside[status]
        lines += ["", "", f"class {name}({bases}):",
                  *docstring("    ", f"{words[0].upper()}{words[1:]}.")]
    lines += ["", "", "CLASSES.update({"]
    return lines + [f"    {number}: {error_class(status)}," for status, number in statuses.items()] + ["})"]


# ---- calls, as Python sees them -------------------------------------------------------------------------------------

class Parameter(NamedTuple):
    """A parameter of a Python function."""

    name: str
    type: str
    optional: bool

    def text(self) -> str:
        return f"{self.name}: Optional[{self.type}] = None" if self.optional else f"{self.name}: {self.type}"


class Call:
    """A function of the library, sorted into what Python asks, prepares, passes and returns."""

    def __init__(self, api: Api, function: Record) -> None:
        self.api, self.function = api, function
        self.name: str = function["name"]
        self.arguments: List[Record] = function["arguments"]
        self.names: List[str] = [argument["name"] for argument in self.arguments]
        self.first: List[Parameter] = []      # values, in the order of C
        self.optional: List[Parameter] = []   # then arrays that may be left out
        self.specs: List[Parameter] = []      # then the specs
        self.last: List[Parameter] = []       # then out and statuses
        self.keywords: List[Parameter] = []   # then the members of the spec
        self.before: List[str] = []           # lines that prepare the call
        self.passed: List[str] = []           # what C gets
        self.after: Optional[int] = None      # how much of it comes before the rows that are filled
        self.outputs: List[Tuple[str, str, str]] = []  # (name, Python type, how it is read)
        self.arrays: List[str] = []
        self.counted: Optional[str] = None    # how many elements the array before has that is not yet counted
        self.rows: Optional[str] = None       # the struct of an ask-then-fill call
        self.filled = ""                      # the name of the array that it fills
        self.parts: Optional[str] = None      # the struct of what those rows are made of
        self.numbers: Optional[Record] = None  # the argument of an ask-then-fill call of plain numbers
        self.callbacks: List[str] = []        # what is told how a call stands
        self.telling = False
        self.elementwise = "statuses" in self.names
        self.paged = "written" in self.names and sum(name.endswith("capacity") for name in self.names) == 2
        self.makes = next((self.api.handle(argument["type"]) for argument in self.arguments
                           if argument.get("pointer") == 2 and not argument.get("const")), None)
        self.owner = self.makes or (self.api.handle(self.arguments[0]["type"]) if self.arguments else None)
        self.read_handle: Optional[str] = None  # what a new handle reads, and keeps
        self.indent = "        " if self.owner else "    "
        for at, argument in enumerate(self.arguments):
            self.take(at, argument)
        if self.rows and self.outputs:
            self.outputs.insert(0, (self.filled, f"Tuple[{camel(self.rows)}, ...]", "tuple(rows_)"))

    @property
    def python_name(self) -> str:
        """Without the prefix, and of a method without what its class says."""
        own = self.owner["free"][:-len("free")] if self.owner else ""
        return self.name[len(own):] if own and self.name.startswith(own) else without_prefix(self.name)

    def statement(self, opening: str, parts: Iterable[str]) -> List[str]:
        return statement(opening, parts, self.indent + ("    " if self.callbacks else ""))

    # ---- what C takes ----

    def take(self, at: int, argument: Record) -> None:
        name, of, pointer = argument["name"], argument["type"], argument.get("pointer", 0)
        if of == "size_t":
            self.take_size(name, argument)
        elif of == "struct muslin_problem":
            self.telling = True
        elif self.api.handle(of):
            self.take_handle(name, of, argument.get("pointer", 0) == 2)
        elif self.api.frozen(of):
            self.passed.append("ctypes.byref(ALLOCATOR)")
        elif of.startswith("struct "):
            self.take_struct(at, name, argument)
        elif of in self.api.callbacks:
            self.take_callback(name, of)
        elif of == "void":
            self.passed.append("None")  # a callback's context: a Python callable needs none
        elif of == "char" and pointer:
            self.take_text(name, argument)
        elif pointer:
            self.take_pointer(at, name, argument)
        elif not (self.paged and name == "first"):
            self.take_number(name, argument)

    def take_size(self, name: str, argument: Record) -> None:
        """A number of elements; strides and capacities are told by whoever makes the array."""
        if argument.get("pointer"):
            if name not in HOW_MUCH:
                self.give_number(name, argument)
        elif not name.endswith(("_size", "capacity")) and name != "cap":
            self.passed.append(str(self.counted))
            self.counted = None

    def take_handle(self, name: str, of: str, is_out: bool) -> None:
        if self.makes is None and is_out:
            self.before.append(f"{name}_ = ctypes.POINTER(structs.{without_struct(of)})()")
            self.passed.append(f"ctypes.byref({name}_)")
            self.outputs.append((name, camel(of), f"{camel(of)}._lent({name}_, self)"))
        elif self.makes is None:
            self.passed.append("self._open()")
        elif is_out:
            self.before.append(f"made = ctypes.POINTER(structs.{without_struct(of)})()")
            self.passed.append("ctypes.byref(made)")
        else:
            self.read_handle = name
            self.first.append(Parameter(name, camel(of), False))
            self.passed.append(f'opened({camel(of)}, {name}, "{name}")')

    def take_struct(self, at: int, name: str, argument: Record) -> None:
        struct, const = without_struct(argument["type"]), argument.get("const", False)
        if any(follows.endswith("_size") for follows in self.names[at + 1:at + 2]):
            self.take_rows(name, struct, "capacity" in self.names and not const)
        elif const:
            self.take_spec(at, name, struct)
        else:
            self.give_struct(name, struct)

    def take_pointer(self, at: int, name: str, argument: Record) -> None:
        of = argument["type"]
        if argument.get("const"):
            self.take_array(at, name, argument)
        elif self.names[at + 1:at + 2] == ["capacity"]:
            self.numbers, self.after = argument, len(self.passed)
        elif self.elementwise:
            self.take_output_array(name)
        elif name == "out" and of == "int64_t" and one_a_place(self.api, self.function):
            self.before.append(f"{name}_ = places_out(wish.places)")
            self.passed.append(f"{name}_")
            self.outputs.append((name, "Tuple[int, ...]", f"tuple({name}_[:wish.places])"))
        else:
            self.give_number(name, argument)

    def take_number(self, name: str, argument: Record) -> None:
        if argument["type"] == "muslin_len":
            self.first.append(Parameter(name, "LengthLike", False))
            self.passed.append(f'ticks_of({name}, "{name}")')
            return
        kind = "Id" if argument["type"] == "muslin_id" else self.api.enum_of_name(argument) or "int"
        self.first.append(Parameter(name, kind, False))
        self.passed.append(f'whole({name}, "{name}", {BITS[argument["type"]]})'.replace(", 64)", ")"))

    def take_callback(self, name: str, of: str) -> None:
        """What is told the numbers, and ends the call by answering true."""
        self.optional.append(Parameter(name, "Progress", True))
        self.before.append(f"with Told(structs.{of}, {name}) as {name}_:")
        self.passed.append(f"{name}_.function")
        self.callbacks.append(name)

    def take_text(self, name: str, argument: Record) -> None:
        if not argument.get("const"):
            return  # text out: see the body
        self.first.append(Parameter(name, "str", False))
        self.before.append(f"data = utf8({name})")
        self.passed.append("data")
        self.counted = "len(data)"

    def take_spec(self, at: int, name: str, struct: str) -> None:
        if name == "spec":
            self.specs.insert(0, Parameter("spec", camel(struct), True))
            self.keywords = [Parameter(member.name, given_type(member), True) for member in self.api.members(struct)]
            given = ", ".join(f"{member.name}={member.name}" for member in self.keywords)
            self.before += self.statement(f"wish = merged({camel(struct)}, spec, ", given.split(", "))
            self.passed.append("ctypes.byref(wish)")
            return
        subject = at == 0
        (self.first if subject else self.specs).append(Parameter(name, camel(struct), not subject))
        self.before.append(f'{name}_ = struct_of({camel(struct)}, {name}, "{name}")')
        self.passed.append(f"ctypes.byref({name}_)")

    def take_rows(self, name: str, struct: str, asking: bool) -> None:
        if asking:
            self.rows, self.parts = self.rows or struct, struct if self.rows else None
            self.filled = self.filled or name
            self.after = len(self.passed)
            return
        optional = name in OPTIONAL_ARRAYS
        (self.optional if optional else self.first).append(Parameter(name, f"Sequence[{camel(struct)}]", optional))
        after = self.arguments[self.names.index(name) + 2:]
        count = next(argument["name"] for argument in after if argument["type"] == "size_t")
        given = f"{name} or ()" if optional else name
        self.before.append(f'{name}_, {count}_ = rows_of({camel(struct)}, {given}, "{name}")')
        self.passed += [f"{name}_", f"ctypes.sizeof(structs.{struct})"]
        self.counted = f"{count}_"
        if not any(argument["name"] == name and argument.get("const") for argument in self.arguments):
            self.outputs.append((name, f"Tuple[{camel(struct)}, ...]",
                                 f"tuple({camel(struct)}._read(row) for row in {name}_[:{count}_])"))

    def take_array(self, at: int, name: str, argument: Record) -> None:
        of = argument["type"]
        if not counts_follow(self.arguments, at):
            self.optional.append(Parameter(name, "Integers", True))
            self.before.append(f'{name}_ = places_given({name}, "{name}", wish.places)')
            self.passed.append(f"{name}_")
            return
        if self.elementwise:
            kind, how = "Buffer", f'Numbers({name}, "{name}", 64)'
        elif of == "muslin_len":
            kind, how = "Lengths", f'gathered({name}, "{name}")'
        else:
            kind, how = "Integers", f'integers({name}, "{name}", {BITS[of]})'.replace(", 64)", ")")
        self.first.append(Parameter(name, kind, False))
        self.before.append(f"{name}_ = {how}")
        self.arrays.append(name)
        self.passed.append(f"{name}_.numbers")
        self.counted = self.counted or f"{name}_.count"

    def take_output_array(self, name: str) -> None:
        self.last.append(Parameter(name, "Buffer", True))
        if name == "statuses":
            self.before.append("statuses_ = statuses_of(statuses, out_)")
            self.passed.append("statuses_")
            return
        self.before.append(f"result, out_ = output(out, [{', '.join(array + '_' for array in self.arrays)}])")
        self.passed.append("out_.numbers")

    def give_struct(self, name: str, struct: str) -> None:
        self.before.append(f"{name}_ = new(structs.{struct})")
        self.passed.append(f"ctypes.byref({name}_)")
        self.outputs.append((name, camel(struct), f"{camel(struct)}._read({name}_)"))

    def give_number(self, name: str, argument: Record) -> None:
        of, value = argument["type"], f"{name}_.value"
        self.before.append(f"{name}_ = {C_TYPES[of]}()")
        self.passed.append(f"ctypes.byref({name}_)")
        enum = self.api.enum_of_name(argument)
        if of == "muslin_len":
            self.outputs.append((name, "Length", f"Length({value})"))
        elif name == "warnings":
            self.outputs.append((name, "Tuple[Warning, ...]", f"warnings_in({value})"))
        elif name in TRUTHS:
            self.outputs.append((name, "bool", f"bool({value})"))
        elif enum:
            self.outputs.append((name, enum, f"{enum}({value})"))
        else:
            self.outputs.append((name, "Id" if of == "muslin_id" else "int", value))

    # ---- what Python sees ----

    @property
    def several(self) -> Optional[str]:
        """The class that holds several outputs."""
        return camel(self.name) if len(self.outputs) > 1 else None

    def returns(self) -> str:
        if self.makes:
            return "None"
        if self.numbers:
            return "List[Id]" if self.numbers["type"] == "muslin_id" else "List[int]"
        if self.paged:
            return f"Iterator[{camel(str(self.rows))}]"
        if self.rows and not self.outputs:
            return f"List[{camel(self.rows)}]"
        if self.elementwise:
            return "Buffer"
        if self.writes_text:
            return "Formatted" if "exact" in self.names else "str"
        result = self.function["returns"]
        if result["type"] != "muslin_status":
            return "str" if result.get("pointer") else "Length" if result["type"] == "muslin_len" else "int"
        return self.several or self.outputs[0][1]

    @property
    def writes_text(self) -> bool:
        return "cap" in self.names

    def signature(self) -> List[str]:
        parameters = ["self"] if self.owner else []
        parameters += [parameter.text() for parameter in self.first + self.optional + self.specs + self.last]
        if self.keywords:
            parameters += ["*", *(keyword.text() for keyword in self.keywords)]
        name = "__init__" if self.makes else self.python_name
        return fill(f"{self.indent[4:]}def {name}(", parameters, f") -> {self.returns()}:")

    def sentence(self) -> str:
        """The header's first sentence; pages are Python's own business."""
        found = self.api.sentence(self.function)
        return re.sub(r", from number `first` on|:.*$", "", found.rstrip(".")) + "." if self.paged else found

    def body(self) -> List[str]:
        """What tells how it stands tells until the end."""
        lines = self.plain_body()
        at = next((at for at, line in enumerate(lines) if line.startswith("with Told(")), len(lines))
        return lines[:at + 1] + ["    " + line for line in lines[at + 1:]]

    def plain_body(self) -> List[str]:
        if self.makes:
            return self.body_of_making(self.makes)
        if self.rows or self.numbers:
            return self.body_of_asking()
        if self.function["returns"]["type"] != "muslin_status":
            answer = f"library.{self.name}({', '.join(self.passed)})"
            return [f'return str({answer}.decode("utf-8"))' if self.returns() == "str" else
                    f"return {self.returns()}({answer})"]
        if self.elementwise:
            return self.body_of_array_form()
        if self.writes_text:
            return self.body_of_text()
        call = "call_telling" if self.telling else "call"
        arrays = [name for name in self.arrays if self.shares_count(name)]
        lines = [f'same_count({", ".join(f"{name}={name}_" for name in arrays)})'] if arrays else []
        lines += self.statement(f"{call}(", [f'"{self.name}"', *self.passed])
        return [*self.before, *lines, *self.answer()]

    def shares_count(self, name: str) -> bool:
        """Whether two arrays have one count."""
        at = self.names.index(name)
        return any(other in self.arrays for other in (self.names[at - 1], self.names[at + 1])) and not self.elementwise

    def answer(self) -> List[str]:
        read = [how for _, _, how in self.outputs]
        return self.statement(f"return {self.several}(", read) if self.several else [f"return {read[0]}"]

    def body_of_making(self, makes: Record) -> List[str]:
        """A handle of its own; it keeps the one that it reads."""
        reads = [self.read_handle] if self.read_handle else []
        keep = [f"self.{name} = {name}" for name in reads]
        return [*self.before, *self.statement("call_telling(", [f'"{self.name}"', *self.passed]),
                *self.statement("self._own(", [f'"{makes["free"]}"', "made", *reads]), *keep]

    def body_of_asking(self) -> List[str]:
        if self.numbers:
            return [*self.before, *self.statement("return asked_numbers(", [
                f'"{self.name}"', C_TYPES[self.numbers["type"]], *self.passed])]
        rows = camel(str(self.rows))
        if self.paged:
            return [*self.before, *self.statement("return paged(", [
                f'"{self.name}"', f"structs.{self.rows}", f"structs.{self.parts}", f"{rows}._read",
                f"{camel(str(self.parts))}._read", f'"{self.api.parts[str(self.rows)][0]}"', "self", *self.passed[1:]])]
        asked = [f'"{self.name}"', f"structs.{self.rows}", f"{rows}._read", *self.passed[:self.after]]
        if not self.outputs:
            return [*self.before, *self.statement("return asked(", asked)]
        after = ", ".join(self.passed[self.after:])
        return [*self.before, *self.statement("rows_ = asked(", [*asked, f"after=[{after}]"]), *self.answer()]

    def body_of_array_form(self) -> List[str]:
        count = [f'same_count({", ".join(f"{name}={name}_" for name in [*self.arrays, "out"])})']
        at = self.before.index("statuses_ = statuses_of(statuses, out_)")
        return [*self.before[:at], *count, *self.before[at:],
                *self.statement("elementwise(", [f'"{self.name}"', *self.passed]), "return result"]

    def body_of_text(self) -> List[str]:
        """Text out: ask how long it is, then have it written."""
        before = [line for line in self.before if not line.startswith("exact_")]
        passed = [value for value in self.passed if "exact_" not in value]
        how = "text_out" if "exact" in self.names else "words_out"
        return [*before, f'return {how}({", ".join([repr(self.name).replace(chr(39), chr(34)), *passed])})']


def calls_of(api: Api) -> List[Call]:
    """All functions but the initial values, which the specs take, those that free handles, and the one that writes an
    allocator."""
    freed = {handle["free"] for handle in api.handles.values()}
    return [Call(api, function) for function in api.data["functions"]
            if not function["name"].endswith("_init") and function["name"] not in freed
            and not any(api.frozen(argument["type"]) and not argument.get("const")
                        for argument in function["arguments"])]


# ---- records.py -----------------------------------------------------------------------------------------------------

def write_record(api: Api, struct: str, asked: bool, answered: bool, completed: bool) -> List[str]:
    """A spec (asked), a result (answered), or what is both: a row that a call completes, or a spec read back."""
    members = api.members(struct)
    initial = struct in api.inits
    about = []
    for member in members:
        name = member.name if member.kind != "flag" else "flags"
        words = api.words.beside.get(f"{struct}.{name}", "") if member.kind != "flag" else ""
        if member.kind == "flag":
            words = f"the flag MUSLIN_{member.detail}"
        note = f" (initially {initial_words(api, struct, member)})" if initial else ""
        about.append(f"{member.name}: {words}{note}".replace(":  ", ": ") if words or note else member.name)
    base = "(Spec)" if asked else ""
    title = f"struct {struct}, muslin/{api.structs[struct]['header']}"
    lines = ["", "", "@dataclass(frozen=True)", f"class {camel(struct)}{base}:", *docstring("    ", title, about), ""]
    if asked:
        lines.append(f"    _kind = structs.{struct}")
        lines += [f'    _init = "{struct}_init"', ""] if initial else [""]
    for member in members:
        if asked and not answered:
            lines.append(f"    {member.name}: Optional[{given_type(member)}] = None")
        else:
            start = int(api.starts_with(struct, member) if member.kind == "flag" else
                        api.inits.get(struct, {}).get(member.name, 0))
            of = either_type(member, start, completed) if asked else answered_type(member)
            lines.append(f"    {member.name}: {of}")
    if asked:
        lines += ["", "    def _put(self, struct: Any) -> None:"]
        lines += [f"        {writing(member)}" for member in members]
    if answered:
        array = "".join(f", parts_{member.name}: Any" for member in members if member.kind == "parts")
        lines += ["", "    @classmethod", f'    def _read(cls, struct: Any{array}) -> "{camel(struct)}":']
        lines += fill("        return cls(", [f"{member.name}={reading(member)}" for member in members], ")")
    return lines


def write_records(api: Api) -> List[str]:
    calls = calls_of(api)
    asked, answered, completed = set(), set(), set()
    for call in calls:
        for argument in call.function["arguments"]:
            struct = without_struct(argument["type"])
            if struct not in api.structs or struct == "muslin_problem" or api.frozen(struct):
                continue
            in_rows = argument["name"] == "rows" and not call.rows
            if argument.get("const") or in_rows:
                asked.add(struct)
            if in_rows:
                completed.add(struct)
            if not argument.get("const"):
                answered.add(struct)
    structs = [struct for struct in api.structs if struct in asked | answered]
    several = [call for call in calls if call.several and not call.writes_text]
    about = "Specs, which are asked with, and results, which are answered."
    lines = HEAD.format(about=about).splitlines()
    used = sorted({member.detail for struct in structs for member in api.members(struct)
                   if member.kind in ("enum", "maybe", "flag")} | {"Warning"} |
                  {kind for call in several for _, kind, _ in call.outputs
                   if kind in map(enum_class, api.enums)}, key=lambda name: (not name.isupper(), name))
    lines += ["from dataclasses import dataclass", "from typing import Any, Optional, Tuple", "",
              "from . import _api as structs", "from ._length import Length, LengthLike, put_length",
              "from ._records import Spec, warnings_in", "from ._values import Id, put, put_flag, put_sign"]
    lines += fill("from .constants import (", used, ")") + [""]
    lines += exported([*map(camel, structs), *(str(call.several) for call in several)])
    for struct in structs:
        lines += write_record(api, struct, struct in asked, struct in answered, struct in completed)
    for call in several:
        lines += ["", "", "@dataclass(frozen=True)", f"class {call.several}:",
                  f'    """What {without_prefix(call.name)}() answers."""', "",
                  *(f"    {name}: {kind}" for name, kind, _ in call.outputs)]
    return lines


# ---- calls.py -------------------------------------------------------------------------------------------------------

def call_lines(call: Call) -> List[str]:
    """A function or method, whole."""
    where = f"{call.name}() in muslin/{call.function['header']}. Since {call.function['since']}."
    sentence = call.sentence()
    members = [f"Keywords: the members of {call.specs[0].type}, over those of spec."] if call.keywords else []
    pages = ["They are asked for a page at a time, and each has its parts with it."] if call.paged else []
    return [*call.signature(), *docstring(call.indent, sentence or where, pages, members, [where] if sentence else []),
            *(call.indent + line for line in call.body())]


def write_calls(api: Api) -> List[str]:
    calls = [call for call in calls_of(api) if not call.owner]
    text: List[str] = []
    for call in calls:
        text += ["", "", *call_lines(call)]
    about = "The calls, one for each function of the library that takes no handle."
    return [*HEAD.format(about=about).splitlines(), *imports_of(api, text), "",
            *exported(call.python_name for call in calls), *text]


# ---- handles.py -----------------------------------------------------------------------------------------------------

def write_handles(api: Api) -> List[str]:
    """A class for each handle: what makes it is its __init__, and the functions that take it first are its methods."""
    calls = calls_of(api)
    text: List[str] = []
    for name, handle in api.handles.items():
        own = [call for call in calls if call.owner and call.owner["name"] == name]
        own.sort(key=lambda call: call.makes is None)
        text += ["", "", f"class {camel(name)}(Handle):", f'    """struct {name}, muslin/{handle["header"]}"""']
        for call in own:
            text += ["", *call_lines(call)]
    return [*HEAD.format(about="The handles, each a class with the functions that take it.").splitlines(),
            *imports_of(api, text), "", *exported(map(camel, api.handles)), *text]


def imports_of(api: Api, lines: List[str]) -> List[str]:
    """Just what the lines use."""
    text = re.sub(r'"[^"\n]*"', "", re.sub(r'""".*?"""', "", "\n".join(lines), flags=re.S))
    used = set(re.findall(r"\b[A-Za-z_]\w*\b", text))

    def wanted(names: Iterable[str]) -> List[str]:
        return sorted(used & set(names), key=lambda name: (name.lower(), name))

    records = re.findall(r"^class (\w+)", "\n".join(write_records(api)), re.M)
    sources = [("._buffers", ["Buffer", "Integers", "Lengths", "Numbers", "elementwise", "gathered", "integers",
                              "output", "places_given", "places_out", "same_count", "statuses_of"]),
               ("._handle", ["ALLOCATOR", "Handle", "Progress", "Told", "opened"]),
               ("._length", ["Formatted", "Length", "LengthLike", "ticks_of"]),
               ("._library", ["library"]),
               ("._problem", ["call", "call_telling"]),
               ("._records", ["asked", "asked_numbers", "merged", "paged", "rows_of", "struct_of", "text_out",
                              "warnings_in", "words_out"]),
               ("._values", ["Id", "new", "utf8", "whole"]),
               (".constants", [enum_class(name) for name in api.enums]),
               (".records", records)]
    imports = ["import ctypes"] if "ctypes" in used else []
    typing = wanted(["Iterator", "List", "Optional", "Sequence", "Tuple"])
    imports += [f"from typing import {', '.join(typing)}", "",
                "from . import _api as structs"]
    for module, names in sources:
        found = wanted(names)
        if found:
            line = f"from {module} import {', '.join(found)}"
            imports += [line] if len(line) <= WIDTH else fill(f"from {module} import (", found, ")")
    return imports


def files(api: Api) -> Dict[str, str]:
    written = {"_api.py": write_api(api), "constants.py": write_constants(api), "errors.py": write_errors(api),
               "records.py": write_records(api), "calls.py": write_calls(api), "handles.py": write_handles(api)}
    return {name: "\n".join(lines) + "\n" for name, lines in written.items()}


def main(arguments: List[str]) -> int:
    if arguments not in ([], ["--check"]):
        print(__doc__)
        return 2
    return keep_current(PACKAGE, files(Api()), check=bool(arguments), program="bindings/python/generate.py")


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
