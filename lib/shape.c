/* shape.c - a unit drawn by the caller: its rows read, its pieces checked one by one.
 *
 * SPDX-License-Identifier: MIT
 *
 * Coordinates are below 2^21 and centres below 2^22 in magnitude, so every product of two differences fits 64 bits. */
#include "shape_inside.h"

muslin_status muslin_corner_spec_init(struct muslin_corner_spec *spec, uint32_t size)
{
    const struct muslin_corner_spec initial = MUSLIN_CORNER_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- rows ------------------------------------------------------------------------------------------------------- */

static void want_arc(struct msl_check *check, const struct muslin_corner_spec *corner)
{
    int straight = corner->curve == MUSLIN_CURVE_STRAIGHT;
    msl_want_choice(check, MUSLIN_ARG_CURVE, corner->curve, MUSLIN_CURVE_STRAIGHT, MUSLIN_CURVE_CONCAVE);
    msl_want_between(check, MUSLIN_ARG_RADIUS, corner->radius, straight ? 0 : 1, straight ? 0 : MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_CENTRE, corner->centre_x, straight ? 0 : -MUSLIN_SHAPE_SIZE_MAX,
                     straight ? 0 : 2 * MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_CENTRE, corner->centre_y, straight ? 0 : -MUSLIN_SHAPE_SIZE_MAX,
                     straight ? 0 : 2 * MUSLIN_SHAPE_SIZE_MAX);
}

static struct muslin_corner_spec read_corner(struct msl_check *check, const void *rows, size_t row_size, int32_t row)
{
    struct muslin_corner_spec corner = { 0 };
    msl_read_struct(check, MUSLIN_ARG_ROWS, &corner, (uint32_t)sizeof corner, (uint32_t)sizeof corner, 0,
                    msl_row_to_read(check, rows, row_size, (size_t)row));
    msl_want_choice(check, MUSLIN_ARG_CORNER_TIP, corner.tip, MUSLIN_CORNER_TIP_SHARP, MUSLIN_CORNER_TIP_TRIM_LEAVING);
    msl_want_between(check, MUSLIN_ARG_PLACE, corner.x, 0, MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_PLACE, corner.y, 0, MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_SEAM_ALLOWANCE, corner.allowance, 0, MUSLIN_SHAPE_SEAM_MAX);
    msl_want_between(check, MUSLIN_ARG_TAKE_UP, corner.take_up, 0, MUSLIN_SHAPE_SEAM_MAX);
    want_arc(check, &corner);
    msl_want_pad(check, corner.pad);
    return corner;
}

void msl_fail_at(struct msl_check *check, muslin_status status, int32_t row)
{
    check->at = row;
    msl_fail(check, status, MUSLIN_ARG_CORNER_ROW, row, 0);
}

/* The first row is the outline's or piece 0's, and each further one of the same piece or the next. */
struct msl_shape_drawing msl_shape_read(struct msl_check *check, const void *rows, size_t row_size, size_t n)
{
    struct msl_shape_drawing drawing = { rows, row_size, 0 };
    int32_t before = MUSLIN_SHAPE_OUTLINE;
    msl_want_pointer(check, MUSLIN_ARG_ROWS, rows);
    msl_want_row_size(check, row_size, (uint32_t)sizeof(struct muslin_corner_spec));
    if (n > MUSLIN_SHAPE_CORNERS_MAX)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_CORNERS, MUSLIN_SHAPE_CORNERS_MAX + 1, MUSLIN_SHAPE_CORNERS_MAX);
    if (n == 0)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_CORNERS, 0, 1);
    for (int32_t row = 0; check->status == MUSLIN_OK && row < (int32_t)n; row++) {
        struct muslin_corner_spec corner = read_corner(check, rows, row_size, row);
        if (corner.piece < before || corner.piece > before + 1)
            msl_fail(check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, corner.piece, before + 1);
        before = corner.piece;
        drawing.n++;
    }
    check->at = 0;
    return drawing;
}

/* A row that was checked before. */
static struct muslin_corner_spec corner_of(const struct msl_shape_drawing *drawing, int32_t row)
{
    struct msl_check check = msl_check_start(NULL);
    return read_corner(&check, drawing->rows, drawing->row_size, row);
}

struct msl_shape_ring msl_ring_of(const struct msl_shape_drawing *drawing, int32_t piece)
{
    struct msl_shape_ring ring = { 0 };
    for (int32_t row = 0; row < drawing->n; row++) {
        int32_t here = corner_of(drawing, row).piece;
        ring.first += here < piece;
        ring.count += here == piece;
    }
    return ring;
}

struct msl_shape_ring msl_ring_at(const struct msl_shape_drawing *drawing, int32_t first)
{
    struct msl_shape_ring ring = { first, 0 };
    if (first == drawing->n)
        return ring;
    int32_t piece = corner_of(drawing, first).piece;
    while (first + ring.count < drawing->n && corner_of(drawing, first + ring.count).piece == piece)
        ring.count++;
    return ring;
}

struct msl_shape_edge msl_edge_of(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring, int32_t place)
{
    struct msl_shape_edge edge = { 0 };
    edge.row = ring.first + place % ring.count;
    edge.next = ring.first + (place + 1) % ring.count;
    struct muslin_corner_spec start = corner_of(drawing, edge.row);
    struct muslin_corner_spec end = corner_of(drawing, edge.next);
    edge.piece = start.piece;
    edge.curve = start.curve;
    edge.tip = start.tip;
    edge.px = start.x;
    edge.py = start.y;
    edge.qx = end.x;
    edge.qy = end.y;
    edge.cx = start.centre_x;
    edge.cy = start.centre_y;
    edge.radius = start.radius;
    edge.seam = 2 * start.allowance + start.take_up;
    return edge;
}

/* ---- one edge --------------------------------------------------------------------------------------------------- */

/* Within a tick of the circle: (r - 1)^2 <= square of the distance <= (r + 1)^2. */
static int reaches_circle(const struct msl_shape_edge *arc, int64_t x, int64_t y)
{
    int64_t square = (x - arc->cx) * (x - arc->cx) + (y - arc->cy) * (y - arc->cy);
    return square >= (arc->radius - 1) * (arc->radius - 1) && square <= (arc->radius + 1) * (arc->radius + 1);
}

/* From end to end an arc turns left round its centre when it is convex, right when concave: by less than half a turn
 * where the cross product says so, by exactly half a turn where the ends lie opposite. */
static int turns_half_at_most(const struct msl_shape_edge *arc)
{
    int64_t ax = arc->px - arc->cx, ay = arc->py - arc->cy;
    int64_t bx = arc->qx - arc->cx, by = arc->qy - arc->cy;
    int64_t turn = msl_cross(ax, ay, bx, by) * msl_bulge(arc);
    return turn > 0 || (turn == 0 && ax * bx + ay * by < 0);
}

static int is_edge(const struct msl_shape_edge *edge)
{
    if (edge->px == edge->qx && edge->py == edge->qy)
        return 0;
    if (edge->curve == MUSLIN_CURVE_STRAIGHT)
        return 1;
    return reaches_circle(edge, edge->px, edge->py) && reaches_circle(edge, edge->qx, edge->qy) &&
           turns_half_at_most(edge);
}

/* ---- one ring --------------------------------------------------------------------------------------------------- */

/* Which way an edge leaves its first corner, or arrives at its last: along itself, or square to the arc's radius. */
static void direction_at(const struct msl_shape_edge *edge, int arriving, int64_t *dx, int64_t *dy)
{
    int32_t bulge = msl_bulge(edge);
    *dx = edge->qx - edge->px;
    *dy = edge->qy - edge->py;
    if (bulge == 0)
        return;
    *dx = -bulge * ((arriving ? edge->qy : edge->py) - edge->cy);
    *dy = bulge * ((arriving ? edge->qx : edge->px) - edge->cx);
}

/* Two edges that leave a corner side by side or go on smoothly: their chords tell which way the ring turns, or, where
 * an arc lies inside the other's curve, their radii; the two halves of a disc turn as both of them do. */
static int32_t turn_where_they_touch(const struct msl_shape_edge *in, const struct msl_shape_edge *out)
{
    int64_t chords = msl_cross(in->qx - in->px, in->qy - in->py, out->qx - out->px, out->qy - out->py);
    if (msl_bulge(in) * msl_bulge(out) < 0)
        return msl_sign(in->radius - out->radius) * msl_bulge(in);
    return chords != 0 ? msl_sign(chords) : msl_sign(msl_bulge(in) + msl_bulge(out));
}

static int64_t size_of(int64_t number)
{
    return number < 0 ? -number : number;
}

/* 1 where the ring turns left at a corner, -1 where it turns right. A corner may lie a tick off its circle, so that two
 * directions may be told apart only from a certain turn on. */
static int32_t turn_at(const struct msl_shape_edge *in, const struct msl_shape_edge *out)
{
    int64_t ax, ay, bx, by;
    direction_at(in, 1, &ax, &ay);
    direction_at(out, 0, &bx, &by);
    int64_t turn = msl_cross(ax, ay, bx, by);
    int64_t doubt = 2 * (size_of(ax) + size_of(ay) + size_of(bx) + size_of(by));
    if (size_of(turn) <= doubt)
        return turn_where_they_touch(in, out);
    return msl_sign(turn);
}

/* Does the lowest point of the arc's circle lie on the arc? It does where it is on the chord's outer side. */
static int has_bottom(const struct msl_shape_edge *arc)
{
    int32_t bulge = msl_bulge(arc);
    int64_t side = msl_cross(arc->qx - arc->px, arc->qy - arc->py, arc->cx - arc->px, arc->cy - arc->radius - arc->py);
    return side * bulge < 0;
}

/* A simple shape runs counter-clockwise when it turns left at its lowest point: at the lowest corner (the leftmost of
 * them), or at the bottom of an arc that hangs below it. */
static int runs_counter_clockwise(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring)
{
    int64_t low_x = INT64_MAX, low_y = INT64_MAX;
    int32_t turn = 0;
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge in = msl_edge_of(drawing, ring, i + ring.count - 1);
        struct msl_shape_edge out = msl_edge_of(drawing, ring, i);
        if (out.py < low_y || (out.py == low_y && out.px < low_x)) {
            low_x = out.px;
            low_y = out.py;
            turn = turn_at(&in, &out);
        }
    }
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        if (has_bottom(&edge) && edge.cy - edge.radius < low_y - 1) {
            low_y = edge.cy - edge.radius;
            turn = msl_bulge(&edge);
        }
    }
    return turn > 0;
}

static void want_edges_apart(struct msl_check *check, const struct msl_shape_drawing *drawing,
                             struct msl_shape_ring ring)
{
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        for (int32_t j = i + 1; j < ring.count; j++) {
            struct msl_shape_edge other = msl_edge_of(drawing, ring, j);
            if (msl_edges_meet(&edge, &other)) {
                msl_fail_at(check, MUSLIN_ERR_SHAPE, other.row);
                return;
            }
        }
    }
}

void msl_want_ring(struct msl_check *check, const struct msl_shape_drawing *drawing, struct msl_shape_ring ring)
{
    int32_t arcs = 0;
    for (int32_t i = 0; check->status == MUSLIN_OK && i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        arcs += edge.curve != MUSLIN_CURVE_STRAIGHT;
        if (!is_edge(&edge))
            msl_fail_at(check, MUSLIN_ERR_SHAPE, edge.row);
    }
    if (ring.count < 2 || (ring.count == 2 && arcs == 0))
        msl_fail_at(check, MUSLIN_ERR_SHAPE, ring.first);
    if (check->status == MUSLIN_OK)
        want_edges_apart(check, drawing, ring);
    if (check->status == MUSLIN_OK && !runs_counter_clockwise(drawing, ring))
        msl_fail_at(check, MUSLIN_ERR_SHAPE, ring.first);
}
