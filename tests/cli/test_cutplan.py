"""Cutting plans on the command line: least cloth, strip by strip, drawn.

SPDX-License-Identifier: MIT

Plans are added up here from their strips; least lengths are worked out beside each test.
"""
from __future__ import annotations

import os
import signal
import subprocess
import time
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

from program import Muslin, inches

SQUARES = ("cutplan", "32 of 5 1/2 in", "16 of 6 in", "8 of 9 1/2 in")


def cut_of(found: Any) -> dict[str, int]:
    """How many of each letter the strips hold, those in panels and stock counted as often as these are there."""
    cut: dict[str, int] = {}
    strips = found["strips_in_order"]
    for strip in strips:
        times = strip["times"]
        if "within_number" in strip:
            times *= strips[strip["within_number"] - 1]["times"]
        for place in strip["places"]:
            cut[place["label"]] = cut.get(place["label"], 0) + times * place["pieces"]
    return cut


def height_of(found: Any) -> float:
    heights: list[float] = [strip["times"] * inches(strip["strip_cut"]) for strip in found["strips_in_order"]
                            if "within_number" not in strip]
    return sum(heights)


def test_lower_pieces_fill_higher_strips(muslin: Muslin) -> None:
    # On their own strips: 7, 6 and 4 a strip: 5 x 5 1/2 + 3 x 6 + 2 x 9 1/2 = 64 1/2 in.
    found = muslin.answer(*SQUARES)
    assert inches(found["each_size_on_its_own_strips"]) == 64.5
    assert inches(found["cloth_length"]) == height_of(found) == 60 == inches(found["no_plan_needs_less_than"])
    assert found["certainly_the_least"] is True and found["search_ended_by"] == "proven"
    assert cut_of(found) == {"A": 32, "B": 16, "C": 8}
    assert [row["made"] for row in found["list"]] == [32, 16, 8]
    assert inches(found["buy"]) == 63


def test_the_sheet_says_how_little_can_do_and_then_the_cuts(muslin: Muslin) -> None:
    words = muslin.words(*SQUARES)
    assert words.startswith("56 pieces take 1 2/3 yd (60 in) of cloth 40 in wide (usable), off the bolt: 9 strips, ")
    assert "cut in two steps like this one needs less than 1 2/3 yd (60 in): that is proven." in words
    assert ("Not looked at, and perhaps less: pieces stacked one above the other in a strip (--stacked looks at "
            "those).") in words
    # 18 squares of 5 1/2 in lie in strips of 6 in: 2 beside four of 6 in, 4 beside three of them in four strips.
    assert "it would be 64 1/2 in: this plan saves 4 1/2 in and has 18 trims." in words
    # 64 1/2 in are 1 7/8 yd in a shop, 60 in 1 3/4 yd.
    assert "The shop would cut 1 7/8 yd (67 1/2 in) for those, 1 3/4 yd (63 in) for this plan." in words
    assert "No. 1: 2 strips cut 9 1/2 in wide, from each: 4 squares C: cross-cut at 9 1/2 in" in words
    assert "trim the height from 6 in to 5 1/2 in" in words and "A: 32 squares of 5 1/2 in" in words
    assert "Trim the selvages off, then open each strip flat" in words
    assert "40 in usable is the least width, and nothing is to spare across." in words
    assert "Listed is what is at least 2 in both ways" in words
    assert "Cut a test block first" in words and "rotary cutter is very sharp" in words
    assert words.index("seams included") < words.index("Cutting, in this order") < words.index("Before you cut")


def test_each_size_on_its_own_strips(muslin: Muslin) -> None:
    found = muslin.answer(*SQUARES, "--own-strips")
    assert inches(found["cloth_length"]) == 64.5
    assert all(len(strip["places"]) == 1 for strip in found["strips_in_order"])


def test_borders_lie_lengthwise_and_binding_is_joined(muslin: Muslin) -> None:
    # A panel of 60 in holds two borders; binding: 40 in, then 37 1/2 a strip: four strips are 152 1/2 in, 14 in less
    # the join make the rest, and fit beside the borders; so do 24 pieces.
    words = ("cutplan", "24 of 3 x 5 in turn", "2 of 4 1/2 x 60 in lengthwise", "1 of 164 x 2 1/2 in joined")
    found = muslin.answer(*words)
    assert inches(found["cloth_length"]) == height_of(found) == 70
    assert cut_of(found) == {"A": 24, "B": 2, "C": 5}
    text = muslin.words(*words)
    assert "No. 1: a panel 60 in long, cut right across the cloth." in text
    assert "No. 2, slit along the cloth from the left edge of no. 1: 2 B: slit 4 1/2 in wide" in text
    assert "1 strip to join for C: 40 in long" in text and "A, turned: cross-cut at 5 in" in text
    assert "31 in x 45 in, of no. 1" in text and "off the bolt: 1 panel and " in text
    assert "or panels from which long pieces are slit" in text and "strips to join that do not go right across" in text
    assert "Panels: trim both selvages off before you slit." in text
    # 164 in and four joins of 2 1/2 in are 174 in.
    assert "5 strips, 174 in together: 4 diagonal joins take 2 1/2 in each" in text
    # Joined straight a strip adds 39 1/2 in: four whole ones make 158 1/2 in, and 6 in less 1/2 in are the rest.
    straight = muslin.answer("cutplan", "1 of 164 x 2 1/2 in joined", "--join", "straight")
    lengths = [inches(place["cut_across"]) for strip in straight["strips_in_order"] for place in strip["places"]]
    assert lengths == [40, 6]


def test_a_strip_that_the_join_takes_is_said(muslin: Muslin) -> None:
    # Six strips of 40 in and five joins of 2 1/2 in: 227 1/2 in. A seventh of 3 in loses 2 1/2 of them.
    text = muslin.words("cutplan", "1 of 228 x 2 1/2 in joined")
    assert "7 strips, 243 in together: 6 diagonal joins take 2 1/2 in each" in text
    assert "The strip of 3 in adds only 1/2 in, the join takes the rest: leave it out if 227 1/2 in will do" in text
    assert "leave it out" not in muslin.words("cutplan", "1 of 235 x 2 1/2 in joined")


def test_losses_and_prints(muslin: Muslin) -> None:
    # 40 in less 1 in: 6 of 6 1/2 in a strip; two strips of 4 in and 1/2 in straightened off.
    found = muslin.answer("cutplan", "12 of 6 1/2 x 4", "--end-loss", "1", "--straighten", "1/2")
    assert inches(found["cloth_length"]) == 8.5
    text = muslin.words("cutplan", "12 of 6 1/2 x 4", "--end-loss", "1", "--straighten", "1/2")
    assert "straighten its end square to the fold: 1/2 in are counted for that" in text
    assert "1/2 in come off there; 1/2 in are reckoned for its right end" in text
    turned = ("cutplan", "24 of 8 1/2 x 4 1/2 in turn")
    assert inches(muslin.answer(*turned)["cloth_length"]) == 25.5
    assert inches(muslin.answer(*turned, "--print", "one-way")["cloth_length"]) == 27


def test_folded_cloth_gives_two_of_each(muslin: Muslin, tmp_path: Path) -> None:
    # Half of 40 in holds five squares of 4 in: ten from a strip, so 40 take four strips, 16 in. Joined strips go round
    # the fold.
    target = tmp_path / "fold.svg"
    words = ("cutplan", "40 of 4 in", "1 of 80 x 2 in joined", "--join", "butted", "--folded")
    found = muslin.answer(*words, "--svg", str(target))
    assert inches(found["cloth_length"]) == 20 == height_of(found)
    assert [(place["label"], place["pieces"], place["round_the_fold"]) for strip in found["strips_in_order"]
            for place in strip["places"]] == [("A", 5, False), ("B", 1, True)]
    text = muslin.words(*words)
    assert "4 strips cut 4 in wide, from each: in each layer 5 squares A" in text and "2 strips cut 2 in wide" in text
    assert "slit it open just on the crease" in text and "cloth in a single layer" in text
    assert "selvage on selvage" in text and "1 strip to join for B: 40 in long" in text
    drawn = target.read_text(encoding="utf-8")
    assert "the fold at the right" in drawn and drawn.count(">A<") == 20 and drawn.count(">B<") == 2
    assert "--folded" in muslin.complaint(2, "cutplan", "5 of 4 in", "--stock", "any of 21 x 18 in", "--folded")


def test_stock_is_used_as_little_as_can_be(muslin: Muslin) -> None:
    # 20 of 4 in from a fat quarter of 21 x 18 in, so 61 take four.
    found = muslin.answer("cutplan", "61 of 4 in", "--stock", "6 of 21 x 18 in")
    assert (found["pieces_of_stock"], found["cost"], found["certainly_the_least"]) == (4, 4, True)
    assert cut_of(found) == {"A": 61} and "cloth_length" not in found and "buy" not in found
    dear = muslin.answer("cutplan", "20 of 4 in", "--stock", "any of 21 x 18 in at 3", "--stock",
                         "any of 42 x 18 in at 7")
    assert dear["cost"] == 3 and [row["used"] for row in dear["stock"]] == [1, 0]
    text = muslin.words("cutplan", "61 of 4 in", "--stock", "6 of 21 x 18 in")
    assert "61 pieces from 4 pieces of stock" in text and "uses fewer than 4 pieces of stock: that is proven" in text
    assert "6 of 21 in x 18 in: 4 cut into, 2 left whole" in text


def test_stock_is_said_as_it_lies(muslin: Muslin) -> None:
    # Strips along a fat quarter are 18 in long: four of 4 in leave 2 in along the cloth, 4 in across it. 2 x 9 in fill
    # them, and 6 1/2 + 6 1/2 + 2 1/2 + 2 1/2 = 18, 2 1/2 + 2 1/2 + 4 x 4 = 21. In strips lower than 9 in they can only
    # lie so.
    words = ("cutplan", "40 of 4 in", "9 of 6 1/2 in", "12 of 2 1/2 x 9 in turn", "--stock", "9 of 21 x 18 in")
    found = muslin.answer(*words)
    upright = {strip["number"] for strip in found["strips_in_order"] if strip["cut_along_the_length"]}
    assert upright
    for strip in found["strips_in_order"]:
        for place in strip["places"]:
            if place["label"] == "C" and inches(strip["strip_cut"]) < 9:
                assert place["turned"] is not (strip["within_number"] in upright)
    for rest in found["left_over"]:
        strip = found["strips_in_order"][rest["of_strip_number"] - 1]
        if strip.get("within_number") is None:
            continue  # what is left above all strips of a piece of stock
        across, along = inches(rest["across"]), inches(rest["along"])
        stands = strip.get("within_number") in upright
        assert inches(strip["strip_cut"]) == (across if stands else along)
        assert (along if stands else across) == (18 if stands else 21) - inches(strip["used"])
    text = muslin.words(*words)
    assert "of stock, 21 in across x 18 in along. First cuts along the cloth, with the selvage" in text
    assert "with the selvage: strips 18 in long." in text
    assert "of that said to be 21 in x 18 in, 21 in x 18 in are needed, square: nothing to spare" in text
    for strip in found["strips_in_order"]:
        assert f"No. {strip['number']}" in text
    # Pieces that may not turn keep strips from running along the cloth.
    assert "since some pieces may not turn" in muslin.words("cutplan", "5 of 3 x 4 in", "--stock", "3 of 21 x 18 in")
    assert "since some pieces may not turn" not in text


def test_too_little_stock_is_said(muslin: Muslin) -> None:
    few = muslin.complaint(1, "cutplan", "70 of 4 in", "--stock", "3 of 21 x 18 in")
    assert "70" in few and "60" in few and '"70 of 4 in"' in few
    found = muslin.answer("cutplan", "70 of 4 in", "--stock", "3 of 21 x 18 in", "--as-far")
    assert (found["missing"], found["list"][0]["made"]) == (10, 60)
    assert "10 pieces missing" in muslin.words("cutplan", "70 of 4 in", "--stock", "3 of 21 x 18 in", "--as-far")


def test_a_drawing_shows_every_piece(muslin: Muslin, tmp_path: Path) -> None:
    target = tmp_path / "bolt.svg"
    found = muslin.answer(*SQUARES, "--svg", str(target))
    root = ElementTree.parse(target).getroot()
    letters = [text.text for text in root.iter("{http://www.w3.org/2000/svg}text")]
    assert {letter: letters.count(letter) for letter in "ABC"} == cut_of(found)
    assert "A: 32 squares of 5 1/2 in" in letters
    assert letters.count("selvage") == 2 and "lengthwise grain" in letters
    before = target.read_text(encoding="utf-8")
    refused = muslin.complaint(3, "cutplan", "5 of 4 in", "--svg", str(target))
    assert "--force" in refused and target.read_text(encoding="utf-8") == before
    muslin.text("cutplan", "5 of 4 in", "--svg", str(target), "--force")
    assert target.read_text(encoding="utf-8") != before and list(tmp_path.iterdir()) == [target]
    assert "svg" in muslin.complaint(2, "cutlist", "5 of 4 in", "--svg", str(target))


def test_panels_and_stock_are_drawn(muslin: Muslin, tmp_path: Path) -> None:
    for name, words in (("panel", ("24 of 3 x 5 in turn", "2 of 4 1/2 x 60 in lengthwise")),
                        ("stock", ("30 of 4 in", "9 of 6 1/2 in", "--stock", "6 of 21 x 18 in"))):
        target = tmp_path / name
        found = muslin.answer("cutplan", *words, "--svg", str(target))
        letters = [text.text for text in ElementTree.parse(target).getroot().iter("{http://www.w3.org/2000/svg}text")]
        assert {letter: letters.count(letter) for letter in "AB"} == cut_of(found)


def test_nothing_wanted_is_nothing(muslin: Muslin) -> None:
    assert muslin.text("cutplan", "0 of 4 in") == "Nothing is wanted, and nothing is needed.\n"


def test_complaints_name_the_row(muslin: Muslin) -> None:
    assert "--piece" in muslin.complaint(2, "cutplan", "5 inches")
    assert "--piece" in muslin.complaint(2, "cutplan", "5 of 4 parsecs")
    assert "--piece" in muslin.complaint(2, "cutplan", "5 of 4 x in")
    assert "lengthwise" in muslin.complaint(2, "cutplan", "5 of 4 x 6 in sideways")
    assert '"5 of 4 x 6 sideways" is no row' in muslin.complaint(2, "cutplan", "5 of 4 x 6 sideways")
    for text in ("3 of 21 in sideways", "3 of 21 x 18 in sideways", "3 of 21 sideways", "any of 21 cubits at 3"):
        said = muslin.complaint(2, "cutplan", "5 of 4 in", "--stock", text)
        assert f'--stock: "{text}" is no row of this list: write how many' in said
    assert "--stock" in muslin.complaint(2, "cutplan", "5 of 4 in", "--stock", "some of 21 x 18 in")
    assert "--stock" in muslin.complaint(2, "cutplan", "5 of 4 in", "--stock", "3 of 21 x 18 in at home")
    assert '"2 of 50 x 50 in"' in muslin.complaint(1, "cutplan", "5 of 4 in", "2 of 50 x 50 in")
    assert "--work" in muslin.complaint(2, "cutplan", "5 of 4 in", "--work", "-1")
    assert "--join" in muslin.complaint(2, "cutplan", "5 of 4 in", "--join", "glued")


HARD = ("cutplan", *(f"{17 + 3 * row} of {3 + row * 5 % 7} {row + 1}/16 x {2 + row * 3 % 5} {row}/16 in turn"
                     for row in range(1, 15)))


def test_what_is_not_proven_says_so(muslin: Muslin) -> None:
    found = muslin.answer(*HARD, "--work", "1000")
    least, length = inches(found["no_plan_needs_less_than"]), inches(found["cloth_length"])
    assert least <= length == height_of(found)
    if not found["certainly_the_least"]:
        assert found["search_ended_by"] == "work limit"
        assert "More of them (--work)" in muslin.words(*HARD, "--work", "1000")


def test_an_interrupt_ends_the_search_with_the_best_plan(muslin: Muslin) -> None:
    with subprocess.Popen([muslin.program, *HARD, "--work", "1000000000000", "--progress", "always"],
                          stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
                          env={**os.environ, "LC_ALL": "C"}) as search:
        time.sleep(1.5)
        search.send_signal(signal.SIGINT)
        text, told = search.communicate(timeout=60)
    assert "best plan so far: " in told and "no plan needs less than" in told
    if search.returncode == 130:
        assert "You ended the search; this is the best plan up to then." in " ".join(text.split())
    else:
        assert search.returncode == 0 and "that is proven" in " ".join(text.split())


# ---- stacks ---------------------------------------------------------------------------------------------------------

STACK = ("cutplan", "4 of 4 x 9 in", "12 of 4 x 4 1/2 in", "--usable", "40 in")


def test_pieces_of_one_width_lie_one_above_the_other_where_that_is_wanted(muslin: Muslin) -> None:
    """A strip of 9 in holds ten that are 4 in wide: four A, and six that give two B each. Without stacks the strip holds
    four A and six B, and the other six B take 4 1/2 in more."""
    assert inches(muslin.answer(*STACK)["cloth_length"]) == 13.5
    found = muslin.answer(*STACK, "--stacked")
    assert inches(found["cloth_length"]) == 9 and found["certainly_the_least"]
    places = found["strips_in_order"][0]["places"]
    assert [(place["label"], place["pieces"], inches(place["x"]), inches(place["y"]), place["in_a_stack"])
            for place in places] == [("A", 4, 0, 0, False), ("B", 6, 16, 0, True), ("B", 6, 16, 4.5, True)]


def test_a_stack_is_told_from_below(muslin: Muslin) -> None:
    words = muslin.words(*STACK, "--stacked")
    assert ("6 B: cross-cut at 4 in, then cut each to 4 1/2 in from its lower edge "
            "6 B: what is left of those, 4 in x 4 1/2 in") in words
    assert "some are cut once more" in words and "--stacked looks at those" not in words
    assert "--stacked looks at those" in muslin.words(*STACK)


def test_what_lies_on_top_of_a_stack_may_be_trimmed(muslin: Muslin) -> None:
    """Beside four A there is room for six: each must hold a B and, above it, a C; 1 in of the 9 in is left."""
    words = muslin.words("cutplan", "4 of 4 x 9 in", "6 of 4 x 5 in", "6 of 4 x 3 in", "--usable", "40", "--stacked")
    lower, upper = ("B", "5 in"), ("C", "3 in")
    if "B: cut from what is left" in words:
        lower, upper = upper, lower
    assert (f"6 {lower[0]}: cross-cut at 4 in, then cut each to {lower[1]} from its lower edge "
            f"6 {upper[0]}: cut from what is left of those, at {upper[1]}") in words
