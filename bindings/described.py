# SPDX-License-Identifier: MIT
"""The library's API as the generators of the bindings read it: lib/abi/api.json, and the words of the headers."""
import json
import re
from fractions import Fraction
from pathlib import Path
from typing import Any, Dict, List, NamedTuple, Optional, Tuple

ROOT = Path(__file__).resolve().parent.parent
INCLUDE = ROOT / "include" / "muslin"

Record = Dict[str, Any]

# Integers whose enum is named otherwise and not told by a comment.
ARGUMENT_ENUMS = {"unit": "muslin_length_unit", "layout": "muslin_backing_layout", "align": "muslin_edge",
                  "measure": "muslin_polygon_measure", "pressing": "muslin_set_pressing"}
# Integer outputs that are truth values.
TRUTHS = {"allowed", "exact"}
# Arguments that are truth values.
TRUTHS_GIVEN = {"mirrored"}
# Integers whose enum the API does not tell: arguments by function and name, and what a function returns.
TOLD_ENUMS = {"muslin_unit_recipe_at.kind": "muslin_unit_kind", "muslin_unit_recipe_at.method": "muslin_unit_method",
              "muslin_unit_step_sentence.step": "muslin_unit_step_kind", "muslin_id_sort": "muslin_sort",
              "muslin_status_name.status": "muslin_status_code", "muslin_status_sentence.status": "muslin_status_code"}
# Arrays that may be left out, which C takes as null.
OPTIONAL_ARRAYS = {"values", "given", "stock"}
# Sizes that a call writes for whoever fills an array or a buffer, and that Python need not show.
HOW_MUCH = {"count", "need", "failed", "written"}
# Members that hold one character.
SIGNS = {"decimal_sign"}


# ---- names ----------------------------------------------------------------------------------------------------------

def without_prefix(name: str) -> str:
    return re.sub(r"^(struct )?(muslin|MUSLIN)_", "", name)


def camel(name: str) -> str:
    """muslin_border_style -> BorderStyle"""
    return "".join(word.capitalize() for word in without_prefix(name).split("_"))


def enum_class(name: str) -> str:
    return camel(re.sub(r"_code$", "", name))


def enum_members(enum: Record) -> List[Tuple[str, str, int]]:
    """(C name, Python name, value): MUSLIN_EDGE_STRAIGHT is Edge.STRAIGHT."""
    names = list(enum["values"])
    own = re.sub("_KIND_$", "_", enum["name"].upper() + "_")
    shared = "_".join(names[0].split("_")[:2]) + "_"
    prefix = next((start for start in (own, shared) if all(name.startswith(start) for name in names)), "MUSLIN_")
    return [(name, name[len(prefix):], value) for name, value in enum["values"].items()]


def flag_keyword(flag: str, struct: str) -> str:
    """MUSLIN_YIELD_FROM_ONE_END -> from_one_end; MUSLIN_FIT_ACROSS_FRAME of muslin_fit_across_spec -> framed"""
    own = struct.replace("_spec", "").upper() + "_"
    return (flag[len(own):] if flag.startswith(own) else "_".join(flag.split("_")[2:])).lower()


def start_of(array: str) -> str:
    """The member of a row that says where its part of an array begins: corners -> first_corner"""
    return "first_" + re.sub("s$", "", array)


def without_struct(name: str) -> str:
    return name[len("struct "):] if name.startswith("struct ") else name


# ---- the headers' words ---------------------------------------------------------------------------------------------

def plain(comment: str) -> str:
    """A comment as one line of plain words, with every name in full: of "MUSLIN_ERR_RANGE, _CHOICE", both."""
    lines = [re.sub(r"^\s*\* ?", "", line) for line in comment.split("\n")]
    text = re.sub(r"\s+", " ", re.sub(r"\*(\w)", r"\1", " ".join(lines))).strip()
    return re.sub(r"\b(MUSLIN_[A-Z]+)_\w+(, _[A-Z]\w*)+",
                  lambda found: found.group().replace(", _", f", {found.group(1)}_"), text)


def first_sentence(comment: str) -> str:
    return re.split(r"(?<=[^.]\.)\s", plain(comment), maxsplit=1)[0]


class Words:
    """What the headers say beside and before declarations."""

    def __init__(self, api: Record) -> None:
        self.before: Dict[str, str] = {}
        self.beside: Dict[str, str] = {}
        for header in api["headers"]:
            self.read((INCLUDE / header).read_text(encoding="utf-8"))

    def read(self, text: str) -> None:
        for found in re.finditer(r"^MUSLIN_API [\w* ]*?\*?(muslin_\w+)\(|^struct (muslin_\w+) \{", text, re.M):
            name = found.group(1) or found.group(2)
            comment = self.comment_before(text[:found.start()].rstrip())
            if comment:
                self.before[name] = comment
            if found.group(2):
                self.read_members(name, text[found.end():text.index("\n};", found.end())])
        self.read_flags(text)
        for found in re.finditer(r"^    (MUSLIN_\w+) = [^,\n]*?,? *(/\*.*?\*/)$", text, re.M | re.S):
            if "\n" not in found.group(0).split("/*")[0]:
                self.beside[found.group(1)] = plain(found.group(2)[2:-2])

    def read_flags(self, text: str) -> None:
        """What stands beside flags, or before them: before several it is said of each."""
        said = ""
        for found in re.finditer(r"^#define (MUSLIN_\w+) +\d+u(?: +(/\*[^/]*?\*/))?$", text, re.M):
            before = self.comment_before(text[:found.start()].rstrip())
            said = found.group(2)[2:-2] if found.group(2) else before or said
            self.beside[found.group(1)] = plain(said)

    @staticmethod
    def comment_before(text: str) -> str:
        """The comment that ends a text, unless it is a section's title."""
        if not text.endswith("*/"):
            return ""
        comment = text[text.rindex("/*") + 2:-2]
        return "" if comment.startswith(" ----") else comment

    def read_members(self, struct: str, body: str) -> None:
        for found in re.finditer(r"^    [^/\n]*?(\w+)(?:\[\w+\])?;[ ]*/\*(.*?)\*/", body, re.M | re.S):
            self.beside[f"{struct}.{found.group(1)}"] = plain(found.group(2))


# ---- the API --------------------------------------------------------------------------------------------------------

def inches(ticks: int) -> str:
    """40 in, 2 1/2 in; ticks where 1/64 in does not suffice."""
    exact = Fraction(ticks, 8128)
    if 64 % exact.denominator:
        return f"{ticks} ticks"
    whole, part = divmod(exact, 1)
    return (str(whole) if not part else f"{whole} {part}" if whole else str(part)) + " in"


class Member(NamedTuple):
    """A member of a struct as bindings see it."""

    name: str
    kind: str    # length, id, number, truth, enum, maybe (an enum or 0), sign, warnings, numbers, flag, parts
    detail: str  # the enum's class, the flag's constant, or the class of the rows that are its parts


class Api:
    """lib/abi/api.json with what bindings make of it."""

    def __init__(self) -> None:
        data = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))
        self.data: Record = data
        self.structs: Dict[str, Record] = {struct["name"]: struct for struct in data["structs"]}
        self.handles: Dict[str, Record] = {handle["name"]: handle for handle in data["handles"]}
        self.enums: Dict[str, Record] = {enum["name"]: enum for enum in data["enums"]}
        self.inits: Dict[str, Record] = {init["struct"]: init["values"] for init in data["inits"]}
        self.callbacks: Dict[str, str] = {of["name"]: of["type"] for of in data["types"] if "(*)" in of["type"]}
        self.constants: Dict[str, int] = {constant["name"]: constant["value"] for constant in data["constants"]}
        self.parts: Dict[str, Tuple[str, str]] = dict(filter(None, map(self.parts_of, data["functions"])))
        self.words = Words(data)

    @staticmethod
    def parts_of(function: Record) -> Optional[Tuple[str, Tuple[str, str]]]:
        """Of a call that fills rows and, in an array of their own, what the rows are made of: the rows' struct, and the
        name and struct of that array. A row says where its parts begin (first_corner) and how many they are (corners).
        """
        filled = [(argument["name"], without_struct(argument["type"])) for argument in function["arguments"]
                  if argument["type"].startswith("struct ") and not argument.get("const")]
        if sum(argument["name"].endswith("capacity") for argument in function["arguments"]) < 2:
            return None
        (_, rows), parts = [one for one in filled if one[1] != "muslin_problem" and one[1] != ""][-2:]
        return rows, parts

    def frozen(self, of: str) -> bool:
        return bool(self.structs.get(without_struct(of), {}).get("frozen"))

    def handle(self, of: str) -> Optional[Record]:
        """The handle of a type's name, or None."""
        return self.handles.get(without_struct(of)) if of.startswith("struct ") else None

    def members(self, struct: str) -> List[Member]:
        """The members that mean something, then the flags as truth values."""
        members = []
        array, parts = self.parts.get(struct, ("", ""))
        for member in self.structs[struct]["members"]:
            name = member["name"]
            if name in ("size", "flags", array and start_of(array)) or re.fullmatch(r"pad\d*", name):
                continue
            if name == array:
                members.append(Member(name, "parts", camel(parts)))
            elif "count" in member:
                members.append(Member(name, "numbers", ""))
            elif member["type"] == "muslin_id":
                members.append(Member(name, "id", ""))
            elif member["type"] == "muslin_len":
                members.append(Member(name, "length", ""))
            elif name == "warnings":
                members.append(Member(name, "warnings", ""))
            elif "truth" in member:
                members.append(Member(name, "truth", ""))
            elif "enum" in member or self.enum_of_name(member):
                enum = enum_class(member["enum"]) if "enum" in member else self.enum_of_name(member)
                members.append(Member(name, "maybe" if "optional" in member else "enum", str(enum)))
            else:
                members.append(Member(name, "sign" if name in SIGNS else "number", ""))
        return members + [Member(flag_keyword(flag, struct), "flag", without_prefix(flag))
                          for flag in self.structs[struct].get("flags", [])]

    def starts_with(self, struct: str, flag: Member) -> bool:
        """Whether a flag is set in the initial value of a struct."""
        return bool(self.inits.get(struct, {}).get("flags", 0) & self.constants[f"MUSLIN_{flag.detail}"])

    def enum_of_name(self, argument: Record) -> Optional[str]:
        """The enum that an integer holds by its name alone."""
        name = ARGUMENT_ENUMS.get(argument["name"], f"muslin_{argument['name']}")
        fits = argument["type"] in ("int32_t", "uint32_t") and name in self.enums
        return enum_class(name) if fits else None

    def sentence(self, function: Record) -> str:
        """The header's first sentence on a function, or on its spec, or on the functions that it continues."""
        name = function["name"]
        spec = next((without_struct(argument["type"]) for argument in function["arguments"]
                     if argument["name"] == "spec"), "")
        names = [other["name"] for other in self.data["functions"]]
        for subject in (name, spec, *names[:names.index(name)][::-1]):
            found = first_sentence(self.words.before.get(subject, ""))
            if found and not found.startswith("MUSLIN_"):
                return found
        return ""


def counts_follow(arguments: List[Record], at: int) -> bool:
    """Whether an array, or one of those read with it, is followed by its count."""
    rest = arguments[at + 1:]
    while rest and rest[0].get("const") and not rest[0]["type"].startswith("struct "):
        rest = rest[1:]
    return bool(rest) and rest[0]["type"] == "size_t"


def one_a_place(api: Api, function: Record) -> bool:
    """Whether plain numbers without a count of their own stand for the places that a function's spec counts."""
    spec = next((without_struct(argument["type"]) for argument in function["arguments"] if argument["name"] == "spec"),
                "")
    return any(member["name"] == "places" for member in api.structs.get(spec, {}).get("members", []))


# ---- what is written of it ------------------------------------------------------------------------------------------

def keep_current(package: Path, files: Dict[str, str], check: bool, program: str) -> int:
    """Writes the files that differ, or names them, and returns 1, where they are only checked."""
    stale = [name for name, text in files.items()
             if not (package / name).exists() or (package / name).read_text(encoding="utf-8") != text]
    if check and stale:
        print(f"not current: {', '.join(stale)}: run {program}")
        return 1
    for name in stale:
        (package / name).write_text(files[name], encoding="utf-8")
    return 0
