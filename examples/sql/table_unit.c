/* table_unit.c - muslin_unit(): what to cut for pieced units, a row each kind of piece.
 *
 * SPDX-License-Identifier: MIT */
#include "sql.h"
#include "words.h"

SQLITE_EXTENSION_INIT3

enum { UNIT_KIND, UNIT_SIZE, UNIT_WANTED, UNIT_METHOD, UNIT_ALLOWANCE, UNIT_HEIGHT, UNIT_CORNER, UNIT_MIRRORED,
       UNIT_GRID };

/* Kinds whose size is their height. */
static bool is_measured_by_height(int32_t kind)
{
    return kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON;
}

/* Two at a time where that is a way, else the first way there is. */
static int32_t usual_method(int32_t kind)
{
    int32_t first = 0;
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        int32_t of = 0;
        int32_t method = 0;
        muslin_unit_recipe_at(i, &of, &method, NULL);
        if (of == kind && method == MUSLIN_UNIT_METHOD_TWO_AT_A_TIME)
            return method;
        if (of == kind && first == 0)
            first = method;
    }
    return first;
}

static bool read_wish(struct trouble *trouble, sqlite3_value **arguments, struct muslin_unit_spec *spec)
{
    if (!word_from(trouble, "unit", arguments[UNIT_KIND], unit_kind_words, &spec->kind))
        return false;
    const bool by_height = is_measured_by_height(spec->kind);
    spec->method = usual_method(spec->kind);
    return length_from(trouble, "finished size", arguments[UNIT_SIZE],
                       by_height ? &spec->finished_height : &spec->finished_width) &&
           length_if(trouble, "finished height", arguments[UNIT_HEIGHT], &spec->finished_height) &&
           length_if(trouble, "corner", arguments[UNIT_CORNER], &spec->corner) &&
           length_if(trouble, "seam allowance", arguments[UNIT_ALLOWANCE], &spec->allowance) &&
           length_if(trouble, "grid", arguments[UNIT_GRID], &spec->grid) &&
           count_if(trouble, "number of units", arguments[UNIT_WANTED], &spec->units) &&
           count_if(trouble, "number of mirrored units", arguments[UNIT_MIRRORED], &spec->mirrored) &&
           (arguments[UNIT_METHOD] == NULL ||
            word_from(trouble, "method", arguments[UNIT_METHOD], unit_method_words, &spec->method));
}

static const struct word shape_words[] = { { "rectangle", MUSLIN_CUT_SHAPE_RECTANGLE },
                                           { "triangles", MUSLIN_CUT_SHAPE_TRIANGLES },
                                           { "diamonds", MUSLIN_CUT_SHAPE_DIAMONDS },
                                           { "hexagons", MUSLIN_CUT_SHAPE_HEXAGONS },
                                           { "trapezoids", MUSLIN_CUT_SHAPE_TRAPEZOIDS },
                                           { "wedges", MUSLIN_CUT_SHAPE_WEDGES },
                                           { "octagons", MUSLIN_CUT_SHAPE_OCTAGONS },
                                           { "slices", MUSLIN_CUT_SHAPE_SLICES },
                                           { NULL, 0 } };

static void put_piece(struct answer *answer, const struct muslin_unit_spec *spec, const struct muslin_unit_plan *plan,
                      const struct muslin_unit_piece *piece)
{
    put_number(answer, piece->region);
    put_text(answer, word_of(shape_words, piece->shape));
    put_number(answer, piece->cut_width);
    put_number(answer, piece->cut_height);
    put_number(answer, piece->total);
    put_text(answer, word_of(again_words, piece->again));
    put_number(answer, piece->gives);
    put_text(answer, word_of(unit_method_words, spec->method));
    put_number(answer, plan->finished_width);
    put_number(answer, plan->finished_height);
    put_number(answer, plan->unfinished_width);
    put_number(answer, plan->unfinished_height);
    put_number(answer, plan->units_per_recipe);
    put_number(answer, plan->spare_units);
}

static bool fill_unit(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    enum { PIECES_MOST = 32 };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_plan plan = { .size = sizeof plan };
    struct muslin_unit_piece pieces[PIECES_MOST];
    size_t count = 0;
    if (!read_wish(trouble, arguments, &spec) ||
        !was_answered(trouble, muslin_unit_recipe(&spec, &plan, &problem), &problem) ||
        !was_answered(trouble, muslin_unit_pieces(&spec, pieces, sizeof pieces[0], PIECES_MOST, &count, &problem),
                      &problem))
        return false;
    for (size_t i = 0; i < count; i++)
        put_piece(answer, &spec, &plan, &pieces[i]);
    return true;
}

const struct table_function unit_table = {
    .name = "muslin_unit",
    .columns = "CREATE TABLE unit(fabric INTEGER, shape TEXT, cut_width INTEGER, cut_height INTEGER, count INTEGER, "
               "cut_again TEXT, gives INTEGER, made TEXT, finished_width INTEGER, finished_height INTEGER, "
               "unfinished_width INTEGER, unfinished_height INTEGER, units_per_recipe INTEGER, spare_units INTEGER, "
               "kind HIDDEN, size HIDDEN, units HIDDEN, method HIDDEN, allowance HIDDEN, height HIDDEN, corner HIDDEN, "
               "mirrored HIDDEN, grid HIDDEN)",
    .usage = "muslin_unit('half-square', '3 in', 24)",
    .shown = 14,
    .arguments = 9,
    .required = 2,
    .innocuous = true,
    .fill = fill_unit
};
