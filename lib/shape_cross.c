/* shape_cross.c - which edges of a shape cross, touch or lie on each other.
 *
 * SPDX-License-Identifier: MIT
 *
 * An arc of at most half a turn is the part of its circle on the outer side of its chord. Its corners may lie a tick
 * off the circle; so of the two places where a neighbour meets the circle, the one at the corner they share is left
 * out, and both where they are so near each other that the tick may hide which is which: where the two touch. */
#include "shape_inside.h"

int64_t msl_cross(int64_t ax, int64_t ay, int64_t bx, int64_t by)
{
    return ax * by - ay * bx;
}

int32_t msl_sign(int64_t number)
{
    return number < 0 ? -1 : number > 0;
}

int32_t msl_bulge(const struct msl_shape_edge *edge)
{
    if (edge->curve == MUSLIN_CURVE_STRAIGHT)
        return 0;
    return edge->curve == MUSLIN_CURVE_CONVEX ? 1 : -1;
}

/* Above 0 where the point lies left of the edge, or of an arc's chord. */
static int64_t side_of(const struct msl_shape_edge *edge, int64_t x, int64_t y)
{
    return msl_cross(edge->qx - edge->px, edge->qy - edge->py, x - edge->px, y - edge->py);
}

static int is_between(int64_t number, int64_t end, int64_t other_end)
{
    return end < other_end ? end <= number && number <= other_end : other_end <= number && number <= end;
}

int msl_on_edge(const struct msl_shape_edge *edge, int64_t x, int64_t y)
{
    return side_of(edge, x, y) == 0 && is_between(x, edge->px, edge->qx) && is_between(y, edge->py, edge->qy);
}

/* ---- straight edges --------------------------------------------------------------------------------------------- */

static int has_end_on(const struct msl_shape_edge *edge, const struct msl_shape_edge *other)
{
    return msl_on_edge(edge, other->px, other->py) || msl_on_edge(edge, other->qx, other->qy);
}

/* Do the ends of an edge lie on either side of another's line? */
static int straddles(const struct msl_shape_edge *edge, const struct msl_shape_edge *other)
{
    return msl_sign(side_of(other, edge->px, edge->py)) * msl_sign(side_of(other, edge->qx, edge->qy)) < 0;
}

/* Two edges that share a corner, the one ending where the other starts: is the other end of either on the other edge?
 * */
static int fold_back(const struct msl_shape_edge *before, const struct msl_shape_edge *after)
{
    return msl_on_edge(before, after->qx, after->qy) || msl_on_edge(after, before->px, before->py);
}

static int lines_meet(const struct msl_shape_edge *a, const struct msl_shape_edge *b)
{
    if (a->next == b->row)
        return fold_back(a, b);
    if (b->next == a->row)
        return fold_back(b, a);
    return has_end_on(a, b) || has_end_on(b, a) || (straddles(a, b) && straddles(b, a));
}

/* ---- arcs ------------------------------------------------------------------------------------------------------- */

/* The sign of whole + p sqrt(under). */
static int32_t sign_with(struct msl_wide whole, int64_t p, struct msl_wide under)
{
    const struct msl_root root = { msl_wide_from(p), under };
    return msl_root_sign(whole, &root);
}

/* Where the line p + t (q - p) meets the circle: t = (-b +- sqrt(m)) / a, with m = b^2 - a c. */
struct line_on_circle {
    int64_t a, b;
    struct msl_wide square; /* m */
};

/* Does the line's point on the circle lie within the edge, and on the arc? */
static int is_on_both(const struct msl_shape_edge *arc, const struct msl_shape_edge *line,
                      const struct line_on_circle *at, int32_t sign)
{
    int64_t start = side_of(arc, line->px, line->py);
    int64_t change = side_of(arc, line->qx, line->qy) - start;
    if (sign_with(msl_wide_from(-at->b), sign, at->square) < 0 ||
        sign_with(msl_wide_from(-at->b - at->a), sign, at->square) > 0)
        return 0;
    return sign_with(msl_wide_cross(start, at->a, change, at->b), sign * change, at->square) * msl_bulge(arc) < 0;
}

/* The two places lie as far on either side of the middle between them. A tick off a circle of radius r moves a place by
 * at most sqrt(2 r), so within twice that of the middle, along / sqrt(length2), both are at the corner: 0. Else the
 * sign of the side on which the corner lies. */
static int32_t place_beside_middle(int64_t along, int64_t length2, int64_t radius)
{
    int32_t beyond = msl_wide_compare(msl_wide_multiply(along, along), msl_wide_multiply(8 * radius, length2));
    return beyond > 0 ? msl_sign(along) : 0;
}

/* Which of the two places is the one at the shared corner: 1 the later along the line, -1 the earlier; 0 both. */
static int32_t place_at_corner(const struct msl_shape_edge *arc, const struct msl_shape_edge *line, int64_t length2)
{
    int at_start = line->row == arc->next;
    int64_t vx = (at_start ? line->px : line->qx) - arc->cx;
    int64_t vy = (at_start ? line->py : line->qy) - arc->cy;
    return place_beside_middle(vx * (line->qx - line->px) + vy * (line->qy - line->py), length2, arc->radius);
}

int msl_arc_meets_line(const struct msl_shape_edge *arc, const struct msl_shape_edge *line)
{
    int64_t ux = line->px - arc->cx, uy = line->py - arc->cy;
    int64_t ex = line->qx - line->px, ey = line->qy - line->py;
    struct line_on_circle at;
    at.a = ex * ex + ey * ey;
    at.b = ux * ex + uy * ey;
    at.square = msl_wide_cross(at.b, at.b, at.a, ux * ux + uy * uy - arc->radius * arc->radius);
    int after = arc->next == line->row;
    int before = line->next == arc->row;
    if (at.square.high < 0 || (after && before))
        return 0;
    int32_t corner = after || before ? place_at_corner(arc, line, at.a) : 0;
    if (corner == 0 && (after || before))
        return 0;
    return (corner != 1 && is_on_both(arc, line, &at, 1)) || (corner != -1 && is_on_both(arc, line, &at, -1));
}

/* Arcs of one circle overlap where an end of one lies on the other; with both ends in common, where they bulge the same
 * way. */
static int one_circle_meets(const struct msl_shape_edge *a, const struct msl_shape_edge *b)
{
    if (a->next == b->row && b->next == a->row)
        return a->curve != b->curve;
    return side_of(a, b->px, b->py) * msl_bulge(a) < 0 || side_of(a, b->qx, b->qy) * msl_bulge(a) < 0 ||
           side_of(b, a->px, a->py) * msl_bulge(b) < 0 || side_of(b, a->qx, a->qy) * msl_bulge(b) < 0;
}

/* Two circles a centre d apart meet at c + (s d +- sqrt(m) d') / (2 d^2), d' being d turned left, s = r^2 - q^2 + d^2,
 * m = 4 d^2 r^2 - s^2. Is one of those places on the arc? Its side of the chord times 2 d^2. */
static int circle_place_is_on(const struct msl_shape_edge *arc, const struct msl_shape_edge *first, int64_t dx,
                              int64_t dy, int64_t s, struct msl_wide square, int32_t sign)
{
    int64_t chord_x = arc->qx - arc->px, chord_y = arc->qy - arc->py;
    int64_t centre = side_of(arc, first->cx, first->cy);
    struct msl_wide whole = msl_wide_cross(2 * (dx * dx + dy * dy), centre, -s, msl_cross(chord_x, chord_y, dx, dy));
    return sign_with(whole, sign * msl_cross(chord_x, chord_y, -dy, dx), square) * msl_bulge(arc) < 0;
}

int msl_arcs_meet(const struct msl_shape_edge *a, const struct msl_shape_edge *b)
{
    int64_t dx = b->cx - a->cx, dy = b->cy - a->cy;
    int64_t d2 = dx * dx + dy * dy;
    int64_t s = a->radius * a->radius - b->radius * b->radius + d2;
    struct msl_wide square = msl_wide_cross(4 * d2, a->radius * a->radius, s, s);
    int after = a->next == b->row;
    int before = b->next == a->row;
    if (d2 == 0 && a->radius == b->radius)
        return one_circle_meets(a, b);
    if (square.high < 0 || (after && before)) /* circles about one centre have a square below 0 */
        return 0;
    int64_t vx = (after ? a->qx : a->px) - a->cx;
    int64_t vy = (after ? a->qy : a->py) - a->cy;
    int64_t smaller = a->radius < b->radius ? a->radius : b->radius;
    int32_t corner = after || before ? place_beside_middle(msl_cross(dx, dy, vx, vy), d2, smaller) : 0;
    if (corner == 0 && (after || before))
        return 0;
    for (int32_t sign = -1; sign <= 1; sign += 2)
        if (sign != corner && circle_place_is_on(a, a, dx, dy, s, square, sign) &&
            circle_place_is_on(b, a, dx, dy, s, square, sign))
            return 1;
    return 0;
}

/* ---- any two edges ---------------------------------------------------------------------------------------------- */

int msl_edges_meet(const struct msl_shape_edge *a, const struct msl_shape_edge *b)
{
    int32_t arcs = (msl_bulge(a) != 0 ? 1 : 0) + (msl_bulge(b) != 0 ? 2 : 0);
    int apart = a->next != b->row && b->next != a->row;
    if (apart && a->px == b->px && a->py == b->py)
        return 1;
    switch (arcs) {
    case 0:
        return lines_meet(a, b);
    case 1:
        return msl_arc_meets_line(a, b) || (apart && has_end_on(b, a));
    case 2:
        return msl_arc_meets_line(b, a) || (apart && has_end_on(a, b));
    default:
        return msl_arcs_meet(a, b);
    }
}

int msl_edge_lies_on(const struct msl_shape_edge *edge, const struct msl_shape_edge *other)
{
    if (edge->curve != other->curve)
        return 0;
    if (edge->curve != MUSLIN_CURVE_STRAIGHT)
        return edge->px == other->px && edge->py == other->py && edge->qx == other->qx && edge->qy == other->qy &&
               edge->cx == other->cx && edge->cy == other->cy && edge->radius == other->radius;
    int64_t ex = edge->qx - edge->px, ey = edge->qy - edge->py;
    int64_t ox = other->qx - other->px, oy = other->qy - other->py;
    if (side_of(edge, other->px, other->py) != 0 || side_of(edge, other->qx, other->qy) != 0 || ex * ox + ey * oy < 0)
        return 0;
    return ex * (other->qx - edge->px) + ey * (other->qy - edge->py) > 0 &&
           ex * (other->px - edge->qx) + ey * (other->py - edge->qy) < 0;
}
