/* questions_supplies.c - what the handbook asks about supplies.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_supplies[];

const struct question questions_supplies[] = {
    { NULL, NULL },
};
