/* corpus_unit.c - the calls of unit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

enum { PIECES_MOST = 6, MAKES_MOST = 40 };

static int64_t draw_or_none(struct golden *g, muslin_len size, int64_t n)
{
    return draw_rarely(g, n) ? 0 : size;
}

static struct muslin_unit_spec draw_unit(struct golden *g)
{
    int32_t kind = 0;
    int32_t method = 0;
    SPEC(muslin_unit_spec, unit);
    unit.flags = draw_flags(g, 0);
    (void)muslin_unit_recipe_at(draw_below(g, GOLDEN_RECIPES), &kind, &method, NULL);
    unit.kind = draw_rarely(g, 20) ? draw_choice(g, 1, 18) : kind;
    unit.method = draw_rarely(g, 20) ? draw_choice(g, 1, 9) : method;
    unit.finished_width = draw_size(g, 40);
    unit.finished_height = draw_size(g, 40);
    if (kind == MUSLIN_UNIT_TRAPEZOID)
        unit.finished_width = 3 * draw_below(g, 81280) + 2 * unit.finished_height;
    if (kind == MUSLIN_UNIT_FLYING_GEESE)
        unit.finished_width += unit.finished_width % 2;
    if (kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON)
        unit.finished_width = 0;
    else if (kind < MUSLIN_UNIT_HALF_RECTANGLE || (kind >= MUSLIN_UNIT_OCTAGON && kind <= MUSLIN_UNIT_KALEIDOSCOPE))
        unit.finished_height = 0;
    unit.corner = kind == MUSLIN_UNIT_SNOWBALL ? draw_below(g, 4 * 8128) : 0;
    unit.allowance = draw_seam(g);
    unit.take_up = draw_take_up(g);
    unit.half_addition = draw_or_none(g, 7112, 2);
    unit.quarter_addition = draw_or_none(g, 10160, 2);
    unit.policy = draw_choice(g, MUSLIN_ALLOWANCE_POLICY_EXACT, MUSLIN_ALLOWANCE_POLICY_OVERSIZE);
    unit.trim_room = unit.policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? draw_size(g, 1) : 0;
    struct muslin_rounding_spec rounding = draw_rounding(g);
    unit.grid = rounding.grid;
    unit.tolerance = rounding.tolerance;
    unit.direction = rounding.direction;
    unit.units = draw_count(g, 200);
    int handed = kind == MUSLIN_UNIT_HALF_RECTANGLE || kind == MUSLIN_UNIT_SPLIT_QUARTER ||
                 kind == MUSLIN_UNIT_SLANTED_SLICE;
    unit.mirrored = handed ? draw_count(g, 60) : 0;
    unit.tip = draw_choice(g, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    return unit;
}

static struct muslin_unit_stock_spec draw_unit_stock(struct golden *g)
{
    SPEC(muslin_unit_stock_spec, stock);
    stock.flags = draw_flags(g, 0);
    stock.width = draw_size(g, 44);
    stock.height = draw_size(g, 20);
    stock.per_region = draw_count(g, 40);
    stock.end_loss = draw_rarely(g, 3) ? draw_size(g, 2) : 0;
    stock.finished_grid = draw_rarely(g, 3) ? 1 : 1016;
    return stock;
}

static void take_yields(struct golden *g, const struct muslin_unit_yield *rows, size_t count)
{
    for (size_t i = 0; i < count; i++)
        TAKE(g, muslin_unit_yield, rows[i]);
}

static void take_pieces(struct golden *g, const struct muslin_unit_spec *unit)
{
    struct muslin_unit_piece rows[PIECES_MOST] = { { 0 } };
    size_t count = 0;
    told(g, muslin_unit_pieces(unit, rows, sizeof rows[0], PIECES_MOST, &count, ask(g)));
    for (size_t i = 0; i < count; i++)
        TAKE(g, muslin_unit_piece, rows[i]);
}

static void take_all_that_is_made(struct golden *g, const struct muslin_unit_spec *unit,
                                  const struct muslin_unit_stock_spec *stock)
{
    struct muslin_unit_yield rows[MAKES_MOST] = { { 0 } };
    size_t count = 0;
    told(g, muslin_unit_makes(unit, stock, rows, sizeof rows[0], MAKES_MOST, &count, ask(g)));
    take_yields(g, rows, count);
}

void golden_unit(struct golden *g)
{
    int32_t kind = 0;
    int32_t method = 0;
    take_number(g, muslin_unit_recipe_count() >= GOLDEN_RECIPES);
    for (int64_t i = -1; i < GOLDEN_RECIPES; i++) {
        told(g, muslin_unit_recipe_at(i, &kind, &method, ask(g)));
        take_number(g, kind);
        take_number(g, method);
    }
    EACH_ROUND {
        struct muslin_unit_spec unit = draw_unit(g);
        struct muslin_unit_stock_spec stock = draw_unit_stock(g);
        OUT(muslin_unit_plan, plan);
        told(g, muslin_unit_recipe(&unit, &plan, ask(g)));
        TAKE(g, muslin_unit_plan, plan);
        take_pieces(g, &unit);
        OUT(muslin_unit_yield, yield);
        told(g, muslin_unit_from_stock(&unit, &stock, &yield, ask(g)));
        take_yields(g, &yield, 1);
        OUT(muslin_unit_yield, largest);
        told(g, muslin_unit_largest(&unit, &stock, &largest, ask(g)));
        take_yields(g, &largest, 1);
        if (draw_rarely(g, 10))
            take_all_that_is_made(g, &unit, &stock);
    }
}
