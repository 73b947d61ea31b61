/* test_cutplan_clear.c - what stays when the search for a plan makes room, and that it is named by its new number.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_clear.h"
#include "test_cutplan_parts.h"

Suite *cutplan_clear_suite(void);

enum { MADE = 14, ROOM = 16, STAY = 7, EMPTY = 3, SLACK = 2 * (MSL_FIRST_SLACK + 1) };

/* Patterns with one strip each, from 10 high upwards, that holds one piece more than the last. */
static void make_patterns(struct msl_pool *pool)
{
    pool->most_patterns = ROOM;
    pool->pattern_count = pool->strip_count = pool->laid_count = MADE;
    for (int32_t i = 0; i < MADE; i++) {
        const struct msl_pattern pattern = { .first = i, .count = 1 };
        const struct msl_strip strip = { 10 + i, i, i == EMPTY ? 0 : 1 };
        const struct msl_laid laid = { .size = 0, .count = i + 1 };
        pool->patterns[i] = pattern;
        pool->strips[i] = strip;
        pool->laid[i] = laid;
    }
}

/* Patterns 7 and 9 are in the basis that both open cases below a closed one begin from, pattern 2 in that of another,
 * 5 in the plan; 1 is only in the closed one's basis. The newest eighth of the room is two. */
START_TEST(what_stays_is_named_by_its_new_number)
{
    static struct parts parts;
    const int64_t heights[STAY] = { 12, 10 + EMPTY, 15, 17, 19, 22, 23 };
    uint16_t bases[] = { 2 * 1, 2 * 7 + 1, SLACK, 2 * 9, 2 * 2 };
    struct msl_case cases[] = { { .split = 1 }, { .least = 10 }, { .least = 20 }, { .least = 30 } };
    struct msl_open open[] = { { .first_basic = 0, .basic_count = 1 }, { .first_basic = 1, .basic_count = 3 },
                               { .first_basic = 1, .basic_count = 3 }, { .first_basic = 4, .basic_count = 1 } };
    struct msl_plan_row row = { .times = 6, .pattern = 5 };
    struct msl_master master = { .scan_from = 4 };
    parts_begin(&parts);
    make_patterns(&parts.pool);
    struct msl_search search = { .pool = parts.pool, .master = &master, .cases = cases, .open = open, .bases = bases };
    search.making.best.rows = &row;
    search.making.best.count = 1;
    search.making.best.cost = 100;
    search.case_count = 4;
    search.basic_count = 5;
    search.most_basics = 100;
    msl_search_clear(&search);
    ck_assert_int_eq(search.pool.pattern_count, STAY);
    for (int32_t i = 0; i < search.pool.pattern_count; i++) {
        const struct msl_strip *strip = &parts.strips[parts.patterns[i].first];
        ck_assert_int_eq(strip->height, heights[i]);
        ck_assert_int_eq(strip->count, heights[i] == 10 + EMPTY ? 0 : 1);
        if (strip->count > 0)
            ck_assert_int_eq(parts.laid[strip->first].count, heights[i] - 9);
    }
    ck_assert_int_eq(row.pattern, 2);
    ck_assert_int_eq(search.basic_count, 4);
    ck_assert_int_eq(open[1].first_basic, 0);
    ck_assert_int_eq(open[2].first_basic, 0);
    ck_assert_int_eq(open[3].first_basic, 3);
    ck_assert_int_eq(bases[0], 2 * 3 + 1);
    ck_assert_int_eq(bases[1], SLACK);
    ck_assert_int_eq(bases[2], 2 * 4);
    ck_assert_int_eq(bases[3], 2 * 0);
    ck_assert_int_eq(master.scan_from, 0);
}
END_TEST

Suite *cutplan_clear_suite(void)
{
    Suite *suite = suite_create("cutplan_clear");
    TCase *tests = tcase_create("clear");
    tcase_add_test(tests, what_stays_is_named_by_its_new_number);
    suite_add_tcase(suite, tests);
    return suite;
}
