/* test_reference.c - tables to start from.
 *
 * SPDX-License-Identifier: MIT */
#include "struct_rules.h"

static int64_t rows_in(int32_t table)
{
    int64_t rows = -1;
    ck_ok(muslin_reference_count(table, &rows));
    return rows;
}

static struct muslin_reference row_of(int32_t table, int64_t index)
{
    struct muslin_reference row = { 0 };
    row.size = (uint32_t)sizeof row;
    ck_ok(muslin_reference_row(table, index, &row, NULL));
    return row;
}

static int64_t index_of(int32_t table, const char *name)
{
    int64_t rows = rows_in(table);
    for (int64_t i = 0; i < rows; i++)
        if (strcmp(muslin_reference_name(table, i), name) == 0)
            return i;
    return -1;
}

static void ck_row(int32_t table, const char *name, muslin_len width, muslin_len length, int64_t count)
{
    int64_t index = index_of(table, name);
    ck_assert_msg(index >= 0, "no row %s", name);
    struct muslin_reference row = row_of(table, index);
    ck_assert_int_eq(row.width, width);
    ck_assert_int_eq(row.length, length);
    ck_assert_int_eq(row.count, count);
}

static const char *source_of(int32_t table, const char *name)
{
    return muslin_reference_source(table, index_of(table, name));
}

START_TEST(batting_is_packed_as_the_charts_say)
{
    /* crib, full, king: Quilt sizes 101 (article), Quilt size measurements (quilting magazine, 2013); craft: Quilting
     * basics: standard quilt sizes (blog, 2012); throw, twin and queen: from memory, and they
     * say so */
    ck_row(MUSLIN_TABLE_BATTING, "craft", WHOLE_IN(34), WHOLE_IN(45), 0);
    ck_row(MUSLIN_TABLE_BATTING, "crib", WHOLE_IN(45), WHOLE_IN(60), 0);
    ck_row(MUSLIN_TABLE_BATTING, "throw", WHOLE_IN(60), WHOLE_IN(60), 0);
    ck_row(MUSLIN_TABLE_BATTING, "twin", WHOLE_IN(72), WHOLE_IN(90), 0);
    ck_row(MUSLIN_TABLE_BATTING, "full", WHOLE_IN(81), WHOLE_IN(96), 0);
    ck_row(MUSLIN_TABLE_BATTING, "queen", WHOLE_IN(90), WHOLE_IN(108), 0);
    ck_row(MUSLIN_TABLE_BATTING, "king", WHOLE_IN(120), WHOLE_IN(120), 0);
    ck_assert_str_eq(source_of(MUSLIN_TABLE_BATTING, "twin"), "from memory, no source");
    ck_assert_str_eq(source_of(MUSLIN_TABLE_BATTING, "queen"), "from memory, no source");
    ck_assert_ptr_nonnull(strstr(source_of(MUSLIN_TABLE_BATTING, "king"), "Quilt sizes 101"));
}
END_TEST

START_TEST(batting_runs_from_small_to_large)
{
    for (int64_t i = 1; i < rows_in(MUSLIN_TABLE_BATTING); i++) {
        struct muslin_reference smaller = row_of(MUSLIN_TABLE_BATTING, i - 1);
        struct muslin_reference larger = row_of(MUSLIN_TABLE_BATTING, i);
        ck_assert_int_lt(smaller.width * smaller.length, larger.width * larger.length);
        ck_assert_int_le(larger.width, larger.length);
    }
}
END_TEST

START_TEST(precuts_have_their_usual_sizes)
{
    /* strips, 5 in squares: Fat quarter conversion (public forum); 10 in squares, 40 to 44: Cutting up a 10 inch square
     * (teacher's blog); fat quarter 18 x 20 to 22: Measurements page (C. A. Taylor); the rest common practice */
    ck_row(MUSLIN_TABLE_PRECUT, "2 1/2 in strips, bundle of 40", WHOLE_IN(40), IN(2, 1, 2), 40);
    ck_row(MUSLIN_TABLE_PRECUT, "2 1/2 in strips, bundle of 42", WHOLE_IN(40), IN(2, 1, 2), 42);
    ck_row(MUSLIN_TABLE_PRECUT, "5 in squares, bundle of 42", WHOLE_IN(5), WHOLE_IN(5), 42);
    ck_row(MUSLIN_TABLE_PRECUT, "10 in squares, bundle of 40", WHOLE_IN(10), WHOLE_IN(10), 40);
    ck_row(MUSLIN_TABLE_PRECUT, "10 in squares, bundle of 42", WHOLE_IN(10), WHOLE_IN(10), 42);
    ck_row(MUSLIN_TABLE_PRECUT, "10 in squares, bundle of 44", WHOLE_IN(10), WHOLE_IN(10), 44);
    ck_row(MUSLIN_TABLE_PRECUT, "fat quarter", WHOLE_IN(22), WHOLE_IN(18), 1);
    ck_row(MUSLIN_TABLE_PRECUT, "fat quarter, narrow", WHOLE_IN(20), WHOLE_IN(18), 1);
    ck_row(MUSLIN_TABLE_PRECUT, "fat quarter, metric", 550 * MUSLIN_TICKS_PER_MM, 500 * MUSLIN_TICKS_PER_MM, 1);
    ck_row(MUSLIN_TABLE_PRECUT, "fat eighth", WHOLE_IN(22), WHOLE_IN(9), 1);
    ck_row(MUSLIN_TABLE_PRECUT, "fat eighth, narrow", WHOLE_IN(20), WHOLE_IN(9), 1);
    ck_assert_str_eq(source_of(MUSLIN_TABLE_PRECUT, "10 in squares, bundle of 42"), "from memory, no source");
    ck_assert_str_eq(source_of(MUSLIN_TABLE_PRECUT, "fat eighth"), "common practice, no source");
}
END_TEST

START_TEST(fabric_widths_are_those_people_plan_with)
{
    /* 40: Binding math (public forum); 42: Double fold flange quilt binding (blog, 2019); 44: 52 4-inch and 20 3-inch
     * squares (public forum); wide goods: common practice, no source */
    const int64_t inches[] = { 40, 42, 44, 54, 60, 90, 108 };
    ck_assert_int_eq(rows_in(MUSLIN_TABLE_FABRIC_WIDTH), 7);
    for (int64_t i = 0; i < 7; i++) {
        ck_assert_int_eq(row_of(MUSLIN_TABLE_FABRIC_WIDTH, i).width, WHOLE_IN(inches[i]));
        ck_assert_int_eq(row_of(MUSLIN_TABLE_FABRIC_WIDTH, i).length, 0);
        ck_assert_int_eq(row_of(MUSLIN_TABLE_FABRIC_WIDTH, i).count, 0);
    }
    ck_assert_int_eq(row_of(MUSLIN_TABLE_FABRIC_WIDTH, 0).width, MUSLIN_USABLE_WIDTH_USUAL);
}
END_TEST

START_TEST(every_row_has_a_name_of_its_own_and_a_source)
{
    for (int32_t table = MUSLIN_TABLE_BATTING; table <= MUSLIN_TABLE_FABRIC_WIDTH; table++)
        for (int64_t i = 0; i < rows_in(table); i++) {
            ck_assert_int_eq(index_of(table, muslin_reference_name(table, i)), i);
            ck_assert_uint_gt(strlen(muslin_reference_name(table, i)), 3);
            ck_assert_uint_gt(strlen(muslin_reference_source(table, i)), 10);
        }
}
END_TEST

START_TEST(an_index_keeps_its_meaning)
{
    /* rows published in 0.1; a later version adds behind them */
    ck_assert_int_eq(index_of(MUSLIN_TABLE_BATTING, "craft"), 0);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_BATTING, "queen"), 5);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_BATTING, "king"), 6);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_PRECUT, "2 1/2 in strips, bundle of 40"), 0);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_PRECUT, "fat eighth, narrow"), 10);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_FABRIC_WIDTH, "quilting cotton, careful"), 0);
    ck_assert_int_eq(index_of(MUSLIN_TABLE_FABRIC_WIDTH, "wide backing, 108 in"), 6);
}
END_TEST

START_TEST(a_row_that_does_not_exist_is_refused_and_nameless)
{
    for (int32_t table = MUSLIN_TABLE_BATTING; table <= MUSLIN_TABLE_FABRIC_WIDTH; table++) {
        const int64_t outside[] = { -1, rows_in(table), INT64_MIN, INT64_MAX };
        for (size_t i = 0; i < 4; i++) {
            struct muslin_problem problem = PROBLEM;
            struct muslin_reference row = { 0 };
            row.size = (uint32_t)sizeof row;
            ck_status(muslin_reference_row(table, outside[i], &row, &problem), MUSLIN_ERR_INDEX);
            ck_assert_int_eq(problem.argument, MUSLIN_ARG_INDEX);
            ck_assert_int_eq(problem.value, outside[i]);
            ck_assert_int_eq(problem.limit, rows_in(table) - 1);
            ck_assert_int_eq(row.width, 0);
            ck_assert_str_eq(muslin_reference_name(table, outside[i]), "");
            ck_assert_str_eq(muslin_reference_source(table, outside[i]), "");
        }
    }
}
END_TEST

START_TEST(a_table_that_does_not_exist_is_refused_and_nameless)
{
    const int32_t unknown[] = { 0, 4, -1, INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < 5; i++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_reference row = { 0 };
        int64_t rows = 77;
        row.size = (uint32_t)sizeof row;
        ck_status(muslin_reference_count(unknown[i], &rows), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(rows, 77);
        ck_status(muslin_reference_row(unknown[i], 0, &row, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_TABLE);
        ck_assert_int_eq(problem.value, unknown[i]);
        ck_assert_int_eq(row.width, 0);
        ck_assert_str_eq(muslin_reference_name(unknown[i], 0), "");
        ck_assert_str_eq(muslin_reference_source(unknown[i], 0), "");
    }
}
END_TEST

START_TEST(a_count_needs_somewhere_to_go)
{
    ck_status(muslin_reference_count(MUSLIN_TABLE_BATTING, NULL), MUSLIN_ERR_NULL);
}
END_TEST

static muslin_status call_row(const void *spec, void *out, struct muslin_problem *problem)
{
    (void)spec;
    return muslin_reference_row(MUSLIN_TABLE_BATTING, 1, out, problem);
}

START_TEST(the_row_written_keeps_the_rules)
{
    const uint32_t no_spec[2] = { (uint32_t)sizeof no_spec, 0 };
    const struct ruled row = RULED(call_row, no_spec, muslin_reference);
    ck_out_rules(&row);
    ck_newer_structs(&row);
    ck_problem_rules(&row);
}
END_TEST

Suite *reference_suite(void);

Suite *reference_suite(void)
{
    Suite *suite = suite_create("reference");
    TCase *tables = tcase_create("tables");
    tcase_add_test(tables, batting_is_packed_as_the_charts_say);
    tcase_add_test(tables, batting_runs_from_small_to_large);
    tcase_add_test(tables, precuts_have_their_usual_sizes);
    tcase_add_test(tables, fabric_widths_are_those_people_plan_with);
    tcase_add_test(tables, every_row_has_a_name_of_its_own_and_a_source);
    tcase_add_test(tables, an_index_keeps_its_meaning);
    tcase_add_test(tables, a_row_that_does_not_exist_is_refused_and_nameless);
    tcase_add_test(tables, a_table_that_does_not_exist_is_refused_and_nameless);
    tcase_add_test(tables, a_count_needs_somewhere_to_go);
    tcase_add_test(tables, the_row_written_keeps_the_rules);
    suite_add_tcase(suite, tables);
    return suite;
}
