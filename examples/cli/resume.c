/* resume.c - a batch that was cut off goes on where it stopped.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "resume.h"

#include <errno.h>
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

#include "interrupt.h"

/* An answer of an earlier run. */
struct answered {
    int64_t line;
    uint64_t check;
    bool failed;
};

static bool refuse(struct failure *failure, const char *sentence, int64_t at, const struct output *output)
{
    const char *name = output->earlier >= 0 ? output->target : output->temporary;
    failure_say(failure, "resume", sentence, (long long)at, name);
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

/* Every answer of a batch has the number of its line, a check of the input so far, and an answer or an error. */
static bool read_answered(const char *text, size_t length, struct answered *answered)
{
    json_t *reply = json_loadb(text, length, 0, NULL);
    const char *check = json_string_value(json_object_get(reply, "check"));
    const json_t *error = json_object_get(reply, "error");
    bool fine = check != NULL && sscanf(check, "%16" SCNx64, &answered->check) == 1 &&
                (error != NULL || json_object_get(reply, "answer") != NULL);
    answered->line = json_integer_value(json_object_get(reply, "line"));
    answered->failed = error != NULL;
    json_decref(reply);
    return fine;
}

/* Is it the answer to the next request? */
static bool matches(const struct answered *answered, struct lines *lines, struct line *line)
{
    return next_line(lines, line) && line->number == answered->line && line->check == answered->check;
}

/* Takes one whole line over, into the part where it comes from elsewhere. */
static bool take_over(struct output *output, const char *text, size_t length, struct failure *failure)
{
    if (output->earlier >= 0)
        return output_write(output, text, length, failure);
    output->whole += (int64_t)length;
    return true;
}

static bool go_through(FILE *earlier, struct output *output, struct lines *lines, struct line *line,
                       struct tally *tally, struct failure *failure)
{
    char *text = NULL;
    size_t room = 0;
    bool fine = true;
    ssize_t length;
    while (fine && !is_awake() && (length = getline(&text, &room, earlier)) > 0 && text[length - 1] == '\n') {
        struct answered answered;
        tally->lines++;
        if (!read_answered(text, (size_t)length, &answered))
            fine = refuse(failure, "Line %lld of %s is no answer of this program. Use --force without --resume to "
                                   "start anew.", tally->lines, output);
        else if (matches(&answered, lines, line))
            fine = take_over(output, text, (size_t)length, failure);
        else if (!is_awake())
            fine = refuse(failure, "The input, the options or this program are not those that line %lld of %s was "
                                   "answered with. Give the same ones, or use --force without --resume to start anew.",
                          tally->lines, output);
        tally->failed += answered.failed;
    }
    free(text);
    return fine;
}

/* What is behind the last whole line was cut off. */
static bool stand_behind(struct output *output, struct failure *failure)
{
    if (ftruncate(output->descriptor, (off_t)output->whole) == 0 &&
        lseek(output->descriptor, (off_t)output->whole, SEEK_SET) >= 0)
        return true;
    failure_say(failure, NULL, "Cannot write %s: %s.", output->temporary, strerror(errno));
    failure->exit_code = EXIT_FILE_TROUBLE;
    return false;
}

bool go_on(struct output *output, struct lines *lines, struct tally *tally, struct failure *failure)
{
    int descriptor = dup(output->earlier >= 0 ? output->earlier : output->descriptor);
    FILE *earlier = descriptor >= 0 ? fdopen(descriptor, "r") : NULL;
    if (earlier == NULL) {
        failure_say(failure, NULL, "Cannot read %s: %s.", output->target, strerror(errno));
        failure->exit_code = EXIT_FILE_TROUBLE;
        return false;
    }
    struct line line = new_line();
    bool fine = go_through(earlier, output, lines, &line, tally, failure);
    free_line(&line);
    fclose(earlier);
    return fine && (is_awake() || stand_behind(output, failure));
}
