# SPDX-License-Identifier: MIT
"""The same questions where every size is a few ticks, so that each edge is met often."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from asking import ask, ask_bytes
from muslin_model import fabric, finishing, seam, setting, stripset, text
from muslin_model import backing as model_backing
from questions import agree, as_object, requests
from test_finishing import rows_as_modelled

some = st.integers(1, 40)
any_ticks = st.integers(0, 12)
few_ticks = st.integers(0, 3)
count = st.integers(1, 12)


def choice(last):
    return st.integers(1, last)


@given(requests(quilt_width=some, quilt_length=some, margin_left=few_ticks, margin_right=few_ticks,
                margin_top=few_ticks, margin_bottom=few_ticks, fabric_width=some, selvage=few_ticks, allowance=few_ticks,
                end_loss=few_ticks, repeat=any_ticks, step=count, print=choice(2)), st.booleans())
def test_backing(spec, by_panel):
    agree(lambda: rows_as_modelled(spec, by_panel),
          lambda: [row or 0 for row in model_backing.layouts(as_object(spec), by_panel)])


PLAIN = {
    "fabric_purchase": (fabric.purchase, requests(needed=some, extra=few_ticks, step=count,
                                                  shrinkage=st.sampled_from([0, 100_000, 500_000]),
                                                  extra_share=st.sampled_from([0, 100_000, 500_000]))),
    "fabric_strips": (fabric.strips, requests(pieces=count, piece_across=some, strip_cut=some, usable_width=some,
                                              end_loss=few_ticks, straightening=few_ticks)),
    "seam_piece": (seam.piece, requests(finished_width=any_ticks, finished_height=any_ticks, left=few_ticks,
                                        right=few_ticks, top=few_ticks, bottom=few_ticks, take_up=few_ticks)),
    "stripset_need": (stripset.need, requests(segments=any_ticks, segments_per_set=few_ticks, strips_per_set=count,
                                              strips_per_bundle=any_ticks, strip_cut=any_ticks)),
    "stripset_harvest": (stripset.harvest, requests(strips=some, strips_per_set=count, segments_per_set=any_ticks,
                                                    segments_per_block=count, blocks_per_top=count)),
    "setting_straight": (setting.straight, requests(block_width=few_ticks, block_height=few_ticks, columns=count,
                                                    rows=count, allowance=few_ticks, take_up=few_ticks,
                                                    turning=choice(3), square_tolerance=few_ticks)),
    "block_from_segments": (setting.block, requests(segment_cut=any_ticks, set_unfinished=some, segments=count,
                                                    allowance=few_ticks, take_up=few_ticks)),
    "run_plan": (setting.run, requests(length=some, strip_length=any_ticks, strip_cut=any_ticks, allowance=few_ticks,
                                       join=choice(4))),
    "binding_measure": (finishing.binding_measure, requests(fold=choice(2), allowance=few_ticks, front=few_ticks,
                                                            thickness=few_ticks, back=few_ticks, turn_under=few_ticks,
                                                            binding_cut=some, uneven_limit=few_ticks)),
    "binding_plan": (finishing.binding_plan, requests(perimeter=some, quilt_width=some, quilt_length=some,
                                                      extra=any_ticks, corners=few_ticks, corner_extra=few_ticks,
                                                      binding_cut=count, strip_length=count, allowance=few_ticks,
                                                      step=count, spare_strips=few_ticks, join=choice(4))),
    "hanging_plan": (finishing.hanging, requests(quilt_width=some, sleeves=st.integers(0, 2), inset=any_ticks,
                                                 gap=any_ticks, drop=few_ticks, ease=few_ticks, hem=few_ticks,
                                                 allowance=few_ticks, label_width=few_ticks, label_height=few_ticks,
                                                 corner_triangle=few_ticks, corners=st.integers(0, 4))),
}
FLAGGED = {
    "fabric_pieces": ("may_turn", fabric.pieces, requests(width=some, length=some, piece_width=count,
                                                          piece_length=count, loss_across=few_ticks,
                                                          loss_along=few_ticks)),
    "stripset_yield": ("from_one_end", stripset.yield_of, requests(
        strip_length=some, segment_cut=count, end_trim=few_ticks, resquare_loss=few_ticks, resquare_every=few_ticks,
        fold_clear=few_ticks)),
    "border_plan": ("lengthwise", setting.border, requests(
        unfinished_width=some, unfinished_length=some, finished_border=count, allowance=few_ticks, take_up=few_ticks,
        usable_width=some, mitre_extra=few_ticks, style=choice(4), join=choice(4))),
    "bias_tube": ("blunt_ends", finishing.bias_tube, requests(width=some, length=some, strip_cut=count,
                                                              allowance=few_ticks)),
    "bias_strips": ("blunt_ends", finishing.bias_strips, requests(width=some, length=st.just(0), strip_cut=count,
                                                                  allowance=few_ticks)),
}


@pytest.mark.parametrize("call", sorted(PLAIN))
@given(st.data())
def test_a_plan(call, data):
    model, specs = PLAIN[call]
    spec = data.draw(specs)
    agree(lambda: ask(call, spec), lambda: model(as_object(spec)))


@pytest.mark.parametrize("call", sorted(FLAGGED))
@given(st.data())
def test_a_plan_with_a_flag(call, data):
    flag, model, specs = FLAGGED[call]
    spec, is_set = data.draw(specs), data.draw(st.booleans())
    agree(lambda: ask(call, dict(spec, **{flag: is_set})), lambda: model(as_object(spec), is_set))


@given(st.integers(0, 100_000), st.sampled_from(["", "-"]))
def test_half_a_tick_goes_upwards(halves, sign):
    data = f"{sign}{halves}/16256".encode()
    agree(lambda: ask_bytes(data, text.INCH, ord(".")), lambda: text.parse(data))
