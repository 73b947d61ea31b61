/* test_motif.c - pieces that need a window on a printed repeat, and stacks of identical layers: published figures,
 * sums that anyone can check, and windows laid one by one.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

/* ---- windows ---------------------------------------------------------------------------------------------------- */

/* Windows of cut_width x cut_length on a print that repeats every repeat_length along and repeat_width across. */
static struct muslin_motif_spec windows_of(muslin_len cut_width, muslin_len cut_length, muslin_len repeat_width,
                                           muslin_len repeat_length, int64_t pieces)
{
    struct muslin_motif_spec spec = MUSLIN_MOTIF_SPEC_INIT;
    spec.cut_width = cut_width;
    spec.cut_length = cut_length;
    spec.repeat_width = repeat_width;
    spec.repeat_length = repeat_length;
    spec.pieces = pieces;
    return spec;
}

static struct muslin_motif planned(const struct muslin_motif_spec *spec)
{
    struct muslin_motif motif = { .size = (uint32_t)sizeof motif };
    ck_ok(muslin_motif_plan(spec, &motif, NULL));
    return motif;
}

static struct muslin_motif_yield gives(const struct muslin_motif_spec *spec, muslin_len cloth_length)
{
    struct muslin_motif_yield yield = { .size = (uint32_t)sizeof yield };
    ck_ok(muslin_motif_from_cloth(spec, cloth_length, &yield, NULL));
    return yield;
}

/* "Figuring pattern repeats" (home magazine how-to): 96 / 27 = 3.6, 4 repeats, 108 in, 12 in wasted; one repeat more on
 * the whole order. Of the last repeat of three such pieces 12 in lie behind the window: 351 - 12 = 339 in.
 * Example: pieces 96 in long, repeat 27 in: 4 repeats, 108 in, 12 in wasted.
 * Example: three of them from a cloth that begins anywhere: 13 repeats, 351 in; 339 in are enough. */
START_TEST(a_length_of_ninety_six_takes_four_repeats_of_twenty_seven)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(40), WHOLE_IN(96), 0, WHOLE_IN(27), 1);
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.repeats_across_each, 1);
    ck_assert_int_eq(motif.repeats_along_each, 4);
    ck_assert_int_eq(motif.per_row, 1);
    ck_assert_int_eq(motif.repeats, 4);
    ck_assert_int_eq(motif.row_length, WHOLE_IN(108));
    ck_assert_int_eq(motif.waste_per_row, WHOLE_IN(12));
    ck_assert_int_eq(motif.shift, 0);
    ck_assert_int_eq(motif.cloth_length, WHOLE_IN(108));
    ck_assert_int_eq(motif.narrower_by, 0);
    ck_assert_int_eq(motif.wider_for_less, 0);
    ck_assert_int_eq(motif.wider_rows, 0);
    ck_assert_int_eq(motif.per_row_certain, 1);
    ck_assert_int_eq(motif.per_row_lucky, 1);
    ck_assert_int_eq(motif.cloth_certain, WHOLE_IN(108));
    ck_assert_int_eq(motif.cloth_lucky, WHOLE_IN(108));
    ck_assert_int_eq(motif.lucky_within, 0);
    ck_assert_int_eq(motif.repeats_bought, 4);
    spec.usable_width = WHOLE_IN(45); /* how the print lies in it is not known */
    ck_assert_int_eq(planned(&spec).lucky_within, 0);
    spec.usable_width = WHOLE_IN(40);
    ck_assert_int_eq(motif.cloth_least, WHOLE_IN(108));
    ck_assert_uint_eq(motif.warnings, MUSLIN_WARN_NO_SLACK); /* the window is as wide as the cloth */
    spec.flags = MUSLIN_MOTIF_ANY_START;
    motif = planned(&spec);
    ck_assert_int_eq(motif.repeats_bought, 5);
    ck_assert_int_eq(motif.shift, WHOLE_IN(27));
    ck_assert_int_eq(motif.cloth_length, WHOLE_IN(135));
    spec.pieces = 3;
    ck_assert_int_eq(planned(&spec).cloth_length, 3 * WHOLE_IN(108) + WHOLE_IN(27));
    ck_assert_int_eq(planned(&spec).wider_for_less, 0);
    ck_assert_int_eq(planned(&spec).repeats_bought, 13);
    ck_assert_int_eq(planned(&spec).cloth_least, WHOLE_IN(339));
    ck_assert_int_eq(gives(&spec, WHOLE_IN(339)).pieces, 3);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(339) - 1).pieces, 2);
    spec.usable_width++;
    ck_assert_uint_eq(planned(&spec).warnings, 0);
}
END_TEST

/* Windows that share a repeat may lie anywhere in it: 20 of them, 8 a row, take 3 whole rows and the shift. */
START_TEST(of_a_repeat_with_several_windows_nothing_is_left_out)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    spec.flags = MUSLIN_MOTIF_ANY_START;
    spec.motifs = 4;
    ck_assert_int_eq(planned(&spec).cloth_least, WHOLE_IN(48));
    ck_assert_int_eq(gives(&spec, WHOLE_IN(48)).rows, 3);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(48) - 1).rows, 2);
}
END_TEST

/* Along the cloth it begins with a repeat, across anywhere: 2 a row, 10 rows of 12 in and no repeat more; 20 windows 2
 * a row still lie in 12 + 6 + 12 = 30 in, and 3 a row in 42. */
START_TEST(a_cloth_cut_where_a_repeat_begins_may_begin_anywhere_across)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    spec.flags = MUSLIN_MOTIF_ANY_ACROSS;
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.per_row, 2);
    ck_assert_int_eq(motif.rows, 10);
    ck_assert_int_eq(motif.shift, 0);
    ck_assert_int_eq(motif.cloth_length, WHOLE_IN(120));
    ck_assert_int_eq(motif.cloth_least, WHOLE_IN(120));
    ck_assert_int_eq(motif.narrower_by, WHOLE_IN(10));
    ck_assert_int_eq(motif.wider_for_less, WHOLE_IN(2));
    ck_assert_int_eq(motif.wider_rows, 7);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(108)).pieces, 18);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(108)).longer_for_one, WHOLE_IN(12));
}
END_TEST

/* 40 / 12 = 3.3, so 3 a row; 20 windows take 7 rows and leave one; 7 rows of 12 in. Three repeats are 36 in. With 4 a
 * row, from 48 in, 5 rows do; with 6 rows less than 4 a row do not. Three windows reach over 2 x 12 + 6 = 30 in, so
 * the first must begin within 10 in; else it is 2 a row, 10 rows. Example: 20 windows 6 in square, a print that
 * repeats every 12 in each way, 40 in usable: 3 a row if the first begins within 10 in of the edge, 7 rows, but 2 are
 * certain, 10 rows. */
START_TEST(twenty_windows_come_from_seven_repeats)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.per_row, 3);
    ck_assert_int_eq(motif.rows, 7);
    ck_assert_int_eq(motif.repeats, 7);
    ck_assert_int_eq(motif.spare_pieces, 1);
    ck_assert_int_eq(motif.waste_per_row, WHOLE_IN(6));
    ck_assert_int_eq(motif.cloth_length, WHOLE_IN(84));
    ck_assert_int_eq(motif.narrower_by, WHOLE_IN(4));
    ck_assert_int_eq(motif.wider_for_less, WHOLE_IN(8));
    ck_assert_int_eq(motif.wider_rows, 5);
    ck_assert_int_eq(motif.repeats_bought, 7);
    ck_assert_int_eq(motif.per_row_certain, 2);
    ck_assert_int_eq(motif.rows_certain, 10);
    ck_assert_int_eq(motif.cloth_certain, WHOLE_IN(120));
    ck_assert_int_eq(motif.per_row_lucky, 3);
    ck_assert_int_eq(motif.rows_lucky, 7);
    ck_assert_int_eq(motif.cloth_lucky, WHOLE_IN(84));
    ck_assert_int_eq(motif.lucky_within, WHOLE_IN(10));
    ck_assert_uint_eq(motif.warnings, 0);
    spec.usable_width = WHOLE_IN(36);
    motif = planned(&spec);
    ck_assert_int_eq(motif.narrower_by, 0);
    ck_assert_uint_eq(motif.warnings, MUSLIN_WARN_NO_SLACK);
}
END_TEST

/* Four windows to a repeat of 12 in: 12 a row, 20 windows in 2 rows; 8 a row, from 24 in, are not enough, but 10 would
 * be: 3 columns stay. One row needs 5 columns, 60 in. */
START_TEST(a_repeat_may_hold_several_windows)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    spec.motifs = 4;
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.per_row, 12);
    ck_assert_int_eq(motif.rows, 2);
    ck_assert_int_eq(motif.spare_pieces, 4);
    ck_assert_int_eq(motif.narrower_by, WHOLE_IN(4));
    ck_assert_int_eq(motif.wider_for_less, WHOLE_IN(20));
    ck_assert_int_eq(motif.wider_rows, 1);
    ck_assert_int_eq(motif.per_row_certain, 8);
    ck_assert_int_eq(motif.rows_certain, 3);
    ck_assert_int_eq(motif.per_row_lucky, 12);
}
END_TEST

/* A window of 8 in on a repeat of 5 in takes two of them each way: 10 in; 4 in 40 in; 9 windows in 3 rows of 10 in. */
START_TEST(a_window_larger_than_the_repeat_takes_several)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(8), WHOLE_IN(8), WHOLE_IN(5), WHOLE_IN(5), 9);
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.repeats_across_each, 2);
    ck_assert_int_eq(motif.repeats_along_each, 2);
    ck_assert_int_eq(motif.per_row, 4);
    ck_assert_int_eq(motif.rows, 3);
    ck_assert_int_eq(motif.repeats, 6);
    ck_assert_int_eq(motif.row_length, WHOLE_IN(10));
    ck_assert_int_eq(motif.waste_per_row, WHOLE_IN(2));
    ck_assert_int_eq(motif.cloth_length, WHOLE_IN(30));
    ck_assert_int_eq(gives(&spec, WHOLE_IN(39)).repeats, 6);
}
END_TEST

/* The windows that lie whole in the width when the print begins `offset` in from the selvage, one after the other. */
static int64_t laid(muslin_len usable, muslin_len cut, muslin_len step, muslin_len offset)
{
    int64_t windows = 0;
    for (muslin_len left = offset; left + cut <= usable; left += step)
        windows++;
    return windows;
}

/* Wherever the first window begins within a repeat, so many are whole; and with some beginning no more are. */
START_TEST(what_is_sure_is_the_least_of_all_beginnings)
{
    int good = 1;
    for (muslin_len repeat = 1; repeat <= 9; repeat++)
        for (muslin_len cut = 1; cut <= 12; cut++)
            for (muslin_len usable = repeat + cut; usable <= 40; usable++) {
                struct muslin_motif_spec spec = windows_of(cut, 1, repeat, 1, 1);
                int64_t step = (cut + repeat - 1) / repeat * repeat;
                int64_t sure = INT64_MAX;
                spec.usable_width = usable;
                spec.flags = MUSLIN_MOTIF_ANY_START;
                for (muslin_len offset = 1; offset <= repeat; offset++) {
                    int64_t windows = laid(usable, cut, step, offset);
                    sure = windows < sure ? windows : sure;
                }
                good &= planned(&spec).per_row == sure;
            }
    ck_assert(good);
}
END_TEST

/* The first whole window begins `offset` in from the edge: as many as are lucky lie in the row when that is within the
 * figure said, and fewer else; the certain ones always do, whatever the flags are. */
START_TEST(certain_and_lucky_are_the_least_and_most_of_all_beginnings)
{
    int good = 1;
    for (muslin_len repeat = 1; repeat <= 9; repeat++)
        for (muslin_len cut = 1; cut <= 12; cut++) {
            int64_t step = (cut + repeat - 1) / repeat * repeat;
            for (muslin_len usable = step; usable <= 40; usable++) {
                struct muslin_motif_spec spec = windows_of(cut, 1, repeat, 1, 1);
                int64_t sure = INT64_MAX;
                spec.usable_width = usable;
                struct muslin_motif motif = planned(&spec);
                for (muslin_len offset = 0; offset <= repeat; offset++) {
                    int64_t windows = laid(usable, cut, step, offset);
                    sure = windows < sure ? windows : sure;
                    good &= (windows == motif.per_row_lucky) == (offset <= motif.lucky_within);
                    good &= windows <= motif.per_row_lucky;
                }
                good &= motif.per_row_certain == sure;
                good &= motif.rows_certain == (sure != 0);
            }
        }
    ck_assert(good);
}
END_TEST

/* 14 in hold one repeat of 12 in, but a window of 6 in is certain only from 18 in on. */
START_TEST(a_narrow_cloth_gives_no_certain_window)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 3);
    spec.usable_width = WHOLE_IN(14);
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.per_row, 1);
    ck_assert_int_eq(motif.per_row_certain, 0);
    ck_assert_int_eq(motif.rows_certain, 0);
    ck_assert_int_eq(motif.cloth_certain, 0);
    ck_assert_int_eq(motif.rows_lucky, 3);
    ck_assert_int_eq(motif.lucky_within, WHOLE_IN(8));
    ck_assert_int_eq(gives(&spec, WHOLE_IN(24)).pieces_certain, 0);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(24)).pieces_lucky, 2);
}
END_TEST

/* 12 + 6 in for the first window, then 12 each: 2 more from 42 in, so at 40 in 2 a row; the least width is 18 in. */
START_TEST(a_print_that_begins_anywhere_gives_fewer)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_motif motif = { .size = (uint32_t)sizeof motif };
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    spec.flags = MUSLIN_MOTIF_ANY_START;
    struct muslin_motif sure = planned(&spec);
    ck_assert_int_eq(sure.per_row, 2);
    ck_assert_int_eq(sure.rows, 10);
    ck_assert_int_eq(sure.shift, WHOLE_IN(12));
    ck_assert_int_eq(sure.cloth_length, WHOLE_IN(132));
    ck_assert_int_eq(sure.cloth_least, WHOLE_IN(126));
    ck_assert_int_eq(sure.narrower_by, WHOLE_IN(10));
    ck_assert_int_eq(sure.wider_for_less, WHOLE_IN(2));
    ck_assert_int_eq(sure.wider_rows, 7);
    ck_assert_int_eq(sure.repeats_bought, 11);
    ck_assert_int_eq(sure.cloth_certain, WHOLE_IN(132));
    ck_assert_int_eq(sure.rows_lucky, 7);
    ck_assert_int_eq(sure.cloth_lucky, WHOLE_IN(96));
    spec.usable_width = WHOLE_IN(18) - 1;
    ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(18) - 1);
    ck_assert_int_eq(problem.limit, WHOLE_IN(18));
    spec.usable_width = WHOLE_IN(18);
    ck_assert_int_eq(planned(&spec).per_row, 1);
}
END_TEST

START_TEST(nothing_wanted_takes_nothing)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 0);
    spec.flags = MUSLIN_MOTIF_ANY_START;
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.rows, 0);
    ck_assert_int_eq(motif.shift, 0);
    ck_assert_int_eq(motif.cloth_length, 0);
    ck_assert_int_eq(motif.cloth_least, 0);
    ck_assert_int_eq(motif.repeats_bought, 0);
    ck_assert_int_eq(motif.cloth_certain, 0);
    ck_assert_int_eq(motif.cloth_lucky, 0);
    ck_assert_int_eq(motif.narrower_by, 0);
    ck_assert_int_eq(motif.wider_for_less, 0);
    ck_assert_int_eq(motif.wider_rows, 0);
    ck_assert_uint_eq(motif.warnings, 0);
}
END_TEST

START_TEST(a_cloth_too_narrow_for_a_window_gives_none)
{
    const muslin_len repeats[] = { 0, WHOLE_IN(5) };
    const muslin_len least[] = { WHOLE_IN(8), WHOLE_IN(10) };
    for (int i = 0; i < 2; i++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_motif motif = { .size = (uint32_t)sizeof motif, .rows = -7 };
        struct muslin_motif_yield yield = { .size = (uint32_t)sizeof yield, .rows = -7 };
        struct muslin_motif_spec spec = windows_of(WHOLE_IN(8), WHOLE_IN(8), repeats[i], WHOLE_IN(5), 1);
        spec.usable_width = least[i] - 1;
        ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_NO_YIELD);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
        ck_assert_int_eq(problem.value, least[i] - 1);
        ck_assert_int_eq(problem.limit, least[i]);
        ck_status(muslin_motif_from_cloth(&spec, WHOLE_IN(40), &yield, NULL), MUSLIN_ERR_NO_YIELD);
        ck_assert_int_eq(motif.rows, -7);
        ck_assert_int_eq(yield.rows, -7);
        spec.usable_width = least[i];
        ck_assert_int_eq(planned(&spec).per_row, 1);
    }
}
END_TEST

/* Four windows of 6 in square are all that a repeat of 12 in square holds. */
START_TEST(windows_larger_than_the_print_they_come_from_are_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_motif motif = { .size = (uint32_t)sizeof motif };
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 20);
    spec.motifs = 5;
    ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MOTIFS);
    ck_assert_int_eq(problem.value, 5);
    ck_assert_int_eq(problem.limit, 4);
    ck_assert_str_eq(problem.text, "Windows from a repeat is 5, but must be at most 4.");
    spec = windows_of(WHOLE_IN(10), WHOLE_IN(10), 0, WHOLE_IN(10), 20);
    spec.motifs = 4;
    ck_assert_int_eq(planned(&spec).per_row, 4);
    spec.motifs = 5;
    ck_status(muslin_motif_plan(&spec, &motif, NULL), MUSLIN_ERR_RANGE);
}
END_TEST

/* (2^31 - 1) rows of two repeats of 2^30 - 1 ticks, since 2^30 ticks reach over one. */
START_TEST(the_largest_request_fits)
{
    struct muslin_motif_spec spec = windows_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX - 1,
                                               MUSLIN_COUNT_MAX);
    spec.usable_width = MUSLIN_SIZE_MAX;
    struct muslin_motif motif = planned(&spec);
    ck_assert_int_eq(motif.rows, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(motif.row_length, 2 * MUSLIN_SIZE_MAX - 2);
    ck_assert_int_eq(motif.cloth_length, MUSLIN_COUNT_MAX * (2 * MUSLIN_SIZE_MAX - 2));
    ck_assert_int_eq(motif.wider_for_less, MUSLIN_SIZE_MAX);
    spec = windows_of(1, 1, 1, 1, MUSLIN_COUNT_MAX);
    spec.usable_width = MUSLIN_SIZE_MAX;
    motif = planned(&spec);
    ck_assert_int_eq(motif.per_row, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(motif.rows, 2);
    ck_assert_int_eq(gives(&spec, MUSLIN_SIZE_MAX).pieces, MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
}
END_TEST

/* Example: a print that repeats every 12 in each way, windows 6 in square, 40 in usable, 3 yd: 27 windows. */
START_TEST(three_yards_give_twenty_seven_windows)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 0);
    struct muslin_motif_yield yield = gives(&spec, WHOLE_IN(108));
    ck_assert_int_eq(yield.pieces, 27);
    ck_assert_int_eq(yield.pieces_certain, 18);
    ck_assert_int_eq(yield.pieces_lucky, 27);
    ck_assert_int_eq(yield.rows, 9);
    ck_assert_int_eq(yield.repeats, 9);
    ck_assert_int_eq(yield.left_over, 0);
    ck_assert_int_eq(yield.shorter_by, 0);
    ck_assert_int_eq(yield.longer_for_one, WHOLE_IN(12));
    ck_assert_uint_eq(yield.warnings, MUSLIN_WARN_NO_SLACK);
    spec.flags = MUSLIN_MOTIF_ANY_START; /* 2 a row; 108 - 12 = 96 in hold 8 rows, 102 would 9 */
    ck_assert_int_eq(gives(&spec, WHOLE_IN(108)).pieces, 16);
}
END_TEST

START_TEST(a_short_cloth_gives_no_window)
{
    struct muslin_motif_spec spec = windows_of(WHOLE_IN(6), WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(12), 0);
    struct muslin_motif_yield yield = gives(&spec, WHOLE_IN(11));
    ck_assert_int_eq(yield.pieces, 0);
    ck_assert_int_eq(yield.left_over, WHOLE_IN(11));
    ck_assert_int_eq(yield.shorter_by, 0);
    ck_assert_int_eq(yield.longer_for_one, WHOLE_IN(1));
    ck_assert_uint_eq(yield.warnings, 0);
    spec.flags = MUSLIN_MOTIF_ANY_START;
    yield = gives(&spec, WHOLE_IN(11));
    ck_assert_int_eq(yield.left_over, 0);
    ck_assert_int_eq(yield.longer_for_one, WHOLE_IN(7)); /* 12 for the start and 6 for the window are 18 in */
    ck_assert_int_eq(gives(&spec, 0).pieces, 0);
    yield = gives(&spec, WHOLE_IN(17));
    ck_assert_int_eq(yield.rows, 0);
    ck_assert_int_eq(yield.left_over, WHOLE_IN(5));
    yield = gives(&spec, WHOLE_IN(25));
    ck_assert_int_eq(yield.pieces, 2);
    ck_assert_int_eq(yield.shorter_by, WHOLE_IN(7));
    ck_assert_int_eq(yield.longer_for_one, WHOLE_IN(5));
    ck_assert_uint_eq(yield.warnings, 0);
    spec.pieces = 1;
    ck_assert_int_eq(planned(&spec).cloth_least, WHOLE_IN(18));
    spec.cut_length = WHOLE_IN(4);
    ck_assert_int_eq(gives(&spec, WHOLE_IN(25)).left_over, WHOLE_IN(9)); /* 25 - 12 - 4 */
}
END_TEST

static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_motif_plan(spec, out, problem);
}
static muslin_status call_from_cloth(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_motif_from_cloth(spec, WHOLE_IN(100), out, problem);
}
static const struct muslin_motif_spec good_motif = {
    (uint32_t)sizeof good_motif, MUSLIN_MOTIF_ANY_START, WHOLE_IN(12), WHOLE_IN(10), WHOLE_IN(40), WHOLE_IN(6),
    WHOLE_IN(8), 1, 20
};
static const struct ruled plan = RULED(call_plan, good_motif, muslin_motif);
static const struct ruled from_cloth = RULED(call_from_cloth, good_motif, muslin_motif_yield);

static const struct refusal motif_refusals[] = {
    OUTSIDE(muslin_motif_spec, repeat_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_REPEAT),
    OUTSIDE(muslin_motif_spec, repeat_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_REPEAT),
    OUTSIDE(muslin_motif_spec, usable_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
    OUTSIDE(muslin_motif_spec, cut_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CUT),
    OUTSIDE(muslin_motif_spec, cut_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CUT),
    OUTSIDE(muslin_motif_spec, motifs, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_MOTIFS),
    OUTSIDE(muslin_motif_spec, pieces, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_PIECES),
};

START_TEST(windows_check_their_structs_and_values)
{
    const struct ruled *const ruled[] = { &plan, &from_cloth };
    for (int i = 0; i < 2; i++) {
        ck_struct_rules(ruled[i]);
        ck_refusals(ruled[i], motif_refusals, COUNT_OF(motif_refusals));
    }
}
END_TEST

/* The problem tells two sizes of one name apart. */
START_TEST(a_problem_says_which_of_two_sizes_is_wrong)
{
    struct muslin_motif motif = { .size = (uint32_t)sizeof motif };
    struct muslin_motif_yield yield = { .size = (uint32_t)sizeof yield };
    struct muslin_problem problem = PROBLEM;
    struct muslin_motif_spec spec = good_motif;
    spec.cut_length = 0;
    ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    spec.cut_width = 0;
    ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 0);
    spec = good_motif;
    spec.repeat_width = -1;
    ck_status(muslin_motif_plan(&spec, &motif, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_motif_from_cloth(&good_motif, -1, &yield, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CLOTH_LENGTH);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_motif_from_cloth(&good_motif, MUSLIN_SIZE_MAX + 1, &yield, NULL), MUSLIN_ERR_RANGE);
}
END_TEST

/* ---- identical layers ------------------------------------------------------------------------------------------- */

static struct muslin_stack_spec stacks_of(int64_t stacks, int64_t layers, int64_t per_strip, muslin_len strip_cut,
                                          muslin_len repeat_length)
{
    struct muslin_stack_spec spec = MUSLIN_STACK_SPEC_INIT;
    spec.stacks = stacks;
    spec.layers = layers;
    spec.per_strip = per_strip;
    spec.strip_cut = strip_cut;
    spec.repeat_length = repeat_length;
    return spec;
}

static struct muslin_stack stacked(const struct muslin_stack_spec *spec)
{
    struct muslin_stack stack = { .size = (uint32_t)sizeof stack };
    ck_ok(muslin_stack_plan(spec, &stack, NULL));
    return stack;
}

/* Example: 40 stacks of 6, 10 from each strip cut 3 in, repeat 24 in: 4 strips, the first 12 in of each layer, 1
 * repeat a layer, 6 repeats, 4 yd. */
START_TEST(forty_stacks_of_six_come_from_six_repeats)
{
    struct muslin_stack_spec spec = stacks_of(40, 6, 10, WHOLE_IN(3), WHOLE_IN(24));
    struct muslin_stack stack = stacked(&spec);
    ck_assert_int_eq(stack.strips, 4);
    ck_assert_int_eq(stack.repeats_per_layer, 1);
    ck_assert_int_eq(stack.repeats, 6);
    ck_assert_int_eq(stack.layer_length, WHOLE_IN(24));
    ck_assert_int_eq(stack.used_length, WHOLE_IN(12));
    ck_assert_int_eq(stack.repeats_bought, 6);
    ck_assert_int_eq(stack.cloth_length, WHOLE_IN(144));
    ck_assert_int_eq(stack.pieces, 240);
    ck_assert_int_eq(stack.strips_in_layers, 8); /* 24 / 3 */
    ck_assert_int_eq(stack.spare_stacks, 40);
    ck_assert_int_eq(stack.left_over, 0);
    ck_assert_int_eq(stack.shorter_by, WHOLE_IN(12));
    ck_assert_int_eq(stack.shift, 0);
    ck_assert_uint_eq(stack.warnings, 0);
    spec.flags = MUSLIN_STACK_ANY_START;
    ck_assert_int_eq(stacked(&spec).cloth_length, WHOLE_IN(168));
    ck_assert_int_eq(stacked(&spec).repeats_bought, 7);
    ck_assert_int_eq(stacked(&spec).cloth_least, WHOLE_IN(156));
}
END_TEST

/* 1 in of straightening and 8 strips of 3 in are 25 in: a second repeat, in which 15 strips lie with 2 in left. */
START_TEST(straightening_may_take_a_repeat_more)
{
    struct muslin_stack_spec spec = stacks_of(80, 8, 10, WHOLE_IN(3), WHOLE_IN(24));
    ck_assert_int_eq(stacked(&spec).repeats_per_layer, 1);
    ck_assert_uint_eq(stacked(&spec).warnings, MUSLIN_WARN_NO_SLACK);
    spec.straightening = WHOLE_IN(1);
    struct muslin_stack stack = stacked(&spec);
    ck_assert_int_eq(stack.repeats_per_layer, 2);
    ck_assert_int_eq(stack.repeats, 16);
    ck_assert_int_eq(stack.used_length, WHOLE_IN(25));
    ck_assert_int_eq(stack.strips_in_layers, 15);
    ck_assert_int_eq(stack.left_over, WHOLE_IN(2));
    ck_assert_int_eq(stack.spare_stacks, 70);
    ck_assert_int_eq(stack.shorter_by, WHOLE_IN(23));
    ck_assert_uint_eq(stack.warnings, 0);
}
END_TEST

START_TEST(no_stack_takes_no_cloth)
{
    struct muslin_stack_spec spec = stacks_of(0, 6, 10, WHOLE_IN(3), WHOLE_IN(24));
    spec.flags = MUSLIN_STACK_ANY_START;
    spec.straightening = WHOLE_IN(1);
    struct muslin_stack stack = stacked(&spec);
    ck_assert_int_eq(stack.cloth_length, 0);
    ck_assert_int_eq(stack.used_length, 0);
    ck_assert_int_eq(stack.repeats_bought, 0);
    ck_assert_int_eq(stack.shift, 0);
    ck_assert_int_eq(stack.spare_stacks, 0);
    ck_assert_uint_eq(stack.warnings, 0);
}
END_TEST

/* 2^31 - 1 strips of 2^30 ticks are 2^61 - 2^30 in one layer and twice that in two; three are too long, and two with a
 * repeat of 2^30 on top just fit. */
START_TEST(cloth_beyond_the_longest_length_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_stack stack = { .size = (uint32_t)sizeof stack, .strips = -7 };
    struct muslin_stack_spec spec = stacks_of(MUSLIN_COUNT_MAX, 2, 1, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    spec.flags = MUSLIN_STACK_ANY_START;
    ck_assert_int_eq(stacked(&spec).cloth_length, 2 * MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX + MUSLIN_SIZE_MAX);
    spec.layers = 3;
    ck_status(muslin_stack_plan(&spec, &stack, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LAYERS);
    ck_assert_int_eq(problem.value, 3);
    ck_assert_int_eq(stack.strips, -7);
    /* The longest is 2^62 - 1 = (2^31 - 1)(2^31 + 1): 2^31 - 1 layers of 3 strips, of 715827883 each. */
    spec = stacks_of(3, MUSLIN_COUNT_MAX, 1, 715827883, 1);
    ck_assert_int_eq(stacked(&spec).cloth_length, MUSLIN_LENGTH_MAX);
    spec.straightening = 1;
    ck_status(muslin_stack_plan(&spec, &stack, NULL), MUSLIN_ERR_OVERFLOW);
    spec = stacks_of(MUSLIN_COUNT_MAX, 1, MUSLIN_COUNT_MAX, 1, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(stacked(&spec).spare_stacks, (MUSLIN_SIZE_MAX - 1) * MUSLIN_COUNT_MAX);
}
END_TEST

static muslin_status call_stack(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stack_plan(spec, out, problem);
}
static const struct muslin_stack_spec good_stack = {
    (uint32_t)sizeof good_stack, MUSLIN_STACK_ANY_START, WHOLE_IN(24), WHOLE_IN(3), 4064, 10, 6, 40
};
static const struct ruled stack_call = RULED(call_stack, good_stack, muslin_stack);

static const struct refusal stack_refusals[] = {
    OUTSIDE(muslin_stack_spec, repeat_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_REPEAT),
    OUTSIDE(muslin_stack_spec, strip_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),
    OUTSIDE(muslin_stack_spec, straightening, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
    OUTSIDE(muslin_stack_spec, per_strip, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STACKS_PER_STRIP),
    OUTSIDE(muslin_stack_spec, layers, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_LAYERS),
    OUTSIDE(muslin_stack_spec, stacks, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_STACKS),
};

START_TEST(stacks_check_their_structs_and_values)
{
    ck_struct_rules(&stack_call);
    ck_refusals(&stack_call, stack_refusals, COUNT_OF(stack_refusals));
}
END_TEST

INIT_CALL(motif)
INIT_CALL(stack)

START_TEST(initial_values_are_those_of_the_headers)
{
    const struct muslin_motif_spec motif = MUSLIN_MOTIF_SPEC_INIT;
    const struct muslin_stack_spec stack = MUSLIN_STACK_SPEC_INIT;
    ck_init_rules(init_motif, &motif, (uint32_t)sizeof motif);
    ck_init_rules(init_stack, &stack, (uint32_t)sizeof stack);
    ck_assert_int_eq(motif.usable_width, MUSLIN_USABLE_WIDTH_USUAL);
    ck_assert_int_eq(motif.motifs, 1);
    ck_assert_int_eq(stack.per_strip, 1);
    ck_assert_int_eq(stack.layers, 6);
}
END_TEST

Suite *motif_suite(void);

Suite *motif_suite(void)
{
    Suite *suite = suite_create("motif");
    TCase *windows = tcase_create("windows");
    tcase_add_test(windows, a_length_of_ninety_six_takes_four_repeats_of_twenty_seven);
    tcase_add_test(windows, of_a_repeat_with_several_windows_nothing_is_left_out);
    tcase_add_test(windows, a_cloth_cut_where_a_repeat_begins_may_begin_anywhere_across);
    tcase_add_test(windows, twenty_windows_come_from_seven_repeats);
    tcase_add_test(windows, a_repeat_may_hold_several_windows);
    tcase_add_test(windows, a_window_larger_than_the_repeat_takes_several);
    tcase_add_test(windows, what_is_sure_is_the_least_of_all_beginnings);
    tcase_add_test(windows, certain_and_lucky_are_the_least_and_most_of_all_beginnings);
    tcase_add_test(windows, a_narrow_cloth_gives_no_certain_window);
    tcase_add_test(windows, a_print_that_begins_anywhere_gives_fewer);
    tcase_add_test(windows, nothing_wanted_takes_nothing);
    tcase_add_test(windows, a_cloth_too_narrow_for_a_window_gives_none);
    tcase_add_test(windows, windows_larger_than_the_print_they_come_from_are_refused);
    tcase_add_test(windows, the_largest_request_fits);
    tcase_add_test(windows, three_yards_give_twenty_seven_windows);
    tcase_add_test(windows, a_short_cloth_gives_no_window);
    tcase_add_test(windows, windows_check_their_structs_and_values);
    tcase_add_test(windows, a_problem_says_which_of_two_sizes_is_wrong);
    suite_add_tcase(suite, windows);
    TCase *stacks = tcase_create("stacks");
    tcase_add_test(stacks, forty_stacks_of_six_come_from_six_repeats);
    tcase_add_test(stacks, straightening_may_take_a_repeat_more);
    tcase_add_test(stacks, no_stack_takes_no_cloth);
    tcase_add_test(stacks, cloth_beyond_the_longest_length_is_refused);
    tcase_add_test(stacks, stacks_check_their_structs_and_values);
    tcase_add_test(stacks, initial_values_are_those_of_the_headers);
    suite_add_tcase(suite, stacks);
    return suite;
}
