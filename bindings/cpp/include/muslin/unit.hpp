// muslin/unit.hpp - recipes for pieced shapes: what to cut for a finished size, and what a given piece can finish.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_UNIT_HPP
#define MUSLIN_UNIT_HPP

#include <muslin/unit.h>
#include <muslin/seam.hpp>

namespace muslin {

/** enum muslin_unit_kind */
enum class unit_kind : std::int32_t {
    /** one patch; W, H (0: a square). Region 1 */
    rectangle = MUSLIN_UNIT_RECTANGLE,
    /** a square of two triangles; W. Regions 1 and 2 */
    half_square = MUSLIN_UNIT_HALF_SQUARE,
    /** a square of four triangles, two fabrics facing; W. Regions 1 and 2 */
    quarter_square = MUSLIN_UNIT_QUARTER_SQUARE,
    /** one half (region 1) and two quarters (2, 3); W. Has hands: the same pieces make both, and TWO_AT_A_TIME
     * always two of each */
    split_quarter = MUSLIN_UNIT_SPLIT_QUARTER,
    /** a goose (1) between two triangles (2); W, H = W / 2 (or 0) */
    flying_geese = MUSLIN_UNIT_FLYING_GEESE,
    /** a square on its point (1) and four corners (2); W */
    square_in_square = MUSLIN_UNIT_SQUARE_IN_SQUARE,
    /** a rectangle (1) that loses its corners (2); W, H (0: square), corner */
    snowball = MUSLIN_UNIT_SNOWBALL,
    /** a rectangle of two triangles (1, 2); W, H. Has hands, cut each for itself */
    half_rectangle = MUSLIN_UNIT_HALF_RECTANGLE,
    /** an equilateral triangle; H, its height. finished_width: its side */
    triangle_60 = MUSLIN_UNIT_TRIANGLE_60,
    /** a 60 degree diamond; H, between two parallel sides. finished_width: its side, not the extent, which is half
     * as much again */
    diamond_60 = MUSLIN_UNIT_DIAMOND_60,
    /** a 45 degree diamond; H, between two parallel sides. finished_width: its side */
    diamond_45 = MUSLIN_UNIT_DIAMOND_45,
    /** H, from flat to flat. finished_width: from point to point */
    hexagon = MUSLIN_UNIT_HEXAGON,
    /** H, half of flat to flat. finished_width: its long side */
    half_hexagon = MUSLIN_UNIT_HALF_HEXAGON,
    /** ends at 45 degrees; W, the long side, and H; W at least 2 H */
    trapezoid = MUSLIN_UNIT_TRAPEZOID,
    /** a regular octagon (1) and its four corners (2); W */
    octagon = MUSLIN_UNIT_OCTAGON,
    /** eight diamonds (1), four squares and four triangles (2), set in; W */
    eight_pointed_star = MUSLIN_UNIT_EIGHT_POINTED_STAR,
    /** eight wedges, in turn 1 and 2, and four corners (3); W */
    kaleidoscope = MUSLIN_UNIT_KALEIDOSCOPE,
    /** a slice at 45 degrees from a strip set; W, across the slice, square to its long edges, not along the set; H,
     * of the set. Has hands, cut each for itself */
    slanted_slice = MUSLIN_UNIT_SLANTED_SLICE,
};

/** enum muslin_unit_method */
enum class unit_method : std::int32_t {
    /** each piece cut by itself; triangles from squares cut on the diagonal */
    pieces = MUSLIN_UNIT_METHOD_PIECES,
    /** two squares sewn on both sides of a drawn diagonal */
    two_at_a_time = MUSLIN_UNIT_METHOD_TWO_AT_A_TIME,
    /** two squares sewn all round and cut on both diagonals: bias outside */
    four_all_round = MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND,
    /** two squares sewn from middle to middle of the sides, cut into four squares */
    four_midpoints = MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS,
    /** two squares sewn on both sides of both diagonals, cut into eight */
    eight_at_a_time = MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME,
    /** geese: one large square and four small ones */
    four_at_a_time = MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME,
    /** squares sewn on their diagonal to a corner, folded back */
    flipped_corners = MUSLIN_UNIT_METHOD_FLIPPED_CORNERS,
    /** triangles, diamonds and the like cut from a strip of one height */
    strips = MUSLIN_UNIT_METHOD_STRIPS,
    /** half-squares cut on point along the seam of two strips */
    bias_strips = MUSLIN_UNIT_METHOD_BIAS_STRIPS,
};

/** enum muslin_tip */
enum class tip : std::int32_t {
    /** the whole raw point */
    sharp = MUSLIN_TIP_SHARP,
    /** cut off level with the allowance, as many rulers do: the strip is H + E high */
    blunt = MUSLIN_TIP_BLUNT,
};

/** enum muslin_cut_shape */
enum class cut_shape : std::int32_t {
    /** square or not */
    rectangle = MUSLIN_CUT_SHAPE_RECTANGLE,
    /** from a strip, alternately up and down; `pitch` holds `gives` of them */
    triangles = MUSLIN_CUT_SHAPE_TRIANGLES,
    /** from a strip, by parallel slanted cuts as far apart as the strip is high as cut */
    diamonds = MUSLIN_CUT_SHAPE_DIAMONDS,
    /** so */
    hexagons = MUSLIN_CUT_SHAPE_HEXAGONS,
    /** from a strip, alternately up and down */
    trapezoids = MUSLIN_CUT_SHAPE_TRAPEZOIDS,
    /** from a strip, alternately up and down */
    wedges = MUSLIN_CUT_SHAPE_WEDGES,
    /** a square that loses four corners */
    octagons = MUSLIN_CUT_SHAPE_OCTAGONS,
    /** from a strip set, by parallel cuts at 45 degrees */
    slices = MUSLIN_CUT_SHAPE_SLICES,
};

/** enum muslin_cut_again */
enum class cut_again : std::int32_t {
    /** sewn as it is cut */
    no = MUSLIN_CUT_AGAIN_NO,
    /** once on the diagonal: two pieces */
    once = MUSLIN_CUT_AGAIN_ONCE,
    /** on both diagonals: four pieces */
    twice = MUSLIN_CUT_AGAIN_TWICE,
};

/** enum muslin_grain */
enum class grain : std::int32_t {
    /** on all edges */
    all_edges = MUSLIN_GRAIN_ALL_EDGES,
    /** a triangle's short sides; its long side is bias */
    short_edges = MUSLIN_GRAIN_SHORT_EDGES,
    /** a triangle's long side; its short sides are bias */
    long_edge = MUSLIN_GRAIN_LONG_EDGE,
    /** the edges that lay along the strip; the slanted ones are bias */
    strip_edges = MUSLIN_GRAIN_STRIP_EDGES,
};

/** enum muslin_hand */
enum class hand : std::int32_t {
    /** as the kinds say, and all that have no hands */
    first = MUSLIN_HAND_FIRST,
    /** its mirror image */
    mirrored = MUSLIN_HAND_MIRRORED,
};

/** enum muslin_stage */
enum class stage : std::int32_t {
    /** what is seen of a patch: the finished patches fill the unit without gap or overlap */
    finished = MUSLIN_STAGE_FINISHED,
    /** the patch with e = E / 2 outside each edge: raw patches overlap by their seams */
    raw = MUSLIN_STAGE_RAW,
};

/** enum muslin_unit_step_kind */
enum class unit_step_kind : std::int32_t {
    /** draw a diagonal on the back */
    mark_line = MUSLIN_UNIT_STEP_MARK_LINE,
    /** draw both diagonals */
    mark_both = MUSLIN_UNIT_STEP_MARK_BOTH,
    /** draw lines from middle to middle of neighbouring sides */
    mark_middles = MUSLIN_UNIT_STEP_MARK_MIDDLES,
    /** draw a diagonal across the seam of a half-square */
    mark_across = MUSLIN_UNIT_STEP_MARK_ACROSS,
    /** mark where the seam lines cross at each corner, `measure` in from both edges */
    mark_corners = MUSLIN_UNIT_STEP_MARK_CORNERS,
    /** lay one on the other, right sides together */
    pair = MUSLIN_UNIT_STEP_PAIR,
    /** lay two half-squares together, fabrics opposite, seams locked */
    pair_halves = MUSLIN_UNIT_STEP_PAIR_HALVES,
    /** lay a small square on one of two opposite corners */
    pair_corner = MUSLIN_UNIT_STEP_PAIR_CORNER,
    /** lay two small squares on opposite corners, overlapping in the middle */
    pair_opposite = MUSLIN_UNIT_STEP_PAIR_OPPOSITE,
    /** sew on the drawn line */
    on_line = MUSLIN_UNIT_STEP_ON_LINE,
    /** sew on both sides of the line, `measure` from it */
    beside = MUSLIN_UNIT_STEP_BESIDE,
    /** sew round all edges, `measure` from them */
    round = MUSLIN_UNIT_STEP_ROUND,
    /** cut on the drawn line */
    cut_apart = MUSLIN_UNIT_STEP_CUT_APART,
    /** cut through the middle both ways */
    cut_squares = MUSLIN_UNIT_STEP_CUT_SQUARES,
    /** cut on both diagonals */
    cut_diagonals = MUSLIN_UNIT_STEP_CUT_DIAGONALS,
    /** cut the corner off, `measure` beyond the seam */
    trim_corner = MUSLIN_UNIT_STEP_TRIM_CORNER,
    /** fold the piece back over its seam and press */
    fold_back = MUSLIN_UNIT_STEP_FOLD_BACK,
    /** press the seam open */
    press_open = MUSLIN_UNIT_STEP_PRESS_OPEN,
    /** press the seam towards `region` */
    press_to = MUSLIN_UNIT_STEP_PRESS_TO,
    /** sew edge to edge, along one long edge */
    join = MUSLIN_UNIT_STEP_JOIN,
    /** sew two pieces together along their long sides */
    join_long = MUSLIN_UNIT_STEP_JOIN_LONG,
    /** ... along short sides, the same fabric always on the same side */
    join_short = MUSLIN_UNIT_STEP_JOIN_SHORT,
    /** sew a triangle's long side to a goose's short side, even at the foot */
    join_point = MUSLIN_UNIT_STEP_JOIN_POINT,
    /** sew a triangle's long side to one of two opposite sides, dog-ears alike */
    join_centred = MUSLIN_UNIT_STEP_JOIN_CENTRED,
    /** to the goose's other short side */
    join_again = MUSLIN_UNIT_STEP_JOIN_AGAIN,
    /** sew the parts together in pairs, seams meeting in the middle */
    join_parts = MUSLIN_UNIT_STEP_JOIN_PARTS,
    /** set a square in, each side from the mark outwards */
    set_in = MUSLIN_UNIT_STEP_SET_IN,
    /** sew from the raw edge in the middle outwards and stop at the mark */
    partial = MUSLIN_UNIT_STEP_PARTIAL,
    /** cut across the strip by parallel cuts at `angle`, `measure` apart: for diamonds as far as the strip is wide
     * as cut */
    cut_slanted = MUSLIN_UNIT_STEP_CUT_SLANTED,
    /** cut from the strip alternately up and down, `angle` from its edge */
    cut_turning = MUSLIN_UNIT_STEP_CUT_TURNING,
    /** octagon: cut the corners off the square from marks `from_corner` along both edges, so that each edge is
     * `measure` as cut */
    cut_to_shape = MUSLIN_UNIT_STEP_CUT_TO_SHAPE,
    /** cut squares on point, `measure` wide, their diagonal on the seam */
    cut_on_point = MUSLIN_UNIT_STEP_CUT_ON_POINT,
    /** trim to `measure` by `measure_height`; the seam runs from corner to corner */
    trim_to = MUSLIN_UNIT_STEP_TRIM_TO,
    /** lay the strips together that the pieces are cut from, right sides together */
    pair_strips = MUSLIN_UNIT_STEP_PAIR_STRIPS,
    /** as MARK_ACROSS, on each half-square */
    mark_across_each = MUSLIN_UNIT_STEP_MARK_ACROSS_EACH,
    /** mark where the seam lines cross at both wide-angled corners of a diamond */
    mark_wide = MUSLIN_UNIT_STEP_MARK_WIDE,
    /** ... at one right-angled corner, the one to be set in */
    mark_inner = MUSLIN_UNIT_STEP_MARK_INNER,
    /** lay each half-square on a square cut `measure` */
    pair_each_half = MUSLIN_UNIT_STEP_PAIR_EACH_HALF,
    /** lay a small square on one of the two corners that are left */
    pair_corner_left = MUSLIN_UNIT_STEP_PAIR_CORNER_LEFT,
    /** geese: lay a small square on the large square's corner that is left */
    pair_last_corner = MUSLIN_UNIT_STEP_PAIR_LAST_CORNER,
    /** geese: lay a square on one end, its line running down and outwards */
    pair_end = MUSLIN_UNIT_STEP_PAIR_END,
    /** ... on the other end of the same long edge, its line likewise */
    pair_other_end = MUSLIN_UNIT_STEP_PAIR_OTHER_END,
    /** sew on both sides of both lines, `measure` from them */
    beside_both = MUSLIN_UNIT_STEP_BESIDE_BOTH,
    /** cut each of the four squares apart on its line */
    cut_each_apart = MUSLIN_UNIT_STEP_CUT_EACH_APART,
    /** sew two pieces together along their long sides, mark on mark */
    join_marked = MUSLIN_UNIT_STEP_JOIN_MARKED,
    /** sew a triangle's long side to one of the other two sides, dog-ears alike */
    join_others = MUSLIN_UNIT_STEP_JOIN_OTHERS,
    /** sew triangles to every second side of an octagon, opposite ones first */
    join_every_second = MUSLIN_UNIT_STEP_JOIN_EVERY_SECOND,
    /** sew two wedges together along a long side, the same fabric always alike */
    join_wedges = MUSLIN_UNIT_STEP_JOIN_WEDGES,
    /** sew parts of wedges together, tips and seams meeting in the middle */
    join_middle = MUSLIN_UNIT_STEP_JOIN_MIDDLE,
    /** sew triangles to the wide ends of every second wedge, opposite ones first */
    join_wide_end = MUSLIN_UNIT_STEP_JOIN_WIDE_END,
    /** sew two pairs as in PARTIAL */
    partial_parts = MUSLIN_UNIT_STEP_PARTIAL_PARTS,
    /** sew two halves from mark to mark, straight through the middle */
    join_through = MUSLIN_UNIT_STEP_JOIN_THROUGH,
    /** set a triangle in by its short sides, each from the mark outwards */
    set_in_short = MUSLIN_UNIT_STEP_SET_IN_SHORT,
    /** trim the dog-ears off level */
    trim_ears = MUSLIN_UNIT_STEP_TRIM_EARS,
    /** trim; the seams meet in the middle and run out into corners */
    trim_crossed = MUSLIN_UNIT_STEP_TRIM_CROSSED,
    /** trim; seams run into the lower corners, the point lies an allowance inside */
    trim_geese = MUSLIN_UNIT_STEP_TRIM_GEESE,
    /** trim; a point lies an allowance inside the middle of each edge */
    trim_points = MUSLIN_UNIT_STEP_TRIM_POINTS,
    /** trim; each corner's seam meets the edges `from_corner` from the raw corner */
    trim_corners = MUSLIN_UNIT_STEP_TRIM_CORNERS,
    /** trim; two points lie an allowance inside each edge, `from_corner` from its ends */
    trim_star = MUSLIN_UNIT_STEP_TRIM_STAR,
    /** trim; the seam meets the shorter edges `from_corner` from the raw corner */
    trim_leaning = MUSLIN_UNIT_STEP_TRIM_LEANING,
    /** cut the strip across into rectangles `measure` long */
    cut_lengths = MUSLIN_UNIT_STEP_CUT_LENGTHS,
    /** hexagon: cut the corners off a rectangle from marks `from_corner` along its long edges to the middles of its
     * ends, so that each edge is `measure` as cut */
    cut_points = MUSLIN_UNIT_STEP_CUT_POINTS,
    /** cut wedges alternately up and down with a ruler whose tip has `angle` */
    cut_wedges = MUSLIN_UNIT_STEP_CUT_WEDGES,
    /** half-squares: cut both strips in turn square across and `angle` from the edge */
    cut_pairs = MUSLIN_UNIT_STEP_CUT_PAIRS,
};

/** struct muslin_unit_spec. A recipe wanted. `trim` is added once to the squares that triangles are cut from by
 * PIECES, TWO_AT_A_TIME and FOUR_ALL_ROUND, to the strips and the squares on point of BIAS_STRIPS, and to both
 * sides of a half-rectangle; twice by FOUR_MIDPOINTS and EIGHT_AT_A_TIME; of geese by FOUR_AT_A_TIME to the four
 * small squares alone. It changes nothing in a rectangle, by STRIPS, by FLIPPED_CORNERS, and in the square within
 * a square, an octagon, a star's diamonds and corner squares and a kaleidoscope's wedges. */
struct MUSLIN_CPP_TWIN unit_spec {
    using c_type = muslin_unit_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** W */
    muslin::length finished_width{};
    /** H; 0 where the kind says so */
    muslin::length finished_height{};
    /** finished leg of a snowball's corner; else 0 */
    muslin::length corner{};
    /** s */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** u */
    muslin::length take_up{};
    /** customary addition to a half-square; 0: 3 1/2 s + 7/4 u, up to a tick */
    muslin::length half_addition{};
    /** ... and to a quarter-square; 0: 5 s + 5/2 u, up to a tick */
    muslin::length quarter_addition{};
    /** OVERSIZE: room to trim each unit, beyond the customary size, where it is said above; else 0 */
    muslin::length trim_room{};
    /** cut sizes are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX */
    muslin::length grid = muslin::length::of_ticks(1016);
    /** below grid */
    muslin::length tolerance{};
    /** wanted, of the first hand */
    std::int64_t units = 1;
    /** wanted, of the other hand; 0 for kinds without hands (see the kinds) */
    std::int64_t mirrored = 0;
    /** enum unit_kind */
    muslin::unit_kind kind = muslin::unit_kind::half_square;
    /** enum unit_method */
    muslin::unit_method method = muslin::unit_method::two_at_a_time;
    /** enum allowance_policy */
    muslin::allowance_policy policy = muslin::allowance_policy::exact;
    /** enum tip; matters where triangles or wedges are cut from strips */
    muslin::tip tip = muslin::tip::blunt;
    /** enum direction */
    muslin::direction direction = muslin::direction::up;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<unit_spec>);

/** struct muslin_unit_plan. */
struct MUSLIN_CPP_TWIN unit_plan {
    using c_type = muslin_unit_plan;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as the kind says; nearest tick where it is irrational */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** trim the sewn unit to this: finished + E, nearest tick; 0 for a single patch with slanted sides, which is
     * not trimmed */
    muslin::length unfinished_width{};
    /** ... finished + E */
    muslin::length unfinished_height{};
    /** of both hands */
    std::int64_t units_per_recipe = 0;
    /** of these, the mirror image of the others: two, of a split quarter by TWO_AT_A_TIME; else 0 */
    std::int64_t mirrored_per_recipe = 0;
    /** for units, up; of a split quarter for units and mirrored: by PIECES for both together, by TWO_AT_A_TIME for
     * the greater wish */
    std::int64_t recipes = 0;
    /** where hands are cut each for itself: for the other hand, up; else 0 */
    std::int64_t mirrored_recipes = 0;
    /** of all recipes, of either hand, beyond both wishes */
    std::int64_t spare_units = 0;
    /** rows of unit_pieces() */
    std::int64_t pieces = 0;
    /** of one recipe, where all pieces leave the table as rectangles; else 0 */
    std::int64_t cut_area = 0;
    /** of its units: the finished area */
    std::int64_t finished_area = 0;
    /** of its units: over all edges of all pieces, length x E / 2, tips excluded, up */
    std::int64_t allowance_area = 0;
    /** what remains: cut - finished - allowance; all three 0 where cut_area is 0 */
    std::int64_t waste_area = 0;
    /** half-rectangle: the seam meets the raw edge so far from the raw corner, measured along the shorter raw side,
     * nearest tick; 0 elsewhere and for a square */
    muslin::length seam_offset{};
    /** half-squares from the corners cut off by FLIPPED_CORNERS, of one recipe, when a second line is sewn E beside
     * the first */
    std::int64_t bonus_units = 0;
    /** their size, down to a tick: corner as cut - sqrt 2 E; 0 when nothing is left */
    muslin::length bonus_unfinished{};
    /** 1 when outer edges of the unit lie on the bias */
    muslin::truth bias_outside{};
    /** warning::bias_edge; warning::below_exact */
    std::uint32_t warnings = 0;
    /** eight-pointed star: what its diamonds as cut make it wider than W when every seam takes E, nearest tick;
     * negative: narrower; 0 elsewhere */
    muslin::length star_wider_by{};
};
static_assert(detail::is_twin<unit_plan>);

/** struct muslin_unit_piece. */
struct MUSLIN_CPP_TWIN unit_piece {
    using c_type = muslin_unit_piece;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the rectangle; of a strip shape, its extent along the strip, up to a tick */
    muslin::length cut_width{};
    /** of the rectangle; height of the strip */
    muslin::length cut_height{};
    /** cut - exact need, down to a tick; negative: below the need */
    muslin::length surplus_width{};
    muslin::length surplus_height{};
    /** along a strip: each further `gives` pieces take this much, up to a tick */
    muslin::length pitch{};
    /** the longer of a strip shape's two edges along the strip, as cut, up to a tick; any edge of an octagon; 0 for
     * a rectangle */
    muslin::length wide_edge{};
    /** the shorter one: 0 for a sharp tip */
    muslin::length narrow_edge{};
    /** of these, for one recipe */
    std::int64_t count = 0;
    /** ... for all recipes of this row's hand */
    std::int64_t total = 0;
    /** of the unit */
    std::int32_t region = 0;
    /** enum cut_shape */
    muslin::cut_shape shape{};
    /** enum cut_again */
    muslin::cut_again again{};
    /** pieces from each: 1, 2 or 4 */
    std::int32_t gives = 0;
    /** enum grain, of the pieces in the end */
    muslin::grain grain{};
    /** enum hand */
    muslin::hand hand{};
    /** degrees: of a wedge its point, of another strip shape or an octagon where a slanted cut leaves the edge; 0
     * for a rectangle */
    std::int32_t angle = 0;
    std::int32_t pad = 0;
    /** of a star's squares: cut - what its diamonds as cut ask for, down to a tick; below 0 where it is smaller; 0
     * elsewhere */
    muslin::length star_excess{};
};
static_assert(detail::is_twin<unit_piece>);

/** struct muslin_unit_stock_spec. What is there to cut from: rectangles of one size (squares, fat quarters, the
 * strips of a bundle). */
struct MUSLIN_CPP_TWIN unit_stock_spec {
    using c_type = muslin_unit_stock_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** the longer side of a strip; 1 .. MUSLIN_SIZE_MAX */
    muslin::length width = muslin::length::of_ticks(40640);
    /** cut width of a strip; 1 .. MUSLIN_SIZE_MAX */
    muslin::length height = muslin::length::of_ticks(40640);
    /** how many there are for each region of the unit; 0 .. MUSLIN_COUNT_MAX */
    std::int64_t per_region = 1;
    /** taken off the width of each for squaring; 0 .. MUSLIN_SIZE_MAX */
    muslin::length end_loss{};
    /** finished sizes tried: multiples of this, 1 .. MUSLIN_UNIT_SIZE_MAX */
    muslin::length finished_grid = muslin::length::of_ticks(1016);
};
static_assert(detail::is_twin<unit_stock_spec>);

/** struct muslin_unit_yield. */
struct MUSLIN_CPP_TWIN unit_yield {
    using c_type = muslin_unit_yield;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as the kind says; nearest tick where it is irrational */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** as in unit_plan: trim to this */
    muslin::length unfinished_width{};
    muslin::length unfinished_height{};
    /** of the stock's height, beyond the highest piece cut */
    muslin::length cut_spare{};
    /** that the stock gives */
    std::int64_t recipes = 0;
    /** of both hands, where a recipe makes both */
    std::int64_t units = 0;
    /** from one rectangle for each region alone */
    std::int64_t units_of_one = 0;
    /** enum unit_kind */
    muslin::unit_kind kind{};
    /** enum unit_method */
    muslin::unit_method method{};
};
static_assert(detail::is_twin<unit_yield>);

/** struct muslin_unit_corner. */
struct MUSLIN_CPP_TWIN unit_corner {
    using c_type = muslin_unit_corner;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** to the right of the finished unit's lower left, nearest tick; a half goes up */
    muslin::length x{};
    /** upwards from it, so */
    muslin::length y{};
    /** number of the patch in the unit, from 1 */
    std::int32_t patch = 0;
    /** of the unit */
    std::int32_t region = 0;
    /** 0, 1, ... of the patch, counterclockwise */
    std::int32_t corner = 0;
    /** enum stage */
    muslin::stage stage{};
};
static_assert(detail::is_twin<unit_corner>);

/** struct muslin_unit_step. */
struct MUSLIN_CPP_TWIN unit_step {
    using c_type = muslin_unit_step;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** as the step says: the allowance s, a width, the unfinished width; 0 where none is */
    muslin::length measure{};
    /** of a step that trims the unit: the unfinished height; else 0 */
    muslin::length measure_height{};
    /** along the unfinished edge (CUT_TO_SHAPE, CUT_POINTS: the edge as cut), nearest tick, where the step says so;
     * else 0 */
    muslin::length from_corner{};
    /** enum unit_step_kind */
    muslin::unit_step_kind step{};
    /** row of unit_pieces(), from 1; 0: what has been sewn so far, or none */
    std::int32_t piece = 0;
    /** the row it meets, so */
    std::int32_t other = 0;
    /** for one recipe */
    std::int32_t times = 0;
    /** PRESS_TO: towards this region; else 0 */
    std::int32_t region = 0;
    /** degrees, where the step cuts a strip shape or an octagon; else 0 */
    std::int32_t angle = 0;
};
static_assert(detail::is_twin<unit_step>);

/** What unit_recipe_at() answers. */
struct unit_recipe_at_answer {
    muslin::unit_kind kind{};
    muslin::unit_method method{};
};

inline namespace MUSLIN_CPP_FORM {

/** The recipe for a finished size. Sources: published rules for 7/8 and 1 1/4 in (How to measure and cut triangles,
 * blog from a guild newsletter, 2018; Tilkkumatematiikkaa, teacher's blog, 2012, for any seam); geometry for all
 * else.
 * muslin_unit_recipe() in muslin/unit.h. Since 1.0. */
inline answer<muslin::unit_plan> unit_recipe(const muslin::unit_spec &spec = {})
{
    muslin::unit_plan out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_unit_recipe(detail::in_c(&spec), detail::in_c(&out), problem);
    });
}

/** The pieces of a recipe, a row each; statuses also as in base.h for ask-then-fill rows. Mirrored half-rectangles
 * and slices add rows of hand 2: a rectangle cut on its other diagonal gives triangles of the other hand, a strip
 * set cut the other way slices of it, and no turning makes one into the other. Right side up, a half-rectangle's
 * rectangles lying `cut_width` wide, a strip set along the width, those of hand 1 are cut from the lower left to
 * the upper right, those of hand 2 from the upper left to the lower right. What lies along a strip follows from
 * the strip as cut, cut_height: slanted edges keep their angle and the narrow edge its exact width, so that a
 * strip cut higher than the need makes the wide edge longer; diamonds stay diamonds.
 * muslin_unit_pieces() in muslin/unit.h. Since 1.0. */
inline answer<std::vector<muslin::unit_piece>> unit_pieces(const muslin::unit_spec &spec = {})
{
    std::vector<muslin::unit_piece> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_unit_pieces(detail::in_c(&spec), to.rows, sizeof(muslin::unit_piece), to.capacity, to.count,
                                  problem);
    });
}

/** How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else status::index, with
 * the last one as limit; a null output is status::null). Their order may change between versions. Since 1.0 both.
 * muslin_unit_recipe_count() in muslin/unit.h. Since 1.0. */
[[nodiscard]] inline std::int64_t unit_recipe_count() noexcept
{
    return muslin_unit_recipe_count();
}

/** How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else status::index, with
 * the last one as limit; a null output is status::null).
 * muslin_unit_recipe_at() in muslin/unit.h. Since 1.0. */
inline answer<muslin::unit_recipe_at_answer> unit_recipe_at(std::int64_t index)
{
    muslin::unit_recipe_at_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_unit_recipe_at(index, detail::in_c(&answer.kind), detail::in_c(&answer.method), problem);
    });
}

/** What the stock yields for a recipe of given size. Each rectangle of stock is cut for one row of pieces, in a
 * plain grid, never turned (strip shapes along its width); a region with several rows divides its rectangles so
 * that the number of whole recipes, at most MUSLIN_COUNT_MAX, is greatest. Hands are not counted. Zero recipes is
 * an answer. Source: geometry.
 * muslin_unit_from_stock() in muslin/unit.h. Since 1.0. */
inline answer<muslin::unit_yield> unit_from_stock(const muslin::unit_spec &spec = {},
                                                  const muslin::unit_stock_spec &stock = {})
{
    muslin::unit_yield out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_unit_from_stock(detail::in_c(&spec), detail::in_c(&stock), detail::in_c(&out), problem);
    });
}

/** The largest finished size of which one recipe can be cut from the stock when every piece fits one rectangle of
 * it. The spec's own sizes only give the proportion of W to H and corner, which is kept exactly: tried are all
 * multiples of it whose width (of a kind without one, the height) is a multiple of the stock's finished_grid, up
 * to MUSLIN_UNIT_SIZE_MAX. status::no_fit when not even the least of them fits (value: the stock's height; limit:
 * what the least would need). Source: geometry.
 * muslin_unit_largest() in muslin/unit.h. Since 1.0. */
inline answer<muslin::unit_yield> unit_largest(const muslin::unit_spec &spec = {},
                                               const muslin::unit_stock_spec &stock = {})
{
    muslin::unit_yield out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_unit_largest(detail::in_c(&spec), detail::in_c(&stock), detail::in_c(&out), problem);
    });
}

/** Every recipe that the stock can make, each at its largest size, in the order of unit_recipe_at(); a
 * half-rectangle is offered at 2 : 1, a trapezoid at 3 : 1, a slanted slice at 1 : 1, a snowball square with a
 * corner of one third. Of the spec, kind, method, sizes and mirrored are not looked at. A recipe that uses a
 * customary addition too small for it is not offered, where the other calls return status::customary. Statuses
 * also as in base.h for ask-then-fill rows.
 * muslin_unit_makes() in muslin/unit.h. Since 1.0. */
inline answer<std::vector<muslin::unit_yield>> unit_makes(const muslin::unit_spec &spec = {},
                                                          const muslin::unit_stock_spec &stock = {})
{
    std::vector<muslin::unit_yield> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_unit_makes(detail::in_c(&spec), detail::in_c(&stock), to.rows, sizeof(muslin::unit_yield),
                                 to.capacity, to.count, problem);
    });
}

/** Where the corners of every patch lie, in place: first all finished patches, one after the other, then all raw
 * ones in the same order. The origin is the lower left of the smallest upright rectangle round the finished unit;
 * raw corners reach below 0. A coordinate is found exactly and rounded once, nested roots (the raw wedges of a
 * kaleidoscope) included. `hand` (enum hand) draws the first hand or its mirror image, left for right; kinds
 * without hands take both. As the first hand lies: the seam of a half-square or half-rectangle rises to the right,
 * region 1 below it; a split quarter has its half so, region 2 on the left, 3 on top; a quarter-square has region
 * 1 at bottom and top; a goose points up; triangles, half-hexagons and trapezoids stand on their long side;
 * hexagons have flat bottoms; diamonds and slices lean to the right. Patches are numbered by region, then
 * counterclockwise from the bottom or the lower left; a quarter-square's and a kaleidoscope's wedges
 * counterclockwise from the bottom, its regions 1 and 2 in turn. With tip::blunt the raw point across the strip is
 * cut off at e beyond the finished point, at right angles to the height: of TRIANGLE_60 the upper point, of a
 * kaleidoscope's wedges that in the middle, of HALF_SQUARE by STRIPS those where the seam ends at the upper right.
 * It makes no difference elsewhere: all other points are whole. Where the corners of a snowball meet in the middle
 * of a side, or a trapezoid's ends meet above, the finished patch has an edge of no length, and its raw patch is
 * cut level there. status::choice: `hand` is neither. Statuses also as in base.h for ask-then-fill rows, and those
 * of the spec. Source: geometry.
 * muslin_unit_outlines() in muslin/unit.h. Since 1.0. */
inline answer<std::vector<muslin::unit_corner>> unit_outlines(const muslin::unit_spec &spec, muslin::hand hand)
{
    std::vector<muslin::unit_corner> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_unit_outlines(detail::in_c(&spec), detail::in_c(hand), to.rows, sizeof(muslin::unit_corner),
                                    to.capacity, to.count, problem);
    });
}

/** How the pieces of one recipe become its units, a row each step in the order of the work. Piece numbers count the
 * first hand's rows; for rows of the second hand count on behind them, and cut strip sets the other way; join the
 * short sides of mirrored split quarters by PIECES the other way round. Lines are drawn on region 2, the lighter
 * fabric, and half-squares pressed towards region 1, the darker. A rectangle takes no step. Units are trimmed
 * last, where they are trimmed; a half-rectangle that is a square is trimmed as a half-square. Points to be set in
 * are marked in the inner corner alone and sewn from there to the raw edge, so that what rounding made too large
 * hangs outside. Distances from a line or an edge are the allowance s: the take-up is what the fold eats
 * afterwards. Statuses also as in base.h for ask-then-fill rows, and those of the spec. Source: common practice,
 * no source; half-squares from middle to middle: P. Speth, Half square triangles finished size 2 inches, 2012.
 * muslin_unit_steps() in muslin/unit.h. Since 1.0. */
inline answer<std::vector<muslin::unit_step>> unit_steps(const muslin::unit_spec &spec = {})
{
    std::vector<muslin::unit_step> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_unit_steps(detail::in_c(&spec), to.rows, sizeof(muslin::unit_step), to.capacity, to.count,
                                 problem);
    });
}

/** One plain English sentence for a step, with the places {piece}, {other}, {measure}, {measure_height},
 * {from_corner}, {region} and {angle} for whoever shows it to fill, where the sentence has them; a sentence on
 * unknown steps for a number that is none. Never null. Its wording may improve between versions. Constant time.
 * muslin_unit_step_sentence() in muslin/unit.h. Since 1.0. */
[[nodiscard]] inline std::string_view unit_step_sentence(muslin::unit_step_kind step) noexcept
{
    return muslin_unit_step_sentence(detail::in_c(step));
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
