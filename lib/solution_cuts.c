/* solution_cuts.c - the cut list.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

void msl_make_cuts(struct msl_solving *solving)
{
    (void)solving;
}
