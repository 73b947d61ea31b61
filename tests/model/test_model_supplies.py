# SPDX-License-Identifier: MIT
"""The model of thread, stitches, quilting and cost against published figures and drawing, without the library."""

import math
import pathlib
import sys
from types import SimpleNamespace as Request

import pytest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))

from muslin_model import base, supplies  # noqa: E402

INCH, MM = 8128, 320


def seam_of(seam, waste):
    return Request(seam=seam, ratio_above=5, ratio_below=2, thickness=0, stitch_length=640, bobbin=0, spool=0,
                   method=supplies.RATIO, waste=waste)


@pytest.mark.parametrize("seam_cm, waste, thread_cm", [(220, 0, 550), (216, 150_000, 621)])
def test_thread_for_a_seam(seam_cm, waste, thread_cm):
    """A question and answer page on type 301; Measuring actual thread consumption (trade page)."""
    assert supplies.thread(seam_of(seam_cm * 10 * MM, waste), False)["with_waste"] == thread_cm * 10 * MM


def test_stitches_to_the_inch():
    """Convert metric stitch length to stitches per inch (blog): 2.5 mm are 10.16."""
    assert supplies.stitch_count(INCH, 800, 3, base.NEAREST) == {"thousandths": 10160, "exact": 1}


def area(width, length, spacing, offset, pattern, start):
    return Request(width=width, length=length, spacing=spacing, offset=offset, outline=0, passes=1, pattern=pattern,
                   start=start)


@pytest.mark.parametrize("width, length, spacing", [(10, 10, 4), (30, 10, 6), (100, 73, 9)])
def test_lines_from_a_corner_are_the_ones_drawn(width, length, spacing):
    root2 = math.sqrt(2)
    chords = [root2 * (min(width, length + n * spacing * root2) - max(0, n * spacing * root2))
              for n in range(-50, 51) if -length < n * spacing * root2 < width]
    found = supplies.quilting(area(width, length, spacing, 0, supplies.DIAGONAL, supplies.FROM_CORNER))
    assert (found["lines"], found["length"]) == (len(chords), math.ceil(sum(chords)))


def test_lines_that_cut_corners_off():
    """10 x 10, lines at 4, 8 and 12: 8 + (20 sqrt 2 - 16) + (20 sqrt 2 - 24) = 24.57."""
    found = supplies.quilting(area(10, 10, 4, 0, supplies.DIAGONAL, supplies.AT_OFFSET))
    assert (found["lines"], found["length"]) == (3, 25)


def test_a_bill():
    """3 1/8 yd at 11.50 and two bundles at 42.00."""
    cloth = Request(amount=36 * INCH * 25 // 8, price=1150, per=36 * INCH, sold=supplies.BY_LENGTH,
                    direction=base.NEAREST)
    strips = Request(amount=45, price=4200, per=40, sold=supplies.BY_BUNDLE, direction=base.NEAREST)
    assert supplies.total([cloth, strips]) == 3594 + 8400
