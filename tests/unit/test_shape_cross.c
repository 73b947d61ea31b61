/* test_shape_cross.c - which edges of a shape meet, against crossings worked out another way.
 *
 * SPDX-License-Identifier: MIT
 *
 * Of straight edges by Cramer's rule in whole numbers; of arcs in double, where the answer does not hang on a hair. */
#include <math.h>

#include "struct_rules.h"

#include "shape_inside.h"

enum { SCALE = 1000 };
static const double NEAR = 500;

static struct msl_shape_edge line_of(int32_t row, int64_t px, int64_t py, int64_t qx, int64_t qy)
{
    const struct msl_shape_edge line = {
        .row = row, .next = row + 1, .curve = MUSLIN_CURVE_STRAIGHT, .px = px, .py = py, .qx = qx, .qy = qy
    };
    return line;
}

enum { SIDE = 4, POINTS = SIDE * SIDE };

/* A line between two points of a square grid, by their numbers. */
static struct msl_shape_edge on_grid(int32_t row, int from, int to)
{
    return line_of(row, from % SIDE, from / SIDE, to % SIDE, to / SIDE);
}

/* ---- straight edges --------------------------------------------------------------------------------------------- */

static int is_within(int64_t number, int64_t whole)
{
    return whole > 0 ? number >= 0 && number <= whole : number <= 0 && number >= whole;
}

/* Whether two closed lines have a point in common: a + t (b - a) = c + u (d - c). */
static int have_common(const struct msl_shape_edge *m, const struct msl_shape_edge *n)
{
    const int64_t mx = m->qx - m->px, my = m->qy - m->py, nx = n->qx - n->px, ny = n->qy - n->py;
    const int64_t wx = n->px - m->px, wy = n->py - m->py;
    const int64_t below = mx * ny - my * nx;
    if (below != 0)
        return is_within(wx * ny - wy * nx, below) && is_within(wx * my - wy * mx, below);
    const int64_t length = mx * mx + my * my;
    const int64_t from = wx * mx + wy * my, to = from + nx * mx + ny * my;
    return wx * my == wy * mx && !(from < 0 && to < 0) && !(from > length && to > length);
}

START_TEST(straight_edges_meet_where_they_have_a_point_in_common)
{
    int wrong = 0, meeting = 0;
    for (int a = 0; a < POINTS; a++)
        for (int b = 0; b < POINTS; b++)
            for (int c = 0; c < POINTS; c++)
                for (int d = 0; d < POINTS; d++) {
                    const struct msl_shape_edge m = on_grid(0, a, b);
                    const struct msl_shape_edge n = on_grid(2, c, d);
                    if (a == b || c == d)
                        continue;
                    wrong += msl_edges_meet(&m, &n) != have_common(&m, &n);
                    meeting += have_common(&m, &n);
                }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(meeting, 1000);
}
END_TEST

/* Of two that share a corner the one lies on the other where it goes back along it. */
START_TEST(neighbours_meet_where_the_ring_folds_back)
{
    int wrong = 0;
    for (int a = 0; a < POINTS; a++)
        for (int b = 0; b < POINTS; b++)
            for (int c = 0; c < POINTS; c++) {
                const struct msl_shape_edge in = on_grid(0, a, b);
                const struct msl_shape_edge out = on_grid(1, b, c);
                const int64_t ix = in.qx - in.px, iy = in.qy - in.py, ox = out.qx - out.px, oy = out.qy - out.py;
                const int folds = ix * oy == iy * ox && ix * ox + iy * oy < 0;
                if (a == b || b == c)
                    continue;
                wrong += msl_edges_meet(&in, &out) != folds;
                wrong += msl_edges_meet(&out, &in) != folds;
            }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* One lies along another where they run the same way and have more than a point in common. */
START_TEST(edges_lie_along_each_other_where_they_run_the_same_way)
{
    int wrong = 0;
    for (int a = 0; a < POINTS; a++)
        for (int b = 0; b < POINTS; b++)
            for (int c = 0; c < POINTS; c++)
                for (int d = 0; d < POINTS; d++) {
                    const struct msl_shape_edge m = on_grid(0, a, b);
                    const struct msl_shape_edge n = on_grid(2, c, d);
                    const int64_t x = m.qx - m.px, y = m.qy - m.py;
                    const int64_t from = x * (n.px - m.px) + y * (n.py - m.py);
                    const int64_t to = x * (n.qx - m.px) + y * (n.qy - m.py);
                    const int in_line =
                        x * (n.py - m.py) == y * (n.px - m.px) && x * (n.qy - m.py) == y * (n.qx - m.px);
                    if (a == b || c == d)
                        continue;
                    wrong += msl_edge_lies_on(&m, &n) != (in_line && from < to && from < x * x + y * y && to > 0);
                }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

START_TEST(points_lie_on_an_edge_from_end_to_end)
{
    int wrong = 0;
    for (int a = 0; a < POINTS; a++)
        for (int b = 0; b < POINTS; b++)
            for (int c = 0; c < POINTS; c++) {
                const struct msl_shape_edge edge = on_grid(0, a, b);
                const struct msl_shape_edge point = on_grid(0, c, c);
                const int64_t ex = edge.qx - edge.px, ey = edge.qy - edge.py;
                const int64_t wx = point.px - edge.px, wy = point.py - edge.py;
                const int is_on = ex * wy == ey * wx && is_within(ex * wx + ey * wy, ex * ex + ey * ey);
                wrong += a != b && msl_on_edge(&edge, point.px, point.py) != is_on;
            }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* ---- arcs ------------------------------------------------------------------------------------------------------- */

/* Whole-number points of a circle of radius 5 (and, doubled, of 10), counter-clockwise. */
enum { ROUND = 12 };
static const int64_t round_points[ROUND][2] = {
    { 5, 0 }, { 4, 3 }, { 3, 4 }, { 0, 5 }, { -3, 4 }, { -4, 3 }, { -5, 0 }, { -4, -3 }, { -3, -4 }, { 0, -5 },
    { 3, -4 }, { 4, -3 }
};

/* The arc that spans `steps` of those points from the one with the number `from`: by six half a turn. A concave one
 * runs clockwise. */
static struct msl_shape_edge arc_of(int32_t row, int64_t x, int64_t y, int64_t times, int from, int steps, int concave)
{
    const int start = concave ? (from + steps) % ROUND : from, end = concave ? from : (from + steps) % ROUND;
    struct msl_shape_edge arc = line_of(row, 0, 0, 0, 0);
    arc.curve = concave ? MUSLIN_CURVE_CONCAVE : MUSLIN_CURVE_CONVEX;
    arc.radius = 5 * times * SCALE;
    arc.cx = x * SCALE;
    arc.cy = y * SCALE;
    arc.px = arc.cx + times * SCALE * round_points[start][0];
    arc.py = arc.cy + times * SCALE * round_points[start][1];
    arc.qx = arc.cx + times * SCALE * round_points[end][0];
    arc.qy = arc.cy + times * SCALE * round_points[end][1];
    return arc;
}

static double apart(double x, double y, double other_x, double other_y)
{
    return hypot(x - other_x, y - other_y);
}

/* How far a point lies on the arc's outer side of its chord; below 0 on the inner side, where there is no arc. */
static double beyond_chord(const struct msl_shape_edge *arc, double x, double y)
{
    const double cx = (double)(arc->qx - arc->px), cy = (double)(arc->qy - arc->py);
    const double left = (cx * (y - (double)arc->py) - cy * (x - (double)arc->px)) / hypot(cx, cy);
    return arc->curve == MUSLIN_CURVE_CONVEX ? -left : left;
}

/* What is seen of a place where two edges may meet: 1 they do, 0 they do not, -1 too near an end to say. */
static int seen_on_arc(const struct msl_shape_edge *arc, double x, double y)
{
    if (apart(x, y, (double)arc->px, (double)arc->py) < NEAR || apart(x, y, (double)arc->qx, (double)arc->qy) < NEAR)
        return -1;
    return beyond_chord(arc, x, y) > 0;
}

static int seen_on_line(const struct msl_shape_edge *line, double x, double y)
{
    const double lx = (double)(line->qx - line->px), ly = (double)(line->qy - line->py), length = hypot(lx, ly);
    const double along = (lx * (x - (double)line->px) + ly * (y - (double)line->py)) / length;
    if (fabs(along) < NEAR || fabs(along - length) < NEAR)
        return -1;
    return along > 0 && along < length;
}

static int seen_on(const struct msl_shape_edge *edge, double x, double y)
{
    return edge->curve == MUSLIN_CURVE_STRAIGHT ? seen_on_line(edge, x, y) : seen_on_arc(edge, x, y);
}

/* Whether either of two places lies on both edges; -1 where that is too near to say. */
static int seen_at(const struct msl_shape_edge *a, const struct msl_shape_edge *b, double places[2][2])
{
    int meet = 0;
    for (int i = 0; i < 2; i++) {
        const int on_a = seen_on(a, places[i][0], places[i][1]), on_b = seen_on(b, places[i][0], places[i][1]);
        if (on_a < 0 || on_b < 0)
            return -1;
        meet |= on_a && on_b;
    }
    return meet;
}

static int seen_line(const struct msl_shape_edge *arc, const struct msl_shape_edge *line)
{
    const double lx = (double)(line->qx - line->px), ly = (double)(line->qy - line->py), length = hypot(lx, ly);
    const double ux = (double)(arc->cx - line->px), uy = (double)(arc->cy - line->py);
    const double along = (lx * ux + ly * uy) / length, beside = (lx * uy - ly * ux) / length;
    const double radius = (double)arc->radius, square = radius * radius - beside * beside;
    if (fabs(radius - fabs(beside)) < NEAR)
        return -1;
    if (square < 0)
        return 0;
    double places[2][2];
    for (int i = 0; i < 2; i++) {
        const double to = along + (i == 0 ? -sqrt(square) : sqrt(square));
        places[i][0] = (double)line->px + lx / length * to;
        places[i][1] = (double)line->py + ly / length * to;
    }
    return seen_at(arc, line, places);
}

static int seen_circles(const struct msl_shape_edge *a, const struct msl_shape_edge *b)
{
    const double dx = (double)(b->cx - a->cx), dy = (double)(b->cy - a->cy), d = hypot(dx, dy);
    const double r = (double)a->radius, q = (double)b->radius;
    if (fabs(d - r - q) < NEAR || fabs(d - fabs(r - q)) < NEAR)
        return -1;
    if (d > r + q || d < fabs(r - q))
        return 0;
    const double along = (d * d + r * r - q * q) / (2 * d), beside = sqrt(r * r - along * along);
    double places[2][2];
    for (int i = 0; i < 2; i++) {
        const double to = i == 0 ? beside : -beside;
        places[i][0] = (double)a->cx + (dx * along - dy * to) / d;
        places[i][1] = (double)a->cy + (dy * along + dx * to) / d;
    }
    return seen_at(a, b, places);
}

/* Both ways round, as which comes first is no matter. */
static int is_wrong(const struct msl_shape_edge *a, const struct msl_shape_edge *b, int seen, int *counted)
{
    if (seen < 0)
        return 0;
    counted[seen]++;
    return (msl_edges_meet(a, b) != seen) + (msl_edges_meet(b, a) != seen);
}

START_TEST(an_arc_meets_a_line_that_runs_through_it)
{
    int wrong = 0, counted[2] = { 0, 0 };
    for (int from = 0; from < ROUND; from++)
        for (int steps = 1; steps <= 6; steps++)
            for (int place = 0; place < 36 * 36; place++) {
                const struct msl_shape_edge arc = arc_of(0, 10, 10, 1, from, steps, (from + steps) % 2);
                const int64_t px = place % 6 * 4000 + 100, py = place / 6 % 6 * 4000 + 700;
                const int64_t qx = place / 36 % 6 * 4000 + 300, qy = place / 216 * 4000;
                const struct msl_shape_edge line = line_of(2, px, py, qx, qy);
                wrong += is_wrong(&arc, &line, seen_line(&arc, &line), counted);
            }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(counted[0], 1000);
    ck_assert_int_gt(counted[1], 1000);
}
END_TEST

/* From every whole-number point within the arc inwards to near its centre, and outwards: both ways they touch. */
START_TEST(an_arc_meets_a_line_that_ends_on_it)
{
    int wrong = 0;
    for (int from = 0; from < ROUND; from++)
        for (int steps = 2; steps <= 6; steps++)
            for (int within = 1; within < steps; within++)
                for (int to = 0; to < 4; to++) {
                    const struct msl_shape_edge arc = arc_of(0, 10, 10, 1, from, steps, to % 2);
                    const int64_t *point = round_points[(from + within) % ROUND];
                    const int64_t x = arc.cx + SCALE * point[0], y = arc.cy + SCALE * point[1];
                    const int64_t far_x = arc.cx + point[0] * (to < 2 ? 100 : 1900) + 7;
                    const int64_t far_y = arc.cy + point[1] * (to < 2 ? 100 : 1900) - 9;
                    const struct msl_shape_edge away = line_of(2, x, y, far_x, far_y);
                    const struct msl_shape_edge towards = line_of(2, far_x, far_y, x, y);
                    wrong += !msl_edges_meet(&arc, &away) + !msl_edges_meet(&towards, &arc);
                }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* A horn: a line that leaves an arc straight back along it. Its corner may lie a tick off the circle, so that the line
 * cuts off a sliver, of 100 ticks' height here, beside which the corner may lie: they touch, and do not meet again. */
START_TEST(a_line_that_touches_an_arc_does_not_meet_it_again)
{
    const int64_t corners[][2] = { { 15000, 10000 }, { 14999, 10000 }, { 14999, 10010 }, { 14999, 9990 } };
    for (size_t i = 0; i < sizeof corners / sizeof corners[0]; i++) {
        const int64_t x = corners[i][0], y = corners[i][1];
        struct msl_shape_edge arc = arc_of(1, 10, 10, 1, 9, 3, 0); /* from the bottom to the right */
        arc.qx = x;
        arc.qy = y;
        const struct msl_shape_edge back = line_of(2, x, y, x, 2000);
        ck_assert_int_eq(msl_edges_meet(&arc, &back), 0);
        ck_assert_int_eq(msl_edges_meet(&back, &arc), 0);
        struct msl_shape_edge other = arc_of(1, 10, 10, 1, 9, 3, 1); /* the same the other way */
        other.px = x;
        other.py = y;
        const struct msl_shape_edge forth = line_of(0, x, 2000, x, y);
        ck_assert_int_eq(msl_edges_meet(&other, &forth), 0);
        ck_assert_int_eq(msl_edges_meet(&forth, &other), 0);
    }
}
END_TEST

/* A level line that leaves an arc and runs through it again within 6 times the root of its radius, as shape.h says:
 * 550 of 600 ticks on, and 400 of 424. The corners lie within a tick of the circle: 275^2 + 9996^2 = 9999.8^2 and
 * 200^2 + 4996^2 = 5000.002^2. A thousand ticks on they meet: 500^2 + 9987^2 = 9999.5^2. */
START_TEST(an_arc_and_a_line_touch_within_six_times_the_root_of_the_radius)
{
    static const struct {
        int64_t radius, beside, up;
        int meet;
    } cases[] = { { 10000, 275, 9996, 0 }, { 5000, 200, 4996, 0 }, { 10000, 500, 9987, 1 } };
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct msl_shape_edge arc = line_of(0, cases[i].radius, 0, -cases[i].beside, cases[i].up);
        const struct msl_shape_edge line = line_of(1, -cases[i].beside, cases[i].up, 4000, cases[i].up);
        arc.curve = MUSLIN_CURVE_CONVEX;
        arc.radius = cases[i].radius;
        ck_assert_int_eq(msl_edges_meet(&arc, &line), cases[i].meet);
        ck_assert_int_eq(msl_edges_meet(&line, &arc), cases[i].meet);
    }
}
END_TEST

/* Arcs that go on smoothly, the one curving left and the other right, or both left: all lies on rounded places, so that
 * they may cut a sliver off each other beside their corner. */
START_TEST(arcs_that_touch_at_their_corner_do_not_meet_again)
{
    uint64_t state = 71;
    int wrong = 0;
    for (int i = 0; i < 2000; i++) {
        const double angle = (double)draw_from(&state, 0, 359) * atan(1) / 45;
        const int64_t radius = draw_from(&state, 2000, 900000), other = draw_from(&state, 2000, 900000);
        const int is_left = draw_from(&state, 0, 1) == 0;
        struct msl_shape_edge a = line_of(0, 0, 0, llround((double)radius * cos(angle)),
                                          llround((double)radius * sin(angle)));
        struct msl_shape_edge b = line_of(1, a.qx, a.qy, 0, 0);
        a.curve = MUSLIN_CURVE_CONVEX;
        a.radius = radius;
        a.px = llround((double)radius * cos(angle - 1.5));
        a.py = llround((double)radius * sin(angle - 1.5));
        b.curve = is_left ? MUSLIN_CURVE_CONVEX : MUSLIN_CURVE_CONCAVE;
        b.radius = other;
        b.cx = llround((double)(is_left ? radius - other : radius + other) * cos(angle));
        b.cy = llround((double)(is_left ? radius - other : radius + other) * sin(angle));
        const double from = is_left ? angle + 1 : angle + 4 * atan(1) - 1;
        b.qx = b.cx + llround((double)other * cos(from));
        b.qy = b.cy + llround((double)other * sin(from));
        if (is_left && (radius == other || llabs(radius - other) < radius / 50))
            continue; /* nearly one circle */
        wrong += msl_edges_meet(&a, &b) + msl_edges_meet(&b, &a);
    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* A circle of radius 25 and one of 101, whose centre is 84 beside, have (15, 20) and (15, -20) in common. Of arcs that
 * follow each other at the first, both run through the second, 40 away: more than 6 times the root of 25. */
START_TEST(arcs_meet_again_where_the_smaller_says)
{
    struct msl_shape_edge small = line_of(0, 7, -24, 15, 20), large = line_of(1, 15, 20, -64, -99);
    small.curve = MUSLIN_CURVE_CONVEX;
    small.radius = 25;
    large.curve = MUSLIN_CURVE_CONCAVE;
    large.radius = 101;
    large.cx = -84;
    ck_assert_int_eq(msl_edges_meet(&small, &large), 1);
    ck_assert_int_eq(msl_edges_meet(&large, &small), 1);
}
END_TEST

/* Circles of radius 5 about (-3, 0) and (3, 0) have (0, 4) and (0, -4) in common. Half a turn of the first runs through
 * the one, half a turn of the other through the other; the middle of both lies on the outer side of both chords. */
START_TEST(arcs_about_the_middle_of_two_places_do_not_meet)
{
    struct msl_shape_edge a = line_of(0, SCALE, -3 * SCALE, -7 * SCALE, 3 * SCALE);
    struct msl_shape_edge b = line_of(5, -SCALE, 3 * SCALE, 7 * SCALE, -3 * SCALE);
    a.curve = b.curve = MUSLIN_CURVE_CONVEX;
    a.radius = b.radius = 5 * SCALE;
    a.cx = -3 * SCALE;
    b.cx = 3 * SCALE;
    ck_assert_int_eq(msl_edges_meet(&a, &b), 0);
    ck_assert_int_eq(msl_edges_meet(&b, &a), 0);
}
END_TEST

/* With one coordinate after the other moved, or the radius. */
START_TEST(an_arc_lies_only_along_itself)
{
    const struct msl_shape_edge arc = arc_of(0, 10, 10, 1, 0, 3, 0);
    const size_t members[] = { offsetof(struct msl_shape_edge, px), offsetof(struct msl_shape_edge, py),
                               offsetof(struct msl_shape_edge, qx), offsetof(struct msl_shape_edge, qy),
                               offsetof(struct msl_shape_edge, cx), offsetof(struct msl_shape_edge, cy),
                               offsetof(struct msl_shape_edge, radius) };
    struct msl_shape_edge other = arc;
    other.row = 7;
    ck_assert(msl_edge_lies_on(&arc, &other));
    for (size_t i = 0; i < sizeof members / sizeof members[0]; i++) {
        int64_t number;
        other = arc;
        memcpy(&number, (const unsigned char *)&arc + members[i], sizeof number);
        number++;
        memcpy((unsigned char *)&other + members[i], &number, sizeof number);
        ck_assert(!msl_edge_lies_on(&arc, &other) && !msl_edge_lies_on(&other, &arc));
    }
    other = arc;
    other.curve = MUSLIN_CURVE_CONCAVE;
    ck_assert(!msl_edge_lies_on(&arc, &other));
}
END_TEST

/* The steps that an arc spans, a bit each, and its ends. */
static int steps_from(int from, int steps)
{
    int all = 0;
    for (int i = 0; i < steps; i++)
        all |= 1 << (from + i) % ROUND;
    return all;
}

static int ends_of(int from, int steps)
{
    return 1 << from % ROUND | 1 << (from + steps) % ROUND;
}

/* Of arcs that follow each other the other place tells: their corner, mirrored in the line through both centres. */
START_TEST(an_arc_meets_the_next_one_again_at_the_other_place)
{
    int wrong = 0, counted[2] = { 0, 0 };
    for (int code = 0; code < ROUND * 6 * ROUND * 6 * 8; code++) {
        const int from = code % ROUND, steps = 1 + code / ROUND % 6, at = code / (ROUND * 6) % ROUND;
        const int more = 1 + code / (ROUND * 6 * ROUND) % 6, ways = code / (ROUND * 6 * ROUND * 6);
        const int64_t times = 1 + ways / 4;
        const struct msl_shape_edge a = arc_of(0, 30, 30, 1, from, steps, ways % 2);
        const int64_t x = a.qx / SCALE - times * round_points[at][0], y = a.qy / SCALE - times * round_points[at][1];
        const int concave = ways / 2 % 2;
        const struct msl_shape_edge b =
            arc_of(1, x, y, times, concave ? (at + ROUND - more) % ROUND : at, more, concave);
        const double dx = (double)(b.cx - a.cx), dy = (double)(b.cy - a.cy), d = hypot(dx, dy);
        const double vx = (double)(a.qx - a.cx), vy = (double)(a.qy - a.cy);
        if (d < NEAR)
            continue;
        const double beside = (dx * vy - dy * vx) / d;
        const double px = (double)a.qx + 2 * beside * dy / d, py = (double)a.qy - 2 * beside * dx / d;
        const int on_a = seen_on_arc(&a, px, py), on_b = seen_on_arc(&b, px, py);
        if (fabs(beside) > NEAR && on_a >= 0 && on_b >= 0)
            wrong += is_wrong(&a, &b, on_a && on_b, counted);
    }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(counted[0], 1000);
    ck_assert_int_gt(counted[1], 1000);
}
END_TEST

/* Arcs of one circle meet where they have a step in common. Of ends that alone touch, and of one arc both ways, their
 * neighbours tell, which begin at one corner there. */
START_TEST(arcs_of_one_circle_meet_where_they_overlap)
{
    int wrong = 0;
    for (int from = 0; from < ROUND; from++)
        for (int steps = 1; steps <= 6; steps++)
            for (int other = 0; other < ROUND; other++)
                for (int more = 1; more <= 6; more++)
                    for (int ways = 0; ways < 4; ways++) {
                        const struct msl_shape_edge a = arc_of(0, 10, 10, 1, from, steps, ways % 2);
                        const struct msl_shape_edge b = arc_of(2, 10, 10, 1, other, more, ways / 2);
                        const int overlap = (steps_from(from, steps) & steps_from(other, more)) != 0;
                        if (ways % 2 != ways / 2 && ends_of(from, steps) == ends_of(other, more))
                            continue;
                        if (overlap || (ends_of(from, steps) & ends_of(other, more)) == 0)
                            wrong += msl_edges_meet(&a, &b) != overlap;
                    }
    ck_assert_int_eq(wrong, 0);
}
END_TEST

/* An arc may go on along its circle, and two halves make a whole; none may go back along itself. */
START_TEST(neighbours_on_one_circle_meet_where_one_goes_back)
{
    for (int from = 0; from < ROUND; from++)
        for (int steps = 1; steps <= 6; steps++) {
            const struct msl_shape_edge there = arc_of(0, 10, 10, 1, from, steps, 0);
            for (int more = 1; more <= 6; more++) {
                const int end = from + steps;
                const struct msl_shape_edge on = arc_of(1, 10, 10, 1, end % ROUND, more, 0);
                struct msl_shape_edge back = arc_of(1, 10, 10, 1, (end + ROUND - more) % ROUND, more, 1);
                if (steps + more < ROUND) {
                    ck_assert_int_eq(msl_edges_meet(&there, &on), 0);
                    ck_assert_int_eq(msl_edges_meet(&on, &there), 0);
                }
                if (more != steps) {
                    ck_assert_int_eq(msl_edges_meet(&there, &back), 1);
                    ck_assert_int_eq(msl_edges_meet(&back, &there), 1);
                }
            }
        }
    for (int from = 0; from < ROUND; from++) {
        const struct msl_shape_edge half = arc_of(0, 10, 10, 1, from, 6, 0);
        struct msl_shape_edge whole = arc_of(1, 10, 10, 1, (from + 6) % ROUND, 6, 0);
        struct msl_shape_edge back = arc_of(1, 10, 10, 1, from, 6, 1);
        whole.next = back.next = 0;
        ck_assert_int_eq(msl_edges_meet(&half, &whole), 0);
        ck_assert_int_eq(msl_edges_meet(&half, &back), 1);
    }
}
END_TEST

START_TEST(arcs_meet_where_their_circles_do)
{
    int wrong = 0, counted[2] = { 0, 0 };
    for (int from = 0; from < ROUND; from++)
        for (int steps = 1; steps <= 6; steps++)
            for (int place = 0; place < 20; place++)
                for (int other = 0; other < ROUND; other++) {
                    const struct msl_shape_edge a = arc_of(0, 20, 20, 1, from, steps, steps % 2);
                    const struct msl_shape_edge b = arc_of(2, 13 + place % 5 * 4, 11 + place / 5 * 6, 1 + place % 2,
                                                           other, 1 + (from + place) % 6, other % 2);
                    wrong += is_wrong(&a, &b, seen_circles(&a, &b), counted);
                }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(counted[0], 1000);
    ck_assert_int_gt(counted[1], 1000);
}
END_TEST

/* Of a line that begins or ends where an arc does only the other place tells. */
START_TEST(an_arc_meets_its_neighbour_again_at_the_other_place)
{
    int wrong = 0, counted[2] = { 0, 0 };
    for (int from = 0; from < ROUND; from++)
        for (int steps = 1; steps <= 6; steps++)
            for (int concave = 0; concave < 2; concave++)
                for (int to = 0; to < 400; to++) {
                    const struct msl_shape_edge arc = arc_of(1, 10, 10, 1, from, steps, concave);
                    const int64_t x = to % 20 * 1000 + 450, y = to / 20 * 1000 + 350;
                    const struct msl_shape_edge out = line_of(2, arc.qx, arc.qy, x, y);
                    const struct msl_shape_edge in = line_of(0, x, y, arc.px, arc.py);
                    const struct msl_shape_edge *lines[] = { &in, &out };
                    for (int i = 0; i < 2; i++) {
                        /* the other place: the corner mirrored in the middle of the chord that the line cuts */
                        const double sx = (double)(i == 0 ? arc.px : arc.qx), sy = (double)(i == 0 ? arc.py : arc.qy);
                        const double lx = (double)x - sx, ly = (double)y - sy, length = hypot(lx, ly);
                        const double along = (lx * ((double)arc.cx - sx) + ly * ((double)arc.cy - sy)) / length;
                        const double px = sx + 2 * along * lx / length, py = sy + 2 * along * ly / length;
                        const int on_line = along > 0 && 2 * along < length, on_arc = seen_on_arc(&arc, px, py);
                        if (fabs(along) < NEAR || fabs(2 * along - length) < NEAR || on_arc < 0)
                            continue;
                        wrong += is_wrong(&arc, lines[i], on_line && on_arc, counted);
                    }
                }
    ck_assert_int_eq(wrong, 0);
    ck_assert_int_gt(counted[0], 1000);
    ck_assert_int_gt(counted[1], 1000);
}
END_TEST

Suite *shape_cross_suite(void)
{
    Suite *suite = suite_create("shape_cross");
    TCase *tests = tcase_create("edges that meet");
    tcase_add_test(tests, straight_edges_meet_where_they_have_a_point_in_common);
    tcase_add_test(tests, neighbours_meet_where_the_ring_folds_back);
    tcase_add_test(tests, edges_lie_along_each_other_where_they_run_the_same_way);
    tcase_add_test(tests, an_arc_meets_a_line_that_runs_through_it);
    tcase_add_test(tests, points_lie_on_an_edge_from_end_to_end);
    tcase_add_test(tests, an_arc_meets_a_line_that_ends_on_it);
    tcase_add_test(tests, a_line_that_touches_an_arc_does_not_meet_it_again);
    tcase_add_test(tests, an_arc_and_a_line_touch_within_six_times_the_root_of_the_radius);
    tcase_add_test(tests, arcs_that_touch_at_their_corner_do_not_meet_again);
    tcase_add_test(tests, arcs_meet_again_where_the_smaller_says);
    tcase_add_test(tests, arcs_about_the_middle_of_two_places_do_not_meet);
    tcase_add_test(tests, an_arc_lies_only_along_itself);
    tcase_add_test(tests, arcs_of_one_circle_meet_where_they_overlap);
    tcase_add_test(tests, neighbours_on_one_circle_meet_where_one_goes_back);
    tcase_add_test(tests, an_arc_meets_the_next_one_again_at_the_other_place);
    tcase_add_test(tests, arcs_meet_where_their_circles_do);
    tcase_add_test(tests, an_arc_meets_its_neighbour_again_at_the_other_place);
    suite_add_tcase(suite, tests);
    return suite;
}
