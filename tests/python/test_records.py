# SPDX-License-Identifier: MIT
"""Specs and results: what is left out, what is laid over, what comes back."""
import dataclasses
from typing import Any

import pytest

import muslin
from muslin import Edge, Join, Length, RunSpec, SeamSpec, StockSpec, Warning, YieldSpec


def inch(text: str) -> Length:
    return Length.parse(text)


def test_what_is_left_out_keeps_the_librarys_initial_value() -> None:
    assert muslin.stripset_yield(segment_cut="6 1/2 in") == muslin.stripset_yield(
        segment_cut="6 1/2 in", strip_length="40 in", end_trim="0", resquare_loss="0", resquare_every=0,
        fold_clear="0", from_one_end=False)


def test_keywords_are_laid_over_a_spec() -> None:
    usual = YieldSpec(segment_cut="6 1/2 in", end_trim="1/2 in", strip_length="42 in")
    assert muslin.stripset_yield(usual, strip_length="40 in") == \
        muslin.stripset_yield(segment_cut="6 1/2 in", end_trim="1/2 in", strip_length="40 in")
    assert usual.strip_length == "42 in"


def test_a_zero_is_laid_over_a_spec_too() -> None:
    usual = RunSpec(length="80 in", join=Join.STRAIGHT, allowance="1/4 in")
    assert muslin.run_plan(usual).loss_per_join == inch("1/2 in")
    assert muslin.run_plan(usual, allowance="0").loss_per_join == Length(0)


def test_a_flag_is_a_truth_value_and_can_be_taken_back() -> None:
    """40 in hold six segments of 6 1/2 in either way; 46 hold seven from one end and six from two."""
    long = YieldSpec(segment_cut="6 1/2 in", strip_length="46 in", from_one_end=True)
    assert muslin.stripset_yield(long).segments == 7
    assert muslin.stripset_yield(long, from_one_end=False).segments == 6


def test_a_flag_that_is_set_at_first_can_be_taken_away() -> None:
    """Sets are cut from one end unless one says otherwise: six of 6 1/2 in from 40, and 1 in more lies at the fold."""
    with muslin.Quilt() as quilt:
        fabric, width, length = quilt.fabric("blue"), quilt.fixed("2 in"), quilt.fixed("6 in")
        row = quilt.join([quilt.patch(fabric=fabric, width=width, height=length)] * 2)
        (one_end,) = muslin.Solution(quilt, row).stripsets()
        (both,) = muslin.Solution(quilt, row, from_one_end=False, fold_clear="2 in").stripsets()
        assert (one_end.segments_per_set, both.segments_per_set) == (6, 4)
        with pytest.raises(muslin.errors.RangeError, match="[Ff]old"):
            muslin.Solution(quilt, row, fold_clear="2 in")


def test_a_seam_is_a_spec_of_its_own() -> None:
    """6 in and two seams of 6 mm: 152.4 + 12 mm."""
    assert muslin.seam_cut_from_finished("6 in", SeamSpec(allowance="6 mm")) == inch("164.4 mm")


def test_lengths_come_back_as_lengths_counts_as_numbers_choices_as_enums() -> None:
    row = muslin.seam_row_equal("2 1/2 in", 6)
    assert (type(row.unfinished), type(row.pieces)) == (Length, int)
    assert type(muslin.stripset_yield(segment_cut="6 in").warnings) is tuple
    assert type(muslin.fabric_pieces(piece_width="5 in", piece_length="5 in").turned) is bool
    assert type(muslin.length_parse("1 in").unit) is muslin.LengthUnit


def test_warnings_come_back_one_by_one() -> None:
    """Washed next to unwashed, and a washed strip."""
    rows = [StockSpec(care=muslin.Care.WASHED), StockSpec(care=muslin.Care.UNWASHED)]
    assert muslin.stock_check(rows) == (Warning.MIXED_WASH, Warning.PRECUT_WASHED)
    assert muslin.stock_check(rows[1:]) == ()


def test_a_result_cannot_be_changed() -> None:
    row = muslin.seam_row_equal("2 1/2 in", 6)
    with pytest.raises(dataclasses.FrozenInstanceError):
        row.pieces = 7  # type: ignore[misc]


def test_results_compare_by_value() -> None:
    assert muslin.seam_row_equal("2 1/2 in", 6) == muslin.seam_row_equal(Length(20320), 6)
    assert hash(muslin.seam_row_equal("2 1/2 in", 6)) == hash(muslin.seam_row_equal("2 1/2 in", 6))


def test_a_row_of_the_wrong_kind_is_refused() -> None:
    wrong: Any = [StockSpec(), SeamSpec()]
    with pytest.raises(TypeError, match=r"rows\[1\] must be a StockSpec, not SeamSpec"):
        muslin.stock_check(wrong)


def test_a_spec_of_the_wrong_kind_is_refused() -> None:
    wrong: Any = SeamSpec()
    with pytest.raises(TypeError, match="spec must be a YieldSpec, not SeamSpec"):
        muslin.stripset_yield(wrong)
    with pytest.raises(TypeError, match="stock must be a StockSpec, not SeamSpec"):
        muslin.stock_size(wrong, Edge.STRAIGHT)


def test_no_rows_are_an_empty_list_of_warnings() -> None:
    assert muslin.stock_check([]) == ()


def test_a_request_may_be_kept_and_asked_of_several_calls() -> None:
    """Example of the header: 42 strips of 42 in give two tops, and every block of them is in some group."""
    wish = muslin.StripquiltSpec(strips=42, columns=3, rows=3, strip_length="42 in", end_trim="1/2 in",
                                 segment_cut="6 1/2 in")
    plan = muslin.stripquilt_plan(wish)
    groups = muslin.stripquilt_groups(wish)
    assert (plan.tops, plan.strips_left) == (2, 6)
    assert sum(group.blocks for group in groups) == plan.blocks == 18
    taken = sum(muslin.stripquilt_pressing(number, wish).segments for number in range(1, plan.sets + 1))
    assert taken == plan.segments == 36
