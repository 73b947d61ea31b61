/* test_rounds_strips.c - strips for log cabins: by hand, and cut log by log.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

enum { LOGS_MAX = 64 };

static struct muslin_logcabin_spec cabin_of(muslin_len centre, muslin_len log, int64_t rounds, int64_t blocks)
{
    struct muslin_logcabin_spec spec = MUSLIN_LOGCABIN_SPEC_INIT;
    spec.centre_width = centre;
    spec.centre_height = centre;
    spec.log_width = log;
    spec.rounds = rounds;
    spec.blocks = blocks;
    return spec;
}

static struct muslin_logcabin plan_of(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n)
{
    struct muslin_logcabin plan = { .size = (uint32_t)sizeof plan };
    ck_ok(muslin_logcabin_plan(spec, widths, n, &plan, NULL));
    return plan;
}

static size_t strips_of(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n,
                        struct muslin_logcabin_strip *rows)
{
    size_t count = 0;
    ck_ok(muslin_logcabin_strips(spec, widths, n, rows, sizeof *rows, LOGS_MAX, &count, NULL));
    return count;
}

/* By hand: twenty logs each of 7 1/2 in (five a strip: 4 strips, 2 1/2 in left), 6 1/2 (six a strip: 4, 27 in left),
 * 5 1/2 (four from that, then 3 strips, 29 left), 4 1/2 (six, then 2, 13 left), 3 1/2 (three, then 2, 19 left) and
 * 2 1/2 in (seven, then 1). */
/* Example: 20 blocks, centre 2 in, 3 rounds of logs 1 in finished, strips 40 in: of the first half 600 in, by length 15
 * strips; cut so, 16. */
START_TEST(twenty_blocks_take_sixteen_strips_of_the_first_half)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3, 20);
    struct muslin_logcabin_strip rows[LOGS_MAX];
    ck_assert_uint_eq(strips_of(&spec, NULL, 0, rows), 2);
    ck_assert_int_eq(rows[0].half, MUSLIN_LOG_HALF_FIRST);
    ck_assert_int_eq(rows[0].cut_width, IN(1, 1, 2));
    ck_assert_int_eq(rows[0].pieces, 120);
    ck_assert_int_eq(rows[0].longest, IN(7, 1, 2));
    ck_assert_int_eq(rows[0].length, WHOLE_IN(600));
    ck_assert_int_eq(rows[0].strips_least, 15);
    ck_assert_int_eq(rows[0].strips, 16);
    ck_assert_int_eq(rows[0].cloth_length, WHOLE_IN(24));
    ck_assert_int_eq(rows[1].half, MUSLIN_LOG_HALF_SECOND);
    ck_assert_int_eq(rows[1].length, WHOLE_IN(720));
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.kinds, 2);
    ck_assert_int_eq(plan.first_length, WHOLE_IN(600));
    ck_assert_int_eq(plan.second_length, WHOLE_IN(720));
    ck_assert_int_eq(plan.strips_least, 15 + rows[1].strips_least);
    ck_assert_int_eq(plan.strips, 16 + rows[1].strips);
    ck_assert_int_eq(plan.cloth_length, plan.strips * IN(1, 1, 2));
}
END_TEST

/* ---- cut log by log ---------------------------------------------------------------------------------------------- */

/* Cuts the logs of one half and width from the last to the first, every block's one after the other. */
static int64_t cut_one_by_one(const struct muslin_logcabin_log *logs, size_t count,
                              const struct muslin_logcabin_strip *kind, muslin_len room, int64_t blocks)
{
    int64_t strips = 0;
    muslin_len left = 0;
    for (size_t i = count; i-- > 0;)
        for (int64_t block = 0; block < blocks; block++) {
            if (logs[i].half != kind->half || logs[i].cut_width != kind->cut_width)
                continue;
            if (left < logs[i].cut_length) {
                strips++;
                left = room;
            }
            left -= logs[i].cut_length;
        }
    return strips;
}

static void ck_cut(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n)
{
    struct muslin_logcabin_log logs[LOGS_MAX];
    struct muslin_logcabin_strip kinds[LOGS_MAX];
    muslin_len room = spec->usable_width - spec->end_loss;
    muslin_len total[2] = { 0, 0 };
    int64_t pieces = 0;
    size_t count = 0;
    ck_ok(muslin_logcabin_logs(spec, widths, n, logs, sizeof *logs, LOGS_MAX, &count, NULL));
    size_t found = strips_of(spec, widths, n, kinds);
    for (size_t i = 0; i < found; i++) {
        ck_assert_int_eq(kinds[i].strips, cut_one_by_one(logs, count, &kinds[i], room, spec->blocks));
        ck_assert(kinds[i].strips_least * room >= kinds[i].length);
        ck_assert((kinds[i].strips_least - 1) * room < kinds[i].length);
        ck_assert_int_ge(kinds[i].strips, kinds[i].strips_least);
        ck_assert_int_eq(kinds[i].cloth_length, kinds[i].strips * kinds[i].cut_width);
        total[kinds[i].half - MUSLIN_LOG_HALF_FIRST] += kinds[i].length;
        pieces += kinds[i].pieces;
    }
    struct muslin_logcabin plan = plan_of(spec, widths, n);
    ck_assert_int_eq(pieces, spec->blocks * (int64_t)count);
    ck_assert_int_eq(plan.kinds, (int64_t)found);
    ck_assert_int_eq(plan.first_length, total[0]);
    ck_assert_int_eq(plan.second_length, total[1]);
    ck_assert_int_eq(total[0] + total[1], spec->blocks * logs[count - 1].running_length);
}

START_TEST(strips_are_what_cutting_one_by_one_takes)
{
    uint64_t state = 1;
    for (int i = 0; i < 400; i++) {
        struct muslin_logcabin_spec spec = cabin_of(1, 3, 1, 1);
        muslin_len widths[LOGS_MAX];
        spec.centre_width = draw_from(&state, 1, 20);
        spec.centre_height = draw_from(&state, 1, 20);
        spec.rounds = draw_from(&state, 1, 6);
        spec.blocks = draw_from(&state, 1, 9);
        spec.allowance = draw_from(&state, 0, 3);
        spec.take_up = draw_from(&state, 0, 1);
        spec.end_loss = draw_from(&state, 0, 5);
        spec.usable_width = draw_from(&state, 90, 300);
        spec.order = (int32_t)draw_from(&state, 1, 3);
        for (size_t at = 0; at < LOGS_MAX; at++)
            widths[at] = draw_from(&state, 1, 4);
        ck_cut(&spec, NULL, 0);
        ck_cut(&spec, widths, (size_t)spec.rounds);
        ck_cut(&spec, widths, (size_t)spec.rounds * (spec.order == MUSLIN_LOG_ORDER_QUARTER ? 2 : 4));
    }
}
END_TEST

/* Thin and thick logs by side, as in an off-centre block: one width a half. By round: one width a round and half. */
START_TEST(each_half_and_width_has_its_own_strips)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), 0, 2, 1);
    const muslin_len by_round[] = { WHOLE_IN(1), WHOLE_IN(2) };
    const muslin_len by_log[] = { 8128, 8128, 16256, 16256, 8128, 8128, 16256, 16256 };
    struct muslin_logcabin_strip rows[LOGS_MAX];
    ck_assert_uint_eq(strips_of(&spec, by_log, 8, rows), 2);
    ck_assert_int_eq(rows[0].cut_width, IN(1, 1, 2));
    ck_assert_int_eq(rows[1].cut_width, IN(2, 1, 2));
    ck_assert_uint_eq(strips_of(&spec, by_round, 2, rows), 4);
    for (int32_t i = 0; i < 4; i++) {
        ck_assert_int_eq(rows[i].half, i / 2 + 1);
        ck_assert_int_eq(rows[i].cut_width, i % 2 == 0 ? IN(1, 1, 2) : IN(2, 1, 2));
        ck_assert_int_eq(rows[i].pieces, 2);
    }
}
END_TEST

START_TEST(without_a_usable_width_strips_are_not_counted)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3, 20);
    struct muslin_logcabin_strip rows[LOGS_MAX];
    spec.usable_width = 0;
    spec.end_loss = WHOLE_IN(1);
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.first_length, WHOLE_IN(600));
    ck_assert_int_eq(plan.longest_log, IN(8, 1, 2));
    ck_assert_int_eq(plan.strips_least, 0);
    ck_assert_int_eq(plan.strips, 0);
    ck_assert_int_eq(plan.cloth_length, 0);
    ck_assert_uint_eq(strips_of(&spec, NULL, 0, rows), 2);
    ck_assert_int_eq(rows[0].pieces, 120);
    ck_assert_int_eq(rows[0].strips, 0);
    ck_assert_int_eq(rows[0].strips_least, 0);
    ck_assert_int_eq(rows[0].cloth_length, 0);
}
END_TEST

/* Sixteen of 2 1/2 in from 40 in; twenty from two strips. Seven and a half of 5 in from 37 1/2 in: seven. */
START_TEST(centres_come_from_strips_of_their_own)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3, 16);
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.centre_strip_cut, IN(2, 1, 2));
    ck_assert_int_eq(plan.centres_per_strip, 16);
    ck_assert_int_eq(plan.centre_strips, 1);
    spec.blocks = 17;
    ck_assert_int_eq(plan_of(&spec, NULL, 0).centre_strips, 2);
    spec = cabin_of(IN(4, 1, 2), WHOLE_IN(1), 1, 8);
    spec.end_loss = IN(2, 1, 2);
    plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.centres_per_strip, 7);
    ck_assert_int_eq(plan.centre_strips, 2);
    ck_assert_int_eq(plan.centre_cloth_length, WHOLE_IN(10));
    spec.usable_width = 0;
    plan = plan_of(&spec, NULL, 0);
    ck_assert_int_eq(plan.centre_cut_width, WHOLE_IN(5));
    ck_assert_int_eq(plan.centre_strip_cut + plan.centres_per_strip + plan.centre_strips + plan.centre_cloth_length, 0);
}
END_TEST

/* Centres cut 2 x 4 in without seams. One alone comes from a strip of 2 in, whichever way it lies; of 20, a strip of
 * 4 in gives as many as two of 2 in, and the narrower ones are taken; of 15 from 30 in, one of 4 in against three of 2:
 * the wider. */
START_TEST(centres_lie_the_way_that_takes_less_cloth)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 1, 1);
    spec.allowance = 0;
    for (int turned = 0; turned < 2; turned++) {
        spec.centre_width = WHOLE_IN(turned ? 4 : 2);
        spec.centre_height = WHOLE_IN(turned ? 2 : 4);
        spec.usable_width = WHOLE_IN(40);
        spec.blocks = 1;
        ck_assert_int_eq(plan_of(&spec, NULL, 0).centre_strip_cut, WHOLE_IN(2));
        spec.blocks = 20;
        struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
        ck_assert_int_eq(plan.centre_strip_cut, WHOLE_IN(2));
        ck_assert_int_eq(plan.centre_strips, 2);
        spec.usable_width = WHOLE_IN(30);
        spec.blocks = 15; /* 15 of 2 in, or 7 of 4 in a strip */
        plan = plan_of(&spec, NULL, 0);
        ck_assert_int_eq(plan.centre_strip_cut, WHOLE_IN(4));
        ck_assert_int_eq(plan.centres_per_strip, 15);
        ck_assert_int_eq(plan.centre_strips, 1);
        ck_assert_int_eq(plan.centre_cloth_length, WHOLE_IN(4));
    }
}
END_TEST

/* The first half's longest log is 7 1/2 in, the second's 8 1/2 in. */
START_TEST(a_log_longer_than_a_strip_is_named)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3, 1);
    struct muslin_logcabin plan = { .size = (uint32_t)sizeof plan, .logs = 77 };
    struct muslin_problem problem = PROBLEM;
    size_t count = 99;
    spec.usable_width = WHOLE_IN(9);
    spec.end_loss = IN(0, 1, 2);
    ck_assert_int_eq(plan_of(&spec, NULL, 0).longest_log, IN(8, 1, 2));
    /* from 8 1/2 in: 7 1/2, 6 1/2, 5 1/2, 4 1/2 and, from what that leaves, 3 1/2, then 2 1/2; the same from 8 1/2 on */
    ck_assert_int_eq(plan_of(&spec, NULL, 0).strips, 5 + 5);
    spec.end_loss++;
    ck_status(muslin_logcabin_plan(&spec, NULL, 0, &plan, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(9));
    ck_assert_int_eq(problem.limit, WHOLE_IN(9) + 1);
    ck_status(muslin_logcabin_strips(&spec, NULL, 0, NULL, 0, 0, &count, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_uint_eq(count, 99);
    ck_ok(muslin_logcabin_logs(&spec, NULL, 0, NULL, 0, 0, &count, &problem));
    spec.usable_width = WHOLE_IN(7);
    spec.end_loss = WHOLE_IN(8);
    ck_status(muslin_logcabin_plan(&spec, NULL, 0, &plan, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.limit, IN(15, 1, 2));
    ck_assert_int_eq(plan.logs, 77);
}
END_TEST

/* The most logs of the most blocks, each cut from a strip of its own: 4000 logs a block, and the last ones almost
 * 2^30 + 2^29 long. */
START_TEST(the_most_of_everything_adds_up)
{
    struct muslin_logcabin_spec spec = cabin_of(MUSLIN_SIZE_MAX - 2000, 1, MUSLIN_ROUNDS_MAX,
                                                MUSLIN_LOGCABIN_BLOCKS_MAX);
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    spec.take_up = MUSLIN_SIZE_MAX / 8;
    spec.usable_width = 0;
    struct muslin_logcabin plan = plan_of(&spec, NULL, 0);
    muslin_len seam = 3 * (MUSLIN_SIZE_MAX / 8);
    ck_assert_int_eq(plan.finished_width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(plan.longest_log, MUSLIN_SIZE_MAX + seam);
    /* Of each round r, from 0, the first half's logs are C + 2 r and C + 2 r + 1 long, the second's C + 2 r + 1 and
     * C + 2 r + 2, with C the centre unfinished: sums of arithmetic series. */
    muslin_len centre = MUSLIN_SIZE_MAX - 2000 + seam;
    ck_assert_int_eq(plan.first_length, 100000 * (2000 * centre + 2 * 2 * 999 * 1000 / 2 + 1000));
    ck_assert_int_eq(plan.second_length, 100000 * (2000 * centre + 2 * 2 * 999 * 1000 / 2 + 3000));
}
END_TEST

/* Widths that are all different make as many kinds as there are logs. */
START_TEST(every_log_may_be_a_kind_of_its_own)
{
    struct muslin_logcabin_spec spec = cabin_of(100, 0, 10, 3);
    muslin_len widths[40];
    for (int64_t i = 0; i < 40; i++)
        widths[i] = 10 + i;
    ck_assert_int_eq(plan_of(&spec, widths, 40).kinds, 40);
    ck_cut(&spec, widths, 40);
}
END_TEST

static muslin_status call_rows(void *rows, size_t row_size, size_t capacity, size_t *count,
                               struct muslin_problem *problem)
{
    struct muslin_logcabin_spec spec = cabin_of(WHOLE_IN(2), WHOLE_IN(1), 3, 20);
    return muslin_logcabin_strips(&spec, NULL, 0, rows, row_size, capacity, count, problem);
}

START_TEST(strips_are_asked_for_then_filled)
{
    ck_rows_rules(call_rows, sizeof(struct muslin_logcabin_strip), 2);
}
END_TEST

void add_rounds_strips(Suite *suite)
{
    TCase *tests = tcase_create("strips for log cabins");
    tcase_add_test(tests, twenty_blocks_take_sixteen_strips_of_the_first_half);
    tcase_add_test(tests, strips_are_what_cutting_one_by_one_takes);
    tcase_add_test(tests, each_half_and_width_has_its_own_strips);
    tcase_add_test(tests, without_a_usable_width_strips_are_not_counted);
    tcase_add_test(tests, centres_come_from_strips_of_their_own);
    tcase_add_test(tests, centres_lie_the_way_that_takes_less_cloth);
    tcase_add_test(tests, a_log_longer_than_a_strip_is_named);
    tcase_add_test(tests, the_most_of_everything_adds_up);
    tcase_add_test(tests, every_log_may_be_a_kind_of_its_own);
    tcase_add_test(tests, strips_are_asked_for_then_filled);
    suite_add_tcase(suite, tests);
}
