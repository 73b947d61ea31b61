/* test_scatter_sets.c - strips dealt to sets, against every deal of few and against counting.
 *
 * SPDX-License-Identifier: MIT */
#include "test_scatter.h"

enum { STRIPS = 400, PRINTS = 40 };

struct deal {
    struct muslin_scatter_spec spec;
    int64_t prints[PRINTS];
    size_t kinds;
    int64_t sets;
    int64_t strips;
    int64_t out[STRIPS];
    struct muslin_scattered result;
};

static struct deal deal_of(int64_t sets, int64_t strips, size_t kinds, int64_t each)
{
    struct deal d = { .spec = MUSLIN_SCATTER_SPEC_INIT, .result = { .size = (uint32_t)sizeof d.result } };
    d.spec.places = sets * strips;
    d.kinds = kinds;
    d.sets = sets;
    d.strips = strips;
    for (size_t i = 0; i < kinds; i++)
        d.prints[i] = each;
    d.out[0] = 77;
    return d;
}

static muslin_status deal_with(struct deal *d, const struct muslin_allocator *memory, struct muslin_problem *problem)
{
    return muslin_scatter_sets(&d->spec, d->prints, d->kinds, d->sets, d->strips, memory, d->out, &d->result, problem);
}

/* Every pair in a set counts once, neighbours once more. */
static void ck_dealt(const struct deal *d)
{
    int64_t left[PRINTS];
    int64_t touching = 0;
    int64_t pairs = 0;
    memcpy(left, d->prints, sizeof left);
    for (int64_t i = 0; i < d->sets * d->strips; i++) {
        ck_assert(d->out[i] >= 0 && d->out[i] < (int64_t)d->kinds);
        ck_assert_int_ge(--left[d->out[i]], 0);
        for (int64_t j = i + 1; j / d->strips == i / d->strips; j++)
            if (d->out[i] == d->out[j]) {
                pairs++;
                touching += j == i + 1 ? 2 : 1;
            }
    }
    ck_assert_int_eq(d->result.pairs, pairs);
    ck_assert_int_eq(d->result.touching, touching);
    ck_assert_int_eq(d->result.least, touching);
    ck_assert_int_eq(d->result.proven, 1);
    ck_assert_int_eq(d->result.work, 0);
}

static void deal(struct deal *d)
{
    struct muslin_allocator memory = usual_memory();
    ck_ok(deal_with(d, &memory, NULL));
    ck_dealt(d);
}

START_TEST(every_set_has_all_six_prints)
{
    /* Example: 12 strips of 6 prints, two each, into 2 sets: every set has all six. */
    struct deal d = deal_of(2, 6, 6, 2);
    deal(&d);
    ck_assert_int_eq(d.result.touching, 0);
    for (int64_t set = 0; set < 2; set++) {
        int32_t seen = 0;
        for (int64_t strip = 0; strip < 6; strip++)
            seen |= 1 << d.out[6 * set + strip];
        ck_assert_int_eq(seen, 63);
    }
}
END_TEST

/* 40 strips, two each of 20 prints, as such bundles are sold: sets of 4, 5 and 6, of which four strips stay over. */
START_TEST(a_bundle_makes_sets_without_a_pair)
{
    for (int64_t strips = 4; strips <= 6; strips++)
        for (int64_t seed = 0; seed < 20; seed++) {
            struct deal d = deal_of(40 / strips, strips, 20, 2);
            d.spec.seed = seed;
            deal(&d);
            ck_assert_int_eq(d.result.touching, 0);
        }
}
END_TEST

/* q strips of one print over S sets: q mod S sets have one more; their pairs by hand. 7 in 3 sets: 3 + 1 + 1. */
START_TEST(too_many_of_a_print_are_shared_out_evenly)
{
    struct deal d = deal_of(3, 5, 9, 1);
    d.prints[0] = 7;
    deal(&d);
    ck_assert_int_eq(d.result.pairs, 5);
    ck_assert_int_eq(d.result.touching, 5);
}
END_TEST

/* m of s strips equal: 2 m - s - 1 must be neighbours. */
START_TEST(equal_strips_of_a_set_lie_apart_as_far_as_they_can)
{
    for (int64_t strips = 1; strips <= 9; strips++)
        for (int64_t equal = 0; equal <= strips; equal++) {
            struct deal d = deal_of(1, strips, 10, 1);
            int64_t neighbours = 2 * equal - strips - 1 > 0 ? 2 * equal - strips - 1 : 0;
            d.prints[3] = equal;
            for (int64_t i = 0; i < 10; i++)
                if (i != 3)
                    d.prints[i] = i - (i > 3) < strips - equal;
            deal(&d);
            ck_assert_int_eq(d.result.pairs, equal * (equal - 1) / 2);
            ck_assert_int_eq(d.result.touching, d.result.pairs + neighbours);
        }
}
END_TEST

START_TEST(what_there_is_too_much_of_stays_over)
{
    struct deal d = deal_of(4, 5, 6, 3);
    d.prints[2] = MUSLIN_COUNT_MAX;
    d.prints[5] = MUSLIN_COUNT_MAX;
    deal(&d);
    ck_assert_int_eq(d.result.touching, 0);
}
END_TEST

START_TEST(a_seed_gives_one_deal_and_another_seed_another)
{
    struct deal d = deal_of(10, 4, 20, 2);
    struct deal again = d;
    deal(&d);
    deal(&again);
    ck_assert_int_eq(memcmp(d.out, again.out, sizeof d.out), 0);
    again.spec.seed = -1;
    deal(&again);
    ck_assert_int_ne(memcmp(d.out, again.out, sizeof d.out), 0);
}
END_TEST

/* Sets are not all alike: of 20 prints in sets of 4 any two prints meet somewhere, sooner or later. */
START_TEST(any_two_prints_come_together_in_some_deal)
{
    int32_t met[20][20] = { { 0 } };
    for (int64_t seed = 0; seed < 400; seed++) {
        struct deal d = deal_of(10, 4, 20, 2);
        d.spec.seed = seed;
        deal(&d);
        for (int64_t i = 0; i < 40; i++)
            for (int64_t j = 0; j < 40; j++)
                if (i / 4 == j / 4)
                    met[d.out[i]][d.out[j]]++;
    }
    for (int32_t a = 0; a < 20; a++)
        for (int32_t b = 0; b < 20; b++)
            ck_assert(a == b || met[a][b] > 0);
}
END_TEST

/* Of three prints, two strips each, one is short where there are five places, and one alone is not where there are
 * four: each print about as often. */
START_TEST(each_print_may_be_the_one_that_stays_short)
{
    enum { SEEDS = 600 };
    for (int64_t strips = 4; strips <= 5; strips++) {
        int32_t other[3] = { 0 };
        for (int64_t seed = 0; seed < SEEDS; seed++) {
            struct deal d = deal_of(1, strips, 3, 2);
            int64_t lie[3] = { 0 };
            d.spec.seed = seed;
            deal(&d);
            for (int64_t i = 0; i < strips; i++)
                lie[d.out[i]]++;
            for (int32_t print = 0; print < 3; print++)
                other[print] += lie[print] == (strips == 5 ? 1 : 2);
        }
        for (int32_t print = 0; print < 3; print++)
            ck_assert(other[print] > SEEDS / 5 && other[print] < SEEDS / 2);
    }
}
END_TEST

/* Two of four strips are equal and lie at every second place: first and third, or second and fourth, about as often. */
START_TEST(a_set_begins_with_its_commonest_print_half_of_the_time)
{
    enum { SEEDS = 600 };
    int32_t first = 0;
    for (int64_t seed = 0; seed < SEEDS; seed++) {
        struct deal d = deal_of(1, 4, 3, 1);
        d.prints[0] = 2;
        d.spec.seed = seed;
        deal(&d);
        first += d.out[0] == 0;
        ck_assert(d.out[0] == 0 ? d.out[2] == 0 : d.out[1] == 0 && d.out[3] == 0);
    }
    ck_assert(first > SEEDS * 2 / 5 && first < SEEDS * 3 / 5);
}
END_TEST

/* In both of two sets lie the same eight prints: in the same order, from either end, only by rare chance. */
START_TEST(each_set_is_shuffled_for_itself)
{
    int32_t alike = 0;
    for (int64_t seed = 0; seed < 50; seed++) {
        struct deal d = deal_of(2, 8, 8, 2);
        int forwards = 1;
        int backwards = 1;
        d.spec.seed = seed;
        deal(&d);
        for (int64_t i = 0; i < 8; i++) {
            forwards &= d.out[i] == d.out[8 + i];
            backwards &= d.out[i] == d.out[15 - i];
        }
        alike += forwards || backwards;
    }
    ck_assert_int_le(alike, 1);
}
END_TEST

/* ---- against every deal ------------------------------------------------------------------------------------------ */

static int64_t least_of_every_deal(const struct deal *d)
{
    struct arranging a = { .places = d->spec.places, .kinds = d->kinds };
    memcpy(a.stock, d->prints, d->kinds * sizeof a.stock[0]);
    for (int64_t i = 0; i < a.places; i++) {
        a.given[i] = -1;
        for (int64_t j = i + 1; j < a.places; j++)
            if (i / d->strips == j / d->strips)
                add_touch(&a, i, j, j == i + 1 ? 2 : 1);
    }
    return least_of_all(&a);
}

START_TEST(few_strips_are_dealt_as_well_as_any_deal)
{
    static const int64_t sizes[][2] = { { 1, 1 }, { 1, 5 }, { 1, 8 }, { 2, 3 }, { 2, 4 }, { 3, 2 }, { 4, 2 }, { 7, 1 } };
    uint64_t state = 10;
    for (int32_t i = 0; i < 200; i++) {
        const int64_t *size = sizes[draw_from(&state, 0, 7)];
        struct deal d = deal_of(size[0], size[1], (size_t)draw_from(&state, 1, 3), 0);
        int64_t there_are = 0;
        for (size_t k = 0; k < d.kinds; k++) {
            d.prints[k] = draw_from(&state, 0, d.spec.places);
            there_are += d.prints[k];
        }
        for (; there_are < d.spec.places; there_are++)
            d.prints[draw_from(&state, 0, (int64_t)d.kinds - 1)]++;
        d.spec.seed = i;
        deal(&d);
        ck_assert_int_eq(d.result.touching, least_of_every_deal(&d));
    }
}
END_TEST

START_TEST(many_strips_are_dealt_at_the_least)
{
    uint64_t state = 11;
    for (int32_t i = 0; i < 300; i++) {
        int64_t strips = draw_from(&state, 1, 12);
        struct deal d = deal_of(draw_from(&state, 1, STRIPS / strips), strips, (size_t)draw_from(&state, 1, PRINTS), 0);
        for (size_t k = 0; k < d.kinds; k++)
            d.prints[k] = draw_from(&state, 0, 20);
        d.prints[0] += draw_from(&state, 0, 1) * STRIPS;
        d.prints[d.kinds - 1] += STRIPS;
        d.spec.seed = i;
        deal(&d);
    }
}
END_TEST

/* ---- statuses ---------------------------------------------------------------------------------------------------- */

static muslin_status ruled_sets(const void *spec, void *out, struct muslin_problem *problem)
{
    static const int64_t prints[] = { 3, 3 };
    struct muslin_allocator memory = usual_memory();
    int64_t strips[6];
    return muslin_scatter_sets(spec, prints, 2, 2, 3, &memory, strips, out, problem);
}

START_TEST(sets_follow_the_rules_of_structs)
{
    struct muslin_scatter_spec spec = MUSLIN_SCATTER_SPEC_INIT;
    spec.places = 6;
    const struct ruled ruled = RULED(ruled_sets, spec, muslin_scattered);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_scatter_spec, places, 1, 1 << 24, MUSLIN_ARG_PLACES),
        BEYOND(muslin_scatter_spec, places, 5, 6, MUSLIN_ARG_PLACES),
        BEYOND(muslin_scatter_spec, places, 7, 6, MUSLIN_ARG_PLACES),
        OUTSIDE(muslin_scatter_spec, work_limit, 0, INT64_C(1) << 40, MUSLIN_ARG_WORK_LIMIT),
    };
    ck_struct_rules(&ruled);
    ck_no_flag_known(&ruled);
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
}
END_TEST

static void ck_deal(struct deal *d, muslin_status status, int32_t argument, int64_t at)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory = usual_memory();
    ck_status(deal_with(d, &memory, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
    ck_assert_int_eq(d->out[0], 77);
}

START_TEST(sets_out_of_their_range_are_named)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_allocator memory = usual_memory();
    struct deal d = deal_of(2, 3, 3, 2);
    d.sets = 0;
    ck_deal(&d, MUSLIN_ERR_RANGE, MUSLIN_ARG_SETS, 0);
    d.sets = INT64_MAX;
    ck_deal(&d, MUSLIN_ERR_RANGE, MUSLIN_ARG_SETS, 0);
    d = deal_of(2, 3, 3, 2);
    d.strips = 0;
    ck_deal(&d, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIPS_PER_SET, 0);
    d.strips = (1 << 24) + 1;
    ck_deal(&d, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIPS_PER_SET, 0);
    d = deal_of(2, 3, 3, 2);
    d.prints[2] = -1;
    ck_deal(&d, MUSLIN_ERR_RANGE, MUSLIN_ARG_PRINTS, 2);
    d.kinds = 2;
    ck_deal(&d, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_PLACES, 0);
    ck_status(deal_with(&d, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ALLOCATOR);
    ck_status(muslin_scatter_sets(&d.spec, d.prints, 2, 2, 3, &memory, NULL, &d.result, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
}
END_TEST

START_TEST(every_allocation_of_sets_may_fail)
{
    struct failing_allocator failing;
    EVERY_ALLOCATION_FAILS_ONCE(failing) {
        struct deal d = deal_of(10, 4, 20, 2);
        ck_status(deal_with(&d, &failing.allocator, NULL), failing.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert_int_eq(d.out[0] == 77, failing.has_failed);
        ck_assert(failing_is_clean(&failing));
    }
}
END_TEST

void add_scatter_sets(Suite *suite)
{
    TCase *sets = tcase_create("sets");
    tcase_set_timeout(sets, 60);
    tcase_add_test(sets, every_set_has_all_six_prints);
    tcase_add_test(sets, a_bundle_makes_sets_without_a_pair);
    tcase_add_test(sets, too_many_of_a_print_are_shared_out_evenly);
    tcase_add_test(sets, equal_strips_of_a_set_lie_apart_as_far_as_they_can);
    tcase_add_test(sets, what_there_is_too_much_of_stays_over);
    tcase_add_test(sets, a_seed_gives_one_deal_and_another_seed_another);
    tcase_add_test(sets, each_print_may_be_the_one_that_stays_short);
    tcase_add_test(sets, a_set_begins_with_its_commonest_print_half_of_the_time);
    tcase_add_test(sets, each_set_is_shuffled_for_itself);
    tcase_add_test(sets, any_two_prints_come_together_in_some_deal);
    tcase_add_test(sets, few_strips_are_dealt_as_well_as_any_deal);
    tcase_add_test(sets, many_strips_are_dealt_at_the_least);
    tcase_add_test(sets, sets_follow_the_rules_of_structs);
    tcase_add_test(sets, sets_out_of_their_range_are_named);
    tcase_add_test(sets, every_allocation_of_sets_may_fail);
    suite_add_tcase(suite, sets);
}
