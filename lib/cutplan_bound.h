/* cutplan_bound.h - what worths prove.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_BOUND_H
#define MUSLIN_CUTPLAN_BOUND_H

#include "cutplan_master.h"
#include "wide.h"

/* Which sums of costs there are, up to the most: a bit for each. None where `most` has too many bits. */
struct msl_reach {
    uint64_t *bits;
    int64_t most; /* -1: there is no table */
};

enum { MSL_REACH_BITS = 1 << 23 };

/* Words of the largest table. */
enum { MSL_REACH_WORDS = MSL_REACH_BITS / 64 };

/* Fills the table, for sums up to `most`. Returns the steps that it took. */
int64_t msl_reach_make(struct msl_reach *reach, const struct msl_cutting *cutting, int64_t most);

/* The least sum that is not below `cost`; cost itself, where the table does not say. */
int64_t msl_reach_up(const struct msl_reach *reach, int64_t cost);

/* What all that the limits ask for is worth, `bits` behind the point. */
struct msl_wide msl_worth_of_all(const struct msl_master *master);

/* What the master's worths prove of every plan that keeps to its limits and costs less than `below`: it costs this at
 * least, or there is none where this is `below`. `most_of` tells for each way what no pattern of it passes, for worths
 * up to most_worth. 0 .. below. */
int64_t msl_bound(const struct msl_master *master, const int64_t *most_of, int64_t most_worth, int64_t below,
                  const struct msl_reach *reach);

/* Worths of the sizes by their area, `bits` behind the point (0 .. 30): no thing of a way is worth more than it costs.
 * Returns what they prove, for so many wanted of each. */
int64_t msl_plain_bound(const struct msl_cutting *cutting, int32_t bits, int64_t *worths);

/* 1 from a bolt, and where the stock has as much area as the pieces. */
int msl_area_suffices(const struct msl_cutting *cutting);

#endif
