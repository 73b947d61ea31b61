/* output.h - where answers go: standard output, or a file that appears whole or not at all.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_OUTPUT_H
#define CLI_OUTPUT_H

#include "command.h"

/* A file is written under another name beside its target, brought to the disk and then renamed, so that the target is
 * never half written. An existing target is refused unless it may be replaced. */
struct output {
    int descriptor;
    int earlier;     /* PART_GO_ON: the target whose whole lines are to be taken over; -1: it is the part's */
    char *target;    /* null: standard output */
    char *temporary; /* the name while it is written; of a part, the target's and ".part" */
    bool is_part;    /* outlives a run that cannot finish it */
    bool is_new;     /* this run made it */
    bool replace;
    int64_t whole;   /* bytes up to the end of the last text that was written whole */
};

/* Each false leaves a failure with EXIT_FILE_TROUBLE. */
bool output_open(struct output *output, const char *target, bool replace, struct failure *failure);

/* What is to be done about the part that an earlier run left. */
enum part {
    PART_NEW,    /* refuse to overwrite it, and the target */
    PART_AGAIN,  /* overwrite both */
    PART_GO_ON   /* go on with it, or with the target where there is no part */
};
/* The same, for work that may be interrupted and gone on with. Two runs cannot write the same part at once. */
bool output_open_part(struct output *output, const char *target, enum part part, bool replace,
                      struct failure *failure);

/* Writes all of it, also through interruptions. */
bool output_write(struct output *output, const char *text, size_t length, struct failure *failure);
/* Puts the file in its place and frees what the output holds. */
bool output_finish(struct output *output, struct failure *failure);
/* Keeps a part, cut to what was written whole, and frees. */
bool output_keep_part(struct output *output, struct failure *failure);
/* Drops what this run has made, and frees; the part of an earlier run stays. */
void output_drop(struct output *output);

#endif
