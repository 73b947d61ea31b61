/* solution_sort.h - a sort that keeps the order of what is alike.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SOLUTION_SORT_H
#define MUSLIN_SOLUTION_SORT_H

#include "inside.h"

/* What sorts row number `row`: group, then first, then second, each from the least. */
struct msl_rank {
    int64_t first;
    int64_t second;
    uint32_t group;
    uint32_t row;
};

/* Whether row a comes before row b, where their ranks are alike. */
typedef int msl_is_before(const void *context, uint32_t a, uint32_t b);

/* Sorts n ranks; what is alike in all keeps its order. `spare` has as much room again; `is_before` may be null.
 * Time n log n. */
void msl_sort(struct msl_rank *ranks, struct msl_rank *spare, uint64_t n, msl_is_before *is_before,
              const void *context);

#endif
