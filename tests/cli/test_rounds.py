"""Log cabins, frames, medallions and pieced borders on the command line.

SPDX-License-Identifier: MIT

Sums are worked out beside each test; "geometry" is a figure with a root in it.
"""
from __future__ import annotations

import pytest
from program import Muslin, inches


def test_a_log_cabin_lists_its_logs_and_strips(muslin: Muslin) -> None:
    # Round a centre cut 2 1/2 in: 2 1/2, 3 1/2, 3 1/2, 4 1/2 in, and the block measures 4 1/2 in.
    found = muslin.answer("log-cabin", "2", "--log", "1", "--rounds", "1", "--blocks", "8")
    assert [inches(log["cut_length"]) for log in found["logs"]] == [2.5, 3.5, 3.5, 4.5]
    assert [log["side"] for log in found["logs"]] == ["top", "right", "bottom", "left"]
    assert inches(found["logs"][3]["unfinished_width_now"]) == inches(found["unfinished_height"]) == 4.5
    assert [log["closes_round"] for log in found["logs"]] == [False, False, False, True]
    # 8 x (2 1/2 + 3 1/2) = 48 in; 8 x (3 1/2 + 4 1/2) = 64 in; both two strips of 40 in
    assert [inches(row["running_length"]) for row in found["strips"]] == [48, 64]
    assert [row["strips_by_length_alone"] for row in found["strips"]] == [2, 2]


def test_a_log_cabin_is_written_out_as_one_sews(muslin: Muslin) -> None:
    text = muslin.words("log-cabin", "2", "--log", "1", "--rounds", "2", "--start", "left", "--turn", "anticlockwise")
    assert "{" not in text
    assert text.startswith("A log cabin of 2 rounds, 6 in by 6 in finished, 6 1/2 in by 6 1/2 in unfinished.")
    assert "Sew a test block first" in text
    assert "At the left, first fabrics: cut 2 1/2 in long and 1 1/2 in wide, to finish 2 in long." in text
    assert text.index("At the left") < text.index("At the bottom") < text.index("At the right")
    assert "must measure 4 1/2 in by 4 1/2 in unfinished now" in text
    assert text.index("must measure 4 1/2 in") < text.index("must measure 6 1/2 in")
    assert text.index("Press each seam away from the centre") < text.index("Round 1")


def test_centres_need_strips_too(muslin: Muslin) -> None:
    # 40 / 2 1/2 = 16 centres a strip: two strips for 20; 5 in, of which shops sell 9 in.
    words = ("log-cabin", "2", "--log", "1", "--rounds", "3", "--blocks", "20")
    centres = muslin.answer(*words)["centres"]
    assert (centres["from_each_strip"], centres["strips"], inches(centres["cloth_to_buy"])) == (16, 2, 9)
    text = muslin.words(*words)
    assert "For the centres, 2 strips cut 2 1/2 in wide across the cloth, 5 in of it (1/4 yd in the shop)" in text
    assert "buy more" in text
    # the plain way of cutting is no proof: 18 strips by length
    assert "At most 20 strips across the cloth" in text and "By length alone it would be 18" in text
    assert "the logs sewn last first, each from the strip at hand while it reaches, else from a new one." in text
    one = muslin.words("log-cabin", "2", "--finish", "12", "--rounds", "3", "--to", "1/8")
    assert "At most" not in one and "By length alone" not in one
    # 5 in are 12.7 cm, and shops there sell tens
    assert "(20 cm in the shop)" in muslin.words(*words, "--units", "cm")


def test_courthouse_steps_from_cut_strips_find_their_rounds(muslin: Muslin) -> None:
    # Cut 1 1/2 shows 1 in; from 2 in to 10 in: 4 rounds.
    words = ("log-cabin", "2 1/2", "--log", "1 1/2", "--cut", "--finish", "10", "--order", "courthouse")
    found = muslin.answer(*words)
    assert (found["rounds"], inches(found["finished_width"])) == (4, 10)
    assert [log["side"] for log in found["logs"][:4]] == ["top", "bottom", "right", "left"]
    assert "short_of_wanted_by" not in found["to_finish_as_wanted"]
    text = muslin.words(*words)
    assert "{" not in text and "make 4 rounds" in text


def test_a_log_is_found_and_what_is_missing_is_said(muslin: Muslin) -> None:
    # 10 in over 6 logs, to 1/8 in: 1 5/8; 2 + 6 x 1 5/8 = 11 3/4.
    found = muslin.answer("log-cabin", "2", "--finish", "12", "--rounds", "3", "--to", "1/8")["to_finish_as_wanted"]
    assert (inches(found["log_finished"]), inches(found["block_becomes_finished"])) == (1.625, 11.75)
    assert inches(found["short_of_wanted_by"]) == 0.25
    text = muslin.words("log-cabin", "2", "--finish", "12", "--rounds", "3", "--to", "1/8", "--round", "up")
    assert "1/2 in more than wanted" in text and "With a centre 1 1/2 in wide finished" in text
    assert "{" not in text


def test_widths_may_differ_by_round_or_log(muslin: Muslin) -> None:
    # 2 + 2 x (1 + 2) = 8
    found = muslin.answer("log-cabin", "2", "--rounds", "2", "--widths", "1", "--widths", "2")
    assert inches(found["finished_width"]) == 8
    assert [inches(row["strip_cut_width"]) for row in found["strips"]] == [1.5, 2.5, 1.5, 2.5]
    quarter = muslin.answer("log-cabin", "2", "--rounds", "2", "--log", "1", "--order", "quarter", "--usable", "0")
    assert (inches(quarter["finished_width"]), quarter["logs_in_a_block"]) == (4, 4)
    text = muslin.words("log-cabin", "2", "--rounds", "2", "--log", "1", "--order", "quarter", "--usable", "0")
    assert "A quarter log cabin" in text and "across the cloth" not in text and "{" not in text


@pytest.mark.parametrize("words, status, said", [
    (("2", "--log", "1"), 2, "--rounds"),
    (("2", "--rounds", "3"), 2, "--log"),
    (("2", "--finish", "9"), 2, "either the rounds"),
    (("2", "--finish", "9", "--log", "1", "--rounds", "2"), 2, "either the rounds"),
    (("2", "--finish", "3", "--log", "1"), 1, "Not one round"),
    (("1/2", "--cut", "--log", "2", "--rounds", "1"), 1, "its seams take 1/2 in"),
    (("1/4", "--cut", "--log", "2", "--finish", "9"), 1, "1/2 in"),
    (("2", "--finish", "2 1/8", "--rounds", "3", "--to", "1/8", "--round", "down"), 1, "Width of a log"),
    (("2", "--log", "1", "--rounds", "30"), 1, "40 in"),
    (("2", "--widths", "1", "--rounds", "3"), 2, "--widths"),
])
def test_a_log_cabin_that_cannot_be(muslin: Muslin, words: tuple[str, ...], status: int, said: str) -> None:
    assert said in muslin.complaint(status, "log-cabin", *words)


def test_a_frame_is_cut_up_to_an_eighth(muslin: Muslin) -> None:
    # Geometry: 6 + 4 + 1.2071 and 6 + 0.2071 in.
    found = muslin.answer("frame", "6", "--frame", "2")
    assert (inches(found["top_cut_long_edge"]), inches(found["side_cut_short_edge"])) == (11.25, 6.25)
    assert inches(found["strip_cut_width"]) == 2.5
    corners = found["top_template"]["cut_corners"]
    assert abs(inches(corners[1]["x"]) - 11.20711) < 1e-4
    assert inches(corners[3]["x"]) == inches(corners[3]["y"]) == 2.5
    text = muslin.words("frame", "6", "--height", "9", "--frame", "2")
    assert "{" not in text and "Sides: long cut edge 14 1/4 in" in text
    assert "The piece inside must be 6 1/2 in by 9 1/2 in unfinished." in text
    assert "--frame" in muslin.complaint(2, "frame", "6", "--frame", "0")


def test_a_frames_strip_holds_the_pieces_as_cut(muslin: Muslin) -> None:
    # Middles of 11 1/4 - 2 1/2 in: four of them and 2 1/2 in.
    text = muslin.words("frame", "6", "--frame", "2")
    assert "One strip 37 1/2 in long holds all four" in text
    assert "it takes 1 strip, 2 1/2 in of it (1/8 yd in the shop): all four pieces from it." in text
    assert "All four pieces: long cut edge 11 1/4 in, short cut edge 6 1/4 in." in text
    assert "These are rounded" in text and "Sides" not in text
    # 2 x (12 1/4 + 16 1/4 - 4) + 2 = 51 in: longer than the cloth is wide
    text = muslin.words("frame", "8", "--height", "12", "--frame", "1 1/2", "--to", "1/16")
    assert "One strip 51 in long" in text and "it takes 2 strips, 4 in of it" in text
    assert "a top or bottom and a side from each." in text and "Or cut the one strip along the cloth." in text
    # without seams nothing is rounded; 6 x 10 in and 2 in: 18 in hold two shorter pieces, 14 in a longer one
    words = ("frame", "6", "--height", "10", "--frame", "2", "--seam", "0", "--usable")
    assert "These are rounded" not in muslin.words(*words, "18")
    three = muslin.words(*words, "18")
    assert "3 strips" in three and "both shorter pieces from the third" in three
    assert "a piece from each." in muslin.words(*words, "14")
    assert "A piece is longer than a strip across cloth 13 in wide (usable)" in muslin.words(*words, "13")
    assert "across" not in muslin.words(*words, "0").lower()
    assert "two pieces from each." in muslin.words("frame", "6", "--frame", "2", "--usable", "30")
    assert "--to" in muslin.complaint(1, "frame", "6", "--frame", "2", "--to", "12", "--round", "down")


def test_a_medallion_grows_round_by_round(muslin: Muslin) -> None:
    # 20 + 2 x 2 = 24 = 6 x 4; 24 + 8 = 32; 32 + 5 = 37.
    words = ("medallion", "--centre", "20", "coping 1/2 to 3", "pieced 4", "plain 2 1/2")
    found = muslin.answer(*words)
    coping, pieced, plain = found["rounds"]
    assert (inches(coping["side_cut_width"]), inches(coping["top_cut_length"])) == (2.5, 24.5)
    assert (pieced["units"], pieced["corner_squares"], pieced["comes_out"]) == (24, 4, True)
    assert (inches(plain["side_cut_length"]), inches(plain["top_cut_length"])) == (32.5, 37.5)
    assert inches(found["finished_width"]) == 37
    text = muslin.words(*words)
    assert "{" not in text and "Round 2, pieced border." in text and "They come out." in text
    assert "Sew one unit of each pieced border first" in text
    # 2 in and two seams are 2 1/2 in, and 1/2 in to trim; in centimetres 6.35 and 1 cm
    assert ("Sides: two strips cut 3 in wide, to be trimmed, and as long as your top measures. By the arithmetic they "
            "are 2 1/2 in wide and 20 1/2 in long (2 in wide finished).") in text
    assert "or 1 cm" not in text
    assert inches(muslin.answer(*words, "--coping-extra", "1")["rounds"][0]["top_cut_width_to_trim"]) == 3.5
    assert "two strips cut 7.35 cm wide, to be trimmed" in muslin.words(*words, "--units", "cm")
    corner = muslin.answer("medallion", "--centre", "20", "coping 1/2 to 3 squares", "pieced 4")["rounds"][0]
    assert inches(corner["corner_cut_width"]) == 3
    # 24 + 1/2 and 32 + 1/2 in
    assert "then trim the top, as much on opposite sides, to 24 1/2 in by 24 1/2 in unfinished" in text
    assert ("Sides first; sew a corner piece to each end of top and bottom, which are then 32 1/2 in long unfinished, "
            "and sew them on.") in text
    assert "The top is then 24 in by 24 in finished (24 1/2 in by 24 1/2 in unfinished)." in text
    assert "Sew one unit" not in muslin.words("medallion", "--centre", "20", "plain 2")


def test_a_medallion_says_what_differs_and_what_is_left(muslin: Muslin) -> None:
    # 18 to 20 and 24 to 28: strips of 1 and 2 in. Then 20 + 6 = 26, 28 + 6 = 34; in units of 5: 1 and 4 left.
    words = ("medallion", "--centre", "18", "--height", "24", "coping 1 to 3", "pieced 3 by 4", "pieced 2 by 5")
    found = muslin.answer(*words)
    assert found["rounds"][0]["sides_differ_from_top"] is True
    last = found["rounds"][2]
    assert (inches(last["left_over_in_top_and_bottom"]), inches(last["left_over_in_each_side"])) == (1, 4)
    text = muslin.words(*words)
    assert "mind which is which" in text and "They do not come out" in text and "{" not in text
    assert "1 round with something left over" in text


def test_strips_may_be_needed_one_way_only(muslin: Muslin) -> None:
    # 20 and 24 in units of 4 need none; 18 needs 1 in.
    text = muslin.words("medallion", "--centre", "18", "--height", "24", "coping 0 to 3", "pieced 4")
    assert "No strips at top and bottom." in text
    text = muslin.words("medallion", "--centre", "24", "--height", "18", "coping 0 to 3", "pieced 4")
    assert "No strips at the sides." in text


def test_corners_may_be_said(muslin: Muslin) -> None:
    # Through the corners: 20 + 2 x 4 = 28 = 7 units, and 5 in each side.
    found = muslin.answer("medallion", "--centre", "20", "pieced 4 through", "plain 1 squares")
    pieced, plain = found["rounds"]
    assert (pieced["units_in_top_and_bottom_each"], pieced["units_in_each_side"]) == (7, 5)
    assert (plain["corner_squares"], inches(plain["corner_cut_width"])) == (4, 1.5)


@pytest.mark.parametrize("words, status, said", [
    (("plian 4",), 2, "\"plian 4\" is no round"),
    (("plain",), 2, "is no round"),
    (("plain 4 by 3",), 2, "is no round"),
    (("coping 4",), 2, "is no round"),
    (("plain wide",), 2, "--round"),
    (("pieced 4 by long",), 2, "--round"),
    (("plain 1", "pieced 4 by 0"), 2, "Round 2: Repeat of a pieced border"),
    (("plain 1", "coping 1 to 2", "plain 3"), 2, "Round 2: a coping round"),
    (("coping 1/2 to 1", "pieced 4"), 1, "Round 1: Widest coping strip (finished) is 1 in"),
    (("coping 2 to 1", "pieced 4"), 2, "Round 1: Widest coping strip"),
    (("plain 3 km",), 2, "km"),
])
def test_rounds_that_cannot_be(muslin: Muslin, words: tuple[str, ...], status: int, said: str) -> None:
    assert said in muslin.complaint(status, "medallion", "--centre", "20", *words)


def test_equal_coping_may_be_impossible(muslin: Muslin) -> None:
    # 18 and 24 differ by one and a half units of 4 in, and by two of 3 in.
    said = muslin.complaint(1, "medallion", "--centre", "18", "--height", "24", "--equal", "coping 1 to 3", "pieced 4")
    assert "Round 1: no strips of one width" in said
    found = muslin.answer("medallion", "--centre", "18", "--height", "24", "--equal", "coping 1 to 3", "pieced 3")
    assert found["rounds"][0]["sides_differ_from_top"] is False
    assert "centre" in muslin.complaint(2, "medallion", "--centre", "0", "plain 1").lower()


def test_spacers_share_what_units_leave(muslin: Muslin) -> None:
    # 50 = 12 x 4 + 2 x 1
    words = ("pieced-border", "50", "--repeat", "4", "--spacers", "2", "--to", "1/8")
    found = muslin.answer(*words)
    assert (found["units"], inches(found["spacer_finished"]), inches(found["spacer_cut"])) == (12, 1, 1.5)
    text = muslin.words(*words)
    assert "{" not in text and "is cut 1 1/2 in" in text and "left over" not in text
    # 12 x 4 1/8 = 49 1/2, 13 x 3 7/8 = 50 3/8; 4 1/6 and 3 11/13
    assert ("Or 12 units with a repeat of 4 1/8 in finished: together 1/2 in short of the side. Exactly, the repeat is "
            "50 in divided by 12, about 4 11/64 in.") in text
    assert "Or 13 units with a repeat of 3 7/8 in finished: together 3/8 in too long." in text
    exact = muslin.words("pieced-border", "50", "--repeat", "4")
    assert "Or 12 units with a repeat of about 4 11/64 in finished." in exact and "too long" not in exact
    # 51 = 12 x 4 + 3; three over two spacers, to whole inches up: 2 each, 1 too much; down: 1 each, 1 left
    for direction, said in (("up", "1 in too long"), ("down", "1 in is left over")):
        assert said in muslin.words("pieced-border", "51", "--repeat", "4", "--spacers", "2", "--to", "1", "--round",
                                    direction)


def test_units_may_fill_a_side_exactly_or_not_reach_it(muslin: Muslin) -> None:
    assert "fill 48 in finished exactly" in muslin.words("pieced-border", "48", "--repeat", "4")
    text = muslin.words("pieced-border", "3", "--repeat", "4")
    assert "Or 1 unit with" in text and "Or 0 units" not in text


def test_a_repeat_for_both_sides(muslin: Muslin) -> None:
    # 42 = 14 x 3, 48 = 16 x 3
    words = ("pieced-border", "42", "--other-side", "48", "--most", "4")
    found = muslin.answer(*words)
    assert inches(found["repeat_finished"]) == 3
    assert (found["units_in_the_side"], found["units_in_the_other_side"]) == (14, 16)
    assert "14 units and 16 units. A unit is 3 1/2 in unfinished along the border." in muslin.words(*words)
    assert inches(muslin.answer(*words, "--seam", "3/8")["unit_unfinished"]) == 3.75
    assert "divides both is 6 in; the repeat is half of it." in muslin.words(*words)
    assert "is that divided by 3." in muslin.words("pieced-border", "42", "--other-side", "48", "--most", "2")
    assert "No longer repeat divides both." in muslin.words("pieced-border", "42", "--other-side", "48", "--most", "6")
    muslin.complaint(1, "pieced-border", "42", "--other-side", "48", "--least", "4", "--most", "5")


def test_squares_on_point_in_a_border(muslin: Muslin) -> None:
    # Why I cut strips at 1.91 inches for that border (blog, 2008): 1.914 in for a diagonal of 2 in.
    words = ("pieced-border", "41", "--diagonal", "2", "--runs", "2")
    found = muslin.answer(*words)
    # up to 1/16 in: 1.9142, 2 + 1.2071 and 1 + 0.8536 in
    assert [inches(found[name]) for name in ("square_cut", "setting_square_cut", "end_square_cut")] == [
        1.9375, 3.25, 1.875]
    exact = muslin.answer(*words, "--to", "1/64 in", "--round", "down")
    assert inches(exact["square_cut"]) == 1 + 58 / 64
    assert (found["squares"], found["setting_triangles"], inches(found["left_over"])) == (40, 76, 1)
    text = muslin.words(*words)
    assert "{" not in text and "1 in is left over" in text
    # 20 x (1.41421 x 1.4375 - 2) = 0.659 in; cut 1 7/8 in, 20 x (1.41421 x 1.375 - 2) = -1.109 in
    assert "a run comes out about 11/16 in too long" in text and "until a run measures 40 in finished" in text
    # 1 15/16 - 1.91421 = 0.02329 in, half of it in each of two seams
    assert "take all four seams of every square about 1/64 in deeper, until" in text
    assert "or try a finer --to." in text and "--round nearest" not in text
    assert ("1/4 in outside the tips of the squares. Once the seams are adjusted so that a square is 2 in from tip to "
            "tip finished, it must be 2 1/2 in deep unfinished.") in text
    # 1.91421 - 1 7/8 = 0.03921 in
    down = muslin.words(*words, "--round", "down")
    assert "comes out about 1 1/8 in too short: take all four seams of every square about 1/64 in less deep" in down
    # up to 0.2 mm: 48.8 mm, 0.179 mm too much; 20 x 1.41421 x 0.179 mm = 5.1 mm in a run
    assert "every square a thread deeper" in muslin.words(*words, "--to", "0.2 mm")
    fine = muslin.words("pieced-border", "40", "--diagonal", "2", "--to", "0.01 mm")
    assert "outside the tips of the squares: it must be 2 1/2 in deep unfinished" in fine
    assert "Rounded so" not in muslin.words("pieced-border", "40", "--diagonal", "2", "--to", "0.01 mm")
    assert "fill a side" in muslin.words("pieced-border", "41", "--squares", "20")
    assert "--side" in muslin.complaint(1, "pieced-border", "1", "--diagonal", "2")


def test_a_pieced_border_says_what_it_needs(muslin: Muslin) -> None:
    assert "Give the repeat" in muslin.complaint(2, "pieced-border", "40")
    assert "longest repeat" in muslin.complaint(2, "pieced-border", "40", "--other-side", "48")
