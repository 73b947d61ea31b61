/* shape_moved.h - a corner between two straight edges that are both moved out equally far, for other modules.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SHAPE_MOVED_H
#define MUSLIN_SHAPE_MOVED_H

#include "muslin/shape.h"

struct msl_moved {
    muslin_len x; /* from the finished corner to the raw one, nearest tick */
    muslin_len y;
    int32_t exact; /* 1 when neither was rounded */
};

/* The edge that arrives runs along (a, b), the one that leaves along (c, d), both within +-2^30, neither of no length,
 * with the cloth on the left. `seam` is twice the allowance of both, 0 .. 2^29. Edges in one line move straight out.
 * The raw corner must not lie farther than 2^24 ticks from the finished one. */
struct msl_moved msl_corner_moved(int64_t a, int64_t b, int64_t c, int64_t d, int64_t seam);

#endif
