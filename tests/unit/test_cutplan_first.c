/* test_cutplan_first.c - first plans, and fractions rounded down.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_making.h"

/* 6 squares of 5 and 3 of 4, of 20: 4 of 5 fill a strip; the other two leave room for two of 4, and one is left over:
 * strips of 5, 5 and 4. */
START_TEST(high_pieces_begin_strips_and_lower_ones_fill_them)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    tiny_start(&t);
    tiny_size(&t, 4, 4, 3, 1);
    tiny_size(&t, 5, 5, 6, 1);
    tiny_bolt(&t, 20);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    msl_plan_first(&workshop->whole.making);
    ck_assert_int_eq(workshop->whole.making.best.cost, 14);
    msl_workshop_close(workshop);
}
END_TEST

/* A piece 30 x 4, of 20: it lies turned, in a strip of 30. */
START_TEST(a_long_piece_lies_turned)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    tiny_start(&t);
    tiny_size(&t, 30, 4, 5, 1);
    tiny_bolt(&t, 20);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
    msl_plan_first(&workshop->whole.making);
    ck_assert_int_eq(workshop->whole.making.best.cost, 30);
    msl_workshop_close(workshop);
}
END_TEST

/* One piece of stock, two patterns with half of it each: only the first may be rounded up. */
START_TEST(rounding_keeps_to_the_stock)
{
    struct tiny t;
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 1, 1 };
    tiny_start(&t);
    tiny_size(&t, 5, 10, 1, 0);
    tiny_size(&t, 5, 10, 1, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, 1, 3);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
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
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    const int32_t sizes[2] = { 0, 1 };
    const int32_t counts[2] = { 1, 1 };
    tiny_start(&t);
    tiny_size(&t, 5, 9, 1, 0);
    tiny_size(&t, 5, 4, 2, 0);
    tiny_bolt(&t, 10);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
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

static int64_t cost_of_first_in(const struct tiny *t, int32_t patterns, int32_t strips, int32_t laid, int64_t steps)
{
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    struct msl_workshop *workshop = tiny_open(t, &watch);
    struct msl_making *making = &workshop->whole.making;
    making->pool->most_patterns = patterns;
    making->pool->most_strips = strips;
    making->pool->most_laid = laid;
    making->first_steps = steps;
    msl_plan_first(making);
    int64_t cost = making->best.count > 0 ? making->best.cost : -1;
    msl_workshop_close(workshop);
    return cost;
}

static int64_t cost_of_first(const struct tiny *t, int32_t patterns, int32_t strips, int32_t laid)
{
    return cost_of_first_in(t, patterns, strips, laid, INT64_MAX / 2);
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
    struct msl_watch watch = { NULL, NULL, 100000, 0 };
    const int32_t sizes[1] = { 0 };
    const int32_t counts[1] = { 1 };
    tiny_start(&t);
    tiny_size(&t, 10, 10, 2, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, 2, 3);
    struct msl_workshop *workshop = tiny_open(&t, &watch);
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

/* ---- strip by strip ---------------------------------------------------------------------------------------------- */

enum { OWN, LEVEL, MIXED, RULES, PANEL = 11 };

/* The highest strip within a panel that fits, for what is not slit; any other strip is as high as its way. */
static int64_t strip_height(const struct tiny *t, int32_t way, const struct msl_piece_size *size)
{
    int64_t height = 0;
    if (!t->ways[way].panel || size->slit)
        return t->ways[way].along;
    for (int32_t h = 0; h < t->cutting.height_count; h++)
        if (t->heights[h] <= t->ways[way].along)
            height = msl_greater(height, t->heights[h]);
    return height;
}

static int64_t most_in(const struct tiny *t, int32_t way, const struct msl_piece_size *size, int64_t room)
{
    const int64_t taken = msl_taken_in(size, strip_height(t, way, size), NULL);
    int64_t most = 0;
    while (taken > 0 && size->run_in + (most + 1) * taken <= room)
        most++;
    return most;
}

/* As listed or turned, whichever is higher or lower. */
static int64_t own_height(const struct msl_piece_size *size, int high)
{
    if (size->turned_along == 0)
        return size->along;
    return high ? msl_greater(size->along, size->turned_along) : msl_lesser(size->along, size->turned_along);
}

/* The way for strips that begin with a size: of its own the cheapest in all, else the lowest that is as high as it, or
 * any that fits. */
static int32_t way_for(const struct tiny *t, const struct msl_piece_size *size, int high, int rule)
{
    int32_t best = -1;
    int64_t least = INT64_MAX;
    for (int32_t way = 0; way < t->cutting.way_count; way++) {
        const int64_t most = most_in(t, way, size, t->ways[way].across);
        const int is_high = t->ways[way].along >= own_height(size, high);
        const int64_t by = rule == OWN ? (size->count + most - 1) / (most > 0 ? most : 1) * t->ways[way].cost
                                       : (is_high ? -way : INT64_C(1) << 40) - way;
        if (most > 0 && by < least) {
            least = by;
            best = way;
        }
    }
    return best;
}

/* What lies in a strip costs as little as a strip of any way that holds it; a panel what it costs. */
static int64_t cost_of_strip(const struct tiny *t, int32_t way, const int64_t *laid)
{
    int64_t least = t->ways[way].cost;
    for (int32_t other = 0; other < t->cutting.way_count; other++) {
        int64_t room = t->ways[other].across;
        for (int32_t i = 0; i < t->cutting.size_count; i++) {
            const int64_t taken = msl_taken_in(&t->sizes[i], t->ways[other].along, NULL);
            if (laid[i] > 0)
                room -= taken == 0 ? INT32_MAX : t->sizes[i].run_in + laid[i] * taken;
        }
        if (!t->ways[way].sheet && !t->ways[other].sheet && room >= 0)
            least = msl_lesser(least, t->ways[other].cost);
    }
    return least;
}

/* Fills strip after strip, each with the highest that is left and then the others in their order. Returns the cost. */
static int64_t cost_by_rule(const struct tiny *t, int high, int rule)
{
    int64_t left[TINY_SIZES];
    int32_t order[TINY_SIZES];
    int64_t cost = 0;
    for (int32_t i = 0; i < t->cutting.size_count; i++) {
        int32_t at = i;
        left[i] = t->sizes[i].count;
        for (; at > 0 && own_height(&t->sizes[order[at - 1]], high) < own_height(&t->sizes[i], high); at--)
            order[at] = order[at - 1];
        order[at] = i;
    }
    for (int32_t first = 0; first < t->cutting.size_count; first++)
        while (left[order[first]] > 0) {
            const int32_t way = way_for(t, &t->sizes[order[first]], high, rule);
            int64_t room = t->ways[way].across;
            int64_t laid[TINY_SIZES] = { 0 };
            for (int32_t at = first; at < t->cutting.size_count; at++) {
                const struct msl_piece_size *size = &t->sizes[order[at]];
                const int is_level = size->along == t->ways[way].along || size->turned_along == t->ways[way].along;
                const int64_t count = msl_lesser(left[order[at]], most_in(t, way, size, room));
                if (at > first && (rule == OWN || t->cutting.one_size || (rule == LEVEL && !is_level)))
                    continue;
                if (count > 0)
                    room -= size->run_in + count * msl_taken_in(size, strip_height(t, way, size), NULL);
                left[order[at]] -= count;
                laid[order[at]] = count;
            }
            cost += cost_of_strip(t, way, laid);
        }
    return cost;
}

/* Sizes that fit, some of them only turned; with panels some are slit from these, and there is no strip so high. */
static void chance_strips(struct tiny *t, uint64_t *seed, int with_panels)
{
    const int64_t bolt = 8 + tiny_chance(seed, 25);
    int is_within = 0; /* some strip within a panel is as long as it */
    tiny_start(t);
    for (int64_t i = 1 + tiny_chance(seed, 6); i > 0; i--) {
        struct msl_piece_size *size = tiny_size(t, 1 + tiny_chance(seed, 10), 1 + tiny_chance(seed, 10),
                                                1 + tiny_chance(seed, 9), tiny_chance(seed, 2) == 0);
        if (size->turned_across == 0 || size->turned_across > bolt) {
            size->turned_across = size->turned_along = 0;
            size->across = 1 + size->across * 7 / 10;
            size->run_in = tiny_chance(seed, 3) == 0 ? tiny_chance(seed, 3) : 0;
            size->slit = with_panels && size->run_in == 0 && tiny_chance(seed, 2) == 0;
        }
        if (size->run_in + size->across > bolt && size->turned_across == 0)
            size->run_in = 0;
        if (size->slit)
            size->along = PANEL;
        else if (with_panels && size->turned_across == 0 && tiny_chance(seed, 5) == 0)
            size->along = PANEL + 3 * tiny_chance(seed, 2);
        is_within |= size->along == PANEL && !size->slit;
    }
    tiny_bolt(t, bolt);
    t->cutting.one_size = tiny_chance(seed, 5) == 0;
    for (int32_t i = 0; i < t->cutting.way_count; i++)
        t->ways[i].sheet = t->ways[i].panel = t->ways[i].along == PANEL;
    for (int32_t i = 0; i < t->cutting.height_count; i++)
        if (t->heights[i] == PANEL && !is_within) {
            t->cutting.height_count--;
            for (int32_t k = i; k < t->cutting.height_count; k++)
                t->heights[k] = t->heights[k + 1];
        }
}

/* The cheapest of: each size in strips of its own; and by height, as low or as high as each may lie, in strips of just
 * one height or of any. Panels are cut like a strip. */
START_TEST(first_plans_as_strip_by_strip)
{
    uint64_t seed = 6;
    for (int32_t round = 0; round < 1000; round++) {
        struct tiny t;
        chance_strips(&t, &seed, round % 2);
        int64_t best = cost_by_rule(&t, 0, OWN);
        for (int high = 0; high < 2; high++)
            for (int rule = LEVEL; rule < RULES; rule++)
                best = msl_lesser(best, cost_by_rule(&t, high, rule));
        ck_assert_int_eq(cost_of_first_in(&t, 1000, 1000, 1000, 0), best);
        struct msl_watch watch = { NULL, NULL, 0, 0 };
        struct msl_workshop *workshop = tiny_open(&t, &watch);
        struct msl_making *making = &workshop->whole.making;
        making->first_steps = round % 4 == 3 ? INT64_MAX / 2 : 0;
        making->worth[0] = -7;
        msl_plan_first(making);
        ck_assert_int_eq(making->worth[0] == -7, !msl_has_sheets(&t.cutting)); /* only then it is filled by area, too */
        ck_assert_int_le(making->best.cost, best);
        ck_made_plan(&t, making, NULL);
        ck_assert_int_ge(making->pricing->sack.steps, 5 * t.cutting.size_count); /* each for each plan */
        msl_workshop_close(workshop);
    }
}
END_TEST

/* Among so many ways, wherever it stands, and not beside them. */
START_TEST(a_sheet_is_seen_among_all_ways)
{
    struct tiny t;
    for (int32_t count = 1; count < 4; count++)
        for (int32_t at = 0; at <= count + 1; at++) {
            tiny_start(&t);
            t.cutting.ways = t.ways + 1;
            t.cutting.way_count = count;
            t.ways[at].sheet = 1;
            ck_assert_int_eq(msl_has_sheets(&t.cutting), at > 0 && at <= count);
        }
}
END_TEST

/* A strip of a panel with what is slit and what lies beside: where there is no room for all of it nothing stays. */
START_TEST(a_panel_is_added_or_nothing)
{
    for (int32_t few = 0; few < 8; few++) {
        struct tiny t;
        struct msl_watch watch = { NULL, NULL, 0, 0 };
        two_borders(&t, 5);
        struct msl_workshop *workshop = tiny_open(&t, &watch);
        struct msl_making *making = &workshop->whole.making;
        struct msl_pool *pool = making->pool;
        pool->most_patterns = few == 0 ? 0 : 9;
        pool->most_strips = few < 3 ? few : 9; /* two are needed, of a piece each */
        pool->most_laid = few > 2 ? few - 3 : 9;
        for (int32_t i = 0; i < 2; i++) {
            making->sizes[i] = i;
            making->counts[i] = 1 + i;
        }
        const int32_t made = msl_plan_add_strip(making, 0, 2);
        const int fits = few == 2 || few > 4;
        ck_assert_int_eq(made, fits ? 0 : -1);
        ck_assert_int_eq(pool->pattern_count, fits);
        ck_assert_int_eq(pool->strip_count, 2 * fits);
        ck_assert_int_eq(pool->laid_count, 2 * fits);
        for (int32_t i = 0; i < 2 * fits; i++) {
            ck_assert_int_eq(pool->strips[i].height, i == 0 ? 0 : 5);
            ck_assert_int_eq(pool->strips[i].count, 1);
            ck_assert_int_eq(pool->laid[i].size, i);
            ck_assert_int_eq(pool->laid[i].count, 1 + i);
        }
        msl_workshop_close(workshop);
    }
}
END_TEST

/* Worths are areas without their last bits, so many of all that the largest is just in range, and one more. */
START_TEST(worths_are_areas)
{
    for (int64_t side = 1; side < INT64_C(1) << 30; side = 3 * side + 1) {
        struct tiny t;
        struct msl_watch watch = { NULL, NULL, 0, 0 };
        int32_t shift = 0;
        tiny_start(&t);
        tiny_size(&t, side, side, 2, 0);
        tiny_size(&t, (side + 1) / 2, side, 1, 0);
        t.sizes[2].across = t.sizes[2].along = 1 << 30; /* behind them */
        tiny_heights(&t);
        tiny_stock(&t, side, side, 9, 1);
        struct msl_workshop *workshop = tiny_open(&t, &watch);
        struct msl_making *making = &workshop->whole.making;
        const int64_t before = making->pricing->sack.steps;
        msl_plan_first(making);
        while (side * side >> shift >= making->pricing->most_worth)
            shift++;
        ck_assert_int_eq(making->worth[0], 1 + (side * side >> shift));
        ck_assert_int_eq(making->worth[1], 1 + ((side + 1) / 2 * side >> shift));
        ck_assert_int_eq(making->plain_from, 0);
        ck_assert_int_gt(making->pricing->sack.steps, before);
        msl_workshop_close(workshop);
    }
}
END_TEST

/* ---- plain ------------------------------------------------------------------------------------------------------- */

/* Plans filled in plainly from the first, in a pool with so much room. Returns 1 where there is a plan. */
static int plan_plainly(const struct tiny *t, int32_t patterns, int32_t strips, int32_t laid)
{
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    struct msl_workshop *workshop = tiny_open(t, &watch);
    struct msl_making *making = &workshop->whole.making;
    making->pool->most_patterns = patterns;
    making->pool->most_strips = strips;
    making->pool->most_laid = laid;
    making->first_steps = 0;
    msl_plan_first(making);
    const int found = making->best.count > 0;
    if (found)
        ck_best_plan(t, making);
    msl_workshop_close(workshop);
    return found;
}

START_TEST(stock_is_filled_plainly_when_there_is_no_time)
{
    uint64_t seed = (uint64_t)_i + 1;
    struct tiny t;
    tiny_start(&t);
    t.cutting.one_size = tiny_chance(&seed, 4) == 0;
    for (int64_t i = 1 + tiny_chance(&seed, 8); i > 0; i--) {
        const int64_t across = 1 + tiny_chance(&seed, 9);
        const int64_t along = 1 + tiny_chance(&seed, 9);
        const int64_t count = 1 + tiny_chance(&seed, 5) * tiny_chance(&seed, 200);
        struct msl_piece_size *size = tiny_size(&t, across, along, count, across > along && tiny_chance(&seed, 2) == 0);
        if (size->turned_across == 0 && tiny_chance(&seed, 3) == 0) {
            size->level = 1;
            size->run_in = tiny_chance(&seed, 3);
        }
    }
    tiny_heights(&t);
    for (int64_t i = 1 + tiny_chance(&seed, 2); i > 0; i--)
        tiny_stock(&t, 11 + tiny_chance(&seed, 20), 11 + tiny_chance(&seed, 20), INT64_MAX, 1 + tiny_chance(&seed, 5));
    ck_assert_int_eq(plan_plainly(&t, 1000, 10000, 10000), 1);
    ck_assert_int_eq(plan_plainly(&t, 0, 10000, 10000), 0);
    ck_assert_int_eq(plan_plainly(&t, 1000, 0, 10000), 0);
    ck_assert_int_eq(plan_plainly(&t, 1000, 10000, 0), 0);
    for (int32_t i = 0; i < t.cutting.stock_count; i++)
        t.available[i] = 0;
    ck_assert_int_eq(plan_plainly(&t, 1000, 10000, 10000), 0);
}
END_TEST

/* 25 x 5 lies turned in 12 x 30, beside nothing of a run-in that there is no room for; 3 x 3 holds none of these. */
START_TEST(long_pieces_lie_turned_plainly)
{
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 25, 5, 3, 1);
    tiny_size(&t, 11, 4, 2, 0);
    tiny_size(&t, 1, 4, 2, 0)->run_in = 2;
    t.sizes[2].level = 1;
    tiny_heights(&t);
    tiny_stock(&t, 12, 30, 9, 2);
    tiny_stock(&t, 3, 3, 9, 1);
    t.ways[1] = t.ways[2]; /* cut across alone */
    t.ways[2] = t.ways[3];
    t.cutting.way_count = 2;
    ck_assert_int_eq(plan_plainly(&t, 1000, 10000, 10000), 1);
}
END_TEST

/* Eighty sizes, one of each, from the highest: 474 wide in all, so that six strips of 100 hold them, none above 85. */
START_TEST(many_sizes_are_filled_plainly)
{
    struct tiny t;
    tiny_start(&t);
    for (int32_t i = 0; i < TINY_SIZES; i++)
        tiny_size(&t, 3 + i % 7, 5 + TINY_SIZES - i, 1, 0);
    tiny_heights(&t);
    tiny_stock(&t, 100, 200, 9, 1);
    ck_assert_int_eq(plan_plainly(&t, 1000, 10000, 10000), 1);
}
END_TEST

/* What lies in panels is not filled in plainly: a plan strip by strip stands. */
START_TEST(panels_are_not_filled_plainly)
{
    struct tiny t;
    two_borders(&t, 5);
    ck_assert_int_eq(cost_of_first_in(&t, 100, 100, 100, 0), 35);
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
    tcase_add_test(tcase, first_plans_as_strip_by_strip);
    tcase_add_test(tcase, a_panel_is_added_or_nothing);
    tcase_add_test(tcase, a_sheet_is_seen_among_all_ways);
    tcase_add_test(tcase, worths_are_areas);
    tcase_add_loop_test(tcase, stock_is_filled_plainly_when_there_is_no_time, 0, 60);
    tcase_add_test(tcase, long_pieces_lie_turned_plainly);
    tcase_add_test(tcase, many_sizes_are_filled_plainly);
    tcase_add_test(tcase, panels_are_not_filled_plainly);
    suite_add_tcase(suite, tcase);
    return suite;
}
