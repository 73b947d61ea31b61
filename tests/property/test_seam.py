# SPDX-License-Identifier: MIT
"""Cut, unfinished, finished against fractions."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import seam as model
from questions import INT64, agree, as_object, counts, few, mostly, requests, roundings, seams, sizes, take_ups
from muslin_model.base import SIZE_MAX

seam_specs = requests(allowance=seams, take_up=take_ups)
piece_specs = requests(finished_width=sizes, finished_height=sizes, left=seams, right=seams, top=seams, bottom=seams,
                       take_up=take_ups)


@given(sizes, seam_specs)
def test_cut_from_finished_and_back(size, seam):
    agree(lambda: ask("seam_cut_from_finished", size, seam),
          lambda: model.cut_from_finished(size, as_object(seam)))
    agree(lambda: ask("seam_finished_from_cut", size, seam),
          lambda: model.finished_from_cut(size, as_object(seam)))


@given(piece_specs)
def test_a_piece_with_four_allowances(spec):
    agree(lambda: ask("seam_piece", spec), lambda: model.piece(as_object(spec)))


@given(sizes, counts, seam_specs)
def test_a_row_of_equal_pieces(cut, pieces, seam):
    agree(lambda: ask("seam_row_equal", cut, pieces, seam),
          lambda: model.row_equal(cut, pieces, as_object(seam)))


@given(st.lists(sizes, min_size=1, max_size=6), seam_specs)
def test_a_row_of_unequal_pieces(cuts, seam):
    agree(lambda: ask("seam_row", cuts, seam), lambda: model.row(cuts, as_object(seam)))


@given(sizes, counts, seam_specs, roundings())
def test_the_strip_that_finishes_as_wished(finished, pieces, seam, rounding):
    agree(lambda: ask("seam_strip_for_finished", finished, pieces, seam, rounding),
          lambda: model.strip_for_finished(finished, pieces, as_object(seam), as_object(rounding)))


ratios = mostly(st.integers(1, 12), st.integers(1, 10**6), rarely=[0, 1, -1, *INT64])


@given(sizes, ratios, ratios, seam_specs, roundings())
def test_a_cut_size_resized_with_its_block(cut, numerator, denominator, seam, rounding):
    agree(lambda: ask("seam_resize_cut", cut, numerator, denominator, seam, rounding),
          lambda: model.resize_cut(cut, numerator, denominator, as_object(seam), as_object(rounding)))


@st.composite
def measured_sets(draw):
    cuts = draw(st.lists(mostly(st.just(20320), st.integers(5000, 50000), rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1]),
                         min_size=1, max_size=6))
    stitched = draw(seams)
    planned = sum(cuts) - 2 * stitched * (len(cuts) - 1)
    near = max(min(planned, SIZE_MAX), -SIZE_MAX)
    measured = draw(mostly(st.integers(near - 2000, near + 2000), rarely=[0, 1, sum(cuts), sum(cuts) + 1, -1]))
    return cuts, measured, stitched


def as_fractions(found):
    """The two exact fractions, of which the header says that they need not be in lowest terms."""
    return dict(found, take_up_exact=Fraction(found["per_seam_numerator"], found["per_seam_denominator"]),
                effective_exact=Fraction(found["effective_numerator"], found["effective_denominator"]))


@given(measured_sets())
def test_the_seam_that_was_really_sewn(question):
    cuts, measured, stitched = question
    agree(lambda: as_fractions(ask("seam_calibrate", cuts, measured, stitched)),
          lambda: model.calibrate(cuts, measured, stitched))


@st.composite
def carried_on(draw):
    strips = draw(few)
    total = draw(mostly(st.just(20320 * min(max(strips, 0), 20)), st.integers(1, SIZE_MAX), sizes,
                        rarely=[0, SIZE_MAX + 1]))
    return {"strips": strips, "cut_total": total, "later_cut": draw(sizes),
            "measured": draw(mostly(st.integers(max(total * 3 // 4, 0), max(total, 1)), sizes,
                                    rarely=[0, min(total, SIZE_MAX) + 1])),
            "allowance": draw(seams), "take_up": draw(take_ups)}


@given(carried_on(), roundings())
def test_carrying_on_with_a_set_that_came_out_wrong(spec, rounding):
    agree(lambda: ask("seam_carry_on", spec, rounding),
          lambda: model.carry_on(as_object(spec), as_object(rounding)))


@given(mostly(st.integers(-1000, 1000), rarely=[SIZE_MAX, -SIZE_MAX, SIZE_MAX + 1, -SIZE_MAX - 1, *INT64]), counts)
def test_how_errors_add_up(error, seam_count):
    agree(lambda: ask("seam_error_total", error, seam_count), lambda: model.error_total(error, seam_count))
    agree(lambda: ask("seam_error_limit", error, seam_count), lambda: model.error_limit(error, seam_count))


@given(mostly(st.integers(1, 2**61), st.integers(1, 10**6), rarely=[0, -1, *INT64]),
       mostly(st.integers(0, 10**6), st.integers(0, 2**61), rarely=[-1, *INT64]))
def test_the_share_that_seams_swallow(cut_area, finished_area):
    agree(lambda: ask("seam_share", cut_area, finished_area),
          lambda: model.seam_share(cut_area, finished_area))
