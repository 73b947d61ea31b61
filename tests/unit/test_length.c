/* test_length.c - sums, roundings, array forms and irrational sizes of lengths.
 *
 * SPDX-License-Identifier: MIT */
#include "test_length.h"
#include "test_length_cases.h"

#define COUNT(array) (sizeof(array) / sizeof((array)[0]))

static const struct muslin_rounding_spec to_nearest_tick = MUSLIN_ROUNDING_SPEC_INIT;

static struct muslin_rounding_spec rounding_of(muslin_len grid, muslin_len tolerance, int32_t direction)
{
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    rounding.grid = grid;
    rounding.tolerance = tolerance;
    rounding.direction = direction;
    return rounding;
}

/* Lengths outside the range of plain sums. */
static const muslin_len outside[] = { MUSLIN_LENGTH_MAX + 1, -MUSLIN_LENGTH_MAX - 1, INT64_MAX, INT64_MIN };

/* ---- sums and products ----------------------------------------------------------------------------------------- */

START_TEST(a_sum_is_exact)
{
    muslin_len sum = 0;
    ck_ok(muslin_length_add(IN(2, 1, 2), IN(0, 1, 4), &sum));
    ck_assert_int_eq(sum, IN(2, 3, 4));
    ck_ok(muslin_length_add(IN(2, 1, 2), -IN(3, 1, 8), &sum));
    ck_assert_int_eq(sum, -IN(0, 5, 8));
}
END_TEST

START_TEST(a_difference_is_exact)
{
    muslin_len difference = 0;
    ck_ok(muslin_length_subtract(IN(12, 1, 2), IN(0, 1, 2), &difference));
    ck_assert_int_eq(difference, WHOLE_IN(12));
    ck_ok(muslin_length_subtract(0, MUSLIN_LENGTH_MAX, &difference));
    ck_assert_int_eq(difference, -MUSLIN_LENGTH_MAX);
}
END_TEST

START_TEST(a_product_is_exact)
{
    muslin_len product = 0;
    ck_ok(muslin_length_multiply(IN(2, 1, 2), 6, &product));
    ck_assert_int_eq(product, WHOLE_IN(15));
    ck_ok(muslin_length_multiply(-IN(2, 1, 2), 6, &product));
    ck_assert_int_eq(product, -WHOLE_IN(15));
    ck_ok(muslin_length_multiply(IN(2, 1, 2), -6, &product));
    ck_assert_int_eq(product, -WHOLE_IN(15));
    ck_ok(muslin_length_multiply(0, INT64_MIN, &product));
    ck_assert_int_eq(product, 0);
}
END_TEST

START_TEST(sums_reach_exactly_to_the_end_of_the_range)
{
    muslin_len out = 0;
    ck_ok(muslin_length_add(MUSLIN_LENGTH_MAX - 1, 1, &out));
    ck_assert_int_eq(out, MUSLIN_LENGTH_MAX);
    ck_ok(muslin_length_add(1 - MUSLIN_LENGTH_MAX, -1, &out));
    ck_assert_int_eq(out, -MUSLIN_LENGTH_MAX);
    ck_ok(muslin_length_subtract(MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, &out));
    ck_assert_int_eq(out, 0);
    out = 77;
    ck_status(muslin_length_add(MUSLIN_LENGTH_MAX, 1, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_add(-MUSLIN_LENGTH_MAX, -1, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_add(MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_subtract(MUSLIN_LENGTH_MAX, -1, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_subtract(-MUSLIN_LENGTH_MAX, 1, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(products_reach_exactly_to_the_end_of_the_range)
{
    /* 2^62 - 1 = 3 x 1537228672809129301, a whole number because 4^31 - 1 is divisible by 3. */
    const int64_t third = INT64_C(1537228672809129301);
    muslin_len out = 0;
    ck_ok(muslin_length_multiply(third, 3, &out));
    ck_assert_int_eq(out, MUSLIN_LENGTH_MAX);
    ck_ok(muslin_length_multiply(-3, third, &out));
    ck_assert_int_eq(out, -MUSLIN_LENGTH_MAX);
    ck_ok(muslin_length_multiply(MUSLIN_LENGTH_MAX, -1, &out));
    ck_assert_int_eq(out, -MUSLIN_LENGTH_MAX);
    out = 77;
    ck_status(muslin_length_multiply(INT64_C(1) << 31, INT64_C(1) << 31, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(INT64_C(1) << 31, -(INT64_C(1) << 31), &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(INT64_C(1) << 32, INT64_C(1) << 32, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(1, INT64_MIN, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(-1, INT64_MIN, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(MUSLIN_LENGTH_MAX, INT64_MIN, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_multiply(-MUSLIN_LENGTH_MAX, INT64_MAX, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(a_length_outside_the_range_is_refused)
{
    muslin_len out = 77;
    for (size_t i = 0; i < COUNT(outside); i++) {
        ck_status(muslin_length_add(outside[i], 0, &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_add(0, outside[i], &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_subtract(outside[i], 0, &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_subtract(0, outside[i], &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_multiply(outside[i], 0, &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_sum(&outside[i], 1, &out), MUSLIN_ERR_RANGE);
    }
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(sums_and_products_need_somewhere_to_go)
{
    ck_status(muslin_length_add(1, 2, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_length_subtract(1, 2, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_length_multiply(1, 2, NULL), MUSLIN_ERR_NULL);
}
END_TEST

START_TEST(lengths_compare_over_the_whole_type)
{
    const int64_t rising[] = { INT64_MIN, -MUSLIN_LENGTH_MAX, -1, 0, 1, MUSLIN_LENGTH_MAX, INT64_MAX };
    for (int i = 0; i < (int)COUNT(rising); i++)
        for (int j = 0; j < (int)COUNT(rising); j++)
            ck_assert_int_eq(muslin_length_compare(rising[i], rising[j]), (i > j) - (i < j));
}
END_TEST

/* ---- sums over arrays ------------------------------------------------------------------------------------------ */

START_TEST(a_sum_of_many_is_exact)
{
    const muslin_len strips[] = { IN(2, 1, 2), IN(1, 1, 2), IN(3, 1, 8), -IN(0, 1, 8) };
    muslin_len sum = 0;
    ck_ok(muslin_length_sum(strips, 4, &sum));
    ck_assert_int_eq(sum, WHOLE_IN(7));
}
END_TEST

START_TEST(no_lengths_sum_to_nothing)
{
    muslin_len sum = 77;
    ck_ok(muslin_length_sum(NULL, 0, &sum));
    ck_assert_int_eq(sum, 0);
    sum = 77;
    ck_ok(muslin_length_dot(NULL, NULL, 0, &sum));
    ck_assert_int_eq(sum, 0);
}
END_TEST

/* Calls `visit` with every order of the n values; Heap's way (Heap 1963), without recursion. */
enum { ORDERED = 6 };

static int same_in_every_order(const muslin_len *values, muslin_status status, muslin_len sum)
{
    muslin_len order[ORDERED];
    size_t turns[ORDERED] = { 0 };
    memcpy(order, values, sizeof order);
    for (size_t i = 0; i < ORDERED;) {
        muslin_len out = 77;
        muslin_status found = muslin_length_sum(order, ORDERED, &out);
        if (found != status || out != (status == MUSLIN_OK ? sum : 77))
            return 0;
        while (i < ORDERED && turns[i] >= i)
            turns[i++] = 0;
        if (i == ORDERED)
            break;
        size_t with = i % 2 == 0 ? 0 : turns[i];
        muslin_len held = order[with];
        order[with] = order[i];
        order[i] = held;
        turns[i]++;
        i = 0;
    }
    return 1;
}

START_TEST(partial_sums_may_pass_the_range_in_any_order)
{
    const muslin_len fits[ORDERED] = { MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX,
                                       -MUSLIN_LENGTH_MAX, -MUSLIN_LENGTH_MAX, -8128 };
    const muslin_len too_large[ORDERED] = { MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, -MUSLIN_LENGTH_MAX, 1, 0, 0 };
    const muslin_len too_small[ORDERED] = { -MUSLIN_LENGTH_MAX, -MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, -2, 1, 0 };
    ck_assert(same_in_every_order(fits, MUSLIN_OK, MUSLIN_LENGTH_MAX - 8128));
    ck_assert(same_in_every_order(too_large, MUSLIN_ERR_OVERFLOW, 0));
    ck_assert(same_in_every_order(too_small, MUSLIN_ERR_OVERFLOW, 0));
}
END_TEST

START_TEST(a_length_out_of_range_is_told_before_an_overflow_in_any_order)
{
    const muslin_len both[ORDERED] = { MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX, 1, INT64_MIN, 0, 5 };
    ck_assert(same_in_every_order(both, MUSLIN_ERR_RANGE, 0));
}
END_TEST

START_TEST(a_dot_product_counts_each_length)
{
    /* 4 strips of 2 1/2 in and 5 of 1 1/2 in, less one of 1/4 in */
    const muslin_len lengths[] = { IN(2, 1, 2), IN(1, 1, 2), IN(0, 1, 4) };
    const int64_t counts[] = { 4, 5, -1 };
    muslin_len out = 0;
    ck_ok(muslin_length_dot(lengths, counts, 3, &out));
    ck_assert_int_eq(out, IN(17, 1, 4));
}
END_TEST

START_TEST(partial_dot_products_may_pass_the_range)
{
    const muslin_len lengths[] = { MUSLIN_LENGTH_MAX, -MUSLIN_LENGTH_MAX, 8128, MUSLIN_LENGTH_MAX, MUSLIN_LENGTH_MAX };
    const int64_t counts[] = { INT64_MAX, INT64_MAX, -3, INT64_MIN, INT64_MAX };
    muslin_len out = 0;
    ck_ok(muslin_length_dot(lengths, counts, 3, &out));
    ck_assert_int_eq(out, -3 * 8128);
    /* INT64_MIN + INT64_MAX = -1, so the last two give -(2^62 - 1), and all five pass the range by 3 x 8128. */
    ck_ok(muslin_length_dot(lengths + 3, counts + 3, 2, &out));
    ck_assert_int_eq(out, -MUSLIN_LENGTH_MAX);
    out = 77;
    ck_status(muslin_length_dot(lengths, counts, 5, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(a_dot_product_of_two_to_the_128_is_not_taken_for_nothing)
{
    /* 32 x 2^61 x 2^62 = 2^128: two limbs would have come round to 0. */
    muslin_len lengths[33];
    int64_t counts[33];
    muslin_len out = 77;
    for (int i = 0; i < 32; i++) {
        lengths[i] = INT64_C(1) << 61;
        counts[i] = INT64_C(1) << 62;
    }
    lengths[32] = 5;
    counts[32] = 1;
    ck_status(muslin_length_dot(lengths, counts, 33, &out), MUSLIN_ERR_OVERFLOW);
    for (int i = 0; i < 32; i++)
        counts[i] = -(INT64_C(1) << 62);
    ck_status(muslin_length_dot(lengths, counts, 33, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(a_dot_product_just_outside_the_range_is_an_overflow)
{
    const muslin_len lengths[] = { MUSLIN_LENGTH_MAX, 1 };
    const int64_t ends[][2] = { { 1, 1 }, { -1, -1 }, { 2, 0 }, { -2, 0 }, { 4, 4 }, { -4, -4 }, { 4, 5 }, { -4, -5 } };
    const int64_t inside[][2] = { { 1, 0 }, { -1, 0 }, { 2, -MUSLIN_LENGTH_MAX }, { -2, MUSLIN_LENGTH_MAX } };
    muslin_len out = 77;
    for (size_t i = 0; i < COUNT(ends); i++)
        ck_status(muslin_length_dot(lengths, ends[i], 2, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out, 77);
    for (size_t i = 0; i < COUNT(inside); i++) {
        ck_ok(muslin_length_dot(lengths, inside[i], 2, &out));
        ck_assert_int_eq(out, i % 2 == 0 ? MUSLIN_LENGTH_MAX : -MUSLIN_LENGTH_MAX);
    }
}
END_TEST

START_TEST(a_dot_product_refuses_lengths_outside_the_range)
{
    const int64_t zero = 0;
    muslin_len out = 77;
    for (size_t i = 0; i < COUNT(outside); i++)
        ck_status(muslin_length_dot(&outside[i], &zero, 1, &out), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out, 77);
}
END_TEST

START_TEST(sums_over_arrays_name_a_missing_array)
{
    const muslin_len one = 1;
    muslin_len out = 77;
    ck_status(muslin_length_sum(NULL, 1, &out), MUSLIN_ERR_NULL);
    ck_status(muslin_length_sum(&one, 1, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_length_dot(NULL, &one, 1, &out), MUSLIN_ERR_NULL);
    ck_status(muslin_length_dot(&one, NULL, 1, &out), MUSLIN_ERR_NULL);
    ck_status(muslin_length_dot(&one, &one, 1, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(out, 77);
}
END_TEST

/* ---- rounding -------------------------------------------------------------------------------------------------- */

/* above / below as the comment of struct muslin_rounding_spec has it, found by walking over the grid points from far
 * below: products are compared, nothing is divided. */
static int64_t point_by_walking(int64_t above, int64_t below, const struct muslin_rounding_spec *r)
{
    int64_t best = 0;
    for (int64_t point = -200 / r->grid * r->grid; point <= 200; point += r->grid) {
        if (r->direction == MUSLIN_DIRECTION_UP && (point + r->tolerance) * below >= above)
            return point;
        if (r->direction == MUSLIN_DIRECTION_DOWN && (point - r->tolerance) * below <= above)
            best = point;
        if (r->direction == MUSLIN_DIRECTION_NEAREST && llabs(point * below - above) <= llabs(best * below - above))
            best = point;
    }
    return best;
}

/* error <= value - above / below < error + 1 */
static int is_rounded_rightly(const struct muslin_rounded *found, int64_t above, int64_t below,
                              const struct muslin_rounding_spec *r)
{
    int64_t lost = found->value * below - above; /* x below */
    return found->value == point_by_walking(above, below, r) && found->error * below <= lost &&
           lost < (found->error + 1) * below && found->exact == (lost == 0) && found->on_tick == (above % below == 0);
}

START_TEST(quotients_are_rounded_as_a_walk_over_the_grid_finds)
{
    int right = 1;
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++)
        for (muslin_len grid = 1; grid <= 9; grid++)
            for (muslin_len tolerance = 0; tolerance < grid; tolerance++)
                for (muslin_len a = -25; a <= 25; a++)
                    for (int64_t divisor = -7; divisor <= 7; divisor++) {
                        struct muslin_rounding_spec r = rounding_of(grid, tolerance, direction);
                        struct muslin_rounded found = { .size = sizeof found };
                        if (divisor == 0)
                            continue;
                        right &= muslin_length_divide(a, divisor, &r, &found) == MUSLIN_OK &&
                                 is_rounded_rightly(&found, divisor < 0 ? -a : a, llabs(divisor), &r);
                    }
    ck_assert(right);
}
END_TEST

START_TEST(scaled_lengths_are_rounded_as_a_walk_over_the_grid_finds)
{
    int right = 1;
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++)
        for (muslin_len grid = 1; grid <= 5; grid++)
            for (muslin_len a = -12; a <= 12; a++)
                for (int64_t numerator = -5; numerator <= 5; numerator++)
                    for (int64_t denominator = 1; denominator <= 6; denominator++) {
                        struct muslin_rounding_spec r = rounding_of(grid, grid / 2, direction);
                        struct muslin_rounded found = { .size = sizeof found };
                        right &= muslin_length_scale(a, numerator, denominator, &r, &found) == MUSLIN_OK &&
                                 is_rounded_rightly(&found, a * numerator, denominator, &r);
                    }
    ck_assert(right);
}
END_TEST

START_TEST(large_scalings_are_rounded_as_fractions_say)
{
    for (size_t i = 0; i < COUNT(scale_cases); i++) {
        const struct scale_case *row = &scale_cases[i];
        struct muslin_rounding_spec r = rounding_of(row->grid, row->tolerance, row->direction);
        struct muslin_rounded found = { .size = sizeof found, .value = 77 };
        ck_assert_msg(muslin_length_scale(row->a, row->numerator, row->denominator, &r, &found) == row->status,
                      "row %zu", i);
        if (row->status != MUSLIN_OK) {
            ck_assert_int_eq(found.value, 77);
            continue;
        }
        ck_assert_msg(found.value == row->value && found.error == row->error && found.exact == row->exact &&
                      found.on_tick == row->on_tick, "row %zu", i);
    }
}
END_TEST

START_TEST(an_over_tight_ceiling_does_not_jump_a_step_for_two_thousandths)
{
    /* Setting charts: 16 x sqrt 2 + 1 1/4 in is 23.8774 in; strictly up to 1/8 in that is 24, and with a 128th of an
     * inch overlooked it is 23 7/8. */
    const muslin_len size = (muslin_len)(INT64_C(238774) * 8128 / 10000);
    struct muslin_rounding_spec strictly = rounding_of(IN(0, 1, 8), 0, MUSLIN_DIRECTION_UP);
    struct muslin_rounding_spec tolerantly = rounding_of(IN(0, 1, 8), 64, MUSLIN_DIRECTION_UP);
    struct muslin_rounded snapped = { .size = sizeof snapped };
    ck_ok(muslin_length_snap(size, &strictly, &snapped));
    ck_assert_int_eq(snapped.value, WHOLE_IN(24));
    ck_ok(muslin_length_snap(size, &tolerantly, &snapped));
    ck_assert_int_eq(snapped.value, IN(23, 7, 8));
}
END_TEST

START_TEST(ties_go_upwards_on_both_sides_of_nothing)
{
    struct muslin_rounding_spec eighths = rounding_of(IN(0, 1, 8), 0, MUSLIN_DIRECTION_NEAREST);
    struct muslin_rounded snapped = { .size = sizeof snapped };
    ck_ok(muslin_length_snap(IN(2, 1, 16), &eighths, &snapped));
    ck_assert_int_eq(snapped.value, IN(2, 1, 8));
    ck_ok(muslin_length_snap(-IN(2, 1, 16), &eighths, &snapped));
    ck_assert_int_eq(snapped.value, -WHOLE_IN(2));
    ck_ok(muslin_length_divide(1, 2, &to_nearest_tick, &snapped));
    ck_assert_int_eq(snapped.value, 1);
    ck_ok(muslin_length_divide(-1, 2, &to_nearest_tick, &snapped));
    ck_assert_int_eq(snapped.value, 0);
}
END_TEST

START_TEST(a_length_on_the_grid_stays_and_is_exact)
{
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++) {
        struct muslin_rounding_spec eighths = rounding_of(IN(0, 1, 8), 0, direction);
        struct muslin_rounded snapped = { .size = sizeof snapped };
        ck_ok(muslin_length_snap(-IN(6, 7, 8), &eighths, &snapped));
        ck_assert_int_eq(snapped.value, -IN(6, 7, 8));
        ck_assert_int_eq(snapped.error, 0);
        ck_assert_int_eq(snapped.exact, 1);
        ck_assert_int_eq(snapped.on_tick, 1);
    }
}
END_TEST

START_TEST(a_length_rounds_out_of_the_range_only_where_its_grid_point_does)
{
    struct muslin_rounding_spec up = rounding_of(2, 0, MUSLIN_DIRECTION_UP);
    struct muslin_rounding_spec down = rounding_of(2, 0, MUSLIN_DIRECTION_DOWN);
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    ck_status(muslin_length_snap(MUSLIN_LENGTH_MAX, &up, &out), MUSLIN_ERR_OVERFLOW);
    ck_status(muslin_length_snap(-MUSLIN_LENGTH_MAX, &down, &out), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(out.value, 77);
    ck_ok(muslin_length_snap(MUSLIN_LENGTH_MAX, &down, &out));
    ck_assert_int_eq(out.value, MUSLIN_LENGTH_MAX - 1);
    ck_ok(muslin_length_snap(-MUSLIN_LENGTH_MAX, &up, &out));
    ck_assert_int_eq(out.value, 1 - MUSLIN_LENGTH_MAX);
}
END_TEST

START_TEST(the_least_divisor_of_the_type_works_too)
{
    /* (2^62 - 1) / -2^63 lies between -1/2 and 0. */
    const muslin_len as_negative[] = { 0, 0, -1, 0 };
    struct muslin_rounded out = { .size = sizeof out };
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++) {
        struct muslin_rounding_spec r = rounding_of(1, 0, direction);
        ck_ok(muslin_length_divide(MUSLIN_LENGTH_MAX, INT64_MIN, &r, &out));
        ck_assert_int_eq(out.value, as_negative[direction]);
        ck_ok(muslin_length_divide(1, INT64_MIN, &r, &out));
        ck_assert_int_eq(out.value, as_negative[direction]);
        ck_assert_int_eq(out.exact, 0);
        ck_assert_int_eq(out.on_tick, 0);
        ck_ok(muslin_length_divide(-MUSLIN_LENGTH_MAX, INT64_MIN, &r, &out));
        ck_assert_int_eq(out.value, direction == MUSLIN_DIRECTION_UP);
        ck_ok(muslin_length_divide(0, INT64_MIN, &r, &out));
        ck_assert_int_eq(out.value, 0);
        ck_assert_int_eq(out.exact, 1);
    }
}
END_TEST

START_TEST(nothing_divides_by_zero)
{
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    muslin_len scaled = 77;
    ck_status(muslin_length_divide(1, 0, &to_nearest_tick, &out), MUSLIN_ERR_DIVIDE_BY_ZERO);
    ck_status(muslin_length_scale(1, 1, 0, &to_nearest_tick, &out), MUSLIN_ERR_DIVIDE_BY_ZERO);
    ck_status(muslin_length_scale_n(&scaled, 1, 1, 0, &to_nearest_tick, &scaled, NULL, NULL),
              MUSLIN_ERR_DIVIDE_BY_ZERO);
    ck_assert_int_eq(out.value, 77);
    ck_assert_int_eq(scaled, 77);
}
END_TEST

START_TEST(a_negative_denominator_is_out_of_range)
{
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    muslin_len scaled = 77;
    ck_status(muslin_length_scale(1, 1, -1, &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    ck_status(muslin_length_scale(1, 1, INT64_MIN, &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    ck_status(muslin_length_scale_n(&scaled, 1, 1, -1, &to_nearest_tick, &scaled, NULL, NULL), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.value, 77);
    ck_assert_int_eq(scaled, 77);
}
END_TEST

/* ---- what every call with a rounding promises ------------------------------------------------------------------- */

typedef muslin_status rounded_call(const void *rounding, void *out);

static muslin_status call_divide(const void *rounding, void *out)
{
    return muslin_length_divide(8128, 3, rounding, out);
}
static muslin_status call_scale(const void *rounding, void *out)
{
    return muslin_length_scale(8128, 2, 3, rounding, out);
}
static muslin_status call_snap(const void *rounding, void *out)
{
    return muslin_length_snap(8129, rounding, out);
}
static muslin_status call_times_root2(const void *rounding, void *out)
{
    return muslin_length_times_root2(8128, rounding, out);
}
static muslin_status call_over_root2(const void *rounding, void *out)
{
    return muslin_length_over_root2(8128, rounding, out);
}
static muslin_status call_height(const void *rounding, void *out)
{
    return muslin_length_equilateral_height(8128, rounding, out);
}
static muslin_status call_side(const void *rounding, void *out)
{
    return muslin_length_equilateral_side(8128, rounding, out);
}
static muslin_status call_hypotenuse(const void *rounding, void *out)
{
    return muslin_length_hypotenuse(8128, 4064, rounding, out);
}
static muslin_status call_root_of_area(const void *rounding, void *out)
{
    return muslin_length_root_of_area(8128, rounding, out);
}

static rounded_call *const rounded_calls[] = { call_divide,     call_scale,       call_snap,
                                               call_times_root2, call_over_root2,  call_height,
                                               call_side,        call_hypotenuse,  call_root_of_area };

static void ck_rounding_refused(const void *rounding, muslin_status status)
{
    struct muslin_rounded untouched;
    memset(&untouched, FILL, sizeof untouched);
    untouched.size = (uint32_t)sizeof untouched;
    for (size_t i = 0; i < COUNT(rounded_calls); i++) {
        struct muslin_rounded out = untouched;
        ck_assert_msg(rounded_calls[i](rounding, &out) == status, "call %zu", i);
        ck_assert_mem_eq(&out, &untouched, sizeof out);
    }
    const muslin_len in[2] = { 1, 2 };
    muslin_len out[2] = { 77, 77 };
    muslin_status statuses[2] = { 77, 77 };
    size_t failed = 77;
    ck_status(muslin_length_scale_n(in, 2, 1, 1, rounding, out, statuses, &failed), status);
    ck_status(muslin_length_snap_n(in, 2, rounding, out, NULL, &failed), status);
    ck_assert(out[0] == 77 && statuses[0] == 77 && failed == 77);
}

START_TEST(a_rounding_out_of_range_is_refused)
{
    const muslin_len bad[][2] = { { 0, 0 },  { -1, 0 },   { MUSLIN_SIZE_MAX + 1, 0 }, { INT64_MIN, 0 },
                                  { 8, -1 }, { 8, 8 },    { 1, 1 },                   { INT64_MAX, 5 },
                                  { 8, INT64_MAX }, { 8, INT64_MIN } };
    for (size_t i = 0; i < COUNT(bad); i++) {
        struct muslin_rounding_spec r = rounding_of(bad[i][0], bad[i][1], MUSLIN_DIRECTION_UP);
        ck_rounding_refused(&r, MUSLIN_ERR_RANGE);
    }
}
END_TEST

START_TEST(a_direction_that_is_none_is_refused)
{
    const int32_t bad[] = { 0, 4, -1, INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < COUNT(bad); i++) {
        struct muslin_rounding_spec r = rounding_of(1, 0, bad[i]);
        ck_rounding_refused(&r, MUSLIN_ERR_CHOICE);
    }
}
END_TEST

START_TEST(a_rounding_keeps_the_rules_of_structs)
{
    union roomy spec;
    const uint32_t wrong[] = { 0, sizeof to_nearest_tick - 1, 4097, UINT32_MAX };
    ck_rounding_refused(NULL, MUSLIN_ERR_NULL);
    for (size_t i = 0; i < COUNT(wrong); i++) {
        lay_out(&spec, &to_nearest_tick, sizeof to_nearest_tick);
        spec.head[0] = wrong[i];
        ck_rounding_refused(&spec, MUSLIN_ERR_STRUCT_SIZE);
    }
    lay_out(&spec, &to_nearest_tick, sizeof to_nearest_tick);
    spec.head[0] += SPARE;
    spec.bytes[sizeof to_nearest_tick] = 1;
    ck_rounding_refused(&spec, MUSLIN_ERR_STRUCT_TAIL);
    lay_out(&spec, &to_nearest_tick, sizeof to_nearest_tick);
    spec.head[1] = 1;
    ck_rounding_refused(&spec, MUSLIN_ERR_FLAGS);
    struct muslin_rounding_spec padded = to_nearest_tick;
    padded.pad = 1;
    ck_rounding_refused(&padded, MUSLIN_ERR_STRUCT_TAIL);
}
END_TEST

START_TEST(a_rounded_result_keeps_the_rules_of_structs)
{
    const uint32_t known = (uint32_t)sizeof(struct muslin_rounded);
    const uint32_t wrong[] = { 0, known - 1, 4097, UINT32_MAX };
    for (size_t i = 0; i < COUNT(rounded_calls); i++) {
        union roomy out;
        union roomy larger;
        ck_status(rounded_calls[i](&to_nearest_tick, NULL), MUSLIN_ERR_NULL);
        for (size_t j = 0; j < COUNT(wrong); j++) {
            lay_out_output(&out, wrong[j]);
            ck_status(rounded_calls[i](&to_nearest_tick, &out), MUSLIN_ERR_STRUCT_SIZE);
            ck_assert(is_untouched_from(&out, sizeof out.head[0]));
        }
        lay_out_output(&out, known);
        lay_out_output(&larger, known + SPARE);
        ck_ok(rounded_calls[i](&to_nearest_tick, &out));
        ck_ok(rounded_calls[i](&to_nearest_tick, &larger));
        ck_assert_uint_eq(larger.head[0], known + SPARE);
        ck_assert_uint_eq(out.head[1], 0);
        ck_assert_mem_eq(out.bytes + 4, larger.bytes + 4, known - 4);
        ck_assert(is_untouched_from(&out, known));
        for (uint32_t at = known; at < known + SPARE; at++)
            ck_assert_uint_eq(larger.bytes[at], 0);
        ck_assert(is_untouched_from(&larger, known + SPARE));
    }
}
END_TEST

START_TEST(a_length_outside_the_range_is_not_rounded)
{
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    for (size_t i = 0; i < COUNT(outside); i++) {
        ck_status(muslin_length_divide(outside[i], 2, &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_scale(outside[i], 1, 2, &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
        ck_status(muslin_length_snap(outside[i], &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    }
    ck_assert_int_eq(out.value, 77);
}
END_TEST

static muslin_status init_rounding(void *spec, uint32_t size)
{
    return muslin_rounding_spec_init(spec, size);
}

START_TEST(the_initial_rounding_is_that_of_the_macro)
{
    ck_init_rules(init_rounding, &to_nearest_tick, sizeof to_nearest_tick);
}
END_TEST

/* ---- array forms ----------------------------------------------------------------------------------------------- */

enum { ELEMENTS = 5 };

/* One array form as all of them are tried: the third element fails, the others do not. */
typedef muslin_status array_call(const muslin_len *a, const int64_t *b, size_t n, muslin_len *out,
                                 muslin_status *statuses, size_t *failed);

static muslin_status call_scale_n(const muslin_len *a, const int64_t *b, size_t n, muslin_len *out,
                                  muslin_status *statuses, size_t *failed)
{
    (void)b;
    return muslin_length_scale_n(a, n, 3, 2, &to_nearest_tick, out, statuses, failed);
}

static muslin_status call_snap_n(const muslin_len *a, const int64_t *b, size_t n, muslin_len *out,
                                 muslin_status *statuses, size_t *failed)
{
    (void)b;
    return muslin_length_snap_n(a, n, &to_nearest_tick, out, statuses, failed);
}

static const struct array_form {
    array_call *call;
    muslin_len a[ELEMENTS];
    int64_t b[ELEMENTS];
    muslin_len out[ELEMENTS];
    muslin_status third;
    int reads_b;
} array_forms[] = {
    { muslin_length_add_n, { 1, 2, MUSLIN_LENGTH_MAX, -4, 5 }, { 10, 20, 1, 40, 50 }, { 11, 22, 0, 36, 55 },
      MUSLIN_ERR_OVERFLOW, 1 },
    { muslin_length_subtract_n, { 1, 2, 3, -4, 5 }, { 10, 20, INT64_MIN, 40, 50 }, { -9, -18, 0, -44, -45 },
      MUSLIN_ERR_RANGE, 1 },
    { muslin_length_multiply_n, { 1, 2, MUSLIN_LENGTH_MAX, -4, 5 }, { 10, 20, 2, 40, 50 }, { 10, 40, 0, -160, 250 },
      MUSLIN_ERR_OVERFLOW, 1 },
    { call_scale_n, { 1, 2, MUSLIN_LENGTH_MAX, -4, 5 }, { 0 }, { 2, 3, 0, -6, 8 }, MUSLIN_ERR_OVERFLOW, 0 },
    { call_snap_n, { 1, 2, INT64_MAX, -4, 5 }, { 0 }, { 1, 2, 0, -4, 5 }, MUSLIN_ERR_RANGE, 0 },
};

START_TEST(with_statuses_each_element_gets_its_own_and_the_call_succeeds)
{
    for (size_t f = 0; f < COUNT(array_forms); f++) {
        const struct array_form *form = &array_forms[f];
        muslin_len out[ELEMENTS] = { 77, 77, 77, 77, 77 };
        muslin_status statuses[ELEMENTS] = { 7, 7, 7, 7, 7 };
        size_t failed = 77;
        ck_ok(form->call(form->a, form->b, ELEMENTS, out, statuses, &failed));
        ck_assert_uint_eq(failed, 77);
        for (size_t i = 0; i < ELEMENTS; i++) {
            ck_assert_int_eq(statuses[i], i == 2 ? form->third : MUSLIN_OK);
            ck_assert_int_eq(out[i], i == 2 ? 77 : form->out[i]);
        }
    }
}
END_TEST

START_TEST(without_statuses_a_call_stops_at_the_first_failure_and_says_where)
{
    for (size_t f = 0; f < COUNT(array_forms); f++) {
        const struct array_form *form = &array_forms[f];
        muslin_len out[ELEMENTS] = { 77, 77, 77, 77, 77 };
        size_t failed = 77;
        ck_status(form->call(form->a, form->b, ELEMENTS, out, NULL, &failed), form->third);
        ck_assert_uint_eq(failed, 2);
        for (size_t i = 0; i < ELEMENTS; i++)
            ck_assert_int_eq(out[i], i < 2 ? form->out[i] : 77);
        ck_status(form->call(form->a, form->b, ELEMENTS, out, NULL, NULL), form->third);
    }
}
END_TEST

START_TEST(a_call_over_good_elements_only_leaves_failed_alone)
{
    for (size_t f = 0; f < COUNT(array_forms); f++) {
        muslin_len out[3] = { 77, 77, 77 };
        muslin_status statuses[3] = { 7, 7, 7 };
        size_t failed = 77;
        ck_ok(array_forms[f].call(array_forms[f].a, array_forms[f].b, 2, out, NULL, &failed));
        ck_assert_uint_eq(failed, 77);
        ck_assert_mem_eq(out, array_forms[f].out, 2 * sizeof out[0]);
        ck_ok(array_forms[f].call(array_forms[f].a, array_forms[f].b, 2, out, statuses, &failed));
        ck_assert(statuses[0] == MUSLIN_OK && statuses[1] == MUSLIN_OK);
        ck_assert(out[2] == 77 && statuses[2] == 7);
    }
}
END_TEST

START_TEST(the_output_may_be_an_input)
{
    for (size_t f = 0; f < COUNT(array_forms); f++) {
        muslin_len both[2];
        int64_t second[2];
        memcpy(both, array_forms[f].a, sizeof both);
        ck_ok(array_forms[f].call(both, array_forms[f].b, 2, both, NULL, NULL));
        ck_assert_mem_eq(both, array_forms[f].out, sizeof both);
        memcpy(second, array_forms[f].b, sizeof second);
        ck_ok(array_forms[f].call(array_forms[f].a, second, 2, second, NULL, NULL));
        ck_assert_mem_eq(second, array_forms[f].out, sizeof second);
    }
}
END_TEST

START_TEST(no_elements_succeed_without_arrays)
{
    size_t failed = 77;
    for (size_t f = 0; f < COUNT(array_forms); f++)
        ck_ok(array_forms[f].call(NULL, NULL, 0, NULL, NULL, &failed));
    ck_assert_uint_eq(failed, 77);
}
END_TEST

/* Many elements, all good but the one at `bad` of the first or second array, which must not keep the others from their
 * sums. As many lie before and behind the arrays, of which nothing is asked. */
enum { BEFORE = 600, LONG = 1300, ALL = BEFORE + LONG + 20 };

static void check_long_sums(size_t bad, int is_first, int has_statuses)
{
    muslin_len a[ALL], b[ALL], sums[ALL], differences[ALL];
    muslin_status statuses[ALL], *statuses_asked = has_statuses ? statuses + BEFORE : NULL;
    size_t failed = LONG;
    for (size_t i = 0; i < ALL; i++) {
        a[i] = i % 7 == 0 ? -(muslin_len)i : MUSLIN_LENGTH_MAX / 4 - (muslin_len)i;
        b[i] = 1000 - (muslin_len)i;
        sums[i] = differences[i] = 77;
        statuses[i] = 99;
    }
    if (bad < LONG)
        (is_first ? a : b)[BEFORE + bad] = INT64_MIN;
    const muslin_status wanted = has_statuses || bad >= LONG ? MUSLIN_OK : MUSLIN_ERR_RANGE;
    ck_status(muslin_length_add_n(a + BEFORE, b + BEFORE, LONG, sums + BEFORE, statuses_asked, &failed), wanted);
    ck_status(muslin_length_subtract_n(a + BEFORE, b + BEFORE, LONG, differences + BEFORE, statuses_asked, &failed),
              wanted);
    ck_assert_uint_eq(failed, wanted == MUSLIN_OK ? LONG : bad);
    for (size_t i = 0; i < ALL; i++) {
        const int is_asked = i >= BEFORE && i < BEFORE + LONG;
        const int is_done = is_asked && (has_statuses ? i != BEFORE + bad : i < BEFORE + bad);
        ck_assert_int_eq(sums[i], is_done ? a[i] + b[i] : 77);
        ck_assert_int_eq(differences[i], is_done ? a[i] - b[i] : 77);
        const muslin_status status = i == BEFORE + bad ? MUSLIN_ERR_RANGE : MUSLIN_OK;
        ck_assert_int_eq(statuses[i], is_asked && has_statuses ? status : 99);
    }
}

START_TEST(a_long_array_is_as_its_elements)
{
    const size_t bads[] = { 0, 511, 512, 700, 1299, 1300 };
    for (size_t i = 0; i < COUNT(bads); i++)
        for (int which = 0; which < 4; which++)
            check_long_sums(bads[i], which % 2, which / 2);
}
END_TEST

/* The range ends at 2^62 - 1 both ways. */
START_TEST(sums_of_arrays_may_just_reach_the_ends_of_the_range)
{
    const muslin_len half = INT64_C(1) << 61;
    const muslin_len a[] = { half, half, -half, -half };
    const muslin_len b[] = { half - 1, half, 1 - half, -half };
    for (size_t i = 0; i < COUNT(a); i++) {
        const muslin_status status = i % 2 == 0 ? MUSLIN_OK : MUSLIN_ERR_OVERFLOW;
        const muslin_len end = i < 2 ? MUSLIN_LENGTH_MAX : -MUSLIN_LENGTH_MAX, opposite = -b[i];
        muslin_len sum = 77, difference = 77;
        ck_status(muslin_length_add_n(&a[i], &b[i], 1, &sum, NULL, NULL), status);
        ck_status(muslin_length_subtract_n(&a[i], &opposite, 1, &difference, NULL, NULL), status);
        ck_assert_int_eq(sum, status == MUSLIN_OK ? end : 77);
        ck_assert_int_eq(difference, sum);
    }
}
END_TEST

START_TEST(a_missing_array_is_refused_before_anything_is_written)
{
    for (size_t f = 0; f < COUNT(array_forms); f++) {
        const struct array_form *form = &array_forms[f];
        muslin_len out[ELEMENTS] = { 77 };
        muslin_status statuses[ELEMENTS] = { 77 };
        size_t failed = 77;
        ck_status(form->call(NULL, form->b, ELEMENTS, out, statuses, &failed), MUSLIN_ERR_NULL);
        ck_status(form->call(form->a, form->b, ELEMENTS, NULL, statuses, &failed), MUSLIN_ERR_NULL);
        if (form->reads_b)
            ck_status(form->call(form->a, NULL, ELEMENTS, out, statuses, &failed), MUSLIN_ERR_NULL);
        ck_assert(out[0] == 77 && statuses[0] == 77 && failed == 77);
    }
}
END_TEST

/* ---- irrational sizes ------------------------------------------------------------------------------------------ */

static muslin_status root_of(enum root_kind kind, int64_t a, muslin_len b, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out)
{
    switch (kind) {
    case ROOT_TIMES_ROOT2:
        return muslin_length_times_root2(a, rounding, out);
    case ROOT_OVER_ROOT2:
        return muslin_length_over_root2(a, rounding, out);
    case ROOT_HEIGHT:
        return muslin_length_equilateral_height(a, rounding, out);
    case ROOT_SIDE:
        return muslin_length_equilateral_side(a, rounding, out);
    case ROOT_HYPOTENUSE:
        return muslin_length_hypotenuse(a, b, rounding, out);
    default:
        return muslin_length_root_of_area(a, rounding, out);
    }
}

START_TEST(roots_are_rounded_as_squares_of_fractions_say)
{
    for (size_t i = 0; i < COUNT(root_cases); i++) {
        const struct root_case *row = &root_cases[i];
        struct muslin_rounding_spec r = rounding_of(row->grid, row->tolerance, row->direction);
        struct muslin_rounded found = { .size = sizeof found };
        ck_ok(root_of(row->kind, row->a, row->b, &r, &found));
        ck_assert_msg(found.value == row->value && found.error == row->error && found.exact == row->exact &&
                      found.on_tick == row->on_tick, "row %zu", i);
    }
}
END_TEST

/* k / times <= sqrt(n) for whole k, by squares alone. */
static int is_at_most(int64_t k, uint64_t times, uint64_t n)
{
    uint64_t scaled = (uint64_t)(k < 0 ? 0 : k) * times;
    return scaled * scaled <= n;
}

/* sqrt(n) / divisor rounded as asked: the definition of struct muslin_rounding_spec, squared. n stays so small that 4 n
 * and the squares beside it fit. */
static int is_root_rounded(const struct muslin_rounded *found, uint64_t n, uint64_t divisor,
                           const struct muslin_rounding_spec *r)
{
    int64_t v = found->value;
    int64_t from_error = v - found->error; /* x lies in (from_error - 1, from_error] */
    int holds = v % r->grid == 0 && (n == 0 ? from_error == 0 : is_at_most(from_error - 1, divisor, n - 1));
    uint64_t top = (uint64_t)from_error * divisor;
    holds &= top * top >= n && found->on_tick == (top * top == n);
    holds &= found->exact == (found->on_tick && v == from_error);
    if (r->direction == MUSLIN_DIRECTION_UP) {
        uint64_t reach = (uint64_t)(v + r->tolerance) * divisor;
        uint64_t before = (uint64_t)(v + r->tolerance - r->grid) * divisor;
        return holds && reach * reach >= n && (v + r->tolerance < r->grid || before * before < n);
    }
    if (r->direction == MUSLIN_DIRECTION_DOWN)
        return holds && is_at_most(v - r->tolerance, divisor, n) && !is_at_most(v - r->tolerance + r->grid, divisor, n);
    return holds && is_at_most(2 * v - r->grid, divisor, 4 * n) && !is_at_most(2 * v + r->grid, divisor, 4 * n);
}

START_TEST(small_roots_are_rounded_as_their_squares_say)
{
    static const struct {
        enum root_kind kind;
        uint64_t times;
        uint64_t divisor;
    } forms[] = { { ROOT_TIMES_ROOT2, 2, 1 }, { ROOT_OVER_ROOT2, 2, 2 }, { ROOT_HEIGHT, 3, 2 }, { ROOT_SIDE, 12, 3 } };
    int right = 1;
    for (size_t f = 0; f < COUNT(forms); f++)
        for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++)
            for (muslin_len grid = 1; grid <= 7; grid++)
                for (muslin_len tolerance = 0; tolerance < grid; tolerance++)
                    for (muslin_len a = 0; a <= 150; a++) {
                        struct muslin_rounding_spec r = rounding_of(grid, tolerance, direction);
                        struct muslin_rounded found = { .size = sizeof found };
                        uint64_t square = (uint64_t)(a * a);
                        right &= root_of(forms[f].kind, a, 0, &r, &found) == MUSLIN_OK &&
                                 is_root_rounded(&found, forms[f].times * square, forms[f].divisor, &r);
                    }
    ck_assert(right);
}
END_TEST

START_TEST(hypotenuses_are_rounded_as_their_squares_say)
{
    int right = 1;
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++)
        for (muslin_len a = 0; a <= 120; a++)
            for (muslin_len b = 0; b <= 120; b++) {
                struct muslin_rounding_spec r = rounding_of(1 + a % 5, 0, direction);
                struct muslin_rounded found = { .size = sizeof found };
                right &= muslin_length_hypotenuse(a, b, &r, &found) == MUSLIN_OK &&
                         is_root_rounded(&found, (uint64_t)(a * a + b * b), 1, &r);
            }
    ck_assert(right);
}
END_TEST

START_TEST(sides_of_areas_are_rounded_as_their_squares_say)
{
    int right = 1;
    for (int32_t direction = MUSLIN_DIRECTION_UP; direction <= MUSLIN_DIRECTION_NEAREST; direction++)
        for (int64_t area = 0; area <= 5000; area++) {
            struct muslin_rounding_spec r = rounding_of(1 + area % 3, 0, direction);
            struct muslin_rounded found = { .size = sizeof found };
            right &= muslin_length_root_of_area(area, &r, &found) == MUSLIN_OK &&
                     is_root_rounded(&found, 2 * (uint64_t)area, 2, &r);
        }
    ck_assert(right);
}
END_TEST

START_TEST(roots_of_drawn_sizes_are_rounded_as_their_squares_say)
{
    uint64_t state = 8128;
    int right = 1;
    for (int i = 0; i < 20000; i++) {
        muslin_len a = draw_from(&state, 0, MUSLIN_SIZE_MAX / 4);
        muslin_len b = draw_from(&state, 0, MUSLIN_SIZE_MAX / 4);
        muslin_len grid = draw_from(&state, 1, 20000);
        int32_t direction = (int32_t)draw_from(&state, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        struct muslin_rounding_spec r = rounding_of(grid, draw_from(&state, 0, grid - 1), direction);
        struct muslin_rounded found = { .size = sizeof found };
        right &= muslin_length_hypotenuse(a, b, &r, &found) == MUSLIN_OK &&
                 is_root_rounded(&found, (uint64_t)a * (uint64_t)a + (uint64_t)b * (uint64_t)b, 1, &r);
        right &= muslin_length_times_root2(a, &r, &found) == MUSLIN_OK &&
                 is_root_rounded(&found, 2 * (uint64_t)a * (uint64_t)a, 1, &r);
        right &= muslin_length_equilateral_side(a, &r, &found) == MUSLIN_OK &&
                 is_root_rounded(&found, 12 * (uint64_t)a * (uint64_t)a, 3, &r);
    }
    ck_assert(right);
}
END_TEST

START_TEST(a_square_and_its_neighbours_are_told_apart_at_any_size)
{
    /* Twice the area of a k x k square, one less and one more: only the square itself is exact. */
    int right = 1;
    uint64_t state = 64;
    for (int i = 0; i < 2000; i++) {
        int64_t k = draw_from(&state, 2, MUSLIN_SIZE_MAX - 1);
        for (int64_t off = -1; off <= 1; off++) {
            struct muslin_rounding_spec down = rounding_of(1, 0, MUSLIN_DIRECTION_DOWN);
            struct muslin_rounded found = { .size = sizeof found };
            right &= muslin_length_root_of_area(2 * k * k + off, &down, &found) == MUSLIN_OK &&
                     found.value == (off < 0 ? k - 1 : k) && found.exact == (off == 0) && found.on_tick == (off == 0);
        }
    }
    ck_assert(right);
}
END_TEST

START_TEST(the_diagonal_of_a_six_inch_block_is_as_the_charts_say)
{
    /* 6 in on point spans 8.485 in, 8 1/2 in charts: geometry. */
    struct muslin_rounding_spec eighths = rounding_of(IN(0, 1, 8), 0, MUSLIN_DIRECTION_UP);
    struct muslin_rounded diagonal = { .size = sizeof diagonal };
    ck_ok(muslin_length_times_root2(WHOLE_IN(6), &eighths, &diagonal));
    ck_assert_int_eq(diagonal.value, IN(8, 1, 2));
    ck_assert_int_eq(diagonal.exact, 0);
    ck_assert_int_eq(diagonal.on_tick, 0);
}
END_TEST

START_TEST(the_triangle_of_three_four_and_five_is_exact)
{
    struct muslin_rounded longest = { .size = sizeof longest };
    ck_ok(muslin_length_hypotenuse(WHOLE_IN(3), WHOLE_IN(4), &to_nearest_tick, &longest));
    ck_assert_int_eq(longest.value, WHOLE_IN(5));
    ck_assert_int_eq(longest.exact, 1);
    ck_assert_int_eq(longest.on_tick, 1);
}
END_TEST

START_TEST(a_size_outside_the_range_has_no_root)
{
    const int64_t bad[] = { -1, MUSLIN_SIZE_MAX + 1, INT64_MIN, INT64_MAX };
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    for (int kind = ROOT_TIMES_ROOT2; kind < ROOT_AREA; kind++)
        for (size_t i = 0; i < COUNT(bad); i++)
            ck_status(root_of((enum root_kind)kind, bad[i], 0, &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    for (size_t i = 0; i < COUNT(bad); i++)
        ck_status(muslin_length_hypotenuse(0, bad[i], &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.value, 77);
}
END_TEST

START_TEST(an_area_outside_the_range_has_no_side)
{
    const int64_t bad[] = { -1, (INT64_C(1) << 61) + 1, INT64_MIN, INT64_MAX };
    struct muslin_rounded out = { .size = sizeof out, .value = 77 };
    for (size_t i = 0; i < COUNT(bad); i++)
        ck_status(muslin_length_root_of_area(bad[i], &to_nearest_tick, &out), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(out.value, 77);
    ck_ok(muslin_length_root_of_area(INT64_C(1) << 61, &to_nearest_tick, &out));
    ck_assert_int_eq(out.value, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(out.exact, 1);
}
END_TEST

/* ---- units ----------------------------------------------------------------------------------------------------- */

START_TEST(units_stand_to_each_other_as_the_handbook_says)
{
    /* NIST Handbook 44, Appendix C: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 3 ft = 0.9144 m, all exact. */
    ck_assert_int_eq(10 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_INCH),
                     254 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_MM));
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_FOOT),
                     12 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_INCH));
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD),
                     3 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_FOOT));
    ck_assert_int_eq(10000 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_YARD),
                     9144 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_M));
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_CM),
                     10 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_MM));
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_M),
                     100 * muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_CM));
    ck_assert_int_eq(muslin_length_unit_ticks(MUSLIN_LENGTH_UNIT_INCH), 8128);
}
END_TEST

START_TEST(units_have_their_usual_words)
{
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_INCH), "in");
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_FOOT), "ft");
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_YARD), "yd");
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_MM), "mm");
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_CM), "cm");
    ck_assert_str_eq(muslin_length_unit_word(MUSLIN_LENGTH_UNIT_M), "m");
}
END_TEST

START_TEST(what_is_no_unit_has_no_length_and_no_word)
{
    const int32_t bad[] = { 0, 7, -1, INT32_MIN, INT32_MAX };
    for (size_t i = 0; i < COUNT(bad); i++) {
        ck_assert_int_eq(muslin_length_unit_ticks(bad[i]), 0);
        ck_assert_str_eq(muslin_length_unit_word(bad[i]), "");
    }
}
END_TEST

/* ---- suite ----------------------------------------------------------------------------------------------------- */

static TCase *tcase_sums(void)
{
    TCase *sums = tcase_create("sums and products");
    tcase_add_test(sums, a_sum_is_exact);
    tcase_add_test(sums, a_difference_is_exact);
    tcase_add_test(sums, a_product_is_exact);
    tcase_add_test(sums, sums_reach_exactly_to_the_end_of_the_range);
    tcase_add_test(sums, products_reach_exactly_to_the_end_of_the_range);
    tcase_add_test(sums, a_length_outside_the_range_is_refused);
    tcase_add_test(sums, sums_and_products_need_somewhere_to_go);
    tcase_add_test(sums, lengths_compare_over_the_whole_type);
    tcase_add_test(sums, a_sum_of_many_is_exact);
    tcase_add_test(sums, no_lengths_sum_to_nothing);
    tcase_add_test(sums, partial_sums_may_pass_the_range_in_any_order);
    tcase_add_test(sums, a_length_out_of_range_is_told_before_an_overflow_in_any_order);
    tcase_add_test(sums, a_dot_product_counts_each_length);
    tcase_add_test(sums, partial_dot_products_may_pass_the_range);
    tcase_add_test(sums, a_dot_product_of_two_to_the_128_is_not_taken_for_nothing);
    tcase_add_test(sums, a_dot_product_just_outside_the_range_is_an_overflow);
    tcase_add_test(sums, a_dot_product_refuses_lengths_outside_the_range);
    tcase_add_test(sums, sums_over_arrays_name_a_missing_array);
    return sums;
}

static TCase *tcase_rounding(void)
{
    TCase *rounding = tcase_create("rounding");
    tcase_add_test(rounding, quotients_are_rounded_as_a_walk_over_the_grid_finds);
    tcase_add_test(rounding, scaled_lengths_are_rounded_as_a_walk_over_the_grid_finds);
    tcase_add_test(rounding, large_scalings_are_rounded_as_fractions_say);
    tcase_add_test(rounding, an_over_tight_ceiling_does_not_jump_a_step_for_two_thousandths);
    tcase_add_test(rounding, ties_go_upwards_on_both_sides_of_nothing);
    tcase_add_test(rounding, a_length_on_the_grid_stays_and_is_exact);
    tcase_add_test(rounding, a_length_rounds_out_of_the_range_only_where_its_grid_point_does);
    tcase_add_test(rounding, the_least_divisor_of_the_type_works_too);
    tcase_add_test(rounding, nothing_divides_by_zero);
    tcase_add_test(rounding, a_negative_denominator_is_out_of_range);
    tcase_add_test(rounding, a_rounding_out_of_range_is_refused);
    tcase_add_test(rounding, a_direction_that_is_none_is_refused);
    tcase_add_test(rounding, a_rounding_keeps_the_rules_of_structs);
    tcase_add_test(rounding, a_rounded_result_keeps_the_rules_of_structs);
    tcase_add_test(rounding, a_length_outside_the_range_is_not_rounded);
    tcase_add_test(rounding, the_initial_rounding_is_that_of_the_macro);
    return rounding;
}

static TCase *tcase_arrays(void)
{
    TCase *arrays = tcase_create("array forms");
    tcase_add_test(arrays, with_statuses_each_element_gets_its_own_and_the_call_succeeds);
    tcase_add_test(arrays, without_statuses_a_call_stops_at_the_first_failure_and_says_where);
    tcase_add_test(arrays, a_call_over_good_elements_only_leaves_failed_alone);
    tcase_add_test(arrays, the_output_may_be_an_input);
    tcase_add_test(arrays, no_elements_succeed_without_arrays);
    tcase_add_test(arrays, a_long_array_is_as_its_elements);
    tcase_add_test(arrays, sums_of_arrays_may_just_reach_the_ends_of_the_range);
    tcase_add_test(arrays, a_missing_array_is_refused_before_anything_is_written);
    return arrays;
}

static TCase *tcase_roots(void)
{
    TCase *roots = tcase_create("irrational sizes and units");
    tcase_add_test(roots, roots_are_rounded_as_squares_of_fractions_say);
    tcase_add_test(roots, small_roots_are_rounded_as_their_squares_say);
    tcase_add_test(roots, hypotenuses_are_rounded_as_their_squares_say);
    tcase_add_test(roots, sides_of_areas_are_rounded_as_their_squares_say);
    tcase_add_test(roots, roots_of_drawn_sizes_are_rounded_as_their_squares_say);
    tcase_add_test(roots, a_square_and_its_neighbours_are_told_apart_at_any_size);
    tcase_add_test(roots, the_diagonal_of_a_six_inch_block_is_as_the_charts_say);
    tcase_add_test(roots, the_triangle_of_three_four_and_five_is_exact);
    tcase_add_test(roots, a_size_outside_the_range_has_no_root);
    tcase_add_test(roots, an_area_outside_the_range_has_no_side);
    tcase_add_test(roots, units_stand_to_each_other_as_the_handbook_says);
    tcase_add_test(roots, units_have_their_usual_words);
    tcase_add_test(roots, what_is_no_unit_has_no_length_and_no_word);
    return roots;
}

Suite *length_suite(void)
{
    Suite *suite = suite_create("length");
    suite_add_tcase(suite, tcase_sums());
    suite_add_tcase(suite, tcase_rounding());
    suite_add_tcase(suite, tcase_arrays());
    suite_add_tcase(suite, tcase_roots());
    suite_add_tcase(suite, tcase_parse());
    suite_add_tcase(suite, tcase_format());
    return suite;
}
