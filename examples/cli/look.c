/* look.c - looking into an answer.
 *
 * SPDX-License-Identifier: MIT */
#include "look.h"

#include <string.h>

json_t *part(json_t *answer, const char *section, const char *member)
{
    return json_object_get(json_object_get(answer, section), member);
}

bool any(json_t *answer, const char *section, const char *member)
{
    json_t *value = part(answer, section, member);
    if (json_is_object(value)) {
        json_t *ticks = json_object_get(value, "ticks");
        return json_integer_value(ticks != NULL ? ticks : json_object_get(value, "ppm")) != 0;
    }
    return json_integer_value(value) != 0 || json_array_size(value) > 0 || json_is_true(value);
}

bool says(json_t *object, const char *member, const char *text)
{
    const char *found = json_string_value(json_object_get(object, member));
    return found != NULL && strcmp(found, text) == 0;
}

bool in_yards(json_t *object, const char *member)
{
    return strstr(json_string_value(part(object, member, "text")), "yd") != NULL;
}

json_t *bare(json_t *object, const char *member)
{
    json_t *copy = json_deep_copy(object);
    json_object_set_new(json_object_get(copy, member), "exact", json_true());
    return copy;
}
