/* questions_accuracy.c - what the handbook asks about accuracy.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_accuracy[];

const struct question questions_accuracy[] = {
    { NULL, NULL },
};
