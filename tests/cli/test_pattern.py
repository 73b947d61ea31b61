"""muslin pattern: the text, the facts and the tables of pattern files.

SPDX-License-Identifier: MIT

Six invented quilts are taken from examples/patterns, each in one size whose sums are worked out by hand, as said beside
them.
"""
from __future__ import annotations

import copy
import csv
import io
import json
import os
import pathlib
import re
import signal
import subprocess
import time
from typing import Any

import pytest
from program import Muslin

SAMPLES = pathlib.Path(__file__).resolve().parents[2] / "examples" / "patterns"
FIXED = {"pressing": {"units": "fixed"}, "buying": {"straightening": "1/2 in"}, "cutting": {"end trim": "1/2 in"}}

# name: file, what is otherwise, finished size, unfinished size, patches
QUILTS: dict[str, tuple[str, dict[str, Any], str, str, int]] = {
    # 4 x 5 blocks of six 2 in strips, 12 in each
    "rails": ("ferry-steps", {"borders": None, "binding": {"fabric": "deep water"}},
              "48 in x 60 in", "48 1/2 in x 60 1/2 in", 120),
    # 2 x 2 blocks of 9 in, 2 in sashes also round them; 9 + 21 + 13 + 14 patches, 12 sashes, 9 cornerstones
    "sampler": ("allotment-notes", {"borders": None, "counts": {"columns": 2, "rows": 2}},
                "24 in x 24 in", "24 1/2 in x 24 1/2 in", 78),
    # 3 x 4 blocks of 12 in and a 3 in border; 4 corners, 4 x 3 for the geese, 5 in the middle, 4 of the border
    "stars": ("lamplighters-round",
              {"measures": {"corner square": "3 in", "middle": {"times": 2, "of": "corner square"}, "border": "3 in"},
               "binding": {"fabric": "night"}, "sleeve": None},
              "42 in x 54 in", "42 1/2 in x 54 1/2 in", 12 * 21 + 4),
    # 3 x 4 blocks of 6 in on point: 18 sqrt 2 = 25.456, 24 sqrt 2 = 33.941; 5 in of border on each side adds 10.
    # 35.456 and 43.941 to the nearest 1/8. 12 nine-patches, 6 squares, 14 triangles, 8 borders
    "kites": ("a-kite-each", {}, "about 35 1/2 in x 44 in", "about 36 in x 44 1/2 in", 12 * 9 + 6 + 14 + 8),
    # 4 x 4 cabins: 2 in, and three logs of 1 1/2 in on each side: 11 in
    "hearth": ("sixteen-hearths", {"borders": None}, "44 in x 44 in", "44 1/2 in x 44 1/2 in", 16 * 13),
    # a star of 12 in, 3 in, 3 in and 4 in round it; 8 + 8 patches, 4, 4 x 12 and 4, 4
    "well": ("the-courtyard-well",
             {"measures": {"tooth": "3 in", "star": {"times": 4, "of": "tooth"}, "border": "4 in"},
              "binding": {"fabric": "well water"}},
             "32 in x 32 in", "32 1/2 in x 32 1/2 in", 16 + 4 + 52 + 4),
}


def sample(name: str) -> Any:
    return json.loads((SAMPLES / f"{name}.json").read_text(encoding="utf-8"))


def quilt(name: str) -> Any:
    """One quilt in one size; None takes a member away."""
    file, changes, *_ = QUILTS[name]
    pattern = sample(file)
    if name == "kites":
        pattern["measures"].update(pattern["sizes"][0].get("measures", {}))
    pattern.pop("sizes", None)
    pattern.update(copy.deepcopy({**FIXED, **changes}))
    return {member: value for member, value in pattern.items() if value is not None}


class Written:
    """Pattern files in a folder of their own, and what the program says of them."""

    def __init__(self, muslin: Muslin, folder: pathlib.Path) -> None:
        self.muslin = muslin
        self.folder = folder

    def file(self, pattern: Any) -> str:
        path = self.folder / "pattern.json"
        path.write_text(pattern if isinstance(pattern, str) else json.dumps(pattern, indent=1), encoding="utf-8")
        return str(path)

    def text(self, pattern: Any, *words: str) -> str:
        done = self.muslin.run("pattern", self.file(pattern), *words)
        assert done.returncode == 0 and done.stderr == "", done.stderr
        return done.stdout

    def words(self, pattern: Any) -> str:
        return " ".join(self.text(pattern).split())

    def facts(self, pattern: Any, *words: str) -> Any:
        return json.loads(self.text(pattern, "--json", *words))

    def complaints(self, pattern: Any, status: int = 2) -> list[Any]:
        done = self.muslin.run("pattern", self.file(pattern), "--json")
        assert done.returncode == status, (done.returncode, done.stderr)
        return list(json.loads(done.stdout)["error"]["complaints"])


@pytest.fixture
def written(muslin: Muslin, tmp_path: pathlib.Path) -> Written:
    return Written(muslin, tmp_path)


def part_of(text: str, start: str, end: str) -> str:
    begin = text.index(start)
    return text[begin:text.index(end, begin)]


LAID = " On the cloth ------------ "
CUT = " Cutting list ------------ "
SEW = " Sewing ------ "
PRESS = " Pressing, all together "
BUY = " What to buy ----------- "


# ---- the text -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("name", QUILTS)
def test_a_text_says_how_large_and_what_to_do(written: Written, name: str) -> None:
    _, _, finished, unfinished, patches = QUILTS[name]
    text = written.text(quilt(name))
    assert f"Top, finished: {finished}.\nTop, unfinished: {unfinished}.\n{patches} patches.\n" in text
    assert "An invented quilt" in text and "do not meet" not in text and "?" not in text and "{" not in text
    for heading in ("Read this first", "What to buy", "Cutting list", "On the cloth", "Sewing", "Finishing", "Cautions"):
        assert f"\n{heading}\n{'-' * len(heading)}\n" in text
    assert "infant" in text and "The top is done." in text and "safety standard" in text
    assert max(map(len, text.splitlines())) <= 79 and "\u00a0" not in text


@pytest.mark.parametrize("name", QUILTS)
def test_every_piece_and_part_is_used(written: Written, name: str) -> None:
    """Numbers and letters of the cutting list and the steps are those that later steps take, and all are."""
    text = written.words(quilt(name))
    cut = part_of(text, CUT, LAID)
    sew = text[text.index(SEW):text.index(" Finishing --------- ")]
    pieces = [f"[{number + 1}]" for number in range(len(set(re.findall(r"\[\d+\] (?:Cut|Take)", cut))))]
    assert re.findall(r"(\[\d+\]) (?:Cut|Take)", cut) == pieces
    assert set(re.findall(r"\[\d+\]", sew)) == set(pieces)
    facts = written.facts(quilt(name))["sizes"][0]
    made = [step["letter"] for step in facts["steps"]]
    for letter in made[:-1]:
        assert re.search(rf"[ :;]{letter}\*?( \(|[;.] )", sew), letter
    assert {part["letter"] for step in facts["steps"] for part in step["parts"] if "letter" in part} <= set(made)


def test_strips_are_counted_by_the_set(written: Written) -> None:
    # 20 blocks of 12 in are cut 12 1/2 in wide, three from a set of 40 in (37 1/2 and 1/2 in off both ends): seven
    # sets give 21; a strip of each of six fabrics goes into each.
    text = written.words(quilt("rails"))
    assert text.count("] Cut 7 strips, width of fabric by 2 1/2 in, for A") == 6
    assert "strip set for rail block, make 7" in text and "segments: rail block, make 20" in text
    assert "A set gives 3, 7 sets give 21; 20 needed, 1 over." in text
    # Two of 12 1/2 in, and 1/2 in at either end.
    assert "The last set is sewn for only 2 of them: strips 26 in long are enough for it." in text
    assert "Strips may be up to 1 1/2 in shorter before a set gives less." in text


def test_a_set_is_squared_at_its_ends(written: Written) -> None:
    # 2 1/2 in segments: 16 would need all of the 40 in, so that a set gives 15 and a second one is sewn. One more of
    # 2 1/2 in, and 1/2 in at either end.
    text = written.words(quilt("hearth"))
    assert "strip set for hearth block, center and log 1, make 2" in text
    assert "A set gives 15, 2 sets give 30; 16 needed, 14 over." in text
    assert "The last set is sewn for only 1 of them: strips 3 1/2 in long are enough for it." in text


def test_squaring_is_allowed_for_where_nothing_is_said(written: Written, muslin: Muslin) -> None:
    pattern = quilt("hearth")
    del pattern["cutting"], pattern["buying"]
    text = written.words(pattern)
    assert "A set gives 15, 2 sets give 30; 16 needed" in text
    assert "For straightening the end 1/2 in is counted." in text
    # Nothing is squared where that is said: sixteen of 2 1/2 in take all of 40 in.
    pattern["cutting"] = {"end trim": "0 in"}
    assert "A set gives 16; 16 needed, none over" in written.words(pattern)
    metric = copy.deepcopy(sample("slipway-pebbles"))
    del metric["cutting"]["end trim"], metric["buying"]["straightening"]
    assert written.facts(metric) == muslin.answer("pattern", str(SAMPLES / "slipway-pebbles.json"))


def rails_of(width: str, usable: str, other: "str | None" = None) -> Any:
    """48 segments of five strips."""
    rail = {"down": [{"patch": "ab"[row % 2], "width": width, "height": "2 in"} for row in range(5)]}
    return {"muslin_pattern": 1, "title": "Rails", "parts": {"rail": rail},
            "fabrics": {"a": {"usable width": usable}, "b": {"usable width": other or usable}},
            "top": {"repeat": {"across": ["rail", "rail", "rail"]}, "columns": 4, "rows": 4, "quarters": [[0]]}}


def test_segments_between_two_marks_are_cut_to_one_and_trimmed_back(written: Written) -> None:
    # 3 21/64 in finished is 3 53/64 cut, 3/64 less than 3 7/8. Of 39 in between the ends ten take 38 9/32, cut to the
    # mark 38 3/4; where the cloth is 1/2 in narrower there is not so much.
    back = "trim what is sewn of them to its unfinished size, as much off one side as off the other."
    text = written.words(rails_of("3 21/64 in", "40 in"))
    assert "and cut segments 3 7/8 in wide across it. A set gives 10, 5 sets give 50; 48 needed" in text
    assert f"That is a little more than a segment needs: {back}" in text
    assert "Strips may be up to 1/4 in shorter before a set gives less." in text
    # Of wider cloth the strips are longer than the set takes: 39 3/4 in, for both.
    text = written.words(rails_of("3 21/64 in", "40 in", "41 in"))
    assert text.count("It works down to 39 3/4 in of usable width.") == 2
    text = written.words(rails_of("3 21/64 in", "39 1/2 in"))
    assert "and cut segments 3 27/32 in wide across it. A set gives 10, 5 sets give 50; 48 needed" in text
    assert f"That is a little more than a segment needs: {back}" in text
    assert "Strips must have their full length" in text
    text = written.words(rails_of("3 3/8 in", "40 in"))
    assert "and cut segments 3 7/8 in wide across it. A set gives 10" in text and "a segment needs" not in text


def test_where_there_is_no_block_a_unit_is_tried(written: Written) -> None:
    # 24 teeth of 3 in, one star of 12 in.
    text = written.words(quilt("well"))
    assert "Test unit: first cut and sew as few of each unit as its step makes at a time, and measure them: tooth B, " \
           "3 1/2 in x 3 1/2 in unfinished. They count as some of those needed." in text
    assert "Cutting cannot be undone: cut for the test unit first." in text
    assert "Measures 12 1/2 in x 12 1/2 in unfinished, 12 in x 12 in finished." in text
    assert "Test unit" not in written.words(quilt("stars"))


def test_infants_are_thought_of_before_all_else(written: Written) -> None:
    text = written.words(quilt("well"))
    assert text.index("No quilt belongs in the place where an infant sleeps.") < text.index("What to buy", 300)


def test_segments_come_from_both_ends_where_the_fold_is_kept_clear(written: Written) -> None:
    pattern = quilt("rails")
    pattern["cutting"] = {"end trim": "1/2 in", "fold clear": "1 in"}
    # 19 in on either side of what is kept clear: one segment of 12 1/2 in each, two a set, ten sets.
    text = written.words(pattern)
    assert "Square both ends of each set (1/2 in is allowed at each end) and cut segments 12 1/2 in wide across it, " \
        "from both ends towards the fold: keep 1 in clear in the middle, 1/2 in to either side of the fold. A set " \
        "gives 2, 10 sets give 20; 20 needed, none over" in text
    assert "Pin a label to the left strip of each set" in text


def test_squares_are_cut_for_units_by_their_recipe(written: Written) -> None:
    # 48 geese of 6 in, four from a square of 7 1/4 in; 96 corners of 3 in on 48 squares in a square, of which 12 have a
    # centre of 6 / sqrt 2 + 1/2 = 4.743 in.
    text = written.words(quilt("stars"))
    assert "Cut 12 squares at 7 1/4 in x 7 1/4 in, leave whole: four units come of one large and four small" in text
    assert "Cut 48 squares at 3 7/8 in x 3 7/8 in, leave whole" in text
    assert "Cut 24 squares at 3 7/8 in x 3 7/8 in, cut once on the diagonal: 48 triangles" in text
    assert "Cut 12 squares at 4 3/4 in x 4 3/4 in, for" in text
    assert "Cut 48 squares at 3 1/2 in x 3 1/2 in, for" in text
    assert "Trim to 6 1/2 in by 3 1/2 in unfinished" in text


def test_strips_longer_than_the_cloth_are_joined(written: Written) -> None:
    # 48 1/2 in are 40 and 9 in less a seam of 1/2 in, 42 1/2 are 40 and 3.
    text = written.words(quilt("stars"))
    assert "join each of them end to end from strips 3 1/2 in wide, with straight seams" in text
    assert "Cut 2 at 48 1/2 in x 3 1/2 in" in text and "Cut 2 at 42 1/2 in x 3 1/2 in" in text
    laid = part_of(text, LAID, SEW)
    assert "2 strips 3 1/2 in wide, from each: 40 in long for [1] - 2 strips 3 1/2 in wide, from each: 40 in long for " \
        "[2]" in laid
    assert "2 pieces 9 in long for [1]" in laid and "2 pieces 3 in long for [2]" in laid
    # Beside two of 3 in the strip holds 16 1/2 in of binding: 40 less 22 1/2.
    assert "17 1/2 in of this strip are free: cut those for [2] longer" in laid
    assert "Only 1/2 in of this strip are free to leave those for [1] longer" in laid
    # Strips for sets are not joined, long as they are.
    assert "join each of them" not in written.words(quilt("rails"))


def test_cloth_is_bought_by_fabric(written: Written) -> None:
    # Brass: 48 and 24 squares of 3 7/8 in, ten from a strip: eight strips, 31 in, and 1/2 in to straighten; 7/8 yd are
    # 31 1/2 in. Cream: 12 squares of 4 3/4 in, eight from a strip. Binding: 2 x (42 + 54) + 12 in, five joins of 2 1/2.
    text = written.words(quilt("stars"))
    bought = part_of(text, BUY, CUT)
    assert "F2, brass. Needed: 31 1/2 in; Buy: 7/8 yd; To spare: none; For: top" in bought
    assert "brass: buy at least 7/8 yd: that leaves nothing to spare, 1 yd is safer." in bought
    assert "F3, cream. Needed: 10 in; Buy: 3/8 yd; To spare: 3 1/2 in; For: top" in bought
    assert "6 strips cut 2 1/2 in wide, 216 1/2 in together; 5 joins on the slant take 2 1/2 in each. That makes " \
        "204 in: 192 in round the quilt and 12 in" in text
    assert "5 strips 2 1/2 in wide, from each: 40 in long for binding" in text
    # Seven strips of each of six fabrics for the rails: 17 1/2 in and 1/2 in. Three segments of 12 1/2 in and 1/2 in at
    # either end want 38 1/2 in.
    rails = written.words(quilt("rails"))
    assert rails.count("7 strips 2 1/2 in wide, from each: 40 in long for [") == 6
    assert rails.count("Needed: 18 in; Buy: 1/2 yd; To spare: none") == 5
    assert rails.count("It works down to 38 1/2 in of usable width.") == 5
    assert "fat quarter" not in rails
    # A quarter of a yard may lie as a fat quarter in the shop, which has no strip right across.
    assert "off the bolt, no fat quarter" in written.words(quilt("sampler"))


def test_a_strip_that_a_join_would_take_is_left_out(written: Written) -> None:
    # Round the rails are 216 in. Six strips and five joins of 2 1/2 in make 227 1/2 in; for 228 in a seventh of 3 in
    # would lose 2 1/2 in by its join.
    text = written.words(quilt("rails"))
    assert "6 strips cut 2 1/2 in wide, 240 in together; 5 joins on the slant take 2 1/2 in each. That makes 227 1/2 in: " \
        "216 in round the quilt and 11 1/2 in" in text
    assert part_of(text, LAID, SEW).count("for binding") == 1


def test_what_a_file_asks_of_a_binding_is_kept(written: Written) -> None:
    pattern = quilt("rails")
    pattern["binding"]["extra"] = "12 in"
    text = written.words(pattern)
    assert "7 strips cut 2 1/2 in wide" in text and "That makes 228 in: 216 in round the quilt and 12 in" in text


def test_pieces_that_lie_both_ways_are_named(written: Written) -> None:
    # Hearth: 4 of 16 logs of 10 in stand beside those of 11 1/2 in, 12 lie in strips.
    laid = part_of(written.words(quilt("hearth")), LAID, SEW)
    assert ", turned: cross-cut at 2 in" in laid and "some lie along the cloth, some across it." in laid
    assert "some lie along" not in written.words(quilt("stars"))


@pytest.mark.parametrize("name", QUILTS)
def test_what_is_laid_out_is_what_is_cut(written: Written, name: str) -> None:
    """Every number of the cutting list lies in some strip, and what is cut so many times lies so often."""
    facts = written.facts(quilt(name))["sizes"][0]
    laid: dict[str, int] = {}
    for fabric in facts["fabrics"]:
        for strip in fabric["strips"]:
            for place in strip["pieces"]:
                laid[place["piece"]] = laid.get(place["piece"], 0) + strip["times"] * place["count"]
    wanted: dict[str, int] = {}
    for cut in facts["cuts"]:
        if not cut["joined"]:
            number = f"[{cut['piece']}]"
            wanted[number] = wanted.get(number, 0) + cut["count"]
    assert {number: laid[number] for number in wanted} == wanted
    assert set(laid) - set(wanted) <= {"binding"} | {f"[{cut['piece']}]" for cut in facts["cuts"] if cut["joined"]}


def test_diamonds_are_cut_from_a_strip(written: Written) -> None:
    # A 12 in star: sides of 12 / (2 + sqrt 2) = 3.515 in, 2.485 in between two of them, strips of 3 in (2.985). Eight
    # take 8 x 3 sqrt 2 + 3 = 36.94 in. Mitred strips: 24 + 8 + 1/2 + sqrt 2 / 2 = 33.2 in, with 2 in to hold up to 36.
    text = written.words(quilt("well"))
    assert "Cut 1 strip, width of fabric by 3 in, and from it 8 diamonds: cut one end off at 45 degrees, then cut " \
        "parallel to that, 3 in apart, measured square to the cut" in text
    assert "Cut 4 strips at 36 in x 4 1/2 in, cut generous (from point to point a strip needs about 33 1/4 in, cut)" \
        in text
    assert "Strips of a mitered border are cut long" in text and "a strip [1] to each side, middle on middle" in text
    assert "Press all four seams towards the strips; all miters open." in text
    # The list, the plan, the table and the cutting of the strip say one length.
    assert re.search(r"4 strips 4 1/2 in wide, from each: 1 of \[1\]", text)
    assert "border, all four sides (L); Finished, length x width: 32 in x 4 in; Cut, length x width: 36 in x 4 1/2 in" \
        in text and "Before each pair of strips" not in text


def test_squares_on_point_are_told_row_by_row(written: Written) -> None:
    # 3 x 4 blocks and 2 x 3 plain squares: diagonal rows of 1, 3, 5, 5, 3 and 1; 10 side triangles from three squares.
    text = written.words(quilt("kites"))
    field = part_of(text, "Diagonal row 1:", "Sew each row,")
    rows = field.split("Diagonal row ")[1:]
    assert [row.count("C") + row.count("[") for row in rows] == [1, 3, 5, 5, 3, 1]
    assert field.count("side triangle") == 10
    assert "12 side setting triangles, 2 of them spare" in text and "4 corner setting triangles" in text
    assert text.count("cut after the top is measured through the middle") == 4
    # Cut twice, a square leaves its sides on the long edge; cut once, on the two short ones.
    assert "Side triangles were cut twice: their long side, on the outside, lies on the straight grain" in text
    assert "Corner triangles were cut once: their two short sides, on the outside, lie on the straight grain" in text


def test_binding_and_sleeve_stand_in_the_cutting_list(written: Written) -> None:
    pattern = quilt("stars")
    pattern["sleeve"] = {"fabric": "cream"}
    cut = part_of(written.words(pattern), CUT, LAID)
    assert "- Binding: cut 6 strips 2 1/2 in wide, 216 1/2 in together." in cut
    assert "- Hanging sleeve: cut 1 piece at 42 in x 9 in, joined from strips." in cut
    assert "as large as [6]: keep them apart" in cut


def test_what_is_spare_is_told_with_the_units(written: Written) -> None:
    # Five half-squares of radish and paper, two at a time; squares cut twice give four triangles, cut once two.
    sampler = written.words(quilt("sampler"))
    assert "3 times in all, which makes 1 more than needed." in sampler
    assert re.search(r"For 2 at a time take 4 triangles \[\d+\] radish and 4 triangles \[\d+\] paper; 2 times in all",
                     sampler)
    assert re.search(r"For each take 1 square \[\d+\] cream and 4 triangles \[\d+\] brass", written.words(quilt("stars")))


@pytest.mark.parametrize("name", QUILTS)
def test_of_each_cloth_the_longest_are_cut_first(written: Written, name: str) -> None:
    facts = written.facts(quilt(name))["sizes"][0]
    last: dict[str, tuple[bool, int]] = {}
    for cut in facts["cuts"]:
        whole = cut["source"] == "strip for sets" or (name == "well" and cut["fabric"] == "brick" and
                                                      cut["source"] == "unit")
        length = 40 * 8128 if whole else max(cut["cut"]["width"]["ticks"], cut["cut"]["height"]["ticks"])
        before = last.get(cut["fabric"])
        if before is not None and before[0] == cut["joined"]:
            assert length <= before[1] or cut["joined"], cut
        assert before is None or before[0] or not cut["joined"]
        last[cut["fabric"]] = (cut["joined"], length)


@pytest.mark.parametrize("name", QUILTS)
def test_units_are_pressed_as_their_recipes_say(written: Written, name: str) -> None:
    text = written.words(quilt(name))
    assert "towards fabric" not in text and "as said at the end" not in text
    assert all(step["the_other_way"] == 0 for step in written.facts(quilt(name))["sizes"][0]["steps"]
               if step["kind"] == "unit")


def test_what_does_not_lock_is_named(written: Written) -> None:
    # Hearth: the last two straw logs end at the edges where straw lies beside straw: two in each of 4 + 2 seams.
    text = written.words(quilt("hearth"))
    assert "at all but 12 of them" in text
    assert "M (block row), seam 1, seam 3: 8 places, a seam of L and one of J" in text
    assert "N (block row), seam 2: 4 places, a seam of L and one of J" in text
    assert "These do not lock: seams of L and of J, at seam 1, seam 3. Where they meet press one" in text
    # Stars: both seams of a goose and both of the square in a square go to the brass where their points meet: twice 4
    # in each of 12 blocks. Nowhere else.
    stars = written.words(quilt("stars"))
    assert "at all but 96 of them" in stars
    assert stars.count("48 places, a seam of A and one of B") == 2


def test_units_pressed_freely_say_how(written: Written) -> None:
    pattern = quilt("stars")
    pattern["pressing"] = {"units": "free"}
    text = written.words(pattern)
    assert "lie opposite ways at every one of them" in text
    assert "Press the seam as said at the end." in text and "Press, as A lies not turned, the " in text


def test_one_block_is_measured_before_the_rest(written: Written) -> None:
    text = written.words(quilt("hearth"))
    assert "Test block: first cut and sew what one block needs, step by step, and measure it: hearth block L, " \
        "11 1/2 in x 11 1/2 in unfinished." in part_of(text, "Read this first", BUY)
    assert "Test block:" not in written.words(quilt("well"))
    # Nothing is to be laid aside for a top without borders.
    assert "Lay cloth aside" not in text and "Lay cloth aside" in written.words(quilt("kites"))


def test_errors_add_up_both_ways(written: Written) -> None:
    # Rails, 1/32 in a seam: across 3 + 2 x 5 seams, 13/32; down 4 between rows and 5 in each of five, 29/32, which no
    # one column has.
    assert "comes out off by no more than 1/2 in across and 1 in down." in written.words(quilt("rails"))


# ---- borders and finishing ----------------------------------------------------------------------------------------


def test_border_strips_are_told_in_pairs_finished_and_cut(written: Written) -> None:
    text = written.words(quilt("stars"))
    # 48 in and 36 + 6 in, 3 in wide, and 1/2 in each way.
    assert "[1] night. For: border, left side (I); border, right side (J); Finished, length x width: 48 in x 3 in; " \
        "Cut, length x width: 48 1/2 in x 3 1/2 in" in text
    assert "[2] night. For: border, top (K); border, bottom (L); Finished, length x width: 42 in x 3 in" in text
    assert "measure it through the middle" in text


def test_strips_of_a_mitred_border_say_where_they_go(written: Written) -> None:
    # Raw edges of 140.2 and 110.2 cm, twice 8 cm, and twice sqrt 2 times 6 mm: 157.9 and 127.9 cm. With 5 cm to hold, up
    # to a whole centimetre of the longer one, 163 cm.
    pattern = sample("slipway-pebbles")
    pattern["sizes"] = pattern["sizes"][:1]
    text = written.words(pattern)
    assert "Sew a strip [7] to the left and the right side and a strip [8] to the top and the bottom" in text
    for piece, long, where in (("7", 163, "left and right"), ("8", 133, "top and bottom")):
        assert f"[{piece}] Cut 2 strips at {long} cm x 9.2 cm, cut generous" in text
        assert re.search(rf"\[{piece}\] weed\. For: outer border, {where} \(L\); Finished, length x width: "
                         rf"{long - 8} cm x 8 cm; Cut, length x width: {long} cm x 9.2 cm", text)
    # 163 cm are 106 and 58.2 less a seam of 1.2.
    assert "106 cm long for [7]" in text and "58.2 cm long for [7]; 28.2 cm long for [8]" in text
    assert "mitered" not in text and "all mitres open" in text
    assert "spread the back" in text and "pebble block" in text


def test_a_short_stub_is_told(written: Written) -> None:
    pattern = quilt("rails")
    pattern["counts"] = {"columns": 3, "rows": 3}
    pattern["borders"] = [{"fabric": "rust", "width": "2 in"}]
    # 36 and 40 in: 36 1/2 in are no longer than 40 in, 40 1/2 in are 40 and 1 in less a seam of 1/2 in.
    text = written.words(pattern)
    assert "is joined with a piece only 1 in long" in text
    assert "On cloth usable over at least 40 1/2 in it is cut in one, without a join." in text


def test_a_border_with_cornerstones_is_measured_both_ways_first(written: Written) -> None:
    pattern = quilt("rails")
    pattern["borders"] = [{"fabric": "rust", "width": "2 in", "cornerstone": "sand"}]
    text = written.words(pattern)
    assert "Of a border with cornerstones measure both ways before any of its strips is sewn on" in text
    assert "For: border, left and right (" in text and "; Finished, length x width: 60 in x 2 in" in text


def test_backing_panel_by_panel(written: Written) -> None:
    pattern = quilt("rails")
    pattern["backing"] = {"name": "calico", "beyond": "4 in"}
    # 56 x 68 in from 40 in cloth, 1/2 in seams. Side by side, two panels of 40 in, 79 in wide, take 136 in; one below
    # the other two of 56 in take 112 in, joined 79 in: 3 1/8 yd are 112 1/2. An insert would be 56 - 40 + 2 = 18 in wide,
    # no wider than 20, and 68 in long: two strips. 68 + 36 = 104 in, 2 7/8 yd are 103 1/2 in, so 3 yd.
    facts = written.facts(pattern)["sizes"][0]["backing"]
    assert facts["buy"]["text"] == "3 yd"
    assert [(panel["count"], panel["cut"]["width"]["text"], panel["cut"]["height"]["text"])
            for panel in facts["panels"]] == [(1, "20 in", "68 in"), (2, "40 in", "18 in"), (1, "20 in", "68 in")]
    text = written.words(pattern)
    assert "The back must measure at least 56 in x 68 in" in text
    assert "Sewn together it measures at least 56 in x 68 in" in text
    assert "panels one below the other, seams along its width. Cut from: 2 panels; Buy: 3 1/8 yd" in text
    assert "For: back of each quilt: 1 panel and an insert, 4 pieces" in text


def test_what_is_least_is_rounded_up_alike(written: Written) -> None:
    # The same in centimetres: 56 in are 142.24 cm, 68 in 172.72; 54 and 66 in 137.16 and 167.64.
    # The insert is 16 in and four allowances of 12 mm wide, 45.44 cm.
    text = written.words({**quilt("rails"), "units": "cm", "backing": {"beyond": "4 in", "width": "40 in"},
                          "batting": {"beyond": "3 in"}})
    assert "The back must measure at least 142.3 cm x 172.8 cm" in text
    assert "Sewn together it measures at least 142.3 cm x 172.8 cm" in text
    assert re.search(r"1 half 1 piece 50.8 cm x 172.8 cm\s+2 insert 2 pieces 101.6 cm x 45.44 cm", text)
    assert "Cut 137.2 cm x 167.7 cm: it stands out" in text


def test_backs_of_all_tops_shrink_and_have_their_extra(written: Written) -> None:
    pattern = quilt("rails")
    pattern["backing"], pattern["batting"] = {"name": "calico", "beyond": "4 in"}, {"beyond": "3 in"}

    def bought(**changes: Any) -> str:
        return str(written.facts({**pattern, **changes})["sizes"][0]["backing"]["buy"]["text"])

    # 104 in for one, see above; 1/8 yd is 4 1/2 in.
    assert bought(tops=2) == "5 7/8 yd"  # 208 in, 47 steps
    assert bought(buying={"extra": "12 in"}) == "3 1/4 yd"  # 116 in, 26 steps
    assert bought(buying={"shrinkage": 10}) == "3 1/4 yd"  # 104 / 0.9 = 115.6 in
    text = written.words({**pattern, "tops": 2})
    assert "Buy 5 7/8 yd for all 2 quilts." in text
    assert "backs of all 2 quilts, of each: 1 panel and an insert, 4 pieces" in text
    assert "Needed: 2 pieces of 54 in x 66 in" in text and "middle of all 2 quilts" in text


def test_a_backing_of_a_fabric_of_the_top_is_added_up(written: Written) -> None:
    pattern = quilt("rails")
    pattern["backing"] = {"fabric": "tide"}
    # 3 yd and 1/2 yd.
    assert "tide is bought for the top and for the back: 3 1/2 yd in all." in written.words(pattern)


def test_a_sleeve_is_laid_out_with_the_cloth(written: Written) -> None:
    pattern = quilt("stars")
    pattern["sleeve"] = {"fabric": "cream"}
    # 42 in less an inch at either side, and an inch of hem at either end: 42 in, more than 40; 2 x 4 + 1/2 + 1/2 = 9 in.
    text = written.words(pattern)
    assert "Of cream cut 1 piece of 42 in x 9 in, joined from strips, as the cloth is not so wide; finished 40 in long." \
        in text
    assert "long for sleeve" in text


def test_a_bed_says_how_far_the_quilt_hangs(written: Written) -> None:
    pattern = quilt("rails")
    pattern["sizes"] = [{"name": "cot", "bed": {"width": "36 in", "length": "50 in", "depth": "8 in"}}]
    # 6 in at the sides, 10 in at the foot; 36 + 16 = 52 in wanted; corner sqrt(36 + 100) = 11.66 in.
    text = written.words(pattern)
    assert "on each side it hangs 6 in, at the foot it hangs 10 in." in text
    assert "To cover the sides of the mattress it would have to be 4 in wider." in text
    assert "the corners hang longer than the drop: about 11 5/8 in below the top of the mattress" in text


# ---- words and units ----------------------------------------------------------------------------------------------


def test_words_are_those_of_the_file(written: Written) -> None:
    pattern = quilt("rails")
    pattern["words"] = {"batting": "wadding", "fabric": "cloth", "cloth sold by": "metre"}
    text = written.words(pattern)
    assert "batting" not in text and "Wadding" in text and "width of cloth by 2 1/2 in" in text
    assert " yd" not in text
    # 18 in are 45.72 cm, and shops cut tenths of a metre: 50 cm are 19.685 in.
    assert "F2, tide. Needed: 18 in; Buy: 0.5 m; To spare: 1 5/8 in; For: top" in text


def test_a_metric_pattern_may_be_cut_from_cloth_sold_by_the_yard(written: Written) -> None:
    pattern = sample("slipway-pebbles")
    pattern["words"]["cloth sold by"] = "yard"
    pattern["buying"].pop("step", None)
    # 98.2 cm: eight eighths of a yard are 91.44 cm, nine are 102.87.
    assert "F1, pebble. Needed: 98.2 cm; Buy: 1 1/8 yd; To spare: 4.67 cm; For: top" in written.words(pattern)


def test_a_metric_pattern_has_no_inches(written: Written) -> None:
    text = written.words(sample("slipway-pebbles"))
    assert " in " not in re.sub(r"[^0-9] in ", " ", text).replace("1 in and 25 mm", "")
    # 7 x 9 blocks of 15 cm, 2 cm and 8 cm round them: 125 x 155.
    assert "lap: 125 cm x 155 cm" in text
    # Five strips of 16.2 cm and one more for 31 squares, six from 106 cm, and 1 cm to straighten.
    assert "F1, pebble. Needed: 98.2 cm; Buy: 1 m; To spare: 1.8 cm; For: top" in text


# ---- pre-cut strips -----------------------------------------------------------------------------------------------


def bundle(have: int) -> Any:
    """Blocks of two segments, each across three strips of one bundle: 5 1/2 in high, 6 1/2 in wide, cut."""
    patch = {"patch": "bundle", "width": "3 in", "height": "2 in"}
    return {"muslin_pattern": 1, "title": "Pairs", "invented": True,
            "fabrics": {"bundle": {"usable width": "42 in", "strips": {"cut width": "2 1/2 in", "have": have}}},
            "parts": {"segment": {"down": [patch, patch, patch], "strip piecing": "always"},
                      "pair": {"called": "pair block", "block": True, "across": ["segment", "segment"]}},
            "top": {"repeat": "pair", "columns": 4, "rows": 4}}


def test_strips_in_hand_are_counted(written: Written) -> None:
    # 32 segments of 3 1/2 in, twelve from 42 in: three sets of three strips. 18 strips: 72 segments, two tops.
    facts = written.facts(bundle(18))["sizes"][0]["fabrics"][0]
    assert (facts["strips_needed"], facts["strips_have"], facts["tops_that_they_give"]) == (9, 18, 2)
    text = written.words(bundle(18))
    assert "The strips that there are suffice for 2 tops of this size." in text
    assert sum(strip["times"] for strip in facts["strips"]) == 9
    assert "Take 9 strips, 2 1/2 in wide as bought" in text and "Strips that are taken whole" in text
    few = written.words(bundle(8))
    assert "bundle: 9 strips are needed, and there are only 8: 1 more are missing." in few and "do not suffice for one top" in few


def test_segments_of_different_sets_are_paired(written: Written) -> None:
    # 32 segments of three sets, 11, 11 and 10, dealt round sixteen blocks: 1 with 2 in blocks 1 to 6 (16 places later),
    # as places 1 to 11 are of set 1, 12 to 22 of set 2. Block i takes places i and i + 16.
    text = written.words(bundle(18))
    assert "Lay the segments of each set on a stack of its own, sets 1 to 3." in text
    assert "blocks 1 to 6: one segment each of stacks 1 and 2." in text
    assert "blocks 7 to 11: one segment each of stacks 1 and 3." in text
    assert "blocks 12 to 16: one segment each of stacks 2 and 3." in text


# ---- sizes, tables, batches ---------------------------------------------------------------------------------------


def test_one_size_alone(muslin: Muslin) -> None:
    file = str(SAMPLES / "a-kite-each.json")
    everything = muslin.answer("pattern", file)
    names = [size["size"] for size in everything["sizes"]]
    assert len(names) > 1
    one = muslin.answer("pattern", file, "--size", names[1].upper())
    assert one["sizes"] == [everything["sizes"][1]]
    complaint = muslin.complaint(2, "pattern", file, "--size", "gigantic")
    assert "gigantic" in complaint and f'"{names[0]}"' in complaint and "--size" in complaint


def test_all_sizes_stand_side_by_side_on_the_cover(muslin: Muslin) -> None:
    text = muslin.words("pattern", str(SAMPLES / "a-kite-each.json"))
    cover = part_of(text, "Sizes, and what to buy for each", "Read this first")
    for size in muslin.answer("pattern", str(SAMPLES / "a-kite-each.json"))["sizes"]:
        assert f"{size['size']}: {size['fabrics'][0]['buy']['text']}" in cover


@pytest.mark.parametrize("name", sorted(path.stem for path in SAMPLES.glob("*.json")))
def test_tables_as_comma_separated_values(muslin: Muslin, name: str) -> None:
    file = str(SAMPLES / f"{name}.json")
    rows = list(csv.DictReader(io.StringIO(muslin.text("pattern", file, "--csv"))))
    facts = muslin.answer("pattern", file)["sizes"]
    assert {row["table"] for row in rows} == {"sizes", "cuts", "purchase"}
    for size in facts:
        mine = [row for row in rows if row["size"] == size["size"]]
        cuts = [row for row in mine if row["table"] == "cuts"]
        made = [{**cut, "what": cut["source"]} for cut in size["cuts"]]
        made += [{**strip, "what": "binding"} for strip in (size["binding"] or {"strips": []})["strips"]]
        made += [{**size["sleeve"], "count": size["sleeve"]["sleeves"], "what": "sleeve"}] if size["sleeve"] else []
        assert [int(row["count"]) for row in cuts] == [cut["count"] for cut in made]
        assert [int(row["width ticks"]) for row in cuts] == [cut["cut"]["width"]["ticks"] for cut in made]
        assert [row["what"] for row in cuts] == [cut["what"] for cut in made]
        assert [row["cut again"] or "no" for row in cuts] == [cut.get("cut_again", "no") for cut in made]
        cloth = [row["buy"] for row in mine if row["what"] == "cloth"]
        assert cloth == [fabric["buy"]["text"] for fabric in size["fabrics"] if "buy" in fabric]


def test_a_name_that_looks_like_a_formula_stays_text(written: Written) -> None:
    pattern = quilt("rails")
    pattern["fabrics"]["tide"]["name"] = "=1+\"2\""
    rows = list(csv.DictReader(io.StringIO(written.text(pattern, "--csv"))))
    assert "'=1+\"2\"" in {row["fabric"] for row in rows}


def test_a_batch_answers_as_the_command_line_does(muslin: Muslin, written: Written) -> None:
    file = str(SAMPLES / "ferry-steps.json")
    broken = written.file({"muslin_pattern": 1})
    replies = muslin.batch({"command": "pattern", "file": file, "size": "lap", "id": 7},
                           {"command": "pattern", "file": broken}, status=1)
    assert replies[0]["id"] == 7
    assert replies[0]["answer"]["sizes"] == muslin.answer("pattern", file, "--size", "lap")["sizes"]
    assert len(replies[1]["error"]["complaints"]) >= 2


def test_facts_have_names_and_no_ids(muslin: Muslin) -> None:
    answer = muslin.answer("pattern", str(SAMPLES / "lamplighters-round.json"))

    def looked_through(value: Any) -> None:
        if isinstance(value, dict):
            assert "node" not in value and "id" not in value
            if "ticks" in value:
                assert isinstance(value["ticks"], int) and isinstance(value["text"], str)
            for member in value.values():
                looked_through(member)
        elif isinstance(value, list):
            for element in value:
                looked_through(element)

    looked_through(answer)


# ---- what goes wrong ----------------------------------------------------------------------------------------------


def test_every_complaint_has_its_place(written: Written) -> None:
    pattern = quilt("rails")
    pattern["measures"]["strip"] = "2 parsecs"
    pattern["binding"]["fabric"] = "tartan"
    complaints = written.complaints(pattern)
    assert {"/measures/strip", "/binding/fabric"} <= {complaint["place"] for complaint in complaints}
    done = written.muslin.run("pattern", written.file(pattern))
    assert done.returncode == 2 and done.stdout == ""
    assert "/measures/strip" in done.stderr and "tartan" in done.stderr and "things are wrong" in done.stderr


def test_a_complaint_names_the_sizes_that_have_it(written: Written) -> None:
    pattern = quilt("rails")
    pattern["sizes"] = [{"name": "lap"}, {"name": "twin", "measures": {"strip": "0 in"}}, {"name": "full"}]
    done = written.muslin.run("pattern", written.file(pattern))
    assert ", size twin: Finished size is 0 in" in done.stderr
    pattern["measures"]["strip"] = "0 in"
    done = written.muslin.run("pattern", written.file(pattern))
    assert "Finished size is 0 in" in done.stderr and ", size" not in done.stderr


def test_text_that_is_no_json_is_told_with_its_line(written: Written) -> None:
    complaints = written.complaints('{\n "muslin_pattern": 1,\n oops\n}')
    assert complaints[0]["line"] == 3


def test_what_has_no_answer_is_told_apart(written: Written) -> None:
    pattern = quilt("rails")
    # Blocks cut on the diagonal hold no seam: a square of 10 ft does not fit on a bolt, and is no strip to be joined.
    pattern["top"] = {"unit": "half-square", "size": "120 in", "fabrics": ["tide", "mist"]}
    complaints = written.complaints(pattern, status=1)
    assert all(complaint["status"] is not None for complaint in complaints)


def test_edges_that_do_not_meet_are_told_in_the_document(written: Written) -> None:
    pattern = quilt("rails")
    pattern["top"] = {"across": ["rail", {"patch": "tide", "width": "2 in", "height": "11 3/4 in"}]}
    done = written.muslin.run("pattern", written.file(pattern))
    text = " ".join(done.stdout.split())
    assert done.returncode == 1 and '/top, size "as given": edges do not meet here' in done.stderr
    assert "1 pair of edges does not meet: change the design before you cut." in text
    assert "/top in the file: part 1, /parts/rail in the file, measures 12 in finished, part 2, /top/across/1 in the " \
        "file, 11 3/4 in, where they are sewn together: they differ by 1/4 in" in text
    done = written.muslin.run("pattern", written.file(pattern), "--json")
    misfit = json.loads(done.stdout)["sizes"][0]["misfits"][0]
    assert (misfit["kind"], misfit["difference"]["text"]) == ("length", "1/4 in")
    assert [misfit[f"{whose}place"] for whose in ("", "first_", "second_")] == ["/top", "/parts/rail", "/top/across/1"]
    done = written.muslin.run("pattern", written.file(pattern), "--csv")
    (row,) = [row for row in csv.DictReader(io.StringIO(done.stdout)) if row["table"] == "misfits"]
    assert row["what"].startswith("/top: ") and (row["width"], row["height"]) == ("12 in", "11 3/4 in")


def test_a_file_that_is_not_there_is_trouble(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    assert "No such file" in muslin.complaint(3, "pattern", str(tmp_path / "none.json"))


def test_units_are_those_of_the_file(muslin: Muslin) -> None:
    assert "--units" in muslin.complaint(2, "pattern", str(SAMPLES / "ferry-steps.json"), "--units", "cm")


def test_it_reads_standard_input(muslin: Muslin) -> None:
    given = (SAMPLES / "ferry-steps.json").read_text(encoding="utf-8")
    done = muslin.run("pattern", "-", "--size", "lap", given=given)
    assert done.returncode == 0 and done.stdout.startswith("Ferry Steps\n===========\n")


def test_an_existing_file_is_not_overwritten(written: Written, muslin: Muslin, tmp_path: pathlib.Path) -> None:
    target = tmp_path / "out.txt"
    target.write_text("mine", encoding="utf-8")
    file = written.file(quilt("rails"))
    assert muslin.run("pattern", file, "--output", str(target)).returncode == 3
    assert target.read_text(encoding="utf-8") == "mine"
    assert muslin.run("pattern", file, "--output", str(target), "--force").returncode == 0
    assert target.read_text(encoding="utf-8").startswith("Ferry Steps\n")


def test_it_says_the_same_each_time(written: Written) -> None:
    assert written.text(quilt("kites")) == written.text(quilt("kites"))


@pytest.mark.skipif(os.name != "posix", reason="signals")
def test_an_interrupt_ends_it(written: Written) -> None:
    pattern = quilt("stars")
    pattern["sizes"] = [{"name": f"size {number}"} for number in range(12)]
    with subprocess.Popen([written.muslin.program, "pattern", written.file(pattern)], stdout=subprocess.PIPE,
                          stderr=subprocess.PIPE, text=True) as process:
        time.sleep(0.005)
        process.send_signal(signal.SIGINT)
        out, _ = process.communicate(timeout=60)
    assert (process.returncode, out) in ((130, ""), (-signal.SIGINT, "")) or process.returncode == 0
