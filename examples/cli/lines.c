/* lines.c - requests line by line.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "lines.h"

#include <errno.h>
#include <fcntl.h>
#include <poll.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "interrupt.h"
#include "memory.h"

#define BLOCK_BYTES (64 * 1024)

/* ---- a check of what was read ----------------------------------------------------------------------------------- */

/* FNV-1a of 64 bits: it need not withstand anybody, only tell one input from another. */
#define CHECK_START UINT64_C(0xcbf29ce484222325)

static uint64_t check_byte(uint64_t check, int byte)
{
    return (check ^ (uint64_t)byte) * UINT64_C(0x100000001b3);
}

uint64_t check_bytes(uint64_t check, const char *bytes, size_t length)
{
    for (size_t i = 0; i < length; i++)
        check = check_byte(check, (unsigned char)bytes[i]);
    return check;
}

static uint64_t check_text(uint64_t check, const char *text)
{
    return check_bytes(check, text, strlen(text) + 1);
}

/* ---- lines ------------------------------------------------------------------------------------------------------ */

struct line new_line(void)
{
    return (struct line){ .text = need_memory(LINE_BYTES_MAX) };
}

void free_line(struct line *line)
{
    free(line->text);
}

static bool is_blank(const struct line *line)
{
    for (size_t i = 0; i < line->length; i++)
        if (line->text[i] == '\0' || strchr(" \t\r", line->text[i]) == NULL)
            return false;
    return !line->too_long;
}

/* ---- files ------------------------------------------------------------------------------------------------------ */

static bool is_standard_input(const char *name)
{
    return strcmp(name, "-") == 0;
}

/* Opens the next file of the list. False when there is none, or it cannot be opened. */
static bool open_next(struct lines *lines)
{
    lines->name = json_string_value(json_array_get(lines->names, lines->next_name));
    if (lines->name == NULL)
        return false;
    lines->next_name++;
    lines->number = 0;
    lines->descriptor = STDIN_FILENO;
    if (!is_standard_input(lines->name))
        lines->descriptor = open(lines->name, O_RDONLY | O_CLOEXEC);
    if (json_array_size(lines->names) > 1)
        lines->check = check_text(lines->check, lines->name);
    if (lines->descriptor >= 0)
        return true;
    lines->error = errno;
    return false;
}

static void close_this(struct lines *lines)
{
    if (lines->name != NULL && !lines->in_memory && lines->descriptor > STDIN_FILENO)
        close(lines->descriptor);
    lines->name = NULL;
}

/* Adds up the bytes of the files, as far as they are files; false leaves a failure. */
static bool measure(struct lines *lines, struct failure *failure)
{
    bool known = true;
    for (size_t i = 0; i < json_array_size(lines->names); i++) {
        const char *name = json_string_value(json_array_get(lines->names, i));
        struct stat found;
        bool standard = is_standard_input(name);
        int status = standard ? fstat(STDIN_FILENO, &found) : stat(name, &found);
        if (status == 0 && !standard)
            status = access(name, R_OK);
        if (status != 0 || S_ISDIR(found.st_mode)) {
            failure_say(failure, NULL, "Cannot read %s: %s.", name, strerror(status != 0 ? errno : EISDIR));
            failure->exit_code = EXIT_FILE_TROUBLE;
            return false;
        }
        known = known && S_ISREG(found.st_mode);
        lines->total_bytes += (int64_t)found.st_size;
    }
    if (!known)
        lines->total_bytes = 0;
    return true;
}

bool open_lines(struct lines *lines, json_t *names, const char *start, struct failure *failure)
{
    *lines = (struct lines){ .names = names, .check = check_text(CHECK_START, start) };
    if (!measure(lines, failure))
        return false;
    lines->block = need_memory(BLOCK_BYTES);
    return true;
}

void open_lines_of(struct lines *lines, const char *text, size_t length, const char *start)
{
    *lines = (struct lines){ .in_memory = true, .block = (char *)(uintptr_t)text, .filled = length, .name = "" };
    lines->total_bytes = (int64_t)length;
    lines->check = check_text(CHECK_START, start);
}

void close_lines(struct lines *lines)
{
    if (lines->in_memory)
        return;
    close_this(lines);
    free(lines->block);
}

/* ---- reading ---------------------------------------------------------------------------------------------------- */

/* Waits for something to read; false at a wake. */
static bool is_ready(struct lines *lines)
{
    struct pollfd waited[] = { { .fd = lines->descriptor, .events = POLLIN },
                               { .fd = wake_descriptor(), .events = POLLIN } };
    while (poll(waited, 2, -1) < 0)
        if (errno != EINTR) {
            lines->error = errno;
            return false;
        }
    return waited[1].revents == 0;
}

/* Fills the block; false at the end of the file, at a wake, or at an error. */
static bool fill(struct lines *lines)
{
    ssize_t got = -1;
    if (lines->in_memory)
        return false;
    do {
        if (!is_ready(lines))
            return false;
        got = read(lines->descriptor, lines->block, BLOCK_BYTES);
    } while (got < 0 && errno == EINTR);
    if (got < 0)
        lines->error = errno;
    if (got <= 0)
        return false;
    lines->used = 0;
    lines->filled = (size_t)got;
    return true;
}

/* The next byte of this file, or -1. */
static int next_byte(struct lines *lines)
{
    if (lines->used == lines->filled && !fill(lines))
        return -1;
    lines->bytes++;
    return (unsigned char)lines->block[lines->used++];
}

/* A line of the open file, blank or not; a last one without its end is one too. */
static bool read_line(struct lines *lines, struct line *line)
{
    line->length = 0;
    line->too_long = false;
    int byte = next_byte(lines);
    if (byte < 0)
        return false;
    for (; byte >= 0 && byte != '\n'; byte = next_byte(lines)) {
        lines->check = check_byte(lines->check, byte);
        if (line->length < LINE_BYTES_MAX)
            line->text[line->length++] = (char)byte;
        else
            line->too_long = true;
    }
    lines->check = check_byte(lines->check, '\n');
    line->number = ++lines->number;
    line->file = json_array_size(lines->names) > 1 ? lines->name : NULL;
    line->check = lines->check;
    line->bytes = lines->bytes;
    return byte == '\n' || (lines->error == 0 && !is_awake());
}

bool next_line(struct lines *lines, struct line *line)
{
    for (;;) {
        if (is_awake() || lines->error != 0 || (lines->name == NULL && !open_next(lines)))
            return false;
        if (!read_line(lines, line)) {
            if (lines->error != 0 || is_awake())
                return false;
            close_this(lines);
        } else if (!is_blank(line)) {
            return true;
        }
    }
}
