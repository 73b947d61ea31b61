/* test_shape_ways.c - which way a shape runs, and which arcs there are: shapes made to be right, and the same the other
 * way round.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "test_shape.h"

enum { RING_MOST = 5, MIDDLE = 1000000 / 2 };

/* The rows of a ring, as outline and as a piece. */
struct ring {
    int32_t n;
    struct muslin_corner_spec rows[RING_MOST];
};

static void add_corner(struct ring *ring, int64_t x, int64_t y)
{
    const struct muslin_corner_spec row = CORNER(0, x, y);
    ring->rows[ring->n++] = row;
}

static void add_arc(struct ring *ring, int64_t x, int64_t y, int32_t curve, int64_t cx, int64_t cy, int64_t radius)
{
    const struct muslin_corner_spec row = ARC(0, x, y, curve, cx, cy, radius);
    ring->rows[ring->n++] = row;
}

/* Whether it is a unit of one piece; if not, it is no shape from the row `at` on. */
static int is_shape(const struct ring *ring, int64_t at)
{
    struct muslin_corner_spec rows[2 * RING_MOST];
    struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
    struct muslin_problem problem = PROBLEM;
    for (int32_t i = 0; i < 2 * ring->n; i++) {
        rows[i] = ring->rows[i % ring->n];
        rows[i].piece = i / ring->n - 1;
    }
    const muslin_status status =
        muslin_shape_check(rows, sizeof rows[0], 2 * (size_t)ring->n, &shape, &problem);
    if (status == MUSLIN_OK)
        return 1;
    ck_status(status, MUSLIN_ERR_SHAPE);
    ck_assert_msg(problem.at == at && problem.value == at && problem.limit == 0, "%s", problem.text);
    return 0;
}

/* The same corners and edges, run through the other way. */
static struct ring turned_round(const struct ring *ring)
{
    struct ring other = { .n = ring->n };
    for (int32_t i = 0; i < ring->n; i++) {
        const struct muslin_corner_spec *edge = &ring->rows[(2 * ring->n - 1 - i) % ring->n];
        struct muslin_corner_spec *row = &other.rows[i];
        *row = *edge;
        row->x = ring->rows[(ring->n - i) % ring->n].x;
        row->y = ring->rows[(ring->n - i) % ring->n].y;
        if (edge->curve != MUSLIN_CURVE_STRAIGHT)
            row->curve = CONVEX + CONCAVE - edge->curve;
    }
    return other;
}

static void ck_one_way(const struct ring *ring)
{
    const struct ring other = turned_round(ring);
    ck_assert(is_shape(ring, 0));
    ck_assert(!is_shape(&other, 0));
}

/* Beginning with any of its corners. */
static void ck_one_way_from_all(struct ring ring)
{
    for (int32_t i = 0; i < ring.n; i++) {
        const struct muslin_corner_spec first = ring.rows[0];
        ck_one_way(&ring);
        memmove(ring.rows, ring.rows + 1, (size_t)(ring.n - 1) * sizeof ring.rows[0]);
        ring.rows[ring.n - 1] = first;
    }
}

START_TEST(a_square_with_a_corner_in_its_lowest_side_runs_one_way)
{
    struct ring ring = { .n = 0 };
    add_corner(&ring, 10, 10);
    add_corner(&ring, 15, 10);
    add_corner(&ring, 20, 10);
    add_corner(&ring, 20, 20);
    add_corner(&ring, 10, 20);
    ck_one_way_from_all(ring);
}
END_TEST

/* Any part of a disc up to a half, between twelve points of its circle with whole numbers. */
START_TEST(parts_of_a_disc_run_one_way)
{
    static const int64_t points[][2] = { { 5, 0 },  { 4, 3 },   { 3, 4 },   { 0, 5 },  { -3, 4 }, { -4, 3 },
                                         { -5, 0 }, { -4, -3 }, { -3, -4 }, { 0, -5 }, { 3, -4 }, { 4, -3 } };
    for (int from = 0; from < 12; from++)
        for (int steps = 1; steps <= 6; steps++)
            for (int64_t away = 0; away < 2; away++) {
                const int64_t cx = 5000 + 400000 * away, cy = 5000 + 7000 * away;
                const int64_t *start = points[from], *end = points[(from + steps) % 12];
                struct ring ring = { .n = 0 };
                add_arc(&ring, cx + 1000 * start[0], cy + 1000 * start[1], CONVEX, cx, cy, 5000);
                add_corner(&ring, cx + 1000 * end[0], cy + 1000 * end[1]);
                ck_one_way_from_all(ring);
            }
}
END_TEST

/* Two arcs of 5 about (-3, 0) and (3, 0) hang below the corner (0, -4) between them, the lowest one, where the ring turns
 * right. */
START_TEST(lobes_that_hang_below_their_corner_run_one_way)
{
    struct ring ring = { .n = 0 };
    add_arc(&ring, 12000, 20000, CONVEX, 17000, 20000, 5000);
    add_arc(&ring, 20000, 16000, CONVEX, 23000, 20000, 5000);
    add_corner(&ring, 28000, 20000);
    add_corner(&ring, 28000, 26000);
    add_corner(&ring, 12000, 26000);
    ck_one_way_from_all(ring);
}
END_TEST

/* ---- horns ------------------------------------------------------------------------------------------------------- */

/* A way from a corner: along a direction, and to the left of it (above 0) or to the right with a radius, or straight. */
struct way {
    int64_t radius; /* 0: straight */
    int32_t side;
    int64_t cx, cy, x, y; /* its centre and its end */
};

static struct way draw_way(uint64_t *state, int64_t x, int64_t y, double direction, double length)
{
    struct way way = { .radius = draw_from(state, 0, 2) == 0 ? 0 : draw_from(state, 150000, 400000) };
    way.side = draw_from(state, 0, 1) == 0 ? 1 : -1;
    if (way.radius == 0) {
        way.side = 0;
        way.x = x + llround(length * cos(direction));
        way.y = y + llround(length * sin(direction));
        return way;
    }
    const double radius = (double)way.radius, quarter = 2 * atan(1) * way.side;
    way.cx = x + llround(radius * cos(direction + quarter));
    way.cy = y + llround(radius * sin(direction + quarter));
    const double from = direction - quarter + way.side * length / radius;
    way.x = way.cx + llround(radius * cos(from));
    way.y = way.cy + llround(radius * sin(from));
    return way;
}

static double bend(const struct way *way)
{
    return way->radius == 0 ? 0 : way->side / (double)way->radius;
}

/* Two ways that leave the lowest corner side by side, the left one back. */
static struct ring horn_of(int64_t x, int64_t y, const struct way *right, const struct way *left)
{
    struct ring ring = { .n = 0 };
    if (right->radius == 0)
        add_corner(&ring, x, y);
    else
        add_arc(&ring, x, y, right->side > 0 ? CONVEX : CONCAVE, right->cx, right->cy, right->radius);
    add_corner(&ring, right->x, right->y);
    if (left->radius == 0)
        add_corner(&ring, left->x, left->y);
    else
        add_arc(&ring, left->x, left->y, left->side > 0 ? CONCAVE : CONVEX, left->cx, left->cy, left->radius);
    return ring;
}

START_TEST(a_horn_with_its_tip_down_runs_one_way)
{
    uint64_t state = 81;
    int32_t horns = 0;
    for (int32_t i = 0; i < 3000; i++) {
        const double direction = (double)draw_from(&state, 60, 120) * atan(1) / 45, length = 60000;
        const int64_t x = draw_from(&state, MIDDLE - 50000, MIDDLE + 50000), y = draw_from(&state, 0, MIDDLE);
        const struct way one = draw_way(&state, x, y, direction, length);
        const struct way other = draw_way(&state, x, y, direction, length);
        if (fabs(bend(&one) - bend(&other)) * length * length < 1000)
            continue; /* one way, nearly */
        const struct ring ring =
            bend(&one) < bend(&other) ? horn_of(x, y, &one, &other) : horn_of(x, y, &other, &one);
        ck_one_way_from_all(ring);
        horns++;
    }
    ck_assert_int_gt(horns, 1000);
}
END_TEST

/* ---- edges ------------------------------------------------------------------------------------------------------- */

START_TEST(an_edge_without_length_is_named)
{
    for (int32_t same = 0; same < 4; same++) {
        static const int64_t square[][2] = { { 0, 0 }, { 9, 0 }, { 9, 9 }, { 0, 9 } };
        struct ring ring = { .n = 0 };
        for (int32_t i = 0; i < 4; i++) {
            add_corner(&ring, square[i][0], square[i][1]);
            if (i == same)
                add_corner(&ring, square[i][0], square[i][1]);
        }
        ck_assert(!is_shape(&ring, same));
    }
}
END_TEST

/* A circle of 5: a corner lies within a tick of it where it is 4 to 6 away from its centre. */
START_TEST(an_arc_begins_within_a_tick_of_its_circle)
{
    for (int64_t x = 0; x < 9; x++)
        for (int64_t y = 1; y < 9; y++) {
            struct ring ring = { .n = 0 };
            add_arc(&ring, 20 + x, 20 + y, CONVEX, 20, 20, 5);
            add_corner(&ring, 15, 20);
            ck_assert_int_eq(is_shape(&ring, 0), x * x + y * y >= 16 && x * x + y * y <= 36);
        }
}
END_TEST

/* A quarter and a half of the smallest circle are arcs; what ends where it began, seen from the centre, or at the centre
 * itself, is none. */
START_TEST(an_arc_turns_by_something)
{
    static const struct {
        int64_t x, y, to_x, to_y, radius;
        int is_arc;
    } cases[] = { { 1, 0, 0, 1, 1, 1 }, { 1, 0, -1, 0, 1, 1 }, { 4, 0, 6, 0, 5, 0 }, { 6, 0, 4, 0, 5, 0 },
                  { 0, 0, 1, 0, 1, 0 }, { 1, 0, 0, 0, 1, 0 } };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct ring ring = { .n = 0 };
        add_arc(&ring, 20 + cases[i].x, 20 + cases[i].y, CONVEX, 20, 20, cases[i].radius);
        add_corner(&ring, 20 + cases[i].to_x, 20 + cases[i].to_y);
        ck_assert_int_eq(is_shape(&ring, 0), cases[i].is_arc);
    }
}
END_TEST

/* A piece follows the one before it, or goes on. */
START_TEST(a_piece_out_of_turn_is_told_with_the_last_that_may_come)
{
    struct muslin_corner_spec rows[] = { CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 9, 0), CORNER(OUTLINE, 0, 9),
                                         CORNER(0, 0, 0),       CORNER(0, 9, 0),       CORNER(0, 0, 9) };
    for (int32_t piece = 1; piece <= 3; piece++)
        for (int32_t row = 3; row < 6; row++) {
            struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
            struct muslin_problem problem = PROBLEM;
            const int32_t last = row == 3 ? 0 : 1;
            if (piece <= last)
                continue;
            rows[row].piece = piece;
            ck_status(muslin_shape_check(rows, sizeof rows[0], COUNT_OF(rows), &shape, &problem), MUSLIN_ERR_SHAPE);
            ck_assert(problem.argument == MUSLIN_ARG_PIECE && problem.at == row && problem.value == piece);
            ck_assert_int_eq(problem.limit, last);
            rows[row].piece = 0;
        }
}
END_TEST

Suite *shape_ways_suite(void);

Suite *shape_ways_suite(void)
{
    Suite *suite = suite_create("shape_ways");
    TCase *ways = tcase_create("ways");
    tcase_add_test(ways, a_square_with_a_corner_in_its_lowest_side_runs_one_way);
    tcase_add_test(ways, parts_of_a_disc_run_one_way);
    tcase_add_test(ways, lobes_that_hang_below_their_corner_run_one_way);
    tcase_add_test(ways, a_horn_with_its_tip_down_runs_one_way);
    tcase_add_test(ways, an_edge_without_length_is_named);
    tcase_add_test(ways, an_arc_begins_within_a_tick_of_its_circle);
    tcase_add_test(ways, an_arc_turns_by_something);
    tcase_add_test(ways, a_piece_out_of_turn_is_told_with_the_last_that_may_come);
    suite_add_tcase(suite, ways);
    return suite;
}
