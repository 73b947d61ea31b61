# SPDX-License-Identifier: MIT
"""Prints, blocks and strips scattered: what touches is counted anew, few are compared with every arrangement."""

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from asking import Failed, ask
from questions import mostly

# ---- prints ---------------------------------------------------------------------------------------------------------


def weight(touches, laid):
    return sum(touch["weight"] for touch in touches if laid[touch["first"]] == laid[touch["second"]])


def pairs(touches, laid):
    return sum(laid[touch["first"]] == laid[touch["second"]] for touch in touches)


def allowed(laid, prints, fixed):
    return (all(laid.count(kind) <= there_are for kind, there_are in enumerate(prints))
            and all(kind in (-1, laid[place]) for place, kind in enumerate(fixed)))


def every_arrangement(places, prints, fixed):
    return (laid for laid in product(range(len(prints)), repeat=places) if allowed(laid, prints, fixed))


@st.composite
def tops(draw, most_places, most_kinds, most_touches):
    """Places, prints enough for them, what touches, and what is given without asking too much of a print."""
    places = draw(st.integers(1, most_places))
    kinds = draw(st.integers(1, most_kinds))
    prints = draw(st.lists(mostly(st.integers(0, places), rarely=[0, places, 2**31 - 1]), min_size=kinds,
                           max_size=kinds))
    prints[draw(st.integers(0, kinds - 1))] += max(0, places - sum(prints))
    place = st.integers(0, places - 1)
    touches = [{"first": a, "second": b, "weight": heavy}
               for a, b, heavy in draw(st.lists(st.tuples(place, place, mostly(st.just(1), rarely=[2, 3, 2**20])),
                                                max_size=most_touches)) if a != b]
    fixed = [-1] * places
    for at, kind in draw(st.dictionaries(place, st.integers(0, kinds - 1), max_size=3)).items():
        if fixed.count(kind) < prints[kind]:
            fixed[at] = kind
    return {"places": places, "prints": [min(n, 2**31 - 1) for n in prints], "touches": touches, "given": fixed}


def scattered(top, **wish):
    answer = ask("scatter_prints", top["prints"], top["touches"], top["given"], places=top["places"], **wish)
    laid, result = tuple(answer["out"]), answer["result"]
    assert allowed(laid, top["prints"], top["given"])
    assert result["touching"] == weight(top["touches"], laid)
    assert result["pairs"] == pairs(top["touches"], laid)
    assert 0 <= result["least"] <= result["touching"]
    assert bool(result["proven"]) == (result["least"] == result["touching"])
    return laid, result


@given(tops(60, 8, 150), st.integers(-2**63, 2**63 - 1), st.integers(0, 20000))
def test_prints_lie_as_asked_and_what_touches_is_counted(top, seed, work):
    first = scattered(top, seed=seed, work_limit=work)
    assert first == scattered(top, seed=seed, work_limit=work)
    assert scattered(top, seed=seed, work_limit=3 * work)[1]["touching"] <= first[1]["touching"]


@given(tops(6, 3, 15))
def test_no_arrangement_of_few_is_better(top):
    least = min(weight(top["touches"], laid)
                for laid in every_arrangement(top["places"], top["prints"], top["given"]))
    result = scattered(top, work_limit=500000)[1]
    assert result["least"] <= least == result["touching"]


@given(st.integers(1, 12), st.integers(1, 12))
def test_two_prints_make_any_chessboard(columns, rows):
    places = columns * rows
    touches = [{"first": p, "second": q, "weight": 1} for p in range(places)
               for q in ([p + 1] if (p + 1) % columns else []) + ([p + columns] if p + columns < places else [])]
    top = {"prints": [places // 2, places - places // 2], "places": places, "touches": touches, "given": [-1] * places}
    assert scattered(top)[1]["touching"] == 0


# ---- blocks ---------------------------------------------------------------------------------------------------------

blocks = st.lists(st.fixed_dictionaries({"turns_half": st.booleans(), "turns_quarter": st.booleans(),
                                         "count": st.integers(0, 12), **{
                                             edge: st.integers(-1, 2) for edge in ("top", "right", "bottom", "left")}}),
                  min_size=1, max_size=4)


def edges(block, turns):
    """Clockwise from the top; a quarter turn brings what was on the left to the top."""
    plain = [block["top"], block["right"], block["bottom"], block["left"]]
    return [plain[(edge - turns) % 4] for edge in range(4)]


def turns_of(block):
    return range(4) if block["turns_quarter"] else (0, 2) if block["turns_half"] else (0,)


def meetings(given_blocks, laid, columns):
    shown = [edges(given_blocks[kind], turns) for kind, turns in laid]
    met = [(shown[p][1], shown[p + 1][3]) for p in range(len(laid)) if (p + 1) % columns]
    met += [(shown[p][2], shown[p + columns][0]) for p in range(len(laid) - columns)]
    return sum(a == b >= 0 for a, b in met)


@given(blocks, st.integers(1, 5), st.integers(1, 5), st.integers(0, 5000))
def test_blocks_lie_as_asked_and_what_meets_is_counted(given_blocks, columns, rows, work):
    try:
        answer = ask("scatter_blocks", given_blocks, columns=columns, rows=rows, work_limit=work)
    except Failed as failed:
        assert failed.status.name == "ERR_NOT_ENOUGH"
        assert sum(block["count"] for block in given_blocks) < columns * rows
        return
    laid = [(row["kind"], row["quarter_turns"]) for row in answer["rows"]]
    assert len(laid) == columns * rows
    assert all(turns in turns_of(given_blocks[kind]) for kind, turns in laid)
    assert all(sum(kind == k for k, _ in laid) <= block["count"] for kind, block in enumerate(given_blocks))
    result = answer["result"]
    assert result["touching"] == result["pairs"] == meetings(given_blocks, laid, columns)
    assert result["least"] <= result["touching"]


@given(blocks, st.sampled_from([(2, 2), (3, 1), (1, 4), (1, 1)]))
def test_no_layout_of_few_blocks_is_better(given_blocks, size):
    given_blocks = given_blocks[:2]
    given_blocks[0]["count"] += 4
    columns, rows = size
    choices = [(kind, turns) for kind, block in enumerate(given_blocks) for turns in turns_of(block)]
    least = min(meetings(given_blocks, laid, columns) for laid in product(choices, repeat=columns * rows)
                if all(sum(kind == k for k, _ in laid) <= block["count"] for kind, block in enumerate(given_blocks)))
    result = ask("scatter_blocks", given_blocks, columns=columns, rows=rows, work_limit=200000)["result"]
    assert result["least"] <= least == result["touching"]


# ---- sets -----------------------------------------------------------------------------------------------------------


def touches_of_sets(sets, strips):
    return [{"first": s * strips + i, "second": s * strips + j, "weight": 2 if j == i + 1 else 1}
            for s in range(sets) for i in range(strips) for j in range(i + 1, strips)]


def dealt(prints, sets, strips, seed):
    answer = ask("scatter_sets", prints, sets, strips, places=sets * strips, seed=seed)
    touches, result = touches_of_sets(sets, strips), answer["result"]
    assert allowed(answer["out"], prints, [])
    assert result["touching"] == weight(touches, answer["out"]) == result["least"]
    assert result["pairs"] == pairs(touches, answer["out"])
    assert result["proven"]
    return result


@given(st.lists(st.integers(0, 40), min_size=1, max_size=25), st.integers(1, 12), st.integers(1, 9),
       st.integers(-2**63, 2**63 - 1))
def test_strips_are_dealt_evenly(prints, sets, strips, seed):
    prints[0] += max(0, sets * strips - sum(prints))
    dealt(prints, sets, strips, seed)


@given(st.lists(st.integers(0, 6), min_size=1, max_size=3), st.sampled_from([(1, 6), (2, 3), (3, 2), (1, 4), (6, 1)]),
       st.integers(0, 100))
def test_no_deal_of_few_strips_is_better(prints, size, seed):
    sets, strips = size
    prints[0] += max(0, sets * strips - sum(prints))
    touches = touches_of_sets(sets, strips)
    least = min(weight(touches, laid) for laid in every_arrangement(sets * strips, prints, []))
    assert dealt(prints, sets, strips, seed)["touching"] == least
