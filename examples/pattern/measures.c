/* measures.c - lengths with names, multiples, sums, and how far nodes extend, as the size has them.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "inside.h"

static muslin_id fixed(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len length;
    muslin_id id = 0;
    if (parse_length(making->complaints, place, value, &length))
        went_well(making, place, value, muslin_quilt_fixed(making->design->quilt, length, &id, &problem), &problem);
    return id;
}

static muslin_id with_name(struct making *making, const struct place *place, json_t *value, const char *name)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_len length;
    muslin_id id = 0;
    if (parse_length(making->complaints, place, value, &length))
        went_well(making, place, value,
                  muslin_quilt_measure(making->design->quilt, name, strlen(name), length, &id, &problem), &problem);
    return id;
}

static muslin_id sum(struct making *making, const struct place *place, const struct muslin_quilt_sum_spec *terms,
                     size_t count)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    muslin_status status = muslin_quilt_sum(making->design->quilt, terms, sizeof *terms, count, &id, &problem);
    went_well(making, place, NULL, status, &problem);
    return id;
}

/* So many times a measure: alone it must not be less than nothing, in a sum it may take away. */
static bool read_term(struct making *making, const struct place *place, json_t *value,
                      struct muslin_quilt_sum_spec *term)
{
    json_t *times = json_object_get(value, "times");
    must(muslin_quilt_sum_spec_init(term, sizeof *term));
    if (times == NULL)
        term->measure = make_measure(making, place, value);
    else if (measure_of(making, place, value, "of", &term->measure))
        term->factor = json_integer_value(times);
    return term->measure != 0;
}

static muslin_id make_times(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_sum_spec term;
    return read_term(making, place, value, &term) ? sum(making, place, &term, 1) : 0;
}

static muslin_id make_sum(struct making *making, const struct place *place, json_t *list)
{
    enum { TERMS_MOST = 32 };
    struct muslin_quilt_sum_spec terms[TERMS_MOST];
    const struct place within = place_in(place, "sum");
    bool all = true;
    size_t index;
    json_t *item;
    json_array_foreach(list, index, item)
    {
        struct place here = place_at(&within, index);
        all &= read_term(making, &here, item, &terms[index]);
    }
    return all ? sum(making, place, terms, json_array_size(list)) : 0;
}

static muslin_id extent(struct making *making, const struct place *place, json_t *value, const char *member,
                        int32_t axis)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id node = node_in(making, place, value, member);
    muslin_id id = 0;
    if (node != 0)
        went_well(making, place, NULL, muslin_quilt_extent(making->design->quilt, node, axis, &id, &problem), &problem);
    return id;
}

/* As the size has it, or else the file. */
muslin_id make_named_measure(struct making *making, const char *name)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place sizes = place_in(&file, "sizes");
    const struct place size = place_at(&sizes, making->design->size);
    const struct place of_size = place_in(&size, "measures");
    const struct place of_all = place_in(&file, "measures");
    json_t *own = making->design->pattern->sizes[making->design->size].values;
    json_t *value = json_object_get(json_object_get(own, "measures"), name);
    struct place place = place_in(value != NULL ? &of_size : &of_all, name);
    muslin_id id;
    if (is_made(making, "measures", name, &id))
        return id;
    if (value == NULL)
        value = json_object_get(json_object_get(making->file, "measures"), name);
    const char *text = json_string_value(value);
    bool is_length = text != NULL && (text[0] < 'a' || text[0] > 'z');
    id = is_length ? with_name(making, &place, value, name) : make_measure(making, &place, value);
    return note_made(making, "measures", name, id);
}

static muslin_id make_any(struct making *making, const struct place *place, json_t *value)
{
    const char *text = json_string_value(value);
    if (text != NULL)
        return text[0] >= 'a' && text[0] <= 'z' ? make_named_measure(making, text) : fixed(making, place, value);
    if (json_object_get(value, "times") != NULL)
        return make_times(making, place, value);
    if (json_object_get(value, "sum") != NULL)
        return make_sum(making, place, json_object_get(value, "sum"));
    if (json_object_get(value, "width of") != NULL)
        return extent(making, place, value, "width of", MUSLIN_AXIS_ACROSS);
    return extent(making, place, value, "height of", MUSLIN_AXIS_DOWN);
}

muslin_id make_measure(struct making *making, const struct place *place, json_t *value)
{
    muslin_id id = make_any(making, place, value);
    if (id != 0)
        note_place(making, place, id);
    return id;
}

bool measure_of(struct making *making, const struct place *place, json_t *object, const char *member, muslin_id *id)
{
    struct place here = place_in(place, member);
    json_t *value = json_object_get(object, member);
    *id = value != NULL ? make_measure(making, &here, value) : 0;
    return value == NULL || *id != 0;
}
