/* whole.c - sums of whole numbers that several modules need.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

int64_t msl_divided_up(int64_t a, int64_t b)
{
    return a / b + (a % b != 0);
}

/* Euclid's way. */
int64_t msl_common_divisor(int64_t a, int64_t b)
{
    /*@ loop invariant 0 <= a && 0 <= b && (0 < a || 0 < b);
      @ loop assigns a, b;
      @ loop variant b; */
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}
