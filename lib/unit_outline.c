/* unit_outline.c - where the corners of every patch of a unit lie, finished and raw.
 *
 * SPDX-License-Identifier: MIT
 *
 * One table holds the raw corners, as formulas in W, H, the corner C and E; a finished corner is the same formula with
 * E = 0. A raw corner is where the lines lie that run e = E / 2 outside the finished edges: the corner of a right angle
 * moves e along both edges, one of 45 degrees (1 + sqrt 2) e, of 135 (sqrt 2 - 1) e, of 60 sqrt 3 e, of 120 e / sqrt 3.
 * Patches that are turned or mirrored copies of another share its corners. */
#include "unit_inside.h"

enum { SIXTHS = 6 };

/* What is added to a coordinate beside its plain and its rooted terms; the sign is that of the term. */
enum {
    ACROSS = 1, /* E (W + D) / (2 H), with D = sqrt(W W + H H): a sharp point lengthened along the width */
    UPWARDS = 2 /* E (H + D) / (2 W) */
};
enum {
    SECANT = 1,     /* E sqrt(4 - 2 sqrt 2) = E / cos(22 1/2) */
    COSECANT = 2,   /* E sqrt(4 + 2 sqrt 2) = E / sin(22 1/2) */
    SLOPE_LOW = 3,  /* E sqrt(2 - sqrt 2): the first, turned by 45 degrees */
    SLOPE_HIGH = 4  /* E sqrt(2 + sqrt 2): the second, turned by 45 degrees */
};

/* (plain . (W, H, C, E) + sqrt(under) x rooted . (W, H, E)) / over, + a slant, + a nested root / over. */
struct form {
    int8_t plain[4];
    int8_t rooted[3];
    int8_t over;
    int8_t slant;
    int8_t nested;
};

struct corner {
    struct form x;
    struct form y;
};

#define FORM(w, h, c, e, root_w, root_h, root_e, over) { { w, h, c, e }, { root_w, root_h, root_e }, over, 0, 0 }
#define SLANT(w, h, slant) { { w, h, 0, 0 }, { 0, 0, 0 }, 1, slant, 0 }
#define NESTED(w, e, root_w, root_e, nested) { { w, 0, 0, e }, { root_w, 0, root_e }, 2, 0, nested }

#define LOW FORM(0, 0, 0, -1, 0, 0, 0, 2)      /* -e */
#define WIDE FORM(2, 0, 0, 1, 0, 0, 0, 2)      /* W + e */
#define HIGH FORM(0, 2, 0, 1, 0, 0, 0, 2)      /* H + e */
#define MIDDLE FORM(1, 0, 0, 0, 0, 0, 0, 2)    /* W/2 */
#define PAST_MIDDLE FORM(1, 0, 0, 1, 0, 0, 0, 2) /* W/2 + e */
#define ROOT_LOW FORM(0, 0, 0, 0, 0, 0, -1, 2) /* -sqrt(under) e */
#define EAR_LOW FORM(0, 0, 0, -1, 0, 0, -1, 2) /* -(1 + sqrt 2) e */
#define EAR_WIDE FORM(2, 0, 0, 1, 0, 0, 1, 2)  /* W + (1 + sqrt 2) e */
#define EAR_MIDDLE FORM(1, 0, 0, 1, 0, 0, 1, 2)/* W/2 + (1 + sqrt 2) e */
#define LEAN_HIGH FORM(0, 2, 0, 1, 0, 0, -1, 2)/* H - (sqrt 2 - 1) e */
#define SIDE_60 FORM(0, 0, 0, 0, 0, 2, -1, 6)  /* (H - e) / sqrt 3 */
/* The corner of a snowball, C, and of an octagon, A = (1 - 1 / sqrt 2) W, with + or - in the raw patch. */
#define C_LESS FORM(0, 0, 2, 1, 0, 0, -1, 2)   /* C - (sqrt 2 - 1) e */
#define C_MORE FORM(0, 0, 2, 1, 0, 0, 1, 2)    /* C + (1 + sqrt 2) e */
#define W_LESS_C FORM(2, 0, -2, -1, 0, 0, 1, 2)
#define H_LESS_C FORM(0, 2, -2, -1, 0, 0, 1, 2)
#define A_LESS FORM(2, 0, 0, 1, -1, 0, -1, 2)
#define A_MORE FORM(2, 0, 0, 1, -1, 0, 1, 2)
#define W_LESS_A FORM(0, 0, 0, -1, 1, 0, 1, 2)
#define A_INSIDE FORM(2, 0, 0, -1, -1, 0, 0, 2)  /* A - e */
#define A_OUTSIDE FORM(2, 0, 0, 1, -1, 0, 0, 2)  /* A + e */
/* The raw base of a wedge. */
#define WEDGE_LEFT NESTED(2, 1, -1, -1, -SECANT)
#define WEDGE_RIGHT NESTED(0, -1, 1, 1, SECANT)
#define WEDGE_LOW NESTED(0, -1, 0, 0, -SLOPE_LOW)
#define WEDGE_SIDE NESTED(2, 1, -1, -1, SLOPE_LOW)
#define WEDGE_TIP NESTED(1, 0, 0, 0, SLOPE_HIGH)
#define WEDGE_BLUNT_FAR NESTED(1, -1, 0, 1, SLOPE_LOW)
#define WEDGE_BLUNT_NEAR NESTED(1, 1, 0, 0, -SLOPE_LOW)

/* Where each shape begins in the table of corners. */
enum shape_at {
    AT_RECTANGLE = 0,
    AT_HALF = 4,
    AT_HALF_BLUNT = 7,
    AT_QUARTER = 11,
    AT_GOOSE_SIDE = 14,
    AT_ON_POINT = 17,
    AT_MIDDLE_CORNER = 21,
    AT_SNOWBALL = 24,
    AT_SNOWBALL_CORNER = 32,
    AT_OCTAGON = 35,
    AT_OCTAGON_CORNER = 43,
    AT_TRIANGLE_60 = 46,
    AT_TRIANGLE_60_BLUNT = 49,
    AT_DIAMOND_60 = 53,
    AT_DIAMOND_45 = 57,
    AT_HEXAGON = 61,
    AT_HALF_HEXAGON = 67,
    AT_TRAPEZOID = 71,
    AT_STAR_DIAMOND = 75,
    AT_STAR_SQUARE = 79,
    AT_STAR_TRIANGLE = 83,
    AT_WEDGE = 86,
    AT_WEDGE_BLUNT = 89,
    AT_TURNED_WEDGE = 93,
    AT_TURNED_WEDGE_BLUNT = 96,
    AT_SLICE = 100,
    CORNERS = 104
};

/* Counterclockwise; each shape as it lies at the bottom or in the lower left. */
static const struct corner corners[CORNERS] = {
    [AT_RECTANGLE] = { LOW, LOW }, { WIDE, LOW }, { WIDE, HIGH }, { LOW, HIGH },
    [AT_HALF] = { SLANT(0, 0, -ACROSS), LOW }, { WIDE, LOW }, { WIDE, SLANT(0, 1, UPWARDS) },
    [AT_HALF_BLUNT] = { EAR_LOW, LOW }, { WIDE, LOW }, { WIDE, HIGH }, { FORM(2, 0, 0, 1, 0, 0, -1, 2), HIGH },
    [AT_QUARTER] = { EAR_LOW, LOW }, { EAR_WIDE, LOW }, { MIDDLE, FORM(1, 0, 0, 0, 0, 0, 1, 2) },
    [AT_GOOSE_SIDE] = { LOW, EAR_LOW }, { EAR_MIDDLE, PAST_MIDDLE }, { LOW, PAST_MIDDLE },
    [AT_ON_POINT] = { MIDDLE, ROOT_LOW }, { FORM(2, 0, 0, 0, 0, 0, 1, 2), MIDDLE },
                    { MIDDLE, FORM(2, 0, 0, 0, 0, 0, 1, 2) }, { ROOT_LOW, MIDDLE },
    [AT_MIDDLE_CORNER] = { LOW, LOW }, { EAR_MIDDLE, LOW }, { LOW, EAR_MIDDLE },
    [AT_SNOWBALL] = { C_LESS, LOW }, { W_LESS_C, LOW }, { WIDE, C_LESS }, { WIDE, H_LESS_C },
                    { W_LESS_C, HIGH }, { C_LESS, HIGH }, { LOW, H_LESS_C }, { LOW, C_LESS },
    [AT_SNOWBALL_CORNER] = { LOW, LOW }, { C_MORE, LOW }, { LOW, C_MORE },
    [AT_OCTAGON] = { A_LESS, LOW }, { W_LESS_A, LOW }, { WIDE, A_LESS }, { WIDE, W_LESS_A },
                   { W_LESS_A, HIGH }, { A_LESS, HIGH }, { LOW, W_LESS_A }, { LOW, A_LESS },
    [AT_OCTAGON_CORNER] = { LOW, LOW }, { A_MORE, LOW }, { LOW, A_MORE },
    [AT_TRIANGLE_60] = { ROOT_LOW, LOW }, { FORM(0, 0, 0, 0, 0, 4, 3, 6), LOW },
                       { FORM(0, 0, 0, 0, 0, 1, 0, 3), FORM(0, 1, 0, 1, 0, 0, 0, 1) },
    [AT_TRIANGLE_60_BLUNT] = { ROOT_LOW, LOW }, { FORM(0, 0, 0, 0, 0, 4, 3, 6), LOW },
                             { FORM(0, 0, 0, 0, 0, 2, 1, 6), HIGH }, { SIDE_60, HIGH },
    [AT_DIAMOND_60] = { ROOT_LOW, LOW }, { FORM(0, 0, 0, 0, 0, 4, 1, 6), LOW },
                      { FORM(0, 0, 0, 0, 0, 2, 1, 2), HIGH }, { SIDE_60, HIGH },
    [AT_DIAMOND_45] = { EAR_LOW, LOW }, { FORM(0, 0, 0, -1, 0, 2, 1, 2), LOW },
                      { FORM(0, 2, 0, 1, 0, 2, 1, 2), HIGH }, { LEAN_HIGH, HIGH },
    [AT_HEXAGON] = { FORM(0, 0, 0, 0, 0, 1, -1, 6), LOW }, { FORM(0, 0, 0, 0, 0, 3, 1, 6), LOW },
                   { FORM(0, 0, 0, 0, 0, 2, 1, 3), FORM(0, 1, 0, 0, 0, 0, 0, 2) },
                   { FORM(0, 0, 0, 0, 0, 3, 1, 6), HIGH }, { FORM(0, 0, 0, 0, 0, 1, -1, 6), HIGH },
                   { FORM(0, 0, 0, 0, 0, 0, -1, 3), FORM(0, 1, 0, 0, 0, 0, 0, 2) },
    [AT_HALF_HEXAGON] = { ROOT_LOW, LOW }, { FORM(0, 0, 0, 0, 0, 8, 3, 6), LOW },
                        { FORM(0, 0, 0, 0, 0, 6, 1, 6), HIGH }, { SIDE_60, HIGH },
    [AT_TRAPEZOID] = { EAR_LOW, LOW }, { EAR_WIDE, LOW }, { FORM(2, -2, 0, -1, 0, 0, 1, 2), HIGH }, { LEAN_HIGH, HIGH },
    [AT_STAR_DIAMOND] = { A_INSIDE, EAR_LOW }, { PAST_MIDDLE, FORM(-1, 0, 0, 1, 1, 0, -1, 2) },
                        { PAST_MIDDLE, EAR_MIDDLE }, { A_INSIDE, FORM(2, 0, 0, -1, -1, 0, 1, 2) },
    [AT_STAR_SQUARE] = { LOW, LOW }, { A_OUTSIDE, LOW }, { A_OUTSIDE, A_OUTSIDE }, { LOW, A_OUTSIDE },
    [AT_STAR_TRIANGLE] = { FORM(2, 0, 0, -1, -1, 0, -1, 2), LOW }, { FORM(0, 0, 0, 1, 1, 0, 1, 2), LOW },
                         { MIDDLE, FORM(-1, 0, 0, 0, 1, 0, 1, 2) },
    [AT_WEDGE] = { WEDGE_LEFT, LOW }, { WEDGE_RIGHT, LOW }, { MIDDLE, NESTED(1, 0, 0, 0, COSECANT) },
    [AT_WEDGE_BLUNT] = { WEDGE_LEFT, LOW }, { WEDGE_RIGHT, LOW }, { NESTED(1, 1, 0, -1, SECANT), PAST_MIDDLE },
                       { NESTED(1, -1, 0, 1, -SECANT), PAST_MIDDLE },
    [AT_TURNED_WEDGE] = { WEDGE_LOW, WEDGE_SIDE }, { WEDGE_SIDE, WEDGE_LOW }, { WEDGE_TIP, WEDGE_TIP },
    [AT_TURNED_WEDGE_BLUNT] = { WEDGE_LOW, WEDGE_SIDE }, { WEDGE_SIDE, WEDGE_LOW },
                              { WEDGE_BLUNT_FAR, WEDGE_BLUNT_NEAR }, { WEDGE_BLUNT_NEAR, WEDGE_BLUNT_FAR },
    [AT_SLICE] = { EAR_LOW, LOW }, { FORM(0, 0, 0, -1, 2, 0, 1, 2), LOW }, { FORM(0, 2, 0, 1, 2, 0, 1, 2), HIGH },
                 { LEAN_HIGH, HIGH },
};

/* How a patch lies: first x and y swapped, then mirrored across, then upside down. */
enum { SWAP = 1, FLIP_X = 2, FLIP_Y = 4, TURN_1 = SWAP | FLIP_X, TURN_2 = FLIP_X | FLIP_Y, TURN_3 = SWAP | FLIP_Y };

struct patch {
    int8_t region;
    int8_t place;
    int8_t first; /* enum shape_at */
    int8_t corners;
    int8_t blunt_first;
    int8_t blunt_corners;
};
#define PATCH(region, place, first, corners) { region, place, first, corners, first, corners }
#define HALF_SQUARE(region, place) { region, place, AT_HALF, 3, AT_HALF_BLUNT, 4 }
#define WEDGE(place) { 1, place, AT_WEDGE, 3, AT_WEDGE_BLUNT, 4 }
#define TURNED_WEDGE(place) { 2, place, AT_TURNED_WEDGE, 3, AT_TURNED_WEDGE_BLUNT, 4 }
#define FOUR_CORNERS(region, at)                                                                       \
    PATCH(region, 0, at, 3), PATCH(region, FLIP_X, at, 3), PATCH(region, FLIP_X | FLIP_Y, at, 3), \
        PATCH(region, FLIP_Y, at, 3)

enum patch_at {
    OF_RECTANGLE = 0,
    OF_HALF_SQUARE = 1,
    OF_QUARTER_SQUARE = 3,
    OF_SPLIT_QUARTER = 7,
    OF_GEESE = 10,
    OF_SQUARE_IN_SQUARE = 13,
    OF_SNOWBALL = 18,
    OF_HALF_RECTANGLE = 23,
    OF_TRIANGLE_60 = 25,
    OF_DIAMOND_60 = 26,
    OF_DIAMOND_45 = 27,
    OF_HEXAGON = 28,
    OF_HALF_HEXAGON = 29,
    OF_TRAPEZOID = 30,
    OF_OCTAGON = 31,
    OF_STAR = 36,
    OF_KALEIDOSCOPE = 52,
    OF_SLICE = 64,
    PATCHES = 65
};

static const struct patch patches[PATCHES] = {
    [OF_RECTANGLE] = PATCH(1, 0, AT_RECTANGLE, 4),
    [OF_HALF_SQUARE] = HALF_SQUARE(1, 0), HALF_SQUARE(2, SWAP),
    [OF_QUARTER_SQUARE] = PATCH(1, 0, AT_QUARTER, 3), PATCH(2, TURN_1, AT_QUARTER, 3), PATCH(1, TURN_2, AT_QUARTER, 3),
                          PATCH(2, TURN_3, AT_QUARTER, 3),
    [OF_SPLIT_QUARTER] = PATCH(1, 0, AT_HALF, 3), PATCH(2, TURN_3, AT_QUARTER, 3), PATCH(3, TURN_2, AT_QUARTER, 3),
    [OF_GEESE] = PATCH(1, 0, AT_QUARTER, 3), PATCH(2, 0, AT_GOOSE_SIDE, 3), PATCH(2, FLIP_X, AT_GOOSE_SIDE, 3),
    [OF_SQUARE_IN_SQUARE] = PATCH(1, 0, AT_ON_POINT, 4), FOUR_CORNERS(2, AT_MIDDLE_CORNER),
    [OF_SNOWBALL] = PATCH(1, 0, AT_SNOWBALL, 8), FOUR_CORNERS(2, AT_SNOWBALL_CORNER),
    [OF_HALF_RECTANGLE] = PATCH(1, 0, AT_HALF, 3), PATCH(2, TURN_2, AT_HALF, 3),
    [OF_TRIANGLE_60] = { 1, 0, AT_TRIANGLE_60, 3, AT_TRIANGLE_60_BLUNT, 4 },
    [OF_DIAMOND_60] = PATCH(1, 0, AT_DIAMOND_60, 4),
    [OF_DIAMOND_45] = PATCH(1, 0, AT_DIAMOND_45, 4),
    [OF_HEXAGON] = PATCH(1, 0, AT_HEXAGON, 6),
    [OF_HALF_HEXAGON] = PATCH(1, 0, AT_HALF_HEXAGON, 4),
    [OF_TRAPEZOID] = PATCH(1, 0, AT_TRAPEZOID, 4),
    [OF_OCTAGON] = PATCH(1, 0, AT_OCTAGON, 8), FOUR_CORNERS(2, AT_OCTAGON_CORNER),
    [OF_STAR] = PATCH(1, 0, AT_STAR_DIAMOND, 4), PATCH(1, FLIP_X, AT_STAR_DIAMOND, 4),
                PATCH(1, TURN_1, AT_STAR_DIAMOND, 4), PATCH(1, SWAP | TURN_2, AT_STAR_DIAMOND, 4),
                PATCH(1, TURN_2, AT_STAR_DIAMOND, 4), PATCH(1, FLIP_Y, AT_STAR_DIAMOND, 4),
                PATCH(1, TURN_3, AT_STAR_DIAMOND, 4), PATCH(1, SWAP, AT_STAR_DIAMOND, 4),
                PATCH(2, 0, AT_STAR_SQUARE, 4), PATCH(2, TURN_1, AT_STAR_SQUARE, 4),
                PATCH(2, TURN_2, AT_STAR_SQUARE, 4), PATCH(2, TURN_3, AT_STAR_SQUARE, 4),
                PATCH(2, 0, AT_STAR_TRIANGLE, 3), PATCH(2, TURN_1, AT_STAR_TRIANGLE, 3),
                PATCH(2, TURN_2, AT_STAR_TRIANGLE, 3), PATCH(2, TURN_3, AT_STAR_TRIANGLE, 3),
    [OF_KALEIDOSCOPE] = WEDGE(0), TURNED_WEDGE(FLIP_X), WEDGE(TURN_1), TURNED_WEDGE(TURN_2), WEDGE(TURN_2),
                        TURNED_WEDGE(FLIP_Y), WEDGE(TURN_3), TURNED_WEDGE(0), FOUR_CORNERS(3, AT_OCTAGON_CORNER),
    [OF_SLICE] = PATCH(1, 0, AT_SLICE, 4),
};

/* Whether spec.tip makes a difference: never, for every method, or for strips alone. */
enum { TIP_NEVER, TIP_ALWAYS, TIP_OF_STRIPS };

struct drawing {
    int8_t first; /* enum patch_at */
    int8_t patches;
    int8_t under;
    int8_t tip;
    struct form width; /* of the finished unit */
};
#define WIDTH_W FORM(1, 0, 0, 0, 0, 0, 0, 1)

static const struct drawing drawings[] = {
    [MUSLIN_UNIT_RECTANGLE] = { OF_RECTANGLE, 1, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_HALF_SQUARE] = { OF_HALF_SQUARE, 2, 2, TIP_OF_STRIPS, WIDTH_W },
    [MUSLIN_UNIT_QUARTER_SQUARE] = { OF_QUARTER_SQUARE, 4, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_SPLIT_QUARTER] = { OF_SPLIT_QUARTER, 3, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_FLYING_GEESE] = { OF_GEESE, 3, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_SQUARE_IN_SQUARE] = { OF_SQUARE_IN_SQUARE, 5, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_SNOWBALL] = { OF_SNOWBALL, 5, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_HALF_RECTANGLE] = { OF_HALF_RECTANGLE, 2, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_TRIANGLE_60] = { OF_TRIANGLE_60, 1, 3, TIP_ALWAYS, FORM(0, 0, 0, 0, 0, 2, 0, 3) },
    [MUSLIN_UNIT_DIAMOND_60] = { OF_DIAMOND_60, 1, 3, TIP_NEVER, FORM(0, 0, 0, 0, 0, 1, 0, 1) },
    [MUSLIN_UNIT_DIAMOND_45] = { OF_DIAMOND_45, 1, 2, TIP_NEVER, FORM(0, 1, 0, 0, 0, 1, 0, 1) },
    [MUSLIN_UNIT_HEXAGON] = { OF_HEXAGON, 1, 3, TIP_NEVER, FORM(0, 0, 0, 0, 0, 2, 0, 3) },
    [MUSLIN_UNIT_HALF_HEXAGON] = { OF_HALF_HEXAGON, 1, 3, TIP_NEVER, FORM(0, 0, 0, 0, 0, 4, 0, 3) },
    [MUSLIN_UNIT_TRAPEZOID] = { OF_TRAPEZOID, 1, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_OCTAGON] = { OF_OCTAGON, 5, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_EIGHT_POINTED_STAR] = { OF_STAR, 16, 2, TIP_NEVER, WIDTH_W },
    [MUSLIN_UNIT_KALEIDOSCOPE] = { OF_KALEIDOSCOPE, 12, 2, TIP_ALWAYS, WIDTH_W },
    [MUSLIN_UNIT_SLANTED_SLICE] = { OF_SLICE, 1, 2, TIP_NEVER, FORM(0, 1, 0, 0, 1, 0, 0, 1) },
};

/* ---- a coordinate ------------------------------------------------------------------------------------------------ */

/* (whole + sqrt(under) root) / 6, + a slant, + a nested root: all that a corner can have. */
struct spot {
    int64_t whole;
    int64_t root;
    int32_t slant;
    int32_t nested;
};

static struct spot spot_of(const struct form *form, const struct msl_unit_sizes *s)
{
    struct spot spot = { .slant = form->slant, .nested = form->nested };
    int64_t times = SIXTHS / form->over;
    spot.whole = times * (form->plain[0] * s->w + form->plain[1] * s->h + form->plain[2] * s->c +
                          form->plain[3] * s->e);
    spot.root = times * (form->rooted[0] * s->w + form->rooted[1] * s->h + form->rooted[2] * s->e);
    return spot;
}

static struct spot less(const struct spot *from, const struct spot *spot)
{
    struct spot rest = { from->whole - spot->whole, from->root - spot->root, -spot->slant, -spot->nested };
    return rest;
}

/* A nested root, sqrt(a + b sqrt 2) times r. */
struct nest {
    int64_t r;
    int64_t a;
    int64_t b;
};

static struct nest nest_of(int32_t nested, int64_t e)
{
    static const int8_t under[] = { 0, 0, 4, -2, 4, 2, 2, -1, 2, 1 };
    int32_t which = nested < 0 ? -nested : nested;
    int64_t r = SIXTHS / 2 * e;
    struct nest nest = { nested < 0 ? -r : r, under[2 * which], under[2 * which + 1] };
    return nest;
}

/* The floor of a nested root that is not zero; it is never whole, and neither is its inner root. */
static int64_t nest_floor(const struct nest *nest)
{
    int32_t unused;
    int64_t square = nest->r * nest->r;
    int64_t inner = nest->b * square;
    int64_t inner_root = msl_wide_root(msl_wide_multiply(inner, 2 * inner), &unused);
    int64_t below = nest->a * square + (inner < 0 ? -inner_root - 1 : inner_root);
    int64_t root = msl_wide_root(msl_wide_from(below), &unused);
    return nest->r < 0 ? -root - 1 : root;
}

/* Whether a sum x + q sqrt 2 + nested root, which lies between -1 and 1, is above 0. No nested root here is nearer to 0
 * than 2, so A = x + q sqrt 2 has the other sign, and the longer one decides: A A - (nested root)^2 is again a number
 * u + v sqrt 2, never 0, as no nested root is a number x + q sqrt 2. In all forms of the table u - v sqrt 2 is farther
 * from 0 than that, so u and v differ in sign, and squaring once more decides. */
static int32_t is_above_0(int64_t x, int64_t q, const struct nest *nest)
{
    int64_t square = nest->r * nest->r;
    int64_t u = x * x + 2 * q * q - nest->a * square;
    int64_t v = 2 * x * q - nest->b * square;
    int32_t u_wins = msl_wide_compare(msl_wide_multiply(u, u), msl_wide_multiply(v, 2 * v)) > 0;
    int32_t a_is_longer = u_wins == (u > 0);
    return a_is_longer == (nest->r < 0);
}

/* The floor of a sum is that of its parts, or one more. */
static int64_t nested_sixths(const struct spot *spot, int64_t e)
{
    struct nest nest = nest_of(spot->nested, e);
    struct msl_surd rooted = msl_surd_of(0, spot->root, 2, 1);
    int64_t floors = msl_surd_floor(&rooted) + nest_floor(&nest);
    return spot->whole + floors + is_above_0(-floors - 1, spot->root, &nest);
}

/* A half goes up. *exact stays 1 only where nothing is rounded. */
static int64_t nearest(const struct msl_surd *surd, int32_t *exact)
{
    struct msl_exact value = msl_surd_exact(surd);
    *exact &= value.on_tick;
    return value.floor + value.upper_half;
}

/* (whole leg + sixths e (other + D)) / (6 leg), where D is the long side. */
static int64_t slanted(const struct spot *spot, const struct msl_unit_sizes *s, int32_t *exact)
{
    int32_t along = spot->slant == ACROSS || spot->slant == -ACROSS;
    int64_t leg = along ? s->h : s->w;
    int64_t reach = SIXTHS / 2 * s->e;
    int32_t sign = spot->slant < 0 ? -1 : 1;
    struct msl_surd surd = msl_fraction_of(spot->whole * leg + sign * reach * (along ? s->w : s->h), SIXTHS * leg);
    surd.sign = sign;
    surd.radicand = msl_wide_multiply(reach * reach, s->w * s->w + s->h * s->h);
    return nearest(&surd, exact);
}

/* To the nearest tick. What has a nested root is raw, of which nobody asks whether it is exact. */
static muslin_len tick_of(const struct spot *spot, int32_t under, const struct msl_unit_sizes *s, int32_t *exact)
{
    if (spot->slant != 0)
        return slanted(spot, s, exact);
    struct msl_surd surd = msl_surd_of(spot->whole, spot->root, under, SIXTHS);
    if (spot->nested != 0 && s->e != 0)
        surd = msl_fraction_of(nested_sixths(spot, s->e), SIXTHS);
    return nearest(&surd, exact);
}

/* ---- patches ----------------------------------------------------------------------------------------------------- */

/* What is being drawn. */
struct sketch {
    const struct drawing *drawing;
    struct msl_unit_sizes sizes; /* with E = 0 where it is finished */
    int32_t stage;
    int32_t blunt;
    int32_t flip; /* FLIP_X for the second hand */
};

static int32_t corners_of(const struct sketch *sketch, const struct patch *patch)
{
    return sketch->blunt ? patch->blunt_corners : patch->corners;
}

static size_t corners_in_all(const struct sketch *sketch)
{
    size_t sum = 0;
    for (int32_t i = 0; i < sketch->drawing->patches; i++)
        sum += (size_t)corners_of(sketch, &patches[sketch->drawing->first + i]);
    return sum;
}

static void place_corner(const struct sketch *sketch, const struct corner *corner, int32_t place, muslin_len *out_x,
                         muslin_len *out_y, int32_t *exact)
{
    const struct msl_unit_sizes *s = &sketch->sizes;
    int32_t under = sketch->drawing->under;
    struct spot x = spot_of(place & SWAP ? &corner->y : &corner->x, s);
    struct spot y = spot_of(place & SWAP ? &corner->x : &corner->y, s);
    struct spot width = spot_of(&sketch->drawing->width, s);
    struct spot height = { .whole = SIXTHS * s->h };
    if (place & FLIP_X)
        x = less(&width, &x);
    if (place & FLIP_Y)
        y = less(&height, &y);
    *out_x = tick_of(&x, under, s, exact);
    *out_y = tick_of(&y, under, s, exact);
}

/* Each mirroring turns the way round; the corners then are written from the last to the first. */
static int32_t turns_round(int32_t place)
{
    return ((place & SWAP) != 0) ^ ((place & FLIP_X) != 0) ^ ((place & FLIP_Y) != 0);
}

/* The corners of one patch; x and y have room for MSL_UNIT_CORNERS. Of every blunt patch the last corner is cut off. */
static struct msl_unit_patch draw_patch(const struct sketch *sketch, int32_t number, muslin_len *x, muslin_len *y)
{
    const struct patch *patch = &patches[sketch->drawing->first + number];
    int32_t place = patch->place ^ sketch->flip;
    int32_t first = sketch->blunt ? patch->blunt_first : patch->first;
    struct msl_unit_patch drawn = { patch->region, corners_of(sketch, patch), -1, 1 };
    if (drawn.corners != patch->corners)
        drawn.tip = turns_round(place) ? 0 : patch->corners - 1;
    for (int32_t k = 0; k < drawn.corners; k++)
        place_corner(sketch, &corners[first + (turns_round(place) ? drawn.corners - 1 - k : k)], place, &x[k], &y[k],
                     &drawn.exact);
    return drawn;
}

/* Writes the corners of a stage from row `row` on. */
static size_t draw_patches(const struct sketch *sketch, void *rows, size_t row_size, size_t row)
{
    muslin_len x[MSL_UNIT_CORNERS];
    muslin_len y[MSL_UNIT_CORNERS];
    for (int32_t i = 0; i < sketch->drawing->patches; i++) {
        struct msl_unit_patch drawn = draw_patch(sketch, i, x, y);
        for (int32_t k = 0; k < drawn.corners; k++) {
            struct muslin_unit_corner out = {
                .x = x[k], .y = y[k], .patch = i + 1, .region = drawn.region, .corner = k, .stage = sketch->stage
            };
            msl_write_row(rows, row_size, row++, &out, (uint32_t)sizeof out);
        }
    }
    return row;
}

static int32_t is_blunt(const struct muslin_unit_spec *spec, const struct drawing *drawing)
{
    if (spec->tip != MUSLIN_TIP_BLUNT || drawing->tip == TIP_NEVER)
        return 0;
    return drawing->tip == TIP_ALWAYS || spec->method == MUSLIN_UNIT_METHOD_STRIPS;
}

static struct sketch sketch_of(const struct muslin_unit_spec *spec, int32_t hand, int32_t stage)
{
    const struct drawing *drawing = &drawings[spec->kind];
    struct sketch sketch = { drawing, msl_unit_sizes_of(spec), stage, 0, hand == MUSLIN_HAND_MIRRORED ? FLIP_X : 0 };
    if (stage == MUSLIN_STAGE_RAW)
        sketch.blunt = is_blunt(spec, drawing);
    else
        sketch.sizes.e = 0;
    return sketch;
}

int32_t msl_unit_patches(int32_t kind)
{
    return drawings[kind].patches;
}

struct msl_unit_patch msl_unit_patch(const struct muslin_unit_spec *spec, int32_t hand, int32_t stage, int32_t patch,
                                     muslin_len *x, muslin_len *y)
{
    const struct sketch sketch = sketch_of(spec, hand, stage);
    return draw_patch(&sketch, patch, x, y);
}

muslin_status muslin_unit_outlines(const struct muslin_unit_spec *spec, int32_t hand, struct muslin_unit_corner *rows,
                                   size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_unit_spec in;
    msl_unit_read(&check, &in, spec);
    msl_want_choice(&check, MUSLIN_ARG_HAND, hand, MUSLIN_HAND_FIRST, MUSLIN_HAND_MIRRORED);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct sketch finished = sketch_of(&in, hand, MUSLIN_STAGE_FINISHED);
    const struct sketch raw = sketch_of(&in, hand, MUSLIN_STAGE_RAW);
    size_t needed = corners_in_all(&finished) + corners_in_all(&raw);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        draw_patches(&raw, rows, row_size, draw_patches(&finished, rows, row_size, 0));
    return check.status;
}
