/* test_cutplan_repair.c - parts of a plan planned anew: what is taken out, what is looked for it in, what is put back.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_making.h"

Suite *cutplan_repair_suite(void);

/* A search that is about to repair. */
static struct msl_workshop *open_repair(const struct tiny *t, int64_t last_price)
{
    static struct muslin_allocator memory;
    static struct msl_watch watch = { NULL, NULL, 1000000, 0 };
    muslin_allocator_libc(&memory);
    struct msl_workshop *workshop = msl_workshop_open(&t->cutting, &watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    struct msl_search *whole = &workshop->whole;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        whole->making.wanted[i] = t->sizes[i].count;
    whole->making.best.cost = last_price / 16;
    whole->making.first_steps = INT64_MAX / 2;
    workshop->master.bits = 20;
    whole->first_price = workshop->repair.part.first_price = 4 * t->ways[0].cost;
    whole->last_price = workshop->repair.part.last_price = last_price;
    workshop->repair.part.making.first_steps = INT64_MAX / 2;
    msl_reach_make(whole->reach, whole->cutting, 1000);
    return workshop;
}

/* Puts so many strips of a way with these into the plan that is begun. */
static void put_strips(struct msl_search *whole, int32_t way, int64_t height, const int32_t *sizes,
                       const int32_t *counts, int32_t kinds, int64_t times)
{
    const int32_t made = msl_pool_add(&whole->pool, way, height, sizes, counts, kinds);
    ck_assert_int_ge(made, 0);
    ck_assert_int_eq(msl_plan_put(&whole->making, made, times), 1);
}

/* One of each size, i, in a strip of its own, way i, so many times. */
static struct msl_workshop *one_a_strip(struct tiny *t, int32_t sizes, int64_t times)
{
    const int32_t one[1] = { 1 };
    tiny_start(t);
    for (int32_t i = 0; i < sizes; i++)
        tiny_size(t, 10, 40 - i, times, 0);
    tiny_bolt(t, 10);
    struct msl_workshop *workshop = open_repair(t, INT64_C(1) << 40);
    msl_plan_begin(&workshop->whole.making);
    for (int32_t i = 0; i < sizes; i++)
        put_strips(&workshop->whole, i, 40 - i, &i, one, 1, times);
    ck_assert_int_eq(msl_plan_end(&workshop->whole.making, 1), 1);
    return workshop;
}

static int64_t pieces_out(const struct msl_repair *repair)
{
    int64_t pieces = 0;
    for (int32_t i = 0; i < repair->cutting.size_count; i++)
        pieces += repair->cutting.sizes[i].count;
    return pieces;
}

/* Five strips at first, one more at each try up to twenty, and then from five on again. */
START_TEST(so_many_strips_are_taken_out)
{
    struct tiny t;
    struct msl_workshop *workshop = one_a_strip(&t, 1, 1000);
    for (int64_t tries = 0; tries < 40; tries++) {
        ck_assert_int_eq(workshop->repair.tries, tries);
        ck_assert_int_eq(msl_repair(&workshop->whole, &workshop->repair), 0);
        ck_assert_int_eq(pieces_out(&workshop->repair), 5 + tries % 16);
        ck_assert_int_eq(workshop->whole.making.best.cost, 40000);
        ck_made_plan(&t, &workshop->whole.making, NULL);
    }
    msl_workshop_close(workshop);
}
END_TEST

/* Of six strips no more than these are taken out. */
START_TEST(no_more_is_taken_out_than_there_is)
{
    struct tiny t;
    struct msl_workshop *workshop = one_a_strip(&t, 2, 3);
    for (int64_t tries = 0; tries < 40; tries++) {
        ck_assert_int_eq(msl_repair(&workshop->whole, &workshop->repair), 0);
        ck_assert_int_le(pieces_out(&workshop->repair), 6);
        ck_assert_int_ge(pieces_out(&workshop->repair), 2);
        ck_made_plan(&t, &workshop->whole.making, NULL);
    }
    msl_workshop_close(workshop);
}
END_TEST

/* Sixteen times whatever it is, then sixteen times nothing that is eight ways or more from the first that was taken; so
 * all lie within fourteen ways, seven to either side. A part is looked for in strips just as high as its own sizes. */
START_TEST(what_is_near_is_taken_out_every_second_time)
{
    enum { SIZES = 30 };
    struct tiny t;
    int64_t widest[2] = { 0, 0 };
    int64_t farthest = 0; /* way of the first of those near each other */
    int32_t to_both_sides = 0;
    struct msl_workshop *workshop = one_a_strip(&t, SIZES, 40);
    const struct msl_repair *repair = &workshop->repair;
    for (int64_t tries = 0; tries < 640; tries++) {
        msl_repair(&workshop->whole, &workshop->repair);
        const int32_t sizes = repair->cutting.size_count;
        const int64_t wide = repair->size_of[sizes - 1] - repair->size_of[0];
        ck_assert_int_eq(pieces_out(repair) <= 5 + tries % 16, 1);
        if (tries >= 32)
            widest[tries / 16 % 2] = msl_greater(widest[tries / 16 % 2], wide);
        if (tries / 16 % 2)
            farthest = msl_greater(farthest, repair->size_of[0]);
        to_both_sides += tries / 16 % 2 && wide > 8;
        ck_assert_int_eq(repair->cutting.way_count, sizes);
        for (int32_t i = 0; i < sizes; i++) {
            ck_assert_int_eq(repair->cutting.sizes[i].along, 40 - repair->size_of[i]);
            ck_assert_int_eq(repair->cutting.ways[i].along, repair->cutting.sizes[i].along);
            ck_assert_int_eq(repair->way_of[i], repair->size_of[i]);
        }
    }
    ck_assert_int_gt(widest[0], 20);
    ck_assert_int_le(widest[1], 14);
    ck_assert_int_gt(to_both_sides, 80); /* of 320 */
    ck_assert_int_gt(farthest, 15);
    msl_workshop_close(workshop);
}
END_TEST

/* Four strips within a sheet count as one strip more than its first: the sheet as two. */
START_TEST(sheets_count_by_their_strips)
{
    struct tiny t;
    const int32_t sizes[1] = { 0 };
    const int32_t counts[1] = { 1 };
    tiny_start(&t);
    tiny_size(&t, 10, 5, 4 * 200, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 20, 200, 3);
    t.cutting.way_count = 1;
    struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 40);
    struct msl_search *whole = &workshop->whole;
    msl_plan_begin(&whole->making);
    ck_assert_int_eq(msl_pool_begin(&whole->pool, 0), 1);
    for (int32_t strip = 0; strip < 4; strip++) {
        const struct msl_laid laid = { .size = sizes[0], .count = counts[0] };
        ck_assert(msl_pool_strip(&whole->pool, 5) && msl_pool_lay(&whole->pool, laid));
    }
    ck_assert_int_eq(msl_plan_put(&whole->making, whole->pool.pattern_count - 1, 200), 1);
    ck_assert_int_eq(msl_plan_end(&whole->making, 1), 1);
    for (int64_t tries = 0; tries < 20; tries++) {
        const int64_t wanted = 5 + tries % 16;
        ck_assert_int_eq(msl_repair(whole, &workshop->repair), 0);
        ck_assert_int_eq(pieces_out(&workshop->repair), 4 * ((wanted + 1) / 2));
        ck_assert_int_eq(workshop->repair.cutting.available[0], (wanted + 1) / 2);
        ck_made_plan(&t, &whole->making, NULL);
    }
    msl_workshop_close(workshop);
}
END_TEST

/* Ten each of 11 and 9 wide lie together in ten strips of 20, or sheets of two strips; apart they take fifteen. What is
 * planned anew comes to ten at last, each time to less or to nothing better, and always to all pieces. */
static void repair_to(struct tiny *t, struct msl_workshop *workshop, int64_t cost)
{
    struct msl_making *making = &workshop->whole.making;
    int64_t best = making->best.cost;
    for (int32_t tries = 0; tries < 60 && best > cost; tries++) {
        const int better = msl_repair(&workshop->whole, &workshop->repair);
        ck_assert_int_eq(better, making->best.cost < best);
        ck_assert_int_le(making->best.cost, best);
        best = making->best.cost;
        ck_made_plan(t, making, NULL);
    }
    ck_assert_int_eq(best, cost);
}

static void two_widths(struct tiny *t)
{
    tiny_start(t);
    tiny_size(t, 11, 5, 10, 0);
    tiny_size(t, 9, 5, 10, 0);
}

START_TEST(strips_apart_come_together)
{
    static const int32_t sizes[2] = { 0, 1 };
    static const int32_t counts[2] = { 1, 2 };
    for (int32_t stacked = 0; stacked < 2; stacked++) {
        struct tiny t;
        two_widths(&t);
        tiny_bolt(&t, 20);
        t.cutting.stacked = stacked;
        struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
        msl_plan_begin(&workshop->whole.making);
        put_strips(&workshop->whole, 0, 5, &sizes[0], &counts[0], 1, 10);
        put_strips(&workshop->whole, 0, 5, &sizes[1], &counts[1], 1, 5);
        ck_assert_int_eq(msl_plan_end(&workshop->whole.making, 1), 1);
        ck_assert_int_eq(workshop->whole.making.best.cost, 75);
        repair_to(&t, workshop, 50);
        msl_workshop_close(workshop);
    }
}
END_TEST

START_TEST(sheets_apart_come_together)
{
    static const int32_t sizes[2] = { 0, 1 };
    static const int32_t counts[2] = { 1, 2 };
    struct tiny t;
    two_widths(&t);
    tiny_heights(&t);
    tiny_stock(&t, 20, 10, 15, 2);
    t.cutting.way_count = 1;
    struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
    msl_plan_begin(&workshop->whole.making);
    put_strips(&workshop->whole, 0, 5, &sizes[0], &counts[0], 1, 10);
    put_strips(&workshop->whole, 0, 5, &sizes[1], &counts[1], 1, 5);
    ck_assert_int_eq(msl_plan_end(&workshop->whole.making, 1), 1);
    ck_assert_int_eq(workshop->whole.making.best.cost, 2 * 15);
    repair_to(&t, workshop, 2 * 5);
    msl_workshop_close(workshop);
}
END_TEST

/* Of 12: 6 + 3 + 3 and 5 + 4 + 3 fill strips. From the widest down they are laid as 6 + 5, 4 + 3 + 3 and 3; only cases
 * find the others. Strips, or sheets of one strip each. */
START_TEST(cases_find_what_first_plans_do_not)
{
    static const int32_t sizes[4] = { 0, 1, 2, 3 };
    static const int32_t first[2] = { 1, 1 };
    static const int32_t second[2] = { 1, 2 };
    static const int32_t third[1] = { 1 };
    for (int sheets = 0; sheets < 2; sheets++) {
        struct tiny t;
        tiny_start(&t);
        tiny_size(&t, 6, 5, 2, 0);
        tiny_size(&t, 5, 5, 2, 0);
        tiny_size(&t, 4, 5, 2, 0);
        tiny_size(&t, 3, 5, 6, 0);
        tiny_heights(&t);
        if (sheets)
            tiny_stock(&t, 12, 5, 9, 5);
        else
            tiny_bolt(&t, 12);
        t.cutting.way_count = 1;
        struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
        msl_plan_begin(&workshop->whole.making);
        put_strips(&workshop->whole, 0, 5, &sizes[0], first, 2, 2);
        put_strips(&workshop->whole, 0, 5, &sizes[2], second, 2, 2);
        put_strips(&workshop->whole, 0, 5, &sizes[3], third, 1, 2);
        ck_assert_int_eq(msl_plan_end(&workshop->whole.making, 1), 1);
        ck_assert_int_eq(workshop->whole.making.best.cost, 6 * 5);
        repair_to(&t, workshop, 4 * 5);
        msl_workshop_close(workshop);
    }
}
END_TEST

/* Where pool or plan have no more room nothing is put back, and the plan stays as it is. */
START_TEST(without_room_the_plan_stays)
{
    static const int32_t sizes[2] = { 0, 1 };
    static const int32_t counts[2] = { 1, 2 };
    for (int which = 0; which < 8; which++) {
        const int sheets = which / 4;
        struct tiny t;
        two_widths(&t);
        tiny_heights(&t);
        if (sheets)
            tiny_stock(&t, 20, 10, 15, 2);
        else
            tiny_bolt(&t, 20);
        t.cutting.way_count = 1;
        struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
        struct msl_making *making = &workshop->whole.making;
        struct msl_pool *pool = making->pool;
        msl_plan_begin(making);
        put_strips(&workshop->whole, 0, 5, &sizes[0], &counts[0], 1, 10);
        put_strips(&workshop->whole, 0, 5, &sizes[1], &counts[1], 1, 5);
        ck_assert_int_eq(msl_plan_end(making, 1), 1);
        const int64_t cost = making->best.cost;
        if (which % 4 == 0)
            pool->most_patterns = pool->pattern_count;
        else if (which % 4 == 1)
            pool->most_strips = pool->strip_count;
        else if (which % 4 == 2)
            pool->most_laid = pool->laid_count;
        else
            making->plan.most = 2;
        for (int32_t tries = 0; tries < 20; tries++) {
            ck_assert_int_eq(msl_repair(&workshop->whole, &workshop->repair), 0);
            ck_assert_int_eq(making->best.cost, cost);
            ck_assert_int_eq(pool->pattern_count, 2);
            ck_assert_int_eq(pool->strip_count, 2);
            ck_assert_int_eq(pool->laid_count, 2);
            ck_made_plan(&t, making, NULL);
        }
        msl_workshop_close(workshop);
    }
}
END_TEST

/* Four borders 3 x 30 and squares of 5, of 20: panels cut like one strip are two of 30, each with two borders and two
 * squares; 8 squares more take two strips. */
START_TEST(all_is_planned_across)
{
    struct tiny t;
    const struct msl_way panel = { 30, 20, 30, 1, 1, -1, 0 };
    tiny_start(&t);
    t.ways[t.cutting.way_count++] = panel;
    tiny_size(&t, 5, 5, 12, 0);
    tiny_bolt(&t, 20);
    tiny_size(&t, 3, 30, 4, 0)->slit = 1;
    struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
    ck_assert_int_eq(msl_repair_across(&workshop->whole, &workshop->repair), 1);
    ck_made_plan(&t, &workshop->whole.making, NULL);
    /* one panel has room for four borders, 12 of 20, and one square: 30 and 11 squares, three strips */
    ck_assert_int_eq(workshop->whole.making.best.cost, 30 + 3 * 5);
    for (int32_t i = 0; i < workshop->repair.cutting.way_count; i++)
        ck_assert(!workshop->repair.cutting.ways[i].sheet && !workshop->repair.cutting.ways[i].panel);
    ck_assert_int_eq(msl_repair_across(&workshop->whole, &workshop->repair), 0);
    msl_workshop_close(workshop);
}
END_TEST

/* ---- levels rounded ---------------------------------------------------------------------------------------------- */

/* The master has so many eighths of a strip, or of a sheet, of one piece, and a slack; what lies behind is not its own.
 * Returns how many the plan begins with. */
static int64_t rounded(struct msl_workshop *workshop, int64_t eighths)
{
    struct msl_search *whole = &workshop->whole;
    struct msl_master *master = &workshop->master;
    const struct msl_plan *plan = &whole->making.plan;
    int64_t times = 0;
    master->basis[0].column = 0;
    master->basis[0].against = 0;
    master->level[0] = eighths << (master->point - 3);
    master->basis[1].column = -1;
    master->basis[2].column = 0;
    master->basis[2].against = 0;
    master->level[1] = master->level[2] = (int64_t)2 << master->point;
    master->row_count = 2;
    whole->making.best.cost = INT64_C(1) << 40; /* so that any plan is better */
    msl_repair_rounded(whole, &workshop->repair);
    for (int32_t i = 0; i < plan->count; i++)
        times += plan->rows[i].pattern == 0 ? plan->rows[i].times : 0;
    return times;
}

static struct msl_workshop *open_rounding(struct tiny *t, int sheet)
{
    const int32_t sizes[1] = { 0 };
    const int32_t counts[1] = { 1 };
    tiny_start(t);
    tiny_size(t, 10, 10, 9, 0);
    if (sheet) {
        tiny_heights(t);
        tiny_stock(t, 10, 10, 9, 3);
        t->cutting.way_count = 1;
    } else {
        tiny_bolt(t, 10);
    }
    struct msl_workshop *workshop = open_repair(t, INT64_C(1) << 30);
    msl_pool_add(&workshop->whole.pool, 0, 10, sizes, counts, 1);
    return workshop;
}

/* Whole levels stay; of what is beyond, sheets are rounded up or down by chance, strips by all of chance at the first
 * of four tries, then a half, a quarter and an eighth of it: so seven eighths go up at the last at most. */
START_TEST(levels_are_rounded_by_chance)
{
    for (int sheet = 0; sheet < 2; sheet++) {
        struct tiny t;
        int32_t ups[4] = { 0, 0, 0, 0 };
        struct msl_workshop *workshop = open_rounding(&t, sheet);
        for (int64_t tries = 0; tries < 160; tries++) {
            const int64_t eighths = tries / 4 % 8;
            ck_assert_int_eq(workshop->repair.tries, tries);
            const int64_t times = rounded(workshop, 8 * 3 + eighths);
            ck_assert_int_ge(times, 3);
            ck_assert_int_le(times, 3 + (eighths > 0));
            if (!sheet && eighths < 8 - (8 >> tries % 4))
                ck_assert_int_eq(times, 3);
            ups[tries % 4] += times > 3;
        }
        for (int32_t i = 0; i < 4; i++)
            ck_assert(ups[i] > 0 || (!sheet && i > 2));
        msl_workshop_close(workshop);
    }
}
END_TEST

/* Where there are panels, strips are left to the rest: of the pattern that the master has nothing is begun with. */
START_TEST(strips_beside_panels_are_not_rounded)
{
    struct tiny t;
    const int32_t sizes[1] = { 0 };
    const int32_t counts[1] = { 1 };
    const struct msl_way panel = { 30, 10, 30, 1, 1, -1, 0 };
    for (int panels = 0; panels < 2; panels++) {
        tiny_start(&t);
        if (panels)
            t.ways[t.cutting.way_count++] = panel;
        tiny_size(&t, 10, 10, 9, 0);
        tiny_bolt(&t, 10);
        struct msl_workshop *workshop = open_repair(&t, INT64_C(1) << 30);
        msl_pool_add(&workshop->whole.pool, panels, 10, sizes, counts, 1);
        const int64_t times = rounded(workshop, 8 * 3);
        ck_assert_int_eq(times, panels ? 0 : 3);
        msl_workshop_close(workshop);
    }
}
END_TEST

/* No more than are wanted, or than the stock has. */
START_TEST(levels_are_no_more_than_is_wanted)
{
    for (int sheet = 0; sheet < 2; sheet++) {
        struct tiny t;
        struct msl_workshop *workshop = open_rounding(&t, sheet);
        ck_assert_int_eq(rounded(workshop, 8), 1);
        ck_assert_int_eq(rounded(workshop, 8 * 30), 9);
        t.available[0] = 4; /* as many as are left of nine */
        ck_assert_int_eq(rounded(workshop, 8 * 30), sheet ? 4 : 9);
        t.available[0] = 0;
        ck_assert_int_eq(rounded(workshop, 8 * 30), sheet ? 0 : 9);
        msl_workshop_close(workshop);
    }
}
END_TEST

Suite *cutplan_repair_suite(void)
{
    Suite *suite = suite_create("cutplan_repair");
    TCase *tcase = tcase_create("repair");
    tcase_add_test(tcase, so_many_strips_are_taken_out);
    tcase_add_test(tcase, no_more_is_taken_out_than_there_is);
    tcase_add_test(tcase, what_is_near_is_taken_out_every_second_time);
    tcase_add_test(tcase, sheets_count_by_their_strips);
    tcase_add_test(tcase, strips_apart_come_together);
    tcase_add_test(tcase, sheets_apart_come_together);
    tcase_add_test(tcase, cases_find_what_first_plans_do_not);
    tcase_add_test(tcase, without_room_the_plan_stays);
    tcase_add_test(tcase, all_is_planned_across);
    tcase_add_test(tcase, levels_are_rounded_by_chance);
    tcase_add_test(tcase, strips_beside_panels_are_not_rounded);
    tcase_add_test(tcase, levels_are_no_more_than_is_wanted);
    suite_add_tcase(suite, tcase);
    return suite;
}
