/* pressing_solve.h - the rules of a pressing plan being solved.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_PRESSING_SOLVE_H
#define MUSLIN_PRESSING_SOLVE_H

#include "pressing_inside.h"

struct msl_heap {
    uint32_t *numbers;
    uint64_t used;
};
void msl_heap_push(struct msl_heap *heap, uint32_t number);
uint32_t msl_heap_pop(struct msl_heap *heap);

/* A rule or a wish that settles one bit by others, which are settled later or not at all. */
struct msl_settled {
    uint32_t source;    /* a rule; or the number of rules and a bit that has a wish; or that of both and a sum of a
                           turning */
    uint32_t bit;
    uint32_t first;     /* of its terms, the bit among them */
    uint32_t count;
    uint32_t first_use; /* the settled ones that were added to it */
    uint32_t uses;
    uint8_t odd;        /* what its terms add up to */
    uint8_t pad[3];
};

/* A rule that settled ones settle. */
struct msl_surplus {
    uint32_t rule;
    uint32_t first_use;
    uint32_t uses;
    uint32_t first_cause; /* the settled rules that it follows from */
    uint32_t causes;
    uint32_t last;        /* of them, in the order of the search */
    uint32_t against;     /* 1: it does not hold when all of them do */
};

struct msl_solver {
    struct msl_nesting *nesting;
    struct msl_check *check;
    const struct muslin_allocator *allocator;
    uint32_t rules;
    uint32_t bits;
    uint8_t *marks;         /* of each bit */
    uint32_t *settled_by;   /* of each bit, counted from 1 */
    uint32_t *load;         /* of each bit: how much hangs on it */
    uint32_t *list;         /* bits of the sum in the making */
    uint64_t listed;
    struct msl_heap heap;
    struct msl_rows settled; /* struct msl_settled */
    struct msl_rows surplus; /* struct msl_surplus */
    struct msl_rows terms;   /* uint32_t */
    struct msl_rows uses;    /* uint32_t */
    struct msl_rows causes;  /* uint32_t */
    int64_t steps;
    int64_t work_left;
    int64_t most_steps;
    int is_complete;         /* every rule was looked at */
    int pad;
};

static inline struct msl_settled *msl_settled_at(const struct msl_solver *solver, uint64_t number)
{
    return (struct msl_settled *)solver->settled.rows + number;
}

static inline struct msl_surplus *msl_surplus_at(const struct msl_solver *solver, uint64_t number)
{
    return (struct msl_surplus *)solver->surplus.rows + number;
}

/* What a rule or a wish wants its bits to add up to. */
uint8_t msl_wanted(const struct msl_solver *solver, uint32_t source);

/* Settles rules, until the work is used up. */
void msl_settle_rules(struct msl_solver *solver);
/* Of all that is settled these do not hold. */
void msl_give_up(const struct msl_solver *solver, const uint8_t *broken);
/* Then wishes: places that take their child as it is, turnings of nodes that are used both ways, seams towards the
 * darker side, seams towards their second piece. */
void msl_settle_wishes(struct msl_solver *solver, uint8_t *ways);

/* The ways that follow when all that is settled holds, but for what was given up. */
void msl_set_ways(const struct msl_solver *solver, uint8_t *ways);

#endif
