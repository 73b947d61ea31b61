"""Shrinkage and take-up on the command line, against published figures.

SPDX-License-Identifier: MIT

Where a source is named in words, it is the publication the figure was printed in; "geometry" is worked out beside the
test.
"""
from __future__ import annotations

from program import Muslin, inches


def test_a_sample_that_went_from_twenty_to_seventeen_lost_fifteen_per_cent(muslin: Muslin) -> None:
    # Q&A page: 20 in to 17 in is 15 % shrinkage; ISO 5077 writes it with a minus.
    found = muslin.answer("shrinkage", "--before-length", "20", "--after-length", "17")
    assert found["measured"] == [{"side": "length", "before": {"ticks": 162560, "text": "20 in", "exact": True},
                                  "after": {"ticks": 138176, "text": "17 in", "exact": True},
                                  "change": {"ppm": -150000, "text": "-15 %"}, "in_words": "shrank 15 %"}]
    assert "change_of_the_area" not in found


def test_an_area_is_told_beside_both_sides(muslin: Muslin) -> None:
    # Public forum: 36 x 42 in washed to 35 x 41 in: 2.78, 2.38 and 5.09 %.
    words = ("shrinkage", "--before-width", "42", "--after-width", "41", "--before-length", "36", "--after-length",
             "35")
    found = muslin.answer(*words)
    assert [side["change"]["ppm"] for side in found["measured"]] == [-23810, -27778]
    assert found["change_of_the_area"]["text"] == "-5.0926 %"
    text = muslin.words(*words)
    assert "The width went from 42 in to 41 in: it shrank about 2.4 %." in text
    assert "The area shrank about 5.1 %, which is neither of the two" in text


def test_a_sample_may_grow_or_stay(muslin: Muslin) -> None:
    words = ("shrinkage", "--before-width", "20", "--after-width", "20 1/2", "--before-length", "20", "--after-length",
             "20", "--decimal-comma")
    text = muslin.words(*words)
    assert "it grew 2,5 %" in text and "it stays as it is" in text


def test_a_change_below_one_per_cent_keeps_its_sign_and_comma(muslin: Muslin) -> None:
    # A blog's quilting sample: 20 in to 19 7/8 in, -0.625 %.
    found = muslin.answer("shrinkage", "--before-length", "20", "--after-length", "19,875", "--decimal-comma")
    assert found["measured"][0]["change"] == {"ppm": -6250, "text": "-0,625 %"}


def test_a_sample_says_how_large_to_make_the_quilt(muslin: Muslin) -> None:
    # How to make a quilt finish at a certain size (blog, 2020): a sample 20 -> 18 in; for 90 in make 100 in.
    words = ("shrinkage", "--length", "90", "--before-length", "20", "--after-length", "18")
    made = muslin.answer(*words)["make_by_the_sample"]
    assert [(side["side"], inches(side["make_finished"])) for side in made] == [("length", 100)]
    assert "Make the length 100 in finished (100 1/2 in unfinished, with a seam allowance of 1/4 in), to end at 90 in " \
           "finished." in muslin.words(*words)
    assert "--seam: " in muslin.complaint(2, *words, "--seam=-1")


def test_a_sample_is_rounded_once_up_to_an_eighth(muslin: Muslin) -> None:
    # The same blog: 20 -> 18 1/4 in. 90 x 20 / 18.25 = 98.63 in.
    made = muslin.answer("shrinkage", "--length", "90", "--before-length", "20", "--after-length",
                         "18 1/4")["make_by_the_sample"][0]
    assert inches(made["make_finished"]) == 98.75
    assert made["rounded_by"]["ticks"] > 0
    down = muslin.answer("shrinkage", "--length", "90", "--before-length", "20", "--after-length", "18 1/4", "--round",
                         "down", "--to", "1/2")["make_by_the_sample"][0]
    assert inches(down["make_finished"]) == 98.5


def test_shares_are_divided_away(muslin: Muslin) -> None:
    # Geometry: 60 / (0.98 x 0.95) = 64.45 in, 72 / 0.931 = 77.34 in; multiplying says 64.26 in and ends short.
    words = ("shrinkage", "--width", "60", "--length", "72", "--quilting", "2 %", "--washing", "5 %")
    width, length = muslin.answer(*words)["make"]
    assert (inches(width["make_finished"]), inches(length["make_finished"])) == (64.5, 77.375)
    assert abs(inches(width["must_measure_when_quilted"]) - 60 / 0.95) < 1 / 8128
    assert abs(inches(width["multiplying_would_say"]) - 60 * 1.02 * 1.05) < 1 / 8128
    assert inches(width["and_end_short_by"]) > 0.17
    text = muslin.words(*words)
    assert "Make the width 64 1/2 in finished (65 in unfinished, with a seam allowance of 1/4 in), to end at 60 in " \
           "finished." in text
    # 60 / 0.95 = 63.158, up: 63 11/64 (63.172); 64.5 x 0.98 = 63.21, so 63 1/4 in would fail a good quilt.
    assert "The width should measure about 63 3/16 in, and must measure 63 11/64 in or more (63 43/64 in from raw " \
           "edge to raw edge, with a seam allowance of 1/4 in)." in text
    assert "easy" not in text and "NOTHING" not in text
    washed = muslin.words("shrinkage", "--width", "60", "--washing", "5 %")  # 63 1/4 as made and as quilted
    assert "63 1/4 in is easy to measure by" in washed and "with NOTHING allowed for quilting" in washed
    assert "binding is sewn: - The width comes out at about 60 1/16 in." in text  # 64.5 x 0.931 = 60.05
    assert "Of the width, 2 % goes to quilting, and of what is left 5 % in the wash." in text
    assert "Note: adding 2 % and then 5 % to the width instead would give about 64 1/4 in" in text
    assert "divide by what is left" in text and "sample first" in text
    assert "--seam: " in muslin.complaint(2, *words, "--seam=-1")


def test_a_share_that_was_not_given_is_not_called_nothing(muslin: Muslin) -> None:
    washed = muslin.words("shrinkage", "--width", "60", "--washing", "5 %")
    assert "no share for quilting was given: nothing is allowed for it" in washed
    assert "adding 5 % to the width" in washed
    quilted = muslin.words("shrinkage", "--width", "60", "--quilting", "2 %")
    assert "no share for the wash was given" in quilted and "adding 2 % to the width" in quilted
    assert "Of the width nothing is taken to be lost." in muslin.words("shrinkage", "--width", "60", "--washing", "0 %")


def test_a_share_of_one_way_goes_before_that_of_both(muslin: Muslin) -> None:
    # Geometry: 90 / 0.9 = 100 across, 90 / 0.75 = 120 along.
    width, length = muslin.answer("shrinkage", "--width", "90", "--length", "90", "--washing", "10 %",
                                  "--washing-along", "25 %")["make"]
    assert (inches(width["make_finished"]), inches(length["make_finished"])) == (100, 120)
    width, length = muslin.answer("shrinkage", "--width", "90", "--length", "90", "--quilting", "10 %",
                                  "--quilting-across", "25 %", "--washing-across", "0 %")["make"]
    assert (inches(width["make_finished"]), inches(length["make_finished"])) == (120, 100)
    assert (width["lost_to_quilting"]["ppm"], length["lost_to_quilting"]["ppm"]) == (250000, 100000)


def test_only_what_is_asked_is_answered(muslin: Muslin) -> None:
    made = muslin.answer("shrinkage", "--width", "90", "--washing", "10 %")["make"]
    assert [side["side"] for side in made] == ["width"]
    assert "0 in short" not in muslin.text("shrinkage", "--width", "90", "--quilting", "0 %")


def test_the_batting_governs_unless_told_otherwise(muslin: Muslin) -> None:
    # Public forum, 2014: cotton batting 3 to 5 %; closely quilted, the batting governs. 95 / 0.95 = 100.
    words = ("shrinkage", "--width", "95", "--fabric", "2 %", "--batting", "5 %")
    found = muslin.answer(*words)
    assert found["governing"] == {"share": {"ppm": 50000, "text": "5 %"}, "source": "the batting",
                                  "larger": True}
    assert inches(found["make"][0]["make_finished"]) == 100
    assert "For the wash the larger share (the batting, 5 %) was used, not the sum of both" in muslin.words(*words)
    assert "the share of the fabric (2 %) was used" in muslin.words(*words, "--governs", "fabric")
    assert "the same share, 5 %; it was used once" in muslin.words(
        "shrinkage", "--width", "95", "--fabric", "5 %", "--batting", "5 %", "--governs", "larger")
    assert muslin.answer(*words, "--governs", "smaller")["governing"]["source"] == "the fabric"
    assert muslin.answer(*words, "--governs", "fabric")["governing"]["share"]["ppm"] == 20000
    assert muslin.answer("shrinkage", "--width", "95", "--fabric", "5 %", "--batting", "5 %", "--governs",
                         "larger")["governing"]["source"] == "both alike"


def test_a_made_quilt_becomes_smaller(muslin: Muslin) -> None:
    # Geometry: 100 x 0.98 = 98, x 0.95 = 93.1 in.
    words = ("shrinkage", "--width", "100", "--made", "--quilting", "2 %", "--washing", "5 %")
    side = muslin.answer(*words)["becomes"][0]
    assert inches(side["quilted"]) == 98
    assert abs(inches(side["washed"]) - 93.1) < 1 / 8128
    assert side["change"] == {"ppm": -69000, "text": "-6.9 %"}
    assert inches(muslin.answer(*words, "--to", "1/2")["becomes"][0]["washed"]) == 93
    assert inches(muslin.answer(*words, "--to", "1/2", "--round", "up")["becomes"][0]["washed"]) == 93.5
    assert "made 100 in, is 98 in when quilted" in muslin.words(*words)
    assert "is 100 in when quilted if quilting takes nothing, which is unlikely" in muslin.words(
        "shrinkage", "--width", "100", "--made", "--washing", "5 %")
    assert "in all it shrinks by 6.9 %" in muslin.words(*words)


def test_half_a_measure_is_refused(muslin: Muslin) -> None:
    assert "--after-width: " in muslin.complaint(2, "shrinkage", "--before-width", "20")
    assert "--before-length: " in muslin.complaint(2, "shrinkage", "--after-length", "20")
    complaint = muslin.complaint(2, "shrinkage", "--width", "90", "--before-length", "20", "--after-length", "18")
    assert "--before-width: " in complaint and "width" in complaint


def test_a_question_without_a_sample_or_shares_is_refused(muslin: Muslin) -> None:
    assert "--width: " in muslin.complaint(2, "shrinkage")
    assert "--width: " in muslin.complaint(2, "shrinkage", "--washing", "5 %")
    assert "--washing: " in muslin.complaint(2, "shrinkage", "--width", "60")


def test_a_sample_and_shares_together_are_refused(muslin: Muslin) -> None:
    sample = ("shrinkage", "--width", "90", "--before-width", "20", "--after-width", "18")
    assert "leave out" in muslin.complaint(2, *sample, "--washing", "5 %")
    assert "leave out" in muslin.complaint(2, *sample, "--quilting-along", "5 %")
    assert "leave out" in muslin.complaint(2, *sample, "--made")


def test_fabric_and_batting_go_together(muslin: Muslin) -> None:
    assert "--batting: " in muslin.complaint(2, "shrinkage", "--width", "60", "--fabric", "5 %")
    assert "--fabric: " in muslin.complaint(2, "shrinkage", "--width", "60", "--batting", "5 %")
    assert "no --washing" in muslin.complaint(2, "shrinkage", "--width", "60", "--fabric", "5 %", "--batting", "5 %",
                                              "--washing", "5 %")


def test_what_the_library_refuses_names_its_option(muslin: Muslin) -> None:
    assert "--washing: " in muslin.complaint(2, "shrinkage", "--width", "60", "--washing", "100 %")
    assert "--quilting: " in muslin.complaint(2, "shrinkage", "--width", "60", "--quilting", "100 %")
    assert "--width: " in muslin.complaint(2, "shrinkage", "--width=-60", "--washing", "5 %")
    assert "--before-width: " in muslin.complaint(2, "shrinkage", "--before-width", "0", "--after-width", "1")
    assert "--to: " in muslin.complaint(2, "shrinkage", "--width", "60", "--washing", "5 %", "--to", "0")
    assert "--to: " in muslin.complaint(2, "shrinkage", "--width", "60", "--made", "--washing", "5 %", "--to", "0")
    sample = ("shrinkage", "--width", "60", "--before-width", "20", "--after-width")
    assert "--before-width: " in muslin.complaint(2, *sample, "0")
    assert "--to: " in muslin.complaint(2, *sample, "18", "--to", "0")
    complaint = muslin.complaint(2, "shrinkage", "--width", "60", "--fabric", "100 %", "--batting", "5 %")
    assert "--fabric: " in complaint


def test_a_batch_asks_the_same_questions(muslin: Muslin) -> None:
    sample = {"command": "shrinkage", "length": "90 in", "before-length": "20 in", "after-length": "18 in"}
    shares = {"command": "shrinkage", "width": "95 in", "washing": "5 %", "made": True, "to": "1/8 in"}
    replies = muslin.batch(sample, shares)
    assert "100 in" in str(replies[0]) and "90 1/4 in" in str(replies[1])


def test_cloth_is_washed_with_what_both_ways_lose(muslin: Muslin) -> None:
    # Geometry: 144 / 0.96 = 150 in, 4 1/4 yd are 153; 42 x 0.97 = 40.74 in, 40 47/64 in in 64ths, down.
    words = ("prewash", "4 yd", "--usable", "42", "--across", "3 %", "--along", "4 %")
    found = muslin.answer(*words)
    assert (inches(found["to_wash"]), inches(found["length_lost"])) == (150, 6)
    assert abs(inches(found["usable_width_after"]) - 40.74) < 1 / 8128
    text = muslin.words(*words)
    assert "Wash 150 in to have 4 yd (144 in) afterwards: the length loses 6 in (4 %)." in text
    assert "Buy 4 1/4 yd (153 in), rounded up to what shops cut (1/8 yd at a time): 3 in to spare." in text
    assert "from 42 in to about 40 47/64 in (3 %)" in text and "more strips" in text
    assert "--across: " in muslin.complaint(2, "prewash", "4 yd", "--across", "100 %")
