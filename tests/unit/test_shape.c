/* test_shape.c - a unit of the caller's own: rows, order, and whether the pieces fill the outline.
 *
 * SPDX-License-Identifier: MIT */
#include "test_shape.h"

Suite *shape_suite(void);

/* Inches. */
#define AT(piece, x, y) CORNER(piece, WHOLE_IN(x), WHOLE_IN(y))

/* ---- a block worked through ------------------------------------------------------------------------------------- */

/* A house, 12 in finished: sky left and right of the roof, the roof, a wall round the door, the door. The wall's top
 * meets the roof; the sky pieces' tips meet in the middle of the outline's top edge, where it has no corner. */
static const struct muslin_corner_spec house[] = {
    AT(OUTLINE, 0, 0), AT(OUTLINE, 12, 0), AT(OUTLINE, 12, 12), AT(OUTLINE, 0, 12),
    AT(0, 0, 6), AT(0, 6, 12), AT(0, 0, 12),
    AT(1, 12, 6), AT(1, 12, 12), AT(1, 6, 12),
    AT(2, 0, 6), AT(2, 12, 6), AT(2, 6, 12),
    AT(3, 0, 0), AT(3, 4, 0), AT(3, 4, 4), AT(3, 7, 4), AT(3, 7, 0), AT(3, 12, 0), AT(3, 12, 6), AT(3, 0, 6),
    AT(4, 4, 0), AT(4, 7, 0), AT(4, 7, 4), AT(4, 4, 4)
};
enum { HOUSE_ROWS = COUNT_OF(house) };

static struct muslin_shape checked(const struct muslin_corner_spec *rows, size_t n)
{
    struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_shape_check(rows, sizeof rows[0], n, &shape, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return shape;
}

/* Counted on the drawing: outside are two edges of each sky piece, both walls, the wall's two feet, the door's sill. */
START_TEST(a_house_of_five_pieces_fills_its_square)
{
    struct muslin_shape shape = checked(house, HOUSE_ROWS);
    ck_assert_int_eq(shape.pieces, 5);
    ck_assert_int_eq(shape.corners, 21);
    ck_assert_int_eq(shape.outside_edges, 9);
    ck_assert_int_eq(shape.inside_edges, 12);
    ck_assert_int_eq(shape.finished_width, WHOLE_IN(12));
    ck_assert_int_eq(shape.finished_height, WHOLE_IN(12));
    ck_assert_int_eq(shape.finished_area, 2 * WHOLE_IN(12) * WHOLE_IN(12));
    ck_assert_int_eq(shape.has_arcs, 0);
}
END_TEST

static struct muslin_shape_piece piece_of_house(int32_t number)
{
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    struct muslin_shape_piece piece = { .size = (uint32_t)sizeof piece };
    spec.piece = number;
    ck_ok(muslin_shape_measure(house, sizeof house[0], HOUSE_ROWS, &spec, &to_tick, &piece, NULL));
    return piece;
}

/* Areas worked out on the drawing: 18, 18, 36, 72 - 12 and 12 sq in, the square together. */
START_TEST(the_house_s_areas_add_up)
{
    const int64_t square_inches[] = { 18, 18, 36, 60, 12 };
    int64_t sum = 0;
    for (int32_t i = 0; i < 5; i++) {
        struct muslin_shape_piece piece = piece_of_house(i);
        ck_assert_int_eq(piece.finished_area, 2 * WHOLE_IN(square_inches[i]) * WHOLE_IN(1));
        sum += piece.finished_area;
    }
    ck_assert_int_eq(sum, 2 * WHOLE_IN(12) * WHOLE_IN(12));
}
END_TEST

static muslin_len up_to_eighth(muslin_len size)
{
    struct muslin_rounding_spec up = { (uint32_t)sizeof up, 0, 1016, 0, MUSLIN_DIRECTION_UP, 0 };
    struct muslin_rounded rounded = { .size = (uint32_t)sizeof rounded };
    ck_ok(muslin_length_snap(size, &up, &rounded));
    return rounded.value;
}

/* Common practice, no source: a half-square triangle is cut 7/8 in larger than finished, and a triangle with its long
 * edge outside 1 1/4 in larger along it; a rectangle 1/2 in. */
START_TEST(the_house_is_cut_as_everyone_cuts_it)
{
    ck_assert_int_eq(up_to_eighth(piece_of_house(0).cut_width), IN(6, 7, 8));
    ck_assert_int_eq(up_to_eighth(piece_of_house(0).cut_height), IN(6, 7, 8));
    ck_assert_int_eq(up_to_eighth(piece_of_house(1).cut_width), IN(6, 7, 8));
    ck_assert_int_eq(up_to_eighth(piece_of_house(2).cut_width), IN(13, 1, 4));
    ck_assert_int_eq(piece_of_house(3).cut_width, IN(12, 1, 2));
    ck_assert_int_eq(piece_of_house(3).cut_height, IN(6, 1, 2));
    ck_assert_int_eq(piece_of_house(4).cut_width, IN(3, 1, 2));
    ck_assert_int_eq(piece_of_house(4).cut_height, IN(4, 1, 2));
}
END_TEST

/* The sky's outside edges are its short ones: they get the straight grain, and nothing outside lies on the bias. With
 * the grain along its seam with the roof both outside edges do. The roof lies inside. */
START_TEST(the_house_s_outside_edges_get_the_straight_grain)
{
    struct muslin_shape_piece_spec spec = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    struct muslin_shape_piece sky = piece_of_house(0);
    ck_assert_int_eq(sky.outside_edges, 2);
    ck_assert_int_eq(sky.bias_edges, 0);
    ck_assert_uint_eq(sky.warnings, 0);
    ck_assert_int_eq(sky.grain_corner, 5);
    ck_assert_int_eq(sky.longest_corner, 4);
    ck_assert_int_eq(sky.grain_x, -WHOLE_IN(6));
    ck_assert_int_eq(sky.grain_y, 0);
    spec.grain_x = 1;
    spec.grain_y = 1;
    ck_ok(muslin_shape_measure(house, sizeof house[0], HOUSE_ROWS, &spec, &to_tick, &sky, NULL));
    ck_assert_int_eq(sky.bias_edges, 2);
    ck_assert_uint_eq(sky.warnings, MUSLIN_WARN_BIAS_EDGE);
    ck_assert_int_eq(sky.grain_corner, -1);
    struct muslin_shape_piece roof = piece_of_house(2);
    ck_assert_int_eq(roof.outside_edges, 0);
    ck_assert_int_eq(roof.grain_corner, 10);
    ck_assert_int_eq(roof.longest, WHOLE_IN(12));
}
END_TEST

/* ---- units that do not fill their outline ----------------------------------------------------------------------- */

START_TEST(a_gap_an_overlap_and_a_piece_outside_are_named_with_their_edge)
{
    const struct muslin_corner_spec gap[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 4, 0), AT(OUTLINE, 4, 4), AT(OUTLINE, 0, 4),
        AT(0, 0, 0), AT(0, 4, 0), AT(0, 4, 2), AT(0, 0, 2),
        AT(1, 0, 3), AT(1, 4, 3), AT(1, 4, 4), AT(1, 0, 4)
    };
    const struct muslin_corner_spec twice[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 4, 0), AT(OUTLINE, 4, 4), AT(OUTLINE, 0, 4),
        AT(0, 0, 0), AT(0, 4, 0), AT(0, 4, 4), AT(0, 0, 4),
        AT(1, 1, 1), AT(1, 2, 1), AT(1, 2, 2), AT(1, 1, 2)
    };
    const struct muslin_corner_spec outside[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 4, 0), AT(OUTLINE, 4, 4), AT(OUTLINE, 0, 4),
        AT(0, 0, 0), AT(0, 5, 0), AT(0, 5, 4), AT(0, 0, 4)
    };
    ck_check_refuses(gap, MUSLIN_ERR_NOT_TILED, 1);
    ck_check_refuses(twice, MUSLIN_ERR_NOT_TILED, 8);
    ck_check_refuses(outside, MUSLIN_ERR_NOT_TILED, 1);
}
END_TEST

/* Edges of the outline in one line, with a bay between them, are each other's neighbours in nothing. */
START_TEST(a_piece_with_a_bay_is_its_own_outline)
{
    struct muslin_corner_spec rows[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 6, 0), AT(OUTLINE, 6, 2), AT(OUTLINE, 3, 2), AT(OUTLINE, 3, 4), AT(OUTLINE, 6, 4),
        AT(OUTLINE, 6, 6), AT(OUTLINE, 0, 6),
        AT(0, 0, 0), AT(0, 6, 0), AT(0, 6, 2), AT(0, 3, 2), AT(0, 3, 4), AT(0, 6, 4), AT(0, 6, 6), AT(0, 0, 6)
    };
    struct muslin_shape shape = checked(rows, COUNT_OF(rows));
    ck_assert_int_eq(shape.outside_edges, 8);
    ck_assert_int_eq(shape.inside_edges, 0);
    for (int i = 0; i < 4; i++) { /* the same, clockwise */
        struct muslin_corner_spec corner = rows[8 + i];
        rows[8 + i] = rows[15 - i];
        rows[15 - i] = corner;
    }
    ck_check_refuses(rows, MUSLIN_ERR_SHAPE, 8);
}
END_TEST

/* A zigzag: seams in one line with the outline's edges, before them, behind them and the other way; the long piece's
 * lower edge lies on the outline in part. */
START_TEST(edges_in_line_with_the_outline_are_outside_only_where_they_lie_on_it)
{
    const struct muslin_corner_spec rows[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 4, 0), AT(OUTLINE, 4, 2), AT(OUTLINE, 6, 2), AT(OUTLINE, 6, 4), AT(OUTLINE, 2, 4),
        AT(OUTLINE, 2, 2), AT(OUTLINE, 0, 2),
        AT(0, 0, 0), AT(0, 2, 0), AT(0, 2, 2), AT(0, 0, 2),
        AT(1, 2, 0), AT(1, 4, 0), AT(1, 4, 2), AT(1, 2, 2),
        AT(2, 2, 2), AT(2, 6, 2), AT(2, 6, 4), AT(2, 2, 4)
    };
    struct muslin_shape shape = checked(rows, COUNT_OF(rows));
    ck_assert_int_eq(shape.outside_edges, 3 + 2 + 4);
    ck_assert_int_eq(shape.inside_edges, 1 + 2);
}
END_TEST

/* Any one piece of the house left out, or laid twice, or its door moved by a tick. */
START_TEST(a_house_with_something_wrong_is_not_filled)
{
    struct muslin_corner_spec rows[HOUSE_ROWS + 4];
    struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
    ck_status(muslin_shape_check(house, sizeof house[0], HOUSE_ROWS - 4, &shape, NULL), MUSLIN_ERR_NOT_TILED);
    memcpy(rows, house, sizeof house);
    for (int i = 0; i < 4; i++) {
        rows[HOUSE_ROWS + i] = house[HOUSE_ROWS - 4 + i];
        rows[HOUSE_ROWS + i].piece = 5;
    }
    ck_status(muslin_shape_check(rows, sizeof rows[0], HOUSE_ROWS + 4, &shape, NULL), MUSLIN_ERR_NOT_TILED);
    rows[HOUSE_ROWS - 1].x++;
    ck_status(muslin_shape_check(rows, sizeof rows[0], HOUSE_ROWS, &shape, NULL), MUSLIN_ERR_NOT_TILED);
}
END_TEST

/* Drawn on a grid of 5 x 5 cells: two rectangles in a 4 x 4 outline fill it when every cell is covered as often as the
 * outline covers it. */
static int is_filled(const int64_t *a, const int64_t *b)
{
    for (int64_t x = 0; x < 5; x++)
        for (int64_t y = 0; y < 5; y++) {
            int in_a = a[0] <= x && x < a[2] && a[1] <= y && y < a[3];
            int in_b = b[0] <= x && x < b[2] && b[1] <= y && y < b[3];
            if (in_a + in_b != (x < 4 && y < 4))
                return 0;
        }
    return 1;
}

static void put_rectangle(struct muslin_corner_spec *rows, int32_t piece, const int64_t *r)
{
    const struct muslin_corner_spec made[] = { CORNER(piece, r[0], r[1]), CORNER(piece, r[2], r[1]),
                                               CORNER(piece, r[2], r[3]), CORNER(piece, r[0], r[3]) };
    memcpy(rows, made, sizeof made);
}

/* Upright, on the slant, and on point: what is filled stays filled. */
static const int64_t slants[3][5] = { { 1, 0, 0, 1, 0 }, { 2, 1, 1, 3, 0 }, { 1, -1, 1, 1, 8 } };

static void lay_slanted(struct muslin_corner_spec *rows, size_t n, const int64_t *slant)
{
    for (size_t i = 0; i < n; i++) {
        const int64_t x = rows[i].x, y = rows[i].y;
        rows[i].x = slant[0] * x + slant[1] * y + slant[4];
        rows[i].y = slant[2] * x + slant[3] * y;
    }
}

START_TEST(two_rectangles_fill_a_square_when_every_cell_says_so)
{
    const int64_t square[] = { 0, 0, 4, 4 };
    struct muslin_corner_spec rows[12];
    int64_t filled = 0;
    for (int64_t k = 0; k < 3 * 15 * 15 * 15; k++) {
        const int64_t i = k / 3;
        const int64_t a[] = { 0, i % 3, 1 + i / 3 % 5, i % 3 + 1 + i / 15 % 5 };
        const int64_t b[] = { i / 75 % 5, i / 375 % 3, 5 - i / 1125, 4 };
        struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
        if (b[2] <= b[0])
            continue;
        put_rectangle(rows, OUTLINE, square);
        put_rectangle(rows + 4, 0, a);
        put_rectangle(rows + 8, 1, b);
        lay_slanted(rows, 12, slants[k % 3]);
        muslin_status status = muslin_shape_check(rows, sizeof rows[0], 12, &shape, NULL);
        ck_status(status, is_filled(a, b) ? MUSLIN_OK : MUSLIN_ERR_NOT_TILED);
        filled += status == MUSLIN_OK;
    }
    ck_assert_int_gt(filled, 9);
}
END_TEST

/* ---- arcs in a unit --------------------------------------------------------------------------------------------- */

/* A quarter disc and the rest of its square: their arcs are one. */
static const struct muslin_corner_spec quarter_unit[] = {
    AT(OUTLINE, 0, 0), AT(OUTLINE, 7, 0), AT(OUTLINE, 7, 7), AT(OUTLINE, 0, 7),
    AT(0, 0, 0), ARC(0, WHOLE_IN(5), 0, CONVEX, 0, 0, WHOLE_IN(5)), AT(0, 0, 5),
    AT(1, 5, 0), AT(1, 7, 0), AT(1, 7, 7), AT(1, 0, 7), ARC(1, 0, WHOLE_IN(5), CONCAVE, 0, 0, WHOLE_IN(5))
};

START_TEST(a_quarter_disc_and_its_background_fill_the_square)
{
    struct muslin_shape shape = checked(quarter_unit, COUNT_OF(quarter_unit));
    ck_assert_int_eq(shape.pieces, 2);
    ck_assert_int_eq(shape.outside_edges, 6);
    ck_assert_int_eq(shape.inside_edges, 2);
    ck_assert_int_eq(shape.has_arcs, 1);
}
END_TEST

START_TEST(arcs_meet_only_the_same_arc)
{
    struct muslin_corner_spec rows[COUNT_OF(quarter_unit)];
    memcpy(rows, quarter_unit, sizeof rows);
    rows[5].centre_x = -1; /* another arc between the same corners, within the tick that is allowed */
    rows[5].centre_y = -1;
    rows[5].radius = WHOLE_IN(5) + 1;
    ck_check_refuses(rows, MUSLIN_ERR_NOT_TILED, 5);
    memcpy(rows, quarter_unit, sizeof rows);
    rows[11].radius = WHOLE_IN(5) + 1;
    ck_check_refuses(rows, MUSLIN_ERR_NOT_TILED, 5);
    rows[11].radius = WHOLE_IN(5);
    rows[11].centre_x = 1;
    ck_check_refuses(rows, MUSLIN_ERR_NOT_TILED, 5);
    rows[11].centre_x = 0;
    rows[11].centre_y = 1;
    ck_check_refuses(rows, MUSLIN_ERR_NOT_TILED, 5);
}
END_TEST

/* A disc of 3 in radius, cut along its level diameter. */
START_TEST(a_disc_is_as_wide_as_its_diameter)
{
    const muslin_len r = WHOLE_IN(3);
    const struct muslin_corner_spec rows[] = {
        ARC(OUTLINE, 2 * r, r, CONVEX, r, r, r), ARC(OUTLINE, 0, r, CONVEX, r, r, r),
        ARC(0, 2 * r, r, CONVEX, r, r, r), AT(0, 0, 3),
        ARC(1, 0, r, CONVEX, r, r, r), AT(1, 6, 3)
    };
    struct muslin_shape shape = checked(rows, COUNT_OF(rows));
    ck_assert_int_eq(shape.pieces, 2);
    ck_assert_int_eq(shape.outside_edges, 2);
    ck_assert_int_eq(shape.finished_width, 2 * r);
    ck_assert_int_eq(shape.finished_height, 2 * r);
    ck_assert_int_eq(shape.finished_area, 0);
}
END_TEST

/* Half a disc whose corners lie a tick inside its circle, in line with its centre: it is as wide as from one to the
 * other, for there the arc ends. */
START_TEST(half_a_disc_reaches_no_farther_than_its_corners)
{
    const muslin_len r = WHOLE_IN(3);
    const struct muslin_corner_spec rows[] = { ARC(OUTLINE, 2 * r - 1, r, CONVEX, r, r, r), CORNER(OUTLINE, 1, r),
                                               ARC(0, 2 * r - 1, r, CONVEX, r, r, r), CORNER(0, 1, r) };
    struct muslin_shape shape = checked(rows, COUNT_OF(rows));
    ck_assert_int_eq(shape.finished_width, 2 * r - 2);
    ck_assert_int_eq(shape.finished_height, r);
}
END_TEST

/* A disc in quarters, and with one of them turned about its own corners: arcs that share one end, or a coordinate. */
/* What an arc of 5 in round (9, 6) in cuts off a disc, between any two of its whole-inch points up to half a turn
 * apart: they hold the outermost ones, so it reaches as far as the points that it goes through. */
START_TEST(a_piece_of_a_disc_reaches_as_far_as_its_arc)
{
    enum { ROUND = 12 };
    const int64_t points[ROUND][2] = { { 14, 6 }, { 13, 9 }, { 12, 10 }, { 9, 11 }, { 6, 10 }, { 5, 9 },
                                       { 4, 6 },  { 5, 3 },  { 6, 2 },   { 9, 1 },  { 12, 2 }, { 13, 3 } };
    for (int i = 0; i < ROUND * 6; i++) {
        const int from = i / 6, steps = 1 + i % 6;
        struct muslin_corner_spec rows[4];
        int64_t least[] = { 99, 99 }, most[] = { 0, 0 };
        for (int k = 0; k <= steps; k++)
            for (int way = 0; way < 2; way++) {
                const int64_t at = points[(from + k) % ROUND][way];
                least[way] = at < least[way] ? at : least[way];
                most[way] = at > most[way] ? at : most[way];
            }
        for (int32_t k = 0; k < 4; k++) {
            const int64_t *place = points[(from + k % 2 * steps) % ROUND];
            const struct muslin_corner_spec arc =
                ARC(k / 2 - 1, WHOLE_IN(place[0]), WHOLE_IN(place[1]), CONVEX, WHOLE_IN(9), WHOLE_IN(6), WHOLE_IN(5));
            const struct muslin_corner_spec line = CORNER(k / 2 - 1, WHOLE_IN(place[0]), WHOLE_IN(place[1]));
            rows[k] = k % 2 == 0 ? arc : line;
        }
        struct muslin_shape shape = checked(rows, 4);
        ck_assert_int_eq(shape.finished_width, WHOLE_IN(most[0] - least[0]));
        ck_assert_int_eq(shape.finished_height, WHOLE_IN(most[1] - least[1]));
    }
}
END_TEST

START_TEST(a_disc_of_four_quarters)
{
    const muslin_len r = WHOLE_IN(5);
    struct muslin_corner_spec rows[] = {
        ARC(OUTLINE, 2 * r, r, CONVEX, r, r, r), ARC(OUTLINE, r, 2 * r, CONVEX, r, r, r),
        ARC(OUTLINE, 0, r, CONVEX, r, r, r), ARC(OUTLINE, r, 0, CONVEX, r, r, r),
        AT(0, 5, 5), ARC(0, 2 * r, r, CONVEX, r, r, r), AT(0, 5, 10),
        AT(1, 5, 5), ARC(1, r, 2 * r, CONVEX, r, r, r), AT(1, 0, 5),
        AT(2, 5, 5), ARC(2, 0, r, CONVEX, r, r, r), AT(2, 5, 0),
        AT(3, 5, 5), ARC(3, r, 0, CONVEX, r, r, r), AT(3, 10, 5)
    };
    ck_assert_int_eq(checked(rows, COUNT_OF(rows)).outside_edges, 4);
    const struct muslin_corner_spec turned[] = { ARC(3, 2 * r, r, CONVEX, 2 * r, 0, r), AT(3, 5, 0), AT(3, 10, 0) };
    memcpy(rows + 13, turned, sizeof turned);
    ck_check_refuses(rows, MUSLIN_ERR_NOT_TILED, 3);
    const struct muslin_corner_spec halves[] = {
        ARC(OUTLINE, 2 * r, r, CONVEX, r, r, r), ARC(OUTLINE, 0, r, CONVEX, r, r, r),
        ARC(0, 2 * r, r, CONVEX, r, r, r), ARC(0, r, 2 * r, CONVEX, r, r, r), ARC(0, 0, r, CONVEX, r, r, r)
    };
    ck_check_refuses(halves, MUSLIN_ERR_NOT_TILED, 0); /* arcs must match from corner to corner */
}
END_TEST

/* ---- rows and structs ------------------------------------------------------------------------------------------- */

START_TEST(the_outline_comes_first_and_pieces_without_gaps)
{
    struct muslin_corner_spec rows[HOUSE_ROWS];
    struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
    struct muslin_problem problem = PROBLEM;
    memcpy(rows, house, sizeof rows);
    rows[4].piece = 1;
    ck_check_refuses(rows, MUSLIN_ERR_SHAPE, 4);
    memcpy(rows, house, sizeof rows);
    rows[8].piece = 0;
    rows[7].piece = 1;
    ck_check_refuses(rows, MUSLIN_ERR_SHAPE, 8);
    rows[0].piece = -2;
    ck_check_refuses(rows, MUSLIN_ERR_SHAPE, 0);
    ck_status(muslin_shape_check(house + 4, sizeof house[0], HOUSE_ROWS - 4, &shape, &problem), MUSLIN_ERR_SHAPE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, MUSLIN_SHAPE_OUTLINE);
    ck_status(muslin_shape_check(house, sizeof house[0], 4, &shape, &problem), MUSLIN_ERR_SHAPE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECE);
    ck_assert_int_eq(problem.value, MUSLIN_SHAPE_OUTLINE);
    ck_assert_int_eq(problem.limit, 0);
}
END_TEST

START_TEST(there_is_a_least_and_a_most_of_rows)
{
    struct muslin_shape shape = { .size = (uint32_t)sizeof shape };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_shape_check(house, sizeof house[0], 0, &shape, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CORNERS);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, 1);
    ck_status(muslin_shape_check(house, sizeof house[0], MUSLIN_SHAPE_CORNERS_MAX + 1, &shape, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.value, MUSLIN_SHAPE_CORNERS_MAX + 1);
    ck_assert_int_eq(problem.limit, MUSLIN_SHAPE_CORNERS_MAX);
    ck_status(muslin_shape_check(NULL, sizeof house[0], HOUSE_ROWS, &shape, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_shape_check(house, sizeof house[0] - 1, HOUSE_ROWS, &shape, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROW_SIZE);
    ck_status(muslin_shape_check(house, 4097, HOUSE_ROWS, &shape, &problem), MUSLIN_ERR_STRUCT_SIZE);
}
END_TEST

/* The most corners there may be: a comb of upright strips, 255 pieces of four corners beside the outline's four. */
START_TEST(a_unit_may_have_as_many_corners_as_the_limit_says)
{
    static struct muslin_corner_spec rows[MUSLIN_SHAPE_CORNERS_MAX];
    const int64_t square[] = { 0, 0, 255, 9 };
    put_rectangle(rows, OUTLINE, square);
    for (int32_t i = 0; i < 255; i++) {
        const int64_t strip[] = { i, 0, i + 1, 9 };
        put_rectangle(rows + 4 + 4 * i, i, strip);
    }
    struct muslin_shape shape = checked(rows, MUSLIN_SHAPE_CORNERS_MAX);
    ck_assert_int_eq(shape.pieces, 255);
    ck_assert_int_eq(shape.outside_edges, 2 * 255 + 2);
}
END_TEST

/* The first row of a unit of one square, with two more behind it, as a spec whose rules can be tried. */
static muslin_status call_check(const void *spec, void *out, struct muslin_problem *problem)
{
    struct {
        union roomy rows[8];
    } drawing;
    const struct muslin_corner_spec square[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 90, 0), CORNER(OUTLINE, 90, 90), CORNER(OUTLINE, 0, 90),
        CORNER(0, 0, 0), CORNER(0, 90, 0), CORNER(0, 90, 90), CORNER(0, 0, 90)
    };
    if (spec == NULL)
        return muslin_shape_check(NULL, 4096, 8, out, problem);
    memset(&drawing, 0, sizeof drawing);
    for (size_t i = 0; i < 8; i++)
        memcpy((unsigned char *)&drawing + i * 4096, &square[i], sizeof square[i]);
    memcpy(&drawing, spec, sizeof square[0]);
    const uint32_t *head = spec;
    for (uint32_t at = sizeof square[0]; at < head[0] && at < 4096; at++)
        ((unsigned char *)&drawing)[at] = ((const unsigned char *)spec)[at];
    return muslin_shape_check((const struct muslin_corner_spec *)(const void *)&drawing, 4096, 8, out, problem);
}
static const struct muslin_corner_spec good_row = CORNER(OUTLINE, 0, 0);
static const struct ruled check = RULED(call_check, good_row, muslin_shape);

START_TEST(rows_and_answer_keep_the_rules_of_structs)
{
    ck_struct_rules(&check);
}
END_TEST

START_TEST(a_row_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_corner_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS),
        OUTSIDE(muslin_corner_spec, x, 0, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_PLACE),
        OUTSIDE(muslin_corner_spec, y, 0, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_PLACE),
        OUTSIDE(muslin_corner_spec, allowance, 0, MUSLIN_SHAPE_SEAM_MAX, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_corner_spec, take_up, 0, MUSLIN_SHAPE_SEAM_MAX, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_corner_spec, centre_x, 0, 0, MUSLIN_ARG_CENTRE),
        OUTSIDE(muslin_corner_spec, centre_y, 0, 0, MUSLIN_ARG_CENTRE),
        OUTSIDE(muslin_corner_spec, radius, 0, 0, MUSLIN_ARG_RADIUS),
        NOT_A_CHOICE(muslin_corner_spec, tip, 4, MUSLIN_ARG_CORNER_TIP),
        NOT_A_CHOICE(muslin_corner_spec, curve, 3, MUSLIN_ARG_CURVE),
        REFUSAL(muslin_corner_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        REFUSAL(muslin_corner_spec, piece, -2, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE),
        REFUSAL(muslin_corner_spec, piece, 1, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE),
    };
    ck_refusals_at(&check, 0, refusals, COUNT_OF(refusals));
}
END_TEST

static muslin_status call_check_arc(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_corner_spec rows[3];
    rows[0] = *(const struct muslin_corner_spec *)spec;
    return muslin_shape_check(rows, sizeof rows[0], 1, out, problem);
}
static const struct muslin_corner_spec good_arc = ARC(OUTLINE, 0, 0, CONVEX, 0, 0, 9);
static const struct ruled check_arc = RULED(call_check_arc, good_arc, muslin_shape);

START_TEST(an_arc_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_corner_spec, centre_x, -MUSLIN_SHAPE_SIZE_MAX, 2 * MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_CENTRE),
        OUTSIDE(muslin_corner_spec, centre_y, -MUSLIN_SHAPE_SIZE_MAX, 2 * MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_CENTRE),
        OUTSIDE(muslin_corner_spec, radius, 1, MUSLIN_SHAPE_SIZE_MAX, MUSLIN_ARG_RADIUS),
    };
    ck_refusals_at(&check_arc, 0, refusals, COUNT_OF(refusals));
}
END_TEST

INIT_CALL(corner)

START_TEST(a_row_starts_as_its_macro_says)
{
    const struct muslin_corner_spec initial = MUSLIN_CORNER_SPEC_INIT;
    ck_init_rules(init_corner, &initial, (uint32_t)sizeof initial);
    struct muslin_corner_spec corner;
    /* Example: muslin_corner_spec_init(&corner, sizeof corner) gives a straight edge with a 1/4 in allowance. */
    ck_ok(muslin_corner_spec_init(&corner, sizeof corner));
    ck_assert_int_eq(corner.curve, MUSLIN_CURVE_STRAIGHT);
    ck_assert_int_eq(corner.allowance, IN(0, 1, 4));
}
END_TEST

START_TEST(a_square_of_two_triangles)
{
    const struct muslin_corner_spec rows[] = {
        AT(OUTLINE, 0, 0), AT(OUTLINE, 6, 0), AT(OUTLINE, 6, 6), AT(OUTLINE, 0, 6),
        AT(0, 0, 0), AT(0, 6, 0), AT(0, 6, 6), AT(1, 0, 0), AT(1, 6, 6), AT(1, 0, 6)
    };
    /* Example: a 6 in square of two triangles: 2 pieces, 4 edges outside and 2 inside, 6 by 6 in finished. */
    struct muslin_shape shape = checked(rows, COUNT_OF(rows));
    ck_assert_int_eq(shape.pieces, 2);
    ck_assert_int_eq(shape.outside_edges, 4);
    ck_assert_int_eq(shape.inside_edges, 2);
    ck_assert_int_eq(shape.finished_width, WHOLE_IN(6));
    ck_assert_int_eq(shape.finished_height, WHOLE_IN(6));
}
END_TEST

Suite *shape_suite(void)
{
    Suite *suite = suite_create("shape");
    TCase *unit = tcase_create("unit");
    tcase_set_timeout(unit, 60);
    tcase_add_test(unit, a_house_of_five_pieces_fills_its_square);
    tcase_add_test(unit, the_house_s_areas_add_up);
    tcase_add_test(unit, the_house_is_cut_as_everyone_cuts_it);
    tcase_add_test(unit, the_house_s_outside_edges_get_the_straight_grain);
    tcase_add_test(unit, a_gap_an_overlap_and_a_piece_outside_are_named_with_their_edge);
    tcase_add_test(unit, a_piece_with_a_bay_is_its_own_outline);
    tcase_add_test(unit, edges_in_line_with_the_outline_are_outside_only_where_they_lie_on_it);
    tcase_add_test(unit, a_house_with_something_wrong_is_not_filled);
    tcase_add_test(unit, a_quarter_disc_and_its_background_fill_the_square);
    tcase_add_test(unit, arcs_meet_only_the_same_arc);
    tcase_add_test(unit, a_disc_is_as_wide_as_its_diameter);
    tcase_add_test(unit, a_piece_of_a_disc_reaches_as_far_as_its_arc);
    tcase_add_test(unit, half_a_disc_reaches_no_farther_than_its_corners);
    tcase_add_test(unit, a_disc_of_four_quarters);
    tcase_add_test(unit, the_outline_comes_first_and_pieces_without_gaps);
    tcase_add_test(unit, there_is_a_least_and_a_most_of_rows);
    tcase_add_test(unit, rows_and_answer_keep_the_rules_of_structs);
    tcase_add_test(unit, a_row_refuses_what_lies_outside_its_ranges);
    tcase_add_test(unit, an_arc_refuses_what_lies_outside_its_ranges);
    tcase_add_test(unit, a_row_starts_as_its_macro_says);
    tcase_add_test(unit, a_square_of_two_triangles);
    suite_add_tcase(suite, unit);
    suite_add_tcase(suite, shape_ring_case());
    suite_add_tcase(suite, shape_template_case());
    suite_add_tcase(suite, shape_piece_case());
    suite_add_tcase(suite, shape_curve_case());
    return suite;
}

/* What takes longer. */
Suite *shape_long_suite(void);

Suite *shape_long_suite(void)
{
    Suite *suite = suite_create("shape_long");
    TCase *many = tcase_create("many");
    tcase_set_timeout(many, 60);
    tcase_add_test(many, two_rectangles_fill_a_square_when_every_cell_says_so);
    tcase_add_test(many, a_unit_may_have_as_many_corners_as_the_limit_says);
    suite_add_tcase(suite, many);
    return suite;
}
