# SPDX-License-Identifier: MIT
"""Pressing plans of whole trees against the model, which lays out every copy of every part and tries all choices."""

from collections import defaultdict

from hypothesis import assume, given
from hypothesis import strategies as st

from muslin import OtherWay, Pressing
from muslin_model import pressing as model
from muslin_model.tree import (ACROSS, DOWN, Field, HALF_SQUARE, Join, Patch, Pinwheel, QUARTER_SQUARE, Unit, joined, nodes,
                                size, turned)
from test_solution_trees import Made, filled, joins, magnified, pinwheels, repeats, set_ins, turnings, units, turns

BITS = 11  # choices that are all tried
COPIES = 4000  # seams laid out


def larger(tree):
    """So that no two ends that differ lie within what counts as one place."""
    return magnified(tree, 100)


def small_enough(tree):
    assume(all(not isinstance(node, Join) or len(node.children) <= 64 for node in nodes(tree)))
    seams, meetings = model.laid(tree)
    assume(len(seams) <= COPIES)
    return seams, meetings


@st.composite
def placed(draw, blocks, on_point):
    """Few square blocks, turned and mirrored, in straight rows or on point."""
    columns, rows = draw(st.integers(1, 3)), draw(st.integers(1, 3))
    lying = st.builds(lambda turn, block: turned(*turn, block), turns, st.sampled_from(blocks))
    if on_point:
        count = columns * rows + (columns - 1) * (rows - 1)
        layout = draw(st.sampled_from([1, 1, 2, 3, 4]))
        children = tuple(draw(lying) for _ in range(count))
        sash = 0 if layout == 1 else size(children[0])[0] // 4
        return larger(Field(columns, rows, children, 0, (0, 1), layout, sash))
    across = [joined(ACROSS, [draw(lying) for _ in range(columns)]) for _ in range(rows)]
    return larger(joined(DOWN, [draw(st.sampled_from(across)) for _ in range(rows)]))


@st.composite
def halves(draw, width, height, depth, kinds):
    """Two halves, or four quarters, so that much of what is in them meets."""
    assume(width % 8 == 0 and height % 8 == 0)
    quarters = [draw(filled(width // 2, height // 2, depth, kinds)) for _ in range(2)]
    across = [joined(ACROSS, quarters), joined(ACROSS, quarters[::draw(st.sampled_from([1, -1]))])]
    return joined(DOWN, across) if draw(st.booleans()) else joined(
        ACROSS, [draw(filled(width // 2, height, depth, kinds)) for _ in range(2)])


@st.composite
def wheels(draw, width, height, depth, kinds):
    """Arms of one size round a square centre."""
    assume(width == height and width % 24 == 0)
    third = width // 3
    arm = draw(filled(2 * third, third, depth, kinds))
    arms = [turned(False, quarter, arm) if draw(st.booleans()) else draw(filled(*size, depth, kinds))
            for quarter, size in enumerate([(2 * third, third), (third, 2 * third)] * 2)]
    return Pinwheel((draw(filled(third, third, depth, kinds)), *arms))


@st.composite
def tops(draw):
    kinds = [halves, halves, halves, wheels, joins, repeats, turnings, pinwheels, set_ins, units]
    blocks = draw(st.lists(st.integers(1, 3).flatmap(lambda depth: filled(48, 48, depth, kinds)), min_size=1,
                           max_size=2))
    return draw(placed(blocks, draw(st.integers(0, 3)) == 0))


def chequered(n, fabrics):
    """n x n squares, of two fabrics in turn or all of one."""
    return joined(DOWN, [joined(ACROSS, [Patch(fabrics[(a + b) % 2], 8, 8) for a in range(n)]) for b in range(n)])


square_blocks = st.one_of(
    st.just(chequered(3, (0, 1))),
    st.just(chequered(3, (0, 0))),
    st.just(chequered(2, (0, 0))),
    st.just(joined(ACROSS, [Patch(a, 8, 24) for a in (0, 1, 0)])),
    st.just(joined(DOWN, [joined(ACROSS, [Patch(0, 8, 8), Unit(QUARTER_SQUARE, 8, 0, 0, 1, (0, 1)), Patch(0, 8, 8)]),
                          joined(ACROSS, [turned(False, 1, Unit(QUARTER_SQUARE, 8, 0, 0, 1, (0, 1))), Patch(1, 8, 8),
                                          turned(False, 1, Unit(QUARTER_SQUARE, 8, 0, 0, 1, (0, 1)))]),
                          joined(ACROSS, [Patch(0, 8, 8), Unit(QUARTER_SQUARE, 8, 0, 0, 1, (0, 1)),
                                          Patch(0, 8, 8)])])),
    st.just(joined(DOWN, [joined(ACROSS, [Patch(a, 8, 8), Patch(1 - a, 8, 8)]) for a in (0, 1)])),
    st.just(joined(ACROSS, [Patch(0, 8, 16), Patch(1, 8, 16)])),
    st.just(Unit(HALF_SQUARE, 16, 0, 0, 1, (0, 1))),
    st.just(joined(DOWN, [joined(ACROSS, [turned(False, k, Unit(HALF_SQUARE, 8, 0, 0, 1, (0, 1)))
                                          for k in row]) for row in ((3, 0), (2, 1))])))


@st.composite
def grids(draw):
    """Where not all can nest, or blocks look the same when they are turned."""
    blocks = draw(st.lists(square_blocks, min_size=1, max_size=2))
    assume(model.size(blocks[0]) == model.size(blocks[-1]))
    return draw(placed(blocks, draw(st.booleans())))


def ck_totals(tree):
    _, meetings = small_enough(tree)
    totals = Pressing(Made(tree).solution).totals()
    assert totals.meetings == len(meetings)
    assert totals.open == 0
    assert totals.alternating == model.broken(meetings, model.in_turn(tree))
    assert totals.least <= totals.exceptions <= totals.alternating
    assert totals.proven == (totals.least == totals.exceptions)
    if len(model.choices(meetings)) <= BITS:
        assert totals.exceptions == totals.least == model.fewest(meetings)


@given(tops())
def test_no_plan_of_any_tree_has_fewer_exceptions(tree):
    ck_totals(tree)


@given(grids())
def test_no_plan_of_turned_blocks_has_fewer_exceptions(tree):
    ck_totals(tree)


@given(st.one_of(tops(), grids()))
def test_the_plan_has_the_exceptions_it_tells(tree):
    assume(not isinstance(tree, Field))
    seams, meetings = small_enough(tree)
    made = Made(tree)
    plan = Pressing(made.solution)
    number = {made.ids[node]: node for node in nodes(tree)}
    ways = {("place", number[row.node], row.place) for row in plan.children() if row.other_way}
    pressed = {}
    for row in plan.seams():
        ends = tuple(sorted([(row.from_x.ticks, row.from_y.ticks), (row.to_x.ticks, row.to_y.ticks)]))
        pressed["seam", number[row.node], ends] = row
    ways |= {seam for seam, row in pressed.items() if row.towards == 2}
    exceptions = plan.exceptions()
    assert plan.totals().exceptions == model.broken(meetings, ways) == sum(row.count for row in exceptions)
    # Laid out once more, what is turned being turned, and each seam pressed as it is said to be: as many do not nest.
    turned_by = {seam[1]: row.turn for seam, row in pressed.items() if row.turn}
    copies = defaultdict(lambda: [0, 0])
    assert plan.totals().exceptions == model.sewn(tree, False, ways, turned_by, copies)[1]
    for seam, row in pressed.items():
        assert [row.as_shown, row.other_way] == copies[seam[1]]
        assert (row.other == OtherWay.TURNED) == (row.turn > 0)
    others = {seam[1]: row.other_way for seam, row in pressed.items()}
    assert plan.totals().other_way == sum(others.values())
    assert plan.totals().copies_turned == sum(others[node] for node in turned_by)
    assert all(model.looks_alike(node, quarters) for node, quarters in turned_by.items())
    assert all(row.turn == turned_by.get(number[row.child], 0) for row in plan.children())


@given(grids(), st.integers(0, 3000))
def test_less_work_is_never_better_than_the_bound(tree, work):
    solution = Made(tree).solution
    few, many = (Pressing(solution, work_limit=limit).totals() for limit in (work, 300000))
    assert max(few.least, many.least) <= min(few.exceptions, many.exceptions)
    assert few.exceptions <= few.alternating
