/* solution_diagonal.c - blocks on point, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_diagonal_size(struct msl_solving *solving, uint32_t node)
{
    msl_fail(solving->check, MUSLIN_ERR_METHOD, MUSLIN_ARG_NODE, node, 0);
}

int64_t msl_diagonal_pieces(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

struct msl_part msl_diagonal_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_part none;
    return none;
}

void msl_diagonal_point(const struct muslin_solution *solution, uint32_t node, muslin_len u, muslin_len v,
                        muslin_len *x, muslin_len *y)
{
    (void)solution;
    (void)node;
    (void)u;
    (void)v;
    (void)x;
    (void)y;
}

void msl_diagonal_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                          struct msl_ring *ring)
{
    (void)solution;
    (void)node;
    (void)piece;
    (void)stage;
    (void)ring;
}

int64_t msl_diagonal_seams(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

struct msl_seam msl_diagonal_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_seam none;
    return none;
}
