# SPDX-License-Identifier: MIT
"""Washing and quilting against fractions, and the laws that hold between the calls."""

from fractions import Fraction

from hypothesis import assume, given
from hypothesis import strategies as st

from asking import ask
from muslin_model import shrinkage as model
from muslin_model.base import DOWN, NEAREST, PPM, SIZE_MAX, UP
from questions import agree, as_object, choices, mostly, requests, roundings, shares, sizes

TICK_UP = {"grid": 1, "tolerance": 0, "direction": UP}
TICK_DOWN = {"grid": 1, "tolerance": 0, "direction": DOWN}
losses = mostly(st.integers(0, 12).map(lambda n: n * 10_000), st.integers(0, PPM - 1), shares,
                rarely=[0, 1, PPM - 1, PPM, -1])
usual_losses = st.integers(0, 300_000)
quilts = requests(width=sizes, length=sizes, quilting_across=losses, quilting_along=losses, washing_across=losses,
                  washing_along=losses)
usual_quilts = requests(width=st.integers(0, 10**6), length=st.integers(0, 10**6), quilting_across=usual_losses,
                        quilting_along=usual_losses, washing_across=usual_losses, washing_along=usual_losses)


@st.composite
def measures(draw):
    """Something measured before and after: mostly a little smaller."""
    before = draw(sizes)
    near = st.integers(before * 8 // 10, before * 12 // 10)
    after = draw(mostly(near, sizes, rarely=[0, 10 * before, 10 * before + 1, -1]) if 0 < before < 2**40 else sizes)
    return before, after


@given(measures())
def test_a_change(pair):
    agree(lambda: ask("shrinkage_change", *pair), lambda: model.change(*pair))


@given(measures(), measures())
def test_a_change_both_ways(across, along):
    spec = {"before_width": across[0], "after_width": across[1], "before_length": along[0], "after_length": along[1]}
    agree(lambda: ask("shrinkage_measure", spec), lambda: model.measure(as_object(spec)))


@given(quilts, roundings())
def test_a_size_to_make(spec, rounding):
    agree(lambda: ask("shrinkage_size_to_make", spec, rounding),
          lambda: model.size_to_make(as_object(spec), as_object(rounding)))


@given(usual_quilts, roundings())
def test_a_usual_size_to_make(spec, rounding):
    agree(lambda: ask("shrinkage_size_to_make", spec, rounding),
          lambda: model.size_to_make(as_object(spec), as_object(rounding)))


@given(quilts, roundings())
def test_what_a_size_becomes(spec, rounding):
    agree(lambda: ask("shrinkage_becomes", spec, rounding),
          lambda: model.becomes(as_object(spec), as_object(rounding)))


@given(sizes, sizes, sizes, roundings())
def test_a_sample(before, after, target, rounding):
    agree(lambda: ask("shrinkage_from_sample", before, after, target, rounding),
          lambda: model.from_sample(before, after, target, as_object(rounding)))


@given(losses, losses, choices(4), st.booleans())
def test_what_governs(fabric, batting, rule, alike):
    batting = fabric if alike else batting
    agree(lambda: ask("shrinkage_governs", fabric, batting, rule), lambda: model.governs(fabric, batting, rule))


@given(requests(needed_length=sizes, usable_width=sizes, across=losses, along=losses))
def test_cloth_washed_before_it_is_cut(spec):
    agree(lambda: ask("shrinkage_prewash", spec), lambda: model.prewash(as_object(spec)))


@given(usual_quilts)
def test_washing_undoes_the_making(spec):
    made = ask("shrinkage_size_to_make", spec, TICK_UP)
    back = ask("shrinkage_becomes", dict(spec, width=made["make_width"], length=made["make_length"]), TICK_DOWN)
    assert (back["washed_width"], back["washed_length"]) == (spec["width"], spec["length"])


@given(usual_quilts, st.sampled_from([1, 127, 1016, 8128]))
def test_a_size_rounded_up_never_ends_short_and_the_next_smaller_does(spec, grid):
    made = ask("shrinkage_size_to_make", spec, {"grid": grid, "tolerance": 0, "direction": UP})
    for side in ("width", "length"):
        way = "across" if side == "width" else "along"
        keeps = model.left(spec[f"quilting_{way}"]) * model.left(spec[f"washing_{way}"])
        make = made[f"make_{side}"]
        assert make * keeps >= spec[side]
        assert make == 0 or (make - grid) * keeps < spec[side]


@given(usual_quilts)
def test_multiplying_falls_short(spec):
    made = ask("shrinkage_size_to_make", spec, TICK_UP)
    for side in ("width", "length"):
        assert made[f"multiplied_{side}"] <= made[f"make_{side}"]
        assert 0 <= made[f"short_{side}"] <= spec[side]


@given(st.integers(1, 10**6), st.integers(1, 10**6), st.integers(0, 10**6))
def test_a_sample_of_its_own_size_gives_itself(before, after, target):
    assert ask("shrinkage_from_sample", before, after, after)["value"] == before
    made = ask("shrinkage_from_sample", before, after, target, TICK_UP)["value"]
    assume(made <= SIZE_MAX)
    assert ask("shrinkage_from_sample", after, before, made, TICK_DOWN)["value"] >= target


@given(st.integers(1, 2000), st.integers(1, 2000), st.integers(1, 2000), st.integers(1, 2000))
def test_the_area_changes_as_both_sides_together(before_width, after_width, before_length, after_length):
    assume(after_width <= 10 * before_width and after_length <= 10 * before_length)
    found = ask("shrinkage_measure", {"before_width": before_width, "after_width": after_width,
                                      "before_length": before_length, "after_length": after_length})
    exact = Fraction(after_width, before_width) * Fraction(after_length, before_length) - 1
    assert abs(found["change_area"] - exact * PPM) <= Fraction(1, 2)


@given(st.integers(1, 10**6), st.integers(0, PPM - 1))
def test_a_change_measured_is_the_share_lost(size, share):
    spec = {"width": size * PPM % (SIZE_MAX // PPM * PPM + 1), "washing_across": share}
    assume(spec["width"] >= PPM and spec["width"] % PPM == 0)
    washed = ask("shrinkage_becomes", spec, {"grid": 1, "tolerance": 0, "direction": NEAREST})
    assert ask("shrinkage_change", spec["width"], washed["washed_width"]) == -share == washed["change_across"]


@given(st.integers(0, 10**6), st.integers(1, 10**6), usual_losses, usual_losses)
def test_washed_cloth_is_what_was_needed(needed, usable, across, along):
    wash = ask("shrinkage_prewash", {"needed_length": needed, "usable_width": usable, "across": across,
                                     "along": along})
    assert wash["unshrunk_length"] * model.left(along) >= needed
    assert wash["unshrunk_length"] == 0 or (wash["unshrunk_length"] - 1) * model.left(along) < needed
    assert ask("fabric_usable_width", usable, 0, across) == wash["washed_width"]
    assert ask("fabric_purchase", {"needed": needed, "shrinkage": along})["unshrunk"] == wash["unshrunk_length"]
