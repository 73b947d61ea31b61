/* batch.h - many requests in, many answers out, one JSON object a line.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_BATCH_H
#define CLI_BATCH_H

#include "command.h"

#define JOBS_MAX 256

struct batch {
    json_t *inputs;          /* names of files, null for standard input */
    int32_t patterns;        /* they are pattern files, or folders of them */
    const char *output;      /* null: standard output */
    int32_t progress;        /* enum when of progress.h */
    int32_t replace;
    int32_t resume;
    int64_t jobs;            /* answered at the same time; 0: as many as there are cores to use */
    struct common defaults;  /* for lines that say nothing else */
};

/* Answers every line, in the order of the lines. A bad line gets an error and loses nothing else. Returns
 * EXIT_NO_ANSWER when some lines failed; EXIT_FILE_TROUBLE and EXIT_INTERRUPTED leave a failure to show. */
enum exit_code run_batch(const struct batch *batch, struct failure *failure);

/* The command itself, from its words. */
extern const struct command batch_command;
extern const struct option_row batch_front_options[];
enum exit_code run_batch_command(int argc, char **argv);

#endif
