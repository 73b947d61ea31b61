# SPDX-License-Identifier: MIT
"""The requests of the batch that is measured, and their answers by the Python model of the tests: exact fractions,
lengths read from text and written as text, as the command line does it."""

from types import SimpleNamespace

from muslin_model import fabric, seam, setting, stripset, text, unit
from muslin_model.base import NEAREST, UP

INCH = 8128
SEAM = SimpleNamespace(allowance=INCH // 4, take_up=0)
WRITTEN = SimpleNamespace(style=text.INCH_FRACTION, denominator=64, decimals=4, decimal_sign=ord("."),
                          direction=NEAREST)


def inches(eighths):
    """As people write it."""
    return text.format_length(eighths * INCH // 8, WRITTEN)[0]


def request(number):
    """Six kinds of sums by turns, each over many sizes."""
    kind, turn = number % 6, number // 6
    if kind == 0:
        return {"command": "cut", "finished": inches(1 + turn % 400)}
    if kind == 1:
        return {"command": "row", "cut": inches(5 + turn % 99), "pieces": 1 + turn % 12}
    if kind == 2:
        return {"command": "yield", "usable": inches(320 + turn % 31), "segment": inches(12 + turn % 83),
                "trim": "1/2 in"}
    if kind == 3:
        return {"command": "join", "length": inches(400 + turn % 2003)}
    if kind == 4:
        return {"command": "buy", "needed": inches(1 + turn % 1999)}
    return {"command": "unit", "kind": "half-square", "size": inches(8 + turn % 65), "want": 1 + turn % 97}


def ticks(words):
    return text.parse(words.encode())["value"]


def cut(asked):
    return {"cut": seam.cut_from_finished(ticks(asked["finished"]), SEAM)}


def row(asked):
    found = seam.row_equal(ticks(asked["cut"]), asked["pieces"], SEAM)
    return {name: found[name] for name in ("seams", "cut_total", "unfinished", "finished")}


def yielded(asked):
    spec = SimpleNamespace(strip_length=ticks(asked["usable"]), segment_cut=ticks(asked["segment"]),
                           end_trim=ticks(asked["trim"]), resquare_loss=0, resquare_every=0, fold_clear=0)
    found = stripset.yield_of(spec, False)
    return {"segments": found["segments"], "strip_may_be_shorter_by": found["shorter_by"],
            "left_over": found["left_over"]}


def join(asked):
    spec = SimpleNamespace(length=ticks(asked["length"]), strip_length=40 * INCH, strip_cut=5 * INCH // 2,
                           allowance=INCH // 4, join=setting.STRAIGHT)
    found = setting.run(spec)
    return {"strips": found["strips"], "joins": found["joins"], "joined_length": found["joined"],
            "spare": found["spare"], "cloth_length": found["cloth_length"]}


def buy(asked):
    spec = SimpleNamespace(needed=ticks(asked["needed"]), extra=0, step=9 * INCH // 2, shrinkage=0, extra_share=0)
    found = fabric.purchase(spec)
    return {"bought": found["bought"], "steps": found["steps"], "spare": found["spare"]}


def half_squares(asked):
    spec = SimpleNamespace(finished_width=ticks(asked["size"]), finished_height=0, corner=0, allowance=INCH // 4,
                           take_up=0, half_addition=0, quarter_addition=0, trim_room=0, grid=INCH // 8, tolerance=0,
                           units=asked["want"], mirrored=0, kind=unit.HALF_SQUARE, method=unit.TWO, policy=unit.EXACT,
                           tip=1, direction=UP)
    found, cut_first = unit.recipe(spec), unit.pieces(spec)[0]
    return {"unfinished_width": found["unfinished_width"], "recipes": found["recipes"],
            "units_to_spare": found["spare_units"], "cut_width": cut_first["cut_width"], "count": cut_first["total"]}


SUMS = {"cut": cut, "row": row, "yield": yielded, "join": join, "buy": buy, "unit": half_squares}
COUNTS = ("seams", "segments", "strips", "joins", "steps", "recipes", "units_to_spare", "count")


def length(value):
    words, exact = text.format_length(value, WRITTEN)
    return {"ticks": int(value), "text": words, "exact": bool(exact)}


def answer(asked):
    found = SUMS[asked["command"]](asked)
    return {name: int(value) if name in COUNTS else length(value) for name, value in found.items()}


def in_ticks(value):
    return value["ticks"] if isinstance(value, dict) else value


def agree(told, answered):
    """Whether the command line says the same of everything that the model worked out."""
    told = {**told, **told["pieces"][0]} if told["command"] in ("cut", "unit") else told
    return all(in_ticks(told[name]) == in_ticks(value) for name, value in answered.items())
