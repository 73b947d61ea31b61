# SPDX-License-Identifier: MIT
"""Units of the caller's own: tiling against sweeping the plane, templates against lines and circles with 90 decimals."""

import copy
import math
from fractions import Fraction

import mpmath
from hypothesis import assume, given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import shape as model
from muslin_model.base import SIZE_MAX
from questions import INT32, agree, as_object, choices, mostly, requests, roundings, seams, sizes, take_ups

STRAIGHT, CONVEX, CONCAVE = 1, 2, 3
INCH = 8128
TO_TICK = {"grid": 1, "tolerance": 0, "direction": 3}


def corner(piece, x, y, curve=STRAIGHT, centre=(0, 0), radius=0):
    return {"piece": piece, "tip": 1, "x": x, "y": y, "allowance": 2032, "take_up": 0, "centre_x": centre[0],
            "centre_y": centre[1], "radius": radius, "curve": curve}


def objects(rows):
    return [as_object(dict(row)) for row in rows]


def both(call, rows, *rest):
    """Ask library and model alike; dicts among the rest become objects for the model."""
    modelled = {"shape_check": model.check, "shape_template": model.template, "shape_measure": model.piece,
                "shape_foundation": model.foundation}[call]
    agree(lambda: ask(call, rows, *rest),
          lambda: modelled(objects(rows), *(as_object(one) if isinstance(one, dict) else one for one in rest)))


# ---- tiling ---------------------------------------------------------------------------------------------------------

def rows_of(piece, points):
    return [corner(piece, x, y) for x, y in points]


@st.composite
def cut_up(draw):
    """A polygon cut along chords between whole points of its edges or corners, again and again: a unit."""
    width, height = draw(st.integers(2, 8)), draw(st.integers(2, 8))
    outline = [(0, 0), (width, 0), (width, height), (0, height)]
    if draw(st.booleans()):
        outline[2:3] = [(width, height // 2), (width // 2, height)]
    pieces = [outline]
    for _ in range(draw(st.integers(0, 5))):
        piece = pieces.pop(draw(st.integers(0, len(pieces) - 1)))
        round_ = [point for a, b in zip(piece, piece[1:] + piece[:1]) for point in on_edge(a, b)]
        i, j = sorted(draw(st.tuples(st.integers(0, len(round_) - 1), st.integers(0, len(round_) - 1))))
        halves = [round_[i:j + 1], round_[j:] + round_[:i + 1]]
        made = [without_flat(half) for half in halves if len(half) > 2]
        pieces += made if len(made) == 2 and all(len(half) > 2 for half in made) else [piece]
    return outline, pieces


def on_edge(a, b):
    steps = math.gcd(b[0] - a[0], b[1] - a[1])
    return [(a[0] + (b[0] - a[0]) * k // steps, a[1] + (b[1] - a[1]) * k // steps) for k in range(steps)]


def without_flat(points):
    return [b for a, b, c in zip(points[-1:] + points[:-1], points, points[1:] + points[:1])
            if (b[0] - a[0]) * (c[1] - b[1]) != (b[1] - a[1]) * (c[0] - b[0])]


@given(cut_up(), st.data())
def test_a_unit_cut_up_is_tiled_and_a_changed_one_only_if_it_still_is(unit, data):
    outline, pieces = unit
    rows = rows_of(-1, outline) + [row for name, piece in enumerate(pieces) for row in rows_of(name, piece)]
    both("shape_check", rows)
    if data.draw(st.booleans()):
        row = data.draw(st.sampled_from(rows))
        row["x"] = max(row["x"] + data.draw(st.integers(-1, 1)), 0)
        row["y"] = max(row["y"] + data.draw(st.integers(-1, 1)), 0)
    elif data.draw(st.booleans()):
        name = data.draw(st.integers(0, len(pieces) - 1))
        rows += [dict(row, piece=len(pieces)) for row in rows if row["piece"] == name]
    else:
        rows = [row for row in rows if row["piece"] < len(pieces) - 1]
    both("shape_check", rows)


small = st.integers(0, 6)


@given(st.lists(st.tuples(small, small), min_size=1, max_size=7), st.lists(st.tuples(small, small), max_size=5))
def test_any_few_points_are_a_shape_or_not(outline, piece):
    both("shape_check", rows_of(-1, outline) + rows_of(0, piece))
    both("shape_template", rows_of(0, outline), 0, TO_TICK)


members = {"tip": choices(4), "curve": choices(3), "x": sizes, "y": sizes, "allowance": seams, "take_up": take_ups,
           "centre_x": sizes, "centre_y": sizes, "radius": sizes, "piece": mostly(st.integers(-2, 3), rarely=[*INT32])}


@given(cut_up(), st.sampled_from(sorted(members)), st.data())
def test_a_row_outside_its_ranges_is_refused(unit, name, data):
    outline, pieces = unit
    rows = rows_of(-1, outline) + [row for at, piece in enumerate(pieces) for row in rows_of(at, piece)]
    data.draw(st.sampled_from(rows))[name] = data.draw(members[name])
    try:
        model.read(objects(rows))
    except model.Refused as refused:
        try:
            ask("shape_check", rows)
        except Failed as failed:
            assert failed.status.name in refused.statuses
        else:
            raise AssertionError(f"accepted instead of {refused.statuses}")


# ---- templates of straight pieces -----------------------------------------------------------------------------------

places = mostly(st.integers(0, 12).map(lambda n: n * INCH), st.integers(0, 10**5), st.integers(0, model.SHAPE_SIZE_MAX),
                rarely=[0, 1, 2, 3])
allowances = mostly(st.sampled_from([2032, 1920, 0, 4064, 1]), st.integers(0, 5000), rarely=[model.SEAM_MAX])
few_ticks = mostly(st.just(0), st.integers(0, 130), rarely=[1, model.SEAM_MAX])


@st.composite
def polygons(draw):
    """Simple ones: random points in the order of their angles about the middle of them."""
    points = draw(st.lists(st.tuples(places, places), min_size=3, max_size=6, unique=True))
    x, y = (Fraction(sum(c), len(points)) for c in zip(*points))
    points.sort(key=lambda point: math.atan2(point[1] - y, point[0] - x))
    rows = rows_of(0, points)
    assume(model.is_simple(objects(rows)))
    same = draw(st.booleans())
    for row in rows:
        row["tip"] = draw(st.integers(1, 4))
        row["allowance"] = 2032 if same else draw(allowances)
        row["take_up"] = 0 if same else draw(few_ticks)
    return rows


@given(polygons(), roundings(), mostly(st.just(0), rarely=[-1, 1, *INT32]))
def test_the_template_of_a_polygon(rows, rounding, piece):
    both("shape_template", rows, piece, rounding)


directions = mostly(st.just(0), st.integers(-5, 5), rarely=[model.SHAPE_SIZE_MAX, -model.SHAPE_SIZE_MAX,
                                                            model.SHAPE_SIZE_MAX + 1])


@given(polygons(), requests(piece=st.just(0), grain_x=directions, grain_y=directions,
                            margin=mostly(st.integers(0, 9000), rarely=[-1, model.SHAPE_SIZE_MAX,
                                                                        model.SHAPE_SIZE_MAX + 1])),
       roundings(), st.integers(-1, 8), st.booleans())
def test_what_one_knows_of_a_polygon(rows, spec, rounding, at, outlined):
    if outlined:
        rows = [dict(row, piece=-1) for row in rows] + rows
    both("shape_measure", rows, spec, rounding)
    both("shape_foundation", rows, at, spec["margin"], rounding)


@given(polygons())
def test_equal_allowances_add_the_perimeter_and_the_tips(rows):
    """A convex polygon moved out by e on all sides has area A + e x perimeter + e^2 x sum of tan(turn / 2)."""
    turns = []
    for at, here in enumerate(rows):
        a, b = rows[at - 1], rows[(at + 1) % len(rows)]
        d, f = complex(here["x"] - a["x"], here["y"] - a["y"]), complex(b["x"] - here["x"], b["y"] - here["y"])
        turns.append(math.atan2((d.conjugate() * f).imag, (d.conjugate() * f).real))
    assume(all(0.01 < turn < 2.6 for turn in turns))
    rows = [dict(row, tip=1, allowance=1000, take_up=0) for row in rows]
    made = ask("shape_template", rows, 0, TO_TICK)
    found = sum(a["x"] * b["y"] - a["y"] * b["x"] for a, b in zip(made, made[1:] + made[:1]))
    around = sum(math.hypot(b["x"] - a["x"], b["y"] - a["y"]) for a, b in zip(rows, rows[1:] + rows[:1]))
    wanted = model.area2(objects(rows)) + 2 * 1000 * around + 2 * 10**6 * sum(math.tan(turn / 2) for turn in turns)
    assert abs(found - wanted) <= 3 * (around + 10**5)


# ---- templates with arcs --------------------------------------------------------------------------------------------

TRIPLES = [(1, 0, 1), (3, 4, 5), (5, 12, 13), (8, 15, 17), (4, 3, 5), (12, 5, 13), (15, 8, 17), (0, 1, 1)]


def turned(triple, quarters):
    x, y, size = triple
    for _ in range(quarters):
        x, y = -y, x
    return x, y, size


@st.composite
def slices(draw):
    """A slice of a ring, or of a disc: two straight edges on lines from the centre, one or two arcs about it."""
    i, j = sorted(draw(st.lists(st.integers(0, 7), min_size=2, max_size=2, unique=True)),
                  key=lambda at: math.atan2(TRIPLES[at][1], TRIPLES[at][0]))
    quarters = draw(st.integers(0, 3))
    first, second = turned(TRIPLES[i], quarters), turned(TRIPLES[j], quarters)
    unit = 5 * 13 * 17
    outer, inner = draw(st.integers(2, 200)), draw(st.integers(0, 100))
    assume(inner < outer)
    centre = 300000, 300000

    def at(triple, times):
        return tuple(c + t * unit // triple[2] * times for c, t in zip(centre, triple))

    inside = ([corner(0, *at(second, inner), CONCAVE, centre, inner * unit), corner(0, *at(first, inner))] if inner
              else [corner(0, *centre)])
    rows = [corner(0, *at(first, outer), CONVEX, centre, outer * unit), corner(0, *at(second, outer)), *inside]
    for row in rows:
        row["allowance"], row["take_up"] = draw(allowances), draw(few_ticks)
    return rows


@st.composite
def lenses(draw):
    """Two arcs between two corners: a lens, or a crescent."""
    half = 60
    times = draw(st.integers(1, 1500))
    distances = {60: (11, 61), 25: (25, 65), 32: (32, 68), 45: (45, 75), 63: (63, 87), 80: (80, 100), 0: (0, 60)}
    right, left = (draw(st.sampled_from(sorted(distances.values()))) for _ in range(2))
    middle = 400000
    upwards = draw(st.booleans())

    def place(x, y):
        return (middle + x * times, middle + y * times) if upwards else (middle - y * times, middle + x * times)

    crescent = draw(st.booleans()) and left[0] > right[0]
    rows = [corner(0, *place(0, -half), CONVEX, place(-right[0], 0), right[1] * times),
            corner(0, *place(0, half), CONCAVE if crescent else CONVEX, place(-left[0] if crescent else left[0], 0),
                   left[1] * times)]
    for row in rows:
        row["allowance"], row["take_up"] = draw(allowances), draw(few_ticks)
    return rows


@st.composite
def corners_of_squares(draw):
    """A square without a quarter disc about one of its corners."""
    side = draw(st.integers(3, 10**5))
    radius = draw(st.integers(2, side - 1))
    rows = [corner(0, radius, 0), corner(0, side, 0), corner(0, side, side), corner(0, 0, side),
            corner(0, 0, radius, CONCAVE, (0, 0), radius)]
    for row in rows:
        row["allowance"], row["take_up"] = draw(allowances), draw(few_ticks)
    return rows


with_arcs = slices() | lenses() | corners_of_squares()


@given(with_arcs, roundings())
def test_the_template_of_a_piece_with_arcs(rows, rounding):
    both("shape_template", rows, 0, rounding)


@given(with_arcs, requests(piece=st.just(0), grain_x=st.integers(-5, 5), grain_y=st.integers(-5, 5),
                           margin=st.integers(0, 9000)), roundings(), st.integers(0, 3))
def test_what_one_knows_of_a_piece_with_arcs(rows, spec, rounding, at):
    both("shape_measure", rows, spec, rounding)
    both("shape_foundation", rows, at, spec["margin"], rounding)


@given(slices(), st.integers(0, 3))
def test_a_piece_with_arcs_is_its_own_outline_and_nothing_else_is(rows, at):
    unit = [dict(row, piece=-1) for row in rows] + rows
    found = ask("shape_check", unit)
    assert (found["pieces"], found["outside_edges"], found["inside_edges"], found["has_arcs"]) == (1, len(rows), 0, 1)
    changed = copy.deepcopy(unit)
    changed[at % len(rows)]["curve"] = STRAIGHT
    changed[at % len(rows)].update(centre_x=0, centre_y=0, radius=0)
    if changed == unit:
        return
    try:
        ask("shape_check", changed)
    except Failed as failed:
        assert failed.status.name in ("ERR_NOT_TILED", "ERR_SHAPE")  # the chord may cross the inner arc
    else:
        raise AssertionError("a chord was taken for its arc")


# ---- quarter circles and polygons -----------------------------------------------------------------------------------

radii = mostly(st.integers(1, 16).map(lambda n: n * 4064), st.integers(1, 10**6), st.integers(1, SIZE_MAX),
               rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1, -1])


@given(radii, mostly(st.integers(1, 4), rarely=[0, 5, *INT32]), roundings())
def test_the_length_of_an_arc(radius, quarter_turns, rounding):
    agree(lambda: ask("arc_length", radius, quarter_turns, rounding),
          lambda: model.arc_length(radius, quarter_turns, as_object(rounding)))


@given(requests(finished=sizes, radius=radii, allowance=seams, take_up=take_ups), roundings(), st.integers(0, 3))
def test_a_quarter_circle(spec, rounding, how):
    if how and 0 < spec["finished"] <= SIZE_MAX:
        spec["radius"] = spec["radius"] % spec["finished"]
    agree(lambda: ask("shape_quarter_circle", spec, rounding), lambda: model.quarter(as_object(spec),
            as_object(rounding)))


@given(st.integers(2, 10**5), st.data(), st.integers(0, 3000), st.integers(0, 60))
def test_the_quarter_circle_is_the_template_of_its_two_pieces(side, data, allowance, take_up):
    radius = data.draw(st.integers(1, side - 1))
    assume(radius > 2 * allowance + take_up)
    seam = {"allowance": allowance, "take_up": take_up}
    found = ask("shape_quarter_circle", dict(seam, finished=side, radius=radius), TO_TICK)
    pie = [corner(0, 0, 0), corner(0, radius, 0, CONVEX, (0, 0), radius), corner(0, 0, radius)]
    rest = [corner(0, radius, 0), corner(0, side, 0), corner(0, side, side), corner(0, 0, side),
            corner(0, 0, radius, CONCAVE, (0, 0), radius)]
    slack = take_up % 2
    tip, end, _ = ask("shape_template", [dict(row, **seam) for row in pie], 0, TO_TICK)
    assert abs(end["x"] - tip["x"] - found["convex_cut_leg"]) <= 1 + slack
    assert end["radius"] == found["convex_cut_radius"]
    start, far, *_ = ask("shape_template", [dict(row, **seam) for row in rest], 0, TO_TICK)
    assert abs(far["x"] - start["x"] - found["concave_cut_leg"]) <= 1 + slack


@given(mostly(st.sampled_from([3, 4, 6, 8]), rarely=[0, 5, 7, *INT32]), choices(4), radii, roundings())
def test_a_regular_polygon(sides, measure, size, rounding):
    agree(lambda: ask("shape_regular_polygon", sides, measure, size, rounding),
          lambda: model.regular(sides, measure, size, as_object(rounding)))


@given(st.sampled_from([3, 4, 6, 8]), st.integers(1, 4), st.integers(1, 10**8))
def test_a_regular_polygon_by_its_angles(sides, measure, size):
    """With 50 digits from the angle at the centre: all measures follow from the distance to a corner."""
    with mpmath.workdps(50):
        half = mpmath.pi / sides
        side, flat = 2 * mpmath.sin(half), mpmath.cos(half)
        parts = [side, 2 * flat if sides % 2 == 0 else 1 + flat, 2 if sides % 2 == 0 else side, 1]
        centre = mpmath.mpf(size) / parts[measure - 1]
        wanted = [int(mpmath.floor(part * centre + mpmath.mpf("0.5") + mpmath.mpf(10)**-30)) for part in parts]
        area = int(mpmath.floor(sides * side * flat * centre**2 + mpmath.mpf("0.5") + mpmath.mpf(10)**-20))
    found = ask("shape_regular_polygon", sides, measure, size, TO_TICK)
    assert [found[name] for name in ("side", "flats", "corners", "centre")] == wanted
    assert found["area"] == area
