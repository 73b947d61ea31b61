# SPDX-License-Identifier: MIT
"""The model of rounds against published figures, and against drawing by hand, without the library."""

import pathlib
import sys
from types import SimpleNamespace as Request

import pytest

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent))

from muslin_model import base, rounds  # noqa: E402

INCH = 8128
QUARTER = {"allowance": INCH // 4, "take_up": 0}
NEAREST = Request(grid=1, tolerance=0, direction=base.NEAREST)


def cabin(**members):
    usual = {"centre_width": 2 * INCH, "centre_height": 2 * INCH, "log_width": INCH, "rounds": 1, "blocks": 1,
             "usable_width": 40 * INCH, "end_loss": 0, "order": rounds.ROUND, "start": rounds.TOP,
             "turn": rounds.CLOCKWISE, **QUARTER}
    return Request(**dict(usual, **members))


def test_a_first_round_by_hand():
    """A centre cut 2 1/2 in takes logs of 2 1/2, 3 1/2, 3 1/2 and 4 1/2 in; courthouse steps 2 1/2 and 4 1/2 twice."""
    _, logs = rounds.logs_of(cabin(), [], False)
    assert [log["cut_length"] / INCH for log in logs] == [2.5, 3.5, 3.5, 4.5]
    _, logs = rounds.logs_of(cabin(order=rounds.COURTHOUSE), [], False)
    assert [log["cut_length"] / INCH for log in logs] == [2.5, 2.5, 4.5, 4.5]
    assert [log["side"] for log in logs] == [rounds.TOP, rounds.BOTTOM, rounds.RIGHT, rounds.LEFT]


@pytest.mark.parametrize("order", [rounds.ROUND, rounds.COURTHOUSE, rounds.QUARTER])
@pytest.mark.parametrize("turn", [rounds.CLOCKWISE, rounds.ANTICLOCKWISE])
def test_rectangles_fill_the_block(order, turn):
    """Their areas add up, and no two overlap."""
    spec = cabin(centre_width=3, centre_height=5, log_width=2, rounds=3, order=order, turn=turn, usable_width=0)
    block, logs = rounds.logs_of(spec, [], False)
    rectangles = [(0, 0, 3, 5), *(log["rectangle"] for log in logs)]
    assert sum((r - l) * (b - t) for l, t, r, b in rectangles) == \
        (block.right - block.left) * (block.bottom - block.top)
    for at, (l, t, r, b) in enumerate(rectangles):
        for left, top, right, bottom in rectangles[:at]:
            assert r <= left or right <= l or b <= top or bottom <= t


def test_published_squares_on_point():
    """Why I cut strips at 1.91 inches for that border (blog, 2008): 2/1.414 + 1/2 = 1.914 in."""
    spec = Request(side_finished=40 * INCH, diagonal_finished=2 * INCH, squares=0, runs=1, **QUARTER)
    assert round(rounds.point_border(spec, NEAREST, NEAREST)["square_cut"] / INCH, 3) == 1.914


def test_published_borders():
    """4Bs: borders (lesson): 38 1/2 x 50 in, border 4 in: cut 4 1/2; 50 and 38 1/2 in, four squares; 46 1/2 x 58 in."""
    spec = Request(centre_width=38 * INCH, centre_height=int(49.5 * INCH), **QUARTER)
    row = Request(kind=rounds.PLAIN, corner=rounds.SQUARES, width=4 * INCH, repeat=0, most=0)
    found = rounds.medallion(spec, [row], False)
    side = found["rows"][0]
    assert [side[name] / INCH for name in ("side_cut", "side_length", "top_length")] == [4.5, 50, 38.5]
    assert side["corner_squares"] == 4
    assert (found["unfinished_width"] / INCH, found["unfinished_height"] / INCH) == (46.5, 58)


def test_what_does_not_fit_is_refused():
    spec = Request(centre_width=18, centre_height=24, allowance=0, take_up=0)
    coping = Request(kind=rounds.COPING, corner=rounds.THROUGH, width=0, repeat=0, most=9)
    pieced = Request(kind=rounds.PIECED, corner=rounds.SQUARES, width=1, repeat=4, most=0)
    assert rounds.medallion(spec, [coping, pieced], False)["rows"][0]["side_finished"] == 1
    for rows, equal, status in (([coping, pieced], True, "ERR_NO_FIT"), ([coping], False, "ERR_CHOICE"),
                                ([], False, "ERR_RANGE")):
        with pytest.raises(base.Refused) as refused:
            rounds.medallion(spec, rows, equal)
        assert status in refused.value.statuses
