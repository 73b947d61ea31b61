/* cmd_unit.c - unit, makes: a pieced unit from its finished size, and what a given piece of cloth can become.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "memory.h"
#include "sheet.h"
#include "words.h"

static const struct word policy_words[] = {
    { "exact", MUSLIN_ALLOWANCE_POLICY_EXACT }, { "customary", MUSLIN_ALLOWANCE_POLICY_CUSTOMARY },
    { "oversize", MUSLIN_ALLOWANCE_POLICY_OVERSIZE }, { NULL, 0 }
};
static const struct word tip_words[] = { { "sharp", MUSLIN_TIP_SHARP }, { "blunt", MUSLIN_TIP_BLUNT }, { NULL, 0 } };
/* "rounded up to the next 1/8 in" */
static const struct word rounded_words[] = {
    { "up to the next", MUSLIN_DIRECTION_UP }, { "down to the last", MUSLIN_DIRECTION_DOWN },
    { "to the nearest", MUSLIN_DIRECTION_NEAREST }, { NULL, 0 }
};
static const struct word grain_words[] = {
    { "straight grain on all edges", MUSLIN_GRAIN_ALL_EDGES },
    { "straight grain on the short sides of the triangles, bias on the long one", MUSLIN_GRAIN_SHORT_EDGES },
    { "straight grain on the long side of the triangles, bias on the short ones", MUSLIN_GRAIN_LONG_EDGE },
    { "straight grain on the edges along the strip, bias on the slanted ones", MUSLIN_GRAIN_STRIP_EDGES }, { NULL, 0 }
};
/* One of them, as sentences name it. */
static const struct word shape_words[] = {
    { "triangle", MUSLIN_CUT_SHAPE_TRIANGLES }, { "diamond", MUSLIN_CUT_SHAPE_DIAMONDS },
    { "hexagon", MUSLIN_CUT_SHAPE_HEXAGONS },   { "trapezoid", MUSLIN_CUT_SHAPE_TRAPEZOIDS },
    { "wedge", MUSLIN_CUT_SHAPE_WEDGES },       { "octagon", MUSLIN_CUT_SHAPE_OCTAGONS },
    { "slice", MUSLIN_CUT_SHAPE_SLICES },       { NULL, 0 }
};

/* ---- what is asked ----------------------------------------------------------------------------------------------- */

struct unit_request {
    struct muslin_unit_spec unit;
};

static void start_unit(void *request)
{
    struct unit_request *wanted = request;
    wanted->unit = (struct muslin_unit_spec)MUSLIN_UNIT_SPEC_INIT;
}

/* Kinds whose size is their height. */
static bool is_measured_by_height(int32_t kind)
{
    return kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON;
}

static bool is_made_by(int32_t kind, int32_t method)
{
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        int32_t other_kind = 0;
        int32_t other_method = 0;
        if (muslin_unit_recipe_at(i, &other_kind, &other_method, NULL) == MUSLIN_OK && other_kind == kind &&
            other_method == method)
            return true;
    }
    return false;
}

/* Two at a time where that is a way, else the first way of the list. */
static int32_t usual_method(int32_t kind)
{
    const struct word *word = unit_method_words;
    if (is_made_by(kind, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME))
        return MUSLIN_UNIT_METHOD_TWO_AT_A_TIME;
    while (word->word != NULL && !is_made_by(kind, word->value))
        word++;
    return word->value;
}

/* The ways in which a kind is made, but for one. */
static void list_ways(int32_t kind, int32_t but, char *buf, size_t cap)
{
    enum { WAYS_MAX = 16 };
    struct word ways[WAYS_MAX];
    size_t count = 0;
    for (const struct word *word = unit_method_words; word->word != NULL && count < WAYS_MAX - 1; word++)
        if (word->value != but && is_made_by(kind, word->value))
            ways[count++] = *word;
    ways[count] = (struct word){ NULL, 0 };
    list_words(ways, buf, cap);
}

/* A way that the kind is not made by is best answered with those it is made by. */
static bool check_method(struct desk *desk, const struct muslin_unit_spec *spec)
{
    char list[200];
    if (is_made_by(spec->kind, spec->method))
        return true;
    list_ways(spec->kind, 0, list, sizeof list);
    failure_say(desk->failure, "method", "A %s is not made by %s: choose %s.", word_of(unit_kind_words, spec->kind),
                word_of(unit_method_words, spec->method), list);
    return false;
}

/* The first number is the width, or the height of a kind that has no other size; that may also be given by its name. */
static bool settle_size(struct desk *desk, struct muslin_unit_spec *spec)
{
    bool by_height = is_measured_by_height(spec->kind);
    const char *kind = word_of(unit_kind_words, spec->kind);
    if (by_height && given(desk, "height") && given(desk, "size")) {
        failure_say(desk->failure, "height", "A %s takes one size, its finished height: muslin unit %s 4.", kind, kind);
        return false;
    }
    if (!given(desk, "size") && !(by_height && given(desk, "height"))) {
        failure_say(desk->failure, "size", "Give the finished %s as the first number: muslin unit %s 4.",
                    by_height ? "height" : "width", kind);
        return false;
    }
    if (by_height && given(desk, "size")) {
        spec->finished_height = spec->finished_width;
        spec->finished_width = 0;
    }
    return true;
}

static bool settle_unit(struct desk *desk, struct muslin_unit_spec *spec)
{
    if (!given(desk, "method"))
        spec->method = usual_method(spec->kind);
    return settle_size(desk, spec) && check_method(desk, spec);
}

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

enum { PIECES_MAX = 16, STEPS_MAX = 64, CORNERS_MAX = 256 };

struct pieces {
    struct muslin_unit_piece rows[PIECES_MAX];
    size_t count;
};

static bool is_square(const struct muslin_unit_piece *piece)
{
    return piece->shape == MUSLIN_CUT_SHAPE_RECTANGLE && piece->cut_width == piece->cut_height;
}

static const char *shape_as_cut(const struct muslin_unit_piece *piece)
{
    if (piece->shape != MUSLIN_CUT_SHAPE_RECTANGLE)
        return word_of(shape_words, piece->shape);
    return is_square(piece) ? "square" : "rectangle";
}

/* What is sewn: the triangle, not the square it was cut from. */
static const char *shape_as_sewn(const struct muslin_unit_piece *piece)
{
    return piece->again == MUSLIN_CUT_AGAIN_NO ? shape_as_cut(piece) : "triangle";
}

/* What a piece takes of a strip. Of triangles and trapezoids, which stand up and down in turn, it is said for the whole
 * strip to come out; of diamonds, slices and hexagons it is measured on each, like their edges. */
static void put_along(json_t *answer, const struct desk *desk, const char *name, const struct muslin_unit_piece *piece,
                      muslin_len value)
{
    bool measured = piece->shape == MUSLIN_CUT_SHAPE_DIAMONDS || piece->shape == MUSLIN_CUT_SHAPE_SLICES ||
                    piece->shape == MUSLIN_CUT_SHAPE_HEXAGONS;
    if (piece->pitch == 0 || measured)
        put_length(answer, desk, name, value);
    else
        put_least(answer, desk, name, value);
}

static void put_piece(json_t *list, const struct desk *desk, const struct muslin_unit_piece *piece)
{
    json_t *answer = append_object(list);
    put_count(answer, "fabric", piece->region);
    put_text(answer, "shape", shape_as_cut(piece));
    put_along(answer, desk, "cut_width", piece, piece->cut_width);
    put_length(answer, desk, "cut_height", piece->cut_height);
    put_slack(answer, desk, "surplus_width", piece->surplus_width);
    put_slack(answer, desk, "surplus_height", piece->surplus_height);
    if (piece->star_excess != 0)
        put_length(answer, desk, "larger_than_the_diamonds_ask_for_by", piece->star_excess);
    if (piece->pitch != 0)
        put_along(answer, desk, "further_along_the_strip", piece, piece->pitch);
    if (piece->shape != MUSLIN_CUT_SHAPE_RECTANGLE) {
        put_length(answer, desk, "wide_edge_as_cut", piece->wide_edge);
        put_length(answer, desk, "narrow_edge_as_cut", piece->narrow_edge);
        put_count(answer, "degrees", piece->angle);
    }
    put_count(answer, "count_for_one_recipe", piece->count);
    put_count(answer, "count", piece->total);
    put_text(answer, "cut_again", word_of(again_words, piece->again));
    put_count(answer, "pieces_from_each", piece->gives);
    put_text(answer, "grain",
             piece->shape == MUSLIN_CUT_SHAPE_OCTAGONS
                 ? "straight grain on the four edges of the square, bias on the slanted ones"
                 : word_of(grain_words, piece->grain));
    put_count(answer, "hand", piece->hand);
}

static bool read_pieces(struct desk *desk, const struct muslin_unit_spec *spec, struct pieces *pieces)
{
    return worked(desk, muslin_unit_pieces(spec, pieces->rows, sizeof pieces->rows[0], PIECES_MAX, &pieces->count,
                                           &desk->problem));
}

/* ---- steps ------------------------------------------------------------------------------------------------------- */

/* "a square of fabric 2", "another diamond of fabric 1", "the part sewn so far". */
static void name_piece(const struct pieces *pieces, int32_t row, bool another, char *name, size_t cap)
{
    if (row < 1 || (size_t)row > pieces->count) {
        snprintf(name, cap, "the part sewn so far");
        return;
    }
    const struct muslin_unit_piece *piece = &pieces->rows[row - 1];
    const char *shape = shape_as_sewn(piece);
    const char *article = another ? "another" : strchr("aeiou", shape[0]) != NULL ? "an" : "a";
    snprintf(name, cap, "%s %s of fabric %d", article, shape, (int)piece->region);
}

static void put_step(json_t *list, const struct desk *desk, const struct pieces *pieces,
                     const struct muslin_unit_step *step)
{
    char piece[80];
    char other[80];
    json_t *answer = append_object(list);
    json_t *places = json_object();
    name_piece(pieces, step->piece, false, piece, sizeof piece);
    name_piece(pieces, step->other, step->other == step->piece, other, sizeof other);
    put_text(places, "piece", piece);
    put_text(places, "other", other);
    put_length(places, desk, "measure", step->measure);
    put_length(places, desk, "measure_height", step->measure_height);
    put_length(places, desk, "from_corner", step->from_corner);
    put_count(places, "region", step->region);
    put_count(places, "angle", step->angle);
    char *sentence = sheet_sentence(places, muslin_unit_step_sentence(step->step));
    put_count(answer, "step", step->step);
    put_count(answer, "times", step->times);
    put_text(answer, "sentence", sentence);
    free(sentence);
    json_decref(places);
}

static bool put_steps(json_t *answer, struct desk *desk, const struct muslin_unit_spec *spec,
                      const struct pieces *pieces)
{
    struct muslin_unit_step steps[STEPS_MAX];
    size_t count = 0;
    if (!worked(desk, muslin_unit_steps(spec, steps, sizeof steps[0], STEPS_MAX, &count, &desk->problem)))
        return false;
    json_t *list = put_list(answer, "steps");
    for (size_t i = 0; i < count; i++)
        put_step(list, desk, pieces, &steps[i]);
    return true;
}

/* ---- outlines ---------------------------------------------------------------------------------------------------- */

/* Corners are [x, y] in ticks, from the lower left of the finished unit. */
static void put_corners(json_t *list, const struct muslin_unit_corner *corners, size_t count, int32_t hand)
{
    json_t *points = NULL;
    for (size_t i = 0; i < count; i++) {
        if (corners[i].corner == 0) {
            json_t *patch = append_object(list);
            put_count(patch, "hand", hand);
            put_count(patch, "patch", corners[i].patch);
            put_count(patch, "fabric", corners[i].region);
            put_text(patch, "stage", corners[i].stage == MUSLIN_STAGE_RAW ? "raw" : "finished");
            points = put_list(patch, "corners");
        }
        json_array_append_new(points, json_pack("[I,I]", (json_int_t)corners[i].x, (json_int_t)corners[i].y));
    }
}

static bool put_outlines(json_t *answer, struct desk *desk, const struct muslin_unit_spec *spec)
{
    static const int32_t hands[] = { 1, 2 };
    struct muslin_unit_corner corners[CORNERS_MAX];
    json_t *list = put_list(answer, "outlines");
    size_t wanted = spec->mirrored > 0 || spec->kind == MUSLIN_UNIT_SPLIT_QUARTER ? 2 : 1;
    for (size_t i = 0; i < wanted; i++) {
        size_t count = 0;
        if (!worked(desk, muslin_unit_outlines(spec, hands[i], corners, sizeof corners[0], CORNERS_MAX, &count,
                                               &desk->problem)))
            return false;
        put_corners(list, corners, count, hands[i]);
    }
    return true;
}

/* ---- the whole recipe -------------------------------------------------------------------------------------------- */

static void put_areas(json_t *answer, const struct muslin_unit_plan *unit)
{
    json_t *areas = put_object(answer, "areas_of_one_recipe_in_doubled_square_ticks");
    put_count(areas, "cut", unit->cut_area);
    put_count(areas, "finished", unit->finished_area);
    put_count(areas, "allowances", unit->allowance_area);
    put_count(areas, "waste", unit->waste_area);
}

static bool put_bonus(json_t *answer, struct desk *desk, const struct muslin_unit_spec *spec,
                      const struct muslin_unit_plan *unit)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    muslin_len beside = 0;
    if (unit->bonus_units == 0 || unit->bonus_unfinished == 0)
        return true;
    seam.allowance = spec->allowance;
    seam.take_up = spec->take_up;
    if (!worked(desk, muslin_seam_cut_from_finished(0, &seam, &beside, &desk->problem)))
        return false;
    json_t *bonus = put_object(answer, "bonus");
    put_count(bonus, "half_squares", unit->bonus_units);
    put_slack(bonus, desk, "unfinished", unit->bonus_unfinished);
    put_length(bonus, desk, "second_line_beside", beside);
    return true;
}

static void put_unit(json_t *answer, const struct desk *desk, const struct muslin_unit_spec *spec,
                     const struct muslin_unit_plan *unit)
{
    char others[200];
    list_ways(spec->kind, spec->method, others, sizeof others);
    put_text(answer, "kind", word_of(unit_kind_words, spec->kind));
    put_text(answer, "method", word_of(unit_method_words, spec->method));
    if (others[0] != '\0')
        put_text(answer, "other_methods", others);
    put_text(answer, "policy", word_of(policy_words, spec->policy));
    put_length(answer, desk, "room_to_trim", spec->trim_room);
    put_text(answer, "rounded", word_of(rounded_words, spec->direction));
    put_length(answer, desk, "rounded_to", spec->grid);
    put_length(answer, desk, "seam_allowance", spec->allowance);
    put_length(answer, desk, "finished_width", unit->finished_width);
    put_length(answer, desk, "finished_height", unit->finished_height);
    if (unit->unfinished_width != 0) {
        put_length(answer, desk, "unfinished_width", unit->unfinished_width);
        put_length(answer, desk, "unfinished_height", unit->unfinished_height);
    }
    put_count(answer, "units", spec->units);
    put_count(answer, "mirrored_units", spec->mirrored);
    put_count(answer, "units_of_one_recipe", unit->units_per_recipe);
    put_count(answer, "mirrored_of_one_recipe", unit->mirrored_per_recipe);
    put_count(answer, "recipes", unit->recipes);
    put_count(answer, "mirrored_recipes", unit->mirrored_recipes);
    put_count(answer, "units_to_spare", unit->spare_units);
    put_truth(answer, "bias_outside", unit->bias_outside == 1);
    if (unit->seam_offset != 0)
        put_length(answer, desk, "seam_meets_the_raw_edge_from_the_corner", unit->seam_offset);
    if (spec->kind == MUSLIN_UNIT_EIGHT_POINTED_STAR)
        put_off_by(answer, desk, "wider_by", "off_by", unit->star_wider_by);
    if (unit->cut_area != 0)
        put_areas(answer, unit);
}

static json_t *answer_unit(const void *request, struct desk *desk)
{
    const struct unit_request *wanted = request;
    struct muslin_unit_spec spec = wanted->unit;
    struct muslin_unit_plan unit = { .size = sizeof unit };
    struct pieces pieces;
    if (!settle_unit(desk, &spec) || !worked(desk, muslin_unit_recipe(&spec, &unit, &desk->problem)) ||
        !read_pieces(desk, &spec, &pieces))
        return NULL;
    json_t *answer = json_object();
    put_unit(answer, desk, &spec, &unit);
    json_t *list = put_list(answer, "pieces");
    for (size_t i = 0; i < pieces.count; i++)
        put_piece(list, desk, &pieces.rows[i]);
    if (!put_bonus(answer, desk, &spec, &unit) || !put_steps(answer, desk, &spec, &pieces) ||
        !put_outlines(answer, desk, &spec)) {
        json_decref(answer);
        return NULL;
    }
    put_warnings(answer, unit.warnings);
    return answer;
}

#define AT(member) offsetof(struct unit_request, member)
/* Rounding and seams, for a request struct with the member `unit`. */
#define OPTION_CUTTING(request) \
    { "policy", KIND_CHOICE, offsetof(struct request, unit.policy), MUSLIN_ARG_POLICY, 0, policy_words, \
      "how cut sizes of triangles are found: exact (the geometry, the usual), customary (7/8 and 1 1/4 in at 1/4 " \
      "in seams) or oversize (customary and room to trim)" }, \
    { "trim", KIND_LENGTH, offsetof(struct request, unit.trim_room), MUSLIN_ARG_TRIM, 0, NULL, \
      "room to trim each unit, with --policy oversize (none)" }, \
    { "half-addition", KIND_LENGTH, offsetof(struct request, unit.half_addition), MUSLIN_ARG_HALF_ADDITION, 0, NULL, \
      "your own addition to a half-square, instead of 3 1/2 seam allowances" }, \
    { "quarter-addition", KIND_LENGTH, offsetof(struct request, unit.quarter_addition), MUSLIN_ARG_QUARTER_ADDITION, \
      0, NULL, "your own addition to a quarter-square, instead of 5 seam allowances" }, \
    { "tip", KIND_CHOICE, offsetof(struct request, unit.tip), MUSLIN_ARG_TIP, 0, tip_words, \
      "points of triangles cut from strips: blunt (as many rulers leave them, the usual) or sharp" }, \
    { "to", KIND_LENGTH, offsetof(struct request, unit.grid), MUSLIN_ARG_GRID, 0, NULL, \
      "round cut sizes to this grid (1/8 in)" }, \
    { "round", KIND_CHOICE, offsetof(struct request, unit.direction), MUSLIN_ARG_DIRECTION, 0, rounding_words, \
      "up (the usual), down or nearest" }, \
    { "tolerance", KIND_LENGTH, offsetof(struct request, unit.tolerance), MUSLIN_ARG_TOLERANCE, 0, NULL, \
      "what rounding up or down may overlook (none)" }, \
    OPTION_SEAM(request, unit.allowance, unit.take_up)

static const struct option_row unit_options[] = {
    OPTION_HEADING("The unit"),
    { "kind", KIND_CHOICE, AT(unit.kind), MUSLIN_ARG_UNIT_KIND, OPTION_REQUIRED | OPTION_OPERAND, unit_kind_words,
      "rectangle, half-square, quarter-square, split-quarter, flying-geese, square-in-square, snowball, "
      "half-rectangle, triangle-60, diamond-60, diamond-45, hexagon, half-hexagon, trapezoid, octagon, "
      "eight-pointed-star, kaleidoscope or slanted-slice" },
    { "size", KIND_LENGTH, AT(unit.finished_width), MUSLIN_ARG_FINISHED, OPTION_OPERAND, NULL,
      "finished width; of triangle-60, diamond-60, diamond-45, hexagon and half-hexagon the finished height" },
    { "height", KIND_LENGTH, AT(unit.finished_height), MUSLIN_ARG_HEIGHT, 0, NULL,
      "finished height, of what is not square: rectangle, snowball, half-rectangle, trapezoid, slanted-slice" },
    { "corner", KIND_LENGTH, AT(unit.corner), MUSLIN_ARG_CORNER, 0, NULL,
      "finished size of a snowball's corners, along the side" },
    { "method", KIND_CHOICE, AT(unit.method), MUSLIN_ARG_METHOD, 0, unit_method_words,
      "pieces, two-at-a-time (the usual where it is a way), four-all-round, four-midpoints, eight-at-a-time, "
      "four-at-a-time, flipped-corners (stitch-and-flip), strips or bias-strips" },
    { "want", KIND_COUNT, AT(unit.units), MUSLIN_ARG_UNITS, 0, NULL, "units wanted (1)" },
    { "mirrored", KIND_COUNT, AT(unit.mirrored), MUSLIN_ARG_UNITS, 0, NULL,
      "units wanted that are mirrored: half-rectangle, split-quarter or slanted-slice (none)" },
    OPTION_HEADING("Cutting and sewing"),
    OPTION_CUTTING(unit_request),
    OPTION_END
};

const struct command unit_command = {
    .name = "unit",
    .about = "a pieced unit from its finished size: pieces to cut, steps of sewing",
    .operands = "KIND SIZE",
    .examples = "  muslin unit half-square 3 --want 24\n"
                "  muslin unit flying-geese 4 --method four-at-a-time --policy customary\n"
                "  muslin unit half-rectangle 2 --height 4 --want 8 --mirrored 8\n"
                "  muslin unit split-quarter 6 --want 4 --mirrored 4\n"
                "  muslin unit hexagon 3 --seam 6mm --want 37\n"
                "  muslin unit triangle-60 4 --want 60  # its height",
    .options = unit_options,
    .request_size = sizeof(struct unit_request),
    .start = start_unit,
    .answer = answer_unit,
    .show = show_unit
};

/* ---- what a piece of cloth can become ---------------------------------------------------------------------------- */

struct makes_request {
    struct muslin_unit_spec unit;
    struct muslin_unit_stock_spec stock;
    int32_t kind;
};

static void start_makes(void *request)
{
    struct makes_request *wanted = request;
    wanted->unit = (struct muslin_unit_spec)MUSLIN_UNIT_SPEC_INIT;
    wanted->stock = (struct muslin_unit_stock_spec)MUSLIN_UNIT_STOCK_SPEC_INIT;
}

static void put_yield(json_t *list, const struct desk *desk, const struct muslin_unit_yield *yield)
{
    json_t *answer = append_object(list);
    put_text(answer, "kind", word_of(unit_kind_words, yield->kind));
    put_text(answer, "method", word_of(unit_method_words, yield->method));
    put_length(answer, desk, "finished_width", yield->finished_width);
    put_length(answer, desk, "finished_height", yield->finished_height);
    if (yield->unfinished_width != 0) {
        put_length(answer, desk, "unfinished_width", yield->unfinished_width);
        put_length(answer, desk, "unfinished_height", yield->unfinished_height);
    }
    put_slack(answer, desk, "cut_height_to_spare", yield->cut_spare);
    put_count(answer, "units", yield->units);
    put_count(answer, "units_from_one_of_each", yield->units_of_one);
    put_count(answer, "recipes", yield->recipes);
}

static json_t *answer_makes(const void *request, struct desk *desk)
{
    enum { YIELDS_MAX = 128 };
    const struct makes_request *wanted = request;
    struct muslin_unit_stock_spec stock = wanted->stock;
    struct muslin_unit_yield yields[YIELDS_MAX];
    size_t count = 0;
    int64_t shown = 0;
    if (!given(desk, "length"))
        stock.width = stock.height > 0 ? stock.height : 1; /* a square of no size is a complaint about its side */
    if (!worked(desk, muslin_unit_makes(&wanted->unit, &stock, yields, sizeof yields[0], YIELDS_MAX, &count,
                                        &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "cut_width", stock.height);
    put_length(answer, desk, "cut_length", stock.width);
    put_count(answer, "for_each_fabric", stock.per_region);
    put_length(answer, desk, "finished_in_steps_of", stock.finished_grid);
    json_t *list = put_list(answer, "makes");
    for (size_t i = 0; i < count; i++)
        if (!given(desk, "kind") || yields[i].kind == wanted->kind) {
            put_yield(list, desk, &yields[i]);
            shown++;
        }
    put_count(answer, "recipes", shown);
    return answer;
}

#define OF(member) offsetof(struct makes_request, member)
static const struct option_row makes_options[] = {
    OPTION_HEADING("What you have, for each fabric of the unit"),
    { "cut", KIND_LENGTH, OF(stock.height), MUSLIN_ARG_STRIP_CUT, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "cut width of a strip, or side of a square" },
    { "length", KIND_LENGTH, OF(stock.width), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "its length, the longer side (the same: a square)" },
    { "each", KIND_COUNT, OF(stock.per_region), MUSLIN_ARG_IN_HAND, 0, NULL, "how many of each fabric (1)" },
    { "end-loss", KIND_LENGTH, OF(stock.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the length of each, for squaring (none)" },
    OPTION_HEADING("What you want"),
    { "kind", KIND_CHOICE, OF(kind), MUSLIN_ARG_UNIT_KIND, 0, unit_kind_words,
      "units of this kind alone; see muslin unit" },
    { "step", KIND_LENGTH, OF(stock.finished_grid), MUSLIN_ARG_GRID, 0, NULL,
      "finished sizes are tried in steps of this (1/8 in)" },
    OPTION_HEADING("Cutting and sewing"),
    OPTION_CUTTING(makes_request),
    OPTION_END
};

const struct command makes_command = {
    .name = "makes",
    .about = "what units a square, strip or fat quarter can make, and how large",
    .operands = "CUT",
    .examples = "  muslin makes 5 --each 10\n"
                "  muslin makes \"2 1/2\" --length 40 --kind half-square\n"
                "  muslin makes 18 --length 21 --step 1/2  # a fat quarter of each fabric",
    .options = makes_options,
    .request_size = sizeof(struct makes_request),
    .start = start_makes,
    .answer = answer_makes,
    .show = show_makes
};
