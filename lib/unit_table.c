/* unit_table.c - the recipes as data.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where the formulas come from. A raw edge lies e = E / 2 outside its seam. A corner of angle A between two such edges
 * moves e / tan(A / 2) along the edge: e for a right angle, (1 + sqrt 2) e for 45 degrees, (sqrt 2 - 1) e for 135,
 * sqrt 3 e for 60 and e / sqrt 3 for 120. So a right-angled triangle with finished legs F has raw legs F + e +
 * (1 + sqrt 2) e = F + (2 + sqrt 2) e and the raw long side of a quarter-square is F + 2 (1 + sqrt 2) e: the trade's
 * 7/8 and 1 1/4 at e = 1/4 in are these, rounded up. Pieces that lie alternately up and down along a strip take half
 * the sum of their two parallel raw sides each. K is the strip as cut: rounded, and so not what it must be at least;
 * what lies along it keeps its angles and its narrow edge, and follows from K. */
#include "unit_table.h"

enum unit_size {
    SIZE_NOTHING,
    SIZE_W_E,           /* W + E */
    SIZE_H_E,           /* H + E */
    SIZE_C_E,           /* C + E */
    SIZE_HALF_W_E,      /* W/2 + E */
    SIZE_W_HALF,        /* W + (2 + sqrt 2) e: a square that gives two triangles with legs W */
    SIZE_H_HALF,
    SIZE_HALF_W_HALF,   /* ... with legs W/2 */
    SIZE_W_QUARTER,     /* W + 2 (1 + sqrt 2) e: a square that gives four triangles with long sides W */
    SIZE_W_QUARTER_GOOSE, /* the same; the four small squares alone are trimmed */
    SIZE_W_EIGHT,       /* twice W + (2 + sqrt 2) e */
    SIZE_W_ALL_ROUND,   /* sqrt 2 (W + E) + E: what is left inside the seams has W + E from the middle to a corner */
    SIZE_W_MIDPOINTS,   /* 2 (W + E) */
    SIZE_W_LEG,         /* W + (2 + sqrt 2) e, as a strip: no addition stands in */
    SIZE_HALF_NARROW,   /* sqrt 2 e: what a strip W + E high leaves of the point of a triangle with legs W */
    SIZE_HALF_WIDE,     /* that and K */
    SIZE_HALF_PAIR,     /* the sum of the two: a pair with blunt tips */
    SIZE_CUT,           /* K, the strip as cut: the leg, and a pair, with sharp tips */
    SIZE_W_BIAS,        /* (sqrt 2 (W + E) + E) / 2: half the diagonal of the unfinished square, and a seam's edge */
    SIZE_W_DIAGONAL,    /* sqrt 2 (W + E) */
    SIZE_CENTRE,        /* W / sqrt 2 + E */
    SIZE_CORNER_E,      /* corner of a regular octagon, (1 - 1 / sqrt 2) W, + E */
    SIZE_CORNER_HALF,   /* ... + (2 + sqrt 2) e */
    SIZE_60_SHARP,      /* H + 3 e: sharp raw height of an equilateral triangle */
    SIZE_60_SIDE,       /* 2 K / sqrt 3: its raw side, the diamond's, the hexagon's from corner to corner */
    SIZE_60_HALF,       /* half of that: a sharp triangle's pitch, the hexagon's edge */
    SIZE_60_NARROW,     /* 2 e / sqrt 3: the triangle's width e beyond its finished tip */
    SIZE_60_WIDE,       /* that and 2 K / sqrt 3 */
    SIZE_60_PITCH,      /* half of their sum */
    SIZE_60_RUN_IN,     /* sqrt 3 K: the side of a diamond and K / tan 60 */
    SIZE_HEX_NARROW,    /* 2 H / sqrt 3 + 2 e / sqrt 3: raw short side of a half-hexagon */
    SIZE_HEX_WIDE,      /* that and 2 K / sqrt 3 */
    SIZE_HEX_PITCH,     /* half of their sum */
    SIZE_45_SIDE,       /* sqrt 2 K */
    SIZE_45_RUN_IN,     /* that and K */
    SIZE_TRAPEZOID_NARROW, /* W - 2 H + 2 (sqrt 2 - 1) e */
    SIZE_TRAPEZOID_WIDE,   /* that and 2 K */
    SIZE_TRAPEZOID_PITCH,  /* half of their sum */
    SIZE_OCTAGON_EDGE,  /* (sqrt 2 - 1) K: the edge of an octagon cut from a square K wide */
    SIZE_STAR_STRIP,    /* the diamond's side d = W / (2 + sqrt 2) is d / sqrt 2 high: (sqrt 2 - 1) W / 2, + E */
    SIZE_STAR_SIDE,     /* W - 2 d = (sqrt 2 - 1) W, + 2 (1 + sqrt 2) e */
    SIZE_SLICE_RUN_IN,  /* sqrt 2 (W + E) + K */
    SIZE_WEDGE_CUT,     /* 2 (sqrt 2 - 1) K: wide edge of a wedge with a sharp tip */
    SIZE_WEDGE_HALF,    /* half of that */
    SIZE_SIDE_60,       /* 2 H / sqrt 3 */
    SIZE_LONG_60,       /* 4 H / sqrt 3 */
    SIZE_SIDE_45,       /* sqrt 2 H */
    EDGES_RECTANGLE,
    EDGES_HALF_SQUARE,
    EDGES_QUARTER_SQUARE,
    EDGES_SPLIT_QUARTER,
    EDGES_GEESE,
    EDGES_SQUARE_IN_SQUARE,
    EDGES_SNOWBALL,
    EDGES_OCTAGON,
    SIZES_LINEAR,
    /* The rest is not linear in W and H; see below. */
    SIZE_LEANING_WIDTH = SIZES_LINEAR,
    SIZE_LEANING_HEIGHT,
    EDGES_LEANING,
    SIZE_WEDGE_SHARP,
    SIZE_WEDGE_NARROW,
    SIZE_WEDGE_WIDE,
    SIZE_WEDGE_PITCH
};

/*                                 W   H   C   E   K      W   H   C   E   K   root  over  rule */
static const struct unit_formula formulas[SIZES_LINEAR] = {
    [SIZE_NOTHING]             = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [SIZE_W_E]                 = { {  1,  0,  0,  1,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [SIZE_H_E]                 = { {  0,  1,  0,  1,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [SIZE_C_E]                 = { {  0,  0,  1,  1,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [SIZE_HALF_W_E]            = { {  1,  0,  0,  2,  0 }, {  0,  0,  0,  0,  0 }, 0, 2, RULE_NONE, 0, 0 },
    [SIZE_W_HALF]              = { {  2,  0,  0,  2,  0 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_HALF, 1, 1 },
    [SIZE_H_HALF]              = { {  0,  2,  0,  2,  0 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_HALF, 1, 1 },
    [SIZE_HALF_W_HALF]         = { {  1,  0,  0,  2,  0 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_HALF, 1, 1 },
    [SIZE_W_QUARTER]           = { {  1,  0,  0,  1,  0 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_QUARTER, 1, 1 },
    [SIZE_W_QUARTER_GOOSE]     = { {  1,  0,  0,  1,  0 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_QUARTER, 1, 0 },
    [SIZE_W_EIGHT]             = { {  2,  0,  0,  2,  0 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_HALF, 2, 2 },
    [SIZE_W_ALL_ROUND]         = { {  0,  0,  0,  1,  0 }, {  1,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 1 },
    [SIZE_W_MIDPOINTS]         = { {  2,  0,  0,  2,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 2 },
    [SIZE_W_LEG]               = { {  2,  0,  0,  2,  0 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_HALF_NARROW]         = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_HALF_WIDE]           = { {  0,  0,  0,  0,  2 }, {  0,  0,  0,  1,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_HALF_PAIR]           = { {  0,  0,  0,  0,  1 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_CUT]                 = { {  0,  0,  0,  0,  1 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [SIZE_W_BIAS]              = { {  0,  0,  0,  1,  0 }, {  1,  0,  0,  1,  0 }, 2, 2, RULE_NONE, 0, 1 },
    [SIZE_W_DIAGONAL]          = { {  0,  0,  0,  0,  0 }, {  1,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 1 },
    [SIZE_CENTRE]              = { {  0,  0,  0,  2,  0 }, {  1,  0,  0,  0,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_CORNER_E]            = { {  2,  0,  0,  2,  0 }, { -1,  0,  0,  0,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_CORNER_HALF]         = { {  2,  0,  0,  2,  0 }, { -1,  0,  0,  1,  0 }, 2, 2, RULE_HALF, 1, 1 },
    [SIZE_60_SHARP]            = { {  0,  2,  0,  3,  0 }, {  0,  0,  0,  0,  0 }, 0, 2, RULE_NONE, 0, 0 },
    [SIZE_60_SIDE]             = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  0,  2 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_60_HALF]             = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  0,  1 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_60_NARROW]           = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  1,  0 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_60_WIDE]             = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  1,  2 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_60_PITCH]            = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  1,  1 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_60_RUN_IN]           = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  0,  1 }, 3, 1, RULE_NONE, 0, 0 },
    [SIZE_HEX_NARROW]          = { {  0,  0,  0,  0,  0 }, {  0,  2,  0,  1,  0 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_HEX_WIDE]            = { {  0,  0,  0,  0,  0 }, {  0,  2,  0,  1,  2 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_HEX_PITCH]           = { {  0,  0,  0,  0,  0 }, {  0,  2,  0,  1,  1 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_45_SIDE]             = { {  0,  0,  0,  0,  0 }, {  0,  0,  0,  0,  1 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_45_RUN_IN]           = { {  0,  0,  0,  0,  1 }, {  0,  0,  0,  0,  1 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_TRAPEZOID_NARROW]    = { {  1, -2,  0, -1,  0 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_TRAPEZOID_WIDE]      = { {  1, -2,  0, -1,  2 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_TRAPEZOID_PITCH]     = { {  1, -2,  0, -1,  1 }, {  0,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_OCTAGON_EDGE]        = { {  0,  0,  0,  0, -1 }, {  0,  0,  0,  0,  1 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_STAR_STRIP]          = { { -1,  0,  0,  2,  0 }, {  1,  0,  0,  0,  0 }, 2, 2, RULE_NONE, 0, 0 },
    [SIZE_STAR_SIDE]           = { { -1,  0,  0,  1,  0 }, {  1,  0,  0,  1,  0 }, 2, 1, RULE_QUARTER, 1, 1 },
    [SIZE_SLICE_RUN_IN]        = { {  0,  0,  0,  0,  1 }, {  1,  0,  0,  1,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_WEDGE_CUT]           = { {  0,  0,  0,  0, -2 }, {  0,  0,  0,  0,  2 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_WEDGE_HALF]          = { {  0,  0,  0,  0, -1 }, {  0,  0,  0,  0,  1 }, 2, 1, RULE_NONE, 0, 0 },
    [SIZE_SIDE_60]             = { {  0,  0,  0,  0,  0 }, {  0,  2,  0,  0,  0 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_LONG_60]             = { {  0,  0,  0,  0,  0 }, {  0,  4,  0,  0,  0 }, 3, 3, RULE_NONE, 0, 0 },
    [SIZE_SIDE_45]             = { {  0,  0,  0,  0,  0 }, {  0,  1,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_RECTANGLE]          = { {  2,  2,  0,  0,  0 }, {  0,  0,  0,  0,  0 }, 0, 1, RULE_NONE, 0, 0 },
    [EDGES_HALF_SQUARE]        = { {  4,  0,  0,  0,  0 }, {  2,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_QUARTER_SQUARE]     = { {  4,  0,  0,  0,  0 }, {  4,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_SPLIT_QUARTER]      = { {  4,  0,  0,  0,  0 }, {  3,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_GEESE]              = { {  3,  0,  0,  0,  0 }, {  2,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_SQUARE_IN_SQUARE]   = { {  4,  0,  0,  0,  0 }, {  4,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_SNOWBALL]           = { {  2,  2,  0,  0,  0 }, {  0,  0,  8,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
    [EDGES_OCTAGON]            = { { -4,  0,  0,  0,  0 }, {  8,  0,  0,  0,  0 }, 2, 1, RULE_NONE, 0, 0 },
};

#define R MUSLIN_CUT_SHAPE_RECTANGLE
#define UNCUT MUSLIN_CUT_AGAIN_NO, 1
#define IN_TWO MUSLIN_CUT_AGAIN_ONCE, 2
#define IN_FOUR MUSLIN_CUT_AGAIN_TWICE, 4
#define ALL MUSLIN_GRAIN_ALL_EDGES
#define SHORT MUSLIN_GRAIN_SHORT_EDGES
#define LONG MUSLIN_GRAIN_LONG_EDGE
#define ALONG MUSLIN_GRAIN_STRIP_EDGES
#define NO_STRIP SIZE_NOTHING, SIZE_NOTHING, SIZE_NOTHING, 0
#define SQUARE(side) side, side, NO_STRIP
/* From a strip of this height: extent of the first, pitch, wide and narrow edge, degrees. */
#define STRIP(height, first, pitch, wide, narrow, degrees) first, height, pitch, wide, narrow, degrees
/* Both edges alike. */
#define SLANTED(height, first, pitch, edge, degrees) STRIP(height, first, pitch, edge, edge, degrees)
#define PAIR_OF_TRIANGLES MUSLIN_CUT_SHAPE_TRIANGLES, MUSLIN_CUT_AGAIN_NO, 2
#define ANY_TIP 0
#define SHARP MUSLIN_TIP_SHARP
#define BLUNT MUSLIN_TIP_BLUNT

#define BLUNT_WEDGES MUSLIN_CUT_SHAPE_WEDGES, UNCUT, ALONG, 4, \
    STRIP(SIZE_HALF_W_E, SIZE_WEDGE_WIDE, SIZE_WEDGE_PITCH, SIZE_WEDGE_WIDE, SIZE_WEDGE_NARROW, 45)
#define SHARP_WEDGES MUSLIN_CUT_SHAPE_WEDGES, UNCUT, ALONG, 4, \
    STRIP(SIZE_WEDGE_SHARP, SIZE_WEDGE_CUT, SIZE_WEDGE_HALF, SIZE_WEDGE_CUT, SIZE_NOTHING, 45)

/* kind, method, tip, units, mirror images of these, bias outside, bonus half-squares, edges, rows;
 * a row: region, shape, cut again, grain, count, sizes. A sharp recipe stands behind its blunt one. */
static const struct unit_recipe recipes[] = {
    { MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 1, 0, 0, 0, EDGES_RECTANGLE, 1,
      { { 1, R, UNCUT, ALL, 1, SIZE_W_E, SIZE_H_E, NO_STRIP } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 2, 0, 0, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, IN_TWO, SHORT, 1, SQUARE(SIZE_W_HALF) }, { 2, R, IN_TWO, SHORT, 1, SQUARE(SIZE_W_HALF) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, ANY_TIP, 2, 0, 0, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_HALF) }, { 2, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_HALF) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND, ANY_TIP, 4, 0, 1, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, UNCUT, LONG, 1, SQUARE(SIZE_W_ALL_ROUND) }, { 2, R, UNCUT, LONG, 1, SQUARE(SIZE_W_ALL_ROUND) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS, ANY_TIP, 4, 0, 0, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_MIDPOINTS) }, { 2, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_MIDPOINTS) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME, ANY_TIP, 8, 0, 0, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_EIGHT) }, { 2, R, UNCUT, SHORT, 1, SQUARE(SIZE_W_EIGHT) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, BLUNT, 2, 0, 0, 0, SIZE_NOTHING, 2,
      { { 1, PAIR_OF_TRIANGLES, SHORT, 1, STRIP(SIZE_W_E, SIZE_HALF_PAIR, SIZE_HALF_PAIR, SIZE_HALF_WIDE,
                                                  SIZE_HALF_NARROW, 45) },
        { 2, PAIR_OF_TRIANGLES, SHORT, 1, STRIP(SIZE_W_E, SIZE_HALF_PAIR, SIZE_HALF_PAIR, SIZE_HALF_WIDE,
                                                  SIZE_HALF_NARROW, 45) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, SHARP, 2, 0, 0, 0, SIZE_NOTHING, 2,
      { { 1, PAIR_OF_TRIANGLES, SHORT, 1, STRIP(SIZE_W_LEG, SIZE_CUT, SIZE_CUT, SIZE_CUT, SIZE_NOTHING, 45) },
        { 2, PAIR_OF_TRIANGLES, SHORT, 1, STRIP(SIZE_W_LEG, SIZE_CUT, SIZE_CUT, SIZE_CUT, SIZE_NOTHING, 45) } } },
    { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_BIAS_STRIPS, ANY_TIP, 1, 0, 1, 0, EDGES_HALF_SQUARE, 2,
      { { 1, R, UNCUT, LONG, 1, SIZE_W_DIAGONAL, SIZE_W_BIAS, NO_STRIP },
        { 2, R, UNCUT, LONG, 1, SIZE_W_DIAGONAL, SIZE_W_BIAS, NO_STRIP } } },
    { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 2, 0, 0, 0, EDGES_QUARTER_SQUARE, 2,
      { { 1, R, IN_FOUR, LONG, 1, SQUARE(SIZE_W_QUARTER) }, { 2, R, IN_FOUR, LONG, 1, SQUARE(SIZE_W_QUARTER) } } },
    { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, ANY_TIP, 2, 0, 0, 0, EDGES_QUARTER_SQUARE, 2,
      { { 1, R, UNCUT, LONG, 1, SQUARE(SIZE_W_QUARTER) }, { 2, R, UNCUT, LONG, 1, SQUARE(SIZE_W_QUARTER) } } },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 4, 0, 0, 0, EDGES_SPLIT_QUARTER, 3,
      { { 1, R, IN_TWO, SHORT, 2, SQUARE(SIZE_W_HALF) }, { 2, R, IN_FOUR, LONG, 1, SQUARE(SIZE_W_QUARTER) },
        { 3, R, IN_FOUR, LONG, 1, SQUARE(SIZE_W_QUARTER) } } },
    { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, ANY_TIP, 4, 2, 0, 0, EDGES_SPLIT_QUARTER, 3,
      { { 1, R, UNCUT, SHORT, 2, SQUARE(SIZE_W_HALF) }, { 2, R, UNCUT, LONG, 1, SQUARE(SIZE_W_QUARTER) },
        { 3, R, UNCUT, LONG, 1, SQUARE(SIZE_W_QUARTER) } } },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 4, 0, 0, 0, EDGES_GEESE, 2,
      { { 1, R, IN_FOUR, LONG, 1, SQUARE(SIZE_W_QUARTER) }, { 2, R, IN_TWO, SHORT, 4, SQUARE(SIZE_H_HALF) } } },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, ANY_TIP, 4, 0, 0, 0, EDGES_GEESE, 2,
      { { 1, R, UNCUT, LONG, 1, SQUARE(SIZE_W_QUARTER_GOOSE) }, { 2, R, UNCUT, SHORT, 4, SQUARE(SIZE_H_HALF) } } },
    { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, ANY_TIP, 1, 0, 0, 2, EDGES_GEESE, 2,
      { { 1, R, UNCUT, ALL, 1, SIZE_W_E, SIZE_H_E, NO_STRIP }, { 2, R, UNCUT, SHORT, 2, SQUARE(SIZE_H_E) } } },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 1, 0, 0, 0, EDGES_SQUARE_IN_SQUARE, 2,
      { { 1, R, UNCUT, ALL, 1, SQUARE(SIZE_CENTRE) }, { 2, R, IN_TWO, SHORT, 2, SQUARE(SIZE_HALF_W_HALF) } } },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, ANY_TIP, 1, 0, 0, 4, EDGES_SQUARE_IN_SQUARE, 2,
      { { 1, R, UNCUT, ALL, 1, SQUARE(SIZE_W_E) }, { 2, R, UNCUT, SHORT, 4, SQUARE(SIZE_HALF_W_E) } } },
    { MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, ANY_TIP, 1, 0, 0, 4, EDGES_SNOWBALL, 2,
      { { 1, R, UNCUT, ALL, 1, SIZE_W_E, SIZE_H_E, NO_STRIP }, { 2, R, UNCUT, SHORT, 4, SQUARE(SIZE_C_E) } } },
    { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 2, 0, 0, 0, EDGES_LEANING, 2,
      { { 1, R, IN_TWO, SHORT, 1, SIZE_LEANING_WIDTH, SIZE_LEANING_HEIGHT, NO_STRIP },
        { 2, R, IN_TWO, SHORT, 1, SIZE_LEANING_WIDTH, SIZE_LEANING_HEIGHT, NO_STRIP } } },
    { MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_METHOD_STRIPS, BLUNT, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_TRIANGLES, UNCUT, ALONG, 1,
          STRIP(SIZE_H_E, SIZE_60_WIDE, SIZE_60_PITCH, SIZE_60_WIDE, SIZE_60_NARROW, 60) } } },
    { MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_METHOD_STRIPS, SHARP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_TRIANGLES, UNCUT, ALONG, 1,
          STRIP(SIZE_60_SHARP, SIZE_60_SIDE, SIZE_60_HALF, SIZE_60_SIDE, SIZE_NOTHING, 60) } } },
    { MUSLIN_UNIT_DIAMOND_60, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_DIAMONDS, UNCUT, ALONG, 1,
          SLANTED(SIZE_H_E, SIZE_60_RUN_IN, SIZE_60_SIDE, SIZE_60_SIDE, 60) } } },
    { MUSLIN_UNIT_DIAMOND_45, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_DIAMONDS, UNCUT, ALONG, 1,
          SLANTED(SIZE_H_E, SIZE_45_RUN_IN, SIZE_45_SIDE, SIZE_45_SIDE, 45) } } },
    { MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_HEXAGONS, UNCUT, ALONG, 1,
          SLANTED(SIZE_H_E, SIZE_60_SIDE, SIZE_60_SIDE, SIZE_60_HALF, 60) } } },
    { MUSLIN_UNIT_HALF_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_TRAPEZOIDS, UNCUT, ALONG, 1,
          STRIP(SIZE_H_E, SIZE_HEX_WIDE, SIZE_HEX_PITCH, SIZE_HEX_WIDE, SIZE_HEX_NARROW, 60) } } },
    { MUSLIN_UNIT_TRAPEZOID, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_TRAPEZOIDS, UNCUT, ALONG, 1,
          STRIP(SIZE_H_E, SIZE_TRAPEZOID_WIDE, SIZE_TRAPEZOID_PITCH, SIZE_TRAPEZOID_WIDE, SIZE_TRAPEZOID_NARROW,
                45) } } },
    { MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 1, 0, 0, 0, SIZE_NOTHING, 2,
      { { 1, MUSLIN_CUT_SHAPE_OCTAGONS, UNCUT, ALONG, 1,
          SLANTED(SIZE_W_E, SIZE_W_E, SIZE_NOTHING, SIZE_OCTAGON_EDGE, 45) },
        { 2, R, IN_TWO, SHORT, 2, SQUARE(SIZE_CORNER_HALF) } } },
    { MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, ANY_TIP, 1, 0, 0, 4, EDGES_OCTAGON, 2,
      { { 1, R, UNCUT, ALL, 1, SQUARE(SIZE_W_E) }, { 2, R, UNCUT, SHORT, 4, SQUARE(SIZE_CORNER_E) } } },
    { MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, ANY_TIP, 1, 0, 0, 0, SIZE_NOTHING, 3,
      { { 1, MUSLIN_CUT_SHAPE_DIAMONDS, UNCUT, ALONG, 8,
          SLANTED(SIZE_STAR_STRIP, SIZE_45_RUN_IN, SIZE_45_SIDE, SIZE_45_SIDE, 45) },
        { 2, R, UNCUT, ALL, 4, SQUARE(SIZE_CORNER_E) }, { 2, R, IN_FOUR, LONG, 1, SQUARE(SIZE_STAR_SIDE) } } },
    { MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, BLUNT, 1, 0, 0, 0, SIZE_NOTHING, 3,
      { { 1, BLUNT_WEDGES }, { 2, BLUNT_WEDGES }, { 3, R, IN_TWO, SHORT, 2, SQUARE(SIZE_CORNER_HALF) } } },
    { MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, SHARP, 1, 0, 0, 0, SIZE_NOTHING, 3,
      { { 1, SHARP_WEDGES }, { 2, SHARP_WEDGES }, { 3, R, IN_TWO, SHORT, 2, SQUARE(SIZE_CORNER_HALF) } } },
    { MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_UNIT_METHOD_STRIPS, ANY_TIP, 1, 0, 1, 0, SIZE_NOTHING, 1,
      { { 1, MUSLIN_CUT_SHAPE_SLICES, UNCUT, ALONG, 1,
          SLANTED(SIZE_H_E, SIZE_SLICE_RUN_IN, SIZE_W_DIAGONAL, SIZE_W_DIAGONAL, 45) } } },
};
enum { RECIPES = sizeof recipes / sizeof *recipes };

/* takes W, how H, takes the corner, hands, finished width where it takes none, untrimmed */
static const struct unit_kind kinds[] = {
    [MUSLIN_UNIT_RECTANGLE]          = { 1, HEIGHT_FREE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_HALF_SQUARE]        = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_QUARTER_SQUARE]     = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_SPLIT_QUARTER]      = { 1, HEIGHT_SQUARE, 0, HANDS_TOGETHER, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_FLYING_GEESE]       = { 1, HEIGHT_HALF, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_SQUARE_IN_SQUARE]   = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_SNOWBALL]           = { 1, HEIGHT_FREE, 1, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_HALF_RECTANGLE]     = { 1, HEIGHT_NEEDED, 0, HANDS_APART, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_TRIANGLE_60]        = { 0, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_SIDE_60, 1 },
    [MUSLIN_UNIT_DIAMOND_60]         = { 0, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_SIDE_60, 1 },
    [MUSLIN_UNIT_DIAMOND_45]         = { 0, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_SIDE_45, 1 },
    [MUSLIN_UNIT_HEXAGON]            = { 0, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_SIDE_60, 1 },
    [MUSLIN_UNIT_HALF_HEXAGON]       = { 0, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_LONG_60, 1 },
    [MUSLIN_UNIT_TRAPEZOID]          = { 1, HEIGHT_NEEDED, 0, HANDS_NONE, SIZE_NOTHING, 1 },
    [MUSLIN_UNIT_OCTAGON]            = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_EIGHT_POINTED_STAR] = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_KALEIDOSCOPE]       = { 1, HEIGHT_SQUARE, 0, HANDS_NONE, SIZE_NOTHING, 0 },
    [MUSLIN_UNIT_SLANTED_SLICE]      = { 1, HEIGHT_NEEDED, 0, HANDS_APART, SIZE_NOTHING, 1 },
};

int32_t msl_unit_recipe_count(void)
{
    return RECIPES;
}

const struct unit_recipe *msl_unit_recipe_at(int32_t index)
{
    return &recipes[index];
}

const struct unit_kind *msl_unit_kind_of(int32_t kind)
{
    return &kinds[kind];
}

const struct unit_recipe *msl_unit_recipe_for(int32_t kind, int32_t method, int32_t tip)
{
    for (int32_t i = 0; i < RECIPES; i++) {
        int32_t any_tip = recipes[i].tip == ANY_TIP;
        if (recipes[i].kind == kind && recipes[i].method == method && (any_tip || recipes[i].tip == tip))
            return &recipes[i];
    }
    return NULL;
}

/* ---- formulas ---------------------------------------------------------------------------------------------------- */

/* Of a size that is not linear only the room to trim counts here: a half-rectangle's sides have it once. */
const struct unit_formula *msl_unit_formula_of(int32_t size)
{
    static const struct unit_formula leaning_side = { .divisor = 1, .rule = RULE_NONE, .trims = 1 };
    if (size == SIZE_LEANING_WIDTH || size == SIZE_LEANING_HEIGHT)
        return &leaning_side;
    return &formulas[size < SIZES_LINEAR ? size : SIZE_NOTHING];
}

static int64_t dot(const int8_t *factors, const struct msl_unit_sizes *sizes)
{
    return factors[0] * sizes->w + factors[1] * sizes->h + factors[2] * sizes->c + factors[3] * sizes->e +
           factors[4] * sizes->cut;
}

static struct msl_surd linear(int32_t size, const struct msl_unit_sizes *sizes)
{
    const struct unit_formula *f = &formulas[size];
    return msl_surd_of(dot(f->plain, sizes), dot(f->rooted, sizes), f->under, f->divisor);
}

/* A triangle with legs a and b and D = sqrt(a a + b b) has the inner radius r = a b / (a + b + D), so its raw leg is
 * a (1 + e / r) = a + e (a + b + D) / b = (2 a b + E (a + b) + E D) / (2 b). */
static struct msl_surd leaning(int64_t a, int64_t b, int64_t e)
{
    struct msl_surd leg = { .whole = 2 * a * b + e * (a + b), .sign = 1, .divisor = 2 * b };
    leg.radicand = msl_wide_multiply(e * e, a * a + b * b);
    return leg;
}

/* 2 W + 2 H + 2 D */
static struct msl_surd leaning_edges(const struct msl_unit_sizes *sizes)
{
    struct msl_surd edges = { .whole = 2 * (sizes->w + sizes->h), .sign = 1, .divisor = 1 };
    edges.radicand = msl_wide_multiply(4, sizes->w * sizes->w + sizes->h * sizes->h);
    return edges;
}

/* A wedge of 45 degrees, finished W/2 high, has its raw point e / sin(22 1/2) above the finished one; with
 * 1 / sin(22 1/2) = sqrt(4 + 2 sqrt 2) it is (W + E + sqrt(4 E E + sqrt(8 E^4))) / 2 high. */
static struct msl_surd wedge_sharp(const struct msl_unit_sizes *sizes)
{
    int64_t square = sizes->e * sizes->e;
    struct msl_surd height = { .whole = sizes->w + sizes->e, .sign = 1, .divisor = 2 };
    height.radicand = msl_wide_multiply(4, square);
    height.inner = msl_wide_multiply(8 * square, square);
    return height;
}

/* Cut off e above its finished point, its blunt end is 2 e (1 / cos(22 1/2) - tan(22 1/2)) wide: E sqrt(4 - 2 sqrt 2) -
 * (sqrt 2 - 1) E. From there on it widens by 2 tan(22 1/2) = 2 (sqrt 2 - 1) of the height K: the wide end is
 * (sqrt 2 - 1)(2 K - E) + E sqrt(4 - 2 sqrt 2), and twice the pitch the sum of the two ends. All are a (sqrt 2 - 1) +
 * n E sqrt(4 - 2 sqrt 2). Two different roots: each is taken up to a tick, so the sum is up to two ticks too long and
 * never too short. */
static int64_t wedge_run(int64_t a, int64_t n_e)
{
    struct msl_surd straight = msl_surd_of(-a, a, 2, 1);
    struct msl_surd slanted = { .sign = 1, .divisor = 1 };
    int32_t whole_root;
    int64_t square = n_e * n_e;
    int64_t below = msl_wide_root(msl_wide_multiply(8 * square, square), &whole_root);
    slanted.radicand = msl_wide_from(4 * square - below);
    return msl_surd_ceiling(&straight) + msl_surd_ceiling(&slanted);
}

static struct msl_surd wedge_narrow(const struct msl_unit_sizes *sizes)
{
    return msl_fraction_of(wedge_run(-sizes->e, sizes->e), 1);
}

static struct msl_surd wedge_wide(const struct msl_unit_sizes *sizes)
{
    return msl_fraction_of(wedge_run(2 * sizes->cut - sizes->e, sizes->e), 1);
}

static struct msl_surd wedge_pitch(const struct msl_unit_sizes *sizes)
{
    return msl_fraction_of(wedge_run(2 * (sizes->cut - sizes->e), 2 * sizes->e), 2);
}

struct msl_surd msl_unit_size_exact(int32_t size, const struct msl_unit_sizes *sizes)
{
    switch (size) {
    case SIZE_LEANING_WIDTH:
        return leaning(sizes->w, sizes->h, sizes->e);
    case SIZE_LEANING_HEIGHT:
        return leaning(sizes->h, sizes->w, sizes->e);
    case EDGES_LEANING:
        return leaning_edges(sizes);
    case SIZE_WEDGE_SHARP:
        return wedge_sharp(sizes);
    case SIZE_WEDGE_NARROW:
        return wedge_narrow(sizes);
    case SIZE_WEDGE_WIDE:
        return wedge_wide(sizes);
    case SIZE_WEDGE_PITCH:
        return wedge_pitch(sizes);
    default:
        return linear(size, sizes);
    }
}

struct msl_surd msl_unit_size_bare(int32_t size, const struct msl_unit_sizes *sizes)
{
    struct msl_unit_sizes bare = *sizes;
    bare.e = 0;
    return linear(size, &bare);
}
