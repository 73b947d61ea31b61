/* recipe.c - how a unit is made, sentence by sentence, as the library tells it.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <string.h>

#include "sheet.h"

enum { PIECES_MOST = 8, STEPS_MOST = 40 };

struct recipe {
    const struct sheet *sheet;
    const struct unit *unit;
    struct muslin_unit_spec spec;
    struct muslin_unit_plan plan;
    struct muslin_unit_piece pieces[PIECES_MOST];
    size_t pieces_count;
    struct muslin_unit_step steps[STEPS_MOST];
    size_t steps_count;
};

/* ---- asked again ------------------------------------------------------------------------------------------------ */

static muslin_len value_of(const struct sheet *sheet, muslin_id measure)
{
    muslin_len value = 0;
    if (measure != 0)
        must(muslin_solution_value(sheet->solution, measure, &value, NULL), NULL);
    return value;
}

/* The recipe as the solution takes it. */
static void read_recipe(struct recipe *recipe, const struct sheet *sheet, muslin_id node)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    recipe->sheet = sheet;
    recipe->unit = unit_of(sheet, node);
    spec.kind = recipe->unit->spec.kind;
    spec.method = recipe->unit->spec.method;
    spec.finished_width = value_of(sheet, recipe->unit->spec.width);
    spec.finished_height = value_of(sheet, recipe->unit->spec.height);
    spec.corner = value_of(sheet, recipe->unit->spec.corner);
    spec.grid = sheet->spec->grid;
    spec.tolerance = sheet->spec->grid_tolerance;
    spec.half_addition = sheet->spec->half_addition;
    spec.quarter_addition = sheet->spec->quarter_addition;
    spec.trim = sheet->spec->trim;
    spec.policy = sheet->spec->policy;
    spec.tip = sheet->spec->tip;
    spec.direction = sheet->spec->direction;
    spec.units = size_of(sheet, node).count;
    recipe->spec = spec;
    recipe->plan = (struct muslin_unit_plan){ .size = (uint32_t)sizeof recipe->plan };
    must(muslin_unit_recipe(&spec, &recipe->plan, NULL), NULL);
    must(muslin_unit_pieces(&spec, recipe->pieces, sizeof recipe->pieces[0], PIECES_MOST, &recipe->pieces_count, NULL),
         NULL);
    must(muslin_unit_steps(&spec, recipe->steps, sizeof recipe->steps[0], STEPS_MOST, &recipe->steps_count, NULL),
         NULL);
}

/* ---- pieces ----------------------------------------------------------------------------------------------------- */

/* The number of a piece of the recipe in the cut list. */
static int number_of(const struct recipe *recipe, const struct muslin_unit_piece *piece)
{
    const struct sheet *sheet = recipe->sheet;
    muslin_id fabric = recipe->unit->fabrics[piece->region - 1];
    for (size_t i = 0; i < sheet->cuts_count; i++) {
        const struct muslin_cut *cut = &sheet->cuts[i];
        if (cut->source == MUSLIN_CUT_UNIT && cut->fabric == fabric && cut->cut_width == piece->cut_width &&
            cut->cut_height == piece->cut_height && cut->again == piece->again && cut->shape == piece->shape)
            return sheet->piece[i];
    }
    return 0;
}

static const char *shape_of(const struct muslin_unit_piece *piece)
{
    static const char *const names[] = { "", "square", "triangle", "diamond", "hexagon", "trapezoid", "wedge",
                                         "octagon", "slice" };
    return piece->again == MUSLIN_AGAIN_NO ? names[piece->shape] : "triangle";
}

static void add_piece(struct line *line, const struct recipe *recipe, int32_t row, int is_another)
{
    if (row < 1 || (size_t)row > recipe->pieces_count) {
        add(line, "the part sewn so far");
        return;
    }
    const struct muslin_unit_piece *piece = &recipe->pieces[row - 1];
    add(line, "%s %s %s [%d]", is_another ? "another" : "a",
        fabric_name(recipe->sheet, recipe->unit->fabrics[piece->region - 1]), shape_of(piece),
        number_of(recipe, piece));
}

/* ---- sentences -------------------------------------------------------------------------------------------------- */

/* Fills one place of a sentence, up to and with its closing brace; gives what follows. */
static const char *add_place(struct line *line, const struct recipe *recipe, const struct muslin_unit_step *step,
                             const char *place)
{
    char text[WORD];
    if (strncmp(place, "piece}", 6) == 0)
        add_piece(line, recipe, step->piece, 0);
    else if (strncmp(place, "other}", 6) == 0)
        add_piece(line, recipe, step->other, step->other == step->piece);
    else if (strncmp(place, "measure}", 8) == 0)
        add(line, "%s", inches(step->measure, text));
    else if (strncmp(place, "measure_height}", 15) == 0)
        add(line, "%s", inches(step->measure_height, text));
    else if (strncmp(place, "from_corner}", 12) == 0)
        add(line, "%s", inches(step->from_corner, text));
    else if (strncmp(place, "region}", 7) == 0)
        add(line, "%s", fabric_name(recipe->sheet, recipe->unit->fabrics[step->region - 1]));
    else if (strncmp(place, "angle}", 6) == 0)
        add(line, "%d", (int)step->angle);
    return place + strcspn(place, "}") + 1;
}

/* A fabric has a name here, which says it is one. */
static const char *sentence_of(const struct muslin_unit_step *step)
{
    return step->step == MUSLIN_SEW_PRESS_TO ? "Press the seam towards {region}." : muslin_sewing_step_text(step->step);
}

static void print_sentence(const struct recipe *recipe, size_t row, size_t number)
{
    const struct muslin_unit_step *step = &recipe->steps[row];
    struct line line = { .used = 0 };
    add(&line, "%2zu) ", number);
    for (const char *text = sentence_of(step); *text != '\0';) {
        size_t plain = strcspn(text, "{");
        add(&line, "%.*s", (int)plain, text);
        text += plain;
        if (*text == '{')
            text = add_place(&line, recipe, step, text + 1);
    }
    if (step->times > 1)
        add(&line, " (%d times)", (int)step->times);
    print_line(&line, 9, 4);
}

/* ---- a unit ------------------------------------------------------------------------------------------------------ */

/* How it lies when nothing is said of turning. */
static void print_lie(const struct recipe *recipe)
{
    const char *first = fabric_name(recipe->sheet, recipe->unit->fabrics[0]);
    const char *second = fabric_name(recipe->sheet, recipe->unit->fabrics[1]);
    struct line line = { .used = 0 };
    switch (recipe->spec.kind) {
    case MUSLIN_UNIT_HALF_SQUARE:
        add(&line, "Not turned, its seam rises to the right, with %s below and %s above.", first, second);
        break;
    case MUSLIN_UNIT_QUARTER_SQUARE:
        add(&line, "Not turned, it has %s at bottom and top, %s at left and right.", first, second);
        break;
    case MUSLIN_UNIT_FLYING_GEESE:
        add(&line, "Not turned, the %s triangle points up.", first);
        break;
    default:
        return;
    }
    print_line(&line, 9, 2);
}

/* The cut list has told this. */
static int is_cutting(const struct muslin_unit_step *step)
{
    return step->step == MUSLIN_SEW_CUT_SLANTED || step->step == MUSLIN_SEW_CUT_TURNING;
}

void print_recipe(const struct sheet *sheet, const struct muslin_sewing_row *step)
{
    struct recipe recipe;
    struct line line = { .used = 0 };
    read_recipe(&recipe, sheet, step->node);
    if (recipe.plan.units_per_recipe == 1)
        add(&line, "For each take ");
    else
        add(&line, "For %" PRId64 " at a time take ", recipe.plan.units_per_recipe);
    for (size_t i = 0; i < recipe.pieces_count; i++) {
        const struct muslin_unit_piece *piece = &recipe.pieces[i];
        int64_t count = piece->count * piece->gives;
        add(&line, "%s%" PRId64 " %s%s [%d] %s", comma(i, recipe.pieces_count), count, shape_of(piece), plural(count),
            number_of(&recipe, piece), fabric_name(sheet, recipe.unit->fabrics[piece->region - 1]));
    }
    if (recipe.plan.recipes > 1)
        add(&line, "; %" PRId64 " times in all", recipe.plan.recipes);
    if (recipe.plan.spare_units > 0)
        add(&line, ", which makes %" PRId64 " more than needed", recipe.plan.spare_units);
    add(&line, ".");
    print_line(&line, 9, 2);
    for (size_t i = 0, number = 0; i < recipe.steps_count; i++)
        if (!is_cutting(&recipe.steps[i]))
            print_sentence(&recipe, i, ++number);
    print_lie(&recipe);
}
