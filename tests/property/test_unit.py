# SPDX-License-Identifier: MIT
"""Recipes for pieced shapes against drawing them; backwards against forwards."""

import copy

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import unit as model
from muslin_model.base import COUNT_MAX, SIZE_MAX
from questions import agree, as_object, mostly, requests

KINDS = [(kind, method) for kind, methods in model.METHODS.items() for method in methods]

finished = st.integers(1, 200).map(lambda n: 1016 * n) | st.integers(1, 10**6)
parts = st.integers(0, 16).map(lambda n: n * 254) | st.sampled_from([2032, 1920, 2400])
grids = st.sampled_from([1, 127, 254, 508, 1016, 2032, 320]) | st.integers(1, 10**5)


# What makes a good request absurd, a member at a time; most are then refused.
SPOILT = {
    "finished_width": [0, 1, 2, 3, model.UNIT_SIZE_MAX, model.UNIT_SIZE_MAX + 1, -1],
    "finished_height": [0, 1, 2, 5, 1016, model.UNIT_SIZE_MAX, model.UNIT_SIZE_MAX + 1, -1],
    "corner": [0, 1, 1016, model.UNIT_SIZE_MAX, -1],
    "allowance": [0, 1, model.PART_MAX, model.PART_MAX + 1, -1],
    "take_up": [1, 300, model.PART_MAX, model.PART_MAX + 1, -1],
    "half_addition": [1, 6936, 6937, 6938, 6939, model.PART_MAX, model.PART_MAX + 1, -1],
    "quarter_addition": [1, 9810, 9811, 9812, model.PART_MAX, model.PART_MAX + 1, -1],
    "trim_room": [1, model.PART_MAX, model.PART_MAX + 1, -1],
    "grid": [0, model.UNIT_SIZE_MAX, model.UNIT_SIZE_MAX + 1, -1],
    "tolerance": [1, 1016, SIZE_MAX, -1],
    "units": [0, COUNT_MAX, COUNT_MAX + 1, -1],
    "mirrored": [0, 1, COUNT_MAX, COUNT_MAX + 1, -1],
    "kind": [0, *range(1, 20), -1],
    "method": [0, *range(1, 11), -1],
    "policy": [0, 1, 2, 3, 4, -1],
    "tip": [0, 3, -1],
    "direction": [0, 4, -1],
}


@st.composite
def specs(draw, spoil=True):
    kind, method = draw(st.sampled_from(KINDS))
    height = draw(finished)
    width = 0 if kind in model.ONLY_HEIGHT else draw(finished)
    if kind == model.TRAPEZOID:
        width += 2 * height
    if kind == model.FLYING_GEESE:
        width *= 2
    if kind not in model.NEEDS_HEIGHT | model.FREE_HEIGHT:
        height = draw(st.sampled_from([0, width // 2 if kind == model.FLYING_GEESE else width]))
    snowball = kind == model.SNOWBALL
    width, height = (width + 2, height + 2) if snowball else (width, height)
    policy = draw(st.integers(1, 3))
    grid = draw(grids)
    spec = {
        "finished_width": width, "finished_height": height,
        "corner": draw(st.integers(1, min(width, height) // 2)) if snowball else 0, "allowance": draw(parts),
        "take_up": draw(st.just(0) | st.integers(0, 300)), "half_addition": 0, "quarter_addition": 0,
        "trim_room": draw(parts) if policy == model.OVERSIZE else 0, "grid": grid,
        "tolerance": draw(st.just(0) | st.integers(0, grid - 1)), "units": draw(st.integers(0, 500)),
        "mirrored": draw(st.just(0) | st.integers(1, 90)) if kind in model.HANDED else 0, "kind": kind,
        "method": method, "policy": policy, "tip": draw(st.integers(1, 2)), "direction": draw(st.integers(1, 3)),
    }
    if spoil and draw(st.integers(0, 3)) == 3:
        name = draw(st.sampled_from(sorted(SPOILT)))
        spec[name] = draw(st.sampled_from(SPOILT[name]))
    return spec


stocks = requests(
    width=mostly(st.sampled_from([20320, 40640, 81280, 325120, 146304]), st.integers(1, 10**6),
                 rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1]),
    height=mostly(st.sampled_from([20320, 40640, 81280, 146304]), st.integers(1, 10**6),
                  rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1]),
    per_region=st.integers(0, 60) | st.integers(0, COUNT_MAX), end_loss=st.just(0) | st.integers(0, 8128),
    finished_grid=mostly(st.sampled_from([1, 127, 1016, 2032]), st.integers(1, 10**4),
                         rarely=[0, model.UNIT_SIZE_MAX, model.UNIT_SIZE_MAX + 1]))


# A size along a strip of wedges has two different roots, and each is taken up.
def wedge_slack(found, expected):
    if found["shape"] == model.WEDGES:
        for name in ("cut_width", "pitch", "wide_edge", "narrow_edge"):
            assert 0 <= found[name] - expected[name] <= 2, name
            found[name] = expected[name]
    return found


@given(specs())
def test_a_recipe(spec):
    agree(lambda: ask("unit_recipe", spec), lambda: model.recipe(as_object(copy.copy(spec))))


@given(specs())
def test_the_pieces_of_a_recipe(spec):
    def asked():
        found = ask("unit_pieces", spec)
        expected = model.pieces(as_object(copy.copy(spec)))
        return [{name: wedge_slack(line, other)[name] for name in other} for line, other in zip(found, expected)]
    agree(asked, lambda: model.pieces(as_object(copy.copy(spec))))


def without_wedges(spec):
    return spec["kind"] != model.KALEIDOSCOPE


@given(specs().filter(without_wedges), stocks)
def test_what_stock_yields(spec, stock):
    agree(lambda: ask("unit_from_stock", spec, stock), lambda: model.yields(as_object(copy.copy(spec)), as_object(stock)))


@given(specs().filter(without_wedges), stocks)
def test_the_largest_unit(spec, stock):
    agree(lambda: ask("unit_largest", spec, stock),
          lambda: model.largest_unit(as_object(copy.copy(spec)), as_object(stock)))


@given(specs(), stocks)
def test_all_that_stock_makes(spec, stock):
    def asked():
        found = ask("unit_makes", spec, stock)
        return [line for line in found if line["kind"] != model.KALEIDOSCOPE]

    def modelled():
        found = model.makes(as_object(copy.copy(spec)), as_object(stock))
        return [line for line in found if line["kind"] != model.KALEIDOSCOPE]

    def named(answer):
        return [{name: line[name] for name in sorted(line) if name not in ("size", "flags")} for line in answer()]
    agree(lambda: named(asked), lambda: named(modelled))


SIZES = st.integers(1, 160).map(lambda n: n * 1016)
SEAMS = st.sampled_from([2032, 1920, 2400, 2031, 508, 4064])


def plain_spec(kind, method, size, seam, **members):
    wide = 0 if kind in model.ONLY_HEIGHT else size * (3 if kind == model.TRAPEZOID else 2)
    return dict({"kind": kind, "method": method, "finished_width": wide,
                 "finished_height": size if kind in model.NEEDS_HEIGHT else 0,
                 "corner": size // 2 if kind == model.SNOWBALL else 0, "allowance": seam}, **members)


@given(st.sampled_from(KINDS), SIZES, SEAMS)
def test_what_is_cut_covers_what_is_seen_and_its_allowances(recipe, size, seam):
    found = ask("unit_recipe", plain_spec(*recipe, size, seam, grid=1))
    assert found["waste_area"] >= 0 and not found["warnings"] & model.WARN_BELOW_EXACT
    assert found["cut_area"] == found["finished_area"] + found["allowance_area"] + found["waste_area"]


@given(st.sampled_from(KINDS), SIZES, SEAMS, st.sampled_from([1, 127, 1016]))
def test_backwards_is_maximal(recipe, size, seam, grid):
    """From exactly the highest and longest piece of a size, at least that size comes back; a step more does not fit."""
    kind, method = recipe
    spec = plain_spec(kind, method, size, seam, grid=1)
    rows = ask("unit_pieces", spec)
    stock = {"width": max(line["cut_width"] for line in rows), "height": max(line["cut_height"] for line in rows),
             "per_region": 1, "finished_grid": grid}
    found = ask("unit_largest", spec, stock)
    name = "finished_height" if kind in model.ONLY_HEIGHT else "finished_width"
    began = size if kind in model.ONLY_HEIGHT else spec["finished_width"]
    assert found[name] >= began - began % (2 * grid)
    for step in (0, 2 * grid):
        larger = dict(spec, finished_width=found["finished_width"] + step if spec["finished_width"] else 0,
                      finished_height=found["finished_height"] + step if spec["finished_height"] else 0,
                      corner=spec["corner"] * (found["finished_width"] + step) // spec["finished_width"]
                      if spec["corner"] else 0)
        if spec["finished_height"] and spec["finished_width"]:
            larger["finished_height"] = spec["finished_height"] * larger["finished_width"] // spec["finished_width"]
        pieces = ask("unit_pieces", larger)
        fits = all(line["cut_width"] <= stock["width"] and line["cut_height"] <= stock["height"] for line in pieces)
        assert fits == (step == 0)
