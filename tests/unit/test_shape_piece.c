/* test_shape_piece.c - what one knows of a piece before cutting it: rectangle, grain, areas; foundations.
 *
 * SPDX-License-Identifier: MIT */
#include "test_shape.h"

#define K INT64_C(1000)
#define AT(piece, x, y) CORNER(piece, WHOLE_IN(x), WHOLE_IN(y))

/* The half of a 3 in square that has its short edges on the outline. */
static const struct muslin_corner_spec half_square[] = {
    AT(OUTLINE, 0, 0), AT(OUTLINE, 3, 0), AT(OUTLINE, 3, 3), AT(OUTLINE, 0, 3),
    AT(0, 0, 0), AT(0, 3, 0), AT(0, 0, 3)
};

static struct muslin_shape_piece piece_of(const struct muslin_corner_spec *rows, size_t n,
                                          const struct muslin_shape_piece_spec *spec)
{
    struct muslin_shape_piece piece = { .size = (uint32_t)sizeof piece };
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_shape_measure(rows, sizeof rows[0], n, spec, &to_tick, &piece, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return piece;
}

/* 1/4 + 3 + 1/4 (1 + sqrt 2) in = 31321.68 ticks with the tip at 3 in + 4906: up to 31322 from rounded corners. */
START_TEST(a_half_square_lies_along_its_outside_edge)
{
    const struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    /* Example: the half square of 3 in, its two short edges outside: grain along x, no bias edge, and a rectangle of
     * about 3.86 in square (3.8536). */
    struct muslin_shape_piece piece = piece_of(half_square, COUNT_OF(half_square), &spec);
    ck_assert_int_eq(piece.grain_x, WHOLE_IN(3));
    ck_assert_int_eq(piece.grain_y, 0);
    ck_assert_int_eq(piece.bias_edges, 0);
    ck_assert_int_eq(piece.outside_edges, 2);
    ck_assert_int_eq(piece.rectangle_along, 2032 + WHOLE_IN(3) + 4906);
    ck_assert_int_eq(piece.rectangle_across, piece.rectangle_along);
    ck_assert_int_eq(piece.cut_width, piece.rectangle_along);
    ck_assert_int_eq(piece.cut_area, piece.cut_width * piece.cut_width);
    ck_assert_int_eq(piece.finished_area, WHOLE_IN(3) * WHOLE_IN(3));
    ck_assert_int_eq(piece.longest, 34484); /* 3 in x sqrt 2 = 24384 x 1.41421356 = 34484.18 */
    ck_assert_int_eq(piece.longest_corner, 5);
    ck_assert_int_eq(piece.has_arcs, 0);
}
END_TEST

/* The other way to lay it: the long edge outside alone, as round a square on point. Its short edges then lie on the
 * bias, and inside. With the grain along a short edge the long one is a bias edge. */
START_TEST(a_bias_edge_outside_is_warned_of)
{
    const struct muslin_corner_spec rows[] = { AT(OUTLINE, 0, 0), AT(OUTLINE, 3, 0), AT(OUTLINE, 0, 3), AT(0, 0, 0),
                                               AT(0, 3, 0), AT(0, 0, 3) };
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    struct muslin_shape_piece piece = piece_of(rows, COUNT_OF(rows), &spec);
    ck_assert_int_eq(piece.grain_corner, 4);
    ck_assert_int_eq(piece.bias_edges, 2);
    ck_assert_uint_eq(piece.warnings, MUSLIN_WARN_BIAS_EDGE);
    spec.grain_y = -7;
    piece = piece_of(rows, COUNT_OF(rows), &spec);
    ck_assert_int_eq(piece.bias_edges, 1);
    ck_assert_int_eq(piece.grain_y, -7);
}
END_TEST

static muslin_len rounded_up_length(void)
{
    const struct muslin_corner_spec rows[] = { CORNER(0, 0, 0), CORNER(0, 3 * K, 0), CORNER(0, 0, 3 * K) };
    const struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    return piece_of(rows, 3, &spec).longest;
}

/* Without an outline nothing is outside, and the longest edge gets the grain. A margin goes all round. */
START_TEST(a_piece_without_an_outline_lies_along_its_longest_edge)
{
    const struct muslin_corner_spec rows[] = { CORNER(0, 0, 0), CORNER(0, 40 * K, 0), CORNER(0, 0, 30 * K) };
    struct muslin_corner_spec plain[3];
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    memcpy(plain, rows, sizeof plain);
    for (int i = 0; i < 3; i++)
        plain[i].allowance = 0;
    struct muslin_shape_piece piece = piece_of(plain, 3, &spec);
    ck_assert_int_eq(piece.outside_edges, 0);
    ck_assert_int_eq(piece.grain_corner, 1);
    ck_assert_int_eq(piece.longest, 50 * K);
    ck_assert_int_eq(piece.rectangle_along, 50 * K);
    ck_assert_int_eq(piece.rectangle_across, 24 * K); /* 30 x 40 / 50 */
    ck_assert_int_eq(rounded_up_length(), 4243); /* 3 K x sqrt 2 = 4242.64 */
    spec.margin = 500;
    piece = piece_of(plain, 3, &spec);
    ck_assert_int_eq(piece.rectangle_along, 51 * K);
    ck_assert_int_eq(piece.rectangle_across, 25 * K);
    ck_assert_int_eq(piece.cut_width, 40 * K);
}
END_TEST

/* Upright and, by 3 4 5, slanting: every edge of a rectangle lies along its longest one or across it. Where it leans its
 * two short ones do not. */
START_TEST(a_rectangle_has_no_bias_edge_however_it_lies)
{
    const int64_t places[][4][2] = { { { 7, 9 }, { 17, 9 }, { 17, 14 }, { 7, 14 } },
                                     { { 30, 10 }, { 42, 26 }, { 36, 30 }, { 24, 14 } },
                                     { { 30, 10 }, { 38, 16 }, { 35, 20 }, { 27, 14 } } };
    for (size_t i = 0; i < COUNT_OF(places); i++) {
        struct muslin_corner_spec rows[8];
        const struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
        for (int32_t row = 0; row < 8; row++) {
            const struct muslin_corner_spec corner =
                CORNER(row / 4 - 1, places[i][row % 4][0] * K, places[i][row % 4][1] * K);
            rows[row] = corner;
        }
        struct muslin_shape_piece piece = piece_of(rows, COUNT_OF(rows), &spec);
        ck_assert_int_eq(piece.outside_edges, 4);
        ck_assert_int_eq(piece.bias_edges, i == 1 ? 2 : 0);
        ck_assert_int_eq(piece.warnings, i == 1 ? MUSLIN_WARN_BIAS_EDGE : 0);
    }
}
END_TEST

/* A disc of 10 K with 2 K of allowance is 24 K wide whichever way one lays it, and has no straight edge. */
START_TEST(a_disc_is_as_wide_in_every_direction)
{
    struct muslin_corner_spec disc[] = { ARC(OUTLINE, 10 * K, 0, CONVEX, 10 * K, 10 * K, 10 * K),
                                         ARC(OUTLINE, 10 * K, 20 * K, CONVEX, 10 * K, 10 * K, 10 * K),
                                         ARC(0, 10 * K, 0, CONVEX, 10 * K, 10 * K, 10 * K),
                                         ARC(0, 10 * K, 20 * K, CONVEX, 10 * K, 10 * K, 10 * K) };
    const muslin_len directions[][2] = { { 0, 0 }, { 3, 4 }, { -12, 5 }, { 0, -1 } };
    disc[2].allowance = 2 * K;
    disc[3].allowance = 2 * K;
    for (size_t i = 0; i < COUNT_OF(directions); i++) {
        struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
        spec.grain_x = directions[i][0];
        spec.grain_y = directions[i][1];
        struct muslin_shape_piece piece = piece_of(disc, COUNT_OF(disc), &spec);
        ck_assert_int_eq(piece.rectangle_along, 24 * K);
        ck_assert_int_eq(piece.rectangle_across, 24 * K);
        ck_assert_int_eq(piece.longest, 0);
        ck_assert_int_eq(piece.longest_corner, -1);
        ck_assert_int_eq(piece.grain_corner, -1);
        ck_assert_int_eq(piece.grain_x, i == 0 ? 1 : directions[i][0]);
        ck_assert_int_eq(piece.grain_y, directions[i][1]);
        ck_assert_int_eq(piece.outside_edges, 2);
        ck_assert_int_eq(piece.bias_edges, 2);
        ck_assert_int_eq(piece.has_arcs, 1);
    }
}
END_TEST

/* A quarter disc of 8 K, allowances 5 K: from -5 K to the cut radius of 13 K? The arc ends at 12 K, below the centre,
 * and bulges out to 13 K at the centre's level. Its background of 18 K: 50 K, whatever its arc does. */
START_TEST(a_bulge_counts_and_a_hollow_does_not)
{
    struct muslin_corner_spec pie[] = { CORNER(0, 0, 0), ARC(0, 8 * K, 0, CONVEX, 0, 0, 8 * K), CORNER(0, 0, 8 * K) };
    struct muslin_corner_spec rest[] = { CORNER(0, 18 * K, 0), CORNER(0, 40 * K, 0), CORNER(0, 40 * K, 40 * K),
                                         CORNER(0, 0, 40 * K), ARC(0, 0, 18 * K, CONCAVE, 0, 0, 18 * K) };
    const struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    for (int i = 0; i < 5; i++) {
        pie[i % 3].allowance = 5 * K;
        rest[i].allowance = 5 * K;
    }
    ck_assert_int_eq(piece_of(pie, 3, &spec).cut_width, 18 * K);
    ck_assert_int_eq(piece_of(pie, 3, &spec).cut_height, 18 * K);
    ck_assert_int_eq(piece_of(rest, 5, &spec).cut_width, 50 * K);
}
END_TEST

/* ---- foundations ------------------------------------------------------------------------------------------------ */

/* Long edge down: (3.8536 in) x sqrt 2 along, half of that across. 31322 x 1.4142135624 = 44295.997. */
START_TEST(a_half_square_along_its_long_edge)
{
    muslin_len along = 0, across = 0;
    /* Example: the half square of 3 in laid with its long edge along the strip: 5.45 in along and 2.725 in across. */
    ck_ok(muslin_shape_foundation(ROWS(half_square), 5, 0, &to_tick, &along, &across, NULL));
    ck_assert_int_eq(along, 44296);
    ck_assert_int_eq(across, 22148);
    ck_ok(muslin_shape_foundation(ROWS(half_square), 5, IN(0, 1, 2), &to_tick, &along, &across, NULL));
    ck_assert_int_eq(along, 44296 + WHOLE_IN(1));
    ck_assert_int_eq(across, 22148 + WHOLE_IN(1));
}
END_TEST

START_TEST(a_foundation_needs_a_straight_edge_of_a_piece)
{
    struct muslin_corner_spec pie[] = { CORNER(0, 0, 0), ARC(0, 8 * K, 0, CONVEX, 0, 0, 8 * K), CORNER(0, 0, 8 * K) };
    struct muslin_problem problem = PROBLEM;
    muslin_len along = 7, across = 8;
    ck_status(muslin_shape_foundation(ROWS(pie), 1, 0, &to_tick, &along, &across, &problem), MUSLIN_ERR_SHAPE);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_shape_foundation(ROWS(pie), 3, 0, &to_tick, &along, &across, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CORNER_ROW);
    ck_assert_int_eq(problem.limit, 2);
    ck_status(muslin_shape_foundation(ROWS(pie), -1, 0, &to_tick, &along, &across, &problem), MUSLIN_ERR_INDEX);
    ck_status(muslin_shape_foundation(ROWS(half_square), 0, 0, &to_tick, &along, &across, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE);
    ck_status(muslin_shape_foundation(ROWS(pie), 0, -1, &to_tick, &along, &across, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MARGIN);
    ck_status(muslin_shape_foundation(ROWS(pie), 0, MUSLIN_SHAPE_SIZE_MAX + 1, &to_tick, &along, &across, &problem),
              MUSLIN_ERR_RANGE);
    ck_status(muslin_shape_foundation(ROWS(pie), 0, 0, NULL, &along, &across, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_shape_foundation(ROWS(pie), 0, 0, &to_tick, NULL, &across, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_shape_foundation(ROWS(pie), 0, 0, &to_tick, &along, NULL, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_shape_foundation(NULL, sizeof pie[0], 3, 0, 0, &to_tick, &along, &across, NULL), MUSLIN_ERR_NULL);
    pie[0].tip = MUSLIN_CORNER_TIP_BLUNT;
    pie[2].tip = MUSLIN_CORNER_TIP_BLUNT;
    ck_status(muslin_shape_foundation(ROWS(pie), 0, 0, &to_tick, &along, &across, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(along, 7);
    ck_assert_int_eq(across, 8);
}
END_TEST

/* ---- structs ---------------------------------------------------------------------------------------------------- */

static muslin_status call_piece(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_shape_measure(ROWS(half_square), spec, &to_tick, out, problem);
}
static const struct muslin_shape_piece_spec good_piece = MUSLIN_SHAPE_PIECE_SPEC_INIT;
static const struct ruled ruled_piece = RULED(call_piece, good_piece, muslin_shape_piece);

START_TEST(a_piece_keeps_the_rules_of_structs_and_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_shape_piece_spec, grain_x, -MUSLIN_SHAPE_SIZE_MAX, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_GRAIN),
        OUTSIDE(muslin_shape_piece_spec, grain_y, -MUSLIN_SHAPE_SIZE_MAX, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_GRAIN),
        OUTSIDE(muslin_shape_piece_spec, margin, 0, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_MARGIN),
        REFUSAL(muslin_shape_piece_spec, piece, -1, MUSLIN_ERR_INDEX, MUSLIN_ARG_PIECE),
        REFUSAL(muslin_shape_piece_spec, piece, 1, MUSLIN_ERR_INDEX, MUSLIN_ARG_PIECE),
        REFUSAL(muslin_shape_piece_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_struct_rules(&ruled_piece);
    ck_no_flag_known(&ruled_piece);
    ck_refusals_at(&ruled_piece, 0, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(a_piece_that_cannot_be_cut_leaves_its_answer_alone)
{
    struct muslin_corner_spec pie[] = { CORNER(0, 0, 0), ARC(0, 8 * K, 0, CONVEX, 0, 0, 8 * K), CORNER(0, 0, 8 * K) };
    struct muslin_shape_piece piece = { .size = (uint32_t)sizeof piece, .longest = 77 };
    pie[2].tip = MUSLIN_CORNER_TIP_BLUNT;
    ck_status(muslin_shape_measure(ROWS(pie), &good_piece, &to_tick, &piece, NULL), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(piece.longest, 77);
}
END_TEST

INIT_CALL(shape_piece)

START_TEST(a_piece_s_spec_starts_as_its_macro_says)
{
    struct muslin_shape_piece_spec spec;
    ck_init_rules(init_shape_piece, &good_piece, (uint32_t)sizeof good_piece);
    /* Example: muslin_shape_piece_spec_init(&spec, sizeof spec) gives piece 0 without a margin. */
    ck_ok(muslin_shape_piece_spec_init(&spec, sizeof spec));
    ck_assert_int_eq(spec.piece, 0);
    ck_assert_int_eq(spec.margin, 0);
}
END_TEST

TCase *shape_piece_case(void)
{
    TCase *piece = tcase_create("piece");
    tcase_add_test(piece, a_half_square_lies_along_its_outside_edge);
    tcase_add_test(piece, a_bias_edge_outside_is_warned_of);
    tcase_add_test(piece, a_piece_without_an_outline_lies_along_its_longest_edge);
    tcase_add_test(piece, a_rectangle_has_no_bias_edge_however_it_lies);
    tcase_add_test(piece, a_disc_is_as_wide_in_every_direction);
    tcase_add_test(piece, a_bulge_counts_and_a_hollow_does_not);
    tcase_add_test(piece, a_half_square_along_its_long_edge);
    tcase_add_test(piece, a_foundation_needs_a_straight_edge_of_a_piece);
    tcase_add_test(piece, a_piece_keeps_the_rules_of_structs_and_ranges);
    tcase_add_test(piece, a_piece_that_cannot_be_cut_leaves_its_answer_alone);
    tcase_add_test(piece, a_piece_s_spec_starts_as_its_macro_says);
    return piece;
}
