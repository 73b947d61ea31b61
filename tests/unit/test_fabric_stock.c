/* test_fabric_stock.c - stock in hand: pinked edges, strips from it, fabrics that meet, prints that turn.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fabric.h"

static struct muslin_stock_spec stock_of(muslin_len width, muslin_len length, int64_t count)
{
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    stock.width = width;
    stock.length = length;
    stock.count = count;
    return stock;
}

static struct muslin_stock_spec pinked_of(muslin_len size, muslin_len depth, int32_t edge)
{
    struct muslin_stock_spec stock = stock_of(size, size, 1);
    stock.pink_depth = depth;
    stock.edge = edge;
    return stock;
}

/* ---- pinked edges ---------------------------------------------------------------------------------------------- */

static muslin_len aligned(struct muslin_stock_spec stock, int32_t align)
{
    muslin_len width = -1;
    muslin_len length = -1;
    ck_ok(muslin_stock_size(&stock, align, &width, &length, NULL));
    ck_assert_int_eq(width - length, stock.width - stock.length);
    return width;
}

START_TEST(a_strip_measured_at_its_tips_is_two_depths_narrower_at_its_valleys)
{
    /* geometry: 2 1/2 in, zigzag 1/16 in deep on both edges: 2 3/8 in */
    struct muslin_stock_spec strip = pinked_of(WHOLE_IN(42), IN(0, 1, 16), MUSLIN_EDGE_PINKED_TIPS);
    muslin_len length = 0;
    strip.length = IN(2, 1, 2);
    ck_ok(muslin_stock_size(&strip, MUSLIN_EDGE_PINKED_VALLEYS, NULL, &length, NULL));
    ck_assert_int_eq(length, IN(2, 3, 8));
    ck_assert_int_eq(aligned(strip, MUSLIN_EDGE_PINKED_VALLEYS), IN(41, 7, 8));
    ck_assert_int_eq(aligned(strip, MUSLIN_EDGE_PINKED_TIPS), WHOLE_IN(42));
}
END_TEST

START_TEST(a_square_measured_at_its_valleys_is_two_depths_wider_at_its_tips)
{
    struct muslin_stock_spec square = pinked_of(WHOLE_IN(5), IN(0, 1, 8), MUSLIN_EDGE_PINKED_VALLEYS);
    square.length = WHOLE_IN(10);
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_TIPS), IN(5, 1, 4));
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_VALLEYS), WHOLE_IN(5));
}
END_TEST

START_TEST(restating_a_size_at_the_other_point_and_back_changes_nothing)
{
    struct muslin_stock_spec square = pinked_of(WHOLE_IN(5), 321, MUSLIN_EDGE_PINKED_TIPS);
    struct muslin_stock_spec restated = square;
    restated.width = restated.length = aligned(square, MUSLIN_EDGE_PINKED_VALLEYS);
    restated.edge = MUSLIN_EDGE_PINKED_VALLEYS;
    ck_assert_int_eq(aligned(restated, MUSLIN_EDGE_PINKED_TIPS), WHOLE_IN(5));
}
END_TEST

START_TEST(a_straight_edge_changes_nothing)
{
    struct muslin_stock_spec square = stock_of(WHOLE_IN(5), WHOLE_IN(5), 1);
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_TIPS), WHOLE_IN(5));
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_VALLEYS), WHOLE_IN(5));
    ck_ok(muslin_stock_size(&square, MUSLIN_EDGE_PINKED_TIPS, NULL, NULL, NULL));
}
END_TEST

START_TEST(pinking_may_leave_a_tick_but_not_nothing)
{
    /* the shorter side decides, whichever it is */
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec square = pinked_of(101, 50, MUSLIN_EDGE_PINKED_TIPS);
    muslin_len width = 77;
    muslin_len length = 77;
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_VALLEYS), 1);
    square.width = 100;
    ck_status(muslin_stock_size(&square, MUSLIN_EDGE_PINKED_VALLEYS, &width, &length, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PINK_DEPTH);
    ck_assert_int_eq(problem.value, 50);
    ck_assert_int_eq(problem.limit, 49);
    square.width = 500;
    square.length = 99;
    ck_status(muslin_stock_size(&square, MUSLIN_EDGE_PINKED_VALLEYS, &width, &length, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 49);
    ck_assert_int_eq(width, 77);
    ck_assert_int_eq(length, 77);
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_TIPS), 500);
}
END_TEST

START_TEST(the_largest_pinking_fits)
{
    struct muslin_stock_spec square = pinked_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_EDGE_PINKED_VALLEYS);
    ck_assert_int_eq(aligned(square, MUSLIN_EDGE_PINKED_TIPS), 3 * MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(only_tips_or_valleys_can_be_lined_up)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec square = stock_of(100, 100, 1);
    muslin_len width = 77;
    const int32_t none[] = { MUSLIN_EDGE_STRAIGHT, 0, 4, -1, INT32_MAX };
    for (size_t i = 0; i < 5; i++) {
        ck_status(muslin_stock_size(&square, none[i], &width, NULL, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_EDGE);
        ck_assert_int_eq(problem.value, none[i]);
    }
    ck_assert_int_eq(width, 77);
}
END_TEST

/* ---- what a stock must say ------------------------------------------------------------------------------------- */

static void ck_stock_refused(struct muslin_stock_spec stock, muslin_status status, int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_yield out = { 0 };
    muslin_len width = 77;
    uint32_t warnings = 77;
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_stock_strips(&stock, 1, 1, &out, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(out.per_piece, 0);
    ck_status(muslin_stock_size(&stock, MUSLIN_EDGE_PINKED_TIPS, &width, NULL, NULL), status);
    ck_assert_int_eq(width, 77);
    ck_status(muslin_stock_check(&stock, sizeof stock, 1, &warnings, NULL), status);
    ck_assert_uint_eq(warnings, 77);
}

START_TEST(sizes_of_stock_outside_their_ranges_are_refused)
{
    const int64_t outside[] = { 0, -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < 5; i++) {
        ck_stock_refused(stock_of(outside[i], 100, 1), MUSLIN_ERR_RANGE, MUSLIN_ARG_USABLE_WIDTH);
        ck_stock_refused(stock_of(100, outside[i], 1), MUSLIN_ERR_RANGE, MUSLIN_ARG_CLOTH_LENGTH);
    }
    ck_stock_refused(stock_of(100, 100, -1), MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES);
    ck_stock_refused(stock_of(100, 100, MUSLIN_COUNT_MAX + 1), MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES);
    const int32_t pinked = MUSLIN_EDGE_PINKED_TIPS;
    ck_stock_refused(pinked_of(100, -1, pinked), MUSLIN_ERR_RANGE, MUSLIN_ARG_PINK_DEPTH);
    ck_stock_refused(pinked_of(100, MUSLIN_SIZE_MAX + 1, pinked), MUSLIN_ERR_RANGE, MUSLIN_ARG_PINK_DEPTH);
}
END_TEST

START_TEST(a_straight_edge_with_a_pinking_depth_contradicts_itself)
{
    ck_stock_refused(pinked_of(100, 1, MUSLIN_EDGE_STRAIGHT), MUSLIN_ERR_RANGE, MUSLIN_ARG_PINK_DEPTH);
}
END_TEST

START_TEST(choices_of_stock_outside_their_lists_are_refused)
{
    const int32_t argument[] = { MUSLIN_ARG_EDGE, MUSLIN_ARG_CARE_STATE, MUSLIN_ARG_PRINT_DIRECTION,
                                 MUSLIN_ARG_STOCK_KIND };
    const int32_t past_last[] = { 4, 3, 6, 6 };
    for (int member = 0; member < 4; member++) {
        struct muslin_stock_spec stock = stock_of(100, 100, 1);
        int32_t *members[] = { &stock.edge, &stock.care, &stock.print, &stock.kind };
        *members[member] = 0;
        ck_stock_refused(stock, MUSLIN_ERR_CHOICE, argument[member]);
        *members[member] = past_last[member];
        ck_stock_refused(stock, MUSLIN_ERR_CHOICE, argument[member]);
    }
}
END_TEST

/* ---- strips from stock ----------------------------------------------------------------------------------------- */

static struct muslin_stock_yield strips_of(struct muslin_stock_spec stock, muslin_len strip_cut, int64_t wanted)
{
    struct muslin_stock_yield out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_stock_strips(&stock, strip_cut, wanted, &out, NULL));
    return out;
}

START_TEST(eighty_half_width_strips_take_twelve_fat_quarters)
{
    /* Fat quarter conversion (public forum): 40 strips of full width, 18 in deep fat quarters: 7 each, 12 of them */
    struct muslin_stock_yield out = strips_of(stock_of(WHOLE_IN(20), WHOLE_IN(18), 9), IN(2, 1, 2), 80);
    ck_assert_int_eq(out.per_piece, 7);
    ck_assert_int_eq(out.in_hand, 63);
    ck_assert_int_eq(out.pieces_needed, 12);
    ck_assert_int_eq(out.pieces_missing, 3);
    ck_assert_int_eq(out.strip_length, WHOLE_IN(20));
    ck_assert_int_eq(out.left_over, IN(0, 1, 2));
    ck_assert_int_eq(out.warnings, 0);
}
END_TEST

START_TEST(strips_from_stock_are_exact_to_the_tick_and_the_piece)
{
    uint64_t state = 30;
    int right = 1;
    for (int i = 0; i < 5000; i++) {
        muslin_len cut = draw_from(&state, 1, 20);
        struct muslin_stock_spec stock = stock_of(WHOLE_IN(20), draw_from(&state, cut, 90), draw_from(&state, 0, 30));
        int64_t wanted = draw_from(&state, 0, 100);
        struct muslin_stock_yield out = strips_of(stock, cut, wanted);
        muslin_len shorter = stock.length - out.shorter_by;
        right = right && out.per_piece * cut <= shorter && (out.per_piece + 1) * cut > stock.length;
        right = right && out.per_piece * cut > shorter - 1 && out.left_over == out.shorter_by;
        right = right && out.warnings == (out.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0);
        right = right && out.pieces_needed * out.per_piece >= wanted;
        right = right && (out.pieces_needed == 0 || (out.pieces_needed - 1) * out.per_piece < wanted);
        int64_t missing = out.pieces_needed - stock.count;
        right = right && out.pieces_missing == (missing > 0 ? missing : 0);
        right = right && out.in_hand == stock.count * out.per_piece;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_piece_loses_a_strip_one_tick_beyond_its_slack)
{
    struct muslin_stock_spec stock = stock_of(WHOLE_IN(20), WHOLE_IN(18), 1);
    struct muslin_stock_yield out = strips_of(stock, IN(2, 1, 2), 1);
    stock.length = WHOLE_IN(18) - out.shorter_by;
    ck_assert_int_eq(strips_of(stock, IN(2, 1, 2), 1).per_piece, 7);
    ck_assert_int_eq(strips_of(stock, IN(2, 1, 2), 1).warnings, MUSLIN_WARN_NO_SLACK);
    stock.length--;
    ck_assert_int_eq(strips_of(stock, IN(2, 1, 2), 1).per_piece, 6);
}
END_TEST

START_TEST(a_piece_too_short_for_one_strip_has_no_yield)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec stock = stock_of(WHOLE_IN(20), IN(2, 1, 2) - 1, 5);
    struct muslin_stock_yield out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_stock_strips(&stock, IN(2, 1, 2), 1, &out, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.value, IN(2, 1, 2) - 1);
    ck_assert_int_eq(problem.limit, IN(2, 1, 2));
    ck_assert_int_eq(out.per_piece, 0);
    stock.length++;
    ck_assert_int_eq(strips_of(stock, IN(2, 1, 2), 1).per_piece, 1);
}
END_TEST

START_TEST(the_largest_stock_gives_strips_of_a_tick)
{
    struct muslin_stock_spec stock = stock_of(1, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX);
    struct muslin_stock_yield out = strips_of(stock, 1, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(out.in_hand, MUSLIN_SIZE_MAX * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(out.pieces_needed, 2);
    ck_assert_int_eq(strips_of(stock, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX).pieces_needed, MUSLIN_COUNT_MAX);
}
END_TEST

START_TEST(a_wish_for_strips_out_of_range_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec stock = stock_of(100, 100, 1);
    struct muslin_stock_yield out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_stock_strips(&stock, 0, 1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIP_CUT);
    ck_status(muslin_stock_strips(&stock, MUSLIN_SIZE_MAX + 1, 1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_stock_strips(&stock, 1, -1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIPS);
    ck_status(muslin_stock_strips(&stock, 1, MUSLIN_COUNT_MAX + 1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.per_piece, 0);
}
END_TEST

/* ---- fabrics that meet ----------------------------------------------------------------------------------------- */

static uint32_t warnings_of(const struct muslin_stock_spec *rows, size_t n)
{
    uint32_t warnings = 77;
    ck_ok(muslin_stock_check(rows, sizeof *rows, n, &warnings, NULL));
    return warnings;
}

START_TEST(fabrics_alike_deserve_no_word)
{
    struct muslin_stock_spec rows[] = { stock_of(100, 100, 1), stock_of(200, 50, 3), stock_of(100, 100, 0) };
    ck_assert_uint_eq(warnings_of(rows, 3), 0);
    for (size_t i = 0; i < 3; i++) {
        rows[i].care = MUSLIN_CARE_WASHED;
        rows[i].kind = MUSLIN_STOCK_YARDAGE;
    }
    ck_assert_uint_eq(warnings_of(rows, 3), 0);
}
END_TEST

START_TEST(washed_and_unwashed_fabric_is_noticed_in_any_order)
{
    for (size_t odd = 0; odd < 3; odd++) {
        struct muslin_stock_spec rows[] = { stock_of(100, 100, 1), stock_of(100, 100, 1), stock_of(100, 100, 1) };
        for (size_t i = 0; i < 3; i++)
            rows[i].kind = MUSLIN_STOCK_YARDAGE;
        rows[odd].care = MUSLIN_CARE_WASHED;
        ck_assert_uint_eq(warnings_of(rows, 3), MUSLIN_WARN_MIXED_WASH);
    }
}
END_TEST

START_TEST(only_small_precuts_must_stay_unwashed)
{
    const int32_t kinds[] = { MUSLIN_STOCK_YARDAGE, MUSLIN_STOCK_STRIP, MUSLIN_STOCK_SQUARE, MUSLIN_STOCK_FAT_QUARTER,
                              MUSLIN_STOCK_FAT_EIGHTH };
    const uint32_t said[] = { 0, MUSLIN_WARN_PRECUT_WASHED, MUSLIN_WARN_PRECUT_WASHED, 0, 0 };
    for (size_t i = 0; i < 5; i++) {
        struct muslin_stock_spec row = stock_of(100, 100, 1);
        row.kind = kinds[i];
        row.care = MUSLIN_CARE_WASHED;
        ck_assert_uint_eq(warnings_of(&row, 1), said[i]);
    }
}
END_TEST

START_TEST(edges_that_differ_are_noticed)
{
    struct muslin_stock_spec rows[] = { pinked_of(100, 5, MUSLIN_EDGE_PINKED_TIPS), stock_of(100, 100, 1) };
    ck_assert_uint_eq(warnings_of(rows, 1), 0);
    ck_assert_uint_eq(warnings_of(rows, 2), MUSLIN_WARN_MIXED_EDGES);
    rows[1] = pinked_of(100, 5, MUSLIN_EDGE_PINKED_VALLEYS);
    ck_assert_uint_eq(warnings_of(rows, 2), MUSLIN_WARN_MIXED_EDGES);
    rows[1].care = MUSLIN_CARE_WASHED;
    ck_assert_uint_eq(warnings_of(rows, 2),
                      MUSLIN_WARN_MIXED_EDGES | MUSLIN_WARN_MIXED_WASH | MUSLIN_WARN_PRECUT_WASHED);
}
END_TEST

START_TEST(no_fabric_says_nothing)
{
    uint32_t warnings = 77;
    ck_ok(muslin_stock_check(NULL, 0, 0, &warnings, NULL));
    ck_assert_uint_eq(warnings, 0);
}
END_TEST

START_TEST(the_first_bad_row_fails_the_check_and_is_named)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec rows[] = { stock_of(100, 100, 1), stock_of(100, 100, 1), stock_of(100, 100, 1) };
    uint32_t warnings = 77;
    rows[0].care = MUSLIN_CARE_WASHED;
    rows[1].width = 0;
    rows[2].edge = 9;
    ck_status(muslin_stock_check(rows, sizeof rows[0], 3, &warnings, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_uint_eq(warnings, 77);
}
END_TEST

/* Rows of a newer, longer kind: the library walks at the caller's stride and reads each row's own size. */
START_TEST(rows_are_read_at_the_callers_stride)
{
    struct longer {
        struct muslin_stock_spec row;
        int64_t later;
    } rows[2] = { { stock_of(100, 100, 1), 0 }, { stock_of(100, 100, 1), 0 } };
    uint32_t warnings = 77;
    rows[1].row.care = MUSLIN_CARE_WASHED;
    rows[1].row.kind = MUSLIN_STOCK_YARDAGE;
    rows[0].row.size = (uint32_t)sizeof rows[0];
    ck_ok(muslin_stock_check(&rows[0].row, sizeof rows[0], 2, &warnings, NULL));
    ck_assert_uint_eq(warnings, MUSLIN_WARN_MIXED_WASH);
    struct muslin_problem problem = PROBLEM;
    rows[0].later = 1;
    ck_status(muslin_stock_check(&rows[0].row, sizeof rows[0], 2, &warnings, &problem), MUSLIN_ERR_STRUCT_TAIL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    /* the same byte behind a row that says it is short is none of the library's business */
    rows[0].row.size = (uint32_t)sizeof rows[0].row;
    ck_ok(muslin_stock_check(&rows[0].row, sizeof rows[0], 2, &warnings, NULL));
}
END_TEST

START_TEST(a_row_larger_than_its_stride_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec rows[] = { stock_of(100, 100, 1), stock_of(100, 100, 1) };
    uint32_t warnings = 77;
    rows[1].size = (uint32_t)sizeof rows[1] + 8;
    ck_status(muslin_stock_check(rows, sizeof rows[0], 2, &warnings, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_assert_int_eq(problem.at, 1);
    rows[1].size = 8;
    ck_status(muslin_stock_check(rows, sizeof rows[0], 2, &warnings, NULL), MUSLIN_ERR_STRUCT_SIZE);
    rows[1] = rows[0];
    rows[1].flags = 1;
    ck_status(muslin_stock_check(rows, sizeof rows[0], 2, &warnings, NULL), MUSLIN_ERR_FLAGS);
    ck_assert_uint_eq(warnings, 77);
}
END_TEST

START_TEST(a_stride_that_is_no_row_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec row = stock_of(100, 100, 1);
    uint32_t warnings = 77;
    const size_t strides[] = { 0, sizeof row - 1, 4097, SIZE_MAX };
    for (size_t i = 0; i < 4; i++) {
        ck_status(muslin_stock_check(&row, strides[i], 1, &warnings, &problem), MUSLIN_ERR_STRUCT_SIZE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
        ck_assert_int_eq(problem.limit, i < 2 ? (int64_t)sizeof row : 4096);
        ck_assert_int_eq(problem.value, i < 2 ? (int64_t)strides[i] : 4097);
    }
    ck_assert_uint_eq(warnings, 77);
    ck_ok(muslin_stock_check(&row, 4096, 1, &warnings, NULL));
}
END_TEST

START_TEST(a_check_without_rows_or_output_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stock_spec row = stock_of(100, 100, 1);
    uint32_t warnings = 77;
    ck_status(muslin_stock_check(NULL, sizeof row, 1, &warnings, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_stock_check(&row, sizeof row, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_uint_eq(warnings, 77);
}
END_TEST

/* ---- prints ---------------------------------------------------------------------------------------------------- */

/* Four marks round a square, clockwise from the top, that look as the print does: stripes have equal opposite sides,
 * a one-way print one side like no other. */
static int looks_the_same(const char *marks, int32_t quarter_turns)
{
    for (int32_t i = 0; i < 4; i++)
        if (marks[(i + quarter_turns) % 4] != marks[i])
            return 0;
    return 1;
}

START_TEST(a_print_may_turn_when_it_looks_the_same_afterwards)
{
    const char *const marks[] = { "....", "|-|-", "A-v-", "|.|.", ".-.-" };
    for (int32_t print = MUSLIN_PRINT_NONE; print <= MUSLIN_PRINT_STRIPE_ACROSS; print++)
        for (int32_t turns = 0; turns <= 3; turns++) {
            int32_t allowed = 77;
            ck_ok(muslin_print_may_turn(print, turns, &allowed, NULL));
            ck_assert_int_eq(allowed, looks_the_same(marks[print - 1], turns));
        }
}
END_TEST

START_TEST(a_turn_or_print_outside_the_lists_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    int32_t allowed = 77;
    ck_status(muslin_print_may_turn(0, 0, &allowed, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PRINT_DIRECTION);
    ck_status(muslin_print_may_turn(6, 0, &allowed, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_print_may_turn(1, -1, &allowed, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TURNING);
    ck_status(muslin_print_may_turn(1, 4, &allowed, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_print_may_turn(1, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(allowed, 77);
}
END_TEST

/* ---- struct rules ---------------------------------------------------------------------------------------------- */

static muslin_status call_strips_of(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stock_strips(spec, 20320, 5, out, problem);
}

static muslin_status call_size(const void *spec, void *out, struct muslin_problem *problem)
{
    muslin_len width = 77;
    (void)out;
    muslin_status status = muslin_stock_size(spec, MUSLIN_EDGE_PINKED_TIPS, &width, NULL, problem);
    ck_assert(status == MUSLIN_OK || width == 77);
    return status;
}

START_TEST(every_struct_of_stock_keeps_the_rules)
{
    struct muslin_stock_spec stock = stock_of(WHOLE_IN(20), WHOLE_IN(18), 9);
    const struct ruled strips = RULED(call_strips_of, stock, muslin_stock_yield);
    const struct ruled size = RULED(call_size, stock, muslin_stock_yield);
    ck_struct_rules(&strips);
    ck_spec_rules(&size);
    ck_no_flag_known(&strips);
}
END_TEST

INIT_CALL(stock)

START_TEST(the_initial_stock_is_one_plain_strip)
{
    const struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    ck_init_rules(init_stock, &stock, (uint32_t)sizeof stock);
    ck_assert_int_eq(stock.width, WHOLE_IN(40));
    ck_assert_int_eq(stock.length, IN(2, 1, 2));
    ck_assert_int_eq(stock.kind, MUSLIN_STOCK_STRIP);
}
END_TEST

TCase *tcase_stock(void)
{
    TCase *stock = tcase_create("stock");
    tcase_add_test(stock, a_strip_measured_at_its_tips_is_two_depths_narrower_at_its_valleys);
    tcase_add_test(stock, a_square_measured_at_its_valleys_is_two_depths_wider_at_its_tips);
    tcase_add_test(stock, restating_a_size_at_the_other_point_and_back_changes_nothing);
    tcase_add_test(stock, a_straight_edge_changes_nothing);
    tcase_add_test(stock, pinking_may_leave_a_tick_but_not_nothing);
    tcase_add_test(stock, the_largest_pinking_fits);
    tcase_add_test(stock, only_tips_or_valleys_can_be_lined_up);
    tcase_add_test(stock, sizes_of_stock_outside_their_ranges_are_refused);
    tcase_add_test(stock, a_straight_edge_with_a_pinking_depth_contradicts_itself);
    tcase_add_test(stock, choices_of_stock_outside_their_lists_are_refused);
    tcase_add_test(stock, eighty_half_width_strips_take_twelve_fat_quarters);
    tcase_add_test(stock, strips_from_stock_are_exact_to_the_tick_and_the_piece);
    tcase_add_test(stock, a_piece_loses_a_strip_one_tick_beyond_its_slack);
    tcase_add_test(stock, a_piece_too_short_for_one_strip_has_no_yield);
    tcase_add_test(stock, the_largest_stock_gives_strips_of_a_tick);
    tcase_add_test(stock, a_wish_for_strips_out_of_range_is_refused);
    tcase_add_test(stock, fabrics_alike_deserve_no_word);
    tcase_add_test(stock, washed_and_unwashed_fabric_is_noticed_in_any_order);
    tcase_add_test(stock, only_small_precuts_must_stay_unwashed);
    tcase_add_test(stock, edges_that_differ_are_noticed);
    tcase_add_test(stock, no_fabric_says_nothing);
    tcase_add_test(stock, the_first_bad_row_fails_the_check_and_is_named);
    tcase_add_test(stock, rows_are_read_at_the_callers_stride);
    tcase_add_test(stock, a_row_larger_than_its_stride_is_refused);
    tcase_add_test(stock, a_stride_that_is_no_row_is_refused);
    tcase_add_test(stock, a_check_without_rows_or_output_is_refused);
    tcase_add_test(stock, a_print_may_turn_when_it_looks_the_same_afterwards);
    tcase_add_test(stock, a_turn_or_print_outside_the_lists_is_refused);
    tcase_add_test(stock, every_struct_of_stock_keeps_the_rules);
    tcase_add_test(stock, the_initial_stock_is_one_plain_strip);
    return stock;
}
