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
#include <sys/file.h>
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
}

bool output_open(struct output *output, const char *target, bool replace, struct failure *failure)
{
    *output = (struct output){ .descriptor = STDOUT_FILENO, .earlier = -1, .replace = replace, .is_new = true };
    if (target == NULL)
        return true;
    if (!may_take_place(target, replace, failure))
        return false;
    output->target = name_with(target, "");
    output->temporary = name_with(target, ".XXXXXX");
    output->descriptor = mkostemp(output->temporary, O_CLOEXEC);
    if (output->descriptor >= 0 && fchmod(output->descriptor, usual_mode()) == 0)
        return true;
    trouble(failure, "Cannot write", target, strerror(errno));
    free_names(output);
    return false;
}

/* ---- a part ----------------------------------------------------------------------------------------------------- */

/* The file is ours alone and still has its name: who wrote it before may have renamed it while we waited. */
static bool is_ours(int descriptor, const char *name)
{
    struct stat held;
    struct stat named;
    return flock(descriptor, LOCK_EX | LOCK_NB) == 0 && fstat(descriptor, &held) == 0 && lstat(name, &named) == 0 &&
           held.st_dev == named.st_dev && held.st_ino == named.st_ino;
}

static bool open_temporary(struct output *output, enum part part, struct failure *failure)
{
    const char *name = output->temporary;
    struct stat found;
    output->is_new = lstat(name, &found) != 0;
    if (!output->is_new && part == PART_NEW)
        return trouble(failure, "Will not overwrite", name,
                       "it holds the finished lines of an earlier run; go on with it by --resume, or use --force to "
                       "start anew");
    if (!output->is_new && !S_ISREG(found.st_mode))
        return trouble(failure, "Cannot write", name, "it is there and is no ordinary file");
    output->descriptor = open(name, O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW | (output->is_new ? O_EXCL : 0), 0666);
    if (output->descriptor < 0)
        return trouble(failure, "Cannot write", name, strerror(errno));
    if (!is_ours(output->descriptor, name)) {
        close(output->descriptor);
        return trouble(failure, "Cannot write", name, "another run is writing it");
    }
    if (part == PART_AGAIN && ftruncate(output->descriptor, 0) != 0) {
        close(output->descriptor);
        return trouble(failure, "Cannot write", name, strerror(errno));
    }
    return true;
}

/* Whether one goes on where the other ends, which has a whole line. */
static bool begin_alike(FILE *target, FILE *part)
{
    bool has_line = false;
    int one = getc(target);
    int other = getc(part);
    while (one == other && one != EOF) {
        has_line = has_line || one == '\n';
        one = getc(target);
        other = getc(part);
    }
    return has_line && (one == EOF || other == EOF);
}

/* A part that goes on with the target's lines may take its place. */
static bool goes_on(const char *target, const char *part)
{
    FILE *first = fopen(target, "re");
    FILE *second = fopen(part, "re");
    const bool alike = first != NULL && second != NULL && begin_alike(first, second);
    if (first != NULL)
        fclose(first);
    if (second != NULL)
        fclose(second);
    return alike;
}

/* Where there is no part, or nothing in it, the target may be one that was cut off: its lines go on in a new part, and it
 * stays until that is finished. */
static bool open_earlier(struct output *output, bool *may_replace, struct failure *failure)
{
    struct stat target;
    struct stat part;
    if (lstat(output->target, &target) != 0)
        return true;
    if (!S_ISREG(target.st_mode))
        return trouble(failure, "Cannot write", output->target, "it is there and is no ordinary file");
    if (lstat(output->temporary, &part) == 0 && (part.st_size > 0 || !S_ISREG(part.st_mode))) {
        *may_replace = *may_replace || (S_ISREG(part.st_mode) && goes_on(output->target, output->temporary));
        return true;
    }
    output->earlier = open(output->target, O_RDONLY | O_CLOEXEC);
    *may_replace = true;
    return output->earlier >= 0 || trouble(failure, "Cannot read", output->target, strerror(errno));
}

bool output_open_part(struct output *output, const char *target, enum part part, bool replace,
                      struct failure *failure)
{
    *output = (struct output){ .descriptor = STDOUT_FILENO, .earlier = -1, .replace = replace, .is_new = true };
    if (target == NULL)
        return true;
    output->is_part = true;
    output->target = name_with(target, "");
    output->temporary = name_with(target, ".part");
    if ((part != PART_GO_ON || open_earlier(output, &output->replace, failure)) &&
        may_take_place(target, output->replace, failure) && open_temporary(output, part, failure))
        return true;
    if (output->earlier >= 0)
        close(output->earlier);
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
    const int64_t whole = output->whole + (int64_t)length;
    while (length > 0) {
        ssize_t written = write(output->descriptor, text, length);
        if (written < 0 && errno == EINTR)
            continue;
        if (written < 0)
            return trouble(failure, "Cannot write", name_of(output), strerror(errno));
        text += written;
        length -= (size_t)written;
    }
    output->whole = whole;
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

/* Closes and frees; the failure says what `fine` is the last of. */
static bool leave(struct output *output, bool fine, struct failure *failure)
{
    if (!fine)
        trouble(failure, "Cannot write", output->target, strerror(errno));
    if (output->earlier >= 0)
        close(output->earlier);
    free_names(output);
    return fine;
}

bool output_finish(struct output *output, struct failure *failure)
{
    if (output->target == NULL)
        return true;
    bool fine = fsync(output->descriptor) == 0 && rename_to(output->temporary, output->target, output->replace) == 0;
    const int why = errno;
    close(output->descriptor);
    if (fine)
        settle_directory(output->target);
    else if (!output->is_part)
        unlink(output->temporary);
    errno = why;
    return leave(output, fine, failure);
}

bool output_keep_part(struct output *output, struct failure *failure)
{
    if (output->target == NULL)
        return true;
    bool fine = ftruncate(output->descriptor, (off_t)output->whole) == 0 && fsync(output->descriptor) == 0;
    const int why = errno;
    close(output->descriptor);
    errno = why;
    return leave(output, fine, failure);
}

void output_drop(struct output *output)
{
    struct failure unused;
    if (output->target == NULL)
        return;
    close(output->descriptor);
    if (output->is_new)
        unlink(output->temporary);
    leave(output, true, &unused);
}
