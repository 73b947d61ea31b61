/* cutplan_knapsack.h - the pieces that are worth most in one strip.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_KNAPSACK_H
#define MUSLIN_CUTPLAN_KNAPSACK_H

#include "cutplan_inside.h"

/* A size on offer, of which at least one fits: run_in + taken is within the room. What fills the room stays below 2^61
 * in worth: room x (worth / taken + 1) does. */
struct msl_item {
    int64_t taken;  /* by each piece */
    int64_t run_in; /* once, before the first */
    int64_t worth;  /* of each piece, 1 or more */
    int64_t dense;  /* worth per length, down; msl_knapsack() finds it */
    int32_t most;   /* pieces, 1 or more, and no more than fit in the room */
    int32_t size;   /* the caller's own number of it */
};

/* What lies in the strip so far: `copies` of an item beside what lies in the state `from`. */
struct msl_state {
    int64_t taken;
    int64_t worth;
    int32_t from; /* -1: nothing */
    int16_t item;
    int16_t copies;
};

struct msl_knapsack {
    struct msl_state *states; /* room for most_states, 1 or more */
    int32_t most_states;
    int32_t used;
    int64_t steps; /* work done, ever */
};

/* The most that pieces in `room` can be worth, and which they are: their counts, by item, in `counts`. Items are put in
 * the order of their worth per length, of equal ones the longer first, then as they come. Only what is worth more than
 * `beat`, 0 or more, counts: without such a filling it returns beat and leaves counts alone. *bound is what no filling
 * passes; above what is returned only where the states did not suffice, and then as much of each as fits, in this
 * order, is worth no more than what is returned. */
int64_t msl_knapsack(struct msl_knapsack *sack, struct msl_item *items, int32_t count, int64_t room, int64_t beat,
                     int32_t *counts, int64_t *bound);

/* States first .. end - 1 of the arena. */
struct msl_stage {
    int32_t first;
    int32_t end;
};

/* All fillings of which none takes no more than another and is worth as much, from the empty one to the one that is
 * worth most; of those that take and are worth the same, the one with fewer of the later items. *complete is 0 where
 * the states did not suffice for them. */
struct msl_stage msl_knapsack_all(struct msl_knapsack *sack, struct msl_item *items, int32_t count, int64_t room,
                                  int *complete);
/* How many of each item lie in a state. */
void msl_knapsack_counts(const struct msl_knapsack *sack, int32_t state, int32_t count, int32_t *counts);

#endif
