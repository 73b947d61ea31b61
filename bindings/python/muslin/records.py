# SPDX-License-Identifier: MIT
"""Specs, which are asked with, and results, which are answered.

Written by generate.py from lib/abi/api.json: change that, not this file.
"""
from dataclasses import dataclass
from typing import Any, Optional, Tuple

from . import _api as structs
from ._length import Length, LengthLike, put_length
from ._records import Spec, warnings_in
from ._values import put, put_sign
from .constants import (BACKING_ROUND_PANELS, BATTING_FIXED, BIAS_BLUNT_ENDS, BORDER_LENGTHWISE, CLOTH_MAY_TURN,
                        FORMAT_BARE, FORMAT_UNICODE, YIELD_FROM_ONE_END, AllowancePolicy, BackingLayoutKind,
                        BorderStyle, Care, CutAgain, CutShape, Direction, Edge, Fold, Grain, Join, Nesting, PanelRole,
                        Pressing, Print, StockKind, Style, Tip, Turning, Unit, UnitKind, UnitMethod, Warning)

__all__ = ["RoundingSpec", "Rounded", "ParseSpec", "Parsed", "FormatSpec", "SeamSpec", "PieceSpec", "Piece", "Row",
           "Calibration", "CarryOnSpec", "PurchaseSpec", "Purchase", "ClothSpec", "ClothPieces", "StripsSpec", "Strips",
           "StockSpec", "StockStrips", "Reference", "YieldSpec", "Yield", "NeedSpec", "Need", "HarvestSpec", "Harvest",
           "PrintRow", "UnitSpec", "UnitPlan", "UnitPiece", "UnitStockSpec", "UnitYield", "SettingSpec", "Setting",
           "BlockSpec", "Block", "RunSpec", "Run", "BorderSpec", "Border", "BindingWidthSpec", "BindingWidth",
           "BindingSpec", "Binding", "BiasSpec", "Bias", "BattingSpec", "Batting", "BackingSpec", "Backing", "Panel",
           "HangingSpec", "Hanging", "StripquiltSpec", "Stripquilt", "BlockGroup", "StockSize", "StripsetShortest",
           "StripsetPrints", "UnitRecipeAt", "StripquiltPressing"]


@dataclass(frozen=True)
class RoundingSpec(Spec):
    """struct muslin_rounding_spec, muslin/length.h

    grid: (initially 1 ticks)
    tolerance: (initially 0)
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

    default_unit: enum muslin_unit, for a number that names none (initially Unit.INCH)
    decimal_sign: '.' or ',' (initially '.')
    """

    _kind = structs.muslin_parse_spec
    _init = "muslin_parse_spec_init"

    default_unit: Optional[Unit] = None
    decimal_sign: Optional[str] = None

    def _put(self, struct: Any) -> None:
        put(struct, "default_unit", self.default_unit)
        put_sign(struct, "decimal_sign", self.decimal_sign)


@dataclass(frozen=True)
class Parsed:
    """struct muslin_parsed, muslin/length.h

    value
    exact: 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards
    unit: of the last part, named or the default
    """

    value: Length
    exact: bool
    unit: Unit

    @classmethod
    def _read(cls, struct: Any) -> "Parsed":
        return cls(value=Length(struct.value), exact=bool(struct.exact), unit=Unit(struct.unit))


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
        struct.flags |= FORMAT_UNICODE if self.unicode else 0
        struct.flags |= FORMAT_BARE if self.bare else 0


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
class Row:
    """struct muslin_row, muslin/seam.h

    pieces
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
    def _read(cls, struct: Any) -> "Row":
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
    per_seam_denominator
    take_up: ... and rounded to the nearest tick, ties up; negative when wide
    effective_numerator: e = (sum of cuts - measured) / (2 seams), exact ...
    effective_denominator
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

    needed
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
        struct.flags |= CLOTH_MAY_TURN if self.may_turn else 0


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
class StockStrips:
    """struct muslin_stock_strips, muslin/fabric.h

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
    def _read(cls, struct: Any) -> "StockStrips":
        return cls(per_piece=int(struct.per_piece), in_hand=int(struct.in_hand),
                   pieces_needed=int(struct.pieces_needed), pieces_missing=int(struct.pieces_missing),
                   strip_length=Length(struct.strip_length), left_over=Length(struct.left_over),
                   shorter_by=Length(struct.shorter_by), warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class Reference:
    """struct muslin_reference, muslin/reference.h

    width: ticks; as in muslin_stock_spec, the longer side of a strip or a fat quarter
    length: ticks; 0 where the table has none
    count: pieces sold together, 1 for a single one; 0 where the table has none
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

    usable_length: L, of the shortest strip in the set (initially 40 in)
    segment_cut: a, 1 or more (initially 0)
    end_trim: t, taken off each end to square it (initially 0)
    resquare_loss: r, lost each time the cut edge is squared again ... (initially 0)
    resquare_every: ... after every m cuts; 0 for never (initially 0)
    fold_clear: z, kept free of cuts in the middle; must be 0 with FROM_ONE_END (initially 0)
    from_one_end: the flag MUSLIN_YIELD_FROM_ONE_END (initially False)
    """

    _kind = structs.muslin_yield_spec
    _init = "muslin_yield_spec_init"

    usable_length: Optional[LengthLike] = None
    segment_cut: Optional[LengthLike] = None
    end_trim: Optional[LengthLike] = None
    resquare_loss: Optional[LengthLike] = None
    resquare_every: Optional[int] = None
    fold_clear: Optional[LengthLike] = None
    from_one_end: Optional[bool] = None

    def _put(self, struct: Any) -> None:
        put_length(struct, "usable_length", self.usable_length)
        put_length(struct, "segment_cut", self.segment_cut)
        put_length(struct, "end_trim", self.end_trim)
        put_length(struct, "resquare_loss", self.resquare_loss)
        put(struct, "resquare_every", self.resquare_every)
        put_length(struct, "fold_clear", self.fold_clear)
        struct.flags |= YIELD_FROM_ONE_END if self.from_one_end else 0


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
    """

    segments: int
    per_end: int
    resquarings: int
    least_length: Length
    left_over: Length
    shorter_by: Length
    longer_for_more: Length
    warnings: Tuple[Warning, ...]

    @classmethod
    def _read(cls, struct: Any) -> "Yield":
        return cls(segments=int(struct.segments), per_end=int(struct.per_end), resquarings=int(struct.resquarings),
                   least_length=Length(struct.least_length), left_over=Length(struct.left_over),
                   shorter_by=Length(struct.shorter_by), longer_for_more=Length(struct.longer_for_more),
                   warnings=warnings_in(struct.warnings))


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
class PrintRow(Spec):
    """struct muslin_print_row, muslin/stripset.h

    in_hand: strips of this print
    per_set: strips of it in each set, 0 or more
    left: out: in_hand - sets x per_set, or what is missing, negative, when sets were asked for
    """

    _kind = structs.muslin_print_row

    in_hand: int = 0
    per_set: int = 0
    left: int = 0

    def _put(self, struct: Any) -> None:
        put(struct, "in_hand", self.in_hand)
        put(struct, "per_set", self.per_set)
        put(struct, "left", self.left)

    @classmethod
    def _read(cls, struct: Any) -> "PrintRow":
        return cls(in_hand=int(struct.in_hand), per_set=int(struct.per_set), left=int(struct.left))


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
    trim: OVERSIZE: room to trim each unit, beyond the customary size; else 0 (initially 0)
    grid: cut sizes are rounded to it; 1 .. MUSLIN_UNIT_MAX (initially 1/8 in)
    tolerance: below grid (initially 0)
    units: wanted, of the first hand (initially 1)
    mirrored: wanted, of the other hand; 0 for kinds without hands (initially 0)
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
    trim: Optional[LengthLike] = None
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
        put_length(struct, "trim", self.trim)
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

    finished_width: nearest tick where it is irrational
    finished_height
    unfinished_width: trim the sewn unit to this: finished + E, nearest tick; 0 for a single patch with slanted sides,
        which is not trimmed
    unfinished_height: ... finished + E
    units_per_recipe
    recipes: for units, up
    mirrored_recipes: for the other hand, up
    spare_units: of the recipes, beyond both wishes
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
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    units_per_recipe: int
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

    @classmethod
    def _read(cls, struct: Any) -> "UnitPlan":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   units_per_recipe=int(struct.units_per_recipe), recipes=int(struct.recipes),
                   mirrored_recipes=int(struct.mirrored_recipes), spare_units=int(struct.spare_units),
                   pieces=int(struct.pieces), cut_area=int(struct.cut_area), finished_area=int(struct.finished_area),
                   allowance_area=int(struct.allowance_area), waste_area=int(struct.waste_area),
                   seam_offset=Length(struct.seam_offset), bonus_units=int(struct.bonus_units),
                   bonus_unfinished=Length(struct.bonus_unfinished), bias_outside=bool(struct.bias_outside),
                   warnings=warnings_in(struct.warnings))


@dataclass(frozen=True)
class UnitPiece:
    """struct muslin_unit_piece, muslin/unit.h

    cut_width: of the rectangle; of a strip shape, its extent along the strip, up to a tick
    cut_height: of the rectangle; height of the strip
    surplus_width: cut - exact need, down to a tick; negative: below the need
    surplus_height
    pitch: along a strip: each further `gives` pieces take this much, up to a tick
    count: of these, for one recipe
    total: ... for all recipes of this row's hand
    region: of the unit
    shape: enum muslin_cut_shape
    again: enum muslin_cut_again
    gives: pieces from each: 1, 2 or 4
    grain: enum muslin_grain, of the pieces in the end
    hand: 1: the first hand or none; 2: mirrored
    """

    cut_width: Length
    cut_height: Length
    surplus_width: Length
    surplus_height: Length
    pitch: Length
    count: int
    total: int
    region: int
    shape: CutShape
    again: CutAgain
    gives: int
    grain: Grain
    hand: int

    @classmethod
    def _read(cls, struct: Any) -> "UnitPiece":
        return cls(cut_width=Length(struct.cut_width), cut_height=Length(struct.cut_height),
                   surplus_width=Length(struct.surplus_width), surplus_height=Length(struct.surplus_height),
                   pitch=Length(struct.pitch), count=int(struct.count), total=int(struct.total),
                   region=int(struct.region), shape=CutShape(struct.shape), again=CutAgain(struct.again),
                   gives=int(struct.gives), grain=Grain(struct.grain), hand=int(struct.hand))


@dataclass(frozen=True)
class UnitStockSpec(Spec):
    """struct muslin_unit_stock_spec, muslin/unit.h

    width: the longer side of a strip; 1 .. MUSLIN_SIZE_MAX (initially 5 in)
    height: cut width of a strip; 1 .. MUSLIN_SIZE_MAX (initially 5 in)
    per_region: how many there are for each region of the unit; 0 .. MUSLIN_COUNT_MAX (initially 1)
    end_loss: taken off the width of each for squaring; 0 .. MUSLIN_SIZE_MAX (initially 0)
    finished_grid: finished sizes tried: multiples of this, 1 .. MUSLIN_UNIT_MAX (initially 1/8 in)
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

    finished_width: nearest tick where it is irrational
    finished_height
    unfinished_width: as in struct muslin_unit_plan: trim to this
    unfinished_height
    cut_spare: of the stock's height, beyond the highest piece cut
    recipes: that the stock gives
    units
    kind
    method
    """

    finished_width: Length
    finished_height: Length
    unfinished_width: Length
    unfinished_height: Length
    cut_spare: Length
    recipes: int
    units: int
    kind: int
    method: int

    @classmethod
    def _read(cls, struct: Any) -> "UnitYield":
        return cls(finished_width=Length(struct.finished_width), finished_height=Length(struct.finished_height),
                   unfinished_width=Length(struct.unfinished_width), unfinished_height=Length(struct.unfinished_height),
                   cut_spare=Length(struct.cut_spare), recipes=int(struct.recipes), units=int(struct.units),
                   kind=int(struct.kind), method=int(struct.method))


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

    blocks
    turned: of them, turned: half of all, down, unless none is
    finished_width: of the top without borders
    finished_length
    unfinished_width: finished + 2 s + u
    unfinished_length
    block_seams: seams that join blocks into rows: rows x (columns - 1)
    row_seams: seams that join the rows: rows - 1
    """

    blocks: int
    turned: int
    finished_width: Length
    finished_length: Length
    unfinished_width: Length
    unfinished_length: Length
    block_seams: int
    row_seams: int

    @classmethod
    def _read(cls, struct: Any) -> "Setting":
        return cls(blocks=int(struct.blocks), turned=int(struct.turned), finished_width=Length(struct.finished_width),
                   finished_length=Length(struct.finished_length), unfinished_width=Length(struct.unfinished_width),
                   unfinished_length=Length(struct.unfinished_length), block_seams=int(struct.block_seams),
                   row_seams=int(struct.row_seams))


@dataclass(frozen=True)
class BlockSpec(Spec):
    """struct muslin_block_spec, muslin/setting.h

    segment_cut: a, across the block; 1 or more (initially 0)
    set_unfinished: unfinished width of the strip set: along the segment; 1 or more (initially 0)
    segments: (initially 2)
    allowance: (initially 1/4 in)
    take_up: (initially 0)
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
    finished_width
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
    loss_per_join
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
    allowance: (initially 1/4 in)
    take_up: (initially 0)
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
        struct.flags |= BORDER_LENGTHWISE if self.lengthwise else 0


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
    finished_width
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
class BindingWidthSpec(Spec):
    """struct muslin_binding_width_spec, muslin/finishing.h

    fold: enum muslin_fold (initially Fold.DOUBLE)
    seam: s, from the raw edge of the binding to its seam; an allowance (initially 1/4 in)
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
    seam: Optional[LengthLike] = None
    front: Optional[LengthLike] = None
    thickness: Optional[LengthLike] = None
    back: Optional[LengthLike] = None
    turn_under: Optional[LengthLike] = None
    binding_cut: Optional[LengthLike] = None
    uneven_limit: Optional[LengthLike] = None

    def _put(self, struct: Any) -> None:
        put(struct, "fold", self.fold)
        put_length(struct, "seam", self.seam)
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
        struct.flags |= BIAS_BLUNT_ENDS if self.blunt_ends else 0


@dataclass(frozen=True)
class Bias:
    """struct muslin_bias, muslin/finishing.h

    rounds: of the tube; for separate strips: how many strips
    joins: that take 2 sqrt 2 s off the run each: rounds - 1; 0 without a round
    length: of bias strip obtained, down to a tick; 0 if none
    square: side of the square to cut (least square), else 0
    area_rule: sqrt(wanted x w), nearest tick (least square), else 0: the published rule, a lower bound only
    spare: length - wanted (least square), else 0
    """

    rounds: int
    joins: int
    length: Length
    square: Length
    area_rule: Length
    spare: Length

    @classmethod
    def _read(cls, struct: Any) -> "Bias":
        return cls(rounds=int(struct.rounds), joins=int(struct.joins), length=Length(struct.length),
                   square=Length(struct.square), area_rule=Length(struct.area_rule), spare=Length(struct.spare))


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
        struct.flags |= BATTING_FIXED if self.fixed else 0


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
    seam: q, allowance of the backing's seams (initially 1/2 in)
    end_trim: added to each panel's length, for squaring (initially 0)
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
    seam: Optional[LengthLike] = None
    end_trim: Optional[LengthLike] = None
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
        put_length(struct, "seam", self.seam)
        put_length(struct, "end_trim", self.end_trim)
        put_length(struct, "repeat", self.repeat)
        put_length(struct, "step", self.step)
        put(struct, "print", self.print)
        struct.flags |= BACKING_ROUND_PANELS if self.round_panels else 0


@dataclass(frozen=True)
class Backing:
    """struct muslin_backing, muslin/finishing.h

    layout: enum muslin_backing_layout_kind
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

    layout: BackingLayoutKind
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
        return cls(layout=BackingLayoutKind(struct.layout), possible=bool(struct.possible), best=bool(struct.best),
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
    strips_per_set: (initially 6)
    segments_per_block: 1 .. MUSLIN_BLOCK_SEGMENTS_MAX (initially 2)
    columns: of blocks (initially 1)
    rows: (initially 1)
    tops: wanted; 0 for as many as the strips give (initially 0)
    strip_cut: cut width of a strip, 1 or more (initially 2 1/2 in)
    usable_length: of the shortest strip (initially 40 in)
    segment_cut: 0 for the cut that makes the block square (initially 0)
    allowance: s (initially 1/4 in)
    take_up: u (initially 0)
    end_trim: as in muslin_yield_spec (initially 0)
    resquare_loss: (initially 0)
    resquare_every: (initially 0)
    fold_clear: (initially 0)
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
    usable_length: Optional[LengthLike] = None
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
        put_length(struct, "usable_length", self.usable_length)
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
        struct.flags |= YIELD_FROM_ONE_END if self.from_one_end else 0


@dataclass(frozen=True)
class Stripquilt:
    """struct muslin_stripquilt, muslin/stripquilt.h

    set_unfinished: width of a strip set
    set_finished
    strip_finished: what is seen of one strip
    segment_cut
    segment_finished
    segments_per_set
    segments_per_end
    resquarings: a set
    strip_least: the shortest strip that gives as many segments
    strip_shorter_by: how much shorter strips may be before a segment is lost
    strip_longer_for_more: how much longer they must be to give more
    strip_left_over: of each set, fold included
    block_unfinished_width
    block_unfinished_height
    block_finished_width
    block_finished_height
    blocks_per_top
    blocks_turned: in each top
    top_finished_width
    top_finished_length
    top_unfinished_width
    top_unfinished_length
    sets_in_hand: that the strips make
    tops_in_hand: that those give
    tops: planned: as wished, or all
    sets: to sew for them: one stack of segments each
    strips_used
    strips_left
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
    warnings: MUSLIN_WARN_NO_SLACK, _NEST_CONFLICT, _SET_REPEATS, _SMALL_QUILT
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
    blocks
    segments: members of `sets` in use
    turned: bit j: segment j, from 0, is turned end for end
    not_nesting: bit j: segments j and j + 1 do not nest
    repeats: 1 when a set occurs twice in each of these blocks
    first_pressing: enum muslin_pressing: the way segment 0 ends up pressed, turning counted; from there the segments
        alternate where they nest
    sets: numbers of the sets, from 1; 0 behind the last
    """

    first_block: int
    blocks: int
    segments: int
    turned: int
    not_nesting: int
    repeats: bool
    first_pressing: Pressing
    sets: Tuple[int, ...]

    @classmethod
    def _read(cls, struct: Any) -> "BlockGroup":
        return cls(first_block=int(struct.first_block), blocks=int(struct.blocks), segments=int(struct.segments),
                   turned=int(struct.turned), not_nesting=int(struct.not_nesting), repeats=bool(struct.repeats),
                   first_pressing=Pressing(struct.first_pressing), sets=tuple(struct.sets))


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

    rows: Tuple[PrintRow, ...]
    sets: int
    scarcest: int


@dataclass(frozen=True)
class UnitRecipeAt:
    """What unit_recipe_at() answers."""

    kind: int
    method: int


@dataclass(frozen=True)
class StripquiltPressing:
    """What stripquilt_pressing() answers."""

    pressing: Pressing
    segments: int
