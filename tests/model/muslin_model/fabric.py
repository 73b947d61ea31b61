# SPDX-License-Identifier: MIT
"""Cloth and pre-cuts."""

from fractions import Fraction

from .base import (LENGTH_MAX, PPM, SIZE_MAX, WARN_MIXED_EDGES, WARN_MIXED_WASH, WARN_NO_SLACK, WARN_PRECUT_WASHED,
                   Refused, Wants, up)

STRAIGHT, PINKED_TIPS, PINKED_VALLEYS = 1, 2, 3
UNWASHED, WASHED = 1, 2
PRINT_NONE, PRINT_TWO_WAY, PRINT_ONE_WAY, PRINT_STRIPE_ALONG, PRINT_STRIPE_ACROSS = 1, 2, 3, 4, 5
YARDAGE, STRIP, SQUARE, FAT_QUARTER, FAT_EIGHTH = 1, 2, 3, 4, 5


def usable_width(labelled, selvage, shrinkage):
    wants = Wants()
    wants.some_size(labelled)
    wants.size(selvage)
    wants.between(shrinkage, 0, PPM - 1)
    wants.done()
    if labelled - 2 * selvage <= 0:
        raise Refused("ERR_RANGE")
    return (labelled - 2 * selvage) * (PPM - shrinkage) // PPM


def purchase(spec):
    wants = Wants()
    wants.size(spec.needed, spec.extra)
    wants.some_size(spec.step)
    wants.between(spec.shrinkage, 0, PPM - 1)
    wants.between(spec.extra_share, 0, 10 * PPM)
    wants.done()
    unshrunk = up(Fraction(spec.needed * PPM, PPM - spec.shrinkage))
    with_extra = up(Fraction(unshrunk * (PPM + spec.extra_share), PPM)) + spec.extra
    steps = -(-with_extra // spec.step)
    return {
        "needed": spec.needed,
        "unshrunk": unshrunk,
        "with_extra": with_extra,
        "bought": steps * spec.step,
        "steps": steps,
        "spare": steps * spec.step - with_extra,
        "less_by": with_extra - (steps - 1) * spec.step if steps else 0,
    }


def fit(cloth, loss, piece):
    """Pieces side by side, by laying one after the other; what is left; what is missing for one more."""
    room = max(cloth - loss, 0)
    count = room // piece
    left = room - count * piece
    return count, left, max(loss - cloth, 0) + piece - left


def grid_of(spec, piece_width, piece_length):
    across, left_across, wider = fit(spec.width, spec.loss_across, piece_width)
    along, left_along, longer = fit(spec.length, spec.loss_along, piece_length)
    some = across * along > 0
    narrower = left_across if some else 0
    shorter = left_along if some else 0
    return {
        "across": across,
        "along": along,
        "pieces": across * along,
        "left_across": left_across,
        "left_along": left_along,
        "narrower_by": narrower,
        "shorter_by": shorter,
        "wider_for_one": wider,
        "longer_for_one": longer,
        "warnings": WARN_NO_SLACK if some and 0 in (narrower, shorter) else 0,
    }


def pieces(spec, may_turn):
    wants = Wants()
    wants.size(spec.width, spec.length, spec.loss_across, spec.loss_along)
    wants.some_size(spec.piece_width, spec.piece_length)
    wants.done()
    found = dict(grid_of(spec, spec.piece_width, spec.piece_length), turned=0)
    if may_turn:
        turned = dict(grid_of(spec, spec.piece_length, spec.piece_width), turned=1)
        if turned["pieces"] > found["pieces"]:
            found = turned
    return found


def strips(spec):
    wants = Wants()
    wants.count(spec.pieces)
    wants.some_size(spec.piece_across, spec.strip_cut)
    wants.size(spec.usable_width, spec.end_loss, spec.straightening)
    wants.done()
    per_strip, left, wider = fit(spec.usable_width, spec.end_loss, spec.piece_across)
    if per_strip == 0:
        raise Refused("ERR_NO_YIELD")
    count = -(-spec.pieces // per_strip)
    return {
        "per_strip": per_strip,
        "strips": count,
        "spare_pieces": count * per_strip - spec.pieces,
        "length": count * spec.strip_cut + spec.straightening,
        "left_per_strip": left,
        "narrower_by": left,
        "wider_for_one": wider,
        "warnings": WARN_NO_SLACK if left == 0 else 0,
    }


def area_bound(area, width):
    wants = Wants()
    wants.between(area, 0, LENGTH_MAX)
    wants.some_size(width)
    wants.done()
    return up(Fraction(area, 2 * width))


def want_stock(wants, stock):
    wants.some_size(stock.width, stock.length)
    wants.count(stock.count)
    wants.between(stock.pink_depth, 0, 0 if stock.edge == STRAIGHT else SIZE_MAX)
    wants.choice(stock.edge, STRAIGHT, PINKED_VALLEYS)
    wants.choice(stock.care, UNWASHED, WASHED)
    wants.choice(stock.print, PRINT_NONE, PRINT_STRIPE_ACROSS)
    wants.choice(stock.kind, YARDAGE, FAT_EIGHTH)


def stock_size(stock, align):
    wants = Wants()
    want_stock(wants, stock)
    wants.choice(align, PINKED_TIPS, PINKED_VALLEYS)
    wants.done()
    change = 0
    if stock.edge == PINKED_TIPS and align == PINKED_VALLEYS:
        change = -2 * stock.pink_depth
    if stock.edge == PINKED_VALLEYS and align == PINKED_TIPS:
        change = 2 * stock.pink_depth
    if min(stock.width, stock.length) + change <= 0:
        raise Refused("ERR_RANGE")
    return stock.width + change, stock.length + change


def stock_strips(stock, strip_cut, wanted):
    wants = Wants()
    want_stock(wants, stock)
    wants.some_size(strip_cut)
    wants.count(wanted)
    wants.done()
    per_piece = stock.length // strip_cut
    if per_piece == 0:
        raise Refused("ERR_NO_YIELD")
    needed = -(-wanted // per_piece)
    left = stock.length - per_piece * strip_cut
    return {
        "per_piece": per_piece,
        "in_hand": per_piece * stock.count,
        "pieces_needed": needed,
        "pieces_missing": max(needed - stock.count, 0),
        "strip_length": stock.width,
        "left_over": left,
        "shorter_by": left,
        "warnings": WARN_NO_SLACK if left == 0 else 0,
    }


def stock_check(rows):
    for stock in rows:
        wants = Wants()
        want_stock(wants, stock)
        wants.done()
    cares = {stock.care for stock in rows}
    edges = {stock.edge for stock in rows}
    precut_washed = any(stock.care == WASHED and stock.kind in (STRIP, SQUARE) for stock in rows)
    return ((WARN_MIXED_WASH if len(cares) > 1 else 0) | (WARN_MIXED_EDGES if len(edges) > 1 else 0)
            | (WARN_PRECUT_WASHED if precut_washed else 0))


def may_turn(kind, quarters):
    wants = Wants()
    wants.choice(kind, PRINT_NONE, PRINT_STRIPE_ACROSS)
    wants.between(quarters, 0, 3)
    wants.done()
    if kind == PRINT_NONE:
        return 1
    if kind == PRINT_ONE_WAY:
        return int(quarters == 0)
    return int(quarters in (0, 2))
