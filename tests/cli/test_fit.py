"""Quilts for beds, settings that come out at a size, counts across, patterns resized.

SPDX-License-Identifier: MIT

Where a source is named in words, it is the publication the figure was printed in; "geometry" is worked out beside the
test.
"""
from __future__ import annotations

import math

from program import Muslin, inches

QUEEN = ("--width", "60", "--length", "80")


def test_a_bed_quilt_is_the_mattress_and_its_drops(muslin: Muslin) -> None:
    # Standard quilt sizes for mattresses: 60 x 80, 12 deep: 84 x 92; 10 more for a pillow tuck.
    bed = muslin.answer("bed", *QUEEN, "--depth", "12", "--tuck", "10")
    assert (inches(bed["finished_width"]), inches(bed["finished_length"])) == (84, 102)
    assert bed["warnings"] == []
    words = muslin.words("bed", *QUEEN, "--depth", "12")
    assert "A quilt 84 in by 92 in finished, after quilting and washing, for a mattress 60 in by 80 in." in words
    assert "84 1/2 in by 92 1/2 in unfinished (seam allowance 1/4 in)" in words and "muslin shrinkage" in words
    assert "Nothing is allowed for a pillow tuck" in words
    assert "hang about 17 in" in words  # 12 sqrt 2 = 16.97
    assert "12 in over each side: as deep as the mattress" in words and "12 in at the foot" in words


def test_a_drop_of_ones_own_goes_over_the_rule(muslin: Muslin) -> None:
    # Class slides, Can you figure the amount of yardage to buy?: a king of 76 x 80 in with 12 in drops: 100 x 92.
    bed = muslin.answer("bed", "--width", "76", "--length", "80", "--drop", "12")
    assert (inches(bed["finished_width"]), inches(bed["finished_length"])) == (100, 92)
    foot = muslin.answer("bed", "--width", "76", "--length", "80", "--drop", "12", "--foot", "0")
    assert (inches(foot["finished_width"]), inches(foot["finished_length"])) == (100, 80)
    assert "It ends where the mattress ends" in muslin.words("bed", *QUEEN, "--drop", "12", "--foot", "0")


def test_each_rule_says_how_far_the_quilt_hangs(muslin: Muslin) -> None:
    # How to make a bed quilt the right size: the depth, the depth and 3 in, or down to the floor.
    for rule, drop in (("depth", 10), ("over-joint", 13), ("floor", 24)):
        bed = muslin.answer("bed", *QUEEN, "--depth", "10", "--height", "24", "--rule", rule)
        assert inches(bed["side_drop"]) == inches(bed["foot_drop"]) == drop
    beyond = muslin.answer("bed", *QUEEN, "--depth", "10", "--rule", "over-joint", "--beyond", "5")
    assert inches(beyond["side_drop"]) == 15
    assert "hide where mattress and base meet" in muslin.words("bed", *QUEEN, "--depth", "10", "--rule", "over-joint")
    assert "down to the floor" in muslin.words("bed", *QUEEN, "--height", "20", "--rule", "floor")


def test_a_square_corner_may_lie_on_the_floor_and_a_round_one_not(muslin: Muslin) -> None:
    # Geometry: 16 sqrt 2 is 22.63.
    square = muslin.answer("bed", *QUEEN, "--drop", "16", "--height", "22")
    assert square["corner_touches_floor"] and abs(inches(square["corner_hangs"]) - 16 * math.sqrt(2)) < 1 / 8000
    assert "lie on the floor" in muslin.words("bed", *QUEEN, "--drop", "16", "--height", "22")
    rounded = muslin.answer("bed", *QUEEN, "--drop", "16", "--height", "22", "--corner", "rounded")
    assert not rounded["corner_touches_floor"] and inches(rounded["corner_above_floor"]) == 6
    assert inches(rounded["corner_radius"]) == 16
    assert rounded["corner_cut_off"]["text"] == "6 5/8 in"  # 16 (sqrt 2 - 1) = 6.627
    words = muslin.words("bed", *QUEEN, "--drop", "16", "--height", "22", "--corner", "rounded")
    assert "bias binding" in words and "6 in to the floor is left" in words


def test_a_top_is_pieced_larger_for_the_quilting(muslin: Muslin) -> None:
    bed = muslin.answer("bed", *QUEEN, "--depth", "12", "--quilting", "2", "--head", "1")
    assert (inches(bed["top_finished_width"]), inches(bed["top_finished_length"])) == (86, 95)
    words = muslin.words("bed", *QUEEN, "--depth", "12", "--quilting", "2", "--head", "1")
    assert "Piece the top 86 in by 95 in finished, 86 1/2 in by 95 1/2 in unfinished" in words and "1 in at the head" in words


def test_a_crib_has_its_warning(muslin: Muslin) -> None:
    assert "sleep space" in muslin.words("bed", "--width", "27", "--length", "52", "--drop", "4")


def test_a_rule_without_its_depth_names_the_option(muslin: Muslin) -> None:
    assert "--depth: " in muslin.complaint(2, "bed", *QUEEN)


def test_a_quilt_in_hand_is_laid_on_the_bed(muslin: Muslin) -> None:
    # The magazine's figures turned round; geometry: 8, 15 and 17 make a right triangle.
    size = ("--quilt-width", "84", "--quilt-length", "92")
    lies = muslin.answer("cover", *size, *QUEEN, "--depth", "12")
    assert inches(lies["side_drop"]) == inches(lies["foot_drop"]) == 12 and lies["reaches_depth"]
    words = muslin.words("cover", *size, *QUEEN, "--depth", "12")
    assert "It just reaches the lower edge of the mattress on both sides and at the foot: there is no margin." in words
    assert "Nothing is allowed for a pillow tuck" in words
    words = muslin.words("cover", *size, *QUEEN, "--depth", "10")
    assert "it hangs 2 in below its lower edge on both sides and 2 in at the foot" in words
    assert "at the foot; on both sides it just reaches it" in muslin.words(
        "cover", "--quilt-width", "84", "--quilt-length", "94", *QUEEN, "--depth", "12")
    assert "on both sides; at the foot it just reaches it" in muslin.words(
        "cover", "--quilt-width", "86", "--quilt-length", "92", *QUEEN, "--depth", "12")
    assert "2 in wider and 1 in longer" in muslin.words("cover", *size, *QUEEN, "--depth", "13")
    assert "would have to be 10 in longer" in muslin.words("cover", *size, *QUEEN, "--depth", "12", "--tuck", "10")
    assert "would have to be 4 in wider" in muslin.words("cover", "--quilt-width", "80", "--quilt-length", "92", *QUEEN,
                                                         "--depth", "12")
    narrow = ("cover", "--quilt-width", "54", "--quilt-length")
    assert "3 in is missing on each side; it hangs 12 in at the foot" in muslin.words(*narrow, "92", *QUEEN)
    assert "3 in is missing on each side and 2 in at the foot" in muslin.words(*narrow, "78", *QUEEN)
    assert "2 in is missing at the foot; it hangs 12 in over each side" in muslin.words(
        "cover", "--quilt-width", "84", "--quilt-length", "78", *QUEEN)
    touching = muslin.answer("cover", "--quilt-width", "76", "--quilt-length", "95", *QUEEN, "--height", "16")
    assert inches(touching["corner_hangs"]) == 17 and inches(touching["corner_lies_on_floor"]) == 1


def test_every_setting_of_a_size_is_listed(muslin: Muslin) -> None:
    # By division: of 6, 6 1/2 ... 14 in only 6 and 12 go into 60 and 72.
    found = muslin.answer("fit", "--width", "60", "--length", "72", "--within", "0")
    assert [(inches(row["finished_block"]), row["columns"], row["rows"]) for row in found["settings"]] == \
        [(12, 5, 6), (6, 10, 12)]
    assert all(row["exactly_as_wanted"] for row in found["settings"])
    table = muslin.text("fit", "--width", "60", "--length", "72", "--within", "0").splitlines()
    assert any(line.split() == "1 straight 5 x 6 12 in - - 60 in 72 in 30".split() for line in table)
    largest = muslin.answer("fit", "--width", "60", "--length", "72", "--rank", "largest-block")["settings"]
    blocks = [inches(row["finished_block"]) for row in largest]
    assert blocks == sorted(blocks, reverse=True)
    assert "largest block first" in muslin.words("fit", "--width", "60", "--length", "72", "--rank", "largest-block")


def test_sashes_frames_and_diagonals_are_counted_in(muslin: Muslin) -> None:
    # How-to article on fitting sashed squares: 6 blocks of 12, sashes of 2, borders of 4 are 90 in.
    words = ("fit", "--width", "90", "--length", "90", "--within", "0", "--block", "12", "--sash", "2", "--border", "4")
    rows = muslin.answer(*words, "--setting", "sashed", "--setting", "framed")["settings"]
    assert [(row["setting"], row["columns"], row["rows"]) for row in rows] == [("sashed", 6, 6)]
    framed = muslin.words("fit", "--width", "94", "--length", "94", "--within", "0", "--block", "12", "--sash", "2",
                          "--border", "4", "--setting", "framed")
    assert "framed 6 x 6" in framed and "round the outside too" in framed
    # Geometry: 4 x 12 sqrt 2 is 67.88.
    point = ("fit", "--width", "68", "--length", "68", "--within", "1/4", "--block", "12", "--setting", "on-point")
    row = muslin.answer(*point)["settings"][0]
    assert (row["columns"], row["alternate_blocks"]) == (4, 9)
    assert abs(inches(row["finished_width"]) - 48 * math.sqrt(2)) < 1 / 8000
    assert "16 + 9" in muslin.text(*point) and "alternate blocks" in muslin.words(*point)


def test_a_list_may_be_cut_short_and_says_so(muslin: Muslin) -> None:
    words = ("fit", "--width", "60", "--length", "72", "--setting", "sashed", "--border-most", "6")
    short = muslin.answer(*words, "--list", "3")
    whole = muslin.answer(*words, "--list", "0")
    assert len(whole["settings"]) == whole["settings_found"] == short["settings_found"] > 20
    assert short["settings"] == whole["settings"][:3]
    assert f"the first of {whole['settings_found']}" in muslin.words(*words, "--list", "3")
    few = muslin.answer(*words, "--columns-are", "odd", "--rows-are", "even", "--columns-most", "5", "--list", "0")
    assert few["settings"] == [row for row in whole["settings"]
                               if row["columns"] % 2 == 1 and row["rows"] % 2 == 0 and row["columns"] <= 5]


def test_where_nothing_comes_out_the_nearest_is_told(muslin: Muslin) -> None:
    found = muslin.answer("fit", "--width", "61", "--length", "72", "--within", "0", "--block", "12")
    assert found["settings"] == [] and inches(found["nearest"]["wider_than_wanted_by"]) == -1
    words = muslin.words("fit", "--width", "61", "--length", "72", "--within", "0", "--block", "12")
    assert "No straight setting comes out within 0 in" in words and "straight 5 x 6" in words
    assert "The nearest one is 1 in narrower than wanted and as long as wanted" in words
    assert "Tried: blocks of 12 in, 1 to 100 of them across and 1 to 100 down; no border." in words
    longer = muslin.words("fit", "--width", "59", "--length", "71", "--within", "0", "--block", "12")
    assert "1 in wider than wanted and 1 in longer" in longer


def test_a_setting_that_was_asked_for_and_does_not_fit_is_named(muslin: Muslin) -> None:
    # 6 x 9 sqrt 2 = 76.4 and 7 x 9 sqrt 2 = 89.1; a border of 2 in makes 80.4 and 93.1.
    words = ("fit", "--width", "84", "--length", "92", "--setting", "sashed", "--setting", "on-point", "--block-least",
             "9", "--block-most", "12", "--border-most", "6")
    missing = muslin.answer(*words)["settings_without_a_fit"]
    assert [one["setting"] for one in missing] == ["on-point"]
    text = muslin.words(*words)
    assert "No on-point setting comes within 2 in of the size; the nearest has 6 x 7 blocks of 9 in and a border of " \
           "2 in: about 80 3/8 in by about 93 1/8 in." in text
    assert "sashes from 1 in to 3 in, every 1/2 in; borders from 0 in to 6 in, every 1 in." in text
    bare = muslin.words("fit", "--width", "60", "--length", "72", "--within", "0", "--setting", "straight", "--setting",
                        "on-point", "--block", "12")
    assert "No on-point setting comes within 0 in of the size; the nearest has 4 x 4 blocks of 12 in:" in bare
    none = muslin.words("fit", "--width", "60", "--length", "60", "--setting", "straight", "--setting", "sashed",
                        "--block", "30", "--sash", "7 in", "--columns-most", "2", "--rows-most", "2")
    assert "No sashed setting comes within 2 in of the size" in none and "sashes of 7 in; no border" in none


def test_wrong_ranges_and_too_much_work_are_named(muslin: Muslin) -> None:
    size = ("fit", "--width", "60", "--length", "72")
    assert "--block-most: " in muslin.complaint(2, *size, "--block-least", "9", "--block-most", "8")
    assert "--columns-most: " in muslin.complaint(2, *size, "--columns-least", "9", "--columns-most", "8")
    assert "--block-least: " in muslin.complaint(2, *size, "--block-least", "0")
    assert "--work: " in muslin.complaint(2, *size, "--block-step", "1/64", "--work", "100")
    assert "straight, sashed, framed or on-point" in muslin.complaint(2, *size, "--setting", "diagonal")
    assert muslin.answer(*size, "--block-least", "15", "--within", "4")["settings"][0]["columns"] == 4


def test_blocks_fit_a_width(muslin: Muslin) -> None:
    # The article again: (88 - 8 + 2) / 14 is 5.86, so 6 blocks, 90 in.
    words = ("across", "88", "--block", "12", "--sash", "2", "--border", "4")
    found = muslin.answer(*words)
    assert (found["blocks"], inches(found["finished_width"])) == (6, 90)
    assert muslin.answer(*words, "--round", "down")["blocks"] == 5
    assert inches(muslin.answer(*words, "--framed")["finished_width"]) == 94
    text = muslin.words(*words)
    assert "6 blocks of 12 in come out 90 in wide, finished." in text
    assert "Wanted were 88 in: it is 2 in wider." in text and "between the blocks." in text
    assert "it is 12 in narrower" in muslin.words(*words, "--round", "down")
    assert "at both ends." in muslin.words(*words, "--framed")
    plain = muslin.words("across", "60", "--block", "12")
    assert "as wide as wanted" in plain and "There is no border." in plain


def test_triangles_fill_a_quilt_in_rows(muslin: Muslin) -> None:
    # How to cut equilateral triangles: 12 rows, 51 in; 8 sides across.
    words = ("triangles", "--width", "40", "--length", "50", "--height", "4 1/4")
    found = muslin.answer(*words)
    assert (found["rows"], found["sides_across"], inches(found["finished_length"])) == (12, 8, 51)
    assert muslin.answer(*words, "--round-rows", "down", "--round-sides", "up")["rows"] == 11
    # The same blog: strips of the height and 3/4 in. 8 x 8.5 / sqrt 3 = 39.26; (8.5 + 1.5) / sqrt 3 = 5.77; half of
    # that and 1/4 in is 3.14.
    assert inches(found["strip_cut_for_sharp_tips"]) == 5 and inches(found["strip_cut_for_blunt_tips"]) == 4.75
    assert inches(found["cut_base_of_a_half_triangle"]) == 3.25
    text = muslin.words(*words)
    assert "about 39 1/4 in by 51 in finished, about 39 3/4 in by 51 1/2 in unfinished" in text
    assert "about 3/4 in narrower than wanted and 1 in longer" in text
    assert "Cut strips 5 in wide for triangles with sharp tips" in text and "about 5 25/32 in along the strip" in text
    # 4.25 x 2 / sqrt 3 = 4.907. 40 in hold 13 halves of 5.77 in, so 12 triangles: 180 in 15 strips; 24 of 3.14 in in 2.
    assert "about 4 29/32 in along each side" in text
    assert "15 strips for the whole triangles, 12 from a strip, and at most 2 strips for the halves" in text
    assert "85 in of cloth" in text and muslin.answer(*words, "--usable", "46")["strips_for_whole_triangles"] == 13
    assert "--usable" in muslin.complaint(1, *words, "--usable", "5")
    assert "cut 12 left and 12 right half triangles, mirror images" in text
    assert "take-up 1/64 in" in muslin.words(*words, "--take-up", "1/64")


def test_a_pattern_is_resized_with_all_its_sizes(muslin: Muslin) -> None:
    # Learn how to resize quilt blocks: cut 2 1/2 x 4 1/2 doubled is cut 4 1/2 x 8 1/2.
    found = muslin.answer("rescale", "2 1/2", "4 1/2", "--cut", "--times", "2")
    assert [inches(size["new_cut"]) for size in found["sizes"]] == [4.5, 8.5]
    assert found["sizes_off_the_marks"] == 0 and found["warnings"] == []
    assert "Every cut lies on marks 1/8 in apart." in muslin.words("rescale", "2", "4", "--times", "2")


def test_sizes_off_the_ruler_are_named_with_a_scale_that_keeps_to_it(muslin: Muslin) -> None:
    # By division: 2 in becomes 1 1/3; on eighths the 2 in unit may become 1 1/4 or 1 3/8, and 11 / 16 is nearer to 2 / 3.
    found = muslin.answer("rescale", "2", "4", "6", "--times", "2", "--over", "3")
    assert [size["on_the_marks"] for size in found["sizes"]] == [False, False, True]
    assert (inches(found["unit_on_marks_below"]), inches(found["unit_on_marks_above"])) == (1.25, 1.375)
    assert found["nearest_scale_on_marks"] == {"times": 11, "over": 16}
    words = muslin.words("rescale", "2", "4", "6", "--times", "2", "--over", "3")
    assert "If 2 in finished becomes 1 1/4 in or 1 3/8 in, every cut lies on the marks" in words
    assert "between 1 3/4 in and 1 7/8 in" in words and "--times 11 --over 16" in words and "test block" in words
    assert len(found["warnings"]) == 1
    none = muslin.words("rescale", "1", "2", "--times", "3", "--over", "2", "--marks", "1/4", "--seam", "1/16")
    assert "no scale puts every cut on these marks" in none


def test_a_scale_far_too_small_offers_only_a_larger_one(muslin: Muslin) -> None:
    words = muslin.words("rescale", "1/4", "--times", "1", "--over", "9")
    assert "the first mark that shows anything is 5/8 in" in words and "--times 1 --over 2" in words


def test_a_scale_of_nothing_is_named(muslin: Muslin) -> None:
    assert "--over: " in muslin.complaint(2, "rescale", "2", "--over", "0")
    assert "--times: " in muslin.complaint(2, "rescale", "2", "--times", "-1")
    assert "--cut: " in muslin.complaint(1, "rescale", "1/4", "--cut")


def test_a_batch_takes_lists_of_settings_and_sizes(muslin: Muslin) -> None:
    replies = muslin.batch({"command": "fit", "width": "60", "length": "72", "within": "0",
                            "setting": ["straight", "on-point"]},
                           {"command": "rescale", "size": ["2", "4"], "times": 3, "over": 2})
    assert replies[0]["answer"]["settings_found"] == 2
    assert [inches(size["new_cut"]) for size in replies[1]["answer"]["sizes"]] == [3.5, 6.5]


def test_finished_sizes_say_from_where_to_where(muslin: Muslin) -> None:
    bed = muslin.words("bed", "--width", "60", "--length", "80", "--drop", "16", "--corner", "rounded")
    assert "16 in from both raw edges of the trimmed, unbound quilt" in bed
    assert "92 1/2 in by 96 1/2 in unfinished (seam allowance 1/4 in) is too small unless nothing is taken up" in bed
    assert "seam line to seam line of the top" in muslin.words("across", "88", "--block", "12")
    assert "seam line to seam line of the top" in muslin.words("fit", "--width", "60", "--length", "72", "--within", "0")


def test_the_nearest_setting_is_said_to_be_by_both_deviations(muslin: Muslin) -> None:
    words = ("fit", "--width", "84", "--length", "92", "--block-least", "9", "--block-most", "12", "--border-most", "6")
    assert "deviations of width and length together are least" in muslin.words(
        *words, "--setting", "sashed", "--setting", "on-point", "--rank", "fewest-blocks")
    assert "deviations" not in muslin.words(*words, "--setting", "sashed")


def test_a_warning_against_rounding_comes_before_the_sizes(muslin: Muslin) -> None:
    text = muslin.words("rescale", "2", "4", "6", "--times", "2", "--over", "3")
    assert text.index("Do not cut these to the nearest mark") < text.index("2 in finished becomes")
    assert "Do not cut" not in muslin.words("rescale", "2", "4", "--times", "2")
