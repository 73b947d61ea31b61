/* failure.c - what went wrong, as a sentence and as JSON.
 *
 * SPDX-License-Identifier: MIT */
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

#include "command.h"

void failure_say(struct failure *failure, const char *option, const char *format, ...)
{
    *failure = (struct failure){ .exit_code = EXIT_WRONG_INPUT, .status = STATUS_REQUEST };
    if (option != NULL)
        snprintf(failure->option, sizeof failure->option, "%s", option);
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(failure->sentence, sizeof failure->sentence, format, arguments);
    va_end(arguments);
}

/* "  /parts/lamp/size, line 12: ..." */
static void tell_complaint(json_t *complaint)
{
    const char *place = json_string_value(json_object_get(complaint, "place"));
    const char *value = json_string_value(json_object_get(complaint, "value"));
    const char *sizes = json_string_value(json_object_get(complaint, "sizes"));
    const json_int_t line = json_integer_value(json_object_get(complaint, "line"));
    const json_int_t column = json_integer_value(json_object_get(complaint, "column"));
    fprintf(stderr, "  %s", place != NULL && place[0] != '\0' ? place : "the file");
    if (line > 0)
        fprintf(stderr, ", line %" JSON_INTEGER_FORMAT ", column %" JSON_INTEGER_FORMAT, line, column);
    if (sizes != NULL)
        fprintf(stderr, ", size %s", sizes);
    if (value != NULL)
        fprintf(stderr, ", %s", value);
    fprintf(stderr, ": %s\n", json_string_value(json_object_get(complaint, "sentence")));
}

void tell_failure(const char *program, const struct failure *failure)
{
    bool named = failure->option[0] != '\0';
    fprintf(stderr, "%s: %s%s%s%s\n", program, named ? "--" : "", failure->option, named ? ": " : "",
            failure->sentence);
    for (size_t i = 0; i < json_array_size(failure->complaints); i++)
        tell_complaint(json_array_get(failure->complaints, i));
}

/* JSON text must be UTF-8; a file's name, or a sentence cut short, need not be. */
static json_t *text_as_json(const char *text)
{
    json_t *json = json_string(text);
    if (json != NULL)
        return json;
    char plain[sizeof((struct failure *)0)->sentence];
    snprintf(plain, sizeof plain, "%s", text);
    for (char *c = plain; *c != '\0'; c++)
        *c = (unsigned char)*c < 128 ? *c : '?';
    return json_string(plain);
}

json_t *failure_as_json(const struct failure *failure)
{
    bool own = failure->status == STATUS_REQUEST;
    json_t *error = json_object();
    json_object_set_new(error, "status", own ? json_null() : json_integer(failure->status));
    json_object_set_new(error, "name", json_string(own ? "REQUEST" : muslin_status_name(failure->status)));
    json_object_set_new(error, "sentence", text_as_json(failure->sentence));
    json_object_set_new(error, "option", failure->option[0] != '\0' ? text_as_json(failure->option) : json_null());
    if (failure->complaints != NULL)
        json_object_set(error, "complaints", failure->complaints);
    if (own)
        return error;
    json_object_set_new(error, "argument", json_string(muslin_argument_words(failure->argument)));
    json_object_set_new(error, "at", json_integer(failure->at));
    json_object_set_new(error, "value", json_integer(failure->value));
    json_object_set_new(error, "limit", json_integer(failure->limit));
    return error;
}

enum exit_code exit_code_of(muslin_status status)
{
    switch (status) {
    case MUSLIN_ERR_SEAM_TOO_WIDE:
    case MUSLIN_ERR_NOT_SQUARE:
    case MUSLIN_ERR_NO_YIELD:
    case MUSLIN_ERR_NOT_ENOUGH:
    case MUSLIN_ERR_NO_FIT:
    case MUSLIN_ERR_OVERFLOW:
        return EXIT_NO_ANSWER;
    default:
        return EXIT_WRONG_INPUT;
    }
}

/* The option that feeds this argument of the library; of several, one that was given. Empty when there is none. A block
 * that is not square is put down to the turning that wants it so. */
static const char *option_of(const struct desk *desk, const struct muslin_problem *problem)
{
    const char *found = "";
    int32_t argument = problem->status == MUSLIN_ERR_NOT_SQUARE ? MUSLIN_ARG_TURNING : problem->argument;
    for (const struct option_row *row = desk->options; row->name != NULL; row++) {
        if (row->kind == KIND_HEADING || argument == MUSLIN_ARG_NONE || row->argument != argument)
            continue;
        if (given(desk, row->name))
            return row->name;
        if (found[0] == '\0')
            found = row->name;
    }
    return found;
}

/* Some plain sums have no problem to describe. */
static const char *sentence_alone(muslin_status status)
{
    return status == MUSLIN_ERR_RANGE ? "A length, a factor or the rounding lies outside its range."
                                      : muslin_status_sentence(status);
}

bool worked(struct desk *desk, muslin_status status)
{
    if (status == MUSLIN_OK)
        return true;
    struct failure *failure = desk->failure;
    const struct muslin_problem *problem = &desk->problem;
    bool described = problem->status == status;
    *failure = (struct failure){ .exit_code = exit_code_of(status), .status = status };
    if (described) {
        failure->argument = problem->argument;
        failure->at = problem->at;
        failure->value = problem->value;
        failure->limit = problem->limit;
        snprintf(failure->option, sizeof failure->option, "%s", option_of(desk, problem));
    }
    const char *sentence = described ? problem->text : sentence_alone(status);
    snprintf(failure->sentence, sizeof failure->sentence, "%s", sentence);
    return false;
}

bool read_length(struct desk *desk, const char *option, const char *text, size_t length, muslin_len *out)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    spec.default_unit = desk->common.bare_unit;
    spec.decimal_sign = desk->common.decimal_comma ? ',' : '.';
    struct muslin_parsed parsed = { .size = sizeof parsed };
    muslin_status status = muslin_length_parse(text, length, &spec, &parsed, &desk->problem);
    if (worked(desk, status)) {
        *out = parsed.value;
        return true;
    }
    struct failure *failure = desk->failure;
    const char *hint = "";
    if (status == MUSLIN_ERR_TEXT_DECIMAL)
        hint = desk->common.decimal_comma ? " You asked for the decimal comma." : " Or set decimal-comma.";
    snprintf(failure->option, sizeof failure->option, "%s", option);
    snprintf(failure->sentence, sizeof failure->sentence, "\"%.*s\": %s%s", (int)(length < 60 ? length : 60), text,
             desk->problem.text, hint);
    return false;
}

bool given(const struct desk *desk, const char *option)
{
    return json_object_get(desk->request, option) != NULL;
}
