# SPDX-License-Identifier: MIT
"""The model of cutting plans against plans and proofs worked by hand."""

import pytest

from muslin_model import cutplan as model


def rows(*sizes, kind=model.PIECE):
    return [{"kind": kind, "cut_width": width, "cut_length": length, "count": count} for width, length, count in sizes]


def test_strips_of_one_size():
    """Three 3 x 4 to a strip of 10: seven take three strips."""
    assert model.least({"usable_width": 10, "pieces": rows((3, 4, 7))}) == 12


def test_lower_pieces_beside_higher_ones():
    assert model.least({"usable_width": 10, "pieces": rows((6, 5, 2), (4, 3, 3))}) == 13
    assert model.least({"usable_width": 10, "pieces": rows((6, 5, 2), (4, 3, 3)), "own_strips": True}) == 16
    assert model.least({"usable_width": 10, "pieces": rows((6, 5, 2), (4, 3, 3)), "one_height": True}) == 16


def test_a_panel():
    """Two borders 2 x 6 beside four squares of 3; without panels the squares get two strips besides, three and one."""
    pieces = rows((2, 6, 2), kind=model.LENGTHWISE) + rows((3, 3, 4))
    assert model.least({"usable_width": 10, "pieces": pieces}) == 6
    assert model.least({"usable_width": 10, "pieces": pieces, "no_panels": True}) == 9
    assert model.least({"usable_width": 10, "pieces": pieces, "no_panels": True, "stacked": True}) == 6


def test_joined_strips():
    """25 long from strips of 10, each join taking 1: 10 + 9 + 6, the last 6 long and the join's 1 more."""
    pieces = [{"kind": model.JOINED, "cut_width": 25, "cut_length": 2, "count": 1, "join_loss": 1}]
    assert model.strips_joined({"usable_width": 10}, pieces[0]) == [10, 10, 7]
    assert model.least({"usable_width": 10, "pieces": pieces}) == 6


def test_stock():
    """Five 4 x 3: four from 8 x 6 at 5, two from 4 x 6 at 2, of which there is one."""
    stock = [{"width": 8, "length": 6, "cost": 5, "count": 9}, {"width": 4, "length": 6, "cost": 2, "count": 1}]
    assert model.least({"usable_width": 0, "pieces": rows((4, 3, 5)), "stock": stock}) == 7
    assert model.least({"usable_width": 0, "pieces": rows((4, 3, 5)), "stock": stock[1:]}) is None


def proof(cases, worths, cost=13):
    """Of the two sizes above, worths doubled."""
    sizes = [{"count": count, "taken": width, "height": height, "run_in": 0, "may_turn": 0, "slit": 0, "level": 0}
             for width, height, count in [(6, 5, 2), (4, 3, 3)]]
    ways = [{"cost": height, "stock": -1, "width": 10, "height": height, "kind": model.STRIP, "turned": 0}
            for height in (5, 3)]
    listed = {number: ([{"plan_size": i, "of_case": -1, "stock": -1, "worth": worth}
                        for i, worth in enumerate(values[:2])] +
                       [{"plan_size": -1, "of_case": number, "stock": -1, "worth": worth} for worth in values[2:]], 2)
              for number, values in worths.items()}
    return model.Proof({"usable_width": 10}, sizes, ways, cases, listed, cost)


def case(parent, split, least, at_least=0, wanted=0):
    return {"parent": parent, "split": split, "worths": 0, "least": least, "wanted": wanted, "first_way": 1,
            "last_way": 1, "plan_size": -1, "at_least": at_least, "packed_way": -1}


def three_cases():
    cases = [case(-1, 1, 12), case(0, 0, 13), case(0, 0, 13, 1, 1)]
    for number, row in enumerate(cases):
        row["worths"] = number
    return cases, {0: [7, 3], 1: [5, 5, -4], 2: [10, 0, 6]}


def test_a_proof_with_a_split():
    """No strip of 3: all pieces are worth 2 1/2. One or more: the higher ones are worth 5, and that strip 3."""
    assert proof(*three_cases()).least() == 13


@pytest.mark.parametrize("number, worths", [(0, [7, 4]), (0, [6, 3]), (1, [5, 5, -3]), (1, [5, 5, 4]), (2, [10, 0, 7]),
                                            (2, [9, 0, 6]), (2, [-1, 10, 6])])
def test_worths_that_prove_less(number, worths):
    cases, known = three_cases()
    with pytest.raises(AssertionError):
        proof(cases, {**known, number: worths}).least()


@pytest.mark.parametrize("name, value", [("wanted", 2), ("at_least", 0), ("first_way", 0), ("parent", 1),
                                         ("plan_size", 0)])
def test_parts_that_leave_something_out(name, value):
    cases, known = three_cases()
    cases[2][name] = value
    with pytest.raises(AssertionError):
        proof(cases, known).least()
