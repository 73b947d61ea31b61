/* questions_shrinkage.c - what the handbook asks about shrinkage.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_shrinkage[];

const struct question questions_shrinkage[] = {
    { NULL, NULL },
};
