"""Errors added up on the command line, against geometry.

SPDX-License-Identifier: MIT

A small error in each seam multiplies by the number of seams: Quilting notes: block construction (homeschool quilting
notes). The figures are geometry, worked out beside the tests.
"""
from __future__ import annotations

import math

from program import Muslin, inches

TICK = 1 / 8128


def test_the_error_of_a_seam_multiplies_by_the_seams(muslin: Muslin) -> None:
    # A row of nine pieces has eight seams: 8 / 32 = 1/4 in at worst, sqrt(8) / 32 by chance.
    found = muslin.answer("accuracy", "--across", "9", "--down", "1", "--seam-error", "1/32")
    width, height = found["measures"]
    assert (width["seams"], width["cut_edges"], inches(width["off_at_worst"])) == (8, 18, 0.25)
    assert 0 <= inches(width["off_as_chance_has_it"]) - math.sqrt(8) / 32 < TICK
    assert (height["seams"], inches(height["off_at_worst"])) == (0, 0)


def test_a_top_of_nine_patches(muslin: Muslin) -> None:
    # 2 seams a block, 4 x 3 - 1 = 11 across and 5 x 3 - 1 = 14 down; 24 and 30 cut edges.
    words = ("accuracy", "--across", "3", "--columns", "4", "--rows", "5", "--seam-error", "1/64", "--cut-error",
             "1/64")
    measures = muslin.answer(*words)["measures"]
    assert [inches(measure["off_at_worst"]) for measure in measures] == [8 / 64, 8 / 64, 35 / 64, 44 / 64]
    for measure, errors in zip(measures, (8, 8, 35, 44)):
        assert 0 <= inches(measure["off_as_chance_has_it"]) - math.sqrt(errors) / 64 < TICK
    text = muslin.words(*words)
    assert "The unfinished width of the top may be off by 35/64 in at worst" in text
    assert "(11 seams, 24 cut edges)" in text and "muslin calibrate" in text and "no published source" in text


def test_one_block_has_no_top(muslin: Muslin) -> None:
    assert "top" not in str(muslin.answer("accuracy", "--across", "3", "--seam-error", "1/64")["measures"])
    assert "of the top" in muslin.text("accuracy", "--across", "3", "--rows", "2", "--seam-error", "1/64")


def test_rows_meet_or_do_not(muslin: Muslin) -> None:
    # Two rows, 8 seams each: 1/32 in a seam apart at worst, so the third is the first beyond 1/16 in.
    rows = muslin.answer("accuracy", "--across", "9", "--seam-error", "1/64")["neighbouring_rows"]
    assert (rows["first_seam_that_may_miss"], rows["all_meet_at_worst"]) == (3, False)
    assert rows["all_meet_as_chance_has_it"] and "one_in_three_misses_from_seam" not in rows
    # twice sqrt(2 k) / 64 is beyond 4 / 64 from k = 3 on; with half the error it is not even at k = 8
    assert (rows["one_in_twenty_misses_from_seam"], rows["nineteen_in_twenty_meet"]) == (3, False)
    assert 0 <= 1 / 128 - inches(rows["seam_error_for_nineteen_in_twenty"]) < TICK
    assert inches(rows["apart_at_worst"]) == 0.25
    assert inches(rows["apart_as_chance_has_it"]) == 1 / 16
    assert 0 <= 1 / 256 - inches(rows["seam_error_allowed_at_worst"]) < TICK
    assert inches(rows["seam_error_for_two_in_three"]) == 1 / 64
    text = muslin.words("accuracy", "--across", "9", "--seam-error", "1/64")
    assert "At worst seam 3 is the first to miss." in text
    assert "By chance, from seam 3 on about one in twenty misses, or more." in text
    assert "Each seam takes 1/64 in too much or too little in all (half of that on each of its two allowances)." in text
    assert "Cuts are taken to be exact." in text


def test_all_meet_within_enough(muslin: Muslin) -> None:
    words = ("accuracy", "--across", "9", "--seam-error", "1/64", "--within", "1/4")
    rows = muslin.answer(*words)["neighbouring_rows"]
    assert rows["all_meet_at_worst"] and "first_seam_that_may_miss" not in rows
    assert "All seams meet, even at worst." in muslin.words(*words)
    assert "is the first to miss" not in muslin.words(*words)


def test_seams_likely_to_miss_are_told(muslin: Muslin) -> None:
    # sqrt(2 k) / 64 > 1/32 from k = 3 on, since 2 k must be above 4; twice that from k = 1 on, since 8 k is above 4.
    words = ("accuracy", "--across", "9", "--seam-error", "1/64", "--within", "1/32")
    assert muslin.answer(*words)["neighbouring_rows"]["one_in_three_misses_from_seam"] == 3
    assert "from seam 1 on about one in twenty misses, or more; by seam 3 about one in three." in muslin.words(*words)


def test_nineteen_in_twenty_may_meet_where_the_worst_case_misses(muslin: Muslin) -> None:
    # Two rows of 8 seams: 16 / 64 apart at worst; twice sqrt(16) / 64 = 8 / 64 by chance.
    words = ("accuracy", "--across", "9", "--seam-error", "1/64", "--within", "1/8")
    assert muslin.answer(*words)["neighbouring_rows"]["nineteen_in_twenty_meet"]
    assert "at least about nineteen in twenty meet at every seam" in muslin.words(*words)


def test_cuts_alone_can_be_too_much(muslin: Muslin) -> None:
    # 4 n c = 4 x 2 / 64 = 1/8 in at worst; sqrt(4 n) c = 2.83 / 64 in by chance.
    words = ("accuracy", "--across", "3", "--cut-error", "1/64", "--within")
    rows = muslin.answer(*words, "1/16")["neighbouring_rows"]
    assert (rows["cuts_alone_meet_at_worst"], rows["cuts_alone_let_two_in_three_meet"]) == (False, True)
    assert not rows["cuts_alone_let_nineteen_in_twenty_meet"]
    assert "seam_error_allowed_at_worst" not in rows and "seam_error_for_two_in_three" in rows
    assert "At worst the cuts alone keep them from meeting" in muslin.words(*words, "1/16")
    assert "The cuts alone make more than one in twenty miss" in muslin.words(*words, "1/16")
    assert "The cuts alone make more than one in three miss" in muslin.words(*words, "1/64")
    assert "Seams are taken to be exact. Each cut edge lies 1/64 in beside its line" in muslin.words(*words, "1/16")


def test_a_piece_without_seams_has_no_rows_to_meet(muslin: Muslin) -> None:
    assert "neighbouring_rows" not in muslin.answer("accuracy", "--across", "1", "--cut-error", "1/64")


def test_an_error_must_be_given(muslin: Muslin) -> None:
    assert "--seam-error: " in muslin.complaint(2, "accuracy", "--across", "3")
    assert "--across: " in muslin.complaint(2, "accuracy", "--seam-error", "1/64")


def test_what_the_library_refuses_names_its_option(muslin: Muslin) -> None:
    assert "--across: " in muslin.complaint(2, "accuracy", "--across", "0", "--seam-error", "1/64")
    assert "--seam-error: " in muslin.complaint(2, "accuracy", "--across", "3", "--seam-error=-1")
    assert "--cut-error: " in muslin.complaint(2, "accuracy", "--across", "3", "--cut-error=-1")
    assert "--within: " in muslin.complaint(2, "accuracy", "--across", "3", "--cut-error", "1/64", "--within=-1")


def test_small_errors_are_told_in_decimals_and_in_millimetres(muslin: Muslin) -> None:
    # 0.1 mm each: 2 seams and 6 cuts, 0.8 mm.
    found = muslin.answer("accuracy", "--across", "3", "--seam-error", "0.1 mm", "--cut-error", "0.1 mm", "--units",
                          "mm")
    assert found["measures"][0]["off_at_worst"]["text"] == "0.8 mm"
    inch = muslin.answer("accuracy", "--across", "3", "--seam-error", "1/64")["measures"][0]
    assert inch["off_at_worst"]["text"] == "1/32 in"
    assert inch["off_as_chance_has_it"]["text"] == "0.022 in"  # sqrt(2) / 64 = 0.0221, to the nearest
    # sqrt(35) / 64 = 0.0924 in is 5.92 sixty-fourths
    top = muslin.answer("accuracy", "--across", "3", "--columns", "4", "--seam-error", "1/64", "--cut-error", "1/64")
    assert top["measures"][2]["off_as_chance_has_it"]["text"] == "3/32 in"


def test_only_an_odd_number_of_seams_has_a_middle_one(muslin: Muslin) -> None:
    assert "middle seam" not in muslin.words("accuracy", "--across", "3", "--seam-error", "1/64")
    assert "middle seam" in muslin.words("accuracy", "--across", "4", "--seam-error", "1/64")
    assert "at most 1/16 in apart" in muslin.words("accuracy", "--across", "3", "--seam-error", "1/64")
