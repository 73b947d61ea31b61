/* test_shape_template.c - templates: pieces as cut, corner by corner.
 *
 * SPDX-License-Identifier: MIT
 *
 * Where nothing else is said, figures follow from right triangles with whole sides, 3 4 5 and 5 12 13, and from similar
 * ones; the sum stands beside each. K is a thousand ticks. */
#include "test_shape.h"

#define K INT64_C(1000)
#define P(x, y) CORNER(0, (x) * K, (y) * K)
#define A(x, y, curve, cx, cy, r) ARC(0, (x) * K, (y) * K, curve, (cx) * K, (cy) * K, (r) * K)

enum { MOST = 16 };

struct made {
    struct muslin_template_corner rows[MOST];
    size_t count;
};

static struct made template_to(const struct muslin_corner_spec *rows, size_t n, const struct muslin_rounding_spec *to)
{
    struct made made = { { { 0 } }, 0 };
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_shape_template(rows, sizeof rows[0], n, 0, to, made.rows, sizeof made.rows[0], MOST,
                                                 &made.count, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return made;
}

static struct made template_of(const struct muslin_corner_spec *rows, size_t n)
{
    return template_to(rows, n, &to_tick);
}

#define ck_corner(made, at, corner_, x_, y_)                         \
    do {                                                             \
        ck_assert_int_eq((made).rows[at].corner, corner_);           \
        ck_assert_int_eq((made).rows[at].x, x_);                     \
        ck_assert_int_eq((made).rows[at].y, y_);                     \
    } while (0)

/* ---- straight edges --------------------------------------------------------------------------------------------- */

#define AT(x, y) CORNER(0, WHOLE_IN(x), WHOLE_IN(y))
static const struct muslin_corner_spec half_square[] = { AT(0, 0), AT(3, 0), AT(0, 3) };

START_TEST(a_half_square_is_cut_seven_eighths_larger)
{
    struct muslin_rounding_spec eighths = MUSLIN_ROUNDING_SPEC_INIT;
    eighths.grid = 1016;
    /* Example: a 3 in finished half square as a triangle (0, 0) (3, 0) (0, 3) with 1/4 in allowances, to the nearest
     * 1/8 in: (-1/4, -1/4) (3 5/8, -1/4) (-1/4, 3 5/8), the well-known 7/8 in more than finished. */
    struct made made = template_to(half_square, 3, &eighths);
    ck_assert_uint_eq(made.count, 3);
    ck_corner(made, 0, 0, -IN(0, 1, 4), -IN(0, 1, 4));
    ck_corner(made, 1, 1, IN(3, 5, 8), -IN(0, 1, 4));
    ck_corner(made, 2, 2, -IN(0, 1, 4), IN(3, 5, 8));
    for (int i = 0; i < 3; i++) {
        ck_assert_uint_eq(made.rows[i].size, sizeof made.rows[i]);
        ck_assert_int_eq(made.rows[i].curve, MUSLIN_CURVE_STRAIGHT);
        ck_assert_int_eq(made.rows[i].has_seam, 1);
        ck_assert_int_eq(made.rows[i].radius, 0);
    }
}
END_TEST

/* To the tick the tip is 1/4 in x (1 + sqrt 2) beyond: 2032 x 2.414214 = 4905.68. */
START_TEST(a_sharp_tip_is_rounded_once)
{
    struct made made = template_of(half_square, 3);
    ck_corner(made, 1, 1, WHOLE_IN(3) + 4906, -2032);
    ck_corner(made, 2, 2, -2032, WHOLE_IN(3) + 4906);
}
END_TEST

/* Blunt: the level raw edge goes on to 3 1/4, where a 3 1/2 in square ends; the slanted one begins 1/4 in before the
 * corner, at 3 in + 2 x 1/4 in / sqrt 2 on the level of the seam: 2032 x 1.414214 = 2873.68. */
START_TEST(a_blunt_tip_is_flush_with_a_square_of_the_same_size)
{
    struct muslin_corner_spec rows[3];
    memcpy(rows, half_square, sizeof rows);
    rows[1].tip = MUSLIN_CORNER_TIP_BLUNT;
    struct made made = template_of(rows, 3);
    ck_assert_uint_eq(made.count, 4);
    ck_corner(made, 1, 1, IN(3, 1, 4), -2032);
    ck_corner(made, 2, 1, WHOLE_IN(3) + 2874, 0);
    ck_assert_int_eq(made.rows[1].has_seam, 0);
    ck_assert_int_eq(made.rows[2].has_seam, 1);
    rows[1].tip = MUSLIN_CORNER_TIP_SHARP;
    rows[0].tip = MUSLIN_CORNER_TIP_BLUNT; /* a right angle stays as it is */
    ck_assert_uint_eq(template_of(rows, 3).count, 3);
}
END_TEST

/* Trimmed for the slanted seam: sewn and folded, the ear must not pass the level raw edge y = -1/4 in, which mirrored
 * in x + y = 3 is the upright x = 3 1/4. It meets the slanted raw edge x + y = 3 + 1/4 sqrt 2 in at y = 1/4 (sqrt 2 -
 * 1) in: 2032 x 0.414214 = 841.68. Trimmed for the level seam: the slanted raw edge mirrored in y = 0 meets y = -1/4 in
 * at x = 3 + 1/4 (sqrt 2 - 1) in. */
START_TEST(a_trimmed_tip_has_no_dog_ear)
{
    struct muslin_corner_spec rows[3];
    memcpy(rows, half_square, sizeof rows);
    rows[1].tip = MUSLIN_CORNER_TIP_TRIM_LEAVING;
    struct made made = template_of(rows, 3);
    ck_assert_uint_eq(made.count, 4);
    ck_corner(made, 1, 1, IN(3, 1, 4), -2032);
    ck_corner(made, 2, 1, IN(3, 1, 4), 842);
    rows[1].tip = MUSLIN_CORNER_TIP_TRIM_ARRIVING;
    made = template_of(rows, 3);
    ck_corner(made, 1, 1, WHOLE_IN(3) + 842, -2032);
    ck_corner(made, 2, 1, WHOLE_IN(3) + 2874, 0);
}
END_TEST

/* A 3 4 5 triangle, 40 x 30 K: moved out by 10 K on all sides it is twice as large about its inscribed circle of 10
 * K. */
START_TEST(a_triangle_moved_out_by_its_inner_radius_is_doubled)
{
    struct muslin_corner_spec rows[] = { P(0, 0), P(40, 0), P(0, 30) };
    for (int i = 0; i < 3; i++)
        rows[i].allowance = 10 * K;
    struct made made = template_of(rows, 3);
    ck_corner(made, 0, 0, -10 * K, -10 * K);
    ck_corner(made, 1, 1, 70 * K, -10 * K);
    ck_corner(made, 2, 2, -10 * K, 50 * K);
}
END_TEST

/* With one allowance 0 each edge is moved by its own: the level one by 0, the slanted one by 6 K, the upright by 4 K.
 * 3 x + 4 y = 120 + 5 x 6: y = 0 at x = 50, x = -4 at y = (150 + 12) / 4. */
START_TEST(each_edge_has_its_own_allowance)
{
    struct muslin_corner_spec rows[] = { P(0, 0), P(40, 0), P(0, 30) };
    rows[0].allowance = 0;
    rows[1].allowance = 6 * K;
    rows[2].allowance = 3 * K;
    rows[2].take_up = 2 * K;
    struct made made = template_of(rows, 3);
    ck_corner(made, 0, 0, -4 * K, 0);
    ck_corner(made, 1, 1, 50 * K, 0);
    ck_corner(made, 2, 2, -4 * K, 40500);
}
END_TEST

/* A take-up of one tick moves edges by half a tick; to the nearest, ties go up. */
START_TEST(half_ticks_are_rounded_as_asked)
{
    struct muslin_corner_spec rows[] = { P(0, 0), P(1, 0), P(1, 1), P(0, 1) };
    struct muslin_rounding_spec to = MUSLIN_ROUNDING_SPEC_INIT;
    for (int i = 0; i < 4; i++) {
        rows[i].allowance = 0;
        rows[i].take_up = 1;
    }
    struct made made = template_of(rows, 4);
    ck_corner(made, 0, 0, 0, 0);
    ck_corner(made, 2, 2, K + 1, K + 1);
    to.direction = MUSLIN_DIRECTION_DOWN;
    made = template_to(rows, 4, &to);
    ck_corner(made, 0, 0, -1, -1);
    ck_corner(made, 2, 2, K, K);
}
END_TEST

/* An L: its inner corner moves out like the others, towards the empty quarter. */
START_TEST(an_inner_corner_moves_into_the_gap)
{
    const struct muslin_corner_spec rows[] = { P(0, 0), P(20, 0), P(20, 10), P(10, 10), P(10, 20), P(0, 20) };
    struct made made = template_of(rows, 6);
    ck_assert_uint_eq(made.count, 6);
    ck_corner(made, 3, 3, 10 * K + 2032, 10 * K + 2032);
}
END_TEST

START_TEST(edges_in_one_line_make_a_step_where_their_allowances_differ)
{
    struct muslin_corner_spec rows[] = { P(0, 0), P(10, 0), P(20, 0), P(20, 10), P(0, 10) };
    struct made made = template_of(rows, 5);
    ck_assert_uint_eq(made.count, 5);
    ck_corner(made, 1, 1, 10 * K, -2032);
    rows[1].allowance = 4064;
    made = template_of(rows, 5);
    ck_assert_uint_eq(made.count, 6);
    ck_corner(made, 1, 1, 10 * K, -2032);
    ck_corner(made, 2, 1, 10 * K, -4064);
    ck_assert_int_eq(made.rows[1].has_seam, 0);
}
END_TEST

/* A notch 3 K wide between allowances of 2032 ticks: its floor would turn round. 5 K wide it does not. */
START_TEST(an_edge_that_its_neighbours_eat_is_refused)
{
    struct muslin_corner_spec rows[] = { P(0, 0), P(20, 0), P(20, 20), P(13, 20), P(13, 10), P(10, 10), P(10, 20),
                                         P(0, 20) };
    ck_template_refuses(rows, MUSLIN_ERR_SEAM_TOO_WIDE, 4);
    rows[3].x += 2 * K;
    rows[4].x += 2 * K;
    ck_template_takes(rows);
}
END_TEST

/* Tips of one tick in a million reach for ever: to the right, the left, up and down. */
START_TEST(a_tip_that_reaches_too_far_is_refused)
{
    const struct muslin_corner_spec right[] = { P(0, 0), CORNER(0, K * K, 1), CORNER(0, 0, 2) };
    const struct muslin_corner_spec left[] = { CORNER(0, 0, 1), CORNER(0, K * K, 0), CORNER(0, K * K, 2) };
    const struct muslin_corner_spec up[] = { P(0, 0), CORNER(0, 2, 0), CORNER(0, 1, K * K) };
    const struct muslin_corner_spec down[] = { CORNER(0, 0, K * K), CORNER(0, 1, 0), CORNER(0, 2, K * K) };
    ck_template_refuses(right, MUSLIN_ERR_OVERFLOW, 1);
    ck_template_refuses(left, MUSLIN_ERR_OVERFLOW, 0);
    ck_template_refuses(up, MUSLIN_ERR_OVERFLOW, 2);
    ck_template_refuses(down, MUSLIN_ERR_OVERFLOW, 1);
}
END_TEST

/* The longest edges and the widest allowances that there may be, slanted as 20 : 21 : 29; and the blunt and trimmed
 * tips of such a piece stay inside the sharp one. */
START_TEST(the_largest_pieces_can_be_cut)
{
    struct muslin_corner_spec rows[] = { CORNER(0, 0, 0), CORNER(0, MUSLIN_SHAPE_SIZE_MAX, 0),
                                         CORNER(0, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_SHAPE_SIZE_MAX - 1) };
    for (int i = 0; i < 3; i++) {
        rows[i].allowance = MUSLIN_SHAPE_SEAM_MAX;
        rows[i].take_up = MUSLIN_SHAPE_SEAM_MAX;
    }
    struct made sharp = template_of(rows, 3);
    for (int32_t tip = MUSLIN_CORNER_TIP_BLUNT; tip <= MUSLIN_CORNER_TIP_TRIM_LEAVING; tip++) {
        rows[0].tip = tip;
        struct made made = template_of(rows, 3);
        ck_assert_uint_eq(made.count, 4);
        ck_assert_int_gt(made.rows[0].x, sharp.rows[0].x);
        ck_assert_int_gt(made.rows[1].x, sharp.rows[0].x);
    }
}
END_TEST

/* ---- arcs ------------------------------------------------------------------------------------------------------- */

/* A quarter disc of 8 K with allowances of 5 K: 13 K about the centre, and at 5 K below it 12 K out. The background of
 * 18 K: 13 K again, from the other side. */
START_TEST(level_and_upright_edges_meet_arcs_where_the_circle_says)
{
    struct muslin_corner_spec pie[] = { P(0, 0), A(8, 0, CONVEX, 0, 0, 8), P(0, 8) };
    struct muslin_corner_spec rest[] = { P(18, 0), P(40, 0), P(40, 40), P(0, 40), A(0, 18, CONCAVE, 0, 0, 18) };
    for (int i = 0; i < 5; i++) {
        pie[i % 3].allowance = 5 * K;
        rest[i].allowance = 5 * K;
    }
    struct made made = template_of(pie, 3);
    ck_corner(made, 0, 0, -5 * K, -5 * K);
    ck_corner(made, 1, 1, 12 * K, -5 * K);
    ck_corner(made, 2, 2, -5 * K, 12 * K);
    ck_assert_int_eq(made.rows[1].curve, CONVEX);
    ck_assert_int_eq(made.rows[1].radius, 13 * K);
    ck_assert_int_eq(made.rows[1].centre_x, 0);
    ck_assert_int_eq(made.rows[1].has_seam, 1);
    made = template_of(rest, 5);
    ck_corner(made, 0, 0, 12 * K, -5 * K);
    ck_corner(made, 4, 4, -5 * K, 12 * K);
    ck_assert_int_eq(made.rows[4].curve, CONCAVE);
    ck_assert_int_eq(made.rows[4].radius, 13 * K);
}
END_TEST

/* A slice of 10 K between level and 3 : 4, with 5 K at the arc and 9 K at the edges: 15 K about the centre, 12 K out at
 * 9 K beside. Level: 12 right, 9 down. Slanted, inwards, so that its outside is to the upper left: 9 x (-4/5, 3/5) +
 * 12 x (3/5, 4/5) = (0, 15). */
START_TEST(an_edge_towards_the_centre_meets_the_arc)
{
    struct muslin_corner_spec slice[] = { P(20, 20), A(30, 20, CONVEX, 20, 20, 10), P(26, 28) };
    slice[0].allowance = 9 * K;
    slice[1].allowance = 5 * K;
    slice[2].allowance = 9 * K;
    struct made made = template_of(slice, 3);
    ck_corner(made, 1, 1, 32 * K, 11 * K);
    ck_corner(made, 2, 2, 20 * K, 35 * K);
}
END_TEST

/* The same slice, 30 K long and without its inner 20 K: 5 K about the inner arc leave 15 K, and again 12 K out. The
 * edge that runs outwards ends the slice the other way round, mirrored: its outside is to the lower right. */
START_TEST(edges_outwards_and_inwards_meet_inner_arcs)
{
    struct muslin_corner_spec slice[] = { P(40, 20), A(50, 20, CONVEX, 20, 20, 30), P(38, 44),
                                          A(32, 36, CONCAVE, 20, 20, 20) };
    struct muslin_corner_spec mirrored[] = { P(36, 32), A(44, 38, CONVEX, 20, 20, 30), P(20, 50),
                                             A(20, 40, CONCAVE, 20, 20, 20) };
    for (int i = 0; i < 4; i++) {
        slice[i].allowance = i % 2 == 0 ? 9 * K : 5 * K;
        mirrored[i].allowance = slice[i].allowance;
    }
    struct made made = template_of(slice, 4);
    ck_corner(made, 3, 3, 20 * K, 35 * K);
    ck_corner(made, 0, 0, 32 * K, 11 * K);
    made = template_of(mirrored, 4);
    ck_corner(made, 0, 0, 35 * K, 20 * K); /* 12 x (4/5, 3/5) + 9 x (3/5, -4/5) = (15, 0) */
    ck_corner(made, 3, 3, 11 * K, 32 * K);
}
END_TEST

/* A lens of two arcs of 13 K, 24 K between their centres; with 2 K more they meet 9 K from the line between them. */
START_TEST(two_arcs_meet_on_the_side_of_their_corner)
{
    struct muslin_corner_spec lens[] = { A(22, 15, CONVEX, 10, 20, 13), A(22, 25, CONVEX, 34, 20, 13) };
    lens[0].allowance = 2 * K;
    lens[1].allowance = 2 * K;
    struct made made = template_of(lens, 2);
    ck_assert_uint_eq(made.count, 2);
    ck_corner(made, 0, 0, 22 * K, 11 * K);
    ck_corner(made, 1, 1, 22 * K, 29 * K);
}
END_TEST

START_TEST(arcs_of_one_circle_keep_their_corner_on_its_radius)
{
    struct muslin_corner_spec disc[] = { A(26, 28, CONVEX, 20, 20, 10), A(12, 26, CONVEX, 20, 20, 10),
                                         A(14, 12, CONVEX, 20, 20, 10), A(28, 14, CONVEX, 20, 20, 10) };
    for (int i = 0; i < 4; i++)
        disc[i].allowance = 5 * K;
    struct made made = template_of(disc, 4);
    ck_assert_uint_eq(made.count, 4);
    ck_corner(made, 0, 0, 29 * K, 32 * K); /* 15 x (3/5, 4/5) */
    disc[0].allowance = 0;
    made = template_of(disc, 4);
    ck_assert_uint_eq(made.count, 6);
    ck_corner(made, 0, 0, 29 * K, 32 * K);
    ck_corner(made, 1, 0, 26 * K, 28 * K);
    ck_assert_int_eq(made.rows[0].has_seam, 0);
    ck_assert_int_eq(made.rows[0].curve, MUSLIN_CURVE_STRAIGHT);
    ck_assert_int_eq(made.rows[1].radius, 10 * K);
}
END_TEST

/* Half a tick of effective allowance: the radius goes up. */
START_TEST(a_cut_radius_is_told_to_the_tick)
{
    struct muslin_corner_spec pie[] = { P(0, 0), A(8, 0, CONVEX, 0, 0, 8), P(0, 8) };
    pie[1].take_up = 1;
    ck_assert_int_eq(template_of(pie, 3).rows[1].radius, 8 * K + 2033);
}
END_TEST

/* A level edge from a corner of 45 degrees, blunt, to one that turns down. As cut the edge begins 2032 ticks before the
 * first corner, and ends 8128 before the second, where the raw edge that goes down lies: with 6096 ticks
 * between them nothing is left of it, a tick more leaves one. The place on the raw edge that arrives lies sqrt 2 x 2032
 * before the first corner and is none of this edge. */
START_TEST(a_cut_edge_begins_behind_its_blunt_tip)
{
    struct muslin_corner_spec rows[] = { P(0, 10), CORNER(0, 6096, 10 * K), CORNER(0, 6096, 0), P(30, 0), P(30, 40) };
    rows[0].tip = MUSLIN_CORNER_TIP_BLUNT;
    rows[1].allowance = 8128;
    ck_template_refuses(rows, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    rows[1].x++;
    rows[2].x++;
    ck_template_takes(rows);
}
END_TEST

/* A bar 20 K long with round ends of 5 K: edge and arc touch, and still do when moved alike. */
START_TEST(where_edge_and_arc_touch_they_must_be_moved_alike)
{
    struct muslin_corner_spec bar[] = { P(5, 0), A(25, 0, CONVEX, 25, 5, 5), P(25, 10), A(5, 10, CONVEX, 5, 5, 5) };
    struct made made = template_of(bar, 4);
    ck_corner(made, 0, 0, 5 * K, -2032);
    ck_corner(made, 1, 1, 25 * K, -2032);
    bar[1].allowance = 3 * K;
    ck_template_refuses(bar, MUSLIN_ERR_SHAPE, 1);
    bar[1].allowance = 1 * K;
    ck_template_refuses(bar, MUSLIN_ERR_SEAM_TOO_WIDE, 1);
}
END_TEST

/* An S: a convex arc of 10 K runs on into a concave one of 5 K. */
START_TEST(where_arcs_touch_they_must_be_moved_alike)
{
    struct muslin_corner_spec wave[] = { A(20, 0, CONVEX, 10, 0, 10), A(10, 10, CONCAVE, 10, 15, 5), P(5, 15), P(5, 20),
                                         P(0, 20), P(0, 0) };
    struct made made = template_of(wave, 6);
    ck_corner(made, 1, 1, 10 * K, 10 * K + 2032);
    wave[0].allowance = 3 * K;
    ck_template_refuses(wave, MUSLIN_ERR_SHAPE, 1);
    wave[0].allowance = K;
    ck_template_refuses(wave, MUSLIN_ERR_SEAM_TOO_WIDE, 1);
}
END_TEST

START_TEST(what_is_not_worked_out_is_refused)
{
    const struct muslin_corner_spec slanted[] = { A(10, 0, CONVEX, 0, 0, 10), P(0, 10), P(2, 1) };
    struct muslin_corner_spec tight[] = { P(18, 0), P(40, 0), P(40, 40), P(0, 40), A(0, 18, CONCAVE, 0, 0, 18) };
    struct muslin_corner_spec slice[] = { P(40, 20), A(50, 20, CONVEX, 20, 20, 30), P(38, 44),
                                          A(32, 36, CONCAVE, 20, 20, 20) };
    struct muslin_corner_spec tipped[] = { P(0, 0), A(8, 0, CONVEX, 0, 0, 8), P(0, 8) };
    ck_template_refuses(slanted, MUSLIN_ERR_SHAPE, 0);
    tight[4].allowance = 18 * K; /* nothing is left of the arc */
    ck_template_refuses(tight, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    tight[4].allowance = 16 * K; /* what is left does not reach the cut edge */
    ck_template_refuses(tight, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    slice[3].allowance = 18 * K;
    ck_template_refuses(slice, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    slice[0].allowance = 0;
    ck_template_refuses(slice, MUSLIN_ERR_SEAM_TOO_WIDE, 3);
    slice[3].allowance = 20 * K;
    ck_template_refuses(slice, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    struct muslin_corner_spec turned_slice[] = { slice[3], slice[0], slice[1], slice[2] };
    ck_template_refuses(turned_slice, MUSLIN_ERR_SEAM_TOO_WIDE, 0);
    tipped[1].tip = MUSLIN_CORNER_TIP_BLUNT;
    ck_template_refuses(tipped, MUSLIN_ERR_CHOICE, 1);
    tipped[1].tip = MUSLIN_CORNER_TIP_SHARP;
    tipped[2].tip = MUSLIN_CORNER_TIP_BLUNT;
    ck_template_refuses(tipped, MUSLIN_ERR_CHOICE, 2);
}
END_TEST

/* ---- asking and filling ----------------------------------------------------------------------------------------- */

START_TEST(a_template_is_asked_for_and_filled)
{
    struct muslin_template_corner rows[3] = { { 0 } };
    struct muslin_problem problem = PROBLEM;
    size_t count = 0;
    ck_ok(muslin_shape_template(ROWS(half_square), 0, &to_tick, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    rows[0].x = 5;
    ck_status(muslin_shape_template(ROWS(half_square), 0, &to_tick, rows, sizeof rows[0], 2, &count, &problem),
              MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(problem.limit, 3);
    ck_assert_int_eq(rows[0].x, 5);
    ck_status(muslin_shape_template(ROWS(half_square), 0, &to_tick, NULL, sizeof rows[0], 3, &count, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_shape_template(ROWS(half_square), 0, &to_tick, rows, sizeof rows[0] - 1, 3, &count, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_shape_template(ROWS(half_square), 0, &to_tick, rows, sizeof rows[0], 3, NULL, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_shape_template(ROWS(half_square), 0, NULL, rows, sizeof rows[0], 3, &count, NULL),
              MUSLIN_ERR_NULL);
    ck_status(muslin_shape_template(NULL, sizeof half_square[0], 3, 0, &to_tick, rows, sizeof rows[0], 3, &count, NULL),
              MUSLIN_ERR_NULL);
    ck_assert_int_eq(rows[0].x, 5);
    ck_ok(muslin_shape_template(ROWS(half_square), 0, &to_tick, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_int_eq(rows[0].x, -2032);
}
END_TEST

START_TEST(only_a_piece_has_a_template)
{
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    ck_status(muslin_shape_template(ROWS(half_square), 1, &to_tick, NULL, 0, 0, &count, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE);
    ck_assert_int_eq(problem.limit, 0);
    ck_status(muslin_shape_template(ROWS(half_square), MUSLIN_SHAPE_OUTLINE, &to_tick, NULL, 0, 0, &count, &problem),
              MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.value, -1);
    const struct muslin_corner_spec two[] = { AT(0, 0), AT(3, 0), AT(0, 3), CORNER(1, 0, 0) };
    ck_status(muslin_shape_template(ROWS(two), 7, &to_tick, NULL, 0, 0, &count, &problem), MUSLIN_ERR_INDEX);
    ck_assert(problem.value == 7 && problem.limit == 1);
    ck_assert_uint_eq(count, 77);
}
END_TEST

TCase *shape_template_case(void)
{
    TCase *templates = tcase_create("template");
    tcase_add_test(templates, a_half_square_is_cut_seven_eighths_larger);
    tcase_add_test(templates, a_sharp_tip_is_rounded_once);
    tcase_add_test(templates, a_blunt_tip_is_flush_with_a_square_of_the_same_size);
    tcase_add_test(templates, a_trimmed_tip_has_no_dog_ear);
    tcase_add_test(templates, a_triangle_moved_out_by_its_inner_radius_is_doubled);
    tcase_add_test(templates, each_edge_has_its_own_allowance);
    tcase_add_test(templates, half_ticks_are_rounded_as_asked);
    tcase_add_test(templates, an_inner_corner_moves_into_the_gap);
    tcase_add_test(templates, edges_in_one_line_make_a_step_where_their_allowances_differ);
    tcase_add_test(templates, an_edge_that_its_neighbours_eat_is_refused);
    tcase_add_test(templates, a_tip_that_reaches_too_far_is_refused);
    tcase_add_test(templates, the_largest_pieces_can_be_cut);
    tcase_add_test(templates, level_and_upright_edges_meet_arcs_where_the_circle_says);
    tcase_add_test(templates, an_edge_towards_the_centre_meets_the_arc);
    tcase_add_test(templates, edges_outwards_and_inwards_meet_inner_arcs);
    tcase_add_test(templates, two_arcs_meet_on_the_side_of_their_corner);
    tcase_add_test(templates, arcs_of_one_circle_keep_their_corner_on_its_radius);
    tcase_add_test(templates, a_cut_radius_is_told_to_the_tick);
    tcase_add_test(templates, a_cut_edge_begins_behind_its_blunt_tip);
    tcase_add_test(templates, where_edge_and_arc_touch_they_must_be_moved_alike);
    tcase_add_test(templates, where_arcs_touch_they_must_be_moved_alike);
    tcase_add_test(templates, what_is_not_worked_out_is_refused);
    tcase_add_test(templates, a_template_is_asked_for_and_filled);
    tcase_add_test(templates, only_a_piece_has_a_template);
    return templates;
}
