/* muslin/fabric.h - cloth and pre-cuts: usable width, what to buy, pieces from cloth, stock in hand.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every call
 *   Units       Lengths are ticks, areas doubled square ticks, shares ppm. Sizes are 0 .. MUSLIN_SIZE_MAX and counts
 *               0 .. MUSLIN_COUNT_MAX unless a member says otherwise. Across is from selvage to selvage, along is with
 *               the selvage. Sizes of pieces are cut sizes.
 *   Statuses    MUSLIN_ERR_NULL: a spec, array or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a
 *               struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               MUSLIN_ERR_CHOICE: a member that is none of its enum. What else a call can return stands with it.
 *               Within the ranges nothing overflows.
 *   Slack       narrower_by and shorter_by are the most that keeps the answer: one tick more and a piece is lost.
 *               wider_for_one, longer_for_one and less_by are the least that changes it.
 *   Cost        Constant time unless the call reads an array. Nothing allocates, nothing is kept.
 *   Problem     Optional everywhere (null). Where several members share a name, its `at` counts them from 0 in the
 *               order of the struct; for arrays `at` is the row.
 */
#ifndef MUSLIN_FABRIC_H
#define MUSLIN_FABRIC_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- width and length of cloth --------------------------------------------------------------------------------- */

/* The careful planning figure for the usable width of quilting cotton, 40 in; sources use 40, 42 and 44. */
#define MUSLIN_USABLE_WIDTH_USUAL INT64_C(325120)

/* Usable width from the labelled width (1 .. MUSLIN_SIZE_MAX): (labelled - 2 x selvage) x (1 - shrinkage), down to a
 * tick. shrinkage 0 .. 999999 ppm. MUSLIN_ERR_RANGE for `selvage` also when two of them leave nothing. Source: ISO 5077
 * for what shrinkage is a share of (the size before washing); geometry. Example: 44 in labelled, 1/2 in selvages, no
 * shrinkage: 43 in. Since 1.0. */
MUSLIN_API muslin_status muslin_fabric_usable_width(muslin_len labelled, muslin_len selvage, int32_t shrinkage,
                                                    muslin_len *out, struct muslin_problem *problem);

struct muslin_purchase_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_len needed;      /* length of cloth that must be there in the end */
    muslin_len extra;       /* fixed extra, added last */
    muslin_len step;        /* what the shop sells in, 1 or more: 1/8 yd 36576, 1/4 yd 73152, 1/3 yd 97536,
                             * 10 cm 32000, 25 cm 80000 */
    int32_t shrinkage;      /* ppm lost in the wash, 0 .. 999999: needed / (1 - shrinkage), up */
    int32_t extra_share;    /* ppm to add for safety, 0 .. 10000000: x (1 + share), up */
};
/* In steps of 1/8 yd, no shrinkage, no extra. */
#define MUSLIN_PURCHASE_SPEC_INIT { sizeof(struct muslin_purchase_spec), 0, 0, 0, 36576, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_purchase_spec_init(&buy, sizeof buy). Since 1.0. */
MUSLIN_API muslin_status muslin_purchase_spec_init(struct muslin_purchase_spec *spec, uint32_t size);

struct muslin_purchase {
    uint32_t size;
    uint32_t flags;
    muslin_len needed;       /* as asked */
    muslin_len unshrunk;     /* what shrinks to `needed`, up to a tick */
    muslin_len with_extra;   /* unshrunk plus the share, up to a tick, plus the fixed extra: the least to buy */
    muslin_len bought;       /* with_extra up to the step */
    int64_t steps;           /* bought / step */
    muslin_len spare;        /* bought - with_extra: so much more could be wished for at the same price */
    muslin_len less_by;      /* with_extra less this much, the least, would save a step; 0 if nothing is bought */
};
/* From a length needed to a length bought. Shrinkage divides by 1 - p, it does not multiply by 1 + p. Source:
 * Mathematically challenged: 80 x 56 backing (public forum) for the step; geometry for the shrinkage. Example: 112 in
 * in steps of 1/8 yd: 25 steps, 3 1/8 yd, 1/2 in spare; 4 in less would save a step. Since 1.0. */
MUSLIN_API muslin_status muslin_fabric_purchase(const struct muslin_purchase_spec *spec, struct muslin_purchase *out,
                                                struct muslin_problem *problem);

/* ---- pieces from cloth ----------------------------------------------------------------------------------------- */

struct muslin_cloth_spec {
    uint32_t size;
    uint32_t flags;           /* MUSLIN_CLOTH_MAY_TURN or 0 */
    muslin_len width;         /* usable width of the cloth or pre-cut */
    muslin_len length;        /* its length */
    muslin_len piece_width;   /* cut size across the cloth, 1 or more */
    muslin_len piece_length;  /* cut size along it, 1 or more */
    muslin_len loss_across;   /* taken off the width once, for straightening */
    muslin_len loss_along;    /* taken off the length once */
};
#define MUSLIN_CLOTH_MAY_TURN 1u /* compare with all pieces turned a quarter and report the better way */
/* 40 in x 1 yd, nothing lost; the piece is still to be given. */
#define MUSLIN_CLOTH_SPEC_INIT { sizeof(struct muslin_cloth_spec), 0, 325120, 292608, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_cloth_spec_init(&cloth, sizeof cloth). Since 1.0. */
MUSLIN_API muslin_status muslin_cloth_spec_init(struct muslin_cloth_spec *spec, uint32_t size);

struct muslin_cloth_pieces {
    uint32_t size;
    uint32_t flags;
    int64_t across;          /* pieces side by side */
    int64_t along;           /* rows of them */
    int64_t pieces;          /* across x along */
    int32_t turned;          /* 1 when the pieces lie turned a quarter; a tie is not turned */
    uint32_t warnings;       /* MUSLIN_WARN_NO_SLACK when there are pieces and one of the two slacks is 0 */
    muslin_len left_across;  /* cloth left over beside the columns, after the loss; 0 when the loss eats it all */
    muslin_len left_along;   /* ... and behind the rows */
    muslin_len narrower_by;  /* the cloth may be this much narrower before a column of pieces is lost */
    muslin_len shorter_by;   /* ... and this much shorter before a row is lost; both are 0 when there is no piece */
    muslin_len wider_for_one;/* this much wider and one more column fits */
    muslin_len longer_for_one; /* this much longer and one more row fits */
};
/* How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b), losses taken off first.
 * Published charts mix widths; width and losses are inputs here. Zero pieces is an answer, not an error, also when the
 * losses eat the cloth. With MUSLIN_CLOTH_MAY_TURN the slacks are those of the way reported: beyond them the other way
 * may still give as many. In the problem, piece_width and piece_length are MUSLIN_ARG_CUT with `at` 0 and 1, the losses
 * MUSLIN_ARG_END_LOSS with `at` 0 and 1. Source: Number of squares from a fat quarter; geometry. Example: 5 in squares
 * from 18 x 22 in: 12. Since 1.0. */
MUSLIN_API muslin_status muslin_fabric_pieces(const struct muslin_cloth_spec *spec, struct muslin_cloth_pieces *out,
                                              struct muslin_problem *problem);

struct muslin_strips_spec {
    uint32_t size;
    uint32_t flags;            /* 0 */
    int64_t pieces;            /* pieces wanted */
    muslin_len piece_across;   /* cut size along the strip, 1 or more */
    muslin_len strip_cut;      /* cut width of the strip, 1 or more */
    muslin_len usable_width;   /* length of one strip across the cloth */
    muslin_len end_loss;       /* taken off each strip for squaring its ends */
    muslin_len straightening;  /* taken off the cloth once */
};
/* 40 in usable, nothing lost; pieces and sizes are still to be given. */
#define MUSLIN_STRIPS_SPEC_INIT { sizeof(struct muslin_strips_spec), 0, 0, 0, 0, 325120, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_strips_spec_init(&strips, sizeof strips). Since 1.0. */
MUSLIN_API muslin_status muslin_strips_spec_init(struct muslin_strips_spec *spec, uint32_t size);

struct muslin_strips {
    uint32_t size;
    uint32_t flags;
    int64_t per_strip;        /* pieces, down */
    int64_t strips;           /* up */
    int64_t spare_pieces;     /* that the last strip could still give */
    muslin_len length;        /* cloth for them: strips x strip_cut + straightening */
    muslin_len left_per_strip;/* left over at the end of a full strip, after the end loss */
    muslin_len narrower_by;   /* the cloth may be this much narrower before a strip gives one piece less */
    muslin_len wider_for_one; /* this much wider and each strip gives one more */
    uint32_t warnings;        /* MUSLIN_WARN_NO_SLACK when narrower_by is 0 */
    int32_t pad;
};
/* Pieces wanted -> strips across the width -> length of cloth. MUSLIN_ERR_NO_YIELD when a strip gives no piece (the
 * problem names the usable width and the least that would do). In the problem, piece_across is MUSLIN_ARG_CUT, end_loss
 * and straightening are MUSLIN_ARG_END_LOSS with `at` 0 and 1. Source: 52 4-inch and 20 3-inch squares (public forum).
 * Example: 52 squares of 4 in at 44 in usable: 11 a strip, 5 strips, 20 in. Since 1.0. */
MUSLIN_API muslin_status muslin_fabric_strips(const struct muslin_strips_spec *spec, struct muslin_strips *out,
                                              struct muslin_problem *problem);

/* The least length of cloth whose area is `area` (doubled square ticks, 0 .. MUSLIN_LENGTH_MAX) at this usable width
 * (1 .. MUSLIN_SIZE_MAX): area / (2 x width), up to a tick. A lower bound only, since it ignores how pieces lie.
 * Source: fall block swap question (public forum), area over width. Example: 1296 sq in at 36 in: 36 in. Since 1.0. */
MUSLIN_API muslin_status muslin_fabric_area_bound(int64_t area, muslin_len usable_width, muslin_len *out,
                                                  struct muslin_problem *problem);

/* ---- stock: what is in hand ------------------------------------------------------------------------------------ */

enum muslin_edge {
    MUSLIN_EDGE_STRAIGHT = 1,      /* cut straight */
    MUSLIN_EDGE_PINKED_TIPS = 2,   /* zigzag edges, the stated size measured from tip to tip */
    MUSLIN_EDGE_PINKED_VALLEYS = 3 /* ... from valley to valley */
};
enum muslin_care {
    MUSLIN_CARE_UNWASHED = 1,
    MUSLIN_CARE_WASHED = 2
};
enum muslin_print {
    MUSLIN_PRINT_NONE = 1,          /* looks the same in every direction */
    MUSLIN_PRINT_TWO_WAY = 2,       /* upright or upside down alike, along the cloth */
    MUSLIN_PRINT_ONE_WAY = 3,       /* has a top, along the cloth */
    MUSLIN_PRINT_STRIPE_ALONG = 4,  /* stripes that run with the selvage */
    MUSLIN_PRINT_STRIPE_ACROSS = 5  /* stripes that run from selvage to selvage */
};
enum muslin_stock_kind {
    MUSLIN_STOCK_YARDAGE = 1,
    MUSLIN_STOCK_STRIP = 2,
    MUSLIN_STOCK_SQUARE = 3,
    MUSLIN_STOCK_FAT_QUARTER = 4,
    MUSLIN_STOCK_FAT_EIGHTH = 5
};

/* One kind of cloth in hand: `count` pieces of width x length. A spec and a row at once. */
struct muslin_stock_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_len width;       /* across, 1 or more: the longer side of a strip (its usable length), 20 .. 22 in of a fat
                             * quarter */
    muslin_len length;      /* along, 1 or more: the cut width of a strip, 18 in of a fat quarter */
    int64_t count;          /* pieces */
    muslin_len pink_depth;  /* tip to valley, on one edge; must be 0 for straight edges */
    int32_t edge;           /* enum muslin_edge */
    int32_t care;           /* enum muslin_care */
    int32_t print;          /* enum muslin_print */
    int32_t kind;           /* enum muslin_stock_kind */
};
/* One straight unwashed strip without direction, 2 1/2 x 40 in. */
#define MUSLIN_STOCK_SPEC_INIT { sizeof(struct muslin_stock_spec), 0, 325120, 20320, 1, 0, 1, 1, 1, 2 }
/* Writes the values above to the first `size` bytes of *spec. MUSLIN_ERR_NULL; MUSLIN_ERR_STRUCT_SIZE. Example:
 * muslin_stock_spec_init(&stock, sizeof stock). Since 1.0. */
MUSLIN_API muslin_status muslin_stock_spec_init(struct muslin_stock_spec *spec, uint32_t size);

/* The size that the arithmetic must use when one lines up the tips (align MUSLIN_EDGE_PINKED_TIPS) or the valleys
 * (MUSLIN_EDGE_PINKED_VALLEYS) throughout: a pinked size measured at the other point changes by two depths each way,
 * one for each of two edges; a straight edge changes nothing. Either output may be null. MUSLIN_ERR_RANGE for
 * pink_depth when nothing is left; MUSLIN_ERR_CHOICE for another align. Source: geometry. Example: a strip 2 1/2 in
 * from tip to tip, 1/16 in deep, is 2 3/8 in from valley to valley. Since 1.0. */
MUSLIN_API muslin_status muslin_stock_size(const struct muslin_stock_spec *stock, int32_t align, muslin_len *width,
                                           muslin_len *length, struct muslin_problem *problem);

struct muslin_stock_yield {
    uint32_t size;
    uint32_t flags;
    int64_t per_piece;       /* strips that one piece of stock gives */
    int64_t in_hand;         /* strips that the whole stock gives */
    int64_t pieces_needed;   /* pieces of stock for the strips wanted, up */
    int64_t pieces_missing;  /* of those, not in hand */
    muslin_len strip_length; /* length of each strip */
    muslin_len left_over;    /* of each piece, beside the strips */
    muslin_len shorter_by;   /* the piece may be this much shorter before a strip is lost */
    uint32_t warnings;       /* MUSLIN_WARN_NO_SLACK when shorter_by is 0 */
    int32_t pad;
};
/* Strips of cut width strip_cut (1 or more) from stock, cut across its width (each strip as long as the stock is wide).
 * The stated width and length are used as they are: to line up the other point of pinked edges, state what
 * muslin_stock_size gives. MUSLIN_ERR_NO_YIELD when a piece gives none (the problem names its length and the least that
 * would do). Source: Fat quarter conversion (public forum). Example: 80 half-width strips of 2 1/2 in from fat quarters
 * 18 in deep: 7 a piece, 12 pieces. Since 1.0. */
MUSLIN_API muslin_status muslin_stock_strips(const struct muslin_stock_spec *stock, muslin_len strip_cut,
                                             int64_t strips_wanted, struct muslin_stock_yield *out,
                                             struct muslin_problem *problem);

/* What to say when these fabrics meet in one top: a sum of enum muslin_warning bits. MIXED_WASH: some are washed, some
 * are not. PRECUT_WASHED: a strip or a square is washed. MIXED_EDGES: they do not all have the same kind of edge. Every
 * row speaks, whatever its count. Rows are muslin_stock_spec at stride row_size (at least the first published size, at
 * most 4096, and no row's own size above it: else MUSLIN_ERR_STRUCT_SIZE); the first bad row fails the call and is the
 * problem's `at`. n = 0 gives 0, and rows may then be null. One pass. Common practice, no source. Example: a washed and
 * an unwashed fabric give MUSLIN_WARN_MIXED_WASH. Since 1.0. */
MUSLIN_API muslin_status muslin_stock_check(const struct muslin_stock_spec *rows, size_t row_size, size_t n,
                                            uint32_t *warnings, struct muslin_problem *problem);

/* *allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3, else MUSLIN_ERR_RANGE)
 * without showing it, else 0: without direction any; two-way and stripes a half turn; one-way no turn. Source:
 * geometry. Example: a stripe turned by 2 may, by 1 may not. Since 1.0. */
MUSLIN_API muslin_status muslin_print_may_turn(int32_t print, int32_t quarter_turns, int32_t *allowed,
                                               struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
