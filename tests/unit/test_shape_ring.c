/* test_shape_ring.c - which outlines of a piece are simple shapes that run counter-clockwise.
 *
 * SPDX-License-Identifier: MIT
 *
 * Pieces lie on squared paper with K ticks to a square. They have no allowances, so that each has a template when it is a
 * shape. */
#include "test_shape.h"

#define K INT64_C(1000)
#define P(x, y) \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, 0, 1, (x) * K, (y) * K, 0, 0, 0, 0, 0, 1, 0 }
#define A(x, y, curve, cx, cy, r)                                                                                   \
    { (uint32_t)sizeof(struct muslin_corner_spec), 0, 0, 1, (x) * K, (y) * K, 0, 0, (cx) * K, (cy) * K, (r) * K,      \
      (curve), 0 }

/* ---- straight edges --------------------------------------------------------------------------------------------- */

START_TEST(a_shape_needs_corners_and_edges_with_a_length)
{
    const struct muslin_corner_spec one[] = { P(1, 1) };
    const struct muslin_corner_spec one_arc[] = { A(1, 1, CONVEX, 2, 1, 1) };
    const struct muslin_corner_spec two[] = { P(1, 1), P(2, 1) };
    const struct muslin_corner_spec no_edge[] = { P(0, 0), P(4, 0), P(4, 0), P(0, 4) };
    const struct muslin_corner_spec flat[] = { P(0, 0), P(2, 0), P(4, 0) };
    const struct muslin_corner_spec triangle[] = { P(0, 0), P(4, 0), P(0, 4) };
    const struct muslin_corner_spec clockwise[] = { P(0, 0), P(0, 4), P(4, 0) };
    const struct muslin_corner_spec upright[] = { P(2, 0), P(2, 4), P(0, 4), P(2, 2) };
    ck_template_refuses(one, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(one_arc, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(two, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(no_edge, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(flat, MUSLIN_ERR_SHAPE, 2);
    ck_template_takes(triangle);
    ck_template_refuses(clockwise, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(upright, MUSLIN_ERR_SHAPE, 2);
}
END_TEST

START_TEST(edges_of_a_shape_do_not_cross_touch_or_overlap)
{
    const struct muslin_corner_spec bow[] = { P(0, 0), P(4, 4), P(4, 0), P(0, 4) };
    const struct muslin_corner_spec spike[] = { P(0, 0), P(6, 0), P(3, 0), P(3, 3) };
    const struct muslin_corner_spec spike_at_end[] = { P(3, 0), P(3, 3), P(0, 0), P(6, 0) };
    const struct muslin_corner_spec long_spike[] = { P(1, 0), P(3, 0), P(0, 0), P(0, 3), P(3, 3), P(2, 2) };
    const struct muslin_corner_spec corner_on_edge[] = { P(0, 0), P(6, 0), P(6, 4), P(3, 0), P(0, 4) };
    const struct muslin_corner_spec edge_on_corner[] = { P(3, 0), P(6, 4), P(0, 4), P(0, 0), P(6, 0), P(6, 1) };
    const struct muslin_corner_spec same_corner[] = { P(2, 2), P(4, 0), P(4, 4), P(2, 2), P(0, 4), P(0, 0) };
    const struct muslin_corner_spec notched[] = { P(0, 0), P(6, 0), P(6, 4), P(3, 1), P(0, 4) };
    const struct muslin_corner_spec with_a_bay[] = { P(0, 0), P(6, 0), P(6, 2), P(3, 2), P(3, 4), P(6, 4), P(6, 6),
                                                     P(0, 6) };
    const struct muslin_corner_spec with_flat_corner[] = { P(0, 0), P(3, 0), P(6, 0), P(6, 6) };
    ck_template_refuses(bow, MUSLIN_ERR_SHAPE, 2);
    ck_template_refuses(spike, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(spike_at_end, MUSLIN_ERR_SHAPE, 2);
    ck_template_refuses(long_spike, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(corner_on_edge, MUSLIN_ERR_SHAPE, 2);
    ck_template_refuses(edge_on_corner, MUSLIN_ERR_SHAPE, 3);
    ck_template_refuses(same_corner, MUSLIN_ERR_SHAPE, 2);
    ck_template_takes(notched);
    ck_template_takes(with_flat_corner);
    ck_template_takes(with_a_bay);
}
END_TEST

/* ---- one arc ---------------------------------------------------------------------------------------------------- */

/* A quarter disc of 10 squares; its arc's ends may be a tick off the circle and no more. */
START_TEST(an_arc_ends_within_a_tick_of_its_circle)
{
    struct muslin_corner_spec pie[] = { P(0, 0), A(10, 0, CONVEX, 0, 0, 10), P(0, 10) };
    ck_template_takes(pie);
    pie[1].x += 1;
    pie[2].y -= 1;
    ck_template_takes(pie);
    pie[1].x += 1;
    ck_template_refuses(pie, MUSLIN_ERR_SHAPE, 1);
    pie[1].x -= 4;
    ck_template_refuses(pie, MUSLIN_ERR_SHAPE, 1);
    pie[1].x += 2;
    pie[2].y -= 1;
    ck_template_refuses(pie, MUSLIN_ERR_SHAPE, 1);
    pie[2].y += 4;
    ck_template_refuses(pie, MUSLIN_ERR_SHAPE, 1);
}
END_TEST

START_TEST(an_arc_turns_by_half_a_circle_at_most_and_the_right_way)
{
    const struct muslin_corner_spec half[] = { A(10, 5, CONVEX, 5, 5, 5), P(0, 5) };
    const struct muslin_corner_spec upside_down[] = { A(10, 5, CONCAVE, 5, 5, 5), P(0, 5) };
    const struct muslin_corner_spec more[] = { A(9, 2, CONVEX, 5, 5, 5), P(1, 2) };
    const struct muslin_corner_spec wrong_way[] = { P(0, 0), A(10, 0, CONCAVE, 0, 0, 10), P(0, 10) };
    struct muslin_corner_spec no_turn[] = { A(10, 5, CONVEX, 5, 5, 5), P(10, 5), P(5, 9) };
    no_turn[0].x--;
    no_turn[1].x++;
    ck_template_takes(half);
    ck_template_refuses(upside_down, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(more, MUSLIN_ERR_SHAPE, 0);
    ck_template_refuses(wrong_way, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(no_turn, MUSLIN_ERR_SHAPE, 0);
}
END_TEST

/* A sheet 10 by 10 whose left side has an arc bulging into it, or whose lower side has: 8, 6 and 10 are the sides of a
 * right triangle, and so are 3, 4 and 5. */
START_TEST(an_arc_may_not_reach_another_edge)
{
    const struct muslin_corner_spec free_[] = { A(0, 9, CONCAVE, 0, 5, 4), P(0, 1), P(0, 0), P(10, 0), P(10, 10),
                                                P(0, 10) };
    const struct muslin_corner_spec touching[] = { A(0, 9, CONCAVE, 0, 5, 4), P(0, 1), P(0, 0), P(4, 0), P(4, 10),
                                                   P(0, 10) };
    const struct muslin_corner_spec reaching[] = { A(0, 9, CONCAVE, 0, 5, 4), P(0, 1), P(0, 0), P(3, 0), P(3, 10),
                                                   P(0, 10) };
    const struct muslin_corner_spec inside[] = { P(3, 0), P(3, 10), P(0, 10), A(0, 9, CONCAVE, 0, 5, 4), P(0, 1),
                                                 P(0, 0) };
    /* the edge from (8, 5) passes the circle's far side only, where there is no arc */
    const struct muslin_corner_spec beside[] = { P(2, 1), P(8, 1), A(8, 9, CONVEX, 5, 5, 5), P(2, 9) };
    /* the edge from (10, 5) goes in through the arc at (4, 5) and ends there */
    const struct muslin_corner_spec entering[] = { A(0, 9, CONCAVE, 0, 5, 4), P(0, 1), P(0, 0), P(10, 0), P(10, 5),
                                                   P(2, 5), P(10, 6), P(10, 10), P(0, 10) };
    /* a corner lies on the arc's own corner, with edges that keep clear of the arc */
    const struct muslin_corner_spec corner_met[] = { A(0, 9, CONCAVE, 0, 5, 4), P(0, 1), P(0, 0), P(10, 0), P(10, 10),
                                                     P(0, 9), P(10, 12), P(0, 12) };
    const struct muslin_corner_spec met_before[] = { P(10, 2), P(0, 3), P(5, 1), P(12, 1), P(12, 12),
                                                     A(0, 11, CONCAVE, 0, 7, 4), P(0, 3) };
    ck_template_takes(free_);
    ck_template_refuses(touching, MUSLIN_ERR_SHAPE, 3);
    ck_template_refuses(reaching, MUSLIN_ERR_SHAPE, 3);
    ck_template_refuses(inside, MUSLIN_ERR_SHAPE, 3);
    ck_template_takes(beside);
    ck_template_refuses(entering, MUSLIN_ERR_SHAPE, 4);
    ck_template_refuses(corner_met, MUSLIN_ERR_SHAPE, 4);
    ck_template_refuses(met_before, MUSLIN_ERR_SHAPE, 5);
}
END_TEST

/* A half disc (centre (5, 5), radius 5) whose neighbour edge runs back through it: from its end (0, 5) straight through
 * its top, and towards its start (10, 5) from outside through the other side; and edges that leave it freely. */
START_TEST(an_arc_s_own_neighbours_may_not_run_through_it)
{
    const struct muslin_corner_spec leaving[] = { A(10, 5, CONVEX, 5, 5, 5), P(0, 5), P(9, 14), P(12, 0) };
    const struct muslin_corner_spec arriving[] = { P(0, 13), A(10, 5, CONVEX, 5, 5, 5), P(0, 5), P(0, 12) };
    const struct muslin_corner_spec free_[] = { A(10, 5, CONVEX, 5, 5, 5), P(0, 5), P(0, 0), P(10, 0) };
    const struct muslin_corner_spec spandrel[] = { P(10, 0), P(10, 10), A(0, 10, CONCAVE, 0, 0, 10) };
    ck_template_refuses(leaving, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(arriving, MUSLIN_ERR_SHAPE, 1);
    ck_template_takes(free_);
    ck_template_takes(spandrel);
}
END_TEST

/* ---- two arcs --------------------------------------------------------------------------------------------------- */

START_TEST(arcs_of_one_circle_may_follow_each_other_and_not_overlap)
{
    const struct muslin_corner_spec upright[] = { A(5, 0, CONVEX, 5, 5, 5), A(5, 10, CONVEX, 5, 5, 5) };
    const struct muslin_corner_spec level[] = { A(0, 5, CONVEX, 5, 5, 5), A(10, 5, CONVEX, 5, 5, 5) };
    const struct muslin_corner_spec thirds[] = { A(8, 1, CONVEX, 5, 5, 5), A(8, 9, CONVEX, 5, 5, 5),
                                                 A(0, 5, CONVEX, 5, 5, 5) };
    const struct muslin_corner_spec quarters[] = { A(10, 5, CONVEX, 5, 5, 5), A(5, 10, CONVEX, 5, 5, 5),
                                                   A(0, 5, CONVEX, 5, 5, 5), A(5, 0, CONVEX, 5, 5, 5) };
    const struct muslin_corner_spec nothing[] = { A(8, 1, CONVEX, 5, 5, 5), A(8, 9, CONCAVE, 5, 5, 5) };
    const struct muslin_corner_spec too_far[] = { A(8, 1, CONVEX, 5, 5, 5), A(8, 9, CONVEX, 5, 5, 5),
                                                  A(0, 5, CONVEX, 5, 5, 5), A(9, 2, CONVEX, 5, 5, 5), P(10, 5),
                                                  P(14, 5), P(14, 1) };
    const struct muslin_corner_spec back[] = { A(8, 1, CONVEX, 5, 5, 5), A(8, 9, CONCAVE, 5, 5, 5), P(10, 5) };
    const struct muslin_corner_spec inner_back[] = { A(10, 5, CONVEX, 5, 5, 5), A(0, 5, CONCAVE, 5, 5, 5), P(2, 9),
                                                     P(4, 6) };
    const struct muslin_corner_spec back_at_end[] = { A(8, 9, CONCAVE, 5, 5, 5), P(10, 5), A(8, 1, CONVEX, 5, 5, 5) };
    const struct muslin_corner_spec within[] = { A(9, 2, CONVEX, 5, 5, 5), P(9, 8), A(8, 1, CONVEX, 5, 5, 5), P(8, 9),
                                                 P(20, 9), P(20, 2) };
    struct muslin_corner_spec begun_on[] = { A(8, 1, CONVEX, 5, 5, 5), P(8, 9), P(5, 5), A(10, 5, CONVEX, 5, 5, 5),
                                             P(2, 9), P(2, 1) };
    ck_template_takes(upright);
    ck_template_takes(level);
    ck_template_takes(thirds);
    ck_template_takes(quarters);
    ck_template_refuses(nothing, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(too_far, MUSLIN_ERR_SHAPE, 2);
    ck_template_refuses(back, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(inner_back, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(back_at_end, MUSLIN_ERR_SHAPE, 2);
    ck_template_refuses(within, MUSLIN_ERR_SHAPE, 2);
    /* from 53 degrees back to 0 and then over the same arc on to 90 */
    const struct muslin_corner_spec back_and_on[] = { A(8, 9, CONCAVE, 5, 5, 5), A(10, 5, CONVEX, 5, 5, 5), P(5, 10) };
    ck_template_refuses(back_and_on, MUSLIN_ERR_SHAPE, 1);
    begun_on[3].x--; /* a tick inside, so that the edge from the centre does not touch the arc */
    ck_template_refuses(begun_on, MUSLIN_ERR_SHAPE, 3);
}
END_TEST

/* Circles about one centre never meet; others meet in two places, of which a shared corner is one. */
START_TEST(arcs_of_different_circles_may_not_cross)
{
    const struct muslin_corner_spec ring[] = { A(10, 0, CONVEX, 0, 0, 10), P(0, 10), A(0, 5, CONCAVE, 0, 0, 5),
                                               P(5, 0) };
    const struct muslin_corner_spec lens[] = { A(4, 1, CONVEX, 0, 4, 5), A(4, 7, CONVEX, 8, 4, 5) };
    /* a sheet 20 wide with an arc bulging in from below and one from above: 8 high they cross, 10 high they touch, 20
     * high they do not */
    const struct muslin_corner_spec crossing[] = { P(0, 0), A(5, 0, CONCAVE, 10, 0, 5), P(15, 0), P(20, 0), P(20, 8),
                                                   A(15, 8, CONCAVE, 10, 8, 5), P(5, 8), P(0, 8) };
    const struct muslin_corner_spec touching[] = { P(0, 0), A(5, 0, CONCAVE, 10, 0, 5), P(15, 0), P(20, 0), P(20, 10),
                                                   A(15, 10, CONCAVE, 10, 10, 5), P(5, 10), P(0, 10) };
    const struct muslin_corner_spec apart[] = { P(0, 0), A(5, 0, CONCAVE, 10, 0, 5), P(15, 0), P(20, 0), P(20, 20),
                                                A(15, 20, CONCAVE, 10, 20, 5), P(5, 20), P(0, 20) };
    /* circles that cross where only one of them has its arc, or neither */
    const struct muslin_corner_spec beside[] = { A(0, 3, CONCAVE, 4, 0, 5), P(8, 3), A(8, 11, CONVEX, 4, 8, 5),
                                                 P(0, 11) };
    const struct muslin_corner_spec turned[] = { A(8, 11, CONVEX, 4, 8, 5), P(0, 11), A(0, 3, CONCAVE, 4, 0, 5),
                                                 P(8, 3) };
    /* two lenses that hang together by a corner */
    const struct muslin_corner_spec pinched[] = { A(10, 10, CONVEX, 7, 14, 5), A(10, 18, CONVEX, 13, 14, 5),
                                                  A(10, 10, CONVEX, 13, 6, 5), A(10, 2, CONVEX, 7, 6, 5) };
    ck_template_takes(ring);
    ck_template_takes(lens);
    ck_template_refuses(crossing, MUSLIN_ERR_SHAPE, 5);
    ck_template_refuses(touching, MUSLIN_ERR_SHAPE, 5);
    ck_template_takes(apart);
    ck_template_takes(beside);
    ck_template_takes(turned);
    ck_template_refuses(pinched, MUSLIN_ERR_SHAPE, 2);
}
END_TEST

/* Circles of 65 about (0, 65) and (104, 65) cross at (52, 104) and (52, 26). An arc of the first goes from (56, 32) up to
 * (0, 130) through the one place, an arc of the second from (48, 98) down to (104, 0) through the other: the shape
 * between them is as an S, and they never meet. 33, 56, 65 and 39, 52, 65 are the sides of right triangles. */
START_TEST(arcs_that_pass_one_place_each_do_not_meet)
{
    const struct muslin_corner_spec bent[] = { A(56, 32, CONVEX, 0, 65, 65),   P(0, 130), P(0, 100), P(48, 100),
                                               A(48, 98, CONVEX, 104, 65, 65), P(104, 0), P(104, 30), P(56, 30) };
    ck_template_takes(bent);
}
END_TEST

/* Circles of 10 about (20, 20) and (32, 20) meet at (26, 28), the common corner, and at (26, 12), which both arcs pass
 * on their way down to the level of 10. */
START_TEST(arcs_with_a_common_corner_may_not_meet_again)
{
    const struct muslin_corner_spec after[] = { A(20, 10, CONVEX, 20, 20, 10), A(26, 28, CONVEX, 32, 20, 10),
                                                P(32, 10) };
    const struct muslin_corner_spec before[] = { A(26, 28, CONVEX, 32, 20, 10), P(32, 10),
                                                 A(20, 10, CONVEX, 20, 20, 10) };
    ck_template_refuses(after, MUSLIN_ERR_SHAPE, 1);
    ck_template_refuses(before, MUSLIN_ERR_SHAPE, 2);
}
END_TEST

/* ---- which way round -------------------------------------------------------------------------------------------- */

/* A horn: between a circle of 10 and one of 5 that touch at its lowest point (10, 0), and the same the other way round. */
START_TEST(a_horn_runs_counter_clockwise_when_its_outer_arc_is_convex)
{
    const struct muslin_corner_spec horn[] = { A(10, 0, CONVEX, 10, 10, 10), P(20, 10), A(10, 10, CONCAVE, 10, 5, 5) };
    const struct muslin_corner_spec wrong[] = { A(10, 0, CONVEX, 10, 5, 5), P(10, 10),
                                                A(20, 10, CONCAVE, 10, 10, 10) };
    const struct muslin_corner_spec left[] = { A(10, 0, CONCAVE, 10, 5, 5), P(10, 10), A(0, 10, CONVEX, 10, 10, 10) };
    const struct muslin_corner_spec left_wrong[] = { A(10, 0, CONCAVE, 10, 10, 10), P(0, 10),
                                                     A(10, 10, CONVEX, 10, 5, 5) };
    ck_template_takes(horn);
    ck_template_refuses(wrong, MUSLIN_ERR_SHAPE, 0);
    ck_template_takes(left);
    ck_template_refuses(left_wrong, MUSLIN_ERR_SHAPE, 0);
}
END_TEST

/* Where the lowest point hangs on an arc, the arc decides: a bowl, and a clockwise one. */
START_TEST(a_shape_that_rests_on_an_arc)
{
    const struct muslin_corner_spec bowl[] = { A(2, 9, CONVEX, 10, 15, 10), P(18, 9), P(18, 20), P(2, 20) };
    const struct muslin_corner_spec clockwise[] = { A(18, 9, CONCAVE, 10, 15, 10), P(2, 9), P(2, 20), P(18, 20) };
    const struct muslin_corner_spec kissing[] = { A(0, 0, CONCAVE, 5, 0, 5), A(10, 0, CONCAVE, 15, 0, 5), P(20, 0),
                                                  P(20, 10), P(0, 10) };
    ck_template_takes(bowl);
    ck_template_refuses(clockwise, MUSLIN_ERR_SHAPE, 0);
    ck_template_takes(kissing);
}
END_TEST

TCase *shape_ring_case(void)
{
    TCase *ring = tcase_create("ring");
    tcase_add_test(ring, a_shape_needs_corners_and_edges_with_a_length);
    tcase_add_test(ring, edges_of_a_shape_do_not_cross_touch_or_overlap);
    tcase_add_test(ring, an_arc_ends_within_a_tick_of_its_circle);
    tcase_add_test(ring, an_arc_turns_by_half_a_circle_at_most_and_the_right_way);
    tcase_add_test(ring, an_arc_may_not_reach_another_edge);
    tcase_add_test(ring, an_arc_s_own_neighbours_may_not_run_through_it);
    tcase_add_test(ring, arcs_of_one_circle_may_follow_each_other_and_not_overlap);
    tcase_add_test(ring, arcs_of_different_circles_may_not_cross);
    tcase_add_test(ring, arcs_that_pass_one_place_each_do_not_meet);
    tcase_add_test(ring, arcs_with_a_common_corner_may_not_meet_again);
    tcase_add_test(ring, a_horn_runs_counter_clockwise_when_its_outer_arc_is_convex);
    tcase_add_test(ring, a_shape_that_rests_on_an_arc);
    return ring;
}
