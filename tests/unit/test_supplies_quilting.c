/* test_supplies_quilting.c - lines of quilting: by drawing them, and sums worked out by hand.
 *
 * SPDX-License-Identifier: MIT */
#include "test_supplies.h"

static struct muslin_quilting_spec area(muslin_len width, muslin_len length, int32_t pattern)
{
    struct muslin_quilting_spec spec = MUSLIN_QUILTING_SPEC_INIT;
    spec.width = width;
    spec.length = length;
    spec.pattern = pattern;
    return spec;
}

static struct muslin_quilting quilt(const struct muslin_quilting_spec *spec)
{
    struct muslin_quilting out = { .size = (uint32_t)sizeof out };
    ck_ok(muslin_quilting_lines(spec, &out, NULL));
    return out;
}

START_TEST(a_grid_over_a_small_quilt)
{
    /* Example: 40 x 48 in, a grid of 4 in from an offset of 2 in: 12 lines from side to side and 10 from top to bottom,
     * 960 in; crosshatched at 4 in from a corner: 32 lines. */
    struct muslin_quilting_spec spec = area(WHOLE_IN(40), WHOLE_IN(48), MUSLIN_QUILTING_PATTERN_GRID);
    spec.spacing = WHOLE_IN(4);
    spec.offset = WHOLE_IN(2);
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines_first, 12); /* 2, 6, ... 46 */
    ck_assert_int_eq(out.lines_second, 10); /* 2, 6, ... 38 */
    ck_assert_int_eq(out.lines, 22);
    ck_assert_int_eq(out.length, WHOLE_IN(12 * 40 + 10 * 48));
    ck_assert_int_eq(out.left_first, 0);
    ck_assert_int_eq(out.last_first, WHOLE_IN(48 - 46));
    ck_assert_int_eq(out.last_second, WHOLE_IN(40 - 38));
    ck_assert_int_eq(out.even_first, WHOLE_IN(4));
    ck_assert_int_eq(out.exact, 1);
    /* 48 / (4 sqrt 2) = 8.5 and 40 / (4 sqrt 2) = 7.1 lines on the sides of the first, both ways */
    spec.pattern = MUSLIN_QUILTING_PATTERN_CROSSHATCH;
    spec.start = MUSLIN_QUILTING_START_FROM_CORNER;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 2 * (1 + 8 + 7));
    ck_assert_int_eq(out.lines_first, 16);
    ck_assert_int_eq(out.lines_second, 16);
    ck_assert(out.last_first == 0 && out.last_second == 0);
    ck_assert_int_eq(out.exact, 0);
}
END_TEST

START_TEST(straight_lines_go_one_way_or_the_other)
{
    struct muslin_quilting_spec spec = area(WHOLE_IN(40), WHOLE_IN(48), MUSLIN_QUILTING_PATTERN_ACROSS);
    spec.spacing = WHOLE_IN(5);
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 10); /* 0, 5, ... 45 */
    ck_assert_int_eq(out.lines_first, 10);
    ck_assert_int_eq(out.lines_second, 0);
    ck_assert_int_eq(out.length, WHOLE_IN(400));
    ck_assert_int_eq(out.left_first, WHOLE_IN(3));
    ck_assert_int_eq(out.last_first, WHOLE_IN(48 - 45));
    ck_assert_int_eq(out.last_second, 0);
    ck_assert_int_eq(out.even_first, WHOLE_IN(48) / 9); /* nine spaces fill 48 in */
    ck_assert_int_eq(out.even_second, 0);
    spec.pattern = MUSLIN_QUILTING_PATTERN_ALONG;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines_first, 0);
    ck_assert_int_eq(out.lines_second, 9); /* 0, 5, ... 40 */
    ck_assert_int_eq(out.length, WHOLE_IN(9 * 48));
    ck_assert_int_eq(out.left_second, 0);
    ck_assert(out.left_first == 0 && out.last_first == 0 && out.even_first == 0);
    ck_assert_int_eq(out.even_second, WHOLE_IN(40) / 8);
}
END_TEST

START_TEST(an_offset_may_leave_one_line_or_none)
{
    struct muslin_quilting_spec spec = area(WHOLE_IN(40), WHOLE_IN(48), MUSLIN_QUILTING_PATTERN_GRID);
    spec.spacing = WHOLE_IN(30);
    spec.offset = WHOLE_IN(20);
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines_first, 1);
    ck_assert_int_eq(out.left_first, WHOLE_IN(8));
    ck_assert_int_eq(out.last_first, WHOLE_IN(48 - 20));
    ck_assert_int_eq(out.even_first, 0);
    ck_assert_int_eq(out.lines_second, 1); /* just in the middle */
    spec.offset++;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines_second, 0);
    ck_assert_int_eq(out.lines, 1);
    ck_assert_int_eq(out.length, WHOLE_IN(40));
    spec.offset = WHOLE_IN(60);
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 0);
    ck_assert_int_eq(out.length, 0);
    ck_assert_int_eq(out.exact, 1);
    spec.width++; /* a tick more would be room for one */
    spec.offset = WHOLE_IN(20) + 1;
    ck_assert_int_eq(quilt(&spec).lines_second, 0);
    spec.width++;
    ck_assert_int_eq(quilt(&spec).lines_second, 1);
    /* two lines 30 in apart in 43 leave 13, which they fill 43 in apart */
    spec.width = WHOLE_IN(43);
    spec.offset = 0;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines_second, 2);
    ck_assert_int_eq(out.left_second, WHOLE_IN(13));
    ck_assert_int_eq(out.even_second, WHOLE_IN(43));
}
END_TEST

/* A 10 x 10 square and a spacing of 4: the diagonal is 14.142 long. Cutting a corner off, lines at 4, 8 and 12: 8, then
 * past the middle (7.07) 20 sqrt 2 - 16 and 20 sqrt 2 - 24: 40 sqrt 2 - 32 = 24.57. From a corner: 10 sqrt 2, and at 4
 * on each side 10 sqrt 2 - 8: 30 sqrt 2 - 16 = 26.43. */
START_TEST(diagonals_of_a_small_square)
{
    struct muslin_quilting_spec spec = area(10, 10, MUSLIN_QUILTING_PATTERN_DIAGONAL);
    spec.spacing = 4;
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 3);
    ck_assert_int_eq(out.length, 25);
    ck_assert_int_eq(out.exact, 0);
    spec.start = MUSLIN_QUILTING_START_FROM_CORNER;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 3);
    ck_assert_int_eq(out.length, 27);
    /* twice 26.43 is 52.85; twice 24.57 is 49.14 and not 2 x 25 */
    spec.pattern = MUSLIN_QUILTING_PATTERN_CROSSHATCH;
    ck_assert_int_eq(quilt(&spec).length, 53);
    spec.start = MUSLIN_QUILTING_START_AT_OFFSET;
    ck_assert_int_eq(quilt(&spec).length, 50);
    ck_assert_int_eq(quilt(&spec).lines, 6);
    /* a square of 9, lines at 4, 8 and 12 of 12.73: 36 sqrt 2 - 32 = 18.91, twice 37.82 */
    spec.width = 9;
    spec.length = 9;
    ck_assert_int_eq(quilt(&spec).length, 38);
}
END_TEST

/* A 10 x 30 area, lines at 3, 9, 15, 21 and 27 of 28.28, with the sides ending at 7.07 and 21.21: 6, three of 10 sqrt
 * 2 = 14.14, and 40 sqrt 2 - 54 = 2.57: 70 sqrt 2 - 48 = 50.995. The offset keeps 27 from the far corner. */
START_TEST(diagonals_of_a_long_area_are_level_in_the_middle)
{
    struct muslin_quilting_spec spec = area(30, 10, MUSLIN_QUILTING_PATTERN_DIAGONAL);
    spec.spacing = 6;
    spec.offset = 3;
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 4);
    ck_assert_int_eq(out.length, 49); /* 6 + 30 sqrt 2 = 48.43 */
    spec.offset = 1;                  /* 1, 7, 13, 19, 25 of 27.28: 2, 14, 10 sqrt 2 twice, 40 sqrt 2 - 50 */
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 5);
    ck_assert_int_eq(out.length, 51); /* 16 - 50 + 60 sqrt 2 = 50.85 */
    /* from a corner at 6: 10 sqrt 2; towards the longer side 6 and 12 level (up to 14.14), 18 with 30 sqrt 2 - 36;
     * towards the shorter side 6 with 10 sqrt 2 - 12: 70 sqrt 2 - 48 = 50.995 */
    spec.start = MUSLIN_QUILTING_START_FROM_CORNER;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 5);
    ck_assert_int_eq(out.length, 51);
}
END_TEST

START_TEST(a_line_that_is_a_point_is_no_line)
{
    struct muslin_quilting_spec spec = area(10, 10, MUSLIN_QUILTING_PATTERN_DIAGONAL);
    spec.spacing = 20;
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 0);
    ck_assert_int_eq(out.length, 0);
    ck_assert_int_eq(out.exact, 1);
    /* lines that only cut corners off are whole: 2 x 5 */
    spec.offset = 5;
    out = quilt(&spec);
    ck_assert_int_eq(out.lines, 1);
    ck_assert_int_eq(out.length, 10);
    ck_assert_int_eq(out.exact, 1);
    spec.pattern = MUSLIN_QUILTING_PATTERN_CROSSHATCH;
    ck_assert_int_eq(quilt(&spec).length, 20);
    spec.offset = 8;
    ck_assert_int_eq(quilt(&spec).lines, 0);
}
END_TEST

/* Whether 2 p p <= s s. */
static int reaches(int64_t p, int64_t s)
{
    return 2 * p * p <= s * s;
}

/* Lines that cut off a corner, one by one: added up as whole + root x sqrt 2. */
static int agrees_with_drawing(const struct muslin_quilting_spec *s, const struct muslin_quilting *out)
{
    int64_t shorter = s->width < s->length ? s->width : s->length;
    int64_t longer = s->width + s->length - shorter;
    int64_t lines = 0;
    int64_t whole = 0;
    int64_t root = 0;
    for (int64_t p = s->offset; reaches(p + s->offset, shorter + longer); p += s->spacing) {
        if (p == 0)
            continue;
        lines++;
        if (reaches(p, shorter))
            whole += 2 * p;
        else if (reaches(p, longer))
            root += shorter;
        else {
            root += shorter + longer;
            whole -= 2 * p;
        }
    }
    /* length - whole is the least number not below root sqrt 2 */
    int64_t over = out->length - whole;
    return out->lines == lines && over * over >= 2 * root * root && (over - 1 < 0 || root == 0 ||
                                                                     (over - 1) * (over - 1) < 2 * root * root) &&
           (root != 0 || over == 0);
}

START_TEST(every_small_area_is_what_drawing_its_lines_gives)
{
    struct muslin_quilting_spec spec = area(1, 1, MUSLIN_QUILTING_PATTERN_DIAGONAL);
    for (spec.width = 1; spec.width <= 13; spec.width += 2)
        for (spec.length = 1; spec.length <= 40; spec.length += 3)
            for (spec.spacing = 1; spec.spacing <= 9; spec.spacing++)
                for (spec.offset = 0; spec.offset <= 5; spec.offset++) {
                    struct muslin_quilting out = quilt(&spec);
                    ck_assert_msg(agrees_with_drawing(&spec, &out), "%d x %d, %d from %d", (int)spec.width,
                                  (int)spec.length, (int)spec.spacing, (int)spec.offset);
                }
}
END_TEST

/* A mile and more of lines a tick apart. Each stands for a band a tick wide, so together they are as long as the area
 * has square ticks, but for its edges. */
START_TEST(the_densest_lines_over_the_largest_area_are_still_right)
{
    const int64_t area_in_ticks = MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX;
    struct muslin_quilting_spec spec = area(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_QUILTING_PATTERN_DIAGONAL);
    spec.spacing = 1;
    for (spec.start = 1; spec.start <= 2; spec.start++) {
        spec.pattern = MUSLIN_QUILTING_PATTERN_DIAGONAL;
        struct muslin_quilting out = quilt(&spec);
        ck_assert_int_lt(out.length - area_in_ticks, 4 * MUSLIN_SIZE_MAX);
        ck_assert_int_gt(out.length - area_in_ticks, -4 * MUSLIN_SIZE_MAX);
        /* 2^30 x sqrt 2 is 1518500249.98 */
        ck_assert_int_eq(out.lines, spec.start == 1 ? 1518500249 : 1 + 2 * 759250124);
        spec.pattern = MUSLIN_QUILTING_PATTERN_CROSSHATCH;
        struct muslin_quilting both = quilt(&spec);
        ck_assert_int_eq(both.lines, 2 * out.lines);
        ck_assert_int_le(both.length, 2 * out.length);
        ck_assert_int_ge(both.length, 2 * out.length - 1);
    }
    spec.pattern = MUSLIN_QUILTING_PATTERN_GRID;
    spec.start = MUSLIN_QUILTING_START_AT_OFFSET;
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 2 * (MUSLIN_SIZE_MAX + 1));
    ck_assert_int_eq(out.length, 2 * (MUSLIN_SIZE_MAX + 1) * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(an_outline_is_sewn_as_often_as_asked)
{
    struct muslin_quilting_spec spec = area(0, 0, MUSLIN_QUILTING_PATTERN_OUTLINE);
    spec.outline = WHOLE_IN(521);
    spec.passes = 2;
    struct muslin_quilting out = quilt(&spec);
    ck_assert_int_eq(out.lines, 2);
    ck_assert_int_eq(out.lines_first, 2);
    ck_assert_int_eq(out.length, WHOLE_IN(1042));
    ck_assert_int_eq(out.exact, 1);
    spec.passes = 0;
    ck_assert_int_eq(quilt(&spec).length, 0);
    spec.outline = 0;
    spec.passes = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(quilt(&spec).length, 0);
    ck_assert_int_eq(quilt(&spec).lines, MUSLIN_COUNT_MAX);
}
END_TEST

static muslin_status call_quilting(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_quilting_lines(spec, out, problem);
}
static const struct muslin_quilting_spec good_quilting = {
    (uint32_t)sizeof good_quilting, 0, WHOLE_IN(40), WHOLE_IN(48), WHOLE_IN(2), WHOLE_IN(1), WHOLE_IN(9), 2,
    MUSLIN_QUILTING_PATTERN_CROSSHATCH, MUSLIN_QUILTING_START_FROM_CORNER
};
static const struct ruled quilting = RULED(call_quilting, good_quilting, muslin_quilting);

START_TEST(quilting_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_quilting_spec, width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_quilting_spec, length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_quilting_spec, spacing, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SPACING),
        OUTSIDE(muslin_quilting_spec, offset, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_OFFSET),
        OUTSIDE(muslin_quilting_spec, outline, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_LENGTH),
        OUTSIDE(muslin_quilting_spec, passes, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_PASSES),
        NOT_A_CHOICE(muslin_quilting_spec, pattern, 6, MUSLIN_ARG_PATTERN),
        NOT_A_CHOICE(muslin_quilting_spec, start, 2, MUSLIN_ARG_START),
    };
    ck_struct_rules(&quilting);
    ck_no_flag_known(&quilting);
    ck_refusals(&quilting, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(an_outline_needs_no_area_but_no_negative_one_either)
{
    struct muslin_quilting_spec spec = area(-1, 0, MUSLIN_QUILTING_PATTERN_OUTLINE);
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, quilting.out_size);
    ck_status(muslin_quilting_lines(&spec, (struct muslin_quilting *)(void *)&out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_WIDTH);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}
END_TEST

START_TEST(an_outline_too_long_to_count_is_an_overflow)
{
    struct muslin_quilting_spec spec = area(0, 0, MUSLIN_QUILTING_PATTERN_OUTLINE);
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    spec.outline = MUSLIN_LENGTH_MAX / 2;
    spec.passes = 2;
    ck_assert_int_eq(quilt(&spec).length, MUSLIN_LENGTH_MAX - 1);
    spec.passes = 3;
    lay_out_output(&out, quilting.out_size);
    ck_status(muslin_quilting_lines(&spec, (struct muslin_quilting *)(void *)&out, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PASSES);
    ck_assert_int_eq(problem.value, 3);
    ck_assert_int_eq(problem.limit, 2);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
}
END_TEST

START_TEST(distances_that_are_wrong_are_said_in_inches)
{
    struct muslin_quilting_spec spec = good_quilting;
    struct muslin_quilting out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    spec.spacing = -8128;
    ck_status(muslin_quilting_lines(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_ptr_nonnull(strstr(problem.text, "Spacing of the lines is -1 in"));
    spec = good_quilting;
    spec.offset = -8128;
    ck_status(muslin_quilting_lines(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_ptr_nonnull(strstr(problem.text, "Offset of the first line is -1 in"));
}
END_TEST

INIT_CALL(quilting)

START_TEST(initial_values_are_those_of_the_macro)
{
    const struct muslin_quilting_spec spec = MUSLIN_QUILTING_SPEC_INIT;
    ck_init_rules(init_quilting, &spec, (uint32_t)sizeof spec);
    ck_assert_int_eq(spec.spacing, WHOLE_IN(2));
    ck_assert_int_eq(spec.pattern, MUSLIN_QUILTING_PATTERN_GRID);
    ck_assert_int_eq(spec.start, MUSLIN_QUILTING_START_AT_OFFSET);
}
END_TEST

void add_quilting_tests(Suite *suite)
{
    TCase *tcase = tcase_create("lines of quilting");
    tcase_add_test(tcase, a_grid_over_a_small_quilt);
    tcase_add_test(tcase, straight_lines_go_one_way_or_the_other);
    tcase_add_test(tcase, an_offset_may_leave_one_line_or_none);
    tcase_add_test(tcase, diagonals_of_a_small_square);
    tcase_add_test(tcase, diagonals_of_a_long_area_are_level_in_the_middle);
    tcase_add_test(tcase, a_line_that_is_a_point_is_no_line);
    tcase_add_test(tcase, every_small_area_is_what_drawing_its_lines_gives);
    tcase_add_test(tcase, the_densest_lines_over_the_largest_area_are_still_right);
    tcase_add_test(tcase, an_outline_is_sewn_as_often_as_asked);
    tcase_add_test(tcase, quilting_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, an_outline_needs_no_area_but_no_negative_one_either);
    tcase_add_test(tcase, an_outline_too_long_to_count_is_an_overflow);
    tcase_add_test(tcase, distances_that_are_wrong_are_said_in_inches);
    tcase_add_test(tcase, initial_values_are_those_of_the_macro);
    suite_add_tcase(suite, tcase);
}
