/* values.c - SQL values read as lengths, counts and words; and what is said of those that are none.
 *
 * SPDX-License-Identifier: MIT */
#include <stdarg.h>
#include <string.h>

#include "sql.h"
#include "words.h"

SQLITE_EXTENSION_INIT3

/* ---- what is wrong ----------------------------------------------------------------------------------------------- */

bool trouble_say(struct trouble *trouble, const char *format, ...)
{
    va_list values;
    va_start(values, format);
    if (!trouble->is_there)
        trouble->sentence = sqlite3_vmprintf(format, values);
    trouble->is_there = true;
    va_end(values);
    return false;
}

bool trouble_memory(struct trouble *trouble)
{
    trouble->is_there = true;
    return false;
}

bool was_answered(struct trouble *trouble, muslin_status status, const struct muslin_problem *problem)
{
    if (status == MUSLIN_OK)
        return true;
    return trouble_say(trouble, "%s", problem->text[0] != '\0' ? problem->text : muslin_status_sentence(status));
}

/* ---- values ------------------------------------------------------------------------------------------------------ */

static const char *type_of(sqlite3_value *value)
{
    switch (sqlite3_value_type(value)) {
    case SQLITE_INTEGER:
        return "a whole number";
    case SQLITE_FLOAT:
        return "a number with a point";
    case SQLITE_TEXT:
        return "a text";
    case SQLITE_BLOB:
        return "a blob";
    default:
        return "nothing";
    }
}

static muslin_status parse(const char *text, size_t length, int32_t unit, struct muslin_parsed *parsed,
                           struct muslin_problem *problem)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    *parsed = (struct muslin_parsed){ .size = (uint32_t)sizeof *parsed };
    spec.default_unit = unit;
    return muslin_length_parse(text, length, &spec, parsed, problem);
}

/* There is no other decimal sign to choose in SQL. */
bool length_was_read(struct trouble *trouble, const char *what, muslin_status status,
                     const struct muslin_problem *problem)
{
    if (status == MUSLIN_OK)
        return true;
    if (status == MUSLIN_ERR_TEXT_DECIMAL)
        return trouble_say(trouble, "The %s has a comma at byte %lld: write decimals with a point, as in '2.5 in'.",
                           what, (long long)problem->at);
    return trouble_say(trouble, "The %s cannot be read. %s", what, problem->text);
}

bool length_from_text(struct trouble *trouble, const char *what, const char *text, size_t length, muslin_len *out)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_parsed inches;
    struct muslin_parsed metric;
    const muslin_status status = parse(text, length, MUSLIN_LENGTH_UNIT_INCH, &inches, &problem);
    if (!length_was_read(trouble, what, status, &problem))
        return false;
    /* A number without a unit takes whatever unit it is offered. */
    if (parse(text, length, MUSLIN_LENGTH_UNIT_MM, &metric, NULL) == MUSLIN_OK && metric.unit != inches.unit) {
        const int shown = length < 40 ? (int)length : 40;
        return trouble_say(trouble, "The %s, \"%.*s\", has no unit: write \"%.*s in\" or \"%.*s mm\".", what, shown,
                           text, shown, text, shown, text);
    }
    *out = inches.value;
    return true;
}

bool length_from(struct trouble *trouble, const char *what, sqlite3_value *value, muslin_len *length)
{
    if (sqlite3_value_type(value) == SQLITE_TEXT) {
        const char *text = (const char *)sqlite3_value_text(value);
        return text == NULL ? trouble_memory(trouble)
                            : length_from_text(trouble, what, text, (size_t)sqlite3_value_bytes(value), length);
    }
    if (sqlite3_value_type(value) != SQLITE_INTEGER)
        return trouble_say(trouble, "The %s is %s: write whole ticks, or a text with its unit such as '2 1/2 in'.",
                           what, type_of(value));
    *length = sqlite3_value_int64(value);
    return true;
}

bool length_if(struct trouble *trouble, const char *what, sqlite3_value *value, muslin_len *length)
{
    return value == NULL || length_from(trouble, what, value, length);
}

bool count_from(struct trouble *trouble, const char *what, sqlite3_value *value, int64_t *count)
{
    if (sqlite3_value_type(value) != SQLITE_INTEGER)
        return trouble_say(trouble, "The %s is %s: it must be a whole number.", what, type_of(value));
    *count = sqlite3_value_int64(value);
    return true;
}

bool count_if(struct trouble *trouble, const char *what, sqlite3_value *value, int64_t *count)
{
    return value == NULL || count_from(trouble, what, value, count);
}

bool text_from(struct trouble *trouble, const char *what, sqlite3_value *value, const char **text, size_t *length)
{
    if (sqlite3_value_type(value) != SQLITE_TEXT)
        return trouble_say(trouble, "The %s is %s: it must be a text.", what, type_of(value));
    *text = (const char *)sqlite3_value_text(value);
    *length = (size_t)sqlite3_value_bytes(value);
    return *text != NULL || trouble_memory(trouble);
}

bool word_from(struct trouble *trouble, const char *what, sqlite3_value *value, const struct word *words,
               int32_t *chosen)
{
    char list[400];
    const char *text = NULL;
    size_t length = 0;
    if (!text_from(trouble, what, value, &text, &length))
        return false;
    const struct word *word = find_word(words, text);
    list_words(words, list, sizeof list);
    if (word == NULL || strlen(text) != length)
        return trouble_say(trouble, "The %s cannot be \"%!.40s\": it is %s.", what, text, list);
    *chosen = word->value;
    return true;
}
