/* muslin/fabric.h - cloth and pre-cuts: usable width, what to buy, pieces from cloth, stock in hand.
 *
 * SPDX-License-Identifier: MIT
 *
 * Sizes are 0 .. MUSLIN_SIZE_MAX and counts 0 .. MUSLIN_COUNT_MAX unless a member says otherwise; shares are ppm.
 * Nothing allocates; every call is constant time unless it says otherwise.
 */
#ifndef MUSLIN_FABRIC_H
#define MUSLIN_FABRIC_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- width and length of cloth --------------------------------------------------------------------------------- */

/* The careful planning figure for the usable width of quilting cotton, 40 in; sources use 40, 42 and 44. */
#define MUSLIN_USABLE_WIDTH_USUAL 325120

/* Usable width from the labelled width: (labelled - 2 x selvage) x (1 - shrinkage), down to a tick. shrinkage
 * 0 .. 999999 ppm. MUSLIN_ERR_RANGE, also when the selvages leave nothing. Since 0.1. */
MUSLIN_API muslin_status muslin_fabric_usable_width(muslin_len labelled, muslin_len selvage, int32_t shrinkage,
                                                    muslin_len *out, struct muslin_problem *problem);

struct muslin_purchase_spec {
    uint32_t size;
    uint32_t flags;         /* 0 */
    muslin_len needed;      /* length of cloth that must be there in the end */
    muslin_len extra;       /* fixed extra, added last */
    muslin_len step;        /* what the shop sells in: 1/8 yd = 36576, 1/4 yd, 1/3 yd, 10 cm = 32000 ...; 1 or more */
    int32_t shrinkage;      /* ppm lost in the wash, 0 .. 999999: needed / (1 - shrinkage), up */
    int32_t extra_share;    /* ppm to add for safety, 0 .. 10000000: x (1 + share), up */
};
/* In steps of 1/8 yd, no shrinkage, no extra. */
#define MUSLIN_PURCHASE_SPEC_INIT { (uint32_t)sizeof(struct muslin_purchase_spec), 0, 0, 0, 36576, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_purchase_spec_init(struct muslin_purchase_spec *spec, uint32_t size);

struct muslin_purchase {
    uint32_t size;
    uint32_t flags;
    muslin_len needed;
    muslin_len unshrunk;     /* what shrinks to `needed` */
    muslin_len with_extra;   /* unshrunk plus the share plus the fixed extra: the least to buy */
    muslin_len bought;       /* with_extra up to the step */
    int64_t steps;           /* bought / step */
    muslin_len spare;        /* bought - with_extra */
    muslin_len less_by;      /* with_extra smaller by this much would save a step; 0 when nothing is bought */
};
/* From a length needed to a length bought. Example: 112 in in steps of 1/8 yd: 3 1/8 yd. Since 0.1. */
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
#define MUSLIN_CLOTH_SPEC_INIT { (uint32_t)sizeof(struct muslin_cloth_spec), 0, 325120, 292608, 0, 0, 0, 0 }
/* Writes the values above (40 in x 1 yd) to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_cloth_spec_init(struct muslin_cloth_spec *spec, uint32_t size);

struct muslin_cloth_pieces {
    uint32_t size;
    uint32_t flags;
    int64_t across;          /* pieces side by side */
    int64_t along;           /* rows of them */
    int64_t pieces;          /* across x along */
    int32_t turned;          /* 1 when the pieces lie turned a quarter */
    int32_t warnings;        /* MUSLIN_WARN_NO_SLACK */
    muslin_len left_across;  /* cloth left over beside the pieces */
    muslin_len left_along;
    muslin_len narrower_by;  /* the cloth may be this much narrower before a column of pieces is lost */
    muslin_len shorter_by;   /* ... and this much shorter before a row is lost */
    muslin_len wider_for_one;/* this much wider and one more column fits */
    muslin_len longer_for_one;
};
/* How many pieces a cloth gives in a plain grid: floor(width / a) x floor(length / b). Published charts mix widths;
 * width and losses are inputs here. Zero pieces is an answer, not an error (narrower_by and shorter_by are then 0).
 * Example: 5 in squares from 18 x 22 in: 12. Since 0.1. */
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
#define MUSLIN_STRIPS_SPEC_INIT { (uint32_t)sizeof(struct muslin_strips_spec), 0, 0, 0, 0, 325120, 0, 0 }
/* Writes the values above (40 in usable) to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_strips_spec_init(struct muslin_strips_spec *spec, uint32_t size);

struct muslin_strips {
    uint32_t size;
    uint32_t flags;
    int64_t per_strip;        /* down */
    int64_t strips;           /* up */
    int64_t spare_pieces;     /* that the last strip could still give */
    muslin_len length;        /* cloth for them: strips x strip_cut + straightening */
    muslin_len left_per_strip;/* left over at the end of a full strip */
    muslin_len narrower_by;   /* the cloth may be this much narrower before a strip gives one piece less */
    muslin_len wider_for_one; /* this much wider and each strip gives one more */
    int32_t warnings;         /* MUSLIN_WARN_NO_SLACK */
    int32_t pad;
};
/* Pieces wanted -> strips across the width -> length of cloth. MUSLIN_ERR_NO_YIELD when a strip gives no piece.
 * Example: 52 squares of 4 in at 44 in usable: 11 a strip, 5 strips, 20 in. Since 0.1. */
MUSLIN_API muslin_status muslin_fabric_strips(const struct muslin_strips_spec *spec, struct muslin_strips *out,
                                              struct muslin_problem *problem);

/* The least length of cloth whose area is `area` (doubled square ticks) at this usable width, up to a tick: a lower
 * bound only, since it ignores how pieces lie. Since 0.1. */
MUSLIN_API muslin_status muslin_fabric_area_bound(int64_t area, muslin_len usable_width, muslin_len *out,
                                                  struct muslin_problem *problem);

/* ---- stock: what is in hand ------------------------------------------------------------------------------------ */

enum muslin_edge {
    MUSLIN_EDGE_STRAIGHT = 1,
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
    muslin_len width;       /* across: the longer side of a strip (its usable length), 20 .. 22 in of a fat quarter */
    muslin_len length;      /* along: the cut width of a strip, 18 in of a fat quarter */
    int64_t count;
    muslin_len pink_depth;  /* tip to valley, on one edge; 0 for straight edges */
    int32_t edge;           /* enum muslin_edge */
    int32_t care;           /* enum muslin_care */
    int32_t print;          /* enum muslin_print */
    int32_t kind;           /* enum muslin_stock_kind */
};
#define MUSLIN_STOCK_SPEC_INIT { (uint32_t)sizeof(struct muslin_stock_spec), 0, 325120, 20320, 1, 0, 1, 1, 1, 2 }
/* Writes the values above (one straight unwashed strip, 2 1/2 x 40 in) to the first `size` bytes. Since 0.1. */
MUSLIN_API muslin_status muslin_stock_spec_init(struct muslin_stock_spec *spec, uint32_t size);

/* The size that the arithmetic must use when one lines up the tips (align MUSLIN_EDGE_PINKED_TIPS) or the valleys
 * (MUSLIN_EDGE_PINKED_VALLEYS) throughout: a pinked size measured at the other point changes by two depths each way; a
 * straight edge changes nothing. Either output may be null. MUSLIN_ERR_RANGE when nothing is left. Since 0.1. */
MUSLIN_API muslin_status muslin_stock_size(const struct muslin_stock_spec *stock, int32_t align, muslin_len *width,
                                           muslin_len *length, struct muslin_problem *problem);

struct muslin_stock_strips {
    uint32_t size;
    uint32_t flags;
    int64_t per_piece;       /* strips that one piece of stock gives */
    int64_t in_hand;         /* strips that the whole stock gives */
    int64_t pieces_needed;   /* pieces of stock for the strips wanted, up */
    int64_t pieces_missing;  /* of those, not in hand */
    muslin_len strip_length; /* length of each strip */
    muslin_len left_over;    /* of each piece, beside the strips */
    muslin_len shorter_by;   /* the piece may be this much shorter before a strip is lost */
    int32_t warnings;        /* MUSLIN_WARN_NO_SLACK */
    int32_t pad;
};
/* Strips of cut width strip_cut from stock, cut across its width (each strip as long as the stock is wide).
 * Example: 80 half-width strips of 2 1/2 in from fat quarters 18 in deep: 7 a piece, 12 pieces. MUSLIN_ERR_NO_YIELD
 * when a piece gives none. Since 0.1. */
MUSLIN_API muslin_status muslin_stock_strips_of(const struct muslin_stock_spec *stock, muslin_len strip_cut,
                                                int64_t strips_wanted, struct muslin_stock_strips *out,
                                                struct muslin_problem *problem);

/* What to say when these fabrics meet in one top: a sum of enum muslin_warning bits (MIXED_WASH, PRECUT_WASHED,
 * MIXED_EDGES). Rows are muslin_stock_spec at stride row_size. O(n). Since 0.1. */
MUSLIN_API muslin_status muslin_stock_check(const struct muslin_stock_spec *rows, size_t row_size, size_t n,
                                            uint32_t *warnings, struct muslin_problem *problem);

/* *allowed becomes 1 when a piece of this print may lie turned by so many quarter turns (0 .. 3) without showing it:
 * none any; two-way and stripes a half turn; one-way no turn. Since 0.1. */
MUSLIN_API muslin_status muslin_print_may_turn(int32_t print, int32_t quarter_turns, int32_t *allowed,
                                               struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
