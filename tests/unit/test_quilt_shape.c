/* test_quilt_shape.c - the caller's own shapes as parts of a quilt: what one takes, and what it refuses.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *quilt_shape_suite(void);

static void ck_shape_refused(struct sewn *s, const struct muslin_corner_spec *rows, size_t n, size_t pieces,
                             muslin_status status, int32_t argument, int64_t at)
{
    const struct muslin_part_counts before = counts_of(s->quilt);
    struct muslin_problem problem = PROBLEM;
    muslin_id id = -7;
    ck_status(try_shape(s, rows, n, pieces, 0, 0, &id, &problem), status);
    ck_assert_int_eq(problem.status, status);
    ck_assert_msg(problem.argument == argument, "%s", problem.text);
    ck_assert_int_eq(problem.at, at);
    if (status == MUSLIN_ERR_SHAPE && argument == MUSLIN_ARG_PIECE)
        ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(id, -7);
    ck_same_parts(s->quilt, &before);
}

START_TEST(equal_shapes_are_one_node)
{
    struct sewn s;
    begin_sewing(&s);
    /* Example: a square with one corner cut off on the slant. */
    struct muslin_corner_spec rows[] = SLANT_CORNER;
    muslin_id first = shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0);
    rows[4].allowance = 0; /* not looked at */
    rows[5].tip = MUSLIN_CORNER_TIP_BLUNT;
    ck_assert_int_eq(shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0), first);
    ck_assert_int_ne(shape_of(&s, rows, COUNT_OF(rows), 2, s.two, 0), first);
    struct muslin_node node = { .size = (uint32_t)sizeof node };
    ck_ok(muslin_quilt_node(s.quilt, first, &node, NULL));
    ck_assert_int_eq(node.kind, MUSLIN_NODE_SHAPE);
    ck_assert_int_eq(node.children, 0);
    end_sewing(&s);
}
END_TEST

START_TEST(newer_rows_are_read_at_their_stride)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    struct {
        struct muslin_corner_spec corner;
        int64_t newer;
    } wide[COUNT_OF(rows)];
    const muslin_id fabrics[] = { s.blue, s.white };
    muslin_id id = 0;
    for (size_t i = 0; i < COUNT_OF(rows); i++) {
        wide[i].corner = rows[i];
        wide[i].corner.size = (uint32_t)sizeof wide[i];
        wide[i].newer = 0;
    }
    ck_ok(muslin_quilt_shape(s.quilt, &wide[0].corner, sizeof wide[0], COUNT_OF(wide), fabrics, 2, 0, 0, &id, NULL));
    ck_assert_int_eq(id, shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0));
    end_sewing(&s);
}
END_TEST

START_TEST(a_drawing_that_is_no_unit_is_refused)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec good[] = SLANT_CORNER;
    struct muslin_corner_spec rows[] = SLANT_CORNER;
    const size_t n = COUNT_OF(rows);
    ck_shape_refused(&s, good, 0, 2, MUSLIN_ERR_RANGE, MUSLIN_ARG_CORNERS, 0);
    ck_shape_refused(&s, NULL, n, 2, MUSLIN_ERR_NULL, MUSLIN_ARG_ROWS, 0);
    rows[11].x = 8128; /* laps over piece 0 along the outline's upper edge */
    ck_shape_refused(&s, rows, n, 2, MUSLIN_ERR_NOT_TILED, MUSLIN_ARG_CORNER_ROW, 2);
    rows[11] = good[11];
    rows[9].flags = 1;
    ck_shape_refused(&s, rows, n, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_ROWS, 9);
    rows[9] = good[9];
    ck_shape_refused(&s, rows, n, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, 0);
    ck_shape_refused(&s, rows, n, 3, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, 0);
    ck_shape_refused(&s, rows, n, SIZE_MAX, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, 0);
    end_sewing(&s);
}
END_TEST

/* A disc's quarter in a square: good for shape.h, not here. */
START_TEST(arcs_are_refused)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_corner_spec inside[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 3000, 0), CORNER(OUTLINE, 3000, 3000), CORNER(OUTLINE, 0, 3000),
        CORNER(0, 0, 0), CORNER(0, 2000, 0), CORNER(0, 0, 2000),
        CORNER(1, 2000, 0), CORNER(1, 3000, 0), CORNER(1, 3000, 3000), CORNER(1, 0, 3000), CORNER(1, 0, 2000)
    };
    inside[5].curve = MUSLIN_CURVE_CONVEX;
    inside[5].radius = 2000;
    inside[11].curve = MUSLIN_CURVE_CONCAVE;
    inside[11].radius = 2000;
    ck_shape_refused(&s, inside, COUNT_OF(inside), 2, MUSLIN_ERR_SHAPE, MUSLIN_ARG_CURVE, 5);
    struct muslin_corner_spec outside[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 2000, 0), CORNER(OUTLINE, 0, 2000),
        CORNER(0, 0, 0), CORNER(0, 2000, 0), CORNER(0, 0, 2000)
    };
    outside[1].curve = outside[4].curve = MUSLIN_CURVE_CONVEX;
    outside[1].radius = outside[4].radius = 2000;
    ck_shape_refused(&s, outside, COUNT_OF(outside), 1, MUSLIN_ERR_SHAPE, MUSLIN_ARG_CURVE, 1);
    end_sewing(&s);
}
END_TEST

START_TEST(the_outline_is_an_upright_rectangle_from_the_origin)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec triangle[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 3000, 0), CORNER(OUTLINE, 3000, 3000),
        CORNER(0, 0, 0), CORNER(0, 3000, 0), CORNER(0, 3000, 3000)
    };
    const struct muslin_corner_spec moved[] = {
        CORNER(OUTLINE, 10, 0), CORNER(OUTLINE, 3000, 0), CORNER(OUTLINE, 3000, 3000), CORNER(OUTLINE, 10, 3000),
        CORNER(0, 10, 0), CORNER(0, 3000, 0), CORNER(0, 3000, 3000), CORNER(0, 10, 3000)
    };
    const struct muslin_corner_spec raised[] = {
        CORNER(OUTLINE, 0, 10), CORNER(OUTLINE, 3000, 10), CORNER(OUTLINE, 3000, 3000), CORNER(OUTLINE, 0, 3000),
        CORNER(0, 0, 10), CORNER(0, 3000, 10), CORNER(0, 3000, 3000), CORNER(0, 0, 3000)
    };
    const struct muslin_corner_spec middles[] = { /* a corner more, in the middle of a side, makes no difference */
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 1000, 0), CORNER(OUTLINE, 3000, 0), CORNER(OUTLINE, 3000, 3000),
        CORNER(OUTLINE, 0, 3000),
        CORNER(0, 0, 0), CORNER(0, 3000, 0), CORNER(0, 3000, 3000), CORNER(0, 0, 3000)
    };
    ck_shape_refused(&s, triangle, COUNT_OF(triangle), 1, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, 0);
    ck_shape_refused(&s, moved, COUNT_OF(moved), 1, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, 0);
    ck_shape_refused(&s, raised, COUNT_OF(raised), 1, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, 0);
    ck_assert_int_ne(shape_of(&s, middles, COUNT_OF(middles), 1, 0, 0), 0);
    end_sewing(&s);
}
END_TEST

/* A square whose lower side carries the corners beyond four. */
static size_t many_corners(struct muslin_corner_spec *rows, int32_t corners)
{
    const struct muslin_corner_spec square[] = { CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 6400, 0),
                                                 CORNER(OUTLINE, 6400, 6400), CORNER(OUTLINE, 0, 6400) };
    size_t n = 0;
    for (size_t i = 0; i < 4; i++)
        rows[n++] = square[i];
    for (int32_t i = 0; i < corners - 3; i++) {
        rows[n] = square[0];
        rows[n].x = 100 * i;
        rows[n++].piece = 0;
    }
    for (size_t i = 1; i < 4; i++) {
        rows[n] = square[i];
        rows[n++].piece = 0;
    }
    return n;
}

START_TEST(a_piece_has_at_most_so_many_corners)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_corner_spec rows[64];
    size_t n = many_corners(rows, MUSLIN_QUILT_CORNERS_MAX);
    ck_assert_int_ne(shape_of(&s, rows, n, 1, 0, 0), 0);
    n = many_corners(rows, MUSLIN_QUILT_CORNERS_MAX + 1);
    ck_shape_refused(&s, rows, n, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_CORNERS, 4 + MUSLIN_QUILT_CORNERS_MAX);
    end_sewing(&s);
}
END_TEST

START_TEST(foreign_ids_are_refused_where_they_stand)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    const size_t n = COUNT_OF(rows);
    const muslin_id fabrics[] = { s.blue, s.white };
    const muslin_id wrong[] = { s.blue, s.two };
    struct muslin_problem problem = PROBLEM;
    muslin_id id = -7;
    ck_status(muslin_quilt_shape(s.quilt, rows, sizeof *rows, n, wrong, 2, 0, 0, &id, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FABRIC);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_quilt_shape(s.quilt, rows, sizeof *rows, n, fabrics, 2, s.blue, 0, &id, &problem),
              MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_quilt_shape(s.quilt, rows, sizeof *rows, n, fabrics, 2, 0, s.blue, &id, &problem),
              MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_quilt_shape(NULL, rows, sizeof *rows, n, fabrics, 2, 0, 0, &id, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_shape(s.quilt, rows, sizeof *rows, n, NULL, 2, 0, 0, &id, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_quilt_shape(s.quilt, rows, sizeof *rows, n, fabrics, 2, 0, 0, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(id, -7);
    end_sewing(&s);
}
END_TEST

START_TEST(every_allocation_of_a_shape_may_fail)
{
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    size_t round = 1;
    int failed = 1;
    for (; failed; round++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_part_counts before = counts_of(s.quilt);
        muslin_id id = -7;
        fail_at(&s, round);
        struct muslin_problem said = PROBLEM;
        muslin_status status = try_shape(&s, rows, COUNT_OF(rows), 2, 0, 0, &id, &said);
        failed = s.memory.has_failed;
        ck_status(status, failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (failed) {
            ck_says_no_memory(&said, 0);
            ck_assert_int_eq(id, -7);
            ck_same_parts(s.quilt, &before);
        }
        fail_at(&s, 0);
        ck_ok(try_shape(&s, rows, COUNT_OF(rows), 2, 0, 0, &id, NULL));
        end_sewing(&s);
    }
    ck_assert_uint_gt(round, 2);
}
END_TEST

Suite *quilt_shape_suite(void)
{
    Suite *suite = suite_create("quilt_shape");
    TCase *tests = tcase_create("own shapes of a quilt");
    tcase_add_test(tests, equal_shapes_are_one_node);
    tcase_add_test(tests, newer_rows_are_read_at_their_stride);
    tcase_add_test(tests, a_drawing_that_is_no_unit_is_refused);
    tcase_add_test(tests, arcs_are_refused);
    tcase_add_test(tests, the_outline_is_an_upright_rectangle_from_the_origin);
    tcase_add_test(tests, a_piece_has_at_most_so_many_corners);
    tcase_add_test(tests, foreign_ids_are_refused_where_they_stand);
    tcase_add_test(tests, every_allocation_of_a_shape_may_fail);
    suite_add_tcase(suite, tests);
    return suite;
}
