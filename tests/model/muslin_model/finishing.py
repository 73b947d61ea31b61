# SPDX-License-Identifier: MIT
"""Binding, bias, batting, hanging."""

from fractions import Fraction
from math import isqrt

from .base import (LENGTH_MAX, SIZE_MAX, UP, WARN_BACK_TOO_NARROW, WARN_BINDING_UNEVEN, WARN_NO_SLACK,
                   Refused, Wants, down, largest, least, root_between, up)
from .setting import BIAS_ENDS, BUTTED, join_loss, run_of

DOUBLE, SINGLE = 1, 2


def binding_measure(spec):
    wants = Wants()
    wants.choice(spec.fold, DOUBLE, SINGLE)
    wants.seam(spec.allowance)
    wants.size(spec.front, spec.thickness, spec.back, spec.turn_under, spec.binding_cut, spec.uneven_limit)
    wants.done()
    before_back = spec.allowance + spec.front + spec.thickness
    back = spec.back
    if spec.fold == DOUBLE:
        cut = spec.binding_cut or 2 * (before_back + back)
        folded = up(Fraction(cut, 2))
        if spec.binding_cut:
            back = Fraction(cut, 2) - before_back
    else:
        cut = spec.binding_cut or before_back + back + spec.turn_under
        folded = cut
        if spec.binding_cut:
            back = cut - before_back - spec.turn_under
    uneven = abs(back - spec.front) > spec.uneven_limit
    return {
        "cut_width": cut,
        "back": down(back),
        "folded": folded,
        "warnings": (WARN_BINDING_UNEVEN if uneven else 0) | (WARN_BACK_TOO_NARROW if back < spec.front else 0),
    }


def binding_plan(spec):
    wants = Wants()
    wants.between(spec.perimeter, 0, 4 * SIZE_MAX)
    if spec.perimeter == 0:
        wants.some_size(spec.quilt_width, spec.quilt_length)
    wants.size(spec.extra, spec.corner_extra)
    wants.count(spec.corners, spec.spare_strips)
    wants.seam(spec.allowance)
    wants.some_size(spec.binding_cut, spec.strip_length, spec.step)
    wants.choice(spec.join, BUTTED, BIAS_ENDS)
    wants.done()
    perimeter = spec.perimeter or 2 * (spec.quilt_width + spec.quilt_length)
    length = perimeter + spec.corners * spec.corner_extra + spec.extra
    if length > LENGTH_MAX // 2:
        raise Refused("ERR_RANGE")
    loss = join_loss(spec.join, spec.binding_cut, spec.allowance)
    needed, joined = run_of(length, spec.strip_length, loss)
    strips = needed + spec.spare_strips
    cloth = strips * spec.binding_cut
    spare = joined - length
    return {
        "perimeter": perimeter,
        "length": length,
        "strips_needed": needed,
        "strips": strips,
        "joins": needed - 1,
        "loss_per_join": loss,
        "joined": joined,
        "spare": spare,
        "cloth_length": cloth,
        "bought": up(cloth, spec.step),
        "narrower_by": spare // needed,
        "warnings": WARN_NO_SLACK if spare == 0 else 0,
    }


# ---- bias


def root2_times(factor, less):
    """sqrt 2 x factor - less, down to a whole number."""
    low, high = root_between(2 * factor * factor)
    if factor < 0:
        low, high = -high, -low
    assert (low - less).__floor__() == (high - less).__floor__()
    return (low - less).__floor__()


def tube(short, long, width, allowance, blunt):
    """Rounds and length of the continuous tube."""
    room = long - 2 * allowance
    if room < 0 or short <= 2 * allowance:
        return 0, 0
    rounds = largest(lambda n: 2 * n * n * width * width <= room * room, SIZE_MAX)
    if rounds == 0:
        return 0, 0
    found = root2_times(rounds * short - 2 * (rounds - 1) * allowance, width if blunt else 0)
    return rounds, max(found, 0)


def bias_tube(spec, blunt):
    wants = Wants()
    wants.some_size(spec.width, spec.length, spec.strip_cut)
    wants.seam(spec.allowance)
    wants.done()
    short, long = sorted((spec.width, spec.length))
    rounds, length = tube(short, long, spec.strip_cut, spec.allowance, blunt)
    if rounds * short > SIZE_MAX:
        raise Refused("ERR_RANGE")
    return {"rounds": rounds, "joins": max(rounds - 1, 0), "length": length, "square_cut": 0, "area_rule": 0, "spare": 0}


def bias_least_square(spec, rounding, blunt):
    wants = Wants()
    wants.some_size(spec.wanted, spec.strip_cut)
    wants.seam(spec.allowance)
    wants.between(rounding.grid, 1, SIZE_MAX)
    wants.between(rounding.tolerance, 0, 0)
    wants.that(rounding.direction == UP, "ERR_CHOICE")
    wants.done()

    def serves(steps):
        side = steps * rounding.grid
        rounds, length = tube(side, side, spec.strip_cut, spec.allowance, blunt)
        return length >= spec.wanted

    steps = least(serves, SIZE_MAX // rounding.grid)
    if steps is None:
        raise Refused("ERR_RANGE")
    square = steps * rounding.grid
    rounds, length = tube(square, square, spec.strip_cut, spec.allowance, blunt)
    if rounds * square > SIZE_MAX:
        raise Refused("ERR_RANGE")
    product = spec.wanted * spec.strip_cut
    rule = isqrt(product)
    rule += (2 * rule + 1) ** 2 <= 4 * product
    return {"rounds": rounds, "joins": rounds - 1, "length": length, "square_cut": square, "area_rule": rule,
            "spare": length - spec.wanted}


def bias_strips(spec, blunt):
    """Strips in each half are laid one after the other, each measured along its middle."""
    wants = Wants()
    wants.some_size(spec.width, spec.strip_cut)
    wants.that(spec.length in (0, spec.width), "ERR_RANGE")
    wants.seam(spec.allowance)
    wants.done()
    side, width = spec.width, spec.strip_cut
    half = largest(lambda n: 2 * n * n * width * width <= side * side, SIZE_MAX)
    if half == 0:
        return {"rounds": 0, "joins": 0, "length": 0}
    if half * side > SIZE_MAX:
        raise Refused("ERR_RANGE")
    strips = 2 * half
    middles = 2 * half * half * width
    length = root2_times(2 * half * side - 2 * (strips - 1) * spec.allowance, middles + (width if blunt else 0))
    return {"rounds": strips, "joins": strips - 1, "length": max(length, 0)}


# ---- batting


def batting(spec, packages, fixed):
    """packages are (width, length), in the order of the library's table."""
    wants = Wants()
    wants.some_size(spec.quilt_width, spec.quilt_length)
    margins = (spec.margin_left, spec.margin_right, spec.margin_top, spec.margin_bottom)
    wants.size(*margins, spec.roll_width)
    width = spec.quilt_width + spec.margin_left + spec.margin_right
    length = spec.quilt_length + spec.margin_top + spec.margin_bottom
    wants.size(width, length)
    wants.done()
    covering = []
    for number, (a, b) in enumerate(packages):
        if a >= width and b >= length:
            covering.append((a * b, number, 0, a, b))
        elif not fixed and b >= width and a >= length:
            covering.append((a * b, number, 1, b, a))
    found = {"width": width, "length": length, "package": -1, "package_width": 0, "package_length": 0,
             "spare_width": 0, "spare_length": 0, "turned": 0, "joined_turned": 0, "joined_pieces": 0,
             "joined_length": 0, "joined_joins": 0}
    if covering:
        _, number, turned, as_wide, as_long = min(covering)
        found.update(package=number, package_width=packages[number][0], package_length=packages[number][1],
                     spare_width=as_wide - width, spare_length=as_long - length, turned=turned)
    if spec.roll_width:
        along = -(-width // spec.roll_width)
        across = -(-length // spec.roll_width)
        bought, count, turned = min((along * length, along, 0), (across * width, across, 1))
        found.update(joined_turned=turned, joined_pieces=count, joined_length=bought, joined_joins=count - 1)
    return found


# ---- what hangs on the back


def hanging(spec):
    wants = Wants()
    wants.some_size(spec.quilt_width)
    wants.between(spec.sleeves, 0, 2)
    wants.size(spec.inset, spec.gap, spec.drop, spec.ease, spec.hem, spec.label_width, spec.label_height,
               spec.corner_triangle)
    wants.seam(spec.allowance)
    wants.between(spec.corners, 0, 4)
    wants.that(spec.drop >= 1 or spec.sleeves == 0, "ERR_RANGE")
    wants.that(spec.label_height >= 1 or spec.label_width == 0, "ERR_RANGE")
    wants.done()
    found = {"sleeves": spec.sleeves, "sleeve_finished": 0, "sleeve_cut_length": 0, "sleeve_cut_width": 0,
             "label_cut_width": 0, "label_cut_height": 0, "corner_squares": 0, "corner_square_cut": 0}
    if spec.sleeves:
        finished = (spec.quilt_width - 2 * spec.inset - (spec.sleeves - 1) * spec.gap) // spec.sleeves
        if finished <= 0:
            raise Refused("ERR_RANGE")
        found.update(sleeve_finished=finished, sleeve_cut_length=finished + 2 * spec.hem,
                     sleeve_cut_width=2 * spec.drop + spec.ease + 2 * spec.allowance)
    if spec.label_width:
        found.update(label_cut_width=spec.label_width + 2 * spec.allowance,
                     label_cut_height=spec.label_height + 2 * spec.allowance)
    if spec.corner_triangle and spec.corners:
        found.update(corner_squares=spec.corners, corner_square_cut=spec.corner_triangle + 2 * spec.allowance)
    return found
