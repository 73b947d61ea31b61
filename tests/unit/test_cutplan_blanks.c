/* test_cutplan_blanks.c - each piece of a cutting plan by itself, what is left of the cloth, and what two layers give.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutplan_made.h"

static struct planned p;

static void ck_blank(const struct muslin_cutplan_blank *blank, muslin_len x, muslin_len y, muslin_len width,
                     muslin_len height)
{
    ck_assert_int_eq(blank->x, x);
    ck_assert_int_eq(blank->y, y);
    ck_assert_int_eq(blank->width, width);
    ck_assert_int_eq(blank->height, height);
}

static void blanks_from(int64_t first, struct muslin_cutplan_blank *rows, size_t capacity, size_t left)
{
    size_t count = 0;
    ck_ok(muslin_cutplan_blanks(p.plan, first, rows, sizeof rows[0], capacity, &count, NULL));
    ck_assert_uint_eq(count, left);
}

/* Eight squares in each strip: 17 take three. */
START_TEST(each_square_of_a_bolt_has_its_corner)
{
    struct muslin_cutplan_blank rows[17];
    start(&p, WHOLE_IN(41));
    p.spec.end_loss = WHOLE_IN(1);
    want(&p, 17, WHOLE_IN(5), WHOLE_IN(5));
    make_plan(&p);
    blanks_from(0, rows, 17, 17);
    for (int i = 0; i < 17; i++) {
        ck_blank(&rows[i], IN(0, 1, 2) + WHOLE_IN(i % 8 * 5), WHOLE_IN(i / 8 * 5), WHOLE_IN(5), WHOLE_IN(5));
        ck_assert_int_eq(rows[i].sheet, 0);
        ck_assert_int_eq(rows[i].stock, -1);
        ck_assert_int_eq(rows[i].layers, 1);
    }
    blanks_from(9, rows, 2, 8);
    ck_blank(&rows[1], IN(10, 1, 2), WHOLE_IN(5), WHOLE_IN(5), WHOLE_IN(5));
    blanks_from(17, rows, 2, 0);
    muslin_cutplan_free(p.plan);
    p.spec.end_loss = 0;
    make_plan(&p);
    blanks_from(0, rows, 3, 17);
    ck_assert_int_eq(rows[2].x, WHOLE_IN(10)); /* Example: the third square of 5 in of a strip: x = 10 in. */
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Two borders of 60 in take 8 in of the width of one panel, six squares of 10 in stand beside them two by two in three
 * of its rows, or three by three: 30 in of 32 in. Twelve take four rows. */
START_TEST(pieces_beside_a_slit_border_lie_in_its_panel)
{
    struct muslin_cutplan_blank rows[20];
    start(&p, WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(4), WHOLE_IN(60));
    want(&p, 18, WHOLE_IN(10), WHOLE_IN(10));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, WHOLE_IN(60));
    blanks_from(0, rows, 20, 20);
    for (int i = 0; i < 2; i++)
        ck_blank(&rows[i], WHOLE_IN(4 * i), 0, WHOLE_IN(4), WHOLE_IN(60));
    for (int i = 0; i < 18; i++)
        ck_blank(&rows[2 + i], WHOLE_IN(8 + i % 3 * 10), WHOLE_IN(i / 3 * 10), WHOLE_IN(10), WHOLE_IN(10));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Strips of 4 x 20 in go three by three along 20 x 12 in: the first cuts are along its length when it is listed as 12
 * wide. Turned counter-clockwise, the first strip is at the right edge. */
START_TEST(stock_lies_as_its_row_says)
{
    struct muslin_cutplan_blank rows[6];
    start(&p, 0);
    have(&p, 2, WHOLE_IN(12), WHOLE_IN(20));
    want(&p, 5, WHOLE_IN(4), WHOLE_IN(20))->flags = MUSLIN_BLANK_MAY_TURN;
    p.spec.straightening = 0;
    make_plan(&p);
    blanks_from(0, rows, 6, 5);
    for (int i = 0; i < 5; i++) {
        ck_assert_int_eq(rows[i].stock, 0);
        ck_assert_int_eq(rows[i].sheet, i / 3);
        ck_assert_int_eq(rows[i].y, 0);
        ck_assert_int_eq(rows[i].width, WHOLE_IN(4));
        ck_assert_int_eq(rows[i].height, WHOLE_IN(20));
        ck_assert_int_eq(rows[i].turned, 0);
    }
    muslin_cutplan_free(p.plan);
}
END_TEST

START_TEST(blanks_follow_the_rules_of_pages)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_cutplan_blank rows[2];
    size_t count = 9;
    start(&p, WHOLE_IN(40));
    want(&p, 3, WHOLE_IN(5), WHOLE_IN(5));
    make_plan(&p);
    ck_status(muslin_cutplan_blanks(NULL, 0, NULL, 0, 0, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_blanks(p.plan, 0, NULL, 0, 0, NULL, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_blanks(p.plan, 0, NULL, sizeof rows[0], 2, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_cutplan_blanks(p.plan, 0, rows, 8, 2, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_cutplan_blanks(p.plan, -1, NULL, 0, 0, &count, &problem), MUSLIN_ERR_RANGE);
    ck_status(muslin_cutplan_blanks(p.plan, 4, NULL, 0, 0, &count, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_INDEX);
    ck_assert_uint_eq(count, 9);
    blanks_from(1, rows, 0, 2);
    muslin_cutplan_free(p.plan);
    p.n = 0;
    make_plan(&p);
    blanks_from(0, rows, 2, 0);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* ---- what is left ----------------------------------------------------------------------------------------------- */

static void ck_left(const struct muslin_cutplan_left_over *left, int64_t count, muslin_len x, muslin_len y,
                    muslin_len width, muslin_len height)
{
    ck_assert_int_eq(left->count, count);
    ck_assert_int_eq(left->x, x);
    ck_assert_int_eq(left->y, y);
    ck_assert_int_eq(left->width, width);
    ck_assert_int_eq(left->height, height);
}

static size_t left_of(struct muslin_cutplan_left_over *rows, size_t capacity)
{
    size_t count = 0;
    ck_ok(muslin_cutplan_left_overs(p.plan, 0, rows, sizeof rows[0], capacity, &count, NULL));
    return count;
}

/* A panel of 68 in for borders of 68 and 60 in, 3 and 4 in wide: above the shorter ones of two rows 12 x 8 in. */
START_TEST(cloth_above_shorter_borders_is_left_over)
{
    struct muslin_cutplan_left_over left[3];
    start(&p, WHOLE_IN(40));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(4), WHOLE_IN(60));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 2, WHOLE_IN(3), WHOLE_IN(68));
    want_kind(&p, MUSLIN_BLANK_LENGTHWISE, 1, WHOLE_IN(4), WHOLE_IN(60));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, WHOLE_IN(68));
    ck_assert_uint_eq(left_of(left, 3), 2);
    ck_left(&left[0], 1, WHOLE_IN(18), 0, WHOLE_IN(22), WHOLE_IN(68));
    ck_left(&left[1], 1, WHOLE_IN(6), WHOLE_IN(60), WHOLE_IN(12), WHOLE_IN(8));
    ck_assert_int_eq(left[0].strip, 0);
    ck_assert_int_eq(left[1].strip, 1);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* 110 in of 2 1/2 in in all, joined with nothing lost: two whole strips of 40 in, and 30 in round the fold, which leave
 * 10 in at the selvage of one layer. */
START_TEST(the_rest_beside_a_short_strip_round_the_fold_is_left_over)
{
    struct muslin_cutplan_left_over left[2];
    start(&p, WHOLE_IN(40));
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    want_kind(&p, MUSLIN_BLANK_JOINED, 1, WHOLE_IN(110), IN(2, 1, 2));
    make_plan(&p);
    ck_assert_int_eq(p.totals.cost, IN(7, 1, 2));
    ck_assert_uint_eq(left_of(left, 2), 1);
    ck_left(&left[0], 1, 0, 0, WHOLE_IN(10), IN(2, 1, 2));
    muslin_cutplan_free(p.plan);
}
END_TEST

/* ---- two layers ------------------------------------------------------------------------------------------------- */

static void ck_made(size_t row, int64_t made, int64_t cut)
{
    ck_assert_int_eq(p.made[row].made, made);
    ck_assert_int_eq(p.made[row].cut, cut);
}

START_TEST(rows_of_one_size_share_blanks_of_two_layers)
{
    start(&p, WHOLE_IN(40));
    p.spec.flags = MUSLIN_CUTPLAN_FOLDED;
    want(&p, 1, WHOLE_IN(5), WHOLE_IN(5));
    want(&p, 3, WHOLE_IN(5), WHOLE_IN(5));
    make_plan(&p); /* two blanks, four pieces */
    ck_assert_int_eq(p.totals.pieces, 4);
    ck_made(0, 1, 1);
    ck_made(1, 3, 3);
    muslin_cutplan_free(p.plan);
    p.pieces[1].count = 1;
    want(&p, 1, WHOLE_IN(5), WHOLE_IN(5));
    make_plan(&p); /* two blanks for three pieces: one too many */
    ck_assert_int_eq(p.totals.pieces, 4);
    ck_made(0, 1, 1);
    ck_made(1, 1, 1);
    ck_made(2, 1, 2);
    muslin_cutplan_free(p.plan);
    p.spec.spare_pieces = 2;
    make_plan(&p); /* three blanks for five */
    ck_made(2, 1, 4);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* ---- by priority, and what ends a search ------------------------------------------------------------------------ */

/* Of 20 x 20 in: nine squares of 6 in take 18 x 18 and the tenth does not fit; beside and above them there is room for
 * strips of 2 in: no square of 4 in, but three of 2 x 20 in in all, of which one may turn. */
START_TEST(rows_behind_one_that_does_not_fit_get_what_it_leaves)
{
    start(&p, 0);
    have(&p, 1, WHOLE_IN(20), WHOLE_IN(20));
    p.spec.flags = MUSLIN_CUTPLAN_BY_PRIORITY;
    want(&p, 10, WHOLE_IN(6), WHOLE_IN(6));
    want(&p, 5, WHOLE_IN(4), WHOLE_IN(4))->priority = 1;
    want(&p, 12, WHOLE_IN(2), WHOLE_IN(2))->priority = 2;
    make_plan(&p);
    ck_made(0, 9, 9);
    ck_made(1, 0, 0);
    ck_made(2, 12, 12);
    muslin_cutplan_free(p.plan);
    p.pieces[2].count = 30; /* 19 squares of 2 in: ten above, and one at the end of each strip of three high */
    make_plan(&p);
    ck_made(0, 9, 9);
    ck_made(1, 0, 0);
    ck_assert_int_ge(p.made[2].made, 13);
    ck_assert_int_le(p.made[2].made, 19);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* Fifty rows that all fit not at all, and one that does: the looks end before it is reached. */
START_TEST(looks_at_rows_by_priority_end)
{
    start(&p, 0);
    have(&p, 1, WHOLE_IN(20), WHOLE_IN(20));
    p.spec.flags = MUSLIN_CUTPLAN_BY_PRIORITY;
    want(&p, 1, WHOLE_IN(20), WHOLE_IN(20));
    for (int64_t i = 0; i < 55; i++)
        want(&p, 100, WHOLE_IN(1) + i, WHOLE_IN(1))->priority = (int32_t)i + 1;
    make_plan(&p);
    ck_made(0, 1, 1);
    ck_assert_int_eq(p.totals.missing, 5500);
    muslin_cutplan_free(p.plan);
}
END_TEST

/* A square of 10 in holds one of 6 in and three of 4 in, or four of 4 in, so each takes a quarter of one. Not even in
 * parts are so many enough for one of 6 in each, and three times as many of 4 in and one more; three times as many come
 * out. */
START_TEST(stock_that_does_not_suffice_in_parts_is_told)
{
    for (int64_t squares = 14; squares < 40; squares += 5) {
        struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
        start(&p, 0);
        have(&p, squares, WHOLE_IN(10), WHOLE_IN(10));
        want(&p, squares, WHOLE_IN(6), WHOLE_IN(6));
        want(&p, 3 * squares + 1, WHOLE_IN(4), WHOLE_IN(4));
        ck_status(try_plan(&p, &problem), MUSLIN_ERR_NOT_ENOUGH);
        ck_assert(problem.at == 1 && problem.value == 3 * squares + 1 && problem.limit == 3 * squares);
        p.pieces[1].count = 3 * squares;
        make_plan(&p);
        ck_assert_int_eq(p.totals.stock_pieces, squares);
        muslin_cutplan_free(p.plan);
    }
}
END_TEST

static int32_t stopped_of(int64_t sizes, int64_t stocks, int32_t print)
{
    static struct muslin_blank_spec rows[200];
    static struct muslin_cutplan_stock_spec stock[200];
    struct muslin_allocator allocator;
    struct muslin_cutplan_spec spec = MUSLIN_CUTPLAN_SPEC_INIT;
    struct muslin_cutplan_total totals = { .size = (uint32_t)sizeof totals };
    struct muslin_cutplan *plan = NULL;
    ck_ok(muslin_allocator_libc(&allocator));
    spec.work_limit = 1000;
    spec.usable_width = stocks > 0 ? 0 : WHOLE_IN(40);
    spec.print = print;
    for (int64_t i = 0; i < sizes; i++) {
        const struct muslin_blank_spec row = { sizeof row, 1, 16256 + i, 24384 + i * i % 1024, 5, 0, 0, i, 1, 0, 0 };
        rows[i] = row;
    }
    for (int64_t i = 0; i < stocks; i++) {
        const struct muslin_cutplan_stock_spec row = { sizeof row, 0, 100000 + i, 90000, 2, 10 + i % 7, i };
        stock[i] = row;
    }
    ck_ok(muslin_cutplan_create(&spec, rows, sizeof rows[0], (size_t)sizes, stock, sizeof stock[0], (size_t)stocks,
                                &allocator, NULL, NULL, &plan, NULL));
    ck_ok(muslin_cutplan_totals(plan, &totals, NULL));
    ck_assert_int_eq(totals.proven, 0);
    muslin_cutplan_free(plan);
    return totals.stopped;
}

START_TEST(more_sizes_or_stock_than_are_searched_are_told)
{
    ck_assert_int_eq(stopped_of(128, 0, MUSLIN_PRINT_NONE), MUSLIN_CUTPLAN_STOPPED_WORK);
    ck_assert_int_eq(stopped_of(129, 0, MUSLIN_PRINT_NONE), MUSLIN_CUTPLAN_STOPPED_SIZES);
    ck_assert_int_eq(stopped_of(9, 200, MUSLIN_PRINT_NONE), MUSLIN_CUTPLAN_STOPPED_SIZES);
    ck_assert_int_eq(stopped_of(9, 200, MUSLIN_PRINT_ONE_WAY), MUSLIN_CUTPLAN_STOPPED_SIZES);
}
END_TEST

void add_long_cutplan_blanks(Suite *suite)
{
    TCase *blanks = tcase_create("many sizes");
    tcase_set_timeout(blanks, 60);
    tcase_add_test(blanks, more_sizes_or_stock_than_are_searched_are_told);
    suite_add_tcase(suite, blanks);
}

void add_cutplan_blanks(Suite *suite)
{
    TCase *blanks = tcase_create("blanks");
    tcase_set_timeout(blanks, 60);
    tcase_add_test(blanks, each_square_of_a_bolt_has_its_corner);
    tcase_add_test(blanks, pieces_beside_a_slit_border_lie_in_its_panel);
    tcase_add_test(blanks, stock_lies_as_its_row_says);
    tcase_add_test(blanks, blanks_follow_the_rules_of_pages);
    tcase_add_test(blanks, cloth_above_shorter_borders_is_left_over);
    tcase_add_test(blanks, the_rest_beside_a_short_strip_round_the_fold_is_left_over);
    tcase_add_test(blanks, rows_of_one_size_share_blanks_of_two_layers);
    tcase_add_test(blanks, rows_behind_one_that_does_not_fit_get_what_it_leaves);
    tcase_add_test(blanks, looks_at_rows_by_priority_end);
    tcase_add_test(blanks, stock_that_does_not_suffice_in_parts_is_told);
    suite_add_tcase(suite, blanks);
}
