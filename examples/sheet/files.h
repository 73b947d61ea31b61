/* files.h - files that belong together: all are put in their places, or none.
 *
 * SPDX-License-Identifier: MIT */
#ifndef FILES_H
#define FILES_H

#include "bytes.h"
#include "output.h"

struct files {
    struct output *outputs;
    char **names;
    size_t used;
    size_t room;
    bool force;
};

/* Writes one beside its place; "-" is standard output. The bytes are given back. */
bool files_add(struct files *files, const char *name, struct bytes *bytes, struct failure *failure);
/* Puts all in their places and prints their names. */
bool files_finish(struct files *files, struct failure *failure);
void files_drop(struct files *files);

#endif
