# SPDX-License-Identifier: MIT
"""The model of whole trees against squared paper, without the library."""

import pathlib
import sys

import pytest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))

from muslin_model import tree as model  # noqa: E402
from muslin_model.tree import ACROSS, DOWN, Field, Join, Lying, Patch, Pinwheel, SetIn, Trim, Turn, Unit  # noqa: E402

L = Join(ACROSS, (Patch(0, 3, 5), Patch(1, 1, 2)))
SQUARE = Patch(0, 2, 2)
NINE = Join(DOWN, (Join(ACROSS, (SQUARE,) * 3),) * 3)


def boxes(tree):
    return [(min(x for x, _ in piece.ring), min(y for _, y in piece.ring), max(x for x, _ in piece.ring),
             max(y for _, y in piece.ring)) for piece in model.draw(tree)]


def rings(tree):
    return [piece.ring for piece in model.draw(tree)]


def test_an_l_lies_in_eight_ways():
    """Worked out on squared paper, as for the library's own test."""
    assert model.size(L) == (4, 5)
    for mirrored, quarters, tall, small in [
            (False, 0, (0, 0, 3, 5), (3, 3, 4, 5)), (False, 1, (0, 1, 5, 4), (3, 0, 5, 1)),
            (False, 2, (1, 0, 4, 5), (0, 0, 1, 2)), (False, 3, (0, 0, 5, 3), (0, 3, 2, 4)),
            (True, 0, (1, 0, 4, 5), (0, 3, 1, 5)), (True, 1, (0, 0, 5, 3), (3, 3, 5, 4)),
            (True, 2, (0, 0, 3, 5), (3, 0, 4, 2)), (True, 3, (0, 1, 5, 4), (0, 0, 2, 1))]:
        assert boxes(model.turned(mirrored, quarters, L)) == [tall, small]


def test_turns_of_turns_are_one():
    assert model.turned(True, 0, model.turned(True, 0, L)) is L
    assert model.turned(False, 1, model.turned(True, 1, L)) == Turn(True, 2, L)
    assert model.turned(True, 0, model.turned(False, 1, L)) == Turn(True, 3, L)


def test_a_nine_patch_is_tiled_and_its_seams_meet():
    pieces = model.draw(NINE)
    assert len(model.shared(rings(NINE), 6, 6)) == 12
    meetings = model.meetings(NINE, pieces, rings(NINE), 6, 6)
    assert {point for point, _, _ in meetings} == {(2, 2), (2, 4), (4, 2), (4, 4)}
    for point, through, (a, b) in meetings:
        assert through.node == NINE and a.node == b.node == NINE.children[0]
    assert model.copies(NINE, 2)[SQUARE] == {Lying(): 18}


def test_what_does_not_tile_is_found():
    for ring_set in [[[(0, 0), (1, 0), (1, 2), (0, 2)]],
                     [[(0, 0), (2, 0), (2, 2), (0, 2)], [(0, 0), (1, 0), (1, 2), (0, 2)]]]:
        with pytest.raises(AssertionError):
            model.shared(ring_set, 2, 2)


def test_a_pinwheel_and_a_mitre():
    level, upright = Patch(0, 4, 2), Patch(0, 2, 4)
    wheel = Pinwheel((SQUARE, level, upright, level, upright))
    assert boxes(wheel) == [(2, 2, 4, 4), (0, 4, 4, 6), (4, 2, 6, 6), (2, 0, 6, 2), (0, 0, 2, 4)]
    window = SetIn(Patch(0, 6, 6), (2, 0, 0, 2), (1, 1, 1, 1))
    assert model.size(window) == (8, 8)
    assert [model.area(ring) for ring in rings(window)] == [28, 28, 72]


def test_a_trimmed_half_square():
    unit = Unit(model.HALF_SQUARE, 4, 0, 0, 1, (0, 1))
    assert [sorted(ring) for ring in rings(Trim(unit, (1, 0, 0, 0)))] == [
        [(0, 0), (0, 1), (3, 0), (3, 4)], [(0, 1), (0, 4), (3, 4)]]
    assert rings(Trim(Trim(unit, (0, 0, 0, 1)), (0, 3, 2, 0)))[0] == []


def test_a_field_on_point():
    """6 in squares, 3 by 3: 18 sqrt 2 in = 206905.10 ticks (hand)."""
    field = Field(3, 3, (Patch(0, 6 * 8128, 6 * 8128),) * 13, 0, (0, 1))
    assert model.size(field) == (206905, 206905)
    first = next(piece for piece in model.draw(field) if piece.ring)
    assert min(first.ring) == (0, 172421) and first.lying == Lying(1)  # five sixths of the height


def test_edges_that_differ_are_misfits():
    assert model.misfits(L, 7, 0) == [(L, 0, 1, (5, 2), 1, 0, 1, model.LENGTH)]
    assert model.misfits(L, 7, 3) == [(L, 0, 1, (5, 2), 1, 3, 1, model.EASED)]
    assert model.unfinished(L, 7, 3) == (4 + 17, 5 + 17)
