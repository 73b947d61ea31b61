# SPDX-License-Identifier: MIT
"""Settings, runs of strips and borders against laying them out."""

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import setting as model
from muslin_model.base import LENGTH_MAX
from questions import agree, as_object, choices, counts, few, mostly, requests, seams, sizes, small_sizes, take_ups


@given(requests(block_width=sizes, block_height=sizes, columns=few, rows=few, allowance=seams, take_up=take_ups,
                turning=choices(3), square_tolerance=small_sizes), st.integers(0, 3))
def test_a_straight_setting(spec, shape):
    if shape < 3:
        off = spec["square_tolerance"] + shape - 1
        spec["block_height"] = abs(spec["block_width"] + (off if spec["block_width"] % 2 else -off)) % 2**62
    agree(lambda: ask("setting_straight", spec), lambda: model.straight(as_object(spec)))


@given(choices(3), counts, counts)
def test_how_far_a_block_is_turned(turning, column, row):
    agree(lambda: ask("setting_turn", turning, column, row), lambda: model.turn(turning, column, row))


@given(st.integers(1, 9), st.integers(1, 9), st.integers(1, 3))
def test_as_many_blocks_are_turned_as_their_turns_say(columns, rows, turning):
    spec = {"block_width": 8128, "block_height": 8128, "columns": columns, "rows": rows, "turning": turning}
    turned = sum(ask("setting_turn", turning, column, row) != 0
                 for column in range(columns) for row in range(rows))
    assert ask("setting_straight", spec)["blocks_turned"] == turned


@given(requests(segment_cut=sizes, set_unfinished=sizes, segments=few, allowance=seams, take_up=take_ups))
def test_a_block_of_segments(spec):
    agree(lambda: ask("block_from_segments", spec), lambda: model.block(as_object(spec)))


@given(choices(4), sizes, seams)
def test_what_a_join_loses(join, strip_cut, allowance):
    agree(lambda: ask("join_loss", join, strip_cut, allowance),
          lambda: model.join_loss(join, strip_cut, allowance))


@given(requests(length=mostly(sizes, st.integers(0, 10**7), st.integers(0, LENGTH_MAX // 2),
                              rarely=[0, LENGTH_MAX // 2, LENGTH_MAX // 2 + 1, -1]),
                strip_length=sizes, strip_cut=sizes, allowance=seams, join=choices(4)))
def test_a_run_of_strips(spec):
    agree(lambda: ask("run_plan", spec), lambda: model.run(as_object(spec)))


@given(requests(unfinished_width=sizes, unfinished_length=sizes, finished_border=mostly(small_sizes, sizes, rarely=[1]),
                allowance=seams, take_up=take_ups, usable_width=sizes, mitre_extra=small_sizes, style=choices(4),
                join=choices(4)), st.booleans())
def test_a_border(spec, lengthwise):
    agree(lambda: ask("border_plan", dict(spec, lengthwise=lengthwise)),
          lambda: model.border(as_object(spec), lengthwise))
