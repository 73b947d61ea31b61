/* resume.h - a batch that was cut off goes on where it stopped.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_RESUME_H
#define CLI_RESUME_H

#include "lines.h"
#include "output.h"

struct tally {
    int64_t lines;
    int64_t failed;
};

/* Goes through the whole lines of an earlier run and through the requests side by side, checks that each answer is that
 * of its request, and leaves both where the first answer is missing. False leaves a failure: the input is another one,
 * or the file is none of a batch. */
bool go_on(struct output *output, struct lines *lines, struct tally *tally, struct failure *failure);

#endif
