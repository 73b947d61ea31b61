/* muslin/scatter.h - prints spread over a top, or strips over sets, so that equal ones seldom touch.
 *
 * SPDX-License-Identifier: MIT
 *
 * The same request with the same seed gives the same answer on every machine. The search is a good one, not always the
 * best one: a lower bound goes with its answer.
 *
 * Every call
 *   Units       Counts are int64_t, 0 .. MUSLIN_COUNT_MAX unless said otherwise.
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. MUSLIN_ERR_RANGE, MUSLIN_ERR_CHOICE: a value outside its range or choices.
 *               MUSLIN_ERR_NOT_ENOUGH: the prints are fewer than the places (value: needed; limit: there are).
 *               MUSLIN_ERR_NO_MEMORY: the allocator returned nothing. What else a call can return stands with it.
 *   Cost        Time follows places and pairs (times the logarithm of the places), plus the work limit. Memory comes
 *               from the allocator and is given back: about 70 bytes a place, 16 a touch, 24 a print.
 *   Search      Places are filled one after the other, the most constrained first; then exchanges that lower the
 *               weight, or leave it, better the answer until it reaches the lower bound or the work limit. A search
 *               with a larger limit goes the same way further. `progress` is told weights, as `touching` and `least`
 *               in the result, from the first filling on. Source: common practice of local search, no source;
 *               chance is splitmix64 (Steele, Lea, Flood 2014).
 */
#ifndef MUSLIN_SCATTER_H
#define MUSLIN_SCATTER_H

#include "sewing.h"

#ifdef __cplusplus
extern "C" {
#endif

struct muslin_scatter_spec {
    uint32_t size;
    uint32_t flags;      /* 0 */
    int64_t places;      /* to be filled, 1 .. 2^24 */
    int64_t seed;        /* any number */
    int64_t work_limit;  /* steps of the search, 0 .. 2^40; a step looks at a touch. 0: filled once, not bettered */
};
/* No place yet, seed 1, ten million steps. */
#define MUSLIN_SCATTER_SPEC_INIT { sizeof(struct muslin_scatter_spec), 0, 0, 1, 10000000 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_spec_init(struct muslin_scatter_spec *spec, uint32_t size);

struct muslin_touch_spec {
    uint32_t size;
    uint32_t flags;     /* 0 */
    int64_t first;      /* places that touch, each 0 .. places - 1, and not the same */
    int64_t second;
    int64_t weight;     /* how much it matters when they are equal; 1 .. 2^20 */
};
/* Places still to be given, weight 1. */
#define MUSLIN_TOUCH_SPEC_INIT { sizeof(struct muslin_touch_spec), 0, 0, 0, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_touch_spec_init(struct muslin_touch_spec *spec, uint32_t size);

struct muslin_scattered {
    uint32_t size;
    uint32_t flags;
    int64_t touching;   /* weight of the pairs that are equal and touch */
    int64_t pairs;      /* how many of them there are */
    int64_t least;      /* no arrangement has less weight */
    int64_t work;       /* steps taken; an exchange that has begun is finished, past the limit too */
    int32_t proven;     /* 1 when touching = least */
    int32_t pad;
};
/* Which print goes where: `prints[i]` says for how many places print i suffices, 0 .. MUSLIN_COUNT_MAX (`kinds` of
 * them, 1 .. 2^20), `touches` which places touch (touch_n, 0 .. 2^27; a pair named twice counts twice), `given[p]` a
 * print that place p must have, or -1; given may be null. Writes one print number for each place to `out`. Where it
 * costs no touch, every print lies spread over the whole. The lower bound counts what is given, packs pairs, rings and
 * cliques of places that cannot all differ because few kinds are there, and knows that more of a print than can lie
 * apart must touch. MUSLIN_ERR_CHOICE: a place that touches itself. MUSLIN_ERR_NOT_ENOUGH also for a print that is
 * given to more places than it suffices for (`at`: the print). Example: 9 blocks of two prints, 5 and 4 of them, in 3 x
 * 3: none touch. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_prints(const struct muslin_scatter_spec *spec,
                                               const int64_t *prints, size_t kinds,
                                               const struct muslin_touch_spec *touches, size_t touch_size,
                                               size_t touch_n, const int64_t *given,
                                               const struct muslin_allocator *allocator, muslin_progress progress,
                                               void *context, int64_t *out, struct muslin_scattered *result,
                                               struct muslin_problem *problem);

struct muslin_scatter_blocks_spec {
    uint32_t size;
    uint32_t flags;      /* 0 */
    int64_t columns;     /* 1 .. 2^12 */
    int64_t rows;        /* 1 .. 2^12 */
    int64_t seed;        /* as in struct muslin_scatter_spec */
    int64_t work_limit;  /* so */
};
/* One block, seed 1, ten million steps. */
#define MUSLIN_SCATTER_BLOCKS_SPEC_INIT { sizeof(struct muslin_scatter_blocks_spec), 0, 1, 1, 1, 10000000 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_blocks_spec_init(struct muslin_scatter_blocks_spec *spec, uint32_t size);

#define MUSLIN_EDGE_PRINTS_TURNS_HALF 1u    /* the block may be turned by a half */
#define MUSLIN_EDGE_PRINTS_TURNS_QUARTER 2u /* ... by quarters */

/* A kind of block, by the print that shows at each of its edges; -1: none that matters. */
struct muslin_edge_prints_spec {
    uint32_t size;
    uint32_t flags;   /* MUSLIN_EDGE_PRINTS_TURNS_HALF, MUSLIN_EDGE_PRINTS_TURNS_QUARTER */
    int64_t count;    /* how many there are, 0 .. MUSLIN_COUNT_MAX */
    int64_t top;      /* prints, -1 .. MUSLIN_COUNT_MAX */
    int64_t right;
    int64_t bottom;
    int64_t left;
};
/* One block without prints at its edges, that may not be turned. */
#define MUSLIN_EDGE_PRINTS_SPEC_INIT { sizeof(struct muslin_edge_prints_spec), 0, 1, -1, -1, -1, -1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_edge_prints_spec_init(struct muslin_edge_prints_spec *spec, uint32_t size);

struct muslin_placed_block {
    uint32_t size;
    uint32_t flags;
    int64_t kind;          /* row of the blocks given */
    int32_t quarter_turns; /* clockwise */
    int32_t pad;
};
/* Blocks laid out in columns x rows, turned where they may be, so that as few equal prints as possible meet at an edge:
 * one row for each place, row by row from the top; n kinds of blocks, 1 .. 2^20. Only asking (capacity 0) writes
 * nothing but the count. The lower bound counts lines in which more blocks show one print at both ends than can lie
 * apart. Example: four blocks with the same print left and right, in one row of four: turned by quarters in turn, none
 * meet. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_blocks(const struct muslin_scatter_blocks_spec *spec,
                                               const struct muslin_edge_prints_spec *blocks, size_t block_size,
                                               size_t n, const struct muslin_allocator *allocator,
                                               muslin_progress progress, void *context,
                                               struct muslin_placed_block *rows, size_t row_size, size_t capacity,
                                               size_t *count, struct muslin_scattered *result,
                                               struct muslin_problem *problem);

/* Strips dealt to sets: `prints[i]` strips of print i (kinds of them), `sets` of `strips_per_set` (1 .. 2^24 each),
 * lying in their order in `out` (sets x strips_per_set print numbers, and spec->places must say as many: else
 * MUSLIN_ERR_RANGE). As few equal strips as possible lie in one set, and next to each other: its touches are all pairs
 * in a set, neighbours with double weight; `pairs` counts each once. Of prints of which there are too many, strips stay
 * over. No search is needed: the answer is always the least there is, `proven` is 1 and `work` 0; the seed shuffles.
 * Source: pigeonhole. Example: 12 strips of 6 prints, two each, into 2 sets: every set has all six. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_sets(const struct muslin_scatter_spec *spec, const int64_t *prints,
                                             size_t kinds, int64_t sets, int64_t strips_per_set,
                                             const struct muslin_allocator *allocator, int64_t *out,
                                             struct muslin_scattered *result, struct muslin_problem *problem);

/* The places of a fabric in a solved top, for muslin_scatter_prints(): its patches in the order of
 * muslin_solution_outlines() of the root, and which of them touch along an edge (longer than a corner: than 1/1000 in),
 * each pair once, in order, with weight 1. *places gets their number, on success. Edges that lie within 1/1000 in of
 * one line across, down or at 45 degrees count as on it, since fields on point are rounded; a slanting edge of another
 * direction touches where it has both ends in common, or is drawn exactly. MUSLIN_ERR_FOREIGN: no fabric of this quilt.
 * MUSLIN_ERR_RANGE: the top has more than 2^24 patches, of all fabrics. Time follows all outlines x depth, and a sort
 * of the fabric's edges; memory from the allocator, about 50 bytes an edge. Source: geometry. Example: one fabric for
 * all patches of a 3 x 3 grid: 9 places, 12 touches. Since 1.0. */
MUSLIN_API muslin_status muslin_scatter_touches(const struct muslin_solution *solution, muslin_id fabric,
                                                const struct muslin_allocator *allocator,
                                                struct muslin_touch_spec *rows, size_t row_size, size_t capacity,
                                                size_t *count, int64_t *places, struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
