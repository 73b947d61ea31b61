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
    assert "--tops" in complaint and "gives only 2" in complaint


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
    headings = re.findall(r"^(?:\d+\. )?([A-Z][A-Z ,]+)$", muslin.text(*SMALL, *FINISHED), re.MULTILINE)
    assert headings == [
        "WHAT THIS PLAN TAKES FOR GRANTED", "SORT AND LABEL", "TEST YOUR SEAM", "SEW AND PRESS THE SETS",
        "CUT THE SEGMENTS", "JOIN SEGMENTS INTO BLOCKS", "LAY OUT AND JOIN THE TOP", "BORDERS, FOR EACH TOP",
        "BATTING, FOR EACH TOP", "BACKING, FOR EACH TOP", "BINDING, FOR EACH TOP", "WHAT TO BUY", "WHAT IS LEFT OVER",
        "HOW NEAR THE EDGE THIS IS", "WORTH KNOWING", "TAKE CARE"]


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
