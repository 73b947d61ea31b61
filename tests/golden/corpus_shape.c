/* corpus_shape.c - the calls of shape.h.
 *
 * SPDX-License-Identifier: MIT
 *
 * Drawn units are a sheet cut in two by a line or by a quarter circle about a corner, with the outline or without, and
 * now and then with a row that is wrong or out of place. */
#include "golden.h"

enum { ROWS = 16, CORNERS_DRAWN = 24 };

struct unit {
    struct muslin_corner_spec rows[ROWS];
    size_t n;
};

static struct muslin_corner_spec *add_row(struct golden *g, struct unit *unit, int32_t piece, muslin_len x,
                                          muslin_len y)
{
    SPEC(muslin_corner_spec, row);
    row.size = (uint32_t)sizeof row;
    row.piece = piece;
    row.x = x;
    row.y = y;
    row.allowance = draw_rarely(g, 3) ? draw_below(g, 5000) : 2032;
    row.take_up = draw_rarely(g, 3) ? draw_below(g, 200) : 0;
    row.tip = MUSLIN_CORNER_TIP_SHARP;
    row.curve = MUSLIN_CURVE_STRAIGHT;
    row.centre_x = 0;
    row.centre_y = 0;
    unit->rows[unit->n] = row;
    return &unit->rows[unit->n++];
}

static void add_sheet(struct golden *g, struct unit *unit, int32_t piece, muslin_len width, muslin_len height)
{
    add_row(g, unit, piece, 0, 0);
    add_row(g, unit, piece, width, 0);
    add_row(g, unit, piece, width, height);
    add_row(g, unit, piece, 0, height);
}

/* From a place on the lower edge to one on the upper edge. */
static void add_halves(struct golden *g, struct unit *unit, muslin_len width, muslin_len height)
{
    muslin_len below = draw_between(g, 1, width - 1);
    muslin_len above = draw_between(g, 1, width - 1);
    int32_t tip = draw_choice(g, MUSLIN_CORNER_TIP_SHARP, MUSLIN_CORNER_TIP_TRIM_LEAVING);
    add_row(g, unit, 0, 0, 0);
    add_row(g, unit, 0, below, 0)->tip = tip;
    add_row(g, unit, 0, above, height)->tip = tip;
    add_row(g, unit, 0, 0, height);
    add_row(g, unit, 1, below, 0)->tip = tip;
    add_row(g, unit, 1, width, 0);
    add_row(g, unit, 1, width, height);
    add_row(g, unit, 1, above, height)->tip = tip;
}

static void bend(struct muslin_corner_spec *row, int32_t curve, muslin_len radius)
{
    row->curve = curve;
    row->centre_x = 0;
    row->centre_y = 0;
    row->radius = radius;
}

static void add_quarter(struct golden *g, struct unit *unit, muslin_len width, muslin_len height)
{
    muslin_len radius = draw_between(g, 1, (width < height ? width : height) - 1);
    add_row(g, unit, 0, 0, 0);
    bend(add_row(g, unit, 0, radius, 0), MUSLIN_CURVE_CONVEX, radius);
    add_row(g, unit, 0, 0, radius);
    add_row(g, unit, 1, radius, 0);
    add_row(g, unit, 1, width, 0);
    add_row(g, unit, 1, width, height);
    add_row(g, unit, 1, 0, height);
    bend(add_row(g, unit, 1, 0, radius), MUSLIN_CURVE_CONCAVE, radius);
}

/* One member of one row drawn anew. */
static void spoil(struct golden *g, struct unit *unit)
{
    struct muslin_corner_spec *row = &unit->rows[draw_below(g, (int64_t)unit->n)];
    switch (draw_below(g, 8)) {
    case 0:
        row->flags = draw_flags(g, 0);
        row->size = draw_struct_size(g, sizeof *row);
        break;
    case 1:
        row->piece = (int32_t)draw_between(g, -2, 3);
        break;
    case 2:
        row->x = draw_size(g, 140);
        row->y = draw_size(g, 12);
        break;
    case 3:
        row->curve = draw_choice(g, MUSLIN_CURVE_STRAIGHT, MUSLIN_CURVE_CONCAVE);
        break;
    case 4:
        row->radius = draw_size(g, 6);
        row->centre_x = draw_size(g, 6);
        break;
    case 5:
        row->allowance = draw_seam(g);
        row->take_up = draw_take_up(g);
        break;
    case 6:
        row->tip = draw_choice(g, MUSLIN_CORNER_TIP_SHARP, MUSLIN_CORNER_TIP_TRIM_LEAVING);
        break;
    default:
        unit->n = (size_t)draw_below(g, (int64_t)unit->n + 1);
    }
}

static struct unit draw_unit(struct golden *g)
{
    struct unit unit = { 0 };
    muslin_len width = 1016 * draw_between(g, 2, 96);
    muslin_len height = 1016 * draw_between(g, 2, 96);
    if (draw_rarely(g, 4) == 0)
        add_sheet(g, &unit, MUSLIN_SHAPE_OUTLINE, width, height);
    if (draw_rarely(g, 2))
        add_halves(g, &unit, width, height);
    else
        add_quarter(g, &unit, width, height);
    if (draw_rarely(g, 4))
        spoil(g, &unit);
    return unit;
}

static void template_of(struct golden *g, const struct unit *unit)
{
    struct muslin_template_corner corners[CORNERS_DRAWN] = { { 0 } };
    struct muslin_rounding_spec rounding = draw_rounding(g);
    size_t count = 99;
    size_t capacity = draw_rarely(g, 20) ? (size_t)draw_below(g, 4) : CORNERS_DRAWN;
    int32_t piece = draw_choice(g, 0, 1);
    told(g, muslin_shape_template(unit->rows, sizeof unit->rows[0], unit->n, piece, &rounding, corners,
                                  sizeof corners[0], capacity, &count, ask(g)));
    take_number(g, (int64_t)count);
    for (int32_t i = 0; i < CORNERS_DRAWN; i++)
        TAKE(g, muslin_template_corner, corners[i]);
}

static void piece_of(struct golden *g, const struct unit *unit)
{
    SPEC(muslin_shape_piece_spec, spec);
    OUT(muslin_shape_piece, piece);
    struct muslin_rounding_spec rounding = draw_rounding(g);
    muslin_len along = -77;
    muslin_len across = -77;
    int32_t corner = (int32_t)draw_between(g, -1, (int64_t)unit->n);
    spec.flags = draw_flags(g, 0);
    spec.piece = draw_choice(g, 0, 1);
    spec.grain_x = draw_rarely(g, 2) ? 0 : draw_between(g, -9, 9);
    spec.grain_y = draw_rarely(g, 2) ? 0 : draw_between(g, -9, 9);
    spec.margin = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
    told(g, muslin_shape_measure(unit->rows, sizeof unit->rows[0], unit->n, &spec, &rounding, &piece, ask(g)));
    TAKE(g, muslin_shape_piece, piece);
    told(g, muslin_shape_foundation(unit->rows, sizeof unit->rows[0], unit->n, corner, spec.margin, &rounding, &along,
                                    &across, ask(g)));
    take_number(g, along);
    take_number(g, across);
}

static void quarter(struct golden *g)
{
    SPEC(muslin_quarter_circle_spec, spec);
    OUT(muslin_quarter_circle, made);
    OUT(muslin_rounded, rounded);
    struct muslin_rounding_spec rounding = draw_rounding(g);
    int32_t quarter_turns = draw_choice(g, 1, 4);
    spec.flags = draw_flags(g, 0);
    spec.finished = draw_size(g, 40);
    spec.radius = draw_size(g, 20);
    spec.allowance = draw_seam(g);
    spec.take_up = draw_take_up(g);
    told(g, muslin_shape_quarter_circle(&spec, &rounding, &made, ask(g)));
    TAKE(g, muslin_quarter_circle, made);
    told_problem_rounded(g, muslin_arc_length(spec.radius, quarter_turns, &rounding, &rounded, ask(g)), &rounded);
}

static void regular(struct golden *g)
{
    static const int8_t known[] = { 3, 4, 6, 8 };
    OUT(muslin_regular_polygon, made);
    struct muslin_rounding_spec rounding = draw_rounding(g);
    int32_t sides = known[draw_below(g, 4)] + (int32_t)draw_rarely(g, 20);
    int32_t measure = draw_choice(g, MUSLIN_POLYGON_MEASURE_SIDE, MUSLIN_POLYGON_MEASURE_CENTRE);
    muslin_len size = draw_size(g, 40);
    told(g, muslin_shape_regular_polygon(sides, measure, size, &rounding, &made, ask(g)));
    TAKE(g, muslin_regular_polygon, made);
}

void golden_shape(struct golden *g)
{
    EACH_ROUND {
        struct unit unit = draw_unit(g);
        OUT(muslin_shape, shape);
        told(g, muslin_shape_check(unit.rows, sizeof unit.rows[0], unit.n, &shape, ask(g)));
        TAKE(g, muslin_shape, shape);
        template_of(g, &unit);
        piece_of(g, &unit);
        quarter(g);
        regular(g);
    }
}
