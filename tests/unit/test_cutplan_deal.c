/* test_cutplan_deal.c - few pieces dealt out to pieces of stock in every way.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan.h"
#include "test_cutplan_brute.h"

static struct brute brute;

enum { EVERY = 300 };

/* Opens a search, and deals at once. */
static int dealt(const struct tiny *t, int64_t most_steps, int32_t most_laid, int64_t *cost)
{
    struct muslin_allocator memory;
    struct msl_watch watch = { NULL, NULL, 0, 0 };
    muslin_allocator_libc(&memory);
    struct msl_workshop *workshop = msl_workshop_open(&t->cutting, &watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    struct msl_making *making = &workshop->whole.making;
    if (most_laid > 0)
        making->pool->most_laid = most_laid;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        making->wanted[i] = t->sizes[i].count;
    making->best.cost = INT64_C(1) << 40;
    const int answer = msl_deal(&workshop->deal, making, most_steps);
    ck_assert_int_eq(making->best.count > 0, answer == MSL_DEAL_YES);
    *cost = making->best.cost;
    msl_workshop_close(workshop);
    return answer;
}

START_TEST(whatever_stock_suffices_for_is_found)
{
    uint64_t seed = (uint64_t)_i + 1;
    struct tiny t;
    int64_t cost = 0;
    tiny_start(&t);
    t.cutting.stacked = tiny_chance(&seed, 3) == 0;
    t.cutting.one_size = tiny_chance(&seed, 4) == 0;
    for (int64_t i = 1 + tiny_chance(&seed, 3); i > 0; i--) {
        struct msl_piece_size *size = tiny_size(&t, 1 + tiny_chance(&seed, 6), 1 + tiny_chance(&seed, 6),
                                                1 + tiny_chance(&seed, 2), 0);
        if (tiny_chance(&seed, 3) == 0 && size->across != size->along) {
            size->turned_across = size->along;
            size->turned_along = size->across;
        } else if (tiny_chance(&seed, 4) == 0) {
            size->run_in = tiny_chance(&seed, 3);
            size->level = 1;
        }
    }
    tiny_heights(&t);
    tiny_stock(&t, 6 + tiny_chance(&seed, 6), 6 + tiny_chance(&seed, 6), 1 + tiny_chance(&seed, 2), 1);
    brute_start(&brute, &t.cutting);
    const int64_t best = brute_cost(&brute);
    ck_assert_int_eq(dealt(&t, 10000000, 0, &cost), best < 0 ? MSL_DEAL_NO : MSL_DEAL_YES);
    if (best >= 0)
        ck_assert_int_ge(cost, best);
    ck_assert_int_eq(dealt(&t, 0, 0, &cost), MSL_DEAL_UNKNOWN);
    ck_assert_int_eq(dealt(&t, 100, 2, &cost), MSL_DEAL_UNKNOWN);
    t.sizes[0].count = 17;
    ck_assert_int_eq(dealt(&t, 100, 0, &cost), MSL_DEAL_UNKNOWN);
}
END_TEST

START_TEST(more_sizes_than_are_searched_are_not_shown_to_be_too_many)
{
    struct tiny t;
    static struct msl_piece_size sizes[MSL_SIZES_MAX + 1];
    static int64_t heights[MSL_SIZES_MAX + 1];
    struct msl_found found;
    tiny_start(&t);
    t.cutting.sizes = sizes;
    t.cutting.heights = heights;
    for (int32_t i = 0; i <= MSL_SIZES_MAX; i++) {
        const struct msl_piece_size size = { 600, 401 - i, 0, 0, 0, 1, 0, 0 };
        sizes[i] = size;
        heights[i] = size.along;
    }
    t.cutting.size_count = t.cutting.height_count = MSL_SIZES_MAX + 1;
    tiny_stock(&t, 1100, 1000, 40, 1);
    t.cutting.way_count = 1; /* two strips at most, of one piece each */
    ck_status(tiny_search(&t, 1000, &found), MUSLIN_ERR_WORK_LIMIT);
}
END_TEST

Suite *cutplan_deal_suite(void)
{
    Suite *suite = suite_create("cutplan_deal");
    TCase *tcase = tcase_create("deal");
    tcase_set_timeout(tcase, 120);
    tcase_add_loop_test(tcase, whatever_stock_suffices_for_is_found, 0, EVERY);
    tcase_add_test(tcase, more_sizes_than_are_searched_are_not_shown_to_be_too_many);
    suite_add_tcase(suite, tcase);
    return suite;
}
