/* muslin/stripquilt.h - a whole top from a bundle of pre-cut strips: sets, segments, stacks, blocks, top.
 *
 * SPDX-License-Identifier: MIT
 *
 * Strips are sewn into sets, sets cut into segments (one stack a set), segments of different sets joined into blocks,
 * blocks set straight, some of them turned. This module joins what seam, stripset and setting each answer, and says
 * which stacks meet in which block, so that no block repeats a set and the seams can nest. Nothing allocates.
 */
#ifndef MUSLIN_STRIPQUILT_H
#define MUSLIN_STRIPQUILT_H

#include "finishing.h"

#ifdef __cplusplus
extern "C" {
#endif

/* Segments in one block, at most. */
#define MUSLIN_BLOCK_SEGMENTS_MAX 16

/* What to do when two sets that meet in a block are pressed the same way. */
enum muslin_nesting {
    MUSLIN_NESTING_TURN = 1, /* turn some segments end for end, which turns their pressing and the order of prints */
    MUSLIN_NESTING_NAME = 2  /* turn none; name the places that do not nest */
};

struct muslin_stripquilt_spec {
    uint32_t size;
    uint32_t flags;               /* MUSLIN_YIELD_FROM_ONE_END or 0 */
    int64_t strips;               /* in hand, 1 or more */
    int64_t strips_per_set;       /* 1 or more */
    int64_t segments_per_block;   /* 1 .. MUSLIN_BLOCK_SEGMENTS_MAX */
    int64_t columns;              /* of blocks */
    int64_t rows;
    int64_t tops;                 /* wanted; 0 for as many as the strips give */
    muslin_len strip_cut;         /* cut width of a strip */
    muslin_len usable_length;     /* of the shortest strip */
    muslin_len segment_cut;       /* 0 for the cut that makes the block square */
    muslin_len allowance;         /* s */
    muslin_len take_up;           /* u */
    muslin_len end_trim;          /* as in muslin_yield_spec */
    muslin_len resquare_loss;
    int64_t resquare_every;
    muslin_len fold_clear;
    int32_t turning;              /* enum muslin_turning */
    int32_t nesting;              /* enum muslin_nesting */
};
/* 2 1/2 in strips, 40 in usable, 6 a set, two segments a block, 1/4 in seams, blocks turned alternately a quarter. */
#define MUSLIN_STRIPQUILT_SPEC_INIT { (uint32_t)sizeof(struct muslin_stripquilt_spec), 0, 0, 6, 2, 1, 1, 0, 20320, \
                                      325120, 0, 2032, 0, 0, 0, 0, 0, 2, 1 }
/* Writes the values above to the first `size` bytes of *spec. Since 0.1. */
MUSLIN_API muslin_status muslin_stripquilt_spec_init(struct muslin_stripquilt_spec *spec, uint32_t size);

struct muslin_stripquilt {
    uint32_t size;
    uint32_t flags;
    muslin_len set_unfinished;       /* width of a strip set */
    muslin_len set_finished;
    muslin_len strip_finished;       /* what is seen of one strip */
    muslin_len segment_cut;
    muslin_len segment_finished;
    int64_t segments_per_set;
    int64_t segments_per_end;
    int64_t resquarings;             /* a set */
    muslin_len strip_least;          /* the shortest strip that gives as many segments */
    muslin_len strip_shorter_by;     /* how much shorter strips may be before a segment is lost */
    muslin_len strip_longer_for_more;
    muslin_len strip_left_over;      /* of each set, fold included */
    muslin_len block_unfinished_width;
    muslin_len block_unfinished_height;
    muslin_len block_finished_width;
    muslin_len block_finished_height;
    int64_t blocks_per_top;
    int64_t blocks_turned;           /* in each top */
    muslin_len top_finished_width;
    muslin_len top_finished_length;
    muslin_len top_unfinished_width;
    muslin_len top_unfinished_length;
    int64_t sets_in_hand;            /* that the strips make */
    int64_t tops_in_hand;            /* that those give */
    int64_t tops;                    /* planned: as wished, or all */
    int64_t sets;                    /* to sew for them: one stack of segments each */
    int64_t strips_used;
    int64_t strips_left;
    int64_t strips_for_one_more_top; /* beyond those in hand, to make tops_in_hand + 1 */
    int64_t blocks;                  /* in all planned tops */
    int64_t segments;                /* used in them */
    int64_t segments_left;           /* cut but not used */
    int64_t stack_low;               /* segments to take from each of the last stacks ... */
    int64_t stack_high;              /* ... and from each of the first `stacks_high` (one more, or as many) */
    int64_t stacks_high;
    int64_t groups;                  /* rows of muslin_stripquilt_groups */
    int64_t segments_turned;         /* end for end, so that seams nest (MUSLIN_NESTING_TURN) */
    int64_t places_not_nesting;      /* joins inside blocks that do not nest (MUSLIN_NESTING_NAME) */
    int32_t block_square;            /* 1 when a block is square */
    uint32_t warnings;               /* MUSLIN_WARN_NO_SLACK, _NEST_CONFLICT, _SET_REPEATS, _SMALL_QUILT */
};
/* Plans the quilt. Statuses: MUSLIN_ERR_RANGE; MUSLIN_ERR_SEAM_TOO_WIDE; MUSLIN_ERR_NOT_SQUARE (a quarter turn of a
 * block that is not square, or segment_cut 0 where no whole tick makes it square); MUSLIN_ERR_NO_YIELD (a set gives no
 * segment); MUSLIN_ERR_NOT_ENOUGH (the strips do not give the tops wished for, or not one; problem->limit is what they
 * give and problem->value what is wanted, in tops). Constant time. Example: 42 strips, 6 a set, 42 in usable, 1/2 in
 * trimmed, 3 x 3 blocks of two segments 6 1/2 in: 2 tops 36 in square finished, 6 strips left. Since 0.1. */
MUSLIN_API muslin_status muslin_stripquilt_plan(const struct muslin_stripquilt_spec *spec,
                                                struct muslin_stripquilt *out, struct muslin_problem *problem);

/* Blocks that are made alike: `blocks` of them, each taking one segment from each listed stack, left to right. */
struct muslin_block_group {
    uint32_t size;
    uint32_t flags;
    int64_t first_block;                            /* number of the group's first block, from 1 */
    int64_t blocks;
    int32_t segments;                               /* members of `sets` in use */
    uint32_t turned;                                /* bit j: segment j is turned end for end */
    uint32_t not_nesting;                           /* bit j: the seams between segments j and j + 1 do not nest */
    uint32_t repeats;                               /* 1 when a set occurs twice in these blocks */
    int64_t sets[MUSLIN_BLOCK_SEGMENTS_MAX];        /* numbers of the sets, from 1; 0 behind the last */
};
/* Which stacks meet in which blocks (ask-then-fill): the segments laid out stack after stack and dealt round in order,
 * so block i takes the segments i, i + B, i + 2 B ... of B blocks; a stack no taller than B never meets itself. Where
 * the sets are fewer than a block's segments, repeats cannot be avoided and are marked. O(groups). Since 0.1. */
MUSLIN_API muslin_status muslin_stripquilt_groups(const struct muslin_stripquilt_spec *spec,
                                                  struct muslin_block_group *rows, size_t row_size, size_t capacity,
                                                  size_t *count, struct muslin_problem *problem);

enum muslin_pressing {
    MUSLIN_PRESS_TO_TOP = 1,    /* all seams of the set towards its labelled top strip */
    MUSLIN_PRESS_TO_BOTTOM = 2  /* ... away from it */
};
/* Which way to press all seams of set `set` (from 1): chosen so that as few segments as the dealing allows meet a
 * neighbour pressed the same way. An odd cycle of sets (three paired each with each) cannot be served by pressing
 * alone: the rest is in muslin_block_group's `turned` or `not_nesting`. MUSLIN_ERR_INDEX for a set outside 1 .. sets.
 * Constant time. Since 0.1. */
MUSLIN_API muslin_status muslin_stripquilt_pressing(const struct muslin_stripquilt_spec *spec, int64_t set,
                                                    int32_t *pressing, int64_t *segments,
                                                    struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
