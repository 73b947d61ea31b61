# SPDX-License-Identifier: MIT
"""Binding, bias, batting and backing against counting, trying and enclosing roots."""

from hypothesis import given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import backing as model_backing
from muslin_model import finishing as model
from muslin_model.base import SIZE_MAX
from questions import agree, as_object, choices, counts, few, mostly, requests, seams, sizes, small_sizes


@given(requests(fold=choices(2), allowance=small_sizes, front=small_sizes, thickness=small_sizes, back=small_sizes,
                turn_under=small_sizes, binding_cut=mostly(st.just(0), sizes, st.integers(0, 40000), rarely=[1]),
                uneven_limit=small_sizes))
def test_the_width_of_a_binding(spec):
    agree(lambda: ask("binding_measure", spec), lambda: model.binding_measure(as_object(spec)))


@given(requests(perimeter=mostly(st.just(0), sizes, rarely=[1, 4 * SIZE_MAX, 4 * SIZE_MAX + 1, -1]),
                quilt_width=sizes, quilt_length=sizes, extra=sizes, corners=counts, corner_extra=small_sizes,
                binding_cut=sizes, strip_length=sizes, allowance=seams, step=sizes, spare_strips=few,
                join=choices(4)))
def test_the_length_of_a_binding(spec):
    agree(lambda: ask("binding_plan", spec), lambda: model.binding_plan(as_object(spec)))


strip_cuts = mostly(st.integers(8, 32).map(lambda n: n * 1016), sizes, rarely=[1, 0])
bias = requests(width=sizes, length=sizes, strip_cut=strip_cuts, allowance=seams, wanted=sizes)


@given(bias, st.booleans())
def test_a_bias_tube(spec, blunt):
    agree(lambda: ask("bias_tube", dict(spec, blunt_ends=blunt)),
          lambda: model.bias_tube(as_object(spec), blunt))


@given(bias, st.booleans(), st.booleans())
def test_bias_strips(spec, blunt, whole):
    spec["length"] = 0 if whole else spec["width"]
    agree(lambda: ask("bias_strips", dict(spec, blunt_ends=blunt)),
          lambda: model.bias_strips(as_object(spec), blunt))


@given(bias, st.booleans(),
       st.fixed_dictionaries({"grid": mostly(st.sampled_from([1, 127, 1016, 8128]), rarely=[0, SIZE_MAX, 10**6]),
                              "tolerance": mostly(st.just(0), rarely=[1]),
                              "direction": mostly(st.just(1), rarely=[2, 3, 0, 4])}))
def test_the_least_square_for_bias(spec, blunt, rounding):
    agree(lambda: ask("bias_least_square", dict(spec, blunt_ends=blunt), rounding),
          lambda: model.bias_least_square(as_object(spec), as_object(rounding), blunt))


@given(st.integers(1, 400), st.integers(1, 60), st.integers(0, 6), st.integers(1, 12))
def test_the_least_square_for_bias_by_trying_them_in_turn(wanted, width, allowance, grid):
    side = grid
    while model.tube(side, side, width, allowance, False)[1] < wanted:
        side += grid
    spec = {"wanted": wanted, "strip_cut": width, "allowance": allowance}
    rounding = {"grid": grid, "tolerance": 0, "direction": 1}
    assert ask("bias_least_square", spec, rounding)["square_cut"] == side


def batting_packages():
    rows = [ask("reference_row", 1, number) for number in range(ask("reference_count", 1))]
    return [(row["width"], row["length"]) for row in rows]


margins = mostly(st.integers(0, 8).map(lambda n: n * 8128), small_sizes, rarely=[0, -1])


@given(requests(quilt_width=sizes, quilt_length=sizes, margin_left=margins, margin_right=margins, margin_top=margins,
                margin_bottom=margins, roll_width=mostly(st.just(0), sizes, rarely=[1])), st.booleans())
def test_batting(spec, fixed):
    agree(lambda: ask("batting_plan", dict(spec, fixed=fixed)),
          lambda: model.batting(as_object(spec), batting_packages(), fixed))


@given(requests(quilt_width=sizes, sleeves=mostly(st.integers(0, 2), rarely=[3, -1]), inset=small_sizes,
                gap=small_sizes, drop=small_sizes, ease=small_sizes, hem=small_sizes, allowance=seams,
                label_width=small_sizes, label_height=small_sizes, corner_triangle=small_sizes,
                corners=mostly(st.integers(0, 4), rarely=[5, -1])))
def test_what_hangs_on_the_back(spec):
    agree(lambda: ask("hanging_plan", spec), lambda: model.hanging(as_object(spec)))


backings = requests(quilt_width=sizes, quilt_length=sizes, margin_left=margins, margin_right=margins,
                    margin_top=margins, margin_bottom=margins,
                    fabric_width=mostly(st.integers(300, 900).map(lambda n: n * 1016), sizes, rarely=[1, 0]),
                    selvage=mostly(st.just(0), small_sizes, rarely=[1]), allowance=small_sizes,
                    end_loss=mostly(st.just(0), small_sizes, rarely=[1]),
                    repeat=mostly(st.just(0), sizes, rarely=[1]), step=sizes,
                    print=mostly(st.just(1), choices(5), rarely=[1]))


def rows_as_modelled(spec, by_panel):
    """The library's rows, in the model's words: None for a layout that cannot serve."""
    rows = ask("backing_layouts", dict(spec, round_panels=by_panel))
    expected = model_backing.layouts(as_object(spec), by_panel)
    assert [row["layout"] for row in rows] == list(model_backing.LAYOUTS)
    return [{name: row[name] for name in want} if want and row["possible"] else row["possible"] and row
            for row, want in zip(rows, expected)]


@given(backings, st.booleans())
def test_all_backing_layouts(spec, by_panel):
    agree(lambda: rows_as_modelled(spec, by_panel),
          lambda: [row or 0 for row in model_backing.layouts(as_object(spec), by_panel)])


@given(backings)
def test_the_panels_of_a_layout_add_up_to_it(spec):
    try:
        rows = ask("backing_layouts", spec)
    except Failed:  # the matter of the test above
        return
    for row in rows:
        if not row["possible"] or row["panels"] > 1000:  # a row for each panel: enough is enough
            continue
        panels = ask("backing_panels", row["layout"], spec)
        insert_role, seam = 5, 2 * spec["allowance"]
        widths = [panel["cut_length"] if panel["role"] == insert_role else panel["cut_width"] for panel in panels]
        joined = row["joined_length"] if row["turned"] else row["joined_width"]
        assert [panel["position"] for panel in panels] == list(range(1, len(panels) + 1))
        assert sum(widths) - seam * (len(panels) - 1) == joined
        assert sum(panel["count"] for panel in panels) == row["pieces"]
