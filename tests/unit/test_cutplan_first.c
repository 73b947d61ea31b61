/* test_cutplan_first.c - first plans, and fractions rounded down.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"

static struct msl_workshop *open_for(const struct tiny *t, const struct msl_watch *watch)
{
    static struct muslin_allocator memory;
    muslin_allocator_libc(&memory);
    struct msl_workshop *workshop = msl_workshop_open(&t->cutting, watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    struct msl_making *making = &workshop->whole.making;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        making->wanted[i] = t->sizes[i].count;
    making->best.cost = 1000000;
    return workshop;
}

/* 6 squares of 5 and 3 of 4, of 20: 4 of 5 fill a strip; the other two leave room for two of 4, and one is left over:
 * strips of 5, 5 and 4. */
START_TEST(high_pieces_begin_strips_and_lower_ones_fill_them)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0 };
    tiny_start(&t);
    tiny_size(&t, 4, 4, 3, 1);
    tiny_size(&t, 5, 5, 6, 1);
    tiny_bolt(&t, 20);
    struct msl_workshop *workshop = open_for(&t, &watch);
    msl_plan_first(&workshop->whole.making);
    ck_assert_int_eq(workshop->whole.making.best.cost, 14);
    msl_workshop_close(workshop);
}
END_TEST

/* A piece 30 x 4, of 20: it lies turned, in a strip of 30. */
START_TEST(a_long_piece_lies_turned)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0 };
    tiny_start(&t);
    tiny_size(&t, 30, 4, 5, 1);
    tiny_bolt(&t, 20);
    struct msl_workshop *workshop = open_for(&t, &watch);
    msl_plan_first(&workshop->whole.making);
    ck_assert_int_eq(workshop->whole.making.best.cost, 30);
    msl_workshop_close(workshop);
}
END_TEST

/* One piece of stock, two patterns with half of it each: only the first may be rounded up. */
START_TEST(rounding_keeps_to_the_stock)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0 };
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 1, 1 };
    tiny_start(&t);
    tiny_size(&t, 5, 10, 1, 0);
    tiny_size(&t, 5, 10, 1, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, 1, 3);
    struct msl_workshop *workshop = open_for(&t, &watch);
    struct msl_search *whole = &workshop->whole;
    struct msl_master *master = &workshop->master;
    for (int32_t row = 0; row < 2; row++) {
        int32_t made = msl_pool_add(&whole->pool, 0, 10, sizes, counts, 2);
        master->basis[row].column = made;
        master->basis[row].against = 0;
        master->level[row] = (int64_t)1 << (master->point - 1);
        master->worth[row] = 1;
    }
    master->row_count = 2;
    ck_assert_int_eq(msl_plan_round(&whole->making, master, 32), 1);
    ck_assert_int_eq(whole->making.best.cost, 3);
    ck_assert_int_eq(whole->making.best.count, 1);
    ck_assert_int_eq(whole->making.best.rows[0].times, 1);
    ck_assert_int_eq(msl_plan_round(&whole->making, master, 32), 0); /* not better */
    msl_workshop_close(workshop);
}
END_TEST

/* Surplus is dropped, strips get lower, and a strip of nothing but surplus goes. */
START_TEST(surplus_is_dropped_where_that_helps)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0 };
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 1, 1 };
    tiny_start(&t);
    tiny_size(&t, 5, 9, 1, 0);
    tiny_size(&t, 5, 4, 2, 0);
    tiny_bolt(&t, 10);
    struct msl_workshop *workshop = open_for(&t, &watch);
    struct msl_making *making = &workshop->whole.making;
    int32_t made = msl_pool_add(making->pool, 0, 9, sizes, counts, 2);
    msl_plan_begin(making);
    ck_assert_int_eq(msl_plan_put(making, made, 3), 1);
    ck_assert_int_eq(making->plan.cost, 27);
    ck_assert_int_eq(msl_plan_end(making, 1), 1);
    /* of three strips one stays as it is, one is as low as the second piece, one goes */
    ck_assert_int_eq(making->best.cost, 13);
    msl_workshop_close(workshop);
}
END_TEST

/* Borders 4 x 30, and pieces beside them, of 20: a panel of 30 and a strip for each height. */
static void two_borders(struct tiny *t, int64_t height)
{
    const struct msl_way panel = { 30, 20, 30, 1, 1, -1, 0 };
    const struct msl_way strip = { height, 20, height, 0, 0, -1, 0 };
    tiny_start(t);
    tiny_size(t, 4, 30, 2, 0)->slit = 1;
    tiny_size(t, 5, height, 6, 0);
    t->heights[0] = height;
    t->cutting.height_count = 1;
    t->ways[height > 30] = panel;
    t->ways[height < 30] = strip;
    t->cutting.way_count = 2;
}

static int64_t cost_of_first(const struct tiny *t, int32_t patterns, int32_t strips, int32_t laid)
{
    struct msl_watch watch = { NULL, NULL, 0 };
    struct msl_workshop *workshop = open_for(t, &watch);
    struct msl_making *making = &workshop->whole.making;
    making->pool->most_patterns = patterns;
    making->pool->most_strips = strips;
    making->pool->most_laid = laid;
    msl_plan_first(making);
    int64_t cost = making->best.count > 0 ? making->best.cost : -1;
    msl_workshop_close(workshop);
    return cost;
}

/* Two borders and two squares beside them take a panel, four squares a strip; where the squares are
 * higher than a panel, borders lie beside them in strips. With too little room for a panel's pattern there is no plan. */
START_TEST(panels_are_cut_like_strips)
{
    struct tiny t;
    two_borders(&t, 5);
    ck_assert_int_eq(cost_of_first(&t, 100, 100, 100), 35);
    ck_assert_int_eq(cost_of_first(&t, 0, 100, 100), -1);
    ck_assert_int_eq(cost_of_first(&t, 100, 0, 100), -1);
    ck_assert_int_eq(cost_of_first(&t, 100, 1, 100), -1);
    ck_assert_int_eq(cost_of_first(&t, 100, 100, 0), -1);
    ck_assert_int_eq(cost_of_first(&t, 100, 100, 1), -1);
    two_borders(&t, 40);
    ck_assert_int_eq(cost_of_first(&t, 100, 100, 100), 2 * 40);
}
END_TEST

/* The master has two patterns: one it has is cut once, one that must not be is not. */
START_TEST(sheets_are_rounded_by_chance)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 100000 };
    const int32_t sizes[1] = { 0 };
    const int32_t counts[1] = { 1 };
    tiny_start(&t);
    tiny_size(&t, 10, 10, 2, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, 2, 3);
    struct msl_workshop *workshop = open_for(&t, &watch);
    struct msl_search *whole = &workshop->whole;
    struct msl_master *master = &workshop->master;
    for (int32_t row = 0; row < 2; row++) {
        master->basis[row].column = msl_pool_add(&whole->pool, 0, 10, sizes, counts, 1);
        master->basis[row].against = row;
        master->level[row] = (int64_t)1 << master->point;
    }
    master->row_count = 2;
    master->bits = 20;
    whole->first_price = workshop->repair.part.first_price = 12;
    whole->last_price = workshop->repair.part.last_price = 1000;
    msl_reach_make(whole->reach, whole->cutting, 100);
    whole->making.best.cost = 7;
    ck_assert_int_eq(msl_repair_rounded(whole, &workshop->repair), 1);
    ck_assert_int_eq(whole->making.best.cost, 6);
    msl_workshop_close(workshop);
}
END_TEST

Suite *cutplan_first_suite(void)
{
    Suite *suite = suite_create("cutplan_first");
    TCase *tcase = tcase_create("first");
    tcase_add_test(tcase, high_pieces_begin_strips_and_lower_ones_fill_them);
    tcase_add_test(tcase, a_long_piece_lies_turned);
    tcase_add_test(tcase, rounding_keeps_to_the_stock);
    tcase_add_test(tcase, surplus_is_dropped_where_that_helps);
    tcase_add_test(tcase, panels_are_cut_like_strips);
    tcase_add_test(tcase, sheets_are_rounded_by_chance);
    suite_add_tcase(suite, tcase);
    return suite;
}
