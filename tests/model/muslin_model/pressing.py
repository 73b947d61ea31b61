# SPDX-License-Identifier: MIT
"""Which seams of a piecing tree meet, and the fewest that cannot nest, with every copy of every part laid out.

A seam here is a line with the side of its first piece and the choices on which its way hangs: its own, and those of the
places that its copy was taken through. Along every line where two sides are sewn together the ends on one side are held
against those on the other. Nothing is shared between copies, and no edge is remembered.
"""

from collections import defaultdict
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import FrozenSet, Tuple

from .tree import (ACROSS, Field, Join, Patch, Pinwheel, QUARTER_SQUARE, SetIn, Turn, Unit, children, corner, draw,
                   lowest, own_pieces, size, turn_point)


@dataclass(frozen=True)
class Seam:
    ends: Tuple
    first: Tuple  # a step from the seam to its first piece
    bits: FrozenSet

    def moved(self, point, step):
        return replace(self, ends=tuple(map(point, self.ends)), first=step(self.first))

    def taken(self, place):
        return replace(self, bits=self.bits ^ {place})


def to_first(a, b):
    """To the left, or up from a level seam."""
    (x, y), (u, v) = sorted([a, b], key=lambda p: (p[1], p[0]))
    return y - v, u - x


def own(node, a, b):
    ends = tuple(sorted([a, b]))
    return Seam(ends, to_first(a, b), frozenset([("seam", node, ends)]))


# ---- a node's own seams ---------------------------------------------------------------------------------------------

def touching(ring, other):
    """The stretch that two pieces have in common, or none."""
    for a, b in zip(ring, ring[1:] + ring[:1]):
        for c, d in zip(other, other[1:] + other[:1]):
            along = (b[0] - a[0], b[1] - a[1])
            off = [(p[0] - a[0]) * along[1] - (p[1] - a[1]) * along[0] for p in (c, d)]
            if off != [0, 0]:
                continue
            length = along[0] ** 2 + along[1] ** 2
            at = sorted([Fraction((p[0] - a[0]) * along[0] + (p[1] - a[1]) * along[1], length) for p in (c, d)])
            low, high = max(at[0], 0), min(at[1], 1)
            if low < high:
                return [(a[0] + t * along[0], a[1] + t * along[1]) for t in (low, high)]
    return None


def between_pieces(node):
    """Two halves of a quarter-square are joined by one seam, from the lower right to the upper left."""
    if isinstance(node, Unit) and node.kind == QUARTER_SQUARE:
        width, height = size(node)
        middle = Fraction(width, 2), Fraction(height, 2)
        return [own(node, (width, 0), (0, height)), own(node, (0, 0), middle), own(node, middle, (width, height))]
    rings = [ring for _, ring in own_pieces(node)]
    pairs = [(a, b) for i, a in enumerate(rings) for b in rings[i + 1:]]
    return [own(node, *stretch) for stretch in (touching(a, b) for a, b in pairs) if stretch]


def round_centre(node):
    """One seam along the inner side of each of the four: top, right, bottom, left."""
    width, height = size(node)
    top, right, bottom, left = (size(child) for child in node.children[1:])
    return [own(node, (0, height - top[1]), (top[0], height - top[1])),
            own(node, (width - right[0], height - right[1]), (width - right[0], height)),
            own(node, (width - bottom[0], bottom[1]), (width, bottom[1])),
            own(node, (left[0], 0), (left[0], left[1]))]


def own_seams(node):
    width, height = size(node)
    if isinstance(node, Join):
        before, found = 0, []
        for child in node.children[:-1]:
            before += size(child)[node.axis - 1]
            found.append(own(node, (before, 0), (before, height)) if node.axis == ACROSS else
                         own(node, (0, height - before), (width, height - before)))
        return found
    if isinstance(node, Pinwheel):
        return round_centre(node)
    if isinstance(node, SetIn):
        left, right, top, bottom = node.widths
        box = [(left, bottom), (width - right, bottom), (width - right, height - top), (left, height - top)]
        sides = [(left, 3, 0), (bottom, 0, 1), (right, 1, 2), (top, 2, 3)]
        return [own(node, box[a], box[b]) for strip, a, b in sides if strip] + between_pieces(node)
    return between_pieces(node) if isinstance(node, Unit) else []


# ---- meetings -------------------------------------------------------------------------------------------------------

def ends_along(seams, axis, level, low, high):
    """Of seams that end on a line (axis 0: across, at that height; 1: up), where, how, and to which side they have their
    first piece."""
    found = defaultdict(list)
    for seam in seams:
        a, b = seam.ends
        if a[1 - axis] == b[1 - axis]:
            continue  # along the line, not across it
        for end in seam.ends:
            if end[1 - axis] == level and low <= end[axis] <= high:
                found[end[axis]].append((a[axis] == b[axis], seam.first[axis] > 0, seam.bits))
    return {at: [row for row in rows if row[0] or not any(r[0] for r in rows)] for at, rows in found.items()}


def across(line, one, other):
    """Meetings of ends along a line: the choices of both, and whether they must add up to an odd number."""
    return [(a_bits ^ b_bits, a_first == b_first) for at in line(one).keys() & line(other).keys()
            for _, a_first, a_bits in line(one)[at] for _, b_first, b_bits in line(other)[at]]


def along(axis, level, low, high):
    return lambda seams: ends_along(seams, axis, level, low, high)


def in_join(node, parts):
    width, height = size(node)
    before, found = 0, []
    for child, one, other in zip(node.children, parts, parts[1:]):
        before += size(child)[node.axis - 1]
        line = along(1, before, 0, height) if node.axis == ACROSS else along(0, height - before, 0, width)
        found += across(line, one, other)
    return found


def in_pinwheel(node, parts, seams):
    centre, top, right, bottom, left = parts
    inside = [(top, left + centre, seams[3]), (right, top + centre, seams[0]), (bottom, right + centre, seams[1]),
              (left, bottom + centre, seams[2])]
    found = []
    for seam, (one, other, crossing) in zip(seams, inside):
        (x, y), (u, v) = seam.ends
        line = along(0, y, x, u) if y == v else along(1, x, y, v)
        found += across(line, one, other + [crossing])
    return found


def in_field(node, parts):
    """In the turned frame: u to the right, v up. Rows lie between whole v; in a row, seams between its pieces stand at
    both ends of every block, but for the seams of the two corners at the ends of the middle rows."""
    side = size(node.children[0])[0]
    main, rows = node.columns * node.rows, defaultdict(dict)
    for k, part in enumerate(parts):
        row, column = divmod(k - main if k >= main else k, node.columns - (k >= main))
        u, v = (column + row + (k >= main)) * side, (column - row) * side
        rows[v][u] = [seam.moved(lambda p: (p[0] + u, p[1] + v), lambda s: s) for seam in part]
    corners = {(0, 0), ((node.columns + node.rows - 1) * side, (node.columns - node.rows) * side)}
    found, upright = [], {}
    for v, row in rows.items():
        stands = {u for u in row} | {u + side for u in row}
        upright[v] = [own((node, v), (u, v), (u, v + side)) for u in stands if (u, v) not in corners]
        for u in row.keys() & {u + side for u in row}:
            found += across(along(1, u, v, v + side), row[u - side], row[u])
    for v in rows.keys() & {v + side for v in rows}:
        above, below = (sum(rows[w].values(), upright[w]) for w in (v, v - side))
        found += across(along(0, v, min(rows[v]) - side, max(rows[v]) + 2 * side), below, above)
    return found


# ---- all of it ------------------------------------------------------------------------------------------------------

def carries(node):
    return bool(own_seams(node)) or isinstance(node, Field) or any(map(carries, children(node)))


def part_of(node, k, seams):
    """The seams of child number k, where they lie in the node, on their way through its place."""
    child = children(node)[k]
    wide, high = size(child)
    if isinstance(node, Turn):
        x, y = lowest([turn_point(node, point) for point in ((0, 0), (wide, high))])
        placed = [seam.moved(lambda p: tuple(c - o for c, o in zip(turn_point(node, p), (x, y))),
                             lambda s: turn_point(node, s)) for seam in seams]
    elif isinstance(node, Field):
        placed = seams
    else:
        x, y = corner(node, k, wide, high)
        placed = [seam.moved(lambda p: (p[0] + x, p[1] + y), lambda s: s) for seam in seams]
    return [seam.taken(("place", node, k)) for seam in placed]


def laid(node):
    """The seams of one copy, and the meetings in it."""
    if isinstance(node, Patch):
        return [], []
    parts, meetings = [], []
    for k, child in enumerate(children(node)):
        seams, inner = laid(child)
        parts.append(part_of(node, k, seams))
        meetings += inner
    seams = own_seams(node)
    if isinstance(node, Join):
        meetings += in_join(node, parts)
    if isinstance(node, Pinwheel):
        meetings += in_pinwheel(node, parts, seams)
    if isinstance(node, Field):
        meetings += in_field(node, parts)
    return sum(parts, seams), meetings


def broken(meetings, ways):
    """How many do not nest when these choices are taken."""
    return sum(len(bits & ways) % 2 != odd for bits, odd in meetings)


def in_turn(node):
    """The choices by which all is pressed in turn: joins take every second child the other way."""
    found = {("place", node, k) for k in range(1, len(children(node)), 2)} if isinstance(node, Join) else set()
    return found.union(*map(in_turn, children(node)))


def choices(meetings):
    return sorted(set().union(*(bits for bits, _ in meetings)), key=repr)


def fewest(meetings):
    """Over all choices, one after the other, each decided where no meeting is left that hangs on a later one."""
    numbers = {bit: number for number, bit in enumerate(choices(meetings))}
    rules = defaultdict(int)
    for bits, odd in meetings:
        rules[sum(1 << numbers[bit] for bit in bits), odd] += 1
    best = len(meetings)
    for ways in range(1 << len(numbers)):
        cost = 0
        for (bits, odd), count in rules.items():
            if bin(bits & ways).count("1") % 2 != odd:
                cost += count
        best = min(best, cost)
    return best


# ---- turned ---------------------------------------------------------------------------------------------------------

def turned_by(node, quarters):
    """What turning the node does to a point of it, and to a step."""
    wide, high = size(node)
    turn = Turn(False, quarters, node)
    x, y = lowest([turn_point(turn, point) for point in ((0, 0), (wide, high))])
    return (lambda p: tuple(c - o for c, o in zip(turn_point(turn, p), (x, y)))), (lambda s: turn_point(turn, s))


def looks_alike(node, quarters):
    """Whether the pieces of a node, each with its fabric, lie where such pieces lay when it is turned."""
    point, _ = turned_by(node, quarters)
    rings = [(piece.fabric, [tuple(p) for p in piece.ring]) for piece in draw(node)]
    return sorted((fabric, sorted(map(point, ring))) for fabric, ring in rings) == sorted(
        (fabric, sorted(ring)) for fabric, ring in rings)


def sewn(node, other, ways, turns, copies):
    """The seams of one copy as they are pressed, `first` being the side to which that is, and the meetings in it that do
    not nest. A copy that is taken the other way is turned by what `turns` says of its node, if anything: then nothing in
    it is the other way. Counts the copies that are taken either way."""
    copies[node][other] += 1
    quarters = turns.get(node, 0) if other else 0
    flipped = other and not quarters
    parts, lumps = [], 0
    for k, child in enumerate(children(node)):
        seams, inner = sewn(child, flipped ^ (("place", node, k) in ways), ways, turns, copies)
        parts.append(part_of(node, k, seams))
        lumps += inner
    seams = [seam.moved(lambda p: p, lambda s: tuple(-c for c in s) if (next(iter(seam.bits)) in ways) ^ flipped else s)
             for seam in own_seams(node)]
    met = in_join(node, parts) if isinstance(node, Join) else in_pinwheel(node, parts, seams) if isinstance(
        node, Pinwheel) else []
    seams = sum(parts, seams)
    if quarters:
        point, step = turned_by(node, quarters)
        seams = [seam.moved(point, step) for seam in seams]
    return seams, lumps + sum(same_side for _, same_side in met)
