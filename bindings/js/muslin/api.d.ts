// The types of the library, with the words of its headers.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT

import type { Filled, Formatted, Handle, Id, Length, LengthLike, LengthsLike, Progress, Whole,
    WholeNumbers } from "./muslin.js";
import { MuslinError } from "./muslin.js";

/** enum muslin_status_code in muslin/base.h. */
export type Status =
    /** all went well */
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
    | "foreign"
    /** the caller's progress call ended it before there was an answer */
    | "stopped"
    /** more would be needed than can be counted here; since 1.1 */
    | "tooMany";

/** enum muslin_argument in muslin/base.h. */
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

/** enum muslin_warning in muslin/base.h. */
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

/** enum muslin_direction in muslin/length.h. */
export type Direction =
    /** towards +infinity */
    | "up"
    /** towards -infinity */
    | "down"
    /** to the nearest; ties upwards */
    | "nearest";

/** enum muslin_length_unit in muslin/length.h. */
export type LengthUnit =
    | "inch"
    | "foot"
    | "yard"
    | "mm"
    | "cm"
    | "m";

/** enum muslin_style in muslin/length.h. */
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

/** enum muslin_allowance_policy in muslin/seam.h. */
export type AllowancePolicy =
    /** what the geometry of the seams asks for, and no more */
    | "exact"
    /** the trade's round figures, or the caller's; refused where they are too small */
    | "customary"
    /** the customary figures and some room to trim away after sewing */
    | "oversize";

/** enum muslin_governing_rule in muslin/shrinkage.h. */
export type GoverningRule =
    /** closely quilted: the layers go where the batting goes */
    | "batting"
    /** as the fabric does */
    | "fabric"
    /** on the safe side where the quilt must not end too small */
    | "larger"
    /** on the safe side where it must not end too large */
    | "smaller";

/** enum muslin_governing_source in muslin/shrinkage.h. */
export type GoverningSource =
    /** the batting governs */
    | "batting"
    /** the fabric governs */
    | "fabric"
    /** larger or smaller was asked, and they are alike */
    | "both";

/** enum muslin_edge in muslin/fabric.h. */
export type Edge =
    /** cut straight */
    | "straight"
    /** zigzag edges, the stated size measured from tip to tip */
    | "pinkedTips"
    /** ... from valley to valley */
    | "pinkedValleys";

/** enum muslin_care in muslin/fabric.h. */
export type Care =
    | "unwashed"
    | "washed";

/** enum muslin_print in muslin/fabric.h. */
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

/** enum muslin_stock_kind in muslin/fabric.h. */
export type StockKind =
    | "yardage"
    | "strip"
    | "square"
    | "fatQuarter"
    | "fatEighth";

/** enum muslin_table in muslin/reference.h. */
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
    /** packaged batting where other lists disagree with "batting"; never chosen by battingPlan() */
    | "battingOther";

/** enum muslin_curve in muslin/shape.h. */
export type Curve =
    /** no arc */
    | "straight"
    /** an arc that bulges out of its piece: counter-clockwise round its centre */
    | "convex"
    /** an arc that bulges into its piece: clockwise round its centre */
    | "concave";

/** enum muslin_corner_tip in muslin/shape.h. */
export type CornerTip =
    | "sharp"
    | "blunt"
    | "trimArriving"
    | "trimLeaving";

/** enum muslin_polygon_measure in muslin/shape.h. */
export type PolygonMeasure =
    /** one side */
    | "side"
    /** from a side straight across to the opposite side, of a triangle to the corner */
    | "flats"
    /** between the two corners farthest apart; of a triangle its side */
    | "corners"
    /** from the centre to a corner */
    | "centre";

/** enum muslin_unit_kind in muslin/unit.h. */
export type UnitKind =
    /** one patch; W, H (0: a square). Region 1 */
    | "rectangle"
    /** a square of two triangles; W. Regions 1 and 2 */
    | "halfSquare"
    /** a square of four triangles, two fabrics facing; W. Regions 1 and 2 */
    | "quarterSquare"
    /**
     * one half (region 1) and two quarters (2, 3); W. Has hands: the same pieces make both, and "twoAtATime" always two
     * of each
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
    /** an equilateral triangle; H, its height. finishedWidth: its side */
    | "triangle60"
    /**
     * a 60 degree diamond; H, between two parallel sides. finishedWidth: its side, not the extent, which is half as
     * much again
     */
    | "diamond60"
    /** a 45 degree diamond; H, between two parallel sides. finishedWidth: its side */
    | "diamond45"
    /** H, from flat to flat. finishedWidth: from point to point */
    | "hexagon"
    /** H, half of flat to flat. finishedWidth: its long side */
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

/** enum muslin_unit_method in muslin/unit.h. */
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

/** enum muslin_tip in muslin/unit.h. */
export type Tip =
    /** the whole raw point */
    | "sharp"
    /** cut off level with the allowance, as many rulers do: the strip is H + E high */
    | "blunt";

/** enum muslin_cut_shape in muslin/unit.h. */
export type CutShape =
    /** square or not */
    | "rectangle"
    /** from a strip, alternately up and down; `pitch` holds `gives` of them */
    | "triangles"
    /** from a strip, by parallel slanted cuts as far apart as the strip is high as cut */
    | "diamonds"
    /** so */
    | "hexagons"
    /** from a strip, alternately up and down */
    | "trapezoids"
    /** from a strip, alternately up and down */
    | "wedges"
    /** a square that loses four corners */
    | "octagons"
    /** from a strip set, by parallel cuts at 45 degrees */
    | "slices";

/** enum muslin_cut_again in muslin/unit.h. */
export type CutAgain =
    /** sewn as it is cut */
    | "no"
    /** once on the diagonal: two pieces */
    | "once"
    /** on both diagonals: four pieces */
    | "twice";

/** enum muslin_grain in muslin/unit.h. */
export type Grain =
    /** on all edges */
    | "allEdges"
    /** a triangle's short sides; its long side is bias */
    | "shortEdges"
    /** a triangle's long side; its short sides are bias */
    | "longEdge"
    /** the edges that lay along the strip; the slanted ones are bias */
    | "stripEdges";

/** enum muslin_hand in muslin/unit.h. */
export type Hand =
    /** as the kinds say, and all that have no hands */
    | "first"
    /** its mirror image */
    | "mirrored";

/** enum muslin_stage in muslin/unit.h. */
export type Stage =
    /** what is seen of a patch: the finished patches fill the unit without gap or overlap */
    | "finished"
    /** the patch with e = E / 2 outside each edge: raw patches overlap by their seams */
    | "raw";

/** enum muslin_unit_step_kind in muslin/unit.h. */
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
    /** press the seam open */
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
     * octagon: cut the corners off the square from marks `fromCorner` along both edges, so that each edge is `measure`
     * as cut
     */
    | "cutToShape"
    /** cut squares on point, `measure` wide, their diagonal on the seam */
    | "cutOnPoint"
    /** trim to `measure` by `measureHeight`; the seam runs from corner to corner */
    | "trimTo"
    /** lay the strips together that the pieces are cut from, right sides together */
    | "pairStrips"
    /** as "markAcross", on each half-square */
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
    /** sew two pairs as in "partial" */
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
    /** trim; each corner's seam meets the edges `fromCorner` from the raw corner */
    | "trimCorners"
    /** trim; two points lie an allowance inside each edge, `fromCorner` from its ends */
    | "trimStar"
    /** trim; the seam meets the shorter edges `fromCorner` from the raw corner */
    | "trimLeaning"
    /** cut the strip across into rectangles `measure` long */
    | "cutLengths"
    /**
     * hexagon: cut the corners off a rectangle from marks `fromCorner` along its long edges to the middles of its ends,
     * so that each edge is `measure` as cut
     */
    | "cutPoints"
    /** cut wedges alternately up and down with a ruler whose tip has `angle` */
    | "cutWedges"
    /** half-squares: cut both strips in turn square across and `angle` from the edge */
    | "cutPairs";

/** enum muslin_side in muslin/setting.h. */
export type Side =
    | "left"
    | "right"
    | "top"
    | "bottom";

/** enum muslin_turning in muslin/setting.h. */
export type Turning =
    /** all blocks the same way up */
    | "none"
    /** every other block turned a quarter, like a chessboard; squares only */
    | "quarterAlternate"
    /** every other block turned a half; any block */
    | "halfAlternate";

/** enum muslin_join in muslin/setting.h. */
export type Join =
    /** edge to edge, nothing lost (batting; or a count that ignores the loss) */
    | "butted"
    /** a straight seam: loses two allowances */
    | "straight"
    /** square-ended strips laid at right angles: loses the strip's cut width */
    | "diagonal"
    /** ends already cut at 45 degrees: loses 2 sqrt 2 allowances, up to a tick */
    | "biasEnds";

/** enum muslin_border_style in muslin/setting.h. */
export type BorderStyle =
    /** butted: sides first, then top and bottom over them */
    | "sidesFirst"
    /** butted: top and bottom first */
    | "topFirst"
    /** four squares in the corners */
    | "cornerstones"
    /** seams at 45 degrees in the corners */
    | "mitred";

/** enum muslin_sash_kind in muslin/setting.h. */
export type SashKind =
    | "vertical"
    | "horizontal"
    | "cornerstone";

/** enum muslin_first_block in muslin/setting.h. */
export type FirstBlock =
    /** a pieced block in the first corner */
    | "pieced"
    /** a plain one */
    | "plain";

/** enum muslin_point_layout in muslin/setting.h. */
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

/** enum muslin_point_edge in muslin/setting.h. */
export type PointEdge =
    /** setting triangles: straight grain lies on the outside, but for the ends of sashes in "sashInner" */
    | "triangles"
    /** blocks cut beyond their diagonal, one half from each, with bias on the outside; the corners stay triangles */
    | "halfBlocks";

/** enum muslin_log_order in muslin/rounds.h. */
export type LogOrder =
    /** each log turns the corner: four sides one after the other */
    | "round"
    /** courthouse steps: a side and its opposite, then the other two */
    | "courthouse"
    /** two neighbouring sides only: the centre stays in a corner */
    | "quarter";

/** enum muslin_log_turn in muslin/rounds.h. */
export type LogTurn =
    | "clockwise"
    | "anticlockwise";

/** enum muslin_log_half in muslin/rounds.h. */
export type LogHalf =
    | "first"
    | "second";

/** enum muslin_frame_piece in muslin/rounds.h. */
export type FramePiece =
    /** top or bottom */
    | "top"
    /** left and right */
    | "side";

/** enum muslin_frame_line in muslin/rounds.h. */
export type FrameLine =
    /** the raw edge */
    | "cut"
    /** the stitched line */
    | "finished";

/** enum muslin_round_kind in muslin/rounds.h. */
export type RoundKind =
    /** a border of whole strips */
    | "plain"
    /** a border of equal units side by side */
    | "pieced"
    /** plain strips just wide enough that the pieced round behind them comes out */
    | "coping";

/** enum muslin_round_corner in muslin/rounds.h. */
export type RoundCorner =
    /** each run is a side's length, and four squares stand in the corners */
    | "squares"
    /** sides first; top and bottom run through the corners */
    | "through";

/** enum muslin_drop in muslin/fit.h. */
export type Drop =
    /** as far as the mattress is deep: a coverlet that shows the base of the bed */
    | "depth"
    /** the depth and 3 in, or what else is asked: hides where mattress and base meet */
    | "overJoint"
    /** from the top of the mattress down to the floor: a bedspread */
    | "floor"
    /** as the spec says */
    | "given";

/** enum muslin_foot_corner in muslin/fit.h. */
export type FootCorner =
    /** left square: their points hang lower than the edges */
    | "square"
    /** cut to a quarter circle, so that no point hangs lower than the edges */
    | "rounded";

/** enum muslin_fit_kind in muslin/fit.h. */
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

/** enum muslin_parity in muslin/fit.h. */
export type Parity =
    /** even or odd */
    | "any"
    /** turned blocks that come in fours */
    | "even"
    /** every other block a plain one, and the same block in all four corners */
    | "odd";

/** enum muslin_fit_rank in muslin/fit.h. */
export type FitRank =
    /** least off first: what width and length are off, added up */
    | "nearest"
    /** blocks and alternate blocks */
    | "fewestBlocks"
    /** the largest block first */
    | "largestBlock";

/** enum muslin_fold in muslin/finishing.h. */
export type Fold =
    /** folded in half, raw edges in the seam, the fold sewn down on the back */
    | "double"
    /** one layer, its far edge turned under on the back */
    | "single";

/** enum muslin_backing_layout in muslin/finishing.h. */
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

/** enum muslin_panel_role in muslin/finishing.h. */
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

/** enum muslin_nesting in muslin/stripquilt.h. */
export type Nesting =
    /** turn some segments end for end, which turns their pressing and the order of prints */
    | "turn"
    /** turn none; name the joins that do not nest */
    | "name";

/** enum muslin_set_pressing in muslin/stripquilt.h. */
export type SetPressing =
    /** all seams of the set towards its labelled top strip */
    | "toTop"
    /** ... away from it */
    | "toBottom";

/** enum muslin_thread_method in muslin/supplies.h. */
export type ThreadMethod =
    /** thread : seam as given */
    | "ratio"
    /** 2 + 2 T S: from the thickness sewn and the stitch */
    | "formula";

/** enum muslin_quilting_pattern in muslin/supplies.h. */
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

/** enum muslin_quilting_start in muslin/supplies.h. */
export type QuiltingStart =
    /** the first diagonal cuts a corner off, at the offset from that corner */
    | "atOffset"
    /** the first diagonal starts in a corner; the others lie on both sides of it */
    | "fromCorner";

/** enum muslin_cost_kind in muslin/supplies.h. */
export type CostKind =
    /** cloth by length: a price for so many ticks, 292608 for a yard, 320000 for a metre */
    | "length"
    /** things one by one: a price for one, or for so many */
    | "pieces"
    /** pieces that are sold together only: whole bundles are bought */
    | "bundles";

/** enum muslin_sort in muslin/quilt.h. */
export type Sort =
    | "fabric"
    | "measure"
    | "node";

/** enum muslin_axis in muslin/quilt.h. */
export type Axis =
    /** side by side, from the left; of a size: the width */
    | "across"
    /** one below the other, from the top; of a size: the height */
    | "down";

/** enum muslin_strip_piecing in muslin/quilt.h. */
export type StripPiecing =
    /** as a strip set where that takes fewer cuts and pays, see Stripset */
    | "whereFewer"
    /** as a strip set; solving fails where the pieces do not allow it */
    | "always"
    /** piece by piece */
    | "never";

/** enum muslin_seam_press in muslin/quilt.h. */
export type SeamPress =
    /** whichever way seams nest */
    | "free"
    /** towards the piece that comes first: to the left, or up */
    | "toFirst"
    /** to the right, or down */
    | "toLast"
    /** half to either side: does not nest, and needs not */
    | "open";

/** enum muslin_sixty_first in muslin/quilt.h. */
export type SixtyFirst =
    | "onSide"
    | "onPoint";

/** enum muslin_measure_kind in muslin/quilt.h. */
export type MeasureKind =
    | "named"
    | "fixed"
    | "sum"
    | "extent";

/** enum muslin_node_kind in muslin/quilt.h. */
export type NodeKind =
    /** Quilt.patch() */
    | "patch"
    /** Quilt.unit() */
    | "unit"
    /** Quilt.shape() */
    | "shape"
    /** pieces side by side or one below the other */
    | "join"
    /** turned, mirrored, or both */
    | "turn"
    /** Quilt.trim() */
    | "trim"
    /** Quilt.pinwheel() */
    | "pinwheel"
    /** Quilt.setIn() */
    | "setIn"
    /** a field on point */
    | "diagonal"
    /** rows of 60 degree pieces */
    | "sixty";

/** enum muslin_misfit_kind in muslin/solution.h. */
export type MisfitKind =
    /** two edges to be sewn together differ in length by more than the ease */
    | "length"
    /** ... by no more than the ease */
    | "eased"
    /** their allowances differ, or the pieces along one differ among themselves */
    | "allowance"
    /** a block on point is not a square of the first one's size */
    | "notSquare";

/** enum muslin_cut_source in muslin/solution.h. */
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

/** enum muslin_term_kind in muslin/solution.h. */
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

/** enum muslin_prefer in muslin/pressing.h. */
export type Prefer =
    /** either side is as good */
    | "nothing"
    /** seams go towards the darker fabric where nesting leaves the choice */
    | "darker";

/** enum muslin_press in muslin/pressing.h. */
export type Press =
    /** to the left */
    | "left"
    /** to the right */
    | "right"
    /** upwards */
    | "up"
    /** downwards */
    | "down"
    /** open */
    | "open";

/** enum muslin_other_way in muslin/pressing.h. */
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

/** enum muslin_towards in muslin/pressing.h. */
export type Towards =
    /** open */
    | "neither"
    /** the left or upper one */
    | "first"
    /** the right or lower one */
    | "second";

/** enum muslin_preferred in muslin/pressing.h. */
export type Preferred =
    /** neither way is preferred */
    | "neither"
    /** pressed as preferred */
    | "kept"
    /** ... against it */
    | "against";

/** enum muslin_sewing_kind in muslin/sewing.h. */
export type SewingKind =
    /** strips sewn into sets */
    | "set"
    /** sets cut across into segments: nothing is sewn */
    | "segments"
    /** a unit by its recipe: unitSteps() has its own steps */
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

/** enum muslin_blank_kind in muslin/cutplan.h. */
export type BlankKind =
    /** a rectangle */
    | "piece"
    /** a rectangle, its cutLength along the cloth: a border, slit from a panel */
    | "lengthwise"
    /**
     * a strip cutLength high and cutWidth long in all, pieced from strips across the cloth: binding, pieced borders,
     * long sashes
     */
    | "joined"
    /**
     * cut one beside the other from a strip just cutLength high, every second one upside down or all alike: each takes
     * cutWidth of the strip, the first runIn more. 60 degree triangles, diamonds, wedges, half-hexagons
     */
    | "sloped";

/** enum muslin_cutplan_stopped in muslin/cutplan.h. */
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

/** enum muslin_cutplan_strip_kind in muslin/cutplan.h. */
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

/** enum muslin_cutplan_fault in muslin/cutplan.h. */
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

/** enum muslin_long_pieces in muslin/yardage.h. */
export type LongPieces =
    /** along the cloth, whole, slit from panels */
    | "lengthwise"
    /** across the cloth, pieced from strips */
    | "joined";

/**
 * The rounding a caller asks for. Grid is the step in ticks (1016 for 1/8 in), 1 .. constants.SIZE_MAX. Tolerance, 0 ..
 * grid - 1, is what may be overlooked when rounding up or down: with direction up the result is the least grid point
 * not below the exact value less the tolerance, with down the greatest not above it plus the tolerance. It has no
 * effect on nearest. It keeps 23.8774 in from becoming 24 for two thousandths of an inch. struct muslin_rounding_spec
 * in muslin/length.h.
 */
export interface RoundingSpec {
    /** in ticks, 1 .. constants.SIZE_MAX. Initially 1 ticks. */
    readonly grid?: LengthLike;
    /** 0 .. grid - 1. Initially 0. */
    readonly tolerance?: LengthLike;
    /** Direction. Initially "nearest". */
    readonly direction?: Direction | null;
}

/**
 * A rounded result. The error value - exact lies in [error, error + 1) ticks; when `exact` is 1 it is exactly `error`
 * and that is 0 too. `onTick` is 1 when the exact value is a whole number of ticks, so that `error` is exact. struct
 * muslin_rounded in muslin/length.h.
 */
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

/** struct muslin_parse_spec in muslin/length.h. */
export interface ParseSpec {
    /** LengthUnit, for a number that names none. Initially "inch". */
    readonly defaultUnit?: LengthUnit | null;
    /** '.' or ','. Initially ".". */
    readonly decimalSign?: string;
}

/** struct muslin_parsed in muslin/length.h. */
export interface Parsed {
    /** the length */
    readonly value: Length;
    /** 1 when the text lies on the tick grid; else value is the nearest tick, ties upwards */
    readonly exact: boolean;
    /** LengthUnit: of the last part, named or the default */
    readonly unit: LengthUnit;
}

/** without the unit struct muslin_format_spec in muslin/length.h. */
export interface FormatSpec {
    /** Style. Initially "inchFraction". */
    readonly style?: Style | null;
    /** of fraction styles, 1 .. 64; shown in lowest terms. Initially 64. */
    readonly denominator?: Whole;
    /** of decimal styles, 0 .. 6; trailing zeros are not shown. Initially 4. */
    readonly decimals?: Whole;
    /** '.' or ','. Initially ".". */
    readonly decimalSign?: string;
    /** Direction, for a length off the style's grid. Initially "nearest". */
    readonly direction?: Direction | null;
    /** vulgar fractions, fraction slash and U+2212 instead of ASCII. Initially false. */
    readonly unicode?: boolean;
    /** without the unit. Initially false. */
    readonly bare?: boolean;
}

/** struct muslin_seam_spec in muslin/seam.h. */
export interface SeamSpec {
    /** s, per edge, as stitched; 0 .. constants.SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u, per seam; 0 .. constants.SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_piece_spec in muslin/seam.h. */
export interface PieceSpec {
    /** 0 .. constants.SIZE_MAX. Initially 0. */
    readonly finishedWidth?: LengthLike;
    /** 0 .. constants.SIZE_MAX. Initially 0. */
    readonly finishedHeight?: LengthLike;
    /** allowance on each edge, 0 .. constants.SIZE_MAX / 8; 0: on the fold or left raw. Initially 1/4 in. */
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

/** struct muslin_piece in muslin/seam.h. */
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

/** struct muslin_sewn_row in muslin/seam.h. */
export interface SewnRow {
    /** in the row */
    readonly pieces: number;
    /** pieces - 1 */
    readonly seams: number;
    /** sum of the cut sizes */
    readonly cutTotal: Length;
    /** what the inner seams take: seams x (2 s + u) */
    readonly eaten: Length;
    /** cutTotal - eaten */
    readonly unfinished: Length;
    /** unfinished - 2 s - u */
    readonly finished: Length;
    /** ppm of cutTotal that is not seen in the end: inner and outer seams, nearest */
    readonly seamShare: number;
}

/** struct muslin_calibration in muslin/seam.h. */
export interface Calibration {
    /** n - 1 */
    readonly seams: number;
    /** unfinished width with the stitched allowance and no take-up */
    readonly planned: Length;
    /** planned - measured; negative when the set came out wide */
    readonly shortfall: Length;
    /** shortfall over seams: the take-up u, exact as a fraction ... */
    readonly perSeamNumerator: Length;
    /** ... over this */
    readonly perSeamDenominator: number;
    /** ... and rounded to the nearest tick, ties up; negative when wide */
    readonly takeUp: Length;
    /** e = (sum of cuts - measured) / (2 seams), exact ... */
    readonly effectiveNumerator: Length;
    /** ... over this */
    readonly effectiveDenominator: number;
    /** ... and rounded to the nearest tick, ties up */
    readonly effectiveAllowance: Length;
    /** the cure: stitch at s - u/2, nearest tick, ties up; then the plan is met */
    readonly sewAt: Length;
}

/** struct muslin_carry_on_spec in muslin/seam.h. */
export interface CarryOnSpec {
    /** T, sum of the strips' cut widths; 1 .. constants.SIZE_MAX. Initially 0. */
    readonly cutTotal?: LengthLike;
    /** n, 2 .. constants.COUNT_MAX. Initially 2. */
    readonly strips?: Whole;
    /** M, unfinished width of the sewn set; 1 .. T. Initially 0. */
    readonly measured?: LengthLike;
    /** c, the later piece, as the plan had it; 0 .. constants.SIZE_MAX. Initially 0. */
    readonly laterCut?: LengthLike;
    /** s of the plan; 0 .. constants.SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u of the plan; 0 .. constants.SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_accuracy_row_spec in muslin/accuracy.h. */
export interface AccuracyRowSpec {
    /** side by side. Initially 1. */
    readonly pieces?: Whole;
    /** that the measure crosses, 0 .. constants.COUNT_MAX; pieces - 1 from raw edge to raw edge. Initially 0. */
    readonly seams?: Whole;
    /** e, of one seam. Initially 0. */
    readonly seamError?: LengthLike;
    /** c, of one cut edge. Initially 0. */
    readonly cutError?: LengthLike;
}

/** struct muslin_accuracy_row_errors in muslin/accuracy.h. */
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

/** struct muslin_accuracy_top_spec in muslin/accuracy.h. */
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

/** struct muslin_accuracy_top_errors in muslin/accuracy.h. */
export interface AccuracyTopErrors {
    /** piecesAcross - 1 */
    readonly blockSeamsAcross: number;
    /** how far the unfinished width of a block may be off ... */
    readonly blockWidthWorst: Length;
    readonly blockWidthLikely: Length;
    /** piecesDown - 1 */
    readonly blockSeamsDown: number;
    /** ... and its unfinished height */
    readonly blockHeightWorst: Length;
    readonly blockHeightLikely: Length;
    /** columns x piecesAcross - 1 */
    readonly topSeamsAcross: number;
    /** how far the unfinished width of the top may be off ... */
    readonly topWidthWorst: Length;
    readonly topWidthLikely: Length;
    /** rows x piecesDown - 1 */
    readonly topSeamsDown: number;
    /** ... and its unfinished length */
    readonly topLengthWorst: Length;
    readonly topLengthLikely: Length;
}

/** struct muslin_accuracy_meet_spec in muslin/accuracy.h. */
export interface AccuracyMeetSpec {
    /** n, of each of the two rows. Initially 1. */
    readonly seams?: Whole;
    /** e, of one seam. Initially 0. */
    readonly seamError?: LengthLike;
    /** c, of one cut edge. Initially 0. */
    readonly cutError?: LengthLike;
    /** seams this far apart still count as meeting; 0 .. constants.SIZE_MAX. Initially 1/16 in. */
    readonly tolerance?: LengthLike;
}

/** struct muslin_accuracy_meeting in muslin/accuracy.h. */
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

/** struct muslin_wash_spec in muslin/shrinkage.h. */
export interface WashSpec {
    /** each as for shrinkageChange(). Initially 0. */
    readonly beforeWidth?: LengthLike;
    /** Initially 0. */
    readonly afterWidth?: LengthLike;
    /** along the cloth, so. Initially 0. */
    readonly beforeLength?: LengthLike;
    /** Initially 0. */
    readonly afterLength?: LengthLike;
}

/** struct muslin_wash_change in muslin/shrinkage.h. */
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

/** struct muslin_shrinkage_spec in muslin/shrinkage.h. */
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

/** struct muslin_size_to_make in muslin/shrinkage.h. */
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
    /** 1 when rounding lost nothing of makeWidth */
    readonly widthExact: boolean;
    readonly lengthExact: number;
}

/** struct muslin_washed_size in muslin/shrinkage.h. */
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
    /** so */
    readonly changeArea: number;
}

/** struct muslin_governing in muslin/shrinkage.h. */
export interface Governing {
    /** ppm lost: the one of the two that governs */
    readonly share: number;
    /** GoverningSource */
    readonly source: GoverningSource;
}

/** struct muslin_prewash_spec in muslin/shrinkage.h. */
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

/** struct muslin_prewash in muslin/shrinkage.h. */
export interface Prewash {
    /** to wash, for the length needed afterwards: needed / (1 - along), up to a tick */
    readonly unshrunkLength: Length;
    /** usable after the wash: width x (1 - across), down to a tick */
    readonly washedWidth: Length;
    /** unshrunkLength - neededLength */
    readonly lostLength: Length;
    /** usableWidth - washedWidth */
    readonly lostWidth: Length;
}

/** struct muslin_purchase_spec in muslin/fabric.h. */
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

/** struct muslin_purchase in muslin/fabric.h. */
export interface Purchase {
    /** as asked */
    readonly needed: Length;
    /** what shrinks to `needed`, up to a tick */
    readonly unshrunk: Length;
    /** unshrunk plus the share, up to a tick, plus the fixed extra: the least to buy */
    readonly withExtra: Length;
    /** withExtra up to the step */
    readonly bought: Length;
    /** bought / step */
    readonly steps: number;
    /** bought - withExtra: so much more could be wished for at the same price */
    readonly spare: Length;
    /** withExtra less this much, the least, would save a step; 0 if nothing is bought */
    readonly lessBy: Length;
}

/** struct muslin_cloth_spec in muslin/fabric.h. */
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
    /** compare with all pieces turned a quarter and report the better way. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_cloth_pieces in muslin/fabric.h. */
export interface ClothPieces {
    /** pieces side by side */
    readonly across: number;
    /** rows of them */
    readonly along: number;
    /** across x along */
    readonly pieces: number;
    /** 1 when the pieces lie turned a quarter; a tie is not turned */
    readonly turned: boolean;
    /** "noSlack" when there are pieces and one of the two slacks is 0 */
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

/** struct muslin_strips_spec in muslin/fabric.h. */
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

/** struct muslin_strips in muslin/fabric.h. */
export interface Strips {
    /** pieces, down */
    readonly perStrip: number;
    /** up */
    readonly strips: number;
    /** that the last strip could still give */
    readonly sparePieces: number;
    /** cloth for them: strips x stripCut + straightening */
    readonly length: Length;
    /** left over at the end of a full strip, after the end loss */
    readonly leftPerStrip: Length;
    /** the cloth may be this much narrower before a strip gives one piece less */
    readonly narrowerBy: Length;
    /** this much wider and each strip gives one more */
    readonly widerForOne: Length;
    /** "noSlack" when narrowerBy is 0 */
    readonly warnings: readonly Warning[];
}

/**
 * One kind of cloth in hand: `count` pieces of width x length. A spec and a row at once. struct muslin_stock_spec in
 * muslin/fabric.h.
 */
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
    /** Edge. Initially "straight". */
    readonly edge?: Edge | null;
    /** Care. Initially "unwashed". */
    readonly care?: Care | null;
    /** Print. Initially "none". */
    readonly print?: Print | null;
    /** StockKind. Initially "strip". */
    readonly kind?: StockKind | null;
}

/** struct muslin_stock_yield in muslin/fabric.h. */
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
    /** "noSlack" when shorterBy is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_motif_spec in muslin/motif.h. */
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
    /**
     * The cloth may begin anywhere in the print: one repeat more of length, so that the first row can be shifted, and
     * across only the windows that are whole wherever the print begins. Initially false.
     */
    readonly anyStart?: boolean;
    /**
     * The cloth is cut where a repeat begins along it, but across the print may begin anywhere: only the windows that
     * are whole wherever it does, and no repeat more of length. anyStart includes it. Initially false.
     */
    readonly anyAcross?: boolean;
}

/** struct muslin_motif in muslin/motif.h. */
export interface Motif {
    /** repeats that a window takes across: cutWidth / repeatWidth, up; 1 when the width is one repeat */
    readonly repeatsAcrossEach: number;
    /** along: cutLength / repeatLength, up */
    readonly repeatsAlongEach: number;
    /** windows that a row gives from selvage to selvage */
    readonly perRow: number;
    /** rows of windows: pieces / perRow, up */
    readonly rows: number;
    /** along, for all rows: rows x repeatsAlongEach */
    readonly repeats: number;
    /** repeats, and the one for shifting the start where it is counted */
    readonly repeatsBought: number;
    /** windows that the rows give beyond those wanted */
    readonly sparePieces: number;
    /** windows that a row gives wherever the print begins across; 0 when none is certain */
    readonly perRowCertain: number;
    /** ... and gives when the print begins best: see luckyWithin */
    readonly perRowLucky: number;
    /** rows for the windows wanted when a row gives only those; 0 when none is certain */
    readonly rowsCertain: number;
    /** ... when it gives the most */
    readonly rowsLucky: number;
    /** repeatsAlongEach x repeatLength */
    readonly rowLength: Length;
    /** rowLength - cutLength */
    readonly wastePerRow: Length;
    /** the repeat for shifting the start, or 0 */
    readonly shift: Length;
    /** rows x rowLength + shift */
    readonly clothLength: Length;
    /** the same with rowsCertain; 0 when none is certain */
    readonly clothCertain: Length;
    /** ... with rowsLucky */
    readonly clothLucky: Length;
    /**
     * perRowLucky holds when the first whole window begins no farther than this from the edge of the usable width; 0
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
     * "noSlack" when a piece is wanted and narrowerBy is 0; where the width is one repeat, when the window is as wide
     * as the cloth
     */
    readonly warnings: readonly Warning[];
    /**
     * clothLength without what lies behind the windows of the last row: less by wastePerRow where the start is shifted
     * and motifs is 1, else the same
     */
    readonly clothLeast: Length;
}

/** struct muslin_motif_yield in muslin/motif.h. */
export interface MotifYield {
    /** of windows, whole: of the last only the windows must be there, as in clothLeast */
    readonly rows: number;
    /** along, used by them */
    readonly repeats: number;
    /** rows x perRow: windows */
    readonly pieces: number;
    /** rows x perRowCertain */
    readonly piecesCertain: number;
    /** rows x perRowLucky */
    readonly piecesLucky: number;
    /** of the length, behind the rows; what the shift takes is not in it */
    readonly leftOver: Length;
    /** the cloth may be this much shorter before a row is lost; 0 when there is none */
    readonly shorterBy: Length;
    /** this much longer and one more row fits */
    readonly longerForOne: Length;
    /** "noSlack" when there is a row and shorterBy is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_stack_spec in muslin/motif.h. */
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
    /**
     * The cloth may begin anywhere in the print: one repeat more, so that the first layer can begin at the place
     * chosen. Initially false.
     */
    readonly anyStart?: boolean;
}

/** struct muslin_stack in muslin/motif.h. */
export interface Stack {
    /** to cut through the layers: stacks / perStrip, up */
    readonly strips: number;
    /** that the layers give, whole */
    readonly stripsInLayers: number;
    /** (strips x stripCut + straightening) / repeatLength, up; 0 without a strip */
    readonly repeatsPerLayer: number;
    /** of the cloth: layers x repeatsPerLayer; the one for the start is not counted */
    readonly repeats: number;
    /** ... and that one, where it is */
    readonly repeatsBought: number;
    /** stacks x layers */
    readonly pieces: number;
    /** that stripsInLayers give beyond those wanted */
    readonly spareStacks: number;
    /** of each layer: repeatsPerLayer x repeatLength */
    readonly layerLength: Length;
    /** of each layer: strips x stripCut + straightening; 0 without a strip */
    readonly usedLength: Length;
    /** the repeat for choosing the start, or 0 */
    readonly shift: Length;
    /** layers x layerLength + shift */
    readonly clothLength: Length;
    /** of each layer, behind stripsInLayers */
    readonly leftOver: Length;
    /**
     * the cloth may end this much early, in the last layer: layerLength - usedLength. The other layers stay as long as
     * they are, since each begins whole repeats behind the one before
     */
    readonly shorterBy: Length;
    /** "noSlack" when a strip is wanted and shorterBy is 0 */
    readonly warnings: readonly Warning[];
    /** clothLength - shorterBy */
    readonly clothLeast: Length;
}

/** struct muslin_reference in muslin/reference.h. */
export interface Reference {
    /** ticks; as in StockSpec, the longer side of a strip or a fat quarter; 0 where there is none */
    readonly width: Length;
    /** ticks; 0 where there is none */
    readonly length: Length;
    /** pieces sold together, 1 for a single one; months in a caution; 0 where there is none */
    readonly count: number;
}

/** cut straight through from one end; the fold is not kept clear struct muslin_yield_spec in muslin/stripset.h. */
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
    /** z, kept free of cuts in the middle; must be 0 with fromOneEnd. Initially 0. */
    readonly foldClear?: LengthLike;
    /** cut straight through from one end; the fold is not kept clear. Initially false. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_yield in muslin/stripset.h. */
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
    /** "noSlack" when shorterBy is 0 and N is not */
    readonly warnings: readonly Warning[];
    /**
     * segments when the same set is cut straight through from one end, nothing kept clear: N itself with fromOneEnd.
     * How near it is to its edge, a call with that flag tells; all above speaks of N. Since 1.1
     */
    readonly fromOneEnd: number;
}

/** struct muslin_need_spec in muslin/stripset.h. */
export interface NeedSpec {
    /** wanted. Initially 0. */
    readonly segments?: Whole;
    /** what one set gives; see stripsetYield(). Initially 0. */
    readonly segmentsPerSet?: Whole;
    /** 1 or more. Initially 0. */
    readonly stripsPerSet?: Whole;
    /** 1 or more when bundles are wanted, else 0. Initially 0. */
    readonly stripsPerBundle?: Whole;
    /** cut width of a strip, for the length of cloth instead of bundles; 0 if not wanted. Initially 0. */
    readonly stripCut?: LengthLike;
}

/** struct muslin_need in muslin/stripset.h. */
export interface Need {
    /** up */
    readonly sets: number;
    /** sets x stripsPerSet, below 2^62 */
    readonly strips: number;
    /** up; 0 when not asked */
    readonly bundles: number;
    /** that the sets give beyond the wish */
    readonly spareSegments: number;
    /** that the bundles hold beyond the sets; 0 when not asked */
    readonly spareStrips: number;
    /** strips x stripCut; 0 when not asked */
    readonly clothLength: Length;
}

/** struct muslin_harvest_spec in muslin/stripset.h. */
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

/** struct muslin_harvest in muslin/stripset.h. */
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
    /** setsUsed x stripsPerSet */
    readonly stripsUsed: number;
    /** strips - stripsUsed */
    readonly stripsLeft: number;
    /** of the sets used, beyond the tops */
    readonly segmentsLeft: number;
    /** of all blocks, beyond the tops */
    readonly blocksLeft: number;
    /** strips missing for one more top; 0 only when a set gives nothing, so that no number of strips is enough */
    readonly stripsForOneMore: number;
}

/**
 * Sets that hold a given number of strips of each print: one row a print. struct muslin_stripset_print in
 * muslin/stripset.h.
 */
export interface StripsetPrint {
    /** strips of this print. Initially 0. */
    readonly inHand?: Whole;
    /** strips of it in each set, 0 or more. Initially 0. */
    readonly perSet?: Whole;
    /** out: inHand - sets x perSet, or what is missing, negative, when sets were asked for. Initially 0. */
    readonly leftOver?: Whole;
}

/** Pieces of one size and one fabric; a row of a list. struct muslin_cutlist_piece_spec in muslin/cutlist.h. */
export interface CutlistPieceSpec {
    /** across the cloth, 1 or more. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** along it, 1 or more. Initially 0. */
    readonly cutLength?: LengthLike;
    /** wanted. Initially 1. */
    readonly count?: Whole;
    /** these pieces may lie turned a quarter, where the print allows it. Initially false. */
    readonly mayTurn?: boolean;
}

/** How one row is cut. struct muslin_cutlist_row in muslin/cutlist.h. */
export interface CutlistRow {
    /** wanted, of all lists that are cut together */
    readonly pieces: number;
    /** pieces / perStrip, up */
    readonly strips: number;
    /** pieces from one strip, down */
    readonly perStrip: number;
    /** that the last strip could still give */
    readonly sparePieces: number;
    /** cut width of each strip, along the cloth */
    readonly stripCut: Length;
    /** what is cut off the strip for each piece, across the cloth */
    readonly pieceCut: Length;
    /** of cloth: strips x stripCut */
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

/** struct muslin_cutlist_spec in muslin/cutlist.h. */
export interface CutlistSpec {
    /** length of a strip across the cloth, 1 or more. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** taken off each strip for squaring its ends. Initially 0. */
    readonly endLoss?: LengthLike;
    /** taken off the cloth once. Initially 0. */
    readonly straightening?: LengthLike;
    /** Print. Initially "none". */
    readonly print?: Print | null;
}

/** struct muslin_cutlist_yardage in muslin/cutlist.h. */
export interface CutlistYardage {
    /** of the whole list */
    readonly pieces: number;
    /** of all rows */
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
    /** the narrowest usable width at which clothLength is the same */
    readonly narrowestWidth: Length;
    /** usableWidth - narrowestWidth */
    readonly narrowerBy: Length;
    /** ... at which also the rows lie alike and take as many strips */
    readonly narrowestAsCut: Length;
    /** this much wider, the least, and clothLength is less; 0 when no width saves any */
    readonly widerForLess: Length;
    /** so much less it then is; how it is cut then, the call below says for that width */
    readonly widerSaves: Length;
    /** "noSlack" when a piece is wanted and narrowerBy is 0 */
    readonly warnings: readonly Warning[];
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
}

/** struct muslin_cutlist_stock in muslin/cutlist.h. */
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
    /** "noSlack" when a piece is wanted and narrowerBy or shorterBy is 0 */
    readonly warnings: readonly Warning[];
    /** 1 when some row's strips must be cut from the stock (see CutlistRow) */
    readonly trimmed: boolean;
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
    /** that leftOver could still give, cut as those of the last row; 0 when that wants none */
    readonly restPieces: number;
}

/**
 * Strips of one row that come from one piece of stock, or from several that are cut alike. struct muslin_cutlist_part
 * in muslin/cutlist.h.
 */
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

/** struct muslin_cutlist_lists in muslin/cutlist.h. */
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
    /** "noSlack" when there is a list and narrowerBy or shorterBy is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_substitution in muslin/cutlist.h. */
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
    /** as in CutlistYardage and CutlistStock */
    readonly narrowerBy: Length;
    /** from yardage: what is in hand beyond clothLength */
    readonly shorterBy: Length;
    /** that the last strips of all rows could still give */
    readonly sparePieces: number;
    /** 1 when every row can be cut from it; else all but unfitRow is 0 */
    readonly possible: boolean;
    /** 1 when what is in hand suffices */
    readonly enough: boolean;
    /**
     * "noSlack" when a piece is wanted and narrowerBy is 0 or, where it is enough or from pieces of stock, shorterBy
     */
    readonly warnings: readonly Warning[];
    /** 1 when the pieces of some row lie turned a quarter */
    readonly turned: boolean;
    /**
     * as in CutlistStock: of a list of one row, so many more than sparePieces come from the stock that is needed; from
     * yardage 0
     */
    readonly restPieces: number;
}

/** One corner, and the edge that starts at it. struct muslin_corner_spec in muslin/shape.h. */
export interface CornerSpec {
    /** constants.SHAPE_OUTLINE, 0, 1, ... Initially 0. */
    readonly piece?: Whole;
    /** CornerTip; "sharp" where an arc ends or starts. Initially "sharp". */
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
    /** of the arc; 0 for a straight edge. Initially 0. */
    readonly radius?: LengthLike;
    /** Curve. Initially "straight". */
    readonly curve?: Curve | null;
}

/** struct muslin_shape in muslin/shape.h. */
export interface Shape {
    /** without the outline */
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

/** One corner of a template, and the cut edge that starts at it. struct muslin_template_corner in muslin/shape.h. */
export interface TemplateCorner {
    /** row of the finished corner that it belongs to */
    readonly corner: number;
    /** Curve: of the cut edge */
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

/** struct muslin_shape_piece_spec in muslin/shape.h. */
export interface ShapePieceSpec {
    /** 0, 1, ... Initially 0. */
    readonly piece?: Whole;
    /**
     * where the straight grain runs on the piece, a direction: -constants.SHAPE_SIZE_MAX .. constants.SHAPE_SIZE_MAX;
     * both 0: say where it should run. Initially 0.
     */
    readonly grainX?: LengthLike;
    /** Initially 0. */
    readonly grainY?: LengthLike;
    /** added all round the rectangles, 0 .. constants.SHAPE_SIZE_MAX: for a foundation, or for safety. Initially 0. */
    readonly margin?: LengthLike;
}

/** struct muslin_shape_piece in muslin/shape.h. */
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
    /** "biasEdge" when there are bias edges */
    readonly warnings: readonly Warning[];
}

/** struct muslin_quarter_circle_spec in muslin/shape.h. */
export interface QuarterCircleSpec {
    /** F, side of the finished square, 2 .. constants.SIZE_MAX / 4. Initially 0. */
    readonly finished?: LengthLike;
    /** r, of the seam, 1 .. F - 1. Initially 0. */
    readonly radius?: LengthLike;
    /** of every edge. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_quarter_circle in muslin/shape.h. */
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

/** struct muslin_regular_polygon in muslin/shape.h. */
export interface RegularPolygon {
    /** each rounded on its own from the exact value */
    readonly side: Length;
    /** straight across */
    readonly flats: Length;
    /** between the farthest two */
    readonly corners: Length;
    /** from there to a corner */
    readonly centre: Length;
    /** doubled square ticks, nearest */
    readonly area: bigint;
}

/**
 * A recipe wanted. `trim` is added once to the squares that triangles are cut from by "pieces", "twoAtATime" and
 * "fourAllRound", to the strips and the squares on point of "biasStrips", and to both sides of a half-rectangle; twice
 * by "fourMidpoints" and "eightAtATime"; of geese by "fourAtATime" to the four small squares alone. It changes nothing
 * in a rectangle, by "strips", by "flippedCorners", and in the square within a square, an octagon, a star's diamonds
 * and corner squares and a kaleidoscope's wedges. struct muslin_unit_spec in muslin/unit.h.
 */
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
    /** "oversize": room to trim each unit, beyond the customary size, where it is said above; else 0. Initially 0. */
    readonly trimRoom?: LengthLike;
    /** cut sizes are rounded to it; 1 .. constants.UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly grid?: LengthLike;
    /** below grid. Initially 0. */
    readonly tolerance?: LengthLike;
    /** wanted, of the first hand. Initially 1. */
    readonly units?: Whole;
    /** wanted, of the other hand; 0 for kinds without hands (see the kinds). Initially 0. */
    readonly mirrored?: Whole;
    /** UnitKind. Initially "halfSquare". */
    readonly kind?: UnitKind | null;
    /** UnitMethod. Initially "twoAtATime". */
    readonly method?: UnitMethod | null;
    /** AllowancePolicy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** Tip; matters where triangles or wedges are cut from strips. Initially "blunt". */
    readonly tip?: Tip | null;
    /** Direction. Initially "up". */
    readonly direction?: Direction | null;
}

/** struct muslin_unit_plan in muslin/unit.h. */
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
    /** of both hands */
    readonly unitsPerRecipe: number;
    /** of these, the mirror image of the others: two, of a split quarter by "twoAtATime"; else 0 */
    readonly mirroredPerRecipe: number;
    /**
     * for units, up; of a split quarter for units and mirrored: by "pieces" for both together, by "twoAtATime" for the
     * greater wish
     */
    readonly recipes: number;
    /** where hands are cut each for itself: for the other hand, up; else 0 */
    readonly mirroredRecipes: number;
    /** of all recipes, of either hand, beyond both wishes */
    readonly spareUnits: number;
    /** rows of unitPieces() */
    readonly pieces: number;
    /** of one recipe, where all pieces leave the table as rectangles; else 0 */
    readonly cutArea: bigint;
    /** of its units: the finished area */
    readonly finishedArea: bigint;
    /** of its units: over all edges of all pieces, length x E / 2, tips excluded, up */
    readonly allowanceArea: bigint;
    /** what remains: cut - finished - allowance; all three 0 where cutArea is 0 */
    readonly wasteArea: bigint;
    /**
     * half-rectangle: the seam meets the raw edge so far from the raw corner, measured along the shorter raw side,
     * nearest tick; 0 elsewhere and for a square
     */
    readonly seamOffset: Length;
    /**
     * half-squares from the corners cut off by "flippedCorners", of one recipe, when a second line is sewn E beside the
     * first
     */
    readonly bonusUnits: number;
    /** their size, down to a tick: corner as cut - sqrt 2 E; 0 when nothing is left */
    readonly bonusUnfinished: Length;
    /** 1 when outer edges of the unit lie on the bias */
    readonly biasOutside: boolean;
    /** "biasEdge"; "belowExact" */
    readonly warnings: readonly Warning[];
    /**
     * eight-pointed star: what its diamonds as cut make it wider than W when every seam takes E, nearest tick;
     * negative: narrower; 0 elsewhere
     */
    readonly starWiderBy: Length;
}

/** struct muslin_unit_piece in muslin/unit.h. */
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
    /** CutShape */
    readonly shape: CutShape;
    /** CutAgain */
    readonly again: CutAgain;
    /** pieces from each: 1, 2 or 4 */
    readonly gives: number;
    /** Grain, of the pieces in the end */
    readonly grain: Grain;
    /** Hand */
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

/**
 * What is there to cut from: rectangles of one size (squares, fat quarters, the strips of a bundle). struct
 * muslin_unit_stock_spec in muslin/unit.h.
 */
export interface UnitStockSpec {
    /** the longer side of a strip; 1 .. constants.SIZE_MAX. Initially 5 in. */
    readonly width?: LengthLike;
    /** cut width of a strip; 1 .. constants.SIZE_MAX. Initially 5 in. */
    readonly height?: LengthLike;
    /** how many there are for each region of the unit; 0 .. constants.COUNT_MAX. Initially 1. */
    readonly perRegion?: Whole;
    /** taken off the width of each for squaring; 0 .. constants.SIZE_MAX. Initially 0. */
    readonly endLoss?: LengthLike;
    /** finished sizes tried: multiples of this, 1 .. constants.UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly finishedGrid?: LengthLike;
}

/** struct muslin_unit_yield in muslin/unit.h. */
export interface UnitYield {
    /** as the kind says; nearest tick where it is irrational */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** as in UnitPlan: trim to this */
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
    /** UnitKind */
    readonly kind: UnitKind;
    /** UnitMethod */
    readonly method: UnitMethod;
}

/** struct muslin_unit_corner in muslin/unit.h. */
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
    /** Stage */
    readonly stage: Stage;
}

/** struct muslin_unit_step in muslin/unit.h. */
export interface UnitStep {
    /** as the step says: the allowance s, a width, the unfinished width; 0 where none is */
    readonly measure: Length;
    /** of a step that trims the unit: the unfinished height; else 0 */
    readonly measureHeight: Length;
    /**
     * along the unfinished edge ("cutToShape", "cutPoints": the edge as cut), nearest tick, where the step says so;
     * else 0
     */
    readonly fromCorner: Length;
    /** UnitStepKind */
    readonly step: UnitStepKind;
    /** row of unitPieces(), from 1; 0: what has been sewn so far, or none */
    readonly piece: number;
    /** the row it meets, so */
    readonly other: number;
    /** for one recipe */
    readonly times: number;
    /** "pressTo": towards this region; else 0 */
    readonly region: number;
    /** degrees, where the step cuts a strip shape or an octagon; else 0 */
    readonly angle: number;
}

/** struct muslin_setting_spec in muslin/setting.h. */
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
    /** Turning. Initially "none". */
    readonly turning?: Turning | null;
    /** a block is square enough for a quarter turn when its sides differ by no more. Initially 1/64 in. */
    readonly squareTolerance?: LengthLike;
}

/** struct muslin_setting in muslin/setting.h. */
export interface Setting {
    /** columns x rows */
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

/** `segments` of them joined along their long sides. struct muslin_block_spec in muslin/setting.h. */
export interface BlockSpec {
    /** a, across the block; 1 or more. Initially 0. */
    readonly segmentCut?: LengthLike;
    /** unfinished width of the strip set: along the segment; 1 or more. Initially 0. */
    readonly setUnfinished?: LengthLike;
    /** side by side. Initially 2. */
    readonly segments?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_block in muslin/setting.h. */
export interface Block {
    /** segments x a - (segments - 1)(2 s + u) */
    readonly unfinishedWidth: Length;
    /** setUnfinished */
    readonly unfinishedHeight: Length;
    /** as seen in the top */
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
    /** 1 when squareSegmentCut makes it exactly square */
    readonly squareExact: boolean;
}

/** struct muslin_run_spec in muslin/setting.h. */
export interface RunSpec {
    /** wanted in one run; 0 .. constants.LENGTH_MAX / 2. Initially 0. */
    readonly length?: LengthLike;
    /** L, usable length of each strip. Initially 40 in. */
    readonly stripLength?: LengthLike;
    /** cut width of a strip. Initially 2 1/2 in. */
    readonly stripCut?: LengthLike;
    /** of the joins. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** Join. Initially "straight". */
    readonly join?: Join | null;
}

/** struct muslin_run in muslin/setting.h. */
export interface Run {
    /** least n with n L - (n - 1) loss >= length; 0 when length is 0 */
    readonly strips: number;
    /** n - 1; 0 when n is 0 */
    readonly joins: number;
    /** of the length, by the way of joining */
    readonly lossPerJoin: Length;
    /** the whole run, joined: n L - (n - 1) loss */
    readonly joined: Length;
    /** joined - length */
    readonly spare: Length;
    /** n x stripCut */
    readonly clothLength: Length;
    /** each strip may be this much shorter before one more is needed: spare / n, down */
    readonly narrowerBy: Length;
    /** "noSlack" when spare is 0 and n is not */
    readonly warnings: readonly Warning[];
}

/** cut along the cloth in whole pieces, without joins struct muslin_border_spec in muslin/setting.h. */
export interface BorderSpec {
    /** of what it is sewn to, 1 or more; measure it through the middle. Initially 0. */
    readonly unfinishedWidth?: LengthLike;
    /** Initially 0. */
    readonly unfinishedLength?: LengthLike;
    /** W, finished width of the border, 1 or more. Initially 0. */
    readonly finishedBorder?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** added to the exact least length of each mitred piece; else not used. Initially 0. */
    readonly mitreExtra?: LengthLike;
    /** BorderStyle. Initially "sidesFirst". */
    readonly style?: BorderStyle | null;
    /** Join, of strips across the width; not used lengthwise. Initially "straight". */
    readonly join?: Join | null;
    /** cut along the cloth in whole pieces, without joins. Initially false. */
    readonly lengthwise?: boolean;
}

/** struct muslin_border in muslin/setting.h. */
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
    /** of the top with this border on, as seen */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** "diagonalStretch" when strips are joined by "diagonal" or "biasEnds", "noSlack" when spare is 0 */
    readonly warnings: readonly Warning[];
}

/**
 * squares where the sashes cross; else long sashes run between the rows struct muslin_setting_sashed_spec in
 * muslin/setting.h.
 */
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
    /** taken off each strip for squaring its ends; at most usableWidth. Initially 0. */
    readonly endLoss?: LengthLike;
    /** sashes all round the outside too, not only between the blocks. Initially false. */
    readonly frame?: boolean;
    /** squares where the sashes cross; else long sashes run between the rows. Initially false. */
    readonly cornerstones?: boolean;
}

/** struct muslin_setting_sashed_plan in muslin/setting.h. */
export interface SettingSashedPlan {
    /** c r */
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
    /** as verticalCutWidth */
    readonly horizontalCutWidth: Length;
    /** a block's width as cut; of a long sash, a whole row's */
    readonly horizontalCutLength: Length;
    /** as verticalCutWidth */
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

/** struct muslin_sash_piece in muslin/setting.h. */
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
    /** strips x cutWidth */
    readonly clothLength: Length;
    /**
     * the cloth may be this much narrower before a full strip gives one piece less; when strips are joined, before one
     * more of them is needed
     */
    readonly narrowerBy: Length;
    /** SashKind */
    readonly kind: SashKind;
    /** "noSlack" when narrowerBy is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_setting_alternate_spec in muslin/setting.h. */
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
    /** FirstBlock. Initially "pieced". */
    readonly first?: FirstBlock | null;
}

/** struct muslin_setting_alternate_plan in muslin/setting.h. */
export interface SettingAlternatePlan {
    /** with an odd number of blocks, the first kind is one more than the other */
    readonly pieced: number;
    /** the other blocks */
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

/**
 * A line is one row of blocks side by side, or one column of them; a top with unequal columns and rows is two. struct
 * muslin_setting_line_spec in muslin/setting.h.
 */
export interface SettingLineSpec {
    /** finished width of the sash between neighbours; 0: none. Initially 0. */
    readonly sash?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** finished size that the line should have; 0: none is wanted. Initially 0. */
    readonly wanted?: LengthLike;
    /** a sash before the first block and after the last one too. Initially false. */
    readonly frame?: boolean;
}

/** struct muslin_setting_line_plan in muslin/setting.h. */
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

/** struct muslin_setting_line_place in muslin/setting.h. */
export interface SettingLinePlace {
    /** finished, from the first edge of the line to this block's first edge */
    readonly start: Length;
    /** its own size */
    readonly finished: Length;
    /** finished + 2 s + u: what the block must measure before it is sewn in */
    readonly unfinished: Length;
}

/**
 * bring the customary diagonal to the grid, then add; no rounding after that struct muslin_setting_point_spec in
 * muslin/setting.h.
 */
export interface SettingPointSpec {
    /** B, finished side, 1 or more; above w in "sashInner". Initially 0. */
    readonly block?: LengthLike;
    /** c, of blocks side by side, without alternates; one is a runner. Initially 1. */
    readonly columns?: Whole;
    /** r. Initially 1. */
    readonly rows?: Whole;
    /** w; 0 in "plain", else 1 or more. Initially 0. */
    readonly sash?: LengthLike;
    /**
     * f: blocks float this far inside the edge, and it stays; 0 in "sashCut", "sashInner" and with half-blocks, where
     * something is cut at the edge itself. Initially 0.
     */
    readonly setOff?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /**
     * added to the cut squares, half of it stands out at the edge and is trimmed away after sewing; 0 unless policy is
     * "oversize". Initially 0.
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
    /** PointLayout. Initially "plain". */
    readonly layout?: PointLayout | null;
    /** PointEdge; half-blocks in "plain" and "sashCut" only. Initially "triangles". */
    readonly edge?: PointEdge | null;
    /** AllowancePolicy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** bring the customary diagonal to the grid, then add; no rounding after that. Initially false. */
    readonly diagonalFirst?: boolean;
}

/** struct muslin_setting_point_plan in muslin/setting.h. */
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
    /** these three as of the side squares */
    readonly cornerSquareCut: Length;
    /** exact, up to a tick */
    readonly cornerNeed: Length;
    /** down to a tick */
    readonly cornerSurplus: Length;
    /** half-blocks: cut this far beyond the diagonal, s + u / 2 up to a tick; 0 where there are none */
    readonly halfBlockBeyond: Length;
    /** finished diagonal of a block, B sqrt 2, rounded as `measuring` */
    readonly diagonal: Length;
    /** value less exact, down to a tick, as in Rounded */
    readonly diagonalError: Length;
    /** of the centre without borders, rounded once as `measuring` */
    readonly finishedWidth: Length;
    /** less the exact one, down to a tick */
    readonly widthError: Length;
    /** as finishedWidth */
    readonly finishedLength: Length;
    /** less the exact one, down to a tick */
    readonly lengthError: Length;
    /** finishedWidth + 2 s + u */
    readonly unfinishedWidth: Length;
    readonly unfinishedLength: Length;
    /** whole ones */
    readonly sashes: number;
    /** "sashInner": those that end at the edge */
    readonly edgeSashes: number;
    /** whole ones */
    readonly cornerstones: number;
    /** "sashCut": triangles at the edge, 2 c + 2 r */
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
     * "biasEdge" when it does not; "offGrid" when a square that was rounded by its diagonal does not lie on the cutting
     * grid
     */
    readonly warnings: readonly Warning[];
    /** as of the side square; 0 without edge cornerstones */
    readonly edgeCornerstoneNeed: Length;
    /** as of the side square */
    readonly edgeCornerstoneSurplus: Length;
    /** what there is to trim at the edge of the quilt: half of sideSurplus, down to a tick */
    readonly sideRoom: Length;
    /** half of cornerSurplus, at both edges */
    readonly cornerRoom: Length;
    /** half of edgeCornerstoneSurplus */
    readonly edgeCornerstoneRoom: Length;
}

/** centre and logs are given as cut, not finished struct muslin_logcabin_spec in muslin/rounds.h. */
export interface LogcabinSpec {
    /** finished, or cut with the flag. Initially 0. */
    readonly centreWidth?: LengthLike;
    /** Initially 0. */
    readonly centreHeight?: LengthLike;
    /**
     * of every log, finished or cut as above; not used, and may be 0, where an array of widths is given. Initially 0.
     */
    readonly logWidth?: LengthLike;
    /** 1 .. constants.ROUNDS_MAX. Initially 0. */
    readonly rounds?: Whole;
    /** alike, cut together; 1 .. constants.LOGCABIN_BLOCKS_MAX. Initially 1. */
    readonly blocks?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it; 0: strips are not counted. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /** of each strip, where its ends are squared; 0 or more. Initially 0. */
    readonly endLoss?: LengthLike;
    /** LogOrder. Initially "round". */
    readonly order?: LogOrder | null;
    /** Side: the side of each round's first log. Initially "top". */
    readonly start?: Side | null;
    /** LogTurn: where the next side lies. Initially "clockwise". */
    readonly turn?: LogTurn | null;
    /** centre and logs are given as cut, not finished. Initially false. */
    readonly givenCut?: boolean;
}

/** struct muslin_logcabin in muslin/rounds.h. */
export interface Logcabin {
    /** of the middle patch, as cut */
    readonly centreCutWidth: Length;
    readonly centreCutHeight: Length;
    /** of the block */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** of the block, outer seams still raw */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** in one block */
    readonly logs: number;
    /** of strips: rows of logcabinStrips() */
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
     * of the logs, cut without joins as logcabinStrips() says: at most so many are needed; 0 when not counted, as above
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
    /** that a strip gives */
    readonly centresPerStrip: number;
    /** for all blocks, up */
    readonly centreStrips: number;
    /** centreStrips x centreStripCut */
    readonly centreClothLength: Length;
}

/** One log, in sewing order. struct muslin_logcabin_log in muslin/rounds.h. */
export interface LogcabinLog {
    /** from 1 */
    readonly round: number;
    /** the raw edge it is sewn to */
    readonly cutLength: Length;
    /** of its strip */
    readonly cutWidth: Length;
    /** as seen */
    readonly finishedLength: Length;
    readonly finishedWidth: Length;
    /** cut lengths so far, of one block */
    readonly runningLength: Length;
    /** what the block must measure now, this log sewn on and pressed */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /** Side */
    readonly side: Side;
    /** LogHalf */
    readonly half: LogHalf;
    /** 1 when it is its round's last: measure here, and square up */
    readonly closesRound: boolean;
}

/** The strips of one half and one cut width, for all blocks. struct muslin_logcabin_strip in muslin/rounds.h. */
export interface LogcabinStrip {
    /** what its logs share */
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
    /** strips x cutWidth */
    readonly clothLength: Length;
    /** LogHalf */
    readonly half: LogHalf;
}

/** struct muslin_logcabin_fit_spec in muslin/rounds.h. */
export interface LogcabinFitSpec {
    /** finished side of the block. Initially 0. */
    readonly wanted?: LengthLike;
    /** finished side of the centre, 1 or more and less than wanted. Initially 0. */
    readonly centre?: LengthLike;
    /** 1 .. constants.ROUNDS_MAX; for logcabinLogFor(). Initially 0. */
    readonly rounds?: Whole;
    /** for logcabinRoundsFor(). Initially 0. */
    readonly logFinished?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** LogOrder. Initially "round". */
    readonly order?: LogOrder | null;
}

/** struct muslin_logcabin_fit in muslin/rounds.h. */
export interface LogcabinFit {
    /** as given, or found */
    readonly rounds: number;
    /** in the block's width: 2 x rounds, or rounds with "quarter" */
    readonly logsAcross: number;
    /** the log that finishes the block exactly: wanted - centre ... */
    readonly exactNumerator: Length;
    /** ... over logsAcross */
    readonly exactDenominator: number;
    /** as given, or found */
    readonly logFinished: Length;
    /** logFinished and a seam */
    readonly logCut: Length;
    /** centre + logsAcross x logFinished */
    readonly blockFinished: Length;
    /** wanted - blockFinished; negative when the block comes out larger */
    readonly rest: Length;
    /**
     * the finished centre with which the block comes out as wanted: centre + rest; no centre does when it is 0 or less
     */
    readonly centreToFit: Length;
    /** the block with one round more */
    readonly nextFinished: Length;
}

/**
 * Four pieces with 45 degree ends round an opening, cut by template: top and bottom alike, the two sides alike. struct
 * muslin_frame_spec in muslin/rounds.h.
 */
export interface FrameSpec {
    /** finished, as all sizes here. Initially 0. */
    readonly openingWidth?: LengthLike;
    /** Initially 0. */
    readonly openingHeight?: LengthLike;
    /** W. Initially 0. */
    readonly frameWidth?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** of the cloth: the length of a strip across it; 0: strips are not counted. Initially 40 in. */
    readonly usableWidth?: LengthLike;
}

/** struct muslin_frame in muslin/rounds.h. */
export interface Frame {
    /** of the strip: W + m */
    readonly cutWidth: Length;
    /** raw long edge of top and bottom, from tip to tip, rounded */
    readonly topLong: Length;
    /** less the exact one, down to a tick */
    readonly topLongError: Length;
    /** raw short edge: 2 cutWidth less than the long one, as its ends leave it */
    readonly topShort: Length;
    /** the same of left and right */
    readonly sideLong: Length;
    /** less the exact one, down to a tick */
    readonly sideLongError: Length;
    /** 2 cutWidth less than sideLong */
    readonly sideShort: Length;
    /** of one strip that holds all four as cut, each turned against the one before */
    readonly stripLength: Length;
    /** of the whole */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** of the whole, outer seams still raw */
    readonly unfinishedWidth: Length;
    readonly unfinishedHeight: Length;
    /**
     * across the cloth, 1 to 4, the fewest that hold the four pieces without joins; 0 when not counted, or when a piece
     * is longer than such a strip
     */
    readonly strips: number;
    /** strips x cutWidth */
    readonly clothLength: Length;
}

/**
 * A corner of a piece: x along the raw long edge from its left tip, y from that edge towards the opening. struct
 * muslin_frame_corner in muslin/rounds.h.
 */
export interface FrameCorner {
    /** rounded */
    readonly x: Length;
    /** less the exact one, down to a tick */
    readonly xError: Length;
    /** rounded */
    readonly y: Length;
    /** less the exact one, down to a tick */
    readonly yError: Length;
    /** FramePiece */
    readonly piece: FramePiece;
    /** FrameLine */
    readonly line: FrameLine;
}

/** coping strips must be equally wide on all four sides struct muslin_medallion_spec in muslin/rounds.h. */
export interface MedallionSpec {
    /** finished. Initially 0. */
    readonly centreWidth?: LengthLike;
    /** Initially 0. */
    readonly centreHeight?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
    /** coping strips must be equally wide on all four sides. Initially false. */
    readonly equalCoping?: boolean;
}

/**
 * A round, from the inside outwards: the first five members are given, the others are answered. Left and right are the
 * sides, which run along the height; top and bottom run along the width. Coping that is not needed on the sides has a
 * sidePair of 0: then sideFinished, sideCut and sideLength are 0 too, and likewise for top and bottom; there are corner
 * squares only where neither pair is 0. struct muslin_medallion_row in muslin/rounds.h.
 */
export interface MedallionRow {
    /** RoundKind. Initially "plain". */
    readonly kind?: RoundKind | null;
    /** RoundCorner. Initially "squares". */
    readonly corner?: RoundCorner | null;
    /**
     * finished width of the border, of "pieced" the depth of a unit; of "coping" the least width wanted, which may be
     * 0. Initially 0.
     */
    readonly width?: LengthLike;
    /** "pieced": finished length of a unit along the border; else not used, 0 or more. Initially 0. */
    readonly repeat?: LengthLike;
    /** "coping": the greatest width allowed, width or more; else not used, 0 or more. Initially 0. */
    readonly most?: LengthLike;
    /** out: finished, within this round. Initially 0. */
    readonly beforeWidth?: LengthLike;
    /** Initially 0. */
    readonly beforeHeight?: LengthLike;
    /** finished, with this round. Initially 0. */
    readonly afterWidth?: LengthLike;
    /** Initially 0. */
    readonly afterHeight?: LengthLike;
    /** finished width of both side borders together: afterWidth - beforeWidth. Initially 0. */
    readonly sidePair?: LengthLike;
    /** of top and bottom, so. Initially 0. */
    readonly topPair?: LengthLike;
    /** of one of them, half a pair, down: where a coping pair is odd, one of the two is a tick wider. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** of top or bottom, so. Initially 0. */
    readonly topFinished?: LengthLike;
    /** width of a side strip as cut, of "pieced" the unfinished depth; 0 without a strip. Initially 0. */
    readonly sideCut?: LengthLike;
    /** of top or bottom, so. Initially 0. */
    readonly topCut?: LengthLike;
    /** length of a side as cut, of "pieced" unfinished: what it must measure. Initially 0. */
    readonly sideLength?: LengthLike;
    /** of top or bottom, so. Initially 0. */
    readonly topLength?: LengthLike;
    /** "pieced": whole units in each side ... Initially 0. */
    readonly sideUnits?: Whole;
    /** ... and in top and bottom each. Initially 0. */
    readonly topUnits?: Whole;
    /** in the round: 2 x both, corner squares apart. Initially 0. */
    readonly units?: Whole;
    /** 4 or 0; cut as wide as sideCut and as high as topCut. Initially 0. */
    readonly cornerSquares?: Whole;
    /** "pieced": of the run, beyond its whole units. Initially 0. */
    readonly sideRest?: LengthLike;
    /** of top or bottom, so. Initially 0. */
    readonly topRest?: LengthLike;
    /** "pieced": repeat + m. Initially 0. */
    readonly unitUnfinished?: LengthLike;
    /** 1 unless a "pieced" round leaves a rest on a side or on the top. Initially 0. */
    readonly divides?: Whole;
    /** 1 when side and top differ in width: "coping" only. Initially false. */
    readonly unequal?: boolean;
    /**
     * afterWidth + m: what the top must measure with this round, and how long a row for top or bottom is with its
     * corner squares. Initially 0.
     */
    readonly afterUnfinishedWidth?: LengthLike;
    /** Initially 0. */
    readonly afterUnfinishedHeight?: LengthLike;
}

/** struct muslin_medallion in muslin/rounds.h. */
export interface Medallion {
    /** with all rounds */
    readonly finishedWidth: Length;
    readonly finishedHeight: Length;
    /** with all rounds, outer seams still raw */
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

/** struct muslin_repeat_spec in muslin/rounds.h. */
export interface RepeatSpec {
    /** the run to be filled. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** length of a unit along it. Initially 0. */
    readonly repeatFinished?: LengthLike;
    /** that share what the units leave; 0 .. constants.COUNT_MAX. Initially 0. */
    readonly spacers?: Whole;
    /** finished, 0 or more; without spacers not used. Initially 0. */
    readonly spacerLeast?: LengthLike;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_repeat in muslin/rounds.h. */
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
    /** the repeat with which unitsBelow fill the side, rounded; 0 without a unit */
    readonly repeatBelow: Length;
    /** less the exact one, down to a tick */
    readonly repeatBelowError: Length;
    /** the repeat with which unitsAbove fill it */
    readonly repeatAbove: Length;
    /** less the exact one, down to a tick */
    readonly repeatAboveError: Length;
    /** repeatFinished + m */
    readonly unitUnfinished: Length;
    /** with spacers: the most that leave every spacer its least; else unitsBelow */
    readonly units: number;
    /** what they leave; the exact spacer is this over `spacers` */
    readonly shared: Length;
    /** rounded; 0 without spacers */
    readonly spacerFinished: Length;
    /** spacerFinished + m; 0 without */
    readonly spacerCut: Length;
    /** shared - spacers x spacerFinished; negative when they pass the side */
    readonly leftOver: Length;
    /** 1 when the units alone fill the side */
    readonly divides: boolean;
    /**
     * side - unitsBelow x repeatBelow: what rounding leaves, negative when they pass the side; 0 without a unit. The
     * exact repeat is the side over the units
     */
    readonly belowLeftOver: Length;
    /** side - unitsAbove x repeatAbove */
    readonly aboveLeftOver: Length;
}

/** struct muslin_common_repeat in muslin/rounds.h. */
export interface CommonRepeat {
    /** the greatest length that divides both sides */
    readonly common: Length;
    /** the repeat is this part of it: common / parts exactly */
    readonly parts: number;
    /** finished, rounded */
    readonly repeat: Length;
    /** less the exact one, down to a tick */
    readonly repeatError: Length;
    /** units along the width */
    readonly across: number;
    /** units along the height */
    readonly down: number;
}

/**
 * Squares on their points in one row, tip to tip, set-in triangles between them, half ones at the row's ends. struct
 * muslin_point_border_spec in muslin/rounds.h.
 */
export interface PointBorderSpec {
    /** the run to be filled. Initially 0. */
    readonly sideFinished?: LengthLike;
    /** of a square: the depth of the border; 0: as `squares` need it to fill the side. Initially 0. */
    readonly diagonalFinished?: LengthLike;
    /**
     * in the run, 1 .. constants.POINT_BORDER_SQUARES_MAX, when no diagonal is given; else not used, 0 or more.
     * Initially 0.
     */
    readonly squares?: Whole;
    /** alike, counted together; 1 .. constants.COUNT_MAX. Initially 1. */
    readonly runs?: Whole;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_point_border in muslin/rounds.h. */
export interface PointBorder {
    /** the finished diagonal D, exactly: this over ... */
    readonly diagonalNumerator: Length;
    /** ... this, 1 when it was given */
    readonly diagonalDenominator: number;
    /** rounded as `measuring` */
    readonly diagonalFinished: Length;
    /** less the exact one, down to a tick */
    readonly diagonalError: Length;
    /** as many as fit whole */
    readonly squaresPerRun: number;
    /** of the side, beyond the squares */
    readonly rest: Length;
    /** D / sqrt 2, rounded as `measuring` */
    readonly squareFinished: Length;
    /** less the exact one, down to a tick */
    readonly squareFinishedError: Length;
    /** D / sqrt 2 + m, rounded as `cutting`: also the strip squares are cut from */
    readonly squareCut: Length;
    /** less the exact one, down to a tick */
    readonly squareCutError: Length;
    /** a square cut twice, corner to corner, for four triangles: D + (1 + sqrt 2) m */
    readonly settingCut: Length;
    /** less the exact one, down to a tick */
    readonly settingCutError: Length;
    /** a square cut once for two half triangles: D / 2 + (1 + 1 / sqrt 2) m */
    readonly endCut: Length;
    /** less the exact one, down to a tick */
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

/** struct muslin_bed_spec in muslin/fit.h. */
export interface BedSpec {
    /** 1 or more. Initially 0. */
    readonly mattressWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly mattressLength?: LengthLike;
    /** 1 or more for "depth" and "overJoint". Initially 0. */
    readonly mattressDepth?: LengthLike;
    /** floor to top of mattress; 1 or more for "floor", else 0 if unknown. Initially 0. */
    readonly floorHeight?: LengthLike;
    /** added to the depth by "overJoint". Initially 3 in. */
    readonly beyondDepth?: LengthLike;
    /** left and right, for "given". Initially 0. */
    readonly sideDrop?: LengthLike;
    /** for "given" and with footGiven. Initially 0. */
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
    /** Drop. Initially "depth". */
    readonly drop?: Drop | null;
    /** FootCorner. Initially "square". */
    readonly footCorner?: FootCorner | null;
    /**
     * The foot hangs as footDrop says, whatever rule the sides follow: 0 for a bed with a footboard. Initially false.
     */
    readonly footGiven?: boolean;
}

/** struct muslin_bed in muslin/fit.h. */
export interface Bed {
    /** on each side, by the rule asked for */
    readonly sideDrop: Length;
    /** at the foot */
    readonly footDrop: Length;
    /** of the quilt on the bed: mattress + 2 side drops */
    readonly finishedWidth: Length;
    /** mattress + head drop + foot drop + pillow tuck */
    readonly finishedLength: Length;
    /** finished width of the top to piece: the same and quiltingExtra */
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
    /** floorHeight - cornerHang, below 0 when the corner lies on the floor; 0 where floorHeight is 0 */
    readonly cornerClearance: Length;
    /** 1 when floorHeight is given and the corner hangs lower: feet catch in it */
    readonly cornerTouches: boolean;
    /** "smallQuilt": no side of the mattress, as of a crib's, passes 60 in */
    readonly warnings: readonly Warning[];
}

/** struct muslin_bed_covered_spec in muslin/fit.h. */
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
    /** as in BedSpec. Initially 0. */
    readonly headDrop?: LengthLike;
    /** as in BedSpec. Initially 0. */
    readonly pillowTuck?: LengthLike;
    /** FootCorner. Initially "square". */
    readonly footCorner?: FootCorner | null;
}

/** struct muslin_bed_cover in muslin/fit.h. */
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
    /** as in Bed; 0 where a drop is below 0 */
    readonly cornerHang: Length;
    /** as in Bed */
    readonly cornerClearance: Length;
    /** 1 when the quilt covers the top of the mattress */
    readonly reachesEdges: boolean;
    /** 1 when it hangs to the depth on both sides and at the foot */
    readonly reachesDepth: boolean;
    /** 1 when floorHeight is given and a foot corner hangs lower */
    readonly cornerTouches: boolean;
    /** "smallQuilt": no side of quilt or of mattress is longer than 60 in */
    readonly warnings: readonly Warning[];
    /**
     * how far each side hangs below the mattress's lower edge, down to a tick: sideDrop less the depth; 0: it just
     * reaches it, below 0: it falls short
     */
    readonly beyondSide: Length;
    /** the same at the foot */
    readonly beyondFoot: Length;
}

/**
 * Blocks are square. A size runs from its least to its most in steps from the least. struct muslin_fit_spec in
 * muslin/fit.h.
 */
export interface FitSpec {
    /** 1 or more, with borders. Initially 0. */
    readonly wantedWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly wantedLength?: LengthLike;
    /** how much narrower it may come out. Initially 0. */
    readonly widthUnder?: LengthLike;
    /** how much wider. Initially 0. */
    readonly widthOver?: LengthLike;
    /** how much shorter. Initially 0. */
    readonly lengthUnder?: LengthLike;
    /** how much longer. Initially 0. */
    readonly lengthOver?: LengthLike;
    /** 1 or more. Initially 6 in. */
    readonly blockLeast?: LengthLike;
    /** blockLeast or more. Initially 14 in. */
    readonly blockMost?: LengthLike;
    /** 1 or more. Initially 1/2 in. */
    readonly blockStep?: LengthLike;
    /** 1 or more where sashes are allowed; where they are not, all three are not looked at. Initially 1 in. */
    readonly sashLeast?: LengthLike;
    /** Initially 3 in. */
    readonly sashMost?: LengthLike;
    /** from width to width, 1 or more. Initially 1/2 in. */
    readonly sashStep?: LengthLike;
    /** on each side, all borders together; 0: none. Initially 0. */
    readonly borderLeast?: LengthLike;
    /** Initially 0. */
    readonly borderMost?: LengthLike;
    /** 1 or more. Initially 1 in. */
    readonly borderStep?: LengthLike;
    /** 1 or more. Initially 1. */
    readonly columnsLeast?: Whole;
    /** columnsLeast or more. Initially 100. */
    readonly columnsMost?: Whole;
    /** 1 or more. Initially 1. */
    readonly rowsLeast?: Whole;
    /** rowsLeast or more. Initially 100. */
    readonly rowsMost?: Whole;
    /** list so many only; 0: all, to constants.COUNT_MAX. Initially 0. */
    readonly best?: Whole;
    /**
     * the most combinations of kind, block, sash and border that are tried, and the most settings that may be found,
     * listed or not; 1 .. constants.COUNT_MAX. Initially 1000000.
     */
    readonly workLimit?: Whole;
    /** FitRank. Initially "nearest". */
    readonly rank?: FitRank | null;
    /** Parity. Initially "any". */
    readonly columnsParity?: Parity | null;
    /** Parity. Initially "any". */
    readonly rowsParity?: Parity | null;
    /** The kinds that are wanted: straight, with sashes, with sashes all round, on point. Initially false. */
    readonly allowStraight?: boolean;
    /** The kinds that are wanted: straight, with sashes, with sashes all round, on point. Initially false. */
    readonly allowSashed?: boolean;
    /** The kinds that are wanted: straight, with sashes, with sashes all round, on point. Initially false. */
    readonly allowFramed?: boolean;
    /** The kinds that are wanted: straight, with sashes, with sashes all round, on point. Initially false. */
    readonly allowOnPoint?: boolean;
}

/** One setting. struct muslin_fit in muslin/fit.h. */
export interface Fit {
    /** FitKind */
    readonly kind: FitKind;
    /**
     * 1 when width and length are exactly as wanted; always 0 on point, where they are no whole ticks even if offWidth
     * and offLength are 0
     */
    readonly exact: boolean;
    /** of blocks, alternates apart */
    readonly columns: number;
    /** so */
    readonly rows: number;
    /** finished side */
    readonly block: Length;
    /** 0 where the kind has none */
    readonly sash: Length;
    /** on each side */
    readonly border: Length;
    /** on point to the nearest tick, else exact */
    readonly finishedWidth: Length;
    readonly finishedLength: Length;
    /** finishedWidth - wantedWidth */
    readonly offWidth: Length;
    readonly offLength: Length;
    /** columns x rows */
    readonly blocks: number;
    /** on point (columns - 1)(rows - 1), else 0 */
    readonly alternates: number;
    /** what it is ranked by, the lowest first: ticks off in all; blocks and alternates; or minus the block in ticks */
    readonly rankKey: bigint;
}

/** struct muslin_fit_across_spec in muslin/fit.h. */
export interface FitAcrossSpec {
    /** the width (or length) to fill, 1 or more. Initially 0. */
    readonly wanted?: LengthLike;
    /** on each side. Initially 0. */
    readonly border?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly block?: LengthLike;
    /** between blocks; 0: none. Initially 0. */
    readonly sash?: LengthLike;
    /** Direction: fewer blocks, more, or the nearer of the two (ties: more). Initially "nearest". */
    readonly direction?: Direction | null;
    /** A sash also on the left of the first block and on the right of the last. Initially false. */
    readonly frame?: boolean;
}

/** struct muslin_fit_across_blocks in muslin/fit.h. */
export interface FitAcrossBlocks {
    /** 1 or more */
    readonly blocks: number;
    /** of so many blocks, their sashes and both borders */
    readonly finishedWidth: Length;
    /** finishedWidth - wanted */
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

/** struct muslin_fit_triangles_spec in muslin/fit.h. */
export interface FitTrianglesSpec {
    /** 1 or more. Initially 0. */
    readonly wantedWidth?: LengthLike;
    /** 1 or more. Initially 0. */
    readonly wantedLength?: LengthLike;
    /** finished height of a triangle, 1 or more: the depth of a row. Initially 0. */
    readonly height?: LengthLike;
    /** Direction: fewer rows, more, or the nearest (ties: more). Initially "nearest". */
    readonly rowsDirection?: Direction | null;
    /** Direction, for the sides across. Initially "nearest". */
    readonly sidesDirection?: Direction | null;
    /** s. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_fit_triangle_rows in muslin/fit.h. */
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
     * of a half triangle along the strip, from its straight side, which has its allowance too: cutBase / 2 + E / 2
     * before rounding, up to a tick
     */
    readonly halfCutBase: Length;
}

/** struct muslin_fit_rescale_spec in muslin/fit.h. */
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

/** One size of the pattern. struct muslin_fit_rescale_row in muslin/fit.h. */
export interface FitRescaleRow {
    /** in: as it is, 1 .. constants.SIZE_MAX. Initially 0. */
    readonly finished?: LengthLike;
    /** finished x numerator / denominator, to the nearest tick, ties up ... Initially 0. */
    readonly newFinished?: LengthLike;
    /**
     * ... and what that leaves out, in denominators of a tick: exact is newFinished + rest / denominator. Initially 0.
     */
    readonly rest?: Whole;
    /** newFinished + 2 s + u. Initially 0. */
    readonly newCut?: LengthLike;
    /**
     * the largest cut size on the grid that is not larger than the exact one; 0 where nothing would be seen of it (2 s
     * + u or less). Initially 0.
     */
    readonly cutBelow?: LengthLike;
    /**
     * the nearest on the grid, ties up, of those of which something is seen (above 2 s + u): cutAbove where the nearest
     * of all is no such one. Initially 0.
     */
    readonly cutNearest?: LengthLike;
    /** the smallest on the grid that is not smaller. Initially 0. */
    readonly cutAbove?: LengthLike;
    /** 1 when the exact cut size lies on the grid: all four are then the same. Initially false. */
    readonly onGrid?: boolean;
}

/** struct muslin_fit_rescaled in muslin/fit.h. */
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
    /** "offGrid" */
    readonly warnings: readonly Warning[];
}

/** struct muslin_binding_width_spec in muslin/finishing.h. */
export interface BindingWidthSpec {
    /** Fold. Initially "double". */
    readonly fold?: Fold | null;
    /** s, from the raw edge of the binding to its seam. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** finished width shown on the front, from the seam to the edge of the quilt. Initially 1/4 in. */
    readonly front?: LengthLike;
    /** t of the quilt sandwich at the edge. Initially 0. */
    readonly thickness?: LengthLike;
    /** finished width wanted on the back; not used when bindingCut is given. Initially 1/4 in. */
    readonly back?: LengthLike;
    /** at the far edge of a single fold; not used for a double one. Initially 1/4 in. */
    readonly turnUnder?: LengthLike;
    /** 0: work out the cut width; else: work out what this one shows on the back. Initially 0. */
    readonly bindingCut?: LengthLike;
    /** warn when back and front differ by more than this. Initially 1/8 in. */
    readonly unevenLimit?: LengthLike;
}

/** struct muslin_binding_width in muslin/finishing.h. */
export interface BindingWidth {
    /** C, of the strip */
    readonly cutWidth: Length;
    /** finished width shown on the back, half ticks down; below 0: it does not reach round */
    readonly back: Length;
    /** width after folding, before sewing: C/2 up for a double fold, C for a single one */
    readonly folded: Length;
    /**
     * "bindingUneven" beyond the limit; "backTooNarrow" when the back shows less than the front, so that the seam stays
     * bare; half ticks counted
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_binding_spec in muslin/finishing.h. */
export interface BindingSpec {
    /** finished, of any outline, up to 4 x constants.SIZE_MAX; 0: 2 x (width + length). Initially 0. */
    readonly perimeter?: LengthLike;
    /** finished; not read when a perimeter is given. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** the same. Initially 0. */
    readonly quiltLength?: LengthLike;
    /** for the ends and the last join; sources use 10, 12, 15, 20, 24 in. Initially 12 in. */
    readonly extra?: LengthLike;
    /** of the outline, 0 .. constants.COUNT_MAX; 0 for a rounded one. Initially 4. */
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
    /** cut on top of the need, 0 .. constants.COUNT_MAX. Initially 0. */
    readonly spareStrips?: Whole;
    /** Join; "butted" ignores the loss, as many published figures do. Initially "diagonal". */
    readonly join?: Join | null;
}

/** struct muslin_binding in muslin/finishing.h. */
export interface Binding {
    /** finished */
    readonly perimeter: Length;
    /** perimeter + corners x cornerExtra + extra: wanted in one run */
    readonly length: Length;
    /** for that run */
    readonly stripsNeeded: number;
    /** to cut: stripsNeeded + spareStrips */
    readonly strips: number;
    /** stripsNeeded - 1 */
    readonly joins: number;
    /** as of joinLoss() */
    readonly lossPerJoin: Length;
    /** the run of the needed strips, without the spare ones */
    readonly joined: Length;
    /** joined - length: what is left at the last corner */
    readonly spare: Length;
    /** strips x bindingCut */
    readonly clothLength: Length;
    /** clothLength up to the step */
    readonly bought: Length;
    /** the cloth may be this much narrower before another strip is needed, down */
    readonly narrowerBy: Length;
    /** "noSlack" when nothing is spare */
    readonly warnings: readonly Warning[];
}

/** struct muslin_bias_spec in muslin/finishing.h. */
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
    /** both ends cut square: takes off w more. Initially false. */
    readonly bluntEnds?: boolean;
}

/** struct muslin_bias in muslin/finishing.h. */
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

/** struct muslin_batting_spec in muslin/finishing.h. */
export interface BattingSpec {
    /** finished. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** Initially 0. */
    readonly quiltLength?: LengthLike;
    /** beyond the quilt; quilt and margins together at most constants.SIZE_MAX each way. Initially 3 in. */
    readonly marginLeft?: LengthLike;
    /** Initially 3 in. */
    readonly marginRight?: LengthLike;
    /** Initially 3 in. */
    readonly marginTop?: LengthLike;
    /** Initially 3 in. */
    readonly marginBottom?: LengthLike;
    /** of batting sold by length, for pieces joined; 0 when not asked. Initially 0. */
    readonly rollWidth?: LengthLike;
    /** the package may not be turned. Initially false. */
    readonly fixed?: boolean;
}

/** struct muslin_batting in muslin/finishing.h. */
export interface Batting {
    /** to cut: quilt and margins */
    readonly width: Length;
    readonly length: Length;
    /** row of "batting", the smallest area that covers, the first of equals; -1 when none does */
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
    /** joinedPieces - 1 */
    readonly joinedJoins: number;
}

/** struct muslin_backing_spec in muslin/finishing.h. */
export interface BackingSpec {
    /** finished. Initially 0. */
    readonly quiltWidth?: LengthLike;
    /** Initially 0. */
    readonly quiltLength?: LengthLike;
    /** beyond the quilt; quilt and margins together at most constants.SIZE_MAX each way. Initially 4 in. */
    readonly marginLeft?: LengthLike;
    /** Initially 4 in. */
    readonly marginRight?: LengthLike;
    /** Initially 4 in. */
    readonly marginTop?: LengthLike;
    /** Initially 4 in. */
    readonly marginBottom?: LengthLike;
    /** from edge to edge of the cloth, 1 or more. Initially 40 in. */
    readonly fabricWidth?: LengthLike;
    /** cut off each edge: usable width u = fabricWidth - 2 x selvage, 1 or more. Initially 0. */
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
     * Print: a print with a direction forbids what would lie turned a quarter, that is turned panels, and inserts,
     * which are cut across the cloth. Initially "none".
     */
    readonly print?: Print | null;
    /** round each length cut up to the step, not only the total. Initially false. */
    readonly roundPanels?: boolean;
}

/** struct muslin_backing in muslin/finishing.h. */
export interface Backing {
    /** BackingLayout */
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
    /** cut length of each, with endTrim and repeat */
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
    /** one repeat more on the order, to shift the start; clothLength without a repeat */
    readonly clothWithRepeat: Length;
    /** clothWithRepeat up to the step, on the total, or length by length if asked */
    readonly bought: Length;
    /** the same under the other rounding rule */
    readonly otherRounding: Length;
    /**
     * the cloth may be this much narrower and what is bought still be enough for this layout, with as many panels and
     * strips; their widths change: plan again first
     */
    readonly narrowerBy: Length;
    /** cut width of each side panel ("centre") or of the insert ("insert"); else 0 */
    readonly stripCut: Length;
    /** "noSlack" when narrowerBy is 0 */
    readonly warnings: readonly Warning[];
}

/** struct muslin_panel in muslin/finishing.h. */
export interface Panel {
    /** PanelRole */
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

/** struct muslin_hanging_spec in muslin/finishing.h. */
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

/** struct muslin_hanging in muslin/finishing.h. */
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
    /** cornerTriangle + 2 allowances; 0 without triangles */
    readonly cornerSquareCut: Length;
}

/** struct muslin_stripquilt_spec in muslin/stripquilt.h. */
export interface StripquiltSpec {
    /** in hand. Initially 0. */
    readonly strips?: Whole;
    /** sewn side by side. Initially 6. */
    readonly stripsPerSet?: Whole;
    /** 1 .. constants.STRIPQUILT_SEGMENTS_MAX. Initially 2. */
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
    /** taken off each end, as in YieldSpec. Initially 0. */
    readonly endTrim?: LengthLike;
    /** as in YieldSpec. Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** as in YieldSpec. Initially 0. */
    readonly resquareEvery?: Whole;
    /** as in YieldSpec. Initially 0. */
    readonly foldClear?: LengthLike;
    /** Turning. Initially "quarterAlternate". */
    readonly turning?: Turning | null;
    /** Nesting. Initially "turn". */
    readonly nesting?: Nesting | null;
    /** as in SettingSpec; also for segmentCut 0. Initially 1/64 in. */
    readonly squareTolerance?: LengthLike;
    /** cut straight through from one end; the fold is not kept clear. Initially false. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_stripquilt in muslin/stripquilt.h. */
export interface Stripquilt {
    /** width of a strip set */
    readonly setUnfinished: Length;
    readonly setFinished: Length;
    /** what is seen of one strip */
    readonly stripFinished: Length;
    /** as asked, or found */
    readonly segmentCut: Length;
    /** what is seen of one segment */
    readonly segmentFinished: Length;
    /** that a set gives */
    readonly segmentsPerSet: number;
    /** of those, from each end */
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
    /** of a block, outer seams still raw */
    readonly blockUnfinishedWidth: Length;
    readonly blockUnfinishedHeight: Length;
    /** as seen in the top */
    readonly blockFinishedWidth: Length;
    readonly blockFinishedHeight: Length;
    /** columns x rows */
    readonly blocksPerTop: number;
    /** in each top */
    readonly blocksTurned: number;
    /** without borders */
    readonly topFinishedWidth: Length;
    readonly topFinishedLength: Length;
    /** outer seams still raw */
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
    /** sets x stripsPerSet */
    readonly stripsUsed: number;
    /** of those in hand */
    readonly stripsLeft: number;
    /** beyond those in hand, to make topsInHand + 1 */
    readonly stripsForOneMoreTop: number;
    /** in all planned tops */
    readonly blocks: number;
    /** used in them */
    readonly segments: number;
    /** cut but not used */
    readonly segmentsLeft: number;
    /** segments to take from each of the last stacks ... */
    readonly stackLow: number;
    /** ... and from each of the first `stacksHigh`: one more, or as many ... */
    readonly stackHigh: number;
    /** ... and then this is all the sets */
    readonly stacksHigh: number;
    /** rows of stripquiltGroups */
    readonly groups: number;
    /** end for end, in all blocks ("turn"), else 0 */
    readonly segmentsTurned: number;
    /** joins inside all blocks that do not nest ("name"), else 0 */
    readonly placesNotNesting: number;
    /** 1 when a block is square to the tick */
    readonly blockSquare: boolean;
    /** "noSlack", "nestConflict", "setRepeats", "smallQuilt" */
    readonly warnings: readonly Warning[];
}

/**
 * Blocks that are made alike: `blocks` of them, each taking one segment from each listed stack, left to right. struct
 * muslin_block_group in muslin/stripquilt.h.
 */
export interface BlockGroup {
    /** number of the group's first block, from 1 */
    readonly firstBlock: number;
    /** of them, one behind the other */
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
     * SetPressing: the way segment 0 ends up pressed, turning counted; from there the segments alternate where they
     * nest
     */
    readonly firstPressing: SetPressing;
    /** numbers of the sets, from 1; 0 behind the last */
    readonly sets: readonly number[];
}

/** struct muslin_piecing_spec in muslin/supplies.h. */
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
    /** of one edge, 0 .. constants.SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** of one seam, 0 .. constants.SIZE_MAX / 8. Initially 0. */
    readonly takeUp?: LengthLike;
}

/** struct muslin_piecing in muslin/supplies.h. */
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
    /** of the four: what threadPlan() asks for */
    readonly total: Length;
}

/**
 * bobbins are bought wound, so that spools hold the needle thread alone struct muslin_thread_spec in muslin/supplies.h.
 */
export interface ThreadSpec {
    /** to be sewn, 0 .. constants.LENGTH_MAX / 2. Initially 0. */
    readonly seam?: LengthLike;
    /** thread ..., 1 .. constants.COUNT_MAX; by the formula not used. Initially 5. */
    readonly ratioAbove?: Whole;
    /** ... for so much seam, 1 .. constants.COUNT_MAX; by the formula not used. Initially 2. */
    readonly ratioBelow?: Whole;
    /** T: all layers together, pressed flat under the foot; by the ratio not used. Initially 0. */
    readonly thickness?: LengthLike;
    /** 1 / S, 1 or more; by the ratio not used. Initially 640 ticks. */
    readonly stitchLength?: LengthLike;
    /** thread a bobbin holds, 0 .. constants.LENGTH_MAX / 2; 0: bobbins are not counted. Initially 0. */
    readonly bobbin?: LengthLike;
    /** thread on a spool, 0 .. constants.LENGTH_MAX / 2; 0: spools are not counted. Initially 0. */
    readonly spool?: LengthLike;
    /** ThreadMethod. Initially "ratio". */
    readonly method?: ThreadMethod | null;
    /** ppm on top, 0 .. 10000000. Initially 150000. */
    readonly waste?: Whole;
    /** bobbins are bought wound, so that spools hold the needle thread alone. Initially false. */
    readonly readyBobbins?: boolean;
}

/** struct muslin_thread in muslin/supplies.h. */
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
    /** for withWaste, or for the needle thread alone, up; the last bobbin is wound only as far as it is needed */
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

/** struct muslin_quilting_spec in muslin/supplies.h. */
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
    /** length of what is outlined, 0 .. constants.LENGTH_MAX / 2; used for an outline alone. Initially 0. */
    readonly outline?: LengthLike;
    /** lines along an outline: 1 in the ditch or on one side, 2 on both sides. Initially 1. */
    readonly passes?: Whole;
    /** QuiltingPattern. Initially "grid". */
    readonly pattern?: QuiltingPattern | null;
    /** QuiltingStart, of diagonals. Initially "atOffset". */
    readonly start?: QuiltingStart | null;
}

/** struct muslin_quilting in muslin/supplies.h. */
export interface Quilting {
    /** in all; for an outline the passes */
    readonly lines: number;
    /** of all lines together, up to a tick: what threadPlan() asks for */
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

/** struct muslin_weight_spec in muslin/supplies.h. */
export interface WeightSpec {
    /** of the finished quilt. Initially 0. */
    readonly width?: LengthLike;
    /** Initially 0. */
    readonly length?: LengthLike;
    /** as cut and joined, or 0. Initially 0. */
    readonly bindingLength?: LengthLike;
    /** cut width of the binding. Initially 0. */
    readonly bindingCut?: LengthLike;
    /** mg for a square metre of the top's cloth, 0 .. constants.COUNT_MAX, and so on. Initially 0. */
    readonly topDensity?: Whole;
    /** of the filler. Initially 0. */
    readonly battingDensity?: Whole;
    /** of the back. Initially 0. */
    readonly backingDensity?: Whole;
    /** of the binding's cloth. Initially 0. */
    readonly bindingDensity?: Whole;
    /** each mass is rounded to a multiple of so many mg, 1 .. constants.SIZE_MAX. Initially 1000. */
    readonly step?: Whole;
    /** ppm of cloth more that lies in the top's seams, 0 .. 10000000. Initially 0. */
    readonly seamShare?: Whole;
    /** Direction. Initially "nearest". */
    readonly direction?: Direction | null;
}

/** struct muslin_weight in muslin/supplies.h. */
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

/** One thing on a list of costs. struct muslin_cost_spec in muslin/supplies.h. */
export interface CostSpec {
    /** ticks, 0 .. constants.LENGTH_MAX / 2, as bought (see fabricPurchase()); or pieces. Initially 0. */
    readonly amount?: Whole;
    /** 0 .. constants.MONEY_MAX. Initially 0. */
    readonly price?: Whole;
    /** what the price is for: ticks, 1 .. constants.SIZE_MAX; or pieces, 1 .. constants.COUNT_MAX. Initially 1. */
    readonly per?: Whole;
    /** CostKind. Initially "pieces". */
    readonly sold?: CostKind | null;
    /** Direction, of a cost between two whole numbers; shops round to the nearest. Initially "nearest". */
    readonly direction?: Direction | null;
}

/** struct muslin_cost in muslin/supplies.h. */
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

/** opaque struct muslin_quilt_spec in muslin/quilt.h. */
export interface QuiltSpec {
    /** s: value of the quilt's seam allowance until another is given; 0 .. constants.SIZE_MAX / 8. Initially 1/4 in. */
    readonly allowance?: LengthLike;
    /** u, so; 0 .. constants.SIZE_MAX / 8. Initially 0. */
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

/** struct muslin_quilt_fabric_spec in muslin/quilt.h. */
export interface QuiltFabricSpec {
    /**
     * of the cloth, or length of a strip; 1 .. constants.SIZE_MAX; the value until another is given. Initially 40 in.
     */
    readonly usableWidth?: LengthLike;
    /** Print; a patch's cloth stands upright when its print's top is the patch's. Initially "none". */
    readonly print?: Print | null;
    /** for pressing: seams go towards the greater number; 0 .. 100, 0: not stated. Initially 0. */
    readonly darkness?: Whole;
}

/** struct muslin_quilt_sum_spec in muslin/quilt.h. */
export interface QuiltSumSpec {
    /** of the same quilt. Initially 0. */
    readonly measure?: Id;
    /** -2^20 .. 2^20. Initially 1. */
    readonly factor?: Whole;
}

/** struct muslin_quilt_patch_spec in muslin/quilt.h. */
export interface QuiltPatchSpec {
    /** of the same quilt. Initially 0. */
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

/** struct muslin_quilt_unit_spec in muslin/quilt.h. */
export interface QuiltUnitSpec {
    /** W, H and corner as the kind takes them (unit.h); 0 where it takes none. Initially 0. */
    readonly width?: Id;
    /** Initially 0. */
    readonly height?: Id;
    /** so. Initially 0. */
    readonly corner?: Id;
    /**
     * UnitKind that fills a rectangle: "halfSquare" .. "halfRectangle", "octagon", "eightPointedStar", "kaleidoscope".
     * Initially "halfSquare".
     */
    readonly kind?: UnitKind | null;
    /** UnitMethod. Initially "twoAtATime". */
    readonly method?: UnitMethod | null;
    /** Hand; "toFirst" for kinds without hands. Initially "first". */
    readonly hand?: Hand | null;
}

/**
 * the order of the pieces is labelled: no segment of it is turned end for end struct muslin_quilt_join_spec in
 * muslin/quilt.h.
 */
export interface QuiltJoinSpec {
    /** Axis. Initially "across". */
    readonly axis?: Axis | null;
    /** StripPiecing; "whereFewer": no matter unless all are patches of one length. Initially "whereFewer". */
    readonly piecing?: StripPiecing | null;
    /** SeamPress, of all its seams. Initially "free". */
    readonly press?: SeamPress | null;
    /** the order of the pieces is labelled: no segment of it is turned end for end. Initially false. */
    readonly keepsOrder?: boolean;
}

/** struct muslin_quilt_trim_spec in muslin/quilt.h. */
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

/** struct muslin_quilt_pinwheel_spec in muslin/quilt.h. */
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

/** struct muslin_quilt_set_in_spec in muslin/quilt.h. */
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

/** struct muslin_quilt_log_spec in muslin/quilt.h. */
export interface QuiltLogSpec {
    /** of the log. Initially 0. */
    readonly fabric?: Id;
    /** finished. Initially 0. */
    readonly width?: Id;
    /** Side. Initially "right". */
    readonly side?: Side | null;
}

/** struct muslin_quilt_surround_spec in muslin/quilt.h. */
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
    /** at the lower left. Initially 0. */
    readonly bottomLeft?: Id;
    /** at the lower right. Initially 0. */
    readonly bottomRight?: Id;
}

/**
 * squares where sashes cross; else sashes between rows run through struct muslin_quilt_sashed_spec in muslin/quilt.h.
 */
export interface QuiltSashedSpec {
    /** of blocks, 1 .. constants.COUNT_MAX. Initially 1. */
    readonly columns?: Whole;
    /** Initially 1. */
    readonly rows?: Whole;
    /** finished width. Initially 0. */
    readonly sash?: Id;
    /** of all sashes. Initially 0. */
    readonly sashFabric?: Id;
    /** fabric of cornerstones; 0: as the sashes; without them 0. Initially 0. */
    readonly cornerstone?: Id;
    /** sashes also round the outside, not only between the blocks. Initially false. */
    readonly frame?: boolean;
    /** squares where sashes cross; else sashes between rows run through. Initially false. */
    readonly cornerstones?: boolean;
}

/** struct muslin_quilt_diagonal_spec in muslin/quilt.h. */
export interface QuiltDiagonalSpec {
    /** c: blocks side by side, alternates not counted; 1 .. 2^15. Initially 1. */
    readonly columns?: Whole;
    /** r, so. Initially 1. */
    readonly rows?: Whole;
    /** of the setting triangles. Initially 0. */
    readonly sideFabric?: Id;
    /** of the corner triangles. Initially 0. */
    readonly cornerFabric?: Id;
    /** f: blocks float this far inside the edge; 0: they touch it. 0 in "sashCut" and "sashInner". Initially 0. */
    readonly setOff?: Id;
    /** w, finished width; 0 in "plain", in no other layout. Below B in "sashInner". Initially 0. */
    readonly sash?: Id;
    /** 0 in "plain", in no other layout. Initially 0. */
    readonly sashFabric?: Id;
    /** its fabric; 0: as the sashes; 0 in "plain". Initially 0. */
    readonly cornerstone?: Id;
    /** PointLayout. Initially "plain". */
    readonly layout?: PointLayout | null;
}

/** struct muslin_quilt_sixty_spec in muslin/quilt.h. */
export interface QuiltSixtySpec {
    /** triangles in a row, ends not counted; 1 .. 2^20. Initially 1. */
    readonly cells?: Whole;
    /** 1 .. 2^20. Initially 1. */
    readonly rows?: Whole;
    /** H, finished, of a row. Initially 0. */
    readonly height?: Id;
    /** of the half-triangles that close both ends. Initially 0. */
    readonly endFabric?: Id;
    /** SixtyFirst. Initially "onSide". */
    readonly first?: SixtyFirst | null;
}

/** struct muslin_quilt_sixty_piece_spec in muslin/quilt.h. */
export interface QuiltSixtyPieceSpec {
    /** of the piece. Initially 0. */
    readonly fabric?: Id;
    /** 1: a triangle, 2: a diamond, 3: a half-hexagon. Initially 1. */
    readonly cells?: Whole;
}

/** struct muslin_tree_measure in muslin/quilt.h. */
export interface TreeMeasure {
    /** of a fixed one; of one with a name, until another is given; else 0 */
    readonly value: Length;
    /** whose extent it is; else 0 */
    readonly node: Id;
    /** MeasureKind */
    readonly kind: MeasureKind;
    /** of an extent, Axis; else 0 */
    readonly axis: Axis | null;
    /** of a sum, what Quilt.readTerms() gives; else 0 */
    readonly terms: number;
}

/** struct muslin_node in muslin/quilt.h. */
export interface Node {
    /** nodes it is made of: what Quilt.children() gives */
    readonly children: number;
    /** 1 for a leaf */
    readonly depth: number;
    /** NodeKind */
    readonly kind: NodeKind;
    /** of a join, Axis; else 0 */
    readonly axis: Axis | null;
    /** of a turn: first mirrored, where it is, then turned clockwise by so many */
    readonly quarterTurns: number;
    /** 1 when it is the mirror image */
    readonly mirrored: boolean;
}

/** struct muslin_part_counts in muslin/quilt.h. */
export interface PartCounts {
    /** made so far */
    readonly fabrics: number;
    /** so, the seam allowance and take-up among them */
    readonly measures: number;
    /** different ones */
    readonly nodes: number;
    /** that the quilt holds from its allocator */
    readonly bytes: number;
}

/** struct muslin_solution_spec in muslin/solution.h. */
export interface SolutionSpec {
    /** how many of the root are made; 1 .. constants.COUNT_MAX. Initially 1. */
    readonly tops?: Whole;
    /** edges that differ by no more are eased, not misfits; 0 .. constants.SIZE_MAX. Initially 0. */
    readonly ease?: LengthLike;
    /** pieces cut again on the diagonal are rounded to it; 1 .. constants.UNIT_SIZE_MAX. Initially 1/8 in. */
    readonly grid?: LengthLike;
    /** below grid. Initially 0. */
    readonly gridTolerance?: LengthLike;
    /** as in UnitSpec; 0: its usual ones. Initially 0. */
    readonly halfAddition?: LengthLike;
    /** so. Initially 0. */
    readonly quarterAddition?: LengthLike;
    /** "oversize": room to trim units and setting triangles. Initially 0. */
    readonly trimRoom?: LengthLike;
    /** strip sets: taken off each end, as in YieldSpec. Initially 0. */
    readonly endTrim?: LengthLike;
    /** as in YieldSpec. Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** as in YieldSpec. Initially 0. */
    readonly resquareEvery?: Whole;
    /** must be 0 with fromOneEnd. Initially 0. */
    readonly foldClear?: LengthLike;
    /** AllowancePolicy. Initially "exact". */
    readonly policy?: AllowancePolicy | null;
    /** Tip. Initially "blunt". */
    readonly tip?: Tip | null;
    /** Direction, of cut sizes that are rounded. Initially "up". */
    readonly direction?: Direction | null;
    /** StripPiecing, of joins that say "whereFewer": that, or "never". Initially "whereFewer". */
    readonly stripPiecing?: StripPiecing | null;
    /** cut straight through from one end; the fold is not kept clear. Initially true. */
    readonly fromOneEnd?: boolean;
}

/** struct muslin_solution_value_spec in muslin/solution.h. */
export interface SolutionValueSpec {
    /**
     * a named measure, the quilt's allowance or take-up, or a fabric, whose usable width it is; a fixed length, a sum
     * or an extent cannot be given one: MuslinForeignError. Initially 0.
     */
    readonly id?: Id;
    /** in the range of what it stands for. Initially 0. */
    readonly value?: LengthLike;
}

/** struct muslin_node_size in muslin/solution.h. */
export interface NodeSize {
    /** as seen */
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
    /** ... half ... */
    readonly half: number;
    /** parts of a diagonal field count as in its own frame */
    readonly threeQuarter: number;
    /** in one of it */
    readonly patches: number;
    /** seams whose errors add up in its width: of pieces side by side all count, of rows the one with most */
    readonly seamsAcross: number;
    /** so in its height: rows all count, each with its highest pile of seams */
    readonly seamsDown: number;
    /** NodeKind */
    readonly kind: NodeKind;
    /** 1 when its size was not rounded; inside, corners may be */
    readonly exact: boolean;
}

/** struct muslin_solution_total in muslin/solution.h. */
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
    /** rows of Solution.misfits() that are no ease, ... */
    readonly misfits: number;
    /** ... and that are */
    readonly eased: number;
    /** rows of Solution.cuts() */
    readonly cuts: number;
    /** rows of Solution.stripsets() */
    readonly stripsets: number;
    /** all that the rows of cuts, and of strip sets that are used, carry */
    readonly warnings: readonly Warning[];
    /** 1 when nothing in it was rounded */
    readonly exact: boolean;
}

/** struct muslin_misfit in muslin/solution.h. */
export interface Misfit {
    /** in which they meet */
    readonly node: Id;
    /** child of it, counted from 0; strips of a set-in: Side; -1: a setting triangle or a sash on point */
    readonly first: number;
    readonly second: number;
    /** finished length of its edge; of "allowance" its allowance, -1 where mixed */
    readonly firstSize: Length;
    readonly secondSize: Length;
    /** first less second; 0 where one is mixed */
    readonly difference: Length;
    /**
     * seams to stretch or gather over: pieces along the edge that gives way, the one with more of them; of "allowance"
     * 0
     */
    readonly pieces: number;
    /** what each of them takes up: the difference over pieces, up to a tick; else 0 */
    readonly easeEach: Length;
    /** how often it happens in all tops */
    readonly count: number;
    /** MisfitKind */
    readonly kind: MisfitKind;
}

/** struct muslin_solution_cut in muslin/solution.h. */
export interface SolutionCut {
    /** it is cut from */
    readonly fabric: Id;
    /** the first node that needs it; Solution.cutNodes() has all */
    readonly firstNode: Id;
    /**
     * as in UnitPiece: across as the patch lies when upright; of a fabric without direction the longer side of a
     * rectangle that is not cut again. "setStrip": the usable width
     */
    readonly cutWidth: Length;
    /** ... and along the print */
    readonly cutHeight: Length;
    /** of shapes cut from a strip; else 0 */
    readonly pitch: Length;
    /** so */
    readonly wideEdge: Length;
    /** so */
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
    /** of those, turned by one quarter ... */
    readonly quarter: number;
    /** ... by two ... */
    readonly half: number;
    /** ... by three */
    readonly threeQuarter: number;
    /**
     * pieces needed whose print lies as the method brings it: of units all but rectangles to which corners are sewn and
     * octagons; setting triangles; 60 degree pieces
     */
    readonly scattered: number;
    /** CutSource */
    readonly source: CutSource;
    /** CutShape */
    readonly shape: CutShape;
    /** CutAgain */
    readonly again: CutAgain;
    /** pieces from each: pieces = count x gives */
    readonly gives: number;
    /** Grain */
    readonly grain: Grain;
    /**
     * Hand; of a sash cut off at the edge "first" when the slanted end, seen upwards from the square one, rises to the
     * right
     */
    readonly hand: Hand;
    /** degrees, as in UnitPiece */
    readonly angle: number;
    /** of a unit; piece number, from 1, of a shape; of a mitred strip whose ends differ its side; else 0 */
    readonly region: number;
    /**
     * "printTurned": a fabric with a direction lies turned in some places, or, scattered, may lie so.
     * "longerThanWidth": cutWidth, of a rectangle of a fabric without direction the longer side, passes the fabric's
     * usable width; "belowExact": a surplus is below 0; "biasEdge": of a unit whose outer edges lie on the bias, or a
     * sash that the edge of a field on point cuts off at 45 degrees: there the edge stretches
     */
    readonly warnings: readonly Warning[];
}

/** struct muslin_stripset in muslin/solution.h. */
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
    /** that a set gives */
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
     * 1 when the cut list and the sewing plan take it. "whereFewer": it takes fewer cuts, at least half of its segments
     * are needed, and no print would show that it lies turned in strips
     */
    readonly used: boolean;
    /** 1 when a segment turned end for end looks the same and its order need not stay */
    readonly turns: boolean;
    /** "noSlack", "mixedWidths"; "printTurned": in strips a print lies otherwise than in patches cut by themselves */
    readonly warnings: readonly Warning[];
}

/** struct muslin_term in muslin/solution.h. */
export interface Term {
    /** measure or node; 0 where the kind names none */
    readonly id: Id;
    /** what it is multiplied by */
    readonly times: number;
    /** the whole term: what it adds to the sum */
    readonly value: Length;
    /** up to and with it */
    readonly sum: Length;
    /** TermKind */
    readonly kind: TermKind;
    /** 1: the sum is the finished size up to here; 0: the unfinished one, cut of a patch */
    readonly finished: boolean;
}

/** struct muslin_outline in muslin/solution.h. */
export interface Outline {
    /** the leaf (or diagonal field, 60 degree rows, set-in) that it belongs to */
    readonly node: Id;
    /** of the patch */
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

/** struct muslin_outline_corner in muslin/solution.h. */
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

/** struct muslin_pressing_spec in muslin/pressing.h. */
export interface PressingSpec {
    /** steps of the search, 0 .. 2^40; when it runs out the best plan so far stands. Initially 20000000. */
    readonly workLimit?: Whole;
    /** Prefer. Initially "darker". */
    readonly prefer?: Prefer | null;
    /**
     * 1: the seams of units are pressed as their recipes say, in every copy; 0: so they are preferred, where their
     * fabrics do not say which is darker, and give way to nesting. Initially false.
     */
    readonly units?: boolean;
}

/** struct muslin_pressing_total in muslin/pressing.h. */
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
    /** of otherWay, copies that are turned and not pressed the other way */
    readonly copiesTurned: number;
}

/** struct muslin_pressing_seam in muslin/pressing.h. */
export interface PressingSeam {
    /** whose seam it is */
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
    /** its other end */
    readonly toX: Length;
    /** its other end */
    readonly toY: Length;
    /** Press, in the node as it was made */
    readonly press: Press;
    /** Towards */
    readonly towards: Towards;
    /** OtherWay */
    readonly other: OtherWay;
    /** Preferred */
    readonly preferred: Preferred;
    /** "turned": quarter turns of the copies the other way; else 0 */
    readonly turn: number;
}

/** struct muslin_pressing_child in muslin/pressing.h. */
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
     * child, also where otherWay is 0: what the node is part of may be the other way, and then this place, too. By
     * itself it says nothing of this place
     */
    readonly turn: number;
}

/** struct muslin_pressing_exception in muslin/pressing.h. */
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
    /** its number in firstNode */
    readonly firstSeam: number;
    /** and the other */
    readonly secondNode: Id;
    /** its number in secondNode */
    readonly secondSeam: number;
    /** in all tops */
    readonly count: number;
}

/** struct muslin_sewing_step in muslin/sewing.h. */
export interface SewingStep {
    /** what is made */
    readonly node: Id;
    /** number of the stack it makes, from 0, for sewingLabel(); a step of cutting takes that of its set */
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
    /** steps that it needs: sewingFeeds() */
    readonly feeds: number;
    /** SewingKind */
    readonly kind: SewingKind;
    /** 1 when more than one is sewn */
    readonly chain: boolean;
}

/** struct muslin_sewing_feed in muslin/sewing.h. */
export interface SewingFeed {
    /** what is used */
    readonly node: Id;
    /** the step that makes it; -1: it is cut as it is */
    readonly step: number;
    /** how many go into one */
    readonly each: number;
}

/** struct muslin_sewing_total in muslin/sewing.h. */
export interface SewingTotal {
    /** rows of sewingSteps() */
    readonly steps: number;
    /** in all tops */
    readonly seams: number;
    /** all seams: what threadPlan() asks for */
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
    /** its height, so */
    readonly heightWorst: Length;
    readonly heightLikely: Length;
}

/** struct muslin_scatter_spec in muslin/scatter.h. */
export interface ScatterSpec {
    /** to be filled, 1 .. 2^24. Initially 0. */
    readonly places?: Whole;
    /** any number. Initially 1. */
    readonly seed?: Whole;
    /** steps of the search, 0 .. 2^40; a step looks at a touch. 0: filled once, not bettered. Initially 10000000. */
    readonly workLimit?: Whole;
}

/** struct muslin_touch_spec in muslin/scatter.h. */
export interface TouchSpec {
    /** places that touch, each 0 .. places - 1, and not the same. Initially 0. */
    readonly first?: Whole;
    /** Initially 0. */
    readonly second?: Whole;
    /** how much it matters when they are equal; 1 .. 2^20. Initially 1. */
    readonly weight?: Whole;
}

/** struct muslin_scattered in muslin/scatter.h. */
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

/** struct muslin_scatter_blocks_spec in muslin/scatter.h. */
export interface ScatterBlocksSpec {
    /** 1 .. 2^12. Initially 1. */
    readonly columns?: Whole;
    /** 1 .. 2^12. Initially 1. */
    readonly rows?: Whole;
    /** as in ScatterSpec. Initially 1. */
    readonly seed?: Whole;
    /** so. Initially 10000000. */
    readonly workLimit?: Whole;
}

/**
 * A kind of block, by the print that shows at each of its edges; -1: none that matters. struct muslin_edge_prints_spec
 * in muslin/scatter.h.
 */
export interface EdgePrintsSpec {
    /** how many there are, 0 .. constants.COUNT_MAX. Initially 1. */
    readonly count?: Whole;
    /** prints, -1 .. constants.COUNT_MAX. Initially -1. */
    readonly top?: Whole;
    /** Initially -1. */
    readonly right?: Whole;
    /** Initially -1. */
    readonly bottom?: Whole;
    /** Initially -1. */
    readonly left?: Whole;
    /** the block may be turned by a half. Initially false. */
    readonly turnsHalf?: boolean;
    /** ... by quarters. Initially false. */
    readonly turnsQuarter?: boolean;
}

/** struct muslin_placed_block in muslin/scatter.h. */
export interface PlacedBlock {
    /** row of the blocks given */
    readonly kind: number;
    /** clockwise */
    readonly quarterTurns: number;
}

/**
 * these pieces may lie turned a quarter where the cloth has no direction struct muslin_blank_spec in muslin/cutplan.h.
 */
export interface BlankSpec {
    /** across the cloth, 1 or more; "sloped": the pitch; "joined": the length in all, of each. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** along it, 1 or more: the height of strip that it needs. Initially 0. */
    readonly cutLength?: LengthLike;
    /** 0 .. constants.CUTPLAN_COUNT_MAX; 0 asks for nothing and is never too large. Initially 1. */
    readonly count?: Whole;
    /** "sloped": taken once in a strip besides; else 0. Initially 0. */
    readonly runIn?: LengthLike;
    /**
     * "joined": what each join takes of the length, 2 s when straight; below the length of a whole strip; else 0.
     * Initially 0.
     */
    readonly joinLoss?: LengthLike;
    /** the caller's own, given back; it does not matter to the plan. Initially 0. */
    readonly label?: Whole;
    /** BlankKind. Initially "piece". */
    readonly kind?: BlankKind | null;
    /** with byPriority: lower ones first; 0 .. 1000. Initially 0. */
    readonly priority?: Whole;
    /**
     * "joined": strips of it may come from what is left over beside others, each at least this long; 0: only whole
     * strips and one shorter one; else 0. Many sewers take 10 to 12 in. Initially 0.
     */
    readonly leastPart?: LengthLike;
    /** these pieces may lie turned a quarter where the cloth has no direction. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_cutplan_stock_spec in muslin/cutplan.h. */
export interface CutplanStockSpec {
    /** usable, across the cloth, 1 or more. Initially 21 in. */
    readonly width?: LengthLike;
    /** along it, 1 or more. Initially 18 in. */
    readonly length?: LengthLike;
    /** how many there are; constants.COUNT_MAX: any number. Initially 2147483647. */
    readonly count?: Whole;
    /** of each, in any unit, 1 .. constants.COUNT_MAX: money, area, or 1 to use the fewest. Initially 1. */
    readonly cost?: Whole;
    /** the caller's own, given back. Initially 0. */
    readonly label?: Whole;
}

/**
 * from stock: what it does not suffice for is left out: rows in turn, by priority, then from the highest pieces down,
 * each get as many pieces as a plan is found for beside the rows before; what a large piece leaves, later ones may
 * still use struct muslin_cutplan_spec in muslin/cutplan.h.
 */
export interface CutplanSpec {
    /** of the bolt, without selvages, 1 or more; with stock 0. Initially 40 in. */
    readonly usableWidth?: LengthLike;
    /**
     * taken off each strip for squaring its ends: half at its left end, down, the rest at its right one. Initially 0.
     */
    readonly endLoss?: LengthLike;
    /**
     * a strip's cut end is squared again after resquareEvery cuts, and loses this: spread over those cuts, each piece
     * takes resquareLoss / resquareEvery more, up; strips of "joined" pieces are not cross-cut and take no more.
     * Initially 0.
     */
    readonly resquareLoss?: LengthLike;
    /** 1 or more with a loss, else 0. Initially 0. */
    readonly resquareEvery?: Whole;
    /** taken off the bolt, or the length of each piece of stock, once. Initially 0. */
    readonly straightening?: LengthLike;
    /** more pieces of each size than all rows of it want; none of "joined" ones. Initially 0. */
    readonly sparePieces?: Whole;
    /**
     * steps of the search, 0 .. 2^40; a desk computer takes 200 to 300 million a second. 0: only first plans. Initially
     * 400000000.
     */
    readonly workLimit?: Whole;
    /** Print: with a direction no piece is turned. Initially "none". */
    readonly print?: Print | null;
    /** lengthwise pieces get strips as high as they are long, side by side. Initially false. */
    readonly noPanels?: boolean;
    /** a strip holds only pieces of just its height: nothing is trimmed. Initially false. */
    readonly oneHeight?: boolean;
    /**
     * a strip holds only pieces of one size, as most books have it; what is slit from one panel may be of several.
     * Initially false.
     */
    readonly ownStrips?: boolean;
    /** a blank may be cut again into a stack of pieces of one width. Initially false. */
    readonly stacked?: boolean;
    /** stock is cut across its width first; else whichever way is best. Initially false. */
    readonly firstCutAcross?: boolean;
    /**
     * a bolt cut in two layers, folded lengthwise: each blank gives two pieces, so of a size one may be too many; rows
     * that want one size share blanks; whole strips of "joined" pieces go round the fold. Initially false.
     */
    readonly folded?: boolean;
    /**
     * from stock: what it does not suffice for is left out: rows in turn, by priority, then from the highest pieces
     * down, each get as many pieces as a plan is found for beside the rows before; what a large piece leaves, later
     * ones may still use. Initially false.
     */
    readonly byPriority?: boolean;
}

/** struct muslin_cutplan_total in muslin/cutplan.h. */
export interface CutplanTotal {
    /**
     * cut in all, those wanted and those spare; of "joined" each strip counts; of folded cloth one that is too many,
     * too
     */
    readonly pieces: number;
    /** with byPriority: pieces left out */
    readonly missing: number;
    /** cut right across, panels among them, those within panels and stock too */
    readonly strips: number;
    /** of those, panels */
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
    /** the bound: no plan of this kind costs less, "joined" pieces being cut in the lengths of Cutplan.sizes() */
    readonly least: bigint;
    /** pieces of stock that are cut into; 0 from a bolt */
    readonly stockPieces: number;
    /**
     * doubled square ticks of the cloth that is used up or cut into that become no piece: trims, losses and what is
     * left over; spare pieces, one too many and what joins take of "joined" strips count as pieces
     */
    readonly waste: bigint;
    /**
     * of a bolt: when each size has its own strips, all its pieces lying alike, the way that takes less; "joined" ones
     * in whole strips and one shorter one; straightening included; else 0
     */
    readonly ownStripsLength: Length;
    /**
     * of a bolt: the pieces' area over its width, up: a plain bound, whatever the lengths of "joined" strips; else 0
     */
    readonly areaBound: Length;
    /** steps taken */
    readonly work: number;
    /** of the proof */
    readonly cases: number;
    /** 1 when cost = least */
    readonly proven: boolean;
    /** CutplanStopped */
    readonly stopped: CutplanStopped;
    /**
     * 1: strips of "joined" pieces might have other lengths, with which a plan might cost less than least: some have a
     * leastPart that is heeded
     */
    readonly otherLengths: boolean;
}

/** struct muslin_cutplan_strip in muslin/cutplan.h. */
export interface CutplanStrip {
    /** so many alike, one behind the other; of "slit" and "within": in each of its holder */
    readonly times: number;
    /** "slit" and "within": the row of the panel or piece of stock; else -1 */
    readonly holder: number;
    /** "stock": the row of the request; else -1 */
    readonly stock: number;
    /** its pieces: rows of Cutplan.places() */
    readonly firstPlace: number;
    /** how many */
    readonly places: number;
    /**
     * lower left corner of the first: from the left selvage (folded: that of both layers) or the holder's left edge,
     */
    readonly x: Length;
    /** and from the straightened end of the bolt or the holder's lower edge; "stock": 0 */
    readonly y: Length;
    /**
     * along the strip, before endLoss: of a bolt, of its half when folded, of the stock; "slit": up to the last slit;
     * beside it what is left
     */
    readonly width: Length;
    /** how far along the cloth it goes */
    readonly height: Length;
    /** of the width, by its pieces */
    readonly used: Length;
    /** CutplanStripKind */
    readonly kind: CutplanStripKind;
    /**
     * 1 when first cuts run along the length of this piece of stock: its width here is its length, less straightening,
     * and its height is its width
     */
    readonly turned: boolean;
}

/** struct muslin_cutplan_place in muslin/cutplan.h. */
export interface CutplanPlace {
    /**
     * row of the request; of folded cloth that of the upper piece: where the row wants only one more, the lower one is
     * for the next row of this size
     */
    readonly piece: number;
    /** row of Cutplan.strips() */
    readonly strip: number;
    /** so many side by side; folded: in each layer */
    readonly count: number;
    /** left edge of the first, from the strip's left end: of the first place half of endLoss, 0 beside slit pieces */
    readonly x: Length;
    /** lower edge, from the strip's: 0, or what lies below in a stack */
    readonly y: Length;
    /**
     * cut, as it lies; "sloped": from its left corner to its right one, run-in and pitch; "joined" and folded: that of
     * the strip, which may go round the fold
     */
    readonly width: Length;
    readonly height: Length;
    /** from one to the next: the width, of "sloped" pieces the pitch, and the squaring share */
    readonly pitch: Length;
    /** 1: turned a quarter in its strip from what its row says */
    readonly turned: boolean;
    /** 1: the strip is higher, one more cut */
    readonly trimmed: boolean;
}

/** struct muslin_cutplan_blank in muslin/cutplan.h. */
export interface CutplanBlank {
    /** row of the request */
    readonly piece: number;
    /** row of Cutplan.places() */
    readonly place: number;
    /** row of Cutplan.strips() */
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
     * across the bolt or piece of stock; "sloped": from its left corner to its right one, so that neighbours overlap;
     * "joined" and folded: unfolded, it may go round the fold
     */
    readonly width: Length;
    readonly height: Length;
    /** 1: turned a quarter from what its row says */
    readonly turned: boolean;
    /** 1: its strip is higher */
    readonly trimmed: boolean;
    /** 2: folded, one in each layer; else 1 */
    readonly layers: number;
}

/** struct muslin_cutplan_left_over in muslin/cutplan.h. */
export interface CutplanLeftOver {
    /**
     * row of Cutplan.strips(): the strip that it is the end of, the panel or piece of stock that it is the rest of, the
     * slit pieces that it lies above
     */
    readonly strip: number;
    /** so many alike */
    readonly count: number;
    /** its lower left corner, from that row's */
    readonly x: Length;
    readonly y: Length;
    /** without endLoss; at the fold of folded cloth unfolded, twice as wide */
    readonly width: Length;
    readonly height: Length;
}

/** struct muslin_cutplan_piece in muslin/cutplan.h. */
export interface CutplanPiece {
    /** the row's own */
    readonly label: number;
    /** of its count */
    readonly made: number;
    /** the rest of it: 0, but with byPriority */
    readonly missing: number;
    /**
     * for it, made or more: with the spare pieces, and of folded cloth the one too many, of its size where it is the
     * last row that gets some; of "joined" strips
     */
    readonly cut: number;
}

/** struct muslin_cutplan_stock_used in muslin/cutplan.h. */
export interface CutplanStockUsed {
    /** the row's own */
    readonly label: number;
    /** pieces of stock that are cut into */
    readonly used: number;
    /** of those */
    readonly cost: bigint;
}

/** struct muslin_cutplan_width in muslin/cutplan.h. */
export interface CutplanWidth {
    /** of the cloth */
    readonly usableWidth: Length;
    /** straightening included; 0 where a piece does not fit */
    readonly clothLength: Length;
    /** bound, without straightening */
    readonly least: bigint;
    /** 1 when the length without straightening is the bound */
    readonly proven: boolean;
}

/** struct muslin_cutplan_size in muslin/cutplan.h. */
export interface CutplanSize {
    /** the first row of the request that wants it */
    readonly piece: number;
    /**
     * wanted, spare ones included, of all rows alike; folded: blanks, of two pieces each, or of one where it goes round
     * the fold
     */
    readonly count: number;
    /**
     * of a strip: cut width and the squaring share; "sloped": the pitch. What may lie turned is given with its longer
     * side across
     */
    readonly taken: Length;
    /** of strip that it needs */
    readonly height: Length;
    /** as in BlankSpec */
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

/** struct muslin_cutplan_way in muslin/cutplan.h. */
export interface CutplanWay {
    /** height of a strip, length of a panel, or cost of the stock */
    readonly cost: bigint;
    /** row of the request, -1: from the bolt */
    readonly stock: number;
    /** room along each strip, down to what sizes can add up to */
    readonly width: Length;
    /** of the strip; of a panel or piece of stock room for strips */
    readonly height: Length;
    /** CutplanStripKind: "strip", "panel" or "stock" */
    readonly kind: CutplanStripKind;
    /** 1 when first cuts run along the length of the stock */
    readonly turned: boolean;
}

/** struct muslin_cutplan_case in muslin/cutplan.h. */
export interface CutplanCase {
    /** row of the case of which this is a part; -1: the whole */
    readonly parent: number;
    /** rows split and split + 1 are its parts; 0: it is not split */
    readonly split: number;
    /** row whose worths prove its bound: itself, or one that it is a part of */
    readonly worths: number;
    /** bound of this case by those, before its parts are looked at */
    readonly least: bigint;
    /** what sets this case apart (not of the whole): `wanted` of the ways firstWay .. lastWay */
    readonly wanted: number;
    /** rows of Cutplan.ways() */
    readonly firstWay: number;
    /** ... up to and with this one */
    readonly lastWay: number;
    /** -1: so many strips, panels or pieces of stock; else so many of this size in them, and firstWay = lastWay */
    readonly planSize: number;
    /**
     * -1, or a way that is one strip: nothing is of this case, because the conditions on the way to it ask for more
     * pieces than fit into as many strips of this way as they allow
     */
    readonly packedWay: number;
    /** 1: at least `wanted`, 0: at most */
    readonly atLeast: boolean;
}

/** struct muslin_cutplan_worth in muslin/cutplan.h. */
export interface CutplanWorth {
    /** the size of which each piece is worth it, -1: not a size */
    readonly planSize: number;
    /** ... else the case whose condition is, for each of what it counts; -1: not a case */
    readonly ofCase: number;
    /** ... else the row of stock: each piece used costs so much more, worth being 0 or less */
    readonly stock: number;
    /** over scale, of the cost; 0 or more of sizes and atLeast, 0 or less of at most */
    readonly worth: bigint;
}

/** struct muslin_cutplan_checked in muslin/cutplan.h. */
export interface CutplanChecked {
    /** of the plan, added up anew */
    readonly cost: bigint;
    /** the bound, proved anew */
    readonly least: bigint;
    /** cases looked at */
    readonly cases: number;
    /** CutplanFault: what is wrong first */
    readonly fault: CutplanFault;
    /**
     * the row of sizes, of stock or of cases that is at fault; "overfull", "tooHigh", "cost": which of the strips,
     * pieces laid or things as the search noted them
     */
    readonly at: number;
}

/** struct muslin_yardage_spec in muslin/yardage.h. */
export interface YardageSpec {
    /** these six as in CutplanSpec, of each fabric. Initially 0. */
    readonly endLoss?: LengthLike;
    /** so. Initially 0. */
    readonly resquareLoss?: LengthLike;
    /** so. Initially 0. */
    readonly resquareEvery?: Whole;
    /** so. Initially 0. */
    readonly straightening?: LengthLike;
    /** so. Initially 0. */
    readonly sparePieces?: Whole;
    /** of each fabric. Initially 400000000. */
    readonly workLimit?: Whole;
    /** of pieces that are joined here, as in BlankSpec. Initially 1/2 in. */
    readonly joinLoss?: LengthLike;
    /** these four as in PurchaseSpec, of each fabric. Initially 0. */
    readonly extra?: LengthLike;
    /** so. Initially 4 1/2 in. */
    readonly step?: LengthLike;
    /** so. Initially 0. */
    readonly shrinkage?: Whole;
    /** so. Initially 0. */
    readonly extraShare?: Whole;
    /** LongPieces: what is longer than its fabric is wide. Initially "lengthwise". */
    readonly longPieces?: LongPieces | null;
    /** as joinLoss. Initially 0. */
    readonly leastPart?: LengthLike;
    /** added to the longer side of each mitred strip, for handling; 0 .. constants.SIZE_MAX. Initially 0. */
    readonly mitreExtra?: LengthLike;
    /** lengthwise pieces get strips as high as they are long, side by side. Initially false. */
    readonly noPanels?: boolean;
    /** a strip holds only pieces of just its height: nothing is trimmed. Initially false. */
    readonly oneHeight?: boolean;
    /**
     * a strip holds only pieces of one size, as most books have it; what is slit from one panel may be of several.
     * Initially false.
     */
    readonly ownStrips?: boolean;
    /** a blank may be cut again into a stack of pieces of one width. Initially false. */
    readonly stacked?: boolean;
    /**
     * a bolt cut in two layers, folded lengthwise: each blank gives two pieces, so of a size one may be too many; rows
     * that want one size share blanks; whole strips of "joined" pieces go round the fold. Initially false.
     */
    readonly folded?: boolean;
}

/**
 * What is cut besides from a fabric of the quilt: a row of a request, for one of its fabrics. struct
 * muslin_extra_cut_spec in muslin/yardage.h.
 */
export interface ExtraCutSpec {
    /** of the quilt, whether its top uses it or not. Initially 0. */
    readonly fabric?: Id;
    /** these and what follows as in BlankSpec. Initially 0. */
    readonly cutWidth?: LengthLike;
    /** Initially 0. */
    readonly cutLength?: LengthLike;
    /** so. Initially 1. */
    readonly count?: Whole;
    /** so. Initially 0. */
    readonly runIn?: LengthLike;
    /** so. Initially 0. */
    readonly joinLoss?: LengthLike;
    /** BlankKind. Initially "piece". */
    readonly kind?: BlankKind | null;
    /** so. Initially 0. */
    readonly leastPart?: LengthLike;
    /** these pieces may lie turned a quarter where the cloth has no direction. Initially false. */
    readonly mayTurn?: boolean;
}

/** struct muslin_fabric_yardage in muslin/yardage.h. */
export interface FabricYardage {
    /** of the quilt */
    readonly fabric: Id;
    /** of its cloth */
    readonly usableWidth: Length;
    /** cut, extra cuts and spare ones among them */
    readonly pieces: number;
    /** of the plan, straightening included: what is needed */
    readonly clothLength: Length;
    /** no plan of two stages needs less, straightening included */
    readonly least: Length;
    /** when each size has its own strips */
    readonly ownStripsLength: Length;
    /** before it shrinks and with what is added, as in Purchase */
    readonly withExtra: Length;
    /** up to the step */
    readonly bought: Length;
    /** bought - withExtra */
    readonly spare: Length;
    /** at which the plan can still be cut as it is */
    readonly narrowestWidth: Length;
    /** 1: clothLength is the least */
    readonly proven: boolean;
    /** 1: some pieces lie turned a quarter from the request */
    readonly turned: boolean;
}

/** struct muslin_quilt in muslin/quilt.h. */
export interface Quilt extends Handle {
    /** Since 1.0. muslin_quilt_fabric() in muslin/quilt.h. Since 1.0. */
    fabric(name: string, spec?: QuiltFabricSpec): Id;
    /**
     * A new measure with a name (as of a fabric) and the value it has until another is given, 0 .. constants.SIZE_MAX.
     * Every call makes another measure, whatever its name and value. Since 1.0. muslin_quilt_measure() in
     * muslin/quilt.h. Since 1.0.
     */
    measure(name: string, value: LengthLike): Id;
    /**
     * A length that no size of the design changes, 0 .. constants.SIZE_MAX; equal ones are one measure. Example: 1/2 in
     * of trimming room. Since 1.0. muslin_quilt_fixed() in muslin/quilt.h. Since 1.0.
     */
    fixed(value: LengthLike): Id;
    /**
     * The sum of factor x measure over n terms (1 .. 64). When it is solved it must lie in 0 .. constants.SIZE_MAX.
     * Example: a block three strips across is 3 x strip. Since 1.0. muslin_quilt_sum() in muslin/quilt.h. Since 1.0.
     */
    sum(terms: readonly QuiltSumSpec[]): Id;
    /**
     * The finished width or height of a node, as a measure: a sash as long as its block, a border as long as the top.
     * Since 1.0. muslin_quilt_extent() in muslin/quilt.h. Since 1.0.
     */
    extent(node: Id, axis: Axis): Id;
    /**
     * The quilt's seam allowance and its take-up, as measures: give them values when solving. Either output may be left
     * out. Since 1.0. muslin_quilt_seam() in muslin/quilt.h. Since 1.0.
     */
    seam(): { readonly allowance: Id; readonly takeUp: Id };
    /**
     * The name of a fabric or a measure, terminated; measures made without one have none (""). Since 1.0.
     * muslin_quilt_name() in muslin/quilt.h. Since 1.0.
     */
    name(id: Id): string;
    /**
     * One rectangle of one fabric. Example: 2 x 2 in finished is cut 2 1/2 x 2 1/2 in with 1/4 in seams. Since 1.0.
     * muslin_quilt_patch() in muslin/quilt.h. Since 1.0.
     */
    patch(spec?: QuiltPatchSpec): Id;
    /**
     * A pieced unit by its recipe, with a fabric for each of its regions (n is their number, 2 or 3), drawn as
     * unitOutlines() draws it and sewn with the quilt's seam. Where its pieces come together in the middle, two halves
     * are joined by one seam straight through it: of a quarter-square from the lower right to the upper left, of a
     * split quarter along the large triangle, of an eight-pointed star upright, of a kaleidoscope from the right one of
     * the two points below to the left one above. MuslinMethodError: the kind is not made so. MuslinRangeError: another
     * number of fabrics, or a measure that the kind does not take. Whether its sizes suit the kind is known when it is
     * solved. Example: a half-square, blue below its rising seam and white above. Since 1.0. muslin_quilt_unit() in
     * muslin/quilt.h. Since 1.0.
     * @throws {MuslinMethodError}
     * @throws {MuslinRangeError}
     */
    unit(fabrics: WholeNumbers, spec?: QuiltUnitSpec): Id;
    /**
     * A unit of the caller's own, drawn as shape.h says, outline first, with straight edges and an outline that is an
     * upright rectangle from (0, 0); `fabrics` has one for each piece. Allowances and tips of the corners are not
     * looked at: the quilt's seam is used, and raw points are sharp. Its size is the outline's, times width / outline
     * width and height / outline height, each corner to the nearest tick; `width` or `height` 0: as drawn. Statuses
     * also as of shapeCheck(), which is asked first. MuslinShapeError also for arcs and an outline that is no
     * rectangle. MuslinRangeError also for a piece of more than constants.QUILT_CORNERS_MAX corners, and for other than
     * `pieces` pieces. Solving fails with MuslinShapeError where it becomes so small that neighbouring corners of a
     * piece fall together, and with MuslinOverflowError where a raw point would reach more than
     * constants.TEMPLATE_REACH_MAX beyond its finished one. Time as of shapeCheck(). Example: a square with one corner
     * cut off on the slant. Since 1.0. muslin_quilt_shape() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinShapeError}
     * @throws {MuslinRangeError}
     * @throws {MuslinOverflowError}
     */
    shape(corners: readonly CornerSpec[], fabrics: WholeNumbers, width: Id, height: Id): Id;
    /**
     * n nodes (1 or more) sewn edge to edge in their order; one alone is itself. Whether their edges meet is told when
     * it is solved. MuslinRangeError for "depth" beyond constants.QUILT_DEPTH_MAX. Example: three patches side by side.
     * Since 1.0. muslin_quilt_join() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    join(children: WholeNumbers, spec?: QuiltJoinSpec): Id;
    /**
     * Columns x rows nodes, given row by row from the top: each row joined across, then the rows joined down. 1 ..
     * constants.COUNT_MAX each; n is their product. Example: a straight setting of unlike blocks. Since 1.0.
     * muslin_quilt_grid() in muslin/quilt.h. Since 1.0.
     */
    grid(columns: Whole, rows: Whole, children: WholeNumbers): Id;
    /**
     * One node columns x rows times, turned by a pattern that repeats: turns[(row % patternRows) x patternColumns +
     * column % patternColumns] quarter turns, each 0 .. 3. n is patternColumns x patternRows; rows are made once each
     * and shared. Columns and rows 1 .. 2^20. Example: the pattern 0 1 / 1 0 turns every other block, like a
     * chessboard. Since 1.0. muslin_quilt_repeat() in muslin/quilt.h. Since 1.0.
     */
    repeat(node: Id, columns: Whole, rows: Whole, turns: WholeNumbers, patternColumns: Whole, patternRows: Whole): Id;
    /**
     * The node turned by quarterTurns (0 .. 3) clockwise: the same sewing, lying another way. By 0, the node itself;
     * turns of turns are one turn. Example: a block turned by 1 has its top on the right. Since 1.0.
     * muslin_quilt_turn() in muslin/quilt.h. Since 1.0.
     */
    turn(node: Id, quarterTurns: Whole): Id;
    /**
     * The node's mirror image, left for right: another sewing, whose pieces with hands are cut the other way. Twice is
     * the node itself. Example: the other half of a heart. Since 1.0. muslin_quilt_mirror() in muslin/quilt.h. Since
     * 1.0.
     */
    mirror(node: Id): Id;
    /**
     * Both in one step, without a node in between: first mirrored, where `mirrored` is 1 (else 0), then turned
     * clockwise by quarterTurns (0 .. 3), as Node tells of a turn. Example: mirrored and turned by 2, a block is its
     * own image, top for bottom. Since 1.0. muslin_quilt_lay() in muslin/quilt.h. Since 1.0.
     */
    lay(node: Id, quarterTurns: Whole, mirrored: boolean): Id;
    /**
     * The node made larger than it is needed and trimmed after sewing: what is joined to it meets the trimmed edge,
     * which is no mismatch. Solving fails with MuslinRangeError where nothing would be left. Example: an edge strip cut
     * an inch too long. Since 1.0. muslin_quilt_trim() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    trim(node: Id, spec?: QuiltTrimSpec): Id;
    /**
     * Four nodes round a centre, each end against the next one's side: four seams, top, right, bottom, left, of which
     * the first (top to centre) is sewn in part and finished when left is on. Edges that do not meet are told when it
     * is solved: the centre's, with the end that prolongs it, first, then the node's that is sewn to it. Each node then
     * lies in its corner and the centre against left and top, and the whole is as large as the largest of its rows and
     * columns. The mirror image turns the other way. Source: geometry. Example: four 2 x 4 in rectangles round a 2 in
     * square make 6 in. Since 1.0. muslin_quilt_pinwheel() in muslin/quilt.h. Since 1.0.
     */
    pinwheel(spec?: QuiltPinwheelSpec): Id;
    /**
     * Strips round a centre with mitred corners: where two strips meet, the seam runs from the centre's corner to the
     * outer one, and stitching along the centre stops one allowance from the edge there, so that the corner can be set
     * in. Where a neighbour is missing, a strip's end is square. Strips have the quilt's allowance all round. A mitred
     * border has all four strips, an attic window two. MuslinRangeError: no strip at all, a fabric without a strip;
     * when it is solved, a strip of no width. Source: geometry. Example: a 6 in square with 2 in strips at left and
     * bottom makes 8 in. Since 1.0. muslin_quilt_set_in() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    setIn(spec?: QuiltSetInSpec): Id;
    /**
     * Strips sewn on one after the other (n, 0 or more), each as long as what is there: log cabin, courthouse steps,
     * plain borders. Example: four logs round a centre, right, top, left, bottom. Since 1.0. muslin_quilt_logs() in
     * muslin/quilt.h. Since 1.0.
     */
    logs(centre: Id, logs: readonly QuiltLogSpec[]): Id;
    /**
     * A border with corners of its own, plain or pieced: sides joined to the centre, then top and bottom with their
     * corners joined to that. Example: a round of half-squares with corner squares. Since 1.0. muslin_quilt_surround()
     * in muslin/quilt.h. Since 1.0.
     */
    surround(spec?: QuiltSurroundSpec): Id;
    /**
     * Blocks (columns x rows, row by row from the top; n is their product) with sashes between them, each as long as
     * the first block of its row is high, or of its column wide. Without cornerstones a sash between two rows is as
     * long as the upper one with its sashes, the frame's top as the first. Rows are joined across, then all down.
     * MuslinRangeError for "fabric" (`at` 1): a fabric for cornerstones without cornerstones. Example: 3 x 3 blocks of
     * 12 in with 2 in sashes and a frame finish 44 in. Since 1.0. muslin_quilt_sashed() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    sashed(blocks: WholeNumbers, spec?: QuiltSashedSpec): Id;
    /**
     * Blocks on point in diagonal rows, closed by setting triangles. `blocks` has the c x r main blocks row by row from
     * the top, then the (c - 1)(r - 1) alternates so, n in all. All are squares of one size B, which is checked when it
     * is solved. A block's top edge becomes its upper right one: it is turned clockwise by an eighth of a turn. Inside
     * the turned frame everything is exact; the outside is as settingPoint() has it for the layout, rounded once, to
     * the nearest tick: in "plain" c B sqrt 2 + 2 f by r B sqrt 2 + 2 f. Pieces Counts and cuts are those of
     * settingPoint(), as the solve's policy asks. Whole sashes and cornerstones are patches, B by w, w by B and w by w,
     * upright in the turned frame: up to three children more, which follow the blocks, see Quilt.children(). Triangles,
     * and in "sashInner" the sashes that end at the edge, are the field's own pieces. Rows Rows run down to the right.
     * Where there are sashes, they stand between the blocks of a row and in "sashOuter" and "sashCut" also at its ends;
     * a row of sashes and cornerstones lies between two rows of blocks, and in those layouts beyond the first and the
     * last one. Side triangles close rows of blocks. In "sashOuter" a triangle is as long as its row and one row of
     * sashes are high: sew that one to the row first. Seams Seams of rows, and last those of the corners, are straight
     * from edge to edge, and stop at the leg of a triangle of "sashOuter". So where blocks float, the seam below a row
     * runs on beyond the tips, between two triangles, and each is drawn as far as it is left. MuslinRangeError for
     * "children": another number of blocks; for "depth": more than constants.QUILT_POINT_DEPTH_MAX such fields within
     * each other; for "measure" (`at` 0 the set-off, 1 the sash) or "fabric" (`at` 2 of the sashes, 3 of the
     * cornerstones): an id where the layout has none, or none where it needs one. Solving fails with MuslinRangeError
     * for "sashWidth" when w is not above 0, and for "blockWidth" when blocks of "sashInner" are not larger than w;
     * `at` is the field's number. Source: geometry. Example: 3 x 3 blocks and 4 alternates of 6 in: 25.456 in square.
     * Since 1.0. muslin_quilt_diagonal() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    diagonal(blocks: WholeNumbers, spec?: QuiltDiagonalSpec): Id;
    /**
     * Rows of equilateral triangles and what they make up: each row is filled, from the left, with pieces of one to
     * three triangles' room (n pieces in all; a row's pieces must end with it, else MuslinRangeError with `at` the
     * piece, n where there are too few), and closed at both ends by half-triangles. A row is H high and (cells + 1) H /
     * sqrt 3 wide, to the nearest tick; corners lie at whole multiples of H / sqrt 3, each rounded once. Pieces are cut
     * from strips as unit.h says, half-triangles as half-rectangles. Source: geometry. Example: 5 triangles of 3 in:
     * 10.392 in wide. Since 1.0. muslin_quilt_sixty() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    sixty(pieces: readonly QuiltSixtyPieceSpec[], spec?: QuiltSixtySpec): Id;
    /**
     * The id of the fabric, measure or node (sort, Sort) with this number, 1 .. as many as there are: what idNumber()
     * says of it. MuslinIndexError: there are not so many. Constant time. Example: measure 1 is the quilt's seam
     * allowance. Since 1.0. muslin_quilt_id() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    id(sort: Sort, number: Whole): Id;
    /**
     * A fabric, but for its name, which Quilt.name() tells. Constant time. Example: one made with the initial values
     * has 40 in of usable width. Since 1.0. muslin_quilt_read_fabric() in muslin/quilt.h. Since 1.0.
     */
    readFabric(fabric: Id): Filled<QuiltFabricSpec>;
    /**
     * What a measure is, but for its name. Constant time. Example: a block three strips across is a sum of one term.
     * Since 1.0. muslin_quilt_read_measure() in muslin/quilt.h. Since 1.0.
     */
    readMeasure(measure: Id): TreeMeasure;
    /**
     * The terms of a sum, in the order in which they were given: MuslinChoiceError for "kind": another kind of measure.
     * Example: 3 x strip has the factor 3. Since 1.0. muslin_quilt_read_terms() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readTerms(measure: Id): readonly Filled<QuiltSumSpec>[];
    /**
     * What a node is. Example: a join of three patches has 3 children and depth 2. Since 1.0. muslin_quilt_node() in
     * muslin/quilt.h. Since 1.0.
     */
    node(node: Id): Node;
    /**
     * The nodes that a node is made of, in the order in which they were given (a pinwheel: centre, top, right, bottom,
     * left), repeats repeated: Patches that were not given follow the blocks of a field on point with sashes: its sash
     * that lies (B wide), the one that stands, its cornerstone; in "sashInner" the sashes only where there are
     * alternates, and no cornerstone of one block alone in "sashCut" and "sashInner", for whole ones are not in it. So
     * Solution.size() knows every child of what it solved. Example: of a join of three equal patches, three times the
     * same id. Since 1.0. muslin_quilt_children() in muslin/quilt.h. Since 1.0.
     */
    children(node: Id): readonly Id[];
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_patch() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readPatch(node: Id): Filled<QuiltPatchSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_unit() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readUnit(node: Id): Filled<QuiltUnitSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_join() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readJoin(node: Id): Filled<QuiltJoinSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_trim() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readTrim(node: Id): Filled<QuiltTrimSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_pinwheel() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readPinwheel(node: Id): Filled<QuiltPinwheelSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_set_in() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readSetIn(node: Id): Filled<QuiltSetInSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_diagonal() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readDiagonal(node: Id): Filled<QuiltDiagonalSpec>;
    /**
     * What a node was made with: each of these reads one kind. MuslinChoiceError for "kind": the node is of another
     * kind, which is `value`. What a trim, a join, a turn and a field on point are made of, Quilt.children() tells; how
     * a turn lies, Quilt.node(). Time follows what is written. Example: a patch of blue, 2 in by 2 in, names blue and
     * the measure of 2 in twice. Since 1.0 all. muslin_quilt_read_sixty() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readSixty(node: Id): Filled<QuiltSixtySpec>;
    /**
     * The pieces of 60 degree rows, from the left, row by row: MuslinChoiceError as above. Example: a row of a diamond
     * and a triangle has two pieces, of 2 cells and of 1. Since 1.0. muslin_quilt_read_sixty_pieces() in
     * muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readSixtyPieces(node: Id): readonly Filled<QuiltSixtyPieceSpec>[];
    /**
     * The drawing of a shape: The outline comes first, as the four corners of its rectangle, then the pieces as they
     * were drawn. Allowances and tips, which a quilt does not look at, are those of cornerSpec(). width and height get
     * the measures that it is stretched to, 0: as drawn, on success. MuslinChoiceError as above. Example: a square with
     * one corner cut off on the slant has 4 corners of the outline and 5 + 3 of its pieces. Since 1.0.
     * muslin_quilt_read_shape() in muslin/quilt.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readShape(node: Id): { readonly corners: readonly Filled<CornerSpec>[]; readonly width: Id; readonly height: Id };
    /**
     * The fabrics of a unit's regions, or of a shape's pieces: MuslinChoiceError as above. Example: of a half-square,
     * the fabric below its rising seam and the one above. Since 1.0. muslin_quilt_read_fabrics() in muslin/quilt.h.
     * Since 1.0.
     * @throws {MuslinChoiceError}
     */
    readFabrics(node: Id): readonly Id[];
    /**
     * How much a quilt holds. Example: a fresh one has no fabrics, two measures and no nodes. Since 1.0.
     * muslin_quilt_counts() in muslin/quilt.h. Since 1.0.
     */
    counts(): PartCounts;
}

/** struct muslin_solution in muslin/solution.h. */
export interface Solution extends Handle {
    /**
     * How large a node is, how many there are and how they lie. Constant time. Example: a patch of 2 in, four times in
     * a block of which there are nine: count 36, unfinished (cut) 2 1/2 in. Since 1.0. muslin_solution_size() in
     * muslin/solution.h. Since 1.0.
     */
    size(node: Id): NodeSize;
    /**
     * The value a measure has in this solution. Constant time. Example: the extent of a block. Since 1.0.
     * muslin_solution_value() in muslin/solution.h. Since 1.0.
     * @throws {MuslinForeignError}
     */
    value(measure: Id): Length;
    /**
     * The whole at a glance. Time follows the nodes, their own pieces, and the patches in parts that trimming cuts.
     * Example: a 36 in square top of 81 patches. Since 1.0. muslin_solution_totals() in muslin/solution.h. Since 1.0.
     */
    totals(): SolutionTotal;
    /**
     * Every pair of edges that do not meet, each where it is made (once for equal parts), in the order of the nodes.
     * Example: patches of 6 and 6 1/4 in side by side: difference -1/4 in. Since 1.0. muslin_solution_misfits() in
     * muslin/solution.h. Since 1.0.
     */
    misfits(): readonly Misfit[];
    /**
     * One way from the root to a node: the child numbers to follow. Of the nodes made of it the first is taken, and of
     * those made of that one the first, up to the root; of equal children the first. Empty for the root. Time follows
     * the nodes above it and their children. Example: 2, 0: the first child of the root's third. Since 1.0.
     * muslin_solution_path() in muslin/solution.h. Since 1.0.
     */
    path(node: Id): readonly number[];
    /**
     * What to cut, by fabric in the order in which they were made, the highest and then the longest first; cuts equal
     * in all but counts are one row (templates of one shape only). Units alike in size, kind, method and fabrics share
     * their recipes, whatever their nodes are called. Mitred strips that are mitred alike at both ends are one row on
     * whichever sides they lie; where the ends differ, side and hand stay apart. Rectangles round templates and mitred
     * strips have their raw outline's corners, to the nearest tick. The half-triangles at the ends of 60 degree rows
     * are cut in pairs from rectangles of H / sqrt 3 + (1 + sqrt 3) E / 2 by H + (3 + sqrt 3) E / 2, E = 2 s + u,
     * rounded once. Source: geometry. Example: 36 patches of 2 1/2 x 2 1/2 in cut from the blue. Since 1.0.
     * muslin_solution_cuts() in muslin/solution.h. Since 1.0.
     */
    cuts(): readonly SolutionCut[];
    /**
     * MuslinIndexError: no such row. Time follows the result. Example: of a row with nodes = 2, two ids. Since 1.0.
     * muslin_solution_cut_nodes() in muslin/solution.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    cutNodes(row: Whole): readonly Id[];
    /**
     * Every join that can be strip-pieced: all its children are patches (turned or not) of one finished length with the
     * same allowances at its ends, and a set gives at least one segment. Cuts are counted as one for each strip from
     * the cloth and one for each piece or segment from its strip; patches of one fabric and cut size share strips, cut
     * straight through. Yields are stripsetYield()'s. Example: nine rows of three 2 in squares: segments of 2 1/2 in,
     * sixteen from a 40 in set, one set. Since 1.0. muslin_solution_stripsets() in muslin/solution.h. Since 1.0.
     */
    stripsets(): readonly Stripset[];
    /**
     * The sum that leads to the width ("across") or height ("down") of a node: the finished size first, then its
     * allowances up to the unfinished size, which is the last row's sum. Runs of equal children are one term. Time
     * follows the children. Example: three strips of 2 in: 3 x 2 = 6 in finished, 1/4 and 1/4 make 6 1/2 in. Since 1.0.
     * muslin_solution_explain() in muslin/solution.h. Since 1.0.
     */
    explain(node: Id, axis: Axis): readonly Term[];
    /**
     * Corners of a row are the next free ones of `corners`. Stage is as in unit.h: raw outlines reach below 0.
     * Everything exact is drawn exactly; a corner in a turned frame is rounded once in each, and shared corners round
     * alike. A trimmed node is drawn as it is after trimming, new corners to the nearest tick, and a patch of which
     * nothing is left is a row without corners (raw: all as before trimming). Edges that differ in length are drawn as
     * they are, and leave a gap. Along an edge lies the seam by which it is sewn on, also where it only lies on a part
     * of that seam. MuslinRangeError: `first` not in 0 .. the number of patches. Time follows outlines x depth.
     * Example: a nine-patch has nine outlines of four corners. Since 1.0. muslin_solution_outlines() in
     * muslin/solution.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    outlines(node: Id, stage: Stage): IterableIterator<Outline>;
    /**
     * The steps, a row each, in the order of their nodes. A strip-pieced join is two: its set, then its segments.
     * Turned nodes take no step of their own; mirror images are sewn along with what they mirror, the other way round.
     * Seams of units and shapes, and mitres, are as long as their finished seams, to the nearest tick, plus an
     * allowance e at each end; one that joins two halves of a unit through its middle, see Quilt.unit(), counts once.
     * In a field on point, in every layout, an end that lies on the outer edge counts e sqrt 2, also where of what is
     * sewn together one piece ends square there and the other, longer one at 45 degrees; every other end counts e. Rows
     * are sewn with their triangles, then to each other, corners last. A triangle of "sashOuter" that is set into a
     * corner, see Quilt.diagonal(), comes once the rows of sashes on both sides of its row are sewn to it: into the
     * angle of the row's end and of the row of sashes that runs on, two seams from mark to mark, which count like the
     * others. Example: nine-patches from two strip sets: sets, segments, sets, segments, join. Since 1.0.
     * muslin_sewing_steps() in muslin/sewing.h. Since 1.0.
     */
    sewingSteps(): readonly SewingStep[];
    /**
     * What goes into one of step `step`: made by earlier steps, or patches, each once, in the order of their first use.
     * Of a set, the patches that its strips become; of segments, their set, by the join's id. Pieces that are no nodes,
     * of units, setting triangles and the like, are in the cut list alone. MuslinIndexError: no such step. Example: the
     * join of a nine-patch needs two of one row and one of the other. Since 1.0. muslin_sewing_feeds() in
     * muslin/sewing.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    sewingFeeds(step: Whole): readonly SewingFeed[];
    /**
     * All seams, and how far off the whole top may be: with the most seams across it, each off by seamError and each of
     * its pieces' cuts by cutError (0 .. constants.SIZE_MAX / 8 each), as accuracyRow() says; the rounding of on-point
     * and 60 degree parts is not in it. Example: eleven seams, each off by 1/32 in: 11/32 in at worst. Since 1.0.
     * muslin_sewing_totals() in muslin/sewing.h. Since 1.0.
     */
    sewingTotals(seamError: LengthLike, cutError: LengthLike): SewingTotal;
    /**
     * The places of a fabric in a solved top, for scatterPrints(): its patches in the order of Solution.outlines() of
     * the root, and which of them touch along an edge (longer than a corner: than 1/1000 in), each pair once, in order,
     * with weight 1. places gets their number, on success. Edges that lie within 1/1000 in of one line across, down or
     * at 45 degrees count as on it, since fields on point are rounded; a slanting edge of another direction touches
     * where it has both ends in common, or is drawn exactly. MuslinForeignError: no fabric of this quilt.
     * MuslinRangeError: the top has more than 2^24 patches, of all fabrics. Source: geometry. Example: one fabric for
     * all patches of a 3 x 3 grid: 9 places, 12 touches. Since 1.0. muslin_scatter_touches() in muslin/scatter.h. Since
     * 1.0.
     * @throws {MuslinForeignError}
     * @throws {MuslinRangeError}
     */
    scatterTouches(fabric: Id): { readonly rows: readonly Filled<TouchSpec>[]; readonly places: number };
    /**
     * MuslinForeignError: not a fabric of the solution's quilt. MuslinRangeError, MuslinChoiceError: a member of the
     * spec. Time follows the cut list. Example: 36 squares of 2 1/2 in from the blue are one row, and a border of 60 in
     * is lengthwise. Since 1.0. muslin_yardage_pieces() in muslin/yardage.h. Since 1.0.
     * @throws {MuslinForeignError}
     * @throws {MuslinRangeError}
     * @throws {MuslinChoiceError}
     */
    yardagePieces(fabric: Id, spec?: YardageSpec): readonly Filled<BlankSpec>[];
}

/** struct muslin_pressing in muslin/pressing.h. */
export interface Pressing extends Handle {
    /**
     * How well it nests. Constant time. Example: 3 x 3 nine-patches: 64 meetings, four within each block, two along
     * every edge between two of them and one wherever four come together; no exception. Since 1.0.
     * muslin_pressing_totals() in muslin/pressing.h. Since 1.0.
     */
    totals(): PressingTotal;
    /**
     * Every seam of every different node, in their order. A node is shown as most of its copies are pressed, or as it
     * asks to be. Of strip-pieced joins they are the set's, and all of a set is pressed alike: copies the other way are
     * cut from another set, or turned end for end. Time follows the seams. Example: of 3 x 3 nine-patches four are
     * turned by a quarter, all pressed alike: the seams of the first and third row away from the middle of the block,
     * those of the second row and the long ones towards it. Example: a row of three patches has two, both to the right,
     * and for every other row to the left. Since 1.0. muslin_pressing_seams() in muslin/pressing.h. Since 1.0.
     */
    seams(): readonly PressingSeam[];
    /**
     * Which places take a child the other way: a row for each child with seams, in the order of the nodes. From the
     * root down: a child is the other way when its place says so and what it is part of is not, or the reverse. One
     * with a `turn` is then turned as a whole, and all in it is as its own places say; of any other all in it is the
     * other way than they say. Time follows the children. Example: a top of five equal rows: 0, 1, 0, 1, 0. Since 1.0.
     * muslin_pressing_children() in muslin/pressing.h. Since 1.0.
     */
    children(): readonly PressingChild[];
    /**
     * The meetings that do not nest, in the order of the nodes: press one of the two seams open there, or accept the
     * lump. Of what is turned the seam is named that would end there unturned. Time follows the meetings of different
     * parts. Example: none in a straight setting of equal blocks. Since 1.0. muslin_pressing_exceptions() in
     * muslin/pressing.h. Since 1.0.
     */
    exceptions(): readonly PressingException[];
}

/** struct muslin_cutplan in muslin/cutplan.h. */
export interface Cutplan extends Handle {
    /**
     * Length or cost, the bound and counts. Constant time. Example: proven = 1: no plan of two stages is shorter. Since
     * 1.0. muslin_cutplan_totals() in muslin/cutplan.h. Since 1.0.
     */
    totals(): CutplanTotal;
    /**
     * The strips in the order of cutting: of a bolt panels first, then the highest strips, equal heights together; what
     * a panel or piece of stock holds follows it. Time follows the strips. Example: two strips of 9 1/2 in, then five
     * of 6 in, then two of 5 1/2. Since 1.0. muslin_cutplan_strips() in muslin/cutplan.h. Since 1.0.
     */
    strips(): readonly CutplanStrip[];
    /**
     * What each strip holds, from the left, place by place. Pieces that are wanted; what fits besides is left over.
     * Rows that want one size get its pieces one row after the other. Time follows the places. Example: a strip of 6
     * in: three pieces of 6 in, then four of 5 1/2 in, trimmed. Since 1.0. muslin_cutplan_places() in muslin/cutplan.h.
     * Since 1.0.
     */
    places(): readonly CutplanPlace[];
    /**
     * Each piece by itself, as a rectangle on its bolt or piece of stock, for drawing: from number `first` on, in the
     * order of cutting. A piece of stock lies as its row says, also where first cuts run along it: then its strips
     * stand upright. MuslinRangeError: `first` not in 0 .. the number of blanks. Time: strips and places, and for each
     * blank what its panel or piece of stock holds. Example: the third square of 5 in of a strip: x = 10 in. Since 1.0.
     * muslin_cutplan_blanks() in muslin/cutplan.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    blanks(first: Whole): readonly CutplanBlank[];
    /**
     * Rectangles of cloth that are left, at least `leastSide` and 1 both ways, the largest first: ends of strips, the
     * rest of panels and of stock, what lies above slit pieces that are shorter than their panel, and of folded cloth
     * one layer beside a "joined" strip that goes round the fold and is not whole. Other trims along pieces are waste
     * and are not listed. Time: strips and places. Example: five squares of 5 1/2 in at 40 in leave 12 1/2 x 5 1/2 in.
     * Since 1.0. muslin_cutplan_left_overs() in muslin/cutplan.h. Since 1.0.
     */
    leftOvers(leastSide: LengthLike): readonly CutplanLeftOver[];
    /**
     * What becomes of each row of pieces. Time: rows squared. Example: 100 squares, of which the stock gives 64. Since
     * 1.0. muslin_cutplan_pieces() in muslin/cutplan.h. Since 1.0.
     */
    pieces(): readonly CutplanPiece[];
    /**
     * How many of each row of stock are used; no rows from a bolt. Time: rows x strips. Example: 7 fat quarters at 3
     * cost 21. Since 1.0. muslin_cutplan_stock() in muslin/cutplan.h. Since 1.0.
     */
    stock(): readonly CutplanStockUsed[];
    /**
     * The same request at other usable widths of a bolt, so many from least to most in equal steps: for readers whose
     * cloth differs. A plan at one width is also one at all wider, so lengths never rise from row to row. The work
     * limit holds for each; `progress` is told as for a plan, beginning anew with each width, and when it ends the
     * search, the widths that follow get their first plan only. MuslinChoiceError: a plan from stock. MuslinRangeError:
     * widths below 1, most below least; `widths` outside 2 .. 1000, or not 1 where least is most. MuslinOverflowError,
     * MuslinNoMemoryError: as new Cutplan(). Capacity 0 asks and searches nothing. Time: that of a plan for each width.
     * Example: 40, 41, 42, 43 and 44 in: widths = 5. Since 1.0. muslin_cutplan_widths() in muslin/cutplan.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinRangeError}
     * @throws {MuslinOverflowError}
     * @throws {MuslinNoMemoryError}
     */
    widths(leastWidth: LengthLike, mostWidth: LengthLike, widths: Whole, more?: { readonly progress?: Progress }):
        readonly CutplanWidth[];
    /**
     * The narrowest usable width at which this plan can be cut as it is: its strips stay, none loses a piece. A bolt
     * narrower than that needs another plan, see above; of nothing 0. MuslinChoiceError: a plan from stock. Time
     * follows the strips. Example: usableWidth less the end of the fullest strip. Since 1.0. muslin_cutplan_narrowest()
     * in muslin/cutplan.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    narrowest(): Length;
    /**
     * What the plan was made for, the highest first: sizes that are alike merged, joined pieces taken apart, what is
     * missing left out. Time follows the sizes. Example: two rows of 5 x 5 in are one. Since 1.0.
     * muslin_cutplan_sizes() in muslin/cutplan.h. Since 1.0.
     */
    sizes(): readonly CutplanSize[];
    /**
     * The ways to come by cloth that a plan may use, the dearest first, a panel before a strip as high. Time follows
     * the ways. Example: of three square sizes three. Since 1.0. muslin_cutplan_ways() in muslin/cutplan.h. Since 1.0.
     */
    ways(): readonly CutplanWay[];
    /**
     * Cases of the proof: each either is split into two that leave nothing out, or is empty, as trying all ways to pack
     * its strips shows, or has a bound not below the plan's. Time follows the cases. Example: the whole, then at most 8
     * strips of any height, then at least 9. Since 1.0. muslin_cutplan_cases() in muslin/cutplan.h. Since 1.0.
     */
    cases(): readonly CutplanCase[];
    /**
     * The worths that prove a case, one for each size, each condition on the way to the case, and each stock. A thing
     * of a way may not be worth more than its cost: what its pieces are worth, with what conditions of its way and
     * stock add. Where it is by rho of its cost, the bound is (sum of worth x count wanted) / scale - rho (cost of the
     * plan - 1), up; and up once more, to the next number that costs of ways can add up to (from a bolt in heights,
     * looked at where the plan is below 2^23 of the greatest length that all sizes are whole numbers of): `least` is
     * that, and never more than the cost of the plan. scale: worths are over it. MuslinIndexError: no such case, or one
     * without worths of its own. Time follows the result. Example: a square of 5 1/2 in is worth 11/14 in of cloth at
     * most, when seven fit. Since 1.0. muslin_cutplan_worths() in muslin/cutplan.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    worths(ofCase: Whole): { readonly rows: readonly CutplanWorth[]; readonly scale: bigint };
    /**
     * Proves plan and bound anew, in whole numbers, by code of its own that shares only the rules of cutting with the
     * search. `progress` is told how many cases there are, as best, and how many of them are proved, as bound.
     * MuslinWorkLimitError: it would take more than 2^40 steps, or keep more than 2^20 sums at once.
     * MuslinStoppedError: `progress` ended it. Time: cases x ways x what fits in a strip. Example: fault = 0 of every
     * plan that new Cutplan() makes. Since 1.0. muslin_cutplan_check() in muslin/cutplan.h. Since 1.0.
     * @throws {MuslinNoMemoryError}
     * @throws {MuslinWorkLimitError}
     * @throws {MuslinStoppedError}
     */
    check(more?: { readonly progress?: Progress }): CutplanChecked;
}

/** struct muslin_yardage in muslin/yardage.h. */
export interface Yardage extends Handle {
    /**
     * A row for each fabric of which something is cut, in the order in which the fabrics were made. Time follows the
     * rows. Example: of 40 squares cut 3 in, 13 from each strip of 40 in, 12 in are needed, and 3/8 yd bought. Since
     * 1.0. muslin_yardage_fabrics() in muslin/yardage.h. Since 1.0.
     */
    fabrics(): readonly FabricYardage[];
    /**
     * The plan of a row of Yardage.fabrics(); it lives as long as the yardage, and is not freed by itself. Labels of
     * its pieces (Cutplan.pieces()) are rows of the cut list, or of the extra cuts, counted on behind its last row.
     * MuslinIndexError: no such row. Constant time. Example: Cutplan.strips() of the first row's plan. Since 1.0.
     * muslin_yardage_plan() in muslin/yardage.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    plan(row: Whole): Cutplan;
}

/** The functions of the library, and the classes of its handles. */
export interface Calls {
    readonly Quilt: {
        /**
         * An empty quilt, with two measures: its seam allowance and its take-up. Two quilts of one tag take each
         * other's ids for their own. Since 1.0. muslin_quilt_create() in muslin/quilt.h. Since 1.0.
         */
        new (spec?: QuiltSpec): Quilt;
    };
    readonly Solution: {
        /**
         * Solves the tree under `root`, with n values (0 or more; the last one of an id counts) in place of those that
         * measures and fabrics have. Only what the root needs is worked out. Edges that do not meet do not make it
         * fail: see Solution.misfits(). MuslinRangeError: a sum of measures, a size or a trimmed size outside 1 ..
         * constants.SIZE_MAX (a sum may be 0), more pieces than constants.COUNT_MAX; `at` is the number of the measure
         * or node (idNumber()). Statuses of the recipes of units and setting triangles (unit.h, setting.h), `at` the
         * node. MuslinMethodError: a join that must be strip-pieced has pieces that are not patches of one length.
         * MuslinNoYieldError: a strip set as wide as its fabric gives no segment. MuslinNoMemoryError. Time and memory
         * follow the nodes of the quilt up to the root, plus a sort of the cut list. Since 1.0.
         * muslin_solution_create() in muslin/solution.h. Since 1.0.
         * @throws {MuslinRangeError}
         * @throws {MuslinMethodError}
         * @throws {MuslinNoYieldError}
         * @throws {MuslinNoMemoryError}
         */
        new (quilt: Quilt, root: Id, spec?: SolutionSpec & { readonly values?: readonly SolutionValueSpec[] }):
            Solution;
    };
    readonly Pressing: {
        /**
         * The fewest exceptions come first; what joins ask for is kept in every copy: a node that asks is taken as it
         * is, or it is turned, or what holds it. Then come few copies pressed the other way: as few as can be taken the
         * other way, and of these turned what can be, small nodes before what they are part of, by a quarter rather
         * than by a half. Then comes the preference for the darker side: fabrics whose darkness is stated and differs,
         * else the first region of a unit. These are sought step by step and not proved. Meetings of seams that are
         * pressed open are left out. The plan is the best there is when `proven` says so (small trees always), and
         * never has more exceptions than all pressed in turn, see `alternating`, or without turning. Whether what asks
         * for a way may be turned is looked through node by node, as far as the work limit goes. In joins of more than
         * 64 children that repeat after 32 or fewer, places that lie two repeats apart are taken alike; meetings there
         * are told once, at the first. Same request, same plan. MuslinRangeError, MuslinChoiceError: a member outside
         * its range or choices. MuslinWorkLimitError: edges of different nodes have more than 2^26 pieces in all.
         * MuslinNoMemoryError. Time follows meetings of different parts, plus the work limit, up to four times where
         * joins ask for a way. Source: a system of linear equations over two elements, solved by elimination; branch
         * and bound where not all can hold. Example: rows of equal blocks: every other row the other way, no exception.
         * Since 1.0. muslin_pressing_create() in muslin/pressing.h. Since 1.0.
         * @throws {MuslinRangeError}
         * @throws {MuslinChoiceError}
         * @throws {MuslinWorkLimitError}
         * @throws {MuslinNoMemoryError}
         */
        new (solution: Solution, spec?: PressingSpec & { readonly progress?: Progress }): Pressing;
    };
    readonly Cutplan: {
        /**
         * A plan for a list of pieces, n rows of BlankSpec, from the bolt (no stock), or from rows of CutplanStockSpec.
         * The plan is valid from the first moments on and gets better until it is proven, the work limit is reached or
         * progress says so; what then is known stands in the totals. Blanks lie in their narrowest way that is not
         * higher than the strip. "joined" pieces become whole strips and one shorter one, from stock as long as its
         * longest room at their height; the one piece of a row with a leastPart, from a bolt, gets other lengths where
         * what the plan leaves over, up to 16 strips of that, makes whole ones needless: then a plan is sought for
         * these, and so on while it gets shorter (not with ownStrips, stacked or folded). The first search has half of
         * the work limit then, and each one after it part of what is left, one in n + 1 with n such rows. First cuts
         * run along the length of stock only where each piece of the request may lie either way: mayTurn, a square,
         * "joined" or "sloped", and no direction of the print. "lengthwise" pieces from stock lie in strips as high as
         * they are long. Nothing wanted is a plan of nothing. MuslinRangeError, MuslinChoiceError, MuslinNoYieldError:
         * a piece is larger than the cloth in each way that it may lie; the problem names the side and the room for it,
         * and in `at` its row, from 0. MuslinNotEnoughError: the stock in hand does not suffice, and byPriority is not
         * set; MuslinWorkLimitError: no plan from stock was found, and it was not shown that there is none; of both,
         * rows being made from the highest pieces down, the problem says at which row it ends, how many pieces that
         * wants, and for how many of them there is a plan. MuslinOverflowError: all pieces one above the other, or each
         * from a piece of the dearest stock, would pass constants.LENGTH_MAX, or the waste would. MuslinNoMemoryError.
         * Memory: up to 16 MiB, 8 more where a leastPart is heeded, and 2 KiB for each row; time follows the work
         * limit, up to five times that where stock does not suffice: about a hundred looks at parts of the request,
         * each a 32nd of the limit; and half as much again each where up to 16 pieces are dealt out in every way.
         * Source: Gilmore and Gomory 1965 for the bound; Lodi, Martello and Vigo 2004, Bettinelli, Ceselli and Righini
         * 2008 for strips by height. Example: 32 squares of 5 1/2 in, 16 of 6 and 8 of 9 1/2 at 40 in usable: 60 in,
         * proven. Since 1.0. muslin_cutplan_create() in muslin/cutplan.h. Since 1.0.
         * @throws {MuslinRangeError}
         * @throws {MuslinChoiceError}
         * @throws {MuslinNoYieldError}
         * @throws {MuslinNotEnoughError}
         * @throws {MuslinWorkLimitError}
         * @throws {MuslinOverflowError}
         * @throws {MuslinNoMemoryError}
         */
        new (pieces: readonly BlankSpec[], spec?: CutplanSpec & { readonly stock?: readonly CutplanStockSpec[];
            readonly progress?: Progress }): Cutplan;
    };
    readonly Yardage: {
        /**
         * The whole way, for every fabric of which something is cut, with n rows of extra cuts. MuslinRangeError,
         * MuslinChoiceError, MuslinForeignError: a member; of the extra cuts `at` is the row. What plans and purchases
         * can return comes with the fabric's number (idNumber()) as `at`: MuslinNoYieldError: a piece does not fit,
         * with its size as value and what there is room for as limit; MuslinRangeError: more rows, pieces of a row or
         * cloth than one plan or purchase can take, or joins that take a whole strip; MuslinOverflowError;
         * MuslinNoMemoryError. Time and memory: those of the plans. Example: a top of three fabrics, the third also
         * bound with it: three lengths to buy. Since 1.0. muslin_yardage_create() in muslin/yardage.h. Since 1.0.
         * @throws {MuslinRangeError}
         * @throws {MuslinChoiceError}
         * @throws {MuslinForeignError}
         * @throws {MuslinNoYieldError}
         * @throws {MuslinOverflowError}
         * @throws {MuslinNoMemoryError}
         */
        new (solution: Solution, cuts: readonly ExtraCutSpec[], spec?: YardageSpec & { readonly progress?: Progress }):
            Yardage;
    };
    /**
     * The version of the library that is running, in the form of constants.VERSION; it belongs to these headers where
     * the major version is the same and it is not older, patches apart. Constant time. Example: version() / 1000 >=
     * constants.VERSION / 1000. Since 1.0. muslin_version() in muslin/base.h. Since 1.0.
     */
    version(): number;
    /**
     * The same as text, for instance "1.1.0". Constant time. Since 1.0. muslin_version_text() in muslin/base.h. Since
     * 1.0.
     */
    versionText(): string;
    /**
     * How many statuses this library knows. A binding iterates 0 .. count - 1. Constant time. Example: statusCount()
     * gives MuslinTooManyError + 1. Since 1.0. muslin_status_count() in muslin/base.h. Since 1.0.
     * @throws {MuslinTooManyError}
     */
    statusCount(): number;
    /**
     * The status's name without its prefix, for instance "ERR_RANGE" for 6 and "OK" for 0; "UNKNOWN" for a number
     * outside the list. Constant time. Example: statusName(MuslinRangeError). Since 1.0. muslin_status_name() in
     * muslin/base.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    statusName(status: Status): string;
    /**
     * One plain English sentence on what the status means and what to do. Its wording may improve between versions;
     * match on the number. Constant time. Since 1.0. muslin_status_sentence() in muslin/base.h. Since 1.0.
     */
    statusSentence(status: Status): string;
    /**
     * How many arguments this library can name, numbered 0 .. count - 1. Constant time. Since 1.0.
     * muslin_argument_count() in muslin/base.h. Since 1.0.
     */
    argumentCount(): number;
    /**
     * The trade's words for an argument, for instance "seam allowance"; "unknown argument" for a number outside the
     * list. Constant time. Example: argumentWords("seamAllowance"). Since 1.0. muslin_argument_words() in
     * muslin/base.h. Since 1.0.
     */
    argumentWords(argument: Argument): string;
    /**
     * How many warnings this library knows: the bits 0 .. count - 1, each 1u << bit. Constant time. Example: 1u <<
     * (warningCount() - 1) gives "longerThanWidth". Since 1.0. muslin_warning_count() in muslin/base.h. Since 1.0.
     */
    warningCount(): number;
    /**
     * The name of one warning bit without its prefix, for instance "NO_SLACK" for 1; "UNKNOWN" for 0 or for anything
     * that is not exactly one known bit. Constant time. Example: warningName("noSlack"). Since 1.0.
     * muslin_warning_name() in muslin/base.h. Since 1.0.
     */
    warningName(warning: Warning): string;
    /**
     * One sentence for one warning bit; "" for 0 or for anything that is not exactly one known bit. Constant time.
     * Since 1.0. muslin_warning_sentence() in muslin/base.h. Since 1.0.
     */
    warningSentence(warning: Warning): string;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. For languages without a preprocessor, and for whoever was built against an older version,
     * since limits may rise. count says how many there are. name and value answer for a place in the list, 0 .. count -
     * 1, whose order may change between versions: look for a name. A name has no prefix, "SIZE_MAX" for
     * constants.SIZE_MAX; it is "" and the value 0 for a place that is none. Constant time. Example: where the name is
     * "TICKS_PER_INCH", constantValue(i) gives 8128. Since 1.0 all. muslin_constant_count() in muslin/base.h. Since
     * 1.0.
     */
    constantCount(): number;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. For languages without a preprocessor, and for whoever was built against an older version,
     * since limits may rise. count says how many there are. name and value answer for a place in the list, 0 .. count -
     * 1, whose order may change between versions: look for a name. A name has no prefix, "SIZE_MAX" for
     * constants.SIZE_MAX; it is "" and the value 0 for a place that is none. Constant time. Example: where the name is
     * "TICKS_PER_INCH", constantValue(i) gives 8128. Since 1.0 all. muslin_constant_name() in muslin/base.h. Since 1.0.
     */
    constantName(index: Whole): string;
    /**
     * Every constant of these headers that is no enum's, as the library that is running has it: limits (..._MAX),
     * flags, ticks per unit. For languages without a preprocessor, and for whoever was built against an older version,
     * since limits may rise. count says how many there are. name and value answer for a place in the list, 0 .. count -
     * 1, whose order may change between versions: look for a name. A name has no prefix, "SIZE_MAX" for
     * constants.SIZE_MAX; it is "" and the value 0 for a place that is none. Constant time. Example: where the name is
     * "TICKS_PER_INCH", constantValue(i) gives 8128. Since 1.0 all. muslin_constant_value() in muslin/base.h. Since
     * 1.0.
     */
    constantValue(index: Whole): number;
    /** a + b. muslin_length_add() in muslin/length.h. Since 1.0. */
    lengthAdd(a: LengthLike, b: LengthLike): Length;
    /** a - b, which may be negative. muslin_length_subtract() in muslin/length.h. Since 1.0. */
    lengthSubtract(a: LengthLike, b: LengthLike): Length;
    /** a x factor, factor any whole number. Since 1.0. muslin_length_multiply() in muslin/length.h. Since 1.0. */
    lengthMultiply(a: LengthLike, factor: Whole): Length;
    /**
     * a / divisor, rounded as asked. divisor any whole number but 0 (MuslinDivideByZeroError). Statuses of the
     * rounding, here and wherever one is given: MuslinRangeError (grid, tolerance), MuslinChoiceError (direction)
     * MuslinOverflowError when the grid point lies beyond constants.LENGTH_MAX. muslin_length_divide() in
     * muslin/length.h. Since 1.0.
     * @throws {MuslinDivideByZeroError}
     * @throws {MuslinRangeError}
     * @throws {MuslinChoiceError}
     * @throws {MuslinOverflowError}
     */
    lengthDivide(a: LengthLike, divisor: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * a x numerator / denominator, rounded once, as asked; the product is never cut short on the way. numerator any
     * whole number, denominator > 0 (0: MuslinDivideByZeroError, negative: MuslinRangeError). Other statuses as for a
     * quotient. Example: 4 in x 3 / 2 to the nearest tick gives 48768, 6 in. Since 1.0. muslin_length_scale() in
     * muslin/length.h. Since 1.0.
     * @throws {MuslinDivideByZeroError}
     * @throws {MuslinRangeError}
     */
    lengthScale(a: LengthLike, numerator: Whole, denominator: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * a brought to the grid. Statuses as for a quotient. Example: 3.05 in up to 1/8 in is 3 1/8 in. Since 1.0.
     * muslin_length_snap() in muslin/length.h. Since 1.0.
     */
    lengthSnap(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * -1, 0 or 1 as a is less than, equal to or greater than b. For all whole number. Example: lengthCompare(1, 2)
     * gives -1. Since 1.0. muslin_length_compare() in muslin/length.h. Since 1.0.
     */
    lengthCompare(a: LengthLike, b: LengthLike): number;
    /**
     * The sum of n lengths; the status does not depend on their order, because partial sums may pass the range, and any
     * length out of range gives MuslinRangeError before MuslinOverflowError is considered. n = 0 gives 0 (values may be
     * left out). O(n). Example: the three borders { 8128, 16256, 24384 } sum to 48768, 6 in. Since 1.0.
     * muslin_length_sum() in muslin/length.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinOverflowError}
     */
    lengthSum(values: LengthsLike): Length;
    /**
     * The sum of lengths[i] x counts[i]; order-independent as above. counts any whole number. O(n). Example: lengths {
     * 8128, 4064 } with counts { 2, 3 } give 28448, 3 1/2 in. Since 1.0. muslin_length_dot() in muslin/length.h. Since
     * 1.0.
     */
    lengthDot(lengths: LengthsLike, counts: WholeNumbers): Length;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_length_add_n() in muslin/length.h. Since 1.0.
     */
    lengthAddN(a: LengthsLike, b: LengthsLike, statuses?: Int32Array): BigInt64Array;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_length_subtract_n() in muslin/length.h. Since 1.0.
     */
    lengthSubtractN(a: LengthsLike, b: LengthsLike, statuses?: Int32Array): BigInt64Array;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_length_multiply_n() in muslin/length.h. Since 1.0.
     */
    lengthMultiplyN(a: LengthsLike, factors: WholeNumbers, statuses?: Int32Array): BigInt64Array;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_length_scale_n() in muslin/length.h. Since 1.0.
     */
    lengthScaleN(a: LengthsLike, numerator: Whole, denominator: Whole, rounding?: RoundingSpec, statuses?: Int32Array):
        BigInt64Array;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_length_snap_n() in muslin/length.h. Since 1.0.
     */
    lengthSnapN(a: LengthsLike, rounding?: RoundingSpec, statuses?: Int32Array): BigInt64Array;
    /**
     * a x sqrt 2, the diagonal of a square. Example: a = 48768 (6 in), up to 1/8 in: 8 1/2 in. Since 1.0.
     * muslin_length_times_root2() in muslin/length.h. Since 1.0.
     */
    lengthTimesRoot2(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * a / sqrt 2, the side of a square with diagonal a. Example: 12 in to the nearest 1/8 in is 8 1/2 in. Since 1.0.
     * muslin_length_over_root2() in muslin/length.h. Since 1.0.
     */
    lengthOverRoot2(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * a x sqrt 3 / 2, the height of an equilateral triangle with side a. Example: 4 in to the nearest 1/8 in is 3 1/2
     * in. Since 1.0. muslin_length_equilateral_height() in muslin/length.h. Since 1.0.
     */
    lengthEquilateralHeight(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * 2 a / sqrt 3, the side of an equilateral triangle with height a. Example: 6 in up to 1/8 in is 7 in. Since 1.0.
     * muslin_length_equilateral_side() in muslin/length.h. Since 1.0.
     */
    lengthEquilateralSide(a: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * sqrt(a x a + b x b). Example: 3 in and 4 in give 5 in, exact. Since 1.0. muslin_length_hypotenuse() in
     * muslin/length.h. Since 1.0.
     */
    lengthHypotenuse(a: LengthLike, b: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * The side of the square that has this area, in doubled square ticks (2 x width x height), 0 .. 2^61. Example: the
     * area of 4 in x 9 in, 2 x 32512 x 73152, gives 48768, 6 in, exact. Since 1.0. muslin_length_root_of_area() in
     * muslin/length.h. Since 1.0.
     */
    lengthRootOfArea(area: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * The length of one unit in ticks (exact for all six); 0 for anything else. Source: NIST Handbook 44, Appendix C.
     * Example: lengthUnitTicks("yard") gives 292608. Since 1.0. muslin_length_unit_ticks() in muslin/length.h. Since
     * 1.0.
     */
    lengthUnitTicks(unit: LengthUnit): Length;
    /**
     * The unit's usual short word: "in", "ft", "yd", "mm", "cm", "m"; "" for anything else. Example:
     * lengthUnitWord("cm") gives "cm". Since 1.0. muslin_length_unit_word() in muslin/length.h. Since 1.0.
     */
    lengthUnitWord(unit: LengthUnit): string;
    /**
     * Grammar: [sign] part { part }, with blanks around and between. A part is a number and, except for a last or only
     * part, a unit; units of several parts go from larger to smaller ("1 yd 4 1/2 in", "5' 6\""), and the sign holds
     * for the whole. A number without a unit takes the default one, and must be in its place in the order. Number:
     * whole "2", decimal "2.5" or ".5", fraction "5/8", mixed "2 1/2", "2-1/2", "2 (vulgar half)" with blanks, one
     * hyphen or, before a vulgar fraction, nothing between; with ASCII digits. The fraction may use / or U+2044 or
     * U+2215, without blanks; vulgar fractions are those of U+00BC..00BE and U+2150..215E, U+2189. Sign: + - or U+2212.
     * Unit: in in. inch inches " U+2033 U+201D U+201C or a foot mark twice; ft ft. foot feet ' U+2032 U+2019 U+2018; yd
     * yd. yds yds. yard yards; mm; cm; m; and millimetre(s), centimetre(s), metre(s) in both spellings; letters in
     * either case. Blank: space, tab, line feed, carriage return, U+00A0 no-break, U+202F narrow no-break, U+2009 thin
     * space. The decimal sign is the one that the spec names; the other one is refused (MuslinTextDecimalError), never
     * guessed. Values off the tick grid are rounded once, for the whole text, to the nearest tick, and reported as
     * inexact. spec left out means parseSpec(). Statuses, those of the text with place and bytes in problem:
     * MuslinChoiceError (unit, decimal sign); MuslinTextEncodingError: not UTF-8, looked for first and in the whole
     * text; names one byte; MuslinTextEmptyError: the text ends before its first number; bytes 0, at the end;
     * MuslinTextSyntaxError: no number where the first one, a denominator or decimals should stand; names what stands
     * there, bytes 0 at the end; MuslinTextDecimalError: the other decimal sign, at the start or right behind a number;
     * names it; MuslinTextUnitError: a word that is no unit, or a unit not smaller than the one before; names the word,
     * or the number whose default unit is out of order; MuslinTextTrailingError: something more behind a whole length;
     * names all the rest; MuslinTextZeroDenominatorError: names the denominator; MuslinOverflowError: the length passes
     * constants.LENGTH_MAX; or a number has more than 18 digits, zeros at its outer ends not counted; or several parts
     * have fractions of a tick whose common denominator passes 2^62 - 1. Names the number. O(bytes).
     * muslin_length_parse() in muslin/length.h. Since 1.0.
     * @throws {MuslinTextDecimalError}
     * @throws {MuslinChoiceError}
     * @throws {MuslinTextEncodingError}
     * @throws {MuslinTextEmptyError}
     * @throws {MuslinTextSyntaxError}
     * @throws {MuslinTextUnitError}
     * @throws {MuslinTextTrailingError}
     * @throws {MuslinTextZeroDenominatorError}
     * @throws {MuslinOverflowError}
     */
    lengthParse(text: string, spec?: ParseSpec): Parsed;
    /**
     * Promise: whenever exact is 1, parsing the text (with the same decimal sign, and the style's unit as default)
     * gives the same length back, exact. Minus zero is never shown. spec left out means formatSpec(). The longest text
     * is under 64 bytes. Example: 20320 gives "2 1/2 in". Since 1.0. muslin_length_format() in muslin/length.h. Since
     * 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinChoiceError}
     */
    lengthFormat(a: LengthLike, spec?: FormatSpec): Formatted;
    /**
     * The cut size of a piece that shall finish at `finished` (0 .. constants.SIZE_MAX) and is sewn into its neighbours
     * on both sides: finished + 2 s + u. The unfinished size of a sewn unit follows by the same sum. Source: Moonlight
     * Quilters Guild, Tip - On Point Settings. Example: 6 in finished, 1/4 in: cut 6 1/2 in. Since 1.0.
     * muslin_seam_cut_from_finished() in muslin/seam.h. Since 1.0.
     */
    seamCutFromFinished(finished: LengthLike, seam?: SeamSpec): Length;
    /**
     * The finished size of a cut piece or an unfinished unit (`cut`, 0 .. constants.SIZE_MAX): cut - 2 s - u.
     * MuslinSeamTooWideError when that is below zero. Source: as above, turned round. Example: 12 1/2 in unfinished,
     * 1/4 in: 12 in finished. Since 1.0. muslin_seam_finished_from_cut() in muslin/seam.h. Since 1.0.
     * @throws {MuslinSeamTooWideError}
     */
    seamFinishedFromCut(cut: LengthLike, seam?: SeamSpec): Length;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_seam_cut_from_finished_n() in muslin/seam.h. Since
     * 1.0.
     */
    seamCutFromFinishedN(finished: LengthsLike, seam?: SeamSpec, statuses?: Int32Array): BigInt64Array;
    /**
     * The same of each of many values. Without `statuses` the first that fails ends it with its error, whose `at` says
     * which it is. With `statuses`, an Int32Array with a place for each value, each gets its own status there, 0 where
     * all is well, and the result of one that failed is 0. muslin_seam_finished_from_cut_n() in muslin/seam.h. Since
     * 1.0.
     */
    seamFinishedFromCutN(cut: LengthsLike, seam?: SeamSpec, statuses?: Int32Array): BigInt64Array;
    /**
     * Cut size of a piece with different allowances on its four edges, and the share of it that the seams swallow. In
     * the problem, `at` is 0 for width and left, 1 for height and right, 2 top, 3 bottom. Source: geometry. Example: 6
     * x 6 in finished with 1/4 in all round: cut 6 1/2 in square, 147929 ppm lost to seams. Since 1.0.
     * muslin_seam_piece() in muslin/seam.h. Since 1.0.
     */
    seamPiece(spec?: PieceSpec): Piece;
    /**
     * Equal pieces sewn side by side: a row of patches or the width of a strip set. pieces 1 .. constants.COUNT_MAX,
     * cut 1 .. constants.SIZE_MAX. Each piece bears two half seams, so a cut below 2 s + u is MuslinSeamTooWideError.
     * The longest row possible fits a length, so nothing overflows. Source: Vicki, Hints and tips 20: how wide should
     * my strip set be? (take-up by geometry). Example: 6 strips cut 2 1/2 in: 12 1/2 in unfinished, 12 in finished.
     * Since 1.0. muslin_seam_row_equal() in muslin/seam.h. Since 1.0.
     * @throws {MuslinSeamTooWideError}
     */
    seamRowEqual(cut: LengthLike, pieces: Whole, seam?: SeamSpec): SewnRow;
    /**
     * The same for n pieces of unequal cut size; the problem's `at` names the first offending piece. One pass. Source:
     * geometry. Example: cut 1 1/2, 2 1/2 and 3 1/2 in: 6 1/2 in unfinished, 6 in finished. Since 1.0.
     * muslin_seam_row() in muslin/seam.h. Since 1.0.
     */
    seamRow(cuts: LengthsLike, seam?: SeamSpec): SewnRow;
    /**
     * Backwards: the cut width of `pieces` (1 .. constants.COUNT_MAX) equal strips that together shall finish at
     * `finished`: finished / pieces + 2 s + u, rounded once, as asked. Source: Nine patch perfected, finished / 3 +
     * 1/2. Example: block 6 in finished, 3 across: strips cut 2 1/2 in. Since 1.0. muslin_seam_strip_for_finished() in
     * muslin/seam.h. Since 1.0.
     */
    seamStripForFinished(finished: LengthLike, pieces: Whole, seam?: SeamSpec, rounding?: RoundingSpec): Rounded;
    /**
     * A cut size resized with its block: take the seams off, scale by numerator / denominator (both 1 .. INT64_MAX),
     * put them back on, rounded once, as asked. MuslinDivideByZeroError: denominator 0. MuslinSeamTooWideError: cut
     * below 2 s + u. MuslinOverflowError: the result passes constants.LENGTH_MAX. Source: Learn how to resize quilt
     * blocks. Example: cut 3 1/2 in doubled is 6 1/2 in. Since 1.0. muslin_seam_resize_cut() in muslin/seam.h. Since
     * 1.0.
     * @throws {MuslinDivideByZeroError}
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinOverflowError}
     */
    seamResizeCut(cut: LengthLike, numerator: Whole, denominator: Whole, seam?: SeamSpec, rounding?: RoundingSpec):
        Rounded;
    /**
     * The effective allowance from a measured set of n strips or a test trio: cuts as cut, `measured` the unfinished
     * width edge to edge, `stitched` the allowance one meant to sew. n 2 .. constants.COUNT_MAX; each cut 1 ..
     * constants.SIZE_MAX and at least 2 s (else MuslinSeamTooWideError, `at` names it); measured 1 .. the sum of cuts
     * (else MuslinRangeError). MuslinSeamTooWideError for `measured` when the cure would be below 0: u is then above 2
     * s. One pass. For a trio, a centre measured between its two seams says the same: centre = cut - 2 e, so e = (cut -
     * centre) / 2. The fractions are not in lowest terms. Source: 1/4 inch seam test (T. Pereira), centre = cut - 1/2;
     * geometry. Example: 4 strips cut 2 1/2 in measuring 8 3/8 in: short by 1/8 in over 3 seams. Since 1.0.
     * muslin_seam_calibrate() in muslin/seam.h. Since 1.0.
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinRangeError}
     */
    seamCalibrate(cuts: LengthsLike, measured: LengthLike, stitched: LengthLike): Calibration;
    /**
     * The carry-on plan: sets that came out wrong are kept, and a later piece planned at c is cut to suit. With E = (T
     * - M) / (n - 1) as really sewn and P = 2 s + u as planned, the planned finished size c - P is scaled by (M - E) /
     * (D - P), where D = T - (n - 1) P is the planned width, and gets E back: (c - P) (M - E) / (D - P) + E = ((c - P)
     * (n M - T) + (T - M) (T - n P)) / ((n - 1) (T - n P)), whose right side is whole above and below the line (91 and
     * 61 bits at most) and is rounded once, as asked. So a piece that was to be as long as its set is wide (a square
     * block) becomes M. The result is at most 2^61. MuslinSeamTooWideError: c below P; T not above n P (nothing of the
     * plan would be seen); or n M below T (nothing of the sewn set is). In the problem c is "segmentCut" and T is
     * "cut". Source: geometry. Example: 4 strips cut 2 1/2 in measure 8 3/8 in: a segment planned at 8 1/2 in is cut 8
     * 3/8 in. Since 1.0. muslin_seam_carry_on() in muslin/seam.h. Since 1.0.
     * @throws {MuslinSeamTooWideError}
     */
    seamCarryOn(spec?: CarryOnSpec, rounding?: RoundingSpec): Rounded;
    /**
     * How far a row is off when each of `seams` (0 .. constants.COUNT_MAX) seams is off by `errorPerSeam`
     * (+-constants.SIZE_MAX): error x seams. Source: geometry. Example: 1/32 in too wide at 11 seams: 11/32 in. Since
     * 1.0. muslin_seam_error_total() in muslin/seam.h. Since 1.0.
     */
    seamErrorTotal(errorPerSeam: LengthLike, seams: Whole): Length;
    /**
     * The largest error per seam, either way, that keeps the total within `tolerance` (0 .. constants.SIZE_MAX):
     * tolerance / seams, down to a tick. seams 1 .. constants.COUNT_MAX. Source: geometry. Example: 1/4 in over 8
     * seams: 1/32 in. Since 1.0. muslin_seam_error_limit() in muslin/seam.h. Since 1.0.
     */
    seamErrorLimit(tolerance: LengthLike, seams: Whole): Length;
    /**
     * The share of fabric that disappears into seams, in ppm to the nearest, ties up: (cut - finished) / cut, for any
     * two areas in doubled square ticks (a patch, a strip set, a whole top). cutArea 1 .. INT64_MAX, finishedArea 0 ..
     * cutArea. In the problem, `at` is 0 for the cut area and 1 for the finished one. Source: geometry. Example: cut 2
     * 1/2 in square, finished 2 in: 360000. Since 1.0. muslin_seam_share() in muslin/seam.h. Since 1.0.
     */
    seamShare(cutArea: Whole, finishedArea: Whole): number;
    /**
     * How far off a row of pieces may be. Example: 8 seams each off by 1/32 in, cuts without error: 1/4 in at worst,
     * and 719 ticks (a good 1/12 in) as chance has it. Since 1.0. muslin_accuracy_row() in muslin/accuracy.h. Since
     * 1.0.
     */
    accuracyRow(spec?: AccuracyRowSpec): AccuracyRowErrors;
    /**
     * How far off a block and a top of such blocks may be, in a straight setting without sashing (for other rows count
     * pieces and seams and ask accuracyRow()). MuslinRangeError for "pieces" also when a row of the top has more than
     * constants.COUNT_MAX pieces; `at` is 0 across, 1 down. Example: blocks of 3 x 3 pieces, 4 x 5 of them, each seam
     * off by 1/64 in and cuts without error: a block 1/32 in at worst, the top 11/64 in across and 7/32 in down. Since
     * 1.0. muslin_accuracy_top() in muslin/accuracy.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    accuracyTop(spec?: AccuracyTopSpec): AccuracyTopErrors;
    /**
     * Whether the seams of two neighbouring rows meet. The rows are cut alike, laid edge to edge at one end, and eased
     * nowhere. Before the k-th seam lie k pieces, so its place is off by k seams (its own counted in full, which is on
     * the safe side) and 2 k cuts in each row; the two rows are independent of each other. Pinned in the middle
     * instead, only half the seams lie between. Example: 8 seams, each off by 1/64 in, cuts without error, within 1/16
     * in: the third seam is the first that may miss, at worst; by chance about two in three still meet at the eighth,
     * and from the third on about one in twenty misses; at worst a seam may be off by 31 ticks. Since 1.0.
     * muslin_accuracy_meet() in muslin/accuracy.h. Since 1.0.
     */
    accuracyMeet(spec?: AccuracyMeetSpec): AccuracyMeeting;
    /**
     * Dimensional change in ppm to the nearest, negative when it shrank. before 1 .. constants.SIZE_MAX (`at` 0), after
     * 0 .. the lesser of 10 x before and constants.SIZE_MAX (`at` 1), so that every change fits. Source: ISO 5077 (test
     * summary by a textile laboratory supplier). Example: 20 in before and 17 in after: -150000, shrunk by 15 %. Since
     * 1.0. muslin_shrinkage_change() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageChange(before: LengthLike, after: LengthLike): number;
    /**
     * Both directions and the area of something measured before and after. `at` counts beforeWidth 0, afterWidth 1,
     * beforeLength 2, afterLength 3. Source: ISO 5077 as above; geometry for the area. Example: 42 x 36 in washed to 41
     * x 35 in: -23810 across, -27778 along, -50926 in area. Since 1.0. muslin_shrinkage_measure() in
     * muslin/shrinkage.h. Since 1.0.
     */
    shrinkageMeasure(spec?: WashSpec): WashChange;
    /**
     * From the size wanted in the end to the size to make: width and length are what the quilt shall measure when
     * quilted and washed. MuslinOverflowError, naming width or length, when a size to make passes constants.LENGTH_MAX.
     * Source: How to make a quilt finish at a certain size (blog, 2020), 90 / (1 - 0.10); geometry for two losses in
     * turn. Example: 60 x 72 in wanted, 5 % lost in the wash each way and 2 % to quilting, up to 1/8 in: make 64 1/2 x
     * 77 3/8 in. Since 1.0. muslin_shrinkage_size_to_make() in muslin/shrinkage.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    shrinkageSizeToMake(spec?: ShrinkageSpec, rounding?: RoundingSpec): SizeToMake;
    /**
     * Backwards: what a made size (width and length of the spec) becomes by quilting and washing. A size to make that
     * was rounded up to a tick becomes, rounded down to a tick, the wanted size again. Source: geometry. Example: 100 x
     * 100 in made, 2 % lost to quilting and 5 % in the wash each way: 98 in quilted, 93.1 in washed, -69000 each way.
     * Since 1.0. muslin_shrinkage_becomes() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageBecomes(spec?: ShrinkageSpec, rounding?: RoundingSpec): WashedSize;
    /**
     * The size to make straight from a measured sample, without a percentage between that could be rounded: target x
     * before / after, rounded once, as asked. before and after 1 .. constants.SIZE_MAX (`at` 0 and 1), target 0 ..
     * constants.SIZE_MAX. The sample is made, quilted and washed as the quilt will be; one call for each direction.
     * Source: How to make a quilt finish at a certain size (blog, 2020). Example: a sample of 20 in came out at 18 in;
     * for 90 in make 100 in. Since 1.0. muslin_shrinkage_from_sample() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkageFromSample(before: LengthLike, after: LengthLike, target: LengthLike, rounding?: RoundingSpec): Rounded;
    /**
     * The share to reckon with when fabric and batting shrink differently. `fabric` (`at` 0) and `batting` (`at` 1) are
     * shares lost; MuslinChoiceError when the rule is no GoverningRule. A rule of thumb: what really happens depends on
     * how close the quilting is, and a washed sample tells more. Source: Post: planning for 3-5% batting shrinkage
     * (quilting forum, 2014) for the batting in a closely quilted quilt; the other rules common practice, no source.
     * Example: fabric 2 %, batting 5 %, "batting": 50000, governed by the batting. Since 1.0.
     * muslin_shrinkage_governs() in muslin/shrinkage.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    shrinkageGoverns(fabric: Whole, batting: Whole, governingRule: GoverningRule): Governing;
    /**
     * What to wash so that enough cloth is left. Buying steps and extras are for fabricPurchase(), with its shrinkage
     * at 0. Source: as for the size to make. Example: 4 yd needed, 42 in usable, 3 % lost across and 4 % along: 150 in
     * to wash, 40.74 in usable afterwards. Since 1.0. muslin_shrinkage_prewash() in muslin/shrinkage.h. Since 1.0.
     */
    shrinkagePrewash(spec?: PrewashSpec): Prewash;
    /**
     * Usable width from the labelled width (1 .. constants.SIZE_MAX): (labelled - 2 x selvage) x (1 - shrinkage), down
     * to a tick. shrinkage 0 .. 999999 ppm. MuslinRangeError for `selvage` also when two of them leave nothing. Source:
     * ISO 5077 for what shrinkage is a share of (the size before washing); geometry. Example: 44 in labelled, 1/2 in
     * selvages, no shrinkage: 43 in. Since 1.0. muslin_fabric_usable_width() in muslin/fabric.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    fabricUsableWidth(labelled: LengthLike, selvage: LengthLike, shrinkage: Whole): Length;
    /**
     * From a length needed to a length bought. Shrinkage divides by 1 - p, it does not multiply by 1 + p. Source:
     * Mathematically challenged: 80 x 56 backing (public forum) for the step; geometry for the shrinkage. Example: 112
     * in in steps of 1/8 yd: 25 steps, 3 1/8 yd, 1/2 in spare; 4 in less would save a step. Since 1.0.
     * muslin_fabric_purchase() in muslin/fabric.h. Since 1.0.
     */
    fabricPurchase(spec?: PurchaseSpec): Purchase;
    /**
     * How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b), losses taken off first.
     * Published charts mix widths; width and losses are inputs here. Zero pieces is an answer, not an error, also when
     * the losses eat the cloth. With mayTurn the slacks are those of the way reported: beyond them the other way may
     * still give as many. In the problem, pieceWidth and pieceLength are "cut" with `at` 0 and 1, the losses "endLoss"
     * with `at` 0 and 1. Source: Number of squares from a fat quarter; geometry. Example: 5 in squares from 18 x 22 in:
     * 12. Since 1.0. muslin_fabric_pieces() in muslin/fabric.h. Since 1.0.
     */
    fabricPieces(spec?: ClothSpec): ClothPieces;
    /**
     * Pieces wanted -> strips across the width -> length of cloth. MuslinNoYieldError when a strip gives no piece (the
     * problem names the usable width and the least that would do). In the problem, pieceAcross is "cut", endLoss and
     * straightening are "endLoss" with `at` 0 and 1. Source: 52 4-inch and 20 3-inch squares (public forum). Example:
     * 52 squares of 4 in at 44 in usable: 11 a strip, 5 strips, 20 in. Since 1.0. muslin_fabric_strips() in
     * muslin/fabric.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     */
    fabricStrips(spec?: StripsSpec): Strips;
    /**
     * The least length of cloth whose area is `area` (doubled square ticks, 0 .. constants.LENGTH_MAX) at this usable
     * width (1 .. constants.SIZE_MAX): area / (2 x width), up to a tick. A lower bound only, since it ignores how
     * pieces lie. Source: fall block swap question (public forum), area over width. Example: 1296 sq in at 36 in: 36
     * in. Since 1.0. muslin_fabric_area_bound() in muslin/fabric.h. Since 1.0.
     */
    fabricAreaBound(area: Whole, usableWidth: LengthLike): Length;
    /**
     * The size that the arithmetic must use when one lines up the tips (align "pinkedTips") or the valleys
     * ("pinkedValleys") throughout: a pinked size measured at the other point changes by two depths each way, one for
     * each of two edges; a straight edge changes nothing. Either output may be left out. MuslinRangeError for pinkDepth
     * when nothing is left; MuslinChoiceError for another align. Source: geometry. Example: a strip 2 1/2 in from tip
     * to tip, 1/16 in deep, is 2 3/8 in from valley to valley. Since 1.0. muslin_stock_size() in muslin/fabric.h. Since
     * 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinChoiceError}
     */
    stockSize(stock: StockSpec, align: Edge): { readonly width: Length; readonly length: Length };
    /**
     * Strips of cut width stripCut (1 or more) from stock, cut across its width (each strip as long as the stock is
     * wide). The stated width and length are used as they are: to line up the other point of pinked edges, state what
     * stockSize gives. MuslinNoYieldError when a piece gives none (the problem names its length and the least that
     * would do). Source: Fat quarter conversion (public forum). Example: 80 half-width strips of 2 1/2 in from fat
     * quarters 18 in deep: 7 a piece, 12 pieces. Since 1.0. muslin_stock_strips() in muslin/fabric.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     */
    stockStrips(stock: StockSpec, stripCut: LengthLike, stripsWanted: Whole): StockYield;
    /**
     * What to say when these fabrics meet in one top: a sum of Warning bits. "mixedWash": some are washed, some are
     * not. "precutWashed": a strip or a square is washed. "mixedEdges": they do not all have the same kind of edge.
     * Every row speaks, whatever its count. One pass. Common practice, no source. Example: a washed and an unwashed
     * fabric give "mixedWash". Since 1.0. muslin_stock_check() in muslin/fabric.h. Since 1.0.
     */
    stockCheck(rows: readonly StockSpec[]): readonly Warning[];
    /**
     * allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3, else
     * MuslinRangeError) without showing it, else 0: without direction any; two-way and stripes a half turn; one-way no
     * turn. Source: geometry. Example: a stripe turned by 2 may, by 1 may not. Since 1.0. muslin_print_may_turn() in
     * muslin/fabric.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    printMayTurn(print: Print, quarterTurns: Whole): boolean;
    /**
     * Windows wanted -> repeats -> length of cloth. A window no larger than the repeat takes one repeat each way, a
     * larger one as many as it reaches over, up: the next window then begins where the print does again. Across, whole
     * repeats are counted: usable width / (repeats a window takes x repeatWidth), down. With anyAcross the first window
     * may begin up to a repeat from the selvage and must still end before the other one; with anyStart it may too, and
     * one repeat of length is added for the whole order when a piece is wanted. MuslinNoYieldError: not one window fits
     * across (the problem names the usable width and the least that would do; where only part of a repeat lies across
     * the cloth, count the motifs you see and give repeatWidth 0). Whole repeats lie between what is certain and what
     * is lucky, and both are said: the print seldom begins at the edge of the usable width. Where the width is one
     * repeat, both are perRow. MuslinRangeError for `motifs` also when so many windows are larger than the repeats they
     * are cut from, by area. Sources: Figuring pattern repeats (home magazine how-to) for repeats along and the one
     * more for the order; geometry for the rest. Example: pieces 96 in long, repeat 27 in: 4 repeats, 108 in, 12 in
     * wasted. Example: three of them from a cloth that begins anywhere: 13 repeats, 351 in; 339 in are enough. Example:
     * 20 windows 6 in square, a print that repeats every 12 in each way, 40 in usable: 3 a row if the first begins
     * within 10 in of the edge, 7 rows, but 2 are certain, 10 rows. Since 1.0. muslin_motif_plan() in muslin/motif.h.
     * Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinRangeError}
     */
    motifPlan(spec?: MotifSpec): Motif;
    /**
     * Windows that a cloth so long (0 .. constants.SIZE_MAX) gives, counted as in motifPlan(); spec->pieces is not
     * used, but must be in its range. No row is an answer, not an error. MuslinNoYieldError and MuslinRangeError as
     * there. Source: geometry. Example: a print that repeats every 12 in each way, windows 6 in square, 40 in usable, 3
     * yd: 27 windows. Since 1.0. muslin_motif_from_cloth() in muslin/motif.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinRangeError}
     */
    motifFromCloth(clothLength: LengthLike, spec?: MotifSpec): MotifYield;
    /**
     * Cloth for stacks of identical pieces: it is cut into `layers` lengths of whole repeats that begin at the same
     * place of the print; they are laid on each other so that the print matches, and strips and pieces are cut through
     * all of them at once. MuslinOverflowError when the cloth would be longer than constants.LENGTH_MAX. Sources:
     * common practice, no source, for the way; geometry for the sums. Example: 40 stacks of 6, 10 from each strip cut 3
     * in, repeat 24 in: 4 strips, the first 12 in of each layer, 1 repeat a layer, 6 repeats, 4 yd. Since 1.0.
     * muslin_stack_plan() in muslin/motif.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    stackPlan(spec?: StackSpec): Stack;
    /**
     * How many rows a table has. Rows are only ever added at the end, whatever their size, so an index keeps its
     * meaning. MuslinChoiceError: table is none of Table. Since 1.0. muslin_reference_count() in muslin/reference.h.
     * Since 1.0.
     * @throws {MuslinChoiceError}
     */
    referenceCount(table: Table): number;
    /**
     * Row `index`, from 0, of a table. MuslinChoiceError for an unknown table; MuslinIndexError for a row that does not
     * exist (the problem's limit is the last one). Source: what referenceSource says of the row. Example: row 3 of
     * "batting" is twin, 72 x 90 in. Since 1.0. muslin_reference_row() in muslin/reference.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinIndexError}
     */
    referenceRow(table: Table, index: Whole): Reference;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. All three are "" for a row that does
     * not exist, and Their wording may improve. Example: row 5 of "batting" is named "queen". Since 1.0.
     * muslin_reference_name() in muslin/reference.h. Since 1.0.
     */
    referenceName(table: Table, index: Whole): string;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. All three are "" for a row that does
     * not exist, and Their wording may improve. Example: row 5 of "batting" is named "queen". Since 1.0.
     * muslin_reference_source() in muslin/reference.h. Since 1.0.
     */
    referenceSource(table: Table, index: Whole): string;
    /**
     * A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
     * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know,
     * above all where other lists disagree, or "" where there is nothing to say. All three are "" for a row that does
     * not exist, and Their wording may improve. Example: row 5 of "batting" is named "queen". Since 1.0.
     * muslin_reference_note() in muslin/reference.h. Since 1.0.
     */
    referenceNote(table: Table, index: Whole): string;
    /**
     * How many segments one set gives. From both ends N = 2 max { k : t + k a + r floor((k - 1) / m) <= (L - z) / 2 },
     * k = 0 always fits, with no squaring after the last cut; from one end N = max { k : 2 t + k a + r floor((k - 1) /
     * m) <= L }. Lengths are whole ticks, so halving an odd L - z loses nothing. N = 0 is an answer, and so is a trim
     * or a clear zone longer than the strip. MuslinRangeError also for a foldClear with fromOneEnd. Exact for every
     * input in range. Source: geometry; that some teachers cut from both ends and keep clear of the fold, and square
     * again every 2 or 3 cuts, is common practice. Example: 40 in, 6 1/2 in segments, 1/2 in trimmed at each end: six,
     * with no slack; with 1 in kept clear: four. Since 1.0. muslin_stripset_yield() in muslin/stripset.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    stripsetYield(spec?: YieldSpec): Yield;
    /**
     * The usable length that a set of strips shares, the shortest, with its index (the first of equals); warnings gets
     * "mixedWidths" when they differ, else 0. n is 1 or more (MuslinRangeError); in the problem `at` is the element.
     * `index` and `warnings` may be left out. One pass. Example: 41, 40 and 42 in: 40 in, index 1, mixed. Since 1.0.
     * muslin_stripset_shortest() in muslin/stripset.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    stripsetShortest(lengths: LengthsLike): { readonly shortest: Length; readonly index: number; readonly warnings:
        readonly Warning[] };
    /**
     * Segments wanted -> sets -> strips -> bundles or a length of cloth. MuslinNoYieldError when segmentsPerSet is 0
     * and segments are wanted; MuslinOverflowError when the cloth would be longer than constants.LENGTH_MAX. No
     * segments wanted: all zero. Source: Quick rail fence from 2.5 inch strips (handout). Example: 42 segments, 3 a
     * set, 5 strips a set: 14 sets, 70 strips. Since 1.0. muslin_stripset_need() in muslin/stripset.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinOverflowError}
     */
    stripsetNeed(spec?: NeedSpec): Need;
    /**
     * Strips in hand -> sets -> segments -> blocks -> tops, and what is left over. Segments may be joined into blocks
     * across sets and tops. MuslinOverflowError when the strips for one more top would pass constants.LENGTH_MAX.
     * Source: common practice, no source. Example: 42 strips, 6 a set, 6 segments a set, 2 a block, 9 blocks a top: 2
     * tops, 6 strips left. Since 1.0. muslin_stripset_harvest() in muslin/stripset.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    stripsetHarvest(spec?: HarvestSpec): Harvest;
    /**
     * With setsWanted 0: how many sets the scarcest print allows; with setsWanted above 0 sets becomes setsWanted.
     * Written are sets, scarcest (may be left out: the row of the print that allows the fewest sets, the first of
     * equals) and every row's `leftOver`, which alone is changed in it. At least one row must have perSet above 0, so n
     * = 0 is MuslinRangeError too. In the problem `at` is the row. On failure no row is touched. Two passes. Example:
     * 20 dark strips, 4 a set, and 11 light ones, 2 a set: 5 sets, 0 and 1 strips left, the dark print is the scarcest.
     * Since 1.0. muslin_stripset_prints() in muslin/stripset.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    stripsetPrints(rows: readonly StripsetPrint[], setsWanted: Whole): { readonly rows:
        readonly Filled<StripsetPrint>[]; readonly sets: number; readonly scarcest: number };
    /**
     * Length of cloth for the whole list: for each row count / ((usableWidth - endLoss) / across) strips as high as the
     * piece is along the cloth, added up. With turning, the way that takes less length. Narrowest and wider width are
     * those of the answer, not of a yield: a strip may give a piece less where the number of strips stays.
     * MuslinNoYieldError names "usableWidth"; MuslinOverflowError when the cloth would be longer than
     * constants.LENGTH_MAX. Source: 52 4-inch and 20 3-inch squares (public forum). Example: 52 squares of 4 in and 20
     * of 3 in at 44 in usable: 5 strips and 2, 26 in; 8 in wider saves 4 in. Since 1.0. muslin_cutlist_from_yardage()
     * in muslin/cutlist.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinOverflowError}
     */
    cutlistFromYardage(pieces: readonly CutlistPieceSpec[], spec?: CutlistSpec): CutlistYardage;
    /**
     * the others as above. Source: Start quilting, lesson two (M. Hohn). Example: 112 pieces of 7 3/4 x 3 7/8 in at 42
     * in usable: 5 a strip, 23 strips. Since 1.0. muslin_cutlist_yardage_rows() in muslin/cutlist.h. Since 1.0.
     */
    cutlistYardageRows(pieces: readonly CutlistPieceSpec[], spec?: CutlistSpec): readonly CutlistRow[];
    /**
     * The list from pieces of stock of one size: squares, strips of a bundle, fat quarters, or a cloth. Row by row,
     * strips as long as the stock is wide are cut one behind the other; a row goes on in the piece of stock that the
     * row before has left, as long as a strip fits behind; then it takes a new one, and no row goes back. A row lies
     * turned when it then ends earlier: in an earlier piece of stock, or further forward in the same. (That is the best
     * of all ways of turning rows: whoever begins earlier ends earlier.) A strip of a bundle gives the pieces that are
     * as high as the strip is, or lower ones, which the result calls trimmed. The stated width and length are used as
     * they are: to line up the other point of pinked edges, or to square the ends, state what is left.
     * MuslinNoYieldError names "usableWidth" or "clothLength", for the piece as it is listed. Source: Cutting up a 10
     * inch square (teacher's blog) for one size; common practice, no source, for several. Example: 80 strips of 22 x 2
     * 1/2 in from fat quarters 18 x 22 in: 12 fat quarters. Since 1.0. muslin_cutlist_from_stock() in muslin/cutlist.h.
     * Since 1.0.
     * @throws {MuslinNoYieldError}
     */
    cutlistFromStock(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): CutlistStock;
    /**
     * the others as above. Source: as above. Example: 9 squares of 5 in, then 20 of 2 1/2 in, from squares of 10 in:
     * the small ones come from the third and fourth. Since 1.0. muslin_cutlist_stock_rows() in muslin/cutlist.h. Since
     * 1.0.
     */
    cutlistStockRows(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistRow[];
    /**
     * the others as above. Source: as above. Example: 14 squares of 5 in from fat quarters 18 x 20 in: 3 strips from
     * the first, 1 from the second. Since 1.0. muslin_cutlist_stock_parts() in muslin/cutlist.h. Since 1.0.
     */
    cutlistStockParts(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistPart[];
    /**
     * How many times the whole list (how many quilts, blocks or kits) comes from stock->count pieces of stock, all rows
     * taken so many times and then cut as in cutlistFromStock(): row by row, not list by list. No list is an answer,
     * not an error. MuslinRangeError for the number of pieces also when the list asks for nothing; MuslinOverflowError
     * when there are more than constants.COUNT_MAX lists. Source: geometry. Example: 4 squares of 5 in and 4 of 2 1/2
     * in from 10 squares of 10 in: 8 times. Since 1.0. muslin_cutlist_lists_from_stock() in muslin/cutlist.h. Since
     * 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinOverflowError}
     */
    cutlistListsFromStock(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): CutlistLists;
    /**
     * the others as above. Source: geometry. Example: 24 pieces of 8 1/2 x 4 1/2 in that may turn, from a cloth 40 x 72
     * in: twice, 6 strips of 8 1/2 in. Since 1.0. muslin_cutlist_lists_rows() in muslin/cutlist.h. Since 1.0.
     */
    cutlistListsRows(pieces: readonly CutlistPieceSpec[], stock?: StockSpec): readonly CutlistRow[];
    /**
     * The same list from something else: call it for each kind of stock at hand or in question, and compare; which is
     * better is the caller's to say. `prints` is the number of different fabrics in the stock (1 ..
     * constants.COUNT_MAX): of a bundle or a set of fat quarters; for "yardage" it must be 1, and the answer is a
     * length, worked as in cutlistFromYardage() with nothing lost, against count x length in hand. Other kinds are
     * worked as in cutlistFromStock(). Stock that is missing is taken to be of the same prints. A row that does not fit
     * is an answer, not an error; whether it would fit turned, or turning saves, is known by asking once more with
     * mayTurn in its flags. MuslinOverflowError as with yardage. Source: geometry. Example: 80 strips of 22 x 2 1/2 in
     * from 20 fat quarters 18 x 22 in of 8 prints: 12 fat quarters, 8 fabrics, 1 or 2 of each. Example: 60 pieces of 2
     * 1/2 x 4 1/2 in from squares of 10 in: 8 squares, 15 strips of 4 pieces, and a strip more of 4 from the last.
     * Since 1.0. muslin_cutlist_substitute() in muslin/cutlist.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    cutlistSubstitute(pieces: readonly CutlistPieceSpec[], prints: Whole, stock?: StockSpec): Substitution;
    /**
     * Whether the drawing is a unit: outline and pieces are simple shapes that run counter-clockwise, and the pieces
     * cover the outline exactly once. The outline and at least one piece must be given. MuslinShapeError, with the row
     * in the problem: fewer than three corners (two where an edge is an arc), an edge without length, a corner that is
     * not within a tick of its arc's circle, an arc of more than half a turn, edges of one piece that cross, touch or
     * lie on each other, a piece that runs clockwise. MuslinNotTiledError, with the row of the edge: a stretch of that
     * edge is answered by no neighbour and not by the outline, or by too many. A straight edge may meet several
     * neighbours; an arc must be the same arc on both sides, from corner to corner. Source: geometry: where every piece
     * and the outline go round once, and their boundaries cancel, stretch by stretch, the pieces' winding numbers add
     * up to the outline's, which is 1 at each point inside. Exact, but for one thing: as corners may lie a tick off
     * their arcs, an arc of radius r and its neighbour may meet a second time within 6 sqrt(r) ticks of their common
     * corner, and are then taken to touch there. Time grows with the square of the rows, times the corners that lie on
     * one edge; nothing is allocated. Example: a 6 in square of two triangles: 2 pieces, 4 edges outside and 2 inside,
     * 6 by 6 in finished. Since 1.0. muslin_shape_check() in muslin/shape.h. Since 1.0.
     * @throws {MuslinShapeError}
     * @throws {MuslinNotTiledError}
     */
    shapeCheck(corners: readonly CornerSpec[]): Shape;
    /**
     * The template of one piece as cut: each edge moved out by its effective allowance, each corner where the moved
     * edges meet, x and y rounded on their own to the grid. Rows come in the order of the piece, counter-clockwise. Two
     * rows share a finished corner where a tip is cut off, and where edges in one line have unequal allowances. The
     * outline may be missing. Only this piece is checked, as shapeCheck() does it. MuslinIndexError: no such piece, or
     * the outline. MuslinChoiceError: a tip other than "sharp" where an arc ends or starts. MuslinSeamTooWideError,
     * with the row: a concave arc of radius e or less, moved edges that do not meet, or an edge that the allowances of
     * its neighbours eat. MuslinOverflowError: a sharp tip beyond constants.TEMPLATE_REACH_MAX. MuslinShapeError also
     * where a straight edge meets an arc and is neither parallel to x or y nor radial (its line passes the centre
     * within a tick; it is then taken to run from the centre through the corner): that corner has a root within a root
     * and is not worked out; and where arc and edge touch at the corner and no longer do when moved. count says how
     * many. Whether allowances far apart overlap, as in a deep narrow notch, is not checked. Source: geometry; for arcs
     * also common practice (convex r + s, concave r - s). Time grows with the square of the piece's corners. Example: a
     * 3 in finished half square as a triangle (0, 0) (3, 0) (0, 3) with 1/4 in allowances, to the nearest 1/8 in:
     * (-1/4, -1/4) (3 5/8, -1/4) (-1/4, 3 5/8), the well-known 7/8 in more than finished. Since 1.0.
     * muslin_shape_template() in muslin/shape.h. Since 1.0.
     * @throws {MuslinIndexError}
     * @throws {MuslinChoiceError}
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinOverflowError}
     * @throws {MuslinShapeError}
     */
    shapeTemplate(corners: readonly CornerSpec[], piece: Whole, rounding?: RoundingSpec): readonly TemplateCorner[];
    /**
     * What one needs to know before cutting a piece: areas, the rectangle to cut it from, grain. Recommended is the
     * straight grain along the longest straight edge on the outline, else along the longest straight edge, else along
     * x; the first of equals. The template is the one that shapeTemplate() gives with the same rounding, and so are the
     * statuses, without The rectangle with a margin is the cut size of a foundation or of the cloth for a piece sewn
     * onto one. Straight grain on the outside edges is common practice, no source; the rest is geometry. Time grows
     * with the square of the rows. Example: the half square of 3 in, its two short edges outside: grain along x, no
     * bias edge, and a rectangle of about 3.86 in square (3.8536). Since 1.0. muslin_shape_measure() in muslin/shape.h.
     * Since 1.0.
     */
    shapeMeasure(corners: readonly CornerSpec[], spec?: ShapePieceSpec, rounding?: RoundingSpec): ShapePiece;
    /**
     * The rectangle that holds a piece's template plus `margin` (0 .. constants.SHAPE_SIZE_MAX) all round when one of
     * its straight edges lies along a strip, or along the sewing line of a foundation: `corner` is the row where that
     * edge starts (a row of the outline or no row at all: MuslinIndexError; of an arc: MuslinShapeError). along gets
     * the size along the edge, across the size across it, both up to a tick. Other statuses and time: as
     * shapeMeasure(). Source: geometry; that a foundation piece is cut with a margin all round is common practice, no
     * source. Example: the half square of 3 in laid with its long edge along the strip: 5.45 in along and 2.725 in
     * across. Since 1.0. muslin_shape_foundation() in muslin/shape.h. Since 1.0.
     * @throws {MuslinIndexError}
     * @throws {MuslinShapeError}
     */
    shapeFoundation(corners: readonly CornerSpec[], corner: Whole, margin: LengthLike, rounding?: RoundingSpec): {
        readonly along: Length; readonly across: Length };
    /**
     * The two pieces of a square with a quarter circle about one corner: the convex one (a slice of the disc) and the
     * concave one (the background). With e = allowance + take-up / 2 the legs are e + sqrt((r + e)^2 - e^2) and F + e -
     * sqrt((r - e)^2 - e^2). MuslinRangeError: also a radius of F or more. MuslinSeamTooWideError: r below 2 e, so that
     * the concave cut arc does not reach the cut edges. Source: geometry; convex r + s, concave r - s is common
     * practice, no source. Constant time. Example: a 7 in square with r 5 in: radii 5 1/4 and 4 3/4 in, squares 5 1/2
     * and 7 1/2 in. Since 1.0. muslin_shape_quarter_circle() in muslin/shape.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinSeamTooWideError}
     */
    shapeQuarterCircle(spec?: QuarterCircleSpec, rounding?: RoundingSpec): QuarterCircle;
    /**
     * The length of an arc of so many quarter turns (1 .. 4) of a circle: radius x pi / 2 x quarterTurns. radius 0 ..
     * constants.SIZE_MAX. Source: geometry. Constant time. Example: half a circle of 5 in radius, to the nearest 1/8
     * in: 15 3/4 in (15.708). Since 1.0. muslin_arc_length() in muslin/shape.h. Since 1.0.
     */
    arcLength(radius: LengthLike, quarterTurns: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * The measures of a regular triangle, square, hexagon or octagon (sides 3, 4, 6 or 8, else MuslinChoiceError) from
     * one of them (1 .. constants.SIZE_MAX), all finished or all cut as the caller means it. MuslinOverflowError when
     * the area passes constants.LENGTH_MAX. Source: geometry. Constant time. Example: a hexagon 2 3/4 in from flat to
     * flat, to the nearest 1/16 in: side 1 9/16 in (1.588), 3 3/16 in from corner to corner (3.175). Since 1.0.
     * muslin_shape_regular_polygon() in muslin/shape.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinOverflowError}
     */
    shapeRegularPolygon(sides: Whole, measure: PolygonMeasure, length: LengthLike, rounding?: RoundingSpec):
        RegularPolygon;
    /**
     * The recipe for a finished size. Sources: published rules for 7/8 and 1 1/4 in (How to measure and cut triangles,
     * blog from a guild newsletter, 2018; Tilkkumatematiikkaa, teacher's blog, 2012, for any seam); geometry for all
     * else. Example: a half-square of 3 in, two at a time, takes one row for each of two fabrics: pieces = 2,
     * unitsPerRecipe = 2, unfinished 3 1/2 in. Example: 4 split quarters of one hand, two at a time, take 2 recipes,
     * and 4 of the other hand are spare. Since 1.0. muslin_unit_recipe() in muslin/unit.h. Since 1.0.
     */
    unitRecipe(spec?: UnitSpec): UnitPlan;
    /**
     * Mirrored half-rectangles and slices add rows of hand 2: a rectangle cut on its other diagonal gives triangles of
     * the other hand, a strip set cut the other way slices of it, and no turning makes one into the other. Right side
     * up, a half-rectangle's rectangles lying `cutWidth` wide, a strip set along the width, those of hand 1 are cut
     * from the lower left to the upper right, those of hand 2 from the upper left to the lower right. Example:
     * half-squares of 3 in, two at a time: squares cut 3 7/8 in, one of each fabric for two units. Since 1.0.
     * muslin_unit_pieces() in muslin/unit.h. Since 1.0.
     */
    unitPieces(spec?: UnitSpec): readonly UnitPiece[];
    /**
     * Their order may change between versions. Since 1.0 both. muslin_unit_recipe_count() in muslin/unit.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    unitRecipeCount(): number;
    /**
     * Their order may change between versions. Since 1.0 both. muslin_unit_recipe_at() in muslin/unit.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    unitRecipeAt(index: Whole): { readonly kind: UnitKind; readonly method: UnitMethod };
    /**
     * What the stock yields for a recipe of given size. Each rectangle of stock is cut for one row of pieces, in a
     * plain grid, never turned (strip shapes along its width); a region with several rows divides its rectangles so
     * that the number of whole recipes, at most constants.COUNT_MAX, is greatest. Hands are not counted. Zero recipes
     * is an answer. Source: geometry. Example: 10 squares of 5 in a region and half-squares of 4 in, two at a time: 20
     * units. Since 1.0. muslin_unit_from_stock() in muslin/unit.h. Since 1.0.
     */
    unitFromStock(spec?: UnitSpec, stock?: UnitStockSpec): UnitYield;
    /**
     * The largest finished size of which one recipe can be cut from the stock when every piece fits one rectangle of
     * it. The spec's own sizes only give the proportion of W to H and corner, which is kept exactly: tried are all
     * multiples of it whose width (of a kind without one, the height) is a multiple of the stock's finishedGrid, up to
     * constants.UNIT_SIZE_MAX. Source: geometry. Example: two 5 in squares sewn all round and cut on both diagonals
     * finish 2 5/8 in, to the eighth. Since 1.0. muslin_unit_largest() in muslin/unit.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    unitLargest(spec?: UnitSpec, stock?: UnitStockSpec): UnitYield;
    /**
     * Every recipe that the stock can make, each at its largest size, in the order of unitRecipeAt(); a half-rectangle
     * is offered at 2 : 1, a trapezoid at 3 : 1, a slanted slice at 1 : 1, a snowball square with a corner of one
     * third. Of the spec, kind, method, sizes and mirrored are not looked at. A recipe that uses a customary addition
     * too small for it is not offered, where the other calls return MuslinCustomaryError. Example: from a 2 1/2 in
     * square, two at a time, half-squares finish 1 5/8 in. Since 1.0. muslin_unit_makes() in muslin/unit.h. Since 1.0.
     * @throws {MuslinCustomaryError}
     */
    unitMakes(spec?: UnitSpec, stock?: UnitStockSpec): readonly UnitYield[];
    /**
     * Where the corners of every patch lie, in place: first all finished patches, one after the other, then all raw
     * ones in the same order. The origin is the lower left of the smallest upright rectangle round the finished unit;
     * raw corners reach below 0. A coordinate is found exactly and rounded once, nested roots (the raw wedges of a
     * kaleidoscope) included. `hand` (Hand) draws the first hand or its mirror image, left for right; kinds without
     * hands take both. As the first hand lies: the seam of a half-square or half-rectangle rises to the right, region 1
     * below it; a split quarter has its half so, region 2 on the left, 3 on top; a quarter-square has region 1 at
     * bottom and top; a goose points up; triangles, half-hexagons and trapezoids stand on their long side; hexagons
     * have flat bottoms; diamonds and slices lean to the right. Patches are numbered by region, then counterclockwise
     * from the bottom or the lower left; a quarter-square's and a kaleidoscope's wedges counterclockwise from the
     * bottom, its regions 1 and 2 in turn. With "blunt" the raw point across the strip is cut off at e beyond the
     * finished point, at right angles to the height: of "triangle60" the upper point, of a kaleidoscope's wedges that
     * in the middle, of "halfSquare" by "strips" those where the seam ends at the upper right. It makes no difference
     * elsewhere: all other points are whole. Where the corners of a snowball meet in the middle of a side, or a
     * trapezoid's ends meet above, the finished patch has an edge of no length, and its raw patch is cut level there.
     * MuslinChoiceError: `hand` is neither. Source: geometry. Example: the first finished patch of a half-square of 3
     * in has corners at (0, 0), (3, 0) and (3, 3) in; its raw patch begins at (-(1 + sqrt 2)/4, -1/4) in. Since 1.0.
     * muslin_unit_outlines() in muslin/unit.h. Since 1.0.
     * @throws {MuslinChoiceError}
     */
    unitOutlines(hand: Hand, spec?: UnitSpec): readonly UnitCorner[];
    /**
     * How the pieces of one recipe become its units, a row each step in the order of the work. Piece numbers count the
     * first hand's rows; for rows of the second hand count on behind them, and cut strip sets the other way; join the
     * short sides of mirrored split quarters by "pieces" the other way round. Lines are drawn on region 2, the lighter
     * fabric, and half-squares pressed towards region 1, the darker. A rectangle takes no step. Units are trimmed last,
     * where they are trimmed; a half-rectangle that is a square is trimmed as a half-square. Points to be set in are
     * marked in the inner corner alone and sewn from there to the raw edge, so that what rounding made too large hangs
     * outside. Distances from a line or an edge are the allowance s: the take-up is what the fold eats afterwards.
     * Source: common practice, no source; half-squares from middle to middle: P. Speth, Half square triangles finished
     * size 2 inches, 2012. Example: half-squares of 3 in, two at a time: draw a line, pair, sew beside it at 1/4 in,
     * cut apart, press twice, trim twice to 3 1/2 in. Since 1.0. muslin_unit_steps() in muslin/unit.h. Since 1.0.
     */
    unitSteps(spec?: UnitSpec): readonly UnitStep[];
    /**
     * One plain English sentence for a step, with the places {piece}, {other}, {measure}, {measureHeight},
     * {fromCorner}, {region} and {angle} for whoever shows it to fill, where the sentence has them; a sentence on
     * unknown steps for a number that is none. Its wording may improve between versions. Constant time. Since 1.0.
     * muslin_unit_step_sentence() in muslin/unit.h. Since 1.0.
     */
    unitStepSentence(step: UnitStepKind): string;
    /**
     * The size of a top of columns x rows blocks in a straight setting. MuslinNotSquareError when a quarter turn is
     * asked of a block whose sides differ by more than squareTolerance, even if none would be turned (where they differ
     * by less, the sizes here are those of the blocks not turned, and the difference is eased in); MuslinRangeError
     * also when a finished side would pass constants.SIZE_MAX. Source: geometry. Example: 3 x 3 blocks of 12 in
     * finished: 36 in finished, 36 1/2 in unfinished. Since 1.0. muslin_setting_straight() in muslin/setting.h. Since
     * 1.0.
     * @throws {MuslinNotSquareError}
     * @throws {MuslinRangeError}
     */
    settingStraight(spec?: SettingSpec): Setting;
    /**
     * The quarter turns (clockwise: 0, 1 or 2) of the block in this column and row, both from 0 to constants.COUNT_MAX:
     * the first block is not turned, its neighbours are. `turning` is an Turning. Example: column 1, row 0 with
     * "halfAlternate": 2. Since 1.0. muslin_setting_turn() in muslin/setting.h. Since 1.0.
     */
    settingTurn(turning: Turning, column: Whole, row: Whole): number;
    /**
     * The block that segments make, and whether it is square. MuslinSeamTooWideError when nothing of segment or set
     * would be seen (2 s + u or less); MuslinRangeError also when the block would be wider than constants.SIZE_MAX
     * unfinished. Source: geometry. Example: two segments cut 6 1/2 in from a set 12 1/2 in wide: a block 12 1/2 in
     * square unfinished, 12 in finished. Since 1.0. muslin_block_from_segments() in muslin/setting.h. Since 1.0.
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinRangeError}
     */
    blockFromSegments(spec?: BlockSpec): Block;
    /**
     * What one join takes off the run, in ticks; `join` is an Join. The strip's cut width counts for "diagonal" alone,
     * the allowance for "straight" and "biasEnds". The take-up of a join, a thread or two, is left out. Sources: What
     * is lost? (tutorial, 2012) for the diagonal join, geometry for the others. Example: "diagonal", strips cut 3 in: 3
     * in. Since 1.0. muslin_join_loss() in muslin/setting.h. Since 1.0.
     */
    joinLoss(join: Join, stripCut: LengthLike, allowance: LengthLike): Length;
    /**
     * Strips joined end to end into one run (borders, binding). MuslinNoYieldError when a join eats a whole strip and
     * one strip is not enough; MuslinOverflowError when more than constants.COUNT_MAX strips are needed. Source:
     * geometry. Example: 294 in of strips 40 in long, straight 1/4 in seams: 8 strips, 22 1/2 in to spare. Since 1.0.
     * muslin_run_plan() in muslin/setting.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinOverflowError}
     */
    runPlan(spec?: RunSpec): Run;
    /**
     * One border; for several, from the inside outwards, the unfinished sizes of one are the input of the next. A side
     * or top is as long as the raw edge it is sewn to, so no allowance is added to a butted length: sides first, L and
     * then width + 2 W; top first the other way round; with cornerstones, the four edges as they are and four squares
     * of the cut width. A mitred piece along the raw edge L needs L + 2 W + 2 sqrt 2 s, up to a tick, plus mitreExtra;
     * the take-up of mitre and joins, a thread or two, is left to mitreExtra and spare. Across the width the four
     * pieces are cut from one run, as runPlan() does. Lengthwise they lie side by side, as many as the usable width
     * holds, longest first. Cornerstones come from a strip of the same cut width and are not counted in totalLength.
     * Printed lengths are the arithmetic: measure the real top through the middle in three places, cut to that, and
     * ease to fit. MuslinSeamTooWideError when a side of the top is less than 2 s + u; MuslinNoYieldError and
     * MuslinOverflowError as in runPlan(); MuslinNoFitError when, lengthwise, the cloth does not hold one piece.
     * Sources: 4Bs: borders (group sampler lesson), geometry for the mitre, where print adds anything from 1/2 to 6 in.
     * Example: 38 1/2 x 50 in unfinished, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2 in,
     * four squares cut 4 1/2 in; 46 1/2 x 58 in unfinished. Since 1.0. muslin_border_plan() in muslin/setting.h. Since
     * 1.0.
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinNoYieldError}
     * @throws {MuslinOverflowError}
     * @throws {MuslinNoFitError}
     */
    borderPlan(spec?: BorderSpec): Border;
    /**
     * Blocks with sashes between them: how many pieces of each kind, their cut sizes, and the size of the top. Without
     * cornerstones each row is sewn first, blocks and vertical sashes, and long horizontal sashes join the rows. With
     * cornerstones both kinds of sashes must be wider than 0. MuslinRangeError also when a finished side would pass
     * constants.SIZE_MAX or the end loss the usable width; sashWidth and sashHeight are "sashWidth" with `at` 0 and 1.
     * Sources: Quilt math: algorithms for cornerstones and sashes (blog, 2009) for the counts in a frame; How to make
     * quilt sashing with cornerstones (J. Wickell) for the cut sizes; geometry for the rest. Example: 4 x 5 blocks of
     * 12 in with sashes of 4 in, cornerstones and a frame: 25 vertical and 24 horizontal sashes cut 4 1/2 x 12 1/2 in,
     * 30 cornerstones; 68 x 84 in finished. Since 1.0. muslin_setting_sashed() in muslin/setting.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    settingSashed(spec?: SettingSashedSpec): SettingSashedPlan;
    /**
     * The strips across the cloth for each kind of piece that there is, in the order of SashKind: one to three rows,
     * none for a top without sashes. A piece longer than a strip is cut from strips joined end to end with straight
     * seams, 2 s lost in each. Statuses of settingSashed(), and MuslinNoYieldError when a join would eat a whole strip;
     * MuslinOverflowError when pieces or strips pass constants.COUNT_MAX Example: 24 horizontal sashes cut 12 1/2 x 4
     * 1/2 in from cloth 44 in usable: 3 a strip, 8 strips, 36 in of cloth, which may be 6 1/2 in narrower. Since 1.0.
     * muslin_setting_sashed_pieces() in muslin/setting.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinOverflowError}
     */
    settingSashedPieces(spec?: SettingSashedSpec): readonly SashPiece[];
    /**
     * Pieced and plain blocks like the fields of a chessboard. MuslinRangeError also when a finished side would pass
     * constants.SIZE_MAX. Source: geometry. Example: 5 x 5 blocks of 8 in, a pieced one first: 13 pieced, 12 plain cut
     * 8 1/2 in square. Since 1.0. muslin_setting_alternate() in muslin/setting.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    settingAlternate(spec?: SettingAlternateSpec): SettingAlternatePlan;
    /**
     * The whole of a line of n columns or rows with finished sizes `sizes` (1 .. constants.SIZE_MAX each), and how far
     * it is from the size wanted. n is 1 .. constants.COUNT_MAX. MuslinRangeError also when the line would pass
     * constants.SIZE_MAX. One pass. Source: geometry. Example: columns of 6, 12 and 6 in with a sash of 1 in between:
     * 26 in finished, 26 1/2 in unfinished. Since 1.0. muslin_setting_line() in muslin/setting.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    settingLine(sizes: LengthsLike, spec?: SettingLineSpec): SettingLinePlan;
    /**
     * Where each of the n columns or rows lies: a row each, in their order. Statuses of settingLine(), and One pass.
     * Source: geometry. Example: columns of 6, 12 and 6 in with a sash of 1 in between start at 0, 7 and 20 in. Since
     * 1.0. muslin_setting_line_places() in muslin/setting.h. Since 1.0.
     */
    settingLinePlaces(sizes: LengthsLike, spec?: SettingLineSpec): readonly SettingLinePlace[];
    /**
     * A setting on point: counts, squares to cut for its triangles, and the size of the centre. A square cut twice on
     * the diagonal keeps the straight grain on the long side of its triangles, as the edge needs it; one cut once keeps
     * it on the short sides, as the corner needs it. With t = 2 s + u, the exact needs are side leg sqrt 2 + 2 f + (1 +
     * sqrt 2) t (4.8284 s without take-up) corner long side / sqrt 2 + 2 f + (1 + 1 / sqrt 2) t (3.4142 s) and the
     * customary figures leg x factor + 2 f + sideAddition and long side / factor + 2 f + cornerAddition, or, with
     * diagonalFirst, the rounded diagonal (half of it for a corner, up to a tick) plus the same; "oversize" adds
     * trimRoom. A square larger by x makes a triangle that stands out x / 2 farther at the edge: cut twice, its height
     * is half of the square; cut once, its corner moves outwards by x / sqrt 2, which is x / 2 from both edges.
     * MuslinNoFitError for half-blocks where a layout has none. MuslinDivideByZeroError: factor over zero.
     * MuslinRangeError also when a finished side would pass constants.SIZE_MAX, and where a layout bounds sash, set-off
     * or block. Sources: Tip - On Point Settings (Moonlight Quilters Guild), Setting and corner triangle chart (Tani)
     * for the customary figures; geometry for the others, verified by drawing. Example: 4 x 4 blocks of 6 in, customary
     * with 1414 / 1000, up to 1/8 in: 9 alternates, 12 side triangles from 3 squares cut 9 3/4 in, 4 corners from 2
     * squares cut 5 1/8 in. Since 1.0. muslin_setting_point() in muslin/setting.h. Since 1.0.
     * @throws {MuslinCustomaryError}
     * @throws {MuslinNoFitError}
     * @throws {MuslinDivideByZeroError}
     * @throws {MuslinRangeError}
     */
    settingPoint(spec?: SettingPointSpec, cutting?: RoundingSpec, measuring?: RoundingSpec): SettingPointPlan;
    /**
     * The largest block, a whole number of steps of `grid` (1 .. constants.SIZE_MAX), whose centre on point is not
     * wider than `wantedWidth` (1 .. constants.SIZE_MAX). Of the spec, columns, sash, set-off and layout count; block
     * and rows are not used (for a wanted length, give the rows as columns). Statuses of settingPoint() else. Source:
     * geometry. Example: 5 columns within 90 in, in steps of 1/4 in: blocks of 12 1/2 in finished. Since 1.0.
     * muslin_setting_point_block_for_width() in muslin/setting.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    settingPointBlockForWidth(wantedWidth: LengthLike, grid: LengthLike, spec?: SettingPointSpec): Length;
    /**
     * Of the spec, sash, set-off, allowance, take-up and layout count. MuslinNoFitError when the square leaves no block
     * of a tick, in "sashInner" none a tick above the sash (the limit is the least square that does), or when rounding
     * leaves none (the problem names the block as rounded, and the limit is the least on the grid). Source: geometry.
     * Example: a side square cut 12 3/4 in, down to 1/8 in: blocks up to 8 1/8 in finished. Since 1.0.
     * muslin_setting_point_block_from_side() in muslin/setting.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    settingPointBlockFromSide(sideSquareCut: LengthLike, spec?: SettingPointSpec, rounding?: RoundingSpec): Rounded;
    /**
     * A log cabin block: its size, its logs, and the strips for all blocks. Every log is as long as the raw edge it is
     * sewn to: it is cut as long as the block there measures unfinished. `widths` (null with n 0) gives the logs widths
     * of their own: n = rounds, one for each round, or n = the number of logs, one for each in sewing order; else
     * MuslinRangeError. A row of strips is counted for each half and cut width (see logcabinStrips()).
     * MuslinSeamTooWideError when a centre or a log, given as cut, is m or less; MuslinRangeError also when the
     * finished block would pass constants.SIZE_MAX; MuslinNoYieldError when the longest log of a half is longer than
     * the strip without its end loss (join strips first, and give the joined length as usable width). O(logs x kinds).
     * Source: geometry. Example: centre 2 in, 3 rounds of logs 1 in finished, 20 blocks: 8 in finished, 8 1/2 in
     * unfinished, 12 logs each, the longest cut 8 1/2 in, and 2 strips of 2 1/2 in for the centres. Since 1.0.
     * muslin_logcabin_plan() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinNoYieldError}
     */
    logcabinPlan(widths: LengthsLike, spec?: LogcabinSpec): Logcabin;
    /**
     * Statuses as for logcabinPlan(), but the strips are not asked about. O(logs). Source: geometry. Example: centre 2
     * in, logs 1 in finished, from the top clockwise: cut lengths 2 1/2, 3 1/2, 3 1/2, 4 1/2 in; the block then
     * measures 4 1/2 in. Since 1.0. muslin_logcabin_logs() in muslin/rounds.h. Since 1.0.
     */
    logcabinLogs(widths: LengthsLike, spec?: LogcabinSpec): readonly LogcabinLog[];
    /**
     * It can be more than the best plan, never fewer. Statuses as for logcabinPlan(). O(logs x kinds). Source: common
     * practice, no source, for both ways; geometry. Example: 20 blocks, centre 2 in, 3 rounds of logs 1 in finished,
     * strips 40 in: of the first half 600 in, by length 15 strips; cut so, 16. Since 1.0. muslin_logcabin_strips() in
     * muslin/rounds.h. Since 1.0.
     */
    logcabinStrips(widths: LengthsLike, spec?: LogcabinSpec): readonly LogcabinStrip[];
    /**
     * The log width that finishes a block of `wanted` with so many rounds round the centre, brought to the grid, and
     * what the block then becomes. MuslinNoFitError when the rounded log would be nothing (problem: the log, and one
     * tick). logFinished is not used, 0 or more. Source: geometry. Example: a 12 in block round a 2 in centre in 3
     * rounds, to the nearest 1/8 in: 10/6 in, so logs 1 5/8 in finished, cut 2 1/8 in, and the block finishes at 11 3/4
     * in. Since 1.0. muslin_logcabin_log_for() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    logcabinLogFor(spec?: LogcabinFitSpec, rounding?: RoundingSpec): LogcabinFit;
    /**
     * How many rounds of such logs fit round the centre within `wanted`; 0 when not even one does, and more than
     * constants.ROUNDS_MAX when they do, which the other calls refuse. `rounds` of the spec is not used, 0 ..
     * constants.ROUNDS_MAX; exactNumerator and exactDenominator are 0. Source: geometry. Example: within 10 in, round a
     * 2 in centre with logs 1 1/2 in finished: 2 rounds, 8 in finished, 2 in short of it; with a 4 in centre it would
     * come out. Since 1.0. muslin_logcabin_rounds_for() in muslin/rounds.h. Since 1.0.
     */
    logcabinRoundsFor(spec?: LogcabinFitSpec): LogcabinFit;
    /**
     * Raw edges of the pieces, every seam, mitre included, with its m / 2 on each piece. Round an opening L, with sharp
     * tips: long L + 2 W + (1 + sqrt 2) m, short L + (sqrt 2 - 1) m; for an unfinished side L + m and no take-up, long
     * is what borderPlan() gives a mitred piece. The long edge is rounded and the piece cut from it, so the short edge
     * is off by as much. A strip holds the pieces nested: what their long edges have beyond the cut width, and the cut
     * width once more for the slanting ends. Round up to be sure of the tips. MuslinNoFitError when rounding leaves
     * nothing of a short edge (problem: the grid, limit 0). Source: geometry. Example: a 6 in square opening, frame 2
     * in, 1/4 in seams, up to 1/8 in: strips cut 2 1/2 in, long 11 1/4 in, short 6 1/4 in, and one strip of 37 1/2 in
     * holds all four. Since 1.0. muslin_frame_pieces() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    framePieces(spec?: FrameSpec, rounding?: RoundingSpec): Frame;
    /**
     * Source: geometry. Example: a 6 in square opening, frame 2 in, 1/4 in seams: the cut outline goes from 0, 0 over
     * about 11.207, 0 and 8.707, 2 1/2 to 2 1/2, 2 1/2. Since 1.0. muslin_frame_outline() in muslin/rounds.h. Since
     * 1.0.
     */
    frameOutline(spec?: FrameSpec, rounding?: RoundingSpec): readonly FrameCorner[];
    /**
     * Grows a medallion round by round and answers into the caller's n rows (1 .. constants.ROUNDS_MAX). A pieced round
     * that leaves a rest is no failure: its row says so. A "coping" round stands directly before a "pieced" one (else
     * MuslinChoiceError, naming the kind). With the next round's repeat r, the least k with k r >= run + 2 width is
     * taken for the sides and for top and bottom apart, and the strips get (k r - run) / 2; run is the side, or, for
     * top and bottom that run through the corners, the side with two unit depths. MuslinNoFitError when equal strips
     * are asked for and no width does for both (limit 0), or else when that passes `most` on any side (the limit is the
     * wider strip, with which as `most` the round comes out). MuslinRangeError also when `most` is below `width`, or
     * the finished quilt would pass constants.SIZE_MAX. On failure no row is touched. Two passes. Source: geometry; the
     * coping strip is common practice, no source. Example: centre 20 in, then coping of 1/2 to 3 in before a border of
     * 4 in squares: coping 2 in, cut 2 1/2 in, and 6 squares a side, 24 and 4 in the corners; 32 in finished. Since
     * 1.0. muslin_medallion_plan() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinNoFitError}
     * @throws {MuslinRangeError}
     */
    medallionPlan(rows: readonly MedallionRow[], spec?: MedallionSpec): { readonly rows:
        readonly Filled<MedallionRow>[]; readonly out: Medallion };
    /**
     * Units of one repeat along a side: how many, what is left, what repeat would come out, and spacers that share what
     * is left. Source: geometry. Example: 50 in of 4 in units with two spacers, to 1/8 in: 12 units leave 2 in, spacers
     * 1 in finished, cut 1 1/2 in; with a repeat of 4 1/8 in, 12 units are 1/2 in short. Since 1.0.
     * muslin_repeat_plan() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    repeatPlan(spec?: RepeatSpec, rounding?: RoundingSpec): Repeat;
    /**
     * The largest repeat from `least` (0 or more) to `most` (1 or more) that divides both sides of a quilt: a whole
     * part of their greatest common measure. MuslinRangeError also when most is below least; MuslinNoFitError when the
     * largest that does not pass `most` is below `least` (limit 0). O(log size). Source: geometry. Example: 42 x 48 in,
     * 2 to 4 in: 3 in, 14 units across and 16 down. Since 1.0. muslin_repeat_common() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinNoFitError}
     */
    repeatCommon(width: LengthLike, height: LengthLike, least: LengthLike, most: LengthLike, rounding?: RoundingSpec):
        CommonRepeat;
    /**
     * A pieced border of squares on point: sizes to cut, counts, and what the side leaves. The long edges of the
     * setting triangles lie on the border's edge, with the grain. `cutting` rounds what is cut and `measuring` what is
     * reported as finished; in the problem their members have `at` 0 and 1. MuslinRangeError also when the squares
     * would be less than a tick from tip to tip; MuslinNoFitError when not one of the given diagonal fits the side
     * (problem: the side, and the diagonal), or when rounding leaves nothing of a square but its seams (the grid, limit
     * 0). Sources: Why I cut strips at 1.91 inches for that border (blog, 2008) for the squares, geometry for the
     * triangles. Example: diagonal 2 in, 1/4 in seams, a side of 40 in, up to 1/64 in: strips cut 1 59/64 in, 20
     * squares, 38 setting triangles. Since 1.0. muslin_point_border_plan() in muslin/rounds.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinNoFitError}
     */
    pointBorderPlan(spec?: PointBorderSpec, cutting?: RoundingSpec, measuring?: RoundingSpec): PointBorder;
    /**
     * The size of a quilt for a mattress. Width and length follow Standard quilt sizes for mattresses (quilting
     * magazine, 2022) and How to make a bed quilt the right size; the corner is geometry: cloth hangs over the
     * mattress's corner as far as the corner of the quilt is from it, and a circle that touches both edges reaches as
     * far as the longer drop. MuslinRangeError also when a side of the top would pass constants.SIZE_MAX ("quiltWidth"
     * or "quiltLength"). Example: a mattress 60 x 80 in and 12 in deep: 84 x 92 in, its square corners hang 16.97 in.
     * Since 1.0. muslin_bed_size() in muslin/fit.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    bedSize(spec?: BedSpec): Bed;
    /**
     * Backwards: how a quilt of a given size lies on a mattress, in the middle, and what it falls short by. Source: the
     * same sums turned round. Example: a quilt 84 x 92 in on a mattress 60 x 80 in hangs 12 in on each side and at the
     * foot. Since 1.0. muslin_bed_covered() in muslin/fit.h. Since 1.0.
     */
    bedCovered(spec?: BedCoveredSpec): BedCover;
    /**
     * Every setting of the kinds, sizes and counts allowed whose width and length lie within the tolerances, compared
     * exactly, on point too, and do not pass constants.SIZE_MAX; ranked as asked, and the same list every time: equals
     * are ordered by what they are off, then fewer blocks, kind, larger block, narrower sash, narrower border, fewer
     * columns. Ask, fill: see base.h; a count of 0 is an answer too (see fitNearest). No setting is found twice, but
     * different ones may have one size. MuslinChoiceError for "settingKind": no kind is allowed. MuslinRangeError also
     * for a most below its least. MuslinWorkLimitError, before anything is written; the problem's limit is workLimit.
     * With `at` 0 there are more combinations than that: value is their number (INT64_MAX: or more). With `at` 1 more
     * settings are found: value is how many were when the search ended, so there may be more. Columns and rows are
     * solved for, not tried, so one combination takes constant time; n settings found take O(n log n) to put in order,
     * in the caller's rows. Source: sizes by geometry. Example: 60 x 72 in from 12 in blocks, straight: 5 x 6 blocks.
     * Since 1.0. muslin_fit_settings() in muslin/fit.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinRangeError}
     * @throws {MuslinWorkLimitError}
     */
    fitSettings(spec?: FitSpec): readonly Fit[];
    /**
     * The one setting that comes nearest to the wanted size, whatever the tolerances, `best` and `rank` say (they must
     * still be in range); its rankKey is that of "nearest", and equals are decided in the order above. No side of it
     * passes constants.SIZE_MAX. MuslinNoFitError when there is none: no count of the parity asked for lies between its
     * least and its most, or even the least counts are too large. Other statuses as above; the work limit holds for the
     * combinations alone. Example: 61 x 72 in from 12 in blocks, straight: 5 x 6 blocks, 1 in too narrow. Since 1.0.
     * muslin_fit_nearest() in muslin/fit.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    fitNearest(spec?: FitSpec): Fit;
    /**
     * The number of blocks for a width: (wanted - 2 border + sash) / (block + sash), rounded as asked but to one block
     * at least. MuslinNoFitError when rounded down and not even one block fits (value: the wanted width; limit: what
     * one block takes). Source: How-to article on fitting sashed squares to a quilt width. Example: 88 in wide, borders
     * of 4 in, blocks of 12 in, sashes of 2 in: 5.86, so 6 blocks and a width of 90 in. Since 1.0. muslin_fit_across()
     * in muslin/fit.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    fitAcross(spec?: FitAcrossSpec): FitAcrossBlocks;
    /**
     * Rows of equilateral triangles, point up and point down in turn, for a quilt of about this size, and how to cut
     * them from strips. The counts are found exactly; one at least of each. The halves are cut from the same strips:
     * square to the strip on one side, at 60 degrees on the other, left and right ones in turn. MuslinNoFitError when
     * rounded down and not even one row or side fits. Source: How to cut equilateral triangles (blog) for rows and
     * sides, geometry for the rest. Example: 40 x 50 in with a height of 4 1/4 in: 12 rows, 51 in long, and 8 sides
     * across; strips cut 5 in for sharp tips, 4 3/4 in for blunt ones. Since 1.0. muslin_fit_triangles() in
     * muslin/fit.h. Since 1.0.
     * @throws {MuslinNoFitError}
     */
    fitTriangles(spec?: FitTrianglesSpec): FitTriangleRows;
    /**
     * A pattern made larger or smaller: n finished sizes in the array (n 1 .. constants.COUNT_MAX), each scaled exactly
     * and given its seams back, and set against the marks of the ruler; and the nearest scales that keep all of them on
     * the marks. A new size is whole ruler marks less seams for every size at once only when the unit, which all of
     * them are multiples of, becomes one of every `grid` ticks; so no scale is searched for, and none is overlooked.
     * There is none where the seams do not suit the marks (allowances of 1/16 in with marks at 1/4 in, and sizes of 1
     * and 2 units). A scale whose sizes would pass constants.SIZE_MAX is left out. MuslinOverflowError: a new size
     * passes constants.SIZE_MAX ("ratio"; `at` names the row, `value` its finished size). Nothing is written before all
     * rows are checked. O(n). Source: Learn how to resize quilt blocks (take the seams off, scale, put them back) and
     * geometry. Example: sizes of 3 and 6 in finished at 3 / 4: 2 1/4 and 4 1/2 in, cut 2 3/4 and 5 in. Since 1.0.
     * muslin_fit_rescale() in muslin/fit.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    fitRescale(rows: readonly FitRescaleRow[], spec?: FitRescaleSpec): { readonly rows:
        readonly Filled<FitRescaleRow>[]; readonly out: FitRescaled };
    /**
     * The cut width of a binding from what it shall show, or what a given cut width shows. Double fold: C = 2 (s +
     * front + t + back), so the back shows C/2 - s - front - t. Single fold: C = s + front + t + back + turnUnder, the
     * back C - s - front - t - turnUnder. Source: geometry; 4 w + 1/2 in and 6 w + ease, the rules in print, are
     * special cases. Example: all 1/4 in, double fold: C = 1 1/2 in. Since 1.0. muslin_binding_measure() in
     * muslin/finishing.h. Since 1.0.
     */
    bindingMeasure(spec?: BindingWidthSpec): BindingWidth;
    /**
     * Length, strips, joins and cloth for a binding; the run is runPlan()'s. MuslinNoYieldError when a join eats a
     * whole strip and one strip is not enough; MuslinRangeError also when the run passes the longest that runPlan()
     * takes; MuslinOverflowError when it needs more than constants.COUNT_MAX strips. Source: sums, and common practice
     * for the extra. Since 1.0. muslin_binding_plan() in muslin/finishing.h. Since 1.0.
     * @throws {MuslinNoYieldError}
     * @throws {MuslinRangeError}
     * @throws {MuslinOverflowError}
     */
    bindingPlan(spec?: BindingSpec): Binding;
    /**
     * The continuous tube from a rectangle a x b (a the shorter side; a square is cut on its diagonal, of a longer
     * rectangle a 45 degree corner is moved to the other end). The first seam takes 2 s off b, so there are n =
     * floor((b - 2 s) / (sqrt 2 w)) rounds, each sqrt 2 a long; the tube's own seam crosses the strip n - 1 times.
     * Length n sqrt 2 a - (n - 1) 2 sqrt 2 s, ends at 45 degrees. Exact, rounded once. Source: geometry. No round at
     * all is an answer (length 0), and so it is when the seams take up the whole of a: a <= 2 s. MuslinRangeError also
     * when n x a passes constants.SIZE_MAX. Example: 18 x 18 in, 2 1/2 in strip, 1/4 in seams: 4 rounds, 99.70 in.
     * Since 1.0. muslin_bias_tube() in muslin/finishing.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    biasTube(spec?: BiasSpec): Bias;
    /**
     * The least square, on the rounding's grid, whose tube gives `wanted`. rounding's direction must be up
     * (MuslinChoiceError) and its tolerance 0 (MuslinRangeError). Area rules in print are too small in places: the tube
     * loses two allowances a round and whole rounds at its edge. MuslinRangeError also when no square up to
     * constants.SIZE_MAX will do (the limit is what the largest gives), or when the least one gives so much more than
     * wanted that biasTube() would refuse it. Source: geometry, as for the tube. Cost: the logarithm of
     * constants.SIZE_MAX / grid. Example: 55 in of 2 1/2 in, 1/4 in seams, to 1/8 in: 13 3/8 in. Since 1.0.
     * muslin_bias_least_square() in muslin/finishing.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinRangeError}
     */
    biasLeastSquare(spec?: BiasSpec, rounding?: RoundingSpec): Bias;
    /**
     * Separate strips cut side by side from both halves of a square (`width`; `length` must equal it or be 0), parallel
     * to its diagonal, ends left at 45 degrees, every other one turned end for end, joined into one run: in each half n
     * = floor(S / (sqrt 2 w)) strips, down to the short ones in the corner; measured along their middle they add up to
     * sqrt 2 n S - n n w a half, and each of the 2 n - 1 joins takes 2 sqrt 2 s. Down to a tick. No strip at all is an
     * answer (length 0). MuslinRangeError also when n x S passes constants.SIZE_MAX. Source: geometry. Example: 18 in
     * square, 2 1/2 in strips, 1/4 in seams: 10 strips, 123.19 in. Since 1.0. muslin_bias_strips() in
     * muslin/finishing.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    biasStrips(spec?: BiasSpec): Bias;
    /**
     * Batting for a quilt: the size to cut, the package to buy, or the pieces of a roll. That no listed package covers
     * is an answer (package -1), not an error. Source: margins by common practice, the table's rows name theirs;
     * geometry. Cost: rows of the table. Example: 60 x 80 in with 3 in margins: 66 x 86 in. Since 1.0.
     * muslin_batting_plan() in muslin/finishing.h. Since 1.0.
     */
    battingPlan(spec?: BattingSpec): Batting;
    /**
     * "seams" n panels joined are n u - 2 q (n - 1) wide; the least n, 2 or more. None when u <= 2 q. Rounding length
     * by length takes each panel up to the step, the insert's strips together, and the extra repeat. MuslinNoFitError
     * when no layout serves; the limit is the fabric width that would. MuslinRangeError also when the selvages leave
     * nothing. Source: geometry; whole repeats for every length are common practice in workrooms. Example: a backing of
     * 80 x 56 in at 40 in usable, 1/2 in seams: two panels side by side give 79 in, so 80 in needs three. Since 1.0.
     * muslin_backing_layouts() in muslin/finishing.h. Since 1.0.
     * @throws {MuslinNoFitError}
     * @throws {MuslinRangeError}
     */
    backingLayouts(spec?: BackingSpec): readonly Backing[];
    /**
     * Halves of an odd number of ticks differ by one. MuslinChoiceError for an unknown layout, MuslinNoFitError for one
     * that cannot serve, else as backingLayouts(). O(rows). Example: 59 in across from 42 in cloth, 1/2 in seams,
     * "centre": side 9 1/2 in, centre 42 in, side 9 1/2 in. Since 1.0. muslin_backing_panels() in muslin/finishing.h.
     * Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinNoFitError}
     */
    backingPanels(layout: BackingLayout, spec?: BackingSpec): readonly Panel[];
    /**
     * Hanging sleeve (one, or two with a gap), label, corner triangles. A sleeve's length is (quiltWidth - 2 inset - (n
     * - 1) gap) / n, down to a tick. A folded square lies in the quilt's corner: each of its raw sides loses one
     * allowance to the other's seam and one at the tip, where the fold runs at 45 degrees. MuslinRangeError also when
     * inset and gap leave no sleeve. Source: common practice, no source, and geometry. Example: quilt 60 in wide, the
     * initial values: sleeve 58 in, cut 60 x 9 in. Since 1.0. muslin_hanging_plan() in muslin/finishing.h. Since 1.0.
     * @throws {MuslinRangeError}
     */
    hangingPlan(spec?: HangingSpec): Hanging;
    /**
     * Plans the quilt. The sets to sew are the least that give the segments for the tops planned. Warnings: "noSlack"
     * when the yield stands on its edge; "nestConflict" when some segment is turned or some join does not nest;
     * "setRepeats" when the sets are fewer than a block's segments; "smallQuilt" when both finished sides of a top are
     * 60 in or less (a cautious limit: common practice, no source; the caution itself is that of the American Academy
     * of Pediatrics, 2022: no loose bedding in an infant's sleep space). Statuses: MuslinRangeError, also when the set
     * would be wider, a block wider unfinished or a finished top larger than constants.SIZE_MAX, or a top of more than
     * constants.COUNT_MAX blocks; MuslinChoiceError (turning, nesting); MuslinSeamTooWideError when nothing of a strip
     * or a segment would be seen; MuslinNotSquareError (a quarter turn of a block that is not square, or segmentCut 0
     * where no whole tick makes it square, both beyond squareTolerance: problem->value is the finished width,
     * problem->limit the height); MuslinNoYieldError (a set gives no segment: problem->limit is the usable length that
     * gives one); MuslinNotEnoughError (the strips do not give the tops wished for, or not one: problem->value is what
     * is wanted, problem->limit what they give, in tops). Source: common practice, no source, for the way; geometry for
     * the sizes. Example: 42 strips, 6 a set, 42 in usable, 1/2 in trimmed, 3 x 3 blocks of two segments 6 1/2 in: 2
     * tops 36 in square finished, 6 strips left. Since 1.0. muslin_stripquilt_plan() in muslin/stripquilt.h. Since 1.0.
     * @throws {MuslinRangeError}
     * @throws {MuslinChoiceError}
     * @throws {MuslinSeamTooWideError}
     * @throws {MuslinNotSquareError}
     * @throws {MuslinNoYieldError}
     * @throws {MuslinNotEnoughError}
     */
    stripquiltPlan(spec?: StripquiltSpec): Stripquilt;
    /**
     * The fewest strips that give the tops wished for, or one when none is: how many to have, or to add to those in
     * hand. `strips` of the spec may be 0 here, and is not looked at. MuslinTooManyError: more than constants.COUNT_MAX
     * would be needed (problem->value is the tops, problem->limit what so many strips give); the other statuses as
     * stripquiltPlan() has them, but MuslinNotEnoughError. Constant time. Source: geometry; that sets are sewn whole is
     * common practice, no source. Example: that quilt, one top, takes 18 strips, and two take 36. Since 1.1.
     * muslin_stripquilt_strips_needed() in muslin/stripquilt.h. Since 1.1.
     * @throws {MuslinTooManyError}
     * @throws {MuslinNotEnoughError}
     */
    stripquiltStripsNeeded(spec?: StripquiltSpec): number;
    /**
     * A set named twice in a row is in each of its blocks twice. Without turning, `turned` is 0; with it, `notNesting`
     * is 0. Where the sets are fewer than a block's segments, every block repeats one and is marked. O(groups).
     * Example: 18 segments from 3 sets in 9 blocks of two: blocks 1 to 3 take sets 1 and 2, blocks 4 to 6 sets 1 and 3,
     * blocks 7 to 9 sets 2 and 3. Since 1.0. muslin_stripquilt_groups() in muslin/stripquilt.h. Since 1.0.
     */
    stripquiltGroups(spec?: StripquiltSpec): readonly BlockGroup[];
    /**
     * Which way to press all seams of set `set` (from 1), and how many segments its stack gives. Set 1 goes to its top.
     * That it is the fewest is tested against all pressings of small plans and against an exact search of larger ones.
     * The rest is in BlockGroup's `turned` or `notNesting`. MuslinIndexError for a set outside 1 .. sets. `segments`
     * may be left out. Example: the three sets of the example above: set 1 to its top, set 2 as well, set 3 away from
     * it; the three blocks of sets 1 and 2 have a segment turned. Since 1.0. muslin_stripquilt_pressing() in
     * muslin/stripquilt.h. Since 1.0.
     * @throws {MuslinIndexError}
     */
    stripquiltPressing(set: Whole, spec?: StripquiltSpec): { readonly pressing: SetPressing; readonly segments: number
        };
    /**
     * Length of all seams of strip sets and of tops of blocks. A seam is sewn from raw edge to raw edge, so it is as
     * long as the unfinished piece: finished + 2 s + u. Borders, backing and binding are not in it; lengthDot() adds up
     * other seams. MuslinOverflowError when seams or a length pass constants.LENGTH_MAX. Source: geometry. Example: 7
     * sets of 6 strips 40 in long, and 2 tops of 3 x 3 blocks of two segments, 12 in finished: 1400 in in the sets, 225
     * in in the blocks, 150 in in the rows, 146 in between the rows: 1921 in. Since 1.0. muslin_piecing_plan() in
     * muslin/supplies.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    piecingPlan(spec?: PiecingSpec): Piecing;
    /**
     * Sewing thread for seams in lockstitch (ISO 4915 type 301), half of it from the needle, half from the bobbin. By
     * the ratio, thread = seam x above / below: 5 : 2 is usual for 301. By the formula, thread = seam x (2 + 2 T S)
     * with S stitches to the unit: each of the two threads lies once along the seam and goes once through the thickness
     * a stitch. The two agree for patchwork. MuslinOverflowError when the thread passes constants.LENGTH_MAX. Sources:
     * Stitch classes 300-400 (Apparel Science) for 2.5 and 1 : 1; Sewing thread consumption guide (textile blog) for
     * the formula; Measuring actual thread consumption (Apparel Science) for 10 to 15 % waste, a thread-industry
     * handout for 15 to 20 %. Example: 220 cm of seam: 550 cm of thread, with 15 % waste 632.5 cm; 540 cm and 15 % are
     * 621 cm. Since 1.0. muslin_thread_plan() in muslin/supplies.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    threadPlan(spec?: ThreadSpec): Thread;
    /**
     * How many stitches of `stitchLength` (1 .. constants.SIZE_MAX) lie in `length` (0 .. constants.SIZE_MAX; an inch
     * is 8128): thousandths gets length / stitchLength with so many decimals (0 .. 3), rounded as `direction`
     * (Direction) says, always counted in thousandths; exact, which may be left out, becomes 1 when nothing was lost.
     * Source: Convert metric stitch length to stitches per inch (public blog), 25.4 / mm. Example: stitches of 2.5 mm
     * make 10.160 in an inch, exactly. Since 1.0. muslin_stitch_count() in muslin/supplies.h. Since 1.0.
     */
    stitchCount(length: LengthLike, stitchLength: LengthLike, decimals: Whole, direction: Direction): {
        readonly thousandths: number; readonly exact: boolean };
    /**
     * The other way round: the stitch of which so many thousandths (1 .. constants.COUNT_MAX) lie in `length` (0 ..
     * constants.SIZE_MAX), rounded as asked. Source: as stitchCount(). Example: 12 stitches in an inch are 677 ticks
     * long, 2.1 mm to tenths. Since 1.0. muslin_stitch_length() in muslin/supplies.h. Since 1.0.
     */
    stitchLength(length: LengthLike, thousandths: Whole, rounding?: RoundingSpec): Rounded;
    /**
     * Number and length of the lines of quilting on a rectangle. Straight lines lie at offset, offset + d, ... from the
     * first edge and no nearer than the offset to the last; with an offset of 0 a line on the edge itself counts.
     * Diagonals from an offset lie at offset, offset + d, ... from the corner they cut off, measured square to them,
     * and no nearer than the offset to the far corner; at 0 a line would be a point and is not counted. Diagonals from
     * a corner: one starts in it, and others lie at d, 2 d, ... on both sides as far as they meet the area. The second
     * way is the mirror image of the first. Lines end at the edges of the area; tails and turns belong into the waste
     * of the thread. No line at all is an answer. MuslinOverflowError when an outline times its passes passes
     * constants.LENGTH_MAX. Source: geometry: a diagonal of a w x h area at the distance p from a corner is 2 p long,
     * then sqrt 2 x the shorter side, then sqrt 2 (w + h) - 2 p. Example: 40 x 48 in, a grid of 4 in from an offset of
     * 2 in: 12 lines from side to side and 10 from top to bottom, 960 in; crosshatched at 4 in from a corner: 32 lines.
     * Since 1.0. muslin_quilting_lines() in muslin/supplies.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    quiltingLines(spec?: QuiltingSpec): Quilting;
    /**
     * What a quilt weighs, layer by layer, from what its cloth weighs for a square metre (its maker says, or weigh a
     * piece of known size). Thread is left out: it is a few grams. One square metre is 320000 x 320000 square ticks, so
     * each mass is exact before it is rounded. In the problem the densities have `at` 0 to 3 in the order of the
     * struct. Source: geometry. Example: 1.5 x 2 m, top and backing of 120 g, batting of 150 g a square metre, 10 % in
     * seams: 396 + 450 + 360 = 1206 g. Since 1.0. muslin_weight_plan() in muslin/supplies.h. Since 1.0.
     */
    weightPlan(spec?: WeightSpec): Weight;
    /**
     * Ounces for a square yard, in thousandths of an ounce (0 .. constants.COUNT_MAX), as mg for a square metre,
     * rounded as `direction` (Direction) says. Source: NIST Handbook 44 and SP 811: the pound is 453.59237 g, the yard
     * 0.9144 m, exactly. Example: 4 oz a square yard are 135623 mg a square metre, nearest. Since 1.0.
     * muslin_density_from_ounces() in muslin/supplies.h. Since 1.0.
     */
    densityFromOunces(thousandths: Whole, direction: Direction): number;
    /**
     * A mass in mg (0 .. constants.LENGTH_MAX) in ounces with so many decimals (0 .. 3), rounded as `direction`
     * (Direction) says and counted in thousandths. Source: as above. Example: 1206 g with one decimal, nearest, are
     * 42500 thousandths, 42.5 oz. Since 1.0. muslin_mass_in_ounces() in muslin/supplies.h. Since 1.0.
     */
    massInOunces(mass: Whole, decimals: Whole, direction: Direction): number;
    /**
     * What one thing costs. The money has as many decimals as the caller says; no money is converted.
     * MuslinOverflowError when the cost passes constants.MONEY_MAX. Source: geometry; rounding to the nearest with
     * halves upwards is common practice, no source. Example: 3 1/8 yd at 11.50 the yard cost 35.94, of 35.9375; 45
     * strips at 42.00 for a bundle of 40 are two bundles for 84.00, with 35 strips to spare. Since 1.0.
     * muslin_cost_plan() in muslin/supplies.h. Since 1.0.
     * @throws {MuslinOverflowError}
     */
    costPlan(spec?: CostSpec): Cost;
    /**
     * The sum of a list, each row rounded on its own as a bill does it, and the sum not rounded again.
     * MuslinOverflowError when a cost or the sum passes constants.MONEY_MAX. One pass. Source: geometry. Example: 35.94
     * for the cloth and 84.00 for the bundles are 119.94. Since 1.0. muslin_cost_total() in muslin/supplies.h. Since
     * 1.0.
     * @throws {MuslinOverflowError}
     */
    costTotal(rows: readonly CostSpec[]): bigint;
    /**
     * The sort of an id (Sort; 0 for what is no id) and its number, counted from 1 for each sort in the order of making
     * (0 for what is no id). Neither asks whether a quilt has it. Constant time. Example: the third node made has
     * number 3. Since 1.0 both. muslin_id_sort() in muslin/quilt.h. Since 1.0.
     */
    idSort(id: Id): Sort | null;
    /**
     * The sort of an id (Sort; 0 for what is no id) and its number, counted from 1 for each sort in the order of making
     * (0 for what is no id). Neither asks whether a quilt has it. Constant time. Example: the third node made has
     * number 3. Since 1.0 both. muslin_id_number() in muslin/quilt.h. Since 1.0.
     */
    idNumber(id: Id): number;
    /**
     * The label of stack `number` (0 .. constants.COUNT_MAX): A .. Z, then AA, AB and so on, terminated; text out as in
     * base.h. Source: common practice, no source. Example: 27 is AB. Since 1.0. muslin_sewing_label() in
     * muslin/sewing.h. Since 1.0.
     */
    sewingLabel(number: Whole): string;
    /**
     * Which print goes where: `prints[i]` says for how many places print i suffices, 0 .. constants.COUNT_MAX (`kinds`
     * of them, 1 .. 2^20), `touches` which places touch (touchN, 0 .. 2^27; a pair named twice counts twice),
     * `given[p]` a print that place p must have, or -1; given may be left out. Writes one print number for each place
     * to `out`. Where it costs no touch, every print lies spread over the whole. The lower bound counts what is given,
     * packs pairs, rings and cliques of places that cannot all differ because few kinds are there, and knows that more
     * of a print than can lie apart must touch. MuslinChoiceError: a place that touches itself. MuslinNotEnoughError
     * also for a print that is given to more places than it suffices for (`at`: the print). Example: 9 blocks of two
     * prints, 5 and 4 of them, in 3 x 3: none touch. Since 1.0. muslin_scatter_prints() in muslin/scatter.h. Since 1.0.
     * @throws {MuslinChoiceError}
     * @throws {MuslinNotEnoughError}
     */
    scatterPrints(prints: WholeNumbers, touches: readonly TouchSpec[], spec?: ScatterSpec & { readonly given?:
        WholeNumbers; readonly progress?: Progress }): { readonly out: readonly number[]; readonly result: Scattered };
    /**
     * The lower bound counts lines in which more blocks show one print at both ends than can lie apart. Example: four
     * blocks with the same print left and right, in one row of four: turned by quarters in turn, none meet. Since 1.0.
     * muslin_scatter_blocks() in muslin/scatter.h. Since 1.0.
     */
    scatterBlocks(blocks: readonly EdgePrintsSpec[], spec?: ScatterBlocksSpec & { readonly progress?: Progress }): {
        readonly rows: readonly PlacedBlock[]; readonly result: Scattered };
    /**
     * Strips dealt to sets: `prints[i]` strips of print i (kinds of them), `sets` of `stripsPerSet` (1 .. 2^24 each),
     * lying in their order in `out` (sets x stripsPerSet print numbers, and spec->places must say as many: else
     * MuslinRangeError). As few equal strips as possible lie in one set, and next to each other: its touches are all
     * pairs in a set, neighbours with double weight; `pairs` counts each once. Of prints of which there are too many,
     * strips stay over. No search is needed: the answer is always the least there is, `proven` is 1 and `work` 0; the
     * seed shuffles. Source: pigeonhole. Example: 12 strips of 6 prints, two each, into 2 sets: every set has all six.
     * Since 1.0. muslin_scatter_sets() in muslin/scatter.h. Since 1.0.
     * @throws {MuslinRangeError}
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
/** The caller's progress call ended it before there was an answer. */
export declare class MuslinStoppedError extends MuslinError {}
/** More would be needed than can be counted here; since 1.1. */
export declare class MuslinTooManyError extends MuslinError {}

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
