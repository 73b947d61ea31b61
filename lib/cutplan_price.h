/* cutplan_price.h - the pattern that is worth most of one way.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_PRICE_H
#define MUSLIN_CUTPLAN_PRICE_H

#include "cutplan_knapsack.h"

struct msl_pricing {
    const struct msl_cutting *cutting;
    struct msl_knapsack sack;
    int64_t most_worth; /* of a piece: worths above it are taken as it, so that products stay in range */
    /* what panels, stock and stacks need besides: scratch, allocated with it */
};

/* The most that a thing of this way can be worth, for what a piece of each size is worth in it (0 or less: nothing) and
 * of how many at most, where that is more than `beat` (0 or more): then the pattern is added to the pool and *made is
 * its number; else *made is -1. *bound is what no pattern of this way passes. Returns 0 where the pool is full. */
int msl_price(struct msl_pricing *pricing, int32_t way, const int64_t *worth, const int64_t *most, int64_t beat,
              struct msl_pool *pool, int32_t *made, int64_t *bound);

/* Adds a pattern of one strip, from counts of sizes; -1 where the pool is full. */
int32_t msl_pool_add(struct msl_pool *pool, int32_t way, int64_t height, const int32_t *sizes, const int32_t *counts,
                     int32_t count);

#endif
