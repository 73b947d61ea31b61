/* test_cutplan_search.c - plans and proofs of few pieces, against every plan and every pattern there is.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"

static struct brute brute;

/* Sizes by chance: few different sides, so that heights and sums meet. */
static void chance_sizes(struct tiny *t, uint64_t *seed, int64_t side)
{
    int64_t left = 3 + tiny_chance(seed, 4);
    tiny_start(t);
    while (left > 0 && t->cutting.size_count < 4) {
        int64_t count = 1 + tiny_chance(seed, left);
        int64_t across = 2 + tiny_chance(seed, side);
        int64_t along = 2 + tiny_chance(seed, side);
        tiny_size(t, across, along, count, tiny_chance(seed, 3) > 0);
        left -= count;
    }
}

static void ck_search(const struct tiny *t, int64_t work_limit)
{
    struct msl_found found;
    brute_start(&brute, &t->cutting);
    int64_t best = brute_cost(&brute);
    muslin_status status = tiny_search(t, work_limit, &found);
    if (best < 0) {
        ck_status(status, MUSLIN_ERR_NOT_ENOUGH);
        return;
    }
    if (status == MUSLIN_ERR_NOT_ENOUGH && work_limit < 1000)
        return;
    ck_ok(status);
    ck_plan(&t->cutting, &found);
    ck_proof(&brute, &found);
    ck_assert_int_le(found.least, best);
    ck_assert_int_ge(found.cost, best);
    tiny_free(&found);
}

START_TEST(bolts_by_chance)
{
    uint64_t seed = (uint64_t)_i;
    struct tiny t;
    chance_sizes(&t, &seed, 9);
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    struct msl_found found;
    ck_search(&t, 1000000);
    ck_ok(tiny_search(&t, 1000000, &found));
    ck_assert_int_eq(found.cost, found.least);
    ck_assert_int_eq(found.stopped, 0);
    tiny_free(&found);
}
END_TEST

START_TEST(bolts_with_rules)
{
    uint64_t seed = (uint64_t)_i + 7000;
    struct tiny t;
    chance_sizes(&t, &seed, 6);
    for (int32_t i = 0; i < t.cutting.size_count; i++) {
        t.sizes[i].run_in = tiny_chance(&seed, 3);
        t.sizes[i].level = tiny_chance(&seed, 4) == 0;
    }
    t.cutting.one_size = _i % 5 == 0;
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    ck_search(&t, 1000000);
}
END_TEST

START_TEST(bolts_with_little_work)
{
    uint64_t seed = (uint64_t)_i + 9000;
    struct tiny t;
    chance_sizes(&t, &seed, 9);
    tiny_bolt(&t, 10 + tiny_chance(&seed, 12));
    ck_search(&t, tiny_chance(&seed, 3000));
}
END_TEST

START_TEST(stock_by_chance)
{
    uint64_t seed = (uint64_t)_i + 5000;
    struct tiny t;
    chance_sizes(&t, &seed, 6);
    tiny_heights(&t);
    tiny_stock(&t, 8 + tiny_chance(&seed, 4), 8 + tiny_chance(&seed, 6),
               _i % 3 == 0 ? INT64_MAX : 1 + tiny_chance(&seed, 3), 5 + tiny_chance(&seed, 4));
    if (_i % 2)
        tiny_stock(&t, 8, 8, 1 + tiny_chance(&seed, 3), 3 + tiny_chance(&seed, 2));
    ck_search(&t, 1000000);
}
END_TEST

Suite *cutplan_search_suite(void)
{
    Suite *suite = suite_create("cutplan_search");
    TCase *tcase = tcase_create("chance");
    tcase_set_timeout(tcase, 60);
    tcase_add_loop_test(tcase, bolts_by_chance, 0, 300);
    tcase_add_loop_test(tcase, bolts_with_rules, 0, 300);
    tcase_add_loop_test(tcase, bolts_with_little_work, 0, 100);
    tcase_add_loop_test(tcase, stock_by_chance, 0, 300);
    suite_add_tcase(suite, tcase);
    return suite;
}
