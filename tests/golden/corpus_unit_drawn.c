/* corpus_unit_drawn.c - the calls of unit.h that draw and sew.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

enum { CORNERS = 128, STEPS = 24 };

/* Mostly a recipe of the list with sizes that suit its kind; a member is off now and then. */
static struct muslin_unit_spec draw_unit(struct golden *g)
{
    SPEC(muslin_unit_spec, spec);
    (void)muslin_unit_recipe_at(draw_below(g, GOLDEN_RECIPES), &spec.kind, &spec.method, NULL);
    int by_height = spec.kind >= MUSLIN_UNIT_TRIANGLE_60 && spec.kind <= MUSLIN_UNIT_HALF_HEXAGON;
    int takes_height = spec.kind == MUSLIN_UNIT_RECTANGLE || spec.kind == MUSLIN_UNIT_SNOWBALL ||
                       spec.kind == MUSLIN_UNIT_HALF_RECTANGLE || spec.kind == MUSLIN_UNIT_SLANTED_SLICE ||
                       spec.kind == MUSLIN_UNIT_TRAPEZOID;
    spec.flags = draw_flags(g, 0);
    muslin_len width = draw_size(g, 20);
    muslin_len height = draw_size(g, 8);
    spec.finished_width = by_height ? 0 : width;
    spec.finished_height = by_height || takes_height ? height : 0;
    spec.corner = spec.kind == MUSLIN_UNIT_SNOWBALL ? draw_size(g, 2) : 0;
    spec.allowance = draw_seam(g);
    spec.take_up = draw_take_up(g);
    spec.tip = draw_choice(g, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    if (draw_rarely(g, 40))
        spec.kind = draw_choice(g, MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_SLANTED_SLICE);
    return spec;
}

static void outlines(struct golden *g)
{
    EACH_ROUND {
        struct muslin_unit_spec spec = draw_unit(g);
        struct muslin_unit_corner rows[CORNERS] = { { 0 } };
        size_t count = 99;
        int32_t hand = draw_choice(g, 1, 2);
        size_t capacity = draw_rarely(g, 20) ? (size_t)draw_below(g, 12) : CORNERS;
        told(g, muslin_unit_outlines(&spec, hand, rows, sizeof rows[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < CORNERS; i++)
            TAKE(g, muslin_unit_corner, rows[i]);
    }
}

static void steps(struct golden *g)
{
    EACH_ROUND {
        struct muslin_unit_spec spec = draw_unit(g);
        struct muslin_unit_step rows[STEPS] = { { 0 } };
        size_t count = 99;
        size_t capacity = draw_rarely(g, 20) ? (size_t)draw_below(g, 6) : STEPS;
        told(g, muslin_unit_steps(&spec, rows, sizeof rows[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < STEPS; i++)
            TAKE(g, muslin_unit_step, rows[i]);
    }
    for (int32_t step = MUSLIN_UNIT_STEP_MARK_LINE - 1; step <= MUSLIN_UNIT_STEP_TRIM_LEANING + 1; step++)
        take_words(g, muslin_unit_step_sentence(step));
}

void golden_unit_drawn(struct golden *g)
{
    outlines(g);
    steps(g);
}
