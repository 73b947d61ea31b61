/* rounds_inside.h - what the files of this module share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_ROUNDS_INSIDE_H
#define MUSLIN_ROUNDS_INSIDE_H

#include "inside.h"
#include "muslin/rounds.h"
#include "surd.h"

/* m: what a seam takes. Both are in range, so it is at most 3 x 2^27. */
static inline muslin_len msl_taken(muslin_len allowance, muslin_len take_up)
{
    return 2 * allowance + take_up;
}

void msl_want_seams(struct msl_check *check, muslin_len allowance, muslin_len take_up);

/* The value rounded once; *error gets what its member promises. For values within 2^40, which no grid brings out of a
 * length's range. */
muslin_len msl_round_once(const struct msl_surd *exact, const struct muslin_rounding_spec *how, muslin_len *error);

/* The same for a whole number over a divisor, 1 .. MUSLIN_COUNT_MAX. */
muslin_len msl_divide_once(muslin_len whole, int64_t divisor, const struct muslin_rounding_spec *how,
                           muslin_len *error);

#endif
