/* test_shape_curve.c - quarter circles, the length of arcs, regular polygons.
 *
 * SPDX-License-Identifier: MIT */
#include "test_shape.h"

#define K INT64_C(1000)

static const struct muslin_rounding_spec to_eighth = { (uint32_t)sizeof to_eighth, 0, 1016, 0,
                                                       MUSLIN_DIRECTION_NEAREST,   0 };
static const struct muslin_rounding_spec to_sixteenth = { (uint32_t)sizeof to_sixteenth, 0, 508, 0,
                                                          MUSLIN_DIRECTION_NEAREST, 0 };

static muslin_len arc(muslin_len radius, int32_t quarter_turns, const struct muslin_rounding_spec *to)
{
    struct muslin_rounded rounded = { .size = (uint32_t)sizeof rounded };
    ck_ok(muslin_arc_length(radius, quarter_turns, to, &rounded, NULL));
    ck_assert_int_eq(rounded.on_tick, radius == 0);
    return rounded.value;
}

/* pi = 3.14159 26535 89793: half a circle of 10^9 is 3141592653.59; a whole one of 2^30, 2 pi x 1073741824, is
 * 6746518852.26. 355 / 113 is too large by 2.7 in ten million: half a circle of 113 x 10^5 is 354.9999699 x 10^5. */
START_TEST(arcs_are_as_long_as_pi_says)
{
    /* Example: half a circle of 5 in radius, to the nearest 1/8 in: 15 3/4 in (15.708). */
    ck_assert_int_eq(arc(WHOLE_IN(5), 2, &to_eighth), IN(15, 3, 4));
    ck_assert_int_eq(arc(K * K * K, 2, &to_tick), INT64_C(3141592654));
    ck_assert_int_eq(arc(MUSLIN_SIZE_MAX, 4, &to_tick), INT64_C(6746518852));
    ck_assert_int_eq(arc(11300000, 2, &to_tick), 35499997);
    ck_assert_int_eq(arc(1, 1, &to_tick), 2);
    ck_assert_int_eq(arc(1, 2, &to_tick), 3);
    ck_assert_int_eq(arc(0, 3, &to_tick), 0);
}
END_TEST

START_TEST(an_arc_refuses_what_is_none)
{
    struct muslin_rounded rounded = { .size = (uint32_t)sizeof rounded, .value = 77 };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_arc_length(-1, 1, &to_tick, &rounded, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_RADIUS);
    ck_status(muslin_arc_length(MUSLIN_SIZE_MAX + 1, 1, &to_tick, &rounded, &problem), MUSLIN_ERR_RANGE);
    ck_status(muslin_arc_length(1, 0, &to_tick, &rounded, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUARTER_TURNS);
    ck_status(muslin_arc_length(1, 5, &to_tick, &rounded, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.limit, 4);
    ck_status(muslin_arc_length(1, 1, NULL, &rounded, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_arc_length(1, 1, &to_tick, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(rounded.value, 77);
}
END_TEST

static struct muslin_quarter_circle quarter(muslin_len finished, muslin_len radius, muslin_len allowance,
                                            muslin_len take_up)
{
    struct muslin_quarter_circle_spec spec = MUSLIN_QUARTER_CIRCLE_SPEC_INIT;
    struct muslin_quarter_circle made = { .size = (uint32_t)sizeof made };
    spec.finished = finished;
    spec.radius = radius;
    spec.allowance = allowance;
    spec.take_up = take_up;
    ck_ok(muslin_shape_quarter_circle(&spec, &to_tick, &made, NULL));
    return made;
}

START_TEST(a_quarter_circle_of_five_inches)
{
    /* Example: a 7 in square with r 5 in: radii 5 1/4 and 4 3/4 in, squares 5 1/2 and 7 1/2 in. */
    struct muslin_quarter_circle made = quarter(WHOLE_IN(7), WHOLE_IN(5), IN(0, 1, 4), 0);
    ck_assert_int_eq(made.convex_cut_radius, IN(5, 1, 4));
    ck_assert_int_eq(made.concave_cut_radius, IN(4, 3, 4));
    ck_assert_int_eq(made.convex_cut_square, IN(5, 1, 2));
    ck_assert_int_eq(made.concave_cut_square, IN(7, 1, 2));
    ck_assert_int_eq(made.centre_inset, IN(0, 1, 4));
    ck_assert_int_eq(made.seam_length, 63837); /* 5 x 8128 x 1.5707963 = 63837.16 */
}
END_TEST

/* 5, 12, 13: r 8 and e 5 give 13 about the centre and 12 along the cut edge, 17 from the cut corner; r 18 and e 5 give
 * 13 again, so that of 40 + 5 along the cut edge 33 are left. */
START_TEST(the_legs_end_where_the_cut_arc_meets_the_cut_edge)
{
    ck_assert_int_eq(quarter(40 * K, 18 * K, 5 * K, 0).concave_cut_leg, 33 * K);
    struct muslin_quarter_circle made = quarter(40 * K, 18 * K, 4 * K, 2 * K);
    ck_assert_int_eq(made.concave_cut_leg, 33 * K);
    ck_assert_int_eq(made.convex_cut_leg, 5 * K + 22450); /* sqrt(23^2 - 5^2) = 22.449944 */
    ck_assert_int_eq(quarter(9, 8, 2, 4).convex_cut_leg, 4 + 11); /* sqrt(144 - 16) = 11.31 */
    ck_assert_int_eq(quarter(9, 8, 2, 4).concave_cut_leg, 9 + 4); /* sqrt(16 - 16) = 0 */
}
END_TEST

/* An effective allowance of half a tick: radii and inset half a tick off, ties up. */
START_TEST(a_quarter_circle_with_half_a_tick)
{
    struct muslin_quarter_circle made = quarter(40 * K, 18 * K, 0, 1);
    ck_assert_int_eq(made.convex_cut_radius, 18 * K + 1);
    ck_assert_int_eq(made.concave_cut_radius, 18 * K);
    ck_assert_int_eq(made.centre_inset, 1);
    ck_assert_int_eq(made.convex_cut_square, 18 * K + 1);
}
END_TEST

static muslin_status call_quarter(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_shape_quarter_circle(spec, &to_tick, out, problem);
}
static const struct muslin_quarter_circle_spec good_quarter = {
    (uint32_t)sizeof good_quarter, 0, 50 * K, 30 * K, 2032, 0
};
static const struct ruled ruled_quarter = RULED(call_quarter, good_quarter, muslin_quarter_circle);

START_TEST(a_quarter_circle_refuses_what_it_cannot_be)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_quarter_circle_spec, finished, 2, MUSLIN_SIZE_MAX / 4, MUSLIN_ARG_FINISHED),
        OUTSIDE(muslin_quarter_circle_spec, radius, 1, 50 * K - 1, MUSLIN_ARG_RADIUS),
        OUTSIDE(muslin_quarter_circle_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_quarter_circle_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        REFUSAL(muslin_quarter_circle_spec, radius, 4063, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_RADIUS),
    };
    struct muslin_quarter_circle made = { .size = (uint32_t)sizeof made, .seam_length = 77 };
    struct muslin_quarter_circle_spec thick = good_quarter;
    struct muslin_problem problem = PROBLEM;
    thick.radius = 4000;
    thick.take_up = 100;
    ck_status(muslin_shape_quarter_circle(&thick, &to_tick, &made, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.value, 4000);
    ck_assert_int_eq(problem.limit, 2 * 2032 + 100);
    ck_struct_rules(&ruled_quarter);
    ck_no_flag_known(&ruled_quarter);
    ck_refusals(&ruled_quarter, refusals, COUNT_OF(refusals));
    ck_status(muslin_shape_quarter_circle(&good_quarter, NULL, &made, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(made.seam_length, 77);
}
END_TEST

INIT_CALL(quarter_circle)

START_TEST(a_quarter_circle_starts_as_its_macro_says)
{
    const struct muslin_quarter_circle_spec initial = MUSLIN_QUARTER_CIRCLE_SPEC_INIT;
    struct muslin_quarter_circle_spec spec;
    ck_init_rules(init_quarter_circle, &initial, (uint32_t)sizeof initial);
    /* Example: muslin_quarter_circle_spec_init(&spec, sizeof spec) gives allowances of 1/4 in. */
    ck_ok(muslin_quarter_circle_spec_init(&spec, sizeof spec));
    ck_assert_int_eq(spec.allowance, IN(0, 1, 4));
}
END_TEST

/* ---- regular polygons ------------------------------------------------------------------------------------------- */

static struct muslin_regular_polygon regular(int32_t sides, int32_t measure, muslin_len size,
                                             const struct muslin_rounding_spec *to)
{
    struct muslin_regular_polygon made = { .size = (uint32_t)sizeof made };
    ck_ok(muslin_shape_regular_polygon(sides, measure, size, to, &made, NULL));
    return made;
}

START_TEST(a_hexagon_of_two_and_three_quarters)
{
    /* Example: a hexagon 2 3/4 in from flat to flat, to the nearest 1/16 in: side 1 9/16 in (1.588), 3 3/16 in from
     * corner to corner (3.175). */
    struct muslin_regular_polygon made = regular(6, MUSLIN_POLYGON_MEASURE_FLATS, IN(2, 3, 4), &to_sixteenth);
    ck_assert_int_eq(made.side, IN(1, 9, 16));
    ck_assert_int_eq(made.corners, IN(3, 3, 16));
    ck_assert_int_eq(made.centre, made.side);
}
END_TEST

/* With side 1 000 000: sqrt 3 / 2 = .8660254, 1 / sqrt 3 = .5773503, sqrt 2 = 1.4142136, 1 / sqrt 2 = .7071068,
 * sqrt 3 = 1.7320508, 1 + sqrt 2 = 2.4142136, sqrt(4 + 2 sqrt 2) = 2.6131259, half of it 1.3065630. Twice the areas:
 * sqrt 3 / 2, 2, 3 sqrt 3 = 5.1961524, 4 + 4 sqrt 2 = 9.6568542. */
START_TEST(polygons_have_their_well_known_proportions)
{
    const muslin_len million = K * K;
    const muslin_len expected[4][5] = {
        { 1000000, 866025, 1000000, 577350, INT64_C(866025403784) },
        { 1000000, 1000000, 1414214, 707107, INT64_C(2000000000000) },
        { 1000000, 1732051, 2000000, 1000000, INT64_C(5196152422707) },
        { 1000000, 2414214, 2613126, 1306563, INT64_C(9656854249492) }
    };
    const int32_t sides[] = { 3, 4, 6, 8 };
    for (int i = 0; i < 4; i++) {
        struct muslin_regular_polygon made = regular(sides[i], MUSLIN_POLYGON_MEASURE_SIDE, million, &to_tick);
        const muslin_len found[] = { made.side, made.flats, made.corners, made.centre, made.area };
        for (int j = 0; j < 5; j++)
            ck_assert_int_eq(found[j], expected[i][j]);
        for (int32_t measure = 1; measure <= 4; measure++) {
            struct muslin_regular_polygon back = regular(sides[i], measure, expected[i][measure - 1], &to_tick);
            ck_assert_int_le(llabs(back.side - million), 1);
            ck_assert_int_eq(measure == 1 ? back.side
                             : measure == 2 ? back.flats
                             : measure == 3 ? back.corners
                                            : back.centre, expected[i][measure - 1]);
        }
    }
}
END_TEST

/* Up to a tick: a square is as wide as its side, a hexagon from corner to corner as two sides, and both have roots else:
 * 7 sqrt 2 = 9.90 and 7 sqrt 3 = 12.12. */
START_TEST(what_needs_no_rounding_is_not_rounded_up)
{
    struct muslin_rounding_spec up = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_regular_polygon regular = { .size = (uint32_t)sizeof regular };
    up.direction = MUSLIN_DIRECTION_UP;
    ck_ok(muslin_shape_regular_polygon(4, MUSLIN_POLYGON_MEASURE_SIDE, 7, &up, &regular, NULL));
    ck_assert(regular.side == 7 && regular.flats == 7 && regular.corners == 10);
    ck_ok(muslin_shape_regular_polygon(6, MUSLIN_POLYGON_MEASURE_SIDE, 7, &up, &regular, NULL));
    ck_assert(regular.side == 7 && regular.centre == 7 && regular.corners == 14 && regular.flats == 13);
}
END_TEST

START_TEST(a_polygon_refuses_what_it_cannot_be)
{
    struct muslin_regular_polygon made = { .size = (uint32_t)sizeof made, .side = 77 };
    struct muslin_problem problem = PROBLEM;
    const int32_t none[] = { -1, 0, 2, 5, 7, 9, INT32_MAX };
    for (size_t i = 0; i < COUNT_OF(none); i++) {
        ck_status(muslin_shape_regular_polygon(none[i], 1, 9, &to_tick, &made, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_SIDES);
        ck_assert_int_eq(problem.value, none[i]);
        ck_assert_int_eq(problem.limit, 8); /* triangles, squares, hexagons, octagons */
    }
    ck_status(muslin_shape_regular_polygon(6, 0, 9, &to_tick, &made, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
    ck_status(muslin_shape_regular_polygon(6, 5, 9, &to_tick, &made, &problem), MUSLIN_ERR_CHOICE);
    ck_status(muslin_shape_regular_polygon(6, 1, 0, &to_tick, &made, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LENGTH);
    ck_status(muslin_shape_regular_polygon(6, 1, MUSLIN_SIZE_MAX + 1, &to_tick, &made, &problem), MUSLIN_ERR_RANGE);
    ck_status(muslin_shape_regular_polygon(6, 1, 9, NULL, &made, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_shape_regular_polygon(6, 1, 9, &to_tick, NULL, &problem), MUSLIN_ERR_NULL);
    /* 4 + 4 sqrt 2 times 2^60 is more than 2^62; 2 of them times a quarter of that are not */
    ck_status(muslin_shape_regular_polygon(8, 1, MUSLIN_SIZE_MAX, &to_tick, &made, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(made.side, 77);
    ck_assert_int_eq(regular(4, 1, MUSLIN_SIZE_MAX, &to_tick).area, 2 * MUSLIN_SIZE_MAX * MUSLIN_SIZE_MAX);
}
END_TEST

TCase *shape_curve_case(void)
{
    TCase *curve = tcase_create("curve");
    tcase_add_test(curve, arcs_are_as_long_as_pi_says);
    tcase_add_test(curve, an_arc_refuses_what_is_none);
    tcase_add_test(curve, a_quarter_circle_of_five_inches);
    tcase_add_test(curve, the_legs_end_where_the_cut_arc_meets_the_cut_edge);
    tcase_add_test(curve, a_quarter_circle_with_half_a_tick);
    tcase_add_test(curve, a_quarter_circle_refuses_what_it_cannot_be);
    tcase_add_test(curve, a_quarter_circle_starts_as_its_macro_says);
    tcase_add_test(curve, a_hexagon_of_two_and_three_quarters);
    tcase_add_test(curve, polygons_have_their_well_known_proportions);
    tcase_add_test(curve, what_needs_no_rounding_is_not_rounded_up);
    tcase_add_test(curve, a_polygon_refuses_what_it_cannot_be);
    return curve;
}
