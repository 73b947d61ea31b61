/* muslin/supplies.h - what else a quilt needs: thread, stitches, lines of quilting, weight, cost.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; counts 0 .. MUSLIN_COUNT_MAX;
 *               shares ppm; masses mg; weights per area mg for a square metre; money in the smallest unit of the
 *               caller's money. Stitches come in thousandths of a stitch.
 *   Statuses    MUSLIN_ERR_NULL: a spec, row or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a
 *               struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               MUSLIN_ERR_CHOICE: a member that is none of its enum. What else a call can return stands with it. The
 *               ..._init calls return MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Rounding    Each result is worked out exactly and rounded once, in the direction its comment or the caller names.
 *   Cost        Constant time, unless rows are read: then one pass. Nothing allocates.
 *   Problem     Optional everywhere (null). For rows `at` is the row.
 */
#ifndef MUSLIN_SUPPLIES_H
#define MUSLIN_SUPPLIES_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- seams to be sewn ------------------------------------------------------------------------------------------ */

struct muslin_piecing_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    int64_t sets;                /* strip sets */
    int64_t strips_per_set;      /* 1 or more */
    muslin_len strip_length;     /* length of the seams in a set */
    int64_t tops;                /* equal tops of blocks in a straight setting */
    int64_t columns;             /* 1 or more */
    int64_t rows;                /* 1 or more */
    int64_t segments_per_block;  /* 1 or more, side by side, each as high as the block */
    muslin_len block_width;      /* finished */
    muslin_len block_height;     /* finished */
    muslin_len allowance;        /* of one edge, 0 .. MUSLIN_SIZE_MAX / 8 */
    muslin_len take_up;          /* of one seam, 0 .. MUSLIN_SIZE_MAX / 8 */
};
/* Nothing yet: no set and no top, strips 40 in long, blocks in one piece, 1/4 in seams. */
#define MUSLIN_PIECING_SPEC_INIT { sizeof(struct muslin_piecing_spec), 0, 0, 1, 325120, 0, 1, 1, 1, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_piecing_spec_init(struct muslin_piecing_spec *spec, uint32_t size);

struct muslin_piecing {
    uint32_t size;
    uint32_t flags;
    int64_t seams;             /* number of seams in all */
    muslin_len in_sets;        /* sets x (strips - 1) x strip length */
    muslin_len in_blocks;      /* segment to segment, each as long as the block is high, unfinished */
    muslin_len in_rows;        /* block to block, as long */
    muslin_len between_rows;   /* row to row, each as long as the row is wide, unfinished */
    muslin_len total;          /* of the four: what muslin_thread_plan() asks for */
};
/* Length of all seams of strip sets and of tops of blocks. A seam is sewn from raw edge to raw edge, so it is as long
 * as the unfinished piece: finished + 2 s + u. Borders, backing and binding are not in it; muslin_length_dot() adds
 * up other seams. MUSLIN_ERR_OVERFLOW when seams or a length pass MUSLIN_LENGTH_MAX. Source: geometry. Example: 7 sets
 * of 6 strips 40 in long, and 2 tops of 3 x 3 blocks of two segments, 12 in finished: 1400 in in the sets, 225 in in
 * the blocks, 150 in in the rows, 146 in between the rows: 1921 in. Since 1.0. */
MUSLIN_API muslin_status muslin_piecing_plan(const struct muslin_piecing_spec *spec, struct muslin_piecing *out,
                                             struct muslin_problem *problem);

/* ---- thread ---------------------------------------------------------------------------------------------------- */

enum muslin_thread_method {
    MUSLIN_THREAD_METHOD_RATIO = 1,    /* thread : seam as given */
    MUSLIN_THREAD_METHOD_FORMULA = 2   /* 2 + 2 T S: from the thickness sewn and the stitch */
};
#define MUSLIN_THREAD_READY_BOBBINS 1u /* bobbins are bought wound, so that spools hold the needle thread alone */

struct muslin_thread_spec {
    uint32_t size;
    uint32_t flags;             /* MUSLIN_THREAD_READY_BOBBINS or 0 */
    muslin_len seam;            /* to be sewn, 0 .. MUSLIN_LENGTH_MAX / 2 */
    int64_t ratio_above;        /* thread ..., 1 .. MUSLIN_COUNT_MAX; by the formula not used */
    int64_t ratio_below;        /* ... for so much seam, 1 .. MUSLIN_COUNT_MAX; by the formula not used */
    muslin_len thickness;       /* T: all layers together, pressed flat under the foot; by the ratio not used */
    muslin_len stitch_length;   /* 1 / S, 1 or more; by the ratio not used */
    muslin_len bobbin;          /* thread a bobbin holds, 0 .. MUSLIN_LENGTH_MAX / 2; 0: bobbins are not counted */
    muslin_len spool;           /* thread on a spool, 0 .. MUSLIN_LENGTH_MAX / 2; 0: spools are not counted */
    int32_t method;             /* enum muslin_thread_method */
    int32_t waste;              /* ppm on top, 0 .. 10000000 */
};
/* By the ratio 5 : 2, 15 % waste; stitches of 2.0 mm for the formula; the seam is still to be given. */
#define MUSLIN_THREAD_SPEC_INIT { sizeof(struct muslin_thread_spec), 0, 0, 5, 2, 0, 640, 0, 0, 1, 150000 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_thread_spec_init(struct muslin_thread_spec *spec, uint32_t size);

struct muslin_thread {
    uint32_t size;
    uint32_t flags;
    int64_t ratio_thousandths;   /* thread for one unit of seam, in thousandths, nearest */
    muslin_len thread;           /* without waste, up to a tick */
    muslin_len with_waste;       /* exact thread x (1 + waste), up to a tick: needle and bobbin thread together */
    muslin_len needle;           /* half of the exact one, up to a tick */
    muslin_len bobbin_thread;    /* the other half, up to a tick */
    int64_t bobbins;             /* up */
    int64_t spools;              /* for with_waste, or for the needle thread alone, up; the last bobbin is wound only
                                  * as far as it is needed */
    muslin_len left_on_bobbin;   /* room, or ready thread, left on the last one */
    muslin_len left_on_spool;    /* spools x spool less the same thread */
    muslin_len bobbin_longer_by; /* the seam may be so much longer before one bobbin more is needed ... */
    muslin_len spool_longer_by;  /* ... before one spool more is needed; both at most up to the longest seam for which
                                  * this call gives an answer */
};
/* Sewing thread for seams in lockstitch (ISO 4915 type 301), half of it from the needle, half from the bobbin. By the
 * ratio, thread = seam x above / below: 5 : 2 is usual for 301. By the formula, thread = seam x (2 + 2 T S) with S
 * stitches to the unit: each of the two threads lies once along the seam and goes once through the thickness a stitch.
 * The two agree for patchwork. MUSLIN_ERR_OVERFLOW when the thread passes MUSLIN_LENGTH_MAX. Sources: Stitch classes
 * 300-400 (Apparel Science) for 2.5 and 1 : 1; Sewing thread consumption guide (textile blog) for the formula;
 * Measuring actual thread consumption (Apparel Science) for 10 to 15 % waste, a thread-industry handout for 15 to 20 %.
 * Example: 220 cm of seam: 550 cm of thread, with 15 % waste 632.5 cm; 540 cm and 15 % are 621 cm. Since 1.0. */
MUSLIN_API muslin_status muslin_thread_plan(const struct muslin_thread_spec *spec, struct muslin_thread *out,
                                            struct muslin_problem *problem);

/* How many stitches of `stitch_length` (1 .. MUSLIN_SIZE_MAX) lie in `length` (0 .. MUSLIN_SIZE_MAX; an inch is 8128):
 * *thousandths gets length / stitch_length with so many decimals (0 .. 3), rounded as `direction` (enum
 * muslin_direction) says, always counted in thousandths; *exact, which may be null, becomes 1 when nothing was lost.
 * Source: Convert metric stitch length to stitches per inch (public blog), 25.4 / mm. Example: stitches of 2.5 mm make
 * 10.160 in an inch, exactly. Since 1.0. */
MUSLIN_API muslin_status muslin_stitch_count(muslin_len length, muslin_len stitch_length, int32_t decimals,
                                             int32_t direction, int64_t *thousandths, int32_t *exact,
                                             struct muslin_problem *problem);

/* The other way round: the stitch of which so many thousandths (1 .. MUSLIN_COUNT_MAX) lie in `length` (0 ..
 * MUSLIN_SIZE_MAX), rounded as asked. MUSLIN_ERR_NULL: rounding or out is null. Source: as muslin_stitch_count().
 * Example: 12 stitches in an inch are 677 ticks long, 2.1 mm to tenths. Since 1.0. */
MUSLIN_API muslin_status muslin_stitch_length(muslin_len length, int64_t thousandths,
                                              const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                              struct muslin_problem *problem);

/* ---- lines of quilting ----------------------------------------------------------------------------------------- */

enum muslin_quilting_pattern {
    MUSLIN_QUILTING_PATTERN_ACROSS = 1,         /* straight lines from side to side */
    MUSLIN_QUILTING_PATTERN_ALONG = 2,          /* straight lines from top to bottom */
    MUSLIN_QUILTING_PATTERN_GRID = 3,           /* both */
    MUSLIN_QUILTING_PATTERN_DIAGONAL = 4,       /* at 45 degrees, one way */
    MUSLIN_QUILTING_PATTERN_CROSSHATCH = 5,     /* at 45 degrees, both ways */
    MUSLIN_QUILTING_PATTERN_OUTLINE = 6         /* along seams or shapes whose length is given */
};
enum muslin_quilting_start {
    MUSLIN_QUILTING_START_AT_OFFSET = 1,      /* the first diagonal cuts a corner off, at the offset from that corner */
    MUSLIN_QUILTING_START_FROM_CORNER = 2     /* the first diagonal starts in a corner; the others lie on both sides of
                                                 it */
};

struct muslin_quilting_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_len width;       /* of the area to quilt, 1 or more but for an outline */
    muslin_len length;      /* of the area, 1 or more but for an outline */
    muslin_len spacing;     /* d, from line to line, square to them, 1 or more; for an outline not used */
    muslin_len offset;      /* no line lies nearer to the edges it runs beside, or to the corners it cuts off; from a
                             * corner and for an outline not used */
    muslin_len outline;     /* length of what is outlined, 0 .. MUSLIN_LENGTH_MAX / 2; used for an outline alone */
    int64_t passes;         /* lines along an outline: 1 in the ditch or on one side, 2 on both sides */
    int32_t pattern;        /* enum muslin_quilting_pattern */
    int32_t start;          /* enum muslin_quilting_start, of diagonals */
};
/* A grid of 2 in; width and length are still to be given. */
#define MUSLIN_QUILTING_SPEC_INIT { sizeof(struct muslin_quilting_spec), 0, 0, 0, 16256, 0, 0, 1, 3, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_quilting_spec_init(struct muslin_quilting_spec *spec, uint32_t size);

struct muslin_quilting {
    uint32_t size;
    uint32_t flags;
    int64_t lines;            /* in all; for an outline the passes */
    muslin_len length;        /* of all lines together, up to a tick: what muslin_thread_plan() asks for */
    int64_t lines_first;      /* from side to side, or the diagonals one way */
    int64_t lines_second;     /* from top to bottom, or the diagonals the other way */
    muslin_len left_first;    /* straight lines: from the last one to where another might lie; diagonals: 0 */
    muslin_len left_second;
    muslin_len even_first;    /* straight lines: the widest spacing with as many lines, down to a tick, which uses up
                               * what is left; 0 below two lines and for diagonals */
    muslin_len even_second;
    int32_t exact;            /* 1 when the length is a whole number of ticks */
    int32_t pad;
    muslin_len last_first;    /* straight lines: from the last one to the edge behind it, offset and what is left; 0
                               * where there is no line, and for diagonals */
    muslin_len last_second;
};
/* Number and length of the lines of quilting on a rectangle. Straight lines lie at offset, offset + d, ... from the
 * first edge and no nearer than the offset to the last; with an offset of 0 a line on the edge itself counts. Diagonals
 * from an offset lie at offset, offset + d, ... from the corner they cut off, measured square to them, and no nearer
 * than the offset to the far corner; at 0 a line would be a point and is not counted. Diagonals from a corner: one
 * starts in it, and others lie at d, 2 d, ... on both sides as far as they meet the area. The second way is the mirror
 * image of the first. Lines end at the edges of the area; tails and turns belong into the waste of the thread. No line
 * at all is an answer. MUSLIN_ERR_OVERFLOW when an outline times its passes passes MUSLIN_LENGTH_MAX. Source: geometry:
 * a diagonal of a w x h area at the distance p from a corner is 2 p long, then sqrt 2 x the shorter side, then sqrt 2
 * (w + h) - 2 p. Example: 40 x 48 in, a grid of 4 in from an offset of 2 in: 12 lines from side to side and 10 from top
 * to bottom, 960 in; crosshatched at 4 in from a corner: 32 lines. Since 1.0. */
MUSLIN_API muslin_status muslin_quilting_lines(const struct muslin_quilting_spec *spec, struct muslin_quilting *out,
                                               struct muslin_problem *problem);

/* ---- weight ---------------------------------------------------------------------------------------------------- */

struct muslin_weight_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    muslin_len width;          /* of the finished quilt */
    muslin_len length;
    muslin_len binding_length; /* as cut and joined, or 0 */
    muslin_len binding_cut;    /* cut width of the binding */
    int64_t top_density;       /* mg for a square metre of the top's cloth, 0 .. MUSLIN_COUNT_MAX, and so on */
    int64_t batting_density;   /* of the filler */
    int64_t backing_density;   /* of the back */
    int64_t binding_density;   /* of the binding's cloth */
    int64_t step;              /* each mass is rounded to a multiple of so many mg, 1 .. MUSLIN_SIZE_MAX */
    int32_t seam_share;        /* ppm of cloth more that lies in the top's seams, 0 .. 10000000 */
    int32_t direction;         /* enum muslin_direction */
};
/* To the nearest gram, nothing in seams, no binding; sizes and weights are still to be given. */
#define MUSLIN_WEIGHT_SPEC_INIT { sizeof(struct muslin_weight_spec), 0, 0, 0, 0, 0, 0, 0, 0, 0, 1000, 0, 3 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_weight_spec_init(struct muslin_weight_spec *spec, uint32_t size);

struct muslin_weight {
    uint32_t size;
    uint32_t flags;
    int64_t top;      /* mg: width x length x (1 + seam share) x density */
    int64_t batting;  /* mg: width x length x density */
    int64_t backing;
    int64_t binding;  /* mg: length x cut width x density */
    int64_t total;    /* mg: of the exact masses, rounded once, so it may differ from the sum of the rounded ones */
};
/* What a quilt weighs, layer by layer, from what its cloth weighs for a square metre (its maker says, or weigh a piece
 * of known size). Thread is left out: it is a few grams. One square metre is 320000 x 320000 square ticks, so each mass
 * is exact before it is rounded. In the problem the densities have `at` 0 to 3 in the order of the struct. Source:
 * geometry. Example: 1.5 x 2 m, top and backing of 120 g, batting of 150 g a square metre, 10 % in seams: 396 + 450 +
 * 360 = 1206 g. Since 1.0. */
MUSLIN_API muslin_status muslin_weight_plan(const struct muslin_weight_spec *spec, struct muslin_weight *out,
                                            struct muslin_problem *problem);

/* Ounces for a square yard, in thousandths of an ounce (0 .. MUSLIN_COUNT_MAX), as mg for a square metre, rounded as
 * `direction` (enum muslin_direction) says. Source: NIST Handbook 44 and SP 811: the pound is 453.59237 g, the yard
 * 0.9144 m, exactly. Example: 4 oz a square yard are 135623 mg a square metre, nearest. Since 1.0. */
MUSLIN_API muslin_status muslin_density_from_ounces(int64_t thousandths, int32_t direction, int64_t *density,
                                                    struct muslin_problem *problem);

/* A mass in mg (0 .. MUSLIN_LENGTH_MAX) in ounces with so many decimals (0 .. 3), rounded as `direction` (enum
 * muslin_direction) says and counted in thousandths. Source: as above. Example: 1206 g with one decimal, nearest, are
 * 42500 thousandths, 42.5 oz. Since 1.0. */
MUSLIN_API muslin_status muslin_mass_in_ounces(int64_t mass, int32_t decimals, int32_t direction, int64_t *thousandths,
                                               struct muslin_problem *problem);

/* ---- cost ------------------------------------------------------------------------------------------------------ */

/* The largest price, cost and total, in the smallest unit of the money: 2^62 - 1. */
#define MUSLIN_MONEY_MAX INT64_C(4611686018427387903)

enum muslin_cost_kind {
    MUSLIN_COST_LENGTH = 1,   /* cloth by length: a price for so many ticks, 292608 for a yard, 320000 for a metre */
    MUSLIN_COST_PIECES = 2,   /* things one by one: a price for one, or for so many */
    MUSLIN_COST_BUNDLES = 3   /* pieces that are sold together only: whole bundles are bought */
};

/* One thing on a list of costs. */
struct muslin_cost_spec {
    uint32_t size;
    uint32_t flags;     /* 0 */
    int64_t amount;     /* ticks, 0 .. MUSLIN_LENGTH_MAX / 2, as bought (see muslin_fabric_purchase()); or pieces */
    int64_t price;      /* 0 .. MUSLIN_MONEY_MAX */
    int64_t per;        /* what the price is for: ticks, 1 .. MUSLIN_SIZE_MAX; or pieces, 1 .. MUSLIN_COUNT_MAX */
    int32_t sold;       /* enum muslin_cost_kind */
    int32_t direction;  /* enum muslin_direction, of a cost between two whole numbers; shops round to the nearest */
};
/* Pieces at a price for one, to the nearest; amount and price are still to be given. */
#define MUSLIN_COST_SPEC_INIT { sizeof(struct muslin_cost_spec), 0, 0, 0, 1, 2, 3 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_cost_spec_init(struct muslin_cost_spec *spec, uint32_t size);

struct muslin_cost {
    uint32_t size;
    uint32_t flags;
    int64_t bought;     /* the amount, or whole bundles, up */
    int64_t spare;      /* pieces that the bundles hold beyond the amount: so many more cost nothing more */
    int64_t cost;       /* amount x price / per, rounded as asked, or bundles x price */
    int32_t exact;      /* 1 when the cost was not rounded */
    int32_t pad;
};
/* What one thing costs. The money has as many decimals as the caller says; no money is converted. MUSLIN_ERR_OVERFLOW
 * when the cost passes MUSLIN_MONEY_MAX. Source: geometry; rounding to the nearest with halves upwards is common
 * practice, no source. Example: 3 1/8 yd at 11.50 the yard cost 35.94, of 35.9375; 45 strips at 42.00 for a bundle of
 * 40 are two bundles for 84.00, with 35 strips to spare. Since 1.0. */
MUSLIN_API muslin_status muslin_cost_plan(const struct muslin_cost_spec *spec, struct muslin_cost *out,
                                          struct muslin_problem *problem);

/* The sum of a list, each row rounded on its own as a bill does it, and the sum not rounded again. Rows are
 * muslin_cost_spec at stride row_size (at least the first published size, at most 4096, and no row's own size above it:
 * else MUSLIN_ERR_STRUCT_SIZE); the first bad row fails the call and is the problem's `at`. n = 0 gives 0, and rows may
 * then be null. MUSLIN_ERR_OVERFLOW when a cost or the sum passes MUSLIN_MONEY_MAX. One pass. Source: geometry.
 * Example: 35.94 for the cloth and 84.00 for the bundles are 119.94. Since 1.0. */
MUSLIN_API muslin_status muslin_cost_total(const struct muslin_cost_spec *rows, size_t row_size, size_t n,
                                           int64_t *total, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
