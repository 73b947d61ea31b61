/* surd.c - values with a square root in them, rounded in a direction that is right.
 *
 * SPDX-License-Identifier: MIT */
#include "surd.h"

struct msl_surd msl_surd_of(int64_t whole, int64_t root, int64_t under, int64_t divisor)
{
    struct msl_surd surd = { whole, 0, { 0, 0 }, divisor, { 0, 0 } };
    surd.sign = root < 0 ? -1 : root > 0;
    surd.radicand = msl_wide_multiply(root * (root < 0 ? -1 : 1), (root < 0 ? -root : root) * under);
    return surd;
}

/* The highest binary digit that the root of n can have; 0 of 0. */
static int64_t highest_digit(struct msl_wide n)
{
    int64_t digit = INT64_C(1) << 31;
    if (n.high != 0)
        return INT64_C(1) << 62;
    while ((uint64_t)digit * (uint64_t)digit > n.low)
        digit >>= 1;
    return digit;
}

/* As msl_root does it: binary digits from the highest down, each kept where the square still is not above n. */
int64_t msl_wide_root(struct msl_wide n, int32_t *whole_root)
{
    int64_t root = 0;
    for (int64_t digit = highest_digit(n); digit != 0; digit >>= 1)
        if (msl_wide_compare(msl_wide_multiply(root + digit, root + digit), n) <= 0)
            root += digit;
    *whole_root = msl_wide_compare(msl_wide_multiply(root, root), n) == 0;
    return root;
}

/* floor(a / b), b above 0. */
static int64_t floor_of(int64_t a, int64_t b)
{
    return a / b - (a % b < 0 ? 1 : 0);
}

static struct msl_wide four_times(struct msl_wide n)
{
    struct msl_wide twice = msl_wide_add(n, n);
    return msl_wide_add(twice, twice);
}

/* floor(sqrt(4 n + sqrt(16 m))), which is twice the root; and whether that is exact. As floor(sqrt x) is
 * floor(sqrt(floor x)), the inner root may be taken down first. */
static int64_t twice_the_root(const struct msl_surd *surd, int32_t *whole_root)
{
    int32_t inner_is_whole = 1;
    int64_t inner = msl_wide_root(four_times(four_times(surd->inner)), &inner_is_whole);
    int64_t root = msl_wide_root(msl_wide_add(four_times(surd->radicand), msl_wide_from(inner)), whole_root);
    *whole_root &= inner_is_whole;
    return root;
}

/* floor(p + x) = p + floor(x) for a whole p, and floor(y / d) = floor(floor(y) / d) for a whole d above 0. So
 * the floor of (p +- sqrt n) / d needs only the floor of +-sqrt n. The same with twice p and four times n gives the
 * floor of twice the value, whose lowest bit tells the half. */
struct msl_exact msl_surd_exact(const struct msl_surd *surd)
{
    struct msl_exact exact;
    int32_t whole_root = 1;
    int64_t twice = 2 * surd->whole;
    int64_t root = twice_the_root(surd, &whole_root);
    if (surd->sign > 0)
        twice += root;
    if (surd->sign < 0)
        twice -= root + 1 - whole_root;
    whole_root |= surd->sign == 0;
    int64_t halves = floor_of(twice, surd->divisor);
    exact.floor = floor_of(halves, 2);
    exact.upper_half = halves != 2 * exact.floor;
    exact.on_tick = whole_root && twice % surd->divisor == 0 && !exact.upper_half;
    return exact;
}

muslin_status msl_surd_round(const struct msl_surd *surd, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out)
{
    return msl_grid_round(msl_surd_exact(surd), rounding, out);
}

int64_t msl_surd_floor(const struct msl_surd *surd)
{
    return msl_surd_exact(surd).floor;
}

int64_t msl_surd_ceiling(const struct msl_surd *surd)
{
    struct msl_exact exact = msl_surd_exact(surd);
    return exact.floor + (exact.on_tick ? 0 : 1);
}
