/* shape_roots.c - sums with two square roots in them, compared and rounded exactly.
 *
 * SPDX-License-Identifier: MIT */
#include "shape_roots.h"

/* ---- long whole numbers ----------------------------------------------------------------------------------------- */

struct msl_big msl_big_of(int64_t number)
{
    struct msl_big big = { { 0 }, 0 };
    uint64_t size = number < 0 ? (uint64_t)0 - (uint64_t)number : (uint64_t)number;
    big.limbs[0] = (uint32_t)size;
    big.limbs[1] = (uint32_t)(size >> 32);
    big.sign = number < 0 ? -1 : number > 0;
    return big;
}

/* How many limbs are in use. */
static int32_t limbs_of(const struct msl_big *a)
{
    int32_t used = MSL_BIG_LIMBS;
    while (used > 0 && a->limbs[used - 1] == 0)
        used--;
    return used;
}

/* Schoolbook. A limb's product, what stands there and the carry together fit 64 bits exactly. */
struct msl_big msl_big_multiply(struct msl_big a, struct msl_big b)
{
    struct msl_big product = { { 0 }, a.sign * b.sign };
    int32_t used_a = limbs_of(&a);
    int32_t used_b = limbs_of(&b);
    for (int32_t i = 0; i < used_a; i++) {
        uint64_t carry = 0;
        for (int32_t j = 0; j < used_b || carry != 0; j++) {
            carry += product.limbs[i + j] + (uint64_t)a.limbs[i] * b.limbs[j];
            product.limbs[i + j] = (uint32_t)carry;
            carry >>= 32;
        }
    }
    return product;
}

static int32_t compare_sizes(const struct msl_big *a, const struct msl_big *b)
{
    for (int32_t i = MSL_BIG_LIMBS - 1; i >= 0; i--)
        if (a->limbs[i] != b->limbs[i])
            return a->limbs[i] < b->limbs[i] ? -1 : 1;
    return 0;
}

/* |a| + |b|, with the sign of a. */
static struct msl_big sum_of_sizes(struct msl_big a, const struct msl_big *b)
{
    uint64_t carry = 0;
    for (int32_t i = 0; i < MSL_BIG_LIMBS; i++) {
        carry += (uint64_t)a.limbs[i] + b->limbs[i];
        a.limbs[i] = (uint32_t)carry;
        carry >>= 32;
    }
    return a;
}

/* |a| - |b|, which is above 0, with the sign of a. */
static struct msl_big difference_of_sizes(struct msl_big a, const struct msl_big *b)
{
    uint64_t borrow = 0;
    for (int32_t i = 0; i < MSL_BIG_LIMBS; i++) {
        uint64_t limb = (uint64_t)a.limbs[i] - b->limbs[i] - borrow;
        a.limbs[i] = (uint32_t)limb;
        borrow = limb >> 63;
    }
    return a;
}

struct msl_big msl_big_add(struct msl_big a, struct msl_big b)
{
    if (b.sign == 0)
        return a;
    if (a.sign == 0)
        return b;
    if (a.sign == b.sign)
        return sum_of_sizes(a, &b);
    int32_t larger = compare_sizes(&a, &b);
    if (larger == 0)
        return msl_big_of(0);
    return larger > 0 ? difference_of_sizes(a, &b) : difference_of_sizes(b, &a);
}

struct msl_big msl_big_subtract(struct msl_big a, struct msl_big b)
{
    b.sign = -b.sign;
    return msl_big_add(a, b);
}

struct msl_big msl_big_product(int64_t a, int64_t b)
{
    return msl_big_multiply(msl_big_of(a), msl_big_of(b));
}

struct msl_big msl_big_cross(int64_t a, int64_t b, int64_t c, int64_t d)
{
    return msl_big_subtract(msl_big_product(a, b), msl_big_product(c, d));
}

/* ---- roots ------------------------------------------------------------------------------------------------------ */

/* p^2 x under, with the sign of p. */
struct msl_big msl_big_root(struct msl_big p, struct msl_big under)
{
    struct msl_big root = msl_big_multiply(msl_big_multiply(p, p), under);
    root.sign *= p.sign;
    return root;
}

/* The sign of one root and another. */
static int32_t sign_of_roots(const struct msl_big *first, const struct msl_big *second)
{
    if (first->sign * second->sign >= 0)
        return first->sign != 0 ? first->sign : second->sign;
    return compare_sizes(first, second) * first->sign;
}

/* Where the roots' sum and the whole number pull different ways, the one with the larger square wins. (a + b)^2 - w^2
 * is a^2 + b^2 - w^2 + 2 a b: a whole number and one more root. */
int32_t msl_sum_sign(struct msl_big whole, struct msl_big first, struct msl_big second)
{
    int32_t roots = sign_of_roots(&first, &second);
    if (roots * whole.sign >= 0)
        return roots != 0 ? roots : whole.sign;
    struct msl_big squares = sum_of_sizes(first, &second);
    squares.sign = 1;
    struct msl_big rest = msl_big_subtract(squares, msl_big_multiply(whole, whole));
    struct msl_big rest_as_root = msl_big_root(rest, msl_big_of(1));
    struct msl_big twice = msl_big_multiply(msl_big_multiply(first, second), msl_big_of(4));
    return sign_of_roots(&rest_as_root, &twice) * roots;
}

/* The sign of the sum over its divisor, less a number of half ticks. */
static int32_t sign_against(const struct msl_root_sum *sum, int64_t number)
{
    struct msl_big less = msl_big_multiply(sum->divisor, msl_big_of(number));
    return msl_sum_sign(msl_big_subtract(sum->whole, less), sum->first, sum->second) * sum->divisor.sign;
}

struct msl_exact msl_sum_exact(const struct msl_root_sum *sum)
{
    struct msl_exact exact;
    int64_t low = -MSL_SUM_REACH;
    int64_t above = MSL_SUM_REACH;
    while (above - low > 1) {
        int64_t middle = low + (above - low) / 2;
        if (sign_against(sum, middle) >= 0)
            low = middle;
        else
            above = middle;
    }
    exact.upper_half = low % 2 != 0;
    exact.floor = (low - exact.upper_half) / 2;
    exact.on_tick = !exact.upper_half && sign_against(sum, low) == 0;
    return exact;
}
