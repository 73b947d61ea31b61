/* test_cutplan_effort.c - how good plans are, and in how many steps.
 *
 * SPDX-License-Identifier: MIT
 *
 * A plan may become better and a search quicker, never worse: every figure here is a most, taken once from lists drawn
 * by chance. Where a change makes some of them better and others worse, new ones are taken, and its reason told. That
 * plans and bounds are right is shown elsewhere. No call draws two numbers: compilers differ in which comes first. */
#include "test_cutplan.h"

enum { LIMITS = 3 };

static const int64_t limits[LIMITS] = { 0, 20000, 200000 };
static const uint64_t lists[LIMITS] = { 200, 60, 30 };

/* Of all lists of a kind together. */
struct effort {
    int64_t cost[LIMITS]; /* with so few steps */
    int64_t gap;          /* between plans and bounds, with most of them */
    int64_t work;
};

static void chance_sizes(struct tiny *t, uint64_t *seed, int turn)
{
    tiny_start(t);
    for (int64_t i = 3 + tiny_chance(seed, 6); i > 0; i--) {
        const int64_t across = 6 + tiny_chance(seed, 30);
        const int64_t along = 6 + tiny_chance(seed, 40);
        const int64_t count = 1 + tiny_chance(seed, 30);
        tiny_size(t, across, along, count, turn && tiny_chance(seed, 2) == 0);
    }
}

static void from_bolt(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 1);
    tiny_bolt(t, 90 + tiny_chance(seed, 60));
}

static void in_own_strips(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 1);
    t->cutting.one_size = 1;
    tiny_bolt(t, 90 + tiny_chance(seed, 60));
}

static void in_stacks(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 1);
    t->cutting.stacked = 1;
    tiny_bolt(t, 90 + tiny_chance(seed, 60));
}

static void sloped(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 0);
    for (int32_t i = 0; i < t->cutting.size_count; i++) {
        t->sizes[i].run_in = tiny_chance(seed, 6);
        t->sizes[i].level = tiny_chance(seed, 3) == 0;
    }
    tiny_bolt(t, 90 + tiny_chance(seed, 60));
}

static void beside_borders(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 1);
    const int64_t across = 90 + tiny_chance(seed, 60);
    int64_t length[2];
    for (int32_t i = 0; i < 2; i++) {
        length[i] = i == 0 ? 160 + tiny_chance(seed, 30) : 100 + tiny_chance(seed, 50);
        const struct msl_way panel = { length[i], across, length[i], 1, 1, -1, 0 };
        t->ways[t->cutting.way_count++] = panel;
    }
    tiny_bolt(t, across);
    for (int32_t i = 0; i < 2; i++)
        tiny_size(t, 5 + tiny_chance(seed, 10), length[i], 2, 0)->slit = 1;
}

/* Stock with sides from `side` to below `side` + `more`. */
static void have(struct tiny *t, uint64_t *seed, int64_t side, int64_t more, int64_t available, int64_t cost)
{
    const int64_t across = side + tiny_chance(seed, more);
    const int64_t along = side + tiny_chance(seed, more);
    tiny_stock(t, across, along, available, cost);
}

static void from_stock(struct tiny *t, uint64_t *seed)
{
    chance_sizes(t, seed, 1);
    tiny_heights(t);
    have(t, seed, 90, 60, INT64_MAX, 90);
    have(t, seed, 50, 30, 3, 30);
}

static void from_little_stock(struct tiny *t, uint64_t *seed)
{
    tiny_start(t);
    for (int64_t i = 2 + tiny_chance(seed, 3); i > 0; i--) {
        const int64_t across = 6 + tiny_chance(seed, 20);
        const int64_t along = 6 + tiny_chance(seed, 20);
        const int64_t count = 1 + tiny_chance(seed, 3);
        tiny_size(t, across, along, count, tiny_chance(seed, 2) == 0);
    }
    tiny_heights(t);
    have(t, seed, 40, 20, INT64_MAX, 50);
    have(t, seed, 26, 14, 2, 17);
}

static void (*const kinds[])(struct tiny *, uint64_t *) = { from_bolt,      in_own_strips, in_stacks,        sloped,
                                                            beside_borders, from_stock,    from_little_stock };

enum { KINDS = (int)(sizeof kinds / sizeof kinds[0]) };

static struct effort effort_of(int kind)
{
    struct effort effort = { { 0 }, 0, 0 };
    for (int i = 0; i < LIMITS; i++)
        for (uint64_t list = 1; list <= lists[i]; list++) {
            uint64_t seed = 1000 * list;
            struct tiny t;
            struct msl_found found;
            kinds[kind](&t, &seed);
            ck_ok(tiny_search(&t, limits[i], &found));
            effort.cost[i] += found.cost;
            effort.gap += i == LIMITS - 1 ? found.cost - found.least : 0;
            effort.work += i == LIMITS - 1 ? found.work : 0;
            tiny_free(&found);
        }
    return effort;
}

static const struct effort most[KINDS] = {
    { { 86286, 25987, 12357 }, 128, 4783221 },
    { { 95517, 28824, 13819 }, 849, 5475317 },
    { { 86453, 25792, 12228 }, 181, 5308511 },
    { { 88694, 27773, 14017 }, 183, 3235908 },
    { { 113050, 34099, 15438 }, 1992, 6025762 },
    { { 72840, 22350, 10350 }, 960, 4800554 },
    { { 10516, 2577, 1228 }, 101, 740951 },
};

START_TEST(plans_are_as_good_in_as_few_steps)
{
    const struct effort effort = effort_of(_i);
    for (int i = 0; i < LIMITS; i++)
        ck_assert_int_le(effort.cost[i], most[_i].cost[i]);
    ck_assert_int_le(effort.gap, most[_i].gap);
    ck_assert_int_le(effort.work, most[_i].work);
}
END_TEST

Suite *cutplan_effort_suite(void)
{
    Suite *suite = suite_create("cutplan_effort");
    TCase *tcase = tcase_create("effort");
    tcase_set_timeout(tcase, 60);
    tcase_add_loop_test(tcase, plans_are_as_good_in_as_few_steps, 0, KINDS);
    suite_add_tcase(suite, tcase);
    return suite;
}
