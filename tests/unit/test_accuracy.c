/* test_accuracy.c - small errors added up: sewing rows with errors in them, and counting squares.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

/* 1/64 and 1/32 in. */
enum { SIXTY_FOURTH = 127, THIRTY_SECOND = 254 };

#define ERROR_MAX (MUSLIN_SIZE_MAX / 8)

/* The least whole number whose square is not below `square`, found by counting. */
static muslin_len counted_root_up(int64_t square)
{
    muslin_len root = 0;
    while (root * root < square)
        root++;
    return root;
}

/* ---- one row ---------------------------------------------------------------------------------------------------- */

static struct muslin_accuracy_row_spec row_of(int64_t pieces, int64_t seams, muslin_len seam_error,
                                              muslin_len cut_error)
{
    struct muslin_accuracy_row_spec spec = MUSLIN_ACCURACY_ROW_SPEC_INIT;
    spec.pieces = pieces;
    spec.seams = seams;
    spec.seam_error = seam_error;
    spec.cut_error = cut_error;
    return spec;
}

static struct muslin_accuracy_row_errors accuracy_of(const struct muslin_accuracy_row_spec *spec)
{
    struct muslin_accuracy_row_errors row = { .size = (uint32_t)sizeof row };
    ck_ok(muslin_accuracy_row(spec, &row, NULL));
    return row;
}

/* "Quilting notes: block construction" (homeschool quilting notes, n.d.): a small error in each seam multiplies by the
 * number of seams. sqrt 8 = 2.8284, times 254 is 718.4. */
START_TEST(an_error_in_each_seam_multiplies_by_the_seams)
{
    /* Example: 8 seams each off by 1/32 in, cuts without error: 1/4 in at worst, and 719 ticks (a good 1/12 in) as
     * chance has it. */
    struct muslin_accuracy_row_spec spec = row_of(9, 8, THIRTY_SECOND, 0);
    struct muslin_accuracy_row_errors row = accuracy_of(&spec);
    ck_assert_int_eq(row.cuts, 18);
    ck_assert_int_eq(row.from_seams, IN(0, 1, 4));
    ck_assert_int_eq(row.from_cuts, 0);
    ck_assert_int_eq(row.worst, IN(0, 1, 4));
    ck_assert_int_eq(row.likely, 719);
    muslin_len total = -1;
    ck_ok(muslin_seam_error_total(THIRTY_SECOND, 8, &total, NULL));
    ck_assert_int_eq(row.worst, total);
}
END_TEST

/* Geometry: three seams off by 3 and eight cuts off by 4 ticks: 9 + 32 at worst, sqrt(27 + 128) = 12.45 by chance. */
START_TEST(seams_and_cuts_add_up_and_so_do_their_squares)
{
    struct muslin_accuracy_row_spec spec = row_of(4, 3, 3, 4);
    struct muslin_accuracy_row_errors row = accuracy_of(&spec);
    ck_assert_int_eq(row.from_seams, 9);
    ck_assert_int_eq(row.from_cuts, 32);
    ck_assert_int_eq(row.worst, 41);
    ck_assert_int_eq(row.likely, 13);
    spec = row_of(8, 9, 3, 3); /* 9 x 9 + 16 x 9 = 225 = 15 x 15 */
    ck_assert_int_eq(accuracy_of(&spec).likely, 15);
    spec = row_of(1, 0, 500, 0);
    ck_assert_int_eq(accuracy_of(&spec).worst, 0);
    ck_assert_int_eq(accuracy_of(&spec).likely, 0);
}
END_TEST

/* A row sewn as planned, and one whose pieces are all cut wider by two errors and whose seams all take less. */
static muslin_len off_when_sewn(int64_t pieces, muslin_len half_error, muslin_len cut_error)
{
    struct muslin_seam_spec planned = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_seam_spec sewn = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row good = { .size = (uint32_t)sizeof good };
    struct muslin_sewn_row bad = { .size = (uint32_t)sizeof bad };
    sewn.allowance -= half_error;
    ck_ok(muslin_seam_row_equal(WHOLE_IN(2), pieces, &planned, &good, NULL));
    ck_ok(muslin_seam_row_equal(WHOLE_IN(2) + 2 * cut_error, pieces, &sewn, &bad, NULL));
    return bad.unfinished - good.unfinished;
}

START_TEST(the_worst_row_is_the_one_sewn_with_every_error_the_same_way)
{
    for (int64_t pieces = 1; pieces <= 12; pieces++)
        for (muslin_len half = 0; half <= 60; half += 20)
            for (muslin_len cut = 0; cut <= 90; cut += 30) {
                struct muslin_accuracy_row_spec spec = row_of(pieces, pieces - 1, 2 * half, cut);
                struct muslin_accuracy_row_errors row = accuracy_of(&spec);
                ck_assert_int_eq(row.worst, off_when_sewn(pieces, half, cut));
                ck_assert_int_eq(row.likely, counted_root_up(4 * half * half * (pieces - 1) + 2 * pieces * cut * cut));
                ck_assert_int_le(row.likely, row.worst);
            }
}
END_TEST

/* 3 E (2^31 - 1) at worst; by chance E sqrt(3 (2^31 - 1)) with E = 2^27: 10772969814724.31, worked out to 60 digits
 * with mpmath. */
START_TEST(the_largest_row_does_not_overflow)
{
    struct muslin_accuracy_row_spec spec = row_of(MUSLIN_COUNT_MAX, MUSLIN_COUNT_MAX, ERROR_MAX, ERROR_MAX);
    struct muslin_accuracy_row_errors row = accuracy_of(&spec);
    ck_assert_int_eq(row.cuts, 2 * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(row.worst, 3 * MUSLIN_COUNT_MAX * ERROR_MAX);
    ck_assert_int_eq(row.likely, INT64_C(10772969814725));
}
END_TEST

static muslin_status call_row(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_accuracy_row(spec, out, problem);
}
static const struct muslin_accuracy_row_spec good_row = { (uint32_t)sizeof good_row, 0, 4, 3, 127, 64 };
static const struct ruled row = RULED(call_row, good_row, muslin_accuracy_row_errors);

START_TEST(row_checks_its_structs)
{
    ck_struct_rules(&row);
    ck_no_flag_known(&row);
}
END_TEST

START_TEST(row_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_accuracy_row_spec, pieces, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PIECES),
        OUTSIDE(muslin_accuracy_row_spec, seams, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEAMS),
        OUTSIDE(muslin_accuracy_row_spec, seam_error, 0, ERROR_MAX, MUSLIN_ARG_SEAM_ERROR),
        OUTSIDE(muslin_accuracy_row_spec, cut_error, 0, ERROR_MAX, MUSLIN_ARG_CUT_ERROR),
    };
    ck_refusals(&row, refusals, COUNT_OF(refusals));
}
END_TEST

/* An error per cut is told as a length. */
START_TEST(a_refused_error_is_told_in_inches)
{
    struct muslin_accuracy_row_spec spec = row_of(4, 3, 0, -SIXTY_FOURTH);
    struct muslin_accuracy_row_errors out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_accuracy_row(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_ptr_nonnull(strstr(problem.text, "Error per cut"));
    ck_assert_ptr_nonnull(strstr(problem.text, "1/64 in"));
}
END_TEST

/* ---- block and top ---------------------------------------------------------------------------------------------- */

static struct muslin_accuracy_top_spec top_spec(int64_t across, int64_t down, int64_t columns, int64_t rows)
{
    struct muslin_accuracy_top_spec spec = MUSLIN_ACCURACY_TOP_SPEC_INIT;
    spec.pieces_across = across;
    spec.pieces_down = down;
    spec.columns = columns;
    spec.rows = rows;
    return spec;
}

static struct muslin_accuracy_top_errors top_of(const struct muslin_accuracy_top_spec *spec)
{
    struct muslin_accuracy_top_errors top = { .size = (uint32_t)sizeof top };
    ck_ok(muslin_accuracy_top(spec, &top, NULL));
    return top;
}

/* Geometry: 2 seams in a block each way, 4 x 3 - 1 = 11 across and 5 x 3 - 1 = 14 down the top. sqrt(2) x 127 = 179.6,
 * sqrt(11) x 127 = 421.2, sqrt(14) x 127 = 475.2. */
START_TEST(nine_patches_four_by_five_add_up_seam_by_seam)
{
    /* Example: blocks of 3 x 3 pieces, 4 x 5 of them, each seam off by 1/64 in and cuts without error: a block 1/32 in
     * at worst, the top 11/64 in across and 7/32 in down. */
    struct muslin_accuracy_top_spec spec = top_spec(3, 3, 4, 5);
    spec.seam_error = SIXTY_FOURTH;
    struct muslin_accuracy_top_errors top = top_of(&spec);
    ck_assert_int_eq(top.block_seams_across, 2);
    ck_assert_int_eq(top.block_seams_down, 2);
    ck_assert_int_eq(top.block_width_worst, IN(0, 1, 32));
    ck_assert_int_eq(top.block_height_worst, IN(0, 1, 32));
    ck_assert_int_eq(top.block_width_likely, 180);
    ck_assert_int_eq(top.block_height_likely, 180);
    ck_assert_int_eq(top.top_seams_across, 11);
    ck_assert_int_eq(top.top_seams_down, 14);
    ck_assert_int_eq(top.top_width_worst, IN(0, 11, 64));
    ck_assert_int_eq(top.top_length_worst, IN(0, 7, 32));
    ck_assert_int_eq(top.top_width_likely, 422);
    ck_assert_int_eq(top.top_length_likely, 476);
}
END_TEST

/* The same sizes by joining blocks: each brings its own error, each seam between two blocks one more. */
static int agrees_with_joining(const struct muslin_accuracy_top_spec *spec)
{
    struct muslin_accuracy_top_errors top = top_of(spec);
    int64_t e = spec->seam_error * spec->seam_error;
    int64_t c = spec->cut_error * spec->cut_error;
    int64_t block_across = (spec->pieces_across - 1) * e + 2 * spec->pieces_across * c;
    int64_t block_down = (spec->pieces_down - 1) * e + 2 * spec->pieces_down * c;
    return top.top_width_worst == spec->columns * top.block_width_worst + (spec->columns - 1) * spec->seam_error &&
           top.top_length_worst == spec->rows * top.block_height_worst + (spec->rows - 1) * spec->seam_error &&
           top.top_seams_across == spec->columns * top.block_seams_across + spec->columns - 1 &&
           top.top_seams_down == spec->rows * top.block_seams_down + spec->rows - 1 &&
           top.block_width_likely == counted_root_up(block_across) &&
           top.block_height_likely == counted_root_up(block_down) &&
           top.top_width_likely == counted_root_up(spec->columns * block_across + (spec->columns - 1) * e) &&
           top.top_length_likely == counted_root_up(spec->rows * block_down + (spec->rows - 1) * e);
}

START_TEST(a_top_is_off_by_what_its_blocks_and_their_joins_are)
{
    uint64_t state = 31;
    int good = 1;
    for (int i = 0; i < 400; i++) {
        struct muslin_accuracy_top_spec spec = top_spec(draw_from(&state, 1, 9), draw_from(&state, 1, 9),
                                                        draw_from(&state, 1, 9), draw_from(&state, 1, 9));
        spec.seam_error = draw_from(&state, 0, 300);
        spec.cut_error = draw_from(&state, 0, 300);
        good &= agrees_with_joining(&spec);
    }
    ck_assert(good);
}
END_TEST

static muslin_status call_top(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_accuracy_top(spec, out, problem);
}
static const struct muslin_accuracy_top_spec good_top = { (uint32_t)sizeof good_top, 0, 3, 2, 4, 5, 127, 64 };
static const struct ruled top = RULED(call_top, good_top, muslin_accuracy_top_errors);

START_TEST(top_checks_its_structs)
{
    ck_struct_rules(&top);
    ck_no_flag_known(&top);
}
END_TEST

START_TEST(top_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_accuracy_top_spec, pieces_across, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PIECES),
        OUTSIDE(muslin_accuracy_top_spec, pieces_down, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_PIECES),
        OUTSIDE(muslin_accuracy_top_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_accuracy_top_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_accuracy_top_spec, seam_error, 0, ERROR_MAX, MUSLIN_ARG_SEAM_ERROR),
        OUTSIDE(muslin_accuracy_top_spec, cut_error, 0, ERROR_MAX, MUSLIN_ARG_CUT_ERROR),
    };
    ck_refusals(&top, refusals, COUNT_OF(refusals));
}
END_TEST

static struct muslin_problem refused_top(const struct muslin_accuracy_top_spec *spec)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, (uint32_t)sizeof(struct muslin_accuracy_top_errors));
    ck_status(muslin_accuracy_top(spec, (struct muslin_accuracy_top_errors *)(void *)&out, &problem), MUSLIN_ERR_RANGE);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

START_TEST(a_row_of_the_top_ends_at_the_largest_count)
{
    struct muslin_accuracy_top_spec spec = top_spec(MUSLIN_COUNT_MAX, 1, 1, MUSLIN_COUNT_MAX);
    spec.seam_error = 1;
    ck_assert_int_eq(top_of(&spec).top_width_worst, MUSLIN_COUNT_MAX - 1);
    ck_assert_int_eq(top_of(&spec).top_length_worst, MUSLIN_COUNT_MAX - 1);
    spec.columns = 2;
    struct muslin_problem problem = refused_top(&spec);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, 2 * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
    spec = top_spec(1, 2, 1, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(refused_top(&spec).at, 1);
    spec.pieces_down = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(refused_top(&spec).value, MUSLIN_COUNT_MAX * MUSLIN_COUNT_MAX);
    spec.pieces_down = 0;
    ck_assert_int_eq(refused_top(&spec).at, 1);
    spec.pieces_across = 0;
    ck_assert_int_eq(refused_top(&spec).at, 0);
}
END_TEST

/* ---- will seams meet? ------------------------------------------------------------------------------------------- */

static struct muslin_accuracy_meet_spec meeting_of(int64_t seams, muslin_len seam_error, muslin_len cut_error,
                                                   muslin_len tolerance)
{
    struct muslin_accuracy_meet_spec spec = MUSLIN_ACCURACY_MEET_SPEC_INIT;
    spec.seams = seams;
    spec.seam_error = seam_error;
    spec.cut_error = cut_error;
    spec.tolerance = tolerance;
    return spec;
}

static struct muslin_accuracy_meeting met_by(const struct muslin_accuracy_meet_spec *spec)
{
    struct muslin_accuracy_meeting met = { .size = (uint32_t)sizeof met };
    ck_ok(muslin_accuracy_meet(spec, &met, NULL));
    return met;
}

/* Geometry: two rows, each off by 1/64 in a seam: 1/32 in a seam apart, so 1/16 in at the second and more at the third.
 * By chance sqrt(2 x 8) / 64 = 1/16 in, just within. 508 / 16 = 31.75. */
START_TEST(neighbouring_rows_drift_apart_by_two_errors_a_seam)
{
    /* Example: 8 seams, each off by 1/64 in, cuts without error, within 1/16 in: the third seam is the first that may
     * miss, at worst; by chance about two in three still meet at the eighth, and from the third on about one in twenty
     * misses; at worst a seam may be off by 31 ticks. */
    struct muslin_accuracy_meet_spec spec = meeting_of(8, SIXTY_FOURTH, 0, IN(0, 1, 16));
    struct muslin_accuracy_meeting met = met_by(&spec);
    ck_assert_int_eq(met.worst, IN(0, 1, 4));
    ck_assert_int_eq(met.likely, IN(0, 1, 16));
    ck_assert_int_eq(met.first_missed, 3);
    ck_assert_int_eq(met.likely_first_missed, 0);
    ck_assert_int_eq(met.largest_seam_error, 31);
    ck_assert_int_eq(met.likely_largest_seam_error, SIXTY_FOURTH);
    ck_assert(met.meets == 0 && met.likely_meets == 1 && met.cuts_meet == 1 && met.likely_cuts_meet == 1);
    /* 2 sqrt(2 k) / 64 is 1/16 at k = 2 and beyond it at 3; with 8 seams an error of half a sixty-fourth would do */
    ck_assert_int_eq(met.twice_likely_first_missed, 3);
    ck_assert_int_eq(met.twice_likely_largest_seam_error, SIXTY_FOURTH / 2);
    ck_assert(met.twice_likely_meets == 0 && met.twice_likely_cuts_meet == 1);
    spec.seams = 2;
    ck_assert(met_by(&spec).twice_likely_first_missed == 0 && met_by(&spec).twice_likely_meets == 1);
    spec.seams = 8;
    spec.tolerance--;
    ck_assert_int_eq(met_by(&spec).likely_first_missed, 8);
    ck_assert_int_eq(met_by(&spec).likely_largest_seam_error, SIXTY_FOURTH - 1);
    ck_assert_int_eq(met_by(&spec).first_missed, 2);
}
END_TEST

START_TEST(without_error_all_seams_meet_without_tolerance)
{
    struct muslin_accuracy_meet_spec spec = meeting_of(MUSLIN_COUNT_MAX, 0, 0, 0);
    struct muslin_accuracy_meeting met = met_by(&spec);
    ck_assert(met.meets == 1 && met.likely_meets == 1 && met.cuts_meet == 1 && met.likely_cuts_meet == 1);
    ck_assert(met.twice_likely_meets == 1 && met.twice_likely_cuts_meet == 1);
    ck_assert(met.twice_likely_first_missed == 0 && met.twice_likely_largest_seam_error == 0);
    ck_assert_int_eq(met.first_missed, 0);
    ck_assert_int_eq(met.largest_seam_error, 0);
    ck_assert_int_eq(met.worst, 0);
}
END_TEST

START_TEST(cuts_alone_can_keep_seams_from_meeting)
{
    /* 4 x 4 x 8 = 128 apart; sqrt(2 x 4 x 2 x 64) = 32 */
    struct muslin_accuracy_meet_spec spec = meeting_of(4, 0, 8, 127);
    struct muslin_accuracy_meeting met = met_by(&spec);
    ck_assert_int_eq(met.worst, 128);
    ck_assert_int_eq(met.likely, 32);
    ck_assert(met.cuts_meet == 0 && met.meets == 0 && met.likely_cuts_meet == 1 && met.likely_meets == 1);
    ck_assert_int_eq(met.largest_seam_error, 0);
    ck_assert_int_eq(met.first_missed, 4);
    spec.tolerance = 128;
    ck_assert_int_eq(met_by(&spec).cuts_meet, 1);
    ck_assert_int_eq(met_by(&spec).meets, 1);
    spec.tolerance = 64; /* twice 32 */
    ck_assert_int_eq(met_by(&spec).twice_likely_cuts_meet, 1);
    spec.tolerance = 63;
    ck_assert_int_eq(met_by(&spec).twice_likely_cuts_meet, 0);
    ck_assert_int_eq(met_by(&spec).twice_likely_first_missed, 4);
    ck_assert_int_eq(met_by(&spec).likely_cuts_meet, 1);
    spec.tolerance = 31;
    ck_assert_int_eq(met_by(&spec).likely_cuts_meet, 0);
    ck_assert_int_eq(met_by(&spec).likely_largest_seam_error, 0);
    ck_assert_int_eq(met_by(&spec).likely_first_missed, 4);
}
END_TEST

/* How far apart the k-th seams are at worst, piece by piece: one row as large, the other as small as it may be. */
static muslin_len apart_at(int64_t k, muslin_len seam_error, muslin_len cut_error)
{
    muslin_len large = 0;
    muslin_len small = 0;
    for (int64_t i = 0; i < k; i++) {
        large += cut_error + cut_error + seam_error;
        small -= cut_error + cut_error + seam_error;
    }
    return large - small;
}

/* The square of how far apart they are likely to be. */
static int64_t square_at(int64_t k, muslin_len e, muslin_len c)
{
    int64_t square = 0;
    for (int64_t i = 0; i < 2 * k; i++)
        square += e * e + c * c + c * c;
    return square;
}

/* Each answer found by walking along the rows, or by trying ever larger errors. */
static int agrees_with_walking(const struct muslin_accuracy_meet_spec *s)
{
    struct muslin_accuracy_meeting met = met_by(s);
    int64_t t = s->tolerance * s->tolerance;
    int64_t missed = 0;
    int64_t likely_missed = 0;
    int64_t twice_missed = 0;
    muslin_len e = 0;
    muslin_len likely_e = 0;
    muslin_len twice_e = 0;
    for (int64_t k = s->seams; k >= 1; k--) {
        missed = apart_at(k, s->seam_error, s->cut_error) > s->tolerance ? k : missed;
        likely_missed = square_at(k, s->seam_error, s->cut_error) > t ? k : likely_missed;
        twice_missed = 4 * square_at(k, s->seam_error, s->cut_error) > t ? k : twice_missed;
    }
    while (apart_at(s->seams, e + 1, s->cut_error) <= s->tolerance)
        e++;
    while (square_at(s->seams, likely_e + 1, s->cut_error) <= t)
        likely_e++;
    while (4 * square_at(s->seams, twice_e + 1, s->cut_error) <= t)
        twice_e++;
    return met.worst == apart_at(s->seams, s->seam_error, s->cut_error) && met.first_missed == missed &&
           met.likely == counted_root_up(square_at(s->seams, s->seam_error, s->cut_error)) &&
           met.likely_first_missed == likely_missed && met.largest_seam_error == e &&
           met.likely_largest_seam_error == likely_e && met.meets == (missed == 0) &&
           met.likely_meets == (likely_missed == 0) &&
           met.cuts_meet == (apart_at(s->seams, 0, s->cut_error) <= s->tolerance) &&
           met.likely_cuts_meet == (square_at(s->seams, 0, s->cut_error) <= t) &&
           met.twice_likely_first_missed == twice_missed && met.twice_likely_largest_seam_error == twice_e &&
           met.twice_likely_meets == (twice_missed == 0) &&
           met.twice_likely_cuts_meet == (4 * square_at(s->seams, 0, s->cut_error) <= t);
}

START_TEST(seams_meet_as_walking_along_the_rows_says)
{
    int good = 1;
    for (int64_t seams = 1; seams <= 6; seams++)
        for (muslin_len e = 0; e <= 5; e++)
            for (muslin_len c = 0; c <= 3; c++)
                for (muslin_len tolerance = 0; tolerance <= 40; tolerance++) {
                    struct muslin_accuracy_meet_spec spec = meeting_of(seams, e, c, tolerance);
                    good &= agrees_with_walking(&spec);
                }
    ck_assert(good);
}
END_TEST

/* 6 E n at worst and E sqrt(6 n) by chance, E = 2^27 and n = 2^31 - 1: 15235280019019.09, worked out with mpmath. The
 * tolerance 2^30: 2^30 / 2 n is below 1, sqrt(2^60 / 2 n) is 16384.000004. */
START_TEST(the_longest_rows_do_not_overflow)
{
    struct muslin_accuracy_meet_spec spec = meeting_of(MUSLIN_COUNT_MAX, ERROR_MAX, ERROR_MAX, MUSLIN_SIZE_MAX);
    struct muslin_accuracy_meeting met = met_by(&spec);
    ck_assert_int_eq(met.worst, 6 * ERROR_MAX * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(met.likely, INT64_C(15235280019020));
    ck_assert_int_eq(met.first_missed, 2); /* 2^30 / (6 x 2^27) = 1.33 */
    ck_assert_int_eq(met.likely_first_missed, 11); /* 2^60 / (6 x 2^54) = 10.67 */
    ck_assert_int_eq(met.twice_likely_first_missed, 3); /* 2.67 */
    ck_assert(met.cuts_meet == 0 && met.likely_cuts_meet == 0);
    spec.cut_error = 0;
    ck_assert_int_eq(met_by(&spec).largest_seam_error, 0);
    ck_assert_int_eq(met_by(&spec).cuts_meet, 1);
    ck_assert_int_eq(met_by(&spec).likely_largest_seam_error, 16384);
    ck_assert_int_eq(met_by(&spec).twice_likely_largest_seam_error, 8192);
}
END_TEST

static muslin_status call_meet(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_accuracy_meet(spec, out, problem);
}
static const struct muslin_accuracy_meet_spec good_meeting = { (uint32_t)sizeof good_meeting, 0, 8, 127, 64, 508 };
static const struct ruled meeting = RULED(call_meet, good_meeting, muslin_accuracy_meeting);

START_TEST(meeting_checks_its_structs)
{
    ck_struct_rules(&meeting);
    ck_no_flag_known(&meeting);
}
END_TEST

START_TEST(meeting_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_accuracy_meet_spec, seams, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEAMS),
        OUTSIDE(muslin_accuracy_meet_spec, seam_error, 0, ERROR_MAX, MUSLIN_ARG_SEAM_ERROR),
        OUTSIDE(muslin_accuracy_meet_spec, cut_error, 0, ERROR_MAX, MUSLIN_ARG_CUT_ERROR),
        OUTSIDE(muslin_accuracy_meet_spec, tolerance, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
    };
    ck_refusals(&meeting, refusals, COUNT_OF(refusals));
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(accuracy_row)
INIT_CALL(accuracy_top)
INIT_CALL(accuracy_meet)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_accuracy_row_spec initial_row = MUSLIN_ACCURACY_ROW_SPEC_INIT;
    const struct muslin_accuracy_top_spec initial_top = MUSLIN_ACCURACY_TOP_SPEC_INIT;
    const struct muslin_accuracy_meet_spec initial_meeting = MUSLIN_ACCURACY_MEET_SPEC_INIT;
    ck_init_rules(init_accuracy_row, &initial_row, (uint32_t)sizeof initial_row);
    ck_init_rules(init_accuracy_top, &initial_top, (uint32_t)sizeof initial_top);
    ck_init_rules(init_accuracy_meet, &initial_meeting, (uint32_t)sizeof initial_meeting);
    ck_assert_int_eq(initial_meeting.tolerance, IN(0, 1, 16));
}
END_TEST

Suite *accuracy_suite(void);

Suite *accuracy_suite(void)
{
    Suite *suite = suite_create("accuracy");
    TCase *one_row = tcase_create("one row");
    tcase_add_test(one_row, an_error_in_each_seam_multiplies_by_the_seams);
    tcase_add_test(one_row, seams_and_cuts_add_up_and_so_do_their_squares);
    tcase_add_test(one_row, the_worst_row_is_the_one_sewn_with_every_error_the_same_way);
    tcase_add_test(one_row, the_largest_row_does_not_overflow);
    tcase_add_test(one_row, row_checks_its_structs);
    tcase_add_test(one_row, row_refuses_what_lies_outside_its_ranges);
    tcase_add_test(one_row, a_refused_error_is_told_in_inches);
    suite_add_tcase(suite, one_row);
    TCase *block_and_top = tcase_create("block and top");
    tcase_add_test(block_and_top, nine_patches_four_by_five_add_up_seam_by_seam);
    tcase_add_test(block_and_top, a_top_is_off_by_what_its_blocks_and_their_joins_are);
    tcase_add_test(block_and_top, top_checks_its_structs);
    tcase_add_test(block_and_top, top_refuses_what_lies_outside_its_ranges);
    tcase_add_test(block_and_top, a_row_of_the_top_ends_at_the_largest_count);
    suite_add_tcase(suite, block_and_top);
    TCase *meet = tcase_create("seams that meet");
    tcase_add_test(meet, neighbouring_rows_drift_apart_by_two_errors_a_seam);
    tcase_add_test(meet, without_error_all_seams_meet_without_tolerance);
    tcase_add_test(meet, cuts_alone_can_keep_seams_from_meeting);
    tcase_add_test(meet, seams_meet_as_walking_along_the_rows_says);
    tcase_add_test(meet, the_longest_rows_do_not_overflow);
    tcase_add_test(meet, meeting_checks_its_structs);
    tcase_add_test(meet, meeting_refuses_what_lies_outside_its_ranges);
    tcase_add_test(meet, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, meet);
    return suite;
}
