/* test_shape_roots.c - sums with two square roots in them, where they are known: roots that come out whole, hairs
 * beside them, and small numbers in long double.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "struct_rules.h"

#include "shape_roots.h"

/* From -most to most, not 0. */
static int64_t draw_some(uint64_t *state, int64_t most)
{
    const int64_t size = draw_from(state, 1, most);
    return draw_from(state, 0, 1) == 0 ? size : -size;
}

static int64_t divided_down(int64_t a, int64_t b)
{
    return a / b - (a % b != 0 && (a < 0) != (b < 0));
}

/* Half ticks and perhaps something more, as a value that is ready to be rounded. */
static void ck_exact(const struct msl_root_sum *sum, int64_t halves, int has_more)
{
    const struct msl_exact exact = msl_sum_exact(sum);
    const int is_upper = halves % 2 != 0;
    ck_assert_int_eq(exact.upper_half, is_upper);
    ck_assert_int_eq(exact.floor, (halves - is_upper) / 2);
    ck_assert_int_eq(exact.on_tick, !is_upper && !has_more);
}

/* w + (p a + q b) / d, where a and b come as the roots of their squares, and p, q and d are as many times larger. */
START_TEST(roots_of_squares_come_out_as_whole_numbers)
{
    uint64_t state = 51;
    for (int32_t i = 0; i < 400; i++) {
        const int64_t most = INT64_C(1) << draw_from(&state, 1, 30);
        const int64_t times = draw_some(&state, INT64_C(1) << draw_from(&state, 0, 30));
        const int64_t p = draw_from(&state, -most, most), q = draw_from(&state, -most, most);
        const int64_t a = draw_from(&state, 0, most), b = draw_from(&state, 0, most);
        const int64_t d = draw_some(&state, INT64_C(1) << draw_from(&state, 0, 30));
        const int64_t roots = p * a + q * b;
        const int64_t halves = draw_from(&state, -(INT64_C(1) << 20), INT64_C(1) << 20);
        const struct msl_root_sum sum = { halves - divided_down(roots, d),
                                          { msl_wide_multiply(p, times), msl_wide_multiply(a, a) },
                                          { msl_wide_multiply(q, times), msl_wide_multiply(b, b) },
                                          msl_wide_multiply(d, times) };
        ck_exact(&sum, halves, roots % d != 0);
    }
}
END_TEST

/* w + (p sqrt(a^2 + e) - p a) / d lies less than 1 / a beside w, above or below as e says. */
START_TEST(a_hair_beside_a_whole_number_is_seen)
{
    uint64_t state = 52;
    for (int32_t i = 0; i < 400; i++) {
        const int64_t a = draw_from(&state, 2, INT64_C(1) << draw_from(&state, 2, 30));
        const int64_t p = draw_from(&state, 1, INT64_C(1) << draw_from(&state, 1, 40));
        const int64_t e = draw_from(&state, -1, 1);
        const int64_t w = draw_from(&state, -(INT64_C(1) << 20), INT64_C(1) << 20);
        const int64_t sign = draw_some(&state, 1);
        const struct msl_root beside = { msl_wide_from(sign * p), msl_wide_from(a * a + e) };
        const struct msl_root whole = { msl_wide_from(-sign * p), msl_wide_from(a * a) };
        const int is_first = draw_from(&state, 0, 1) == 0;
        const struct msl_root_sum sum = { w, is_first ? beside : whole, is_first ? whole : beside,
                                          msl_wide_from(sign * p) };
        ck_exact(&sum, e < 0 ? w - 1 : w, e != 0);
        ck_assert_int_eq(msl_root_sign(msl_wide_multiply(-sign * p, a), &beside), e * sign);
        ck_assert_int_eq(msl_root_sign(msl_wide_multiply(sign * p, a), &whole), 0);
        ck_assert_int_eq(msl_root_sign(msl_wide_multiply(sign * p, a), &beside), sign);
    }
}
END_TEST

/* So small a sum is a whole number, or by more than a millionth none: it and its conjugates, each below 100, multiply
 * to a whole number. */
START_TEST(small_sums_are_as_in_long_double)
{
    uint64_t state = 53;
    for (int32_t i = 0; i < 600; i++) {
        const int64_t w = draw_from(&state, -9, 9);
        const int64_t p = draw_from(&state, -3, 3), q = draw_from(&state, -3, 3);
        const int64_t m = draw_from(&state, 0, 12), n = draw_from(&state, 0, 12);
        const int64_t d = draw_some(&state, 4);
        const struct msl_root_sum sum = { w,
                                          { msl_wide_from(p), msl_wide_from(m) },
                                          { msl_wide_from(q), msl_wide_from(n) },
                                          msl_wide_from(d) };
        const long double roots = (long double)p * sqrtl((long double)m) + (long double)q * sqrtl((long double)n);
        const long double value = (long double)w + roots / (long double)d;
        const int is_whole = fabsl(value - roundl(value)) < 1e-9L;
        ck_exact(&sum, (int64_t)(is_whole ? roundl(value) : floorl(value)), !is_whole);
    }
}
END_TEST

/* Beyond the reach the answer stops there. */
START_TEST(a_sum_beyond_the_reach_ends_there)
{
    const struct msl_root none = { { 0, 0 }, { 0, 0 } };
    for (int64_t beyond = 0; beyond < 3; beyond++) {
        const struct msl_root_sum above = { MSL_SUM_REACH - 1 + beyond, none, none, msl_wide_from(1) };
        const struct msl_root_sum below = { -MSL_SUM_REACH - beyond, none, none, msl_wide_from(1) };
        ck_exact(&above, MSL_SUM_REACH - 1, beyond > 0);
        ck_exact(&below, -MSL_SUM_REACH, beyond > 0);
    }
}
END_TEST

START_TEST(products_crossed_are_one_less_the_other)
{
    uint64_t state = 54;
    for (int32_t i = 0; i < 200; i++) {
        const int64_t most = INT64_C(1) << draw_from(&state, 1, 30);
        const int64_t a = draw_from(&state, -most, most), b = draw_from(&state, -most, most);
        const int64_t c = draw_from(&state, -most, most), d = draw_from(&state, -most, most);
        ck_assert_int_eq(msl_wide_compare(msl_wide_cross(a, b, c, d), msl_wide_from(a * b - c * d)), 0);
    }
}
END_TEST

Suite *shape_roots_suite(void);

Suite *shape_roots_suite(void)
{
    Suite *suite = suite_create("shape_roots");
    TCase *roots = tcase_create("roots");
    tcase_set_timeout(roots, 60);
    tcase_add_test(roots, roots_of_squares_come_out_as_whole_numbers);
    tcase_add_test(roots, a_hair_beside_a_whole_number_is_seen);
    tcase_add_test(roots, small_sums_are_as_in_long_double);
    tcase_add_test(roots, a_sum_beyond_the_reach_ends_there);
    tcase_add_test(roots, products_crossed_are_one_less_the_other);
    suite_add_tcase(suite, roots);
    return suite;
}
