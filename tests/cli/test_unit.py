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
    assert "(6) Trim to 3 1/2 in by 3 1/2 in unfinished: the seam runs from corner to corner." in told
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
    told = muslin.words(*words)
    assert "right side up, lying 2 3/4 in wide, cut from the lower left to the upper right" in told
    assert ("for the mirrored units: right side up, lying 2 3/4 in wide, cut from the upper left to the lower right"
            in told)
    assert "but meets each of the two shorter edges 1/8 in from the corner" in told
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


def test_a_wedge_can_be_cut_from_what_is_printed(muslin: Muslin) -> None:
    # Geometry, 1/4 in seams: raw point 0.25 / sin(22 1/2) above the finished one, cut off 1/4 in above it.
    answer = muslin.answer("unit", "kaleidoscope", "8", "--want", "4")
    tangent = math.sqrt(2) - 1
    apex = 0.25 / math.sin(math.radians(22.5))
    for wedge, fabric in zip(answer["pieces"], (1, 2)):
        assert (wedge["fabric"], wedge["count"], wedge["degrees"]) == (fabric, 16, 45)
        assert abs(inches(wedge["wide_edge_as_cut"]) - 2 * tangent * (4.25 + apex)) < 3 / 8128
        assert abs(inches(wedge["narrow_edge_as_cut"]) - 2 * tangent * (apex - 0.25)) < 3 / 8128
    assert (answer["pieces"][2]["fabric"], answer["pieces"][2]["count"]) == (3, 8)
    told = muslin.words("unit", "kaleidoscope", "8")
    assert "4 wedges with a 45 degree point, from strips cut 4 1/2 in wide: wide end about 4 1/16 in" in told
    assert "to every second of the eight sides, opposite ones first" in told
    assert "marked" not in told and "sharp" not in told
    assert "the point sharp" in muslin.words("unit", "kaleidoscope", "8", "--tip", "sharp")


def test_diamonds_follow_the_strip_as_cut(muslin: Muslin) -> None:
    # Rotary cutting, part 7 (teachers' blog, 2015): cuts as far apart as the strip is wide are sqrt 2 of it along it.
    piece = muslin.answer("unit", "eight-pointed-star", "12")["pieces"][0]
    assert inches(piece["cut_height"]) == 3
    assert abs(inches(piece["further_along_the_strip"]) - 3 * math.sqrt(2)) < 1 / 8128
    assert abs(inches(piece["cut_width"]) - 3 * (1 + math.sqrt(2))) < 1 / 8128
    told = muslin.words("unit", "eight-pointed-star", "12")
    assert "allow about 7 1/4 in for the first, about 4 1/4 in for each further one" in told
    assert "at 45 degrees, then cut across it by parallel cuts 3 in apart" in told
    # Squares need 12 / (2 + sqrt 2) + 1/2 = 4.015 in and are cut 4 1/8.
    # Beside diamonds that finish 3.5355 in, not 3.5147, they need 4.0355; and the star comes out 12.071 in wide.
    assert "cut 4 1/8 in are about 3/32 in larger than diamonds cut so ask for" in told
    assert "the star comes out about 1/16 in wider than 12 in" in told
    assert "Take the seams between the diamonds a thread deeper" in told
    assert "narrower than 12 in" in muslin.words("unit", "eight-pointed-star", "12", "--round", "down")
    assert "larger" not in muslin.words("unit", "eight-pointed-star", "12", "--to", "1/32")


def test_a_star_is_sewn_from_the_middle_and_set_in_from_the_marks(muslin: Muslin) -> None:
    told = muslin.words("unit", "eight-pointed-star", "12")
    assert "from the raw edge in the middle of the star outwards; stop at the mark" in told
    assert "from mark to mark, straight through the middle" in told
    assert "one of its two short sides from the marks out to the raw edge" in told
    assert "mark the point at both wide-angled corners" in told


def test_two_at_a_time_half_of_the_split_quarters_are_mirrored(muslin: Muslin) -> None:
    told = muslin.words("unit", "split-quarter", "6", "--want", "8")
    assert told.startswith("8 units: split quarter-square")
    assert "You need 4 sets, with 8 units to spare." in told
    assert "each set gives 2 units that are the mirror image of the others. With --mirrored say how many" in told
    assert "each of the two half-square triangles on a square of fabric 1, cut 6 7/8 in" in told
    alike = muslin.words("unit", "split-quarter", "6", "--want", "8", "--method", "pieces")
    assert alike.startswith("8 units: split quarter-square") and "mirror" not in alike
    both = muslin.words("unit", "split-quarter", "6", "--want", "4", "--mirrored", "4")
    assert both.startswith("4 units and 4 mirrored: split quarter-square")
    assert "You need 2 sets, with 0 units to spare." in both


def test_slices_lean_two_ways(muslin: Muslin) -> None:
    told = muslin.words("unit", "slanted-slice", "2", "--height", "6", "--want", "3", "--mirrored", "2")
    assert told.startswith("3 units and 2 mirrored: slanted slice")
    assert "the strips lying level, cut from the lower left to the upper right" in told
    assert "for the mirrored units: right side up, the strips lying level, cut from the upper left to the lower" in told


def test_cautions_stand_before_cutting(muslin: Muslin) -> None:
    told = muslin.words("unit", "half-square", "3", "--method", "four-all-round")
    cut = told.index("1. Cut")
    for caution in ("test unit", "the darker one", "lies on the bias", "no room to trim beyond that"):
        assert 0 < told.index(caution) < cut
    assert "half-square triangle" in told and "recipe" not in told
    oversize = muslin.words("unit", "half-square", "3", "--policy", "oversize", "--trim", "1/8")
    assert "the customary additions and 1/8 in of room to trim each unit" in oversize
    assert "by the customary additions, cut sizes rounded" in muslin.words("unit", "half-square", "3", "--policy",
                                                                           "customary")


def test_each_unit_is_trimmed_by_its_own_seams(muslin: Muslin) -> None:
    # Geometry: the corner seam of 2 in meets the raw edge 2 in + two allowances from the raw corner.
    assert "each corner's seam meets the two edges 2 1/2 in from that corner" in muslin.words("unit", "snowball", "6",
                                                                                           "--corner", "2")
    geese = muslin.words("unit", "flying-geese", "6", "--method", "flipped-corners")
    assert "the two lines cross one seam allowance below the upper edge" in geese
    assert "stitch-and-flip corners" in geese
    on_point = muslin.words("unit", "square-in-square", "6")
    assert "(3) Trim the dog-ears off level with the edges." in on_point and "one of the other two sides" in on_point


def test_pairs_and_hexagons_from_strips(muslin: Muslin) -> None:
    pairs = muslin.words("unit", "half-square", "3", "--method", "strips")
    assert "along the strip each 2 take about 4 7/32 in" in pairs  # 3 1/2 + sqrt 2 / 2 = 4.207
    assert "the tip sharp" in muslin.words("unit", "half-square", "3", "--method", "strips", "--tip", "sharp")
    assert "the tip sharp" in muslin.words("unit", "triangle-60", "3", "--tip", "sharp")
    assert "each edge about 1 7/8 in as cut" in muslin.words("unit", "hexagon", "2 3/4")  # 3 1/4 / sqrt 3 = 1.876


def test_the_height_may_be_the_first_number_or_named(muslin: Muslin) -> None:
    assert muslin.answer("unit", "triangle-60", "4") == muslin.answer("unit", "triangle-60", "--height", "4")
    assert "Give the finished height as the first number: muslin unit triangle-60 4." in muslin.complaint(
        2, "unit", "triangle-60")
    assert "Give the finished width as the first number: muslin unit half-square 4." in muslin.complaint(
        2, "unit", "half-square")
    assert "takes one size" in muslin.complaint(2, "unit", "hexagon", "3", "--height", "3")


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
    told = muslin.words("makes", "2 1/2", "--length", "40", "--each", "6", "--kind", "half-square")
    # By hand: 2 5/8 in is 3 1/8 unfinished, its diagonal 4.42 in, cut 4 1/2: 8 along 40 in.
    assert "8 units from each pair of strips" in told and "are cut in pairs" in told
    assert "snowball" not in told and "stitch-and-flip" not in told
    assert "a third of its side" in muslin.words("makes", "5") and "stitch-and-flip" in muslin.words("makes", "5")


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


def test_each_shape_is_cut_as_a_ruler_can(muslin: Muslin) -> None:
    assert "Turn a ruler with a 45 degree tip up and down along the strip" in muslin.words("unit", "kaleidoscope", "8")
    leaning = muslin.words("unit", "trapezoid", "6", "--height", "2")
    assert "Lay the 45 degree line of a ruler along the edge of the strip" in leaning
    assert "Lay the 60 degree line of a ruler" in muslin.words("unit", "half-hexagon", "2")
    # Geometry: 3 1/4 in across is 3.7528 in from point to point, its edges half of that; a quarter is cut off.
    hexagon = muslin.words("unit", "hexagon", "2 3/4", "--want", "20")
    assert "in rectangles about 3 3/4 in long that lose their corners at 60 degrees" in hexagon
    assert "into rectangles about 3 3/4 in long; each gives a hexagon of fabric 1." in hexagon
    assert "mark both long edges of the rectangle about 15/16 in from each corner" in hexagon
    # A square of 6 1/2 in loses 6.5 - 6.5 / sqrt 2 = 1.9038 in each way.
    octagon = muslin.words("unit", "octagon", "6")
    assert "measure about 1 29/32 in from each corner of the square along both of its edges" in octagon
    assert "to one of the four slanted sides of an octagon of fabric 1, where its corners were cut off" in octagon
    pairs = muslin.words("unit", "half-square", "3", "--method", "strips")
    assert "each cut gives a triangle of fabric 1 and, with it, a triangle of fabric 2" in pairs


def test_a_diamond_has_one_figure_for_its_side(muslin: Muslin) -> None:
    # Geometry: 2 1/2 in by cuts 2 1/2 in apart: 3.5355 in along each side and along the strip, the first 6.0355 in.
    told = muslin.words("unit", "diamond-45", "2", "--want", "16")
    assert "each side about 3 17/32 in as cut" in told
    assert "allow about 6 1/32 in for the first, about 3 17/32 in for each further one" in told


def test_makes_says_how_it_reckons(muslin: Muslin) -> None:
    told = muslin.words("makes", "2 1/2", "--length", "40", "--each", "6")
    assert "Different pieces are not mixed within a strip or square." in told
    assert "the corners too come in whole steps" in told
    assert "measured straight between the cuts" in told
    assert "where they nearly come out, one more may fit" in told
    assert "it is the width that is stepped" in told
