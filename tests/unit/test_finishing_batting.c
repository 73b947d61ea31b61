/* test_finishing_batting.c - batting: size, package, pieces of a roll.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

static struct muslin_batting_spec quilt(muslin_len width, muslin_len length)
{
    struct muslin_batting_spec spec = MUSLIN_BATTING_SPEC_INIT;
    spec.quilt_width = width;
    spec.quilt_length = length;
    return spec;
}

static struct muslin_batting planned(const struct muslin_batting_spec *spec)
{
    struct muslin_batting batting = { .size = (uint32_t)sizeof batting };
    ck_ok(muslin_batting_plan(spec, &batting, NULL));
    return batting;
}

/* Longarm quilting service sheet, "Preparing your quilt": 60 x 80, 3 in each side: 66 x 86 in. */
START_TEST(three_inches_on_each_side_make_sixty_by_eighty_sixty_six_by_eighty_six)
{
    struct muslin_batting_spec spec = quilt(WHOLE_IN(60), WHOLE_IN(80));
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.width, WHOLE_IN(66));
    ck_assert_int_eq(batting.length, WHOLE_IN(86));
}
END_TEST

START_TEST(each_margin_counts_on_its_own_side)
{
    struct muslin_batting_spec spec = quilt(1000, 3000);
    spec.margin_left = 1;
    spec.margin_right = 20;
    spec.margin_top = 300;
    spec.margin_bottom = 4000;
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.width, 1021);
    ck_assert_int_eq(batting.length, 7300);
}
END_TEST

/* All rows of the table, laid both ways, sorted out by hand: the least area wins, upright before turned. */
static int package_is_the_least(const struct muslin_batting_spec *spec, int may_turn)
{
    struct muslin_batting batting = planned(spec);
    int64_t rows = 0;
    int64_t best = -1;
    int64_t best_area = 0;
    ck_ok(muslin_reference_count(MUSLIN_TABLE_BATTING, &rows, NULL));
    for (int64_t row = rows - 1; row >= 0; row--) {
        struct muslin_reference r = { .size = (uint32_t)sizeof r };
        ck_ok(muslin_reference_row(MUSLIN_TABLE_BATTING, row, &r, NULL));
        int upright = batting.width <= r.width && batting.length <= r.length;
        int turned = may_turn && batting.width <= r.length && batting.length <= r.width;
        if (!upright && !turned)
            continue;
        if (best < 0 || r.width * r.length <= best_area) {
            best = row;
            best_area = r.width * r.length;
        }
        if (row == batting.package) {
            muslin_len across = upright ? r.width : r.length;
            muslin_len down = upright ? r.length : r.width;
            if (batting.turned != !upright || batting.package_width != r.width || batting.package_length != r.length)
                return 0;
            if (batting.spare_width != across - batting.width || batting.spare_length != down - batting.length)
                return 0;
        }
    }
    return batting.package == best;
}

START_TEST(the_package_is_the_smallest_that_covers_in_its_orientation)
{
    int wrong = 0;
    for (muslin_len width = 5; width <= 130; width += 5)
        for (muslin_len length = 6; length <= 130; length += 4) {
            struct muslin_batting_spec spec = quilt(WHOLE_IN(width), WHOLE_IN(length));
            wrong += package_is_the_least(&spec, 1) == 0;
            spec.flags = MUSLIN_BATTING_FIXED;
            wrong += package_is_the_least(&spec, 0) == 0;
        }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* As large as a package, and a tick more either way. */
START_TEST(a_package_that_is_a_tick_short_does_not_cover)
{
    int64_t rows = 0;
    int wrong = 0;
    ck_ok(muslin_reference_count(MUSLIN_TABLE_BATTING, &rows, NULL));
    for (int64_t row = 0; row < rows; row++)
        for (int ticks = 0; ticks < 4; ticks++) {
            struct muslin_reference r = { .size = (uint32_t)sizeof r };
            ck_ok(muslin_reference_row(MUSLIN_TABLE_BATTING, row, &r, NULL));
            struct muslin_batting_spec spec = quilt(r.width + ticks % 2, r.length + ticks / 2);
            spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = 0;
            wrong += package_is_the_least(&spec, 1) == 0;
            spec.flags = MUSLIN_BATTING_FIXED;
            wrong += package_is_the_least(&spec, 0) == 0;
        }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* Crib packages are listed as 45 x 60 in (public charts): a quilt 54 x 39 in with 3 in margins needs 60 x 45. */
START_TEST(a_package_that_fits_only_turned_is_turned_unless_fixed)
{
    struct muslin_batting_spec spec = quilt(WHOLE_IN(54), WHOLE_IN(39));
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.turned, 1);
    ck_assert_int_eq(batting.package_width, WHOLE_IN(45));
    ck_assert_int_eq(batting.package_length, WHOLE_IN(60));
    ck_assert_int_eq(batting.spare_width, 0);
    ck_assert_int_eq(batting.spare_length, 0);
    spec.flags = MUSLIN_BATTING_FIXED;
    batting = planned(&spec);
    ck_assert_int_eq(batting.turned, 0);
    ck_assert_int_gt(batting.package_width, WHOLE_IN(59));
}
END_TEST

/* No list in print goes beyond 124 in. */
START_TEST(no_package_for_a_quilt_of_two_hundred_inches_is_an_answer)
{
    struct muslin_batting_spec spec = quilt(WHOLE_IN(200), WHOLE_IN(200));
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.package, -1);
    ck_assert_int_eq(batting.package_width, 0);
    ck_assert_int_eq(batting.package_length, 0);
    ck_assert_int_eq(batting.spare_width, 0);
    ck_assert_int_eq(batting.spare_length, 0);
    ck_assert_int_eq(batting.turned, 0);
    ck_assert_int_eq(batting.width, WHOLE_IN(206));
}
END_TEST

/* Piece after piece until the width is covered. */
static int64_t pieces_laid(muslin_len across, muslin_len roll_width)
{
    int64_t pieces = 0;
    for (muslin_len covered = 0; covered < across; covered += roll_width)
        pieces++;
    return pieces;
}

START_TEST(pieces_of_a_roll_lie_the_way_that_takes_less)
{
    uint64_t dice = 13;
    int wrong = 0;
    for (int i = 0; i < 4000; i++) {
        struct muslin_batting_spec spec = quilt(draw_from(&dice, 1, 30), 0);
        spec.quilt_length = draw_from(&dice, 1, 30);
        spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = 0;
        spec.roll_width = draw_from(&dice, 1, 12);
        int64_t down = pieces_laid(spec.quilt_width, spec.roll_width);
        int64_t across = pieces_laid(spec.quilt_length, spec.roll_width);
        muslin_len roll_down = down * spec.quilt_length;
        muslin_len roll_across = across * spec.quilt_width;
        int turned = roll_across < roll_down || (roll_across == roll_down && across < down);
        struct muslin_batting batting = planned(&spec);
        wrong += batting.joined_turned != turned || batting.joined_pieces != (turned ? across : down);
        wrong += batting.joined_length != (turned ? roll_across : roll_down);
        wrong += batting.joined_joins != batting.joined_pieces - 1;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

START_TEST(pieces_are_counted_only_when_a_roll_is_named)
{
    struct muslin_batting_spec spec = quilt(WHOLE_IN(60), WHOLE_IN(80));
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.joined_pieces, 0);
    ck_assert_int_eq(batting.joined_length, 0);
    ck_assert_int_eq(batting.joined_joins, 0);
    ck_assert_int_eq(batting.joined_turned, 0);
}
END_TEST

START_TEST(the_largest_quilt_from_the_narrowest_roll_is_a_right_number)
{
    struct muslin_batting_spec spec = quilt(MUSLIN_SIZE_MAX - 7, MUSLIN_SIZE_MAX - 11);
    spec.margin_left = 7;
    spec.margin_right = 0;
    spec.margin_top = 5;
    spec.margin_bottom = 6;
    spec.roll_width = 1;
    struct muslin_batting batting = planned(&spec);
    ck_assert_int_eq(batting.width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(batting.length, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(batting.joined_length, MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
}
END_TEST

static const struct muslin_batting_spec throw_size = {
    (uint32_t)sizeof throw_size, 0, WHOLE_IN(60), WHOLE_IN(80), 24384, 24384, 24384, 24384, WHOLE_IN(48)
};

static muslin_status batting_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_batting_plan(spec, out, problem);
}

static const struct ruled batting = RULED(batting_call, throw_size, muslin_batting);

START_TEST(batting_checks_its_structs)
{
    ck_struct_rules(&batting);
}
END_TEST

START_TEST(batting_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_batting_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_batting_spec, quilt_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_batting_spec, quilt_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_batting_spec, margin_left, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_batting_spec, margin_right, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_batting_spec, margin_top, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_batting_spec, margin_bottom, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MARGIN),
        OUTSIDE(muslin_batting_spec, roll_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FABRIC_WIDTH),
    };
    ck_refusals_at(&batting, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(quilt_and_margins_together_may_not_pass_the_largest_size)
{
    struct muslin_batting_spec spec = quilt(MUSLIN_SIZE_MAX - 24384, 1);
    struct muslin_batting out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_batting_plan(&spec, &out, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MARGIN);
    ck_assert_int_eq(problem.value, 2 * 24384);
    ck_assert_int_eq(problem.limit, 24384);
    ck_assert_int_eq(out.width, 0);
}
END_TEST

static muslin_status batting_init(void *spec, uint32_t size)
{
    return muslin_batting_spec_init(spec, size);
}

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_batting_spec spec = MUSLIN_BATTING_SPEC_INIT;
    ck_init_rules(batting_init, &spec, sizeof spec);
}
END_TEST

void add_finishing_batting(Suite *suite)
{
    TCase *tests = tcase_create("batting");
    tcase_add_test(tests, init_call_gives_the_macros_bytes);
    tcase_add_test(tests, three_inches_on_each_side_make_sixty_by_eighty_sixty_six_by_eighty_six);
    tcase_add_test(tests, each_margin_counts_on_its_own_side);
    tcase_add_test(tests, the_package_is_the_smallest_that_covers_in_its_orientation);
    tcase_add_test(tests, a_package_that_is_a_tick_short_does_not_cover);
    tcase_add_test(tests, a_package_that_fits_only_turned_is_turned_unless_fixed);
    tcase_add_test(tests, no_package_for_a_quilt_of_two_hundred_inches_is_an_answer);
    tcase_add_test(tests, pieces_of_a_roll_lie_the_way_that_takes_less);
    tcase_add_test(tests, pieces_are_counted_only_when_a_roll_is_named);
    tcase_add_test(tests, the_largest_quilt_from_the_narrowest_roll_is_a_right_number);
    tcase_add_test(tests, batting_checks_its_structs);
    tcase_add_test(tests, batting_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tests, quilt_and_margins_together_may_not_pass_the_largest_size);
    suite_add_tcase(suite, tests);
}
