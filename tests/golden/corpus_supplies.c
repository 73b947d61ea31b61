/* corpus_supplies.c - the calls of supplies.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

void golden_supplies(struct golden *g)
{
    (void)g;
}
