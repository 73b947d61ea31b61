/* test_finishing_binding.c - binding: width and length.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

/* ---- the width ------------------------------------------------------------------------------------------------- */

static const struct muslin_binding_width_spec quarter_inch_all_round = MUSLIN_BINDING_WIDTH_SPEC_INIT;

static struct muslin_binding_width measured(const struct muslin_binding_width_spec *spec)
{
    struct muslin_binding_width width = { .size = (uint32_t)sizeof width };
    ck_ok(muslin_binding_measure(spec, &width, NULL));
    return width;
}

START_TEST(double_fold_with_quarter_inches_all_round_is_cut_an_inch_and_a_half)
{
    struct muslin_binding_width width = measured(&quarter_inch_all_round);
    ck_assert_int_eq(width.cut_width, IN(1, 1, 2));
    ck_assert_int_eq(width.folded, IN(0, 3, 4));
    ck_assert_int_eq(width.back, IN(0, 1, 4));
    ck_assert_uint_eq(width.warnings, 0);
}
END_TEST

/* FM quilters guild, "Tip of the Week: When binding, there will be math": 4 w + 1/2 in, seam 1/4 in. */
START_TEST(the_printed_rule_four_times_the_width_and_a_half_inch_is_a_quarter_inch_seam)
{
    for (muslin_len w = IN(0, 1, 8); w <= WHOLE_IN(1); w += IN(0, 1, 8)) {
        struct muslin_binding_width_spec spec = quarter_inch_all_round;
        spec.front = w;
        spec.back = w;
        ck_assert_int_eq(measured(&spec).cut_width, 4 * w + IN(0, 1, 2));
    }
}
END_TEST

/* A teacher's site, "Creating bias strips", table: 1/4 in finished is cut 1 7/8 in, 1/2 in finished 3 1/4 in, that is
 * 6 x finished and an ease of 3/8 and 1/4 in. The ease is room for the thickness, once in each layer. */
START_TEST(the_printed_table_six_times_the_width_and_an_ease_leaves_half_the_ease_for_thickness)
{
    const muslin_len finished[] = { IN(0, 1, 4), IN(0, 1, 2) };
    const muslin_len cut[] = { IN(1, 7, 8), IN(3, 1, 4) };
    const muslin_len ease[] = { IN(0, 3, 8), IN(0, 1, 4) };
    for (size_t i = 0; i < 2; i++) {
        struct muslin_binding_width_spec spec = quarter_inch_all_round;
        spec.allowance = finished[i];
        spec.front = finished[i];
        spec.back = finished[i];
        spec.thickness = ease[i] / 2;
        ck_assert_int_eq(measured(&spec).cut_width, cut[i]);
        spec.binding_cut = cut[i];
        ck_assert_int_eq(measured(&spec).back, finished[i]);
    }
}
END_TEST

/* Most patterns cut 2 1/2 in for a 1/4 in seam and a 1/4 in front (common practice, no source): by drawing, the folded
 * 1 1/4 in less seam and front leave 3/4 in. */
START_TEST(two_and_a_half_inches_show_three_quarters_on_the_back_and_are_uneven)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.binding_cut = IN(2, 1, 2);
    struct muslin_binding_width width = measured(&spec);
    ck_assert_int_eq(width.back, IN(0, 3, 4));
    ck_assert_int_eq(width.cut_width, IN(2, 1, 2));
    ck_assert_uint_eq(width.warnings, MUSLIN_WARN_BINDING_UNEVEN);
}
END_TEST

START_TEST(single_fold_counts_one_layer_and_what_is_turned_under)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.fold = MUSLIN_FOLD_SINGLE;
    spec.thickness = IN(0, 1, 16);
    struct muslin_binding_width width = measured(&spec);
    ck_assert_int_eq(width.cut_width, WHOLE_IN(1) + IN(0, 1, 16));
    ck_assert_int_eq(width.folded, width.cut_width);
    spec.binding_cut = width.cut_width + 1;
    ck_assert_int_eq(measured(&spec).back, IN(0, 1, 4) + 1);
}
END_TEST

/* Backwards by trial: the greatest back that a double fold of this cut width can still show, and whether half a tick
 * more is hidden in it. */
START_TEST(the_back_of_every_small_cut_width_is_what_trying_finds)
{
    int wrong = 0;
    for (muslin_len cut = 1; cut <= 60; cut++)
        for (muslin_len s = 0; s <= 6; s++)
            for (muslin_len t = 0; t <= 3; t++) {
                struct muslin_binding_width_spec spec = quarter_inch_all_round;
                spec.allowance = s;
                spec.front = 5;
                spec.thickness = t;
                spec.binding_cut = cut;
                muslin_len back = -40;
                while (s + 5 + t + back + 1 + s + 5 + t + back + 1 <= cut)
                    back++;
                struct muslin_binding_width width = measured(&spec);
                wrong += width.back != back || width.folded != cut - cut / 2;
            }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

START_TEST(a_binding_too_narrow_to_reach_round_says_so_and_by_how_much)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.binding_cut = IN(0, 3, 4);
    struct muslin_binding_width width = measured(&spec);
    ck_assert_int_eq(width.back, -IN(0, 1, 8));
    ck_assert_uint_eq(width.warnings, MUSLIN_WARN_BINDING_UNEVEN | MUSLIN_WARN_BACK_TOO_NARROW);
}
END_TEST

/* 1/8 in more on the back than on the front is within the limit; one tick of cut width, half a tick on the back, is
 * not. */
START_TEST(half_a_tick_beyond_the_limit_is_uneven)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.binding_cut = 2 * (2032 + 2032 + 2032 + 1016);
    ck_assert_uint_eq(measured(&spec).warnings, 0);
    spec.binding_cut++;
    ck_assert_uint_eq(measured(&spec).warnings, MUSLIN_WARN_BINDING_UNEVEN);
    spec.binding_cut = 2 * (2032 + 2032 + 2032 - 1016);
    ck_assert_uint_eq(measured(&spec).warnings, MUSLIN_WARN_BACK_TOO_NARROW);
    spec.binding_cut--;
    ck_assert_uint_eq(measured(&spec).warnings, MUSLIN_WARN_BACK_TOO_NARROW | MUSLIN_WARN_BINDING_UNEVEN);
}
END_TEST

START_TEST(half_a_tick_less_than_the_front_leaves_the_seam_bare)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.binding_cut = 6 * 2032 - 1;
    struct muslin_binding_width width = measured(&spec);
    ck_assert_int_eq(width.back, 2031);
    ck_assert_uint_eq(width.warnings, MUSLIN_WARN_BACK_TOO_NARROW);
}
END_TEST

START_TEST(turn_under_does_not_count_for_a_double_fold)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.turn_under = WHOLE_IN(3);
    ck_assert_int_eq(measured(&spec).cut_width, IN(1, 1, 2));
}
END_TEST

START_TEST(the_widest_of_everything_adds_up)
{
    struct muslin_binding_width_spec spec = quarter_inch_all_round;
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    spec.front = MUSLIN_SIZE_MAX;
    spec.thickness = MUSLIN_SIZE_MAX;
    spec.back = MUSLIN_SIZE_MAX;
    spec.uneven_limit = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(measured(&spec).cut_width, 25 * (MUSLIN_SIZE_MAX / 4));
    spec.binding_cut = 1;
    ck_assert_int_eq(measured(&spec).back, -(17 * (MUSLIN_SIZE_MAX / 8)));
}
END_TEST

static muslin_status measure_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_binding_measure(spec, out, problem);
}

static const struct ruled measure = RULED(measure_call, quarter_inch_all_round, muslin_binding_width);

START_TEST(measure_checks_its_structs)
{
    ck_struct_rules(&measure);
}
END_TEST

START_TEST(measure_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_binding_width_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        NOT_A_CHOICE(muslin_binding_width_spec, fold, 2, MUSLIN_ARG_FOLD),
        OUTSIDE(muslin_binding_width_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_binding_width_spec, front, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BINDING_FRONT),
        OUTSIDE(muslin_binding_width_spec, thickness, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_THICKNESS),
        OUTSIDE(muslin_binding_width_spec, back, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BINDING_BACK),
        OUTSIDE(muslin_binding_width_spec, turn_under, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TURN_UNDER),
        OUTSIDE(muslin_binding_width_spec, binding_cut, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BINDING_CUT),
        REFUSAL(muslin_binding_width_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_binding_width_spec, uneven_limit, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_TOLERANCE),
    };
    ck_refusals_at(&measure, 0, refusals, COUNT_OF(refusals));
}
END_TEST

static muslin_status width_init(void *spec, uint32_t size)
{
    return muslin_binding_width_spec_init(spec, size);
}

static muslin_status binding_init(void *spec, uint32_t size)
{
    return muslin_binding_spec_init(spec, size);
}

START_TEST(init_calls_give_the_macros_bytes)
{
    const struct muslin_binding_width_spec width = MUSLIN_BINDING_WIDTH_SPEC_INIT;
    const struct muslin_binding_spec binding = MUSLIN_BINDING_SPEC_INIT;
    ck_init_rules(width_init, &width, sizeof width);
    ck_init_rules(binding_init, &binding, sizeof binding);
}
END_TEST

/* ---- the length ------------------------------------------------------------------------------------------------ */

/* 60 x 80 in: invented. */
static const struct muslin_binding_spec throw_size = {
    (uint32_t)sizeof throw_size, 0, 0, WHOLE_IN(60), WHOLE_IN(80), WHOLE_IN(12), 4, 0, IN(2, 1, 2), WHOLE_IN(40),
    MUSLIN_QUARTER_INCH, IN(4, 1, 2), 0, MUSLIN_JOIN_DIAGONAL, 0
};

static struct muslin_binding planned(const struct muslin_binding_spec *spec)
{
    struct muslin_binding binding = { .size = (uint32_t)sizeof binding };
    ck_ok(muslin_binding_plan(spec, &binding, NULL));
    return binding;
}

static struct muslin_binding_spec butted(muslin_len width, muslin_len length, muslin_len extra, muslin_len usable)
{
    struct muslin_binding_spec spec = throw_size;
    spec.quilt_width = width;
    spec.quilt_length = length;
    spec.extra = extra;
    spec.strip_length = usable;
    spec.join = MUSLIN_JOIN_BUTTED;
    return spec;
}

/* Public forum, "Binding math": 96 x 110, + 12, usable 40: 424/40 = 10.6, 11 strips. The same thread then says 26 1/2
 * in and 3/4 yd; 11 x 2 1/2 in are 27 1/2 in, and 3/4 yd (27 in) is half an inch short: it takes 7/8 yd. */
START_TEST(eleven_strips_of_two_and_a_half_need_seven_eighths_of_a_yard)
{
    struct muslin_binding_spec spec = butted(WHOLE_IN(96), WHOLE_IN(110), WHOLE_IN(12), WHOLE_IN(40));
    struct muslin_binding binding = planned(&spec);
    ck_assert_int_eq(binding.perimeter, WHOLE_IN(412));
    ck_assert_int_eq(binding.length, WHOLE_IN(424));
    ck_assert_int_eq(binding.strips_needed, 11);
    ck_assert_int_eq(binding.joins, 10);
    ck_assert_int_eq(binding.loss_per_join, 0);
    ck_assert_int_eq(binding.spare, WHOLE_IN(16));
    ck_assert_int_eq(binding.cloth_length, IN(27, 1, 2));
    ck_assert_int_eq(binding.bought, 7 * IN(4, 1, 2));
    spec.join = MUSLIN_JOIN_STRAIGHT;
    spec.allowance = IN(0, 3, 8);
    ck_assert_int_eq(planned(&spec).loss_per_join, IN(0, 3, 4));
}
END_TEST

/* A designer's blog, 2019, "Double fold flange quilt binding": 54 x 60, + 10: 238 in, at 42 in usable 6 strips; at 40
 * in also 6 (5.95). */
START_TEST(fifty_four_by_sixty_takes_six_strips_at_forty_two_and_at_forty)
{
    struct muslin_binding_spec spec = butted(WHOLE_IN(54), WHOLE_IN(60), WHOLE_IN(10), WHOLE_IN(42));
    ck_assert_int_eq(planned(&spec).length, WHOLE_IN(238));
    ck_assert_int_eq(planned(&spec).strips, 6);
    spec.strip_length = WHOLE_IN(40);
    ck_assert_int_eq(planned(&spec).strips, 6);
}
END_TEST

/* Handout, "Quick rail fence from 2.5 inch strips": 60 x 70 at 40 in usable, 7 strips; with + 10 still 7. */
START_TEST(sixty_by_seventy_takes_seven_strips_with_and_without_ten_inches_extra)
{
    struct muslin_binding_spec spec = butted(WHOLE_IN(60), WHOLE_IN(70), 0, WHOLE_IN(40));
    ck_assert_int_eq(planned(&spec).strips, 7);
    spec.extra = WHOLE_IN(10);
    ck_assert_int_eq(planned(&spec).strips, 7);
}
END_TEST

/* A video tutorial site, "Binding - how long?": perimeter 114, width 45: 2.5, so 3, and one spare: 4. */
START_TEST(a_perimeter_alone_and_one_spare_strip_give_four)
{
    struct muslin_binding_spec spec = butted(0, 0, 0, WHOLE_IN(45));
    spec.perimeter = WHOLE_IN(114);
    spec.spare_strips = 1;
    struct muslin_binding binding = planned(&spec);
    ck_assert_int_eq(binding.strips_needed, 3);
    ck_assert_int_eq(binding.strips, 4);
    ck_assert_int_eq(binding.joined, WHOLE_IN(135));
    ck_assert_int_eq(binding.cloth_length, WHOLE_IN(10));
}
END_TEST

/* Blog, 2012, "What is lost?": a diagonal join of two strips 3 x 10 leaves 17 in, of two 1 1/2 x 20 38 1/2 in. */
START_TEST(a_diagonal_join_loses_the_width_of_the_strip)
{
    struct muslin_binding_spec spec = butted(0, 0, 0, WHOLE_IN(10));
    spec.join = MUSLIN_JOIN_DIAGONAL;
    spec.perimeter = WHOLE_IN(17);
    spec.binding_cut = WHOLE_IN(3);
    struct muslin_binding binding = planned(&spec);
    ck_assert_int_eq(binding.strips, 2);
    ck_assert_int_eq(binding.joined, WHOLE_IN(17));
    ck_assert_uint_eq(binding.warnings, MUSLIN_WARN_NO_SLACK);
    spec.strip_length = WHOLE_IN(20);
    spec.binding_cut = IN(1, 1, 2);
    spec.perimeter = IN(38, 1, 2);
    ck_assert_int_eq(planned(&spec).strips, 2);
    spec.perimeter++;
    ck_assert_int_eq(planned(&spec).strips, 3);
}
END_TEST

/* 120 in are three strips of 40 to the tick; a fourth that is cut beside them is none of the run's. */
START_TEST(a_spare_strip_gives_the_run_no_slack)
{
    struct muslin_binding_spec spec = butted(0, 0, 0, WHOLE_IN(40));
    spec.perimeter = WHOLE_IN(120);
    spec.spare_strips = 1;
    struct muslin_binding binding = planned(&spec);
    ck_assert_int_eq(binding.strips, 4);
    ck_assert_int_eq(binding.spare, 0);
    ck_assert_int_eq(binding.narrower_by, 0);
    ck_assert_uint_eq(binding.warnings, MUSLIN_WARN_NO_SLACK);
}
END_TEST

START_TEST(corners_add_their_extra_and_a_rounded_outline_has_none)
{
    struct muslin_binding_spec spec = throw_size;
    spec.corner_extra = IN(0, 1, 2);
    ck_assert_int_eq(planned(&spec).length, WHOLE_IN(280 + 12 + 2));
    spec.corners = 6;
    ck_assert_int_eq(planned(&spec).length, WHOLE_IN(280 + 12 + 3));
    spec.corners = 0;
    ck_assert_int_eq(planned(&spec).length, WHOLE_IN(280 + 12));
}
END_TEST

/* Strip after strip, each join taking its loss, until the run is long enough. */
static int64_t strips_by_joining(muslin_len length, muslin_len strip, muslin_len loss)
{
    int64_t strips = 1;
    for (muslin_len run = strip; run < length; run += strip - loss)
        strips++;
    return strips;
}

START_TEST(strips_and_slack_are_what_joining_them_one_by_one_finds)
{
    uint64_t dice = 7;
    int wrong = 0;
    for (int i = 0; i < 2000; i++) {
        struct muslin_binding_spec spec = throw_size;
        spec.perimeter = draw_from(&dice, 1, 900);
        spec.extra = draw_from(&dice, 0, 30);
        spec.binding_cut = draw_from(&dice, 1, 9);
        spec.strip_length = spec.binding_cut + draw_from(&dice, 1, 60);
        spec.allowance = 1;
        muslin_len loss = spec.binding_cut;
        struct muslin_binding binding = planned(&spec);
        int64_t strips = strips_by_joining(spec.perimeter + spec.extra, spec.strip_length, loss);
        muslin_len narrower = 0;
        while (spec.strip_length - narrower - 1 > loss &&
               strips_by_joining(binding.length, spec.strip_length - narrower - 1, loss) == strips)
            narrower++;
        wrong += binding.strips_needed != strips || binding.spare != strips * spec.strip_length -
                 (strips - 1) * loss - binding.length;
        wrong += strips > 1 && spec.strip_length - narrower - 1 > loss && binding.narrower_by != narrower;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

static muslin_status plan_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_binding_plan(spec, out, problem);
}

static const struct ruled plan = RULED(plan_call, throw_size, muslin_binding);

START_TEST(plan_checks_its_structs)
{
    ck_struct_rules(&plan);
}
END_TEST

START_TEST(plan_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_binding_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_binding_spec, perimeter, 0, 4 * MUSLIN_SIZE_MAX, MUSLIN_ARG_PERIMETER),
        REFUSAL(muslin_binding_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_binding_spec, quilt_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_binding_spec, quilt_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_binding_spec, extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_binding_spec, corners, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_CORNERS),
        OUTSIDE(muslin_binding_spec, corner_extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_binding_spec, binding_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BINDING_CUT),
        OUTSIDE(muslin_binding_spec, strip_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_binding_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_binding_spec, step, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STEP),
        OUTSIDE(muslin_binding_spec, spare_strips, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_SPARE),
        NOT_A_CHOICE(muslin_binding_spec, join, 4, MUSLIN_ARG_JOIN),
    };
    ck_refusals_at(&plan, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(quilt_sizes_are_not_read_beside_a_perimeter)
{
    struct muslin_binding_spec spec = throw_size;
    spec.perimeter = WHOLE_IN(200);
    spec.quilt_width = -1;
    spec.quilt_length = INT64_MAX;
    ck_assert_int_eq(planned(&spec).perimeter, WHOLE_IN(200));
}
END_TEST

static muslin_status plan_fails(const struct muslin_binding_spec *spec)
{
    struct muslin_binding binding;
    struct muslin_binding before;
    memset(&binding, 0xA5, sizeof binding);
    binding.size = (uint32_t)sizeof binding;
    memcpy(&before, &binding, sizeof binding);
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_binding_plan(spec, &binding, &problem);
    ck_assert_mem_eq(&binding, &before, sizeof binding);
    ck_assert_int_eq(problem.status, status);
    return status;
}

START_TEST(a_strip_no_longer_than_a_join_takes_gives_no_yield)
{
    struct muslin_binding_spec spec = throw_size;
    spec.strip_length = spec.binding_cut;
    ck_status(plan_fails(&spec), MUSLIN_ERR_NO_YIELD);
}
END_TEST

/* 2^32 ticks in butted strips of two ticks are 2^31 strips, one too many; two ticks less are 2^31 - 1. */
START_TEST(more_strips_than_the_largest_count_overflow)
{
    struct muslin_binding_spec spec = butted(0, 0, 0, 1);
    spec.perimeter = 4 * MUSLIN_SIZE_MAX;
    spec.binding_cut = 1;
    ck_status(plan_fails(&spec), MUSLIN_ERR_OVERFLOW);
    spec.strip_length = 2;
    ck_status(plan_fails(&spec), MUSLIN_ERR_OVERFLOW);
    spec.perimeter -= 2;
    ck_assert_int_eq(planned(&spec).strips, MUSLIN_COUNT_MAX);
}
END_TEST

START_TEST(a_run_of_absurd_length_is_out_of_range)
{
    struct muslin_binding_spec spec = throw_size;
    spec.corners = MUSLIN_COUNT_MAX;
    spec.corner_extra = MUSLIN_SIZE_MAX;
    spec.perimeter = 4 * MUSLIN_SIZE_MAX;
    ck_status(plan_fails(&spec), MUSLIN_ERR_RANGE);
}
END_TEST

START_TEST(the_most_cloth_is_still_a_right_number)
{
    struct muslin_binding_spec spec = butted(0, 0, 0, 2);
    spec.perimeter = 4 * MUSLIN_SIZE_MAX - 2;
    spec.binding_cut = MUSLIN_SIZE_MAX;
    spec.spare_strips = MUSLIN_COUNT_MAX;
    spec.step = MUSLIN_SIZE_MAX - 1;
    struct muslin_binding binding = planned(&spec);
    ck_assert_int_eq(binding.strips, 2 * MUSLIN_COUNT_MAX);
    ck_assert_int_eq(binding.cloth_length, 2 * MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_le(binding.bought, MUSLIN_LENGTH_MAX);
    ck_assert_int_ge(binding.bought, binding.cloth_length);
    ck_assert_int_lt(binding.bought - binding.cloth_length, spec.step);
    ck_assert_int_eq(binding.bought % spec.step, 0);
}
END_TEST

void add_finishing_binding(Suite *suite)
{
    TCase *width = tcase_create("binding width");
    tcase_add_test(width, double_fold_with_quarter_inches_all_round_is_cut_an_inch_and_a_half);
    tcase_add_test(width, the_printed_rule_four_times_the_width_and_a_half_inch_is_a_quarter_inch_seam);
    tcase_add_test(width, the_printed_table_six_times_the_width_and_an_ease_leaves_half_the_ease_for_thickness);
    tcase_add_test(width, two_and_a_half_inches_show_three_quarters_on_the_back_and_are_uneven);
    tcase_add_test(width, single_fold_counts_one_layer_and_what_is_turned_under);
    tcase_add_test(width, the_back_of_every_small_cut_width_is_what_trying_finds);
    tcase_add_test(width, a_binding_too_narrow_to_reach_round_says_so_and_by_how_much);
    tcase_add_test(width, half_a_tick_beyond_the_limit_is_uneven);
    tcase_add_test(width, half_a_tick_less_than_the_front_leaves_the_seam_bare);
    tcase_add_test(width, turn_under_does_not_count_for_a_double_fold);
    tcase_add_test(width, the_widest_of_everything_adds_up);
    tcase_add_test(width, measure_checks_its_structs);
    tcase_add_test(width, measure_refuses_what_lies_outside_its_ranges);
    suite_add_tcase(suite, width);

    TCase *length = tcase_create("binding length");
    tcase_add_test(length, init_calls_give_the_macros_bytes);
    tcase_add_test(length, eleven_strips_of_two_and_a_half_need_seven_eighths_of_a_yard);
    tcase_add_test(length, fifty_four_by_sixty_takes_six_strips_at_forty_two_and_at_forty);
    tcase_add_test(length, sixty_by_seventy_takes_seven_strips_with_and_without_ten_inches_extra);
    tcase_add_test(length, a_perimeter_alone_and_one_spare_strip_give_four);
    tcase_add_test(length, a_diagonal_join_loses_the_width_of_the_strip);
    tcase_add_test(length, a_spare_strip_gives_the_run_no_slack);
    tcase_add_test(length, corners_add_their_extra_and_a_rounded_outline_has_none);
    tcase_add_test(length, strips_and_slack_are_what_joining_them_one_by_one_finds);
    tcase_add_test(length, plan_checks_its_structs);
    tcase_add_test(length, plan_refuses_what_lies_outside_its_ranges);
    tcase_add_test(length, quilt_sizes_are_not_read_beside_a_perimeter);
    tcase_add_test(length, a_strip_no_longer_than_a_join_takes_gives_no_yield);
    tcase_add_test(length, more_strips_than_the_largest_count_overflow);
    tcase_add_test(length, a_run_of_absurd_length_is_out_of_range);
    tcase_add_test(length, the_most_cloth_is_still_a_right_number);
    suite_add_tcase(suite, length);
}
