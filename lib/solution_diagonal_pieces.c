/* solution_diagonal_pieces.c - the pieces of a field on point that are its own, outlined.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where pieces end. Rows are sewn with straight seams, so between two setting triangles, beyond the tip of a block or
 * of a cornerstone, the seam of the rows runs straight on for f sqrt 2, to the outside. Corners come last: upper left
 * and lower right from outside to outside, across the ends of all rows that reach so far; then upper right and lower
 * left, across the first two where these reach so far. Each piece is what the lines leave of its triangle;
 * muslin_setting_point() says how large the whole one is. A line k blocks from a tip is reached by what runs on from
 * there when k P < f sqrt 2: when f > 0 and k <= g = floor(f sqrt 2 / P);
 * where nothing floats g is -1. */
#include "solution_diagonal_pieces.h"

/* ---- lines ------------------------------------------------------------------------------------------------------ */

static struct msl_number sum(struct msl_number a, struct msl_number b)
{
    return (struct msl_number){ a.whole + b.whole, a.root + b.root };
}

static struct msl_number difference(struct msl_number a, struct msl_number b)
{
    return (struct msl_number){ a.whole - b.whole, a.root - b.root };
}

static struct msl_number half(struct msl_number a)
{
    return (struct msl_number){ a.whole / 2, a.root / 2 };
}

/* x - y of a line along which u is the same, x + y where v is, x or y of an edge; moved outwards by half of `seam`. */
static struct msl_number value_of(const struct msl_field *field, const struct msl_line_on *line, muslin_len seam)
{
    const muslin_len lowest = 2 * (field->rows - 1) * field->pitch + field->block;
    const int64_t out = line->side * seam;
    struct msl_number value = { 0 };
    switch (line->kind) {
    case MSL_LINE_U:
        value.root = 2 * (2 * msl_line_at(field, line->at) - lowest + out);
        break;
    case MSL_LINE_V:
        value.whole = 8 * field->set_off;
        value.root = 2 * (2 * msl_line_at(field, line->at) + lowest + 2 * field->outside + out);
        break;
    default:
        value.whole = (line->at == 0 ? 0 : 8 * field->set_off) + 2 * out;
        value.root = line->at == 0 ? 0 : 4 * msl_field_straight(field, line->at);
        break;
    }
    return value;
}

struct msl_meets msl_where_meet(const struct msl_field *field, const struct msl_line_on *a,
                                const struct msl_line_on *b, muslin_len seam)
{
    const struct msl_line_on *first = a->kind < b->kind ? a : b;
    const struct msl_line_on *second = a->kind < b->kind ? b : a;
    const struct msl_number p = value_of(field, first, seam);
    const struct msl_number q = value_of(field, second, seam);
    if (first->kind == MSL_LINE_X)
        return (struct msl_meets){ p, q };
    if (second->kind == MSL_LINE_V) /* x - y and x + y */
        return (struct msl_meets){ half(sum(q, p)), half(difference(q, p)) };
    if (first->kind == MSL_LINE_U) /* x - y, and one of them */
        return second->kind == MSL_LINE_X ? (struct msl_meets){ q, difference(q, p) }
                                          : (struct msl_meets){ sum(p, q), q };
    return second->kind == MSL_LINE_X ? (struct msl_meets){ q, difference(p, q) }
                                      : (struct msl_meets){ difference(p, q), q };
}

struct msl_line_on msl_line_turned(const struct msl_field *field, struct msl_line_on line)
{
    if (line.kind == MSL_LINE_U)
        line.at = msl_turned_u(field, line.at);
    else if (line.kind == MSL_LINE_V)
        line.at = msl_turned_v(field, line.at);
    else
        line.at = (line.kind == MSL_LINE_X ? field->columns : field->rows) - line.at;
    line.side = -line.side;
    return line;
}

/* ---- outlines --------------------------------------------------------------------------------------------------- */

static void add_line(struct msl_bounds *bounds, enum msl_line_kind kind, int32_t side, int64_t at)
{
    bounds->lines[bounds->count] = (struct msl_line_on){ (int32_t)kind, side, at };
    bounds->count++;
}

/* Side triangle k, from 1, at the top; in row k. */
static void bound_top(const struct msl_field *field, int64_t k, struct msl_bounds *bounds)
{
    add_line(bounds, MSL_LINE_U, 1, 2 * k);
    if (field->set_off > 0)
        add_line(bounds, MSL_LINE_V, 1, 2 * k + 3);
    if (k > field->reach)
        add_line(bounds, MSL_LINE_Y, 1, field->rows);
    if (k - 1 <= field->reach)
        add_line(bounds, MSL_LINE_U, -1, msl_corner_u(field));
    add_line(bounds, MSL_LINE_V, -1, 2 * k + 1);
}

/* Side triangle k, from 1, at the left; in row -k. */
static void bound_left(const struct msl_field *field, int64_t k, struct msl_bounds *bounds)
{
    add_line(bounds, MSL_LINE_U, 1, 2 * k);
    add_line(bounds, MSL_LINE_V, 1, 2 - 2 * k);
    if (k - 1 <= field->reach)
        add_line(bounds, MSL_LINE_U, -1, msl_corner_u(field));
    if (k > field->reach)
        add_line(bounds, MSL_LINE_X, -1, 0);
    if (field->set_off > 0)
        add_line(bounds, MSL_LINE_V, -1, -2 * k);
}

static void bound_triangle(const struct msl_field *field, const struct msl_own *own, struct msl_bounds *bounds)
{
    if (own->side == MSL_AT_TOP)
        bound_top(field, own->number + 1, bounds);
    else
        bound_left(field, own->number + 1, bounds);
}

static void bound_corner(const struct msl_field *field, const struct msl_own *own, struct msl_bounds *bounds)
{
    if (own->side == MSL_TOP_RIGHT) {
        add_line(bounds, MSL_LINE_V, -1, msl_corner_v(field));
        add_line(bounds, MSL_LINE_X, 1, field->columns);
        add_line(bounds, MSL_LINE_Y, 1, field->rows);
        return;
    }
    add_line(bounds, MSL_LINE_U, 1, msl_corner_u(field));
    if (field->columns - 1 <= field->reach)
        add_line(bounds, MSL_LINE_V, 1, msl_corner_v(field));
    add_line(bounds, MSL_LINE_Y, 1, field->rows);
    add_line(bounds, MSL_LINE_X, -1, 0);
    if (field->rows - 1 <= field->reach)
        add_line(bounds, MSL_LINE_V, -1, msl_turned_v(field, msl_corner_v(field)));
}

/* A standing sash, cut off by the edge: at the top above, at the left below. */
static void bound_standing(const struct msl_field *field, const struct msl_own *own, struct msl_bounds *bounds)
{
    const int64_t n = msl_row_of(field, *own);
    const int64_t m = 2 * own->number + 2;
    const int is_left = own->side == MSL_AT_LEFT;
    add_line(bounds, MSL_LINE_U, 1, m + 1);
    add_line(bounds, is_left ? MSL_LINE_V : MSL_LINE_Y, 1, is_left ? n + 1 : field->rows);
    add_line(bounds, MSL_LINE_U, -1, m);
    add_line(bounds, is_left ? MSL_LINE_X : MSL_LINE_V, -1, is_left ? 0 : n);
}

/* A lying one, cut off at its left; a cornerstone has but half a cell. */
static void bound_in_sash_row(const struct msl_field *field, const struct msl_own *own, struct msl_bounds *bounds)
{
    const int64_t n = msl_row_of(field, *own);
    const int is_stone = own->form == MSL_EDGE_STONE;
    const int is_left = own->side == MSL_AT_LEFT;
    add_line(bounds, MSL_LINE_U, 1, 2 * own->number + (is_stone ? 1 : 2));
    if (!is_stone || is_left)
        add_line(bounds, MSL_LINE_V, 1, n + 1);
    add_line(bounds, is_left ? MSL_LINE_X : MSL_LINE_Y, is_left ? -1 : 1, is_left ? 0 : field->rows);
    if (!is_stone || !is_left)
        add_line(bounds, MSL_LINE_V, -1, n);
}

void msl_bound_piece(const struct msl_field *field, int64_t piece, struct msl_bounds *bounds)
{
    struct msl_own own = msl_own_piece(field, piece);
    const int is_turned = msl_is_turned(&own);
    bounds->count = 0;
    if (is_turned)
        own = msl_turned_piece(field, own);
    switch (own.form) {
    case MSL_TRIANGLE:
        bound_triangle(field, &own, bounds);
        break;
    case MSL_CORNER:
        bound_corner(field, &own, bounds);
        break;
    case MSL_STANDING:
        bound_standing(field, &own, bounds);
        break;
    default:
        bound_in_sash_row(field, &own, bounds);
        break;
    }
    for (int32_t i = 0; is_turned && i < bounds->count; i++)
        bounds->lines[i] = msl_line_turned(field, bounds->lines[i]);
}

/* What a form is cut from. */
static uint32_t fabric_of(const struct msl_field *field, int32_t form)
{
    static const uint8_t fabrics[] = { DIAGONAL_SIDE_FABRIC, DIAGONAL_CORNER_FABRIC, DIAGONAL_SASH_FABRIC,
                                       DIAGONAL_SASH_FABRIC, DIAGONAL_CORNERSTONE };
    return (uint32_t)field->args[fabrics[form]];
}

static int is_sash(int32_t form)
{
    return form == MSL_STANDING || form == MSL_LYING;
}

void msl_diagonal_outline(const struct muslin_solution *solution, uint32_t node, int64_t piece, int32_t stage,
                          struct msl_ring *ring)
{
    const struct msl_field field = msl_field_of(solution, node);
    const muslin_len seam = stage == MUSLIN_STAGE_RAW ? field.seam : 0;
    const struct msl_own own = msl_own_piece(&field, piece);
    struct msl_bounds bounds;
    msl_bound_piece(&field, piece, &bounds);
    ring->fabric = fabric_of(&field, own.form);
    ring->region = (int32_t)piece + 1;
    ring->corners = bounds.count;
    ring->exact = 0;
    if (is_sash(own.form))
        ring->turn = MSL_TURN_EIGHTH;
    for (int32_t i = 0; i < bounds.count; i++) {
        const struct msl_line_on *before = &bounds.lines[(i + bounds.count - 1) % bounds.count];
        const struct msl_meets corner = msl_where_meet(&field, before, &bounds.lines[i], seam);
        ring->x[i] = msl_nearest_point(corner.x.whole, corner.x.root, 4);
        ring->y[i] = msl_nearest_point(corner.y.whole, corner.y.root, 4);
        ring->seam[i] = (int32_t)msl_seam_along(&field, piece, &bounds.lines[i]);
    }
}
