/* whole.c - sums of whole numbers that several modules need.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

int64_t msl_divided_up(int64_t a, int64_t b)
{
    return a / b + (a % b != 0);
}

/* No value is compared: all their distances from the least one are laid over each other, which a compiler does for
 * several at a time. */
int msl_all_within(const int64_t *values, size_t n, int64_t least, int64_t span)
{
    uint64_t bits = 0;
    for (size_t i = 0; i < n; i++)
        bits |= (uint64_t)values[i] - (uint64_t)least;
    return bits < (uint64_t)span;
}

size_t msl_block_end(size_t first, size_t n)
{
    const size_t block = 512;
    return n - first < block ? n : first + block;
}

/* Euclid's way. */
int64_t msl_common_divisor(int64_t a, int64_t b)
{
    /*@ loop invariant 0 <= a && 0 <= b && (0 < a || 0 < b);
      @ loop invariant \forall integer d; divides(d, a) && divides(d, b) ==>
      @         divides(d, \at(a, Pre)) && divides(d, \at(b, Pre));
      @ loop assigns a, b;
      @ loop variant b; */
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}
