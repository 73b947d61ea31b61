/* nodes.c - what is sewn: patches, joins, turned and trimmed parts; and which file has the other kinds.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "inside.h"

static muslin_id finish(struct making *making, const struct place *place, muslin_status status, muslin_id id,
                        const struct muslin_problem *problem)
{
    return went_well(making, place, NULL, status, problem) ? id : 0;
}

/* ---- leaves ------------------------------------------------------------------------------------------------------ */

static muslin_id make_patch(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    bool is_square = json_object_get(value, "size") != NULL;
    muslin_id id = 0;
    bool width = measure_of(making, place, value, is_square ? "size" : "width", &spec.width);
    bool height = measure_of(making, place, value, is_square ? "size" : "height", &spec.height);
    if (!width || !height)
        return 0;
    spec.fabric = fabric_of(making, value, "patch");
    muslin_status status = muslin_quilt_patch(making->design->quilt, &spec, &id, &problem);
    return finish(making, place, status, id, &problem);
}

/* ---- joins ------------------------------------------------------------------------------------------------------- */

muslin_id *make_nodes(struct making *making, const struct place *place, json_t *list, size_t *count)
{
    muslin_id *nodes = kept(calloc(json_array_size(list), sizeof *nodes));
    bool all = true;
    size_t index;
    json_t *item;
    json_array_foreach(list, index, item)
    {
        struct place here = place_at(place, index);
        nodes[index] = make_node(making, &here, item);
        all &= nodes[index] != 0;
    }
    *count = json_array_size(list);
    if (all)
        return nodes;
    free(nodes);
    return NULL;
}

static muslin_id join(struct making *making, const struct place *place, json_t *value, const char *member, int32_t axis)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct place list = place_in(place, member);
    muslin_id id = 0;
    size_t count;
    spec.axis = axis;
    spec.flags = is_true(value, "keep order") ? MUSLIN_QUILT_JOIN_KEEPS_ORDER : 0;
    spec.piecing = value_of_word(value, "strip piecing", piecing_words, MUSLIN_STRIP_PIECING_WHERE_FEWER);
    spec.press = value_of_word(value, "press", axis == MUSLIN_AXIS_ACROSS ? across_press_words : down_press_words,
                               MUSLIN_SEAM_PRESS_FREE);
    muslin_id *nodes = make_nodes(making, &list, json_object_get(value, member), &count);
    if (nodes == NULL)
        return 0;
    muslin_status status = muslin_quilt_join(making->design->quilt, &spec, nodes, count, &id, &problem);
    free(nodes);
    return finish(making, place, status, id, &problem);
}

static muslin_id make_across(struct making *making, const struct place *place, json_t *value)
{
    return join(making, place, value, "across", MUSLIN_AXIS_ACROSS);
}

static muslin_id make_down(struct making *making, const struct place *place, json_t *value)
{
    return join(making, place, value, "down", MUSLIN_AXIS_DOWN);
}

/* ---- turned, mirrored, trimmed, round a centre ------------------------------------------------------------------- */

static muslin_id make_turn(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    int32_t quarters = (int32_t)json_integer_value(json_object_get(value, "quarters"));
    muslin_id node = node_in(making, place, value, "turn");
    muslin_id id = 0;
    if (node == 0)
        return 0;
    muslin_status status = muslin_quilt_turn(making->design->quilt, node, quarters, &id, &problem);
    return finish(making, place, status, id, &problem);
}

static muslin_id make_mirror(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id node = node_in(making, place, value, "mirror");
    muslin_id id = 0;
    if (node == 0)
        return 0;
    muslin_status status = muslin_quilt_mirror(making->design->quilt, node, &id, &problem);
    return finish(making, place, status, id, &problem);
}

static muslin_id make_trimmed(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id node = node_in(making, place, value, "trimmed");
    muslin_id id = 0;
    bool left = measure_of(making, place, value, "left", &spec.left);
    bool right = measure_of(making, place, value, "right", &spec.right);
    bool top = measure_of(making, place, value, "top", &spec.top);
    bool bottom = measure_of(making, place, value, "bottom", &spec.bottom);
    if (node == 0 || !left || !right || !top || !bottom)
        return 0;
    muslin_status status = muslin_quilt_trim(making->design->quilt, node, &spec, &id, &problem);
    return finish(making, place, status, id, &problem);
}

static muslin_id make_pinwheel(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_pinwheel_spec spec = MUSLIN_QUILT_PINWHEEL_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    spec.centre = node_in(making, place, value, "pinwheel");
    spec.top = node_in(making, place, value, "top");
    spec.right = node_in(making, place, value, "right");
    spec.bottom = node_in(making, place, value, "bottom");
    spec.left = node_in(making, place, value, "left");
    if (spec.centre == 0 || spec.top == 0 || spec.right == 0 || spec.bottom == 0 || spec.left == 0)
        return 0;
    muslin_status status = muslin_quilt_pinwheel(making->design->quilt, &spec, &id, &problem);
    return finish(making, place, status, id, &problem);
}

/* ---- any node ---------------------------------------------------------------------------------------------------- */

static const struct maker {
    const char *member;
    muslin_id (*make)(struct making *making, const struct place *place, json_t *value);
} makers[] = {
    { "patch", make_patch },
    { "unit", make_unit },
    { "shape", make_shape },
    { "across", make_across },
    { "down", make_down },
    { "grid", make_grid },
    { "turn", make_turn },
    { "mirror", make_mirror },
    { "repeat", make_repeat },
    { "alternate", make_alternate },
    { "sashed", make_sashed },
    { "on point", make_on_point },
    { "log cabin", make_log_cabin },
    { "bordered", make_bordered },
    { "pinwheel", make_pinwheel },
    { "trimmed", make_trimmed },
    { "triangle rows", make_triangle_rows },
};

/* Of a part that is as large as the border, or what else, that it got last, the name that it was given counts. */
static void name_object(struct making *making, const struct place *place, json_t *value, muslin_id node,
                        const char *name)
{
    bool is_block = is_true(value, "block");
    if (name == NULL && !is_block)
        return;
    struct named *named = call_node(making, place, node, name != NULL ? name : "block");
    named->is_block |= is_block;
    if (named->side == 0 && named->log == 0 && json_object_get(value, "called") != NULL)
        named->name = name;
}

/* An object, with the name that it has in print where it says none itself: null for none. */
static muslin_id make_object(struct making *making, const struct place *place, json_t *value, const char *name)
{
    const char *called = json_string_value(json_object_get(value, "called"));
    const struct maker *maker = makers;
    while (json_object_get(value, maker->member) == NULL)
        maker++;
    name = called != NULL ? called : name;
    making->called = name;
    muslin_id node = maker->make(making, place, value);
    if (node == 0)
        return 0;
    note_place(making, place, node);
    name_object(making, place, value, node, name);
    return node;
}

muslin_id make_part(struct making *making, const char *name)
{
    const struct place file = { NULL, NULL, 0 };
    const struct place list = place_in(&file, "parts");
    struct place place = place_in(&list, name);
    json_t *value = json_object_get(json_object_get(making->file, "parts"), name);
    muslin_id node;
    if (is_made(making, "parts", name, &node))
        return node;
    if (json_is_string(value))
        node = make_node(making, &place, value);
    else
        node = make_object(making, &place, value, name);
    return note_made(making, "parts", name, node);
}

muslin_id make_node(struct making *making, const struct place *place, json_t *value)
{
    if (json_is_string(value))
        return make_part(making, json_string_value(value));
    return make_object(making, place, value, NULL);
}

muslin_id node_in(struct making *making, const struct place *place, json_t *object, const char *member)
{
    struct place here = place_in(place, member);
    return make_node(making, &here, json_object_get(object, member));
}
