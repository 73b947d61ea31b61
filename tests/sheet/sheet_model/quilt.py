"""One size of a pattern, taken apart: parts, patches, units, what lies on point, borders, and how often each.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from math import isqrt
from types import SimpleNamespace
from typing import Any

from muslin_model import base
from muslin_model import unit as units
from walker import Walker, ticks

from .ruler import INCH, MM, Ruler

KINDS = {"half-square": units.HALF_SQUARE, "quarter-square": units.QUARTER_SQUARE, "split-quarter": units.SPLIT_QUARTER,
         "flying-geese": units.FLYING_GEESE, "square-in-square": units.SQUARE_IN_SQUARE, "snowball": units.SNOWBALL,
         "half-rectangle": units.HALF_RECTANGLE, "octagon": units.OCTAGON, "eight-pointed-star": units.STAR,
         "kaleidoscope": units.KALEIDOSCOPE}
METHODS = {"pieces": units.PIECES, "two-at-a-time": units.TWO, "four-all-round": units.ALL_ROUND,
           "four-midpoints": units.MIDPOINTS, "eight-at-a-time": units.EIGHT, "four-at-a-time": units.FOUR,
           "flipped-corners": units.FLIPPED, "bias-strips": units.BIAS_STRIPS}
KIND_NAMES = {"half-square": "half-square triangles", "quarter-square": "quarter-square triangles",
              "flying-geese": "flying geese", "square-in-square": "square in a square", "snowball": "snowballs",
              "eight-pointed-star": "eight-pointed star"}
FIRST_METHOD = {"snowball": units.FLIPPED}


@dataclass(eq=False)
class Node:
    """A part; alike parts are one node. Its kids are pairs: a node, and by how many quarters it is turned."""

    kind: str
    width: Fraction
    height: Fraction
    kids: "tuple[tuple[Node, int], ...]" = ()
    fabric: str = ""
    unit: Any = None
    extra: Any = None
    called: "set[str]" = field(default_factory=set)
    block: bool = False

    def turned(self, quarters: int) -> "tuple[Fraction, Fraction]":
        return (self.height, self.width) if quarters % 2 else (self.width, self.height)


@dataclass(frozen=True)
class UnitAsked:
    name: str
    method: int
    width: Fraction
    height: Fraction
    corner: Fraction
    fabrics: "tuple[str, ...]"


class Quilt:
    """What a size of a file comes to."""

    def __init__(self, file: Any, size: Any) -> None:
        self.file, self.size = file, size
        self.walker = Walker(file, size)
        self.known: "dict[Any, Node]" = {}
        self.metric = file.get("units", "in") != "in"
        seam = file.get("seam", {})
        self.allowance = self.length(seam, "allowance", "1/4 in", "6 mm")
        self.take_up = self.length(seam, "take up", "0 in", "0 mm")
        self.seam = 2 * self.allowance + self.take_up
        buying = file.get("buying", {})
        sold_by = file.get("words", {}).get("cloth sold by", "metre" if self.metric else "yard")
        self.step = ticks(buying.get("step", "10 cm" if sold_by == "metre" else "1/8 yd"))
        self.ruler = Ruler(file.get("units", "in"), sold_by, self.step)
        self.words = {"batting": "batting", "sashing": "sashing", "fabric": "fabric", "cornerstone": "cornerstone",
                      "color": "color", **file.get("words", {})}
        self.tops = int(file.get("tops", 1))
        self.centre = self.node(file["top"])
        self.top = self.with_borders(self.centre, file.get("borders", []))
        self.counts = self.count_all()
        self.found: "dict[str, Any]" = {}

    def once(self, name: str, work: Any) -> Any:
        """What is worked out once and asked for often."""
        if name not in self.found:
            self.found[name] = work()
        return self.found[name]

    def length(self, holder: Any, name: str, inches: str, metric: str) -> Fraction:
        return ticks(holder.get(name, metric if self.metric else inches))

    def known_as(self, key: Any, node: Node) -> Node:
        return self.known.setdefault(key, node)

    # ---- nodes

    def patch(self, fabric: str, width: Fraction, height: Fraction) -> Node:
        return self.known_as(("patch", fabric, width, height), Node("patch", width, height, fabric=fabric))

    def join(self, kind: str, kids: "list[tuple[Node, int]]", extra: Any = None) -> Node:
        if len(kids) == 1 and kids[0][1] == 0:
            return kids[0][0]
        sizes = [kid.turned(quarters) for kid, quarters in kids]
        along, other = (0, 1) if kind == "across" else (1, 0)
        assert len({size[other] for size in sizes}) == 1, (kind, sizes)
        ends = [Fraction(0), sizes[0][other]]
        ends[0] = sum((size[along] for size in sizes), Fraction(0))
        width, height = ends if kind == "across" else ends[::-1]
        key = (kind, tuple((id(kid), quarters) for kid, quarters in kids), extra)
        return self.known_as(key, Node(kind, width, height, tuple(kids), extra=extra))

    def rows(self, rows: "list[list[tuple[Node, int]]]") -> Node:
        return self.join("down", [(self.join("across", row), 0) for row in rows])

    def turned(self, value: Any) -> "tuple[Node, int]":
        """A node without its turns, and those."""
        if isinstance(value, str):
            part = self.file["parts"][value]
            if isinstance(part, str) or "turn" in part:
                return self.turned(part)
            node = self.node(part)
            node.called.add(part.get("called", value))
            return node, 0
        if "turn" in value:
            node, quarters = self.turned(value["turn"])
            return node, (quarters + value["quarters"]) % 4
        return self.node(value), 0

    def node(self, value: Any) -> Node:
        if isinstance(value, str):
            node, quarters = self.turned(value)
            return node if quarters == 0 else self.join("across", [(node, quarters)])
        kind = next(name for name in MAKERS if name in value)
        node = MAKERS[kind](self, value)
        node.block = node.block or bool(value.get("block"))
        if "called" in value:
            node.called.add(value["called"])
        return node

    def unit(self, value: Any) -> Node:
        width, height = self.walker.rectangle(value)
        name = value["unit"]
        method = METHODS[value["method"]] if "method" in value else FIRST_METHOD.get(name, units.PIECES)
        corner = self.walker.measure(value["corner"]) if "corner" in value else Fraction(0)
        asked = UnitAsked(name, method, width, height, corner, tuple(value["fabrics"]))
        return self.known_as(asked, Node("unit", width, height, unit=asked))

    def filled(self, rows: "list[list[Any]]", value: Any) -> "list[list[tuple[Node, int]]]":
        columns, wanted = (self.walker.count(value[name]) for name in ("columns", "rows"))
        return self.fill(rows, columns, wanted)

    def fill(self, rows: "list[list[Any]]", columns: int, wanted: int) -> "list[list[tuple[Node, int]]]":
        made = [[self.turned(item) for item in row] for row in rows]
        return [[made[row % len(made)][column % len(made[0])] for column in range(columns)] for row in range(wanted)]

    def repeat(self, value: Any) -> Node:
        node, before = self.turned(value["repeat"])
        turns = value.get("quarters", [[0]])
        return self.rows([[(node, (before + turn) % 4) for _, turn in row] for row in self.filled_turns(turns, value)])

    def filled_turns(self, turns: "list[list[int]]", value: Any) -> "list[list[tuple[int, int]]]":
        columns, rows = (self.walker.count(value[name]) for name in ("columns", "rows"))
        return [[(0, turns[row % len(turns)][column % len(turns[0])]) for column in range(columns)]
                for row in range(rows)]

    def sashed(self, value: Any) -> Node:
        blocks = self.filled(value["sashed"], value)
        sash, fabric = self.walker.measure(value["sash"]), value["fabric"]
        stone, frame = value.get("cornerstone"), value.get("frame", False)
        wide, high = blocks[0][0][0].turned(blocks[0][0][1])
        upright, level = self.patch(fabric, sash, high), self.patch(fabric, wide, sash)

        def between(items: "list[tuple[Node, int]]", thing: "tuple[Node, int]") -> "list[tuple[Node, int]]":
            mixed = [thing]
            for item in items:
                mixed += [item, thing]
            return mixed if frame else mixed[1:-1]

        rows = [self.join("across", between(row, (upright, 0))) for row in blocks]
        if stone:
            path = self.join("across", between([(level, 0)] * len(blocks[0]), (self.patch(stone, sash, sash), 0)))
        else:
            path = self.patch(fabric, rows[0].width, sash)
        return self.join("down", between([(row, 0) for row in rows], (path, 0)))

    def on_point(self, value: Any) -> Node:
        assert "sash" not in value and "float" not in value
        columns, rows = (self.walker.count(value[name]) for name in ("columns", "rows"))
        blocks = [item for row in self.fill(value["on point"], columns, rows) for item in row]
        inner = value.get("between", value["on point"])
        blocks += [item for row in self.fill(inner, columns - 1, rows - 1) for item in row]
        side = blocks[0][0].width
        size = [Fraction((isqrt(8 * (n * side.numerator)**2) + 1) // 2) for n in (columns, rows)]
        extra = (columns, rows, value["side fabric"], value["corner fabric"])
        key = ("field", tuple((id(kid), turn) for kid, turn in blocks), extra)
        return self.known_as(key, Node("field", size[0], size[1], tuple(blocks), extra=extra))

    def log_cabin(self, value: Any) -> Node:
        node = self.node(value["log cabin"])
        for log in value["logs"]:
            wide = self.walker.measure(log["width"])
            level = log["side"] in ("top", "bottom")
            strip = self.patch(log["fabric"], node.width if level else wide, wide if level else node.height)
            pair = [(strip, 0), (node, 0)] if log["side"] in ("left", "top") else [(node, 0), (strip, 0)]
            node = self.join("down" if level else "across", pair)
        return node

    def with_borders(self, node: Node, borders: "list[Any]") -> Node:
        for border in borders:
            node = self.border(node, border)
        return node

    def border(self, node: Node, border: Any) -> Node:
        if "sides" in border:
            left, right, top, bottom, corner = (self.turned(border["sides"][name])
                                                for name in ("left", "right", "top", "bottom", "corner"))
            return self.rows([[corner, top, corner], [left, (node, 0), right], [corner, bottom, corner]])
        wide, fabric = self.walker.measure(border["width"]), border["fabric"]
        corners = border.get("corners", "cornerstones" if "cornerstone" in border else "sides first")
        if corners == "mitred":
            size = node.width + 2 * wide, node.height + 2 * wide
            return self.known_as(("set in", id(node), wide, fabric),
                                 Node("set in", *size, ((node, 0),), fabric=fabric, extra=wide))
        if corners == "cornerstones":
            upright, level = self.patch(fabric, wide, node.height), self.patch(fabric, node.width, wide)
            stone = self.patch(border["cornerstone"], wide, wide)
            return self.rows([[(stone, 0), (level, 0), (stone, 0)], [(upright, 0), (node, 0), (upright, 0)],
                              [(stone, 0), (level, 0), (stone, 0)]])
        for kind in ("across", "down") if corners == "sides first" else ("down", "across"):
            strip = self.patch(fabric, *((wide, node.height) if kind == "across" else (node.width, wide)))
            node = self.join(kind, [(strip, 0), (node, 0), (strip, 0)])
        return node

    # ---- how often

    def count_all(self) -> "dict[Node, int]":
        counts: "dict[Node, int]" = {}
        order: "list[Node]" = []

        def visit(node: Node) -> None:
            if node not in counts:
                counts[node] = 0
                for kid, _ in node.kids:
                    visit(kid)
                order.append(node)

        visit(self.top)
        counts[self.top] = self.tops
        for node in reversed(order):
            for kid, _ in node.kids:
                counts[kid] += counts[node]
        self.order = order
        return counts

    def patches(self) -> "list[tuple[Node, int]]":
        return [(node, self.counts[node]) for node in self.order if node.kind == "patch"]

    def units_asked(self) -> "dict[UnitAsked, int]":
        return {node.unit: self.counts[node] for node in self.order if node.kind == "unit"}

    def of_kind(self, kind: str) -> "list[Node]":
        return [node for node in self.order if node.kind == kind]

    def blocks(self) -> int:
        return sum(self.counts[node] for node in self.order if node.block)

    def pieces_of(self, node: Node) -> int:
        """Patches in one, as they are seen."""
        if node.kind == "patch":
            return 1
        if node.kind == "unit":
            return {"half-square": 2, "quarter-square": 4, "flying-geese": 3, "square-in-square": 5, "snowball": 5,
                    "eight-pointed-star": 16, "split-quarter": 3, "half-rectangle": 2}[node.unit.name]
        if node.kind == "field":
            return 2 * (node.extra[0] + node.extra[1])
        return 4 if node.kind == "set in" else 0

    def total_pieces(self) -> int:
        return sum(self.counts[node] * self.pieces_of(node) for node in self.order)

    # ---- what is cut for units

    def recipe_spec(self, asked: UnitAsked, wanted: int) -> Any:
        cutting = self.file.get("cutting", {})
        policy = {"exact": 1, "customary": 2, "oversize": 3}[cutting.get("policy", "exact")]
        return SimpleNamespace(
            kind=KINDS[asked.name], method=asked.method, finished_width=int(asked.width),
            finished_height=int(asked.height), corner=int(asked.corner), allowance=int(self.allowance),
            take_up=int(self.take_up), grid=int(self.grid()), tolerance=0, half_addition=0, quarter_addition=0,
            trim_room=int(self.trim()) if policy == 3 else 0, policy=policy,
            tip={"sharp": 1, "blunt": 2}[cutting.get("tips", "blunt")],
            direction={"up": base.UP, "down": base.DOWN, "nearest": base.NEAREST}[cutting.get("round", "up")],
            units=wanted, mirrored=0)

    def grid(self) -> Fraction:
        return self.length(self.file.get("cutting", {}), "grid", "1/8 in", "1 mm")

    def trim(self) -> Fraction:
        return self.length(self.file.get("cutting", {}), "trim", "0 in", "0 mm")

    def recipes(self) -> "dict[UnitAsked, tuple[Any, Any]]":
        return {asked: (units.recipe(self.recipe_spec(asked, count)), units.pieces(self.recipe_spec(asked, count)))
                for asked, count in self.units_asked().items()}

    def setting_squares(self, node: Node) -> "tuple[Fraction, Fraction]":
        """Cut size of the squares for side and corner triangles on point, by the published additions."""
        block = node.kids[0][0].width
        policy = self.file.get("cutting", {}).get("policy", "exact")
        root = Fraction(isqrt(2 * 10**40), 10**20)
        side, corner = block * root, block / root
        if policy == "exact":
            side, corner = side + self.seam * (1 + root), corner + self.seam * (1 + root / 2)
        else:
            side, corner = side + self.seam * Fraction(5, 2), corner + self.seam * Fraction(7, 4)
        if policy == "oversize":
            side, corner = side + self.trim(), corner + self.trim()
        return tuple(-(-size // self.grid()) * self.grid() for size in (side, corner))  # type: ignore[return-value]

    def mitred_strips(self, node: Node) -> "list[Fraction]":
        """Cut lengths from point to point of the left and right, and of the top and bottom strips."""
        root = Fraction(isqrt(2 * 10**40), 10**20)
        return [Fraction(round(side + self.seam * (1 + root))) for side in (node.height, node.width)]

    def mitre_extra(self) -> Fraction:
        """All of them are cut so much longer that the longest comes out at a whole inch or centimetre."""
        room, grid = (50 * MM, 10 * MM) if self.metric else (2 * INCH, INCH)
        longest = max((length for node in self.of_kind("set in") for length in self.mitred_strips(node)),
                      default=Fraction(0))
        return -(-(longest + room) // grid) * grid - longest


MAKERS = {
    "patch": lambda quilt, value: quilt.patch(value["patch"], *quilt.walker.rectangle(value)),
    "unit": Quilt.unit,
    "across": lambda quilt, value: quilt.join("across", [quilt.turned(item) for item in value["across"]]),
    "down": lambda quilt, value: quilt.join("down", [quilt.turned(item) for item in value["down"]]),
    "grid": lambda quilt, value: quilt.rows([[quilt.turned(item) for item in row] for row in value["grid"]]),
    "turn": lambda quilt, value: quilt.join("across", [quilt.turned(value)]),
    "repeat": Quilt.repeat,
    "alternate": lambda quilt, value: quilt.rows(quilt.filled(value["alternate"], value)),
    "sashed": Quilt.sashed,
    "on point": Quilt.on_point,
    "log cabin": Quilt.log_cabin,
    "bordered": lambda quilt, value: quilt.with_borders(quilt.node(value["bordered"]), value["borders"]),
}
