"""What can be made from what there is: every figure worked by hand.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import json
import pathlib
from typing import Any

from program import Muslin, inches

STRIPS = "42 of 2 1/2 x 42 in"
SQUARES = "40 of 5 in"


def ideas(muslin: Muslin, *words: str) -> list[Any]:
    found: list[Any] = muslin.answer("from-stock", *words, "--list", "0")["ideas"]
    return found


def only(found: list[Any], **members: Any) -> Any:
    """The one idea with these members."""
    fitting = [idea for idea in found if all(idea.get(name) == value for name, value in members.items())]
    assert len(fitting) == 1, [(idea["number"], idea.get("unit"), idea.get("method")) for idea in fitting]
    return fitting[0]


def top(idea: Any) -> tuple[float, float]:
    return inches(idea["top_finished_width"]), inches(idea["top_finished_length"])


def test_strip_sets_of_six_by_hand(muslin: Muslin) -> None:
    """A set of six is 12 1/2 in wide, 12 in finished, and gives six segments of 6 1/2 in (39 of 42 in); 7 sets give 42
    segments, 21 blocks of two. Of those 20 are laid out 4 x 5, from 40 segments. The next larger, 4 x 6, takes 48
    segments, 8 sets, 48 strips."""
    idea = only(ideas(muslin, STRIPS, "--all"), strips_in_a_set=6, segments_in_a_block=2)
    assert (inches(idea["segment_cut"]), inches(idea["block_finished_width"])) == (6.5, 12)
    assert (idea["columns"], idea["rows"], idea["blocks"], top(idea)) == (4, 5, 20, (48, 60))
    assert (idea["sets"], idea["used"], idea["left"], idea["segments_left"]) == (7, 42, 0, 2)
    larger = idea["next_larger"]
    assert (larger["columns"], larger["rows"], larger["more"], top(larger)) == (4, 6, 6, (48, 72))


def test_half_squares_by_hand(muslin: Muslin) -> None:
    """A square of 5 in, 7/8 in larger than what finishes, gives half-squares of 4 1/8 in, two from each pair of
    squares: from 20 and 20 come 40. 6 x 6 take 18 and 18; the next larger, 6 x 7, takes 21 and 21."""
    idea = only(ideas(muslin, SQUARES, "--all"), unit="half-square", method="two-at-a-time",
                block_finished_width={"ticks": 4 * 8128 + 1016, "text": "4 1/8 in", "exact": True})
    assert (idea["fabrics"], idea["columns"], idea["rows"], top(idea)) == (2, 6, 6, (24.75, 24.75))
    assert (idea["used"], idea["left"], idea["units_left"]) == (36, 4, 4)
    assert (idea["next_larger"]["columns"], idea["next_larger"]["rows"], idea["next_larger"]["more"]) == (6, 7, 2)
    assert idea["seen_in_the_top"]["ppm"] == 610000  # 24.75 x 24.75 of 40 x 25 square inches


def test_a_smaller_unit_by_hand(muslin: Muslin) -> None:
    """Half-squares of 2 in take squares of 2 7/8 in: one from each 5 in square, so two units from two squares; 1 1/2 in
    take 2 3/8 in, four from each square: eight units."""
    two, one = (only(ideas(muslin, SQUARES, "--all", "--block", size), unit="half-square", method="two-at-a-time")
                for size in ("2", "1 1/2"))
    assert (two["blocks"] + two["units_left"], one["blocks"] + one["units_left"]) == (40, 160)
    assert top(two) == (12, 12) and top(one) == (12 * 1.5, 13 * 1.5)
    assert one["used"] == 2 * 20  # 156 units, eight from two squares


def test_the_largest_comes_first_and_the_rest_in_order(muslin: Muslin) -> None:
    for words in ((STRIPS,), (SQUARES,), (STRIPS, SQUARES, "6 of 18 x 21 in", "--cut-strips", "2 1/2")):
        areas = [top(idea)[0] * top(idea)[1] for idea in ideas(muslin, *words)]
        assert areas == sorted(areas, reverse=True)
        shares = [idea["seen_in_the_top"]["ppm"] for idea in ideas(muslin, *words, "--rank", "least-left-over")]
        assert shares == sorted(shares, reverse=True)
        blocks = [inches(idea["block_finished_width"]) * inches(idea["block_finished_height"])
                  for idea in ideas(muslin, *words, "--rank", "largest-block")]
        assert blocks == sorted(blocks, reverse=True)


def test_tops_are_neither_broad_nor_too_long_and_larger_ones_are_larger(muslin: Muslin) -> None:
    for idea in ideas(muslin, STRIPS, SQUARES, "--all"):
        width, length = top(idea)
        assert width <= length <= 1.5 * width
        assert 0 <= idea["left"] == idea["there"] - idea["used"]
        larger = idea["next_larger"]
        assert larger["more"] >= 0 and larger["columns"] * larger["rows"] > idea["blocks"]


def test_the_library_agrees_with_its_own_plan(muslin: Muslin) -> None:
    """muslin plan, given the strips of an idea and its layout, makes just that top; with one set less it cannot."""
    for idea in ideas(muslin, STRIPS, "--make", "strip-sets")[:6]:
        words = ("--set", str(idea["strips_in_a_set"]), "--block", str(idea["segments_in_a_block"]), "--usable", "42",
                 "--columns", str(idea["columns"]), "--rows", str(idea["rows"]))
        plan = muslin.answer("plan", str(idea["used"]), *words)
        assert plan["top"]["tops"] == 1
        less = str(idea["used"] - idea["strips_in_a_set"])
        assert muslin.run("plan", less, *words).returncode == 1


def test_strips_of_one_cut_width_go_together(muslin: Muslin) -> None:
    stock = ("12 of 2 1/2 x 42 in", "6 of 2 1/2 x 30 in", "9 of 3 x 42 in")
    found = ideas(muslin, *stock, "--make", "strip-sets", "--all")
    together = [idea for idea in found if len(idea["from"]) == 2]
    assert together and all(idea["there"] == 18 and inches(idea["piece_length"]) == 30 for idea in together)
    assert {tuple(idea["from"]) for idea in found} == {
        ("12 of 2 1/2 x 42 in",), ("6 of 2 1/2 x 30 in",), ("9 of 3 x 42 in",),
        ("12 of 2 1/2 x 42 in", "6 of 2 1/2 x 30 in")}


def test_cloth_may_be_cut_into_strips_first(muslin: Muslin) -> None:
    """18 in give seven strips of 2 1/2 in: 42 from six fat quarters, 21 in long."""
    idea = only(ideas(muslin, "6 of 18 x 21 in", "--cut-strips", "2 1/2", "--make", "strip-sets", "--all"),
                strips_in_a_set=5, segments_in_a_block=1)
    assert (idea["strips_from_each"], idea["there"], inches(idea["piece_length"])) == (7, 42, 21)
    assert (idea["blocks"], top(idea)) == (16, (40, 40))  # 8 sets of five give 16 squares of 10 1/2 in
    assert idea["nothing_to_spare"] is True  # two of 10 1/2 in are just 21 in
    assert "First cut each of" in muslin.words("from-stock", "6 of 18 x 21 in", "--cut-strips", "2 1/2")


def test_without_a_wish_for_strips_squares_are_no_strips(muslin: Muslin) -> None:
    assert all(idea["made_of"] == "units" for idea in ideas(muslin, SQUARES, "--all"))
    assert ideas(muslin, SQUARES, "--make", "strip-sets") == []


def test_each_kind_is_listed_once_unless_all_are_wanted(muslin: Muslin) -> None:
    best, every = ideas(muslin, SQUARES), ideas(muslin, SQUARES, "--all")
    kinds = [idea["unit"] for idea in best]
    assert len(kinds) == len(set(kinds)) and set(kinds) == {idea["unit"] for idea in every}
    assert len(every) > len(best)
    for idea in best:
        sizes = [top(other)[0] * top(other)[1] for other in every if other["unit"] == idea["unit"]]
        assert top(idea)[0] * top(idea)[1] == max(sizes)


def test_metric_sizes_are_whole_centimetres(muslin: Muslin) -> None:
    for idea in ideas(muslin, "40 of 13 cm", "--units", "cm", "--make", "units", "--seam", "6 mm"):
        assert idea["block_finished_width"]["ticks"] % (320 * 5) == 0


def test_it_reads_well(muslin: Muslin) -> None:
    words = muslin.words("from-stock", STRIPS)
    assert "the largest top first, then the least left over" in words
    assert "1. Strip sets: 5 strips in a set, cut into squares of 10 1/2 in, each of them a block" in words
    assert "Top 50 in by 60 in finished: 5 across, 6 down, 30 blocks of 10 in finished" in words
    assert "Takes 40 strips; left over: 2, and 2 segments. The top shows about 68 % of all that cloth" in words
    assert "The next larger, 5 by 7 blocks, 50 in by 70 in finished, takes 3 more strips" in words
    assert "Nothing:" in muslin.text("from-stock", "1 of 1/4 in")


def test_slips_get_sentences(muslin: Muslin) -> None:
    for text in ("40", "40 of", "40 of 5 in sideways", "many of 5 in", "40 of 5 cubits"):
        assert "is no row of this list" in muslin.complaint(2, "from-stock", text)
    assert "one at least" in muslin.complaint(2, "from-stock", "0 of 5 in")
    assert "one at least" in muslin.complaint(2, "from-stock", "4 of 0 in")
    assert "longer than" in muslin.complaint(2, "from-stock", "4 of 5 x 999999 in")
    assert "--make" in muslin.complaint(2, "from-stock", "4 of 5 in", "--make", "socks")
    assert "must be given" in muslin.complaint(2, "from-stock")
    assert "--seam" in muslin.complaint(2, "from-stock", "4 of 5 in", "--seam", "2000 yd")


# ---- pattern files --------------------------------------------------------------------------------------------------

SAMPLES = pathlib.Path(__file__).parents[2] / "examples" / "patterns"
FERRY = str(SAMPLES / "ferry-steps.json")


def cloth_for(muslin: Muslin, size: str) -> list[str]:
    """A row of cloth for each fabric of the pattern: what muslin pattern says it needs, and 1 in more."""
    facts = muslin.answer("pattern", FERRY, "--size", size)["sizes"][0]
    return [f"1 of {inches(fabric['usable_width'])} x {inches(fabric['needed']) + 1} in" for fabric in facts["fabrics"]]


def patterns(muslin: Muslin, *words: str) -> Any:
    return muslin.answer("from-stock", *words, "--list", "0")["patterns"]


def test_cloth_that_is_needed_suffices_and_one_fabric_less_does_not(muslin: Muslin) -> None:
    rows = cloth_for(muslin, "lap")
    found = patterns(muslin, *rows, "--patterns", FERRY)
    made = [size["size"] for size in found["can_be_made"]]
    assert "lap" in made and "queen" not in made
    lap = next(size for size in found["can_be_made"] if size["size"] == "lap")
    assert sorted(fabric["from"] for fabric in lap["fabrics"]) == sorted(rows)  # each from a row of its own
    assert all(fabric["used"] == 1 and fabric["left"] == 0 for fabric in lap["fabrics"])
    found = patterns(muslin, *rows[1:], "--patterns", FERRY)
    lap = next(size for size in found["something_is_missing"] if size["size"] == "lap")
    assert lap["fabrics_missing"] == 1 and sum("needs" in fabric for fabric in lap["fabrics"]) == 1


def test_fabrics_make_room_for_each_other(muslin: Muslin) -> None:
    """Whatever the order of the rows, each fabric finds one."""
    rows = cloth_for(muslin, "lap")
    for order in (rows, rows[::-1]):
        assert "lap" in [size["size"] for size in patterns(muslin, *order, "--patterns", FERRY)["can_be_made"]]


def test_patterns_are_ranked(muslin: Muslin) -> None:
    found = patterns(muslin, *(f"1 of 44 x {length} in" for length in (150, 120, 90, 60)), "--patterns", str(SAMPLES))
    areas = [inches(size["top_finished_width"]) * inches(size["top_finished_length"]) for size in found["can_be_made"]]
    assert areas and areas == sorted(areas, reverse=True)
    missing = [size["fabrics_missing"] for size in found["something_is_missing"]]
    assert missing == sorted(missing) and (not missing or missing[0] > 0)
    assert found["wrong_files"] == []


def test_patterns_read_well_and_wrong_files_are_named(muslin: Muslin, tmp_path: pathlib.Path) -> None:
    (tmp_path / "a.json").write_text(json.dumps({"fabrics": 7}))
    done = muslin.run("from-stock", *cloth_for(muslin, "wall"), "--patterns", FERRY, "--patterns", str(tmp_path))
    words = " ".join(done.stdout.split())
    assert done.returncode == 1 and "a.json, or a size in it, is wrong" in done.stderr
    assert "Can be cut from it, the largest first" in words and "a.json, or a size in it, is wrong" in words
    assert "Cannot read nowhere" in muslin.complaint(3, "from-stock", "1 of 5 in", "--patterns", "nowhere")
