"""Patterns put together by chance: patches and units in rows, repeated, alternated, sashed or on point, with borders.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import random
from typing import Any

UNITS = (("half-square", ("pieces", "two-at-a-time", "eight-at-a-time")), ("quarter-square", ("pieces",)),
         ("square-in-square", ("pieces",)))


def invented(seed: int) -> Any:
    """One that can be sewn: every edge meets."""
    chance = random.Random(seed)
    metric = seed % 4 == 3
    unit = "cm" if metric else "in"
    side = chance.choice((4, 5, 6)) if metric else chance.choice((2, 3, 4))
    names = chance.sample(["fir", "chalk", "clay", "dusk", "oak"], 4)
    made: Any = {
        "muslin_pattern": 1, "title": f"Made Up {seed}", "invented": True, "units": unit,
        "fabrics": {name: {"color": f"#{chance.randrange(16**6):06x}", "darkness": chance.randrange(1, 100)}
                    for name in names},
        "measures": {"side": f"{side} {unit}"}, "parts": parts(chance, names), "borders": [],
        "binding": {"fabric": names[0]}, "batting": {}, "backing": {"fabric": names[1]}}
    if chance.random() < 0.5:
        made["cutting"] = {"end trim": "1 cm" if metric else "1/2 in"}
    if chance.random() < 0.5:
        made["buying"] = {"straightening": "1 cm" if metric else "1/2 in"}
    columns, rows = chance.randrange(2, 6), chance.randrange(2, 6)
    made["top"] = top(chance, names, columns, rows)
    for number in range(chance.randrange(0, 3)):
        border = {"called": f"border {'ab'[number]}", "fabric": names[2 - number],
                  "width": f"{chance.choice((2, 3))} {unit}"}
        border.update(chance.choice(({}, {"corners": "top and bottom first"}, {"cornerstone": names[3]},
                                     {"corners": "mitred"})))
        made["borders"].append(border)
    if not made["borders"]:
        del made["borders"]
    made["sizes"] = [{"name": "small"}, {"name": "large", "measures": {"side": f"{side + 1} {unit}"}}]
    return made


def parts(chance: random.Random, names: "list[str]") -> Any:
    """Squares, units, and two blocks of three by three of them."""
    found: Any = {f"{name} square": {"patch": name, "size": "side"} for name in names[:3]}
    cells = list(found)
    for number, (kind, methods) in enumerate(chance.sample(UNITS, 2)):
        pair = chance.sample(names, 2)
        found[f"unit {'ab'[number]}"] = {"unit": kind, "method": chance.choice(methods), "size": "side",
                                         "fabrics": pair}
        cells.append(f"unit {'ab'[number]}")
    for name in ("first block", "second block"):
        rows = [[chance.choice(cells) for _ in range(3)] for _ in range(3)]
        found[name] = {"called": name, "block": True, "grid": rows}
    return found


def top(chance: random.Random, names: "list[str]", columns: int, rows: int) -> Any:
    size = {"columns": columns, "rows": rows}
    kind = chance.randrange(4)
    if kind == 0:
        return {"repeat": "first block", **size, "quarters": [[0, 1], [3, 2]]}
    if kind == 1:
        return {"alternate": [["first block", "second block"], ["second block", "first block"]], **size}
    if kind == 2:
        sashed: Any = {"sashed": [["first block", "second block"]], **size, "sash": "side", "fabric": names[3]}
        sashed.update(chance.choice(({}, {"cornerstone": names[0]}, {"cornerstone": names[0], "frame": True},
                                     {"frame": True})))
        return sashed
    return {"on point": [["first block"]], "between": [["second block"]], **size, "side fabric": names[2],
            "corner fabric": names[3]}
