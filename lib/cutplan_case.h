/* cutplan_case.h - the cases of a search: which is next, what its worths prove, how it is split.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_CASE_H
#define MUSLIN_CUTPLAN_CASE_H

#include "cutplan_bound.h"
#include "cutplan_first.h"
#include "cutplan_pack.h"

enum {
    MSL_PART_BITS = 18,
    MSL_DEPTH_MAX = 1024,   /* cases one within the other */
    MSL_FIRST_SLACK = 32512 /* in bases that are kept: what is below is a pattern */
};

/* What the search keeps of a case besides its proof. */
struct msl_open {
    int64_t value;       /* what all that its limits ask for is worth, as far as it matters, `bits` behind the point */
    int32_t part;        /* of its split, see struct msl_split */
    int32_t first_basic; /* the basis of the case that it is a part of */
    int16_t basic_count;
    int16_t depth;
};

/* A case split on this, at most so many or at least one more; `upper` says which part is looked at first. */
struct msl_split {
    struct msl_limit limit;
    int32_t upper;
    int32_t part; /* how far the level is beyond what is wanted, of 2^MSL_PART_BITS; 0: it is whole */
};

/* What splits on a way have proved so far. */
struct msl_gain {
    int64_t sum;   /* of 2^10 times the cost proved for each whole thing more or less, in steps to the next way */
    int64_t count;
};

struct msl_search {
    const struct msl_cutting *cutting;
    struct msl_pool pool;
    struct msl_master *master;   /* shared with the search of a part, one at work at a time */
    struct msl_pricing *pricing;
    struct msl_reach *reach;
    struct msl_packing *packing;
    const struct msl_watch *watch;
    struct msl_search *whole;    /* of which this is a part, or itself */
    struct msl_making making;
    struct msl_case *cases;
    struct msl_open *open;
    int32_t *heap;               /* cases to be solved, the least first */
    int64_t *worths;             /* null: none are kept */
    uint16_t *bases;             /* 2 x column + against */
    int32_t *chain;              /* MSL_DEPTH_MAX: the cases from this one up */
    int32_t *row_of;             /* MSL_DEPTH_MAX: rows of their limits, from the whole down; -1: a later one has it */
    int64_t *most_of;            /* of each way: what no pattern of it passes */
    int64_t *way_level;          /* of each way, and */
    int64_t *copies_level;       /* way x size: how many there are, in fractions */
    struct msl_gain *gains;      /* 2 x way, of those down to it: of the lower part, and of the upper */
    int64_t first_price;         /* of what must not be */
    int64_t last_price;
    int64_t solved;              /* cases */
    int64_t told_work;           /* of the whole: as the watch was told last */
    int64_t told_least;
    int64_t aside;               /* least of the cases that could be neither closed nor split */
    int32_t case_count;
    int32_t most_cases;
    int32_t heap_count;
    int32_t next;                /* the case to be solved next; -1: that from the heap */
    int32_t worth_count;
    int32_t most_worths;
    int32_t basic_count;
    int32_t most_basics;
    int32_t most_rows;           /* of the master, for a case that is still split */
    int32_t most_depth;          /* and how far it may be down */
    int32_t chain_count;         /* of the case that is being solved */
    int32_t stopped;             /* as in struct msl_found */
    int32_t full;                /* 1: room gave out, and no case is split any more */
    int32_t pad;
};

/* Steps taken so far, by all searches that share master and pricing. */
int64_t msl_work(const struct msl_search *search);

/* Master and pricing are to work on this search. */
void msl_search_turn_to(struct msl_search *search);

/* Begins with the whole as the only case; its plan and pool are kept. The pool gets a pattern without pieces of each
 * way, for the cases that ask for so many of it. */
void msl_cases_begin(struct msl_search *search);

/* Solves one case. Returns 0 when there is none left that could hold a better plan, or the search is stopped. */
int msl_cases_step(struct msl_search *search);

/* Tells the watch how the whole stands: told_least is its bound. Returns 0 when that ends the search. */
int msl_cases_tell(struct msl_search *whole);

/* The least of what is neither solved nor closed. */
int64_t msl_cases_least(const struct msl_search *search);

#endif
