# SPDX-License-Identifier: MIT
"""Cut lists against laying strips one by one, and the laws of yardage and stock: area, order, wider and longer."""

from types import SimpleNamespace

from hypothesis import given
from hypothesis import strategies as st

from asking import Failed, ask
from muslin_model import cutlist as model
from muslin_model.base import COUNT_MAX, SIZE_MAX
from questions import agree, as_object, choices, counts, mostly, requests, sizes, small_sizes

halves = st.integers(1, 24).map(lambda n: n * 4064)
row = requests(cut_width=mostly(halves, sizes, rarely=[0, 1, SIZE_MAX]), may_turn=st.booleans(),
               cut_length=mostly(halves, sizes, rarely=[0, 1, SIZE_MAX]), count=counts)
lists = mostly(st.lists(row, max_size=5), rarely=[[]])
cloth = requests(usable_width=mostly(st.just(40 * 8128), sizes, rarely=[0, 1, SIZE_MAX]), end_loss=small_sizes,
                 straightening=small_sizes, print=mostly(st.just(1), choices(5), rarely=[1]))
stocks = requests(width=mostly(st.integers(10, 44).map(lambda n: n * 8128), sizes, rarely=[0, 1]),
                  length=mostly(st.integers(5, 36).map(lambda n: n * 4064), sizes, rarely=[0, 1]),
                  count=mostly(st.integers(0, 60), counts, rarely=[0, 1, COUNT_MAX]),
                  print=mostly(st.just(1), choices(5), rarely=[1]), kind=choices(5), edge=st.just(1),
                  care=st.just(1), pink_depth=st.just(0))
# What people cut from, so that most lists fit.
plain_row = requests(cut_width=halves, cut_length=halves, may_turn=st.booleans(), count=st.integers(0, 60))
plain_lists = st.lists(plain_row, min_size=1, max_size=5)
plain_stocks = requests(width=st.integers(12, 44).map(lambda n: n * 8128), length=st.integers(12, 40).map(
    lambda n: n * 8128), count=st.integers(0, 60), print=st.just(1), kind=st.just(4), edge=st.just(1), care=st.just(1),
                        pink_depth=st.just(0))
tiny_row = requests(cut_width=st.integers(1, 6), cut_length=st.integers(1, 6), may_turn=st.booleans(),
                    count=st.integers(0, 9))
tiny_lists = st.lists(tiny_row, min_size=1, max_size=4)


def objects(rows):
    return [as_object(members) for members in rows]


def stock_of(width, length, count=0, kind=4):
    return {"width": width, "length": length, "count": count, "print": 1, "kind": kind, "edge": 1, "care": 1,
            "pink_depth": 0}


@given(lists | plain_lists, cloth)
def test_yardage(rows, spec):
    agree(lambda: ask("cutlist_from_yardage", rows, spec), lambda: model.from_yardage(objects(rows), as_object(spec)))


@given(lists | plain_lists, cloth)
def test_rows_from_yardage(rows, spec):
    agree(lambda: ask("cutlist_yardage_rows", rows, spec), lambda: model.yardage_rows(objects(rows), as_object(spec)))


@given(lists | plain_lists, stocks | plain_stocks)
def test_stock(rows, stock):
    agree(lambda: ask("cutlist_from_stock", rows, stock), lambda: model.from_stock(objects(rows), as_object(stock)))


@given(lists | plain_lists, stocks | plain_stocks)
def test_rows_from_stock(rows, stock):
    agree(lambda: ask("cutlist_stock_rows", rows, stock), lambda: model.stock_rows(objects(rows), as_object(stock)))


@given(lists | plain_lists, stocks | plain_stocks)
def test_sets(rows, stock):
    agree(lambda: ask("cutlist_lists_from_stock", rows, stock),
          lambda: model.lists_from_stock(objects(rows), as_object(stock)))


@given(lists | plain_lists, stocks | plain_stocks)
def test_parts(rows, stock):
    agree(lambda: ask("cutlist_stock_parts", rows, stock), lambda: model.stock_parts(objects(rows), as_object(stock)))


@given(lists | plain_lists, stocks | plain_stocks)
def test_rows_of_several_lists(rows, stock):
    agree(lambda: ask("cutlist_lists_rows", rows, stock), lambda: model.lists_rows(objects(rows), as_object(stock)))


@given(lists | plain_lists, mostly(st.integers(1, 40), st.just(1), rarely=[0, COUNT_MAX, COUNT_MAX + 1]),
       stocks | plain_stocks)
def test_substitutes(rows, prints, stock):
    agree(lambda: ask("cutlist_substitute", rows, prints, stock),
          lambda: model.substitute(objects(rows), as_object(stock), prints))


@given(plain_lists, st.integers(12, 44))
def test_no_answer_goes_below_its_area_bound(rows, width):
    yardage = ask("cutlist_from_yardage", rows, {"usable_width": width * 8128})
    assert yardage["area_bound"] <= yardage["cloth_length"]
    stock = ask("cutlist_from_stock", rows, stock_of(width * 8128, 18 * 8128))
    assert stock["area_bound"] <= stock["stock_needed"]


@given(plain_lists, st.integers(12, 44))
def test_the_narrowest_width_holds_and_the_wider_one_saves(rows, width):
    def length(at):
        return ask("cutlist_from_yardage", rows, {"usable_width": at})["cloth_length"]

    found = ask("cutlist_from_yardage", rows, {"usable_width": width * 8128})
    if found["pieces"] == 0:
        return
    assert length(found["narrowest_width"]) == found["cloth_length"]
    try:
        assert length(found["narrowest_width"] - 1) > found["cloth_length"]
    except Failed as failed:
        assert failed.status.name == "ERR_NO_YIELD"
    if found["wider_for_less"]:
        assert length(width * 8128 + found["wider_for_less"]) == found["cloth_length"] - found["wider_saves"]
        assert found["wider_saves"] > 0
        assert length(width * 8128 + found["wider_for_less"] - 1) == found["cloth_length"]


@given(plain_lists)
def test_the_order_of_the_rows_is_nothing_to_yardage(rows):
    assert ask("cutlist_from_yardage", rows) == ask("cutlist_from_yardage", rows[::-1])


def needed(rows, width, length):
    """Pieces of stock; None where a row does not fit."""
    try:
        return ask("cutlist_from_stock", rows, stock_of(width, length))["stock_needed"]
    except Failed as failed:
        assert failed.status.name == "ERR_NO_YIELD"
        return None


@given(tiny_lists, st.integers(1, 12), st.integers(1, 12))
def test_the_slack_is_the_most_that_keeps_the_answer_by_trying_every_size(rows, width, length):
    """Nothing is taken for granted: all narrower and all shorter stock is tried."""
    most = needed(rows, width, length)
    if not most:
        return
    found = ask("cutlist_from_stock", rows, stock_of(width, length))
    enough = [w for w in range(1, width + 1) if (needed(rows, w, length) or most + 1) <= most]
    assert enough == list(range(width - found["narrower_by"], width + 1))
    enough = [h for h in range(1, length + 1) if (needed(rows, width, h) or most + 1) <= most]
    assert enough == list(range(length - found["shorter_by"], length + 1))


@given(tiny_lists, st.integers(6, 14), st.integers(6, 14), st.integers(0, 12))
def test_whole_lists_are_the_most_that_fit_by_trying_every_number(rows, width, length, count):
    if not sum(members["count"] for members in rows):
        return
    found = ask("cutlist_lists_from_stock", rows, stock_of(width, length, count))
    most = found["lists"] + 12
    fitting = [k for k in range(most + 1)
               if needed([dict(members, count=members["count"] * k) for members in rows], width, length) <= count]
    assert fitting == list(range(found["lists"] + 1))


@given(tiny_lists, st.integers(6, 14), st.integers(6, 14))
def test_no_way_of_turning_rows_needs_less_stock(rows, width, length):
    best = None
    for turns in range(2**len(rows)):
        listed = []
        for at, members in enumerate(rows):
            sides = members["cut_width"], members["cut_length"]
            turned = turns >> at & 1 and members["may_turn"]
            listed.append(dict(members, may_turn=False, cut_width=sides[1] if turned else sides[0],
                               cut_length=sides[0] if turned else sides[1]))
        found = needed(listed, width, length)
        if found is not None and (best is None or found < best):
            best = found
    assert needed(rows, width, length) == best


@given(tiny_lists, st.integers(6, 14), st.integers(6, 14))
def test_strips_laid_one_by_one_end_where_the_rows_say(rows, width, length):
    """Strip by strip, whether it still fits behind the last one, without a division."""
    laid = ask("cutlist_stock_rows", rows, stock_of(width, length))
    stock, used = 0, length
    for row_found in laid:
        begun = 0
        for _ in range(row_found["strips"]):
            if used + row_found["strip_cut"] > length:
                stock, used = stock + 1, 0
            used += row_found["strip_cut"]
            begun = begun or stock
        assert (row_found["first_stock"], row_found["last_stock"]) == (begun, stock if row_found["strips"] else 0)
    assert needed(rows, width, length) == stock


@given(tiny_lists, st.integers(6, 14), st.integers(6, 14))
def test_parts_are_strips_laid_one_by_one(rows, width, length):
    """Every strip on its own: which piece of stock it is cut from, and where in it the first of a part begins."""
    laid = ask("cutlist_stock_rows", rows, stock_of(width, length))
    stock, used = 0, length
    expected = []
    for at, row_found in enumerate(laid):
        for _ in range(row_found["strips"]):
            if used + row_found["strip_cut"] > length:
                stock, used = stock + 1, 0
            expected.append((at, stock, used))
            used += row_found["strip_cut"]
    found = []
    for part in ask("cutlist_stock_parts", rows, stock_of(width, length)):
        for number in range(part["first_stock"], part["last_stock"] + 1):
            found += [(part["row"], number, part["begins_at"] + strip * laid[part["row"]]["strip_cut"])
                      for strip in range(part["strips"])]
    assert found == expected


@given(tiny_lists, st.integers(6, 14), st.integers(6, 14))
def test_the_strips_as_cut_hold_in_smaller_stock_and_no_smaller(rows, width, length):
    """Piece by piece on the strips that there are, and strip by strip in the pieces of stock that there are."""
    found = ask("cutlist_from_stock", rows, stock_of(width, length))
    if found["pieces"] == 0:
        return
    laid = ask("cutlist_stock_rows", rows, stock_of(width, length))
    parts = ask("cutlist_stock_parts", rows, stock_of(width, length))

    def wide_enough(at):
        return all(row["pieces"] <= sum(at // row["piece_cut"] for _ in range(row["strips"])) for row in laid)

    def long_enough(at):
        return all(part["begins_at"] + part["strips"] * laid[part["row"]]["strip_cut"] <= at for part in parts)

    narrowest, shortest = width - found["as_cut_narrower_by"], length - found["as_cut_shorter_by"]
    assert wide_enough(narrowest) and not wide_enough(narrowest - 1)
    assert long_enough(shortest) and not long_enough(shortest - 1)
    assert found["as_cut_narrower_by"] <= found["narrower_by"] and found["as_cut_shorter_by"] <= found["shorter_by"]


@given(plain_row, st.integers(1, 3), st.integers(5, 40))
def test_pieces_of_stock_without_end_are_yardage(members, widths, width):
    """A cloth long enough holds what yardage says, and a tick less does not."""
    members = dict(members, count=members["count"] * widths + 1)
    try:
        length = ask("cutlist_from_yardage", [members], {"usable_width": width * 8128})["cloth_length"]
    except Failed as failed:
        assert failed.status.name == "ERR_NO_YIELD"
        return
    assert needed([members], width * 8128, length) == 1
    assert needed([members], width * 8128, length - 1) != 1


def test_more_rows_than_a_list_may_have_are_refused():
    rows = [{"cut_width": 8128, "cut_length": 8128, "count": 1}] * (model.ROWS_MAX + 1)
    agree(lambda: ask("cutlist_from_yardage", rows),
          lambda: model.from_yardage([SimpleNamespace(may_turn=False, **members) for members in rows],
                                     SimpleNamespace(usable_width=325120, end_loss=0, straightening=0, print=1)))
    assert ask("cutlist_from_yardage", rows[1:])["pieces"] == model.ROWS_MAX
