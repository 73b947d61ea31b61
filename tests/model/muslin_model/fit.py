# SPDX-License-Identifier: MIT
"""Quilts for beds, settings that come out at a size, counts across, and patterns resized.

Settings are found by trying every count; scales by going from tick to tick.
"""

from fractions import Fraction
from functools import reduce
from itertools import product
from math import gcd

from .base import (COUNT_MAX, INT64_MAX, NEAREST, SIZE_MAX, UP, WARN_SMALL_QUILT, Refused, Wants, down, nearest,
                   root_between, root_up, up)

WARN_OFF_GRID = 1 << 13
SMALL_SIDE = 60 * 8128

BY_DEPTH, OVER_JOINT, TO_FLOOR, GIVEN = 1, 2, 3, 4
SQUARE, ROUNDED = 1, 2
STRAIGHT, SASHED, FRAMED, ON_POINT = 1, 2, 3, 4
ANY, EVEN, ODD = 1, 2, 3
RANK_NEAREST, RANK_FEWEST, RANK_LARGEST = 1, 2, 3


def small(width, length):
    return WARN_SMALL_QUILT if max(width, length) <= SMALL_SIDE else 0


# ---- beds -----------------------------------------------------------------------------------------------------------

def hang(side, foot, corner):
    return max(side, foot) if corner == ROUNDED else root_up(side**2 + foot**2)


def floor_of(spec, corner_hang):
    clearance = spec.floor_height - corner_hang if spec.floor_height else 0
    return {"corner_hang": corner_hang, "corner_clearance": clearance, "corner_touches": int(clearance < 0)}


def bed(spec, foot_given):
    wants = Wants()
    wants.choice(spec.drop, BY_DEPTH, GIVEN)
    wants.choice(spec.foot_corner, SQUARE, ROUNDED)
    wants.some_size(spec.mattress_width, spec.mattress_length)
    wants.between(spec.mattress_depth, int(spec.drop in (BY_DEPTH, OVER_JOINT)), SIZE_MAX)
    wants.between(spec.floor_height, int(spec.drop == TO_FLOOR), SIZE_MAX)
    wants.size(spec.side_drop, spec.foot_drop, spec.head_drop, spec.pillow_tuck, spec.beyond_depth,
               spec.quilting_extra)
    wants.done()
    side = {BY_DEPTH: spec.mattress_depth, OVER_JOINT: spec.mattress_depth + spec.beyond_depth,
            TO_FLOOR: spec.floor_height, GIVEN: spec.side_drop}[spec.drop]
    foot = spec.foot_drop if foot_given or spec.drop == GIVEN else side
    width = side + spec.mattress_width + side
    length = spec.pillow_tuck + spec.head_drop + spec.mattress_length + foot
    wants.size(width + spec.quilting_extra, length + spec.quilting_extra)
    wants.done()
    radius = min(side, foot) if spec.foot_corner == ROUNDED else 0
    return {
        "side_drop": side,
        "foot_drop": foot,
        "finished_width": width,
        "finished_length": length,
        "top_width": width + spec.quilting_extra,
        "top_length": length + spec.quilting_extra,
        "corner_radius": radius,
        "corner_cut_off": root_up(2 * radius**2) - radius,
        "warnings": small(spec.mattress_width, spec.mattress_length),
        **floor_of(spec, hang(side, foot, spec.foot_corner)),
    }


def cover(spec):
    wants = Wants()
    wants.some_size(spec.quilt_width, spec.quilt_length, spec.mattress_width, spec.mattress_length)
    wants.size(spec.mattress_depth, spec.floor_height, spec.head_drop, spec.pillow_tuck)
    wants.choice(spec.foot_corner, SQUARE, ROUNDED)
    wants.done()
    side = down(Fraction(spec.quilt_width - spec.mattress_width, 2))
    used = spec.mattress_length + spec.head_drop + spec.pillow_tuck
    foot = spec.quilt_length - used
    reaches = side >= 0 and foot >= 0
    short_width = max(spec.mattress_width + 2 * spec.mattress_depth - spec.quilt_width, 0)
    short_length = max(used + spec.mattress_depth - spec.quilt_length, 0)
    return {
        "side_drop": side,
        "foot_drop": foot,
        "short_width": short_width,
        "short_length": short_length,
        "reaches_edges": int(reaches),
        "reaches_depth": int(short_width == 0 == short_length),
        "beyond_side": down(Fraction(spec.quilt_width - spec.mattress_width - 2 * spec.mattress_depth, 2)),
        "beyond_foot": spec.quilt_length - used - spec.mattress_depth,
        "warnings": small(spec.quilt_width, spec.quilt_length) | small(spec.mattress_width, spec.mattress_length),
        **floor_of(spec, hang(side, foot, spec.foot_corner) if reaches else 0),
    }


# ---- settings -------------------------------------------------------------------------------------------------------

class Size:
    """blocks x block (x sqrt 2 on point) and whole ticks beside, compared by squares."""

    def __init__(self, kind, blocks, block, sash, border):
        self.on_point = kind == ON_POINT
        self.root = blocks * block if self.on_point else 0
        self.whole = 2 * border
        if not self.on_point:
            self.whole += blocks * block + {STRAIGHT: 0, SASHED: blocks - 1, FRAMED: blocks + 1}[kind] * sash

    def at_most(self, size):
        return self.whole <= size and 2 * self.root**2 <= (size - self.whole) ** 2

    def at_least(self, size):
        return self.whole >= size or 2 * self.root**2 >= (size - self.whole) ** 2

    def rounded(self):
        low, high = root_between(2 * self.root**2)
        assert nearest(low) == nearest(high)
        return self.whole + nearest(low)


def of_parity(count, parity):
    return parity == ANY or (count % 2 == 1) == (parity == ODD)


def steps(least, most, step):
    return range(least, most + 1, step)


def combinations(spec):
    for kind in spec.kinds:
        sashes = steps(spec.sash_least, spec.sash_most, spec.sash_step) if kind in (SASHED, FRAMED) else [0]
        yield from product([kind], steps(spec.block_least, spec.block_most, spec.block_step), sashes,
                           steps(spec.border_least, spec.border_most, spec.border_step))


def counts_within(combination, least, most, parity, from_size, to_size):
    """Every count of the range whose size lies between the two, tried one by one."""
    kind, block, sash, border = combination
    found = []
    for count in range(least, most + 1):
        size = Size(kind, count, block, sash, border)
        if not size.at_most(min(to_size, SIZE_MAX)):
            break
        if of_parity(count, parity) and size.at_least(from_size):
            found.append(count)
    return found


def number(least, most, step):
    return (most - least) // step + 1


def want_fit(spec):
    wants = Wants()
    wants.some_size(spec.wanted_width, spec.wanted_length)
    wants.size(spec.width_under, spec.width_over, spec.length_under, spec.length_over)
    sashed = [kind for kind in spec.kinds if kind in (SASHED, FRAMED)]
    ranges = [(spec.block_least, spec.block_most, spec.block_step, 1),
              (spec.border_least, spec.border_most, spec.border_step, 0)]
    if sashed:
        ranges.append((spec.sash_least, spec.sash_most, spec.sash_step, 1))
    for least, most, step, lowest in ranges:
        wants.between(least, lowest, SIZE_MAX)
        wants.between(most, least, SIZE_MAX)
        wants.some_size(step)
    for least, most in ((spec.columns_least, spec.columns_most), (spec.rows_least, spec.rows_most)):
        wants.some_count(least)
        wants.between(most, least, COUNT_MAX)
    wants.count(spec.best)
    wants.some_count(spec.work_limit)
    wants.choice(spec.rank, RANK_NEAREST, RANK_LARGEST)
    wants.choice(spec.columns_parity, ANY, ODD)
    wants.choice(spec.rows_parity, ANY, ODD)
    wants.that(spec.kinds, "ERR_CHOICE")
    wants.done()
    work = number(*ranges[0][:3]) * number(*ranges[1][:3])
    work *= len(spec.kinds) - len(sashed) + (len(sashed) * number(*ranges[2][:3]) if sashed else 0)
    if work > spec.work_limit:
        raise Refused("ERR_WORK_LIMIT")


def row_of(spec, combination, columns, rows, rank):
    kind, block, sash, border = combination
    width = Size(kind, columns, block, sash, border).rounded()
    length = Size(kind, rows, block, sash, border).rounded()
    blocks, alternates = columns * rows, (columns - 1) * (rows - 1) if kind == ON_POINT else 0
    off = abs(width - spec.wanted_width) + abs(length - spec.wanted_length)
    return {
        "kind": kind,
        "exact": int(off == 0 and kind != ON_POINT),
        "columns": columns,
        "rows": rows,
        "block": block,
        "sash": sash,
        "border": border,
        "finished_width": width,
        "finished_length": length,
        "off_width": width - spec.wanted_width,
        "off_length": length - spec.wanted_length,
        "blocks": blocks,
        "alternates": alternates,
        "rank_key": {RANK_NEAREST: off, RANK_FEWEST: blocks + alternates, RANK_LARGEST: -block}[rank],
    }


def order(row):
    return (row["rank_key"], abs(row["off_width"]) + abs(row["off_length"]), row["blocks"] + row["alternates"],
            row["kind"], -row["block"], row["sash"], row["border"], row["columns"])


def settings(spec):
    want_fit(spec)
    found = []
    for combination in combinations(spec):
        across = counts_within(combination, spec.columns_least, spec.columns_most, spec.columns_parity,
                               spec.wanted_width - spec.width_under, spec.wanted_width + spec.width_over)
        along = counts_within(combination, spec.rows_least, spec.rows_most, spec.rows_parity,
                              spec.wanted_length - spec.length_under, spec.wanted_length + spec.length_over)
        found += [row_of(spec, combination, columns, rows, spec.rank) for columns in across for rows in along]
        if len(found) > spec.work_limit:
            raise Refused("ERR_WORK_LIMIT")
    found.sort(key=order)
    return found[:spec.best] if spec.best else found


def nearest_setting(spec):
    """The first of all settings that do not pass the largest size; for every combination those counts are tried that
    stand around the wanted size."""
    want_fit(spec)
    found = []
    for combination in combinations(spec):
        across = counts_within(combination, spec.columns_least, spec.columns_most, spec.columns_parity, 0, SIZE_MAX)
        along = counts_within(combination, spec.rows_least, spec.rows_most, spec.rows_parity, 0, SIZE_MAX)
        found += [row_of(spec, combination, columns, rows, RANK_NEAREST) for columns in across for rows in along]
    if not found:
        raise Refused("ERR_NO_FIT")
    return min(found, key=order)


# ---- how many fit ---------------------------------------------------------------------------------------------------

def directed(low, high, nearer_is_high, direction):
    """One of two neighbouring counts, at least 1."""
    count = high if direction == UP or (direction == NEAREST and nearer_is_high) else low
    if count < 1 and direction not in (UP, NEAREST):
        raise Refused("ERR_NO_FIT")
    return max(count, 1)


def blocks_across(spec, framed):
    wants = Wants()
    wants.some_size(spec.wanted, spec.block)
    wants.size(spec.border, spec.sash)
    wants.choice(spec.direction, UP, NEAREST)
    wants.done()
    pitch = spec.block + spec.sash
    exact = Fraction(spec.wanted - 2 * spec.border + (-spec.sash if framed else spec.sash), pitch)
    blocks = directed(down(exact), up(exact), nearest(exact) > down(exact), spec.direction)
    width = 2 * spec.border + blocks * spec.block + (blocks + 1 if framed else blocks - 1) * spec.sash
    return {"blocks": blocks, "finished_width": width, "off": width - spec.wanted, "room": exact * pitch,
            "pitch": pitch, "exact": int(width == spec.wanted)}


def enclosed(square, change):
    """`change` of both ends of a root's enclosure, which must agree."""
    low, high = (change(end) for end in root_between(square))
    assert low == high
    return low


def triangle_rows(spec):
    wants = Wants()
    wants.some_size(spec.wanted_width, spec.wanted_length, spec.height)
    wants.choice(spec.rows_direction, UP, NEAREST)
    wants.choice(spec.sides_direction, UP, NEAREST)
    wants.seam(spec.allowance, spec.take_up)
    wants.done()
    exact = Fraction(spec.wanted_length, spec.height)
    rows = directed(down(exact), up(exact), nearest(exact) > down(exact), spec.rows_direction)
    # w over 2 h / sqrt 3 is sqrt(3) w / 2 h
    root = 3 * spec.wanted_width**2
    low = enclosed(root, lambda end: down(end / (2 * spec.height)))
    is_high = enclosed(root, lambda end: nearest(end / (2 * spec.height))) > low
    sides = directed(low, low + 1, is_high, spec.sides_direction)
    side, width = (enclosed(12 * (count * spec.height) ** 2, lambda end: nearest(end / 3)) for count in (1, sides))
    seam = 2 * spec.allowance + spec.take_up
    # a raw height is the finished one and a whole and a half seam; a half base is x / 2 with half a seam beside it
    raw = Fraction(2 * spec.height + 3 * seam, 2)
    base, half = (enclosed(4 * raw.numerator**2 * 3, lambda end: up(end / (3 * raw.denominator) / part + beside))
                  for part, beside in ((1, 0), (2, Fraction(seam, 2))))
    return {"strip_cut": up(raw), "strip_cut_blunt": spec.height + seam, "cut_base": base, "half_cut_base": half,
            "unfinished_width": width + seam, "unfinished_length": rows * spec.height + seam,
            "halves_each_hand": rows, "rows": rows, "sides": sides, "side": side, "finished_width": width,
            "finished_length": rows * spec.height, "off_width": width - spec.wanted_width,
            "off_length": rows * spec.height - spec.wanted_length, "triangles": rows * (2 * sides - 1),
            "half_triangles": 2 * rows}


# ---- patterns resized -----------------------------------------------------------------------------------------------

def rescale(spec, sizes):
    wants = Wants()
    wants.between(spec.numerator, 1, INT64_MAX)
    wants.between(spec.denominator, 1, INT64_MAX)
    wants.seam(spec.allowance, spec.take_up)
    wants.some_size(spec.grid)
    wants.some_size(*sizes)
    wants.some_count(len(sizes))
    scale, seam = Fraction(spec.numerator, max(spec.denominator, 1)), 2 * spec.allowance + spec.take_up
    wants.that(all(nearest(size * scale) <= SIZE_MAX for size in sizes), "ERR_OVERFLOW")
    wants.done()
    rows = [rescaled_row(size, size * scale, seam, spec) for size in sizes]
    off_grid = sum(not row["on_grid"] for row in rows)
    return {"rows": rows, "out": {"off_grid": off_grid, "warnings": WARN_OFF_GRID if off_grid else 0,
                                  **scales(spec, sizes, scale, seam)}}


def rescaled_row(size, exact, seam, spec):
    cut, grid = exact + seam, spec.grid
    below, above, near = down(cut, grid), up(cut, grid), nearest(cut, grid)
    return {
        "finished": size,
        "new_finished": nearest(exact),
        "rest": (exact - nearest(exact)) * spec.denominator,
        "new_cut": nearest(exact) + seam,
        "cut_below": below if below > seam else 0,
        "cut_nearest": near if near > seam else above,
        "cut_above": above,
        "on_grid": int(below == above),
    }


def serves(unit, sizes, common, seam, grid):
    return all((size // common * unit + seam) % grid == 0 for size in sizes)


def scales(spec, sizes, scale, seam):
    """Going up and down from the exact unit, one tick at a time; after a grid the same remainders come again."""
    common = reduce(gcd, sizes)
    exact = common * scale
    below = next((unit for unit in range(down(exact), max(down(exact) - spec.grid, 0), -1)
                  if serves(unit, sizes, common, seam, spec.grid)), 0)
    above = next((unit for unit in range(up(exact), up(exact) + spec.grid)
                  if serves(unit, sizes, common, seam, spec.grid)), 0)
    if above * (max(sizes) // common) > SIZE_MAX:
        above = 0
    units = [unit for unit in (below, above) if unit]
    ratio = Fraction(min(units, key=lambda unit: (abs(unit - exact), -unit)), common) if units else Fraction(0)
    return {"unit": common, "unit_below": below, "unit_above": above, "numerator": ratio.numerator,
            "denominator": ratio.denominator}
