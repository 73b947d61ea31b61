/* muslin/sewing.h - the order of sewing: steps that can be chain-pieced, labels for stacks, seams and thread.
 *
 * SPDX-License-Identifier: MIT
 *
 * A step is one kind of part: all that are alike are sewn one after the other without cutting the thread between them,
 * then cut apart and pressed. Steps come in an order in which everything a step needs is sewn before it.
 *
 * Every call
 *   Units       Lengths are ticks, counts int64_t.
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS, _BUFFER: an input or output breaks the rules of
 *               base.h. MUSLIN_ERR_RANGE: an input outside its range. MUSLIN_ERR_OVERFLOW: all seams together
 *               are longer than MUSLIN_LENGTH_MAX. What else a call can return stands with it.
 *   Cost        Time follows the nodes. Nothing allocates.
 */
#ifndef MUSLIN_SEWING_H
#define MUSLIN_SEWING_H

#include "pressing.h"

#ifdef __cplusplus
extern "C" {
#endif

enum muslin_sewing_kind {
    MUSLIN_SEWING_SET = 1,       /* strips sewn into sets */
    MUSLIN_SEWING_SEGMENTS = 2,  /* sets cut across into segments: nothing is sewn */
    MUSLIN_SEWING_UNIT = 3,      /* a unit by its recipe: muslin_unit_steps() has its own steps */
    MUSLIN_SEWING_SHAPE = 4,     /* the caller's own shape */
    MUSLIN_SEWING_JOIN = 5,      /* pieces joined in their order */
    MUSLIN_SEWING_TRIM = 6,      /* trimmed to size: nothing is sewn */
    MUSLIN_SEWING_PINWHEEL = 7,  /* a partial first seam, three whole ones, the first one finished */
    MUSLIN_SEWING_SET_IN = 8,    /* strips sewn from mark to mark, then the mitres */
    MUSLIN_SEWING_DIAGONAL = 9,  /* diagonal rows of blocks and of sashes, then rows to each other, corners last */
    MUSLIN_SEWING_SIXTY = 10     /* rows of 60 degree pieces, then rows to each other */
};

struct muslin_sewing_step {
    uint32_t size;
    uint32_t flags;
    muslin_id node;         /* what is made */
    int64_t stack;          /* number of the stack it makes, from 0, for muslin_sewing_label(); a step of cutting takes
                               that of its set */
    int64_t alike;          /* how many are made: strip sets, segments that are needed, units with the spare ones of
                               their recipes (units alike share recipes: with the first of them), joins ... */
    int64_t pieces;         /* that go into one; of segments and trims 1 */
    int64_t seams;          /* in one */
    muslin_len seam_longest;/* the longest of them, from raw edge to raw edge, where edges do not meet the longer one;
                               what set-in and partial seams leave open is counted with them */
    muslin_len sewn;        /* all seams of all that are alike */
    muslin_len unfinished_width;  /* of what is made; of a set: its width and the strips' length */
    muslin_len unfinished_height;
    int64_t feeds;          /* steps that it needs: muslin_sewing_feeds() */
    int32_t kind;           /* enum muslin_sewing_kind */
    int32_t chain;          /* 1 when more than one is sewn */
};
/* The steps, a row each, in the order of their nodes. A strip-pieced join is two: its set, then its segments. Turned
 * nodes take no step of their own; mirror images are sewn along with what they mirror, the other way round. Seams of
 * units and shapes, and mitres, are as long as their finished seams, to the nearest tick, plus an allowance e at each
 * end; one that joins two halves of a unit through its middle, see muslin_quilt_unit(), counts once. In a field on
 * point, in every layout, an end that lies on the outer edge counts e sqrt 2, also where of what is sewn together one
 * piece ends square there and the other, longer one at 45 degrees; every other end counts e. Rows are sewn with their
 * triangles, then to each other, corners last. A triangle of SASH_OUTER that is set into a corner, see
 * muslin_quilt_diagonal(), comes once the rows of sashes on both sides of its row are sewn to it: into the angle of the
 * row's end and of the row of sashes that runs on, two seams from mark to mark, which count like the others. Example:
 * nine-patches from two strip sets: sets, segments, sets, segments, join. Since 1.0. */
MUSLIN_API muslin_status muslin_sewing_steps(const struct muslin_solution *solution, struct muslin_sewing_step *rows,
                                             size_t row_size, size_t capacity, size_t *count,
                                             struct muslin_problem *problem);

struct muslin_sewing_feed {
    uint32_t size;
    uint32_t flags;
    muslin_id node;     /* what is used */
    int64_t step;       /* the step that makes it; -1: it is cut as it is */
    int64_t each;       /* how many go into one */
};
/* What goes into one of step `step`: made by earlier steps, or patches, each once, in the order of their first use. Of
 * a set, the patches that its strips become; of segments, their set, by the join's id. Pieces that are no nodes, of
 * units, setting triangles and the like, are in the cut list alone. MUSLIN_ERR_INDEX: no such step. Example: the join
 * of a nine-patch needs two of one row and one of the other. Since 1.0. */
MUSLIN_API muslin_status muslin_sewing_feeds(const struct muslin_solution *solution, int64_t step,
                                             struct muslin_sewing_feed *rows, size_t row_size, size_t capacity,
                                             size_t *count, struct muslin_problem *problem);

/* The label of stack `number` (0 .. MUSLIN_COUNT_MAX): A .. Z, then AA, AB and so on, terminated; text out as in
 * base.h. Source: common practice, no source. Example: 27 is AB. Since 1.0. */
MUSLIN_API muslin_status muslin_sewing_label(int64_t number, char *buf, size_t cap, size_t *need,
                                             struct muslin_problem *problem);

struct muslin_sewing_total {
    uint32_t size;
    uint32_t flags;
    int64_t steps;              /* rows of muslin_sewing_steps() */
    int64_t seams;              /* in all tops */
    muslin_len sewn;            /* all seams: what muslin_thread_plan() asks for */
    muslin_len in_sets;         /* of those, in strip sets */
    int64_t width_seams;        /* of one top: the most seams across it ... */
    int64_t height_seams;       /* ... and down */
    muslin_len width_worst;     /* how far its unfinished width may be off, each seam and each cut edge off as stated */
    muslin_len width_likely;
    muslin_len height_worst;    /* its height, so */
    muslin_len height_likely;
};
/* All seams, and how far off the whole top may be: with the most seams across it, each off by seam_error and each of
 * its pieces' cuts by cut_error (0 .. MUSLIN_SIZE_MAX / 8 each), as muslin_accuracy_row() says; the rounding of
 * on-point and 60 degree parts is not in it. The most are counted of each row and block by itself, so where blocks
 * differ or lie turned no one line need cross as many: it is off by no more. Example: eleven seams, each off by 1/32
 * in: 11/32 in at worst. Since 1.0. */
MUSLIN_API muslin_status muslin_sewing_totals(const struct muslin_solution *solution, muslin_len seam_error,
                                              muslin_len cut_error, struct muslin_sewing_total *out,
                                              struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
