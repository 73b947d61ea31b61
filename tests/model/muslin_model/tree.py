# SPDX-License-Identifier: MIT
"""Piecing trees worked out again, from the bottom up: every node draws itself in its own frame, with fractions.

A tree is made of the classes below. What the library says of seams along edges is found here another way: where two
patches touch, the seam belongs to the node in which their ways from the root part.
"""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Tuple

from .base import up
from .root2 import Root2

LEFT, RIGHT, TOP, BOTTOM = range(4)
ACROSS, DOWN = 1, 2
LENGTH, EASED, ALLOWANCE, NOT_SQUARE = 1, 2, 3, 4
HALF_SQUARE, QUARTER_SQUARE, FLYING_GEESE, SQUARE_IN_SQUARE, SNOWBALL, HALF_RECTANGLE = 2, 3, 5, 6, 7, 8


# ---- trees ----------------------------------------------------------------------------------------------------------

@dataclass(frozen=True)
class Patch:
    fabric: int
    width: int
    height: int
    edges: Tuple = (None, None, None, None)  # allowances left, right, top, bottom; None: the quilt's


@dataclass(frozen=True)
class Unit:
    kind: int
    width: int
    height: int  # 0 where the kind says so
    corner: int
    hand: int
    fabrics: Tuple


@dataclass(frozen=True)
class Join:
    axis: int
    children: Tuple


@dataclass(frozen=True)
class Turn:
    """First mirrored, left for right, then turned clockwise."""
    mirrored: bool
    quarters: int
    child: object


@dataclass(frozen=True)
class Trim:
    child: object
    by: Tuple  # left, right, top, bottom


@dataclass(frozen=True)
class Pinwheel:
    children: Tuple  # centre, top, right, bottom, left


@dataclass(frozen=True)
class SetIn:
    child: object
    widths: Tuple  # left, right, top, bottom; 0: no strip
    fabrics: Tuple


@dataclass(frozen=True)
class Field:
    columns: int
    rows: int
    children: Tuple  # blocks row by row, then alternates so
    set_off: int
    fabrics: Tuple
    layout: int = 1  # plain, sashes outside, cut in half at the edge, inside alone
    sash: int = 0


def children(tree):
    if isinstance(tree, (Join, Pinwheel, Field)):
        return tree.children
    return (tree.child,) if isinstance(tree, (Turn, Trim, SetIn)) else ()


def joined(axis, parts):
    """One alone is itself."""
    return Join(axis, tuple(parts)) if len(parts) > 1 else parts[0]


def turned(mirrored, quarters, tree):
    """Turns of turns are one, and none at all is the node itself."""
    if isinstance(tree, Turn):
        how = Lying(2 * quarters, mirrored).of(Lying(2 * tree.quarters, tree.mirrored))
        return turned(how.mirrored, how.eighths // 2, tree.child)
    return Turn(mirrored, quarters, tree) if mirrored or quarters else tree


def nodes(tree):
    """Every different node under a tree, children before what is made of them."""
    found = {}

    def visit(node):
        if node not in found:
            for child in children(node):
                visit(child)
            found[node] = None

    visit(tree)
    return list(found)


# ---- how things lie -------------------------------------------------------------------------------------------------

@dataclass(frozen=True)
class Lying:
    """Where up comes to point, in eighths of a turn clockwise, after mirroring left for right or not."""
    eighths: int = 0
    mirrored: bool = False

    def of(self, inner):
        """The other first, then this."""
        return Lying((self.eighths + (-inner.eighths if self.mirrored else inner.eighths)) % 8,
                     self.mirrored != inner.mirrored)


def turn_point(turn, point):
    """About the origin."""
    x, y = point
    x = -x if turn.mirrored else x
    for _ in range(turn.quarters):
        x, y = y, -x
    return x, y


def lowest(points):
    return min(x for x, _ in points), min(y for _, y in points)


def area(ring):
    """Doubled; above 0 when it runs counter-clockwise."""
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(ring, ring[1:] + ring[:1]))


def counter_clockwise(ring):
    return ring if area(ring) >= 0 else ring[::-1]


# ---- sizes ----------------------------------------------------------------------------------------------------------

@lru_cache(maxsize=None)
def size(tree):
    """Finished."""
    sizes = [size(child) for child in children(tree)]
    if isinstance(tree, Join):
        along, across = [s[tree.axis - 1] for s in sizes], [s[2 - tree.axis] for s in sizes]
        return (sum(along), max(across)) if tree.axis == ACROSS else (max(across), sum(along))
    if isinstance(tree, Turn):
        return sizes[0][::-1] if tree.quarters % 2 else sizes[0]
    if isinstance(tree, Trim):
        left, right, top, bottom = tree.by
        return sizes[0][0] - left - right, sizes[0][1] - top - bottom
    if isinstance(tree, SetIn):
        left, right, top, bottom = tree.widths
        return sizes[0][0] + left + right, sizes[0][1] + top + bottom
    if isinstance(tree, Pinwheel):
        (cw, ch), (tw, th), (rw, rh), (bw, bh), (lw, lh) = sizes
        return max(tw + rw, lw + cw + rw, lw + bw), max(th + lh, th + ch + bh, rh + bh)
    if isinstance(tree, Field):
        beyond = (0, 0, 1, 0, -1)[tree.layout]
        return tuple(nearest(Root2(2 * tree.set_off, n * sizes[0][0] + (n + beyond) * tree.sash))
                     for n in (tree.columns, tree.rows))
    if isinstance(tree, Unit):
        return tree.width, tree.height or (tree.width // 2 if tree.kind == FLYING_GEESE else tree.width)
    return tree.width, tree.height


def nearest(value):
    """A number with a root of 2, to the nearest tick, ties up."""
    return (value + Fraction(1, 2)).floor()


def to_tick(point):
    """What trimming leaves may end between ticks."""
    return tuple((value + Fraction(1, 2)).__floor__() for value in point)


def meets(a, b):
    """The allowance of an edge made of two; None: mixed."""
    return a if a == b else None


@lru_cache(maxsize=None)
def edges(tree, usual):
    """Allowances left, right, top, bottom; None where the pieces along one differ."""
    of = [edges(child, usual) for child in children(tree)]
    if isinstance(tree, Patch):
        return tuple(usual if edge is None else edge for edge in tree.edges)
    if isinstance(tree, Join):
        first, last = (LEFT, RIGHT) if tree.axis == ACROSS else (TOP, BOTTOM)
        return tuple(of[0][k] if k == first else of[-1][k] if k == last else
                     of[0][k] if len({one[k] for one in of}) == 1 else None for k in range(4))
    if isinstance(tree, Turn):
        return tuple(of[0][side_before(tree, k)] for k in range(4))
    if isinstance(tree, Trim):
        return tuple(usual if by else of[0][k] for k, by in enumerate(tree.by))
    if isinstance(tree, SetIn):
        ends = [any(tree.widths[2:]), any(tree.widths[2:]), any(tree.widths[:2]), any(tree.widths[:2])]
        return tuple(usual if tree.widths[k] else meets(of[0][k], usual) if ends[k] else of[0][k] for k in range(4))
    if isinstance(tree, Pinwheel):
        _, t, r, b, l = of
        return (meets(t[LEFT], l[LEFT]), meets(r[RIGHT], b[RIGHT]), meets(t[TOP], r[TOP]), meets(b[BOTTOM], l[BOTTOM]))
    return (usual,) * 4


OUTWARDS = {LEFT: (-1, 0), RIGHT: (1, 0), TOP: (0, 1), BOTTOM: (0, -1)}


def side_before(turn, side):
    """Which side of the child comes to lie there."""
    return next(k for k, out in OUTWARDS.items() if turn_point(turn, out) == OUTWARDS[side])


def unfinished(tree, usual, take_up):
    left, right, top, bottom = edges(tree, usual)
    width, height = size(tree)
    return width + added(left, right, usual, take_up), height + added(top, bottom, usual, take_up)


def added(first, last, usual, take_up):
    sewn = (first != 0) + (last != 0)
    return (usual if first is None else first) + (usual if last is None else last) + up(Fraction(sewn * take_up, 2))


@lru_cache(maxsize=None)
def piled_seams(tree):
    """Seams whose errors add up in the width and in the height: of what is side by side all, of rows the most."""
    of = [piled_seams(child) for child in children(tree)]
    if isinstance(tree, Join):
        along, across = [one[tree.axis - 1] for one in of], [one[2 - tree.axis] for one in of]
        piled = sum(along) + len(of) - 1, max(across)
        return piled if tree.axis == ACROSS else piled[::-1]
    if isinstance(tree, Turn):
        return of[0][::-1] if tree.quarters % 2 else of[0]
    if isinstance(tree, Pinwheel):
        (c, t, r, b, l), (cd, td, rd, bd, ld) = zip(*of)
        return (max(t + r, l + c + r + 1, l + b) + 1, max(td + ld, td + cd + bd + 1, rd + bd) + 1)
    if isinstance(tree, SetIn):
        left, right, top, bottom = (width > 0 for width in tree.widths)
        return of[0][0] + left + right, of[0][1] + top + bottom
    return of[0] if of else (0, 0)


# ---- copies ---------------------------------------------------------------------------------------------------------

def copies(root, tops=1):
    """How often each node is in all tops, by how it lies; blocks on point as in their own frame."""
    counted = {}

    def visit(tree, lying):
        of = counted.setdefault(tree, {})
        of[lying] = of.get(lying, 0) + tops
        below = lying.of(Lying(2 * tree.quarters, tree.mirrored)) if isinstance(tree, Turn) else lying
        for child in children(tree):
            visit(child, below)

    visit(root, Lying())
    return counted


# ---- drawn ----------------------------------------------------------------------------------------------------------

@dataclass(frozen=True)
class Piece:
    """A patch as it is seen: its way from the top (child numbers; at last ("piece", k)), leaf, fabric, corners. The
    corners of setting triangles are not worked out: None."""
    way: Tuple
    leaf: object
    fabric: int
    ring: object
    lying: Lying = Lying()

    def moved(self, step, points, lying=Lying()):
        """As part number `step` of something larger, each corner where `points` says."""
        ring = None if self.ring is None else counter_clockwise([points(point) for point in self.ring])
        return Piece((step,) + self.way, self.leaf, self.fabric, ring, lying.of(self.lying))


def shifted(x, y):
    return lambda point: (point[0] + x, point[1] + y)


@lru_cache(maxsize=None)
def draw(tree):
    """Everything seen of a tree, its own pieces first, in a frame with its lower left at (0, 0)."""
    width, height = size(tree)
    own = [Piece((("piece", k),), tree, fabric, counter_clockwise(ring))
           for k, (fabric, ring) in enumerate(own_pieces(tree))]
    if isinstance(tree, Field):
        own = [Piece((("piece", k),), tree, tree.fabrics[k >= triangles(tree) - 4], None)
               for k in range(triangles(tree))]
    parts = [part for k, child in enumerate(children(tree)) for part in place(tree, k, child)]
    return tuple(own + parts)


def triangles(field):
    return 2 * field.columns + 2 * field.rows


def place(tree, k, child):
    """The pieces of child number k in the tree."""
    width, height = size(tree)
    wide, high = size(child)
    if isinstance(tree, Turn):
        box = [turn_point(tree, point) for point in ((0, 0), (wide, high))]
        x, y = lowest(box)
        lying = Lying(2 * tree.quarters, tree.mirrored)
        return [piece.moved(k, lambda p: shifted(-x, -y)(turn_point(tree, p)), lying) for piece in draw(child)]
    if isinstance(tree, Field):
        return [piece.moved(k, lambda p: on_point(tree, k, p), Lying(1)) for piece in draw(child)]
    moved = [piece.moved(k, shifted(*corner(tree, k, wide, high))) for piece in draw(child)]
    return [trimmed(piece, width, height) for piece in moved] if isinstance(tree, Trim) else moved


def corner(tree, k, wide, high):
    """Lower left of child number k."""
    width, height = size(tree)
    if isinstance(tree, Join):
        before = sum(size(child)[tree.axis - 1] for child in tree.children[:k])
        return (before, height - high) if tree.axis == ACROSS else (0, height - before - high)
    if isinstance(tree, Trim):
        return -tree.by[LEFT], -tree.by[BOTTOM]
    if isinstance(tree, SetIn):
        return tree.widths[LEFT], tree.widths[BOTTOM]
    left, top = size(tree.children[4])[0], size(tree.children[1])[1]
    return [(left, height - top - high), (0, height - high), (width - wide, height - high), (width - wide, 0),
            (0, 0)][k]


def on_point(field, k, point):
    """A block's point in its field: blocks stand on a tip, main ones side by side, alternates between them."""
    side = size(field.children[0])[0]
    main = field.columns * field.rows
    columns = field.columns - (k >= main)
    row, column = divmod(k - main if k >= main else k, columns)
    half = Fraction(k >= main) / 2
    right, down = column + half, row + half  # of the left tip, in diagonals, from the left tip of the first
    diagonal = Root2(0, side)
    x, y = (Root2(0, Fraction(value, 2)) for value in to_tick(point))  # / sqrt 2
    left_tip = (Root2(field.set_off) + diagonal * Root2(right),
                Root2(field.set_off) + diagonal * Root2(field.rows - Fraction(1, 2) - down))
    return nearest(left_tip[0] + x + y), nearest(left_tip[1] + y - x)


def trimmed(piece, width, height):
    """What of a convex piece lies in the box: its corners in there, the box's corners in it, and all crossings."""
    ring = piece.ring
    if not ring:  # not known, or already trimmed away
        return piece
    box = [(0, 0), (width, 0), (width, height), (0, height)]
    points = {p for p in ring if all(side_of(e, p) >= 0 for e in round_(box))}
    points |= {p for p in box if all(side_of(e, p) >= 0 for e in round_(ring))}
    points |= {p for e in round_(ring) for f in round_(box) for p in crossing(e, f)}
    return Piece(piece.way, piece.leaf, piece.fabric, hull(points), piece.lying)


def round_(ring):
    return list(zip(ring, ring[1:] + ring[:1]))


def side_of(edge, point):
    """Above 0: left of it."""
    (ax, ay), (bx, by) = edge
    return (bx - ax) * (point[1] - ay) - (by - ay) * (point[0] - ax)


def crossing(e, f):
    a, b = side_of(f, e[0]), side_of(f, e[1])
    if a * b >= 0 or side_of(e, f[0]) * side_of(e, f[1]) > 0:
        return []
    t = Fraction(a, a - b)
    return [tuple(p + (q - p) * t for p, q in zip(*e))]


def hull(points):
    """Corners of a convex ring in their order, without those on its edges; [] where there is no area."""
    points = sorted(points)
    halves = []
    for way in points, points[::-1]:
        chain = []
        for point in way:
            while len(chain) > 1 and side_of((chain[-2], chain[-1]), point) <= 0:
                chain.pop()
            chain.append(point)
        halves.append(chain[:-1])
    ring = halves[0] + halves[1]
    return ring if len(ring) > 2 else []


# ---- own pieces -----------------------------------------------------------------------------------------------------

def own_pieces(tree):
    """Fabric and corners of each."""
    width, height = size(tree)
    if isinstance(tree, Patch):
        return [(tree.fabric, [(0, 0), (width, 0), (width, height), (0, height)])]
    if isinstance(tree, SetIn):
        return strips(tree, width, height)
    return unit_pieces(tree, width, height) if isinstance(tree, Unit) else []


def strips(tree, width, height):
    left, right, top, bottom = tree.widths
    inner = [(left, bottom), (width - right, bottom), (width - right, height - top), (left, height - top)]
    outer = [(0, 0), (width, 0), (width, height), (0, height)]
    between = {LEFT: (0, 3), RIGHT: (1, 2), TOP: (2, 3), BOTTOM: (0, 1)}
    return [(tree.fabrics[k], [outer[a], outer[b], inner[b], inner[a]])
            for k, (a, b) in between.items() if tree.widths[k]]


def unit_pieces(tree, w, h):
    """As unit.h describes the kinds and test_unit_outline.py has them drawn: region 1, then the others."""
    a, b = tree.fabrics[:2]
    low_left, low_right, high_right, high_left = (0, 0), (w, 0), (w, h), (0, h)
    middle = Fraction(w, 2), Fraction(h, 2)
    if tree.kind == HALF_SQUARE:
        found = [(a, [low_left, low_right, high_right]), (b, [low_left, high_right, high_left])]
    elif tree.kind == HALF_RECTANGLE:
        found = [(a, [low_left, low_right, high_right]), (b, [high_right, high_left, low_left])]
    elif tree.kind == QUARTER_SQUARE:
        found = [(a, [low_left, low_right, middle]), (b, [low_right, high_right, middle]),
                 (a, [high_right, high_left, middle]), (b, [high_left, low_left, middle])]
    else:
        found = [(a, [low_left, low_right, (middle[0], h)]), (b, [low_left, (middle[0], h), high_left]),
                 (b, [low_right, high_right, (middle[0], h)])]
    if tree.hand == 2:
        found = [(fabric, [(w - x, y) for x, y in ring]) for fabric, ring in found]
    return found


# ---- edges that do not meet -----------------------------------------------------------------------------------------

@lru_cache(maxsize=None)
def along(tree, side):
    """Pieces along an edge."""
    of = children(tree)
    if isinstance(tree, Join):
        first, last = (LEFT, RIGHT) if tree.axis == ACROSS else (TOP, BOTTOM)
        return (along(of[0], side) if side == first else along(of[-1], side) if side == last
                else sum(along(child, side) for child in of))
    if isinstance(tree, Turn):
        return along(of[0], side_before(tree, side))
    if isinstance(tree, Trim):
        return along(of[0], side)
    return 1


def misfits(root, usual, ease, tops=1):
    """(node, first, second, their sizes, pieces, ease each, copies, kind) of every join; of trees of patches, joins,
    turns and trims."""
    found = []
    for tree, ways in copies(root, tops).items():
        for first, second, sizes, allowances, pieces in meetings_of(tree, usual):
            count, difference = sum(ways.values()), sizes[0] - sizes[1]
            if difference:
                kind = LENGTH if abs(difference) > ease else EASED
                each = up(Fraction(abs(difference), pieces)) if kind == EASED else 0
                found.append((tree, first, second, sizes, pieces, each, count, kind))
            if allowances[0] != allowances[1] or allowances[0] is None:
                found.append((tree, first, second, tuple(-1 if a is None else a for a in allowances), 0, 0, count,
                              ALLOWANCE))
    return found


def meetings_of(tree, usual):
    """Pairs of edges that are sewn together in a join."""
    if not isinstance(tree, Join):
        return
    last, first = (RIGHT, LEFT) if tree.axis == ACROSS else (BOTTOM, TOP)
    for k, (a, b) in enumerate(zip(tree.children, tree.children[1:])):
        yield (k, k + 1, (size(a)[2 - tree.axis], size(b)[2 - tree.axis]),
               (edges(a, usual)[last], edges(b, usual)[first]), max(along(a, last), along(b, first)))


# ---- from outlines alone --------------------------------------------------------------------------------------------

def pieces_of_edges(rings, slack=0):
    """Every edge cut at all corners that lie on it: {(from, to): [(ring, edge), ...]}. A corner within `slack` of an
    edge lies on it."""
    corners = sorted({point for ring in rings for point in ring})
    found = {}
    for number, ring in enumerate(rings):
        for edge, (a, b) in enumerate(round_(ring)):
            way = [a] + on_edge(corners, a, b, slack) + [b]
            for segment in zip(way, way[1:]):
                found.setdefault(segment, []).append((number, edge))
    return found


def on_edge(corners, a, b, slack):
    """Corners between a and b, in their order."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    long = dx * dx + dy * dy
    within = []
    for p in corners:
        if not (min(a[0], b[0]) - slack <= p[0] <= max(a[0], b[0]) + slack and
                min(a[1], b[1]) - slack <= p[1] <= max(a[1], b[1]) + slack):
            continue
        way = (p[0] - a[0]) * dx + (p[1] - a[1]) * dy
        if 0 < way < long and side_of((a, b), p)**2 <= slack * slack * long and p not in (a, b):
            within.append((way, p))
    return [p for _, p in sorted(within)]


def outside_of(width, height, segments):
    """Whether a segment lies on the box's edge, counter-clockwise."""
    (ax, ay), (bx, by) = segments
    return (ay == by == 0 and ax < bx or ax == bx == width and ay < by or
            ay == by == height and ax > bx or ax == bx == 0 and ay > by)


def shared(rings, width, height, slack=0):
    """Where two rings touch: (ring, its edge, the other, its edge, segment), each once. Fails unless the rings tile the
    box: every piece of an edge runs once each way, or once on the outside."""
    segments = pieces_of_edges(rings, slack)
    found = []
    for (a, b), owners in segments.items():
        assert len(owners) == 1, f"{a} to {b} lies in {owners}"
        beyond = segments.get((b, a))
        assert (beyond is None) == outside_of(width, height, (a, b)), f"{a} to {b}: {beyond}"
        if beyond is not None and a < b:
            found.append(owners[0] + beyond[0] + ((a, b),))
    return found


@dataclass(frozen=True)
class Seam:
    """One seam of one copy of a node: the way there, the node, the seam's number (None: not known here)."""
    way: Tuple
    node: object
    number: object


def seam_between(root, way, other):
    """That of two patches that touch: it belongs to the node in which their ways part."""
    tree, depth = root, 0
    while way[depth] == other[depth]:
        tree = children(tree)[way[depth]]
        depth += 1
    a, b = way[depth], other[depth]
    number = None
    if isinstance(tree, Join):
        assert abs(a - b) == 1
        number = min(a, b)
    if isinstance(tree, Pinwheel):
        # top to centre and left, right to centre and top, bottom to centre and right, left to centre and bottom
        number = {(0, 1): 0, (1, 4): 0, (0, 2): 1, (1, 2): 1, (0, 3): 2, (2, 3): 2, (0, 4): 3, (3, 4): 3}[
            min(a, b), max(a, b)]
    return Seam(way[:depth], tree, number)


def meetings(root, pieces, rings, width, height):
    """Where two seams end at one place of a third, which runs through, one from either side: (place, the third, the
    two)."""
    at = {}
    for i, _, j, _, segment in shared(rings, width, height):
        for point, end in (segment, segment[::-1]):
            seam = seam_between(root, pieces[i].way, pieces[j].way)
            at.setdefault(point, []).append((seam, end))
    found = []
    for point, ends in at.items():
        for k, (seam, end) in enumerate(ends):
            for other in ends[k + 1:]:
                if other[0] == seam and side_of((end, point), other[1]) == 0:
                    sides = [[s for s, e in ends if side_of((end, point), e) * way > 0] for way in (1, -1)]
                    if [len(side) for side in sides] == [1, 1]:
                        found.append((point, seam, [sides[0][0], sides[1][0]]))
    return found
