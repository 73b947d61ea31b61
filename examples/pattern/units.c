/* units.c - units by their recipe, units of one's own, rows of triangles.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "inside.h"

/* ---- by recipe --------------------------------------------------------------------------------------------------- */

enum { FABRICS_MOST = 3 };

/* How a kind is made where nothing is said: the first way that the library lists. */
static int32_t usual_method(int32_t kind)
{
    int32_t listed;
    int32_t method;
    for (int32_t i = 0; muslin_unit_recipe_at(i, &listed, &method, NULL) == MUSLIN_OK; i++)
        if (listed == kind)
            return method;
    return MUSLIN_UNIT_METHOD_PIECES;
}

/* A unit that was asked for before has a smaller number than the last new one. */
static bool is_noted(const struct design *design, muslin_id id)
{
    if (design->units_used == 0)
        return false;
    const muslin_id last = design->units[design->units_used - 1].id;
    return muslin_id_number(id) <= muslin_id_number(last) && unit_of(design, id) != NULL;
}

static void note_unit(struct design *design, muslin_id id, const struct muslin_quilt_unit_spec *spec,
                      const muslin_id fabrics[FABRICS_MOST])
{
    if (is_noted(design, id))
        return;
    design->units = room_for_one(design->units, design->units_used, sizeof *design->units);
    struct unit_asked *asked = &design->units[design->units_used++];
    *asked = (struct unit_asked){ .id = id, .spec = *spec };
    memcpy(asked->fabrics, fabrics, sizeof asked->fabrics);
}

/* "a", "b" or "c": how a kind is made. */
static void list_methods(int32_t kind, char text[400])
{
    const char *found[16];
    size_t count = 0;
    int32_t listed;
    int32_t method;
    for (int32_t i = 0; muslin_unit_recipe_at(i, &listed, &method, NULL) == MUSLIN_OK; i++)
        for (const struct word *word = method_words; listed == kind && word->word != NULL; word++)
            if (word->value == method && count < sizeof found / sizeof found[0])
                found[count++] = word->word;
    text[0] = '\0';
    for (size_t i = 0; i < count; i++) {
        if (i > 0)
            strcat(text, i + 1 == count ? " or " : ", ");
        strcat(strcat(strcat(text, "\""), found[i]), "\"");
    }
}

/* What the library says of ids and choices is said of the members that gave them. */
static void complain_of_unit(struct making *making, const struct place *place, json_t *value,
                             const struct muslin_quilt_unit_spec *spec, const struct muslin_problem *problem)
{
    const bool is_snowball = spec->kind == MUSLIN_UNIT_SNOWBALL;
    const bool is_measure = problem->argument == MUSLIN_ARG_MEASURE;
    const char *member = problem->status == MUSLIN_ERR_METHOD         ? "method"
                         : problem->argument == MUSLIN_ARG_HAND       ? "hand"
                         : is_measure && spec->corner != 0 && !is_snowball ? "corner"
                         : is_measure && problem->value != 0          ? "height"
                                                                      : NULL;
    const struct place here = member != NULL ? place_in(place, member) : *place;
    char methods[400];
    const char *sentence = problem->text;
    if (problem->status == MUSLIN_ERR_METHOD)
        sentence = "this kind of unit is not made so, but by";
    else if (problem->argument == MUSLIN_ARG_HAND)
        sentence = "this kind of unit has no second hand; leave \"hand\" out";
    else if (is_measure && member != NULL)
        sentence = member[0] == 'c' ? "only a snowball has a \"corner\""
                                    : "this kind of unit takes no \"height\"; give its \"size\" alone";
    else if (is_measure && is_snowball)
        sentence = "\"corner\" is missing: how far along its sides a snowball loses its corners";
    else if (is_measure)
        sentence = "\"height\" is missing: this kind of unit has \"width\" and \"height\"";
    list_methods(spec->kind, methods);
    complain_at(making->complaints, &here, member != NULL ? json_object_get(value, member) : value, problem->status,
                "%s%s%s", sentence, problem->status == MUSLIN_ERR_METHOD ? " " : "",
                problem->status == MUSLIN_ERR_METHOD ? methods : "");
}

muslin_id make_unit(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    json_t *names = json_object_get(value, "fabrics");
    json_t *hand = json_object_get(value, "hand");
    bool has_size = json_object_get(value, "size") != NULL;
    muslin_id fabrics[FABRICS_MOST] = { 0 };
    muslin_id id = 0;
    bool width = measure_of(making, place, value, has_size ? "size" : "width", &spec.width);
    bool height = measure_of(making, place, value, "height", &spec.height);
    bool corner = measure_of(making, place, value, "corner", &spec.corner);
    if (!width || !height || !corner)
        return 0;
    spec.kind = value_of_word(value, "unit", kinds_of_unit, 0);
    spec.method = value_of_word(value, "method", method_words, usual_method(spec.kind));
    spec.hand = hand != NULL ? (int32_t)json_integer_value(hand) : MUSLIN_HAND_FIRST;
    for (size_t i = 0; i < json_array_size(names); i++)
        fabrics[i] = fabric_called(making, json_array_get(names, i));
    muslin_status status =
        muslin_quilt_unit(making->design->quilt, &spec, fabrics, json_array_size(names), &id, &problem);
    must(status == MUSLIN_ERR_NO_MEMORY ? status : MUSLIN_OK);
    if (status != MUSLIN_OK) {
        complain_of_unit(making, place, value, &spec, &problem);
        return 0;
    }
    note_unit(making->design, id, &spec, fabrics);
    return id;
}

/* ---- of one's own ------------------------------------------------------------------------------------------------ */

enum { PIECES_MOST = 64, CORNERS_MOST = 32 };

struct drawing {
    struct muslin_corner_spec *corners;
    size_t used;
    muslin_id fabrics[PIECES_MOST];
    size_t pieces;
    muslin_id width;
    muslin_id height;
};

static muslin_status ask_for_shape(struct making *making, const struct drawing *drawing, muslin_id *id,
                                   struct muslin_problem *problem)
{
    return muslin_quilt_shape(making->design->quilt, drawing->corners, sizeof *drawing->corners, drawing->used,
                              drawing->fabrics, drawing->pieces, drawing->width, drawing->height, id, problem);
}

static bool add_corners(struct making *making, const struct place *place, json_t *list, int32_t piece,
                        struct drawing *drawing)
{
    bool all = true;
    size_t index;
    json_t *item;
    json_array_foreach(list, index, item)
    {
        struct place corner = place_at(place, index);
        struct place x = place_at(&corner, 0);
        struct place y = place_at(&corner, 1);
        struct muslin_corner_spec *spec = &drawing->corners[drawing->used++];
        must(muslin_corner_spec_init(spec, sizeof *spec));
        spec->piece = piece;
        all &= parse_length(making->complaints, &x, json_array_get(item, 0), &spec->x);
        all &= parse_length(making->complaints, &y, json_array_get(item, 1), &spec->y);
    }
    return all;
}

/* The outline's corners, then those of each piece. */
static bool draw(struct making *making, const struct place *place, json_t *value, struct drawing *drawing)
{
    json_t *pieces = json_object_get(value, "pieces");
    const struct place outline = place_in(place, "shape");
    const struct place list = place_in(place, "pieces");
    bool all = add_corners(making, &outline, json_object_get(value, "shape"), MUSLIN_SHAPE_OUTLINE, drawing);
    for (size_t i = 0; i < json_array_size(pieces); i++) {
        struct place piece = place_at(&list, i);
        struct place corners = place_in(&piece, "corners");
        all &=
            add_corners(making, &corners, json_object_get(json_array_get(pieces, i), "corners"), (int32_t)i, drawing);
    }
    return all;
}

/* The first corner of the ring that a corner is in, and how many it has. */
static size_t ring_of(const struct drawing *drawing, size_t corner, size_t *count)
{
    size_t first = corner;
    while (first > 0 && drawing->corners[first - 1].piece == drawing->corners[corner].piece)
        first--;
    *count = 0;
    while (first + *count < drawing->used && drawing->corners[first + *count].piece == drawing->corners[corner].piece)
        ++*count;
    return first;
}

/* Whether its corners written in the other order are no fault. */
static bool goes_wrong_way(struct making *making, const struct drawing *drawing, size_t corner)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    muslin_id id = 0;
    size_t count;
    const size_t first = ring_of(drawing, corner, &count);
    for (size_t i = 0; i < count / 2; i++) {
        const struct muslin_corner_spec one = drawing->corners[first + i];
        drawing->corners[first + i] = drawing->corners[first + count - 1 - i];
        drawing->corners[first + count - 1 - i] = one;
    }
    const muslin_status status = ask_for_shape(making, drawing, &id, &problem);
    return status != MUSLIN_ERR_SHAPE || problem.at < (int64_t)first || problem.at >= (int64_t)(first + count);
}

/* What is wrong with a drawing is told where its corner stands. */
static void complain_of_shape(struct making *making, const struct place *place, const struct drawing *drawing,
                              const struct muslin_problem *problem)
{
    static const char row[] = "Row of the ";
    const bool has_corner = strncmp(problem->text, row, sizeof row - 1) == 0 && problem->at >= 0 &&
                            (size_t)problem->at < drawing->used;
    const size_t corner = has_corner ? (size_t)problem->at : 0;
    const int32_t piece = drawing->corners[corner].piece;
    const struct place shape = place_in(place, "shape");
    const struct place pieces = place_in(place, "pieces");
    const struct place one = place_at(&pieces, piece < 0 ? 0 : (size_t)piece);
    const struct place of_piece = place_in(&one, "corners");
    const struct place *ring = piece < 0 ? &shape : &of_piece;
    size_t count;
    const struct place here = place_at(ring, corner - ring_of(drawing, corner, &count));
    const char *sentence = strstr(problem->text, ". ");
    if (!has_corner || sentence == NULL)
        complain_at(making->complaints, place, NULL, problem->status, "%s", problem->text);
    else if (problem->status == MUSLIN_ERR_SHAPE && goes_wrong_way(making, drawing, corner))
        complain_at(making->complaints, ring, NULL, problem->status,
                    "these corners go round the wrong way: write them in the other order");
    else
        complain_at(making->complaints, &here, NULL, problem->status, "%s", sentence + 2);
}

muslin_id make_shape(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct drawing drawing = { .corners = kept(calloc((PIECES_MOST + 1) * CORNERS_MOST, sizeof *drawing.corners)) };
    json_t *pieces = json_object_get(value, "pieces");
    muslin_id id = 0;
    drawing.pieces = json_array_size(pieces);
    for (size_t i = 0; i < drawing.pieces; i++)
        drawing.fabrics[i] = fabric_of(making, json_array_get(pieces, i), "fabric");
    bool is_drawn = draw(making, place, value, &drawing);
    bool width = measure_of(making, place, value, "width", &drawing.width);
    bool height = measure_of(making, place, value, "height", &drawing.height);
    if (is_drawn && width && height) {
        muslin_status status = ask_for_shape(making, &drawing, &id, &problem);
        must(status == MUSLIN_ERR_NO_MEMORY ? status : MUSLIN_OK);
        if (status != MUSLIN_OK)
            complain_of_shape(making, place, &drawing, &problem);
    }
    free(drawing.corners);
    return id;
}

/* ---- rows of triangles ------------------------------------------------------------------------------------------- */

static int64_t triangles_in(json_t *piece)
{
    return json_is_string(piece) ? 1 : json_integer_value(json_object_get(piece, "triangles"));
}

static size_t count_pieces(json_t *rows)
{
    size_t pieces = 0;
    for (size_t i = 0; i < json_array_size(rows); i++)
        pieces += json_array_size(json_array_get(rows, i));
    return pieces;
}

static void list_pieces(struct making *making, json_t *rows, struct muslin_quilt_sixty_piece_spec *spec)
{
    size_t row;
    size_t index;
    json_t *pieces;
    json_t *piece;
    json_array_foreach(rows, row, pieces) json_array_foreach(pieces, index, piece)
    {
        must(muslin_quilt_sixty_piece_spec_init(spec, sizeof *spec));
        spec->cells = triangles_in(piece);
        spec->fabric = json_is_string(piece) ? fabric_called(making, piece) : fabric_of(making, piece, "fabric");
        spec++;
    }
}

/* How many triangles a row has, ends not counted; false where the rows differ. */
static bool count_triangles(struct making *making, const struct place *place, json_t *rows, int64_t *cells)
{
    const struct place list = place_in(place, "triangle rows");
    bool are_alike = true;
    size_t row;
    size_t index;
    json_t *pieces;
    json_t *piece;
    json_array_foreach(rows, row, pieces)
    {
        struct place here = place_at(&list, row);
        int64_t count = 0;
        json_array_foreach(pieces, index, piece) count += triangles_in(piece);
        if (row == 0)
            *cells = count;
        else if (count != *cells) {
            complain_at(making->complaints, &here, NULL, -1,
                        "this row has room for %lld triangles, the first one for "
                        "%lld; rows are equally long",
                        (long long)count, (long long)*cells);
            are_alike = false;
        }
    }
    return are_alike;
}

muslin_id make_triangle_rows(struct making *making, const struct place *place, json_t *value)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    json_t *rows = json_object_get(value, "triangle rows");
    size_t count = count_pieces(rows);
    muslin_id id = 0;
    bool are_alike = count_triangles(making, place, rows, &spec.cells);
    bool height = measure_of(making, place, value, "height", &spec.height);
    if (!are_alike || !height)
        return 0;
    struct muslin_quilt_sixty_piece_spec *pieces = kept(calloc(count, sizeof *pieces));
    list_pieces(making, rows, pieces);
    spec.rows = (int64_t)json_array_size(rows);
    spec.end_fabric = fabric_of(making, value, "end fabric");
    spec.first = value_of_word(value, "first", first_words, MUSLIN_SIXTY_FIRST_ON_SIDE);
    muslin_status status =
        muslin_quilt_sixty(making->design->quilt, &spec, pieces, sizeof *pieces, count, &id, &problem);
    free(pieces);
    return went_well(making, place, NULL, status, &problem) ? id : 0;
}
