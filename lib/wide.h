/* wide.h - 128-bit whole numbers in two limbs, for products of two 64-bit ones. No compiler's wide type is needed, so
 * results are the same on every target.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_WIDE_H
#define MUSLIN_WIDE_H

#include "inside.h"

/* Two's complement. */
struct msl_wide {
    int64_t high;
    uint64_t low;
};

/*@ logic integer wide_value(struct msl_wide a) = a.high * 0x10000000000000000 + a.low; */

/*@ assigns \nothing;
  @ ensures wide_value(\result) == a; */
struct msl_wide msl_wide_from(int64_t a);

/*@ assigns \nothing;
  @ ensures wide_value(\result) == a * b; */
struct msl_wide msl_wide_multiply(int64_t a, int64_t b);

/* a + b; the callers' ranges keep all three within +-2^126. */
/*@ requires \abs(a.high) <= 0x4000000000000000 - 1 && \abs(b.high) <= 0x4000000000000000 - 1;
  @ assigns \nothing;
  @ ensures wide_value(\result) == wide_value(a) + wide_value(b); */
struct msl_wide msl_wide_add(struct msl_wide a, struct msl_wide b);

/* -1, 0, 1. */
/*@ assigns \nothing;
  @ ensures \result == (wide_value(a) < wide_value(b) ? -1 : wide_value(a) > wide_value(b) ? 1 : 0); */
int32_t msl_wide_compare(struct msl_wide a, struct msl_wide b);

/* A rounding spec read and checked: size and flags right, grid, tolerance and direction in range. */
void msl_read_rounding(struct msl_check *check, struct muslin_rounding_spec *into,
                       const struct muslin_rounding_spec *from);

/* The largest quotient in ticks that may still be rounded into +-MUSLIN_LENGTH_MAX: one grid step beyond it. */
#define MSL_FLOOR_MAX (MUSLIN_LENGTH_MAX + MUSLIN_SIZE_MAX)

/* floor(numerator / denominator), denominator above 0, with the rest 0 .. denominator - 1. Returns 0, and writes
 * nothing, where that floor leaves -MSL_FLOOR_MAX - 1 .. MSL_FLOOR_MAX. */
/*@ requires 0 < denominator;
  @ requires \valid(floor) && \valid(rest) && \separated(floor, rest);
  @ assigns *floor, *rest;
  @ ensures \result == 0 || \result == 1;
  @ ensures \result == 1 ==> wide_value(numerator) == *floor * denominator + *rest && 0 <= *rest < denominator;
  @ ensures \result == 1 ==> -MSL_FLOOR_MAX - 1 <= *floor <= MSL_FLOOR_MAX;
  @ ensures \result == 0 ==> *floor == \old(*floor) && *rest == \old(*rest);
  @ ensures \result == 1 <==>
  @         -(MSL_FLOOR_MAX + 1) * denominator <= wide_value(numerator) < (MSL_FLOOR_MAX + 1) * denominator; */
int msl_wide_floor(struct msl_wide numerator, int64_t denominator, int64_t *floor, int64_t *rest);

/* An exact value as far as rounding needs to know it: its floor in ticks, from -MSL_FLOOR_MAX - 1 to MSL_FLOOR_MAX;
 * whether it is a whole number of ticks; whether its fraction of a tick is one half or more. */
struct msl_exact {
    int64_t floor;
    int32_t on_tick;
    int32_t upper_half;
};

/*@ logic integer ceiling_of(struct msl_exact e) = e.on_tick != 0 ? e.floor : e.floor + 1;
  @ logic integer twice_of(struct msl_exact e) = 2 * e.floor + (e.upper_half != 0 ? 1 : 0); // floor of twice the value
  @ predicate is_exact(struct msl_exact e, integer n, integer d) = // n / d
  @         e.floor * d <= n < (e.floor + 1) * d && (e.on_tick != 0 <==> n == e.floor * d) &&
  @         (e.upper_half != 0 <==> (2 * e.floor + 1) * d <= 2 * n);
  @ predicate is_rounding(struct muslin_rounding_spec r) =
  @         1 <= r.grid <= MUSLIN_SIZE_MAX && 0 <= r.tolerance < r.grid;
  @ predicate is_point(integer value, struct msl_exact e, struct muslin_rounding_spec r) =
  @         value % r.grid == 0 && (r.direction == MUSLIN_DIRECTION_UP ?
  @             value - r.grid < ceiling_of(e) - r.tolerance <= value :
  @         r.direction == MUSLIN_DIRECTION_DOWN ? value <= e.floor + r.tolerance < value + r.grid :
  @             2 * value - r.grid <= twice_of(e) < 2 * value + r.grid);
  @ predicate reaches(integer n, integer d, integer value) = value * d <= n; // n / d is value or more
  @ predicate reaches_halves(integer n, integer d, integer value) = value * d <= 2 * n;
  @ predicate stays_within(integer n, integer d, integer value) = n <= value * d; // n / d is value or less
  @ predicate is_point_near(integer value, integer n, integer d, struct muslin_rounding_spec r) =
  @         value % r.grid == 0 && (r.direction == MUSLIN_DIRECTION_UP ?
  @             stays_within(n, d, value + r.tolerance) && !stays_within(n, d, value - r.grid + r.tolerance) :
  @         r.direction == MUSLIN_DIRECTION_DOWN ?
  @             reaches(n, d, value - r.tolerance) && !reaches(n, d, value + r.grid - r.tolerance) :
  @             reaches_halves(n, d, 2 * value - r.grid) && !reaches_halves(n, d, 2 * value + r.grid));
  @ predicate is_quotient(integer value, integer n, integer d) = n == value * d; */

/* The exact value brought to the grid as `rounding`, already checked, asks. MUSLIN_ERR_OVERFLOW when the result leaves
 * +-MUSLIN_LENGTH_MAX; *out is then untouched. Sets every member of *out but size and flags. */
/*@ requires \valid_read(rounding) && \valid(out) && \separated(rounding, out) && is_rounding(*rounding);
  @ requires -MSL_FLOOR_MAX - 1 <= exact.floor <= MSL_FLOOR_MAX;
  @ requires exact.on_tick != 0 ==> exact.upper_half == 0;
  @ assigns out->value, out->error, out->exact, out->on_tick;
  @ ensures \result == MUSLIN_OK || \result == MUSLIN_ERR_OVERFLOW;
  @ ensures \result == MUSLIN_OK ==> is_point(out->value, exact, *rounding) && \abs(out->value) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_OK ==> out->error == out->value - ceiling_of(exact) && out->on_tick == exact.on_tick;
  @ ensures \result == MUSLIN_OK ==> (out->exact != 0 <==> exact.on_tick != 0 && out->value == exact.floor);
  @ ensures \result != MUSLIN_OK ==> *out == \old(*out);
  @ ensures \result != MUSLIN_OK ==>
  @         \exists integer value; is_point(value, exact, *rounding) && \abs(value) > MUSLIN_LENGTH_MAX; */
muslin_status msl_grid_round(struct msl_exact exact, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out);

/* numerator / denominator (above 0) rounded once as `rounding`, already checked, asks. MUSLIN_ERR_OVERFLOW when the
 * result leaves +-MUSLIN_LENGTH_MAX; *out is then untouched. Sets every member of *out but size and flags. */
/*@ requires \valid_read(rounding) && \valid(out) && \separated(rounding, out) && is_rounding(*rounding);
  @ requires 0 < denominator;
  @ assigns out->value, out->error, out->exact, out->on_tick;
  @ ensures \result == MUSLIN_OK || \result == MUSLIN_ERR_OVERFLOW;
  @ ensures \result == MUSLIN_OK ==> \abs(out->value) <= MUSLIN_LENGTH_MAX;
  @ ensures \result == MUSLIN_OK ==> is_point_near(out->value, wide_value(numerator), denominator, *rounding);
  @ ensures \result == MUSLIN_OK ==> (out->exact != 0 <==> is_quotient(out->value, wide_value(numerator), denominator));
  @ ensures \result != MUSLIN_OK ==> *out == \old(*out); */
muslin_status msl_wide_round(struct msl_wide numerator, int64_t denominator,
                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out);

#endif
