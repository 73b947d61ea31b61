/* test_cutplan_making.h - the best plan of a search, checked where it lies.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTPLAN_MAKING_H
#define MUSLIN_TEST_CUTPLAN_MAKING_H

#include "cutplan_check.h"
#include "test_cutplan.h"

/* It passes the check, in which it is all that there is. What is then left of each stock, where `left` is not null. */
static inline void ck_made_plan(const struct tiny *t, const struct msl_making *making, int64_t *left)
{
    enum { ROWS = 400 };
    static struct msl_pattern patterns[ROWS];
    struct muslin_allocator memory;
    struct msl_found found = { .plan = *making->pool, .cost = making->best.cost };
    struct msl_told told = msl_told_by(NULL, NULL);
    struct muslin_cutplan_checked checked = { .size = (uint32_t)sizeof checked };
    ck_assert_int_le(making->best.count, ROWS);
    found.plan.patterns = patterns;
    found.plan.pattern_count = making->best.count;
    for (int32_t i = 0; left != NULL && i < t->cutting.stock_count; i++)
        left[i] = t->available[i];
    for (int32_t i = 0; i < making->best.count; i++) {
        patterns[i] = making->pool->patterns[making->best.rows[i].pattern];
        patterns[i].times = making->best.rows[i].times;
        if (left != NULL)
            left[t->ways[patterns[i].way].stock] -= patterns[i].times;
    }
    muslin_allocator_libc(&memory);
    ck_ok(msl_found_check(&t->cutting, &found, MSL_CHECK_STEPS_MAX, &told, &memory, &checked));
    ck_assert_int_eq(checked.fault, 0);
}

#endif
