# SPDX-License-Identifier: MIT
"""Blocks put together, runs of strips, borders."""

from .base import (COUNT_MAX, LENGTH_MAX, SIZE_MAX, WARN_DIAGONAL_STRETCH, WARN_NO_SLACK, Refused, Wants, least,
                   root_up)

TURNING_NONE, TURNING_QUARTER, TURNING_HALF = 1, 2, 3
BUTTED, STRAIGHT, DIAGONAL, BIAS_ENDS = 1, 2, 3, 4
SIDES_FIRST, TOP_FIRST, CORNERSTONES, MITRED = 1, 2, 3, 4


def straight(spec):
    wants = Wants()
    wants.some_size(spec.block_width, spec.block_height)
    wants.some_count(spec.columns, spec.rows)
    wants.seam(spec.allowance, spec.take_up)
    wants.choice(spec.turning, TURNING_NONE, TURNING_HALF)
    wants.size(spec.square_tolerance)
    off = abs(spec.block_width - spec.block_height)
    wants.that(spec.turning != TURNING_QUARTER or off <= spec.square_tolerance, "ERR_NOT_SQUARE")
    width, length = spec.block_width * spec.columns, spec.block_height * spec.rows
    seams = 2 * spec.allowance + spec.take_up
    wants.size(width, length)
    wants.done()
    return {
        "blocks": spec.columns * spec.rows,
        "blocks_turned": 0 if spec.turning == TURNING_NONE else spec.columns * spec.rows // 2,
        "finished_width": width,
        "finished_length": length,
        "unfinished_width": width + seams,
        "unfinished_length": length + seams,
        "block_seams": spec.rows * (spec.columns - 1),
        "row_seams": spec.rows - 1,
    }


def turn(turning, column, row):
    wants = Wants()
    wants.choice(turning, TURNING_NONE, TURNING_HALF)
    wants.count(column, row)
    wants.done()
    quarters = {TURNING_NONE: 0, TURNING_QUARTER: 1, TURNING_HALF: 2}[turning]
    return quarters if (column + row) % 2 else 0


def block(spec):
    wants = Wants()
    wants.some_size(spec.segment_cut, spec.set_unfinished)
    wants.some_count(spec.segments)
    wants.seam(spec.allowance, spec.take_up)
    wants.done()
    seams = 2 * spec.allowance + spec.take_up
    if min(spec.segment_cut, spec.set_unfinished) <= seams:
        raise Refused("ERR_SEAM_TOO_WIDE")
    width = spec.segments * spec.segment_cut - (spec.segments - 1) * seams
    if width > SIZE_MAX:
        raise Refused("ERR_RANGE")
    square_total = spec.set_unfinished + (spec.segments - 1) * seams
    square_cut = square_total // spec.segments
    seen = square_cut > seams
    return {
        "unfinished_width": width,
        "unfinished_height": spec.set_unfinished,
        "finished_width": width - seams,
        "finished_height": spec.set_unfinished - seams,
        "segment_finished": spec.segment_cut - seams,
        "square_segment_cut": square_cut if seen else 0,
        "square": int(width == spec.set_unfinished),
        "square_exact": int(seen and square_total % spec.segments == 0),
    }


def join_loss(join, strip_cut, allowance):
    wants = Wants()
    wants.choice(join, BUTTED, BIAS_ENDS)
    wants.size(strip_cut)
    wants.seam(allowance)
    wants.done()
    return loss_of(join, strip_cut, allowance)


def loss_of(join, strip_cut, allowance):
    return {BUTTED: 0, STRAIGHT: 2 * allowance, DIAGONAL: strip_cut, BIAS_ENDS: root_up(8 * allowance**2)}[join]


def run_of(length, strip_length, loss):
    """The least number of strips, found by asking whether a number reaches, and what they are when joined."""
    if length == 0:
        return 0, 0
    if strip_length < length and strip_length <= loss:
        raise Refused("ERR_NO_YIELD")
    strips = 1 if strip_length >= length else least(lambda n: n > 0 and n * strip_length - (n - 1) * loss >= length,
                                                    length + 1)
    if strips > COUNT_MAX:
        raise Refused("ERR_OVERFLOW")
    return strips, strips * strip_length - (strips - 1) * loss


def run(spec):
    wants = Wants()
    wants.between(spec.length, 0, LENGTH_MAX // 2)
    wants.size(spec.strip_length, spec.strip_cut)
    wants.seam(spec.allowance)
    wants.choice(spec.join, BUTTED, BIAS_ENDS)
    wants.done()
    loss = join_loss(spec.join, spec.strip_cut, spec.allowance)
    strips, joined = run_of(spec.length, spec.strip_length, loss)
    spare = joined - spec.length
    return {
        "strips": strips,
        "joins": max(strips - 1, 0),
        "loss_per_join": loss,
        "joined": joined,
        "spare": spare,
        "cloth_length": strips * spec.strip_cut,
        "narrower_by": spare // strips if strips else 0,
        "warnings": WARN_NO_SLACK if strips and spare == 0 else 0,
    }


def border_lengths(spec):
    """Side and top pieces as cut."""
    width, length, border = spec.unfinished_width, spec.unfinished_length, spec.finished_border
    if spec.style == SIDES_FIRST:
        return length, width + 2 * border
    if spec.style == TOP_FIRST:
        return length + 2 * border, width
    if spec.style == CORNERSTONES:
        return length, width
    more = 2 * border + root_up(8 * spec.allowance**2) + spec.mitre_extra
    return length + more, width + more


def lengthwise(spec, cut_width, pieces):
    """Pieces side by side, longest first, as many in a panel as the width holds."""
    per_panel = spec.usable_width // cut_width
    if per_panel == 0:
        raise Refused("ERR_NO_FIT")
    longest_first = sorted(pieces, reverse=True)
    panels = [longest_first[i:i + per_panel] for i in range(0, len(longest_first), per_panel)]
    spare = spec.usable_width - len(panels[0]) * cut_width
    return {
        "strips": len(panels[0]),
        "joins": 0,
        "loss_per_join": 0,
        "cloth_length": sum(panel[0] for panel in panels),
        "spare": spare,
        "warnings": WARN_NO_SLACK if spare == 0 else 0,
    }


def across(spec, cut_width, total):
    loss = loss_of(spec.join, cut_width, spec.allowance)
    strips, joined = run_of(total, spec.usable_width, loss)
    stretch = WARN_DIAGONAL_STRETCH if spec.join in (DIAGONAL, BIAS_ENDS) and strips > 1 else 0
    return {
        "strips": strips,
        "joins": strips - 1,
        "loss_per_join": loss,
        "cloth_length": strips * cut_width,
        "spare": joined - total,
        "warnings": stretch | (WARN_NO_SLACK if joined == total else 0),
    }


def border(spec, is_lengthwise):
    wants = Wants()
    wants.some_size(spec.unfinished_width, spec.unfinished_length, spec.finished_border)
    wants.seam(spec.allowance, spec.take_up)
    wants.size(spec.usable_width, spec.mitre_extra)
    wants.choice(spec.style, SIDES_FIRST, MITRED)
    wants.choice(spec.join, BUTTED, BIAS_ENDS)
    seams = 2 * spec.allowance + spec.take_up
    wants.that(min(spec.unfinished_width, spec.unfinished_length) >= seams, "ERR_SEAM_TOO_WIDE")
    wants.done()
    cut_width = spec.finished_border + seams
    side, top = border_lengths(spec)
    total = 2 * (side + top)
    found = (lengthwise(spec, cut_width, [side, side, top, top]) if is_lengthwise
             else across(spec, cut_width, total))
    width = spec.unfinished_width + 2 * spec.finished_border
    length = spec.unfinished_length + 2 * spec.finished_border
    found.update(cut_width=cut_width, side_cut_length=side, top_cut_length=top, total_length=total,
                 cornerstone_cut=cut_width if spec.style == CORNERSTONES else 0,
                 unfinished_width=width, unfinished_length=length,
                 finished_width=width - seams, finished_length=length - seams)
    return found
