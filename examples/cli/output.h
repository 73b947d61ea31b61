/* output.h - where answers go: standard output, or a file that appears whole or not at all.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_OUTPUT_H
#define CLI_OUTPUT_H

#include "command.h"

/* A file is written under a temporary name beside its target, brought to the disk and then renamed, so that the target
 * is never half written. An existing target is refused unless it may be replaced. */
struct output {
    int descriptor;
    char *target;    /* null: standard output */
    char *temporary;
    char *part;      /* the target's name and ".part", for output_keep_part */
    bool replace;
};

/* Each false leaves a failure with EXIT_FILE_TROUBLE. Who may want to keep a part asks so that an earlier one is not
 * overwritten either. */
bool output_open(struct output *output, const char *target, bool replace, bool may_keep_part,
                 struct failure *failure);
/* Writes all of it, also through interruptions. */
bool output_write(struct output *output, const char *text, size_t length, struct failure *failure);
/* Puts the file in its place and frees what the output holds. */
bool output_finish(struct output *output, struct failure *failure);
/* Keeps what was written under the .part name and frees. */
bool output_keep_part(struct output *output, struct failure *failure);
/* Drops what was written and frees. */
void output_drop(struct output *output);

#endif
