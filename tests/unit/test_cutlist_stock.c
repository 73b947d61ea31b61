/* test_cutlist_stock.c - a list of pieces from pieces of stock, how often, and instead of what.
 *
 * SPDX-License-Identifier: MIT */
#include "test_cutlist.h"

static struct muslin_stock_spec stock_of(int32_t kind, muslin_len width, muslin_len length, int64_t count)
{
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    stock.kind = kind;
    stock.width = width;
    stock.length = length;
    stock.count = count;
    return stock;
}

static struct muslin_stock_spec fat_quarters(int64_t count)
{
    return stock_of(MUSLIN_STOCK_FAT_QUARTER, WHOLE_IN(22), WHOLE_IN(18), count);
}

static struct muslin_stock_spec ten_inch_squares(int64_t count)
{
    return stock_of(MUSLIN_STOCK_SQUARE, WHOLE_IN(10), WHOLE_IN(10), count);
}

static struct muslin_stock_spec bundle(int64_t count)
{
    return stock_of(MUSLIN_STOCK_STRIP, WHOLE_IN(40), IN(2, 1, 2), count);
}

static struct muslin_cutlist_stock worked(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                          struct muslin_stock_spec stock)
{
    struct muslin_cutlist_stock all = { .size = (uint32_t)sizeof all };
    ck_ok(muslin_cutlist_from_stock(rows, row_size, n, &stock, &all, NULL));
    return all;
}

static struct muslin_cutlist_row row_at(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                        struct muslin_stock_spec stock, size_t index)
{
    struct muslin_cutlist_row found[8];
    size_t count = 0;
    ck_ok(muslin_cutlist_stock_rows(rows, row_size, n, &stock, found, sizeof found[0], COUNT_OF(found), &count, NULL));
    ck_assert_uint_eq(count, n);
    return found[index];
}

/* Part `index` of so many. */
static struct muslin_cutlist_part part_at(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                          struct muslin_stock_spec stock, size_t index, size_t of)
{
    struct muslin_cutlist_part found[8];
    size_t count = 0;
    ck_ok(muslin_cutlist_stock_parts(rows, row_size, n, &stock, found, sizeof found[0], COUNT_OF(found), &count, NULL));
    ck_assert_uint_eq(count, of);
    ck_assert_uint_eq(found[index].size, sizeof found[0]);
    return found[index];
}

static void ck_part(struct muslin_cutlist_part part, int64_t row, int64_t strips, int64_t first, int64_t last,
                    muslin_len begins_at)
{
    ck_assert_int_eq(part.row, row);
    ck_assert_int_eq(part.strips, strips);
    ck_assert_int_eq(part.first_stock, first);
    ck_assert_int_eq(part.last_stock, last);
    ck_assert_int_eq(part.begins_at, begins_at);
}

static struct muslin_cutlist_lists how_often(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                            struct muslin_stock_spec stock)
{
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists };
    ck_ok(muslin_cutlist_lists_from_stock(rows, row_size, n, &stock, &lists, NULL));
    return lists;
}

static struct muslin_substitution instead(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                          struct muslin_stock_spec stock, int64_t prints)
{
    struct muslin_substitution found = { .size = (uint32_t)sizeof found };
    ck_ok(muslin_cutlist_substitute(rows, row_size, n, &stock, prints, &found, NULL));
    return found;
}

/* ---- pieces of stock -------------------------------------------------------------------------------------------- */

static const struct muslin_cutlist_piece_spec half_strips[] = { CUTS(WHOLE_IN(22), IN(2, 1, 2), 80) };

/* "Fat quarter conversion" (public forum): 7 half strips each, 80 / 7 = 11.4.
 * Example: 80 strips of 22 x 2 1/2 in from fat quarters 18 x 22 in: 12 fat quarters. */
START_TEST(eighty_half_strips_come_from_twelve_fat_quarters)
{
    struct muslin_cutlist_stock all = worked(ROWS(half_strips), fat_quarters(10));
    ck_assert_int_eq(all.pieces, 80);
    ck_assert_int_eq(all.strips, 80);
    ck_assert_int_eq(all.spare_pieces, 0);
    ck_assert_int_eq(all.stock_needed, 12);
    ck_assert_int_eq(all.stock_missing, 2);
    ck_assert_int_eq(all.stock_left, 0);
    ck_assert_int_eq(all.area_bound, 12); /* 80 x 55 = 4400 sq in over 396: 11.1 */
    ck_assert_int_eq(all.left_over, IN(10, 1, 2)); /* 80 - 77 = 3 strips of 2 1/2 in in the last */
    ck_assert_int_eq(all.narrower_by, 0);
    ck_assert_int_eq(all.shorter_by, IN(0, 1, 2)); /* 7 x 2 1/2 = 17 1/2; 6 each would be 72 of 80 */
    ck_assert_int_eq(all.as_cut_narrower_by, 0);
    ck_assert_int_eq(all.as_cut_shorter_by, IN(0, 1, 2));
    ck_assert_int_eq(all.turned, 0);
    ck_assert_uint_eq(all.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(all.trimmed, 1);
    ck_assert_int_eq(worked(ROWS(half_strips), fat_quarters(15)).stock_left, 3);
    ck_assert_int_eq(worked(ROWS(half_strips), fat_quarters(15)).stock_missing, 0);
}
END_TEST

/* "Cutting up a 10 inch square" (teacher's blog): 4 of 5 in, or 16 of 2 1/2 in, or 4 of 2 1/2 x 10 in from one. */
START_TEST(a_ten_inch_square_gives_four_or_sixteen)
{
    const struct muslin_cutlist_piece_spec five[] = { CUTS(WHOLE_IN(5), WHOLE_IN(5), 4) };
    const struct muslin_cutlist_piece_spec small[] = { CUTS(IN(2, 1, 2), IN(2, 1, 2), 16) };
    const struct muslin_cutlist_piece_spec strips[] = { CUTS(WHOLE_IN(10), IN(2, 1, 2), 4) };
    ck_assert_int_eq(worked(ROWS(five), ten_inch_squares(1)).stock_needed, 1);
    ck_assert_int_eq(worked(ROWS(five), ten_inch_squares(1)).left_over, 0);
    ck_assert_int_eq(worked(ROWS(small), ten_inch_squares(1)).stock_needed, 1);
    ck_assert_int_eq(worked(ROWS(strips), ten_inch_squares(1)).stock_needed, 1);
    ck_assert_int_eq(how_often(ROWS(five), ten_inch_squares(1)).lists, 1);
    ck_assert_int_eq(how_often(ROWS(small), ten_inch_squares(1)).lists, 1);
}
END_TEST

/* 9 of 5 in, 2 a strip: 5 strips, two squares and a half one; 20 of 2 1/2 in, 4 a strip: 5 strips, of which 2 lie in
 * the 5 in left of the third. Example: 9 squares of 5 in, then 20 of 2 1/2 in, from squares of 10 in: the small ones
 * come from the third and fourth. */
START_TEST(a_new_size_goes_on_where_the_last_one_left_off)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(5), WHOLE_IN(5), 9),
                                                      CUTS(IN(2, 1, 2), IN(2, 1, 2), 20) };
    struct muslin_cutlist_row row = row_at(ROWS(rows), ten_inch_squares(4), 0);
    ck_assert_int_eq(row.strips, 5);
    ck_assert_int_eq(row.spare_pieces, 1);
    ck_assert_int_eq(row.first_stock, 1);
    ck_assert_int_eq(row.last_stock, 3);
    row = row_at(ROWS(rows), ten_inch_squares(4), 1);
    ck_assert_int_eq(row.strips, 5);
    ck_assert_int_eq(row.per_strip, 4);
    ck_assert_int_eq(row.strips_length, IN(12, 1, 2));
    ck_assert_int_eq(row.first_stock, 3);
    ck_assert_int_eq(row.last_stock, 4);
    ck_assert_int_eq(row.trimmed, 1);
    ck_assert_int_eq(row.pieces, 20);
    ck_assert_int_eq(worked(ROWS(rows), ten_inch_squares(4)).left_over, IN(2, 1, 2));
    ck_assert_int_eq(worked(ROWS(rows), ten_inch_squares(4)).as_cut_shorter_by, 0);
    ck_part(part_at(ROWS(rows), ten_inch_squares(4), 0, 4), 0, 2, 1, 2, 0);
    ck_part(part_at(ROWS(rows), ten_inch_squares(4), 1, 4), 0, 1, 3, 3, 0);
    ck_part(part_at(ROWS(rows), ten_inch_squares(4), 2, 4), 1, 2, 3, 3, WHOLE_IN(5));
    ck_part(part_at(ROWS(rows), ten_inch_squares(4), 3, 4), 1, 3, 4, 4, 0);
}
END_TEST

/* 14 of 5 in, 4 a strip: 4 strips, three of them in 18 in. Behind the fourth 13 in are left: two strips of 4 1/2 in; a
 * row of nothing has no part, and one that ends with a whole fat quarter no last one.
 * Example: 14 squares of 5 in from fat quarters 18 x 20 in: 3 strips from the first, 1 from the second. */
START_TEST(parts_say_how_many_strips_come_from_which)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(5), WHOLE_IN(5), 14), CUTS(WHOLE_IN(50), WHOLE_IN(50), 0),
                                      CUTS(IN(2, 1, 2), IN(4, 1, 2), 12) };
    const struct muslin_stock_spec stock = stock_of(MUSLIN_STOCK_FAT_QUARTER, WHOLE_IN(20), WHOLE_IN(18), 0);
    ck_part(part_at(ROWS(rows), stock, 0, 3), 0, 3, 1, 1, 0);
    ck_part(part_at(ROWS(rows), stock, 1, 3), 0, 1, 2, 2, 0);
    ck_part(part_at(ROWS(rows), stock, 2, 3), 2, 2, 2, 2, WHOLE_IN(5));
    ck_assert_int_eq(worked(ROWS(rows), stock).as_cut_narrower_by, 0);          /* 4 of 5 in are 20 */
    ck_assert_int_eq(worked(ROWS(rows), stock).as_cut_shorter_by, WHOLE_IN(3)); /* 15 in of the first */
    rows[0].count = 24;
    ck_part(part_at(rows, sizeof rows[0], 1, stock, 0, 1), 0, 3, 1, 2, 0);
    ck_part(part_at(half_strips, sizeof half_strips[0], 1, fat_quarters(0), 0, 2), 0, 7, 1, 11, 0);
    ck_part(part_at(half_strips, sizeof half_strips[0], 1, fat_quarters(0), 1, 2), 0, 3, 12, 12, 0);
}
END_TEST

/* A square of 10 in holds two strips 4 1/2 in wide of 4 pieces: 8 squares hold 64, of which 60 are cut in 15 strips.
 * 56 in 7 squares leave no strip, nor does a list that ends with nothing wanted. Example: 60 pieces of 2 1/2 x 4 1/2
 * in from squares of 10 in: 8 squares, 15 strips of 4 pieces, and a strip more of 4 from the last. */
START_TEST(what_is_left_of_the_last_square_gives_pieces_too)
{
    const struct muslin_cutlist_piece_spec sixty[] = { { sizeof(struct muslin_cutlist_piece_spec), 0, IN(2, 1, 2),
                                                         IN(4, 1, 2), 60 } };
    const struct muslin_cutlist_piece_spec full[] = { { sizeof(struct muslin_cutlist_piece_spec), 0, IN(2, 1, 2),
                                                        IN(4, 1, 2), 56 } };
    const struct muslin_cutlist_piece_spec none[] = {
        sixty[0], { sizeof(struct muslin_cutlist_piece_spec), 0, IN(2, 1, 2), 1, 0 }
    };
    struct muslin_cutlist_stock all = worked(ROWS(sixty), ten_inch_squares(8));
    ck_assert_int_eq(all.stock_needed, 8);
    ck_assert_int_eq(all.strips, 15);
    ck_assert_int_eq(all.spare_pieces, 0);
    ck_assert_int_eq(all.rest_pieces, 4);
    ck_assert_int_eq(instead(ROWS(sixty), ten_inch_squares(0), 1).rest_pieces, 4);
    ck_assert_int_eq(worked(ROWS(full), ten_inch_squares(8)).rest_pieces, 0);
    ck_assert_int_eq(worked(ROWS(none), ten_inch_squares(8)).rest_pieces, 0);
    /* 4 in are left behind a strip of 6, and hold none, however many pieces a strip has */
    const struct muslin_cutlist_piece_spec high[] = { { sizeof high[0], 0, WHOLE_IN(2), WHOLE_IN(6), 5 } };
    ck_assert_int_eq(worked(ROWS(high), ten_inch_squares(1)).left_over, WHOLE_IN(4));
    ck_assert_int_eq(worked(ROWS(high), ten_inch_squares(1)).rest_pieces, 0);
}
END_TEST

/* Two strips of 3 in, then one of 5 in: from squares of 10 in a second one, of which 5 in are used; the first is used
 * to 6 in, so 4 in of length are to spare as cut. */
START_TEST(as_cut_the_fullest_piece_of_stock_counts)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(10), WHOLE_IN(3), 2),
                                                      CUTS(WHOLE_IN(9), WHOLE_IN(5), 1) };
    const struct muslin_cutlist_piece_spec goes_on[] = { CUTS(WHOLE_IN(9), WHOLE_IN(3), 1),
                                                         CUTS(WHOLE_IN(9), WHOLE_IN(2), 4) };
    const struct muslin_cutlist_piece_spec fits[] = { CUTS(WHOLE_IN(9), WHOLE_IN(3), 1),
                                                      CUTS(WHOLE_IN(4), WHOLE_IN(2), 4) };
    ck_assert_int_eq(worked(ROWS(rows), ten_inch_squares(2)).as_cut_shorter_by, WHOLE_IN(4));
    ck_assert_int_eq(worked(ROWS(rows), ten_inch_squares(2)).as_cut_narrower_by, 0);
    ck_assert_int_eq(worked(ROWS(goes_on), ten_inch_squares(2)).as_cut_shorter_by, WHOLE_IN(1)); /* 3 + 3 x 2 = 9 */
    ck_assert_int_eq(worked(ROWS(goes_on), ten_inch_squares(2)).as_cut_narrower_by, WHOLE_IN(1));
    ck_assert_int_eq(worked(ROWS(fits), ten_inch_squares(1)).as_cut_shorter_by, WHOLE_IN(3)); /* 3 + 2 x 2 = 7 */
}
END_TEST

/* Fat quarters 22 x 18 in: 14 of 5 in, 4 a strip, 4 strips: three in the first, one in the second; 10 of 2 1/2 in, 8 a
 * strip, 2 strips behind it, 10 in used; 3 of 9 in, 2 a strip, 2 strips, do not fit in the 8 in left: the third. At 18
 * in wide it is 3 a strip and 7 and 2, one strip more that the second holds; below that 9 in lie alone. Two strips of
 * 9 in need all 18 in of length. 655.5 sq in over 396 are 1.7. */
START_TEST(three_sizes_fill_three_fat_quarters)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(5), WHOLE_IN(5), 14),
                                                      CUTS(IN(2, 1, 2), IN(2, 1, 2), 10),
                                                      CUTS(WHOLE_IN(9), WHOLE_IN(9), 3) };
    struct muslin_cutlist_stock all = worked(ROWS(rows), fat_quarters(3));
    ck_assert_int_eq(all.stock_needed, 3);
    ck_assert_int_eq(all.strips, 8);
    ck_assert_int_eq(all.spare_pieces, 2 + 6 + 1);
    ck_assert_int_eq(all.left_over, 0);
    ck_assert_int_eq(all.area_bound, 2);
    ck_assert_int_eq(all.narrower_by, WHOLE_IN(4));
    ck_assert_int_eq(all.shorter_by, 0);
    ck_assert_int_eq(all.as_cut_narrower_by, WHOLE_IN(2)); /* 4 strips of 4 x 5 in hold the 14; 2 x 9 is less */
    ck_assert_int_eq(all.as_cut_shorter_by, 0);
    ck_assert_uint_eq(all.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(row_at(ROWS(rows), fat_quarters(3), 1).first_stock, 2);
    ck_assert_int_eq(row_at(ROWS(rows), fat_quarters(3), 1).last_stock, 2);
    ck_assert_int_eq(row_at(ROWS(rows), fat_quarters(3), 2).first_stock, 3);
}
END_TEST

/* Strips 2 1/2 in wide: pieces as high lie 8 a strip without trimming; lower ones must be trimmed, and two of 1 1/4 in
 * come from one strip. */
START_TEST(lower_pieces_from_a_strip_are_trimmed)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS(IN(4, 1, 2), IN(2, 1, 2), 12), CUTS(WHOLE_IN(2), WHOLE_IN(2), 6),
                                      CUTS(WHOLE_IN(4), IN(1, 1, 4), 20) };
    ck_assert_int_eq(worked(rows, sizeof rows[0], 1, bundle(40)).trimmed, 0);
    ck_assert_int_eq(worked(rows, sizeof rows[0], 1, bundle(40)).stock_needed, 2);
    ck_assert_int_eq(worked(ROWS(rows), bundle(40)).trimmed, 1);
    ck_assert_int_eq(worked(ROWS(rows), bundle(40)).stock_needed, 4);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 0).trimmed, 0);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 1).trimmed, 1);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 2).strips, 2);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 2).first_stock, 4);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 2).last_stock, 4);
    rows[1].count = 0;
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 1).trimmed, 0);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 1).first_stock, 0);
    ck_assert_int_eq(row_at(ROWS(rows), bundle(40), 1).last_stock, 0);
}
END_TEST

/* 4 of 6 x 10 in from fat quarters: as listed 3 a strip, two strips of 10 in, two fat quarters; turned 2 a strip, two
 * strips of 6 in, 12 in of one. A piece 2 1/2 x 4 1/2 in fits a strip only when it lies turned. */
START_TEST(rows_are_turned_when_they_end_earlier)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(WHOLE_IN(6), WHOLE_IN(10), 4) };
    const struct muslin_cutlist_piece_spec tall[] = { CUTS_TURN(IN(2, 1, 2), IN(4, 1, 2), 8) };
    const struct muslin_cutlist_piece_spec wide[] = { CUTS_TURN(IN(4, 1, 2), IN(2, 1, 2), 8) };
    const struct muslin_cutlist_piece_spec tie[] = { CUTS_TURN(WHOLE_IN(9), WHOLE_IN(9), 4) };
    const struct muslin_cutlist_piece_spec flat[] = { CUTS_TURN(WHOLE_IN(10), WHOLE_IN(6), 4) }; /* the other way
                                                                                                    round */
    struct muslin_stock_spec striped = fat_quarters(1);
    ck_assert_int_eq(worked(ROWS(rows), fat_quarters(1)).stock_needed, 1);
    ck_assert_int_eq(worked(ROWS(rows), fat_quarters(1)).left_over, WHOLE_IN(6));
    ck_assert_int_eq(worked(ROWS(rows), fat_quarters(1)).turned, 1);
    ck_assert_int_eq(row_at(ROWS(rows), fat_quarters(1), 0).turned, 1);
    ck_assert_int_eq(row_at(ROWS(tall), bundle(1), 0).turned, 1);
    ck_assert_int_eq(row_at(ROWS(wide), bundle(1), 0).turned, 0);
    ck_assert_int_eq(row_at(ROWS(tie), fat_quarters(1), 0).turned, 0);
    ck_assert_int_eq(row_at(ROWS(flat), fat_quarters(1), 0).turned, 0);
    striped.print = MUSLIN_PRINT_STRIPE_ALONG;
    ck_assert_int_eq(worked(ROWS(rows), striped).stock_needed, 2);
    rows[0].flags = 0;
    ck_assert_int_eq(worked(ROWS(rows), fat_quarters(1)).stock_needed, 2);
    rows[0].count = 1; /* both ways in the first fat quarter, 6 in of it or 10 */
    rows[0].flags = MUSLIN_CUTLIST_PIECE_MAY_TURN;
    ck_assert_int_eq(worked(ROWS(rows), fat_quarters(1)).left_over, WHOLE_IN(12));
}
END_TEST

/* 10 of 10 in squares: 3 a strip at 30 in wide, 4 strips of 10 in; a cloth 20 in long holds two, so two cloths. */
START_TEST(a_cloth_is_a_piece_of_stock_too)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(10), WHOLE_IN(10), 10) };
    struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(30), WHOLE_IN(20), 1);
    ck_assert_int_eq(worked(ROWS(rows), cloth).stock_needed, 2);
    ck_assert_int_eq(worked(ROWS(rows), cloth).stock_missing, 1);
}
END_TEST

START_TEST(nothing_wanted_takes_no_stock)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(WHOLE_IN(50), WHOLE_IN(50), 0) };
    for (size_t n = 0; n <= 1; n++) {
        struct muslin_cutlist_stock all = worked(n == 0 ? NULL : rows, sizeof rows[0], n, fat_quarters(3));
        ck_assert_int_eq(all.stock_needed, 0);
        ck_assert_int_eq(all.stock_left, 3);
        ck_assert_int_eq(all.left_over, 0);
        ck_assert_int_eq(all.area_bound, 0);
        ck_assert_int_eq(all.narrower_by, 0);
        ck_assert_int_eq(all.shorter_by, 0);
        ck_assert_int_eq(all.as_cut_narrower_by, 0);
        ck_assert_int_eq(all.as_cut_shorter_by, 0);
        ck_assert_uint_eq(all.warnings, 0);
        ck_assert_int_eq(all.trimmed, 0);
        ck_assert_int_eq(all.turned, 0);
    }
    ck_assert_int_eq(row_at(ROWS(rows), fat_quarters(3), 0).first_stock, 0);
}
END_TEST

/* The side that is too short for the piece as listed, even where turning was allowed and did not help. */
START_TEST(a_piece_larger_than_the_stock_is_named)
{
    struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(4), WHOLE_IN(4), 3),
                                                CUTS_TURN(WHOLE_IN(23), WHOLE_IN(2), 1) };
    const struct muslin_stock_spec stock = fat_quarters(1);
    struct muslin_cutlist_stock all = { .size = (uint32_t)sizeof all, .pieces = -7 };
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists, .lists = -7 };
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    ck_status(muslin_cutlist_from_stock(ROWS(rows), &stock, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.value, WHOLE_IN(22));
    ck_assert_int_eq(problem.limit, WHOLE_IN(23));
    rows[1].cut_width = WHOLE_IN(19);
    rows[1].cut_length = WHOLE_IN(23);
    ck_status(muslin_cutlist_from_stock(ROWS(rows), &stock, &all, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(18));
    ck_assert_int_eq(problem.limit, WHOLE_IN(23));
    ck_status(muslin_cutlist_stock_rows(ROWS(rows), &stock, NULL, 0, 0, &count, NULL), MUSLIN_ERR_NO_YIELD);
    ck_status(muslin_cutlist_lists_from_stock(ROWS(rows), &stock, &lists, NULL), MUSLIN_ERR_NO_YIELD);
    ck_status(muslin_cutlist_stock_parts(ROWS(rows), &stock, NULL, 0, 0, &count, NULL), MUSLIN_ERR_NO_YIELD);
    ck_status(muslin_cutlist_lists_rows(ROWS(rows), &stock, NULL, 0, 0, &count, NULL), MUSLIN_ERR_NO_YIELD);
    ck_assert_uint_eq(count, 77);
    ck_assert_int_eq(all.pieces, -7);
    ck_assert_int_eq(lists.lists, -7);
}
END_TEST

/* 4096 rows of 2^31 - 1 pieces, each as large as the stock. */
START_TEST(the_largest_request_fits)
{
    static struct muslin_cutlist_piece_spec rows[MUSLIN_CUTLIST_ROWS_MAX];
    const struct muslin_cutlist_piece_spec one = CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX);
    for (size_t i = 0; i < COUNT_OF(rows); i++)
        rows[i] = one;
    struct muslin_stock_spec stock = stock_of(MUSLIN_STOCK_YARDAGE, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 1);
    struct muslin_cutlist_stock all = worked(ROWS(rows), stock);
    ck_assert_int_eq(all.stock_needed, MUSLIN_CUTLIST_ROWS_MAX * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(all.area_bound, MUSLIN_CUTLIST_ROWS_MAX * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(how_often(ROWS(rows), stock).lists, 0);
    ck_assert_int_eq(how_often(ROWS(rows), stock).stock_for_one_more, MUSLIN_CUTLIST_ROWS_MAX * MUSLIN_COUNT_MAX - 1);
}
END_TEST

/* ---- how often -------------------------------------------------------------------------------------------------- */

static const struct muslin_cutlist_piece_spec kit[] = { CUTS(WHOLE_IN(5), WHOLE_IN(5), 4),
                                                        CUTS(IN(2, 1, 2), IN(2, 1, 2), 4) };

/* Eight times: 32 of 5 in from 8 squares, 32 of 2 1/2 in, 8 strips, from two more; nine times need 9 and 9 strips,
 * three more: 12. 5 in must fit twice, so nothing may be smaller. Example: 4 squares of 5 in and 4 of 2 1/2 in from 10
 * squares of 10 in: 8 times. */
START_TEST(ten_squares_give_the_list_eight_times)
{
    struct muslin_cutlist_lists lists = how_often(ROWS(kit), ten_inch_squares(10));
    ck_assert_int_eq(lists.lists, 8);
    ck_assert_int_eq(lists.stock_used, 10);
    ck_assert_int_eq(lists.stock_left, 0);
    ck_assert_int_eq(lists.stock_for_one_more, 2);
    ck_assert_int_eq(lists.left_over, 0);
    ck_assert_int_eq(lists.narrower_by, 0);
    ck_assert_int_eq(lists.shorter_by, 0);
    ck_assert_uint_eq(lists.warnings, MUSLIN_WARN_NO_SLACK);
    lists = how_often(ROWS(kit), ten_inch_squares(11)); /* still 8: nine need 12 */
    ck_assert_int_eq(lists.lists, 8);
    ck_assert_int_eq(lists.stock_left, 1);
    ck_assert_int_eq(lists.stock_for_one_more, 1);
}
END_TEST

/* From squares of 11 in the list comes once from two: 4 of 5 in, then 1 in left, then one strip of 2 1/2 in in the
 * second. 10 in of width would do, and 7 1/2 in of length: a strip of 5 in in each, the small ones behind the second.
 * */
START_TEST(larger_stock_has_slack)
{
    struct muslin_stock_spec stock = stock_of(MUSLIN_STOCK_SQUARE, WHOLE_IN(11), WHOLE_IN(11), 2);
    struct muslin_cutlist_lists lists = how_often(ROWS(kit), stock);
    ck_assert_int_eq(lists.lists, 1);
    ck_assert_int_eq(lists.left_over, IN(8, 1, 2));
    ck_assert_int_eq(lists.narrower_by, WHOLE_IN(1));
    ck_assert_int_eq(lists.shorter_by, IN(3, 1, 2));
    ck_assert_int_eq(lists.as_cut_narrower_by, WHOLE_IN(1));
    ck_assert_int_eq(lists.as_cut_shorter_by, WHOLE_IN(1)); /* both strips of 5 in stay in the first */
    ck_assert_uint_eq(lists.warnings, 0);
}
END_TEST

/* 48 pieces turned, 8 a strip, are 6 strips of 8 1/2 in, 51 of 72 in; they hold down to 36 in of width. As listed, 3 a
 * strip from 25 1/2 in on, 16 strips of 4 1/2 in would also be 72 in, but that is another cutting. A third time, 9
 * strips, is 76 1/2 in.
 * Example: 24 pieces of 8 1/2 x 4 1/2 in that may turn, from a cloth 40 x 72 in: twice, 6 strips of 8 1/2 in. */
START_TEST(the_rows_of_several_lists_are_cut_together)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS_TURN(IN(8, 1, 2), IN(4, 1, 2), 24) };
    const struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(40), WHOLE_IN(72), 1);
    struct muslin_cutlist_row found[1] = { { 0 } };
    size_t count = 0;
    struct muslin_cutlist_lists lists = how_often(ROWS(rows), cloth);
    ck_assert_int_eq(lists.lists, 2);
    ck_assert_int_eq(lists.narrower_by, IN(14, 1, 2));
    ck_assert_int_eq(lists.as_cut_narrower_by, WHOLE_IN(4));
    ck_assert_int_eq(lists.as_cut_shorter_by, WHOLE_IN(21));
    ck_ok(muslin_cutlist_lists_rows(ROWS(rows), &cloth, found, sizeof found[0], 1, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(found[0].pieces, 48);
    ck_assert_int_eq(found[0].strips, 6);
    ck_assert_int_eq(found[0].per_strip, 8);
    ck_assert_int_eq(found[0].spare_pieces, 0);
    ck_assert_int_eq(found[0].strip_cut, IN(8, 1, 2));
    ck_assert_int_eq(found[0].strips_length, WHOLE_IN(51));
    ck_assert_int_eq(found[0].turned, 1);
    ck_assert_int_eq(found[0].last_stock, 1);
}
END_TEST

START_TEST(too_little_stock_gives_no_list)
{
    const int64_t counts[] = { 0, 1 };
    for (int i = 0; i < 2; i++) {
        struct muslin_cutlist_lists lists = how_often(ROWS(kit), ten_inch_squares(counts[i]));
        ck_assert_int_eq(lists.lists, 0);
        ck_assert_int_eq(lists.stock_used, 0);
        ck_assert_int_eq(lists.stock_left, counts[i]);
        ck_assert_int_eq(lists.stock_for_one_more, 2 - counts[i]);
        ck_assert_int_eq(lists.left_over, 0);
        ck_assert_int_eq(lists.narrower_by, 0);
        ck_assert_int_eq(lists.shorter_by, 0);
        ck_assert_int_eq(lists.as_cut_narrower_by, 0);
        ck_assert_int_eq(lists.as_cut_shorter_by, 0);
        ck_assert_uint_eq(lists.warnings, 0);
        const struct muslin_stock_spec stock = ten_inch_squares(counts[i]);
        struct muslin_cutlist_row found[2] = { { 0 }, { 0 } };
        size_t count = 0;
        ck_ok(muslin_cutlist_lists_rows(ROWS(kit), &stock, found, sizeof found[0], 2, &count, NULL));
        ck_assert_int_eq(found[0].pieces, 0);
        ck_assert_int_eq(found[1].strips, 0);
    }
}
END_TEST

START_TEST(a_list_of_nothing_comes_from_anything_too_often_to_say)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(50), WHOLE_IN(50), 0) };
    const struct muslin_stock_spec stock = ten_inch_squares(1);
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists, .lists = -7 };
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    for (size_t n = 0; n <= 1; n++) {
        ck_status(muslin_cutlist_lists_from_stock(rows, sizeof rows[0], n, &stock, &lists, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
        ck_assert_int_eq(problem.value, 0);
        ck_assert_int_eq(problem.limit, 1);
        ck_status(muslin_cutlist_lists_rows(rows, sizeof rows[0], n, &stock, NULL, 0, 0, &count, NULL),
                  MUSLIN_ERR_RANGE);
    }
    ck_assert_uint_eq(count, 77);
    ck_assert_int_eq(lists.lists, -7);
}
END_TEST

/* A tick square from 2^31 - 1 pieces of one tick: as many lists as a count may be; of two ticks square: more. */
START_TEST(more_lists_than_a_count_are_refused)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(1, 1, 1) };
    struct muslin_stock_spec stock = stock_of(MUSLIN_STOCK_SQUARE, 1, 1, MUSLIN_COUNT_MAX);
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists, .lists = -7 };
    struct muslin_problem problem = PROBLEM;
    ck_assert_int_eq(how_often(ROWS(rows), stock).lists, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(how_often(ROWS(rows), stock).stock_for_one_more, 1);
    stock.width = 2;
    ck_status(muslin_cutlist_lists_from_stock(ROWS(rows), &stock, &lists, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SETS);
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
    size_t count = 77;
    ck_status(muslin_cutlist_lists_rows(ROWS(rows), &stock, NULL, 0, 0, &count, NULL), MUSLIN_ERR_OVERFLOW);
    ck_assert_uint_eq(count, 77);
    stock.width = MUSLIN_SIZE_MAX;
    stock.length = MUSLIN_SIZE_MAX;
    ck_status(muslin_cutlist_lists_from_stock(ROWS(rows), &stock, &lists, NULL), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(lists.lists, -7);
}
END_TEST

/* ---- one stock for another -------------------------------------------------------------------------------------- */

/* 12 fat quarters of 8 prints: four of them twice. Example: 80 strips of 22 x 2 1/2 in from 20 fat quarters 18 x 22 in
 * of 8 prints: 12 fat quarters, 8 fabrics, 1 or 2 of each. */
START_TEST(fat_quarters_of_eight_prints_show_eight_fabrics)
{
    struct muslin_substitution found = instead(ROWS(half_strips), fat_quarters(20), 8);
    ck_assert_int_eq(found.possible, 1);
    ck_assert_int_eq(found.unfit_row, -1);
    ck_assert_int_eq(found.stock_needed, 12);
    ck_assert_int_eq(found.stock_missing, 0);
    ck_assert_int_eq(found.enough, 1);
    ck_assert_int_eq(found.fabrics, 8);
    ck_assert_int_eq(found.per_fabric_least, 1);
    ck_assert_int_eq(found.per_fabric_most, 2);
    ck_assert_int_eq(found.cloth_length, 0);
    ck_assert_int_eq(found.cloth_missing, 0);
    ck_assert_int_eq(found.narrower_by, 0);
    ck_assert_int_eq(found.shorter_by, IN(0, 1, 2));
    ck_assert_uint_eq(found.warnings, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(found.spare_pieces, 0);
    ck_assert_int_eq(found.turned, 0);
    found = instead(ROWS(half_strips), fat_quarters(11), 20);
    ck_assert_int_eq(found.fabrics, 12);
    ck_assert_int_eq(found.per_fabric_least, 1);
    ck_assert_int_eq(found.per_fabric_most, 1);
    ck_assert_int_eq(found.stock_missing, 1);
    ck_assert_int_eq(found.enough, 0);
}
END_TEST

/* From yardage 42 in wide one strip gives one of 22 in: 80 x 2 1/2 = 200 in; 2 each from 44 in. */
START_TEST(yardage_shows_one_fabric)
{
    struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(42), WHOLE_IN(36), 6);
    struct muslin_substitution found = instead(ROWS(half_strips), cloth, 1);
    ck_assert_int_eq(found.possible, 1);
    ck_assert_int_eq(found.cloth_length, WHOLE_IN(200));
    ck_assert_int_eq(found.cloth_missing, 0);
    ck_assert_int_eq(found.enough, 1);
    ck_assert_int_eq(found.shorter_by, WHOLE_IN(16));
    ck_assert_int_eq(found.narrower_by, WHOLE_IN(20));
    ck_assert_int_eq(found.fabrics, 1);
    ck_assert_int_eq(found.stock_needed, 0);
    ck_assert_int_eq(found.per_fabric_most, 0);
    ck_assert_uint_eq(found.warnings, 0);
    cloth.count = 5;
    found = instead(ROWS(half_strips), cloth, 1);
    ck_assert_int_eq(found.enough, 0);
    ck_assert_int_eq(found.cloth_missing, WHOLE_IN(20));
    ck_assert_int_eq(found.shorter_by, 0);
    cloth.width = WHOLE_IN(44);
    cloth.length = WHOLE_IN(1); /* shorter than any piece: it is a length that is bought */
    ck_assert_int_eq(instead(ROWS(half_strips), cloth, 1).cloth_length, WHOLE_IN(100));
}
END_TEST

/* 100 in needed, and 100 in in hand: not a tick to spare, though the width has some. */
START_TEST(yardage_that_is_just_enough_is_said_to_be)
{
    struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(45), WHOLE_IN(50), 2);
    struct muslin_substitution found = instead(ROWS(half_strips), cloth, 1);
    ck_assert_int_eq(found.narrower_by, WHOLE_IN(1));
    ck_assert_int_eq(found.enough, 1);
    ck_assert_int_eq(found.shorter_by, 0);
    ck_assert_uint_eq(found.warnings, MUSLIN_WARN_NO_SLACK);
    cloth.length = WHOLE_IN(50) + 1;
    ck_assert_uint_eq(instead(ROWS(half_strips), cloth, 1).warnings, 0);
    cloth.length = WHOLE_IN(50) - 1;
    ck_assert_uint_eq(instead(ROWS(half_strips), cloth, 1).warnings, 0);
}
END_TEST

/* Strips 2 1/2 in wide cut every 4 1/2 in give 8 in 40 in: 60 pieces from 8 strips, 64, 4 to spare. From yardage 24 of
 * 8 1/2 x 4 1/2 in lie turned (see above); 8 a strip, so none to spare. */
START_TEST(pieces_that_may_turn_come_from_strips_cut_across)
{
    const struct muslin_cutlist_piece_spec listed[] = { CUTS(IN(2, 1, 2), IN(4, 1, 2), 60) };
    const struct muslin_cutlist_piece_spec turned[] = { CUTS_TURN(IN(2, 1, 2), IN(4, 1, 2), 60) };
    const struct muslin_cutlist_piece_spec large[] = { CUTS_TURN(IN(8, 1, 2), IN(4, 1, 2), 23) };
    struct muslin_substitution found = instead(ROWS(turned), bundle(40), 20);
    ck_assert_int_eq(instead(ROWS(listed), bundle(40), 20).possible, 0);
    ck_assert_int_eq(found.possible, 1);
    ck_assert_int_eq(found.stock_needed, 8);
    ck_assert_int_eq(found.spare_pieces, 4);
    ck_assert_int_eq(found.turned, 1);
    found = instead(ROWS(large), stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(40), WHOLE_IN(36), 1), 1);
    ck_assert_int_eq(found.cloth_length, IN(25, 1, 2));
    ck_assert_int_eq(found.spare_pieces, 1);
    ck_assert_int_eq(found.turned, 1);
}
END_TEST

START_TEST(a_row_that_does_not_fit_makes_a_substitute_impossible)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(WHOLE_IN(4), IN(2, 1, 2), 3),
                                                      CUTS(WHOLE_IN(10), WHOLE_IN(3), 1) };
    const struct muslin_cutlist_piece_spec wide[] = { CUTS(WHOLE_IN(43), WHOLE_IN(2), 3) };
    struct muslin_substitution found = instead(ROWS(rows), bundle(40), 20);
    ck_assert_int_eq(found.possible, 0);
    ck_assert_int_eq(found.unfit_row, 1);
    ck_assert_int_eq(found.enough, 0);
    ck_assert_int_eq(found.stock_needed, 0);
    ck_assert_int_eq(found.fabrics, 0);
    found = instead(ROWS(wide), stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(42), WHOLE_IN(36), 1), 1);
    ck_assert_int_eq(found.possible, 0);
    ck_assert_int_eq(found.unfit_row, 0);
    ck_assert_int_eq(found.cloth_length, 0);
}
END_TEST

START_TEST(nothing_wanted_needs_no_fabric)
{
    struct muslin_substitution found = instead(NULL, sizeof(struct muslin_cutlist_piece_spec), 0, fat_quarters(0), 8);
    ck_assert_int_eq(found.possible, 1);
    ck_assert_int_eq(found.enough, 1);
    ck_assert_int_eq(found.fabrics, 0);
    ck_assert_int_eq(found.per_fabric_least, 0);
    ck_assert_uint_eq(found.warnings, 0);
    found = instead(NULL, 0, 0, stock_of(MUSLIN_STOCK_YARDAGE, 1, 1, 0), 1);
    ck_assert_int_eq(found.enough, 1);
    ck_assert_int_eq(found.fabrics, 0);
}
END_TEST

static void ck_prints_refused(struct muslin_stock_spec stock, int64_t prints, int64_t limit)
{
    struct muslin_substitution found = { .size = (uint32_t)sizeof found, .fabrics = -7 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_cutlist_substitute(ROWS(half_strips), &stock, prints, &found, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PRINTS);
    ck_assert_int_eq(problem.value, prints);
    ck_assert_int_eq(problem.limit, limit);
    ck_assert_int_eq(found.fabrics, -7);
}

START_TEST(prints_are_at_least_one_and_of_yardage_just_one)
{
    const struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, WHOLE_IN(42), WHOLE_IN(36), 1);
    ck_prints_refused(fat_quarters(1), 0, 1);
    ck_prints_refused(fat_quarters(1), MUSLIN_COUNT_MAX + 1, MUSLIN_COUNT_MAX);
    ck_prints_refused(cloth, 0, 1);
    ck_prints_refused(cloth, 2, 1);
    ck_assert_int_eq(instead(ROWS(half_strips), fat_quarters(1), MUSLIN_COUNT_MAX).fabrics, 12);
}
END_TEST

START_TEST(a_substitute_longer_than_the_longest_length_is_refused)
{
    const struct muslin_cutlist_piece_spec rows[] = { CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX),
                                            CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX),
                                            CUTS(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX) };
    const struct muslin_stock_spec cloth = stock_of(MUSLIN_STOCK_YARDAGE, MUSLIN_SIZE_MAX, 1, 1);
    struct muslin_substitution found = { .size = (uint32_t)sizeof found, .fabrics = -7 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_cutlist_substitute(ROWS(rows), &cloth, 1, &found, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.at, 2);
    ck_assert_int_eq(found.fabrics, -7);
}
END_TEST

/* ---- rules ------------------------------------------------------------------------------------------------------ */

START_TEST(stock_rows_are_asked_and_then_filled)
{
    const struct muslin_stock_spec stock = ten_inch_squares(1);
    struct muslin_cutlist_row found[2];
    size_t count = 77;
    memset(found, FILL, sizeof found);
    ck_ok(muslin_cutlist_stock_rows(ROWS(kit), &stock, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_status(muslin_cutlist_stock_rows(ROWS(kit), &stock, found, sizeof found[0], 1, &count, NULL),
              MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(found[0].size, 0xA5A5A5A5u);
    ck_ok(muslin_cutlist_stock_rows(ROWS(kit), &stock, found, sizeof found[0], 2, &count, NULL));
    ck_assert_uint_eq(found[1].size, sizeof found[1]);
    ck_status(muslin_cutlist_stock_rows(ROWS(kit), &stock, found, sizeof found[0], 2, NULL, NULL), MUSLIN_ERR_NULL);
}
END_TEST

/* The kit: two strips of 5 in from the first square, one of 2 1/2 in from the second; five lists: 10 and 5 strips. */
START_TEST(parts_and_rows_of_several_lists_are_asked_and_then_filled)
{
    const struct muslin_stock_spec stock = ten_inch_squares(7);
    struct muslin_cutlist_part parts[2];
    struct muslin_cutlist_row found[2];
    size_t count = 77;
    memset(parts, FILL, sizeof parts);
    memset(found, FILL, sizeof found);
    ck_ok(muslin_cutlist_stock_parts(ROWS(kit), &stock, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_status(muslin_cutlist_stock_parts(ROWS(kit), &stock, parts, sizeof parts[0], 1, &count, NULL),
              MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(parts[0].size, 0xA5A5A5A5u);
    ck_ok(muslin_cutlist_stock_parts(ROWS(kit), &stock, parts, sizeof parts[0], 2, &count, NULL));
    ck_part(parts[1], 1, 1, 2, 2, 0);
    ck_status(muslin_cutlist_stock_parts(ROWS(kit), &stock, parts, sizeof parts[0], 2, NULL, NULL), MUSLIN_ERR_NULL);
    ck_ok(muslin_cutlist_lists_rows(ROWS(kit), &stock, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_status(muslin_cutlist_lists_rows(ROWS(kit), &stock, found, sizeof found[0], 1, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(found[0].size, 0xA5A5A5A5u);
    ck_ok(muslin_cutlist_lists_rows(ROWS(kit), &stock, found, sizeof found[0], 2, &count, NULL));
    ck_assert_int_eq(found[0].strips, 10);
    ck_assert_int_eq(found[1].strips, 5);
    ck_assert_int_eq(found[1].last_stock, 7);
    ck_status(muslin_cutlist_lists_rows(ROWS(kit), &stock, found, sizeof found[0], 2, NULL, NULL), MUSLIN_ERR_NULL);
}
END_TEST

static const struct muslin_stock_spec good_stock = { (uint32_t)sizeof good_stock, 0, WHOLE_IN(22), WHOLE_IN(18), 9, 100,
                                                     MUSLIN_EDGE_PINKED_TIPS, MUSLIN_CARE_WASHED,
                                                     MUSLIN_PRINT_ONE_WAY, MUSLIN_STOCK_FAT_QUARTER };

static muslin_status list_to_stock(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                   struct muslin_problem *problem)
{
    struct muslin_cutlist_stock all = { .size = (uint32_t)sizeof all };
    return muslin_cutlist_from_stock(rows, row_size, n, &good_stock, &all, problem);
}
static muslin_status list_to_stock_rows(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                        struct muslin_problem *problem)
{
    size_t count = 0;
    return muslin_cutlist_stock_rows(rows, row_size, n, &good_stock, NULL, 0, 0, &count, problem);
}
static muslin_status list_to_lists(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                  struct muslin_problem *problem)
{
    struct muslin_cutlist_lists lists = { .size = (uint32_t)sizeof lists };
    return muslin_cutlist_lists_from_stock(rows, row_size, n, &good_stock, &lists, problem);
}
static muslin_status list_to_parts(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                   struct muslin_problem *problem)
{
    size_t count = 0;
    return muslin_cutlist_stock_parts(rows, row_size, n, &good_stock, NULL, 0, 0, &count, problem);
}
static muslin_status list_to_lists_rows(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                       struct muslin_problem *problem)
{
    size_t count = 0;
    return muslin_cutlist_lists_rows(rows, row_size, n, &good_stock, NULL, 0, 0, &count, problem);
}
static muslin_status list_to_substitute(const struct muslin_cutlist_piece_spec *rows, size_t row_size, size_t n,
                                        struct muslin_problem *problem)
{
    struct muslin_substitution found = { .size = (uint32_t)sizeof found };
    return muslin_cutlist_substitute(rows, row_size, n, &good_stock, 3, &found, problem);
}

static muslin_status call_stock(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_cutlist_from_stock(ROWS(kit), spec, out, problem);
}
static muslin_status call_lists(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_cutlist_lists_from_stock(ROWS(kit), spec, out, problem);
}
static muslin_status call_substitute(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_cutlist_substitute(ROWS(kit), spec, 3, out, problem);
}
static const struct ruled ruled_calls[] = { RULED(call_stock, good_stock, muslin_cutlist_stock),
                                            RULED(call_lists, good_stock, muslin_cutlist_lists),
                                            RULED(call_substitute, good_stock, muslin_substitution) };

static const struct refusal stock_refusals[] = {
    OUTSIDE(muslin_stock_spec, width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
    OUTSIDE(muslin_stock_spec, length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CLOTH_LENGTH),
    OUTSIDE(muslin_stock_spec, count, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_PIECES),
    OUTSIDE(muslin_stock_spec, pink_depth, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_PINK_DEPTH),
    NOT_A_CHOICE(muslin_stock_spec, care, MUSLIN_CARE_WASHED, MUSLIN_ARG_CARE_STATE),
    NOT_A_CHOICE(muslin_stock_spec, print, MUSLIN_PRINT_STRIPE_ACROSS, MUSLIN_ARG_PRINT_DIRECTION),
    NOT_A_CHOICE(muslin_stock_spec, kind, MUSLIN_STOCK_FAT_EIGHTH, MUSLIN_ARG_STOCK_KIND),
};

START_TEST(stock_calls_check_their_structs_rows_and_values)
{
    for (size_t i = 0; i < COUNT_OF(ruled_calls); i++) {
        ck_struct_rules(&ruled_calls[i]);
        ck_no_flag_known(&ruled_calls[i]);
        ck_refusals(&ruled_calls[i], stock_refusals, COUNT_OF(stock_refusals));
    }
    ck_list_rules(list_to_stock);
    ck_list_rules(list_to_stock_rows);
    ck_list_rules(list_to_parts);
    ck_list_rules(list_to_lists);
    ck_list_rules(list_to_lists_rows);
    ck_list_rules(list_to_substitute);
}
END_TEST

void add_cutlist_stock_tests(Suite *suite)
{
    TCase *stock = tcase_create("stock");
    tcase_add_test(stock, what_is_left_of_the_last_square_gives_pieces_too);
    tcase_add_test(stock, eighty_half_strips_come_from_twelve_fat_quarters);
    tcase_add_test(stock, a_ten_inch_square_gives_four_or_sixteen);
    tcase_add_test(stock, a_new_size_goes_on_where_the_last_one_left_off);
    tcase_add_test(stock, parts_say_how_many_strips_come_from_which);
    tcase_add_test(stock, as_cut_the_fullest_piece_of_stock_counts);
    tcase_add_test(stock, three_sizes_fill_three_fat_quarters);
    tcase_add_test(stock, lower_pieces_from_a_strip_are_trimmed);
    tcase_add_test(stock, rows_are_turned_when_they_end_earlier);
    tcase_add_test(stock, a_cloth_is_a_piece_of_stock_too);
    tcase_add_test(stock, nothing_wanted_takes_no_stock);
    tcase_add_test(stock, a_piece_larger_than_the_stock_is_named);
    tcase_add_test(stock, the_largest_request_fits);
    tcase_add_test(stock, stock_rows_are_asked_and_then_filled);
    tcase_add_test(stock, parts_and_rows_of_several_lists_are_asked_and_then_filled);
    tcase_add_test(stock, stock_calls_check_their_structs_rows_and_values);
    suite_add_tcase(suite, stock);
    TCase *often = tcase_create("how often");
    tcase_add_test(often, ten_squares_give_the_list_eight_times);
    tcase_add_test(often, larger_stock_has_slack);
    tcase_add_test(often, the_rows_of_several_lists_are_cut_together);
    tcase_add_test(often, too_little_stock_gives_no_list);
    tcase_add_test(often, a_list_of_nothing_comes_from_anything_too_often_to_say);
    tcase_add_test(often, more_lists_than_a_count_are_refused);
    suite_add_tcase(suite, often);
    TCase *others = tcase_create("substitutes");
    tcase_add_test(others, fat_quarters_of_eight_prints_show_eight_fabrics);
    tcase_add_test(others, yardage_shows_one_fabric);
    tcase_add_test(others, yardage_that_is_just_enough_is_said_to_be);
    tcase_add_test(others, pieces_that_may_turn_come_from_strips_cut_across);
    tcase_add_test(others, a_row_that_does_not_fit_makes_a_substitute_impossible);
    tcase_add_test(others, nothing_wanted_needs_no_fabric);
    tcase_add_test(others, prints_are_at_least_one_and_of_yardage_just_one);
    tcase_add_test(others, a_substitute_longer_than_the_longest_length_is_refused);
    suite_add_tcase(suite, others);
}
