/* test_cutlist.c - a list of pieces from yardage: published figures and sums that anyone can check.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutlist.h"
#include "test_cutplan.h"

/* ---- the rules of a list ---------------------------------------------------------------------------------------- */

static void ck_row_refused(list_call *call, const struct muslin_cutlist_piece_spec *rows, muslin_status status,
                           int32_t argument, int64_t value)
{
    struct muslin_problem problem = PROBLEM;
    ck_status(call(rows, sizeof rows[0], 3, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, 2);
    ck_assert_int_eq(problem.value, value);
    ck_status(call(rows + 2, sizeof rows[0], 1, &problem), status); /* as the first one */
    ck_assert_int_eq(problem.at, 0);
}

/* The third row set to values that a row may not have. */
static void ck_row_values(list_call *call)
{
    const int64_t sizes[] = { 0, -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    const int64_t counts[] = { -1, MUSLIN_COUNT_MAX + 1, INT64_MIN, INT64_MAX };
    const struct muslin_cutlist_piece_spec good = CUTS(WHOLE_IN(2), WHOLE_IN(2), 3);
    struct muslin_cutlist_piece_spec rows[] = { good, good, good };
    for (size_t i = 0; i < COUNT_OF(sizes); i++) {
        rows[2].cut_width = sizes[i];
        ck_row_refused(call, rows, MUSLIN_ERR_RANGE, MUSLIN_ARG_CUT, sizes[i]);
        rows[2] = good;
        rows[2].cut_length = sizes[i];
        ck_row_refused(call, rows, MUSLIN_ERR_RANGE, MUSLIN_ARG_CUT, sizes[i]);
        rows[2] = good;
    }
    for (size_t i = 0; i < COUNT_OF(counts); i++) {
        rows[2].count = counts[i];
        ck_row_refused(call, rows, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, counts[i]);
    }
    rows[2] = good;
    rows[2].flags = 2;
    ck_row_refused(call, rows, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 2);
    rows[2] = good;
    rows[2].size = 0;
    ck_row_refused(call, rows, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, 0);
    rows[2].size = sizeof good + 8;
    ck_row_refused(call, rows, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROWS, sizeof good + 8);
}

/* Rows of a newer library, longer ones, with nothing in their tails; then something in one. */
static void ck_longer_rows(list_call *call)
{
    struct longer {
        struct muslin_cutlist_piece_spec cut;
        int64_t tail;
    } rows[3] = { { CUTS(WHOLE_IN(2), WHOLE_IN(2), 3), 0 }, { CUTS(WHOLE_IN(3), WHOLE_IN(2), 3), 0 },
                  { CUTS(WHOLE_IN(2), WHOLE_IN(3), 3), 0 } };
    struct muslin_problem problem = PROBLEM;
    for (int i = 0; i < 3; i++)
        rows[i].cut.size = sizeof rows[i];
    ck_ok(call(&rows[0].cut, sizeof rows[0], 3, NULL));
    rows[1].tail = 1;
    ck_status(call(&rows[0].cut, sizeof rows[0], 3, &problem), MUSLIN_ERR_STRUCT_TAIL);
    ck_assert_int_eq(problem.at, 1);
}

void ck_list_rules(list_call *call)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(2), WHOLE_IN(2), 3) };
    struct muslin_problem problem = PROBLEM;
    ck_status(call(NULL, sizeof rows[0], 1, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(call(rows, sizeof rows[0] - 1, 1, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_status(call(rows, 4097, 1, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(call(rows, sizeof rows[0], MUSLIN_CUTLIST_ROWS_MAX + 1, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_assert_int_eq(problem.limit, MUSLIN_CUTLIST_ROWS_MAX);
    ck_assert_int_eq(problem.value, MUSLIN_CUTLIST_ROWS_MAX + 1);
    ck_row_values(call);
    ck_longer_rows(call);
}

/* ---- from yardage ----------------------------------------------------------------------------------------------- */

static struct muslin_cutlist_spec cloth_of(muslin_len usable_width)
{
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    spec.usable_width = usable_width;
    return spec;
}

static struct muslin_cutlist_yardage worked(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                            const struct muslin_cutlist_spec *spec)
{
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all };
    ck_ok(muslin_cutlist_from_yardage(rows, row_size, n, spec, &all, NULL));
    return all;
}

static struct muslin_cutlist_row row_at(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                        const struct muslin_cutlist_spec *spec, size_t index)
{
    struct muslin_cutlist_row found[8];
    size_t count = 0;
    ck_ok(muslin_cutlist_yardage_rows(rows, row_size, n, spec, found, sizeof found[0], COUNT_OF(found), &count, NULL));
    ck_assert_uint_eq(count, n);
    return found[index];
}

static const struct muslin_cutlist_piece_spec squares[] = { CUTS(WHOLE_IN(4), WHOLE_IN(4), 52),
                                                  CUTS(WHOLE_IN(3), WHOLE_IN(3), 20) };

/* "52 4-inch and 20 3-inch squares" (public forum): 11 and 14 a strip, 5 strips and 2, 26 in; the narrowest width and
 * the area are sums: 5 strips must hold 11 each, 44 in; 4 strips would hold 13 each, 52 in; 52 x 16 + 20 x 9 = 1012 sq
 * in, over 44 in 23 in; a strip less is 4 in less.
 * Example: 52 squares of 4 in and 20 of 3 in at 44 in usable: 5 strips and 2, 26 in; 8 in wider saves 4 in. */
START_TEST(two_sizes_of_squares_take_twenty_six_inches)
{
    struct muslin_cutlist_spec spec = cloth_of(WHOLE_IN(44));
    struct muslin_cutlist_yardage all = worked(ROWS(squares), &spec);
    ck_assert_int_eq(all.pieces, 72);
    ck_assert_int_eq(all.strips, 7);
    ck_assert_int_eq(all.spare_pieces, 5 * 11 - 52 + 2 * 14 - 20);
    ck_assert_int_eq(all.cloth_length, WHOLE_IN(26));
    ck_assert_int_eq(all.area_bound, WHOLE_IN(23));
    ck_assert_int_eq(all.narrowest_width, WHOLE_IN(44));
    ck_assert_int_eq(all.narrower_by, 0);
    ck_assert_int_eq(all.narrowest_as_cut, WHOLE_IN(44));
    ck_assert_int_eq(all.wider_for_less, WHOLE_IN(8));
    ck_assert_int_eq(all.wider_saves, WHOLE_IN(4));
    ck_assert_uint_eq(all.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(all.turned, 0);
    struct muslin_cutlist_row row = row_at(ROWS(squares), &spec, 0);
    ck_assert_uint_eq(row.size, sizeof row);
    ck_assert_int_eq(row.pieces, 52);
    ck_assert_int_eq(row.strips, 5);
    ck_assert_int_eq(row.per_strip, 11);
    ck_assert_int_eq(row.spare_pieces, 3);
    ck_assert_int_eq(row.strip_cut, WHOLE_IN(4));
    ck_assert_int_eq(row.piece_cut, WHOLE_IN(4));
    ck_assert_int_eq(row.strips_length, WHOLE_IN(20));
    ck_assert_int_eq(row.first_stock, 0);
    ck_assert_int_eq(row.last_stock, 0);
    ck_assert_int_eq(row.turned, 0);
    ck_assert_int_eq(row.trimmed, 0);
    ck_assert_int_eq(row_at(ROWS(squares), &spec, 1).per_strip, 14);
    ck_assert_int_eq(row_at(ROWS(squares), &spec, 1).strips, 2);
}
END_TEST

/* The same source by arithmetic at 40 in: 10 and 13 a strip, 6 strips and 2, 30 in. Six strips need hold only 9 each,
 * 36 in, though a strip then gives one piece less; five would hold 11 each, 44 in. 1012 / 40 = 25.3 in, up to a tick.
 * */
START_TEST(the_narrowest_width_is_that_of_the_answer_not_of_the_yield)
{
    struct muslin_cutlist_spec spec = cloth_of(WHOLE_IN(40));
    struct muslin_cutlist_yardage all = worked(ROWS(squares), &spec);
    ck_assert_int_eq(all.cloth_length, WHOLE_IN(30));
    ck_assert_int_eq(all.narrowest_width, WHOLE_IN(36));
    ck_assert_int_eq(all.narrower_by, WHOLE_IN(4));
    ck_assert_int_eq(all.narrowest_as_cut, WHOLE_IN(36));
    ck_assert_int_eq(all.wider_for_less, WHOLE_IN(4));
    ck_assert_int_eq(all.wider_saves, WHOLE_IN(4));
    ck_assert_int_eq(all.area_bound, (1012 * WHOLE_IN(1) + 39) / 40);
    ck_assert_uint_eq(all.warnings, 0);
    spec.usable_width = WHOLE_IN(36);
    ck_assert_int_eq(worked(ROWS(squares), &spec).cloth_length, WHOLE_IN(30));
    spec.usable_width = WHOLE_IN(36) - 1;
    ck_assert_int_eq(worked(ROWS(squares), &spec).cloth_length, WHOLE_IN(34));
}
END_TEST

/* "Quilt from a simple block" (W. Kollinger): 12 of 5 x 9 1/2 and 4 of 5 x 18 1/2 in, piece by piece at 40 in: 3 strips
 * and 2 of 5 in. */
START_TEST(long_pieces_take_three_strips_and_two)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(IN(9, 1, 2), WHOLE_IN(5), 12),
                                                      CUTS(IN(18, 1, 2), WHOLE_IN(5), 4) };
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    ck_assert_int_eq(worked(ROWS(rows), &spec).strips, 5);
    ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, WHOLE_IN(25));
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 0).per_strip, 4);
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 1).per_strip, 2);
}
END_TEST

/* "Start quilting, lesson two" (M. Hohn): 42 / 7 3/4 = 5.42, 112 / 5 = 22.4.
 * Example: 112 pieces of 7 3/4 x 3 7/8 in at 42 in usable: 5 a strip, 23 strips. */
START_TEST(a_hundred_and_twelve_units_take_twenty_three_strips)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(IN(7, 3, 4), IN(3, 7, 8), 112) };
    const struct muslin_cutlist_spec spec = cloth_of(WHOLE_IN(42));
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 0).per_strip, 5);
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 0).strips, 23);
}
END_TEST

/* 24 of 8 1/2 x 4 1/2 in at 40 in: as listed 4 a strip, 6 strips of 4 1/2, 27 in; turned 8 a strip, 3 of 8 1/2, 25 1/2
 * in. Turned, 3 strips must hold 8 each: 36 in. Listed, 5 strips of 5 each, 42 1/2 in wide, are only 22 1/2 in. */
START_TEST(pieces_are_turned_when_that_takes_less)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(IN(8, 1, 2), IN(4, 1, 2), 24) };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_yardage all = worked(ROWS(rows), &spec);
    struct muslin_cutlist_row row = row_at(ROWS(rows), &spec, 0);
    ck_assert_int_eq(all.cloth_length, IN(25, 1, 2));
    ck_assert_int_eq(all.narrowest_width, WHOLE_IN(36));
    ck_assert_int_eq(all.narrowest_as_cut, WHOLE_IN(36));
    ck_assert_int_eq(all.wider_for_less, IN(2, 1, 2));
    ck_assert_int_eq(all.wider_saves, WHOLE_IN(3));
    ck_assert_int_eq(all.turned, 1);
    ck_assert_int_eq(row.turned, 1);
    struct muslin_cutlist_spec wider = cloth_of(IN(42, 1, 2));
    row = row_at(ROWS(rows), &wider, 0);
    ck_assert_int_eq(row.turned, 0);
    ck_assert_int_eq(row.strips, 5);
    ck_assert_int_eq(row.strips_length, IN(22, 1, 2));
    row = row_at(ROWS(rows), &spec, 0);
    ck_assert_int_eq(row.strip_cut, IN(8, 1, 2));
    ck_assert_int_eq(row.piece_cut, IN(4, 1, 2));
    ck_assert_int_eq(row.strips, 3);
    for (spec.print = MUSLIN_PRINT_TWO_WAY; spec.print <= MUSLIN_PRINT_STRIPE_ACROSS; spec.print++) {
        ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, WHOLE_IN(27));
        ck_assert_int_eq(row_at(ROWS(rows), &spec, 0).turned, 0);
    }
    spec.print = MUSLIN_PRINT_NONE;
    rows[0].flags = 0;
    ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, WHOLE_IN(27));
}
END_TEST

/* Squares and pieces that take the same both ways stay as listed; 45 in fit across 40 in only along the cloth, and the
 * other way round. */
START_TEST(a_tie_is_not_turned_and_what_fits_one_way_only_lies_so)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(WHOLE_IN(5), WHOLE_IN(5), 8),
                                            CUTS_TURN(WHOLE_IN(45), WHOLE_IN(3), 2),
                                            CUTS_TURN(WHOLE_IN(3), WHOLE_IN(45), 2),
                                            CUTS_TURN(WHOLE_IN(20), WHOLE_IN(10), 2) };
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 0).turned, 0);
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 1).turned, 1);
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 2).turned, 0);
    ck_assert_int_eq(row_at(ROWS(rows), &spec, 3).turned, 0);
    ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, WHOLE_IN(5 + 45 + 45 + 10));
}
END_TEST

/* 10 of 6 x 4 in at 24 in: as listed 3 strips of 4 in, which must hold 4 each, 24 in; turned 2 strips of 6 in, also 12
 * in of cloth, which must hold 5 each, 20 in. The answer holds down to 20 in, the cutting to 24. */
START_TEST(the_cutting_may_hold_less_far_down_than_the_answer)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(WHOLE_IN(6), WHOLE_IN(4), 10) };
    const struct muslin_cutlist_spec spec = cloth_of(WHOLE_IN(24));
    struct muslin_cutlist_yardage all = worked(ROWS(rows), &spec);
    ck_assert_int_eq(all.cloth_length, WHOLE_IN(12));
    ck_assert_int_eq(all.turned, 0);
    ck_assert_int_eq(all.narrowest_width, WHOLE_IN(20));
    ck_assert_int_eq(all.narrowest_as_cut, WHOLE_IN(24));
}
END_TEST

/* (40 - 1) / 6 1/2 = 6: two strips for 12, and 1/2 in off the cloth; without the end loss as many. 6 x 6 1/2 + 1 = 40
 * in stand on the edge. One strip of 12 would be 79 in long. */
START_TEST(losses_come_off_each_strip_and_once_off_the_cloth)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(IN(6, 1, 2), WHOLE_IN(4), 12) };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    spec.end_loss = WHOLE_IN(1);
    spec.straightening = IN(0, 1, 2);
    struct muslin_cutlist_yardage all = worked(ROWS(rows), &spec);
    ck_assert_int_eq(all.cloth_length, IN(8, 1, 2));
    ck_assert_int_eq(all.narrowest_width, WHOLE_IN(40));
    ck_assert_uint_eq(all.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(all.narrowest_as_cut, WHOLE_IN(40));
    ck_assert_int_eq(all.wider_for_less, WHOLE_IN(39));
    ck_assert_int_eq(all.wider_saves, WHOLE_IN(4));
}
END_TEST

START_TEST(one_strip_cannot_become_less)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(4), WHOLE_IN(4), 3) };
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    ck_assert_int_eq(worked(ROWS(rows), &spec).wider_for_less, 0);
    ck_assert_int_eq(worked(ROWS(rows), &spec).wider_saves, 0);
    ck_assert_int_eq(worked(ROWS(rows), &spec).narrowest_width, WHOLE_IN(12));
}
END_TEST

/* An empty list, and rows that ask for nothing, however large. */
START_TEST(nothing_wanted_takes_only_the_straightening)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(50), WHOLE_IN(4), 0),
                                                      CUTS_TURN(WHOLE_IN(60), 1, 0) };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    spec.straightening = IN(0, 1, 2);
    for (size_t n = 0; n <= 2; n++) {
        struct muslin_cutlist_yardage all = worked(n == 0 ? NULL : rows, sizeof rows[0], n, &spec);
        ck_assert_int_eq(all.pieces, 0);
        ck_assert_int_eq(all.strips, 0);
        ck_assert_int_eq(all.cloth_length, IN(0, 1, 2));
        ck_assert_int_eq(all.area_bound, 0);
        ck_assert_int_eq(all.narrowest_width, 0);
        ck_assert_int_eq(all.narrower_by, 0);
        ck_assert_int_eq(all.narrowest_as_cut, 0);
        ck_assert_int_eq(all.wider_for_less, 0);
        ck_assert_int_eq(all.wider_saves, 0);
        ck_assert_uint_eq(all.warnings, 0);
        ck_assert_int_eq(all.turned, 0);
    }
    struct muslin_cutlist_row row = row_at(ROWS(rows), &spec, 0);
    ck_assert_int_eq(row.per_strip, 0);
    ck_assert_int_eq(row.strips, 0);
    ck_assert_int_eq(row.spare_pieces, 0);
    ck_assert_int_eq(row.strips_length, 0);
}
END_TEST

/* The problem names row, width and the least that would do: 41 + 1 in as listed, 39 1/2 + 1 turned. */
START_TEST(a_piece_wider_than_the_cloth_is_named)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(4), WHOLE_IN(4), 3),
                                                CUTS(WHOLE_IN(41), IN(39, 1, 2), 1) };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all, .pieces = -7 };
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    spec.end_loss = WHOLE_IN(1);
    ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.value, WHOLE_IN(40));
    ck_assert_int_eq(problem.limit, WHOLE_IN(42));
    ck_assert_int_eq(all.pieces, -7);
    rows[1].flags = MUSLIN_CUTLIST_PIECE_MAY_TURN;
    ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.limit, IN(40, 1, 2));
    rows[1].cut_length = WHOLE_IN(42); /* turned it would need more, so the least is as listed */
    ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.limit, WHOLE_IN(42));
    ck_status(muslin_cutlist_yardage_rows(ROWS(rows), &spec, NULL, 0, 0, &count, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_uint_eq(count, 77);
    spec.end_loss = WHOLE_IN(41);
    ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.limit, WHOLE_IN(45));
}
END_TEST

/* Two rows of 2^31 - 1 strips of 2^30 ticks are 2^62 - 2^31; 2^31 - 1 ticks more are the longest length, and one more
 * is too long. */
/* A width with nothing left of it gives not even a piece a tick wide. */
START_TEST(a_loss_may_eat_all_of_the_width)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(1, 1, 1) };
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all };
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    spec.usable_width = 5;
    for (spec.end_loss = 4; spec.end_loss < 8; spec.end_loss++)
        ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, NULL),
                  spec.end_loss == 4 ? MUSLIN_OK : MUSLIN_ERR_NO_YIELD);
}
END_TEST

/* ---- all widths, one by one ------------------------------------------------------------------------------------- */

enum { ROWS_MOST = 3, NO_LENGTH = 1000000 };

static int64_t strips_for(int64_t count, int64_t across, int64_t room)
{
    int64_t strips = 0;
    if (room < across && count > 0)
        return NO_LENGTH;
    for (int64_t given = 0; given < count; strips++)
        given += room / across;
    return strips;
}

static int64_t length_at_width(const struct muslin_cutlist_piece_spec *rows, size_t n, int64_t room)
{
    int64_t length = 0;
    for (size_t i = 0; i < n; i++) {
        int64_t least = strips_for(rows[i].count, rows[i].cut_width, room) * rows[i].cut_length;
        const int64_t turned = strips_for(rows[i].count, rows[i].cut_length, room) * rows[i].cut_width;
        if (rows[i].flags != 0 && turned < least)
            least = turned;
        length += least;
    }
    return length;
}

START_TEST(widths_as_by_trying_all)
{
    uint64_t seed = 1;
    for (int32_t round = 0; round < 3000; round++) {
        struct muslin_cutlist_piece_spec rows[ROWS_MOST];
        struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
        struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all };
        const size_t n = (size_t)(1 + tiny_chance(&seed, ROWS_MOST));
        int64_t area = 0;
        int64_t pieces = 0;
        int64_t widest = 0;
        for (size_t i = 0; i < n; i++) {
            const struct muslin_cutlist_piece_spec row = CUTS(1 + tiny_chance(&seed, 6), 1 + tiny_chance(&seed, 6),
                                                              (i == 0) + tiny_chance(&seed, 7));
            rows[i] = row;
            rows[i].flags = tiny_chance(&seed, 2) ? MUSLIN_CUTLIST_PIECE_MAY_TURN : 0;
            area += row.cut_width * row.cut_length * row.count;
            pieces += row.count;
            widest += (row.cut_width + row.cut_length) * row.count;
        }
        spec.end_loss = tiny_chance(&seed, 4);
        spec.usable_width = 6 + tiny_chance(&seed, 13) + spec.end_loss;
        spec.straightening = tiny_chance(&seed, 3);
        const int64_t room = spec.usable_width - spec.end_loss;
        const int64_t length = length_at_width(rows, n, room);
        ck_ok(muslin_cutlist_from_yardage(rows, sizeof rows[0], n, &spec, &all, NULL));
        ck_assert_int_eq(all.cloth_length, length + spec.straightening);
        ck_assert_int_eq(all.pieces, pieces);
        ck_assert_int_eq(all.area_bound, (area + spec.usable_width - 1) / spec.usable_width);
        int64_t narrowest = room;
        while (narrowest > 0 && length_at_width(rows, n, narrowest - 1) == length)
            narrowest--;
        ck_assert_int_eq(all.narrowest_width, narrowest + spec.end_loss);
        int64_t wider = room;
        while (wider <= widest && length_at_width(rows, n, wider) == length)
            wider++;
        ck_assert_int_eq(all.wider_for_less, wider > widest ? 0 : wider - room);
        ck_assert_int_eq(all.wider_saves, wider > widest ? 0 : length - length_at_width(rows, n, wider));
    }
}
END_TEST

START_TEST(cloth_beyond_the_longest_length_is_refused)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX),
                                      CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX),
                                      CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 1),
                                      CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX - 1, 1) };
    const struct muslin_cutlist_spec spec = cloth_of(MUSLIN_SIZE_MAX);
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all, .pieces = -7 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, MUSLIN_LENGTH_MAX);
    ck_assert_int_eq(worked(ROWS(rows), &spec).area_bound, MUSLIN_LENGTH_MAX);
    rows[3].cut_length = MUSLIN_SIZE_MAX;
    ck_status(muslin_cutlist_from_yardage(ROWS(rows), &spec, &all, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.at, 3);
    ck_assert_int_eq(all.pieces, -7);
}
END_TEST

START_TEST(a_long_list_is_worked_row_by_row)
{
    static struct muslin_cutlist_piece_spec rows[MUSLIN_CUTLIST_ROWS_MAX];
    const struct muslin_cutlist_piece_spec one = CUTS(WHOLE_IN(4), WHOLE_IN(4), 10);
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    for (size_t i = 0; i < COUNT_OF(rows); i++)
        rows[i] = one;
    ck_assert_int_eq(worked(ROWS(rows), &spec).cloth_length, MUSLIN_CUTLIST_ROWS_MAX * WHOLE_IN(4));
}
END_TEST

/* ---- asking and filling ----------------------------------------------------------------------------------------- */

START_TEST(rows_are_asked_and_then_filled)
{
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_row found[3];
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    memset(found, FILL, sizeof found);
    ck_ok(muslin_cutlist_yardage_rows(ROWS(squares), &spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    count = 77;
    ck_status(muslin_cutlist_yardage_rows(ROWS(squares), &spec, found, sizeof found[0], 1, &count, &problem),
              MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.limit, 2);
    ck_assert_uint_eq(found[0].size, 0xA5A5A5A5u);
    ck_ok(muslin_cutlist_yardage_rows(ROWS(squares), &spec, found, sizeof found[0], 3, &count, NULL));
    ck_assert_uint_eq(found[1].size, sizeof found[1]);
    ck_assert_uint_eq(found[2].size, 0xA5A5A5A5u);
    ck_status(muslin_cutlist_yardage_rows(ROWS(squares), &spec, NULL, sizeof found[0], 3, &count, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_cutlist_yardage_rows(ROWS(squares), &spec, found, 8, 3, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_cutlist_yardage_rows(ROWS(squares), &spec, found, sizeof found[0], 3, NULL, NULL),
              MUSLIN_ERR_NULL);
}
END_TEST

static muslin_status list_to_yardage(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                     struct muslin_problem *problem)
{
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all };
    return muslin_cutlist_from_yardage(rows, row_size, n, &spec, &all, problem);
}

static muslin_status list_to_rows(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                  struct muslin_problem *problem)
{
    const struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    size_t count = 0;
    return muslin_cutlist_yardage_rows(rows, row_size, n, &spec, NULL, 0, 0, &count, problem);
}

static muslin_status call_yardage(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_cutlist_from_yardage(ROWS(squares), spec, out, problem);
}
static const struct muslin_cutlist_spec good_cloth = { (uint32_t)sizeof good_cloth, 0, WHOLE_IN(42), 4064, 2032,
                                                       MUSLIN_PRINT_ONE_WAY, 0 };
static const struct ruled yardage = RULED(call_yardage, good_cloth, muslin_cutlist_yardage);

static const struct refusal cloth_refusals[] = {
    OUTSIDE(muslin_cutlist_spec, usable_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
    OUTSIDE(muslin_cutlist_spec, end_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
    OUTSIDE(muslin_cutlist_spec, straightening, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
    NOT_A_CHOICE(muslin_cutlist_spec, print, MUSLIN_PRINT_STRIPE_ACROSS, MUSLIN_ARG_PRINT_DIRECTION),
    REFUSAL(muslin_cutlist_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
};

START_TEST(yardage_checks_its_structs_rows_and_values)
{
    ck_struct_rules(&yardage);
    ck_no_flag_known(&yardage);
    ck_refusals(&yardage, cloth_refusals, COUNT_OF(cloth_refusals));
    ck_list_rules(list_to_yardage);
    ck_list_rules(list_to_rows);
}
END_TEST

START_TEST(a_problem_says_which_loss_is_wrong)
{
    struct muslin_cutlist_spec spec = good_cloth;
    struct muslin_cutlist_yardage all = { .size = (uint32_t)sizeof all };
    struct muslin_problem problem = PROBLEM;
    spec.straightening = -1;
    ck_status(muslin_cutlist_from_yardage(ROWS(squares), &spec, &all, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    spec.end_loss = -1;
    ck_status(muslin_cutlist_from_yardage(ROWS(squares), &spec, &all, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 0);
}
END_TEST

INIT_CALL(cutlist_piece)
INIT_CALL(cutlist)

START_TEST(initial_values_are_those_of_the_headers)
{
    const struct muslin_cutlist_piece_spec cut = MUSLIN_CUTLIST_PIECE_SPEC_INIT;
    const struct muslin_cutlist_spec cloth = MUSLIN_CUTLIST_SPEC_INIT;
    ck_init_rules(init_cutlist_piece, &cut, (uint32_t)sizeof cut);
    ck_init_rules(init_cutlist, &cloth, (uint32_t)sizeof cloth);
    ck_assert_int_eq(cut.count, 1);
    ck_assert_int_eq(cloth.usable_width, MUSLIN_USABLE_WIDTH_USUAL);
    ck_assert_int_eq(cloth.print, MUSLIN_PRINT_NONE);
}
END_TEST

Suite *cutlist_suite(void);

Suite *cutlist_suite(void)
{
    Suite *suite = suite_create("cutlist");
    TCase *cloth = tcase_create("yardage");
    tcase_add_test(cloth, two_sizes_of_squares_take_twenty_six_inches);
    tcase_add_test(cloth, the_narrowest_width_is_that_of_the_answer_not_of_the_yield);
    tcase_add_test(cloth, long_pieces_take_three_strips_and_two);
    tcase_add_test(cloth, a_hundred_and_twelve_units_take_twenty_three_strips);
    tcase_add_test(cloth, pieces_are_turned_when_that_takes_less);
    tcase_add_test(cloth, a_tie_is_not_turned_and_what_fits_one_way_only_lies_so);
    tcase_add_test(cloth, the_cutting_may_hold_less_far_down_than_the_answer);
    tcase_add_test(cloth, losses_come_off_each_strip_and_once_off_the_cloth);
    tcase_add_test(cloth, one_strip_cannot_become_less);
    tcase_add_test(cloth, nothing_wanted_takes_only_the_straightening);
    tcase_add_test(cloth, a_piece_wider_than_the_cloth_is_named);
    tcase_add_test(cloth, cloth_beyond_the_longest_length_is_refused);
    tcase_add_test(cloth, a_loss_may_eat_all_of_the_width);
    tcase_add_test(cloth, widths_as_by_trying_all);
    tcase_add_test(cloth, a_long_list_is_worked_row_by_row);
    tcase_add_test(cloth, rows_are_asked_and_then_filled);
    tcase_add_test(cloth, yardage_checks_its_structs_rows_and_values);
    tcase_add_test(cloth, a_problem_says_which_loss_is_wrong);
    tcase_add_test(cloth, initial_values_are_those_of_the_headers);
    suite_add_tcase(suite, cloth);
    add_cutlist_stock_tests(suite);
    add_cutlist_brute_tests(suite);
    return suite;
}
