/* questions_fit.c - what the handbook asks about fit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_fit[];

const struct question questions_fit[] = {
    { NULL, NULL },
};
