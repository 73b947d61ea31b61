/* can_make.h - which sizes of which patterns a stock of cloth suffices for.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_CAN_MAKE_H
#define CLI_CAN_MAKE_H

#include "command.h"

/* Cloth of one kind: pieces of one size, across the cloth x along it. */
struct cloth_row {
    const char *as_written;
    int64_t count;
    muslin_len across;
    muslin_len along;
};

/* Puts "patterns" into the answer: those that can be made, the largest top first, and of the others what they lack.
 * Each fabric of a pattern is cut from one row, each row is for one fabric. Of both at most so many are listed (0:
 * all). False leaves a failure. */
bool put_patterns(json_t *answer, struct desk *desk, json_t *names, const struct cloth_row *rows, size_t count,
                  int64_t most);

#endif
