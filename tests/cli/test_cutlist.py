"""Cut lists, substitutes, windows on a print and stacks of layers, on the command line.

SPDX-License-Identifier: MIT

Where a source is named in words, it is the publication the figure was printed in; "sum" is worked out beside the test.
"""
from __future__ import annotations

from program import Muslin, inches


def test_two_sizes_of_squares_take_seven_strips(muslin: Muslin) -> None:
    # 52 4-inch and 20 3-inch squares (public forum): 11 and 14 a strip, 5 strips and 2, 26 in at 44 in usable.
    found = muslin.answer("cutlist", "52 of 4 in", "20 of 3 in", "--usable", "44")
    assert [(size["strips"], size["pieces_from_each_strip"]) for size in found["sizes"]] == [(5, 11), (2, 14)]
    assert (found["strips"], inches(found["cloth_length"])) == (7, 26)
    # Sum: 1012 sq in over 44 in; 5 strips of 4 in hold 52 from 44 in on, 4 strips from 52 in on.
    assert (inches(found["area_bound"]), inches(found["narrowest_usable_width"])) == (23, 44)
    assert inches(found["less_cloth_if_wider_by"]) == 8
    assert len(found["warnings"]) == 1


def test_the_sheet_names_cut_sizes_in_the_order_of_the_work(muslin: Muslin) -> None:
    words = muslin.words("cutlist", "52 of 4 in", "20 of 3 in", "--usable", "44")
    assert words.startswith("72 pieces take 26 in of cloth 44 in wide (usable): 7 strips.")
    assert words.index("52 pieces cut 4 in by 4 in") < words.index("20 pieces cut 3 in by 3 in")
    assert "holds down to 44 in usable" in words and "test block" in words and "cut sizes" in words
    assert "By area alone it would be 23 in: no plan needs less" in words


def test_pieces_that_may_turn_are_turned_when_that_takes_less(muslin: Muslin) -> None:
    # Sum: turned 8 a strip, 3 strips of 8 1/2 in, 25 1/2; as listed 4 a strip, 6 strips of 4 1/2 in, 27.
    row = "24 of 8 1/2 x 4 1/2 in"
    assert inches(muslin.answer("cutlist", row)["cloth_length"]) == 27
    turned = muslin.answer("cutlist", row + " turn")
    assert inches(turned["cloth_length"]) == 25.5
    assert turned["sizes"][0]["pieces_lie_turned"]
    assert inches(muslin.answer("cutlist", row + " turn", "--print", "stripe-along")["cloth_length"]) == 27
    assert "these lie turned a quarter: 8 1/2 in along the cloth" in muslin.words("cutlist", row + " turn")


def test_a_size_without_a_unit_has_that_of_the_one_behind_it(muslin: Muslin) -> None:
    found = muslin.answer("cutlist", "20 of 12 x 20 cm", "--usable", "110 cm")
    assert found["sizes"][0]["cut_across"]["ticks"] == 12 * 3200
    assert found["sizes"][0]["cut_along"]["ticks"] == 20 * 3200
    mixed = muslin.answer("cutlist", "20 of 12 in x 20 cm")["sizes"][0]
    assert (mixed["cut_across"]["ticks"], mixed["cut_along"]["ticks"]) == (12 * 8128, 20 * 3200)


def test_losses_are_counted_and_said(muslin: Muslin) -> None:
    # Sum: (40 - 1) / 6 1/2 = 6 a strip, 2 strips of 4 in, 1/2 in off the cloth.
    row = ("12 of 6 1/2 x 4", "--end-loss", "1", "--straighten", "1/2")
    assert inches(muslin.answer("cutlist", *row)["cloth_length"]) == 8.5
    assert "1 in is taken off each strip and 1/2 in off the cloth" in muslin.words("cutlist", *row)


def test_a_length_in_hand_gives_the_list_so_often(muslin: Muslin) -> None:
    # Sum: 24 pieces turned take 25 1/2 in; in 72 in lie 8 strips of 8 1/2, twice 3.
    found = muslin.answer("cutlist", "24 of 8 1/2 x 4 1/2 in turn", "--length", "2 yd")
    assert found["in_hand_gives"]["whole_lists"] == 2
    assert "gives the whole list 2 times" in muslin.words("cutlist", "24 of 8 1/2 x 4 1/2 in turn", "--length", "2 yd")
    row = ("3 of 10 in", "--usable", "31", "--end-loss", "1", "--straighten", "2")
    assert muslin.answer("cutlist", *row, "--length", "22")["in_hand_gives"]["whole_lists"] == 2
    assert muslin.answer("cutlist", *row, "--length", "21")["in_hand_gives"]["whole_lists"] == 1
    assert "at least 10 in" in muslin.complaint(1, "cutlist", *row, "--length", "11")


def test_fat_quarters_are_filled_size_by_size(muslin: Muslin) -> None:
    # Sum: 4 of 5 in a strip at 20 in, 4 strips, 3 in the first; 8 of 2 1/2 in, 2 strips of 4 1/2 in behind the fourth.
    words = ("14 of 5 in", "12 of 2 1/2 x 4 1/2", "--from", "fat-quarters")
    found = muslin.answer("cutlist", *words)
    assert (found["stock_needed"], inches(found["left_over_of_the_last"])) == (2, 4)
    assert [(size["from_stock_number"], size["to_stock_number"]) for size in found["sizes"]] == [(1, 2), (2, 2)]
    assert "stock_in_hand" not in found
    in_hand = muslin.answer("cutlist", *words, "--in-hand", "1")
    assert (in_hand["stock_missing"], in_hand["in_hand_gives"]["whole_lists"]) == (1, 0)
    text = muslin.words("cutlist", *words, "--in-hand", "8")
    assert "26 pieces from fat quarters of 20 in by 18 in: 2 of them" in text
    assert "You have 8: 6 are left over." in text and "all from number 2" in text


def test_half_strips_come_from_twelve_fat_quarters(muslin: Muslin) -> None:
    # Fat quarter conversion (public forum): 80 half strips, 7 a fat quarter.
    found = muslin.answer("cutlist", "80 of 22 x 2 1/2 in", "--from", "fat-quarters", "--width", "22")
    assert found["stock_needed"] == 12


def test_a_ten_inch_square_gives_four_of_five(muslin: Muslin) -> None:
    # Cutting up a 10 inch square (teacher's blog).
    found = muslin.answer("cutlist", "1 of 5 in", "--from", "squares", "--in-hand", "1")
    assert found["in_hand_gives"]["whole_lists"] == 4


def test_strips_of_the_right_width_are_not_trimmed(muslin: Muslin) -> None:
    assert "nothing to trim" in muslin.words("cutlist", "20 of 4 x 2 1/2 in", "--from", "strips")
    assert "nothing to trim" not in muslin.words("cutlist", "20 of 4 x 2 in", "--from", "strips")


def test_substitutes_stand_side_by_side_with_their_fabrics(muslin: Muslin) -> None:
    # Sum: 60 of 2 1/2 x 4 1/2 in: 16 a strip of 40 in, 4 strips, 18 in; 4 a strip and 2 strips a square: 8 squares; 8
    # and 4: 2 fat quarters; 8 and 2: 4 fat eighths.
    found = muslin.answer("substitute", "60 of 2 1/2 x 4 1/2 in", "--prints", "3")["instead"]
    assert [row["from"] for row in found] == ["yardage", "strips", "squares", "fat quarters", "fat eighths"]
    assert inches(found[0]["cloth_length"]) == 18
    assert not found[1]["possible"] and found[1]["does_not_fit"] == "60 of 2 1/2 x 4 1/2 in"
    assert [(row["needed"], row["fabrics"]) for row in found[2:]] == [(8, 3), (2, 2), (4, 3)]
    assert (found[2]["of_each_fabric_at_least"], found[2]["of_each_fabric_at_most"]) == (2, 3)
    words = muslin.words("substitute", "60 of 2 1/2 x 4 1/2 in", "--prints", "3")
    assert "squares of 10 in by 10 in: 8, 3 different fabrics, 2 or 3 of each" in words
    assert "strips of 40 in by 2 1/2 in: too small for 60 of 2 1/2 x 4 1/2 in" in words
    wide = muslin.answer("substitute", "1 of 50 in")["instead"]
    assert not any(row["possible"] for row in wide)
    assert "yardage 40 in wide: too narrow for 1 of 50 in" in muslin.words("substitute", "1 of 50 in")


def test_a_row_that_is_none_is_quoted(muslin: Muslin) -> None:
    for row in ("20 41", "x of 4", "of 4", "-1 of 4", "20 of", "2147483648 of 4", "99999999999999999999 of 4",
                "3 of " + "4" * 90):
        assert row[:60] in muslin.complaint(2, "cutlist", "--piece", row) and row != ""
    assert "no unit of length" in muslin.complaint(2, "cutlist", "2 of 4 x fish")
    assert "--piece" in muslin.complaint(2, "cutlist", "3 of 0 in")
    assert "--piece" in muslin.complaint(2, "substitute", "3 of 4 furlongs")


def test_a_piece_that_does_not_fit_is_quoted_with_what_would_do(muslin: Muslin) -> None:
    complaint = muslin.complaint(1, "cutlist", "3 of 4 in", "20 of 41 in")
    assert "41 in" in complaint and '"20 of 41 in"' in complaint
    complaint = muslin.complaint(1, "cutlist", "20 of 5 in", "--from", "strips")
    assert "2 1/2 in" in complaint and "at least 5 in" in complaint
    assert "--straighten" in muslin.complaint(2, "cutlist", "3 of 4 in", "--straighten", "-1")


def test_windows_on_a_print(muslin: Muslin) -> None:
    # Figuring pattern repeats (home magazine how-to): 96 / 27 up to 4 repeats, 108 in, 12 in wasted, one repeat more.
    found = muslin.answer("motif", "40", "--height", "96", "--pieces", "1", "--repeat", "27")
    assert (found["repeats_of_the_print"], inches(found["cloth_length"])) == (4, 108)
    assert inches(found["wasted_in_each_row"]) == 12
    assert "cloth_may_be_narrower_by" not in found
    shifted = muslin.answer("motif", "40", "--height", "96", "--pieces", "1", "--repeat", "27", "--any-start")
    assert inches(shifted["cloth_length"]) == 135
    # Sum: 3 a row in 40 in, 7 rows of 12 in; 3 yd hold 9 rows.
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12")
    small = muslin.answer(*words, "--cloth", "3 yd")
    assert (small["rows"], inches(small["cloth_length"]), small["pieces_from_it"]) == (7, 84, 27)
    assert "20 pieces cut 6 in by 6 in take 7 repeats of the print" in muslin.words(*words)


def test_windows_that_are_none_are_named(muslin: Muslin) -> None:
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12")
    assert "--motifs" in muslin.complaint(2, *words, "--motifs", "5")
    assert "--usable" in muslin.complaint(1, *words, "--usable", "11")
    assert "--cloth" in muslin.complaint(2, *words, "--cloth", "-1")


def test_stacks_of_identical_pieces(muslin: Muslin) -> None:
    # Sum: 40 / 10 = 4 strips of 3 in, 12 of the 24 in of a repeat; 6 layers and one repeat for the start: 168 in.
    found = muslin.answer("stack", "3", "--stacks", "40", "--per-strip", "10", "--repeat", "24", "--any-start")
    assert (found["strips_to_cut_through_all_layers"], found["repeats_of_the_print"]) == (4, 6)
    assert inches(found["cloth_length"]) == 168
    assert "--layers" in muslin.complaint(2, "stack", "3", "--stacks", "4", "--per-strip", "1", "--repeat", "24",
                                          "--layers", "0")
