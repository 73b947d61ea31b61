/* surd.h - values with a square root in them, (p +- sqrt n) / d, rounded once in a direction that is right.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every irrational size of a pieced unit is one of these: a diagonal, the cut leg of a triangle, a setting on point.
 * One radicand may be any whole number below 2^124, so a sum such as (a + b sqrt 2) / c is brought here by squaring b
 * into the radicand. */
#ifndef MUSLIN_SURD_H
#define MUSLIN_SURD_H

#include "root.h"

/* (whole + sign x sqrt(radicand + sqrt(inner))) / divisor. */
struct msl_surd {
    int64_t whole;            /* less than 2^61 away from 0; less than 2^60 where the radicand is 2^122 or more */
    int32_t sign;             /* -1 or 1; 0 leaves the root out */
    struct msl_wide radicand; /* 0 .. 2^123 - 1 */
    int64_t divisor;          /* 1 .. 2^31 */
    struct msl_wide inner;    /* 0 .. 2^121 - 1; mostly 0 */
};

/*@ // R = sqrt(r + sqrt(m)) beside a whole number, by squaring twice: R is x or more, and R is x or less.
  @ predicate root_reaches(integer x, integer r, integer m) =
  @         x <= 0 || square(x) <= r || square(square(x) - r) <= m;
  @ predicate root_within(integer x, integer r, integer m) =
  @         0 <= x && r <= square(x) && m <= square(square(x) - r);
  @ // The same of 2 R, which is sqrt(4 r + sqrt(16 m)), and of 2 (whole +- R).
  @ predicate twice_reaches(struct msl_surd s, integer x) =
  @         root_reaches(x, 4 * wide_value(s.radicand), 16 * wide_value(s.inner));
  @ predicate twice_within(struct msl_surd s, integer x) =
  @         root_within(x, 4 * wide_value(s.radicand), 16 * wide_value(s.inner));
  @ predicate sum_reaches(struct msl_surd s, integer y) = s.sign == 0 ? y <= 2 * s.whole :
  @         s.sign > 0 ? twice_reaches(s, y - 2 * s.whole) : twice_within(s, 2 * s.whole - y);
  @ predicate sum_within(struct msl_surd s, integer y) = s.sign == 0 ? 2 * s.whole <= y :
  @         s.sign > 0 ? twice_within(s, y - 2 * s.whole) : twice_reaches(s, 2 * s.whole - y);
  @ predicate surd_in_range(struct msl_surd s) = 1 <= s.divisor <= 0x80000000 &&
  @         0 <= wide_value(s.inner) < 0x2000000000000000000000000000000 &&
  @         (0 <= wide_value(s.radicand) < 0x4000000000000000000000000000000 && \abs(s.whole) < 0x2000000000000000 ||
  @          0 <= wide_value(s.radicand) < 0x8000000000000000000000000000000 && \abs(s.whole) < 0x1000000000000000);
  @ // The same of the value in ticks, which d divides: it is half of h or more, half of h or less.
  @ logic integer times(integer h, integer d) = h * d;
  @ predicate half_reaches(struct msl_surd s, integer d, integer h) = sum_reaches(s, times(h, d));
  @ predicate half_within(struct msl_surd s, integer d, integer h) = sum_within(s, times(h, d));
  @ predicate is_within(struct msl_surd s, integer d, integer v) = half_within(s, d, 2 * v); // v or less
  @ predicate is_surd_point(integer value, struct msl_surd s, integer d, struct muslin_rounding_spec r) =
  @         value % r.grid == 0 && (r.direction == MUSLIN_DIRECTION_UP ?
  @             is_within(s, d, value + r.tolerance) && !is_within(s, d, value - r.grid + r.tolerance) :
  @         r.direction == MUSLIN_DIRECTION_DOWN ? half_reaches(s, d, 2 * (value - r.tolerance)) &&
  @             !half_reaches(s, d, 2 * (value + r.grid - r.tolerance)) :
  @             half_reaches(s, d, 2 * value - r.grid) && !half_reaches(s, d, 2 * value + r.grid)); */

/* (whole + root x sqrt(under)) / divisor, where root is within +-2^58 and under 0 .. 16. */
struct msl_surd msl_surd_of(int64_t whole, int64_t root, int64_t under, int64_t divisor);

/* One without a root. */
static inline struct msl_surd msl_fraction_of(int64_t above, int64_t below)
{
    const struct msl_surd fraction = { .whole = above, .divisor = below };
    return fraction;
}

/* The greatest r with r x r <= n (0 .. 2^126 - 1); *whole_root gets 1 when r x r is n, else 0. */
/*@ requires 0 <= wide_value(n) < 0x40000000000000000000000000000000 && \valid(whole_root);
  @ assigns *whole_root;
  @ ensures 0 <= \result && square(\result) <= wide_value(n) < square(\result + 1);
  @ ensures *whole_root == (square(\result) == wide_value(n) ? 1 : 0); */
int64_t msl_wide_root(struct msl_wide n, int32_t *whole_root);

/* The floor of the value in ticks, whether it is a whole number of ticks, and which half of a tick it lies in. */
/*@ requires \valid_read(surd) && surd_in_range(*surd);
  @ assigns \nothing;
  @ ensures -0x4000000000000000 - 1 <= \result.floor < 0x4000000000000000;
  @ ensures \result.on_tick != 0 ==> \result.upper_half == 0;
  @ ensures \forall integer h; half_reaches(*surd, surd->divisor, h) <==> h <= twice_of(\result);
  @ ensures \forall integer v; is_within(*surd, surd->divisor, v) <==> ceiling_of(\result) <= v; */
struct msl_exact msl_surd_exact(const struct msl_surd *surd);

/* The value, which is far below MUSLIN_LENGTH_MAX, rounded once as `rounding`, already checked, asks. Sets every member
 * of *out but size and flags. */
/*@ requires \valid_read(surd) && surd_in_range(*surd) && \valid_read(rounding) && is_rounding(*rounding);
  @ requires \valid(out) && \separated(rounding, out) && \separated(surd, out);
  @ requires half_reaches(*surd, surd->divisor, -0x4000000000000000);
  @ requires !half_reaches(*surd, surd->divisor, 0x4000000000000000);
  @ assigns out->value, out->error, out->exact, out->on_tick;
  @ ensures is_surd_point(out->value, *surd, surd->divisor, *rounding);
  @ ensures out->exact != 0 <==> half_reaches(*surd, surd->divisor, 2 * out->value) &&
  @         is_within(*surd, surd->divisor, out->value);
  @ ensures is_within(*surd, surd->divisor, out->value - out->error);
  @ ensures !is_within(*surd, surd->divisor, out->value - out->error - 1); */
void msl_surd_round(const struct msl_surd *surd, const struct muslin_rounding_spec *rounding,
                    struct muslin_rounded *out);

/* The floor and the ceiling of the value in ticks. */
/*@ requires \valid_read(surd) && surd_in_range(*surd);
  @ assigns \nothing;
  @ ensures half_reaches(*surd, surd->divisor, 2 * \result) && !half_reaches(*surd, surd->divisor, 2 * \result + 2); */
int64_t msl_surd_floor(const struct msl_surd *surd);
/*@ requires \valid_read(surd) && surd_in_range(*surd);
  @ assigns \nothing;
  @ ensures is_within(*surd, surd->divisor, \result) && !is_within(*surd, surd->divisor, \result - 1); */
int64_t msl_surd_ceiling(const struct msl_surd *surd);

#endif
