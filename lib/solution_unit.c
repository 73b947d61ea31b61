/* solution_unit.c - pieced units, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_unit_size(struct msl_solving *solving, uint32_t node)
{
    msl_fail(solving->check, MUSLIN_ERR_METHOD, MUSLIN_ARG_NODE, node, 0);
}

int64_t msl_unit_pieces(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

void msl_unit_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                      struct msl_ring *ring)
{
    (void)solution;
    (void)node;
    (void)piece;
    (void)stage;
    (void)ring;
}

int64_t msl_unit_seams(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    return 0;
}

struct msl_seam msl_unit_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_seam none;
    return none;
}

struct muslin_unit_spec msl_unit_spec(const struct muslin_solution *solution, uint32_t node)
{
    (void)solution;
    (void)node;
    struct muslin_unit_spec none = MUSLIN_UNIT_SPEC_INIT;
    return none;
}
