/* borders.c - strips round a centre: the logs of a cabin; borders butted, mitred, with cornerstones, pieced.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "inside.h"

/* ---- one strip after the other ----------------------------------------------------------------------------------- */

/* These give 0 where they failed, or where something that they are given did. */
static muslin_id extent(struct making *making, const struct place *place, muslin_id node, int32_t axis)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    muslin_status status = muslin_quilt_extent(making->design->quilt, node, axis, &id, &problem);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

static muslin_id patch(struct making *making, const struct place *place, muslin_id fabric, muslin_id width,
                       muslin_id height)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    if (width == 0 || height == 0)
        return 0;
    spec.fabric = fabric;
    spec.width = width;
    spec.height = height;
    muslin_status status = muslin_quilt_patch(making->design->quilt, &spec, &id, &problem);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

/* A strip along one side, as long as what is there, pressed away from it. */
static muslin_id layer(struct making *making, const struct place *place, muslin_id centre,
                       const struct muslin_quilt_log_spec *log)
{
    bool beside = log->side == MUSLIN_SIDE_LEFT || log->side == MUSLIN_SIDE_RIGHT;
    bool comes_first = log->side == MUSLIN_SIDE_LEFT || log->side == MUSLIN_SIDE_TOP;
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id length = extent(making, place, centre, beside ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS);
    muslin_id strip = patch(making, place, log->fabric, beside ? log->width : length, beside ? length : log->width);
    muslin_id two[2];
    muslin_id id = 0;
    if (strip == 0)
        return 0;
    two[comes_first] = centre;
    two[!comes_first] = strip;
    spec.axis = beside ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN;
    spec.press = comes_first ? MUSLIN_SEAM_PRESS_TO_FIRST : MUSLIN_SEAM_PRESS_TO_LAST;
    muslin_status status = muslin_quilt_join(making->design->quilt, &spec, two, 2, &id, &problem);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

/* ---- log cabins -------------------------------------------------------------------------------------------------- */

/* Sews on what can be: a log that is wrong is told, and the next one looked at. */
static muslin_id add_log(struct making *making, const struct place *place, muslin_id centre, json_t *value)
{
    struct muslin_quilt_log_spec log = MUSLIN_QUILT_LOG_SPEC_INIT;
    log.fabric = fabric_of(making, value, "fabric");
    log.side = value_of_word(value, "side", side_words, MUSLIN_SIDE_RIGHT);
    if (!measure_of(making, place, value, "width", &log.width) || centre == 0)
        return 0;
    return layer(making, place, centre, &log);
}

muslin_id make_log_cabin(struct making *making, const struct place *place, json_t *value)
{
    const char *name = making->called != NULL ? making->called : "log cabin";
    const struct place list = place_in(place, "logs");
    muslin_id node = node_in(making, place, value, "log cabin");
    size_t index;
    json_t *log;
    json_array_foreach(json_object_get(value, "logs"), index, log)
    {
        struct place here = place_at(&list, index);
        node = add_log(making, &here, node, log);
        if (node == 0)
            continue;
        note_place(making, &here, node);
        const bool is_last = index + 1 == json_array_size(json_object_get(value, "logs"));
        call_node(making, &here, node, name)->log = is_last ? 0 : (int)index + 1; /* the last one makes it whole */
    }
    return node;
}

/* ---- one border -------------------------------------------------------------------------------------------------- */

struct sewn_border {
    const char *name;
    int32_t corners;
    muslin_id fabric;
    muslin_id width;
    muslin_id cornerstone;
};

static muslin_id butted(struct making *making, const struct place *place, muslin_id centre,
                        const struct sewn_border *border)
{
    static const int32_t sides[] = { MUSLIN_SIDE_LEFT, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_TOP, MUSLIN_SIDE_BOTTOM };
    struct muslin_quilt_log_spec strip = MUSLIN_QUILT_LOG_SPEC_INIT;
    int first = border->corners == CORNERS_TOP_FIRST ? 2 : 0;
    strip.fabric = border->fabric;
    strip.width = border->width;
    for (int i = 0; i < 4 && centre != 0; i++) {
        strip.side = sides[(first + i) % 4];
        centre = layer(making, place, centre, &strip);
        if (centre != 0)
            call_node(making, place, centre, border->name)->side = strip.side;
    }
    return centre;
}

static muslin_id mitred(struct making *making, const struct place *place, muslin_id centre,
                        const struct sewn_border *border)
{
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    spec.centre = centre;
    spec.left_width = spec.right_width = spec.top_width = spec.bottom_width = border->width;
    spec.left_fabric = spec.right_fabric = spec.top_fabric = spec.bottom_fabric = border->fabric;
    muslin_status status = muslin_quilt_set_in(making->design->quilt, &spec, &id, &problem);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

static muslin_id surround(struct making *making, const struct place *place,
                          const struct muslin_quilt_surround_spec *spec)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    muslin_status status = muslin_quilt_surround(making->design->quilt, spec, &id, &problem);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

static muslin_id with_cornerstones(struct making *making, const struct place *place, muslin_id centre,
                                   const struct sewn_border *border)
{
    struct muslin_quilt_surround_spec spec = MUSLIN_QUILT_SURROUND_SPEC_INIT;
    muslin_id fabric = border->cornerstone != 0 ? border->cornerstone : border->fabric;
    muslin_id height = extent(making, place, centre, MUSLIN_AXIS_DOWN);
    muslin_id width = extent(making, place, centre, MUSLIN_AXIS_ACROSS);
    spec.centre = centre;
    spec.left = spec.right = patch(making, place, border->fabric, border->width, height);
    spec.top = spec.bottom = patch(making, place, border->fabric, width, border->width);
    spec.top_left = spec.top_right = spec.bottom_left = spec.bottom_right =
        patch(making, place, fabric, border->width, border->width);
    return spec.left != 0 && spec.top != 0 && spec.top_left != 0 ? surround(making, place, &spec) : 0;
}

static muslin_id pieced(struct making *making, const struct place *place, muslin_id centre, json_t *value)
{
    struct muslin_quilt_surround_spec spec = MUSLIN_QUILT_SURROUND_SPEC_INIT;
    const struct place here = place_in(place, "sides");
    json_t *sides = json_object_get(value, "sides");
    spec.centre = centre;
    spec.left = node_in(making, &here, sides, "left");
    spec.right = node_in(making, &here, sides, "right");
    spec.top = node_in(making, &here, sides, "top");
    spec.bottom = node_in(making, &here, sides, "bottom");
    spec.top_left = node_in(making, &here, sides, "corner");
    spec.top_right = spec.bottom_left = spec.bottom_right = spec.top_left;
    if (centre == 0 || spec.left == 0 || spec.right == 0 || spec.top == 0 || spec.bottom == 0 || spec.top_left == 0)
        return 0;
    return surround(making, place, &spec);
}

/* ---- a list of them ---------------------------------------------------------------------------------------------- */

/* What a border is called where the file does not say so. */
static const char *usual_name(struct making *making, size_t index, size_t count)
{
    static const char *const two[] = { "inner border", "outer border" };
    static const char *const three[] = { "inner border", "middle border", "outer border" };
    if (count == 1)
        return "border";
    if (count <= 3)
        return count == 2 ? two[index] : three[index];
    char *text = kept(malloc(32));
    snprintf(text, 32, "border %zu", index + 1);
    return keep_text(making->design, text);
}

/* Reads a border of strips. Corners are square, with a stone, only where that is asked for. */
static bool read_border(struct making *making, const struct place *place, json_t *value, struct sewn_border *border)
{
    border->fabric = fabric_of(making, value, "fabric");
    border->cornerstone = fabric_of(making, value, "cornerstone");
    border->corners =
        value_of_word(value, "corners", corners_words, border->cornerstone != 0 ? CORNERS_STONES : CORNERS_SIDES_FIRST);
    bool fits = border->cornerstone == 0 || border->corners == CORNERS_STONES;
    if (!fits)
        complain_at(making->complaints, place, NULL, -1,
                    "a border with a \"cornerstone\" has \"corners\": \"cornerstones\", or leaves them out");
    return measure_of(making, place, value, "width", &border->width) && fits;
}

static muslin_id sew_border(struct making *making, const struct place *place, json_t *value, muslin_id centre,
                            struct sewn_border *border)
{
    muslin_id id = 0;
    if (json_object_get(value, "sides") != NULL) {
        border->corners = CORNERS_PIECED;
        id = pieced(making, place, centre, value);
    } else if (!read_border(making, place, value, border) || centre == 0)
        return 0;
    else if (border->corners == CORNERS_MITRED)
        id = mitred(making, place, centre, border);
    else if (border->corners == CORNERS_STONES)
        id = with_cornerstones(making, place, centre, border);
    else
        return butted(making, place, centre, border);
    if (id != 0)
        call_node(making, place, id, border->name);
    return id;
}

static void note_border(struct making *making, const struct sewn_border *border, muslin_id inside, muslin_id outside)
{
    struct design *design = making->design;
    size_t used = design->borders_used;
    design->borders = room_for_one(design->borders, used, sizeof *design->borders);
    making->border_widths = room_for_one(making->border_widths, used, sizeof *making->border_widths);
    making->border_widths[used] = border->width;
    design->borders[design->borders_used++] =
        (struct border_asked){ border->name, border->fabric, 0, border->corners, border->cornerstone, inside, outside };
}

muslin_id make_borders(struct making *making, const struct place *place, json_t *borders, muslin_id centre,
                       bool of_the_whole)
{
    size_t index;
    json_t *value;
    json_array_foreach(borders, index, value)
    {
        struct place here = place_at(place, index);
        const char *called = json_string_value(json_object_get(value, "called"));
        struct sewn_border border = { .name = called };
        muslin_id inside = centre;
        if (called == NULL)
            border.name = usual_name(making, index, json_array_size(borders));
        centre = sew_border(making, &here, value, centre, &border);
        if (centre == 0)
            continue;
        note_place(making, &here, centre);
        if (of_the_whole)
            note_border(making, &border, inside, centre);
    }
    return centre;
}

muslin_id make_bordered(struct making *making, const struct place *place, json_t *value)
{
    const struct place list = place_in(place, "borders");
    muslin_id centre = node_in(making, place, value, "bordered");
    return make_borders(making, &list, json_object_get(value, "borders"), centre, false);
}
