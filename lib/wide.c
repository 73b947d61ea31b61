/* wide.c - two-limb whole numbers, and the one place where a quotient is rounded.
 *
 * SPDX-License-Identifier: MIT */
#include "wide.h"

/* An unsigned 128-bit number. */
struct limbs {
    uint64_t high;
    uint64_t low;
};

/*@ logic integer limbs_value(struct limbs a) = a.high * 0x10000000000000000 + a.low; */

/* |a|, also of the least int64_t. */
/*@ assigns \nothing;
  @ ensures \result == \abs(a); */
static uint64_t magnitude(int64_t a)
{
    return a < 0 ? (uint64_t)(-(a + 1)) + 1 : (uint64_t)a;
}

/* Schoolbook on 32-bit halves: each partial product fits in 64 bits, and so does the sum of three halves. */
/*@ assigns \nothing;
  @ ensures limbs_value(\result) == a * b; */
static struct limbs multiply_limbs(uint64_t a, uint64_t b)
{
    const uint64_t half = (uint64_t)1 << 32;
    uint64_t a_high = a / half;
    uint64_t a_low = a % half;
    uint64_t b_high = b / half;
    uint64_t b_low = b % half;
    uint64_t low_low = a_low * b_low;
    uint64_t low_high = a_low * b_high;
    uint64_t high_low = a_high * b_low;
    uint64_t high_high = a_high * b_high;
    /*@ assert low_low == a_low * b_low && low_high == a_low * b_high && low_high <= 0xFFFFFFFE00000001; */
    /*@ assert high_low == a_high * b_low && high_low <= 0xFFFFFFFE00000001; */
    /*@ assert high_high == a_high * b_high && high_high <= 0xFFFFFFFE00000001; */
    uint64_t middle = low_low / half + low_high % half + high_low % half;
    struct limbs product;
    product.low = middle % half * half + low_low % half;
    product.high = high_high + low_high / half + high_low / half + middle / half;
    /*@ assert product.high == high_high + low_high / half + high_low / half + middle / half; */
    /*@ assert a == a_high * half + a_low && b == b_high * half + b_low; */
    /*@ assert a * b == high_high * half * half + (low_high + high_low) * half + low_low; */
    return product;
}

/* -(h 2^64 + l) = (-1 - h) 2^64 + (2^64 - l), where the last term carries when l is 0. */
/*@ requires wide_value(a) > -0x80000000000000000000000000000000;
  @ assigns \nothing;
  @ ensures wide_value(\result) == -wide_value(a); */
static struct msl_wide negated(struct msl_wide a)
{
    struct msl_wide result = { a.low == 0 ? -a.high : -1 - a.high, a.low == 0 ? 0 : UINT64_MAX - (a.low - 1) };
    return result;
}

struct msl_wide msl_wide_from(int64_t a)
{
    struct msl_wide result = { a < 0 ? -1 : 0, (uint64_t)a };
    return result;
}

struct msl_wide msl_wide_multiply(int64_t a, int64_t b)
{
    struct limbs product = multiply_limbs(magnitude(a), magnitude(b));
    struct msl_wide result = { (int64_t)product.high, product.low };
    return (a < 0) != (b < 0) ? negated(result) : result;
}

struct msl_wide msl_wide_add(struct msl_wide a, struct msl_wide b)
{
    struct msl_wide sum = { a.high + b.high, a.low + b.low };
    sum.high += sum.low < a.low ? 1 : 0;
    return sum;
}

int32_t msl_wide_compare(struct msl_wide a, struct msl_wide b)
{
    if (a.high != b.high)
        return a.high < b.high ? -1 : 1;
    if (a.low != b.low)
        return a.low < b.low ? -1 : 1;
    return 0;
}

void msl_read_rounding(struct msl_check *check, struct muslin_rounding_spec *into,
                       const struct muslin_rounding_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, into, (uint32_t)sizeof *into, (uint32_t)sizeof *into, 0, from);
    if (check->status != MUSLIN_OK)
        return;
    msl_want_some_size(check, MUSLIN_ARG_GRID, into->grid);
    if (check->status != MUSLIN_OK)
        return;
    msl_want_between(check, MUSLIN_ARG_TOLERANCE, into->tolerance, 0, into->grid - 1);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, into->direction, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    msl_want_pad(check, into->pad);
}

/* a / divisor, where the quotient fits in 64 bits because a.high is below the divisor; *rest gets what is left. Long
 * division, bit by bit: the divisor is below 2^63, so what is left fits when it is doubled. */
/*@ requires 0 < divisor < 0x8000000000000000 && a.high < divisor;
  @ requires \valid(rest);
  @ assigns *rest;
  @ ensures *rest < divisor;
  @ ensures a.high * 0x10000000000000000 + a.low == \result * divisor + *rest; */
static uint64_t divide_limbs(struct limbs a, uint64_t divisor, uint64_t *rest)
{
    uint64_t quotient = 0;
    uint64_t left = a.high;
    *rest = a.low % divisor;
    if (left == 0) {
        quotient = a.low / divisor;
        /*@ assert a.low == quotient * divisor + *rest; */
        return quotient;
    }
    /*@ loop invariant -1 <= bit <= 63 && left < divisor;
      @ loop invariant a.high * (1 << (63 - bit)) + a.low / (1 << (bit + 1)) == quotient * divisor + left;
      @ loop invariant bit == -1 ==> a.high * 0x10000000000000000 + a.low == quotient * divisor + left;
      @ loop invariant quotient < (1 << (63 - bit));
      @ loop assigns bit, left, quotient;
      @ loop variant bit; */
    for (int bit = 63; bit >= 0; bit--) {
        /*@ assert a.low / (1 << bit) == 2 * (a.low / (1 << (bit + 1))) + (a.low >> bit & 1); */
        /*@ assert (1 << (64 - bit)) == 2 * (1 << (63 - bit)); */
        /*@ assert a.high * (1 << (64 - bit)) == 2 * (a.high * (1 << (63 - bit))); */
        left = 2 * left + (a.low >> bit & 1);
        /*@ assert left == 2 * \at(left, LoopCurrent) + (a.low >> bit & 1); */
        quotient *= 2;
        /*@ assert quotient == 2 * \at(quotient, LoopCurrent); */
        /*@ assert a.high * (1 << (64 - bit)) + a.low / (1 << bit) == quotient * divisor + left; */
        if (left >= divisor) {
            left -= divisor;
            quotient++;
            /*@ assert quotient == 2 * \at(quotient, LoopCurrent) + 1; */
        }
        /*@ assert left < divisor; */
        /*@ assert a.high * (1 << (64 - bit)) + a.low / (1 << bit) == quotient * divisor + left; */
    }
    *rest = left;
    return quotient;
}

/* A number n below 0 is divided as -1 - n: that is q d + r, and so n is (-1 - q) d + (d - 1 - r). */
int msl_wide_floor(struct msl_wide numerator, int64_t denominator, int64_t *floor, int64_t *rest)
{
    int negative = numerator.high < 0;
    struct limbs size = { (uint64_t)(negative ? -1 - numerator.high : numerator.high),
                          negative ? UINT64_MAX - numerator.low : numerator.low };
    uint64_t left;
    if (size.high >= (uint64_t)denominator)
        return 0;
    uint64_t quotient = divide_limbs(size, (uint64_t)denominator, &left);
    /*@ assert MSL_FLOOR_MAX < quotient ==> (MSL_FLOOR_MAX + 1) * denominator <= quotient * denominator; */
    /*@ assert quotient <= MSL_FLOOR_MAX ==> quotient * denominator <= MSL_FLOOR_MAX * denominator; */
    if (quotient > MSL_FLOOR_MAX)
        return 0;
    /*@ assert negative ==> wide_value(numerator) == (-1 - quotient) * denominator + (denominator - 1 - left); */
    *floor = negative ? -1 - (int64_t)quotient : (int64_t)quotient;
    *rest = negative ? denominator - 1 - (int64_t)left : (int64_t)left;
    return 1;
}

/* a brought down to a multiple of grid. */
/*@ requires 1 <= grid <= MUSLIN_SIZE_MAX && a > INT64_MIN + grid;
  @ assigns \nothing;
  @ ensures a - grid < \result <= a && \result % grid == 0; */
static int64_t floor_to_grid(int64_t a, int64_t grid)
{
    int64_t over = a % grid;
    int64_t nearer = a - over;
    /*@ assert (a / grid * grid) % grid == 0; */
    /*@ assert nearer % grid == 0 && (nearer - grid) % grid == 0; */
    return over < 0 ? nearer - grid : nearer;
}

/* The grid point that `rounding` asks for. Up is the least one not below ceiling - tolerance, for a grid point is
 * whole; down the greatest not above floor + tolerance; nearest the upper one where the value lies half a step or more
 * above the lower: twice its distance, in whole ticks and the half, reaches the grid. */
/*@ requires \valid_read(rounding) && is_rounding(*rounding);
  @ requires -MSL_FLOOR_MAX - 1 <= exact.floor <= MSL_FLOOR_MAX;
  @ requires exact.on_tick != 0 ==> exact.upper_half == 0;
  @ assigns \nothing;
  @ ensures is_point(\result, exact, *rounding); */
static int64_t grid_point(struct msl_exact exact, const struct muslin_rounding_spec *rounding)
{
    int64_t grid = rounding->grid;
    int64_t ceiling = exact.on_tick ? exact.floor : exact.floor + 1;
    int64_t low = floor_to_grid(exact.floor, grid);
    int64_t twice_ahead = 2 * (exact.floor - low) + (exact.upper_half ? 1 : 0);
    int64_t nearest = twice_ahead >= grid ? low + grid : low;
    switch (rounding->direction) {
    case MUSLIN_DIRECTION_UP:
        return floor_to_grid(ceiling - rounding->tolerance + grid - 1, grid);
    case MUSLIN_DIRECTION_DOWN:
        return floor_to_grid(exact.floor + rounding->tolerance, grid);
    default:
        return nearest;
    }
}

muslin_status msl_grid_round(struct msl_exact exact, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out)
{
    int64_t value = grid_point(exact, rounding);
    if (value < -MUSLIN_LENGTH_MAX || value > MUSLIN_LENGTH_MAX)
        return MUSLIN_ERR_OVERFLOW;
    out->value = value;
    out->error = value - exact.floor - (exact.on_tick ? 0 : 1);
    out->on_tick = exact.on_tick;
    out->exact = exact.on_tick && value == exact.floor;
    return MUSLIN_OK;
}

/*@ lemma floor_is_reached: \forall integer n, d, value, struct msl_exact e;
  @         0 < d && is_exact(e, n, d) ==> (reaches(n, d, value) <==> value <= e.floor);
  @ lemma halves_are_reached: \forall integer n, d, value, struct msl_exact e;
  @         0 < d && is_exact(e, n, d) ==> (reaches_halves(n, d, value) <==> value <= twice_of(e));
  @ lemma ceiling_is_kept: \forall integer n, d, value, struct msl_exact e;
  @         0 < d && is_exact(e, n, d) ==> (stays_within(n, d, value) <==> ceiling_of(e) <= value);
  @ lemma point_of_quotient: \forall integer value, n, d, struct msl_exact e, struct muslin_rounding_spec r;
  @         0 < d && is_exact(e, n, d) && is_point(value, e, r) ==> is_point_near(value, n, d, r);
  @ lemma whole_quotient: \forall integer value, n, d, struct msl_exact e;
  @         0 < d && is_exact(e, n, d) ==> (is_quotient(value, n, d) <==> e.on_tick != 0 && value == e.floor); */

muslin_status msl_wide_round(struct msl_wide numerator, int64_t denominator,
                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    struct msl_exact exact;
    int64_t rest;
    if (!msl_wide_floor(numerator, denominator, &exact.floor, &rest))
        return MUSLIN_ERR_OVERFLOW;
    exact.on_tick = rest == 0;
    exact.upper_half = rest >= denominator - rest;
    /*@ assert is_exact(exact, wide_value(numerator), denominator); */
    return msl_grid_round(exact, rounding, out);
}
