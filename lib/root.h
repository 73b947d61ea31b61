/* root.h - square roots of whole numbers, rounded in a direction that is right.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_ROOT_H
#define MUSLIN_ROOT_H

#include "wide.h"

/* The greatest r with r x r <= n; *rest (may be null) gets n - r x r. */
/*@ requires rest == \null || \valid(rest);
  @ assigns *rest;
  @ ensures \result <= UINT32_MAX;
  @ ensures \result * \result <= n < (\result + 1) * (\result + 1);
  @ ensures rest != \null ==> *rest == n - \result * \result; */
uint64_t msl_root(uint64_t n, uint64_t *rest);

/*@ axiomatic squares {
      logic integer square(integer a);
      axiom square_is_product: \forall integer a; square(a) == a * a;
    }
  @ lemma squares_keep_order: \forall integer a, b; 0 <= a <= b ==> square(a) <= square(b);
  @ lemma squares_grow: \forall integer a, b; 0 <= a < b ==> square(a) < square(b);
  @ predicate is_root_over(struct msl_exact e, integer n, integer d) = // sqrt(n) / d, compared by squares
  @         square(e.floor * d) <= n < square((e.floor + 1) * d) && (e.on_tick != 0 <==> n == square(e.floor * d)) &&
  @         (e.upper_half != 0 <==> square((2 * e.floor + 1) * d) <= 4 * n); */

/* sqrt(n) / divisor, divisor above 0, rounded once as `rounding`, already checked, asks. Sets every member of *out but
 * size and flags. */
/*@ requires 0 < divisor && \valid_read(rounding) && \valid(out) && \separated(rounding, out) && is_rounding(*rounding);
  @ assigns out->value, out->error, out->exact, out->on_tick;
  @ ensures \exists struct msl_exact e; is_root_over(e, n, divisor) && is_point(out->value, e, *rounding) &&
  @         out->error == out->value - ceiling_of(e) && out->on_tick == e.on_tick &&
  @         (out->exact != 0 <==> e.on_tick != 0 && out->value == e.floor); */
void msl_root_round(uint64_t n, int64_t divisor, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out);

#endif
