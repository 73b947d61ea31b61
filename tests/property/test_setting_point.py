# SPDX-License-Identifier: MIT
"""Settings on point: against the model, against a drawing with exact coordinates, and against 50 decimal digits."""

from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import setting_point as model
from muslin_model.root2 import ROOT, Root2
from questions import agree, as_object, choices, few, requests, roundings, seams, sizes, small_sizes, take_ups

PLAIN, OUTER, CUT, INNER = 1, 2, 3, 4
TO_A_TICK = {"grid": 1, "tolerance": 0, "direction": 3}
UP_TO_A_TICK = {"grid": 1, "tolerance": 0, "direction": 1}

eighths = st.integers(1, 160).map(lambda n: n * 1016)
little = st.integers(0, 24).map(lambda n: n * 508) | st.integers(0, 3000)
wild = {"block": sizes, "columns": few, "rows": few, "sash": small_sizes, "set_off": small_sizes, "allowance": seams,
        "take_up": take_ups, "trim_room": small_sizes, "side_addition": small_sizes, "corner_addition": small_sizes,
        "layout": choices(4), "edge": choices(2), "policy": choices(3), "factor_numerator": st.integers(-1, 10**6 + 1),
        "factor_denominator": st.integers(-1, 10**6 + 1)}
plausible = {"block": eighths | st.integers(1, 10**5), "columns": st.integers(1, 9), "rows": st.integers(1, 9),
             "sash": little, "set_off": little, "allowance": st.sampled_from([2032, 1920, 2400, 0]),
             "take_up": st.integers(0, 300), "trim_room": little, "side_addition": st.just(0) | st.integers(9800,
                     20000),
             "corner_addition": st.just(0) | st.integers(6900, 20000), "layout": st.integers(1, 4),
             "edge": st.sampled_from([1, 1, 1, 2]), "policy": st.integers(1, 3)}
factors = st.sampled_from([(0, 0), (1414, 1000), (14143, 10000), (17, 12), (141, 100), (0, 5), (5, 0)])


@st.composite
def specs(draw):
    """Two in three hold together: what their layout and their policy do not allow is left out, and one wild member
    may be put in. The others are wild all over."""
    if draw(st.integers(0, 2)) == 0:
        return dict(draw(requests(**wild)), diagonal_first=draw(st.booleans()))
    spec = dict(draw(requests(**plausible)), diagonal_first=draw(st.booleans()))
    spec["factor_numerator"], spec["factor_denominator"] = draw(factors)
    if spec["layout"] in (OUTER, INNER):
        spec["edge"] = 1
    spec["sash"] = 0 if spec["layout"] == PLAIN else spec["sash"] or 1
    spec["set_off"] = spec["set_off"] if spec["layout"] in (PLAIN, OUTER) and spec["edge"] == 1 else 0
    spec["trim_room"] = spec["trim_room"] if spec["policy"] == 3 else 0
    if draw(st.integers(0, 3)) == 0:
        name = draw(st.sampled_from(sorted(wild)))
        spec[name] = draw(wild[name])
    return spec


usual_roundings = st.fixed_dictionaries({"grid": st.sampled_from([1, 127, 1016, 2032, 320]),
                                         "tolerance": st.just(0), "direction": st.integers(1, 3)})
some_roundings = st.one_of(usual_roundings, usual_roundings.map(dict), usual_roundings.map(
    lambda rounding: dict(rounding, tolerance=rounding["grid"] // 3)), roundings())


@given(specs(), some_roundings, some_roundings)
def test_a_setting_on_point(spec, cutting, measuring):
    agree(lambda: ask("setting_point", spec, cutting, measuring),
          lambda: model.plan(as_object(spec), as_object(cutting), as_object(measuring)))


@given(specs(), st.integers(1, 120).map(lambda n: n * 8128) | sizes,
       st.sampled_from([1, 1016, 2032]) | st.sampled_from([0, 2**30, 2**30 + 1]) | st.integers(1, 10**5))
def test_the_largest_block_within_a_width(spec, wanted_width, grid):
    agree(lambda: ask("setting_point_block_for_width", wanted_width, grid, spec),
          lambda: model.block_for_width(as_object(spec), wanted_width, grid))


@given(specs(), sizes | eighths, some_roundings)
def test_the_block_that_a_side_square_frames(spec, side_square_cut, rounding):
    agree(lambda: ask("setting_point_block_from_side", side_square_cut, spec, rounding),
          lambda: model.block_from_side(as_object(spec), side_square_cut, as_object(rounding)))


# ---- inverse laws ---------------------------------------------------------------------------------------------------

good = {"block": st.integers(20, 200).map(lambda n: n * 1016), "columns": st.integers(1, 9), "rows": st.integers(1, 9),
        "sash": st.integers(1, 12).map(lambda n: n * 1016), "allowance": st.sampled_from([2032, 1920, 2400, 3048]),
        "take_up": st.integers(0, 300), "layout": st.integers(1, 4)}


def made_good(spec):
    return dict(spec, sash=0) if spec["layout"] == PLAIN else spec


@given(requests(**good).map(made_good))
def test_the_exact_side_square_frames_its_block(spec):
    """Up to a tick there, down to a tick back: the block again, at most a tick more."""
    spec["columns"] = 2
    cut = ask("setting_point", spec, UP_TO_A_TICK, TO_A_TICK)["side_square_cut"]
    back = ask("setting_point_block_from_side", cut, spec, {"grid": 1, "tolerance": 0, "direction": 2})["value"]
    assert spec["block"] <= back <= spec["block"] + 1


@given(requests(**good).map(made_good), st.sampled_from([1, 1016, 2032]))
def test_a_block_fits_its_own_width_and_the_next_does_not(spec, grid):
    wanted = ask("setting_point", spec, TO_A_TICK, UP_TO_A_TICK)["finished_width"]
    found = ask("setting_point_block_for_width", wanted, grid, spec)
    assert found == spec["block"] // grid * grid or (grid == 1 and found >= spec["block"])
    next_one = dict(spec, block=found + grid)
    assert ask("setting_point", next_one, TO_A_TICK, UP_TO_A_TICK)["finished_width"] > wanted


@given(requests(**good).map(made_good))
def test_fifty_digits_agree(spec):
    mpmath = pytest.importorskip("mpmath")
    found = ask("setting_point", spec, UP_TO_A_TICK, TO_A_TICK)
    with mpmath.workdps(50):
        root, t = mpmath.sqrt(2), 2 * spec["allowance"] + spec["take_up"]
        b, w, c = spec["block"], spec["sash"], spec["columns"]
        leg = {PLAIN: b, OUTER: b + w, CUT: b, INNER: b - w}[spec["layout"]]
        gaps = {PLAIN: 0, OUTER: c + 1, CUT: c, INNER: c - 1}[spec["layout"]]
        if found["side_triangles"]:
            assert found["side_square_cut"] == int(mpmath.ceil(leg * root + (1 + root) * t))
        long_side = b + 2 * w if spec["layout"] == OUTER else b
        assert found["corner_square_cut"] == int(mpmath.ceil(long_side / root + (1 + 1 / root) * t))
        assert found["finished_width"] == int(mpmath.floor((c * b + gaps * w) * root + mpmath.mpf(1) / 2))


# ---- the drawing ----------------------------------------------------------------------------------------------------
#
# Drawn turned back by 45 degrees, so that blocks stand straight: u and v run along the blocks' sides,
# x = (u + v) / sqrt 2 across the quilt and y = (v - u) / sqrt 2 down it. Areas and lengths are those of the quilt.

def square(u, v, width, height):
    """Round its middle."""
    return [(u + sign * Fraction(width, 2), v + other * Fraction(height, 2))
            for sign, other in ((-1, -1), (1, -1), (1, 1), (-1, 1))]


def doubled_area(polygon):
    total = Root2(0)
    for (u0, v0), (u1, v1) in zip(polygon, polygon[1:] + polygon[:1]):
        total += Root2.of(u0) * v1 - Root2.of(u1) * v0
    return total if total.sign() >= 0 else Root2(0) - total


def clipped(polygon, side):
    """The part of a convex polygon where a u + b v <= limit."""
    a, b, limit = side
    kept = []
    for here, there in zip(polygon, polygon[1:] + polygon[:1]):
        inside, inside_there = (Root2.of(limit) - Root2.of(a) * u - Root2.of(b) * v for u, v in (here, there))
        if inside.sign() >= 0:
            kept.append(here)
        if inside.sign() * inside_there.sign() < 0:
            share = inside / (inside - inside_there)
            kept.append(tuple(h + (t - h) * share for h, t in zip(map(Root2.of, here), map(Root2.of, there))))
    return kept


def clipped_by_all(polygon, sides):
    for side in sides:
        polygon = clipped(polygon, side)
    return polygon


def sides_of(polygon):
    """Its edges as half-planes, for a polygon in either sense of turning."""
    middle = tuple(sum(map(Root2.of, coordinates), Root2(0)) / len(polygon) for coordinates in zip(*polygon))
    for (u0, v0), (u1, v1) in zip(polygon, polygon[1:] + polygon[:1]):
        a, b = Root2.of(v1) - v0, Root2.of(u0) - u1
        limit = a * u0 + b * v0
        if (a * middle[0] + b * middle[1] - limit).sign() > 0:
            a, b, limit = Root2(0) - a, Root2(0) - b, Root2(0) - limit
        yield a, b, limit


class Drawing:
    """One quilt: its rectangle, and its pieces by kind."""

    def __init__(self, spec):
        self.block, self.sash, self.layout = spec["block"], spec["sash"], spec["layout"]
        self.columns, self.rows, self.set_off = spec["columns"], spec["rows"], spec.get("set_off", 0)
        self.pitch = self.block + self.sash
        self.places = [(k, m) for k in range(self.columns) for m in range(self.rows)]
        tip = {PLAIN: self.block, OUTER: self.block + 2 * self.sash, CUT: self.pitch, INNER: self.block}[self.layout]
        beyond = tip + self.set_off * ROOT  # from the middle of an outer block to the edge, as a sum or difference
        self.x = Root2(0) - beyond, 2 * (self.columns - 1) * self.pitch + beyond
        self.y = Root2(0) - beyond, 2 * (self.rows - 1) * self.pitch + beyond
        self.edges = [(1, 1, self.x[1]), (-1, -1, Root2(0) - self.x[0]), (-1, 1, self.y[1]),
                      (1, -1, Root2(0) - self.y[0])]
        self.pieces = [("block", square(*self.middle(k, m), self.block, self.block)) for k, m in self.places]
        half = Fraction(1, 2)
        self.pieces += [("alternate", square(*self.middle(k + half, m + half), self.block, self.block))
                        for k in range(self.columns - 1) for m in range(self.rows - 1)]
        if self.layout != PLAIN:
            self.lay_sashes()
        self.lay_triangles()

    def middle(self, k, m):
        return (k - m) * self.pitch, (k + m) * self.pitch

    def lay(self, kind, polygon):
        """A piece, or what the edge leaves of it."""
        kept = clipped_by_all(polygon, self.edges)
        if len(kept) > 2 and doubled_area(kept).sign() > 0:
            whole = doubled_area(kept) == doubled_area(polygon)
            self.pieces.append((kind if whole else "edge " + kind, kept))

    def lay_sashes(self):
        half, corners = Fraction(self.pitch, 2), set()
        for k, m in self.places:
            u, v = self.middle(k, m)
            corners |= {(u + a * half, v + b * half) for a in (-1, 1) for b in (-1, 1)}
            for a, b in ((1, 0), (-1, 0), (0, 1), (0, -1)):
                if self.layout == INNER and self.faces_corner(k, m, a, b):
                    continue
                upright = a != 0
                self.lay("sash", square(u + a * half, v + b * half, self.sash if upright else self.block,
                                        self.block if upright else self.sash))
        for u, v in corners:
            self.lay("cornerstone", square(u, v, self.sash, self.sash))

    def faces_corner(self, k, m, a, b):
        """Towards -v lies the corner at the left above, towards v the opposite one, towards u right above."""
        last_k, last_m = self.columns - 1, self.rows - 1
        return (k, m, a, b) in {(0, 0, 0, -1), (last_k, last_m, 0, 1), (last_k, 0, 1, 0), (0, last_m, -1, 0)}

    def outside(self, u, v, sides):
        """The part of the quilt beyond some sides of a missing block, each (a, b, distance from its middle)."""
        corner = [(self.x[i], self.y[j]) for i, j in ((0, 0), (1, 0), (1, 1), (0, 1))]
        quilt = [((x - y) / 2, (x + y) / 2) for x, y in corner]
        return clipped_by_all(quilt, [(a, b, a * u + b * v + distance) for a, b, distance in sides])

    def lay_triangles(self):
        """Round the edge: a corner, the sides above, the next corner and so on; each where a block is missing."""
        half, reach = Fraction(1, 2), Fraction(self.block, 2)
        away = reach + (self.sash if self.layout in (OUTER, CUT) else 0)
        last_k, last_m = self.columns - 1, self.rows - 1

        def corner(k, m, a, b):
            u, v = self.middle(k, m)
            return "corner", self.outside(u, v, [(-a, -b, -away)])

        def side(k, m, *sides):
            u, v = self.middle(k, m)
            return "side", self.outside(u, v, [(a, b, reach) for a, b in sides])

        ring = [corner(0, 0, 0, -1)]
        ring += [side(k + half, -half, (-1, 0), (0, 1)) for k in range(last_k)]
        ring += [corner(last_k, 0, 1, 0)]
        ring += [side(last_k + half, m + half, (-1, 0), (0, -1)) for m in range(last_m)]
        ring += [corner(last_k, last_m, 0, 1)]
        ring += [side(k + half, last_m + half, (1, 0), (0, -1)) for k in reversed(range(last_k))]
        ring += [corner(0, last_m, -1, 0)]
        ring += [side(-half, m + half, (1, 0), (0, 1)) for m in reversed(range(last_m))]
        self.triangles = ring
        self.pieces += [(kind, self.trimmed(polygon, ring[(i + 1) % len(ring)][1]))
                        for i, (kind, polygon) in enumerate(ring)]

    def trimmed(self, polygon, next_one):
        """Beyond each tip two neighbours overlap where there is a set-off; the later one is left whole."""
        shared = clipped_by_all(polygon, sides_of(next_one))
        if len(shared) < 3 or doubled_area(shared).sign() == 0:
            return polygon
        rest = doubled_area(polygon) - doubled_area(shared)
        for a, b, limit in sides_of(next_one):
            kept = clipped(polygon, (Root2(0) - a, Root2(0) - b, Root2(0) - limit))
            if len(kept) > 2 and doubled_area(kept) == rest:
                return kept
        raise AssertionError("the overlap is no corner of the piece")

    def count(self, kind):
        return sum(one == kind for one, _ in self.pieces)

    def long_sides(self, kind):
        """Squared lengths of the longest side of each triangle of a kind, as cut out before trimming."""
        for one, polygon in self.triangles:
            if one == kind:
                assert len(polygon) == 3
                yield max(((Root2.of(u1) - u0) * (Root2.of(u1) - u0) + (Root2.of(v1) - v0) * (Root2.of(v1) - v0)
                           for (u0, v0), (u1, v1) in zip(polygon, polygon[1:] + polygon[:1])),
                          key=lambda squared: squared.ends()[0])


SIZES = [(1, 1), (2, 1), (1, 3), (3, 2)]
SETTINGS = [(PLAIN, 0, 0), (PLAIN, 0, 3), (PLAIN, 0, 40), (OUTER, 5, 0), (OUTER, 5, 2), (OUTER, 30, 7), (CUT, 5, 0),
            (CUT, 30, 0), (INNER, 5, 0), (INNER, 19, 0)]


@pytest.mark.parametrize("layout, sash, set_off", SETTINGS)
@pytest.mark.parametrize("columns, rows", SIZES)
def test_the_pieces_fill_the_quilt(layout, sash, set_off, columns, rows):
    """Nothing sticks out, nothing overlaps, and the areas add up to the quilt's."""
    drawing = Drawing({"block": 20, "columns": columns, "rows": rows, "sash": sash, "set_off": set_off,
                       "layout": layout})
    width, length = (drawing.x[1] - drawing.x[0]) / ROOT, (drawing.y[1] - drawing.y[0]) / ROOT
    assert sum((doubled_area(polygon) for _, polygon in drawing.pieces), Root2(0)) == 2 * (width * length)
    for _, polygon in drawing.pieces:
        assert doubled_area(clipped_by_all(polygon, drawing.edges)) == doubled_area(polygon)
    for (_, one), (_, other) in combinations(drawing.pieces, 2):
        shared = clipped_by_all(one, sides_of(other))
        assert len(shared) < 3 or doubled_area(shared).sign() == 0


@pytest.mark.parametrize("layout, sash, set_off", SETTINGS)
@pytest.mark.parametrize("columns, rows", SIZES)
def test_the_library_counts_and_measures_what_is_drawn(layout, sash, set_off, columns, rows):
    spec = {"block": 20, "columns": columns, "rows": rows, "sash": sash, "set_off": set_off, "layout": layout,
            "allowance": 0}
    drawing = Drawing(spec)
    found = ask("setting_point", spec, UP_TO_A_TICK, UP_TO_A_TICK)
    for kind, name in (("block", "blocks"), ("alternate", "alternates"), ("side", "side_triangles"),
                       ("corner", "corner_triangles"), ("sash", "sashes"), ("edge sash", "edge_sashes"),
                       ("cornerstone", "cornerstones"), ("edge cornerstone", "edge_cornerstones")):
        assert found[name] == drawing.count(kind), name
    assert found["finished_width"] == ((drawing.x[1] - drawing.x[0]) / ROOT).ceiling()
    assert found["finished_length"] == ((drawing.y[1] - drawing.y[0]) / ROOT).ceiling()
    for squared in drawing.long_sides("side"):  # the square that is cut twice has this side
        exact = found["side_square_cut"]
        assert (exact - 1) ** 2 < squared <= exact ** 2
    for squared in drawing.long_sides("corner"):  # the square that is cut once has this diagonal
        exact = found["corner_square_cut"]
        assert 2 * (exact - 1) ** 2 < squared <= 2 * exact ** 2


def meeting(one, other):
    """Where two lines a u + b v = limit meet."""
    (a, b, limit), (c, d, bound) = (tuple(map(Root2.of, line)) for line in (one, other))
    determinant = a * d - b * c
    return (limit * d - b * bound) / determinant, (a * bound - limit * c) / determinant


@given(st.integers(1, 2000), st.integers(1, 300), st.integers(0, 50))
def test_allowances_are_what_parallels_round_the_pieces_say(block, sash, allowance):
    """Each side moved out by the allowance: the sides of the raw piece are then where the parallels meet."""
    e, w, b = allowance, min(sash, block - 1) or 1, block + 1
    legs = (-1, 0, e), (0, -1, e)
    long_side = (1, 1, b + e * ROOT)  # both legs b
    u, _ = meeting(long_side, legs[1])
    spec = {"block": b, "columns": 2, "rows": 1, "allowance": e, "sash": w, "layout": CUT}
    found = ask("setting_point", spec, UP_TO_A_TICK, TO_A_TICK)
    raw_leg = u + e
    assert found["side_square_cut"] == (raw_leg * ROOT).ceiling()
    # a corner's long side is b, so that its legs are b / sqrt 2
    u, _ = meeting((1, 1, b * ROOT / 2 + e * ROOT), legs[1])
    assert found["corner_square_cut"] == (u + e).ceiling()
    # a sash of length b along v = 0, square at u = 0, cut off at 45 degrees at the other end
    u, _ = meeting((1, 1, b + e * ROOT), (0, -1, e))
    inner = ask("setting_point", dict(spec, layout=INNER), UP_TO_A_TICK, TO_A_TICK)
    assert inner["edge_sash_cut_length"] == (u + e).ceiling()


def test_a_set_off_where_something_is_cut_at_the_edge_is_refused():
    for layout in (CUT, INNER):
        with pytest.raises(Failed):
            ask("setting_point", {"block": 20, "sash": 5, "set_off": 1, "layout": layout}, TO_A_TICK,
                TO_A_TICK)
