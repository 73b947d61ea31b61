/* write_recipe.c - how a unit is made, sentence by sentence, as the library tells it.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "wording.h"

enum { PIECES_MOST = 8, STEPS_MOST = 40 };

struct recipe {
    const struct worked *worked;
    const struct unit_asked *unit;
    struct muslin_unit_spec spec;
    struct muslin_unit_plan plan;
    struct muslin_unit_piece pieces[PIECES_MOST];
    size_t pieces_count;
    struct muslin_unit_step steps[STEPS_MOST];
    size_t steps_count;
};

/* ---- asked again ------------------------------------------------------------------------------------------------ */

static muslin_len value_of(const struct worked *worked, muslin_id measure)
{
    muslin_len value = 0;
    if (measure != 0)
        must(muslin_solution_value(worked->solution, measure, &value, NULL));
    return value;
}

/* As the solution takes it: geese are given by their width. */
static struct muslin_unit_spec spec_of(const struct worked *worked, const struct unit_asked *unit)
{
    const struct muslin_solution_spec *solve = &worked->design->solve;
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    muslin_id allowance;
    muslin_id take_up;
    must(muslin_quilt_seam(worked->design->quilt, &allowance, &take_up, NULL));
    spec.kind = unit->spec.kind;
    spec.method = unit->spec.method;
    spec.finished_width = value_of(worked, unit->spec.width);
    spec.finished_height = value_of(worked, unit->spec.height);
    spec.corner = value_of(worked, unit->spec.corner);
    spec.allowance = value_of(worked, allowance);
    spec.take_up = value_of(worked, take_up);
    spec.grid = solve->grid;
    spec.tolerance = solve->grid_tolerance;
    spec.half_addition = solve->half_addition;
    spec.quarter_addition = solve->quarter_addition;
    spec.trim_room = solve->policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? solve->trim_room : 0;
    spec.policy = solve->policy;
    spec.tip = solve->tip;
    spec.direction = solve->direction;
    return spec;
}

/* Wanted are those of the first hand, and those of the other one: mirror images, or what is made as the second hand. */
static void read_recipe(struct recipe *recipe, const struct worked *worked, muslin_id node)
{
    const struct muslin_node_size size = size_of(worked, node);
    memset(recipe, 0, sizeof *recipe);
    recipe->worked = worked;
    recipe->unit = unit_of(worked->design, node);
    recipe->spec = spec_of(worked, recipe->unit);
    const bool has_hands = recipe->spec.kind == MUSLIN_UNIT_HALF_RECTANGLE ||
                           recipe->spec.kind == MUSLIN_UNIT_SPLIT_QUARTER;
    const bool is_second = has_hands && recipe->unit->spec.hand == MUSLIN_HAND_MIRRORED;
    const int64_t mirrored = has_hands ? size.mirrored : 0;
    recipe->spec.units = is_second ? mirrored : size.count - mirrored;
    recipe->spec.mirrored = is_second ? size.count - mirrored : mirrored;
    recipe->plan.size = (uint32_t)sizeof recipe->plan;
    must(muslin_unit_recipe(&recipe->spec, &recipe->plan, NULL));
    must(muslin_unit_pieces(&recipe->spec, recipe->pieces, sizeof recipe->pieces[0], PIECES_MOST,
                            &recipe->pieces_count, NULL));
    must(muslin_unit_steps(&recipe->spec, recipe->steps, sizeof recipe->steps[0], STEPS_MOST, &recipe->steps_count,
                           NULL));
}

/* ---- pieces ----------------------------------------------------------------------------------------------------- */

static muslin_id fabric_of(const struct recipe *recipe, int32_t region)
{
    return recipe->unit->fabrics[region - 1];
}

/* The number of a piece of the recipe in the cut list. */
static int number_of(const struct recipe *recipe, const struct muslin_unit_piece *piece)
{
    const struct worked *worked = recipe->worked;
    for (size_t i = 0; i < worked->cuts_count; i++) {
        const struct muslin_solution_cut *cut = &worked->cuts[i];
        if (cut->source == MUSLIN_CUT_SOURCE_UNIT && cut->fabric == fabric_of(recipe, piece->region) &&
            cut->again == piece->again && cut->shape == piece->shape && cut->hand == piece->hand &&
            ((cut->cut_width == piece->cut_width && cut->cut_height == piece->cut_height) ||
             (cut->cut_width == piece->cut_height && cut->cut_height == piece->cut_width)))
            return worked->piece[i];
    }
    return 0;
}

static const char *shape_of(const struct muslin_unit_piece *piece)
{
    static const char *const names[] = { "", "square", "triangle", "diamond", "hexagon", "trapezoid", "wedge",
                                         "octagon", "slice" };
    if (piece->again != MUSLIN_CUT_AGAIN_NO)
        return "triangle";
    if (piece->shape == MUSLIN_CUT_SHAPE_RECTANGLE && piece->cut_width != piece->cut_height)
        return "rectangle";
    return names[piece->shape];
}

static void add_piece(struct line *line, const struct recipe *recipe, int32_t row, bool is_another)
{
    if (row < 1 || (size_t)row > recipe->pieces_count) {
        add(line, "the part sewn so far");
        return;
    }
    const struct muslin_unit_piece *piece = &recipe->pieces[row - 1];
    add(line, "%s %s %s [%d]", is_another ? "another" : "a",
        fabric_name(recipe->worked, fabric_of(recipe, piece->region)), shape_of(piece), number_of(recipe, piece));
}

/* ---- sentences -------------------------------------------------------------------------------------------------- */

/* A seam is told as finely as it is sewn. */
static const char *measure_of(const struct recipe *recipe, const struct muslin_unit_step *step, char text[WORD_ROOM])
{
    return step->measure == recipe->spec.allowance ? measured_fine(recipe->worked, step->measure, text)
                                                   : measured(recipe->worked, step->measure, text);
}

/* Fills one place of a sentence, up to and with its closing brace; gives what follows. */
static const char *add_place(struct line *line, const struct recipe *recipe, const struct muslin_unit_step *step,
                             const char *place)
{
    char text[WORD_ROOM];
    if (strncmp(place, "piece}", 6) == 0)
        add_piece(line, recipe, step->piece, false);
    else if (strncmp(place, "other}", 6) == 0)
        add_piece(line, recipe, step->other, step->other == step->piece);
    else if (strncmp(place, "measure}", 8) == 0)
        add(line, "%s", measure_of(recipe, step, text));
    else if (strncmp(place, "measure_height}", 15) == 0)
        add(line, "%s", measured(recipe->worked, step->measure_height, text));
    else if (strncmp(place, "from_corner}", 12) == 0)
        add(line, "%s", measured(recipe->worked, step->from_corner, text));
    else if (strncmp(place, "region}", 7) == 0)
        add(line, "%s", fabric_name(recipe->worked, fabric_of(recipe, step->region)));
    else if (strncmp(place, "angle}", 6) == 0)
        add(line, "%d", (int)step->angle);
    return place + strcspn(place, "}") + 1;
}

/* Where seams are pressed as it nests, the recipe does not say which way. */
static bool is_pressed_free(const struct recipe *recipe)
{
    return recipe->worked->design->pressing.units == 0;
}

/* A fabric has a name here, which says it is one. */
static const char *sentence_of(const struct recipe *recipe, const struct muslin_unit_step *step)
{
    if (step->step == MUSLIN_UNIT_STEP_PRESS_TO && is_pressed_free(recipe))
        return "Press the seam as said at the end.";
    return step->step == MUSLIN_UNIT_STEP_PRESS_TO ? "Press the seam towards {region}."
                                                   : muslin_unit_step_sentence(step->step);
}

static void write_sentence(struct document *document, const struct recipe *recipe, size_t row, size_t number)
{
    const struct muslin_unit_step *step = &recipe->steps[row];
    struct line line = { NULL, 0, 0 };
    char lead[24];
    for (const char *text = sentence_of(recipe, step); *text != '\0';) {
        size_t plain = strcspn(text, "{");
        add(&line, "%.*s", (int)plain, text);
        text += plain;
        if (*text == '{')
            text = add_place(&line, recipe, step, text + 1);
    }
    if (step->times > 1)
        add(&line, " (%d times)", (int)step->times);
    snprintf(lead, sizeof lead, "%zu)", number);
    put(document, ITEM_POINT, 1, lead, &line);
}

/* ---- a unit ------------------------------------------------------------------------------------------------------ */

/* How it lies when nothing is said of turning. */
static void write_lie(struct document *document, const struct recipe *recipe)
{
    const char *first = fabric_name(recipe->worked, recipe->unit->fabrics[0]);
    const char *second = fabric_name(recipe->worked, recipe->unit->fabrics[1]);
    switch (recipe->spec.kind) {
    case MUSLIN_UNIT_HALF_SQUARE:
        say(document, ITEM_POINT, 0, NULL, "Not turned, its seam rises to the right, with %s below and %s above.",
            first, second);
        break;
    case MUSLIN_UNIT_HALF_RECTANGLE:
        say(document, ITEM_POINT, 0, NULL, "Not turned, its seam %s to the right, with %s below and %s above.",
            recipe->unit->spec.hand == MUSLIN_HAND_MIRRORED ? "falls" : "rises", first, second);
        break;
    case MUSLIN_UNIT_QUARTER_SQUARE:
        say(document, ITEM_POINT, 0, NULL, "Not turned, it has %s at bottom and top, %s at left and right.", first,
            second);
        break;
    case MUSLIN_UNIT_FLYING_GEESE:
        say(document, ITEM_POINT, 0, NULL, "Not turned, the %s triangle points up.", first);
        break;
    default:
        break;
    }
}

/* The cut list has told this. */
static bool is_cutting(const struct muslin_unit_step *step)
{
    return step->step == MUSLIN_UNIT_STEP_CUT_SLANTED || step->step == MUSLIN_UNIT_STEP_CUT_TURNING;
}

static void write_pieces(struct document *document, const struct recipe *recipe)
{
    struct line line = { NULL, 0, 0 };
    const int64_t recipes = recipe->plan.recipes + recipe->plan.mirrored_recipes;
    if (recipe->plan.units_per_recipe == 1)
        add(&line, "For each take ");
    else
        add(&line, "For %" PRId64 " at a time take ", recipe->plan.units_per_recipe);
    for (size_t i = 0; i < recipe->pieces_count; i++) {
        const struct muslin_unit_piece *piece = &recipe->pieces[i];
        int64_t count = piece->count * piece->gives;
        add(&line, "%s%" PRId64 " %s%s [%d] %s", comma(i, recipe->pieces_count), count, shape_of(piece), plural(count),
            number_of(recipe, piece), fabric_name(recipe->worked, fabric_of(recipe, piece->region)));
    }
    if (recipes > 1)
        add(&line, "; %" PRId64 " times in all", recipes);
    if (recipe->plan.spare_units > 0)
        add(&line, ", which makes %" PRId64 " more than needed", recipe->plan.spare_units);
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
}

/* Of a seam within the unit: where its middle lies. */
static const char *where_lies(const struct recipe *recipe, const struct muslin_pressing_seam *seam)
{
    static const char *const places[3][3] = { { "upper left", "upper", "upper right" },
                                              { "left", "middle", "right" },
                                              { "lower left", "lower", "lower right" } };
    const muslin_len from_left = seam->from_x + seam->to_x;
    const muslin_len from_foot = seam->from_y + seam->to_y;
    const int column = 1 + muslin_length_compare(from_left, recipe->plan.finished_width);
    const int row = 1 - muslin_length_compare(from_foot, recipe->plan.finished_height);
    return places[row][column];
}

/* Which way the plan has the seams of the unit, where it is not its recipe that says so. */
static void write_free_pressing(struct document *document, const struct recipe *recipe, muslin_id node)
{
    struct line line = { NULL, 0, 0 };
    char letter[16];
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(recipe->worked, node, &count);
    if (!is_pressed_free(recipe) || count == 0)
        return;
    letter_of(recipe->worked, node, letter);
    add(&line, "Press, as %s lies not turned, ", letter);
    for (size_t i = 0; i < count; i++)
        if (count == 1)
            add(&line, "its seam %s", direction_name(seams[i].press));
        else
            add(&line, "%sthe %s seam %s", comma(i, count), where_lies(recipe, &seams[i]),
                direction_name(seams[i].press));
    if (seams->other_way > 0 && seams->other == MUSLIN_OTHER_WAY_PRESSED)
        add(&line, "; of the starred ones all the other way");
    add(&line, ".");
    put(document, ITEM_POINT, 0, NULL, &line);
}

void write_recipe(struct document *document, const struct worked *worked, size_t step)
{
    struct recipe recipe;
    read_recipe(&recipe, worked, worked->steps[step].node);
    write_pieces(document, &recipe);
    for (size_t i = 0, number = 0; i < recipe.steps_count; i++)
        if (!is_cutting(&recipe.steps[i]))
            write_sentence(document, &recipe, i, ++number);
    if (recipe.plan.bias_outside)
        say(document, ITEM_CAUTION, 0, NULL, "Outer edges of this unit were cut on the slant and stretch: press it "
            "without pushing, and handle it little.");
    write_lie(document, &recipe);
    write_free_pressing(document, &recipe, worked->steps[step].node);
}
