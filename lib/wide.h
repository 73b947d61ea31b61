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

struct msl_wide msl_wide_from(int64_t a);
struct msl_wide msl_wide_multiply(int64_t a, int64_t b);
/* a + b; the callers' ranges keep it below 2^127. */
struct msl_wide msl_wide_add(struct msl_wide a, struct msl_wide b);
/* -1, 0, 1. */
int32_t msl_wide_compare(struct msl_wide a, struct msl_wide b);

/* A rounding spec read and checked: size and flags right, grid, tolerance and direction in range. */
void msl_read_rounding(struct msl_check *check, struct muslin_rounding_spec *into,
                       const struct muslin_rounding_spec *from);

/* The largest quotient in ticks that may still be rounded into +-MUSLIN_LENGTH_MAX: one grid step beyond it. */
#define MSL_FLOOR_MAX (MUSLIN_LENGTH_MAX + MUSLIN_SIZE_MAX)

/* floor(numerator / denominator), denominator above 0, with the rest 0 .. denominator - 1. Returns 0, and writes nothing,
 * where the quotient's magnitude passes MSL_FLOOR_MAX. */
int msl_wide_floor(struct msl_wide numerator, int64_t denominator, int64_t *floor, int64_t *rest);

/* An exact value as far as rounding needs to know it: its floor in ticks, within +-MSL_FLOOR_MAX and one; whether it is a whole number of
 * ticks; whether its fraction of a tick is one half or more. */
struct msl_exact {
    int64_t floor;
    int32_t on_tick;
    int32_t upper_half;
};

/* The exact value brought to the grid as `rounding`, already checked, asks. MUSLIN_ERR_OVERFLOW when the result leaves
 * +-MUSLIN_LENGTH_MAX; *out is then untouched. Sets every member of *out but size and flags. */
muslin_status msl_grid_round(struct msl_exact exact, const struct muslin_rounding_spec *rounding,
                             struct muslin_rounded *out);

/* numerator / denominator (above 0) rounded once as `rounding`, already checked, asks. MUSLIN_ERR_OVERFLOW when the
 * result leaves +-MUSLIN_LENGTH_MAX; *out is then untouched. Sets every member of *out but size and flags. */
muslin_status msl_wide_round(struct msl_wide numerator, int64_t denominator,
                             const struct muslin_rounding_spec *rounding, struct muslin_rounded *out);

#endif
