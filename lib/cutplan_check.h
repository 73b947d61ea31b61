/* cutplan_check.h - a plan and its bound proved anew.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_CHECK_H
#define MUSLIN_CUTPLAN_CHECK_H

#include "cutplan_inside.h"
#include "muslin/cutplan.h"
#include "told.h"

/* Steps that the public check may take. */
#define MSL_CHECK_STEPS_MAX (INT64_C(1) << 40)

/* Sets cost, least, cases, fault and at of *out; the rest stays. `at` is the number of the size that is missing, of the
 * strip that is overfull, of what lies too high, of the pattern or stock that costs otherwise, of the case; of what is
 * within the plan's own arrays. Tells cases, all and those proved. MUSLIN_ERR_NO_MEMORY; MUSLIN_ERR_WORK_LIMIT: after
 * most_steps, or where more than 2^20 sums would be kept at once; MUSLIN_ERR_STOPPED: it was ended when it told. */
muslin_status msl_found_check(const struct msl_cutting *cutting, const struct msl_found *found, int64_t most_steps,
                              struct msl_told *told, const struct muslin_allocator *allocator,
                              struct muslin_cutplan_checked *out);

/* What the problem says of a check without an answer. */
muslin_status msl_check_fails(struct msl_check *check, muslin_status status);

#endif
