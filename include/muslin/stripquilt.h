/* muslin/stripquilt.h - a whole top from a bundle of pre-cut strips: sets, segments, stacks, blocks, top.
 *
 * SPDX-License-Identifier: MIT
 *
 * Strips are sewn into sets, sets cut into segments (one stack a set), segments of different sets joined into blocks,
 * blocks set straight, some of them turned. This module joins what seam, stripset and setting each answer, and says
 * which stacks meet in which block, so that no block repeats a set and the seams can nest.
 *
 * Dealing   The k B segments of B blocks lie in one line, stack after stack, and are dealt round in order: block i
 *           takes the places i, i + B, i + 2 B ... (i from 0), left to right. So a stack no taller than B never meets
 *           itself. Blocks are numbered through, from 1, all of top 1 before top 2: block b is in top
 *           (b - 1) / blocks_per_top + 1. Stacks are as even as can be, which leaves each as short as it can be.
 *           Source: the wrap-around rule (R. McNaughton, Scheduling with deadlines and loss functions, 1959).
 * Nesting   All seams of a set are pressed one way, so its segments share it. Two segments side by side in a block nest
 *           when they are pressed opposite ways. A segment turned end for end is pressed the other way, and shows its
 *           prints in the opposite order. Three sets paired each with each are an odd cycle: one pair must clash, so
 *           turning some segments, or naming the joins that do not nest, is part of the answer.
 *
 * Every call
 *   Units       Lengths are ticks, 0 .. MUSLIN_SIZE_MAX unless a member says otherwise; allowance and take-up
 *               0 .. MUSLIN_SIZE_MAX / 8; counts 1 .. MUSLIN_COUNT_MAX.
 *   Statuses    Those of muslin_stripquilt_plan(), which every call here works out first. MUSLIN_ERR_NULL: a spec or
 *               output is missing. MUSLIN_ERR_STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: a struct breaks the rules of base.h.
 *   Cost        Constant time, however many strips, unless rows are written: then one step a row. Nothing allocates.
 */
#ifndef MUSLIN_STRIPQUILT_H
#define MUSLIN_STRIPQUILT_H

#include "finishing.h"

#ifdef __cplusplus
extern "C" {
#endif

/* Segments in one block, at most. */
#define MUSLIN_STRIPQUILT_SEGMENTS_MAX 32

/* What to do when two sets that meet in a block are pressed the same way. */
enum muslin_nesting {
    MUSLIN_NESTING_TURN = 1, /* turn some segments end for end, which turns their pressing and the order of prints */
    MUSLIN_NESTING_NAME = 2  /* turn none; name the joins that do not nest */
};

struct muslin_stripquilt_spec {
    uint32_t size;
    uint32_t flags;               /* MUSLIN_YIELD_FROM_ONE_END or 0 */
    int64_t strips;               /* in hand */
    int64_t strips_per_set;       /* sewn side by side */
    int64_t segments_per_block;   /* 1 .. MUSLIN_STRIPQUILT_SEGMENTS_MAX */
    int64_t columns;              /* of blocks */
    int64_t rows;
    int64_t tops;                 /* wanted; 0 for as many as the strips give */
    muslin_len strip_cut;         /* cut width of a strip, 1 or more */
    muslin_len strip_length;      /* of the shortest strip */
    muslin_len segment_cut;       /* 0 for the cut that makes the block square */
    muslin_len allowance;         /* s */
    muslin_len take_up;           /* u */
    muslin_len end_trim;          /* taken off each end, as in muslin_yield_spec */
    muslin_len resquare_loss;     /* as in struct muslin_yield_spec */
    int64_t resquare_every;       /* as in struct muslin_yield_spec */
    muslin_len fold_clear;        /* as in struct muslin_yield_spec */
    int32_t turning;              /* enum muslin_turning */
    int32_t nesting;              /* enum muslin_nesting */
    muslin_len square_tolerance;  /* as in muslin_setting_spec; also for segment_cut 0 */
};
/* 2 1/2 in strips, 40 in usable, 6 a set, two segments a block that is square, one block, 1/4 in seams, blocks turned
 * alternately a quarter, segments turned so that they nest, blocks square to 1/64 in; the strips are still to be
 * counted. */
#define MUSLIN_STRIPQUILT_SPEC_INIT { sizeof(struct muslin_stripquilt_spec), 0, 0, 6, 2, 1, 1, 0, 20320, \
                                      325120, 0, 2032, 0, 0, 0, 0, 0, 2, 1, 127 }
/* Writes the values above to the first `size` bytes of *spec. Since 1.0. */
MUSLIN_API muslin_status muslin_stripquilt_spec_init(struct muslin_stripquilt_spec *spec, uint32_t size);

struct muslin_stripquilt {
    uint32_t size;
    uint32_t flags;
    muslin_len set_unfinished;       /* width of a strip set */
    muslin_len set_finished;
    muslin_len strip_finished;       /* what is seen of one strip */
    muslin_len segment_cut;          /* as asked, or found */
    muslin_len segment_finished;     /* what is seen of one segment */
    int64_t segments_per_set;        /* that a set gives */
    int64_t segments_per_end;        /* of those, from each end */
    int64_t resquarings;             /* a set */
    muslin_len strip_least;          /* the shortest strip that gives as many segments */
    muslin_len strip_shorter_by;     /* how much shorter strips may be before a segment is lost */
    muslin_len strip_longer_for_more; /* how much longer they must be to give more */
    muslin_len strip_left_over;      /* of each set, fold included */
    muslin_len block_unfinished_width; /* of a block, outer seams still raw */
    muslin_len block_unfinished_height;
    muslin_len block_finished_width; /* as seen in the top */
    muslin_len block_finished_height;
    int64_t blocks_per_top;          /* columns x rows */
    int64_t blocks_turned;           /* in each top */
    muslin_len top_finished_width;   /* without borders */
    muslin_len top_finished_length;
    muslin_len top_unfinished_width; /* outer seams still raw */
    muslin_len top_unfinished_length;
    int64_t sets_in_hand;            /* that the strips make */
    int64_t tops_in_hand;            /* that those give */
    int64_t tops;                    /* planned: as wished, or all */
    int64_t sets;                    /* to sew for them: one stack of segments each */
    int64_t strips_used;             /* sets x strips_per_set */
    int64_t strips_left;             /* of those in hand */
    int64_t strips_for_one_more_top; /* beyond those in hand, to make tops_in_hand + 1 */
    int64_t blocks;                  /* in all planned tops */
    int64_t segments;                /* used in them */
    int64_t segments_left;           /* cut but not used */
    int64_t stack_low;               /* segments to take from each of the last stacks ... */
    int64_t stack_high;              /* ... and from each of the first `stacks_high`: one more, or as many ... */
    int64_t stacks_high;             /* ... and then this is all the sets */
    int64_t groups;                  /* rows of muslin_stripquilt_groups */
    int64_t segments_turned;         /* end for end, in all blocks (MUSLIN_NESTING_TURN), else 0 */
    int64_t places_not_nesting;      /* joins inside all blocks that do not nest (MUSLIN_NESTING_NAME), else 0 */
    int32_t block_square;            /* 1 when a block is square to the tick */
    uint32_t warnings;               /* MUSLIN_WARN_NO_SLACK, _NEST_CONFLICT, _SET_REPEATS, _SMALL_QUILT */
};
/* Plans the quilt. The sets to sew are the least that give the segments for the tops planned. Warnings:
 * MUSLIN_WARN_NO_SLACK when the yield stands on its edge; MUSLIN_WARN_NEST_CONFLICT when some segment is turned or
 * some join does not nest; MUSLIN_WARN_SET_REPEATS when the sets are fewer than a block's segments;
 * MUSLIN_WARN_SMALL_QUILT when both finished sides of a top are 60 in or less (a cautious limit: common practice, no
 * source; the caution itself is that of the American Academy of Pediatrics, 2022: no loose bedding in an infant's
 * sleep space). Statuses: MUSLIN_ERR_RANGE, also when the set would be wider, a block wider unfinished or a finished
 * top larger than MUSLIN_SIZE_MAX, or a top of more than MUSLIN_COUNT_MAX blocks; MUSLIN_ERR_CHOICE (turning,
 * nesting); MUSLIN_ERR_SEAM_TOO_WIDE when nothing of a strip or a segment would be seen; MUSLIN_ERR_NOT_SQUARE (a
 * quarter turn of a block that is not square, or segment_cut 0 where no whole tick makes it square, both beyond
 * square_tolerance: problem->value is the finished width, problem->limit the height); MUSLIN_ERR_NO_YIELD (a set gives
 * no segment: problem->limit is the usable length that gives one); MUSLIN_ERR_NOT_ENOUGH (the strips do not give the
 * tops wished for, or not one: problem->value is what is wanted, problem->limit what they give, in tops). Source:
 * common practice, no source, for the way; geometry for the sizes. Example: 42 strips, 6 a set, 42 in usable, 1/2 in
 * trimmed, 3 x 3 blocks of two segments 6 1/2 in: 2 tops 36 in square finished, 6 strips left. Since 1.0. */
MUSLIN_API muslin_status muslin_stripquilt_plan(const struct muslin_stripquilt_spec *spec,
                                                struct muslin_stripquilt *out, struct muslin_problem *problem);

/* The fewest strips that give the tops wished for, or one when none is: how many to have, or to add to those in hand.
 * `strips` of the spec may be 0 here, and is not looked at. MUSLIN_ERR_TOO_MANY: more than MUSLIN_COUNT_MAX would be
 * needed (problem->value is the tops, problem->limit what so many strips give); the other statuses as
 * muslin_stripquilt_plan() has them, but MUSLIN_ERR_NOT_ENOUGH. Constant time. Source: geometry; that sets are sewn
 * whole is common practice, no source. Example: that quilt, one top, takes 18 strips, and two take 36. Since 1.1. */
MUSLIN_API muslin_status muslin_stripquilt_strips_needed(const struct muslin_stripquilt_spec *spec, int64_t *strips,
                                                         struct muslin_problem *problem);

/* Blocks that are made alike: `blocks` of them, each taking one segment from each listed stack, left to right. */
struct muslin_block_group {
    uint32_t size;
    uint32_t flags;
    int64_t first_block;                            /* number of the group's first block, from 1 */
    int64_t blocks;                                 /* of them, one behind the other */
    int32_t segments;                               /* members of `sets` in use */
    uint32_t turned;                                /* bit j: segment j, from 0, is turned end for end */
    uint32_t not_nesting;                           /* bit j: segments j and j + 1 do not nest */
    int32_t repeats;                                /* 1 when a set occurs twice in each of these blocks */
    int32_t first_pressing;                         /* enum muslin_set_pressing: the way segment 0 ends up pressed,
                                                       turning counted; from there the segments alternate where they
                                                       nest */
    int32_t pad;                                    /* 0 */
    int64_t sets[MUSLIN_STRIPQUILT_SEGMENTS_MAX];   /* numbers of the sets, from 1; 0 behind the last */
};
/* Which stacks meet in which blocks, as dealt (ask-then-fill): one row for each run of blocks that take from the same
 * stacks, in order, never more rows than sets. A set named twice in a row is in each of its blocks twice. Without
 * turning, `turned` is 0; with it, `not_nesting` is 0. Where the sets are fewer than a block's segments, every block
 * repeats one and is marked. MUSLIN_ERR_BUFFER when the rows do not fit. O(groups). Example: 18 segments from 3 sets in
 * 9 blocks of two: blocks 1 to 3 take sets 1 and 2, blocks 4 to 6 sets 1 and 3, blocks 7 to 9 sets 2 and 3.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_stripquilt_groups(const struct muslin_stripquilt_spec *spec,
                                                  struct muslin_block_group *rows, size_t row_size, size_t capacity,
                                                  size_t *count, struct muslin_problem *problem);

enum muslin_set_pressing {
    MUSLIN_SET_PRESSING_TO_TOP = 1,    /* all seams of the set towards its labelled top strip */
    MUSLIN_SET_PRESSING_TO_BOTTOM = 2  /* ... away from it */
};
/* Which way to press all seams of set `set` (from 1), and how many segments its stack gives. Set 1 goes to its top. The
 * others are chosen so that the fewest segments of all planned tops lie the wrong way for their neighbours: with two
 * segments a block, so that the fewest joins do not nest; with more, so that the fewest segments need be turned, while
 * another pressing may leave fewer joins to name. That it is the fewest is tested against all pressings of small plans
 * and against an exact search of larger ones. The rest is in muslin_block_group's `turned` or `not_nesting`.
 * MUSLIN_ERR_INDEX for a set outside 1 .. sets. `segments` may be null. Example: the three sets of the example above:
 * set 1 to its top, set 2 as well, set 3 away from it; the three blocks of sets 1 and 2 have a segment turned.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_stripquilt_pressing(const struct muslin_stripquilt_spec *spec, int64_t set,
                                                    int32_t *pressing, int64_t *segments,
                                                    struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
