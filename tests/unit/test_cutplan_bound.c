/* test_cutplan_bound.c - sums of costs, and what worths prove.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"

/* What lies beside an array, and is no part of it. */
static const uint64_t BESIDE = UINT64_C(0xD7D7D7D7D7D7D7D7);

START_TEST(sums_of_costs)
{
    static uint64_t bits[16];
    struct msl_reach reach = { bits + 1, -1 };
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
        memset(bits, 0xD7, sizeof bits);
        ck_assert_int_gt(msl_reach_make(&reach, &t.cutting, most), 0);
        ck_assert_int_eq(reach.most, most);
        ck_assert(bits[0] == BESIDE && bits[1 + most / 64 + 1] == BESIDE);
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
    ck_assert_int_eq(reach.most, -1);
    ck_assert_int_eq(msl_reach_up(&reach, 0), 0);
    ck_assert_int_eq(msl_reach_up(&reach, 11), 11);
}
END_TEST

/* Three words: a cost of 191 is put in once, one of 40 as 40, 80 and 160; one of 192 is beyond. */
START_TEST(a_table_takes_a_step_a_word)
{
    uint64_t bits[3];
    struct msl_reach reach = { bits, -1 };
    struct tiny t;
    tiny_start(&t);
    t.cutting.way_count = 2;
    t.ways[0].cost = 192;
    t.ways[1].cost = 40;
    ck_assert_int_eq(msl_reach_make(&reach, &t.cutting, 191), 3 * 3);
    t.ways[0].cost = 191;
    ck_assert_int_eq(msl_reach_make(&reach, &t.cutting, 191), 4 * 3);
    ck_assert_int_eq(msl_reach_up(&reach, 161), 191);
    t.ways[0].cost = 63;
    t.ways[1].cost = 65;
    msl_reach_make(&reach, &t.cutting, 191);
    ck_assert_int_eq(msl_reach_up(&reach, 127), 128); /* a digit that goes from word to word */
}
END_TEST

/* A master that says what the test wants: two sizes, two ways at 6, worths with 4 bits. Before and behind each array
 * lies what would spoil a bound. */
struct said {
    struct tiny t;
    struct msl_master master;
    struct msl_limit limits[4];
    int64_t worth[4];
    int64_t fixed[4];
    int64_t way_worth[6];
    int64_t most_of[4];
    struct msl_reach none;
};

static void said_start(struct said *s)
{
    memset(s, 0, sizeof *s);
    tiny_start(&s->t);
    s->t.cutting.size_count = s->t.cutting.way_count = 2;
    s->t.ways[0].cost = s->t.ways[1].cost = 6;
    s->none.most = -1;
    for (int32_t i = 0; i < 4; i += 3) {
        s->limits[i].wanted = s->worth[i] = 1000000;
        s->most_of[i] = 1000000;
    }
    s->way_worth[0] = s->way_worth[5] = 1000000;
    s->fixed[1] = s->fixed[2] = 6 << 4;
    s->master.cutting = &s->t.cutting;
    s->master.limits = s->limits + 1;
    s->master.worth = s->worth + 1;
    s->master.way_fixed = s->fixed + 1;
    s->master.way_worth = s->way_worth + 1;
    s->master.row_count = 2;
    s->master.bits = 4;
}

static int64_t bound_said(const struct said *s, int64_t below)
{
    return msl_bound(&s->master, s->most_of + 1, 1000, below, &s->none);
}

/* So many of the second size are wanted, which is worth so much in the second way only. */
static int64_t bound_of(int64_t wanted, int64_t worth, int64_t most_of, int64_t below)
{
    struct said s;
    said_start(&s);
    s.limits[2].wanted = wanted;
    s.worth[2] = worth;
    s.way_worth[1 + 3] = worth;
    s.most_of[2] = most_of;
    return bound_said(&s, below);
}

START_TEST(worths_prove_what_they_can)
{
    /* 10 x 32 / 16 = 20; three in a thing are worth just its cost */
    ck_assert_int_eq(bound_of(10, 32, 96, 100), 20);
    ck_assert_int_eq(bound_of(10, 31, 93, 100), 20); /* 19.375, up */
    ck_assert_int_eq(bound_of(10, 32, 96, 20), 20);
    ck_assert_int_eq(bound_of(10, 32, 96, 15), 15);
    ck_assert_int_eq(bound_of(1, 17, 96, 100), 2); /* 17 / 16 = 1.06, up */
    ck_assert_int_eq(bound_of(1, 16, 96, 100), 1);
    /* worth 2 more of 96 than it costs: 320 - 2 x 24 / 6 = 312 of 16: 19.5 */
    ck_assert_int_eq(bound_of(10, 32, 98, 25), 20);
    ck_assert_int_eq(bound_of(10, 32, 98, 100), 18); /* 320 - 33 = 287: 17.9 */
    ck_assert_int_eq(bound_of(10, 1, 2000, 100), 0);
    ck_assert_int_eq(bound_of(10, 32, INT64_MAX / 2, 100), 0);
    ck_assert_int_eq(bound_of(10, 1001, 96, 100), 0); /* worth more than pricing looked at */
    ck_assert_int_eq(bound_of(10, 1000, 96, 1000), 625); /* and just as much */
    ck_assert_int_eq(bound_of(INT64_MAX / 4, 1000, 96, 1000), 1000); /* 2^61 x 62.5 */
}
END_TEST

/* Worth 1 more of 96 than it costs, all is by less than below / 6: of 320, 305 are above 19 x 16, 304 are 19 x 16. */
START_TEST(what_is_lost_is_rounded_up)
{
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 89), 20); /* 14.8: 15 */
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 90), 20); /* 15 */
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 91), 19); /* 15.2: 16 */
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 92), 19);
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 96), 19); /* 16 */
    ck_assert_int_eq(bound_of(10, 32, 97, 1 + 97), 19); /* 16.2: 17, 303 */
}
END_TEST

/* The way that is worth most more than it costs counts, wherever it is; one that is worth less gives nothing back. */
START_TEST(the_worst_way_counts)
{
    struct said s;
    said_start(&s);
    s.limits[1].wanted = 10;
    s.worth[1] = s.way_worth[1] = 32;
    ck_assert_int_eq(bound_said(&s, 1 + 91), 20);
    s.most_of[1] = 97;
    ck_assert_int_eq(bound_said(&s, 1 + 91), 19);
    s.most_of[2] = 96 + 2; /* 30.3: 31 of 320 are lost, which leaves 289: 18.06 */
    ck_assert_int_eq(bound_said(&s, 1 + 91), 19);
    s.most_of[2] = 96 + 3; /* 45.5: 46, 274: 17.1 */
    ck_assert_int_eq(bound_said(&s, 1 + 91), 18);
    s.most_of[1] = s.most_of[2] = 0;
    s.fixed[2] = INT64_MAX / 4;
    ck_assert_int_eq(bound_said(&s, 1 + 91), 20);
    s.way_worth[1] = 1001;
    ck_assert_int_eq(bound_said(&s, 1 + 91), 0);
    struct msl_wide all = msl_worth_of_all(&s.master);
    ck_assert(all.high == 0 && all.low == 320);
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

/* Ways at 10 and 11 for 100: pieces of 10 are worth 1; three of 15 come to 4.5, and with one bit of 3 halves each. */
START_TEST(plain_bounds_are_rounded_up)
{
    struct tiny t;
    int64_t worths[2];
    for (int32_t first = 0; first < 2; first++) {
        tiny_start(&t);
        tiny_size(&t, 5, 2, 3, 0);
        tiny_stock(&t, 10, 10, 9, 11);
        tiny_stock(&t, 10, 10, 9, 11);
        t.ways[first].cost = 10;
        t.cutting.way_count = 2;
        ck_assert_int_eq(msl_plain_bound(&t.cutting, 4, worths), 3);
        ck_assert_int_eq(worths[0], 16);
        t.sizes[0].across = 15;
        t.sizes[0].along = 1;
        ck_assert_int_eq(msl_plain_bound(&t.cutting, 1, worths), 5);
        ck_assert_int_eq(worths[0], 3);
        t.sizes[0].turned_across = t.sizes[0].turned_along = 1; /* a tenth, and so nothing in halves */
        ck_assert_int_eq(msl_plain_bound(&t.cutting, 1, worths), 0);
        ck_assert_int_eq(msl_plain_bound(&t.cutting, 4, worths), 1);
        ck_assert_int_eq(worths[0], 1);
        t.ways[2].cost = 1; /* not of this cutting */
        ck_assert_int_eq(msl_plain_bound(&t.cutting, 4, worths), 1);
    }
}
END_TEST

/* Two stocks of 6 x 5 and 4 x 4, and pieces of 3 x 2. What lies beside the arrays is far too much, or too little. */
static int suffices(int64_t one, int64_t other, int64_t count)
{
    static struct msl_way ways[6];
    static struct msl_piece_size sizes[4];
    static int64_t available[4];
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 1, 1, 1, 0);
    tiny_size(&t, 3, 2, count, 0);
    tiny_stock(&t, 6, 5, one, 1);
    tiny_stock(&t, 4, 4, other, 1);
    memcpy(ways + 1, t.ways, 4 * sizeof ways[0]);
    memcpy(sizes + 1, t.sizes, 2 * sizeof sizes[0]);
    memcpy(available + 1, t.available, 2 * sizeof available[0]);
    ways[0].across = ways[5].across = 1000;
    ways[0].along = ways[5].along = 1000;
    ways[5].stock = 1;
    sizes[0] = sizes[3] = sizes[2];
    sizes[0].count = sizes[3].count = 1000;
    available[0] = available[3] = INT64_MAX;
    t.cutting.ways = ways + 1;
    t.cutting.sizes = sizes + 1;
    t.cutting.available = available + 1;
    return msl_area_suffices(&t.cutting);
}

START_TEST(stock_suffices_by_its_area)
{
    for (int64_t one = 0; one < 5; one++)
        for (int64_t other = 0; other < 5; other++)
            for (int64_t count = 1; count < 40; count++)
                ck_assert_int_eq(suffices(one, other, count), 30 * one + 16 * other >= 1 + 6 * count);
    ck_assert(suffices(5, 0, 24)); /* 150 of 145 */
    ck_assert(suffices(1, INT64_MAX, 1000));
}
END_TEST

/* 30 and 7 x 30 are 240 just: 16 x 15; a stock that no way cuts gives nothing; any number of pieces suffices always. */
START_TEST(area_at_its_ends)
{
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 6, 5, 1, 0);
    tiny_size(&t, 5, 6, 7, 0);
    tiny_stock(&t, 4, 4, 15, 1);
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 1);
    t.available[0] = 14;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 0);
    t.available[0] = 15;
    t.cutting.stock_count = 2;
    t.available[1] = 1000;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 1);
    t.sizes[1].count = 6;
    t.available[0] = 14;
    t.available[1] = 1000;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 1); /* 224 of 210 */
    t.available[0] = 13;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 0);
    t.sizes[0].across = t.sizes[0].along = (int64_t)1 << 30;
    t.sizes[0].count = (int64_t)1 << 33;
    t.available[0] = INT64_MAX - 1; /* 2^63 x 16 of 2^93 */
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 0);
    t.available[0] = INT64_MAX;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 1);
    t.cutting.stock_count = 0;
    ck_assert_int_eq(msl_area_suffices(&t.cutting), 1);
}
END_TEST

Suite *cutplan_bound_suite(void)
{
    Suite *suite = suite_create("cutplan_bound");
    TCase *tcase = tcase_create("bound");
    tcase_add_test(tcase, sums_of_costs);
    tcase_add_test(tcase, a_table_too_large_is_none);
    tcase_add_test(tcase, a_table_takes_a_step_a_word);
    tcase_add_test(tcase, worths_prove_what_they_can);
    tcase_add_test(tcase, what_is_lost_is_rounded_up);
    tcase_add_test(tcase, the_worst_way_counts);
    tcase_add_test(tcase, area_proves_the_plain_bound);
    tcase_add_test(tcase, plain_bounds_are_rounded_up);
    tcase_add_test(tcase, stock_suffices_by_its_area);
    tcase_add_test(tcase, area_at_its_ends);
    suite_add_tcase(suite, tcase);
    return suite;
}
