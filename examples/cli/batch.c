/* batch.c - many requests in, many answers out, several at the same time.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every worker takes the next line, answers it and puts the answer in its place; whoever puts the one that is waited
 * for writes it and all that stand ready behind it. So no answer overtakes another, and no more lines are in hand than
 * there are places. Workers share nothing else: each has its own line, its own JSON, and the library keeps nothing. */
#define _GNU_SOURCE
#include "batch.h"

#include <inttypes.h>
#include <pthread.h>
#include <sched.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "interrupt.h"
#include "lines.h"
#include "memory.h"
#include "output.h"
#include "patterns.h"
#include "progress.h"
#include "resume.h"

/* ---- one line --------------------------------------------------------------------------------------------------- */

static json_t *answer_object(json_t *request, const struct common *defaults, struct failure *failure)
{
    const char *name = json_string_value(json_object_get(request, "command"));
    const struct command *command = name != NULL ? find_command(name) : NULL;
    if (command != NULL)
        return answer_request(command, request, defaults, failure);
    const bool for_scripts = name != NULL && (strcmp(name, "batch") == 0 || strcmp(name, "completion") == 0);
    const char *near = name != NULL ? nearest_command(name) : NULL;
    if (for_scripts)
        failure_say(failure, "command", "\"%s\" cannot be asked for in a line of a batch.", name);
    else if (name == NULL)
        failure_say(failure, "command", "The request names no command.");
    else
        failure_say(failure, "command", "\"%.60s\" is no command.%s%s%s", name, near != NULL ? " Did you mean " : "",
                    near != NULL ? near : "", near != NULL ? "?" : "");
    return NULL;
}

static json_t *read_request(const struct line *line, struct failure *failure)
{
    json_error_t error;
    if (line->too_long) {
        failure_say(failure, NULL, "The line is longer than %d bytes.", LINE_BYTES_MAX);
        return NULL;
    }
    json_t *request = json_loadb(line->text, line->length, JSON_REJECT_DUPLICATES, &error);
    if (request == NULL)
        failure_say(failure, NULL, "The line is not JSON: %s, at column %d.", error.text, error.column);
    else if (!json_is_object(request)) {
        failure_say(failure, NULL, "The line is JSON, but no object: write {\"command\": \"cut\", ...}.");
        json_decref(request);
        request = NULL;
    }
    return request;
}

/* {"line": 7, "check": "...", "id": ..., "answer": {...}}, or "error" in place of "answer"; of several files, also
 * which "file" the line is in. */
static json_t *start_reply(const struct line *line, json_t *id)
{
    char check[20];
    json_t *reply = json_object();
    snprintf(check, sizeof check, "%016" PRIx64, line->check);
    if (line->file != NULL)
        json_object_set_new(reply, "file", json_string(line->file));
    json_object_set_new(reply, "line", json_integer(line->number));
    json_object_set_new(reply, "check", json_string(check));
    if (id != NULL)
        json_object_set(reply, "id", id);
    return reply;
}

static json_t *reply_to(const struct line *line, const struct common *defaults, bool *answered)
{
    struct failure failure = { .exit_code = EXIT_ANSWERED };
    json_t *request = read_request(line, &failure);
    json_t *answer = request != NULL ? answer_object(request, defaults, &failure) : NULL;
    json_t *reply = start_reply(line, json_object_get(request, "id"));
    *answered = answer != NULL;
    if (answer != NULL)
        json_object_set_new(reply, "answer", answer);
    else
        json_object_set_new(reply, "error", failure_as_json(&failure));
    json_decref(failure.complaints);
    json_decref(request);
    return reply;
}

/* ---- places ----------------------------------------------------------------------------------------------------- */

/* An answer that waits for those before it. */
struct place {
    char *text; /* null while it is not ready */
    size_t length;
    int64_t bytes; /* of the input, up to the end of its line */
    bool failed;
};

enum { PLACES_A_JOB = 16 };

struct hall {
    const struct common *defaults;
    pthread_mutex_t at_input;  /* held to take a line; who needs both takes this first */
    struct lines *lines;
    int64_t taken;             /* lines, since this run began */
    pthread_mutex_t at_output; /* held for all that is below */
    pthread_cond_t room;       /* there is a place again, or no more lines are to be taken */
    struct output *output;
    struct failure *failure;
    struct progress progress;
    struct tally tally;
    struct place *places;
    int64_t place_count;
    int64_t written;           /* answers, since this run began */
    bool broken;               /* the output */
};

/* False when no more lines are to be taken. */
static bool wait_for_room(struct hall *hall)
{
    pthread_mutex_lock(&hall->at_output);
    while (hall->taken - hall->written >= hall->place_count && !hall->broken && !is_awake())
        pthread_cond_wait(&hall->room, &hall->at_output);
    bool fine = !hall->broken && !is_awake();
    pthread_mutex_unlock(&hall->at_output);
    return fine;
}

/* Takes the next line and with it the number of its place; -1 when there is none. */
static int64_t take_line(struct hall *hall, struct line *line)
{
    pthread_mutex_lock(&hall->at_input);
    int64_t number = wait_for_room(hall) && next_line(hall->lines, line) ? hall->taken++ : -1;
    pthread_mutex_unlock(&hall->at_input);
    return number;
}

/* Writes the answer that is next, if it is ready. */
static bool write_next(struct hall *hall)
{
    struct place *place = &hall->places[hall->written % hall->place_count];
    if (hall->broken || place->text == NULL)
        return false;
    hall->broken = !output_write(hall->output, place->text, place->length, hall->failure);
    free(place->text);
    place->text = NULL;
    if (hall->broken)
        return false;
    hall->written++;
    hall->tally.lines++;
    hall->tally.failed += place->failed;
    progress_step(&hall->progress, place->bytes, hall->tally.lines, hall->tally.failed);
    return true;
}

static void put_answer(struct hall *hall, int64_t number, const struct place *answer)
{
    pthread_mutex_lock(&hall->at_output);
    hall->places[number % hall->place_count] = *answer;
    while (write_next(hall))
        continue;
    if (hall->broken)
        wake(); /* nobody need wait for more input */
    pthread_cond_broadcast(&hall->room);
    pthread_mutex_unlock(&hall->at_output);
}

/* ---- workers ---------------------------------------------------------------------------------------------------- */

/* An answer that an interruption may have cut short is none: it is worked out again when the batch goes on. */
static void *work(void *context)
{
    struct hall *hall = context;
    struct line line = new_line();
    int64_t number;
    while ((number = take_line(hall, &line)) >= 0) {
        bool answered = false;
        json_t *reply = reply_to(&line, hall->defaults, &answered);
        struct place place = { .text = json_dumps(reply, JSON_COMPACT), .bytes = line.bytes, .failed = !answered };
        json_decref(reply);
        if (interrupted()) {
            free(place.text);
            break;
        }
        place.length = strlen(place.text) + 1;
        place.text[place.length - 1] = '\n'; /* in place of the terminator: the line goes out in one piece */
        put_answer(hall, number, &place);
    }
    pthread_mutex_lock(&hall->at_output);
    pthread_cond_broadcast(&hall->room);
    pthread_mutex_unlock(&hall->at_output);
    free_line(&line);
    return NULL;
}

static int64_t cores_to_use(void)
{
    cpu_set_t cores;
    int count = sched_getaffinity(0, sizeof cores, &cores) == 0 ? CPU_COUNT(&cores) : 1;
    return count < 1 ? 1 : count > JOBS_MAX ? JOBS_MAX : count;
}

/* The main thread is one of the workers; where another cannot be had, the work goes on without. */
static void work_together(struct hall *hall, int64_t jobs)
{
    pthread_t others[JOBS_MAX];
    int64_t count = 0;
    while (count < jobs - 1 && pthread_create(&others[count], NULL, work, hall) == 0)
        count++;
    work(hall);
    for (int64_t i = 0; i < count; i++)
        pthread_join(others[i], NULL);
}

static void answer_lines(struct hall *hall, const struct batch *batch)
{
    int64_t jobs = batch->jobs > 0 ? batch->jobs : cores_to_use();
    hall->place_count = jobs * PLACES_A_JOB;
    hall->places = need_memory((size_t)hall->place_count * sizeof *hall->places);
    pthread_mutex_init(&hall->at_input, NULL);
    pthread_mutex_init(&hall->at_output, NULL);
    pthread_cond_init(&hall->room, NULL);
    work_together(hall, jobs);
    for (int64_t i = 0; i < hall->place_count; i++)
        free(hall->places[i].text); /* behind one that was given up */
    pthread_cond_destroy(&hall->room);
    pthread_mutex_destroy(&hall->at_output);
    pthread_mutex_destroy(&hall->at_input);
    free(hall->places);
}

/* ---- the end ---------------------------------------------------------------------------------------------------- */

/* The run ended early, for the reason given: what is finished stays, in the part. */
static enum exit_code keep_what_is_finished(struct hall *hall, enum exit_code code, const char *reason,
                                            struct failure *failure)
{
    char kept[300] = "";
    if (hall->output->target != NULL)
        snprintf(kept, sizeof kept, " They are in %.200s; --resume goes on with them.", hall->output->temporary);
    if (!output_keep_part(hall->output, failure))
        return EXIT_FILE_TROUBLE;
    failure_say(failure, NULL, "%.200s after %lld finished lines.%s", reason, (long long)hall->tally.lines, kept);
    failure->exit_code = code;
    return code;
}

/* "Cannot write answers.jsonl: No space left on device." without its full stop, to go on with "after 7 lines". */
static void without_full_stop(char *sentence)
{
    size_t length = strlen(sentence);
    if (length > 0 && sentence[length - 1] == '.')
        sentence[length - 1] = '\0';
}

static enum exit_code end_batch(struct hall *hall, struct failure *failure)
{
    char reason[300];
    if (hall->broken) {
        snprintf(reason, sizeof reason, "%.200s", failure->sentence);
        without_full_stop(reason);
        return keep_what_is_finished(hall, EXIT_FILE_TROUBLE, reason, failure);
    }
    if (interrupted())
        return keep_what_is_finished(hall, EXIT_INTERRUPTED, "Stopped", failure);
    if (hall->lines->error != 0) {
        snprintf(reason, sizeof reason, "Cannot read %.200s: %s", hall->lines->name, strerror(hall->lines->error));
        return keep_what_is_finished(hall, EXIT_FILE_TROUBLE, reason, failure);
    }
    if (!output_finish(hall->output, failure))
        return EXIT_FILE_TROUBLE;
    return hall->tally.failed > 0 ? EXIT_NO_ANSWER : EXIT_ANSWERED;
}

/* ---- all of it -------------------------------------------------------------------------------------------------- */

/* Finds the place where an earlier run stopped. An interruption while it looks changes nothing. */
static enum exit_code find_place(struct hall *hall, struct failure *failure)
{
    bool fine = go_on(hall->output, hall->lines, &hall->tally, failure);
    if (fine && !interrupted())
        return EXIT_ANSWERED;
    if (fine)
        failure_say(failure, NULL, "Stopped before anything was changed.");
    failure->exit_code = fine ? EXIT_INTERRUPTED : EXIT_FILE_TROUBLE;
    output_drop(hall->output);
    return failure->exit_code;
}

static enum exit_code run_with(const struct batch *batch, struct lines *lines, struct output *output,
                               struct failure *failure)
{
    struct hall hall = { .defaults = &batch->defaults, .lines = lines, .output = output, .failure = failure };
    if (batch->resume) {
        enum exit_code found = find_place(&hall, failure);
        if (found != EXIT_ANSWERED)
            return found;
    }
    progress_start(&hall.progress, batch->progress, lines->total_bytes);
    hall.progress.bytes_before = lines->bytes;
    hall.progress.lines_before = hall.tally.lines;
    answer_lines(&hall, batch);
    progress_end(&hall.progress, lines->bytes, hall.tally.lines, hall.tally.failed);
    enum exit_code code = end_batch(&hall, failure);
    if (code == EXIT_NO_ANSWER)
        fprintf(stderr, "muslin: %lld of %lld lines failed; their errors are among the answers.\n",
                (long long)hall.tally.failed, (long long)hall.tally.lines);
    return code;
}

/* What decides the answers beside the lines: a batch cannot go on where this has changed. */
static void write_start(const struct batch *batch, uint64_t contents, char *text, size_t cap)
{
    const struct common *common = &batch->defaults;
    snprintf(text, cap, "%s %d %d %d %016" PRIx64, muslin_version_text(), common->units, common->bare_unit,
             common->decimal_comma, contents);
}

static enum exit_code run_over(const struct batch *batch, struct lines *lines, struct failure *failure)
{
    struct output output;
    const enum part part = batch->resume ? PART_GO_ON : batch->replace ? PART_AGAIN : PART_NEW;
    return output_open_part(&output, batch->output, part, batch->replace, failure)
               ? run_with(batch, lines, &output, failure)
               : EXIT_FILE_TROUBLE;
}

static enum exit_code run_over_patterns(const struct batch *batch, struct failure *failure)
{
    char start[80];
    struct lines lines;
    struct pattern_requests requests;
    enum exit_code code = EXIT_FILE_TROUBLE;
    if (ask_for_patterns(batch->inputs, &requests, failure)) {
        write_start(batch, requests.check, start, sizeof start);
        open_lines_of(&lines, requests.text, requests.length, start);
        code = run_over(batch, &lines, failure);
    }
    free(requests.text);
    return code;
}

enum exit_code run_batch(const struct batch *batch, struct failure *failure)
{
    char start[80];
    struct lines lines;
    enum exit_code code = EXIT_FILE_TROUBLE;
    if (batch->patterns)
        return run_over_patterns(batch, failure);
    json_t *names = batch->inputs != NULL ? json_incref(batch->inputs) : json_pack("[s]", "-");
    write_start(batch, 0, start, sizeof start);
    if (open_lines(&lines, names, start, failure)) {
        code = run_over(batch, &lines, failure);
        close_lines(&lines);
    }
    json_decref(names);
    return code;
}
