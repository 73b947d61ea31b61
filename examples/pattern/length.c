/* length.c - lengths, counts and switches as a pattern file has them.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "inside.h"

static muslin_status parse(const char *text, int32_t unit, struct muslin_parsed *parsed, struct muslin_problem *problem)
{
    struct muslin_parse_spec spec = MUSLIN_PARSE_SPEC_INIT;
    *parsed = (struct muslin_parsed){ .size = (uint32_t)sizeof *parsed };
    spec.default_unit = unit;
    return muslin_length_parse(text, strlen(text), &spec, parsed, problem);
}

/* A number without a unit takes whatever unit it is offered. */
static bool has_unit(const char *text)
{
    struct muslin_parsed inches;
    struct muslin_parsed millimetres;
    return parse(text, MUSLIN_LENGTH_UNIT_INCH, &inches, NULL) != MUSLIN_OK ||
           parse(text, MUSLIN_LENGTH_UNIT_MM, &millimetres, NULL) != MUSLIN_OK || inches.unit == millimetres.unit;
}

static const char *what_is_wrong(const char *text, muslin_status status)
{
    if (status == MUSLIN_ERR_OVERFLOW || status == MUSLIN_ERR_RANGE)
        return "this is too large for a length: 3.3 km at most";
    return strchr(text, ',') != NULL ? "this is no length: write a point for the comma, \"2.5 cm\""
                                     : "this is no length: write it like \"2 1/2 in\", \"0.75 in\" or \"6 mm\"";
}

bool parse_length(struct complaints *complaints, const struct place *place, json_t *value, muslin_len *length)
{
    struct muslin_parsed parsed;
    const char *text = json_string_value(value);
    muslin_status status = parse(text, MUSLIN_LENGTH_UNIT_INCH, &parsed, NULL);
    if (status != MUSLIN_OK) {
        complain_at(complaints, place, value, status, "%s", what_is_wrong(text, status));
        return false;
    }
    if (!has_unit(text)) {
        complain_at(complaints, place, value, -1,
                    "this length has no unit: write \"%.40s in\", \"%.40s cm\" or \"%.40s mm\"", text, text, text);
        return false;
    }
    if (parsed.value < 0 || parsed.value > MUSLIN_SIZE_MAX) {
        complain_at(complaints, place, value, MUSLIN_ERR_RANGE,
                    "a length is 0 or more, and 3.3 km at most%s",
                    parsed.value < 0 ? "; to take one away, add it with \"times\": -1" : "");
        return false;
    }
    *length = parsed.value;
    return true;
}

muslin_len length_of(const struct making *making, json_t *object, const char *member, const struct usual *usual)
{
    struct muslin_parsed parsed = { .value = 0 };
    const char *text = json_string_value(json_object_get(object, member));
    if (text == NULL && usual != NULL)
        text = making->design->pattern->units == PATTERN_INCH ? usual->inch : usual->metric;
    if (text != NULL)
        must(parse(text, MUSLIN_LENGTH_UNIT_INCH, &parsed, NULL));
    return parsed.value;
}

bool is_true(json_t *object, const char *member)
{
    return json_is_true(json_object_get(object, member));
}

/* A whole number, or the count that is named, as the size has it. */
int64_t count_of(const struct making *making, json_t *object, const char *member)
{
    const struct design *design = making->design;
    json_t *value = json_object_get(object, member);
    const char *name = json_string_value(value);
    if (name == NULL)
        return json_integer_value(value);
    value = json_object_get(json_object_get(design->pattern->sizes[design->size].values, "counts"), name);
    if (value == NULL)
        value = json_object_get(json_object_get(making->file, "counts"), name);
    return json_integer_value(value);
}
