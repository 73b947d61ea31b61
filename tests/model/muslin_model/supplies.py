# SPDX-License-Identifier: MIT
"""Seams to be sewn, thread, stitches, lines of quilting, weight, cost: from their definitions, in fractions."""

from fractions import Fraction
from math import isqrt

from .base import (COUNT_MAX, DOWN, LENGTH_MAX, NEAREST, PPM, SIZE_MAX, UP, Refused, Wants, down, largest, nearest,
                   rounded, up)

RATIO, FORMULA = 1, 2
ACROSS, ALONG, GRID, DIAGONAL, CROSSHATCH, OUTLINE = 1, 2, 3, 4, 5, 6
AT_OFFSET, FROM_CORNER = 1, 2
BY_LENGTH, BY_PIECE, BY_BUNDLE = 1, 2, 3
MONEY_MAX = LENGTH_MAX
ROUND = {UP: up, DOWN: down, NEAREST: nearest}


def brought(exact, direction, step=1):
    """A value that is no length, rounded; beyond the range it is an overflow."""
    value = ROUND[direction](Fraction(exact), step)
    if value > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return value


# ---- seams ------------------------------------------------------------------------------------------------------

def piecing(spec):
    wants = Wants()
    wants.count(spec.sets, spec.tops)
    wants.some_count(spec.strips_per_set, spec.columns, spec.rows, spec.segments_per_block)
    wants.size(spec.strip_length, spec.block_width, spec.block_height)
    wants.seam(spec.allowance, spec.take_up)
    wants.done()
    seam = 2 * spec.allowance + spec.take_up
    blocks = spec.tops * spec.rows * spec.columns
    sewn = {
        "in_sets": (spec.sets * (spec.strips_per_set - 1), spec.strip_length),
        "in_blocks": (blocks * (spec.segments_per_block - 1), spec.block_height + seam),
        "in_rows": (blocks - spec.tops * spec.rows, spec.block_height + seam),
        "between_rows": (spec.tops * spec.rows - spec.tops, spec.columns * spec.block_width + seam),
    }
    found = {name: seams * length for name, (seams, length) in sewn.items()}
    found["total"] = sum(found.values())
    found["seams"] = sum(seams for seams, _ in sewn.values())
    if max(found["total"], found["seams"]) > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    return found


# ---- thread -----------------------------------------------------------------------------------------------------

def holders(exact, spec, is_ready):
    """Bobbins and spools for so much thread, half of it from the needle and half from the bobbin."""
    from_spools = exact / 2 if is_ready else exact
    return (up(exact / 2 / spec.bobbin) if spec.bobbin else 0, up(from_spools / spec.spool) if spec.spool else 0)


def thread(spec, ready_bobbins):
    wants = Wants()
    for length in (spec.seam, spec.bobbin, spec.spool):
        wants.between(length, 0, LENGTH_MAX // 2)
    wants.some_count(spec.ratio_above, spec.ratio_below)
    wants.size(spec.thickness)
    wants.some_size(spec.stitch_length)
    wants.choice(spec.method, RATIO, FORMULA)
    wants.between(spec.waste, 0, 10 * PPM)
    wants.done()
    ratio = (Fraction(spec.ratio_above, spec.ratio_below) if spec.method == RATIO
             else 2 + 2 * spec.thickness * Fraction(1, spec.stitch_length))
    wasteful = ratio * (1 + Fraction(spec.waste, PPM))

    exact = wasteful * spec.seam
    whole = brought(exact, UP)
    half = up(exact / 2)
    bobbins, spools = holders(exact, spec, ready_bobbins)

    def longer(same):
        def answers(more):
            thread = wasteful * (spec.seam + more)
            return thread <= LENGTH_MAX and same(holders(thread, spec, ready_bobbins))
        return largest(answers, LENGTH_MAX // 2 - spec.seam)

    used = half if ready_bobbins else whole
    return {
        "ratio_thousandths": nearest(1000 * ratio),
        "with_waste": whole,
        "thread": up(ratio * spec.seam),
        "needle": half,
        "bobbin_thread": half,
        "bobbins": bobbins,
        "spools": spools,
        "left_on_bobbin": bobbins * spec.bobbin - half if spec.bobbin else 0,
        "left_on_spool": spools * spec.spool - used if spec.spool else 0,
        "bobbin_longer_by": longer(lambda held: held[0] == bobbins) if spec.bobbin else 0,
        "spool_longer_by": longer(lambda held: held[1] == spools) if spec.spool else 0,
    }


def stitch_count(length, stitch_length, decimals, direction):
    wants = Wants()
    wants.size(length)
    wants.some_size(stitch_length)
    wants.between(decimals, 0, 3)
    wants.choice(direction, UP, NEAREST)
    wants.done()
    exact = Fraction(length * 1000, stitch_length)
    value = brought(exact, direction, 10**(3 - decimals))
    return {"thousandths": value, "exact": int(value == exact)}


def stitch_length(length, thousandths, rounding):
    wants = Wants()
    wants.size(length)
    wants.some_count(thousandths)
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(1000 * length, thousandths), rounding)


# ---- lines of quilting ------------------------------------------------------------------------------------------

STRAIGHT = ("lines", "left", "even", "last")


def straight_lines(extent, spec):
    """How many lines, what is left behind the last one, the widest spacing that gives as many, and how far the last
    one lies from the edge behind it."""
    room = extent - 2 * spec.offset
    if room < 0:
        return 0, 0, 0, 0
    lines = 1 + largest(lambda n: n * spec.spacing <= room, room)
    last = spec.offset + (lines - 1) * spec.spacing
    return lines, room - (lines - 1) * spec.spacing, room // (lines - 1) if lines > 1 else 0, extent - last


def series(first, step, count):
    """Sum of count terms first, first + step, ..."""
    return count * first + step * (count * (count - 1) // 2)


def within(first, step, square):
    """How many of first, first + step, ... (first > 0) have twice their square not above `square`."""
    if 2 * first * first > square:
        return 0
    return 1 + largest(lambda n: 2 * (first + n * step)**2 <= square, isqrt(square))


def corner_cuts(spec):
    """Chords a + b sqrt 2 of lines that cut off a corner: (lines, a, b)."""
    small, large = sorted((spec.width, spec.length))
    first, step = spec.offset or spec.spacing, spec.spacing
    # p + offset <= (small + large) / sqrt 2, counted for p + offset in the same steps
    lines = within(first + spec.offset, step, (small + large)**2)
    rising = min(lines, within(first, step, small**2))
    level = min(lines, within(first, step, large**2)) - rising
    falling = lines - rising - level
    whole = 2 * series(first, step, rising) - 2 * series(first + (rising + level) * step, step, falling)
    return lines, whole, small * level + (small + large) * falling


def from_the_corner(spec):
    """Chords of lines on both sides of the one that starts in a corner: over a distance p beside it, the chord loses
    2 p where it ends at the far side."""
    small, large = sorted((spec.width, spec.length))
    step = spec.spacing
    here, there = within(step, step, small**2), within(step, step, large**2)
    level = within(step, step, (large - small)**2)
    whole = -2 * series(step, step, here) - 2 * series(step * (level + 1), step, there - level)
    return 1 + here + there, whole, small * (1 + here + level) + large * (there - level)


def quilting(spec):
    wants = Wants()
    for side in (spec.width, spec.length):
        wants.between(side, 0 if spec.pattern == OUTLINE else 1, SIZE_MAX)
    wants.some_size(spec.spacing)
    wants.size(spec.offset)
    wants.between(spec.outline, 0, LENGTH_MAX // 2)
    wants.count(spec.passes)
    wants.choice(spec.pattern, ACROSS, OUTLINE)
    wants.choice(spec.start, AT_OFFSET, FROM_CORNER)
    wants.done()
    found = dict.fromkeys((name + way for name in STRAIGHT for way in ("_first", "_second")), 0)
    found["exact"] = 1
    if spec.pattern == OUTLINE:
        found.update(lines_first=spec.passes, length=brought(spec.outline * spec.passes, UP))
    elif spec.pattern in (DIAGONAL, CROSSHATCH):
        ways = 1 if spec.pattern == DIAGONAL else 2
        lines, whole, root = corner_cuts(spec) if spec.start == AT_OFFSET else from_the_corner(spec)
        square = 2 * (ways * root)**2
        ceiling = isqrt(square) + (isqrt(square)**2 != square)
        found.update(lines_first=lines, lines_second=(ways - 1) * lines, length=ways * whole + ceiling,
                     exact=int(root == 0))
    else:
        if spec.pattern != ALONG:
            found.update(zip((name + "_first" for name in STRAIGHT), straight_lines(spec.length, spec)))
        if spec.pattern != ACROSS:
            found.update(zip((name + "_second" for name in STRAIGHT), straight_lines(spec.width, spec)))
        found["length"] = found["lines_first"] * spec.width + found["lines_second"] * spec.length
    found["lines"] = found["lines_first"] + found["lines_second"]
    return found


# ---- weight and cost --------------------------------------------------------------------------------------------

METRE = 320000
OUNCE = Fraction("28.349523125")    # grams
YARD = Fraction("0.9144")           # metres


def weight(spec):
    wants = Wants()
    wants.size(spec.width, spec.length, spec.binding_length, spec.binding_cut)
    wants.count(spec.top_density, spec.batting_density, spec.backing_density, spec.binding_density)
    wants.some_size(spec.step)
    wants.between(spec.seam_share, 0, 10 * PPM)
    wants.choice(spec.direction, UP, NEAREST)
    wants.done()
    quilt = Fraction(spec.width, METRE) * Fraction(spec.length, METRE)
    binding = Fraction(spec.binding_length, METRE) * Fraction(spec.binding_cut, METRE)
    masses = {
        "top": quilt * (1 + Fraction(spec.seam_share, PPM)) * spec.top_density,
        "batting": quilt * spec.batting_density,
        "backing": quilt * spec.backing_density,
        "binding": binding * spec.binding_density,
    }
    masses["total"] = sum(masses.values())
    return {name: brought(mass, spec.direction, spec.step) for name, mass in masses.items()}


def density_from_ounces(thousandths, direction):
    wants = Wants()
    wants.count(thousandths)
    wants.choice(direction, UP, NEAREST)
    wants.done()
    return brought(Fraction(thousandths, 1000) * OUNCE * 1000 / YARD**2, direction)


def mass_in_ounces(mass, decimals, direction):
    wants = Wants()
    wants.between(mass, 0, LENGTH_MAX)
    wants.between(decimals, 0, 3)
    wants.choice(direction, UP, NEAREST)
    wants.done()
    return brought(Fraction(mass, 1000) / OUNCE * 1000, direction, 10**(3 - decimals))


def cost(spec):
    wants = Wants()
    by_length = spec.sold == BY_LENGTH
    wants.between(spec.amount, 0, LENGTH_MAX // 2 if by_length else COUNT_MAX)
    wants.between(spec.price, 0, MONEY_MAX)
    wants.between(spec.per, 1, SIZE_MAX if by_length else COUNT_MAX)
    wants.choice(spec.sold, BY_LENGTH, BY_BUNDLE)
    wants.choice(spec.direction, UP, NEAREST)
    wants.done()
    bought, exact = spec.amount, Fraction(spec.amount * spec.price, spec.per)
    spare = 0
    if spec.sold == BY_BUNDLE:
        bought = up(Fraction(spec.amount, spec.per))
        exact, spare = Fraction(bought * spec.price), bought * spec.per - spec.amount
    value = brought(exact, spec.direction)
    return {"bought": bought, "spare": spare, "cost": value, "exact": int(value == exact)}


def total(specs):
    found = 0
    for spec in specs:
        found += cost(spec)["cost"]
        if found > MONEY_MAX:
            raise Refused("ERR_OVERFLOW")
    return found
