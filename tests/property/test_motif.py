# SPDX-License-Identifier: MIT
"""Windows on a print and stacks of layers against laying them out, and what must hold between the two directions."""

from hypothesis import assume, given
from hypothesis import strategies as st

from asking import ask
from muslin_model import motif as model
from questions import agree, as_object, counts, few, mostly, requests, sizes, small_sizes

inches = st.integers(1, 40).map(lambda n: n * 8128)
repeats = mostly(inches, sizes, rarely=[0, 1, 2**30, 2**30 + 1])
windows = requests(repeat_length=repeats, repeat_width=mostly(st.just(0), repeats, rarely=[1]),
                   usable_width=mostly(st.just(325120), sizes, rarely=[1]), cut_width=mostly(inches, sizes, rarely=[1]),
                   cut_length=mostly(inches, sizes, rarely=[1]), motifs=mostly(st.just(1), few, rarely=[2**31]),
                   pieces=counts)
plain_windows = requests(repeat_length=inches, repeat_width=inches, usable_width=st.just(40 * 8128),
                         cut_width=st.integers(1, 12).map(lambda n: n * 4064), cut_length=inches, motifs=st.just(1),
                         pieces=st.integers(1, 300))

starts = st.fixed_dictionaries({"any_start": st.booleans(), "any_across": st.booleans()})


@given(windows | plain_windows, starts)
def test_windows_wanted(spec, start):
    agree(lambda: ask("motif_plan", dict(spec, **start)), lambda: model.plan(as_object(spec), **start))


@given(windows | plain_windows, mostly(st.integers(1, 400).map(lambda n: n * 8128), sizes, rarely=[0]), starts)
def test_windows_from_a_cloth(spec, cloth, start):
    agree(lambda: ask("motif_from_cloth", cloth, dict(spec, **start)),
          lambda: model.from_cloth(as_object(spec), cloth, **start))


@given(plain_windows, starts)
def test_the_cloth_for_so_many_windows_gives_them_and_a_tick_less_does_not(spec, start):
    per_row = model.columns_in(spec["usable_width"], as_object(spec), any(start.values()))
    spec = dict(spec, **start)
    assume(per_row > 0)
    plan = ask("motif_plan", spec)
    found = ask("motif_from_cloth", plan["cloth_least"], spec)
    assert found["pieces"] == spec["pieces"] + plan["spare_pieces"]
    assert found["left_over"] == 0
    assert ask("motif_from_cloth", plan["cloth_least"] - 1, spec)["pieces"] < spec["pieces"]


@given(plain_windows, st.integers(0, 40 * 8128 - 1))
def test_whole_windows_are_sure_wherever_the_print_begins(spec, offset):
    """Lays the windows over a print that begins at some place, one by one."""
    repeat, cut = spec["repeat_width"], spec["cut_width"]
    assume(model.columns_in(spec["usable_width"], as_object(spec), True) > 0)
    left = offset % repeat
    laid = 0
    while left + cut <= spec["usable_width"]:
        laid += 1
        left += -(-cut // repeat) * repeat
    plan = ask("motif_plan", dict(spec, any_start=True))
    assert laid >= plan["per_row"] == plan["per_row_certain"]
    assert (laid == plan["per_row_lucky"]) == (offset % repeat <= plan["lucky_within"])


@given(requests(repeat_length=repeats, strip_cut=mostly(inches, sizes, rarely=[1]), straightening=small_sizes,
                per_strip=few, layers=few, stacks=counts), st.booleans())
def test_stacks(spec, any_start):
    agree(lambda: ask("stack_plan", dict(spec, any_start=any_start)), lambda: model.stack(as_object(spec), any_start))
