/* finishing.c - binding, batting, backing, hanging sleeve and the bed, as the file has them.
 *
 * SPDX-License-Identifier: MIT */
#include "inside.h"

/* A binding is folded in half and sewn through all its layers: what its two seams take must leave something. */
static void check_binding(struct making *making, const struct muslin_binding_spec *spec)
{
    static const struct place file = { NULL, NULL, 0 };
    const struct place binding = place_in(&file, "binding");
    const struct place width = place_in(&binding, "cut width");
    muslin_len seams;
    must(muslin_length_multiply(spec->allowance, 2, &seams));
    if (spec->binding_cut <= seams)
        complain_at(making->complaints, &width,
                    json_object_get(json_object_get(making->file, "binding"), "cut width"), -1,
                    "a binding is cut wider than its two seam allowances");
}

static void choose_binding(struct making *making, json_t *value)
{
    static const struct usual width = { "2 1/2 in", "6 cm" };
    static const struct usual extra = { "12 in", "30 cm" };
    const struct muslin_binding_spec usual = MUSLIN_BINDING_SPEC_INIT;
    struct design *design = making->design;
    struct muslin_binding_spec *spec = &design->binding;
    *spec = usual;
    design->has_binding = true;
    design->binding_fabric = fabric_of(making, value, "fabric");
    spec->binding_cut = length_of(making, value, "cut width", &width);
    design->asks_binding_extra = json_object_get(value, "extra") != NULL;
    spec->extra = length_of(making, value, "extra", &extra);
    spec->strip_length = cloth_of(design, design->binding_fabric)->usable_width;
    spec->allowance = making->allowance;
    spec->step = design->buying.step;
    spec->join = value_of_word(value, "join", kinds_of_join, usual.join);
    check_binding(making, spec);
}

static void choose_batting(struct making *making, json_t *value)
{
    static const struct usual beyond = { "3 in", "8 cm" };
    const struct muslin_batting_spec usual = MUSLIN_BATTING_SPEC_INIT;
    struct muslin_batting_spec *spec = &making->design->batting;
    *spec = usual;
    making->design->has_batting = true;
    spec->margin_left = spec->margin_right = spec->margin_top = spec->margin_bottom =
        length_of(making, value, "beyond", &beyond);
    spec->roll_width = length_of(making, value, "roll width", NULL);
}

/* A cloth of its own, or a fabric of the top: then as wide, and with the same print, where nothing else is said. */
static void choose_backing(struct making *making, json_t *value)
{
    static const struct usual beyond = { "4 in", "10 cm" };
    static const struct usual width = { "40 in", "100 cm" };
    static const struct usual seam = { "1/2 in", "12 mm" };
    const struct muslin_backing_spec usual = MUSLIN_BACKING_SPEC_INIT;
    struct design *design = making->design;
    struct muslin_backing_spec *spec = &design->backing;
    *spec = usual;
    design->has_backing = true;
    design->backing_fabric = fabric_of(making, value, "fabric");
    design->backing_name = json_string_value(json_object_get(value, "name"));
    const struct cloth *cloth = cloth_of(design, design->backing_fabric);
    if (design->backing_name == NULL && cloth != NULL)
        design->backing_name = cloth->name;
    spec->margin_left = spec->margin_right = spec->margin_top = spec->margin_bottom =
        length_of(making, value, "beyond", &beyond);
    spec->fabric_width = length_of(making, value, "width", &width);
    if (json_object_get(value, "width") == NULL && cloth != NULL)
        spec->fabric_width = cloth->usable_width;
    spec->selvage = length_of(making, value, "selvage", NULL);
    spec->allowance = length_of(making, value, "seam", &seam);
    spec->repeat = length_of(making, value, "repeat", NULL);
    spec->step = design->buying.step;
    spec->print = value_of_word(value, "print", kinds_of_print, cloth != NULL ? cloth->print : MUSLIN_PRINT_NONE);
}

static void choose_sleeve(struct making *making, json_t *value)
{
    static const struct usual depth = { "4 in", "10 cm" };
    static const struct usual inset = { "1 in", "25 mm" };
    static const struct usual gap = { "2 in", "50 mm" };
    static const struct usual ease = { "1/2 in", "12 mm" };
    static const struct usual hem = { "1 in", "25 mm" };
    const struct muslin_hanging_spec usual = MUSLIN_HANGING_SPEC_INIT;
    struct muslin_hanging_spec *spec = &making->design->sleeve;
    json_t *sleeves = json_object_get(value, "sleeves");
    *spec = usual;
    making->design->has_sleeve = true;
    making->design->sleeve_fabric = fabric_of(making, value, "fabric");
    spec->sleeves = sleeves != NULL ? json_integer_value(sleeves) : 1;
    spec->drop = length_of(making, value, "depth", &depth);
    spec->inset = length_of(making, NULL, "", &inset);
    spec->gap = length_of(making, NULL, "", &gap);
    spec->ease = length_of(making, NULL, "", &ease);
    spec->hem = length_of(making, NULL, "", &hem);
    spec->allowance = making->allowance;
}

void make_finishing(struct making *making)
{
    struct design *design = making->design;
    json_t *binding = json_object_get(making->file, "binding");
    json_t *batting = json_object_get(making->file, "batting");
    json_t *backing = json_object_get(making->file, "backing");
    json_t *sleeve = json_object_get(making->file, "sleeve");
    json_t *bed = json_object_get(design->pattern->sizes[design->size].values, "bed");
    if (binding != NULL)
        choose_binding(making, binding);
    if (batting != NULL)
        choose_batting(making, batting);
    if (backing != NULL)
        choose_backing(making, backing);
    if (sleeve != NULL)
        choose_sleeve(making, sleeve);
    design->has_bed = bed != NULL;
    design->bed_width = length_of(making, bed, "width", NULL);
    design->bed_length = length_of(making, bed, "length", NULL);
    design->bed_depth = length_of(making, bed, "depth", NULL);
}
