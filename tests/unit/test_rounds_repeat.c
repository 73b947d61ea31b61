/* test_rounds_repeat.c - repeats that must divide: by hand and by laying them out.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

INIT_CALL(repeat)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_repeat_spec spec = MUSLIN_REPEAT_SPEC_INIT;
    ck_init_rules(init_repeat, &spec, sizeof spec);
}
END_TEST

static struct muslin_repeat_spec side_of(muslin_len side, muslin_len repeat, int64_t spacers)
{
    struct muslin_repeat_spec spec = MUSLIN_REPEAT_SPEC_INIT;
    spec.side_finished = side;
    spec.repeat_finished = repeat;
    spec.spacers = spacers;
    return spec;
}

static struct muslin_repeat plan_of(const struct muslin_repeat_spec *spec, muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = to_grid(grid, direction);
    struct muslin_repeat found = { .size = (uint32_t)sizeof found };
    ck_ok(muslin_repeat_plan(spec, &rounding, &found, NULL));
    return found;
}

/* Example: 50 in of 4 in units with two spacers, to 1/8 in: 12 units leave 2 in, spacers 1 in finished, cut 1 1/2 in;
 * with a repeat of 4 1/8 in, 12 units are 1/2 in short. */
START_TEST(two_spacers_share_what_twelve_units_leave)
{
    struct muslin_repeat_spec spec = side_of(WHOLE_IN(50), WHOLE_IN(4), 2);
    struct muslin_repeat found = plan_of(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(found.units_below, 12);
    ck_assert_int_eq(found.rest_below, WHOLE_IN(2));
    ck_assert_int_eq(found.units_above, 13);
    ck_assert_int_eq(found.over_above, WHOLE_IN(2));
    ck_assert_int_eq(found.units_nearest, 13); /* equally near */
    ck_assert_int_eq(found.repeat_below, IN(4, 1, 8)); /* 50 / 12 = 4.1667 */
    ck_assert_int_eq(found.repeat_below_error, -339);  /* 0.041667 x 8128 = 338.67, down */
    ck_assert_int_eq(found.repeat_above, IN(3, 7, 8)); /* 50 / 13 = 3.8462 */
    ck_assert_int_eq(found.repeat_above_error, 234);   /* 0.028846 x 8128 = 234.46 */
    ck_assert_int_eq(found.below_left_over, IN(0, 1, 2));  /* 12 x 4 1/8 = 49 1/2 */
    ck_assert_int_eq(found.above_left_over, -IN(0, 3, 8)); /* 13 x 3 7/8 = 50 3/8 */
    ck_assert_int_eq(found.unit_unfinished, IN(4, 1, 2));
    ck_assert_int_eq(found.units, 12);
    ck_assert_int_eq(found.shared, WHOLE_IN(2));
    ck_assert_int_eq(found.spacer_finished, WHOLE_IN(1));
    ck_assert_int_eq(found.spacer_cut, IN(1, 1, 2));
    ck_assert_int_eq(found.left_over, 0);
    ck_assert_int_eq(found.divides, 0);
}
END_TEST

/* Three spacers of at least 1 in: 47 in hold 11 units, which leave 6 in, 2 in each. Up to 1/2 in from 7/3: too much. */
START_TEST(spacers_have_a_least_width)
{
    struct muslin_repeat_spec spec = side_of(WHOLE_IN(50), WHOLE_IN(4), 3);
    spec.spacer_least = WHOLE_IN(1);
    struct muslin_repeat found = plan_of(&spec, IN(0, 1, 2), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.units, 11);
    ck_assert_int_eq(found.shared, WHOLE_IN(6));
    ck_assert_int_eq(found.spacer_finished, WHOLE_IN(2));
    spec.side_finished = WHOLE_IN(51);
    found = plan_of(&spec, IN(0, 1, 2), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.units, 12);
    ck_assert_int_eq(found.shared, WHOLE_IN(3));
    spec.side_finished = WHOLE_IN(50) + WHOLE_IN(5);
    found = plan_of(&spec, IN(0, 1, 2), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.units, 13); /* 52 over 4 */
    ck_assert_int_eq(found.shared, WHOLE_IN(3));
    spec.side_finished = WHOLE_IN(54);
    found = plan_of(&spec, IN(0, 1, 2), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.units, 12); /* 51 over 4 */
    ck_assert_int_eq(found.shared, WHOLE_IN(6));
    spec.side_finished = WHOLE_IN(52) - WHOLE_IN(1);
    spec.spacer_least = IN(2, 1, 4);
    found = plan_of(&spec, IN(0, 1, 2), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.units, 11); /* 44.25 over 4; 7 in over 3 spacers, up: 2 1/2 in, 1/2 in too much */
    ck_assert_int_eq(found.spacer_finished, IN(2, 1, 2));
    ck_assert_int_eq(found.left_over, -IN(0, 1, 2));
}
END_TEST

START_TEST(a_side_that_divides_needs_nothing)
{
    struct muslin_repeat_spec spec = side_of(WHOLE_IN(48), WHOLE_IN(4), 0);
    spec.spacer_least = WHOLE_IN(9); /* without spacers not used */
    struct muslin_repeat found = plan_of(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(found.divides, 1);
    ck_assert_int_eq(found.units_below, 12);
    ck_assert_int_eq(found.units_above, 12);
    ck_assert_int_eq(found.units_nearest, 12);
    ck_assert_int_eq(found.repeat_below, WHOLE_IN(4));
    ck_assert_int_eq(found.repeat_above, WHOLE_IN(4));
    ck_assert_int_eq(found.units, 12);
    ck_assert_int_eq(found.shared, 0);
    ck_assert_int_eq(found.left_over, 0);
    ck_assert_int_eq(found.spacer_finished, 0);
    ck_assert_int_eq(found.spacer_cut, 0);
}
END_TEST

/* 3 in of 4 in units: none fits, and one is nearer. 1 in: still the one, for none is no border. */
START_TEST(a_side_shorter_than_a_unit_has_one_nearest)
{
    struct muslin_repeat_spec spec = side_of(WHOLE_IN(3), WHOLE_IN(4), 0);
    struct muslin_repeat found = plan_of(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(found.units_below, 0);
    ck_assert_int_eq(found.repeat_below, 0);
    ck_assert_int_eq(found.below_left_over, 0);
    ck_assert_int_eq(found.above_left_over, 0);
    ck_assert_int_eq(found.repeat_above, WHOLE_IN(3));
    ck_assert_int_eq(found.units_nearest, 1);
    ck_assert_int_eq(found.left_over, WHOLE_IN(3));
    spec.side_finished = WHOLE_IN(1);
    ck_assert_int_eq(plan_of(&spec, 1, MUSLIN_DIRECTION_NEAREST).units_nearest, 0);
    spec.side_finished = WHOLE_IN(45);
    ck_assert_int_eq(plan_of(&spec, 1, MUSLIN_DIRECTION_NEAREST).units_nearest, 11);
}
END_TEST

static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec eighths = { (uint32_t)sizeof eighths, 0, 1016, 0, MUSLIN_DIRECTION_DOWN, 0 };
    return muslin_repeat_plan(spec, &eighths, out, problem);
}
static const struct muslin_repeat_spec good_side = {
    (uint32_t)sizeof good_side, 0, WHOLE_IN(50), WHOLE_IN(4), 3, WHOLE_IN(1), 2032, 10
};
static const struct ruled plan = RULED(call_plan, good_side, muslin_repeat);

START_TEST(repeat_checks_its_structs)
{
    ck_struct_rules(&plan);
    ck_no_flag_known(&plan);
}
END_TEST

START_TEST(repeat_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_repeat_spec, side_finished, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FINISHED),
        OUTSIDE(muslin_repeat_spec, repeat_finished, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_UNIT_REPEAT),
        OUTSIDE(muslin_repeat_spec, spacers, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SPACERS),
        OUTSIDE(muslin_repeat_spec, spacer_least, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SPACER_LEAST),
        OUTSIDE(muslin_repeat_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_repeat_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
    };
    struct muslin_repeat out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    ck_refusals(&plan, refusals, COUNT_OF(refusals));
    ck_status(muslin_repeat_plan(&good_side, NULL, &out, &problem), MUSLIN_ERR_NULL);
}
END_TEST

START_TEST(spacers_that_pass_the_side_do_not_fit)
{
    struct muslin_repeat_spec spec = good_side;
    spec.side_finished = WHOLE_IN(3) - 1;
    struct muslin_problem problem = ck_failing(&plan, &spec, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.value, WHOLE_IN(3) - 1);
    ck_assert_int_eq(problem.limit, WHOLE_IN(3));
    spec.side_finished++;
    struct muslin_repeat found = plan_of(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(found.units, 0);
    ck_assert_int_eq(found.spacer_finished, WHOLE_IN(1));
    spec.spacers = MUSLIN_COUNT_MAX;
    spec.spacer_least = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_NO_FIT).limit, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    spec.spacer_least = 0;
    found = plan_of(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.left_over, WHOLE_IN(3) - MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
}
END_TEST

/* ---- both sides -------------------------------------------------------------------------------------------------- */

static struct muslin_common_repeat common_of(muslin_len width, muslin_len height, muslin_len least, muslin_len most)
{
    struct muslin_rounding_spec rounding = to_grid(1, MUSLIN_DIRECTION_DOWN);
    struct muslin_common_repeat found = { .size = (uint32_t)sizeof found };
    ck_ok(muslin_repeat_common(width, height, least, most, &rounding, &found, NULL));
    return found;
}

/* Example: 42 x 48 in, 2 to 4 in: 3 in, 14 units across and 16 down. */
START_TEST(a_repeat_divides_both_sides)
{
    struct muslin_common_repeat found = common_of(WHOLE_IN(42), WHOLE_IN(48), WHOLE_IN(2), WHOLE_IN(4));
    ck_assert_int_eq(found.common, WHOLE_IN(6));
    ck_assert_int_eq(found.parts, 2);
    ck_assert_int_eq(found.repeat, WHOLE_IN(3));
    ck_assert_int_eq(found.across, 14);
    ck_assert_int_eq(found.down, 16);
    found = common_of(WHOLE_IN(42), WHOLE_IN(48), 0, WHOLE_IN(6));
    ck_assert_int_eq(found.parts, 1);
    ck_assert_int_eq(found.repeat, WHOLE_IN(6));
    found = common_of(10, 20, 0, 3); /* 10 / 4 = 2 1/2 ticks */
    ck_assert_int_eq(found.parts, 4);
    ck_assert_int_eq(found.repeat, 2);
    ck_assert_int_eq(found.repeat_error, -1);
    ck_assert_int_eq(found.across, 4);
    ck_assert_int_eq(found.down, 8);
}
END_TEST

/* The largest p / q with width x q / p and height x q / p whole: tried for every number of units across. */
static int64_t fewest_across(int64_t width, int64_t height, int64_t most)
{
    for (int64_t across = 1;; across++)
        if (width <= across * most && height * across % width == 0)
            return across;
}

START_TEST(the_largest_repeat_is_what_trying_all_gives)
{
    for (int64_t width = 1; width <= 40; width++)
        for (int64_t height = 1; height <= 40; height++)
            for (int64_t most = 1; most <= 12; most++) {
                struct muslin_common_repeat found = common_of(width, height, 0, most);
                ck_assert_int_eq(found.across, fewest_across(width, height, most));
                ck_assert_int_eq(found.down * width, found.across * height);
            }
}
END_TEST

static struct muslin_problem ck_common(muslin_len width, muslin_len height, muslin_len least, muslin_len most,
                                       muslin_status status)
{
    struct muslin_rounding_spec rounding = to_grid(1, MUSLIN_DIRECTION_DOWN);
    struct muslin_common_repeat out = { .size = (uint32_t)sizeof out, .parts = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_repeat_common(width, height, least, most, &rounding, &out, &problem), status);
    ck_assert_int_eq(out.parts, 77);
    return problem;
}

START_TEST(common_repeat_refuses_what_lies_outside_its_ranges)
{
    const muslin_len wrong[] = { 0, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        ck_assert_int_eq(ck_common(wrong[i], 8, 1, 2, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
        ck_assert_int_eq(ck_common(8, wrong[i], 1, 2, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_LENGTH);
        ck_assert_int_eq(ck_common(8, 8, 0, wrong[i], MUSLIN_ERR_RANGE).at, 1);
    }
    ck_assert_int_eq(ck_common(8, 8, -1, 2, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_UNIT_REPEAT);
    ck_assert_int_eq(ck_common(8, 8, MUSLIN_SIZE_MAX + 1, 2, MUSLIN_ERR_RANGE).at, 0);
    ck_assert_int_eq(ck_common(8, 8, 3, 2, MUSLIN_ERR_RANGE).limit, 3);
    ck_assert_int_eq(ck_common(8, 8, 2, 1, MUSLIN_ERR_RANGE).limit, 2);
    /* 42 and 48 have 6 in common: 6 and 3, but nothing from 4 to 5 */
    struct muslin_problem problem = ck_common(42, 48, 4, 5, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_UNIT_REPEAT);
    ck_assert_int_eq(problem.value, 5);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(common_of(42, 48, 3, 5).across, 14);
    ck_assert_int_eq(common_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 0, 1).across, MUSLIN_SIZE_MAX);
}
END_TEST

static muslin_status call_common(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_repeat_common(42, 48, 2, 4, spec, out, problem);
}

START_TEST(common_repeat_checks_its_structs)
{
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    const struct ruled common = RULED(call_common, rounding, muslin_common_repeat);
    ck_struct_rules(&common);
}
END_TEST

void add_rounds_repeat(Suite *suite)
{
    TCase *tests = tcase_create("repeats");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, two_spacers_share_what_twelve_units_leave);
    tcase_add_test(tests, spacers_have_a_least_width);
    tcase_add_test(tests, a_side_that_divides_needs_nothing);
    tcase_add_test(tests, a_side_shorter_than_a_unit_has_one_nearest);
    tcase_add_test(tests, repeat_checks_its_structs);
    tcase_add_test(tests, repeat_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, spacers_that_pass_the_side_do_not_fit);
    tcase_add_test(tests, a_repeat_divides_both_sides);
    tcase_add_test(tests, the_largest_repeat_is_what_trying_all_gives);
    tcase_add_test(tests, common_repeat_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, common_repeat_checks_its_structs);
    suite_add_tcase(suite, tests);
}
