/* cutplan_inside.h - what the search for a cutting plan works on, and what it finds.
 *
 * SPDX-License-Identifier: MIT
 *
 * Everything is whole numbers in units: ticks over their greatest common divisor. A *size* is a kind of piece with its
 * count. A *way* is a way to come by cloth: a strip of one height from a bolt, a panel of one length, a piece of stock
 * with its first cut along one side. A *pattern* is one thing of a way with pieces in it. A plan is patterns, and how
 * often each is cut. The master finds, for the patterns known, how often (a solution in fractions) and what each piece
 * is then worth; pricing finds, for these worths, a pattern that is worth more than it costs, and where there is none
 * the worths prove a bound; the search splits on how many of a way there are and goes on.
 *
 *     request -> sizes, ways -> first plan -> [ master <-> pricing -> bound -> split ] -> plan, bound, cases
 *
 *     cutplan.c          create, free, totals             cutplan_knapsack.c  most worth in one strip
 *     cutplan_request.c  request to sizes and ways        cutplan_price.c     most worth in a thing of a way
 *     cutplan_rows.c     strips, places, what is left     cutplan_sheet.c     ... in panels and pieces of stock
 *     cutplan_proof.c    sizes, ways, cases, worths       cutplan_master.c    levels and worths
 *     cutplan_check.c    proves it all anew               cutplan_bound.c     what worths prove
 *     cutplan_widths.c   other widths                     cutplan_first.c     first plans
 *     cutplan_search.c   plans, cases, repairs by turns   cutplan_fill.c      a plan put together, filled, tidied
 *     cutplan_case.c     cases, solved and split          cutplan_pack.c      so many strips for so many pieces
 *     cutplan_split.c    on what a case is split          cutplan_repair.c    parts of a plan planned anew
 *     cutplan_workshop.c the search's memory              cutplan_most.c      most worth, for the check
 *     cutplan_repack.c   packing, for the check           cutplan_clear.c     room in the pool
 *     cutplan_blanks.c   each piece where it is cut       cutplan_joined.c    strips from what is left
 *     cutplan_deal.c     few pieces from stock, every way */
#ifndef MUSLIN_CUTPLAN_INSIDE_H
#define MUSLIN_CUTPLAN_INSIDE_H

#include "inside.h"

enum {
    MSL_SIZES_MAX = 128, /* with more the plan is a good one, and only the plain bounds stand beside it */
    MSL_WAYS_MAX = 320,
    MSL_LIMITS_MAX = 256 /* of the master: sizes, stock, and what sets a case apart */
};

/* ---- what is wanted ---------------------------------------------------------------------------------------------- */

struct msl_piece_size {
    int64_t across; /* taken along the strip for each piece, as it is listed */
    int64_t along;  /* height of strip that it needs */
    int64_t turned_across; /* where it may lie turned: the same then; else 0 */
    int64_t turned_along;
    int64_t run_in; /* taken once in a strip before the first of this size */
    int64_t count;  /* wanted, 1 or more */
    int32_t slit;   /* 1: may be slit from a panel, and is cut from no strip within */
    int32_t level;  /* 1: only in strips of just its height */
};

struct msl_way {
    int64_t cost;
    int64_t across; /* room along each strip */
    int64_t along;  /* height of the strip; of a panel or piece of stock room for strips */
    int32_t sheet;  /* 1: a panel or a piece of stock, cut into strips; 0: one strip */
    int32_t panel;  /* 1: slit sizes lie beside the strips, which have the rest of its room */
    int32_t stock;  /* number of the piece of stock, whose ways share what there is; -1 from the bolt */
    int32_t turned; /* 1: first cuts run along the length of the stock */
};

struct msl_cutting {
    struct msl_piece_size *sizes;
    struct msl_way *ways;   /* the dearest first; of a bolt so that a higher number is a lower height */
    int64_t *heights;       /* of strips within sheets, from the highest */
    int64_t *available;     /* of each stock; INT64_MAX: any number */
    int32_t size_count;
    int32_t way_count;
    int32_t height_count;
    int32_t stock_count;
    int32_t one_size;       /* 1: a strip holds one size only */
    int32_t stacked;        /* 1: a blank may be a stack of pieces equally wide */
};

/* What a piece takes of a strip of this height, in the narrower way that it can lie, as listed where both are as
 * narrow; 0 where it can't. *turned (if not null) says how. */
int64_t msl_taken_in(const struct msl_piece_size *size, int64_t height, int32_t *turned);

/* No thing of any way holds more pieces. 1 or more. */
int64_t msl_pieces_within(const struct msl_cutting *cutting);

/* ---- patterns ---------------------------------------------------------------------------------------------------- */

struct msl_laid {     /* equal pieces in a strip */
    int32_t size;
    int32_t count;
    int32_t above;    /* 0: side by side from where the last ended; 1: in the same blanks as the last, above it */
    int32_t other_way; /* 1: in a stack, which is as wide as its pieces the wider way: not lying as msl_taken_in() says,
                          but the other way */
};

struct msl_strip {
    int64_t height;   /* 0: slit pieces, side by side at the edge of their panel */
    int32_t first;    /* of the pieces laid */
    int32_t count;
};

struct msl_pattern {
    int64_t times;    /* in a plan */
    int32_t way;
    int32_t first;    /* of its strips, one behind the other; of a way that is a strip: one */
    int32_t count;
    int32_t pad;
};

struct msl_pool {
    struct msl_pattern *patterns;
    struct msl_strip *strips;
    struct msl_laid *laid;
    int32_t pattern_count;
    int32_t strip_count;
    int32_t laid_count;
    int32_t most_patterns;
    int32_t most_strips;
    int32_t most_laid;
};

/* ---- the proof --------------------------------------------------------------------------------------------------- */

enum { MSL_LIMIT_SIZE = 1, MSL_LIMIT_STOCK, MSL_LIMIT_WAYS, MSL_LIMIT_COPIES };

/* What a row of the master asks: SIZE: wanted of the size. STOCK (of number first_way): at most so many. WAYS: so many
 * of the ways first_way .. last_way. COPIES: so many of the size in first_way. */
struct msl_limit {
    int64_t wanted;
    int32_t kind;
    int32_t first_way;
    int32_t last_way;
    int32_t size;
    int32_t at_least; /* 1, or 0: at most */
    int32_t pad;
};

struct msl_case {
    struct msl_limit limit; /* not of the whole */
    int64_t least;          /* proved by its worths, in cost */
    int32_t parent;         /* -1: the whole */
    int32_t split;          /* its parts are split and split + 1; 0: none */
    int32_t first_worth;    /* of each size, then each stock, then each limit from the whole down to this one: the limit
                               of every case on the way has its own, 0 where a later one is stricter */
    int32_t worth_count;    /* 0: those of the case of which it is a part */
    int32_t packed;         /* 1 + a way that is one strip: no plan keeps to the limits on the way down, because so many
                               pieces as COPIES ask for at least do not fit into so many strips as WAYS of this way
                               alone allow at most, found by looking at all there is; 0: not closed so */
    int32_t pad;
};

/* ---- the answer -------------------------------------------------------------------------------------------------- */

struct msl_found {
    struct msl_pool plan;   /* its patterns only, each with its times */
    struct msl_case *cases;
    int64_t *worths;        /* `bits` behind the point */
    int64_t cost;           /* of the plan */
    int64_t least;          /* the least of all cases that are neither split nor closed by packing */
    int64_t work;
    int32_t case_count;
    int32_t worth_count;
    int32_t bits;
    int32_t stopped;        /* enum muslin_cutplan_stopped */
};

/* What a search is told. `step` is called after each case, and within one when so many steps were done without; it
 * returns other than 0 to end the search. Cost and bound are in units, best is INT64_MAX before the first plan. */
struct msl_watch {
    int32_t (*step)(void *context, int64_t work, int64_t best, int64_t least);
    void *context;
    int64_t work_limit;
    int64_t every; /* 0: only after each case */
};

/* Searches; every size fits some way. MUSLIN_ERR_NO_MEMORY; MUSLIN_ERR_NOT_ENOUGH: the stock does not suffice;
 * MUSLIN_ERR_WORK_LIMIT: no plan was found, and none is not shown. The arrays in *out are the caller's to give back, by
 * msl_found_free(). */
muslin_status msl_cutplan_search(const struct msl_cutting *cutting, const struct msl_watch *watch,
                                 const struct muslin_allocator *allocator, struct msl_found *out);
void msl_found_free(const struct muslin_allocator *allocator, struct msl_found *found);

#endif
