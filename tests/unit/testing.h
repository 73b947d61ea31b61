/* testing.h - what all unit tests share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TESTING_H
#define MUSLIN_TESTING_H

#include <check.h>
#include <stdlib.h>
#include <string.h>

#include <muslin/muslin.h>

/* Inches to ticks where the fraction is a whole number of 64ths: IN(2, 1, 2) is 2 1/2 in. */
#define IN(whole, above, below) ((muslin_len)(whole) * 8128 + (muslin_len)(above) * 8128 / (below))
#define WHOLE_IN(whole) ((muslin_len)(whole) * 8128)

#define ck_ok(call) ck_assert_int_eq((call), MUSLIN_OK)
#define ck_status(call, status) ck_assert_int_eq((call), (status))

/* Memory has no limit; where it is wanted for no row, `at` is 0. */
static inline void ck_says_no_memory(const struct muslin_problem *problem, int64_t at)
{
    ck_assert_int_eq(problem->status, MUSLIN_ERR_NO_MEMORY);
    ck_assert_int_eq(problem->argument, MUSLIN_ARG_ALLOCATOR);
    ck_assert_int_eq(problem->at, at);
    ck_assert_int_eq(problem->bytes, 0);
    ck_assert_int_eq(problem->limit, 0);
}

/* A problem ready for a call. */
#define PROBLEM MUSLIN_PROBLEM_INIT

#endif
