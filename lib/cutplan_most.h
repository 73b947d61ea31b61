/* cutplan_most.h - what a thing of a way can be worth at most, found for the check and by nobody else.
 *
 * SPDX-License-Identifier: MIT
 *
 * Lists of sums: what pieces may take in all and the most that they are then worth, from no piece to those of which
 * nothing more fits. A list grows by one size at a time, and a sum stays in it where no other takes as little and is
 * worth as much. */
#ifndef MUSLIN_CUTPLAN_MOST_H
#define MUSLIN_CUTPLAN_MOST_H

#include "cutplan_inside.h"

/* Worths are counted up to here; what would be worth more is worth this. */
#define MSL_WORTH_MAX (MUSLIN_LENGTH_MAX - 1)

/* Sums kept at once; with more the check gives up. */
#define MSL_SUMS_MAX ((size_t)1 << 20)

struct msl_sum {
    int64_t taken;
    int64_t worth;
};

/* From the least taken, and worth more from each to the next. */
struct msl_sums {
    struct msl_sum *at;
    size_t count;
    size_t most;
};

/* What may be laid `most` times into some room. */
struct msl_offer {
    int64_t taken;  /* by each, 1 or more */
    int64_t run_in; /* once, before the first */
    int64_t worth;  /* of each, 1 or more */
    int64_t most;
};

struct msl_told;
struct msl_most {
    const struct msl_cutting *cutting;
    const struct muslin_allocator *allocator;
    struct msl_sums sums;     /* the list that grows, */
    struct msl_sums so_far;   /* ... it and some of the next offer, */
    struct msl_sums next;     /* ... and one more of it */
    struct msl_sums any_one;  /* of strips that hold one size only, those looked at so far */
    struct msl_sums slit;     /* of a panel's slit pieces */
    struct msl_sums strips;   /* the best strip of each height beside each of those; in no order */
    struct msl_offer *offers; /* what may be laid: sizes and stacks, or heights of strips */
    struct msl_offer *stacked; /* in the same block: what may lie in one stack */
    struct msl_told *told;
    int64_t steps;
    int64_t most_steps;
    int32_t first;            /* sizes first .. end - 1 are offered */
    int32_t end;
    muslin_status status;     /* the first failure; after it all answers mean nothing */
};

muslin_status msl_most_start(struct msl_most *most, const struct msl_cutting *cutting, int64_t most_steps,
                             struct msl_told *told, const struct muslin_allocator *allocator);
void msl_most_end(struct msl_most *most);
/* Counts steps. Notes MUSLIN_ERR_WORK_LIMIT where they are too many or the check was ended when it told of them. */
void msl_most_count(struct msl_most *most, int64_t steps);

/* The most that one thing of this way can be worth, 0 or more, where a piece of each size is worth that; where it is
 * not above `enough`, 0 or more, any number from there to `enough`. */
int64_t msl_most_of(struct msl_most *most, int32_t way, const int64_t *worth, int64_t enough);

struct msl_lying {
    int64_t taken;  /* along the strip; 0: it can't lie so */
    int64_t height;
};

/* How a piece lies in a strip of this height: the narrower way, or, where it can lie both ways, the other one. */
struct msl_lying msl_lying_in(const struct msl_piece_size *size, int64_t height, int32_t other_way);

/* a + b, up to MSL_WORTH_MAX; neither below 0 or above it. */
int64_t msl_most_added(int64_t a, int64_t b);

#endif
