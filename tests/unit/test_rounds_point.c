/* test_rounds_point.c - borders of squares on point.
 *
 * SPDX-License-Identifier: MIT */
#include "test_rounds.h"

INIT_CALL(point_border)

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_point_border_spec spec = MUSLIN_POINT_BORDER_SPEC_INIT;
    ck_init_rules(init_point_border, &spec, sizeof spec);
}
END_TEST

static struct muslin_point_border_spec border_of(muslin_len side, muslin_len diagonal, int64_t squares)
{
    struct muslin_point_border_spec spec = MUSLIN_POINT_BORDER_SPEC_INIT;
    spec.side_finished = side;
    spec.diagonal_finished = diagonal;
    spec.squares = squares;
    return spec;
}

/* What is cut and what is measured, rounded alike. */
static struct muslin_point_border plan_of(const struct muslin_point_border_spec *spec, muslin_len grid,
                                          int32_t direction)
{
    struct muslin_rounding_spec rounding = to_grid(grid, direction);
    struct muslin_point_border found = { .size = (uint32_t)sizeof found };
    ck_ok(muslin_point_border_plan(spec, &rounding, &rounding, &found, NULL));
    return found;
}

/* "Why I cut strips at 1.91 inches for that border" (blog, 2008): 2 / 1.414 + 1/2 = 1.914 in. */
/* Example: diagonal 2 in, 1/4 in seams, a side of 40 in, up to 1/64 in: strips cut 1 59/64 in, 20 squares, 38 setting
 * triangles. */
START_TEST(two_inch_diagonals_come_from_strips_of_one_point_nine)
{
    struct muslin_point_border_spec spec = border_of(WHOLE_IN(40), WHOLE_IN(2), 0);
    struct muslin_point_border found = plan_of(&spec, 127, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(found.square_cut, IN(1, 59, 64));
    ck_assert_int_eq(found.squares_per_run, 20);
    ck_assert_int_eq(found.squares, 20);
    ck_assert_int_eq(found.setting_triangles, 38);
    ck_assert_int_eq(found.setting_squares, 10);
    ck_assert_int_eq(found.end_triangles, 4);
    ck_assert_int_eq(found.end_squares, 2);
    ck_assert_int_eq(found.rest, 0);
    ck_assert_int_eq(found.diagonal_numerator, WHOLE_IN(2));
    ck_assert_int_eq(found.diagonal_denominator, 1);
    ck_assert_int_eq(found.diagonal_finished, WHOLE_IN(2));
    ck_assert_int_eq(found.border_unfinished, IN(2, 1, 2));
    /* to the tick: 1.41421356 x 8128 = 11494.73; + 4064; 2 + 1.20710678 in = 26067.36; 1 + 0.85355339 in = 15065.68 */
    found = plan_of(&spec, 1, MUSLIN_DIRECTION_DOWN);
    ck_assert_int_eq(found.square_finished, 11494);
    ck_assert_int_eq(found.square_finished_error, -1);
    ck_assert_int_eq(found.square_cut, 15558);
    ck_assert_int_eq(found.square_cut_error, -1);
    ck_assert_int_eq(found.setting_cut, 26067);
    ck_assert_int_eq(found.setting_cut_error, -1);
    ck_assert_int_eq(found.end_cut, 15065);
    ck_assert_int_eq(found.end_cut_error, -1);
    ck_assert_int_eq(found.diagonal_error, 0);
}
END_TEST

/* Up to 1/16 in: 1.9142, 3.2071 and 1.8536 in become 1 15/16, 3 1/4 and 1 7/8 in. A square then finishes at 1 7/16 in,
 * 2.03293 in from tip to tip: twenty of them are 0.65864 in longer than 40 in, 5353.43 ticks. Down, 1 7/8 in: 1.94454
 * in from tip to tip, 1.10913 in shorter, 9014.98. What is measured stays. */
START_TEST(rounding_the_cut_changes_the_run)
{
    struct muslin_point_border_spec spec = border_of(WHOLE_IN(41), WHOLE_IN(2), 0);
    struct muslin_rounding_spec cutting = to_grid(IN(0, 1, 16), MUSLIN_DIRECTION_UP);
    struct muslin_rounding_spec measuring = to_grid(1, MUSLIN_DIRECTION_NEAREST);
    struct muslin_point_border found = { .size = (uint32_t)sizeof found };
    ck_ok(muslin_point_border_plan(&spec, &cutting, &measuring, &found, NULL));
    ck_assert_int_eq(found.square_cut, IN(1, 15, 16));
    ck_assert_int_eq(found.setting_cut, IN(3, 1, 4));
    ck_assert_int_eq(found.end_cut, IN(1, 7, 8));
    ck_assert_int_eq(found.square_finished, 11495); /* 1.41421356 x 8128 = 11494.73 */
    ck_assert_int_eq(found.run_longer_by, 5353);
    cutting.direction = MUSLIN_DIRECTION_DOWN;
    ck_ok(muslin_point_border_plan(&spec, &cutting, &measuring, &found, NULL));
    ck_assert_int_eq(found.run_longer_by, -9015);
    /* by their number, in 40 in */
    spec = border_of(WHOLE_IN(40), 0, 20);
    ck_ok(muslin_point_border_plan(&spec, &cutting, &measuring, &found, NULL));
    ck_assert_int_eq(found.run_longer_by, -9015);
}
END_TEST

/* Squares given: the diagonal is a share of the side. 41 in over 20: 2.05 in. */
START_TEST(squares_may_be_given_instead_of_the_diagonal)
{
    struct muslin_point_border_spec spec = border_of(WHOLE_IN(41), 0, 20);
    spec.runs = 4;
    struct muslin_point_border found = plan_of(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(found.diagonal_numerator, WHOLE_IN(41));
    ck_assert_int_eq(found.diagonal_denominator, 20);
    ck_assert_int_eq(found.diagonal_finished, WHOLE_IN(2));
    ck_assert_int_eq(found.diagonal_error, -407); /* 0.05 x 8128 = 406.4 below, down */
    ck_assert_int_eq(found.square_finished, IN(1, 1, 2)); /* 1.4496 */
    ck_assert_int_eq(found.square_cut, WHOLE_IN(2));      /* 1.9496 */
    ck_assert_int_eq(found.setting_cut, IN(3, 1, 4));     /* 2.05 + 1.2071 */
    ck_assert_int_eq(found.end_cut, IN(1, 7, 8));         /* 1.025 + 0.8536 */
    ck_assert_int_eq(found.rest, 0);
    ck_assert_int_eq(found.squares, 80);
    ck_assert_int_eq(found.setting_triangles, 152);
    ck_assert_int_eq(found.setting_squares, 38);
    ck_assert_int_eq(found.end_triangles, 16);
    ck_assert_int_eq(found.end_squares, 8);
}
END_TEST

/* The same run asked for both ways gives the same sizes, and one square alone has no neighbour. */
START_TEST(both_ways_agree)
{
    for (int64_t squares = 1; squares <= 30; squares++) {
        struct muslin_point_border_spec by_count = border_of(squares * 4567, 0, squares);
        struct muslin_point_border_spec by_diagonal = border_of(squares * 4567, 4567, 0);
        by_count.take_up = by_diagonal.take_up = 33;
        struct muslin_point_border a = plan_of(&by_count, 1, MUSLIN_DIRECTION_UP);
        struct muslin_point_border b = plan_of(&by_diagonal, 1, MUSLIN_DIRECTION_UP);
        ck_assert_int_eq(a.squares, squares);
        ck_assert_int_eq(b.squares, squares);
        ck_assert_int_eq(a.square_cut, b.square_cut);
        ck_assert_int_eq(a.setting_cut, b.setting_cut);
        ck_assert_int_eq(a.end_cut, b.end_cut);
        ck_assert_int_eq(a.square_finished, b.square_finished);
        ck_assert_int_eq(a.setting_triangles, 2 * squares - 2);
        ck_assert_int_eq(a.setting_squares, squares / 2); /* two each, a quarter each, up */
    }
}
END_TEST

/* The areas of squares and triangles, finished, fill the run: n squares of D^2 / 2, 2 (n - 1) triangles of D^2 / 4 and
 * four of D^2 / 8 make n D x D; counted in eighths of D^2. */
START_TEST(squares_and_triangles_fill_the_run)
{
    for (int64_t squares = 1; squares <= 50; squares++) {
        struct muslin_point_border_spec spec = border_of(squares * 100, 100, 0);
        struct muslin_point_border found = plan_of(&spec, 1, MUSLIN_DIRECTION_UP);
        ck_assert_int_eq(4 * found.squares + 2 * found.setting_triangles + found.end_triangles, 8 * squares);
    }
}
END_TEST

static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec eighths = { (uint32_t)sizeof eighths, 0, 1016, 0, MUSLIN_DIRECTION_UP, 0 };
    return muslin_point_border_plan(spec, &eighths, &eighths, out, problem);
}
static const struct muslin_point_border_spec good_border = {
    (uint32_t)sizeof good_border, 0, WHOLE_IN(40), 0, 19, 2, 2032, 10
};
static const struct ruled plan = RULED(call_plan, good_border, muslin_point_border);

START_TEST(point_border_checks_its_structs)
{
    ck_struct_rules(&plan);
    ck_no_flag_known(&plan);
}
END_TEST

START_TEST(point_border_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_point_border_spec, side_finished, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FINISHED),
        OUTSIDE(muslin_point_border_spec, diagonal_finished, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_DIAGONAL),
        OUTSIDE(muslin_point_border_spec, squares, 1, MUSLIN_POINT_BORDER_SQUARES_MAX, MUSLIN_ARG_PIECES),
        OUTSIDE(muslin_point_border_spec, runs, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_RUNS),
        OUTSIDE(muslin_point_border_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_point_border_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        REFUSAL(muslin_point_border_spec, squares, WHOLE_IN(40) + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES),
    };
    struct muslin_point_border_spec spec = good_border;
    struct muslin_point_border out = { .size = (uint32_t)sizeof out };
    ck_refusals(&plan, refusals, COUNT_OF(refusals));
    spec.diagonal_finished = WHOLE_IN(2);
    spec.squares = -1;
    ck_assert_int_eq(ck_failing(&plan, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_PIECES);
    struct muslin_rounding_spec well = to_grid(1, MUSLIN_DIRECTION_NEAREST);
    struct muslin_rounding_spec wrong = to_grid(0, MUSLIN_DIRECTION_NEAREST);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_point_border_plan(&good_border, NULL, &well, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_point_border_plan(&good_border, &well, NULL, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_point_border_plan(&good_border, &wrong, &well, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_point_border_plan(&good_border, &well, &wrong, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.at, 1);
}
END_TEST

START_TEST(a_diagonal_longer_than_the_side_does_not_fit)
{
    struct muslin_point_border_spec spec = border_of(WHOLE_IN(2), WHOLE_IN(2) + 1, 0);
    struct muslin_problem problem = ck_failing(&plan, &spec, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.value, WHOLE_IN(2));
    ck_assert_int_eq(problem.limit, WHOLE_IN(2) + 1);
    spec.diagonal_finished--;
    ck_assert_int_eq(plan_of(&spec, 1, MUSLIN_DIRECTION_UP).squares, 1);
}
END_TEST

/* Cut 1.914 in: down to whole inches 1 in is left, 1/2 in of it seams; down to 2 in, nothing. Cut 0.854 in, down to 1/2
 * in: the seams alone. */
START_TEST(squares_may_be_rounded_away)
{
    struct muslin_point_border_spec spec = border_of(WHOLE_IN(40), WHOLE_IN(2), 0);
    struct muslin_rounding_spec coarse = to_grid(WHOLE_IN(2), MUSLIN_DIRECTION_DOWN);
    struct muslin_rounding_spec fine = to_grid(1, MUSLIN_DIRECTION_NEAREST);
    struct muslin_point_border out = { .size = (uint32_t)sizeof out, .squares = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(plan_of(&spec, WHOLE_IN(1), MUSLIN_DIRECTION_DOWN).square_cut, WHOLE_IN(1));
    ck_status(muslin_point_border_plan(&spec, &coarse, &fine, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.value, WHOLE_IN(2));
    ck_assert_int_eq(problem.limit, 0);
    coarse.grid = IN(0, 1, 2);
    spec = border_of(WHOLE_IN(40), IN(0, 1, 2), 0);
    ck_status(muslin_point_border_plan(&spec, &coarse, &fine, &out, NULL), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(out.squares, 77);
}
END_TEST

/* The most squares, of two ticks from tip to tip, with the widest seams, m = 3 x 2^27; and the largest counts. */
START_TEST(the_largest_border_is_found_exactly)
{
    struct muslin_point_border_spec spec = border_of(MUSLIN_SIZE_MAX, 0, MUSLIN_POINT_BORDER_SQUARES_MAX);
    spec.allowance = spec.take_up = MUSLIN_SIZE_MAX / 8;
    spec.runs = MUSLIN_COUNT_MAX;
    struct muslin_point_border found = plan_of(&spec, 1, MUSLIN_DIRECTION_DOWN);
    ck_assert_int_eq(found.diagonal_finished, 2);
    ck_assert_int_eq(found.square_finished, 1);
    ck_assert_int_eq(found.square_cut, 402653184 + 1);
    ck_assert_int_eq(found.setting_cut, 402653184 + 2 + 569437593); /* sqrt 2 m = 569437593.9 */
    ck_assert_int_eq(found.end_cut, 402653184 + 1 + 284718796);     /* half of it: 284718796.9 */
    ck_assert_int_eq(found.squares, MUSLIN_POINT_BORDER_SQUARES_MAX * MUSLIN_COUNT_MAX);
    spec = border_of(MUSLIN_SIZE_MAX, 1, 0);
    spec.runs = MUSLIN_COUNT_MAX;
    found = plan_of(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP); /* a tick from tip to tip, cut 2^30 */
    ck_assert_int_eq(found.setting_triangles, 2 * (MUSLIN_SIZE_MAX - 1) * MUSLIN_COUNT_MAX);
    /* 2^30 (sqrt 2 (2^30 - 4064) - 1), by Python's isqrt(2 (2^30 (2^30 - 4064))^2 x 4) */
    ck_assert_int_eq(found.run_longer_by, INT64_C(1630471055907840001));
    ck_assert_int_eq(found.setting_squares, (MUSLIN_SIZE_MAX - 1) / 2 * MUSLIN_COUNT_MAX + (MUSLIN_COUNT_MAX + 1) / 2);
}
END_TEST

void add_rounds_point(Suite *suite)
{
    TCase *tests = tcase_create("squares on point in a border");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, two_inch_diagonals_come_from_strips_of_one_point_nine);
    tcase_add_test(tests, rounding_the_cut_changes_the_run);
    tcase_add_test(tests, squares_may_be_given_instead_of_the_diagonal);
    tcase_add_test(tests, both_ways_agree);
    tcase_add_test(tests, squares_and_triangles_fill_the_run);
    tcase_add_test(tests, point_border_checks_its_structs);
    tcase_add_test(tests, point_border_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, a_diagonal_longer_than_the_side_does_not_fit);
    tcase_add_test(tests, squares_may_be_rounded_away);
    tcase_add_test(tests, the_largest_border_is_found_exactly);
    suite_add_tcase(suite, tests);
}
