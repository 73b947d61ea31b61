/* request.c - from a JSON request to a filled request struct, by the command's table of options.
 *
 * SPDX-License-Identifier: MIT */
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "command.h"
#include "memory.h"
#include "words.h"

const struct word unit_words[] = {
    { "in", UNITS_INCH }, { "decimal", UNITS_INCH_DECIMAL }, { "cm", UNITS_CM }, { "mm", UNITS_MM }, { NULL, 0 }
};
static const struct word bare_unit_words[] = {
    { "in", MUSLIN_LENGTH_UNIT_INCH }, { "ft", MUSLIN_LENGTH_UNIT_FOOT }, { "yd", MUSLIN_LENGTH_UNIT_YARD },
    { "mm", MUSLIN_LENGTH_UNIT_MM }, { "cm", MUSLIN_LENGTH_UNIT_CM }, { "m", MUSLIN_LENGTH_UNIT_M }, { NULL, 0 }
};

const struct option_row common_options[] = {
    OPTION_HEADING("How lengths are read and written"),
    { "units", KIND_CHOICE, offsetof(struct common, units), 0, 0, unit_words,
      "write lengths in inches and fractions (the default), in decimal inches, in cm or in mm; changes no size" },
    { "bare-unit", KIND_CHOICE, offsetof(struct common, bare_unit), 0, 0, bare_unit_words,
      "unit of a number without a unit: 6 is 6 inches unless told otherwise" },
    { "decimal-comma", KIND_SWITCH, offsetof(struct common, decimal_comma), 0, 0, NULL,
      "the decimal sign is a comma, in and out: 6,35 cm" },
    OPTION_END
};

const struct common usual_common = { .units = UNITS_INCH, .bare_unit = MUSLIN_LENGTH_UNIT_INCH };

/* ---- finding options -------------------------------------------------------------------------------------------- */

static bool same_name(const char *name, const char *written)
{
    while (*name != '\0' && (*name == *written || (*name == '-' && *written == '_'))) {
        name++;
        written++;
    }
    return *name == '\0' && *written == '\0';
}

static const struct option_row *find_in(const struct option_row *options, const char *name)
{
    for (const struct option_row *row = options; row->name != NULL; row++)
        if (row->kind != KIND_HEADING && same_name(row->name, name))
            return row;
    return NULL;
}

const struct option_row *find_option(const struct option_row *options, const char *name)
{
    const struct option_row *row = find_in(options, name);
    return row != NULL ? row : find_in(common_options, name);
}

const char *nearest_option(const struct command *command, const char *written)
{
    struct nearest nearest = nearest_start(written);
    for (const struct option_row *row = command->options; row->name != NULL; row++)
        if (row->kind != KIND_HEADING)
            nearest_offer(&nearest, row->name);
    for (const struct option_row *row = common_options; row->name != NULL; row++)
        if (row->kind != KIND_HEADING)
            nearest_offer(&nearest, row->name);
    return nearest.word;
}

/* ---- reading one value ------------------------------------------------------------------------------------------ */

static bool refuse(struct desk *desk, const struct option_row *row, const char *wanted)
{
    failure_say(desk->failure, row->name, "%s", wanted);
    return false;
}

/* A length is text as people write it, a whole number of bare units, or {"ticks": n} as answers give it. */
static bool length_value(struct desk *desk, const struct option_row *row, const json_t *value, muslin_len *out)
{
    if (json_is_string(value))
        return read_length(desk, row->name, json_string_value(value), json_string_length(value), out);
    if (json_is_integer(value)) {
        char text[32];
        int length = snprintf(text, sizeof text, "%" JSON_INTEGER_FORMAT, json_integer_value(value));
        return read_length(desk, row->name, text, (size_t)length, out);
    }
    const json_t *ticks = json_object_get(value, "ticks");
    if (!json_is_integer(ticks))
        return refuse(desk, row, "Write a length in quotes, such as \"2 1/2 in\" or \"6.35 cm\".");
    *out = json_integer_value(ticks);
    return true;
}

static bool count_value(struct desk *desk, const struct option_row *row, const json_t *value, int64_t *out)
{
    if (json_is_integer(value)) {
        *out = json_integer_value(value);
        return true;
    }
    const char *text = json_string_value(value);
    if (text == NULL || text[0] == '\0')
        return refuse(desk, row, "Give a whole number.");
    char *end = NULL;
    errno = 0;
    long long number = strtoll(text, &end, 10);
    if (errno == ERANGE)
        return refuse(desk, row, "This number is too large to count with.");
    if (end == text || *end != '\0')
        return refuse(desk, row, "Give a whole number, in digits only.");
    *out = number;
    return true;
}

/* "3 %", "2.5%": parts per million, so four decimals at most. */
static bool share_value(struct desk *desk, const struct option_row *row, const json_t *value, int32_t *out)
{
    static const char wanted[] = "Write a share in per cent with at most four decimals, such as \"3 %\" or \"2.5%\".";
    const char *text = json_string_value(value);
    if (text == NULL)
        return refuse(desk, row, wanted);
    char sign = desk->common.decimal_comma ? ',' : '.';
    int64_t ppm = 0;
    int decimals = -1;
    size_t digits = 0;
    for (; (*text >= '0' && *text <= '9') || (*text == sign && decimals < 0); text++) {
        if (*text == sign) {
            decimals = 0;
            continue;
        }
        ppm = ppm * 10 + (*text - '0');
        digits++;
        decimals += decimals >= 0;
        if (ppm > INT32_MAX || decimals > 4)
            return refuse(desk, row, wanted);
    }
    for (int i = decimals < 0 ? 0 : decimals; i < 4; i++)
        ppm *= 10;
    while (*text == ' ')
        text++;
    if (digits == 0 || strcmp(text, "%") != 0 || ppm > INT32_MAX)
        return refuse(desk, row, wanted);
    *out = (int32_t)ppm;
    return true;
}

static bool choice_value(struct desk *desk, const struct option_row *row, const json_t *value, int32_t *out)
{
    const char *text = json_string_value(value);
    const struct word *word = text != NULL ? find_word(row->words, text) : NULL;
    if (word != NULL) {
        *out = word->value;
        return true;
    }
    char list[300];
    struct nearest nearest = nearest_start(text != NULL ? text : "");
    for (word = row->words; word->word != NULL; word++)
        nearest_offer(&nearest, word->word);
    list_words(row->words, list, sizeof list);
    if (nearest.word != NULL)
        failure_say(desk->failure, row->name, "\"%.40s\" is not known here. Did you mean %s? Choose one of %s.", text,
                    nearest.word, list);
    else
        failure_say(desk->failure, row->name, "Choose one of %s.", list);
    return false;
}

/* On the command line a switch needs no value; in JSON it is true or false. */
static bool switch_value(struct desk *desk, const struct option_row *row, const json_t *value, int32_t *out)
{
    if (!json_is_boolean(value))
        return refuse(desk, row, "This is a switch: true or false.");
    *out = json_is_true(value);
    return true;
}

static bool text_value(struct desk *desk, const struct option_row *row, const json_t *value, const char **out)
{
    *out = json_string_value(value);
    return *out != NULL || refuse(desk, row, "Write this as text in quotes.");
}

static bool one_length_of_list(struct desk *desk, const struct option_row *row, const json_t *value,
                               struct lengths *list)
{
    if (list->count == LIST_MAX)
        return refuse(desk, row, "Give at most 200 of these.");
    if (!length_value(desk, row, value, &list->values[list->count]))
        return false;
    list->count++;
    return true;
}

static bool one_text_of_list(struct desk *desk, const struct option_row *row, const json_t *value, struct texts *list)
{
    if (list->count == TEXTS_MAX)
        return refuse(desk, row, "Give at most 40 of these.");
    if (!json_is_string(value))
        return refuse(desk, row, "Write this as text in quotes.");
    list->texts[list->count++] = json_string_value(value);
    return true;
}

static bool list_value(struct desk *desk, const struct option_row *row, const json_t *value, void *field)
{
    bool lengths = row->kind == KIND_LENGTHS;
    if (!json_is_array(value))
        return lengths ? one_length_of_list(desk, row, value, field) : one_text_of_list(desk, row, value, field);
    for (size_t i = 0; i < json_array_size(value); i++) {
        const json_t *element = json_array_get(value, i);
        bool fine = lengths ? one_length_of_list(desk, row, element, field)
                            : one_text_of_list(desk, row, element, field);
        if (!fine)
            return false;
    }
    return true;
}

static bool files_value(struct desk *desk, const struct option_row *row, json_t *value, json_t **out)
{
    size_t i;
    json_t *name;
    *out = value;
    json_array_foreach(value, i, name)
        if (!json_is_string(name))
            return refuse(desk, row, "Write each of these as text in quotes.");
    return json_is_array(value) || refuse(desk, row, "Write these as a list of texts in quotes.");
}

static bool read_value(struct desk *desk, const struct option_row *row, json_t *value, void *target)
{
    void *field = (char *)target + row->offset;
    switch (row->kind) {
    case KIND_LENGTH:
        return length_value(desk, row, value, field);
    case KIND_COUNT:
        return count_value(desk, row, value, field);
    case KIND_SHARE:
        return share_value(desk, row, value, field);
    case KIND_CHOICE:
        return choice_value(desk, row, value, field);
    case KIND_SWITCH:
        return switch_value(desk, row, value, field);
    case KIND_TEXT:
    case KIND_FILE:
        return text_value(desk, row, value, field);
    case KIND_LENGTHS:
    case KIND_TEXTS:
        return list_value(desk, row, value, field);
    case KIND_FILES:
        return files_value(desk, row, value, field);
    case KIND_HEADING:
        break;
    }
    return true;
}

/* ---- reading a request ------------------------------------------------------------------------------------------ */

/* Members that are no options: the command's name, and a mark that a batch line gets back with its answer. */
static bool is_envelope(const char *member)
{
    return strcmp(member, "command") == 0 || strcmp(member, "id") == 0;
}

/* The request with each member under its option's own name; null when a member is no option. */
static json_t *request_in_table_words(const struct command *command, json_t *request, struct failure *failure)
{
    json_t *plain = json_object();
    const char *member;
    json_t *value;
    json_object_foreach(request, member, value) {
        if (is_envelope(member) || json_is_null(value))
            continue;
        const struct option_row *row = find_option(command->options, member);
        if (row == NULL) {
            const char *near = nearest_option(command, member);
            failure_say(failure, member, "\"%s\" has no option \"%.60s\".%s%s%s", command->name, member,
                        near != NULL ? " Did you mean " : "", near != NULL ? near : "", near != NULL ? "?" : "");
            json_decref(plain);
            return NULL;
        }
        json_object_set(plain, row->name, value);
    }
    return plain;
}

static bool read_options(struct desk *desk, const struct option_row *options, void *target)
{
    for (const struct option_row *row = options; row->name != NULL; row++) {
        json_t *value = row->kind != KIND_HEADING ? json_object_get(desk->request, row->name) : NULL;
        if (value != NULL && !read_value(desk, row, value, target))
            return false;
        if (value == NULL && (row->flags & OPTION_REQUIRED) != 0) {
            failure_say(desk->failure, row->name, "This must be given: %s.", row->help);
            return false;
        }
    }
    return true;
}

static json_t *answer_at_desk(const struct command *command, struct desk *desk)
{
    if (!read_options(desk, common_options, &desk->common))
        return NULL;
    void *request = need_memory(command->request_size);
    command->start(request);
    json_t *answer = NULL;
    if (read_options(desk, command->options, request))
        answer = command->answer(request, desk);
    free(request);
    return answer;
}

bool read_by_table(json_t *object, const struct option_row *options, void *target, struct failure *failure)
{
    struct desk desk = { .common = usual_common,
                         .failure = failure,
                         .options = options,
                         .request = object };
    desk.problem.size = sizeof desk.problem;
    return read_options(&desk, options, target);
}

bool read_common(json_t *request, struct common *common, struct failure *failure)
{
    return read_by_table(request, common_options, common, failure);
}

json_t *answer_request(const struct command *command, json_t *request, const struct common *defaults,
                       struct failure *failure)
{
    struct desk desk = { .common = *defaults, .failure = failure, .options = command->options };
    desk.problem.size = sizeof desk.problem;
    desk.request = request_in_table_words(command, request, failure);
    if (desk.request == NULL)
        return NULL;
    json_t *figures = answer_at_desk(command, &desk);
    json_decref(desk.request);
    if (figures == NULL)
        return NULL;
    json_t *answer = json_pack("{s:s}", "command", command->name);
    json_object_update(answer, figures);
    json_decref(figures);
    return answer;
}
