# SPDX-License-Identifier: MIT
"""Cloth and pre-cuts against counting."""

from hypothesis import given
from hypothesis import strategies as st

from asking import ask
from muslin_model import fabric as model
from muslin_model.base import LENGTH_MAX
from questions import (INT32, INT64, agree, as_object, choices, counts, mostly, requests, shares, sizes, small_sizes)


@given(sizes, small_sizes, shares)
def test_the_usable_width(labelled, selvage, shrinkage):
    agree(lambda: ask("fabric_usable_width", labelled, selvage, shrinkage),
          lambda: model.usable_width(labelled, selvage, shrinkage))


@given(requests(needed=sizes, extra=small_sizes, shrinkage=shares, extra_share=shares,
                step=mostly(st.sampled_from([36576, 73152, 97536, 32000, 80000]), sizes, rarely=[1, 0])))
def test_what_to_buy(spec):
    agree(lambda: ask("fabric_purchase", spec), lambda: model.purchase(as_object(spec)))


@given(requests(width=sizes, length=sizes, piece_width=sizes, piece_length=sizes, loss_across=small_sizes,
                loss_along=small_sizes), st.booleans())
def test_pieces_from_cloth(spec, may_turn):
    agree(lambda: ask("fabric_pieces", dict(spec, may_turn=may_turn)),
          lambda: model.pieces(as_object(spec), may_turn))


@given(requests(pieces=counts, piece_across=sizes, strip_cut=sizes, usable_width=sizes, end_loss=small_sizes,
                straightening=small_sizes))
def test_strips_across_the_width(spec):
    agree(lambda: ask("fabric_strips", spec), lambda: model.strips(as_object(spec)))


@given(st.integers(0, LENGTH_MAX) | st.sampled_from([-1, LENGTH_MAX + 1, *INT64]), sizes)
def test_the_least_cloth_by_area(area, width):
    agree(lambda: ask("fabric_area_bound", area, width), lambda: model.area_bound(area, width))


stocks = requests(width=sizes, length=sizes, count=counts, pink_depth=mostly(st.just(0), small_sizes, rarely=[1]),
                  edge=choices(3), care=choices(2), print=choices(5), kind=choices(5))


@given(stocks, choices(3))
def test_pinked_edges_lined_up(stock, align):
    agree(lambda: tuple(ask("stock_size", stock, align).values()), lambda: model.stock_size(as_object(stock), align))


@given(stocks, sizes, counts)
def test_strips_from_stock(stock, strip_cut, wanted):
    agree(lambda: ask("stock_strips", stock, strip_cut, wanted),
          lambda: model.stock_strips(as_object(stock), strip_cut, wanted))


@given(st.lists(stocks, max_size=5))
def test_what_to_say_when_fabrics_meet(rows):
    agree(lambda: ask("stock_check", rows) or 0, lambda: model.stock_check([as_object(row) for row in rows]))


@given(choices(5), st.integers(-1, 4) | st.sampled_from(INT32))
def test_which_prints_may_turn(kind, quarters):
    agree(lambda: ask("print_may_turn", kind, quarters), lambda: model.may_turn(kind, quarters))
