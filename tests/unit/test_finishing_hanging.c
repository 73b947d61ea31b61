/* test_finishing_hanging.c - sleeve, label, corner triangles.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

/* A wall quilt 60 in wide (invented): the initial values, a label of 6 x 4 in, two corner triangles of 5 in. */
static const struct muslin_hanging_spec wall_quilt = {
    (uint32_t)sizeof wall_quilt, 0, WHOLE_IN(60), 1, WHOLE_IN(1), WHOLE_IN(2), WHOLE_IN(4), IN(0, 1, 2), WHOLE_IN(1),
    MUSLIN_QUARTER_INCH, WHOLE_IN(6), WHOLE_IN(4), WHOLE_IN(5), 2
};

static struct muslin_hanging planned(const struct muslin_hanging_spec *spec)
{
    struct muslin_hanging hanging = { .size = (uint32_t)sizeof hanging };
    ck_ok(muslin_hanging_plan(spec, &hanging, NULL));
    return hanging;
}

/* By drawing: 60 - 1 - 1 = 58 in between the insets, a hem of 1 in at each end; round the tube lie two depths of 4 in,
 * 1/2 in of ease and two allowances. */
START_TEST(one_sleeve_reaches_from_inset_to_inset)
{
    struct muslin_hanging hanging = planned(&wall_quilt);
    ck_assert_int_eq(hanging.sleeves, 1);
    ck_assert_int_eq(hanging.sleeve_finished, WHOLE_IN(58));
    ck_assert_int_eq(hanging.sleeve_cut_length, WHOLE_IN(60));
    ck_assert_int_eq(hanging.sleeve_cut_width, WHOLE_IN(9));
}
END_TEST

START_TEST(two_sleeves_share_what_the_gap_leaves)
{
    struct muslin_hanging_spec spec = wall_quilt;
    spec.sleeves = 2;
    struct muslin_hanging hanging = planned(&spec);
    ck_assert_int_eq(hanging.sleeves, 2);
    ck_assert_int_eq(hanging.sleeve_finished, WHOLE_IN(28));
    ck_assert_int_eq(hanging.sleeve_cut_length, WHOLE_IN(30));
    spec.quilt_width += 1;
    ck_assert_int_eq(planned(&spec).sleeve_finished, WHOLE_IN(28));
    spec.quilt_width += 1;
    ck_assert_int_eq(planned(&spec).sleeve_finished, WHOLE_IN(28) + 1);
}
END_TEST

START_TEST(no_sleeve_needs_no_room_for_one)
{
    struct muslin_hanging_spec spec = wall_quilt;
    spec.sleeves = 0;
    spec.inset = WHOLE_IN(100);
    spec.drop = 0;
    struct muslin_hanging hanging = planned(&spec);
    ck_assert_int_eq(hanging.sleeves, 0);
    ck_assert_int_eq(hanging.sleeve_finished, 0);
    ck_assert_int_eq(hanging.sleeve_cut_length, 0);
    ck_assert_int_eq(hanging.sleeve_cut_width, 0);
}
END_TEST

START_TEST(a_label_grows_by_its_allowances)
{
    struct muslin_hanging_spec spec = wall_quilt;
    ck_assert_int_eq(planned(&spec).label_cut_width, IN(6, 1, 2));
    ck_assert_int_eq(planned(&spec).label_cut_height, IN(4, 1, 2));
    spec.label_width = 0;
    spec.label_height = 0;
    ck_assert_int_eq(planned(&spec).label_cut_width, 0);
    ck_assert_int_eq(planned(&spec).label_cut_height, 0);
}
END_TEST

/* Drawn on squared paper: a square of side c folded on its diagonal covers the points x + y <= c of the corner. Inside
 * both seams, s from each edge, the row along the seam is as long as the finished short side. */
START_TEST(a_folded_square_shows_the_short_side_asked_for_inside_its_seams)
{
    for (muslin_len s = 0; s <= 9; s++)
        for (muslin_len side = 1; side <= 40; side++) {
            struct muslin_hanging_spec spec = wall_quilt;
            spec.allowance = s;
            spec.corner_triangle = side;
            muslin_len c = planned(&spec).corner_square_cut;
            muslin_len x = s;
            while (x + 1 + s <= c)
                x++;
            ck_assert_int_eq(x - s, side);
        }
}
END_TEST

START_TEST(there_are_as_many_corner_squares_as_corners_and_none_without_a_size)
{
    struct muslin_hanging_spec spec = wall_quilt;
    ck_assert_int_eq(planned(&spec).corner_squares, 2);
    spec.corner_triangle = 0;
    ck_assert_int_eq(planned(&spec).corner_squares, 0);
    ck_assert_int_eq(planned(&spec).corner_square_cut, 0);
    spec.corner_triangle = WHOLE_IN(5);
    spec.corners = 4;
    ck_assert_int_eq(planned(&spec).corner_squares, 4);
    spec.corners = 0;
    ck_assert_int_eq(planned(&spec).corner_squares, 0);
    ck_assert_int_eq(planned(&spec).corner_square_cut, 0);
}
END_TEST

START_TEST(insets_and_gap_must_leave_a_tick_of_each_sleeve)
{
    struct muslin_hanging_spec spec = wall_quilt;
    struct muslin_problem problem = PROBLEM;
    struct muslin_hanging hanging = { .size = (uint32_t)sizeof hanging };
    spec.sleeves = 2;
    spec.quilt_width = WHOLE_IN(4) + 2;
    ck_assert_int_eq(planned(&spec).sleeve_finished, 1);
    spec.quilt_width--;
    ck_status(muslin_hanging_plan(&spec, &hanging, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_WIDTH);
    ck_assert_int_eq(problem.limit, WHOLE_IN(4) + 2);
    ck_assert_int_eq(hanging.sleeves, 0);
}
END_TEST

START_TEST(the_largest_of_everything_adds_up)
{
    struct muslin_hanging_spec spec = wall_quilt;
    spec.quilt_width = MUSLIN_SIZE_MAX;
    spec.inset = 0;
    spec.drop = MUSLIN_SIZE_MAX;
    spec.ease = MUSLIN_SIZE_MAX;
    spec.hem = MUSLIN_SIZE_MAX;
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    struct muslin_hanging hanging = planned(&spec);
    ck_assert_int_eq(hanging.sleeve_cut_length, 3 * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(hanging.sleeve_cut_width, 13 * (MUSLIN_SIZE_MAX / 4));
}
END_TEST

static muslin_status hanging_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_hanging_plan(spec, out, problem);
}

static const struct ruled hanging_plan = RULED(hanging_call, wall_quilt, muslin_hanging);

START_TEST(hanging_checks_its_structs)
{
    ck_struct_rules(&hanging_plan);
}
END_TEST

START_TEST(hanging_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_hanging_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_hanging_spec, quilt_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        BEYOND(muslin_hanging_spec, sleeves, -1, 0, MUSLIN_ARG_SLEEVES),
        BEYOND(muslin_hanging_spec, sleeves, 3, 2, MUSLIN_ARG_SLEEVES),
        OUTSIDE(muslin_hanging_spec, inset, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_INSET),
        OUTSIDE(muslin_hanging_spec, gap, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_INSET),
        OUTSIDE(muslin_hanging_spec, drop, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SLEEVE_DROP),
        OUTSIDE(muslin_hanging_spec, ease, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_hanging_spec, hem, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TURN_UNDER),
        OUTSIDE(muslin_hanging_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_hanging_spec, label_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_LABEL),
        OUTSIDE(muslin_hanging_spec, label_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_LABEL),
        OUTSIDE(muslin_hanging_spec, corner_triangle, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_CORNER_TRIANGLE),
        BEYOND(muslin_hanging_spec, corners, -1, 0, MUSLIN_ARG_CORNERS),
        BEYOND(muslin_hanging_spec, corners, 5, 4, MUSLIN_ARG_CORNERS),
    };
    ck_refusals_at(&hanging_plan, 0, refusals, COUNT_OF(refusals));
    /* Of what is not made it may be nothing, but not less. */
    const struct muslin_hanging_spec bare = { .size = (uint32_t)sizeof bare, .quilt_width = WHOLE_IN(60) };
    const struct ruled no_sleeve = RULED(hanging_call, bare, muslin_hanging);
    const struct refusal below[] = { BEYOND(muslin_hanging_spec, drop, -1, 0, MUSLIN_ARG_SLEEVE_DROP),
                                     BEYOND(muslin_hanging_spec, label_height, -1, 0, MUSLIN_ARG_LABEL) };
    ck_refusals_at(&no_sleeve, 0, below, COUNT_OF(below));
}
END_TEST

static muslin_status hanging_init(void *spec, uint32_t size)
{
    return muslin_hanging_spec_init(spec, size);
}

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_hanging_spec spec = MUSLIN_HANGING_SPEC_INIT;
    ck_init_rules(hanging_init, &spec, sizeof spec);
}
END_TEST

void add_finishing_hanging(Suite *suite)
{
    TCase *tests = tcase_create("hanging");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, one_sleeve_reaches_from_inset_to_inset);
    tcase_add_test(tests, two_sleeves_share_what_the_gap_leaves);
    tcase_add_test(tests, no_sleeve_needs_no_room_for_one);
    tcase_add_test(tests, a_label_grows_by_its_allowances);
    tcase_add_test(tests, a_folded_square_shows_the_short_side_asked_for_inside_its_seams);
    tcase_add_test(tests, there_are_as_many_corner_squares_as_corners_and_none_without_a_size);
    tcase_add_test(tests, insets_and_gap_must_leave_a_tick_of_each_sleeve);
    tcase_add_test(tests, the_largest_of_everything_adds_up);
    tcase_add_test(tests, hanging_checks_its_structs);
    tcase_add_test(tests, hanging_refuses_what_lies_outside_its_ranges);
    suite_add_tcase(suite, tests);
}
