/* wide.c - two-limb whole numbers, and the one place where a quotient is rounded.
 *
 * SPDX-License-Identifier: MIT */
#include "wide.h"

/* |a| as an unsigned number, also for the least int64_t. */
static uint64_t magnitude(int64_t a)
{
    return a < 0 ? (uint64_t)0 - (uint64_t)a : (uint64_t)a;
}

/* An unsigned 128-bit number. */
struct limbs {
    uint64_t high;
    uint64_t low;
};

/* Schoolbook on 32-bit halves: each partial product fits in 64 bits. */
static struct limbs multiply_limbs(uint64_t a, uint64_t b)
{
    const uint64_t half = UINT32_MAX;
    uint64_t low_low = (a & half) * (b & half);
    uint64_t low_high = (a & half) * (b >> 32);
    uint64_t high_low = (a >> 32) * (b & half);
    uint64_t high_high = (a >> 32) * (b >> 32);
    uint64_t middle = (low_low >> 32) + (low_high & half) + (high_low & half);
    struct limbs product;
    product.low = (middle << 32) | (low_low & half);
    product.high = high_high + (low_high >> 32) + (high_low >> 32) + (middle >> 32);
    return product;
}

/* Two's complement of the limbs, as a signed pair. */
static struct msl_wide negated(struct limbs a)
{
    uint64_t low = ~a.low + 1;
    uint64_t high = ~a.high + (low == 0 ? 1u : 0u);
    struct msl_wide result = { (int64_t)high, low };
    return result;
}

static struct msl_wide with_sign(struct limbs a, int negative)
{
    if (negative)
        return negated(a);
    struct msl_wide result = { (int64_t)a.high, a.low };
    return result;
}

static struct limbs magnitude_wide(struct msl_wide a)
{
    struct limbs limbs = { (uint64_t)a.high, a.low };
    if (a.high >= 0)
        return limbs;
    struct msl_wide turned = negated(limbs);
    limbs.high = (uint64_t)turned.high;
    limbs.low = turned.low;
    return limbs;
}

struct msl_wide msl_wide_from(int64_t a)
{
    struct msl_wide result = { a < 0 ? -1 : 0, (uint64_t)a };
    return result;
}

struct msl_wide msl_wide_multiply(int64_t a, int64_t b)
{
    return with_sign(multiply_limbs(magnitude(a), magnitude(b)), (a < 0) != (b < 0));
}

struct msl_wide msl_wide_add(struct msl_wide a, struct msl_wide b)
{
    uint64_t low = a.low + b.low;
    uint64_t carry = low < a.low ? 1u : 0u;
    struct msl_wide sum = { (int64_t)((uint64_t)a.high + (uint64_t)b.high + carry), low };
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
    msl_want_between(check, MUSLIN_ARG_TOLERANCE, into->tolerance, 0, into->grid - 1);
    msl_want_choice(check, MUSLIN_ARG_DIRECTION, into->direction, MUSLIN_ROUND_UP, MUSLIN_ROUND_NEAREST);
}

/* a / divisor by shift and subtract, bit by bit; *rest gets what is left. Divisor is below 2^63, so the running rest
 * doubled still fits. */
static struct limbs divide_limbs(struct limbs a, uint64_t divisor, uint64_t *rest)
{
    struct limbs quotient = { 0, 0 };
    uint64_t left = 0;
    for (int bit = 127; bit >= 0; bit--) {
        uint64_t next = bit >= 64 ? a.high >> (bit - 64) & 1 : a.low >> bit & 1;
        left = left << 1 | next;
        quotient.high = quotient.high << 1 | quotient.low >> 63;
        quotient.low <<= 1;
        if (left >= divisor) {
            left -= divisor;
            quotient.low |= 1;
        }
    }
    *rest = left;
    return quotient;
}

int msl_wide_floor(struct msl_wide numerator, int64_t denominator, int64_t *floor, int64_t *rest)
{
    const uint64_t limit = MSL_FLOOR_MAX;
    uint64_t left;
    struct limbs quotient = divide_limbs(magnitude_wide(numerator), (uint64_t)denominator, &left);
    if (quotient.high != 0 || quotient.low > limit)
        return 0;
    *floor = (int64_t)quotient.low;
    *rest = (int64_t)left;
    if (numerator.high >= 0)
        return 1;
    *floor = left == 0 ? -*floor : -*floor - 1;
    *rest = left == 0 ? 0 : denominator - *rest;
    return 1;
}

/* a brought down to a multiple of grid. */
static int64_t floor_to_grid(int64_t a, int64_t grid)
{
    int64_t over = a % grid;
    return over < 0 ? a - over - grid : a - over;
}

/* The grid point that `rounding` asks for. */
static int64_t grid_point(struct msl_exact exact, const struct muslin_rounding_spec *rounding)
{
    int64_t grid = rounding->grid;
    int64_t ceiling = exact.on_tick ? exact.floor : exact.floor + 1;
    int64_t low = floor_to_grid(exact.floor, grid);
    int64_t twice_ahead = 2 * (exact.floor - low) + (exact.upper_half ? 1 : 0);
    switch (rounding->direction) {
    case MUSLIN_ROUND_UP:
        return floor_to_grid(ceiling - rounding->tolerance + grid - 1, grid);
    case MUSLIN_ROUND_DOWN:
        return floor_to_grid(exact.floor + rounding->tolerance, grid);
    default:
        return twice_ahead >= grid ? low + grid : low;
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

muslin_status msl_wide_round(struct msl_wide numerator, int64_t denominator,
                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out)
{
    struct msl_exact exact;
    int64_t rest;
    if (!msl_wide_floor(numerator, denominator, &exact.floor, &rest))
        return MUSLIN_ERR_OVERFLOW;
    exact.on_tick = rest == 0;
    exact.upper_half = rest >= denominator - rest;
    return msl_grid_round(exact, rounding, out);
}
