/* shape_roots.h - sums with two square roots in them, compared and rounded exactly.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where two moved edges meet, a coordinate is (w + p sqrt(m) + q sqrt(n)) / d in whole numbers. Its sign against any
 * whole number is found by squaring twice, so no root is ever drawn. From the ranges of shape.h the two roots stay
 * below 2^104, and w and the multiples of d that it is compared with below 2^110: the numbers on the way need 450
 * bits. */
#ifndef MUSLIN_SHAPE_ROOTS_H
#define MUSLIN_SHAPE_ROOTS_H

#include "wide.h"

enum { MSL_BIG_LIMBS = 16 };

/* A whole number within +-(2^512 - 1): 32-bit limbs, lowest first. The sign is -1, 0 or 1. */
struct msl_big {
    uint32_t limbs[MSL_BIG_LIMBS];
    int32_t sign;
};

struct msl_big msl_big_of(struct msl_wide number);
/* a x b, written apart from both. */
void msl_big_multiply(struct msl_big *product, const struct msl_big *a, const struct msl_big *b);
/* a becomes a - b; neither is below 0. */
void msl_big_subtract(struct msl_big *a, const struct msl_big *b);

/* The root p sqrt(under), kept as its square p^2 under with the sign of p. under is 0 or more. */
void msl_big_root(struct msl_big *root, const struct msl_big *p, const struct msl_big *under);

/* -1, 0 or 1: the sign of whole + root, which is kept as msl_big_root() gives it. */
int32_t msl_big_sign(const struct msl_big *whole, const struct msl_big *root);

/* p sqrt(under), both below 2^126. */
struct msl_root {
    struct msl_wide p;
    struct msl_wide under;
};

/* -1, 0 or 1: the sign of whole + root. */
int32_t msl_root_sign(struct msl_wide whole, const struct msl_root *root);

/* whole + (first + second) / divisor, divisor not 0, in half ticks. */
struct msl_root_sum {
    int64_t whole;
    struct msl_root first;
    struct msl_root second;
    struct msl_wide divisor;
};

/* a x b - c x d */
struct msl_wide msl_wide_cross(int64_t a, int64_t b, int64_t c, int64_t d);

/* How far a value may lie from 0, in half ticks; beyond it the answer stops there. */
#define MSL_SUM_REACH (INT64_C(1) << 26)

/* The value as far as rounding to ticks needs to know it. */
struct msl_exact msl_sum_exact(const struct msl_root_sum *sum);

#endif
