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
    wider = found["less_cloth_if_wider"]
    assert [inches(wider[name]) for name in ("by", "usable_width", "saves")] == [8, 52, 4]
    assert [(size["pieces"], size["strips"]) for size in wider["sizes"]] == [(52, 4)]
    assert len(found["warnings"]) == 1


def test_the_sheet_names_cut_sizes_in_the_order_of_the_work(muslin: Muslin) -> None:
    words = muslin.words("cutlist", "52 of 4 in", "20 of 3 in", "--usable", "44")
    assert words.startswith("72 pieces take 26 in of cloth 44 in wide (usable): 7 strips.")
    assert words.index("52 pieces cut 4 in by 4 in") < words.index("20 pieces cut 3 in by 3 in")
    assert "44 in usable is the least width, and there is nothing to spare" in words
    assert "exactly on its edge" not in words and "test block" in words and "cut sizes" in words
    assert "By area alone it would be 23 in: no plan needs less" in words


def test_a_cloth_is_bought_in_the_steps_that_shops_cut(muslin: Muslin) -> None:
    # Sum: 26 in up to 6 eighths of a yard, 27 in; 2 strips of 9 in are 18 in, just 1/2 yd, the next step 5/8 yd; 12.5
    # cm up to 20 cm.
    found = muslin.answer("cutlist", "52 of 4 in", "20 of 3 in", "--usable", "44")
    assert (inches(found["buy"]), inches(found["buy_leaves"])) == (27, 1)
    assert "Buy 3/4 yd (27 in), rounded up to what shops cut (1/8 yd at a time): 1 in to spare." in muslin.words(
        "cutlist", "52 of 4 in", "20 of 3 in", "--usable", "44")
    exactly = ("cutlist", "18 of 4 x 9 in")
    assert (inches(muslin.answer(*exactly)["buy"]), inches(muslin.answer(*exactly)["buy_rather"])) == (18, 22.5)
    assert "leaves nothing to spare. 5/8 yd (22 1/2 in) is safer." in muslin.words(*exactly)
    assert "Buy 20 cm" in muslin.words("cutlist", "3 of 12.5 cm", "--units", "cm")
    # More than 2^30 ticks is no length that a shop cuts.
    assert "buy" not in muslin.answer("cutlist", "2000000000 of 40 in")
    assert "Buy" not in muslin.words("cutlist", "3 of 4 in", "--length", "1 yd")
    assert "Buy" not in muslin.words("cutlist", "0 of 4 in")


def test_a_wider_cloth_is_said_with_the_cutting_that_it_allows(muslin: Muslin) -> None:
    # Sum: turned 3 strips of 8 1/2 in, 25 1/2; 42 1/2 in hold 5 as listed, 5 strips of 4 1/2 in, 22 1/2.
    # Listed the other way round, it is turned then.
    words = muslin.words("cutlist", "24 of 8 1/2 x 4 1/2 in turn")
    assert "At 42 1/2 in usable, 2 1/2 in wider, 3 in less cloth would do:" in words
    assert "then not turned: 5 strips cut 4 1/2 in wide, together 5/8 yd (22 1/2 in)" in words
    assert "then turned a quarter: 5 strips cut 4 1/2 in wide" in muslin.words("cutlist", "24 of 4 1/2 x 8 1/2 in turn")
    # One strip for both would be 140000 in long, and no size is more than 2^30 ticks, about 132104 in.
    assert "would do:" not in muslin.words("cutlist", "2 of 70000 in", "--usable", "100000")


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
    words = muslin.words("cutlist", "24 of 8 1/2 x 4 1/2 in turn", "--length", "2 yd")
    assert "gives the whole list 2 times" in words and "Cut all 2 together, size by size:" in words
    # Sum: 8 turned pieces of 4 1/2 in are 36 in, for one list and for two; 72 in less 6 strips of 8 1/2 in.
    assert "cut like this, 36 in usable is the least width" in words
    assert "48 pieces cut 8 1/2 in by 4 1/2 in: cut 6 strips 8 1/2 in wide" in words
    assert "21 in of it is left over. Cut like this, it may be that much shorter, or 4 in narrower." in words
    assert "but no narrower" in muslin.words("cutlist", "8 of 5 in", "--length", "6")
    none = muslin.words("cutlist", "16 of 5 in", "--length", "6")
    assert "Your 6 in of cloth is not enough for the whole list." in none and "left over" not in none
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
    assert "What you have is not enough for the whole list." in muslin.words(
        "cutlist", *words, "--in-hand", "1")
    text = muslin.words("cutlist", *words, "--in-hand", "8")
    assert "26 pieces from fat quarters of 20 in by 18 in: 2 of them" in text
    assert "You have 8: 6 are left over." in text
    assert "cut 3 strips from no. 1, 1 strip from no. 2" in text and "cut 2 strips from no. 2" in text
    parts = [[(part["strips"], part["first_stock"], part["last_stock"], inches(part["begins_at"]))
              for part in size["from"]] for size in found["sizes"]]
    assert parts == [[(3, 1, 1, 0), (1, 2, 2, 0)], [(2, 2, 2, 5)]]
    # Sum: 4 x 5 in are 20; 3 x 5 in are 15 of 18.
    assert "each may be 3 in shorter, but 20 in is the least width: nothing to spare" in text
    assert "What you have gives the whole list 5 times" in text and "One list more needs 2 more." in text


def test_what_pre_cuts_have_to_spare_is_said_for_width_and_length(muslin: Muslin) -> None:
    # Sum: from 10 in squares 9 in across and 8 along, 10 and 8, 9 and 10, 10 and 10.
    def words(row: str) -> str:
        return muslin.words("cutlist", row, "--from", "squares")

    assert "each may be 1 in narrower, or 2 in shorter." in words("1 of 9 x 8 in")
    assert "each may be 2 in shorter, but 10 in is the least width: nothing to spare" in words("1 of 10 x 8 in")
    assert "each may be 1 in narrower, but 10 in is the least length: nothing to spare" in words("1 of 9 x 10 in")
    assert "10 in is the least width and 10 in the least length of each: nothing to spare" in words("1 of 10 in")


def test_half_strips_come_from_twelve_fat_quarters(muslin: Muslin) -> None:
    # Fat quarter conversion (public forum): 80 half strips, 7 a fat quarter.
    found = muslin.answer("cutlist", "80 of 22 x 2 1/2 in", "--from", "fat-quarters", "--width", "22")
    assert found["stock_needed"] == 12
    assert "cut 7 strips from each of no. 1 to 11, 3 strips from no. 12" in muslin.words(
        "cutlist", "80 of 22 x 2 1/2 in", "--from", "fat-quarters", "--width", "22")


def test_a_ten_inch_square_gives_four_of_five(muslin: Muslin) -> None:
    # Cutting up a 10 inch square (teacher's blog).
    found = muslin.answer("cutlist", "1 of 5 in", "--from", "squares", "--in-hand", "1")
    assert found["in_hand_gives"]["whole_lists"] == 4


def test_strips_of_the_right_width_are_not_trimmed(muslin: Muslin) -> None:
    assert "nothing to trim" in muslin.words("cutlist", "20 of 4 x 2 1/2 in", "--from", "strips")
    assert "nothing to trim" not in muslin.words("cutlist", "20 of 4 x 2 in", "--from", "strips")


def test_strips_have_their_width_the_other_way(muslin: Muslin) -> None:
    # Sum: strips 40 x 2 1/2 in: 9 and 10 of 4 in across, 36 and 40 in; 2 and 2 1/2 in of their width.
    def words(row: str) -> str:
        return muslin.words("cutlist", row, "--from", "strips")

    assert "each may be 4 in shorter, or 1/2 in narrower." in words("9 of 4 x 2 in")
    assert "1/2 in of the width of the last one is left over." in words("9 of 4 x 2 in")
    assert "each may be 4 in shorter, but 2 1/2 in is the least width: nothing to spare." in words("9 of 4 x 2 1/2 in")
    assert "each may be 1/2 in narrower, but 40 in is the least length: nothing to spare." in words("10 of 4 x 2 in")
    assert "2 1/2 in is the least width and 40 in the least length of each" in words("10 of 4 x 2 1/2 in")


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
    assert "squares of 10 in by 10 in: 8 needed, 3 different fabrics, 2 or 3 of each" in words
    assert "strips of 40 in by 2 1/2 in, only with pieces turned a quarter: 8 needed, 3 different fabrics" in words
    wide = muslin.answer("substitute", "1 of 50 in")["instead"]
    assert not any(row["possible"] for row in wide)
    assert "yardage 40 in wide (usable): too narrow for 1 of 50 in" in muslin.words("substitute", "1 of 50 in")


def test_pieces_that_fit_only_turned_are_said_to(muslin: Muslin) -> None:
    # Sum: a 2 1/2 in strip cut every 4 1/2 in gives 8 in 40 in: 8 strips for 60, 64 pieces; 18 in are just 1/2 yd.
    row = "60 of 2 1/2 x 4 1/2 in"
    strips = muslin.answer("substitute", row, "--prints", "20")["instead"][1]
    assert not strips["possible"] and strips["the_print_lets_turn"]
    assert (strips["turned"]["needed"], strips["turned"]["pieces_to_spare"]) == (8, 4)
    words = muslin.words("substitute", row, "--prints", "20")
    assert "only with pieces turned a quarter: 8 needed, 8 different fabrics, 1 of each, 4 pieces to spare" in words
    # A 10 in square holds 2 strips of 4: 8 squares hold 64.
    assert "8 needed, 8 different fabrics, 1 of each, 4 pieces to spare, from what is left of the last" in words
    # A 10 in square holds 4 strips of 4 pieces 2 1/2 in: of the first 1 is to spare, and 12 are in the others.
    rest = muslin.words("substitute", "3 of 2 1/2")
    assert "1 piece to spare, and 12 from what is left of the last" in rest
    assert "1/2 yd (18 in) leaves nothing to spare: better buy 5/8 yd (22 1/2 in)" in words
    assert "nothing to spare: 20 in by 18 in must be there in full, so measure first" in words
    assert "nothing to spare: the strips must be 2 1/2 in wide in full" in words
    assert "nothing to spare: the 10 in across must be there in full" in words
    assert "nothing to spare: the 9 in along must be there in full" in muslin.words("substitute", "1 of 3 x 9 in")
    assert "and this print must not be turned" in muslin.words("substitute", row, "--print", "one-way")
    allowed = muslin.answer("substitute", row + " turn", "--prints", "20")["instead"][1]
    assert (allowed["possible"], allowed["needed"], allowed["pieces_lie_turned"]) == (True, 8, True)
    assert "turned" not in allowed
    assert "with pieces turned a quarter" in muslin.words("substitute", row + " turn")
    complaint = muslin.complaint(1, "cutlist", row, "--from", "strips")
    assert "It fits turned a quarter" in complaint
    assert "turned" not in muslin.complaint(1, "cutlist", row, "--from", "strips", "--print", "two-way")


def test_what_turning_saves_is_said(muslin: Muslin) -> None:
    # Sum: 4 of 6 x 10 in: as listed 3 a strip of 20 in, 2 strips of 10 in, 2 fat quarters; turned 2 strips of 6 in, 1.
    words = muslin.words("substitute", "4 of 6 x 10 in")
    assert "if turned a quarter: 1 needed, 1 different fabric, 1 of each" in words
    assert "if turned a quarter: 6 in, 1 fabric" in words
    assert "turned a quarter" not in muslin.words("substitute", "4 of 6 x 10 in", "--print", "one-way").split(
        "fat eighths")[0]


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
    one = ("motif", "40", "--height", "96", "--pieces", "1", "--repeat", "27")
    found = muslin.answer(*one, "--whole-repeats")
    assert (found["repeats_of_the_print"], inches(found["cloth_length"])) == (4, 108)
    assert inches(found["wasted_in_each_row"]) == 12
    assert "cloth_may_be_narrower_by" not in found
    shifted = muslin.answer("motif", "40", "--height", "96", "--pieces", "1", "--repeat", "27")
    assert inches(shifted["cloth_length"]) == 135
    assert "4 repeats used + 1 to choose the start = 5 repeats" in muslin.words(
        "motif", "40", "--height", "96", "--pieces", "1", "--repeat", "27")
    # Three of them: 13 repeats, 351 in, of which the 12 behind the last window need not be there: 9 1/2 yd are 342 in.
    three = muslin.words("motif", "40", "--height", "96", "--pieces", "3", "--repeat", "27")
    assert "13 repeats of the print, 9 3/4 yd (351 in) of cloth 40 in wide (usable)." in three
    assert "Buy 9 1/2 yd (342 in), rounded up" in three and "339 in will do" in three
    assert "as wide as the cloth, 40 in usable: nothing to spare" in three
    assert "nothing to spare" not in muslin.words(*one, "--usable", "41")
    # Sum: 2 a row for certain in 40 in, 10 rows of 12 in; 3 yd hold 9 rows.
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12")
    small = muslin.answer(*words, "--cloth", "3 yd", "--whole-repeats")
    assert (small["rows"], inches(small["cloth_length"]), small["pieces_from_it"]) == (10, 120, 18)
    assert "20 pieces cut 6 in by 6 in take 10 rows: 10 repeats of the print, 3 1/3 yd (120 in)" in muslin.words(
        *words, "--whole-repeats")
    text = muslin.words(*words)
    assert "Try a window 5 1/2 in by 5 1/2 in, cut from paper" in text
    assert "The piece is cut 6 in by 6 in around it." in text
    assert "Try a window 5 in by 5 in" in muslin.words(*words, "--seam", "1/2")
    assert "the seams take all of them" in muslin.words(*words, "--seam", "3")


def test_a_cloth_in_hand_is_enough_for_certain_or_with_luck_or_not(muslin: Muslin) -> None:
    # Sum: 3 yd hold 9 rows of 12 in, each with 2 windows for certain and 3 with luck; 20 need 10 rows, 120 in.
    words = ("motif", "6", "--repeat", "12", "--repeat-width", "12", "--whole-repeats", "--cloth", "3 yd", "--pieces")
    text = muslin.words(*words, "20")
    assert "Not certain to be enough: 18 of 20 for certain, 27 with luck; 12 in more makes 20 certain." in text
    assert "Buy" not in text
    assert "Yes, it is enough: 18 for certain, 18 are wanted." in muslin.words(*words, "18")
    text = muslin.words(*words, "28")  # 14 rows, 168 in
    assert "No, it is not enough: 18 of 28 for certain, 27 even with luck; 60 in more makes 28 certain." in text
    assert "No, it is not enough: 1 of 3; 123 in more makes 3." in muslin.words(
        "motif", "30", "--height", "96", "--pieces", "3", "--repeat", "27", "--cloth", "6 yd")


def test_what_is_certain_of_a_print_is_told_from_luck(muslin: Muslin) -> None:
    # Sum: 12 + 6 in for the first window wherever it begins, 12 for the second, so 2 a row, 10 rows; 3 reach over 30 in
    # of 40, so the first must begin within 10 in: 7 rows. 3 a row from 42 in on.
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12")
    found = muslin.answer(*words, "--cloth", "3 yd")
    assert (found["rows"], found["repeats_to_buy"], inches(found["cloth_length"])) == (10, 11, 132)
    assert (found["from_each_row_for_certain"], found["rows_for_certain"]) == (2, 10)
    assert (found["from_each_row_at_most"], found["rows_with_luck"], inches(found["cloth_with_luck"])) == (3, 7, 96)
    assert inches(found["first_must_begin_within"]) == 10
    assert (found["pieces_from_it_for_certain"], found["pieces_from_it_at_most"]) == (16, 24)  # 12 + 8 x 12 of 108 in
    text = muslin.words(*words)
    assert "10 repeats used + 1 to choose the start = 11 repeats of the print" in text
    assert "2 pieces in each row, 10 rows, 3 2/3 yd (132 in)" in text
    assert "if the first whole motif begins within 10 in of the edge of the usable width: 3 pieces in each row, 7 " \
           "rows, 2 2/3 yd (96 in)" in text
    assert "On cloth 2 in wider 7 rows would do." in text
    exact = muslin.words(*words, "--whole-repeats")
    assert "The cloth may be 10 in narrower for these 10 rows." in exact and "On cloth 2 in wider 7 rows" in exact
    assert "10 rows, 3 1/3 yd (120 in)" in exact and "Measure that on the bolt" in exact
    for more in ((), ("--whole-repeats",)):
        assert "count them, and give --motifs" in muslin.complaint(1, *words, "--usable", "14", *more)
    assert "30 in usable is the least width for these 10 rows: nothing to spare" in muslin.words(
        *words, "--usable", "30", "--whole-repeats")


def test_a_cloth_in_hand_may_give_no_window(muslin: Muslin) -> None:
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12", "--cloth")
    # 12 in for the start, 6 for the first window, 12 for each further row: 18, 30 and 42 in.
    assert "gives no row" in muslin.words(*words, "17")
    text = muslin.words(*words, "37")
    assert "gives 2 rows: 4 pieces" in text and "with luck there are 6" in text
    assert "7 in of it is left over; 5 in more would give one more row." in text
    assert "Nothing of it is left over" in muslin.words(*words, "30")


def test_windows_that_are_none_are_named(muslin: Muslin) -> None:
    words = ("motif", "6", "--pieces", "20", "--repeat", "12", "--repeat-width", "12")
    assert "--motifs" in muslin.complaint(2, *words, "--motifs", "5")
    complaint = muslin.complaint(1, *words, "--usable", "11")
    assert "--usable" in complaint and "--repeat-width" not in complaint
    assert "--cloth" in muslin.complaint(2, *words, "--cloth", "-1")


def test_stacks_of_identical_pieces(muslin: Muslin) -> None:
    # Sum: 40 / 10 = 4 strips of 3 in, 12 of the 24 in of a repeat; 6 layers and one repeat for the start: 168 in.
    words = ("stack", "3", "--stacks", "40", "--per-strip", "10", "--repeat", "24")
    found = muslin.answer(*words)
    assert (found["strips_to_cut_through_all_layers"], found["repeats_of_the_print"]) == (4, 6)
    assert inches(found["cloth_length"]) == 168
    text = muslin.words(*words)
    assert "6 repeats used + 1 to choose the start = 7 repeats of the print, 4 2/3 yd (168 in) of cloth" in text
    assert "Only the first 12 in of each 24 in layer is used. Do not shorten the layers" in text
    # Of the last layer 12 in are used: 156 in.
    assert "Buy 4 3/8 yd (157 1/2 in)" in text and "4 1/3 yd (156 in) will do" in text
    assert inches(muslin.answer(*words, "--whole-repeats")["cloth_length"]) == 144
    full = muslin.words("stack", "3", "--stacks", "70", "--per-strip", "10", "--repeat", "22", "--straighten", "1")
    assert "All 22 in of each layer are used: nothing to spare." in full and "1 in is allowed" in full
    assert "Layers" not in muslin.words("stack", "3", "--stacks", "0", "--per-strip", "10", "--repeat", "22")
    assert "--layers" in muslin.complaint(2, "stack", "3", "--stacks", "4", "--per-strip", "1", "--repeat", "24",
                                          "--layers", "0")
