/* solution_pieced.c - what units and the caller's own shapes share once they are solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_pieced.h"

#include "root.h"

void msl_pieced_size(struct msl_solving *solving, uint32_t node, const int32_t *piecing, muslin_len width,
                     muslin_len height)
{
    struct msl_size *size = msl_size_of(solving->solution, node);
    size->width = width;
    size->height = height;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        size->edge[edge] = msl_value_of(solving->solution, MSL_ALLOWANCE);
        size->along[edge] = piecing[PIECING_ALONG + edge];
    }
    size->patches = piecing[PIECING_PIECES];
    size->across = piecing[PIECING_ACROSS];
    size->down = piecing[PIECING_DOWN];
    size->exact = msl_measures_exact(solving->solution, node);
}

/* The distance to the nearest tick: the root is nearer to the next number where its rest is greater than itself. */
static muslin_len distance(struct msl_place from, struct msl_place to)
{
    int64_t x = to.x - from.x;
    int64_t y = to.y - from.y;
    uint64_t rest;
    uint64_t root = msl_root((uint64_t)(x * x + y * y), &rest);
    return (muslin_len)(root + (rest > root));
}

struct msl_seam msl_pieced_seam(const struct muslin_solution *solution, const int32_t *seam, struct msl_place from,
                                struct msl_place to)
{
    return (struct msl_seam){ from.x, from.y, to.x, to.y, distance(from, to) + msl_seam_of(solution),
                              seam[SEAM_FIRST], seam[SEAM_SECOND] };
}
