/* questions_unit.c - what the handbook asks about unit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static const char *const kinds[] = { "rectangle", "half-square", "quarter-square", "split quarter", "flying geese",
                                     "square in a square", "snowball", "half-rectangle", "60 degree triangle",
                                     "60 degree diamond", "45 degree diamond", "hexagon", "half-hexagon", "trapezoid",
                                     "octagon", "eight-pointed star", "kaleidoscope", "slanted slice", NULL };
static const char *const methods[] = { "pieces", "two at a time", "four all round", "four by mid-points",
                                       "eight at a time", "four at a time", "flipped corners", "strips", "bias strips",
                                       NULL };
static const char *const policies[] = { "exact", "customary", "oversize", NULL };
static const char *const directions[] = { "up", "down", "nearest", NULL };

static struct muslin_unit_spec unit_of(struct figure *f)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.kind = choice(f, "kind", kinds);
    spec.method = choice(f, "method", methods);
    spec.finished_width = length_or(f, "width", 0);
    spec.finished_height = length_or(f, "height", 0);
    spec.corner = length_or(f, "corner", 0);
    spec.allowance = length_or(f, "allowance", spec.allowance);
    spec.half_addition = length_or(f, "half_addition", 0);
    spec.quarter_addition = length_or(f, "quarter_addition", 0);
    spec.trim_room = length_or(f, "trim", 0);
    spec.grid = length_or(f, "grid", 1);
    if (given(f, "policy") != NULL)
        spec.policy = choice(f, "policy", policies);
    if (given(f, "direction") != NULL)
        spec.direction = choice(f, "direction", directions);
    return spec;
}

/* Answers cut, cut2, cut3 and so on: the first row has no number. */
static void answer_row(struct figure *f, size_t row, const struct muslin_unit_piece *piece)
{
    char name[16];
    const char *number = row == 0 ? "" : row == 1 ? "2" : "3";
    snprintf(name, sizeof name, "cut%s", number);
    answer_length(f, name, piece->cut_width);
    snprintf(name, sizeof name, "strip%s", number);
    answer_length(f, name, piece->cut_height);
    snprintf(name, sizeof name, "count%s", number);
    answer_count(f, name, piece->count);
    snprintf(name, sizeof name, "gives%s", number);
    answer_count(f, name, piece->gives);
    snprintf(name, sizeof name, "pitch%s", number);
    answer_length(f, name, piece->pitch);
}

static void answer_plan(struct figure *f, const struct muslin_unit_plan *plan)
{
    answer_count(f, "units", plan->units_per_recipe);
    answer_length(f, "unfinished", plan->unfinished_width);
    answer_length(f, "unfinished_height", plan->unfinished_height);
    answer_count(f, "bias_outside", plan->bias_outside);
    answer_length(f, "bonus_unfinished", plan->bonus_unfinished);
    answer_length(f, "seam_offset", plan->seam_offset);
}

static void recipe(struct figure *f)
{
    struct muslin_unit_spec spec = unit_of(f);
    struct muslin_unit_plan plan = { .size = sizeof plan };
    struct muslin_unit_piece rows[6];
    size_t count;
    muslin_status status = muslin_unit_recipe(&spec, &plan, NULL);
    answer_text(f, "status", muslin_status_name(status));
    if (status != MUSLIN_OK && strcmp(f->expected.pair[0].name, "status") == 0)
        return;
    must(f, status);
    answer_plan(f, &plan);
    must(f, muslin_unit_pieces(&spec, rows, sizeof rows[0], 6, &count, NULL));
    for (size_t i = 0; i < count; i++)
        answer_row(f, i, &rows[i]);
}

/* The largest unit from squares of the size `from`. */
static void largest(struct figure *f)
{
    struct muslin_unit_stock_spec stock = MUSLIN_UNIT_STOCK_SPEC_INIT;
    struct muslin_unit_yield yield = { .size = sizeof yield };
    struct muslin_unit_spec spec = unit_of(f);
    if (spec.finished_width == 0)
        spec.finished_width = 1;
    stock.width = length(f, "from");
    stock.height = stock.width;
    stock.finished_grid = length_or(f, "finished_grid", 1);
    must(f, muslin_unit_largest(&spec, &stock, &yield, NULL));
    answer_length(f, "finished", yield.finished_width);
    answer_length(f, "unfinished", yield.unfinished_width);
    answer_count(f, "units", yield.units);
}

extern const struct question questions_unit[];

const struct question questions_unit[] = {
    { "unit_recipe", recipe },
    { "unit_largest", largest },
    { NULL, NULL },
};
