/* yardage_inside.h - what the two files of yardage share: the request, and how a row of the cut list is cut from cloth.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_YARDAGE_INSIDE_H
#define MUSLIN_YARDAGE_INSIDE_H

#include "muslin/yardage.h"

#include "cutplan_request.h"
#include "solution_inside.h"

/* Reads and checks a spec. */
void msl_read_yardage_spec(struct msl_check *check, struct muslin_yardage_spec *into,
                           const struct muslin_yardage_spec *from);

/* What it says of the plan of a fabric that is so wide. */
struct muslin_cutplan_spec msl_plan_spec_of(const struct muslin_yardage_spec *in, muslin_len usable_width,
                                            int32_t print);

/* What it says of the purchase of so much cloth. */
struct muslin_purchase_spec msl_purchase_spec_of(const struct muslin_yardage_spec *in, muslin_len needed);

/* The rows of the cut list that are of a fabric: the first of them, and how many. */
struct msl_span {
    uint64_t first;
    uint64_t count;
};
struct msl_span msl_cuts_of(const struct muslin_solution *solution, uint32_t fabric);

/* Row `row` of the cut list, as a plan asks for it. */
struct muslin_blank_spec msl_blank_of_cut(const struct muslin_solution *solution, uint64_t row,
                                          const struct muslin_yardage_spec *in);

#endif
