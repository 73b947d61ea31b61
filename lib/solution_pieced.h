/* solution_pieced.h - what units and the caller's own shapes share once they are solved.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SOLUTION_PIECED_H
#define MUSLIN_SOLUTION_PIECED_H

#include "quilt_piecing.h"
#include "solution_inside.h"

/* A place in a node, finished. */
struct msl_place {
    muslin_len x;
    muslin_len y;
};

/* The size of a node width x height that is sewn so. */
void msl_pieced_size(struct msl_solving *solving, uint32_t node, const int32_t *piecing, muslin_len width,
                     muslin_len height);

/* A seam of it, whose ends lie there. */
struct msl_seam msl_pieced_seam(const struct muslin_solution *solution, const int32_t *seam, struct msl_place from,
                                struct msl_place to);

#endif
