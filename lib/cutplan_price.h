/* cutplan_price.h - the pattern that is worth most of one way.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_PRICE_H
#define MUSLIN_CUTPLAN_PRICE_H

#include "cutplan_knapsack.h"

/* What a strip may be filled with. */
struct msl_filling {
    int64_t height;
    int64_t room;
    const int64_t *worth;
    const int64_t *most;
    int32_t first; /* sizes first .. end - 1 */
    int32_t end;
    int32_t within; /* 1: of a sheet, without sizes that are slit */
    int32_t pad;
};

struct msl_pricing {
    const struct msl_cutting *cutting;
    struct msl_knapsack sack;
    int64_t most_worth; /* of a piece: worths above it are taken as it, so that sums stay in range */
    /* scratch: what was found for a strip, */
    struct msl_filling filling;
    struct msl_item *items; /* sizes, and stacks as size_count + 2 x size + turned of one of the pieces */
    int32_t *counts;
    int32_t item_count;
    int32_t stacked_count;
    struct msl_item *stacked; /* for a stack, by 2 x size + turned, */
    int32_t *stacked_counts;
    uint8_t *seen; /* ways of lying whose width has its stack */
    /* and for a sheet */
    struct msl_item *heights; /* of strips, by their number */
    int32_t *height_counts;
    struct msl_item *slits;
    int32_t *slit_counts;
    int64_t *left; /* of each size, pieces that may still be laid */
    int64_t rest;  /* of a panel, beside what is slit */
    int32_t slit_count;
    int32_t height_count;
};

/* Room for a cutting and so many states, 4 or more; most_worth follows from what fits in its ways. Returns 0 where
 * memory is not had. */
int msl_pricing_make(struct msl_pricing *pricing, const struct msl_cutting *cutting, int32_t states,
                     const struct muslin_allocator *allocator);
void msl_pricing_free(struct msl_pricing *pricing, const struct muslin_allocator *allocator);

/* The most that a thing of this way can be worth, for what a piece of each size is worth in it (0 or less: nothing) and
 * of how many at most, where that is more than `beat` (0 or more): then the pattern is added to the pool and *made is
 * its number; else *made is -1. *bound is what no pattern of this way passes, each size taken for itself in a strip as
 * often as `most` says. A sheet or a strip of stacks may hold more than `most` in all, where nothing within it is worth
 * more than `beat`. Returns 0 where the pool is full. */
int msl_price(struct msl_pricing *pricing, int32_t way, const int64_t *worth, const int64_t *most, int64_t beat,
              struct msl_pool *pool, int32_t *made, int64_t *bound);

/* The same of patterns that hold no more than `most` in all. One that is worth much, not always the most; none where
 * the pool is full. */
void msl_price_within(struct msl_pricing *pricing, int32_t way, const int64_t *worth, const int64_t *most, int64_t beat,
                      struct msl_pool *pool, int32_t *made);

/* Adds a pattern of one strip, from counts of sizes; -1 where the pool is full. */
int32_t msl_pool_add(struct msl_pool *pool, int32_t way, int64_t height, const int32_t *sizes, const int32_t *counts,
                     int32_t count);

/* A pattern made strip by strip, each piece by piece. Each returns 0 where the pool is full; what was begun last is
 * taken back by msl_pool_undo(). */
int msl_pool_begin(struct msl_pool *pool, int32_t way);
int msl_pool_strip(struct msl_pool *pool, int64_t height);
int msl_pool_lay(struct msl_pool *pool, struct msl_laid laid);
void msl_pool_undo(struct msl_pool *pool);

/* ---- strips ----------------------------------------------------------------------------------------------------- */

/* The most that a strip can be worth, above beat, else beat; what it then holds stays in the scratch. */
int64_t msl_strip_worth(struct msl_pricing *pricing, const struct msl_filling *filling, int64_t beat, int64_t *bound);

/* Adds what msl_strip_worth() has found to the pattern begun, as a strip, of each size no more than is left, which gets
 * less; and to *worth what that is worth. Returns 0 where the pool is full. */
int msl_strip_lay(struct msl_pricing *pricing, struct msl_pool *pool, int64_t *worth);

/* What a piece is worth at most. */
int64_t msl_worth_within(const struct msl_pricing *pricing, const int64_t *worth, int32_t size);

#endif
