"""Pieced units, checked against figures from outside the program.

SPDX-License-Identifier: MIT
"""
from __future__ import annotations

import math
from typing import Any

import pytest

from program import Muslin, inches

METHODS = {"rectangle": ["pieces"],
           "half-square": ["pieces", "two-at-a-time", "four-all-round", "four-midpoints", "eight-at-a-time", "strips",
                           "bias-strips"],
           "quarter-square": ["pieces", "two-at-a-time"], "split-quarter": ["pieces", "two-at-a-time"],
           "flying-geese": ["pieces", "four-at-a-time", "flipped-corners"],
           "square-in-square": ["pieces", "flipped-corners"], "snowball": ["flipped-corners"],
           "half-rectangle": ["pieces"], "triangle-60": ["strips"], "diamond-60": ["strips"], "diamond-45": ["strips"],
           "hexagon": ["strips"], "half-hexagon": ["strips"], "trapezoid": ["strips"],
           "octagon": ["pieces", "flipped-corners"], "eight-pointed-star": ["pieces"], "kaleidoscope": ["pieces"],
           "slanted-slice": ["strips"]}
MORE = {"snowball": ["--corner", "1"], "half-rectangle": ["--height", "2"], "trapezoid": ["--height", "1 1/2"],
        "slanted-slice": ["--height", "5"]}


def cuts(answer: Any) -> list[tuple[int, float, float, int]]:
    return [(piece["fabric"], inches(piece["cut_width"]), inches(piece["cut_height"]), piece["count"])
            for piece in answer["pieces"]]


def test_half_squares_are_cut_seven_eighths_larger(muslin: Muslin) -> None:
    # How to measure and cut triangles (blog from a guild newsletter, 2018): 3 in finished is cut 3 7/8 in.
    answer = muslin.answer("unit", "half-square", "3", "--want", "24")
    assert cuts(answer) == [(1, 3.875, 3.875, 12), (2, 3.875, 3.875, 12)]
    assert (answer["units_of_one_recipe"], answer["recipes"], answer["units_to_spare"]) == (2, 12, 0)
    assert inches(answer["unfinished_width"]) == 3.5


def test_geese_are_made_four_at_a_time(muslin: Muslin) -> None:
    # Fast flying geese (tutorial): 4 x 2 in from one 5 1/4 in square and four of 2 7/8 in.
    answer = muslin.answer("unit", "flying-geese", "4", "--method", "four-at-a-time", "--policy", "customary")
    assert cuts(answer) == [(1, 5.25, 5.25, 1), (2, 2.875, 2.875, 4)]
    assert inches(answer["unfinished_height"]) == 2.5


def test_midpoint_half_squares_need_twice_the_unfinished_size(muslin: Muslin) -> None:
    # P. Speth, Half square triangles finished size 2 inches, 2012: two 5 in squares give four that finish 2 in.
    answer = muslin.answer("unit", "half-square", "2", "--method", "four-midpoints")
    assert cuts(answer) == [(1, 5, 5, 1), (2, 5, 5, 1)]
    assert answer["units_of_one_recipe"] == 4


@pytest.mark.parametrize("kind, method", [(kind, method) for kind, methods in METHODS.items() for method in methods])
def test_every_recipe_is_told_cut_by_cut_and_step_by_step(muslin: Muslin, kind: str, method: str) -> None:
    words = ["unit", kind, "4", "--method", method, *MORE.get(kind, [])]
    answer = muslin.answer(*words)
    text = muslin.text(*words)
    assert (answer["kind"], answer["method"]) == (kind, method)
    assert "{" not in text and "null" not in text
    assert all(len(line) <= 79 for line in text.splitlines())
    for step in answer["steps"]:
        assert "{" not in step["sentence"] and step["sentence"].endswith(".")
    told = " ".join(text.split())
    assert all(step["sentence"] in told for step in answer["steps"])
    assert f"{len(answer['steps'])}) " in told or not answer["steps"]
    assert "finishing" in told and "cut" in told


def test_the_ways_of_a_kind_are_told(muslin: Muslin) -> None:
    for kind, methods in METHODS.items():
        answer = muslin.answer("unit", kind, "4", *MORE.get(kind, []))
        others = [method for method in methods if method != answer["method"]]
        told = answer.get("other_methods", "").replace(" or ", ", ").split(", ")
        assert [word for word in told if word] == others
        assert answer["method"] == ("two-at-a-time" if "two-at-a-time" in methods else methods[0])


def test_a_way_that_is_none_is_answered_with_those_that_are(muslin: Muslin) -> None:
    complaint = muslin.complaint(2, "unit", "flying-geese", "4", "--method", "bias-strips")
    assert "--method" in complaint and "pieces, four-at-a-time or flipped-corners" in complaint


def test_steps_are_numbered_and_name_fabrics(muslin: Muslin) -> None:
    told = muslin.words("unit", "half-square", "3")
    assert "(1) On the back of a square of fabric 2, draw a line from corner to corner." in told
    assert "(3) Sew on both sides of the drawn line, 1/4 in from it." in told
    assert "(5) Press the seam towards fabric 1. Do so 2 times." in told
    assert "(6) Trim to 3 1/2 in by 3 1/2 in unfinished" in told
    assert "Make one test unit first and measure it" in told


def test_bias_edges_are_pointed_out(muslin: Muslin) -> None:
    # Common practice, no source: squares sewn all round and cut on both diagonals have bias outside.
    assert "bias" in " ".join(muslin.answer("unit", "half-square", "3", "--method", "four-all-round")["warnings"])
    answer = muslin.answer("unit", "half-square", "3")
    assert answer["warnings"] == [] and answer["bias_outside"] is False
    assert answer["pieces"][0]["grain"].endswith("bias on the long one")


def test_mirrored_units_have_pieces_and_outlines_of_their_own(muslin: Muslin) -> None:
    words = ["unit", "half-rectangle", "2", "--height", "4", "--want", "8", "--mirrored", "6"]
    answer = muslin.answer(*words)
    assert [piece["hand"] for piece in answer["pieces"]] == [1, 1, 2, 2]
    assert (answer["recipes"], answer["mirrored_recipes"]) == (4, 3)
    assert {outline["hand"] for outline in answer["outlines"]} == {1, 2}
    assert "cut on the other diagonal" in muslin.words(*words)
    # Geometry: e (4 - 2) / 4.
    assert inches(answer["seam_meets_the_raw_edge_from_the_corner"]) == 0.125


def test_flipped_corners_can_become_half_squares(muslin: Muslin) -> None:
    # A second line 2 s beside the first: 2 1/2 - 2 sqrt 2 / 4 = 1.79 in unfinished.
    bonus = muslin.answer("unit", "snowball", "6", "--corner", "2")["bonus"]
    assert bonus["half_squares"] == 4
    assert abs(inches(bonus["unfinished"]) - (2.5 - math.sqrt(2) / 2)) < 1 / 8128
    assert inches(bonus["second_line_beside"]) == 0.5


def area(corners: list[list[int]]) -> float:
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(corners, corners[1:] + corners[:1])) / 2


def test_outlines_fill_the_unit(muslin: Muslin) -> None:
    outlines = muslin.answer("unit", "kaleidoscope", "6")["outlines"]
    finished = [outline for outline in outlines if outline["stage"] == "finished"]
    raw = [outline for outline in outlines if outline["stage"] == "raw"]
    assert (len(finished), len(raw)) == (12, 12)
    side = 6 * 8128
    assert abs(sum(area(outline["corners"]) for outline in finished) - side * side) < 24 * side
    # Geometry: a corner triangle has legs (1 - 1 / sqrt 2) W.
    corner = max(point[0] for point in finished[8]["corners"])
    assert abs(corner - side * (1 - math.sqrt(0.5))) <= 0.5
    assert all(area(big["corners"]) > area(small["corners"]) for big, small in zip(raw, finished))


def test_a_metric_seam_gives_a_metric_recipe(muslin: Muslin) -> None:
    # Tilkkumatematiikkaa (teacher's blog, 2012): 10 cm finished with 0.75 cm seams; the geometry is 10 + 2.561 cm.
    answer = muslin.answer("unit", "half-square", "10 cm", "--seam", "0.75 cm", "--to", "0.1 cm")
    assert answer["pieces"][0]["cut_width"]["ticks"] == 126 * 320


def test_a_hexagon_is_measured_from_side_to_side(muslin: Muslin) -> None:
    # Quilting hexagon template (blog, 2020): the side is the width from flat to flat over sqrt 3, twice that across.
    answer = muslin.answer("unit", "hexagon", "2 3/4")
    assert inches(answer["finished_height"]) == 2.75
    assert abs(inches(answer["finished_width"]) - 2 * 2.75 / math.sqrt(3)) < 1 / 8128
    assert "unfinished_width" not in answer


def makes(answer: Any) -> dict[tuple[str, str], Any]:
    return {(row["kind"], row["method"]): row for row in answer["makes"]}


def test_what_five_inch_squares_can_make(muslin: Muslin) -> None:
    # P. Speth as above; and 5 - 7/8 = 4 1/8 in, 5 - 1 1/4 = 3 3/4 in by the published additions.
    answer = muslin.answer("makes", "5", "--each", "10")
    found = makes(answer)
    assert inches(found["half-square", "four-midpoints"]["finished_width"]) == 2
    assert found["half-square", "four-midpoints"]["units"] == 40
    assert inches(found["half-square", "two-at-a-time"]["finished_width"]) == 4.125
    assert inches(found["quarter-square", "pieces"]["finished_width"]) == 3.75
    assert answer["recipes"] == len(answer["makes"]) == sum(map(len, METHODS.values()))
    told = muslin.text("makes", "5", "--each", "10")
    assert told.startswith("10 pieces cut 5 in by 5 in of each fabric can make:\n")
    assert all(len(line) <= 79 for line in told.splitlines())
    assert [line for line in told.splitlines() if "four-midpoints" in line][0].split()[-1] == "40"


def test_a_narrow_strip_finishes_small_half_squares(muslin: Muslin) -> None:
    # A teacher's question and answer: from 2 1/2 in squares half-squares finish 1 5/8 in.
    answer = muslin.answer("makes", "2 1/2", "--length", "40", "--kind", "half-square")
    assert {row["kind"] for row in answer["makes"]} == {"half-square"}
    row = makes(answer)["half-square", "two-at-a-time"]
    assert inches(row["finished_width"]) == 1.625
    assert row["units"] == 2 * 16


def test_nothing_can_be_made_of_a_scrap(muslin: Muslin) -> None:
    answer = muslin.answer("makes", "1/2")
    assert (answer["makes"], answer["recipes"]) == ([], 0)
    assert "Nothing" in muslin.text("makes", "1/2")


def test_wrong_sizes_name_their_option(muslin: Muslin) -> None:
    assert "--size" in muslin.complaint(2, "unit", "half-square", "0")
    assert "--height" in muslin.complaint(2, "unit", "half-rectangle", "3")
    assert "--corner" in muslin.complaint(2, "unit", "snowball", "4")
    assert "--half-addition" in muslin.complaint(2, "unit", "half-square", "3", "--policy", "customary",
                                                 "--half-addition", "3/4")
    assert "--cut" in muslin.complaint(2, "makes", "0")
    assert "--length" in muslin.complaint(2, "makes", "5", "--length", "0")
    assert "--step" in muslin.complaint(2, "makes", "5", "--step", "0")
