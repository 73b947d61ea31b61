/* test_cutplan_deal.c - few pieces dealt out to pieces of stock in every way.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_brute.h"
#include "test_cutplan_making.h"
#include "test_cutplan_sets.h"

static struct brute brute;

enum { EVERY = 300 };

/* A search that is opened to deal at once, with no more room than that needs. */
struct dealt {
    struct msl_workshop *workshop;
    int64_t steps;
    int64_t cost;
    int32_t room; /* patterns, strips, pieces laid, rows; 0: all that the search has */
    int answer;
};

static struct dealt open_deal(const struct tiny *t, int32_t room)
{
    static int64_t wanted[TINY_SIZES + 2];
    static struct muslin_allocator memory; /* both are looked at as long as it is open */
    static struct msl_watch watch;
    struct dealt d = { .room = room };
    muslin_allocator_libc(&memory);
    d.workshop = msl_workshop_open(&t->cutting, &watch, &memory);
    ck_assert_ptr_nonnull(d.workshop);
    struct msl_making *making = &d.workshop->whole.making;
    if (room > 0)
        making->plan.most = making->pool->most_patterns = making->pool->most_strips = making->pool->most_laid = room;
    wanted[0] = wanted[t->cutting.size_count + 1] = 1; /* beside what is wanted */
    making->wanted = wanted + 1;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        making->wanted[i] = t->sizes[i].count;
    making->best.cost = INT64_C(1) << 40;
    return d;
}

/* Fills the pool with patterns of no use, and deals. */
static void deal(struct dealt *d, const struct tiny *t, int64_t most_steps)
{
    struct msl_making *making = &d->workshop->whole.making;
    const struct msl_laid nothing = { .size = 0, .count = 1 };
    while (msl_pool_begin(making->pool, 0) && msl_pool_strip(making->pool, 1) && msl_pool_lay(making->pool, nothing))
        continue;
    const int64_t before = making->pricing->sack.steps;
    d->answer = msl_deal(&d->workshop->deal, making, most_steps);
    d->steps = making->pricing->sack.steps - before;
    d->cost = making->best.cost;
    ck_assert_int_eq(making->best.count > 0, d->answer == MSL_DEAL_YES);
    if (d->answer != MSL_DEAL_YES)
        return;
    int64_t left[4] = { 0, 0, 0, 0 };
    ck_made_plan(t, making, left);
    for (int32_t i = 0; i < t->cutting.stock_count; i++)
        ck_assert_int_eq(making->in_hand[i], left[i]);
}

static struct dealt dealt_with(const struct tiny *t, int32_t room, int64_t most_steps)
{
    struct dealt d = open_deal(t, room);
    deal(&d, t, most_steps);
    msl_workshop_close(d.workshop);
    return d;
}

static int dealt(const struct tiny *t, int64_t most_steps)
{
    return dealt_with(t, MSL_DEALT_MAX, most_steps).answer;
}

/* Stacks, pieces for strips of just their height, run-ins, strips of one size, of one stock or two. */
START_TEST(whatever_can_be_dealt_is)
{
    uint64_t seed = 77;
    int32_t answers[2] = { 0, 0 };
    for (int32_t round = 0; round < 1000; round++) {
        struct tiny t;
        chance_pieces(&t, &seed);
        t.cutting.stacked = tiny_chance(&seed, 3) > 0;
        t.cutting.one_size = tiny_chance(&seed, 5) == 0;
        const int truth = can_be_dealt(&t);
        const int answer = dealt(&t, 3000000);
        answers[truth]++;
        if (answer != MSL_DEAL_UNKNOWN)
            ck_assert_int_eq(answer, truth ? MSL_DEAL_YES : MSL_DEAL_NO);
        else
            answers[truth]--;
    }
    ck_assert_int_gt(answers[0], 100);
    ck_assert_int_gt(answers[1], 100);
}
END_TEST

/* A sheet of 3 x 5: beside 1 x 4 two of 2 x 2 are stacked, and 2 x 1 lies in the strip of 1 that is left. It does so
 * only after it lay on the first square, in room that the second needs. */
START_TEST(a_piece_that_goes_leaves_its_room)
{
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 2, 2, 1, 0);
    tiny_size(&t, 2, 1, 1, 0);
    tiny_size(&t, 2, 2, 1, 0);
    tiny_size(&t, 1, 4, 1, 0);
    tiny_heights(&t);
    tiny_stock(&t, 3, 5, 1, 1);
    t.cutting.way_count = 1;
    t.cutting.stacked = 1;
    ck_assert_int_eq(dealt(&t, 100000), MSL_DEAL_YES);
}
END_TEST

/* Sixteen pieces, each of a sheet of its own, are as many as are dealt: in a pool and a plan that hold as many. */
START_TEST(as_many_as_may_be_are_dealt)
{
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 10, 10, MSL_DEALT_MAX - 1, 0);
    tiny_size(&t, 9, 9, 1, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 10, MSL_DEALT_MAX, 1);
    ck_assert_int_eq(dealt(&t, 100000), MSL_DEAL_YES);
    for (int32_t room = 0; room < 4; room++) {
        struct dealt d = open_deal(&t, MSL_DEALT_MAX);
        struct msl_making *making = &d.workshop->whole.making;
        int32_t *const rooms[4] = { &making->plan.most, &making->pool->most_patterns, &making->pool->most_strips,
                                    &making->pool->most_laid };
        --*rooms[room];
        deal(&d, &t, 100000);
        ck_assert_int_eq(d.answer, MSL_DEAL_UNKNOWN);
        ck_assert_int_eq(d.steps, 0);
        msl_workshop_close(d.workshop);
    }
    t.sizes[0].count++;
    ck_assert_int_eq(dealt(&t, 100000), MSL_DEAL_UNKNOWN);
}
END_TEST

/* It takes as many steps as it may and no more, and one step more than is not enough is enough. */
START_TEST(steps_are_counted)
{
    struct tiny t;
    uint64_t seed = 4;
    chance_pieces(&t, &seed);
    for (int64_t most = 0;; most++) {
        const struct dealt d = dealt_with(&t, 0, most);
        ck_assert_int_le(d.steps, most);
        if (d.answer != MSL_DEAL_UNKNOWN) { /* of all looked at in vain it is known a step later */
            ck_assert_int_eq(d.steps, most - (d.answer == MSL_DEAL_NO));
            ck_assert_int_gt(most, 10);
            break;
        }
        ck_assert_int_eq(d.steps, most);
    }
}
END_TEST

/* Eight equal squares, of which one sheet holds two, in three sheets: they lie in strips in the order in which these
 * were begun. There are at most three strips of at most two of them. Whether a piece goes on or begins is one choice of
 * each of six: 2^6 ways at most, each with 2 x (3 strips + 3 + 2 ways with one height) steps. */
START_TEST(equal_pieces_are_dealt_in_order)
{
    struct tiny t;
    tiny_start(&t);
    tiny_size(&t, 5, 5, 8, 0);
    tiny_heights(&t);
    tiny_stock(&t, 10, 9, 3, 1);
    t.cutting.way_count = 1;
    ck_assert_int_eq(dealt(&t, 64 * 2 * (3 + 3 + 2)), MSL_DEAL_NO);
}
END_TEST

START_TEST(whatever_stock_suffices_for_is_found)
{
    uint64_t seed = (uint64_t)_i + 1;
    struct tiny t;
    tiny_start(&t);
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
    const struct dealt d = dealt_with(&t, 0, 10000000);
    ck_assert_int_eq(d.answer, best < 0 ? MSL_DEAL_NO : MSL_DEAL_YES);
    if (best >= 0)
        ck_assert_int_ge(d.cost, best);
    ck_assert_int_eq(dealt(&t, 0), MSL_DEAL_UNKNOWN);
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
    tcase_add_test(tcase, whatever_can_be_dealt_is);
    tcase_add_test(tcase, a_piece_that_goes_leaves_its_room);
    tcase_add_test(tcase, as_many_as_may_be_are_dealt);
    tcase_add_test(tcase, steps_are_counted);
    tcase_add_test(tcase, equal_pieces_are_dealt_in_order);
    tcase_add_loop_test(tcase, whatever_stock_suffices_for_is_found, 0, EVERY);
    tcase_add_test(tcase, more_sizes_than_are_searched_are_not_shown_to_be_too_many);
    suite_add_tcase(suite, tcase);
    return suite;
}
