/* test_wide.c - two-limb numbers against the compiler's own 128 bits, and square roots against long double where that is
 * sure: of small numbers a root is whole, or far from it.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "../../lib/root.h"
#include "../../lib/surd.h"
#include "testing.h"

__extension__ typedef __int128 wide128;

static wide128 value_of(struct msl_wide a)
{
    return (wide128)a.high * ((wide128)1 << 64) + a.low;
}

static int64_t chance(uint64_t *seed)
{
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    const uint64_t high = *seed >> 32;
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    return (int64_t)((high << 32 | *seed >> 32) >> (*seed >> 7 & 63)) * (*seed >> 20 & 1 ? 1 : -1);
}

/* ---- two limbs -------------------------------------------------------------------------------------------------- */

static void ck_arithmetic(int64_t a, int64_t b, int64_t c, int64_t d)
{
    const struct msl_wide one = msl_wide_multiply(a, b), other = msl_wide_multiply(c, d);
    ck_assert(value_of(one) == (wide128)a * b);
    ck_assert(value_of(msl_wide_from(a)) == a);
    ck_assert(value_of(msl_wide_add(one, msl_wide_from(c))) == (wide128)a * b + c);
    const int less = (wide128)a * b < (wide128)c * d, more = (wide128)a * b > (wide128)c * d;
    ck_assert_int_eq(msl_wide_compare(one, other), more - less);
    ck_assert_int_eq(msl_wide_compare(one, one), 0);
}

static void ck_floor(struct msl_wide numerator, int64_t divisor)
{
    wide128 quotient = value_of(numerator) / divisor, left = value_of(numerator) % divisor;
    quotient -= left < 0;
    left += left < 0 ? divisor : 0;
    int64_t floor = 7, rest = 9;
    const int fits = msl_wide_floor(numerator, divisor, &floor, &rest);
    ck_assert_int_eq(fits, quotient <= MSL_FLOOR_MAX && quotient >= -(wide128)MSL_FLOOR_MAX - 1);
    ck_assert(floor == (fits ? quotient : 7));
    ck_assert(rest == (fits ? left : 9));
}

START_TEST(wide_numbers_are_as_the_compiler_has_them)
{
    const int64_t ends[] = { 0, 1, -1, 2, 3, INT32_MAX, UINT32_MAX, (int64_t)UINT32_MAX + 1, -(int64_t)UINT32_MAX,
                             INT64_MAX, -INT64_MAX, MUSLIN_LENGTH_MAX, MSL_FLOOR_MAX, MSL_FLOOR_MAX + 1 };
    enum { ENDS = sizeof ends / sizeof ends[0] };
    uint64_t seed = 1;
    for (size_t i = 0; i < ENDS * ENDS; i++) {
        ck_arithmetic(ends[i / ENDS], ends[i % ENDS], ends[i % ENDS], ends[i * 7 % ENDS]);
        for (int64_t divisor = 1; divisor < 4; divisor++)
            ck_floor(msl_wide_multiply(ends[i / ENDS], ends[i % ENDS]), divisor);
    }
    for (int i = 0; i < 100000; i++) {
        const int64_t a = chance(&seed), b = chance(&seed), c = chance(&seed), d = chance(&seed);
        ck_arithmetic(a, b, c, d);
        ck_floor(msl_wide_multiply(a, b), c > 0 ? c : 1 - c);
    }
}
END_TEST

/* Quotients around the largest and smallest that fit, and those of 2 to the power 64, of which one limb is left. */
START_TEST(quotients_that_do_not_fit_are_none)
{
    const uint64_t lows[] = { 0, 1, 2, INT64_MAX, (uint64_t)INT64_MAX + 1, UINT64_MAX - 1, UINT64_MAX };
    for (int64_t high = -5; high <= 5; high++)
        for (size_t i = 0; i < sizeof lows / sizeof lows[0]; i++)
            for (int64_t divisor = 1; divisor <= 9; divisor++) {
                const struct msl_wide numerator = { high, lows[i] };
                ck_floor(numerator, divisor);
            }
}
END_TEST

/* ---- roots ------------------------------------------------------------------------------------------------------ */

START_TEST(a_root_is_the_greatest_whose_square_is_not_above)
{
    uint64_t seed = 5;
    for (int i = 0; i < 20000; i++) {
        const uint64_t n = i < 1000 ? (uint64_t)i : (uint64_t)chance(&seed);
        uint64_t rest = 3;
        const uint64_t root = msl_root(n, &rest);
        int32_t is_whole = 7;
        ck_assert((wide128)root * root <= n && (wide128)(root + 1) * (root + 1) > n);
        ck_assert_uint_eq(rest, n - root * root);
        ck_assert_uint_eq(msl_root(n, NULL), root);
        const struct msl_wide square = msl_wide_multiply((int64_t)(root >> 1), (int64_t)(root >> 1));
        ck_assert_int_eq(msl_wide_root(square, &is_whole), (int64_t)(root >> 1));
        ck_assert_int_eq(is_whole, 1);
        ck_assert_int_eq(msl_wide_root(msl_wide_add(square, msl_wide_from(1)), &is_whole),
                         (int64_t)(root >> 1) + (root < 2));
        ck_assert_int_eq(is_whole, root < 2);
    }
}
END_TEST

/* What is known of the value: a fraction that looks like none, or like a half, is so. */
static void ck_value(const struct msl_surd *surd, long double value)
{
    const struct msl_exact exact = msl_surd_exact(surd);
    const long double halves = roundl(2 * value);
    const long double sure = fabsl(2 * value - halves) < 1e-9L ? halves / 2 : value;
    ck_assert_int_eq(exact.floor, (int64_t)floorl(sure));
    ck_assert_int_eq(exact.on_tick, sure == floorl(sure));
    ck_assert_int_eq(exact.upper_half, sure - floorl(sure) >= 0.5L);
    ck_assert_int_eq(msl_surd_floor(surd), (int64_t)floorl(sure));
    ck_assert_int_eq(msl_surd_ceiling(surd), (int64_t)ceill(sure));
}

/* sqrt(2 + sqrt 5) = 2.058 is among them, whose inner root taken down would make it 2. */
START_TEST(values_with_roots_are_found_exactly)
{
    for (int64_t whole = -3; whole <= 3; whole++)
        for (int32_t sign = -1; sign <= 1; sign++)
            for (int64_t n = 0; n <= 20; n++)
                for (int64_t m = 0; m <= 20; m++)
                    for (int64_t divisor = 1; divisor <= 4; divisor++) {
                        const struct msl_surd surd = { whole, sign, msl_wide_from(n), divisor, msl_wide_from(m) };
                        const long double root = sqrtl((long double)n + sqrtl((long double)m));
                        ck_value(&surd, ((long double)whole + sign * root) / (long double)divisor);
                    }
}
END_TEST

START_TEST(a_sum_with_a_root_becomes_one)
{
    for (int64_t whole = -5; whole <= 5; whole++)
        for (int64_t root = -5; root <= 5; root++)
            for (int64_t under = 0; under <= 16; under++)
                for (int64_t divisor = 1; divisor <= 4; divisor++) {
                    const struct msl_surd surd = msl_surd_of(whole, root, under, divisor);
                    ck_value(&surd, ((long double)whole + (long double)root * sqrtl((long double)under)) /
                                        (long double)divisor);
                }
}
END_TEST

Suite *wide_suite(void);
Suite *wide_suite(void)
{
    Suite *suite = suite_create("wide");
    TCase *numbers = tcase_create("two limbs");
    TCase *roots = tcase_create("roots");
    tcase_add_test(numbers, wide_numbers_are_as_the_compiler_has_them);
    tcase_add_test(numbers, quotients_that_do_not_fit_are_none);
    tcase_add_test(roots, a_root_is_the_greatest_whose_square_is_not_above);
    tcase_add_test(roots, values_with_roots_are_found_exactly);
    tcase_add_test(roots, a_sum_with_a_root_becomes_one);
    suite_add_tcase(suite, numbers);
    suite_add_tcase(suite, roots);
    return suite;
}
