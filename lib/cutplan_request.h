/* cutplan_request.h - what yardage asks of cutting plans beyond their public calls.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_REQUEST_H
#define MUSLIN_CUTPLAN_REQUEST_H

#include "muslin/cutplan.h"

#include "inside.h"

/* Checks the members of a spec, and of a row of pieces. */
void msl_want_plan_spec(struct msl_check *check, const struct muslin_cutplan_spec *in, int has_stock);
void msl_want_blank(struct msl_check *check, const struct muslin_blank_spec *piece);

/* 1 when some piece lies turned a quarter from what its row says. */
int32_t msl_some_are_turned(const struct muslin_cutplan *plan);

#endif
