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
    assert rows["all_meet_as_chance_has_it"] and "first_seam_likely_to_miss" not in rows
    assert inches(rows["apart_at_worst"]) == 0.25
    assert inches(rows["apart_as_chance_has_it"]) == 1 / 16
    assert 0 <= 1 / 256 - inches(rows["seam_error_allowed_at_worst"]) < TICK
    assert inches(rows["seam_error_allowed_as_chance_has_it"]) == 1 / 64
    text = muslin.words("accuracy", "--across", "9", "--seam-error", "1/64")
    assert "At worst seam 3 is the first to miss." in text and "As chance has it, all seams meet." in text


def test_all_meet_within_enough(muslin: Muslin) -> None:
    words = ("accuracy", "--across", "9", "--seam-error", "1/64", "--within", "1/4")
    rows = muslin.answer(*words)["neighbouring_rows"]
    assert rows["all_meet_at_worst"] and "first_seam_that_may_miss" not in rows
    assert "All seams meet, even at worst." in muslin.words(*words)
    assert "is the first to miss" not in muslin.words(*words)


def test_seams_likely_to_miss_are_told(muslin: Muslin) -> None:
    # sqrt(2 k) / 64 > 1/32 from k = 3 on, since 2 k must be above 4.
    words = ("accuracy", "--across", "9", "--seam-error", "1/64", "--within", "1/32")
    assert muslin.answer(*words)["neighbouring_rows"]["first_seam_likely_to_miss"] == 3
    assert "As chance has it, seam 3 is the first to miss." in muslin.words(*words)


def test_cuts_alone_can_be_too_much(muslin: Muslin) -> None:
    # 4 n c = 4 x 2 / 64 = 1/8 in at worst; sqrt(4 n) c = 2.83 / 64 in by chance.
    words = ("accuracy", "--across", "3", "--cut-error", "1/64", "--within")
    rows = muslin.answer(*words, "1/16")["neighbouring_rows"]
    assert (rows["cuts_alone_meet_at_worst"], rows["cuts_alone_meet_as_chance_has_it"]) == (False, True)
    assert "seam_error_allowed_at_worst" not in rows and "seam_error_allowed_as_chance_has_it" in rows
    assert "The cuts alone keep them from meeting at worst" in muslin.words(*words, "1/16")
    assert "The cuts alone are likely to keep them from meeting." in muslin.words(*words, "1/64")


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
    assert inch["off_as_chance_has_it"]["text"] == "0.023 in"
