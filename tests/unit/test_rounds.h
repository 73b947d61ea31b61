/* test_rounds.h - what the tests of the rounds module share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_ROUNDS_H
#define MUSLIN_TEST_ROUNDS_H

#include "refusals.h"

/* A call that fills rows, its request fixed. */
typedef muslin_status rows_call(void *rows, size_t row_size, size_t capacity, size_t *count,
                                struct muslin_problem *problem);

/* The rules of ask-then-fill, tried on a call with `needed` rows. */
void ck_rows_rules(rows_call *call, size_t row_size, size_t needed);

/* What a failing call says; its output must be left alone. */
struct muslin_problem ck_failing(const struct ruled *ruled, const void *spec, muslin_status status);

/* Rounding to a grid. */
struct muslin_rounding_spec to_grid(muslin_len grid, int32_t direction);

void add_rounds_logcabin(Suite *suite);
void add_rounds_strips(Suite *suite);
void add_rounds_frame(Suite *suite);
void add_rounds_medallion(Suite *suite);
void add_rounds_repeat(Suite *suite);
void add_rounds_point(Suite *suite);

#endif
