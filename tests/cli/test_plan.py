"""The main job: a whole strip quilt, as figures and as a written pattern.

SPDX-License-Identifier: MIT

The figures that have no other word are the usual ones among people who sew strips; common practice, no source.
"""
from __future__ import annotations

import json
import re
from typing import Any

import pytest

from program import Muslin, inches

SMALL = ("plan", "42", "--segment", "6 1/2", "--usable", "42", "--trim", "1/2", "--columns", "3", "--rows", "3")
FINISHED = ("--border", "1 in", "--border", "4 in cornerstones", "--batting", "--backing", "--binding")


def test_a_bundle_of_forty_two_gives_two_tops_and_six_strips_over(muslin: Muslin) -> None:
    plan = muslin.answer(*SMALL)
    assert inches(plan["sets"]["unfinished_width"]) == 12.5
    assert (plan["segments"]["from_each_set"], plan["segments"]["from_each_end"]) == (6, 3)
    assert inches(plan["blocks"]["unfinished_width"]) == 12.5
    assert inches(plan["blocks"]["finished_height"]) == 12
    assert inches(plan["top"]["finished_width"]) == 36
    assert (plan["top"]["tops"], plan["left_over"]["strips"]) == (2, 6)


def test_what_a_set_gives_straight_through_is_said_where_that_is_more(muslin: Muslin) -> None:
    # five strips of 2 1/2 in are 10 1/2 in wide, so segments are cut 5 1/2 in; 39 1/2 in hold 7, twice 19 3/4 in hold 6
    five = ("plan", "40", "--set", "5", "--trim", "1/4", "--columns", "4", "--rows", "4")
    segments = muslin.answer(*five)["segments"]
    assert (segments["from_each_set"], segments["from_each_set_straight_through"]) == (6, 7)
    assert "a set gives 7 segments: plan with --one-end" in " ".join(muslin.run(*five).stdout.split())
    assert "from_each_set_straight_through" not in muslin.answer(*five, "--one-end")["segments"]
    assert "from_each_set_straight_through" not in muslin.answer(*five, "--fold-clear", "1/2")["segments"]
    assert "from_each_set_straight_through" not in muslin.answer(*SMALL)["segments"]


def test_segments_between_two_marks_are_cut_on_one_that_gives_as_many(muslin: Muslin) -> None:
    # Four strips finish at 8 in, three segments at 2 2/3 in each, cut 3 1/6. At 3 1/4 twelve and both ends take 39 1/2
    # in, and 14 would take 46; of 39 in at 3 3/16 they take 38 3/4. Two seams between three segments take 1 in.
    thirds = ("plan", "48", "--set", "4", "--block", "3", "--trim", "1/4", "--columns", "3", "--rows", "3")
    plan = muslin.answer(*thirds)
    assert inches(plan["segments"]["segment_cut"]) == pytest.approx(19 / 6, abs=1 / 8128)
    assert (inches(plan["segments"]["cut_at"]), plan["segments"]["from_each_set"]) == (3.25, 12)
    assert inches(plan["segments"]["a_block_is_sewn_so_wide"]) == 3 * 3.25 - 1
    edges = plan["edges"]
    assert [inches(edges[name]) for name in ("strip_may_be_shorter_by", "shortest_strip_that_gives_as_many",
                                             "strip_longer_for_more_by")] == [0.5, 39.5, 6]
    assert inches(plan["left_over"]["of_each_set"]) == 0.5
    narrow = muslin.answer(*thirds, "--usable", "39")
    assert (inches(narrow["segments"]["cut_at"]), narrow["segments"]["from_each_set"]) == (3.1875, 12)
    assert inches(narrow["edges"]["strip_may_be_shorter_by"]) == 0.25
    words = muslin.words(*thirds)
    assert "each cut 3 1/4 in wide (about 2 43/64 in finished)" in words
    assert "unfinished it comes out 8 3/4 in wide. Trim each block to about 8 1/2 in unfinished" in words


def test_segments_that_no_mark_gives_are_told_so(muslin: Muslin) -> None:
    # Strips of 2 3/4 in with 3/8 in seams: 8 in of a set, 2 2/3 in and 3/4 of a segment, cut 3 5/12; 12 of them are all
    # of 41 in. At 3 27/64 in only ten are, for they come off in twos.
    words = muslin.words("plan", "34", "--strip", "2 3/4", "--usable", "41", "--set", "4", "--block", "3",
                         "--seam", "3/8", "--columns", "5", "--rows", "3")
    assert "No mark of a ruler gives so many: cut at 3 27/64 in, a set gives 10. Longer strips are safer." in words


def test_one_top_takes_three_sets(muslin: Muslin) -> None:
    plan = muslin.answer(*SMALL, "--tops", "1")
    assert (plan["sets"]["sets"], plan["segments"]["used"], plan["blocks"]["blocks"]) == (3, 18, 9)
    assert plan["left_over"] | {"of_each_set": None} == {
        "strips": 24, "segments": 0, "tops_from_all_strips": 2, "strips_missing_for_one_more_top": 12,
        "of_each_set": None}


def test_the_segment_that_makes_the_block_square_is_found(muslin: Muslin) -> None:
    without = tuple(word for word in SMALL if word not in ("--segment", "6 1/2"))
    assert muslin.answer(*without) == muslin.answer(*SMALL)


def test_every_segment_is_used_once_and_no_block_repeats_a_set(muslin: Muslin) -> None:
    # Counted by hand from the groups: each stack of six must be used up.
    plan = muslin.answer(*SMALL, "--tops", "1")
    used: dict[int, int] = {}
    for group in plan["blocks"]["groups"]:
        assert len(set(group["stacks"])) == len(group["stacks"])
        for stack in group["stacks"]:
            used[stack] = used.get(stack, 0) + group["blocks"]
    assert used == {1: 6, 2: 6, 3: 6}


def nests(plan: Any, group: Any) -> list[bool]:
    """For each join in a block: do its two segments, as they lie, have their seams pressed opposite ways?"""
    to_top = [(stack in plan["sets"]["press_towards_top"]) != (place in group["turn_end_for_end"])
              for place, stack in enumerate(group["stacks"], 1)]
    return [left != right for left, right in zip(to_top, to_top[1:])]


def test_three_sets_paired_each_with_each_nest_only_by_turning(muslin: Muslin) -> None:
    # An odd cycle: pressing alone serves two of the three pairs.
    plan = muslin.answer(*SMALL, "--tops", "1")
    assert plan["blocks"]["segments_turned"] > 0
    assert all(all(nests(plan, group)) for group in plan["blocks"]["groups"])


def test_places_that_do_not_nest_are_named_when_nothing_is_turned(muslin: Muslin) -> None:
    plan = muslin.answer(*SMALL, "--tops", "1", "--nest", "name")
    assert plan["blocks"]["places_not_nesting"] > 0
    for group in plan["blocks"]["groups"]:
        assert group["turn_end_for_end"] == []
        named = [[place, place + 1] for place, good in enumerate(nests(plan, group), 1) if not good]
        assert group["not_nesting"] == named


def test_turned_blocks_alternate_like_a_chessboard(muslin: Muslin) -> None:
    plan = muslin.answer(*SMALL)
    assert plan["top"]["quarter_turns"] == [[0, 1, 0], [1, 0, 1], [0, 1, 0]]
    assert muslin.answer(*SMALL, "--turn", "half")["top"]["quarter_turns"][0] == [0, 2, 0]


def test_the_layout_is_drawn(muslin: Muslin) -> None:
    drawing = ("    +-------+-------+-------+\n"
               "    |   |   |   >   |   |   |\n"
               "    | ^ | ^ |-------| ^ | ^ |\n"
               "    |   |   |   >   |   |   |\n"
               "    +-------+-------+-------+\n"
               "    |   >   |   |   |   >   |\n")
    assert drawing in muslin.text(*SMALL)


def test_a_large_layout_is_drawn_in_arrows(muslin: Muslin) -> None:
    text = muslin.text("plan", "3000", "--columns", "20", "--rows", "20", "--turn", "half", "--tops", "1")
    assert "\n    " + " ".join("^v" * 10) + "\n    " + " ".join("v^" * 10) + "\n" in text


def test_the_trio_is_the_published_test(muslin: Muslin) -> None:
    # Testing your scant quarter-inch seam (tutorial, 2012): three 1 1/2 in strips measure 3 1/2 in, the middle 1 in.
    check = muslin.answer("plan", "12", "--strip", "1 1/2", "--columns", "1", "--rows", "1")["check"]
    assert inches(check["trio_unfinished_width"]) == 3.5
    assert inches(check["trio_centre_finished_width"]) == 1


def test_borders_batting_and_backing_grow_from_each_other(muslin: Muslin) -> None:
    # Geometry: 36 + 2 x 1 + 2 x 4 = 46 in; 3 in margins for batting, 4 in for backing; 4 x 46 + 12 in of binding.
    plan = muslin.answer(*SMALL, *FINISHED)
    assert inches(plan["quilt_finished_width"]) == 46
    assert inches(plan["batting"]["cut_width"]) == 52
    assert inches(plan["backing"]["cut_width_needed"]) == 54
    assert inches(plan["binding"]["length_wanted"]) == 196


def test_what_to_buy_is_for_all_tops(muslin: Muslin) -> None:
    one = {line["for"]: line for line in muslin.answer(*SMALL, *FINISHED, "--tops", "1")["buy"]}
    two = {line["for"]: line for line in muslin.answer(*SMALL, *FINISHED, "--tops", "2")["buy"]}
    for what in ("border", "backing", "binding"):
        assert two[what]["needed"]["ticks"] == 2 * one[what]["needed"]["ticks"]
    # Eight squares of 4 1/2 in still come from one strip of 40 in.
    assert two["cornerstones of border"] == one["cornerstones of border"]


def test_the_layout_of_the_backing_can_be_chosen(muslin: Muslin) -> None:
    chosen = muslin.answer(*SMALL, "--backing", "--backing-layout", "seams-across")["backing"]["chosen"]
    assert chosen["layout"] == "seams-across"


def test_a_layout_that_cannot_serve_is_no_answer(muslin: Muslin) -> None:
    assert "laid out" in muslin.complaint(1, *SMALL, "--backing", "--backing-layout", "one-width")


def test_strips_that_do_not_suffice_are_no_answer(muslin: Muslin) -> None:
    complaint = muslin.complaint(1, *SMALL, "--tops", "3")
    # 3 x 9 blocks of two segments, six segments a set: 54 segments, 9 sets, 54 strips; 42 strips: 7 sets, 21 blocks.
    assert ("--tops: For 3 tops of 3 by 3 blocks it takes 54 segments: 9 sets, 54 strips. Your 42 strips make 21 "
            "blocks, enough for 2 tops.") in complaint


def test_a_yield_on_its_edge_is_said(muslin: Muslin) -> None:
    words = muslin.words("plan", "42", "--segment", "6 1/2", "--usable", "40", "--trim", "1/2", "--columns", "3",
                         "--rows", "3")
    assert "Each strip may be 0 in shorter than planned" in words


def test_washed_and_unwashed_cloth_is_warned_of(muslin: Muslin) -> None:
    warnings = muslin.answer(*SMALL, "--border", "2 in", "--cloth-care", "washed")["warnings"]
    assert any("shrink by different amounts" in warning for warning in warnings)


def test_pinked_strips_are_reckoned_where_they_are_lined_up(muslin: Muslin) -> None:
    # Geometry: 2 1/2 in from tip to tip, 1/8 in deep on each edge: 2 1/4 in from valley to valley.
    plan = muslin.answer("plan", "42", "--edge", "pinked-tips", "--pink-depth", "1/8", "--align", "valleys",
                         "--columns", "2", "--rows", "2")
    assert inches(plan["assumed"]["strip_cut"]) == 2.25


def test_too_many_sets_are_not_listed_one_by_one(muslin: Muslin) -> None:
    plan = muslin.answer("plan", "2147483647", "--columns", "1000", "--rows", "1000", "--tops", "1")
    assert plan["sets"]["press_towards_top"] == [] and plan["blocks"]["groups"] == []
    assert "too many" in muslin.words("plan", "2147483647", "--columns", "1000", "--rows", "1000", "--tops", "1")


def test_too_few_strips_say_what_it_takes_when_no_tops_were_asked_for(muslin: Muslin) -> None:
    # 64 blocks of two: 128 segments, six a set: 22 sets, 132 strips; 20 strips make 3 sets, 18 segments, 9 blocks.
    complaint = muslin.complaint(1, "plan", "20", "--columns", "8", "--rows", "8")
    assert "--tops" not in complaint
    assert ("For 1 top of 8 by 8 blocks it takes 128 segments: 22 sets, 132 strips. Your 20 strips make 9 blocks, "
            "enough for 0 tops.") in complaint


def test_too_few_strips_keep_the_librarys_status_in_json(muslin: Muslin) -> None:
    error = json.loads(muslin.run("plan", "20", "--columns", "8", "--rows", "8", "--json").stdout)["error"]
    assert (error["name"], error["option"], error["value"], error["limit"]) == ("ERR_NOT_ENOUGH", "strips", 1, 0)


def test_a_needle_off_counts_for_both_allowances_of_every_seam(muslin: Muslin) -> None:
    # Geometry: five seams of two allowances, each 1/32 in off.
    assert inches(muslin.answer(*SMALL)["check"]["error_of_a_set"]) == 5 * 2 / 32
    assert "a set comes out 5/16 in too narrow or too wide" in muslin.words(*SMALL)


def test_mitred_pieces_have_two_inches_for_handling(muslin: Muslin) -> None:
    # Geometry: 36 1/2 + 2 x 3 + 2 sqrt 2 / 4 = 43.2071 in at least, up to an eighth 43 1/4.
    words = muslin.words(*SMALL, "--border", "3 in mitred")
    assert "Cut two sides about 45 1/4 in long, top and bottom about 45 1/4 in long" in words
    assert "Of each, 2 in is for handling: the least is about 43 1/4 in and about 43 1/4 in." in words


def test_cuts_between_squarings_add_up_to_the_cuts_of_one_end(muslin: Muslin) -> None:
    words = ("plan", "40", "--set", "4", "--segment", "4 1/2", "--block", "3", "--usable", "41 1/2", "--turn", "half",
             "--columns", "4", "--rows", "5", "--resquare", "1/8", "--resquare-every", "3")
    segments = muslin.answer(*words)["segments"]
    assert segments["cuts_between_squarings"] == [3, 1]
    assert sum(segments["cuts_between_squarings"]) == segments["from_each_end"]
    assert "cut 3, square the edge again (1/8 in), cut 1." in muslin.words(*words)
    assert muslin.answer(*SMALL)["segments"]["cuts_between_squarings"] == []


def test_borders_say_how_near_the_edge_their_run_is(muslin: Muslin) -> None:
    # Geometry: 2 x 36 1/2 + 2 x 38 1/2 = 150 in; 4 strips of 40 in, 3 joins of 1/2 in: 158 1/2 in, 2 1/8 in a strip.
    border = muslin.answer(*SMALL, "--border", "1 in")["borders"][0]
    assert (border["strips"], inches(border["spare"]), inches(border["strips_may_be_shorter_by"])) == (4, 8.5, 2.125)
    assert ("strips of border 1 may each be 2 1/8 in shorter before one more is needed; their run has 8 1/2 in to "
            "spare") in muslin.words(*SMALL, "--border", "1 in")


def test_extra_is_added_to_each_length_bought(muslin: Muslin) -> None:
    plain = muslin.answer(*SMALL, "--binding")["buy"][0]
    more = muslin.answer(*SMALL, "--binding", "--extra", "2 in")["buy"][0]
    assert inches(more["with_shrinkage_and_extra"]) == inches(plain["needed"]) + 2
    assert "Nothing is added for a crooked cut" in muslin.words(*SMALL, "--binding")
    assert "2 in is added to each length" in muslin.words(*SMALL, "--binding", "--extra", "2 in")


# ---- pressing -------------------------------------------------------------------------------------------------------

HALVES = ("plan", "40", "--set", "4", "--segment", "4 1/2", "--block", "3", "--usable", "41 1/2", "--trim", "1/4",
          "--fold-clear", "1", "--columns", "4", "--rows", "5", "--turn", "half")


@pytest.mark.parametrize(("turn", "rule"), [
    ("none", "to the left in blocks for odd rows of the layout, to the right in blocks for even rows"),
    ("half", "to the left in every block, before it is turned"),
    ("quarter", "pin those that do not, or twist the seam there")])
def test_the_seams_inside_blocks_are_pressed_for_the_way_blocks_are_turned(muslin: Muslin, turn: str,
                                                                           rule: str) -> None:
    assert rule in muslin.words("plan", "12", "--set", "3", "--columns", "4", "--rows", "5", "--turn", turn)


def test_blocks_of_two_kinds_say_how_they_lie_side_by_side(muslin: Muslin) -> None:
    words = muslin.words(*HALVES)
    assert "first kind" in words and "second kind" in words
    assert "Put blocks of the second kind the other way up in either place" in words
    assert "to the left in blocks of the first kind, to the right in those of the second" in words


def laid(plan: Any, group: Any, turned: bool) -> list[bool]:
    """Is each segment of a block pressed upwards, from the left as the block lies?"""
    up = [(stack in plan["sets"]["press_towards_top"]) != (place in group["turn_end_for_end"])
          for place, stack in enumerate(group["stacks"], 1)]
    return [not one for one in reversed(up)] if turned else up


def test_neighbours_nest_when_the_second_kind_is_turned_against_the_first(muslin: Muslin) -> None:
    plan = muslin.answer(*HALVES)
    for left in plan["blocks"]["groups"]:
        for right in plan["blocks"]["groups"]:
            for turn in (False, True):
                one = laid(plan, left, turn == (left["first_segment_pressed"] == "towards_top"))
                other = laid(plan, right, turn != (right["first_segment_pressed"] == "towards_top"))
                assert one[-1] != other[0]


def test_one_kind_of_block_is_no_matter_for_words(muslin: Muslin) -> None:
    assert "kind" not in muslin.words("plan", "12", "--set", "3", "--columns", "4", "--rows", "5", "--turn",
                                      "none").replace("the same kind", "")


def test_a_segment_to_turn_is_named_by_its_stack(muslin: Muslin) -> None:
    assert "Turn the one from stack 2 (second from the left) end for end" in muslin.words(*SMALL, "--tops", "1")


# ---- backing in the pattern -----------------------------------------------------------------------------------------

def test_a_backing_of_one_width_is_not_sewn(muslin: Muslin) -> None:
    words = muslin.words(*SMALL, "--backing", "--backing-width", "108", "--backing-print", "one-way")
    assert "Nothing is sewn: trim it to 44 in by 44 in." in words
    assert "from this cloth: none" in words and "selvages cut off, and press" not in words


def test_selvages_are_said_only_where_they_are_cut_off(muslin: Muslin) -> None:
    assert "40 in wide after the selvages are cut off (usable)" in muslin.words(*SMALL, "--backing")
    words = muslin.words(*SMALL, "--backing", "--backing-width", "43", "--backing-selvage", "1/2")
    assert "43 in wide from edge to edge; 1/2 in of selvage is cut off each edge, which leaves 42 in" in words


def test_a_backing_says_how_narrow_its_cloth_may_be(muslin: Muslin) -> None:
    # Geometry: 50 x 50 in; the insert is 52 in less the width, twice, beside 50 in: 76 1/2 in hold it down to 38 3/4.
    words = muslin.words("plan", "18", "--usable", "42", "--columns", "3", "--rows", "3", "--border", "3 in",
                         "--backing")
    assert "2 1/8 yd (76 1/2 in) of backing is enough only while the cloth is at least 38 3/4 in wide" in words


# ---- the written pattern --------------------------------------------------------------------------------------------

PLANS = [
    SMALL,
    (*SMALL, *FINISHED),
    (*SMALL, *FINISHED, "--units", "cm", "--batting-roll", "48"),
    (*SMALL, "--border", "3 in mitred diagonal lengthwise", "--border", "2 in top-first", "--binding",
     "--binding-front", "1/4", "--shrinkage", "3 %"),
    ("plan", "12", "--set", "1", "--block", "1", "--segment", "4", "--turn", "none", "--columns", "4", "--rows", "3"),
    ("plan", "60", "--set", "4", "--block", "3", "--turn", "half", "--columns", "3", "--rows", "2", "--take-up", "1/32",
     "--one-end", "--resquare", "1/8", "--resquare-every", "2", "--nest", "name", "--segment", "4 in"),
    ("plan", "6", "--set", "6", "--columns", "1", "--rows", "2", "--strips-care", "washed"),
]


@pytest.mark.parametrize("words", PLANS)
def test_no_figure_is_missing_and_no_line_too_wide(muslin: Muslin, words: tuple[str, ...]) -> None:
    text = muslin.text(*words)
    assert "{" not in text and "}" not in text
    assert all(len(line) <= 79 for line in text.splitlines())


def test_the_pattern_follows_the_order_of_the_work(muslin: Muslin) -> None:
    headings = re.findall(r"^(?:\d+\. )?([A-Z][A-Z ,]+)$", muslin.text(*SMALL, *FINISHED, "--tops", "1"),
                          re.MULTILINE)
    assert headings == [
        "WHAT THIS PLAN TAKES FOR GRANTED", "SORT AND LABEL", "TEST YOUR SEAM", "SEW AND PRESS THE SETS",
        "CUT THE SEGMENTS", "JOIN SEGMENTS INTO BLOCKS", "LAY OUT AND JOIN THE TOP", "BORDERS, FOR EACH TOP",
        "BATTING, FOR EACH TOP", "BACKING, FOR EACH TOP", "LAYER AND QUILT, EACH TOP", "BINDING, FOR EACH TOP",
        "WHAT TO BUY", "WHAT IS LEFT OVER", "HOW NEAR THE EDGE THIS IS", "WORTH KNOWING", "TAKE CARE"]


def test_steps_are_numbered_without_gaps(muslin: Muslin) -> None:
    numbers = re.findall(r"^(\d+)\. [A-Z]", muslin.text(*SMALL, "--binding"), re.MULTILINE)
    assert numbers == [str(number) for number in range(1, len(numbers) + 1)]


def test_block_and_top_sizes_say_what_they_are(muslin: Muslin) -> None:
    words = muslin.words(*SMALL)
    assert "Each block must measure 12 1/2 in wide and 12 1/2 in high unfinished (12 in by 12 in finished)." in words
    assert "Each top measures 36 1/2 in by 36 1/2 in unfinished (36 in by 36 in finished)." in words
    assert "each cut 6 1/2 in wide (6 in finished)" in words


def test_the_cautions_are_there(muslin: Muslin) -> None:
    words = muslin.words(*SMALL)
    for caution in ("guard of the rotary cutter", "iron burns", "pins out", "infant's sleep space in the first year",
                    "Cutting cannot be undone", "no claim", "rules where you live"):
        assert caution in words


def test_text_and_json_say_the_same(muslin: Muslin) -> None:
    text = muslin.words(*SMALL, *FINISHED)
    plan = json.loads(muslin.text(*SMALL, *FINISHED, "--json"))
    for line in plan["buy"]:
        assert f"{line['needed']['text']} needed, buy {line['bought']['text']}" in text
    assert plan["binding"]["joined_length"]["text"] in text


def test_a_backing_bought_with_something_more_promises_only_the_width_planned(muslin: Muslin) -> None:
    words = muslin.words("plan", "18", "--usable", "42", "--columns", "3", "--rows", "3", "--backing", "--shrinkage",
                         "3 %")
    assert "The backing bought is enough only while the cloth is 40 in wide, selvages counted as in its step, or wider." in words


def test_a_small_quilt_is_warned_of_once_more_only_without_borders(muslin: Muslin) -> None:
    assert muslin.words(*SMALL).count("sleep space in the first year") == 2
    assert muslin.words(*SMALL, "--border", "1 in").count("sleep space in the first year") == 1


def test_strips_are_not_to_be_washed_unless_they_are(muslin: Muslin) -> None:
    assert "The strips are unwashed; do not wash them" in muslin.words(*SMALL)
    assert "The strips are washed: measure each of them again." in muslin.words(*SMALL, "--strips-care", "washed")
    assert "measure them from tip to tip" in muslin.words(*SMALL, "--edge", "pinked-tips")


def test_a_strip_of_no_width_is_named_as_such(muslin: Muslin) -> None:
    failed = muslin.complaint(2, "plan", "10", "--strip", "0", "--columns", "1", "--rows", "1")
    assert "--strip: Cut width of a strip is 0 in, but must be more than 0 in." in " ".join(failed.split())
