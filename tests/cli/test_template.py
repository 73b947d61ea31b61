"""Templates of units drawn by their corners, checked against figures from outside the program.

SPDX-License-Identifier: MIT

"Common practice" has no source; "geometry" is worked out beside the test.
"""
from __future__ import annotations

import math
from typing import Any

import pytest

from program import Muslin, inches

SQUARE = "0 0, 3 0, 3 3, 0 3"
HALVES = ("0 0, 3 0, 3 3", "0 0, 3 3, 0 3")
# An invented house, 12 in finished: sky left and right of the roof, the roof, a wall round the door, the door.
HOUSE = ("--outline", "0 0, 12 0, 12 12, 0 12", "0 6, 6 12, 0 12", "12 6, 12 12, 6 12", "0 6, 12 6, 6 12",
         "0 0, 4 0, 4 4, 7 4, 7 0, 12 0, 12 6, 0 6", "4 0, 7 0, 7 4, 4 4")
DISC = "0 0, 5 0 convex 0 0 5, 0 5"
GROUND = "5 0, 7 0, 7 7, 0 7, 0 5 concave 0 0 5"


def cut_corners(piece: Any) -> list[tuple[float, float]]:
    return [(inches(corner["cut_x"]), inches(corner["cut_y"])) for corner in piece["corners"]]


def rectangle(piece: Any) -> tuple[float, float]:
    return inches(piece["rectangle_cut_along_the_grain"]), inches(piece["rectangle_cut_across_the_grain"])


def grain(piece: Any) -> tuple[int, int]:
    return piece["straight_grain"]["from_corner"], piece["straight_grain"]["to_corner"]


# ---- straight edges ------------------------------------------------------------------------------------------------


def test_half_squares_are_cut_seven_eighths_larger(muslin: Muslin) -> None:
    # Common practice: 7/8 in more than finished at 1/4 in seams.
    answer = muslin.answer("template", "--outline", SQUARE, *HALVES, "--to", "1/8")
    assert answer["outline_is_filled"] is True
    assert (inches(answer["finished_width"]), inches(answer["finished_height"])) == (3, 3)
    assert (answer["outside_edges"], answer["inside_edges"]) == (4, 2)
    for piece in answer["pieces"]:
        assert rectangle(piece) == (3.875, 3.875)
        assert (piece["outside_edges"], piece["bias_edges"], piece["warnings"]) == (2, 0, [])
    assert [grain(piece) for piece in answer["pieces"]] == [(1, 2), (2, 3)]


def test_the_corners_of_a_half_square_to_the_tick(muslin: Muslin) -> None:
    # Geometry: its sharp tips lie 1/4 x (1 + sqrt 2) in beyond the finished ones.
    beyond = 0.25 * (1 + math.sqrt(2))
    corners = cut_corners(muslin.answer("template", HALVES[0])["pieces"][0])
    for found, wanted in zip(corners, [(-beyond, -0.25), (3.25, -0.25), (3.25, 3 + beyond)], strict=True):
        assert found == pytest.approx(wanted, abs=1e-4)


def test_take_up_is_shared_by_the_two_sides_of_a_seam(muslin: Muslin) -> None:
    # Geometry: each side of a square moves out by 1/4 + 1/16 / 2 in.
    piece = muslin.answer("template", SQUARE, "--take-up", "1/16")["pieces"][0]
    assert cut_corners(piece)[2] == (3.28125, 3.28125)


def test_a_house_of_five_pieces_is_cut_as_everyone_cuts_it(muslin: Muslin) -> None:
    # Common practice: triangles with short edges outside 7/8 in, with the long edge along 1 1/4 in larger, others 1/2.
    answer = muslin.answer("template", *HOUSE, "--to", "1/8")
    assert (answer["piece_count"], answer["outside_edges"], answer["inside_edges"]) == (5, 9, 12)
    left, right, roof, wall, door = answer["pieces"]
    assert rectangle(left) == rectangle(right) == (6.875, 6.875)
    assert rectangle(roof)[0] == 13.25
    assert rectangle(wall) == (6.5, 12.5)
    assert rectangle(door) == (3.5, 4.5)
    assert len(wall["corners"]) == 8


def test_the_areas_of_the_house_add_up(muslin: Muslin) -> None:
    areas = [piece["areas_of_the_corners_in_doubled_square_ticks"]["finished"]
             for piece in muslin.answer("template", *HOUSE)["pieces"]]
    assert [area / (2 * 8128 * 8128) for area in areas] == [18, 18, 36, 60, 12]


def test_a_blunt_tip_ends_where_the_other_allowance_ends(muslin: Muslin) -> None:
    # Geometry: along the level edge by 1/4 in; along the slanted one, back to the level of the seam, 1/4 x sqrt 2 in
    # beyond the corner.
    corners = muslin.answer("template", "0 0, 3 0, 0 3", "--tip", "blunt")["pieces"][0]["corners"]
    assert [corner["corner"] for corner in corners] == [1, 2, 2, 3, 3]
    assert [corner["edge"] for corner in corners[1:3]] == ["across the tip", "straight"]
    assert (inches(corners[1]["cut_x"]), inches(corners[1]["cut_y"])) == (3.25, -0.25)
    assert inches(corners[2]["cut_x"]) == pytest.approx(3 + 0.25 * math.sqrt(2), abs=1e-4)
    assert inches(corners[2]["cut_y"]) == 0
    text = muslin.words("template", "0 0, 3 0, 0 3", "--tip", "blunt")
    assert "cut at 3 1/4 in and -1/4 in; then straight across the tip" in text
    assert "corner 2, beyond its tip: cut at about 3 23/64 in and 0 in" in text


def test_a_triangle_cannot_have_the_straight_grain_on_all_sides(muslin: Muslin) -> None:
    # Geometry: with the grain along the long edge both short ones lie on the bias.
    words = ("template", "--outline", "0 0, 6 0, 0 6", "0 0, 6 0, 0 6")
    piece = muslin.answer(*words)["pieces"][0]
    assert (grain(piece), piece["outside_edges"], piece["bias_edges"]) == ((2, 3), 3, 2)
    text = muslin.words(*words)
    assert text.startswith("The piece fills the outline exactly: 6 in by 6 in finished.")
    assert "An outside edge lies on the bias" in text


# ---- arcs ----------------------------------------------------------------------------------------------------------


def test_a_quarter_circle_unit_agrees_with_the_curve_command(muslin: Muslin) -> None:
    # Common practice: convex r + s, concave r - s. Geometry: sqrt(5.25^2 - 0.25^2) and sqrt(4.75^2 - 0.25^2).
    answer = muslin.answer("template", "--outline", "0 0, 7 0, 7 7, 0 7", DISC, GROUND, "--tip", "blunt")
    disc, ground = answer["pieces"]
    assert inches(disc["corners"][1]["cut_radius"]) == 5.25
    assert inches(ground["corners"][4]["cut_radius"]) == 4.75
    assert disc["corners"][1]["edge"] == "convex" and ground["corners"][4]["edge"] == "concave"
    assert cut_corners(disc)[1][0] == pytest.approx(math.sqrt(5.25**2 - 0.25**2), abs=1e-4)
    assert cut_corners(ground)[0][0] == pytest.approx(math.sqrt(4.75**2 - 0.25**2), abs=1e-4)
    curve = muslin.answer("curve", "7", "--radius", "5")
    assert rectangle(disc) == (inches(curve["convex_cut_square"]),) * 2
    assert rectangle(ground) == (inches(curve["concave_cut_square"]),) * 2


def test_arcs_are_told_with_centre_and_radius(muslin: Muslin) -> None:
    text = muslin.words("template", DISC, GROUND)
    assert "along an arc of 5 1/4 in radius (cut), bulging out, with its centre at 0 in and 0 in" in text
    assert "along an arc of 4 3/4 in radius (cut), bulging in, with its centre at 0 in and 0 in" in text


def test_a_disc_has_no_edge_for_the_grain(muslin: Muslin) -> None:
    # Two half circles: 3 in and 1/4 in all round.
    words = ("template", "0 3 convex 3 3 3, 6 3 convex 3 3 3")
    piece = muslin.answer(*words)["pieces"][0]
    assert piece["straight_grain"] == {}
    assert rectangle(piece) == (6.5, 6.5)
    assert "no straight edge for the straight grain" in muslin.words(*words)


# ---- rectangles ----------------------------------------------------------------------------------------------------


def test_a_margin_is_added_all_round(muslin: Muslin) -> None:
    piece = muslin.answer("template", SQUARE, "--margin", "1/2")["pieces"][0]
    assert rectangle(piece) == (4.5, 4.5)
    assert "4 1/2 in across it, with the margin all round" in muslin.words("template", SQUARE, "--margin", "1/2")


def test_a_foundation_piece_may_lie_along_each_of_its_edges(muslin: Muslin) -> None:
    # Geometry: a half square cut a = 3 + 1/4 (2 + sqrt 2) in is a sqrt 2 long and a / sqrt 2 high along its long edge.
    leg = 3 + 0.25 * (2 + math.sqrt(2))
    edges = muslin.answer("template", HALVES[0], "--foundation")["pieces"][0]["foundation"]
    assert [(edge["from_corner"], edge["to_corner"]) for edge in edges] == [(1, 2), (2, 3), (3, 1)]
    sizes = [(inches(edge["rectangle_cut_along_the_edge"]), inches(edge["rectangle_cut_across_the_edge"]))
             for edge in edges]
    for found, wanted in zip(sizes, [(leg, leg), (leg, leg), (leg * math.sqrt(2), leg / math.sqrt(2))], strict=True):
        assert found == pytest.approx(wanted, abs=3e-4)
    assert "give a --margin" in muslin.words("template", HALVES[0], "--foundation")
    assert "give a --margin" not in muslin.words("template", HALVES[0], "--foundation", "--margin", "1/2")


def test_arcs_do_not_lie_along_a_sewing_line(muslin: Muslin) -> None:
    edges = muslin.answer("template", DISC, "--foundation")["pieces"][0]["foundation"]
    assert [(edge["from_corner"], edge["to_corner"]) for edge in edges] == [(1, 2), (3, 1)]


# ---- words ---------------------------------------------------------------------------------------------------------


def test_a_template_is_told_in_the_order_of_the_work(muslin: Muslin) -> None:
    text = muslin.words("template", "--outline", SQUARE, *HALVES, "--to", "1/8")
    parts = ("The 2 pieces fill the outline exactly: 3 in by 3 in finished.", "Seam allowance 1/4 in on every edge",
             "Piece 1, cut", "corner 1, finished at 0 in and 0 in: cut at -5/8 in and -1/4 in",
             "a rectangle cut 3 7/8 in along the straight grain by 3 7/8 in across it",
             "the straight grain along its edge from corner 1 to corner 2", "Piece 2, cut", "Before you cut",
             "Draw each piece on paper", "Cut one test piece")
    places = [text.index(part) for part in parts]
    assert places == sorted(places)
    assert "{" not in text


def test_without_an_outline_nothing_is_said_of_filling_it(muslin: Muslin) -> None:
    answer = muslin.answer("template", *HALVES)
    assert answer["outline_is_filled"] is None and "finished_width" not in answer
    text = muslin.words("template", *HALVES)
    assert "not checked" in text and "--outline" in text and "exactly" not in text


def test_lengths_in_a_corner_are_written_as_everywhere(muslin: Muslin) -> None:
    plain = muslin.answer("template", "0 0, 2.5 0, 2.5 3.25")["pieces"]
    for text in ("0 0, 2 1/2 0, 2 1/2 3 1/4", "0 0,2-1/2 0,2-1/2 3-1/4", "0 0, 2\u00bd 0, 2.5 in 3 1/4 in",
                 "0 0, 6.35 0 cm, 6.35 8.255 cm", " 0  0 , 2.5\t0 , 2 1/2 in 3 1/4 "):
        assert muslin.answer("template", text)["pieces"] == plain, text


def test_a_unit_behind_holds_for_the_whole_corner(muslin: Muslin) -> None:
    metric = muslin.answer("template", "0 0, 12 0 convex 0 0 12 cm, 0 12 cm", "--bare-unit", "cm")["pieces"]
    assert muslin.answer("template", "0 0, 12 0 cm convex 0 0 12 cm, 0 12 cm")["pieces"] == metric


def test_with_the_decimal_comma_corners_end_with_a_semicolon(muslin: Muslin) -> None:
    point = muslin.answer("template", "0 0, 6.5 0, 6.5 6.5", "--bare-unit", "cm")["pieces"][0]
    comma = muslin.answer("template", "0 0; 6,5 0; 6,5 6,5", "--bare-unit", "cm", "--decimal-comma")["pieces"][0]
    assert cut_corners(comma) == cut_corners(point)
    assert "between corners stands a semicolon" in muslin.complaint(2, "template", "0 0, 6 0, 6 6", "--decimal-comma")


def test_a_line_of_a_batch_gives_the_same_answer(muslin: Muslin) -> None:
    answer = muslin.answer("template", "--outline", SQUARE, *HALVES, "--foundation")
    replies = muslin.batch({"command": "template", "outline": SQUARE, "piece": list(HALVES), "foundation": True},
                           {"command": "template", "piece": "0 0, 3 3, 3 0"}, status=1)
    assert replies[0]["answer"] == answer
    assert replies[1]["error"]["name"] == "ERR_SHAPE" and replies[1]["error"]["option"] == "piece"


# ---- wrong input ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("status", "sentence", "words"), [
    (2, "--piece: Piece 2, corner 1: This shape runs clockwise", (HALVES[0], "0 0, 0 3, 3 3")),
    (2, "--piece: Piece 1, corner 1: This shape runs clockwise", ("0 0, 0 5 concave 0 0 5, 5 0",)),
    (2, "--piece: Piece 1, corner 2: This shape runs clockwise", ("0 0, 0 5 convex 0 0 5, 5 0",)),
    (2, "--outline: The outline, corner 1: This shape runs clockwise", ("--outline", "0 0, 0 3, 3 3, 3 0", *HALVES)),
    (2, "--outline: The outline, the edge from corner 3 to corner 4: The pieces do not fill the outline exactly",
     ("--outline", SQUARE, HALVES[0], "0 0, 2 2, 0 3")),
    (2, "--piece: Piece 3, the edge from corner 1 to corner 2: The pieces do not fill the outline exactly",
     ("--outline", SQUARE, *HALVES, "1/4 2, 1/2 2, 1/4 2 1/2")),
    (2, "--piece: Piece 2, corner 4: There is no such shape", (HALVES[0], "0 0, 3 0, 0 3, 3 3")),
    (2, "--piece: Piece 1, corner 1: There is no such shape: it needs three corners", ("0 0, 3 0",)),
    (2, "--piece: Piece 1, corner 2: There is no such shape", ("0 0, 5 0 convex 0 0 4, 0 5",)),
    (2, "--piece: Piece 1, corner 2: An arc starts or ends here", ("1 1, 5 0 convex 0 0 5, 0 5",)),
    (1, "--piece: Piece 2, corner 2: The seams would eat the whole piece",
     (HALVES[0], "0 0, 1/4 0 concave 1/2 0 1/4, 1/2 1/4, 0 1/4")),
    (2, "--piece: Piece 1, corner 2: Place of the corner (finished) is 130 in", ("0 0, 130 0, 6 6",)),
    (2, "--piece: Piece 1, corner 3: Place of the corner (finished) is -1 in", ("0 0, 3 0, -1 3",)),
    (2, "--piece: Piece 2, corner 2: \"zero\": ", (HALVES[0], "0 0, 3 zero, 3 3")),
    (2, "--piece: Piece 1, corner 2: \"3\" is no corner", ("0 0, 3, 3 3",)),
    (2, "--piece: Piece 1, corner 4: \"\" is no corner", ("0 0, 3 0, 3 3,",)),
    (2, "--piece: Piece 1, corner 1: \"0 0 3 0 3 3\" is no corner", ("0 0 3 0 3 3",)),
    (2, "--piece: Piece 1, corner 2: \"5 0 convex 0 0\" is no corner", ("0 0, 5 0 convex 0 0, 0 5",)),
    (2, "--piece: Piece 1, corner 2: \"1 yd 2 ft 3 in\" can be read in more than one way",
     ("0 0, 1 yd 2 ft 3 in, 6 6",)),
    (2, "--piece: Piece 1, corner 2: \"5 0 convex 1 1/2 2 1/2\" can be read in more than one way",
     ("0 0, 5 0 convex 1 1/2 2 1/2, 0 5",)),
    (2, "--piece: This must be given", ("--outline", SQUARE)),
    (2, "--seam: ", (SQUARE, "--seam", "20")),
    (2, "--margin: ", (SQUARE, "--margin", "130")),
])
def test_what_is_wrong_is_named_as_the_user_counts(muslin: Muslin, status: int, sentence: str,
                                                   words: tuple[str, ...]) -> None:
    complaint = muslin.complaint(status, "template", *words)
    assert sentence in complaint
    assert " row" not in complaint


def test_a_drawing_has_an_end(muslin: Muslin) -> None:
    corners = ", ".join(f"{i}/16 0" for i in range(1025))
    assert "Piece 1, corner 1025: \"1024/16 0\" is one corner too many" in muslin.complaint(2, "template", corners)
