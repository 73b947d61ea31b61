/* cutplan_first.h - plans in the making: the first ones, fractions rounded down and filled up, and the best so far.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_FIRST_H
#define MUSLIN_CUTPLAN_FIRST_H

#include "cutplan_master.h"
#include "cutplan_price.h"

/* A pattern of a plan. */
struct msl_plan_row {
    int64_t times;
    int32_t pattern;
    int32_t pad;
};

struct msl_plan {
    struct msl_plan_row *rows;
    int64_t cost;
    int32_t count;
    int32_t most;
};

struct msl_making {
    const struct msl_cutting *cutting;
    struct msl_pool *pool;
    struct msl_pricing *pricing;
    int64_t *wanted;      /* of each size */
    int64_t *left;        /* still to be cut for the plan in the making, of each size; below 0: surplus */
    int64_t *offered;     /* scratch, of each size: what pricing may take, */
    int64_t *worth;       /* plain worths, */
    int32_t *sizes;       /* what lies in a strip, */
    int32_t *counts;
    int32_t *order;       /* and the order of sizes */
    int64_t *in_hand;     /* of each stock, for the plan in the making */
    struct msl_plan plan; /* in the making; its cost is that of its rows */
    struct msl_plan best; /* its cost is what a better one must be below, also where it has no rows */
    int64_t first_steps;  /* of pricing, for first plans; after these they are filled in plainly */
    int64_t plain_from;   /* steps from which on that is so; 0: never */
    int32_t mark[3];      /* what the pool had when the plan was begun */
};

/* Begins a plan. */
void msl_plan_begin(struct msl_making *making);

/* Puts so many of a pattern into the plan. Returns 0 where the plan has no room. */
int msl_plan_put(struct msl_making *making, int32_t pattern, int64_t times);

/* One less of a row. */
void msl_plan_take_one(struct msl_making *making, int32_t row);

/* Takes the last rows out again, so that so many are left. */
void msl_plan_cut_back(struct msl_making *making, int32_t rows);

/* How often a pattern can be cut before it holds more of a size than is left, or stock runs out; 1 at least. */
int64_t msl_plan_times(struct msl_making *making, int32_t pattern);

/* Fills in what is left: again and again the pattern that is worth most for its cost; plainly, a piece of stock with
 * the first sizes that are left. Returns 0 where that does not come out below the best cost, or not at all. */
int msl_plan_fill(struct msl_making *making, const int64_t *worth);

/* Ends a plan in which nothing is left: surplus is dropped where the strip gets lower, and the plan is kept where it
 * costs less than the best one; else its new patterns go. Returns 1 when it is kept. */
int msl_plan_end(struct msl_making *making, int complete);

/* 1 when some way is a panel or a piece of stock. */
int msl_has_sheets(const struct msl_cutting *cutting);

/* A pattern of so many sizes, which are in making->sizes and counts, in one strip of a bolt; of a panel that is what is
 * slit, and a strip beside it. Returns -1 where the pool is full. */
int32_t msl_plan_add_strip(struct msl_making *making, int32_t way, int32_t count);

/* First plans: each size in its own strips, then by height in two ways, with strips of one height and of several; with
 * panels cut like strips. Of panels, from stock, or where a size fits no strip, filled by area, too. */
void msl_plan_first(struct msl_making *making);

/* The master's levels rounded down, after `more` of 64 is added to each, and what is then left filled in by its
 * worths. Returns 1 when the plan is kept. */
int msl_plan_round(struct msl_making *making, const struct msl_master *master, int64_t more);

#endif
