# SPDX-License-Identifier: MIT
"""Thread, stitches, quilting, weight and cost against the model; lines of quilting also drawn one by one."""

import mpmath
from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import supplies as model
from muslin_model.base import COUNT_MAX, LENGTH_MAX, PPM, SIZE_MAX
from questions import (INT32, INT64, agree, as_object, choices, counts, few, mostly, requests, roundings, seams,
                       shares, sizes, small_sizes, take_ups)

mpmath.mp.dps = 50

LONG = LENGTH_MAX // 2
long_lengths = mostly(st.integers(0, 10**7), st.integers(0, 10**10), st.integers(0, LONG),
                      rarely=[0, 1, LONG, LONG + 1, -1, *INT64])
ratios = mostly(st.integers(1, 12), st.integers(1, 1000), rarely=[0, 1, COUNT_MAX, COUNT_MAX + 1, -1])
stitches = mostly(st.integers(300, 1500), sizes, rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1])
holders = mostly(st.just(0), st.integers(1, 10**8), long_lengths, rarely=[0, 1, LONG, LONG + 1])
wastes = mostly(st.integers(0, 300_000), shares, rarely=[0, 10 * PPM, 10 * PPM + 1, -1, *INT32])


@given(requests(sets=counts, strips_per_set=few, strip_length=sizes, tops=few, columns=few, rows=few,
                segments_per_block=few, block_width=sizes, block_height=sizes, allowance=seams, take_up=take_ups))
def test_seams_to_sew(spec):
    agree(lambda: ask("piecing_plan", spec), lambda: model.piecing(as_object(spec)))


@given(requests(seam=long_lengths, ratio_above=ratios, ratio_below=ratios, thickness=small_sizes,
                stitch_length=stitches, bobbin=holders, spool=holders, method=choices(2), waste=wastes), st.booleans())
def test_thread(spec, ready):
    agree(lambda: ask("thread_plan", dict(spec, ready_bobbins=ready)), lambda: model.thread(as_object(spec), ready))


@given(st.integers(0, 10**8), st.integers(300, 1000), st.integers(1, 10**7), st.booleans())
def test_a_tick_more_than_the_slack_takes_one_holder_more(seam, stitch, held, ready):
    spec = {"seam": seam, "stitch_length": stitch, "thickness": 200, "method": 2, "bobbin": held, "spool": 3 * held,
            "ready_bobbins": ready}
    found = ask("thread_plan", spec)
    for slack, holder in (("bobbin_longer_by", "bobbins"), ("spool_longer_by", "spools")):
        same = ask("thread_plan", dict(spec, seam=seam + found[slack]))
        more = ask("thread_plan", dict(spec, seam=seam + found[slack] + 1))
        assert same[holder] == found[holder] < more[holder]


@given(sizes, stitches, mostly(st.integers(0, 3), rarely=[-1, 4]), choices(3))
def test_stitches_in_a_length(length, stitch, decimals, direction):
    agree(lambda: ask("stitch_count", length, stitch, decimals, direction),
          lambda: model.stitch_count(length, stitch, decimals, direction))


@given(sizes, mostly(st.integers(1, 30_000), counts, rarely=[0, 1, COUNT_MAX, COUNT_MAX + 1]), roundings())
def test_the_length_of_a_stitch(length, thousandths, rounding):
    agree(lambda: ask("stitch_length", length, thousandths, rounding),
          lambda: model.stitch_length(length, thousandths, as_object(rounding)))


@given(st.integers(4, 30))
def test_stitches_to_the_inch_and_back(per_inch):
    stitch = ask("stitch_length", 8128, per_inch * 1000, None)["value"]
    assert ask("stitch_count", 8128, stitch, 0, 3)["thousandths"] == per_inch * 1000


# ---- lines of quilting ----------------------------------------------------------------------------------------------

spacings = mostly(st.integers(2, 64).map(lambda n: n * 1016), sizes, rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1, -1])


@given(requests(width=sizes, length=sizes, spacing=spacings, offset=mostly(st.just(0), small_sizes, sizes, rarely=[1]),
                outline=long_lengths, passes=few, pattern=choices(6), start=choices(2)))
def test_lines_of_quilting(spec):
    agree(lambda: ask("quilting_lines", spec), lambda: model.quilting(as_object(spec)))


@given(st.sampled_from([SIZE_MAX, SIZE_MAX - 1, SIZE_MAX // 2, 1, 2]), st.sampled_from([SIZE_MAX, SIZE_MAX - 1, 3, 1]),
       st.integers(1, 3), st.integers(0, 2), st.integers(4, 5), st.integers(1, 2))
def test_as_many_lines_as_can_be(width, length, spacing, offset, pattern, start):
    spec = {"width": width, "length": length, "spacing": spacing, "offset": offset, "outline": 0, "passes": 1,
            "pattern": pattern, "start": start}
    agree(lambda: ask("quilting_lines", spec), lambda: model.quilting(as_object(spec)))


def chord(width, length, place):
    """How much of the line x - y = place x sqrt 2 lies in the area 0 .. width, 0 .. length."""
    shift = place * mpmath.sqrt(2)
    return max(mpmath.mpf(0), min(width, length + shift) - max(mpmath.mpf(0), shift)) * mpmath.sqrt(2)


def drawn(width, length, places):
    """Number and length of the lines that have one."""
    chords = [chord(width, length, place) for place in places]
    chords = [one for one in chords if one > mpmath.mpf(10)**-30]
    return len(chords), mpmath.fsum(chords)


def places_of(width, length, spacing, offset, start):
    """Where lines lie, measured square to them from the one through the corner 0, 0."""
    below, above = -length / mpmath.sqrt(2), width / mpmath.sqrt(2)
    if start == model.FROM_CORNER:
        reach = int(mpmath.ceil((width + length) / spacing)) + 1
        return [mpmath.mpf(n * spacing) for n in range(-reach, reach + 1) if below <= n * spacing <= above]
    count = int(mpmath.ceil((width + length) / spacing)) + 1
    return [below + offset + n * spacing for n in range(count) if below + offset + n * spacing <= above - offset]


@given(st.integers(1, 4000), st.integers(1, 4000), st.integers(20, 500), st.integers(0, 300), st.integers(1, 2),
       st.integers(4, 5))
def test_diagonals_drawn_one_by_one(width, length, spacing, offset, start, pattern):
    found = ask("quilting_lines", {"width": width, "length": length, "spacing": spacing, "offset": offset,
                                   "pattern": pattern, "start": start})
    lines, together = drawn(width, length, places_of(width, length, spacing, offset, start))
    ways = pattern - 3
    assert found["lines_first"] == lines
    assert found["lines"] == ways * lines
    if found["exact"]:
        assert abs(together) < mpmath.mpf(10)**-30 or abs(together * ways - found["length"]) < mpmath.mpf(10)**-30
    else:
        assert 0 < found["length"] - ways * together < 1


@given(st.integers(1, 10**6), st.integers(1, 10**6), st.integers(4, 5), st.integers(1, 2))
def test_turning_the_area_turns_no_figure(width, length, pattern, start):
    spec = {"width": width, "length": length, "spacing": 1000, "offset": 300, "pattern": pattern, "start": start}
    assert ask("quilting_lines", spec) == ask("quilting_lines", dict(spec, width=length, length=width))


@given(st.integers(10**5, 10**6), st.integers(10**5, 10**6), st.integers(100, 5000), st.integers(1, 2))
def test_dense_diagonals_cover_the_area(width, length, spacing, start):
    # each line stands for a band as wide as the spacing; only the ends of the area differ, by less than a band a side
    found = ask("quilting_lines", {"width": width, "length": length, "spacing": spacing, "pattern": 4, "start": start})
    area = width * length
    assert abs(found["length"] * spacing - area) <= 3 * spacing * (width + length)


@given(st.integers(1, 10**6), st.integers(1, 10**6), st.integers(1, 10**5), st.integers(0, 10**5))
def test_the_even_spacing_gives_as_many_lines(width, length, spacing, offset):
    spec = {"width": width, "length": length, "spacing": spacing, "offset": offset, "pattern": 3}
    found = ask("quilting_lines", spec)
    for lines, even in (("lines_first", "even_first"), ("lines_second", "even_second")):
        if found[lines] > 1:
            assert found[even] >= spacing
            assert ask("quilting_lines", dict(spec, spacing=found[even]))[lines] == found[lines]
            assert ask("quilting_lines", dict(spec, spacing=found[even] + 1))[lines] < found[lines]


# ---- weight and cost ------------------------------------------------------------------------------------------------

densities = mostly(st.integers(0, 400_000), counts, rarely=[0, COUNT_MAX, COUNT_MAX + 1, -1])


@given(requests(width=sizes, length=sizes, binding_length=sizes, binding_cut=small_sizes, top_density=densities,
                batting_density=densities, backing_density=densities, binding_density=densities,
                step=mostly(st.sampled_from([1, 1000]), sizes, rarely=[0, SIZE_MAX, SIZE_MAX + 1]), seam_share=wastes,
                direction=choices(3)))
def test_weight(spec):
    agree(lambda: ask("weight_plan", spec), lambda: model.weight(as_object(spec)))


@given(counts, choices(3))
def test_ounces_to_the_yard(thousandths, direction):
    agree(lambda: ask("density_from_ounces", thousandths, direction),
          lambda: model.density_from_ounces(thousandths, direction))


@given(mostly(st.integers(0, 10**7), st.integers(0, LENGTH_MAX), rarely=[0, LENGTH_MAX, LENGTH_MAX + 1, -1]),
       mostly(st.integers(0, 3), rarely=[-1, 4]), choices(3))
def test_a_mass_in_ounces(mass, decimals, direction):
    agree(lambda: ask("mass_in_ounces", mass, decimals, direction),
          lambda: model.mass_in_ounces(mass, decimals, direction))


prices = mostly(st.integers(0, 10_000), st.integers(0, LENGTH_MAX), rarely=[0, LENGTH_MAX, LENGTH_MAX + 1, -1, *INT64])
amounts = mostly(st.integers(0, 500), st.integers(0, 10**7), rarely=[0, COUNT_MAX, COUNT_MAX + 1, LONG, LONG + 1, -1])
pers = mostly(st.sampled_from([1, 40, 42, 292608, 320000]), st.integers(1, 10**6),
              rarely=[0, 1, SIZE_MAX, SIZE_MAX + 1, COUNT_MAX, COUNT_MAX + 1])
costs = requests(amount=amounts, price=prices, per=pers, sold=choices(3), direction=choices(3))


@given(costs)
def test_cost(spec):
    agree(lambda: ask("cost_plan", spec), lambda: model.cost(as_object(spec)))


@given(st.lists(costs, max_size=6))
def test_a_list_of_costs(specs):
    agree(lambda: ask("cost_total", specs), lambda: model.total([as_object(spec) for spec in specs]))
