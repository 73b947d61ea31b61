# SPDX-License-Identifier: MIT
"""Small errors added up: worst cases by plain sums, likely ones by whole-number roots."""

from .base import COUNT_MAX, Wants, largest, least, root_up


def wants_errors(wants, spec):
    wants.seam(spec.seam_error, spec.cut_error)


def run(pieces, seams, seam_error, cut_error):
    """Worst and likely error of a measure over so many pieces and seams."""
    worst = seams * seam_error + 2 * pieces * cut_error
    return worst, root_up(seams * seam_error**2 + 2 * pieces * cut_error**2)


def row(spec):
    wants = Wants()
    wants.some_count(spec.pieces)
    wants.count(spec.seams)
    wants_errors(wants, spec)
    wants.done()
    worst, likely = run(spec.pieces, spec.seams, spec.seam_error, spec.cut_error)
    return {
        "cuts": 2 * spec.pieces,
        "from_seams": spec.seams * spec.seam_error,
        "from_cuts": 2 * spec.pieces * spec.cut_error,
        "worst": worst,
        "likely": likely,
    }


def top(spec):
    wants = Wants()
    wants.some_count(spec.pieces_across, spec.pieces_down, spec.columns, spec.rows)
    wants.between(spec.pieces_across * spec.columns, 1, COUNT_MAX)
    wants.between(spec.pieces_down * spec.rows, 1, COUNT_MAX)
    wants_errors(wants, spec)
    wants.done()
    answer = {}
    for name, seams_name, pieces in (("block_width", "block_seams_across", spec.pieces_across),
                                     ("block_height", "block_seams_down", spec.pieces_down),
                                     ("top_width", "top_seams_across", spec.pieces_across * spec.columns),
                                     ("top_length", "top_seams_down", spec.pieces_down * spec.rows)):
        worst, likely = run(pieces, pieces - 1, spec.seam_error, spec.cut_error)
        answer.update({seams_name: pieces - 1, name + "_worst": worst, name + "_likely": likely})
    return answer


def meet(spec):
    """Each answer by asking of a seam, or of an error, whether it still is within the tolerance."""
    wants = Wants()
    wants.some_count(spec.seams)
    wants_errors(wants, spec)
    wants.size(spec.tolerance)
    wants.done()

    def apart(k, error):
        return 2 * k * (error + 2 * spec.cut_error)

    def square(k, error):
        return 2 * k * (error**2 + 2 * spec.cut_error**2)

    def first(too_far):
        return least(lambda k: k > 0 and too_far(k), spec.seams) or 0

    tolerance = spec.tolerance
    missed = first(lambda k: apart(k, spec.seam_error) > tolerance)
    likely_missed = first(lambda k: square(k, spec.seam_error) > tolerance**2)
    twice_missed = first(lambda k: 4 * square(k, spec.seam_error) > tolerance**2)
    return {
        "worst": apart(spec.seams, spec.seam_error),
        "likely": root_up(square(spec.seams, spec.seam_error)),
        "first_missed": missed,
        "likely_first_missed": likely_missed,
        "largest_seam_error": largest(lambda error: apart(spec.seams, error) <= tolerance, tolerance),
        "likely_largest_seam_error": largest(lambda error: square(spec.seams, error) <= tolerance**2, tolerance),
        "twice_likely_first_missed": twice_missed,
        "twice_likely_largest_seam_error":
            largest(lambda error: 4 * square(spec.seams, error) <= tolerance**2, tolerance),
        "twice_likely_meets": int(twice_missed == 0),
        "twice_likely_cuts_meet": int(4 * square(spec.seams, 0) <= tolerance**2),
        "meets": int(missed == 0),
        "likely_meets": int(likely_missed == 0),
        "cuts_meet": int(apart(spec.seams, 0) <= tolerance),
        "likely_cuts_meet": int(square(spec.seams, 0) <= tolerance**2),
    }
