#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Asks the C library, through the Python package, and prints what was asked and answered, a line of JSON each.

    asked.py SEED ROUNDS

Every function is asked in each round, with plausible numbers by chance; what takes a quilt is asked of quilts that
are built by chance. Rounds are added until each function has had an answer. test_equal.mjs asks the same and
compares. Numbers are written as text; lengths with an L before, so that none is taken for a count; choices by
JavaScript's words.
"""
import dataclasses
import enum
import importlib.util
import json
import random
import sys
from array import array
from pathlib import Path
from typing import Any, Dict, List, Optional, Set

import muslin

ROOT = Path(__file__).resolve().parent.parent.parent


def generator(of: str) -> Any:
    """generate.py of a binding."""
    spec = importlib.util.spec_from_file_location(f"{of}_generate", ROOT / "bindings" / of / "generate.py")
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


PY, JS = generator("python"), generator("js")
API = PY.Api()
ENUMS = {PY.enum_class(name): JS.choices(of) for name, of in API.enums.items()}
WORDS = {name: {number: word for word, number in of.items()} for name, of in ENUMS.items()}
CHANCE = random.Random()
INCH = 8128


# ---- what is answered -----------------------------------------------------------------------------------------------

def answer(value: Any) -> Any:
    """A result as JavaScript is to have it."""
    if isinstance(value, muslin.Length):
        return f"L{value.ticks}"
    if value is None or isinstance(value, (bool, str)):
        return value
    if isinstance(value, enum.IntEnum):
        return WORDS[type(value).__name__].get(int(value), None if value == 0 else str(int(value)))
    if isinstance(value, int):
        return str(value)
    if dataclasses.is_dataclass(value):
        return {JS.small(field.name): answer(getattr(value, field.name)) for field in dataclasses.fields(value)}
    return [answer(one) for one in value]


def told(function: Any, found: Any) -> Any:
    """The same where Python knows no enum and JavaScript does."""
    def word(enum_name: str, number: str) -> Any:
        return WORDS[enum_name].get(int(number), None if number == "0" else number)

    if function.returns[:1] == ["maybe"]:
        return word(function.returns[1], found)
    for token in function.outputs:
        if f"{function.c_name}.{token.name}" in JS.TOLD_ENUMS:
            found[token.name] = word(token.detail, found[token.name])
    return found


def refusal(error: muslin.MuslinError) -> Dict[str, Any]:
    return {"status": answer(error.status), "argument": answer(error.argument), "at": str(error.at),
            "bytes": str(error.bytes), "value": str(error.value), "limit": str(error.limit), "message": str(error)}


# ---- what is asked --------------------------------------------------------------------------------------------------

def length(name: str) -> int:
    if CHANCE.random() < 0.02:
        return CHANCE.choice([0, -1, 2**30, 2**30 + 1, 2**62 - 1, -2**62])
    if CHANCE.random() < 0.1:
        return CHANCE.randrange(1, 100 * INCH)
    if any(part in name for part in ("allowance", "take_up", "trim", "tolerance", "error", "grid", "loss", "ease")):
        return CHANCE.randrange(0, 3) * INCH // 8
    if any(part in name for part in ("quilt", "usable", "cloth", "labelled", "wanted", "mattress", "stock", "most")):
        return CHANCE.randrange(8 * 30, 8 * 90) * INCH // 8
    return CHANCE.randrange(8, 8 * 20) * INCH // 8


def whole(name: str) -> int:
    if name == "work_limit":
        return CHANCE.randrange(0, 20000)
    if name == "places":
        return CHANCE.randrange(1, 30)
    if name in ("seed", "label", "tag"):
        return CHANCE.randrange(1, 2**20)
    return 0 if CHANCE.random() < 0.02 else CHANCE.randrange(1, 12)


class Quilt:
    """What is known of one that is built: ids by what they are."""

    def __init__(self) -> None:
        self.ids: Dict[str, List[int]] = {"fabric": [], "measure": [], "node": []}

    def id(self, name: str) -> int:
        """One that suits a name; now and then none at all, or one of the wrong sort."""
        sort = "fabric" if "fabric" in name else "measure" if any(
            part in name for part in ("measure", "width", "height", "length", "size", "extent")) else "node"
        ids = self.ids[sort] if CHANCE.random() < 0.97 and name != "id" else sum(self.ids.values(), [])
        return CHANCE.choice(ids) if ids and CHANCE.random() < 0.97 else 0


def member_value(member: Any, quilt: Quilt) -> Any:
    kind, name = member.kind, member.name
    if kind == "length":
        return length(name)
    if kind == "id":
        return quilt.id(name)
    if kind in ("enum", "maybe"):
        return CHANCE.choice([*ENUMS[member.detail].values()])
    if kind in ("truth", "flag"):
        return CHANCE.random() < 0.3
    return "." if kind == "sign" else whole(name)


def members(struct: str, quilt: Quilt) -> Dict[str, Any]:
    """Of a spec: what it must be given, and now and then another member."""
    values = API.inits.get(struct, {})
    often = CHANCE.choice([0.03, 0.2]) if struct in API.inits else 0.9
    return {member.name: member_value(member, quilt) for member in API.members(struct)
            if member.kind not in ("warnings", "numbers", "parts")
            and (CHANCE.random() < often or (member.kind not in ("flag", "truth") and not values.get(member.name)
                                             and CHANCE.random() < CHANCE.choice([0, 0.5, 0.95])))}


def python_value(struct: str, name: str, value: Any) -> Any:
    """A member as the Python package takes it."""
    member = next(one for one in API.members(struct) if one.name == name)
    return muslin.Length(value) if member.kind == "length" else value


def js_value(struct: str, name: str, value: Any) -> Any:
    member = next(one for one in API.members(struct) if one.name == name)
    if member.kind in ("enum", "maybe"):
        return WORDS[member.detail][value]
    return f"L{value}" if member.kind == "length" else value if isinstance(value, (bool, str)) else str(value)


def record(struct: str, given: Dict[str, Any]) -> Any:
    members = {name: python_value(struct, name, value) for name, value in given.items()}
    return getattr(muslin, PY.camel(struct))(**members)


def js_record(struct: str, given: Dict[str, Any]) -> Dict[str, Any]:
    return {JS.small(name): js_value(struct, name, value) for name, value in given.items()}


class Asking:
    """The arguments of one call, for Python and for JavaScript."""

    def __init__(self, function: Any, quilt: Quilt, plain: bool) -> None:
        self.plain = plain
        self.python: Dict[str, Any] = {}
        self.js: Dict[str, Any] = {}
        self.quilt = quilt
        self.count: Optional[int] = None
        for token in function.tokens:
            if token.kind == "count":
                self.count = None
            elif token.name and token.way != ">" and token.kind not in ("progress", "handle", "statuses"):
                self.take(function, token)

    def take(self, function: Any, token: Any) -> None:
        name = next((one for one in function.names if JS.small(one) == token.name), token.name)
        struct, kind = f"muslin_{token.detail}", token.kind
        if kind in ("spec", "given"):
            given = {} if self.plain else members(struct, self.quilt)
            self.js[token.name] = js_record(struct, given)
            if name == "spec":
                self.python.update({key: python_value(struct, key, value) for key, value in given.items()})
                self.places = given.get("places", 0)
            else:
                self.python[name] = record(struct, given)
        elif kind in ("rows", "filled"):
            rows = [members(struct, self.quilt) for _ in range(0 if self.plain else CHANCE.randrange(0, 5))]
            self.js[token.name] = [js_record(struct, row) for row in rows]
            self.python[name] = [record(struct, row) for row in rows]
        elif kind in ("lengths", "ids", "int64s", "int32s", "places"):
            self.take_array(token, name)
        else:
            self.take_value(token, name)

    def take_array(self, token: Any, name: str) -> None:
        self.count = CHANCE.randrange(1, 7) if self.count is None else self.count
        if token.kind == "places":
            return
        numbers = [length(name) if token.kind == "lengths" else self.quilt.id(name) if token.kind == "ids" else
                   CHANCE.randrange(0, 4) if token.kind == "int32s" else whole(name) for _ in range(self.count)]
        self.python[name] = array("i" if token.kind == "int32s" else "q", numbers)
        self.js[token.name] = [f"L{number}" if token.kind == "lengths" else str(number) for number in numbers]

    def take_value(self, token: Any, name: str) -> None:
        if token.kind == "length":
            value: Any = length(name)
            self.python[name], self.js[token.name] = muslin.Length(value), f"L{value}"
        elif token.kind == "text":
            value = CHANCE.choice(["2 1/2 in", "6,35 cm", "1 yd 4 1/2 in", "1/3", "", "2 x", "63.5 mm", "½", "-5 in",
                                   "3 \u2044 4", "a\ud800", "7\" 3'", "blue\0white", "\ufeffgr\u00fcn \U0001f9f5"])
            self.python[name] = self.js[token.name] = value
        elif token.kind == "choice":
            word, number = CHANCE.choice([*ENUMS[token.detail].items()])
            self.python[name], self.js[token.name] = getattr(muslin, token.detail)(number), word
        elif token.kind == "truth":
            value = CHANCE.random() < 0.5
            self.python[name], self.js[token.name] = int(value), value
        else:
            value = self.quilt.id(name) if token.kind == "id" else whole(name)
            self.python[name], self.js[token.name] = value, str(value)


    def fix(self, function: Any, name: str, value: Any) -> None:
        """A value that is not left to chance: of an argument, or of a member of the spec. Lengths are ticks."""
        token = next((one for one in function.tokens if one.name == JS.small(name)), None)
        if token is None:
            struct = next(f"muslin_{one.detail}" for one in function.tokens if one.name == "spec")
            self.python[name] = python_value(struct, name, value)
            self.js["spec"][JS.small(name)] = js_value(struct, name, value)
            return
        struct = f"muslin_{token.detail}"
        if token.kind in ("rows", "filled"):
            self.python[name] = [record(struct, row) for row in value]
            self.js[token.name] = [js_record(struct, row) for row in value]
        elif token.kind == "spec":
            self.python[name], self.js[token.name] = record(struct, value), js_record(struct, value)
        elif isinstance(value, list):
            self.python[name] = array("i" if token.kind == "int32s" else "q", value)
            self.js[token.name] = [f"L{number}" if token.kind == "lengths" else str(number) for number in value]
        elif token.kind == "length":
            self.python[name], self.js[token.name] = muslin.Length(value), f"L{value}"
        else:
            self.python[name] = value
            self.js[token.name] = WORDS[token.detail][value] if token.kind == "choice" else answer(value)


# ---- asking ---------------------------------------------------------------------------------------------------------

FUNCTIONS = {function.c_name: function for function in JS.functions_of(API)}
CALLS = {call.name: call for call in PY.calls_of(API)}
HANDLES: Dict[str, Any] = {}
ANSWERED: Set[str] = set()


def ask_until(c_name: str, *arguments: Any, **more: Any) -> Any:
    """Asks until an answer comes, a few times."""
    for _ in range(40):
        found = ask(c_name, *arguments, **more)
        if found is not None:
            return found
    return None


def ask(c_name: str, quilt: Quilt, on: str = "", reads: str = "", named: str = "", plain: bool = False,
        **fixed: Any) -> Any:
    """One line: a call, on a handle or of one that is made, and what came of it."""
    function, call = FUNCTIONS[c_name], CALLS[c_name]
    asking = Asking(function, quilt, plain)
    for name, value in fixed.items():
        asking.fix(function, name, value)
    line: Dict[str, Any] = {"call": c_name, "given": asking.js}
    line.update({key: value for key, value in (("on", on), ("reads", reads), ("as", named)) if value})
    found = None
    try:
        if call.makes:
            first = [HANDLES[reads]] if reads else []
            found = HANDLES[named] = getattr(muslin, PY.camel(call.makes["name"]))(*first, **asking.python)
        else:
            owner = HANDLES[on] if on else muslin
            found = getattr(owner, call.python_name)(**asking.python)
            if isinstance(found, muslin.Cutplan):
                HANDLES[named] = found
            else:
                found = list(found) if call.paged else found
                line["answer"] = told(function, answer(found))
    except muslin.MuslinError as error:
        line["refused"] = refusal(error)
    print(json.dumps(line))
    if "refused" not in line:
        ANSWERED.add(c_name)
    return found


def methods(handle: str) -> List[str]:
    return [name for name, function in FUNCTIONS.items()
            if function.owner and not function.makes and function.owner["name"] == handle]


SQUARE = [{"piece": piece, "x": x * INCH, "y": y * INCH} for piece in (-1, 0)
          for x, y in ((0, 0), (4, 0), (4, 4), (0, 4))]
KIT = {"pieces": [{"cut_width": 20320, "cut_length": 20320, "count": 4}],
       "stock": {"kind": 4, "width": 20 * INCH, "length": 18 * INCH, "count": 30}}
SURE = [("muslin_seam_calibrate", {"cuts": [20320] * 4, "measured": 68072, "stitched": 2032}),
        ("muslin_cutlist_lists_from_stock", KIT), ("muslin_cutlist_lists_rows", KIT),
        ("muslin_shape_check", {"corners": SQUARE}),
        ("muslin_shape_template", {"corners": SQUARE, "piece": 0}),
        ("muslin_shape_measure", {"corners": SQUARE}),
        ("muslin_shape_foundation", {"corners": SQUARE, "corner": 4, "margin": 2032}),
        ("muslin_unit_outlines", {"kind": 2, "method": 1, "finished_width": 3 * INCH, "units": 4, "hand": 1}),
        ("muslin_unit_steps", {"kind": 2, "method": 2, "finished_width": 3 * INCH, "units": 4}),
        ("muslin_seam_carry_on", {"cut_total": 10 * INCH, "strips": 4, "measured": 68072, "later_cut": 69088}),
        ("muslin_stripquilt_pressing", {"strips": 42, "columns": 3, "rows": 3, "set": 1}),
        ("muslin_scatter_sets", {"prints": [2] * 6, "sets": 2, "strips_per_set": 6, "places": 12, "seed": 7}),
        *((f"muslin_logcabin_{call}", {"centre_width": 2 * INCH, "centre_height": 2 * INCH, "log_width": INCH,
                                       "rounds": 3, "blocks": 20, "widths": []})
          for call in ("plan", "logs", "strips")),
        ("muslin_repeat_common", {"width": 60 * INCH, "height": 80 * INCH, "least": INCH, "most": 12 * INCH})]


def nine_patch(quilt: Quilt, name: str) -> None:
    """A quilt that has an answer to every question, so that each is asked of one."""
    side = ask("muslin_quilt_measure", quilt, on=name, plain=True, name="side", value=2 * INCH)
    fabrics = [ask("muslin_quilt_fabric", quilt, on=name, plain=True, name=of) for of in ("blue", "white")]
    patches = [ask("muslin_quilt_patch", quilt, on=name, plain=True, fabric=fabric, width=side, height=side)
               for fabric in fabrics]
    dark, light = patches
    rows = [ask("muslin_quilt_join", quilt, on=name, plain=True, children=row, axis=1)
            for row in ([dark, light, dark], [light, dark, light])]
    block = ask("muslin_quilt_grid", quilt, on=name, plain=True, columns=3, rows=3, children=[*patches * 4, dark])
    top = ask("muslin_quilt_repeat", quilt, on=name, plain=True, node=block, columns=3, rows=2, turns=[0],
              pattern_columns=1, pattern_rows=1)
    made = [ask(f"muslin_quilt_{call}", quilt, on=name, plain=True, **fixed) for call, fixed in (
        ("shape", {"corners": SQUARE, "fabrics": [fabrics[0]], "width": side, "height": side}),
        ("unit", {"kind": 2, "method": 1, "width": side, "fabrics": fabrics}),
        ("trim", {"node": dark, "left": side}), ("turn", {"node": block, "quarter_turns": 1}),
        ("surround", {"centre": dark, "left": light, "right": light, "top": light, "bottom": light, "top_left": dark,
                      "top_right": dark, "bottom_left": dark, "bottom_right": dark}),
        ("sashed", {"columns": 2, "rows": 1, "sash": side, "sash_fabric": fabrics[0], "blocks": [block, block]}),
        ("sixty", {"cells": 2, "rows": 1, "height": side, "end_fabric": fabrics[0], "pieces": [
            {"fabric": fabric, "cells": 1} for fabric in fabrics]}),
        ("diagonal", {"columns": 2, "rows": 2, "side_fabric": fabrics[0], "corner_fabric": fabrics[1],
                      "blocks": [block] * 5}))]
    for kind, node in zip(("shape", "unit", "trim", "turn", "surround", "sashed", "sixty", "diagonal"), made):
        if node and f"muslin_quilt_read_{kind}" in FUNCTIONS:
            ask(f"muslin_quilt_read_{kind}", quilt, on=name, node=node)
    quilt.ids["fabric"] += [one for one in fabrics if one]
    quilt.ids["measure"] += [one for one in (side,) if one]
    quilt.ids["node"] += [one for one in (*patches, *rows, block, top, *made) if one]


def build(number: int) -> None:
    """A quilt by chance, all that can be read of it, and what is made of it."""
    quilt, name = Quilt(), f"quilt {number}"
    ask("muslin_quilt_create", quilt, named=name, plain=True, tag=number + 1)
    if name not in HANDLES:
        return
    nine_patch(quilt, name)
    making = [one for one in methods("muslin_quilt") if [token.kind for token in FUNCTIONS[one].outputs] == ["id"]
              and one != "muslin_quilt_id"]
    for call in CHANCE.sample(making, len(making)):
        made = ask_until(call, quilt, on=name)
        if made:
            sort = {"muslin_quilt_fabric": "fabric"}.get(call, "measure" if call.endswith(
                ("_measure", "_fixed", "_sum", "_extent")) else "node")
            quilt.ids[sort].append(made)
    for call in methods("muslin_quilt"):
        if call not in making:
            ask_until(call, quilt, on=name)
    for at, root in enumerate(quilt.ids["node"][::3]):
        solve(quilt, name, f"solution {number}.{at}", root)


def solve(quilt: Quilt, of: str, name: str, root: int) -> None:
    ask("muslin_solution_create", quilt, reads=of, named=name, plain=CHANCE.random() < 0.5, root=root)
    if name not in HANDLES:
        return
    for call in methods("muslin_solution"):
        ask_until(call, quilt, on=name)
    ask("muslin_solution_explain", quilt, on=name, node=root, axis=1)
    pressed, bought, plan = (f"{what} of {name}" for what in ("pressing", "yardage", "plan"))
    ask("muslin_pressing_create", quilt, reads=name, named=pressed, work_limit=CHANCE.randrange(0, 20000))
    ask("muslin_yardage_create", quilt, reads=name, named=bought, plain=CHANCE.random() < 0.8,
        work_limit=CHANCE.randrange(0, 20000))
    for handle, made in (("muslin_pressing", pressed), ("muslin_yardage", bought)):
        for call in methods(handle) if made in HANDLES else []:
            ask_until(call, quilt, on=made, named=plan)
    if bought in HANDLES:
        ask("muslin_yardage_plan", quilt, on=bought, named=plan, row=0)
    planned(quilt, plan)


def planned(quilt: Quilt, name: str) -> None:
    for call in methods("muslin_cutplan") if name in HANDLES else []:
        ask_until(call, quilt, on=name)


def main(seed: str, rounds: str) -> None:
    CHANCE.seed(int(seed))
    number = -1
    while number + 1 < int(rounds) or (ANSWERED < set(FUNCTIONS) and number < 50):
        number += 1
        for name, function in FUNCTIONS.items():
            if not function.owner:
                ask_until(name, Quilt())
        for name, fixed in SURE:
            ask(name, Quilt(), plain=True, **fixed)
        build(number)
        plan = f"plain plan {number}"
        ask("muslin_cutplan_create", Quilt(), named=plan, plain=True, work_limit=20000 * number, pieces=[
            {"cut_width": CHANCE.randrange(1, 160) * INCH // 8, "cut_length": CHANCE.randrange(1, 160) * INCH // 8,
             "count": CHANCE.randrange(1, 30)} for _ in range(6)])
        planned(Quilt(), plan)
        plan = f"plan {number}"
        ask_until("muslin_cutplan_create", Quilt(), named=plan, work_limit=CHANCE.randrange(0, 20000))
        planned(Quilt(), plan)


if __name__ == "__main__":
    main(*sys.argv[1:])
