/* questions_motif.c - what the handbook asks about motif.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_motif[];

const struct question questions_motif[] = {
    { NULL, NULL },
};
