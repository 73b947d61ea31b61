/* test_rounds.c - the rounds suite, and log cabins backwards.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

/* ---- shared ------------------------------------------------------------------------------------------------------ */

enum { STRIDE_MORE = 16, BYTES_MAX = 200000 };

/* One assert for all of them: each takes its time. */
static int is_filled_from(const unsigned char *rows, size_t first)
{
    for (size_t i = first; i < BYTES_MAX; i++)
        if (rows[i] != FILL)
            return 0;
    return 1;
}

static void ck_rows_refused(rows_call *call, size_t row_size, size_t needed, unsigned char *rows)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 0;
    ck_status(call(rows, row_size, needed - 1, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, needed);
    ck_assert_int_eq(problem.limit, (int64_t)needed);
    count = 99;
    ck_status(call(rows, row_size - 1, needed, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(call(rows, 4097, needed, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_status(call(NULL, row_size, needed, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(call(rows, row_size, needed, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_uint_eq(count, 99);
    ck_assert(is_filled_from(rows, 0));
}

void ck_rows_rules(rows_call *call, size_t row_size, size_t needed)
{
    static unsigned char rows[BYTES_MAX];
    const size_t stride = row_size + STRIDE_MORE;
    size_t count = 0;
    ck_assert_uint_lt(stride * needed, BYTES_MAX);
    memset(rows, FILL, sizeof rows);
    ck_ok(call(NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, needed);
    ck_rows_refused(call, row_size, needed, rows);
    ck_ok(call(rows, stride, needed + 1, &count, NULL));
    ck_assert_uint_eq(count, needed);
    for (size_t i = 0; i < needed; i++) {
        uint32_t head[2];
        memcpy(head, rows + i * stride, sizeof head);
        ck_assert_uint_eq(head[0], stride);
        ck_assert_uint_eq(head[1], 0);
        for (size_t at = row_size; at < stride; at++)
            ck_assert_uint_eq(rows[i * stride + at], 0);
    }
    ck_assert(is_filled_from(rows, needed * stride));
}

struct muslin_problem ck_failing(const struct ruled *ruled, const void *spec, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, ruled->out_size);
    ck_status(ruled->call(spec, &out, &problem), status);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

struct muslin_rounding_spec to_grid(muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.direction = direction;
    return rounding;
}

/* ---- log cabins, backwards --------------------------------------------------------------------------------------- */

INIT_CALL(logcabin_fit)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_logcabin_fit_spec spec = MUSLIN_LOGCABIN_FIT_SPEC_INIT;
    ck_init_rules(init_logcabin_fit, &spec, sizeof spec);
}
END_TEST

static struct muslin_logcabin_fit_spec fit_of(muslin_len wanted, muslin_len centre)
{
    struct muslin_logcabin_fit_spec spec = MUSLIN_LOGCABIN_FIT_SPEC_INIT;
    spec.wanted = wanted;
    spec.centre = centre;
    return spec;
}

static struct muslin_logcabin_fit log_for(const struct muslin_logcabin_fit_spec *spec, muslin_len grid,
                                          int32_t direction)
{
    struct muslin_rounding_spec rounding = to_grid(grid, direction);
    struct muslin_logcabin_fit fit = { .size = (uint32_t)sizeof fit };
    ck_ok(muslin_logcabin_log_for(spec, &rounding, &fit, NULL));
    return fit;
}

static struct muslin_logcabin_fit rounds_for(const struct muslin_logcabin_fit_spec *spec)
{
    struct muslin_logcabin_fit fit = { .size = (uint32_t)sizeof fit };
    ck_ok(muslin_logcabin_rounds_for(spec, &fit, NULL));
    return fit;
}

/* Example: a 12 in block round a 2 in centre in 3 rounds, to the nearest 1/8 in: 10/6 in, so logs 1 5/8 in finished,
 * cut 2 1/8 in, and the block finishes at 11 3/4 in. */
START_TEST(a_log_is_found_for_a_twelve_inch_block)
{
    struct muslin_logcabin_fit_spec spec = fit_of(WHOLE_IN(12), WHOLE_IN(2));
    spec.rounds = 3;
    struct muslin_logcabin_fit fit = log_for(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(fit.rounds, 3);
    ck_assert_int_eq(fit.logs_across, 6);
    ck_assert_int_eq(fit.exact_numerator, WHOLE_IN(10));
    ck_assert_int_eq(fit.exact_denominator, 6);
    ck_assert_int_eq(fit.log_finished, IN(1, 5, 8));
    ck_assert_int_eq(fit.log_cut, IN(2, 1, 8));
    ck_assert_int_eq(fit.block_finished, IN(11, 3, 4));
    ck_assert_int_eq(fit.rest, IN(0, 1, 4));
    ck_assert_int_eq(fit.centre_to_fit, IN(2, 1, 4));
    ck_assert_int_eq(fit.next_finished, WHOLE_IN(15));
}
END_TEST

/* Rounded up, six logs of 1 3/4 in make 12 1/2 in with the centre: 1/2 in too much. */
START_TEST(a_log_rounded_up_makes_the_block_larger)
{
    struct muslin_logcabin_fit_spec spec = fit_of(WHOLE_IN(12), WHOLE_IN(2));
    spec.rounds = 3;
    spec.take_up = 100;
    struct muslin_logcabin_fit fit = log_for(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(fit.log_finished, IN(1, 3, 4));
    ck_assert_int_eq(fit.log_cut, IN(2, 1, 4) + 100);
    ck_assert_int_eq(fit.rest, -IN(0, 1, 2));
    ck_assert_int_eq(fit.centre_to_fit, IN(1, 1, 2));
}
END_TEST

/* A quarter log cabin has one log a round on each axis: 10 in over 4. */
START_TEST(a_quarter_log_cabin_has_half_as_many_logs_across)
{
    struct muslin_logcabin_fit_spec spec = fit_of(WHOLE_IN(12), WHOLE_IN(2));
    spec.rounds = 4;
    spec.order = MUSLIN_LOG_ORDER_QUARTER;
    struct muslin_logcabin_fit fit = log_for(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(fit.logs_across, 4);
    ck_assert_int_eq(fit.log_finished, IN(2, 1, 2));
    ck_assert_int_eq(fit.rest, 0);
    ck_assert_int_eq(fit.next_finished, IN(14, 1, 2));
    spec.log_finished = IN(2, 1, 2);
    ck_assert_int_eq(rounds_for(&spec).rounds, 4);
}
END_TEST

/* Example: within 10 in, round a 2 in centre with logs 1 1/2 in finished: 2 rounds, 8 in finished, 2 in short of it;
 * with a 4 in centre it would come out. */
START_TEST(rounds_are_found_for_a_ten_inch_block)
{
    struct muslin_logcabin_fit_spec spec = fit_of(WHOLE_IN(10), WHOLE_IN(2));
    spec.log_finished = IN(1, 1, 2);
    struct muslin_logcabin_fit fit = rounds_for(&spec);
    ck_assert_int_eq(fit.rounds, 2);
    ck_assert_int_eq(fit.block_finished, WHOLE_IN(8));
    ck_assert_int_eq(fit.rest, WHOLE_IN(2));
    ck_assert_int_eq(fit.centre_to_fit, WHOLE_IN(4));
    ck_assert_int_eq(fit.next_finished, WHOLE_IN(11));
    ck_assert_int_eq(fit.exact_numerator, 0);
    ck_assert_int_eq(fit.exact_denominator, 0);
    spec.centre = fit.centre_to_fit;
    ck_assert_int_eq(rounds_for(&spec).rest, 0);
    spec.log_finished = WHOLE_IN(4);
    ck_assert_int_eq(rounds_for(&spec).rounds, 0);
    ck_assert_int_eq(rounds_for(&spec).block_finished, WHOLE_IN(4));
}
END_TEST

/* The largest of everything: one tick of centre, logs of a tick. */
START_TEST(backwards_reaches_the_edges_of_its_ranges)
{
    struct muslin_logcabin_fit_spec spec = fit_of(MUSLIN_SIZE_MAX, 1);
    spec.log_finished = 1;
    ck_assert_int_eq(rounds_for(&spec).rounds, (MUSLIN_SIZE_MAX - 1) / 2);
    spec.log_finished = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(rounds_for(&spec).next_finished, 1 + 2 * MUSLIN_SIZE_MAX);
    spec.rounds = MUSLIN_ROUNDS_MAX;
    struct muslin_logcabin_fit fit = log_for(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(fit.log_finished, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(fit.block_finished, 1 + 2000 * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(fit.rest, -1 - 1999 * MUSLIN_SIZE_MAX);
}
END_TEST

static muslin_status call_log_for(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec eighths = { (uint32_t)sizeof eighths, 0, 1016, 0, MUSLIN_DIRECTION_DOWN, 0 };
    return muslin_logcabin_log_for(spec, &eighths, out, problem);
}
static muslin_status call_rounds_for(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_logcabin_rounds_for(spec, out, problem);
}
static const struct muslin_logcabin_fit_spec good_fit = {
    (uint32_t)sizeof good_fit, 0, WHOLE_IN(12), WHOLE_IN(2), 3, 8128, 2032, 10, MUSLIN_LOG_ORDER_COURTHOUSE, 0
};
static const struct ruled to_log = RULED(call_log_for, good_fit, muslin_logcabin_fit);
static const struct ruled to_rounds = RULED(call_rounds_for, good_fit, muslin_logcabin_fit);

START_TEST(backwards_checks_its_structs)
{
    ck_struct_rules(&to_log);
    ck_no_flag_known(&to_log);
    ck_struct_rules(&to_rounds);
    ck_no_flag_known(&to_rounds);
}
END_TEST

START_TEST(backwards_refuses_what_lies_outside_its_ranges)
{
    const struct refusal both[] = {
        OUTSIDE(muslin_logcabin_fit_spec, wanted, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FINISHED),
        OUTSIDE(muslin_logcabin_fit_spec, centre, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_WIDTH),
        REFUSAL(muslin_logcabin_fit_spec, centre, WHOLE_IN(12), MUSLIN_ERR_RANGE, MUSLIN_ARG_CENTRE_WIDTH),
        REFUSAL(muslin_logcabin_fit_spec, rounds, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROUNDS),
        REFUSAL(muslin_logcabin_fit_spec, rounds, MUSLIN_ROUNDS_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROUNDS),
        REFUSAL(muslin_logcabin_fit_spec, log_finished, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_LOG_WIDTH),
        REFUSAL(muslin_logcabin_fit_spec, log_finished, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_LOG_WIDTH),
        OUTSIDE(muslin_logcabin_fit_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_logcabin_fit_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        NOT_A_CHOICE(muslin_logcabin_fit_spec, order, MUSLIN_LOG_ORDER_QUARTER, MUSLIN_ARG_LOG_ORDER),
        REFUSAL(muslin_logcabin_fit_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    const struct refusal rounds[] = {
        REFUSAL(muslin_logcabin_fit_spec, rounds, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_ROUNDS),
    };
    const struct refusal logs[] = {
        REFUSAL(muslin_logcabin_fit_spec, log_finished, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_LOG_WIDTH),
    };
    ck_refusals(&to_log, both, COUNT_OF(both));
    ck_refusals(&to_rounds, both, COUNT_OF(both));
    ck_refusals(&to_log, rounds, COUNT_OF(rounds));
    ck_refusals(&to_rounds, logs, COUNT_OF(logs));
}
END_TEST

/* 5 ticks over 6 logs, down to 1/8 in, is no log. */
START_TEST(a_log_that_rounds_to_nothing_fits_nowhere)
{
    struct muslin_logcabin_fit_spec spec = good_fit;
    spec.centre = spec.wanted - 5;
    struct muslin_problem problem = ck_failing(&to_log, &spec, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LOG_WIDTH);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    struct muslin_logcabin_fit out = { .size = (uint32_t)sizeof out };
    struct muslin_rounding_spec rounding = to_grid(0, MUSLIN_DIRECTION_UP);
    ck_status(muslin_logcabin_log_for(&good_fit, &rounding, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_status(muslin_logcabin_log_for(&good_fit, NULL, &out, &problem), MUSLIN_ERR_NULL);
}
END_TEST

/* One tick on either side of a centre: the least log that there is, in the fewest rounds. */
START_TEST(a_log_may_be_a_tick_wide)
{
    struct muslin_logcabin_fit_spec spec = fit_of(102, 100);
    spec.rounds = 1;
    ck_assert_int_eq(log_for(&spec, 1, MUSLIN_DIRECTION_DOWN).log_finished, 1);
    spec.order = MUSLIN_LOG_ORDER_QUARTER;
    spec.centre = 101;
    ck_assert_int_eq(log_for(&spec, 1, MUSLIN_DIRECTION_DOWN).log_finished, 1);
    spec.centre = 102;
    struct muslin_problem problem = ck_failing(&to_log, &spec, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CENTRE_WIDTH);
    ck_assert_int_eq(problem.value, 102);
    ck_assert_int_eq(problem.limit, 101);
}
END_TEST

Suite *rounds_suite(void);

Suite *rounds_suite(void)
{
    Suite *suite = suite_create("rounds");
    TCase *tests = tcase_create("log cabins, backwards");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, a_log_is_found_for_a_twelve_inch_block);
    tcase_add_test(tests, a_log_rounded_up_makes_the_block_larger);
    tcase_add_test(tests, a_quarter_log_cabin_has_half_as_many_logs_across);
    tcase_add_test(tests, rounds_are_found_for_a_ten_inch_block);
    tcase_add_test(tests, backwards_reaches_the_edges_of_its_ranges);
    tcase_add_test(tests, backwards_checks_its_structs);
    tcase_add_test(tests, backwards_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, a_log_that_rounds_to_nothing_fits_nowhere);
    tcase_add_test(tests, a_log_may_be_a_tick_wide);
    suite_add_tcase(suite, tests);
    add_rounds_logcabin(suite);
    add_rounds_strips(suite);
    add_rounds_frame(suite);
    add_rounds_medallion(suite);
    add_rounds_repeat(suite);
    add_rounds_point(suite);
    return suite;
}
