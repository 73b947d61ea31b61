/* test_cutplan_knapsack.c - the pieces worth most in one strip, against all fillings.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_parts.h"

enum { ITEMS = 4, STATES = 4096 };

struct sack {
    struct msl_state states[STATES];
    struct msl_knapsack knapsack;
};

static void sack_begin(struct sack *sack, int32_t most_states)
{
    const struct msl_knapsack knapsack = { sack->states, most_states, 0, 0 };
    sack->knapsack = knapsack;
}

/* What these counts take and are worth. */
static int64_t taken_by(const struct msl_item *items, int32_t count, const int32_t *counts, int64_t *worth)
{
    int64_t taken = 0;
    *worth = 0;
    for (int32_t i = 0; i < count; i++) {
        ck_assert_int_ge(counts[i], 0);
        ck_assert_int_le(counts[i], items[i].most);
        taken += counts[i] * items[i].taken + (counts[i] > 0 ? items[i].run_in : 0);
        *worth += counts[i] * items[i].worth;
    }
    return taken;
}

/* The most that fits in each room up to `room`, by trying all counts. */
static void try_all(const struct msl_item *items, int32_t count, int64_t room, int64_t *best)
{
    int32_t counts[ITEMS] = { 0 };
    for (int64_t r = 0; r <= room; r++)
        best[r] = 0;
    for (int32_t at = 0; at < count;) {
        int64_t worth;
        const int64_t taken = taken_by(items, count, counts, &worth);
        for (int64_t r = taken; r <= room; r++)
            best[r] = larger(best[r], worth);
        for (at = 0; at < count && counts[at] == items[at].most; at++)
            counts[at] = 0;
        if (at < count)
            counts[at]++;
    }
}

static int32_t make_items(uint64_t *seed, struct msl_item *items, int64_t room)
{
    const int32_t count = (int32_t)pick(seed, ITEMS + 1);
    for (int32_t i = 0; i < count; i++) {
        struct msl_item item = { 1 + pick(seed, room / 2), 0, 1 + pick(seed, 30), 0, 1 + (int32_t)pick(seed, 4), i };
        if (pick(seed, 3) == 0)
            item.run_in = pick(seed, room - item.taken + 1);
        if (i > 0 && pick(seed, 4) == 0) {
            item.taken = items[i - 1].taken; /* ties */
            item.worth = items[i - 1].worth;
            item.run_in = 0;
        }
        if (i > 0 && pick(seed, 4) == 0 && 2 * items[i - 1].taken <= room) {
            item.taken = 2 * items[i - 1].taken;
            item.worth = 2 * items[i - 1].worth;
            item.run_in = 0;
        }
        item.most = (int32_t)lesser(item.most, (room - item.run_in) / item.taken);
        items[i] = item;
    }
    return count;
}

/* By worth per length, of equal ones the longer first, then as they came: their sizes were counted up. */
static void ck_order(const struct msl_item *items, int32_t count)
{
    for (int32_t i = 1; i < count; i++) {
        const int64_t one = items[i - 1].worth * items[i].taken;
        const int64_t other = items[i].worth * items[i - 1].taken;
        const int64_t shorter = items[i - 1].taken - items[i].taken;
        const int in_order = shorter > 0 || (shorter == 0 && items[i - 1].size < items[i].size);
        ck_assert(one > other || (one == other && in_order));
    }
}

/* As much of each as fits, one after the other. */
static int64_t greedily(const struct msl_item *items, int32_t count, int64_t room)
{
    int64_t worth = 0;
    for (int32_t i = 0; i < count; i++) {
        const int64_t fit = larger(0, lesser(items[i].most, (room - items[i].run_in) / items[i].taken));
        room -= fit > 0 ? items[i].run_in + fit * items[i].taken : 0;
        worth += fit * items[i].worth;
    }
    return worth;
}

/* Whether each state that is kept could still come to be worth as much as those before it, and more than `beat`: at
 * most, per length, as much as its last item does, or a hair more. A stage looks at each of its states thrice at most:
 * as what may lie without a lot, with it, and without the run-in. */
static void ck_promise(const struct sack *sack, const struct msl_item *items, int64_t room, int64_t beat)
{
    int64_t reached = beat + 1;
    for (int32_t i = 1; i < sack->knapsack.used; i++) {
        const struct msl_state *state = &sack->states[i];
        ck_assert_int_ge(state->worth + (room - state->taken) * (items[state->item].dense + 1), reached);
        reached = larger(reached, state->worth);
    }
    ck_assert_int_ge(sack->knapsack.steps, sack->knapsack.used - 1);
    ck_assert_int_le(sack->knapsack.steps, 3 * sack->knapsack.used);
}

START_TEST(test_all_fillings)
{
    static struct sack sack;
    uint64_t seed = 1;
    for (int round = 0; round < 1500; round++) {
        struct msl_item items[ITEMS];
        int64_t best[64];
        int32_t counts[ITEMS] = { 9, 9, 9, 9 };
        int64_t bound;
        int64_t worth;
        const int64_t room = 6 + pick(&seed, 50);
        const int32_t count = make_items(&seed, items, room);
        try_all(items, count, room, best);
        const int64_t beat = pick(&seed, 3) == 0 ? pick(&seed, best[room] + 2) : 0;
        sack_begin(&sack, STATES);
        const int64_t found = msl_knapsack(&sack.knapsack, items, count, room, beat, counts, &bound);
        ck_assert_int_eq(found, larger(beat, count == 0 ? 0 : best[room]));
        ck_assert_int_eq(bound, found);
        ck_order(items, count);
        if (count > 0)
            ck_promise(&sack, items, room, beat);
        if (found > beat) {
            ck_assert_int_le(taken_by(items, count, counts, &worth), room);
            ck_assert_int_eq(worth, found);
        } else {
            ck_assert_int_eq(counts[0], 9);
        }
    }
}
END_TEST

START_TEST(test_few_states)
{
    static struct sack sack;
    uint64_t seed = 2;
    int short_of = 0;
    int plainly = 0;
    for (int round = 0; round < 2000; round++) {
        struct msl_item items[ITEMS];
        int64_t best[64];
        int32_t counts[ITEMS] = { 9, 9, 9, 9 };
        int64_t bound;
        int64_t worth;
        const int64_t room = 6 + pick(&seed, 50);
        const int32_t count = make_items(&seed, items, room);
        try_all(items, count, room, best);
        const int64_t beat = pick(&seed, 3) == 0 ? pick(&seed, best[room] + 2) : 0;
        sack_begin(&sack, 1 + (int32_t)pick(&seed, 12));
        const int64_t found = msl_knapsack(&sack.knapsack, items, count, room, beat, counts, &bound);
        ck_assert_int_ge(found, beat);
        ck_assert_int_le(found, larger(beat, count == 0 ? 0 : best[room]));
        ck_assert_int_ge(bound, larger(found, count == 0 ? 0 : best[room]));
        ck_order(items, count);
        short_of += bound > found;
        plainly += bound > found && found == greedily(items, count, room);
        if (bound > found)
            ck_assert_int_ge(found, greedily(items, count, room));
        if (found > beat) {
            ck_assert_int_le(taken_by(items, count, counts, &worth), room);
            ck_assert_int_eq(worth, found);
        } else {
            ck_assert_int_eq(counts[0], 9);
        }
    }
    ck_assert_int_gt(short_of, 100);
    ck_assert_int_gt(plainly, 20);
}
END_TEST

/* States are fillings, one at least, each of which takes more and is worth more than the one before. */
static void ck_states(const struct sack *sack, const struct msl_item *items, int32_t count, struct msl_stage stage)
{
    ck_assert_int_lt(stage.first, stage.end);
    for (int32_t at = stage.first; at < stage.end; at++) {
        int32_t counts[ITEMS];
        int64_t worth;
        msl_knapsack_counts(&sack->knapsack, at, count, counts);
        ck_assert_int_eq(taken_by(items, count, counts, &worth), sack->states[at].taken);
        ck_assert_int_eq(worth, sack->states[at].worth);
        ck_assert(at == stage.first || sack->states[at - 1].taken < sack->states[at].taken);
        ck_assert(at == stage.first || sack->states[at - 1].worth < sack->states[at].worth);
    }
}

START_TEST(test_every_room)
{
    static struct sack sack;
    uint64_t seed = 3;
    for (int round = 0; round < 300; round++) {
        struct msl_item items[ITEMS];
        int64_t best[64];
        int complete;
        const int64_t room = 6 + pick(&seed, 50);
        const int32_t count = make_items(&seed, items, room);
        try_all(items, count, room, best);
        sack_begin(&sack, STATES);
        const struct msl_stage stage = msl_knapsack_all(&sack.knapsack, items, count, room, &complete);
        ck_assert_int_eq(complete, 1);
        ck_assert_int_gt(stage.end, stage.first);
        for (int64_t r = 0; count > 0 && r <= room; r++) {
            int32_t at = stage.end - 1;
            while (sack.states[at].taken > r)
                at--;
            ck_assert_int_ge(at, stage.first);
            ck_assert_int_eq(sack.states[at].worth, best[r]);
        }
        ck_states(&sack, items, count, stage);
        const int32_t few = 1 + (int32_t)pick(&seed, 12);
        sack_begin(&sack, few);
        memset(&sack.states[1], 0xFF, (size_t)few * sizeof sack.states[1]);
        ck_states(&sack, items, count, msl_knapsack_all(&sack.knapsack, items, count, room, &complete));
        ck_assert(complete || sack.knapsack.used == few);
        sack_begin(&sack, 1);
        msl_knapsack_all(&sack.knapsack, items, count, room, &complete);
        ck_assert_int_eq(complete, count == 0);
    }
}
END_TEST

/* Pieces of 10 worth 1000, ten of them, beside one of 3 worth 3, in a room of 100. Lots of 1, 2, 4 and 3 of them:
 * states of 0; 0, 1; 0 .. 3; 0 .. 7; of the last, behind which a length is worth 2 at most, 6 would come to 6000 + 80
 * and less than the 7 that have been reached, 7 to 7060: 7 .. 10. With a run-in, in 105, there are its own state, and
 * in the end 10 pieces, while 9 come to 9000 + 30. */
START_TEST(test_hopeless_states_go)
{
    static struct sack sack;
    struct msl_item items[2] = { { 3, 0, 3, 0, 1, 0 }, { 10, 0, 1000, 0, 10, 1 } };
    int32_t counts[2];
    int64_t bound;
    sack_begin(&sack, STATES);
    ck_assert_int_eq(msl_knapsack(&sack.knapsack, items, 2, 100, 0, counts, &bound), 10000);
    ck_assert_int_eq(sack.knapsack.used, 1 + 2 + 4 + 8 + 4);
    ck_assert_int_eq(sack.knapsack.steps, 2 * (1 + 2 + 4 + 8) + 4); /* each as without a lot and with it; the last */
    items[0].run_in = 5;
    sack_begin(&sack, STATES);
    ck_assert_int_eq(msl_knapsack(&sack.knapsack, items, 2, 105, 0, counts, &bound), 10000);
    ck_assert_int_eq(sack.knapsack.used, 1 + 1 + 2 + 4 + 8 + 4 + 1);
}
END_TEST

/* One piece of 4 worth 4, not two of 2 worth 2, for all that they take and are worth the same. */
START_TEST(test_rather_the_first)
{
    static struct sack sack;
    struct msl_item items[2] = { { 2, 0, 2, 0, 2, 0 }, { 4, 0, 4, 0, 1, 1 } };
    int32_t counts[2];
    int complete;
    sack_begin(&sack, STATES);
    const struct msl_stage stage = msl_knapsack_all(&sack.knapsack, items, 2, 4, &complete);
    ck_assert_int_eq(stage.end - stage.first, 3);
    msl_knapsack_counts(&sack.knapsack, stage.end - 1, 2, counts);
    ck_assert_int_eq(items[0].taken, 4);
    ck_assert_int_eq(counts[0], 1);
    ck_assert_int_eq(counts[1], 0);
}
END_TEST

/* Of no item the counts before the first are not touched. */
START_TEST(test_counts_alone)
{
    static struct sack sack;
    struct msl_item items[1] = { { 10, 0, 1000, 0, 10, 1 } };
    int32_t counts[3] = { 77, 77, 77 };
    int64_t bound;
    sack_begin(&sack, STATES);
    ck_assert_int_eq(msl_knapsack(&sack.knapsack, items, 1, 100, 0, counts + 1, &bound), 10000);
    ck_assert_int_eq(counts[0], 77);
    ck_assert_int_eq(counts[1], 10);
    ck_assert_int_eq(counts[2], 77);
}
END_TEST

/* 70,001 pieces of one unit in a room for just these, beside a worse one of two; then only 40,000 of them. */
START_TEST(test_many_pieces)
{
    enum { PLENTY = 200000 };
    struct msl_knapsack sack = { malloc(PLENTY * sizeof(struct msl_state)), PLENTY, 0, 0 };
    struct msl_item items[2] = { { 1, 0, 3000, 0, 70001, 0 }, { 2, 0, 5, 0, 1, 1 } };
    int32_t counts[2];
    int64_t bound;
    ck_assert_ptr_nonnull(sack.states);
    ck_assert_int_eq(msl_knapsack(&sack, items, 2, 70001, 210002999, counts, &bound), 210003000);
    ck_assert_int_eq(counts[0], 70001);
    ck_assert_int_eq(counts[1], 0);
    items[0].most = 40000;
    ck_assert_int_eq(msl_knapsack(&sack, items, 2, 70001, 0, counts, &bound), 120000005);
    ck_assert_int_eq(bound, 120000005);
    ck_assert_int_eq(counts[0], 40000);
    ck_assert_int_eq(counts[1], 1);
    ck_assert_int_gt(sack.steps, 0);
    free(sack.states);
}
END_TEST

Suite *cutplan_knapsack_suite(void)
{
    Suite *suite = suite_create("cutplan_knapsack");
    TCase *all = tcase_create("all");
    tcase_add_test(all, test_all_fillings);
    tcase_add_test(all, test_few_states);
    tcase_add_test(all, test_every_room);
    tcase_add_test(all, test_hopeless_states_go);
    tcase_add_test(all, test_rather_the_first);
    tcase_add_test(all, test_counts_alone);
    tcase_add_test(all, test_many_pieces);
    suite_add_tcase(suite, all);
    return suite;
}
