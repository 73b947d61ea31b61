# SPDX-License-Identifier: MIT
"""Sashed settings, pieced and plain blocks in turn, and lines of unequal blocks against laying them out."""

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import setting_sashed as model
from questions import agree, as_object, choices, few, mostly, requests, seams, sizes, small_sizes, take_ups

cloth_widths = mostly(st.sampled_from([325120, 341376, 357632]), sizes, rarely=[0, 1])
members = {"block_width": sizes, "block_height": sizes, "columns": few, "rows": few, "sash_width": small_sizes,
           "sash_height": small_sizes, "allowance": seams, "take_up": take_ups, "usable_width": cloth_widths,
           "end_loss": mostly(st.just(0), small_sizes, rarely=[1]), "frame": st.booleans(),
           "cornerstones": st.booleans()}
eighths = st.integers(1, 200).map(lambda n: n * 1016)
usual = {"block_width": eighths, "block_height": eighths, "columns": st.integers(1, 9), "rows": st.integers(1, 9),
         "sash_width": st.integers(0, 9).map(lambda n: n * 2032), "sash_height": st.integers(0, 9000),
         "allowance": st.sampled_from([2032, 1920, 0]), "take_up": st.integers(0, 300),
         "usable_width": st.sampled_from([325120, 341376, 65024]), "end_loss": st.sampled_from([0, 2032])}


@st.composite
def sashed(draw):
    """Half of them plausible, with one wild member now and then; half wild all over."""
    spec = draw(requests(**members))
    if draw(st.booleans()):
        kept = draw(st.sampled_from([None, None, None, *usual]))
        spec.update((name, value) for name, value in draw(requests(**usual)).items() if name != kept)
    return spec


@given(sashed())
def test_a_sashed_setting(spec):
    agree(lambda: ask("setting_sashed", spec), lambda: model.sashed(as_object(spec)))


@given(sashed())
def test_the_strips_for_its_pieces(spec):
    agree(lambda: ask("setting_sashed_pieces", spec), lambda: model.pieces(as_object(spec)))


@given(requests(block_width=sizes, block_height=sizes, columns=few, rows=few, allowance=seams, take_up=take_ups,
                first=choices(2)))
def test_pieced_and_plain_blocks_in_turn(spec):
    agree(lambda: ask("setting_alternate", spec), lambda: model.alternate(as_object(spec)))


line_members = {"sash": small_sizes, "allowance": seams, "take_up": take_ups, "wanted": mostly(st.just(0), sizes,
                                                                                              rarely=[1, -1]),
                "frame": st.booleans()}


@given(st.lists(sizes, max_size=12), requests(**line_members))
def test_a_line_of_unequal_blocks(blocks, spec):
    agree(lambda: ask("setting_line", blocks, spec), lambda: model.line(blocks, as_object(spec)))


@given(st.lists(sizes, max_size=12), requests(**line_members))
def test_where_each_block_of_a_line_lies(blocks, spec):
    agree(lambda: ask("setting_line_places", blocks, spec), lambda: model.places(blocks, as_object(spec)))


# ---- laying out, area by area ---------------------------------------------------------------------------------------

good = {"block_width": st.integers(1, 9000), "block_height": st.integers(1, 9000), "columns": st.integers(1, 6),
        "rows": st.integers(1, 6), "sash_width": st.integers(1, 4000), "sash_height": st.integers(1, 4000),
        "frame": st.booleans(), "cornerstones": st.booleans()}


@given(requests(**good), st.integers(0, 3000))
def test_the_pieces_cover_the_top(spec, allowance):
    """Each piece as cut less two allowances each way: their areas are the top's."""
    spec["allowance"] = allowance
    top = ask("setting_sashed", spec)
    taken = 2 * allowance

    def area(count, width, length):
        return top[count] * (top[width] - taken) * (top[length] - taken)

    covered = (top["blocks"] * spec["block_width"] * spec["block_height"]
               + area("vertical_sashes", "vertical_cut_width", "vertical_cut_length")
               + area("horizontal_sashes", "horizontal_cut_width", "horizontal_cut_length")
               + area("cornerstones", "cornerstone_cut_width", "cornerstone_cut_height"))
    assert covered == top["finished_width"] * top["finished_length"]


@given(requests(**good))
def test_the_strips_are_enough_and_not_one_too_many(spec):
    for row in ask("setting_sashed_pieces", spec):
        if row["per_strip"]:
            assert row["strips"] * row["per_strip"] == row["pieces"] + row["spare_pieces"]
            assert row["spare_pieces"] < row["per_strip"]
            assert row["per_strip"] * row["cut_length"] + row["narrower_by"] == 325120


@given(st.lists(st.integers(1, 10**5), min_size=1, max_size=9), st.integers(0, 10**4), st.booleans())
def test_a_line_is_as_long_as_its_last_place_says(blocks, sash, frame):
    spec = {"sash": sash, "frame": frame}
    whole = ask("setting_line", blocks, spec)
    places = ask("setting_line_places", blocks, spec)
    end = places[-1]["start"] + places[-1]["finished"] + (sash if frame else 0)
    assert end == whole["finished"]
    assert all(here["start"] + here["finished"] + sash == there["start"] for here, there in zip(places, places[1:]))


@given(st.integers(1, 9), st.integers(1, 9), st.integers(1, 2))
def test_neighbours_are_of_different_kinds(columns, rows, first):
    found = ask("setting_alternate", {"block_width": 9, "block_height": 9, "columns": columns, "rows": rows,
                                      "first": first})
    as_first = sum((column + row) % 2 == 0 for column in range(columns) for row in range(rows))
    kinds = {1: ("pieced", "plain"), 2: ("plain", "pieced")}[first]
    assert found[kinds[0]] == as_first
    assert found[kinds[1]] == columns * rows - as_first
