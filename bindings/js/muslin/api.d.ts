// The types of the library, with the words of its headers.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT

import type { Filled, Formatted, Handle, Id, Length, LengthLike, LengthsLike, Progress, Whole,
    WholeNumbers } from "./muslin.js";
import { MuslinError } from "./muslin.js";

/** enum muslin_status_code, muslin/base.h */
export type Status =
    | "ok"
    /** a pointer that must be given is null */
    | "null"
    /** a struct's size is 0, below the first published one, or above 4096 */
    | "structSize"
    /** bytes behind the members this library knows are not zero */
    | "structTail"
    /** a flag this library does not know */
    | "flags"
    /** a value that is none of the listed choices */
    | "choice"
    /** an argument below its least or above its greatest value */
    | "range"
    /** the result would lie outside the range of its type */
    | "overflow"
    /** a divisor is zero */
    | "divideByZero"
    /** the caller's buffer or array is too small; the needed size was written */
    | "buffer"
    /** a row number at or past the end of a table */
    | "index"
    /** the text holds no number */
    | "textEmpty"
    /** something stands where a number or a unit should */
    | "textSyntax"
    /** a whole length, then something more */
    | "textTrailing"
    /** a word that is no unit of length */
    | "textUnit"
    /** the other decimal sign than the one asked for */
    | "textDecimal"
    /** a fraction over zero */
    | "textZeroDenominator"
    /** not valid UTF-8 */
    | "textEncoding"
    /** the seams eat the whole piece: nothing would be seen of it */
    | "seamTooWide"
    /** a quarter turn was asked of a block that is not square */
    | "notSquare"
    /** the stock gives not even one piece, so no amount of it is enough */
    | "noYield"
    /** the stock in hand does not suffice */
    | "notEnough"
    /** no listed size or layout covers what is asked */
    | "noFit"
    /** an allocator returned nothing */
    | "noMemory"
    /** a customary addition is below what the geometry needs */
    | "customary"
    /** this kind of unit is not made by that method */
    | "method"
    /** no such shape: corners missing, edges that cross, an impossible angle or arc */
    | "shape"
    /** the pieces leave a gap in the outline, overlap, or stick out */
    | "notTiled"
    /** the work, or what is stored, would be more than the caller allows */
    | "workLimit"
    /** an id of another quilt, of another sort, or of nothing */
    | "foreign";

/** enum muslin_argument, muslin/base.h */
export type Argument =
    | "none"
    | "text"
    | "buffer"
    | "output"
    | "spec"
    | "rows"
    | "rowSize"
    | "length"
    | "otherLength"
    | "factor"
    | "divisor"
    | "ratio"
    | "grid"
    | "tolerance"
    | "direction"
    | "unit"
    | "decimalSign"
    | "style"
    | "denominator"
    | "decimals"
    | "area"
    | "index"
    | "table"
    | "seamAllowance"
    | "takeUp"
    | "finished"
    | "unfinished"
    | "cut"
    | "pieces"
    | "seams"
    | "measured"
    | "seamError"
    | "usableWidth"
    | "labelledWidth"
    | "selvage"
    | "shrinkage"
    | "extra"
    | "extraShare"
    | "step"
    | "clothLength"
    | "endLoss"
    | "edge"
    | "pinkDepth"
    | "careState"
    | "printDirection"
    | "stripLength"
    | "stripCut"
    | "strips"
    | "stripsPerSet"
    | "stripsPerBundle"
    | "segmentCut"
    | "segments"
    | "segmentsPerBlock"
    | "segmentsPerSet"
    | "endTrim"
    | "resquareLoss"
    | "resquareEvery"
    | "foldClear"
    | "blockWidth"
    | "blockHeight"
    | "blocks"
    | "columns"
    | "quiltRows"
    | "tops"
    | "turning"
    | "pressing"
    | "quiltWidth"
    | "quiltLength"
    | "borderWidth"
    | "borderStyle"
    | "join"
    | "joinLoss"
    | "mitreExtra"
    | "margin"
    | "fabricWidth"
    | "repeat"
    | "layout"
    | "fold"
    | "bindingCut"
    | "bindingFront"
    | "bindingBack"
    | "thickness"
    | "turnUnder"
    | "perimeter"
    | "corners"
    | "biasLength"
    | "sleeveDrop"
    | "sleeves"
    | "inset"
    | "cornerTriangle"
    | "label"
    | "spare"
    | "perSet"
    | "inHand"
    | "stockKind"
    | "squareTolerance"
    | "sets"
    | "unitKind"
    | "method"
    | "policy"
    | "halfAddition"
    | "quarterAddition"
    | "trim"
    | "tip"
    | "corner"
    | "units"
    | "height"
    | "motifs"
    | "layers"
    | "stacks"
    | "stacksPerStrip"
    | "prints"
    | "cutError"
    | "quiltingLoss"
    | "governingRule"
    | "stitchLength"
    | "stitches"
    | "waste"
    | "bobbin"
    | "spool"
    | "spacing"
    | "offset"
    | "pattern"
    | "start"
    | "passes"
    | "density"
    | "mass"
    | "amount"
    | "amountKind"
    | "price"
    | "pricePer"
    | "mattressWidth"
    | "mattressLength"
    | "mattressDepth"
    | "floorHeight"
    | "drop"
    | "dropRule"
    | "pillowTuck"
    | "footCorner"
    | "sashWidth"
    | "settingKind"
    | "parity"
    | "rank"
    | "best"
    | "workLimit"
    | "triangleHeight"
    | "hand"
    | "centreWidth"
    | "centreHeight"
    | "logWidth"
    | "rounds"
    | "logOrder"
    | "logSide"
    | "logTurn"
    | "roundKind"
    | "roundCorner"
    | "unitRepeat"
    | "copingMost"
    | "spacers"
    | "spacerLeast"
    | "diagonal"
    | "runs"
    | "setOff"
    | "trimRoom"
    | "settingLayout"
    | "edgeStyle"
    | "firstBlock"
    | "cornerRow"
    | "piece"
    | "cornerTip"
    | "place"
    | "centre"
    | "radius"
    | "curve"
    | "grain"
    | "sides"
    | "measure"
    | "quarterTurns"
    | "fabric"
    | "node"
    | "depth"
    | "children"
    | "axis"
    | "most"
    | "tag"
    | "darkness"
    | "stripPiecing"
    | "press"
    | "cells"
    | "value"
    | "ease"
    | "stage"
    | "places"
    | "touch"
    | "name"
    | "allocator"
    | "sum"
    | "frame"
    | "prefer"
    | "quilt"
    | "fabrics"
    | "sort"
    | "kind"
    | "mirrored"
    | "blankKind"
    | "runIn"
    | "priority"
    | "straightening"
    | "stockSide"
    | "stockCost"
    | "stockRows"
    | "cutplan"
    | "proofCase"
    | "leastSide"
    | "widths"
    | "sparePieces"
    | "stockCount"
    | "longPieces"
    | "yardage"
    | "pieceWidth"
    | "pieceLength"
    | "leastPart";

/** enum muslin_warning, muslin/base.h */
export type Warning =
    /** a yield stands exactly on its edge: any shorter and a piece is lost */
    | "noSlack"
    /** washed and unwashed fabric meet in one top */
    | "mixedWash"
    /** small pre-cuts were washed: they fray, shrink and lose their size */
    | "precutWashed"
    /** a print with a direction lies turned in some places */
    | "printTurned"
    /** the back shows far more or less binding than the front */
    | "bindingUneven"
    /** diagonal joins put bias edges into a border, which stretches */
    | "diagonalStretch"
    /** some pairs of segments cannot nest without turning one of them */
    | "nestConflict"
    /** too few sets: some block holds two segments of one set */
    | "setRepeats"
    /** of a size used around infants: keep it out of their sleep space */
    | "smallQuilt"
    /** the binding does not reach round to cover its own seam on the back */
    | "backTooNarrow"
    /** pinked and straight edges meet: align the same point throughout */
    | "mixedEdges"
    /** strips of unequal usable length share the shortest */
    | "mixedWidths"
    /** an outside edge lies on the bias and stretches */
    | "biasEdge"
    /** a size does not lie on the ruler's grid */
    | "offGrid"
    /** a size was rounded below what the geometry needs */
    | "belowExact"
    /** a piece is longer than its fabric is wide */
    | "longerThanWidth";

/** enum muslin_direction, muslin/length.h */
export type Direction =
    /** towards +infinity */
    | "up"
    /** towards -infinity */
    | "down"
    /** to the nearest; ties upwards */
    | "nearest";

/** enum muslin_length_unit, muslin/length.h */
export type LengthUnit =
    | "inch"
    | "foot"
    | "yard"
    | "mm"
    | "cm"
    | "m";

/** enum muslin_style, muslin/length.h */
export type Style =
    /** 2 1/2 in */
    | "inchFraction"
    /** 2.5 in */
    | "inchDecimal"
    /** 1 3/8 yd */
    | "yardFraction"
    /** 63.5 mm */
    | "mm"
    /** 6.35 cm */
    | "cm";

/** enum muslin_allowance_policy, muslin/seam.h */
export type AllowancePolicy =
    /** what the geometry of the seams asks for, and no more */
    | "exact"
    /** the trade's round figures, or the caller's; refused where they are too small */
    | "customary"
    /** the customary figures and some room to trim away after sewing */
    | "oversize";

/** enum muslin_governing_rule, muslin/shrinkage.h */
export type GoverningRule =
    /** closely quilted: the layers go where the batting goes */
    | "batting"
    | "fabric"
    /** on the safe side where the quilt must not end too small */
    | "larger"
    | "smaller";

/** enum muslin_governing_source, muslin/shrinkage.h */
export type GoverningSource =
    | "batting"
    | "fabric"
    /** larger or smaller was asked, and they are alike */
    | "both";

/** enum muslin_edge, muslin/fabric.h */
export type Edge =
    | "straight"
    /** zigzag edges, the stated size measured from tip to tip */
    | "pinkedTips"
    /** ... from valley to valley */
    | "pinkedValleys";

/** enum muslin_care, muslin/fabric.h */
export type Care =
    | "unwashed"
    | "washed";

/** enum muslin_print, muslin/fabric.h */
export type Print =
    /** looks the same in every direction */
    | "none"
    /** upright or upside down alike, along the cloth */
    | "twoWay"
    /** has a top, along the cloth */
    | "oneWay"
    /** stripes that run with the selvage */
    | "stripeAlong"
    /** stripes that run from selvage to selvage */
    | "stripeAcross";

/** enum muslin_stock_kind, muslin/fabric.h */
export type StockKind =
    | "yardage"
    | "strip"
    | "square"
    | "fatQuarter"
    | "fatEighth";

/** enum muslin_table, muslin/reference.h */
export type Table =
    /** packaged batting, in this version smallest first: width, length */
    | "batting"
    /** usual pre-cuts: cut width across, cut length along, pieces sold together */
    | "precut"
    /** usable widths people plan with, in this version smallest first: width */
    | "fabricWidth"
    /** mattresses: width, length */
    | "mattress"
    /** what the law fixes for a full-size crib: width, length; a thickness as width */
    | "crib"
    /** what a quilt is longer for tucking under pillows: width */
    | "pillowTuck"
    /** depths of mattresses, least as width and greatest as length; what a drop adds */
    | "drop"
    /** fractions of a yard and of a metre, in this version smallest first: width */
    | "yardFraction"
    /** usual lengths of a stitch: width */
    | "stitch"
    /** behind cautions: sizes, or an age in months as count; see each row's note */
    | "caution"
    /** packaged batting where other lists disagree with MUSLIN_TABLE_BATTING; never chosen by muslin_batting_plan() */
    | "battingOther";

/** enum muslin_curve, muslin/shape.h */
export type Curve =
    | "straight"
    /** an arc that bulges out of its piece: counter-clockwise round its centre */
    | "convex"
    /** an arc that bulges into its piece: clockwise round its centre */
    | "concave";

/** enum muslin_corner_tip, muslin/shape.h */
export type CornerTip =
    | "sharp"
    | "blunt"
    | "trimArriving"
    | "trimLeaving";

/** enum muslin_polygon_measure, muslin/shape.h */
export type PolygonMeasure =
    | "side"
    /** from a side straight across to the opposite side, of a triangle to the corner */
    | "flats"
    /** between the two corners farthest apart; of a triangle its side */
    | "corners"
    /** from the centre to a corner */
    | "centre";

/** enum muslin_unit_kind, muslin/unit.h */
export type UnitKind =
    /** one patch; W, H (0: a square). Region 1 */
    | "rectangle"
    /** a square of two triangles; W. Regions 1 and 2 */
    | "halfSquare"
    /** a square of four triangles, two fabrics facing; W. Regions 1 and 2 */
    | "quarterSquare"
    /**
     * one half (region 1) and two quarters (2, 3); W. Has hands: the same pieces make both, and TWO_AT_A_TIME always
     * two of each
     */
    | "splitQuarter"
    /** a goose (1) between two triangles (2); W, H = W / 2 (or 0) */
    | "flyingGeese"
    /** a square on its point (1) and four corners (2); W */
    | "squareInSquare"
    /** a rectangle (1) that loses its corners (2); W, H (0: square), corner */
    | "snowball"
    /** a rectangle of two triangles (1, 2); W, H. Has hands, cut each for itself */
    | "halfRectangle"
    /** an equilateral triangle; H, its height. finished_width: its side */
    | "triangle60"
    /**
     * a 60 degree diamond; H, between two parallel sides. finished_width: its side, not the extent, which is half as
     * much again
     */
    | "diamond60"
    /** a 45 degree diamond; H, between two parallel sides. finished_width: its side */
    | "diamond45"
    /** H, from flat to flat. finished_width: from point to point */
    | "hexagon"
    /** H, half of flat to flat. finished_width: its long side */
    | "halfHexagon"
    /** ends at 45 degrees; W, the long side, and H; W at least 2 H */
    | "trapezoid"
    /** a regular octagon (1) and its four corners (2); W */
    | "octagon"
    /** eight diamonds (1), four squares and four triangles (2), set in; W */
    | "eightPointedStar"
    /** eight wedges, in turn 1 and 2, and four corners (3); W */
    | "kaleidoscope"
    /**
     * a slice at 45 degrees from a strip set; W, across the slice, square to its long edges, not along the set; H, of
     * the set. Has hands, cut each for itself
     */
    | "slantedSlice";

/** enum muslin_unit_method, muslin/unit.h */
export type UnitMethod =
    /** each piece cut by itself; triangles from squares cut on the diagonal */
    | "pieces"
    /** two squares sewn on both sides of a drawn diagonal */
    | "twoAtATime"
    /** two squares sewn all round and cut on both diagonals: bias outside */
    | "fourAllRound"
    /** two squares sewn from middle to middle of the sides, cut into four squares */
    | "fourMidpoints"
    /** two squares sewn on both sides of both diagonals, cut into eight */
    | "eightAtATime"
    /** geese: one large square and four small ones */
    | "fourAtATime"
    /** squares sewn on their diagonal to a corner, folded back */
    | "flippedCorners"
    /** triangles, diamonds and the like cut from a strip of one height */
    | "strips"
    /** half-squares cut on point along the seam of two strips */
    | "biasStrips";

/** enum muslin_tip, muslin/unit.h */
export type Tip =
    /** the whole raw point */
    | "sharp"
    /** cut off level with the allowance, as many rulers do: the strip is H + E high */
    | "blunt";

/** enum muslin_cut_shape, muslin/unit.h */
export type CutShape =
    | "rectangle"
    /** from a strip, alternately up and down; `pitch` holds `gives` of them */
    | "triangles"
    /** from a strip, by parallel slanted cuts as far apart as the strip is high as cut */
    | "diamonds"
    | "hexagons"
    /** from a strip, alternately up and down */
    | "trapezoids"
    /** from a strip, alternately up and down */
    | "wedges"
    /** a square that loses four corners */
    | "octagons"
    /** from a strip set, by parallel cuts at 45 degrees */
    | "slices";

/** enum muslin_cut_again, muslin/unit.h */
export type CutAgain =
    | "no"
    /** once on the diagonal: two pieces */
    | "once"
    /** on both diagonals: four pieces */
    | "twice";

/** enum muslin_grain, muslin/unit.h */
export type Grain =
    /** on all edges */
    | "allEdges"
    /** a triangle's short sides; its long side is bias */
    | "shortEdges"
    /** a triangle's long side; its short sides are bias */
    | "longEdge"
    /** the edges that lay along the strip; the slanted ones are bias */
    | "stripEdges";

/** enum muslin_hand, muslin/unit.h */
export type Hand =
    /** as the kinds say, and all that have no hands */
    | "first"
    | "mirrored";

/** enum muslin_stage, muslin/unit.h */
export type Stage =
    /** what is seen of a patch: the finished patches fill the unit without gap or overlap */
    | "finished"
    /** the patch with e = E / 2 outside each edge: raw patches overlap by their seams */
    | "raw";

/** enum muslin_unit_step_kind, muslin/unit.h */
export type UnitStepKind =
    /** draw a diagonal on the back */
    | "markLine"
    /** draw both diagonals */
    | "markBoth"
    /** draw lines from middle to middle of neighbouring sides */
    | "markMiddles"
    /** draw a diagonal across the seam of a half-square */
    | "markAcross"
    /** mark where the seam lines cross at each corner, `measure` in from both edges */
    | "markCorners"
    /** lay one on the other, right sides together */
    | "pair"
    /** lay two half-squares together, fabrics opposite, seams locked */
    | "pairHalves"
    /** lay a small square on one of two opposite corners */
    | "pairCorner"
    /** lay two small squares on opposite corners, overlapping in the middle */
    | "pairOpposite"
    /** sew on the drawn line */
    | "onLine"
    /** sew on both sides of the line, `measure` from it */
    | "beside"
    /** sew round all edges, `measure` from them */
    | "round"
    /** cut on the drawn line */
    | "cutApart"
    /** cut through the middle both ways */
    | "cutSquares"
    /** cut on both diagonals */
    | "cutDiagonals"
    /** cut the corner off, `measure` beyond the seam */
    | "trimCorner"
    /** fold the piece back over its seam and press */
    | "foldBack"
    | "pressOpen"
    /** press the seam towards `region` */
    | "pressTo"
    /** sew edge to edge, along one long edge */
    | "join"
    /** sew two pieces together along their long sides */
    | "joinLong"
    /** ... along short sides, the same fabric always on the same side */
    | "joinShort"
    /** sew a triangle's long side to a goose's short side, even at the foot */
    | "joinPoint"
    /** sew a triangle's long side to one of two opposite sides, dog-ears alike */
    | "joinCentred"
    /** to the goose's other short side */
    | "joinAgain"
    /** sew the parts together in pairs, seams meeting in the middle */
    | "joinParts"
    /** set a square in, each side from the mark outwards */
    | "setIn"
    /** sew from the raw edge in the middle outwards and stop at the mark */
    | "partial"
    /**
     * cut across the strip by parallel cuts at `angle`, `measure` apart: for diamonds as far as the strip is wide as
     * cut
     */
    | "cutSlanted"
    /** cut from the strip alternately up and down, `angle` from its edge */
    | "cutTurning"
    /**
     * octagon: cut the corners off the square from marks `from_corner` along both edges, so that each edge is `measure`
     * as cut
     */
    | "cutToShape"
    /** cut squares on point, `measure` wide, their diagonal on the seam */
    | "cutOnPoint"
    /** trim to `measure` by `measure_height`; the seam runs from corner to corner */
    | "trimTo"
    /** lay the strips together that the pieces are cut from, right sides together */
    | "pairStrips"
    /** as MARK_ACROSS, on each half-square */
    | "markAcrossEach"
    /** mark where the seam lines cross at both wide-angled corners of a diamond */
    | "markWide"
    /** ... at one right-angled corner, the one to be set in */
    | "markInner"
    /** lay each half-square on a square cut `measure` */
    | "pairEachHalf"
    /** lay a small square on one of the two corners that are left */
    | "pairCornerLeft"
    /** geese: lay a small square on the large square's corner that is left */
    | "pairLastCorner"
    /** geese: lay a square on one end, its line running down and outwards */
    | "pairEnd"
    /** ... on the other end of the same long edge, its line likewise */
    | "pairOtherEnd"
    /** sew on both sides of both lines, `measure` from them */
    | "besideBoth"
    /** cut each of the four squares apart on its line */
    | "cutEachApart"
    /** sew two pieces together along their long sides, mark on mark */
    | "joinMarked"
    /** sew a triangle's long side to one of the other two sides, dog-ears alike */
    | "joinOthers"
    /** sew triangles to every second side of an octagon, opposite ones first */
    | "joinEverySecond"
    /** sew two wedges together along a long side, the same fabric always alike */
    | "joinWedges"
    /** sew parts of wedges together, tips and seams meeting in the middle */
    | "joinMiddle"
    /** sew triangles to the wide ends of every second wedge, opposite ones first */
    | "joinWideEnd"
    /** sew two pairs as in PARTIAL */
    | "partialParts"
    /** sew two halves from mark to mark, straight through the middle */
    | "joinThrough"
    /** set a triangle in by its short sides, each from the mark outwards */
    | "setInShort"
    /** trim the dog-ears off level */
    | "trimEars"
    /** trim; the seams meet in the middle and run out into corners */
    | "trimCrossed"
    /** trim; seams run into the lower corners, the point lies an allowance inside */
    | "trimGeese"
    /** trim; a point lies an allowance inside the middle of each edge */
    | "trimPoints"
    /** trim; each corner's seam meets the edges `from_corner` from the raw corner */
    | "trimCorners"
    /** trim; two points lie an allowance inside each edge, `from_corner` from its ends */
    | "trimStar"
    /** trim; the seam meets the shorter edges `from_corner` from the raw corner */
    | "trimLeaning"
    /** cut the strip across into rectangles `measure` long */
    | "cutLengths"
    /**
     * hexagon: cut the corners off a rectangle from marks `from_corner` along its long edges to the middles of its
     * ends, so that each edge is `measure` as cut
     */
    | "cutPoints"
    /** cut wedges alternately up and down with a ruler whose tip has `angle` */
    | "cutWedges"
    /** half-squares: cut both strips in turn square across and `angle` from the edge */
    | "cutPairs";

/** enum muslin_side, muslin/setting.h */
export type Side =
    | "left"
    | "right"
    | "top"
    | "bottom";

/** enum muslin_turning, muslin/setting.h */
export type Turning =
    /** all blocks the same way up */
    | "none"
    /** every other block turned a quarter, like a chessboard; squares only */
    | "quarterAlternate"
    /** every other block turned a half; any block */
    | "halfAlternate";

/** enum muslin_join, muslin/setting.h */
export type Join =
    /** edge to edge, nothing lost (batting; or a count that ignores the loss) */
    | "butted"
    /** a straight seam: loses two allowances */
    | "straight"
    /** square-ended strips laid at right angles: loses the strip's cut width */
    | "diagonal"
    /** ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick */
    | "biasEnds";

/** enum muslin_border_style, muslin/setting.h */
export type BorderStyle =
    /** butted: sides first, then top and bottom over them */
    | "sidesFirst"
    /** butted: top and bottom first */
    | "topFirst"
    /** four squares in the corners */
    | "cornerstones"
    /** seams at 45 degrees in the corners */
    | "mitred";

/** enum muslin_sash_kind, muslin/setting.h */
export type SashKind =
    | "vertical"
    | "horizontal"
    | "cornerstone";

/** enum muslin_first_block, muslin/setting.h */
export type FirstBlock =
    /** a pieced block in the first corner */
    | "pieced"
    /** a plain one */
    | "plain";

/** enum muslin_point_layout, muslin/setting.h */
export type PointLayout =
    /** block to block, no sashes */
    | "plain"
    /** every block has four sashes; the outer cornerstones touch the edge by their tips */
    | "sashOuter"
    /** the same, the edge runs through the middle of the outer cornerstones: triangles */
    | "sashCut"
    /**
     * no sash outside the corner blocks; the outer blocks touch the edge by their tips, sashes beside side triangles
     * end at the edge, cut off at 45 degrees: there the edge is bias, even beside triangles. A single block has no such
     * sash
     */
    | "sashInner";

/** enum muslin_point_edge, muslin/setting.h */
export type PointEdge =
    /** setting triangles: straight grain lies on the outside, but for the ends of sashes in SASH_INNER */
    | "triangles"
    /** blocks cut beyond their diagonal, one half from each, with bias on the outside; the corners stay triangles */
    | "halfBlocks";

/** enum muslin_log_order, muslin/rounds.h */
export type LogOrder =
    /** each log turns the corner: four sides one after the other */
    | "round"
    /** courthouse steps: a side and its opposite, then the other two */
    | "courthouse"
    /** two neighbouring sides only: the centre stays in a corner */
    | "quarter";

/** enum muslin_log_turn, muslin/rounds.h */
export type LogTurn =
    | "clockwise"
    | "anticlockwise";

/** enum muslin_log_half, muslin/rounds.h */
export type LogHalf =
    | "first"
    | "second";

/** enum muslin_frame_piece, muslin/rounds.h */
export type FramePiece =
    /** top or bottom */
    | "top"
    | "side";

/** enum muslin_frame_line, muslin/rounds.h */
export type FrameLine =
    /** the raw edge */
    | "cut"
    /** the stitched line */
    | "finished";

/** enum muslin_round_kind, muslin/rounds.h */
export type RoundKind =
    /** a border of whole strips */
    | "plain"
    /** a border of equal units side by side */
    | "pieced"
    /** plain strips just wide enough that the pieced round behind them comes out */
    | "coping";

/** enum muslin_round_corner, muslin/rounds.h */
export type RoundCorner =
    /** each run is a side's length, and four squares stand in the corners */
    | "squares"
    /** sides first; top and bottom run through the corners */
    | "through";

/** enum muslin_drop, muslin/fit.h */
export type Drop =
    /** as far as the mattress is deep: a coverlet that shows the base of the bed */
    | "depth"
    /** the depth and 3 in, or what else is asked: hides where mattress and base meet */
    | "overJoint"
    /** from the top of the mattress down to the floor: a bedspread */
    | "floor"
    /** as the spec says */
    | "given";

/** enum muslin_foot_corner, muslin/fit.h */
export type FootCorner =
    /** left square: their points hang lower than the edges */
    | "square"
    /** cut to a quarter circle, so that no point hangs lower than the edges */
    | "rounded";

/** enum muslin_fit_kind, muslin/fit.h */
export type FitKind =
    /** side by side: c B + 2 b wide */
    | "straight"
    /** sashes between blocks: c B + (c - 1) S + 2 b */
    | "sashed"
    /** and one round the outside: c B + (c + 1) S + 2 b */
    | "framed"
    /**
     * on their corners, c and r counted along the edges, (c - 1)(r - 1) alternate blocks between them: c B sqrt 2 + 2 b
     */
    | "onPoint";

/** enum muslin_parity, muslin/fit.h */
export type Parity =
    | "any"
    /** turned blocks that come in fours */
    | "even"
    /** every other block a plain one, and the same block in all four corners */
    | "odd";

/** enum muslin_fit_rank, muslin/fit.h */
export type FitRank =
    /** least off first: what width and length are off, added up */
    | "nearest"
    /** blocks and alternate blocks */
    | "fewestBlocks"
    | "largestBlock";

/** enum muslin_fold, muslin/finishing.h */
export type Fold =
    /** folded in half, raw edges in the seam, the fold sewn down on the back */
    | "double"
    /** one layer, its far edge turned under on the back */
    | "single";

/** enum muslin_backing_layout, muslin/finishing.h */
export type BackingLayout =
    /** a single panel, its length along the quilt's length */
    | "oneWidth"
    /** a single panel, its length along the quilt's width */
    | "oneWidthTurned"
    /** panels side by side, seams parallel to the quilt's length */
    | "seamsAlong"
    /** panels one below the other, seams parallel to its width */
    | "seamsAcross"
    /** a whole panel in the middle, equal side panels, seams along */
    | "centreAlong"
    /** the same, seams across */
    | "centreAcross"
    /** one panel split lengthwise, an insert between its halves, seams along */
    | "insertAlong"
    /** the same, seams across */
    | "insertAcross";

/** enum muslin_panel_role, muslin/finishing.h */
export type PanelRole =
    /** the full usable width, one of equals */
    | "whole"
    /** the full usable width, between two sides */
    | "centre"
    /** cut to width from a further panel */
    | "side"
    /** of a panel split lengthwise */
    | "half"
    /** strips between the halves */
    | "insert";

/** enum muslin_nesting, muslin/stripquilt.h */
export type Nesting =
    /** turn some segments end for end, which turns their pressing and the order of prints */
    | "turn"
    /** turn none; name the joins that do not nest */
    | "name";

/** enum muslin_set_pressing, muslin/stripquilt.h */
export type SetPressing =
    /** all seams of the set towards its labelled top strip */
    | "toTop"
    /** ... away from it */
    | "toBottom";

/** enum muslin_thread_method, muslin/supplies.h */
export type ThreadMethod =
    /** thread : seam as given */
    | "ratio"
    /** 2 + 2 T S: from the thickness sewn and the stitch */
    | "formula";

/** enum muslin_quilting_pattern, muslin/supplies.h */
export type QuiltingPattern =
    /** straight lines from side to side */
    | "across"
    /** straight lines from top to bottom */
    | "along"
    /** both */
    | "grid"
    /** at 45 degrees, one way */
    | "diagonal"
    /** at 45 degrees, both ways */
    | "crosshatch"
    /** along seams or shapes whose length is given */
    | "outline";

/** enum muslin_quilting_start, muslin/supplies.h */
export type QuiltingStart =
    /** the first diagonal cuts a corner off, at the offset from that corner */
    | "atOffset"
    /** the first diagonal starts in a corner; the others lie on both sides of it */
    | "fromCorner";

/** enum muslin_cost_kind, muslin/supplies.h */
export type CostKind =
    /** cloth by length: a price for so many ticks, 292608 for a yard, 320000 for a metre */
    | "length"
    /** things one by one: a price for one, or for so many */
    | "pieces"
    /** pieces that are sold together only: whole bundles are bought */
    | "bundles";

/** enum muslin_sort, muslin/quilt.h */
export type Sort =
    | "fabric"
    | "measure"
    | "node";

/** enum muslin_axis, muslin/quilt.h */
export type Axis =
    /** side by side, from the left; of a size: the width */
    | "across"
    /** one below the other, from the top; of a size: the height */
    | "down";

/** enum muslin_strip_piecing, muslin/quilt.h */
export type StripPiecing =
    /** as a strip set where that takes fewer cuts and pays, see muslin_stripset */
    | "whereFewer"
    /** as a strip set; solving fails where the pieces do not allow it */
    | "always"
    /** piece by piece */
    | "never";

/** enum muslin_seam_press, muslin/quilt.h */
export type SeamPress =
    /** whichever way seams nest */
    | "free"
    /** towards the piece that comes first: to the left, or up */
    | "toFirst"
    /** to the right, or down */
    | "toLast"
    /** half to either side: does not nest, and needs not */
    | "open";

/** enum muslin_sixty_first, muslin/quilt.h */
export type SixtyFirst =
    | "onSide"
    | "onPoint";

/** enum muslin_measure_kind, muslin/quilt.h */
export type MeasureKind =
    | "named"
    | "fixed"
    | "sum"
    | "extent";

/** enum muslin_node_kind, muslin/quilt.h */
export type NodeKind =
    | "patch"
    | "unit"
    | "shape"
    | "join"
    /** turned, mirrored, or both */
    | "turn"
    | "trim"
    | "pinwheel"
    | "setIn"
    | "diagonal"
    | "sixty";

/** enum muslin_misfit_kind, muslin/solution.h */
export type MisfitKind =
    /** two edges to be sewn together differ in length by more than the ease */
    | "length"
    /** ... by no more than the ease */
    | "eased"
    /** their allowances differ, or the pieces along one differ among themselves */
    | "allowance"
    /** a block on point is not a square of the first one's size */
    | "notSquare";

/** enum muslin_cut_source, muslin/solution.h */
export type CutSource =
    /** a patch, cut by itself */
    | "patch"
    /** a strip for strip sets, as long as its fabric's usable width */
    | "setStrip"
    /** a piece of a unit's recipe */
    | "unit"
    /** a piece of the caller's own shape: the smallest upright rectangle round it as cut */
    | "template"
    /** a square for setting triangles, or for cornerstones that the edge cuts in half */
    | "setting"
    /** a piece of a 60 degree row, cut from a strip */
    | "sixty"
    /**
     * a strip with mitred ends, cut as a rectangle to its longest edge; so is a sash on point that ends at the edge,
     * cut off at 45 degrees
     */
    | "mitred";

/** enum muslin_term_kind, muslin/solution.h */
export type TermKind =
    /** a measure's value: of `id`, `times` of it */
    | "measure"
    /** finished size of the child `id`, `times` of it */
    | "child"
    /** the greatest of the children: the child `id` */
    | "greatest"
    /** allowance of an edge, from the measure `id` */
    | "allowance"
    /** half the take-up `id`, of `times` edges, up to a tick */
    | "takeUp"
    /** what is trimmed away, from the measure `id`; negative */
    | "trimmed"
    /**
     * `times` diagonals of the block `id`, rounded once; then of squares as wide as the sash `id`: what all together,
     * rounded once, leave
     */
    | "diagonal"
    /** `times` half sides of a triangle of height `id`, rounded once */
    | "sixty"
    /** the size of the caller's own drawing */
    | "drawn"
    /** half of the measure `id`: the height of geese */
    | "half";

/** enum muslin_prefer, muslin/pressing.h */
export type Prefer =
    | "nothing"
    /** seams go towards the darker fabric where nesting leaves the choice */
    | "darker";

/** enum muslin_press, muslin/pressing.h */
export type Press =
    | "left"
    | "right"
    | "up"
    | "down"
    /** open */
    | "open";

/** enum muslin_other_way, muslin/pressing.h */
export type OtherWay =
    /** no copy is taken the other way */
    | "none"
    /** press so many copies the other way */
    | "pressed"
    /** cut them from strip sets of their own, pressed the other way */
    | "sets"
    /**
     * press all alike and turn so many as a whole, by `turn` quarters: they look the same; segments of strip sets end
     * for end
     */
    | "turned";

/** enum muslin_towards, muslin/pressing.h */
export type Towards =
    /** open */
    | "neither"
    /** the left or upper one */
    | "first"
    | "second";

/** enum muslin_preferred, muslin/pressing.h */
export type Preferred =
    /** neither way is preferred */
    | "neither"
    /** pressed as preferred */
    | "kept"
    /** ... against it */
    | "against";

/** enum muslin_sewing_kind, muslin/sewing.h */
export type SewingKind =
    /** strips sewn into sets */
    | "set"
    /** sets cut across into segments: nothing is sewn */
    | "segments"
    /** a unit by its recipe: muslin_unit_steps() has its own steps */
    | "unit"
    /** the caller's own shape */
    | "shape"
    /** pieces joined in their order */
    | "join"
    /** trimmed to size: nothing is sewn */
    | "trim"
    /** a partial first seam, three whole ones, the first one finished */
    | "pinwheel"
    /** strips sewn from mark to mark, then the mitres */
    | "setIn"
    /** diagonal rows of blocks and of sashes, then rows to each other, corners last */
    | "diagonal"
    /** rows of 60 degree pieces, then rows to each other */
    | "sixty";

/** enum muslin_blank_kind, muslin/cutplan.h */
export type BlankKind =
    /** a rectangle */
    | "piece"
    /** a rectangle, its cut_length along the cloth: a border, slit from a panel */
    | "lengthwise"
    /**
     * a strip cut_length high and cut_width long in all, pieced from strips across the cloth: binding, pieced borders,
     * long sashes
     */
    | "joined"
    /**
     * cut one beside the other from a strip just cut_length high, every second one upside down or all alike: each takes
     * cut_width of the strip, the first run_in more. 60 degree triangles, diamonds, wedges, half-hexagons
     */
    | "sloped";

/** enum muslin_cutplan_stopped, muslin/cutplan.h */
export type CutplanStopped =
    /** it came to its end: proven */
    | "done"
    /** the progress call ended it */
    | "progress"
    /** the work limit: a higher one may give a better plan or a proof */
    | "work"
    /**
     * no memory for more, or the room that the search keeps to is full; fewer sizes at a time, or sizes in coarser
     * steps, take less
     */
    | "memory"
    /** more sizes, or kinds of stock, than are searched: only first plans were made */
    | "sizes"
    /** it knows no more to do for plan or bound: a higher limit changes nothing */
    | "noMore";

/** enum muslin_cutplan_strip_kind, muslin/cutplan.h */
export type CutplanStripKind =
    /** right across the bolt */
    | "strip"
    /** a length of the bolt, as high as its longest slit piece */
    | "panel"
    /** the pieces slit from a panel, side by side at its left edge */
    | "slit"
    /** a piece of stock */
    | "stock"
    /** a strip across the rest of a panel, or of a piece of stock */
    | "within";

/** enum muslin_cutplan_fault, muslin/cutplan.h */
export type CutplanFault =
    /** all is well */
    | "none"
    /** fewer pieces of a size than are wanted */
    | "missing"
    /** a strip holds more than its room, or pieces overlap */
    | "overfull"
    /** a piece is higher than its strip, or lies as it may not */
    | "tooHigh"
    /** the cost is not what the strips add up to */
    | "cost"
    /** two cases do not make up the one that they split */
    | "gap"
    /** worths do not prove what they are said to prove */
    | "bound"
    /** more pieces of stock than there are */
    | "stock";

/** enum muslin_long_pieces, muslin/yardage.h */
export type LongPieces =
    /** along the cloth, whole, slit from panels */
    | "lengthwise"
    /** across the cloth, pieced from strips */
    | "joined";

/** struct muslin_rounding_spec, muslin/length.h */
export interface RoundingSpec {
    /** Initially 1 ticks. */
    readonly grid?: LengthLike;
    /** Initially 0. */
    readonly tolerance?: LengthLike;
    /** enum muslin_direction. Initially "nearest". */
    readonly direction?: Direction | null;
}

/** struct muslin_rounded, muslin/length.h */
export interface Rounded {
    /** the grid point */
    readonly value: Length;
    /** value - exact value, rounded down to a tick */
    readonly error: Length;
    /** 1 when nothing was lost by rounding */
    readonly exact: boolean;
    /** 1 when the unrounded value is a whole number of ticks */
    readonly onTick: boolean;
}

/** struct muslin_parse_spec, muslin/length.h */
export interface ParseSpec {
    /** enum muslin_length_unit, for a number that names none. Initially "inch". */
    readonly defaultUnit?: LengthUnit | null;
    /** '.' or ','. Initially ".". */
    readonly decimalSign?: string;
}

/** struct muslin_parsed, muslin/length.h */
export interface Parsed {
    readonly value: Length;
    /** 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards */
    readonly exact: boolean;
    /** enum muslin_length_unit: of the last part, named or the default */
    readonly unit: LengthUnit;
}

/** struct muslin_format_spec, muslin/length.h */
export interface FormatSpec {
    /** enum muslin_style. Initially "inchFraction". */
    readonly style?: Style | null;
    /** of fraction styles, 1 .. 64; shown in lowest terms. Initially 64. */
    readonly denominator?: Whole;
    /** of decimal styles, 0 .. 6; trailing zeros are not shown. Initially 4. */
    readonly decimals?: Whole;
    /** '.' or ','. Initially ".". */
    readonly decimalSign?: string;
    /** enum muslin_direction, for a length off the style's grid. Initially "nearest". */
    readonly direction?: Direction | null;
    /** The flag MUSLIN_FORMAT_UNICODE. Initially false. */
    readonly unicode?: boolean;
    /** The flag MUSLIN_FORMAT_BARE. Initially false. */
    readonly bare?: boolean;
}

/** struct muslin_seam_spec, muslin/seam.h */
export interface SeamSpec {
    /** s, per edge, as stitched; 0 .. MUSLIN_SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u, per seam; 0 .. MUSLIN_SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_piece_spec, muslin/seam.h */
export interface PieceSpec {
    /** 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly finishedWidth?: LengthLike;
    /** 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly finishedHeight?: LengthLike;
    /** allowance on each edge, 0 .. MUSLIN_SIZE_MAX / 8; 0: on the fold or left raw. Initially 1/4 in. */
    readonly left?: LengthLike;
    /** Initially 1/4 in. */
    readonly right?: LengthLike;
    /** Initially 1/4 in. */
    readonly top?: LengthLike;
    /** Initially 1/4 in. */
    readonly bottom?: LengthLike;
    /** u per seam; each edge with an allowance bears half of it. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_piece, muslin/seam.h */
export interface Piece {
    /** finished + left + right + u/2 for each of the two that is sewn, in all up to a tick */
    readonly cutWidth: Length;
    /** the same with top and bottom */
    readonly cutHeight: Length;
    /** doubled square ticks, below 2^62 */
    readonly cutArea: bigint;
    /** doubled square ticks */
    readonly finishedArea: bigint;
    /** ppm of the cut piece that disappears into seams, nearest; 0 for a cut area of 0 */
    readonly seamShare: number;
}

/** struct muslin_sewn_row, muslin/seam.h */
export interface SewnRow {
    readonly pieces: number;
    /** pieces - 1 */
    readonly seams: number;
    /** sum of the cut sizes */
    readonly cutTotal: Length;
    /** what the inner seams take: seams x (2 s + u) */
    readonly eaten: Length;
    /** cut_total - eaten */
    readonly unfinished: Length;
    /** unfinished - 2 s - u */
    readonly finished: Length;
    /** ppm of cut_total that is not seen in the end: inner and outer seams, nearest */
    readonly seamShare: number;
}

/** struct muslin_calibration, muslin/seam.h */
export interface Calibration {
    /** n - 1 */
    readonly seams: number;
    /** unfinished width with the stitched allowance and no take-up */
    readonly planned: Length;
    /** planned - measured; negative when the set came out wide */
    readonly shortfall: Length;
    /** shortfall over seams: the take-up u, exact as a fraction ... */
    readonly perSeamNumerator: Length;
    readonly perSeamDenominator: number;
    /** ... and rounded to the nearest tick, ties up; negative when wide */
    readonly takeUp: Length;
    /** e = (sum of cuts - measured) / (2 seams), exact ... */
    readonly effectiveNumerator: Length;
    readonly effectiveDenominator: number;
    /** ... and rounded to the nearest tick, ties up */
    readonly effectiveAllowance: Length;
    /** the cure: stitch at s - u/2, nearest tick, ties up; then the plan is met */
    readonly sewAt: Length;
}

/** struct muslin_carry_on_spec, muslin/seam.h */
export interface CarryOnSpec {
    /** T, sum of the strips' cut widths; 1 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly cutTotal?: LengthLike;
    /** n, 2 .. MUSLIN_COUNT_MAX. Initially 2. */
    readonly strips?: Whole;
    /** M, unfinished width of the sewn set; 1 .. T. Initially 0. */
    readonly measured?: LengthLike;
    /** c, the later piece, as the plan had it; 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly laterCut?: LengthLike;
    /** s of the plan; 0 .. MUSLIN_SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u of the plan; 0 .. MUSLIN_SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_accuracy_row_spec, muslin/accuracy.h */
export interface AccuracyRowSpec {
    /** side by side. Initially 1. */
    readonly pieces?: Whole;
    /** that the measure crosses, 0 .. MUSLIN_COUNT_MAX; pieces - 1 from raw edge to raw edge. Initially 0. */
    readonly seams?: Whole;
    /** e, of one seam. Initially 0. */
    readonly seamError?: LengthLike;
    /** c, of one cut edge. Initially 0. */
    readonly cutError?: LengthLike;
}

/** struct muslin_accuracy_row_errors, muslin/accuracy.h */
export interface AccuracyRowErrors {
    /** 2 x pieces */
    readonly cuts: number;
    /** seams x e: what the seams bring to the worst case */
    readonly fromSeams: Length;
    /** cuts x c */
    readonly fromCuts: Length;
    /** the sum of the two */
    readonly worst: Length;
    /** sqrt(seams x e^2 + cuts x c^2), up to a tick */
    readonly likely: Length;
}

/** struct muslin_accuracy_top_spec, muslin/accuracy.h */
export interface AccuracyTopSpec {
    /** a block. Initially 1. */
    readonly piecesAcross?: Whole;
    /** a block. Initially 1. */
    readonly piecesDown?: Whole;
    /** of blocks. Initially 1. */
    readonly columns?: Whole;
    /** of blocks. Initially 1. */
    readonly rows?: Whole;
    /** e, of one seam. Initially 0. */
    readonly seamError?: LengthLike;
    /** c, of one cut edge. Initially 0. */
    readonly cutError?: LengthLike;
}

/** struct muslin_accuracy_top_errors, muslin/accuracy.h */
export interface AccuracyTopErrors {
    /** pieces_across - 1 */
    readonly blockSeamsAcross: number;
    /** how far the unfinished width of a block may be off ... */
    readonly blockWidthWorst: Length;
    readonly blockWidthLikely: Length;
    /** pieces_down - 1 */
    readonly blockSeamsDown: number;
    /** ... and its unfinished height */
    readonly blockHeightWorst: Length;
    readonly blockHeightLikely: Length;
    /** columns x pieces_across - 1 */
    readonly topSeamsAcross: number;
    /** how far the unfinished width of the top may be off ... */
    readonly topWidthWorst: Length;
    readonly topWidthLikely: Length;
    /** rows x pieces_down - 1 */
    readonly topSeamsDown: number;
    /** ... and its unfinished length */
    readonly topLengthWorst: Length;
    readonly topLengthLikely: Length;
}

/** struct muslin_accuracy_meet_spec, muslin/accuracy.h */
export interface AccuracyMeetSpec {
    /** n, of each of the two rows. Initially 1. */
    readonly seams?: Whole;
    /** e, of one seam. Initially 0. */
    readonly seamError?: LengthLike;
    /** c, of one cut edge. Initially 0. */
    readonly cutError?: LengthLike;
    /** seams this far apart still count as meeting; 0 .. MUSLIN_SIZE_MAX. Initially 1/16 in. */
    readonly tolerance?: LengthLike;
}

/** struct muslin_accuracy_meeting, muslin/accuracy.h */
export interface AccuracyMeeting {
    /** apart at the last seam: 2 n (e + 2 c), both rows off opposite ways */
    readonly worst: Length;
    /** the same by chance: sqrt(2 n (e^2 + 2 c^2)), up to a tick */
    readonly likely: Length;
    /** the first seam at which the worst case passes the tolerance; 0: none */
    readonly firstMissed: number;
    /** the first at which the likely one does: from it on about one in three misses, or more; 0: none */
    readonly likelyFirstMissed: number;
    /** the largest e for which all n meet at worst, down to a tick; also 0 when the cuts alone are too much */
    readonly largestSeamError: Length;
    /** ... for which all n are likely to meet */
    readonly likelyLargestSeamError: Length;
    /** 1 when all n seams meet even at worst */
    readonly meets: boolean;
    /**
     * 1 when the likely one is within the tolerance at all n: about two in three then meet at the last seam, and more
     * of them before it
     */
    readonly likelyMeets: boolean;
    /** 1 when they would at worst if no seam were off: 4 n c <= tolerance */
    readonly cutsMeet: boolean;
    /** 1 when they would by chance */
    readonly likelyCutsMeet: boolean;
    /**
     * the first seam at which twice the likely one passes the tolerance: from it on about one in twenty misses, or
     * more; 0: none
     */
    readonly twiceLikelyFirstMissed: number;
    /**
     * the largest e for which twice the likely one is within the tolerance at all n, down to a tick; also 0 when the
     * cuts alone are too much
     */
    readonly twiceLikelyLargestSeamError: Length;
    /** 1 when twice the likely one is within the tolerance at all n seams */
    readonly twiceLikelyMeets: boolean;
    /** 1 when it would be if no seam were off */
    readonly twiceLikelyCutsMeet: boolean;
}

/** struct muslin_wash_spec, muslin/shrinkage.h */
export interface WashSpec {
    /** each as for muslin_shrinkage_change(). Initially 0. */
    readonly beforeWidth?: LengthLike;
    /** Initially 0. */
    readonly afterWidth?: LengthLike;
    /** Initially 0. */
    readonly beforeLength?: LengthLike;
    /** Initially 0. */
    readonly afterLength?: LengthLike;
}

/** struct muslin_wash_change, muslin/shrinkage.h */
export interface WashChange {
    /** doubled square ticks */
    readonly areaBefore: bigint;
    readonly areaAfter: bigint;
    /** ppm, nearest */
    readonly changeAcross: number;
    readonly changeAlong: number;
    /** ppm, nearest, from the areas themselves: neither of the two above nor their sum */
    readonly changeArea: number;
}

/** struct muslin_shrinkage_spec, muslin/shrinkage.h */
export interface ShrinkageSpec {
    /** finished, the size that the call starts from. Initially 0. */
    readonly width?: LengthLike;
    /** Initially 0. */
    readonly length?: LengthLike;
    /** share lost to the quilting's take-up. Initially 0. */
    readonly quiltingAcross?: Whole;
    /** Initially 0. */
    readonly quiltingAlong?: Whole;
    /** share that the quilted quilt loses in the wash. Initially 0. */
    readonly washingAcross?: Whole;
    /** Initially 0. */
    readonly washingAlong?: Whole;
}

/** struct muslin_size_to_make, muslin/shrinkage.h */
export interface SizeToMake {
    /** finished: wanted / ((1 - q)(1 - w)), rounded once, as asked */
    readonly makeWidth: Length;
    readonly makeLength: Length;
    /** what the quilt must measure when quilted, before the wash: wanted / (1 - w), nearest tick */
    readonly quiltedWidth: Length;
    readonly quiltedLength: Length;
    /** what the size to make ends at, quilted and washed, nearest tick */
    readonly washedWidth: Length;
    readonly washedLength: Length;
    /** what multiplying would have said: wanted x (1 + q)(1 + w), nearest tick ... */
    readonly multipliedWidth: Length;
    readonly multipliedLength: Length;
    /**
     * ... and how far below the wanted size exactly so much ends: wanted less wanted x (1 - q^2)(1 - w^2), the latter
     * to the nearest tick
     */
    readonly shortWidth: Length;
    readonly shortLength: Length;
    /** 1 when rounding lost nothing of make_width */
    readonly widthExact: boolean;
    readonly lengthExact: number;
}

/** struct muslin_washed_size, muslin/shrinkage.h */
export interface WashedSize {
    /** width x (1 - q), rounded once, as asked */
    readonly quiltedWidth: Length;
    readonly quiltedLength: Length;
    /** width x (1 - q)(1 - w), rounded once, as asked */
    readonly washedWidth: Length;
    readonly washedLength: Length;
    /** of the whole way, ppm, nearest: negative */
    readonly changeAcross: number;
    readonly changeAlong: number;
    readonly changeArea: number;
}

/** struct muslin_governing, muslin/shrinkage.h */
export interface Governing {
    /** ppm lost: the one of the two that governs */
    readonly share: number;
    /** enum muslin_governing_source */
    readonly source: GoverningSource;
}

/** struct muslin_prewash_spec, muslin/shrinkage.h */
export interface PrewashSpec {
    /** of cloth, after the wash. Initially 0. */
    readonly neededLength?: LengthLike;
    /** of the cloth, before the wash. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** share that the width loses, `at` 0. Initially 0. */
    readonly across?: Whole;
    /** share that the length loses, `at` 1. Initially 0. */
    readonly along?: Whole;
}

/** struct muslin_prewash, muslin/shrinkage.h */
export interface Prewash {
    /** to wash, for the length needed afterwards: needed / (1 - along), up to a tick */
    readonly unshrunkLength: Length;
    /** usable after the wash: width x (1 - across), down to a tick */
    readonly washedWidth: Length;
    /** unshrunk_length - needed_length */
    readonly lostLength: Length;
    /** usable_width - washed_width */
    readonly lostWidth: Length;
}

/** struct muslin_purchase_spec, muslin/fabric.h */
export interface PurchaseSpec {
    /** length of cloth that must be there in the end. Initially 0. */
    readonly needed?: LengthLike;
    /** fixed extra, added last. Initially 0. */
    readonly extra?: LengthLike;
    /**
     * what the shop sells in, 1 or more: 1/8 yd 36576, 1/4 yd 73152, 1/3 yd 97536, 10 cm 32000, 25 cm 80000. Initially
     * 4 1/2 in.
     */
    readonly step?: LengthLike;
    /** ppm lost in the wash, 0 .. 999999: needed / (1 - shrinkage), up. Initially 0. */
    readonly shrinkage?: Whole;
    /** ppm to add for safety, 0 .. 10000000: x (1 + share), up. Initially 0. */
    readonly extraShare?: Whole;
}

/** struct muslin_purchase, muslin/fabric.h */
export interface Purchase {
    readonly needed: Length;
    /** what shrinks to `needed`, up to a tick */
    readonly unshrunk: Length;
    /** unshrunk plus the share, up to a tick, plus the fixed extra: the least to buy */
    readonly withExtra: Length;
    /** with_extra up to the step */
    readonly bought: Length;
    /** bought / step */
    readonly steps: number;
    /** bought - with_extra: so much more could be wished for at the same price */
    readonly spare: Length;
    /** with_extra less this much, the least, would save a step; 0 if nothing is bought */
    readonly lessBy: Length;
}

/** struct muslin_cloth_spec, muslin/fabric.h */
export interface ClothSpec {
    /** usable width of the cloth or pre-cut. Initially 40 in. */
    readonly width?: LengthLike;
    /** its length. Initially 36 in. */
    readonly length?: LengthLike;
    /** cut size across the cloth, 1 or more. Initially 0. */
    readonly pieceWidth?: LengthLike;
    /** cut size along it, 1 or more. Initially 0. */
    readonly pieceLength?: LengthLike;
    /** taken off the width once, for straightening. Initially 0. */
    readonly lossAcross?: LengthLike;
    /** taken off the length once. Initially 0. */
    readonly lossAlong?: LengthLike;
    /** The flag MUSLIN_CLOTH_MAY_TURN. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_cloth_pieces, muslin/fabric.h */
export interface ClothPieces {
    /** pieces side by side */
    readonly across: number;
    /** rows of them */
    readonly along: number;
    /** across x along */
    readonly pieces: number;
    /** 1 when the pieces lie turned a quarter; a tie is not turned */
    readonly turned: boolean;
    /** MUSLIN_WARN_NO_SLACK when there are pieces and one of the two slacks is 0 */
    readonly warnings: readonly Warning[];
    /** cloth left over beside the columns, after the loss; 0 when the loss eats it all */
    readonly leftAcross: Length;
    /** ... and behind the rows */
    readonly leftAlong: Length;
    /** the cloth may be this much narrower before a column of pieces is lost */
    readonly narrowerBy: Length;
    /** ... and this much shorter before a row is lost; both are 0 when there is no piece */
    readonly shorterBy: Length;
    /** this much wider and one more column fits */
    readonly widerForOne: Length;
    /** this much longer and one more row fits */
    readonly longerForOne: Length;
}

/** struct muslin_strips_spec, muslin/fabric.h */
export interface StripsSpec {
    /** pieces wanted. Initially 0. */
    readonly pieces?: Whole;
    /** cut size along the strip, 1 or more. Initially 0. */
    readonly pieceAcross?: LengthLike;
    /** cut width of the strip, 1 or more. Initially 0. */
    readonly stripCut?: LengthLike;
    /** length of one strip across the cloth. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** taken off each strip for squaring its ends. Initially 0. */
    readonly endLoss?: LengthLike;
    /** taken off the cloth once. Initially 0. */
    readonly straightening?: LengthLike;
}

/** struct muslin_strips, muslin/fabric.h */
export interface Strips {
    /** pieces, down */
    readonly perStrip: number;
    /** up */
    readonly strips: number;
    /** that the last strip could still give */
    readonly sparePieces: number;
    /** cloth for them: strips x strip_cut + straightening */
    readonly length: Length;
    /** left over at the end of a full strip, after the end loss */
    readonly leftPerStrip: Length;
    /** the cloth may be this much narrower before a strip gives one piece less */
    readonly narrowerBy: Length;
    /** this much wider and each strip gives one more */
    readonly widerForOne: Length;
    /** MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_stock_spec, muslin/fabric.h */
export interface StockSpec {
    /**
     * across, 1 or more: the longer side of a strip (its usable length), 20 .. 22 in of a fat quarter. Initially 40 in.
     */
    readonly width?: LengthLike;
    /** along, 1 or more: the cut width of a strip, 18 in of a fat quarter. Initially 2 1/2 in. */
    readonly length?: LengthLike;
    /** pieces. Initially 1. */
    readonly count?: Whole;
    /** tip to valley, on one edge; must be 0 for straight edges. Initially 0. */
    readonly pinkDepth?: LengthLike;
    /** enum muslin_edge. Initially "straight". */
    readonly edge?: Edge | null;
    /** enum muslin_care. Initially "unwashed". */
    readonly care?: Care | null;
    /** enum muslin_print. Initially "none". */
    readonly print?: Print | null;
    /** enum muslin_stock_kind. Initially "strip". */
    readonly kind?: StockKind | null;
}

/** struct muslin_stock_yield, muslin/fabric.h */
export interface StockYield {
    /** strips that one piece of stock gives */
    readonly perPiece: number;
    /** strips that the whole stock gives */
    readonly inHand: number;
    /** pieces of stock for the strips wanted, up */
    readonly piecesNeeded: number;
    /** of those, not in hand */
    readonly piecesMissing: number;
    /** length of each strip */
    readonly stripLength: Length;
    /** of each piece, beside the strips */
    readonly leftOver: Length;
    /** the piece may be this much shorter before a strip is lost */
    readonly shorterBy: Length;
    /** MUSLIN_WARN_NO_SLACK when shorter_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_motif_spec, muslin/motif.h */
export interface MotifSpec {
    /** of the print along the cloth, 1 or more. Initially 0. */
    readonly repeatLength?: LengthLike;
    /** across it; 0: the whole usable width counts as one repeat. Initially 0. */
    readonly repeatWidth?: LengthLike;
    /** of the cloth, 1 or more. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** of the window, across, 1 or more. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** along, 1 or more. Initially 0. */
    readonly cutLength?: LengthLike;
    /**
     * windows that one repeat gives, 1 or more: count only those that can all be cut, so of two that overlap one; for a
     * window larger than the repeat, those that the repeats it takes give together. Initially 1.
     */
    readonly motifs?: Whole;
    /** windows wanted. Initially 0. */
    readonly pieces?: Whole;
    /** The flag MUSLIN_MOTIF_ANY_START. Initially false. */
    readonly anyStart?: boolean;
    /** The flag MUSLIN_MOTIF_ANY_ACROSS. Initially false. */
    readonly anyAcross?: boolean;
}

/** struct muslin_motif, muslin/motif.h */
export interface Motif {
    /** repeats that a window takes across: cut_width / repeat_width, up; 1 when the width is one repeat */
    readonly repeatsAcrossEach: number;
    /** along: cut_length / repeat_length, up */
    readonly repeatsAlongEach: number;
    /** windows that a row gives from selvage to selvage */
    readonly perRow: number;
    /** rows of windows: pieces / per_row, up */
    readonly rows: number;
    /** along, for all rows: rows x repeats_along_each */
    readonly repeats: number;
    /** repeats, and the one for shifting the start where it is counted */
    readonly repeatsBought: number;
    /** windows that the rows give beyond those wanted */
    readonly sparePieces: number;
    /** windows that a row gives wherever the print begins across; 0 when none is certain */
    readonly perRowCertain: number;
    /** ... and gives when the print begins best: see lucky_within */
    readonly perRowLucky: number;
    /** rows for the windows wanted when a row gives only those; 0 when none is certain */
    readonly rowsCertain: number;
    /** ... when it gives the most */
    readonly rowsLucky: number;
    /** repeats_along_each x repeat_length */
    readonly rowLength: Length;
    /** row_length - cut_length */
    readonly wastePerRow: Length;
    /** the repeat for shifting the start, or 0 */
    readonly shift: Length;
    /** rows x row_length + shift */
    readonly clothLength: Length;
    /** the same with rows_certain; 0 when none is certain */
    readonly clothCertain: Length;
    /** ... with rows_lucky */
    readonly clothLucky: Length;
    /**
     * per_row_lucky holds when the first whole window begins no farther than this from the edge of the usable width; 0
     * when the width is one repeat
     */
    readonly luckyWithin: Length;
    /**
     * the cloth may be this much narrower before a row more is needed; 0 when the width is one repeat, since how the
     * print lies in it is not known
     */
    readonly narrowerBy: Length;
    /** this much wider, the least, and fewer rows are needed; 0 when no width saves one, or the width is one repeat */
    readonly widerForLess: Length;
    /** so many they then are; 0 when no width saves one */
    readonly widerRows: number;
    /**
     * MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0; where the width is one repeat, when the window
     * is as wide as the cloth
     */
    readonly warnings: readonly Warning[];
    /**
     * cloth_length without what lies behind the windows of the last row: less by waste_per_row where the start is
     * shifted and motifs is 1, else the same
     */
    readonly clothLeast: Length;
}

/** struct muslin_motif_yield, muslin/motif.h */
export interface MotifYield {
    /** of windows, whole: of the last only the windows must be there, as in cloth_least */
    readonly rows: number;
    /** along, used by them */
    readonly repeats: number;
    /** rows x per_row: windows */
    readonly pieces: number;
    /** rows x per_row_certain */
    readonly piecesCertain: number;
    /** rows x per_row_lucky */
    readonly piecesLucky: number;
    /** of the length, behind the rows; what the shift takes is not in it */
    readonly leftOver: Length;
    /** the cloth may be this much shorter before a row is lost; 0 when there is none */
    readonly shorterBy: Length;
    /** this much longer and one more row fits */
    readonly longerForOne: Length;
    /** MUSLIN_WARN_NO_SLACK when there is a row and shorter_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_stack_spec, muslin/motif.h */
export interface StackSpec {
    /** of the print along the cloth, 1 or more. Initially 0. */
    readonly repeatLength?: LengthLike;
    /** cut width of the strips that are cut through all layers, 1 or more. Initially 0. */
    readonly stripCut?: LengthLike;
    /** taken off the aligned layers once, before the first strip. Initially 0. */
    readonly straightening?: LengthLike;
    /** stacks that one strip gives, 1 or more: as many as pieces from a single strip. Initially 1. */
    readonly perStrip?: Whole;
    /** identical pieces in a stack, 1 or more: 4, 6 or 8 for the blocks that are usual. Initially 6. */
    readonly layers?: Whole;
    /** wanted. Initially 0. */
    readonly stacks?: Whole;
    /** The flag MUSLIN_STACK_ANY_START. Initially false. */
    readonly anyStart?: boolean;
}

/** struct muslin_stack, muslin/motif.h */
export interface Stack {
    /** to cut through the layers: stacks / per_strip, up */
    readonly strips: number;
    /** that the layers give, whole */
    readonly stripsInLayers: number;
    /** (strips x strip_cut + straightening) / repeat_length, up; 0 without a strip */
    readonly repeatsPerLayer: number;
    /** of the cloth: layers x repeats_per_layer; the one for the start is not counted */
    readonly repeats: number;
    /** ... and that one, where it is */
    readonly repeatsBought: number;
    /** stacks x layers */
    readonly pieces: number;
    /** that strips_in_layers give beyond those wanted */
    readonly spareStacks: number;
    /** of each layer: repeats_per_layer x repeat_length */
    readonly layerLength: Length;
    /** of each layer: strips x strip_cut + straightening; 0 without a strip */
    readonly usedLength: Length;
    /** the repeat for choosing the start, or 0 */
    readonly shift: Length;
    /** layers x layer_length + shift */
    readonly clothLength: Length;
    /** of each layer, behind strips_in_layers */
    readonly leftOver: Length;
    /**
     * the cloth may end this much early, in the last layer: layer_length - used_length. The other layers stay as long
     * as they are, since each begins whole repeats behind the one before
     */
    readonly shorterBy: Length;
    /** MUSLIN_WARN_NO_SLACK when a strip is wanted and shorter_by is 0 */
    readonly warnings: readonly Warning[];
    /** cloth_length - shorter_by */
    readonly clothLeast: Length;
}

/** struct muslin_reference, muslin/reference.h */
export interface Reference {
    /** ticks; as in muslin_stock_spec, the longer side of a strip or a fat quarter; 0 where there is none */
    readonly width: Length;
    /** ticks; 0 where there is none */
    readonly length: Length;
    /** pieces sold together, 1 for a single one; months in a caution; 0 where there is none */
    readonly count: number;
}

/** struct muslin_yield_spec, muslin/stripset.h */
export interface YieldSpec {
    /** L, of the shortest strip in the set. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** a, 1 or more. Initially 0. */
    readonly segmentCut?: LengthLike;
    /** t, taken off each end to square it. Initially 0. */
    readonly endTrim?: LengthLike;
    /** r, lost each time the cut edge is squared again ... Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** ... after every m cuts; 0 for never. Initially 0. */
    readonly resquareEvery?: Whole;
    /** z, kept free of cuts in the middle; must be 0 with FROM_ONE_END. Initially 0. */
    readonly foldClear?: LengthLike;
    /** The flag MUSLIN_YIELD_FROM_ONE_END. Initially false. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_yield, muslin/stripset.h */
export interface Yield {
    /** N */
    readonly segments: number;
    /** N / 2 when cutting from both ends, N from one */
    readonly perEnd: number;
    /** times the edge is squared again, both ends together */
    readonly resquarings: number;
    /** the shortest strip that gives as many; 0 when N is 0 */
    readonly leastLength: Length;
    /**
     * L less trims, segments and squaring losses, not below 0: from both ends the middle piece, fold included; from one
     * end L - 2 t - k a - r floor((k - 1) / m)
     */
    readonly leftOver: Length;
    /** the strip may be this much shorter before a segment is lost; 0 when N is 0 */
    readonly shorterBy: Length;
    /**
     * it must be this much longer to give more: one more from each end that is cut from; never 0, and for N = 0 what is
     * missing to the first
     */
    readonly longerForMore: Length;
    /** MUSLIN_WARN_NO_SLACK when shorter_by is 0 and N is not */
    readonly warnings: readonly Warning[];
}

/** struct muslin_need_spec, muslin/stripset.h */
export interface NeedSpec {
    /** wanted. Initially 0. */
    readonly segments?: Whole;
    /** what one set gives; see muslin_stripset_yield(). Initially 0. */
    readonly segmentsPerSet?: Whole;
    /** 1 or more. Initially 0. */
    readonly stripsPerSet?: Whole;
    /** 1 or more when bundles are wanted, else 0. Initially 0. */
    readonly stripsPerBundle?: Whole;
    /** cut width of a strip, for the length of cloth instead of bundles; 0 if not wanted. Initially 0. */
    readonly stripCut?: LengthLike;
}

/** struct muslin_need, muslin/stripset.h */
export interface Need {
    /** up */
    readonly sets: number;
    /** sets x strips_per_set, below 2^62 */
    readonly strips: number;
    /** up; 0 when not asked */
    readonly bundles: number;
    /** that the sets give beyond the wish */
    readonly spareSegments: number;
    /** that the bundles hold beyond the sets; 0 when not asked */
    readonly spareStrips: number;
    /** strips x strip_cut; 0 when not asked */
    readonly clothLength: Length;
}

/** struct muslin_harvest_spec, muslin/stripset.h */
export interface HarvestSpec {
    /** in hand. Initially 0. */
    readonly strips?: Whole;
    /** 1 or more. Initially 0. */
    readonly stripsPerSet?: Whole;
    /** 0 or more. Initially 0. */
    readonly segmentsPerSet?: Whole;
    /** 1 or more. Initially 1. */
    readonly segmentsPerBlock?: Whole;
    /** 1 or more. Initially 1. */
    readonly blocksPerTop?: Whole;
}

/** struct muslin_harvest, muslin/stripset.h */
export interface Harvest {
    /** down, from all strips */
    readonly sets: number;
    /** from all sets */
    readonly segments: number;
    /** from all segments */
    readonly blocks: number;
    /** from all blocks, all down */
    readonly tops: number;
    /** sets that those tops need, up */
    readonly setsUsed: number;
    /** sets_used x strips_per_set */
    readonly stripsUsed: number;
    /** strips - strips_used */
    readonly stripsLeft: number;
    /** of the sets used, beyond the tops */
    readonly segmentsLeft: number;
    /** of all blocks, beyond the tops */
    readonly blocksLeft: number;
    /** strips missing for one more top; 0 only when a set gives nothing, so that no number of strips is enough */
    readonly stripsForOneMore: number;
}

/** struct muslin_stripset_print, muslin/stripset.h */
export interface StripsetPrint {
    /** strips of this print. Initially 0. */
    readonly inHand?: Whole;
    /** strips of it in each set, 0 or more. Initially 0. */
    readonly perSet?: Whole;
    /** out: in_hand - sets x per_set, or what is missing, negative, when sets were asked for. Initially 0. */
    readonly leftOver?: Whole;
}

/** struct muslin_cutlist_piece_spec, muslin/cutlist.h */
export interface CutlistPieceSpec {
    /** across the cloth, 1 or more. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** along it, 1 or more. Initially 0. */
    readonly cutLength?: LengthLike;
    /** Initially 1. */
    readonly count?: Whole;
    /** The flag MUSLIN_CUTLIST_PIECE_MAY_TURN. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_cutlist_row, muslin/cutlist.h */
export interface CutlistRow {
    /** wanted, of all lists that are cut together */
    readonly pieces: number;
    /** pieces / per_strip, up */
    readonly strips: number;
    /** pieces from one strip, down */
    readonly perStrip: number;
    /** that the last strip could still give */
    readonly sparePieces: number;
    /** cut width of each strip, along the cloth */
    readonly stripCut: Length;
    /** what is cut off the strip for each piece, across the cloth */
    readonly pieceCut: Length;
    /** of cloth: strips x strip_cut */
    readonly stripsLength: Length;
    /** the piece of stock, from 1, that gives the first strip; 0 from yardage or for none */
    readonly firstStock: number;
    /** ... and the last strip */
    readonly lastStock: number;
    /** 1 when the pieces lie turned a quarter */
    readonly turned: boolean;
    /**
     * 1 when the strips must be cut from the stock; 0 when a piece of stock is as narrow as the strip already, from
     * yardage, or without a strip
     */
    readonly trimmed: boolean;
}

/** struct muslin_cutlist_spec, muslin/cutlist.h */
export interface CutlistSpec {
    /** length of a strip across the cloth, 1 or more. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** taken off each strip for squaring its ends. Initially 0. */
    readonly endLoss?: LengthLike;
    /** taken off the cloth once. Initially 0. */
    readonly straightening?: LengthLike;
    /** enum muslin_print. Initially "none". */
    readonly print?: Print | null;
}

/** struct muslin_cutlist_yardage, muslin/cutlist.h */
export interface CutlistYardage {
    /** of the whole list */
    readonly pieces: number;
    readonly strips: number;
    /** that the last strips of all rows could still give */
    readonly sparePieces: number;
    /** the strips one behind the other, plus straightening */
    readonly clothLength: Length;
    /**
     * a bound only: the pieces' area over the usable width, up to a tick; no plan needs less, and hardly any gets by
     * with it
     */
    readonly areaBound: Length;
    /** the narrowest usable width at which cloth_length is the same */
    readonly narrowestWidth: Length;
    /** usable_width - narrowest_width */
    readonly narrowerBy: Length;
    /** ... at which also the rows lie alike and take as many strips */
    readonly narrowestAsCut: Length;
    /** this much wider, the least, and cloth_length is less; 0 when no width saves any */
    readonly widerForLess: Length;
    /** so much less it then is; how it is cut then, the call below says for that width */
    readonly widerSaves: Length;
    /** MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0 */
    readonly warnings: readonly Warning[];
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
}

/** struct muslin_cutlist_stock, muslin/cutlist.h */
export interface CutlistStock {
    /** of the whole list */
    readonly pieces: number;
    /** cut across the stock */
    readonly strips: number;
    /** that the last strips of all rows could still give */
    readonly sparePieces: number;
    /** pieces of stock; enough, by this plain method */
    readonly stockNeeded: number;
    /** of those, not in hand */
    readonly stockMissing: number;
    /** in hand and not touched */
    readonly stockLeft: number;
    /** a bound only: the pieces' area over that of a piece of stock, up; no plan needs fewer */
    readonly areaBound: bigint;
    /** length of the last piece of stock behind its last strip */
    readonly leftOver: Length;
    /** each piece of stock may be this much narrower before one more is needed */
    readonly narrowerBy: Length;
    /** ... or this much shorter */
    readonly shorterBy: Length;
    /** this much narrower, and the strips stay as they are, row by row */
    readonly asCutNarrowerBy: Length;
    /** ... or this much shorter, the least rest of any piece of stock needed */
    readonly asCutShorterBy: Length;
    /** MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by or shorter_by is 0 */
    readonly warnings: readonly Warning[];
    /** 1 when some row's strips must be cut from the stock (see muslin_cutlist_row) */
    readonly trimmed: boolean;
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
    /** that left_over could still give, cut as those of the last row; 0 when that wants none */
    readonly restPieces: number;
}

/** struct muslin_cutlist_part, muslin/cutlist.h */
export interface CutlistPart {
    /** from 0 */
    readonly row: number;
    /** from each of these pieces of stock */
    readonly strips: number;
    /** the first of them, from 1 */
    readonly firstStock: number;
    /** the last; the same when it is one */
    readonly lastStock: number;
    /** length of the piece of stock that earlier rows have used */
    readonly beginsAt: Length;
}

/** struct muslin_cutlist_lists, muslin/cutlist.h */
export interface CutlistLists {
    /** whole lists that the stock in hand gives */
    readonly lists: number;
    /** pieces of stock for them */
    readonly stockUsed: number;
    /** in hand and not touched */
    readonly stockLeft: number;
    /** pieces of stock to add for one list more */
    readonly stockForOneMore: number;
    /** length of the last piece of stock used behind its last strip */
    readonly leftOver: Length;
    /** each piece of stock may be this much narrower before a list is lost; 0 for none */
    readonly narrowerBy: Length;
    /** ... or this much shorter */
    readonly shorterBy: Length;
    /** this much narrower, and the strips for those lists stay as they are */
    readonly asCutNarrowerBy: Length;
    /** ... or this much shorter */
    readonly asCutShorterBy: Length;
    /** MUSLIN_WARN_NO_SLACK when there is a list and narrower_by or shorter_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_substitution, muslin/cutlist.h */
export interface Substitution {
    /** the first row of which not one piece fits, from 0; -1 when all do */
    readonly unfitRow: number;
    /** pieces of stock; from yardage 0 */
    readonly stockNeeded: number;
    /** of those, not in hand */
    readonly stockMissing: number;
    /**
     * different fabrics that the list then shows, when each piece of stock needed is taken from another print as long
     * as there is one; from yardage 1; 0 for an empty list
     */
    readonly fabrics: number;
    /** pieces of stock of each of them, dealt evenly: at least so many; from yardage 0 */
    readonly perFabricLeast: number;
    /** ... and at most */
    readonly perFabricMost: number;
    /** from yardage: length needed; else 0 */
    readonly clothLength: Length;
    /** of that, not in hand */
    readonly clothMissing: Length;
    /** as in muslin_cutlist_yardage and muslin_cutlist_stock */
    readonly narrowerBy: Length;
    /** from yardage: what is in hand beyond cloth_length */
    readonly shorterBy: Length;
    /** that the last strips of all rows could still give */
    readonly sparePieces: number;
    /** 1 when every row can be cut from it; else all but unfit_row is 0 */
    readonly possible: boolean;
    /** 1 when what is in hand suffices */
    readonly enough: boolean;
    /**
     * MUSLIN_WARN_NO_SLACK when a piece is wanted and narrower_by is 0 or, where it is enough or from pieces of stock,
     * shorter_by
     */
    readonly warnings: readonly Warning[];
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
    /**
     * as in muslin_cutlist_stock: of a list of one row, so many more than spare_pieces come from the stock that is
     * needed; from yardage 0
     */
    readonly restPieces: number;
}

/** struct muslin_corner_spec, muslin/shape.h */
export interface CornerSpec {
    /** MUSLIN_SHAPE_OUTLINE, 0, 1, ... Initially 0. */
    readonly piece?: Whole;
    /** enum muslin_corner_tip; SHARP where an arc ends or starts. Initially "sharp". */
    readonly tip?: CornerTip | null;
    /** finished corner. Initially 0. */
    readonly x?: LengthLike;
    /** Initially 0. */
    readonly y?: LengthLike;
    /** of the edge, as stitched. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** of its seam, when pressed. Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the edge's arc; 0 for a straight edge. Initially 0. */
    readonly centreX?: LengthLike;
    /** Initially 0. */
    readonly centreY?: LengthLike;
    /** Initially 0. */
    readonly radius?: LengthLike;
    /** enum muslin_curve. Initially "straight". */
    readonly curve?: Curve | null;
}

/** struct muslin_shape, muslin/shape.h */
export interface Shape {
    readonly pieces: number;
    /** of the pieces together */
    readonly corners: number;
    /** edges of pieces that lie on the outline */
    readonly outsideEdges: number;
    /** the others: each is sewn to a neighbour */
    readonly insideEdges: number;
    /** of the outline along x, arcs included, up to a tick */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** of the polygon of the outline's corners, doubled square ticks */
    readonly finishedArea: bigint;
    /** 1 when some edge is an arc, so that the area is not the polygon's */
    readonly hasArcs: boolean;
}

/** struct muslin_template_corner, muslin/shape.h */
export interface TemplateCorner {
    /** row of the finished corner that it belongs to */
    readonly corner: number;
    /** enum muslin_curve: of the cut edge */
    readonly curve: Curve;
    /** cut corner, on the grid; may be negative */
    readonly x: Length;
    readonly y: Length;
    /** of a cut arc, else 0 */
    readonly centreX: Length;
    readonly centreY: Length;
    /** of a cut arc, to the nearest tick, a half up: r + e of a convex, r - e of a concave one */
    readonly radius: Length;
    /** 1 when the edge runs along a seam, 0 for the short cut across a tip or a step */
    readonly hasSeam: boolean;
}

/** struct muslin_shape_piece_spec, muslin/shape.h */
export interface ShapePieceSpec {
    /** 0, 1, ... Initially 0. */
    readonly piece?: Whole;
    /** where the straight grain runs on the piece, a direction; -MUSLIN_SHAPE_SIZE_MAX .. Initially 0. */
    readonly grainX?: LengthLike;
    /** MUSLIN_SHAPE_SIZE_MAX; both 0: say where it should run. Initially 0. */
    readonly grainY?: LengthLike;
    /** added all round the rectangles, 0 .. MUSLIN_SHAPE_SIZE_MAX: for a foundation, or for safety. Initially 0. */
    readonly margin?: LengthLike;
}

/** struct muslin_shape_piece, muslin/shape.h */
export interface ShapePiece {
    /** of the polygon of its corners, doubled square ticks */
    readonly finishedArea: bigint;
    /** of the polygon of the template's rounded corners, doubled square ticks */
    readonly cutArea: bigint;
    /** of the template along x, arcs included, up to a tick, without margin */
    readonly cutWidth: Length;
    /** along y */
    readonly cutHeight: Length;
    /** finished length of its longest straight edge, to the nearest tick; 0: it has none */
    readonly longest: Length;
    /** the straight grain: as given, or as recommended */
    readonly grainX: Length;
    readonly grainY: Length;
    /** cut size that holds template and margin, along the straight grain, up to a tick */
    readonly rectangleAlong: Length;
    /** across it: the cut width of a strip that holds them */
    readonly rectangleAcross: Length;
    /** row of the corner where the longest straight edge starts (the first of equals); -1 */
    readonly longestCorner: number;
    /** row of the edge that the recommended grain follows; -1 when it was given, or none */
    readonly grainCorner: number;
    /** edges that lie on the outline, wholly or in part; 0 without an outline */
    readonly outsideEdges: number;
    /** of them: arcs, and straight ones neither along nor across the grain */
    readonly biasEdges: number;
    /** 1 when some edge is an arc, so that areas are not the polygons' */
    readonly hasArcs: boolean;
    /** MUSLIN_WARN_BIAS_EDGE when there are bias edges */
    readonly warnings: readonly Warning[];
}

/** struct muslin_quarter_circle_spec, muslin/shape.h */
export interface QuarterCircleSpec {
    /** F, side of the finished square, 2 .. MUSLIN_SIZE_MAX / 4. Initially 0. */
    readonly finished?: LengthLike;
    /** r, of the seam, 1 .. F - 1. Initially 0. */
    readonly radius?: LengthLike;
    /** of every edge. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_quarter_circle, muslin/shape.h */
export interface QuarterCircle {
    /** r + 2 e: square that holds the convex piece, exact */
    readonly convexCutSquare: Length;
    /** r + e, from the finished corner of the square, rounded */
    readonly convexCutRadius: Length;
    /** straight edge from the cut corner to the cut arc, rounded */
    readonly convexCutLeg: Length;
    /** F + 2 e: square that the concave piece is cut from, exact */
    readonly concaveCutSquare: Length;
    /** r - e, from the same point, rounded */
    readonly concaveCutRadius: Length;
    /**
     * straight edge from the cut corner that is left of the square to the cut arc, rounded: the shorter of the two
     * kinds that the piece has
     */
    readonly concaveCutLeg: Length;
    /** e, from two cut edges of the square to the centre of the arcs, rounded */
    readonly centreInset: Length;
    /** r x pi / 2, the curved seam, rounded */
    readonly seamLength: Length;
}

/** struct muslin_regular_polygon, muslin/shape.h */
export interface RegularPolygon {
    /** each rounded on its own from the exact value */
    readonly side: Length;
    readonly flats: Length;
    readonly corners: Length;
    readonly centre: Length;
    /** doubled square ticks, nearest */
    readonly area: bigint;
}

/** struct muslin_unit_spec, muslin/unit.h */
export interface UnitSpec {
    /** W. Initially 0. */
    readonly finishedWidth?: LengthLike;
    /** H; 0 where the kind says so. Initially 0. */
    readonly finishedHeight?: LengthLike;
    /** finished leg of a snowball's corner; else 0. Initially 0. */
    readonly corner?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** customary addition to a half-square; 0: 3 1/2 s + 7/4 u, up to a tick. Initially 0. */
    readonly halfAddition?: LengthLike;
    /** ... and to a quarter-square; 0: 5 s + 5/2 u, up to a tick. Initially 0. */
    readonly quarterAddition?: LengthLike;
    /** OVERSIZE: room to trim each unit, beyond the customary size, where it is said above; else 0. Initially 0. */
    readonly trimRoom?: LengthLike;
    /** cut sizes are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly grid?: LengthLike;
    /** below grid. Initially 0. */
    readonly tolerance?: LengthLike;
    /** wanted, of the first hand. Initially 1. */
    readonly units?: Whole;
    /** wanted, of the other hand; 0 for kinds without hands (see the kinds). Initially 0. */
    readonly mirrored?: Whole;
    /** enum muslin_unit_kind. Initially "halfSquare". */
    readonly kind?: UnitKind | null;
    /** enum muslin_unit_method. Initially "twoAtATime". */
    readonly method?: UnitMethod | null;
    /** enum muslin_allowance_policy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** enum muslin_tip; matters where triangles or wedges are cut from strips. Initially "blunt". */
    readonly tip?: Tip | null;
    /** enum muslin_direction. Initially "up". */
    readonly direction?: Direction | null;
}

/** struct muslin_unit_plan, muslin/unit.h */
export interface UnitPlan {
    /** as the kind says; nearest tick where it is irrational */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /**
     * trim the sewn unit to this: finished + E, nearest tick; 0 for a single patch with slanted sides, which is not
     * trimmed
     */
    readonly unfinishedWidth: Length;
    /** ... finished + E */
    readonly unfinishedHeight: Length;
    readonly unitsPerRecipe: number;
    /** of these, the mirror image of the others: two, of a split quarter by TWO_AT_A_TIME; else 0 */
    readonly mirroredPerRecipe: number;
    /**
     * for units, up; of a split quarter for units and mirrored: by PIECES for both together, by TWO_AT_A_TIME for the
     * greater wish
     */
    readonly recipes: number;
    /** where hands are cut each for itself: for the other hand, up; else 0 */
    readonly mirroredRecipes: number;
    /** of all recipes, of either hand, beyond both wishes */
    readonly spareUnits: number;
    /** rows of muslin_unit_pieces() */
    readonly pieces: number;
    /** of one recipe, where all pieces leave the table as rectangles; else 0 */
    readonly cutArea: bigint;
    /** of its units: the finished area */
    readonly finishedArea: bigint;
    /** of its units: over all edges of all pieces, length x E / 2, tips excluded, up */
    readonly allowanceArea: bigint;
    /** what remains: cut - finished - allowance; all three 0 where cut_area is 0 */
    readonly wasteArea: bigint;
    /**
     * half-rectangle: the seam meets the raw edge so far from the raw corner, measured along the shorter raw side,
     * nearest tick; 0 elsewhere and for a square
     */
    readonly seamOffset: Length;
    /**
     * half-squares from the corners cut off by FLIPPED_CORNERS, of one recipe, when a second line is sewn E beside the
     * first
     */
    readonly bonusUnits: number;
    /** their size, down to a tick: corner as cut - sqrt 2 E; 0 when nothing is left */
    readonly bonusUnfinished: Length;
    /** 1 when outer edges of the unit lie on the bias */
    readonly biasOutside: boolean;
    /** MUSLIN_WARN_BIAS_EDGE; MUSLIN_WARN_BELOW_EXACT */
    readonly warnings: readonly Warning[];
    /**
     * eight-pointed star: what its diamonds as cut make it wider than W when every seam takes E, nearest tick;
     * negative: narrower; 0 elsewhere
     */
    readonly starWiderBy: Length;
}

/** struct muslin_unit_piece, muslin/unit.h */
export interface UnitPiece {
    /** of the rectangle; of a strip shape, its extent along the strip, up to a tick */
    readonly cutWidth: Length;
    /** of the rectangle; height of the strip */
    readonly cutHeight: Length;
    /** cut - exact need, down to a tick; negative: below the need */
    readonly surplusWidth: Length;
    readonly surplusHeight: Length;
    /** along a strip: each further `gives` pieces take this much, up to a tick */
    readonly pitch: Length;
    /**
     * the longer of a strip shape's two edges along the strip, as cut, up to a tick; any edge of an octagon; 0 for a
     * rectangle
     */
    readonly wideEdge: Length;
    /** the shorter one: 0 for a sharp tip */
    readonly narrowEdge: Length;
    /** of these, for one recipe */
    readonly count: number;
    /** ... for all recipes of this row's hand */
    readonly total: bigint;
    /** of the unit */
    readonly region: number;
    /** enum muslin_cut_shape */
    readonly shape: CutShape;
    /** enum muslin_cut_again */
    readonly again: CutAgain;
    /** pieces from each: 1, 2 or 4 */
    readonly gives: number;
    /** enum muslin_grain, of the pieces in the end */
    readonly grain: Grain;
    /** enum muslin_hand */
    readonly hand: Hand;
    /**
     * degrees: of a wedge its point, of another strip shape or an octagon where a slanted cut leaves the edge; 0 for a
     * rectangle
     */
    readonly angle: number;
    /**
     * of a star's squares: cut - what its diamonds as cut ask for, down to a tick; below 0 where it is smaller; 0
     * elsewhere
     */
    readonly starExcess: Length;
}

/** struct muslin_unit_stock_spec, muslin/unit.h */
export interface UnitStockSpec {
    /** the longer side of a strip; 1 .. MUSLIN_SIZE_MAX. Initially 5 in. */
    readonly width?: LengthLike;
    /** cut width of a strip; 1 .. MUSLIN_SIZE_MAX. Initially 5 in. */
    readonly height?: LengthLike;
    /** how many there are for each region of the unit; 0 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly perRegion?: Whole;
    /** taken off the width of each for squaring; 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly endLoss?: LengthLike;
    /** finished sizes tried: multiples of this, 1 .. MUSLIN_UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly finishedGrid?: LengthLike;
}

/** struct muslin_unit_yield, muslin/unit.h */
export interface UnitYield {
    /** as the kind says; nearest tick where it is irrational */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** as in struct muslin_unit_plan: trim to this */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** of the stock's height, beyond the highest piece cut */
    readonly cutSpare: Length;
    /** that the stock gives */
    readonly recipes: number;
    /** of both hands, where a recipe makes both */
    readonly units: number;
    /** from one rectangle for each region alone */
    readonly unitsOfOne: number;
    /** enum muslin_unit_kind */
    readonly kind: UnitKind;
    /** enum muslin_unit_method */
    readonly method: UnitMethod;
}

/** struct muslin_unit_corner, muslin/unit.h */
export interface UnitCorner {
    /** to the right of the finished unit's lower left, nearest tick; a half goes up */
    readonly x: Length;
    /** upwards from it, so */
    readonly y: Length;
    /** number of the patch in the unit, from 1 */
    readonly patch: number;
    /** of the unit */
    readonly region: number;
    /** 0, 1, ... of the patch, counterclockwise */
    readonly corner: number;
    /** enum muslin_stage */
    readonly stage: Stage;
}

/** struct muslin_unit_step, muslin/unit.h */
export interface UnitStep {
    /** as the step says: the allowance s, a width, the unfinished width; 0 where none is */
    readonly measure: Length;
    /** of a step that trims the unit: the unfinished height; else 0 */
    readonly measureHeight: Length;
    /**
     * along the unfinished edge (CUT_TO_SHAPE, CUT_POINTS: the edge as cut), nearest tick, where the step says so; else
     * 0
     */
    readonly fromCorner: Length;
    /** enum muslin_unit_step_kind */
    readonly step: UnitStepKind;
    /** row of muslin_unit_pieces(), from 1; 0: what has been sewn so far, or none */
    readonly piece: number;
    /** the row it meets, so */
    readonly other: number;
    /** for one recipe */
    readonly times: number;
    /** PRESS_TO: towards this region; else 0 */
    readonly region: number;
    /** degrees, where the step cuts a strip shape or an octagon; else 0 */
    readonly angle: number;
}

/** struct muslin_setting_spec, muslin/setting.h */
export interface SettingSpec {
    /** finished, 1 or more. Initially 0. */
    readonly blockWidth?: LengthLike;
    /** finished, 1 or more. Initially 0. */
    readonly blockHeight?: LengthLike;
    /** of blocks. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** enum muslin_turning. Initially "none". */
    readonly turning?: Turning | null;
    /** a block is square enough for a quarter turn when its sides differ by no more. Initially 1/64 in. */
    readonly squareTolerance?: LengthLike;
}

/** struct muslin_setting, muslin/setting.h */
export interface Setting {
    readonly blocks: number;
    /** of them, turned: half of all, down, unless none is */
    readonly blocksTurned: number;
    /** of the top without borders */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** finished + 2 s + u */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    /** seams that join blocks into rows: rows x (columns - 1) */
    readonly blockSeams: number;
    /** seams that join the rows: rows - 1 */
    readonly rowSeams: number;
}

/** struct muslin_block_spec, muslin/setting.h */
export interface BlockSpec {
    /** a, across the block; 1 or more. Initially 0. */
    readonly segmentCut?: LengthLike;
    /** unfinished width of the strip set: along the segment; 1 or more. Initially 0. */
    readonly setUnfinished?: LengthLike;
    /** Initially 2. */
    readonly segments?: Whole;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_block, muslin/setting.h */
export interface Block {
    /** segments x a - (segments - 1)(2 s + u) */
    readonly unfinishedWidth: Length;
    /** set_unfinished */
    readonly unfinishedHeight: Length;
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** a - 2 s - u */
    readonly segmentFinished: Length;
    /**
     * the segment cut that would make the block square, down to a tick: the finished height over the segments, plus 2 s
     * + u; 0 if nothing would be seen of them
     */
    readonly squareSegmentCut: Length;
    /** 1 when width and height are equal */
    readonly square: boolean;
    /** 1 when square_segment_cut makes it exactly square */
    readonly squareExact: boolean;
}

/** struct muslin_run_spec, muslin/setting.h */
export interface RunSpec {
    /** wanted in one run; 0 .. MUSLIN_LENGTH_MAX / 2. Initially 0. */
    readonly length?: LengthLike;
    /** L, usable length of each strip. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** cut width of a strip. Initially 2 1/2 in. */
    readonly stripCut?: LengthLike;
    /** of the joins. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** enum muslin_join. Initially "straight". */
    readonly join?: Join | null;
}

/** struct muslin_run, muslin/setting.h */
export interface Run {
    /** least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    readonly strips: number;
    /** n - 1; 0 when n is 0 */
    readonly joins: number;
    readonly lossPerJoin: Length;
    /** the whole run, joined: n L - (n - 1) loss */
    readonly joined: Length;
    /** joined - length */
    readonly spare: Length;
    /** n x strip_cut */
    readonly clothLength: Length;
    /** each strip may be this much shorter before one more is needed: spare / n, down */
    readonly narrowerBy: Length;
    /** MUSLIN_WARN_NO_SLACK when spare is 0 and n is not */
    readonly warnings: readonly Warning[];
}

/** struct muslin_border_spec, muslin/setting.h */
export interface BorderSpec {
    /** of what it is sewn to, 1 or more; measure it through the middle. Initially 0. */
    readonly unfinishedWidth?: LengthLike;
    /** Initially 0. */
    readonly unfinishedLength?: LengthLike;
    /** W, finished width of the border, 1 or more. Initially 0. */
    readonly finishedBorder?: LengthLike;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** added to the exact least length of each mitred piece; else not used. Initially 0. */
    readonly mitreExtra?: LengthLike;
    /** enum muslin_border_style. Initially "sidesFirst". */
    readonly style?: BorderStyle | null;
    /** enum muslin_join, of strips across the width; not used lengthwise. Initially "straight". */
    readonly join?: Join | null;
    /** The flag MUSLIN_BORDER_LENGTHWISE. Initially false. */
    readonly lengthwise?: boolean;
}

/** struct muslin_border, muslin/setting.h */
export interface Border {
    /** of every strip: finished + 2 s + u */
    readonly cutWidth: Length;
    /** as cut, of each of the two sides, which run along the length */
    readonly sideCutLength: Length;
    /** as cut, of top and of bottom */
    readonly topCutLength: Length;
    /** side of four squares; 0 without cornerstones */
    readonly cornerstoneCut: Length;
    /** of the four pieces */
    readonly totalLength: Length;
    /** across the width, joined in one run; lengthwise: side by side, 1 to 4 */
    readonly strips: number;
    /** strips - 1; lengthwise 0 */
    readonly joins: number;
    /** lengthwise 0 */
    readonly lossPerJoin: Length;
    /** for the strips, or along the cloth when cut lengthwise; cornerstones apart */
    readonly clothLength: Length;
    /** of the run; lengthwise: width left beside the pieces of the first panel */
    readonly spare: Length;
    /** of the top with this border on: the next border's input */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /**
     * MUSLIN_WARN_DIAGONAL_STRETCH when strips are joined by DIAGONAL or BIAS_ENDS, MUSLIN_WARN_NO_SLACK when spare is
     * 0
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_setting_sashed_spec, muslin/setting.h */
export interface SettingSashedSpec {
    /** finished, 1 or more. Initially 0. */
    readonly blockWidth?: LengthLike;
    /** finished, 1 or more. Initially 0. */
    readonly blockHeight?: LengthLike;
    /** of blocks. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** finished, of the vertical sashes beside the blocks of a row; 0: there are none. Initially 0. */
    readonly sashWidth?: LengthLike;
    /** finished, of the horizontal sashes above and below the rows; 0: there are none. Initially 0. */
    readonly sashHeight?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** taken off each strip for squaring its ends; at most usable_width. Initially 0. */
    readonly endLoss?: LengthLike;
    /** The flag MUSLIN_SETTING_SASHED_FRAME. Initially false. */
    readonly frame?: boolean;
    /** The flag MUSLIN_SETTING_SASHED_CORNERSTONES. Initially false. */
    readonly cornerstones?: boolean;
}

/** struct muslin_setting_sashed_plan, muslin/setting.h */
export interface SettingSashedPlan {
    readonly blocks: number;
    /** c columns, r rows: r (c - 1), with a frame r (c + 1) */
    readonly verticalSashes: number;
    /** with cornerstones c (r - 1), with a frame c (r + 1); without them long sashes: r - 1, with a frame r + 1 */
    readonly horizontalSashes: number;
    /** (c - 1)(r - 1), with a frame (c + 1)(r + 1); 0 without cornerstones */
    readonly cornerstones: number;
    /** each finished size plus 2 s + u; the sizes of what there is none of are 0 */
    readonly verticalCutWidth: Length;
    /** a block's height as cut */
    readonly verticalCutLength: Length;
    readonly horizontalCutWidth: Length;
    /** a block's width as cut; of a long sash, a whole row's */
    readonly horizontalCutLength: Length;
    readonly cornerstoneCutWidth: Length;
    /** equal to the width where both kinds of sashes are equally wide */
    readonly cornerstoneCutHeight: Length;
    /** of the top without borders: c blocks and c - 1 sashes, with a frame c + 1 */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** finished + 2 s + u */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    /** what a block must measure before it is sewn in: finished + 2 s + u */
    readonly blockUnfinishedWidth: Length;
    readonly blockUnfinishedHeight: Length;
}

/** struct muslin_sash_piece, muslin/setting.h */
export interface SashPiece {
    /** of this kind */
    readonly pieces: number;
    /** along the strip */
    readonly cutLength: Length;
    /** of the strip */
    readonly cutWidth: Length;
    /** pieces from a strip across the cloth, down; 0 when a piece is longer than a strip */
    readonly perStrip: number;
    /** up */
    readonly strips: number;
    /** that the last strip could still give; 0 when strips are joined */
    readonly sparePieces: number;
    /** straight seams, when pieces longer than a strip are cut from one joined run; else 0 */
    readonly joins: number;
    /** strips x cut_width */
    readonly clothLength: Length;
    /**
     * the cloth may be this much narrower before a full strip gives one piece less; when strips are joined, before one
     * more of them is needed
     */
    readonly narrowerBy: Length;
    /** enum muslin_sash_kind */
    readonly kind: SashKind;
    /** MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_setting_alternate_spec, muslin/setting.h */
export interface SettingAlternateSpec {
    /** finished, 1 or more. Initially 0. */
    readonly blockWidth?: LengthLike;
    /** finished, 1 or more. Initially 0. */
    readonly blockHeight?: LengthLike;
    /** of blocks, pieced and plain. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** enum muslin_first_block. Initially "pieced". */
    readonly first?: FirstBlock | null;
}

/** struct muslin_setting_alternate_plan, muslin/setting.h */
export interface SettingAlternatePlan {
    /** with an odd number of blocks, the first kind is one more than the other */
    readonly pieced: number;
    readonly plain: number;
    /** finished + 2 s + u */
    readonly plainCutWidth: Length;
    readonly plainCutHeight: Length;
    /** of the top without borders */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** finished + 2 s + u */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
}

/** struct muslin_setting_line_spec, muslin/setting.h */
export interface SettingLineSpec {
    /** finished width of the sash between neighbours; 0: none. Initially 0. */
    readonly sash?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** finished size that the line should have; 0: none is wanted. Initially 0. */
    readonly wanted?: LengthLike;
    /** The flag MUSLIN_SETTING_LINE_FRAME. Initially false. */
    readonly frame?: boolean;
}

/** struct muslin_setting_line_plan, muslin/setting.h */
export interface SettingLinePlan {
    /** n - 1, with a frame n + 1; 0 without a sash */
    readonly sashes: number;
    /** the whole line */
    readonly finished: Length;
    /** finished + 2 s + u */
    readonly unfinished: Length;
    /** finished - wanted: negative when it falls short; 0 when no size is wanted */
    readonly longerBy: Length;
}

/** struct muslin_setting_line_place, muslin/setting.h */
export interface SettingLinePlace {
    /** finished, from the first edge of the line to this block's first edge */
    readonly start: Length;
    /** its own size */
    readonly finished: Length;
    /** finished + 2 s + u: what the block must measure before it is sewn in */
    readonly unfinished: Length;
}

/** struct muslin_setting_point_spec, muslin/setting.h */
export interface SettingPointSpec {
    /** B, finished side, 1 or more; above w in SASH_INNER. Initially 0. */
    readonly block?: LengthLike;
    /** c, of blocks side by side, without alternates; one is a runner. Initially 1. */
    readonly columns?: Whole;
    /** r. Initially 1. */
    readonly rows?: Whole;
    /** w; 0 in PLAIN, else 1 or more. Initially 0. */
    readonly sash?: LengthLike;
    /**
     * f: blocks float this far inside the edge, and it stays; 0 in SASH_CUT, SASH_INNER and with half-blocks, where
     * something is cut at the edge itself. Initially 0.
     */
    readonly setOff?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /**
     * added to the cut squares, half of it stands out at the edge and is trimmed away after sewing; 0 unless policy is
     * OVERSIZE. Initially 0.
     */
    readonly trimRoom?: LengthLike;
    /** customary addition to a square cut twice; 0: 5 s + 5 u / 2, 1 1/4 in for 1/4 in. Initially 0. */
    readonly sideAddition?: LengthLike;
    /** ... to a square cut once; 0: 7 s / 2 + 7 u / 4, 7/8 in for 1/4 in. Initially 0. */
    readonly cornerAddition?: LengthLike;
    /**
     * customary diagonal of a square, for instance 1414 over 1000: 0 (with a denominator of 0) for the root itself, or
     * 1 .. 1000000. Initially 0.
     */
    readonly factorNumerator?: Whole;
    /** 0 or 1 .. 1000000; additions and factor are not used with the exact policy. Initially 0. */
    readonly factorDenominator?: Whole;
    /** enum muslin_point_layout. Initially "plain". */
    readonly layout?: PointLayout | null;
    /** enum muslin_point_edge; half-blocks in PLAIN and SASH_CUT only. Initially "triangles". */
    readonly edge?: PointEdge | null;
    /** enum muslin_allowance_policy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** The flag MUSLIN_SETTING_POINT_DIAGONAL_FIRST. Initially false. */
    readonly diagonalFirst?: boolean;
}

/** struct muslin_setting_point_plan, muslin/setting.h */
export interface SettingPointPlan {
    /** c r */
    readonly blocks: number;
    /** (c - 1)(r - 1), pieced or plain */
    readonly alternates: number;
    /** 2 (c - 1) + 2 (r - 1); 0 with half-blocks */
    readonly sideTriangles: number;
    /** squares cut twice on the diagonal, four triangles each: up */
    readonly sideSquares: number;
    /** triangles those squares give beyond the need */
    readonly spareSideTriangles: number;
    /** 4 */
    readonly cornerTriangles: number;
    /** 2, cut once on the diagonal, two triangles each */
    readonly cornerSquares: number;
    /** 2 (c - 1) + 2 (r - 1) with half-blocks, each from a block of its own; else 0 */
    readonly halfBlocks: number;
    /** side of a plain alternate square: B + 2 s + u */
    readonly alternateCut: Length;
    /** as the policy asks, rounded as `cutting`; 0 without side triangles */
    readonly sideSquareCut: Length;
    /** exact need of it, up to a tick, without trimming room */
    readonly sideNeed: Length;
    /** cut less exact need, down to a tick; negative: rounding left it too small */
    readonly sideSurplus: Length;
    readonly cornerSquareCut: Length;
    readonly cornerNeed: Length;
    readonly cornerSurplus: Length;
    /** half-blocks: cut this far beyond the diagonal, s + u / 2 up to a tick; 0 where there are none */
    readonly halfBlockBeyond: Length;
    /** finished diagonal of a block, B sqrt 2, rounded as `measuring` */
    readonly diagonal: Length;
    /** value less exact, down to a tick, as in struct muslin_rounded */
    readonly diagonalError: Length;
    /** of the centre without borders, rounded once as `measuring` */
    readonly finishedWidth: Length;
    readonly widthError: Length;
    readonly finishedLength: Length;
    readonly lengthError: Length;
    /** finished_width + 2 s + u */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    /** whole ones */
    readonly sashes: number;
    /** SASH_INNER: those that end at the edge */
    readonly edgeSashes: number;
    /** whole ones */
    readonly cornerstones: number;
    /** SASH_CUT: triangles at the edge, 2 c + 2 r */
    readonly edgeCornerstones: number;
    /** squares cut twice on the diagonal, four of those triangles each: up */
    readonly edgeCornerstoneSquares: number;
    /** w + 2 s + u */
    readonly sashCutWidth: Length;
    /** B + 2 s + u */
    readonly sashCutLength: Length;
    /** long side before the end is cut at 45 degrees: B + (1 + 1 / sqrt 2)(2 s + u), rounded as `cutting` */
    readonly edgeSashCutLength: Length;
    /** w + 2 s + u */
    readonly cornerstoneCut: Length;
    /** side of the squares for edge cornerstones, made like the side squares */
    readonly edgeCornerstoneCut: Length;
    /** 1 when the whole outer edge lies on the straight grain: neither half-blocks nor edge sashes */
    readonly straightGrain: boolean;
    /**
     * MUSLIN_WARN_BIAS_EDGE when it does not; MUSLIN_WARN_OFF_GRID when a square that was rounded by its diagonal does
     * not lie on the cutting grid
     */
    readonly warnings: readonly Warning[];
    /** as of the side square; 0 without edge cornerstones */
    readonly edgeCornerstoneNeed: Length;
    readonly edgeCornerstoneSurplus: Length;
    /** what there is to trim at the edge of the quilt: half of side_surplus, down to a tick */
    readonly sideRoom: Length;
    /** half of corner_surplus, at both edges */
    readonly cornerRoom: Length;
    /** half of edge_cornerstone_surplus */
    readonly edgeCornerstoneRoom: Length;
}

/** struct muslin_logcabin_spec, muslin/rounds.h */
export interface LogcabinSpec {
    /** finished, or cut with the flag. Initially 0. */
    readonly centreWidth?: LengthLike;
    /** Initially 0. */
    readonly centreHeight?: LengthLike;
    /**
     * of every log, finished or cut as above; not used, and may be 0, where an array of widths is given. Initially 0.
     */
    readonly logWidth?: LengthLike;
    /** 1 .. MUSLIN_ROUNDS_MAX. Initially 0. */
    readonly rounds?: Whole;
    /** alike, cut together; 1 .. MUSLIN_LOGCABIN_BLOCKS_MAX. Initially 1. */
    readonly blocks?: Whole;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it; 0: strips are not counted. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** of each strip, where its ends are squared; 0 or more. Initially 0. */
    readonly endLoss?: LengthLike;
    /** enum muslin_log_order. Initially "round". */
    readonly order?: LogOrder | null;
    /** enum muslin_side: the side of each round's first log. Initially "top". */
    readonly start?: Side | null;
    /** enum muslin_log_turn: where the next side lies. Initially "clockwise". */
    readonly turn?: LogTurn | null;
    /** The flag MUSLIN_LOGCABIN_GIVEN_CUT. Initially false. */
    readonly givenCut?: boolean;
}

/** struct muslin_logcabin, muslin/rounds.h */
export interface Logcabin {
    readonly centreCutWidth: Length;
    readonly centreCutHeight: Length;
    /** of the block */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** in one block */
    readonly logs: number;
    /** of strips: rows of muslin_logcabin_strips() */
    readonly kinds: number;
    /** cut lengths of all logs of the first half, of all blocks, end to end */
    readonly firstLength: Length;
    /** of the second half */
    readonly secondLength: Length;
    /** cut length */
    readonly longestLog: Length;
    /** the plain running length over the strip, up, for each kind: no plan needs fewer */
    readonly stripsLeast: number;
    /**
     * of the logs, cut without joins as muslin_logcabin_strips() says: at most so many are needed; 0 when not counted,
     * as above
     */
    readonly strips: number;
    /** strips x their cut widths; the centres' strips apart */
    readonly clothLength: Length;
    /** 1 when the block is as wide as high */
    readonly square: boolean;
    /**
     * width of the strips the centres are cut from: their height or their width as cut, whichever takes less cloth,
     * then the lesser; 0 when not counted, as all below
     */
    readonly centreStripCut: Length;
    readonly centresPerStrip: number;
    /** for all blocks, up */
    readonly centreStrips: number;
    /** centre_strips x centre_strip_cut */
    readonly centreClothLength: Length;
}

/** struct muslin_logcabin_log, muslin/rounds.h */
export interface LogcabinLog {
    /** from 1 */
    readonly round: number;
    /** the raw edge it is sewn to */
    readonly cutLength: Length;
    readonly cutWidth: Length;
    readonly finishedLength: Length;
    readonly finishedWidth: Length;
    /** cut lengths so far, of one block */
    readonly runningLength: Length;
    /** what the block must measure now, this log sewn on and pressed */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** enum muslin_side */
    readonly side: Side;
    /** enum muslin_log_half */
    readonly half: LogHalf;
    /** 1 when it is its round's last: measure here, and square up */
    readonly closesRound: boolean;
}

/** struct muslin_logcabin_strip, muslin/rounds.h */
export interface LogcabinStrip {
    readonly cutWidth: Length;
    /** logs */
    readonly pieces: number;
    /** of them, cut length */
    readonly longest: Length;
    /** cut lengths end to end */
    readonly length: Length;
    /** length over the usable width without its end loss, up; 0 when not counted */
    readonly stripsLeast: number;
    /** cut without joins; 0 when not counted */
    readonly strips: number;
    /** strips x cut_width */
    readonly clothLength: Length;
    /** enum muslin_log_half */
    readonly half: LogHalf;
}

/** struct muslin_logcabin_fit_spec, muslin/rounds.h */
export interface LogcabinFitSpec {
    /** finished side of the block. Initially 0. */
    readonly wanted?: LengthLike;
    /** finished side of the centre, 1 or more and less than wanted. Initially 0. */
    readonly centre?: LengthLike;
    /** 1 .. MUSLIN_ROUNDS_MAX; for muslin_logcabin_log_for(). Initially 0. */
    readonly rounds?: Whole;
    /** for muslin_logcabin_rounds_for(). Initially 0. */
    readonly logFinished?: LengthLike;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
    /** enum muslin_log_order. Initially "round". */
    readonly order?: LogOrder | null;
}

/** struct muslin_logcabin_fit, muslin/rounds.h */
export interface LogcabinFit {
    readonly rounds: number;
    /** in the block's width: 2 x rounds, or rounds with MUSLIN_LOG_ORDER_QUARTER */
    readonly logsAcross: number;
    /** the log that finishes the block exactly: wanted - centre ... */
    readonly exactNumerator: Length;
    /** ... over logs_across */
    readonly exactDenominator: number;
    readonly logFinished: Length;
    readonly logCut: Length;
    /** centre + logs_across x log_finished */
    readonly blockFinished: Length;
    /** wanted - block_finished; negative when the block comes out larger */
    readonly rest: Length;
    /**
     * the finished centre with which the block comes out as wanted: centre + rest; no centre does when it is 0 or less
     */
    readonly centreToFit: Length;
    /** the block with one round more */
    readonly nextFinished: Length;
}

/** struct muslin_frame_spec, muslin/rounds.h */
export interface FrameSpec {
    /** finished, as all sizes here. Initially 0. */
    readonly openingWidth?: LengthLike;
    /** Initially 0. */
    readonly openingHeight?: LengthLike;
    /** W. Initially 0. */
    readonly frameWidth?: LengthLike;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it; 0: strips are not counted. Initially 40 in. */
    readonly usableWidth?: LengthLike;
}

/** struct muslin_frame, muslin/rounds.h */
export interface Frame {
    /** of the strip: W + m */
    readonly cutWidth: Length;
    /** raw long edge of top and bottom, from tip to tip, rounded */
    readonly topLong: Length;
    readonly topLongError: Length;
    /** raw short edge: 2 cut_width less than the long one, as its ends leave it */
    readonly topShort: Length;
    readonly sideLong: Length;
    readonly sideLongError: Length;
    readonly sideShort: Length;
    /** of one strip that holds all four as cut, each turned against the one before */
    readonly stripLength: Length;
    /** of the whole */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /**
     * across the cloth, 1 to 4, the fewest that hold the four pieces without joins; 0 when not counted, or when a piece
     * is longer than such a strip
     */
    readonly strips: number;
    /** strips x cut_width */
    readonly clothLength: Length;
}

/** struct muslin_frame_corner, muslin/rounds.h */
export interface FrameCorner {
    /** rounded */
    readonly x: Length;
    readonly xError: Length;
    readonly y: Length;
    readonly yError: Length;
    /** enum muslin_frame_piece */
    readonly piece: FramePiece;
    /** enum muslin_frame_line */
    readonly line: FrameLine;
}

/** struct muslin_medallion_spec, muslin/rounds.h */
export interface MedallionSpec {
    /** finished. Initially 0. */
    readonly centreWidth?: LengthLike;
    /** Initially 0. */
    readonly centreHeight?: LengthLike;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
    /** The flag MUSLIN_MEDALLION_EQUAL_COPING. Initially false. */
    readonly equalCoping?: boolean;
}

/** struct muslin_medallion_row, muslin/rounds.h */
export interface MedallionRow {
    /** enum muslin_round_kind. Initially "plain". */
    readonly kind?: RoundKind | null;
    /** enum muslin_round_corner. Initially "squares". */
    readonly corner?: RoundCorner | null;
    /**
     * finished width of the border, of PIECED the depth of a unit; of COPING the least width wanted, which may be 0.
     * Initially 0.
     */
    readonly width?: LengthLike;
    /** PIECED: finished length of a unit along the border; else not used, 0 or more. Initially 0. */
    readonly repeat?: LengthLike;
    /** COPING: the greatest width allowed, width or more; else not used, 0 or more. Initially 0. */
    readonly most?: LengthLike;
    /** out: finished, within this round. Initially 0. */
    readonly beforeWidth?: LengthLike;
    /** Initially 0. */
    readonly beforeHeight?: LengthLike;
    /** finished, with this round. Initially 0. */
    readonly afterWidth?: LengthLike;
    /** Initially 0. */
    readonly afterHeight?: LengthLike;
    /** finished width of both side borders together: after_width - before_width. Initially 0. */
    readonly sidePair?: LengthLike;
    /** Initially 0. */
    readonly topPair?: LengthLike;
    /** of one of them, half a pair, down: where a coping pair is odd, one of the two is a tick wider. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** Initially 0. */
    readonly topFinished?: LengthLike;
    /** width of a side strip as cut, of PIECED the unfinished depth; 0 without a strip. Initially 0. */
    readonly sideCut?: LengthLike;
    /** Initially 0. */
    readonly topCut?: LengthLike;
    /** length of a side as cut, of PIECED unfinished: what it must measure. Initially 0. */
    readonly sideLength?: LengthLike;
    /** Initially 0. */
    readonly topLength?: LengthLike;
    /** PIECED: whole units in each side ... Initially 0. */
    readonly sideUnits?: Whole;
    /** ... and in top and bottom each. Initially 0. */
    readonly topUnits?: Whole;
    /** in the round: 2 x both, corner squares apart. Initially 0. */
    readonly units?: Whole;
    /** 4 or 0; cut as wide as side_cut and as high as top_cut. Initially 0. */
    readonly cornerSquares?: Whole;
    /** PIECED: of the run, beyond its whole units. Initially 0. */
    readonly sideRest?: LengthLike;
    /** Initially 0. */
    readonly topRest?: LengthLike;
    /** PIECED: repeat + m. Initially 0. */
    readonly unitUnfinished?: LengthLike;
    /** 1 unless a PIECED round leaves a rest on a side or on the top. Initially 0. */
    readonly divides?: Whole;
    /** 1 when side and top differ in width: COPING only. Initially false. */
    readonly unequal?: boolean;
    /**
     * after_width + m: what the top must measure with this round, and how long a row for top or bottom is with its
     * corner squares. Initially 0.
     */
    readonly afterUnfinishedWidth?: LengthLike;
    /** Initially 0. */
    readonly afterUnfinishedHeight?: LengthLike;
}

/** struct muslin_medallion, muslin/rounds.h */
export interface Medallion {
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** pieced rounds that leave a rest */
    readonly undivided: number;
    /** coping rounds whose sides differ from top and bottom */
    readonly unequal: number;
    /** in all pieced rounds */
    readonly units: number;
    /** in all rounds */
    readonly cornerSquares: number;
}

/** struct muslin_repeat_spec, muslin/rounds.h */
export interface RepeatSpec {
    /** the run to be filled. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** length of a unit along it. Initially 0. */
    readonly repeatFinished?: LengthLike;
    /** that share what the units leave; 0 .. MUSLIN_COUNT_MAX. Initially 0. */
    readonly spacers?: Whole;
    /** finished, 0 or more; without spacers not used. Initially 0. */
    readonly spacerLeast?: LengthLike;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_repeat, muslin/rounds.h */
export interface Repeat {
    /** the most that do not pass the side */
    readonly unitsBelow: number;
    /** what they leave */
    readonly restBelow: Length;
    /** the fewest that reach it */
    readonly unitsAbove: number;
    /** how far they pass it */
    readonly overAbove: Length;
    /** of the two, the nearer; the larger when equally near */
    readonly unitsNearest: number;
    /** the repeat with which units_below fill the side, rounded; 0 without a unit */
    readonly repeatBelow: Length;
    readonly repeatBelowError: Length;
    /** the repeat with which units_above fill it */
    readonly repeatAbove: Length;
    readonly repeatAboveError: Length;
    /** repeat_finished + m */
    readonly unitUnfinished: Length;
    /** with spacers: the most that leave every spacer its least; else units_below */
    readonly units: number;
    /** what they leave; the exact spacer is this over `spacers` */
    readonly shared: Length;
    /** rounded; 0 without spacers */
    readonly spacerFinished: Length;
    /** spacer_finished + m; 0 without */
    readonly spacerCut: Length;
    /** shared - spacers x spacer_finished; negative when they pass the side */
    readonly leftOver: Length;
    /** 1 when the units alone fill the side */
    readonly divides: boolean;
    /**
     * side - units_below x repeat_below: what rounding leaves, negative when they pass the side; 0 without a unit. The
     * exact repeat is the side over the units
     */
    readonly belowLeftOver: Length;
    /** side - units_above x repeat_above */
    readonly aboveLeftOver: Length;
}

/** struct muslin_common_repeat, muslin/rounds.h */
export interface CommonRepeat {
    /** the greatest length that divides both sides */
    readonly common: Length;
    /** the repeat is this part of it: common / parts exactly */
    readonly parts: number;
    /** finished, rounded */
    readonly repeat: Length;
    readonly repeatError: Length;
    /** units along the width */
    readonly across: number;
    /** units along the height */
    readonly down: number;
}

/** struct muslin_point_border_spec, muslin/rounds.h */
export interface PointBorderSpec {
    /** the run to be filled. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** of a square: the depth of the border; 0: as `squares` need it to fill the side. Initially 0. */
    readonly diagonalFinished?: LengthLike;
    /**
     * in the run, 1 .. MUSLIN_POINT_BORDER_SQUARES_MAX, when no diagonal is given; else not used, 0 or more. Initially
     * 0.
     */
    readonly squares?: Whole;
    /** alike, counted together; 1 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly runs?: Whole;
    /** Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_point_border, muslin/rounds.h */
export interface PointBorder {
    /** the finished diagonal D, exactly: this over ... */
    readonly diagonalNumerator: Length;
    /** ... this, 1 when it was given */
    readonly diagonalDenominator: number;
    /** rounded as `measuring` */
    readonly diagonalFinished: Length;
    readonly diagonalError: Length;
    readonly squaresPerRun: number;
    /** of the side, beyond the squares */
    readonly rest: Length;
    /** D / sqrt 2, rounded as `measuring` */
    readonly squareFinished: Length;
    readonly squareFinishedError: Length;
    /** D / sqrt 2 + m, rounded as `cutting`: also the strip squares are cut from */
    readonly squareCut: Length;
    readonly squareCutError: Length;
    /** a square cut twice, corner to corner, for four triangles: D + (1 + sqrt 2) m */
    readonly settingCut: Length;
    readonly settingCutError: Length;
    /** a square cut once for two half triangles: D / 2 + (1 + 1 / sqrt 2) m */
    readonly endCut: Length;
    readonly endCutError: Length;
    /** depth of the border: D, rounded, + m */
    readonly borderUnfinished: Length;
    /** in all runs */
    readonly squares: number;
    /** two for each pair of neighbours */
    readonly settingTriangles: number;
    /** to cut for them, a quarter each, up */
    readonly settingSquares: number;
    /** four a run */
    readonly endTriangles: number;
    /** two a run */
    readonly endSquares: number;
    /**
     * what rounding makes of a run: its squares as cut, sewn with the seams given, less as many of D, to the nearest
     * tick; negative when shorter
     */
    readonly runLongerBy: Length;
}

/** struct muslin_bed_spec, muslin/fit.h */
export interface BedSpec {
    /** 1 or more. Initially 0. */
    readonly mattressWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly mattressLength?: LengthLike;
    /** 1 or more for DEPTH and OVER_JOINT. Initially 0. */
    readonly mattressDepth?: LengthLike;
    /** floor to top of mattress; 1 or more for FLOOR, else 0 if unknown. Initially 0. */
    readonly floorHeight?: LengthLike;
    /** added to the depth by OVER_JOINT. Initially 3 in. */
    readonly beyondDepth?: LengthLike;
    /** left and right, for GIVEN. Initially 0. */
    readonly sideDrop?: LengthLike;
    /** for GIVEN and with MUSLIN_BED_FOOT_GIVEN. Initially 0. */
    readonly footDrop?: LengthLike;
    /** beyond the mattress at the head, where the quilt hangs there too. Initially 0. */
    readonly headDrop?: LengthLike;
    /** to fold under and over the pillows. Initially 0. */
    readonly pillowTuck?: LengthLike;
    /**
     * what quilting will take up of width and of length: 1-3 in or more on a bed quilt (Standard quilt sizes for
     * mattresses); measure a sample. Initially 0.
     */
    readonly quiltingExtra?: LengthLike;
    /** enum muslin_drop. Initially "depth". */
    readonly drop?: Drop | null;
    /** enum muslin_foot_corner. Initially "square". */
    readonly footCorner?: FootCorner | null;
    /** The flag MUSLIN_BED_FOOT_GIVEN. Initially false. */
    readonly footGiven?: boolean;
}

/** struct muslin_bed, muslin/fit.h */
export interface Bed {
    /** on each side, by the rule asked for */
    readonly sideDrop: Length;
    readonly footDrop: Length;
    /** of the quilt on the bed: mattress + 2 side drops */
    readonly finishedWidth: Length;
    /** mattress + head drop + foot drop + pillow tuck */
    readonly finishedLength: Length;
    /** finished width of the top to piece: the same and quilting_extra */
    readonly topWidth: Length;
    readonly topLength: Length;
    /**
     * how far below the mattress a foot corner reaches along the cloth, up to a tick: its point, sqrt(side drop^2 +
     * foot drop^2), so 1.414 drops where they are equal; when rounded, the longer of the two drops
     */
    readonly cornerHang: Length;
    /** of the quarter circle to draw: the shorter of the two drops; 0 when square */
    readonly cornerRadius: Length;
    /**
     * how far the point stands beyond that circle, (sqrt 2 - 1) radii, up to a tick: what is lost of the corner along
     * its diagonal; 0 when square
     */
    readonly cornerCutOff: Length;
    /** floor_height - corner_hang, below 0 when the corner lies on the floor; 0 where floor_height is 0 */
    readonly cornerClearance: Length;
    /** 1 when floor_height is given and the corner hangs lower: feet catch in it */
    readonly cornerTouches: boolean;
    /** MUSLIN_WARN_SMALL_QUILT: no side of the mattress, as of a crib's, passes 60 in */
    readonly warnings: readonly Warning[];
}

/** struct muslin_bed_covered_spec, muslin/fit.h */
export interface BedCoveredSpec {
    /** finished, 1 or more. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** finished, 1 or more. Initially 0. */
    readonly quiltLength?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly mattressWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly mattressLength?: LengthLike;
    /** 0 if unknown. Initially 0. */
    readonly mattressDepth?: LengthLike;
    /** from the floor to the top of the mattress; 0 if unknown. Initially 0. */
    readonly floorHeight?: LengthLike;
    /** Initially 0. */
    readonly headDrop?: LengthLike;
    /** Initially 0. */
    readonly pillowTuck?: LengthLike;
    /** enum muslin_foot_corner. Initially "square". */
    readonly footCorner?: FootCorner | null;
}

/** struct muslin_bed_cover, muslin/fit.h */
export interface BedCover {
    /**
     * on each side, half of what is left over, down to a tick; below 0 where the quilt is narrower than the mattress
     */
    readonly sideDrop: Length;
    /** what is left of the length; below 0 where the quilt does not reach the foot */
    readonly footDrop: Length;
    /** how much wider it must be for the sides to hang to the mattress's depth; 0: it is wide enough */
    readonly shortWidth: Length;
    /** the same for the length */
    readonly shortLength: Length;
    /** as in struct muslin_bed; 0 where a drop is below 0 */
    readonly cornerHang: Length;
    /** as in struct muslin_bed */
    readonly cornerClearance: Length;
    /** 1 when the quilt covers the top of the mattress */
    readonly reachesEdges: boolean;
    /** 1 when it hangs to the depth on both sides and at the foot */
    readonly reachesDepth: boolean;
    /** 1 when floor_height is given and a foot corner hangs lower */
    readonly cornerTouches: boolean;
    /** MUSLIN_WARN_SMALL_QUILT: no side of quilt or of mattress is longer than 60 in */
    readonly warnings: readonly Warning[];
    /**
     * how far each side hangs below the mattress's lower edge, down to a tick: side_drop less the depth; 0: it just
     * reaches it, below 0: it falls short
     */
    readonly beyondSide: Length;
    /** the same at the foot */
    readonly beyondFoot: Length;
}

/** struct muslin_fit_spec, muslin/fit.h */
export interface FitSpec {
    /** 1 or more, with borders. Initially 0. */
    readonly wantedWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly wantedLength?: LengthLike;
    /** how much narrower it may come out. Initially 0. */
    readonly widthUnder?: LengthLike;
    /** how much wider. Initially 0. */
    readonly widthOver?: LengthLike;
    /** Initially 0. */
    readonly lengthUnder?: LengthLike;
    /** Initially 0. */
    readonly lengthOver?: LengthLike;
    /** 1 or more. Initially 6 in. */
    readonly blockLeast?: LengthLike;
    /** block_least or more. Initially 14 in. */
    readonly blockMost?: LengthLike;
    /** 1 or more. Initially 1/2 in. */
    readonly blockStep?: LengthLike;
    /** 1 or more where sashes are allowed; where they are not, all three are not looked at. Initially 1 in. */
    readonly sashLeast?: LengthLike;
    /** Initially 3 in. */
    readonly sashMost?: LengthLike;
    /** Initially 1/2 in. */
    readonly sashStep?: LengthLike;
    /** on each side, all borders together; 0: none. Initially 0. */
    readonly borderLeast?: LengthLike;
    /** Initially 0. */
    readonly borderMost?: LengthLike;
    /** 1 or more. Initially 1 in. */
    readonly borderStep?: LengthLike;
    /** Initially 1. */
    readonly columnsLeast?: Whole;
    /** Initially 100. */
    readonly columnsMost?: Whole;
    /** Initially 1. */
    readonly rowsLeast?: Whole;
    /** Initially 100. */
    readonly rowsMost?: Whole;
    /** list so many only; 0: all, to MUSLIN_COUNT_MAX. Initially 0. */
    readonly best?: Whole;
    /**
     * the most combinations of kind, block, sash and border that are tried, and the most settings that may be found,
     * listed or not; 1 .. MUSLIN_COUNT_MAX. Initially 1000000.
     */
    readonly workLimit?: Whole;
    /** enum muslin_fit_rank. Initially "nearest". */
    readonly rank?: FitRank | null;
    /** enum muslin_parity. Initially "any". */
    readonly columnsParity?: Parity | null;
    /** enum muslin_parity. Initially "any". */
    readonly rowsParity?: Parity | null;
    /** The flag MUSLIN_FIT_ALLOW_STRAIGHT. Initially false. */
    readonly allowStraight?: boolean;
    /** The flag MUSLIN_FIT_ALLOW_SASHED. Initially false. */
    readonly allowSashed?: boolean;
    /** The flag MUSLIN_FIT_ALLOW_FRAMED. Initially false. */
    readonly allowFramed?: boolean;
    /** The flag MUSLIN_FIT_ALLOW_ON_POINT. Initially false. */
    readonly allowOnPoint?: boolean;
}

/** struct muslin_fit, muslin/fit.h */
export interface Fit {
    /** enum muslin_fit_kind */
    readonly kind: FitKind;
    /**
     * 1 when width and length are exactly as wanted; always 0 on point, where they are no whole ticks even if off_width
     * and off_length are 0
     */
    readonly exact: boolean;
    readonly columns: number;
    readonly rows: number;
    readonly block: Length;
    /** 0 where the kind has none */
    readonly sash: Length;
    /** on each side */
    readonly border: Length;
    /** on point to the nearest tick, else exact */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** finished_width - wanted_width */
    readonly offWidth: Length;
    readonly offLength: Length;
    /** columns x rows */
    readonly blocks: number;
    /** on point (columns - 1)(rows - 1), else 0 */
    readonly alternates: number;
    /** what it is ranked by, the lowest first: ticks off in all; blocks and alternates; or minus the block in ticks */
    readonly rankKey: bigint;
}

/** struct muslin_fit_across_spec, muslin/fit.h */
export interface FitAcrossSpec {
    /** the width (or length) to fill, 1 or more. Initially 0. */
    readonly wanted?: LengthLike;
    /** on each side. Initially 0. */
    readonly border?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly block?: LengthLike;
    /** between blocks; 0: none. Initially 0. */
    readonly sash?: LengthLike;
    /** enum muslin_direction: fewer blocks, more, or the nearer of the two (ties: more). Initially "nearest". */
    readonly direction?: Direction | null;
    /** The flag MUSLIN_FIT_ACROSS_FRAME. Initially false. */
    readonly frame?: boolean;
}

/** struct muslin_fit_across_blocks, muslin/fit.h */
export interface FitAcrossBlocks {
    /** 1 or more */
    readonly blocks: number;
    /** of so many blocks, their sashes and both borders */
    readonly finishedWidth: Length;
    /** finished_width - wanted */
    readonly off: Length;
    /**
     * the blocks that would fill it, exact as a fraction: room / pitch, where room is wanted - 2 border + sash, or -
     * sash when framed, ...
     */
    readonly room: Length;
    /** ... and pitch is block + sash */
    readonly pitch: Length;
    /** 1 when it comes out at the wanted width */
    readonly exact: boolean;
}

/** struct muslin_fit_triangles_spec, muslin/fit.h */
export interface FitTrianglesSpec {
    /** 1 or more. Initially 0. */
    readonly wantedWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly wantedLength?: LengthLike;
    /** finished height of a triangle, 1 or more: the depth of a row. Initially 0. */
    readonly height?: LengthLike;
    /** enum muslin_direction: fewer rows, more, or the nearest (ties: more). Initially "nearest". */
    readonly rowsDirection?: Direction | null;
    /** enum muslin_direction, for the sides across. Initially "nearest". */
    readonly sidesDirection?: Direction | null;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_fit_triangle_rows, muslin/fit.h */
export interface FitTriangleRows {
    /** 1 or more */
    readonly rows: number;
    /** whole sides of triangles across, 1 or more */
    readonly sides: number;
    /** 2 height / sqrt 3, to the nearest tick */
    readonly side: Length;
    /** sides x 2 height / sqrt 3, rounded once to the nearest tick */
    readonly finishedWidth: Length;
    /** rows x height */
    readonly finishedLength: Length;
    /** finished - wanted */
    readonly offWidth: Length;
    readonly offLength: Length;
    /** whole ones, with squared ends: 2 sides - 1 a row */
    readonly triangles: number;
    /** two a row, one at each end ... */
    readonly halfTriangles: number;
    /** ... which are mirror images: so many lean to the left, so many to the right */
    readonly halvesEachHand: number;
    /** of the quilt, with E = 2 s + u on it: nearest tick */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    /**
     * cut width of the strips for triangles with sharp tips: height + 3/2 E (3 s where nothing is taken up), up to a
     * tick
     */
    readonly stripCut: Length;
    /** ... where the ruler cuts the upper tip off level with its allowance: height + E */
    readonly stripCutBlunt: Length;
    /**
     * of a whole triangle along the strip, from raw point to raw point, whether the upper tip is sharp or blunt: (2
     * height + 3 E) / sqrt 3, up to a tick
     */
    readonly cutBase: Length;
    /**
     * of a half triangle along the strip, from its straight side, which has its allowance too: cut_base / 2 + E / 2
     * before rounding, up to a tick
     */
    readonly halfCutBase: Length;
}

/** struct muslin_fit_rescale_spec, muslin/fit.h */
export interface FitRescaleSpec {
    /** of the scale, 1 .. INT64_MAX: 3 / 2 is half as large again. Initially 1. */
    readonly numerator?: Whole;
    /** 1 .. INT64_MAX. Initially 1. */
    readonly denominator?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** the ruler's marks, 1 or more: cut sizes shall lie on it. Initially 1/8 in. */
    readonly grid?: LengthLike;
}

/** struct muslin_fit_rescale_row, muslin/fit.h */
export interface FitRescaleRow {
    /** in: as it is, 1 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly finished?: LengthLike;
    /** finished x numerator / denominator, to the nearest tick, ties up ... Initially 0. */
    readonly newFinished?: LengthLike;
    /**
     * ... and what that leaves out, in denominators of a tick: exact is new_finished + rest / denominator. Initially 0.
     */
    readonly rest?: Whole;
    /** new_finished + 2 s + u. Initially 0. */
    readonly newCut?: LengthLike;
    /**
     * the largest cut size on the grid that is not larger than the exact one; 0 where nothing would be seen of it (2 s
     * + u or less). Initially 0.
     */
    readonly cutBelow?: LengthLike;
    /**
     * the nearest on the grid, ties up, of those of which something is seen (above 2 s + u): cut_above where the
     * nearest of all is no such one. Initially 0.
     */
    readonly cutNearest?: LengthLike;
    /** the smallest on the grid that is not smaller. Initially 0. */
    readonly cutAbove?: LengthLike;
    /** 1 when the exact cut size lies on the grid: all four are then the same. Initially false. */
    readonly onGrid?: boolean;
}

/** struct muslin_fit_rescaled, muslin/fit.h */
export interface FitRescaled {
    /** sizes that do not lie on the grid */
    readonly offGrid: number;
    /** the largest measure of which all finished sizes are whole multiples */
    readonly unit: Length;
    /**
     * what that unit may become so that every cut size lies on the grid: the next one not above the scale asked for, 0
     * if there is none ...
     */
    readonly unitBelow: Length;
    /** ... and the next one not below it, 0 if there is none */
    readonly unitAbove: Length;
    /** the nearer of the two as a scale in lowest terms, ties up: numerator / ... */
    readonly numerator: number;
    /** ... denominator; 0 / 1 if there is none */
    readonly denominator: number;
    /** MUSLIN_WARN_OFF_GRID */
    readonly warnings: readonly Warning[];
}

/** struct muslin_binding_width_spec, muslin/finishing.h */
export interface BindingWidthSpec {
    /** enum muslin_fold. Initially "double". */
    readonly fold?: Fold | null;
    /** s, from the raw edge of the binding to its seam. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** finished width shown on the front, from the seam to the edge of the quilt. Initially 1/4 in. */
    readonly front?: LengthLike;
    /** t of the quilt sandwich at the edge. Initially 0. */
    readonly thickness?: LengthLike;
    /** finished width wanted on the back; not used when binding_cut is given. Initially 1/4 in. */
    readonly back?: LengthLike;
    /** at the far edge of a single fold; not used for a double one. Initially 1/4 in. */
    readonly turnUnder?: LengthLike;
    /** 0: work out the cut width; else: work out what this one shows on the back. Initially 0. */
    readonly bindingCut?: LengthLike;
    /** warn when back and front differ by more than this. Initially 1/8 in. */
    readonly unevenLimit?: LengthLike;
}

/** struct muslin_binding_width, muslin/finishing.h */
export interface BindingWidth {
    /** C, of the strip */
    readonly cutWidth: Length;
    /** finished width shown on the back, half ticks down; below 0: it does not reach round */
    readonly back: Length;
    /** width after folding, before sewing: C/2 up for a double fold, C for a single one */
    readonly folded: Length;
    /**
     * MUSLIN_WARN_BINDING_UNEVEN beyond the limit; MUSLIN_WARN_BACK_TOO_NARROW when the back shows less than the front,
     * so that the seam stays bare; half ticks counted
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_binding_spec, muslin/finishing.h */
export interface BindingSpec {
    /** finished, of any outline, up to 4 x MUSLIN_SIZE_MAX; 0: 2 x (width + length). Initially 0. */
    readonly perimeter?: LengthLike;
    /** finished; not read when a perimeter is given. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** the same. Initially 0. */
    readonly quiltLength?: LengthLike;
    /** for the ends and the last join; sources use 10, 12, 15, 20, 24 in. Initially 12 in. */
    readonly extra?: LengthLike;
    /** of the outline, 0 .. MUSLIN_COUNT_MAX; 0 for a rounded one. Initially 4. */
    readonly corners?: Whole;
    /** added for each corner; most sources add none. Initially 0. */
    readonly cornerExtra?: LengthLike;
    /** cut width of the strips, 1 or more. Initially 2 1/2 in. */
    readonly bindingCut?: LengthLike;
    /** usable length of each strip, 1 or more. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** of the joins. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** purchase step, 1 or more. Initially 4 1/2 in. */
    readonly step?: LengthLike;
    /** cut on top of the need, 0 .. MUSLIN_COUNT_MAX. Initially 0. */
    readonly spareStrips?: Whole;
    /** enum muslin_join; BUTTED ignores the loss, as many published figures do. Initially "diagonal". */
    readonly join?: Join | null;
}

/** struct muslin_binding, muslin/finishing.h */
export interface Binding {
    /** finished */
    readonly perimeter: Length;
    /** perimeter + corners x corner_extra + extra: wanted in one run */
    readonly length: Length;
    /** for that run */
    readonly stripsNeeded: number;
    /** to cut: strips_needed + spare_strips */
    readonly strips: number;
    /** strips_needed - 1 */
    readonly joins: number;
    /** as of muslin_join_loss() */
    readonly lossPerJoin: Length;
    /** the run of the needed strips, without the spare ones */
    readonly joined: Length;
    /** joined - length: what is left at the last corner */
    readonly spare: Length;
    /** strips x binding_cut */
    readonly clothLength: Length;
    /** cloth_length up to the step */
    readonly bought: Length;
    /** the cloth may be this much narrower before another strip is needed, down */
    readonly narrowerBy: Length;
    /** MUSLIN_WARN_NO_SLACK when nothing is spare */
    readonly warnings: readonly Warning[];
}

/** struct muslin_bias_spec, muslin/finishing.h */
export interface BiasSpec {
    /** of the cloth piece, 1 or more; not read for the least square. Initially 0. */
    readonly width?: LengthLike;
    /** its other side; the tube: 1 or more, strips: the same as width or 0. Initially 0. */
    readonly length?: LengthLike;
    /** w, cut width of the bias strip, 1 or more. Initially 2 1/2 in. */
    readonly stripCut?: LengthLike;
    /** s, of the seams. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** length of bias strip, 1 or more; read for the least square only. Initially 0. */
    readonly wanted?: LengthLike;
    /** The flag MUSLIN_BIAS_BLUNT_ENDS. Initially false. */
    readonly bluntEnds?: boolean;
}

/** struct muslin_bias, muslin/finishing.h */
export interface Bias {
    /** of the tube; for separate strips: how many strips */
    readonly rounds: number;
    /** that take 2 sqrt 2 s off the run each: rounds - 1; 0 without a round */
    readonly joins: number;
    /** of bias strip obtained, down to a tick; 0 if none */
    readonly length: Length;
    /** side of the square to cut (least square), else 0 */
    readonly squareCut: Length;
    /** sqrt(wanted x w), nearest tick (least square), else 0: the published rule, a lower bound only */
    readonly areaRule: Length;
    /** length - wanted (least square), else 0 */
    readonly spare: Length;
}

/** struct muslin_batting_spec, muslin/finishing.h */
export interface BattingSpec {
    /** finished. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** Initially 0. */
    readonly quiltLength?: LengthLike;
    /** beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way. Initially 3 in. */
    readonly marginLeft?: LengthLike;
    /** Initially 3 in. */
    readonly marginRight?: LengthLike;
    /** Initially 3 in. */
    readonly marginTop?: LengthLike;
    /** Initially 3 in. */
    readonly marginBottom?: LengthLike;
    /** of batting sold by length, for pieces joined; 0 when not asked. Initially 0. */
    readonly rollWidth?: LengthLike;
    /** The flag MUSLIN_BATTING_FIXED. Initially false. */
    readonly fixed?: boolean;
}

/** struct muslin_batting, muslin/finishing.h */
export interface Batting {
    /** to cut: quilt and margins */
    readonly width: Length;
    readonly length: Length;
    /** row of MUSLIN_TABLE_BATTING, the smallest area that covers, the first of equals; -1 when none does */
    readonly package: number;
    /** as listed; 0 when none */
    readonly packageWidth: Length;
    readonly packageLength: Length;
    /** package beyond the need along the quilt's width, as it lies; 0 when none */
    readonly spareWidth: Length;
    /** ... and along its length */
    readonly spareLength: Length;
    /** 1 when the package lies turned a quarter: only where it does not cover upright */
    readonly turned: boolean;
    /** 1 when joined pieces run across the quilt, 0 when along its length */
    readonly joinedTurned: boolean;
    /** pieces of the roll laid edge to edge, without allowance; 0 when not asked */
    readonly joinedPieces: number;
    /** of roll to buy for them: the shorter of both ways; ties: fewer pieces, then along */
    readonly joinedLength: Length;
    /** joined_pieces - 1 */
    readonly joinedJoins: number;
}

/** struct muslin_backing_spec, muslin/finishing.h */
export interface BackingSpec {
    /** finished. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** Initially 0. */
    readonly quiltLength?: LengthLike;
    /** beyond the quilt; quilt and margins together at most MUSLIN_SIZE_MAX each way. Initially 4 in. */
    readonly marginLeft?: LengthLike;
    /** Initially 4 in. */
    readonly marginRight?: LengthLike;
    /** Initially 4 in. */
    readonly marginTop?: LengthLike;
    /** Initially 4 in. */
    readonly marginBottom?: LengthLike;
    /** from edge to edge of the cloth, 1 or more. Initially 40 in. */
    readonly fabricWidth?: LengthLike;
    /** cut off each edge: usable width u = fabric_width - 2 x selvage, 1 or more. Initially 0. */
    readonly selvage?: LengthLike;
    /** q, allowance of the backing's seams. Initially 1/2 in. */
    readonly allowance?: LengthLike;
    /** added to each panel's length, for squaring. Initially 0. */
    readonly endLoss?: LengthLike;
    /**
     * pattern repeat along the cloth; each length cut is a whole number of them, the first too; 0 for none. Initially
     * 0.
     */
    readonly repeat?: LengthLike;
    /** purchase step, 1 or more. Initially 4 1/2 in. */
    readonly step?: LengthLike;
    /**
     * enum muslin_print: a print with a direction forbids what would lie turned a quarter, that is turned panels, and
     * inserts, which are cut across the cloth. Initially "none".
     */
    readonly print?: Print | null;
    /** The flag MUSLIN_BACKING_ROUND_PANELS. Initially false. */
    readonly roundPanels?: boolean;
}

/** struct muslin_backing, muslin/finishing.h */
export interface Backing {
    /** enum muslin_backing_layout */
    readonly layout: BackingLayout;
    /** 0: this layout cannot serve; everything below is then 0 */
    readonly possible: boolean;
    /** 1 for the one that buys least; ties: fewest seams, then the lower number */
    readonly best: boolean;
    /** 1 when the cloth's length runs across the quilt */
    readonly turned: boolean;
    /** quilt and margins */
    readonly neededWidth: Length;
    readonly neededLength: Length;
    /** lengths of cloth of the full width; the strips of an insert are not counted */
    readonly panels: number;
    /** cut length of each, with end_trim and repeat */
    readonly panelLength: Length;
    /** sewn together: panels, or centre and sides, or two halves and an insert's strips */
    readonly pieces: number;
    /** in the finished backing, joins within an insert included */
    readonly seams: number;
    /** unfinished, of the backing as sewn, before trimming, along the quilt's width ... */
    readonly joinedWidth: Length;
    /** ... and length */
    readonly joinedLength: Length;
    /** exact: panels, and for an insert its strips one below the other */
    readonly clothLength: Length;
    /** one repeat more on the order, to shift the start; cloth_length without a repeat */
    readonly clothWithRepeat: Length;
    /** cloth_with_repeat up to the step, on the total, or length by length if asked */
    readonly bought: Length;
    /** the same under the other rounding rule */
    readonly otherRounding: Length;
    /**
     * the cloth may be this much narrower and what is bought still be enough for this layout, with as many panels and
     * strips; their widths change: plan again first
     */
    readonly narrowerBy: Length;
    /** cut width of each side panel (CENTRE) or of the insert (INSERT); else 0 */
    readonly stripCut: Length;
    /** MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_panel, muslin/finishing.h */
export interface Panel {
    /** enum muslin_panel_role */
    readonly role: PanelRole;
    /** from 1, from the left (seams along) or the top (seams across) */
    readonly position: number;
    /** across the cloth */
    readonly cutWidth: Length;
    /** along the cloth; of an insert this is its width in the backing */
    readonly cutLength: Length;
    /** equal pieces: more than 1 only for an insert, whose strips are joined end to end */
    readonly count: number;
}

/** struct muslin_hanging_spec, muslin/finishing.h */
export interface HangingSpec {
    /** finished. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** 0, 1 or 2. Initially 1. */
    readonly sleeves?: Whole;
    /** from each side edge of the quilt to the sleeve. Initially 1 in. */
    readonly inset?: LengthLike;
    /** between two sleeves, for a middle hook; not used for one. Initially 2 in. */
    readonly gap?: LengthLike;
    /** finished depth of the sleeve, lying flat; 1 or more where there is a sleeve. Initially 4 in. */
    readonly drop?: LengthLike;
    /** extra in the sleeve's front, so that the rod does not bulge the quilt. Initially 1/2 in. */
    readonly ease?: LengthLike;
    /** turned under at each end of a sleeve, in all. Initially 1 in. */
    readonly hem?: LengthLike;
    /** of the sleeve's long seam, of the label, and of the binding seam at the triangles. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** finished; 0 for no label. Initially 0. */
    readonly labelWidth?: LengthLike;
    /** finished, 1 or more where there is a label. Initially 0. */
    readonly labelHeight?: LengthLike;
    /** finished short side of corner triangles that hold a rod or a label; 0 for none. Initially 0. */
    readonly cornerTriangle?: LengthLike;
    /** how many triangles, 0 .. 4. Initially 0. */
    readonly corners?: Whole;
}

/** struct muslin_hanging, muslin/finishing.h */
export interface Hanging {
    /** as asked */
    readonly sleeves: number;
    /** finished length of each; 0 without a sleeve, and so are both cut sizes */
    readonly sleeveFinished: Length;
    /** finished + 2 hems */
    readonly sleeveCutLength: Length;
    /** 2 x drop + ease + 2 allowances: a tube */
    readonly sleeveCutWidth: Length;
    /** finished + 2 allowances; 0 without a label */
    readonly labelCutWidth: Length;
    readonly labelCutHeight: Length;
    /** squares folded once on the diagonal, raw sides into the binding seam */
    readonly cornerSquares: number;
    /** corner_triangle + 2 allowances; 0 without triangles */
    readonly cornerSquareCut: Length;
}

/** struct muslin_stripquilt_spec, muslin/stripquilt.h */
export interface StripquiltSpec {
    /** in hand. Initially 0. */
    readonly strips?: Whole;
    /** Initially 6. */
    readonly stripsPerSet?: Whole;
    /** 1 .. MUSLIN_STRIPQUILT_SEGMENTS_MAX. Initially 2. */
    readonly segmentsPerBlock?: Whole;
    /** of blocks. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** wanted; 0 for as many as the strips give. Initially 0. */
    readonly tops?: Whole;
    /** cut width of a strip, 1 or more. Initially 2 1/2 in. */
    readonly stripCut?: LengthLike;
    /** of the shortest strip. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** 0 for the cut that makes the block square. Initially 0. */
    readonly segmentCut?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** taken off each end, as in muslin_yield_spec. Initially 0. */
    readonly endTrim?: LengthLike;
    /** Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** Initially 0. */
    readonly resquareEvery?: Whole;
    /** Initially 0. */
    readonly foldClear?: LengthLike;
    /** enum muslin_turning. Initially "quarterAlternate". */
    readonly turning?: Turning | null;
    /** enum muslin_nesting. Initially "turn". */
    readonly nesting?: Nesting | null;
    /** as in muslin_setting_spec; also for segment_cut 0. Initially 1/64 in. */
    readonly squareTolerance?: LengthLike;
    /** The flag MUSLIN_YIELD_FROM_ONE_END. Initially false. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_stripquilt, muslin/stripquilt.h */
export interface Stripquilt {
    /** width of a strip set */
    readonly setUnfinished: Length;
    readonly setFinished: Length;
    /** what is seen of one strip */
    readonly stripFinished: Length;
    readonly segmentCut: Length;
    readonly segmentFinished: Length;
    readonly segmentsPerSet: number;
    readonly segmentsPerEnd: number;
    /** a set */
    readonly resquarings: number;
    /** the shortest strip that gives as many segments */
    readonly stripLeast: Length;
    /** how much shorter strips may be before a segment is lost */
    readonly stripShorterBy: Length;
    /** how much longer they must be to give more */
    readonly stripLongerForMore: Length;
    /** of each set, fold included */
    readonly stripLeftOver: Length;
    readonly blockUnfinishedWidth: Length;
    readonly blockUnfinishedHeight: Length;
    readonly blockFinishedWidth: Length;
    readonly blockFinishedHeight: Length;
    readonly blocksPerTop: number;
    /** in each top */
    readonly blocksTurned: number;
    readonly topFinishedWidth: Length;
    readonly topFinishedLength: Length;
    readonly topUnfinishedWidth: Length;
    readonly topUnfinishedLength: Length;
    /** that the strips make */
    readonly setsInHand: number;
    /** that those give */
    readonly topsInHand: number;
    /** planned: as wished, or all */
    readonly tops: number;
    /** to sew for them: one stack of segments each */
    readonly sets: number;
    readonly stripsUsed: number;
    readonly stripsLeft: number;
    /** beyond those in hand, to make tops_in_hand + 1 */
    readonly stripsForOneMoreTop: number;
    /** in all planned tops */
    readonly blocks: number;
    /** used in them */
    readonly segments: number;
    /** cut but not used */
    readonly segmentsLeft: number;
    /** segments to take from each of the last stacks ... */
    readonly stackLow: number;
    /** ... and from each of the first `stacks_high`: one more, or as many ... */
    readonly stackHigh: number;
    /** ... and then this is all the sets */
    readonly stacksHigh: number;
    /** rows of muslin_stripquilt_groups */
    readonly groups: number;
    /** end for end, in all blocks (MUSLIN_NESTING_TURN), else 0 */
    readonly segmentsTurned: number;
    /** joins inside all blocks that do not nest (MUSLIN_NESTING_NAME), else 0 */
    readonly placesNotNesting: number;
    /** 1 when a block is square to the tick */
    readonly blockSquare: boolean;
    /** MUSLIN_WARN_NO_SLACK, _NEST_CONFLICT, _SET_REPEATS, _SMALL_QUILT */
    readonly warnings: readonly Warning[];
}

/** struct muslin_block_group, muslin/stripquilt.h */
export interface BlockGroup {
    /** number of the group's first block, from 1 */
    readonly firstBlock: number;
    readonly blocks: number;
    /** members of `sets` in use */
    readonly segments: number;
    /** bit j: segment j, from 0, is turned end for end */
    readonly turned: number;
    /** bit j: segments j and j + 1 do not nest */
    readonly notNesting: number;
    /** 1 when a set occurs twice in each of these blocks */
    readonly repeats: boolean;
    /**
     * enum muslin_set_pressing: the way segment 0 ends up pressed, turning counted; from there the segments alternate
     * where they nest
     */
    readonly firstPressing: SetPressing;
    /** numbers of the sets, from 1; 0 behind the last */
    readonly sets: readonly number[];
}

/** struct muslin_piecing_spec, muslin/supplies.h */
export interface PiecingSpec {
    /** strip sets. Initially 0. */
    readonly sets?: Whole;
    /** 1 or more. Initially 1. */
    readonly stripsPerSet?: Whole;
    /** length of the seams in a set. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** equal tops of blocks in a straight setting. Initially 0. */
    readonly tops?: Whole;
    /** 1 or more. Initially 1. */
    readonly columns?: Whole;
    /** 1 or more. Initially 1. */
    readonly rows?: Whole;
    /** 1 or more, side by side, each as high as the block. Initially 1. */
    readonly segmentsPerBlock?: Whole;
    /** finished. Initially 0. */
    readonly blockWidth?: LengthLike;
    /** finished. Initially 0. */
    readonly blockHeight?: LengthLike;
    /** of one edge, 0 .. MUSLIN_SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** of one seam, 0 .. MUSLIN_SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_piecing, muslin/supplies.h */
export interface Piecing {
    /** number of seams in all */
    readonly seams: number;
    /** sets x (strips - 1) x strip length */
    readonly inSets: Length;
    /** segment to segment, each as long as the block is high, unfinished */
    readonly inBlocks: Length;
    /** block to block, as long */
    readonly inRows: Length;
    /** row to row, each as long as the row is wide, unfinished */
    readonly betweenRows: Length;
    /** of the four: what muslin_thread_plan() asks for */
    readonly total: Length;
}

/** struct muslin_thread_spec, muslin/supplies.h */
export interface ThreadSpec {
    /** to be sewn, 0 .. MUSLIN_LENGTH_MAX / 2. Initially 0. */
    readonly seam?: LengthLike;
    /** thread ..., 1 .. MUSLIN_COUNT_MAX; by the formula not used. Initially 5. */
    readonly ratioAbove?: Whole;
    /** ... for so much seam, 1 .. MUSLIN_COUNT_MAX; by the formula not used. Initially 2. */
    readonly ratioBelow?: Whole;
    /** T: all layers together, pressed flat under the foot; by the ratio not used. Initially 0. */
    readonly thickness?: LengthLike;
    /** 1 / S, 1 or more; by the ratio not used. Initially 640 ticks. */
    readonly stitchLength?: LengthLike;
    /** thread a bobbin holds, 0 .. MUSLIN_LENGTH_MAX / 2; 0: bobbins are not counted. Initially 0. */
    readonly bobbin?: LengthLike;
    /** thread on a spool, 0 .. MUSLIN_LENGTH_MAX / 2; 0: spools are not counted. Initially 0. */
    readonly spool?: LengthLike;
    /** enum muslin_thread_method. Initially "ratio". */
    readonly method?: ThreadMethod | null;
    /** ppm on top, 0 .. 10000000. Initially 150000. */
    readonly waste?: Whole;
    /** The flag MUSLIN_THREAD_READY_BOBBINS. Initially false. */
    readonly readyBobbins?: boolean;
}

/** struct muslin_thread, muslin/supplies.h */
export interface Thread {
    /** thread for one unit of seam, in thousandths, nearest */
    readonly ratioThousandths: number;
    /** without waste, up to a tick */
    readonly thread: Length;
    /** exact thread x (1 + waste), up to a tick: needle and bobbin thread together */
    readonly withWaste: Length;
    /** half of the exact one, up to a tick */
    readonly needle: Length;
    /** the other half, up to a tick */
    readonly bobbinThread: Length;
    /** up */
    readonly bobbins: number;
    /** for with_waste, or for the needle thread alone, up; the last bobbin is wound only as far as it is needed */
    readonly spools: number;
    /** room, or ready thread, left on the last one */
    readonly leftOnBobbin: Length;
    /** spools x spool less the same thread */
    readonly leftOnSpool: Length;
    /** the seam may be so much longer before one bobbin more is needed ... */
    readonly bobbinLongerBy: Length;
    /** ... before one spool more is needed; both at most up to the longest seam for which this call gives an answer */
    readonly spoolLongerBy: Length;
}

/** struct muslin_quilting_spec, muslin/supplies.h */
export interface QuiltingSpec {
    /** of the area to quilt, 1 or more but for an outline. Initially 0. */
    readonly width?: LengthLike;
    /** of the area, 1 or more but for an outline. Initially 0. */
    readonly length?: LengthLike;
    /** d, from line to line, square to them, 1 or more; for an outline not used. Initially 2 in. */
    readonly spacing?: LengthLike;
    /**
     * no line lies nearer to the edges it runs beside, or to the corners it cuts off; from a corner and for an outline
     * not used. Initially 0.
     */
    readonly offset?: LengthLike;
    /** length of what is outlined, 0 .. MUSLIN_LENGTH_MAX / 2; used for an outline alone. Initially 0. */
    readonly outline?: LengthLike;
    /** lines along an outline: 1 in the ditch or on one side, 2 on both sides. Initially 1. */
    readonly passes?: Whole;
    /** enum muslin_quilting_pattern. Initially "grid". */
    readonly pattern?: QuiltingPattern | null;
    /** enum muslin_quilting_start, of diagonals. Initially "atOffset". */
    readonly start?: QuiltingStart | null;
}

/** struct muslin_quilting, muslin/supplies.h */
export interface Quilting {
    /** in all; for an outline the passes */
    readonly lines: number;
    /** of all lines together, up to a tick: what muslin_thread_plan() asks for */
    readonly length: Length;
    /** from side to side, or the diagonals one way */
    readonly linesFirst: number;
    /** from top to bottom, or the diagonals the other way */
    readonly linesSecond: number;
    /** straight lines: from the last one to where another might lie; diagonals: 0 */
    readonly leftFirst: Length;
    readonly leftSecond: Length;
    /**
     * straight lines: the widest spacing with as many lines, down to a tick, which uses up what is left; 0 below two
     * lines and for diagonals
     */
    readonly evenFirst: Length;
    readonly evenSecond: Length;
    /** 1 when the length is a whole number of ticks */
    readonly exact: boolean;
    /**
     * straight lines: from the last one to the edge behind it, offset and what is left; 0 where there is no line, and
     * for diagonals
     */
    readonly lastFirst: Length;
    readonly lastSecond: Length;
}

/** struct muslin_weight_spec, muslin/supplies.h */
export interface WeightSpec {
    /** of the finished quilt. Initially 0. */
    readonly width?: LengthLike;
    /** Initially 0. */
    readonly length?: LengthLike;
    /** as cut and joined, or 0. Initially 0. */
    readonly bindingLength?: LengthLike;
    /** cut width of the binding. Initially 0. */
    readonly bindingCut?: LengthLike;
    /** mg for a square metre of the top's cloth, 0 .. MUSLIN_COUNT_MAX, and so on. Initially 0. */
    readonly topDensity?: Whole;
    /** Initially 0. */
    readonly battingDensity?: Whole;
    /** Initially 0. */
    readonly backingDensity?: Whole;
    /** Initially 0. */
    readonly bindingDensity?: Whole;
    /** each mass is rounded to a multiple of so many mg, 1 .. MUSLIN_SIZE_MAX. Initially 1000. */
    readonly step?: Whole;
    /** ppm of cloth more that lies in the top's seams, 0 .. 10000000. Initially 0. */
    readonly seamShare?: Whole;
    /** enum muslin_direction. Initially "nearest". */
    readonly direction?: Direction | null;
}

/** struct muslin_weight, muslin/supplies.h */
export interface Weight {
    /** mg: width x length x (1 + seam share) x density */
    readonly top: number;
    /** mg: width x length x density */
    readonly batting: number;
    readonly backing: number;
    /** mg: length x cut width x density */
    readonly binding: number;
    /** mg: of the exact masses, rounded once, so it may differ from the sum of the rounded ones */
    readonly total: bigint;
}

/** struct muslin_cost_spec, muslin/supplies.h */
export interface CostSpec {
    /** ticks, 0 .. MUSLIN_LENGTH_MAX / 2, as bought (see muslin_fabric_purchase()); or pieces. Initially 0. */
    readonly amount?: Whole;
    /** 0 .. MUSLIN_MONEY_MAX. Initially 0. */
    readonly price?: Whole;
    /** what the price is for: ticks, 1 .. MUSLIN_SIZE_MAX; or pieces, 1 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly per?: Whole;
    /** enum muslin_cost_kind. Initially "pieces". */
    readonly sold?: CostKind | null;
    /** enum muslin_direction, of a cost between two whole numbers; shops round to the nearest. Initially "nearest". */
    readonly direction?: Direction | null;
}

/** struct muslin_cost, muslin/supplies.h */
export interface Cost {
    /** the amount, or whole bundles, up */
    readonly bought: number;
    /** pieces that the bundles hold beyond the amount: so many more cost nothing more */
    readonly spare: number;
    /** amount x price / per, rounded as asked, or bundles x price */
    readonly cost: bigint;
    /** 1 when the cost was not rounded */
    readonly exact: boolean;
}

/** struct muslin_quilt_spec, muslin/quilt.h */
export interface QuiltSpec {
    /** s: value of the quilt's seam allowance until another is given; 0 .. MUSLIN_SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u, so; 0 .. MUSLIN_SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
    /**
     * fabrics, measures and nodes together, each with sixteen numbers on the average; 1 .. 2^27. Initially 67108864.
     */
    readonly most?: Whole;
    /**
     * what marks this quilt's ids, 1 .. 2^20 - 1: whoever has several quilts numbers them, so that none takes another's
     * ids. 0: taken from where the quilt lies in memory, another one in every run; one made later in its place may get
     * it again. Initially 1.
     */
    readonly tag?: Whole;
}

/** struct muslin_quilt_fabric_spec, muslin/quilt.h */
export interface QuiltFabricSpec {
    /** of the cloth, or length of a strip; 1 .. MUSLIN_SIZE_MAX; the value until another is given. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** enum muslin_print; a patch's cloth stands upright when its print's top is the patch's. Initially "none". */
    readonly print?: Print | null;
    /** for pressing: seams go towards the greater number; 0 .. 100, 0: not stated. Initially 0. */
    readonly darkness?: Whole;
}

/** struct muslin_quilt_sum_spec, muslin/quilt.h */
export interface QuiltSumSpec {
    /** Initially 0. */
    readonly measure?: Id;
    /** -2^20 .. 2^20. Initially 1. */
    readonly factor?: Whole;
}

/** struct muslin_quilt_patch_spec, muslin/quilt.h */
export interface QuiltPatchSpec {
    /** Initially 0. */
    readonly fabric?: Id;
    /** finished. Initially 0. */
    readonly width?: Id;
    /** finished. Initially 0. */
    readonly height?: Id;
    /** allowance of each edge; 0: the quilt's. Initially 0. */
    readonly left?: Id;
    /** Initially 0. */
    readonly right?: Id;
    /** Initially 0. */
    readonly top?: Id;
    /** Initially 0. */
    readonly bottom?: Id;
}

/** struct muslin_quilt_unit_spec, muslin/quilt.h */
export interface QuiltUnitSpec {
    /** W, H and corner as the kind takes them (unit.h); 0 where it takes none. Initially 0. */
    readonly width?: Id;
    /** Initially 0. */
    readonly height?: Id;
    /** Initially 0. */
    readonly corner?: Id;
    /**
     * enum muslin_unit_kind that fills a rectangle: HALF_SQUARE .. HALF_RECTANGLE, OCTAGON, EIGHT_POINTED_STAR,
     * KALEIDOSCOPE. Initially "halfSquare".
     */
    readonly kind?: UnitKind | null;
    /** enum muslin_unit_method. Initially "twoAtATime". */
    readonly method?: UnitMethod | null;
    /** enum muslin_hand; FIRST for kinds without hands. Initially "first". */
    readonly hand?: Hand | null;
}

/** struct muslin_quilt_join_spec, muslin/quilt.h */
export interface QuiltJoinSpec {
    /** enum muslin_axis. Initially "across". */
    readonly axis?: Axis | null;
    /**
     * enum muslin_strip_piecing; WHERE_FEWER: no matter unless all are patches of one length. Initially "whereFewer".
     */
    readonly piecing?: StripPiecing | null;
    /** enum muslin_seam_press, of all its seams. Initially "free". */
    readonly press?: SeamPress | null;
    /** The flag MUSLIN_QUILT_JOIN_KEEPS_ORDER. Initially false. */
    readonly keepsOrder?: boolean;
}

/** struct muslin_quilt_trim_spec, muslin/quilt.h */
export interface QuiltTrimSpec {
    /** cut away after sewing; 0: nothing. Initially 0. */
    readonly left?: Id;
    /** Initially 0. */
    readonly right?: Id;
    /** Initially 0. */
    readonly top?: Id;
    /** Initially 0. */
    readonly bottom?: Id;
}

/** struct muslin_quilt_pinwheel_spec, muslin/quilt.h */
export interface QuiltPinwheelSpec {
    /** nodes. Initially 0. */
    readonly centre?: Id;
    /** over centre and left: as wide as both together. Initially 0. */
    readonly top?: Id;
    /** beside centre and top: as high as both together. Initially 0. */
    readonly right?: Id;
    /** under centre and right. Initially 0. */
    readonly bottom?: Id;
    /** beside centre and bottom. Initially 0. */
    readonly left?: Id;
}

/** struct muslin_quilt_set_in_spec, muslin/quilt.h */
export interface QuiltSetInSpec {
    /** node. Initially 0. */
    readonly centre?: Id;
    /** finished width of the strip on each side; 0: no strip there. Initially 0. */
    readonly leftWidth?: Id;
    /** Initially 0. */
    readonly rightWidth?: Id;
    /** Initially 0. */
    readonly topWidth?: Id;
    /** Initially 0. */
    readonly bottomWidth?: Id;
    /** 0 where there is no strip. Initially 0. */
    readonly leftFabric?: Id;
    /** Initially 0. */
    readonly rightFabric?: Id;
    /** Initially 0. */
    readonly topFabric?: Id;
    /** Initially 0. */
    readonly bottomFabric?: Id;
}

/** struct muslin_quilt_log_spec, muslin/quilt.h */
export interface QuiltLogSpec {
    /** Initially 0. */
    readonly fabric?: Id;
    /** finished. Initially 0. */
    readonly width?: Id;
    /** enum muslin_side. Initially "right". */
    readonly side?: Side | null;
}

/** struct muslin_quilt_surround_spec, muslin/quilt.h */
export interface QuiltSurroundSpec {
    /** nodes. Initially 0. */
    readonly centre?: Id;
    /** as high as the centre. Initially 0. */
    readonly left?: Id;
    /** Initially 0. */
    readonly right?: Id;
    /** as wide as the centre. Initially 0. */
    readonly top?: Id;
    /** Initially 0. */
    readonly bottom?: Id;
    /** as wide as left, as high as top, and so on. Initially 0. */
    readonly topLeft?: Id;
    /** Initially 0. */
    readonly topRight?: Id;
    /** Initially 0. */
    readonly bottomLeft?: Id;
    /** Initially 0. */
    readonly bottomRight?: Id;
}

/** struct muslin_quilt_sashed_spec, muslin/quilt.h */
export interface QuiltSashedSpec {
    /** of blocks, 1 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** finished width. Initially 0. */
    readonly sash?: Id;
    /** Initially 0. */
    readonly sashFabric?: Id;
    /** fabric of CORNERSTONES; 0: as the sashes; without them 0. Initially 0. */
    readonly cornerstone?: Id;
    /** The flag MUSLIN_QUILT_SASHED_FRAME. Initially false. */
    readonly frame?: boolean;
    /** The flag MUSLIN_QUILT_SASHED_CORNERSTONES. Initially false. */
    readonly cornerstones?: boolean;
}

/** struct muslin_quilt_diagonal_spec, muslin/quilt.h */
export interface QuiltDiagonalSpec {
    /** c: blocks side by side, alternates not counted; 1 .. 2^15. Initially 1. */
    readonly columns?: Whole;
    /** r, so. Initially 1. */
    readonly rows?: Whole;
    /** of the setting triangles. Initially 0. */
    readonly sideFabric?: Id;
    /** Initially 0. */
    readonly cornerFabric?: Id;
    /** f: blocks float this far inside the edge; 0: they touch it. 0 in SASH_CUT and SASH_INNER. Initially 0. */
    readonly setOff?: Id;
    /** w, finished width; 0 in PLAIN, in no other layout. Below B in SASH_INNER. Initially 0. */
    readonly sash?: Id;
    /** 0 in PLAIN, in no other layout. Initially 0. */
    readonly sashFabric?: Id;
    /** its fabric; 0: as the sashes; 0 in PLAIN. Initially 0. */
    readonly cornerstone?: Id;
    /** enum muslin_point_layout. Initially "plain". */
    readonly layout?: PointLayout | null;
}

/** struct muslin_quilt_sixty_spec, muslin/quilt.h */
export interface QuiltSixtySpec {
    /** triangles in a row, ends not counted; 1 .. 2^20. Initially 1. */
    readonly cells?: Whole;
    /** 1 .. 2^20. Initially 1. */
    readonly rows?: Whole;
    /** H, finished, of a row. Initially 0. */
    readonly height?: Id;
    /** of the half-triangles that close both ends. Initially 0. */
    readonly endFabric?: Id;
    /** enum muslin_sixty_first. Initially "onSide". */
    readonly first?: SixtyFirst | null;
}

/** struct muslin_quilt_sixty_piece_spec, muslin/quilt.h */
export interface QuiltSixtyPieceSpec {
    /** Initially 0. */
    readonly fabric?: Id;
    /** 1: a triangle, 2: a diamond, 3: a half-hexagon. Initially 1. */
    readonly cells?: Whole;
}

/** struct muslin_tree_measure, muslin/quilt.h */
export interface TreeMeasure {
    /** of a fixed one; of one with a name, until another is given; else 0 */
    readonly value: Length;
    /** whose extent it is; else 0 */
    readonly node: Id;
    /** enum muslin_measure_kind */
    readonly kind: MeasureKind;
    /** of an extent, enum muslin_axis; else 0 */
    readonly axis: Axis | null;
    /** of a sum, what muslin_quilt_read_terms() gives; else 0 */
    readonly terms: number;
}

/** struct muslin_node, muslin/quilt.h */
export interface Node {
    /** nodes it is made of: what muslin_quilt_children() gives */
    readonly children: number;
    /** 1 for a leaf */
    readonly depth: number;
    /** enum muslin_node_kind */
    readonly kind: NodeKind;
    /** of a join, enum muslin_axis; else 0 */
    readonly axis: Axis | null;
    /** of a turn: first mirrored, where it is, then turned clockwise by so many */
    readonly quarterTurns: number;
    /** 1 when it is the mirror image */
    readonly mirrored: boolean;
}

/** struct muslin_part_counts, muslin/quilt.h */
export interface PartCounts {
    readonly fabrics: number;
    readonly measures: number;
    readonly nodes: number;
    /** that the quilt holds from its allocator */
    readonly bytes: number;
}

/** struct muslin_solution_spec, muslin/solution.h */
export interface SolutionSpec {
    /** how many of the root are made; 1 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly tops?: Whole;
    /** edges that differ by no more are eased, not misfits; 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly ease?: LengthLike;
    /** pieces cut again on the diagonal are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly grid?: LengthLike;
    /** below grid. Initially 0. */
    readonly gridTolerance?: LengthLike;
    /** as in struct muslin_unit_spec; 0: its usual ones. Initially 0. */
    readonly halfAddition?: LengthLike;
    /** Initially 0. */
    readonly quarterAddition?: LengthLike;
    /** OVERSIZE: room to trim units and setting triangles. Initially 0. */
    readonly trimRoom?: LengthLike;
    /** strip sets: taken off each end, as in struct muslin_yield_spec. Initially 0. */
    readonly endTrim?: LengthLike;
    /** Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** Initially 0. */
    readonly resquareEvery?: Whole;
    /** must be 0 with FROM_ONE_END. Initially 0. */
    readonly foldClear?: LengthLike;
    /** enum muslin_allowance_policy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** enum muslin_tip. Initially "blunt". */
    readonly tip?: Tip | null;
    /** enum muslin_direction, of cut sizes that are rounded. Initially "up". */
    readonly direction?: Direction | null;
    /** enum muslin_strip_piecing, of joins that say WHERE_FEWER: that, or NEVER. Initially "whereFewer". */
    readonly stripPiecing?: StripPiecing | null;
    /** The flag MUSLIN_YIELD_FROM_ONE_END. Initially true. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_solution_value_spec, muslin/solution.h */
export interface SolutionValueSpec {
    /**
     * a named measure, the quilt's allowance or take-up, or a fabric, whose usable width it is; a fixed length, a sum
     * or an extent cannot be given one: MUSLIN_ERR_FOREIGN. Initially 0.
     */
    readonly id?: Id;
    /** in the range of what it stands for. Initially 0. */
    readonly value?: LengthLike;
}

/** struct muslin_node_size, muslin/solution.h */
export interface NodeSize {
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** of a patch: cut */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** allowance of its edges; -1 where the pieces along one differ */
    readonly left: Length;
    readonly right: Length;
    readonly top: Length;
    readonly bottom: Length;
    /** of them in all tops */
    readonly count: number;
    /** of those, mirror images */
    readonly mirrored: number;
    /** of all, so many lie as they were made ... */
    readonly upright: number;
    /** ... turned a quarter clockwise ... */
    readonly quarter: number;
    readonly half: number;
    /** parts of a diagonal field count as in its own frame */
    readonly threeQuarter: number;
    /** in one of it */
    readonly patches: number;
    /** seams whose errors add up in its width: of pieces side by side all count, of rows the one with most */
    readonly seamsAcross: number;
    /** so in its height: rows all count, each with its highest pile of seams */
    readonly seamsDown: number;
    /** enum muslin_node_kind */
    readonly kind: NodeKind;
    /** 1 when its size was not rounded; inside, corners may be */
    readonly exact: boolean;
}

/** struct muslin_solution_total, muslin/solution.h */
export interface SolutionTotal {
    /** in all tops */
    readonly patches: number;
    /** that the root holds, itself included */
    readonly differentNodes: number;
    /** of one top: width x height */
    readonly finishedArea: bigint;
    /** of one top: what its finished outlines cover, each in its own frame */
    readonly patchArea: bigint;
    /** where edges meet, the two differ by no more than this; 0 where everything is exact */
    readonly areaError: bigint;
    /** rows of muslin_solution_misfits() that are no ease, ... */
    readonly misfits: number;
    /** ... and that are */
    readonly eased: number;
    /** rows of muslin_solution_cuts() */
    readonly cuts: number;
    /** rows of muslin_solution_stripsets() */
    readonly stripsets: number;
    /** all that the rows of cuts, and of strip sets that are used, carry */
    readonly warnings: readonly Warning[];
    /** 1 when nothing in it was rounded */
    readonly exact: boolean;
}

/** struct muslin_misfit, muslin/solution.h */
export interface Misfit {
    /** in which they meet */
    readonly node: Id;
    /** child of it, counted from 0; strips of a set-in: enum muslin_side; -1: a setting triangle or a sash on point */
    readonly first: number;
    readonly second: number;
    /** finished length of its edge; of ALLOWANCE its allowance, -1 where mixed */
    readonly firstSize: Length;
    readonly secondSize: Length;
    /** first less second; 0 where one is mixed */
    readonly difference: Length;
    /**
     * seams to stretch or gather over: pieces along the edge that gives way, the one with more of them; of ALLOWANCE 0
     */
    readonly pieces: number;
    /** what each of them takes up: the difference over pieces, up to a tick; else 0 */
    readonly easeEach: Length;
    /** how often it happens in all tops */
    readonly count: number;
    /** enum muslin_misfit_kind */
    readonly kind: MisfitKind;
}

/** struct muslin_solution_cut, muslin/solution.h */
export interface SolutionCut {
    readonly fabric: Id;
    /** the first node that needs it; muslin_solution_cut_nodes() has all */
    readonly firstNode: Id;
    /**
     * as in struct muslin_unit_piece: across as the patch lies when upright; of a fabric without direction the longer
     * side of a rectangle that is not cut again. SET_STRIP: the usable width
     */
    readonly cutWidth: Length;
    /** ... and along the print */
    readonly cutHeight: Length;
    /** of shapes cut from a strip; else 0 */
    readonly pitch: Length;
    readonly wideEdge: Length;
    readonly narrowEdge: Length;
    /** cut less exact need, down to a tick */
    readonly surplusWidth: Length;
    readonly surplusHeight: Length;
    /** allowance on each edge of a rectangle that is sewn as it is cut; else the seam's */
    readonly left: Length;
    readonly right: Length;
    readonly top: Length;
    readonly bottom: Length;
    /** to cut, for all tops */
    readonly count: number;
    /** in the end, those spare included */
    readonly pieces: number;
    /** pieces beyond the need */
    readonly spare: number;
    /** different nodes that need it */
    readonly nodes: number;
    /**
     * pieces needed that lie with their print as cut, and turned by one, two and three quarters in the top. Strips are
     * cut across the cloth: in a set joined down a print lies as its patch does, in one joined across a quarter further
     */
    readonly upright: number;
    readonly quarter: number;
    readonly half: number;
    readonly threeQuarter: number;
    /**
     * pieces needed whose print lies as the method brings it: of units all but rectangles to which corners are sewn and
     * octagons; setting triangles; 60 degree pieces
     */
    readonly scattered: number;
    /** enum muslin_cut_source */
    readonly source: CutSource;
    /** enum muslin_cut_shape */
    readonly shape: CutShape;
    /** enum muslin_cut_again */
    readonly again: CutAgain;
    /** pieces from each: pieces = count x gives */
    readonly gives: number;
    /** enum muslin_grain */
    readonly grain: Grain;
    /**
     * enum muslin_hand; of a sash cut off at the edge FIRST when the slanted end, seen upwards from the square one,
     * rises to the right
     */
    readonly hand: Hand;
    /** degrees, as in struct muslin_unit_piece */
    readonly angle: number;
    /** of a unit; piece number, from 1, of a shape; of a mitred strip whose ends differ its side; else 0 */
    readonly region: number;
    /**
     * MUSLIN_WARN_PRINT_TURNED: a fabric with a direction lies turned in some places, or, scattered, may lie so.
     * MUSLIN_WARN_LONGER_THAN_WIDTH: cut_width, of a rectangle of a fabric without direction the longer side, passes
     * the fabric's usable width; MUSLIN_WARN_BELOW_EXACT: a surplus is below 0; MUSLIN_WARN_BIAS_EDGE: of a unit whose
     * outer edges lie on the bias, or a sash that the edge of a field on point cuts off at 45 degrees: there the edge
     * stretches
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_stripset, muslin/solution.h */
export interface Stripset {
    /** the join */
    readonly node: Id;
    /** in a set */
    readonly strips: number;
    /** width of the set, edge to edge */
    readonly setUnfinished: Length;
    /** what is cut across from it: unfinished length of the patches */
    readonly segmentCut: Length;
    /** of the narrowest fabric in it */
    readonly stripLength: Length;
    /** needed */
    readonly segments: number;
    readonly segmentsPerSet: number;
    /** up */
    readonly sets: number;
    /** segments beyond the need */
    readonly spare: number;
    /** cuts when every patch is cut by itself: strips of its height, cut across */
    readonly cutsApart: number;
    /** cuts when it is strip-pieced */
    readonly cutsInSets: number;
    /** strips may be this much shorter before a set gives less */
    readonly shorterBy: Length;
    /**
     * 1 when the cut list and the sewing plan take it. WHERE_FEWER: it takes fewer cuts, at least half of its segments
     * are needed, and no print would show that it lies turned in strips
     */
    readonly used: boolean;
    /** 1 when a segment turned end for end looks the same and its order need not stay */
    readonly turns: boolean;
    /**
     * MUSLIN_WARN_NO_SLACK, MUSLIN_WARN_MIXED_WIDTHS; MUSLIN_WARN_PRINT_TURNED: in strips a print lies otherwise than
     * in patches cut by themselves
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_term, muslin/solution.h */
export interface Term {
    /** measure or node; 0 where the kind names none */
    readonly id: Id;
    readonly times: number;
    /** the whole term: what it adds to the sum */
    readonly value: Length;
    /** up to and with it */
    readonly sum: Length;
    /** enum muslin_term_kind */
    readonly kind: TermKind;
    /** 1: the sum is the finished size up to here; 0: the unfinished one, cut of a patch */
    readonly finished: boolean;
}

/** struct muslin_outline, muslin/solution.h */
export interface Outline {
    /** the leaf (or diagonal field, 60 degree rows, set-in) that it belongs to */
    readonly node: Id;
    readonly fabric: Id;
    /** counter-clockwise */
    readonly corners: readonly OutlineCorner[];
    /**
     * of a unit; piece from 1 of a shape; triangle from 1 of a field: at the top from the left, right from the top,
     * bottom, left, then corners upper left, lower right, upper right, lower left; then, cut off at the edge, sashes
     * that stand in the turned frame at the top, right, bottom, left, those that lie at the right, bottom, top, left,
     * or cornerstones so; piece from 1 of rows: those given, then the left and the right half-triangle of each row; 1
     * of a patch
     */
    readonly region: number;
    /** how its print lies: clockwise */
    readonly quarterTurns: number;
    /** 1 when it is a mirror image: left for right first, then turned */
    readonly mirrored: boolean;
    /**
     * 1 when it is turned by an eighth more, clockwise: in a field on point (not in one that lies in another, where two
     * eighths are a quarter), or a sash cut off at its edge
     */
    readonly onPoint: boolean;
}

/** struct muslin_outline_corner, muslin/solution.h */
export interface OutlineCorner {
    /** to the right from the lower left of what is drawn, finished */
    readonly x: Length;
    /** upwards */
    readonly y: Length;
    /** in which the seam lies along the edge that starts here; 0: the outside */
    readonly seamNode: Id;
    /** of that node: its number, from 0, as pressing.h counts them */
    readonly seam: number;
}

/** struct muslin_pressing_spec, muslin/pressing.h */
export interface PressingSpec {
    /** steps of the search, 0 .. 2^40; when it runs out the best plan so far stands. Initially 20000000. */
    readonly workLimit?: Whole;
    /** enum muslin_prefer. Initially "darker". */
    readonly prefer?: Prefer | null;
    /**
     * 1: the seams of units are pressed as their recipes say, in every copy; 0: so they are preferred, where their
     * fabrics do not say which is darker, and give way to nesting. Initially false.
     */
    readonly units?: boolean;
}

/** struct muslin_pressing_total, muslin/pressing.h */
export interface PressingTotal {
    /** in all tops, those left out not counted */
    readonly meetings: number;
    /** of those, that do not nest */
    readonly exceptions: number;
    /** no plan of this sort has fewer */
    readonly least: number;
    /**
     * exceptions when all is pressed in turn: every seam to its first piece, and joins take their second child the
     * other way, their fourth, and so on, where none asks otherwise
     */
    readonly alternating: number;
    /** meetings left out, as a seam is pressed open */
    readonly open: number;
    /**
     * copies of nodes with seams of their own that are the other way, pressed or turned; where those seams are open,
     * turned alone
     */
    readonly otherWay: number;
    /** steps taken */
    readonly work: number;
    /** 1 when exceptions = least */
    readonly proven: boolean;
    /** of those, copies that are turned and not pressed the other way */
    readonly copiesTurned: number;
}

/** struct muslin_pressing_seam, muslin/pressing.h */
export interface PressingSeam {
    readonly node: Id;
    /** number in its node */
    readonly seam: number;
    /** copies of the node pressed so, also those in what is turned as a whole */
    readonly asShown: number;
    /** copies taken the other way: by `other`, pressed or turned; an open seam is told so when its node is turned */
    readonly otherWay: number;
    /** finished ends, in the node as it was made, from its lower left */
    readonly fromX: Length;
    readonly fromY: Length;
    readonly toX: Length;
    readonly toY: Length;
    /** enum muslin_press, in the node as it was made */
    readonly press: Press;
    /** enum muslin_towards */
    readonly towards: Towards;
    /** enum muslin_other_way */
    readonly other: OtherWay;
    /** enum muslin_preferred */
    readonly preferred: Preferred;
    /** MUSLIN_OTHER_WAY_TURNED: quarter turns of the copies the other way; else 0 */
    readonly turn: number;
}

/** struct muslin_pressing_child, muslin/pressing.h */
export interface PressingChild {
    /** made of ... */
    readonly node: Id;
    /** ... this ... */
    readonly child: Id;
    /** ... which is its child of this number */
    readonly place: number;
    /**
     * 1 when it takes its child the other way than that is shown; the whole may be taken the other way again by what it
     * is part of
     */
    readonly otherWay: boolean;
    /**
     * quarters by which the child is turned where it is the other way; 0: it is pressed. The same in every place of the
     * child, also where other_way is 0: what the node is part of may be the other way, and then this place, too. By
     * itself it says nothing of this place
     */
    readonly turn: number;
}

/** struct muslin_pressing_exception, muslin/pressing.h */
export interface PressingException {
    /** in which the two edges are sewn together ... */
    readonly node: Id;
    /** ... by its seam of this number */
    readonly seam: number;
    /** where, finished, in the node as it was made */
    readonly x: Length;
    readonly y: Length;
    /** whose seams meet there */
    readonly firstNode: Id;
    readonly firstSeam: number;
    readonly secondNode: Id;
    readonly secondSeam: number;
    /** in all tops */
    readonly count: number;
}

/** struct muslin_sewing_step, muslin/sewing.h */
export interface SewingStep {
    /** what is made */
    readonly node: Id;
    /** number of the stack it makes, from 0, for muslin_sewing_label(); a step of cutting takes that of its set */
    readonly stack: number;
    /**
     * how many are made: strip sets, segments that are needed, units with the spare ones of their recipes (units alike
     * share recipes: with the first of them), joins ...
     */
    readonly alike: number;
    /** that go into one; of segments and trims 1 */
    readonly pieces: number;
    /** in one */
    readonly seams: number;
    /**
     * the longest of them, from raw edge to raw edge, where edges do not meet the longer one; what set-in and partial
     * seams leave open is counted with them
     */
    readonly seamLongest: Length;
    /** all seams of all that are alike */
    readonly sewn: Length;
    /** of what is made; of a set: its width and the strips' length */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** steps that it needs: muslin_sewing_feeds() */
    readonly feeds: number;
    /** enum muslin_sewing_kind */
    readonly kind: SewingKind;
    /** 1 when more than one is sewn */
    readonly chain: boolean;
}

/** struct muslin_sewing_feed, muslin/sewing.h */
export interface SewingFeed {
    /** what is used */
    readonly node: Id;
    /** the step that makes it; -1: it is cut as it is */
    readonly step: number;
    /** how many go into one */
    readonly each: number;
}

/** struct muslin_sewing_total, muslin/sewing.h */
export interface SewingTotal {
    readonly steps: number;
    /** in all tops */
    readonly seams: number;
    /** all seams: what muslin_thread_plan() asks for */
    readonly sewn: Length;
    /** of those, in strip sets */
    readonly inSets: Length;
    /** of one top: the most seams across it ... */
    readonly widthSeams: number;
    /** ... and down */
    readonly heightSeams: number;
    /** how far its unfinished width may be off, each seam and each cut edge off as stated */
    readonly widthWorst: Length;
    readonly widthLikely: Length;
    readonly heightWorst: Length;
    readonly heightLikely: Length;
}

/** struct muslin_scatter_spec, muslin/scatter.h */
export interface ScatterSpec {
    /** to be filled, 1 .. 2^24. Initially 0. */
    readonly places?: Whole;
    /** any number. Initially 1. */
    readonly seed?: Whole;
    /** steps of the search, 0 .. 2^40; a step looks at a touch. 0: filled once, not bettered. Initially 10000000. */
    readonly workLimit?: Whole;
}

/** struct muslin_touch_spec, muslin/scatter.h */
export interface TouchSpec {
    /** places that touch, each 0 .. places - 1, and not the same. Initially 0. */
    readonly first?: Whole;
    /** Initially 0. */
    readonly second?: Whole;
    /** how much it matters when they are equal; 1 .. 2^20. Initially 1. */
    readonly weight?: Whole;
}

/** struct muslin_scattered, muslin/scatter.h */
export interface Scattered {
    /** weight of the pairs that are equal and touch */
    readonly touching: number;
    /** how many of them there are */
    readonly pairs: number;
    /** no arrangement has less weight */
    readonly least: number;
    /** steps taken; an exchange that has begun is finished, past the limit too */
    readonly work: number;
    /** 1 when touching = least */
    readonly proven: boolean;
}

/** struct muslin_scatter_blocks_spec, muslin/scatter.h */
export interface ScatterBlocksSpec {
    /** 1 .. 2^12. Initially 1. */
    readonly columns?: Whole;
    /** 1 .. 2^12. Initially 1. */
    readonly rows?: Whole;
    /** Initially 1. */
    readonly seed?: Whole;
    /** Initially 10000000. */
    readonly workLimit?: Whole;
}

/** struct muslin_edge_prints_spec, muslin/scatter.h */
export interface EdgePrintsSpec {
    /** how many there are, 0 .. MUSLIN_COUNT_MAX. Initially 1. */
    readonly count?: Whole;
    /** prints, -1 .. MUSLIN_COUNT_MAX. Initially -1. */
    readonly top?: Whole;
    /** Initially -1. */
    readonly right?: Whole;
    /** Initially -1. */
    readonly bottom?: Whole;
    /** Initially -1. */
    readonly left?: Whole;
    /** The flag MUSLIN_EDGE_PRINTS_TURNS_HALF. Initially false. */
    readonly turnsHalf?: boolean;
    /** The flag MUSLIN_EDGE_PRINTS_TURNS_QUARTER. Initially false. */
    readonly turnsQuarter?: boolean;
}

/** struct muslin_placed_block, muslin/scatter.h */
export interface PlacedBlock {
    /** row of the blocks given */
    readonly kind: number;
    /** clockwise */
    readonly quarterTurns: number;
}

/** struct muslin_blank_spec, muslin/cutplan.h */
export interface BlankSpec {
    /** across the cloth, 1 or more; SLOPED: the pitch; JOINED: the length in all, of each. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** along it, 1 or more: the height of strip that it needs. Initially 0. */
    readonly cutLength?: LengthLike;
    /** 0 .. MUSLIN_CUTPLAN_COUNT_MAX; 0 asks for nothing and is never too large. Initially 1. */
    readonly count?: Whole;
    /** SLOPED: taken once in a strip besides; else 0. Initially 0. */
    readonly runIn?: LengthLike;
    /**
     * JOINED: what each join takes of the length, 2 s when straight; below the length of a whole strip; else 0.
     * Initially 0.
     */
    readonly joinLoss?: LengthLike;
    /** the caller's own, given back; it does not matter to the plan. Initially 0. */
    readonly label?: Whole;
    /** enum muslin_blank_kind. Initially "piece". */
    readonly kind?: BlankKind | null;
    /** with MUSLIN_CUTPLAN_BY_PRIORITY: lower ones first; 0 .. 1000. Initially 0. */
    readonly priority?: Whole;
    /**
     * JOINED: strips of it may come from what is left over beside others, each at least this long; 0: only whole strips
     * and one shorter one; else 0. Many sewers take 10 to 12 in. Initially 0.
     */
    readonly leastPart?: LengthLike;
    /** The flag MUSLIN_BLANK_MAY_TURN. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_cutplan_stock_spec, muslin/cutplan.h */
export interface CutplanStockSpec {
    /** usable, across the cloth, 1 or more. Initially 21 in. */
    readonly width?: LengthLike;
    /** along it, 1 or more. Initially 18 in. */
    readonly length?: LengthLike;
    /** how many there are; MUSLIN_COUNT_MAX: any number. Initially 2147483647. */
    readonly count?: Whole;
    /** of each, in any unit, 1 .. MUSLIN_COUNT_MAX: money, area, or 1 to use the fewest. Initially 1. */
    readonly cost?: Whole;
    /** the caller's own, given back. Initially 0. */
    readonly label?: Whole;
}

/** struct muslin_cutplan_spec, muslin/cutplan.h */
export interface CutplanSpec {
    /** of the bolt, without selvages, 1 or more; with stock 0. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /**
     * taken off each strip for squaring its ends: half at its left end, down, the rest at its right one. Initially 0.
     */
    readonly endLoss?: LengthLike;
    /**
     * a strip's cut end is squared again after resquare_every cuts, and loses this: spread over those cuts, each piece
     * takes resquare_loss / resquare_every more, up; strips of JOINED pieces are not cross-cut and take no more.
     * Initially 0.
     */
    readonly resquareLoss?: LengthLike;
    /** 1 or more with a loss, else 0. Initially 0. */
    readonly resquareEvery?: Whole;
    /** taken off the bolt, or the length of each piece of stock, once. Initially 0. */
    readonly straightening?: LengthLike;
    /** more pieces of each size than all rows of it want; none of JOINED ones. Initially 0. */
    readonly sparePieces?: Whole;
    /**
     * steps of the search, 0 .. 2^40; a desk computer takes 200 to 300 million a second. 0: only first plans. Initially
     * 400000000.
     */
    readonly workLimit?: Whole;
    /** enum muslin_print: with a direction no piece is turned. Initially "none". */
    readonly print?: Print | null;
    /** The flag MUSLIN_CUTPLAN_NO_PANELS. Initially false. */
    readonly noPanels?: boolean;
    /** The flag MUSLIN_CUTPLAN_ONE_HEIGHT. Initially false. */
    readonly oneHeight?: boolean;
    /** The flag MUSLIN_CUTPLAN_OWN_STRIPS. Initially false. */
    readonly ownStrips?: boolean;
    /** The flag MUSLIN_CUTPLAN_STACKED. Initially false. */
    readonly stacked?: boolean;
    /** The flag MUSLIN_CUTPLAN_FIRST_CUT_ACROSS. Initially false. */
    readonly firstCutAcross?: boolean;
    /** The flag MUSLIN_CUTPLAN_FOLDED. Initially false. */
    readonly folded?: boolean;
    /** The flag MUSLIN_CUTPLAN_BY_PRIORITY. Initially false. */
    readonly byPriority?: boolean;
}

/** struct muslin_cutplan_total, muslin/cutplan.h */
export interface CutplanTotal {
    /**
     * cut in all, those wanted and those spare; of JOINED each strip counts; of FOLDED cloth one that is too many, too
     */
    readonly pieces: number;
    /** with MUSLIN_CUTPLAN_BY_PRIORITY: pieces left out */
    readonly missing: number;
    /** cut right across, panels among them, those within panels and stock too */
    readonly strips: number;
    readonly panels: number;
    /** different strip heights */
    readonly heights: number;
    /**
     * right across, slits, left ends squared, cross-cuts and trims; an edge that is there already is none, nor is
     * straightening
     */
    readonly cuts: number;
    /** of the bolt: strips and panels, and straightening; 0 from stock, or of nothing */
    readonly clothLength: Length;
    /** of the stock; from a bolt the cloth length without straightening */
    readonly cost: bigint;
    /** the bound: no plan of this kind costs less, JOINED pieces being cut in the lengths of muslin_cutplan_sizes() */
    readonly least: number;
    /** pieces of stock that are cut into; 0 from a bolt */
    readonly stockPieces: number;
    /**
     * doubled square ticks of the cloth that is used up or cut into that become no piece: trims, losses and what is
     * left over; spare pieces, one too many and what joins take of JOINED strips count as pieces
     */
    readonly waste: bigint;
    /**
     * of a bolt: when each size has its own strips, all its pieces lying alike, the way that takes less; JOINED ones in
     * whole strips and one shorter one; straightening included; else 0
     */
    readonly ownStripsLength: Length;
    /** of a bolt: the pieces' area over its width, up: a plain bound, whatever the lengths of JOINED strips; else 0 */
    readonly areaBound: Length;
    /** steps taken */
    readonly work: number;
    /** of the proof */
    readonly cases: number;
    /** 1 when cost = least */
    readonly proven: boolean;
    /** enum muslin_cutplan_stopped */
    readonly stopped: CutplanStopped;
    /**
     * 1: strips of JOINED pieces might have other lengths, with which a plan might cost less than least: some have a
     * least_part that is heeded
     */
    readonly otherLengths: boolean;
}

/** struct muslin_cutplan_strip, muslin/cutplan.h */
export interface CutplanStrip {
    /** so many alike, one behind the other; of SLIT and WITHIN: in each of its holder */
    readonly times: number;
    /** SLIT and WITHIN: the row of the panel or piece of stock; else -1 */
    readonly holder: number;
    /** STOCK: the row of the request; else -1 */
    readonly stock: number;
    /** its pieces: rows of muslin_cutplan_places() */
    readonly firstPlace: number;
    readonly places: number;
    /**
     * lower left corner of the first: from the left selvage (FOLDED: that of both layers) or the holder's left edge,
     */
    readonly x: Length;
    /** and from the straightened end of the bolt or the holder's lower edge; STOCK: 0 */
    readonly y: Length;
    /**
     * along the strip, before end_loss: of a bolt, of its half when FOLDED, of the stock; SLIT: up to the last slit;
     * beside it what is left
     */
    readonly width: Length;
    /** how far along the cloth it goes */
    readonly height: Length;
    /** of the width, by its pieces */
    readonly used: Length;
    /** enum muslin_cutplan_strip_kind */
    readonly kind: CutplanStripKind;
    /**
     * 1 when first cuts run along the length of this piece of stock: its width here is its length, less straightening,
     * and its height is its width
     */
    readonly turned: boolean;
}

/** struct muslin_cutplan_place, muslin/cutplan.h */
export interface CutplanPlace {
    /**
     * row of the request; of FOLDED cloth that of the upper piece: where the row wants only one more, the lower one is
     * for the next row of this size
     */
    readonly piece: number;
    /** row of muslin_cutplan_strips() */
    readonly strip: number;
    /** so many side by side; FOLDED: in each layer */
    readonly count: number;
    /** left edge of the first, from the strip's left end: of the first place half of end_loss, 0 beside slit pieces */
    readonly x: Length;
    /** lower edge, from the strip's: 0, or what lies below in a stack */
    readonly y: Length;
    /**
     * cut, as it lies; SLOPED: from its left corner to its right one, run-in and pitch; JOINED and FOLDED: that of the
     * strip, which may go round the fold
     */
    readonly width: Length;
    readonly height: Length;
    /** from one to the next: the width, of SLOPED pieces the pitch, and the squaring share */
    readonly pitch: Length;
    /** 1: turned a quarter in its strip from what its row says */
    readonly turned: boolean;
    /** 1: the strip is higher, one more cut */
    readonly trimmed: boolean;
}

/** struct muslin_cutplan_blank, muslin/cutplan.h */
export interface CutplanBlank {
    /** row of the request */
    readonly piece: number;
    /** row of muslin_cutplan_places() */
    readonly place: number;
    /** row of muslin_cutplan_strips() */
    readonly strip: number;
    /** row of the request, -1: from the bolt */
    readonly stock: number;
    /** which piece of stock of all that are used, from 0; of the bolt 0 */
    readonly sheet: number;
    /** lower left corner: from the left selvage, or the left edge of the piece of stock, */
    readonly x: Length;
    /** and from the straightened end of the bolt or piece of stock */
    readonly y: Length;
    /**
     * across the bolt or piece of stock; SLOPED: from its left corner to its right one, so that neighbours overlap;
     * JOINED and FOLDED: unfolded, it may go round the fold
     */
    readonly width: Length;
    readonly height: Length;
    /** 1: turned a quarter from what its row says */
    readonly turned: boolean;
    /** 1: its strip is higher */
    readonly trimmed: boolean;
    /** 2: FOLDED, one in each layer; else 1 */
    readonly layers: number;
}

/** struct muslin_cutplan_left_over, muslin/cutplan.h */
export interface CutplanLeftOver {
    /**
     * row of muslin_cutplan_strips(): the strip that it is the end of, the panel or piece of stock that it is the rest
     * of, the slit pieces that it lies above
     */
    readonly strip: number;
    readonly count: number;
    /** its lower left corner, from that row's */
    readonly x: Length;
    readonly y: Length;
    /** without end_loss; at the fold of FOLDED cloth unfolded, twice as wide */
    readonly width: Length;
    readonly height: Length;
}

/** struct muslin_cutplan_piece, muslin/cutplan.h */
export interface CutplanPiece {
    /** the row's own */
    readonly label: number;
    /** of its count */
    readonly made: number;
    /** the rest of it: 0, but with MUSLIN_CUTPLAN_BY_PRIORITY */
    readonly missing: number;
    /**
     * for it, made or more: with the spare pieces, and of FOLDED cloth the one too many, of its size where it is the
     * last row that gets some; of JOINED strips
     */
    readonly cut: number;
}

/** struct muslin_cutplan_stock_used, muslin/cutplan.h */
export interface CutplanStockUsed {
    /** the row's own */
    readonly label: number;
    /** pieces of stock that are cut into */
    readonly used: number;
    /** of those */
    readonly cost: bigint;
}

/** struct muslin_cutplan_width, muslin/cutplan.h */
export interface CutplanWidth {
    readonly usableWidth: Length;
    /** straightening included; 0 where a piece does not fit */
    readonly clothLength: Length;
    /** bound, without straightening */
    readonly least: number;
    /** 1 when the length without straightening is the bound */
    readonly proven: boolean;
}

/** struct muslin_cutplan_size, muslin/cutplan.h */
export interface CutplanSize {
    /** the first row of the request that wants it */
    readonly piece: number;
    /**
     * wanted, spare ones included, of all rows alike; FOLDED: blanks, of two pieces each, or of one where it goes round
     * the fold
     */
    readonly count: number;
    /**
     * of a strip: cut width and the squaring share; SLOPED: the pitch. What may lie turned is given with its longer
     * side across
     */
    readonly taken: Length;
    readonly height: Length;
    readonly runIn: Length;
    /** 1: may lie turned */
    readonly mayTurn: boolean;
    /** 1: may be slit from a panel, and is cut from no strip within one */
    readonly slit: boolean;
    /** 1: only in strips of just its height */
    readonly level: boolean;
    /** of a strip when turned: the other side and the squaring share; else 0 */
    readonly turnedTaken: Length;
    /** then; else 0 */
    readonly turnedHeight: Length;
}

/** struct muslin_cutplan_way, muslin/cutplan.h */
export interface CutplanWay {
    /** height of a strip, length of a panel, or cost of the stock */
    readonly cost: bigint;
    /** row of the request, -1: from the bolt */
    readonly stock: number;
    /** room along each strip, down to what sizes can add up to */
    readonly width: Length;
    /** of the strip; of a panel or piece of stock room for strips */
    readonly height: Length;
    /** enum muslin_cutplan_strip_kind: STRIP, PANEL or STOCK */
    readonly kind: CutplanStripKind;
    /** 1 when first cuts run along the length of the stock */
    readonly turned: boolean;
}

/** struct muslin_cutplan_case, muslin/cutplan.h */
export interface CutplanCase {
    /** row of the case of which this is a part; -1: the whole */
    readonly parent: number;
    /** rows split and split + 1 are its parts; 0: it is not split */
    readonly split: number;
    /** row whose worths prove its bound: itself, or one that it is a part of */
    readonly worths: number;
    /** bound of this case by those, before its parts are looked at */
    readonly least: number;
    /** what sets this case apart (not of the whole): `wanted` of the ways first_way .. last_way */
    readonly wanted: number;
    readonly firstWay: number;
    readonly lastWay: number;
    /** -1: so many strips, panels or pieces of stock; else so many of this size in them, and first_way = last_way */
    readonly planSize: number;
    /**
     * -1, or a way that is one strip: nothing is of this case, because the conditions on the way to it ask for more
     * pieces than fit into as many strips of this way as they allow
     */
    readonly packedWay: number;
    /** 1: at least `wanted`, 0: at most */
    readonly atLeast: boolean;
}

/** struct muslin_cutplan_worth, muslin/cutplan.h */
export interface CutplanWorth {
    /** the size of which each piece is worth it, -1: not a size */
    readonly planSize: number;
    /** ... else the case whose condition is, for each of what it counts; -1: not a case */
    readonly ofCase: number;
    /** ... else the row of stock: each piece used costs so much more, worth being 0 or less */
    readonly stock: number;
    /** over scale, of the cost; 0 or more of sizes and at_least, 0 or less of at most */
    readonly worth: bigint;
}

/** struct muslin_cutplan_checked, muslin/cutplan.h */
export interface CutplanChecked {
    /** of the plan, added up anew */
    readonly cost: bigint;
    /** the bound, proved anew */
    readonly least: number;
    /** cases looked at */
    readonly cases: number;
    /** enum muslin_cutplan_fault: what is wrong first */
    readonly fault: CutplanFault;
    /**
     * the row of sizes, of stock or of cases that is at fault; OVERFULL, TOO_HIGH, COST: which of the strips, pieces
     * laid or things as the search noted them
     */
    readonly at: number;
}

/** struct muslin_yardage_spec, muslin/yardage.h */
export interface YardageSpec {
    /** these six as in struct muslin_cutplan_spec, of each fabric. Initially 0. */
    readonly endLoss?: LengthLike;
    /** Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** Initially 0. */
    readonly resquareEvery?: Whole;
    /** Initially 0. */
    readonly straightening?: LengthLike;
    /** Initially 0. */
    readonly sparePieces?: Whole;
    /** of each fabric. Initially 400000000. */
    readonly workLimit?: Whole;
    /** of pieces that are joined here, as in struct muslin_blank_spec. Initially 1/2 in. */
    readonly joinLoss?: LengthLike;
    /** these four as in struct muslin_purchase_spec, of each fabric. Initially 0. */
    readonly extra?: LengthLike;
    /** Initially 4 1/2 in. */
    readonly step?: LengthLike;
    /** Initially 0. */
    readonly shrinkage?: Whole;
    /** Initially 0. */
    readonly extraShare?: Whole;
    /** enum muslin_long_pieces: what is longer than its fabric is wide. Initially "lengthwise". */
    readonly longPieces?: LongPieces | null;
    /** as join_loss. Initially 0. */
    readonly leastPart?: LengthLike;
    /** added to the longer side of each mitred strip, for handling; 0 .. MUSLIN_SIZE_MAX. Initially 0. */
    readonly mitreExtra?: LengthLike;
    /** The flag MUSLIN_CUTPLAN_NO_PANELS. Initially false. */
    readonly noPanels?: boolean;
    /** The flag MUSLIN_CUTPLAN_ONE_HEIGHT. Initially false. */
    readonly oneHeight?: boolean;
    /** The flag MUSLIN_CUTPLAN_OWN_STRIPS. Initially false. */
    readonly ownStrips?: boolean;
    /** The flag MUSLIN_CUTPLAN_STACKED. Initially false. */
    readonly stacked?: boolean;
    /** The flag MUSLIN_CUTPLAN_FOLDED. Initially false. */
    readonly folded?: boolean;
}

/** struct muslin_extra_cut_spec, muslin/yardage.h */
export interface ExtraCutSpec {
    /** of the quilt, whether its top uses it or not. Initially 0. */
    readonly fabric?: Id;
    /** these and what follows as in struct muslin_blank_spec. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** Initially 0. */
    readonly cutLength?: LengthLike;
    /** Initially 1. */
    readonly count?: Whole;
    /** Initially 0. */
    readonly runIn?: LengthLike;
    /** Initially 0. */
    readonly joinLoss?: LengthLike;
    /** enum muslin_blank_kind. Initially "piece". */
    readonly kind?: BlankKind | null;
    /** Initially 0. */
    readonly leastPart?: LengthLike;
    /** The flag MUSLIN_BLANK_MAY_TURN. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_fabric_yardage, muslin/yardage.h */
export interface FabricYardage {
    readonly fabric: Id;
    readonly usableWidth: Length;
    /** cut, extra cuts and spare ones among them */
    readonly pieces: number;
    /** of the plan, straightening included: what is needed */
    readonly clothLength: Length;
    /** no plan of two stages needs less, straightening included */
    readonly least: Length;
    /** when each size has its own strips */
    readonly ownStripsLength: Length;
    /** before it shrinks and with what is added, as in struct muslin_purchase */
    readonly withExtra: Length;
    /** up to the step */
    readonly bought: Length;
    /** bought - with_extra */
    readonly spare: Length;
    /** at which the plan can still be cut as it is */
    readonly narrowestWidth: Length;
    /** 1: cloth_length is the least */
    readonly proven: boolean;
    /** 1: some pieces lie turned a quarter from the request */
    readonly turned: boolean;
}

/** struct muslin_quilt, muslin/quilt.h */
export interface Quilt extends Handle {
    /** A new fabric. muslin_quilt_fabric() in muslin/quilt.h. Since 1.0. */
    fabric(name: string, spec?: QuiltFabricSpec): Id;
    /**
     * A new measure with a name (as of a fabric) and the value it has until another is given, 0 .. MUSLIN_SIZE_MAX.
     * muslin_quilt_measure() in muslin/quilt.h. Since 1.0.
     */
    measure(name: string, value: LengthLike): Id;
    /**
     * A length that no size of the design changes, 0 .. MUSLIN_SIZE_MAX; equal ones are one measure.
     * muslin_quilt_fixed() in muslin/quilt.h. Since 1.0.
     */
    fixed(value: LengthLike): Id;
    /** The sum of factor x measure over n terms (1 .. 64). muslin_quilt_sum() in muslin/quilt.h. Since 1.0. */
    sum(terms: readonly QuiltSumSpec[]): Id;
    /**
     * The finished width or height of a node, as a measure: a sash as long as its block, a border as long as the top.
     * muslin_quilt_extent() in muslin/quilt.h. Since 1.0.
     */
    extent(node: Id, axis: Axis): Id;
    /**
     * The quilt's seam allowance and its take-up, as measures: give them values when solving. muslin_quilt_seam() in
     * muslin/quilt.h. Since 1.0.
     */
    seam(): { readonly allowance: Id; readonly takeUp: Id };
    /**
     * The name of a fabric or a measure, terminated; measures made without one have none (""). muslin_quilt_name() in
     * muslin/quilt.h. Since 1.0.
     */
    name(id: Id): string;
    /** One rectangle of one fabric. muslin_quilt_patch() in muslin/quilt.h. Since 1.0. */
    patch(spec?: QuiltPatchSpec): Id;
    /**
     * A pieced unit by its recipe, with a fabric for each of its regions (n is their number, 2 or 3), drawn as
     * muslin_unit_outlines() draws it and sewn with the quilt's seam. muslin_quilt_unit() in muslin/quilt.h. Since 1.0.
     */
    unit(fabrics: WholeNumbers, spec?: QuiltUnitSpec): Id;
    /**
     * A unit of the caller's own, drawn as shape.h says, outline first, with straight edges and an outline that is an
     * upright rectangle from (0, 0); `fabrics` has one for each piece. muslin_quilt_shape() in muslin/quilt.h. Since
     * 1.0.
     */
    shape(corners: readonly CornerSpec[], fabrics: WholeNumbers, width: Id, height: Id): Id;
    /**
     * n nodes (1 or more) sewn edge to edge in their order; one alone is itself. muslin_quilt_join() in muslin/quilt.h.
     * Since 1.0.
     */
    join(children: WholeNumbers, spec?: QuiltJoinSpec): Id;
    /**
     * Columns x rows nodes, given row by row from the top: each row joined across, then the rows joined down.
     * muslin_quilt_grid() in muslin/quilt.h. Since 1.0.
     */
    grid(columns: Whole, rows: Whole, children: WholeNumbers): Id;
    /**
     * One node columns x rows times, turned by a pattern that repeats: turns[(row % pattern_rows) x pattern_columns +
     * column % pattern_columns] quarter turns, each 0 .. 3. muslin_quilt_repeat() in muslin/quilt.h. Since 1.0.
     */
    repeat(node: Id, columns: Whole, rows: Whole, turns: WholeNumbers, patternColumns: Whole, patternRows: Whole): Id;
    /**
     * The node turned by quarter_turns (0 .. 3) clockwise: the same sewing, lying another way. muslin_quilt_turn() in
     * muslin/quilt.h. Since 1.0.
     */
    turn(node: Id, quarterTurns: Whole): Id;
    /**
     * The node's mirror image, left for right: another sewing, whose pieces with hands are cut the other way.
     * muslin_quilt_mirror() in muslin/quilt.h. Since 1.0.
     */
    mirror(node: Id): Id;
    /**
     * Both in one step, without a node in between: first mirrored, where `mirrored` is 1 (else 0), then turned
     * clockwise by quarter_turns (0 .. 3), as struct muslin_node tells of a turn. muslin_quilt_lay() in muslin/quilt.h.
     * Since 1.0.
     */
    lay(node: Id, quarterTurns: Whole, mirrored: boolean): Id;
    /**
     * The node made larger than it is needed and trimmed after sewing: what is joined to it meets the trimmed edge,
     * which is no mismatch. muslin_quilt_trim() in muslin/quilt.h. Since 1.0.
     */
    trim(node: Id, spec?: QuiltTrimSpec): Id;
    /**
     * Four nodes round a centre, each end against the next one's side: four seams, top, right, bottom, left, of which
     * the first (top to centre) is sewn in part and finished when left is on. muslin_quilt_pinwheel() in
     * muslin/quilt.h. Since 1.0.
     */
    pinwheel(spec?: QuiltPinwheelSpec): Id;
    /**
     * Strips round a centre with mitred corners: where two strips meet, the seam runs from the centre's corner to the
     * outer one, and stitching along the centre stops one allowance from the edge there, so that the corner can be set
     * in. muslin_quilt_set_in() in muslin/quilt.h. Since 1.0.
     */
    setIn(spec?: QuiltSetInSpec): Id;
    /**
     * Strips sewn on one after the other (n, 0 or more), each as long as what is there: log cabin, courthouse steps,
     * plain borders. muslin_quilt_logs() in muslin/quilt.h. Since 1.0.
     */
    logs(centre: Id, logs: readonly QuiltLogSpec[]): Id;
    /**
     * A border with corners of its own, plain or pieced: sides joined to the centre, then top and bottom with their
     * corners joined to that. muslin_quilt_surround() in muslin/quilt.h. Since 1.0.
     */
    surround(spec?: QuiltSurroundSpec): Id;
    /**
     * Blocks (columns x rows, row by row from the top; n is their product) with sashes between them, each as long as
     * the first block of its row is high, or of its column wide. muslin_quilt_sashed() in muslin/quilt.h. Since 1.0.
     */
    sashed(blocks: WholeNumbers, spec?: QuiltSashedSpec): Id;
    /**
     * Blocks on point in diagonal rows, closed by setting triangles. muslin_quilt_diagonal() in muslin/quilt.h. Since
     * 1.0.
     */
    diagonal(blocks: WholeNumbers, spec?: QuiltDiagonalSpec): Id;
    /**
     * Rows of equilateral triangles and what they make up: each row is filled, from the left, with pieces of one to
     * three triangles' room (n pieces in all; a row's pieces must end with it, else MUSLIN_ERR_RANGE with `at` the
     * piece, n where there are too few), and closed at both ends by half-triangles. muslin_quilt_sixty() in
     * muslin/quilt.h. Since 1.0.
     */
    sixty(pieces: readonly QuiltSixtyPieceSpec[], spec?: QuiltSixtySpec): Id;
    /**
     * The id of the fabric, measure or node (sort, enum muslin_sort) with this number, 1 .. as many as there are: what
     * muslin_id_number() says of it. muslin_quilt_id() in muslin/quilt.h. Since 1.0.
     */
    id(sort: Sort, number: Whole): Id;
    /**
     * A fabric, but for its name, which muslin_quilt_name() tells. muslin_quilt_read_fabric() in muslin/quilt.h. Since
     * 1.0.
     */
    readFabric(fabric: Id): Filled<QuiltFabricSpec>;
    /** What a measure is, but for its name. muslin_quilt_read_measure() in muslin/quilt.h. Since 1.0. */
    readMeasure(measure: Id): TreeMeasure;
    /**
     * The terms of a sum, in the order in which they were given: ask, then fill. muslin_quilt_read_terms() in
     * muslin/quilt.h. Since 1.0.
     */
    readTerms(measure: Id): readonly Filled<QuiltSumSpec>[];
    /** What a node is. muslin_quilt_node() in muslin/quilt.h. Since 1.0. */
    node(node: Id): Node;
    /**
     * The nodes that a node is made of, in the order in which they were given (a pinwheel: centre, top, right, bottom,
     * left), repeats repeated: ask, then fill. muslin_quilt_children() in muslin/quilt.h. Since 1.0.
     */
    children(node: Id): readonly Id[];
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_patch() in muslin/quilt.h. Since 1.0.
     */
    readPatch(node: Id): Filled<QuiltPatchSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_unit() in muslin/quilt.h. Since 1.0.
     */
    readUnit(node: Id): Filled<QuiltUnitSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_join() in muslin/quilt.h. Since 1.0.
     */
    readJoin(node: Id): Filled<QuiltJoinSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_trim() in muslin/quilt.h. Since 1.0.
     */
    readTrim(node: Id): Filled<QuiltTrimSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_pinwheel() in muslin/quilt.h. Since
     * 1.0.
     */
    readPinwheel(node: Id): Filled<QuiltPinwheelSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_set_in() in muslin/quilt.h. Since 1.0.
     */
    readSetIn(node: Id): Filled<QuiltSetInSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_diagonal() in muslin/quilt.h. Since
     * 1.0.
     */
    readDiagonal(node: Id): Filled<QuiltDiagonalSpec>;
    /**
     * What a node was made with: each of these reads one kind. muslin_quilt_read_sixty() in muslin/quilt.h. Since 1.0.
     */
    readSixty(node: Id): Filled<QuiltSixtySpec>;
    /**
     * The pieces of 60 degree rows, from the left, row by row: ask, then fill. muslin_quilt_read_sixty_pieces() in
     * muslin/quilt.h. Since 1.0.
     */
    readSixtyPieces(node: Id): readonly Filled<QuiltSixtyPieceSpec>[];
    /** The drawing of a shape: ask, then fill. muslin_quilt_read_shape() in muslin/quilt.h. Since 1.0. */
    readShape(node: Id): { readonly corners: readonly Filled<CornerSpec>[]; readonly width: Id; readonly height: Id };
    /**
     * The fabrics of a unit's regions, or of a shape's pieces: ask, then fill. muslin_quilt_read_fabrics() in
     * muslin/quilt.h. Since 1.0.
     */
    readFabrics(node: Id): readonly Id[];
    /** How much a quilt holds. muslin_quilt_counts() in muslin/quilt.h. Since 1.0. */
    counts(): PartCounts;
}

/** struct muslin_solution, muslin/solution.h */
export interface Solution extends Handle {
    /**
     * How large a node is, how many there are and how they lie. muslin_solution_size() in muslin/solution.h. Since 1.0.
     */
    size(node: Id): NodeSize;
    /** The value a measure has in this solution. muslin_solution_value() in muslin/solution.h. Since 1.0. */
    value(measure: Id): Length;
    /** The whole at a glance. muslin_solution_totals() in muslin/solution.h. Since 1.0. */
    totals(): SolutionTotal;
    /**
     * Every pair of edges that do not meet, each where it is made (once for equal parts), in the order of the nodes.
     * muslin_solution_misfits() in muslin/solution.h. Since 1.0.
     */
    misfits(): readonly Misfit[];
    /**
     * One way from the root to a node: the child numbers to follow. muslin_solution_path() in muslin/solution.h. Since
     * 1.0.
     */
    path(node: Id): readonly number[];
    /**
     * What to cut, by fabric in the order in which they were made, the highest and then the longest first; cuts equal
     * in all but counts are one row (templates of one shape only). muslin_solution_cuts() in muslin/solution.h. Since
     * 1.0.
     */
    cuts(): readonly SolutionCut[];
    /**
     * The nodes that need a row of the cut list, in their order; of a strip the join. muslin_solution_cut_nodes() in
     * muslin/solution.h. Since 1.0.
     */
    cutNodes(row: Whole): readonly Id[];
    /**
     * Every join that can be strip-pieced: all its children are patches (turned or not) of one finished length with the
     * same allowances at its ends, and a set gives at least one segment. muslin_solution_stripsets() in
     * muslin/solution.h. Since 1.0.
     */
    stripsets(): readonly Stripset[];
    /**
     * The sum that leads to the width (MUSLIN_AXIS_ACROSS) or height (MUSLIN_AXIS_DOWN) of a node: the finished size
     * first, then its allowances up to the unfinished size, which is the last row's sum. muslin_solution_explain() in
     * muslin/solution.h. Since 1.0.
     */
    explain(node: Id, axis: Axis): readonly Term[];
    /**
     * The outlines of the patches under a node, from number `first` on, in the order of the tree: as many as `capacity`
     * rows and `corner_capacity` corners hold (a row is not cut short; none has more than 80 corners).
     * muslin_solution_outlines() in muslin/solution.h. Since 1.0.
     */
    outlines(node: Id, stage: Stage): IterableIterator<Outline>;
    /** The steps, a row each, in the order of their nodes. muslin_sewing_steps() in muslin/sewing.h. Since 1.0. */
    sewingSteps(): readonly SewingStep[];
    /**
     * What goes into one of step `step`: made by earlier steps, or patches, each once, in the order of their first use.
     * muslin_sewing_feeds() in muslin/sewing.h. Since 1.0.
     */
    sewingFeeds(step: Whole): readonly SewingFeed[];
    /**
     * All seams, and how far off the whole top may be: with the most seams that a line across it meets, each off by
     * seam_error and each of its pieces' cuts by cut_error (0 .. MUSLIN_SIZE_MAX / 8 each), as muslin_accuracy_row()
     * says; the rounding of on-point and 60 degree parts is not in it. muslin_sewing_totals() in muslin/sewing.h. Since
     * 1.0.
     */
    sewingTotals(seamError: LengthLike, cutError: LengthLike): SewingTotal;
    /**
     * The places of a fabric in a solved top, for muslin_scatter_prints(): its patches in the order of
     * muslin_solution_outlines() of the root, and which of them touch along an edge (longer than a corner: than 1/1000
     * in), each pair once, in order, with weight 1. muslin_scatter_touches() in muslin/scatter.h. Since 1.0.
     */
    scatterTouches(fabric: Id): { readonly rows: readonly Filled<TouchSpec>[]; readonly places: number };
    /**
     * The pieces of one fabric as a request, ask-then-fill: rows of the cut list as said above, `label` the row there,
     * priority 0. muslin_yardage_pieces() in muslin/yardage.h. Since 1.0.
     */
    yardagePieces(fabric: Id, spec?: YardageSpec): readonly Filled<BlankSpec>[];
}

/** struct muslin_pressing, muslin/pressing.h */
export interface Pressing extends Handle {
    /** How well it nests. muslin_pressing_totals() in muslin/pressing.h. Since 1.0. */
    totals(): PressingTotal;
    /** Every seam of every different node, in their order. muslin_pressing_seams() in muslin/pressing.h. Since 1.0. */
    seams(): readonly PressingSeam[];
    /**
     * Which places take a child the other way: a row for each child with seams, in the order of the nodes.
     * muslin_pressing_children() in muslin/pressing.h. Since 1.0.
     */
    children(): readonly PressingChild[];
    /**
     * The meetings that do not nest, in the order of the nodes: press one of the two seams open there, or accept the
     * lump. muslin_pressing_exceptions() in muslin/pressing.h. Since 1.0.
     */
    exceptions(): readonly PressingException[];
}

/** struct muslin_cutplan, muslin/cutplan.h */
export interface Cutplan extends Handle {
    /** Length or cost, the bound and counts. muslin_cutplan_totals() in muslin/cutplan.h. Since 1.0. */
    totals(): CutplanTotal;
    /**
     * The strips in the order of cutting: of a bolt panels first, then the highest strips, equal heights together; what
     * a panel or piece of stock holds follows it. muslin_cutplan_strips() in muslin/cutplan.h. Since 1.0.
     */
    strips(): readonly CutplanStrip[];
    /** What each strip holds, from the left, place by place. muslin_cutplan_places() in muslin/cutplan.h. Since 1.0. */
    places(): readonly CutplanPlace[];
    /**
     * Each piece by itself, as a rectangle on its bolt or piece of stock, for drawing: from number `first` on, in the
     * order of cutting. muslin_cutplan_blanks() in muslin/cutplan.h. Since 1.0.
     */
    blanks(first: Whole): readonly CutplanBlank[];
    /**
     * Rectangles of cloth that are left, at least `least_side` and 1 both ways, the largest first: ends of strips, the
     * rest of panels and of stock, what lies above slit pieces that are shorter than their panel, and of FOLDED cloth
     * one layer beside a JOINED strip that goes round the fold and is not whole. muslin_cutplan_left_overs() in
     * muslin/cutplan.h. Since 1.0.
     */
    leftOvers(leastSide: LengthLike): readonly CutplanLeftOver[];
    /** What becomes of each row of pieces. muslin_cutplan_pieces() in muslin/cutplan.h. Since 1.0. */
    pieces(): readonly CutplanPiece[];
    /**
     * How many of each row of stock are used; no rows from a bolt. muslin_cutplan_stock() in muslin/cutplan.h. Since
     * 1.0.
     */
    stock(): readonly CutplanStockUsed[];
    /**
     * The same request at other usable widths of a bolt, so many from least to most in equal steps: for readers whose
     * cloth differs. muslin_cutplan_widths() in muslin/cutplan.h. Since 1.0.
     */
    widths(leastWidth: LengthLike, mostWidth: LengthLike, widths: Whole, more?: { readonly progress?: Progress }):
        readonly CutplanWidth[];
    /**
     * The narrowest usable width at which this plan can be cut as it is: its strips stay, none loses a piece.
     * muslin_cutplan_narrowest() in muslin/cutplan.h. Since 1.0.
     */
    narrowest(): Length;
    /**
     * What the plan was made for, the highest first: sizes that are alike merged, joined pieces taken apart, what is
     * missing left out. muslin_cutplan_sizes() in muslin/cutplan.h. Since 1.0.
     */
    sizes(): readonly CutplanSize[];
    /**
     * The ways to come by cloth that a plan may use, the dearest first, a panel before a strip as high.
     * muslin_cutplan_ways() in muslin/cutplan.h. Since 1.0.
     */
    ways(): readonly CutplanWay[];
    /**
     * Cases of the proof: each either is split into two that leave nothing out, or is empty, as trying all ways to pack
     * its strips shows, or has a bound not below the plan's. muslin_cutplan_cases() in muslin/cutplan.h. Since 1.0.
     */
    cases(): readonly CutplanCase[];
    /**
     * The worths that prove a case, one for each size, each condition on the way to the case, and each stock.
     * muslin_cutplan_worths() in muslin/cutplan.h. Since 1.0.
     */
    worths(ofCase: Whole): { readonly rows: readonly CutplanWorth[]; readonly scale: bigint };
    /**
     * Proves plan and bound anew, in whole numbers, by code of its own that shares only the rules of cutting with the
     * search. muslin_cutplan_check() in muslin/cutplan.h. Since 1.0.
     */
    check(more?: { readonly progress?: Progress }): CutplanChecked;
}

/** struct muslin_yardage, muslin/yardage.h */
export interface Yardage extends Handle {
    /**
     * A row for each fabric of which something is cut, in the order in which the fabrics were made.
     * muslin_yardage_fabrics() in muslin/yardage.h. Since 1.0.
     */
    fabrics(): readonly FabricYardage[];
    /**
     * The plan of a row of muslin_yardage_fabrics(); it lives as long as the yardage, and is not freed by itself.
     * muslin_yardage_plan() in muslin/yardage.h. Since 1.0.
     */
    plan(row: Whole): Cutplan;
}

/** The functions of the library, and the classes of its handles. */
export interface Calls {
    readonly Quilt: {
        /**
         * An empty quilt, with two measures: its seam allowance and its take-up. muslin_quilt_create() in
         * muslin/quilt.h. Since 1.0.
         */
        new (spec?: QuiltSpec): Quilt;
    };
    readonly Solution: {
        /**
         * Solves the tree under `root`, with n values (0 or more; the last one of an id counts) in place of those that
         * measures and fabrics have. muslin_solution_create() in muslin/solution.h. Since 1.0.
         */
        new (quilt: Quilt, root: Id, spec?: SolutionSpec & { readonly values?: readonly SolutionValueSpec[] }):
            Solution;
    };
    readonly Pressing: {
        /**
         * A plan for the whole solution, which it reads and which must outlive it. muslin_pressing_create() in
         * muslin/pressing.h. Since 1.0.
         */
        new (solution: Solution, spec?: PressingSpec & { readonly progress?: Progress }): Pressing;
    };
    readonly Cutplan: {
        /**
         * A plan for a list of pieces, n rows of muslin_blank_spec, from the bolt (stock_n 0), or from stock_n rows of
         * muslin_cutplan_stock_spec. muslin_cutplan_create() in muslin/cutplan.h. Since 1.0.
         */
        new (pieces: readonly BlankSpec[], spec?: CutplanSpec & { readonly stock?: readonly CutplanStockSpec[];
            readonly progress?: Progress }): Cutplan;
    };
    readonly Yardage: {
        /**
         * The whole way, for every fabric of which something is cut, with n rows of extra cuts. muslin_yardage_create()
         * in muslin/yardage.h. Since 1.0.
         */
        new (solution: Solution, cuts: readonly ExtraCutSpec[], spec?: YardageSpec & { readonly progress?: Progress }):
            Yardage;
    };
    /**
     * The version of the library that is running, in the form of MUSLIN_VERSION; compare it with that macro to learn
     * whether headers and library belong together. muslin_version() in muslin/base.h. Since 1.0.
     */
    version(): number;
    /** The same as text, for instance "1.0.0". muslin_version_text() in muslin/base.h. Since 1.0. */
    versionText(): string;
    /** How many statuses this library knows. muslin_status_count() in muslin/base.h. Since 1.0. */
    statusCount(): number;
    /**
     * The status's name without its prefix, for instance "ERR_RANGE" for 6 and "OK" for 0; "UNKNOWN" for a number
     * outside the list. muslin_status_name() in muslin/base.h. Since 1.0.
     */
    statusName(status: Status): string;
    /**
     * One plain English sentence on what the status means and what to do. muslin_status_sentence() in muslin/base.h.
     * Since 1.0.
     */
    statusSentence(status: Status): string;
    /**
     * How many arguments this library can name, numbered 0 .. count - 1. muslin_argument_count() in muslin/base.h.
     * Since 1.0.
     */
    argumentCount(): number;
    /**
     * The trade's words for an argument, for instance "seam allowance"; "unknown argument" for a number outside the
     * list. muslin_argument_words() in muslin/base.h. Since 1.0.
     */
    argumentWords(argument: Argument): string;
    /**
     * How many warnings this library knows: the bits 0 .. count - 1, each 1u << bit. muslin_warning_count() in
     * muslin/base.h. Since 1.0.
     */
    warningCount(): number;
    /**
     * The name of one warning bit without its prefix, for instance "NO_SLACK" for 1; "UNKNOWN" for 0 or for anything
     * that is not exactly one known bit. muslin_warning_name() in muslin/base.h. Since 1.0.
     */
    warningName(warning: Warning): string;
    /**
     * One sentence for one warning bit; "" for 0 or for anything that is not exactly one known bit.
     * muslin_warning_sentence() in muslin/base.h. Since 1.0.
     */
    warningSentence(warning: Warning): string;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. muslin_constant_count() in muslin/base.h. Since 1.0.
     */
    constantCount(): number;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. muslin_constant_name() in muslin/base.h. Since 1.0.
     */
    constantName(index: Whole): string;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. muslin_constant_value() in muslin/base.h. Since 1.0.
     */
    constantValue(index: Whole): number;
    /** a + b. muslin_length_add() in muslin/length.h. Since 1.0. */
    lengthAdd(a: LengthLike, b: LengthLike): Length;
    /** a - b, which may be negative. muslin_length_subtract() in muslin/length.h. Since 1.0. */
    lengthSubtract(a: LengthLike, b: LengthLike): Length;
    /** a x factor, factor any int64_t. muslin_length_multiply() in muslin/length.h. Since 1.0. */
    lengthMultiply(a: LengthLike, factor: Whole): Length;
    /** a / divisor, rounded as asked. muslin_length_divide() in muslin/length.h. Since 1.0. */
    lengthDivide(a: LengthLike, divisor: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * a x numerator / denominator, rounded once, as asked; the product is never cut short on the way.
     * muslin_length_scale() in muslin/length.h. Since 1.0.
     */
    lengthScale(a: LengthLike, numerator: Whole, denominator: Whole, rounding?: RoundingSpec): Rounded;
    /** a brought to the grid. muslin_length_snap() in muslin/length.h. Since 1.0. */
    lengthSnap(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * -1, 0 or 1 as a is less than, equal to or greater than b. muslin_length_compare() in muslin/length.h. Since 1.0.
     */
    lengthCompare(a: LengthLike, b: LengthLike): number;
    /**
     * The sum of n lengths; the status does not depend on their order, because partial sums may pass the range, and any
     * length out of range gives MUSLIN_ERR_RANGE before MUSLIN_ERR_OVERFLOW is considered. muslin_length_sum() in
     * muslin/length.h. Since 1.0.
     */
    lengthSum(values: LengthsLike): Length;
    /**
     * The sum of lengths[i] x counts[i]; order-independent as above. muslin_length_dot() in muslin/length.h. Since 1.0.
     */
    lengthDot(lengths: LengthsLike, counts: WholeNumbers): Length;
    /** One call for n values. muslin_length_add_n() in muslin/length.h. Since 1.0. */
    lengthAddN(a: LengthsLike, b: LengthsLike, statuses?: Int32Array): BigInt64Array;
    /** One call for n values. muslin_length_subtract_n() in muslin/length.h. Since 1.0. */
    lengthSubtractN(a: LengthsLike, b: LengthsLike, statuses?: Int32Array): BigInt64Array;
    /** One call for n values. muslin_length_multiply_n() in muslin/length.h. Since 1.0. */
    lengthMultiplyN(a: LengthsLike, factors: WholeNumbers, statuses?: Int32Array): BigInt64Array;
    /** a[i] x numerator / denominator, each rounded as asked. muslin_length_scale_n() in muslin/length.h. Since 1.0. */
    lengthScaleN(a: LengthsLike, numerator: Whole, denominator: Whole, rounding?: RoundingSpec, statuses?: Int32Array):
        BigInt64Array;
    /** a[i], each brought to the grid. muslin_length_snap_n() in muslin/length.h. Since 1.0. */
    lengthSnapN(a: LengthsLike, rounding?: RoundingSpec, statuses?: Int32Array): BigInt64Array;
    /** a x sqrt 2, the diagonal of a square. muslin_length_times_root2() in muslin/length.h. Since 1.0. */
    lengthTimesRoot2(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /** a / sqrt 2, the side of a square with diagonal a. muslin_length_over_root2() in muslin/length.h. Since 1.0. */
    lengthOverRoot2(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * a x sqrt 3 / 2, the height of an equilateral triangle with side a. muslin_length_equilateral_height() in
     * muslin/length.h. Since 1.0.
     */
    lengthEquilateralHeight(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * 2 a / sqrt 3, the side of an equilateral triangle with height a. muslin_length_equilateral_side() in
     * muslin/length.h. Since 1.0.
     */
    lengthEquilateralSide(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /** sqrt(a x a + b x b). muslin_length_hypotenuse() in muslin/length.h. Since 1.0. */
    lengthHypotenuse(a: LengthLike, b: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * The side of the square that has this area, in doubled square ticks (2 x width x height), 0 .. 2^61.
     * muslin_length_root_of_area() in muslin/length.h. Since 1.0.
     */
    lengthRootOfArea(area: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * The length of one unit in ticks (exact for all six); 0 for anything else. muslin_length_unit_ticks() in
     * muslin/length.h. Since 1.0.
     */
    lengthUnitTicks(unit: LengthUnit): Length;
    /**
     * The unit's usual short word: "in", "ft", "yd", "mm", "cm", "m"; "" for anything else. muslin_length_unit_word()
     * in muslin/length.h. Since 1.0.
     */
    lengthUnitWord(unit: LengthUnit): string;
    /**
     * Reads one length from `bytes` bytes of UTF-8 text, which need not be terminated. muslin_length_parse() in
     * muslin/length.h. Since 1.0.
     */
    lengthParse(text: string, spec?: ParseSpec): Parsed;
    /** Writes the length as terminated text. muslin_length_format() in muslin/length.h. Since 1.0. */
    lengthFormat(a: LengthLike, spec?: FormatSpec): Formatted;
    /**
     * The cut size of a piece that shall finish at `finished` (0 .. MUSLIN_SIZE_MAX) and is sewn into its neighbours on
     * both sides: finished + 2 s + u. muslin_seam_cut_from_finished() in muslin/seam.h. Since 1.0.
     */
    seamCutFromFinished(finished: LengthLike, seam?: SeamSpec): Length;
    /**
     * The finished size of a cut piece or an unfinished unit (`cut`, 0 .. MUSLIN_SIZE_MAX): cut - 2 s - u.
     * muslin_seam_finished_from_cut() in muslin/seam.h. Since 1.0.
     */
    seamFinishedFromCut(cut: LengthLike, seam?: SeamSpec): Length;
    /**
     * Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
     * and the call succeeds, without it stops at the first failing element and says which in failed.
     * muslin_seam_cut_from_finished_n() in muslin/seam.h. Since 1.0.
     */
    seamCutFromFinishedN(finished: LengthsLike, seam?: SeamSpec, statuses?: Int32Array): BigInt64Array;
    /**
     * Array forms of the two, with the rules of the array forms in length.h: with `statuses` each element gets its own
     * and the call succeeds, without it stops at the first failing element and says which in failed.
     * muslin_seam_finished_from_cut_n() in muslin/seam.h. Since 1.0.
     */
    seamFinishedFromCutN(cut: LengthsLike, seam?: SeamSpec, statuses?: Int32Array): BigInt64Array;
    /**
     * Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow.
     * muslin_seam_piece() in muslin/seam.h. Since 1.0.
     */
    seamPiece(spec?: PieceSpec): Piece;
    /**
     * Equal pieces sewn side by side: a row of patches or the width of a strip set. muslin_seam_row_equal() in
     * muslin/seam.h. Since 1.0.
     */
    seamRowEqual(cut: LengthLike, pieces: Whole, seam?: SeamSpec): SewnRow;
    /**
     * The same for n pieces of unequal cut size; the problem's `at` names the first offending piece. muslin_seam_row()
     * in muslin/seam.h. Since 1.0.
     */
    seamRow(cuts: LengthsLike, seam?: SeamSpec): SewnRow;
    /**
     * Backwards: the cut width of `pieces` (1 .. MUSLIN_COUNT_MAX) equal strips that together shall finish at
     * `finished`: finished / pieces + 2 s + u, rounded once, as asked. muslin_seam_strip_for_finished() in
     * muslin/seam.h. Since 1.0.
     */
    seamStripForFinished(finished: LengthLike, pieces: Whole, seam?: SeamSpec, rounding?: RoundingSpec): Rounded;
    /**
     * A cut size resized with its block: take the seams off, scale by numerator / denominator (both 1 .. INT64_MAX),
     * put them back on, rounded once, as asked. muslin_seam_resize_cut() in muslin/seam.h. Since 1.0.
     */
    seamResizeCut(cut: LengthLike, numerator: Whole, denominator: Whole, seam?: SeamSpec, rounding?: RoundingSpec):
        Rounded;
    /**
     * The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished
     * width edge to edge, `stitched` the allowance one meant to sew. muslin_seam_calibrate() in muslin/seam.h. Since
     * 1.0.
     */
    seamCalibrate(cuts: LengthsLike, measured: LengthLike, stitched: LengthLike): Calibration;
    /**
     * The carry-on plan: sets that came out wrong are kept, and a later piece planned at c is cut to suit.
     * muslin_seam_carry_on() in muslin/seam.h. Since 1.0.
     */
    seamCarryOn(spec?: CarryOnSpec, rounding?: RoundingSpec): Rounded;
    /**
     * How far a row is off when each of `seams` (0 .. MUSLIN_COUNT_MAX) seams is off by `error_per_seam`
     * (+-MUSLIN_SIZE_MAX): error x seams. muslin_seam_error_total() in muslin/seam.h. Since 1.0.
     */
    seamErrorTotal(errorPerSeam: LengthLike, seams: Whole): Length;
    /**
     * The largest error per seam, either way, that keeps the total within `tolerance` (0 .. MUSLIN_SIZE_MAX): tolerance
     * / seams, down to a tick. muslin_seam_error_limit() in muslin/seam.h. Since 1.0.
     */
    seamErrorLimit(tolerance: LengthLike, seams: Whole): Length;
    /**
     * The share of fabric that disappears into seams, in ppm to the nearest, ties up: (cut - finished) / cut, for any
     * two areas in doubled square ticks (a patch, a strip set, a whole top). muslin_seam_share() in muslin/seam.h.
     * Since 1.0.
     */
    seamShare(cutArea: Whole, finishedArea: Whole): number;
    /** How far off a row of pieces may be. muslin_accuracy_row() in muslin/accuracy.h. Since 1.0. */
    accuracyRow(spec?: AccuracyRowSpec): AccuracyRowErrors;
    /**
     * How far off a block and a top of such blocks may be, in a straight setting without sashing (for other rows count
     * pieces and seams and ask muslin_accuracy_row()). muslin_accuracy_top() in muslin/accuracy.h. Since 1.0.
     */
    accuracyTop(spec?: AccuracyTopSpec): AccuracyTopErrors;
    /** Whether the seams of two neighbouring rows meet. muslin_accuracy_meet() in muslin/accuracy.h. Since 1.0. */
    accuracyMeet(spec?: AccuracyMeetSpec): AccuracyMeeting;
    /**
     * Dimensional change in ppm to the nearest, negative when it shrank. muslin_shrinkage_change() in
     * muslin/shrinkage.h. Since 1.0.
     */
    shrinkageChange(before: LengthLike, after: LengthLike): number;
    /**
     * Both directions and the area of something measured before and after. muslin_shrinkage_measure() in
     * muslin/shrinkage.h. Since 1.0.
     */
    shrinkageMeasure(spec?: WashSpec): WashChange;
    /**
     * From the size wanted in the end to the size to make: width and length are what the quilt shall measure when
     * quilted and washed. muslin_shrinkage_size_to_make() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageSizeToMake(spec?: ShrinkageSpec, rounding?: RoundingSpec): SizeToMake;
    /**
     * Backwards: what a made size (width and length of the spec) becomes by quilting and washing.
     * muslin_shrinkage_becomes() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageBecomes(spec?: ShrinkageSpec, rounding?: RoundingSpec): WashedSize;
    /**
     * The size to make straight from a measured sample, without a percentage between that could be rounded: target x
     * before / after, rounded once, as asked. muslin_shrinkage_from_sample() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageFromSample(before: LengthLike, after: LengthLike, target: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * The share to reckon with when fabric and batting shrink differently. muslin_shrinkage_governs() in
     * muslin/shrinkage.h. Since 1.0.
     */
    shrinkageGoverns(fabric: Whole, batting: Whole, governingRule: GoverningRule): Governing;
    /** What to wash so that enough cloth is left. muslin_shrinkage_prewash() in muslin/shrinkage.h. Since 1.0. */
    shrinkagePrewash(spec?: PrewashSpec): Prewash;
    /**
     * Usable width from the labelled width (1 .. MUSLIN_SIZE_MAX): (labelled - 2 x selvage) x (1 - shrinkage), down to
     * a tick. muslin_fabric_usable_width() in muslin/fabric.h. Since 1.0.
     */
    fabricUsableWidth(labelled: LengthLike, selvage: LengthLike, shrinkage: Whole): Length;
    /** From a length needed to a length bought. muslin_fabric_purchase() in muslin/fabric.h. Since 1.0. */
    fabricPurchase(spec?: PurchaseSpec): Purchase;
    /**
     * How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b), losses taken off first.
     * muslin_fabric_pieces() in muslin/fabric.h. Since 1.0.
     */
    fabricPieces(spec?: ClothSpec): ClothPieces;
    /**
     * Pieces wanted -> strips across the width -> length of cloth. muslin_fabric_strips() in muslin/fabric.h. Since
     * 1.0.
     */
    fabricStrips(spec?: StripsSpec): Strips;
    /**
     * The least length of cloth whose area is `area` (doubled square ticks, 0 .. MUSLIN_LENGTH_MAX) at this usable
     * width (1 .. MUSLIN_SIZE_MAX): area / (2 x width), up to a tick. muslin_fabric_area_bound() in muslin/fabric.h.
     * Since 1.0.
     */
    fabricAreaBound(area: Whole, usableWidth: LengthLike): Length;
    /**
     * The size that the arithmetic must use when one lines up the tips (align MUSLIN_EDGE_PINKED_TIPS) or the valleys
     * (MUSLIN_EDGE_PINKED_VALLEYS) throughout: a pinked size measured at the other point changes by two depths each
     * way, one for each of two edges; a straight edge changes nothing. muslin_stock_size() in muslin/fabric.h. Since
     * 1.0.
     */
    stockSize(stock: StockSpec, align: Edge): { readonly width: Length; readonly length: Length };
    /**
     * Strips of cut width strip_cut (1 or more) from stock, cut across its width (each strip as long as the stock is
     * wide). muslin_stock_strips() in muslin/fabric.h. Since 1.0.
     */
    stockStrips(stock: StockSpec, stripCut: LengthLike, stripsWanted: Whole): StockYield;
    /**
     * What to say when these fabrics meet in one top: a sum of enum muslin_warning bits. muslin_stock_check() in
     * muslin/fabric.h. Since 1.0.
     */
    stockCheck(rows: readonly StockSpec[]): readonly Warning[];
    /**
     * allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3, else
     * MUSLIN_ERR_RANGE) without showing it, else 0: without direction any; two-way and stripes a half turn; one-way no
     * turn. muslin_print_may_turn() in muslin/fabric.h. Since 1.0.
     */
    printMayTurn(print: Print, quarterTurns: Whole): boolean;
    /** Windows wanted -> repeats -> length of cloth. muslin_motif_plan() in muslin/motif.h. Since 1.0. */
    motifPlan(spec?: MotifSpec): Motif;
    /**
     * Windows that a cloth so long (0 .. MUSLIN_SIZE_MAX) gives, counted as in muslin_motif_plan(); spec->pieces is not
     * used, but must be in its range. muslin_motif_from_cloth() in muslin/motif.h. Since 1.0.
     */
    motifFromCloth(clothLength: LengthLike, spec?: MotifSpec): MotifYield;
    /**
     * Cloth for stacks of identical pieces: it is cut into `layers` lengths of whole repeats that begin at the same
     * place of the print; they are laid on each other so that the print matches, and strips and pieces are cut through
     * all of them at once. muslin_stack_plan() in muslin/motif.h. Since 1.0.
     */
    stackPlan(spec?: StackSpec): Stack;
    /** How many rows a table has. muslin_reference_count() in muslin/reference.h. Since 1.0. */
    referenceCount(table: Table): number;
    /** Row `index`, from 0, of a table. muslin_reference_row() in muslin/reference.h. Since 1.0. */
    referenceRow(table: Table, index: Whole): Reference;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. muslin_reference_name() in
     * muslin/reference.h. Since 1.0.
     */
    referenceName(table: Table, index: Whole): string;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. muslin_reference_source() in
     * muslin/reference.h. Since 1.0.
     */
    referenceSource(table: Table, index: Whole): string;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. muslin_reference_note() in
     * muslin/reference.h. Since 1.0.
     */
    referenceNote(table: Table, index: Whole): string;
    /** How many segments one set gives. muslin_stripset_yield() in muslin/stripset.h. Since 1.0. */
    stripsetYield(spec?: YieldSpec): Yield;
    /**
     * The usable length that a set of strips shares, the shortest, with its index (the first of equals); warnings gets
     * MUSLIN_WARN_MIXED_WIDTHS when they differ, else 0. muslin_stripset_shortest() in muslin/stripset.h. Since 1.0.
     */
    stripsetShortest(lengths: LengthsLike): { readonly shortest: Length; readonly index: number; readonly warnings:
        readonly Warning[] };
    /**
     * Segments wanted -> sets -> strips -> bundles or a length of cloth. muslin_stripset_need() in muslin/stripset.h.
     * Since 1.0.
     */
    stripsetNeed(spec?: NeedSpec): Need;
    /**
     * Strips in hand -> sets -> segments -> blocks -> tops, and what is left over. muslin_stripset_harvest() in
     * muslin/stripset.h. Since 1.0.
     */
    stripsetHarvest(spec?: HarvestSpec): Harvest;
    /**
     * With sets_wanted 0: how many sets the scarcest print allows; with sets_wanted above 0 sets becomes sets_wanted.
     * muslin_stripset_prints() in muslin/stripset.h. Since 1.0.
     */
    stripsetPrints(rows: readonly StripsetPrint[], setsWanted: Whole): { readonly rows:
        readonly Filled<StripsetPrint>[]; readonly sets: number; readonly scarcest: number };
    /**
     * Length of cloth for the whole list: for each row count / ((usable_width - end_loss) / across) strips as high as
     * the piece is along the cloth, added up. muslin_cutlist_from_yardage() in muslin/cutlist.h. Since 1.0.
     */
    cutlistFromYardage(pieces: readonly CutlistPieceSpec[], spec?: CutlistSpec): CutlistYardage;
    /**
     * How each row is cut then (ask-then-fill): n rows in the order of the list. muslin_cutlist_yardage_rows() in
     * muslin/cutlist.h. Since 1.0.
     */
    cutlistYardageRows(pieces: readonly CutlistPieceSpec[], spec?: CutlistSpec): readonly CutlistRow[];
    /**
     * The list from pieces of stock of one size: squares, strips of a bundle, fat quarters, or a cloth.
     * muslin_cutlist_from_stock() in muslin/cutlist.h. Since 1.0.
     */
    cutlistFromStock(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): CutlistStock;
    /**
     * How each row is cut then (ask-then-fill): n rows in the order of the list. muslin_cutlist_stock_rows() in
     * muslin/cutlist.h. Since 1.0.
     */
    cutlistStockRows(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistRow[];
    /**
     * Which strips come from which piece of stock (ask-then-fill), row by row in the order of cutting: none for a row
     * without a strip, at most three for any other: from what the row before has left, from whole pieces of stock, and
     * from the last. muslin_cutlist_stock_parts() in muslin/cutlist.h. Since 1.0.
     */
    cutlistStockParts(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistPart[];
    /**
     * How many times the whole list (how many quilts, blocks or kits) comes from stock->count pieces of stock, all rows
     * taken so many times and then cut as in muslin_cutlist_from_stock(): row by row, not list by list.
     * muslin_cutlist_lists_from_stock() in muslin/cutlist.h. Since 1.0.
     */
    cutlistListsFromStock(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): CutlistLists;
    /**
     * How each row is cut for all those lists together (ask-then-fill): n rows in the order of the list; a row may lie
     * another way than for one list. muslin_cutlist_lists_rows() in muslin/cutlist.h. Since 1.0.
     */
    cutlistListsRows(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistRow[];
    /**
     * The same list from something else: call it for each kind of stock at hand or in question, and compare; which is
     * better is the caller's to say. muslin_cutlist_substitute() in muslin/cutlist.h. Since 1.0.
     */
    cutlistSubstitute(pieces: readonly CutlistPieceSpec[], prints: Whole, stock?: StockSpec): Substitution;
    /**
     * Whether the drawing is a unit: outline and pieces are simple shapes that run counter-clockwise, and the pieces
     * cover the outline exactly once. muslin_shape_check() in muslin/shape.h. Since 1.0.
     */
    shapeCheck(corners: readonly CornerSpec[]): Shape;
    /**
     * The template of one piece as cut: each edge moved out by its effective allowance, each corner where the moved
     * edges meet, x and y rounded on their own to the grid. muslin_shape_template() in muslin/shape.h. Since 1.0.
     */
    shapeTemplate(corners: readonly CornerSpec[], piece: Whole, rounding?: RoundingSpec): readonly TemplateCorner[];
    /**
     * What one needs to know before cutting a piece: areas, the rectangle to cut it from, grain. muslin_shape_measure()
     * in muslin/shape.h. Since 1.0.
     */
    shapeMeasure(corners: readonly CornerSpec[], spec?: ShapePieceSpec, rounding?: RoundingSpec): ShapePiece;
    /**
     * The rectangle that holds a piece's template plus `margin` (0 .. MUSLIN_SHAPE_SIZE_MAX) all round when one of its
     * straight edges lies along a strip, or along the sewing line of a foundation: `corner` is the row where that edge
     * starts (a row of the outline or no row at all: MUSLIN_ERR_INDEX; of an arc: MUSLIN_ERR_SHAPE).
     * muslin_shape_foundation() in muslin/shape.h. Since 1.0.
     */
    shapeFoundation(corners: readonly CornerSpec[], corner: Whole, margin: LengthLike, rounding?: RoundingSpec): {
        readonly along: Length; readonly across: Length };
    /**
     * The two pieces of a square with a quarter circle about one corner: the convex one (a slice of the disc) and the
     * concave one (the background). muslin_shape_quarter_circle() in muslin/shape.h. Since 1.0.
     */
    shapeQuarterCircle(spec?: QuarterCircleSpec, rounding?: RoundingSpec): QuarterCircle;
    /**
     * The length of an arc of so many quarter turns (1 .. 4) of a circle: radius x pi / 2 x quarter_turns.
     * muslin_arc_length() in muslin/shape.h. Since 1.0.
     */
    arcLength(radius: LengthLike, quarterTurns: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * The measures of a regular triangle, square, hexagon or octagon (sides 3, 4, 6 or 8, else MUSLIN_ERR_CHOICE) from
     * one of them (1 .. MUSLIN_SIZE_MAX), all finished or all cut as the caller means it.
     * muslin_shape_regular_polygon() in muslin/shape.h. Since 1.0.
     */
    shapeRegularPolygon(sides: Whole, measure: PolygonMeasure, length: LengthLike, rounding?: RoundingSpec):
        RegularPolygon;
    /** The recipe for a finished size. muslin_unit_recipe() in muslin/unit.h. Since 1.0. */
    unitRecipe(spec?: UnitSpec): UnitPlan;
    /**
     * The pieces of a recipe, a row each; statuses also as in base.h for ask-then-fill rows. muslin_unit_pieces() in
     * muslin/unit.h. Since 1.0.
     */
    unitPieces(spec?: UnitSpec): readonly UnitPiece[];
    /**
     * How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else MUSLIN_ERR_INDEX, with
     * the last one as limit; a null output is MUSLIN_ERR_NULL). muslin_unit_recipe_count() in muslin/unit.h. Since 1.0.
     */
    unitRecipeCount(): number;
    /**
     * How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else MUSLIN_ERR_INDEX, with
     * the last one as limit; a null output is MUSLIN_ERR_NULL). muslin_unit_recipe_at() in muslin/unit.h. Since 1.0.
     */
    unitRecipeAt(index: Whole): { readonly kind: UnitKind; readonly method: UnitMethod };
    /** What the stock yields for a recipe of given size. muslin_unit_from_stock() in muslin/unit.h. Since 1.0. */
    unitFromStock(spec?: UnitSpec, stock?: UnitStockSpec): UnitYield;
    /**
     * The largest finished size of which one recipe can be cut from the stock when every piece fits one rectangle of
     * it. muslin_unit_largest() in muslin/unit.h. Since 1.0.
     */
    unitLargest(spec?: UnitSpec, stock?: UnitStockSpec): UnitYield;
    /**
     * Every recipe that the stock can make, each at its largest size, in the order of muslin_unit_recipe_at(); a
     * half-rectangle is offered at 2 : 1, a trapezoid at 3 : 1, a slanted slice at 1 : 1, a snowball square with a
     * corner of one third. muslin_unit_makes() in muslin/unit.h. Since 1.0.
     */
    unitMakes(spec?: UnitSpec, stock?: UnitStockSpec): readonly UnitYield[];
    /**
     * Where the corners of every patch lie, in place: first all finished patches, one after the other, then all raw
     * ones in the same order. muslin_unit_outlines() in muslin/unit.h. Since 1.0.
     */
    unitOutlines(hand: Hand, spec?: UnitSpec): readonly UnitCorner[];
    /**
     * How the pieces of one recipe become its units, a row each step in the order of the work. muslin_unit_steps() in
     * muslin/unit.h. Since 1.0.
     */
    unitSteps(spec?: UnitSpec): readonly UnitStep[];
    /**
     * One plain English sentence for a step, with the places {piece}, {other}, {measure}, {measure_height},
     * {from_corner}, {region} and {angle} for whoever shows it to fill, where the sentence has them; a sentence on
     * unknown steps for a number that is none. muslin_unit_step_sentence() in muslin/unit.h. Since 1.0.
     */
    unitStepSentence(step: UnitStepKind): string;
    /**
     * The size of a top of columns x rows blocks in a straight setting. muslin_setting_straight() in muslin/setting.h.
     * Since 1.0.
     */
    settingStraight(spec?: SettingSpec): Setting;
    /**
     * The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to MUSLIN_COUNT_MAX:
     * the first block is not turned, its neighbours are. muslin_setting_turn() in muslin/setting.h. Since 1.0.
     */
    settingTurn(turning: Turning, column: Whole, row: Whole): number;
    /**
     * The block that segments make, and whether it is square. muslin_block_from_segments() in muslin/setting.h. Since
     * 1.0.
     */
    blockFromSegments(spec?: BlockSpec): Block;
    /**
     * What one join takes off the run, in ticks; `join` is an enum muslin_join. muslin_join_loss() in muslin/setting.h.
     * Since 1.0.
     */
    joinLoss(join: Join, stripCut: LengthLike, allowance: LengthLike): Length;
    /** Strips joined end to end into one run (borders, binding). muslin_run_plan() in muslin/setting.h. Since 1.0. */
    runPlan(spec?: RunSpec): Run;
    /**
     * One border; for several, from the inside outwards, the unfinished sizes of one are the input of the next.
     * muslin_border_plan() in muslin/setting.h. Since 1.0.
     */
    borderPlan(spec?: BorderSpec): Border;
    /**
     * Blocks with sashes between them: how many pieces of each kind, their cut sizes, and the size of the top.
     * muslin_setting_sashed() in muslin/setting.h. Since 1.0.
     */
    settingSashed(spec?: SettingSashedSpec): SettingSashedPlan;
    /**
     * The strips across the cloth for each kind of piece that there is, in the order of enum muslin_sash_kind: one to
     * three rows, none for a top without sashes. muslin_setting_sashed_pieces() in muslin/setting.h. Since 1.0.
     */
    settingSashedPieces(spec?: SettingSashedSpec): readonly SashPiece[];
    /**
     * Pieced and plain blocks like the fields of a chessboard. muslin_setting_alternate() in muslin/setting.h. Since
     * 1.0.
     */
    settingAlternate(spec?: SettingAlternateSpec): SettingAlternatePlan;
    /**
     * The whole of a line of n columns or rows with finished sizes `sizes` (1 .. MUSLIN_SIZE_MAX each), and how far it
     * is from the size wanted. muslin_setting_line() in muslin/setting.h. Since 1.0.
     */
    settingLine(sizes: LengthsLike, spec?: SettingLineSpec): SettingLinePlan;
    /**
     * Where each of the n columns or rows lies: a row each, in their order. muslin_setting_line_places() in
     * muslin/setting.h. Since 1.0.
     */
    settingLinePlaces(sizes: LengthsLike, spec?: SettingLineSpec): readonly SettingLinePlace[];
    /**
     * A setting on point: counts, squares to cut for its triangles, and the size of the centre. muslin_setting_point()
     * in muslin/setting.h. Since 1.0.
     */
    settingPoint(spec?: SettingPointSpec, cutting?: RoundingSpec, measuring?: RoundingSpec): SettingPointPlan;
    /**
     * The largest block, a whole number of steps of `grid` (1 .. MUSLIN_SIZE_MAX), whose centre on point is not wider
     * than `wanted_width` (1 .. MUSLIN_SIZE_MAX). muslin_setting_point_block_for_width() in muslin/setting.h. Since
     * 1.0.
     */
    settingPointBlockForWidth(wantedWidth: LengthLike, grid: LengthLike, spec?: SettingPointSpec): Length;
    /**
     * The finished block that a given side square (cut twice, `side_square_cut` 1 .. MUSLIN_SIZE_MAX) can frame
     * exactly, rounded once, as asked: the exact need solved for B. muslin_setting_point_block_from_side() in
     * muslin/setting.h. Since 1.0.
     */
    settingPointBlockFromSide(sideSquareCut: LengthLike, spec?: SettingPointSpec, rounding?: RoundingSpec): Rounded;
    /**
     * A log cabin block: its size, its logs, and the strips for all blocks. muslin_logcabin_plan() in muslin/rounds.h.
     * Since 1.0.
     */
    logcabinPlan(widths: LengthsLike, spec?: LogcabinSpec): Logcabin;
    /**
     * The logs of one block in sewing order (ask-then-fill), as many as muslin_logcabin.logs. muslin_logcabin_logs() in
     * muslin/rounds.h. Since 1.0.
     */
    logcabinLogs(widths: LengthsLike, spec?: LogcabinSpec): readonly LogcabinLog[];
    /**
     * Strips for all blocks, a row for each half and cut width, the first half first, in sewing order of their first
     * logs (ask-then-fill). muslin_logcabin_strips() in muslin/rounds.h. Since 1.0.
     */
    logcabinStrips(widths: LengthsLike, spec?: LogcabinSpec): readonly LogcabinStrip[];
    /**
     * The log width that finishes a block of `wanted` with so many rounds round the centre, brought to the grid, and
     * what the block then becomes. muslin_logcabin_log_for() in muslin/rounds.h. Since 1.0.
     */
    logcabinLogFor(spec?: LogcabinFitSpec, rounding?: RoundingSpec): LogcabinFit;
    /**
     * How many rounds of such logs fit round the centre within `wanted`; 0 when not even one does, and more than
     * MUSLIN_ROUNDS_MAX when they do, which the other calls refuse. muslin_logcabin_rounds_for() in muslin/rounds.h.
     * Since 1.0.
     */
    logcabinRoundsFor(spec?: LogcabinFitSpec): LogcabinFit;
    /**
     * Raw edges of the pieces, every seam, mitre included, with its m / 2 on each piece. muslin_frame_pieces() in
     * muslin/rounds.h. Since 1.0.
     */
    framePieces(spec?: FrameSpec, rounding?: RoundingSpec): Frame;
    /**
     * The outlines for a template: 16 rows, top then side, cut then finished, each from the left outer corner to the
     * right one and back along the inner edge (ask-then-fill). muslin_frame_outline() in muslin/rounds.h. Since 1.0.
     */
    frameOutline(spec?: FrameSpec, rounding?: RoundingSpec): readonly FrameCorner[];
    /**
     * Grows a medallion round by round and answers into the caller's n rows (1 .. MUSLIN_ROUNDS_MAX).
     * muslin_medallion_plan() in muslin/rounds.h. Since 1.0.
     */
    medallionPlan(rows: readonly MedallionRow[], spec?: MedallionSpec): { readonly rows:
        readonly Filled<MedallionRow>[]; readonly out: Medallion };
    /**
     * Units of one repeat along a side: how many, what is left, what repeat would come out, and spacers that share what
     * is left. muslin_repeat_plan() in muslin/rounds.h. Since 1.0.
     */
    repeatPlan(spec?: RepeatSpec, rounding?: RoundingSpec): Repeat;
    /**
     * The largest repeat from `least` (0 or more) to `most` (1 or more) that divides both sides of a quilt: a whole
     * part of their greatest common measure. muslin_repeat_common() in muslin/rounds.h. Since 1.0.
     */
    repeatCommon(width: LengthLike, height: LengthLike, least: LengthLike, most: LengthLike, rounding?: RoundingSpec):
        CommonRepeat;
    /**
     * A pieced border of squares on point: sizes to cut, counts, and what the side leaves. muslin_point_border_plan()
     * in muslin/rounds.h. Since 1.0.
     */
    pointBorderPlan(spec?: PointBorderSpec, cutting?: RoundingSpec, measuring?: RoundingSpec): PointBorder;
    /** The size of a quilt for a mattress. muslin_bed_size() in muslin/fit.h. Since 1.0. */
    bedSize(spec?: BedSpec): Bed;
    /**
     * Backwards: how a quilt of a given size lies on a mattress, in the middle, and what it falls short by.
     * muslin_bed_covered() in muslin/fit.h. Since 1.0.
     */
    bedCovered(spec?: BedCoveredSpec): BedCover;
    /**
     * Every setting of the kinds, sizes and counts allowed whose width and length lie within the tolerances, compared
     * exactly, on point too, and do not pass MUSLIN_SIZE_MAX; ranked as asked, and the same list every time: equals are
     * ordered by what they are off, then fewer blocks, kind, larger block, narrower sash, narrower border, fewer
     * columns. muslin_fit_settings() in muslin/fit.h. Since 1.0.
     */
    fitSettings(spec?: FitSpec): readonly Fit[];
    /**
     * The one setting that comes nearest to the wanted size, whatever the tolerances, `best` and `rank` say (they must
     * still be in range); its rank_key is that of MUSLIN_FIT_RANK_NEAREST, and equals are decided in the order above.
     * muslin_fit_nearest() in muslin/fit.h. Since 1.0.
     */
    fitNearest(spec?: FitSpec): Fit;
    /**
     * The number of blocks for a width: (wanted - 2 border + sash) / (block + sash), rounded as asked but to one block
     * at least. muslin_fit_across() in muslin/fit.h. Since 1.0.
     */
    fitAcross(spec?: FitAcrossSpec): FitAcrossBlocks;
    /**
     * Rows of equilateral triangles, point up and point down in turn, for a quilt of about this size, and how to cut
     * them from strips. muslin_fit_triangles() in muslin/fit.h. Since 1.0.
     */
    fitTriangles(spec?: FitTrianglesSpec): FitTriangleRows;
    /**
     * A pattern made larger or smaller: n finished sizes in the array (n 1 .. MUSLIN_COUNT_MAX), each scaled exactly
     * and given its seams back, and set against the marks of the ruler; and the nearest scales that keep all of them on
     * the marks. muslin_fit_rescale() in muslin/fit.h. Since 1.0.
     */
    fitRescale(rows: readonly FitRescaleRow[], spec?: FitRescaleSpec): { readonly rows:
        readonly Filled<FitRescaleRow>[]; readonly out: FitRescaled };
    /**
     * The cut width of a binding from what it shall show, or what a given cut width shows. muslin_binding_measure() in
     * muslin/finishing.h. Since 1.0.
     */
    bindingMeasure(spec?: BindingWidthSpec): BindingWidth;
    /**
     * Length, strips, joins and cloth for a binding; the run is muslin_run_plan()'s. muslin_binding_plan() in
     * muslin/finishing.h. Since 1.0.
     */
    bindingPlan(spec?: BindingSpec): Binding;
    /**
     * The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
     * rectangle a 45 degree corner is moved to the other end). muslin_bias_tube() in muslin/finishing.h. Since 1.0.
     */
    biasTube(spec?: BiasSpec): Bias;
    /**
     * The least square, on the rounding's grid, whose tube gives `wanted`. muslin_bias_least_square() in
     * muslin/finishing.h. Since 1.0.
     */
    biasLeastSquare(spec?: BiasSpec, rounding?: RoundingSpec): Bias;
    /**
     * Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0), parallel
     * to its diagonal, ends left at 45 degrees, every other one turned end for end, joined into one run: in each half n
     * = floor(S / (sqrt 2 w)) strips, down to the short ones in the corner; measured along their middle they add up to
     * sqrt 2 n S - n n w a half, and each of the 2 n - 1 joins takes 2 sqrt 2 s. muslin_bias_strips() in
     * muslin/finishing.h. Since 1.0.
     */
    biasStrips(spec?: BiasSpec): Bias;
    /**
     * Batting for a quilt: the size to cut, the package to buy, or the pieces of a roll. muslin_batting_plan() in
     * muslin/finishing.h. Since 1.0.
     */
    battingPlan(spec?: BattingSpec): Batting;
    /**
     * All layouts compared, one row each, in the order of the enum (ask-then-fill; eight rows in this version, later
     * versions may know more). muslin_backing_layouts() in muslin/finishing.h. Since 1.0.
     */
    backingLayouts(spec?: BackingSpec): readonly Backing[];
    /**
     * One layout piece by piece, in sewing order across the quilt (ask-then-fill): the cut widths, of the insert its
     * cut_length, less 2 q a seam, are exactly the joined size of muslin_backing_layouts(). muslin_backing_panels() in
     * muslin/finishing.h. Since 1.0.
     */
    backingPanels(layout: BackingLayout, spec?: BackingSpec): readonly Panel[];
    /**
     * Hanging sleeve (one, or two with a gap), label, corner triangles. muslin_hanging_plan() in muslin/finishing.h.
     * Since 1.0.
     */
    hangingPlan(spec?: HangingSpec): Hanging;
    /** Plans the quilt. muslin_stripquilt_plan() in muslin/stripquilt.h. Since 1.0. */
    stripquiltPlan(spec?: StripquiltSpec): Stripquilt;
    /**
     * Which stacks meet in which blocks, as dealt (ask-then-fill): one row for each run of blocks that take from the
     * same stacks, in order, never more rows than sets. muslin_stripquilt_groups() in muslin/stripquilt.h. Since 1.0.
     */
    stripquiltGroups(spec?: StripquiltSpec): readonly BlockGroup[];
    /**
     * Which way to press all seams of set `set` (from 1), and how many segments its stack gives.
     * muslin_stripquilt_pressing() in muslin/stripquilt.h. Since 1.0.
     */
    stripquiltPressing(set: Whole, spec?: StripquiltSpec): { readonly pressing: SetPressing; readonly segments: number
        };
    /**
     * Length of all seams of strip sets and of tops of blocks. muslin_piecing_plan() in muslin/supplies.h. Since 1.0.
     */
    piecingPlan(spec?: PiecingSpec): Piecing;
    /**
     * Sewing thread for seams in lockstitch (ISO 4915 type 301), half of it from the needle, half from the bobbin.
     * muslin_thread_plan() in muslin/supplies.h. Since 1.0.
     */
    threadPlan(spec?: ThreadSpec): Thread;
    /**
     * How many stitches of `stitch_length` (1 .. MUSLIN_SIZE_MAX) lie in `length` (0 .. MUSLIN_SIZE_MAX; an inch is
     * 8128): thousandths gets length / stitch_length with so many decimals (0 .. 3), rounded as `direction` (enum
     * muslin_direction) says, always counted in thousandths; exact, which may be null, becomes 1 when nothing was lost.
     * muslin_stitch_count() in muslin/supplies.h. Since 1.0.
     */
    stitchCount(length: LengthLike, stitchLength: LengthLike, decimals: Whole, direction: Direction): {
        readonly thousandths: number; readonly exact: boolean };
    /**
     * The other way round: the stitch of which so many thousandths (1 .. MUSLIN_COUNT_MAX) lie in `length` (0 ..
     * MUSLIN_SIZE_MAX), rounded as asked. muslin_stitch_length() in muslin/supplies.h. Since 1.0.
     */
    stitchLength(length: LengthLike, thousandths: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * Number and length of the lines of quilting on a rectangle. muslin_quilting_lines() in muslin/supplies.h. Since
     * 1.0.
     */
    quiltingLines(spec?: QuiltingSpec): Quilting;
    /**
     * What a quilt weighs, layer by layer, from what its cloth weighs for a square metre (its maker says, or weigh a
     * piece of known size). muslin_weight_plan() in muslin/supplies.h. Since 1.0.
     */
    weightPlan(spec?: WeightSpec): Weight;
    /**
     * Ounces for a square yard, in thousandths of an ounce (0 .. MUSLIN_COUNT_MAX), as mg for a square metre, rounded
     * as `direction` (enum muslin_direction) says. muslin_density_from_ounces() in muslin/supplies.h. Since 1.0.
     */
    densityFromOunces(thousandths: Whole, direction: Direction): number;
    /**
     * A mass in mg (0 .. MUSLIN_LENGTH_MAX) in ounces with so many decimals (0 .. 3), rounded as `direction` (enum
     * muslin_direction) says and counted in thousandths. muslin_mass_in_ounces() in muslin/supplies.h. Since 1.0.
     */
    massInOunces(mass: Whole, decimals: Whole, direction: Direction): number;
    /** What one thing costs. muslin_cost_plan() in muslin/supplies.h. Since 1.0. */
    costPlan(spec?: CostSpec): Cost;
    /**
     * The sum of a list, each row rounded on its own as a bill does it, and the sum not rounded again.
     * muslin_cost_total() in muslin/supplies.h. Since 1.0.
     */
    costTotal(rows: readonly CostSpec[]): bigint;
    /**
     * The sort of an id (enum muslin_sort; 0 for what is no id) and its number, counted from 1 for each sort in the
     * order of making (0 for what is no id). muslin_id_sort() in muslin/quilt.h. Since 1.0.
     */
    idSort(id: Id): Sort | null;
    /**
     * The sort of an id (enum muslin_sort; 0 for what is no id) and its number, counted from 1 for each sort in the
     * order of making (0 for what is no id). muslin_id_number() in muslin/quilt.h. Since 1.0.
     */
    idNumber(id: Id): number;
    /**
     * The label of stack `number` (0 .. MUSLIN_COUNT_MAX): A .. Z, then AA, AB and so on, terminated; text out as in
     * base.h. muslin_sewing_label() in muslin/sewing.h. Since 1.0.
     */
    sewingLabel(number: Whole): string;
    /**
     * Which print goes where: `prints[i]` says for how many places print i suffices, 0 .. MUSLIN_COUNT_MAX (`kinds` of
     * them, 1 .. 2^20), `touches` which places touch (touch_n, 0 .. 2^27; a pair named twice counts twice), `given[p]`
     * a print that place p must have, or -1; given may be null. muslin_scatter_prints() in muslin/scatter.h. Since 1.0.
     */
    scatterPrints(prints: WholeNumbers, touches: readonly TouchSpec[], spec?: ScatterSpec & { readonly given?:
        WholeNumbers; readonly progress?: Progress }): { readonly out: readonly number[]; readonly result: Scattered };
    /**
     * Blocks laid out in columns x rows, turned where they may be, so that as few equal prints as possible meet at an
     * edge: one row for each place, row by row from the top; n kinds of blocks, 1 .. 2^20. muslin_scatter_blocks() in
     * muslin/scatter.h. Since 1.0.
     */
    scatterBlocks(blocks: readonly EdgePrintsSpec[], spec?: ScatterBlocksSpec & { readonly progress?: Progress }): {
        readonly rows: readonly PlacedBlock[]; readonly result: Scattered };
    /**
     * Strips dealt to sets: `prints[i]` strips of print i (kinds of them), `sets` of `strips_per_set` (1 .. 2^24 each),
     * lying in their order in `out` (sets x strips_per_set print numbers, and spec->places must say as many: else
     * MUSLIN_ERR_RANGE). muslin_scatter_sets() in muslin/scatter.h. Since 1.0.
     */
    scatterSets(prints: WholeNumbers, sets: Whole, stripsPerSet: Whole, spec?: ScatterSpec): { readonly out:
        readonly number[]; readonly result: Scattered };
    /** The initial values. muslin_rounding_spec_init() in muslin/length.h. */
    roundingSpec(): Filled<RoundingSpec>;
    /** The initial values. muslin_parse_spec_init() in muslin/length.h. */
    parseSpec(): Filled<ParseSpec>;
    /** The initial values. muslin_format_spec_init() in muslin/length.h. */
    formatSpec(): Filled<FormatSpec>;
    /** The initial values. muslin_seam_spec_init() in muslin/seam.h. */
    seamSpec(): Filled<SeamSpec>;
    /** The initial values. muslin_piece_spec_init() in muslin/seam.h. */
    pieceSpec(): Filled<PieceSpec>;
    /** The initial values. muslin_carry_on_spec_init() in muslin/seam.h. */
    carryOnSpec(): Filled<CarryOnSpec>;
    /** The initial values. muslin_accuracy_row_spec_init() in muslin/accuracy.h. */
    accuracyRowSpec(): Filled<AccuracyRowSpec>;
    /** The initial values. muslin_accuracy_top_spec_init() in muslin/accuracy.h. */
    accuracyTopSpec(): Filled<AccuracyTopSpec>;
    /** The initial values. muslin_accuracy_meet_spec_init() in muslin/accuracy.h. */
    accuracyMeetSpec(): Filled<AccuracyMeetSpec>;
    /** The initial values. muslin_wash_spec_init() in muslin/shrinkage.h. */
    washSpec(): Filled<WashSpec>;
    /** The initial values. muslin_shrinkage_spec_init() in muslin/shrinkage.h. */
    shrinkageSpec(): Filled<ShrinkageSpec>;
    /** The initial values. muslin_prewash_spec_init() in muslin/shrinkage.h. */
    prewashSpec(): Filled<PrewashSpec>;
    /** The initial values. muslin_purchase_spec_init() in muslin/fabric.h. */
    purchaseSpec(): Filled<PurchaseSpec>;
    /** The initial values. muslin_cloth_spec_init() in muslin/fabric.h. */
    clothSpec(): Filled<ClothSpec>;
    /** The initial values. muslin_strips_spec_init() in muslin/fabric.h. */
    stripsSpec(): Filled<StripsSpec>;
    /** The initial values. muslin_stock_spec_init() in muslin/fabric.h. */
    stockSpec(): Filled<StockSpec>;
    /** The initial values. muslin_motif_spec_init() in muslin/motif.h. */
    motifSpec(): Filled<MotifSpec>;
    /** The initial values. muslin_stack_spec_init() in muslin/motif.h. */
    stackSpec(): Filled<StackSpec>;
    /** The initial values. muslin_yield_spec_init() in muslin/stripset.h. */
    yieldSpec(): Filled<YieldSpec>;
    /** The initial values. muslin_need_spec_init() in muslin/stripset.h. */
    needSpec(): Filled<NeedSpec>;
    /** The initial values. muslin_harvest_spec_init() in muslin/stripset.h. */
    harvestSpec(): Filled<HarvestSpec>;
    /** The initial values. muslin_stripset_print_init() in muslin/stripset.h. */
    stripsetPrint(): Filled<StripsetPrint>;
    /** The initial values. muslin_cutlist_piece_spec_init() in muslin/cutlist.h. */
    cutlistPieceSpec(): Filled<CutlistPieceSpec>;
    /** The initial values. muslin_cutlist_spec_init() in muslin/cutlist.h. */
    cutlistSpec(): Filled<CutlistSpec>;
    /** The initial values. muslin_corner_spec_init() in muslin/shape.h. */
    cornerSpec(): Filled<CornerSpec>;
    /** The initial values. muslin_shape_piece_spec_init() in muslin/shape.h. */
    shapePieceSpec(): Filled<ShapePieceSpec>;
    /** The initial values. muslin_quarter_circle_spec_init() in muslin/shape.h. */
    quarterCircleSpec(): Filled<QuarterCircleSpec>;
    /** The initial values. muslin_unit_spec_init() in muslin/unit.h. */
    unitSpec(): Filled<UnitSpec>;
    /** The initial values. muslin_unit_stock_spec_init() in muslin/unit.h. */
    unitStockSpec(): Filled<UnitStockSpec>;
    /** The initial values. muslin_setting_spec_init() in muslin/setting.h. */
    settingSpec(): Filled<SettingSpec>;
    /** The initial values. muslin_block_spec_init() in muslin/setting.h. */
    blockSpec(): Filled<BlockSpec>;
    /** The initial values. muslin_run_spec_init() in muslin/setting.h. */
    runSpec(): Filled<RunSpec>;
    /** The initial values. muslin_border_spec_init() in muslin/setting.h. */
    borderSpec(): Filled<BorderSpec>;
    /** The initial values. muslin_setting_sashed_spec_init() in muslin/setting.h. */
    settingSashedSpec(): Filled<SettingSashedSpec>;
    /** The initial values. muslin_setting_alternate_spec_init() in muslin/setting.h. */
    settingAlternateSpec(): Filled<SettingAlternateSpec>;
    /** The initial values. muslin_setting_line_spec_init() in muslin/setting.h. */
    settingLineSpec(): Filled<SettingLineSpec>;
    /** The initial values. muslin_setting_point_spec_init() in muslin/setting.h. */
    settingPointSpec(): Filled<SettingPointSpec>;
    /** The initial values. muslin_logcabin_spec_init() in muslin/rounds.h. */
    logcabinSpec(): Filled<LogcabinSpec>;
    /** The initial values. muslin_logcabin_fit_spec_init() in muslin/rounds.h. */
    logcabinFitSpec(): Filled<LogcabinFitSpec>;
    /** The initial values. muslin_frame_spec_init() in muslin/rounds.h. */
    frameSpec(): Filled<FrameSpec>;
    /** The initial values. muslin_medallion_spec_init() in muslin/rounds.h. */
    medallionSpec(): Filled<MedallionSpec>;
    /** The initial values. muslin_medallion_row_init() in muslin/rounds.h. */
    medallionRow(): Filled<MedallionRow>;
    /** The initial values. muslin_repeat_spec_init() in muslin/rounds.h. */
    repeatSpec(): Filled<RepeatSpec>;
    /** The initial values. muslin_point_border_spec_init() in muslin/rounds.h. */
    pointBorderSpec(): Filled<PointBorderSpec>;
    /** The initial values. muslin_bed_spec_init() in muslin/fit.h. */
    bedSpec(): Filled<BedSpec>;
    /** The initial values. muslin_bed_covered_spec_init() in muslin/fit.h. */
    bedCoveredSpec(): Filled<BedCoveredSpec>;
    /** The initial values. muslin_fit_spec_init() in muslin/fit.h. */
    fitSpec(): Filled<FitSpec>;
    /** The initial values. muslin_fit_across_spec_init() in muslin/fit.h. */
    fitAcrossSpec(): Filled<FitAcrossSpec>;
    /** The initial values. muslin_fit_triangles_spec_init() in muslin/fit.h. */
    fitTrianglesSpec(): Filled<FitTrianglesSpec>;
    /** The initial values. muslin_fit_rescale_spec_init() in muslin/fit.h. */
    fitRescaleSpec(): Filled<FitRescaleSpec>;
    /** The initial values. muslin_fit_rescale_row_init() in muslin/fit.h. */
    fitRescaleRow(): Filled<FitRescaleRow>;
    /** The initial values. muslin_binding_width_spec_init() in muslin/finishing.h. */
    bindingWidthSpec(): Filled<BindingWidthSpec>;
    /** The initial values. muslin_binding_spec_init() in muslin/finishing.h. */
    bindingSpec(): Filled<BindingSpec>;
    /** The initial values. muslin_bias_spec_init() in muslin/finishing.h. */
    biasSpec(): Filled<BiasSpec>;
    /** The initial values. muslin_batting_spec_init() in muslin/finishing.h. */
    battingSpec(): Filled<BattingSpec>;
    /** The initial values. muslin_backing_spec_init() in muslin/finishing.h. */
    backingSpec(): Filled<BackingSpec>;
    /** The initial values. muslin_hanging_spec_init() in muslin/finishing.h. */
    hangingSpec(): Filled<HangingSpec>;
    /** The initial values. muslin_stripquilt_spec_init() in muslin/stripquilt.h. */
    stripquiltSpec(): Filled<StripquiltSpec>;
    /** The initial values. muslin_piecing_spec_init() in muslin/supplies.h. */
    piecingSpec(): Filled<PiecingSpec>;
    /** The initial values. muslin_thread_spec_init() in muslin/supplies.h. */
    threadSpec(): Filled<ThreadSpec>;
    /** The initial values. muslin_quilting_spec_init() in muslin/supplies.h. */
    quiltingSpec(): Filled<QuiltingSpec>;
    /** The initial values. muslin_weight_spec_init() in muslin/supplies.h. */
    weightSpec(): Filled<WeightSpec>;
    /** The initial values. muslin_cost_spec_init() in muslin/supplies.h. */
    costSpec(): Filled<CostSpec>;
    /** The initial values. muslin_quilt_spec_init() in muslin/quilt.h. */
    quiltSpec(): Filled<QuiltSpec>;
    /** The initial values. muslin_quilt_fabric_spec_init() in muslin/quilt.h. */
    quiltFabricSpec(): Filled<QuiltFabricSpec>;
    /** The initial values. muslin_quilt_sum_spec_init() in muslin/quilt.h. */
    quiltSumSpec(): Filled<QuiltSumSpec>;
    /** The initial values. muslin_quilt_patch_spec_init() in muslin/quilt.h. */
    quiltPatchSpec(): Filled<QuiltPatchSpec>;
    /** The initial values. muslin_quilt_unit_spec_init() in muslin/quilt.h. */
    quiltUnitSpec(): Filled<QuiltUnitSpec>;
    /** The initial values. muslin_quilt_join_spec_init() in muslin/quilt.h. */
    quiltJoinSpec(): Filled<QuiltJoinSpec>;
    /** The initial values. muslin_quilt_trim_spec_init() in muslin/quilt.h. */
    quiltTrimSpec(): Filled<QuiltTrimSpec>;
    /** The initial values. muslin_quilt_pinwheel_spec_init() in muslin/quilt.h. */
    quiltPinwheelSpec(): Filled<QuiltPinwheelSpec>;
    /** The initial values. muslin_quilt_set_in_spec_init() in muslin/quilt.h. */
    quiltSetInSpec(): Filled<QuiltSetInSpec>;
    /** The initial values. muslin_quilt_log_spec_init() in muslin/quilt.h. */
    quiltLogSpec(): Filled<QuiltLogSpec>;
    /** The initial values. muslin_quilt_surround_spec_init() in muslin/quilt.h. */
    quiltSurroundSpec(): Filled<QuiltSurroundSpec>;
    /** The initial values. muslin_quilt_sashed_spec_init() in muslin/quilt.h. */
    quiltSashedSpec(): Filled<QuiltSashedSpec>;
    /** The initial values. muslin_quilt_diagonal_spec_init() in muslin/quilt.h. */
    quiltDiagonalSpec(): Filled<QuiltDiagonalSpec>;
    /** The initial values. muslin_quilt_sixty_spec_init() in muslin/quilt.h. */
    quiltSixtySpec(): Filled<QuiltSixtySpec>;
    /** The initial values. muslin_quilt_sixty_piece_spec_init() in muslin/quilt.h. */
    quiltSixtyPieceSpec(): Filled<QuiltSixtyPieceSpec>;
    /** The initial values. muslin_solution_spec_init() in muslin/solution.h. */
    solutionSpec(): Filled<SolutionSpec>;
    /** The initial values. muslin_solution_value_spec_init() in muslin/solution.h. */
    solutionValueSpec(): Filled<SolutionValueSpec>;
    /** The initial values. muslin_pressing_spec_init() in muslin/pressing.h. */
    pressingSpec(): Filled<PressingSpec>;
    /** The initial values. muslin_scatter_spec_init() in muslin/scatter.h. */
    scatterSpec(): Filled<ScatterSpec>;
    /** The initial values. muslin_touch_spec_init() in muslin/scatter.h. */
    touchSpec(): Filled<TouchSpec>;
    /** The initial values. muslin_scatter_blocks_spec_init() in muslin/scatter.h. */
    scatterBlocksSpec(): Filled<ScatterBlocksSpec>;
    /** The initial values. muslin_edge_prints_spec_init() in muslin/scatter.h. */
    edgePrintsSpec(): Filled<EdgePrintsSpec>;
    /** The initial values. muslin_blank_spec_init() in muslin/cutplan.h. */
    blankSpec(): Filled<BlankSpec>;
    /** The initial values. muslin_cutplan_stock_spec_init() in muslin/cutplan.h. */
    cutplanStockSpec(): Filled<CutplanStockSpec>;
    /** The initial values. muslin_cutplan_spec_init() in muslin/cutplan.h. */
    cutplanSpec(): Filled<CutplanSpec>;
    /** The initial values. muslin_yardage_spec_init() in muslin/yardage.h. */
    yardageSpec(): Filled<YardageSpec>;
    /** The initial values. muslin_extra_cut_spec_init() in muslin/yardage.h. */
    extraCutSpec(): Filled<ExtraCutSpec>;
}

/** The errors' classes by status. */
/** A pointer that must be given is null. */
export declare class MuslinNullError extends MuslinError {}
/** A struct's size is 0, below the first published one, or above 4096. */
export declare class MuslinStructSizeError extends MuslinError {}
/** Bytes behind the members this library knows are not zero. */
export declare class MuslinStructTailError extends MuslinError {}
/** A flag this library does not know. */
export declare class MuslinFlagsError extends MuslinError {}
/** A value that is none of the listed choices. */
export declare class MuslinChoiceError extends MuslinError {}
/** An argument below its least or above its greatest value. */
export declare class MuslinRangeError extends MuslinError {}
/** The result would lie outside the range of its type. */
export declare class MuslinOverflowError extends MuslinError {}
/** A divisor is zero. */
export declare class MuslinDivideByZeroError extends MuslinError {}
/** The caller's buffer or array is too small; the needed size was written. */
export declare class MuslinBufferError extends MuslinError {}
/** A row number at or past the end of a table. */
export declare class MuslinIndexError extends MuslinError {}
/** The text holds no number. */
export declare class MuslinTextEmptyError extends MuslinError {}
/** Something stands where a number or a unit should. */
export declare class MuslinTextSyntaxError extends MuslinError {}
/** A whole length, then something more. */
export declare class MuslinTextTrailingError extends MuslinError {}
/** A word that is no unit of length. */
export declare class MuslinTextUnitError extends MuslinError {}
/** The other decimal sign than the one asked for. */
export declare class MuslinTextDecimalError extends MuslinError {}
/** A fraction over zero. */
export declare class MuslinTextZeroDenominatorError extends MuslinError {}
/** Not valid UTF-8. */
export declare class MuslinTextEncodingError extends MuslinError {}
/** The seams eat the whole piece: nothing would be seen of it. */
export declare class MuslinSeamTooWideError extends MuslinError {}
/** A quarter turn was asked of a block that is not square. */
export declare class MuslinNotSquareError extends MuslinError {}
/** The stock gives not even one piece, so no amount of it is enough. */
export declare class MuslinNoYieldError extends MuslinError {}
/** The stock in hand does not suffice. */
export declare class MuslinNotEnoughError extends MuslinError {}
/** No listed size or layout covers what is asked. */
export declare class MuslinNoFitError extends MuslinError {}
/** An allocator returned nothing. */
export declare class MuslinNoMemoryError extends MuslinError {}
/** A customary addition is below what the geometry needs. */
export declare class MuslinCustomaryError extends MuslinError {}
/** This kind of unit is not made by that method. */
export declare class MuslinMethodError extends MuslinError {}
/** No such shape: corners missing, edges that cross, an impossible angle or arc. */
export declare class MuslinShapeError extends MuslinError {}
/** The pieces leave a gap in the outline, overlap, or stick out. */
export declare class MuslinNotTiledError extends MuslinError {}
/** The work, or what is stored, would be more than the caller allows. */
export declare class MuslinWorkLimitError extends MuslinError {}
/** An id of another quilt, of another sort, or of nothing. */
export declare class MuslinForeignError extends MuslinError {}

/** The constants of the headers. */
export declare const constants: {
    readonly VERSION_MAJOR: number;
    readonly VERSION_MINOR: number;
    readonly VERSION_PATCH: number;
    readonly VERSION: number;
    readonly TICKS_PER_INCH: number;
    readonly TICKS_PER_MM: number;
    readonly LENGTH_MAX: bigint;
    readonly SIZE_MAX: number;
    readonly COUNT_MAX: number;
    readonly PPM: number;
    readonly FORMAT_UNICODE: number;
    readonly FORMAT_BARE: number;
    readonly QUARTER_INCH: number;
    readonly USABLE_WIDTH_USUAL: number;
    readonly CLOTH_MAY_TURN: number;
    readonly MOTIF_ANY_START: number;
    readonly MOTIF_ANY_ACROSS: number;
    readonly STACK_ANY_START: number;
    readonly YIELD_FROM_ONE_END: number;
    readonly CUTLIST_ROWS_MAX: number;
    readonly CUTLIST_PIECE_MAY_TURN: number;
    readonly SHAPE_SIZE_MAX: number;
    readonly SHAPE_SEAM_MAX: number;
    readonly SHAPE_CORNERS_MAX: number;
    readonly SHAPE_OUTLINE: number;
    readonly TEMPLATE_REACH_MAX: number;
    readonly UNIT_SIZE_MAX: number;
    readonly BORDER_LENGTHWISE: number;
    readonly SETTING_SASHED_FRAME: number;
    readonly SETTING_SASHED_CORNERSTONES: number;
    readonly SETTING_LINE_FRAME: number;
    readonly SETTING_POINT_DIAGONAL_FIRST: number;
    readonly ROUNDS_MAX: number;
    readonly LOGCABIN_BLOCKS_MAX: number;
    readonly LOGCABIN_GIVEN_CUT: number;
    readonly MEDALLION_EQUAL_COPING: number;
    readonly POINT_BORDER_SQUARES_MAX: number;
    readonly BED_FOOT_GIVEN: number;
    readonly FIT_ALLOW_STRAIGHT: number;
    readonly FIT_ALLOW_SASHED: number;
    readonly FIT_ALLOW_FRAMED: number;
    readonly FIT_ALLOW_ON_POINT: number;
    readonly FIT_ACROSS_FRAME: number;
    readonly BIAS_BLUNT_ENDS: number;
    readonly BATTING_FIXED: number;
    readonly BACKING_ROUND_PANELS: number;
    readonly STRIPQUILT_SEGMENTS_MAX: number;
    readonly THREAD_READY_BOBBINS: number;
    readonly MONEY_MAX: bigint;
    readonly QUILT_DEPTH_MAX: number;
    readonly QUILT_POINT_DEPTH_MAX: number;
    readonly QUILT_CORNERS_MAX: number;
    readonly QUILT_JOIN_KEEPS_ORDER: number;
    readonly QUILT_SASHED_FRAME: number;
    readonly QUILT_SASHED_CORNERSTONES: number;
    readonly EDGE_PRINTS_TURNS_HALF: number;
    readonly EDGE_PRINTS_TURNS_QUARTER: number;
    readonly CUTPLAN_ROWS_MAX: number;
    readonly CUTPLAN_COUNT_MAX: number;
    readonly BLANK_MAY_TURN: number;
    readonly CUTPLAN_NO_PANELS: number;
    readonly CUTPLAN_ONE_HEIGHT: number;
    readonly CUTPLAN_OWN_STRIPS: number;
    readonly CUTPLAN_STACKED: number;
    readonly CUTPLAN_FIRST_CUT_ACROSS: number;
    readonly CUTPLAN_FOLDED: number;
    readonly CUTPLAN_BY_PRIORITY: number;
};
