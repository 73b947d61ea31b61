"""Single sums, checked against figures from outside the program.

SPDX-License-Identifier: MIT

Where a source is named in words, it is the publication the figure was printed in; "common practice" has no source;
"geometry" is worked out beside the test.
"""
from __future__ import annotations

import math

from program import Muslin, inches


def test_a_finished_square_is_cut_two_seams_larger(muslin: Muslin) -> None:
    # Moonlight Quilters Guild, Tip - On Point Settings: a 6 in setting square is cut 6 1/2 in.
    assert inches(muslin.answer("cut", "6")["pieces"][0]["cut"]) == 6.5
    assert muslin.text("cut", "6") == "Cut 6 1/2 in to finish at 6 in.\n"


def test_a_cut_strip_finishes_two_seams_smaller(muslin: Muslin) -> None:
    # Common practice: a 2 1/2 in strip shows 2 in.
    assert muslin.text("finished", "2 1/2") == "A piece cut 2 1/2 in finishes at 2 in.\n"


def test_several_sizes_are_answered_in_their_order(muslin: Muslin) -> None:
    pieces = muslin.answer("cut", "2", "4", "3 1/2")["pieces"]
    assert [inches(piece["finished"]) for piece in pieces] == [2, 4, 3.5]
    assert [inches(piece["cut"]) for piece in pieces] == [2.5, 4.5, 4]


def test_a_piece_has_its_own_allowance_on_each_edge(muslin: Muslin) -> None:
    # Geometry: 4 + 1/2 + 1/4 wide, 2 + 1/4 + 0 high.
    piece = muslin.answer("piece", "--width", "4", "--height", "2", "--left", "1/2", "--bottom", "0")
    assert (inches(piece["cut_width"]), inches(piece["cut_height"])) == (4.75, 2.25)


def test_six_strips_make_a_set_twelve_and_a_half_wide(muslin: Muslin) -> None:
    # Common practice, no source.
    row = muslin.answer("row", "2 1/2", "--pieces", "6")
    assert (inches(row["unfinished"]), inches(row["finished"])) == (12.5, 12)
    assert row["share_in_inner_and_outer_seams"] == {"ppm": 200000, "text": "20 %"}


def test_a_row_of_unequal_pieces_adds_up(muslin: Muslin) -> None:
    # Geometry: 2 1/2 + 1 1/2 + 3, less two inner seams of 1/2 in.
    assert inches(muslin.answer("row", "2 1/2", "1 1/2", "3")["unfinished"]) == 6


def test_three_strips_share_a_six_inch_block(muslin: Muslin) -> None:
    # Nine patch perfected (tutorial): cut 2 1/2 in.
    assert inches(muslin.answer("strip", "6", "--across", "3")["strip_cut"]) == 2.5


def test_a_strip_that_cannot_be_cut_is_rounded_as_asked(muslin: Muslin) -> None:
    # Geometry: 7/3 + 1/2 = 2.8333 in, up to eighths 2 7/8.
    assert inches(muslin.answer("strip", "7", "--across", "3", "--to", "1/8", "--round", "up")["strip_cut"]) == 2.875
    assert inches(muslin.answer("strip", "7", "--across", "3", "--to", "1/8", "--round", "down")["strip_cut"]) == 2.75


def test_a_doubled_block_keeps_its_seams(muslin: Muslin) -> None:
    # A guild's printed tip says 6 3/4 in, taking off one seam instead of two; 2 x (3 1/2 - 1/2) + 1/2 is 6 1/2.
    assert inches(muslin.answer("resize", "3 1/2", "--times", "2")["cut"]) == 6.5


def test_a_measured_set_tells_the_seam(muslin: Muslin) -> None:
    # A class handout: 4 strips cut 2 1/2 in measured 8 3/8 instead of 8 1/2 in; the split over seams is geometry.
    found = muslin.answer("calibrate", "2 1/2", "--pieces", "4", "--measured", "8 3/8")
    assert inches(found["planned_unfinished"]) == 8.5
    assert inches(found["short_by"]) == 0.125
    assert abs(inches(found["take_up_per_seam"]) - 0.125 / 3) < 1 / 8128


def test_a_later_square_is_cut_as_wide_as_the_kept_set(muslin: Muslin) -> None:
    # By the meaning of it: a segment that was to be as long as its set is wide becomes as long as the set measures.
    found = muslin.answer("calibrate", "2 1/2", "--pieces", "4", "--measured", "8 3/8", "--later", "8 1/2")
    assert inches(found["if_you_keep_these_sets"]["later_piece_cut_instead"]) == 8.375


def test_small_errors_add_up(muslin: Muslin) -> None:
    drift = muslin.answer("drift", "--seams", "16", "--error", "1/32", "--within", "1/4")
    assert inches(drift["error_of_the_row"]) == 0.5
    assert inches(drift["largest_error_per_seam"]) == 1 / 64


def test_a_set_gives_six_segments_on_the_edge(muslin: Muslin) -> None:
    # Common practice, no source: three 6 1/2 in from each end, 1/2 in trimmed at each end, need 40 in.
    found = muslin.answer("yield", "--segment", "6 1/2", "--usable", "40", "--trim", "1/2")
    assert (found["segments"], found["cut_from_each_end"]) == (6, 3)
    assert inches(found["strip_may_be_shorter_by"]) == 0
    assert len(found["warnings"]) == 1


def test_a_set_with_two_inches_kept_clear_needs_two_more(muslin: Muslin) -> None:
    found = muslin.answer("yield", "--segment", "6 1/2", "--usable", "42", "--trim", "1/2", "--fold-clear", "2")
    assert found["segments"] == 6
    assert inches(found["strip_may_be_shorter_by"]) == 0


def test_a_set_with_the_fold_kept_clear_gives_four(muslin: Muslin) -> None:
    found = muslin.answer("yield", "--segment", "6 1/2", "--usable", "40", "--trim", "1/2", "--fold-clear", "1")
    assert found["segments"] == 4


def test_a_set_is_as_long_as_its_shortest_strip(muslin: Muslin) -> None:
    found = muslin.answer("yield", "--segment", "6 1/2", "--usable", "44", "--usable", "40 1/2", "--usable", "42")
    assert inches(found["strip_length"]) == 40.5
    assert any("shortest" in warning for warning in found["warnings"])


def test_segments_need_sets_and_bundles(muslin: Muslin) -> None:
    # Quick rail fence from 2 1/2 in strips (handout): 42 blocks, 3 a set, 5 strips a set: 14 sets, 70 strips.
    need = muslin.answer("sets", "--segments", "42", "--per-set", "3", "--set", "5", "--bundle", "40")
    assert (need["sets"], need["strips"], need["bundles"], need["strips_to_spare"]) == (14, 70, 2, 10)


def test_a_bundle_of_forty_two_holds_two_tops(muslin: Muslin) -> None:
    # Common practice, no source.
    found = muslin.answer("bundle", "42", "--set", "6", "--per-set", "6", "--block", "2", "--blocks", "9")
    assert (found["sets"], found["segments"], found["blocks"]) == (7, 42, 21)
    assert (found["tops"], found["strips_left"]) == (2, 6)


def test_the_scarcest_print_counts(muslin: Muslin) -> None:
    found = muslin.answer("prints", "12:2", "9:3", "20:1")
    assert (found["sets"], found["scarcest_print"]) == (3, 2)
    assert [row["left"] for row in found["prints"]] == [6, 0, 17]


def test_prints_tell_what_is_missing(muslin: Muslin) -> None:
    found = muslin.answer("prints", "12:2", "9:3", "--sets", "4")
    assert (found["prints"][0]["left"], found["prints"][1]["missing"]) == (4, 3)


def test_two_segments_make_a_square_block(muslin: Muslin) -> None:
    # Common practice, no source.
    block = muslin.answer("block", "--segment", "6 1/2", "--set-width", "12 1/2", "--segments", "2")
    assert (inches(block["unfinished_width"]), inches(block["unfinished_height"])) == (12.5, 12.5)
    assert (inches(block["finished_width"]), block["square"]) == (12, True)


def test_nine_blocks_make_a_yard_square(muslin: Muslin) -> None:
    top = muslin.answer("top", "12", "--columns", "3", "--rows", "3", "--turn", "quarter")
    assert (top["blocks"], top["blocks_turned"]) == (9, 4)
    assert (inches(top["finished_width"]), inches(top["unfinished_length"])) == (36, 36.5)


def test_borders_grow_one_on_the_other(muslin: Muslin) -> None:
    # Geometry: 1 in round 36 1/2 gives 38 1/2; 4 in round that gives 46 1/2 in unfinished.
    borders = muslin.answer("border", "1", "4 in cornerstones", "--width", "36 1/2", "--length", "36 1/2")["borders"]
    assert [inches(border["unfinished_width"]) for border in borders] == [38.5, 46.5]
    assert inches(borders[1]["cornerstone_cut"]) == 4.5
    assert [inches(borders[0][side]) for side in ("side_cut_length", "top_cut_length")] == [36.5, 38.5]


def test_strips_are_joined_with_their_loss(muslin: Muslin) -> None:
    # Geometry: 8 strips of 40 in with 7 straight joins of 1/2 in give 316 1/2 in; 7 strips would give 277.
    run = muslin.answer("join", "294 in")
    assert (run["strips"], inches(run["joined_length"])) == (8, 316.5)


def test_a_binding_is_counted_as_in_print_when_joins_are_ignored(muslin: Muslin) -> None:
    # Public forum: 96 x 110 in, 12 in extra, 40 in usable: 424 in, 11 strips of 2 1/2 in, 27 1/2 in of cloth.
    binding = muslin.answer("binding", "--width", "96", "--length", "110", "--join", "butted")["binding"]
    assert (inches(binding["length_wanted"]), binding["strips"]) == (424, 11)
    assert inches(binding["cloth_length"]) == 27.5


def test_a_binding_wide_enough_for_both_sides_is_worked_out(muslin: Muslin) -> None:
    # Geometry: twice the sum of 1/4 in seam, 3/8 front, 1/8 thickness and 3/8 back.
    binding = muslin.answer("binding", "--width", "60", "--length", "80", "--front", "3/8", "--back", "3/8",
                            "--thickness", "1/8")
    assert inches(binding["across"]["cut_width"]) == 2.25
    assert inches(binding["binding"]["strip_cut_width"]) == 2.25


def test_a_bias_tube_follows_its_geometry(muslin: Muslin) -> None:
    # n = floor((b - 2 s)/(w sqrt 2)) rounds of a sqrt 2 each, less 2 s sqrt 2 at every join but the tube's own.
    rounds = math.floor((30 - 0.5) / (2.5 * math.sqrt(2)))
    length = rounds * math.sqrt(2) * 30 - (rounds - 1) * 0.5 * math.sqrt(2)
    bias = muslin.answer("bias", "--width", "30")
    assert bias["rounds"] == rounds
    assert 0 <= length - inches(bias["bias_length"]) < 1 / 8128


def test_batting_covers_with_its_margins(muslin: Muslin) -> None:
    # Longarm quilters' public pages: 60 x 80 in with 3 in margins needs 66 x 86 in.
    batting = muslin.answer("batting", "--width", "60", "--length", "80")
    assert (inches(batting["cut_width"]), inches(batting["cut_length"])) == (66, 86)


def test_a_backing_does_not_forget_its_seam(muslin: Muslin) -> None:
    # A public forum's answer puts two 40 in panels over 80 in; the seam takes 1 in, so they give 79.
    layouts = muslin.answer("backing", "--width", "80", "--length", "56", "--margin", "0")["layouts"]
    across = {layout["layout"]: layout for layout in layouts}
    assert across["seams-along"]["panels"] == 3


def test_a_sleeve_is_a_tube(muslin: Muslin) -> None:
    # Geometry: 60 - 2 x 1 long and 1 in hems at both ends; 2 x 4 + 1/2 + 2 x 1/4 wide.
    sleeve = muslin.answer("sleeve", "--width", "60")
    assert (inches(sleeve["sleeve_cut_length"]), inches(sleeve["sleeve_cut_width"])) == (60, 9)


def test_squares_come_from_a_fat_quarter(muslin: Muslin) -> None:
    # Number of squares from a fat quarter (public blog): 12 of 5 in from 18 x 22 in.
    assert muslin.answer("pieces", "5", "--width", "22", "--length", "18")["pieces"] == 12


def test_squares_come_from_strips_across_the_cloth(muslin: Muslin) -> None:
    # Public forum: 52 squares of 4 in at 44 in usable: 11 a strip, 5 strips, 20 in.
    strips = muslin.answer("strips", "4", "--pieces", "52", "--usable", "44")
    assert (strips["pieces_from_each_strip"], strips["strips"], inches(strips["cloth_length"])) == (11, 5, 20)


def test_fat_quarters_give_half_width_strips(muslin: Muslin) -> None:
    # Fat quarter conversion (public forum): 7 strips of 2 1/2 in from 18 in, so 80 need 12 pieces.
    stock = muslin.answer("stock", "--width", "21", "--length", "18", "--count", "11", "--strip", "2 1/2", "--strips",
                          "80")
    assert (stock["strips_from_each_piece"], stock["pieces_needed"], stock["pieces_missing"]) == (7, 12, 1)


def test_cloth_is_bought_in_the_shops_steps(muslin: Muslin) -> None:
    # Public forum: 112 in is 3.11 yd, so 3 1/8 or 3 1/4 yd.
    assert muslin.answer("buy", "112 in")["bought"]["text"] == "3 1/8 yd (112 1/2 in)"
    assert muslin.answer("buy", "112 in", "--step", "1/4 yd")["bought"]["text"] == "3 1/4 yd (117 in)"


def test_shrinking_cloth_is_divided_not_multiplied(muslin: Muslin) -> None:
    # A public article on shrinkage: a target of 90 in at 10 per cent needs 100 in.
    assert inches(muslin.answer("buy", "90 in", "--shrinkage", "10 %")["before_shrinking"]) == 100


def test_usable_width_loses_its_selvages(muslin: Muslin) -> None:
    assert inches(muslin.answer("usable", "44", "--selvage", "1/2")["usable_width"]) == 43


def test_a_length_is_written_in_every_unit(muslin: Muslin) -> None:
    # NIST Handbook 44: 1 in is 25.4 mm.
    length = muslin.answer("length", "2 1/2")
    assert (length["in_cm"]["text"], length["in_mm"]["text"]) == ("6.35 cm", "63.5 mm")


def test_lengths_add_up_and_scale(muslin: Muslin) -> None:
    assert inches(muslin.answer("length", "1 yd", "4 1/2 in", "--times", "2")["length"]) == 81


def test_the_diagonal_of_six_is_eight_and_a_half_up(muslin: Muslin) -> None:
    # Geometry: 8.4853 in.
    assert inches(muslin.answer("length", "6", "--find", "diagonal", "--to", "1/8", "--round", "up")["length"]) == 8.5


def test_the_hypotenuse_of_three_and_four_is_five(muslin: Muslin) -> None:
    assert inches(muslin.answer("length", "3", "4", "--find", "hypotenuse")["length"]) == 5


def test_every_row_of_a_table_has_its_source(muslin: Muslin) -> None:
    for table in ("batting", "precut", "fabric-width"):
        rows = muslin.answer("table", table)["rows"]
        assert rows and all(row["source"] for row in rows)


# ---- in words -------------------------------------------------------------------------------------------------------

def test_the_cure_says_which_way_to_move_the_needle(muslin: Muslin) -> None:
    # Geometry: 1/16 in short over two seams is 1/32 in a seam, 1/64 in for each of its two allowances.
    narrow = muslin.words("calibrate", "3", "--pieces", "3", "--measured", "7 15/16")
    assert "sew 1/64 in nearer the raw edge than now: at 15/64 in if the stitches were where you meant them" in narrow
    wide = muslin.words("calibrate", "3", "--pieces", "3", "--measured", "8 1/16")
    assert "sew at 17/64 in from the raw edge: 1/64 in farther from it than now" in wide


def test_a_yield_from_both_ends_loses_and_gains_two(muslin: Muslin) -> None:
    words = muslin.words("yield", "--segment", "6 1/2", "--usable", "41", "--trim", "1/2")
    assert "1 in shorter, down to 40 in; below that, two segments are lost, one at each end." in words
    assert "Two more segments, one from each end, need strips 12 in longer." in words


def test_a_yield_from_one_end_loses_and_gains_one(muslin: Muslin) -> None:
    words = muslin.words("yield", "--segment", "6 1/2", "--usable", "40", "--one-end")
    assert "1 in shorter, down to 39 in; below that, a segment is lost." in words
    assert "One more segment needs strips 5 1/2 in longer." in words


def test_bias_says_its_way_its_seam_and_what_the_area_rule_lacks(muslin: Muslin) -> None:
    # The area rule: sqrt(55 x 2 1/2) = 11.726 in, nearest 64th 11 23/32.
    words = muslin.words("bias", "--from", "square", "--wanted", "55", "--strip", "2 1/2")
    for part in ("cut the piece on the diagonal", "a tube offset by one strip", "Seam allowance 1/4 in",
                 "The area rule's about 11 23/32 in would be too small."):
        assert part in words


def test_an_insert_is_trimmed_to_its_panel(muslin: Muslin) -> None:
    words = muslin.words("backing", "--width", "72", "--length", "48")
    assert "insert strip of 3 pieces joined end to end" in words and "trim the joined strip to 80 in" in words


def test_a_border_alone_says_cut_and_finished(muslin: Muslin) -> None:
    words = muslin.words("border", "4 in cornerstones", "--width", "38 1/2", "--length", "50")
    assert "The border, 4 in finished: pieces cut 4 1/2 in wide. Cut two sides 50 in long" in words
    assert "With this border the top measures 46 1/2 in by 58 in unfinished (46 in by 57 1/2 in finished)." in words


def test_what_cloth_must_be_at_least_is_rounded_up_to_an_eighth(muslin: Muslin) -> None:
    # Geometry: 90 in / 0.97 = 92.78 in.
    assert muslin.answer("buy", "90 in", "--shrinkage", "3 %")["before_shrinking"]["text"] == "92 7/8 in"
    assert muslin.answer("buy", "229.1 cm", "--units", "cm")["needed"]["text"] == "229.5 cm"
