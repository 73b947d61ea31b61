/* test_examples.c - every example in the public headers' comments, quoted and run.
 *
 * SPDX-License-Identifier: MIT
 *
 * tests/consumers/examples.py checks that each example of the headers is quoted here word for word, and no other. */
#include <stdio.h>

#include "testing.h"

/* Two and a half inches, a quarter, and an eighth of a yard, as ticks. */
enum { TWO_AND_A_HALF = 20320, QUARTER = 2032, EIGHTH_YARD = 36576 };

/* A spec_init call writes the same bytes as the INIT macro. */
#define ck_inits(call, spec, macro) \
    do { \
        struct spec expected = macro; \
        struct spec found; \
        memset(&found, 0xAA, sizeof found); \
        ck_ok(call(&found, sizeof found)); \
        ck_assert_mem_eq(&found, &expected, sizeof found); \
    } while (0)

/* ---- base.h ---------------------------------------------------------------------------------------------------- */

START_TEST(headers_and_library_belong_together)
{
    /* Example: muslin_version() / 1000 >= MUSLIN_VERSION / 1000. */
    ck_assert_uint_eq(muslin_version(), MUSLIN_VERSION);
}
END_TEST

START_TEST(the_version_can_be_printed)
{
    /* Example: puts(muslin_version_text()). */
    char expected[32];
    snprintf(expected, sizeof expected, "%d.%d.%d", MUSLIN_VERSION_MAJOR, MUSLIN_VERSION_MINOR, MUSLIN_VERSION_PATCH);
    ck_assert_str_eq(muslin_version_text(), expected);
}
END_TEST

START_TEST(a_status_has_a_name)
{
    /* Example: muslin_status_name(MUSLIN_ERR_RANGE). */
    ck_assert_str_eq(muslin_status_name(MUSLIN_ERR_RANGE), "ERR_RANGE");
}
END_TEST

START_TEST(statuses_arguments_and_warnings_have_words)
{
    /* Example: muslin_status_count() gives MUSLIN_ERR_TOO_MANY + 1. */
    ck_assert_int_eq(muslin_status_count(), MUSLIN_ERR_TOO_MANY + 1);
    /* Example: puts(muslin_status_sentence(MUSLIN_ERR_NULL)). */
    ck_assert_str_ne(muslin_status_sentence(MUSLIN_ERR_NULL), "");
    /* Example: for (int32_t i = 0; i < muslin_argument_count(); i++) puts(muslin_argument_words(i)). */
    for (int32_t i = 0; i < muslin_argument_count(); i++)
        ck_assert_str_ne(muslin_argument_words(i), muslin_argument_words(-1));
    /* Example: muslin_argument_words(MUSLIN_ARG_SEAM_ALLOWANCE). */
    ck_assert_str_eq(muslin_argument_words(MUSLIN_ARG_SEAM_ALLOWANCE), "seam allowance");
    /* Example: puts(muslin_warning_sentence(MUSLIN_WARN_NO_SLACK)). */
    ck_assert_str_ne(muslin_warning_sentence(MUSLIN_WARN_NO_SLACK), "");
    /* Example: 1u << (muslin_warning_count() - 1) gives MUSLIN_WARN_LONGER_THAN_WIDTH. */
    ck_assert_uint_eq(1u << (muslin_warning_count() - 1), MUSLIN_WARN_LONGER_THAN_WIDTH);
    /* Example: muslin_warning_name(MUSLIN_WARN_NO_SLACK). */
    ck_assert_str_eq(muslin_warning_name(MUSLIN_WARN_NO_SLACK), "NO_SLACK");
}
END_TEST

START_TEST(constants_can_be_listed)
{
    /* Example: for (int32_t i = 0; i < muslin_constant_count(); i++) puts(muslin_constant_name(i)). Example: where the
     * name is "TICKS_PER_INCH", muslin_constant_value(i) gives 8128. */
    int found = 0;
    for (int32_t i = 0; i < muslin_constant_count(); i++) {
        ck_assert_str_ne(muslin_constant_name(i), "");
        if (strcmp(muslin_constant_name(i), "TICKS_PER_INCH") == 0) {
            ck_assert_int_eq(muslin_constant_value(i), 8128);
            found++;
        }
    }
    ck_assert_int_eq(found, 1);
}
END_TEST

START_TEST(the_usual_allocator_serves)
{
    /* Example: struct muslin_allocator a; muslin_allocator_libc(&a). */
    struct muslin_allocator a;
    ck_ok(muslin_allocator_libc(&a));
    void *block = a.alloc(a.context, 8);
    ck_assert_ptr_nonnull(block);
    a.free(a.context, block, 8);
}
END_TEST

/* ---- length.h -------------------------------------------------------------------------------------------------- */

static struct muslin_rounding_spec rounded_to(muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.direction = direction;
    return rounding;
}

START_TEST(two_lengths_add)
{
    /* Example: 2 1/2 in + 1/4 in: muslin_length_add(20320, 2032, &sum) gives 22352. */
    muslin_len sum;
    ck_ok(muslin_length_add(20320, 2032, &sum));
    ck_assert_int_eq(sum, 22352);
}
END_TEST

START_TEST(two_lengths_subtract)
{
    /* Example: muslin_length_subtract(20320, 4064, &rest), 2 1/2 in less 1/2 in, gives 16256. */
    muslin_len rest;
    ck_ok(muslin_length_subtract(20320, 4064, &rest));
    ck_assert_int_eq(rest, 16256);
}
END_TEST

START_TEST(strips_laid_side_by_side_multiply)
{
    /* Example: 7 strips of 2 1/2 in laid side by side: muslin_length_multiply(20320, 7, &width) gives 142240,
     * 17 1/2 in. */
    muslin_len width;
    ck_ok(muslin_length_multiply(20320, 7, &width));
    ck_assert_int_eq(width, 142240);
    ck_assert_int_eq(width, IN(17, 1, 2));
}
END_TEST

START_TEST(a_third_is_rounded_down_to_eighths)
{
    /* Example: 10 in over 3, down to 1/8 in: muslin_length_divide(81280, 3, &down_to_eighths, &part) gives 26416,
     * 3 1/4 in, with part.error -678. */
    struct muslin_rounding_spec down_to_eighths = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_DOWN);
    struct muslin_rounded part = { .size = sizeof part };
    ck_ok(muslin_length_divide(81280, 3, &down_to_eighths, &part));
    ck_assert_int_eq(part.value, 26416);
    ck_assert_int_eq(part.value, IN(3, 1, 4));
    ck_assert_int_eq(part.error, -678);
}
END_TEST

START_TEST(a_length_is_scaled_by_a_ratio)
{
    /* Example: 4 in x 3 / 2 to the nearest tick gives 48768, 6 in. */
    struct muslin_rounding_spec nearest_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded scaled = { .size = sizeof scaled };
    ck_ok(muslin_length_scale(WHOLE_IN(4), 3, 2, &nearest_tick, &scaled));
    ck_assert_int_eq(scaled.value, 48768);
    ck_assert_int_eq(scaled.value, WHOLE_IN(6));
}
END_TEST

START_TEST(two_lengths_compare)
{
    /* Example: muslin_length_compare(1, 2) gives -1. */
    ck_assert_int_eq(muslin_length_compare(1, 2), -1);
}
END_TEST

START_TEST(three_borders_sum)
{
    /* Example: the three borders { 8128, 16256, 24384 } sum to 48768, 6 in. */
    const muslin_len borders[] = { 8128, 16256, 24384 };
    muslin_len sum;
    ck_ok(muslin_length_sum(borders, 3, &sum));
    ck_assert_int_eq(sum, 48768);
    ck_assert_int_eq(sum, WHOLE_IN(6));
}
END_TEST

START_TEST(lengths_with_counts_sum)
{
    /* Example: lengths { 8128, 4064 } with counts { 2, 3 } give 28448, 3 1/2 in. */
    const muslin_len lengths[] = { 8128, 4064 };
    const int64_t counts[] = { 2, 3 };
    muslin_len sum;
    ck_ok(muslin_length_dot(lengths, counts, 2, &sum));
    ck_assert_int_eq(sum, 28448);
    ck_assert_int_eq(sum, IN(3, 1, 2));
}
END_TEST

enum { A_MILLION = 1000000 };

START_TEST(a_million_cuts_gain_their_seams)
{
    /* Example: muslin_length_add_n(cut, seams, 1000000, cut, NULL, NULL). */
    muslin_len *cut = malloc(A_MILLION * sizeof *cut);
    muslin_len *seams = malloc(A_MILLION * sizeof *seams);
    int wrong = 0;
    ck_assert(cut != NULL && seams != NULL);
    for (muslin_len i = 0; i < A_MILLION; i++) {
        cut[i] = i;
        seams[i] = 2 * QUARTER;
    }
    ck_ok(muslin_length_add_n(cut, seams, 1000000, cut, NULL, NULL));
    for (muslin_len i = 0; i < A_MILLION; i++)
        wrong |= cut[i] != i + 2 * QUARTER;
    ck_assert(!wrong);
    free(cut);
    free(seams);
}
END_TEST

START_TEST(lengths_are_scaled_and_snapped_together)
{
    /* Example: { 8128, 16256, 24384 } x 3 / 2 are { 12192, 24384, 36576 }. */
    const muslin_len cut[] = { 8128, 16256, 24384 };
    struct muslin_rounding_spec rounding = rounded_to(1, MUSLIN_DIRECTION_NEAREST);
    muslin_len out[3];
    ck_ok(muslin_length_scale_n(cut, 3, 3, 2, &rounding, out, NULL, NULL));
    ck_assert(out[0] == 12192 && out[1] == 24384 && out[2] == 36576);

    /* Example: { 7700, 8128, 8600 } to the nearest 1/8 in are 1 in each. */
    const muslin_len about[] = { 7700, 8128, 8600 }; /* within 1/16 in, 508 ticks */
    rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    ck_ok(muslin_length_snap_n(about, 3, &rounding, out, NULL, NULL));
    ck_assert(out[0] == 8128 && out[1] == 8128 && out[2] == 8128);
}
END_TEST

START_TEST(a_length_snaps_up_to_an_eighth)
{
    /* Example: 3.05 in up to 1/8 in is 3 1/8 in. */
    struct muslin_rounding_spec rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    struct muslin_rounded snapped = { .size = sizeof snapped };
    ck_ok(muslin_length_snap(IN(3, 5, 100), &rounding, &snapped));
    ck_assert_int_eq(snapped.value, IN(3, 1, 8));
}
END_TEST

START_TEST(the_diagonal_of_a_square_is_rounded_up)
{
    /* Example: a = 48768 (6 in), up to 1/8 in: 8 1/2 in. */
    struct muslin_rounding_spec rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    struct muslin_rounded diagonal = { .size = sizeof diagonal };
    ck_ok(muslin_length_times_root2(48768, &rounding, &diagonal));
    ck_assert_int_eq(diagonal.value, IN(8, 1, 2));
}
END_TEST

START_TEST(the_side_of_a_square_follows_from_its_diagonal)
{
    /* Example: 12 in to the nearest 1/8 in is 8 1/2 in. */
    struct muslin_rounding_spec rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    struct muslin_rounded side = { .size = sizeof side };
    ck_ok(muslin_length_over_root2(WHOLE_IN(12), &rounding, &side));
    ck_assert_int_eq(side.value, IN(8, 1, 2));
}
END_TEST

START_TEST(an_equilateral_triangle_has_a_height_and_a_side)
{
    /* Example: 4 in to the nearest 1/8 in is 3 1/2 in. */
    struct muslin_rounding_spec rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST);
    struct muslin_rounded found = { .size = sizeof found };
    ck_ok(muslin_length_equilateral_height(WHOLE_IN(4), &rounding, &found));
    ck_assert_int_eq(found.value, IN(3, 1, 2));
    /* Example: 6 in up to 1/8 in is 7 in. */
    rounding.direction = MUSLIN_DIRECTION_UP;
    ck_ok(muslin_length_equilateral_side(WHOLE_IN(6), &rounding, &found));
    ck_assert_int_eq(found.value, WHOLE_IN(7));
}
END_TEST

START_TEST(three_and_four_give_five)
{
    /* Example: 3 in and 4 in give 5 in, exact. */
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded hypotenuse = { .size = sizeof hypotenuse };
    ck_ok(muslin_length_hypotenuse(WHOLE_IN(3), WHOLE_IN(4), &rounding, &hypotenuse));
    ck_assert_int_eq(hypotenuse.value, WHOLE_IN(5));
    ck_assert_int_eq(hypotenuse.exact, 1);
}
END_TEST

START_TEST(a_rectangle_becomes_a_square)
{
    /* Example: the area of 4 in x 9 in, 2 x 32512 x 73152, gives 48768, 6 in, exact. */
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded side = { .size = sizeof side };
    ck_ok(muslin_length_root_of_area(INT64_C(2) * 32512 * 73152, &rounding, &side));
    ck_assert_int_eq(side.value, 48768);
    ck_assert_int_eq(side.value, WHOLE_IN(6));
    ck_assert_int_eq(side.exact, 1);
}
END_TEST

START_TEST(a_yard_has_its_ticks)
{
    /* Example: muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD) gives 292608. */
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD), 292608);
}
END_TEST

START_TEST(a_mixed_number_is_read)
{
    /* Example: muslin_length_parse("2 1/2", 5, NULL, &parsed, NULL) gives 20320. */
    struct muslin_parsed parsed = { .size = sizeof parsed };
    ck_ok(muslin_length_parse("2 1/2", 5, NULL, &parsed, NULL));
    ck_assert_int_eq(parsed.value, 20320);
}
END_TEST

START_TEST(a_length_is_written)
{
    /* Example: 20320 gives "2 1/2 in". */
    char text[64];
    ck_ok(muslin_length_format(20320, NULL, text, sizeof text, NULL, NULL, NULL));
    ck_assert_str_eq(text, "2 1/2 in");
}
END_TEST

START_TEST(length_specs_start_from_their_usual_values)
{
    /* Example: muslin_rounding_spec_init(&rounding, sizeof rounding). */
    ck_inits(muslin_rounding_spec_init, muslin_rounding_spec, MUSLIN_ROUNDING_SPEC_INIT);
    /* Example: muslin_parse_spec_init(&reading, sizeof reading). */
    ck_inits(muslin_parse_spec_init, muslin_parse_spec, MUSLIN_PARSE_SPEC_INIT);
    /* Example: muslin_format_spec_init(&writing, sizeof writing). */
    ck_inits(muslin_format_spec_init, muslin_format_spec, MUSLIN_FORMAT_SPEC_INIT);
}
END_TEST

START_TEST(a_unit_has_its_word)
{
    /* Example: muslin_length_unit_word(MUSLIN_LENGTH_UNIT_CM) gives "cm". */
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_CM), "cm");
}
END_TEST

/* ---- seam.h ---------------------------------------------------------------------------------------------------- */

static const struct muslin_seam_spec quarter_inch = MUSLIN_SEAM_SPEC_INIT;

START_TEST(seam_specs_start_from_their_usual_values)
{
    /* Example: muslin_seam_spec_init(&seam, sizeof seam). */
    ck_inits(muslin_seam_spec_init, muslin_seam_spec, MUSLIN_SEAM_SPEC_INIT);
    /* Example: muslin_piece_spec_init(&piece, sizeof piece). */
    ck_inits(muslin_piece_spec_init, muslin_piece_spec, MUSLIN_PIECE_SPEC_INIT);
    /* Example: muslin_carry_on_spec_init(&later, sizeof later). */
    ck_inits(muslin_carry_on_spec_init, muslin_carry_on_spec, MUSLIN_CARRY_ON_SPEC_INIT);
}
END_TEST

START_TEST(a_finished_size_gains_two_allowances)
{
    /* Example: 6 in finished, 1/4 in: cut 6 1/2 in. */
    muslin_len cut;
    ck_ok(muslin_seam_cut_from_finished(WHOLE_IN(6), &quarter_inch, &cut, NULL));
    ck_assert_int_eq(cut, IN(6, 1, 2));
}
END_TEST

START_TEST(an_unfinished_size_loses_two_allowances)
{
    /* Example: 12 1/2 in unfinished, 1/4 in: 12 in finished. */
    muslin_len finished;
    ck_ok(muslin_seam_finished_from_cut(IN(12, 1, 2), &quarter_inch, &finished, NULL));
    ck_assert_int_eq(finished, WHOLE_IN(12));
}
END_TEST

START_TEST(an_array_is_changed_in_place)
{
    /* Example: out = finished makes the change in place. */
    muslin_len sizes[] = { WHOLE_IN(6), WHOLE_IN(2) };
    ck_ok(muslin_seam_cut_from_finished_n(sizes, 2, &quarter_inch, sizes, NULL, NULL));
    ck_assert_int_eq(sizes[0], IN(6, 1, 2));
    ck_assert_int_eq(sizes[1], IN(2, 1, 2));
}
END_TEST

START_TEST(a_piece_loses_a_share_to_its_seams)
{
    /* Example: 6 x 6 in finished with 1/4 in all round: cut 6 1/2 in square, 147929 ppm lost to seams. */
    struct muslin_piece_spec spec = MUSLIN_PIECE_SPEC_INIT;
    struct muslin_piece piece = { .size = sizeof piece };
    spec.finished_width = WHOLE_IN(6);
    spec.finished_height = WHOLE_IN(6);
    ck_ok(muslin_seam_piece(&spec, &piece, NULL));
    ck_assert_int_eq(piece.cut_width, IN(6, 1, 2));
    ck_assert_int_eq(piece.cut_height, IN(6, 1, 2));
    ck_assert_int_eq(piece.seam_share, 147929);
}
END_TEST

START_TEST(six_strips_make_a_set)
{
    /* Example: 6 strips cut 2 1/2 in: 12 1/2 in unfinished, 12 in finished. */
    struct muslin_sewn_row row = { .size = sizeof row };
    ck_ok(muslin_seam_row_equal(TWO_AND_A_HALF, 6, &quarter_inch, &row, NULL));
    ck_assert_int_eq(row.unfinished, IN(12, 1, 2));
    ck_assert_int_eq(row.finished, WHOLE_IN(12));
}
END_TEST

START_TEST(unequal_pieces_make_a_row)
{
    /* Example: cut 1 1/2, 2 1/2 and 3 1/2 in: 6 1/2 in unfinished, 6 in finished. */
    const muslin_len cuts[] = { IN(1, 1, 2), IN(2, 1, 2), IN(3, 1, 2) };
    struct muslin_sewn_row row = { .size = sizeof row };
    ck_ok(muslin_seam_row(cuts, 3, &quarter_inch, &row, NULL));
    ck_assert_int_eq(row.unfinished, IN(6, 1, 2));
    ck_assert_int_eq(row.finished, WHOLE_IN(6));
}
END_TEST

START_TEST(a_nine_patch_wants_strips_of_two_and_a_half_inches)
{
    /* Example: block 6 in finished, 3 across: strips cut 2 1/2 in. */
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded cut = { .size = sizeof cut };
    ck_ok(muslin_seam_strip_for_finished(WHOLE_IN(6), 3, &quarter_inch, &rounding, &cut, NULL));
    ck_assert_int_eq(cut.value, TWO_AND_A_HALF);
}
END_TEST

START_TEST(a_cut_size_is_doubled_without_its_seams)
{
    /* Example: cut 3 1/2 in doubled is 6 1/2 in. */
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded cut = { .size = sizeof cut };
    ck_ok(muslin_seam_resize_cut(IN(3, 1, 2), 2, 1, &quarter_inch, &rounding, &cut, NULL));
    ck_assert_int_eq(cut.value, IN(6, 1, 2));
}
END_TEST

START_TEST(a_short_set_tells_its_seam)
{
    /* Example: 4 strips cut 2 1/2 in measuring 8 3/8 in: short by 1/8 in over 3 seams. */
    const muslin_len cuts[] = { TWO_AND_A_HALF, TWO_AND_A_HALF, TWO_AND_A_HALF, TWO_AND_A_HALF };
    struct muslin_calibration found = { .size = sizeof found };
    ck_ok(muslin_seam_calibrate(cuts, 4, IN(8, 3, 8), QUARTER, &found, NULL));
    ck_assert_int_eq(found.shortfall, IN(0, 1, 8));
    ck_assert_int_eq(found.seams, 3);
}
END_TEST

START_TEST(a_square_follows_a_short_set)
{
    /* Example: 4 strips cut 2 1/2 in measure 8 3/8 in: a segment planned at 8 1/2 in is cut 8 3/8 in. */
    struct muslin_carry_on_spec spec = MUSLIN_CARRY_ON_SPEC_INIT;
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded cut = { .size = sizeof cut };
    spec.cut_total = WHOLE_IN(10);
    spec.strips = 4;
    spec.measured = IN(8, 3, 8);
    spec.later_cut = IN(8, 1, 2);
    ck_ok(muslin_seam_carry_on(&spec, &rounding, &cut, NULL));
    ck_assert_int_eq(cut.value, IN(8, 3, 8));
}
END_TEST

START_TEST(errors_add_up_over_seams)
{
    /* Example: 1/32 in too wide at 11 seams: 11/32 in. */
    muslin_len total;
    ck_ok(muslin_seam_error_total(IN(0, 1, 32), 11, &total, NULL));
    ck_assert_int_eq(total, IN(0, 11, 32));
}
END_TEST

START_TEST(a_tolerance_is_shared_by_the_seams)
{
    /* Example: 1/4 in over 8 seams: 1/32 in. */
    muslin_len limit;
    ck_ok(muslin_seam_error_limit(QUARTER, 8, &limit, NULL));
    ck_assert_int_eq(limit, IN(0, 1, 32));
}
END_TEST

START_TEST(a_small_square_loses_a_third_to_its_seams)
{
    /* Example: cut 2 1/2 in square, finished 2 in: 360000. */
    int32_t ppm;
    ck_ok(muslin_seam_share(2 * IN(2, 1, 2) * IN(2, 1, 2), 2 * WHOLE_IN(2) * WHOLE_IN(2), &ppm, NULL));
    ck_assert_int_eq(ppm, 360000);
}
END_TEST

/* ---- fabric.h -------------------------------------------------------------------------------------------------- */

START_TEST(fabric_specs_start_from_their_usual_values)
{
    /* Example: muslin_purchase_spec_init(&buy, sizeof buy). */
    ck_inits(muslin_purchase_spec_init, muslin_purchase_spec, MUSLIN_PURCHASE_SPEC_INIT);
    /* Example: muslin_cloth_spec_init(&cloth, sizeof cloth). */
    ck_inits(muslin_cloth_spec_init, muslin_cloth_spec, MUSLIN_CLOTH_SPEC_INIT);
    /* Example: muslin_strips_spec_init(&strips, sizeof strips). */
    ck_inits(muslin_strips_spec_init, muslin_strips_spec, MUSLIN_STRIPS_SPEC_INIT);
    /* Example: muslin_stock_spec_init(&stock, sizeof stock). */
    ck_inits(muslin_stock_spec_init, muslin_stock_spec, MUSLIN_STOCK_SPEC_INIT);
}
END_TEST

START_TEST(selvages_come_off_the_labelled_width)
{
    /* Example: 44 in labelled, 1/2 in selvages, no shrinkage: 43 in. */
    muslin_len usable;
    ck_ok(muslin_fabric_usable_width(WHOLE_IN(44), IN(0, 1, 2), 0, &usable, NULL));
    ck_assert_int_eq(usable, WHOLE_IN(43));
}
END_TEST

START_TEST(cloth_is_bought_in_steps)
{
    /* Example: 112 in in steps of 1/8 yd: 25 steps, 3 1/8 yd, 1/2 in spare; 4 in less would save a step. */
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase made = { .size = sizeof made };
    spec.needed = WHOLE_IN(112);
    ck_ok(muslin_fabric_purchase(&spec, &made, NULL));
    ck_assert_int_eq(made.steps, 25);
    ck_assert_int_eq(made.bought, 25 * EIGHTH_YARD);
    ck_assert_int_eq(made.spare, IN(0, 1, 2));
    ck_assert_int_eq(made.less_by, WHOLE_IN(4));
}
END_TEST

START_TEST(squares_come_from_a_fat_quarter)
{
    /* Example: 5 in squares from 18 x 22 in: 12. */
    struct muslin_cloth_spec spec = MUSLIN_CLOTH_SPEC_INIT;
    struct muslin_cloth_pieces made = { .size = sizeof made };
    spec.width = WHOLE_IN(18);
    spec.length = WHOLE_IN(22);
    spec.piece_width = WHOLE_IN(5);
    spec.piece_length = WHOLE_IN(5);
    ck_ok(muslin_fabric_pieces(&spec, &made, NULL));
    ck_assert_int_eq(made.pieces, 12);
}
END_TEST

START_TEST(squares_come_from_strips)
{
    /* Example: 52 squares of 4 in at 44 in usable: 11 a strip, 5 strips, 20 in. */
    struct muslin_strips_spec spec = MUSLIN_STRIPS_SPEC_INIT;
    struct muslin_strips made = { .size = sizeof made };
    spec.pieces = 52;
    spec.piece_across = WHOLE_IN(4);
    spec.strip_cut = WHOLE_IN(4);
    spec.usable_width = WHOLE_IN(44);
    ck_ok(muslin_fabric_strips(&spec, &made, NULL));
    ck_assert_int_eq(made.per_strip, 11);
    ck_assert_int_eq(made.strips, 5);
    ck_assert_int_eq(made.length, WHOLE_IN(20));
}
END_TEST

START_TEST(an_area_bounds_the_cloth_from_below)
{
    /* Example: 1296 sq in at 36 in: 36 in. */
    muslin_len least;
    ck_ok(muslin_fabric_area_bound(2 * WHOLE_IN(36) * WHOLE_IN(36), WHOLE_IN(36), &least, NULL));
    ck_assert_int_eq(least, WHOLE_IN(36));
}
END_TEST

START_TEST(pinked_edges_are_measured_at_the_valleys)
{
    /* Example: a strip 2 1/2 in from tip to tip, 1/16 in deep, is 2 3/8 in from valley to valley. */
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    muslin_len across_strip;
    stock.edge = MUSLIN_EDGE_PINKED_TIPS;
    stock.pink_depth = IN(0, 1, 16);
    ck_ok(muslin_stock_size(&stock, MUSLIN_EDGE_PINKED_VALLEYS, NULL, &across_strip, NULL));
    ck_assert_int_eq(across_strip, IN(2, 3, 8));
}
END_TEST

START_TEST(half_strips_come_from_fat_quarters)
{
    /* Example: 80 half-width strips of 2 1/2 in from fat quarters 18 in deep: 7 a piece, 12 pieces. */
    struct muslin_stock_spec stock = MUSLIN_STOCK_SPEC_INIT;
    struct muslin_stock_yield made = { .size = sizeof made };
    stock.kind = MUSLIN_STOCK_FAT_QUARTER;
    stock.width = WHOLE_IN(22);
    stock.length = WHOLE_IN(18);
    ck_ok(muslin_stock_strips(&stock, TWO_AND_A_HALF, 80, &made, NULL));
    ck_assert_int_eq(made.per_piece, 7);
    ck_assert_int_eq(made.pieces_needed, 12);
}
END_TEST

START_TEST(washed_and_unwashed_fabrics_do_not_mix)
{
    /* Example: a washed and an unwashed fabric give MUSLIN_WARN_MIXED_WASH. */
    struct muslin_stock_spec fabrics[] = { MUSLIN_STOCK_SPEC_INIT, MUSLIN_STOCK_SPEC_INIT };
    uint32_t warnings;
    fabrics[0].kind = MUSLIN_STOCK_YARDAGE;
    fabrics[0].care = MUSLIN_CARE_WASHED;
    ck_ok(muslin_stock_check(fabrics, sizeof fabrics[0], 2, &warnings, NULL));
    ck_assert_uint_eq(warnings, MUSLIN_WARN_MIXED_WASH);
}
END_TEST

START_TEST(a_stripe_may_lie_upside_down)
{
    /* Example: a stripe turned by 2 may, by 1 may not. */
    int32_t by_two, by_one;
    ck_ok(muslin_print_may_turn(MUSLIN_PRINT_STRIPE_ALONG, 2, &by_two, NULL));
    ck_ok(muslin_print_may_turn(MUSLIN_PRINT_STRIPE_ALONG, 1, &by_one, NULL));
    ck_assert_int_eq(by_two, 1);
    ck_assert_int_eq(by_one, 0);
}
END_TEST

/* ---- reference.h ----------------------------------------------------------------------------------------------- */

START_TEST(the_batting_table_can_be_read)
{
    /* Example: muslin_reference_count(MUSLIN_TABLE_BATTING, &n, NULL) gives 7 in this version. */
    int64_t n;
    ck_ok(muslin_reference_count(MUSLIN_TABLE_BATTING, &n, NULL));
    ck_assert_int_eq(n, 7);
    /* Example: row 3 of MUSLIN_TABLE_BATTING is twin, 72 x 90 in. */
    struct muslin_reference row = { .size = sizeof row };
    ck_ok(muslin_reference_row(MUSLIN_TABLE_BATTING, 3, &row, NULL));
    ck_assert_str_eq(muslin_reference_name(MUSLIN_TABLE_BATTING, 3), "twin");
    ck_assert_int_eq(row.width, WHOLE_IN(72));
    ck_assert_int_eq(row.length, WHOLE_IN(90));
    /* Example: row 5 of MUSLIN_TABLE_BATTING is named "queen". */
    ck_assert_str_eq(muslin_reference_name(MUSLIN_TABLE_BATTING, 5), "queen");
}
END_TEST

/* ---- stripset.h ------------------------------------------------------------------------------------------------ */

START_TEST(a_fold_kept_clear_costs_two_segments)
{
    /* Example: 40 in, 6 1/2 in segments, 1/2 in trimmed at each end: six, with no slack; with 1 in kept clear: four. */
    struct muslin_yield_spec spec = MUSLIN_YIELD_SPEC_INIT;
    struct muslin_yield made = { .size = sizeof made };
    spec.segment_cut = IN(6, 1, 2);
    spec.end_trim = IN(0, 1, 2);
    ck_ok(muslin_stripset_yield(&spec, &made, NULL));
    ck_assert_int_eq(made.segments, 6);
    ck_assert_int_eq(made.shorter_by, 0);
    ck_assert_int_eq(made.warnings, MUSLIN_WARN_NO_SLACK);
    spec.fold_clear = WHOLE_IN(1);
    ck_ok(muslin_stripset_yield(&spec, &made, NULL));
    ck_assert_int_eq(made.segments, 4);
}
END_TEST

START_TEST(the_shortest_strip_counts)
{
    /* Example: 41, 40 and 42 in: 40 in, index 1, mixed. */
    const muslin_len lengths[] = { WHOLE_IN(41), WHOLE_IN(40), WHOLE_IN(42) };
    muslin_len shortest;
    size_t index;
    uint32_t warnings;
    ck_ok(muslin_stripset_shortest(lengths, 3, &shortest, &index, &warnings, NULL));
    ck_assert_int_eq(shortest, WHOLE_IN(40));
    ck_assert_uint_eq(index, 1);
    ck_assert_uint_eq(warnings, MUSLIN_WARN_MIXED_WIDTHS);
}
END_TEST

START_TEST(the_scarcest_print_decides)
{
    /* Example: 20 dark strips, 4 a set, and 11 light ones, 2 a set: 5 sets, 0 and 1 strips left, the dark print is
     * the scarcest. */
    struct muslin_stripset_print rows[] = { { sizeof rows[0], 0, 20, 4, 0 }, { sizeof rows[0], 0, 11, 2, 0 } };
    int64_t sets;
    size_t scarcest;
    ck_ok(muslin_stripset_prints(rows, sizeof rows[0], 2, 0, &sets, &scarcest, NULL));
    ck_assert_int_eq(sets, 5);
    ck_assert_int_eq(rows[0].left_over, 0);
    ck_assert_int_eq(rows[1].left_over, 1);
    ck_assert_uint_eq(scarcest, 0);
}
END_TEST

START_TEST(segments_wanted_become_strips)
{
    /* Example: 42 segments, 3 a set, 5 strips a set: 14 sets, 70 strips. */
    struct muslin_need_spec spec = MUSLIN_NEED_SPEC_INIT;
    struct muslin_need made = { .size = sizeof made };
    spec.segments = 42;
    spec.segments_per_set = 3;
    spec.strips_per_set = 5;
    ck_ok(muslin_stripset_need(&spec, &made, NULL));
    ck_assert_int_eq(made.sets, 14);
    ck_assert_int_eq(made.strips, 70);
}
END_TEST

START_TEST(a_bundle_becomes_two_tops)
{
    /* Example: 42 strips, 6 a set, 6 segments a set, 2 a block, 9 blocks a top: 2 tops, 6 strips left. */
    struct muslin_harvest_spec spec = MUSLIN_HARVEST_SPEC_INIT;
    struct muslin_harvest made = { .size = sizeof made };
    spec.strips = 42;
    spec.strips_per_set = 6;
    spec.segments_per_set = 6;
    spec.segments_per_block = 2;
    spec.blocks_per_top = 9;
    ck_ok(muslin_stripset_harvest(&spec, &made, NULL));
    ck_assert_int_eq(made.tops, 2);
    ck_assert_int_eq(made.strips_left, 6);
}
END_TEST

/* ---- setting.h ------------------------------------------------------------------------------------------------- */

START_TEST(nine_blocks_make_a_top)
{
    /* Example: 3 x 3 blocks of 12 in finished: 36 in finished, 36 1/2 in unfinished. */
    struct muslin_setting_spec spec = MUSLIN_SETTING_SPEC_INIT;
    struct muslin_setting made = { .size = sizeof made };
    spec.block_width = WHOLE_IN(12);
    spec.block_height = WHOLE_IN(12);
    spec.columns = 3;
    spec.rows = 3;
    ck_ok(muslin_setting_straight(&spec, &made, NULL));
    ck_assert_int_eq(made.finished_width, WHOLE_IN(36));
    ck_assert_int_eq(made.finished_length, WHOLE_IN(36));
    ck_assert_int_eq(made.unfinished_width, IN(36, 1, 2));
    ck_assert_int_eq(made.unfinished_length, IN(36, 1, 2));
}
END_TEST

START_TEST(every_other_block_is_turned_a_half)
{
    /* Example: column 1, row 0 with MUSLIN_TURNING_HALF_ALTERNATE: 2. */
    int32_t quarter_turns;
    ck_ok(muslin_setting_turn(MUSLIN_TURNING_HALF_ALTERNATE, 1, 0, &quarter_turns, NULL));
    ck_assert_int_eq(quarter_turns, 2);
}
END_TEST

START_TEST(a_diagonal_join_loses_the_strips_width)
{
    /* Example: DIAGONAL, strips cut 3 in: 3 in. */
    muslin_len loss;
    ck_ok(muslin_join_loss(MUSLIN_JOIN_DIAGONAL, WHOLE_IN(3), QUARTER, &loss, NULL));
    ck_assert_int_eq(loss, WHOLE_IN(3));
}
END_TEST

START_TEST(two_segments_make_a_block)
{
    /* Example: two segments cut 6 1/2 in from a set 12 1/2 in wide: a block 12 1/2 in square unfinished, 12 in
     * finished. */
    struct muslin_block_spec spec = MUSLIN_BLOCK_SPEC_INIT;
    struct muslin_block made = { .size = sizeof made };
    spec.segment_cut = IN(6, 1, 2);
    spec.set_unfinished = IN(12, 1, 2);
    spec.segments = 2;
    ck_ok(muslin_block_from_segments(&spec, &made, NULL));
    ck_assert_int_eq(made.unfinished_width, IN(12, 1, 2));
    ck_assert_int_eq(made.unfinished_height, IN(12, 1, 2));
    ck_assert_int_eq(made.finished_width, WHOLE_IN(12));
    ck_assert_int_eq(made.square, 1);
}
END_TEST

START_TEST(eight_strips_run_round_a_quilt)
{
    /* Example: 294 in of strips 40 in long, straight 1/4 in seams: 8 strips, 22 1/2 in to spare. */
    struct muslin_run_spec spec = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run made = { .size = sizeof made };
    spec.length = WHOLE_IN(294);
    spec.join = MUSLIN_JOIN_STRAIGHT;
    ck_ok(muslin_run_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.strips, 8);
    ck_assert_int_eq(made.spare, IN(22, 1, 2));
}
END_TEST

START_TEST(a_border_has_cornerstones)
{
    /* Example: 38 1/2 x 50 in unfinished, 4 in border with cornerstones: cut 4 1/2 in, two of 50, two of 38 1/2 in,
     * four squares cut 4 1/2 in; 46 1/2 x 58 in unfinished. */
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border made = { .size = sizeof made };
    spec.unfinished_width = IN(38, 1, 2);
    spec.unfinished_length = WHOLE_IN(50);
    spec.finished_border = WHOLE_IN(4);
    spec.style = MUSLIN_BORDER_STYLE_CORNERSTONES;
    ck_ok(muslin_border_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.cut_width, IN(4, 1, 2));
    ck_assert_int_eq(made.side_cut_length, WHOLE_IN(50));
    ck_assert_int_eq(made.top_cut_length, IN(38, 1, 2));
    ck_assert_int_eq(made.cornerstone_cut, IN(4, 1, 2));
    ck_assert_int_eq(made.unfinished_width, IN(46, 1, 2));
    ck_assert_int_eq(made.unfinished_length, WHOLE_IN(58));
}
END_TEST

/* ---- finishing.h ----------------------------------------------------------------------------------------------- */

START_TEST(a_narrow_double_binding_is_cut_an_inch_and_a_half)
{
    /* Example: all 1/4 in, double fold: C = 1 1/2 in. */
    struct muslin_binding_width_spec spec = MUSLIN_BINDING_WIDTH_SPEC_INIT;
    struct muslin_binding_width made = { .size = sizeof made };
    ck_ok(muslin_binding_measure(&spec, &made, NULL));
    ck_assert_int_eq(made.cut_width, IN(1, 1, 2));
}
END_TEST

START_TEST(eleven_strips_bind_a_large_quilt)
{
    /* Example: 96 x 110 in, 12 in extra, 40 in usable, joins ignored: 424 in, 11 strips; 11 strips of 2 1/2 in need
     * 27 1/2 in. */
    struct muslin_binding_spec spec = MUSLIN_BINDING_SPEC_INIT;
    struct muslin_binding made = { .size = sizeof made };
    spec.quilt_width = WHOLE_IN(96);
    spec.quilt_length = WHOLE_IN(110);
    spec.join = MUSLIN_JOIN_BUTTED;
    ck_ok(muslin_binding_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.length, WHOLE_IN(424));
    ck_assert_int_eq(made.strips, 11);
    ck_assert_int_eq(made.cloth_length, IN(27, 1, 2));
}
END_TEST

/* Within half of a hundredth of an inch, as far as a header prints it. */
static int is_about(muslin_len length, int64_t hundredths)
{
    int64_t off = length * 100 - hundredths * MUSLIN_TICKS_PER_INCH;
    return 2 * off < MUSLIN_TICKS_PER_INCH && 2 * off >= -MUSLIN_TICKS_PER_INCH;
}

START_TEST(a_square_becomes_a_bias_tube)
{
    /* Example: 18 x 18 in, 2 1/2 in strip, 1/4 in seams: 4 rounds, 99.70 in. */
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    struct muslin_bias made = { .size = sizeof made };
    spec.width = WHOLE_IN(18);
    spec.length = WHOLE_IN(18);
    ck_ok(muslin_bias_tube(&spec, &made, NULL));
    ck_assert_int_eq(made.rounds, 4);
    ck_assert(is_about(made.length, 9970));
}
END_TEST

START_TEST(a_bias_length_finds_its_least_square)
{
    /* Example: 55 in of 2 1/2 in, 1/4 in seams, to 1/8 in: 13 3/8 in. */
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    struct muslin_rounding_spec rounding = rounded_to(IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    struct muslin_bias made = { .size = sizeof made };
    spec.wanted = WHOLE_IN(55);
    ck_ok(muslin_bias_least_square(&spec, &rounding, &made, NULL));
    ck_assert_int_eq(made.square_cut, IN(13, 3, 8));
}
END_TEST

START_TEST(a_square_becomes_bias_strips)
{
    /* Example: 18 in square, 2 1/2 in strips, 1/4 in seams: 10 strips, 123.19 in. */
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    struct muslin_bias made = { .size = sizeof made };
    spec.width = WHOLE_IN(18);
    ck_ok(muslin_bias_strips(&spec, &made, NULL));
    ck_assert_int_eq(made.rounds, 10);
    ck_assert(is_about(made.length, 12319));
}
END_TEST

START_TEST(batting_reaches_beyond_the_quilt)
{
    /* Example: 60 x 80 in with 3 in margins: 66 x 86 in. */
    struct muslin_batting_spec spec = MUSLIN_BATTING_SPEC_INIT;
    struct muslin_batting made = { .size = sizeof made };
    spec.quilt_width = WHOLE_IN(60);
    spec.quilt_length = WHOLE_IN(80);
    ck_ok(muslin_batting_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.width, WHOLE_IN(66));
    ck_assert_int_eq(made.length, WHOLE_IN(86));
}
END_TEST

static struct muslin_backing_spec backing_without_margins(muslin_len width, muslin_len length)
{
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    spec.quilt_width = width;
    spec.quilt_length = length;
    spec.margin_left = 0;
    spec.margin_right = 0;
    spec.margin_top = 0;
    spec.margin_bottom = 0;
    return spec;
}

static struct muslin_backing seams_along(const struct muslin_backing_spec *spec)
{
    struct muslin_backing rows[16];
    size_t count;
    ck_ok(muslin_backing_layouts(spec, rows, sizeof rows[0], 16, &count, NULL));
    return rows[MUSLIN_BACKING_LAYOUT_SEAMS_ALONG - 1];
}

START_TEST(a_forgotten_seam_costs_a_panel)
{
    /* Example: a backing of 80 x 56 in at 40 in usable, 1/2 in seams: two panels side by side give 79 in, so 80 in
     * needs three. */
    struct muslin_backing_spec spec = backing_without_margins(WHOLE_IN(79), WHOLE_IN(56));
    struct muslin_backing two = seams_along(&spec);
    ck_assert_int_eq(two.panels, 2);
    ck_assert_int_eq(two.joined_width, WHOLE_IN(79));
    spec.quilt_width = WHOLE_IN(80);
    ck_assert_int_eq(seams_along(&spec).panels, 3);
}
END_TEST

START_TEST(a_centre_panel_has_two_sides)
{
    /* Example: 59 in across from 42 in cloth, 1/2 in seams, CENTRE: side 9 1/2 in, centre 42 in, side 9 1/2 in. */
    struct muslin_backing_spec spec = backing_without_margins(WHOLE_IN(59), WHOLE_IN(75));
    struct muslin_panel panels[8];
    size_t count;
    spec.fabric_width = WHOLE_IN(42);
    ck_ok(muslin_backing_panels(&spec, MUSLIN_BACKING_LAYOUT_CENTRE_ALONG, panels, sizeof panels[0], 8, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(panels[0].cut_width, IN(9, 1, 2));
    ck_assert_int_eq(panels[1].cut_width, WHOLE_IN(42));
    ck_assert_int_eq(panels[2].cut_width, IN(9, 1, 2));
}
END_TEST

START_TEST(a_sleeve_hangs_a_quilt)
{
    /* Example: quilt 60 in wide, the initial values: sleeve 58 in, cut 60 x 9 in. */
    struct muslin_hanging_spec spec = MUSLIN_HANGING_SPEC_INIT;
    struct muslin_hanging made = { .size = sizeof made };
    spec.quilt_width = WHOLE_IN(60);
    ck_ok(muslin_hanging_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.sleeve_finished, WHOLE_IN(58));
    ck_assert_int_eq(made.sleeve_cut_length, WHOLE_IN(60));
    ck_assert_int_eq(made.sleeve_cut_width, WHOLE_IN(9));
}
END_TEST

/* ---- stripquilt.h ---------------------------------------------------------------------------------------------- */

START_TEST(a_bundle_becomes_two_square_tops)
{
    /* Example: 42 strips, 6 a set, 42 in usable, 1/2 in trimmed, 3 x 3 blocks of two segments 6 1/2 in: 2 tops 36 in
     * square finished, 6 strips left. */
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    struct muslin_stripquilt made = { .size = sizeof made };
    spec.strips = 42;
    spec.strip_length = WHOLE_IN(42);
    spec.end_trim = IN(0, 1, 2);
    spec.columns = 3;
    spec.rows = 3;
    spec.segment_cut = IN(6, 1, 2);
    ck_ok(muslin_stripquilt_plan(&spec, &made, NULL));
    ck_assert_int_eq(made.tops, 2);
    ck_assert_int_eq(made.top_finished_width, WHOLE_IN(36));
    ck_assert_int_eq(made.top_finished_length, WHOLE_IN(36));
    ck_assert_int_eq(made.strips_left, 6);
}
END_TEST

/* Three sets cut into six segments each, paired in nine blocks. */
static struct muslin_stripquilt_spec three_sets_in_nine_blocks(void)
{
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    spec.strips = 18;
    spec.segment_cut = IN(6, 1, 2);
    spec.columns = 3;
    spec.rows = 3;
    return spec;
}

START_TEST(three_stacks_are_dealt_to_nine_blocks)
{
    /* Example: 18 segments from 3 sets in 9 blocks of two: blocks 1 to 3 take sets 1 and 2, blocks 4 to 6 sets 1 and 3,
     * blocks 7 to 9 sets 2 and 3. */
    const int64_t pairs[3][2] = { { 1, 2 }, { 1, 3 }, { 2, 3 } };
    struct muslin_stripquilt_spec spec = three_sets_in_nine_blocks();
    struct muslin_block_group groups[8];
    size_t count;
    ck_ok(muslin_stripquilt_groups(&spec, groups, sizeof groups[0], 8, &count, NULL));
    ck_assert_uint_eq(count, 3);
    for (size_t i = 0; i < count; i++) {
        ck_assert_int_eq(groups[i].first_block, (int64_t)(3 * i + 1));
        ck_assert_int_eq(groups[i].blocks, 3);
        ck_assert_int_eq(groups[i].sets[0], pairs[i][0]);
        ck_assert_int_eq(groups[i].sets[1], pairs[i][1]);
    }
}
END_TEST

START_TEST(three_sets_cannot_all_nest)
{
    /* Example: the three sets of the example above: set 1 to its top, set 2 as well, set 3 away from it; the three
     * blocks of sets 1 and 2 have a segment turned. */
    const int32_t expected[] = { MUSLIN_SET_PRESSING_TO_TOP, MUSLIN_SET_PRESSING_TO_TOP,
                                 MUSLIN_SET_PRESSING_TO_BOTTOM };
    struct muslin_stripquilt_spec spec = three_sets_in_nine_blocks();
    struct muslin_block_group groups[8];
    size_t count;
    for (int64_t set = 1; set <= 3; set++) {
        int32_t pressing;
        ck_ok(muslin_stripquilt_pressing(&spec, set, &pressing, NULL, NULL));
        ck_assert_int_eq(pressing, expected[set - 1]);
    }
    ck_ok(muslin_stripquilt_groups(&spec, groups, sizeof groups[0], 8, &count, NULL));
    ck_assert(groups[0].turned == 1 || groups[0].turned == 2);
    ck_assert_uint_eq(groups[1].turned, 0);
    ck_assert_uint_eq(groups[2].turned, 0);
}
END_TEST

static void add_case(Suite *suite, const char *name, const TTest *const *tests, size_t n)
{
    TCase *tcase = tcase_create(name);
    for (size_t i = 0; i < n; i++)
        tcase_add_test(tcase, tests[i]);
    suite_add_tcase(suite, tcase);
}

#define ADD_CASE(suite, name, tests) add_case(suite, name, tests, sizeof(tests) / sizeof *(tests))

Suite *examples_suite(void)
{
    const TTest *const base[] = { headers_and_library_belong_together, the_version_can_be_printed,
                                  a_status_has_a_name, statuses_arguments_and_warnings_have_words,
                                  constants_can_be_listed,
                                  the_usual_allocator_serves };
    const TTest *const length[] = { two_lengths_add, two_lengths_subtract, strips_laid_side_by_side_multiply,
                                    a_third_is_rounded_down_to_eighths, a_length_is_scaled_by_a_ratio,
                                    two_lengths_compare, three_borders_sum, lengths_with_counts_sum,
                                    a_million_cuts_gain_their_seams, lengths_are_scaled_and_snapped_together,
                                    a_length_snaps_up_to_an_eighth,
                                    the_diagonal_of_a_square_is_rounded_up,
                                    the_side_of_a_square_follows_from_its_diagonal,
                                    an_equilateral_triangle_has_a_height_and_a_side, three_and_four_give_five,
                                    a_rectangle_becomes_a_square, a_yard_has_its_ticks, a_mixed_number_is_read,
                                    a_length_is_written, length_specs_start_from_their_usual_values,
                                    a_unit_has_its_word };
    const TTest *const seam[] = { seam_specs_start_from_their_usual_values, a_finished_size_gains_two_allowances,
                                  an_unfinished_size_loses_two_allowances, an_array_is_changed_in_place,
                                  a_piece_loses_a_share_to_its_seams, six_strips_make_a_set,
                                  unequal_pieces_make_a_row, a_nine_patch_wants_strips_of_two_and_a_half_inches,
                                  a_cut_size_is_doubled_without_its_seams, a_short_set_tells_its_seam,
                                  a_square_follows_a_short_set, errors_add_up_over_seams,
                                  a_tolerance_is_shared_by_the_seams, a_small_square_loses_a_third_to_its_seams };
    const TTest *const fabric[] = { fabric_specs_start_from_their_usual_values, selvages_come_off_the_labelled_width,
                                    cloth_is_bought_in_steps, squares_come_from_a_fat_quarter,
                                    squares_come_from_strips, an_area_bounds_the_cloth_from_below,
                                    pinked_edges_are_measured_at_the_valleys, half_strips_come_from_fat_quarters,
                                    washed_and_unwashed_fabrics_do_not_mix, a_stripe_may_lie_upside_down };
    const TTest *const reference[] = { the_batting_table_can_be_read };
    const TTest *const stripset[] = { a_fold_kept_clear_costs_two_segments, the_shortest_strip_counts,
                                      the_scarcest_print_decides, segments_wanted_become_strips,
                                      a_bundle_becomes_two_tops };
    const TTest *const setting[] = { nine_blocks_make_a_top, every_other_block_is_turned_a_half,
                                     a_diagonal_join_loses_the_strips_width, two_segments_make_a_block,
                                     eight_strips_run_round_a_quilt, a_border_has_cornerstones };
    const TTest *const finishing[] = { a_narrow_double_binding_is_cut_an_inch_and_a_half,
                                       eleven_strips_bind_a_large_quilt, a_square_becomes_a_bias_tube,
                                       a_bias_length_finds_its_least_square, a_square_becomes_bias_strips,
                                       batting_reaches_beyond_the_quilt, a_forgotten_seam_costs_a_panel,
                                       a_centre_panel_has_two_sides, a_sleeve_hangs_a_quilt };
    const TTest *const stripquilt[] = { a_bundle_becomes_two_square_tops, three_stacks_are_dealt_to_nine_blocks,
                                        three_sets_cannot_all_nest };
    Suite *suite = suite_create("examples");
    ADD_CASE(suite, "base", base);
    ADD_CASE(suite, "length", length);
    ADD_CASE(suite, "seam", seam);
    ADD_CASE(suite, "fabric", fabric);
    ADD_CASE(suite, "reference", reference);
    ADD_CASE(suite, "stripset", stripset);
    ADD_CASE(suite, "setting", setting);
    ADD_CASE(suite, "finishing", finishing);
    ADD_CASE(suite, "stripquilt", stripquilt);
    return suite;
}
