/* ring.c - parts and measures that would be made of themselves, and what stands too deep within each other by name.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

/* A name that is being looked into, and the one in which it was met. */
struct under_way {
    const struct under_way *in;
    const char *among;
    const char *name;
};

static bool is_under_way(const struct under_way *under_way, const char *among, const char *name)
{
    for (; under_way != NULL; under_way = under_way->in)
        if (strcmp(under_way->among, among) == 0 && strcmp(under_way->name, name) == 0)
            return true;
    return false;
}

/* The names from the first one in the ring to the last. */
static void write_ring(char *text, size_t room, const struct under_way *last, const char *among, const char *name)
{
    bool is_first = strcmp(last->among, among) == 0 && strcmp(last->name, name) == 0;
    if (!is_first)
        write_ring(text, room, last->in, among, name);
    size_t used = strlen(text);
    snprintf(text + used, room - used, "\"%s\" of ", last->name);
}

static void complain_of_ring(struct check *check, const struct place *place, const struct form *form, const char *name)
{
    char ring[600] = "";
    write_ring(ring, sizeof ring, check->under_way, form->among, name);
    complain_at(check->complaints, place, NULL, -1, "this goes round in a ring and never ends: %s\"%s\"", ring, name);
}

/* Looks into what a name stands for: how many things stand within each other there. */
static size_t look_into(struct check *check, const struct form *form, const char *name)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place list = place_in(&file, form->among);
    const struct place here = place_in(&list, name);
    const struct under_way now = { check->under_way, form->among, name };
    size_t deepest = check->deepest;
    check->deepest = check->depth;
    check->under_way = &now;
    check_value(check, &here, strcmp(form->among, "parts") == 0 ? node_form : measure_form,
                json_object_get(json_object_get(check->file, form->among), name));
    size_t depth = check->deepest - check->depth;
    check->under_way = now.in;
    check->deepest = deepest;
    return depth;
}

/* Each name is looked into once. */
static void follow_name(struct check *check, const struct place *place, const struct form *form, const char *name)
{
    json_t *known = json_object_get(check->followed, form->among);
    json_t *found = json_object_get(known, name);
    if (known == NULL)
        return; /* a fabric, a count */
    if (is_under_way(check->under_way, form->among, name)) {
        complain_of_ring(check, place, form, name);
        return;
    }
    size_t depth = found != NULL ? (size_t)json_integer_value(found) : look_into(check, form, name);
    if (found == NULL)
        json_object_set_new(known, name, kept(json_integer((json_int_t)depth)));
    if (check->depth + depth > DEEPEST)
        stands_too_deep(check, place);
    else if (check->depth + depth > check->deepest)
        check->deepest = check->depth + depth;
}

static void follow_all(struct check *check, const struct form *name)
{
    const struct place file = { NULL, NULL, 0 };
    struct place list = place_in(&file, name->among);
    const char *key;
    json_t *value;
    json_object_foreach(json_object_get(check->file, name->among), key, value)
    {
        struct place here = place_in(&list, key);
        follow_name(check, &here, name, key);
    }
}

void check_rings(struct check *check)
{
    const struct place file = { NULL, NULL, 0 };
    static const struct form measures = { .kind = A_NAME, .among = "measures" };
    static const struct form parts = { .kind = A_NAME, .among = "parts" };
    check->followed = kept(json_pack("{s{}s{}}", "measures", "parts"));
    check->follow = follow_name;
    follow_all(check, &measures);
    follow_all(check, &parts);
    check_value(check, &file, &the_file, check->file);
    json_decref(check->followed);
}
