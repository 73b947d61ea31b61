/* fabrics.c - the fabrics of a pattern.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

/* As the file has it, or a grey as dark as the fabric. */
static void write_colour(unsigned char colour[3], json_t *fabric, int32_t darkness)
{
    const char *text = json_string_value(json_object_get(fabric, "color"));
    unsigned long number = text != NULL ? strtoul(text + 1, NULL, 16) : 0;
    unsigned long grey = darkness > 0 ? 250 - 2 * (unsigned long)darkness : 160;
    for (int i = 0; i < 3; i++)
        colour[i] = (unsigned char)((text != NULL ? number >> (16 - 8 * i) : grey) & 0xFF);
}

static struct cloth *add_cloth(struct making *making, const char *key, json_t *fabric, muslin_id id)
{
    struct design *design = making->design;
    json_t *strips = json_object_get(fabric, "strips");
    const char *name = json_string_value(json_object_get(fabric, "name"));
    design->cloths = room_for_one(design->cloths, design->cloths_used, sizeof *design->cloths);
    struct cloth *cloth = &design->cloths[design->cloths_used];
    *cloth = (struct cloth){ .id = id, .key = key, .name = name != NULL ? name : key };
    snprintf(cloth->letter, sizeof cloth->letter, "F%zu", ++design->cloths_used);
    cloth->strip_cut = length_of(making, strips, "cut width", NULL);
    cloth->strips_have = json_integer_value(json_object_get(strips, "have"));
    return cloth;
}

/* One that is wrong is told, and made with the usual width: so what is sewn of it is looked at too. */
static muslin_id add_fabric(struct making *making, const struct place *place, const char *key,
                            struct muslin_quilt_fabric_spec *spec)
{
    static const struct muslin_quilt_fabric_spec usual = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_quilt *quilt = making->design->quilt;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    muslin_status status = muslin_quilt_fabric(quilt, spec, key, strlen(key), &id, &problem);
    if (!went_well(making, place, NULL, status, &problem)) {
        spec->usable_width = usual.usable_width;
        must(muslin_quilt_fabric(quilt, spec, key, strlen(key), &id, NULL));
    }
    return id;
}

static void make_fabric(struct making *making, const struct place *place, const char *key, json_t *fabric)
{
    static const struct usual forty = { "40 in", "100 cm" };
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    spec.usable_width = length_of(making, fabric, "usable width", &forty);
    spec.print = value_of_word(fabric, "print", kinds_of_print, MUSLIN_PRINT_NONE);
    spec.darkness = (int32_t)json_integer_value(json_object_get(fabric, "darkness"));
    muslin_id id = add_fabric(making, place, key, &spec);
    note_made(making, "fabrics", key, id);
    struct cloth *cloth = add_cloth(making, key, fabric, id);
    cloth->print = spec.print;
    cloth->usable_width = spec.usable_width;
    write_colour(cloth->colour, fabric, spec.darkness);
}

void make_fabrics(struct making *making)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place list = place_in(&file, "fabrics");
    const char *key;
    json_t *fabric;
    json_object_foreach(json_object_get(making->file, "fabrics"), key, fabric)
    {
        struct place place = place_in(&list, key);
        make_fabric(making, &place, key, fabric);
    }
}

muslin_id fabric_called(const struct making *making, json_t *name)
{
    muslin_id id = 0;
    if (json_is_string(name))
        is_made(making, "fabrics", json_string_value(name), &id);
    return id;
}

muslin_id fabric_of(const struct making *making, json_t *object, const char *member)
{
    return fabric_called(making, json_object_get(object, member));
}
