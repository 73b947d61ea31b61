# SPDX-License-Identifier: MIT
"""The package reaches all that the library exports, and holds its structs, enums and constants as they are."""
import ctypes
import inspect
import json
import re
from typing import Any, Dict, List, Set

import pytest

import muslin
from conftest import ROOT
from muslin import calls, constants, handles, records, structs
from muslin._handle import Handle
from muslin._records import Spec

API: Dict[str, Any] = json.loads((ROOT / "lib" / "abi" / "api.json").read_text(encoding="utf-8"))
FUNCTIONS: List[str] = [function["name"] for function in API["functions"]]
INITS: Dict[str, Dict[str, int]] = {init["struct"]: init["values"] for init in API["inits"]}
STRUCTS = {struct["name"]: struct for struct in API["structs"]}
HANDLES: Dict[str, Dict[str, str]] = {handle["name"]: handle for handle in API["handles"]}


def short(name: str) -> str:
    return name.replace("muslin_", "", 1).replace("MUSLIN_", "", 1)


def specs() -> List[Any]:
    return [kind for kind in vars(records).values()
            if isinstance(kind, type) and issubclass(kind, Spec) and kind is not Spec]


def callables() -> Dict[str, Any]:
    """What Python calls for each function of the library: a function, or a method of the handle that comes first."""
    found: Dict[str, Any] = {f"muslin_{name}": getattr(calls, name) for name in calls.__all__}
    for kind in (getattr(handles, name) for name in handles.__all__):
        handle = next(handle for name, handle in HANDLES.items()
                      if kind.__name__ == "".join(word.capitalize() for word in short(name).split("_")))
        for name, method in vars(kind).items():
            own = handle["free"][:-len("free")] + name
            if name == "__init__":
                found[handle["create"]] = method
            elif not name.startswith("_"):
                found[own if own in FUNCTIONS else f"muslin_{name}"] = method
    return found


# ---- functions ------------------------------------------------------------------------------------------------------

def test_every_exported_function_is_bound() -> None:
    exported = (ROOT / "lib" / "exports.txt").read_text(encoding="utf-8").split("\n")
    assert sorted(structs.PROTOTYPES) == sorted(line for line in exported if line and not line.startswith("#"))


def test_every_bound_function_takes_what_its_header_says() -> None:
    for function in API["functions"]:
        bound = getattr(muslin.library, function["name"])
        assert len(bound.argtypes) == len(function["arguments"]), function["name"]


def test_every_function_has_its_call_method_spec_or_place_in_the_library() -> None:
    inits = {kind._init for kind in specs() if kind._init}
    freed = {handle["free"] for handle in HANDLES.values()}
    parts: List[Set[str]] = [set(callables()), inits, freed, {"muslin_allocator_libc", "muslin_problem_init"}]
    assert set().union(*parts) == set(FUNCTIONS)
    assert sum(map(len, parts)) == len(FUNCTIONS)


def test_every_function_that_takes_a_handle_first_is_a_method() -> None:
    for function in API["functions"]:
        first = "".join(argument["type"] for argument in function["arguments"][:1]).replace("struct ", "")
        made = any(argument.get("pointer") == 2 for argument in function["arguments"])
        if function["name"] in callables():
            assert (first in HANDLES or made) == (callables()[function["name"]].__module__ == "muslin.handles")


def test_every_call_and_handle_is_there_at_the_top() -> None:
    assert all(getattr(muslin, name) is getattr(calls, name) for name in calls.__all__)
    assert all(getattr(muslin, name) is getattr(handles, name) for name in handles.__all__)
    assert all(issubclass(getattr(handles, name), Handle) for name in handles.__all__)
    assert len(handles.__all__) == len(HANDLES)


def test_every_call_says_what_it_answers() -> None:
    assert [name for name, called in callables().items() if len(str(inspect.getdoc(called))) < 40] == []


def test_the_keywords_of_a_call_are_the_members_of_its_spec() -> None:
    for function in API["functions"]:
        spec = [argument["type"] for argument in function["arguments"] if argument["name"] == "spec"]
        if not spec or function["name"] not in callables():
            continue
        parameters = inspect.signature(callables()[function["name"]]).parameters.values()
        keywords = [parameter.name for parameter in parameters if parameter.kind is parameter.KEYWORD_ONLY]
        described = STRUCTS[spec[0].replace("struct ", "")]
        members = [member["name"] for member in described["members"] if member["name"] not in ("size", "flags", "pad")]
        own = re.sub("_spec$", "", described["name"])
        flags = [re.sub(f"^({own}|[^_]*_[^_]*)_", "", flag.lower()) for flag in described.get("flags", [])]
        assert keywords == members + flags, function["name"]


def test_the_allocator_can_be_reached() -> None:
    """It is the one function without a wrapper: its struct holds pointers to functions."""
    allocator = structs.muslin_allocator()
    assert muslin.library.muslin_allocator_libc(ctypes.byref(allocator)) == muslin.Status.OK
    block = allocator.alloc(allocator.context, 8)
    ctypes.memset(block, 7, 8)
    block = allocator.realloc(allocator.context, block, 8, 4096)
    assert ctypes.string_at(block, 8) == bytes([7] * 8)
    allocator.free(allocator.context, block, 4096)


# ---- structs --------------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("struct", [struct for struct in API["structs"] if not struct.get("frozen")],
                         ids=lambda struct: str(struct["name"]))
def test_a_struct_lies_as_the_header_has_it(struct: Dict[str, Any]) -> None:
    kind = getattr(structs, struct["name"])
    assert ctypes.sizeof(kind) == struct["bytes"]
    assert [(name, getattr(kind, name).offset) for name, *_ in kind._fields_] == \
        [(member["name"], member["offset"]) for member in struct["members"]]


@pytest.mark.parametrize("kind", specs(), ids=lambda kind: str(kind.__name__))
def test_an_empty_spec_is_the_librarys_initial_value(kind: Any) -> None:
    struct = kind()._struct()
    initial = INITS.get(kind._kind.__name__, {})
    assert struct.size == ctypes.sizeof(struct)
    assert {name: getattr(struct, name) for name, *_ in struct._fields_ if name != "size"} == \
        {name: initial.get(name, 0) for name, *_ in struct._fields_ if name != "size"}


# ---- enums and constants --------------------------------------------------------------------------------------------

@pytest.mark.parametrize("enum", API["enums"], ids=lambda enum: str(enum["name"]))
def test_an_enum_has_the_headers_numbers(enum: Dict[str, Any]) -> None:
    name = "".join(word.capitalize() for word in short(enum["name"]).replace("_code", "").split("_"))
    members = getattr(muslin, name)
    assert [int(member) for member in members] == list(enum["values"].values())
    assert all(full.endswith(member.name) for full, member in zip(enum["values"], members))


def test_the_constants_have_the_headers_values() -> None:
    for constant in API["constants"]:
        assert getattr(muslin, short(constant["name"])) == constant["value"]


def test_the_words_of_an_enum_are_the_librarys() -> None:
    assert constants.Argument.SEAM_ALLOWANCE.words == "seam allowance"
    assert constants.LengthUnit.YARD.word == "yd"
    assert all(warning.sentence.endswith(".") for warning in constants.Warning)
    assert muslin.argument_count() == len(constants.Argument)
    assert len({argument.words for argument in constants.Argument}) == len(constants.Argument)


def test_the_version_is_the_headers() -> None:
    assert muslin.__version__ == API["version"] == muslin.version_text()
    assert muslin.version() == muslin.VERSION
