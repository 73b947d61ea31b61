# SPDX-License-Identifier: MIT
"""Log cabins, frames, medallions and pieced borders against drawing them, adding up, and roots to fifty digits."""

from fractions import Fraction

import mpmath
from hypothesis import assume, given
from hypothesis import strategies as st

from asking import ask
from muslin_model import rounds as model
from muslin_model.base import COUNT_MAX, SIZE_MAX
from questions import (agree, as_object, choices, counts, few, mostly, requests, roundings, seams, sizes, small_sizes,
                       take_ups)

TO_A_TICK = {"grid": 1, "tolerance": 0, "direction": 3}

# ---- log cabins -----------------------------------------------------------------------------------------------------

widths_of_logs = mostly(st.integers(1, 16).map(lambda n: n * 2032), small_sizes, rarely=[0, 1, SIZE_MAX, -1])
cabins = requests(centre_width=sizes, centre_height=sizes, log_width=widths_of_logs,
                  rounds=mostly(st.integers(1, 5), rarely=[0, 1000, 1001, -1]),
                  blocks=mostly(st.integers(1, 30), rarely=[0, 100000, 100001, -1]),
                  allowance=seams, take_up=take_ups,
                  usable_width=mostly(st.integers(20 * 8, 60 * 8).map(lambda n: n * 1016), st.just(0), sizes,
                                      rarely=[1]),
                  end_loss=mostly(st.just(0), small_sizes, rarely=[SIZE_MAX]), order=choices(3), start=choices(4),
                  turn=choices(2))


@st.composite
def requests_with_widths(draw):
    """A request; none, one width a round, one a log, or some other number of them; as cut or not."""
    spec = draw(cabins)
    logs = spec["rounds"] * (2 if spec["order"] == 3 else 4)
    n = draw(mostly(st.sampled_from([0, spec["rounds"], logs]), rarely=[1, 2, 7]))
    n = n if 0 <= n <= 40 else 0
    usual = draw(widths_of_logs)
    widths = draw(st.lists(st.just(usual) | widths_of_logs, min_size=n, max_size=n))
    return spec, widths, draw(st.booleans())


def asked(call, spec, widths, given_cut):
    return ask(call, widths, dict(spec, given_cut=given_cut))


def without_rectangles(rows):
    return [{name: value for name, value in row.items() if name != "rectangle"} for row in rows]


@given(requests_with_widths())
def test_a_log_cabin(request):
    spec, widths, given_cut = request
    agree(lambda: asked("logcabin_plan", spec, widths, given_cut),
          lambda: model.cabin(as_object(spec), widths, given_cut))


@given(requests_with_widths())
def test_its_logs(request):
    spec, widths, given_cut = request
    agree(lambda: asked("logcabin_logs", spec, widths, given_cut),
          lambda: without_rectangles(model.logs_of(as_object(spec), widths, given_cut)[1]))


@given(requests_with_widths())
def test_its_strips(request):
    spec, widths, given_cut = request
    agree(lambda: asked("logcabin_strips", spec, widths, given_cut),
          lambda: model.strips_of(as_object(spec), widths, given_cut))


small_cabins = st.builds(dict, centre_width=st.integers(1, 12), centre_height=st.integers(1, 12),
                         log_width=st.integers(1, 5), rounds=st.integers(1, 4), allowance=st.integers(0, 3),
                         take_up=st.integers(0, 2), order=st.integers(1, 3), start=st.integers(1, 4),
                         turn=st.integers(1, 2), usable_width=st.just(0))


@given(small_cabins)
def test_the_logs_and_the_centre_tile_the_block(spec):
    """Rectangles drawn with the library's own lengths, widths and sides cover every tick of the block once."""
    block, covered = model.Block(spec["centre_width"], spec["centre_height"]), {}
    rectangles = [(0, 0, spec["centre_width"], spec["centre_height"])]
    for log in ask("logcabin_logs", [], spec):
        rectangle, length = block.add(log["side"], log["finished_width"])
        assert length == log["finished_length"]
        rectangles.append(rectangle)
    for left, top, right, bottom in rectangles:
        for x in range(left, right):
            for y in range(top, bottom):
                covered[x, y] = covered.get((x, y), 0) + 1
    assert set(covered.values()) == {1}
    assert len(covered) == (block.right - block.left) * (block.bottom - block.top)
    found = ask("logcabin_plan", [], spec)
    assert (found["finished_width"], found["finished_height"]) == (block.right - block.left, block.bottom - block.top)


@given(small_cabins, st.integers(1, 7), st.integers(60, 200), st.integers(0, 9))
def test_strips_cut_one_log_at_a_time(spec, blocks, usable, end_loss):
    spec = dict(spec, blocks=blocks, usable_width=usable, end_loss=end_loss)
    logs, room = ask("logcabin_logs", [], spec), usable - end_loss
    if max(log["cut_length"] for log in logs) > room:
        agree(lambda: ask("logcabin_strips", [], spec), lambda: model.strips_of(as_object(spec), [], False))
        return
    for row in ask("logcabin_strips", [], spec):
        strips, left = 0, 0
        for log in reversed([log for log in logs if log["half"] == row["half"]]):
            for _ in range(blocks):
                if left < log["cut_length"]:
                    strips, left = strips + 1, room
                left -= log["cut_length"]
        assert row["strips"] == strips
        assert row["strips"] >= row["strips_least"] == -(-row["length"] // room)


fits = requests(wanted=sizes, centre=mostly(st.integers(1, 40).map(lambda n: n * 1016), sizes, rarely=[0, 1]),
                rounds=mostly(st.integers(1, 12), rarely=[0, 1000, 1001]), log_finished=widths_of_logs,
                allowance=seams, take_up=take_ups, order=choices(3))


@given(fits, roundings())
def test_the_log_for_a_block(spec, rounding):
    agree(lambda: ask("logcabin_log_for", spec, rounding),
          lambda: model.log_for(as_object(spec), as_object(rounding)))


@given(fits)
def test_the_rounds_for_a_block(spec):
    agree(lambda: ask("logcabin_rounds_for", spec), lambda: model.rounds_for(as_object(spec)))


@given(st.integers(1, 10**5), st.integers(1, 10**4), st.integers(1, 30), st.integers(1, 3))
def test_forwards_and_backwards_agree(centre, log, rounds, order):
    """A block grown forwards gives back its log and its rounds, and is a round short one tick earlier."""
    block = ask("logcabin_plan", [], {"centre_width": centre, "centre_height": centre, "log_width": log,
                                      "rounds": rounds, "order": order, "usable_width": 0})["finished_width"]
    spec = {"wanted": block, "centre": centre, "rounds": rounds, "log_finished": log, "order": order}
    found = ask("logcabin_log_for", spec, TO_A_TICK)
    assert (found["log_finished"], found["rest"]) == (log, 0)
    assert Fraction(found["exact_numerator"], found["exact_denominator"]) == log
    found = ask("logcabin_rounds_for", spec)
    assert (found["rounds"], found["rest"], found["centre_to_fit"]) == (rounds, 0, centre)
    assume(block - 1 > centre)
    assert ask("logcabin_rounds_for", dict(spec, wanted=block - 1))["rounds"] == rounds - 1


# ---- frames ---------------------------------------------------------------------------------------------------------

frames = requests(opening_width=sizes, opening_height=sizes, frame_width=mostly(small_sizes, sizes, rarely=[1]),
                  allowance=seams, take_up=take_ups,
                  usable_width=mostly(st.integers(20 * 8, 60 * 8).map(lambda n: n * 1016), st.just(0), sizes,
                                      rarely=[1]))


@given(frames, roundings())
def test_a_frame(spec, rounding):
    agree(lambda: ask("frame_pieces", spec, rounding), lambda: model.frame(as_object(spec), as_object(rounding)))


@given(frames, roundings())
def test_its_outlines(spec, rounding):
    agree(lambda: ask("frame_outline", spec, rounding), lambda: model.outline(as_object(spec), as_object(rounding)))


usual = st.integers(1, SIZE_MAX)
usual_seams = st.builds(dict, allowance=st.integers(0, 2**20), take_up=st.integers(0, 2**10))


def nearest_tick(exact):
    """Fifty digits are enough to know which half of a tick a root lies in: no root here is a whole or half tick."""
    return int(mpmath.floor(exact + mpmath.mpf(1) / 2))


@given(usual, usual, usual, usual_seams)
def test_a_frames_roots_to_fifty_digits(width, height, border, seam):
    spec = dict(seam, opening_width=width, opening_height=height, frame_width=border)
    m = 2 * seam["allowance"] + seam["take_up"]
    assume(m > 0)
    found = ask("frame_pieces", spec, TO_A_TICK)
    with mpmath.workdps(50):
        root2 = mpmath.sqrt(2)
        assert found["top_long"] == nearest_tick(width + 2 * border + (1 + root2) * m)
        assert found["side_short"] == nearest_tick(height + (root2 - 1) * m)
        middles = 2 * (width + height) + 5 * border + m + 4 * root2 * m
        assert abs(found["strip_length"] - middles) <= 2  # four pieces, each half a tick off
        at = ask("frame_outline", spec, TO_A_TICK)[4]
        assert at["x"] == nearest_tick((1 + root2) * m / 2)


@given(usual, usual, usual, usual_seams)
def test_a_frames_area_is_its_outlines(width, height, border, seam):
    """Twice the area of the finished outlines, by the shoelace sum of exact corners: top and side, twice each, are the
    whole less the opening. The library's corners are those, rounded."""
    spec = as_object(dict(seam, opening_width=width, opening_height=height, frame_width=border))
    total = 0
    for piece in (1, 2):
        corners = [(x - tip, y) for p, line, x, _, y in model.frame_corners(spec) if p == piece and line == 2
                   for tip in [model.seam_of(spec)]]
        total += abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(corners, corners[1:] + corners[:1])))
    whole = (width + 2 * border) * (height + 2 * border) - width * height
    assert total * 2 == 8 * whole  # doubled sizes: four times the area; a shoelace sum is twice it; two of each piece


# ---- medallions -----------------------------------------------------------------------------------------------------

@st.composite
def medallions(draw):
    """A centre and rounds; coping mostly stands before a pieced round."""
    spec = draw(requests(centre_width=sizes, centre_height=sizes, allowance=seams, take_up=take_ups))
    rows = []
    for _ in range(draw(st.integers(0, 6))):
        pieced_next = rows and rows[-1]["kind"] == model.COPING and draw(st.integers(0, 9)) > 0
        rows.append({"kind": model.PIECED if pieced_next else draw(choices(3)), "corner": draw(choices(2)),
                     "width": draw(mostly(st.integers(1, 48).map(lambda n: n * 1016), small_sizes, rarely=[0])),
                     "repeat": draw(mostly(st.integers(1, 48).map(lambda n: n * 1016), small_sizes, rarely=[0])),
                     "most": draw(mostly(st.just(SIZE_MAX), sizes, rarely=[0]))})
    return spec, rows, draw(st.booleans())


def grown(spec, rows, equal):
    found = ask("medallion_plan", rows, dict(spec, equal_coping=equal))
    answers = [{name: value for name, value in row.items() if name not in ("kind", "corner", "width", "repeat", "most")}
               for row in found["rows"]]
    return dict(found["out"], rows=answers)


@given(medallions())
def test_a_medallion(request):
    spec, rows, equal = request
    agree(lambda: grown(spec, rows, equal),
          lambda: model.medallion(as_object(spec), [as_object(row) for row in rows], equal))


@given(st.integers(1, 10**6), st.integers(1, 10**6), st.integers(0, 10**4), st.integers(1, 10**5),
       st.integers(1, 10**5), st.integers(1, 2), st.integers(0, 10**4))
def test_the_least_coping_makes_the_next_round_divide(width, height, least, depth, repeat, corner, seam):
    """With it the round divides; with a tick less for the least the answer stands unless it was the least itself; asked
    again with what was found as the least, the same is found; and the quilt is the centre and twice every round."""
    spec = {"centre_width": width, "centre_height": height, "allowance": seam}

    def ask_with(narrowest):
        return grown(spec, [{"kind": 3, "corner": 2, "width": narrowest, "repeat": 0, "most": SIZE_MAX},
                            {"kind": 2, "corner": corner, "width": depth, "repeat": repeat, "most": 0}], False)

    found = ask_with(least)
    coping, pieced = found["rows"]
    assert pieced["divides"] == 1
    for name in ("side", "top"):
        pair = coping[f"{name}_pair"]
        assert 2 * least <= pair < 2 * least + repeat
        again = ask_with(pair // 2)["rows"][0]
        assert again[f"{name}_pair"] == pair
    assert found["finished_width"] == width + coping["side_pair"] + 2 * depth
    assert found["finished_height"] == height + coping["top_pair"] + 2 * depth


# ---- pieced borders -------------------------------------------------------------------------------------------------

@given(requests(side_finished=sizes, repeat_finished=mostly(small_sizes, sizes, rarely=[1]),
                spacers=mostly(st.just(0), few, counts, rarely=[COUNT_MAX]), spacer_least=small_sizes,
                allowance=seams, take_up=take_ups), roundings())
def test_repeats_along_a_side(spec, rounding):
    agree(lambda: ask("repeat_plan", spec, rounding), lambda: model.repeat(as_object(spec), as_object(rounding)))


@given(st.integers(1, 10**6), st.integers(1, 10**5), st.integers(1, 20), st.integers(0, 1000))
def test_units_spacers_and_what_is_left_make_the_side(side, repeat, spacers, least):
    assume(spacers * least <= side)
    found = ask("repeat_plan", {"side_finished": side, "repeat_finished": repeat, "spacers": spacers,
                                "spacer_least": least}, TO_A_TICK)
    assert found["units"] * repeat + spacers * found["spacer_finished"] + found["left_over"] == side
    assert found["shared"] >= spacers * least
    assert found["shared"] - repeat < spacers * least  # one unit more would leave too little
    assert 2 * abs(found["left_over"]) <= spacers
    assert found["units_below"] * repeat + found["rest_below"] == side
    assert found["units_above"] * repeat - found["over_above"] == side


@given(sizes, sizes, small_sizes, mostly(small_sizes, sizes, rarely=[0]), roundings())
def test_a_repeat_for_both_sides(width, height, least, most, rounding):
    agree(lambda: ask("repeat_common", width, height, least, most, rounding),
          lambda: model.common(width, height, least, most, as_object(rounding)))


@given(requests(side_finished=sizes, diagonal_finished=mostly(st.just(0), small_sizes, sizes, rarely=[1]),
                squares=mostly(few, counts, rarely=[0, 2**29, 2**29 + 1]), runs=few, allowance=seams,
                take_up=take_ups), roundings(), roundings())
def test_squares_on_point_in_a_border(spec, cutting, measuring):
    agree(lambda: ask("point_border_plan", spec, cutting, measuring),
          lambda: model.point_border(as_object(spec), as_object(cutting), as_object(measuring)))


@given(usual, st.integers(1, 2000), usual_seams)
def test_a_point_borders_roots_to_fifty_digits(side, squares, seam):
    assume(squares <= side)
    m = 2 * seam["allowance"] + seam["take_up"]
    assume(side >= 2 * squares)  # at least a tick of a square beside its seams
    found = ask("point_border_plan", dict(seam, side_finished=side, squares=squares), TO_A_TICK, TO_A_TICK)
    with mpmath.workdps(50):
        root2, diagonal = mpmath.sqrt(2), mpmath.mpf(side) / squares
        assert found["square_finished"] == nearest_tick(diagonal / root2)
        assert found["square_cut"] == nearest_tick(diagonal / root2 + m)
        assert found["run_longer_by"] == nearest_tick(squares * root2 * (found["square_cut"] - m) - side)
        if m > 0:
            assert found["setting_cut"] == nearest_tick(diagonal + (1 + root2) * m)
            assert found["end_cut"] == nearest_tick(diagonal / 2 + (1 + 1 / root2) * m)
