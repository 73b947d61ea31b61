/* output.c - files that appear whole or not at all.
 *
 * SPDX-License-Identifier: MIT */
#define _GNU_SOURCE
#include "output.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "memory.h"

static bool trouble(struct failure *failure, const char *what, const char *name, const char *why)
{
    failure_say(failure, NULL, "%s %s: %s.", what, name, why);
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

static char *name_with(const char *name, const char *ending)
{
    size_t size = strlen(name) + strlen(ending) + 1;
    char *joined = need_memory(size);
    snprintf(joined, size, "%s%s", name, ending);
    return joined;
}

/* ---- before writing --------------------------------------------------------------------------------------------- */

static bool may_take_place(const char *name, bool replace, struct failure *failure)
{
    struct stat found;
    if (lstat(name, &found) != 0)
        return errno == ENOENT || trouble(failure, "Cannot write", name, strerror(errno));
    if (!S_ISREG(found.st_mode))
        return trouble(failure, "Cannot write", name, "it is there and is no ordinary file");
    return replace || trouble(failure, "Will not overwrite", name, "it exists; use --force to replace it");
}

/* What the file may be read by: as any new file, not as a temporary one. */
static mode_t usual_mode(void)
{
    mode_t mask = umask(0);
    umask(mask);
    return 0666 & ~mask;
}

static void free_names(struct output *output)
{
    free(output->target);
    free(output->temporary);
    free(output->part);
}

bool output_open(struct output *output, const char *target, bool replace, bool may_keep_part, struct failure *failure)
{
    *output = (struct output){ .descriptor = STDOUT_FILENO, .replace = replace };
    if (target == NULL)
        return true;
    output->target = name_with(target, "");
    output->temporary = name_with(target, ".XXXXXX");
    output->part = name_with(target, ".part");
    bool fine = may_take_place(target, replace, failure) &&
                (!may_keep_part || may_take_place(output->part, replace, failure));
    if (fine) {
        output->descriptor = mkostemp(output->temporary, O_CLOEXEC);
        fine = output->descriptor >= 0 || trouble(failure, "Cannot write", target, strerror(errno));
    }
    if (fine && fchmod(output->descriptor, usual_mode()) == 0)
        return true;
    free_names(output);
    return false;
}

/* ---- writing ---------------------------------------------------------------------------------------------------- */

static const char *name_of(const struct output *output)
{
    return output->target != NULL ? output->target : "standard output";
}

bool output_write(struct output *output, const char *text, size_t length, struct failure *failure)
{
    while (length > 0) {
        ssize_t written = write(output->descriptor, text, length);
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            return trouble(failure, "Cannot write", name_of(output), strerror(errno));
        text += written;
        length -= (size_t)written;
    }
    return true;
}

/* ---- after writing ---------------------------------------------------------------------------------------------- */

/* The directory's own entry must reach the disk too; where that is not possible, the file is still whole. */
static void settle_directory(const char *name)
{
    const char *slash = strrchr(name, '/');
    char *directory = slash == NULL ? name_with(".", "") : name_with(name, "");
    if (slash != NULL)
        directory[slash == name ? 1 : slash - name] = '\0';
    int descriptor = open(directory, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    free(directory);
    if (descriptor < 0)
        return;
    fsync(descriptor);
    close(descriptor);
}

/* Renames without ever replacing what may not be replaced, also when it appeared while we wrote. */
static int rename_to(const char *from, const char *to, bool replace)
{
    if (replace)
        return rename(from, to);
    if (renameat2(AT_FDCWD, from, AT_FDCWD, to, RENAME_NOREPLACE) == 0)
        return 0;
    if (errno != EINVAL && errno != ENOSYS)
        return -1;
    if (link(from, to) != 0)
        return -1;
    return unlink(from);
}

static bool put_in_place(struct output *output, const char *name, struct failure *failure)
{
    bool settled = fsync(output->descriptor) == 0;
    settled = close(output->descriptor) == 0 && settled;
    bool fine = settled && rename_to(output->temporary, name, output->replace) == 0;
    if (fine) {
        settle_directory(name);
    } else {
        trouble(failure, "Cannot write", name, strerror(errno));
        unlink(output->temporary);
    }
    free_names(output);
    return fine;
}

bool output_finish(struct output *output, struct failure *failure)
{
    return output->target == NULL || put_in_place(output, output->target, failure);
}

bool output_keep_part(struct output *output, struct failure *failure)
{
    return output->target == NULL || put_in_place(output, output->part, failure);
}

void output_drop(struct output *output)
{
    if (output->target == NULL)
        return;
    close(output->descriptor);
    unlink(output->temporary);
    free_names(output);
}
