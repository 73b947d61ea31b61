/* stripquilt_deal.h - segments dealt from stacks to blocks: who meets whom, and which way each set is pressed.
 *
 * SPDX-License-Identifier: MIT
 *
 * All segments lie in one line, stack after stack; a place in it counts from 0. The line is as long as k positions
 * times B blocks, and block i takes the places i, i + B, i + 2 B ... So no stack meets itself unless it is taller than
 * B. */
#ifndef MUSLIN_STRIPQUILT_DEAL_H
#define MUSLIN_STRIPQUILT_DEAL_H

#include "muslin/stripquilt.h"

struct msl_deal {
    int64_t per_block; /* k, 1 .. MUSLIN_STRIPQUILT_SEGMENTS_MAX */
    int64_t blocks;    /* B; the line k B is at most 2^61 */
    int64_t low;       /* height of the last stacks */
    int64_t highs;     /* so many first stacks are one higher, fewer than all */
    int64_t flip;      /* blocks from this one on want the other pressing at each position */
};

/* The deal from `sets` stacks (1 .. k B) as even as can be, with the flip that leaves the fewest segments lying the
 * wrong way. */
struct msl_deal msl_deal_of(int64_t per_block, int64_t blocks, int64_t sets);

/* Segments in the stack of this set, numbered from 0. */
int64_t msl_deal_height(const struct msl_deal *deal, int64_t set);

/* 0 or 1: the way this set, numbered from 0, is pressed. */
int32_t msl_deal_pressing(const struct msl_deal *deal, int64_t set);

/* Runs of blocks that take from the same stacks. */
int64_t msl_deal_groups(const struct msl_deal *deal);

/* Segments of all blocks that lie the wrong way for their place, unless they are turned. */
int64_t msl_deal_wrong(const struct msl_deal *deal);

/* Joins in all blocks whose two segments are pressed the same way, none being turned. */
int64_t msl_deal_clashes(const struct msl_deal *deal);

/* The group that begins with this block, numbered from 0. */
struct muslin_block_group msl_deal_group(const struct msl_deal *deal, int64_t first_block, int32_t nesting);

#endif
