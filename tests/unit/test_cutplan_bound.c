/* test_cutplan_bound.c - sums of costs, and what worths prove.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"

START_TEST(sums_of_costs)
{
    static uint64_t bits[MSL_REACH_WORDS];
    struct msl_reach reach = { bits, -1 };
    for (uint64_t seed = 0; seed < 200; seed++) {
        uint64_t chance = seed;
        struct tiny t;
        uint8_t can[400] = { 1 };
        tiny_start(&t);
        t.cutting.way_count = 1 + (int32_t)tiny_chance(&chance, 4);
        for (int32_t i = 0; i < t.cutting.way_count; i++)
            t.ways[i].cost = 3 + tiny_chance(&chance, 90);
        for (int64_t sum = 1; sum < 400; sum++)
            for (int32_t i = 0; i < t.cutting.way_count; i++)
                if (t.ways[i].cost <= sum)
                    can[sum] |= can[sum - t.ways[i].cost];
        int64_t most = 64 + tiny_chance(&chance, 336);
        ck_assert_int_gt(msl_reach_make(&reach, &t.cutting, most), 0);
        for (int64_t sum = 0; sum < most; sum++) {
            int64_t up = msl_reach_up(&reach, sum);
            ck_assert_int_ge(up, sum);
            ck_assert(up == most || can[up]);
            for (int64_t between = sum; between < up; between++)
                ck_assert(!can[between]);
        }
        ck_assert_int_eq(msl_reach_up(&reach, most + 5), most + 5);
    }
}
END_TEST

START_TEST(a_table_too_large_is_none)
{
    struct msl_reach reach = { NULL, 7 };
    struct tiny t;
    tiny_start(&t);
    ck_assert_int_eq(msl_reach_make(&reach, &t.cutting, MSL_REACH_BITS), 0);
    ck_assert_int_eq(msl_reach_up(&reach, 11), 11);
}
END_TEST

/* A master that says what the test wants: one size of which 10 are wanted, one way at 6, worths with 4 bits. */
struct said {
    struct tiny t;
    struct msl_master master;
    struct msl_limit limit;
    int64_t worth;
    int64_t fixed;
    int64_t way_worth;
    struct msl_reach none;
};

static int64_t bound_of(struct said *s, int64_t worth, int64_t most_of, int64_t below)
{
    memset(s, 0, sizeof *s);
    tiny_start(&s->t);
    s->t.cutting.size_count = s->t.cutting.way_count = 1;
    s->t.ways[0].cost = 6;
    s->limit.wanted = 10;
    s->none.most = -1;
    s->worth = s->way_worth = worth;
    s->fixed = 6 << 4;
    s->master.cutting = &s->t.cutting;
    s->master.limits = &s->limit;
    s->master.worth = &s->worth;
    s->master.way_fixed = &s->fixed;
    s->master.way_worth = &s->way_worth;
    s->master.row_count = 1;
    s->master.bits = 4;
    return msl_bound(&s->master, &most_of, 1000, below, &s->none);
}

START_TEST(worths_prove_what_they_can)
{
    struct said s;
    /* 10 x 32 / 16 = 20; three in a thing are worth just its cost */
    ck_assert_int_eq(bound_of(&s, 32, 96, 100), 20);
    ck_assert_int_eq(bound_of(&s, 31, 93, 100), 20); /* 19.375, up */
    ck_assert_int_eq(bound_of(&s, 32, 96, 20), 20);
    ck_assert_int_eq(bound_of(&s, 32, 96, 15), 15);
    /* worth 2 more of 96 than it costs: 320 - 2 x 24 / 6 = 312 of 16: 19.5 */
    ck_assert_int_eq(bound_of(&s, 32, 98, 25), 20);
    ck_assert_int_eq(bound_of(&s, 32, 98, 100), 18); /* 320 - 33 = 287: 17.9 */
    ck_assert_int_eq(bound_of(&s, 1, 2000, 100), 0);
    ck_assert_int_eq(bound_of(&s, 32, INT64_MAX / 2, 100), 0);
    ck_assert_int_eq(bound_of(&s, 1001, 96, 100), 0); /* worth more than pricing looked at */
}
END_TEST

START_TEST(area_proves_the_plain_bound)
{
    struct tiny t;
    int64_t worths[2];
    tiny_start(&t);
    tiny_size(&t, 5, 4, 3, 0);
    struct msl_piece_size *turned = tiny_size(&t, 6, 5, 2, 1);
    turned->turned_across = 5; /* takes less when it lies turned: 30 against 5 x 6 - 5 */
    turned->turned_along = 5;
    tiny_stock(&t, 10, 10, 9, 7);
    tiny_stock(&t, 20, 10, 9, 12);
    /* 12 for 200 is the cheaper: (3 x 20 + 2 x 25) x 12 / 200 = 6.6 */
    ck_assert_int_eq(msl_plain_bound(&t.cutting, 20, worths), 7);
    ck_assert_int_eq(worths[0], 20 * 12 * (1 << 20) / 200);
    ck_assert_int_eq(worths[1], 25 * 12 * (1 << 20) / 200);
    turned->turned_across = 9;
    ck_assert_int_eq(msl_plain_bound(&t.cutting, 20, worths), 8); /* 7.2 */
}
END_TEST

Suite *cutplan_bound_suite(void)
{
    Suite *suite = suite_create("cutplan_bound");
    TCase *tcase = tcase_create("bound");
    tcase_add_test(tcase, sums_of_costs);
    tcase_add_test(tcase, a_table_too_large_is_none);
    tcase_add_test(tcase, worths_prove_what_they_can);
    tcase_add_test(tcase, area_proves_the_plain_bound);
    suite_add_tcase(suite, tcase);
    return suite;
}
