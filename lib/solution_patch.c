/* solution_patch.c - a patch, solved: one rectangle of one fabric.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_patch_size(struct msl_solving *solving, uint32_t node)
{
    const int32_t *args = msl_node_args(solving->solution->quilt, node);
    struct msl_size *size = msl_size_of(solving->solution, node);
    size->width = msl_value_of(solving->solution, args[PATCH_WIDTH]);
    size->height = msl_value_of(solving->solution, args[PATCH_HEIGHT]);
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        size->edge[edge] = msl_value_of(solving->solution, args[PATCH_LEFT + edge]);
        msl_want_seam(solving->check, MUSLIN_ARG_SEAM_ALLOWANCE, size->edge[edge]);
        size->along[edge] = 1;
    }
    size->patches = 1;
    size->exact = msl_measures_exact(solving->solution, node);
}

/* What an edge with this allowance stands out when it is cut: e, half a tick up. */
static muslin_len beyond(const struct muslin_solution *solution, muslin_len edge)
{
    return msl_allowances(solution, edge, 0);
}

void msl_patch_outline(const struct muslin_solution *solution, uint32_t node, int32_t stage, struct msl_ring *ring)
{
    const struct msl_size *size = msl_size_of(solution, node);
    muslin_len left = 0;
    muslin_len right = size->width;
    muslin_len bottom = 0;
    muslin_len top = size->height;
    if (stage == MUSLIN_STAGE_RAW) {
        left -= beyond(solution, size->edge[MSL_LEFT]);
        right = left + size->width + msl_allowances(solution, size->edge[MSL_LEFT], size->edge[MSL_RIGHT]);
        bottom -= beyond(solution, size->edge[MSL_BOTTOM]);
        top = bottom + size->height + msl_allowances(solution, size->edge[MSL_TOP], size->edge[MSL_BOTTOM]);
    }
    *ring = (struct msl_ring){ (uint32_t)msl_node_args(solution->quilt, node)[PATCH_FABRIC], 1, 4, 1, 0,
                               { left, right, right, left }, { bottom, bottom, top, top }, { -1, -1, -1, -1 } };
}
