# SPDX-License-Identifier: MIT
"""Small errors added up, against the model, against other calls, and against 50 digits."""

import mpmath
from hypothesis import assume, given
from hypothesis import strategies as st

from asking import ask
from muslin_model import accuracy as model
from muslin_model.base import COUNT_MAX, SEAM_MAX, SIZE_MAX
from questions import agree, as_object, counts, few, mostly, requests, sizes

errors = mostly(st.integers(0, 16).map(lambda n: n * 127), st.integers(0, 1000), st.integers(0, SEAM_MAX),
                rarely=[0, 1, SEAM_MAX, SEAM_MAX + 1, -1])
seam_counts = mostly(st.integers(0, 40), st.integers(0, COUNT_MAX), rarely=[0, COUNT_MAX, COUNT_MAX + 1, -1])
small_errors = st.integers(0, 600)
pieces = st.integers(1, 60)


@given(requests(pieces=seam_counts, seams=seam_counts, seam_error=errors, cut_error=errors))
def test_a_row(spec):
    agree(lambda: ask("accuracy_row", spec), lambda: model.row(as_object(spec)))


@given(requests(pieces_across=few, pieces_down=few, columns=counts, rows=counts, seam_error=errors, cut_error=errors))
def test_a_top(spec):
    agree(lambda: ask("accuracy_top", spec), lambda: model.top(as_object(spec)))


@given(requests(seams=mostly(st.integers(1, 40), st.integers(1, COUNT_MAX), rarely=[0, COUNT_MAX, COUNT_MAX + 1]),
                seam_error=errors, cut_error=errors,
                tolerance=mostly(st.integers(0, 2000), sizes, rarely=[0, SIZE_MAX, SIZE_MAX + 1, -1])))
def test_seams_that_meet(spec):
    agree(lambda: ask("accuracy_meet", spec), lambda: model.meet(as_object(spec)))


@given(requests(seams=st.integers(1, 9), seam_error=st.integers(0, 9), cut_error=st.integers(0, 3),
                tolerance=st.integers(0, 60)))
def test_seams_that_meet_in_a_few_ticks(spec):
    agree(lambda: ask("accuracy_meet", spec), lambda: model.meet(as_object(spec)))


@given(st.integers(1, COUNT_MAX), st.integers(0, COUNT_MAX), st.integers(0, SEAM_MAX), st.integers(0, SEAM_MAX))
def test_the_likely_error_is_the_root_at_fifty_digits(pieces, seams, seam_error, cut_error):
    likely = ask("accuracy_row", {"pieces": pieces, "seams": seams, "seam_error": seam_error,
                                  "cut_error": cut_error})["likely"]
    with mpmath.workdps(50):
        root = mpmath.sqrt(mpmath.mpf(seams) * seam_error**2 + mpmath.mpf(2 * pieces) * cut_error**2)
        assert likely - 1 < root + mpmath.mpf(10)**-30 and root <= likely + mpmath.mpf(10)**-30


@given(st.integers(1, COUNT_MAX), st.integers(0, SEAM_MAX), st.integers(0, SEAM_MAX))
def test_likely_rows_are_apart_by_the_root_at_fifty_digits(seams, seam_error, cut_error):
    likely = ask("accuracy_meet", {"seams": seams, "seam_error": seam_error, "cut_error": cut_error})["likely"]
    with mpmath.workdps(50):
        one_row = mpmath.sqrt(seams * (mpmath.mpf(seam_error)**2 + 2 * mpmath.mpf(cut_error)**2))
        apart = mpmath.sqrt(2) * one_row
        assert likely - 1 < apart + mpmath.mpf(10)**-30 and apart <= likely + mpmath.mpf(10)**-30


@given(pieces, small_errors, small_errors)
def test_chance_is_kinder_than_the_worst_case(pieces, seam_error, cut_error):
    row = ask("accuracy_row", {"pieces": pieces, "seams": pieces - 1, "seam_error": seam_error,
                               "cut_error": cut_error})
    assert row["likely"] <= row["worst"] == row["from_seams"] + row["from_cuts"]


@given(pieces, small_errors)
def test_the_seams_of_a_row_add_up_as_its_drift_does(pieces, seam_error):
    row = ask("accuracy_row", {"pieces": pieces, "seams": pieces - 1, "seam_error": seam_error, "cut_error": 0})
    assert row["worst"] == ask("seam_error_total", seam_error, pieces - 1)


@given(pieces, st.integers(0, 300).map(lambda n: 2 * n), small_errors)
def test_the_worst_row_is_one_sewn_with_every_error_the_same_way(pieces, seam_error, cut_error):
    planned = ask("seam_row_equal", 20000, pieces, {"allowance": 2032, "take_up": 0})["unfinished"]
    sewn = ask("seam_row_equal", 20000 + 2 * cut_error, pieces,
               {"allowance": 2032 - seam_error // 2, "take_up": 0})["unfinished"]
    row = ask("accuracy_row", {"pieces": pieces, "seams": pieces - 1, "seam_error": seam_error,
                               "cut_error": cut_error})
    assert row["worst"] == sewn - planned


@given(st.integers(1, 60), st.integers(0, 40), st.integers(0, 20000))
def test_the_largest_error_that_meets_does_and_the_next_does_not(seams, cut_error, tolerance):
    spec = {"seams": seams, "cut_error": cut_error, "tolerance": tolerance}
    met = ask("accuracy_meet", dict(spec, seam_error=0))
    assume(met["cuts_meet"])
    for kind in ("", "likely_", "twice_likely_"):
        error = met[kind + "largest_seam_error"]
        assert ask("accuracy_meet", dict(spec, seam_error=error))[kind + "meets"]
        assert not ask("accuracy_meet", dict(spec, seam_error=error + 1))[kind + "meets"]


@given(st.integers(1, 60), small_errors, st.integers(0, 40), st.integers(0, 20000))
def test_before_the_first_missed_seam_all_meet(seams, seam_error, cut_error, tolerance):
    spec = {"seam_error": seam_error, "cut_error": cut_error, "tolerance": tolerance}
    met = ask("accuracy_meet", dict(spec, seams=seams))
    for kind in ("", "likely_", "twice_likely_"):
        first = met[kind + "first_missed"]
        if first > 1:
            assert ask("accuracy_meet", dict(spec, seams=first - 1))[kind + "meets"]
        if first:
            assert not ask("accuracy_meet", dict(spec, seams=first))[kind + "meets"]
