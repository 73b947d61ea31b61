# SPDX-License-Identifier: MIT
"""The model itself against published figures, common practice and plain counting, without the library."""

import pathlib
import sys
from fractions import Fraction
from types import SimpleNamespace as Request

import pytest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))

from muslin_model import (accuracy, backing, base, fabric, finishing, length, seam, setting, shrinkage,  # noqa: E402
                          stripquilt, stripset, text)
from muslin_model import (backing, base, fabric, finishing, length, seam, setting, shape, stripquilt,  # noqa: E402
                          stripset, text)

INCH = 8128
QUARTER_INCH = Request(allowance=INCH // 4, take_up=0)
UP_TO_EIGHTH = Request(grid=INCH // 8, tolerance=0, direction=base.UP)


def inches(value):
    ticks = Fraction(value) * INCH
    assert ticks.denominator == 1
    return int(ticks)


def test_halving_finds_what_counting_finds():
    for limit in range(12):
        for most in range(12):
            counted = max(k for k in range(most + 1) if k <= limit)
            assert base.largest(lambda k: k <= limit, most) == counted
            first = next((k for k in range(most + 1) if k >= limit), None)
            assert base.least(lambda k: k >= limit, most) == first


def test_rounding_goes_where_it_is_told():
    """Ties go upwards, for negative numbers too; a tolerance lets a little be overlooked."""
    assert [base.up(Fraction(n, 2)) for n in (-3, 3)] == [-1, 2]
    assert [base.down(Fraction(n, 2)) for n in (-3, 3)] == [-2, 1]
    assert [base.nearest(Fraction(n, 2)) for n in (-3, 3)] == [-1, 2]
    a_little_over = Request(grid=10, tolerance=3, direction=base.UP)
    assert [base.grid_point(n, a_little_over) for n in (12, 13, 14)] == [10, 10, 20]


def test_a_root_lies_between_its_neighbours():
    for square in [*range(50), 2**61, 2**61 + 1, 3 * 2**60]:
        low, high = base.root_between(square)
        assert low * low <= square <= high * high and high - low <= Fraction(1, base.FINE)


def test_the_diagonal_of_a_sixteen_inch_block_depends_on_the_constant():
    """Tani's chart, setting and corner triangles: 23 7/8 by 1.414, 24 by the root (1 1/4 in added)."""
    assert length.times_root2(inches(16), UP_TO_EIGHTH)["value"] + inches("5/4") == inches(24)


def test_lengths_are_read_as_people_write_them():
    two_and_a_half = inches("5/2")
    for written in ["2 1/2", "2-1/2", "2\u00bd", "2.5", "2 1/2 in",
                    "2\u00a0\u00bd\u2033", " 2 1\u20442\u201d ", "6.35 cm",
                    "63.5mm"]:
        read = text.parse(written.encode())
        assert (read["value"], read["exact"]) == (two_and_a_half, 1)
    assert text.parse(b"1 yd 4 1/2 in")["value"] == inches("81/2")
    assert text.parse(b"5' 6\"")["value"] == inches(66)
    assert text.parse("\u22121/4".encode())["value"] == -inches("1/4")
    assert text.parse(b"1/3")["exact"] == 0
    for wrong in [b"", b"2,5", b"1/0", b"1 in 1 yd", b"2 1", b"x", b"\xff", b"2 in 3 in", b"1 / 2"]:
        with pytest.raises(base.Refused):
            text.parse(wrong)


def test_a_set_of_six_strips():
    """Common practice, no source: 6 strips of 2 1/2 in make 12 1/2 in, finished 12 in."""
    row = seam.row_equal(inches("5/2"), 6, QUARTER_INCH)
    assert (row["unfinished"], row["finished"]) == (inches("25/2"), inches(12))


def test_a_set_that_came_out_short():
    """Cutting squares from strip sets, tutorial site Q&A: 8 3/8 in instead of 8 1/2 in over three seams."""
    found = seam.calibrate([inches("5/2")] * 4, inches("67/8"), INCH // 4)
    assert found["take_up_exact"] == Fraction(INCH, 24)


def yields(usable, clear):
    return stripset.yield_of(Request(strip_length=inches(usable), segment_cut=inches("13/2"), end_trim=inches("1/2"),
                                     resquare_loss=0, resquare_every=0, fold_clear=inches(clear)), False)


def test_six_segments_or_four():
    """Common practice, no source: six at 40 in with nothing kept clear, or at 42 in with 2 in; four with 1 in at 40."""
    assert [yields(40, 0)["segments"], yields(42, 2)["segments"], yields(40, 1)["segments"]] == [6, 6, 4]
    assert yields(40, 0)["shorter_by"] == 0


def test_two_tops_from_a_bundle():
    """Common practice, no source: 42 strips hold two tops of nine blocks with six strips left."""
    found = stripset.harvest(Request(strips=42, strips_per_set=6, segments_per_set=6, segments_per_block=2,
                                     blocks_per_top=9))
    assert (found["tops"], found["strips_left"]) == (2, 6)


def test_squares_from_a_yard():
    """Squares per yard by usable width: 5 in squares from a yard of 39, 40, 41 and 42 in."""
    spec = Request(width=0, length=inches(36), piece_width=inches(5), piece_length=inches(5), loss_across=0,
                   loss_along=0)
    counts = []
    for width in (39, 40, 41, 42):
        spec.width = inches(width)
        counts.append(fabric.pieces(spec, False)["pieces"])
    assert counts == [49, 56, 56, 56]


def test_a_border_with_cornerstones():
    """38 1/2 x 50 in with a 4 in border becomes 46 1/2 x 58 in."""
    spec = Request(unfinished_width=inches("77/2"), unfinished_length=inches(50), finished_border=inches(4),
                   allowance=INCH // 4, take_up=0, usable_width=inches(40), mitre_extra=0, style=setting.CORNERSTONES,
                   join=setting.STRAIGHT)
    found = setting.border(spec, False)
    assert (found["unfinished_width"], found["unfinished_length"]) == (inches("93/2"), inches(58))
    assert (found["side_cut_length"], found["top_cut_length"]) == (inches(50), inches("77/2"))


@pytest.mark.parametrize("wanted, width, least, printed", [
    (55, "5/2", "107/8", 12), (18, "5/2", "61/8", 7), (110, "5/2", "73/4", 18), (220, "3/2", "157/8", 19),
    (340, "3/2", "191/8", 23), (480, "3/2", "225/8", 28)])
def test_printed_squares_for_bias_are_too_small(wanted, width, least, printed):
    """Waco Homespun Quilt Guild, continuous bias table, and two blogs: the area rule against the tube's geometry."""
    spec = Request(wanted=inches(wanted), strip_cut=inches(width), allowance=INCH // 4)
    assert finishing.bias_least_square(spec, UP_TO_EIGHTH, False)["square_cut"] == inches(least)
    assert finishing.tube(inches(printed), inches(printed), inches(width), INCH // 4, False)[1] < inches(wanted)


def backing_of(width, length_of_quilt, margin, cloth):
    return Request(quilt_width=inches(width), quilt_length=inches(length_of_quilt), margin_left=inches(margin),
                   margin_right=inches(margin), margin_top=inches(margin), margin_bottom=inches(margin),
                   fabric_width=inches(cloth), selvage=0, allowance=INCH // 2, end_loss=0, repeat=0, step=36 * INCH // 4,
                   print=fabric.PRINT_NONE)


def test_a_forgotten_seam_costs_a_panel():
    """80 x 56 in backing (public forum): two widths of 40 in give 79 in."""
    rows = backing.layouts(backing_of(56, 80, 0, 40), False)
    assert rows[backing.SEAMS_ACROSS - 1]["panels"] == 3


def test_three_panels_rounded_each_or_together():
    """112 x 88 in quilt (quilters' club forum): 8 1/4 yd by the panel, 8 yd on the total."""
    row = backing.layouts(backing_of(112, 88, 4, 42), True)[backing.SEAMS_ALONG - 1]
    assert (row["panels"], row["bought"], row["other_rounding"]) == (3, inches(297), inches(288))


def test_dealing_never_gives_a_block_two_segments_of_one_stack():
    for sets in range(2, 6):
        for height in range(1, 6):
            for segments in range(1, sets + 1):
                if sets * height % segments:
                    continue
                blocks = sets * height // segments
                dealt = stripquilt.dealt_blocks(sets * height, sets, blocks)
                assert all(len(set(block)) == segments for block in dealt)


def test_three_sets_paired_each_with_each_cannot_all_nest():
    dealt = stripquilt.dealt_blocks(18, 3, 9)
    assert {tuple(sorted(block)) for block in dealt} == {(1, 2), (1, 3), (2, 3)}
    assert stripquilt.fewest_turned(dealt, 3) == 3


def test_a_sample_says_how_large_to_make_the_quilt():
    """How to make a quilt finish at a certain size (blog, 2020): 20 in became 18, so 90 in is made 100 in."""
    exact = Request(grid=1, tolerance=0, direction=base.NEAREST)
    assert shrinkage.from_sample(inches(20), inches(18), inches(90), exact)["value"] == inches(100)
    quilt = Request(width=inches(90), length=0, quilting_across=0, quilting_along=0, washing_across=100_000,
                    washing_along=0)
    made = shrinkage.size_to_make(quilt, exact)
    assert (made["make_width"], made["multiplied_width"]) == (inches(100), inches(99))


def test_an_area_shrinks_by_more_than_its_sides():
    """Public forum: 36 x 42 in washed to 35 x 41 in, 2.78, 2.38 and 5.09 %."""
    found = shrinkage.measure(Request(before_width=inches(42), after_width=inches(41), before_length=inches(36),
                                      after_length=inches(35)))
    assert (found["change_along"], found["change_across"], found["change_area"]) == (-27778, -23810, -50926)


def test_an_error_in_each_seam_multiplies_by_the_seams():
    """Homeschool quilting notes: block construction; by chance eight seams count as the root of eight."""
    found = accuracy.row(Request(pieces=9, seams=8, seam_error=INCH // 32, cut_error=0))
    assert found["worst"] == inches("1/4")
    assert (found["likely"] - 1)**2 < 8 * (INCH // 32)**2 <= found["likely"]**2
# ---- shapes ---------------------------------------------------------------------------------------------------------

def corner(piece, x, y, **more):
    return Request(**{**dict(piece=piece, tip=shape.SHARP, x=x, y=y, allowance=INCH // 4, take_up=0, centre_x=0,
                             centre_y=0, radius=0, curve=shape.STRAIGHT), **more})


def drawn(piece, *places):
    return [corner(piece, x, y) for x, y in places]


SHEET = [(0, 0), (4, 0), (4, 4), (0, 4)]


def test_two_triangles_cover_a_square_and_one_does_not():
    low, high = drawn(0, (0, 0), (4, 0), (4, 4)), drawn(1, (0, 0), (4, 4), (0, 4))
    assert shape.check(drawn(-1, *SHEET) + low + high)["inside_edges"] == 2
    for rows in (low, low + drawn(1, (0, 0), (4, 0), (4, 4)), low + drawn(1, (0, 0), (4, 4), (0, 5))):
        with pytest.raises(base.Refused) as refused:
            shape.check(drawn(-1, *SHEET) + rows)
        assert refused.value.statuses == {"ERR_NOT_TILED"}


def test_only_counter_clockwise_polygons_that_do_not_cross_are_shapes():
    assert shape.is_simple(drawn(0, *SHEET))
    assert not shape.is_simple(drawn(0, *SHEET[::-1]))
    assert not shape.is_simple(drawn(0, (0, 0), (4, 4), (4, 0), (0, 4)))
    assert not shape.is_simple(drawn(0, (0, 0), (4, 0), (2, 0), (2, 2)))


def test_a_half_square_is_cut_seven_eighths_larger():
    """Common practice: the cut legs are 7/8 in longer than the finished ones."""
    rows = drawn(0, (0, 0), (3 * INCH, 0), (0, 3 * INCH))
    places = [(row["x"], row["y"]) for row in shape.template(rows, 0, Request(grid=INCH // 8, tolerance=0,
                                                                              direction=base.NEAREST))]
    assert places[1][0] - places[0][0] == inches(3 + Fraction(7, 8))
    assert places[2][1] - places[0][1] == inches(3 + Fraction(7, 8))


def test_regular_polygons_have_the_printed_measures():
    """Octagon 30 in wide: side 12.43 in (Math Central); hexagon 2.75 in from flat to flat: side 1.588 in (blog)."""
    to_tick = Request(grid=1, tolerance=0, direction=base.NEAREST)
    assert round(shape.regular(8, 2, 30 * INCH, to_tick)["side"] / INCH, 2) == 12.43
    assert round(shape.regular(6, 2, 11 * INCH // 4, to_tick)["side"] / INCH, 3) == 1.588
