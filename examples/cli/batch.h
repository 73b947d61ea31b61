/* batch.h - many requests in, many answers out, one JSON object a line.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_BATCH_H
#define CLI_BATCH_H

#include "command.h"

struct batch {
    const char *input;       /* null or "-": standard input */
    const char *output;      /* null: standard output */
    const char *progress;    /* "auto", "always" or "never" */
    bool replace;
    struct common defaults;  /* for lines that say nothing else */
};

/* Answers every line in order. A bad line gets an error and loses nothing else. Returns EXIT_NO_ANSWER when some lines
 * failed; EXIT_FILE_TROUBLE and EXIT_INTERRUPTED leave a failure to show. */
enum exit_code run_batch(const struct batch *batch, struct failure *failure);

#endif
