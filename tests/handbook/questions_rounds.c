/* questions_rounds.c - what the handbook asks about rounds.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_rounds[];

const struct question questions_rounds[] = {
    { NULL, NULL },
};
