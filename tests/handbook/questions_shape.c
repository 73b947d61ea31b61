/* questions_shape.c - what the handbook asks about shape.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

extern const struct question questions_shape[];

const struct question questions_shape[] = {
    { NULL, NULL },
};
