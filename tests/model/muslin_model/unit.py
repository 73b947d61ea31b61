# SPDX-License-Identifier: MIT
"""Recipes for pieced shapes, by drawing them: each piece is a polygon as seen in the quilt, moved out by the allowance,
and measured. Sizes are decimals of 70 digits; one that is whole to 40 digits is taken as whole."""

import math
from decimal import ROUND_CEILING, ROUND_FLOOR, Decimal, localcontext
from fractions import Fraction
from functools import wraps
from math import gcd

from .base import COUNT_MAX, DOWN, SIZE_MAX, UP, Refused, Wants, largest, least

UNIT_SIZE_MAX = 2**26
PART_MAX = UNIT_SIZE_MAX // 8
WARN_BIAS_EDGE, WARN_BELOW_EXACT = 1 << 12, 1 << 14

(RECTANGLE, HALF_SQUARE, QUARTER_SQUARE, SPLIT_QUARTER, FLYING_GEESE, SQUARE_IN_SQUARE, SNOWBALL, HALF_RECTANGLE,
 TRIANGLE_60, DIAMOND_60, DIAMOND_45, HEXAGON, HALF_HEXAGON, TRAPEZOID, OCTAGON, STAR, KALEIDOSCOPE,
 SLANTED_SLICE) = range(1, 19)
PIECES, TWO, ALL_ROUND, MIDPOINTS, EIGHT, FOUR, FLIPPED, STRIPS, BIAS_STRIPS = range(1, 10)
EXACT, CUSTOMARY, OVERSIZE = 1, 2, 3
SHARP, BLUNT = 1, 2
R, TRIANGLES, DIAMONDS, HEXAGONS, TRAPEZOIDS, WEDGES, OCTAGONS, SLICES = range(1, 9)
UNCUT, IN_TWO, IN_FOUR = 1, 2, 3
GRAIN_ALL, GRAIN_SHORT, GRAIN_LONG, GRAIN_STRIP = 1, 2, 3, 4

METHODS = {
    RECTANGLE: [PIECES], HALF_SQUARE: [PIECES, TWO, ALL_ROUND, MIDPOINTS, EIGHT, STRIPS, BIAS_STRIPS],
    QUARTER_SQUARE: [PIECES, TWO], SPLIT_QUARTER: [PIECES, TWO], FLYING_GEESE: [PIECES, FOUR, FLIPPED],
    SQUARE_IN_SQUARE: [PIECES, FLIPPED], SNOWBALL: [FLIPPED], HALF_RECTANGLE: [PIECES], TRIANGLE_60: [STRIPS],
    DIAMOND_60: [STRIPS], DIAMOND_45: [STRIPS], HEXAGON: [STRIPS], HALF_HEXAGON: [STRIPS], TRAPEZOID: [STRIPS],
    OCTAGON: [PIECES, FLIPPED], STAR: [PIECES], KALEIDOSCOPE: [PIECES], SLANTED_SLICE: [STRIPS],
}
ONLY_HEIGHT = {TRIANGLE_60, DIAMOND_60, DIAMOND_45, HEXAGON, HALF_HEXAGON}
NEEDS_HEIGHT = ONLY_HEIGHT | {HALF_RECTANGLE, TRAPEZOID, SLANTED_SLICE}
FREE_HEIGHT = {RECTANGLE, SNOWBALL}
CUT_APART = {HALF_RECTANGLE, SLANTED_SLICE}
HANDED = CUT_APART | {SPLIT_QUARTER}


def precisely(function):
    @wraps(function)
    def inside(*arguments):
        with localcontext() as context:
            context.prec = 70
            return function(*arguments)
    return inside


def lcm(a, b):
    return a * b // gcd(a, b)


# ---- numbers --------------------------------------------------------------------------------------------------------

def settled(value):
    """A decimal that is whole to 40 digits, as a whole number; else the decimal."""
    whole = value.to_integral_value()
    return whole if abs(value - whole) < Decimal(10) ** -35 else value


def up(value):
    return int(settled(Decimal(value)).to_integral_value(ROUND_CEILING))


def down(value):
    return int(settled(Decimal(value)).to_integral_value(ROUND_FLOOR))


def nearest(value):
    return down(Decimal(value) + Decimal("0.5"))


def on_grid(value, spec):
    if spec.direction == UP:
        return up((value - spec.tolerance) / spec.grid) * spec.grid
    if spec.direction == DOWN:
        return down((value + spec.tolerance) / spec.grid) * spec.grid
    return nearest(value / spec.grid) * spec.grid


# ---- drawing --------------------------------------------------------------------------------------------------------

def moved_out(corners, by):
    """The polygon (counter-clockwise) whose edges lie `by` outside those of this one."""
    lines = []
    for (ax, ay), (bx, by_) in zip(corners, corners[1:] + corners[:1]):
        dx, dy = bx - ax, by_ - ay
        length = (dx * dx + dy * dy).sqrt()
        nx, ny = dy / length, -dx / length
        lines.append((nx, ny, nx * ax + ny * ay + by))
    raw = []
    for (a, b, c), (d, e, f) in zip(lines[-1:] + lines[:-1], lines):
        over = a * e - b * d
        raw.append(((c * e - b * f) / over, (a * f - c * d) / over))
    return raw


def extent(corners, axis):
    return max(corner[axis] for corner in corners) - min(corner[axis] for corner in corners)


def width_at(corners, height):
    """How wide a convex polygon is so far above its lowest corner."""
    level = min(min(y for _, y in corners) + height, max(y for _, y in corners))
    hair = Decimal(10) ** -40
    crossings = []
    for (ax, ay), (bx, by) in zip(corners, corners[1:] + corners[:1]):
        if abs(ay - by) > hair and min(ay, by) - hair <= level <= max(ay, by) + hair:
            crossings.append(ax + (bx - ax) * (level - ay) / (by - ay))
    return max(crossings) - min(crossings)


def raw(corners, by):
    return moved_out([(Decimal(x), Decimal(y)) for x, y in corners], by)


def corner_triangle(width, height, e):
    """Extents of a right-angled triangle with its allowances."""
    drawn = raw([(0, 0), (width, 0), (0, height)], e)
    return extent(drawn, 0), extent(drawn, 1)


def peak_triangle(base, height, e):
    return raw([(0, 0), (base, 0), (base / 2, height)], e)


def degrees(corners):
    """Between the lowest edge and the one before it, whole."""
    (ax, ay), (bx, by), (zx, zy) = corners[0], corners[1], corners[-1]
    return round(math.degrees(math.atan2(zy - ay, zx - ax) - math.atan2(by - ay, bx - ax)))


def alternate(drawn, high, gives=1, angle=None):
    """Pieces cut up and down from a strip: what a strip of `high` leaves of the drawn piece, its upper end kept and its
    slanted sides drawn on to the lower edge of the strip as cut."""
    top, bottom = width_at(drawn, high), extent(drawn, 0)

    def along(cut):
        wide = top + (bottom - top) * cut / high
        pitch = (wide + top) * gives / 2
        return {"cut_width": wide if gives == 1 else pitch, "pitch": pitch, "wide_edge": wide, "narrow_edge": top,
                "angle": angle or degrees(drawn)}
    return along


def slanting(angle, apart=None):
    """Pieces cut by parallel cuts as far apart as the strip is high, or as far as told."""
    across, run = {60: (2 / Decimal(3).sqrt(), 1 / Decimal(3).sqrt()), 45: (Decimal(2).sqrt(), 1)}[angle]

    def along(cut):
        edge = (cut if apart is None else apart) * across
        return {"cut_width": edge + cut * run, "pitch": edge, "wide_edge": edge, "narrow_edge": edge, "angle": angle}
    return along


# ---- recipes --------------------------------------------------------------------------------------------------------

ROOT2, ROOT3 = Decimal(2), Decimal(3)


def half(side, e):
    return corner_triangle(side, side, e)[0]


def quarter(side, e):
    return extent(peak_triangle(side, side / 2, e), 0)


def row(region, again, grain, count, width, height, gives=None, rule=None, times=1, bare=None, trims=0):
    return {"region": region, "shape": R, "again": again, "grain": grain, "count": count, "width": width,
            "height": height, "along": None, "rule": rule, "times": times, "bare": bare, "trims": trims,
            "gives": gives or {UNCUT: 1, IN_TWO: 2, IN_FOUR: 4}[again]}


def strip(region, shape, grain, count, height, along, gives=1):
    return dict(row(region, UNCUT, grain, count, None, height, gives), shape=shape, along=along)


def half_row(region, again, count, side, e, times=1, trims=1):
    size = times * half(side, e)
    return row(region, again, GRAIN_SHORT, count, size, size, rule="half", times=times, bare=times * side,
               trims=trims * times)


def quarter_row(region, again, count, side, e, trims=1):
    size = quarter(side, e)
    return row(region, again, GRAIN_LONG, count, size, size, rule="quarter", bare=side, trims=trims)


def square(region, again, grain, count, side, trims=0):
    return row(region, again, grain, count, side, side, trims=trims)


def half_square(method, w, e, tip):
    root2 = Decimal(2).sqrt()
    unfinished = w + 2 * e
    if method == PIECES:
        return 2, [half_row(n, IN_TWO, 1, w, e) for n in (1, 2)]
    if method == TWO:
        return 2, [half_row(n, UNCUT, 1, w, e) for n in (1, 2)]
    if method == ALL_ROUND:  # published: unfinished = (S - 2 s) / sqrt 2
        return 4, [square(n, UNCUT, GRAIN_LONG, 1, unfinished * root2 + 2 * e, 1) for n in (1, 2)]
    if method == MIDPOINTS:
        return 4, [square(n, UNCUT, GRAIN_SHORT, 1, 2 * unfinished, 2) for n in (1, 2)]
    if method == EIGHT:
        return 8, [half_row(n, UNCUT, 1, w, e, times=2) for n in (1, 2)]
    if method == STRIPS:
        drawn = raw([(0, 0), (w, 0), (0, w)], e)
        height = extent(drawn, 1) if tip == SHARP else unfinished
        along = alternate(drawn, height, 2, 180 - 90 - degrees([drawn[2], drawn[0], drawn[1]]))
        return 2, [strip(n, TRIANGLES, GRAIN_SHORT, 1, height, along, 2) for n in (1, 2)]
    # Published for bias strips: (F + 2 s) / sqrt 2 + s.
    return 1, [row(n, UNCUT, GRAIN_LONG, 1, unfinished * root2, unfinished / root2 + e, trims=1) for n in (1, 2)]


def kaleidoscope(w, e, tip):
    tangent = Decimal(2).sqrt() - 1
    drawn = peak_triangle(w * tangent, w / 2, e)
    height = extent(drawn, 1) if tip == SHARP else w / 2 + 2 * e
    point = round(2 * math.degrees(math.atan2(extent(drawn, 0) / 2, extent(drawn, 1))))
    along = alternate(drawn, height, angle=point)
    leg = (w - w * tangent) / 2
    return 1, [strip(n, WEDGES, GRAIN_STRIP, 4, height, along) for n in (1, 2)] + [half_row(3, IN_TWO, 2, leg, e)]


def star(w, e):
    root2 = Decimal(2).sqrt()
    side = w / (2 + root2)
    return 1, [strip(1, DIAMONDS, GRAIN_STRIP, 8, side / root2 + 2 * e, slanting(45)),
               square(2, UNCUT, GRAIN_ALL, 4, side + 2 * e), quarter_row(2, IN_FOUR, 1, w - 2 * side, e)]


def octagon(method, w, e):
    corner = (w - w * (Decimal(2).sqrt() - 1)) / 2
    if method == PIECES:
        def edges(cut):  # the square less two corners, whose legs are 1 / sqrt 2 of the edge
            edge = cut / (1 + Decimal(2).sqrt())
            return {"pitch": 0, "wide_edge": edge, "narrow_edge": edge, "angle": 45}
        whole = dict(square(1, UNCUT, GRAIN_STRIP, 1, w + 2 * e), shape=OCTAGONS, along=edges)
        return 1, [whole, half_row(2, IN_TWO, 2, corner, e)]
    return 1, [square(1, UNCUT, GRAIN_ALL, 1, w + 2 * e), square(2, UNCUT, GRAIN_SHORT, 4, corner + 2 * e)]


def sixty(kind, h, e, tip):
    root3 = Decimal(3).sqrt()
    if kind == TRIANGLE_60:
        drawn = peak_triangle(2 * h / root3, h, e)
        height = extent(drawn, 1) if tip == SHARP else h + 2 * e
        return strip(1, TRIANGLES, GRAIN_STRIP, 1, height, alternate(drawn, height))
    if kind == DIAMOND_60:
        return strip(1, DIAMONDS, GRAIN_STRIP, 1, h + 2 * e, slanting(60))
    side = h / root3 if kind == HEXAGON else 2 * h / root3
    if kind == HEXAGON:
        drawn = raw([(side / 2, 0), (side * 3 / 2, 0), (2 * side, h / 2), (side * 3 / 2, h), (side / 2, h), (0, h / 2)],
                    e)

        def grown(cut):  # regular from a strip of any height
            edge = (drawn[1][0] - drawn[0][0]) * cut / extent(drawn, 1)
            return {"cut_width": 2 * edge, "pitch": 2 * edge, "wide_edge": edge, "narrow_edge": edge,
                    "angle": 180 - degrees(drawn)}
        return strip(1, HEXAGONS, GRAIN_STRIP, 1, h + 2 * e, grown)
    drawn = raw([(0, 0), (2 * side, 0), (side * 3 / 2, h), (side / 2, h)], e)
    return strip(1, TRAPEZOIDS, GRAIN_STRIP, 1, h + 2 * e, alternate(drawn, h + 2 * e))


def recipe_rows(kind, method, sizes, tip):
    """(units of a recipe, its rows), all sizes exact."""
    w, h, c, seam = (Decimal(size) for size in sizes)
    e = seam / 2
    root2 = Decimal(2).sqrt()
    if kind == HALF_SQUARE:
        return half_square(method, w, e, tip)
    if kind == RECTANGLE:
        return 1, [row(1, UNCUT, GRAIN_ALL, 1, w + seam, h + seam)]
    if kind == QUARTER_SQUARE:
        return 2, [quarter_row(n, IN_FOUR if method == PIECES else UNCUT, 1, w, e) for n in (1, 2)]
    if kind == SPLIT_QUARTER:
        again, fourth = (IN_TWO, IN_FOUR) if method == PIECES else (UNCUT, UNCUT)
        return 4, [half_row(1, again, 2, w, e)] + [quarter_row(n, fourth, 1, w, e) for n in (2, 3)]
    if kind == FLYING_GEESE and method == PIECES:
        return 4, [quarter_row(1, IN_FOUR, 1, w, e), half_row(2, IN_TWO, 4, h, e)]
    if kind == FLYING_GEESE and method == FOUR:
        return 4, [quarter_row(1, UNCUT, 1, w, e, trims=0), half_row(2, UNCUT, 4, h, e)]
    if kind == FLYING_GEESE:
        return 1, [row(1, UNCUT, GRAIN_ALL, 1, w + seam, h + seam), square(2, UNCUT, GRAIN_SHORT, 2, h + seam)]
    if kind == SQUARE_IN_SQUARE and method == PIECES:
        return 1, [square(1, UNCUT, GRAIN_ALL, 1, w / root2 + seam), half_row(2, IN_TWO, 2, w / 2, e)]
    if kind == SQUARE_IN_SQUARE:
        return 1, [square(1, UNCUT, GRAIN_ALL, 1, w + seam), square(2, UNCUT, GRAIN_SHORT, 4, w / 2 + seam)]
    if kind == SNOWBALL:
        return 1, [row(1, UNCUT, GRAIN_ALL, 1, w + seam, h + seam), square(2, UNCUT, GRAIN_SHORT, 4, c + seam)]
    if kind == HALF_RECTANGLE:
        width, height = corner_triangle(w, h, e)
        return 2, [row(n, IN_TWO, GRAIN_SHORT, 1, width, height, trims=1) for n in (1, 2)]
    if kind == TRAPEZOID:
        drawn = raw([(0, 0), (w, 0), (w - h, h), (h, h)] if w > 2 * h else [(0, 0), (w, 0), (h, h)], e)
        return 1, [strip(1, TRAPEZOIDS, GRAIN_STRIP, 1, h + seam, alternate(drawn, h + seam))]
    if kind == DIAMOND_45:
        return 1, [strip(1, DIAMONDS, GRAIN_STRIP, 1, h + seam, slanting(45))]
    if kind == SLANTED_SLICE:
        return 1, [strip(1, SLICES, GRAIN_STRIP, 1, h + seam, slanting(45, w + seam))]
    if kind == OCTAGON:
        return octagon(method, w, e)
    if kind == STAR:
        return star(w, e)
    if kind == KALEIDOSCOPE:
        return kaleidoscope(w, e, tip)
    return 1, [sixty(kind, h, e, tip)]


def edge_length(kind, method, w, h, c):
    """All edges of all pieces of one unit; None where areas are not told."""
    root2 = Decimal(2).sqrt()
    w, h, c = Decimal(w), Decimal(h), Decimal(c)
    if kind == HALF_SQUARE and method != STRIPS:
        return 2 * (2 * w + root2 * w)
    side = w / root2
    return {
        RECTANGLE: 2 * w + 2 * h,
        QUARTER_SQUARE: 4 * (w + 2 * side),
        SPLIT_QUARTER: 2 * w + root2 * w + 2 * (w + 2 * side),
        FLYING_GEESE: w + 2 * side + 2 * (2 * h + root2 * h),
        SQUARE_IN_SQUARE: 4 * side + 4 * (w + side),
        SNOWBALL: 2 * (w - 2 * c) + 2 * (h - 2 * c) + 4 * root2 * c + 4 * (2 * c + root2 * c),
        HALF_RECTANGLE: 2 * (w + h + (w * w + h * h).sqrt()),
        OCTAGON: None if method == PIECES else
        8 * (root2 - 1) * w + 4 * (w - (root2 - 1) * w) / 2 * (2 + root2),
    }.get(kind)


# ---- the spec -------------------------------------------------------------------------------------------------------

def addition(given, seam, kind):
    """The customary addition, and the least that would do."""
    halves = Decimal(seam) / 2
    usual = {"half": Fraction(7, 4), "quarter": Fraction(5, 2)}[kind] * seam
    need = half(Decimal(0), halves) if kind == "half" else quarter(Decimal(0), halves)
    return given or -((-usual.numerator) // usual.denominator), up(need)


def least_raw(seam):
    """Raw legs of a triangle of finished size 0, by the formulas that print gives: (2 + sqrt 2) s, 2 (1 + sqrt 2) s."""
    root2 = Decimal(2).sqrt()
    return (2 + root2) * seam / 2, (1 + root2) * seam


def read_seam(wants, spec):
    for part in (spec.allowance, spec.take_up, spec.half_addition, spec.quarter_addition):
        wants.between(part, 0, PART_MAX)
    wants.choice(spec.policy, EXACT, OVERSIZE)
    wants.between(spec.trim_room, 0, PART_MAX if spec.policy == OVERSIZE else 0)
    wants.rounding(spec)
    wants.between(spec.grid, 1, UNIT_SIZE_MAX)
    wants.choice(spec.tip, SHARP, BLUNT)
    wants.count(spec.units)
    seam = 2 * spec.allowance + spec.take_up
    spec.half_addition = spec.half_addition or -(-7 * seam // 4)
    spec.quarter_addition = spec.quarter_addition or -(-5 * seam // 2)


def additions_do(kind, method, spec):
    """Are those additions large enough that this recipe's triangles get?"""
    half_least, quarter_least = least_raw(Decimal(seam_of(spec)))
    rules = {line["rule"] for line in recipe_rows(kind, method, (8128, 8128, 8128, seam_of(spec)), spec.tip)[1]}
    return spec.policy == EXACT or (("half" not in rules or spec.half_addition >= half_least) and
                                    ("quarter" not in rules or spec.quarter_addition >= quarter_least))


def read_sizes(wants, spec):
    kind, w = spec.kind, spec.finished_width
    wants.between(w, *((0, 0) if kind in ONLY_HEIGHT else (1, UNIT_SIZE_MAX)))
    if kind == FLYING_GEESE:
        wants.between(w, 2, UNIT_SIZE_MAX)
        wants.that(w % 2 == 0, "ERR_RANGE")
    if kind not in NEEDS_HEIGHT and spec.finished_height == 0:
        spec.finished_height = w // 2 if kind == FLYING_GEESE else w
    wants.between(spec.finished_height, 1, UNIT_SIZE_MAX)
    if kind == FLYING_GEESE:
        wants.that(2 * spec.finished_height == w, "ERR_RANGE")
    elif kind not in NEEDS_HEIGHT | FREE_HEIGHT:
        wants.that(spec.finished_height == w, "ERR_RANGE")
    wants.between(spec.corner, *((1, min(w, spec.finished_height) // 2) if kind == SNOWBALL else (0, 0)))
    wants.that(kind != TRAPEZOID or w >= 2 * spec.finished_height, "ERR_RANGE")
    wants.between(spec.mirrored, 0, COUNT_MAX if kind in HANDED else 0)
    if kind == HALF_RECTANGLE and not wants.reasons:
        w, h, e = Decimal(w), Decimal(spec.finished_height), Decimal(seam_of(spec)) / 2
        wants.that(max(up(size) for size in corner_triangle(w, h, e)) <= SIZE_MAX, "ERR_RANGE")


def read(wants, spec):
    read_seam(wants, spec)
    wants.choice(spec.kind, RECTANGLE, SLANTED_SLICE)
    wants.choice(spec.method, PIECES, BIAS_STRIPS)
    if not wants.reasons & {"ERR_CHOICE"}:
        known = spec.method in METHODS[spec.kind]
        wants.that(known, "ERR_METHOD")
        if known and not wants.reasons:
            wants.that(additions_do(spec.kind, spec.method, spec), "ERR_CUSTOMARY")
        read_sizes(wants, spec)


def cut_size(exact, line, spec):
    wanted = exact
    if spec.policy != EXACT and line["rule"] is not None:
        wanted = line["bare"] + line["times"] * getattr(spec, line["rule"] + "_addition")
    return on_grid(wanted + line["trims"] * spec.trim_room, spec) or spec.grid


def cut_rows(kind, method, sizes, spec):
    units, rows = recipe_rows(kind, method, sizes, spec.tip)
    cut = []
    for line in rows:
        piece = {name: line[name] for name in ("region", "shape", "again", "gives", "grain", "count")}
        piece["cut_height"] = cut_size(line["height"], line, spec)
        piece["surplus_height"] = piece["cut_height"] - up(line["height"])
        piece.update(surplus_width=0, pitch=0, wide_edge=0, narrow_edge=0, angle=0)
        if line["width"] is not None:
            piece["cut_width"] = cut_size(line["width"], line, spec)
            piece["surplus_width"] = piece["cut_width"] - up(line["width"])
        if line["along"] is not None:
            piece.update((name, up(size)) for name, size in line["along"](piece["cut_height"]).items())
        cut.append(piece)
    return units, cut


def seam_of(spec):
    return 2 * spec.allowance + spec.take_up


def finished_sizes(kind, sizes):
    w, h, _, seam = sizes
    root3 = Decimal(3).sqrt()
    if kind in ONLY_HEIGHT:
        side = {DIAMOND_45: Decimal(2).sqrt() * h, HALF_HEXAGON: 4 * h / root3}.get(kind, 2 * h / root3)
        w = nearest(side)
    untrimmed = kind in ONLY_HEIGHT | {TRAPEZOID, SLANTED_SLICE}
    return {"finished_width": w, "finished_height": h, "unfinished_width": 0 if untrimmed else w + seam,
            "unfinished_height": h + seam}


def sizes_of(spec):
    return spec.finished_width, spec.finished_height, spec.corner, seam_of(spec)


BIAS = {(HALF_SQUARE, ALL_ROUND), (HALF_SQUARE, BIAS_STRIPS)}
BONUS = {FLYING_GEESE: 2, SQUARE_IN_SQUARE: 4, SNOWBALL: 4, OCTAGON: 4}


def recipes_of(spec, units):
    """(recipes, mirrored recipes): the fewest that give both wishes."""
    def fewest(enough):
        return least(enough, 2 * COUNT_MAX)

    if spec.kind in CUT_APART:
        return fewest(lambda n: n * units >= spec.units), fewest(lambda n: n * units >= spec.mirrored)
    if (spec.kind, spec.method) == (SPLIT_QUARTER, TWO):
        return fewest(lambda n: n * units // 2 >= max(spec.units, spec.mirrored)), 0
    return fewest(lambda n: n * units >= spec.units + spec.mirrored), 0


@precisely
def recipe(spec):
    wants = Wants()
    read(wants, spec)
    wants.done()
    sizes = sizes_of(spec)
    w, h, c, seam = sizes
    units, cut = cut_rows(spec.kind, spec.method, sizes, spec)
    recipes, mirrored = recipes_of(spec, units)
    bias = (spec.kind, spec.method) in BIAS or (spec.method == STRIPS and spec.kind != HALF_SQUARE)
    below = any(piece["surplus_width"] < 0 or piece["surplus_height"] < 0 for piece in cut)
    found = dict(finished_sizes(spec.kind, sizes), units_per_recipe=units, recipes=recipes,
                 mirrored_per_recipe=2 if (spec.kind, spec.method) == (SPLIT_QUARTER, TWO) else 0,
                 mirrored_recipes=mirrored,
                 spare_units=(recipes + mirrored) * units - spec.units - spec.mirrored,
                 pieces=len(cut) * (2 if spec.mirrored and spec.kind in CUT_APART else 1), cut_area=0,
                 finished_area=0, allowance_area=0, waste_area=0, seam_offset=0, bonus_units=0, bonus_unfinished=0,
                 star_wider_by=0, bias_outside=int(bias),
                 warnings=(WARN_BIAS_EDGE if bias else 0) | (WARN_BELOW_EXACT if below else 0))
    edges = edge_length(spec.kind, spec.method, w, h, c)
    if edges is not None:
        found["cut_area"] = sum(2 * piece["cut_width"] * piece["cut_height"] * piece["count"] for piece in cut)
        found["finished_area"] = 2 * w * h * units
        found["allowance_area"] = up(units * seam * edges)
        found["waste_area"] = found["cut_area"] - found["finished_area"] - found["allowance_area"]
    if spec.kind == HALF_RECTANGLE:
        found["seam_offset"] = nearest(Decimal(seam) / 2 * abs(w - h) / max(w, h))
    if spec.method == FLIPPED:
        found["bonus_units"] = BONUS[spec.kind]
        found["bonus_unfinished"] = max(0, down(cut[-1]["cut_width"] - Decimal(2).sqrt() * seam))
    if spec.kind == STAR:
        side = Decimal(2).sqrt() * (cut[0]["cut_height"] - seam)
        found["star_wider_by"] = nearest(side + side * Decimal(2).sqrt() + side - w)
    return found


@precisely
def pieces(spec):
    wants = Wants()
    read(wants, spec)
    wants.done()
    units, cut = cut_rows(spec.kind, spec.method, sizes_of(spec), spec)
    excess = [0] * len(cut)
    if spec.kind == STAR:
        root, seam, height = Decimal(2).sqrt(), seam_of(spec), cut[0]["cut_height"] - seam_of(spec)
        asked = [None, root * height + seam, 2 * height + (1 + root) * seam]
        excess[1:] = [piece["cut_width"] - up(need) for piece, need in zip(cut[1:], asked[1:])]
    cut = [dict(piece, star_excess=more) for piece, more in zip(cut, excess)]
    first, second = recipes_of(spec, units)
    wishes = [(1, first)] + ([(2, second)] if second else [])
    return [dict(piece, hand=hand, total=piece["count"] * recipes) for hand, recipes in wishes for piece in cut]


# ---- backwards ------------------------------------------------------------------------------------------------------

def read_stock(wants, stock):
    wants.some_size(stock.width, stock.height)
    wants.count(stock.per_region)
    wants.size(stock.end_loss)
    wants.between(stock.finished_grid, 1, UNIT_SIZE_MAX)


def from_rectangle(piece, stock):
    along, strips = stock.width - stock.end_loss, stock.height // piece["cut_height"]
    if along < piece["cut_width"]:
        return 0
    if piece["pitch"] == 0:
        return strips * (along // piece["cut_width"])
    return strips * ((along - piece["cut_width"]) // piece["pitch"] + 1)


def harvest(kind, method, sizes, spec, stock):
    units, cut = cut_rows(kind, method, sizes, spec)
    gives = [from_rectangle(piece, stock) for piece in cut]

    def fits(recipes, per_region):
        if recipes == 0:
            return True
        used = {}
        for piece, per in zip(cut, gives):
            if per == 0:
                return False
            used[piece["region"]] = used.get(piece["region"], 0) - (-recipes * piece["count"] // per)
        return max(used.values()) <= per_region

    recipes = largest(lambda wanted: fits(wanted, stock.per_region), COUNT_MAX)
    of_one = largest(lambda wanted: fits(wanted, 1), COUNT_MAX)
    return all(gives), dict(finished_sizes(kind, sizes), recipes=recipes, units=recipes * units, kind=kind,
                            units_of_one=of_one * units,
                            method=method, cut_spare=stock.height - max(piece["cut_height"] for piece in cut))


@precisely
def yields(spec, stock):
    wants = Wants()
    read(wants, spec)
    read_stock(wants, stock)
    wants.done()
    return harvest(spec.kind, spec.method, sizes_of(spec), spec, stock)[1]


def largest_of(kind, method, ratio, spec, stock):
    """Grows the unit in its proportion, by steps that keep it on the grid."""
    divisor = gcd(gcd(ratio[0], ratio[1]), ratio[2])
    w, h, c = (part // divisor for part in ratio)
    step = lcm(w or h, stock.finished_grid) // (w or h)

    def sizes(k):
        return k * step * w, k * step * h, k * step * c, seam_of(spec)

    steps = largest(lambda k: k == 0 or harvest(kind, method, sizes(k), spec, stock)[0], UNIT_SIZE_MAX // max(w,
            h) // step)
    return harvest(kind, method, sizes(steps), spec, stock)[1] if steps else None


@precisely
def largest_unit(spec, stock):
    wants = Wants()
    read(wants, spec)
    read_stock(wants, stock)
    wants.done()
    ratio = spec.finished_width, spec.finished_height, spec.corner
    found = largest_of(spec.kind, spec.method, ratio, spec, stock)
    if found is None:
        raise Refused("ERR_NO_FIT")
    return found


@precisely
def makes(spec, stock):
    wants = Wants()
    read_seam(wants, spec)
    read_stock(wants, stock)
    wants.done()
    ratios = {HALF_RECTANGLE: (2, 1, 0), FLYING_GEESE: (2, 1, 0), TRAPEZOID: (3, 1, 0), SNOWBALL: (3, 3, 1)}
    ratios.update({kind: (0, 1, 0) for kind in ONLY_HEIGHT})
    found = [largest_of(kind, method, ratios.get(kind, (1, 1, 0)), spec, stock)
             for kind, methods in METHODS.items() for method in methods if additions_do(kind, method, spec)]
    return [line for line in found if line is not None]
