/* settings.c - how blocks are put together: straight, repeated, alternating, between sashes, on point.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "inside.h"

/* More blocks than anybody sews are refused before room is sought for them. */
enum { BLOCKS_MOST = 100000 };

struct field {
    int64_t columns;
    int64_t rows;
    size_t count;
    muslin_id *blocks; /* row by row from the top */
};

static bool count_field(struct making *making, const struct place *place, json_t *value, struct field *field)
{
    field->columns = count_of(making, value, "columns");
    field->rows = count_of(making, value, "rows");
    if (field->columns > BLOCKS_MOST / field->rows) {
        complain_at(making->complaints, place, NULL, -1, "%lld columns and %lld rows are more than %d blocks",
                    (long long)field->columns, (long long)field->rows, BLOCKS_MOST);
        return false;
    }
    return true;
}

/* The nodes of rows, once each; null where one failed. */
static muslin_id **make_rows(struct making *making, const struct place *place, json_t *rows, size_t *columns)
{
    size_t count = json_array_size(rows);
    muslin_id **nodes = kept(calloc(count, sizeof *nodes));
    bool all = true;
    for (size_t i = 0; i < count; i++) {
        struct place here = place_at(place, i);
        nodes[i] = make_nodes(making, &here, json_array_get(rows, i), columns);
        all &= nodes[i] != NULL;
    }
    if (all)
        return nodes;
    for (size_t i = 0; i < count; i++)
        free(nodes[i]);
    free(nodes);
    return NULL;
}

/* Rows of nodes, repeated until columns and rows are full. */
static bool fill(struct making *making, const struct place *place, json_t *rows, int64_t columns, int64_t wanted,
                 muslin_id *blocks)
{
    size_t pattern_columns = 1;
    size_t pattern_rows = json_array_size(rows);
    muslin_id **nodes = make_rows(making, place, rows, &pattern_columns);
    if (nodes == NULL)
        return false;
    for (size_t row = 0; row < (size_t)wanted; row++)
        for (size_t column = 0; column < (size_t)columns; column++)
            *blocks++ = nodes[row % pattern_rows][column % pattern_columns];
    for (size_t i = 0; i < pattern_rows; i++)
        free(nodes[i]);
    free(nodes);
    return true;
}

static bool fill_field(struct making *making, const struct place *place, json_t *value, const char *member,
                       struct field *field)
{
    struct place here = place_in(place, member);
    if (!count_field(making, place, value, field))
        return false;
    field->count = (size_t)(field->columns * field->rows);
    field->blocks = kept(calloc(field->count, sizeof *field->blocks));
    if (fill(making, &here, json_object_get(value, member), field->columns, field->rows, field->blocks))
        return true;
    free(field->blocks);
    return false;
}

static muslin_id lay_out(struct making *making, const struct place *place, struct field *field)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    muslin_status status = muslin_quilt_grid(making->design->quilt, field->columns, field->rows, field->blocks,
                                             field->count, &id, &problem);
    free(field->blocks);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

/* ---- straight ---------------------------------------------------------------------------------------------------- */

muslin_id make_grid(struct making *making, const struct place *place, json_t *value)
{
    json_t *rows = json_object_get(value, "grid");
    struct place here = place_in(place, "grid");
    struct field field = { (int64_t)json_array_size(json_array_get(rows, 0)), (int64_t)json_array_size(rows), 0, NULL };
    field.count = (size_t)(field.columns * field.rows);
    field.blocks = kept(calloc(field.count, sizeof *field.blocks));
    if (fill(making, &here, rows, field.columns, field.rows, field.blocks))
        return lay_out(making, place, &field);
    free(field.blocks);
    return 0;
}

muslin_id make_alternate(struct making *making, const struct place *place, json_t *value)
{
    struct field field;
    return fill_field(making, place, value, "alternate", &field) ? lay_out(making, place, &field) : 0;
}

static int32_t *turns_of(json_t *rows, size_t *count)
{
    size_t columns = json_array_size(json_array_get(rows, 0));
    *count = json_array_size(rows) * columns;
    int32_t *turns = kept(calloc(*count, sizeof *turns));
    for (size_t i = 0; i < *count; i++)
        turns[i] = (int32_t)json_integer_value(json_array_get(json_array_get(rows, i / columns), i % columns));
    return turns;
}

muslin_id make_repeat(struct making *making, const struct place *place, json_t *value)
{
    static const int32_t upright[] = { 0 };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    json_t *rows = json_object_get(value, "quarters");
    muslin_id node = node_in(making, place, value, "repeat");
    muslin_id id = 0;
    size_t count = 1;
    if (node == 0)
        return 0;
    int32_t *turns = rows != NULL ? turns_of(rows, &count) : NULL;
    size_t turn_rows = rows != NULL ? json_array_size(rows) : 1;
    muslin_status status = muslin_quilt_repeat(making->design->quilt, node, count_of(making, value, "columns"),
                                               count_of(making, value, "rows"), turns != NULL ? turns : upright, count,
                                               (int64_t)(count / turn_rows), (int64_t)turn_rows, &id, &problem);
    free(turns);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}

/* ---- between sashes ---------------------------------------------------------------------------------------------- */

muslin_id make_sashed(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_sashed_spec spec = MUSLIN_QUILT_SASHED_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct field field = { 0, 0, 0, NULL };
    muslin_id id = 0;
    bool sash = measure_of(making, place, value, "sash", &spec.sash);
    making->design->has_sashes = true;
    if (!fill_field(making, place, value, "sashed", &field))
        return 0;
    spec.columns = field.columns;
    spec.rows = field.rows;
    spec.sash_fabric = fabric_of(making, value, "fabric");
    spec.cornerstone = fabric_of(making, value, "cornerstone");
    spec.flags = (spec.cornerstone != 0 ? MUSLIN_QUILT_SASHED_CORNERSTONES : 0) |
                 (is_true(value, "frame") ? MUSLIN_QUILT_SASHED_FRAME : 0);
    if (sash)
        went_well(making, place, NULL,
                  muslin_quilt_sashed(making->design->quilt, &spec, field.blocks, field.count, &id, &problem),
                  &problem);
    free(field.blocks);
    return id;
}

/* ---- on point ---------------------------------------------------------------------------------------------------- */

static bool describe_point(struct making *making, const struct place *place, json_t *value,
                           struct muslin_quilt_diagonal_spec *spec)
{
    bool set_off = measure_of(making, place, value, "float", &spec->set_off);
    bool sash = measure_of(making, place, value, "sash", &spec->sash);
    spec->side_fabric = fabric_of(making, value, "side fabric");
    spec->corner_fabric = fabric_of(making, value, "corner fabric");
    spec->sash_fabric = fabric_of(making, value, "fabric");
    spec->cornerstone = fabric_of(making, value, "cornerstone");
    if (json_object_get(value, "sash") != NULL)
        spec->layout = value_of_word(value, "sashes end", sashes_words, MUSLIN_POINT_LAYOUT_SASH_OUTER);
    return set_off && sash;
}

/* The blocks, then those in the gaps between them: as given, or the same ones. */
static bool fill_point(struct making *making, const struct place *place, json_t *value, struct field *field)
{
    bool has_between = json_object_get(value, "between") != NULL;
    struct place blocks = place_in(place, "on point");
    struct place between = place_in(place, has_between ? "between" : "on point");
    if (!count_field(making, place, value, field))
        return false;
    size_t main = (size_t)(field->columns * field->rows);
    field->count = main + (size_t)((field->columns - 1) * (field->rows - 1));
    field->blocks = kept(calloc(field->count, sizeof *field->blocks));
    bool first = fill(making, &blocks, json_object_get(value, "on point"), field->columns, field->rows, field->blocks);
    bool second = fill(making, &between, json_object_get(value, between.key), field->columns - 1, field->rows - 1,
                       field->blocks + main);
    if (first && second)
        return true;
    free(field->blocks);
    return false;
}

static void note_field(struct design *design, muslin_id id, const struct field *field)
{
    design->fields = room_for_one(design->fields, design->fields_used, sizeof *design->fields);
    design->fields[design->fields_used++] = (struct point_field){ id, field->columns, field->rows };
}

muslin_id make_on_point(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct field field = { 0, 0, 0, NULL };
    muslin_id id = 0;
    bool is_described = describe_point(making, place, value, &spec);
    if (!fill_point(making, place, value, &field))
        return 0;
    spec.columns = field.columns;
    spec.rows = field.rows;
    if (is_described &&
        went_well(making, place, NULL,
                  muslin_quilt_diagonal(making->design->quilt, &spec, field.blocks, field.count, &id, &problem),
                  &problem))
        note_field(making->design, id, &field);
    free(field.blocks);
    return id;
}
