/* questions_cutlist.c - what the handbook asks about cutlist.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_cutlist[];

const struct question questions_cutlist[] = {
    { NULL, NULL },
};
