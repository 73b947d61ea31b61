# SPDX-License-Identifier: MIT
"""The requests of the batch that is measured, and their answers by the Python model of the tests: exact fractions, lengths
read from text and written as text, as the command line does it."""

from types import SimpleNamespace

from muslin_model import fabric, seam, setting, stripset, text
from muslin_model.base import NEAREST

INCH = 8128
SEAM = SimpleNamespace(allowance=INCH // 4, take_up=0)
WRITTEN = SimpleNamespace(style=text.INCH_FRACTION, denominator=64, decimals=4, decimal_sign=ord("."), direction=NEAREST)


def inches(eighths):
    """As people write it."""
    return text.format_length(eighths * INCH // 8, WRITTEN)[0]


def request(number):
    """Five kinds of sums by turns, each over many sizes."""
    kind, turn = number % 5, number // 5
    if kind == 0:
        return {"command": "cut", "finished": inches(1 + turn % 400)}
    if kind == 1:
        return {"command": "row", "cut": inches(5 + turn % 99), "pieces": 1 + turn % 12}
    if kind == 2:
        return {"command": "yield", "usable": inches(320 + turn % 31), "segment": inches(12 + turn % 83), "trim": "1/2 in"}
    if kind == 3:
        return {"command": "join", "length": inches(400 + turn % 2003)}
    return {"command": "buy", "needed": inches(1 + turn % 1999)}


def ticks(words):
    return text.parse(words.encode())["value"]


def cut(asked):
    return {"cut": seam.cut_from_finished(ticks(asked["finished"]), SEAM)}


def row(asked):
    found = seam.row_equal(ticks(asked["cut"]), asked["pieces"], SEAM)
    return {name: found[name] for name in ("seams", "cut_total", "unfinished", "finished")}


def yielded(asked):
    spec = SimpleNamespace(usable_length=ticks(asked["usable"]), segment_cut=ticks(asked["segment"]),
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


SUMS = {"cut": cut, "row": row, "yield": yielded, "join": join, "buy": buy}
COUNTS = ("seams", "segments", "strips", "joins", "steps")


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
    told = {**told, **told["pieces"][0]} if told["command"] == "cut" else told
    return all(in_ticks(told[name]) == in_ticks(value) for name, value in answered.items())
