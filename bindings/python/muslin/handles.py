# SPDX-License-Identifier: MIT
"""The handles, each a class with the functions that take it.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
import ctypes
from typing import Iterator, List, Optional, Sequence

from . import _api as structs
from ._buffers import Integers, integers
from ._handle import ALLOCATOR, Handle, opened, Progress, Told
from ._length import Length, LengthLike, ticks_of
from ._problem import call_telling
from ._records import asked, asked_numbers, merged, paged, rows_of, words_out
from ._values import Id, new, utf8, whole
from .constants import (AllowancePolicy, Axis, Direction, Hand, LongPieces, PointLayout, Prefer, Print, SeamPress,
                        SixtyFirst, Sort, Stage, StripPiecing, Tip, UnitKind, UnitMethod)
from .records import (BlankSpec, CornerSpec, CutplanBlank, CutplanCase, CutplanChecked, CutplanLeftOver, CutplanPiece,
                      CutplanPlace, CutplanSize, CutplanSpec, CutplanStockSpec, CutplanStockUsed, CutplanStrip,
                      CutplanTotal, CutplanWay, CutplanWidth, CutplanWorth, CutplanWorths, ExtraCutSpec, FabricYardage,
                      Misfit, Node, NodeSize, Outline, OutlineCorner, PartCounts, PressingChild, PressingException,
                      PressingSeam, PressingSpec, PressingTotal, QuiltDiagonalSpec, QuiltFabricSpec, QuiltJoinSpec,
                      QuiltLogSpec, QuiltPatchSpec, QuiltPinwheelSpec, QuiltReadShape, QuiltSashedSpec, QuiltSeam,
                      QuiltSetInSpec, QuiltSixtyPieceSpec, QuiltSixtySpec, QuiltSpec, QuiltSumSpec, QuiltSurroundSpec,
                      QuiltTrimSpec, QuiltUnitSpec, ScatterTouches, SewingFeed, SewingStep, SewingTotal, SolutionCut,
                      SolutionSpec, SolutionTotal, SolutionValueSpec, Stripset, Term, TouchSpec, TreeMeasure,
                      YardageSpec)

__all__ = ["Quilt", "Solution", "Pressing", "Cutplan", "Yardage"]


class Quilt(Handle):
    """struct muslin_quilt, muslin/quilt.h"""

    def __init__(self, spec: Optional[QuiltSpec] = None, *, allowance: Optional[LengthLike] = None,
                 take_up: Optional[LengthLike] = None, most: Optional[int] = None, tag: Optional[int] = None) -> None:
        """An empty quilt, with two measures: its seam allowance and its take-up.

        Keywords: the members of QuiltSpec, over those of spec.

        muslin_quilt_create() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltSpec, spec, allowance=allowance, take_up=take_up, most=most, tag=tag)
        made = ctypes.POINTER(structs.muslin_quilt)()
        call_telling("muslin_quilt_create", ctypes.byref(wish), ctypes.byref(ALLOCATOR), ctypes.byref(made))
        self._own("muslin_quilt_free", made)

    def fabric(self, name: str, spec: Optional[QuiltFabricSpec] = None, *, usable_width: Optional[LengthLike] = None,
               print: Optional[Print] = None, darkness: Optional[int] = None) -> Id:
        """A new fabric.

        Keywords: the members of QuiltFabricSpec, over those of spec.

        muslin_quilt_fabric() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltFabricSpec, spec, usable_width=usable_width, print=print, darkness=darkness)
        data = utf8(name)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_fabric", self._open(), ctypes.byref(wish), data, len(data), ctypes.byref(out_))
        return out_.value

    def measure(self, name: str, value: LengthLike) -> Id:
        """A new measure with a name (as of a fabric) and the value it has until another is given, 0 .. MUSLIN_SIZE_MAX.

        muslin_quilt_measure() in muslin/quilt.h. Since 1.0.
        """
        data = utf8(name)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_measure", self._open(), data, len(data), ticks_of(value, "value"),
                     ctypes.byref(out_))
        return out_.value

    def fixed(self, value: LengthLike) -> Id:
        """A length that no size of the design changes, 0 .. MUSLIN_SIZE_MAX; equal ones are one measure.

        muslin_quilt_fixed() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_fixed", self._open(), ticks_of(value, "value"), ctypes.byref(out_))
        return out_.value

    def sum(self, terms: Sequence[QuiltSumSpec]) -> Id:
        """The sum of factor x measure over n terms (1 .. 64).

        muslin_quilt_sum() in muslin/quilt.h. Since 1.0.
        """
        terms_, n_ = rows_of(QuiltSumSpec, terms, "terms")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_sum", self._open(), terms_, ctypes.sizeof(structs.muslin_quilt_sum_spec), n_,
                     ctypes.byref(out_))
        return out_.value

    def extent(self, node: Id, axis: Axis) -> Id:
        """The finished width or height of a node, as a measure: a sash as long as its block, a border as long as the
        top.

        muslin_quilt_extent() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_extent", self._open(), whole(node, "node"), whole(axis, "axis", 32),
                     ctypes.byref(out_))
        return out_.value

    def seam(self) -> QuiltSeam:
        """The quilt's seam allowance and its take-up, as measures: give them values when solving.

        muslin_quilt_seam() in muslin/quilt.h. Since 1.0.
        """
        allowance_ = ctypes.c_int64()
        take_up_ = ctypes.c_int64()
        call_telling("muslin_quilt_seam", self._open(), ctypes.byref(allowance_), ctypes.byref(take_up_))
        return QuiltSeam(allowance_.value, take_up_.value)

    def name(self, id: Id) -> str:
        """The name of a fabric or a measure, terminated; measures made without one have none ("").

        muslin_quilt_name() in muslin/quilt.h. Since 1.0.
        """
        return words_out("muslin_quilt_name", self._open(), whole(id, "id"))

    def patch(self, spec: Optional[QuiltPatchSpec] = None, *, fabric: Optional[Id] = None, width: Optional[Id] = None,
              height: Optional[Id] = None, left: Optional[Id] = None, right: Optional[Id] = None,
              top: Optional[Id] = None, bottom: Optional[Id] = None) -> Id:
        """One rectangle of one fabric.

        Keywords: the members of QuiltPatchSpec, over those of spec.

        muslin_quilt_patch() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltPatchSpec, spec, fabric=fabric, width=width, height=height, left=left, right=right, top=top,
                                            bottom=bottom)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_patch", self._open(), ctypes.byref(wish), ctypes.byref(out_))
        return out_.value

    def unit(self, fabrics: Integers, spec: Optional[QuiltUnitSpec] = None, *, width: Optional[Id] = None,
             height: Optional[Id] = None, corner: Optional[Id] = None, kind: Optional[UnitKind] = None,
             method: Optional[UnitMethod] = None, hand: Optional[Hand] = None) -> Id:
        """A pieced unit by its recipe, with a fabric for each of its regions (n is their number, 2 or 3), drawn as
        muslin_unit_outlines() draws it and sewn with the quilt's seam.

        Keywords: the members of QuiltUnitSpec, over those of spec.

        muslin_quilt_unit() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltUnitSpec, spec, width=width, height=height, corner=corner, kind=kind, method=method,
                                           hand=hand)
        fabrics_ = integers(fabrics, "fabrics")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_unit", self._open(), ctypes.byref(wish), fabrics_.numbers, fabrics_.count,
                     ctypes.byref(out_))
        return out_.value

    def shape(self, corners: Sequence[CornerSpec], fabrics: Integers, width: Id, height: Id) -> Id:
        """A unit of the caller's own, drawn as shape.h says, outline first, with straight edges and an outline that is
        an upright rectangle from (0, 0); `fabrics` has one for each piece.

        muslin_quilt_shape() in muslin/quilt.h. Since 1.0.
        """
        corners_, n_ = rows_of(CornerSpec, corners, "corners")
        fabrics_ = integers(fabrics, "fabrics")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_shape", self._open(), corners_, ctypes.sizeof(structs.muslin_corner_spec), n_,
                     fabrics_.numbers, fabrics_.count, whole(width, "width"), whole(height, "height"),
                     ctypes.byref(out_))
        return out_.value

    def join(self, children: Integers, spec: Optional[QuiltJoinSpec] = None, *, axis: Optional[Axis] = None,
             piecing: Optional[StripPiecing] = None, press: Optional[SeamPress] = None,
             keeps_order: Optional[bool] = None) -> Id:
        """n nodes (1 or more) sewn edge to edge in their order; one alone is itself.

        Keywords: the members of QuiltJoinSpec, over those of spec.

        muslin_quilt_join() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltJoinSpec, spec, axis=axis, piecing=piecing, press=press, keeps_order=keeps_order)
        children_ = integers(children, "children")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_join", self._open(), ctypes.byref(wish), children_.numbers, children_.count,
                     ctypes.byref(out_))
        return out_.value

    def grid(self, columns: int, rows: int, children: Integers) -> Id:
        """Columns x rows nodes, given row by row from the top: each row joined across, then the rows joined down.

        muslin_quilt_grid() in muslin/quilt.h. Since 1.0.
        """
        children_ = integers(children, "children")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_grid", self._open(), whole(columns, "columns"), whole(rows, "rows"),
                     children_.numbers, children_.count, ctypes.byref(out_))
        return out_.value

    def repeat(self, node: Id, columns: int, rows: int, turns: Integers, pattern_columns: int, pattern_rows: int) -> Id:
        """One node columns x rows times, turned by a pattern that repeats: turns[(row % pattern_rows) x pattern_columns
        + column % pattern_columns] quarter turns, each 0 .. 3.

        muslin_quilt_repeat() in muslin/quilt.h. Since 1.0.
        """
        turns_ = integers(turns, "turns", 32)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_repeat", self._open(), whole(node, "node"), whole(columns, "columns"),
                     whole(rows, "rows"), turns_.numbers, turns_.count, whole(pattern_columns, "pattern_columns"),
                     whole(pattern_rows, "pattern_rows"), ctypes.byref(out_))
        return out_.value

    def turn(self, node: Id, quarter_turns: int) -> Id:
        """The node turned by quarter_turns (0 .. 3) clockwise: the same sewing, lying another way.

        muslin_quilt_turn() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_turn", self._open(), whole(node, "node"), whole(quarter_turns, "quarter_turns", 32),
                     ctypes.byref(out_))
        return out_.value

    def mirror(self, node: Id) -> Id:
        """The node's mirror image, left for right: another sewing, whose pieces with hands are cut the other way.

        muslin_quilt_mirror() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_mirror", self._open(), whole(node, "node"), ctypes.byref(out_))
        return out_.value

    def lay(self, node: Id, quarter_turns: int, mirrored: int) -> Id:
        """Both in one step, without a node in between: first mirrored, where `mirrored` is 1 (else 0), then turned
        clockwise by quarter_turns (0 .. 3), as struct muslin_node tells of a turn.

        muslin_quilt_lay() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_lay", self._open(), whole(node, "node"), whole(quarter_turns, "quarter_turns", 32),
                     whole(mirrored, "mirrored", 32), ctypes.byref(out_))
        return out_.value

    def trim(self, node: Id, spec: Optional[QuiltTrimSpec] = None, *, left: Optional[Id] = None,
             right: Optional[Id] = None, top: Optional[Id] = None, bottom: Optional[Id] = None) -> Id:
        """The node made larger than it is needed and trimmed after sewing: what is joined to it meets the trimmed edge,
        which is no mismatch.

        Keywords: the members of QuiltTrimSpec, over those of spec.

        muslin_quilt_trim() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltTrimSpec, spec, left=left, right=right, top=top, bottom=bottom)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_trim", self._open(), whole(node, "node"), ctypes.byref(wish), ctypes.byref(out_))
        return out_.value

    def pinwheel(self, spec: Optional[QuiltPinwheelSpec] = None, *, centre: Optional[Id] = None,
                 top: Optional[Id] = None, right: Optional[Id] = None, bottom: Optional[Id] = None,
                 left: Optional[Id] = None) -> Id:
        """Four nodes round a centre, each end against the next one's side: four seams, top, right, bottom, left, of
        which the first (top to centre) is sewn in part and finished when left is on.

        Keywords: the members of QuiltPinwheelSpec, over those of spec.

        muslin_quilt_pinwheel() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltPinwheelSpec, spec, centre=centre, top=top, right=right, bottom=bottom, left=left)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_pinwheel", self._open(), ctypes.byref(wish), ctypes.byref(out_))
        return out_.value

    def set_in(self, spec: Optional[QuiltSetInSpec] = None, *, centre: Optional[Id] = None,
               left_width: Optional[Id] = None, right_width: Optional[Id] = None, top_width: Optional[Id] = None,
               bottom_width: Optional[Id] = None, left_fabric: Optional[Id] = None, right_fabric: Optional[Id] = None,
               top_fabric: Optional[Id] = None, bottom_fabric: Optional[Id] = None) -> Id:
        """Strips round a centre with mitred corners: where two strips meet, the seam runs from the centre's corner to
        the outer one, and stitching along the centre stops one allowance from the edge there, so that the corner can be
        set in.

        Keywords: the members of QuiltSetInSpec, over those of spec.

        muslin_quilt_set_in() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltSetInSpec, spec, centre=centre, left_width=left_width, right_width=right_width,
                                            top_width=top_width, bottom_width=bottom_width, left_fabric=left_fabric,
                                            right_fabric=right_fabric, top_fabric=top_fabric,
                                            bottom_fabric=bottom_fabric)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_set_in", self._open(), ctypes.byref(wish), ctypes.byref(out_))
        return out_.value

    def logs(self, centre: Id, logs: Sequence[QuiltLogSpec]) -> Id:
        """Strips sewn on one after the other (n, 0 or more), each as long as what is there: log cabin, courthouse
        steps, plain borders.

        muslin_quilt_logs() in muslin/quilt.h. Since 1.0.
        """
        logs_, n_ = rows_of(QuiltLogSpec, logs, "logs")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_logs", self._open(), whole(centre, "centre"), logs_,
                     ctypes.sizeof(structs.muslin_quilt_log_spec), n_, ctypes.byref(out_))
        return out_.value

    def surround(self, spec: Optional[QuiltSurroundSpec] = None, *, centre: Optional[Id] = None,
                 left: Optional[Id] = None, right: Optional[Id] = None, top: Optional[Id] = None,
                 bottom: Optional[Id] = None, top_left: Optional[Id] = None, top_right: Optional[Id] = None,
                 bottom_left: Optional[Id] = None, bottom_right: Optional[Id] = None) -> Id:
        """A border with corners of its own, plain or pieced: sides joined to the centre, then top and bottom with their
        corners joined to that.

        Keywords: the members of QuiltSurroundSpec, over those of spec.

        muslin_quilt_surround() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltSurroundSpec, spec, centre=centre, left=left, right=right, top=top, bottom=bottom,
                                               top_left=top_left, top_right=top_right, bottom_left=bottom_left,
                                               bottom_right=bottom_right)
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_surround", self._open(), ctypes.byref(wish), ctypes.byref(out_))
        return out_.value

    def sashed(self, blocks: Integers, spec: Optional[QuiltSashedSpec] = None, *, columns: Optional[int] = None,
               rows: Optional[int] = None, sash: Optional[Id] = None, sash_fabric: Optional[Id] = None,
               cornerstone: Optional[Id] = None, frame: Optional[bool] = None,
               cornerstones: Optional[bool] = None) -> Id:
        """Blocks (columns x rows, row by row from the top; n is their product) with sashes between them, each as long
        as the first block of its row is high, or of its column wide.

        Keywords: the members of QuiltSashedSpec, over those of spec.

        muslin_quilt_sashed() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltSashedSpec, spec, columns=columns, rows=rows, sash=sash, sash_fabric=sash_fabric,
                                             cornerstone=cornerstone, frame=frame, cornerstones=cornerstones)
        blocks_ = integers(blocks, "blocks")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_sashed", self._open(), ctypes.byref(wish), blocks_.numbers, blocks_.count,
                     ctypes.byref(out_))
        return out_.value

    def diagonal(self, blocks: Integers, spec: Optional[QuiltDiagonalSpec] = None, *, columns: Optional[int] = None,
                 rows: Optional[int] = None, side_fabric: Optional[Id] = None, corner_fabric: Optional[Id] = None,
                 set_off: Optional[Id] = None, sash: Optional[Id] = None, sash_fabric: Optional[Id] = None,
                 cornerstone: Optional[Id] = None, layout: Optional[PointLayout] = None) -> Id:
        """Blocks on point in diagonal rows, closed by setting triangles.

        Keywords: the members of QuiltDiagonalSpec, over those of spec.

        muslin_quilt_diagonal() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltDiagonalSpec, spec, columns=columns, rows=rows, side_fabric=side_fabric,
                                               corner_fabric=corner_fabric, set_off=set_off, sash=sash,
                                               sash_fabric=sash_fabric, cornerstone=cornerstone, layout=layout)
        blocks_ = integers(blocks, "blocks")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_diagonal", self._open(), ctypes.byref(wish), blocks_.numbers, blocks_.count,
                     ctypes.byref(out_))
        return out_.value

    def sixty(self, pieces: Sequence[QuiltSixtyPieceSpec], spec: Optional[QuiltSixtySpec] = None, *,
              cells: Optional[int] = None, rows: Optional[int] = None, height: Optional[Id] = None,
              end_fabric: Optional[Id] = None, first: Optional[SixtyFirst] = None) -> Id:
        """Rows of equilateral triangles and what they make up: each row is filled, from the left, with pieces of one to
        three triangles' room (n pieces in all; a row's pieces must end with it, else MUSLIN_ERR_RANGE with `at` the
        piece, n where there are too few), and closed at both ends by half-triangles.

        Keywords: the members of QuiltSixtySpec, over those of spec.

        muslin_quilt_sixty() in muslin/quilt.h. Since 1.0.
        """
        wish = merged(QuiltSixtySpec, spec, cells=cells, rows=rows, height=height, end_fabric=end_fabric, first=first)
        pieces_, n_ = rows_of(QuiltSixtyPieceSpec, pieces, "pieces")
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_sixty", self._open(), ctypes.byref(wish), pieces_,
                     ctypes.sizeof(structs.muslin_quilt_sixty_piece_spec), n_, ctypes.byref(out_))
        return out_.value

    def id(self, sort: Sort, number: int) -> Id:
        """The id of the fabric, measure or node (sort, enum muslin_sort) with this number, 1 .. as many as there are:
        what muslin_id_number() says of it.

        muslin_quilt_id() in muslin/quilt.h. Since 1.0.
        """
        out_ = ctypes.c_int64()
        call_telling("muslin_quilt_id", self._open(), whole(sort, "sort", 32), whole(number, "number"),
                     ctypes.byref(out_))
        return out_.value

    def read_fabric(self, fabric: Id) -> QuiltFabricSpec:
        """A fabric, but for its name, which muslin_quilt_name() tells.

        muslin_quilt_read_fabric() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_fabric_spec)
        call_telling("muslin_quilt_read_fabric", self._open(), whole(fabric, "fabric"), ctypes.byref(out_))
        return QuiltFabricSpec._read(out_)

    def read_measure(self, measure: Id) -> TreeMeasure:
        """What a measure is, but for its name.

        muslin_quilt_read_measure() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_tree_measure)
        call_telling("muslin_quilt_read_measure", self._open(), whole(measure, "measure"), ctypes.byref(out_))
        return TreeMeasure._read(out_)

    def read_terms(self, measure: Id) -> List[QuiltSumSpec]:
        """The terms of a sum, in the order in which they were given: ask, then fill.

        muslin_quilt_read_terms() in muslin/quilt.h. Since 1.0.
        """
        return asked("muslin_quilt_read_terms", structs.muslin_quilt_sum_spec, QuiltSumSpec._read, self._open(),
                     whole(measure, "measure"))

    def node(self, node: Id) -> Node:
        """What a node is.

        muslin_quilt_node() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_node)
        call_telling("muslin_quilt_node", self._open(), whole(node, "node"), ctypes.byref(out_))
        return Node._read(out_)

    def children(self, node: Id) -> List[Id]:
        """The nodes that a node is made of, in the order in which they were given (a pinwheel: centre, top, right,
        bottom, left), repeats repeated: ask, then fill.

        muslin_quilt_children() in muslin/quilt.h. Since 1.0.
        """
        return asked_numbers("muslin_quilt_children", ctypes.c_int64, self._open(), whole(node, "node"))

    def read_patch(self, node: Id) -> QuiltPatchSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_patch() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_patch_spec)
        call_telling("muslin_quilt_read_patch", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltPatchSpec._read(out_)

    def read_unit(self, node: Id) -> QuiltUnitSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_unit() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_unit_spec)
        call_telling("muslin_quilt_read_unit", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltUnitSpec._read(out_)

    def read_join(self, node: Id) -> QuiltJoinSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_join() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_join_spec)
        call_telling("muslin_quilt_read_join", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltJoinSpec._read(out_)

    def read_trim(self, node: Id) -> QuiltTrimSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_trim() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_trim_spec)
        call_telling("muslin_quilt_read_trim", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltTrimSpec._read(out_)

    def read_pinwheel(self, node: Id) -> QuiltPinwheelSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_pinwheel() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_pinwheel_spec)
        call_telling("muslin_quilt_read_pinwheel", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltPinwheelSpec._read(out_)

    def read_set_in(self, node: Id) -> QuiltSetInSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_set_in() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_set_in_spec)
        call_telling("muslin_quilt_read_set_in", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltSetInSpec._read(out_)

    def read_diagonal(self, node: Id) -> QuiltDiagonalSpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_diagonal() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_diagonal_spec)
        call_telling("muslin_quilt_read_diagonal", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltDiagonalSpec._read(out_)

    def read_sixty(self, node: Id) -> QuiltSixtySpec:
        """What a node was made with: each of these reads one kind.

        muslin_quilt_read_sixty() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_quilt_sixty_spec)
        call_telling("muslin_quilt_read_sixty", self._open(), whole(node, "node"), ctypes.byref(out_))
        return QuiltSixtySpec._read(out_)

    def read_sixty_pieces(self, node: Id) -> List[QuiltSixtyPieceSpec]:
        """The pieces of 60 degree rows, from the left, row by row: ask, then fill.

        muslin_quilt_read_sixty_pieces() in muslin/quilt.h. Since 1.0.
        """
        return asked("muslin_quilt_read_sixty_pieces", structs.muslin_quilt_sixty_piece_spec, QuiltSixtyPieceSpec._read,
                     self._open(), whole(node, "node"))

    def read_shape(self, node: Id) -> QuiltReadShape:
        """The drawing of a shape: ask, then fill.

        muslin_quilt_read_shape() in muslin/quilt.h. Since 1.0.
        """
        width_ = ctypes.c_int64()
        height_ = ctypes.c_int64()
        rows_ = asked("muslin_quilt_read_shape", structs.muslin_corner_spec, CornerSpec._read, self._open(),
                      whole(node, "node"), after=[ctypes.byref(width_), ctypes.byref(height_)])
        return QuiltReadShape(tuple(rows_), width_.value, height_.value)

    def read_fabrics(self, node: Id) -> List[Id]:
        """The fabrics of a unit's regions, or of a shape's pieces: ask, then fill.

        muslin_quilt_read_fabrics() in muslin/quilt.h. Since 1.0.
        """
        return asked_numbers("muslin_quilt_read_fabrics", ctypes.c_int64, self._open(), whole(node, "node"))

    def counts(self) -> PartCounts:
        """How much a quilt holds.

        muslin_quilt_counts() in muslin/quilt.h. Since 1.0.
        """
        out_ = new(structs.muslin_part_counts)
        call_telling("muslin_quilt_counts", self._open(), ctypes.byref(out_))
        return PartCounts._read(out_)


class Solution(Handle):
    """struct muslin_solution, muslin/solution.h"""

    def __init__(self, quilt: Quilt, root: Id, values: Optional[Sequence[SolutionValueSpec]] = None,
                 spec: Optional[SolutionSpec] = None, *, tops: Optional[int] = None, ease: Optional[LengthLike] = None,
                 grid: Optional[LengthLike] = None, grid_tolerance: Optional[LengthLike] = None,
                 half_addition: Optional[LengthLike] = None, quarter_addition: Optional[LengthLike] = None,
                 trim_room: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                 resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                 fold_clear: Optional[LengthLike] = None, policy: Optional[AllowancePolicy] = None,
                 tip: Optional[Tip] = None, direction: Optional[Direction] = None,
                 strip_piecing: Optional[StripPiecing] = None, from_one_end: Optional[bool] = None) -> None:
        """Solves the tree under `root`, with n values (0 or more; the last one of an id counts) in place of those that
        measures and fabrics have.

        Keywords: the members of SolutionSpec, over those of spec.

        muslin_solution_create() in muslin/solution.h. Since 1.0.
        """
        wish = merged(SolutionSpec, spec, tops=tops, ease=ease, grid=grid, grid_tolerance=grid_tolerance,
                                          half_addition=half_addition, quarter_addition=quarter_addition,
                                          trim_room=trim_room, end_trim=end_trim, resquare_loss=resquare_loss,
                                          resquare_every=resquare_every, fold_clear=fold_clear, policy=policy, tip=tip,
                                          direction=direction, strip_piecing=strip_piecing, from_one_end=from_one_end)
        values_, n_ = rows_of(SolutionValueSpec, values or (), "values")
        made = ctypes.POINTER(structs.muslin_solution)()
        call_telling("muslin_solution_create", opened(Quilt, quilt, "quilt"), whole(root, "root"), ctypes.byref(wish),
                     values_, ctypes.sizeof(structs.muslin_solution_value_spec), n_, ctypes.byref(ALLOCATOR),
                     ctypes.byref(made))
        self._own("muslin_solution_free", made, quilt)
        self.quilt = quilt

    def size(self, node: Id) -> NodeSize:
        """How large a node is, how many there are and how they lie.

        muslin_solution_size() in muslin/solution.h. Since 1.0.
        """
        out_ = new(structs.muslin_node_size)
        call_telling("muslin_solution_size", self._open(), whole(node, "node"), ctypes.byref(out_))
        return NodeSize._read(out_)

    def value(self, measure: Id) -> Length:
        """The value a measure has in this solution.

        muslin_solution_value() in muslin/solution.h. Since 1.0.
        """
        value_ = ctypes.c_int64()
        call_telling("muslin_solution_value", self._open(), whole(measure, "measure"), ctypes.byref(value_))
        return Length(value_.value)

    def totals(self) -> SolutionTotal:
        """The whole at a glance.

        muslin_solution_totals() in muslin/solution.h. Since 1.0.
        """
        out_ = new(structs.muslin_solution_total)
        call_telling("muslin_solution_totals", self._open(), ctypes.byref(out_))
        return SolutionTotal._read(out_)

    def misfits(self) -> List[Misfit]:
        """Every pair of edges that do not meet, each where it is made (once for equal parts), in the order of the
        nodes.

        muslin_solution_misfits() in muslin/solution.h. Since 1.0.
        """
        return asked("muslin_solution_misfits", structs.muslin_misfit, Misfit._read, self._open())

    def path(self, node: Id) -> List[int]:
        """One way from the root to a node: the child numbers to follow.

        muslin_solution_path() in muslin/solution.h. Since 1.0.
        """
        return asked_numbers("muslin_solution_path", ctypes.c_int64, self._open(), whole(node, "node"))

    def cuts(self) -> List[SolutionCut]:
        """What to cut, by fabric in the order in which they were made, the highest and then the longest first; cuts
        equal in all but counts are one row (templates of one shape only).

        muslin_solution_cuts() in muslin/solution.h. Since 1.0.
        """
        return asked("muslin_solution_cuts", structs.muslin_solution_cut, SolutionCut._read, self._open())

    def cut_nodes(self, row: int) -> List[Id]:
        """The nodes that need a row of the cut list, in their order; of a strip the join.

        muslin_solution_cut_nodes() in muslin/solution.h. Since 1.0.
        """
        return asked_numbers("muslin_solution_cut_nodes", ctypes.c_int64, self._open(), whole(row, "row"))

    def stripsets(self) -> List[Stripset]:
        """Every join that can be strip-pieced: all its children are patches (turned or not) of one finished length with
        the same allowances at its ends, and a set gives at least one segment.

        muslin_solution_stripsets() in muslin/solution.h. Since 1.0.
        """
        return asked("muslin_solution_stripsets", structs.muslin_stripset, Stripset._read, self._open())

    def explain(self, node: Id, axis: Axis) -> List[Term]:
        """The sum that leads to the width (MUSLIN_AXIS_ACROSS) or height (MUSLIN_AXIS_DOWN) of a node: the finished
        size first, then its allowances up to the unfinished size, which is the last row's sum.

        muslin_solution_explain() in muslin/solution.h. Since 1.0.
        """
        return asked("muslin_solution_explain", structs.muslin_term, Term._read, self._open(), whole(node, "node"),
                     whole(axis, "axis", 32))

    def outlines(self, node: Id, stage: Stage) -> Iterator[Outline]:
        """The outlines of the patches under a node, in the order of the tree.

        They are asked for a page at a time, and each has its parts with it.

        muslin_solution_outlines() in muslin/solution.h. Since 1.0.
        """
        return paged("muslin_solution_outlines", structs.muslin_outline, structs.muslin_outline_corner, Outline._read,
                     OutlineCorner._read, "corners", self, whole(node, "node"), whole(stage, "stage", 32))

    def sewing_steps(self) -> List[SewingStep]:
        """The steps, a row each, in the order of their nodes.

        muslin_sewing_steps() in muslin/sewing.h. Since 1.0.
        """
        return asked("muslin_sewing_steps", structs.muslin_sewing_step, SewingStep._read, self._open())

    def sewing_feeds(self, step: int) -> List[SewingFeed]:
        """What goes into one of step `step`: made by earlier steps, or patches, each once, in the order of their first
        use.

        muslin_sewing_feeds() in muslin/sewing.h. Since 1.0.
        """
        return asked("muslin_sewing_feeds", structs.muslin_sewing_feed, SewingFeed._read, self._open(),
                     whole(step, "step"))

    def sewing_totals(self, seam_error: LengthLike, cut_error: LengthLike) -> SewingTotal:
        """All seams, and how far off the whole top may be: with the most seams across it, each off by seam_error and
        each of its pieces' cuts by cut_error (0 .. MUSLIN_SIZE_MAX / 8 each), as muslin_accuracy_row() says; the
        rounding of on-point and 60 degree parts is not in it.

        muslin_sewing_totals() in muslin/sewing.h. Since 1.0.
        """
        out_ = new(structs.muslin_sewing_total)
        call_telling("muslin_sewing_totals", self._open(), ticks_of(seam_error, "seam_error"),
                     ticks_of(cut_error, "cut_error"), ctypes.byref(out_))
        return SewingTotal._read(out_)

    def scatter_touches(self, fabric: Id) -> ScatterTouches:
        """The places of a fabric in a solved top, for muslin_scatter_prints(): its patches in the order of
        muslin_solution_outlines() of the root, and which of them touch along an edge (longer than a corner: than 1/1000
        in), each pair once, in order, with weight 1.

        muslin_scatter_touches() in muslin/scatter.h. Since 1.0.
        """
        places_ = ctypes.c_int64()
        rows_ = asked("muslin_scatter_touches", structs.muslin_touch_spec, TouchSpec._read, self._open(),
                      whole(fabric, "fabric"), ctypes.byref(ALLOCATOR), after=[ctypes.byref(places_)])
        return ScatterTouches(tuple(rows_), places_.value)

    def yardage_pieces(self, fabric: Id, spec: Optional[YardageSpec] = None, *, end_loss: Optional[LengthLike] = None,
                       resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                       straightening: Optional[LengthLike] = None, spare_pieces: Optional[int] = None,
                       work_limit: Optional[int] = None, join_loss: Optional[LengthLike] = None,
                       extra: Optional[LengthLike] = None, step: Optional[LengthLike] = None,
                       shrinkage: Optional[int] = None, extra_share: Optional[int] = None,
                       long_pieces: Optional[LongPieces] = None, least_part: Optional[LengthLike] = None,
                       mitre_extra: Optional[LengthLike] = None, no_panels: Optional[bool] = None,
                       one_height: Optional[bool] = None, own_strips: Optional[bool] = None,
                       stacked: Optional[bool] = None, folded: Optional[bool] = None) -> List[BlankSpec]:
        """The pieces of one fabric as a request, ask-then-fill: rows of the cut list as said above, `label` the row
        there, priority 0.

        Keywords: the members of YardageSpec, over those of spec.

        muslin_yardage_pieces() in muslin/yardage.h. Since 1.0.
        """
        wish = merged(YardageSpec, spec, end_loss=end_loss, resquare_loss=resquare_loss, resquare_every=resquare_every,
                                         straightening=straightening, spare_pieces=spare_pieces, work_limit=work_limit,
                                         join_loss=join_loss, extra=extra, step=step, shrinkage=shrinkage,
                                         extra_share=extra_share, long_pieces=long_pieces, least_part=least_part,
                                         mitre_extra=mitre_extra, no_panels=no_panels, one_height=one_height,
                                         own_strips=own_strips, stacked=stacked, folded=folded)
        return asked("muslin_yardage_pieces", structs.muslin_blank_spec, BlankSpec._read, self._open(),
                     whole(fabric, "fabric"), ctypes.byref(wish))


class Pressing(Handle):
    """struct muslin_pressing, muslin/pressing.h"""

    def __init__(self, solution: Solution, progress: Optional[Progress] = None, spec: Optional[PressingSpec] = None, *,
                 work_limit: Optional[int] = None, prefer: Optional[Prefer] = None,
                 units: Optional[bool] = None) -> None:
        """A plan for the whole solution, which it reads and which must outlive it.

        Keywords: the members of PressingSpec, over those of spec.

        muslin_pressing_create() in muslin/pressing.h. Since 1.0.
        """
        wish = merged(PressingSpec, spec, work_limit=work_limit, prefer=prefer, units=units)
        with Told(structs.muslin_progress, progress) as progress_:
            made = ctypes.POINTER(structs.muslin_pressing)()
            call_telling("muslin_pressing_create", opened(Solution, solution, "solution"), ctypes.byref(wish),
                         ctypes.byref(ALLOCATOR), progress_.function, None, ctypes.byref(made))
            self._own("muslin_pressing_free", made, solution)
            self.solution = solution

    def totals(self) -> PressingTotal:
        """How well it nests.

        muslin_pressing_totals() in muslin/pressing.h. Since 1.0.
        """
        out_ = new(structs.muslin_pressing_total)
        call_telling("muslin_pressing_totals", self._open(), ctypes.byref(out_))
        return PressingTotal._read(out_)

    def seams(self) -> List[PressingSeam]:
        """Every seam of every different node, in their order.

        muslin_pressing_seams() in muslin/pressing.h. Since 1.0.
        """
        return asked("muslin_pressing_seams", structs.muslin_pressing_seam, PressingSeam._read, self._open())

    def children(self) -> List[PressingChild]:
        """Which places take a child the other way: a row for each child with seams, in the order of the nodes.

        muslin_pressing_children() in muslin/pressing.h. Since 1.0.
        """
        return asked("muslin_pressing_children", structs.muslin_pressing_child, PressingChild._read, self._open())

    def exceptions(self) -> List[PressingException]:
        """The meetings that do not nest, in the order of the nodes: press one of the two seams open there, or accept
        the lump.

        muslin_pressing_exceptions() in muslin/pressing.h. Since 1.0.
        """
        return asked("muslin_pressing_exceptions", structs.muslin_pressing_exception, PressingException._read,
                     self._open())


class Cutplan(Handle):
    """struct muslin_cutplan, muslin/cutplan.h"""

    def __init__(self, pieces: Sequence[BlankSpec], stock: Optional[Sequence[CutplanStockSpec]] = None,
                 progress: Optional[Progress] = None, spec: Optional[CutplanSpec] = None, *,
                 usable_width: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                 resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                 straightening: Optional[LengthLike] = None, spare_pieces: Optional[int] = None,
                 work_limit: Optional[int] = None, print: Optional[Print] = None, no_panels: Optional[bool] = None,
                 one_height: Optional[bool] = None, own_strips: Optional[bool] = None, stacked: Optional[bool] = None,
                 first_cut_across: Optional[bool] = None, folded: Optional[bool] = None,
                 by_priority: Optional[bool] = None) -> None:
        """A plan for a list of pieces, n rows of muslin_blank_spec, from the bolt (stock_n 0), or from stock_n rows of
        muslin_cutplan_stock_spec.

        Keywords: the members of CutplanSpec, over those of spec.

        muslin_cutplan_create() in muslin/cutplan.h. Since 1.0.
        """
        wish = merged(CutplanSpec, spec, usable_width=usable_width, end_loss=end_loss, resquare_loss=resquare_loss,
                                         resquare_every=resquare_every, straightening=straightening,
                                         spare_pieces=spare_pieces, work_limit=work_limit, print=print,
                                         no_panels=no_panels, one_height=one_height, own_strips=own_strips,
                                         stacked=stacked, first_cut_across=first_cut_across, folded=folded,
                                         by_priority=by_priority)
        pieces_, n_ = rows_of(BlankSpec, pieces, "pieces")
        stock_, stock_n_ = rows_of(CutplanStockSpec, stock or (), "stock")
        with Told(structs.muslin_progress, progress) as progress_:
            made = ctypes.POINTER(structs.muslin_cutplan)()
            call_telling("muslin_cutplan_create", ctypes.byref(wish), pieces_, ctypes.sizeof(structs.muslin_blank_spec),
                         n_, stock_, ctypes.sizeof(structs.muslin_cutplan_stock_spec), stock_n_,
                         ctypes.byref(ALLOCATOR), progress_.function, None, ctypes.byref(made))
            self._own("muslin_cutplan_free", made)

    def totals(self) -> CutplanTotal:
        """Length or cost, the bound and counts.

        muslin_cutplan_totals() in muslin/cutplan.h. Since 1.0.
        """
        out_ = new(structs.muslin_cutplan_total)
        call_telling("muslin_cutplan_totals", self._open(), ctypes.byref(out_))
        return CutplanTotal._read(out_)

    def strips(self) -> List[CutplanStrip]:
        """The strips in the order of cutting: of a bolt panels first, then the highest strips, equal heights together;
        what a panel or piece of stock holds follows it.

        muslin_cutplan_strips() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_strips", structs.muslin_cutplan_strip, CutplanStrip._read, self._open())

    def places(self) -> List[CutplanPlace]:
        """What each strip holds, from the left, place by place.

        muslin_cutplan_places() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_places", structs.muslin_cutplan_place, CutplanPlace._read, self._open())

    def blanks(self, first: int) -> List[CutplanBlank]:
        """Each piece by itself, as a rectangle on its bolt or piece of stock, for drawing: from number `first` on, in
        the order of cutting.

        muslin_cutplan_blanks() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_blanks", structs.muslin_cutplan_blank, CutplanBlank._read, self._open(),
                     whole(first, "first"))

    def left_overs(self, least_side: LengthLike) -> List[CutplanLeftOver]:
        """Rectangles of cloth that are left, at least `least_side` and 1 both ways, the largest first: ends of strips,
        the rest of panels and of stock, what lies above slit pieces that are shorter than their panel, and of FOLDED
        cloth one layer beside a JOINED strip that goes round the fold and is not whole.

        muslin_cutplan_left_overs() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_left_overs", structs.muslin_cutplan_left_over, CutplanLeftOver._read, self._open(),
                     ticks_of(least_side, "least_side"))

    def pieces(self) -> List[CutplanPiece]:
        """What becomes of each row of pieces.

        muslin_cutplan_pieces() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_pieces", structs.muslin_cutplan_piece, CutplanPiece._read, self._open())

    def stock(self) -> List[CutplanStockUsed]:
        """How many of each row of stock are used; no rows from a bolt.

        muslin_cutplan_stock() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_stock", structs.muslin_cutplan_stock_used, CutplanStockUsed._read, self._open())

    def widths(self, least_width: LengthLike, most_width: LengthLike, widths: int,
               progress: Optional[Progress] = None) -> List[CutplanWidth]:
        """The same request at other usable widths of a bolt, so many from least to most in equal steps: for readers
        whose cloth differs.

        muslin_cutplan_widths() in muslin/cutplan.h. Since 1.0.
        """
        with Told(structs.muslin_progress, progress) as progress_:
            return asked("muslin_cutplan_widths", structs.muslin_cutplan_width, CutplanWidth._read, self._open(),
                         ticks_of(least_width, "least_width"), ticks_of(most_width, "most_width"),
                         whole(widths, "widths"), progress_.function, None)

    def narrowest(self) -> Length:
        """The narrowest usable width at which this plan can be cut as it is: its strips stay, none loses a piece.

        muslin_cutplan_narrowest() in muslin/cutplan.h. Since 1.0.
        """
        width_ = ctypes.c_int64()
        call_telling("muslin_cutplan_narrowest", self._open(), ctypes.byref(width_))
        return Length(width_.value)

    def sizes(self) -> List[CutplanSize]:
        """What the plan was made for, the highest first: sizes that are alike merged, joined pieces taken apart, what
        is missing left out.

        muslin_cutplan_sizes() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_sizes", structs.muslin_cutplan_size, CutplanSize._read, self._open())

    def ways(self) -> List[CutplanWay]:
        """The ways to come by cloth that a plan may use, the dearest first, a panel before a strip as high.

        muslin_cutplan_ways() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_ways", structs.muslin_cutplan_way, CutplanWay._read, self._open())

    def cases(self) -> List[CutplanCase]:
        """Cases of the proof: each either is split into two that leave nothing out, or is empty, as trying all ways to
        pack its strips shows, or has a bound not below the plan's.

        muslin_cutplan_cases() in muslin/cutplan.h. Since 1.0.
        """
        return asked("muslin_cutplan_cases", structs.muslin_cutplan_case, CutplanCase._read, self._open())

    def worths(self, of_case: int) -> CutplanWorths:
        """The worths that prove a case, one for each size, each condition on the way to the case, and each stock.

        muslin_cutplan_worths() in muslin/cutplan.h. Since 1.0.
        """
        scale_ = ctypes.c_int64()
        rows_ = asked("muslin_cutplan_worths", structs.muslin_cutplan_worth, CutplanWorth._read, self._open(),
                      whole(of_case, "of_case"), after=[ctypes.byref(scale_)])
        return CutplanWorths(tuple(rows_), scale_.value)

    def check(self, progress: Optional[Progress] = None) -> CutplanChecked:
        """Proves plan and bound anew, in whole numbers, by code of its own that shares only the rules of cutting with
        the search.

        muslin_cutplan_check() in muslin/cutplan.h. Since 1.0.
        """
        with Told(structs.muslin_progress, progress) as progress_:
            out_ = new(structs.muslin_cutplan_checked)
            call_telling("muslin_cutplan_check", self._open(), progress_.function, None, ctypes.byref(out_))
            return CutplanChecked._read(out_)


class Yardage(Handle):
    """struct muslin_yardage, muslin/yardage.h"""

    def __init__(self, solution: Solution, cuts: Sequence[ExtraCutSpec], progress: Optional[Progress] = None,
                 spec: Optional[YardageSpec] = None, *, end_loss: Optional[LengthLike] = None,
                 resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                 straightening: Optional[LengthLike] = None, spare_pieces: Optional[int] = None,
                 work_limit: Optional[int] = None, join_loss: Optional[LengthLike] = None,
                 extra: Optional[LengthLike] = None, step: Optional[LengthLike] = None, shrinkage: Optional[int] = None,
                 extra_share: Optional[int] = None, long_pieces: Optional[LongPieces] = None,
                 least_part: Optional[LengthLike] = None, mitre_extra: Optional[LengthLike] = None,
                 no_panels: Optional[bool] = None, one_height: Optional[bool] = None, own_strips: Optional[bool] = None,
                 stacked: Optional[bool] = None, folded: Optional[bool] = None) -> None:
        """The whole way, for every fabric of which something is cut, with n rows of extra cuts.

        Keywords: the members of YardageSpec, over those of spec.

        muslin_yardage_create() in muslin/yardage.h. Since 1.0.
        """
        wish = merged(YardageSpec, spec, end_loss=end_loss, resquare_loss=resquare_loss, resquare_every=resquare_every,
                                         straightening=straightening, spare_pieces=spare_pieces, work_limit=work_limit,
                                         join_loss=join_loss, extra=extra, step=step, shrinkage=shrinkage,
                                         extra_share=extra_share, long_pieces=long_pieces, least_part=least_part,
                                         mitre_extra=mitre_extra, no_panels=no_panels, one_height=one_height,
                                         own_strips=own_strips, stacked=stacked, folded=folded)
        cuts_, n_ = rows_of(ExtraCutSpec, cuts, "cuts")
        with Told(structs.muslin_progress, progress) as progress_:
            made = ctypes.POINTER(structs.muslin_yardage)()
            call_telling("muslin_yardage_create", opened(Solution, solution, "solution"), ctypes.byref(wish), cuts_,
                         ctypes.sizeof(structs.muslin_extra_cut_spec), n_, ctypes.byref(ALLOCATOR), progress_.function,
                         None, ctypes.byref(made))
            self._own("muslin_yardage_free", made, solution)
            self.solution = solution

    def fabrics(self) -> List[FabricYardage]:
        """A row for each fabric of which something is cut, in the order in which the fabrics were made.

        muslin_yardage_fabrics() in muslin/yardage.h. Since 1.0.
        """
        return asked("muslin_yardage_fabrics", structs.muslin_fabric_yardage, FabricYardage._read, self._open())

    def plan(self, row: int) -> Cutplan:
        """The plan of a row of muslin_yardage_fabrics(); it lives as long as the yardage, and is not freed by itself.

        muslin_yardage_plan() in muslin/yardage.h. Since 1.0.
        """
        out_ = ctypes.POINTER(structs.muslin_cutplan)()
        call_telling("muslin_yardage_plan", self._open(), whole(row, "row"), ctypes.byref(out_))
        return Cutplan._lent(out_, self)
