/* surd.h - values with a square root in them, (p +- sqrt n) / d, rounded once in a direction that is right.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every irrational size of a pieced unit is one of these: a diagonal, the cut leg of a triangle, a setting on point.
 * One radicand may be any whole number below 2^124, so a sum such as (a + b sqrt 2) / c is brought here by squaring b
 * into the radicand. */
#ifndef MUSLIN_SURD_H
#define MUSLIN_SURD_H

#include "wide.h"

/* (whole + sign x sqrt(radicand + sqrt(inner))) / divisor. */
struct msl_surd {
    int64_t whole;            /* within +-2^61 */
    int32_t sign;             /* -1 or 1; 0 leaves the root out */
    struct msl_wide radicand; /* 0 .. 2^123 - 1 */
    int64_t divisor;          /* 1 .. 2^31 */
    struct msl_wide inner;    /* 0 .. 2^121 - 1; mostly 0 */
};

/* (whole + root x sqrt(under)) / divisor, where root is within +-2^58 and under 0 .. 16. */
struct msl_surd msl_surd_of(int64_t whole, int64_t root, int64_t under, int64_t divisor);

/* The greatest r with r x r <= n (0 .. 2^126 - 1); *whole_root gets 1 when r x r is n, else 0. */
int64_t msl_wide_root(struct msl_wide n, int32_t *whole_root);

/* The floor of the value in ticks, whether it is a whole number of ticks, and which half of a tick it lies in. */
struct msl_exact msl_surd_exact(const struct msl_surd *surd);

/* The value rounded once as `rounding`, already checked, asks. MUSLIN_ERR_OVERFLOW when the result leaves
 * +-MUSLIN_LENGTH_MAX; *out is then untouched. Sets every member of *out but size and flags. */
muslin_status msl_surd_round(const struct msl_surd *surd, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out);

/* The floor and the ceiling of the value in ticks. */
int64_t msl_surd_floor(const struct msl_surd *surd);
int64_t msl_surd_ceiling(const struct msl_surd *surd);

#endif
