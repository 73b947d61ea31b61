# SPDX-License-Identifier: MIT
"""Cut, unfinished, finished."""

from fractions import Fraction

from .base import COUNT_MAX, INT64_MAX, LENGTH_MAX, SIZE_MAX, Refused, Wants, nearest, rounded, share, up


def taken(seam):
    return 2 * seam.allowance + seam.take_up


def want_seam(wants, seam):
    wants.seam(seam.allowance, seam.take_up)


def cut_from_finished(finished, seam):
    wants = Wants()
    want_seam(wants, seam)
    wants.size(finished)
    wants.done()
    return finished + taken(seam)


def finished_from_cut(cut, seam):
    wants = Wants()
    want_seam(wants, seam)
    wants.size(cut)
    wants.that(cut >= taken(seam), "ERR_SEAM_TOO_WIDE")
    wants.done()
    return cut - taken(seam)


def with_edges(finished, one, other, take_up):
    sewn = (one > 0) + (other > 0)
    return up(finished + one + other + Fraction(take_up * sewn, 2))


def piece(spec):
    wants = Wants()
    wants.size(spec.finished_width, spec.finished_height)
    wants.seam(spec.left, spec.right, spec.top, spec.bottom, spec.take_up)
    wants.done()
    width = with_edges(spec.finished_width, spec.left, spec.right, spec.take_up)
    height = with_edges(spec.finished_height, spec.top, spec.bottom, spec.take_up)
    cut_area = 2 * width * height
    finished_area = 2 * spec.finished_width * spec.finished_height
    return {
        "cut_width": width,
        "cut_height": height,
        "cut_area": cut_area,
        "finished_area": finished_area,
        "seam_share": share(cut_area - finished_area, cut_area) if cut_area else 0,
    }


def row(cuts, seam, pieces=None):
    """Pieces side by side. `pieces` stands for so many equal ones."""
    wants = Wants()
    want_seam(wants, seam)
    wants.some_size(*cuts)
    if pieces is None:
        wants.that(len(cuts) >= 1, "ERR_RANGE")
    else:
        wants.some_count(pieces)
    wants.that(min(cuts) >= taken(seam), "ERR_SEAM_TOO_WIDE")
    wants.done()
    count = len(cuts) if pieces is None else pieces
    total = sum(cuts) if pieces is None else cuts[0] * pieces
    if total > LENGTH_MAX:
        raise Refused("ERR_OVERFLOW")
    eaten = (count - 1) * taken(seam)
    finished = total - eaten - taken(seam)
    return {
        "pieces": count,
        "seams": count - 1,
        "cut_total": total,
        "eaten": eaten,
        "unfinished": total - eaten,
        "finished": finished,
        "seam_share": share(total - finished, total),
    }


def row_equal(cut, pieces, seam):
    return row([cut], seam, pieces)


def strip_for_finished(finished, pieces, seam, rounding):
    wants = Wants()
    want_seam(wants, seam)
    wants.size(finished)
    wants.some_count(pieces)
    wants.rounding(rounding)
    wants.done()
    return rounded(Fraction(finished, pieces) + taken(seam), rounding)


def resize_cut(cut, numerator, denominator, seam, rounding):
    wants = Wants()
    want_seam(wants, seam)
    wants.size(cut)
    wants.between(numerator, 1, INT64_MAX)
    wants.that(denominator != 0, "ERR_DIVIDE_BY_ZERO")
    wants.between(denominator, 0, INT64_MAX)
    wants.rounding(rounding)
    wants.that(cut >= taken(seam), "ERR_SEAM_TOO_WIDE")
    wants.done()
    return rounded(Fraction((cut - taken(seam)) * numerator, denominator) + taken(seam), rounding)


def calibrate(cuts, measured, stitched):
    wants = Wants()
    wants.between(len(cuts), 2, COUNT_MAX)
    wants.some_size(*cuts)
    wants.seam(stitched)
    wants.between(measured, 1, max(sum(cuts), 1))
    wants.that(min(cuts) >= 2 * stitched, "ERR_SEAM_TOO_WIDE")
    wants.done()
    seams = len(cuts) - 1
    planned = sum(cuts) - 2 * stitched * seams
    take_up = Fraction(planned - measured, seams)
    effective = Fraction(sum(cuts) - measured, 2 * seams)
    if stitched < take_up / 2:
        raise Refused("ERR_SEAM_TOO_WIDE")
    return {
        "seams": seams,
        "planned": planned,
        "shortfall": planned - measured,
        "take_up_exact": take_up,
        "take_up": nearest(take_up),
        "effective_exact": effective,
        "effective_allowance": nearest(effective),
        "sew_at": nearest(stitched - take_up / 2),
    }


def carry_on(spec, rounding):
    wants = Wants()
    wants.between(spec.strips, 2, COUNT_MAX)
    wants.size(spec.later_cut)
    wants.seam(spec.allowance, spec.take_up)
    wants.some_size(spec.cut_total)
    wants.between(spec.measured, 1, max(spec.cut_total, 1))
    wants.rounding(rounding)
    planned_seam = taken(spec)
    wants.that(spec.cut_total > spec.strips * planned_seam, "ERR_SEAM_TOO_WIDE")
    wants.that(spec.strips * spec.measured >= spec.cut_total, "ERR_SEAM_TOO_WIDE")
    wants.that(spec.later_cut >= planned_seam, "ERR_SEAM_TOO_WIDE")
    wants.done()
    sewn_seam = Fraction(spec.cut_total - spec.measured, spec.strips - 1)
    planned = spec.cut_total - (spec.strips - 1) * planned_seam
    scale = (spec.measured - sewn_seam) / (planned - planned_seam)
    return rounded((spec.later_cut - planned_seam) * scale + sewn_seam, rounding)


def error_total(error_per_seam, seams):
    wants = Wants()
    wants.between(error_per_seam, -SIZE_MAX, SIZE_MAX)
    wants.count(seams)
    wants.done()
    return error_per_seam * seams


def error_limit(tolerance, seams):
    wants = Wants()
    wants.size(tolerance)
    wants.some_count(seams)
    wants.done()
    return tolerance // seams


def seam_share(cut_area, finished_area):
    wants = Wants()
    wants.that(cut_area > 0, "ERR_RANGE")
    wants.between(finished_area, 0, max(cut_area, 0))
    wants.done()
    return share(cut_area - finished_area, cut_area)
