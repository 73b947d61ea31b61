# SPDX-License-Identifier: MIT
"""Blocks set on point: counts, squares for the triangles, sizes, and back from them."""

from fractions import Fraction

from .base import SIZE_MAX, Refused, Wants, down, up
from .root2 import ROOT, Root2

PLAIN, OUTER, CUT, INNER = 1, 2, 3, 4
TRIANGLES, HALF_BLOCKS = 1, 2
EXACT, CUSTOMARY, OVERSIZE = 1, 2, 3
BIAS_EDGE, OFF_GRID = 1 << 12, 1 << 13
FACTOR_MAX = 10**6


def seam(spec):
    return 2 * spec.allowance + spec.take_up


def wants_of(spec):
    """What every call asks of the spec: all but block and rows."""
    wants = Wants()
    wants.some_count(spec.columns)
    wants.choice(spec.layout, PLAIN, INNER)
    wants.choice(spec.edge, TRIANGLES, HALF_BLOCKS)
    halves = spec.edge == HALF_BLOCKS
    wants.that(not halves or spec.layout in (PLAIN, CUT), "ERR_NO_FIT")
    wants.between(spec.sash, *((0, 0) if spec.layout == PLAIN else (1, SIZE_MAX)))
    wants.between(spec.set_off, 0, 0 if halves or spec.layout in (CUT, INNER) else SIZE_MAX)
    wants.seam(spec.allowance, spec.take_up)
    wants.choice(spec.policy, EXACT, OVERSIZE)
    wants.between(spec.trim_room, 0, SIZE_MAX if spec.policy == OVERSIZE else 0)
    wants.size(spec.side_addition, spec.corner_addition)
    wants.between(spec.factor_numerator, 0, FACTOR_MAX)
    if spec.factor_numerator == 0:
        wants.between(spec.factor_denominator, 0, 0)
    else:
        wants.that(spec.factor_denominator != 0, "ERR_DIVIDE_BY_ZERO")
        wants.between(spec.factor_denominator, 0, FACTOR_MAX)
    return wants


def line(spec, block, blocks):
    """Finished, from the tips outside: `blocks` diagonals, with those of the sashes between and beyond."""
    sashes = {PLAIN: 0, OUTER: blocks + 1, CUT: blocks, INNER: blocks - 1}.get(spec.layout, 0)
    return (blocks * block + sashes * spec.sash) * ROOT + 2 * spec.set_off


def side_long(spec, block):
    """Finished long side of a side triangle."""
    leg = {PLAIN: block, OUTER: block + spec.sash, CUT: block, INNER: block - spec.sash}[spec.layout]
    return leg * ROOT + 2 * spec.set_off


def corner_leg(spec, block):
    long_side = block + 2 * spec.sash if spec.layout == OUTER else block
    return long_side * ROOT / 2 + 2 * spec.set_off


def factor(spec):
    return Root2(Fraction(spec.factor_numerator, spec.factor_denominator)) if spec.factor_numerator else ROOT


def squares(spec):
    """The squares to cut, as finished long side or leg, exact allowance, customary total."""
    t, f = seam(spec), 2 * spec.set_off
    side_addition = spec.side_addition or up(Fraction(5 * t, 2))
    corner_addition = spec.corner_addition or up(Fraction(7 * t, 4))
    leg = side_long(spec, spec.block) - f
    leg = leg / ROOT
    hypotenuse = (corner_leg(spec, spec.block) - f) * ROOT
    return {
        "side": (side_long(spec, spec.block) + t + t * ROOT, leg, 1, f + side_addition),
        "corner": (corner_leg(spec, spec.block) + t + t * ROOT / 2, hypotenuse, 2, f + corner_addition),
        "edge": (spec.sash * ROOT + t + t * ROOT, Root2(spec.sash), 1, side_addition),
    }


def cut_square(spec, cutting, need, side, times, added):
    if spec.policy == EXACT:
        return need.rounded(cutting)["value"]
    trim = spec.trim_room
    if spec.diagonal_first:
        diagonal = (side * factor(spec)).rounded(cutting)["value"]
        total = Root2(up(Fraction(diagonal, times)) + added)
    elif times == 1:
        total = side * factor(spec) + added
    else:
        total = side / factor(spec) + added
    if total < need:
        raise Refused("ERR_CUSTOMARY")
    return (total + trim).floor() if spec.diagonal_first else (total + trim).rounded(cutting)["value"]


def plan(spec, cutting, measuring):
    wants = wants_of(spec)
    wants.some_count(spec.rows)
    wants.between(spec.block, spec.sash + 1 if spec.layout == INNER else 1, SIZE_MAX)
    wants.rounding(cutting)
    wants.rounding(measuring)
    wants.that(line(spec, spec.block, spec.columns) <= SIZE_MAX, "ERR_RANGE")
    wants.that(line(spec, spec.block, spec.rows) <= SIZE_MAX, "ERR_RANGE")
    wants.done()
    t, c, r = seam(spec), spec.columns, spec.rows
    sides = 2 * (c - 1) + 2 * (r - 1)
    halves = spec.edge == HALF_BLOCKS
    found = {"blocks": c * r, "alternates": (c - 1) * (r - 1), "side_triangles": 0 if halves else sides,
             "half_blocks": sides if halves else 0, "corner_triangles": 4, "corner_squares": 2,
             "alternate_cut": spec.block + t, "half_block_beyond": up(Fraction(t, 2)) if halves and sides else 0}
    found["side_squares"] = up(Fraction(found["side_triangles"], 4))
    found["spare_side_triangles"] = 4 * found["side_squares"] - found["side_triangles"]
    found.update(sashes_of(spec, cutting))
    wanted = {"corner"} | ({"side"} if found["side_triangles"] else set()) | ({"edge"} if spec.layout == CUT else set())
    cuts = {name: cut_square(spec, cutting, *square) if name in wanted else 0
            for name, square in squares(spec).items()}
    for square, name, cut in (("side", "side", "side_square_cut"), ("corner", "corner", "corner_square_cut"),
                              ("edge", "edge_cornerstone", "edge_cornerstone_cut")):
        need = squares(spec)[square][0].ceiling() if square in wanted else 0
        found.update({cut: cuts[square], f"{name}_need": need, f"{name}_surplus": cuts[square] - need,
                      f"{name}_room": (cuts[square] - need) // 2})
    for name, exact in (("diagonal", spec.block * ROOT), ("width", line(spec, spec.block, c)),
                        ("length", line(spec, spec.block, r))):
        rounded = exact.rounded(measuring)
        found["diagonal" if name == "diagonal" else f"finished_{name}"] = rounded["value"]
        found[f"{name}_error"] = rounded["error"]
    found["unfinished_width"] = found["finished_width"] + t
    found["unfinished_length"] = found["finished_length"] + t
    bias = found["half_blocks"] > 0 or found["edge_sashes"] > 0
    found["straight_grain"] = int(not bias)
    off_grid = any(cut % cutting.grid for cut in cuts.values())
    found["warnings"] = (BIAS_EDGE if bias else 0) + (OFF_GRID if off_grid else 0)
    return found


def sashes_of(spec, cutting):
    """Counted by walking round each block: its four sides and its four tips."""
    c, r, t = spec.columns, spec.rows, seam(spec)
    names = ("sashes", "edge_sashes", "cornerstones", "edge_cornerstones", "edge_cornerstone_squares",
             "sash_cut_width", "sash_cut_length", "edge_sash_cut_length", "cornerstone_cut")
    if spec.layout == PLAIN:
        return dict.fromkeys(names, 0)
    inner_tips, outer_tips = (c - 1) * r + c * (r - 1), 2 * c + 2 * r
    sides_to_alternates, sides_to_corners = 4 * (c - 1) * (r - 1), 4
    sides_to_edge = 4 * c * r - sides_to_alternates - sides_to_corners
    inner, cut = spec.layout == INNER, spec.layout == CUT
    edge_sash = spec.block + t + t * ROOT / 2
    return {
        "sashes": sides_to_alternates if inner else 4 * c * r,
        "edge_sashes": sides_to_edge if inner else 0,
        "cornerstones": inner_tips + (outer_tips if spec.layout == OUTER else 0),
        "edge_cornerstones": outer_tips if cut else 0,
        "edge_cornerstone_squares": up(Fraction(outer_tips, 4)) if cut else 0,
        "sash_cut_width": spec.sash + t,
        "sash_cut_length": spec.block + t,
        "edge_sash_cut_length": edge_sash.rounded(cutting)["value"] if inner and sides_to_edge else 0,
        "cornerstone_cut": spec.sash + t,
    }


def block_for_width(spec, wanted_width, grid):
    wants = wants_of(spec)
    wants.some_size(wanted_width, grid)
    wants.done()
    least = spec.sash + 1 if spec.layout == INNER else 1
    low, high = 0, SIZE_MAX // grid + 1
    while high - low > 1:
        middle = (low + high) // 2
        fits = line(spec, middle * grid, spec.columns) <= wanted_width
        low, high = (middle, high) if fits else (low, middle)
    if low * grid < least or wanted_width < line(spec, low * grid, spec.columns):
        raise Refused("ERR_NO_FIT")
    return down(low * grid)


def block_from_side(spec, side_square_cut, rounding):
    wants = wants_of(spec)
    wants.some_size(side_square_cut)
    wants.rounding(rounding)
    wants.done()
    t = seam(spec)
    least = spec.sash + 1 if spec.layout == INNER else 1
    if side_square_cut < side_long(spec, least) + t + t * ROOT:
        raise Refused("ERR_NO_FIT")
    leg = (side_square_cut - 2 * spec.set_off - t - t * ROOT) / ROOT
    beside = {PLAIN: 0, OUTER: spec.sash, CUT: 0, INNER: -spec.sash}[spec.layout]
    found = (leg - beside).rounded(rounding)
    if found["value"] < least:
        raise Refused("ERR_NO_FIT")
    return found
