/* cutplan_repair.h - parts of a plan planned anew.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_REPAIR_H
#define MUSLIN_CUTPLAN_REPAIR_H

#include "cutplan_case.h"

struct msl_repair {
    struct msl_search part;     /* the search for a better part */
    struct msl_cutting cutting; /* what it searches in */
    int32_t *size_of;           /* of each of its sizes: that of the whole */
    int32_t *way_of;            /* of each of its ways */
    uint64_t chance;            /* equally so on every machine */
    int64_t tries;
};

/* Takes some strips of the best plan out and plans their pieces anew. Returns 1 when the plan gets better. */
int msl_repair(struct msl_search *search, struct msl_repair *repair);

/* Plans all of it with panels cut like one strip, for a bolt without stacks: a far smaller search. Returns 1 when that
 * plan is better than the best. */
int msl_repair_across(struct msl_search *search, struct msl_repair *repair);

/* Begins a plan with the master's levels, rounded by chance, where there are sheets of those alone, and plans the rest
 * anew. The levels are those of the case that was solved last. Returns 1 when that plan is better than the best. */
int msl_repair_rounded(struct msl_search *search, struct msl_repair *repair);

#endif
