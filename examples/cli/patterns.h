/* patterns.h - pattern files, or folders of them, as the requests of a batch: one for each size.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_PATTERNS_H
#define CLI_PATTERNS_H

#include "command.h"

struct pattern_requests {
    char *text;     /* one request a line; the caller frees it */
    size_t length;
    uint64_t check; /* of what the files hold */
};

/* The files themselves: of a folder all that end in .json, in the order of their names. Null leaves a failure when one
 * cannot be read. The caller drops the list. */
json_t *pattern_files(json_t *names, struct failure *failure);

/* A file that is no pattern is asked for as well: the answer is what is wrong in it. False leaves a failure when a file
 * or folder cannot be read; the text is then to be freed too. */
bool ask_for_patterns(json_t *names, struct pattern_requests *requests, struct failure *failure);

#endif
