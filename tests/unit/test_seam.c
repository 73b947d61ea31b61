/* test_seam.c - cut, unfinished, finished; rows; the seam one really sews.
 *
 * SPDX-License-Identifier: MIT */
#include "struct_rules.h"

enum { DRAWS = 20000 };
#define SEAM_MAX (MUSLIN_SIZE_MAX / 8)

static const struct muslin_seam_spec quarter = MUSLIN_SEAM_SPEC_INIT;

static struct muslin_seam_spec seam_of(muslin_len allowance, muslin_len take_up)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    seam.allowance = allowance;
    seam.take_up = take_up;
    return seam;
}

static struct muslin_rounding_spec rounding_of(muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.direction = direction;
    return rounding;
}

static const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;

static muslin_len cut_for(muslin_len finished, struct muslin_seam_spec seam)
{
    muslin_len cut = -1;
    ck_ok(muslin_seam_cut_from_finished(finished, &seam, &cut, NULL));
    return cut;
}

static muslin_len finished_of(muslin_len cut, struct muslin_seam_spec seam)
{
    muslin_len finished = -1;
    ck_ok(muslin_seam_finished_from_cut(cut, &seam, &finished, NULL));
    return finished;
}

/* ---- cut and finished ------------------------------------------------------------------------------------------ */

/* The limit, 2^30 ticks, is 3355443.2 mm. */
START_TEST(a_limit_is_told_in_the_unit_of_the_value)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len total;
    ck_status(muslin_seam_error_total(-MUSLIN_SIZE_MAX - 32, 1, &total, &problem), MUSLIN_ERR_RANGE);
    ck_assert_ptr_nonnull(strstr(problem.text, "is -3355443.3 mm, but must be at least -3355443.20 mm."));
    const struct muslin_seam_spec six_millimetres = { sizeof six_millimetres, 0, 1920, 0 };
    ck_status(muslin_seam_finished_from_cut(3200, &six_millimetres, &total, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_str_eq(problem.text, "Cut size is 10 mm, but its seams take 12 mm.");
    const struct muslin_seam_spec eighth = { sizeof eighth, 0, 1016, 0 };
    ck_status(muslin_seam_finished_from_cut(320, &eighth, &total, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_str_eq(problem.text, "Cut size is 1 mm, but its seams take 6.35 mm.");
    /* 636 ticks are 1.9875 mm, 639 are 1.996875 mm. */
    const struct muslin_seam_spec below_two = { sizeof below_two, 0, 318, 0 };
    ck_status(muslin_seam_finished_from_cut(320, &below_two, &total, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_str_eq(problem.text, "Cut size is 1 mm, but its seams take about 1.99 mm.");
    const struct muslin_seam_spec nearly_two = { sizeof nearly_two, 0, 319, 1 };
    ck_status(muslin_seam_finished_from_cut(320, &nearly_two, &total, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_str_eq(problem.text, "Cut size is 1 mm, but its seams take about 2.00 mm.");
}
END_TEST

/* 2^20 ticks are 129.0078... in; that they are 3276.8 mm only happens to be so. */
START_TEST(a_limit_of_the_library_is_no_round_number_of_millimetres)
{
    const struct muslin_rounding_spec to = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_corner_spec square[4];
    struct muslin_problem problem = PROBLEM;
    muslin_len along, across;
    for (int i = 0; i < 4; i++) {
        const struct muslin_corner_spec initial = MUSLIN_CORNER_SPEC_INIT;
        square[i] = initial;
        square[i].x = i == 1 || i == 2 ? 8128 : 0;
        square[i].y = i / 2 * 8128;
    }
    ck_status(muslin_shape_foundation(square, sizeof square[0], 4, 0, WHOLE_IN(130), &to, &along, &across, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Margin is 130 in, but must be at most about 129.0078 in.");
    ck_status(muslin_shape_foundation(square, sizeof square[0], 4, 0, 3300 * MUSLIN_TICKS_PER_MM, &to, &along, &across,
                                      &problem), MUSLIN_ERR_RANGE);
    ck_assert_str_eq(problem.text, "Margin is 3300 mm, but must be at most 3276.80 mm.");
}
END_TEST

START_TEST(a_six_inch_square_is_cut_six_and_a_half)
{
    /* Moonlight Quilters Guild, Tip - On Point Settings */
    ck_assert_int_eq(cut_for(WHOLE_IN(6), quarter), IN(6, 1, 2));
}
END_TEST

START_TEST(a_unit_that_finishes_eight_and_a_half_is_nine_unfinished)
{
    /* Crazy Quilters Guild, Educational Tidbits: Finished or Unfinished? (2025) */
    ck_assert_int_eq(cut_for(IN(8, 1, 2), quarter), WHOLE_IN(9));
}
END_TEST

START_TEST(a_metric_allowance_works_as_well)
{
    /* 10 cm finished with 6 mm seams: 112 mm, by hand */
    struct muslin_seam_spec seam = seam_of(6 * MUSLIN_TICKS_PER_MM, 0);
    ck_assert_int_eq(cut_for(100 * MUSLIN_TICKS_PER_MM, seam), 112 * MUSLIN_TICKS_PER_MM);
}
END_TEST

START_TEST(the_take_up_of_one_whole_seam_is_added)
{
    struct muslin_seam_spec seam = seam_of(IN(0, 1, 4), IN(0, 1, 64));
    ck_assert_int_eq(cut_for(WHOLE_IN(6), seam), IN(6, 33, 64));
}
END_TEST

START_TEST(cut_and_finished_undo_each_other)
{
    uint64_t state = 1;
    int same = 1;
    for (int i = 0; i < DRAWS; i++) {
        struct muslin_seam_spec seam = seam_of(draw_from(&state, 0, SEAM_MAX), draw_from(&state, 0, SEAM_MAX));
        muslin_len finished = draw_from(&state, 0, MUSLIN_SIZE_MAX / 2);
        muslin_len cut = 0;
        muslin_len back = -1;
        same = same && muslin_seam_cut_from_finished(finished, &seam, &cut, NULL) == MUSLIN_OK &&
               muslin_seam_finished_from_cut(cut, &seam, &back, NULL) == MUSLIN_OK && back == finished;
    }
    ck_assert(same);
}
END_TEST

START_TEST(a_piece_may_finish_at_exactly_nothing)
{
    ck_assert_int_eq(finished_of(IN(0, 1, 2), quarter), 0);
    ck_assert_int_eq(finished_of(0, seam_of(0, 0)), 0);
}
END_TEST

START_TEST(a_piece_one_tick_too_narrow_names_what_the_seams_need)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len finished = 77;
    ck_status(muslin_seam_finished_from_cut(IN(0, 1, 2) - 1, &quarter, &finished, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(finished, 77);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_eq(problem.value, IN(0, 1, 2) - 1);
    ck_assert_int_eq(problem.limit, IN(0, 1, 2));
}
END_TEST

START_TEST(the_largest_and_smallest_sizes_are_taken)
{
    struct muslin_seam_spec widest = seam_of(SEAM_MAX, SEAM_MAX);
    ck_assert_int_eq(cut_for(MUSLIN_SIZE_MAX, widest), INT64_C(1073741824) + 3 * INT64_C(134217728));
    ck_assert_int_eq(cut_for(0, seam_of(0, 0)), 0);
    ck_assert_int_eq(finished_of(MUSLIN_SIZE_MAX, widest), INT64_C(1073741824) - 3 * INT64_C(134217728));
}
END_TEST

START_TEST(a_size_outside_the_range_is_refused)
{
    const muslin_len outside[] = { -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < 4; i++) {
        struct muslin_problem problem = PROBLEM;
        muslin_len out = 77;
        ck_status(muslin_seam_cut_from_finished(outside[i], &quarter, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
        ck_status(muslin_seam_finished_from_cut(outside[i], &quarter, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
        ck_assert_int_eq(problem.value, outside[i]);
        ck_assert_int_eq(problem.limit, outside[i] < 0 ? 0 : MUSLIN_SIZE_MAX);
        ck_assert_int_eq(out, 77);
    }
}
END_TEST

START_TEST(an_allowance_or_take_up_outside_the_range_is_refused)
{
    const muslin_len outside[] = { -1, SEAM_MAX + 1, INT64_MIN, INT64_MAX };
    for (size_t i = 0; i < 4; i++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_seam_spec allowance = seam_of(outside[i], 0);
        struct muslin_seam_spec take_up = seam_of(0, outside[i]);
        muslin_len out = 77;
        ck_status(muslin_seam_cut_from_finished(1, &allowance, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
        ck_status(muslin_seam_finished_from_cut(1, &take_up, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_TAKE_UP);
        ck_assert_int_eq(out, 77);
    }
}
END_TEST

START_TEST(a_missing_seam_or_output_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len out = 77;
    ck_status(muslin_seam_cut_from_finished(1, NULL, &out, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SPEC);
    ck_status(muslin_seam_finished_from_cut(1, &quarter, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(out, 77);
}
END_TEST

/* ---- array forms ----------------------------------------------------------------------------------------------- */

START_TEST(the_array_forms_agree_with_the_single_ones)
{
    muslin_len sizes[64];
    muslin_len cuts[64];
    muslin_len finished[64];
    uint64_t state = 2;
    struct muslin_seam_spec seam = seam_of(1920, 33);
    for (size_t i = 0; i < 64; i++)
        sizes[i] = draw_from(&state, 0, MUSLIN_SIZE_MAX / 2);
    ck_ok(muslin_seam_cut_from_finished_n(sizes, 64, &seam, cuts, NULL, NULL));
    ck_ok(muslin_seam_finished_from_cut_n(cuts, 64, &seam, finished, NULL, NULL));
    for (size_t i = 0; i < 64; i++)
        ck_assert_int_eq(cuts[i], cut_for(sizes[i], seam));
    ck_assert_int_eq(memcmp(finished, sizes, sizeof sizes), 0);
}
END_TEST

/* As many lie before and behind an array, of which nothing is asked; one of its first is the largest size. */
enum { BEFORE = 600, LONG = 1300, BEHIND = 20, ALL = BEFORE + LONG + BEHIND, BAD = 700 };

static int is_asked(size_t i)
{
    return i >= BEFORE && i < BEFORE + LONG;
}

/* All but that of the bad one are `more` than they were; and nothing that lies around them is touched. */
static void ck_changed(const muslin_len *sizes, const muslin_len *changed, const muslin_status *statuses,
                       muslin_len more, muslin_status bad)
{
    for (size_t i = 0; i < ALL; i++) {
        const int is_bad = i == BEFORE + BAD;
        ck_assert_int_eq(statuses[i], !is_asked(i) ? 99 : is_bad ? bad : MUSLIN_OK);
        ck_assert_int_eq(changed[i], !is_asked(i) || is_bad ? 77 : sizes[i] + more);
    }
}

START_TEST(a_long_array_is_as_its_elements)
{
    const muslin_len taken = IN(0, 1, 2);
    const struct {
        muslin_len size;
        muslin_status of_cut, of_finished;
    } bad[] = { { MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ERR_RANGE },
                { MUSLIN_SIZE_MAX + taken - 1, MUSLIN_ERR_RANGE, MUSLIN_ERR_RANGE },
                { -1, MUSLIN_ERR_RANGE, MUSLIN_ERR_RANGE },
                { taken - 1, MUSLIN_OK, MUSLIN_ERR_SEAM_TOO_WIDE } };
    for (size_t b = 0; b < sizeof bad / sizeof bad[0]; b++) {
        muslin_len sizes[ALL], cuts[ALL], finished[ALL];
        muslin_status of_cuts[ALL], of_finished[ALL];
        size_t failed = 55;
        for (size_t i = 0; i < ALL; i++) {
            sizes[i] = taken + (muslin_len)i;
            cuts[i] = finished[i] = 77;
            of_cuts[i] = of_finished[i] = 99;
        }
        sizes[BEFORE + 300] = MUSLIN_SIZE_MAX;
        sizes[BEFORE + BAD] = bad[b].size;
        ck_ok(muslin_seam_cut_from_finished_n(sizes + BEFORE, LONG, &quarter, cuts + BEFORE, of_cuts + BEFORE, NULL));
        ck_ok(muslin_seam_finished_from_cut_n(sizes + BEFORE, LONG, &quarter, finished + BEFORE, of_finished + BEFORE,
                                              NULL));
        if (bad[b].of_cut != MUSLIN_OK)
            ck_changed(sizes, cuts, of_cuts, taken, bad[b].of_cut);
        ck_changed(sizes, finished, of_finished, -taken, bad[b].of_finished);
        ck_status(muslin_seam_finished_from_cut_n(sizes + BEFORE, LONG, &quarter, finished + BEFORE, NULL, &failed),
                  bad[b].of_finished);
        ck_assert_uint_eq(failed, BAD);
    }
}
END_TEST

START_TEST(an_array_may_be_changed_in_place)
{
    muslin_len sizes[] = { WHOLE_IN(6), WHOLE_IN(12) };
    ck_ok(muslin_seam_cut_from_finished_n(sizes, 2, &quarter, sizes, NULL, NULL));
    ck_assert_int_eq(sizes[0], IN(6, 1, 2));
    ck_assert_int_eq(sizes[1], IN(12, 1, 2));
}
END_TEST

START_TEST(with_statuses_each_element_gets_its_own)
{
    const muslin_len cuts[] = { WHOLE_IN(3), -1, IN(0, 1, 4), IN(6, 1, 2) };
    muslin_len out[] = { 77, 77, 77, 77 };
    muslin_status statuses[] = { 99, 99, 99, 99 };
    size_t failed = 55;
    ck_ok(muslin_seam_finished_from_cut_n(cuts, 4, &quarter, out, statuses, &failed));
    ck_assert_int_eq(statuses[0], MUSLIN_OK);
    ck_assert_int_eq(statuses[1], MUSLIN_ERR_RANGE);
    ck_assert_int_eq(statuses[2], MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(statuses[3], MUSLIN_OK);
    ck_assert_int_eq(out[0], IN(2, 1, 2));
    ck_assert_int_eq(out[1], 77);
    ck_assert_int_eq(out[2], 77);
    ck_assert_int_eq(out[3], WHOLE_IN(6));
    ck_assert_uint_eq(failed, 55);
}
END_TEST

START_TEST(without_statuses_an_array_stops_at_its_first_failure)
{
    const muslin_len finished[] = { WHOLE_IN(3), MUSLIN_SIZE_MAX + 1, WHOLE_IN(6), -1 };
    muslin_len out[] = { 77, 77, 77, 77 };
    size_t failed = 55;
    ck_status(muslin_seam_cut_from_finished_n(finished, 4, &quarter, out, NULL, &failed), MUSLIN_ERR_RANGE);
    ck_assert_uint_eq(failed, 1);
    ck_assert_int_eq(out[0], IN(3, 1, 2));
    ck_assert_int_eq(out[1], 77);
    ck_assert_int_eq(out[2], 77);
    ck_status(muslin_seam_cut_from_finished_n(finished, 4, &quarter, out, NULL, NULL), MUSLIN_ERR_RANGE);
}
END_TEST

START_TEST(an_empty_array_succeeds_but_its_seam_is_still_looked_at)
{
    struct muslin_seam_spec bad = seam_of(-1, 0);
    ck_ok(muslin_seam_cut_from_finished_n(NULL, 0, &quarter, NULL, NULL, NULL));
    ck_ok(muslin_seam_finished_from_cut_n(NULL, 0, &quarter, NULL, NULL, NULL));
    ck_status(muslin_seam_cut_from_finished_n(NULL, 0, &bad, NULL, NULL, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_cut_from_finished_n(NULL, 0, NULL, NULL, NULL, NULL), MUSLIN_ERR_NULL);
}
END_TEST

START_TEST(an_array_that_is_missing_is_refused)
{
    muslin_len one[] = { 1 };
    ck_status(muslin_seam_cut_from_finished_n(NULL, 1, &quarter, one, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_seam_cut_from_finished_n(one, 1, &quarter, NULL, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_seam_finished_from_cut_n(NULL, 1, &quarter, one, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(one[0], 1);
}
END_TEST

/* ---- pieces ---------------------------------------------------------------------------------------------------- */

static struct muslin_piece_spec piece_of(muslin_len width, muslin_len height)
{
    struct muslin_piece_spec spec = MUSLIN_PIECE_SPEC_INIT;
    spec.finished_width = width;
    spec.finished_height = height;
    return spec;
}

static struct muslin_piece piece_from(struct muslin_piece_spec spec)
{
    struct muslin_piece piece = { 0 };
    piece.size = (uint32_t)sizeof piece;
    ck_ok(muslin_seam_piece(&spec, &piece, NULL));
    return piece;
}

START_TEST(a_six_inch_piece_loses_a_seventh_to_its_seams)
{
    /* by hand: 1 - 36 / 42.25 = 0.14792899 */
    struct muslin_piece piece = piece_from(piece_of(WHOLE_IN(6), WHOLE_IN(6)));
    ck_assert_int_eq(piece.cut_width, IN(6, 1, 2));
    ck_assert_int_eq(piece.cut_height, IN(6, 1, 2));
    ck_assert_int_eq(piece.cut_area, 2 * IN(6, 1, 2) * IN(6, 1, 2));
    ck_assert_int_eq(piece.finished_area, 2 * WHOLE_IN(6) * WHOLE_IN(6));
    ck_assert_int_eq(piece.seam_share, 147929);
}
END_TEST

START_TEST(each_edge_has_its_own_allowance)
{
    struct muslin_piece_spec spec = piece_of(WHOLE_IN(10), WHOLE_IN(20));
    spec.left = IN(0, 1, 4);
    spec.right = IN(0, 1, 2);
    spec.top = WHOLE_IN(1);
    spec.bottom = WHOLE_IN(2);
    struct muslin_piece piece = piece_from(spec);
    ck_assert_int_eq(piece.cut_width, IN(10, 3, 4));
    ck_assert_int_eq(piece.cut_height, WHOLE_IN(23));
}
END_TEST

START_TEST(only_sewn_edges_bear_half_a_take_up_rounded_up_once)
{
    /* take-up of 5 ticks: two sewn edges 5, one 3 (2 1/2 up), none 0 */
    struct muslin_piece_spec spec = piece_of(1000, 1000);
    spec.take_up = 5;
    struct muslin_piece both = piece_from(spec);
    ck_assert_int_eq(both.cut_width, 1000 + 2 * 2032 + 5);
    spec.left = 0;
    spec.bottom = 0;
    struct muslin_piece one = piece_from(spec);
    ck_assert_int_eq(one.cut_width, 1000 + 2032 + 3);
    ck_assert_int_eq(one.cut_height, 1000 + 2032 + 3);
    spec.right = 1;
    ck_assert_int_eq(piece_from(spec).cut_width, 1000 + 1 + 3);
    spec.right = 0;
    spec.left = 1;
    ck_assert_int_eq(piece_from(spec).cut_width, 1000 + 1 + 3);
    spec.left = 0;
    spec.top = 0;
    struct muslin_piece none = piece_from(spec);
    ck_assert_int_eq(none.cut_width, 1000);
    ck_assert_int_eq(none.cut_height, 1000);
    ck_assert_int_eq(none.seam_share, 0);
}
END_TEST

START_TEST(a_piece_sewn_all_round_is_cut_as_the_plain_rule_says)
{
    uint64_t state = 3;
    for (int i = 0; i < 200; i++) {
        struct muslin_seam_spec seam = seam_of(draw_from(&state, 1, SEAM_MAX), draw_from(&state, 0, SEAM_MAX));
        struct muslin_piece_spec spec = piece_of(draw_from(&state, 0, MUSLIN_SIZE_MAX), 8128);
        spec.left = spec.right = spec.top = spec.bottom = seam.allowance;
        spec.take_up = seam.take_up;
        struct muslin_piece piece = piece_from(spec);
        ck_assert_int_eq(piece.cut_width, cut_for(spec.finished_width, seam));
        ck_assert_int_eq(piece.cut_height, cut_for(8128, seam));
    }
}
END_TEST

START_TEST(a_piece_without_area_has_no_share)
{
    struct muslin_piece_spec spec = piece_of(0, WHOLE_IN(6));
    ck_assert_int_eq(piece_from(spec).seam_share, 1000000);
    spec.left = spec.right = 0;
    struct muslin_piece piece = piece_from(spec);
    ck_assert_int_eq(piece.cut_area, 0);
    ck_assert_int_eq(piece.seam_share, 0);
}
END_TEST

START_TEST(the_largest_piece_has_an_area)
{
    struct muslin_piece_spec spec = piece_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX);
    spec.left = spec.right = spec.top = spec.bottom = spec.take_up = SEAM_MAX;
    struct muslin_piece piece = piece_from(spec);
    /* 2^30 x 11/8 a side; doubled area 2 x 2^60 x 121/64 = 121 x 2^55; share 1 - 64/121 = 0.4710744 */
    ck_assert_int_eq(piece.cut_width, INT64_C(11) << 27);
    ck_assert_int_eq(piece.cut_area, INT64_C(121) << 55);
    ck_assert_int_eq(piece.seam_share, 471074);
}
END_TEST

START_TEST(a_bad_measure_of_a_piece_is_named_with_its_place)
{
    const int32_t argument[] = { MUSLIN_ARG_FINISHED,       MUSLIN_ARG_FINISHED,       MUSLIN_ARG_SEAM_ALLOWANCE,
                                 MUSLIN_ARG_SEAM_ALLOWANCE, MUSLIN_ARG_SEAM_ALLOWANCE, MUSLIN_ARG_SEAM_ALLOWANCE,
                                 MUSLIN_ARG_TAKE_UP };
    const int64_t at[] = { 0, 1, 0, 1, 2, 3, 0 };
    for (int member = 0; member < 7; member++) {
        struct muslin_problem problem = PROBLEM;
        struct muslin_piece_spec spec = piece_of(WHOLE_IN(6), WHOLE_IN(6));
        muslin_len *members[] = { &spec.finished_width, &spec.finished_height, &spec.left,   &spec.right,
                                  &spec.top,            &spec.bottom,          &spec.take_up };
        struct muslin_piece out = { 0 };
        out.size = (uint32_t)sizeof out;
        *members[member] = -3;
        ck_status(muslin_seam_piece(&spec, &out, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, argument[member]);
        ck_assert_int_eq(problem.at, at[member]);
        ck_assert_int_eq(problem.value, -3);
        *members[member] = MUSLIN_SIZE_MAX + 1;
        ck_status(muslin_seam_piece(&spec, &out, NULL), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(out.cut_width, 0);
    }
}
END_TEST

/* ---- rows ------------------------------------------------------------------------------------------------------ */

static struct muslin_sewn_row equal_row(muslin_len cut, int64_t pieces, struct muslin_seam_spec seam)
{
    struct muslin_sewn_row row = { 0 };
    row.size = (uint32_t)sizeof row;
    ck_ok(muslin_seam_row_equal(cut, pieces, &seam, &row, NULL));
    return row;
}

START_TEST(published_strip_sets_come_out_as_wide_as_printed)
{
    /* Vicki, Hints and tips 20 (2013); Quick rail fence (handout); Cutting squares from strip sets (reader question);
     * six strips: common practice, no source */
    ck_assert_int_eq(equal_row(IN(3, 1, 4), 9, quarter).unfinished, IN(25, 1, 4));
    ck_assert_int_eq(equal_row(IN(2, 1, 2), 5, quarter).unfinished, IN(10, 1, 2));
    ck_assert_int_eq(equal_row(IN(2, 1, 2), 4, quarter).unfinished, IN(8, 1, 2));
    ck_assert_int_eq(equal_row(IN(2, 1, 2), 6, quarter).unfinished, IN(12, 1, 2));
    ck_assert_int_eq(equal_row(IN(2, 1, 2), 6, quarter).finished, WHOLE_IN(12));
}
END_TEST

START_TEST(the_test_trio_measures_three_and_a_half_overall)
{
    /* J. Cahoon, Testing your scant quarter-inch seam (2012) */
    ck_assert_int_eq(equal_row(IN(1, 1, 2), 3, quarter).unfinished, IN(3, 1, 2));
}
END_TEST

START_TEST(two_by_two_squares_cannot_measure_what_the_pattern_printed)
{
    /* Family blog: charity block with a wrong pattern; printed 5 1/2, four squares cut 2 1/2 give 4 1/2 */
    ck_assert_int_eq(equal_row(IN(2, 1, 2), 2, quarter).unfinished, IN(4, 1, 2));
}
END_TEST

START_TEST(a_row_shows_its_working)
{
    struct muslin_sewn_row row = equal_row(IN(2, 1, 2), 6, seam_of(IN(0, 1, 4), IN(0, 1, 64)));
    ck_assert_int_eq(row.pieces, 6);
    ck_assert_int_eq(row.seams, 5);
    ck_assert_int_eq(row.cut_total, WHOLE_IN(15));
    ck_assert_int_eq(row.eaten, IN(2, 37, 64));
    ck_assert_int_eq(row.unfinished, IN(12, 27, 64));
    ck_assert_int_eq(row.finished, IN(11, 58, 64));
    /* 1 - 11 58/64 / 15 = 0.20625 */
    ck_assert_int_eq(row.seam_share, 206250);
}
END_TEST

/* Sews one piece after another: the next is laid on, stitched s from both edges, and folded open. */
static muslin_len sewn_piece_by_piece(const muslin_len *cuts, size_t n, struct muslin_seam_spec seam)
{
    muslin_len width = cuts[0];
    for (size_t i = 1; i < n; i++) {
        muslin_len left_of_stitching = width - seam.allowance;
        muslin_len right_of_stitching = cuts[i] - seam.allowance;
        width = left_of_stitching - seam.take_up + right_of_stitching;
    }
    return width;
}

START_TEST(a_row_of_unequal_pieces_is_what_sewing_them_one_by_one_gives)
{
    uint64_t state = 4;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        muslin_len cuts[12];
        size_t n = (size_t)draw_from(&state, 1, 12);
        struct muslin_seam_spec seam = seam_of(draw_from(&state, 0, 3000), draw_from(&state, 0, 300));
        muslin_len total = 0;
        for (size_t j = 0; j < n; j++)
            total += cuts[j] = draw_from(&state, 6300, 100000);
        struct muslin_sewn_row row = { 0 };
        row.size = (uint32_t)sizeof row;
        right = right && muslin_seam_row(cuts, n, &seam, &row, NULL) == MUSLIN_OK;
        muslin_len width = sewn_piece_by_piece(cuts, n, seam);
        right = right && row.unfinished == width && row.cut_total == total && row.eaten == total - width;
        right = right && row.finished == width - 2 * seam.allowance - seam.take_up;
        int64_t twice_off = 2 * (row.seam_share * total - (total - row.finished) * MUSLIN_PPM);
        right = right && twice_off > -total && twice_off <= total;
    }
    ck_assert(right);
}
END_TEST

START_TEST(unequal_pieces_cut_one_two_three_and_a_half_make_six)
{
    const muslin_len cuts[] = { IN(1, 1, 2), IN(2, 1, 2), IN(3, 1, 2) };
    struct muslin_sewn_row row = { 0 };
    row.size = (uint32_t)sizeof row;
    ck_ok(muslin_seam_row(cuts, 3, &quarter, &row, NULL));
    ck_assert_int_eq(row.unfinished, IN(6, 1, 2));
    ck_assert_int_eq(row.finished, WHOLE_IN(6));
}
END_TEST

START_TEST(a_single_piece_is_a_row_without_seams)
{
    struct muslin_sewn_row row = equal_row(IN(2, 1, 2), 1, quarter);
    ck_assert_int_eq(row.seams, 0);
    ck_assert_int_eq(row.unfinished, IN(2, 1, 2));
    ck_assert_int_eq(row.finished, WHOLE_IN(2));
}
END_TEST

START_TEST(the_longest_row_possible_fits)
{
    struct muslin_sewn_row row = equal_row(MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX, seam_of(SEAM_MAX, SEAM_MAX));
    /* (2^31 - 1) x 2^30, and 5/8 of it for the finished pieces */
    ck_assert_int_eq(row.cut_total, INT64_C(2147483647) * INT64_C(1073741824));
    ck_assert_int_eq(row.finished, INT64_C(2147483647) * INT64_C(671088640));
    ck_assert_int_eq(row.seam_share, 375000);
}
END_TEST

START_TEST(a_row_of_pieces_no_wider_than_their_seams_finishes_at_nothing)
{
    struct muslin_sewn_row row = equal_row(IN(0, 1, 2), 4, quarter);
    ck_assert_int_eq(row.finished, 0);
    ck_assert_int_eq(row.unfinished, IN(0, 1, 2));
    ck_assert_int_eq(row.seam_share, 1000000);
}
END_TEST

START_TEST(a_row_names_the_first_piece_that_the_seams_would_eat)
{
    const muslin_len cuts[] = { IN(1, 1, 2), IN(0, 1, 2), IN(0, 1, 4), IN(0, 1, 8) };
    struct muslin_problem problem = PROBLEM;
    struct muslin_sewn_row row = { 0 };
    row.size = (uint32_t)sizeof row;
    ck_status(muslin_seam_row(cuts, 4, &quarter, &row, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.at, 2);
    ck_assert_int_eq(problem.value, IN(0, 1, 4));
    ck_assert_int_eq(problem.limit, IN(0, 1, 2));
    ck_assert_int_eq(row.pieces, 0);
    ck_status(muslin_seam_row_equal(IN(0, 1, 2) - 1, 2, &quarter, &row, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_eq(problem.at, 0);
}
END_TEST

START_TEST(cuts_and_counts_of_a_row_outside_their_ranges_are_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_sewn_row row = { 0 };
    row.size = (uint32_t)sizeof row;
    const muslin_len cuts[] = { WHOLE_IN(2), 0, WHOLE_IN(2) };
    ck_status(muslin_seam_row(cuts, 3, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_status(muslin_seam_row(cuts, 0, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_status(muslin_seam_row(cuts, SIZE_MAX, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
    ck_status(muslin_seam_row(cuts, (size_t)MUSLIN_COUNT_MAX + 1, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, MUSLIN_COUNT_MAX + 1);
    /* As many may be: the second of these is none. */
    ck_status(muslin_seam_row(cuts, (size_t)MUSLIN_COUNT_MAX, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_status(muslin_seam_row(NULL, 1, &quarter, &row, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    const int64_t pieces[] = { 0, -1, MUSLIN_COUNT_MAX + 1, INT64_MAX };
    for (size_t i = 0; i < 4; i++)
        ck_status(muslin_seam_row_equal(WHOLE_IN(2), pieces[i], &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_status(muslin_seam_row_equal(0, 2, &quarter, &row, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_status(muslin_seam_row_equal(MUSLIN_SIZE_MAX + 1, 2, &quarter, &row, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(row.pieces, 0);
}
END_TEST

/* ---- backwards, and resized ------------------------------------------------------------------------------------ */

static struct muslin_rounded strip_for(muslin_len finished, int64_t pieces, struct muslin_seam_spec seam,
                                       struct muslin_rounding_spec rounding)
{
    struct muslin_rounded strip = { 0 };
    strip.size = (uint32_t)sizeof strip;
    ck_ok(muslin_seam_strip_for_finished(finished, pieces, &seam, &rounding, &strip, NULL));
    return strip;
}

START_TEST(a_six_inch_nine_patch_needs_strips_of_two_and_a_half)
{
    /* Nine patch perfected (blog); Snowball blocks (blog, 2013) */
    struct muslin_rounded strip = strip_for(WHOLE_IN(6), 3, quarter, nearest);
    ck_assert_int_eq(strip.value, IN(2, 1, 2));
    ck_assert_int_eq(strip.exact, 1);
}
END_TEST

START_TEST(a_strip_off_the_grid_goes_where_it_is_sent)
{
    /* 10/3 + 1/2 = 3 5/6 in = 3.8333: between 3 3/4 and 3 7/8, nearer the latter */
    const struct muslin_rounding_spec up = rounding_of(1016, MUSLIN_DIRECTION_UP);
    const struct muslin_rounding_spec down = rounding_of(1016, MUSLIN_DIRECTION_DOWN);
    const struct muslin_rounding_spec near = rounding_of(1016, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(strip_for(WHOLE_IN(10), 3, quarter, up).value, IN(3, 7, 8));
    ck_assert_int_eq(strip_for(WHOLE_IN(10), 3, quarter, down).value, IN(3, 3, 4));
    ck_assert_int_eq(strip_for(WHOLE_IN(10), 3, quarter, near).value, IN(3, 7, 8));
    ck_assert_int_eq(strip_for(WHOLE_IN(10), 3, quarter, near).exact, 0);
}
END_TEST

START_TEST(strips_rounded_up_reach_the_wish_and_one_step_less_does_not)
{
    uint64_t state = 5;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        muslin_len finished = draw_from(&state, 0, MUSLIN_SIZE_MAX);
        int64_t pieces = draw_from(&state, 1, i % 2 == 0 ? 40 : MUSLIN_COUNT_MAX);
        struct muslin_seam_spec seam = seam_of(draw_from(&state, 0, SEAM_MAX), draw_from(&state, 0, SEAM_MAX));
        struct muslin_rounding_spec up = rounding_of(draw_from(&state, 1, 8128), MUSLIN_DIRECTION_UP);
        struct muslin_rounded strip = { 0 };
        strip.size = (uint32_t)sizeof strip;
        right = right && muslin_seam_strip_for_finished(finished, pieces, &seam, &up, &strip, NULL) == MUSLIN_OK;
        muslin_len seen = strip.value - 2 * seam.allowance - seam.take_up;
        right = right && pieces * seen >= finished && pieces * (seen - up.grid) < finished;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_strip_for_a_wish_out_of_range_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_seam_strip_for_finished(-1, 3, &quarter, &nearest, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_status(muslin_seam_strip_for_finished(MUSLIN_SIZE_MAX + 1, 3, &quarter, &nearest, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_strip_for_finished(1, 0, &quarter, &nearest, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    const int64_t many = MUSLIN_COUNT_MAX + 1;
    ck_status(muslin_seam_strip_for_finished(1, many, &quarter, &nearest, &out, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.value, 0);
}
END_TEST

static muslin_len resized(muslin_len cut, int64_t numerator, int64_t denominator)
{
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_seam_resize_cut(cut, numerator, denominator, &quarter, &nearest, &out, NULL));
    return out.value;
}

START_TEST(a_block_doubled_takes_its_seams_off_first)
{
    /* Learn how to resize quilt blocks (blog, 2023): 2 1/2 x 4 1/2 becomes 4 1/2 x 8 1/2 */
    ck_assert_int_eq(resized(IN(2, 1, 2), 2, 1), IN(4, 1, 2));
    ck_assert_int_eq(resized(IN(4, 1, 2), 12, 6), IN(8, 1, 2));
}
END_TEST

START_TEST(the_printed_tip_on_doubling_is_not_followed)
{
    /* FM quilters guild, Changing a Block Size Accurately: prints 6 3/4, takes off one allowance instead of two */
    ck_assert_int_eq(resized(IN(3, 1, 2), 2, 1), IN(6, 1, 2));
}
END_TEST

START_TEST(resizing_there_and_back_changes_nothing)
{
    ck_assert_int_eq(resized(resized(IN(3, 1, 2), 3, 2), 2, 3), IN(3, 1, 2));
    ck_assert_int_eq(resized(MUSLIN_SIZE_MAX, INT64_MAX, INT64_MAX), MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(a_size_of_nothing_stays_nothing_whatever_the_factor)
{
    ck_assert_int_eq(resized(IN(0, 1, 2), INT64_MAX, 1), IN(0, 1, 2));
    ck_assert_int_eq(resized(IN(0, 1, 2), 1, INT64_MAX), IN(0, 1, 2));
}
END_TEST

START_TEST(resizing_beyond_any_length_overflows)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    out.value = 77;
    ck_status(muslin_seam_resize_cut(WHOLE_IN(100), INT64_MAX, 1, &quarter, &nearest, &out, &problem),
              MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FACTOR);
    ck_assert_int_eq(problem.value, INT64_MAX);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(out.value, 77);
}
END_TEST

START_TEST(a_ratio_that_is_none_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_seam_resize_cut(20320, 2, 0, &quarter, &nearest, &out, &problem), MUSLIN_ERR_DIVIDE_BY_ZERO);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DIVISOR);
    ck_status(muslin_seam_resize_cut(20320, 2, -1, &quarter, &nearest, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DIVISOR);
    ck_assert_int_eq(problem.limit, 1);
    ck_status(muslin_seam_resize_cut(20320, 0, 1, &quarter, &nearest, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FACTOR);
    ck_status(muslin_seam_resize_cut(20320, -2, 1, &quarter, &nearest, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_resize_cut(4063, 2, 1, &quarter, &nearest, &out, NULL), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_status(muslin_seam_resize_cut(MUSLIN_SIZE_MAX + 1, 2, 1, &quarter, &nearest, &out, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.value, 0);
}
END_TEST

START_TEST(calls_that_round_refuse_a_bad_rounding)
{
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    struct muslin_rounding_spec nowhere = rounding_of(1, 4);
    struct muslin_rounding_spec no_grid = rounding_of(0, MUSLIN_DIRECTION_UP);
    ck_status(muslin_seam_resize_cut(20320, 2, 1, &quarter, &nowhere, &out, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_seam_resize_cut(20320, 2, 1, &quarter, &no_grid, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_resize_cut(20320, 2, 1, &quarter, NULL, &out, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_seam_strip_for_finished(20320, 2, &quarter, &nowhere, &out, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_seam_strip_for_finished(20320, 2, &quarter, NULL, &out, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(out.value, 0);
}
END_TEST

/* ---- calibration ----------------------------------------------------------------------------------------------- */

static muslin_status calibrate(muslin_len cut, size_t n, muslin_len measured, muslin_len stitched,
                               struct muslin_calibration *out, struct muslin_problem *problem)
{
    muslin_len cuts[16];
    for (size_t i = 0; i < n; i++)
        cuts[i] = cut;
    return muslin_seam_calibrate(cuts, n, measured, stitched, out, problem);
}

static struct muslin_calibration calibrated(muslin_len cut, size_t n, muslin_len measured, muslin_len stitched)
{
    struct muslin_calibration found = { 0 };
    found.size = (uint32_t)sizeof found;
    ck_ok(calibrate(cut, n, measured, stitched, &found, NULL));
    return found;
}

/* numerator / denominator ticks, in ten-thousandths of an inch to the nearest. */
static int64_t ten_thousandths(int64_t numerator, int64_t denominator)
{
    int64_t whole = denominator * MUSLIN_TICKS_PER_INCH;
    return (2 * numerator * 10000 + whole) / (2 * whole);
}

START_TEST(a_measured_set_gives_the_published_shortfall)
{
    /* Cutting squares from strip sets (reader question): 4 strips cut 2 1/2 measured 8 3/8 instead of 8 1/2; 1/8 over
     * 3 seams is 0.0417 in a seam and 0.0208 in a side */
    struct muslin_calibration found = calibrated(IN(2, 1, 2), 4, IN(8, 3, 8), IN(0, 1, 4));
    ck_assert_int_eq(found.seams, 3);
    ck_assert_int_eq(found.planned, IN(8, 1, 2));
    ck_assert_int_eq(found.shortfall, IN(0, 1, 8));
    ck_assert_int_eq(ten_thousandths(found.per_seam_numerator, found.per_seam_denominator), 417);
    ck_assert_int_eq(ten_thousandths(found.effective_numerator, found.effective_denominator), 2500 + 208);
}
END_TEST

START_TEST(a_trio_that_is_right_shows_one_inch_in_the_middle)
{
    /* Testing your 1/4 inch seam allowance accuracy (blog, 2014): 1 1/2 in strips, centre 1 in; J. Cahoon (2012):
     * 3 1/2 in overall. T. Pereira, 1/4 inch seam test: centre = cut - 2 e */
    struct muslin_calibration found = calibrated(IN(1, 1, 2), 3, IN(3, 1, 2), IN(0, 1, 4));
    ck_assert_int_eq(found.effective_allowance, IN(0, 1, 4));
    ck_assert_int_eq(found.shortfall, 0);
    ck_assert_int_eq(found.take_up, 0);
    ck_assert_int_eq(found.sew_at, IN(0, 1, 4));
    ck_assert_int_eq(IN(1, 1, 2) - 2 * found.effective_allowance, WHOLE_IN(1));
}
END_TEST

START_TEST(the_centre_of_any_trio_tells_the_same_allowance)
{
    /* the outer strips keep cut - e each from raw edge to seam, so measured - 2 (cut - e) is the centre */
    uint64_t state = 6;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        muslin_len cut = draw_from(&state, 10000, 40000);
        muslin_len e = draw_from(&state, 0, 4000);
        struct muslin_calibration found = { 0 };
        found.size = (uint32_t)sizeof found;
        right = right && calibrate(cut, 3, 3 * cut - 4 * e, 2032, &found, NULL) == MUSLIN_OK;
        muslin_len centre = 3 * cut - 4 * e - 2 * (cut - e);
        right = right && 2 * found.effective_numerator == (cut - centre) * found.effective_denominator;
        right = right && found.effective_allowance == e;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_set_that_came_out_wide_has_a_negative_take_up)
{
    /* 4 strips, 3 seams, 3/64 in too wide: u = -1/64, so sew 1/128 in deeper: 2032 + 63 1/2 up */
    struct muslin_calibration found = calibrated(IN(2, 1, 2), 4, IN(8, 35, 64), IN(0, 1, 4));
    ck_assert_int_eq(found.shortfall, -IN(0, 3, 64));
    ck_assert_int_eq(found.take_up, -127);
    ck_assert_int_eq(found.sew_at, 2032 + 64);
}
END_TEST

START_TEST(halves_of_a_tick_go_up)
{
    /* 3 strips, 2 seams: short by 1 tick u = 1/2 goes to 1; wide by 1 tick u = -1/2 to 0; by 3 ticks, -1 1/2 to -1 */
    ck_assert_int_eq(calibrated(20320, 3, 3 * 20320 - 8128 - 1, 2032).take_up, 1);
    ck_assert_int_eq(calibrated(20320, 3, 3 * 20320 - 8128 + 1, 2032).take_up, 0);
    ck_assert_int_eq(calibrated(20320, 3, 3 * 20320 - 8128 + 3, 2032).take_up, -1);
    /* 2 strips, 1 seam, short by 3 ticks: e = 2032 + 1 1/2 goes up, sew at 2032 - 1 1/2 goes up */
    ck_assert_int_eq(calibrated(20320, 2, 2 * 20320 - 4064 - 3, 2032).effective_allowance, 2034);
    ck_assert_int_eq(calibrated(20320, 2, 2 * 20320 - 4064 - 3, 2032).sew_at, 2031);
}
END_TEST

START_TEST(sewing_where_the_cure_says_meets_the_plan)
{
    uint64_t state = 7;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        size_t n = (size_t)draw_from(&state, 2, 16);
        muslin_len cut = draw_from(&state, 16000, 40000);
        muslin_len u = 2 * draw_from(&state, -500, 500);
        muslin_len seams = (muslin_len)n - 1;
        muslin_len measured = (muslin_len)n * cut - seams * (2 * 2032 + u);
        struct muslin_calibration found = { 0 };
        found.size = (uint32_t)sizeof found;
        right = right && calibrate(cut, n, measured, 2032, &found, NULL) == MUSLIN_OK;
        muslin_len again = (muslin_len)n * cut - seams * (2 * found.sew_at + u);
        right = right && found.take_up == u && again == found.planned;
    }
    ck_assert(right);
}
END_TEST

START_TEST(the_fractions_of_a_calibration_give_back_the_measured_width)
{
    uint64_t state = 8;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        size_t n = (size_t)draw_from(&state, 2, 16);
        muslin_len cut = draw_from(&state, 4064, 40000);
        muslin_len total = (muslin_len)n * cut;
        muslin_len least = total - 4 * 2032 * ((muslin_len)n - 1);
        muslin_len measured = draw_from(&state, least < 1 ? 1 : least, total);
        struct muslin_calibration f = { 0 };
        f.size = (uint32_t)sizeof f;
        right = right && calibrate(cut, n, measured, 2032, &f, NULL) == MUSLIN_OK;
        right = right && total * f.effective_denominator - f.seams * 2 * f.effective_numerator ==
                             measured * f.effective_denominator;
        right = right && f.planned * f.per_seam_denominator - f.seams * f.per_seam_numerator ==
                             measured * f.per_seam_denominator;
        int64_t e_off = 2 * (f.effective_allowance * f.effective_denominator - f.effective_numerator);
        right = right && e_off > -f.effective_denominator && e_off <= f.effective_denominator;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_take_up_of_two_allowances_is_the_last_that_can_be_cured)
{
    /* 4 strips, u = 2 s: measured 4 x 2 1/2 - 3 x 4 x 1/4 = 7 in, sew at 0 */
    struct muslin_problem problem = PROBLEM;
    struct muslin_calibration out = calibrated(IN(2, 1, 2), 4, WHOLE_IN(7), IN(0, 1, 4));
    ck_assert_int_eq(out.sew_at, 0);
    out.planned = 77;
    for (muslin_len less = 1; less <= 5; less += 4) {
        ck_status(calibrate(IN(2, 1, 2), 4, WHOLE_IN(7) - less, IN(0, 1, 4), &out, &problem),
                  MUSLIN_ERR_SEAM_TOO_WIDE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURED);
        ck_assert_int_eq(problem.value, WHOLE_IN(7) - less);
        ck_assert_int_eq(problem.limit, WHOLE_IN(7));
        ck_assert_int_eq(out.planned, 77);
    }
}
END_TEST

START_TEST(strips_narrower_than_the_seams_meant_cannot_be_calibrated)
{
    const muslin_len cuts[] = { IN(2, 1, 2), IN(0, 1, 2) - 1 };
    struct muslin_problem problem = PROBLEM;
    struct muslin_calibration out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_seam_calibrate(cuts, 2, WHOLE_IN(2), IN(0, 1, 4), &out, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
}
END_TEST

START_TEST(measures_of_a_calibration_outside_their_ranges_are_refused)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_calibration out = { 0 };
    out.size = (uint32_t)sizeof out;
    const muslin_len cuts[] = { 20320, MUSLIN_SIZE_MAX + 1 };
    ck_status(muslin_seam_calibrate(cuts, 2, 20320, 2032, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_seam_calibrate(cuts, 1, 20320, 2032, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_status(muslin_seam_calibrate(cuts, SIZE_MAX, 20320, 2032, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(calibrate(20320, 2, 0, 2032, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURED);
    ck_assert_int_eq(problem.limit, 1);
    ck_assert_int_eq(problem.at, 0);
    ck_status(calibrate(20320, 2, 40641, 2032, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 40640);
    ck_status(calibrate(20320, 2, INT64_MIN, 2032, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(calibrate(20320, 2, 36000, -1, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
    ck_status(calibrate(20320, 2, 36000, SEAM_MAX + 1, &out, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_calibrate(NULL, 2, 36000, 2032, &out, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_eq(out.planned, 0);
    /* the narrowest set there is; and the whole sum measured, a set sewn with no seam at all */
    ck_assert_int_eq(calibrated(2, 2, 1, 1).effective_allowance, 2);
    ck_assert_int_eq(calibrated(20320, 2, 40640, 2032).effective_allowance, 0);
}
END_TEST

/* ---- carry on -------------------------------------------------------------------------------------------------- */

static struct muslin_carry_on_spec carry_on_of(muslin_len cut_total, int64_t strips, muslin_len measured,
                                               muslin_len later_cut)
{
    struct muslin_carry_on_spec spec = MUSLIN_CARRY_ON_SPEC_INIT;
    spec.cut_total = cut_total;
    spec.strips = strips;
    spec.measured = measured;
    spec.later_cut = later_cut;
    return spec;
}

static struct muslin_rounded carried_on(struct muslin_carry_on_spec spec)
{
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_ok(muslin_seam_carry_on(&spec, &nearest, &out, NULL));
    return out;
}

START_TEST(a_segment_as_long_as_its_set_is_wide_becomes_the_measured_width)
{
    struct muslin_rounded later = carried_on(carry_on_of(WHOLE_IN(10), 4, IN(8, 3, 8), IN(8, 1, 2)));
    ck_assert_int_eq(later.value, IN(8, 3, 8));
    ck_assert_int_eq(later.exact, 1);
    uint64_t state = 9;
    int right = 1;
    for (int i = 0; i < 2000; i++) {
        int64_t strips = draw_from(&state, 2, 40);
        muslin_len total = strips * draw_from(&state, 5000, 40000);
        muslin_len square = total - (strips - 1) * 2 * 2032;
        struct muslin_carry_on_spec spec = carry_on_of(total, strips, draw_from(&state, total / 2 + 1, total), square);
        struct muslin_rounded out = { 0 };
        out.size = (uint32_t)sizeof out;
        right = right && muslin_seam_carry_on(&spec, &nearest, &out, NULL) == MUSLIN_OK;
        right = right && out.value == spec.measured && out.exact == 1;
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_set_that_met_its_plan_changes_no_later_cut)
{
    uint64_t state = 10;
    for (int i = 0; i < 500; i++) {
        muslin_len later = draw_from(&state, 2 * 2032 + 33, MUSLIN_SIZE_MAX);
        struct muslin_carry_on_spec spec = carry_on_of(WHOLE_IN(15), 6, WHOLE_IN(15) - 5 * (4064 + 33), later);
        spec.take_up = 33;
        ck_assert_int_eq(carried_on(spec).value, later);
    }
}
END_TEST

START_TEST(a_piece_that_was_all_seam_becomes_the_seam_as_sewn)
{
    /* E = (10 - 8 3/8) / 3 in = 4402 2/3 ticks */
    struct muslin_rounded later = carried_on(carry_on_of(WHOLE_IN(10), 4, IN(8, 3, 8), IN(0, 1, 2)));
    ck_assert_int_eq(later.value, 4403);
    ck_assert_int_eq(later.exact, 0);
}
END_TEST

START_TEST(later_cuts_scale_as_one_strip_of_the_set_does)
{
    /* another route: n strips cut w show w - P each as planned and w - E as sewn; a whole E leaves one fraction */
    uint64_t state = 11;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        int64_t n = draw_from(&state, 2, 30);
        muslin_len w = draw_from(&state, 4200, 60000);
        muslin_len P = 4064 + draw_from(&state, 0, 100);
        muslin_len E = draw_from(&state, 0, 4200);
        muslin_len c = draw_from(&state, P, 500000);
        struct muslin_carry_on_spec spec = carry_on_of(n * w, n, n * w - (n - 1) * E, c);
        spec.take_up = P - 4064;
        struct muslin_rounding_spec down = rounding_of(1, MUSLIN_DIRECTION_DOWN);
        struct muslin_rounded out = { 0 };
        out.size = (uint32_t)sizeof out;
        right = right && muslin_seam_carry_on(&spec, &down, &out, NULL) == MUSLIN_OK;
        right = right && out.value == (c - P) * (w - E) / (w - P) + E;
    }
    ck_assert(right);
}
END_TEST

START_TEST(the_largest_sets_carry_on_exactly)
{
    const int64_t strips[] = { 2, 3, MUSLIN_COUNT_MAX };
    for (size_t i = 0; i < 3; i++) {
        const muslin_len most = MUSLIN_SIZE_MAX;
        struct muslin_carry_on_spec spec = carry_on_of(most, strips[i], most - 1, most);
        spec.allowance = 0;
        ck_assert_int_eq(carried_on(spec).value, MUSLIN_SIZE_MAX - 1);
    }
    /* one tick of plan: T - 2 P = 1 and M = T, so c - P = 2^30 - 2032 x 2 grows by 2 M - T = T over 1 */
    struct muslin_carry_on_spec steep = carry_on_of(8129, 2, 8129, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(carried_on(steep).value, (MUSLIN_SIZE_MAX - 4064) * 8129);
}
END_TEST

static void ck_carry_on_refused(struct muslin_carry_on_spec spec, muslin_status status, int32_t argument, int64_t limit)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_rounded out = { 0 };
    out.size = (uint32_t)sizeof out;
    ck_status(muslin_seam_carry_on(&spec, &nearest, &out, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.limit, limit);
    ck_assert_int_eq(out.value, 0);
}

START_TEST(a_carry_on_plan_names_the_part_that_the_seams_eat)
{
    const muslin_status too_wide = MUSLIN_ERR_SEAM_TOO_WIDE;
    /* later piece below P; four strips of exactly P; a set so narrow that no strip of it is seen: 4 M < T */
    ck_carry_on_refused(carry_on_of(WHOLE_IN(10), 4, WHOLE_IN(8), 4063), too_wide, MUSLIN_ARG_SEGMENT_CUT, 4064);
    ck_carry_on_refused(carry_on_of(4 * 4064, 4, 4 * 4064, 9000), too_wide, MUSLIN_ARG_CUT, 4 * 4064 + 1);
    ck_carry_on_refused(carry_on_of(WHOLE_IN(10), 4, 20319, 9000), too_wide, MUSLIN_ARG_MEASURED, 20320);
    ck_carry_on_refused(carry_on_of(WHOLE_IN(10) + 1, 4, 20320, 9000), too_wide, MUSLIN_ARG_MEASURED, 20321);
    /* at that edge nothing is seen, and a later piece is all seam: E = (10 - 2 1/2) / 3 in */
    ck_assert_int_eq(carried_on(carry_on_of(WHOLE_IN(10), 4, 20320, 9000)).value, IN(2, 1, 2));
}
END_TEST

START_TEST(measures_of_a_carry_on_plan_outside_their_ranges_are_refused)
{
    const muslin_status range = MUSLIN_ERR_RANGE;
    const muslin_len T = WHOLE_IN(10);
    const muslin_len M = WHOLE_IN(8);
    ck_carry_on_refused(carry_on_of(0, 4, M, 9000), range, MUSLIN_ARG_CUT, 1);
    ck_carry_on_refused(carry_on_of(MUSLIN_SIZE_MAX + 1, 4, M, 9000), range, MUSLIN_ARG_CUT, MUSLIN_SIZE_MAX);
    ck_carry_on_refused(carry_on_of(T, 1, M, 9000), range, MUSLIN_ARG_STRIPS, 2);
    ck_carry_on_refused(carry_on_of(T, MUSLIN_COUNT_MAX + 1, M, 9000), range, MUSLIN_ARG_STRIPS, MUSLIN_COUNT_MAX);
    ck_carry_on_refused(carry_on_of(T, 4, 0, 9000), range, MUSLIN_ARG_MEASURED, 1);
    ck_carry_on_refused(carry_on_of(T, 4, T + 1, 9000), range, MUSLIN_ARG_MEASURED, T);
    ck_carry_on_refused(carry_on_of(T, 4, M, -1), range, MUSLIN_ARG_SEGMENT_CUT, 0);
    ck_carry_on_refused(carry_on_of(T, 4, M, MUSLIN_SIZE_MAX + 1), range, MUSLIN_ARG_SEGMENT_CUT, MUSLIN_SIZE_MAX);
    struct muslin_carry_on_spec spec = carry_on_of(T, 4, M, 9000);
    spec.allowance = -1;
    ck_carry_on_refused(spec, range, MUSLIN_ARG_SEAM_ALLOWANCE, 0);
    spec.allowance = 0;
    spec.take_up = SEAM_MAX + 1;
    ck_carry_on_refused(spec, range, MUSLIN_ARG_TAKE_UP, SEAM_MAX);
}
END_TEST

/* ---- errors and shares ----------------------------------------------------------------------------------------- */

START_TEST(a_small_error_multiplies_by_the_number_of_seams)
{
    muslin_len total = 0;
    ck_ok(muslin_seam_error_total(IN(0, 1, 32), 11, &total, NULL));
    ck_assert_int_eq(total, IN(0, 11, 32));
    ck_ok(muslin_seam_error_total(-IN(0, 1, 64), 8, &total, NULL));
    ck_assert_int_eq(total, -IN(0, 1, 8));
    ck_ok(muslin_seam_error_total(-MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX, &total, NULL));
    ck_assert_int_eq(total, -INT64_C(2147483647) * INT64_C(1073741824));
    ck_ok(muslin_seam_error_total(MUSLIN_SIZE_MAX, 0, &total, NULL));
    ck_assert_int_eq(total, 0);
}
END_TEST

START_TEST(an_error_total_out_of_range_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len total = 77;
    ck_status(muslin_seam_error_total(MUSLIN_SIZE_MAX + 1, 1, &total, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ERROR);
    ck_status(muslin_seam_error_total(-MUSLIN_SIZE_MAX - 1, 1, &total, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_error_total(1, -1, &total, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAMS);
    ck_status(muslin_seam_error_total(1, MUSLIN_COUNT_MAX + 1, &total, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_error_total(1, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(total, 77);
}
END_TEST

START_TEST(the_error_limit_is_the_largest_that_stays_within_the_tolerance)
{
    uint64_t state = 12;
    int right = 1;
    for (int i = 0; i < DRAWS; i++) {
        muslin_len tolerance = draw_from(&state, 0, MUSLIN_SIZE_MAX);
        int64_t seams = draw_from(&state, 1, i % 2 == 0 ? 100 : MUSLIN_COUNT_MAX);
        muslin_len limit = -1;
        right = right && muslin_seam_error_limit(tolerance, seams, &limit, NULL) == MUSLIN_OK;
        right = right && limit >= 0 && limit * seams <= tolerance && (limit + 1) * seams > tolerance;
    }
    ck_assert(right);
}
END_TEST

START_TEST(an_error_limit_out_of_range_is_refused)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len limit = 77;
    ck_status(muslin_seam_error_limit(-1, 1, &limit, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TOLERANCE);
    ck_status(muslin_seam_error_limit(MUSLIN_SIZE_MAX + 1, 1, &limit, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_error_limit(1, 0, &limit, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAMS);
    ck_status(muslin_seam_error_limit(1, MUSLIN_COUNT_MAX + 1, &limit, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_error_limit(1, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(limit, 77);
}
END_TEST

static int32_t share_of(int64_t cut, int64_t finished)
{
    int32_t ppm = -1;
    ck_ok(muslin_seam_share(cut, finished, &ppm, NULL));
    return ppm;
}

START_TEST(two_and_a_half_inch_squares_lose_a_third_and_more)
{
    /* by hand: 1 - 4 / 6.25 = 0.36 */
    ck_assert_int_eq(share_of(2 * IN(2, 1, 2) * IN(2, 1, 2), 2 * WHOLE_IN(2) * WHOLE_IN(2)), 360000);
}
END_TEST

START_TEST(a_share_goes_to_the_nearest_millionth_ties_up)
{
    /* by hand: 1/3 = 333333.33, 2/3 = 666666.67, 1/2000000 = 0.5, 1/2000001 just below */
    ck_assert_int_eq(share_of(3, 2), 333333);
    ck_assert_int_eq(share_of(3, 1), 666667);
    ck_assert_int_eq(share_of(2000000, 1999999), 1);
    ck_assert_int_eq(share_of(2000001, 2000000), 0);
}
END_TEST

START_TEST(shares_of_the_largest_areas_do_not_overflow)
{
    ck_assert_int_eq(share_of(INT64_MAX, 0), 1000000);
    ck_assert_int_eq(share_of(INT64_MAX, INT64_MAX), 0);
    ck_assert_int_eq(share_of(INT64_MAX, INT64_MAX / 4), 750000);
    ck_assert_int_eq(share_of(1, 0), 1000000);
}
END_TEST

START_TEST(areas_that_do_not_belong_together_are_refused)
{
    struct muslin_problem problem = PROBLEM;
    int32_t ppm = 77;
    ck_status(muslin_seam_share(0, 0, &ppm, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_AREA);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_seam_share(-5, -6, &ppm, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_share(5, 6, &ppm, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_AREA);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.limit, 5);
    ck_status(muslin_seam_share(5, -1, &ppm, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_seam_share(5, 4, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(ppm, 77);
}
END_TEST

/* ---- struct rules ---------------------------------------------------------------------------------------------- */

static muslin_status call_piece(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_piece(spec, out, problem);
}

static muslin_status call_row_equal(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_row_equal(20320, 6, spec, out, problem);
}

static muslin_status call_row(const void *spec, void *out, struct muslin_problem *problem)
{
    const muslin_len cuts[] = { 20320, 12192 };
    return muslin_seam_row(cuts, 2, spec, out, problem);
}

static muslin_status call_strip_for_seam(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_strip_for_finished(48768, 3, spec, &nearest, out, problem);
}

static muslin_status call_strip_for_rounding(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_strip_for_finished(48768, 3, &quarter, spec, out, problem);
}

static muslin_status call_resize_seam(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_resize_cut(20320, 2, 1, spec, &nearest, out, problem);
}

static muslin_status call_resize_rounding(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_resize_cut(20320, 2, 1, &quarter, spec, out, problem);
}

static muslin_status call_carry_on(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_seam_carry_on(spec, &nearest, out, problem);
}

static muslin_status call_carry_on_rounding(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_carry_on_spec later = carry_on_of(81280, 4, 68072, 69088);
    return muslin_seam_carry_on(&later, spec, out, problem);
}

static muslin_status call_calibrate(const void *spec, void *out, struct muslin_problem *problem)
{
    (void)spec;
    return calibrate(20320, 4, 68072, 2032, out, problem);
}

START_TEST(every_struct_keeps_the_rules)
{
    struct muslin_piece_spec piece = piece_of(48768, 48768);
    struct muslin_carry_on_spec later = carry_on_of(81280, 4, 68072, 69088);
    const struct ruled all[] = { RULED(call_piece, piece, muslin_piece),
                                 RULED(call_row_equal, quarter, muslin_sewn_row),
                                 RULED(call_row, quarter, muslin_sewn_row),
                                 RULED(call_strip_for_seam, quarter, muslin_rounded),
                                 RULED(call_strip_for_rounding, nearest, muslin_rounded),
                                 RULED(call_resize_seam, quarter, muslin_rounded),
                                 RULED(call_resize_rounding, nearest, muslin_rounded),
                                 RULED(call_carry_on, later, muslin_rounded),
                                 RULED(call_carry_on_rounding, nearest, muslin_rounded) };
    for (size_t i = 0; i < sizeof all / sizeof all[0]; i++) {
        ck_struct_rules(&all[i]);
        ck_no_flag_known(&all[i]);
    }
}
END_TEST

START_TEST(the_calibration_written_keeps_the_rules)
{
    const struct ruled calibration = RULED(call_calibrate, quarter, muslin_calibration);
    ck_out_rules(&calibration);
    ck_newer_structs(&calibration);
    ck_problem_rules(&calibration);
}
END_TEST

/* A call whose one output is a plain number, wrapped so that the rules of its spec can be tried. */
static muslin_status call_cut(const void *spec, void *out, struct muslin_problem *problem)
{
    muslin_len cut = 77;
    (void)out;
    muslin_status status = muslin_seam_cut_from_finished(8128, spec, &cut, problem);
    ck_assert(status == MUSLIN_OK || cut == 77);
    return status;
}

START_TEST(a_seam_spec_keeps_the_rules)
{
    const struct ruled cut = RULED(call_cut, quarter, muslin_rounded);
    ck_spec_rules(&cut);
}
END_TEST

INIT_CALL(seam)
INIT_CALL(piece)
INIT_CALL(carry_on)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_piece_spec piece = MUSLIN_PIECE_SPEC_INIT;
    const struct muslin_carry_on_spec carry_on = MUSLIN_CARRY_ON_SPEC_INIT;
    ck_init_rules(init_seam, &quarter, (uint32_t)sizeof quarter);
    ck_init_rules(init_piece, &piece, (uint32_t)sizeof piece);
    ck_init_rules(init_carry_on, &carry_on, (uint32_t)sizeof carry_on);
    ck_assert_int_eq(quarter.allowance, IN(0, 1, 4));
    ck_assert_int_eq(piece.bottom, IN(0, 1, 4));
    ck_assert_int_eq(carry_on.allowance, IN(0, 1, 4));
}
END_TEST

static TCase *tcase_sizes(void)
{
    TCase *sizes = tcase_create("cut and finished");
    tcase_add_test(sizes, a_limit_is_told_in_the_unit_of_the_value);
    tcase_add_test(sizes, a_limit_of_the_library_is_no_round_number_of_millimetres);
    tcase_add_test(sizes, a_six_inch_square_is_cut_six_and_a_half);
    tcase_add_test(sizes, a_unit_that_finishes_eight_and_a_half_is_nine_unfinished);
    tcase_add_test(sizes, a_metric_allowance_works_as_well);
    tcase_add_test(sizes, the_take_up_of_one_whole_seam_is_added);
    tcase_add_test(sizes, cut_and_finished_undo_each_other);
    tcase_add_test(sizes, a_piece_may_finish_at_exactly_nothing);
    tcase_add_test(sizes, a_piece_one_tick_too_narrow_names_what_the_seams_need);
    tcase_add_test(sizes, the_largest_and_smallest_sizes_are_taken);
    tcase_add_test(sizes, a_size_outside_the_range_is_refused);
    tcase_add_test(sizes, an_allowance_or_take_up_outside_the_range_is_refused);
    tcase_add_test(sizes, a_missing_seam_or_output_is_refused);
    tcase_add_test(sizes, the_array_forms_agree_with_the_single_ones);
    tcase_add_test(sizes, a_long_array_is_as_its_elements);
    tcase_add_test(sizes, an_array_may_be_changed_in_place);
    tcase_add_test(sizes, with_statuses_each_element_gets_its_own);
    tcase_add_test(sizes, without_statuses_an_array_stops_at_its_first_failure);
    tcase_add_test(sizes, an_empty_array_succeeds_but_its_seam_is_still_looked_at);
    tcase_add_test(sizes, an_array_that_is_missing_is_refused);
    return sizes;
}

static TCase *tcase_pieces(void)
{
    TCase *pieces = tcase_create("pieces and rows");
    tcase_add_test(pieces, a_six_inch_piece_loses_a_seventh_to_its_seams);
    tcase_add_test(pieces, each_edge_has_its_own_allowance);
    tcase_add_test(pieces, only_sewn_edges_bear_half_a_take_up_rounded_up_once);
    tcase_add_test(pieces, a_piece_sewn_all_round_is_cut_as_the_plain_rule_says);
    tcase_add_test(pieces, a_piece_without_area_has_no_share);
    tcase_add_test(pieces, the_largest_piece_has_an_area);
    tcase_add_test(pieces, a_bad_measure_of_a_piece_is_named_with_its_place);
    tcase_add_test(pieces, published_strip_sets_come_out_as_wide_as_printed);
    tcase_add_test(pieces, the_test_trio_measures_three_and_a_half_overall);
    tcase_add_test(pieces, two_by_two_squares_cannot_measure_what_the_pattern_printed);
    tcase_add_test(pieces, a_row_shows_its_working);
    tcase_add_test(pieces, a_row_of_unequal_pieces_is_what_sewing_them_one_by_one_gives);
    tcase_add_test(pieces, unequal_pieces_cut_one_two_three_and_a_half_make_six);
    tcase_add_test(pieces, a_single_piece_is_a_row_without_seams);
    tcase_add_test(pieces, the_longest_row_possible_fits);
    tcase_add_test(pieces, a_row_of_pieces_no_wider_than_their_seams_finishes_at_nothing);
    tcase_add_test(pieces, a_row_names_the_first_piece_that_the_seams_would_eat);
    tcase_add_test(pieces, cuts_and_counts_of_a_row_outside_their_ranges_are_refused);
    return pieces;
}

static TCase *tcase_backwards(void)
{
    TCase *backwards = tcase_create("backwards and resized");
    tcase_add_test(backwards, a_six_inch_nine_patch_needs_strips_of_two_and_a_half);
    tcase_add_test(backwards, a_strip_off_the_grid_goes_where_it_is_sent);
    tcase_add_test(backwards, strips_rounded_up_reach_the_wish_and_one_step_less_does_not);
    tcase_add_test(backwards, a_strip_for_a_wish_out_of_range_is_refused);
    tcase_add_test(backwards, a_block_doubled_takes_its_seams_off_first);
    tcase_add_test(backwards, the_printed_tip_on_doubling_is_not_followed);
    tcase_add_test(backwards, resizing_there_and_back_changes_nothing);
    tcase_add_test(backwards, a_size_of_nothing_stays_nothing_whatever_the_factor);
    tcase_add_test(backwards, resizing_beyond_any_length_overflows);
    tcase_add_test(backwards, a_ratio_that_is_none_is_refused);
    tcase_add_test(backwards, calls_that_round_refuse_a_bad_rounding);
    return backwards;
}

static TCase *tcase_sewn(void)
{
    TCase *sewn = tcase_create("the seam one really sews");
    tcase_add_test(sewn, a_measured_set_gives_the_published_shortfall);
    tcase_add_test(sewn, a_trio_that_is_right_shows_one_inch_in_the_middle);
    tcase_add_test(sewn, the_centre_of_any_trio_tells_the_same_allowance);
    tcase_add_test(sewn, a_set_that_came_out_wide_has_a_negative_take_up);
    tcase_add_test(sewn, halves_of_a_tick_go_up);
    tcase_add_test(sewn, sewing_where_the_cure_says_meets_the_plan);
    tcase_add_test(sewn, the_fractions_of_a_calibration_give_back_the_measured_width);
    tcase_add_test(sewn, a_take_up_of_two_allowances_is_the_last_that_can_be_cured);
    tcase_add_test(sewn, strips_narrower_than_the_seams_meant_cannot_be_calibrated);
    tcase_add_test(sewn, measures_of_a_calibration_outside_their_ranges_are_refused);
    tcase_add_test(sewn, a_segment_as_long_as_its_set_is_wide_becomes_the_measured_width);
    tcase_add_test(sewn, a_set_that_met_its_plan_changes_no_later_cut);
    tcase_add_test(sewn, a_piece_that_was_all_seam_becomes_the_seam_as_sewn);
    tcase_add_test(sewn, later_cuts_scale_as_one_strip_of_the_set_does);
    tcase_add_test(sewn, the_largest_sets_carry_on_exactly);
    tcase_add_test(sewn, a_carry_on_plan_names_the_part_that_the_seams_eat);
    tcase_add_test(sewn, measures_of_a_carry_on_plan_outside_their_ranges_are_refused);
    return sewn;
}

static TCase *tcase_errors_and_structs(void)
{
    TCase *errors = tcase_create("errors, shares and structs");
    tcase_add_test(errors, a_small_error_multiplies_by_the_number_of_seams);
    tcase_add_test(errors, an_error_total_out_of_range_is_refused);
    tcase_add_test(errors, the_error_limit_is_the_largest_that_stays_within_the_tolerance);
    tcase_add_test(errors, an_error_limit_out_of_range_is_refused);
    tcase_add_test(errors, two_and_a_half_inch_squares_lose_a_third_and_more);
    tcase_add_test(errors, a_share_goes_to_the_nearest_millionth_ties_up);
    tcase_add_test(errors, shares_of_the_largest_areas_do_not_overflow);
    tcase_add_test(errors, areas_that_do_not_belong_together_are_refused);
    tcase_add_test(errors, every_struct_keeps_the_rules);
    tcase_add_test(errors, the_calibration_written_keeps_the_rules);
    tcase_add_test(errors, a_seam_spec_keeps_the_rules);
    tcase_add_test(errors, initial_values_are_those_of_the_macros);
    return errors;
}

Suite *seam_suite(void);

Suite *seam_suite(void)
{
    Suite *suite = suite_create("seam");
    suite_add_tcase(suite, tcase_sizes());
    suite_add_tcase(suite, tcase_pieces());
    suite_add_tcase(suite, tcase_backwards());
    suite_add_tcase(suite, tcase_sewn());
    suite_add_tcase(suite, tcase_errors_and_structs());
    return suite;
}
