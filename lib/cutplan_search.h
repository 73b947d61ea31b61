/* cutplan_search.h - the search for a cutting plan: its memory.
 *
 * SPDX-License-Identifier: MIT
 *
 * msl_cutplan_search() is declared in cutplan_inside.h. */
#ifndef MUSLIN_CUTPLAN_SEARCH_H
#define MUSLIN_CUTPLAN_SEARCH_H

#include "cutplan_deal.h"
#include "cutplan_repair.h"

/* All that a search works with, but for what it hands out at its end. */
struct msl_workshop {
    struct msl_search whole;
    struct msl_repair repair;
    struct msl_master master;
    struct msl_pricing pricing;
    struct msl_reach reach;
    struct msl_packing packing;
    struct msl_stock_deal deal;
    const struct muslin_allocator *allocator;
    size_t bytes;       /* of the block that this struct begins */
    int32_t has_master; /* 0: too many sizes or ways for more than first plans */
    int32_t has_sheets;
    int32_t none;       /* 1: it was shown that there is no plan */
};

/* Takes the memory. Null where it is not had. */
struct msl_workshop *msl_workshop_open(const struct msl_cutting *cutting, const struct msl_watch *watch,
                                       const struct muslin_allocator *allocator);
void msl_workshop_close(struct msl_workshop *workshop);

/* Searches, once. */
void msl_workshop_search(struct msl_workshop *workshop);

/* Copies plan and cases out of it, and closes it. Without a plan MUSLIN_ERR_NOT_ENOUGH, or _WORK_LIMIT, see
 * msl_cutplan_search(). */
muslin_status msl_hand_out(struct msl_workshop *workshop, struct msl_found *out);

#endif
