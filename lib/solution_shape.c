/* solution_shape.c - the caller's own shapes, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_shape_size(struct msl_solving *solving, uint32_t node)
{
    msl_fail(solving->check, MUSLIN_ERR_METHOD, MUSLIN_ARG_NODE, node, 0);
}

int64_t msl_shape_pieces(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

void msl_shape_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                       struct msl_ring *ring)
{
    (void)solution;
    (void)node;
    (void)piece;
    (void)stage;
    (void)ring;
}

int64_t msl_shape_seams(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

struct msl_seam msl_shape_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_seam none;
    return none;
}
