# SPDX-License-Identifier: MIT
"""The calls, one for each function of the library that takes no handle.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
import ctypes
from typing import List, Optional, Sequence, Tuple

from . import _api as structs
from ._buffers import (Buffer, elementwise, gathered, Integers, integers, Lengths, Numbers, output, places_given,
                       places_out, same_count, statuses_of)
from ._handle import ALLOCATOR, Progress, Told
from ._length import Formatted, Length, LengthLike, ticks_of
from ._library import library
from ._problem import call, call_telling
from ._records import asked, merged, rows_of, struct_of, text_out, warnings_in, words_out
from ._values import Id, new, utf8, whole
from .constants import (AllowancePolicy, Argument, BackingLayout, BorderStyle, CostKind, Direction, Drop, Edge,
                        FirstBlock, FitRank, Fold, FootCorner, GoverningRule, Hand, Join, LengthUnit, LogOrder, LogTurn,
                        Nesting, Parity, PointEdge, PointLayout, PolygonMeasure, Print, QuiltingPattern, QuiltingStart,
                        SetPressing, Side, Style, Table, ThreadMethod, Tip, Turning, UnitKind, UnitMethod, Warning)
from .records import (AccuracyMeeting, AccuracyMeetSpec, AccuracyRowErrors, AccuracyRowSpec, AccuracyTopErrors,
                      AccuracyTopSpec, Backing, BackingSpec, Batting, BattingSpec, Bed, BedCover, BedCoveredSpec,
                      BedSpec, Bias, BiasSpec, Binding, BindingSpec, BindingWidth, BindingWidthSpec, Block, BlockGroup,
                      BlockSpec, Border, BorderSpec, Calibration, CarryOnSpec, ClothPieces, ClothSpec, CommonRepeat,
                      CornerSpec, Cost, CostSpec, CutlistLists, CutlistPart, CutlistPieceSpec, CutlistRow, CutlistSpec,
                      CutlistStock, CutlistYardage, EdgePrintsSpec, Fit, FitAcrossBlocks, FitAcrossSpec, FitRescale,
                      FitRescaled, FitRescaleRow, FitRescaleSpec, FitSpec, FitTriangleRows, FitTrianglesSpec,
                      FormatSpec, Frame, FrameCorner, FrameSpec, Governing, Hanging, HangingSpec, Harvest, HarvestSpec,
                      Logcabin, LogcabinFit, LogcabinFitSpec, LogcabinLog, LogcabinSpec, LogcabinStrip, Medallion,
                      MedallionPlan, MedallionRow, MedallionSpec, Motif, MotifSpec, MotifYield, Need, NeedSpec, Panel,
                      Parsed, ParseSpec, Piece, PieceSpec, Piecing, PiecingSpec, PlacedBlock, PointBorder,
                      PointBorderSpec, Prewash, PrewashSpec, Purchase, PurchaseSpec, QuarterCircle, QuarterCircleSpec,
                      Quilting, QuiltingSpec, Reference, RegularPolygon, Repeat, RepeatSpec, Rounded, RoundingSpec, Run,
                      RunSpec, SashPiece, ScatterBlocks, ScatterBlocksSpec, Scattered, ScatterPrints, ScatterSets,
                      ScatterSpec, SeamSpec, Setting, SettingAlternatePlan, SettingAlternateSpec, SettingLinePlace,
                      SettingLinePlan, SettingLineSpec, SettingPointPlan, SettingPointSpec, SettingSashedPlan,
                      SettingSashedSpec, SettingSpec, SewnRow, Shape, ShapeFoundation, ShapePiece, ShapePieceSpec,
                      ShrinkageSpec, SizeToMake, Stack, StackSpec, StitchCount, StockSize, StockSpec, StockYield,
                      Stripquilt, StripquiltPressing, StripquiltSpec, Strips, StripsetPrint, StripsetPrints,
                      StripsetShortest, StripsSpec, Substitution, TemplateCorner, Thread, ThreadSpec, TouchSpec,
                      UnitCorner, UnitPiece, UnitPlan, UnitRecipeAt, UnitSpec, UnitStep, UnitStockSpec, UnitYield,
                      WashChange, WashedSize, WashSpec, Weight, WeightSpec, Yield, YieldSpec)

__all__ = ["version", "version_text", "status_count", "status_name", "status_sentence", "argument_count",
           "argument_words", "warning_count", "warning_name", "warning_sentence", "constant_count", "constant_name",
           "constant_value", "length_add", "length_subtract", "length_multiply", "length_divide", "length_scale",
           "length_snap", "length_compare", "length_sum", "length_dot", "length_add_n", "length_subtract_n",
           "length_multiply_n", "length_scale_n", "length_snap_n", "length_times_root2", "length_over_root2",
           "length_equilateral_height", "length_equilateral_side", "length_hypotenuse", "length_root_of_area",
           "length_unit_ticks", "length_unit_word", "length_parse", "length_format", "seam_cut_from_finished",
           "seam_finished_from_cut", "seam_cut_from_finished_n", "seam_finished_from_cut_n", "seam_piece",
           "seam_row_equal", "seam_row", "seam_strip_for_finished", "seam_resize_cut", "seam_calibrate",
           "seam_carry_on", "seam_error_total", "seam_error_limit", "seam_share", "accuracy_row", "accuracy_top",
           "accuracy_meet", "shrinkage_change", "shrinkage_measure", "shrinkage_size_to_make", "shrinkage_becomes",
           "shrinkage_from_sample", "shrinkage_governs", "shrinkage_prewash", "fabric_usable_width", "fabric_purchase",
           "fabric_pieces", "fabric_strips", "fabric_area_bound", "stock_size", "stock_strips", "stock_check",
           "print_may_turn", "motif_plan", "motif_from_cloth", "stack_plan", "reference_count", "reference_row",
           "reference_name", "reference_source", "reference_note", "stripset_yield", "stripset_shortest",
           "stripset_need", "stripset_harvest", "stripset_prints", "cutlist_from_yardage", "cutlist_yardage_rows",
           "cutlist_from_stock", "cutlist_stock_rows", "cutlist_stock_parts", "cutlist_lists_from_stock",
           "cutlist_lists_rows", "cutlist_substitute", "shape_check", "shape_template", "shape_measure",
           "shape_foundation", "shape_quarter_circle", "arc_length", "shape_regular_polygon", "unit_recipe",
           "unit_pieces", "unit_recipe_count", "unit_recipe_at", "unit_from_stock", "unit_largest", "unit_makes",
           "unit_outlines", "unit_steps", "unit_step_sentence", "setting_straight", "setting_turn",
           "block_from_segments", "join_loss", "run_plan", "border_plan", "setting_sashed", "setting_sashed_pieces",
           "setting_alternate", "setting_line", "setting_line_places", "setting_point", "setting_point_block_for_width",
           "setting_point_block_from_side", "logcabin_plan", "logcabin_logs", "logcabin_strips", "logcabin_log_for",
           "logcabin_rounds_for", "frame_pieces", "frame_outline", "medallion_plan", "repeat_plan", "repeat_common",
           "point_border_plan", "bed_size", "bed_covered", "fit_settings", "fit_nearest", "fit_across", "fit_triangles",
           "fit_rescale", "binding_measure", "binding_plan", "bias_tube", "bias_least_square", "bias_strips",
           "batting_plan", "backing_layouts", "backing_panels", "hanging_plan", "stripquilt_plan",
           "stripquilt_strips_needed", "stripquilt_groups", "stripquilt_pressing", "piecing_plan", "thread_plan",
           "stitch_count", "stitch_length", "quilting_lines", "weight_plan", "density_from_ounces", "mass_in_ounces",
           "cost_plan", "cost_total", "id_sort", "id_number", "sewing_label", "scatter_prints", "scatter_blocks",
           "scatter_sets"]


def version() -> int:
    """The version of the library that is running, in the form of MUSLIN_VERSION; it belongs to these headers where the
    major version is the same and it is not older, patches apart.

    muslin_version() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_version())


def version_text() -> str:
    """The same as text, for instance "1.1.0".

    muslin_version_text() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_version_text().decode("utf-8"))


def status_count() -> int:
    """How many statuses this library knows.

    muslin_status_count() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_status_count())


def status_name(status: int) -> str:
    """The status's name without its prefix, for instance "ERR_RANGE" for 6 and "OK" for 0; "UNKNOWN" for a number
    outside the list.

    muslin_status_name() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_status_name(whole(status, "status", 32)).decode("utf-8"))


def status_sentence(status: int) -> str:
    """One plain English sentence on what the status means and what to do.

    muslin_status_sentence() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_status_sentence(whole(status, "status", 32)).decode("utf-8"))


def argument_count() -> int:
    """How many arguments this library can name, numbered 0 .. count - 1.

    muslin_argument_count() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_argument_count())


def argument_words(argument: Argument) -> str:
    """The trade's words for an argument, for instance "seam allowance"; "unknown argument" for a number outside the
    list.

    muslin_argument_words() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_argument_words(whole(argument, "argument", 32)).decode("utf-8"))


def warning_count() -> int:
    """How many warnings this library knows: the bits 0 .. count - 1, each 1u << bit.

    muslin_warning_count() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_warning_count())


def warning_name(warning: Warning) -> str:
    """The name of one warning bit without its prefix, for instance "NO_SLACK" for 1; "UNKNOWN" for 0 or for anything
    that is not exactly one known bit.

    muslin_warning_name() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_warning_name(whole(warning, "warning", 32, signed=False)).decode("utf-8"))


def warning_sentence(warning: Warning) -> str:
    """One sentence for one warning bit; "" for 0 or for anything that is not exactly one known bit.

    muslin_warning_sentence() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_warning_sentence(whole(warning, "warning", 32, signed=False)).decode("utf-8"))


def constant_count() -> int:
    """Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
    flags, ticks per unit.

    muslin_constant_count() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_constant_count())


def constant_name(index: int) -> str:
    """Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
    flags, ticks per unit.

    muslin_constant_name() in muslin/base.h. Since 1.0.
    """
    return str(library.muslin_constant_name(whole(index, "index", 32)).decode("utf-8"))


def constant_value(index: int) -> int:
    """Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
    flags, ticks per unit.

    muslin_constant_value() in muslin/base.h. Since 1.0.
    """
    return int(library.muslin_constant_value(whole(index, "index", 32)))


def length_add(a: LengthLike, b: LengthLike) -> Length:
    """a + b.

    muslin_length_add() in muslin/length.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call("muslin_length_add", ticks_of(a, "a"), ticks_of(b, "b"), ctypes.byref(out_))
    return Length(out_.value)


def length_subtract(a: LengthLike, b: LengthLike) -> Length:
    """a - b, which may be negative.

    muslin_length_subtract() in muslin/length.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call("muslin_length_subtract", ticks_of(a, "a"), ticks_of(b, "b"), ctypes.byref(out_))
    return Length(out_.value)


def length_multiply(a: LengthLike, factor: int) -> Length:
    """a x factor, factor any int64_t.

    muslin_length_multiply() in muslin/length.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call("muslin_length_multiply", ticks_of(a, "a"), whole(factor, "factor"), ctypes.byref(out_))
    return Length(out_.value)


def length_divide(a: LengthLike, divisor: int, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a / divisor, rounded as asked.

    muslin_length_divide() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_divide", ticks_of(a, "a"), whole(divisor, "divisor"), ctypes.byref(rounding_),
         ctypes.byref(out_))
    return Rounded._read(out_)


def length_scale(a: LengthLike, numerator: int, denominator: int, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a x numerator / denominator, rounded once, as asked; the product is never cut short on the way.

    muslin_length_scale() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_scale", ticks_of(a, "a"), whole(numerator, "numerator"), whole(denominator, "denominator"),
         ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_snap(a: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a brought to the grid.

    muslin_length_snap() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_snap", ticks_of(a, "a"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_compare(a: LengthLike, b: LengthLike) -> int:
    """-1, 0 or 1 as a is less than, equal to or greater than b.

    muslin_length_compare() in muslin/length.h. Since 1.0.
    """
    return int(library.muslin_length_compare(ticks_of(a, "a"), ticks_of(b, "b")))


def length_sum(values: Lengths) -> Length:
    """The sum of n lengths; the status does not depend on their order, because partial sums may pass the range, and any
    length out of range gives MUSLIN_ERR_RANGE before MUSLIN_ERR_OVERFLOW is considered.

    muslin_length_sum() in muslin/length.h. Since 1.0.
    """
    values_ = gathered(values, "values")
    out_ = ctypes.c_int64()
    call("muslin_length_sum", values_.numbers, values_.count, ctypes.byref(out_))
    return Length(out_.value)


def length_dot(lengths: Lengths, counts: Integers) -> Length:
    """The sum of lengths[i] x counts[i]; order-independent as above.

    muslin_length_dot() in muslin/length.h. Since 1.0.
    """
    lengths_ = gathered(lengths, "lengths")
    counts_ = integers(counts, "counts")
    out_ = ctypes.c_int64()
    same_count(lengths=lengths_, counts=counts_)
    call("muslin_length_dot", lengths_.numbers, counts_.numbers, lengths_.count, ctypes.byref(out_))
    return Length(out_.value)


def length_add_n(a: Buffer, b: Buffer, out: Optional[Buffer] = None, statuses: Optional[Buffer] = None) -> Buffer:
    """One call for n values.

    muslin_length_add_n() in muslin/length.h. Since 1.0.
    """
    a_ = Numbers(a, "a", 64)
    b_ = Numbers(b, "b", 64)
    result, out_ = output(out, [a_, b_])
    same_count(a=a_, b=b_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_length_add_n", a_.numbers, b_.numbers, a_.count, out_.numbers, statuses_)
    return result


def length_subtract_n(a: Buffer, b: Buffer, out: Optional[Buffer] = None, statuses: Optional[Buffer] = None) -> Buffer:
    """One call for n values.

    muslin_length_subtract_n() in muslin/length.h. Since 1.0.
    """
    a_ = Numbers(a, "a", 64)
    b_ = Numbers(b, "b", 64)
    result, out_ = output(out, [a_, b_])
    same_count(a=a_, b=b_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_length_subtract_n", a_.numbers, b_.numbers, a_.count, out_.numbers, statuses_)
    return result


def length_multiply_n(a: Buffer, factors: Buffer, out: Optional[Buffer] = None,
                      statuses: Optional[Buffer] = None) -> Buffer:
    """One call for n values.

    muslin_length_multiply_n() in muslin/length.h. Since 1.0.
    """
    a_ = Numbers(a, "a", 64)
    factors_ = Numbers(factors, "factors", 64)
    result, out_ = output(out, [a_, factors_])
    same_count(a=a_, factors=factors_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_length_multiply_n", a_.numbers, factors_.numbers, a_.count, out_.numbers, statuses_)
    return result


def length_scale_n(a: Buffer, numerator: int, denominator: int, rounding: Optional[RoundingSpec] = None,
                   out: Optional[Buffer] = None, statuses: Optional[Buffer] = None) -> Buffer:
    """a[i] x numerator / denominator, each rounded as asked.

    muslin_length_scale_n() in muslin/length.h. Since 1.0.
    """
    a_ = Numbers(a, "a", 64)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    result, out_ = output(out, [a_])
    same_count(a=a_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_length_scale_n", a_.numbers, a_.count, whole(numerator, "numerator"),
                whole(denominator, "denominator"), ctypes.byref(rounding_), out_.numbers, statuses_)
    return result


def length_snap_n(a: Buffer, rounding: Optional[RoundingSpec] = None, out: Optional[Buffer] = None,
                  statuses: Optional[Buffer] = None) -> Buffer:
    """a[i], each brought to the grid.

    muslin_length_snap_n() in muslin/length.h. Since 1.0.
    """
    a_ = Numbers(a, "a", 64)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    result, out_ = output(out, [a_])
    same_count(a=a_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_length_snap_n", a_.numbers, a_.count, ctypes.byref(rounding_), out_.numbers, statuses_)
    return result


def length_times_root2(a: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a x sqrt 2, the diagonal of a square.

    muslin_length_times_root2() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_times_root2", ticks_of(a, "a"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_over_root2(a: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a / sqrt 2, the side of a square with diagonal a.

    muslin_length_over_root2() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_over_root2", ticks_of(a, "a"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_equilateral_height(a: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """a x sqrt 3 / 2, the height of an equilateral triangle with side a.

    muslin_length_equilateral_height() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_equilateral_height", ticks_of(a, "a"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_equilateral_side(a: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """2 a / sqrt 3, the side of an equilateral triangle with height a.

    muslin_length_equilateral_side() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_equilateral_side", ticks_of(a, "a"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_hypotenuse(a: LengthLike, b: LengthLike, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """sqrt(a x a + b x b).

    muslin_length_hypotenuse() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_hypotenuse", ticks_of(a, "a"), ticks_of(b, "b"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_root_of_area(area: int, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """The side of the square that has this area, in doubled square ticks (2 x width x height), 0 .. 2^61.

    muslin_length_root_of_area() in muslin/length.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call("muslin_length_root_of_area", whole(area, "area"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def length_unit_ticks(unit: LengthUnit) -> Length:
    """The length of one unit in ticks (exact for all six); 0 for anything else.

    muslin_length_unit_ticks() in muslin/length.h. Since 1.0.
    """
    return Length(library.muslin_length_unit_ticks(whole(unit, "unit", 32)))


def length_unit_word(unit: LengthUnit) -> str:
    """The unit's usual short word: "in", "ft", "yd", "mm", "cm", "m"; "" for anything else.

    muslin_length_unit_word() in muslin/length.h. Since 1.0.
    """
    return str(library.muslin_length_unit_word(whole(unit, "unit", 32)).decode("utf-8"))


def length_parse(text: str, spec: Optional[ParseSpec] = None, *, default_unit: Optional[LengthUnit] = None,
                 decimal_sign: Optional[str] = None) -> Parsed:
    """Reads one length from `bytes` bytes of UTF-8 text, which need not be terminated.

    Keywords: the members of ParseSpec, over those of spec.

    muslin_length_parse() in muslin/length.h. Since 1.0.
    """
    data = utf8(text)
    wish = merged(ParseSpec, spec, default_unit=default_unit, decimal_sign=decimal_sign)
    out_ = new(structs.muslin_parsed)
    call_telling("muslin_length_parse", data, len(data), ctypes.byref(wish), ctypes.byref(out_))
    return Parsed._read(out_)


def length_format(a: LengthLike, spec: Optional[FormatSpec] = None, *, style: Optional[Style] = None,
                  denominator: Optional[int] = None, decimals: Optional[int] = None, decimal_sign: Optional[str] = None,
                  direction: Optional[Direction] = None, unicode: Optional[bool] = None,
                  bare: Optional[bool] = None) -> Formatted:
    """Writes the length as terminated text.

    Keywords: the members of FormatSpec, over those of spec.

    muslin_length_format() in muslin/length.h. Since 1.0.
    """
    wish = merged(FormatSpec, spec, style=style, denominator=denominator, decimals=decimals, decimal_sign=decimal_sign,
                                    direction=direction, unicode=unicode, bare=bare)
    return text_out("muslin_length_format", ticks_of(a, "a"), ctypes.byref(wish))


def seam_cut_from_finished(finished: LengthLike, seam: Optional[SeamSpec] = None) -> Length:
    """The cut size of a piece that shall finish at `finished` (0 .. MUSLIN_SIZE_MAX) and is sewn into its neighbours on
    both sides: finished + 2 s + u.

    muslin_seam_cut_from_finished() in muslin/seam.h. Since 1.0.
    """
    seam_ = struct_of(SeamSpec, seam, "seam")
    out_ = ctypes.c_int64()
    call_telling("muslin_seam_cut_from_finished", ticks_of(finished, "finished"), ctypes.byref(seam_),
                 ctypes.byref(out_))
    return Length(out_.value)


def seam_finished_from_cut(cut: LengthLike, seam: Optional[SeamSpec] = None) -> Length:
    """The finished size of a cut piece or an unfinished unit (`cut`, 0 .. MUSLIN_SIZE_MAX): cut - 2 s - u.

    muslin_seam_finished_from_cut() in muslin/seam.h. Since 1.0.
    """
    seam_ = struct_of(SeamSpec, seam, "seam")
    out_ = ctypes.c_int64()
    call_telling("muslin_seam_finished_from_cut", ticks_of(cut, "cut"), ctypes.byref(seam_), ctypes.byref(out_))
    return Length(out_.value)


def seam_cut_from_finished_n(finished: Buffer, seam: Optional[SeamSpec] = None, out: Optional[Buffer] = None,
                             statuses: Optional[Buffer] = None) -> Buffer:
    """Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
    and the call succeeds, without it stops at the first failing element and says which in failed.

    muslin_seam_cut_from_finished_n() in muslin/seam.h. Since 1.0.
    """
    finished_ = Numbers(finished, "finished", 64)
    seam_ = struct_of(SeamSpec, seam, "seam")
    result, out_ = output(out, [finished_])
    same_count(finished=finished_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_seam_cut_from_finished_n", finished_.numbers, finished_.count, ctypes.byref(seam_),
                out_.numbers, statuses_)
    return result


def seam_finished_from_cut_n(cut: Buffer, seam: Optional[SeamSpec] = None, out: Optional[Buffer] = None,
                             statuses: Optional[Buffer] = None) -> Buffer:
    """Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
    and the call succeeds, without it stops at the first failing element and says which in failed.

    muslin_seam_finished_from_cut_n() in muslin/seam.h. Since 1.0.
    """
    cut_ = Numbers(cut, "cut", 64)
    seam_ = struct_of(SeamSpec, seam, "seam")
    result, out_ = output(out, [cut_])
    same_count(cut=cut_, out=out_)
    statuses_ = statuses_of(statuses, out_)
    elementwise("muslin_seam_finished_from_cut_n", cut_.numbers, cut_.count, ctypes.byref(seam_), out_.numbers,
                statuses_)
    return result


def seam_piece(spec: Optional[PieceSpec] = None, *, finished_width: Optional[LengthLike] = None,
               finished_height: Optional[LengthLike] = None, left: Optional[LengthLike] = None,
               right: Optional[LengthLike] = None, top: Optional[LengthLike] = None,
               bottom: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> Piece:
    """Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow.

    Keywords: the members of PieceSpec, over those of spec.

    muslin_seam_piece() in muslin/seam.h. Since 1.0.
    """
    wish = merged(PieceSpec, spec, finished_width=finished_width, finished_height=finished_height, left=left,
                                   right=right, top=top, bottom=bottom, take_up=take_up)
    out_ = new(structs.muslin_piece)
    call_telling("muslin_seam_piece", ctypes.byref(wish), ctypes.byref(out_))
    return Piece._read(out_)


def seam_row_equal(cut: LengthLike, pieces: int, seam: Optional[SeamSpec] = None) -> SewnRow:
    """Equal pieces sewn side by side: a row of patches or the width of a strip set.

    muslin_seam_row_equal() in muslin/seam.h. Since 1.0.
    """
    seam_ = struct_of(SeamSpec, seam, "seam")
    out_ = new(structs.muslin_sewn_row)
    call_telling("muslin_seam_row_equal", ticks_of(cut, "cut"), whole(pieces, "pieces"), ctypes.byref(seam_),
                 ctypes.byref(out_))
    return SewnRow._read(out_)


def seam_row(cuts: Lengths, seam: Optional[SeamSpec] = None) -> SewnRow:
    """The same for n pieces of unequal cut size; the problem's `at` names the first offending piece.

    muslin_seam_row() in muslin/seam.h. Since 1.0.
    """
    cuts_ = gathered(cuts, "cuts")
    seam_ = struct_of(SeamSpec, seam, "seam")
    out_ = new(structs.muslin_sewn_row)
    call_telling("muslin_seam_row", cuts_.numbers, cuts_.count, ctypes.byref(seam_), ctypes.byref(out_))
    return SewnRow._read(out_)


def seam_strip_for_finished(finished: LengthLike, pieces: int, seam: Optional[SeamSpec] = None,
                            rounding: Optional[RoundingSpec] = None) -> Rounded:
    """Backwards: the cut width of `pieces` (1 .. MUSLIN_COUNT_MAX) equal strips that together shall finish at
    `finished`: finished / pieces + 2 s + u, rounded once, as asked.

    muslin_seam_strip_for_finished() in muslin/seam.h. Since 1.0.
    """
    seam_ = struct_of(SeamSpec, seam, "seam")
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_seam_strip_for_finished", ticks_of(finished, "finished"), whole(pieces, "pieces"),
                 ctypes.byref(seam_), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def seam_resize_cut(cut: LengthLike, numerator: int, denominator: int, seam: Optional[SeamSpec] = None,
                    rounding: Optional[RoundingSpec] = None) -> Rounded:
    """A cut size resized with its block: take the seams off, scale by numerator / denominator (both 1 .. INT64_MAX),
    put them back on, rounded once, as asked.

    muslin_seam_resize_cut() in muslin/seam.h. Since 1.0.
    """
    seam_ = struct_of(SeamSpec, seam, "seam")
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_seam_resize_cut", ticks_of(cut, "cut"), whole(numerator, "numerator"),
                 whole(denominator, "denominator"), ctypes.byref(seam_), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def seam_calibrate(cuts: Lengths, measured: LengthLike, stitched: LengthLike) -> Calibration:
    """The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished
    width edge to edge, `stitched` the allowance one meant to sew.

    muslin_seam_calibrate() in muslin/seam.h. Since 1.0.
    """
    cuts_ = gathered(cuts, "cuts")
    out_ = new(structs.muslin_calibration)
    call_telling("muslin_seam_calibrate", cuts_.numbers, cuts_.count, ticks_of(measured, "measured"),
                 ticks_of(stitched, "stitched"), ctypes.byref(out_))
    return Calibration._read(out_)


def seam_carry_on(spec: Optional[CarryOnSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                  cut_total: Optional[LengthLike] = None, strips: Optional[int] = None,
                  measured: Optional[LengthLike] = None, later_cut: Optional[LengthLike] = None,
                  allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> Rounded:
    """The carry-on plan: sets that came out wrong are kept, and a later piece planned at c is cut to suit.

    Keywords: the members of CarryOnSpec, over those of spec.

    muslin_seam_carry_on() in muslin/seam.h. Since 1.0.
    """
    wish = merged(CarryOnSpec, spec, cut_total=cut_total, strips=strips, measured=measured, later_cut=later_cut,
                                     allowance=allowance, take_up=take_up)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_seam_carry_on", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def seam_error_total(error_per_seam: LengthLike, seams: int) -> Length:
    """How far a row is off when each of `seams` (0 .. MUSLIN_COUNT_MAX) seams is off by `error_per_seam`
    (+-MUSLIN_SIZE_MAX): error x seams.

    muslin_seam_error_total() in muslin/seam.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_seam_error_total", ticks_of(error_per_seam, "error_per_seam"), whole(seams, "seams"),
                 ctypes.byref(out_))
    return Length(out_.value)


def seam_error_limit(tolerance: LengthLike, seams: int) -> Length:
    """The largest error per seam, either way, that keeps the total within `tolerance` (0 .. MUSLIN_SIZE_MAX): tolerance
    / seams, down to a tick.

    muslin_seam_error_limit() in muslin/seam.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_seam_error_limit", ticks_of(tolerance, "tolerance"), whole(seams, "seams"), ctypes.byref(out_))
    return Length(out_.value)


def seam_share(cut_area: int, finished_area: int) -> int:
    """The share of fabric that disappears into seams, in ppm to the nearest, ties up: (cut - finished) / cut, for any
    two areas in doubled square ticks (a patch, a strip set, a whole top).

    muslin_seam_share() in muslin/seam.h. Since 1.0.
    """
    ppm_ = ctypes.c_int32()
    call_telling("muslin_seam_share", whole(cut_area, "cut_area"), whole(finished_area, "finished_area"),
                 ctypes.byref(ppm_))
    return ppm_.value


def accuracy_row(spec: Optional[AccuracyRowSpec] = None, *, pieces: Optional[int] = None, seams: Optional[int] = None,
                 seam_error: Optional[LengthLike] = None, cut_error: Optional[LengthLike] = None) -> AccuracyRowErrors:
    """How far off a row of pieces may be.

    Keywords: the members of AccuracyRowSpec, over those of spec.

    muslin_accuracy_row() in muslin/accuracy.h. Since 1.0.
    """
    wish = merged(AccuracyRowSpec, spec, pieces=pieces, seams=seams, seam_error=seam_error, cut_error=cut_error)
    out_ = new(structs.muslin_accuracy_row_errors)
    call_telling("muslin_accuracy_row", ctypes.byref(wish), ctypes.byref(out_))
    return AccuracyRowErrors._read(out_)


def accuracy_top(spec: Optional[AccuracyTopSpec] = None, *, pieces_across: Optional[int] = None,
                 pieces_down: Optional[int] = None, columns: Optional[int] = None, rows: Optional[int] = None,
                 seam_error: Optional[LengthLike] = None, cut_error: Optional[LengthLike] = None) -> AccuracyTopErrors:
    """How far off a block and a top of such blocks may be, in a straight setting without sashing (for other rows count
    pieces and seams and ask muslin_accuracy_row()).

    Keywords: the members of AccuracyTopSpec, over those of spec.

    muslin_accuracy_top() in muslin/accuracy.h. Since 1.0.
    """
    wish = merged(AccuracyTopSpec, spec, pieces_across=pieces_across, pieces_down=pieces_down, columns=columns,
                                         rows=rows, seam_error=seam_error, cut_error=cut_error)
    out_ = new(structs.muslin_accuracy_top_errors)
    call_telling("muslin_accuracy_top", ctypes.byref(wish), ctypes.byref(out_))
    return AccuracyTopErrors._read(out_)


def accuracy_meet(spec: Optional[AccuracyMeetSpec] = None, *, seams: Optional[int] = None,
                  seam_error: Optional[LengthLike] = None, cut_error: Optional[LengthLike] = None,
                  tolerance: Optional[LengthLike] = None) -> AccuracyMeeting:
    """Whether the seams of two neighbouring rows meet.

    Keywords: the members of AccuracyMeetSpec, over those of spec.

    muslin_accuracy_meet() in muslin/accuracy.h. Since 1.0.
    """
    wish = merged(AccuracyMeetSpec, spec, seams=seams, seam_error=seam_error, cut_error=cut_error, tolerance=tolerance)
    out_ = new(structs.muslin_accuracy_meeting)
    call_telling("muslin_accuracy_meet", ctypes.byref(wish), ctypes.byref(out_))
    return AccuracyMeeting._read(out_)


def shrinkage_change(before: LengthLike, after: LengthLike) -> int:
    """Dimensional change in ppm to the nearest, negative when it shrank.

    muslin_shrinkage_change() in muslin/shrinkage.h. Since 1.0.
    """
    ppm_ = ctypes.c_int32()
    call_telling("muslin_shrinkage_change", ticks_of(before, "before"), ticks_of(after, "after"), ctypes.byref(ppm_))
    return ppm_.value


def shrinkage_measure(spec: Optional[WashSpec] = None, *, before_width: Optional[LengthLike] = None,
                      after_width: Optional[LengthLike] = None, before_length: Optional[LengthLike] = None,
                      after_length: Optional[LengthLike] = None) -> WashChange:
    """Both directions and the area of something measured before and after.

    Keywords: the members of WashSpec, over those of spec.

    muslin_shrinkage_measure() in muslin/shrinkage.h. Since 1.0.
    """
    wish = merged(WashSpec, spec, before_width=before_width, after_width=after_width, before_length=before_length,
                                  after_length=after_length)
    out_ = new(structs.muslin_wash_change)
    call_telling("muslin_shrinkage_measure", ctypes.byref(wish), ctypes.byref(out_))
    return WashChange._read(out_)


def shrinkage_size_to_make(spec: Optional[ShrinkageSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                           width: Optional[LengthLike] = None, length: Optional[LengthLike] = None,
                           quilting_across: Optional[int] = None, quilting_along: Optional[int] = None,
                           washing_across: Optional[int] = None, washing_along: Optional[int] = None) -> SizeToMake:
    """From the size wanted in the end to the size to make: width and length are what the quilt shall measure when
    quilted and washed.

    Keywords: the members of ShrinkageSpec, over those of spec.

    muslin_shrinkage_size_to_make() in muslin/shrinkage.h. Since 1.0.
    """
    wish = merged(ShrinkageSpec, spec, width=width, length=length, quilting_across=quilting_across,
                                       quilting_along=quilting_along, washing_across=washing_across,
                                       washing_along=washing_along)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_size_to_make)
    call_telling("muslin_shrinkage_size_to_make", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return SizeToMake._read(out_)


def shrinkage_becomes(spec: Optional[ShrinkageSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                      width: Optional[LengthLike] = None, length: Optional[LengthLike] = None,
                      quilting_across: Optional[int] = None, quilting_along: Optional[int] = None,
                      washing_across: Optional[int] = None, washing_along: Optional[int] = None) -> WashedSize:
    """Backwards: what a made size (width and length of the spec) becomes by quilting and washing.

    Keywords: the members of ShrinkageSpec, over those of spec.

    muslin_shrinkage_becomes() in muslin/shrinkage.h. Since 1.0.
    """
    wish = merged(ShrinkageSpec, spec, width=width, length=length, quilting_across=quilting_across,
                                       quilting_along=quilting_along, washing_across=washing_across,
                                       washing_along=washing_along)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_washed_size)
    call_telling("muslin_shrinkage_becomes", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return WashedSize._read(out_)


def shrinkage_from_sample(before: LengthLike, after: LengthLike, target: LengthLike,
                          rounding: Optional[RoundingSpec] = None) -> Rounded:
    """The size to make straight from a measured sample, without a percentage between that could be rounded: target x
    before / after, rounded once, as asked.

    muslin_shrinkage_from_sample() in muslin/shrinkage.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_shrinkage_from_sample", ticks_of(before, "before"), ticks_of(after, "after"),
                 ticks_of(target, "target"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def shrinkage_governs(fabric: int, batting: int, governing_rule: GoverningRule) -> Governing:
    """The share to reckon with when fabric and batting shrink differently.

    muslin_shrinkage_governs() in muslin/shrinkage.h. Since 1.0.
    """
    out_ = new(structs.muslin_governing)
    call_telling("muslin_shrinkage_governs", whole(fabric, "fabric", 32), whole(batting, "batting", 32),
                 whole(governing_rule, "governing_rule", 32), ctypes.byref(out_))
    return Governing._read(out_)


def shrinkage_prewash(spec: Optional[PrewashSpec] = None, *, needed_length: Optional[LengthLike] = None,
                      usable_width: Optional[LengthLike] = None, across: Optional[int] = None,
                      along: Optional[int] = None) -> Prewash:
    """What to wash so that enough cloth is left.

    Keywords: the members of PrewashSpec, over those of spec.

    muslin_shrinkage_prewash() in muslin/shrinkage.h. Since 1.0.
    """
    wish = merged(PrewashSpec, spec, needed_length=needed_length, usable_width=usable_width, across=across, along=along)
    out_ = new(structs.muslin_prewash)
    call_telling("muslin_shrinkage_prewash", ctypes.byref(wish), ctypes.byref(out_))
    return Prewash._read(out_)


def fabric_usable_width(labelled: LengthLike, selvage: LengthLike, shrinkage: int) -> Length:
    """Usable width from the labelled width (1 .. MUSLIN_SIZE_MAX): (labelled - 2 x selvage) x (1 - shrinkage), down to
    a tick.

    muslin_fabric_usable_width() in muslin/fabric.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_fabric_usable_width", ticks_of(labelled, "labelled"), ticks_of(selvage, "selvage"),
                 whole(shrinkage, "shrinkage", 32), ctypes.byref(out_))
    return Length(out_.value)


def fabric_purchase(spec: Optional[PurchaseSpec] = None, *, needed: Optional[LengthLike] = None,
                    extra: Optional[LengthLike] = None, step: Optional[LengthLike] = None,
                    shrinkage: Optional[int] = None, extra_share: Optional[int] = None) -> Purchase:
    """From a length needed to a length bought.

    Keywords: the members of PurchaseSpec, over those of spec.

    muslin_fabric_purchase() in muslin/fabric.h. Since 1.0.
    """
    wish = merged(PurchaseSpec, spec, needed=needed, extra=extra, step=step, shrinkage=shrinkage,
                                      extra_share=extra_share)
    out_ = new(structs.muslin_purchase)
    call_telling("muslin_fabric_purchase", ctypes.byref(wish), ctypes.byref(out_))
    return Purchase._read(out_)


def fabric_pieces(spec: Optional[ClothSpec] = None, *, width: Optional[LengthLike] = None,
                  length: Optional[LengthLike] = None, piece_width: Optional[LengthLike] = None,
                  piece_length: Optional[LengthLike] = None, loss_across: Optional[LengthLike] = None,
                  loss_along: Optional[LengthLike] = None, may_turn: Optional[bool] = None) -> ClothPieces:
    """How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b), losses taken off first.

    Keywords: the members of ClothSpec, over those of spec.

    muslin_fabric_pieces() in muslin/fabric.h. Since 1.0.
    """
    wish = merged(ClothSpec, spec, width=width, length=length, piece_width=piece_width, piece_length=piece_length,
                                   loss_across=loss_across, loss_along=loss_along, may_turn=may_turn)
    out_ = new(structs.muslin_cloth_pieces)
    call_telling("muslin_fabric_pieces", ctypes.byref(wish), ctypes.byref(out_))
    return ClothPieces._read(out_)


def fabric_strips(spec: Optional[StripsSpec] = None, *, pieces: Optional[int] = None,
                  piece_across: Optional[LengthLike] = None, strip_cut: Optional[LengthLike] = None,
                  usable_width: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                  straightening: Optional[LengthLike] = None) -> Strips:
    """Pieces wanted -> strips across the width -> length of cloth.

    Keywords: the members of StripsSpec, over those of spec.

    muslin_fabric_strips() in muslin/fabric.h. Since 1.0.
    """
    wish = merged(StripsSpec, spec, pieces=pieces, piece_across=piece_across, strip_cut=strip_cut,
                                    usable_width=usable_width, end_loss=end_loss, straightening=straightening)
    out_ = new(structs.muslin_strips)
    call_telling("muslin_fabric_strips", ctypes.byref(wish), ctypes.byref(out_))
    return Strips._read(out_)


def fabric_area_bound(area: int, usable_width: LengthLike) -> Length:
    """The least length of cloth whose area is `area` (doubled square ticks, 0 .. MUSLIN_LENGTH_MAX) at this usable
    width (1 .. MUSLIN_SIZE_MAX): area / (2 x width), up to a tick.

    muslin_fabric_area_bound() in muslin/fabric.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_fabric_area_bound", whole(area, "area"), ticks_of(usable_width, "usable_width"),
                 ctypes.byref(out_))
    return Length(out_.value)


def stock_size(stock: StockSpec, align: Edge) -> StockSize:
    """The size that the arithmetic must use when one lines up the tips (align MUSLIN_EDGE_PINKED_TIPS) or the valleys
    (MUSLIN_EDGE_PINKED_VALLEYS) throughout: a pinked size measured at the other point changes by two depths each way,
    one for each of two edges; a straight edge changes nothing.

    muslin_stock_size() in muslin/fabric.h. Since 1.0.
    """
    stock_ = struct_of(StockSpec, stock, "stock")
    width_ = ctypes.c_int64()
    length_ = ctypes.c_int64()
    call_telling("muslin_stock_size", ctypes.byref(stock_), whole(align, "align", 32), ctypes.byref(width_),
                 ctypes.byref(length_))
    return StockSize(Length(width_.value), Length(length_.value))


def stock_strips(stock: StockSpec, strip_cut: LengthLike, strips_wanted: int) -> StockYield:
    """Strips of cut width strip_cut (1 or more) from stock, cut across its width (each strip as long as the stock is
    wide).

    muslin_stock_strips() in muslin/fabric.h. Since 1.0.
    """
    stock_ = struct_of(StockSpec, stock, "stock")
    out_ = new(structs.muslin_stock_yield)
    call_telling("muslin_stock_strips", ctypes.byref(stock_), ticks_of(strip_cut, "strip_cut"),
                 whole(strips_wanted, "strips_wanted"), ctypes.byref(out_))
    return StockYield._read(out_)


def stock_check(rows: Sequence[StockSpec]) -> Tuple[Warning, ...]:
    """What to say when these fabrics meet in one top: a sum of enum muslin_warning bits.

    muslin_stock_check() in muslin/fabric.h. Since 1.0.
    """
    rows_, n_ = rows_of(StockSpec, rows, "rows")
    warnings_ = ctypes.c_uint32()
    call_telling("muslin_stock_check", rows_, ctypes.sizeof(structs.muslin_stock_spec), n_, ctypes.byref(warnings_))
    return warnings_in(warnings_.value)


def print_may_turn(print: Print, quarter_turns: int) -> bool:
    """allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3, else
    MUSLIN_ERR_RANGE) without showing it, else 0: without direction any; two-way and stripes a half turn; one-way no
    turn.

    muslin_print_may_turn() in muslin/fabric.h. Since 1.0.
    """
    allowed_ = ctypes.c_int32()
    call_telling("muslin_print_may_turn", whole(print, "print", 32), whole(quarter_turns, "quarter_turns", 32),
                 ctypes.byref(allowed_))
    return bool(allowed_.value)


def motif_plan(spec: Optional[MotifSpec] = None, *, repeat_length: Optional[LengthLike] = None,
               repeat_width: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None,
               cut_width: Optional[LengthLike] = None, cut_length: Optional[LengthLike] = None,
               motifs: Optional[int] = None, pieces: Optional[int] = None, any_start: Optional[bool] = None,
               any_across: Optional[bool] = None) -> Motif:
    """Windows wanted -> repeats -> length of cloth.

    Keywords: the members of MotifSpec, over those of spec.

    muslin_motif_plan() in muslin/motif.h. Since 1.0.
    """
    wish = merged(MotifSpec, spec, repeat_length=repeat_length, repeat_width=repeat_width, usable_width=usable_width,
                                   cut_width=cut_width, cut_length=cut_length, motifs=motifs, pieces=pieces,
                                   any_start=any_start, any_across=any_across)
    out_ = new(structs.muslin_motif)
    call_telling("muslin_motif_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Motif._read(out_)


def motif_from_cloth(cloth_length: LengthLike, spec: Optional[MotifSpec] = None, *,
                     repeat_length: Optional[LengthLike] = None, repeat_width: Optional[LengthLike] = None,
                     usable_width: Optional[LengthLike] = None, cut_width: Optional[LengthLike] = None,
                     cut_length: Optional[LengthLike] = None, motifs: Optional[int] = None,
                     pieces: Optional[int] = None, any_start: Optional[bool] = None,
                     any_across: Optional[bool] = None) -> MotifYield:
    """Windows that a cloth so long (0 .. MUSLIN_SIZE_MAX) gives, counted as in muslin_motif_plan(); spec->pieces is not
    used, but must be in its range.

    Keywords: the members of MotifSpec, over those of spec.

    muslin_motif_from_cloth() in muslin/motif.h. Since 1.0.
    """
    wish = merged(MotifSpec, spec, repeat_length=repeat_length, repeat_width=repeat_width, usable_width=usable_width,
                                   cut_width=cut_width, cut_length=cut_length, motifs=motifs, pieces=pieces,
                                   any_start=any_start, any_across=any_across)
    out_ = new(structs.muslin_motif_yield)
    call_telling("muslin_motif_from_cloth", ctypes.byref(wish), ticks_of(cloth_length, "cloth_length"),
                 ctypes.byref(out_))
    return MotifYield._read(out_)


def stack_plan(spec: Optional[StackSpec] = None, *, repeat_length: Optional[LengthLike] = None,
               strip_cut: Optional[LengthLike] = None, straightening: Optional[LengthLike] = None,
               per_strip: Optional[int] = None, layers: Optional[int] = None, stacks: Optional[int] = None,
               any_start: Optional[bool] = None) -> Stack:
    """Cloth for stacks of identical pieces: it is cut into `layers` lengths of whole repeats that begin at the same
    place of the print; they are laid on each other so that the print matches, and strips and pieces are cut through all
    of them at once.

    Keywords: the members of StackSpec, over those of spec.

    muslin_stack_plan() in muslin/motif.h. Since 1.0.
    """
    wish = merged(StackSpec, spec, repeat_length=repeat_length, strip_cut=strip_cut, straightening=straightening,
                                   per_strip=per_strip, layers=layers, stacks=stacks, any_start=any_start)
    out_ = new(structs.muslin_stack)
    call_telling("muslin_stack_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Stack._read(out_)


def reference_count(table: Table) -> int:
    """How many rows a table has.

    muslin_reference_count() in muslin/reference.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_reference_count", whole(table, "table", 32), ctypes.byref(out_))
    return out_.value


def reference_row(table: Table, index: int) -> Reference:
    """Row `index`, from 0, of a table.

    muslin_reference_row() in muslin/reference.h. Since 1.0.
    """
    out_ = new(structs.muslin_reference)
    call_telling("muslin_reference_row", whole(table, "table", 32), whole(index, "index"), ctypes.byref(out_))
    return Reference._read(out_)


def reference_name(table: Table, index: int) -> str:
    """A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
    where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know, above
    all where other lists disagree, or "" where there is nothing to say.

    muslin_reference_name() in muslin/reference.h. Since 1.0.
    """
    return str(library.muslin_reference_name(whole(table, "table", 32), whole(index, "index")).decode("utf-8"))


def reference_source(table: Table, index: int) -> str:
    """A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
    where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know, above
    all where other lists disagree, or "" where there is nothing to say.

    muslin_reference_source() in muslin/reference.h. Since 1.0.
    """
    return str(library.muslin_reference_source(whole(table, "table", 32), whole(index, "index")).decode("utf-8"))


def reference_note(table: Table, index: int) -> str:
    """A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
    where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know, above
    all where other lists disagree, or "" where there is nothing to say.

    muslin_reference_note() in muslin/reference.h. Since 1.0.
    """
    return str(library.muslin_reference_note(whole(table, "table", 32), whole(index, "index")).decode("utf-8"))


def stripset_yield(spec: Optional[YieldSpec] = None, *, strip_length: Optional[LengthLike] = None,
                   segment_cut: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                   resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                   fold_clear: Optional[LengthLike] = None, from_one_end: Optional[bool] = None) -> Yield:
    """How many segments one set gives.

    Keywords: the members of YieldSpec, over those of spec.

    muslin_stripset_yield() in muslin/stripset.h. Since 1.0.
    """
    wish = merged(YieldSpec, spec, strip_length=strip_length, segment_cut=segment_cut, end_trim=end_trim,
                                   resquare_loss=resquare_loss, resquare_every=resquare_every, fold_clear=fold_clear,
                                   from_one_end=from_one_end)
    out_ = new(structs.muslin_yield)
    call_telling("muslin_stripset_yield", ctypes.byref(wish), ctypes.byref(out_))
    return Yield._read(out_)


def stripset_shortest(lengths: Lengths) -> StripsetShortest:
    """The usable length that a set of strips shares, the shortest, with its index (the first of equals); warnings gets
    MUSLIN_WARN_MIXED_WIDTHS when they differ, else 0.

    muslin_stripset_shortest() in muslin/stripset.h. Since 1.0.
    """
    lengths_ = gathered(lengths, "lengths")
    shortest_ = ctypes.c_int64()
    index_ = ctypes.c_size_t()
    warnings_ = ctypes.c_uint32()
    call_telling("muslin_stripset_shortest", lengths_.numbers, lengths_.count, ctypes.byref(shortest_),
                 ctypes.byref(index_), ctypes.byref(warnings_))
    return StripsetShortest(Length(shortest_.value), index_.value, warnings_in(warnings_.value))


def stripset_need(spec: Optional[NeedSpec] = None, *, segments: Optional[int] = None,
                  segments_per_set: Optional[int] = None, strips_per_set: Optional[int] = None,
                  strips_per_bundle: Optional[int] = None, strip_cut: Optional[LengthLike] = None) -> Need:
    """Segments wanted -> sets -> strips -> bundles or a length of cloth.

    Keywords: the members of NeedSpec, over those of spec.

    muslin_stripset_need() in muslin/stripset.h. Since 1.0.
    """
    wish = merged(NeedSpec, spec, segments=segments, segments_per_set=segments_per_set, strips_per_set=strips_per_set,
                                  strips_per_bundle=strips_per_bundle, strip_cut=strip_cut)
    out_ = new(structs.muslin_need)
    call_telling("muslin_stripset_need", ctypes.byref(wish), ctypes.byref(out_))
    return Need._read(out_)


def stripset_harvest(spec: Optional[HarvestSpec] = None, *, strips: Optional[int] = None,
                     strips_per_set: Optional[int] = None, segments_per_set: Optional[int] = None,
                     segments_per_block: Optional[int] = None, blocks_per_top: Optional[int] = None) -> Harvest:
    """Strips in hand -> sets -> segments -> blocks -> tops, and what is left over.

    Keywords: the members of HarvestSpec, over those of spec.

    muslin_stripset_harvest() in muslin/stripset.h. Since 1.0.
    """
    wish = merged(HarvestSpec, spec, strips=strips, strips_per_set=strips_per_set, segments_per_set=segments_per_set,
                                     segments_per_block=segments_per_block, blocks_per_top=blocks_per_top)
    out_ = new(structs.muslin_harvest)
    call_telling("muslin_stripset_harvest", ctypes.byref(wish), ctypes.byref(out_))
    return Harvest._read(out_)


def stripset_prints(rows: Sequence[StripsetPrint], sets_wanted: int) -> StripsetPrints:
    """With sets_wanted 0: how many sets the scarcest print allows; with sets_wanted above 0 sets becomes sets_wanted.

    muslin_stripset_prints() in muslin/stripset.h. Since 1.0.
    """
    rows_, n_ = rows_of(StripsetPrint, rows, "rows")
    sets_ = ctypes.c_int64()
    scarcest_ = ctypes.c_size_t()
    call_telling("muslin_stripset_prints", rows_, ctypes.sizeof(structs.muslin_stripset_print), n_,
                 whole(sets_wanted, "sets_wanted"), ctypes.byref(sets_), ctypes.byref(scarcest_))
    return StripsetPrints(tuple(StripsetPrint._read(row) for row in rows_[:n_]), sets_.value, scarcest_.value)


def cutlist_from_yardage(pieces: Sequence[CutlistPieceSpec], spec: Optional[CutlistSpec] = None, *,
                         usable_width: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                         straightening: Optional[LengthLike] = None, print: Optional[Print] = None) -> CutlistYardage:
    """Length of cloth for the whole list: for each row count / ((usable_width - end_loss) / across) strips as high as
    the piece is along the cloth, added up.

    Keywords: the members of CutlistSpec, over those of spec.

    muslin_cutlist_from_yardage() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    wish = merged(CutlistSpec, spec, usable_width=usable_width, end_loss=end_loss, straightening=straightening,
                                     print=print)
    out_ = new(structs.muslin_cutlist_yardage)
    call_telling("muslin_cutlist_from_yardage", pieces_, ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_,
                 ctypes.byref(wish), ctypes.byref(out_))
    return CutlistYardage._read(out_)


def cutlist_yardage_rows(pieces: Sequence[CutlistPieceSpec], spec: Optional[CutlistSpec] = None, *,
                         usable_width: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                         straightening: Optional[LengthLike] = None, print: Optional[Print] = None) -> List[CutlistRow]:
    """How each row is cut then (ask-then-fill): n rows in the order of the list.

    Keywords: the members of CutlistSpec, over those of spec.

    muslin_cutlist_yardage_rows() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    wish = merged(CutlistSpec, spec, usable_width=usable_width, end_loss=end_loss, straightening=straightening,
                                     print=print)
    return asked("muslin_cutlist_yardage_rows", structs.muslin_cutlist_row, CutlistRow._read, pieces_,
                 ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_, ctypes.byref(wish))


def cutlist_from_stock(pieces: Sequence[CutlistPieceSpec], stock: Optional[StockSpec] = None) -> CutlistStock:
    """The list from pieces of stock of one size: squares, strips of a bundle, fat quarters, or a cloth.

    muslin_cutlist_from_stock() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    out_ = new(structs.muslin_cutlist_stock)
    call_telling("muslin_cutlist_from_stock", pieces_, ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_,
                 ctypes.byref(stock_), ctypes.byref(out_))
    return CutlistStock._read(out_)


def cutlist_stock_rows(pieces: Sequence[CutlistPieceSpec], stock: Optional[StockSpec] = None) -> List[CutlistRow]:
    """How each row is cut then (ask-then-fill): n rows in the order of the list.

    muslin_cutlist_stock_rows() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    return asked("muslin_cutlist_stock_rows", structs.muslin_cutlist_row, CutlistRow._read, pieces_,
                 ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_, ctypes.byref(stock_))


def cutlist_stock_parts(pieces: Sequence[CutlistPieceSpec], stock: Optional[StockSpec] = None) -> List[CutlistPart]:
    """Which strips come from which piece of stock (ask-then-fill), row by row in the order of cutting: none for a row
    without a strip, at most three for any other: from what the row before has left, from whole pieces of stock, and
    from the last.

    muslin_cutlist_stock_parts() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    return asked("muslin_cutlist_stock_parts", structs.muslin_cutlist_part, CutlistPart._read, pieces_,
                 ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_, ctypes.byref(stock_))


def cutlist_lists_from_stock(pieces: Sequence[CutlistPieceSpec], stock: Optional[StockSpec] = None) -> CutlistLists:
    """How many times the whole list (how many quilts, blocks or kits) comes from stock->count pieces of stock, all rows
    taken so many times and then cut as in muslin_cutlist_from_stock(): row by row, not list by list.

    muslin_cutlist_lists_from_stock() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    out_ = new(structs.muslin_cutlist_lists)
    call_telling("muslin_cutlist_lists_from_stock", pieces_, ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_,
                 ctypes.byref(stock_), ctypes.byref(out_))
    return CutlistLists._read(out_)


def cutlist_lists_rows(pieces: Sequence[CutlistPieceSpec], stock: Optional[StockSpec] = None) -> List[CutlistRow]:
    """How each row is cut for all those lists together (ask-then-fill): n rows in the order of the list; a row may lie
    another way than for one list.

    muslin_cutlist_lists_rows() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    return asked("muslin_cutlist_lists_rows", structs.muslin_cutlist_row, CutlistRow._read, pieces_,
                 ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_, ctypes.byref(stock_))


def cutlist_substitute(pieces: Sequence[CutlistPieceSpec], prints: int,
                       stock: Optional[StockSpec] = None) -> Substitution:
    """The same list from something else: call it for each kind of stock at hand or in question, and compare; which is
    better is the caller's to say.

    muslin_cutlist_substitute() in muslin/cutlist.h. Since 1.0.
    """
    pieces_, n_ = rows_of(CutlistPieceSpec, pieces, "pieces")
    stock_ = struct_of(StockSpec, stock, "stock")
    out_ = new(structs.muslin_substitution)
    call_telling("muslin_cutlist_substitute", pieces_, ctypes.sizeof(structs.muslin_cutlist_piece_spec), n_,
                 ctypes.byref(stock_), whole(prints, "prints"), ctypes.byref(out_))
    return Substitution._read(out_)


def shape_check(corners: Sequence[CornerSpec]) -> Shape:
    """Whether the drawing is a unit: outline and pieces are simple shapes that run counter-clockwise, and the pieces
    cover the outline exactly once.

    muslin_shape_check() in muslin/shape.h. Since 1.0.
    """
    corners_, n_ = rows_of(CornerSpec, corners, "corners")
    out_ = new(structs.muslin_shape)
    call_telling("muslin_shape_check", corners_, ctypes.sizeof(structs.muslin_corner_spec), n_, ctypes.byref(out_))
    return Shape._read(out_)


def shape_template(corners: Sequence[CornerSpec], piece: int,
                   rounding: Optional[RoundingSpec] = None) -> List[TemplateCorner]:
    """The template of one piece as cut: each edge moved out by its effective allowance, each corner where the moved
    edges meet, x and y rounded on their own to the grid.

    muslin_shape_template() in muslin/shape.h. Since 1.0.
    """
    corners_, n_ = rows_of(CornerSpec, corners, "corners")
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    return asked("muslin_shape_template", structs.muslin_template_corner, TemplateCorner._read, corners_,
                 ctypes.sizeof(structs.muslin_corner_spec), n_, whole(piece, "piece", 32), ctypes.byref(rounding_))


def shape_measure(corners: Sequence[CornerSpec], spec: Optional[ShapePieceSpec] = None,
                  rounding: Optional[RoundingSpec] = None, *, piece: Optional[int] = None,
                  grain_x: Optional[LengthLike] = None, grain_y: Optional[LengthLike] = None,
                  margin: Optional[LengthLike] = None) -> ShapePiece:
    """What one needs to know before cutting a piece: areas, the rectangle to cut it from, grain.

    Keywords: the members of ShapePieceSpec, over those of spec.

    muslin_shape_measure() in muslin/shape.h. Since 1.0.
    """
    corners_, n_ = rows_of(CornerSpec, corners, "corners")
    wish = merged(ShapePieceSpec, spec, piece=piece, grain_x=grain_x, grain_y=grain_y, margin=margin)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_shape_piece)
    call_telling("muslin_shape_measure", corners_, ctypes.sizeof(structs.muslin_corner_spec), n_, ctypes.byref(wish),
                 ctypes.byref(rounding_), ctypes.byref(out_))
    return ShapePiece._read(out_)


def shape_foundation(corners: Sequence[CornerSpec], corner: int, margin: LengthLike,
                     rounding: Optional[RoundingSpec] = None) -> ShapeFoundation:
    """The rectangle that holds a piece's template plus `margin` (0 .. MUSLIN_SHAPE_SIZE_MAX) all round when one of its
    straight edges lies along a strip, or along the sewing line of a foundation: `corner` is the row where that edge
    starts (a row of the outline or no row at all: MUSLIN_ERR_INDEX; of an arc: MUSLIN_ERR_SHAPE).

    muslin_shape_foundation() in muslin/shape.h. Since 1.0.
    """
    corners_, n_ = rows_of(CornerSpec, corners, "corners")
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    along_ = ctypes.c_int64()
    across_ = ctypes.c_int64()
    call_telling("muslin_shape_foundation", corners_, ctypes.sizeof(structs.muslin_corner_spec), n_,
                 whole(corner, "corner", 32), ticks_of(margin, "margin"), ctypes.byref(rounding_), ctypes.byref(along_),
                 ctypes.byref(across_))
    return ShapeFoundation(Length(along_.value), Length(across_.value))


def shape_quarter_circle(spec: Optional[QuarterCircleSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                         finished: Optional[LengthLike] = None, radius: Optional[LengthLike] = None,
                         allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> QuarterCircle:
    """The two pieces of a square with a quarter circle about one corner: the convex one (a slice of the disc) and the
    concave one (the background).

    Keywords: the members of QuarterCircleSpec, over those of spec.

    muslin_shape_quarter_circle() in muslin/shape.h. Since 1.0.
    """
    wish = merged(QuarterCircleSpec, spec, finished=finished, radius=radius, allowance=allowance, take_up=take_up)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_quarter_circle)
    call_telling("muslin_shape_quarter_circle", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return QuarterCircle._read(out_)


def arc_length(radius: LengthLike, quarter_turns: int, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """The length of an arc of so many quarter turns (1 .. 4) of a circle: radius x pi / 2 x quarter_turns.

    muslin_arc_length() in muslin/shape.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_arc_length", ticks_of(radius, "radius"), whole(quarter_turns, "quarter_turns", 32),
                 ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def shape_regular_polygon(sides: int, measure: PolygonMeasure, length: LengthLike,
                          rounding: Optional[RoundingSpec] = None) -> RegularPolygon:
    """The measures of a regular triangle, square, hexagon or octagon (sides 3, 4, 6 or 8, else MUSLIN_ERR_CHOICE) from
    one of them (1 .. MUSLIN_SIZE_MAX), all finished or all cut as the caller means it.

    muslin_shape_regular_polygon() in muslin/shape.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_regular_polygon)
    call_telling("muslin_shape_regular_polygon", whole(sides, "sides", 32), whole(measure, "measure", 32),
                 ticks_of(length, "length"), ctypes.byref(rounding_), ctypes.byref(out_))
    return RegularPolygon._read(out_)


def unit_recipe(spec: Optional[UnitSpec] = None, *, finished_width: Optional[LengthLike] = None,
                finished_height: Optional[LengthLike] = None, corner: Optional[LengthLike] = None,
                allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                half_addition: Optional[LengthLike] = None, quarter_addition: Optional[LengthLike] = None,
                trim_room: Optional[LengthLike] = None, grid: Optional[LengthLike] = None,
                tolerance: Optional[LengthLike] = None, units: Optional[int] = None, mirrored: Optional[int] = None,
                kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
                policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
                direction: Optional[Direction] = None) -> UnitPlan:
    """The recipe for a finished size.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_recipe() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    out_ = new(structs.muslin_unit_plan)
    call_telling("muslin_unit_recipe", ctypes.byref(wish), ctypes.byref(out_))
    return UnitPlan._read(out_)


def unit_pieces(spec: Optional[UnitSpec] = None, *, finished_width: Optional[LengthLike] = None,
                finished_height: Optional[LengthLike] = None, corner: Optional[LengthLike] = None,
                allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                half_addition: Optional[LengthLike] = None, quarter_addition: Optional[LengthLike] = None,
                trim_room: Optional[LengthLike] = None, grid: Optional[LengthLike] = None,
                tolerance: Optional[LengthLike] = None, units: Optional[int] = None, mirrored: Optional[int] = None,
                kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
                policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
                direction: Optional[Direction] = None) -> List[UnitPiece]:
    """The pieces of a recipe, a row each; statuses also as in base.h for ask-then-fill rows.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_pieces() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    return asked("muslin_unit_pieces", structs.muslin_unit_piece, UnitPiece._read, ctypes.byref(wish))


def unit_recipe_count() -> int:
    """How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else MUSLIN_ERR_INDEX, with
    the last one as limit; a null output is MUSLIN_ERR_NULL).

    muslin_unit_recipe_count() in muslin/unit.h. Since 1.0.
    """
    return int(library.muslin_unit_recipe_count())


def unit_recipe_at(index: int) -> UnitRecipeAt:
    """How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else MUSLIN_ERR_INDEX, with
    the last one as limit; a null output is MUSLIN_ERR_NULL).

    muslin_unit_recipe_at() in muslin/unit.h. Since 1.0.
    """
    kind_ = ctypes.c_int32()
    method_ = ctypes.c_int32()
    call_telling("muslin_unit_recipe_at", whole(index, "index"), ctypes.byref(kind_), ctypes.byref(method_))
    return UnitRecipeAt(kind_.value, method_.value)


def unit_from_stock(spec: Optional[UnitSpec] = None, stock: Optional[UnitStockSpec] = None, *,
                    finished_width: Optional[LengthLike] = None, finished_height: Optional[LengthLike] = None,
                    corner: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                    take_up: Optional[LengthLike] = None, half_addition: Optional[LengthLike] = None,
                    quarter_addition: Optional[LengthLike] = None, trim_room: Optional[LengthLike] = None,
                    grid: Optional[LengthLike] = None, tolerance: Optional[LengthLike] = None,
                    units: Optional[int] = None, mirrored: Optional[int] = None, kind: Optional[UnitKind] = None,
                    method: Optional[UnitMethod] = None, policy: Optional[AllowancePolicy] = None,
                    tip: Optional[Tip] = None, direction: Optional[Direction] = None) -> UnitYield:
    """What the stock yields for a recipe of given size.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_from_stock() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    stock_ = struct_of(UnitStockSpec, stock, "stock")
    out_ = new(structs.muslin_unit_yield)
    call_telling("muslin_unit_from_stock", ctypes.byref(wish), ctypes.byref(stock_), ctypes.byref(out_))
    return UnitYield._read(out_)


def unit_largest(spec: Optional[UnitSpec] = None, stock: Optional[UnitStockSpec] = None, *,
                 finished_width: Optional[LengthLike] = None, finished_height: Optional[LengthLike] = None,
                 corner: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                 take_up: Optional[LengthLike] = None, half_addition: Optional[LengthLike] = None,
                 quarter_addition: Optional[LengthLike] = None, trim_room: Optional[LengthLike] = None,
                 grid: Optional[LengthLike] = None, tolerance: Optional[LengthLike] = None, units: Optional[int] = None,
                 mirrored: Optional[int] = None, kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
                 policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
                 direction: Optional[Direction] = None) -> UnitYield:
    """The largest finished size of which one recipe can be cut from the stock when every piece fits one rectangle of
    it.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_largest() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    stock_ = struct_of(UnitStockSpec, stock, "stock")
    out_ = new(structs.muslin_unit_yield)
    call_telling("muslin_unit_largest", ctypes.byref(wish), ctypes.byref(stock_), ctypes.byref(out_))
    return UnitYield._read(out_)


def unit_makes(spec: Optional[UnitSpec] = None, stock: Optional[UnitStockSpec] = None, *,
               finished_width: Optional[LengthLike] = None, finished_height: Optional[LengthLike] = None,
               corner: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
               take_up: Optional[LengthLike] = None, half_addition: Optional[LengthLike] = None,
               quarter_addition: Optional[LengthLike] = None, trim_room: Optional[LengthLike] = None,
               grid: Optional[LengthLike] = None, tolerance: Optional[LengthLike] = None, units: Optional[int] = None,
               mirrored: Optional[int] = None, kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
               policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
               direction: Optional[Direction] = None) -> List[UnitYield]:
    """Every recipe that the stock can make, each at its largest size, in the order of muslin_unit_recipe_at(); a
    half-rectangle is offered at 2 : 1, a trapezoid at 3 : 1, a slanted slice at 1 : 1, a snowball square with a corner
    of one third.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_makes() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    stock_ = struct_of(UnitStockSpec, stock, "stock")
    return asked("muslin_unit_makes", structs.muslin_unit_yield, UnitYield._read, ctypes.byref(wish),
                 ctypes.byref(stock_))


def unit_outlines(hand: Hand, spec: Optional[UnitSpec] = None, *, finished_width: Optional[LengthLike] = None,
                  finished_height: Optional[LengthLike] = None, corner: Optional[LengthLike] = None,
                  allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                  half_addition: Optional[LengthLike] = None, quarter_addition: Optional[LengthLike] = None,
                  trim_room: Optional[LengthLike] = None, grid: Optional[LengthLike] = None,
                  tolerance: Optional[LengthLike] = None, units: Optional[int] = None, mirrored: Optional[int] = None,
                  kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
                  policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
                  direction: Optional[Direction] = None) -> List[UnitCorner]:
    """Where the corners of every patch lie, in place: first all finished patches, one after the other, then all raw
    ones in the same order.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_outlines() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    return asked("muslin_unit_outlines", structs.muslin_unit_corner, UnitCorner._read, ctypes.byref(wish),
                 whole(hand, "hand", 32))


def unit_steps(spec: Optional[UnitSpec] = None, *, finished_width: Optional[LengthLike] = None,
               finished_height: Optional[LengthLike] = None, corner: Optional[LengthLike] = None,
               allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
               half_addition: Optional[LengthLike] = None, quarter_addition: Optional[LengthLike] = None,
               trim_room: Optional[LengthLike] = None, grid: Optional[LengthLike] = None,
               tolerance: Optional[LengthLike] = None, units: Optional[int] = None, mirrored: Optional[int] = None,
               kind: Optional[UnitKind] = None, method: Optional[UnitMethod] = None,
               policy: Optional[AllowancePolicy] = None, tip: Optional[Tip] = None,
               direction: Optional[Direction] = None) -> List[UnitStep]:
    """How the pieces of one recipe become its units, a row each step in the order of the work.

    Keywords: the members of UnitSpec, over those of spec.

    muslin_unit_steps() in muslin/unit.h. Since 1.0.
    """
    wish = merged(UnitSpec, spec, finished_width=finished_width, finished_height=finished_height, corner=corner,
                                  allowance=allowance, take_up=take_up, half_addition=half_addition,
                                  quarter_addition=quarter_addition, trim_room=trim_room, grid=grid,
                                  tolerance=tolerance, units=units, mirrored=mirrored, kind=kind, method=method,
                                  policy=policy, tip=tip, direction=direction)
    return asked("muslin_unit_steps", structs.muslin_unit_step, UnitStep._read, ctypes.byref(wish))


def unit_step_sentence(step: int) -> str:
    """One plain English sentence for a step, with the places {piece}, {other}, {measure}, {measure_height},
    {from_corner}, {region} and {angle} for whoever shows it to fill, where the sentence has them; a sentence on unknown
    steps for a number that is none.

    muslin_unit_step_sentence() in muslin/unit.h. Since 1.0.
    """
    return str(library.muslin_unit_step_sentence(whole(step, "step", 32)).decode("utf-8"))


def setting_straight(spec: Optional[SettingSpec] = None, *, block_width: Optional[LengthLike] = None,
                     block_height: Optional[LengthLike] = None, columns: Optional[int] = None,
                     rows: Optional[int] = None, allowance: Optional[LengthLike] = None,
                     take_up: Optional[LengthLike] = None, turning: Optional[Turning] = None,
                     square_tolerance: Optional[LengthLike] = None) -> Setting:
    """The size of a top of columns x rows blocks in a straight setting.

    Keywords: the members of SettingSpec, over those of spec.

    muslin_setting_straight() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingSpec, spec, block_width=block_width, block_height=block_height, columns=columns, rows=rows,
                                     allowance=allowance, take_up=take_up, turning=turning,
                                     square_tolerance=square_tolerance)
    out_ = new(structs.muslin_setting)
    call_telling("muslin_setting_straight", ctypes.byref(wish), ctypes.byref(out_))
    return Setting._read(out_)


def setting_turn(turning: Turning, column: int, row: int) -> int:
    """The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to MUSLIN_COUNT_MAX:
    the first block is not turned, its neighbours are.

    muslin_setting_turn() in muslin/setting.h. Since 1.0.
    """
    quarter_turns_ = ctypes.c_int32()
    call_telling("muslin_setting_turn", whole(turning, "turning", 32), whole(column, "column"), whole(row, "row"),
                 ctypes.byref(quarter_turns_))
    return quarter_turns_.value


def block_from_segments(spec: Optional[BlockSpec] = None, *, segment_cut: Optional[LengthLike] = None,
                        set_unfinished: Optional[LengthLike] = None, segments: Optional[int] = None,
                        allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> Block:
    """The block that segments make, and whether it is square.

    Keywords: the members of BlockSpec, over those of spec.

    muslin_block_from_segments() in muslin/setting.h. Since 1.0.
    """
    wish = merged(BlockSpec, spec, segment_cut=segment_cut, set_unfinished=set_unfinished, segments=segments,
                                   allowance=allowance, take_up=take_up)
    out_ = new(structs.muslin_block)
    call_telling("muslin_block_from_segments", ctypes.byref(wish), ctypes.byref(out_))
    return Block._read(out_)


def join_loss(join: Join, strip_cut: LengthLike, allowance: LengthLike) -> Length:
    """What one join takes off the run, in ticks; `join` is an enum muslin_join.

    muslin_join_loss() in muslin/setting.h. Since 1.0.
    """
    out_ = ctypes.c_int64()
    call_telling("muslin_join_loss", whole(join, "join", 32), ticks_of(strip_cut, "strip_cut"),
                 ticks_of(allowance, "allowance"), ctypes.byref(out_))
    return Length(out_.value)


def run_plan(spec: Optional[RunSpec] = None, *, length: Optional[LengthLike] = None,
             strip_length: Optional[LengthLike] = None, strip_cut: Optional[LengthLike] = None,
             allowance: Optional[LengthLike] = None, join: Optional[Join] = None) -> Run:
    """Strips joined end to end into one run (borders, binding).

    Keywords: the members of RunSpec, over those of spec.

    muslin_run_plan() in muslin/setting.h. Since 1.0.
    """
    wish = merged(RunSpec, spec, length=length, strip_length=strip_length, strip_cut=strip_cut, allowance=allowance,
                                 join=join)
    out_ = new(structs.muslin_run)
    call_telling("muslin_run_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Run._read(out_)


def border_plan(spec: Optional[BorderSpec] = None, *, unfinished_width: Optional[LengthLike] = None,
                unfinished_length: Optional[LengthLike] = None, finished_border: Optional[LengthLike] = None,
                allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                usable_width: Optional[LengthLike] = None, mitre_extra: Optional[LengthLike] = None,
                style: Optional[BorderStyle] = None, join: Optional[Join] = None,
                lengthwise: Optional[bool] = None) -> Border:
    """One border; for several, from the inside outwards, the unfinished sizes of one are the input of the next.

    Keywords: the members of BorderSpec, over those of spec.

    muslin_border_plan() in muslin/setting.h. Since 1.0.
    """
    wish = merged(BorderSpec, spec, unfinished_width=unfinished_width, unfinished_length=unfinished_length,
                                    finished_border=finished_border, allowance=allowance, take_up=take_up,
                                    usable_width=usable_width, mitre_extra=mitre_extra, style=style, join=join,
                                    lengthwise=lengthwise)
    out_ = new(structs.muslin_border)
    call_telling("muslin_border_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Border._read(out_)


def setting_sashed(spec: Optional[SettingSashedSpec] = None, *, block_width: Optional[LengthLike] = None,
                   block_height: Optional[LengthLike] = None, columns: Optional[int] = None, rows: Optional[int] = None,
                   sash_width: Optional[LengthLike] = None, sash_height: Optional[LengthLike] = None,
                   allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                   usable_width: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                   frame: Optional[bool] = None, cornerstones: Optional[bool] = None) -> SettingSashedPlan:
    """Blocks with sashes between them: how many pieces of each kind, their cut sizes, and the size of the top.

    Keywords: the members of SettingSashedSpec, over those of spec.

    muslin_setting_sashed() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingSashedSpec, spec, block_width=block_width, block_height=block_height, columns=columns,
                                           rows=rows, sash_width=sash_width, sash_height=sash_height,
                                           allowance=allowance, take_up=take_up, usable_width=usable_width,
                                           end_loss=end_loss, frame=frame, cornerstones=cornerstones)
    out_ = new(structs.muslin_setting_sashed_plan)
    call_telling("muslin_setting_sashed", ctypes.byref(wish), ctypes.byref(out_))
    return SettingSashedPlan._read(out_)


def setting_sashed_pieces(spec: Optional[SettingSashedSpec] = None, *, block_width: Optional[LengthLike] = None,
                          block_height: Optional[LengthLike] = None, columns: Optional[int] = None,
                          rows: Optional[int] = None, sash_width: Optional[LengthLike] = None,
                          sash_height: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                          take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None,
                          end_loss: Optional[LengthLike] = None, frame: Optional[bool] = None,
                          cornerstones: Optional[bool] = None) -> List[SashPiece]:
    """The strips across the cloth for each kind of piece that there is, in the order of enum muslin_sash_kind: one to
    three rows, none for a top without sashes.

    Keywords: the members of SettingSashedSpec, over those of spec.

    muslin_setting_sashed_pieces() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingSashedSpec, spec, block_width=block_width, block_height=block_height, columns=columns,
                                           rows=rows, sash_width=sash_width, sash_height=sash_height,
                                           allowance=allowance, take_up=take_up, usable_width=usable_width,
                                           end_loss=end_loss, frame=frame, cornerstones=cornerstones)
    return asked("muslin_setting_sashed_pieces", structs.muslin_sash_piece, SashPiece._read, ctypes.byref(wish))


def setting_alternate(spec: Optional[SettingAlternateSpec] = None, *, block_width: Optional[LengthLike] = None,
                      block_height: Optional[LengthLike] = None, columns: Optional[int] = None,
                      rows: Optional[int] = None, allowance: Optional[LengthLike] = None,
                      take_up: Optional[LengthLike] = None, first: Optional[FirstBlock] = None) -> SettingAlternatePlan:
    """Pieced and plain blocks like the fields of a chessboard.

    Keywords: the members of SettingAlternateSpec, over those of spec.

    muslin_setting_alternate() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingAlternateSpec, spec, block_width=block_width, block_height=block_height, columns=columns,
                                              rows=rows, allowance=allowance, take_up=take_up, first=first)
    out_ = new(structs.muslin_setting_alternate_plan)
    call_telling("muslin_setting_alternate", ctypes.byref(wish), ctypes.byref(out_))
    return SettingAlternatePlan._read(out_)


def setting_line(sizes: Lengths, spec: Optional[SettingLineSpec] = None, *, sash: Optional[LengthLike] = None,
                 allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                 wanted: Optional[LengthLike] = None, frame: Optional[bool] = None) -> SettingLinePlan:
    """The whole of a line of n columns or rows with finished sizes `sizes` (1 .. MUSLIN_SIZE_MAX each), and how far it
    is from the size wanted.

    Keywords: the members of SettingLineSpec, over those of spec.

    muslin_setting_line() in muslin/setting.h. Since 1.0.
    """
    sizes_ = gathered(sizes, "sizes")
    wish = merged(SettingLineSpec, spec, sash=sash, allowance=allowance, take_up=take_up, wanted=wanted, frame=frame)
    out_ = new(structs.muslin_setting_line_plan)
    call_telling("muslin_setting_line", sizes_.numbers, sizes_.count, ctypes.byref(wish), ctypes.byref(out_))
    return SettingLinePlan._read(out_)


def setting_line_places(sizes: Lengths, spec: Optional[SettingLineSpec] = None, *, sash: Optional[LengthLike] = None,
                        allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                        wanted: Optional[LengthLike] = None, frame: Optional[bool] = None) -> List[SettingLinePlace]:
    """Where each of the n columns or rows lies: a row each, in their order.

    Keywords: the members of SettingLineSpec, over those of spec.

    muslin_setting_line_places() in muslin/setting.h. Since 1.0.
    """
    sizes_ = gathered(sizes, "sizes")
    wish = merged(SettingLineSpec, spec, sash=sash, allowance=allowance, take_up=take_up, wanted=wanted, frame=frame)
    return asked("muslin_setting_line_places", structs.muslin_setting_line_place, SettingLinePlace._read,
                 sizes_.numbers, sizes_.count, ctypes.byref(wish))


def setting_point(spec: Optional[SettingPointSpec] = None, cutting: Optional[RoundingSpec] = None,
                  measuring: Optional[RoundingSpec] = None, *, block: Optional[LengthLike] = None,
                  columns: Optional[int] = None, rows: Optional[int] = None, sash: Optional[LengthLike] = None,
                  set_off: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                  take_up: Optional[LengthLike] = None, trim_room: Optional[LengthLike] = None,
                  side_addition: Optional[LengthLike] = None, corner_addition: Optional[LengthLike] = None,
                  factor_numerator: Optional[int] = None, factor_denominator: Optional[int] = None,
                  layout: Optional[PointLayout] = None, edge: Optional[PointEdge] = None,
                  policy: Optional[AllowancePolicy] = None, diagonal_first: Optional[bool] = None) -> SettingPointPlan:
    """A setting on point: counts, squares to cut for its triangles, and the size of the centre.

    Keywords: the members of SettingPointSpec, over those of spec.

    muslin_setting_point() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingPointSpec, spec, block=block, columns=columns, rows=rows, sash=sash, set_off=set_off,
                                          allowance=allowance, take_up=take_up, trim_room=trim_room,
                                          side_addition=side_addition, corner_addition=corner_addition,
                                          factor_numerator=factor_numerator, factor_denominator=factor_denominator,
                                          layout=layout, edge=edge, policy=policy, diagonal_first=diagonal_first)
    cutting_ = struct_of(RoundingSpec, cutting, "cutting")
    measuring_ = struct_of(RoundingSpec, measuring, "measuring")
    out_ = new(structs.muslin_setting_point_plan)
    call_telling("muslin_setting_point", ctypes.byref(wish), ctypes.byref(cutting_), ctypes.byref(measuring_),
                 ctypes.byref(out_))
    return SettingPointPlan._read(out_)


def setting_point_block_for_width(wanted_width: LengthLike, grid: LengthLike, spec: Optional[SettingPointSpec] = None,
                                  *, block: Optional[LengthLike] = None, columns: Optional[int] = None,
                                  rows: Optional[int] = None, sash: Optional[LengthLike] = None,
                                  set_off: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                                  take_up: Optional[LengthLike] = None, trim_room: Optional[LengthLike] = None,
                                  side_addition: Optional[LengthLike] = None,
                                  corner_addition: Optional[LengthLike] = None, factor_numerator: Optional[int] = None,
                                  factor_denominator: Optional[int] = None, layout: Optional[PointLayout] = None,
                                  edge: Optional[PointEdge] = None, policy: Optional[AllowancePolicy] = None,
                                  diagonal_first: Optional[bool] = None) -> Length:
    """The largest block, a whole number of steps of `grid` (1 .. MUSLIN_SIZE_MAX), whose centre on point is not wider
    than `wanted_width` (1 .. MUSLIN_SIZE_MAX).

    Keywords: the members of SettingPointSpec, over those of spec.

    muslin_setting_point_block_for_width() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingPointSpec, spec, block=block, columns=columns, rows=rows, sash=sash, set_off=set_off,
                                          allowance=allowance, take_up=take_up, trim_room=trim_room,
                                          side_addition=side_addition, corner_addition=corner_addition,
                                          factor_numerator=factor_numerator, factor_denominator=factor_denominator,
                                          layout=layout, edge=edge, policy=policy, diagonal_first=diagonal_first)
    out_ = ctypes.c_int64()
    call_telling("muslin_setting_point_block_for_width", ctypes.byref(wish), ticks_of(wanted_width, "wanted_width"),
                 ticks_of(grid, "grid"), ctypes.byref(out_))
    return Length(out_.value)


def setting_point_block_from_side(side_square_cut: LengthLike, spec: Optional[SettingPointSpec] = None,
                                  rounding: Optional[RoundingSpec] = None, *, block: Optional[LengthLike] = None,
                                  columns: Optional[int] = None, rows: Optional[int] = None,
                                  sash: Optional[LengthLike] = None, set_off: Optional[LengthLike] = None,
                                  allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                                  trim_room: Optional[LengthLike] = None, side_addition: Optional[LengthLike] = None,
                                  corner_addition: Optional[LengthLike] = None, factor_numerator: Optional[int] = None,
                                  factor_denominator: Optional[int] = None, layout: Optional[PointLayout] = None,
                                  edge: Optional[PointEdge] = None, policy: Optional[AllowancePolicy] = None,
                                  diagonal_first: Optional[bool] = None) -> Rounded:
    """The finished block that a given side square (cut twice, `side_square_cut` 1 .. MUSLIN_SIZE_MAX) can frame
    exactly, rounded once, as asked: the exact need solved for B.

    Keywords: the members of SettingPointSpec, over those of spec.

    muslin_setting_point_block_from_side() in muslin/setting.h. Since 1.0.
    """
    wish = merged(SettingPointSpec, spec, block=block, columns=columns, rows=rows, sash=sash, set_off=set_off,
                                          allowance=allowance, take_up=take_up, trim_room=trim_room,
                                          side_addition=side_addition, corner_addition=corner_addition,
                                          factor_numerator=factor_numerator, factor_denominator=factor_denominator,
                                          layout=layout, edge=edge, policy=policy, diagonal_first=diagonal_first)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_setting_point_block_from_side", ctypes.byref(wish),
                 ticks_of(side_square_cut, "side_square_cut"), ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def logcabin_plan(widths: Lengths, spec: Optional[LogcabinSpec] = None, *, centre_width: Optional[LengthLike] = None,
                  centre_height: Optional[LengthLike] = None, log_width: Optional[LengthLike] = None,
                  rounds: Optional[int] = None, blocks: Optional[int] = None, allowance: Optional[LengthLike] = None,
                  take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None,
                  end_loss: Optional[LengthLike] = None, order: Optional[LogOrder] = None, start: Optional[Side] = None,
                  turn: Optional[LogTurn] = None, given_cut: Optional[bool] = None) -> Logcabin:
    """A log cabin block: its size, its logs, and the strips for all blocks.

    Keywords: the members of LogcabinSpec, over those of spec.

    muslin_logcabin_plan() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(LogcabinSpec, spec, centre_width=centre_width, centre_height=centre_height, log_width=log_width,
                                      rounds=rounds, blocks=blocks, allowance=allowance, take_up=take_up,
                                      usable_width=usable_width, end_loss=end_loss, order=order, start=start, turn=turn,
                                      given_cut=given_cut)
    widths_ = gathered(widths, "widths")
    out_ = new(structs.muslin_logcabin)
    call_telling("muslin_logcabin_plan", ctypes.byref(wish), widths_.numbers, widths_.count, ctypes.byref(out_))
    return Logcabin._read(out_)


def logcabin_logs(widths: Lengths, spec: Optional[LogcabinSpec] = None, *, centre_width: Optional[LengthLike] = None,
                  centre_height: Optional[LengthLike] = None, log_width: Optional[LengthLike] = None,
                  rounds: Optional[int] = None, blocks: Optional[int] = None, allowance: Optional[LengthLike] = None,
                  take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None,
                  end_loss: Optional[LengthLike] = None, order: Optional[LogOrder] = None, start: Optional[Side] = None,
                  turn: Optional[LogTurn] = None, given_cut: Optional[bool] = None) -> List[LogcabinLog]:
    """The logs of one block in sewing order (ask-then-fill), as many as muslin_logcabin.logs.

    Keywords: the members of LogcabinSpec, over those of spec.

    muslin_logcabin_logs() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(LogcabinSpec, spec, centre_width=centre_width, centre_height=centre_height, log_width=log_width,
                                      rounds=rounds, blocks=blocks, allowance=allowance, take_up=take_up,
                                      usable_width=usable_width, end_loss=end_loss, order=order, start=start, turn=turn,
                                      given_cut=given_cut)
    widths_ = gathered(widths, "widths")
    return asked("muslin_logcabin_logs", structs.muslin_logcabin_log, LogcabinLog._read, ctypes.byref(wish),
                 widths_.numbers, widths_.count)


def logcabin_strips(widths: Lengths, spec: Optional[LogcabinSpec] = None, *, centre_width: Optional[LengthLike] = None,
                    centre_height: Optional[LengthLike] = None, log_width: Optional[LengthLike] = None,
                    rounds: Optional[int] = None, blocks: Optional[int] = None, allowance: Optional[LengthLike] = None,
                    take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None,
                    end_loss: Optional[LengthLike] = None, order: Optional[LogOrder] = None,
                    start: Optional[Side] = None, turn: Optional[LogTurn] = None,
                    given_cut: Optional[bool] = None) -> List[LogcabinStrip]:
    """Strips for all blocks, a row for each half and cut width, the first half first, in sewing order of their first
    logs (ask-then-fill).

    Keywords: the members of LogcabinSpec, over those of spec.

    muslin_logcabin_strips() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(LogcabinSpec, spec, centre_width=centre_width, centre_height=centre_height, log_width=log_width,
                                      rounds=rounds, blocks=blocks, allowance=allowance, take_up=take_up,
                                      usable_width=usable_width, end_loss=end_loss, order=order, start=start, turn=turn,
                                      given_cut=given_cut)
    widths_ = gathered(widths, "widths")
    return asked("muslin_logcabin_strips", structs.muslin_logcabin_strip, LogcabinStrip._read, ctypes.byref(wish),
                 widths_.numbers, widths_.count)


def logcabin_log_for(spec: Optional[LogcabinFitSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                     wanted: Optional[LengthLike] = None, centre: Optional[LengthLike] = None,
                     rounds: Optional[int] = None, log_finished: Optional[LengthLike] = None,
                     allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                     order: Optional[LogOrder] = None) -> LogcabinFit:
    """The log width that finishes a block of `wanted` with so many rounds round the centre, brought to the grid, and
    what the block then becomes.

    Keywords: the members of LogcabinFitSpec, over those of spec.

    muslin_logcabin_log_for() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(LogcabinFitSpec, spec, wanted=wanted, centre=centre, rounds=rounds, log_finished=log_finished,
                                         allowance=allowance, take_up=take_up, order=order)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_logcabin_fit)
    call_telling("muslin_logcabin_log_for", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return LogcabinFit._read(out_)


def logcabin_rounds_for(spec: Optional[LogcabinFitSpec] = None, *, wanted: Optional[LengthLike] = None,
                        centre: Optional[LengthLike] = None, rounds: Optional[int] = None,
                        log_finished: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                        take_up: Optional[LengthLike] = None, order: Optional[LogOrder] = None) -> LogcabinFit:
    """How many rounds of such logs fit round the centre within `wanted`; 0 when not even one does, and more than
    MUSLIN_ROUNDS_MAX when they do, which the other calls refuse.

    Keywords: the members of LogcabinFitSpec, over those of spec.

    muslin_logcabin_rounds_for() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(LogcabinFitSpec, spec, wanted=wanted, centre=centre, rounds=rounds, log_finished=log_finished,
                                         allowance=allowance, take_up=take_up, order=order)
    out_ = new(structs.muslin_logcabin_fit)
    call_telling("muslin_logcabin_rounds_for", ctypes.byref(wish), ctypes.byref(out_))
    return LogcabinFit._read(out_)


def frame_pieces(spec: Optional[FrameSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                 opening_width: Optional[LengthLike] = None, opening_height: Optional[LengthLike] = None,
                 frame_width: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                 take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None) -> Frame:
    """Raw edges of the pieces, every seam, mitre included, with its m / 2 on each piece.

    Keywords: the members of FrameSpec, over those of spec.

    muslin_frame_pieces() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(FrameSpec, spec, opening_width=opening_width, opening_height=opening_height, frame_width=frame_width,
                                   allowance=allowance, take_up=take_up, usable_width=usable_width)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_frame)
    call_telling("muslin_frame_pieces", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return Frame._read(out_)


def frame_outline(spec: Optional[FrameSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                  opening_width: Optional[LengthLike] = None, opening_height: Optional[LengthLike] = None,
                  frame_width: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                  take_up: Optional[LengthLike] = None, usable_width: Optional[LengthLike] = None) -> List[FrameCorner]:
    """The outlines for a template: 16 rows, top then side, cut then finished, each from the left outer corner to the
    right one and back along the inner edge (ask-then-fill).

    Keywords: the members of FrameSpec, over those of spec.

    muslin_frame_outline() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(FrameSpec, spec, opening_width=opening_width, opening_height=opening_height, frame_width=frame_width,
                                   allowance=allowance, take_up=take_up, usable_width=usable_width)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    return asked("muslin_frame_outline", structs.muslin_frame_corner, FrameCorner._read, ctypes.byref(wish),
                 ctypes.byref(rounding_))


def medallion_plan(rows: Sequence[MedallionRow], spec: Optional[MedallionSpec] = None, *,
                   centre_width: Optional[LengthLike] = None, centre_height: Optional[LengthLike] = None,
                   allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                   equal_coping: Optional[bool] = None) -> MedallionPlan:
    """Grows a medallion round by round and answers into the caller's n rows (1 .. MUSLIN_ROUNDS_MAX).

    Keywords: the members of MedallionSpec, over those of spec.

    muslin_medallion_plan() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(MedallionSpec, spec, centre_width=centre_width, centre_height=centre_height, allowance=allowance,
                                       take_up=take_up, equal_coping=equal_coping)
    rows_, n_ = rows_of(MedallionRow, rows, "rows")
    out_ = new(structs.muslin_medallion)
    call_telling("muslin_medallion_plan", ctypes.byref(wish), rows_, ctypes.sizeof(structs.muslin_medallion_row), n_,
                 ctypes.byref(out_))
    return MedallionPlan(tuple(MedallionRow._read(row) for row in rows_[:n_]), Medallion._read(out_))


def repeat_plan(spec: Optional[RepeatSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                side_finished: Optional[LengthLike] = None, repeat_finished: Optional[LengthLike] = None,
                spacers: Optional[int] = None, spacer_least: Optional[LengthLike] = None,
                allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> Repeat:
    """Units of one repeat along a side: how many, what is left, what repeat would come out, and spacers that share what
    is left.

    Keywords: the members of RepeatSpec, over those of spec.

    muslin_repeat_plan() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(RepeatSpec, spec, side_finished=side_finished, repeat_finished=repeat_finished, spacers=spacers,
                                    spacer_least=spacer_least, allowance=allowance, take_up=take_up)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_repeat)
    call_telling("muslin_repeat_plan", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return Repeat._read(out_)


def repeat_common(width: LengthLike, height: LengthLike, least: LengthLike, most: LengthLike,
                  rounding: Optional[RoundingSpec] = None) -> CommonRepeat:
    """The largest repeat from `least` (0 or more) to `most` (1 or more) that divides both sides of a quilt: a whole
    part of their greatest common measure.

    muslin_repeat_common() in muslin/rounds.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_common_repeat)
    call_telling("muslin_repeat_common", ticks_of(width, "width"), ticks_of(height, "height"), ticks_of(least, "least"),
                 ticks_of(most, "most"), ctypes.byref(rounding_), ctypes.byref(out_))
    return CommonRepeat._read(out_)


def point_border_plan(spec: Optional[PointBorderSpec] = None, cutting: Optional[RoundingSpec] = None,
                      measuring: Optional[RoundingSpec] = None, *, side_finished: Optional[LengthLike] = None,
                      diagonal_finished: Optional[LengthLike] = None, squares: Optional[int] = None,
                      runs: Optional[int] = None, allowance: Optional[LengthLike] = None,
                      take_up: Optional[LengthLike] = None) -> PointBorder:
    """A pieced border of squares on point: sizes to cut, counts, and what the side leaves.

    Keywords: the members of PointBorderSpec, over those of spec.

    muslin_point_border_plan() in muslin/rounds.h. Since 1.0.
    """
    wish = merged(PointBorderSpec, spec, side_finished=side_finished, diagonal_finished=diagonal_finished,
                                         squares=squares, runs=runs, allowance=allowance, take_up=take_up)
    cutting_ = struct_of(RoundingSpec, cutting, "cutting")
    measuring_ = struct_of(RoundingSpec, measuring, "measuring")
    out_ = new(structs.muslin_point_border)
    call_telling("muslin_point_border_plan", ctypes.byref(wish), ctypes.byref(cutting_), ctypes.byref(measuring_),
                 ctypes.byref(out_))
    return PointBorder._read(out_)


def bed_size(spec: Optional[BedSpec] = None, *, mattress_width: Optional[LengthLike] = None,
             mattress_length: Optional[LengthLike] = None, mattress_depth: Optional[LengthLike] = None,
             floor_height: Optional[LengthLike] = None, beyond_depth: Optional[LengthLike] = None,
             side_drop: Optional[LengthLike] = None, foot_drop: Optional[LengthLike] = None,
             head_drop: Optional[LengthLike] = None, pillow_tuck: Optional[LengthLike] = None,
             quilting_extra: Optional[LengthLike] = None, drop: Optional[Drop] = None,
             foot_corner: Optional[FootCorner] = None, foot_given: Optional[bool] = None) -> Bed:
    """The size of a quilt for a mattress.

    Keywords: the members of BedSpec, over those of spec.

    muslin_bed_size() in muslin/fit.h. Since 1.0.
    """
    wish = merged(BedSpec, spec, mattress_width=mattress_width, mattress_length=mattress_length,
                                 mattress_depth=mattress_depth, floor_height=floor_height, beyond_depth=beyond_depth,
                                 side_drop=side_drop, foot_drop=foot_drop, head_drop=head_drop, pillow_tuck=pillow_tuck,
                                 quilting_extra=quilting_extra, drop=drop, foot_corner=foot_corner,
                                 foot_given=foot_given)
    out_ = new(structs.muslin_bed)
    call_telling("muslin_bed_size", ctypes.byref(wish), ctypes.byref(out_))
    return Bed._read(out_)


def bed_covered(spec: Optional[BedCoveredSpec] = None, *, quilt_width: Optional[LengthLike] = None,
                quilt_length: Optional[LengthLike] = None, mattress_width: Optional[LengthLike] = None,
                mattress_length: Optional[LengthLike] = None, mattress_depth: Optional[LengthLike] = None,
                floor_height: Optional[LengthLike] = None, head_drop: Optional[LengthLike] = None,
                pillow_tuck: Optional[LengthLike] = None, foot_corner: Optional[FootCorner] = None) -> BedCover:
    """Backwards: how a quilt of a given size lies on a mattress, in the middle, and what it falls short by.

    Keywords: the members of BedCoveredSpec, over those of spec.

    muslin_bed_covered() in muslin/fit.h. Since 1.0.
    """
    wish = merged(BedCoveredSpec, spec, quilt_width=quilt_width, quilt_length=quilt_length,
                                        mattress_width=mattress_width, mattress_length=mattress_length,
                                        mattress_depth=mattress_depth, floor_height=floor_height, head_drop=head_drop,
                                        pillow_tuck=pillow_tuck, foot_corner=foot_corner)
    out_ = new(structs.muslin_bed_cover)
    call_telling("muslin_bed_covered", ctypes.byref(wish), ctypes.byref(out_))
    return BedCover._read(out_)


def fit_settings(spec: Optional[FitSpec] = None, *, wanted_width: Optional[LengthLike] = None,
                 wanted_length: Optional[LengthLike] = None, width_under: Optional[LengthLike] = None,
                 width_over: Optional[LengthLike] = None, length_under: Optional[LengthLike] = None,
                 length_over: Optional[LengthLike] = None, block_least: Optional[LengthLike] = None,
                 block_most: Optional[LengthLike] = None, block_step: Optional[LengthLike] = None,
                 sash_least: Optional[LengthLike] = None, sash_most: Optional[LengthLike] = None,
                 sash_step: Optional[LengthLike] = None, border_least: Optional[LengthLike] = None,
                 border_most: Optional[LengthLike] = None, border_step: Optional[LengthLike] = None,
                 columns_least: Optional[int] = None, columns_most: Optional[int] = None,
                 rows_least: Optional[int] = None, rows_most: Optional[int] = None, best: Optional[int] = None,
                 work_limit: Optional[int] = None, rank: Optional[FitRank] = None,
                 columns_parity: Optional[Parity] = None, rows_parity: Optional[Parity] = None,
                 allow_straight: Optional[bool] = None, allow_sashed: Optional[bool] = None,
                 allow_framed: Optional[bool] = None, allow_on_point: Optional[bool] = None) -> List[Fit]:
    """Every setting of the kinds, sizes and counts allowed whose width and length lie within the tolerances, compared
    exactly, on point too, and do not pass MUSLIN_SIZE_MAX; ranked as asked, and the same list every time: equals are
    ordered by what they are off, then fewer blocks, kind, larger block, narrower sash, narrower border, fewer columns.

    Keywords: the members of FitSpec, over those of spec.

    muslin_fit_settings() in muslin/fit.h. Since 1.0.
    """
    wish = merged(FitSpec, spec, wanted_width=wanted_width, wanted_length=wanted_length, width_under=width_under,
                                 width_over=width_over, length_under=length_under, length_over=length_over,
                                 block_least=block_least, block_most=block_most, block_step=block_step,
                                 sash_least=sash_least, sash_most=sash_most, sash_step=sash_step,
                                 border_least=border_least, border_most=border_most, border_step=border_step,
                                 columns_least=columns_least, columns_most=columns_most, rows_least=rows_least,
                                 rows_most=rows_most, best=best, work_limit=work_limit, rank=rank,
                                 columns_parity=columns_parity, rows_parity=rows_parity, allow_straight=allow_straight,
                                 allow_sashed=allow_sashed, allow_framed=allow_framed, allow_on_point=allow_on_point)
    return asked("muslin_fit_settings", structs.muslin_fit, Fit._read, ctypes.byref(wish))


def fit_nearest(spec: Optional[FitSpec] = None, *, wanted_width: Optional[LengthLike] = None,
                wanted_length: Optional[LengthLike] = None, width_under: Optional[LengthLike] = None,
                width_over: Optional[LengthLike] = None, length_under: Optional[LengthLike] = None,
                length_over: Optional[LengthLike] = None, block_least: Optional[LengthLike] = None,
                block_most: Optional[LengthLike] = None, block_step: Optional[LengthLike] = None,
                sash_least: Optional[LengthLike] = None, sash_most: Optional[LengthLike] = None,
                sash_step: Optional[LengthLike] = None, border_least: Optional[LengthLike] = None,
                border_most: Optional[LengthLike] = None, border_step: Optional[LengthLike] = None,
                columns_least: Optional[int] = None, columns_most: Optional[int] = None,
                rows_least: Optional[int] = None, rows_most: Optional[int] = None, best: Optional[int] = None,
                work_limit: Optional[int] = None, rank: Optional[FitRank] = None,
                columns_parity: Optional[Parity] = None, rows_parity: Optional[Parity] = None,
                allow_straight: Optional[bool] = None, allow_sashed: Optional[bool] = None,
                allow_framed: Optional[bool] = None, allow_on_point: Optional[bool] = None) -> Fit:
    """The one setting that comes nearest to the wanted size, whatever the tolerances, `best` and `rank` say (they must
    still be in range); its rank_key is that of MUSLIN_FIT_RANK_NEAREST, and equals are decided in the order above.

    Keywords: the members of FitSpec, over those of spec.

    muslin_fit_nearest() in muslin/fit.h. Since 1.0.
    """
    wish = merged(FitSpec, spec, wanted_width=wanted_width, wanted_length=wanted_length, width_under=width_under,
                                 width_over=width_over, length_under=length_under, length_over=length_over,
                                 block_least=block_least, block_most=block_most, block_step=block_step,
                                 sash_least=sash_least, sash_most=sash_most, sash_step=sash_step,
                                 border_least=border_least, border_most=border_most, border_step=border_step,
                                 columns_least=columns_least, columns_most=columns_most, rows_least=rows_least,
                                 rows_most=rows_most, best=best, work_limit=work_limit, rank=rank,
                                 columns_parity=columns_parity, rows_parity=rows_parity, allow_straight=allow_straight,
                                 allow_sashed=allow_sashed, allow_framed=allow_framed, allow_on_point=allow_on_point)
    out_ = new(structs.muslin_fit)
    call_telling("muslin_fit_nearest", ctypes.byref(wish), ctypes.byref(out_))
    return Fit._read(out_)


def fit_across(spec: Optional[FitAcrossSpec] = None, *, wanted: Optional[LengthLike] = None,
               border: Optional[LengthLike] = None, block: Optional[LengthLike] = None,
               sash: Optional[LengthLike] = None, direction: Optional[Direction] = None,
               frame: Optional[bool] = None) -> FitAcrossBlocks:
    """The number of blocks for a width: (wanted - 2 border + sash) / (block + sash), rounded as asked but to one block
    at least.

    Keywords: the members of FitAcrossSpec, over those of spec.

    muslin_fit_across() in muslin/fit.h. Since 1.0.
    """
    wish = merged(FitAcrossSpec, spec, wanted=wanted, border=border, block=block, sash=sash, direction=direction,
                                       frame=frame)
    out_ = new(structs.muslin_fit_across_blocks)
    call_telling("muslin_fit_across", ctypes.byref(wish), ctypes.byref(out_))
    return FitAcrossBlocks._read(out_)


def fit_triangles(spec: Optional[FitTrianglesSpec] = None, *, wanted_width: Optional[LengthLike] = None,
                  wanted_length: Optional[LengthLike] = None, height: Optional[LengthLike] = None,
                  rows_direction: Optional[Direction] = None, sides_direction: Optional[Direction] = None,
                  allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None) -> FitTriangleRows:
    """Rows of equilateral triangles, point up and point down in turn, for a quilt of about this size, and how to cut
    them from strips.

    Keywords: the members of FitTrianglesSpec, over those of spec.

    muslin_fit_triangles() in muslin/fit.h. Since 1.0.
    """
    wish = merged(FitTrianglesSpec, spec, wanted_width=wanted_width, wanted_length=wanted_length, height=height,
                                          rows_direction=rows_direction, sides_direction=sides_direction,
                                          allowance=allowance, take_up=take_up)
    out_ = new(structs.muslin_fit_triangle_rows)
    call_telling("muslin_fit_triangles", ctypes.byref(wish), ctypes.byref(out_))
    return FitTriangleRows._read(out_)


def fit_rescale(rows: Sequence[FitRescaleRow], spec: Optional[FitRescaleSpec] = None, *,
                numerator: Optional[int] = None, denominator: Optional[int] = None,
                allowance: Optional[LengthLike] = None, take_up: Optional[LengthLike] = None,
                grid: Optional[LengthLike] = None) -> FitRescale:
    """A pattern made larger or smaller: n finished sizes in the array (n 1 .. MUSLIN_COUNT_MAX), each scaled exactly
    and given its seams back, and set against the marks of the ruler; and the nearest scales that keep all of them on
    the marks.

    Keywords: the members of FitRescaleSpec, over those of spec.

    muslin_fit_rescale() in muslin/fit.h. Since 1.0.
    """
    wish = merged(FitRescaleSpec, spec, numerator=numerator, denominator=denominator, allowance=allowance,
                                        take_up=take_up, grid=grid)
    rows_, n_ = rows_of(FitRescaleRow, rows, "rows")
    out_ = new(structs.muslin_fit_rescaled)
    call_telling("muslin_fit_rescale", ctypes.byref(wish), rows_, ctypes.sizeof(structs.muslin_fit_rescale_row), n_,
                 ctypes.byref(out_))
    return FitRescale(tuple(FitRescaleRow._read(row) for row in rows_[:n_]), FitRescaled._read(out_))


def binding_measure(spec: Optional[BindingWidthSpec] = None, *, fold: Optional[Fold] = None,
                    allowance: Optional[LengthLike] = None, front: Optional[LengthLike] = None,
                    thickness: Optional[LengthLike] = None, back: Optional[LengthLike] = None,
                    turn_under: Optional[LengthLike] = None, binding_cut: Optional[LengthLike] = None,
                    uneven_limit: Optional[LengthLike] = None) -> BindingWidth:
    """The cut width of a binding from what it shall show, or what a given cut width shows.

    Keywords: the members of BindingWidthSpec, over those of spec.

    muslin_binding_measure() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BindingWidthSpec, spec, fold=fold, allowance=allowance, front=front, thickness=thickness, back=back,
                                          turn_under=turn_under, binding_cut=binding_cut, uneven_limit=uneven_limit)
    out_ = new(structs.muslin_binding_width)
    call_telling("muslin_binding_measure", ctypes.byref(wish), ctypes.byref(out_))
    return BindingWidth._read(out_)


def binding_plan(spec: Optional[BindingSpec] = None, *, perimeter: Optional[LengthLike] = None,
                 quilt_width: Optional[LengthLike] = None, quilt_length: Optional[LengthLike] = None,
                 extra: Optional[LengthLike] = None, corners: Optional[int] = None,
                 corner_extra: Optional[LengthLike] = None, binding_cut: Optional[LengthLike] = None,
                 strip_length: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                 step: Optional[LengthLike] = None, spare_strips: Optional[int] = None,
                 join: Optional[Join] = None) -> Binding:
    """Length, strips, joins and cloth for a binding; the run is muslin_run_plan()'s.

    Keywords: the members of BindingSpec, over those of spec.

    muslin_binding_plan() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BindingSpec, spec, perimeter=perimeter, quilt_width=quilt_width, quilt_length=quilt_length,
                                     extra=extra, corners=corners, corner_extra=corner_extra, binding_cut=binding_cut,
                                     strip_length=strip_length, allowance=allowance, step=step,
                                     spare_strips=spare_strips, join=join)
    out_ = new(structs.muslin_binding)
    call_telling("muslin_binding_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Binding._read(out_)


def bias_tube(spec: Optional[BiasSpec] = None, *, width: Optional[LengthLike] = None,
              length: Optional[LengthLike] = None, strip_cut: Optional[LengthLike] = None,
              allowance: Optional[LengthLike] = None, wanted: Optional[LengthLike] = None,
              blunt_ends: Optional[bool] = None) -> Bias:
    """The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
    rectangle a 45 degree corner is moved to the other end).

    Keywords: the members of BiasSpec, over those of spec.

    muslin_bias_tube() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BiasSpec, spec, width=width, length=length, strip_cut=strip_cut, allowance=allowance, wanted=wanted,
                                  blunt_ends=blunt_ends)
    out_ = new(structs.muslin_bias)
    call_telling("muslin_bias_tube", ctypes.byref(wish), ctypes.byref(out_))
    return Bias._read(out_)


def bias_least_square(spec: Optional[BiasSpec] = None, rounding: Optional[RoundingSpec] = None, *,
                      width: Optional[LengthLike] = None, length: Optional[LengthLike] = None,
                      strip_cut: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                      wanted: Optional[LengthLike] = None, blunt_ends: Optional[bool] = None) -> Bias:
    """The least square, on the rounding's grid, whose tube gives `wanted`.

    Keywords: the members of BiasSpec, over those of spec.

    muslin_bias_least_square() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BiasSpec, spec, width=width, length=length, strip_cut=strip_cut, allowance=allowance, wanted=wanted,
                                  blunt_ends=blunt_ends)
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_bias)
    call_telling("muslin_bias_least_square", ctypes.byref(wish), ctypes.byref(rounding_), ctypes.byref(out_))
    return Bias._read(out_)


def bias_strips(spec: Optional[BiasSpec] = None, *, width: Optional[LengthLike] = None,
                length: Optional[LengthLike] = None, strip_cut: Optional[LengthLike] = None,
                allowance: Optional[LengthLike] = None, wanted: Optional[LengthLike] = None,
                blunt_ends: Optional[bool] = None) -> Bias:
    """Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0), parallel
    to its diagonal, ends left at 45 degrees, every other one turned end for end, joined into one run: in each half n =
    floor(S / (sqrt 2 w)) strips, down to the short ones in the corner; measured along their middle they add up to sqrt
    2 n S - n n w a half, and each of the 2 n - 1 joins takes 2 sqrt 2 s.

    Keywords: the members of BiasSpec, over those of spec.

    muslin_bias_strips() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BiasSpec, spec, width=width, length=length, strip_cut=strip_cut, allowance=allowance, wanted=wanted,
                                  blunt_ends=blunt_ends)
    out_ = new(structs.muslin_bias)
    call_telling("muslin_bias_strips", ctypes.byref(wish), ctypes.byref(out_))
    return Bias._read(out_)


def batting_plan(spec: Optional[BattingSpec] = None, *, quilt_width: Optional[LengthLike] = None,
                 quilt_length: Optional[LengthLike] = None, margin_left: Optional[LengthLike] = None,
                 margin_right: Optional[LengthLike] = None, margin_top: Optional[LengthLike] = None,
                 margin_bottom: Optional[LengthLike] = None, roll_width: Optional[LengthLike] = None,
                 fixed: Optional[bool] = None) -> Batting:
    """Batting for a quilt: the size to cut, the package to buy, or the pieces of a roll.

    Keywords: the members of BattingSpec, over those of spec.

    muslin_batting_plan() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BattingSpec, spec, quilt_width=quilt_width, quilt_length=quilt_length, margin_left=margin_left,
                                     margin_right=margin_right, margin_top=margin_top, margin_bottom=margin_bottom,
                                     roll_width=roll_width, fixed=fixed)
    out_ = new(structs.muslin_batting)
    call_telling("muslin_batting_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Batting._read(out_)


def backing_layouts(spec: Optional[BackingSpec] = None, *, quilt_width: Optional[LengthLike] = None,
                    quilt_length: Optional[LengthLike] = None, margin_left: Optional[LengthLike] = None,
                    margin_right: Optional[LengthLike] = None, margin_top: Optional[LengthLike] = None,
                    margin_bottom: Optional[LengthLike] = None, fabric_width: Optional[LengthLike] = None,
                    selvage: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                    end_loss: Optional[LengthLike] = None, repeat: Optional[LengthLike] = None,
                    step: Optional[LengthLike] = None, print: Optional[Print] = None,
                    round_panels: Optional[bool] = None) -> List[Backing]:
    """All layouts compared, one row each, in the order of the enum (ask-then-fill; eight rows in this version, later
    versions may know more).

    Keywords: the members of BackingSpec, over those of spec.

    muslin_backing_layouts() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BackingSpec, spec, quilt_width=quilt_width, quilt_length=quilt_length, margin_left=margin_left,
                                     margin_right=margin_right, margin_top=margin_top, margin_bottom=margin_bottom,
                                     fabric_width=fabric_width, selvage=selvage, allowance=allowance, end_loss=end_loss,
                                     repeat=repeat, step=step, print=print, round_panels=round_panels)
    return asked("muslin_backing_layouts", structs.muslin_backing, Backing._read, ctypes.byref(wish))


def backing_panels(layout: BackingLayout, spec: Optional[BackingSpec] = None, *,
                   quilt_width: Optional[LengthLike] = None, quilt_length: Optional[LengthLike] = None,
                   margin_left: Optional[LengthLike] = None, margin_right: Optional[LengthLike] = None,
                   margin_top: Optional[LengthLike] = None, margin_bottom: Optional[LengthLike] = None,
                   fabric_width: Optional[LengthLike] = None, selvage: Optional[LengthLike] = None,
                   allowance: Optional[LengthLike] = None, end_loss: Optional[LengthLike] = None,
                   repeat: Optional[LengthLike] = None, step: Optional[LengthLike] = None,
                   print: Optional[Print] = None, round_panels: Optional[bool] = None) -> List[Panel]:
    """One layout piece by piece, in sewing order across the quilt (ask-then-fill): the cut widths, of the insert its
    cut_length, less 2 q a seam, are exactly the joined size of muslin_backing_layouts().

    Keywords: the members of BackingSpec, over those of spec.

    muslin_backing_panels() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(BackingSpec, spec, quilt_width=quilt_width, quilt_length=quilt_length, margin_left=margin_left,
                                     margin_right=margin_right, margin_top=margin_top, margin_bottom=margin_bottom,
                                     fabric_width=fabric_width, selvage=selvage, allowance=allowance, end_loss=end_loss,
                                     repeat=repeat, step=step, print=print, round_panels=round_panels)
    return asked("muslin_backing_panels", structs.muslin_panel, Panel._read, ctypes.byref(wish),
                 whole(layout, "layout", 32))


def hanging_plan(spec: Optional[HangingSpec] = None, *, quilt_width: Optional[LengthLike] = None,
                 sleeves: Optional[int] = None, inset: Optional[LengthLike] = None, gap: Optional[LengthLike] = None,
                 drop: Optional[LengthLike] = None, ease: Optional[LengthLike] = None, hem: Optional[LengthLike] = None,
                 allowance: Optional[LengthLike] = None, label_width: Optional[LengthLike] = None,
                 label_height: Optional[LengthLike] = None, corner_triangle: Optional[LengthLike] = None,
                 corners: Optional[int] = None) -> Hanging:
    """Hanging sleeve (one, or two with a gap), label, corner triangles.

    Keywords: the members of HangingSpec, over those of spec.

    muslin_hanging_plan() in muslin/finishing.h. Since 1.0.
    """
    wish = merged(HangingSpec, spec, quilt_width=quilt_width, sleeves=sleeves, inset=inset, gap=gap, drop=drop,
                                     ease=ease, hem=hem, allowance=allowance, label_width=label_width,
                                     label_height=label_height, corner_triangle=corner_triangle, corners=corners)
    out_ = new(structs.muslin_hanging)
    call_telling("muslin_hanging_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Hanging._read(out_)


def stripquilt_plan(spec: Optional[StripquiltSpec] = None, *, strips: Optional[int] = None,
                    strips_per_set: Optional[int] = None, segments_per_block: Optional[int] = None,
                    columns: Optional[int] = None, rows: Optional[int] = None, tops: Optional[int] = None,
                    strip_cut: Optional[LengthLike] = None, strip_length: Optional[LengthLike] = None,
                    segment_cut: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                    take_up: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                    resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                    fold_clear: Optional[LengthLike] = None, turning: Optional[Turning] = None,
                    nesting: Optional[Nesting] = None, square_tolerance: Optional[LengthLike] = None,
                    from_one_end: Optional[bool] = None) -> Stripquilt:
    """Plans the quilt.

    Keywords: the members of StripquiltSpec, over those of spec.

    muslin_stripquilt_plan() in muslin/stripquilt.h. Since 1.0.
    """
    wish = merged(StripquiltSpec, spec, strips=strips, strips_per_set=strips_per_set,
                                        segments_per_block=segments_per_block, columns=columns, rows=rows, tops=tops,
                                        strip_cut=strip_cut, strip_length=strip_length, segment_cut=segment_cut,
                                        allowance=allowance, take_up=take_up, end_trim=end_trim,
                                        resquare_loss=resquare_loss, resquare_every=resquare_every,
                                        fold_clear=fold_clear, turning=turning, nesting=nesting,
                                        square_tolerance=square_tolerance, from_one_end=from_one_end)
    out_ = new(structs.muslin_stripquilt)
    call_telling("muslin_stripquilt_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Stripquilt._read(out_)


def stripquilt_strips_needed(spec: Optional[StripquiltSpec] = None, *, strips: Optional[int] = None,
                             strips_per_set: Optional[int] = None, segments_per_block: Optional[int] = None,
                             columns: Optional[int] = None, rows: Optional[int] = None, tops: Optional[int] = None,
                             strip_cut: Optional[LengthLike] = None, strip_length: Optional[LengthLike] = None,
                             segment_cut: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                             take_up: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                             resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                             fold_clear: Optional[LengthLike] = None, turning: Optional[Turning] = None,
                             nesting: Optional[Nesting] = None, square_tolerance: Optional[LengthLike] = None,
                             from_one_end: Optional[bool] = None) -> int:
    """The fewest strips that give the tops wished for, or one when none is: how many to have, or to add to those in
    hand.

    Keywords: the members of StripquiltSpec, over those of spec.

    muslin_stripquilt_strips_needed() in muslin/stripquilt.h. Since 1.1.
    """
    wish = merged(StripquiltSpec, spec, strips=strips, strips_per_set=strips_per_set,
                                        segments_per_block=segments_per_block, columns=columns, rows=rows, tops=tops,
                                        strip_cut=strip_cut, strip_length=strip_length, segment_cut=segment_cut,
                                        allowance=allowance, take_up=take_up, end_trim=end_trim,
                                        resquare_loss=resquare_loss, resquare_every=resquare_every,
                                        fold_clear=fold_clear, turning=turning, nesting=nesting,
                                        square_tolerance=square_tolerance, from_one_end=from_one_end)
    strips_ = ctypes.c_int64()
    call_telling("muslin_stripquilt_strips_needed", ctypes.byref(wish), ctypes.byref(strips_))
    return strips_.value


def stripquilt_groups(spec: Optional[StripquiltSpec] = None, *, strips: Optional[int] = None,
                      strips_per_set: Optional[int] = None, segments_per_block: Optional[int] = None,
                      columns: Optional[int] = None, rows: Optional[int] = None, tops: Optional[int] = None,
                      strip_cut: Optional[LengthLike] = None, strip_length: Optional[LengthLike] = None,
                      segment_cut: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                      take_up: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                      resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                      fold_clear: Optional[LengthLike] = None, turning: Optional[Turning] = None,
                      nesting: Optional[Nesting] = None, square_tolerance: Optional[LengthLike] = None,
                      from_one_end: Optional[bool] = None) -> List[BlockGroup]:
    """Which stacks meet in which blocks, as dealt (ask-then-fill): one row for each run of blocks that take from the
    same stacks, in order, never more rows than sets.

    Keywords: the members of StripquiltSpec, over those of spec.

    muslin_stripquilt_groups() in muslin/stripquilt.h. Since 1.0.
    """
    wish = merged(StripquiltSpec, spec, strips=strips, strips_per_set=strips_per_set,
                                        segments_per_block=segments_per_block, columns=columns, rows=rows, tops=tops,
                                        strip_cut=strip_cut, strip_length=strip_length, segment_cut=segment_cut,
                                        allowance=allowance, take_up=take_up, end_trim=end_trim,
                                        resquare_loss=resquare_loss, resquare_every=resquare_every,
                                        fold_clear=fold_clear, turning=turning, nesting=nesting,
                                        square_tolerance=square_tolerance, from_one_end=from_one_end)
    return asked("muslin_stripquilt_groups", structs.muslin_block_group, BlockGroup._read, ctypes.byref(wish))


def stripquilt_pressing(set: int, spec: Optional[StripquiltSpec] = None, *, strips: Optional[int] = None,
                        strips_per_set: Optional[int] = None, segments_per_block: Optional[int] = None,
                        columns: Optional[int] = None, rows: Optional[int] = None, tops: Optional[int] = None,
                        strip_cut: Optional[LengthLike] = None, strip_length: Optional[LengthLike] = None,
                        segment_cut: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                        take_up: Optional[LengthLike] = None, end_trim: Optional[LengthLike] = None,
                        resquare_loss: Optional[LengthLike] = None, resquare_every: Optional[int] = None,
                        fold_clear: Optional[LengthLike] = None, turning: Optional[Turning] = None,
                        nesting: Optional[Nesting] = None, square_tolerance: Optional[LengthLike] = None,
                        from_one_end: Optional[bool] = None) -> StripquiltPressing:
    """Which way to press all seams of set `set` (from 1), and how many segments its stack gives.

    Keywords: the members of StripquiltSpec, over those of spec.

    muslin_stripquilt_pressing() in muslin/stripquilt.h. Since 1.0.
    """
    wish = merged(StripquiltSpec, spec, strips=strips, strips_per_set=strips_per_set,
                                        segments_per_block=segments_per_block, columns=columns, rows=rows, tops=tops,
                                        strip_cut=strip_cut, strip_length=strip_length, segment_cut=segment_cut,
                                        allowance=allowance, take_up=take_up, end_trim=end_trim,
                                        resquare_loss=resquare_loss, resquare_every=resquare_every,
                                        fold_clear=fold_clear, turning=turning, nesting=nesting,
                                        square_tolerance=square_tolerance, from_one_end=from_one_end)
    pressing_ = ctypes.c_int32()
    segments_ = ctypes.c_int64()
    call_telling("muslin_stripquilt_pressing", ctypes.byref(wish), whole(set, "set"), ctypes.byref(pressing_),
                 ctypes.byref(segments_))
    return StripquiltPressing(SetPressing(pressing_.value), segments_.value)


def piecing_plan(spec: Optional[PiecingSpec] = None, *, sets: Optional[int] = None,
                 strips_per_set: Optional[int] = None, strip_length: Optional[LengthLike] = None,
                 tops: Optional[int] = None, columns: Optional[int] = None, rows: Optional[int] = None,
                 segments_per_block: Optional[int] = None, block_width: Optional[LengthLike] = None,
                 block_height: Optional[LengthLike] = None, allowance: Optional[LengthLike] = None,
                 take_up: Optional[LengthLike] = None) -> Piecing:
    """Length of all seams of strip sets and of tops of blocks.

    Keywords: the members of PiecingSpec, over those of spec.

    muslin_piecing_plan() in muslin/supplies.h. Since 1.0.
    """
    wish = merged(PiecingSpec, spec, sets=sets, strips_per_set=strips_per_set, strip_length=strip_length, tops=tops,
                                     columns=columns, rows=rows, segments_per_block=segments_per_block,
                                     block_width=block_width, block_height=block_height, allowance=allowance,
                                     take_up=take_up)
    out_ = new(structs.muslin_piecing)
    call_telling("muslin_piecing_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Piecing._read(out_)


def thread_plan(spec: Optional[ThreadSpec] = None, *, seam: Optional[LengthLike] = None,
                ratio_above: Optional[int] = None, ratio_below: Optional[int] = None,
                thickness: Optional[LengthLike] = None, stitch_length: Optional[LengthLike] = None,
                bobbin: Optional[LengthLike] = None, spool: Optional[LengthLike] = None,
                method: Optional[ThreadMethod] = None, waste: Optional[int] = None,
                ready_bobbins: Optional[bool] = None) -> Thread:
    """Sewing thread for seams in lockstitch (ISO 4915 type 301), half of it from the needle, half from the bobbin.

    Keywords: the members of ThreadSpec, over those of spec.

    muslin_thread_plan() in muslin/supplies.h. Since 1.0.
    """
    wish = merged(ThreadSpec, spec, seam=seam, ratio_above=ratio_above, ratio_below=ratio_below, thickness=thickness,
                                    stitch_length=stitch_length, bobbin=bobbin, spool=spool, method=method, waste=waste,
                                    ready_bobbins=ready_bobbins)
    out_ = new(structs.muslin_thread)
    call_telling("muslin_thread_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Thread._read(out_)


def stitch_count(length: LengthLike, stitch_length: LengthLike, decimals: int, direction: Direction) -> StitchCount:
    """How many stitches of `stitch_length` (1 .. MUSLIN_SIZE_MAX) lie in `length` (0 .. MUSLIN_SIZE_MAX; an inch is
    8128): thousandths gets length / stitch_length with so many decimals (0 .. 3), rounded as `direction` (enum
    muslin_direction) says, always counted in thousandths; exact, which may be null, becomes 1 when nothing was lost.

    muslin_stitch_count() in muslin/supplies.h. Since 1.0.
    """
    thousandths_ = ctypes.c_int64()
    exact_ = ctypes.c_int32()
    call_telling("muslin_stitch_count", ticks_of(length, "length"), ticks_of(stitch_length, "stitch_length"),
                 whole(decimals, "decimals", 32), whole(direction, "direction", 32), ctypes.byref(thousandths_),
                 ctypes.byref(exact_))
    return StitchCount(thousandths_.value, bool(exact_.value))


def stitch_length(length: LengthLike, thousandths: int, rounding: Optional[RoundingSpec] = None) -> Rounded:
    """The other way round: the stitch of which so many thousandths (1 .. MUSLIN_COUNT_MAX) lie in `length` (0 ..
    MUSLIN_SIZE_MAX), rounded as asked.

    muslin_stitch_length() in muslin/supplies.h. Since 1.0.
    """
    rounding_ = struct_of(RoundingSpec, rounding, "rounding")
    out_ = new(structs.muslin_rounded)
    call_telling("muslin_stitch_length", ticks_of(length, "length"), whole(thousandths, "thousandths"),
                 ctypes.byref(rounding_), ctypes.byref(out_))
    return Rounded._read(out_)


def quilting_lines(spec: Optional[QuiltingSpec] = None, *, width: Optional[LengthLike] = None,
                   length: Optional[LengthLike] = None, spacing: Optional[LengthLike] = None,
                   offset: Optional[LengthLike] = None, outline: Optional[LengthLike] = None,
                   passes: Optional[int] = None, pattern: Optional[QuiltingPattern] = None,
                   start: Optional[QuiltingStart] = None) -> Quilting:
    """Number and length of the lines of quilting on a rectangle.

    Keywords: the members of QuiltingSpec, over those of spec.

    muslin_quilting_lines() in muslin/supplies.h. Since 1.0.
    """
    wish = merged(QuiltingSpec, spec, width=width, length=length, spacing=spacing, offset=offset, outline=outline,
                                      passes=passes, pattern=pattern, start=start)
    out_ = new(structs.muslin_quilting)
    call_telling("muslin_quilting_lines", ctypes.byref(wish), ctypes.byref(out_))
    return Quilting._read(out_)


def weight_plan(spec: Optional[WeightSpec] = None, *, width: Optional[LengthLike] = None,
                length: Optional[LengthLike] = None, binding_length: Optional[LengthLike] = None,
                binding_cut: Optional[LengthLike] = None, top_density: Optional[int] = None,
                batting_density: Optional[int] = None, backing_density: Optional[int] = None,
                binding_density: Optional[int] = None, step: Optional[int] = None, seam_share: Optional[int] = None,
                direction: Optional[Direction] = None) -> Weight:
    """What a quilt weighs, layer by layer, from what its cloth weighs for a square metre (its maker says, or weigh a
    piece of known size).

    Keywords: the members of WeightSpec, over those of spec.

    muslin_weight_plan() in muslin/supplies.h. Since 1.0.
    """
    wish = merged(WeightSpec, spec, width=width, length=length, binding_length=binding_length, binding_cut=binding_cut,
                                    top_density=top_density, batting_density=batting_density,
                                    backing_density=backing_density, binding_density=binding_density, step=step,
                                    seam_share=seam_share, direction=direction)
    out_ = new(structs.muslin_weight)
    call_telling("muslin_weight_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Weight._read(out_)


def density_from_ounces(thousandths: int, direction: Direction) -> int:
    """Ounces for a square yard, in thousandths of an ounce (0 .. MUSLIN_COUNT_MAX), as mg for a square metre, rounded
    as `direction` (enum muslin_direction) says.

    muslin_density_from_ounces() in muslin/supplies.h. Since 1.0.
    """
    density_ = ctypes.c_int64()
    call_telling("muslin_density_from_ounces", whole(thousandths, "thousandths"), whole(direction, "direction", 32),
                 ctypes.byref(density_))
    return density_.value


def mass_in_ounces(mass: int, decimals: int, direction: Direction) -> int:
    """A mass in mg (0 .. MUSLIN_LENGTH_MAX) in ounces with so many decimals (0 .. 3), rounded as `direction` (enum
    muslin_direction) says and counted in thousandths.

    muslin_mass_in_ounces() in muslin/supplies.h. Since 1.0.
    """
    thousandths_ = ctypes.c_int64()
    call_telling("muslin_mass_in_ounces", whole(mass, "mass"), whole(decimals, "decimals", 32),
                 whole(direction, "direction", 32), ctypes.byref(thousandths_))
    return thousandths_.value


def cost_plan(spec: Optional[CostSpec] = None, *, amount: Optional[int] = None, price: Optional[int] = None,
              per: Optional[int] = None, sold: Optional[CostKind] = None,
              direction: Optional[Direction] = None) -> Cost:
    """What one thing costs.

    Keywords: the members of CostSpec, over those of spec.

    muslin_cost_plan() in muslin/supplies.h. Since 1.0.
    """
    wish = merged(CostSpec, spec, amount=amount, price=price, per=per, sold=sold, direction=direction)
    out_ = new(structs.muslin_cost)
    call_telling("muslin_cost_plan", ctypes.byref(wish), ctypes.byref(out_))
    return Cost._read(out_)


def cost_total(rows: Sequence[CostSpec]) -> int:
    """The sum of a list, each row rounded on its own as a bill does it, and the sum not rounded again.

    muslin_cost_total() in muslin/supplies.h. Since 1.0.
    """
    rows_, n_ = rows_of(CostSpec, rows, "rows")
    total_ = ctypes.c_int64()
    call_telling("muslin_cost_total", rows_, ctypes.sizeof(structs.muslin_cost_spec), n_, ctypes.byref(total_))
    return total_.value


def id_sort(id: Id) -> int:
    """The sort of an id (enum muslin_sort; 0 for what is no id) and its number, counted from 1 for each sort in the
    order of making (0 for what is no id).

    muslin_id_sort() in muslin/quilt.h. Since 1.0.
    """
    return int(library.muslin_id_sort(whole(id, "id")))


def id_number(id: Id) -> int:
    """The sort of an id (enum muslin_sort; 0 for what is no id) and its number, counted from 1 for each sort in the
    order of making (0 for what is no id).

    muslin_id_number() in muslin/quilt.h. Since 1.0.
    """
    return int(library.muslin_id_number(whole(id, "id")))


def sewing_label(number: int) -> str:
    """The label of stack `number` (0 .. MUSLIN_COUNT_MAX): A .. Z, then AA, AB and so on, terminated; text out as in
    base.h.

    muslin_sewing_label() in muslin/sewing.h. Since 1.0.
    """
    return words_out("muslin_sewing_label", whole(number, "number"))


def scatter_prints(prints: Integers, touches: Sequence[TouchSpec], given: Optional[Integers] = None,
                   progress: Optional[Progress] = None, spec: Optional[ScatterSpec] = None, *,
                   places: Optional[int] = None, seed: Optional[int] = None,
                   work_limit: Optional[int] = None) -> ScatterPrints:
    """Which print goes where: `prints[i]` says for how many places print i suffices, 0 .. MUSLIN_COUNT_MAX (`kinds` of
    them, 1 .. 2^20), `touches` which places touch (touch_n, 0 .. 2^27; a pair named twice counts twice), `given[p]` a
    print that place p must have, or -1; given may be null.

    Keywords: the members of ScatterSpec, over those of spec.

    muslin_scatter_prints() in muslin/scatter.h. Since 1.0.
    """
    wish = merged(ScatterSpec, spec, places=places, seed=seed, work_limit=work_limit)
    prints_ = integers(prints, "prints")
    touches_, touch_n_ = rows_of(TouchSpec, touches, "touches")
    given_ = places_given(given, "given", wish.places)
    with Told(structs.muslin_progress, progress) as progress_:
        out_ = places_out(wish.places)
        result_ = new(structs.muslin_scattered)
        call_telling("muslin_scatter_prints", ctypes.byref(wish), prints_.numbers, prints_.count, touches_,
                     ctypes.sizeof(structs.muslin_touch_spec), touch_n_, given_, ctypes.byref(ALLOCATOR),
                     progress_.function, None, out_, ctypes.byref(result_))
        return ScatterPrints(tuple(out_[:wish.places]), Scattered._read(result_))


def scatter_blocks(blocks: Sequence[EdgePrintsSpec], progress: Optional[Progress] = None,
                   spec: Optional[ScatterBlocksSpec] = None, *, columns: Optional[int] = None,
                   rows: Optional[int] = None, seed: Optional[int] = None,
                   work_limit: Optional[int] = None) -> ScatterBlocks:
    """Blocks laid out in columns x rows, turned where they may be, so that as few equal prints as possible meet at an
    edge: one row for each place, row by row from the top; n kinds of blocks, 1 .. 2^20.

    Keywords: the members of ScatterBlocksSpec, over those of spec.

    muslin_scatter_blocks() in muslin/scatter.h. Since 1.0.
    """
    wish = merged(ScatterBlocksSpec, spec, columns=columns, rows=rows, seed=seed, work_limit=work_limit)
    blocks_, n_ = rows_of(EdgePrintsSpec, blocks, "blocks")
    with Told(structs.muslin_progress, progress) as progress_:
        result_ = new(structs.muslin_scattered)
        rows_ = asked("muslin_scatter_blocks", structs.muslin_placed_block, PlacedBlock._read, ctypes.byref(wish),
                      blocks_, ctypes.sizeof(structs.muslin_edge_prints_spec), n_, ctypes.byref(ALLOCATOR),
                      progress_.function, None, after=[ctypes.byref(result_)])
        return ScatterBlocks(tuple(rows_), Scattered._read(result_))


def scatter_sets(prints: Integers, sets: int, strips_per_set: int, spec: Optional[ScatterSpec] = None, *,
                 places: Optional[int] = None, seed: Optional[int] = None,
                 work_limit: Optional[int] = None) -> ScatterSets:
    """Strips dealt to sets: `prints[i]` strips of print i (kinds of them), `sets` of `strips_per_set` (1 .. 2^24 each),
    lying in their order in `out` (sets x strips_per_set print numbers, and spec->places must say as many: else
    MUSLIN_ERR_RANGE).

    Keywords: the members of ScatterSpec, over those of spec.

    muslin_scatter_sets() in muslin/scatter.h. Since 1.0.
    """
    wish = merged(ScatterSpec, spec, places=places, seed=seed, work_limit=work_limit)
    prints_ = integers(prints, "prints")
    out_ = places_out(wish.places)
    result_ = new(structs.muslin_scattered)
    call_telling("muslin_scatter_sets", ctypes.byref(wish), prints_.numbers, prints_.count, whole(sets, "sets"),
                 whole(strips_per_set, "strips_per_set"), ctypes.byref(ALLOCATOR), out_, ctypes.byref(result_))
    return ScatterSets(tuple(out_[:wish.places]), Scattered._read(result_))
