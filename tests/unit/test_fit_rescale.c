/* test_fit_rescale.c - patterns resized: published figures, and trying unit after unit.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fit.h"

enum { SIZES = 3 };

#define SIZE(ticks) { .size = (uint32_t)sizeof(struct muslin_fit_rescale_row), .finished = (ticks) }

static struct muslin_fit_rescale_spec by(int64_t numerator, int64_t denominator)
{
    struct muslin_fit_rescale_spec spec = MUSLIN_FIT_RESCALE_SPEC_INIT;
    spec.numerator = numerator;
    spec.denominator = denominator;
    return spec;
}

static struct muslin_fit_rescaled rescaled(const struct muslin_fit_rescale_spec *spec,
                                           struct muslin_fit_rescale_row *rows, size_t n)
{
    struct muslin_fit_rescaled out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_fit_rescale(spec, rows, sizeof rows[0], n, &out, NULL));
    ck_assert_uint_eq(out.warnings, out.off_grid > 0 ? MUSLIN_WARN_OFF_GRID : 0);
    return out;
}

/* "Learn how to resize quilt blocks" (blog, 2023): take off 1/2 in, scale, put 1/2 in back; cut 2 1/2 x 4 1/2 doubled is
 * 4 1/2 x 8 1/2. */
START_TEST(a_pattern_doubled_stays_on_the_marks)
{
    struct muslin_fit_rescale_spec spec = by(2, 1);
    struct muslin_fit_rescale_row rows[] = { SIZE(WHOLE_IN(2)), SIZE(WHOLE_IN(4)) };
    struct muslin_fit_rescaled out = rescaled(&spec, rows, 2);
    ck_assert_int_eq(rows[0].new_cut, IN(4, 1, 2));
    ck_assert_int_eq(rows[1].new_cut, IN(8, 1, 2));
    ck_assert_int_eq(rows[1].new_finished, WHOLE_IN(8));
    ck_assert_int_eq(rows[1].finished, WHOLE_IN(4));
    for (int i = 0; i < 2; i++) {
        ck_assert(rows[i].on_grid == 1 && rows[i].rest == 0);
        ck_assert(rows[i].cut_below == rows[i].new_cut && rows[i].cut_above == rows[i].new_cut);
        ck_assert_int_eq(rows[i].cut_nearest, rows[i].new_cut);
    }
    ck_assert(out.off_grid == 0 && out.warnings == 0);
    ck_assert_int_eq(out.unit, WHOLE_IN(2));
    ck_assert(out.unit_below == WHOLE_IN(4) && out.unit_above == WHOLE_IN(4));
    ck_assert(out.numerator == 2 && out.denominator == 1);
}
END_TEST

START_TEST(three_quarters_of_a_pattern_is_worked_out)
{
    /* Example: sizes of 3 and 6 in finished at 3 / 4: 2 1/4 and 4 1/2 in, cut 2 3/4 and 5 in. */
    struct muslin_fit_rescale_spec spec = by(3, 4);
    struct muslin_fit_rescale_row rows[] = { SIZE(WHOLE_IN(3)), SIZE(WHOLE_IN(6)) };
    rescaled(&spec, rows, 2);
    ck_assert_int_eq(rows[0].new_finished, IN(2, 1, 4));
    ck_assert_int_eq(rows[1].new_finished, IN(4, 1, 2));
    ck_assert_int_eq(rows[0].new_cut, IN(2, 3, 4));
    ck_assert_int_eq(rows[1].new_cut, WHOLE_IN(5));
}
END_TEST

/* By dividing: two thirds of 2 in is 10837 1/3 ticks, 1 1/3 in; cut 1.8333 in lies between 1 3/4 and 1 7/8. Two thirds
 * of 4 in, 2.6667, is cut 3.1667, between 3 1/8 and 3 1/4. With the unit 2 in at 1 1/4 or 1 3/8 in both are on eighths;
 * 1 3/8 : 2 is 11 : 16, nearer to 2/3 than 5 : 8. */
START_TEST(sizes_off_the_marks_are_flagged_and_the_nearest_scale_offered)
{
    struct muslin_fit_rescale_spec spec = by(2, 3);
    struct muslin_fit_rescale_row rows[] = { SIZE(WHOLE_IN(2)), SIZE(WHOLE_IN(4)), SIZE(WHOLE_IN(6)) };
    struct muslin_fit_rescaled out = rescaled(&spec, rows, 3);
    ck_assert_int_eq(rows[0].new_finished, 10837);
    ck_assert_int_eq(rows[0].rest, 1);
    ck_assert_int_eq(rows[1].new_finished, 21675);
    ck_assert_int_eq(rows[1].rest, -1);
    ck_assert(rows[0].on_grid == 0 && rows[1].on_grid == 0 && rows[2].on_grid == 1);
    ck_assert(rows[0].cut_below == IN(1, 3, 4) && rows[0].cut_above == IN(1, 7, 8));
    ck_assert_int_eq(rows[0].cut_nearest, IN(1, 7, 8));
    ck_assert(rows[1].cut_below == IN(3, 1, 8) && rows[1].cut_above == IN(3, 1, 4));
    ck_assert_int_eq(rows[1].cut_nearest, IN(3, 1, 8));
    ck_assert_int_eq(rows[2].new_cut, IN(4, 1, 2));
    ck_assert(out.off_grid == 2 && out.warnings == MUSLIN_WARN_OFF_GRID);
    ck_assert_int_eq(out.unit, WHOLE_IN(2));
    ck_assert_int_eq(out.unit_below, IN(1, 1, 4));
    ck_assert_int_eq(out.unit_above, IN(1, 3, 8));
    ck_assert(out.numerator == 11 && out.denominator == 16);
}
END_TEST

/* By hand, as the header says: seams of 1/8 in and marks at 1/4 in want one unit at 1/8 in beyond a mark, two units too,
 * and twice 1/8 in is a mark. */
START_TEST(some_seams_suit_no_scale)
{
    struct muslin_fit_rescale_spec spec = by(3, 2);
    struct muslin_fit_rescale_row rows[] = { SIZE(WHOLE_IN(1)), SIZE(WHOLE_IN(2)) };
    spec.allowance = IN(0, 1, 16);
    spec.grid = IN(0, 1, 4);
    struct muslin_fit_rescaled out = rescaled(&spec, rows, 2);
    ck_assert(out.unit_below == 0 && out.unit_above == 0);
    ck_assert(out.numerator == 0 && out.denominator == 1);
    ck_assert_int_eq(out.off_grid, 2);
}
END_TEST

static int on_grid(const struct muslin_fit_rescale_spec *spec, const struct muslin_fit_rescale_row *rows,
                   muslin_len unit, muslin_len unit_becomes)
{
    for (int i = 0; i < SIZES; i++)
        if ((rows[i].finished / unit * unit_becomes + 2 * spec->allowance + spec->take_up) % spec->grid != 0)
            return 0;
    return 1;
}

static muslin_len largest_common(const struct muslin_fit_rescale_row *rows)
{
    muslin_len unit = rows[0].finished;
    while (rows[0].finished % unit != 0 || rows[1].finished % unit != 0 || rows[2].finished % unit != 0)
        unit--;
    return unit;
}

/* Units below and above unit x numerator / denominator are tried one by one; the seams repeat with the grid, so one grid
 * each way is enough. */
static int agrees_with_trying(const struct muslin_fit_rescale_spec *spec, struct muslin_fit_rescale_row *rows)
{
    struct muslin_fit_rescaled out = { .size = (uint32_t)sizeof out };
    if (muslin_fit_rescale(spec, rows, sizeof rows[0], SIZES, &out, NULL) != MUSLIN_OK)
        return 0;
    muslin_len unit = largest_common(rows);
    int64_t exact = unit * spec->numerator; /* in denominators */
    muslin_len below = exact / spec->denominator;
    muslin_len above = (exact + spec->denominator - 1) / spec->denominator;
    muslin_len last = above + spec->grid;
    while (below > 0 && !on_grid(spec, rows, unit, below))
        below--;
    while (above < last && !on_grid(spec, rows, unit, above))
        above++;
    above = above == last ? 0 : above;
    int up = below == 0 || (above != 0 && above * spec->denominator - exact <= exact - below * spec->denominator);
    muslin_len nearest = up ? above : below;
    return out.unit == unit && out.unit_below == below && out.unit_above == above &&
           out.numerator * unit == nearest * out.denominator && out.denominator >= 1;
}

START_TEST(every_small_pattern_finds_the_scales_that_trying_gives)
{
    struct muslin_fit_rescale_row rows[SIZES] = { SIZE(1), SIZE(1), SIZE(1) };
    struct muslin_fit_rescale_spec spec = by(1, 1);
    uint64_t state = 1;
    int good = 1;
    for (int i = 0; i < 20000; i++) {
        for (int j = 0; j < SIZES; j++)
            rows[j].finished = draw_from(&state, 1, 6) * draw_from(&state, 1, 5);
        spec.numerator = draw_from(&state, 1, 9);
        spec.denominator = draw_from(&state, 1, 9);
        spec.allowance = draw_from(&state, 0, 4);
        spec.take_up = draw_from(&state, 0, 3);
        spec.grid = draw_from(&state, 1, 12);
        good &= agrees_with_trying(&spec, rows);
    }
    ck_assert(good);
}
END_TEST

/* Sizes of one tick with a take-up of a tick: cut sizes below are all seam. */
START_TEST(a_mark_that_shows_nothing_is_not_offered)
{
    struct muslin_fit_rescale_spec spec = by(1, 2);
    struct muslin_fit_rescale_row rows[] = { SIZE(2) };
    spec.allowance = 5;
    spec.grid = 10;
    struct muslin_fit_rescaled out = rescaled(&spec, rows, 1);
    ck_assert_int_eq(rows[0].new_cut, 11);
    ck_assert_int_eq(rows[0].cut_below, 0);
    ck_assert_int_eq(rows[0].cut_nearest, 20);
    ck_assert_int_eq(rows[0].cut_above, 20);
    ck_assert_int_eq(out.unit_below, 0);
    ck_assert_int_eq(out.unit_above, 10);
    ck_assert(out.numerator == 5 && out.denominator == 1);
}
END_TEST

/* A size of 1/8 in at a quarter is cut 4318 ticks. The mark at 1/2 in is nearest, but is all seam: 254 away, and the
 * next one 762. */
START_TEST(the_nearest_mark_is_the_nearest_of_which_something_is_seen)
{
    struct muslin_fit_rescale_spec spec = by(1, 4);
    struct muslin_fit_rescale_row rows[] = { SIZE(1016), SIZE(WHOLE_IN(1)) };
    rescaled(&spec, rows, 2);
    ck_assert(rows[0].new_cut == 4318 && rows[0].cut_below == 0);
    ck_assert(rows[0].cut_nearest == 5080 && rows[0].cut_above == 5080);
    ck_assert(rows[1].cut_nearest == 6096 && rows[1].on_grid == 1);
}
END_TEST

/* ---- refusals ---------------------------------------------------------------------------------------------------- */

static muslin_status call_rescale(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_fit_rescale_row rows[] = { SIZE(WHOLE_IN(3)), SIZE(WHOLE_IN(5)) };
    muslin_status status = muslin_fit_rescale(spec, rows, sizeof rows[0], 2, out, problem);
    ck_assert_int_eq(rows[1].new_cut != 0, status == MUSLIN_OK);
    return status;
}
static const struct muslin_fit_rescale_spec good_rescale = { (uint32_t)sizeof good_rescale, 0, 3, 2, 2032, 10, 1016 };
static const struct ruled rescale = RULED(call_rescale, good_rescale, muslin_fit_rescaled);

START_TEST(rescale_checks_its_structs)
{
    ck_struct_rules(&rescale);
    ck_no_flag_known(&rescale);
}
END_TEST

START_TEST(rescale_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_fit_rescale_spec, numerator, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_RATIO),
        REFUSAL(muslin_fit_rescale_spec, numerator, INT64_MIN, MUSLIN_ERR_RANGE, MUSLIN_ARG_RATIO),
        REFUSAL(muslin_fit_rescale_spec, denominator, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR),
        REFUSAL(muslin_fit_rescale_spec, denominator, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR),
        OUTSIDE(muslin_fit_rescale_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_fit_rescale_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_fit_rescale_spec, grid, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_GRID),
    };
    ck_refusals(&rescale, refusals, COUNT_OF(refusals));
}
END_TEST

/* What a refused call says; the rows must be left alone. */
static struct muslin_problem refused(const struct muslin_fit_rescale_spec *spec, struct muslin_fit_rescale_row *rows,
                                     size_t row_size, size_t n, muslin_status status)
{
    struct muslin_fit_rescaled out = { .size = (uint32_t)sizeof out, .unit = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_fit_rescale(spec, rows, row_size, n, &out, &problem), status);
    ck_assert_int_eq(out.unit, 77);
    return problem;
}

START_TEST(rows_are_checked_before_any_is_written)
{
    struct muslin_fit_rescale_spec spec = by(1, 1);
    struct muslin_fit_rescale_row rows[] = { SIZE(5), SIZE(0) };
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_RANGE).at, 1);
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_FINISHED);
    rows[1].finished = MUSLIN_SIZE_MAX + 1;
    refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_RANGE);
    rows[1].finished = 5;
    rows[1].size = 8;
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_STRUCT_SIZE).at, 1);
    rows[1].size = (uint32_t)sizeof rows[1] + 1;
    refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_STRUCT_SIZE);
    rows[1].size = (uint32_t)sizeof rows[1];
    rows[1].flags = 1;
    refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_FLAGS);
    rows[1].flags = 0;
    ck_assert_int_eq(rows[0].new_cut, 0);
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0] - 1, 2, MUSLIN_ERR_STRUCT_SIZE).argument, MUSLIN_ARG_ROW_SIZE);
    refused(&spec, rows, 4097, 2, MUSLIN_ERR_STRUCT_SIZE);
    refused(&spec, NULL, sizeof rows[0], 2, MUSLIN_ERR_NULL);
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0], 0, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(refused(&spec, rows, sizeof rows[0], (size_t)MUSLIN_COUNT_MAX + 1, MUSLIN_ERR_RANGE).value,
                     MUSLIN_COUNT_MAX + 1);
    rescaled(&spec, rows, 2);
    ck_assert_int_eq(rescaled(&spec, rows, 1).off_grid, 1); /* 5 ticks and seams of 1/4 in are on no mark of 1/8 in */
}
END_TEST

START_TEST(a_scaled_size_ends_at_the_largest_size)
{
    struct muslin_fit_rescale_spec spec = by(INT64_MAX, INT64_MAX);
    struct muslin_fit_rescale_row rows[] = { SIZE(1), SIZE(MUSLIN_SIZE_MAX) };
    ck_assert_int_eq(rescaled(&spec, rows, 2).off_grid, 2);
    ck_assert_int_eq(rows[1].new_finished, MUSLIN_SIZE_MAX);
    spec = by(INT64_MAX, 1);
    struct muslin_problem problem = refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW);
    ck_assert(problem.argument == MUSLIN_ARG_RATIO && problem.at == 0 && problem.value == 1);
    spec = by(MUSLIN_SIZE_MAX + 1, MUSLIN_SIZE_MAX);
    problem = refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW);
    ck_assert(problem.at == 1 && problem.value == MUSLIN_SIZE_MAX && problem.limit == MUSLIN_SIZE_MAX);
    spec = by(2 * MUSLIN_SIZE_MAX + 1, 2 * MUSLIN_SIZE_MAX); /* half a tick more */
    refused(&spec, rows, sizeof rows[0], 2, MUSLIN_ERR_OVERFLOW);
    spec = by(1, INT64_MAX);
    rescaled(&spec, rows, 2);
    ck_assert_int_eq(rows[0].new_finished, 0);
    ck_assert_int_eq(rows[0].rest, 1);
}
END_TEST

/* Sizes of one tick and of the largest size: no unit above the scale can serve them, for the next is a grid away. */
START_TEST(a_scale_beyond_the_largest_size_is_left_out)
{
    struct muslin_fit_rescale_spec spec = by(1, 1);
    struct muslin_fit_rescale_row rows[] = { SIZE(1), SIZE(MUSLIN_SIZE_MAX) };
    spec.allowance = 0;
    spec.grid = 4;
    struct muslin_fit_rescaled out = rescaled(&spec, rows, 2);
    ck_assert(out.unit == 1 && out.unit_below == 0 && out.unit_above == 0);
    ck_assert(out.numerator == 0 && out.denominator == 1);
    struct muslin_fit_rescale_row falling[] = { SIZE(MUSLIN_SIZE_MAX), SIZE(1) };
    ck_assert_int_eq(rescaled(&spec, falling, 2).unit_above, 0);
    rows[1].finished = MUSLIN_SIZE_MAX / 4;
    out = rescaled(&spec, rows, 2);
    ck_assert(out.unit_below == 0 && out.unit_above == 4 && out.numerator == 4);
    spec.numerator = 4;
    out = rescaled(&spec, rows, 2);
    ck_assert(out.unit_below == 4 && out.unit_above == 4);
    spec = by(9, 2);
    spec.allowance = 0;
    spec.grid = 4;
    rows[1].finished = MUSLIN_SIZE_MAX / 8 + 1;
    out = rescaled(&spec, rows, 2);
    ck_assert(out.unit_below == 4 && out.unit_above == 0 && out.numerator == 4 && out.denominator == 1);
}
END_TEST

/* A newer caller's rows are longer; the library writes what it knows and keeps their stride. */
START_TEST(longer_rows_keep_their_stride)
{
    struct {
        struct muslin_fit_rescale_row row;
        int64_t newer;
    } rows[2] = { { SIZE(WHOLE_IN(2)), 0 }, { SIZE(WHOLE_IN(4)), 0 } };
    struct muslin_fit_rescaled out = { .size = (uint32_t)sizeof out };
    struct muslin_fit_rescale_spec spec = by(2, 1);
    ck_ok(muslin_fit_rescale(&spec, &rows[0].row, sizeof rows[0], 2, &out, NULL));
    ck_assert_int_eq(rows[0].row.new_cut, IN(4, 1, 2));
    ck_assert_int_eq(rows[1].row.new_cut, IN(8, 1, 2));
    ck_assert_uint_eq(rows[1].row.size, sizeof rows[1].row);
}
END_TEST

INIT_CALL(fit_rescale)
ROW_INIT_CALL(fit_rescale_row)

START_TEST(initial_values_are_those_of_the_macro)
{
    const struct muslin_fit_rescale_spec initial = MUSLIN_FIT_RESCALE_SPEC_INIT;
    ck_init_rules(init_fit_rescale, &initial, (uint32_t)sizeof initial);
    const struct muslin_fit_rescale_row row = MUSLIN_FIT_RESCALE_ROW_INIT;
    ck_init_rules(init_fit_rescale_row, &row, (uint32_t)sizeof row);
}
END_TEST

void add_fit_rescale(Suite *suite)
{
    TCase *scales = tcase_create("rescale");
    tcase_add_test(scales, a_pattern_doubled_stays_on_the_marks);
    tcase_add_test(scales, three_quarters_of_a_pattern_is_worked_out);
    tcase_add_test(scales, sizes_off_the_marks_are_flagged_and_the_nearest_scale_offered);
    tcase_add_test(scales, some_seams_suit_no_scale);
    tcase_add_test(scales, every_small_pattern_finds_the_scales_that_trying_gives);
    tcase_add_test(scales, a_mark_that_shows_nothing_is_not_offered);
    tcase_add_test(scales, the_nearest_mark_is_the_nearest_of_which_something_is_seen);
    tcase_add_test(scales, rescale_checks_its_structs);
    tcase_add_test(scales, rescale_refuses_what_lies_outside_its_ranges);
    tcase_add_test(scales, rows_are_checked_before_any_is_written);
    tcase_add_test(scales, a_scaled_size_ends_at_the_largest_size);
    tcase_add_test(scales, a_scale_beyond_the_largest_size_is_left_out);
    tcase_add_test(scales, longer_rows_keep_their_stride);
    tcase_add_test(scales, initial_values_are_those_of_the_macro);
    suite_add_tcase(suite, scales);
}
