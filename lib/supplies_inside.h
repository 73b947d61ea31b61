/* supplies_inside.h - what the files of supplies share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SUPPLIES_INSIDE_H
#define MUSLIN_SUPPLIES_INSIDE_H

#include "muslin/supplies.h"

#include "wide.h"

/* numerator / denominator (above 0) rounded once to a multiple of `step` (1 .. MUSLIN_SIZE_MAX) in a direction already
 * checked: *out gets it, and *exact, which may be null, 1 when nothing was lost. MUSLIN_ERR_OVERFLOW beyond
 * +-MUSLIN_LENGTH_MAX; nothing is written then. */
muslin_status msl_share_out(struct msl_wide numerator, int64_t denominator, int64_t step, int32_t direction,
                            int64_t *out, int32_t *exact);

/* The step, in thousandths, of a number with 0 to 3 decimals. */
int64_t msl_step_of(int32_t decimals);


#endif
