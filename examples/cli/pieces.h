/* pieces.h - a row of a list of pieces as people write it: "20 of 2 1/2 x 4 1/2 in turn".
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_PIECES_H
#define CLI_PIECES_H

#include "command.h"

/* "20 of ": what comes behind it, or null. */
const char *read_count(const char *text, int64_t *count);
/* Takes a last word off a text of this length, where it ends with it. */
bool ends_with(const char *text, size_t *length, const char *word);
/* "4 x 6 cm", or one size for a square. False leaves a failure that names the option. */
bool read_sizes(struct desk *desk, const char *option, const char *text, size_t length, muslin_len *across,
                muslin_len *along);
/* It could not, because a word stands there that is no unit. */
bool is_other_word(const struct desk *desk);

#endif
