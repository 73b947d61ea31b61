# SPDX-License-Identifier: MIT
"""Quilts, solutions and pressing plans: whose memory they are, and what goes into them and comes out."""
import copy
import ctypes
import gc
import pickle
from array import array
from typing import Any, Callable, List, Tuple

import pytest

import muslin
from muslin import (Axis, BlankKind, BlankSpec, ClosedError, CornerSpec, Cutplan, CutplanFault, EdgePrintsSpec, ExtraCutSpec,
                    Id, Length, LongPieces, CutplanStockSpec, CutplanStripKind, Pressing, Quilt, Solution, Sort, TouchSpec,
                    Stage, Yardage, errors)
from muslin._handle import ALLOCATOR, Handle, Memory
from muslin._records import PAGE, paged


def patch_of(quilt: Quilt, side: str = "2 in") -> Id:
    return quilt.patch(fabric=quilt.fabric("blue"), width=quilt.fixed(side), height=quilt.fixed(side))


@pytest.fixture
def quilt() -> Quilt:
    return Quilt()


# ---- whose memory it is ---------------------------------------------------------------------------------------------

class Freed:
    """Writes down what is freed."""

    def __init__(self) -> None:
        self.names: List[str] = []

    def handle(self, name: str, reads: Any = None) -> Handle:
        handle = Handle()
        handle._memory = Memory(self.names.append, name, reads and reads._memory)
        return handle


def test_a_handle_is_freed_once() -> None:
    freed = Freed()
    quilt = freed.handle("quilt")
    assert freed.names == [] and not quilt.closed
    quilt.close()
    quilt.close()
    assert freed.names == ["quilt"] and quilt.closed
    del quilt
    assert freed.names == ["quilt"]


def test_a_handle_without_a_name_is_freed() -> None:
    freed = Freed()
    freed.handle("quilt")
    assert freed.names == ["quilt"]


def test_the_end_of_with_frees_and_passes_exceptions_on() -> None:
    freed = Freed()
    with pytest.raises(KeyError):
        with freed.handle("quilt"):
            raise KeyError
    assert freed.names == ["quilt"]


def test_what_is_read_is_freed_after_its_last_reader() -> None:
    freed = Freed()
    quilt = freed.handle("quilt")
    solutions = [freed.handle(f"solution {number}", quilt) for number in range(2)]
    plan = freed.handle("plan", solutions[0])
    quilt.close()
    solutions[0].close()
    assert freed.names == []
    solutions[1].close()
    assert freed.names == ["solution 1"]
    plan.close()
    assert freed.names == ["solution 1", "plan", "solution 0", "quilt"]


def test_a_circle_of_handles_is_freed_in_order() -> None:
    """The collector does not ask who reads whom."""
    freed = Freed()
    quilt: Any = freed.handle("quilt")
    solution: Any = freed.handle("solution", quilt)
    quilt.solution, solution.quilt = solution, quilt
    del quilt, solution
    gc.collect()
    assert freed.names == ["solution", "quilt"]


def test_a_handle_that_was_never_made_is_closed() -> None:
    with pytest.raises(errors.RangeError):
        Quilt(allowance="-1 in")
    gc.collect()
    assert Handle().closed


def test_a_closed_handle_says_so(quilt: Quilt) -> None:
    solution = Solution(quilt, patch_of(quilt))
    plan = Pressing(solution)
    for handle in quilt, solution, plan:
        handle.close()
    uses: List[Callable[[], object]] = [
        quilt.counts, lambda: quilt.fabric("blue"), lambda: quilt.name(0), lambda: Solution(quilt, 0),
        lambda: solution.path(0), lambda: solution.outlines(0, Stage.RAW), lambda: Pressing(solution),
        plan.seams, quilt.__enter__]
    for use in uses:
        with pytest.raises(ClosedError, match="this (Quilt|Solution|Pressing) is closed"):
            use()
    assert issubclass(ClosedError, ValueError)


def test_a_solution_outlives_the_name_of_its_quilt() -> None:
    def made() -> Pressing:
        quilt = Quilt()
        return Pressing(Solution(quilt, quilt.join([patch_of(quilt)] * 3)))

    plan = made()
    gc.collect()
    assert plan.solution.quilt.counts().fabrics == 1
    assert plan.solution.totals().patches == 3
    assert len(plan.seams()) == 2


def test_a_solution_is_used_on_after_its_quilt_was_closed() -> None:
    with Quilt() as quilt:
        node = patch_of(quilt)
        solution = Solution(quilt, node)
    assert quilt.closed
    assert solution.size(node).finished_width == Length.parse("2 in")


def test_a_handle_cannot_be_copied(quilt: Quilt) -> None:
    ways: List[Callable[[Any], Any]] = [copy.copy, copy.deepcopy, pickle.dumps]
    for copied in ways:
        with pytest.raises(TypeError, match="a Quilt cannot be copied or pickled"):
            copied(quilt)


# ---- what goes in ---------------------------------------------------------------------------------------------------

@pytest.mark.parametrize("name", ["", "blue", "blå og hvid", "two\nlines", "with a \0 in it", "\udc80", "x" * 200])
def test_a_name_comes_back_as_it_was_given(name: str, quilt: Quilt) -> None:
    assert quilt.name(quilt.fabric(name)) == name
    assert quilt.name(quilt.measure(name, "1 in")) == name


def test_ids_are_plain_numbers(quilt: Quilt) -> None:
    node = patch_of(quilt)
    assert type(node) is int and node > 0
    assert [type(child) for child in quilt.children(quilt.join([node, node]))] == [int, int]
    assert [type(number) for number in (quilt.seam().allowance, quilt.seam().take_up)] == [int, int]


def test_ids_may_be_any_iterable_or_a_buffer(quilt: Quilt) -> None:
    node = patch_of(quilt)
    joined = quilt.join([node, node])
    for children in ((node, node), iter([node, node]), array("q", [node, node]), memoryview(array("q", [node, node]))):
        assert quilt.join(children) == joined


@pytest.mark.parametrize("kind, message, wrong", [
    (TypeError, r"children\[1\] must be a whole number, not str", lambda quilt: quilt.join([1, "2"])),
    (TypeError, r"children\[0\] must be a whole number, not float", lambda quilt: quilt.join([1.0])),
    (OverflowError, r"children\[0\] is .* does not fit 64 bits", lambda quilt: quilt.join([2**63])),
    (OverflowError, r"turns\[0\] is .* does not fit 32 bits", lambda quilt: quilt.repeat(1, 1, 1, [2**31], 1, 1)),
    (TypeError, "turns must hold signed integers of 32 bits",
     lambda quilt: quilt.repeat(1, 1, 1, array("q", [0]), 1, 1)),
    (TypeError, "quilt must be a Quilt, not str", lambda quilt: Solution("quilt", 1)),  # type: ignore[arg-type]
    (TypeError, "solution must be a Solution, not Quilt", lambda quilt: Pressing(quilt)),
    (TypeError, r"values\[0\] must be a SolutionValueSpec, not tuple",
     lambda quilt: Solution(quilt, 1, [(1, "2 in")])),  # type: ignore[list-item]
    (TypeError, "text must be a str", lambda quilt: quilt.fabric(b"blue")),
    (ValueError, "given has 2 numbers and there are 3 places",
     lambda quilt: muslin.scatter_prints([3], [], [0, -1], places=3))])
def test_what_does_not_fit_is_refused(kind: Any, message: str, wrong: Callable[[Any], object], quilt: Quilt) -> None:
    with pytest.raises(kind, match=message):
        wrong(quilt)


def test_a_refused_request_leaves_the_quilt_as_it_was(quilt: Quilt) -> None:
    before = quilt.counts()
    with pytest.raises(errors.ForeignError):
        quilt.join([1, 2])
    assert quilt.counts() == before


# ---- what comes out -------------------------------------------------------------------------------------------------

def test_what_a_node_has_none_of_is_none(quilt: Quilt) -> None:
    node = patch_of(quilt)
    assert quilt.node(node).axis is None
    assert quilt.node(quilt.join([node] * 2)).axis is Axis.ACROSS


def test_a_spec_that_is_read_back_makes_the_same_again(quilt: Quilt) -> None:
    node = patch_of(quilt)
    joined = quilt.join([node] * 2, axis=Axis.DOWN, keeps_order=True)
    corners = [CornerSpec(piece=piece, x=x, y=y) for piece in (-1, 0) for x, y in ("00", "20", "23", "03")]
    shape = quilt.shape(corners, [quilt.fabric("white")], quilt.fixed("4 in"), 0)
    drawn = quilt.read_shape(shape)
    assert quilt.patch(quilt.read_patch(node)) == node
    assert quilt.join(quilt.children(joined), quilt.read_join(joined)) == joined
    assert quilt.shape(drawn.corners, quilt.read_fabrics(shape), drawn.width, drawn.height) == shape
    fabric = quilt.fabric("red", usable_width="1 m", darkness=7)
    assert quilt.read_fabric(quilt.fabric("red", quilt.read_fabric(fabric))) == quilt.read_fabric(fabric)


def test_a_part_of_another_kind_is_told(quilt: Quilt) -> None:
    node = patch_of(quilt)
    with pytest.raises(errors.ChoiceError, match="Kind of node or measure is 1"):
        quilt.read_join(node)
    with pytest.raises(errors.IndexError, match="the last one is 1"):
        quilt.id(Sort.NODE, 2)


def test_no_numbers_are_an_empty_list(quilt: Quilt) -> None:
    node = patch_of(quilt)
    assert quilt.children(node) == [] == Solution(quilt, node).path(node)


def test_outlines_are_asked_for_page_by_page(quilt: Quilt) -> None:
    """More than two pages, each outline with its own four corners, 2 in apart."""
    columns = PAGE + 7
    top = quilt.repeat(patch_of(quilt), columns, 2, [0], 1, 1)
    found = list(Solution(quilt, top).outlines(top, Stage.FINISHED))
    assert len(found) == 2 * columns
    places = set()
    for outline in found:
        xs, ys = ({getattr(corner, name).ticks // 8128 for corner in outline.corners} for name in ("x", "y"))
        assert len(outline.corners) == 4 and max(xs) - min(xs) == 2 == max(ys) - min(ys)
        places.add((min(xs), min(ys)))
    assert places == {(2 * column, 2 * row) for column in range(columns) for row in range(2)}


def test_a_handle_closed_between_two_pages_says_so(quilt: Quilt) -> None:
    top = quilt.repeat(patch_of(quilt), PAGE + 1, 1, [0], 1, 1)
    solution = Solution(quilt, top)
    outlines = solution.outlines(top, Stage.FINISHED)
    next(outlines)
    solution.close()
    with pytest.raises(ClosedError):
        list(outlines)


class Pages:
    """Stands for a call of the library with rows of so many parts."""

    def __init__(self, parts: List[int]) -> None:
        self.parts = parts
        self.asked: List[int] = []

    def __call__(self, handle: Any, first: int, rows: Any, row_size: int, room: int, corners: Any, corner_size: int,
                 corner_room: int, count: Any, given: Any, problem: Any) -> int:
        self.asked.append(first)
        number = begin = 0
        for parts in self.parts[first:first + room]:
            if begin + parts > corner_room:
                break
            rows[number].node, rows[number].first_corner, rows[number].corners = first + number, begin, parts
            for at in range(begin, begin + parts):
                corners[at].x = first + number
            number, begin = number + 1, begin + parts
        count._obj.value, given._obj.value = len(self.parts) - first, number
        return 0


@pytest.mark.parametrize("parts, asked", [
    ([], [0]), ([4], [0]), ([4] * PAGE, [0]), ([4] * (PAGE + 1), [0, PAGE]), ([8 * PAGE, 1], [0, 1]),
    ([8 * PAGE + 1], [0, 0]), ([3, 33 * PAGE, 5, 0], [0, 1, 1, 1, 1])])
def test_a_row_is_never_cut_short(parts: List[int], asked: List[int], quilt: Quilt, monkeypatch: Any) -> None:
    """With no room for a single row's parts the same page is asked for again, with more."""
    pages = Pages(parts)
    monkeypatch.setitem(muslin.library.__dict__, "muslin_solution_outlines", pages)
    read: Callable[[Any, Any], Any] = lambda row, corners: (row.node, corners)
    found = list(paged("muslin_solution_outlines", muslin.structs.muslin_outline, muslin.structs.muslin_outline_corner,
                       read, lambda corner: int(corner.x), "corners", quilt))
    assert found == [(number, (number,) * many) for number, many in enumerate(parts)]
    assert pages.asked == asked


def test_places_that_do_not_touch_are_counted_too(quilt: Quilt) -> None:
    blue, side = quilt.fabric("blue"), quilt.fixed("2 in")
    touches = Solution(quilt, quilt.patch(fabric=blue, width=side, height=side)).scatter_touches(blue)
    assert (touches.rows, touches.places) == ((), 1)


def test_a_given_print_stays_where_it_is() -> None:
    """Two of one print and one of another, the first two places apart from each other."""
    found = muslin.scatter_prints([2, 1], [TouchSpec(0, 1), TouchSpec(1, 2)], [0, -1, -1], places=3)
    assert found.out == (0, 1, 0)
    assert found.result.touching == 0 and found.result.proven


@pytest.mark.parametrize("places", [-1, 0, 2**24 + 1, 2**62])
def test_an_impossible_number_of_places_is_the_librarys_to_refuse(places: int) -> None:
    with pytest.raises(errors.RangeError):
        muslin.scatter_prints([1], [], places=places)


def test_blocks_come_back_one_a_place() -> None:
    found = muslin.scatter_blocks([EdgePrintsSpec(count=6)], columns=3, rows=2)
    assert [block.kind for block in found.rows] == [0] * 6


def test_a_row_that_is_asked_and_answered_has_the_librarys_initial_values() -> None:
    assert TouchSpec() == TouchSpec(0, 0, 1)


def test_the_allocator_is_the_c_librarys() -> None:
    usual = muslin.structs.muslin_allocator()
    assert muslin.library.muslin_allocator_libc(ctypes.byref(usual)) == 0
    addresses = [[ctypes.cast(getattr(one, name), ctypes.c_void_p).value for name in ("alloc", "realloc", "free")]
                 for one in (usual, ALLOCATOR)]
    assert addresses[0] == addresses[1]


# ---- cutting plans ---------------------------------------------------------------------------------------------------

SQUARES = [BlankSpec(cut_width=side, cut_length=side, count=count)
           for side, count in (("5 1/2 in", 32), ("6 in", 16), ("9 1/2 in", 8))]


def test_a_cutting_plan_says_what_is_cut_and_why_no_less() -> None:
    with Cutplan(SQUARES, usable_width="40 in") as plan:
        totals = plan.totals()
        assert totals.cloth_length == Length.parse("60 in") and totals.proven and totals.stopped == 0
        assert sum(strip.times * strip.height.ticks for strip in plan.strips()) == totals.cost
        assert {strip.kind for strip in plan.strips()} == {CutplanStripKind.STRIP}
        assert [piece.cut for piece in plan.pieces()] == [32, 16, 8]
        assert plan.check().fault == 0
        assert [row.cloth_length for row in plan.widths("40 in", "41 in", 2)][0] == totals.cloth_length
        proof = plan.worths(0)
        assert len(proof.rows) == len(plan.sizes()) == len(plan.ways()) == 3 and proof.scale > 0


def test_a_cutting_plan_from_stock() -> None:
    fat_quarters = [CutplanStockSpec(width="21 in", length="18 in", count=7, label=4)]
    plan = Cutplan(SQUARES, fat_quarters, usable_width="0 in", by_priority=True)
    assert plan.totals().missing == sum(piece.missing for piece in plan.pieces()) > 0
    assert [(row.label, row.used) for row in plan.stock()] == [(4, 7)]
    with pytest.raises(errors.ChoiceError):
        plan.narrowest()


def test_each_blank_of_a_cutting_plan_has_its_corner() -> None:
    with Cutplan([BlankSpec(cut_width="5 in", cut_length="5 in", count=10)], usable_width="40 in") as plan:
        blanks = plan.blanks(0)
        assert [blank.x for blank in blanks[:3]] == [Length.parse(x) for x in ("0 in", "5 in", "10 in")]
        assert blanks[8].y == Length.parse("5 in") and len(blanks) == 10
        assert plan.blanks(8) == blanks[8:]


def test_progress_ends_the_search() -> None:
    told: List[int] = []

    def stop(work: int, best: int, bound: int) -> bool:
        assert bound <= best
        told.append(work)
        return True

    assert Cutplan(SQUARES, progress=stop).totals().stopped == 1 and len(told) == 1
    assert Cutplan(SQUARES, progress=lambda *numbers: None).totals().proven


def test_progress_ends_widths_and_the_check() -> None:
    plan = Cutplan(SQUARES)
    told: List[Tuple[int, ...]] = []
    assert len(plan.widths("40 in", "42 in", 3, progress=lambda *numbers: told.append(numbers))) == 3 and told
    assert plan.check(progress=lambda *numbers: False).fault == CutplanFault.NONE
    with pytest.raises(errors.StoppedError):
        plan.check(progress=lambda *numbers: True)

    def fail(*numbers: int) -> bool:
        raise KeyError(numbers)

    for ask in (lambda: plan.check(progress=fail), lambda: plan.widths("40 in", "42 in", 3, progress=fail)):
        with pytest.raises(KeyError):
            ask()


def test_what_progress_raises_is_raised_again() -> None:
    def fail(work: int, best: int, bound: int) -> bool:
        raise KeyboardInterrupt

    with pytest.raises(KeyboardInterrupt):
        Cutplan(SQUARES, progress=fail)


def test_a_cutting_plan_names_the_row_that_is_too_large() -> None:
    with pytest.raises(errors.NoYieldError) as raised:
        Cutplan([*SQUARES, BlankSpec(cut_width="41 in", cut_length="6 in", kind=BlankKind.PIECE)], usable_width="40 in")
    assert raised.value.at == 3


# ---- yardage ---------------------------------------------------------------------------------------------------------

def border_of(quilt: Quilt) -> Solution:
    return Solution(quilt, quilt.patch(fabric=quilt.fabric("blue"), width=quilt.fixed("59 1/2 in"),
                                       height=quilt.fixed("4 in")))


def test_yardage_says_what_to_buy(quilt: Quilt) -> None:
    # Lengthwise 60 in; joined a strip of 40 in and one of 20 1/2 in, 9 in. Binding of 200 in: 40 in and 37 1/2 more from
    # each: six strips, the last one of which is 12 1/2 in.
    solution = border_of(quilt)
    binding = ExtraCutSpec(fabric=quilt.fabric("green"), cut_width="200 in", cut_length="2 1/2 in",
                           kind=BlankKind.JOINED, join_loss="2 1/2 in")
    with Yardage(solution, []) as yardage:
        [row] = yardage.fabrics()
        assert (row.cloth_length, row.bought) == (Length.parse("60 in"), Length.parse("63 in"))
        assert row.proven and not row.turned
    joined = Yardage(solution, [binding], long_pieces=LongPieces.JOINED)
    assert [row.cloth_length for row in joined.fabrics()] == [Length.parse("9 in"), Length.parse("15 in")]
    assert [row.kind for row in solution.yardage_pieces(row.fabric)] == [BlankKind.LENGTHWISE]


def test_a_plan_keeps_the_yardage_it_belongs_to(quilt: Quilt) -> None:
    yardage = Yardage(border_of(quilt), [])
    plan = yardage.plan(0)
    yardage.close()
    assert plan.totals().cloth_length == Length.parse("60 in")
    assert [piece.label for piece in plan.pieces()] == [0]
    plan.close()
    with pytest.raises(errors.IndexError):
        Yardage(border_of(quilt), []).plan(1)
