/* batch.c - many requests in, many answers out.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "batch.h"

#include <errno.h>
#include <fcntl.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

#include "interrupt.h"
#include "memory.h"
#include "output.h"
#include "progress.h"

/* ---- lines ------------------------------------------------------------------------------------------------------ */

#define LINE_BYTES_MAX (1024 * 1024)
#define BLOCK_BYTES (64 * 1024)

struct reader {
    int descriptor;
    char *block;
    size_t used;
    size_t filled;
    char *line;
    size_t length;   /* of the line in hand */
    bool too_long;
    int64_t bytes;   /* consumed */
    int error;       /* errno of a failed read */
};

/* The next byte, or -1 at the end, at an interruption, or at an error. */
static int next_byte(struct reader *reader)
{
    if (reader->used == reader->filled) {
        ssize_t got = interrupted() ? 0 : read(reader->descriptor, reader->block, BLOCK_BYTES);
        while (got < 0 && errno == EINTR && !interrupted())
            got = read(reader->descriptor, reader->block, BLOCK_BYTES);
        if (got < 0 && errno != EINTR)
            reader->error = errno;
        if (got <= 0)
            return -1;
        reader->used = 0;
        reader->filled = (size_t)got;
    }
    reader->bytes++;
    return (unsigned char)reader->block[reader->used++];
}

/* False at the end. Of a line longer than the limit only the beginning is kept, and it is marked. */
static bool read_line(struct reader *reader)
{
    reader->length = 0;
    reader->too_long = false;
    int byte = next_byte(reader);
    if (byte < 0)
        return false;
    for (; byte >= 0 && byte != '\n'; byte = next_byte(reader)) {
        if (reader->length < LINE_BYTES_MAX)
            reader->line[reader->length++] = (char)byte;
        else
            reader->too_long = true;
    }
    return byte == '\n' || !interrupted(); /* a line cut off by Ctrl-C is no line */
}

static bool is_blank(const struct reader *reader)
{
    for (size_t i = 0; i < reader->length; i++)
        if (strchr(" \t\r", reader->line[i]) == NULL || reader->line[i] == '\0')
            return false;
    return !reader->too_long;
}

/* ---- one line --------------------------------------------------------------------------------------------------- */

static json_t *answer_object(json_t *request, const struct common *defaults, struct failure *failure)
{
    const char *name = json_string_value(json_object_get(request, "command"));
    const struct command *command = name != NULL ? find_command(name) : NULL;
    if (command != NULL)
        return answer_request(command, request, defaults, failure);
    const char *near = name != NULL ? nearest_command(name) : NULL;
    if (name == NULL)
        failure_say(failure, "command", "The request names no command.");
    else
        failure_say(failure, "command", "\"%.60s\" is no command.%s%s%s", name, near != NULL ? " Did you mean " : "",
                    near != NULL ? near : "", near != NULL ? "?" : "");
    return NULL;
}

static json_t *read_request(const struct reader *reader, struct failure *failure)
{
    json_error_t error;
    if (reader->too_long) {
        failure_say(failure, NULL, "The line is longer than %d bytes.", LINE_BYTES_MAX);
        return NULL;
    }
    json_t *request = json_loadb(reader->line, reader->length, JSON_REJECT_DUPLICATES, &error);
    if (request == NULL)
        failure_say(failure, NULL, "The line is not JSON: %s, at column %d.", error.text, error.column);
    else if (!json_is_object(request)) {
        failure_say(failure, NULL, "The line is JSON, but no object: write {\"command\": \"cut\", ...}.");
        json_decref(request);
        request = NULL;
    }
    return request;
}

/* {"line": 7, "id": ..., "answer": {...}} or {"line": 7, "error": {...}}. */
static json_t *reply_to(const struct reader *reader, int64_t line, const struct common *defaults, bool *answered)
{
    struct failure failure = { .exit_code = EXIT_ANSWERED };
    json_t *request = read_request(reader, &failure);
    json_t *answer = request != NULL ? answer_object(request, defaults, &failure) : NULL;
    json_t *reply = json_pack("{s:I}", "line", (json_int_t)line);
    json_t *id = json_object_get(request, "id");
    if (id != NULL)
        json_object_set(reply, "id", id);
    *answered = answer != NULL;
    if (answer != NULL)
        json_object_set_new(reply, "answer", answer);
    else
        json_object_set_new(reply, "error", failure_as_json(&failure));
    json_decref(request);
    return reply;
}

static bool write_reply(struct output *output, json_t *reply, struct failure *failure)
{
    char *text = json_dumps(reply, JSON_COMPACT);
    size_t length = strlen(text);
    text[length] = '\n'; /* in place of the terminator: the line goes out in one piece */
    bool fine = output_write(output, text, length + 1, failure);
    free(text);
    return fine;
}

/* ---- all lines -------------------------------------------------------------------------------------------------- */

struct tally {
    int64_t lines;
    int64_t failed;
};

/* False when the output failed. */
static bool answer_lines(struct reader *reader, const struct batch *batch, struct output *output,
                         struct progress *progress, struct tally *tally, struct failure *failure)
{
    for (int64_t line = 1; !interrupted() && read_line(reader); line++) {
        if (is_blank(reader))
            continue;
        bool answered = false;
        json_t *reply = reply_to(reader, line, &batch->defaults, &answered);
        bool fine = write_reply(output, reply, failure);
        json_decref(reply);
        if (!fine)
            return false;
        tally->lines++;
        tally->failed += !answered;
        progress_step(progress, reader->bytes, tally->lines, tally->failed);
    }
    return true;
}

static bool open_input(struct reader *reader, const char *name, int64_t *total, struct failure *failure)
{
    struct stat found;
    *reader = (struct reader){ .descriptor = STDIN_FILENO };
    if (name != NULL && strcmp(name, "-") != 0)
        reader->descriptor = open(name, O_RDONLY | O_CLOEXEC);
    if (reader->descriptor < 0) {
        failure_say(failure, NULL, "Cannot read %s: %s.", name, strerror(errno));
        failure->exit_code = EXIT_FILE_TROUBLE;
        return false;
    }
    bool sized = fstat(reader->descriptor, &found) == 0 && S_ISREG(found.st_mode);
    *total = sized ? (int64_t)found.st_size : 0;
    reader->block = need_memory(BLOCK_BYTES);
    reader->line = need_memory(LINE_BYTES_MAX);
    return true;
}

static void close_input(struct reader *reader)
{
    if (reader->descriptor != STDIN_FILENO)
        close(reader->descriptor);
    free(reader->block);
    free(reader->line);
}

/* The run ended early, for the reason given: what is finished stays, under the .part name. */
static enum exit_code keep_what_is_finished(struct output *output, const struct tally *tally, enum exit_code code,
                                            const char *reason, struct failure *failure)
{
    char kept[300] = "";
    if (output->target != NULL)
        snprintf(kept, sizeof kept, " They are in %.200s.", output->part);
    if (!output_keep_part(output, failure))
        return EXIT_FILE_TROUBLE;
    failure_say(failure, NULL, "%s after %lld finished lines.%s", reason, (long long)tally->lines, kept);
    failure->exit_code = code;
    return code;
}

static enum exit_code end_batch(const struct reader *reader, struct output *output, const struct tally *tally,
                                bool written, struct failure *failure)
{
    if (!written) {
        output_drop(output);
        return EXIT_FILE_TROUBLE;
    }
    if (interrupted())
        return keep_what_is_finished(output, tally, EXIT_INTERRUPTED, "Stopped", failure);
    if (reader->error != 0)
        return keep_what_is_finished(output, tally, EXIT_FILE_TROUBLE, strerror(reader->error), failure);
    if (!output_finish(output, failure))
        return EXIT_FILE_TROUBLE;
    return tally->failed > 0 ? EXIT_NO_ANSWER : EXIT_ANSWERED;
}

enum exit_code run_batch(const struct batch *batch, struct failure *failure)
{
    struct reader reader;
    struct output output;
    struct progress progress;
    struct tally tally = { 0, 0 };
    int64_t total = 0;
    if (!open_input(&reader, batch->input, &total, failure))
        return EXIT_FILE_TROUBLE;
    if (!output_open(&output, batch->output, batch->replace, true, failure)) {
        close_input(&reader);
        return EXIT_FILE_TROUBLE;
    }
    progress_start(&progress, batch->progress, total);
    bool written = answer_lines(&reader, batch, &output, &progress, &tally, failure);
    progress_end(&progress, reader.bytes, tally.lines, tally.failed);
    enum exit_code code = end_batch(&reader, &output, &tally, written, failure);
    close_input(&reader);
    if (code == EXIT_NO_ANSWER)
        fprintf(stderr, "muslin: %lld of %lld lines failed; their errors are among the answers.\n",
                (long long)tally.failed, (long long)tally.lines);
    return code;
}
