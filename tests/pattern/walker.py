"""The size of a top, worked out from the file alone: sums of fractions, in ticks, written without the library.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import re
from fractions import Fraction
from math import isqrt
from typing import Any

TICKS = {"in": 8128, "yd": 36 * 8128, "mm": 320, "cm": 3200}
Size = tuple[Fraction, Fraction]


def ticks(text: str) -> Fraction:
    """Of a length with one unit: "2 1/2 in"."""
    number, unit = re.fullmatch(r"(.*?)\s*([a-z]+)", text.strip()).groups()  # type: ignore[union-attr]
    return sum((Fraction(part) for part in number.split()), Fraction(0)) * TICKS[unit]


def root_two(length: Fraction) -> Fraction:
    """Times the root of two, to the nearest tick."""
    assert length.denominator == 1
    return Fraction((isqrt(8 * length.numerator**2) + 1) // 2)


class Walker:
    """One size of a file."""

    def __init__(self, file: Any, size: Any) -> None:
        self.file = file
        self.lengths = {**file.get("measures", {}), **size.get("measures", {})}
        self.counts = {**file.get("counts", {}), **size.get("counts", {})}

    def measure(self, value: Any) -> Fraction:
        if isinstance(value, str):
            return self.measure(self.lengths[value]) if value[0].isalpha() else ticks(value)
        if "times" in value:
            return int(value["times"]) * self.measure(value["of"])
        return sum((self.measure(term) for term in value["sum"]), Fraction(0))

    def count(self, value: Any) -> int:
        return int(self.counts[value] if isinstance(value, str) else value)

    def node(self, value: Any) -> Size:
        if isinstance(value, str):
            return self.node(self.file["parts"][value])
        kind = next(name for name in KINDS if name in value)
        size: Size = KINDS[kind](self, value)
        return size

    def rectangle(self, value: Any) -> Size:
        if "size" in value:
            side = self.measure(value["size"])
            return side, side
        return self.measure(value["width"]), self.measure(value["height"])

    def across(self, sizes: "list[Size]") -> Size:
        assert len({height for _, height in sizes}) == 1
        return sum((width for width, _ in sizes), Fraction(0)), sizes[0][1]

    def down(self, sizes: "list[Size]") -> Size:
        width, height = self.across([(height, width) for width, height in sizes])
        return height, width

    def table(self, rows: "list[list[Size]]") -> Size:
        return self.down([self.across(row) for row in rows])

    def filled(self, rows: "list[list[Any]]", columns: int, wanted: int) -> "list[list[Size]]":
        sizes = [[self.node(item) for item in row] for row in rows]
        return [[sizes[row % len(sizes)][column % len(sizes[0])] for column in range(columns)] for row in range(wanted)]

    def repeat(self, value: Any) -> Size:
        width, height = self.node(value["repeat"])
        turns = value.get("quarters", [[0]])
        assert width == height or all(turn % 2 == 0 for row in turns for turn in row)
        return width * self.count(value["columns"]), height * self.count(value["rows"])

    def alternate(self, value: Any) -> Size:
        return self.table(self.filled(value["alternate"], self.count(value["columns"]), self.count(value["rows"])))

    def sashed(self, value: Any) -> Size:
        columns, rows, sash = self.count(value["columns"]), self.count(value["rows"]), self.measure(value["sash"])
        width, height = self.table(self.filled(value["sashed"], columns, rows))
        more = 1 if value.get("frame") else -1
        return width + (columns + more) * sash, height + (rows + more) * sash

    def on_point(self, value: Any) -> Size:
        (side, other), (between, _) = self.node(value["on point"][0][0]), self.node(value["between"][0][0])
        assert side == other == between and "sash" not in value and "float" not in value
        return root_two(self.count(value["columns"]) * side), root_two(self.count(value["rows"]) * side)

    def log_cabin(self, value: Any) -> Size:
        width, height = self.node(value["log cabin"])
        for log in value["logs"]:
            wide = self.measure(log["width"])
            if log["side"] in ("left", "right"):
                width += wide
            else:
                height += wide
        return width, height

    def bordered(self, value: Any) -> Size:
        return self.with_borders(self.node(value["bordered"]), value["borders"])

    def with_borders(self, size: Size, borders: "list[Any]") -> Size:
        for border in borders:
            if "sides" in border:
                sides = {name: self.node(side) for name, side in border["sides"].items()}
                corner = sides["corner"]
                size = self.table([[corner, sides["top"], corner], [sides["left"], size, sides["right"]],
                                   [corner, sides["bottom"], corner]])
            else:
                wide = self.measure(border["width"])
                size = size[0] + 2 * wide, size[1] + 2 * wide
        return size

    def top(self) -> Size:
        return self.with_borders(self.node(self.file["top"]), self.file.get("borders", []))


def turned(walker: Walker, value: Any) -> Size:
    width, height = walker.node(value["turn"])
    return (height, width) if value["quarters"] % 2 else (width, height)


KINDS: "dict[str, Any]" = {
    "patch": Walker.rectangle,
    "unit": Walker.rectangle,
    "across": lambda walker, value: walker.across([walker.node(item) for item in value["across"]]),
    "down": lambda walker, value: walker.down([walker.node(item) for item in value["down"]]),
    "grid": lambda walker, value: walker.table([[walker.node(item) for item in row] for row in value["grid"]]),
    "turn": turned,
    "mirror": lambda walker, value: walker.node(value["mirror"]),
    "repeat": Walker.repeat,
    "alternate": Walker.alternate,
    "sashed": Walker.sashed,
    "on point": Walker.on_point,
    "log cabin": Walker.log_cabin,
    "bordered": Walker.bordered,
}
