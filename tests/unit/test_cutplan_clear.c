/* test_cutplan_clear.c - what stays when the search for a plan makes room, and that it is named by its new number.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_clear.h"
#include "testing.h"

Suite *cutplan_clear_suite(void);

enum {
    MADE = 20,
    LONG = 5,      /* the pattern that has two strips */
    ROOM = 56,     /* for patterns: an eighth is 7 */
    STAY = 15,
    CASES = 6,
    BASES = 9,
    BESIDE = 3,    /* what nobody asks for, in front and behind */
    UNTOUCHED = 77,
    SLACK = 2 * MSL_FIRST_SLACK
};

/* A search whose arrays lie between others. */
struct cleared {
    struct msl_search search;
    struct msl_master master;
    struct msl_pattern patterns[MSL_FIRST_SLACK + 2 * BESIDE]; /* as far as anything might be taken for a pattern */
    struct msl_strip strips[2 * MADE];
    struct msl_laid laid[4 * MADE];
    struct msl_case cases[CASES + 2 * BESIDE];
    struct msl_open open[CASES + 2 * BESIDE];
    uint16_t bases[BASES + 4 * BESIDE];
    struct msl_plan_row rows[2 + 2 * BESIDE];
};

static int is_empty(int32_t pattern)
{
    return pattern == 0 || pattern == 3;
}

/* Patterns from 10 high upwards, one with two strips; each strip holds two kinds, of which one piece more than in the
 * last. */
static void make_patterns(struct cleared *c)
{
    struct msl_pool *pool = &c->search.pool;
    pool->patterns = c->patterns + 1;
    pool->strips = c->strips;
    pool->laid = c->laid;
    pool->most_patterns = ROOM;
    for (int32_t i = 0; i < MSL_FIRST_SLACK + 2 * BESIDE; i++)
        c->patterns[i].times = UNTOUCHED;
    for (int32_t i = 0; i < MADE; i++) {
        const struct msl_pattern pattern = { .way = i % 3, .first = pool->strip_count, .count = 1 + (i == LONG) };
        pool->patterns[pool->pattern_count++] = pattern;
        for (int32_t s = 0; s < pattern.count; s++) {
            const struct msl_strip strip = { 10 + i + 20 * s, pool->laid_count, is_empty(i) ? 0 : 2 };
            pool->strips[pool->strip_count++] = strip;
            for (int32_t k = 0; k < strip.count; k++) {
                const struct msl_laid laid = { .size = k, .count = i + 1 + 20 * s };
                pool->laid[pool->laid_count++] = laid;
            }
        }
    }
    pool->most_strips = pool->strip_count; /* full */
    pool->most_laid = 10 * pool->laid_count;
}

/* Patterns 7 and 9 are in the basis that both open cases below a closed one begin from, pattern 2 in that of another,
 * 5 and 11 in the plan; 1 and 6 are only in the basis of what is closed, and 4 and 8 in those of cases that were
 * packed, or cost as much as the plan. So many bases of nothing lie before all. */
static void make_search(struct cleared *c, int32_t before)
{
    static const struct msl_case cases[CASES] = { { .least = 10 }, { .split = 1 }, { .least = 20 }, { .least = 99 },
                                                  { .packed = 1 }, { .least = 100 } };
    static const int32_t first[CASES] = { 0, 3, 0, 5, 6, 8 };
    static const int16_t count[CASES] = { 3, 2, 3, 1, 2, 1 };
    static const uint16_t bases[BASES] = { 2 * 7 + 1, SLACK, 2 * 9, 2 * 1, 2 * 6, 2 * 2, 2 * 4, 2 * 4, 2 * 8 };
    static const struct msl_plan_row rows[] = { { .times = 6, .pattern = LONG }, { .times = 1, .pattern = 11 } };
    memset(c, 0, sizeof *c);
    for (int32_t i = 0; i < BASES + 4 * BESIDE; i++)
        c->bases[i] = 2 * 10; /* which must not stay for these */
    for (int32_t i = 0; i < 2 + 2 * BESIDE; i++)
        c->rows[i].pattern = 10;
    for (int32_t i = 0; i < CASES + 2 * BESIDE; i++)
        c->open[i].basic_count = 1;
    for (int32_t i = 0; i < CASES; i++) {
        c->cases[BESIDE + i] = cases[i];
        c->open[BESIDE + i].first_basic = before + first[i];
        c->open[BESIDE + i].basic_count = count[i];
    }
    for (int32_t i = 0; i < BASES; i++)
        c->bases[BESIDE + before + i] = bases[i];
    for (int32_t i = 0; i < 2; i++)
        c->rows[BESIDE + i] = rows[i];
    make_patterns(c);
    c->master.scan_from = 4;
    c->master.steps = 1000;
    c->search.master = &c->master;
    c->search.cases = c->cases + BESIDE;
    c->search.open = c->open + BESIDE;
    c->search.bases = c->bases + BESIDE;
    c->search.making.best.rows = c->rows + BESIDE;
    c->search.making.best.count = 2;
    c->search.making.best.cost = 100;
    c->search.case_count = CASES;
    c->search.basic_count = before + BASES;
    c->search.most_basics = 100;
}

/* What lies in the strips of the patterns that stay, in their order. */
static void ck_patterns(const struct cleared *c)
{
    static const int32_t stay[STAY] = { 0, 2, 3, LONG, 7, 9, 11, 13, 14, 15, 16, 17, 18, 19, MADE };
    const struct msl_pool *pool = &c->search.pool;
    int32_t strips = 0;
    ck_assert_int_eq(pool->pattern_count, STAY - 1);
    for (int32_t i = 0; i < pool->pattern_count; i++) {
        const struct msl_pattern *pattern = &pool->patterns[i];
        ck_assert_int_eq(pattern->way, stay[i] % 3);
        ck_assert_int_eq(pattern->count, 1 + (stay[i] == LONG));
        ck_assert_int_eq(pattern->first, strips);
        for (int32_t s = 0; s < pattern->count; s++, strips++) {
            const struct msl_strip *strip = &pool->strips[pattern->first + s];
            ck_assert_int_eq(strip->height, 10 + stay[i] + 20 * s);
            ck_assert_int_eq(strip->count, is_empty(stay[i]) ? 0 : 2);
            for (int32_t k = 0; k < strip->count; k++) {
                ck_assert_int_eq(pool->laid[strip->first + k].size, k);
                ck_assert_int_eq(pool->laid[strip->first + k].count, stay[i] + 1 + 20 * s);
            }
        }
    }
    ck_assert_int_eq(pool->strip_count, strips);
    ck_assert_int_eq(pool->laid_count, 2 * (strips - 2));
    ck_assert_int_eq(pool->patterns[-1].times, UNTOUCHED);
    for (int32_t i = MADE; i < MSL_FIRST_SLACK + BESIDE; i++)
        if (pool->patterns[i].times != UNTOUCHED)
            ck_abort_msg("%d is no pattern", i);
}

START_TEST(what_stays_is_named_by_its_new_number)
{
    static struct cleared c;
    for (int32_t before = 0; before < BESIDE; before++) {
        make_search(&c, before);
        msl_search_clear(&c.search);
        ck_patterns(&c);
        ck_assert_int_eq(c.search.making.best.rows[0].pattern, 3);
        ck_assert_int_eq(c.search.making.best.rows[1].pattern, 6);
        ck_assert_int_eq(c.search.basic_count, 4);
        ck_assert_int_eq(c.search.open[0].first_basic, 0);
        ck_assert_int_eq(c.search.open[2].first_basic, 0);
        ck_assert_int_eq(c.search.open[3].first_basic, 3);
        ck_assert_int_eq(c.search.bases[0], 2 * 4 + 1);
        ck_assert_int_eq(c.search.bases[1], SLACK);
        ck_assert_int_eq(c.search.bases[2], 2 * 5);
        ck_assert_int_eq(c.search.bases[3], 2 * 1);
        ck_assert_int_eq(c.master.scan_from, 0);
        /* a step for each of the pieces laid, two in each of 19 strips, and of the places of bases */
        ck_assert_int_eq(c.master.steps, 1000 + 2 * 19 + before + BASES);
        for (int32_t i = 0; i < BESIDE; i++) { /* as they were */
            ck_assert_int_eq(c.rows[i].pattern, 10);
            ck_assert_int_eq(c.rows[2 + BESIDE + i].pattern, 10);
            ck_assert_int_eq(c.bases[i], 2 * 10);
            ck_assert_int_eq(c.open[i].first_basic, 0);
            ck_assert_int_eq(c.open[CASES + BESIDE + i].first_basic, 0);
        }
    }
}
END_TEST

/* Three quarters of some room taken are not too much; one more is, of whichever. */
START_TEST(room_is_made_when_three_quarters_are_taken)
{
    static struct cleared c;
    for (int32_t which = 0; which < 5; which++)
        for (int32_t more = 0; more < 2; more++) {
            make_search(&c, 0);
            struct msl_search *s = &c.search;
            int32_t *const taken[] = { &s->pool.pattern_count, &s->pool.strip_count, &s->pool.laid_count,
                                       &s->basic_count };
            int32_t *const most[] = { &s->pool.most_patterns, &s->pool.most_strips, &s->pool.most_laid,
                                      &s->most_basics };
            for (int32_t room = 0; room < 4; room++) { /* so little room that there just is enough */
                const int32_t quarter = (*taken[room] + 2) / 3;
                *most[room] = 4 * (quarter - (which == room && more));
            }
            msl_search_clear(s);
            ck_assert_int_eq(c.master.scan_from, which < 4 && more ? 0 : 4);
            ck_assert_int_eq(s->pool.pattern_count < MADE, which < 4 && more);
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
