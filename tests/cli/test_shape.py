"""Quarter circles and regular polygons, checked against figures from outside the program.

SPDX-License-Identifier: MIT

"Common practice" has no source; "geometry" is worked out beside the test.
"""
from __future__ import annotations

import math

from program import Muslin, inches


def test_a_quarter_circle_is_cut_a_seam_larger_and_a_seam_smaller(muslin: Muslin) -> None:
    # Common practice: convex r + s, concave r - s.
    answer = muslin.answer("curve", "7", "--radius", "5")
    assert inches(answer["convex_cut_radius"]) == 5.25
    assert inches(answer["concave_cut_radius"]) == 4.75
    assert inches(answer["convex_cut_square"]) == 5.5
    assert inches(answer["concave_cut_square"]) == 7.5


def test_the_legs_follow_from_the_right_triangle(muslin: Muslin) -> None:
    # Geometry: 1/4 + sqrt(5.25^2 - 0.25^2), and 7.25 - sqrt(4.75^2 - 0.25^2).
    answer = muslin.answer("curve", "7", "--radius", "5")
    assert abs(inches(answer["convex_cut_leg"]) - (0.25 + math.sqrt(5.25**2 - 0.25**2))) < 1e-4
    assert abs(inches(answer["concave_cut_leg"]) - (7.25 - math.sqrt(4.75**2 - 0.25**2))) < 1e-4
    assert abs(inches(answer["finished_seam_length"]) - 2.5 * math.pi) < 1e-4


def test_a_curve_is_told_as_one_draws_it(muslin: Muslin) -> None:
    text = muslin.words("curve", "7", "--radius", "5", "--to", "1/16")
    for words in ("Cut a square 5 1/2 in. From one corner measure 1/4 in in from both cut edges",
                  "draw an arc of 5 1/4 in (cut)", "Cut a square 7 1/2 in.", "draw an arc of 4 3/4 in (cut)",
                  "2 1/2 in of each shortened cut edge is left", "Sew one test block"):
        assert words in text


def test_a_metric_curve(muslin: Muslin) -> None:
    # Geometry: 15 + 0.75 and 15 - 0.75 cm.
    text = muslin.words("curve", "20 cm", "--radius", "15 cm", "--seam", "0.75 cm", "--units", "cm")
    assert "an arc of 15.75 cm (cut)" in text
    assert "an arc of 14.25 cm (cut)" in text


def test_an_impossible_curve_is_refused(muslin: Muslin) -> None:
    assert "--radius" in muslin.complaint(2, "curve", "7", "--radius", "7")
    assert "--radius: Radius is 3/8 in, but its seams take 1/2 in." in muslin.complaint(1, "curve", "2", "--radius",
                                                                                     "3/8")


def test_polygons_by_their_printed_measures(muslin: Muslin) -> None:
    # Math Central, University of Regina, 2006: an octagon 30 in wide has sides of 12.43 in.
    octagon = muslin.answer("polygon", "30", "--shape", "octagon", "--by", "flats")
    assert round(inches(octagon["finished_side"]), 2) == 12.43
    # Let's talk hexagons!, blog, 2014: a 2 in hexagon has a side of 2 in, and 2 in from centre to corner.
    hexagon = muslin.answer("polygon", "2")
    assert inches(hexagon["finished_centre_to_corner"]) == 2
    assert inches(hexagon["finished_corner_to_corner"]) == 4


def test_a_polygon_is_cut_two_allowances_larger_and_a_triangle_three(muslin: Muslin) -> None:
    # Geometry: flats + 2 s; the height of a triangle with sharp tips + 3 s.
    hexagon = muslin.answer("polygon", "2 3/4", "--by", "flats")
    assert inches(hexagon["cut_flat_to_flat"]) == 3.25
    triangle = muslin.answer("polygon", "3", "--shape", "triangle", "--by", "flats")
    assert inches(triangle["cut_flat_to_flat"]) == 3.75
    assert "the height of the cut triangle" in muslin.words("polygon", "3", "--shape", "triangle", "--by", "flats")


def test_polygons_are_told_in_sentences(muslin: Muslin) -> None:
    text = muslin.words("polygon", "2 3/4", "--by", "flats", "--to", "1/16")
    for words in ("A hexagon with equal sides:", "Each side 1 9/16 in.", "From a strip cut 3 1/4 in wide",
                  "sew a test block first"):
        assert words in text
    assert muslin.words("polygon", "30", "--shape", "octagon").startswith("An octagon")
    assert inches(muslin.answer("polygon", "3", "--shape", "square")["finished_square_of_same_area"]) == 3
