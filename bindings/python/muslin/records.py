# SPDX-License-Identifier: MIT
"""Specs, which are asked with, and results, which are answered.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
from dataclasses import dataclass
from typing import Any, Optional, Tuple

from . import _api as structs
from ._length import Length, LengthLike, put_length
from ._records import Spec, warnings_in
from ._values import Id, put, put_flag, put_sign
from .constants import (BACKING_ROUND_PANELS, BATTING_FIXED, BED_FOOT_GIVEN, BIAS_BLUNT_ENDS, BLANK_MAY_TURN,
                        BORDER_LENGTHWISE, CLOTH_MAY_TURN, CUTLIST_PIECE_MAY_TURN, CUTPLAN_BY_PRIORITY,
                        CUTPLAN_FIRST_CUT_ACROSS, CUTPLAN_FOLDED, CUTPLAN_NO_PANELS, CUTPLAN_ONE_HEIGHT,
                        CUTPLAN_OWN_STRIPS, CUTPLAN_STACKED, EDGE_PRINTS_TURNS_HALF, EDGE_PRINTS_TURNS_QUARTER,
                        FIT_ACROSS_FRAME, FIT_ALLOW_FRAMED, FIT_ALLOW_ON_POINT, FIT_ALLOW_SASHED, FIT_ALLOW_STRAIGHT,
                        FORMAT_BARE, FORMAT_UNICODE, LOGCABIN_GIVEN_CUT, MEDALLION_EQUAL_COPING, MOTIF_ANY_ACROSS,
                        MOTIF_ANY_START, QUILT_JOIN_KEEPS_ORDER, QUILT_SASHED_CORNERSTONES, QUILT_SASHED_FRAME,
                        SETTING_LINE_FRAME, SETTING_POINT_DIAGONAL_FIRST, SETTING_SASHED_CORNERSTONES,
                        SETTING_SASHED_FRAME, STACK_ANY_START, THREAD_READY_BOBBINS, YIELD_FROM_ONE_END,
                        AllowancePolicy, Axis, BackingLayout, BlankKind, BorderStyle, Care, CornerTip, CostKind, Curve,
                        CutAgain, CutShape, CutSource, CutplanFault, CutplanStopped, CutplanStripKind, Direction, Drop,
                        Edge, FirstBlock, FitKind, FitRank, Fold, FootCorner, FrameLine, FramePiece, GoverningSource,
                        Grain, Hand, Join, LengthUnit, LogHalf, LogOrder, LogTurn, LongPieces, MeasureKind, MisfitKind,
                        Nesting, NodeKind, OtherWay, PanelRole, Parity, PointEdge, PointLayout, Prefer, Preferred,
                        Press, Print, QuiltingPattern, QuiltingStart, RoundCorner, RoundKind, SashKind, SeamPress,
                        SetPressing, SewingKind, Side, SixtyFirst, Stage, StockKind, StripPiecing, Style, TermKind,
                        ThreadMethod, Tip, Towards, Turning, UnitKind, UnitMethod, UnitStepKind, Warning)

__all__ = ["RoundingSpec", "Rounded", "ParseSpec", "Parsed", "FormatSpec", "SeamSpec", "PieceSpec", "Piece", "SewnRow",
           "Calibration", "CarryOnSpec", "AccuracyRowSpec", "AccuracyRowErrors", "AccuracyTopSpec", "AccuracyTopErrors",
           "AccuracyMeetSpec", "AccuracyMeeting", "WashSpec", "WashChange", "ShrinkageSpec", "SizeToMake", "WashedSize",
           "Governing", "PrewashSpec", "Prewash", "PurchaseSpec", "Purchase", "ClothSpec", "ClothPieces", "StripsSpec",
           "Strips", "StockSpec", "StockYield", "MotifSpec", "Motif", "MotifYield", "StackSpec", "Stack", "Reference",
           "YieldSpec", "Yield", "NeedSpec", "Need", "HarvestSpec", "Harvest", "StripsetPrint", "CutlistPieceSpec",
           "CutlistRow", "CutlistSpec", "CutlistYardage", "CutlistStock", "CutlistPart", "CutlistLists", "Substitution",
           "CornerSpec", "Shape", "TemplateCorner", "ShapePieceSpec", "ShapePiece", "QuarterCircleSpec",
           "QuarterCircle", "RegularPolygon", "UnitSpec", "UnitPlan", "UnitPiece", "UnitStockSpec", "UnitYield",
           "UnitCorner", "UnitStep", "SettingSpec", "Setting", "BlockSpec", "Block", "RunSpec", "Run", "BorderSpec",
           "Border", "SettingSashedSpec", "SettingSashedPlan", "SashPiece", "SettingAlternateSpec",
           "SettingAlternatePlan", "SettingLineSpec", "SettingLinePlan", "SettingLinePlace", "SettingPointSpec",
           "SettingPointPlan", "LogcabinSpec", "Logcabin", "LogcabinLog", "LogcabinStrip", "LogcabinFitSpec",
           "LogcabinFit", "FrameSpec", "Frame", "FrameCorner", "MedallionSpec", "MedallionRow", "Medallion",
           "RepeatSpec", "Repeat", "CommonRepeat", "PointBorderSpec", "PointBorder", "BedSpec", "Bed", "BedCoveredSpec",
           "BedCover", "FitSpec", "Fit", "FitAcrossSpec", "FitAcrossBlocks", "FitTrianglesSpec", "FitTriangleRows",
           "FitRescaleSpec", "FitRescaleRow", "FitRescaled", "BindingWidthSpec", "BindingWidth", "BindingSpec",
           "Binding", "BiasSpec", "Bias", "BattingSpec", "Batting", "BackingSpec", "Backing", "Panel", "HangingSpec",
           "Hanging", "StripquiltSpec", "Stripquilt", "BlockGroup", "PiecingSpec", "Piecing", "ThreadSpec", "Thread",
           "QuiltingSpec", "Quilting", "WeightSpec", "Weight", "CostSpec", "Cost", "QuiltSpec", "QuiltFabricSpec",
           "QuiltSumSpec", "QuiltPatchSpec", "QuiltUnitSpec", "QuiltJoinSpec", "QuiltTrimSpec", "QuiltPinwheelSpec",
           "QuiltSetInSpec", "QuiltLogSpec", "QuiltSurroundSpec", "QuiltSashedSpec", "QuiltDiagonalSpec",
           "QuiltSixtySpec", "QuiltSixtyPieceSpec", "TreeMeasure", "Node", "PartCounts", "SolutionSpec",
           "SolutionValueSpec", "NodeSize", "SolutionTotal", "Misfit", "SolutionCut", "Stripset", "Term", "Outline",
           "OutlineCorner", "PressingSpec", "PressingTotal", "PressingSeam", "PressingChild", "PressingException",
           "SewingStep", "SewingFeed", "SewingTotal", "ScatterSpec", "TouchSpec", "Scattered", "ScatterBlocksSpec",
           "EdgePrintsSpec", "PlacedBlock", "BlankSpec", "CutplanStockSpec", "CutplanSpec", "CutplanTotal",
           "CutplanStrip", "CutplanPlace", "CutplanBlank", "CutplanLeftOver", "CutplanPiece", "CutplanStockUsed",
           "CutplanWidth", "CutplanSize", "CutplanWay", "CutplanCase", "CutplanWorth", "CutplanChecked", "YardageSpec",
           "ExtraCutSpec", "FabricYardage", "StockSize", "StripsetShortest", "StripsetPrints", "ShapeFoundation",
           "UnitRecipeAt", "MedallionPlan", "FitRescale", "StripquiltPressing", "StitchCount", "QuiltSeam",
           "QuiltReadShape", "ScatterPrints", "ScatterBlocks", "ScatterSets", "ScatterTouches", "CutplanWorths"]


@dataclass(frozen=True)
class RoundingSpec(Spec):
    """struct muslin_rounding_spec, muslin/length.h

    grid: in ticks, 1 .. MUSLIN_SIZE_MAX (initially 1 ticks)
    tolerance: 0 .. grid - 1 (initially 0)
    direction: enum muslin_direction (initially Direction.NEAREST)
    """

    _kind = structs.muslin_rounding_spec
    _init = "muslin_rounding_spec_init"

    grid: Optional[LengthLike] = None
    tolerance: Optional[LengthLike] = None
    direction: Optional[Direction] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "grid", self.grid)
        put_length(struct, "tolerance", self.tolerance)
        put(struct, "direction", self.direction)


@dataclass(frozen=True)
class Rounded:
    """struct muslin_rounded, muslin/length.h

    value: the grid point
    error: value - exact value, rounded down to a tick
    exact: 1 when nothing was lost by rounding
    on_tick: 1 when the unrounded value is a whole number of ticks
    """

    value: Length
    error: Length
    exact: bool
    on_tick: bool

    @classmethod
    def _read(cls, struct: Any) -> "Rounded":
        return cls(value=Length(struct.value), error=Length(struct.error), exact=bool(struct.exact),
                   on_tick=bool(struct.on_tick))


@dataclass(frozen=True)
class ParseSpec(Spec):
    """struct muslin_parse_spec, muslin/length.h

    default_unit: enum muslin_length_unit, for a number that names none (initially LengthUnit.INCH)
    decimal_sign: '.' or ',' (initially '.')
    """

    _kind = structs.muslin_parse_spec
    _init = "muslin_parse_spec_init"

    default_unit: Optional[LengthUnit] = None
    decimal_sign: Optional[str] = None

    def _put(self, struct: Any) -> None:
        put(struct, "default_unit", self.default_unit)
        put_sign(struct, "decimal_sign", self.decimal_sign)


@dataclass(frozen=True)
class Parsed:
    """struct muslin_parsed, muslin/length.h

    value: the length
    exact: 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards
    unit: enum muslin_length_unit: of the last part, named or the default
    """

    value: Length
    exact: bool
    unit: LengthUnit

    @classmethod
    def _read(cls, struct: Any) -> "Parsed":
        return cls(value=Length(struct.value), exact=bool(struct.exact), unit=LengthUnit(struct.unit))


@dataclass(frozen=True)
class FormatSpec(Spec):
    """struct muslin_format_spec, muslin/length.h

    style: enum muslin_style (initially Style.INCH_FRACTION)
    denominator: of fraction styles, 1 .. 64; shown in lowest terms (initially 64)
    decimals: of decimal styles, 0 .. 6; trailing zeros are not shown (initially 4)
    decimal_sign: '.' or ',' (initially '.')
    direction: enum muslin_direction, for a length off the style's grid (initially Direction.NEAREST)
    unicode: the flag MUSLIN_FORMAT_UNICODE (initially False)
    bare: the flag MUSLIN_FORMAT_BARE (initially False)
    """

    _kind = structs.muslin_format_spec
    _init = "muslin_format_spec_init"

    style: Optional[Style] = None
    denominator: Optional[int] = None
    decimals: Optional[int] = None
    decimal_sign: Optional[str] = None
    direction: Optional[Direction] = None
    unicode: Optional[bool] = None
    bare: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "style", self.style)
        put(struct, "denominator", self.denominator)
        put(struct, "decimals", self.decimals)
        put_sign(struct, "decimal_sign", self.decimal_sign)
        put(struct, "direction", self.direction)
        put_flag(struct, FORMAT_UNICODE, self.unicode)
        put_flag(struct, FORMAT_BARE, self.bare)


@dataclass(frozen=True)
class SeamSpec(Spec):
    """struct muslin_seam_spec, muslin/seam.h

    allowance: s, per edge, as stitched; 0 .. MUSLIN_SIZE_MAX / 8 (initially 1/4 in)
    take_up: u, per seam; 0 .. MUSLIN_SIZE_MAX / 8 (initially 0)
    """

    _kind = structs.muslin_seam_spec
    _init = "muslin_seam_spec_init"

    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class PieceSpec(Spec):
    """struct muslin_piece_spec, muslin/seam.h

    finished_width: 0 .. MUSLIN_SIZE_MAX (initially 0)
    finished_height: 0 .. MUSLIN_SIZE_MAX (initially 0)
    left: allowance on each edge, 0 .. MUSLIN_SIZE_MAX / 8; 0: on the fold or left raw (initially 1/4 in)
    right: (initially 1/4 in)
    top: (initially 1/4 in)
    bottom: (initially 1/4 in)
    take_up: u per seam; each edge with an allowance bears half of it (initially 0)
    """

    _kind = structs.muslin_piece_spec
    _init = "muslin_piece_spec_init"

    finished_width: Optional[LengthLike] = None
    finished_height: Optional[LengthLike] = None
    left: Optional[LengthLike] = None
    right: Optional[LengthLike] = None
    top: Optional[LengthLike] = None
    bottom: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "finished_width", self.finished_width)
        put_length(struct, "finished_height", self.finished_height)
        put_length(struct, "left", self.left)
        put_length(struct, "right", self.right)
        put_length(struct, "top", self.top)
        put_length(struct, "bottom", self.bottom)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class Piece:
    """struct muslin_piece, muslin/seam.h

    cut_width: finished + left + right + u/2 for each of the two that is sewn, in all up to a tick
    cut_height: the same with top and bottom
    cut_area: doubled square ticks, below 2^62
    finished_area: doubled square ticks
    seam_share: ppm of the cut piece that disappears into seams, nearest; 0 for a cut area of 0
    """

    cut_width: Length
    cut_height: Length
    cut_area: int
    finished_area: int
    seam_share: int

    @classmethod
    def _read(cls, struct: Any) -> "Piece":
        return cls(cut_width=Length(struct.cut_width), cut_height=Length(struct.cut_height),
                   cut_area=int(struct.cut_area), finished_area=int(struct.finished_area),
                   seam_share=int(struct.seam_share))


@dataclass(frozen=True)
class SewnRow:
    """struct muslin_sewn_row, muslin/seam.h

    pieces: in the row
    seams: pieces - 1
    cut_total: sum of the cut sizes
    eaten: what the inner seams take: seams x (2 s + u)
    unfinished: cut_total - eaten
    finished: unfinished - 2 s - u
    seam_share: ppm of cut_total that is not seen in the end: inner and outer seams, nearest
    """

    pieces: int
    seams: int
    cut_total: Length
    eaten: Length
    unfinished: Length
    finished: Length
    seam_share: int

    @classmethod
    def _read(cls, struct: Any) -> "SewnRow":
        return cls(pieces=int(struct.pieces), seams=int(struct.seams), cut_total=Length(struct.cut_total),
                   eaten=Length(struct.eaten), unfinished=Length(struct.unfinished), finished=Length(struct.finished),
                   seam_share=int(struct.seam_share))


@dataclass(frozen=True)
class Calibration:
    """struct muslin_calibration, muslin/seam.h

    seams: n - 1
    planned: unfinished width with the stitched allowance and no take-up
    shortfall: planned - measured; negative when the set came out wide
    per_seam_numerator: shortfall over seams: the take-up u, exact as a fraction ...
    per_seam_denominator: ... over this
    take_up: ... and rounded to the nearest tick, ties up; negative when wide
    effective_numerator: e = (sum of cuts - measured) / (2 seams), exact ...
    effective_denominator: ... over this
    effective_allowance: ... and rounded to the nearest tick, ties up
    sew_at: the cure: stitch at s - u/2, nearest tick, ties up; then the plan is met
    """

    seams: int
    planned: Length
    shortfall: Length
    per_seam_numerator: Length
    per_seam_denominator: int
    take_up: Length
    effective_numerator: Length
    effective_denominator: int
    effective_allowance: Length
    sew_at: Length

    @classmethod
    def _read(cls, struct: Any) -> "Calibration":
        return cls(seams=int(struct.seams), planned=Length(struct.planned), shortfall=Length(struct.shortfall),
                   per_seam_numerator=Length(struct.per_seam_numerator),
                   per_seam_denominator=int(struct.per_seam_denominator), take_up=Length(struct.take_up),
                   effective_numerator=Length(struct.effective_numerator),
                   effective_denominator=int(struct.effective_denominator),
                   effective_allowance=Length(struct.effective_allowance), sew_at=Length(struct.sew_at))


@dataclass(frozen=True)
class CarryOnSpec(Spec):
    """struct muslin_carry_on_spec, muslin/seam.h

    cut_total: T, sum of the strips' cut widths; 1 .. MUSLIN_SIZE_MAX (initially 0)
    strips: n, 2 .. MUSLIN_COUNT_MAX (initially 2)
    measured: M, unfinished width of the sewn set; 1 .. T (initially 0)
    later_cut: c, the later piece, as the plan had it; 0 .. MUSLIN_SIZE_MAX (initially 0)
    allowance: s of the plan; 0 .. MUSLIN_SIZE_MAX / 8 (initially 1/4 in)
    take_up: u of the plan; 0 .. MUSLIN_SIZE_MAX / 8 (initially 0)
    """

    _kind = structs.muslin_carry_on_spec
    _init = "muslin_carry_on_spec_init"

    cut_total: Optional[LengthLike] = None
    strips: Optional[int] = None
    measured: Optional[LengthLike] = None
    later_cut: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "cut_total", self.cut_total)
        put(struct, "strips", self.strips)
        put_length(struct, "measured", self.measured)
        put_length(struct, "later_cut", self.later_cut)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class AccuracyRowSpec(Spec):
    """struct muslin_accuracy_row_spec, muslin/accuracy.h

    pieces: side by side (initially 1)
    seams: that the measure crosses, 0 .. MUSLIN_COUNT_MAX; pieces - 1 from raw edge to raw edge (initially 0)
    seam_error: e, of one seam (initially 0)
    cut_error: c, of one cut edge (initially 0)
    """

    _kind = structs.muslin_accuracy_row_spec
    _init = "muslin_accuracy_row_spec_init"

    pieces: Optional[int] = None
    seams: Optional[int] = None
    seam_error: Optional[LengthLike] = None
    cut_error: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "pieces", self.pieces)
        put(struct, "seams", self.seams)
        put_length(struct, "seam_error", self.seam_error)
        put_length(struct, "cut_error", self.cut_error)


@dataclass(frozen=True)
class AccuracyRowErrors:
    """struct muslin_accuracy_row_errors, muslin/accuracy.h

    cuts: 2 x pieces
    from_seams: seams x e: what the seams bring to the worst case
    from_cuts: cuts x c
    worst: the sum of the two
    likely: sqrt(seams x e^2 + cuts x c^2), up to a tick
    """

    cuts: int
    from_seams: Length
    from_cuts: Length
    worst: Length
    likely: Length

    @classmethod
    def _read(cls, struct: Any) -> "AccuracyRowErrors":
        return cls(cuts=int(struct.cuts), from_seams=Length(struct.from_seams), from_cuts=Length(struct.from_cuts),
                   worst=Length(struct.worst), likely=Length(struct.likely))


@dataclass(frozen=True)
class AccuracyTopSpec(Spec):
    """struct muslin_accuracy_top_spec, muslin/accuracy.h

    pieces_across: a block (initially 1)
    pieces_down: a block (initially 1)
    columns: of blocks (initially 1)
    rows: of blocks (initially 1)
    seam_error: e, of one seam (initially 0)
    cut_error: c, of one cut edge (initially 0)
    """

    _kind = structs.muslin_accuracy_top_spec
    _init = "muslin_accuracy_top_spec_init"

    pieces_across: Optional[int] = None
    pieces_down: Optional[int] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    seam_error: Optional[LengthLike] = None
    cut_error: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "pieces_across", self.pieces_across)
        put(struct, "pieces_down", self.pieces_down)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put_length(struct, "seam_error", self.seam_error)
        put_length(struct, "cut_error", self.cut_error)


@dataclass(frozen=True)
class AccuracyTopErrors:
    """struct muslin_accuracy_top_errors, muslin/accuracy.h

    block_seams_across: pieces_across - 1
    block_width_worst: how far the unfinished width of a block may be off ...
    block_width_likely
    block_seams_down: pieces_down - 1
    block_height_worst: ... and its unfinished height
    block_height_likely
    top_seams_across: columns x pieces_across - 1
    top_width_worst: how far the unfinished width of the top may be off ...
    top_width_likely
    top_seams_down: rows x pieces_down - 1
    top_length_worst: ... and its unfinished length
    top_length_likely
    """

    block_seams_across: int
    block_width_worst: Length
    block_width_likely: Length
    block_seams_down: int
    block_height_worst: Length
    block_height_likely: Length
    top_seams_across: int
    top_width_worst: Length
    top_width_likely: Length
    top_seams_down: int
    top_length_worst: Length
    top_length_likely: Length

    @classmethod
    def _read(cls, struct: Any) -> "AccuracyTopErrors":
        return cls(block_seams_across=int(struct.block_seams_across),
                   block_width_worst=Length(struct.block_width_worst),
                   block_width_likely=Length(struct.block_width_likely), block_seams_down=int(struct.block_seams_down),
                   block_height_worst=Length(struct.block_height_worst),
                   block_height_likely=Length(struct.block_height_likely),
                   top_seams_across=int(struct.top_seams_across), top_width_worst=Length(struct.top_width_worst),
                   top_width_likely=Length(struct.top_width_likely), top_seams_down=int(struct.top_seams_down),
                   top_length_worst=Length(struct.top_length_worst), top_length_likely=Length(struct.top_length_likely))


@dataclass(frozen=True)
class AccuracyMeetSpec(Spec):
    """struct muslin_accuracy_meet_spec, muslin/accuracy.h

    seams: n, of each of the two rows (initially 1)
    seam_error: e, of one seam (initially 0)
    cut_error: c, of one cut edge (initially 0)
    tolerance: seams this far apart still count as meeting; 0 .. MUSLIN_SIZE_MAX (initially 1/16 in)
    """

    _kind = structs.muslin_accuracy_meet_spec
    _init = "muslin_accuracy_meet_spec_init"

    seams: Optional[int] = None
    seam_error: Optional[LengthLike] = None
    cut_error: Optional[LengthLike] = None
    tolerance: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "seams", self.seams)
        put_length(struct, "seam_error", self.seam_error)
        put_length(struct, "cut_error", self.cut_error)
        put_length(struct, "tolerance", self.tolerance)


@dataclass(frozen=True)
class AccuracyMeeting:
    """struct muslin_accuracy_meeting, muslin/accuracy.h

    worst: apart at the last seam: 2 n (e + 2 c), both rows off opposite ways
    likely: the same by chance: sqrt(2 n (e^2 + 2 c^2)), up to a tick
    first_missed: the first seam at which the worst case passes the tolerance; 0: none
    likely_first_missed: the first at which the likely one does: from it on about one in three misses, or more; 0: none
    largest_seam_error: the largest e for which all n meet at worst, down to a tick; also 0 when the cuts alone are too
        much
    likely_largest_seam_error: ... for which all n are likely to meet
    meets: 1 when all n seams meet even at worst
    likely_meets: 1 when the likely one is within the tolerance at all n: about two in three then meet at the last seam,
        and more of them before it
    cuts_meet: 1 when they would at worst if no seam were off: 4 n c <= tolerance
    likely_cuts_meet: 1 when they would by chance
    twice_likely_first_missed: the first seam at which twice the likely one passes the tolerance: from it on about one
        in twenty misses, or more; 0: none
    twice_likely_largest_seam_error: the largest e for which twice the likely one is within the tolerance at all n, down
        to a tick; also 0 when the cuts alone are too much
    twice_likely_meets: 1 when twice the likely one is within the tolerance at all n seams
    twice_likely_cuts_meet: 1 when it would be if no seam were off
    """

    worst: Length
    likely: Length
    first_missed: int
    likely_first_missed: int
    largest_seam_error: Length
    likely_largest_seam_error: Length
    meets: bool
    likely_meets: bool
    cuts_meet: bool
    likely_cuts_meet: bool
    twice_likely_first_missed: int
    twice_likely_largest_seam_error: Length
    twice_likely_meets: bool
    twice_likely_cuts_meet: bool

    @classmethod
    def _read(cls, struct: Any) -> "AccuracyMeeting":
        return cls(worst=Length(struct.worst), likely=Length(struct.likely), first_missed=int(struct.first_missed),
                   likely_first_missed=int(struct.likely_first_missed),
                   largest_seam_error=Length(struct.largest_seam_error),
                   likely_largest_seam_error=Length(struct.likely_largest_seam_error), meets=bool(struct.meets),
                   likely_meets=bool(struct.likely_meets), cuts_meet=bool(struct.cuts_meet),
                   likely_cuts_meet=bool(struct.likely_cuts_meet),
                   twice_likely_first_missed=int(struct.twice_likely_first_missed),
                   twice_likely_largest_seam_error=Length(struct.twice_likely_largest_seam_error),
                   twice_likely_meets=bool(struct.twice_likely_meets),
                   twice_likely_cuts_meet=bool(struct.twice_likely_cuts_meet))


@dataclass(frozen=True)
class WashSpec(Spec):
    """struct muslin_wash_spec, muslin/shrinkage.h

    before_width: each as for muslin_shrinkage_change() (initially 0)
    after_width: (initially 0)
    before_length: along the cloth, so (initially 0)
    after_length: (initially 0)
    """

    _kind = structs.muslin_wash_spec
    _init = "muslin_wash_spec_init"

    before_width: Optional[LengthLike] = None
    after_width: Optional[LengthLike] = None
    before_length: Optional[LengthLike] = None
    after_length: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "before_width", self.before_width)
        put_length(struct, "after_width", self.after_width)
        put_length(struct, "before_length", self.before_length)
        put_length(struct, "after_length", self.after_length)


@dataclass(frozen=True)
class WashChange:
    """struct muslin_wash_change, muslin/shrinkage.h

    area_before: doubled square ticks
    area_after
    change_across: ppm, nearest
    change_along
    change_area: ppm, nearest, from the areas themselves: neither of the two above nor their sum
    """

    area_before: int
    area_after: int
    change_across: int
    change_along: int
    change_area: int

    @classmethod
    def _read(cls, struct: Any) -> "WashChange":
        return cls(area_before=int(struct.area_before), area_after=int(struct.area_after),
                   change_across=int(struct.change_across), change_along=int(struct.change_along),
                   change_area=int(struct.change_area))


@dataclass(frozen=True)
class ShrinkageSpec(Spec):
    """struct muslin_shrinkage_spec, muslin/shrinkage.h

    width: finished, the size that the call starts from (initially 0)
    length: (initially 0)
    quilting_across: share lost to the quilting's take-up (initially 0)
    quilting_along: (initially 0)
    washing_across: share that the quilted quilt loses in the wash (initially 0)
    washing_along: (initially 0)
    """

    _kind = structs.muslin_shrinkage_spec
    _init = "muslin_shrinkage_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    quilting_across: Optional[int] = None
    quilting_along: Optional[int] = None
    washing_across: Optional[int] = None
    washing_along: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put(struct, "quilting_across", self.quilting_across)
        put(struct, "quilting_along", self.quilting_along)
        put(struct, "washing_across", self.washing_across)
        put(struct, "washing_along", self.washing_along)


@dataclass(frozen=True)
class SizeToMake:
    """struct muslin_size_to_make, muslin/shrinkage.h

    make_width: finished: wanted / ((1 - q)(1 - w)), rounded once, as asked
    make_length
    quilted_width: what the quilt must measure when quilted, before the wash: wanted / (1 - w), nearest tick
    quilted_length
    washed_width: what the size to make ends at, quilted and washed, nearest tick
    washed_length
    multiplied_width: what multiplying would have said: wanted x (1 + q)(1 + w), nearest tick ...
    multiplied_length
    short_width: ... and how far below the wanted size exactly so much ends: wanted less wanted x (1 - q^2)(1 - w^2),
        the latter to the nearest tick
    short_length
    width_exact: 1 when rounding lost nothing of make_width
    length_exact
    """

    make_width: Length
    make_length: Length
    quilted_width: Length
    quilted_length: Length
    washed_width: Length
    washed_length: Length
    multiplied_width: Length
    multiplied_length: Length
    short_width: Length
    short_length: Length
    width_exact: bool
    length_exact: int

    @classmethod
    def _read(cls, struct: Any) -> "SizeToMake":
        return cls(make_width=Length(struct.make_width), make_length=Length(struct.make_length),
                   quilted_width=Length(struct.quilted_width), quilted_length=Length(struct.quilted_length),
                   washed_width=Length(struct.washed_width), washed_length=Length(struct.washed_length),
                   multiplied_width=Length(struct.multiplied_width), multiplied_length=Length(struct.multiplied_length),
                   short_width=Length(struct.short_width), short_length=Length(struct.short_length),
                   width_exact=bool(struct.width_exact), length_exact=int(struct.length_exact))


@dataclass(frozen=True)
class WashedSize:
    """struct muslin_washed_size, muslin/shrinkage.h

    quilted_width: width x (1 - q), rounded once, as asked
    quilted_length
    washed_width: width x (1 - q)(1 - w), rounded once, as asked
    washed_length
    change_across: of the whole way, ppm, nearest: negative
    change_along
    change_area: so
    """

    quilted_width: Length
    quilted_length: Length
    washed_width: Length
    washed_length: Length
    change_across: int
    change_along: int
    change_area: int

    @classmethod
    def _read(cls, struct: Any) -> "WashedSize":
        return cls(quilted_width=Length(struct.quilted_width), quilted_length=Length(struct.quilted_length),
                   washed_width=Length(struct.washed_width), washed_length=Length(struct.washed_length),
                   change_across=int(struct.change_across), change_along=int(struct.change_along),
                   change_area=int(struct.change_area))


@dataclass(frozen=True)
class Governing:
    """struct muslin_governing, muslin/shrinkage.h

    share: ppm lost: the one of the two that governs
    source: enum muslin_governing_source
    """

    share: int
    source: GoverningSource

    @classmethod
    def _read(cls, struct: Any) -> "Governing":
        return cls(share=int(struct.share), source=GoverningSource(struct.source))


@dataclass(frozen=True)
class PrewashSpec(Spec):
    """struct muslin_prewash_spec, muslin/shrinkage.h

    needed_length: of cloth, after the wash (initially 0)
    usable_width: of the cloth, before the wash (initially 40 in)
    across: share that the width loses, `at` 0 (initially 0)
    along: share that the length loses, `at` 1 (initially 0)
    """

    _kind = structs.muslin_prewash_spec
    _init = "muslin_prewash_spec_init"

    needed_length: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    across: Optional[int] = None
    along: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "needed_length", self.needed_length)
        put_length(struct, "usable_width", self.usable_width)
        put(struct, "across", self.across)
        put(struct, "along", self.along)


@dataclass(frozen=True)
class Prewash:
    """struct muslin_prewash, muslin/shrinkage.h

    unshrunk_length: to wash, for the length needed afterwards: needed / (1 - along), up to a tick
    washed_width: usable after the wash: width x (1 - across), down to a tick
    lost_length: unshrunk_length - needed_length
    lost_width: usable_width - washed_width
    """

    unshrunk_length: Length
    washed_width: Length
    lost_length: Length
    lost_width: Length

    @classmethod
    def _read(cls, struct: Any) -> "Prewash":
        return cls(unshrunk_length=Length(struct.unshrunk_length), washed_width=Length(struct.washed_width),
                   lost_length=Length(struct.lost_length), lost_width=Length(struct.lost_width))


@dataclass(frozen=True)
class PurchaseSpec(Spec):
    """struct muslin_purchase_spec, muslin/fabric.h

    needed: length of cloth that must be there in the end (initially 0)
    extra: fixed extra, added last (initially 0)
    step: what the shop sells in, 1 or more: 1/8 yd 36576, 1/4 yd 73152, 1/3 yd 97536, 10 cm 32000, 25 cm 80000
        (initially 4 1/2 in)
    shrinkage: ppm lost in the wash, 0 .. 999999: needed / (1 - shrinkage), up (initially 0)
    extra_share: ppm to add for safety, 0 .. 10000000: x (1 + share), up (initially 0)
    """

    _kind = structs.muslin_purchase_spec
    _init = "muslin_purchase_spec_init"

    needed: Optional[LengthLike] = None
    extra: Optional[LengthLike] = None
    step: Optional[LengthLike] = None
    shrinkage: Optional[int] = None
    extra_share: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "needed", self.needed)
        put_length(struct, "extra", self.extra)
        put_length(struct, "step", self.step)
        put(struct, "shrinkage", self.shrinkage)
        put(struct, "extra_share", self.extra_share)


@dataclass(frozen=True)
class Purchase:
    """struct muslin_purchase, muslin/fabric.h

    needed: as asked
    unshrunk: what shrinks to `needed`, up to a tick
    with_extra: unshrunk plus the share, up to a tick, plus the fixed extra: the least to buy
    bought: with_extra up to the step
    steps: bought / step
    spare: bought - with_extra: so much more could be wished for at the same price
    less_by: with_extra less this much, the least, would save a step; 0 if nothing is bought
    """

    needed: Length
    unshrunk: Length
    with_extra: Length
    bought: Length
    steps: int
    spare: Length
    less_by: Length

    @classmethod
    def _read(cls, struct: Any) -> "Purchase":
        return cls(needed=Length(struct.needed), unshrunk=Length(struct.unshrunk), with_extra=Length(struct.with_extra),
                   bought=Length(struct.bought), steps=int(struct.steps), spare=Length(struct.spare),
                   less_by=Length(struct.less_by))


@dataclass(frozen=True)
class ClothSpec(Spec):
    """struct muslin_cloth_spec, muslin/fabric.h

    width: usable width of the cloth or pre-cut (initially 40 in)
    length: its length (initially 36 in)
    piece_width: cut size across the cloth, 1 or more (initially 0)
    piece_length: cut size along it, 1 or more (initially 0)
    loss_across: taken off the width once, for straightening (initially 0)
    loss_along: taken off the length once (initially 0)
    may_turn: the flag MUSLIN_CLOTH_MAY_TURN (initially False)
    """

    _kind = structs.muslin_cloth_spec
    _init = "muslin_cloth_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    piece_width: Optional[LengthLike] = None
    piece_length: Optional[LengthLike] = None
    loss_across: Optional[LengthLike] = None
    loss_along: Optional[LengthLike] = None
    may_turn: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put_length(struct, "piece_width", self.piece_width)
        put_length(struct, "piece_length", self.piece_length)
        put_length(struct, "loss_across", self.loss_across)
        put_length(struct, "loss_along", self.loss_along)
        put_flag(struct, CLOTH_MAY_TURN, self.may_turn)


@dataclass(frozen=True)
class ClothPieces:
    """struct muslin_cloth_pieces, muslin/fabric.h

    across: pieces side by side
    along: rows of them
    pieces: across x along
    turned: 1 when the pieces lie turned a quarter; a tie is not turned
    warnings: MUSLIN_WARN_NO_SLACK when there are pieces and one of the two slacks is 0
    left_across: cloth left over beside the columns, after the loss; 0 when the loss eats it all
    left_along: ... and behind the rows
    narrower_by: the cloth may be this much narrower before a column of pieces is lost
    shorter_by: ... and this much shorter before a row is lost; both are 0 when there is no piece
    wider_for_one: this much wider and one more column fits
    longer_for_one: this much longer and one more row fits
    """

    across: int
    along: int
    pieces: int
    turned: bool
    warnings: Tuple[Warning, ...]
    left_across: Length
    left_along: Length
    narrower_by: Length
    shorter_by: Length
    wider_for_one: Length
    longer_for_one: Length

    @classmethod
    def _read(cls, struct: Any) -> "ClothPieces":
        return cls(across=int(struct.across), along=int(struct.along), pieces=int(struct.pieces),
                   turned=bool(struct.turned), warnings=warnings_in(struct.warnings),
                   left_across=Length(struct.left_across), left_along=Length(struct.left_along),
                   narrower_by=Length(struct.narrower_by), shorter_by=Length(struct.shorter_by),
                   wider_for_one=Length(struct.wider_for_one), longer_for_one=Length(struct.longer_for_one))


@dataclass(frozen=True)
class StripsSpec(Spec):
    """struct muslin_strips_spec, muslin/fabric.h

    pieces: pieces wanted (initially 0)
    piece_across: cut size along the strip, 1 or more (initially 0)
    strip_cut: cut width of the strip, 1 or more (initially 0)
    usable_width: length of one strip across the cloth (initially 40 in)
    end_loss: taken off each strip for squaring its ends (initially 0)
    straightening: taken off the cloth once (initially 0)
    """

    _kind = structs.muslin_strips_spec
    _init = "muslin_strips_spec_init"

    pieces: Optional[int] = None
    piece_across: Optional[LengthLike] = None
    strip_cut: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    straightening: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "pieces", self.pieces)
        put_length(struct, "piece_across", self.piece_across)
        put_length(struct, "strip_cut", self.strip_cut)
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "straightening", self.straightening)


@dataclass(frozen=True)
class Strips:
    """struct muslin_strips, muslin/fabric.h

    per_strip: pieces, down
    strips: up
    spare_pieces: that the last strip could still give
    length: cloth for them: strips x strip_cut + straightening
    left_per_strip: left over at the end of a full strip, after the end loss
    narrower_by: the cloth may be this much narrower before a strip gives one piece less
    wider_for_one: this much wider and each strip gives one more
    warnings: MUSLIN_WARN_NO_SLACK when narrower_by is 0
    """

    per_strip: int
    strips: int
    spare_pieces: int
    length: Length
    left_per_strip: Length
    narrower_by: Length
    wider_for_one: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Strips":
        return cls(per_strip=int(struct.per_strip), strips=int(struct.strips), spare_pieces=int(struct.spare_pieces),
                   length=Length(struct.length), left_per_strip=Length(struct.left_per_strip),
                   narrower_by=Length(struct.narrower_by), wider_for_one=Length(struct.wider_for_one),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class StockSpec(Spec):
    """struct muslin_stock_spec, muslin/fabric.h

    width: across, 1 or more: the longer side of a strip (its usable length), 20 .. 22 in of a fat quarter (initially 40
        in)
    length: along, 1 or more: the cut width of a strip, 18 in of a fat quarter (initially 2 1/2 in)
    count: pieces (initially 1)
    pink_depth: tip to valley, on one edge; must be 0 for straight edges (initially 0)
    edge: enum muslin_edge (initially Edge.STRAIGHT)
    care: enum muslin_care (initially Care.UNWASHED)
    print: enum muslin_print (initially Print.NONE)
    kind: enum muslin_stock_kind (initially StockKind.STRIP)
    """

    _kind = structs.muslin_stock_spec
    _init = "muslin_stock_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    count: Optional[int] = None
    pink_depth: Optional[LengthLike] = None
    edge: Optional[Edge] = None
    care: Optional[Care] = None
    print: Optional[Print] = None
    kind: Optional[StockKind] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put(struct, "count", self.count)
        put_length(struct, "pink_depth", self.pink_depth)
        put(struct, "edge", self.edge)
        put(struct, "care", self.care)
        put(struct, "print", self.print)
        put(struct, "kind", self.kind)


@dataclass(frozen=True)
class StockYield:
    """struct muslin_stock_yield, muslin/fabric.h

    per_piece: strips that one piece of stock gives
    in_hand: strips that the whole stock gives
    pieces_needed: pieces of stock for the strips wanted, up
    pieces_missing: of those, not in hand
    strip_length: length of each strip
    left_over: of each piece, beside the strips
    shorter_by: the piece may be this much shorter before a strip is lost
    warnings: MUSLIN_WARN_NO_SLACK when shorter_by is 0
    """

    per_piece: int
    in_hand: int
    pieces_needed: int
    pieces_missing: int
    strip_length: Length
    left_over: Length
    shorter_by: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "StockYield":
        return cls(per_piece=int(struct.per_piece), in_hand=int(struct.in_hand),
                   pieces_needed=int(struct.pieces_needed), pieces_missing=int(struct.pieces_missing),
                   strip_length=Length(struct.strip_length), left_over=Length(struct.left_over),
                   shorter_by=Length(struct.shorter_by), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class MotifSpec(Spec):
    """struct muslin_motif_spec, muslin/motif.h

    repeat_length: of the print along the cloth, 1 or more (initially 0)
    repeat_width: across it; 0: the whole usable width counts as one repeat (initially 0)
    usable_width: of the cloth, 1 or more (initially 40 in)
    cut_width: of the window, across, 1 or more (initially 0)
    cut_length: along, 1 or more (initially 0)
    motifs: windows that one repeat gives, 1 or more: count only those that can all be cut, so of two that overlap one;
        for a window larger than the repeat, those that the repeats it takes give together (initially 1)
    pieces: windows wanted (initially 0)
    any_start: the flag MUSLIN_MOTIF_ANY_START (initially False)
    any_across: the flag MUSLIN_MOTIF_ANY_ACROSS (initially False)
    """

    _kind = structs.muslin_motif_spec
    _init = "muslin_motif_spec_init"

    repeat_length: Optional[LengthLike] = None
    repeat_width: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    cut_width: Optional[LengthLike] = None
    cut_length: Optional[LengthLike] = None
    motifs: Optional[int] = None
    pieces: Optional[int] = None
    any_start: Optional[bool] = None
    any_across: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "repeat_length", self.repeat_length)
        put_length(struct, "repeat_width", self.repeat_width)
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "cut_width", self.cut_width)
        put_length(struct, "cut_length", self.cut_length)
        put(struct, "motifs", self.motifs)
        put(struct, "pieces", self.pieces)
        put_flag(struct, MOTIF_ANY_START, self.any_start)
        put_flag(struct, MOTIF_ANY_ACROSS, self.any_across)


@dataclass(frozen=True)
class Motif:
    """struct muslin_motif, muslin/motif.h

    repeats_across_each: repeats that a window takes across: cut_width / repeat_width, up; 1 when the width is one
        repeat
    repeats_along_each: along: cut_length / repeat_length, up
    per_row: windows that a row gives from selvage to selvage
    rows: rows of windows: pieces / per_row, up
    repeats: along, for all rows: rows x repeats_along_each
    repeats_bought: repeats, and the one for shifting the start where it is counted
    spare_pieces: windows that the rows give beyond those wanted
    per_row_certain: windows that a row gives wherever the print begins across; 0 when none is certain
    per_row_lucky: ... and gives when the print begins best: see lucky_within
    rows_certain: rows for the windows wanted when a row gives only those; 0 when none is certain
    rows_lucky: ... when it gives the most
    row_length: repeats_along_each x repeat_length
    waste_per_row: row_length - cut_length
    shift: the repeat for shifting the start, or 0
    cloth_length: rows x row_length + shift
    cloth_certain: the same with rows_certain; 0 when none is certain
    cloth_lucky: ... with rows_lucky
    lucky_within: per_row_lucky holds when the first whole window begins no farther than this from the edge of the
        usable width; 0 when the width is one repeat
    narrower_by: the cloth may be this much narrower before a row more is needed; 0 when the width is one repeat, since
        how the print lies in it is not known
    wider_for_less: this much wider, the least, and fewer rows are needed; 0 when no width saves one, or the width is
        one repeat
    wider_rows: so many they then are; 0 when no width saves one
    warnings: MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0; where the width is one repeat, when the
        window is as wide as the cloth
    cloth_least: cloth_length without what lies behind the windows of the last row: less by waste_per_row where the
        start is shifted and motifs is 1, else the same
    """

    repeats_across_each: int
    repeats_along_each: int
    per_row: int
    rows: int
    repeats: int
    repeats_bought: int
    spare_pieces: int
    per_row_certain: int
    per_row_lucky: int
    rows_certain: int
    rows_lucky: int
    row_length: Length
    waste_per_row: Length
    shift: Length
    cloth_length: Length
    cloth_certain: Length
    cloth_lucky: Length
    lucky_within: Length
    narrower_by: Length
    wider_for_less: Length
    wider_rows: int
    warnings: Tuple[Warning, ...]
    cloth_least: Length

    @classmethod
    def _read(cls, struct: Any) -> "Motif":
        return cls(repeats_across_each=int(struct.repeats_across_each),
                   repeats_along_each=int(struct.repeats_along_each), per_row=int(struct.per_row),
                   rows=int(struct.rows), repeats=int(struct.repeats), repeats_bought=int(struct.repeats_bought),
                   spare_pieces=int(struct.spare_pieces), per_row_certain=int(struct.per_row_certain),
                   per_row_lucky=int(struct.per_row_lucky), rows_certain=int(struct.rows_certain),
                   rows_lucky=int(struct.rows_lucky), row_length=Length(struct.row_length),
                   waste_per_row=Length(struct.waste_per_row), shift=Length(struct.shift),
                   cloth_length=Length(struct.cloth_length), cloth_certain=Length(struct.cloth_certain),
                   cloth_lucky=Length(struct.cloth_lucky), lucky_within=Length(struct.lucky_within),
                   narrower_by=Length(struct.narrower_by), wider_for_less=Length(struct.wider_for_less),
                   wider_rows=int(struct.wider_rows), warnings=warnings_in(struct.warnings),
                   cloth_least=Length(struct.cloth_least))


@dataclass(frozen=True)
class MotifYield:
    """struct muslin_motif_yield, muslin/motif.h

    rows: of windows, whole: of the last only the windows must be there, as in cloth_least
    repeats: along, used by them
    pieces: rows x per_row: windows
    pieces_certain: rows x per_row_certain
    pieces_lucky: rows x per_row_lucky
    left_over: of the length, behind the rows; what the shift takes is not in it
    shorter_by: the cloth may be this much shorter before a row is lost; 0 when there is none
    longer_for_one: this much longer and one more row fits
    warnings: MUSLIN_WARN_NO_SLACK when there is a row and shorter_by is 0
    """

    rows: int
    repeats: int
    pieces: int
    pieces_certain: int
    pieces_lucky: int
    left_over: Length
    shorter_by: Length
    longer_for_one: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "MotifYield":
        return cls(rows=int(struct.rows), repeats=int(struct.repeats), pieces=int(struct.pieces),
                   pieces_certain=int(struct.pieces_certain), pieces_lucky=int(struct.pieces_lucky),
                   left_over=Length(struct.left_over), shorter_by=Length(struct.shorter_by),
                   longer_for_one=Length(struct.longer_for_one), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class StackSpec(Spec):
    """struct muslin_stack_spec, muslin/motif.h

    repeat_length: of the print along the cloth, 1 or more (initially 0)
    strip_cut: cut width of the strips that are cut through all layers, 1 or more (initially 0)
    straightening: taken off the aligned layers once, before the first strip (initially 0)
    per_strip: stacks that one strip gives, 1 or more: as many as pieces from a single strip (initially 1)
    layers: identical pieces in a stack, 1 or more: 4, 6 or 8 for the blocks that are usual (initially 6)
    stacks: wanted (initially 0)
    any_start: the flag MUSLIN_STACK_ANY_START (initially False)
    """

    _kind = structs.muslin_stack_spec
    _init = "muslin_stack_spec_init"

    repeat_length: Optional[LengthLike] = None
    strip_cut: Optional[LengthLike] = None
    straightening: Optional[LengthLike] = None
    per_strip: Optional[int] = None
    layers: Optional[int] = None
    stacks: Optional[int] = None
    any_start: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "repeat_length", self.repeat_length)
        put_length(struct, "strip_cut", self.strip_cut)
        put_length(struct, "straightening", self.straightening)
        put(struct, "per_strip", self.per_strip)
        put(struct, "layers", self.layers)
        put(struct, "stacks", self.stacks)
        put_flag(struct, STACK_ANY_START, self.any_start)


@dataclass(frozen=True)
class Stack:
    """struct muslin_stack, muslin/motif.h

    strips: to cut through the layers: stacks / per_strip, up
    strips_in_layers: that the layers give, whole
    repeats_per_layer: (strips x strip_cut + straightening) / repeat_length, up; 0 without a strip
    repeats: of the cloth: layers x repeats_per_layer; the one for the start is not counted
    repeats_bought: ... and that one, where it is
    pieces: stacks x layers
    spare_stacks: that strips_in_layers give beyond those wanted
    layer_length: of each layer: repeats_per_layer x repeat_length
    used_length: of each layer: strips x strip_cut + straightening; 0 without a strip
    shift: the repeat for choosing the start, or 0
    cloth_length: layers x layer_length + shift
    left_over: of each layer, behind strips_in_layers
    shorter_by: the cloth may end this much early, in the last layer: layer_length - used_length. The other layers stay
        as long as they are, since each begins whole repeats behind the one before
    warnings: MUSLIN_WARN_NO_SLACK when a strip is wanted and shorter_by is 0
    cloth_least: cloth_length - shorter_by
    """

    strips: int
    strips_in_layers: int
    repeats_per_layer: int
    repeats: int
    repeats_bought: int
    pieces: int
    spare_stacks: int
    layer_length: Length
    used_length: Length
    shift: Length
    cloth_length: Length
    left_over: Length
    shorter_by: Length
    warnings: Tuple[Warning, ...]
    cloth_least: Length

    @classmethod
    def _read(cls, struct: Any) -> "Stack":
        return cls(strips=int(struct.strips), strips_in_layers=int(struct.strips_in_layers),
                   repeats_per_layer=int(struct.repeats_per_layer), repeats=int(struct.repeats),
                   repeats_bought=int(struct.repeats_bought), pieces=int(struct.pieces),
                   spare_stacks=int(struct.spare_stacks), layer_length=Length(struct.layer_length),
                   used_length=Length(struct.used_length), shift=Length(struct.shift),
                   cloth_length=Length(struct.cloth_length), left_over=Length(struct.left_over),
                   shorter_by=Length(struct.shorter_by), warnings=warnings_in(struct.warnings),
                   cloth_least=Length(struct.cloth_least))


@dataclass(frozen=True)
class Reference:
    """struct muslin_reference, muslin/reference.h

    width: ticks; as in muslin_stock_spec, the longer side of a strip or a fat quarter; 0 where there is none
    length: ticks; 0 where there is none
    count: pieces sold together, 1 for a single one; months in a caution; 0 where there is none
    """

    width: Length
    length: Length
    count: int

    @classmethod
    def _read(cls, struct: Any) -> "Reference":
        return cls(width=Length(struct.width), length=Length(struct.length), count=int(struct.count))


@dataclass(frozen=True)
class YieldSpec(Spec):
    """struct muslin_yield_spec, muslin/stripset.h

    strip_length: L, of the shortest strip in the set (initially 40 in)
    segment_cut: a, 1 or more (initially 0)
    end_trim: t, taken off each end to square it (initially 0)
    resquare_loss: r, lost each time the cut edge is squared again ... (initially 0)
    resquare_every: ... after every m cuts; 0 for never (initially 0)
    fold_clear: z, kept free of cuts in the middle; must be 0 with FROM_ONE_END (initially 0)
    from_one_end: the flag MUSLIN_YIELD_FROM_ONE_END (initially False)
    """

    _kind = structs.muslin_yield_spec
    _init = "muslin_yield_spec_init"

    strip_length: Optional[LengthLike] = None
    segment_cut: Optional[LengthLike] = None
    end_trim: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    fold_clear: Optional[LengthLike] = None
    from_one_end: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "strip_length", self.strip_length)
        put_length(struct, "segment_cut", self.segment_cut)
        put_length(struct, "end_trim", self.end_trim)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "fold_clear", self.fold_clear)
        put_flag(struct, YIELD_FROM_ONE_END, self.from_one_end)


@dataclass(frozen=True)
class Yield:
    """struct muslin_yield, muslin/stripset.h

    segments: N
    per_end: N / 2 when cutting from both ends, N from one
    resquarings: times the edge is squared again, both ends together
    least_length: the shortest strip that gives as many; 0 when N is 0
    left_over: L less trims, segments and squaring losses, not below 0: from both ends the middle piece, fold included;
        from one end L - 2 t - k a - r floor((k - 1) / m)
    shorter_by: the strip may be this much shorter before a segment is lost; 0 when N is 0
    longer_for_more: it must be this much longer to give more: one more from each end that is cut from; never 0, and for
        N = 0 what is missing to the first
    warnings: MUSLIN_WARN_NO_SLACK when shorter_by is 0 and N is not
    from_one_end: segments when the same set is cut straight through from one end, nothing kept clear: N itself with
        FROM_ONE_END. How near it is to its edge, a call with that flag tells; all above speaks of N. Since 1.1
    """

    segments: int
    per_end: int
    resquarings: int
    least_length: Length
    left_over: Length
    shorter_by: Length
    longer_for_more: Length
    warnings: Tuple[Warning, ...]
    from_one_end: int

    @classmethod
    def _read(cls, struct: Any) -> "Yield":
        return cls(segments=int(struct.segments), per_end=int(struct.per_end), resquarings=int(struct.resquarings),
                   least_length=Length(struct.least_length), left_over=Length(struct.left_over),
                   shorter_by=Length(struct.shorter_by), longer_for_more=Length(struct.longer_for_more),
                   warnings=warnings_in(struct.warnings), from_one_end=int(struct.from_one_end))


@dataclass(frozen=True)
class NeedSpec(Spec):
    """struct muslin_need_spec, muslin/stripset.h

    segments: wanted (initially 0)
    segments_per_set: what one set gives; see muslin_stripset_yield() (initially 0)
    strips_per_set: 1 or more (initially 0)
    strips_per_bundle: 1 or more when bundles are wanted, else 0 (initially 0)
    strip_cut: cut width of a strip, for the length of cloth instead of bundles; 0 if not wanted (initially 0)
    """

    _kind = structs.muslin_need_spec
    _init = "muslin_need_spec_init"

    segments: Optional[int] = None
    segments_per_set: Optional[int] = None
    strips_per_set: Optional[int] = None
    strips_per_bundle: Optional[int] = None
    strip_cut: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "segments", self.segments)
        put(struct, "segments_per_set", self.segments_per_set)
        put(struct, "strips_per_set", self.strips_per_set)
        put(struct, "strips_per_bundle", self.strips_per_bundle)
        put_length(struct, "strip_cut", self.strip_cut)


@dataclass(frozen=True)
class Need:
    """struct muslin_need, muslin/stripset.h

    sets: up
    strips: sets x strips_per_set, below 2^62
    bundles: up; 0 when not asked
    spare_segments: that the sets give beyond the wish
    spare_strips: that the bundles hold beyond the sets; 0 when not asked
    cloth_length: strips x strip_cut; 0 when not asked
    """

    sets: int
    strips: int
    bundles: int
    spare_segments: int
    spare_strips: int
    cloth_length: Length

    @classmethod
    def _read(cls, struct: Any) -> "Need":
        return cls(sets=int(struct.sets), strips=int(struct.strips), bundles=int(struct.bundles),
                   spare_segments=int(struct.spare_segments), spare_strips=int(struct.spare_strips),
                   cloth_length=Length(struct.cloth_length))


@dataclass(frozen=True)
class HarvestSpec(Spec):
    """struct muslin_harvest_spec, muslin/stripset.h

    strips: in hand (initially 0)
    strips_per_set: 1 or more (initially 0)
    segments_per_set: 0 or more (initially 0)
    segments_per_block: 1 or more (initially 1)
    blocks_per_top: 1 or more (initially 1)
    """

    _kind = structs.muslin_harvest_spec
    _init = "muslin_harvest_spec_init"

    strips: Optional[int] = None
    strips_per_set: Optional[int] = None
    segments_per_set: Optional[int] = None
    segments_per_block: Optional[int] = None
    blocks_per_top: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put(struct, "strips", self.strips)
        put(struct, "strips_per_set", self.strips_per_set)
        put(struct, "segments_per_set", self.segments_per_set)
        put(struct, "segments_per_block", self.segments_per_block)
        put(struct, "blocks_per_top", self.blocks_per_top)


@dataclass(frozen=True)
class Harvest:
    """struct muslin_harvest, muslin/stripset.h

    sets: down, from all strips
    segments: from all sets
    blocks: from all segments
    tops: from all blocks, all down
    sets_used: sets that those tops need, up
    strips_used: sets_used x strips_per_set
    strips_left: strips - strips_used
    segments_left: of the sets used, beyond the tops
    blocks_left: of all blocks, beyond the tops
    strips_for_one_more: strips missing for one more top; 0 only when a set gives nothing, so that no number of strips
        is enough
    """

    sets: int
    segments: int
    blocks: int
    tops: int
    sets_used: int
    strips_used: int
    strips_left: int
    segments_left: int
    blocks_left: int
    strips_for_one_more: int

    @classmethod
    def _read(cls, struct: Any) -> "Harvest":
        return cls(sets=int(struct.sets), segments=int(struct.segments), blocks=int(struct.blocks),
                   tops=int(struct.tops), sets_used=int(struct.sets_used), strips_used=int(struct.strips_used),
                   strips_left=int(struct.strips_left), segments_left=int(struct.segments_left),
                   blocks_left=int(struct.blocks_left), strips_for_one_more=int(struct.strips_for_one_more))


@dataclass(frozen=True)
class StripsetPrint(Spec):
    """struct muslin_stripset_print, muslin/stripset.h

    in_hand: strips of this print (initially 0)
    per_set: strips of it in each set, 0 or more (initially 0)
    left_over: out: in_hand - sets x per_set, or what is missing, negative, when sets were asked for (initially 0)
    """

    _kind = structs.muslin_stripset_print
    _init = "muslin_stripset_print_init"

    in_hand: int = 0
    per_set: int = 0
    left_over: int = 0

    def _put(self, struct: Any) -> None:
        put(struct, "in_hand", self.in_hand)
        put(struct, "per_set", self.per_set)
        put(struct, "left_over", self.left_over)

    @classmethod
    def _read(cls, struct: Any) -> "StripsetPrint":
        return cls(in_hand=int(struct.in_hand), per_set=int(struct.per_set), left_over=int(struct.left_over))


@dataclass(frozen=True)
class CutlistPieceSpec(Spec):
    """struct muslin_cutlist_piece_spec, muslin/cutlist.h

    cut_width: across the cloth, 1 or more (initially 0)
    cut_length: along it, 1 or more (initially 0)
    count: wanted (initially 1)
    may_turn: the flag MUSLIN_CUTLIST_PIECE_MAY_TURN (initially False)
    """

    _kind = structs.muslin_cutlist_piece_spec
    _init = "muslin_cutlist_piece_spec_init"

    cut_width: Optional[LengthLike] = None
    cut_length: Optional[LengthLike] = None
    count: Optional[int] = None
    may_turn: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "cut_width", self.cut_width)
        put_length(struct, "cut_length", self.cut_length)
        put(struct, "count", self.count)
        put_flag(struct, CUTLIST_PIECE_MAY_TURN, self.may_turn)


@dataclass(frozen=True)
class CutlistRow:
    """struct muslin_cutlist_row, muslin/cutlist.h

    pieces: wanted, of all lists that are cut together
    strips: pieces / per_strip, up
    per_strip: pieces from one strip, down
    spare_pieces: that the last strip could still give
    strip_cut: cut width of each strip, along the cloth
    piece_cut: what is cut off the strip for each piece, across the cloth
    strips_length: of cloth: strips x strip_cut
    first_stock: the piece of stock, from 1, that gives the first strip; 0 from yardage or for none
    last_stock: ... and the last strip
    turned: 1 when the pieces lie turned a quarter
    trimmed: 1 when the strips must be cut from the stock; 0 when a piece of stock is as narrow as the strip already,
        from yardage, or without a strip
    """

    pieces: int
    strips: int
    per_strip: int
    spare_pieces: int
    strip_cut: Length
    piece_cut: Length
    strips_length: Length
    first_stock: int
    last_stock: int
    turned: bool
    trimmed: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutlistRow":
        return cls(pieces=int(struct.pieces), strips=int(struct.strips), per_strip=int(struct.per_strip),
                   spare_pieces=int(struct.spare_pieces), strip_cut=Length(struct.strip_cut),
                   piece_cut=Length(struct.piece_cut), strips_length=Length(struct.strips_length),
                   first_stock=int(struct.first_stock), last_stock=int(struct.last_stock), turned=bool(struct.turned),
                   trimmed=bool(struct.trimmed))


@dataclass(frozen=True)
class CutlistSpec(Spec):
    """struct muslin_cutlist_spec, muslin/cutlist.h

    usable_width: length of a strip across the cloth, 1 or more (initially 40 in)
    end_loss: taken off each strip for squaring its ends (initially 0)
    straightening: taken off the cloth once (initially 0)
    print: enum muslin_print (initially Print.NONE)
    """

    _kind = structs.muslin_cutlist_spec
    _init = "muslin_cutlist_spec_init"

    usable_width: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    straightening: Optional[LengthLike] = None
    print: Optional[Print] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "straightening", self.straightening)
        put(struct, "print", self.print)


@dataclass(frozen=True)
class CutlistYardage:
    """struct muslin_cutlist_yardage, muslin/cutlist.h

    pieces: of the whole list
    strips: of all rows
    spare_pieces: that the last strips of all rows could still give
    cloth_length: the strips one behind the other, plus straightening
    area_bound: a bound only: the pieces' area over the usable width, up to a tick; no plan needs less, and hardly any
        gets by with it
    narrowest_width: the narrowest usable width at which cloth_length is the same
    narrower_by: usable_width - narrowest_width
    narrowest_as_cut: ... at which also the rows lie alike and take as many strips
    wider_for_less: this much wider, the least, and cloth_length is less; 0 when no width saves any
    wider_saves: so much less it then is; how it is cut then, the call below says for that width
    warnings: MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0
    turned: 1 when the pieces of some row lie turned a quarter
    """

    pieces: int
    strips: int
    spare_pieces: int
    cloth_length: Length
    area_bound: Length
    narrowest_width: Length
    narrower_by: Length
    narrowest_as_cut: Length
    wider_for_less: Length
    wider_saves: Length
    warnings: Tuple[Warning, ...]
    turned: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutlistYardage":
        return cls(pieces=int(struct.pieces), strips=int(struct.strips), spare_pieces=int(struct.spare_pieces),
                   cloth_length=Length(struct.cloth_length), area_bound=Length(struct.area_bound),
                   narrowest_width=Length(struct.narrowest_width), narrower_by=Length(struct.narrower_by),
                   narrowest_as_cut=Length(struct.narrowest_as_cut), wider_for_less=Length(struct.wider_for_less),
                   wider_saves=Length(struct.wider_saves), warnings=warnings_in(struct.warnings),
                   turned=bool(struct.turned))


@dataclass(frozen=True)
class CutlistStock:
    """struct muslin_cutlist_stock, muslin/cutlist.h

    pieces: of the whole list
    strips: cut across the stock
    spare_pieces: that the last strips of all rows could still give
    stock_needed: pieces of stock; enough, by this plain method
    stock_missing: of those, not in hand
    stock_left: in hand and not touched
    area_bound: a bound only: the pieces' area over that of a piece of stock, up; no plan needs fewer
    left_over: length of the last piece of stock behind its last strip
    narrower_by: each piece of stock may be this much narrower before one more is needed
    shorter_by: ... or this much shorter
    as_cut_narrower_by: this much narrower, and the strips stay as they are, row by row
    as_cut_shorter_by: ... or this much shorter, the least rest of any piece of stock needed
    warnings: MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by or shorter_by is 0
    trimmed: 1 when some row's strips must be cut from the stock (see muslin_cutlist_row)
    turned: 1 when the pieces of some row lie turned a quarter
    rest_pieces: that left_over could still give, cut as those of the last row; 0 when that wants none
    """

    pieces: int
    strips: int
    spare_pieces: int
    stock_needed: int
    stock_missing: int
    stock_left: int
    area_bound: int
    left_over: Length
    narrower_by: Length
    shorter_by: Length
    as_cut_narrower_by: Length
    as_cut_shorter_by: Length
    warnings: Tuple[Warning, ...]
    trimmed: bool
    turned: bool
    rest_pieces: int

    @classmethod
    def _read(cls, struct: Any) -> "CutlistStock":
        return cls(pieces=int(struct.pieces), strips=int(struct.strips), spare_pieces=int(struct.spare_pieces),
                   stock_needed=int(struct.stock_needed), stock_missing=int(struct.stock_missing),
                   stock_left=int(struct.stock_left), area_bound=int(struct.area_bound),
                   left_over=Length(struct.left_over), narrower_by=Length(struct.narrower_by),
                   shorter_by=Length(struct.shorter_by), as_cut_narrower_by=Length(struct.as_cut_narrower_by),
                   as_cut_shorter_by=Length(struct.as_cut_shorter_by), warnings=warnings_in(struct.warnings),
                   trimmed=bool(struct.trimmed), turned=bool(struct.turned), rest_pieces=int(struct.rest_pieces))


@dataclass(frozen=True)
class CutlistPart:
    """struct muslin_cutlist_part, muslin/cutlist.h

    row: from 0
    strips: from each of these pieces of stock
    first_stock: the first of them, from 1
    last_stock: the last; the same when it is one
    begins_at: length of the piece of stock that earlier rows have used
    """

    row: int
    strips: int
    first_stock: int
    last_stock: int
    begins_at: Length

    @classmethod
    def _read(cls, struct: Any) -> "CutlistPart":
        return cls(row=int(struct.row), strips=int(struct.strips), first_stock=int(struct.first_stock),
                   last_stock=int(struct.last_stock), begins_at=Length(struct.begins_at))


@dataclass(frozen=True)
class CutlistLists:
    """struct muslin_cutlist_lists, muslin/cutlist.h

    lists: whole lists that the stock in hand gives
    stock_used: pieces of stock for them
    stock_left: in hand and not touched
    stock_for_one_more: pieces of stock to add for one list more
    left_over: length of the last piece of stock used behind its last strip
    narrower_by: each piece of stock may be this much narrower before a list is lost; 0 for none
    shorter_by: ... or this much shorter
    as_cut_narrower_by: this much narrower, and the strips for those lists stay as they are
    as_cut_shorter_by: ... or this much shorter
    warnings: MUSLIN_WARN_NO_SLACK when there is a list and narrower_by or shorter_by is 0
    """

    lists: int
    stock_used: int
    stock_left: int
    stock_for_one_more: int
    left_over: Length
    narrower_by: Length
    shorter_by: Length
    as_cut_narrower_by: Length
    as_cut_shorter_by: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "CutlistLists":
        return cls(lists=int(struct.lists), stock_used=int(struct.stock_used), stock_left=int(struct.stock_left),
                   stock_for_one_more=int(struct.stock_for_one_more), left_over=Length(struct.left_over),
                   narrower_by=Length(struct.narrower_by), shorter_by=Length(struct.shorter_by),
                   as_cut_narrower_by=Length(struct.as_cut_narrower_by),
                   as_cut_shorter_by=Length(struct.as_cut_shorter_by), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class Substitution:
    """struct muslin_substitution, muslin/cutlist.h

    unfit_row: the first row of which not one piece fits, from 0; -1 when all do
    stock_needed: pieces of stock; from yardage 0
    stock_missing: of those, not in hand
    fabrics: different fabrics that the list then shows, when each piece of stock needed is taken from another print as
        long as there is one; from yardage 1; 0 for an empty list
    per_fabric_least: pieces of stock of each of them, dealt evenly: at least so many; from yardage 0
    per_fabric_most: ... and at most
    cloth_length: from yardage: length needed; else 0
    cloth_missing: of that, not in hand
    narrower_by: as in muslin_cutlist_yardage and muslin_cutlist_stock
    shorter_by: from yardage: what is in hand beyond cloth_length
    spare_pieces: that the last strips of all rows could still give
    possible: 1 when every row can be cut from it; else all but unfit_row is 0
    enough: 1 when what is in hand suffices
    warnings: MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0 or, where it is enough or from pieces of
        stock, shorter_by
    turned: 1 when the pieces of some row lie turned a quarter
    rest_pieces: as in muslin_cutlist_stock: of a list of one row, so many more than spare_pieces come from the stock
        that is needed; from yardage 0
    """

    unfit_row: int
    stock_needed: int
    stock_missing: int
    fabrics: int
    per_fabric_least: int
    per_fabric_most: int
    cloth_length: Length
    cloth_missing: Length
    narrower_by: Length
    shorter_by: Length
    spare_pieces: int
    possible: bool
    enough: bool
    warnings: Tuple[Warning, ...]
    turned: bool
    rest_pieces: int

    @classmethod
    def _read(cls, struct: Any) -> "Substitution":
        return cls(unfit_row=int(struct.unfit_row), stock_needed=int(struct.stock_needed),
                   stock_missing=int(struct.stock_missing), fabrics=int(struct.fabrics),
                   per_fabric_least=int(struct.per_fabric_least), per_fabric_most=int(struct.per_fabric_most),
                   cloth_length=Length(struct.cloth_length), cloth_missing=Length(struct.cloth_missing),
                   narrower_by=Length(struct.narrower_by), shorter_by=Length(struct.shorter_by),
                   spare_pieces=int(struct.spare_pieces), possible=bool(struct.possible), enough=bool(struct.enough),
                   warnings=warnings_in(struct.warnings), turned=bool(struct.turned),
                   rest_pieces=int(struct.rest_pieces))


@dataclass(frozen=True)
class CornerSpec(Spec):
    """struct muslin_corner_spec, muslin/shape.h

    piece: MUSLIN_SHAPE_OUTLINE, 0, 1, ... (initially 0)
    tip: enum muslin_corner_tip; SHARP where an arc ends or starts (initially CornerTip.SHARP)
    x: finished corner (initially 0)
    y: (initially 0)
    allowance: of the edge, as stitched (initially 1/4 in)
    take_up: of its seam, when pressed (initially 0)
    centre_x: of the edge's arc; 0 for a straight edge (initially 0)
    centre_y: (initially 0)
    radius: of the arc; 0 for a straight edge (initially 0)
    curve: enum muslin_curve (initially Curve.STRAIGHT)
    """

    _kind = structs.muslin_corner_spec
    _init = "muslin_corner_spec_init"

    piece: int = 0
    tip: Optional[CornerTip] = None
    x: LengthLike = Length(0)
    y: LengthLike = Length(0)
    allowance: LengthLike = Length(2032)
    take_up: LengthLike = Length(0)
    centre_x: LengthLike = Length(0)
    centre_y: LengthLike = Length(0)
    radius: LengthLike = Length(0)
    curve: Optional[Curve] = None

    def _put(self, struct: Any) -> None:
        put(struct, "piece", self.piece)
        put(struct, "tip", self.tip)
        put_length(struct, "x", self.x)
        put_length(struct, "y", self.y)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "centre_x", self.centre_x)
        put_length(struct, "centre_y", self.centre_y)
        put_length(struct, "radius", self.radius)
        put(struct, "curve", self.curve)

    @classmethod
    def _read(cls, struct: Any) -> "CornerSpec":
        return cls(piece=int(struct.piece), tip=CornerTip(struct.tip), x=Length(struct.x), y=Length(struct.y),
                   allowance=Length(struct.allowance), take_up=Length(struct.take_up), centre_x=Length(struct.centre_x),
                   centre_y=Length(struct.centre_y), radius=Length(struct.radius), curve=Curve(struct.curve))


@dataclass(frozen=True)
class Shape:
    """struct muslin_shape, muslin/shape.h

    pieces: without the outline
    corners: of the pieces together
    outside_edges: edges of pieces that lie on the outline
    inside_edges: the others: each is sewn to a neighbour
    finished_width: of the outline along x, arcs included, up to a tick
    finished_height
    finished_area: of the polygon of the outline's corners, doubled square ticks
    has_arcs: 1 when some edge is an arc, so that the area is not the polygon's
    """

    pieces: int
    corners: int
    outside_edges: int
    inside_edges: int
    finished_width: Length
    finished_height: Length
    finished_area: int
    has_arcs: bool

    @classmethod
    def _read(cls, struct: Any) -> "Shape":
        return cls(pieces=int(struct.pieces), corners=int(struct.corners), outside_edges=int(struct.outside_edges),
                   inside_edges=int(struct.inside_edges), finished_width=Length(struct.finished_width),
                   finished_height=Length(struct.finished_height), finished_area=int(struct.finished_area),
                   has_arcs=bool(struct.has_arcs))


@dataclass(frozen=True)
class TemplateCorner:
    """struct muslin_template_corner, muslin/shape.h

    corner: row of the finished corner that it belongs to
    curve: enum muslin_curve: of the cut edge
    x: cut corner, on the grid; may be negative
    y
    centre_x: of a cut arc, else 0
    centre_y
    radius: of a cut arc, to the nearest tick, a half up: r + e of a convex, r - e of a concave one
    has_seam: 1 when the edge runs along a seam, 0 for the short cut across a tip or a step
    """

    corner: int
    curve: Curve
    x: Length
    y: Length
    centre_x: Length
    centre_y: Length
    radius: Length
    has_seam: bool

    @classmethod
    def _read(cls, struct: Any) -> "TemplateCorner":
        return cls(corner=int(struct.corner), curve=Curve(struct.curve), x=Length(struct.x), y=Length(struct.y),
                   centre_x=Length(struct.centre_x), centre_y=Length(struct.centre_y), radius=Length(struct.radius),
                   has_seam=bool(struct.has_seam))


@dataclass(frozen=True)
class ShapePieceSpec(Spec):
    """struct muslin_shape_piece_spec, muslin/shape.h

    piece: 0, 1, ... (initially 0)
    grain_x: where the straight grain runs on the piece, a direction: -MUSLIN_SHAPE_SIZE_MAX .. MUSLIN_SHAPE_SIZE_MAX;
        both 0: say where it should run (initially 0)
    grain_y: (initially 0)
    margin: added all round the rectangles, 0 .. MUSLIN_SHAPE_SIZE_MAX: for a foundation, or for safety (initially 0)
    """

    _kind = structs.muslin_shape_piece_spec
    _init = "muslin_shape_piece_spec_init"

    piece: Optional[int] = None
    grain_x: Optional[LengthLike] = None
    grain_y: Optional[LengthLike] = None
    margin: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "piece", self.piece)
        put_length(struct, "grain_x", self.grain_x)
        put_length(struct, "grain_y", self.grain_y)
        put_length(struct, "margin", self.margin)


@dataclass(frozen=True)
class ShapePiece:
    """struct muslin_shape_piece, muslin/shape.h

    finished_area: of the polygon of its corners, doubled square ticks
    cut_area: of the polygon of the template's rounded corners, doubled square ticks
    cut_width: of the template along x, arcs included, up to a tick, without margin
    cut_height: along y
    longest: finished length of its longest straight edge, to the nearest tick; 0: it has none
    grain_x: the straight grain: as given, or as recommended
    grain_y
    rectangle_along: cut size that holds template and margin, along the straight grain, up to a tick
    rectangle_across: across it: the cut width of a strip that holds them
    longest_corner: row of the corner where the longest straight edge starts (the first of equals); -1
    grain_corner: row of the edge that the recommended grain follows; -1 when it was given, or none
    outside_edges: edges that lie on the outline, wholly or in part; 0 without an outline
    bias_edges: of them: arcs, and straight ones neither along nor across the grain
    has_arcs: 1 when some edge is an arc, so that areas are not the polygons'
    warnings: MUSLIN_WARN_BIAS_EDGE when there are bias edges
    """

    finished_area: int
    cut_area: int
    cut_width: Length
    cut_height: Length
    longest: Length
    grain_x: Length
    grain_y: Length
    rectangle_along: Length
    rectangle_across: Length
    longest_corner: int
    grain_corner: int
    outside_edges: int
    bias_edges: int
    has_arcs: bool
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "ShapePiece":
        return cls(finished_area=int(struct.finished_area), cut_area=int(struct.cut_area),
                   cut_width=Length(struct.cut_width), cut_height=Length(struct.cut_height),
                   longest=Length(struct.longest), grain_x=Length(struct.grain_x), grain_y=Length(struct.grain_y),
                   rectangle_along=Length(struct.rectangle_along), rectangle_across=Length(struct.rectangle_across),
                   longest_corner=int(struct.longest_corner), grain_corner=int(struct.grain_corner),
                   outside_edges=int(struct.outside_edges), bias_edges=int(struct.bias_edges),
                   has_arcs=bool(struct.has_arcs), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class QuarterCircleSpec(Spec):
    """struct muslin_quarter_circle_spec, muslin/shape.h

    finished: F, side of the finished square, 2 .. MUSLIN_SIZE_MAX / 4 (initially 0)
    radius: r, of the seam, 1 .. F - 1 (initially 0)
    allowance: of every edge (initially 1/4 in)
    take_up: (initially 0)
    """

    _kind = structs.muslin_quarter_circle_spec
    _init = "muslin_quarter_circle_spec_init"

    finished: Optional[LengthLike] = None
    radius: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "finished", self.finished)
        put_length(struct, "radius", self.radius)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class QuarterCircle:
    """struct muslin_quarter_circle, muslin/shape.h

    convex_cut_square: r + 2 e: square that holds the convex piece, exact
    convex_cut_radius: r + e, from the finished corner of the square, rounded
    convex_cut_leg: straight edge from the cut corner to the cut arc, rounded
    concave_cut_square: F + 2 e: square that the concave piece is cut from, exact
    concave_cut_radius: r - e, from the same point, rounded
    concave_cut_leg: straight edge from the cut corner that is left of the square to the cut arc, rounded: the shorter
        of the two kinds that the piece has
    centre_inset: e, from two cut edges of the square to the centre of the arcs, rounded
    seam_length: r x pi / 2, the curved seam, rounded
    """

    convex_cut_square: Length
    convex_cut_radius: Length
    convex_cut_leg: Length
    concave_cut_square: Length
    concave_cut_radius: Length
    concave_cut_leg: Length
    centre_inset: Length
    seam_length: Length

    @classmethod
    def _read(cls, struct: Any) -> "QuarterCircle":
        return cls(convex_cut_square=Length(struct.convex_cut_square),
                   convex_cut_radius=Length(struct.convex_cut_radius), convex_cut_leg=Length(struct.convex_cut_leg),
                   concave_cut_square=Length(struct.concave_cut_square),
                   concave_cut_radius=Length(struct.concave_cut_radius), concave_cut_leg=Length(struct.concave_cut_leg),
                   centre_inset=Length(struct.centre_inset), seam_length=Length(struct.seam_length))


@dataclass(frozen=True)
class RegularPolygon:
    """struct muslin_regular_polygon, muslin/shape.h

    side: each rounded on its own from the exact value
    flats: straight across
    corners: between the farthest two
    centre: from there to a corner
    area: doubled square ticks, nearest
    """

    side: Length
    flats: Length
    corners: Length
    centre: Length
    area: int

    @classmethod
    def _read(cls, struct: Any) -> "RegularPolygon":
        return cls(side=Length(struct.side), flats=Length(struct.flats), corners=Length(struct.corners),
                   centre=Length(struct.centre), area=int(struct.area))


@dataclass(frozen=True)
class UnitSpec(Spec):
    """struct muslin_unit_spec, muslin/unit.h

    finished_width: W (initially 0)
    finished_height: H; 0 where the kind says so (initially 0)
    corner: finished leg of a snowball's corner; else 0 (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    half_addition: customary addition to a half-square; 0: 3 1/2 s + 7/4 u, up to a tick (initially 0)
    quarter_addition: ... and to a quarter-square; 0: 5 s + 5/2 u, up to a tick (initially 0)
    trim_room: OVERSIZE: room to trim each unit, beyond the customary size, where it is said above; else 0 (initially 0)
    grid: cut sizes are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX (initially 1/8 in)
    tolerance: below grid (initially 0)
    units: wanted, of the first hand (initially 1)
    mirrored: wanted, of the other hand; 0 for kinds without hands (see the kinds) (initially 0)
    kind: enum muslin_unit_kind (initially UnitKind.HALF_SQUARE)
    method: enum muslin_unit_method (initially UnitMethod.TWO_AT_A_TIME)
    policy: enum muslin_allowance_policy (initially AllowancePolicy.EXACT)
    tip: enum muslin_tip; matters where triangles or wedges are cut from strips (initially Tip.BLUNT)
    direction: enum muslin_direction (initially Direction.UP)
    """

    _kind = structs.muslin_unit_spec
    _init = "muslin_unit_spec_init"

    finished_width: Optional[LengthLike] = None
    finished_height: Optional[LengthLike] = None
    corner: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    half_addition: Optional[LengthLike] = None
    quarter_addition: Optional[LengthLike] = None
    trim_room: Optional[LengthLike] = None
    grid: Optional[LengthLike] = None
    tolerance: Optional[LengthLike] = None
    units: Optional[int] = None
    mirrored: Optional[int] = None
    kind: Optional[UnitKind] = None
    method: Optional[UnitMethod] = None
    policy: Optional[AllowancePolicy] = None
    tip: Optional[Tip] = None
    direction: Optional[Direction] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "finished_width", self.finished_width)
        put_length(struct, "finished_height", self.finished_height)
        put_length(struct, "corner", self.corner)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "half_addition", self.half_addition)
        put_length(struct, "quarter_addition", self.quarter_addition)
        put_length(struct, "trim_room", self.trim_room)
        put_length(struct, "grid", self.grid)
        put_length(struct, "tolerance", self.tolerance)
        put(struct, "units", self.units)
        put(struct, "mirrored", self.mirrored)
        put(struct, "kind", self.kind)
        put(struct, "method", self.method)
        put(struct, "policy", self.policy)
        put(struct, "tip", self.tip)
        put(struct, "direction", self.direction)


@dataclass(frozen=True)
class UnitPlan:
    """struct muslin_unit_plan, muslin/unit.h

    finished_width: as the kind says; nearest tick where it is irrational
    finished_height
    unfinished_width: trim the sewn unit to this: finished + E, nearest tick; 0 for a single patch with slanted sides,
        which is not trimmed
    unfinished_height: ... finished + E
    units_per_recipe: of both hands
    mirrored_per_recipe: of these, the mirror image of the others: two, of a split quarter by TWO_AT_A_TIME; else 0
    recipes: for units, up; of a split quarter for units and mirrored: by PIECES for both together, by TWO_AT_A_TIME for
        the greater wish
    mirrored_recipes: where hands are cut each for itself: for the other hand, up; else 0
    spare_units: of all recipes, of either hand, beyond both wishes
    pieces: rows of muslin_unit_pieces()
    cut_area: of one recipe, where all pieces leave the table as rectangles; else 0
    finished_area: of its units: the finished area
    allowance_area: of its units: over all edges of all pieces, length x E / 2, tips excluded, up
    waste_area: what remains: cut - finished - allowance; all three 0 where cut_area is 0
    seam_offset: half-rectangle: the seam meets the raw edge so far from the raw corner, measured along the shorter raw
        side, nearest tick; 0 elsewhere and for a square
    bonus_units: half-squares from the corners cut off by FLIPPED_CORNERS, of one recipe, when a second line is sewn E
        beside the first
    bonus_unfinished: their size, down to a tick: corner as cut - sqrt 2 E; 0 when nothing is left
    bias_outside: 1 when outer edges of the unit lie on the bias
    warnings: MUSLIN_WARN_BIAS_EDGE; MUSLIN_WARN_BELOW_EXACT
    star_wider_by: eight-pointed star: what its diamonds as cut make it wider than W when every seam takes E, nearest
        tick; negative: narrower; 0 elsewhere
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    units_per_recipe: int
    mirrored_per_recipe: int
    recipes: int
    mirrored_recipes: int
    spare_units: int
    pieces: int
    cut_area: int
    finished_area: int
    allowance_area: int
    waste_area: int
    seam_offset: Length
    bonus_units: int
    bonus_unfinished: Length
    bias_outside: bool
    warnings: Tuple[Warning, ...]
    star_wider_by: Length

    @classmethod
    def _read(cls, struct: Any) -> "UnitPlan":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   units_per_recipe=int(struct.units_per_recipe), mirrored_per_recipe=int(struct.mirrored_per_recipe),
                   recipes=int(struct.recipes), mirrored_recipes=int(struct.mirrored_recipes),
                   spare_units=int(struct.spare_units), pieces=int(struct.pieces), cut_area=int(struct.cut_area),
                   finished_area=int(struct.finished_area), allowance_area=int(struct.allowance_area),
                   waste_area=int(struct.waste_area), seam_offset=Length(struct.seam_offset),
                   bonus_units=int(struct.bonus_units), bonus_unfinished=Length(struct.bonus_unfinished),
                   bias_outside=bool(struct.bias_outside), warnings=warnings_in(struct.warnings),
                   star_wider_by=Length(struct.star_wider_by))


@dataclass(frozen=True)
class UnitPiece:
    """struct muslin_unit_piece, muslin/unit.h

    cut_width: of the rectangle; of a strip shape, its extent along the strip, up to a tick
    cut_height: of the rectangle; height of the strip
    surplus_width: cut - exact need, down to a tick; negative: below the need
    surplus_height
    pitch: along a strip: each further `gives` pieces take this much, up to a tick
    wide_edge: the longer of a strip shape's two edges along the strip, as cut, up to a tick; any edge of an octagon; 0
        for a rectangle
    narrow_edge: the shorter one: 0 for a sharp tip
    count: of these, for one recipe
    total: ... for all recipes of this row's hand
    region: of the unit
    shape: enum muslin_cut_shape
    again: enum muslin_cut_again
    gives: pieces from each: 1, 2 or 4
    grain: enum muslin_grain, of the pieces in the end
    hand: enum muslin_hand
    angle: degrees: of a wedge its point, of another strip shape or an octagon where a slanted cut leaves the edge; 0
        for a rectangle
    star_excess: of a star's squares: cut - what its diamonds as cut ask for, down to a tick; below 0 where it is
        smaller; 0 elsewhere
    """

    cut_width: Length
    cut_height: Length
    surplus_width: Length
    surplus_height: Length
    pitch: Length
    wide_edge: Length
    narrow_edge: Length
    count: int
    total: int
    region: int
    shape: CutShape
    again: CutAgain
    gives: int
    grain: Grain
    hand: Hand
    angle: int
    star_excess: Length

    @classmethod
    def _read(cls, struct: Any) -> "UnitPiece":
        return cls(cut_width=Length(struct.cut_width), cut_height=Length(struct.cut_height),
                   surplus_width=Length(struct.surplus_width), surplus_height=Length(struct.surplus_height),
                   pitch=Length(struct.pitch), wide_edge=Length(struct.wide_edge),
                   narrow_edge=Length(struct.narrow_edge), count=int(struct.count), total=int(struct.total),
                   region=int(struct.region), shape=CutShape(struct.shape), again=CutAgain(struct.again),
                   gives=int(struct.gives), grain=Grain(struct.grain), hand=Hand(struct.hand), angle=int(struct.angle),
                   star_excess=Length(struct.star_excess))


@dataclass(frozen=True)
class UnitStockSpec(Spec):
    """struct muslin_unit_stock_spec, muslin/unit.h

    width: the longer side of a strip; 1 .. MUSLIN_SIZE_MAX (initially 5 in)
    height: cut width of a strip; 1 .. MUSLIN_SIZE_MAX (initially 5 in)
    per_region: how many there are for each region of the unit; 0 .. MUSLIN_COUNT_MAX (initially 1)
    end_loss: taken off the width of each for squaring; 0 .. MUSLIN_SIZE_MAX (initially 0)
    finished_grid: finished sizes tried: multiples of this, 1 .. MUSLIN_UNIT_SIZE_MAX (initially 1/8 in)
    """

    _kind = structs.muslin_unit_stock_spec
    _init = "muslin_unit_stock_spec_init"

    width: Optional[LengthLike] = None
    height: Optional[LengthLike] = None
    per_region: Optional[int] = None
    end_loss: Optional[LengthLike] = None
    finished_grid: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "height", self.height)
        put(struct, "per_region", self.per_region)
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "finished_grid", self.finished_grid)


@dataclass(frozen=True)
class UnitYield:
    """struct muslin_unit_yield, muslin/unit.h

    finished_width: as the kind says; nearest tick where it is irrational
    finished_height
    unfinished_width: as in struct muslin_unit_plan: trim to this
    unfinished_height
    cut_spare: of the stock's height, beyond the highest piece cut
    recipes: that the stock gives
    units: of both hands, where a recipe makes both
    units_of_one: from one rectangle for each region alone
    kind: enum muslin_unit_kind
    method: enum muslin_unit_method
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    cut_spare: Length
    recipes: int
    units: int
    units_of_one: int
    kind: UnitKind
    method: UnitMethod

    @classmethod
    def _read(cls, struct: Any) -> "UnitYield":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   cut_spare=Length(struct.cut_spare), recipes=int(struct.recipes), units=int(struct.units),
                   units_of_one=int(struct.units_of_one), kind=UnitKind(struct.kind), method=UnitMethod(struct.method))


@dataclass(frozen=True)
class UnitCorner:
    """struct muslin_unit_corner, muslin/unit.h

    x: to the right of the finished unit's lower left, nearest tick; a half goes up
    y: upwards from it, so
    patch: number of the patch in the unit, from 1
    region: of the unit
    corner: 0, 1, ... of the patch, counterclockwise
    stage: enum muslin_stage
    """

    x: Length
    y: Length
    patch: int
    region: int
    corner: int
    stage: Stage

    @classmethod
    def _read(cls, struct: Any) -> "UnitCorner":
        return cls(x=Length(struct.x), y=Length(struct.y), patch=int(struct.patch), region=int(struct.region),
                   corner=int(struct.corner), stage=Stage(struct.stage))


@dataclass(frozen=True)
class UnitStep:
    """struct muslin_unit_step, muslin/unit.h

    measure: as the step says: the allowance s, a width, the unfinished width; 0 where none is
    measure_height: of a step that trims the unit: the unfinished height; else 0
    from_corner: along the unfinished edge (CUT_TO_SHAPE, CUT_POINTS: the edge as cut), nearest tick, where the step
        says so; else 0
    step: enum muslin_unit_step_kind
    piece: row of muslin_unit_pieces(), from 1; 0: what has been sewn so far, or none
    other: the row it meets, so
    times: for one recipe
    region: PRESS_TO: towards this region; else 0
    angle: degrees, where the step cuts a strip shape or an octagon; else 0
    """

    measure: Length
    measure_height: Length
    from_corner: Length
    step: UnitStepKind
    piece: int
    other: int
    times: int
    region: int
    angle: int

    @classmethod
    def _read(cls, struct: Any) -> "UnitStep":
        return cls(measure=Length(struct.measure), measure_height=Length(struct.measure_height),
                   from_corner=Length(struct.from_corner), step=UnitStepKind(struct.step), piece=int(struct.piece),
                   other=int(struct.other), times=int(struct.times), region=int(struct.region), angle=int(struct.angle))


@dataclass(frozen=True)
class SettingSpec(Spec):
    """struct muslin_setting_spec, muslin/setting.h

    block_width: finished, 1 or more (initially 0)
    block_height: finished, 1 or more (initially 0)
    columns: of blocks (initially 1)
    rows: (initially 1)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    turning: enum muslin_turning (initially Turning.NONE)
    square_tolerance: a block is square enough for a quarter turn when its sides differ by no more (initially 1/64 in)
    """

    _kind = structs.muslin_setting_spec
    _init = "muslin_setting_spec_init"

    block_width: Optional[LengthLike] = None
    block_height: Optional[LengthLike] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    turning: Optional[Turning] = None
    square_tolerance: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "block_width", self.block_width)
        put_length(struct, "block_height", self.block_height)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put(struct, "turning", self.turning)
        put_length(struct, "square_tolerance", self.square_tolerance)


@dataclass(frozen=True)
class Setting:
    """struct muslin_setting, muslin/setting.h

    blocks: columns x rows
    blocks_turned: of them, turned: half of all, down, unless none is
    finished_width: of the top without borders
    finished_length
    unfinished_width: finished + 2 s + u
    unfinished_length
    block_seams: seams that join blocks into rows: rows x (columns - 1)
    row_seams: seams that join the rows: rows - 1
    """

    blocks: int
    blocks_turned: int
    finished_width: Length
    finished_length: Length
    unfinished_width: Length
    unfinished_length: Length
    block_seams: int
    row_seams: int

    @classmethod
    def _read(cls, struct: Any) -> "Setting":
        return cls(blocks=int(struct.blocks), blocks_turned=int(struct.blocks_turned),
                   finished_width=Length(struct.finished_width), finished_length=Length(struct.finished_length),
                   unfinished_width=Length(struct.unfinished_width), unfinished_length=Length(struct.unfinished_length),
                   block_seams=int(struct.block_seams), row_seams=int(struct.row_seams))


@dataclass(frozen=True)
class BlockSpec(Spec):
    """struct muslin_block_spec, muslin/setting.h

    segment_cut: a, across the block; 1 or more (initially 0)
    set_unfinished: unfinished width of the strip set: along the segment; 1 or more (initially 0)
    segments: side by side (initially 2)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    """

    _kind = structs.muslin_block_spec
    _init = "muslin_block_spec_init"

    segment_cut: Optional[LengthLike] = None
    set_unfinished: Optional[LengthLike] = None
    segments: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "segment_cut", self.segment_cut)
        put_length(struct, "set_unfinished", self.set_unfinished)
        put(struct, "segments", self.segments)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class Block:
    """struct muslin_block, muslin/setting.h

    unfinished_width: segments x a - (segments - 1)(2 s + u)
    unfinished_height: set_unfinished
    finished_width: as seen in the top
    finished_height
    segment_finished: a - 2 s - u
    square_segment_cut: the segment cut that would make the block square, down to a tick: the finished height over the
        segments, plus 2 s + u; 0 if nothing would be seen of them
    square: 1 when width and height are equal
    square_exact: 1 when square_segment_cut makes it exactly square
    """

    unfinished_width: Length
    unfinished_height: Length
    finished_width: Length
    finished_height: Length
    segment_finished: Length
    square_segment_cut: Length
    square: bool
    square_exact: bool

    @classmethod
    def _read(cls, struct: Any) -> "Block":
        return cls(unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   segment_finished=Length(struct.segment_finished),
                   square_segment_cut=Length(struct.square_segment_cut), square=bool(struct.square),
                   square_exact=bool(struct.square_exact))


@dataclass(frozen=True)
class RunSpec(Spec):
    """struct muslin_run_spec, muslin/setting.h

    length: wanted in one run; 0 .. MUSLIN_LENGTH_MAX / 2 (initially 0)
    strip_length: L, usable length of each strip (initially 40 in)
    strip_cut: cut width of a strip (initially 2 1/2 in)
    allowance: of the joins (initially 1/4 in)
    join: enum muslin_join (initially Join.STRAIGHT)
    """

    _kind = structs.muslin_run_spec
    _init = "muslin_run_spec_init"

    length: Optional[LengthLike] = None
    strip_length: Optional[LengthLike] = None
    strip_cut: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    join: Optional[Join] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "length", self.length)
        put_length(struct, "strip_length", self.strip_length)
        put_length(struct, "strip_cut", self.strip_cut)
        put_length(struct, "allowance", self.allowance)
        put(struct, "join", self.join)


@dataclass(frozen=True)
class Run:
    """struct muslin_run, muslin/setting.h

    strips: least n with n L - (n - 1) loss >= length; 0 when length is 0
    joins: n - 1; 0 when n is 0
    loss_per_join: of the length, by the way of joining
    joined: the whole run, joined: n L - (n - 1) loss
    spare: joined - length
    cloth_length: n x strip_cut
    narrower_by: each strip may be this much shorter before one more is needed: spare / n, down
    warnings: MUSLIN_WARN_NO_SLACK when spare is 0 and n is not
    """

    strips: int
    joins: int
    loss_per_join: Length
    joined: Length
    spare: Length
    cloth_length: Length
    narrower_by: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Run":
        return cls(strips=int(struct.strips), joins=int(struct.joins), loss_per_join=Length(struct.loss_per_join),
                   joined=Length(struct.joined), spare=Length(struct.spare), cloth_length=Length(struct.cloth_length),
                   narrower_by=Length(struct.narrower_by), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BorderSpec(Spec):
    """struct muslin_border_spec, muslin/setting.h

    unfinished_width: of what it is sewn to, 1 or more; measure it through the middle (initially 0)
    unfinished_length: (initially 0)
    finished_border: W, finished width of the border, 1 or more (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    usable_width: of the cloth: the length of a strip across it (initially 40 in)
    mitre_extra: added to the exact least length of each mitred piece; else not used (initially 0)
    style: enum muslin_border_style (initially BorderStyle.SIDES_FIRST)
    join: enum muslin_join, of strips across the width; not used lengthwise (initially Join.STRAIGHT)
    lengthwise: the flag MUSLIN_BORDER_LENGTHWISE (initially False)
    """

    _kind = structs.muslin_border_spec
    _init = "muslin_border_spec_init"

    unfinished_width: Optional[LengthLike] = None
    unfinished_length: Optional[LengthLike] = None
    finished_border: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    mitre_extra: Optional[LengthLike] = None
    style: Optional[BorderStyle] = None
    join: Optional[Join] = None
    lengthwise: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "unfinished_width", self.unfinished_width)
        put_length(struct, "unfinished_length", self.unfinished_length)
        put_length(struct, "finished_border", self.finished_border)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "mitre_extra", self.mitre_extra)
        put(struct, "style", self.style)
        put(struct, "join", self.join)
        put_flag(struct, BORDER_LENGTHWISE, self.lengthwise)


@dataclass(frozen=True)
class Border:
    """struct muslin_border, muslin/setting.h

    cut_width: of every strip: finished + 2 s + u
    side_cut_length: as cut, of each of the two sides, which run along the length
    top_cut_length: as cut, of top and of bottom
    cornerstone_cut: side of four squares; 0 without cornerstones
    total_length: of the four pieces
    strips: across the width, joined in one run; lengthwise: side by side, 1 to 4
    joins: strips - 1; lengthwise 0
    loss_per_join: lengthwise 0
    cloth_length: for the strips, or along the cloth when cut lengthwise; cornerstones apart
    spare: of the run; lengthwise: width left beside the pieces of the first panel
    unfinished_width: of the top with this border on: the next border's input
    unfinished_length
    finished_width: of the top with this border on, as seen
    finished_length
    warnings: MUSLIN_WARN_DIAGONAL_STRETCH when strips are joined by DIAGONAL or BIAS_ENDS, MUSLIN_WARN_NO_SLACK when
        spare is 0
    """

    cut_width: Length
    side_cut_length: Length
    top_cut_length: Length
    cornerstone_cut: Length
    total_length: Length
    strips: int
    joins: int
    loss_per_join: Length
    cloth_length: Length
    spare: Length
    unfinished_width: Length
    unfinished_length: Length
    finished_width: Length
    finished_length: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Border":
        return cls(cut_width=Length(struct.cut_width), side_cut_length=Length(struct.side_cut_length),
                   top_cut_length=Length(struct.top_cut_length), cornerstone_cut=Length(struct.cornerstone_cut),
                   total_length=Length(struct.total_length), strips=int(struct.strips), joins=int(struct.joins),
                   loss_per_join=Length(struct.loss_per_join), cloth_length=Length(struct.cloth_length),
                   spare=Length(struct.spare), unfinished_width=Length(struct.unfinished_width),
                   unfinished_length=Length(struct.unfinished_length), finished_width=Length(struct.finished_width),
                   finished_length=Length(struct.finished_length), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class SettingSashedSpec(Spec):
    """struct muslin_setting_sashed_spec, muslin/setting.h

    block_width: finished, 1 or more (initially 0)
    block_height: finished, 1 or more (initially 0)
    columns: of blocks (initially 1)
    rows: (initially 1)
    sash_width: finished, of the vertical sashes beside the blocks of a row; 0: there are none (initially 0)
    sash_height: finished, of the horizontal sashes above and below the rows; 0: there are none (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    usable_width: of the cloth: the length of a strip across it (initially 40 in)
    end_loss: taken off each strip for squaring its ends; at most usable_width (initially 0)
    frame: the flag MUSLIN_SETTING_SASHED_FRAME (initially False)
    cornerstones: the flag MUSLIN_SETTING_SASHED_CORNERSTONES (initially False)
    """

    _kind = structs.muslin_setting_sashed_spec
    _init = "muslin_setting_sashed_spec_init"

    block_width: Optional[LengthLike] = None
    block_height: Optional[LengthLike] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    sash_width: Optional[LengthLike] = None
    sash_height: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    frame: Optional[bool] = None
    cornerstones: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "block_width", self.block_width)
        put_length(struct, "block_height", self.block_height)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put_length(struct, "sash_width", self.sash_width)
        put_length(struct, "sash_height", self.sash_height)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "end_loss", self.end_loss)
        put_flag(struct, SETTING_SASHED_FRAME, self.frame)
        put_flag(struct, SETTING_SASHED_CORNERSTONES, self.cornerstones)


@dataclass(frozen=True)
class SettingSashedPlan:
    """struct muslin_setting_sashed_plan, muslin/setting.h

    blocks: c r
    vertical_sashes: c columns, r rows: r (c - 1), with a frame r (c + 1)
    horizontal_sashes: with cornerstones c (r - 1), with a frame c (r + 1); without them long sashes: r - 1, with a
        frame r + 1
    cornerstones: (c - 1)(r - 1), with a frame (c + 1)(r + 1); 0 without cornerstones
    vertical_cut_width: each finished size plus 2 s + u; the sizes of what there is none of are 0
    vertical_cut_length: a block's height as cut
    horizontal_cut_width: as vertical_cut_width
    horizontal_cut_length: a block's width as cut; of a long sash, a whole row's
    cornerstone_cut_width: as vertical_cut_width
    cornerstone_cut_height: equal to the width where both kinds of sashes are equally wide
    finished_width: of the top without borders: c blocks and c - 1 sashes, with a frame c + 1
    finished_length
    unfinished_width: finished + 2 s + u
    unfinished_length
    block_unfinished_width: what a block must measure before it is sewn in: finished + 2 s + u
    block_unfinished_height
    """

    blocks: int
    vertical_sashes: int
    horizontal_sashes: int
    cornerstones: int
    vertical_cut_width: Length
    vertical_cut_length: Length
    horizontal_cut_width: Length
    horizontal_cut_length: Length
    cornerstone_cut_width: Length
    cornerstone_cut_height: Length
    finished_width: Length
    finished_length: Length
    unfinished_width: Length
    unfinished_length: Length
    block_unfinished_width: Length
    block_unfinished_height: Length

    @classmethod
    def _read(cls, struct: Any) -> "SettingSashedPlan":
        return cls(blocks=int(struct.blocks), vertical_sashes=int(struct.vertical_sashes),
                   horizontal_sashes=int(struct.horizontal_sashes), cornerstones=int(struct.cornerstones),
                   vertical_cut_width=Length(struct.vertical_cut_width),
                   vertical_cut_length=Length(struct.vertical_cut_length),
                   horizontal_cut_width=Length(struct.horizontal_cut_width),
                   horizontal_cut_length=Length(struct.horizontal_cut_length),
                   cornerstone_cut_width=Length(struct.cornerstone_cut_width),
                   cornerstone_cut_height=Length(struct.cornerstone_cut_height),
                   finished_width=Length(struct.finished_width), finished_length=Length(struct.finished_length),
                   unfinished_width=Length(struct.unfinished_width), unfinished_length=Length(struct.unfinished_length),
                   block_unfinished_width=Length(struct.block_unfinished_width),
                   block_unfinished_height=Length(struct.block_unfinished_height))


@dataclass(frozen=True)
class SashPiece:
    """struct muslin_sash_piece, muslin/setting.h

    pieces: of this kind
    cut_length: along the strip
    cut_width: of the strip
    per_strip: pieces from a strip across the cloth, down; 0 when a piece is longer than a strip
    strips: up
    spare_pieces: that the last strip could still give; 0 when strips are joined
    joins: straight seams, when pieces longer than a strip are cut from one joined run; else 0
    cloth_length: strips x cut_width
    narrower_by: the cloth may be this much narrower before a full strip gives one piece less; when strips are joined,
        before one more of them is needed
    kind: enum muslin_sash_kind
    warnings: MUSLIN_WARN_NO_SLACK when narrower_by is 0
    """

    pieces: int
    cut_length: Length
    cut_width: Length
    per_strip: int
    strips: int
    spare_pieces: int
    joins: int
    cloth_length: Length
    narrower_by: Length
    kind: SashKind
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "SashPiece":
        return cls(pieces=int(struct.pieces), cut_length=Length(struct.cut_length), cut_width=Length(struct.cut_width),
                   per_strip=int(struct.per_strip), strips=int(struct.strips), spare_pieces=int(struct.spare_pieces),
                   joins=int(struct.joins), cloth_length=Length(struct.cloth_length),
                   narrower_by=Length(struct.narrower_by), kind=SashKind(struct.kind),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class SettingAlternateSpec(Spec):
    """struct muslin_setting_alternate_spec, muslin/setting.h

    block_width: finished, 1 or more (initially 0)
    block_height: finished, 1 or more (initially 0)
    columns: of blocks, pieced and plain (initially 1)
    rows: (initially 1)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    first: enum muslin_first_block (initially FirstBlock.PIECED)
    """

    _kind = structs.muslin_setting_alternate_spec
    _init = "muslin_setting_alternate_spec_init"

    block_width: Optional[LengthLike] = None
    block_height: Optional[LengthLike] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    first: Optional[FirstBlock] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "block_width", self.block_width)
        put_length(struct, "block_height", self.block_height)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put(struct, "first", self.first)


@dataclass(frozen=True)
class SettingAlternatePlan:
    """struct muslin_setting_alternate_plan, muslin/setting.h

    pieced: with an odd number of blocks, the first kind is one more than the other
    plain: the other blocks
    plain_cut_width: finished + 2 s + u
    plain_cut_height
    finished_width: of the top without borders
    finished_length
    unfinished_width: finished + 2 s + u
    unfinished_length
    """

    pieced: int
    plain: int
    plain_cut_width: Length
    plain_cut_height: Length
    finished_width: Length
    finished_length: Length
    unfinished_width: Length
    unfinished_length: Length

    @classmethod
    def _read(cls, struct: Any) -> "SettingAlternatePlan":
        return cls(pieced=int(struct.pieced), plain=int(struct.plain), plain_cut_width=Length(struct.plain_cut_width),
                   plain_cut_height=Length(struct.plain_cut_height), finished_width=Length(struct.finished_width),
                   finished_length=Length(struct.finished_length), unfinished_width=Length(struct.unfinished_width),
                   unfinished_length=Length(struct.unfinished_length))


@dataclass(frozen=True)
class SettingLineSpec(Spec):
    """struct muslin_setting_line_spec, muslin/setting.h

    sash: finished width of the sash between neighbours; 0: none (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    wanted: finished size that the line should have; 0: none is wanted (initially 0)
    frame: the flag MUSLIN_SETTING_LINE_FRAME (initially False)
    """

    _kind = structs.muslin_setting_line_spec
    _init = "muslin_setting_line_spec_init"

    sash: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    wanted: Optional[LengthLike] = None
    frame: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "sash", self.sash)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "wanted", self.wanted)
        put_flag(struct, SETTING_LINE_FRAME, self.frame)


@dataclass(frozen=True)
class SettingLinePlan:
    """struct muslin_setting_line_plan, muslin/setting.h

    sashes: n - 1, with a frame n + 1; 0 without a sash
    finished: the whole line
    unfinished: finished + 2 s + u
    longer_by: finished - wanted: negative when it falls short; 0 when no size is wanted
    """

    sashes: int
    finished: Length
    unfinished: Length
    longer_by: Length

    @classmethod
    def _read(cls, struct: Any) -> "SettingLinePlan":
        return cls(sashes=int(struct.sashes), finished=Length(struct.finished), unfinished=Length(struct.unfinished),
                   longer_by=Length(struct.longer_by))


@dataclass(frozen=True)
class SettingLinePlace:
    """struct muslin_setting_line_place, muslin/setting.h

    start: finished, from the first edge of the line to this block's first edge
    finished: its own size
    unfinished: finished + 2 s + u: what the block must measure before it is sewn in
    """

    start: Length
    finished: Length
    unfinished: Length

    @classmethod
    def _read(cls, struct: Any) -> "SettingLinePlace":
        return cls(start=Length(struct.start), finished=Length(struct.finished), unfinished=Length(struct.unfinished))


@dataclass(frozen=True)
class SettingPointSpec(Spec):
    """struct muslin_setting_point_spec, muslin/setting.h

    block: B, finished side, 1 or more; above w in SASH_INNER (initially 0)
    columns: c, of blocks side by side, without alternates; one is a runner (initially 1)
    rows: r (initially 1)
    sash: w; 0 in PLAIN, else 1 or more (initially 0)
    set_off: f: blocks float this far inside the edge, and it stays; 0 in SASH_CUT, SASH_INNER and with half-blocks,
        where something is cut at the edge itself (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    trim_room: added to the cut squares, half of it stands out at the edge and is trimmed away after sewing; 0 unless
        policy is OVERSIZE (initially 0)
    side_addition: customary addition to a square cut twice; 0: 5 s + 5 u / 2, 1 1/4 in for 1/4 in (initially 0)
    corner_addition: ... to a square cut once; 0: 7 s / 2 + 7 u / 4, 7/8 in for 1/4 in (initially 0)
    factor_numerator: customary diagonal of a square, for instance 1414 over 1000: 0 (with a denominator of 0) for the
        root itself, or 1 .. 1000000 (initially 0)
    factor_denominator: 0 or 1 .. 1000000; additions and factor are not used with the exact policy (initially 0)
    layout: enum muslin_point_layout (initially PointLayout.PLAIN)
    edge: enum muslin_point_edge; half-blocks in PLAIN and SASH_CUT only (initially PointEdge.TRIANGLES)
    policy: enum muslin_allowance_policy (initially AllowancePolicy.EXACT)
    diagonal_first: the flag MUSLIN_SETTING_POINT_DIAGONAL_FIRST (initially False)
    """

    _kind = structs.muslin_setting_point_spec
    _init = "muslin_setting_point_spec_init"

    block: Optional[LengthLike] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    sash: Optional[LengthLike] = None
    set_off: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    trim_room: Optional[LengthLike] = None
    side_addition: Optional[LengthLike] = None
    corner_addition: Optional[LengthLike] = None
    factor_numerator: Optional[int] = None
    factor_denominator: Optional[int] = None
    layout: Optional[PointLayout] = None
    edge: Optional[PointEdge] = None
    policy: Optional[AllowancePolicy] = None
    diagonal_first: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "block", self.block)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put_length(struct, "sash", self.sash)
        put_length(struct, "set_off", self.set_off)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "trim_room", self.trim_room)
        put_length(struct, "side_addition", self.side_addition)
        put_length(struct, "corner_addition", self.corner_addition)
        put(struct, "factor_numerator", self.factor_numerator)
        put(struct, "factor_denominator", self.factor_denominator)
        put(struct, "layout", self.layout)
        put(struct, "edge", self.edge)
        put(struct, "policy", self.policy)
        put_flag(struct, SETTING_POINT_DIAGONAL_FIRST, self.diagonal_first)


@dataclass(frozen=True)
class SettingPointPlan:
    """struct muslin_setting_point_plan, muslin/setting.h

    blocks: c r
    alternates: (c - 1)(r - 1), pieced or plain
    side_triangles: 2 (c - 1) + 2 (r - 1); 0 with half-blocks
    side_squares: squares cut twice on the diagonal, four triangles each: up
    spare_side_triangles: triangles those squares give beyond the need
    corner_triangles: 4
    corner_squares: 2, cut once on the diagonal, two triangles each
    half_blocks: 2 (c - 1) + 2 (r - 1) with half-blocks, each from a block of its own; else 0
    alternate_cut: side of a plain alternate square: B + 2 s + u
    side_square_cut: as the policy asks, rounded as `cutting`; 0 without side triangles
    side_need: exact need of it, up to a tick, without trimming room
    side_surplus: cut less exact need, down to a tick; negative: rounding left it too small
    corner_square_cut: these three as of the side squares
    corner_need: exact, up to a tick
    corner_surplus: down to a tick
    half_block_beyond: half-blocks: cut this far beyond the diagonal, s + u / 2 up to a tick; 0 where there are none
    diagonal: finished diagonal of a block, B sqrt 2, rounded as `measuring`
    diagonal_error: value less exact, down to a tick, as in struct muslin_rounded
    finished_width: of the centre without borders, rounded once as `measuring`
    width_error: less the exact one, down to a tick
    finished_length: as finished_width
    length_error: less the exact one, down to a tick
    unfinished_width: finished_width + 2 s + u
    unfinished_length
    sashes: whole ones
    edge_sashes: SASH_INNER: those that end at the edge
    cornerstones: whole ones
    edge_cornerstones: SASH_CUT: triangles at the edge, 2 c + 2 r
    edge_cornerstone_squares: squares cut twice on the diagonal, four of those triangles each: up
    sash_cut_width: w + 2 s + u
    sash_cut_length: B + 2 s + u
    edge_sash_cut_length: long side before the end is cut at 45 degrees: B + (1 + 1 / sqrt 2)(2 s + u), rounded as
        `cutting`
    cornerstone_cut: w + 2 s + u
    edge_cornerstone_cut: side of the squares for edge cornerstones, made like the side squares
    straight_grain: 1 when the whole outer edge lies on the straight grain: neither half-blocks nor edge sashes
    warnings: MUSLIN_WARN_BIAS_EDGE when it does not; MUSLIN_WARN_OFF_GRID when a square that was rounded by its
        diagonal does not lie on the cutting grid
    edge_cornerstone_need: as of the side square; 0 without edge cornerstones
    edge_cornerstone_surplus: as of the side square
    side_room: what there is to trim at the edge of the quilt: half of side_surplus, down to a tick
    corner_room: half of corner_surplus, at both edges
    edge_cornerstone_room: half of edge_cornerstone_surplus
    """

    blocks: int
    alternates: int
    side_triangles: int
    side_squares: int
    spare_side_triangles: int
    corner_triangles: int
    corner_squares: int
    half_blocks: int
    alternate_cut: Length
    side_square_cut: Length
    side_need: Length
    side_surplus: Length
    corner_square_cut: Length
    corner_need: Length
    corner_surplus: Length
    half_block_beyond: Length
    diagonal: Length
    diagonal_error: Length
    finished_width: Length
    width_error: Length
    finished_length: Length
    length_error: Length
    unfinished_width: Length
    unfinished_length: Length
    sashes: int
    edge_sashes: int
    cornerstones: int
    edge_cornerstones: int
    edge_cornerstone_squares: int
    sash_cut_width: Length
    sash_cut_length: Length
    edge_sash_cut_length: Length
    cornerstone_cut: Length
    edge_cornerstone_cut: Length
    straight_grain: bool
    warnings: Tuple[Warning, ...]
    edge_cornerstone_need: Length
    edge_cornerstone_surplus: Length
    side_room: Length
    corner_room: Length
    edge_cornerstone_room: Length

    @classmethod
    def _read(cls, struct: Any) -> "SettingPointPlan":
        return cls(blocks=int(struct.blocks), alternates=int(struct.alternates),
                   side_triangles=int(struct.side_triangles), side_squares=int(struct.side_squares),
                   spare_side_triangles=int(struct.spare_side_triangles), corner_triangles=int(struct.corner_triangles),
                   corner_squares=int(struct.corner_squares), half_blocks=int(struct.half_blocks),
                   alternate_cut=Length(struct.alternate_cut), side_square_cut=Length(struct.side_square_cut),
                   side_need=Length(struct.side_need), side_surplus=Length(struct.side_surplus),
                   corner_square_cut=Length(struct.corner_square_cut), corner_need=Length(struct.corner_need),
                   corner_surplus=Length(struct.corner_surplus), half_block_beyond=Length(struct.half_block_beyond),
                   diagonal=Length(struct.diagonal), diagonal_error=Length(struct.diagonal_error),
                   finished_width=Length(struct.finished_width), width_error=Length(struct.width_error),
                   finished_length=Length(struct.finished_length), length_error=Length(struct.length_error),
                   unfinished_width=Length(struct.unfinished_width), unfinished_length=Length(struct.unfinished_length),
                   sashes=int(struct.sashes), edge_sashes=int(struct.edge_sashes),
                   cornerstones=int(struct.cornerstones), edge_cornerstones=int(struct.edge_cornerstones),
                   edge_cornerstone_squares=int(struct.edge_cornerstone_squares),
                   sash_cut_width=Length(struct.sash_cut_width), sash_cut_length=Length(struct.sash_cut_length),
                   edge_sash_cut_length=Length(struct.edge_sash_cut_length),
                   cornerstone_cut=Length(struct.cornerstone_cut),
                   edge_cornerstone_cut=Length(struct.edge_cornerstone_cut), straight_grain=bool(struct.straight_grain),
                   warnings=warnings_in(struct.warnings), edge_cornerstone_need=Length(struct.edge_cornerstone_need),
                   edge_cornerstone_surplus=Length(struct.edge_cornerstone_surplus), side_room=Length(struct.side_room),
                   corner_room=Length(struct.corner_room), edge_cornerstone_room=Length(struct.edge_cornerstone_room))


@dataclass(frozen=True)
class LogcabinSpec(Spec):
    """struct muslin_logcabin_spec, muslin/rounds.h

    centre_width: finished, or cut with the flag (initially 0)
    centre_height: (initially 0)
    log_width: of every log, finished or cut as above; not used, and may be 0, where an array of widths is given
        (initially 0)
    rounds: 1 .. MUSLIN_ROUNDS_MAX (initially 0)
    blocks: alike, cut together; 1 .. MUSLIN_LOGCABIN_BLOCKS_MAX (initially 1)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    usable_width: of the cloth: the length of a strip across it; 0: strips are not counted (initially 40 in)
    end_loss: of each strip, where its ends are squared; 0 or more (initially 0)
    order: enum muslin_log_order (initially LogOrder.ROUND)
    start: enum muslin_side: the side of each round's first log (initially Side.TOP)
    turn: enum muslin_log_turn: where the next side lies (initially LogTurn.CLOCKWISE)
    given_cut: the flag MUSLIN_LOGCABIN_GIVEN_CUT (initially False)
    """

    _kind = structs.muslin_logcabin_spec
    _init = "muslin_logcabin_spec_init"

    centre_width: Optional[LengthLike] = None
    centre_height: Optional[LengthLike] = None
    log_width: Optional[LengthLike] = None
    rounds: Optional[int] = None
    blocks: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    order: Optional[LogOrder] = None
    start: Optional[Side] = None
    turn: Optional[LogTurn] = None
    given_cut: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "centre_width", self.centre_width)
        put_length(struct, "centre_height", self.centre_height)
        put_length(struct, "log_width", self.log_width)
        put(struct, "rounds", self.rounds)
        put(struct, "blocks", self.blocks)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "end_loss", self.end_loss)
        put(struct, "order", self.order)
        put(struct, "start", self.start)
        put(struct, "turn", self.turn)
        put_flag(struct, LOGCABIN_GIVEN_CUT, self.given_cut)


@dataclass(frozen=True)
class Logcabin:
    """struct muslin_logcabin, muslin/rounds.h

    centre_cut_width: of the middle patch, as cut
    centre_cut_height
    finished_width: of the block
    finished_height
    unfinished_width: of the block, outer seams still raw
    unfinished_height
    logs: in one block
    kinds: of strips: rows of muslin_logcabin_strips()
    first_length: cut lengths of all logs of the first half, of all blocks, end to end
    second_length: of the second half
    longest_log: cut length
    strips_least: the plain running length over the strip, up, for each kind: no plan needs fewer
    strips: of the logs, cut without joins as muslin_logcabin_strips() says: at most so many are needed; 0 when not
        counted, as above
    cloth_length: strips x their cut widths; the centres' strips apart
    square: 1 when the block is as wide as high
    centre_strip_cut: width of the strips the centres are cut from: their height or their width as cut, whichever takes
        less cloth, then the lesser; 0 when not counted, as all below
    centres_per_strip: that a strip gives
    centre_strips: for all blocks, up
    centre_cloth_length: centre_strips x centre_strip_cut
    """

    centre_cut_width: Length
    centre_cut_height: Length
    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    logs: int
    kinds: int
    first_length: Length
    second_length: Length
    longest_log: Length
    strips_least: int
    strips: int
    cloth_length: Length
    square: bool
    centre_strip_cut: Length
    centres_per_strip: int
    centre_strips: int
    centre_cloth_length: Length

    @classmethod
    def _read(cls, struct: Any) -> "Logcabin":
        return cls(centre_cut_width=Length(struct.centre_cut_width), centre_cut_height=Length(struct.centre_cut_height),
                   finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   logs=int(struct.logs), kinds=int(struct.kinds), first_length=Length(struct.first_length),
                   second_length=Length(struct.second_length), longest_log=Length(struct.longest_log),
                   strips_least=int(struct.strips_least), strips=int(struct.strips),
                   cloth_length=Length(struct.cloth_length), square=bool(struct.square),
                   centre_strip_cut=Length(struct.centre_strip_cut), centres_per_strip=int(struct.centres_per_strip),
                   centre_strips=int(struct.centre_strips), centre_cloth_length=Length(struct.centre_cloth_length))


@dataclass(frozen=True)
class LogcabinLog:
    """struct muslin_logcabin_log, muslin/rounds.h

    round: from 1
    cut_length: the raw edge it is sewn to
    cut_width: of its strip
    finished_length: as seen
    finished_width
    running_length: cut lengths so far, of one block
    unfinished_width: what the block must measure now, this log sewn on and pressed
    unfinished_height
    side: enum muslin_side
    half: enum muslin_log_half
    closes_round: 1 when it is its round's last: measure here, and square up
    """

    round: int
    cut_length: Length
    cut_width: Length
    finished_length: Length
    finished_width: Length
    running_length: Length
    unfinished_width: Length
    unfinished_height: Length
    side: Side
    half: LogHalf
    closes_round: bool

    @classmethod
    def _read(cls, struct: Any) -> "LogcabinLog":
        return cls(round=int(struct.round), cut_length=Length(struct.cut_length), cut_width=Length(struct.cut_width),
                   finished_length=Length(struct.finished_length), finished_width=Length(struct.finished_width),
                   running_length=Length(struct.running_length), unfinished_width=Length(struct.unfinished_width),
                   unfinished_height=Length(struct.unfinished_height), side=Side(struct.side),
                   half=LogHalf(struct.half), closes_round=bool(struct.closes_round))


@dataclass(frozen=True)
class LogcabinStrip:
    """struct muslin_logcabin_strip, muslin/rounds.h

    cut_width: what its logs share
    pieces: logs
    longest: of them, cut length
    length: cut lengths end to end
    strips_least: length over the usable width without its end loss, up; 0 when not counted
    strips: cut without joins; 0 when not counted
    cloth_length: strips x cut_width
    half: enum muslin_log_half
    """

    cut_width: Length
    pieces: int
    longest: Length
    length: Length
    strips_least: int
    strips: int
    cloth_length: Length
    half: LogHalf

    @classmethod
    def _read(cls, struct: Any) -> "LogcabinStrip":
        return cls(cut_width=Length(struct.cut_width), pieces=int(struct.pieces), longest=Length(struct.longest),
                   length=Length(struct.length), strips_least=int(struct.strips_least), strips=int(struct.strips),
                   cloth_length=Length(struct.cloth_length), half=LogHalf(struct.half))


@dataclass(frozen=True)
class LogcabinFitSpec(Spec):
    """struct muslin_logcabin_fit_spec, muslin/rounds.h

    wanted: finished side of the block (initially 0)
    centre: finished side of the centre, 1 or more and less than wanted (initially 0)
    rounds: 1 .. MUSLIN_ROUNDS_MAX; for muslin_logcabin_log_for() (initially 0)
    log_finished: for muslin_logcabin_rounds_for() (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    order: enum muslin_log_order (initially LogOrder.ROUND)
    """

    _kind = structs.muslin_logcabin_fit_spec
    _init = "muslin_logcabin_fit_spec_init"

    wanted: Optional[LengthLike] = None
    centre: Optional[LengthLike] = None
    rounds: Optional[int] = None
    log_finished: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    order: Optional[LogOrder] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "wanted", self.wanted)
        put_length(struct, "centre", self.centre)
        put(struct, "rounds", self.rounds)
        put_length(struct, "log_finished", self.log_finished)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put(struct, "order", self.order)


@dataclass(frozen=True)
class LogcabinFit:
    """struct muslin_logcabin_fit, muslin/rounds.h

    rounds: as given, or found
    logs_across: in the block's width: 2 x rounds, or rounds with MUSLIN_LOG_ORDER_QUARTER
    exact_numerator: the log that finishes the block exactly: wanted - centre ...
    exact_denominator: ... over logs_across
    log_finished: as given, or found
    log_cut: log_finished and a seam
    block_finished: centre + logs_across x log_finished
    rest: wanted - block_finished; negative when the block comes out larger
    centre_to_fit: the finished centre with which the block comes out as wanted: centre + rest; no centre does when it
        is 0 or less
    next_finished: the block with one round more
    """

    rounds: int
    logs_across: int
    exact_numerator: Length
    exact_denominator: int
    log_finished: Length
    log_cut: Length
    block_finished: Length
    rest: Length
    centre_to_fit: Length
    next_finished: Length

    @classmethod
    def _read(cls, struct: Any) -> "LogcabinFit":
        return cls(rounds=int(struct.rounds), logs_across=int(struct.logs_across),
                   exact_numerator=Length(struct.exact_numerator), exact_denominator=int(struct.exact_denominator),
                   log_finished=Length(struct.log_finished), log_cut=Length(struct.log_cut),
                   block_finished=Length(struct.block_finished), rest=Length(struct.rest),
                   centre_to_fit=Length(struct.centre_to_fit), next_finished=Length(struct.next_finished))


@dataclass(frozen=True)
class FrameSpec(Spec):
    """struct muslin_frame_spec, muslin/rounds.h

    opening_width: finished, as all sizes here (initially 0)
    opening_height: (initially 0)
    frame_width: W (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    usable_width: of the cloth: the length of a strip across it; 0: strips are not counted (initially 40 in)
    """

    _kind = structs.muslin_frame_spec
    _init = "muslin_frame_spec_init"

    opening_width: Optional[LengthLike] = None
    opening_height: Optional[LengthLike] = None
    frame_width: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    usable_width: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "opening_width", self.opening_width)
        put_length(struct, "opening_height", self.opening_height)
        put_length(struct, "frame_width", self.frame_width)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "usable_width", self.usable_width)


@dataclass(frozen=True)
class Frame:
    """struct muslin_frame, muslin/rounds.h

    cut_width: of the strip: W + m
    top_long: raw long edge of top and bottom, from tip to tip, rounded
    top_long_error: less the exact one, down to a tick
    top_short: raw short edge: 2 cut_width less than the long one, as its ends leave it
    side_long: the same of left and right
    side_long_error: less the exact one, down to a tick
    side_short: 2 cut_width less than side_long
    strip_length: of one strip that holds all four as cut, each turned against the one before
    finished_width: of the whole
    finished_height
    unfinished_width: of the whole, outer seams still raw
    unfinished_height
    strips: across the cloth, 1 to 4, the fewest that hold the four pieces without joins; 0 when not counted, or when a
        piece is longer than such a strip
    cloth_length: strips x cut_width
    """

    cut_width: Length
    top_long: Length
    top_long_error: Length
    top_short: Length
    side_long: Length
    side_long_error: Length
    side_short: Length
    strip_length: Length
    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    strips: int
    cloth_length: Length

    @classmethod
    def _read(cls, struct: Any) -> "Frame":
        return cls(cut_width=Length(struct.cut_width), top_long=Length(struct.top_long),
                   top_long_error=Length(struct.top_long_error), top_short=Length(struct.top_short),
                   side_long=Length(struct.side_long), side_long_error=Length(struct.side_long_error),
                   side_short=Length(struct.side_short), strip_length=Length(struct.strip_length),
                   finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   strips=int(struct.strips), cloth_length=Length(struct.cloth_length))


@dataclass(frozen=True)
class FrameCorner:
    """struct muslin_frame_corner, muslin/rounds.h

    x: rounded
    x_error: less the exact one, down to a tick
    y: rounded
    y_error: less the exact one, down to a tick
    piece: enum muslin_frame_piece
    line: enum muslin_frame_line
    """

    x: Length
    x_error: Length
    y: Length
    y_error: Length
    piece: FramePiece
    line: FrameLine

    @classmethod
    def _read(cls, struct: Any) -> "FrameCorner":
        return cls(x=Length(struct.x), x_error=Length(struct.x_error), y=Length(struct.y),
                   y_error=Length(struct.y_error), piece=FramePiece(struct.piece), line=FrameLine(struct.line))


@dataclass(frozen=True)
class MedallionSpec(Spec):
    """struct muslin_medallion_spec, muslin/rounds.h

    centre_width: finished (initially 0)
    centre_height: (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    equal_coping: the flag MUSLIN_MEDALLION_EQUAL_COPING (initially False)
    """

    _kind = structs.muslin_medallion_spec
    _init = "muslin_medallion_spec_init"

    centre_width: Optional[LengthLike] = None
    centre_height: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    equal_coping: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "centre_width", self.centre_width)
        put_length(struct, "centre_height", self.centre_height)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_flag(struct, MEDALLION_EQUAL_COPING, self.equal_coping)


@dataclass(frozen=True)
class MedallionRow(Spec):
    """struct muslin_medallion_row, muslin/rounds.h

    kind: enum muslin_round_kind (initially RoundKind.PLAIN)
    corner: enum muslin_round_corner (initially RoundCorner.SQUARES)
    width: finished width of the border, of PIECED the depth of a unit; of COPING the least width wanted, which may be 0
        (initially 0)
    repeat: PIECED: finished length of a unit along the border; else not used, 0 or more (initially 0)
    most: COPING: the greatest width allowed, width or more; else not used, 0 or more (initially 0)
    before_width: out: finished, within this round (initially 0)
    before_height: (initially 0)
    after_width: finished, with this round (initially 0)
    after_height: (initially 0)
    side_pair: finished width of both side borders together: after_width - before_width (initially 0)
    top_pair: of top and bottom, so (initially 0)
    side_finished: of one of them, half a pair, down: where a coping pair is odd, one of the two is a tick wider
        (initially 0)
    top_finished: of top or bottom, so (initially 0)
    side_cut: width of a side strip as cut, of PIECED the unfinished depth; 0 without a strip (initially 0)
    top_cut: of top or bottom, so (initially 0)
    side_length: length of a side as cut, of PIECED unfinished: what it must measure (initially 0)
    top_length: of top or bottom, so (initially 0)
    side_units: PIECED: whole units in each side ... (initially 0)
    top_units: ... and in top and bottom each (initially 0)
    units: in the round: 2 x both, corner squares apart (initially 0)
    corner_squares: 4 or 0; cut as wide as side_cut and as high as top_cut (initially 0)
    side_rest: PIECED: of the run, beyond its whole units (initially 0)
    top_rest: of top or bottom, so (initially 0)
    unit_unfinished: PIECED: repeat + m (initially 0)
    divides: 1 unless a PIECED round leaves a rest on a side or on the top (initially 0)
    unequal: 1 when side and top differ in width: COPING only (initially 0)
    after_unfinished_width: after_width + m: what the top must measure with this round, and how long a row for top or
        bottom is with its corner squares (initially 0)
    after_unfinished_height: (initially 0)
    """

    _kind = structs.muslin_medallion_row
    _init = "muslin_medallion_row_init"

    kind: Optional[RoundKind] = None
    corner: Optional[RoundCorner] = None
    width: Length = Length(0)
    repeat: Length = Length(0)
    most: Length = Length(0)
    before_width: Length = Length(0)
    before_height: Length = Length(0)
    after_width: Length = Length(0)
    after_height: Length = Length(0)
    side_pair: Length = Length(0)
    top_pair: Length = Length(0)
    side_finished: Length = Length(0)
    top_finished: Length = Length(0)
    side_cut: Length = Length(0)
    top_cut: Length = Length(0)
    side_length: Length = Length(0)
    top_length: Length = Length(0)
    side_units: int = 0
    top_units: int = 0
    units: int = 0
    corner_squares: int = 0
    side_rest: Length = Length(0)
    top_rest: Length = Length(0)
    unit_unfinished: Length = Length(0)
    divides: int = 0
    unequal: bool = False
    after_unfinished_width: Length = Length(0)
    after_unfinished_height: Length = Length(0)

    def _put(self, struct: Any) -> None:
        put(struct, "kind", self.kind)
        put(struct, "corner", self.corner)
        put_length(struct, "width", self.width)
        put_length(struct, "repeat", self.repeat)
        put_length(struct, "most", self.most)
        put_length(struct, "before_width", self.before_width)
        put_length(struct, "before_height", self.before_height)
        put_length(struct, "after_width", self.after_width)
        put_length(struct, "after_height", self.after_height)
        put_length(struct, "side_pair", self.side_pair)
        put_length(struct, "top_pair", self.top_pair)
        put_length(struct, "side_finished", self.side_finished)
        put_length(struct, "top_finished", self.top_finished)
        put_length(struct, "side_cut", self.side_cut)
        put_length(struct, "top_cut", self.top_cut)
        put_length(struct, "side_length", self.side_length)
        put_length(struct, "top_length", self.top_length)
        put(struct, "side_units", self.side_units)
        put(struct, "top_units", self.top_units)
        put(struct, "units", self.units)
        put(struct, "corner_squares", self.corner_squares)
        put_length(struct, "side_rest", self.side_rest)
        put_length(struct, "top_rest", self.top_rest)
        put_length(struct, "unit_unfinished", self.unit_unfinished)
        put(struct, "divides", self.divides)
        put(struct, "unequal", self.unequal)
        put_length(struct, "after_unfinished_width", self.after_unfinished_width)
        put_length(struct, "after_unfinished_height", self.after_unfinished_height)

    @classmethod
    def _read(cls, struct: Any) -> "MedallionRow":
        return cls(kind=RoundKind(struct.kind), corner=RoundCorner(struct.corner), width=Length(struct.width),
                   repeat=Length(struct.repeat), most=Length(struct.most), before_width=Length(struct.before_width),
                   before_height=Length(struct.before_height), after_width=Length(struct.after_width),
                   after_height=Length(struct.after_height), side_pair=Length(struct.side_pair),
                   top_pair=Length(struct.top_pair), side_finished=Length(struct.side_finished),
                   top_finished=Length(struct.top_finished), side_cut=Length(struct.side_cut),
                   top_cut=Length(struct.top_cut), side_length=Length(struct.side_length),
                   top_length=Length(struct.top_length), side_units=int(struct.side_units),
                   top_units=int(struct.top_units), units=int(struct.units), corner_squares=int(struct.corner_squares),
                   side_rest=Length(struct.side_rest), top_rest=Length(struct.top_rest),
                   unit_unfinished=Length(struct.unit_unfinished), divides=int(struct.divides),
                   unequal=bool(struct.unequal), after_unfinished_width=Length(struct.after_unfinished_width),
                   after_unfinished_height=Length(struct.after_unfinished_height))


@dataclass(frozen=True)
class Medallion:
    """struct muslin_medallion, muslin/rounds.h

    finished_width: with all rounds
    finished_height
    unfinished_width: with all rounds, outer seams still raw
    unfinished_height
    undivided: pieced rounds that leave a rest
    unequal: coping rounds whose sides differ from top and bottom
    units: in all pieced rounds
    corner_squares: in all rounds
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    undivided: int
    unequal: int
    units: int
    corner_squares: int

    @classmethod
    def _read(cls, struct: Any) -> "Medallion":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   undivided=int(struct.undivided), unequal=int(struct.unequal), units=int(struct.units),
                   corner_squares=int(struct.corner_squares))


@dataclass(frozen=True)
class RepeatSpec(Spec):
    """struct muslin_repeat_spec, muslin/rounds.h

    side_finished: the run to be filled (initially 0)
    repeat_finished: length of a unit along it (initially 0)
    spacers: that share what the units leave; 0 .. MUSLIN_COUNT_MAX (initially 0)
    spacer_least: finished, 0 or more; without spacers not used (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    """

    _kind = structs.muslin_repeat_spec
    _init = "muslin_repeat_spec_init"

    side_finished: Optional[LengthLike] = None
    repeat_finished: Optional[LengthLike] = None
    spacers: Optional[int] = None
    spacer_least: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "side_finished", self.side_finished)
        put_length(struct, "repeat_finished", self.repeat_finished)
        put(struct, "spacers", self.spacers)
        put_length(struct, "spacer_least", self.spacer_least)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class Repeat:
    """struct muslin_repeat, muslin/rounds.h

    units_below: the most that do not pass the side
    rest_below: what they leave
    units_above: the fewest that reach it
    over_above: how far they pass it
    units_nearest: of the two, the nearer; the larger when equally near
    repeat_below: the repeat with which units_below fill the side, rounded; 0 without a unit
    repeat_below_error: less the exact one, down to a tick
    repeat_above: the repeat with which units_above fill it
    repeat_above_error: less the exact one, down to a tick
    unit_unfinished: repeat_finished + m
    units: with spacers: the most that leave every spacer its least; else units_below
    shared: what they leave; the exact spacer is this over `spacers`
    spacer_finished: rounded; 0 without spacers
    spacer_cut: spacer_finished + m; 0 without
    left_over: shared - spacers x spacer_finished; negative when they pass the side
    divides: 1 when the units alone fill the side
    below_left_over: side - units_below x repeat_below: what rounding leaves, negative when they pass the side; 0
        without a unit. The exact repeat is the side over the units
    above_left_over: side - units_above x repeat_above
    """

    units_below: int
    rest_below: Length
    units_above: int
    over_above: Length
    units_nearest: int
    repeat_below: Length
    repeat_below_error: Length
    repeat_above: Length
    repeat_above_error: Length
    unit_unfinished: Length
    units: int
    shared: Length
    spacer_finished: Length
    spacer_cut: Length
    left_over: Length
    divides: bool
    below_left_over: Length
    above_left_over: Length

    @classmethod
    def _read(cls, struct: Any) -> "Repeat":
        return cls(units_below=int(struct.units_below), rest_below=Length(struct.rest_below),
                   units_above=int(struct.units_above), over_above=Length(struct.over_above),
                   units_nearest=int(struct.units_nearest), repeat_below=Length(struct.repeat_below),
                   repeat_below_error=Length(struct.repeat_below_error), repeat_above=Length(struct.repeat_above),
                   repeat_above_error=Length(struct.repeat_above_error), unit_unfinished=Length(struct.unit_unfinished),
                   units=int(struct.units), shared=Length(struct.shared),
                   spacer_finished=Length(struct.spacer_finished), spacer_cut=Length(struct.spacer_cut),
                   left_over=Length(struct.left_over), divides=bool(struct.divides),
                   below_left_over=Length(struct.below_left_over), above_left_over=Length(struct.above_left_over))


@dataclass(frozen=True)
class CommonRepeat:
    """struct muslin_common_repeat, muslin/rounds.h

    common: the greatest length that divides both sides
    parts: the repeat is this part of it: common / parts exactly
    repeat: finished, rounded
    repeat_error: less the exact one, down to a tick
    across: units along the width
    down: units along the height
    """

    common: Length
    parts: int
    repeat: Length
    repeat_error: Length
    across: int
    down: int

    @classmethod
    def _read(cls, struct: Any) -> "CommonRepeat":
        return cls(common=Length(struct.common), parts=int(struct.parts), repeat=Length(struct.repeat),
                   repeat_error=Length(struct.repeat_error), across=int(struct.across), down=int(struct.down))


@dataclass(frozen=True)
class PointBorderSpec(Spec):
    """struct muslin_point_border_spec, muslin/rounds.h

    side_finished: the run to be filled (initially 0)
    diagonal_finished: of a square: the depth of the border; 0: as `squares` need it to fill the side (initially 0)
    squares: in the run, 1 .. MUSLIN_POINT_BORDER_SQUARES_MAX, when no diagonal is given; else not used, 0 or more
        (initially 0)
    runs: alike, counted together; 1 .. MUSLIN_COUNT_MAX (initially 1)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    """

    _kind = structs.muslin_point_border_spec
    _init = "muslin_point_border_spec_init"

    side_finished: Optional[LengthLike] = None
    diagonal_finished: Optional[LengthLike] = None
    squares: Optional[int] = None
    runs: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "side_finished", self.side_finished)
        put_length(struct, "diagonal_finished", self.diagonal_finished)
        put(struct, "squares", self.squares)
        put(struct, "runs", self.runs)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class PointBorder:
    """struct muslin_point_border, muslin/rounds.h

    diagonal_numerator: the finished diagonal D, exactly: this over ...
    diagonal_denominator: ... this, 1 when it was given
    diagonal_finished: rounded as `measuring`
    diagonal_error: less the exact one, down to a tick
    squares_per_run: as many as fit whole
    rest: of the side, beyond the squares
    square_finished: D / sqrt 2, rounded as `measuring`
    square_finished_error: less the exact one, down to a tick
    square_cut: D / sqrt 2 + m, rounded as `cutting`: also the strip squares are cut from
    square_cut_error: less the exact one, down to a tick
    setting_cut: a square cut twice, corner to corner, for four triangles: D + (1 + sqrt 2) m
    setting_cut_error: less the exact one, down to a tick
    end_cut: a square cut once for two half triangles: D / 2 + (1 + 1 / sqrt 2) m
    end_cut_error: less the exact one, down to a tick
    border_unfinished: depth of the border: D, rounded, + m
    squares: in all runs
    setting_triangles: two for each pair of neighbours
    setting_squares: to cut for them, a quarter each, up
    end_triangles: four a run
    end_squares: two a run
    run_longer_by: what rounding makes of a run: its squares as cut, sewn with the seams given, less as many of D, to
        the nearest tick; negative when shorter
    """

    diagonal_numerator: Length
    diagonal_denominator: int
    diagonal_finished: Length
    diagonal_error: Length
    squares_per_run: int
    rest: Length
    square_finished: Length
    square_finished_error: Length
    square_cut: Length
    square_cut_error: Length
    setting_cut: Length
    setting_cut_error: Length
    end_cut: Length
    end_cut_error: Length
    border_unfinished: Length
    squares: int
    setting_triangles: int
    setting_squares: int
    end_triangles: int
    end_squares: int
    run_longer_by: Length

    @classmethod
    def _read(cls, struct: Any) -> "PointBorder":
        return cls(diagonal_numerator=Length(struct.diagonal_numerator),
                   diagonal_denominator=int(struct.diagonal_denominator),
                   diagonal_finished=Length(struct.diagonal_finished), diagonal_error=Length(struct.diagonal_error),
                   squares_per_run=int(struct.squares_per_run), rest=Length(struct.rest),
                   square_finished=Length(struct.square_finished),
                   square_finished_error=Length(struct.square_finished_error), square_cut=Length(struct.square_cut),
                   square_cut_error=Length(struct.square_cut_error), setting_cut=Length(struct.setting_cut),
                   setting_cut_error=Length(struct.setting_cut_error), end_cut=Length(struct.end_cut),
                   end_cut_error=Length(struct.end_cut_error), border_unfinished=Length(struct.border_unfinished),
                   squares=int(struct.squares), setting_triangles=int(struct.setting_triangles),
                   setting_squares=int(struct.setting_squares), end_triangles=int(struct.end_triangles),
                   end_squares=int(struct.end_squares), run_longer_by=Length(struct.run_longer_by))


@dataclass(frozen=True)
class BedSpec(Spec):
    """struct muslin_bed_spec, muslin/fit.h

    mattress_width: 1 or more (initially 0)
    mattress_length: 1 or more (initially 0)
    mattress_depth: 1 or more for DEPTH and OVER_JOINT (initially 0)
    floor_height: floor to top of mattress; 1 or more for FLOOR, else 0 if unknown (initially 0)
    beyond_depth: added to the depth by OVER_JOINT (initially 3 in)
    side_drop: left and right, for GIVEN (initially 0)
    foot_drop: for GIVEN and with MUSLIN_BED_FOOT_GIVEN (initially 0)
    head_drop: beyond the mattress at the head, where the quilt hangs there too (initially 0)
    pillow_tuck: to fold under and over the pillows (initially 0)
    quilting_extra: what quilting will take up of width and of length: 1-3 in or more on a bed quilt (Standard quilt
        sizes for mattresses); measure a sample (initially 0)
    drop: enum muslin_drop (initially Drop.DEPTH)
    foot_corner: enum muslin_foot_corner (initially FootCorner.SQUARE)
    foot_given: the flag MUSLIN_BED_FOOT_GIVEN (initially False)
    """

    _kind = structs.muslin_bed_spec
    _init = "muslin_bed_spec_init"

    mattress_width: Optional[LengthLike] = None
    mattress_length: Optional[LengthLike] = None
    mattress_depth: Optional[LengthLike] = None
    floor_height: Optional[LengthLike] = None
    beyond_depth: Optional[LengthLike] = None
    side_drop: Optional[LengthLike] = None
    foot_drop: Optional[LengthLike] = None
    head_drop: Optional[LengthLike] = None
    pillow_tuck: Optional[LengthLike] = None
    quilting_extra: Optional[LengthLike] = None
    drop: Optional[Drop] = None
    foot_corner: Optional[FootCorner] = None
    foot_given: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "mattress_width", self.mattress_width)
        put_length(struct, "mattress_length", self.mattress_length)
        put_length(struct, "mattress_depth", self.mattress_depth)
        put_length(struct, "floor_height", self.floor_height)
        put_length(struct, "beyond_depth", self.beyond_depth)
        put_length(struct, "side_drop", self.side_drop)
        put_length(struct, "foot_drop", self.foot_drop)
        put_length(struct, "head_drop", self.head_drop)
        put_length(struct, "pillow_tuck", self.pillow_tuck)
        put_length(struct, "quilting_extra", self.quilting_extra)
        put(struct, "drop", self.drop)
        put(struct, "foot_corner", self.foot_corner)
        put_flag(struct, BED_FOOT_GIVEN, self.foot_given)


@dataclass(frozen=True)
class Bed:
    """struct muslin_bed, muslin/fit.h

    side_drop: on each side, by the rule asked for
    foot_drop: at the foot
    finished_width: of the quilt on the bed: mattress + 2 side drops
    finished_length: mattress + head drop + foot drop + pillow tuck
    top_width: finished width of the top to piece: the same and quilting_extra
    top_length
    corner_hang: how far below the mattress a foot corner reaches along the cloth, up to a tick: its point, sqrt(side
        drop^2 + foot drop^2), so 1.414 drops where they are equal; when rounded, the longer of the two drops
    corner_radius: of the quarter circle to draw: the shorter of the two drops; 0 when square
    corner_cut_off: how far the point stands beyond that circle, (sqrt 2 - 1) radii, up to a tick: what is lost of the
        corner along its diagonal; 0 when square
    corner_clearance: floor_height - corner_hang, below 0 when the corner lies on the floor; 0 where floor_height is 0
    corner_touches: 1 when floor_height is given and the corner hangs lower: feet catch in it
    warnings: MUSLIN_WARN_SMALL_QUILT: no side of the mattress, as of a crib's, passes 60 in
    """

    side_drop: Length
    foot_drop: Length
    finished_width: Length
    finished_length: Length
    top_width: Length
    top_length: Length
    corner_hang: Length
    corner_radius: Length
    corner_cut_off: Length
    corner_clearance: Length
    corner_touches: bool
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Bed":
        return cls(side_drop=Length(struct.side_drop), foot_drop=Length(struct.foot_drop),
                   finished_width=Length(struct.finished_width), finished_length=Length(struct.finished_length),
                   top_width=Length(struct.top_width), top_length=Length(struct.top_length),
                   corner_hang=Length(struct.corner_hang), corner_radius=Length(struct.corner_radius),
                   corner_cut_off=Length(struct.corner_cut_off), corner_clearance=Length(struct.corner_clearance),
                   corner_touches=bool(struct.corner_touches), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BedCoveredSpec(Spec):
    """struct muslin_bed_covered_spec, muslin/fit.h

    quilt_width: finished, 1 or more (initially 0)
    quilt_length: finished, 1 or more (initially 0)
    mattress_width: 1 or more (initially 0)
    mattress_length: 1 or more (initially 0)
    mattress_depth: 0 if unknown (initially 0)
    floor_height: from the floor to the top of the mattress; 0 if unknown (initially 0)
    head_drop: as in struct muslin_bed_spec (initially 0)
    pillow_tuck: as in struct muslin_bed_spec (initially 0)
    foot_corner: enum muslin_foot_corner (initially FootCorner.SQUARE)
    """

    _kind = structs.muslin_bed_covered_spec
    _init = "muslin_bed_covered_spec_init"

    quilt_width: Optional[LengthLike] = None
    quilt_length: Optional[LengthLike] = None
    mattress_width: Optional[LengthLike] = None
    mattress_length: Optional[LengthLike] = None
    mattress_depth: Optional[LengthLike] = None
    floor_height: Optional[LengthLike] = None
    head_drop: Optional[LengthLike] = None
    pillow_tuck: Optional[LengthLike] = None
    foot_corner: Optional[FootCorner] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "quilt_width", self.quilt_width)
        put_length(struct, "quilt_length", self.quilt_length)
        put_length(struct, "mattress_width", self.mattress_width)
        put_length(struct, "mattress_length", self.mattress_length)
        put_length(struct, "mattress_depth", self.mattress_depth)
        put_length(struct, "floor_height", self.floor_height)
        put_length(struct, "head_drop", self.head_drop)
        put_length(struct, "pillow_tuck", self.pillow_tuck)
        put(struct, "foot_corner", self.foot_corner)


@dataclass(frozen=True)
class BedCover:
    """struct muslin_bed_cover, muslin/fit.h

    side_drop: on each side, half of what is left over, down to a tick; below 0 where the quilt is narrower than the
        mattress
    foot_drop: what is left of the length; below 0 where the quilt does not reach the foot
    short_width: how much wider it must be for the sides to hang to the mattress's depth; 0: it is wide enough
    short_length: the same for the length
    corner_hang: as in struct muslin_bed; 0 where a drop is below 0
    corner_clearance: as in struct muslin_bed
    reaches_edges: 1 when the quilt covers the top of the mattress
    reaches_depth: 1 when it hangs to the depth on both sides and at the foot
    corner_touches: 1 when floor_height is given and a foot corner hangs lower
    warnings: MUSLIN_WARN_SMALL_QUILT: no side of quilt or of mattress is longer than 60 in
    beyond_side: how far each side hangs below the mattress's lower edge, down to a tick: side_drop less the depth; 0:
        it just reaches it, below 0: it falls short
    beyond_foot: the same at the foot
    """

    side_drop: Length
    foot_drop: Length
    short_width: Length
    short_length: Length
    corner_hang: Length
    corner_clearance: Length
    reaches_edges: bool
    reaches_depth: bool
    corner_touches: bool
    warnings: Tuple[Warning, ...]
    beyond_side: Length
    beyond_foot: Length

    @classmethod
    def _read(cls, struct: Any) -> "BedCover":
        return cls(side_drop=Length(struct.side_drop), foot_drop=Length(struct.foot_drop),
                   short_width=Length(struct.short_width), short_length=Length(struct.short_length),
                   corner_hang=Length(struct.corner_hang), corner_clearance=Length(struct.corner_clearance),
                   reaches_edges=bool(struct.reaches_edges), reaches_depth=bool(struct.reaches_depth),
                   corner_touches=bool(struct.corner_touches), warnings=warnings_in(struct.warnings),
                   beyond_side=Length(struct.beyond_side), beyond_foot=Length(struct.beyond_foot))


@dataclass(frozen=True)
class FitSpec(Spec):
    """struct muslin_fit_spec, muslin/fit.h

    wanted_width: 1 or more, with borders (initially 0)
    wanted_length: 1 or more (initially 0)
    width_under: how much narrower it may come out (initially 0)
    width_over: how much wider (initially 0)
    length_under: how much shorter (initially 0)
    length_over: how much longer (initially 0)
    block_least: 1 or more (initially 6 in)
    block_most: block_least or more (initially 14 in)
    block_step: 1 or more (initially 1/2 in)
    sash_least: 1 or more where sashes are allowed; where they are not, all three are not looked at (initially 1 in)
    sash_most: (initially 3 in)
    sash_step: from width to width, 1 or more (initially 1/2 in)
    border_least: on each side, all borders together; 0: none (initially 0)
    border_most: (initially 0)
    border_step: 1 or more (initially 1 in)
    columns_least: 1 or more (initially 1)
    columns_most: columns_least or more (initially 100)
    rows_least: 1 or more (initially 1)
    rows_most: rows_least or more (initially 100)
    best: list so many only; 0: all, to MUSLIN_COUNT_MAX (initially 0)
    work_limit: the most combinations of kind, block, sash and border that are tried, and the most settings that may be
        found, listed or not; 1 .. MUSLIN_COUNT_MAX (initially 1000000)
    rank: enum muslin_fit_rank (initially FitRank.NEAREST)
    columns_parity: enum muslin_parity (initially Parity.ANY)
    rows_parity: enum muslin_parity (initially Parity.ANY)
    allow_straight: the flag MUSLIN_FIT_ALLOW_STRAIGHT (initially False)
    allow_sashed: the flag MUSLIN_FIT_ALLOW_SASHED (initially False)
    allow_framed: the flag MUSLIN_FIT_ALLOW_FRAMED (initially False)
    allow_on_point: the flag MUSLIN_FIT_ALLOW_ON_POINT (initially False)
    """

    _kind = structs.muslin_fit_spec
    _init = "muslin_fit_spec_init"

    wanted_width: Optional[LengthLike] = None
    wanted_length: Optional[LengthLike] = None
    width_under: Optional[LengthLike] = None
    width_over: Optional[LengthLike] = None
    length_under: Optional[LengthLike] = None
    length_over: Optional[LengthLike] = None
    block_least: Optional[LengthLike] = None
    block_most: Optional[LengthLike] = None
    block_step: Optional[LengthLike] = None
    sash_least: Optional[LengthLike] = None
    sash_most: Optional[LengthLike] = None
    sash_step: Optional[LengthLike] = None
    border_least: Optional[LengthLike] = None
    border_most: Optional[LengthLike] = None
    border_step: Optional[LengthLike] = None
    columns_least: Optional[int] = None
    columns_most: Optional[int] = None
    rows_least: Optional[int] = None
    rows_most: Optional[int] = None
    best: Optional[int] = None
    work_limit: Optional[int] = None
    rank: Optional[FitRank] = None
    columns_parity: Optional[Parity] = None
    rows_parity: Optional[Parity] = None
    allow_straight: Optional[bool] = None
    allow_sashed: Optional[bool] = None
    allow_framed: Optional[bool] = None
    allow_on_point: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "wanted_width", self.wanted_width)
        put_length(struct, "wanted_length", self.wanted_length)
        put_length(struct, "width_under", self.width_under)
        put_length(struct, "width_over", self.width_over)
        put_length(struct, "length_under", self.length_under)
        put_length(struct, "length_over", self.length_over)
        put_length(struct, "block_least", self.block_least)
        put_length(struct, "block_most", self.block_most)
        put_length(struct, "block_step", self.block_step)
        put_length(struct, "sash_least", self.sash_least)
        put_length(struct, "sash_most", self.sash_most)
        put_length(struct, "sash_step", self.sash_step)
        put_length(struct, "border_least", self.border_least)
        put_length(struct, "border_most", self.border_most)
        put_length(struct, "border_step", self.border_step)
        put(struct, "columns_least", self.columns_least)
        put(struct, "columns_most", self.columns_most)
        put(struct, "rows_least", self.rows_least)
        put(struct, "rows_most", self.rows_most)
        put(struct, "best", self.best)
        put(struct, "work_limit", self.work_limit)
        put(struct, "rank", self.rank)
        put(struct, "columns_parity", self.columns_parity)
        put(struct, "rows_parity", self.rows_parity)
        put_flag(struct, FIT_ALLOW_STRAIGHT, self.allow_straight)
        put_flag(struct, FIT_ALLOW_SASHED, self.allow_sashed)
        put_flag(struct, FIT_ALLOW_FRAMED, self.allow_framed)
        put_flag(struct, FIT_ALLOW_ON_POINT, self.allow_on_point)


@dataclass(frozen=True)
class Fit:
    """struct muslin_fit, muslin/fit.h

    kind: enum muslin_fit_kind
    exact: 1 when width and length are exactly as wanted; always 0 on point, where they are no whole ticks even if
        off_width and off_length are 0
    columns: of blocks, alternates apart
    rows: so
    block: finished side
    sash: 0 where the kind has none
    border: on each side
    finished_width: on point to the nearest tick, else exact
    finished_length
    off_width: finished_width - wanted_width
    off_length
    blocks: columns x rows
    alternates: on point (columns - 1)(rows - 1), else 0
    rank_key: what it is ranked by, the lowest first: ticks off in all; blocks and alternates; or minus the block in
        ticks
    """

    kind: FitKind
    exact: bool
    columns: int
    rows: int
    block: Length
    sash: Length
    border: Length
    finished_width: Length
    finished_length: Length
    off_width: Length
    off_length: Length
    blocks: int
    alternates: int
    rank_key: int

    @classmethod
    def _read(cls, struct: Any) -> "Fit":
        return cls(kind=FitKind(struct.kind), exact=bool(struct.exact), columns=int(struct.columns),
                   rows=int(struct.rows), block=Length(struct.block), sash=Length(struct.sash),
                   border=Length(struct.border), finished_width=Length(struct.finished_width),
                   finished_length=Length(struct.finished_length), off_width=Length(struct.off_width),
                   off_length=Length(struct.off_length), blocks=int(struct.blocks), alternates=int(struct.alternates),
                   rank_key=int(struct.rank_key))


@dataclass(frozen=True)
class FitAcrossSpec(Spec):
    """struct muslin_fit_across_spec, muslin/fit.h

    wanted: the width (or length) to fill, 1 or more (initially 0)
    border: on each side (initially 0)
    block: 1 or more (initially 0)
    sash: between blocks; 0: none (initially 0)
    direction: enum muslin_direction: fewer blocks, more, or the nearer of the two (ties: more) (initially
        Direction.NEAREST)
    frame: the flag MUSLIN_FIT_ACROSS_FRAME (initially False)
    """

    _kind = structs.muslin_fit_across_spec
    _init = "muslin_fit_across_spec_init"

    wanted: Optional[LengthLike] = None
    border: Optional[LengthLike] = None
    block: Optional[LengthLike] = None
    sash: Optional[LengthLike] = None
    direction: Optional[Direction] = None
    frame: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "wanted", self.wanted)
        put_length(struct, "border", self.border)
        put_length(struct, "block", self.block)
        put_length(struct, "sash", self.sash)
        put(struct, "direction", self.direction)
        put_flag(struct, FIT_ACROSS_FRAME, self.frame)


@dataclass(frozen=True)
class FitAcrossBlocks:
    """struct muslin_fit_across_blocks, muslin/fit.h

    blocks: 1 or more
    finished_width: of so many blocks, their sashes and both borders
    off: finished_width - wanted
    room: the blocks that would fill it, exact as a fraction: room / pitch, where room is wanted - 2 border + sash, or -
        sash when framed, ...
    pitch: ... and pitch is block + sash
    exact: 1 when it comes out at the wanted width
    """

    blocks: int
    finished_width: Length
    off: Length
    room: Length
    pitch: Length
    exact: bool

    @classmethod
    def _read(cls, struct: Any) -> "FitAcrossBlocks":
        return cls(blocks=int(struct.blocks), finished_width=Length(struct.finished_width), off=Length(struct.off),
                   room=Length(struct.room), pitch=Length(struct.pitch), exact=bool(struct.exact))


@dataclass(frozen=True)
class FitTrianglesSpec(Spec):
    """struct muslin_fit_triangles_spec, muslin/fit.h

    wanted_width: 1 or more (initially 0)
    wanted_length: 1 or more (initially 0)
    height: finished height of a triangle, 1 or more: the depth of a row (initially 0)
    rows_direction: enum muslin_direction: fewer rows, more, or the nearest (ties: more) (initially Direction.NEAREST)
    sides_direction: enum muslin_direction, for the sides across (initially Direction.NEAREST)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    """

    _kind = structs.muslin_fit_triangles_spec
    _init = "muslin_fit_triangles_spec_init"

    wanted_width: Optional[LengthLike] = None
    wanted_length: Optional[LengthLike] = None
    height: Optional[LengthLike] = None
    rows_direction: Optional[Direction] = None
    sides_direction: Optional[Direction] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "wanted_width", self.wanted_width)
        put_length(struct, "wanted_length", self.wanted_length)
        put_length(struct, "height", self.height)
        put(struct, "rows_direction", self.rows_direction)
        put(struct, "sides_direction", self.sides_direction)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class FitTriangleRows:
    """struct muslin_fit_triangle_rows, muslin/fit.h

    rows: 1 or more
    sides: whole sides of triangles across, 1 or more
    side: 2 height / sqrt 3, to the nearest tick
    finished_width: sides x 2 height / sqrt 3, rounded once to the nearest tick
    finished_length: rows x height
    off_width: finished - wanted
    off_length
    triangles: whole ones, with squared ends: 2 sides - 1 a row
    half_triangles: two a row, one at each end ...
    halves_each_hand: ... which are mirror images: so many lean to the left, so many to the right
    unfinished_width: of the quilt, with E = 2 s + u on it: nearest tick
    unfinished_length
    strip_cut: cut width of the strips for triangles with sharp tips: height + 3/2 E (3 s where nothing is taken up), up
        to a tick
    strip_cut_blunt: ... where the ruler cuts the upper tip off level with its allowance: height + E
    cut_base: of a whole triangle along the strip, from raw point to raw point, whether the upper tip is sharp or blunt:
        (2 height + 3 E) / sqrt 3, up to a tick
    half_cut_base: of a half triangle along the strip, from its straight side, which has its allowance too: cut_base / 2
        + E / 2 before rounding, up to a tick
    """

    rows: int
    sides: int
    side: Length
    finished_width: Length
    finished_length: Length
    off_width: Length
    off_length: Length
    triangles: int
    half_triangles: int
    halves_each_hand: int
    unfinished_width: Length
    unfinished_length: Length
    strip_cut: Length
    strip_cut_blunt: Length
    cut_base: Length
    half_cut_base: Length

    @classmethod
    def _read(cls, struct: Any) -> "FitTriangleRows":
        return cls(rows=int(struct.rows), sides=int(struct.sides), side=Length(struct.side),
                   finished_width=Length(struct.finished_width), finished_length=Length(struct.finished_length),
                   off_width=Length(struct.off_width), off_length=Length(struct.off_length),
                   triangles=int(struct.triangles), half_triangles=int(struct.half_triangles),
                   halves_each_hand=int(struct.halves_each_hand), unfinished_width=Length(struct.unfinished_width),
                   unfinished_length=Length(struct.unfinished_length), strip_cut=Length(struct.strip_cut),
                   strip_cut_blunt=Length(struct.strip_cut_blunt), cut_base=Length(struct.cut_base),
                   half_cut_base=Length(struct.half_cut_base))


@dataclass(frozen=True)
class FitRescaleSpec(Spec):
    """struct muslin_fit_rescale_spec, muslin/fit.h

    numerator: of the scale, 1 .. INT64_MAX: 3 / 2 is half as large again (initially 1)
    denominator: 1 .. INT64_MAX (initially 1)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    grid: the ruler's marks, 1 or more: cut sizes shall lie on it (initially 1/8 in)
    """

    _kind = structs.muslin_fit_rescale_spec
    _init = "muslin_fit_rescale_spec_init"

    numerator: Optional[int] = None
    denominator: Optional[int] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    grid: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "numerator", self.numerator)
        put(struct, "denominator", self.denominator)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "grid", self.grid)


@dataclass(frozen=True)
class FitRescaleRow(Spec):
    """struct muslin_fit_rescale_row, muslin/fit.h

    finished: in: as it is, 1 .. MUSLIN_SIZE_MAX (initially 0)
    new_finished: finished x numerator / denominator, to the nearest tick, ties up ... (initially 0)
    rest: ... and what that leaves out, in denominators of a tick: exact is new_finished + rest / denominator (initially
        0)
    new_cut: new_finished + 2 s + u (initially 0)
    cut_below: the largest cut size on the grid that is not larger than the exact one; 0 where nothing would be seen of
        it (2 s + u or less) (initially 0)
    cut_nearest: the nearest on the grid, ties up, of those of which something is seen (above 2 s + u): cut_above where
        the nearest of all is no such one (initially 0)
    cut_above: the smallest on the grid that is not smaller (initially 0)
    on_grid: 1 when the exact cut size lies on the grid: all four are then the same (initially 0)
    """

    _kind = structs.muslin_fit_rescale_row
    _init = "muslin_fit_rescale_row_init"

    finished: Length = Length(0)
    new_finished: Length = Length(0)
    rest: int = 0
    new_cut: Length = Length(0)
    cut_below: Length = Length(0)
    cut_nearest: Length = Length(0)
    cut_above: Length = Length(0)
    on_grid: bool = False

    def _put(self, struct: Any) -> None:
        put_length(struct, "finished", self.finished)
        put_length(struct, "new_finished", self.new_finished)
        put(struct, "rest", self.rest)
        put_length(struct, "new_cut", self.new_cut)
        put_length(struct, "cut_below", self.cut_below)
        put_length(struct, "cut_nearest", self.cut_nearest)
        put_length(struct, "cut_above", self.cut_above)
        put(struct, "on_grid", self.on_grid)

    @classmethod
    def _read(cls, struct: Any) -> "FitRescaleRow":
        return cls(finished=Length(struct.finished), new_finished=Length(struct.new_finished), rest=int(struct.rest),
                   new_cut=Length(struct.new_cut), cut_below=Length(struct.cut_below),
                   cut_nearest=Length(struct.cut_nearest), cut_above=Length(struct.cut_above),
                   on_grid=bool(struct.on_grid))


@dataclass(frozen=True)
class FitRescaled:
    """struct muslin_fit_rescaled, muslin/fit.h

    off_grid: sizes that do not lie on the grid
    unit: the largest measure of which all finished sizes are whole multiples
    unit_below: what that unit may become so that every cut size lies on the grid: the next one not above the scale
        asked for, 0 if there is none ...
    unit_above: ... and the next one not below it, 0 if there is none
    numerator: the nearer of the two as a scale in lowest terms, ties up: numerator / ...
    denominator: ... denominator; 0 / 1 if there is none
    warnings: MUSLIN_WARN_OFF_GRID
    """

    off_grid: int
    unit: Length
    unit_below: Length
    unit_above: Length
    numerator: int
    denominator: int
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "FitRescaled":
        return cls(off_grid=int(struct.off_grid), unit=Length(struct.unit), unit_below=Length(struct.unit_below),
                   unit_above=Length(struct.unit_above), numerator=int(struct.numerator),
                   denominator=int(struct.denominator), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BindingWidthSpec(Spec):
    """struct muslin_binding_width_spec, muslin/finishing.h

    fold: enum muslin_fold (initially Fold.DOUBLE)
    allowance: s, from the raw edge of the binding to its seam (initially 1/4 in)
    front: finished width shown on the front, from the seam to the edge of the quilt (initially 1/4 in)
    thickness: t of the quilt sandwich at the edge (initially 0)
    back: finished width wanted on the back; not used when binding_cut is given (initially 1/4 in)
    turn_under: at the far edge of a single fold; not used for a double one (initially 1/4 in)
    binding_cut: 0: work out the cut width; else: work out what this one shows on the back (initially 0)
    uneven_limit: warn when back and front differ by more than this (initially 1/8 in)
    """

    _kind = structs.muslin_binding_width_spec
    _init = "muslin_binding_width_spec_init"

    fold: Optional[Fold] = None
    allowance: Optional[LengthLike] = None
    front: Optional[LengthLike] = None
    thickness: Optional[LengthLike] = None
    back: Optional[LengthLike] = None
    turn_under: Optional[LengthLike] = None
    binding_cut: Optional[LengthLike] = None
    uneven_limit: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "fold", self.fold)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "front", self.front)
        put_length(struct, "thickness", self.thickness)
        put_length(struct, "back", self.back)
        put_length(struct, "turn_under", self.turn_under)
        put_length(struct, "binding_cut", self.binding_cut)
        put_length(struct, "uneven_limit", self.uneven_limit)


@dataclass(frozen=True)
class BindingWidth:
    """struct muslin_binding_width, muslin/finishing.h

    cut_width: C, of the strip
    back: finished width shown on the back, half ticks down; below 0: it does not reach round
    folded: width after folding, before sewing: C/2 up for a double fold, C for a single one
    warnings: MUSLIN_WARN_BINDING_UNEVEN beyond the limit; MUSLIN_WARN_BACK_TOO_NARROW when the back shows less than the
        front, so that the seam stays bare; half ticks counted
    """

    cut_width: Length
    back: Length
    folded: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "BindingWidth":
        return cls(cut_width=Length(struct.cut_width), back=Length(struct.back), folded=Length(struct.folded),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BindingSpec(Spec):
    """struct muslin_binding_spec, muslin/finishing.h

    perimeter: finished, of any outline, up to 4 x MUSLIN_SIZE_MAX; 0: 2 x (width + length) (initially 0)
    quilt_width: finished; not read when a perimeter is given (initially 0)
    quilt_length: the same (initially 0)
    extra: for the ends and the last join; sources use 10, 12, 15, 20, 24 in (initially 12 in)
    corners: of the outline, 0 .. MUSLIN_COUNT_MAX; 0 for a rounded one (initially 4)
    corner_extra: added for each corner; most sources add none (initially 0)
    binding_cut: cut width of the strips, 1 or more (initially 2 1/2 in)
    strip_length: usable length of each strip, 1 or more (initially 40 in)
    allowance: of the joins (initially 1/4 in)
    step: purchase step, 1 or more (initially 4 1/2 in)
    spare_strips: cut on top of the need, 0 .. MUSLIN_COUNT_MAX (initially 0)
    join: enum muslin_join; BUTTED ignores the loss, as many published figures do (initially Join.DIAGONAL)
    """

    _kind = structs.muslin_binding_spec
    _init = "muslin_binding_spec_init"

    perimeter: Optional[LengthLike] = None
    quilt_width: Optional[LengthLike] = None
    quilt_length: Optional[LengthLike] = None
    extra: Optional[LengthLike] = None
    corners: Optional[int] = None
    corner_extra: Optional[LengthLike] = None
    binding_cut: Optional[LengthLike] = None
    strip_length: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    step: Optional[LengthLike] = None
    spare_strips: Optional[int] = None
    join: Optional[Join] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "perimeter", self.perimeter)
        put_length(struct, "quilt_width", self.quilt_width)
        put_length(struct, "quilt_length", self.quilt_length)
        put_length(struct, "extra", self.extra)
        put(struct, "corners", self.corners)
        put_length(struct, "corner_extra", self.corner_extra)
        put_length(struct, "binding_cut", self.binding_cut)
        put_length(struct, "strip_length", self.strip_length)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "step", self.step)
        put(struct, "spare_strips", self.spare_strips)
        put(struct, "join", self.join)


@dataclass(frozen=True)
class Binding:
    """struct muslin_binding, muslin/finishing.h

    perimeter: finished
    length: perimeter + corners x corner_extra + extra: wanted in one run
    strips_needed: for that run
    strips: to cut: strips_needed + spare_strips
    joins: strips_needed - 1
    loss_per_join: as of muslin_join_loss()
    joined: the run of the needed strips, without the spare ones
    spare: joined - length: what is left at the last corner
    cloth_length: strips x binding_cut
    bought: cloth_length up to the step
    narrower_by: the cloth may be this much narrower before another strip is needed, down
    warnings: MUSLIN_WARN_NO_SLACK when nothing is spare
    """

    perimeter: Length
    length: Length
    strips_needed: int
    strips: int
    joins: int
    loss_per_join: Length
    joined: Length
    spare: Length
    cloth_length: Length
    bought: Length
    narrower_by: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Binding":
        return cls(perimeter=Length(struct.perimeter), length=Length(struct.length),
                   strips_needed=int(struct.strips_needed), strips=int(struct.strips), joins=int(struct.joins),
                   loss_per_join=Length(struct.loss_per_join), joined=Length(struct.joined), spare=Length(struct.spare),
                   cloth_length=Length(struct.cloth_length), bought=Length(struct.bought),
                   narrower_by=Length(struct.narrower_by), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BiasSpec(Spec):
    """struct muslin_bias_spec, muslin/finishing.h

    width: of the cloth piece, 1 or more; not read for the least square (initially 0)
    length: its other side; the tube: 1 or more, strips: the same as width or 0 (initially 0)
    strip_cut: w, cut width of the bias strip, 1 or more (initially 2 1/2 in)
    allowance: s, of the seams (initially 1/4 in)
    wanted: length of bias strip, 1 or more; read for the least square only (initially 0)
    blunt_ends: the flag MUSLIN_BIAS_BLUNT_ENDS (initially False)
    """

    _kind = structs.muslin_bias_spec
    _init = "muslin_bias_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    strip_cut: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    wanted: Optional[LengthLike] = None
    blunt_ends: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put_length(struct, "strip_cut", self.strip_cut)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "wanted", self.wanted)
        put_flag(struct, BIAS_BLUNT_ENDS, self.blunt_ends)


@dataclass(frozen=True)
class Bias:
    """struct muslin_bias, muslin/finishing.h

    rounds: of the tube; for separate strips: how many strips
    joins: that take 2 sqrt 2 s off the run each: rounds - 1; 0 without a round
    length: of bias strip obtained, down to a tick; 0 if none
    square_cut: side of the square to cut (least square), else 0
    area_rule: sqrt(wanted x w), nearest tick (least square), else 0: the published rule, a lower bound only
    spare: length - wanted (least square), else 0
    """

    rounds: int
    joins: int
    length: Length
    square_cut: Length
    area_rule: Length
    spare: Length

    @classmethod
    def _read(cls, struct: Any) -> "Bias":
        return cls(rounds=int(struct.rounds), joins=int(struct.joins), length=Length(struct.length),
                   square_cut=Length(struct.square_cut), area_rule=Length(struct.area_rule), spare=Length(struct.spare))


@dataclass(frozen=True)
class BattingSpec(Spec):
    """struct muslin_batting_spec, muslin/finishing.h

    quilt_width: finished (initially 0)
    quilt_length: (initially 0)
    margin_left: beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way (initially 3 in)
    margin_right: (initially 3 in)
    margin_top: (initially 3 in)
    margin_bottom: (initially 3 in)
    roll_width: of batting sold by length, for pieces joined; 0 when not asked (initially 0)
    fixed: the flag MUSLIN_BATTING_FIXED (initially False)
    """

    _kind = structs.muslin_batting_spec
    _init = "muslin_batting_spec_init"

    quilt_width: Optional[LengthLike] = None
    quilt_length: Optional[LengthLike] = None
    margin_left: Optional[LengthLike] = None
    margin_right: Optional[LengthLike] = None
    margin_top: Optional[LengthLike] = None
    margin_bottom: Optional[LengthLike] = None
    roll_width: Optional[LengthLike] = None
    fixed: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "quilt_width", self.quilt_width)
        put_length(struct, "quilt_length", self.quilt_length)
        put_length(struct, "margin_left", self.margin_left)
        put_length(struct, "margin_right", self.margin_right)
        put_length(struct, "margin_top", self.margin_top)
        put_length(struct, "margin_bottom", self.margin_bottom)
        put_length(struct, "roll_width", self.roll_width)
        put_flag(struct, BATTING_FIXED, self.fixed)


@dataclass(frozen=True)
class Batting:
    """struct muslin_batting, muslin/finishing.h

    width: to cut: quilt and margins
    length
    package: row of MUSLIN_TABLE_BATTING, the smallest area that covers, the first of equals; -1 when none does
    package_width: as listed; 0 when none
    package_length
    spare_width: package beyond the need along the quilt's width, as it lies; 0 when none
    spare_length: ... and along its length
    turned: 1 when the package lies turned a quarter: only where it does not cover upright
    joined_turned: 1 when joined pieces run across the quilt, 0 when along its length
    joined_pieces: pieces of the roll laid edge to edge, without allowance; 0 when not asked
    joined_length: of roll to buy for them: the shorter of both ways; ties: fewer pieces, then along
    joined_joins: joined_pieces - 1
    """

    width: Length
    length: Length
    package: int
    package_width: Length
    package_length: Length
    spare_width: Length
    spare_length: Length
    turned: bool
    joined_turned: bool
    joined_pieces: int
    joined_length: Length
    joined_joins: int

    @classmethod
    def _read(cls, struct: Any) -> "Batting":
        return cls(width=Length(struct.width), length=Length(struct.length), package=int(struct.package),
                   package_width=Length(struct.package_width), package_length=Length(struct.package_length),
                   spare_width=Length(struct.spare_width), spare_length=Length(struct.spare_length),
                   turned=bool(struct.turned), joined_turned=bool(struct.joined_turned),
                   joined_pieces=int(struct.joined_pieces), joined_length=Length(struct.joined_length),
                   joined_joins=int(struct.joined_joins))


@dataclass(frozen=True)
class BackingSpec(Spec):
    """struct muslin_backing_spec, muslin/finishing.h

    quilt_width: finished (initially 0)
    quilt_length: (initially 0)
    margin_left: beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way (initially 4 in)
    margin_right: (initially 4 in)
    margin_top: (initially 4 in)
    margin_bottom: (initially 4 in)
    fabric_width: from edge to edge of the cloth, 1 or more (initially 40 in)
    selvage: cut off each edge: usable width u = fabric_width - 2 x selvage, 1 or more (initially 0)
    allowance: q, allowance of the backing's seams (initially 1/2 in)
    end_loss: added to each panel's length, for squaring (initially 0)
    repeat: pattern repeat along the cloth; each length cut is a whole number of them, the first too; 0 for none
        (initially 0)
    step: purchase step, 1 or more (initially 4 1/2 in)
    print: enum muslin_print: a print with a direction forbids what would lie turned a quarter, that is turned panels,
        and inserts, which are cut across the cloth (initially Print.NONE)
    round_panels: the flag MUSLIN_BACKING_ROUND_PANELS (initially False)
    """

    _kind = structs.muslin_backing_spec
    _init = "muslin_backing_spec_init"

    quilt_width: Optional[LengthLike] = None
    quilt_length: Optional[LengthLike] = None
    margin_left: Optional[LengthLike] = None
    margin_right: Optional[LengthLike] = None
    margin_top: Optional[LengthLike] = None
    margin_bottom: Optional[LengthLike] = None
    fabric_width: Optional[LengthLike] = None
    selvage: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    repeat: Optional[LengthLike] = None
    step: Optional[LengthLike] = None
    print: Optional[Print] = None
    round_panels: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "quilt_width", self.quilt_width)
        put_length(struct, "quilt_length", self.quilt_length)
        put_length(struct, "margin_left", self.margin_left)
        put_length(struct, "margin_right", self.margin_right)
        put_length(struct, "margin_top", self.margin_top)
        put_length(struct, "margin_bottom", self.margin_bottom)
        put_length(struct, "fabric_width", self.fabric_width)
        put_length(struct, "selvage", self.selvage)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "repeat", self.repeat)
        put_length(struct, "step", self.step)
        put(struct, "print", self.print)
        put_flag(struct, BACKING_ROUND_PANELS, self.round_panels)


@dataclass(frozen=True)
class Backing:
    """struct muslin_backing, muslin/finishing.h

    layout: enum muslin_backing_layout
    possible: 0: this layout cannot serve; everything below is then 0
    best: 1 for the one that buys least; ties: fewest seams, then the lower number
    turned: 1 when the cloth's length runs across the quilt
    needed_width: quilt and margins
    needed_length
    panels: lengths of cloth of the full width; the strips of an insert are not counted
    panel_length: cut length of each, with end_trim and repeat
    pieces: sewn together: panels, or centre and sides, or two halves and an insert's strips
    seams: in the finished backing, joins within an insert included
    joined_width: unfinished, of the backing as sewn, before trimming, along the quilt's width ...
    joined_length: ... and length
    cloth_length: exact: panels, and for an insert its strips one below the other
    cloth_with_repeat: one repeat more on the order, to shift the start; cloth_length without a repeat
    bought: cloth_with_repeat up to the step, on the total, or length by length if asked
    other_rounding: the same under the other rounding rule
    narrower_by: the cloth may be this much narrower and what is bought still be enough for this layout, with as many
        panels and strips; their widths change: plan again first
    strip_cut: cut width of each side panel (CENTRE) or of the insert (INSERT); else 0
    warnings: MUSLIN_WARN_NO_SLACK when narrower_by is 0
    """

    layout: BackingLayout
    possible: bool
    best: bool
    turned: bool
    needed_width: Length
    needed_length: Length
    panels: int
    panel_length: Length
    pieces: int
    seams: int
    joined_width: Length
    joined_length: Length
    cloth_length: Length
    cloth_with_repeat: Length
    bought: Length
    other_rounding: Length
    narrower_by: Length
    strip_cut: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Backing":
        return cls(layout=BackingLayout(struct.layout), possible=bool(struct.possible), best=bool(struct.best),
                   turned=bool(struct.turned), needed_width=Length(struct.needed_width),
                   needed_length=Length(struct.needed_length), panels=int(struct.panels),
                   panel_length=Length(struct.panel_length), pieces=int(struct.pieces), seams=int(struct.seams),
                   joined_width=Length(struct.joined_width), joined_length=Length(struct.joined_length),
                   cloth_length=Length(struct.cloth_length), cloth_with_repeat=Length(struct.cloth_with_repeat),
                   bought=Length(struct.bought), other_rounding=Length(struct.other_rounding),
                   narrower_by=Length(struct.narrower_by), strip_cut=Length(struct.strip_cut),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class Panel:
    """struct muslin_panel, muslin/finishing.h

    role: enum muslin_panel_role
    position: from 1, from the left (seams along) or the top (seams across)
    cut_width: across the cloth
    cut_length: along the cloth; of an insert this is its width in the backing
    count: equal pieces: more than 1 only for an insert, whose strips are joined end to end
    """

    role: PanelRole
    position: int
    cut_width: Length
    cut_length: Length
    count: int

    @classmethod
    def _read(cls, struct: Any) -> "Panel":
        return cls(role=PanelRole(struct.role), position=int(struct.position), cut_width=Length(struct.cut_width),
                   cut_length=Length(struct.cut_length), count=int(struct.count))


@dataclass(frozen=True)
class HangingSpec(Spec):
    """struct muslin_hanging_spec, muslin/finishing.h

    quilt_width: finished (initially 0)
    sleeves: 0, 1 or 2 (initially 1)
    inset: from each side edge of the quilt to the sleeve (initially 1 in)
    gap: between two sleeves, for a middle hook; not used for one (initially 2 in)
    drop: finished depth of the sleeve, lying flat; 1 or more where there is a sleeve (initially 4 in)
    ease: extra in the sleeve's front, so that the rod does not bulge the quilt (initially 1/2 in)
    hem: turned under at each end of a sleeve, in all (initially 1 in)
    allowance: of the sleeve's long seam, of the label, and of the binding seam at the triangles (initially 1/4 in)
    label_width: finished; 0 for no label (initially 0)
    label_height: finished, 1 or more where there is a label (initially 0)
    corner_triangle: finished short side of corner triangles that hold a rod or a label; 0 for none (initially 0)
    corners: how many triangles, 0 .. 4 (initially 0)
    """

    _kind = structs.muslin_hanging_spec
    _init = "muslin_hanging_spec_init"

    quilt_width: Optional[LengthLike] = None
    sleeves: Optional[int] = None
    inset: Optional[LengthLike] = None
    gap: Optional[LengthLike] = None
    drop: Optional[LengthLike] = None
    ease: Optional[LengthLike] = None
    hem: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    label_width: Optional[LengthLike] = None
    label_height: Optional[LengthLike] = None
    corner_triangle: Optional[LengthLike] = None
    corners: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "quilt_width", self.quilt_width)
        put(struct, "sleeves", self.sleeves)
        put_length(struct, "inset", self.inset)
        put_length(struct, "gap", self.gap)
        put_length(struct, "drop", self.drop)
        put_length(struct, "ease", self.ease)
        put_length(struct, "hem", self.hem)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "label_width", self.label_width)
        put_length(struct, "label_height", self.label_height)
        put_length(struct, "corner_triangle", self.corner_triangle)
        put(struct, "corners", self.corners)


@dataclass(frozen=True)
class Hanging:
    """struct muslin_hanging, muslin/finishing.h

    sleeves: as asked
    sleeve_finished: finished length of each; 0 without a sleeve, and so are both cut sizes
    sleeve_cut_length: finished + 2 hems
    sleeve_cut_width: 2 x drop + ease + 2 allowances: a tube
    label_cut_width: finished + 2 allowances; 0 without a label
    label_cut_height
    corner_squares: squares folded once on the diagonal, raw sides into the binding seam
    corner_square_cut: corner_triangle + 2 allowances; 0 without triangles
    """

    sleeves: int
    sleeve_finished: Length
    sleeve_cut_length: Length
    sleeve_cut_width: Length
    label_cut_width: Length
    label_cut_height: Length
    corner_squares: int
    corner_square_cut: Length

    @classmethod
    def _read(cls, struct: Any) -> "Hanging":
        return cls(sleeves=int(struct.sleeves), sleeve_finished=Length(struct.sleeve_finished),
                   sleeve_cut_length=Length(struct.sleeve_cut_length), sleeve_cut_width=Length(struct.sleeve_cut_width),
                   label_cut_width=Length(struct.label_cut_width), label_cut_height=Length(struct.label_cut_height),
                   corner_squares=int(struct.corner_squares), corner_square_cut=Length(struct.corner_square_cut))


@dataclass(frozen=True)
class StripquiltSpec(Spec):
    """struct muslin_stripquilt_spec, muslin/stripquilt.h

    strips: in hand (initially 0)
    strips_per_set: sewn side by side (initially 6)
    segments_per_block: 1 .. MUSLIN_STRIPQUILT_SEGMENTS_MAX (initially 2)
    columns: of blocks (initially 1)
    rows: (initially 1)
    tops: wanted; 0 for as many as the strips give (initially 0)
    strip_cut: cut width of a strip, 1 or more (initially 2 1/2 in)
    strip_length: of the shortest strip (initially 40 in)
    segment_cut: 0 for the cut that makes the block square (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    end_trim: taken off each end, as in muslin_yield_spec (initially 0)
    resquare_loss: as in struct muslin_yield_spec (initially 0)
    resquare_every: as in struct muslin_yield_spec (initially 0)
    fold_clear: as in struct muslin_yield_spec (initially 0)
    turning: enum muslin_turning (initially Turning.QUARTER_ALTERNATE)
    nesting: enum muslin_nesting (initially Nesting.TURN)
    square_tolerance: as in muslin_setting_spec; also for segment_cut 0 (initially 1/64 in)
    from_one_end: the flag MUSLIN_YIELD_FROM_ONE_END (initially False)
    """

    _kind = structs.muslin_stripquilt_spec
    _init = "muslin_stripquilt_spec_init"

    strips: Optional[int] = None
    strips_per_set: Optional[int] = None
    segments_per_block: Optional[int] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    tops: Optional[int] = None
    strip_cut: Optional[LengthLike] = None
    strip_length: Optional[LengthLike] = None
    segment_cut: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    end_trim: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    fold_clear: Optional[LengthLike] = None
    turning: Optional[Turning] = None
    nesting: Optional[Nesting] = None
    square_tolerance: Optional[LengthLike] = None
    from_one_end: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "strips", self.strips)
        put(struct, "strips_per_set", self.strips_per_set)
        put(struct, "segments_per_block", self.segments_per_block)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put(struct, "tops", self.tops)
        put_length(struct, "strip_cut", self.strip_cut)
        put_length(struct, "strip_length", self.strip_length)
        put_length(struct, "segment_cut", self.segment_cut)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put_length(struct, "end_trim", self.end_trim)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "fold_clear", self.fold_clear)
        put(struct, "turning", self.turning)
        put(struct, "nesting", self.nesting)
        put_length(struct, "square_tolerance", self.square_tolerance)
        put_flag(struct, YIELD_FROM_ONE_END, self.from_one_end)


@dataclass(frozen=True)
class Stripquilt:
    """struct muslin_stripquilt, muslin/stripquilt.h

    set_unfinished: width of a strip set
    set_finished
    strip_finished: what is seen of one strip
    segment_cut: as asked, or found
    segment_finished: what is seen of one segment
    segments_per_set: that a set gives
    segments_per_end: of those, from each end
    resquarings: a set
    strip_least: the shortest strip that gives as many segments
    strip_shorter_by: how much shorter strips may be before a segment is lost
    strip_longer_for_more: how much longer they must be to give more
    strip_left_over: of each set, fold included
    block_unfinished_width: of a block, outer seams still raw
    block_unfinished_height
    block_finished_width: as seen in the top
    block_finished_height
    blocks_per_top: columns x rows
    blocks_turned: in each top
    top_finished_width: without borders
    top_finished_length
    top_unfinished_width: outer seams still raw
    top_unfinished_length
    sets_in_hand: that the strips make
    tops_in_hand: that those give
    tops: planned: as wished, or all
    sets: to sew for them: one stack of segments each
    strips_used: sets x strips_per_set
    strips_left: of those in hand
    strips_for_one_more_top: beyond those in hand, to make tops_in_hand + 1
    blocks: in all planned tops
    segments: used in them
    segments_left: cut but not used
    stack_low: segments to take from each of the last stacks ...
    stack_high: ... and from each of the first `stacks_high`: one more, or as many ...
    stacks_high: ... and then this is all the sets
    groups: rows of muslin_stripquilt_groups
    segments_turned: end for end, in all blocks (MUSLIN_NESTING_TURN), else 0
    places_not_nesting: joins inside all blocks that do not nest (MUSLIN_NESTING_NAME), else 0
    block_square: 1 when a block is square to the tick
    warnings: MUSLIN_WARN_NO_SLACK, MUSLIN_WARN_NEST_CONFLICT, MUSLIN_WARN_SET_REPEATS, MUSLIN_WARN_SMALL_QUILT
    """

    set_unfinished: Length
    set_finished: Length
    strip_finished: Length
    segment_cut: Length
    segment_finished: Length
    segments_per_set: int
    segments_per_end: int
    resquarings: int
    strip_least: Length
    strip_shorter_by: Length
    strip_longer_for_more: Length
    strip_left_over: Length
    block_unfinished_width: Length
    block_unfinished_height: Length
    block_finished_width: Length
    block_finished_height: Length
    blocks_per_top: int
    blocks_turned: int
    top_finished_width: Length
    top_finished_length: Length
    top_unfinished_width: Length
    top_unfinished_length: Length
    sets_in_hand: int
    tops_in_hand: int
    tops: int
    sets: int
    strips_used: int
    strips_left: int
    strips_for_one_more_top: int
    blocks: int
    segments: int
    segments_left: int
    stack_low: int
    stack_high: int
    stacks_high: int
    groups: int
    segments_turned: int
    places_not_nesting: int
    block_square: bool
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Stripquilt":
        return cls(set_unfinished=Length(struct.set_unfinished), set_finished=Length(struct.set_finished),
                   strip_finished=Length(struct.strip_finished), segment_cut=Length(struct.segment_cut),
                   segment_finished=Length(struct.segment_finished), segments_per_set=int(struct.segments_per_set),
                   segments_per_end=int(struct.segments_per_end), resquarings=int(struct.resquarings),
                   strip_least=Length(struct.strip_least), strip_shorter_by=Length(struct.strip_shorter_by),
                   strip_longer_for_more=Length(struct.strip_longer_for_more),
                   strip_left_over=Length(struct.strip_left_over),
                   block_unfinished_width=Length(struct.block_unfinished_width),
                   block_unfinished_height=Length(struct.block_unfinished_height),
                   block_finished_width=Length(struct.block_finished_width),
                   block_finished_height=Length(struct.block_finished_height),
                   blocks_per_top=int(struct.blocks_per_top), blocks_turned=int(struct.blocks_turned),
                   top_finished_width=Length(struct.top_finished_width),
                   top_finished_length=Length(struct.top_finished_length),
                   top_unfinished_width=Length(struct.top_unfinished_width),
                   top_unfinished_length=Length(struct.top_unfinished_length), sets_in_hand=int(struct.sets_in_hand),
                   tops_in_hand=int(struct.tops_in_hand), tops=int(struct.tops), sets=int(struct.sets),
                   strips_used=int(struct.strips_used), strips_left=int(struct.strips_left),
                   strips_for_one_more_top=int(struct.strips_for_one_more_top), blocks=int(struct.blocks),
                   segments=int(struct.segments), segments_left=int(struct.segments_left),
                   stack_low=int(struct.stack_low), stack_high=int(struct.stack_high),
                   stacks_high=int(struct.stacks_high), groups=int(struct.groups),
                   segments_turned=int(struct.segments_turned), places_not_nesting=int(struct.places_not_nesting),
                   block_square=bool(struct.block_square), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class BlockGroup:
    """struct muslin_block_group, muslin/stripquilt.h

    first_block: number of the group's first block, from 1
    blocks: of them, one behind the other
    segments: members of `sets` in use
    turned: bit j: segment j, from 0, is turned end for end
    not_nesting: bit j: segments j and j + 1 do not nest
    repeats: 1 when a set occurs twice in each of these blocks
    first_pressing: enum muslin_set_pressing: the way segment 0 ends up pressed, turning counted; from there the
        segments alternate where they nest
    sets: numbers of the sets, from 1; 0 behind the last
    """

    first_block: int
    blocks: int
    segments: int
    turned: int
    not_nesting: int
    repeats: bool
    first_pressing: SetPressing
    sets: Tuple[int, ...]

    @classmethod
    def _read(cls, struct: Any) -> "BlockGroup":
        return cls(first_block=int(struct.first_block), blocks=int(struct.blocks), segments=int(struct.segments),
                   turned=int(struct.turned), not_nesting=int(struct.not_nesting), repeats=bool(struct.repeats),
                   first_pressing=SetPressing(struct.first_pressing), sets=tuple(struct.sets))


@dataclass(frozen=True)
class PiecingSpec(Spec):
    """struct muslin_piecing_spec, muslin/supplies.h

    sets: strip sets (initially 0)
    strips_per_set: 1 or more (initially 1)
    strip_length: length of the seams in a set (initially 40 in)
    tops: equal tops of blocks in a straight setting (initially 0)
    columns: 1 or more (initially 1)
    rows: 1 or more (initially 1)
    segments_per_block: 1 or more, side by side, each as high as the block (initially 1)
    block_width: finished (initially 0)
    block_height: finished (initially 0)
    allowance: of one edge, 0 .. MUSLIN_SIZE_MAX / 8 (initially 1/4 in)
    take_up: of one seam, 0 .. MUSLIN_SIZE_MAX / 8 (initially 0)
    """

    _kind = structs.muslin_piecing_spec
    _init = "muslin_piecing_spec_init"

    sets: Optional[int] = None
    strips_per_set: Optional[int] = None
    strip_length: Optional[LengthLike] = None
    tops: Optional[int] = None
    columns: Optional[int] = None
    rows: Optional[int] = None
    segments_per_block: Optional[int] = None
    block_width: Optional[LengthLike] = None
    block_height: Optional[LengthLike] = None
    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "sets", self.sets)
        put(struct, "strips_per_set", self.strips_per_set)
        put_length(struct, "strip_length", self.strip_length)
        put(struct, "tops", self.tops)
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put(struct, "segments_per_block", self.segments_per_block)
        put_length(struct, "block_width", self.block_width)
        put_length(struct, "block_height", self.block_height)
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)


@dataclass(frozen=True)
class Piecing:
    """struct muslin_piecing, muslin/supplies.h

    seams: number of seams in all
    in_sets: sets x (strips - 1) x strip length
    in_blocks: segment to segment, each as long as the block is high, unfinished
    in_rows: block to block, as long
    between_rows: row to row, each as long as the row is wide, unfinished
    total: of the four: what muslin_thread_plan() asks for
    """

    seams: int
    in_sets: Length
    in_blocks: Length
    in_rows: Length
    between_rows: Length
    total: Length

    @classmethod
    def _read(cls, struct: Any) -> "Piecing":
        return cls(seams=int(struct.seams), in_sets=Length(struct.in_sets), in_blocks=Length(struct.in_blocks),
                   in_rows=Length(struct.in_rows), between_rows=Length(struct.between_rows), total=Length(struct.total))


@dataclass(frozen=True)
class ThreadSpec(Spec):
    """struct muslin_thread_spec, muslin/supplies.h

    seam: to be sewn, 0 .. MUSLIN_LENGTH_MAX / 2 (initially 0)
    ratio_above: thread ..., 1 .. MUSLIN_COUNT_MAX; by the formula not used (initially 5)
    ratio_below: ... for so much seam, 1 .. MUSLIN_COUNT_MAX; by the formula not used (initially 2)
    thickness: T: all layers together, pressed flat under the foot; by the ratio not used (initially 0)
    stitch_length: 1 / S, 1 or more; by the ratio not used (initially 640 ticks)
    bobbin: thread a bobbin holds, 0 .. MUSLIN_LENGTH_MAX / 2; 0: bobbins are not counted (initially 0)
    spool: thread on a spool, 0 .. MUSLIN_LENGTH_MAX / 2; 0: spools are not counted (initially 0)
    method: enum muslin_thread_method (initially ThreadMethod.RATIO)
    waste: ppm on top, 0 .. 10000000 (initially 150000)
    ready_bobbins: the flag MUSLIN_THREAD_READY_BOBBINS (initially False)
    """

    _kind = structs.muslin_thread_spec
    _init = "muslin_thread_spec_init"

    seam: Optional[LengthLike] = None
    ratio_above: Optional[int] = None
    ratio_below: Optional[int] = None
    thickness: Optional[LengthLike] = None
    stitch_length: Optional[LengthLike] = None
    bobbin: Optional[LengthLike] = None
    spool: Optional[LengthLike] = None
    method: Optional[ThreadMethod] = None
    waste: Optional[int] = None
    ready_bobbins: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "seam", self.seam)
        put(struct, "ratio_above", self.ratio_above)
        put(struct, "ratio_below", self.ratio_below)
        put_length(struct, "thickness", self.thickness)
        put_length(struct, "stitch_length", self.stitch_length)
        put_length(struct, "bobbin", self.bobbin)
        put_length(struct, "spool", self.spool)
        put(struct, "method", self.method)
        put(struct, "waste", self.waste)
        put_flag(struct, THREAD_READY_BOBBINS, self.ready_bobbins)


@dataclass(frozen=True)
class Thread:
    """struct muslin_thread, muslin/supplies.h

    ratio_thousandths: thread for one unit of seam, in thousandths, nearest
    thread: without waste, up to a tick
    with_waste: exact thread x (1 + waste), up to a tick: needle and bobbin thread together
    needle: half of the exact one, up to a tick
    bobbin_thread: the other half, up to a tick
    bobbins: up
    spools: for with_waste, or for the needle thread alone, up; the last bobbin is wound only as far as it is needed
    left_on_bobbin: room, or ready thread, left on the last one
    left_on_spool: spools x spool less the same thread
    bobbin_longer_by: the seam may be so much longer before one bobbin more is needed ...
    spool_longer_by: ... before one spool more is needed; both at most up to the longest seam for which this call gives
        an answer
    """

    ratio_thousandths: int
    thread: Length
    with_waste: Length
    needle: Length
    bobbin_thread: Length
    bobbins: int
    spools: int
    left_on_bobbin: Length
    left_on_spool: Length
    bobbin_longer_by: Length
    spool_longer_by: Length

    @classmethod
    def _read(cls, struct: Any) -> "Thread":
        return cls(ratio_thousandths=int(struct.ratio_thousandths), thread=Length(struct.thread),
                   with_waste=Length(struct.with_waste), needle=Length(struct.needle),
                   bobbin_thread=Length(struct.bobbin_thread), bobbins=int(struct.bobbins), spools=int(struct.spools),
                   left_on_bobbin=Length(struct.left_on_bobbin), left_on_spool=Length(struct.left_on_spool),
                   bobbin_longer_by=Length(struct.bobbin_longer_by), spool_longer_by=Length(struct.spool_longer_by))


@dataclass(frozen=True)
class QuiltingSpec(Spec):
    """struct muslin_quilting_spec, muslin/supplies.h

    width: of the area to quilt, 1 or more but for an outline (initially 0)
    length: of the area, 1 or more but for an outline (initially 0)
    spacing: d, from line to line, square to them, 1 or more; for an outline not used (initially 2 in)
    offset: no line lies nearer to the edges it runs beside, or to the corners it cuts off; from a corner and for an
        outline not used (initially 0)
    outline: length of what is outlined, 0 .. MUSLIN_LENGTH_MAX / 2; used for an outline alone (initially 0)
    passes: lines along an outline: 1 in the ditch or on one side, 2 on both sides (initially 1)
    pattern: enum muslin_quilting_pattern (initially QuiltingPattern.GRID)
    start: enum muslin_quilting_start, of diagonals (initially QuiltingStart.AT_OFFSET)
    """

    _kind = structs.muslin_quilting_spec
    _init = "muslin_quilting_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    spacing: Optional[LengthLike] = None
    offset: Optional[LengthLike] = None
    outline: Optional[LengthLike] = None
    passes: Optional[int] = None
    pattern: Optional[QuiltingPattern] = None
    start: Optional[QuiltingStart] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put_length(struct, "spacing", self.spacing)
        put_length(struct, "offset", self.offset)
        put_length(struct, "outline", self.outline)
        put(struct, "passes", self.passes)
        put(struct, "pattern", self.pattern)
        put(struct, "start", self.start)


@dataclass(frozen=True)
class Quilting:
    """struct muslin_quilting, muslin/supplies.h

    lines: in all; for an outline the passes
    length: of all lines together, up to a tick: what muslin_thread_plan() asks for
    lines_first: from side to side, or the diagonals one way
    lines_second: from top to bottom, or the diagonals the other way
    left_first: straight lines: from the last one to where another might lie; diagonals: 0
    left_second
    even_first: straight lines: the widest spacing with as many lines, down to a tick, which uses up what is left; 0
        below two lines and for diagonals
    even_second
    exact: 1 when the length is a whole number of ticks
    last_first: straight lines: from the last one to the edge behind it, offset and what is left; 0 where there is no
        line, and for diagonals
    last_second
    """

    lines: int
    length: Length
    lines_first: int
    lines_second: int
    left_first: Length
    left_second: Length
    even_first: Length
    even_second: Length
    exact: bool
    last_first: Length
    last_second: Length

    @classmethod
    def _read(cls, struct: Any) -> "Quilting":
        return cls(lines=int(struct.lines), length=Length(struct.length), lines_first=int(struct.lines_first),
                   lines_second=int(struct.lines_second), left_first=Length(struct.left_first),
                   left_second=Length(struct.left_second), even_first=Length(struct.even_first),
                   even_second=Length(struct.even_second), exact=bool(struct.exact),
                   last_first=Length(struct.last_first), last_second=Length(struct.last_second))


@dataclass(frozen=True)
class WeightSpec(Spec):
    """struct muslin_weight_spec, muslin/supplies.h

    width: of the finished quilt (initially 0)
    length: (initially 0)
    binding_length: as cut and joined, or 0 (initially 0)
    binding_cut: cut width of the binding (initially 0)
    top_density: mg for a square metre of the top's cloth, 0 .. MUSLIN_COUNT_MAX, and so on (initially 0)
    batting_density: of the filler (initially 0)
    backing_density: of the back (initially 0)
    binding_density: of the binding's cloth (initially 0)
    step: each mass is rounded to a multiple of so many mg, 1 .. MUSLIN_SIZE_MAX (initially 1000)
    seam_share: ppm of cloth more that lies in the top's seams, 0 .. 10000000 (initially 0)
    direction: enum muslin_direction (initially Direction.NEAREST)
    """

    _kind = structs.muslin_weight_spec
    _init = "muslin_weight_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    binding_length: Optional[LengthLike] = None
    binding_cut: Optional[LengthLike] = None
    top_density: Optional[int] = None
    batting_density: Optional[int] = None
    backing_density: Optional[int] = None
    binding_density: Optional[int] = None
    step: Optional[int] = None
    seam_share: Optional[int] = None
    direction: Optional[Direction] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put_length(struct, "binding_length", self.binding_length)
        put_length(struct, "binding_cut", self.binding_cut)
        put(struct, "top_density", self.top_density)
        put(struct, "batting_density", self.batting_density)
        put(struct, "backing_density", self.backing_density)
        put(struct, "binding_density", self.binding_density)
        put(struct, "step", self.step)
        put(struct, "seam_share", self.seam_share)
        put(struct, "direction", self.direction)


@dataclass(frozen=True)
class Weight:
    """struct muslin_weight, muslin/supplies.h

    top: mg: width x length x (1 + seam share) x density
    batting: mg: width x length x density
    backing
    binding: mg: length x cut width x density
    total: mg: of the exact masses, rounded once, so it may differ from the sum of the rounded ones
    """

    top: int
    batting: int
    backing: int
    binding: int
    total: int

    @classmethod
    def _read(cls, struct: Any) -> "Weight":
        return cls(top=int(struct.top), batting=int(struct.batting), backing=int(struct.backing),
                   binding=int(struct.binding), total=int(struct.total))


@dataclass(frozen=True)
class CostSpec(Spec):
    """struct muslin_cost_spec, muslin/supplies.h

    amount: ticks, 0 .. MUSLIN_LENGTH_MAX / 2, as bought (see muslin_fabric_purchase()); or pieces (initially 0)
    price: 0 .. MUSLIN_MONEY_MAX (initially 0)
    per: what the price is for: ticks, 1 .. MUSLIN_SIZE_MAX; or pieces, 1 .. MUSLIN_COUNT_MAX (initially 1)
    sold: enum muslin_cost_kind (initially CostKind.PIECES)
    direction: enum muslin_direction, of a cost between two whole numbers; shops round to the nearest (initially
        Direction.NEAREST)
    """

    _kind = structs.muslin_cost_spec
    _init = "muslin_cost_spec_init"

    amount: Optional[int] = None
    price: Optional[int] = None
    per: Optional[int] = None
    sold: Optional[CostKind] = None
    direction: Optional[Direction] = None

    def _put(self, struct: Any) -> None:
        put(struct, "amount", self.amount)
        put(struct, "price", self.price)
        put(struct, "per", self.per)
        put(struct, "sold", self.sold)
        put(struct, "direction", self.direction)


@dataclass(frozen=True)
class Cost:
    """struct muslin_cost, muslin/supplies.h

    bought: the amount, or whole bundles, up
    spare: pieces that the bundles hold beyond the amount: so many more cost nothing more
    cost: amount x price / per, rounded as asked, or bundles x price
    exact: 1 when the cost was not rounded
    """

    bought: int
    spare: int
    cost: int
    exact: bool

    @classmethod
    def _read(cls, struct: Any) -> "Cost":
        return cls(bought=int(struct.bought), spare=int(struct.spare), cost=int(struct.cost), exact=bool(struct.exact))


@dataclass(frozen=True)
class QuiltSpec(Spec):
    """struct muslin_quilt_spec, muslin/quilt.h

    allowance: s: value of the quilt's seam allowance until another is given; 0 .. MUSLIN_SIZE_MAX / 8 (initially 1/4
        in)
    take_up: u, so; 0 .. MUSLIN_SIZE_MAX / 8 (initially 0)
    most: fabrics, measures and nodes together, each with sixteen numbers on the average; 1 .. 2^27 (initially 67108864)
    tag: what marks this quilt's ids, 1 .. 2^20 - 1: whoever has several quilts numbers them, so that none takes
        another's ids. 0: taken from where the quilt lies in memory, another one in every run; one made later in its
        place may get it again (initially 1)
    """

    _kind = structs.muslin_quilt_spec
    _init = "muslin_quilt_spec_init"

    allowance: Optional[LengthLike] = None
    take_up: Optional[LengthLike] = None
    most: Optional[int] = None
    tag: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "allowance", self.allowance)
        put_length(struct, "take_up", self.take_up)
        put(struct, "most", self.most)
        put(struct, "tag", self.tag)


@dataclass(frozen=True)
class QuiltFabricSpec(Spec):
    """struct muslin_quilt_fabric_spec, muslin/quilt.h

    usable_width: of the cloth, or length of a strip; 1 .. MUSLIN_SIZE_MAX; the value until another is given (initially
        40 in)
    print: enum muslin_print; a patch's cloth stands upright when its print's top is the patch's (initially Print.NONE)
    darkness: for pressing: seams go towards the greater number; 0 .. 100, 0: not stated (initially 0)
    """

    _kind = structs.muslin_quilt_fabric_spec
    _init = "muslin_quilt_fabric_spec_init"

    usable_width: LengthLike = Length(325120)
    print: Optional[Print] = None
    darkness: int = 0

    def _put(self, struct: Any) -> None:
        put_length(struct, "usable_width", self.usable_width)
        put(struct, "print", self.print)
        put(struct, "darkness", self.darkness)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltFabricSpec":
        return cls(usable_width=Length(struct.usable_width), print=Print(struct.print), darkness=int(struct.darkness))


@dataclass(frozen=True)
class QuiltSumSpec(Spec):
    """struct muslin_quilt_sum_spec, muslin/quilt.h

    measure: of the same quilt (initially 0)
    factor: -2^20 .. 2^20 (initially 1)
    """

    _kind = structs.muslin_quilt_sum_spec
    _init = "muslin_quilt_sum_spec_init"

    measure: Id = 0
    factor: int = 1

    def _put(self, struct: Any) -> None:
        put(struct, "measure", self.measure)
        put(struct, "factor", self.factor)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltSumSpec":
        return cls(measure=int(struct.measure), factor=int(struct.factor))


@dataclass(frozen=True)
class QuiltPatchSpec(Spec):
    """struct muslin_quilt_patch_spec, muslin/quilt.h

    fabric: of the same quilt (initially 0)
    width: finished (initially 0)
    height: finished (initially 0)
    left: allowance of each edge; 0: the quilt's (initially 0)
    right: (initially 0)
    top: (initially 0)
    bottom: (initially 0)
    """

    _kind = structs.muslin_quilt_patch_spec
    _init = "muslin_quilt_patch_spec_init"

    fabric: Id = 0
    width: Id = 0
    height: Id = 0
    left: Id = 0
    right: Id = 0
    top: Id = 0
    bottom: Id = 0

    def _put(self, struct: Any) -> None:
        put(struct, "fabric", self.fabric)
        put(struct, "width", self.width)
        put(struct, "height", self.height)
        put(struct, "left", self.left)
        put(struct, "right", self.right)
        put(struct, "top", self.top)
        put(struct, "bottom", self.bottom)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltPatchSpec":
        return cls(fabric=int(struct.fabric), width=int(struct.width), height=int(struct.height), left=int(struct.left),
                   right=int(struct.right), top=int(struct.top), bottom=int(struct.bottom))


@dataclass(frozen=True)
class QuiltUnitSpec(Spec):
    """struct muslin_quilt_unit_spec, muslin/quilt.h

    width: W, H and corner as the kind takes them (unit.h); 0 where it takes none (initially 0)
    height: (initially 0)
    corner: so (initially 0)
    kind: enum muslin_unit_kind that fills a rectangle: HALF_SQUARE .. HALF_RECTANGLE, OCTAGON, EIGHT_POINTED_STAR,
        KALEIDOSCOPE (initially UnitKind.HALF_SQUARE)
    method: enum muslin_unit_method (initially UnitMethod.TWO_AT_A_TIME)
    hand: enum muslin_hand; FIRST for kinds without hands (initially Hand.FIRST)
    """

    _kind = structs.muslin_quilt_unit_spec
    _init = "muslin_quilt_unit_spec_init"

    width: Id = 0
    height: Id = 0
    corner: Id = 0
    kind: Optional[UnitKind] = None
    method: Optional[UnitMethod] = None
    hand: Optional[Hand] = None

    def _put(self, struct: Any) -> None:
        put(struct, "width", self.width)
        put(struct, "height", self.height)
        put(struct, "corner", self.corner)
        put(struct, "kind", self.kind)
        put(struct, "method", self.method)
        put(struct, "hand", self.hand)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltUnitSpec":
        return cls(width=int(struct.width), height=int(struct.height), corner=int(struct.corner),
                   kind=UnitKind(struct.kind), method=UnitMethod(struct.method), hand=Hand(struct.hand))


@dataclass(frozen=True)
class QuiltJoinSpec(Spec):
    """struct muslin_quilt_join_spec, muslin/quilt.h

    axis: enum muslin_axis (initially Axis.ACROSS)
    piecing: enum muslin_strip_piecing; WHERE_FEWER: no matter unless all are patches of one length (initially
        StripPiecing.WHERE_FEWER)
    press: enum muslin_seam_press, of all its seams (initially SeamPress.FREE)
    keeps_order: the flag MUSLIN_QUILT_JOIN_KEEPS_ORDER (initially False)
    """

    _kind = structs.muslin_quilt_join_spec
    _init = "muslin_quilt_join_spec_init"

    axis: Optional[Axis] = None
    piecing: Optional[StripPiecing] = None
    press: Optional[SeamPress] = None
    keeps_order: bool = False

    def _put(self, struct: Any) -> None:
        put(struct, "axis", self.axis)
        put(struct, "piecing", self.piecing)
        put(struct, "press", self.press)
        put_flag(struct, QUILT_JOIN_KEEPS_ORDER, self.keeps_order)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltJoinSpec":
        return cls(axis=Axis(struct.axis), piecing=StripPiecing(struct.piecing), press=SeamPress(struct.press),
                   keeps_order=bool(struct.flags & QUILT_JOIN_KEEPS_ORDER))


@dataclass(frozen=True)
class QuiltTrimSpec(Spec):
    """struct muslin_quilt_trim_spec, muslin/quilt.h

    left: cut away after sewing; 0: nothing (initially 0)
    right: (initially 0)
    top: (initially 0)
    bottom: (initially 0)
    """

    _kind = structs.muslin_quilt_trim_spec
    _init = "muslin_quilt_trim_spec_init"

    left: Id = 0
    right: Id = 0
    top: Id = 0
    bottom: Id = 0

    def _put(self, struct: Any) -> None:
        put(struct, "left", self.left)
        put(struct, "right", self.right)
        put(struct, "top", self.top)
        put(struct, "bottom", self.bottom)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltTrimSpec":
        return cls(left=int(struct.left), right=int(struct.right), top=int(struct.top), bottom=int(struct.bottom))


@dataclass(frozen=True)
class QuiltPinwheelSpec(Spec):
    """struct muslin_quilt_pinwheel_spec, muslin/quilt.h

    centre: nodes (initially 0)
    top: over centre and left: as wide as both together (initially 0)
    right: beside centre and top: as high as both together (initially 0)
    bottom: under centre and right (initially 0)
    left: beside centre and bottom (initially 0)
    """

    _kind = structs.muslin_quilt_pinwheel_spec
    _init = "muslin_quilt_pinwheel_spec_init"

    centre: Id = 0
    top: Id = 0
    right: Id = 0
    bottom: Id = 0
    left: Id = 0

    def _put(self, struct: Any) -> None:
        put(struct, "centre", self.centre)
        put(struct, "top", self.top)
        put(struct, "right", self.right)
        put(struct, "bottom", self.bottom)
        put(struct, "left", self.left)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltPinwheelSpec":
        return cls(centre=int(struct.centre), top=int(struct.top), right=int(struct.right), bottom=int(struct.bottom),
                   left=int(struct.left))


@dataclass(frozen=True)
class QuiltSetInSpec(Spec):
    """struct muslin_quilt_set_in_spec, muslin/quilt.h

    centre: node (initially 0)
    left_width: finished width of the strip on each side; 0: no strip there (initially 0)
    right_width: (initially 0)
    top_width: (initially 0)
    bottom_width: (initially 0)
    left_fabric: 0 where there is no strip (initially 0)
    right_fabric: (initially 0)
    top_fabric: (initially 0)
    bottom_fabric: (initially 0)
    """

    _kind = structs.muslin_quilt_set_in_spec
    _init = "muslin_quilt_set_in_spec_init"

    centre: Id = 0
    left_width: Id = 0
    right_width: Id = 0
    top_width: Id = 0
    bottom_width: Id = 0
    left_fabric: Id = 0
    right_fabric: Id = 0
    top_fabric: Id = 0
    bottom_fabric: Id = 0

    def _put(self, struct: Any) -> None:
        put(struct, "centre", self.centre)
        put(struct, "left_width", self.left_width)
        put(struct, "right_width", self.right_width)
        put(struct, "top_width", self.top_width)
        put(struct, "bottom_width", self.bottom_width)
        put(struct, "left_fabric", self.left_fabric)
        put(struct, "right_fabric", self.right_fabric)
        put(struct, "top_fabric", self.top_fabric)
        put(struct, "bottom_fabric", self.bottom_fabric)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltSetInSpec":
        return cls(centre=int(struct.centre), left_width=int(struct.left_width), right_width=int(struct.right_width),
                   top_width=int(struct.top_width), bottom_width=int(struct.bottom_width),
                   left_fabric=int(struct.left_fabric), right_fabric=int(struct.right_fabric),
                   top_fabric=int(struct.top_fabric), bottom_fabric=int(struct.bottom_fabric))


@dataclass(frozen=True)
class QuiltLogSpec(Spec):
    """struct muslin_quilt_log_spec, muslin/quilt.h

    fabric: of the log (initially 0)
    width: finished (initially 0)
    side: enum muslin_side (initially Side.RIGHT)
    """

    _kind = structs.muslin_quilt_log_spec
    _init = "muslin_quilt_log_spec_init"

    fabric: Optional[Id] = None
    width: Optional[Id] = None
    side: Optional[Side] = None

    def _put(self, struct: Any) -> None:
        put(struct, "fabric", self.fabric)
        put(struct, "width", self.width)
        put(struct, "side", self.side)


@dataclass(frozen=True)
class QuiltSurroundSpec(Spec):
    """struct muslin_quilt_surround_spec, muslin/quilt.h

    centre: nodes (initially 0)
    left: as high as the centre (initially 0)
    right: (initially 0)
    top: as wide as the centre (initially 0)
    bottom: (initially 0)
    top_left: as wide as left, as high as top, and so on (initially 0)
    top_right: (initially 0)
    bottom_left: at the lower left (initially 0)
    bottom_right: at the lower right (initially 0)
    """

    _kind = structs.muslin_quilt_surround_spec
    _init = "muslin_quilt_surround_spec_init"

    centre: Optional[Id] = None
    left: Optional[Id] = None
    right: Optional[Id] = None
    top: Optional[Id] = None
    bottom: Optional[Id] = None
    top_left: Optional[Id] = None
    top_right: Optional[Id] = None
    bottom_left: Optional[Id] = None
    bottom_right: Optional[Id] = None

    def _put(self, struct: Any) -> None:
        put(struct, "centre", self.centre)
        put(struct, "left", self.left)
        put(struct, "right", self.right)
        put(struct, "top", self.top)
        put(struct, "bottom", self.bottom)
        put(struct, "top_left", self.top_left)
        put(struct, "top_right", self.top_right)
        put(struct, "bottom_left", self.bottom_left)
        put(struct, "bottom_right", self.bottom_right)


@dataclass(frozen=True)
class QuiltSashedSpec(Spec):
    """struct muslin_quilt_sashed_spec, muslin/quilt.h

    columns: of blocks, 1 .. MUSLIN_COUNT_MAX (initially 1)
    rows: (initially 1)
    sash: finished width (initially 0)
    sash_fabric: of all sashes (initially 0)
    cornerstone: fabric of CORNERSTONES; 0: as the sashes; without them 0 (initially 0)
    frame: the flag MUSLIN_QUILT_SASHED_FRAME (initially False)
    cornerstones: the flag MUSLIN_QUILT_SASHED_CORNERSTONES (initially False)
    """

    _kind = structs.muslin_quilt_sashed_spec
    _init = "muslin_quilt_sashed_spec_init"

    columns: Optional[int] = None
    rows: Optional[int] = None
    sash: Optional[Id] = None
    sash_fabric: Optional[Id] = None
    cornerstone: Optional[Id] = None
    frame: Optional[bool] = None
    cornerstones: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put(struct, "sash", self.sash)
        put(struct, "sash_fabric", self.sash_fabric)
        put(struct, "cornerstone", self.cornerstone)
        put_flag(struct, QUILT_SASHED_FRAME, self.frame)
        put_flag(struct, QUILT_SASHED_CORNERSTONES, self.cornerstones)


@dataclass(frozen=True)
class QuiltDiagonalSpec(Spec):
    """struct muslin_quilt_diagonal_spec, muslin/quilt.h

    columns: c: blocks side by side, alternates not counted; 1 .. 2^15 (initially 1)
    rows: r, so (initially 1)
    side_fabric: of the setting triangles (initially 0)
    corner_fabric: of the corner triangles (initially 0)
    set_off: f: blocks float this far inside the edge; 0: they touch it. 0 in SASH_CUT and SASH_INNER (initially 0)
    sash: w, finished width; 0 in PLAIN, in no other layout. Below B in SASH_INNER (initially 0)
    sash_fabric: 0 in PLAIN, in no other layout (initially 0)
    cornerstone: its fabric; 0: as the sashes; 0 in PLAIN (initially 0)
    layout: enum muslin_point_layout (initially PointLayout.PLAIN)
    """

    _kind = structs.muslin_quilt_diagonal_spec
    _init = "muslin_quilt_diagonal_spec_init"

    columns: int = 1
    rows: int = 1
    side_fabric: Id = 0
    corner_fabric: Id = 0
    set_off: Id = 0
    sash: Id = 0
    sash_fabric: Id = 0
    cornerstone: Id = 0
    layout: Optional[PointLayout] = None

    def _put(self, struct: Any) -> None:
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put(struct, "side_fabric", self.side_fabric)
        put(struct, "corner_fabric", self.corner_fabric)
        put(struct, "set_off", self.set_off)
        put(struct, "sash", self.sash)
        put(struct, "sash_fabric", self.sash_fabric)
        put(struct, "cornerstone", self.cornerstone)
        put(struct, "layout", self.layout)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltDiagonalSpec":
        return cls(columns=int(struct.columns), rows=int(struct.rows), side_fabric=int(struct.side_fabric),
                   corner_fabric=int(struct.corner_fabric), set_off=int(struct.set_off), sash=int(struct.sash),
                   sash_fabric=int(struct.sash_fabric), cornerstone=int(struct.cornerstone),
                   layout=PointLayout(struct.layout))


@dataclass(frozen=True)
class QuiltSixtySpec(Spec):
    """struct muslin_quilt_sixty_spec, muslin/quilt.h

    cells: triangles in a row, ends not counted; 1 .. 2^20 (initially 1)
    rows: 1 .. 2^20 (initially 1)
    height: H, finished, of a row (initially 0)
    end_fabric: of the half-triangles that close both ends (initially 0)
    first: enum muslin_sixty_first (initially SixtyFirst.ON_SIDE)
    """

    _kind = structs.muslin_quilt_sixty_spec
    _init = "muslin_quilt_sixty_spec_init"

    cells: int = 1
    rows: int = 1
    height: Id = 0
    end_fabric: Id = 0
    first: Optional[SixtyFirst] = None

    def _put(self, struct: Any) -> None:
        put(struct, "cells", self.cells)
        put(struct, "rows", self.rows)
        put(struct, "height", self.height)
        put(struct, "end_fabric", self.end_fabric)
        put(struct, "first", self.first)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltSixtySpec":
        return cls(cells=int(struct.cells), rows=int(struct.rows), height=int(struct.height),
                   end_fabric=int(struct.end_fabric), first=SixtyFirst(struct.first))


@dataclass(frozen=True)
class QuiltSixtyPieceSpec(Spec):
    """struct muslin_quilt_sixty_piece_spec, muslin/quilt.h

    fabric: of the piece (initially 0)
    cells: 1: a triangle, 2: a diamond, 3: a half-hexagon (initially 1)
    """

    _kind = structs.muslin_quilt_sixty_piece_spec
    _init = "muslin_quilt_sixty_piece_spec_init"

    fabric: Id = 0
    cells: int = 1

    def _put(self, struct: Any) -> None:
        put(struct, "fabric", self.fabric)
        put(struct, "cells", self.cells)

    @classmethod
    def _read(cls, struct: Any) -> "QuiltSixtyPieceSpec":
        return cls(fabric=int(struct.fabric), cells=int(struct.cells))


@dataclass(frozen=True)
class TreeMeasure:
    """struct muslin_tree_measure, muslin/quilt.h

    value: of a fixed one; of one with a name, until another is given; else 0
    node: whose extent it is; else 0
    kind: enum muslin_measure_kind
    axis: of an extent, enum muslin_axis; else 0
    terms: of a sum, what muslin_quilt_read_terms() gives; else 0
    """

    value: Length
    node: Id
    kind: MeasureKind
    axis: Optional[Axis]
    terms: int

    @classmethod
    def _read(cls, struct: Any) -> "TreeMeasure":
        return cls(value=Length(struct.value), node=int(struct.node), kind=MeasureKind(struct.kind),
                   axis=Axis(struct.axis) if struct.axis else None, terms=int(struct.terms))


@dataclass(frozen=True)
class Node:
    """struct muslin_node, muslin/quilt.h

    children: nodes it is made of: what muslin_quilt_children() gives
    depth: 1 for a leaf
    kind: enum muslin_node_kind
    axis: of a join, enum muslin_axis; else 0
    quarter_turns: of a turn: first mirrored, where it is, then turned clockwise by so many
    mirrored: 1 when it is the mirror image
    """

    children: int
    depth: int
    kind: NodeKind
    axis: Optional[Axis]
    quarter_turns: int
    mirrored: bool

    @classmethod
    def _read(cls, struct: Any) -> "Node":
        return cls(children=int(struct.children), depth=int(struct.depth), kind=NodeKind(struct.kind),
                   axis=Axis(struct.axis) if struct.axis else None, quarter_turns=int(struct.quarter_turns),
                   mirrored=bool(struct.mirrored))


@dataclass(frozen=True)
class PartCounts:
    """struct muslin_part_counts, muslin/quilt.h

    fabrics: made so far
    measures: so, the seam allowance and take-up among them
    nodes: different ones
    bytes: that the quilt holds from its allocator
    """

    fabrics: int
    measures: int
    nodes: int
    bytes: int

    @classmethod
    def _read(cls, struct: Any) -> "PartCounts":
        return cls(fabrics=int(struct.fabrics), measures=int(struct.measures), nodes=int(struct.nodes),
                   bytes=int(struct.bytes))


@dataclass(frozen=True)
class SolutionSpec(Spec):
    """struct muslin_solution_spec, muslin/solution.h

    tops: how many of the root are made; 1 .. MUSLIN_COUNT_MAX (initially 1)
    ease: edges that differ by no more are eased, not misfits; 0 .. MUSLIN_SIZE_MAX (initially 0)
    grid: pieces cut again on the diagonal are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX (initially 1/8 in)
    grid_tolerance: below grid (initially 0)
    half_addition: as in struct muslin_unit_spec; 0: its usual ones (initially 0)
    quarter_addition: so (initially 0)
    trim_room: OVERSIZE: room to trim units and setting triangles (initially 0)
    end_trim: strip sets: taken off each end, as in struct muslin_yield_spec (initially 0)
    resquare_loss: as in struct muslin_yield_spec (initially 0)
    resquare_every: as in struct muslin_yield_spec (initially 0)
    fold_clear: must be 0 with FROM_ONE_END (initially 0)
    policy: enum muslin_allowance_policy (initially AllowancePolicy.EXACT)
    tip: enum muslin_tip (initially Tip.BLUNT)
    direction: enum muslin_direction, of cut sizes that are rounded (initially Direction.UP)
    strip_piecing: enum muslin_strip_piecing, of joins that say WHERE_FEWER: that, or NEVER (initially
        StripPiecing.WHERE_FEWER)
    from_one_end: the flag MUSLIN_YIELD_FROM_ONE_END (initially True)
    """

    _kind = structs.muslin_solution_spec
    _init = "muslin_solution_spec_init"

    tops: Optional[int] = None
    ease: Optional[LengthLike] = None
    grid: Optional[LengthLike] = None
    grid_tolerance: Optional[LengthLike] = None
    half_addition: Optional[LengthLike] = None
    quarter_addition: Optional[LengthLike] = None
    trim_room: Optional[LengthLike] = None
    end_trim: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    fold_clear: Optional[LengthLike] = None
    policy: Optional[AllowancePolicy] = None
    tip: Optional[Tip] = None
    direction: Optional[Direction] = None
    strip_piecing: Optional[StripPiecing] = None
    from_one_end: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "tops", self.tops)
        put_length(struct, "ease", self.ease)
        put_length(struct, "grid", self.grid)
        put_length(struct, "grid_tolerance", self.grid_tolerance)
        put_length(struct, "half_addition", self.half_addition)
        put_length(struct, "quarter_addition", self.quarter_addition)
        put_length(struct, "trim_room", self.trim_room)
        put_length(struct, "end_trim", self.end_trim)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "fold_clear", self.fold_clear)
        put(struct, "policy", self.policy)
        put(struct, "tip", self.tip)
        put(struct, "direction", self.direction)
        put(struct, "strip_piecing", self.strip_piecing)
        put_flag(struct, YIELD_FROM_ONE_END, self.from_one_end)


@dataclass(frozen=True)
class SolutionValueSpec(Spec):
    """struct muslin_solution_value_spec, muslin/solution.h

    id: a named measure, the quilt's allowance or take-up, or a fabric, whose usable width it is; a fixed length, a sum
        or an extent cannot be given one: MUSLIN_ERR_FOREIGN (initially 0)
    value: in the range of what it stands for (initially 0)
    """

    _kind = structs.muslin_solution_value_spec
    _init = "muslin_solution_value_spec_init"

    id: Optional[Id] = None
    value: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "id", self.id)
        put_length(struct, "value", self.value)


@dataclass(frozen=True)
class NodeSize:
    """struct muslin_node_size, muslin/solution.h

    finished_width: as seen
    finished_height
    unfinished_width: of a patch: cut
    unfinished_height
    left: allowance of its edges; -1 where the pieces along one differ
    right
    top
    bottom
    count: of them in all tops
    mirrored: of those, mirror images
    upright: of all, so many lie as they were made ...
    quarter: ... turned a quarter clockwise ...
    half: ... half ...
    three_quarter: parts of a diagonal field count as in its own frame
    patches: in one of it
    seams_across: seams whose errors add up in its width: of pieces side by side all count, of rows the one with most
    seams_down: so in its height: rows all count, each with its highest pile of seams
    kind: enum muslin_node_kind
    exact: 1 when its size was not rounded; inside, corners may be
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    left: Length
    right: Length
    top: Length
    bottom: Length
    count: int
    mirrored: int
    upright: int
    quarter: int
    half: int
    three_quarter: int
    patches: int
    seams_across: int
    seams_down: int
    kind: NodeKind
    exact: bool

    @classmethod
    def _read(cls, struct: Any) -> "NodeSize":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   left=Length(struct.left), right=Length(struct.right), top=Length(struct.top),
                   bottom=Length(struct.bottom), count=int(struct.count), mirrored=int(struct.mirrored),
                   upright=int(struct.upright), quarter=int(struct.quarter), half=int(struct.half),
                   three_quarter=int(struct.three_quarter), patches=int(struct.patches),
                   seams_across=int(struct.seams_across), seams_down=int(struct.seams_down), kind=NodeKind(struct.kind),
                   exact=bool(struct.exact))


@dataclass(frozen=True)
class SolutionTotal:
    """struct muslin_solution_total, muslin/solution.h

    patches: in all tops
    different_nodes: that the root holds, itself included
    finished_area: of one top: width x height
    patch_area: of one top: what its finished outlines cover, each in its own frame
    area_error: where edges meet, the two differ by no more than this; 0 where everything is exact
    misfits: rows of muslin_solution_misfits() that are no ease, ...
    eased: ... and that are
    cuts: rows of muslin_solution_cuts()
    stripsets: rows of muslin_solution_stripsets()
    warnings: all that the rows of cuts, and of strip sets that are used, carry
    exact: 1 when nothing in it was rounded
    """

    patches: int
    different_nodes: int
    finished_area: int
    patch_area: int
    area_error: int
    misfits: int
    eased: int
    cuts: int
    stripsets: int
    warnings: Tuple[Warning, ...]
    exact: bool

    @classmethod
    def _read(cls, struct: Any) -> "SolutionTotal":
        return cls(patches=int(struct.patches), different_nodes=int(struct.different_nodes),
                   finished_area=int(struct.finished_area), patch_area=int(struct.patch_area),
                   area_error=int(struct.area_error), misfits=int(struct.misfits), eased=int(struct.eased),
                   cuts=int(struct.cuts), stripsets=int(struct.stripsets), warnings=warnings_in(struct.warnings),
                   exact=bool(struct.exact))


@dataclass(frozen=True)
class Misfit:
    """struct muslin_misfit, muslin/solution.h

    node: in which they meet
    first: child of it, counted from 0; strips of a set-in: enum muslin_side; -1: a setting triangle or a sash on point
    second
    first_size: finished length of its edge; of ALLOWANCE its allowance, -1 where mixed
    second_size
    difference: first less second; 0 where one is mixed
    pieces: seams to stretch or gather over: pieces along the edge that gives way, the one with more of them; of
        ALLOWANCE 0
    ease_each: what each of them takes up: the difference over pieces, up to a tick; else 0
    count: how often it happens in all tops
    kind: enum muslin_misfit_kind
    """

    node: Id
    first: int
    second: int
    first_size: Length
    second_size: Length
    difference: Length
    pieces: int
    ease_each: Length
    count: int
    kind: MisfitKind

    @classmethod
    def _read(cls, struct: Any) -> "Misfit":
        return cls(node=int(struct.node), first=int(struct.first), second=int(struct.second),
                   first_size=Length(struct.first_size), second_size=Length(struct.second_size),
                   difference=Length(struct.difference), pieces=int(struct.pieces), ease_each=Length(struct.ease_each),
                   count=int(struct.count), kind=MisfitKind(struct.kind))


@dataclass(frozen=True)
class SolutionCut:
    """struct muslin_solution_cut, muslin/solution.h

    fabric: it is cut from
    first_node: the first node that needs it; muslin_solution_cut_nodes() has all
    cut_width: as in struct muslin_unit_piece: across as the patch lies when upright; of a fabric without direction the
        longer side of a rectangle that is not cut again. SET_STRIP: the usable width
    cut_height: ... and along the print
    pitch: of shapes cut from a strip; else 0
    wide_edge: so
    narrow_edge: so
    surplus_width: cut less exact need, down to a tick
    surplus_height
    left: allowance on each edge of a rectangle that is sewn as it is cut; else the seam's
    right
    top
    bottom
    count: to cut, for all tops
    pieces: in the end, those spare included
    spare: pieces beyond the need
    nodes: different nodes that need it
    upright: pieces needed that lie with their print as cut, and turned by one, two and three quarters in the top.
        Strips are cut across the cloth: in a set joined down a print lies as its patch does, in one joined across a
        quarter further
    quarter: of those, turned by one quarter ...
    half: ... by two ...
    three_quarter: ... by three
    scattered: pieces needed whose print lies as the method brings it: of units all but rectangles to which corners are
        sewn and octagons; setting triangles; 60 degree pieces
    source: enum muslin_cut_source
    shape: enum muslin_cut_shape
    again: enum muslin_cut_again
    gives: pieces from each: pieces = count x gives
    grain: enum muslin_grain
    hand: enum muslin_hand; of a sash cut off at the edge FIRST when the slanted end, seen upwards from the square one,
        rises to the right
    angle: degrees, as in struct muslin_unit_piece
    region: of a unit; piece number, from 1, of a shape; of a mitred strip whose ends differ its side; else 0
    warnings: MUSLIN_WARN_PRINT_TURNED: a fabric with a direction lies turned in some places, or, scattered, may lie so.
        MUSLIN_WARN_LONGER_THAN_WIDTH: cut_width, of a rectangle of a fabric without direction the longer side, passes
        the fabric's usable width; MUSLIN_WARN_BELOW_EXACT: a surplus is below 0; MUSLIN_WARN_BIAS_EDGE: of a unit whose
        outer edges lie on the bias, or a sash that the edge of a field on point cuts off at 45 degrees: there the edge
        stretches
    """

    fabric: Id
    first_node: Id
    cut_width: Length
    cut_height: Length
    pitch: Length
    wide_edge: Length
    narrow_edge: Length
    surplus_width: Length
    surplus_height: Length
    left: Length
    right: Length
    top: Length
    bottom: Length
    count: int
    pieces: int
    spare: int
    nodes: int
    upright: int
    quarter: int
    half: int
    three_quarter: int
    scattered: int
    source: CutSource
    shape: CutShape
    again: CutAgain
    gives: int
    grain: Grain
    hand: Hand
    angle: int
    region: int
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "SolutionCut":
        return cls(fabric=int(struct.fabric), first_node=int(struct.first_node), cut_width=Length(struct.cut_width),
                   cut_height=Length(struct.cut_height), pitch=Length(struct.pitch), wide_edge=Length(struct.wide_edge),
                   narrow_edge=Length(struct.narrow_edge), surplus_width=Length(struct.surplus_width),
                   surplus_height=Length(struct.surplus_height), left=Length(struct.left), right=Length(struct.right),
                   top=Length(struct.top), bottom=Length(struct.bottom), count=int(struct.count),
                   pieces=int(struct.pieces), spare=int(struct.spare), nodes=int(struct.nodes),
                   upright=int(struct.upright), quarter=int(struct.quarter), half=int(struct.half),
                   three_quarter=int(struct.three_quarter), scattered=int(struct.scattered),
                   source=CutSource(struct.source), shape=CutShape(struct.shape), again=CutAgain(struct.again),
                   gives=int(struct.gives), grain=Grain(struct.grain), hand=Hand(struct.hand), angle=int(struct.angle),
                   region=int(struct.region), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class Stripset:
    """struct muslin_stripset, muslin/solution.h

    node: the join
    strips: in a set
    set_unfinished: width of the set, edge to edge
    segment_cut: what is cut across from it: unfinished length of the patches
    strip_length: of the narrowest fabric in it
    segments: needed
    segments_per_set: that a set gives
    sets: up
    spare: segments beyond the need
    cuts_apart: cuts when every patch is cut by itself: strips of its height, cut across
    cuts_in_sets: cuts when it is strip-pieced
    shorter_by: strips may be this much shorter before a set gives less
    used: 1 when the cut list and the sewing plan take it. WHERE_FEWER: it takes fewer cuts, at least half of its
        segments are needed, and no print would show that it lies turned in strips
    turns: 1 when a segment turned end for end looks the same and its order need not stay
    warnings: MUSLIN_WARN_NO_SLACK, MUSLIN_WARN_MIXED_WIDTHS; MUSLIN_WARN_PRINT_TURNED: in strips a print lies otherwise
        than in patches cut by themselves
    """

    node: Id
    strips: int
    set_unfinished: Length
    segment_cut: Length
    strip_length: Length
    segments: int
    segments_per_set: int
    sets: int
    spare: int
    cuts_apart: int
    cuts_in_sets: int
    shorter_by: Length
    used: bool
    turns: bool
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Stripset":
        return cls(node=int(struct.node), strips=int(struct.strips), set_unfinished=Length(struct.set_unfinished),
                   segment_cut=Length(struct.segment_cut), strip_length=Length(struct.strip_length),
                   segments=int(struct.segments), segments_per_set=int(struct.segments_per_set), sets=int(struct.sets),
                   spare=int(struct.spare), cuts_apart=int(struct.cuts_apart), cuts_in_sets=int(struct.cuts_in_sets),
                   shorter_by=Length(struct.shorter_by), used=bool(struct.used), turns=bool(struct.turns),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class Term:
    """struct muslin_term, muslin/solution.h

    id: measure or node; 0 where the kind names none
    times: what it is multiplied by
    value: the whole term: what it adds to the sum
    sum: up to and with it
    kind: enum muslin_term_kind
    finished: 1: the sum is the finished size up to here; 0: the unfinished one, cut of a patch
    """

    id: Id
    times: int
    value: Length
    sum: Length
    kind: TermKind
    finished: bool

    @classmethod
    def _read(cls, struct: Any) -> "Term":
        return cls(id=int(struct.id), times=int(struct.times), value=Length(struct.value), sum=Length(struct.sum),
                   kind=TermKind(struct.kind), finished=bool(struct.finished))


@dataclass(frozen=True)
class Outline:
    """struct muslin_outline, muslin/solution.h

    node: the leaf (or diagonal field, 60 degree rows, set-in) that it belongs to
    fabric: of the patch
    corners: counter-clockwise
    region: of a unit; piece from 1 of a shape; triangle from 1 of a field: at the top from the left, right from the
        top, bottom, left, then corners upper left, lower right, upper right, lower left; then, cut off at the edge,
        sashes that stand in the turned frame at the top, right, bottom, left, those that lie at the right, bottom, top,
        left, or cornerstones so; piece from 1 of rows: those given, then the left and the right half-triangle of each
        row; 1 of a patch
    quarter_turns: how its print lies: clockwise
    mirrored: 1 when it is a mirror image: left for right first, then turned
    on_point: 1 when it is turned by an eighth more, clockwise: in a field on point (not in one that lies in another,
        where two eighths are a quarter), or a sash cut off at its edge
    """

    node: Id
    fabric: Id
    corners: Tuple["OutlineCorner", ...]
    region: int
    quarter_turns: int
    mirrored: bool
    on_point: bool

    @classmethod
    def _read(cls, struct: Any, parts_corners: Any) -> "Outline":
        return cls(node=int(struct.node), fabric=int(struct.fabric), corners=parts_corners, region=int(struct.region),
                   quarter_turns=int(struct.quarter_turns), mirrored=bool(struct.mirrored),
                   on_point=bool(struct.on_point))


@dataclass(frozen=True)
class OutlineCorner:
    """struct muslin_outline_corner, muslin/solution.h

    x: to the right from the lower left of what is drawn, finished
    y: upwards
    seam_node: in which the seam lies along the edge that starts here; 0: the outside
    seam: of that node: its number, from 0, as pressing.h counts them
    """

    x: Length
    y: Length
    seam_node: Id
    seam: int

    @classmethod
    def _read(cls, struct: Any) -> "OutlineCorner":
        return cls(x=Length(struct.x), y=Length(struct.y), seam_node=int(struct.seam_node), seam=int(struct.seam))


@dataclass(frozen=True)
class PressingSpec(Spec):
    """struct muslin_pressing_spec, muslin/pressing.h

    work_limit: steps of the search, 0 .. 2^40; when it runs out the best plan so far stands (initially 20000000)
    prefer: enum muslin_prefer (initially Prefer.DARKER)
    units: 1: the seams of units are pressed as their recipes say, in every copy; 0: so they are preferred, where their
        fabrics do not say which is darker, and give way to nesting (initially 0)
    """

    _kind = structs.muslin_pressing_spec
    _init = "muslin_pressing_spec_init"

    work_limit: Optional[int] = None
    prefer: Optional[Prefer] = None
    units: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "work_limit", self.work_limit)
        put(struct, "prefer", self.prefer)
        put(struct, "units", self.units)


@dataclass(frozen=True)
class PressingTotal:
    """struct muslin_pressing_total, muslin/pressing.h

    meetings: in all tops, those left out not counted
    exceptions: of those, that do not nest
    least: no plan of this sort has fewer
    alternating: exceptions when all is pressed in turn: every seam to its first piece, and joins take their second
        child the other way, their fourth, and so on, where none asks otherwise
    open: meetings left out, as a seam is pressed open
    other_way: copies of nodes with seams of their own that are the other way, pressed or turned; where those seams are
        open, turned alone
    work: steps taken
    proven: 1 when exceptions = least
    copies_turned: of other_way, copies that are turned and not pressed the other way
    """

    meetings: int
    exceptions: int
    least: int
    alternating: int
    open: int
    other_way: int
    work: int
    proven: bool
    copies_turned: int

    @classmethod
    def _read(cls, struct: Any) -> "PressingTotal":
        return cls(meetings=int(struct.meetings), exceptions=int(struct.exceptions), least=int(struct.least),
                   alternating=int(struct.alternating), open=int(struct.open), other_way=int(struct.other_way),
                   work=int(struct.work), proven=bool(struct.proven), copies_turned=int(struct.copies_turned))


@dataclass(frozen=True)
class PressingSeam:
    """struct muslin_pressing_seam, muslin/pressing.h

    node: whose seam it is
    seam: number in its node
    as_shown: copies of the node pressed so, also those in what is turned as a whole
    other_way: copies taken the other way: by `other`, pressed or turned; an open seam is told so when its node is
        turned
    from_x: finished ends, in the node as it was made, from its lower left
    from_y
    to_x: its other end
    to_y: its other end
    press: enum muslin_press, in the node as it was made
    towards: enum muslin_towards
    other: enum muslin_other_way
    preferred: enum muslin_preferred
    turn: MUSLIN_OTHER_WAY_TURNED: quarter turns of the copies the other way; else 0
    """

    node: Id
    seam: int
    as_shown: int
    other_way: int
    from_x: Length
    from_y: Length
    to_x: Length
    to_y: Length
    press: Press
    towards: Towards
    other: OtherWay
    preferred: Preferred
    turn: int

    @classmethod
    def _read(cls, struct: Any) -> "PressingSeam":
        return cls(node=int(struct.node), seam=int(struct.seam), as_shown=int(struct.as_shown),
                   other_way=int(struct.other_way), from_x=Length(struct.from_x), from_y=Length(struct.from_y),
                   to_x=Length(struct.to_x), to_y=Length(struct.to_y), press=Press(struct.press),
                   towards=Towards(struct.towards), other=OtherWay(struct.other), preferred=Preferred(struct.preferred),
                   turn=int(struct.turn))


@dataclass(frozen=True)
class PressingChild:
    """struct muslin_pressing_child, muslin/pressing.h

    node: made of ...
    child: ... this ...
    place: ... which is its child of this number
    other_way: 1 when it takes its child the other way than that is shown; the whole may be taken the other way again by
        what it is part of
    turn: quarters by which the child is turned where it is the other way; 0: it is pressed. The same in every place of
        the child, also where other_way is 0: what the node is part of may be the other way, and then this place, too.
        By itself it says nothing of this place
    """

    node: Id
    child: Id
    place: int
    other_way: bool
    turn: int

    @classmethod
    def _read(cls, struct: Any) -> "PressingChild":
        return cls(node=int(struct.node), child=int(struct.child), place=int(struct.place),
                   other_way=bool(struct.other_way), turn=int(struct.turn))


@dataclass(frozen=True)
class PressingException:
    """struct muslin_pressing_exception, muslin/pressing.h

    node: in which the two edges are sewn together ...
    seam: ... by its seam of this number
    x: where, finished, in the node as it was made
    y
    first_node: whose seams meet there
    first_seam: its number in first_node
    second_node: and the other
    second_seam: its number in second_node
    count: in all tops
    """

    node: Id
    seam: int
    x: Length
    y: Length
    first_node: Id
    first_seam: int
    second_node: Id
    second_seam: int
    count: int

    @classmethod
    def _read(cls, struct: Any) -> "PressingException":
        return cls(node=int(struct.node), seam=int(struct.seam), x=Length(struct.x), y=Length(struct.y),
                   first_node=int(struct.first_node), first_seam=int(struct.first_seam),
                   second_node=int(struct.second_node), second_seam=int(struct.second_seam), count=int(struct.count))


@dataclass(frozen=True)
class SewingStep:
    """struct muslin_sewing_step, muslin/sewing.h

    node: what is made
    stack: number of the stack it makes, from 0, for muslin_sewing_label(); a step of cutting takes that of its set
    alike: how many are made: strip sets, segments that are needed, units with the spare ones of their recipes (units
        alike share recipes: with the first of them), joins ...
    pieces: that go into one; of segments and trims 1
    seams: in one
    seam_longest: the longest of them, from raw edge to raw edge, where edges do not meet the longer one; what set-in
        and partial seams leave open is counted with them
    sewn: all seams of all that are alike
    unfinished_width: of what is made; of a set: its width and the strips' length
    unfinished_height
    feeds: steps that it needs: muslin_sewing_feeds()
    kind: enum muslin_sewing_kind
    chain: 1 when more than one is sewn
    """

    node: Id
    stack: int
    alike: int
    pieces: int
    seams: int
    seam_longest: Length
    sewn: Length
    unfinished_width: Length
    unfinished_height: Length
    feeds: int
    kind: SewingKind
    chain: bool

    @classmethod
    def _read(cls, struct: Any) -> "SewingStep":
        return cls(node=int(struct.node), stack=int(struct.stack), alike=int(struct.alike), pieces=int(struct.pieces),
                   seams=int(struct.seams), seam_longest=Length(struct.seam_longest), sewn=Length(struct.sewn),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   feeds=int(struct.feeds), kind=SewingKind(struct.kind), chain=bool(struct.chain))


@dataclass(frozen=True)
class SewingFeed:
    """struct muslin_sewing_feed, muslin/sewing.h

    node: what is used
    step: the step that makes it; -1: it is cut as it is
    each: how many go into one
    """

    node: Id
    step: int
    each: int

    @classmethod
    def _read(cls, struct: Any) -> "SewingFeed":
        return cls(node=int(struct.node), step=int(struct.step), each=int(struct.each))


@dataclass(frozen=True)
class SewingTotal:
    """struct muslin_sewing_total, muslin/sewing.h

    steps: rows of muslin_sewing_steps()
    seams: in all tops
    sewn: all seams: what muslin_thread_plan() asks for
    in_sets: of those, in strip sets
    width_seams: of one top: the most seams across it ...
    height_seams: ... and down
    width_worst: how far its unfinished width may be off, each seam and each cut edge off as stated
    width_likely
    height_worst: its height, so
    height_likely
    """

    steps: int
    seams: int
    sewn: Length
    in_sets: Length
    width_seams: int
    height_seams: int
    width_worst: Length
    width_likely: Length
    height_worst: Length
    height_likely: Length

    @classmethod
    def _read(cls, struct: Any) -> "SewingTotal":
        return cls(steps=int(struct.steps), seams=int(struct.seams), sewn=Length(struct.sewn),
                   in_sets=Length(struct.in_sets), width_seams=int(struct.width_seams),
                   height_seams=int(struct.height_seams), width_worst=Length(struct.width_worst),
                   width_likely=Length(struct.width_likely), height_worst=Length(struct.height_worst),
                   height_likely=Length(struct.height_likely))


@dataclass(frozen=True)
class ScatterSpec(Spec):
    """struct muslin_scatter_spec, muslin/scatter.h

    places: to be filled, 1 .. 2^24 (initially 0)
    seed: any number (initially 1)
    work_limit: steps of the search, 0 .. 2^40; a step looks at a touch. 0: filled once, not bettered (initially
        10000000)
    """

    _kind = structs.muslin_scatter_spec
    _init = "muslin_scatter_spec_init"

    places: Optional[int] = None
    seed: Optional[int] = None
    work_limit: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put(struct, "places", self.places)
        put(struct, "seed", self.seed)
        put(struct, "work_limit", self.work_limit)


@dataclass(frozen=True)
class TouchSpec(Spec):
    """struct muslin_touch_spec, muslin/scatter.h

    first: places that touch, each 0 .. places - 1, and not the same (initially 0)
    second: (initially 0)
    weight: how much it matters when they are equal; 1 .. 2^20 (initially 1)
    """

    _kind = structs.muslin_touch_spec
    _init = "muslin_touch_spec_init"

    first: int = 0
    second: int = 0
    weight: int = 1

    def _put(self, struct: Any) -> None:
        put(struct, "first", self.first)
        put(struct, "second", self.second)
        put(struct, "weight", self.weight)

    @classmethod
    def _read(cls, struct: Any) -> "TouchSpec":
        return cls(first=int(struct.first), second=int(struct.second), weight=int(struct.weight))


@dataclass(frozen=True)
class Scattered:
    """struct muslin_scattered, muslin/scatter.h

    touching: weight of the pairs that are equal and touch
    pairs: how many of them there are
    least: no arrangement has less weight
    work: steps taken; an exchange that has begun is finished, past the limit too
    proven: 1 when touching = least
    """

    touching: int
    pairs: int
    least: int
    work: int
    proven: bool

    @classmethod
    def _read(cls, struct: Any) -> "Scattered":
        return cls(touching=int(struct.touching), pairs=int(struct.pairs), least=int(struct.least),
                   work=int(struct.work), proven=bool(struct.proven))


@dataclass(frozen=True)
class ScatterBlocksSpec(Spec):
    """struct muslin_scatter_blocks_spec, muslin/scatter.h

    columns: 1 .. 2^12 (initially 1)
    rows: 1 .. 2^12 (initially 1)
    seed: as in struct muslin_scatter_spec (initially 1)
    work_limit: so (initially 10000000)
    """

    _kind = structs.muslin_scatter_blocks_spec
    _init = "muslin_scatter_blocks_spec_init"

    columns: Optional[int] = None
    rows: Optional[int] = None
    seed: Optional[int] = None
    work_limit: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put(struct, "columns", self.columns)
        put(struct, "rows", self.rows)
        put(struct, "seed", self.seed)
        put(struct, "work_limit", self.work_limit)


@dataclass(frozen=True)
class EdgePrintsSpec(Spec):
    """struct muslin_edge_prints_spec, muslin/scatter.h

    count: how many there are, 0 .. MUSLIN_COUNT_MAX (initially 1)
    top: prints, -1 .. MUSLIN_COUNT_MAX (initially -1)
    right: (initially -1)
    bottom: (initially -1)
    left: (initially -1)
    turns_half: the flag MUSLIN_EDGE_PRINTS_TURNS_HALF (initially False)
    turns_quarter: the flag MUSLIN_EDGE_PRINTS_TURNS_QUARTER (initially False)
    """

    _kind = structs.muslin_edge_prints_spec
    _init = "muslin_edge_prints_spec_init"

    count: Optional[int] = None
    top: Optional[int] = None
    right: Optional[int] = None
    bottom: Optional[int] = None
    left: Optional[int] = None
    turns_half: Optional[bool] = None
    turns_quarter: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "count", self.count)
        put(struct, "top", self.top)
        put(struct, "right", self.right)
        put(struct, "bottom", self.bottom)
        put(struct, "left", self.left)
        put_flag(struct, EDGE_PRINTS_TURNS_HALF, self.turns_half)
        put_flag(struct, EDGE_PRINTS_TURNS_QUARTER, self.turns_quarter)


@dataclass(frozen=True)
class PlacedBlock:
    """struct muslin_placed_block, muslin/scatter.h

    kind: row of the blocks given
    quarter_turns: clockwise
    """

    kind: int
    quarter_turns: int

    @classmethod
    def _read(cls, struct: Any) -> "PlacedBlock":
        return cls(kind=int(struct.kind), quarter_turns=int(struct.quarter_turns))


@dataclass(frozen=True)
class BlankSpec(Spec):
    """struct muslin_blank_spec, muslin/cutplan.h

    cut_width: across the cloth, 1 or more; SLOPED: the pitch; JOINED: the length in all, of each (initially 0)
    cut_length: along it, 1 or more: the height of strip that it needs (initially 0)
    count: 0 .. MUSLIN_CUTPLAN_COUNT_MAX; 0 asks for nothing and is never too large (initially 1)
    run_in: SLOPED: taken once in a strip besides; else 0 (initially 0)
    join_loss: JOINED: what each join takes of the length, 2 s when straight; below the length of a whole strip; else 0
        (initially 0)
    label: the caller's own, given back; it does not matter to the plan (initially 0)
    kind: enum muslin_blank_kind (initially BlankKind.PIECE)
    priority: with MUSLIN_CUTPLAN_BY_PRIORITY: lower ones first; 0 .. 1000 (initially 0)
    least_part: JOINED: strips of it may come from what is left over beside others, each at least this long; 0: only
        whole strips and one shorter one; else 0. Many sewers take 10 to 12 in (initially 0)
    may_turn: the flag MUSLIN_BLANK_MAY_TURN (initially False)
    """

    _kind = structs.muslin_blank_spec
    _init = "muslin_blank_spec_init"

    cut_width: LengthLike = Length(0)
    cut_length: LengthLike = Length(0)
    count: int = 1
    run_in: LengthLike = Length(0)
    join_loss: LengthLike = Length(0)
    label: int = 0
    kind: Optional[BlankKind] = None
    priority: int = 0
    least_part: LengthLike = Length(0)
    may_turn: bool = False

    def _put(self, struct: Any) -> None:
        put_length(struct, "cut_width", self.cut_width)
        put_length(struct, "cut_length", self.cut_length)
        put(struct, "count", self.count)
        put_length(struct, "run_in", self.run_in)
        put_length(struct, "join_loss", self.join_loss)
        put(struct, "label", self.label)
        put(struct, "kind", self.kind)
        put(struct, "priority", self.priority)
        put_length(struct, "least_part", self.least_part)
        put_flag(struct, BLANK_MAY_TURN, self.may_turn)

    @classmethod
    def _read(cls, struct: Any) -> "BlankSpec":
        return cls(cut_width=Length(struct.cut_width), cut_length=Length(struct.cut_length), count=int(struct.count),
                   run_in=Length(struct.run_in), join_loss=Length(struct.join_loss), label=int(struct.label),
                   kind=BlankKind(struct.kind), priority=int(struct.priority), least_part=Length(struct.least_part),
                   may_turn=bool(struct.flags & BLANK_MAY_TURN))


@dataclass(frozen=True)
class CutplanStockSpec(Spec):
    """struct muslin_cutplan_stock_spec, muslin/cutplan.h

    width: usable, across the cloth, 1 or more (initially 21 in)
    length: along it, 1 or more (initially 18 in)
    count: how many there are; MUSLIN_COUNT_MAX: any number (initially 2147483647)
    cost: of each, in any unit, 1 .. MUSLIN_COUNT_MAX: money, area, or 1 to use the fewest (initially 1)
    label: the caller's own, given back (initially 0)
    """

    _kind = structs.muslin_cutplan_stock_spec
    _init = "muslin_cutplan_stock_spec_init"

    width: Optional[LengthLike] = None
    length: Optional[LengthLike] = None
    count: Optional[int] = None
    cost: Optional[int] = None
    label: Optional[int] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "width", self.width)
        put_length(struct, "length", self.length)
        put(struct, "count", self.count)
        put(struct, "cost", self.cost)
        put(struct, "label", self.label)


@dataclass(frozen=True)
class CutplanSpec(Spec):
    """struct muslin_cutplan_spec, muslin/cutplan.h

    usable_width: of the bolt, without selvages, 1 or more; with stock 0 (initially 40 in)
    end_loss: taken off each strip for squaring its ends: half at its left end, down, the rest at its right one
        (initially 0)
    resquare_loss: a strip's cut end is squared again after resquare_every cuts, and loses this: spread over those cuts,
        each piece takes resquare_loss / resquare_every more, up; strips of JOINED pieces are not cross-cut and take no
        more (initially 0)
    resquare_every: 1 or more with a loss, else 0 (initially 0)
    straightening: taken off the bolt, or the length of each piece of stock, once (initially 0)
    spare_pieces: more pieces of each size than all rows of it want; none of JOINED ones (initially 0)
    work_limit: steps of the search, 0 .. 2^40; a desk computer takes 200 to 300 million a second. 0: only first plans
        (initially 400000000)
    print: enum muslin_print: with a direction no piece is turned (initially Print.NONE)
    no_panels: the flag MUSLIN_CUTPLAN_NO_PANELS (initially False)
    one_height: the flag MUSLIN_CUTPLAN_ONE_HEIGHT (initially False)
    own_strips: the flag MUSLIN_CUTPLAN_OWN_STRIPS (initially False)
    stacked: the flag MUSLIN_CUTPLAN_STACKED (initially False)
    first_cut_across: the flag MUSLIN_CUTPLAN_FIRST_CUT_ACROSS (initially False)
    folded: the flag MUSLIN_CUTPLAN_FOLDED (initially False)
    by_priority: the flag MUSLIN_CUTPLAN_BY_PRIORITY (initially False)
    """

    _kind = structs.muslin_cutplan_spec
    _init = "muslin_cutplan_spec_init"

    usable_width: Optional[LengthLike] = None
    end_loss: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    straightening: Optional[LengthLike] = None
    spare_pieces: Optional[int] = None
    work_limit: Optional[int] = None
    print: Optional[Print] = None
    no_panels: Optional[bool] = None
    one_height: Optional[bool] = None
    own_strips: Optional[bool] = None
    stacked: Optional[bool] = None
    first_cut_across: Optional[bool] = None
    folded: Optional[bool] = None
    by_priority: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "usable_width", self.usable_width)
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "straightening", self.straightening)
        put(struct, "spare_pieces", self.spare_pieces)
        put(struct, "work_limit", self.work_limit)
        put(struct, "print", self.print)
        put_flag(struct, CUTPLAN_NO_PANELS, self.no_panels)
        put_flag(struct, CUTPLAN_ONE_HEIGHT, self.one_height)
        put_flag(struct, CUTPLAN_OWN_STRIPS, self.own_strips)
        put_flag(struct, CUTPLAN_STACKED, self.stacked)
        put_flag(struct, CUTPLAN_FIRST_CUT_ACROSS, self.first_cut_across)
        put_flag(struct, CUTPLAN_FOLDED, self.folded)
        put_flag(struct, CUTPLAN_BY_PRIORITY, self.by_priority)


@dataclass(frozen=True)
class CutplanTotal:
    """struct muslin_cutplan_total, muslin/cutplan.h

    pieces: cut in all, those wanted and those spare; of JOINED each strip counts; of FOLDED cloth one that is too many,
        too
    missing: with MUSLIN_CUTPLAN_BY_PRIORITY: pieces left out
    strips: cut right across, panels among them, those within panels and stock too
    panels: of those, panels
    heights: different strip heights
    cuts: right across, slits, left ends squared, cross-cuts and trims; an edge that is there already is none, nor is
        straightening
    cloth_length: of the bolt: strips and panels, and straightening; 0 from stock, or of nothing
    cost: of the stock; from a bolt the cloth length without straightening
    least: the bound: no plan of this kind costs less, JOINED pieces being cut in the lengths of muslin_cutplan_sizes()
    stock_pieces: pieces of stock that are cut into; 0 from a bolt
    waste: doubled square ticks of the cloth that is used up or cut into that become no piece: trims, losses and what is
        left over; spare pieces, one too many and what joins take of JOINED strips count as pieces
    own_strips_length: of a bolt: when each size has its own strips, all its pieces lying alike, the way that takes
        less; JOINED ones in whole strips and one shorter one; straightening included; else 0
    area_bound: of a bolt: the pieces' area over its width, up: a plain bound, whatever the lengths of JOINED strips;
        else 0
    work: steps taken
    cases: of the proof
    proven: 1 when cost = least
    stopped: enum muslin_cutplan_stopped
    other_lengths: 1: strips of JOINED pieces might have other lengths, with which a plan might cost less than least:
        some have a least_part that is heeded
    """

    pieces: int
    missing: int
    strips: int
    panels: int
    heights: int
    cuts: int
    cloth_length: Length
    cost: int
    least: int
    stock_pieces: int
    waste: int
    own_strips_length: Length
    area_bound: Length
    work: int
    cases: int
    proven: bool
    stopped: CutplanStopped
    other_lengths: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanTotal":
        return cls(pieces=int(struct.pieces), missing=int(struct.missing), strips=int(struct.strips),
                   panels=int(struct.panels), heights=int(struct.heights), cuts=int(struct.cuts),
                   cloth_length=Length(struct.cloth_length), cost=int(struct.cost), least=int(struct.least),
                   stock_pieces=int(struct.stock_pieces), waste=int(struct.waste),
                   own_strips_length=Length(struct.own_strips_length), area_bound=Length(struct.area_bound),
                   work=int(struct.work), cases=int(struct.cases), proven=bool(struct.proven),
                   stopped=CutplanStopped(struct.stopped), other_lengths=bool(struct.other_lengths))


@dataclass(frozen=True)
class CutplanStrip:
    """struct muslin_cutplan_strip, muslin/cutplan.h

    times: so many alike, one behind the other; of SLIT and WITHIN: in each of its holder
    holder: SLIT and WITHIN: the row of the panel or piece of stock; else -1
    stock: STOCK: the row of the request; else -1
    first_place: its pieces: rows of muslin_cutplan_places()
    places: how many
    x: lower left corner of the first: from the left selvage (FOLDED: that of both layers) or the holder's left edge,
    y: and from the straightened end of the bolt or the holder's lower edge; STOCK: 0
    width: along the strip, before end_loss: of a bolt, of its half when FOLDED, of the stock; SLIT: up to the last
        slit; beside it what is left
    height: how far along the cloth it goes
    used: of the width, by its pieces
    kind: enum muslin_cutplan_strip_kind
    turned: 1 when first cuts run along the length of this piece of stock: its width here is its length, less
        straightening, and its height is its width
    """

    times: int
    holder: int
    stock: int
    first_place: int
    places: int
    x: Length
    y: Length
    width: Length
    height: Length
    used: Length
    kind: CutplanStripKind
    turned: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanStrip":
        return cls(times=int(struct.times), holder=int(struct.holder), stock=int(struct.stock),
                   first_place=int(struct.first_place), places=int(struct.places), x=Length(struct.x),
                   y=Length(struct.y), width=Length(struct.width), height=Length(struct.height),
                   used=Length(struct.used), kind=CutplanStripKind(struct.kind), turned=bool(struct.turned))


@dataclass(frozen=True)
class CutplanPlace:
    """struct muslin_cutplan_place, muslin/cutplan.h

    piece: row of the request; of FOLDED cloth that of the upper piece: where the row wants only one more, the lower one
        is for the next row of this size
    strip: row of muslin_cutplan_strips()
    count: so many side by side; FOLDED: in each layer
    x: left edge of the first, from the strip's left end: of the first place half of end_loss, 0 beside slit pieces
    y: lower edge, from the strip's: 0, or what lies below in a stack
    width: cut, as it lies; SLOPED: from its left corner to its right one, run-in and pitch; JOINED and FOLDED: that of
        the strip, which may go round the fold
    height
    pitch: from one to the next: the width, of SLOPED pieces the pitch, and the squaring share
    turned: 1: turned a quarter in its strip from what its row says
    trimmed: 1: the strip is higher, one more cut
    """

    piece: int
    strip: int
    count: int
    x: Length
    y: Length
    width: Length
    height: Length
    pitch: Length
    turned: bool
    trimmed: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanPlace":
        return cls(piece=int(struct.piece), strip=int(struct.strip), count=int(struct.count), x=Length(struct.x),
                   y=Length(struct.y), width=Length(struct.width), height=Length(struct.height),
                   pitch=Length(struct.pitch), turned=bool(struct.turned), trimmed=bool(struct.trimmed))


@dataclass(frozen=True)
class CutplanBlank:
    """struct muslin_cutplan_blank, muslin/cutplan.h

    piece: row of the request
    place: row of muslin_cutplan_places()
    strip: row of muslin_cutplan_strips()
    stock: row of the request, -1: from the bolt
    sheet: which piece of stock of all that are used, from 0; of the bolt 0
    x: lower left corner: from the left selvage, or the left edge of the piece of stock,
    y: and from the straightened end of the bolt or piece of stock
    width: across the bolt or piece of stock; SLOPED: from its left corner to its right one, so that neighbours overlap;
        JOINED and FOLDED: unfolded, it may go round the fold
    height
    turned: 1: turned a quarter from what its row says
    trimmed: 1: its strip is higher
    layers: 2: FOLDED, one in each layer; else 1
    """

    piece: int
    place: int
    strip: int
    stock: int
    sheet: int
    x: Length
    y: Length
    width: Length
    height: Length
    turned: bool
    trimmed: bool
    layers: int

    @classmethod
    def _read(cls, struct: Any) -> "CutplanBlank":
        return cls(piece=int(struct.piece), place=int(struct.place), strip=int(struct.strip), stock=int(struct.stock),
                   sheet=int(struct.sheet), x=Length(struct.x), y=Length(struct.y), width=Length(struct.width),
                   height=Length(struct.height), turned=bool(struct.turned), trimmed=bool(struct.trimmed),
                   layers=int(struct.layers))


@dataclass(frozen=True)
class CutplanLeftOver:
    """struct muslin_cutplan_left_over, muslin/cutplan.h

    strip: row of muslin_cutplan_strips(): the strip that it is the end of, the panel or piece of stock that it is the
        rest of, the slit pieces that it lies above
    count: so many alike
    x: its lower left corner, from that row's
    y
    width: without end_loss; at the fold of FOLDED cloth unfolded, twice as wide
    height
    """

    strip: int
    count: int
    x: Length
    y: Length
    width: Length
    height: Length

    @classmethod
    def _read(cls, struct: Any) -> "CutplanLeftOver":
        return cls(strip=int(struct.strip), count=int(struct.count), x=Length(struct.x), y=Length(struct.y),
                   width=Length(struct.width), height=Length(struct.height))


@dataclass(frozen=True)
class CutplanPiece:
    """struct muslin_cutplan_piece, muslin/cutplan.h

    label: the row's own
    made: of its count
    missing: the rest of it: 0, but with MUSLIN_CUTPLAN_BY_PRIORITY
    cut: for it, made or more: with the spare pieces, and of FOLDED cloth the one too many, of its size where it is the
        last row that gets some; of JOINED strips
    """

    label: int
    made: int
    missing: int
    cut: int

    @classmethod
    def _read(cls, struct: Any) -> "CutplanPiece":
        return cls(label=int(struct.label), made=int(struct.made), missing=int(struct.missing), cut=int(struct.cut))


@dataclass(frozen=True)
class CutplanStockUsed:
    """struct muslin_cutplan_stock_used, muslin/cutplan.h

    label: the row's own
    used: pieces of stock that are cut into
    cost: of those
    """

    label: int
    used: int
    cost: int

    @classmethod
    def _read(cls, struct: Any) -> "CutplanStockUsed":
        return cls(label=int(struct.label), used=int(struct.used), cost=int(struct.cost))


@dataclass(frozen=True)
class CutplanWidth:
    """struct muslin_cutplan_width, muslin/cutplan.h

    usable_width: of the cloth
    cloth_length: straightening included; 0 where a piece does not fit
    least: bound, without straightening
    proven: 1 when the length without straightening is the bound
    """

    usable_width: Length
    cloth_length: Length
    least: int
    proven: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanWidth":
        return cls(usable_width=Length(struct.usable_width), cloth_length=Length(struct.cloth_length),
                   least=int(struct.least), proven=bool(struct.proven))


@dataclass(frozen=True)
class CutplanSize:
    """struct muslin_cutplan_size, muslin/cutplan.h

    piece: the first row of the request that wants it
    count: wanted, spare ones included, of all rows alike; FOLDED: blanks, of two pieces each, or of one where it goes
        round the fold
    taken: of a strip: cut width and the squaring share; SLOPED: the pitch. What may lie turned is given with its longer
        side across
    height: of strip that it needs
    run_in: as in struct muslin_blank_spec
    may_turn: 1: may lie turned
    slit: 1: may be slit from a panel, and is cut from no strip within one
    level: 1: only in strips of just its height
    turned_taken: of a strip when turned: the other side and the squaring share; else 0
    turned_height: then; else 0
    """

    piece: int
    count: int
    taken: Length
    height: Length
    run_in: Length
    may_turn: bool
    slit: bool
    level: bool
    turned_taken: Length
    turned_height: Length

    @classmethod
    def _read(cls, struct: Any) -> "CutplanSize":
        return cls(piece=int(struct.piece), count=int(struct.count), taken=Length(struct.taken),
                   height=Length(struct.height), run_in=Length(struct.run_in), may_turn=bool(struct.may_turn),
                   slit=bool(struct.slit), level=bool(struct.level), turned_taken=Length(struct.turned_taken),
                   turned_height=Length(struct.turned_height))


@dataclass(frozen=True)
class CutplanWay:
    """struct muslin_cutplan_way, muslin/cutplan.h

    cost: height of a strip, length of a panel, or cost of the stock
    stock: row of the request, -1: from the bolt
    width: room along each strip, down to what sizes can add up to
    height: of the strip; of a panel or piece of stock room for strips
    kind: enum muslin_cutplan_strip_kind: STRIP, PANEL or STOCK
    turned: 1 when first cuts run along the length of the stock
    """

    cost: int
    stock: int
    width: Length
    height: Length
    kind: CutplanStripKind
    turned: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanWay":
        return cls(cost=int(struct.cost), stock=int(struct.stock), width=Length(struct.width),
                   height=Length(struct.height), kind=CutplanStripKind(struct.kind), turned=bool(struct.turned))


@dataclass(frozen=True)
class CutplanCase:
    """struct muslin_cutplan_case, muslin/cutplan.h

    parent: row of the case of which this is a part; -1: the whole
    split: rows split and split + 1 are its parts; 0: it is not split
    worths: row whose worths prove its bound: itself, or one that it is a part of
    least: bound of this case by those, before its parts are looked at
    wanted: what sets this case apart (not of the whole): `wanted` of the ways first_way .. last_way
    first_way: rows of muslin_cutplan_ways()
    last_way: ... up to and with this one
    plan_size: -1: so many strips, panels or pieces of stock; else so many of this size in them, and first_way =
        last_way
    packed_way: -1, or a way that is one strip: nothing is of this case, because the conditions on the way to it ask for
        more pieces than fit into as many strips of this way as they allow
    at_least: 1: at least `wanted`, 0: at most
    """

    parent: int
    split: int
    worths: int
    least: int
    wanted: int
    first_way: int
    last_way: int
    plan_size: int
    packed_way: int
    at_least: bool

    @classmethod
    def _read(cls, struct: Any) -> "CutplanCase":
        return cls(parent=int(struct.parent), split=int(struct.split), worths=int(struct.worths),
                   least=int(struct.least), wanted=int(struct.wanted), first_way=int(struct.first_way),
                   last_way=int(struct.last_way), plan_size=int(struct.plan_size), packed_way=int(struct.packed_way),
                   at_least=bool(struct.at_least))


@dataclass(frozen=True)
class CutplanWorth:
    """struct muslin_cutplan_worth, muslin/cutplan.h

    plan_size: the size of which each piece is worth it, -1: not a size
    of_case: ... else the case whose condition is, for each of what it counts; -1: not a case
    stock: ... else the row of stock: each piece used costs so much more, worth being 0 or less
    worth: over scale, of the cost; 0 or more of sizes and at_least, 0 or less of at most
    """

    plan_size: int
    of_case: int
    stock: int
    worth: int

    @classmethod
    def _read(cls, struct: Any) -> "CutplanWorth":
        return cls(plan_size=int(struct.plan_size), of_case=int(struct.of_case), stock=int(struct.stock),
                   worth=int(struct.worth))


@dataclass(frozen=True)
class CutplanChecked:
    """struct muslin_cutplan_checked, muslin/cutplan.h

    cost: of the plan, added up anew
    least: the bound, proved anew
    cases: cases looked at
    fault: enum muslin_cutplan_fault: what is wrong first
    at: the row of sizes, of stock or of cases that is at fault; OVERFULL, TOO_HIGH, COST: which of the strips, pieces
        laid or things as the search noted them
    """

    cost: int
    least: int
    cases: int
    fault: CutplanFault
    at: int

    @classmethod
    def _read(cls, struct: Any) -> "CutplanChecked":
        return cls(cost=int(struct.cost), least=int(struct.least), cases=int(struct.cases),
                   fault=CutplanFault(struct.fault), at=int(struct.at))


@dataclass(frozen=True)
class YardageSpec(Spec):
    """struct muslin_yardage_spec, muslin/yardage.h

    end_loss: these six as in struct muslin_cutplan_spec, of each fabric (initially 0)
    resquare_loss: so (initially 0)
    resquare_every: so (initially 0)
    straightening: so (initially 0)
    spare_pieces: so (initially 0)
    work_limit: of each fabric (initially 400000000)
    join_loss: of pieces that are joined here, as in struct muslin_blank_spec (initially 1/2 in)
    extra: these four as in struct muslin_purchase_spec, of each fabric (initially 0)
    step: so (initially 4 1/2 in)
    shrinkage: so (initially 0)
    extra_share: so (initially 0)
    long_pieces: enum muslin_long_pieces: what is longer than its fabric is wide (initially LongPieces.LENGTHWISE)
    least_part: as join_loss (initially 0)
    mitre_extra: added to the longer side of each mitred strip, for handling; 0 .. MUSLIN_SIZE_MAX (initially 0)
    no_panels: the flag MUSLIN_CUTPLAN_NO_PANELS (initially False)
    one_height: the flag MUSLIN_CUTPLAN_ONE_HEIGHT (initially False)
    own_strips: the flag MUSLIN_CUTPLAN_OWN_STRIPS (initially False)
    stacked: the flag MUSLIN_CUTPLAN_STACKED (initially False)
    folded: the flag MUSLIN_CUTPLAN_FOLDED (initially False)
    """

    _kind = structs.muslin_yardage_spec
    _init = "muslin_yardage_spec_init"

    end_loss: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    straightening: Optional[LengthLike] = None
    spare_pieces: Optional[int] = None
    work_limit: Optional[int] = None
    join_loss: Optional[LengthLike] = None
    extra: Optional[LengthLike] = None
    step: Optional[LengthLike] = None
    shrinkage: Optional[int] = None
    extra_share: Optional[int] = None
    long_pieces: Optional[LongPieces] = None
    least_part: Optional[LengthLike] = None
    mitre_extra: Optional[LengthLike] = None
    no_panels: Optional[bool] = None
    one_height: Optional[bool] = None
    own_strips: Optional[bool] = None
    stacked: Optional[bool] = None
    folded: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "end_loss", self.end_loss)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "straightening", self.straightening)
        put(struct, "spare_pieces", self.spare_pieces)
        put(struct, "work_limit", self.work_limit)
        put_length(struct, "join_loss", self.join_loss)
        put_length(struct, "extra", self.extra)
        put_length(struct, "step", self.step)
        put(struct, "shrinkage", self.shrinkage)
        put(struct, "extra_share", self.extra_share)
        put(struct, "long_pieces", self.long_pieces)
        put_length(struct, "least_part", self.least_part)
        put_length(struct, "mitre_extra", self.mitre_extra)
        put_flag(struct, CUTPLAN_NO_PANELS, self.no_panels)
        put_flag(struct, CUTPLAN_ONE_HEIGHT, self.one_height)
        put_flag(struct, CUTPLAN_OWN_STRIPS, self.own_strips)
        put_flag(struct, CUTPLAN_STACKED, self.stacked)
        put_flag(struct, CUTPLAN_FOLDED, self.folded)


@dataclass(frozen=True)
class ExtraCutSpec(Spec):
    """struct muslin_extra_cut_spec, muslin/yardage.h

    fabric: of the quilt, whether its top uses it or not (initially 0)
    cut_width: these and what follows as in struct muslin_blank_spec (initially 0)
    cut_length: (initially 0)
    count: so (initially 1)
    run_in: so (initially 0)
    join_loss: so (initially 0)
    kind: enum muslin_blank_kind (initially BlankKind.PIECE)
    least_part: so (initially 0)
    may_turn: the flag MUSLIN_BLANK_MAY_TURN (initially False)
    """

    _kind = structs.muslin_extra_cut_spec
    _init = "muslin_extra_cut_spec_init"

    fabric: Optional[Id] = None
    cut_width: Optional[LengthLike] = None
    cut_length: Optional[LengthLike] = None
    count: Optional[int] = None
    run_in: Optional[LengthLike] = None
    join_loss: Optional[LengthLike] = None
    kind: Optional[BlankKind] = None
    least_part: Optional[LengthLike] = None
    may_turn: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put(struct, "fabric", self.fabric)
        put_length(struct, "cut_width", self.cut_width)
        put_length(struct, "cut_length", self.cut_length)
        put(struct, "count", self.count)
        put_length(struct, "run_in", self.run_in)
        put_length(struct, "join_loss", self.join_loss)
        put(struct, "kind", self.kind)
        put_length(struct, "least_part", self.least_part)
        put_flag(struct, BLANK_MAY_TURN, self.may_turn)


@dataclass(frozen=True)
class FabricYardage:
    """struct muslin_fabric_yardage, muslin/yardage.h

    fabric: of the quilt
    usable_width: of its cloth
    pieces: cut, extra cuts and spare ones among them
    cloth_length: of the plan, straightening included: what is needed
    least: no plan of two stages needs less, straightening included
    own_strips_length: when each size has its own strips
    with_extra: before it shrinks and with what is added, as in struct muslin_purchase
    bought: up to the step
    spare: bought - with_extra
    narrowest_width: at which the plan can still be cut as it is
    proven: 1: cloth_length is the least
    turned: 1: some pieces lie turned a quarter from the request
    """

    fabric: Id
    usable_width: Length
    pieces: int
    cloth_length: Length
    least: Length
    own_strips_length: Length
    with_extra: Length
    bought: Length
    spare: Length
    narrowest_width: Length
    proven: bool
    turned: bool

    @classmethod
    def _read(cls, struct: Any) -> "FabricYardage":
        return cls(fabric=int(struct.fabric), usable_width=Length(struct.usable_width), pieces=int(struct.pieces),
                   cloth_length=Length(struct.cloth_length), least=Length(struct.least),
                   own_strips_length=Length(struct.own_strips_length), with_extra=Length(struct.with_extra),
                   bought=Length(struct.bought), spare=Length(struct.spare),
                   narrowest_width=Length(struct.narrowest_width), proven=bool(struct.proven),
                   turned=bool(struct.turned))


@dataclass(frozen=True)
class StockSize:
    """What stock_size() answers."""

    width: Length
    length: Length


@dataclass(frozen=True)
class StripsetShortest:
    """What stripset_shortest() answers."""

    shortest: Length
    index: int
    warnings: Tuple[Warning, ...]


@dataclass(frozen=True)
class StripsetPrints:
    """What stripset_prints() answers."""

    rows: Tuple[StripsetPrint, ...]
    sets: int
    scarcest: int


@dataclass(frozen=True)
class ShapeFoundation:
    """What shape_foundation() answers."""

    along: Length
    across: Length


@dataclass(frozen=True)
class UnitRecipeAt:
    """What unit_recipe_at() answers."""

    kind: int
    method: int


@dataclass(frozen=True)
class MedallionPlan:
    """What medallion_plan() answers."""

    rows: Tuple[MedallionRow, ...]
    out: Medallion


@dataclass(frozen=True)
class FitRescale:
    """What fit_rescale() answers."""

    rows: Tuple[FitRescaleRow, ...]
    out: FitRescaled


@dataclass(frozen=True)
class StripquiltPressing:
    """What stripquilt_pressing() answers."""

    pressing: SetPressing
    segments: int


@dataclass(frozen=True)
class StitchCount:
    """What stitch_count() answers."""

    thousandths: int
    exact: bool


@dataclass(frozen=True)
class QuiltSeam:
    """What quilt_seam() answers."""

    allowance: Id
    take_up: Id


@dataclass(frozen=True)
class QuiltReadShape:
    """What quilt_read_shape() answers."""

    corners: Tuple[CornerSpec, ...]
    width: Id
    height: Id


@dataclass(frozen=True)
class ScatterPrints:
    """What scatter_prints() answers."""

    out: Tuple[int, ...]
    result: Scattered


@dataclass(frozen=True)
class ScatterBlocks:
    """What scatter_blocks() answers."""

    rows: Tuple[PlacedBlock, ...]
    result: Scattered


@dataclass(frozen=True)
class ScatterSets:
    """What scatter_sets() answers."""

    out: Tuple[int, ...]
    result: Scattered


@dataclass(frozen=True)
class ScatterTouches:
    """What scatter_touches() answers."""

    rows: Tuple[TouchSpec, ...]
    places: int


@dataclass(frozen=True)
class CutplanWorths:
    """What cutplan_worths() answers."""

    rows: Tuple[CutplanWorth, ...]
    scale: int
