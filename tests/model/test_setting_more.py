# SPDX-License-Identifier: MIT
"""The model of sashes and settings on point against published figures, without the library."""

import pathlib
import sys
from fractions import Fraction
from types import SimpleNamespace as Request

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))

from muslin_model import base, setting_point, setting_sashed  # noqa: E402
from muslin_model.root2 import ROOT, Root2  # noqa: E402

INCH = 8128
UP_TO_EIGHTH = Request(grid=INCH // 8, tolerance=0, direction=base.UP)


def point(block, **members):
    spec = {"block": block * INCH, "columns": 4, "rows": 4, "sash": 0, "set_off": 0, "allowance": INCH // 4,
            "take_up": 0, "trim_room": 0, "side_addition": 0, "corner_addition": 0, "factor_numerator": 1414,
            "factor_denominator": 1000, "layout": 1, "edge": 1, "policy": 2, "diagonal_first": False}
    return setting_point.plan(Request(**dict(spec, **members)), UP_TO_EIGHTH, UP_TO_EIGHTH)


def test_numbers_with_a_root_are_ordered_and_rounded():
    assert (ROOT * ROOT - 2).sign() == 0
    assert Root2(3, -2) > 0 and Root2(-3, 2) < 0 and Root2(7, -5) < 0 and Root2(-7, 5) > 0
    assert (Root2(1) / (ROOT - 1) - ROOT - 1).sign() == 0
    assert (1000 * ROOT).floor() == 1414 and (1000 * ROOT).ceiling() == 1415
    assert (10 * ROOT).rounded(Request(grid=5, tolerance=0, direction=base.UP)) == {
        "value": 15, "error": 0, "exact": 0, "on_tick": 0}


def test_the_chart_of_setting_and_corner_triangles():
    """Tani's chart: B x 1.414 + 1 1/4 and B / 1.414 + 7/8, both up to 1/8 in."""
    for block, side, corner in ((5, "67/8", "9/2"), (6, "39/4", "41/8"), (12, "73/4", "75/8"), (16, "191/8", "49/4")):
        found = point(block)
        assert found["side_square_cut"] == Fraction(side) * INCH
        assert found["corner_square_cut"] == Fraction(corner) * INCH


def test_four_by_four_on_point():
    """Quilt math made easy (teacher's blog): 9 alternates, 12 side triangles of 3 squares, 4 corners of 2 squares."""
    found = point(6)
    assert [found[name] for name in ("alternates", "side_triangles", "side_squares", "corner_triangles",
                                     "corner_squares")] == [9, 12, 3, 4, 2]


def test_a_sashed_top_with_its_strips():
    """How much fabric do I need for quilt sashing? (tutorial site): 68 x 84 in; 3 a strip, 8 strips."""
    spec = Request(block_width=12 * INCH, block_height=12 * INCH, columns=4, rows=5, sash_width=4 * INCH,
                   sash_height=4 * INCH, allowance=INCH // 4, take_up=0, usable_width=44 * INCH, end_loss=0,
                   frame=True, cornerstones=True)
    top = setting_sashed.sashed(spec)
    assert (top["finished_width"], top["finished_length"]) == (68 * INCH, 84 * INCH)
    assert [(row["pieces"], row["strips"]) for row in setting_sashed.pieces(spec)] == [(25, 9), (24, 8), (30, 4)]
