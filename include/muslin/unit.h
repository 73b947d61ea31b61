/* muslin/unit.h - recipes for pieced shapes: what to cut for a finished size, and what a given piece can finish.
 *
 * SPDX-License-Identifier: MIT
 *
 * Words. W and H are the finished width and height of the unit, s the allowance of an edge, u the take-up of a seam,
 * and E = 2 s + u what one seam takes, so that unfinished = finished + E. F is W where W and H are equal. All recipes
 * are derived from E by geometry: any seam works, inch or metric.
 *
 * A recipe is what one makes at one go: TWO_AT_A_TIME yields two half-squares, EIGHT_AT_A_TIME eight. Its pieces come
 * as rows, in the order of cutting; each row says the size as cut, how many, and how each is cut again.
 *
 * Every call
 *   Units       Lengths are ticks, areas doubled square ticks. Finished sizes are 1 .. MUSLIN_UNIT_SIZE_MAX, allowance,
 *               take-up, additions and trim 0 .. MUSLIN_UNIT_SIZE_MAX / 8, counts 0 .. MUSLIN_COUNT_MAX.
 *   Rounding    A cut size is found exactly and rounded once, to `grid` in `direction`, with `tolerance`, as struct
 *               muslin_rounding_spec says (length.h). What would round to nothing is one step of the grid.
 *               Where rounding puts a size below the need, its surplus is negative and MUSLIN_WARN_BELOW_EXACT is set.
 *   Statuses    MUSLIN_ERR_NULL: a spec or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct
 *               breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range. MUSLIN_ERR_CHOICE: none of
 *               the listed choices. MUSLIN_ERR_METHOD: the kind is not made by that method. MUSLIN_ERR_CUSTOMARY: a
 *               customary addition that the recipe uses is below what the geometry needs (the limit is the least that
 *               would do). What else a call can return stands with it. A height or corner that does not suit the kind
 *               is MUSLIN_ERR_RANGE, and so is a half-rectangle so narrow that a side would be cut larger than
 *               MUSLIN_SIZE_MAX (the problem names the cut size).
 *   Cost        Constant time; calls backwards try at most 27 sizes a recipe. Nothing allocates.
 *   Problem     Optional everywhere (null). `units` and `mirrored` share a name: their `at` is 0 and 1. So is that of
 *               two specs or two outputs, and of what is wrong in them: 1 in the stock.
 */
#ifndef MUSLIN_UNIT_H
#define MUSLIN_UNIT_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* The largest finished size of a unit: 2^26 ticks, 688 feet. */
#define MUSLIN_UNIT_SIZE_MAX INT64_C(67108864)

/* Which of W, H and corner a kind takes is said beside it; what is not taken must be 0. Where W is not, it is said what
 * finished_width then tells. Regions number the parts of the unit that may be of different fabric. A kind has hands
 * where its mirror image is another unit, whose number is `mirrored`. */
enum muslin_unit_kind {
    MUSLIN_UNIT_RECTANGLE = 1,       /* one patch; W, H (0: a square). Region 1 */
    MUSLIN_UNIT_HALF_SQUARE = 2,     /* a square of two triangles; W. Regions 1 and 2 */
    MUSLIN_UNIT_QUARTER_SQUARE = 3,  /* a square of four triangles, two fabrics facing; W. Regions 1 and 2 */
    MUSLIN_UNIT_SPLIT_QUARTER = 4,   /* one half (region 1) and two quarters (2, 3); W. Has hands: the same pieces make
                                        both, and TWO_AT_A_TIME always two of each */
    MUSLIN_UNIT_FLYING_GEESE = 5,    /* a goose (1) between two triangles (2); W, H = W / 2 (or 0) */
    MUSLIN_UNIT_SQUARE_IN_SQUARE = 6,/* a square on its point (1) and four corners (2); W */
    MUSLIN_UNIT_SNOWBALL = 7,        /* a rectangle (1) that loses its corners (2); W, H (0: square), corner */
    MUSLIN_UNIT_HALF_RECTANGLE = 8,  /* a rectangle of two triangles (1, 2); W, H. Has hands, cut each for itself */
    MUSLIN_UNIT_TRIANGLE_60 = 9,     /* an equilateral triangle; H, its height. finished_width: its side */
    MUSLIN_UNIT_DIAMOND_60 = 10,     /* a 60 degree diamond; H, between two parallel sides. finished_width: its side,
                                        not the extent, which is half as much again */
    MUSLIN_UNIT_DIAMOND_45 = 11,     /* a 45 degree diamond; H, between two parallel sides. finished_width: its side */
    MUSLIN_UNIT_HEXAGON = 12,        /* H, from flat to flat. finished_width: from point to point */
    MUSLIN_UNIT_HALF_HEXAGON = 13,   /* H, half of flat to flat. finished_width: its long side */
    MUSLIN_UNIT_TRAPEZOID = 14,      /* ends at 45 degrees; W, the long side, and H; W at least 2 H */
    MUSLIN_UNIT_OCTAGON = 15,        /* a regular octagon (1) and its four corners (2); W */
    MUSLIN_UNIT_EIGHT_POINTED_STAR = 16, /* eight diamonds (1), four squares and four triangles (2), set in; W */
    MUSLIN_UNIT_KALEIDOSCOPE = 17,   /* eight wedges, in turn 1 and 2, and four corners (3); W */
    MUSLIN_UNIT_SLANTED_SLICE = 18   /* a slice at 45 degrees from a strip set; W, across the slice, square to its long
                                        edges, not along the set; H, of the set. Has hands, cut each for itself */
};

enum muslin_unit_method {
    MUSLIN_UNIT_METHOD_PIECES = 1,         /* each piece cut by itself; triangles from squares cut on the diagonal */
    MUSLIN_UNIT_METHOD_TWO_AT_A_TIME = 2,  /* two squares sewn on both sides of a drawn diagonal */
    MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND = 3, /* two squares sewn all round and cut on both diagonals: bias outside */
    MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS = 4, /* two squares sewn from middle to middle of the sides, cut into four
                                              squares */
    MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME = 5,/* two squares sewn on both sides of both diagonals, cut into eight */
    MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME = 6, /* geese: one large square and four small ones */
    MUSLIN_UNIT_METHOD_FLIPPED_CORNERS = 7,/* squares sewn on their diagonal to a corner, folded back */
    MUSLIN_UNIT_METHOD_STRIPS = 8,         /* triangles, diamonds and the like cut from a strip of one height */
    MUSLIN_UNIT_METHOD_BIAS_STRIPS = 9     /* half-squares cut on point along the seam of two strips */
};

/* What is left of a sharp point when the piece is cut. */
enum muslin_tip {
    MUSLIN_TIP_SHARP = 1, /* the whole raw point */
    MUSLIN_TIP_BLUNT = 2  /* cut off level with the allowance, as many rulers do: the strip is H + E high */
};

/* The form in which a row's piece leaves the cutting table. */
enum muslin_cut_shape {
    MUSLIN_CUT_SHAPE_RECTANGLE = 1, /* square or not */
    MUSLIN_CUT_SHAPE_TRIANGLES = 2, /* from a strip, alternately up and down; `pitch` holds `gives` of them */
    MUSLIN_CUT_SHAPE_DIAMONDS = 3,  /* from a strip, by parallel slanted cuts as far apart as the strip is high as
                                       cut */
    MUSLIN_CUT_SHAPE_HEXAGONS = 4,  /* so */
    MUSLIN_CUT_SHAPE_TRAPEZOIDS = 5,/* from a strip, alternately up and down */
    MUSLIN_CUT_SHAPE_WEDGES = 6,    /* from a strip, alternately up and down */
    MUSLIN_CUT_SHAPE_OCTAGONS = 7,  /* a square that loses four corners */
    MUSLIN_CUT_SHAPE_SLICES = 8     /* from a strip set, by parallel cuts at 45 degrees */
};

enum muslin_cut_again {
    MUSLIN_CUT_AGAIN_NO = 1,    /* sewn as it is cut */
    MUSLIN_CUT_AGAIN_ONCE = 2,  /* once on the diagonal: two pieces */
    MUSLIN_CUT_AGAIN_TWICE = 3  /* on both diagonals: four pieces */
};

/* Where the straight grain of a piece lies when its blank is cut with the cloth. */
enum muslin_grain {
    MUSLIN_GRAIN_ALL_EDGES = 1,   /* on all edges */
    MUSLIN_GRAIN_SHORT_EDGES = 2, /* a triangle's short sides; its long side is bias */
    MUSLIN_GRAIN_LONG_EDGE = 3,   /* a triangle's long side; its short sides are bias */
    MUSLIN_GRAIN_STRIP_EDGES = 4  /* the edges that lay along the strip; the slanted ones are bias */
};

/* A recipe wanted. `trim` is added once to the squares that triangles are cut from by PIECES, TWO_AT_A_TIME and
 * FOUR_ALL_ROUND, to the strips and the squares on point of BIAS_STRIPS, and to both sides of a half-rectangle; twice
 * by FOUR_MIDPOINTS and EIGHT_AT_A_TIME; of geese by FOUR_AT_A_TIME to the four small squares alone. It changes nothing
 * in a rectangle, by STRIPS, by FLIPPED_CORNERS, and in the square within a square, an octagon, a star's diamonds and
 * corner squares and a kaleidoscope's wedges. */
struct muslin_unit_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    muslin_len finished_width;   /* W */
    muslin_len finished_height;  /* H; 0 where the kind says so */
    muslin_len corner;           /* finished leg of a snowball's corner; else 0 */
    muslin_len allowance;        /* s */
    muslin_len take_up;          /* u */
    muslin_len half_addition;    /* customary addition to a half-square; 0: 3 1/2 s + 7/4 u, up to a tick */
    muslin_len quarter_addition; /* ... and to a quarter-square; 0: 5 s + 5/2 u, up to a tick */
    muslin_len trim_room;        /* OVERSIZE: room to trim each unit, beyond the customary size, where it is said above;
                                    else 0 */
    muslin_len grid;             /* cut sizes are rounded to it; 1 .. MUSLIN_UNIT_SIZE_MAX */
    muslin_len tolerance;        /* below grid */
    int64_t units;               /* wanted, of the first hand */
    int64_t mirrored;            /* wanted, of the other hand; 0 for kinds without hands (see the kinds) */
    int32_t kind;                /* enum muslin_unit_kind */
    int32_t method;              /* enum muslin_unit_method */
    int32_t policy;              /* enum muslin_allowance_policy */
    int32_t tip;                 /* enum muslin_tip; matters where triangles or wedges are cut from strips */
    int32_t direction;           /* enum muslin_direction */
    int32_t pad;                 /* 0 */
};
/* One half-square of no size yet, two at a time, 1/4 in seams, exact, cut sizes up to 1/8 in, blunt tips. */
#define MUSLIN_UNIT_SPEC_INIT \
    { sizeof(struct muslin_unit_spec), 0, 0, 0, 0, 2032, 0, 0, 0, 0, 1016, 0, 1, 0, 2, 2, 1, 2, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_unit_spec_init(&unit, sizeof unit). Since 1.0. */
MUSLIN_API muslin_status muslin_unit_spec_init(struct muslin_unit_spec *spec, uint32_t size);

struct muslin_unit_plan {
    uint32_t size;
    uint32_t flags;
    muslin_len finished_width;     /* as the kind says; nearest tick where it is irrational */
    muslin_len finished_height;
    muslin_len unfinished_width;   /* trim the sewn unit to this: finished + E, nearest tick; 0 for a single patch with
                                      slanted sides, which is not trimmed */
    muslin_len unfinished_height;  /* ... finished + E */
    int64_t units_per_recipe;      /* of both hands */
    int64_t mirrored_per_recipe;   /* of these, the mirror image of the others: two, of a split quarter by
                                      TWO_AT_A_TIME; else 0 */
    int64_t recipes;               /* for units, up; of a split quarter for units and mirrored: by PIECES for both
                                      together, by TWO_AT_A_TIME for the greater wish */
    int64_t mirrored_recipes;      /* where hands are cut each for itself: for the other hand, up; else 0 */
    int64_t spare_units;           /* of all recipes, of either hand, beyond both wishes */
    int64_t pieces;                /* rows of muslin_unit_pieces() */
    int64_t cut_area;              /* of one recipe, where all pieces leave the table as rectangles; else 0 */
    int64_t finished_area;         /* of its units: the finished area */
    int64_t allowance_area;        /* of its units: over all edges of all pieces, length x E / 2, tips excluded, up */
    int64_t waste_area;            /* what remains: cut - finished - allowance; all three 0 where cut_area is 0 */
    muslin_len seam_offset;        /* half-rectangle: the seam meets the raw edge so far from the raw corner, measured
                                      along the shorter raw side, nearest tick; 0 elsewhere and for a square */
    int64_t bonus_units;           /* half-squares from the corners cut off by FLIPPED_CORNERS, of one recipe, when a
                                      second line is sewn E beside the first */
    muslin_len bonus_unfinished;   /* their size, down to a tick: corner as cut - sqrt 2 E; 0 when nothing is left */
    int32_t bias_outside;          /* 1 when outer edges of the unit lie on the bias */
    uint32_t warnings;             /* MUSLIN_WARN_BIAS_EDGE; MUSLIN_WARN_BELOW_EXACT */
    muslin_len star_wider_by;      /* eight-pointed star: what its diamonds as cut make it wider than W when every seam
                                      takes E, nearest tick; negative: narrower; 0 elsewhere */
};
/* The recipe for a finished size. Sources: published rules for 7/8 and 1 1/4 in (How to measure and cut triangles, blog
 * from a guild newsletter, 2018; Tilkkumatematiikkaa, teacher's blog, 2012, for any seam); geometry for all else.
 * Example: a half-square of 3 in, two at a time, takes one row for each of two fabrics: pieces = 2, units_per_recipe =
 * 2, unfinished 3 1/2 in. Example: 4 split quarters of one hand, two at a time, take 2 recipes, and 4 of the other hand
 * are spare. Since 1.0. */
MUSLIN_API muslin_status muslin_unit_recipe(const struct muslin_unit_spec *spec, struct muslin_unit_plan *out,
                                            struct muslin_problem *problem);

/* Of shapes that lie in two ways, each the other's mirror image. */
enum muslin_hand {
    MUSLIN_HAND_FIRST = 1,   /* as the kinds say, and all that have no hands */
    MUSLIN_HAND_MIRRORED = 2 /* its mirror image */
};

struct muslin_unit_piece {
    uint32_t size;
    uint32_t flags;
    muslin_len cut_width;       /* of the rectangle; of a strip shape, its extent along the strip, up to a tick */
    muslin_len cut_height;      /* of the rectangle; height of the strip */
    muslin_len surplus_width;   /* cut - exact need, down to a tick; negative: below the need */
    muslin_len surplus_height;
    muslin_len pitch;           /* along a strip: each further `gives` pieces take this much, up to a tick */
    muslin_len wide_edge;       /* the longer of a strip shape's two edges along the strip, as cut, up to a tick; any
                                   edge of an octagon; 0 for a rectangle */
    muslin_len narrow_edge;     /* the shorter one: 0 for a sharp tip */
    int64_t count;              /* of these, for one recipe */
    int64_t total;              /* ... for all recipes of this row's hand */
    int32_t region;             /* of the unit */
    int32_t shape;              /* enum muslin_cut_shape */
    int32_t again;              /* enum muslin_cut_again */
    int32_t gives;              /* pieces from each: 1, 2 or 4 */
    int32_t grain;              /* enum muslin_grain, of the pieces in the end */
    int32_t hand;               /* enum muslin_hand */
    int32_t angle;              /* degrees: of a wedge its point, of another strip shape or an octagon where a slanted
                                   cut leaves the edge; 0 for a rectangle */
    int32_t pad;                /* 0 */
    muslin_len star_excess;     /* of a star's squares: cut - what its diamonds as cut ask for, down to a tick; below 0
                                   where it is smaller; 0 elsewhere */
};
/* The pieces of a recipe, a row each; statuses also as in base.h for ask-then-fill rows. Mirrored half-rectangles and
 * slices add rows of hand 2: a rectangle cut on its other diagonal gives triangles of the other hand, a strip set cut
 * the other way slices of it, and no turning makes one into the other. Right side up, a half-rectangle's rectangles
 * lying `cut_width` wide, a strip set along the width, those of hand 1 are cut from the lower left to the upper right,
 * those of hand 2 from the upper left to the lower right. What lies along a strip follows from the
 * strip as cut, cut_height: slanted edges keep their angle and the narrow edge its exact width, so that a strip cut
 * higher than the need makes the wide edge longer; diamonds stay diamonds. Example: half-squares of 3 in, two at a
 * time: squares cut 3 7/8 in, one of each fabric for two units. Since 1.0. */
MUSLIN_API muslin_status muslin_unit_pieces(const struct muslin_unit_spec *spec, struct muslin_unit_piece *rows,
                                            size_t row_size, size_t capacity, size_t *count,
                                            struct muslin_problem *problem);

/* How many recipes this version knows, and the kind and method of each, 0 .. count - 1 (else MUSLIN_ERR_INDEX, with the
 * last one as limit; a null output is MUSLIN_ERR_NULL). Their order may change between versions. Example:
 * muslin_unit_recipe_at(0, &kind, &method, NULL) gives MUSLIN_UNIT_RECTANGLE and MUSLIN_UNIT_METHOD_PIECES. Since 1.0
 * both. */
MUSLIN_API int64_t muslin_unit_recipe_count(void);
MUSLIN_API muslin_status muslin_unit_recipe_at(int64_t index, int32_t *kind, int32_t *method,
                                               struct muslin_problem *problem);

/* ---- backwards ------------------------------------------------------------------------------------------------- */

/* What is there to cut from: rectangles of one size (squares, fat quarters, the strips of a bundle). */
struct muslin_unit_stock_spec {
    uint32_t size;
    uint32_t flags;             /* 0 */
    muslin_len width;           /* the longer side of a strip; 1 .. MUSLIN_SIZE_MAX */
    muslin_len height;          /* cut width of a strip; 1 .. MUSLIN_SIZE_MAX */
    int64_t per_region;         /* how many there are for each region of the unit; 0 .. MUSLIN_COUNT_MAX */
    muslin_len end_loss;        /* taken off the width of each for squaring; 0 .. MUSLIN_SIZE_MAX */
    muslin_len finished_grid;   /* finished sizes tried: multiples of this, 1 .. MUSLIN_UNIT_SIZE_MAX */
};
/* One 5 in square a region, nothing lost, finished sizes in steps of 1/8 in. */
#define MUSLIN_UNIT_STOCK_SPEC_INIT { sizeof(struct muslin_unit_stock_spec), 0, 40640, 40640, 1, 0, 1016 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_unit_stock_spec_init(&stock, sizeof stock). Since 1.0. */
MUSLIN_API muslin_status muslin_unit_stock_spec_init(struct muslin_unit_stock_spec *spec, uint32_t size);

struct muslin_unit_yield {
    uint32_t size;
    uint32_t flags;
    muslin_len finished_width;   /* as the kind says; nearest tick where it is irrational */
    muslin_len finished_height;
    muslin_len unfinished_width; /* as in struct muslin_unit_plan: trim to this */
    muslin_len unfinished_height;
    muslin_len cut_spare;        /* of the stock's height, beyond the highest piece cut */
    int64_t recipes;             /* that the stock gives */
    int64_t units;               /* of both hands, where a recipe makes both */
    int64_t units_of_one;        /* from one rectangle for each region alone */
    int32_t kind;                /* enum muslin_unit_kind */
    int32_t method;              /* enum muslin_unit_method */
};
/* What the stock yields for a recipe of given size. Each rectangle of stock is cut for one row of pieces, in a plain
 * grid, never turned (strip shapes along its width); a region with several rows divides its rectangles so that the
 * number of whole recipes, at most MUSLIN_COUNT_MAX, is greatest. Hands are not counted. Zero recipes is an answer.
 * Source: geometry. Example: 10 squares of 5 in a region and half-squares of 4 in, two at a time: 20 units.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_unit_from_stock(const struct muslin_unit_spec *spec,
                                                const struct muslin_unit_stock_spec *stock,
                                                struct muslin_unit_yield *out, struct muslin_problem *problem);

/* The largest finished size of which one recipe can be cut from the stock when every piece fits one rectangle of it.
 * The spec's own sizes only give the proportion of W to H and corner, which is kept exactly: tried are all multiples of
 * it whose width (of a kind without one, the height) is a multiple of the stock's finished_grid, up to
 * MUSLIN_UNIT_SIZE_MAX. MUSLIN_ERR_NO_FIT when not even the least of them fits (value: the stock's height; limit: what
 * the least would need). Source: geometry. Example: two 5 in squares sewn all round and cut on both diagonals finish 2
 * 5/8 in, to the eighth. Since 1.0. */
MUSLIN_API muslin_status muslin_unit_largest(const struct muslin_unit_spec *spec,
                                             const struct muslin_unit_stock_spec *stock, struct muslin_unit_yield *out,
                                             struct muslin_problem *problem);

/* Every recipe that the stock can make, each at its largest size, in the order of muslin_unit_recipe_at(); a
 * half-rectangle is offered at 2 : 1, a trapezoid at 3 : 1, a slanted slice at 1 : 1, a snowball square with a corner
 * of one third. Of the spec, kind, method, sizes and mirrored are not looked at. A recipe that uses a customary
 * addition too small for it is not offered, where the other calls return MUSLIN_ERR_CUSTOMARY. Statuses also as in
 * base.h for ask-then-fill rows. Example: from a 2 1/2 in square, two at a time, half-squares finish 1 5/8 in. Since
 * 1.0. */
MUSLIN_API muslin_status muslin_unit_makes(const struct muslin_unit_spec *spec,
                                           const struct muslin_unit_stock_spec *stock, struct muslin_unit_yield *rows,
                                           size_t row_size, size_t capacity, size_t *count,
                                           struct muslin_problem *problem);

/* ---- drawn and sewn -------------------------------------------------------------------------------------------- */

enum muslin_stage {
    MUSLIN_STAGE_FINISHED = 1, /* what is seen of a patch: the finished patches fill the unit without gap or overlap */
    MUSLIN_STAGE_RAW = 2       /* the patch with e = E / 2 outside each edge: raw patches overlap by their seams */
};

struct muslin_unit_corner {
    uint32_t size;
    uint32_t flags;
    muslin_len x;   /* to the right of the finished unit's lower left, nearest tick; a half goes up */
    muslin_len y;   /* upwards from it, so */
    int32_t patch;  /* number of the patch in the unit, from 1 */
    int32_t region; /* of the unit */
    int32_t corner; /* 0, 1, ... of the patch, counterclockwise */
    int32_t stage;  /* enum muslin_stage */
};
/* Where the corners of every patch lie, in place: first all finished patches, one after the other, then all raw ones in
 * the same order. The origin is the lower left of the smallest upright rectangle round the finished unit; raw corners
 * reach below 0. A coordinate is found exactly and rounded once, nested roots (the raw wedges of a kaleidoscope)
 * included. `hand` (enum muslin_hand) draws the first hand or its mirror image, left for right; kinds without hands
 * take both. As the first hand lies: the seam of a half-square or half-rectangle rises to the right, region 1 below it;
 * a split quarter has its half so, region 2 on the left, 3 on top; a quarter-square has region 1 at bottom and top; a
 * goose points up; triangles, half-hexagons and trapezoids stand on their long side; hexagons have flat bottoms;
 * diamonds and slices lean to the right. Patches are numbered by region, then counterclockwise from the bottom or the
 * lower left; a quarter-square's and a kaleidoscope's wedges counterclockwise from the bottom, its regions 1 and 2 in
 * turn. With MUSLIN_TIP_BLUNT the raw point across the strip is cut off at e beyond the finished point, at right angles
 * to the height: of TRIANGLE_60 the upper point, of a kaleidoscope's wedges that in the middle, of HALF_SQUARE by
 * STRIPS those where the seam ends at the upper right. It makes no difference elsewhere: all other points are whole.
 * Where the corners of a snowball meet in the middle of a side, or a trapezoid's ends meet above, the finished patch
 * has an edge of no length, and its raw patch is cut level there. MUSLIN_ERR_CHOICE: `hand` is neither. Statuses also
 * as in base.h for ask-then-fill rows, and those of the spec. Source: geometry. Example: the first finished patch of a
 * half-square of 3 in has corners at (0, 0), (3, 0) and (3, 3) in; its raw patch begins at (-(1 + sqrt 2)/4, -1/4) in.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_unit_outlines(const struct muslin_unit_spec *spec, int32_t hand,
                                              struct muslin_unit_corner *rows, size_t row_size, size_t capacity,
                                              size_t *count, struct muslin_problem *problem);

enum muslin_unit_step_kind {
    MUSLIN_UNIT_STEP_MARK_LINE = 1,      /* draw a diagonal on the back */
    MUSLIN_UNIT_STEP_MARK_BOTH = 2,      /* draw both diagonals */
    MUSLIN_UNIT_STEP_MARK_MIDDLES = 3,   /* draw lines from middle to middle of neighbouring sides */
    MUSLIN_UNIT_STEP_MARK_ACROSS = 4,    /* draw a diagonal across the seam of a half-square */
    MUSLIN_UNIT_STEP_MARK_CORNERS = 5,   /* mark where the seam lines cross at each corner, `measure` in from both
                                            edges */
    MUSLIN_UNIT_STEP_PAIR = 6,           /* lay one on the other, right sides together */
    MUSLIN_UNIT_STEP_PAIR_HALVES = 7,    /* lay two half-squares together, fabrics opposite, seams locked */
    MUSLIN_UNIT_STEP_PAIR_CORNER = 8,    /* lay a small square on one of two opposite corners */
    MUSLIN_UNIT_STEP_PAIR_OPPOSITE = 9,  /* lay two small squares on opposite corners, overlapping in the middle */
    MUSLIN_UNIT_STEP_ON_LINE = 10,       /* sew on the drawn line */
    MUSLIN_UNIT_STEP_BESIDE = 11,        /* sew on both sides of the line, `measure` from it */
    MUSLIN_UNIT_STEP_ROUND = 12,         /* sew round all edges, `measure` from them */
    MUSLIN_UNIT_STEP_CUT_APART = 13,     /* cut on the drawn line */
    MUSLIN_UNIT_STEP_CUT_SQUARES = 14,   /* cut through the middle both ways */
    MUSLIN_UNIT_STEP_CUT_DIAGONALS = 15, /* cut on both diagonals */
    MUSLIN_UNIT_STEP_TRIM_CORNER = 16,   /* cut the corner off, `measure` beyond the seam */
    MUSLIN_UNIT_STEP_FOLD_BACK = 17,     /* fold the piece back over its seam and press */
    MUSLIN_UNIT_STEP_PRESS_OPEN = 18,    /* press the seam open */
    MUSLIN_UNIT_STEP_PRESS_TO = 19,      /* press the seam towards `region` */
    MUSLIN_UNIT_STEP_JOIN = 20,          /* sew edge to edge, along one long edge */
    MUSLIN_UNIT_STEP_JOIN_LONG = 21,     /* sew two pieces together along their long sides */
    MUSLIN_UNIT_STEP_JOIN_SHORT = 22,    /* ... along short sides, the same fabric always on the same side */
    MUSLIN_UNIT_STEP_JOIN_POINT = 23,    /* sew a triangle's long side to a goose's short side, even at the foot */
    MUSLIN_UNIT_STEP_JOIN_CENTRED = 24,  /* sew a triangle's long side to one of two opposite sides, dog-ears alike */
    MUSLIN_UNIT_STEP_JOIN_AGAIN = 25,    /* to the goose's other short side */
    MUSLIN_UNIT_STEP_JOIN_PARTS = 26,    /* sew the parts together in pairs, seams meeting in the middle */
    MUSLIN_UNIT_STEP_SET_IN = 27,        /* set a square in, each side from the mark outwards */
    MUSLIN_UNIT_STEP_PARTIAL = 28,       /* sew from the raw edge in the middle outwards and stop at the mark */
    MUSLIN_UNIT_STEP_CUT_SLANTED = 29,   /* cut across the strip by parallel cuts at `angle`, `measure` apart: for
                                            diamonds as far as the strip is wide as cut */
    MUSLIN_UNIT_STEP_CUT_TURNING = 30,   /* cut from the strip alternately up and down, `angle` from its edge */
    MUSLIN_UNIT_STEP_CUT_TO_SHAPE = 31,  /* octagon: cut the corners off the square from marks `from_corner` along both
                                            edges, so that each edge is `measure` as cut */
    MUSLIN_UNIT_STEP_CUT_ON_POINT = 32,  /* cut squares on point, `measure` wide, their diagonal on the seam */
    MUSLIN_UNIT_STEP_TRIM_TO = 33,       /* trim to `measure` by `measure_height`; the seam runs from corner to
                                            corner */
    MUSLIN_UNIT_STEP_PAIR_STRIPS = 34,   /* lay the strips together that the pieces are cut from, right sides
                                            together */
    MUSLIN_UNIT_STEP_MARK_ACROSS_EACH = 35, /* as MARK_ACROSS, on each half-square */
    MUSLIN_UNIT_STEP_MARK_WIDE = 36,     /* mark where the seam lines cross at both wide-angled corners of a diamond */
    MUSLIN_UNIT_STEP_MARK_INNER = 37,    /* ... at one right-angled corner, the one to be set in */
    MUSLIN_UNIT_STEP_PAIR_EACH_HALF = 38,/* lay each half-square on a square cut `measure` */
    MUSLIN_UNIT_STEP_PAIR_CORNER_LEFT = 39, /* lay a small square on one of the two corners that are left */
    MUSLIN_UNIT_STEP_PAIR_LAST_CORNER = 40, /* geese: lay a small square on the large square's corner that is left */
    MUSLIN_UNIT_STEP_PAIR_END = 41,      /* geese: lay a square on one end, its line running down and outwards */
    MUSLIN_UNIT_STEP_PAIR_OTHER_END = 42,/* ... on the other end of the same long edge, its line likewise */
    MUSLIN_UNIT_STEP_BESIDE_BOTH = 43,   /* sew on both sides of both lines, `measure` from them */
    MUSLIN_UNIT_STEP_CUT_EACH_APART = 44,/* cut each of the four squares apart on its line */
    MUSLIN_UNIT_STEP_JOIN_MARKED = 45,   /* sew two pieces together along their long sides, mark on mark */
    MUSLIN_UNIT_STEP_JOIN_OTHERS = 46,   /* sew a triangle's long side to one of the other two sides, dog-ears alike */
    MUSLIN_UNIT_STEP_JOIN_EVERY_SECOND = 47, /* sew triangles to every second side of an octagon, opposite ones first */
    MUSLIN_UNIT_STEP_JOIN_WEDGES = 48,   /* sew two wedges together along a long side, the same fabric always alike */
    MUSLIN_UNIT_STEP_JOIN_MIDDLE = 49,   /* sew parts of wedges together, tips and seams meeting in the middle */
    MUSLIN_UNIT_STEP_JOIN_WIDE_END = 50, /* sew triangles to the wide ends of every second wedge, opposite ones first */
    MUSLIN_UNIT_STEP_PARTIAL_PARTS = 51, /* sew two pairs as in PARTIAL */
    MUSLIN_UNIT_STEP_JOIN_THROUGH = 52,  /* sew two halves from mark to mark, straight through the middle */
    MUSLIN_UNIT_STEP_SET_IN_SHORT = 53,  /* set a triangle in by its short sides, each from the mark outwards */
    MUSLIN_UNIT_STEP_TRIM_EARS = 54,     /* trim the dog-ears off level */
    MUSLIN_UNIT_STEP_TRIM_CROSSED = 55,  /* trim; the seams meet in the middle and run out into corners */
    MUSLIN_UNIT_STEP_TRIM_GEESE = 56,    /* trim; seams run into the lower corners, the point lies an allowance
                                            inside */
    MUSLIN_UNIT_STEP_TRIM_POINTS = 57,   /* trim; a point lies an allowance inside the middle of each edge */
    MUSLIN_UNIT_STEP_TRIM_CORNERS = 58,  /* trim; each corner's seam meets the edges `from_corner` from the raw
                                            corner */
    MUSLIN_UNIT_STEP_TRIM_STAR = 59,     /* trim; two points lie an allowance inside each edge, `from_corner` from its
                                            ends */
    MUSLIN_UNIT_STEP_TRIM_LEANING = 60,  /* trim; the seam meets the shorter edges `from_corner` from the raw corner */
    MUSLIN_UNIT_STEP_CUT_LENGTHS = 61,   /* cut the strip across into rectangles `measure` long */
    MUSLIN_UNIT_STEP_CUT_POINTS = 62,    /* hexagon: cut the corners off a rectangle from marks `from_corner` along its
                                            long edges to the middles of its ends, so that each edge is `measure` as
                                            cut */
    MUSLIN_UNIT_STEP_CUT_WEDGES = 63,    /* cut wedges alternately up and down with a ruler whose tip has `angle` */
    MUSLIN_UNIT_STEP_CUT_PAIRS = 64      /* half-squares: cut both strips in turn square across and `angle` from the
                                            edge */
};

struct muslin_unit_step {
    uint32_t size;
    uint32_t flags;
    muslin_len measure;        /* as the step says: the allowance s, a width, the unfinished width; 0 where none is */
    muslin_len measure_height; /* of a step that trims the unit: the unfinished height; else 0 */
    muslin_len from_corner;    /* along the unfinished edge (CUT_TO_SHAPE, CUT_POINTS: the edge as cut), nearest tick,
                                  where the step says so; else 0 */
    int32_t step;              /* enum muslin_unit_step_kind */
    int32_t piece;             /* row of muslin_unit_pieces(), from 1; 0: what has been sewn so far, or none */
    int32_t other;             /* the row it meets, so */
    int32_t times;             /* for one recipe */
    int32_t region;            /* PRESS_TO: towards this region; else 0 */
    int32_t angle;             /* degrees, where the step cuts a strip shape or an octagon; else 0 */
};
/* How the pieces of one recipe become its units, a row each step in the order of the work. Piece numbers count the
 * first hand's rows; for rows of the second hand count on behind them, and cut strip sets the other way; join the short
 * sides of mirrored split quarters by PIECES the other way round. Lines are drawn on region 2, the lighter fabric, and
 * half-squares pressed towards region 1, the darker. A rectangle takes no step. Units are trimmed last, where they are
 * trimmed; a half-rectangle that is a square is trimmed as a half-square. Points to be set in are marked in the inner
 * corner alone and sewn from there to the raw edge, so that what rounding made too large hangs outside. Distances from
 * a line or an edge are the allowance s: the take-up is what the fold eats afterwards. Statuses also as in base.h for
 * ask-then-fill rows, and those of the spec. Source: common practice, no source; half-squares from middle to middle: P.
 * Speth, Half square triangles finished size 2 inches, 2012. Example: half-squares of 3 in, two at a time: draw a line,
 * pair, sew beside it at 1/4 in, cut apart, press twice, trim twice to 3 1/2 in. Since 1.0. */
MUSLIN_API muslin_status muslin_unit_steps(const struct muslin_unit_spec *spec, struct muslin_unit_step *rows,
                                           size_t row_size, size_t capacity, size_t *count,
                                           struct muslin_problem *problem);

/* One plain English sentence for a step, with the places {piece}, {other}, {measure}, {measure_height}, {from_corner},
 * {region} and {angle} for whoever shows it to fill, where the sentence has them; a sentence on unknown steps for a
 * number that is none. Never null. Its wording may improve between versions. Constant time. Example:
 * puts(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_ON_LINE)). Since 1.0. */
MUSLIN_API const char *muslin_unit_step_sentence(int32_t step);

#ifdef __cplusplus
}
#endif

#endif
