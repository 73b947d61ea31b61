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

struct msl_big msl_big_of(int64_t number);
struct msl_big msl_big_multiply(struct msl_big a, struct msl_big b);
struct msl_big msl_big_add(struct msl_big a, struct msl_big b);
struct msl_big msl_big_subtract(struct msl_big a, struct msl_big b);
/* a x b, a x b - c x d */
struct msl_big msl_big_product(int64_t a, int64_t b);
struct msl_big msl_big_cross(int64_t a, int64_t b, int64_t c, int64_t d);

/* The root p sqrt(under), kept as its square p^2 under with the sign of p. under is 0 or more. */
struct msl_big msl_big_root(struct msl_big p, struct msl_big under);

/* -1, 0 or 1: the sign of whole + first + second, two roots kept as msl_big_root() gives them. */
int32_t msl_sum_sign(struct msl_big whole, struct msl_big first, struct msl_big second);

/* (whole + first + second) / divisor, divisor not 0, in half ticks. */
struct msl_root_sum {
    struct msl_big whole;
    struct msl_big first;
    struct msl_big second;
    struct msl_big divisor;
};

/* How far a value may lie from 0, in half ticks; beyond it the answer stops there. */
#define MSL_SUM_REACH (INT64_C(1) << 26)

/* The value as far as rounding to ticks needs to know it. */
struct msl_exact msl_sum_exact(const struct msl_root_sum *sum);

#endif
