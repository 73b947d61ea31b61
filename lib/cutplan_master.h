/* cutplan_master.h - how often to cut each known pattern, in fractions, and what each piece is then worth.
 *
 * SPDX-License-Identifier: MIT
 *
 * A linear program: rows are the limits, of what is wanted of each size, what stock there is, and what the case asks of
 * ways or of a size in a way; columns are the patterns of the pool. It may be inexact: what it says is only a proposal,
 * every bound is proved afterwards from whole-number worths. */
#ifndef MUSLIN_CUTPLAN_MASTER_H
#define MUSLIN_CUTPLAN_MASTER_H

#include "cutplan_inside.h"

/* What is in the basis, one for each row: a pattern 0 .., or the slack of row r as -1 - r; against = 1: with its column
 * reversed, at the price of what must not be. */
struct msl_basic {
    int32_t column;
    int32_t against;
};

struct msl_master {
    const struct msl_cutting *cutting;
    struct msl_pool *pool;
    struct msl_limit *limits; /* MSL_LIMITS_MAX: first one of each size, in their order; wanted together up to 2^33 */
    struct msl_basic *basis;
    int64_t *level;         /* of what is in the basis, `point` bits behind the point */
    int64_t *worth;         /* of each row, `bits` behind the point; see msl_master_improve() */
    int64_t *way_fixed;     /* of each way: what a pattern must be worth to pay, as many bits */
    int64_t *way_worth;     /* way x size, as many bits */
    int64_t *inverse;       /* of the basis, row_count x row_count, `point` bits behind the point */
    int64_t most_worth;     /* no worth passes it; with it nothing msl_price() adds up leaves its range */
    int64_t price_against;  /* x 2^bits it is most_worth / 256 at most, and so is the cost of a way */
    int64_t steps;          /* work done, ever: a pattern looked at counts four, four entries of an array one */
    int32_t row_count;
    int32_t bits;           /* 0 .. 30 */
    int32_t point;          /* 33 .. 40 */
    int32_t scan_from;      /* the pattern to look at next */
    uint64_t largest;       /* no entry of the inverse passes it */
    int32_t since;          /* exchanges since the inverse was made */
    int32_t spot_count;
    /* scratch, of each row: */
    int64_t *column;        /* what comes in, */
    int64_t *along;         /* what it does to the levels, */
    int64_t *rough;         /* sums in their upper bits, */
    struct msl_basic *coming; /* what is still to come into the basis, */
    int32_t *spots;         /* rows where something is other than 0; */
    uint8_t *taken;         /* rows that have what is basic in them; */
    uint8_t *own_worths;    /* of each way: 1 where sizes have worths of their own in it */
};

/* Room for MSL_LIMITS_MAX rows and for all of the cutting, and the point that suits its counts. bits, price_against and
 * row_count are 0, what is in the arrays is not set. Returns 0 where memory is not had. A copy of the master with the
 * pool and the cutting exchanged for smaller ones, whose counts and patterns are no larger, may use the same room after
 * it. */
int msl_master_make(struct msl_master *master, const struct msl_cutting *cutting, struct msl_pool *pool,
                    const struct muslin_allocator *allocator);
/* The cutting is the one that it was made for. */
void msl_master_free(struct msl_master *master, const struct muslin_allocator *allocator);

/* Inverts the basis, of row_count rows, and finds the levels; what is below nothing is turned against. Returns 0 when
 * it can't be inverted within the range of the numbers. A basis of slacks can, where less than 2^27 of each size are
 * wanted. */
int msl_master_load(struct msl_master *master);

/* Improves the levels with the patterns in the pool until none pays. Leaves the worths, those of the wrong sign set to
 * nothing, so that what pricing proves with way_fixed and way_worth, which are made of them, is proved of the limits:
 * an at_least has 0 or more, an at most 0 or less. Returns 0 when it must stop for lack of precision or range; the
 * worths are sound then too, but neither levels nor inverse are to be used: load the basis, or another, before the next
 * call. */
int msl_master_improve(struct msl_master *master);

/* A new pattern pays where it is worth more than way_fixed and this: more than the improvement calls a lack, so that
 * every one that is added is of use. */
int64_t msl_master_pays(const struct msl_master *master);

/* The most of what must not be, `point` bits behind the point; 0: the levels keep to all limits. */
int64_t msl_master_against(const struct msl_master *master);

/* Finds the levels anew, of just what the limits say: the simplex moves them by a hair against ties. None is below
 * nothing. Returns 0 where they pass the range of the numbers. */
int msl_master_levels(struct msl_master *master);

#endif
