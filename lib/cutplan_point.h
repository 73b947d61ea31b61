/* cutplan_point.h - numbers with a point, for the master.
 *
 * SPDX-License-Identifier: MIT
 *
 * A number a stands for a / 2^point; the point is 33 .. 40. */
#ifndef MUSLIN_CUTPLAN_POINT_H
#define MUSLIN_CUTPLAN_POINT_H

#include <stdint.h>

/* The size of a number, of one below nothing less 1. */
static inline uint64_t msl_point_magnitude(int64_t a)
{
    return (uint64_t)(a ^ a >> 63);
}

/* a b / 2^point, rounded, a half up, where that is within +-2^62, and a and b are. */
static inline int64_t msl_point_times(int64_t a, int64_t b, int32_t point)
{
    const int64_t a_low = a & 0xffffffff;
    const int64_t b_low = b & 0xffffffff;
    const int64_t middle =
        (a >> 32) * b_low + a_low * (b >> 32) + (int64_t)((uint64_t)a_low * (uint64_t)b_low >> 32);
    return (a >> 32) * (b >> 32) * ((int64_t)1 << (64 - point)) +
           ((middle + ((int64_t)1 << (point - 33))) >> (point - 32));
}

/* Whether a b / 2^point is within +-2^61, roughly: where it says so that is true, and it says so up to 2^60. */
static inline int msl_point_fits(int64_t a, int64_t b, int32_t point)
{
    return (msl_point_magnitude(a) >> 30) * (msl_point_magnitude(b) >> 30) >> point == 0;
}

/* 2^(2 point) / a, towards nothing, bit by bit from what a word holds: a is within +-2^62, and what comes out is. */
static inline int64_t msl_point_reciprocal(int64_t a, int32_t point)
{
    const uint64_t top = (uint64_t)1 << 63;
    const uint64_t size = (uint64_t)(a < 0 ? -a : a);
    uint64_t part = top / size;
    uint64_t rest = top % size;
    for (int32_t bit = 63; bit < 2 * point; bit++) {
        rest *= 2;
        part = 2 * part + rest / size;
        rest %= size;
    }
    return a < 0 ? -(int64_t)part : (int64_t)part;
}

#endif
