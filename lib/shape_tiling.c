/* shape_tiling.c - whether the pieces of a unit fill its outline exactly once.
 *
 * SPDX-License-Identifier: MIT
 *
 * Outline and pieces are simple and run counter-clockwise, so each goes round every point inside it once and round
 * every other point not at all. The pieces' turns round a point add up to the outline's when the pieces' boundaries,
 * taken as directed lines, add up to the outline's: each stretch between two neighbouring corners of any edge is run
 * through as often one way as the other, where the outline counts the other way round. */
#include "shape_inside.h"

/* Place of a point along a straight edge, as a multiple of its length squared. */
static int64_t along(const struct msl_shape_edge *edge, int64_t x, int64_t y)
{
    return (x - edge->px) * (edge->qx - edge->px) + (y - edge->py) * (edge->qy - edge->py);
}

/* What follows is done for every edge of the drawing: rows one after the other, ring by ring. */
struct walk {
    struct msl_shape_ring ring;
    int32_t place;
};

static struct walk walk_start(const struct msl_shape_drawing *drawing)
{
    struct walk walk = { msl_ring_at(drawing, 0), 0 };
    return walk;
}

/* 1 and the next edge, or 0 after the last. */
static int walk_on(const struct msl_shape_drawing *drawing, struct walk *walk, struct msl_shape_edge *edge)
{
    if (walk->place == walk->ring.count) {
        walk->ring = msl_ring_at(drawing, walk->ring.first + walk->ring.count);
        walk->place = 0;
    }
    if (walk->ring.count == 0)
        return 0;
    *edge = msl_edge_of(drawing, walk->ring, walk->place);
    walk->place++;
    return 1;
}

/* The nearest corner on a straight edge behind `from`, as its place along it; the end at last. */
static int64_t next_corner(const struct msl_shape_drawing *drawing, const struct msl_shape_edge *edge, int64_t from)
{
    struct walk walk = walk_start(drawing);
    struct msl_shape_edge other;
    int64_t nearest = along(edge, edge->qx, edge->qy);
    while (walk_on(drawing, &walk, &other)) {
        int64_t place = along(edge, other.px, other.py);
        if (place > from && place < nearest && msl_on_edge(edge, other.px, other.py))
            nearest = place;
    }
    return nearest;
}

/* How a straight edge runs through the stretch [from, to] of another: 1 the same way, -1 the other way, 0 not at all.
 * */
static int32_t runs_through(const struct msl_shape_edge *edge, const struct msl_shape_edge *other, int64_t from,
                            int64_t to)
{
    int64_t ex = edge->qx - edge->px, ey = edge->qy - edge->py;
    int64_t start = along(edge, other->px, other->py);
    int64_t end = along(edge, other->qx, other->qy);
    if (other->curve != MUSLIN_CURVE_STRAIGHT)
        return 0;
    if (msl_cross(ex, ey, other->px - edge->px, other->py - edge->py) != 0 ||
        msl_cross(ex, ey, other->qx - edge->px, other->qy - edge->py) != 0)
        return 0;
    if (start <= from && end >= to)
        return 1;
    return end <= from && start >= to ? -1 : 0;
}

/* The same for two arcs, which have only one stretch. */
static int32_t runs_as(const struct msl_shape_edge *arc, const struct msl_shape_edge *other)
{
    struct msl_shape_edge back = *other;
    if (msl_edge_lies_on(arc, other))
        return 1;
    back.px = other->qx;
    back.py = other->qy;
    back.qx = other->px;
    back.qy = other->py;
    back.curve = MUSLIN_CURVE_CONVEX + MUSLIN_CURVE_CONCAVE - other->curve;
    return msl_edge_lies_on(arc, &back) ? -1 : 0;
}

/* Sum of the ways in which all edges run through a stretch of one, the outline's counted the other way round. */
static int32_t balance_of(const struct msl_shape_drawing *drawing, const struct msl_shape_edge *edge, int64_t from,
                          int64_t to)
{
    struct walk walk = walk_start(drawing);
    struct msl_shape_edge other;
    int32_t balance = 0;
    while (walk_on(drawing, &walk, &other)) {
        int32_t way = edge->curve == MUSLIN_CURVE_STRAIGHT ? runs_through(edge, &other, from, to)
                                                           : runs_as(edge, &other);
        balance += other.piece == MUSLIN_SHAPE_OUTLINE ? -way : way;
    }
    return balance;
}

static int is_answered(const struct msl_shape_drawing *drawing, const struct msl_shape_edge *edge)
{
    int64_t end = along(edge, edge->qx, edge->qy);
    if (edge->curve != MUSLIN_CURVE_STRAIGHT)
        return balance_of(drawing, edge, 0, 0) == 0;
    for (int64_t from = 0; from < end;) {
        int64_t to = next_corner(drawing, edge, from);
        if (balance_of(drawing, edge, from, to) != 0)
            return 0;
        from = to;
    }
    return 1;
}

static void want_tiled(struct msl_check *check, const struct msl_shape_drawing *drawing)
{
    struct walk walk = walk_start(drawing);
    struct msl_shape_edge edge;
    while (check->status == MUSLIN_OK && walk_on(drawing, &walk, &edge))
        if (!is_answered(drawing, &edge))
            msl_fail_at(check, MUSLIN_ERR_NOT_TILED, edge.row);
}

/* ---- the unit as a whole ---------------------------------------------------------------------------------------- */

static int is_outside(const struct msl_shape_drawing *drawing, struct msl_shape_ring outline,
                      const struct msl_shape_edge *edge)
{
    for (int32_t i = 0; i < outline.count; i++) {
        struct msl_shape_edge outside = msl_edge_of(drawing, outline, i);
        if (msl_edge_lies_on(edge, &outside))
            return 1;
    }
    return 0;
}

int msl_is_outside(const struct msl_shape_drawing *drawing, const struct msl_shape_edge *edge)
{
    return is_outside(drawing, msl_ring_of(drawing, MUSLIN_SHAPE_OUTLINE), edge);
}

int64_t msl_finished_area(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring)
{
    int64_t area = 0;
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        area += msl_cross(edge.px, edge.py, edge.qx, edge.qy);
    }
    return area;
}

/* In half ticks. */
static struct msl_shape_edge doubled(struct msl_shape_edge edge)
{
    edge.px *= 2;
    edge.py *= 2;
    edge.qx *= 2;
    edge.qy *= 2;
    edge.cx *= 2;
    edge.cy *= 2;
    edge.radius *= 2;
    return edge;
}

static void measure_outline(const struct msl_shape_drawing *drawing, struct msl_shape_ring outline,
                            struct muslin_shape *shape)
{
    struct msl_shape_reach reach = msl_reach_start(1, 0);
    for (int32_t i = 0; i < outline.count; i++) {
        struct msl_shape_edge edge = doubled(msl_edge_of(drawing, outline, i));
        msl_reach_point(&reach, edge.px, edge.py);
        msl_reach_arc(&reach, &edge);
    }
    shape->finished_width = msl_reach_size(&reach, 0);
    shape->finished_height = msl_reach_size(&reach, 1);
    shape->finished_area = msl_finished_area(drawing, outline);
}

static struct muslin_shape shape_of(const struct msl_shape_drawing *drawing, struct msl_shape_ring outline)
{
    struct muslin_shape shape = { 0 };
    struct walk walk = walk_start(drawing);
    struct msl_shape_edge edge;
    measure_outline(drawing, outline, &shape);
    while (walk_on(drawing, &walk, &edge)) {
        shape.has_arcs |= edge.curve != MUSLIN_CURVE_STRAIGHT;
        shape.pieces = edge.piece + 1;
        if (edge.piece == MUSLIN_SHAPE_OUTLINE)
            continue;
        shape.corners++;
        if (is_outside(drawing, outline, &edge))
            shape.outside_edges++;
        else
            shape.inside_edges++;
    }
    return shape;
}

muslin_status muslin_shape_check(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                 struct muslin_shape *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_shape_drawing drawing = msl_shape_read(&check, corners, row_size, n);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_shape_ring outline = msl_ring_of(&drawing, MUSLIN_SHAPE_OUTLINE);
    struct msl_shape_ring ring = outline;
    if (outline.count == 0)
        return msl_fail(&check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, 0, MUSLIN_SHAPE_OUTLINE);
    if (outline.count == drawing.n)
        return msl_fail(&check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, MUSLIN_SHAPE_OUTLINE, 0);
    while (ring.count != 0) {
        msl_want_ring(&check, &drawing, ring);
        ring = msl_ring_at(&drawing, ring.first + ring.count);
    }
    if (check.status == MUSLIN_OK)
        want_tiled(&check, &drawing);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_shape shape = shape_of(&drawing, outline);
    msl_write_struct(out, &shape, (uint32_t)sizeof shape);
    return MUSLIN_OK;
}
