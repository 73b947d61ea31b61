# SPDX-License-Identifier: MIT
"""Cutting plans: laid out anew, against all ways of cutting few pieces, their proofs followed in fractions, and changed
in ways that must not matter."""

from collections import Counter

from hypothesis import assume, given
from hypothesis import strategies as st

from muslin import BlankSpec, Cutplan, Length, CutplanStockSpec, Print, Status
from asking import Failed, plain
from muslin_model import cutplan as model
from questions import mostly

COUNT_MAX = 2**31 - 1
LENGTHS = {"cut_width", "cut_length", "run_in", "join_loss", "least_part", "width", "length", "usable_width", "end_loss",
           "resquare_loss", "straightening"}


def members(row):
    return {name: Length(value) if name in LENGTHS else value for name, value in row.items()}


def made(request):
    spec = {name: value for name, value in request.items() if name not in ("pieces", "stock")}
    if "print" in spec:
        spec["print"] = Print(spec["print"])
    return Cutplan([BlankSpec(**members(row)) for row in request["pieces"]],
                   [CutplanStockSpec(**members(row)) for row in request.get("stock", [])], **members(spec))


def answer(request):
    """All rows of a plan in plain numbers; None where stock does not suffice."""
    try:
        plan = made(request)
    except Failed as failed:
        assert failed.status in (Status.ERR_NO_YIELD, Status.ERR_NOT_ENOUGH, Status.ERR_WORK_LIMIT), failed
        return None
    with plan:
        found = {name: plain(getattr(plan, name)()) for name in ("totals", "strips", "places", "sizes", "ways", "cases",
                                                                 "check")}
        found["worths"] = {number: tuple(plain(plan.worths(number)).values())
                           for number, case in enumerate(found["cases"]) if case["worths"] == number}
    return found


# ---- requests -------------------------------------------------------------------------------------------------------

def rows(kinds, most_width, most_length, counts):
    def row(kind):
        kinds_of = {"kind": st.just(kind), "count": counts, "cut_width": st.integers(1, most_width),
                    "cut_length": st.integers(1, most_length)}
        more = {model.PIECE: {"may_turn": st.booleans()}, model.SLOPED: {"run_in": st.integers(0, 2)},
                model.LENGTHWISE: {"cut_width": st.integers(1, 3), "cut_length": st.integers(1, 2 * most_length)},
                model.JOINED: {"cut_width": st.integers(1, 3 * most_width), "join_loss": st.integers(0, 1)}}
        return st.fixed_dictionaries({**kinds_of, **more[kind]})
    return st.sampled_from(kinds).flatmap(row)


@st.composite
def bolts(draw, counts=st.integers(1, 3), most_rows=3, width=st.integers(6, 16)):
    width = draw(width)
    kinds = [model.PIECE, model.PIECE, model.PIECE, model.LENGTHWISE, model.SLOPED, model.JOINED]
    request = {"usable_width": width, "work_limit": 2000000,
               "pieces": draw(st.lists(rows(kinds, width // 2, 8, counts), min_size=1, max_size=most_rows))}
    request.update(draw(st.fixed_dictionaries({}, optional={
        "end_loss": st.integers(0, 2), "straightening": st.integers(0, 3), "print": st.integers(1, 5),
        "spare_pieces": st.integers(0, 2)})))
    if draw(st.integers(0, 4)) == 0:
        request.update(resquare_loss=draw(st.integers(1, 4)), resquare_every=draw(st.integers(2, 5)))
    for name in draw(st.lists(st.sampled_from(["no_panels", "one_height", "own_strips", "stacked"]), max_size=2)):
        request[name] = True
    if draw(st.integers(0, 7)) == 0 and all(row["kind"] != model.JOINED for row in request["pieces"]):
        request.update(folded=True, usable_width=2 * width + draw(st.integers(0, 1)))
    return request


@st.composite
def stocks(draw):
    request = draw(bolts(counts=st.integers(1, 2)))
    request["pieces"] = [row for row in request["pieces"] if row["kind"] != model.JOINED]
    assume(request["pieces"])
    request.update(usable_width=0, folded=False)
    request["stock"] = draw(st.lists(st.fixed_dictionaries({
        "width": st.integers(4, 14), "length": st.integers(4, 14), "cost": st.integers(1, 9),
        "count": mostly(st.integers(1, 4), rarely=[COUNT_MAX])}), min_size=1, max_size=2))
    if draw(st.integers(0, 3)) == 0:
        request["first_cut_across"] = True
    return request


@st.composite
def joined(draw):
    """With a joined piece of which strips may come from what is left over."""
    request = draw(bolts(counts=st.integers(1, 2), most_rows=2))
    assume(not request.get("folded") and not request.get("own_strips"))
    row = draw(st.fixed_dictionaries({"cut_width": st.integers(4, 40), "cut_length": st.integers(1, 6),
                                      "join_loss": st.integers(0, 1), "least_part": st.integers(1, 4)}))
    return dict(request, pieces=request["pieces"] + [dict(row, kind=model.JOINED, count=1)])


def few(request, most=6):
    assume(sum(model.wanted(request).values()) <= most)
    return request


# ---- one plan -------------------------------------------------------------------------------------------------------

def cut_as_found(request, found):
    return model.as_cut(request, found["strips"], found["places"])


def expect_sound(request, found):
    request = cut_as_found(request, found)
    totals, check = found["totals"], found["check"]
    assert not list(model.plan_faults(request, found["strips"], found["places"]))
    assert totals["cost"] == model.cost_of(request, found["strips"])
    assert totals["least"] <= totals["cost"]
    assert bool(totals["proven"]) == (totals["least"] == totals["cost"])
    assert check["fault"] == 0
    assert (check["cost"], check["cases"]) == (totals["cost"], totals["cases"])
    assert totals["least"] <= check["least"] <= totals["cost"]


def expect_proved(request, found):
    proof = model.Proof(request, found["sizes"], found["ways"], found["cases"], found["worths"],
                        found["totals"]["cost"])
    assert found["totals"]["least"] <= proof.least()


def expect_sizes(request, found):
    """The sizes that the proof is about are those that are wanted, each piece of which may lie as it says."""
    sizes = {}
    for row in found["sizes"]:
        size = model.proof_size(row)
        sizes[size] = sizes.get(size, 0) + row["count"]
    asked = model.wanted(cut_as_found(request, found))
    assert sorted(sizes.values()) == sorted(asked.values())
    for size, count in sizes.items():
        assert any(size.lies <= other.lies and count == asked[other] and size[1:] == other[1:] for other in asked)


@given(st.one_of(bolts(), bolts(), stocks()))
def test_no_way_of_cutting_few_pieces_is_better(request):
    found, least = answer(few(request)), model.least(request)
    if found is None:
        return
    expect_sound(request, found)
    totals = found["totals"]
    assert least is not None
    assert totals["least"] <= least <= totals["cost"]
    if totals["proven"]:
        assert totals["cost"] == least


@given(joined())
def test_lengths_of_joined_strips_may_save_cloth(request):
    plain = answer(dict(request, pieces=[dict(row, least_part=0) for row in request["pieces"]
                                         if row["kind"] == model.JOINED] +
                        [row for row in request["pieces"] if row["kind"] != model.JOINED]))
    found = answer(request)
    assume(found is not None)
    expect_sound(request, found)
    expect_sizes(request, found)
    expect_proved(request, found)
    if plain["totals"]["proven"]:
        assert found["totals"]["cost"] <= plain["totals"]["cost"]
    cut = cut_as_found(request, found)
    assume(sum(model.wanted(cut).values()) <= 7)
    least = model.least(cut)
    assert found["totals"]["least"] <= least <= found["totals"]["cost"]
    if found["totals"]["proven"]:
        assert found["totals"]["cost"] == least


@given(st.one_of(bolts(), stocks()))
def test_what_is_too_large_is_refused(request):
    found, least = answer(few(request)), model.least(request)
    if found is None and not request.get("stock"):
        assert least is None


@given(st.one_of(bolts(counts=st.integers(1, 30), most_rows=6, width=st.integers(10, 30)), bolts(), stocks()))
def test_every_case_of_a_proof_holds(request):
    found = answer(request)
    if found is not None:
        expect_sound(request, found)
        expect_sizes(request, found)
        expect_proved(request, found)


# ---- two plans ------------------------------------------------------------------------------------------------------

def layout(found):
    """What does not depend on which rows want the pieces: how often strips with pieces in the same places are cut."""
    strips = Counter()
    for number, strip in enumerate(found["strips"]):
        held = sorted((place["x"] + n * place["pitch"], place["y"], place["width"], place["height"])
                      for place in found["places"] if place["strip"] == number for n in range(place["count"]))
        strips[strip["kind"], strip["height"], strip["width"], tuple(held)] += model.copies(found["strips"], strip)
    return strips, found["totals"]["cost"], found["totals"]["least"], found["totals"]["work"]


@given(st.one_of(joined(), bolts(counts=st.integers(1, 20), most_rows=5)), st.randoms(use_true_random=False))
def test_the_order_of_rows_does_not_matter(request, random):
    shuffled = dict(request, pieces=list(request["pieces"]))
    random.shuffle(shuffled["pieces"])
    one, other = answer(request), answer(shuffled)
    assert (one is None) == (other is None)
    if one is not None:
        assert layout(one) == layout(other)
        assert [dict(row, piece=0) for row in one["sizes"]] == [dict(row, piece=0) for row in other["sizes"]]
        assert (one["ways"], one["cases"], one["worths"]) == (other["ways"], other["cases"], other["worths"])


@given(bolts(counts=st.integers(2, 20), most_rows=4))
def test_split_rows_are_one(request):
    parted = dict(request, pieces=[dict(row, count=count) for row in request["pieces"]
                                   for count in (row["count"] // 2, row["count"] - row["count"] // 2)])
    one, other = answer(request), answer(parted)
    assert (one is None) == (other is None)
    if one is not None:
        assert layout(one) == layout(other)
        assert (one["cases"], one["worths"]) == (other["cases"], other["worths"])


@given(bolts(counts=st.integers(1, 20), most_rows=4), st.integers(2, 1000))
def test_everything_larger_by_a_factor(request, factor):
    assume(not request.get("resquare_every"))
    def scaled(row):
        return {name: value * factor if name in LENGTHS else value for name, value in row.items()}
    larger = dict(scaled(request), pieces=list(map(scaled, request["pieces"])))
    one, other = answer(request), answer(larger)
    assert (one is None) == (other is None)
    if one is not None:
        assert other["totals"]["cost"] == factor * one["totals"]["cost"]
        assert other["totals"]["least"] == factor * one["totals"]["least"]
        assert other["worths"].keys() == one["worths"].keys()


def expect_no_worse(request, easier):
    one, other = answer(request), answer(easier)
    if one is not None and other is not None:
        assert other["totals"]["least"] <= one["totals"]["cost"]
        if one["totals"]["proven"] and other["totals"]["proven"]:
            assert other["totals"]["cost"] <= one["totals"]["cost"]


@given(bolts(counts=st.integers(1, 12), most_rows=4), st.integers(1, 10))
def test_a_wider_bolt_is_no_worse(request, by):
    assume(all(row["kind"] != model.JOINED for row in request["pieces"]))
    expect_no_worse(request, dict(request, usable_width=request["usable_width"] + by))


@given(bolts(counts=st.integers(2, 12), most_rows=4))
def test_fewer_pieces_are_no_worse(request):
    expect_no_worse(request, dict(request, pieces=[dict(row, count=row["count"] - 1) for row in request["pieces"]]))


@given(stocks(), st.integers(1, 3))
def test_more_stock_is_no_worse(request, more):
    stock = [dict(row, count=min(row["count"] + more, COUNT_MAX)) for row in request["stock"]]
    expect_no_worse(request, dict(request, stock=stock))
