/* test_rounds_logcabin.c - log cabins log by log: by hand, and drawn as rectangles that must tile the block.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

enum { ROWS_MAX = 40 };

INIT_CALL(logcabin)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_logcabin_spec spec = MUSLIN_LOGCABIN_SPEC_INIT;
    ck_init_rules(init_logcabin, &spec, sizeof spec);
}
END_TEST

static struct muslin_logcabin_spec cabin_of(muslin_len centre, muslin_len log, int64_t rounds)
{
    struct muslin_logcabin_spec spec = MUSLIN_LOGCABIN_SPEC_INIT;
    spec.centre_width = centre;
    spec.centre_height = centre;
    spec.log_width = log;
    spec.rounds = rounds;
    return spec;
}

static struct muslin_logcabin plan_of(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n)
{
    struct muslin_logcabin plan = { .size = (uint32_t)sizeof plan };
    ck_ok(muslin_logcabin_plan(spec, widths, n, &plan, NULL));
    return plan;
}

/* Fills `rows`, at most ROWS_MAX of them, and says how many there are. */
static size_t logs_of(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n,
                      struct muslin_logcabin_log *rows)
{
    size_t count = 0;
    ck_ok(muslin_logcabin_logs(spec, widths, n, rows, sizeof *rows, ROWS_MAX, &count, NULL));
    return count;
}

/* Example: centre 2 in, 3 rounds of logs 1 in finished, 20 blocks: 8 in finished, 8 1/2 in unfinished, 12 logs each,
 * the longest cut 8 1/2 in, and 2 strips of 2 1/2 in for the centres. */
START_TEST(three_rounds_of_one_inch_make_eight)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3);
    spec.blocks = 20;
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.centre_strips, 2); /* sixteen a strip */
    ck_assert_int_eq(plan.centre_strip_cut, IN(2, 1, 2));
    ck_assert_int_eq(plan.centre_cloth_length, WHOLE_IN(5));
    ck_assert_int_eq(plan.centre_cut_width, IN(2, 1, 2));
    ck_assert_int_eq(plan.centre_cut_height, IN(2, 1, 2));
    ck_assert_int_eq(plan.finished_width, WHOLE_IN(8));
    ck_assert_int_eq(plan.finished_height, WHOLE_IN(8));
    ck_assert_int_eq(plan.unfinished_width, IN(8, 1, 2));
    ck_assert_int_eq(plan.unfinished_height, IN(8, 1, 2));
    ck_assert_int_eq(plan.logs, 12);
    ck_assert_int_eq(plan.longest_log, IN(8, 1, 2));
    ck_assert_int_eq(plan.square, 1);
    spec.centre_height++;
    ck_assert_int_eq(plan_of(&spec, NULL, 0).square, 0);
}
END_TEST

/* Example: centre 2 in, logs 1 in finished, from the top clockwise: cut lengths 2 1/2, 3 1/2, 3 1/2, 4 1/2 in; the
 * block then measures 4 1/2 in. */
START_TEST(logs_are_as_long_as_the_raw_edge)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 1);
    const muslin_len lengths[] = { IN(2, 1, 2), IN(3, 1, 2), IN(3, 1, 2), IN(4, 1, 2) };
    const int32_t sides[] = { MUSLIN_SIDE_TOP, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_BOTTOM, MUSLIN_SIDE_LEFT };
    struct muslin_logcabin_log rows[ROWS_MAX];
    muslin_len running = 0;
    ck_assert_uint_eq(logs_of(&spec, NULL, 0, rows), 4);
    for (int32_t i = 0; i < 4; i++) {
        running += lengths[i];
        ck_assert_int_eq(rows[i].round, 1);
        ck_assert_int_eq(rows[i].side, sides[i]);
        ck_assert_int_eq(rows[i].half, i < 2 ? MUSLIN_LOG_HALF_FIRST : MUSLIN_LOG_HALF_SECOND);
        ck_assert_int_eq(rows[i].cut_length, lengths[i]);
        ck_assert_int_eq(rows[i].finished_length, lengths[i] - 4064);
        ck_assert_int_eq(rows[i].cut_width, IN(1, 1, 2));
        ck_assert_int_eq(rows[i].finished_width, WHOLE_IN(1));
        ck_assert_int_eq(rows[i].running_length, running);
        ck_assert_int_eq(rows[i].closes_round, i == 3);
    }
    ck_assert_int_eq(rows[0].unfinished_width, IN(2, 1, 2));
    ck_assert_int_eq(rows[0].unfinished_height, IN(3, 1, 2));
    ck_assert_int_eq(rows[3].unfinished_width, IN(4, 1, 2));
    ck_assert_int_eq(rows[3].unfinished_height, IN(4, 1, 2));
}
END_TEST

static void ck_sides(int32_t order, int32_t start, int32_t turn, const int32_t *sides, int32_t count)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 2);
    struct muslin_logcabin_log rows[ROWS_MAX];
    spec.order = order;
    spec.start = start;
    spec.turn = turn;
    ck_assert_uint_eq(logs_of(&spec, NULL, 0, rows), (size_t)(2 * count));
    for (int32_t i = 0; i < 2 * count; i++) {
        ck_assert_int_eq(rows[i].side, sides[i % count]);
        ck_assert_int_eq(rows[i].round, i / count + 1);
        ck_assert_int_eq(rows[i].half, i % count < count / 2 ? MUSLIN_LOG_HALF_FIRST : MUSLIN_LOG_HALF_SECOND);
        ck_assert_int_eq(rows[i].closes_round, i % count == count - 1);
    }
}

/* By the meaning of the words. */
START_TEST(sides_follow_start_and_turn)
{
    enum { T = MUSLIN_SIDE_TOP, R = MUSLIN_SIDE_RIGHT, B = MUSLIN_SIDE_BOTTOM, L = MUSLIN_SIDE_LEFT };
    const int32_t clockwise = MUSLIN_LOG_TURN_CLOCKWISE;
    const int32_t anticlockwise = MUSLIN_LOG_TURN_ANTICLOCKWISE;
    ck_sides(MUSLIN_LOG_ORDER_ROUND, T, clockwise, (const int32_t[]) { T, R, B, L }, 4);
    ck_sides(MUSLIN_LOG_ORDER_ROUND, T, anticlockwise, (const int32_t[]) { T, L, B, R }, 4);
    ck_sides(MUSLIN_LOG_ORDER_ROUND, L, clockwise, (const int32_t[]) { L, T, R, B }, 4);
    ck_sides(MUSLIN_LOG_ORDER_ROUND, R, anticlockwise, (const int32_t[]) { R, T, L, B }, 4);
    ck_sides(MUSLIN_LOG_ORDER_COURTHOUSE, T, clockwise, (const int32_t[]) { T, B, R, L }, 4);
    ck_sides(MUSLIN_LOG_ORDER_COURTHOUSE, L, clockwise, (const int32_t[]) { L, R, T, B }, 4);
    ck_sides(MUSLIN_LOG_ORDER_COURTHOUSE, L, anticlockwise, (const int32_t[]) { L, R, B, T }, 4);
    ck_sides(MUSLIN_LOG_ORDER_QUARTER, B, clockwise, (const int32_t[]) { B, L }, 2);
    ck_sides(MUSLIN_LOG_ORDER_QUARTER, B, anticlockwise, (const int32_t[]) { B, R }, 2);
}
END_TEST

/* Courthouse steps by hand: 2 in centre, logs 1 in: 2 1/2 twice, then 4 1/2 twice. */
START_TEST(courthouse_steps_come_in_equal_pairs)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 2);
    const muslin_len lengths[] = { IN(2, 1, 2), IN(2, 1, 2), IN(4, 1, 2), IN(4, 1, 2),
                                   IN(4, 1, 2), IN(4, 1, 2), IN(6, 1, 2), IN(6, 1, 2) };
    struct muslin_logcabin_log rows[ROWS_MAX];
    spec.order = MUSLIN_LOG_ORDER_COURTHOUSE;
    ck_assert_uint_eq(logs_of(&spec, NULL, 0, rows), 8);
    for (size_t i = 0; i < 8; i++)
        ck_assert_int_eq(rows[i].cut_length, lengths[i]);
}
END_TEST

/* ---- drawn ------------------------------------------------------------------------------------------------------- */

enum { PAGE = 64 };

/* The block as finished on a page of ticks: left, top, right, bottom, and how often each tick is covered. */
struct drawing {
    int left, top, right, bottom;
    unsigned char covered[PAGE][PAGE];
};

static void draw_rectangle(struct drawing *d, int left, int top, int64_t width, int64_t height)
{
    for (int y = top; y < top + (int)height; y++)
        for (int x = left; x < left + (int)width; x++)
            d->covered[y][x]++;
}

/* Along the side it is sewn to, as the row's finished sizes say. */
static void draw_log(struct drawing *d, const struct muslin_logcabin_log *log)
{
    int depth = (int)log->finished_width;
    switch (log->side) {
    case MUSLIN_SIDE_TOP:
        d->top -= depth;
        draw_rectangle(d, d->left, d->top, log->finished_length, depth);
        break;
    case MUSLIN_SIDE_BOTTOM:
        draw_rectangle(d, d->left, d->bottom, log->finished_length, depth);
        d->bottom += depth;
        break;
    case MUSLIN_SIDE_LEFT:
        d->left -= depth;
        draw_rectangle(d, d->left, d->top, depth, log->finished_length);
        break;
    default:
        draw_rectangle(d, d->right, d->top, depth, log->finished_length);
        d->right += depth;
    }
}

static void ck_tiled(const struct drawing *d)
{
    for (int y = 0; y < PAGE; y++)
        for (int x = 0; x < PAGE; x++)
            ck_assert_int_eq(d->covered[y][x], x >= d->left && x < d->right && y >= d->top && y < d->bottom);
}

/* Draws the block and compares its size after every log; returns what all logs measure end to end. */
static muslin_len ck_drawn(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n)
{
    const muslin_len seam = 2 * spec->allowance + spec->take_up;
    struct muslin_logcabin_log rows[ROWS_MAX];
    struct drawing d = { PAGE / 2, PAGE / 2, PAGE / 2 + (int)spec->centre_width, PAGE / 2 + (int)spec->centre_height,
                         { { 0 } } };
    muslin_len running = 0;
    size_t count = logs_of(spec, widths, n, rows);
    draw_rectangle(&d, d.left, d.top, spec->centre_width, spec->centre_height);
    for (size_t i = 0; i < count; i++) {
        draw_log(&d, &rows[i]);
        running += rows[i].cut_length;
        ck_assert_int_eq(rows[i].unfinished_width, d.right - d.left + seam);
        ck_assert_int_eq(rows[i].unfinished_height, d.bottom - d.top + seam);
        ck_assert_int_eq(rows[i].cut_length, rows[i].finished_length + seam);
        ck_assert_int_eq(rows[i].cut_width, rows[i].finished_width + seam);
        ck_assert_int_eq(rows[i].running_length, running);
    }
    ck_tiled(&d);
    struct muslin_logcabin plan = plan_of(spec, widths, n);
    ck_assert_int_eq(plan.finished_width, d.right - d.left);
    ck_assert_int_eq(plan.finished_height, d.bottom - d.top);
    ck_assert_int_eq(plan.logs, (int64_t)count);
    return running;
}

START_TEST(logs_tile_the_block)
{
    const muslin_len none_before[] = { 0, 1, 2, 3, 1, 2, 2, 1, 3, 1, 1, 3, 2 };
    const muslin_len *widths = &none_before[1];
    struct muslin_logcabin_spec spec = cabin_of(4, 2, 3);
    spec.centre_height = 7;
    spec.allowance = 1;
    spec.take_up = 1;
    spec.usable_width = 0;
    for (spec.order = 1; spec.order <= 3; spec.order++)
        for (spec.start = 1; spec.start <= 4; spec.start++)
            for (spec.turn = 1; spec.turn <= 2; spec.turn++) {
                size_t logs = spec.order == MUSLIN_LOG_ORDER_QUARTER ? 6 : 12;
                muslin_len length = ck_drawn(&spec, NULL, 0);
                struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
                ck_assert_int_eq(plan.first_length + plan.second_length, length);
                ck_drawn(&spec, widths, 3);
                ck_drawn(&spec, widths, logs);
            }
}
END_TEST

/* Thin logs first, thick ones last: an off-centre block. Widths by round count for all its logs. */
START_TEST(logs_may_have_widths_of_their_own)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), 0, 2);
    const muslin_len by_round[] = { WHOLE_IN(1), WHOLE_IN(2) };
    const muslin_len by_log[] = { 8128, 8128, 16256, 16256, 8128, 8128, 16256, 16256 };
    struct muslin_logcabin_log rows[ROWS_MAX];
    ck_assert_int_eq(plan_of(&spec, by_round, 2).finished_width, WHOLE_IN(8));
    logs_of(&spec, by_round, 2, rows);
    for (size_t i = 0; i < 8; i++)
        ck_assert_int_eq(rows[i].finished_width, by_round[i / 4]);
    logs_of(&spec, by_log, 8, rows);
    for (size_t i = 0; i < 8; i++)
        ck_assert_int_eq(rows[i].finished_width, by_log[i]);
    ck_assert_int_eq(plan_of(&spec, by_log, 8).finished_height, WHOLE_IN(8));
}
END_TEST

/* Strips of 1 1/2 in show 1 in, a centre cut 2 1/2 in shows 2: the same block as above. */
START_TEST(sizes_may_be_given_as_cut)
{
    struct muslin_logcabin_spec spec = cabin_of(IN(2, 1, 2), IN(1, 1, 2), 3);
    const muslin_len widths[] = { IN(1, 1, 2), IN(1, 1, 2), IN(1, 1, 2) };
    spec.flags = MUSLIN_LOGCABIN_GIVEN_CUT;
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.finished_width, WHOLE_IN(8));
    ck_assert_int_eq(plan.centre_cut_width, IN(2, 1, 2));
    plan = plan_of(&spec, widths, 3);
    ck_assert_int_eq(plan.finished_height, WHOLE_IN(8));
}
END_TEST

/* ---- refusals ---------------------------------------------------------------------------------------------------- */

static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_logcabin_plan(spec, NULL, 0, out, problem);
}
static muslin_status call_logs(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 99;
    (void)out;
    muslin_status status = muslin_logcabin_logs(spec, NULL, 0, NULL, 0, 0, &count, problem);
    ck_assert(status == MUSLIN_OK || count == 99);
    return status;
}
static muslin_status call_strips(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 99;
    (void)out;
    muslin_status status = muslin_logcabin_strips(spec, NULL, 0, NULL, 0, 0, &count, problem);
    ck_assert(status == MUSLIN_OK || count == 99);
    return status;
}
static const struct muslin_logcabin_spec good_cabin = {
    (uint32_t)sizeof good_cabin, 0, WHOLE_IN(2), WHOLE_IN(3), WHOLE_IN(1), 3, 20, 2032, 10, WHOLE_IN(40), 127,
    MUSLIN_LOG_ORDER_COURTHOUSE, MUSLIN_SIDE_LEFT, MUSLIN_LOG_TURN_ANTICLOCKWISE, 0
};
static const struct ruled plan = RULED(call_plan, good_cabin, muslin_logcabin);
static const struct ruled logs = RULED(call_logs, good_cabin, muslin_logcabin);
static const struct ruled strips = RULED(call_strips, good_cabin, muslin_logcabin);

START_TEST(log_cabin_checks_its_structs)
{
    ck_struct_rules(&plan);
    ck_spec_rules(&logs);
    ck_problem_rules(&logs);
    ck_spec_rules(&strips);
    ck_problem_rules(&strips);
}
END_TEST

START_TEST(log_cabin_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_logcabin_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_logcabin_spec, centre_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_WIDTH),
        OUTSIDE(muslin_logcabin_spec, centre_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CENTRE_HEIGHT),
        OUTSIDE(muslin_logcabin_spec, log_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_LOG_WIDTH),
        BEYOND(muslin_logcabin_spec, log_width, 0, 1, MUSLIN_ARG_LOG_WIDTH),
        OUTSIDE(muslin_logcabin_spec, rounds, 1, MUSLIN_ROUNDS_MAX, MUSLIN_ARG_ROUNDS),
        OUTSIDE(muslin_logcabin_spec, blocks, 1, MUSLIN_LOGCABIN_BLOCKS_MAX, MUSLIN_ARG_BLOCKS),
        OUTSIDE(muslin_logcabin_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_logcabin_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_logcabin_spec, usable_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
        OUTSIDE(muslin_logcabin_spec, end_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
        NOT_A_CHOICE(muslin_logcabin_spec, order, MUSLIN_LOG_ORDER_QUARTER, MUSLIN_ARG_LOG_ORDER),
        NOT_A_CHOICE(muslin_logcabin_spec, start, MUSLIN_SIDE_BOTTOM, MUSLIN_ARG_LOG_SIDE),
        NOT_A_CHOICE(muslin_logcabin_spec, turn, MUSLIN_LOG_TURN_ANTICLOCKWISE, MUSLIN_ARG_LOG_TURN),
        REFUSAL(muslin_logcabin_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_refusals(&plan, refusals, COUNT_OF(refusals));
    ck_refusals(&logs, refusals, COUNT_OF(refusals));
    ck_refusals(&strips, refusals, COUNT_OF(refusals));
}
END_TEST

/* m is 2 x 2032 + 10. */
START_TEST(what_is_given_as_cut_must_be_more_than_its_seams)
{
    struct muslin_logcabin_spec spec = good_cabin;
    spec.flags = MUSLIN_LOGCABIN_GIVEN_CUT;
    spec.centre_width = 4074;
    struct muslin_problem problem = ck_failing(&plan, &spec, MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CENTRE_WIDTH);
    ck_assert_int_eq(problem.limit, 4074);
    spec.centre_width = 4075;
    spec.centre_height = 4074;
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_SEAM_TOO_WIDE).argument, MUSLIN_ARG_CENTRE_HEIGHT);
    spec.centre_height = 4075;
    spec.log_width = 4074;
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_SEAM_TOO_WIDE).argument, MUSLIN_ARG_LOG_WIDTH);
    spec.log_width = 4075;
    ck_assert_int_eq(plan_of(&spec, NULL, 0).finished_width, 1 + 6);
}
END_TEST

static struct muslin_problem ck_widths(const muslin_len *widths, size_t n, muslin_status status)
{
    struct muslin_logcabin out = { .size = (uint32_t)sizeof out, .logs = 77 };
    struct muslin_logcabin_spec spec = good_cabin;
    struct muslin_problem problem = PROBLEM;
    size_t count = 99;
    spec.flags = MUSLIN_LOGCABIN_GIVEN_CUT;
    spec.log_width = 0;
    ck_status(muslin_logcabin_logs(&spec, widths, n, NULL, 0, 0, &count, NULL), status);
    ck_status(muslin_logcabin_strips(&spec, widths, n, NULL, 0, 0, &count, NULL), status);
    ck_assert_uint_eq(count, 99);
    ck_status(muslin_logcabin_plan(&spec, widths, n, &out, &problem), status);
    ck_assert_int_eq(out.logs, 77);
    return problem;
}

START_TEST(widths_are_as_many_as_rounds_or_logs)
{
    const muslin_len widths[13] = { 8128, 4075, 4074, 0, -1 };
    const size_t wrong[] = { 1, 2, 4, 11, 13, SIZE_MAX };
    const int64_t told[] = { 1, 2, 4, 11, 13, MUSLIN_COUNT_MAX };
    const int64_t limits[] = { 3, 3, 3, 3, 12, 12 };
    for (size_t i = 0; i < 6; i++) {
        struct muslin_problem problem = ck_widths(widths, wrong[i], MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
        ck_assert_int_eq(problem.value, told[i]);
        ck_assert_int_eq(problem.limit, limits[i]);
    }
    ck_assert_int_eq(ck_widths(NULL, 0, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_LOG_WIDTH);
    ck_assert_int_eq(ck_widths(NULL, 3, MUSLIN_ERR_NULL).argument, MUSLIN_ARG_LOG_WIDTH);
    struct muslin_problem problem = ck_widths(widths, 3, MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.at, 2);
    ck_assert_int_eq(problem.value, 4074);
    ck_assert_int_eq(problem.limit, 4074);
    ck_assert_int_eq(ck_widths(widths + 1, 12, MUSLIN_ERR_SEAM_TOO_WIDE).at, 1);
    ck_assert_int_eq(ck_widths(widths + 3, 3, MUSLIN_ERR_RANGE).at, 0);
    problem = ck_widths(widths + 4, 3, MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Width of a log is about -0.0001 in, but must be more than 0 in.");
}
END_TEST

/* Courthouse steps from the left: width grows by both first logs, 2 x 2^28, height by the others. */
START_TEST(a_block_ends_at_the_largest_size)
{
    struct muslin_logcabin_spec spec = cabin_of(MUSLIN_SIZE_MAX / 2, MUSLIN_SIZE_MAX / 4, 1);
    spec.usable_width = 0;
    ck_assert_int_eq(plan_of(&spec, NULL, 0).finished_width, MUSLIN_SIZE_MAX);
    spec.centre_width++;
    struct muslin_problem problem = ck_failing(&plan, &spec, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX + 1);
    spec.centre_width--;
    spec.centre_height++;
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_BLOCK_HEIGHT);
    spec = cabin_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_ROUNDS_MAX);
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_RANGE).value, 2001 * MUSLIN_SIZE_MAX);
    /* a block is none of its logs */
    const muslin_len widths[] = { 1, MUSLIN_SIZE_MAX };
    struct muslin_logcabin out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem_of_logs = PROBLEM;
    spec.centre_width = spec.centre_height = 1;
    spec.rounds = 2;
    ck_status(muslin_logcabin_plan(&spec, widths, 2, &out, &problem_of_logs), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem_of_logs.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem_of_logs.at, 0);
}
END_TEST

static muslin_status call_log_rows(void *rows, size_t row_size, size_t capacity, size_t *count,
                                   struct muslin_problem *problem)
{
    return muslin_logcabin_logs(&good_cabin, NULL, 0, rows, row_size, capacity, count, problem);
}

START_TEST(logs_are_asked_for_then_filled)
{
    ck_rows_rules(call_log_rows, sizeof(struct muslin_logcabin_log), 12);
}
END_TEST

void add_rounds_logcabin(Suite *suite)
{
    TCase *tests = tcase_create("log cabins");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, three_rounds_of_one_inch_make_eight);
    tcase_add_test(tests, logs_are_as_long_as_the_raw_edge);
    tcase_add_test(tests, sides_follow_start_and_turn);
    tcase_add_test(tests, courthouse_steps_come_in_equal_pairs);
    tcase_add_test(tests, logs_tile_the_block);
    tcase_add_test(tests, logs_may_have_widths_of_their_own);
    tcase_add_test(tests, sizes_may_be_given_as_cut);
    tcase_add_test(tests, log_cabin_checks_its_structs);
    tcase_add_test(tests, log_cabin_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, what_is_given_as_cut_must_be_more_than_its_seams);
    tcase_add_test(tests, widths_are_as_many_as_rounds_or_logs);
    tcase_add_test(tests, a_block_ends_at_the_largest_size);
    tcase_add_test(tests, logs_are_asked_for_then_filled);
    suite_add_tcase(suite, tests);
}
