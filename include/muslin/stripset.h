/* muslin/stripset.h - strip sets: what one gives, from wishes to strips, from a bundle to wishes.
 *
 * SPDX-License-Identifier: MIT
 *
 * A strip set is strips sewn long side to long side; a segment is a slice cross-cut from it. Yields fall off cliffs,
 * so every result says how near its edge it stands. The width of a set is a row: muslin_seam_row().
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; counts 0 .. MUSLIN_COUNT_MAX.
 *   Statuses    MUSLIN_ERR_NULL: a spec, array or output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a
 *               struct breaks the rules of base.h. MUSLIN_ERR_RANGE: an input outside its range; the problem names it.
 *               What else a call can return stands with it. The ..._init calls return MUSLIN_ERR_NULL and
 *               MUSLIN_ERR_STRUCT_SIZE.
 *   Cost        Constant time, unless an array is read: then one pass. Nothing allocates.
 */
#ifndef MUSLIN_STRIPSET_H
#define MUSLIN_STRIPSET_H

#include "reference.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- the yield of one set -------------------------------------------------------------------------------------- */

#define MUSLIN_YIELD_FROM_ONE_END 1u /* cut straight through from one end; the fold is not kept clear */

struct muslin_yield_spec {
    uint32_t size;
    uint32_t flags;            /* MUSLIN_YIELD_FROM_ONE_END or 0: from both ends */
    muslin_len strip_length;   /* L, of the shortest strip in the set */
    muslin_len segment_cut;    /* a, 1 or more */
    muslin_len end_trim;       /* t, taken off each end to square it */
    muslin_len resquare_loss;  /* r, lost each time the cut edge is squared again ... */
    int64_t resquare_every;    /* ... after every m cuts; 0 for never */
    muslin_len fold_clear;     /* z, kept free of cuts in the middle; must be 0 with FROM_ONE_END */
};
/* 40 in usable, nothing trimmed, nothing kept clear. */
#define MUSLIN_YIELD_SPEC_INIT { sizeof(struct muslin_yield_spec), 0, 325120, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_yield_spec_init(struct muslin_yield_spec *spec, uint32_t size);

struct muslin_yield {
    uint32_t size;
    uint32_t flags;
    int64_t segments;         /* N */
    int64_t per_end;          /* N / 2 when cutting from both ends, N from one */
    int64_t resquarings;      /* times the edge is squared again, both ends together */
    muslin_len least_length;  /* the shortest strip that gives as many; 0 when N is 0 */
    muslin_len left_over;     /* L less trims, segments and squaring losses, not below 0: from both ends the middle
                                 piece, fold included; from one end L - 2 t - k a - r floor((k - 1) / m) */
    muslin_len shorter_by;    /* the strip may be this much shorter before a segment is lost; 0 when N is 0 */
    muslin_len longer_for_more; /* it must be this much longer to give more: one more from each end that is cut from;
                                   never 0, and for N = 0 what is missing to the first */
    uint32_t warnings;        /* MUSLIN_WARN_NO_SLACK when shorter_by is 0 and N is not */
    int32_t pad;
    int64_t from_one_end;     /* segments when the same set is cut straight through from one end, nothing kept clear: N
                                 itself with FROM_ONE_END. How near it is to its edge, a call with that flag tells;
                                 all above speaks of N. Since 1.1 */
};
/* How many segments one set gives. From both ends
 *     N = 2 max { k : t + k a + r floor((k - 1) / m) <= (L - z) / 2 }, k = 0 always fits,
 * with no squaring after the last cut; from one end N = max { k : 2 t + k a + r floor((k - 1) / m) <= L }. Lengths are
 * whole ticks, so halving an odd L - z loses nothing. N = 0 is an answer, and so is a trim or a clear zone longer than
 * the strip. MUSLIN_ERR_RANGE also for a fold_clear with FROM_ONE_END. Exact for every input in range. Source:
 * geometry; that some teachers cut from both ends and keep clear of the fold, and square again every 2 or 3 cuts, is
 * common practice. Example: 40 in, 6 1/2 in segments, 1/2 in trimmed at each end: six, with no slack; with 1 in kept
 * clear: four. Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_yield(const struct muslin_yield_spec *spec, struct muslin_yield *out,
                                               struct muslin_problem *problem);

/* The usable length that a set of strips shares, the shortest, with its index (the first of equals); *warnings gets
 * MUSLIN_WARN_MIXED_WIDTHS when they differ, else 0. n is 1 or more (MUSLIN_ERR_RANGE); in the problem `at` is the
 * element. `index` and `warnings` may be null. One pass. Example: 41, 40 and 42 in: 40 in, index 1, mixed.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_shortest(const muslin_len *lengths, size_t n, muslin_len *shortest,
                                                  size_t *index, uint32_t *warnings, struct muslin_problem *problem);

/* ---- from wishes to strips ------------------------------------------------------------------------------------- */

struct muslin_need_spec {
    uint32_t size;
    uint32_t flags;             /* 0 */
    int64_t segments;           /* wanted */
    int64_t segments_per_set;   /* what one set gives; see muslin_stripset_yield() */
    int64_t strips_per_set;     /* 1 or more */
    int64_t strips_per_bundle;  /* 1 or more when bundles are wanted, else 0 */
    muslin_len strip_cut;       /* cut width of a strip, for the length of cloth instead of bundles; 0 if not wanted */
};
/* All zero: the segments and what a set is are still to be given. */
#define MUSLIN_NEED_SPEC_INIT { sizeof(struct muslin_need_spec), 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_need_spec_init(struct muslin_need_spec *spec, uint32_t size);

struct muslin_need {
    uint32_t size;
    uint32_t flags;
    int64_t sets;            /* up */
    int64_t strips;          /* sets x strips_per_set, below 2^62 */
    int64_t bundles;         /* up; 0 when not asked */
    int64_t spare_segments;  /* that the sets give beyond the wish */
    int64_t spare_strips;    /* that the bundles hold beyond the sets; 0 when not asked */
    muslin_len cloth_length; /* strips x strip_cut; 0 when not asked */
};
/* Segments wanted -> sets -> strips -> bundles or a length of cloth. MUSLIN_ERR_NO_YIELD when segments_per_set is 0
 * and segments are wanted; MUSLIN_ERR_OVERFLOW when the cloth would be longer than MUSLIN_LENGTH_MAX. No segments
 * wanted: all zero. Source: Quick rail fence from 2.5 inch strips (handout). Example: 42 segments, 3 a set, 5 strips a
 * set: 14 sets, 70 strips. Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_need(const struct muslin_need_spec *spec, struct muslin_need *out,
                                              struct muslin_problem *problem);

/* ---- from a bundle to wishes ----------------------------------------------------------------------------------- */

struct muslin_harvest_spec {
    uint32_t size;
    uint32_t flags;              /* 0 */
    int64_t strips;              /* in hand */
    int64_t strips_per_set;      /* 1 or more */
    int64_t segments_per_set;    /* 0 or more */
    int64_t segments_per_block;  /* 1 or more */
    int64_t blocks_per_top;      /* 1 or more */
};
/* One segment a block, one block a top; strips and sets are still to be given. */
#define MUSLIN_HARVEST_SPEC_INIT { sizeof(struct muslin_harvest_spec), 0, 0, 0, 0, 1, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_harvest_spec_init(struct muslin_harvest_spec *spec, uint32_t size);

struct muslin_harvest {
    uint32_t size;
    uint32_t flags;
    int64_t sets;               /* down, from all strips */
    int64_t segments;           /* from all sets */
    int64_t blocks;             /* from all segments */
    int64_t tops;               /* from all blocks, all down */
    int64_t sets_used;          /* sets that those tops need, up */
    int64_t strips_used;        /* sets_used x strips_per_set */
    int64_t strips_left;        /* strips - strips_used */
    int64_t segments_left;      /* of the sets used, beyond the tops */
    int64_t blocks_left;        /* of all blocks, beyond the tops */
    int64_t strips_for_one_more;/* strips missing for one more top; 0 only when a set gives nothing, so that no number
                                   of strips is enough */
};
/* Strips in hand -> sets -> segments -> blocks -> tops, and what is left over. Segments may be joined into blocks
 * across sets and tops. MUSLIN_ERR_OVERFLOW when the strips for one more top would pass MUSLIN_LENGTH_MAX. Source:
 * common practice, no source. Example: 42 strips, 6 a set, 6 segments a set, 2 a block, 9 blocks a top: 2 tops, 6
 * strips left. Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_harvest(const struct muslin_harvest_spec *spec, struct muslin_harvest *out,
                                                 struct muslin_problem *problem);

/* Sets that hold a given number of strips of each print: one row a print. */
struct muslin_stripset_print {
    uint32_t size;
    uint32_t flags;    /* 0 */
    int64_t in_hand;   /* strips of this print */
    int64_t per_set;   /* strips of it in each set, 0 or more */
    int64_t left_over; /* out: in_hand - sets x per_set, or what is missing, negative, when sets were asked for */
};
/* No strips, none in a set; both are still to be given. */
#define MUSLIN_STRIPSET_PRINT_INIT { sizeof(struct muslin_stripset_print), 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *print. Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_print_init(struct muslin_stripset_print *print, uint32_t size);

/* With sets_wanted 0: how many sets the scarcest print allows; with sets_wanted above 0 *sets becomes sets_wanted.
 * Written are *sets, *scarcest (may be null: the row of the print that allows the fewest sets, the first of equals) and
 * every row's `left_over`, which alone is changed in it. At least one row must have per_set above 0, so n = 0 is
 * MUSLIN_ERR_RANGE too. A row's own size may not pass row_size, nor row_size 4096 (MUSLIN_ERR_STRUCT_SIZE). In the
 * problem `at` is the row. On failure no row is touched. Two passes. Example: 20 dark strips, 4 a set, and 11 light
 * ones, 2 a set: 5 sets, 0 and 1 strips left, the dark print is the scarcest. Since 1.0. */
MUSLIN_API muslin_status muslin_stripset_prints(struct muslin_stripset_print *rows, size_t row_size, size_t n,
                                                int64_t sets_wanted, int64_t *sets, size_t *scarcest,
                                                struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
