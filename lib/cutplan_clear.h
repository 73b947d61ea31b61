/* cutplan_clear.h - room in the pool made, by dropping patterns that no case still builds on.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_CLEAR_H
#define MUSLIN_CUTPLAN_CLEAR_H

#include "cutplan_case.h"

/* Where the pool, or the room for bases, is nearly full: drops what no open case and no plan needs. Between cases only,
 * while no plan is in the making; patterns get other numbers. */
void msl_search_clear(struct msl_search *search);

#endif
