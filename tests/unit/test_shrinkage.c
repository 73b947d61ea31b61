/* test_shrinkage.c - what washing does to a size, batting and cloth: published samples.
 *
 * SPDX-License-Identifier: MIT */
#include "test_shrinkage.h"

/* ---- what was measured ------------------------------------------------------------------------------------------ */

static int32_t change_of(muslin_len before, muslin_len after)
{
    int32_t ppm = 7;
    ck_ok(muslin_shrinkage_change(before, after, &ppm, NULL));
    return ppm;
}

/* "Q&A: shrinkage example 20 to 17" (Q&A page): 15 % shrinkage, with the sign of ISO 5077 -15 %. */
START_TEST(twenty_inches_washed_to_seventeen_shrank_by_fifteen_per_cent)
{
    /* Example: 20 in before and 17 in after: -150000, shrunk by 15 %. */
    ck_assert_int_eq(change_of(WHOLE_IN(20), WHOLE_IN(17)), -150000);
    ck_assert_int_eq(change_of(WHOLE_IN(20), WHOLE_IN(23)), 150000);
    ck_assert_int_eq(change_of(WHOLE_IN(20), WHOLE_IN(20)), 0);
    ck_assert_int_eq(change_of(WHOLE_IN(20), 0), -MUSLIN_PPM);
}
END_TEST

/* "How to make a quilt finish at a certain size" (blog, 2020): 20 in quilted to 19 7/8 and washed to 18 1/4 in, 9 in to
 * 8 1/2 in across: -0.625 % by quilting, -8.75 % and -5.56 % in all. */
START_TEST(a_published_sample_shrank_in_quilting_and_in_washing)
{
    ck_assert_int_eq(change_of(WHOLE_IN(20), IN(19, 7, 8)), -6250);
    ck_assert_int_eq(change_of(WHOLE_IN(20), IN(18, 1, 4)), -87500);
    ck_assert_int_eq(change_of(WHOLE_IN(9), IN(8, 1, 2)), -55556);
}
END_TEST

/* 1 in 2 x 10^6 is half a part per million: ties go up, also below zero. */
START_TEST(changes_are_rounded_to_the_nearest_with_ties_up)
{
    ck_assert_int_eq(change_of(2000000, 2000001), 1);
    ck_assert_int_eq(change_of(2000000, 1999999), 0);
    ck_assert_int_eq(change_of(2000000, 1999997), -1);
    ck_assert_int_eq(change_of(3, 2), -333333);
    ck_assert_int_eq(change_of(3, 1), -666667);
}
END_TEST

/* Which of the two measures was refused, and why. */
static struct muslin_problem refused_change(muslin_len before, muslin_len after)
{
    struct muslin_problem problem = PROBLEM;
    int32_t ppm = 7;
    ck_status(muslin_shrinkage_change(before, after, &ppm, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(ppm, 7);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURED);
    return problem;
}

START_TEST(a_measure_may_have_grown_tenfold_at_most)
{
    ck_assert_int_eq(change_of(1, 10), 9000000);
    ck_assert_int_eq(change_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX), 0);
    ck_assert_int_eq(change_of(MUSLIN_SIZE_MAX, 0), -MUSLIN_PPM);
    ck_assert_int_eq(refused_change(0, 0).at, 0);
    ck_assert_int_eq(refused_change(-1, 1).value, -1);
    ck_assert_int_eq(refused_change(MUSLIN_SIZE_MAX + 1, 1).limit, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(refused_change(8, -1).at, 1);
    ck_assert_int_eq(refused_change(8, 81).at, 1);
    ck_assert_int_eq(refused_change(8, 81).limit, 80);
    ck_assert_int_eq(refused_change(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX + 1).limit, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(refused_change(INT64_MIN, INT64_MAX).at, 0);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_shrinkage_change(8, 8, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(problem.at, 0);
    struct muslin_problem bad = { .size = 8 };
    int32_t ppm = 7;
    ck_status(muslin_shrinkage_change(8, 8, &ppm, &bad), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(ppm, 7);
}
END_TEST

static struct muslin_wash_change measured(muslin_len before_width, muslin_len after_width, muslin_len before_length,
                                          muslin_len after_length)
{
    struct muslin_wash_spec spec = { (uint32_t)sizeof spec, 0, before_width, after_width, before_length, after_length };
    struct muslin_wash_change wash = { .size = (uint32_t)sizeof wash };
    ck_ok(muslin_shrinkage_measure(&spec, &wash, NULL));
    return wash;
}

/* "How is shrinkage amount calculated?" (quilting forum thread): 36 x 42 in washed to 35 x 41 in: 2.78, 2.38 and
 * 5.09 %. 1512 and 1435 square inches. */
START_TEST(an_area_shrinks_by_more_than_either_side)
{
    /* Example: 42 x 36 in washed to 41 x 35 in: -23810 across, -27778 along, -50926 in area. */
    struct muslin_wash_change wash = measured(WHOLE_IN(42), WHOLE_IN(41), WHOLE_IN(36), WHOLE_IN(35));
    ck_assert_int_eq(wash.change_across, -23810);
    ck_assert_int_eq(wash.change_along, -27778);
    ck_assert_int_eq(wash.change_area, -50926);
    ck_assert_int_eq(wash.area_before, INT64_C(2) * 1512 * 8128 * 8128);
    ck_assert_int_eq(wash.area_after, INT64_C(2) * 1435 * 8128 * 8128);
    ck_assert_int_ne(wash.change_area, wash.change_across + wash.change_along);
}
END_TEST

START_TEST(the_largest_areas_do_not_overflow)
{
    struct muslin_wash_change wash = measured(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX / 2);
    ck_assert_int_eq(wash.area_before, 2 * MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(wash.change_area, -500000);
    wash = measured(MUSLIN_SIZE_MAX / 16, MUSLIN_SIZE_MAX / 16 * 10, 1, 10);
    ck_assert_int_eq(wash.change_area, 99 * MUSLIN_PPM);
    wash = measured(MUSLIN_SIZE_MAX, 0, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(wash.change_area, -MUSLIN_PPM);
}
END_TEST

static muslin_status call_measure(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_shrinkage_measure(spec, out, problem);
}
static const struct muslin_wash_spec good_wash = {
    (uint32_t)sizeof good_wash, 0, WHOLE_IN(42), WHOLE_IN(41), WHOLE_IN(36), WHOLE_IN(35)
};
static const struct ruled measure = RULED(call_measure, good_wash, muslin_wash_change);

START_TEST(measure_checks_its_structs)
{
    ck_struct_rules(&measure);
    ck_no_flag_known(&measure);
}
END_TEST

START_TEST(measure_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_wash_spec, before_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MEASURED),
        OUTSIDE(muslin_wash_spec, after_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MEASURED),
        BEYOND(muslin_wash_spec, after_width, 10 * WHOLE_IN(42) + 1, 10 * WHOLE_IN(42), MUSLIN_ARG_MEASURED),
        OUTSIDE(muslin_wash_spec, before_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_MEASURED),
        OUTSIDE(muslin_wash_spec, after_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MEASURED),
        BEYOND(muslin_wash_spec, after_length, 10 * WHOLE_IN(36) + 1, 10 * WHOLE_IN(36), MUSLIN_ARG_MEASURED),
    };
    ck_refusals(&measure, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(measure_says_which_measure_is_meant)
{
    for (int64_t at = 0; at < 4; at++) {
        struct muslin_wash_spec spec = good_wash;
        struct muslin_wash_change out = { .size = (uint32_t)sizeof out };
        struct muslin_problem problem = PROBLEM;
        muslin_len *const measures[] = { &spec.before_width, &spec.after_width, &spec.before_length,
                                         &spec.after_length };
        *measures[at] = -1;
        ck_status(muslin_shrinkage_measure(&spec, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.at, at);
    }
}
END_TEST

/* ---- from a sample ---------------------------------------------------------------------------------------------- */

static struct muslin_rounded sampled(muslin_len before, muslin_len after, muslin_len target, muslin_len grid,
                                     int32_t direction)
{
    struct muslin_rounding_spec rounding = rounding_to(grid, direction);
    struct muslin_rounded make_it = { .size = (uint32_t)sizeof make_it };
    ck_ok(muslin_shrinkage_from_sample(before, after, target, &rounding, &make_it, NULL));
    return make_it;
}

/* The blog prints both: 20 in to 18 in, 100 in to be made for 90 in; and its sample of 9 x 20 in. 90 in over
 * 18 1/4 times 20 is 98.63 in. */
START_TEST(a_sample_tells_the_size_to_make)
{
    /* Example: a sample of 20 in came out at 18 in; for 90 in make 100 in. */
    struct muslin_rounded make_it = sampled(WHOLE_IN(20), WHOLE_IN(18), WHOLE_IN(90), 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(make_it.value, WHOLE_IN(100));
    ck_assert_int_eq(make_it.exact, 1);
    ck_assert_int_eq(sampled(WHOLE_IN(20), IN(18, 1, 4), WHOLE_IN(90), IN(0, 1, 8), MUSLIN_DIRECTION_UP).value,
                     IN(98, 3, 4));
    ck_assert_int_eq(sampled(WHOLE_IN(20), IN(18, 1, 4), WHOLE_IN(90), IN(0, 1, 8), MUSLIN_DIRECTION_DOWN).value,
                     IN(98, 5, 8));
}
END_TEST

START_TEST(samples_may_be_of_any_size)
{
    ck_assert_int_eq(sampled(MUSLIN_SIZE_MAX, 1, MUSLIN_SIZE_MAX, 1, MUSLIN_DIRECTION_UP).value,
                     MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(sampled(1, MUSLIN_SIZE_MAX, 1, 1, MUSLIN_DIRECTION_UP).value, 1);
    ck_assert_int_eq(sampled(1, MUSLIN_SIZE_MAX, 1, 1, MUSLIN_DIRECTION_DOWN).value, 0);
    ck_assert_int_eq(sampled(5, 7, 0, 8, MUSLIN_DIRECTION_UP).value, 0);
    ck_assert_int_eq(sampled(8, 9, 9, 1, MUSLIN_DIRECTION_UP).value, 8); /* one that grew */
}
END_TEST

struct sample {
    muslin_len before;
    muslin_len after;
    muslin_len target;
    int32_t argument;
    int64_t at;
};

START_TEST(a_sample_refuses_what_lies_outside_its_ranges)
{
    const struct sample samples[] = {
        { 0, 1, 1, MUSLIN_ARG_MEASURED, 0 },  { MUSLIN_SIZE_MAX + 1, 1, 1, MUSLIN_ARG_MEASURED, 0 },
        { 1, 0, 1, MUSLIN_ARG_MEASURED, 1 },  { 1, MUSLIN_SIZE_MAX + 1, 1, MUSLIN_ARG_MEASURED, 1 },
        { 1, 1, -1, MUSLIN_ARG_FINISHED, 0 }, { 1, 1, MUSLIN_SIZE_MAX + 1, MUSLIN_ARG_FINISHED, 0 },
    };
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    for (size_t i = 0; i < COUNT_OF(samples); i++) {
        union roomy out;
        struct muslin_problem problem = PROBLEM;
        lay_out_output(&out, (uint32_t)sizeof(struct muslin_rounded));
        ck_status(muslin_shrinkage_from_sample(samples[i].before, samples[i].after, samples[i].target, &rounding,
                                               (struct muslin_rounded *)(void *)&out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, samples[i].argument);
        ck_assert_int_eq(problem.at, samples[i].at);
        ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    }
}
END_TEST

static muslin_status call_sample(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_shrinkage_from_sample(20, 18, 90, spec, out, problem);
}
static const struct muslin_rounding_spec good_rounding = MUSLIN_ROUNDING_SPEC_INIT;
static const struct ruled sample = RULED(call_sample, good_rounding, muslin_rounded);

START_TEST(sample_checks_its_structs)
{
    ck_struct_rules(&sample);
    ck_no_flag_known(&sample);
}
END_TEST

/* ---- fabric and batting ----------------------------------------------------------------------------------------- */

static struct muslin_governing governs(int32_t fabric, int32_t batting, int32_t rule)
{
    struct muslin_governing governing = { .size = (uint32_t)sizeof governing };
    ck_ok(muslin_shrinkage_governs(fabric, batting, rule, &governing, NULL));
    return governing;
}

/* "Post: planning for 3-5% batting shrinkage" (quilting forum, 2014): closely quilted, the batting governs. */
START_TEST(in_a_closely_quilted_quilt_the_batting_governs)
{
    /* Example: fabric 2 %, batting 5 %, MUSLIN_GOVERNING_RULE_BATTING: 50000, governed by the batting. */
    struct muslin_governing governing = governs(2 * PER_CENT, 5 * PER_CENT, MUSLIN_GOVERNING_RULE_BATTING);
    ck_assert_int_eq(governing.share, 50000);
    ck_assert_int_eq(governing.source, MUSLIN_GOVERNING_SOURCE_BATTING);
    ck_assert_int_eq(governs(5 * PER_CENT, 0, MUSLIN_GOVERNING_RULE_BATTING).share, 0); /* polyester does not shrink */
}
END_TEST

START_TEST(another_rule_names_another_share)
{
    const struct {
        int32_t fabric, batting, rule, share, source;
    } cases[] = {
        { 2, 5, MUSLIN_GOVERNING_RULE_FABRIC, 2, MUSLIN_GOVERNING_SOURCE_FABRIC },
        { 5, 2, MUSLIN_GOVERNING_RULE_FABRIC, 5, MUSLIN_GOVERNING_SOURCE_FABRIC },
        { 3, 3, MUSLIN_GOVERNING_RULE_FABRIC, 3, MUSLIN_GOVERNING_SOURCE_FABRIC },
        { 3, 3, MUSLIN_GOVERNING_RULE_BATTING, 3, MUSLIN_GOVERNING_SOURCE_BATTING },
        { 2, 5, MUSLIN_GOVERNING_RULE_LARGER, 5, MUSLIN_GOVERNING_SOURCE_BATTING },
        { 5, 2, MUSLIN_GOVERNING_RULE_LARGER, 5, MUSLIN_GOVERNING_SOURCE_FABRIC },
        { 3, 3, MUSLIN_GOVERNING_RULE_LARGER, 3, MUSLIN_GOVERNING_SOURCE_BOTH },
        { 2, 5, MUSLIN_GOVERNING_RULE_SMALLER, 2, MUSLIN_GOVERNING_SOURCE_FABRIC },
        { 5, 2, MUSLIN_GOVERNING_RULE_SMALLER, 2, MUSLIN_GOVERNING_SOURCE_BATTING },
        { 3, 3, MUSLIN_GOVERNING_RULE_SMALLER, 3, MUSLIN_GOVERNING_SOURCE_BOTH },
    };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct muslin_governing governing = governs(cases[i].fabric, cases[i].batting, cases[i].rule);
        ck_assert_int_eq(governing.share, cases[i].share);
        ck_assert_int_eq(governing.source, cases[i].source);
    }
}
END_TEST

START_TEST(governs_refuses_what_is_no_share_and_no_rule)
{
    const struct {
        int32_t fabric, batting, rule;
        muslin_status status;
        int32_t argument, at;
    } cases[] = {
        { -1, 5, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE, 0 },
        { MUSLIN_PPM, 5, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE, 0 },
        { 5, -1, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE, 1 },
        { 5, MUSLIN_PPM, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_SHRINKAGE, 1 },
        { 5, 5, 0, MUSLIN_ERR_CHOICE, MUSLIN_ARG_GOVERNING_RULE, 0 },
        { 5, 5, 5, MUSLIN_ERR_CHOICE, MUSLIN_ARG_GOVERNING_RULE, 0 },
        { 5, 5, INT32_MIN, MUSLIN_ERR_CHOICE, MUSLIN_ARG_GOVERNING_RULE, 0 },
    };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        union roomy out;
        struct muslin_problem problem = PROBLEM;
        lay_out_output(&out, (uint32_t)sizeof(struct muslin_governing));
        ck_status(muslin_shrinkage_governs(cases[i].fabric, cases[i].batting, cases[i].rule,
                                           (struct muslin_governing *)(void *)&out, &problem), cases[i].status);
        ck_assert_int_eq(problem.argument, cases[i].argument);
        ck_assert_int_eq(problem.at, cases[i].at);
        ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    }
    ck_assert_int_eq(governs(MUSLIN_PPM - 1, 0, MUSLIN_GOVERNING_RULE_LARGER).share, MUSLIN_PPM - 1);
    ck_status(muslin_shrinkage_governs(0, 0, 1, NULL, NULL), MUSLIN_ERR_NULL);
    struct muslin_governing small = { .size = 8 };
    ck_status(muslin_shrinkage_governs(0, 0, 1, &small, NULL), MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

/* ---- cloth washed before it is cut ------------------------------------------------------------------------------ */

static struct muslin_prewash prewashed(muslin_len needed, muslin_len usable, int32_t across, int32_t along)
{
    struct muslin_prewash_spec spec = MUSLIN_PREWASH_SPEC_INIT;
    struct muslin_prewash wash = { .size = (uint32_t)sizeof wash };
    spec.needed_length = needed;
    spec.usable_width = usable;
    spec.across = across;
    spec.along = along;
    ck_ok(muslin_shrinkage_prewash(&spec, &wash, NULL));
    return wash;
}

/* 144 / 0.96 = 150 in; 42 x 0.97 = 40.74 in = 331134.72 ticks. */
START_TEST(cloth_shrinks_both_ways)
{
    /* Example: 4 yd needed, 42 in usable, 3 % lost across and 4 % along: 150 in to wash, 40.74 in usable afterwards. */
    struct muslin_prewash wash = prewashed(WHOLE_IN(144), WHOLE_IN(42), 3 * PER_CENT, 4 * PER_CENT);
    ck_assert_int_eq(wash.unshrunk_length, WHOLE_IN(150));
    ck_assert_int_eq(wash.washed_width, 331134);
    ck_assert_int_eq(wash.lost_length, WHOLE_IN(6));
    ck_assert_int_eq(wash.lost_width, WHOLE_IN(42) - 331134);
    wash = prewashed(WHOLE_IN(144), WHOLE_IN(42), 0, 0);
    ck_assert(wash.unshrunk_length == WHOLE_IN(144) && wash.washed_width == WHOLE_IN(42));
    ck_assert(wash.lost_length == 0 && wash.lost_width == 0);
}
END_TEST

/* As muslin_fabric_purchase() and muslin_fabric_usable_width() have it. */
START_TEST(prewashing_agrees_with_buying_cloth)
{
    uint64_t state = 33;
    int good = 1;
    for (int i = 0; i < 500; i++) {
        struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
        struct muslin_purchase buy = { .size = (uint32_t)sizeof buy };
        muslin_len width = draw_from(&state, 1, WHOLE_IN(60));
        muslin_len usable = -1;
        int32_t across = (int32_t)draw_from(&state, 0, MUSLIN_PPM - 1);
        spec.needed = draw_from(&state, 0, WHOLE_IN(400));
        spec.shrinkage = (int32_t)draw_from(&state, 0, MUSLIN_PPM - 1);
        ck_ok(muslin_fabric_purchase(&spec, &buy, NULL));
        ck_ok(muslin_fabric_usable_width(width, 0, across, &usable, NULL));
        struct muslin_prewash wash = prewashed(spec.needed, width, across, spec.shrinkage);
        good &= wash.unshrunk_length == buy.unshrunk && wash.washed_width == usable;
    }
    ck_assert(good);
}
END_TEST

START_TEST(the_longest_cloth_that_loses_nearly_all_does_not_overflow)
{
    struct muslin_prewash wash = prewashed(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_PPM - 1, MUSLIN_PPM - 1);
    ck_assert_int_eq(wash.unshrunk_length, MUSLIN_SIZE_MAX * MUSLIN_PPM);
    ck_assert_int_eq(wash.washed_width, MUSLIN_SIZE_MAX / MUSLIN_PPM);
    ck_assert_int_eq(prewashed(0, 0, 0, MUSLIN_PPM - 1).unshrunk_length, 0);
}
END_TEST

static muslin_status call_prewash(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_shrinkage_prewash(spec, out, problem);
}
static const struct muslin_prewash_spec good_cloth = {
    (uint32_t)sizeof good_cloth, 0, WHOLE_IN(144), WHOLE_IN(42), 30000, 40000
};
static const struct ruled prewash = RULED(call_prewash, good_cloth, muslin_prewash);

START_TEST(prewash_checks_its_structs_and_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_prewash_spec, needed_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_CLOTH_LENGTH),
        OUTSIDE(muslin_prewash_spec, usable_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
        NOT_A_LOSS(muslin_prewash_spec, across, MUSLIN_ARG_SHRINKAGE),
        NOT_A_LOSS(muslin_prewash_spec, along, MUSLIN_ARG_SHRINKAGE),
    };
    ck_struct_rules(&prewash);
    ck_no_flag_known(&prewash);
    ck_refusals(&prewash, refusals, COUNT_OF(refusals));
    struct muslin_prewash_spec spec = good_cloth;
    struct muslin_prewash out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    spec.along = -1;
    ck_status(muslin_shrinkage_prewash(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(wash)
INIT_CALL(shrinkage)
INIT_CALL(prewash)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_wash_spec initial_wash = MUSLIN_WASH_SPEC_INIT;
    const struct muslin_shrinkage_spec initial_quilt = MUSLIN_SHRINKAGE_SPEC_INIT;
    const struct muslin_prewash_spec initial_cloth = MUSLIN_PREWASH_SPEC_INIT;
    ck_init_rules(init_wash, &initial_wash, (uint32_t)sizeof initial_wash);
    ck_init_rules(init_shrinkage, &initial_quilt, (uint32_t)sizeof initial_quilt);
    ck_init_rules(init_prewash, &initial_cloth, (uint32_t)sizeof initial_cloth);
    ck_assert_int_eq(initial_cloth.usable_width, WHOLE_IN(40));
}
END_TEST

static void add_measures(Suite *suite)
{
    TCase *tcase = tcase_create("what was measured");
    tcase_add_test(tcase, twenty_inches_washed_to_seventeen_shrank_by_fifteen_per_cent);
    tcase_add_test(tcase, a_published_sample_shrank_in_quilting_and_in_washing);
    tcase_add_test(tcase, changes_are_rounded_to_the_nearest_with_ties_up);
    tcase_add_test(tcase, a_measure_may_have_grown_tenfold_at_most);
    tcase_add_test(tcase, an_area_shrinks_by_more_than_either_side);
    tcase_add_test(tcase, the_largest_areas_do_not_overflow);
    tcase_add_test(tcase, measure_checks_its_structs);
    tcase_add_test(tcase, measure_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, measure_says_which_measure_is_meant);
    suite_add_tcase(suite, tcase);
}

static void add_samples(Suite *suite)
{
    TCase *tcase = tcase_create("samples, batting and cloth");
    tcase_add_test(tcase, a_sample_tells_the_size_to_make);
    tcase_add_test(tcase, samples_may_be_of_any_size);
    tcase_add_test(tcase, a_sample_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, sample_checks_its_structs);
    tcase_add_test(tcase, in_a_closely_quilted_quilt_the_batting_governs);
    tcase_add_test(tcase, another_rule_names_another_share);
    tcase_add_test(tcase, governs_refuses_what_is_no_share_and_no_rule);
    tcase_add_test(tcase, cloth_shrinks_both_ways);
    tcase_add_test(tcase, prewashing_agrees_with_buying_cloth);
    tcase_add_test(tcase, the_longest_cloth_that_loses_nearly_all_does_not_overflow);
    tcase_add_test(tcase, prewash_checks_its_structs_and_ranges);
    tcase_add_test(tcase, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, tcase);
}

Suite *shrinkage_suite(void)
{
    Suite *suite = suite_create("shrinkage");
    add_measures(suite);
    suite_add_tcase(suite, tcase_sizes());
    add_samples(suite);
    return suite;
}
