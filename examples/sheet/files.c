/* files.c - files that belong together.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "files.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

#include "memory.h"

static void make_room(struct files *files)
{
    if (files->used < files->room)
        return;
    size_t room = 2 * files->room + 8;
    struct output *outputs = need_memory(room * sizeof *outputs);
    char **names = need_memory(room * sizeof *names);
    for (size_t i = 0; i < files->used; i++) {
        outputs[i] = files->outputs[i];
        names[i] = files->names[i];
    }
    free(files->outputs);
    free(files->names);
    files->outputs = outputs;
    files->names = names;
    files->room = room;
}

bool files_add(struct files *files, const char *name, struct bytes *bytes, struct failure *failure)
{
    make_room(files);
    struct output *output = &files->outputs[files->used];
    bool fine = output_open(output, strcmp(name, "-") == 0 ? NULL : name, files->force, failure);
    if (fine) {
        files->names[files->used++] = strdup(name);
        fine = output_write(output, bytes->text, bytes->used, failure);
    }
    bytes_free(bytes);
    return fine;
}

/* Names go to standard output unless the file itself does. Nobody need read them. */
static bool say_name(const char *name, struct failure *failure)
{
    if (name == NULL || strcmp(name, "-") == 0)
        return true;
    if ((puts(name) >= 0 && fflush(stdout) == 0) || errno == EPIPE)
        return true;
    failure_say(failure, NULL, "Cannot write standard output: %s.", strerror(errno));
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

bool files_finish(struct files *files, struct failure *failure)
{
    bool fine = true;
    for (size_t i = 0; i < files->used; i++) {
        if (!fine)
            output_drop(&files->outputs[i]);
        else
            fine = output_finish(&files->outputs[i], failure) && say_name(files->names[i], failure);
        free(files->names[i]);
    }
    free(files->outputs);
    free(files->names);
    return fine;
}

void files_drop(struct files *files)
{
    for (size_t i = 0; i < files->used; i++) {
        output_drop(&files->outputs[i]);
        free(files->names[i]);
    }
    free(files->outputs);
    free(files->names);
}
