/* test_cutplan_clear.c - what stays when the search for a plan makes room, and that it is named by its new number.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_clear.h"
#include "test_cutplan_parts.h"

Suite *cutplan_clear_suite(void);

enum {
    MADE = 15,
    MORE = 2, /* strips of the first pattern */
    ROOM = 16,
    STAY = 7,
    EMPTY = 3,
    BESIDE = 3, /* cases, bases and rows that nobody asks for, in front and behind */
    SLACK = 2 * MSL_FIRST_SLACK
};

/* Patterns from 10 high upwards, the first with two strips; each strip holds two kinds, of which one piece more than in
 * the last. */
static void make_patterns(struct msl_pool *pool)
{
    pool->most_patterns = ROOM;
    pool->pattern_count = pool->strip_count = pool->laid_count = 0;
    for (int32_t i = 0; i < MADE; i++) {
        const struct msl_pattern pattern = { .times = 5, .way = i % 3, .first = pool->strip_count, .count = 1 + (i == 0) };
        pool->patterns[pool->pattern_count++] = pattern;
        for (int32_t s = 0; s < pattern.count; s++) {
            const struct msl_strip strip = { 10 + i + 20 * s, pool->laid_count, i == EMPTY ? 0 : 2 };
            pool->strips[pool->strip_count++] = strip;
            for (int32_t k = 0; k < strip.count; k++) {
                const struct msl_laid laid = { .size = k, .count = i + 1 + 20 * s };
                pool->laid[pool->laid_count++] = laid;
            }
        }
    }
}

/* A search whose arrays lie between others. */
struct cleared {
    struct parts parts;
    struct msl_search search;
    struct msl_master master;
    struct msl_case cases[6 + 2 * BESIDE];
    struct msl_open open[6 + 2 * BESIDE];
    uint16_t bases[7 + 2 * BESIDE];
    struct msl_plan_row rows[2 + 2 * BESIDE];
};

/* Patterns 7 and 9 are in the basis that both open cases below a closed one begin from, pattern 2 in that of another,
 * 0 and 5 in the plan; 1 is only in the basis of what is closed, and 4 and 8 in those of cases that were packed, or cost
 * as much as the plan. */
static void make_search(struct cleared *c)
{
    static const struct msl_case cases[] = { { .least = 10 }, { .split = 1 }, { .least = 20 }, { .least = 99 },
                                             { .packed = 1 }, { .least = 100 } };
    static const struct msl_open open[] = { { .first_basic = 0, .basic_count = 3 }, { .first_basic = 3, .basic_count = 1 },
                                            { .first_basic = 0, .basic_count = 3 }, { .first_basic = 4, .basic_count = 1 },
                                            { .first_basic = 5, .basic_count = 1 }, { .first_basic = 6, .basic_count = 1 } };
    static const uint16_t bases[] = { 2 * 7 + 1, SLACK, 2 * 9, 2 * 1, 2 * 2, 2 * 4, 2 * 8 };
    static const struct msl_plan_row rows[] = { { .times = 6, .pattern = 5 }, { .times = 1, .pattern = 0 } };
    memset(c, 0, sizeof *c);
    for (int32_t i = 0; i < 6 + 2 * BESIDE; i++)
        c->open[i].basic_count = 1;
    for (int32_t i = 0; i < 7 + 2 * BESIDE; i++)
        c->bases[i] = 2 * 10; /* which must not stay for these */
    for (int32_t i = 0; i < 2 + 2 * BESIDE; i++)
        c->rows[i].pattern = 10;
    memcpy(c->cases + BESIDE, cases, sizeof cases);
    memcpy(c->open + BESIDE, open, sizeof open);
    memcpy(c->bases + BESIDE, bases, sizeof bases);
    memcpy(c->rows + BESIDE, rows, sizeof rows);
    parts_begin(&c->parts);
    make_patterns(&c->parts.pool);
    c->master.scan_from = 4;
    c->master.steps = 1000;
    c->search.pool = c->parts.pool;
    c->search.master = &c->master;
    c->search.cases = c->cases + BESIDE;
    c->search.open = c->open + BESIDE;
    c->search.bases = c->bases + BESIDE;
    c->search.making.best.rows = c->rows + BESIDE;
    c->search.making.best.count = 2;
    c->search.making.best.cost = 100;
    c->search.case_count = 6;
    c->search.basic_count = 7;
    c->search.most_basics = 100;
}

/* What lies in the strips of the patterns that stay, in their order; of the first in both. The newest eighth of the room
 * is two. */
static void ck_patterns(const struct msl_pool *pool)
{
    static const int32_t stay[STAY] = { 0, 2, EMPTY, 5, 7, 9, 13 };
    int32_t strips = 0;
    ck_assert_int_eq(pool->pattern_count, STAY + 1);
    for (int32_t i = 0; i < pool->pattern_count; i++) {
        const struct msl_pattern *pattern = &pool->patterns[i];
        const int32_t was = i < STAY ? stay[i] : 14;
        ck_assert_int_eq(pattern->way, was % 3);
        ck_assert_int_eq(pattern->count, 1 + (was == 0));
        ck_assert_int_eq(pattern->first, strips);
        for (int32_t s = 0; s < pattern->count; s++, strips++) {
            const struct msl_strip *strip = &pool->strips[pattern->first + s];
            ck_assert_int_eq(strip->height, 10 + was + 20 * s);
            ck_assert_int_eq(strip->count, was == EMPTY ? 0 : 2);
            for (int32_t k = 0; k < strip->count; k++) {
                ck_assert_int_eq(pool->laid[strip->first + k].size, k);
                ck_assert_int_eq(pool->laid[strip->first + k].count, was + 1 + 20 * s);
            }
        }
    }
    ck_assert_int_eq(pool->strip_count, strips);
    ck_assert_int_eq(pool->laid_count, 2 * (strips - 1));
}

START_TEST(what_stays_is_named_by_its_new_number)
{
    static struct cleared c;
    make_search(&c);
    msl_search_clear(&c.search);
    ck_patterns(&c.search.pool);
    ck_assert_int_eq(c.search.making.best.rows[0].pattern, 3);
    ck_assert_int_eq(c.search.making.best.rows[1].pattern, 0);
    ck_assert_int_eq(c.search.basic_count, 4);
    ck_assert_int_eq(c.search.open[0].first_basic, 0);
    ck_assert_int_eq(c.search.open[2].first_basic, 0);
    ck_assert_int_eq(c.search.open[3].first_basic, 3);
    ck_assert_int_eq(c.search.bases[0], 2 * 4 + 1);
    ck_assert_int_eq(c.search.bases[1], SLACK);
    ck_assert_int_eq(c.search.bases[2], 2 * 5);
    ck_assert_int_eq(c.search.bases[3], 2 * 1);
    ck_assert_int_eq(c.master.scan_from, 0);
    /* a step for each of the pieces laid, two a strip of 15 that have some, and of the seven places of bases */
    ck_assert_int_eq(c.master.steps, 1000 + 2 * 15 + 7);
    for (int32_t i = 0; i < BESIDE; i++) { /* as they were */
        ck_assert_int_eq(c.rows[i].pattern, 10);
        ck_assert_int_eq(c.rows[2 + BESIDE + i].pattern, 10);
        ck_assert_int_eq(c.bases[i], 2 * 10);
        ck_assert_int_eq(c.bases[7 + BESIDE + i], 2 * 10);
        ck_assert_int_eq(c.open[i].first_basic, 0);
        ck_assert_int_eq(c.open[6 + BESIDE + i].first_basic, 0);
    }
}
END_TEST

/* Three quarters of some room taken are not too much; one more is, of whichever. */
START_TEST(room_is_made_when_three_quarters_are_taken)
{
    static struct cleared c;
    for (int32_t which = 0; which < 5; which++) {
        make_search(&c);
        struct msl_search *s = &c.search;
        int32_t *const taken[] = { &s->pool.pattern_count, &s->pool.strip_count, &s->pool.laid_count, &s->basic_count };
        int32_t *const most[] = { &s->pool.most_patterns, &s->pool.most_strips, &s->pool.most_laid, &s->most_basics };
        for (int32_t room = 0; room < 4; room++) { /* just so much that one more than three quarters is taken */
            *most[room] = 4 * ((*taken[room] + 2 - (which == room)) / 3);
            if (*taken[room] > *most[room] / 4 * 3 && which != room)
                *most[room] += 4;
            while (which == room && *taken[room] <= *most[room] / 4 * 3)
                *most[room] -= 4;
        }
        msl_search_clear(s);
        ck_assert_int_eq(c.master.scan_from, which < 4 ? 0 : 4);
        ck_assert_int_eq(s->pool.pattern_count < MADE, which < 4);
    }
}
END_TEST

Suite *cutplan_clear_suite(void)
{
    Suite *suite = suite_create("cutplan_clear");
    TCase *tests = tcase_create("clear");
    tcase_add_test(tests, what_stays_is_named_by_its_new_number);
    tcase_add_test(tests, room_is_made_when_three_quarters_are_taken);
    suite_add_tcase(suite, tests);
    return suite;
}
