/* test_shrinkage.h - what the two files of the shrinkage suite share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SHRINKAGE_H
#define MUSLIN_TEST_SHRINKAGE_H

#include "refusals.h"

/* Per cent as parts per million. */
enum { PER_CENT = 10000 };

/* Shares are 32 bits wide, so that OUTSIDE's far values would not fit. */
#define NOT_A_LOSS(type, member, argument)                                       \
    REFUSAL(type, member, -1, MUSLIN_ERR_RANGE, argument),                       \
        REFUSAL(type, member, MUSLIN_PPM, MUSLIN_ERR_RANGE, argument),           \
        REFUSAL(type, member, INT32_MIN, MUSLIN_ERR_RANGE, argument),            \
        REFUSAL(type, member, INT32_MAX, MUSLIN_ERR_RANGE, argument)

static inline struct muslin_rounding_spec rounding_to(muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.direction = direction;
    return rounding;
}

TCase *tcase_sizes(void);
Suite *shrinkage_suite(void);

#endif
