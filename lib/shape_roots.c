/* shape_roots.c - sums with two square roots in them, compared and rounded exactly.
 *
 * SPDX-License-Identifier: MIT */
#include "shape_roots.h"

/* ---- long whole numbers ----------------------------------------------------------------------------------------- */

struct msl_big msl_big_of(struct msl_wide number)
{
    struct msl_big big = { { 0 }, number.high < 0 ? -1 : number.high > 0 || number.low > 0 };
    uint64_t high = (uint64_t)number.high;
    uint64_t low = number.low;
    if (big.sign < 0) {
        high = ~high + (low == 0);
        low = ~low + 1;
    }
    big.limbs[0] = (uint32_t)low;
    big.limbs[1] = (uint32_t)(low >> 32);
    big.limbs[2] = (uint32_t)high;
    big.limbs[3] = (uint32_t)(high >> 32);
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
void msl_big_multiply(struct msl_big *product, const struct msl_big *a, const struct msl_big *b)
{
    const struct msl_big none = { { 0 }, a->sign * b->sign };
    int32_t used_a = limbs_of(a);
    int32_t used_b = limbs_of(b);
    *product = none;
    for (int32_t i = 0; i < used_a; i++) {
        uint64_t carry = 0;
        for (int32_t j = 0; j < used_b || carry != 0; j++) {
            carry += product->limbs[i + j] + (uint64_t)a->limbs[i] * b->limbs[j];
            product->limbs[i + j] = (uint32_t)carry;
            carry >>= 32;
        }
    }
}

static int32_t compare_sizes(const struct msl_big *a, const struct msl_big *b)
{
    for (int32_t i = MSL_BIG_LIMBS - 1; i >= 0; i--)
        if (a->limbs[i] != b->limbs[i])
            return a->limbs[i] < b->limbs[i] ? -1 : 1;
    return 0;
}

/* a becomes |a| + |b|, with the sign of a. */
static void add_size(struct msl_big *a, const struct msl_big *b)
{
    uint64_t carry = 0;
    for (int32_t i = 0; i < MSL_BIG_LIMBS; i++) {
        carry += (uint64_t)a->limbs[i] + b->limbs[i];
        a->limbs[i] = (uint32_t)carry;
        carry >>= 32;
    }
}

void msl_big_subtract(struct msl_big *a, const struct msl_big *b)
{
    uint64_t borrow = 0;
    a->sign = compare_sizes(a, b);
    const struct msl_big *larger = a->sign < 0 ? b : a;
    const struct msl_big *smaller = a->sign < 0 ? a : b;
    for (int32_t i = 0; i < MSL_BIG_LIMBS; i++) {
        uint64_t limb = (uint64_t)larger->limbs[i] - smaller->limbs[i] - borrow;
        a->limbs[i] = (uint32_t)limb;
        borrow = limb >> 63;
    }
}

struct msl_wide msl_wide_cross(int64_t a, int64_t b, int64_t c, int64_t d)
{
    return msl_wide_add(msl_wide_multiply(a, b), msl_wide_multiply(-c, d));
}

/* ---- roots ------------------------------------------------------------------------------------------------------ */

/* a^2 with the sign of a. */
static void square_of(struct msl_big *square, const struct msl_big *a)
{
    msl_big_multiply(square, a, a);
    square->sign = a->sign;
}

void msl_big_root(struct msl_big *root, const struct msl_big *p, const struct msl_big *under)
{
    struct msl_big p_squared;
    square_of(&p_squared, p);
    msl_big_multiply(root, &p_squared, under);
}

static void lengthen(struct msl_big *into, const struct msl_root *root)
{
    struct msl_big p = msl_big_of(root->p);
    struct msl_big under = msl_big_of(root->under);
    msl_big_root(into, &p, &under);
}

/* The sign of one root and another. */
static int32_t sign_of_roots(const struct msl_big *first, const struct msl_big *second)
{
    if (first->sign * second->sign >= 0)
        return first->sign != 0 ? first->sign : second->sign;
    return compare_sizes(first, second) * first->sign;
}

int32_t msl_big_sign(const struct msl_big *whole, const struct msl_big *root)
{
    struct msl_big whole_squared;
    square_of(&whole_squared, whole);
    return sign_of_roots(&whole_squared, root);
}

int32_t msl_root_sign(struct msl_wide whole, const struct msl_root *root)
{
    struct msl_big big = msl_big_of(whole);
    struct msl_big big_root;
    lengthen(&big_root, root);
    return msl_big_sign(&big, &big_root);
}

/* The sign of whole + first + second. Where the roots' sum and the whole number pull different ways, the one with the
 * larger square wins. (a + b)^2 - w^2 is a^2 + b^2 - w^2 + 2 a b: a whole number and one more root. */
static int32_t sign_of_sum(const struct msl_big *whole, const struct msl_big *first, const struct msl_big *second)
{
    int32_t roots = sign_of_roots(first, second);
    if (roots * whole->sign >= 0)
        return roots != 0 ? roots : whole->sign;
    struct msl_big rest = *first;
    struct msl_big other;
    msl_big_multiply(&other, whole, whole);
    add_size(&rest, second);
    msl_big_subtract(&rest, &other);
    msl_big_multiply(&other, first, second);
    add_size(&other, &other);
    add_size(&other, &other);
    return msl_big_sign(&rest, &other) * roots;
}

/* The sum, its numbers long. */
struct big_sum {
    int64_t whole;
    struct msl_big first;
    struct msl_big second;
    struct msl_big divisor;
};

/* The sign of the sum less a number of half ticks. */
static int32_t sign_against(const struct big_sum *sum, int64_t number)
{
    struct msl_big more = msl_big_of(msl_wide_from(sum->whole - number));
    struct msl_big whole;
    msl_big_multiply(&whole, &sum->divisor, &more);
    return sign_of_sum(&whole, &sum->first, &sum->second) * sum->divisor.sign;
}

struct msl_exact msl_sum_exact(const struct msl_root_sum *sum)
{
    struct msl_exact exact;
    struct big_sum big;
    big.whole = sum->whole;
    lengthen(&big.first, &sum->first);
    lengthen(&big.second, &sum->second);
    big.divisor = msl_big_of(sum->divisor);
    int64_t low = -MSL_SUM_REACH;
    int64_t above = MSL_SUM_REACH;
    while (above - low > 1) {
        int64_t middle = low + (above - low) / 2;
        if (sign_against(&big, middle) >= 0)
            low = middle;
        else
            above = middle;
    }
    exact.upper_half = low % 2 != 0;
    exact.floor = (low - exact.upper_half) / 2;
    exact.on_tick = !exact.upper_half && sign_against(&big, low) == 0;
    return exact;
}
