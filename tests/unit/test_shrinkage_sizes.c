/* test_shrinkage_sizes.c - the size to make and what a size becomes: making, quilting and washing.
 *
 * SPDX-License-Identifier: MIT */
#include "test_shrinkage.h"

/* ---- the size to make ------------------------------------------------------------------------------------------- */

static struct muslin_shrinkage_spec quilt_of(muslin_len width, muslin_len length, int32_t quilting, int32_t washing)
{
    struct muslin_shrinkage_spec spec = MUSLIN_SHRINKAGE_SPEC_INIT;
    spec.width = width;
    spec.length = length;
    spec.quilting_across = quilting;
    spec.quilting_along = quilting;
    spec.washing_across = washing;
    spec.washing_along = washing;
    return spec;
}

static struct muslin_size_to_make made_for(const struct muslin_shrinkage_spec *spec, muslin_len grid, int32_t direction)
{
    struct muslin_rounding_spec rounding = rounding_to(grid, direction);
    struct muslin_size_to_make made = { .size = (uint32_t)sizeof made };
    ck_ok(muslin_shrinkage_size_to_make(spec, &rounding, &made, NULL));
    return made;
}

/* "How to make a quilt finish at a certain size" (blog, 2020): to end at 90 in when 10 % is lost, 90 / (1 - 0.10) =
 * 100 in; multiplying says 99, and that ends at 89.1 in, 0.9 in short (7315.2 ticks; 89.1 in is 724204.8, nearest
 * 724205). */
START_TEST(losses_are_divided_away_and_not_multiplied)
{
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(90), WHOLE_IN(45), 0, 10 * PER_CENT);
    struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.make_width, WHOLE_IN(100));
    ck_assert_int_eq(made.make_length, WHOLE_IN(50));
    ck_assert_int_eq(made.width_exact, 1);
    ck_assert_int_eq(made.quilted_width, WHOLE_IN(100));
    ck_assert_int_eq(made.washed_width, WHOLE_IN(90));
    ck_assert_int_eq(made.multiplied_width, WHOLE_IN(99));
    ck_assert_int_eq(made.short_width, 7315);
    ck_assert_int_eq(made.multiplied_length, IN(49, 1, 2));
    ck_assert_int_eq(made.short_length, 3658); /* 45 - 44.55 in: 362102.4 ticks, nearest 362102 */
}
END_TEST

/* 60 / (0.98 x 0.95) = 64.447 and 72 / 0.931 = 77.336; quilted 60 / 0.95 = 63.158 in, 513347.4 ticks; multiplied
 * 60 x 1.02 x 1.05 = 64.26 in, 522305.3 ticks. 64 1/2 x 0.931 = 60.0495 in, 488082.3 ticks. 64.26 x 0.931 in are
 * 486266.2 ticks. */
START_TEST(quilting_and_washing_each_take_their_share)
{
    /* Example: 60 x 72 in wanted, 5 % lost in the wash each way and 2 % to quilting, up to 1/8 in: make 64 1/2 x
     * 77 3/8 in. */
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(60), WHOLE_IN(72), 2 * PER_CENT, 5 * PER_CENT);
    struct muslin_size_to_make made = made_for(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.make_width, IN(64, 1, 2));
    ck_assert_int_eq(made.make_length, IN(77, 3, 8));
    ck_assert(made.width_exact == 0 && made.length_exact == 0);
    ck_assert_int_eq(made.quilted_width, 513347);
    ck_assert_int_eq(made.washed_width, 488082);
    ck_assert_int_eq(made.multiplied_width, 522305);
    ck_assert_int_eq(made.short_width, WHOLE_IN(60) - 486266);
    ck_assert_int_eq(made_for(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_DOWN).make_width, IN(64, 3, 8));
    ck_assert_int_eq(made_for(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_NEAREST).make_width, IN(64, 1, 2));
}
END_TEST

/* 21 x 1.02 x 1.05 = 22.491, of which 0.98 x 0.95 is 20.939, so nothing is short; 22 x 0.931 would be 20.48. */
START_TEST(how_short_multiplying_ends_is_rounded_once)
{
    struct muslin_shrinkage_spec spec = quilt_of(21, 100, 2 * PER_CENT, 5 * PER_CENT);
    struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.multiplied_width, 22);
    ck_assert_int_eq(made.short_width, 0);
    ck_assert_int_eq(made.short_length, 0); /* 100 - 99.71 */
    spec = quilt_of(1000, 1001, 0, 0);
    spec.quilting_across = MUSLIN_PPM / 2;
    spec.quilting_along = MUSLIN_PPM / 2;
    spec.washing_across = MUSLIN_PPM / 10;
    spec.washing_along = MUSLIN_PPM / 10;
    made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.short_width, 257);  /* 1000 - 742.5, ties up */
    ck_assert_int_eq(made.short_length, 258); /* 1001 - 743.2425 */
    spec = quilt_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_PPM - 1, 0);
    spec.washing_along = 1;
    made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.short_width, MUSLIN_SIZE_MAX - 2147);  /* 2^30 x 1.999999 x 10^-6 = 2147.48 */
    ck_assert_int_eq(made.short_length, MUSLIN_SIZE_MAX - 2147); /* less 2^30 x 2 x 10^-18 */
}
END_TEST

START_TEST(width_and_length_have_their_own_shares)
{
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(50), WHOLE_IN(50), 0, 0);
    spec.quilting_across = 50 * PER_CENT;
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).make_width, WHOLE_IN(100));
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).quilted_width, WHOLE_IN(50));
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).make_length, WHOLE_IN(50));
    spec.washing_along = 75 * PER_CENT;
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).make_length, WHOLE_IN(200));
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).quilted_length, WHOLE_IN(200));
    spec.quilting_along = 50 * PER_CENT;
    spec.washing_across = 50 * PER_CENT;
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).make_width, WHOLE_IN(200));
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).make_length, WHOLE_IN(400));
    ck_assert_int_eq(made_for(&spec, 1, MUSLIN_DIRECTION_UP).washed_length, WHOLE_IN(50));
}
END_TEST

/* 9000 / 0.9 = 10000 and 9000 / 0.7 = 12857.14. */
START_TEST(width_and_length_tell_their_own_exactness)
{
    struct muslin_shrinkage_spec spec = quilt_of(9000, 9000, 0, 10 * PER_CENT);
    spec.washing_along = 30 * PER_CENT;
    struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert(made.make_width == 10000 && made.width_exact == 1);
    ck_assert(made.make_length == 12858 && made.length_exact == 0);
    spec.washing_across = 30 * PER_CENT;
    spec.washing_along = 10 * PER_CENT;
    made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert(made.width_exact == 0 && made.length_exact == 1);
}
END_TEST

START_TEST(nothing_lost_is_nothing_added)
{
    struct muslin_shrinkage_spec spec = quilt_of(12345, 0, 0, 0);
    struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert(made.make_width == 12345 && made.quilted_width == 12345 && made.washed_width == 12345);
    ck_assert(made.multiplied_width == 12345 && made.short_width == 0 && made.width_exact == 1);
    ck_assert(made.make_length == 0 && made.quilted_length == 0 && made.short_length == 0 && made.length_exact == 1);
}
END_TEST

static muslin_status call_make(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    return muslin_shrinkage_size_to_make(spec, &rounding, out, problem);
}
static const struct muslin_shrinkage_spec good_quilt = {
    (uint32_t)sizeof good_quilt, 0, WHOLE_IN(60), WHOLE_IN(72), 10000, 20000, 30000, 40000
};
static const struct ruled make = RULED(call_make, good_quilt, muslin_size_to_make);

START_TEST(size_to_make_checks_its_structs)
{
    ck_struct_rules(&make);
    ck_no_flag_known(&make);
}
END_TEST

static const struct refusal quilt_refusals[] = {
    OUTSIDE(muslin_shrinkage_spec, width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
    OUTSIDE(muslin_shrinkage_spec, length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
    NOT_A_LOSS(muslin_shrinkage_spec, quilting_across, MUSLIN_ARG_QUILTING_LOSS),
    NOT_A_LOSS(muslin_shrinkage_spec, quilting_along, MUSLIN_ARG_QUILTING_LOSS),
    NOT_A_LOSS(muslin_shrinkage_spec, washing_across, MUSLIN_ARG_SHRINKAGE),
    NOT_A_LOSS(muslin_shrinkage_spec, washing_along, MUSLIN_ARG_SHRINKAGE),
};

START_TEST(size_to_make_refuses_what_lies_outside_its_ranges)
{
    ck_refusals(&make, quilt_refusals, COUNT_OF(quilt_refusals));
}
END_TEST

static struct muslin_problem not_made(const struct muslin_shrinkage_spec *spec,
                                      const struct muslin_rounding_spec *rounding, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, (uint32_t)sizeof(struct muslin_size_to_make));
    ck_status(muslin_shrinkage_size_to_make(spec, rounding, (struct muslin_size_to_make *)(void *)&out, &problem),
              status);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

START_TEST(a_refused_share_is_told_with_its_direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_shrinkage_spec spec = good_quilt;
    spec.quilting_along = MUSLIN_PPM;
    struct muslin_problem problem = not_made(&spec, &rounding, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_ptr_nonnull(strstr(problem.text, "Share lost to quilting is 1000000 parts per million"));
    spec = good_quilt;
    spec.quilting_across = -1;
    ck_assert_int_eq(not_made(&spec, &rounding, MUSLIN_ERR_RANGE).at, 0);
    spec = good_quilt;
    spec.washing_along = -1;
    ck_assert_int_eq(not_made(&spec, &rounding, MUSLIN_ERR_RANGE).at, 1);
    spec.washing_across = -1;
    ck_assert_int_eq(not_made(&spec, &rounding, MUSLIN_ERR_RANGE).at, 0);
}
END_TEST

START_TEST(size_to_make_checks_its_rounding)
{
    struct muslin_rounding_spec rounding = rounding_to(0, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(not_made(&good_quilt, NULL, MUSLIN_ERR_NULL).argument, MUSLIN_ARG_SPEC);
    ck_assert_int_eq(not_made(&good_quilt, &rounding, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_GRID);
    rounding = rounding_to(8, 4);
    ck_assert_int_eq(not_made(&good_quilt, &rounding, MUSLIN_ERR_CHOICE).argument, MUSLIN_ARG_DIRECTION);
    rounding = rounding_to(8, MUSLIN_DIRECTION_UP);
    rounding.tolerance = 8;
    ck_assert_int_eq(not_made(&good_quilt, &rounding, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_TOLERANCE);
}
END_TEST

/* Of what loses all but a millionth twice over, 10^12 times the wanted size is to be made: 2^62 - 1 ticks hold it up to
 * 4611686 ticks. */
START_TEST(a_size_to_make_ends_at_the_longest_length)
{
    struct muslin_rounding_spec rounding = rounding_to(1, MUSLIN_DIRECTION_UP);
    struct muslin_shrinkage_spec spec = quilt_of(4611686, 1, MUSLIN_PPM - 1, MUSLIN_PPM - 1);
    struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
    ck_assert_int_eq(made.make_width, INT64_C(4611686000000000000));
    ck_assert_int_eq(made.washed_width, 4611686);
    ck_assert_int_eq(made.quilted_width, INT64_C(4611686000000));
    spec.width = 4611687;
    struct muslin_problem problem = not_made(&spec, &rounding, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_WIDTH);
    ck_assert_int_eq(problem.value, 4611687);
    spec.width = MUSLIN_SIZE_MAX;
    not_made(&spec, &rounding, MUSLIN_ERR_OVERFLOW);
    spec.width = 1;
    spec.length = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(not_made(&spec, &rounding, MUSLIN_ERR_OVERFLOW).argument, MUSLIN_ARG_QUILT_LENGTH);
}
END_TEST

/* ---- what a made size becomes ----------------------------------------------------------------------------------- */

static struct muslin_washed_size washed_from(const struct muslin_shrinkage_spec *spec, muslin_len grid,
                                             int32_t direction)
{
    struct muslin_rounding_spec rounding = rounding_to(grid, direction);
    struct muslin_washed_size washed = { .size = (uint32_t)sizeof washed };
    ck_ok(muslin_shrinkage_becomes(spec, &rounding, &washed, NULL));
    return washed;
}

/* 100 x 0.98 = 98, x 0.95 = 93.1 in = 756716.8 ticks; 1 - 0.931^2 = 0.133239 of the area. */
START_TEST(a_made_size_shrinks_in_turn_and_not_by_the_sum)
{
    /* Example: 100 x 100 in made, 2 % lost to quilting and 5 % in the wash each way: 98 in quilted, 93.1 in washed,
     * -69000 each way. */
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(100), WHOLE_IN(100), 2 * PER_CENT, 5 * PER_CENT);
    struct muslin_washed_size washed = washed_from(&spec, 1, MUSLIN_DIRECTION_NEAREST);
    ck_assert_int_eq(washed.quilted_width, WHOLE_IN(98));
    ck_assert_int_eq(washed.quilted_length, WHOLE_IN(98));
    ck_assert_int_eq(washed.washed_width, 756717);
    ck_assert_int_eq(washed.washed_length, 756717);
    ck_assert_int_eq(washed.change_across, -69000);
    ck_assert_int_eq(washed.change_along, -69000);
    ck_assert_int_eq(washed.change_area, -133239);
    ck_assert_int_eq(washed_from(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_DOWN).washed_width, WHOLE_IN(93));
    ck_assert_int_eq(washed_from(&spec, IN(0, 1, 8), MUSLIN_DIRECTION_UP).washed_length, IN(93, 1, 8));
}
END_TEST

/* Half the width, three quarters of the length gone: 12.5 % of the area is left. */
START_TEST(each_side_becomes_what_its_own_shares_leave)
{
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(40), WHOLE_IN(80), 0, 0);
    spec.quilting_across = 50 * PER_CENT;
    spec.washing_along = 75 * PER_CENT;
    struct muslin_washed_size washed = washed_from(&spec, 1, MUSLIN_DIRECTION_DOWN);
    ck_assert_int_eq(washed.quilted_width, WHOLE_IN(20));
    ck_assert_int_eq(washed.quilted_length, WHOLE_IN(80));
    ck_assert_int_eq(washed.washed_width, WHOLE_IN(20));
    ck_assert_int_eq(washed.washed_length, WHOLE_IN(20));
    ck_assert_int_eq(washed.change_across, -500000);
    ck_assert_int_eq(washed.change_along, -750000);
    ck_assert_int_eq(washed.change_area, -875000);
}
END_TEST

START_TEST(the_largest_size_becomes_what_it_must)
{
    struct muslin_shrinkage_spec spec = quilt_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 0, 0);
    ck_assert_int_eq(washed_from(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP).washed_width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(washed_from(&spec, 1, MUSLIN_DIRECTION_UP).change_area, 0);
    spec = quilt_of(MUSLIN_SIZE_MAX, 1, MUSLIN_PPM - 1, MUSLIN_PPM - 1);
    ck_assert_int_eq(washed_from(&spec, MUSLIN_SIZE_MAX, MUSLIN_DIRECTION_UP).washed_width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(washed_from(&spec, 1, MUSLIN_DIRECTION_DOWN).quilted_width, MUSLIN_SIZE_MAX / MUSLIN_PPM);
    ck_assert_int_eq(washed_from(&spec, 1, MUSLIN_DIRECTION_DOWN).washed_width, 0);
    ck_assert_int_eq(washed_from(&spec, 1, MUSLIN_DIRECTION_DOWN).change_across, -MUSLIN_PPM);
}
END_TEST

/* What is made up to a tick becomes, down to a tick, what was wanted. */
START_TEST(washing_undoes_the_making)
{
    uint64_t state = 32;
    int good = 1;
    for (int i = 0; i < 2000; i++) {
        struct muslin_shrinkage_spec spec = good_quilt;
        spec.width = draw_from(&state, 0, MUSLIN_SIZE_MAX / 4);
        spec.length = draw_from(&state, 0, 10000);
        spec.quilting_across = (int32_t)draw_from(&state, 0, MUSLIN_PPM / 2);
        spec.quilting_along = (int32_t)draw_from(&state, 0, MUSLIN_PPM - 1);
        spec.washing_across = (int32_t)draw_from(&state, 0, MUSLIN_PPM / 2);
        spec.washing_along = (int32_t)draw_from(&state, 0, MUSLIN_PPM / 2);
        struct muslin_size_to_make made = made_for(&spec, 1, MUSLIN_DIRECTION_UP);
        struct muslin_shrinkage_spec back = spec;
        back.width = made.make_width;
        back.length = made.make_length;
        if (back.width > MUSLIN_SIZE_MAX || back.length > MUSLIN_SIZE_MAX)
            continue;
        struct muslin_washed_size washed = washed_from(&back, 1, MUSLIN_DIRECTION_DOWN);
        good &= washed.washed_width == spec.width && washed.washed_length == spec.length;
        good &= made.short_width >= 0 && made.multiplied_width <= made.make_width;
    }
    ck_assert(good);
}
END_TEST

static muslin_status call_becomes(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    return muslin_shrinkage_becomes(spec, &rounding, out, problem);
}
static const struct ruled becomes = RULED(call_becomes, good_quilt, muslin_washed_size);

START_TEST(becomes_checks_its_structs_and_ranges)
{
    ck_struct_rules(&becomes);
    ck_no_flag_known(&becomes);
    ck_refusals(&becomes, quilt_refusals, COUNT_OF(quilt_refusals));
}
END_TEST

START_TEST(becomes_checks_its_rounding)
{
    struct muslin_washed_size out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    struct muslin_rounding_spec rounding = rounding_to(MUSLIN_SIZE_MAX + 1, MUSLIN_DIRECTION_UP);
    ck_status(muslin_shrinkage_becomes(&good_quilt, NULL, &out, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_shrinkage_becomes(&good_quilt, &rounding, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
}
END_TEST

/* 3 in to 2 in is a third lost; 333333 ppm would say 150 in less a little. */
START_TEST(a_sample_is_not_rounded_to_a_percentage_on_the_way)
{
    struct muslin_rounded make_it = { .size = (uint32_t)sizeof make_it };
    const struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_shrinkage_spec spec = quilt_of(WHOLE_IN(100), 0, 0, 333333);
    ck_ok(muslin_shrinkage_from_sample(3, 2, WHOLE_IN(100), &rounding, &make_it, NULL));
    ck_assert_int_eq(make_it.value, WHOLE_IN(150));
    ck_assert_int_eq(make_it.exact, 1);
    ck_assert_int_lt(made_for(&spec, 1, MUSLIN_DIRECTION_NEAREST).make_width, WHOLE_IN(150));
}
END_TEST

TCase *tcase_sizes(void)
{
    TCase *tcase = tcase_create("sizes to make");
    tcase_add_test(tcase, losses_are_divided_away_and_not_multiplied);
    tcase_add_test(tcase, quilting_and_washing_each_take_their_share);
    tcase_add_test(tcase, how_short_multiplying_ends_is_rounded_once);
    tcase_add_test(tcase, width_and_length_have_their_own_shares);
    tcase_add_test(tcase, width_and_length_tell_their_own_exactness);
    tcase_add_test(tcase, nothing_lost_is_nothing_added);
    tcase_add_test(tcase, size_to_make_checks_its_structs);
    tcase_add_test(tcase, size_to_make_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, a_refused_share_is_told_with_its_direction);
    tcase_add_test(tcase, size_to_make_checks_its_rounding);
    tcase_add_test(tcase, a_size_to_make_ends_at_the_longest_length);
    tcase_add_test(tcase, a_made_size_shrinks_in_turn_and_not_by_the_sum);
    tcase_add_test(tcase, each_side_becomes_what_its_own_shares_leave);
    tcase_add_test(tcase, the_largest_size_becomes_what_it_must);
    tcase_add_test(tcase, washing_undoes_the_making);
    tcase_add_test(tcase, becomes_checks_its_structs_and_ranges);
    tcase_add_test(tcase, becomes_checks_its_rounding);
    tcase_add_test(tcase, a_sample_is_not_rounded_to_a_percentage_on_the_way);
    return tcase;
}
