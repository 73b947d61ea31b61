/* root.h - square roots of whole numbers, rounded in a direction that is right.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_ROOT_H
#define MUSLIN_ROOT_H

#include "inside.h"

/* The greatest r with r x r <= n; *rest (may be null) gets n - r x r. */
/*@ requires rest == \null || \valid(rest);
  @ assigns *rest;
  @ ensures \result <= UINT32_MAX;
  @ ensures \result * \result <= n < (\result + 1) * (\result + 1);
  @ ensures rest != \null ==> *rest == n - \result * \result; */
uint64_t msl_root(uint64_t n, uint64_t *rest);

/* sqrt(n) / divisor, divisor above 0, rounded once as `rounding`, already checked, asks. Sets every member of *out but
 * size and flags. */
void msl_root_round(uint64_t n, int64_t divisor, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out);

#endif
