"""Seams of a top: where those of two parts meet, how many a line across can meet, how long they are in all.

A part has ends of seams along its four sides, from the left or from the top, upright to that side or slanted. Two parts
that are sewn together have meetings where both have an end; an upright one hides the slanted ones beside it.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from collections import defaultdict
from fractions import Fraction
from math import isqrt
from typing import Any

from muslin_model.field import Diagonal
from muslin_model.root2 import Root2

from .quilt import Node, Quilt

LEFT, RIGHT, TOP, BOTTOM = range(4)
Ends = "list[tuple[Fraction, bool]]"
ROOT = Fraction(isqrt(2 * 10**40), 10**20)


def shifted(ends: Any, by: Fraction) -> Any:
    return [(at + by, upright) for at, upright in ends]


def quarter(sides: Any, width: Fraction, height: Fraction) -> Any:
    """Turned clockwise: what was left is above."""
    back = lambda ends: [(height - at, upright) for at, upright in ends]
    return [sides[BOTTOM], sides[TOP], back(sides[LEFT]), back(sides[RIGHT])]


def met(one: Any, other: Any) -> int:
    """Meetings along an edge that two parts share."""
    both = []
    for ends in (one, other):
        at: "dict[Fraction, list[bool]]" = defaultdict(list)
        for place, upright in ends:
            at[place].append(upright)
        both.append({place: sum(rows) or len(rows) for place, rows in at.items()})
    return sum(count * both[1].get(place, 0) for place, count in both[0].items())


class Seams:
    """Of one quilt."""

    def __init__(self, quilt: Quilt) -> None:
        self.quilt = quilt
        self.sides: "dict[Node, Any]" = {}
        self.inner: "dict[Node, int]" = {}
        self.crossed: "dict[Node, tuple[int, int]]" = {}
        for node in quilt.order:
            self.inner[node] = 0
            self.sides[node] = getattr(self, "of_" + node.kind.replace(" ", "_"))(node)
            self.crossed[node] = self.crossing(node)

    def meetings(self) -> int:
        return sum(self.quilt.counts[node] * self.inner[node] for node in self.quilt.order)

    def turned(self, node: Node, quarters: int) -> Any:
        sides, width, height = self.sides[node], node.width, node.height
        for _ in range(quarters):
            sides, width, height = quarter(sides, width, height), height, width
        return sides

    # ---- sides

    def of_patch(self, node: Node) -> Any:
        return [[], [], [], []]

    def of_unit(self, node: Node) -> Any:
        name, wide, high, corner = node.unit.name, node.width, node.height, node.unit.corner
        none, middle = Fraction(0), node.width / 2
        ends = {"half-square": [[high], [none], [wide], [none]],
                "quarter-square": [[high], [none], [wide], [none]],  # the last seam of it is pressed open
                "flying-geese": [[high], [high], [middle, middle], [none, wide]],
                "square-in-square": [[middle, middle]] * 4,
                "snowball": [[corner, high - corner], [corner, high - corner], [corner, wide - corner],
                             [corner, wide - corner]],
                "eight-pointed-star": [[Fraction(-1)]] * 4}[name]
        return [[(at, False) for at in side] for side in ends]

    def joined(self, node: Node, first: int, last: int, along: "tuple[int, int]") -> Any:
        """From the first to the last side; the other two are put together, with an end at each seam."""
        sides: Any = [[], [], [], []]
        place, before = Fraction(0), None
        for kid, quarters in node.kids:
            mine = self.turned(kid, quarters)
            if before is None:
                sides[first] = mine[first]
            else:
                self.inner[node] += met(before, mine[first])
                for side in along:
                    sides[side].append((place, True))
            for side in along:
                sides[side] += shifted(mine[side], place)
            place += kid.turned(quarters)[0 if first == LEFT else 1]
            before = mine[last]
        sides[last] = before
        return sides

    def of_across(self, node: Node) -> Any:
        return self.joined(node, LEFT, RIGHT, (TOP, BOTTOM))

    def of_down(self, node: Node) -> Any:
        return self.joined(node, TOP, BOTTOM, (LEFT, RIGHT))

    def of_set_in(self, node: Node) -> Any:
        return [[], [], [], []]

    def of_field(self, node: Node) -> Any:
        """Along u down to the right, along v up to the right, in blocks; rows lie between whole v."""
        columns, high = node.extra[:2]
        side = node.kids[0][0].width
        rows: "dict[int, dict[int, Any]]" = defaultdict(dict)
        for number, (kid, quarters) in enumerate(node.kids):
            inner = number >= columns * high
            row, column = divmod(number - columns * high if inner else number, columns - inner)
            rows[column - row][column + row + inner] = self.turned(kid, quarters)
        corners = {(0, 0), (columns + high - 1, columns - high)}
        edges = {}
        for v, row_of in rows.items():
            stands = {u for u in row_of} | {u + 1 for u in row_of}
            upright = [(Fraction(u * side), True) for u in stands if (u, v) not in corners]
            for u in row_of.keys() & {u + 1 for u in row_of}:
                self.inner[node] += met(row_of[u - 1][RIGHT], row_of[u][LEFT])
            edges[v] = tuple(upright + [end for u, part in row_of.items() for end in shifted(part[which], u * side)]
                             for which in (TOP, BOTTOM))
        for v in edges:
            if v - 1 in edges:
                self.inner[node] += met(edges[v - 1][0], edges[v][1])
        return [[], [], [], []]

    # ---- how many a line can meet

    def crossing(self, node: Node) -> "tuple[int, int]":
        """By a line from side to side, and by one from top to bottom."""
        if node.kind == "unit":
            return {"half-square": (1, 1), "quarter-square": (2, 2), "flying-geese": (2, 1), "square-in-square": (2, 2),
                    "snowball": (2, 2), "eight-pointed-star": (6, 6)}[node.unit.name]
        kids = [self.crossed[kid][::-1] if quarters % 2 else self.crossed[kid] for kid, quarters in node.kids]
        if node.kind in ("across", "down"):
            way = node.kind == "down"
            total = sum(kid[way] for kid in kids) + len(kids) - 1
            most = max(kid[not way] for kid in kids)
            return (most, total) if way else (total, most)
        if node.kind == "set in":
            return kids[0][0] + 2, kids[0][1] + 2
        if node.kind == "field":
            return self.crossing_field(node, [sum(kid) for kid in kids])
        return 0, 0

    @staticmethod
    def crossing_field(node: Node, inside: "list[int]") -> "tuple[int, int]":
        """From tip to tip, two seams at each: through blocks, or through those between them, with a tip more than
        blocks."""
        columns, high = node.extra[:2]
        first, between = inside[:columns * high], inside[columns * high:]
        lines = [first[row * columns:(row + 1) * columns] for row in range(high)]
        lines += [between[row * (columns - 1):(row + 1) * (columns - 1)] for row in range(high - 1)]
        upright = [first[column::columns] for column in range(columns)]
        upright += [between[column::columns - 1] for column in range(columns - 1)]
        return 2 * columns + max(map(sum, lines)), 2 * high + max(map(sum, upright))

    # ---- how long

    def of_one(self, node: Node) -> Fraction:
        """Seams of units, fields and mitred borders, with an allowance at either end."""
        wide, high, end = node.width, node.height, 2 * self.quilt.allowance
        slant = wide * ROOT
        if node.kind == "unit":
            side = wide * (1 - ROOT / 2)
            goose = Fraction(isqrt(int((wide / 2)**2 + high**2)))
            return {"half-square": slant + end, "quarter-square": slant + slant + 3 * end,
                    "flying-geese": 2 * (goose + end), "square-in-square": 4 * (slant / 2 + end),
                    "snowball": 4 * (node.unit.corner * ROOT + end),
                    "eight-pointed-star": 24 * side + 23 * end}[node.unit.name]
        if node.kind == "set in":
            border, inner = node.extra, node.kids[0][0]
            return 2 * (inner.width + inner.height) + 4 * end + 4 * (border * ROOT + end)
        return self.of_rows(node)

    def of_rows(self, node: Node) -> Fraction:
        """On point: within rows, between rows, and along the corners; an end at the outside is cut on the slant."""
        columns, high = node.extra[:2]
        side, by = node.kids[0][0].width, self.quilt.allowance
        drawn = Diagonal(columns, high, int(side), 0)
        total = sum((drawn.sewn(seam, int(by)) for seam in drawn.row_seams + drawn.corner_seams), Root2(0))
        within = len(node.kids) - 1 + columns + high - 2
        outside = 2 * (columns + high - 2)  # of each side triangle's seam within its row one end
        return total.a + total.b * ROOT + within * (side + 2 * by) + outside * by * (ROOT - 1)
