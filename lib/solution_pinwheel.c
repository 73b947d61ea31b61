/* solution_pinwheel.c - four nodes round a centre, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_pinwheel_size(struct msl_solving *solving, uint32_t node)
{
    msl_fail(solving->check, MUSLIN_ERR_METHOD, MUSLIN_ARG_NODE, node, 0);
}

struct msl_part msl_pinwheel_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_part none;
    return none;
}

struct msl_seam msl_pinwheel_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    (void)solution;
    (void)node;
    (void)k;
    static const struct msl_seam none;
    return none;
}
