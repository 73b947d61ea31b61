/* questions_unit.c - what the handbook asks about unit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_unit[];

const struct question questions_unit[] = {
    { NULL, NULL },
};
