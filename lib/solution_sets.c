/* solution_sets.c - joins that can be strip-pieced: what a set gives, and whether it takes fewer cuts.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_find_sets(struct msl_solving *solving)
{
    for (uint32_t i = 0; i < solving->solution->root; i++)
        solving->solution->cut[i] = solving->solution->counts[i];
}
