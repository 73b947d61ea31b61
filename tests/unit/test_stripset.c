/* test_stripset.c - strip sets: yields against cutting a strip, wishes and bundles against counting.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

/* ---- the yield -------------------------------------------------------------------------------------------------- */

static struct muslin_yield yield_of(const struct muslin_yield_spec *spec)
{
    struct muslin_yield yield = { .size = (uint32_t)sizeof yield };
    ck_ok(muslin_stripset_yield(spec, &yield, NULL));
    return yield;
}

/* 6 1/2 in segments, 1/2 in trimmed at each end. */
static struct muslin_yield from_strip(muslin_len usable, muslin_len clear)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    spec.strip_length = usable;
    spec.segment_cut = IN(6, 1, 2);
    spec.end_trim = IN(0, 1, 2);
    spec.fold_clear = clear;
    return yield_of(&spec);
}

/* Common practice, no source: with 1/2 in trimmed at each end, three segments of 6 1/2 in from each end need exactly
 * 40 in. */
START_TEST(forty_inches_give_six_segments_with_no_slack)
{
    struct muslin_yield yield = from_strip(WHOLE_IN(40), 0);
    ck_assert_int_eq(yield.segments, 6);
    ck_assert_int_eq(yield.per_end, 3);
    ck_assert_int_eq(yield.least_length, WHOLE_IN(40));
    ck_assert_int_eq(yield.shorter_by, 0);
    ck_assert_int_eq(yield.longer_for_more, WHOLE_IN(13));
    ck_assert_int_eq(yield.left_over, 0);
    ck_assert_int_eq(yield.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(from_strip(WHOLE_IN(40) - 1, 0).segments, 4);
}
END_TEST

/* Geometry: 7 x 5 1/2 in and 1/2 in at each end are 39 1/2 in, so that 40 in give seven straight through; from both ends
 * three times 5 1/2 in lie in each half. What is kept clear at the fold counts from both ends alone. */
START_TEST(a_set_cut_straight_through_may_give_one_more)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    spec.segment_cut = IN(5, 1, 2);
    spec.end_trim = IN(0, 1, 2);
    ck_assert_int_eq(yield_of(&spec).segments, 6);
    ck_assert_int_eq(yield_of(&spec).from_one_end, 7);
    spec.fold_clear = WHOLE_IN(20);
    ck_assert_int_eq(yield_of(&spec).segments, 2);
    ck_assert_int_eq(yield_of(&spec).from_one_end, 7);
    spec.strip_length = IN(39, 1, 2);
    ck_assert_int_eq(yield_of(&spec).from_one_end, 7);
    spec.strip_length--;
    ck_assert_int_eq(yield_of(&spec).from_one_end, 6);
    spec.fold_clear = 0;
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    ck_assert_int_eq(yield_of(&spec).from_one_end, yield_of(&spec).segments);
    spec.strip_length = IN(6, 1, 2) - 1;
    ck_assert_int_eq(yield_of(&spec).from_one_end, 0);
}
END_TEST

/* Common practice, no source: the same strip with 1 in kept clear at the fold gives four. */
START_TEST(an_inch_kept_clear_costs_two_segments)
{
    struct muslin_yield yield = from_strip(WHOLE_IN(40), WHOLE_IN(1));
    ck_assert_int_eq(yield.segments, 4);
    ck_assert_int_eq(yield.shorter_by, WHOLE_IN(12));
    ck_assert_int_eq(yield.left_over, WHOLE_IN(13));
    ck_assert_int_eq(yield.longer_for_more, WHOLE_IN(1));
    ck_assert_int_eq(yield.warnings, 0);
}
END_TEST

/* Common practice, no source: 42 in give six with up to 2 in kept clear. */
START_TEST(forty_two_inches_leave_two_to_keep_clear)
{
    ck_assert_int_eq(from_strip(WHOLE_IN(42), 0).shorter_by, WHOLE_IN(2));
    ck_assert_int_eq(from_strip(WHOLE_IN(42), WHOLE_IN(2)).segments, 6);
    ck_assert_int_eq(from_strip(WHOLE_IN(42), WHOLE_IN(2)).shorter_by, 0);
    ck_assert_int_eq(from_strip(WHOLE_IN(42), WHOLE_IN(2) + 1).segments, 4);
}
END_TEST

static int64_t straight_through(muslin_len usable, muslin_len segment)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    spec.strip_length = usable;
    spec.segment_cut = segment;
    return yield_of(&spec).segments;
}

/* "Quick rail fence from 2.5 inch strips" (handout): sets 10 1/2 in wide cut into squares, 3 from 40 in, 4 from 42 in
 * with nothing to spare. S. Druding, "Mystery nine patch, part 4": 3 1/2 in sections, 11 at 40 in, 12 at 42 in. */
START_TEST(published_yields_cut_straight_through)
{
    ck_assert_int_eq(straight_through(WHOLE_IN(40), IN(10, 1, 2)), 3);
    ck_assert_int_eq(straight_through(WHOLE_IN(42), IN(10, 1, 2)), 4);
    ck_assert_int_eq(straight_through(WHOLE_IN(42) - 1, IN(10, 1, 2)), 3);
    ck_assert_int_eq(straight_through(WHOLE_IN(40), IN(3, 1, 2)), 11);
    ck_assert_int_eq(straight_through(WHOLE_IN(42), IN(3, 1, 2)), 12);
}
END_TEST

/* By hand: square after every 2 cuts, 1/4 in each time. From one end 7 cuts of 5 in need 3 squarings: 35 3/4 in. */
START_TEST(the_edge_is_not_squared_after_the_last_cut)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    spec.segment_cut = WHOLE_IN(5);
    spec.resquare_every = 2;
    spec.resquare_loss = IN(0, 1, 4);
    struct muslin_yield yield = yield_of(&spec);
    ck_assert_int_eq(yield.segments, 7);
    ck_assert_int_eq(yield.resquarings, 3);
    ck_assert_int_eq(yield.least_length, IN(35, 3, 4));
    ck_assert_int_eq(yield.left_over, IN(4, 1, 4));
    ck_assert_int_eq(yield.longer_for_more, IN(0, 3, 4));
    spec.strip_length = IN(20, 1, 4);
    ck_assert_int_eq(yield_of(&spec).segments, 4);
    ck_assert_int_eq(yield_of(&spec).resquarings, 1);
}
END_TEST

/* A strip cut up, segment by segment. Half ticks, so that half of an odd length is whole. */
struct cut_up {
    int64_t per_end;
    int64_t squarings;
    muslin_len left; /* of what one end has, in half ticks; below 0 when the trim was too much */
};

static struct cut_up cut_up(const struct muslin_yield_spec *spec, muslin_len length)
{
    int one_end = (spec->flags & MUSLIN_YIELD_FROM_ONE_END) != 0;
    muslin_len rest = one_end ? 2 * length : length - spec->fold_clear;
    struct cut_up done = { 0, 0, rest - (one_end ? 4 : 2) * spec->end_trim };
    for (;;) {
        int square_first = spec->resquare_every > 0 && done.per_end > 0 && done.per_end % spec->resquare_every == 0;
        muslin_len needs = 2 * (spec->segment_cut + (square_first ? spec->resquare_loss : 0));
        if (done.left < needs)
            return done;
        done.left -= needs;
        done.squarings += square_first;
        done.per_end++;
    }
}

/* Whether a yield says what cutting up strips of this and of neighbouring lengths says. */
static int agrees_with_cutting(const struct muslin_yield_spec *spec)
{
    int64_t ends = spec->flags & MUSLIN_YIELD_FROM_ONE_END ? 1 : 2;
    muslin_len length = spec->strip_length;
    struct muslin_yield yield = { .size = (uint32_t)sizeof yield };
    struct cut_up done = cut_up(spec, length);
    if (muslin_stripset_yield(spec, &yield, NULL) != MUSLIN_OK)
        return 0;
    int good = yield.per_end == done.per_end && yield.segments == ends * done.per_end;
    good &= yield.resquarings == ends * done.squarings;
    good &= yield.longer_for_more > 0;
    good &= cut_up(spec, length + yield.longer_for_more).per_end == done.per_end + 1;
    good &= cut_up(spec, length + yield.longer_for_more - 1).per_end == done.per_end;
    muslin_len left = ends == 1 ? done.left / 2 : done.left + spec->fold_clear;
    good &= yield.left_over == (left > 0 ? left : 0);
    if (done.per_end == 0)
        return good && yield.least_length == 0 && yield.shorter_by == 0 && yield.warnings == 0;
    good &= yield.shorter_by == length - yield.least_length;
    good &= cut_up(spec, yield.least_length).per_end == done.per_end;
    good &= cut_up(spec, yield.least_length - 1).per_end == done.per_end - 1;
    return good && yield.warnings == (yield.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0);
}

static int all_agree(struct muslin_yield_spec spec, uint32_t flags, muslin_len most_clear)
{
    int good = 1;
    spec.flags = flags;
    for (spec.strip_length = 0; spec.strip_length <= 33; spec.strip_length++)
        for (spec.end_trim = 0; spec.end_trim <= 3; spec.end_trim++)
            for (spec.fold_clear = 0; spec.fold_clear <= most_clear; spec.fold_clear++)
                good &= agrees_with_cutting(&spec);
    return good;
}

START_TEST(every_small_yield_is_what_cutting_the_strip_gives)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    int good = 1;
    for (spec.segment_cut = 1; spec.segment_cut <= 6; spec.segment_cut++)
        for (spec.resquare_loss = 0; spec.resquare_loss <= 4; spec.resquare_loss++)
            for (spec.resquare_every = 0; spec.resquare_every <= 4; spec.resquare_every++) {
                good &= all_agree(spec, 0, 4);
                good &= all_agree(spec, MUSLIN_YIELD_FROM_ONE_END, 0);
            }
    ck_assert(good);
}
END_TEST

/* What k cuts from each end need, by the formula, doubled. */
static muslin_len needed(const struct muslin_yield_spec *s, int64_t k)
{
    int64_t squarings = s->resquare_every > 0 && k > 0 ? (k - 1) / s->resquare_every : 0;
    muslin_len cuts = k * s->segment_cut + squarings * s->resquare_loss;
    return s->flags & MUSLIN_YIELD_FROM_ONE_END ? 2 * (2 * s->end_trim + cuts) : 2 * (s->end_trim + cuts);
}

static struct muslin_yield_spec drawn_yield(uint64_t *state)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    muslin_len segment_limit = INT64_C(1) << draw_from(state, 0, 30);
    spec.flags = draw(state) % 2 ? MUSLIN_YIELD_FROM_ONE_END : 0;
    spec.strip_length = draw_from(state, 0, MUSLIN_SIZE_MAX);
    spec.segment_cut = draw_from(state, 1, segment_limit);
    spec.end_trim = draw_from(state, 0, INT64_C(1) << draw_from(state, 0, 30));
    spec.resquare_loss = draw_from(state, 0, INT64_C(1) << draw_from(state, 0, 30));
    spec.resquare_every = draw_from(state, 0, draw(state) % 2 ? 9 : MUSLIN_COUNT_MAX);
    spec.fold_clear = spec.flags ? 0 : draw_from(state, 0, INT64_C(1) << draw_from(state, 0, 30));
    return spec;
}

START_TEST(in_strips_of_all_lengths_as_many_fit_as_the_formula_says)
{
    uint64_t state = 1959;
    int good = 1;
    for (int i = 0; i < 200000; i++) {
        struct muslin_yield_spec spec = drawn_yield(&state);
        struct muslin_yield yield = { .size = (uint32_t)sizeof yield };
        good &= muslin_stripset_yield(&spec, &yield, NULL) == MUSLIN_OK;
        muslin_len room = spec.flags ? 2 * spec.strip_length : spec.strip_length - spec.fold_clear;
        good &= yield.per_end == 0 || needed(&spec, yield.per_end) <= room;
        good &= needed(&spec, yield.per_end + 1) > room;
    }
    ck_assert(good);
}
END_TEST

START_TEST(the_longest_strip_in_the_smallest_segments)
{
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    spec.strip_length = MUSLIN_SIZE_MAX;
    spec.segment_cut = 1;
    ck_assert_int_eq(yield_of(&spec).segments, MUSLIN_SIZE_MAX);
    spec.resquare_every = MUSLIN_COUNT_MAX;
    spec.resquare_loss = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(yield_of(&spec).segments, MUSLIN_SIZE_MAX);
    spec.resquare_every = 1;
    ck_assert_int_eq(yield_of(&spec).segments, 2);
    spec.end_trim = MUSLIN_SIZE_MAX;
    spec.fold_clear = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(yield_of(&spec).segments, 0);
    ck_assert_int_eq(yield_of(&spec).left_over, 0);
    ck_assert_int_eq(yield_of(&spec).longer_for_more, 2 * MUSLIN_SIZE_MAX + 2);
}
END_TEST

static muslin_status call_yield(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stripset_yield(spec, out, problem);
}
static const struct muslin_yield_spec good_yield = {
    (uint32_t)sizeof good_yield, 0, WHOLE_IN(40), IN(6, 1, 2), IN(0, 1, 2), IN(0, 1, 8), 2, 0
};
static const struct ruled yield = RULED_GROWN(call_yield, good_yield, muslin_yield, from_one_end);

START_TEST(yield_checks_its_structs)
{
    ck_struct_rules(&yield);
}
END_TEST

START_TEST(yield_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_yield_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_yield_spec, strip_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_yield_spec, segment_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SEGMENT_CUT),
        OUTSIDE(muslin_yield_spec, end_trim, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_TRIM),
        OUTSIDE(muslin_yield_spec, resquare_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_RESQUARE_LOSS),
        OUTSIDE(muslin_yield_spec, resquare_every, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_RESQUARE_EVERY),
        OUTSIDE(muslin_yield_spec, fold_clear, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FOLD_CLEAR),
    };
    ck_refusals(&yield, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(cutting_from_one_end_keeps_nothing_clear)
{
    struct muslin_yield_spec spec = good_yield;
    const struct ruled one_end = RULED_GROWN(call_yield, spec, muslin_yield, from_one_end);
    const struct refusal clear = REFUSAL(muslin_yield_spec, fold_clear, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_FOLD_CLEAR);
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    ck_refusals(&one_end, &clear, 1);
}
END_TEST

/* ---- strips of unequal length ---------------------------------------------------------------------------------- */

START_TEST(the_shortest_strip_rules_the_set)
{
    const muslin_len lengths[] = { WHOLE_IN(41), WHOLE_IN(42), WHOLE_IN(40), WHOLE_IN(40) };
    muslin_len shortest = 0;
    size_t index = 9;
    uint32_t warnings = 0;
    ck_ok(muslin_stripset_shortest(lengths, 4, &shortest, &index, &warnings, NULL));
    ck_assert_int_eq(shortest, WHOLE_IN(40));
    ck_assert_uint_eq(index, 2);
    ck_assert_uint_eq(warnings, MUSLIN_WARN_MIXED_WIDTHS);
    ck_ok(muslin_stripset_shortest(lengths, 1, &shortest, NULL, NULL, NULL));
    ck_assert_int_eq(shortest, WHOLE_IN(41));
}
END_TEST

START_TEST(strips_of_one_length_are_not_mixed)
{
    const muslin_len lengths[] = { MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX };
    muslin_len shortest = 0;
    size_t index = 9;
    uint32_t warnings = 9;
    ck_ok(muslin_stripset_shortest(lengths, 3, &shortest, &index, &warnings, NULL));
    ck_assert_int_eq(shortest, MUSLIN_SIZE_MAX);
    ck_assert_uint_eq(index, 0);
    ck_assert_uint_eq(warnings, 0);
}
END_TEST

START_TEST(a_length_out_of_range_is_named_by_its_place)
{
    muslin_len lengths[] = { 5, 0, 7 };
    const muslin_len wrong[] = { -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        struct muslin_problem problem = PROBLEM;
        muslin_len shortest = 3;
        size_t index = 3;
        uint32_t warnings = 3;
        lengths[2] = wrong[i];
        ck_status(muslin_stripset_shortest(lengths, 3, &shortest, &index, &warnings, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIP_LENGTH);
        ck_assert_int_eq(problem.at, 2);
        ck_assert_int_eq(problem.value, wrong[i]);
        ck_assert(shortest == 3 && index == 3 && warnings == 3);
    }
    struct muslin_problem problem = PROBLEM;
    muslin_len shortest = 3;
    lengths[0] = -5;
    ck_status(muslin_stripset_shortest(lengths, 3, &shortest, NULL, NULL, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, -5);
}
END_TEST

START_TEST(shortest_needs_strips_and_somewhere_to_write)
{
    const muslin_len length = 5;
    const muslin_len lengths[] = { 6, 5 };
    muslin_len shortest = 3;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_stripset_shortest(&length, 0, &shortest, NULL, NULL, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIPS);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    ck_status(muslin_stripset_shortest(NULL, 1, &shortest, NULL, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIP_LENGTH);
    ck_status(muslin_stripset_shortest(lengths, 2, NULL, NULL, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(problem.at, 0);
    problem.size = 1;
    ck_status(muslin_stripset_shortest(&length, 1, &shortest, NULL, NULL, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(shortest, 3);
}
END_TEST

/* ---- from wishes to strips ------------------------------------------------------------------------------------- */

static struct muslin_need need_of(const struct muslin_need_spec *spec)
{
    struct muslin_need need = { .size = (uint32_t)sizeof need };
    ck_ok(muslin_stripset_need(spec, &need, NULL));
    return need;
}

/* "Quick rail fence from 2.5 inch strips" (handout): 42 blocks, 3 a set, 5 strips a set: 14 sets and 70 strips, so one
 * bundle of 40 is not enough. The cloth: 70 x 2 1/2 in by hand. */
START_TEST(a_rail_fence_needs_seventy_strips)
{
    const struct muslin_need_spec spec = { (uint32_t)sizeof spec, 0, 42, 3, 5, 40, IN(2, 1, 2) };
    struct muslin_need need = need_of(&spec);
    ck_assert_int_eq(need.sets, 14);
    ck_assert_int_eq(need.strips, 70);
    ck_assert_int_eq(need.spare_segments, 0);
    ck_assert_int_eq(need.bundles, 2);
    ck_assert_int_eq(need.spare_strips, 10);
    ck_assert_int_eq(need.cloth_length, WHOLE_IN(175));
}
END_TEST

/* Sets sewn, and bundles opened, until there is enough. */
static int agrees_with_sewing(const struct muslin_need_spec *spec)
{
    struct muslin_need need = { .size = (uint32_t)sizeof need };
    int64_t sets = 0;
    int64_t bundles = 0;
    if (muslin_stripset_need(spec, &need, NULL) != MUSLIN_OK)
        return 0;
    while (sets * spec->segments_per_set < spec->segments)
        sets++;
    int64_t strips = sets * spec->strips_per_set;
    while (spec->strips_per_bundle > 0 && bundles * spec->strips_per_bundle < strips)
        bundles++;
    int64_t spare = spec->strips_per_bundle > 0 ? bundles * spec->strips_per_bundle - strips : 0;
    return need.sets == sets && need.strips == strips && need.bundles == bundles && need.spare_strips == spare &&
           need.spare_segments == sets * spec->segments_per_set - spec->segments && need.cloth_length == strips * 7;
}

START_TEST(every_small_need_is_what_sewing_set_after_set_gives)
{
    struct muslin_need_spec spec = MUSLIN_NEED_SPEC_INIT;
    int good = 1;
    spec.strip_cut = 7;
    for (spec.segments = 0; spec.segments <= 20; spec.segments++)
        for (spec.segments_per_set = 1; spec.segments_per_set <= 7; spec.segments_per_set++)
            for (spec.strips_per_set = 1; spec.strips_per_set <= 5; spec.strips_per_set++)
                for (spec.strips_per_bundle = 0; spec.strips_per_bundle <= 12; spec.strips_per_bundle++)
                    good &= agrees_with_sewing(&spec);
    ck_assert(good);
}
END_TEST

START_TEST(sets_that_give_nothing_are_enough_for_nothing)
{
    struct muslin_need_spec spec = { (uint32_t)sizeof spec, 0, 0, 0, 5, 40, 20320 };
    struct muslin_need out = { .size = (uint32_t)sizeof out, .sets = 7 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(need_of(&spec).sets, 0);
    ck_assert_int_eq(need_of(&spec).strips, 0);
    ck_assert_int_eq(need_of(&spec).bundles, 0);
    spec.segments = 1;
    ck_status(muslin_stripset_need(&spec, &out, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEGMENTS_PER_SET);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    ck_assert_int_eq(out.sets, 7);
}
END_TEST

/* (2^31 - 1)^2 strips are a count, and of 1 tick each a length; of 2 ticks each they are too long. The longest length
 * is 2^62 - 1 = (2^31 - 1) x 715827883 x 3. */
START_TEST(cloth_beyond_the_longest_length_overflows)
{
    struct muslin_need_spec spec = { (uint32_t)sizeof spec, 0, MUSLIN_COUNT_MAX, 1, MUSLIN_COUNT_MAX, 1, 1 };
    const int64_t strips = MUSLIN_COUNT_MAX * MUSLIN_COUNT_MAX;
    struct muslin_need out = { .size = (uint32_t)sizeof out, .sets = 7 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(need_of(&spec).strips, strips);
    ck_assert_int_eq(need_of(&spec).bundles, strips);
    ck_assert_int_eq(need_of(&spec).cloth_length, strips);
    spec.strip_cut = 2;
    ck_status(muslin_stripset_need(&spec, &out, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.value, strips);
    ck_assert_int_eq(problem.limit, MUSLIN_LENGTH_MAX / 2);
    ck_assert_int_eq(out.sets, 7);
    spec.strips_per_set = 715827883;
    spec.strip_cut = 3;
    ck_assert_int_eq(need_of(&spec).cloth_length, MUSLIN_LENGTH_MAX);
    spec.strip_cut = MUSLIN_SIZE_MAX;
    spec.strips_per_set = 1;
    ck_assert_int_eq(need_of(&spec).cloth_length, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    spec.strip_cut = 0;
    spec.strips_per_set = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(need_of(&spec).cloth_length, 0);
}
END_TEST

static muslin_status call_need(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stripset_need(spec, out, problem);
}
static const struct muslin_need_spec good_need = { (uint32_t)sizeof good_need, 0, 42, 3, 5, 40, 20320 };
static const struct ruled need = RULED(call_need, good_need, muslin_need);

START_TEST(need_checks_its_structs)
{
    ck_struct_rules(&need);
}
END_TEST

START_TEST(need_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_need_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_need_spec, segments, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS),
        OUTSIDE(muslin_need_spec, segments_per_set, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS_PER_SET),
        OUTSIDE(muslin_need_spec, strips_per_set, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS_PER_SET),
        OUTSIDE(muslin_need_spec, strips_per_bundle, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS_PER_BUNDLE),
        OUTSIDE(muslin_need_spec, strip_cut, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),
    };
    ck_refusals(&need, refusals, COUNT_OF(refusals));
}
END_TEST

/* ---- from a bundle to wishes ----------------------------------------------------------------------------------- */

static struct muslin_harvest harvest_of(const struct muslin_harvest_spec *spec)
{
    struct muslin_harvest harvest = { .size = (uint32_t)sizeof harvest };
    ck_ok(muslin_stripset_harvest(spec, &harvest, NULL));
    return harvest;
}

/* Common practice, no source: 42 strips in sets of 6 that give six segments, blocks of two, tops of nine blocks: two
 * tops, and 6 strips left. The rest by counting: 7 sets, 42 segments, 21 blocks; the third top needs 9 sets. */
START_TEST(forty_two_strips_hold_two_tops_with_six_left)
{
    const struct muslin_harvest_spec spec = { (uint32_t)sizeof spec, 0, 42, 6, 6, 2, 9 };
    struct muslin_harvest harvest = harvest_of(&spec);
    ck_assert_int_eq(harvest.sets, 7);
    ck_assert_int_eq(harvest.segments, 42);
    ck_assert_int_eq(harvest.blocks, 21);
    ck_assert_int_eq(harvest.tops, 2);
    ck_assert_int_eq(harvest.sets_used, 6);
    ck_assert_int_eq(harvest.strips_used, 36);
    ck_assert_int_eq(harvest.strips_left, 6);
    ck_assert_int_eq(harvest.segments_left, 0);
    ck_assert_int_eq(harvest.blocks_left, 3);
    ck_assert_int_eq(harvest.strips_for_one_more, 12);
}
END_TEST

/* Tops sewn one after the other, a new set begun whenever the segments run out. */
static int agrees_with_harvesting(const struct muslin_harvest_spec *spec)
{
    struct muslin_harvest harvest = { .size = (uint32_t)sizeof harvest };
    int64_t strips = spec->strips;
    int64_t segments = 0;
    int64_t tops = -1;
    int64_t sets = 0;
    int64_t left = 0;
    if (muslin_stripset_harvest(spec, &harvest, NULL) != MUSLIN_OK)
        return 0;
    while (strips >= 0) {
        tops++;
        harvest.strips_left -= harvest.tops == tops ? strips : 0;
        harvest.sets_used -= harvest.tops == tops ? sets : 0;
        left = harvest.tops == tops ? segments : left;
        for (segments -= spec->segments_per_block * spec->blocks_per_top; segments < 0; sets++) {
            segments += spec->segments_per_set;
            strips -= spec->strips_per_set;
        }
    }
    int64_t all_segments = spec->strips / spec->strips_per_set * spec->segments_per_set;
    int64_t all_blocks = all_segments / spec->segments_per_block;
    return harvest.tops == tops && harvest.strips_left == 0 && harvest.sets_used == 0 &&
           harvest.segments_left == left && harvest.strips_for_one_more == -strips &&
           harvest.segments == all_segments && harvest.blocks == all_blocks &&
           harvest.blocks_left == all_blocks - tops * spec->blocks_per_top &&
           harvest.sets == spec->strips / spec->strips_per_set;
}

START_TEST(every_small_harvest_is_what_sewing_top_after_top_gives)
{
    struct muslin_harvest_spec spec = MUSLIN_HARVEST_SPEC_INIT;
    int good = 1;
    for (spec.strips = 0; spec.strips <= 30; spec.strips++)
        for (spec.strips_per_set = 1; spec.strips_per_set <= 4; spec.strips_per_set++)
            for (spec.segments_per_set = 1; spec.segments_per_set <= 6; spec.segments_per_set++)
                for (spec.segments_per_block = 1; spec.segments_per_block <= 4; spec.segments_per_block++)
                    for (spec.blocks_per_top = 1; spec.blocks_per_top <= 9; spec.blocks_per_top++)
                        good &= agrees_with_harvesting(&spec);
    ck_assert(good);
}
END_TEST

START_TEST(sets_that_give_nothing_make_no_top_of_any_number_of_strips)
{
    const struct muslin_harvest_spec spec = { (uint32_t)sizeof spec, 0, 42, 6, 0, 2, 9 };
    struct muslin_harvest harvest = harvest_of(&spec);
    ck_assert_int_eq(harvest.sets, 7);
    ck_assert_int_eq(harvest.segments, 0);
    ck_assert_int_eq(harvest.tops, 0);
    ck_assert_int_eq(harvest.sets_used, 0);
    ck_assert_int_eq(harvest.strips_left, 42);
    ck_assert_int_eq(harvest.strips_for_one_more, 0);
}
END_TEST

/* With M = 2^31 - 1, the largest count: one top of M x M segments takes M sets of M segments; with one strip a set
 * they are in hand, and one more top needs as many again. With M strips a set and one segment a set it needs M^3
 * strips, beyond 2^62. */
START_TEST(strips_for_one_more_top_beyond_all_counting_overflow)
{
    const int64_t m = MUSLIN_COUNT_MAX;
    struct muslin_harvest_spec spec = { (uint32_t)sizeof spec, 0, m, 1, m, m, m };
    struct muslin_harvest out = { .size = (uint32_t)sizeof out, .sets = 7 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(harvest_of(&spec).tops, 1);
    ck_assert_int_eq(harvest_of(&spec).strips_left, 0);
    ck_assert_int_eq(harvest_of(&spec).strips_for_one_more, m);
    spec.strips_per_set = m;
    spec.segments_per_set = 1;
    ck_status(muslin_stripset_harvest(&spec, &out, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCKS);
    ck_assert_int_eq(problem.value, m);
    ck_assert_int_eq(out.sets, 7);
}
END_TEST

/* 2^62 - 1 = (2^31 - 1) x 715827883 x 3. */
START_TEST(strips_for_one_more_top_may_be_the_longest_count)
{
    struct muslin_harvest_spec spec = { (uint32_t)sizeof spec, 0, 0, 3, 1, 715827883, MUSLIN_COUNT_MAX };
    ck_assert_int_eq(harvest_of(&spec).strips_for_one_more, MUSLIN_LENGTH_MAX);
}
END_TEST

static muslin_status call_harvest(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stripset_harvest(spec, out, problem);
}
static const struct muslin_harvest_spec good_harvest = { (uint32_t)sizeof good_harvest, 0, 42, 6, 6, 2, 9 };
static const struct ruled harvest = RULED(call_harvest, good_harvest, muslin_harvest);

START_TEST(harvest_checks_its_structs)
{
    ck_struct_rules(&harvest);
}
END_TEST

START_TEST(harvest_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_harvest_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_harvest_spec, strips, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS),
        OUTSIDE(muslin_harvest_spec, strips_per_set, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS_PER_SET),
        OUTSIDE(muslin_harvest_spec, segments_per_set, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS_PER_SET),
        OUTSIDE(muslin_harvest_spec, segments_per_block, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS_PER_BLOCK),
        OUTSIDE(muslin_harvest_spec, blocks_per_top, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_BLOCKS),
    };
    ck_refusals(&harvest, refusals, COUNT_OF(refusals));
}
END_TEST

/* ---- sets with different prints -------------------------------------------------------------------------------- */

#define PRINT(in_hand, per_set) { (uint32_t)sizeof(struct muslin_stripset_print), 0, (in_hand), (per_set), 77 }

/* By counting: 6 blue strips at 1 a set make 6 sets, 20 dark ones at 4 a set make 5, 11 light ones at 2 a set make 5
 * and leave 1; the red ones are not used. */
START_TEST(the_scarcest_print_decides_how_many_sets_there_are)
{
    struct muslin_stripset_print rows[] = { PRINT(3, 0), PRINT(6, 1), PRINT(20, 4), PRINT(11, 2) };
    const int64_t left[] = { 3, 1, 0, 1 };
    int64_t sets = 0;
    size_t scarcest = 9;
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 4, 0, &sets, &scarcest, NULL));
    ck_assert_int_eq(sets, 5);
    ck_assert_uint_eq(scarcest, 2);
    for (size_t i = 0; i < COUNT_OF(left); i++)
        ck_assert_int_eq(rows[i].left_over, left[i]);
    ck_assert_int_eq(rows[3].in_hand, 11);
    ck_assert_int_eq(rows[3].per_set, 2);
}
END_TEST

START_TEST(sets_wished_for_say_what_is_missing)
{
    struct muslin_stripset_print rows[] = { PRINT(20, 4), PRINT(11, 2) };
    int64_t sets = 0;
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 2, 7, &sets, NULL, NULL));
    ck_assert_int_eq(sets, 7);
    ck_assert_int_eq(rows[0].left_over, -8);
    ck_assert_int_eq(rows[1].left_over, -3);
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 2, 1, &sets, NULL, NULL));
    ck_assert_int_eq(sets, 1);
    ck_assert_int_eq(rows[0].left_over, 16);
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 2, MUSLIN_COUNT_MAX, &sets, NULL, NULL));
    ck_assert_int_eq(rows[0].left_over, 20 - 4 * MUSLIN_COUNT_MAX);
}
END_TEST

START_TEST(the_largest_counts_of_prints_are_still_right)
{
    struct muslin_stripset_print rows[] = { PRINT(0, MUSLIN_COUNT_MAX), PRINT(MUSLIN_COUNT_MAX, 1) };
    int64_t sets = 9;
    size_t scarcest = 9;
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 2, MUSLIN_COUNT_MAX, &sets, &scarcest, NULL));
    ck_assert_int_eq(rows[0].left_over, -MUSLIN_COUNT_MAX * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(rows[1].left_over, 0);
    ck_assert_uint_eq(scarcest, 0);
    ck_ok(muslin_stripset_prints(&rows[1], sizeof rows[0], 1, 0, &sets, &scarcest, NULL));
    ck_assert_int_eq(sets, MUSLIN_COUNT_MAX);
}
END_TEST

/* Rows at a stride of their own, misaligned on purpose, some larger than the library knows. */
START_TEST(rows_lie_at_the_callers_stride_and_keep_their_own_size)
{
    enum { STRIDE = 53, ROWS = 3 };
    unsigned char bytes[STRIDE * ROWS];
    const uint32_t size = (uint32_t)sizeof(struct muslin_stripset_print);
    const uint32_t sizes[ROWS] = { size, size + 8, STRIDE };
    memset(bytes, FILL, sizeof bytes);
    for (size_t i = 0; i < ROWS; i++) {
        struct muslin_stripset_print row = PRINT((int64_t)(10 + i), 2);
        row.size = sizes[i];
        memset(bytes + i * STRIDE, 0, sizes[i]);
        memcpy(bytes + i * STRIDE, &row, sizeof row);
    }
    int64_t sets = 0;
    ck_ok(muslin_stripset_prints((struct muslin_stripset_print *)(void *)bytes, STRIDE, ROWS, 0, &sets, NULL, NULL));
    ck_assert_int_eq(sets, 5);
    for (size_t i = 0; i < ROWS; i++) {
        struct muslin_stripset_print row;
        memcpy(&row, bytes + i * STRIDE, sizeof row);
        ck_assert_uint_eq(row.size, sizes[i]);
        ck_assert_int_eq(row.in_hand, (int64_t)(10 + i));
        ck_assert_int_eq(row.left_over, (int64_t)i);
        for (size_t at = sizes[i]; at < STRIDE; at++)
            ck_assert_uint_eq(bytes[i * STRIDE + at], FILL);
    }
}
END_TEST

START_TEST(the_largest_row_size_is_taken)
{
    union roomy roomy;
    const struct muslin_stripset_print row = PRINT(9, 2);
    int64_t sets = 0;
    lay_out(&roomy, &row, (uint32_t)sizeof row);
    ck_ok(muslin_stripset_prints((struct muslin_stripset_print *)(void *)&roomy, 4096, 1, 0, &sets, NULL, NULL));
    ck_assert_int_eq(sets, 4);
}
END_TEST

/* A call on rows that must fail, and leave them and its outputs alone. */
static void prints_fail(struct muslin_stripset_print *rows, size_t row_size, size_t n, muslin_status status,
                        int32_t argument, int64_t at)
{
    unsigned char before[256];
    struct muslin_problem problem = PROBLEM;
    int64_t sets = 3;
    size_t scarcest = 3;
    memcpy(before, rows, 3 * sizeof *rows);
    ck_status(muslin_stripset_prints(rows, row_size, n, 0, &sets, &scarcest, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, at);
    ck_assert_mem_eq(before, rows, 3 * sizeof *rows);
    ck_assert(sets == 3 && scarcest == 3);
}

START_TEST(a_row_that_is_wrong_is_named_and_no_row_is_touched)
{
    struct muslin_stripset_print rows[] = { PRINT(20, 4), PRINT(11, 2), PRINT(5, 1) };
    const int64_t wrong[] = { -1, MUSLIN_COUNT_MAX + 1, INT64_MIN, INT64_MAX };
    const size_t stride = sizeof rows[0];
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        rows[1].in_hand = wrong[i];
        prints_fail(rows, stride, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_IN_HAND, 1);
        rows[1].in_hand = 11;
        rows[2].per_set = wrong[i];
        prints_fail(rows, stride, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_PER_SET, 2);
        rows[2].per_set = 1;
    }
    rows[1].flags = 1;
    prints_fail(rows, stride, 3, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 1);
    rows[1].flags = 0;
    rows[2].size = 0;
    prints_fail(rows, stride, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, 2);
    rows[2].size = (uint32_t)stride + 1;
    prints_fail(rows, stride, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, 2);
    rows[0].size = 2 * (uint32_t)stride;
    prints_fail(rows, 2 * stride, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_ROWS, 0);
}
END_TEST

START_TEST(a_row_size_is_that_of_a_row)
{
    struct muslin_stripset_print rows[] = { PRINT(20, 4), PRINT(11, 2), PRINT(5, 1) };
    prints_fail(rows, sizeof rows[0] - 1, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    prints_fail(rows, 0, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    prints_fail(rows, 4097, 3, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    prints_fail(rows, SIZE_MAX, 1, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 0);
    struct muslin_problem problem = PROBLEM;
    int64_t sets = 0;
    ck_status(muslin_stripset_prints(rows, SIZE_MAX, 3, 0, &sets, NULL, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.value, 4097);
    ck_assert_int_eq(problem.limit, 4096);
}
END_TEST

START_TEST(some_print_must_be_in_the_sets)
{
    struct muslin_stripset_print rows[] = { PRINT(20, 0), PRINT(11, 0), PRINT(5, 0) };
    prints_fail(rows, sizeof rows[0], 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_PER_SET, 0);
    prints_fail(rows, sizeof rows[0], 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_PER_SET, 0);
    struct muslin_problem problem = PROBLEM;
    int64_t sets = 0;
    ck_status(muslin_stripset_prints(rows, sizeof rows[0], 3, 0, &sets, NULL, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
}
END_TEST

START_TEST(prints_need_rows_an_output_and_a_count_of_sets)
{
    struct muslin_stripset_print row = PRINT(20, 4);
    struct muslin_problem problem = PROBLEM;
    int64_t sets = 3;
    ck_status(muslin_stripset_prints(NULL, sizeof row, 1, 0, &sets, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_stripset_prints(&row, sizeof row, 1, 0, NULL, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_status(muslin_stripset_prints(&row, sizeof row, 1, -1, &sets, NULL, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SETS);
    ck_status(muslin_stripset_prints(NULL, 0, 0, 0, &sets, NULL, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PER_SET);
    ck_status(muslin_stripset_prints(&row, sizeof row, 1, MUSLIN_COUNT_MAX + 1, &sets, NULL, &problem),
              MUSLIN_ERR_RANGE);
    problem.size = 1;
    ck_status(muslin_stripset_prints(&row, sizeof row, 1, 0, &sets, NULL, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(sets, 3);
    ck_assert_int_eq(row.left_over, 77);
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(yield)
INIT_CALL(need)
INIT_CALL(harvest)
ROW_INIT_CALL(stripset_print)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_yield_spec yield_spec = MUSLIN_YIELD_SPEC_INIT;
    const struct muslin_need_spec need_spec = MUSLIN_NEED_SPEC_INIT;
    const struct muslin_harvest_spec harvest_spec = MUSLIN_HARVEST_SPEC_INIT;
    ck_init_rules(init_yield, &yield_spec, (uint32_t)sizeof yield_spec);
    ck_init_rules(init_need, &need_spec, (uint32_t)sizeof need_spec);
    ck_init_rules(init_harvest, &harvest_spec, (uint32_t)sizeof harvest_spec);
    const struct muslin_stripset_print print = MUSLIN_STRIPSET_PRINT_INIT;
    ck_init_rules(init_stripset_print, &print, (uint32_t)sizeof print);
    ck_assert_int_eq(yield_spec.strip_length, WHOLE_IN(40));
}
END_TEST

static void add_yield(Suite *suite)
{
    TCase *tcase = tcase_create("yield");
    tcase_add_test(tcase, forty_inches_give_six_segments_with_no_slack);
    tcase_add_test(tcase, a_set_cut_straight_through_may_give_one_more);
    tcase_add_test(tcase, an_inch_kept_clear_costs_two_segments);
    tcase_add_test(tcase, forty_two_inches_leave_two_to_keep_clear);
    tcase_add_test(tcase, published_yields_cut_straight_through);
    tcase_add_test(tcase, the_edge_is_not_squared_after_the_last_cut);
    tcase_add_test(tcase, every_small_yield_is_what_cutting_the_strip_gives);
    tcase_add_test(tcase, in_strips_of_all_lengths_as_many_fit_as_the_formula_says);
    tcase_add_test(tcase, the_longest_strip_in_the_smallest_segments);
    tcase_add_test(tcase, yield_checks_its_structs);
    tcase_add_test(tcase, yield_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, cutting_from_one_end_keeps_nothing_clear);
    suite_add_tcase(suite, tcase);
}

static void add_strips(Suite *suite)
{
    TCase *tcase = tcase_create("strips");
    tcase_add_test(tcase, the_shortest_strip_rules_the_set);
    tcase_add_test(tcase, strips_of_one_length_are_not_mixed);
    tcase_add_test(tcase, a_length_out_of_range_is_named_by_its_place);
    tcase_add_test(tcase, shortest_needs_strips_and_somewhere_to_write);
    tcase_add_test(tcase, a_rail_fence_needs_seventy_strips);
    tcase_add_test(tcase, every_small_need_is_what_sewing_set_after_set_gives);
    tcase_add_test(tcase, sets_that_give_nothing_are_enough_for_nothing);
    tcase_add_test(tcase, cloth_beyond_the_longest_length_overflows);
    tcase_add_test(tcase, need_checks_its_structs);
    tcase_add_test(tcase, need_refuses_what_lies_outside_its_ranges);
    suite_add_tcase(suite, tcase);
}

static void add_harvest(Suite *suite)
{
    TCase *tcase = tcase_create("harvest");
    tcase_add_test(tcase, forty_two_strips_hold_two_tops_with_six_left);
    tcase_add_test(tcase, every_small_harvest_is_what_sewing_top_after_top_gives);
    tcase_add_test(tcase, sets_that_give_nothing_make_no_top_of_any_number_of_strips);
    tcase_add_test(tcase, strips_for_one_more_top_beyond_all_counting_overflow);
    tcase_add_test(tcase, strips_for_one_more_top_may_be_the_longest_count);
    tcase_add_test(tcase, harvest_checks_its_structs);
    tcase_add_test(tcase, harvest_refuses_what_lies_outside_its_ranges);
    suite_add_tcase(suite, tcase);
}

static void add_prints(Suite *suite)
{
    TCase *tcase = tcase_create("prints");
    tcase_add_test(tcase, the_scarcest_print_decides_how_many_sets_there_are);
    tcase_add_test(tcase, sets_wished_for_say_what_is_missing);
    tcase_add_test(tcase, the_largest_counts_of_prints_are_still_right);
    tcase_add_test(tcase, rows_lie_at_the_callers_stride_and_keep_their_own_size);
    tcase_add_test(tcase, the_largest_row_size_is_taken);
    tcase_add_test(tcase, a_row_that_is_wrong_is_named_and_no_row_is_touched);
    tcase_add_test(tcase, a_row_size_is_that_of_a_row);
    tcase_add_test(tcase, some_print_must_be_in_the_sets);
    tcase_add_test(tcase, prints_need_rows_an_output_and_a_count_of_sets);
    tcase_add_test(tcase, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, tcase);
}

Suite *stripset_suite(void);

Suite *stripset_suite(void)
{
    Suite *suite = suite_create("stripset");
    add_yield(suite);
    add_strips(suite);
    add_harvest(suite);
    add_prints(suite);
    return suite;
}
