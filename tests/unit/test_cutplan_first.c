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

Suite *cutplan_first_suite(void)
{
    Suite *suite = suite_create("cutplan_first");
    TCase *tcase = tcase_create("first");
    tcase_add_test(tcase, high_pieces_begin_strips_and_lower_ones_fill_them);
    tcase_add_test(tcase, a_long_piece_lies_turned);
    tcase_add_test(tcase, rounding_keeps_to_the_stock);
    tcase_add_test(tcase, surplus_is_dropped_where_that_helps);
    suite_add_tcase(suite, tcase);
    return suite;
}
