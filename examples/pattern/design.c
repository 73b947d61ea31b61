/* design.c - one size of a pattern: made in the order fabrics, top, borders, policies, finishing; and asked about.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

static const struct place the_whole = { NULL, NULL, 0 };

void *room_for_one(void *rows, size_t used, size_t size)
{
    if ((used & (used - 1)) != 0)
        return rows;
    return kept(realloc(rows, (used == 0 ? 1 : 2 * used) * size));
}

const char *keep_text(struct design *design, char *text)
{
    design->texts = room_for_one(design->texts, design->texts_used, sizeof *design->texts);
    design->texts[design->texts_used++] = text;
    return text;
}

const char *in_own_units(const struct making *making, const char *sentence, char text[300])
{
    const enum pattern_units units = making->design->pattern->units;
    const char *nothing;
    size_t used = 0;
    if (units == PATTERN_INCH)
        return sentence;
    while ((nothing = strstr(sentence, " 0 in")) != NULL && used < 200) {
        const bool is_whole = strchr(" ,.;", nothing[5]) != NULL;
        used += (size_t)snprintf(text + used, 300 - used, "%.*s%s", (int)(nothing - sentence), sentence,
                                 is_whole && units == PATTERN_CM ? " 0 cm" : is_whole ? " 0 mm" : " 0 in");
        sentence = nothing + 5;
    }
    snprintf(text + used, 300 - used, "%s", sentence);
    return text;
}

bool went_well(struct making *making, const struct place *place, json_t *value, muslin_status status,
               const struct muslin_problem *problem)
{
    if (status == MUSLIN_ERR_NO_MEMORY)
        must(status);
    char text[300];
    if (status != MUSLIN_OK)
        complain_at(making->complaints, place, value, status, "%s", in_own_units(making, problem->text, text));
    return status == MUSLIN_OK;
}

/* ---- making it --------------------------------------------------------------------------------------------------- */

static bool begin(struct making *making)
{
    static const struct usual quarter = { "1/4 in", "6 mm" };
    enum { PARTS_MOST = 1 << 20 }; /* a file that comes to more is no quilt */
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_allocator allocator;
    json_t *seam = json_object_get(making->file, "seam");
    const struct place place = place_in(&the_whole, "seam");
    must(muslin_allocator_libc(&allocator));
    spec.most = PARTS_MOST;
    spec.allowance = making->allowance = length_of(making, seam, "allowance", &quarter);
    spec.take_up = length_of(making, seam, "take up", NULL);
    muslin_status status = muslin_quilt_create(&spec, &allocator, &making->design->quilt, &problem);
    return went_well(making, &place, seam, status, &problem);
}

/* Those that nothing uses are made too: what is wrong with them is told. */
static void make_all(struct making *making, const char *among, muslin_id (*make)(struct making *, const char *))
{
    const char *name;
    json_t *ignored;
    json_object_foreach(json_object_get(making->file, among), name, ignored) make(making, name);
}

static void make_top(struct making *making)
{
    struct design *design = making->design;
    const struct place top = place_in(&the_whole, "top");
    const struct place borders = place_in(&the_whole, "borders");
    design->centre = make_node(making, &top, json_object_get(making->file, "top"));
    design->top = make_borders(making, &borders, json_object_get(making->file, "borders"), design->centre, true);
}

static int by_node(const void *a, const void *b)
{
    const struct named *first = a;
    const struct named *second = b;
    return first->id < second->id ? -1 : first->id > second->id;
}

struct design *design_create(const struct pattern *pattern, size_t size, struct complaints *complaints)
{
    struct design *design = kept(calloc(1, sizeof *design));
    struct complaints own = { NULL, 0, 0 };
    struct making making = { .design = design, .complaints = &own, .file = pattern->root };
    design->pattern = pattern;
    design->size = size;
    making.known = kept(json_pack("{s{}s{}s{}s{}s{}}", "fabrics", "measures", "parts", "places", "names"));
    if (begin(&making)) {
        make_fabrics(&making);
        make_all(&making, "measures", make_named_measure);
        make_all(&making, "parts", make_part);
        make_top(&making);
        make_policies(&making);
        make_finishing(&making);
        if (own.used == 0)
            try_solving(&making);
    }
    design->places = json_incref(json_object_get(making.known, "places"));
    json_decref(making.known);
    free(making.border_widths);
    if (design->names_used > 0)
        qsort(design->names, design->names_used, sizeof *design->names, by_node);
    bool is_right = own.used == 0;
    complaints_move(complaints, &own);
    if (is_right)
        return design;
    design_free(design);
    return NULL;
}

void design_free(struct design *design)
{
    if (design == NULL)
        return;
    muslin_quilt_free(design->quilt);
    json_decref(design->places);
    for (size_t i = 0; i < design->texts_used; i++)
        free(design->texts[i]);
    free(design->texts);
    free(design->cloths);
    free(design->names);
    free(design->units);
    free(design->fields);
    free(design->borders);
    free(design);
}

/* ---- what was made already --------------------------------------------------------------------------------------- */

bool is_made(const struct making *making, const char *among, const char *name, muslin_id *id)
{
    json_t *made = json_object_get(json_object_get(making->known, among), name);
    *id = json_integer_value(made);
    return made != NULL;
}

muslin_id note_made(struct making *making, const char *among, const char *name, muslin_id id)
{
    json_object_set_new(json_object_get(making->known, among), name, kept(json_integer(id)));
    return id;
}

enum { ID_ROOM = 24 };

static const char *id_text(muslin_id id, char text[ID_ROOM])
{
    snprintf(text, ID_ROOM, "%" PRId64, id);
    return text;
}

void note_place(struct making *making, const struct place *place, muslin_id node)
{
    char text[ID_ROOM];
    json_t *places = json_object_get(making->known, "places");
    if (json_object_get(places, id_text(node, text)) != NULL)
        return;
    char *pointer = pointer_of(place);
    json_object_set_new(places, text, kept(json_string(pointer)));
    free(pointer);
}

const char *place_noted(const struct making *making, muslin_id node)
{
    char text[ID_ROOM];
    return json_string_value(json_object_get(json_object_get(making->known, "places"), id_text(node, text)));
}

struct named *call_node(struct making *making, const struct place *place, muslin_id node, const char *name)
{
    char text[ID_ROOM];
    struct design *design = making->design;
    json_t *names = json_object_get(making->known, "names");
    json_t *row = json_object_get(names, id_text(node, text));
    if (row != NULL)
        return &design->names[json_integer_value(row)];
    json_object_set_new(names, text, kept(json_integer((json_int_t)design->names_used)));
    design->names = room_for_one(design->names, design->names_used, sizeof *design->names);
    struct named *named = &design->names[design->names_used++];
    *named = (struct named){ .id = node, .name = name, .place = keep_text(design, pointer_of(place)) };
    return named;
}

/* ---- asked about ------------------------------------------------------------------------------------------------- */

const struct cloth *cloth_of(const struct design *design, muslin_id fabric)
{
    for (size_t i = 0; i < design->cloths_used; i++)
        if (design->cloths[i].id == fabric)
            return &design->cloths[i];
    return NULL;
}

const struct named *named_of(const struct design *design, muslin_id node)
{
    const struct named wanted = { .id = node };
    if (design->names_used == 0)
        return NULL;
    return bsearch(&wanted, design->names, design->names_used, sizeof wanted, by_node);
}

const char *place_made(const struct design *design, muslin_id id)
{
    char text[ID_ROOM];
    return json_string_value(json_object_get(design->places, id_text(id, text)));
}

const struct unit_asked *unit_of(const struct design *design, muslin_id node)
{
    for (size_t i = 0; i < design->units_used; i++)
        if (design->units[i].id == node)
            return &design->units[i];
    return NULL;
}
