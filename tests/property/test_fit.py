# SPDX-License-Identifier: MIT
"""Beds, settings, counts and resized patterns against the model, which tries every count and every tick."""

from fractions import Fraction

import mpmath
from hypothesis import assume, given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import fit as model
from muslin_model.base import COUNT_MAX, SIZE_MAX
from questions import agree, as_object, choices, mostly, requests, seams, sizes, small_sizes, take_ups

mpmath.mp.dps = 50
ROOT_2, ROOT_3 = mpmath.sqrt(2), mpmath.sqrt(3)
KINDS = {model.STRAIGHT: "allow_straight", model.SASHED: "allow_sashed", model.FRAMED: "allow_framed",
         model.ON_POINT: "allow_on_point"}

# ---- beds -----------------------------------------------------------------------------------------------------------

bed_requests = requests(mattress_width=sizes, mattress_length=sizes, mattress_depth=small_sizes,
                        floor_height=mostly(st.just(0), small_sizes, rarely=[1, SIZE_MAX + 1]),
                        beyond_depth=small_sizes, side_drop=small_sizes, foot_drop=small_sizes, head_drop=small_sizes,
                        pillow_tuck=small_sizes, quilting_extra=small_sizes, drop=choices(4), foot_corner=choices(2))


@given(bed_requests, st.booleans())
def test_a_quilt_for_a_bed(spec, foot_given):
    agree(lambda: ask("bed_size", dict(spec, foot_given=foot_given)), lambda: model.bed(as_object(spec), foot_given))


@given(requests(quilt_width=sizes, quilt_length=sizes, mattress_width=sizes, mattress_length=sizes,
                mattress_depth=small_sizes, floor_height=small_sizes, head_drop=small_sizes, pillow_tuck=small_sizes,
                foot_corner=choices(2)))
def test_a_quilt_on_a_bed(spec):
    agree(lambda: ask("bed_covered", spec), lambda: model.cover(as_object(spec)))


@given(bed_requests)
def test_a_quilt_made_for_a_bed_hangs_as_it_was_meant_to(spec):
    try:
        made = ask("bed_size", spec)
    except Failed:
        assume(False)
    lying = {name: spec[name] for name in ("mattress_width", "mattress_length", "mattress_depth", "floor_height",
                                           "head_drop", "pillow_tuck", "foot_corner")}
    lies = ask("bed_covered", dict(lying, quilt_width=made["finished_width"], quilt_length=made["finished_length"]))
    for name in ("side_drop", "foot_drop", "corner_hang", "corner_clearance", "corner_touches"):
        assert lies[name] == made[name]
    assert lies["reaches_edges"]


@given(st.integers(1, SIZE_MAX // 4), st.integers(1, SIZE_MAX // 4))
def test_a_square_corner_hangs_by_the_root(side, foot):
    found = ask("bed_size", {"mattress_width": 8, "mattress_length": 8, "side_drop": side, "foot_drop": foot,
                             "drop": model.GIVEN})
    assert found["corner_hang"] == int(mpmath.ceil(mpmath.sqrt(mpmath.mpf(side)**2 + mpmath.mpf(foot)**2)))


# ---- settings -------------------------------------------------------------------------------------------------------

tolerances = mostly(st.just(0), st.integers(0, 8), rarely=[SIZE_MAX, SIZE_MAX + 1, -1])


def small(first, last, *rarely):
    return mostly(st.integers(first, last), rarely=[first, last, *rarely])


@st.composite
def fit_requests(draw, least_block=1, most_count=25):
    """Small ones, so that all counts can be tried."""
    spec = draw(requests(wanted_width=small(1, 120, 0, SIZE_MAX + 1), wanted_length=small(1, 120, 0),
                         width_under=tolerances, width_over=tolerances, length_under=tolerances, length_over=tolerances,
                         block_step=small(1, 4, 0), sash_step=small(1, 3, 0), border_step=small(1, 4, 0, 2**40),
                         best=mostly(st.just(0), st.integers(0, 6), rarely=[COUNT_MAX, COUNT_MAX + 1, -1]),
                         work_limit=mostly(st.just(1000), st.just(100_000), rarely=[1, 5, 50, 0, COUNT_MAX + 1]),
                         rank=choices(3), columns_parity=choices(3), rows_parity=choices(3)))
    for name, lowest, highest, wide in (("block", least_block, 12, 6), ("sash", 1, 4, 3), ("border", 0, 8, 6),
                                        ("columns", 1, 4, most_count), ("rows", 1, 4, most_count)):
        spec[f"{name}_least"] = draw(small(lowest, highest, lowest - 1))
        spec[f"{name}_most"] = spec[f"{name}_least"] + draw(small(0, wide, -1))
    spec["kinds"] = sorted(draw(mostly(st.sets(st.sampled_from(sorted(KINDS)), min_size=1), rarely=[set()])))
    return spec


def ask_fit(call, spec):
    members = {name: value for name, value in spec.items() if name != "kinds"}
    return ask(call, dict(members, **{KINDS[kind]: True for kind in spec["kinds"]}))


@given(fit_requests())
def test_every_setting_within_the_tolerance_and_no_other(spec):
    agree(lambda: ask_fit("fit_settings", spec), lambda: model.settings(as_object(spec)))


@given(fit_requests(most_count=8))
def test_the_nearest_setting(spec):
    agree(lambda: ask_fit("fit_nearest", spec), lambda: model.nearest_setting(as_object(spec)))


inch = 8128
plausible = requests(
    wanted_width=st.integers(30, 110).map(lambda n: n * inch),
    wanted_length=st.integers(30, 110).map(lambda n: n * inch), width_under=st.integers(0, 4 * inch),
    width_over=st.integers(0, 4 * inch), length_under=st.integers(0, 4 * inch), length_over=st.integers(0, 4 * inch),
    block_least=st.integers(6, 10).map(lambda n: n * inch),
    block_most=st.integers(10, 15).map(lambda n: n * inch), border_most=st.integers(0, 8).map(lambda n: n * inch),
    rank=st.integers(1, 3), kinds=st.sets(st.sampled_from(sorted(KINDS)), min_size=1).map(sorted))


@given(plausible)
def test_every_row_has_the_size_it_states(spec):
    rows = ask_fit("fit_settings", spec)
    for row in rows:
        on_point = row["kind"] == model.ON_POINT
        for counts, side in (("columns", "width"), ("rows", "length")):
            count, size, wanted = row[counts], row[f"finished_{side}"], spec[f"wanted_{side}"]
            sashes = {model.SASHED: count - 1, model.FRAMED: count + 1}.get(row["kind"], 0)
            exact = count * row["block"] * (ROOT_2 if on_point else 1) + sashes * row["sash"] + 2 * row["border"]
            assert abs(exact - size) <= (0.5 if on_point else 0)
            assert wanted - spec[f"{side}_under"] <= exact <= wanted + spec[f"{side}_over"]
            assert row[f"off_{side}"] == size - wanted
    assert [model.order(row) for row in rows] == sorted(model.order(row) for row in rows)


@given(plausible)
def test_a_nearer_setting_is_never_overlooked(spec):
    """The nearest of all comes first in a list whose tolerance it just meets."""
    best = ask_fit("fit_nearest", spec)
    off = {"width_under": max(-best["off_width"], 0) + 1, "width_over": max(best["off_width"], 0) + 1,
           "length_under": max(-best["off_length"], 0) + 1, "length_over": max(best["off_length"], 0) + 1}
    assert ask_fit("fit_settings", dict(spec, **off, rank=model.RANK_NEAREST))[0] == best


# ---- how many fit ---------------------------------------------------------------------------------------------------

@given(requests(wanted=sizes, border=small_sizes, block=sizes, sash=small_sizes, direction=choices(3)), st.booleans())
def test_blocks_across_a_width(spec, framed):
    agree(lambda: ask("fit_across", dict(spec, frame=framed)),
          lambda: model.blocks_across(as_object(spec), framed))


@given(requests(wanted_width=sizes, wanted_length=sizes, height=mostly(small_sizes, sizes, rarely=[1, 0]),
                rows_direction=choices(3), sides_direction=choices(3), allowance=seams, take_up=take_ups))
def test_rows_of_triangles(spec):
    agree(lambda: ask("fit_triangles", spec), lambda: model.triangle_rows(as_object(spec)))


@given(st.integers(1, SIZE_MAX), st.integers(1, SIZE_MAX))
def test_sides_of_triangles_fill_the_width_to_half_a_side(width, height):
    found = ask("fit_triangles", {"wanted_width": width, "wanted_length": height, "height": height})
    side = 2 * mpmath.mpf(height) / ROOT_3
    assert abs(found["finished_width"] - found["sides"] * side) < 0.5
    assert found["sides"] == 1 or abs(found["sides"] * side - width) <= side / 2
    # area: 2 sides - 1 whole and 2 half triangles fill the strip
    triangle = side * height / 2
    strip = found["sides"] * side * height
    assert abs((found["triangles"] + mpmath.mpf(found["half_triangles"]) / 2) * triangle - strip) < strip * 1e-40


def offset_corner(corner, directions, out):
    """Where two edges through a corner meet when both move out by so much, square to themselves; each edge is given by
    its unit normal that points outwards."""
    (a, b), (c, d) = directions
    determinant = a * d - b * c
    return corner[0] + out * (d - b) / determinant, corner[1] + out * (a - c) / determinant


@given(st.integers(1, SIZE_MAX), st.integers(0, 10**6), st.integers(0, 1000))
def test_raw_triangles_have_their_edges_beside_the_finished_ones(height, allowance, take_up):
    found = ask("fit_triangles", {"wanted_width": height, "wanted_length": height, "height": height,
                                       "allowance": allowance, "take_up": take_up})
    out = mpmath.mpf(2 * allowance + take_up) / 2
    side = 2 * mpmath.mpf(height) / ROOT_3
    below, slanting, straight = (0, -1), (ROOT_3 / 2, mpmath.mpf(1) / 2), (-1, 0)
    right = offset_corner((side / 2, 0), (below, slanting), out)
    top = offset_corner((0, height), (slanting, (-ROOT_3 / 2, mpmath.mpf(1) / 2)), out)
    square = offset_corner((0, 0), (below, straight), out)
    for name, exact in (("cut_base", 2 * right[0]), ("half_cut_base", right[0] - square[0]),
                        ("strip_cut", top[1] - right[1]), ("strip_cut_blunt", height + 2 * out)):
        assert exact - mpmath.mpf(10)**-20 <= found[name] < exact + 1, name


# ---- patterns resized -----------------------------------------------------------------------------------------------

grids = mostly(st.sampled_from([1016, 2032, 508, 320]), st.integers(1, 40), rarely=[1, 0, SIZE_MAX + 1])
ratios = mostly(st.integers(1, 12), st.integers(1, 1000), rarely=[1, 0, -1, 2**40, 2**63 - 1])
pattern = st.lists(mostly(st.integers(1, 96).map(lambda n: n * 1016), st.integers(1, 60), rarely=[1, 2, 0, SIZE_MAX]),
                   min_size=0, max_size=6)


@given(requests(numerator=ratios, denominator=ratios, allowance=seams, take_up=take_ups, grid=grids), pattern)
def test_a_pattern_resized(spec, pieces):
    agree(lambda: ask("fit_rescale", [{"finished": size} for size in pieces], spec),
          lambda: model.rescale(as_object(spec), pieces))


@given(requests(numerator=st.integers(1, 12), denominator=st.integers(1, 12), allowance=st.integers(0, 20),
                take_up=st.integers(0, 3), grid=st.integers(1, 30)),
       st.lists(st.integers(1, 200), min_size=1, max_size=4))
def test_the_scale_offered_puts_every_size_on_the_marks(spec, pieces):
    rows = [{"finished": size} for size in pieces]
    found = ask("fit_rescale", rows, spec)["out"]
    if found["numerator"]:
        again = ask("fit_rescale", rows, dict(spec, numerator=found["numerator"], denominator=found["denominator"]))
        assert again["out"]["off_grid"] == 0 and again["out"]["warnings"] == 0
        assert all(row["rest"] == 0 and row["new_cut"] % spec["grid"] == 0 for row in again["rows"])
    if ask("fit_rescale", rows, spec)["out"]["off_grid"] == 0:
        assert Fraction(found["numerator"], found["denominator"]) == Fraction(spec["numerator"], spec["denominator"])
