/* cutplan_repack.h - whether pieces fit into strips, looked at by the check and by nobody else.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_REPACK_H
#define MUSLIN_CUTPLAN_REPACK_H

#include "cutplan_most.h"

/* Pieces that have to lie in the strips. */
struct msl_repacked {
    int64_t taken;
    int64_t run_in;
    int64_t wanted;
};

/* 1 where no way of laying them puts all these pieces into so many strips with this room. Sorts them. Adds to
 * most->steps, allocates with its allocator and notes a failure there; then the answer means nothing. */
int msl_repack_fails(struct msl_most *most, struct msl_repacked *pieces, int32_t count, int64_t strips, int64_t room);

#endif
