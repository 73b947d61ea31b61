/* corpus_motif.c - the calls of motif.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

void golden_motif(struct golden *g)
{
    (void)g;
}
