# SPDX-License-Identifier: MIT
"""A whole strip quilt against its parts, and the dealing of its stacks against dealing them."""

from collections import Counter

from hypothesis import assume, given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import stripquilt as model
from muslin_model.base import WARN_NEST_CONFLICT
from questions import agree, as_object, choices, mostly, requests, seams, sizes, small_sizes, take_ups

wishes = requests(
    strips=mostly(st.integers(1, 80), rarely=[0, 1, 10**6, 2**31 - 1, 2**31]),
    strips_per_set=mostly(st.integers(1, 8), rarely=[0, 100]),
    segments_per_block=mostly(st.integers(1, 4), st.integers(1, 32), rarely=[0, 33]),
    columns=mostly(st.integers(1, 4), rarely=[0, 1000]), rows=mostly(st.integers(1, 4), rarely=[0, 1000]),
    tops=mostly(st.just(0), st.integers(0, 3), rarely=[-1, 2**31]),
    strip_cut=mostly(st.just(20320), sizes, rarely=[1]),
    strip_length=mostly(st.integers(300, 360).map(lambda n: n * 1016), sizes, rarely=[0]),
    segment_cut=mostly(st.just(0), st.integers(10, 60).map(lambda n: n * 1016), rarely=[1]),
    allowance=mostly(st.just(2032), seams, rarely=[0]), take_up=take_ups,
    end_trim=mostly(st.just(0), small_sizes, rarely=[1]), resquare_loss=mostly(st.just(0), small_sizes, rarely=[1]),
    resquare_every=mostly(st.integers(0, 3), rarely=[-1]), fold_clear=mostly(st.just(0), small_sizes, rarely=[1]),
    turning=choices(3), nesting=choices(2),
    square_tolerance=mostly(st.integers(0, 16), st.just(127), rarely=[-1, 2**30 + 1]))


@given(wishes, st.booleans())
def test_the_counts_and_sizes_of_a_plan(spec, one_end):
    def asked():
        plan = ask("stripquilt_plan", dict(spec, from_one_end=one_end))
        return dict(plan, warnings=plan["warnings"] & ~WARN_NEST_CONFLICT)

    agree(asked, lambda: model.plan(as_object(spec), one_end))


plausible = requests(strips=st.integers(6, 120), strips_per_set=st.integers(1, 6), segments_per_block=st.integers(1, 5),
                     columns=st.integers(1, 4), rows=st.integers(1, 4), tops=st.integers(0, 2),
                     segment_cut=st.integers(20, 60).map(lambda n: n * 1016), turning=st.just(1),
                     nesting=st.integers(1, 2))


def planned(spec):
    try:
        plan = ask("stripquilt_plan", spec)
    except Failed as failed:
        assume(failed.status.name not in ("ERR_NOT_ENOUGH", "ERR_NO_YIELD", "ERR_NOT_SQUARE"))
        raise
    return plan, ask("stripquilt_groups", spec)


def sets_of(group):
    return tuple(group["sets"][:group["segments"]])


@given(plausible)
def test_every_block_is_dealt_its_segments_and_every_stack_is_used_up(spec):
    plan, groups = planned(spec)
    assert len(groups) == plan["groups"] <= plan["sets"]
    dealt, next_block, used = [], 1, Counter()
    for group in groups:
        assert group["first_block"] == next_block and group["blocks"] >= 1
        assert group["segments"] == spec["segments_per_block"]
        assert not any(group["sets"][group["segments"]:])
        next_block += group["blocks"]
        dealt += [sets_of(group)] * group["blocks"]
        for number in sets_of(group):
            used[number] += group["blocks"]
    assert next_block == plan["blocks"] + 1
    assert dealt == model.dealt_blocks(plan["segments"], plan["sets"], plan["blocks"])
    high, low = plan["stack_high"], plan["stack_low"]
    stacks = {number: high if number <= plan["stacks_high"] else low for number in range(1, plan["sets"] + 1)}
    assert used == stacks
    assert stacks == {number: ask("stripquilt_pressing", number, spec)["segments"] for number in stacks}


@given(plausible)
def test_no_block_repeats_a_set_unless_the_sets_are_too_few(spec):
    plan, groups = planned(spec)
    repeats = [group for group in groups if len(set(sets_of(group))) < group["segments"]]
    assert [group for group in groups if group["repeats"]] == repeats
    assert bool(repeats) == (plan["sets"] < spec["segments_per_block"])


@given(plausible)
def test_pressing_and_turning_make_every_join_nest_or_name_it(spec):
    plan, groups = planned(spec)
    pressing = {number: ask("stripquilt_pressing", number, spec)["pressing"] for number in range(1, plan["sets"] + 1)}
    assert set(pressing.values()) <= {1, 2} and pressing[1] == 1
    turned = unnested = 0
    for group in groups:
        ways = [pressing[number] ^ (3 if group["turned"] >> j & 1 else 0) for j, number in enumerate(sets_of(group))]
        assert group["first_pressing"] == ways[0]
        same = [j for j in range(len(ways) - 1) if ways[j] == ways[j + 1]]
        assert group["not_nesting"] == sum(1 << j for j in same)
        turned += group["blocks"] * bin(group["turned"]).count("1")
        unnested += group["blocks"] * len(same)
    assert (plan["segments_turned"], plan["places_not_nesting"]) == (turned, unnested)
    assert (unnested if spec["nesting"] == model.NESTING_TURN else turned) == 0
    assert bool(plan["warnings"] & WARN_NEST_CONFLICT) == (turned + unnested > 0)


@given(plausible, st.integers(-3, 3) | st.sampled_from([2**63 - 1, -(2**63)]))
def test_only_sets_of_the_plan_are_pressed(spec, beyond):
    plan, _ = planned(spec)
    number = beyond if beyond < 1 else min(plan["sets"] + beyond, 2**63 - 1)
    try:
        ask("stripquilt_pressing", number, spec)
        raise AssertionError("answered")
    except Failed as failed:
        assert failed.status.name == "ERR_INDEX"


@given(requests(strips=st.integers(6, 40), strips_per_set=st.integers(4, 6), segments_per_block=st.integers(2, 4),
                columns=st.integers(1, 3), rows=st.integers(1, 3),
                segment_cut=st.integers(20, 60).map(lambda n: n * 1016), turning=st.just(1), nesting=st.just(1)))
def test_no_other_pressing_would_leave_fewer_segments_to_turn(spec):
    plan, groups = planned(spec)
    assume(plan["sets"] <= 10)
    dealt = [sets_of(group) for group in groups for _ in range(group["blocks"])]
    assert plan["segments_turned"] == model.fewest_turned(dealt, plan["sets"])
