/* test_finishing_bias.c - bias strip: the tube, the least square, separate strips.
 *
 * SPDX-License-Identifier: MIT */
#include "test_finishing.h"

/* ---- the same geometry by another route: counting up, and comparing squares ------------------------------------- */

/* Greatest n with n sqrt 2 w <= d, by trying one after another. Small numbers only. */
static int64_t rounds_by_trying(int64_t d, int64_t w)
{
    int64_t n = 0;
    while (d > 0 && 2 * (n + 1) * w * (n + 1) * w <= d * d)
        n++;
    return n;
}

/* Greatest L >= 0 with L + k <= sqrt 2 m, by halving; 0 if there is none. m up to 2^30. */
static int64_t floor_by_halving(int64_t m, int64_t k)
{
    int64_t low = 0;
    int64_t high = 2 * (m > 0 ? m : 0) + 1;
    while (high - low > 1) {
        int64_t middle = low + (high - low) / 2;
        int64_t whole = middle + k;
        if (whole * whole <= 2 * m * m)
            low = middle;
        else
            high = middle;
    }
    return low;
}

static int64_t tube_by_trying(int64_t a, int64_t b, int64_t w, int64_t s, int64_t blunt, int64_t *rounds)
{
    *rounds = a > 2 * s ? rounds_by_trying(b - 2 * s, w) : 0;
    if (*rounds == 0)
        return 0;
    return floor_by_halving(*rounds * a - (*rounds - 1) * 2 * s, blunt ? w : 0);
}

/* ---- the tube -------------------------------------------------------------------------------------------------- */

static struct muslin_bias_spec cloth(muslin_len width, muslin_len length, muslin_len strip_cut, muslin_len allowance)
{
    struct muslin_bias_spec spec = MUSLIN_BIAS_SPEC_INIT;
    spec.width = width;
    spec.length = length;
    spec.strip_cut = strip_cut;
    spec.allowance = allowance;
    return spec;
}

static struct muslin_bias tube_of(const struct muslin_bias_spec *spec)
{
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    ck_ok(muslin_bias_tube(spec, &bias, NULL));
    return bias;
}

/* 4 sqrt 2 18 - 3 x 2 sqrt 2 1/4 = 99.7021 in: n = floor(17.5 / 3.5355). In ticks by Python's decimal at 60 digits:
 * floor(8128 * (4*18 - 6/4) * Decimal(2).sqrt()) = 810378; with blunt ends 20320 less. */
START_TEST(an_eighteen_inch_square_gives_four_rounds)
{
    struct muslin_bias_spec spec = cloth(WHOLE_IN(18), WHOLE_IN(18), IN(2, 1, 2), IN(0, 1, 4));
    struct muslin_bias bias = tube_of(&spec);
    ck_assert_int_eq(bias.rounds, 4);
    ck_assert_int_eq(bias.joins, 3);
    ck_assert_int_eq(bias.length, 810378);
    ck_assert_int_eq(bias.square_cut, 0);
    ck_assert_int_eq(bias.area_rule, 0);
    ck_assert_int_eq(bias.spare, 0);
    spec.flags = MUSLIN_BIAS_BLUNT_ENDS;
    ck_assert_int_eq(tube_of(&spec).length, 790058);
}
END_TEST

START_TEST(a_rectangle_serves_either_way_round)
{
    struct muslin_bias_spec lying = cloth(WHOLE_IN(18), WHOLE_IN(22), IN(2, 1, 2), IN(0, 1, 4));
    struct muslin_bias_spec standing = cloth(WHOLE_IN(22), WHOLE_IN(18), IN(2, 1, 2), IN(0, 1, 4));
    ck_assert_int_eq(tube_of(&lying).rounds, 6);
    ck_assert_int_eq(tube_of(&lying).length, 1212693); /* as above: floor(8128 * (6*18 - 10/4) * sqrt 2) */
    ck_assert_int_eq(tube_of(&standing).length, 1212693);
}
END_TEST

START_TEST(rounds_and_length_of_small_cloths_are_what_counting_finds)
{
    uint64_t dice = 11;
    int wrong = 0;
    for (int i = 0; i < 20000; i++) {
        struct muslin_bias_spec spec = cloth(0, 0, 0, 0);
        spec.strip_cut = draw_from(&dice, 1, 200);
        spec.allowance = draw_from(&dice, 0, 60);
        spec.width = draw_from(&dice, 1, 3000);
        spec.length = draw_from(&dice, 1, 3000);
        spec.flags = (uint32_t)draw_from(&dice, 0, 1);
        int64_t a = spec.width < spec.length ? spec.width : spec.length;
        int64_t b = spec.width + spec.length - a;
        int64_t rounds;
        int64_t length = tube_by_trying(a, b, spec.strip_cut, spec.allowance, spec.flags != 0, &rounds);
        struct muslin_bias bias = tube_of(&spec);
        wrong += bias.rounds != rounds || bias.length != length || bias.joins != (rounds > 0 ? rounds - 1 : 0);
        wrong += bias.length * spec.strip_cut > a * b;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* x x - 2 y y = +1 and -1 in turn (Pell): a cloth of x ticks is a hair wider, then a hair narrower, than the sqrt 2 y
 * that a strip of y ticks takes. */
START_TEST(a_hair_more_or_less_than_root_two_is_told_apart)
{
    int64_t x = 1;
    int64_t y = 1;
    int64_t sign = -1;
    while (x <= MUSLIN_SIZE_MAX) {
        struct muslin_bias_spec spec = cloth(x, x, y, 0);
        ck_assert_int_eq(tube_of(&spec).rounds, sign > 0);
        int64_t next = x + 2 * y;
        y = x + y;
        x = next;
        sign = -sign;
    }
}
END_TEST

/* In ticks by Python's decimal at 60 digits: n = int((b - 2*s) / (Decimal(2).sqrt() * w)), then the floor of
 * n * sqrt 2 * a - (n - 1) * 2 * sqrt 2 * s. */
START_TEST(large_cloths_are_exact_too)
{
    struct muslin_bias_spec spec = cloth(700000000, 1000000000, 500000000, 0);
    ck_assert_int_eq(tube_of(&spec).length, 989949493);
    spec = cloth(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX / 2, MUSLIN_SIZE_MAX / 8);
    ck_assert_int_eq(tube_of(&spec).length, 1518500249);
    spec = cloth(1073741, MUSLIN_SIZE_MAX, 760000, 12345);
    ck_assert_int_eq(tube_of(&spec).rounds, 998);
    ck_assert_int_eq(tube_of(&spec).length, 1480649904);
}
END_TEST

START_TEST(no_round_at_all_is_an_answer)
{
    struct muslin_bias_spec spec = cloth(WHOLE_IN(3), WHOLE_IN(3), IN(2, 1, 2), IN(0, 1, 4));
    struct muslin_bias bias = tube_of(&spec);
    ck_assert_int_eq(bias.rounds, 0);
    ck_assert_int_eq(bias.joins, 0);
    ck_assert_int_eq(bias.length, 0);
}
END_TEST

START_TEST(seams_that_take_the_whole_of_a_side_leave_no_tube)
{
    struct muslin_bias_spec spec = cloth(20, 100, 5, 10);
    ck_assert_int_eq(tube_of(&spec).rounds, 0);
    spec.width = 21;
    ck_assert_int_eq(tube_of(&spec).rounds, 11); /* 80 / (5 sqrt 2) = 11.3 */
}
END_TEST

START_TEST(blunt_ends_can_take_all_there_is)
{
    struct muslin_bias_spec spec = cloth(1, 1000, 500, 0);
    ck_assert_int_eq(tube_of(&spec).length, 1);
    spec.width = 3;
    ck_assert_int_eq(tube_of(&spec).length, 4);
    spec.flags = MUSLIN_BIAS_BLUNT_ENDS;
    ck_assert_int_eq(tube_of(&spec).length, 0);
    ck_assert_int_eq(tube_of(&spec).rounds, 1);
}
END_TEST

static const struct muslin_bias_spec fat_square = {
    (uint32_t)sizeof fat_square, 0, WHOLE_IN(18), WHOLE_IN(18), IN(2, 1, 2), MUSLIN_QUARTER_INCH, WHOLE_IN(55)
};

static muslin_status tube_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_bias_tube(spec, out, problem);
}

static const struct ruled tube = RULED(tube_call, fat_square, muslin_bias);

START_TEST(tube_checks_its_structs)
{
    ck_struct_rules(&tube);
}
END_TEST

#define STRIP_REFUSALS                                                                           \
    OUTSIDE(muslin_bias_spec, strip_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),              \
        OUTSIDE(muslin_bias_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE), \
        REFUSAL(muslin_bias_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC)

START_TEST(tube_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_bias_spec, width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FABRIC_WIDTH),
        OUTSIDE(muslin_bias_spec, length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_CLOTH_LENGTH),
        STRIP_REFUSALS,
    };
    ck_refusals_at(&tube, 0, refusals, COUNT_OF(refusals));
}
END_TEST

/* floor(100000 / (sqrt 2 x 3)) = 23570 rounds: 45555 x 23570 is the last below 2^30, 45556 x 23570 is beyond. */
START_TEST(a_longer_strip_than_can_be_squared_is_out_of_range)
{
    struct muslin_bias_spec spec = cloth(45555, 100000, 3, 0);
    ck_assert_int_eq(tube_of(&spec).rounds, 23570);
    spec.width++;
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_bias_tube(&spec, &bias, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BIAS_LENGTH);
    ck_assert_int_eq(problem.limit, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(bias.length, 0);
}
END_TEST

/* ---- the least square ------------------------------------------------------------------------------------------ */

static struct muslin_rounding_spec up_to(muslin_len grid)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.direction = MUSLIN_DIRECTION_UP;
    return rounding;
}

static struct muslin_bias least_for(const struct muslin_bias_spec *spec, muslin_len grid)
{
    struct muslin_rounding_spec rounding = up_to(grid);
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    ck_ok(muslin_bias_least_square(spec, &rounding, &bias, NULL));
    return bias;
}

/* Published answers that are too small: [a blog, 2018, "Continuous bias binding formulas"] 55 in of 2 1/2: 12 in;
 * [a blog, 2009, "NYB progress"] 18 in of 2 1/2: 7 in; [Waco Homespun Quilt Guild, "Continuous Bias Binding Tutorial"]
 * 110 of 2 1/2: 18; 220, 340 and 480 of 1 1/2: 19, 23, 28 in. The answers below are those of the tube's geometry. */
START_TEST(squares_printed_too_small_are_corrected)
{
    const struct {
        muslin_len wanted, strip, printed, least;
    } rows[] = {
        { WHOLE_IN(55), IN(2, 1, 2), WHOLE_IN(12), IN(13, 3, 8) },
        { WHOLE_IN(18), IN(2, 1, 2), WHOLE_IN(7), IN(7, 5, 8) },
        { WHOLE_IN(110), IN(2, 1, 2), WHOLE_IN(18), IN(18, 1, 4) },
        { WHOLE_IN(220), IN(1, 1, 2), WHOLE_IN(19), IN(19, 5, 8) },
        { WHOLE_IN(340), IN(1, 1, 2), WHOLE_IN(23), IN(23, 7, 8) },
        { WHOLE_IN(480), IN(1, 1, 2), WHOLE_IN(28), IN(28, 1, 8) },
    };
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct muslin_bias_spec spec = cloth(0, 0, rows[i].strip, MUSLIN_QUARTER_INCH);
        spec.wanted = rows[i].wanted;
        ck_assert_int_eq(least_for(&spec, IN(0, 1, 8)).square_cut, rows[i].least);
        spec.width = rows[i].printed;
        spec.length = rows[i].printed;
        ck_assert_int_lt(tube_of(&spec).length, rows[i].wanted);
    }
}
END_TEST

/* Waco Homespun Quilt Guild, the same table: rows that are large enough. */
START_TEST(squares_printed_large_enough_are_not_below_the_least)
{
    const struct {
        muslin_len wanted, strip, printed;
    } rows[] = {
        { WHOLE_IN(110), WHOLE_IN(3), WHOLE_IN(20) },   { WHOLE_IN(220), WHOLE_IN(2), WHOLE_IN(23) },
        { WHOLE_IN(220), WHOLE_IN(3), WHOLE_IN(28) },   { WHOLE_IN(340), IN(2, 1, 2), WHOLE_IN(32) },
        { WHOLE_IN(480), WHOLE_IN(2), WHOLE_IN(33) },   { WHOLE_IN(480), IN(2, 1, 2), WHOLE_IN(37) },
    };
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        struct muslin_bias_spec spec = cloth(0, 0, rows[i].strip, MUSLIN_QUARTER_INCH);
        spec.wanted = rows[i].wanted;
        ck_assert_int_le(least_for(&spec, IN(0, 1, 8)).square_cut, rows[i].printed);
    }
}
END_TEST

START_TEST(the_least_square_is_the_first_that_a_walk_over_the_grid_finds)
{
    uint64_t dice = 5;
    int wrong = 0;
    for (int i = 0; i < 2000; i++) {
        struct muslin_bias_spec spec = cloth(0, 0, 0, 0);
        spec.strip_cut = draw_from(&dice, 1, 40);
        spec.allowance = draw_from(&dice, 0, 12);
        spec.wanted = draw_from(&dice, 1, 3000);
        spec.flags = (uint32_t)draw_from(&dice, 0, 1);
        int64_t grid = draw_from(&dice, 1, 7);
        int64_t side = 0;
        int64_t rounds;
        int64_t length = 0;
        while (length < spec.wanted) {
            side += grid;
            length = tube_by_trying(side, side, spec.strip_cut, spec.allowance, spec.flags != 0, &rounds);
        }
        struct muslin_bias bias = least_for(&spec, grid);
        wrong += bias.square_cut != side || bias.rounds != rounds || bias.joins != rounds - 1;
        wrong += bias.length != length || bias.spare != length - spec.wanted;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* The published rule is the square root of length x width: 55 x 2 1/2 = 137 1/2, its root 11.7260 in, 95309 ticks (the
 * square of 95309 1/2 is above 55 x 2 1/2 x 8128 x 8128, that of 95308 1/2 below). */
START_TEST(the_area_rule_is_shown_beside_as_the_lower_bound_it_is)
{
    struct muslin_bias bias = least_for(&fat_square, IN(0, 1, 8));
    ck_assert_int_eq(bias.area_rule, 95309);
    const int64_t four_areas = 2 * 275 * INT64_C(8128) * 8128;
    ck_assert(INT64_C(190619) * 190619 > four_areas);
    ck_assert(INT64_C(190617) * 190617 < four_areas);
}
END_TEST

static muslin_status least_call(const void *spec, void *out, struct muslin_problem *problem)
{
    const struct muslin_rounding_spec rounding = up_to(IN(0, 1, 8));
    return muslin_bias_least_square(spec, &rounding, out, problem);
}

static const struct ruled least = RULED(least_call, fat_square, muslin_bias);

START_TEST(least_square_checks_its_structs)
{
    ck_struct_rules(&least);
}
END_TEST

START_TEST(least_square_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_bias_spec, wanted, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BIAS_LENGTH),
        STRIP_REFUSALS,
    };
    ck_refusals_at(&least, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(least_square_does_not_read_the_cloth)
{
    struct muslin_bias_spec spec = fat_square;
    spec.width = -1;
    spec.length = INT64_MAX;
    ck_assert_int_eq(least_for(&spec, IN(0, 1, 8)).square_cut, IN(13, 3, 8));
}
END_TEST

static muslin_status least_fails(const struct muslin_bias_spec *spec, const struct muslin_rounding_spec *rounding,
                                 struct muslin_problem *problem)
{
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    muslin_status status = muslin_bias_least_square(spec, rounding, &bias, problem);
    ck_assert_int_eq(bias.length, 0);
    ck_assert_int_eq(bias.square_cut, 0);
    return status;
}

START_TEST(least_square_rounds_up_and_overlooks_nothing)
{
    struct muslin_rounding_spec rounding = up_to(IN(0, 1, 8));
    struct muslin_problem problem = PROBLEM;
    rounding.direction = MUSLIN_DIRECTION_DOWN;
    ck_status(least_fails(&fat_square, &rounding, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_DIRECTION);
    rounding.direction = MUSLIN_DIRECTION_NEAREST;
    ck_status(least_fails(&fat_square, &rounding, NULL), MUSLIN_ERR_CHOICE);
    rounding.direction = MUSLIN_DIRECTION_UP;
    rounding.tolerance = 1;
    ck_status(least_fails(&fat_square, &rounding, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TOLERANCE);
    rounding.tolerance = 0;
    rounding.grid = 0;
    ck_status(least_fails(&fat_square, &rounding, NULL), MUSLIN_ERR_RANGE);
    rounding.size = 0;
    ck_status(least_fails(&fat_square, &rounding, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(least_fails(&fat_square, NULL, NULL), MUSLIN_ERR_NULL);
}
END_TEST

/* A strip of sqrt 2 x 2^29 and more needs a square beyond 2^30: no round. And the largest square with one round gives
 * floor(sqrt 2 x 2^30) = 1518500249 at 45 degrees, less the width 2^29 when blunt: 981629337 (square root from Python's
 * math.isqrt(2 * 2**60)). */
START_TEST(no_square_in_range_is_out_of_range_and_says_what_the_largest_gives)
{
    struct muslin_bias_spec spec = cloth(0, 0, MUSLIN_SIZE_MAX, 0);
    const struct muslin_rounding_spec rounding = up_to(8);
    struct muslin_problem problem = PROBLEM;
    spec.wanted = 1;
    ck_status(least_fails(&spec, &rounding, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 0);
    spec.strip_cut = MUSLIN_SIZE_MAX / 2;
    spec.flags = MUSLIN_BIAS_BLUNT_ENDS;
    spec.wanted = 981629338;
    ck_status(least_fails(&spec, &rounding, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BIAS_LENGTH);
    ck_assert_int_eq(problem.limit, 981629337);
    spec.wanted = 981629337;
    ck_assert_int_eq(least_for(&spec, 1).square_cut, MUSLIN_SIZE_MAX);
}
END_TEST

START_TEST(a_grid_so_coarse_that_the_square_gives_far_too_much_is_out_of_range)
{
    struct muslin_bias_spec spec = cloth(0, 0, 1, 0);
    const struct muslin_rounding_spec rounding = up_to(MUSLIN_SIZE_MAX);
    spec.wanted = 1;
    ck_status(least_fails(&spec, &rounding, NULL), MUSLIN_ERR_RANGE);
}
END_TEST

START_TEST(one_step_of_the_grid_can_be_enough)
{
    ck_assert_int_eq(least_for(&fat_square, IN(13, 3, 8)).square_cut, IN(13, 3, 8));
    ck_assert_int_eq(least_for(&fat_square, IN(13, 3, 8) - 1016).square_cut, 2 * (IN(13, 3, 8) - 1016));
}
END_TEST

START_TEST(the_longest_strip_still_has_its_square)
{
    struct muslin_bias_spec spec = cloth(0, 0, 1, 0);
    spec.wanted = MUSLIN_SIZE_MAX;
    struct muslin_bias bias = least_for(&spec, 1);
    ck_assert_int_ge(bias.length, MUSLIN_SIZE_MAX);
    spec.width = bias.square_cut - 1;
    spec.length = bias.square_cut - 1;
    ck_assert_int_lt(tube_of(&spec).length, MUSLIN_SIZE_MAX);
}
END_TEST

/* ---- separate strips ------------------------------------------------------------------------------------------- */

static struct muslin_bias strips_of(const struct muslin_bias_spec *spec)
{
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    ck_ok(muslin_bias_strips(spec, &bias, NULL));
    return bias;
}

/* In ticks by Python's decimal at 60 digits: n = int(S / (Decimal(2).sqrt() * w)), then the floor of
 * 2 * (sqrt 2 * n * S - n * n * w) - (2 * n - 1) * 2 * sqrt 2 * s, less w when blunt. */
START_TEST(an_eighteen_inch_square_gives_ten_separate_strips)
{
    struct muslin_bias_spec spec = fat_square;
    struct muslin_bias bias = strips_of(&spec);
    ck_assert_int_eq(bias.rounds, 10);
    ck_assert_int_eq(bias.joins, 9);
    ck_assert_int_eq(bias.length, 1001324);
    ck_assert_int_eq(bias.square_cut, 0);
    spec.flags = MUSLIN_BIAS_BLUNT_ENDS;
    ck_assert_int_eq(strips_of(&spec).length, 981004);
    spec.length = 0;
    ck_assert_int_eq(strips_of(&spec).length, 981004);
    spec = cloth(1000003, 0, 12345, 100);
    ck_assert_int_eq(strips_of(&spec).rounds, 114);
    ck_assert_int_eq(strips_of(&spec).length, 80971058);
}
END_TEST

START_TEST(large_squares_are_exact_too)
{
    struct muslin_bias_spec spec = cloth(MUSLIN_SIZE_MAX, 0, MUSLIN_SIZE_MAX / 2, 0);
    ck_assert_int_eq(strips_of(&spec).length, 1963258675);
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    spec.flags = MUSLIN_BIAS_BLUNT_ENDS;
    ck_assert_int_eq(strips_of(&spec).length, 1046762701);
}
END_TEST

/* Strip by strip: half a square is a triangle with base sqrt 2 S and height S / sqrt 2; at height h above the base it
 * is sqrt 2 S - 2 h wide, and a strip's middle lies half a strip above its lower edge. */
START_TEST(separate_strips_add_up_to_the_chords_of_the_triangle)
{
    const double root2 = 1.4142135623730951;
    uint64_t dice = 3;
    int wrong = 0;
    for (int i = 0; i < 3000; i++) {
        struct muslin_bias_spec spec = cloth(0, 0, 0, 0);
        spec.strip_cut = draw_from(&dice, 1000, 40000);
        spec.allowance = draw_from(&dice, 0, 4064);
        spec.width = draw_from(&dice, 1, 400000);
        double base = root2 * (double)spec.width;
        double w = (double)spec.strip_cut;
        double run = 0;
        int64_t strips = 0;
        for (double low = 0; low + w <= base / 2; low += w) {
            run += 2 * (base - 2 * (low + w / 2));
            strips += 2;
        }
        run -= strips > 0 ? (double)(strips - 1) * 2 * root2 * (double)spec.allowance : 0;
        run = run > 0 ? run : 0;
        struct muslin_bias bias = strips_of(&spec);
        double off = run - (double)bias.length;
        wrong += bias.rounds != strips || off < -0.001 || off > 1.001;
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

START_TEST(a_square_too_small_for_one_strip_gives_none)
{
    struct muslin_bias_spec spec = cloth(WHOLE_IN(3), 0, IN(2, 1, 2), 0);
    ck_assert_int_eq(strips_of(&spec).rounds, 0);
    ck_assert_int_eq(strips_of(&spec).joins, 0);
    ck_assert_int_eq(strips_of(&spec).length, 0);
}
END_TEST

START_TEST(joins_can_take_more_than_the_strips_have)
{
    struct muslin_bias_spec spec = cloth(100, 0, 50, 1000);
    struct muslin_bias bias = strips_of(&spec);
    ck_assert_int_eq(bias.rounds, 2);
    ck_assert_int_eq(bias.length, 0);
}
END_TEST

static muslin_status strips_call(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_bias_strips(spec, out, problem);
}

static const struct ruled strips = RULED(strips_call, fat_square, muslin_bias);

START_TEST(strips_check_their_structs)
{
    ck_struct_rules(&strips);
}
END_TEST

START_TEST(strips_refuse_what_lies_outside_their_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_bias_spec, width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_FABRIC_WIDTH),
        OUTSIDE(muslin_bias_spec, length, WHOLE_IN(18), WHOLE_IN(18), MUSLIN_ARG_CLOTH_LENGTH),
        STRIP_REFUSALS,
    };
    ck_refusals_at(&strips, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(strips_longer_together_than_can_be_squared_are_out_of_range)
{
    struct muslin_bias_spec spec = cloth(MUSLIN_SIZE_MAX, 0, 1, 0);
    struct muslin_bias bias = { .size = (uint32_t)sizeof bias };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_bias_strips(&spec, &bias, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BIAS_LENGTH);
    ck_assert_int_eq(bias.rounds, 0);
}
END_TEST

static muslin_status bias_init(void *spec, uint32_t size)
{
    return muslin_bias_spec_init(spec, size);
}

START_TEST(init_call_gives_the_macros_bytes)
{
    const struct muslin_bias_spec bias = MUSLIN_BIAS_SPEC_INIT;
    ck_init_rules(bias_init, &bias, sizeof bias);
}
END_TEST

void add_finishing_bias(Suite *suite)
{
    TCase *of_tube = tcase_create("bias tube");
    tcase_add_test(of_tube, init_call_gives_the_macros_bytes);
    tcase_add_test(of_tube, an_eighteen_inch_square_gives_four_rounds);
    tcase_add_test(of_tube, a_rectangle_serves_either_way_round);
    tcase_add_test(of_tube, rounds_and_length_of_small_cloths_are_what_counting_finds);
    tcase_add_test(of_tube, a_hair_more_or_less_than_root_two_is_told_apart);
    tcase_add_test(of_tube, large_cloths_are_exact_too);
    tcase_add_test(of_tube, no_round_at_all_is_an_answer);
    tcase_add_test(of_tube, seams_that_take_the_whole_of_a_side_leave_no_tube);
    tcase_add_test(of_tube, blunt_ends_can_take_all_there_is);
    tcase_add_test(of_tube, tube_checks_its_structs);
    tcase_add_test(of_tube, tube_refuses_what_lies_outside_its_ranges);
    tcase_add_test(of_tube, a_longer_strip_than_can_be_squared_is_out_of_range);
    suite_add_tcase(suite, of_tube);

    TCase *of_square = tcase_create("bias square");
    tcase_add_test(of_square, squares_printed_too_small_are_corrected);
    tcase_add_test(of_square, squares_printed_large_enough_are_not_below_the_least);
    tcase_add_test(of_square, the_least_square_is_the_first_that_a_walk_over_the_grid_finds);
    tcase_add_test(of_square, the_area_rule_is_shown_beside_as_the_lower_bound_it_is);
    tcase_add_test(of_square, least_square_checks_its_structs);
    tcase_add_test(of_square, least_square_refuses_what_lies_outside_its_ranges);
    tcase_add_test(of_square, least_square_does_not_read_the_cloth);
    tcase_add_test(of_square, least_square_rounds_up_and_overlooks_nothing);
    tcase_add_test(of_square, no_square_in_range_is_out_of_range_and_says_what_the_largest_gives);
    tcase_add_test(of_square, a_grid_so_coarse_that_the_square_gives_far_too_much_is_out_of_range);
    tcase_add_test(of_square, one_step_of_the_grid_can_be_enough);
    tcase_add_test(of_square, the_longest_strip_still_has_its_square);
    suite_add_tcase(suite, of_square);

    TCase *of_strips = tcase_create("bias strips");
    tcase_add_test(of_strips, an_eighteen_inch_square_gives_ten_separate_strips);
    tcase_add_test(of_strips, large_squares_are_exact_too);
    tcase_add_test(of_strips, separate_strips_add_up_to_the_chords_of_the_triangle);
    tcase_add_test(of_strips, a_square_too_small_for_one_strip_gives_none);
    tcase_add_test(of_strips, joins_can_take_more_than_the_strips_have);
    tcase_add_test(of_strips, strips_check_their_structs);
    tcase_add_test(of_strips, strips_refuse_what_lies_outside_their_ranges);
    tcase_add_test(of_strips, strips_longer_together_than_can_be_squared_are_out_of_range);
    suite_add_tcase(suite, of_strips);
}
