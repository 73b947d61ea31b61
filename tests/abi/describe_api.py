#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Reads include/muslin/*.h and describes the whole API as data: lib/abi/api.json, and for the library itself the values
of all constants: lib/base_constants.h.

    describe_api.py            writes both files
    describe_api.py --check    exits 1 and says what differs when they are not current
    describe_api.py --print    prints the description

Bindings, the layout table and the export check come from that file. It is the same on every machine: everything stands
in the order of the headers, and of the comments only five facts are kept, because the conventions make them part of the
API: since which version a function exists, which enum an integer member holds, whether it may be none of its values
("else 0"), whether it is a truth value ("1 when ...", "1: ...; 0: ..."), and which flags a struct knows.

A struct that is declared and never defined is a handle. Two functions are its own: the one that makes it, by a pointer
to a pointer, and the one that frees it.

Needs libclang and its Python module (Debian: python3-clang-14).
"""
import difflib
import json
import re
import sys
from pathlib import Path
from typing import Any, Dict, List, Optional, Tuple

from clang.cindex import Cursor, CursorKind, Diagnostic, Index, TranslationUnit, Type, TypeKind  # type: ignore[import]

ROOT = Path(__file__).resolve().parent.parent.parent
INCLUDE = ROOT / "include"
OUTPUT = ROOT / "lib" / "abi" / "api.json"
CONSTANTS = ROOT / "lib" / "base_constants.h"

# Of the description itself: raised when a reader of an older one could misread it. What is only added leaves it.
FORM = 1

ARGS = ["-std=c11", "-fparse-all-comments", "--target=x86_64-unknown-linux-gnu", f"-I{INCLUDE}"]

Record = Dict[str, Any]


class WrongHeader(Exception):
    """A header breaks the conventions that this description relies on."""


def headers_in_order() -> List[str]:
    """muslin.h lists the headers in the order in which they build on each other."""
    text = (INCLUDE / "muslin" / "muslin.h").read_text(encoding="utf-8")
    listed = re.findall(r'#include "(\w+\.h)"', text)
    present = {path.name for path in (INCLUDE / "muslin").glob("*.h")} - {"muslin.h"}
    if set(listed) != present:
        raise WrongHeader(f"muslin.h and the folder disagree on {sorted(set(listed) ^ present)}")
    return listed


def parse(source: str) -> TranslationUnit:
    unit = Index.create().parse("api.c", args=ARGS, unsaved_files=[("api.c", source)],
                                options=TranslationUnit.PARSE_DETAILED_PROCESSING_RECORD)
    errors = [str(found) for found in unit.diagnostics if found.severity >= Diagnostic.Warning]
    if errors:
        raise WrongHeader("\n".join(errors))
    return unit


def header_of(cursor: Cursor) -> Optional[str]:
    """The name of the muslin header in which something stands, or None."""
    if cursor.location.file is None:
        return None
    path = Path(cursor.location.file.name)
    return path.name if path.parent == INCLUDE / "muslin" else None


def comment_beside(cursor: Cursor) -> str:
    """The comment that starts on the line of a member, up to its end."""
    path = Path(cursor.location.file.name)
    rest = "\n".join(path.read_text(encoding="utf-8").splitlines()[cursor.location.line - 1:])
    line = rest.split("\n", 1)[0]
    if "/*" not in line:
        return ""
    return rest[rest.index("/*") + 2:].split("*/", 1)[0]


# ---- types ----------------------------------------------------------------------------------------------------------

def describe_type(of: Type) -> Record:
    """{"type": base name, "pointer": depth, "const": whether what is pointed at is constant}; zeros are left out."""
    depth = 0
    while of.kind == TypeKind.POINTER:
        pointee = of.get_pointee()
        if pointee.kind in (TypeKind.FUNCTIONPROTO, TypeKind.FUNCTIONNOPROTO):
            return {"type": of.spelling, "function": True}
        of, depth = pointee, depth + 1
    name = of.spelling
    constant = of.is_const_qualified()
    if constant:
        name = re.sub(r"\bconst\s+", "", name)
    described: Record = {"type": name}
    if depth:
        described["pointer"] = depth
    if depth and constant:
        described["const"] = True
    return described


# ---- the parts of the API -------------------------------------------------------------------------------------------

def meaning_of(comment: str) -> Record:
    """What the comment beside an integer member makes of it."""
    enum = re.search(r"\benum (muslin_\w+)", comment)
    if enum:
        return {"enum": enum.group(1), **({"optional": True} if re.search(r"\belse 0\b", comment) else {})}
    truth = re.match(r"\s*(1 (when|for|if)\b|[01]: )", comment) and not re.search(r"\b2: ", comment)
    return {"truth": True} if truth else {}


def describe_members(struct: Cursor) -> List[Record]:
    members = []
    for field in struct.type.get_fields():
        of = field.type
        count = None
        if of.kind == TypeKind.CONSTANTARRAY:
            count, of = of.element_count, of.element_type
        member = {"name": field.spelling, **describe_type(of)}
        if count is not None:
            member["count"] = count
        if of.spelling in ("int32_t", "uint32_t") and count is None:
            member.update(meaning_of(comment_beside(field)))
        member["offset"] = struct.type.get_offset(field.spelling) // 8
        members.append(member)
    return members


def describe_struct(struct: Cursor) -> Record:
    members = describe_members(struct)
    described: Record = {"name": struct.spelling, "header": header_of(struct)}
    if any("pointer" in member or "function" in member for member in members):
        for member in members:
            del member["offset"]
        return {**described, "frozen": True, "members": members}
    return {**described, "bytes": struct.type.get_size(), "members": members}


def known_flags(struct: Cursor, constants: List[str]) -> List[str]:
    """The flags that the comment beside `flags` names; a name followed by dots stands for all that begin with it."""
    flags = [field for field in struct.type.get_fields() if field.spelling == "flags"]
    if not flags:
        return []
    known: List[str] = []
    for name, dots in re.findall(r"\b(MUSLIN_\w+)(\.\.\.)?", comment_beside(flags[0])):
        known += [other for other in constants if other.startswith(name)] if dots else [name]
    missing = [name for name in known if name not in constants]
    if missing:
        raise WrongHeader(f"struct {struct.spelling} names unknown flags {missing}")
    return known


def describe_enum(enum: Cursor) -> Record:
    values = {value.spelling: value.enum_value for value in enum.get_children()
              if value.kind == CursorKind.ENUM_CONSTANT_DECL}
    return {"name": enum.spelling, "header": header_of(enum), "values": values}


def describe_function(function: Cursor, since: Optional[str]) -> Record:
    arguments = [{"name": argument.spelling, **describe_type(argument.type)}
                 for argument in function.get_arguments()]
    if any(not argument["name"] for argument in arguments):
        raise WrongHeader(f"{function.spelling} has an argument without a name")
    if since is None:
        raise WrongHeader(f"{function.spelling} does not say since which version it exists")
    return {"name": function.spelling, "header": header_of(function), "since": since,
            "returns": describe_type(function.result_type), "arguments": arguments}


def describe_handle(struct: Cursor, functions: List[Record]) -> Record:
    """An opaque struct, and the functions that make and free it."""
    of = f"struct {struct.spelling}"

    def named(wanted: Record) -> List[str]:
        """The functions with an argument like this."""
        return [function["name"] for function in functions
                if any({**argument, "name": ""} == wanted for argument in function["arguments"])]

    create = named({"name": "", "type": of, "pointer": 2})
    free = [name for name in named({"name": "", "type": of, "pointer": 1}) if name.endswith("_free")]
    if len(create) != 1 or len(free) != 1:
        raise WrongHeader(f"{of} is opaque and made by {create}, freed by {free}: one each is wanted")
    return {"name": struct.spelling, "header": header_of(struct), "create": create[0], "free": free[0]}


def since_of(cursor: Cursor) -> Optional[str]:
    found = re.findall(r"\bSince\s+(?:\*\s+)?(\d+(?:\.\d+)+)", cursor.raw_comment or "")
    return found[-1] if found else None


def macros_of(unit: TranslationUnit) -> List[Tuple[str, str, str]]:
    """(name, header, body) of each macro of the public headers that has a value."""
    macros = []
    for cursor in unit.cursor.get_children():
        header = header_of(cursor)
        if cursor.kind != CursorKind.MACRO_DEFINITION or header is None:
            continue
        tokens = [token.spelling for token in cursor.get_tokens()]
        body = " ".join(tokens[1:])
        if not body or cursor.spelling == "MUSLIN_API":
            continue
        macros.append((cursor.spelling, header, body))
    return macros


def evaluate(macros: List[Tuple[str, str, str]]) -> Dict[str, int]:
    """The values of integer macros, worked out by the compiler."""
    lines = [f"enum {{ value_of_{name} = ({name}) }};" for name, _, body in macros if not body.startswith("{")]
    unit = parse('#include "muslin/muslin.h"\n' + "\n".join(lines))
    prefix = "value_of_"
    return {value.spelling[len(prefix):]: value.enum_value
            for enum in unit.cursor.get_children() if enum.kind == CursorKind.ENUM_DECL
            for value in enum.get_children() if value.spelling.startswith(prefix)}


def describe_inits(macros: List[Tuple[str, str, str]], structs: List[Record], values: Dict[str, int]) -> List[Record]:
    """The ..._INIT macros, value by value. A problem is an output, and all zero but for its size."""
    members = {struct["name"]: [member["name"] for member in struct["members"]] for struct in structs}
    inits = []
    for name, header, body in macros:
        if not body.startswith("{") or name == "MUSLIN_PROBLEM_INIT":
            continue
        struct = name[:-len("_INIT")].lower()
        words = [word.strip() for word in body.strip("{} ").split(",")]
        if not name.endswith("_INIT") or struct not in members or len(words) != len(members[struct]):
            raise WrongHeader(f"{name} is not the initial value of each member of a struct")
        if words[0] != f"sizeof ( struct {struct} )":
            raise WrongHeader(f"{name} does not begin with the size of struct {struct}")
        initial = {member: values[word] if word in values else int(word.replace(" ", "").rstrip("uU"), 0)
                   for member, word in list(zip(members[struct], words))[1:]}
        inits.append({"name": name, "header": header, "struct": struct, "values": initial})
    return inits


def describe() -> Record:
    order = headers_in_order()
    unit = parse('#include "muslin/muslin.h"\n')
    macros = macros_of(unit)
    values = evaluate(macros)
    types: List[Record] = []
    enums: List[Record] = []
    structs: List[Record] = []
    handles: List[Cursor] = []
    functions: List[Record] = []
    since: Optional[str] = None
    for cursor in unit.cursor.get_children():
        header = header_of(cursor)
        if header is None:
            continue
        if cursor.kind == CursorKind.TYPEDEF_DECL:
            types.append({"name": cursor.spelling, "header": header,
                          "type": cursor.underlying_typedef_type.spelling})
        elif cursor.kind == CursorKind.ENUM_DECL:
            enums.append(describe_enum(cursor))
        elif cursor.kind == CursorKind.STRUCT_DECL and cursor.is_definition():
            described = describe_struct(cursor)
            flags = known_flags(cursor, list(values))
            structs.append({**described, "flags": flags} if flags else described)
        elif cursor.kind == CursorKind.STRUCT_DECL and cursor.get_definition() is None:
            if cursor.spelling not in [handle.spelling for handle in handles]:
                handles.append(cursor)
        elif cursor.kind == CursorKind.FUNCTION_DECL:
            since = since_of(cursor) or since  # one comment may speak for the functions after it
            functions.append(describe_function(cursor, since))
    version = ".".join(str(values[f"MUSLIN_VERSION_{part}"]) for part in ("MAJOR", "MINOR", "PATCH"))
    return {
        "form": FORM,
        "version": version,
        "headers": order,
        "types": types,
        "constants": [{"name": name, "header": header, "value": values[name]}
                      for name, header, _ in macros if name in values],
        "enums": enums,
        "structs": structs,
        "handles": [describe_handle(handle, functions) for handle in handles],
        "inits": describe_inits(macros, structs, values),
        "functions": functions,
    }


def render(value: Any, indent: int = 0) -> str:
    """JSON in which every innermost record has a line of its own, so that a change shows as one line."""
    flat = json.dumps(value, ensure_ascii=True)
    if not isinstance(value, (dict, list)) or indent + len(flat) <= 116:
        return flat
    pad = "  " * (indent // 2 + 1)
    if isinstance(value, dict):
        parts = [f"{pad}{json.dumps(key)}: {render(item, indent + 2)}" for key, item in value.items()]
        return "{\n" + ",\n".join(parts) + "\n" + pad[2:] + "}"
    return "[\n" + ",\n".join(pad + render(item, indent + 2) for item in value) + "\n" + pad[2:] + "]"


def constants_of(api: Record) -> str:
    """The constants as a list for base.c, in the order of the headers."""
    def row(constant: Record) -> str:
        name, value = constant["name"][len("MUSLIN_"):], constant["value"]
        return f'    X({name.lower()}, "{name}", INT64_C({value}))'
    rows = " \\\n".join(row(constant) for constant in api["constants"])
    return ("/* base_constants.h - the constants of the headers that are no enum's, in their order. Written by\n"
            " * tests/abi/describe_api.py: change the headers, not this file.\n"
            " *\n"
            " * SPDX-License-Identifier: MIT */\n"
            "#ifndef MUSLIN_BASE_CONSTANTS_H\n"
            "#define MUSLIN_BASE_CONSTANTS_H\n"
            "\n"
            f"#define CONSTANTS(X) \\\n{rows}\n"
            "\n"
            "#endif\n")


def is_current(path: Path, text: str) -> bool:
    """Whether a file says so; what differs is printed."""
    name = str(path.relative_to(ROOT))
    old = path.read_text(encoding="utf-8") if path.exists() else ""
    for line in difflib.unified_diff(old.splitlines(), text.splitlines(), name, "headers", lineterm="", n=1):
        print(line)
    if old != text:
        print(f"{name} is not current: run tests/abi/describe_api.py")
    return old == text


def main(arguments: List[str]) -> int:
    api = describe()
    files = {OUTPUT: render(api) + "\n", CONSTANTS: constants_of(api)}
    if arguments == ["--print"]:
        sys.stdout.write(files[OUTPUT])
        return 0
    if arguments == ["--check"]:
        return 0 if all([is_current(path, text) for path, text in files.items()]) else 1
    if arguments:
        print(__doc__)
        return 2
    OUTPUT.parent.mkdir(parents=True, exist_ok=True)
    for path, text in files.items():
        path.write_text(text, encoding="utf-8")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
