/* test_solution_point.c - fields on point with sashes, solved, drawn, cut, sewn and pressed.
 *
 * SPDX-License-Identifier: MIT
 *
 * Blocks of B = 6 in = 48768 with sashes of w = 1 in = 8128, so P = B + w = 56896; E = 4064, e = 2032. Corners are at
 * whole sums of B and w along u and v, see lib/solution_diagonal.h, and were worked out from those with 60 decimal
 * digits (Python's decimal): B / sqrt 2 = 34484.18, w / sqrt 2 = 5747.36. */
#include "test_solution_along.h"
#include "test_solution_cuts.h"

Suite *solution_point_suite(void);

enum { ROW_ROOM = 100, CORNER_ROOM = 500, BLOCKS_ROOM = 40, SEAM_ROOM = 200 };
enum {
    PLAIN = MUSLIN_POINT_LAYOUT_PLAIN,
    OUTER = MUSLIN_POINT_LAYOUT_SASH_OUTER,
    CUT = MUSLIN_POINT_LAYOUT_SASH_CUT,
    INNER = MUSLIN_POINT_LAYOUT_SASH_INNER
};

struct drawn {
    size_t count;
    struct muslin_outline rows[ROW_ROOM];
    struct muslin_outline_corner corners[CORNER_ROOM];
};
static struct drawn drawn;
static struct drawn raw;

/* A quilt with fabrics for sashes and cornerstones. */
struct pointed {
    struct sewn s;
    muslin_id sash;
    muslin_id stone;
    muslin_id wide; /* w */
};

static void begin_point(struct pointed *p)
{
    begin_sewing(&p->s);
    p->sash = fabric_of(p->s.quilt, "sash");
    p->stone = fabric_of(p->s.quilt, "stone");
    p->wide = fixed_of(p->s.quilt, WHOLE_IN(1));
}

static muslin_id square_of(struct pointed *p, muslin_len side)
{
    muslin_id measure = fixed_of(p->s.quilt, side);
    return patch_of(p->s.quilt, p->s.blue, measure, measure);
}

static muslin_id field_with(struct pointed *p, int32_t layout, int64_t columns, int64_t rows, const muslin_id *blocks,
                            muslin_id set_off)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id field = 0;
    spec.columns = columns;
    spec.rows = rows;
    spec.side_fabric = p->s.blue;
    spec.corner_fabric = p->s.white;
    spec.set_off = set_off;
    spec.sash = layout == PLAIN ? 0 : p->wide;
    spec.sash_fabric = layout == PLAIN ? 0 : p->sash;
    spec.cornerstone = layout == PLAIN ? 0 : p->stone;
    spec.layout = layout;
    ck_ok(muslin_quilt_diagonal(p->s.quilt, &spec, blocks, (size_t)(columns * rows + (columns - 1) * (rows - 1)),
                                &field, NULL));
    return field;
}

static muslin_id field_of(struct pointed *p, int32_t layout, int64_t columns, int64_t rows, muslin_id block)
{
    muslin_id blocks[BLOCKS_ROOM];
    for (int i = 0; i < BLOCKS_ROOM; i++)
        blocks[i] = block;
    return field_with(p, layout, columns, rows, blocks, 0);
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

static void ck_size(struct pointed *p, int32_t layout, int64_t columns, int64_t rows, muslin_len width,
                    muslin_len height, int64_t patches, int64_t across, int64_t down)
{
    const muslin_id field = field_of(p, layout, columns, rows, square_of(p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p->s.quilt, field);
    const struct muslin_node_size size = size_of(solution, field);
    ck_assert_int_eq(size.finished_width, width);
    ck_assert_int_eq(size.finished_height, height);
    ck_assert_int_eq(size.unfinished_width, width + IN(0, 1, 2));
    ck_assert_int_eq(size.patches, patches);
    ck_assert_int_eq(size.seams_across, across);
    ck_assert_int_eq(size.seams_down, down);
    ck_assert_int_eq(size.exact, 0);
    muslin_solution_free(solution);
}

/* Widths (2 B + 3 w) sqrt 2, 2 (B + w) sqrt 2, (2 B + w) sqrt 2; 5 blocks, 4 triangles and 4 corners, and
 *   outer: 16 sashes, 12 cornerstones
 *   cut:   16 sashes, 4 cornerstones, 8 halves of others
 *   inner: 4 sashes, 8 that end at the edge, 4 cornerstones
 * A line from tip to tip comes from each block into a cornerstone and out of it, two seams each time, and outside. */
START_TEST(each_layout_has_its_size)
{
    struct pointed p;
    begin_point(&p);
    ck_size(&p, OUTER, 2, 2, 172421, 172421, 13 + 16 + 12, 4 * 2 + 2, 4 * 2 + 2);
    ck_size(&p, CUT, 2, 2, 160926, 160926, 13 + 16 + 12, 4 * 2, 4 * 2);
    ck_size(&p, INNER, 2, 2, 149431, 149431, 13 + 4 + 8 + 4, 4 * 2, 4 * 2);
    /* one block: B sqrt 2 = 68968.37; two above each other have two sashes of each side cut off between them */
    ck_size(&p, INNER, 1, 1, 68968, 68968, 1 + 4, 2, 2);
    ck_size(&p, INNER, 1, 2, 68968, 149431, 2 + 2 + 4 + 4 + 1, 4, 6);
    end_sewing(&p.s);
}
END_TEST

static muslin_status solve(struct pointed *p, muslin_id root, struct muslin_problem *problem)
{
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    muslin_status status = muslin_solution_create(p->s.quilt, root, &spec, NULL, 0, 0, NULL, &solution, problem);
    muslin_solution_free(solution);
    return status;
}

START_TEST(a_sash_as_wide_as_the_blocks_leaves_no_triangle)
{
    struct pointed p;
    struct muslin_problem problem = PROBLEM;
    begin_point(&p);
    const muslin_id narrow = field_of(&p, INNER, 2, 2, square_of(&p, WHOLE_IN(1)));
    ck_status(solve(&p, narrow, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(1));
    ck_assert_int_eq(problem.limit, WHOLE_IN(1) + 1);
    ck_assert_int_eq(problem.at, muslin_id_number(narrow));
    ck_ok(solve(&p, field_of(&p, INNER, 2, 2, square_of(&p, WHOLE_IN(1) + 1)), NULL));
    ck_ok(solve(&p, field_of(&p, CUT, 2, 2, square_of(&p, 1)), NULL));
    end_sewing(&p.s);
}
END_TEST

/* Of two fields the second one has sashes of no width, and its root is solved; all layouts, also without whole
 * sashes. */
START_TEST(a_sash_of_no_width_is_named)
{
    struct pointed p;
    struct muslin_problem problem = PROBLEM;
    begin_point(&p);
    const muslin_id six = square_of(&p, WHOLE_IN(6));
    const muslin_id sound = field_of(&p, OUTER, 1, 1, six);
    for (int32_t layout = OUTER; layout <= INNER; layout++) {
        p.wide = measure_of(p.s.quilt, "none", 0);
        const muslin_id unused = field_of(&p, layout, 1, 2, six);
        const muslin_id field = field_of(&p, layout, 1, 1, six);
        const muslin_id both[] = { sound, field };
        ck_status(solve(&p, join_of(p.s.quilt, MUSLIN_AXIS_ACROSS, both, 2), &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_SASH_WIDTH);
        ck_assert_int_eq(problem.at, muslin_id_number(field));
        ck_assert_int_eq(problem.value, 0);
        ck_assert_str_eq(problem.text, "Sash width (finished) is 0 in, but must be more than 0 in.");
        ck_status(solve(&p, unused, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.at, muslin_id_number(unused));
    }
    end_sewing(&p.s);
}
END_TEST

/* A sash as wide as a sum that has no value: that is told first. */
START_TEST(a_sash_that_is_too_large_is_told_as_a_measure)
{
    struct pointed p;
    struct muslin_problem problem = PROBLEM;
    begin_point(&p);
    p.wide = times_of(p.s.quilt, fixed_of(p.s.quilt, MUSLIN_SIZE_MAX), 1000);
    ck_status(solve(&p, field_of(&p, OUTER, 1, 1, square_of(&p, WHOLE_IN(6))), &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_ne(problem.argument, MUSLIN_ARG_SASH_WIDTH);
    end_sewing(&p.s);
}
END_TEST

static struct muslin_solution_total totals_of(const struct muslin_solution *solution)
{
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    return totals;
}

/* A block too large, and one whose left edge has no allowance: sashes have the quilt's. */
START_TEST(blocks_are_held_against_the_sashes)
{
    struct pointed p;
    struct muslin_misfit rows[4];
    size_t count = 0;
    begin_point(&p);
    const muslin_id six = square_of(&p, WHOLE_IN(6));
    struct muslin_quilt_patch_spec bare = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id blocks[5] = { six, square_of(&p, WHOLE_IN(7)), six, six, six };
    bare.fabric = p.s.blue;
    bare.width = bare.height = fixed_of(p.s.quilt, WHOLE_IN(6));
    bare.left = fixed_of(p.s.quilt, 0);
    ck_ok(muslin_quilt_patch(p.s.quilt, &bare, &blocks[4], NULL));
    const muslin_id field = field_with(&p, CUT, 2, 2, blocks, 0);
    struct muslin_solution *solution = solved(p.s.quilt, field);
    ck_ok(muslin_solution_misfits(solution, rows, sizeof rows[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(rows[0].kind, MUSLIN_MISFIT_NOT_SQUARE);
    ck_assert_int_eq(rows[0].second, 1);
    ck_assert_int_eq(rows[1].kind, MUSLIN_MISFIT_ALLOWANCE);
    ck_assert_int_eq(rows[1].first, -1);
    ck_assert_int_eq(rows[1].second, 4);
    ck_assert_int_eq(rows[1].first_size, MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(rows[1].second_size, 0);
    ck_assert_int_eq(totals_of(solution).misfits, 2);
    muslin_solution_free(solution);
    end_sewing(&p.s);
}
END_TEST

static void ck_term(const struct muslin_term *term, int32_t kind, muslin_id id, int64_t times, muslin_len value,
                    muslin_len sum)
{
    ck_assert_int_eq(term->kind, kind);
    ck_assert_int_eq(term->id, id);
    ck_assert_int_eq(term->times, times);
    ck_assert_int_eq(term->value, value);
    ck_assert_int_eq(term->sum, sum);
}

/* 2 B sqrt 2 = 137936.73; all is rounded once, so the sashes are what that leaves. */
START_TEST(the_size_is_explained)
{
    struct pointed p;
    struct muslin_term terms[6];
    size_t count = 0;
    begin_point(&p);
    const muslin_id six = square_of(&p, WHOLE_IN(6));
    const muslin_id field = field_of(&p, CUT, 2, 1, six);
    struct muslin_solution *solution = solved(p.s.quilt, field);
    ck_ok(muslin_solution_explain(solution, field, MUSLIN_AXIS_ACROSS, terms, sizeof terms[0], 6, &count, NULL));
    ck_assert_uint_eq(count, 4);
    ck_term(&terms[0], MUSLIN_TERM_DIAGONAL, six, 2, 137937, 137937);
    ck_term(&terms[1], MUSLIN_TERM_DIAGONAL, p.wide, 2, 22989, 160926);
    muslin_solution_free(solution);
    muslin_id blocks[2] = { six, six };
    const muslin_id floating = field_with(&p, OUTER, 1, 2, blocks, p.s.two);
    solution = solved(p.s.quilt, floating);
    /* B sqrt 2 = 68968.37, with 2 w sqrt 2 91957.83 */
    ck_ok(muslin_solution_explain(solution, floating, MUSLIN_AXIS_ACROSS, terms, sizeof terms[0], 6, &count, NULL));
    ck_assert_uint_eq(count, 5);
    ck_term(&terms[0], MUSLIN_TERM_DIAGONAL, six, 1, 68968, 68968);
    ck_term(&terms[1], MUSLIN_TERM_DIAGONAL, p.wide, 2, 22990, 91958);
    ck_term(&terms[2], MUSLIN_TERM_MEASURE, p.s.two, 2, WHOLE_IN(4), 91958 + WHOLE_IN(4));
    muslin_solution_free(solution);
    const muslin_id single = field_of(&p, INNER, 1, 2, six);
    solution = solved(p.s.quilt, single);
    ck_ok(muslin_solution_explain(solution, single, MUSLIN_AXIS_ACROSS, terms, sizeof terms[0], 6, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_term(&terms[0], MUSLIN_TERM_DIAGONAL, six, 1, 68968, 68968);
    muslin_solution_free(solution);
    end_sewing(&p.s);
}
END_TEST

/* ---- drawn ------------------------------------------------------------------------------------------------------ */

static void draw_to(struct drawn *into, int32_t stage, const struct muslin_solution *solution, muslin_id node)
{
    size_t given = 0;
    memset(into, 0, sizeof *into);
    ck_ok(muslin_solution_outlines(solution, node, stage, 0, into->rows, sizeof into->rows[0], ROW_ROOM, into->corners,
                                   sizeof into->corners[0], CORNER_ROOM, &into->count, &given, NULL));
    ck_assert_uint_eq(given, into->count);
}

static void draw_all(const struct muslin_solution *solution, muslin_id node)
{
    draw_to(&drawn, MUSLIN_STAGE_FINISHED, solution, node);
}

/* Corners x, y and the number of the seam along the edge that starts there, -1 the outside. */
static void ck_outline(size_t row, muslin_id fabric, int32_t on_point, int64_t n, const int64_t (*expected)[3])
{
    ck_assert_int_eq(drawn.rows[row].corners, n);
    ck_assert_int_eq(drawn.rows[row].fabric, fabric);
    ck_assert_int_eq(drawn.rows[row].on_point, on_point);
    ck_assert_int_eq(drawn.rows[row].quarter_turns, 0);
    for (int64_t i = 0; i < n; i++) {
        const struct muslin_outline_corner *corner = &drawn.corners[drawn.rows[row].first_corner + i];
        const int same = corner->x == expected[i][0] && corner->y == expected[i][1];
        const int64_t seam = corner->seam_node == 0 ? -1 : corner->seam;
        ck_assert_msg(same && seam == expected[i][2], "outline %zu corner %d: %d %d, seam %d", row, (int)i,
                      (int)corner->x, (int)corner->y, (int)seam);
    }
}

/* Seams of 2 x 2: of 25 parts, 5 blocks, 16 sashes, 4 cornerstones, all but the sash at the first block's left, 0 ..
 * 23; of half cornerstones at the right and the bottom 24 .. 27; of triangles 28 and 29; below rows 30 .. 35;
 * corners. */
START_TEST(the_edge_cuts_cornerstones_in_half)
{
    struct pointed p;
    begin_point(&p);
    const muslin_id field = field_of(&p, CUT, 2, 2, square_of(&p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p.s.quilt, field);
    draw_all(solution, field);
    ck_assert_uint_eq(drawn.count, 16 + 25);
    /* left of the second block's left sash; below the row over its triangle, which is one of sashes */
    const int64_t top[][3] = { { 80463, 126442, 8 }, { 114947, 160926, -1 }, { 45979, 160926, 31 } };
    ck_outline(0, p.s.blue, 0, 3, top);
    const int64_t corner[][3] = { { 0, 126442, 36 }, { 34484, 160926, -1 }, { 0, 160926, -1 } };
    ck_outline(4, p.s.white, 0, 3, corner);
    const int64_t right[][3] = { { 160926, 126442, 24 }, { 155179, 120695, 30 }, { 160926, 114947, -1 } };
    ck_outline(8, p.stone, 0, 3, right);
    const int64_t above[][3] = { { 40232, 155179, 6 }, { 45979, 160926, -1 }, { 34484, 160926, 32 } };
    ck_outline(12, p.stone, 0, 3, above);
    ck_assert_int_eq(drawn.rows[12].region, 13);
    ck_assert_int_eq(drawn.rows[16].on_point, 1);
    muslin_solution_free(solution);
    end_sewing(&p.s);
}
END_TEST

START_TEST(pieces_along_the_sides_are_those_drawn_there)
{
    const int32_t layouts[] = { OUTER, CUT, INNER };
    struct pointed p;
    begin_point(&p);
    for (int i = 0; i < 3; i++)
        for (int64_t columns = 1; columns <= 3; columns++)
            for (int64_t rows = 1; rows <= 3; rows++)
                ck_along(&p.s, field_of(&p, layouts[i], columns, rows, square_of(&p, WHOLE_IN(6))));
    end_sewing(&p.s);
}
END_TEST

/* Where sashes end at the edge they are narrower than the blocks, of 1 in: one of 1 in and a tick is the smallest. */
START_TEST(sashes_within_are_narrower_than_blocks)
{
    const struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct pointed p;
    begin_point(&p);
    for (muslin_len over = -1; over <= 1; over++) {
        const muslin_id field = field_of(&p, INNER, 2, 2, square_of(&p, WHOLE_IN(1) + over));
        struct muslin_solution *solution = NULL;
        struct muslin_problem problem = { .size = (uint32_t)sizeof problem };
        const muslin_status status =
            muslin_solution_create(p.s.quilt, field, &solve, NULL, 0, 0, NULL, &solution, &problem);
        muslin_solution_free(solution);
        ck_status(status, over == 1 ? MUSLIN_OK : MUSLIN_ERR_RANGE);
        if (over == 1)
            continue;
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
        ck_assert_int_eq(problem.at, muslin_id_number(field));
        ck_assert_int_eq(problem.value, WHOLE_IN(1) + over);
        ck_assert_int_eq(problem.limit, WHOLE_IN(1) + 1);
    }
    end_sewing(&p.s);
}
END_TEST

/* Seams of 2 x 2: of 13 parts, 5 blocks, 4 sashes round the alternate, 4 cornerstones, all but the first block, 0 ..
 * 11; of standing sashes 12 .. 15, of lying ones at the right and the bottom 16, 17; of triangles 18, 19; below rows
 * 20 .. 23; corners. */
START_TEST(the_edge_cuts_sashes_off)
{
    struct pointed p;
    begin_point(&p);
    const muslin_id field = field_of(&p, INNER, 2, 2, square_of(&p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p.s.quilt, field);
    draw_all(solution, field);
    ck_assert_uint_eq(drawn.count, 16 + 13);
    const int64_t top[][3] = { { 74716, 120695, 12 }, { 103453, 149431, -1 }, { 45979, 149431, 20 } };
    ck_outline(0, p.s.blue, 0, 3, top);
    const int64_t corner[][3] = { { 0, 114947, 24 }, { 34484, 149431, -1 }, { 0, 149431, -1 } };
    ck_outline(4, p.s.white, 0, 3, corner);
    const int64_t standing[][3] = { { 80463, 114947, 0 }, { 114947, 149431, -1 }, { 103453, 149431, 12 },
                                    { 74716, 120695, 20 } };
    ck_outline(8, p.sash, 1, 4, standing);
    const int64_t lying[][3] = { { 68968, 114947, 8 }, { 74716, 120695, 20 }, { 45979, 149431, -1 },
                                 { 34484, 149431, 21 } };
    ck_outline(14, p.sash, 1, 4, lying);
    for (size_t row = 16; row < drawn.count; row++) {
        ck_assert_int_eq(drawn.rows[row].on_point, 1); /* blocks as well */
        ck_assert_int_eq(drawn.rows[row].quarter_turns, 0);
    }
    muslin_solution_free(solution);
    end_sewing(&p.s);
}
END_TEST

/* A triangle's leg lies along the sash and the cornerstone above it (or, at the left, below): the cornerstone names
 * that seam. Seams of 2 x 2 as where they are cut in half, but that those cornerstones are parts. */
START_TEST(a_triangle_lies_along_a_sash_and_a_cornerstone)
{
    struct pointed p;
    begin_point(&p);
    const muslin_id field = field_of(&p, OUTER, 2, 2, square_of(&p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p.s.quilt, field);
    draw_all(solution, field);
    ck_assert_uint_eq(drawn.count, 8 + 33);
    const int64_t top[][3] = { { 86210, 132189, 8 }, { 126442, 172421, -1 }, { 45979, 172421, 31 } };
    ck_outline(0, p.s.blue, 0, 3, top);
    const int64_t corner[][3] = { { 0, 126442, 36 }, { 45979, 172421, -1 }, { 0, 172421, -1 } };
    ck_outline(4, p.s.white, 0, 3, corner);
    const int64_t first[][3] = { { 0, 126442, 34 }, { 5747, 120695, 7 }, { 11495, 126442, 33 }, { 5747, 132189, 36 } };
    ck_outline(8 + 31, p.stone, 1, 4, first);
    /* above the second block: left of it the triangle, whose seam is that of the block's left sash */
    const struct muslin_outline_corner *second = &drawn.corners[drawn.rows[8 + 30].first_corner];
    ck_assert_int_eq(second[3].seam, 8);
    ck_assert_int_eq(second[3].seam_node, field);
    /* at the right of the first row's block: left of the triangle there, 28 */
    const struct muslin_outline_corner *right = &drawn.corners[drawn.rows[8 + 25].first_corner];
    ck_assert_int_eq(right[1].seam, 28);
    ck_assert_int_eq(right[3].seam, 24);
    muslin_solution_free(solution);
    end_sewing(&p.s);
}
END_TEST

/* ---- cuts ------------------------------------------------------------------------------------------------------- */

/* As muslin_setting_point() has it: t = 1/2 in, rounded up to 1/8 in. A sash cut off is (1 + 1 / sqrt 2) t + B = 6.854,
 * so 6 7/8 in long, half of them mirror images. */
START_TEST(sashes_that_end_at_the_edge_are_cut_by_their_hand)
{
    static struct listed listed;
    struct pointed p;
    begin_point(&p);
    list_of(&listed, p.s.quilt, field_of(&p, INNER, 2, 2, square_of(&p, WHOLE_IN(6))));
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, p.sash, IN(6, 1, 2), IN(1, 1, 2)), 4, 4, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, p.stone, IN(1, 1, 2), IN(1, 1, 2)), 4, 4, 0);
    int hands = 0;
    for (size_t i = 0; i < listed.cut_count; i++) {
        const struct muslin_solution_cut *cut = &listed.cuts[i];
        if (cut->source != MUSLIN_CUT_SOURCE_MITRED)
            continue;
        hands += cut->hand;
        ck_assert_int_eq(cut->fabric, p.sash);
        ck_assert_int_eq(cut->cut_width, IN(6, 7, 8));
        ck_assert_int_eq(cut->cut_height, IN(1, 1, 2));
        ck_assert_int_eq(cut->surplus_width, IN(6, 7, 8) - 55706); /* 52832 + 4064 / sqrt 2 = 55705.68 */
        ck_assert_int_eq(cut->surplus_height, 0);
        ck_assert_int_eq(cut->angle, 45);
        ck_assert_uint_eq(cut->warnings, MUSLIN_WARN_BIAS_EDGE);
        ck_counts(cut, 4, 4, 0);
    }
    ck_assert_int_eq(hands, 1 + 2);
    ck_assert_uint_eq(totals_of(listed.solution).warnings, MUSLIN_WARN_BIAS_EDGE);
    end_list(&listed);
    /* one block alone has corners at its edges, and no sash */
    list_of(&listed, p.s.quilt, field_of(&p, INNER, 1, 1, square_of(&p, WHOLE_IN(6))));
    ck_assert_uint_eq(totals_of(listed.solution).warnings, 0);
    end_list(&listed);
    list_of(&listed, p.s.quilt, field_of(&p, CUT, 2, 2, square_of(&p, WHOLE_IN(6))));
    ck_assert_uint_eq(totals_of(listed.solution).warnings, 0);
    end_list(&listed);
    end_sewing(&p.s);
}
END_TEST

/* Two side by side have standing ones at the top and the bottom, which rise to the right, and lying ones; in the mirror
 * they rise to the left. */
START_TEST(mirror_images_change_hands)
{
    static struct listed listed;
    struct pointed p;
    begin_point(&p);
    p.sash = printed_fabric(p.s.quilt, "stripes", MUSLIN_PRINT_ONE_WAY);
    const muslin_id field = field_of(&p, INNER, 2, 1, square_of(&p, WHOLE_IN(6)));
    for (int32_t mirrored = 0; mirrored <= 1; mirrored++) {
        list_of(&listed, p.s.quilt, mirrored ? mirror_of(p.s.quilt, field) : field);
        const struct muslin_solution_cut *standing =
            cut_sized(&listed, MUSLIN_CUT_SOURCE_MITRED, p.sash, IN(1, 1, 2), IN(6, 7, 8));
        const struct muslin_solution_cut *lying =
            cut_sized(&listed, MUSLIN_CUT_SOURCE_MITRED, p.sash, IN(6, 7, 8), IN(1, 1, 2));
        ck_assert_int_eq(standing->hand, 1 + mirrored);
        ck_assert_int_eq(lying->hand, 2 - mirrored);
        ck_turns(standing, 2, 0, 0, 0, 0);
        ck_counts(lying, 2, 2, 0);
        end_list(&listed);
    }
    end_sewing(&p.s);
}
END_TEST

/* w sqrt 2 + (1 + sqrt 2) t = 1.414 + 1.207 = 2.62: squares of 2 5/8 in, cut twice; 8 halves from two. */
START_TEST(half_cornerstones_come_from_squares)
{
    static struct listed listed;
    struct pointed p;
    begin_point(&p);
    list_of(&listed, p.s.quilt, field_of(&p, CUT, 2, 2, square_of(&p, WHOLE_IN(6))));
    const struct muslin_solution_cut *halves =
        cut_sized(&listed, MUSLIN_CUT_SOURCE_SETTING, p.stone, IN(2, 5, 8), IN(2, 5, 8));
    ck_counts(halves, 2, 8, 0);
    ck_assert_int_eq(halves->again, MUSLIN_CUT_AGAIN_TWICE);
    ck_assert_int_eq(halves->grain, MUSLIN_GRAIN_LONG_EDGE);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, p.sash, IN(6, 1, 2), IN(1, 1, 2)), 16, 16, 0);
    ck_counts(cut_sized(&listed, MUSLIN_CUT_SOURCE_PATCH, p.stone, IN(1, 1, 2), IN(1, 1, 2)), 4, 4, 0);
    end_list(&listed);
    end_sewing(&p.s);
}
END_TEST

/* ---- sewn and pressed ------------------------------------------------------------------------------------------- */

static void ck_sewn(struct pointed *p, int32_t layout, int64_t seams, muslin_len sewn, muslin_len longest)
{
    struct muslin_sewing_step rows[4];
    struct muslin_sewing_feed feeds[6];
    size_t count = 0;
    const muslin_id field = field_of(p, layout, 2, 2, square_of(p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p->s.quilt, field);
    ck_ok(muslin_sewing_steps(solution, rows, sizeof rows[0], 4, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_assert_int_eq(rows[0].kind, MUSLIN_SEWING_DIAGONAL);
    ck_assert_int_eq(rows[0].seams, seams);
    ck_assert_int_eq(rows[0].sewn, sewn);
    ck_assert_int_eq(rows[0].seam_longest, longest);
    /* blocks, lying and standing sashes, cornerstones */
    ck_ok(muslin_sewing_feeds(solution, 0, feeds, sizeof feeds[0], 6, &count, NULL));
    ck_assert_uint_eq(count, 4);
    muslin_solution_free(solution);
}

/* An end at the outside is e sqrt 2 longer, another e. With S(l) = l + 2 e, S'(l) = l + e + e sqrt 2 and
 * S''(l) = l + 2 e sqrt 2, each rounded:
 *   cut    blocks and sashes 10 S(B), along triangles 4 S'(B); lying sashes, cornerstones, whole and in half 8 S(w) + 8
 *   S'(w); below
 *          rows S''(P + w), S''(2 P + B), S''(3 P + w) twice; corners 4 S''(B)
 *   inner  2 S'(B) left of blocks beside sashes cut off and 2 S'(B) right of them, 4 S'(B - w) along triangles, 4 S(B),
 *          8 S(w); below rows S''(2 P + B - 2 w), S''(2 P + B) twice; corners 4 S''(B)
 *   outer  10 S(B), 16 S(w), along triangles 4 S'(P); below rows S(P + w), S(3 P + w), S''(3 P + w), all twice; corners
 *          4 S''(B + 2 w) */
START_TEST(seams_have_their_length)
{
    struct pointed p;
    begin_point(&p);
    ck_sewn(&p, CUT, 40, 2010166, 184563);
    ck_sewn(&p, INNER, 28, 1564520, 168307);
    ck_sewn(&p, OUTER, 40, 2126746, 184563);
    end_sewing(&p.s);
}
END_TEST

/* A line at 45 degrees, by what is the same along it: x - y where it rises, else x + y. */
struct slanted {
    int rises;
    double same;
};

static double across_of(const struct slanted *line, const struct muslin_outline_corner *c)
{
    return (double)(line->rises ? c->x - c->y : c->x + c->y);
}

static double along_of(const struct slanted *line, const struct muslin_outline_corner *c)
{
    return (double)(line->rises ? c->x + c->y : c->x - c->y);
}

/* From where to where a line runs through a raw outline, added to what other outlines have of it. */
static void run_through(const struct muslin_outline *row, const struct slanted *line, double *least, double *most)
{
    const struct muslin_outline_corner *corners = &raw.corners[row->first_corner];
    for (int64_t i = 0; i < row->corners; i++) {
        const struct muslin_outline_corner *a = &corners[i];
        const struct muslin_outline_corner *b = &corners[(i + 1) % row->corners];
        const double from = across_of(line, a) - line->same;
        const double to = across_of(line, b) - line->same;
        if (from * to >= 0)
            continue;
        const double at = along_of(line, a) + (along_of(line, b) - along_of(line, a)) * from / (from - to);
        *least = at < *least ? at : *least;
        *most = at > *most ? at : *most;
    }
}

/* How long a seam is from where the first cloth along it begins to where the last ends. */
static double length_by_outlines(muslin_id field, int64_t seam)
{
    double least = 1e18;
    double most = -1e18;
    for (size_t i = 0; i < drawn.count; i++) {
        const struct muslin_outline *row = &drawn.rows[i];
        const struct muslin_outline_corner *corners = &drawn.corners[row->first_corner];
        for (int64_t k = 0; k < row->corners; k++) {
            const struct muslin_outline_corner *a = &corners[k];
            const struct muslin_outline_corner *b = &corners[(k + 1) % row->corners];
            if (a->seam_node != field || a->seam != seam)
                continue;
            struct slanted line = { (b->x > a->x) == (b->y > a->y), 0 };
            line.same = across_of(&line, a);
            run_through(&raw.rows[i], &line, &least, &most);
        }
    }
    return (most - least) / 1.41421356237309505;
}

/* In all layouts, touching the edge and floating, a seam is as long as the longer of what lies along it. Corners are
 * rounded to a tick, and seams; a square end taken for one at 45 degrees makes 842 ticks. */
START_TEST(seams_are_as_long_as_raw_outlines_along_them)
{
    for (int32_t layout = PLAIN; layout <= INNER; layout++)
        for (int i = 0; i < 9 * 4; i++) {
            const muslin_len offs[] = { 0, 2000, WHOLE_IN(7), WHOLE_IN(20) };
            struct pointed p;
            struct muslin_sewing_step rows[4];
            size_t count = 0;
            double sewn = 0;
            double longest = 0;
            if (layout > OUTER && i >= 9)
                break;
            begin_point(&p);
            muslin_id blocks[BLOCKS_ROOM];
            for (int k = 0; k < BLOCKS_ROOM; k++)
                blocks[k] = square_of(&p, WHOLE_IN(6));
            const muslin_id off = i < 9 ? 0 : fixed_of(p.s.quilt, offs[i / 9]);
            const muslin_id field = field_with(&p, layout, i % 3 + 1, i / 3 % 3 + 1, blocks, off);
            struct muslin_solution *solution = solved(p.s.quilt, field);
            draw_to(&drawn, MUSLIN_STAGE_FINISHED, solution, field);
            draw_to(&raw, MUSLIN_STAGE_RAW, solution, field);
            ck_ok(muslin_sewing_steps(solution, rows, sizeof rows[0], 4, &count, NULL));
            ck_assert_uint_eq(count, 1);
            for (int64_t seam = 0; seam < rows[0].seams; seam++) {
                const double length = length_by_outlines(field, seam);
                sewn += length;
                longest = length > longest ? length : longest;
            }
            const double off_by = (double)rows[0].sewn - sewn;
            ck_assert_msg(-200 < off_by && off_by < 200, "layout %d, %d x %d, off %d: %.1f", layout, i % 3 + 1,
                          i / 3 % 3 + 1, (int)offs[i / 9], off_by);
            ck_assert_int_le(llabs(rows[0].seam_longest - (int64_t)longest), 4);
            muslin_solution_free(solution);
            end_sewing(&p.s);
        }
}
END_TEST

static struct muslin_pressing_total pressed(struct pointed *p, muslin_id field)
{
    const struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing_total totals = { .size = (uint32_t)sizeof totals };
    struct muslin_pressing *plan = NULL;
    struct muslin_solution *solution = solved(p->s.quilt, field);
    ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    ck_ok(muslin_pressing_totals(plan, &totals, NULL));
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
    return totals;
}

/* Plain blocks, 2 x 2: along the seam between a row of blocks and one of sashes, upright seams of both meet at the ends
 * of blocks. Between the first rows of sashes and of blocks that is at both ends of the block; above the next row of
 * sashes at both ends of both sashes too; below it at the ends of three blocks. All twice. Where nothing lies outside
 * the corners, there are but two rows of sashes, four ends along each of their sides. */
START_TEST(seams_of_rows_of_sashes_meet)
{
    struct pointed p;
    begin_point(&p);
    const muslin_id six = square_of(&p, WHOLE_IN(6));
    ck_assert_int_eq(pressed(&p, field_of(&p, CUT, 2, 2, six)).meetings, 2 * (2 + 4 + 6));
    ck_assert_int_eq(pressed(&p, field_of(&p, OUTER, 2, 2, six)).meetings, 2 * (2 + 4 + 6));
    ck_assert_int_eq(pressed(&p, field_of(&p, INNER, 2, 2, six)).meetings, 2 * (4 + 4));
    /* seams within a block end on nothing but sashes' sides */
    const muslin_id four = repeat_of(p.s.quilt, square_of(&p, WHOLE_IN(3)), 2, 2);
    const struct muslin_pressing_total totals = pressed(&p, field_of(&p, CUT, 2, 2, four));
    ck_assert_int_eq(totals.meetings, 24 + 5);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(pressed(&p, field_of(&p, INNER, 1, 1, six)).meetings, 0);
    end_sewing(&p.s);
}
END_TEST

/* ---- memory ----------------------------------------------------------------------------------------------------- */

START_TEST(every_allocation_may_fail)
{
    struct pointed p;
    begin_point(&p);
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    for (int32_t layout = OUTER; layout <= INNER; layout++) {
        const muslin_id field = field_of(&p, layout, 3, 3, square_of(&p, WHOLE_IN(6)));
        struct muslin_solution *solution = NULL;
        const size_t blocks = p.s.memory.blocks;
        for (size_t round = 1; solution == NULL; round++) {
            fail_at(&p.s, round);
            muslin_status status = muslin_solution_create(p.s.quilt, field, &spec, NULL, 0, 0, NULL, &solution, NULL);
            ck_status(status, p.s.memory.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
            if (status != MUSLIN_OK)
                ck_assert_uint_eq(p.s.memory.blocks, blocks);
        }
        fail_at(&p.s, 0);
        muslin_solution_free(solution);
    }
    end_sewing(&p.s);
}
END_TEST

/* ---- children
 * ------------------------------------------------------------------------------------------------------ */

static size_t children_with_sizes(struct pointed *p, int32_t layout, int64_t columns, int64_t rows, muslin_id *ids)
{
    const muslin_id field = field_of(p, layout, columns, rows, square_of(p, WHOLE_IN(6)));
    struct muslin_solution *solution = solved(p->s.quilt, field);
    size_t count = 0;
    ck_ok(muslin_quilt_children(p->s.quilt, field, ids, BLOCKS_ROOM, &count, NULL));
    for (size_t i = 0; i < count; i++)
        ck_assert_int_gt(size_of(solution, ids[i]).count, 0);
    muslin_solution_free(solution);
    return count - (size_t)(columns * rows + (columns - 1) * (rows - 1));
}

/* Where nothing lies outside the corner blocks, whole sashes lie round alternates alone, and a cornerstone where two
 * blocks are side by side or above each other; cut at the edge, one block has four sashes and halves of
 * cornerstones. */
START_TEST(children_are_what_the_layout_uses)
{
    struct pointed p;
    muslin_id ids[BLOCKS_ROOM];
    begin_point(&p);
    const muslin_id stone = patch_of(p.s.quilt, p.stone, p.wide, p.wide);
    ck_assert_uint_eq(children_with_sizes(&p, OUTER, 1, 1, ids), 3);
    ck_assert_uint_eq(children_with_sizes(&p, CUT, 1, 1, ids), 2);
    ck_assert_int_ne(ids[2], stone);
    ck_assert_uint_eq(children_with_sizes(&p, CUT, 1, 2, ids), 3);
    ck_assert_uint_eq(children_with_sizes(&p, INNER, 1, 1, ids), 0);
    ck_assert_uint_eq(children_with_sizes(&p, INNER, 1, 2, ids), 1);
    ck_assert_int_eq(ids[2], stone);
    ck_assert_uint_eq(children_with_sizes(&p, INNER, 2, 1, ids), 1);
    ck_assert_int_eq(ids[2], stone);
    ck_assert_uint_eq(children_with_sizes(&p, INNER, 2, 2, ids), 3);
    end_sewing(&p.s);
}
END_TEST

/* ---- against the setting ---------------------------------------------------------------------------------------- */

/* Every edge that is not outside has a seam of the field, and pieces fill it up to the bound; blocks of the outer
 * layout float at times. */
START_TEST(pieces_fill_fields_of_all_layouts)
{
    uint64_t state = 5;
    for (int i = 0; i < 200; i++) {
        struct pointed p;
        muslin_id blocks[BLOCKS_ROOM];
        begin_point(&p);
        const int32_t layout = (int32_t)draw_from(&state, OUTER, INNER);
        const int64_t columns = draw_from(&state, 1, 4);
        const int64_t rows = draw_from(&state, 1, 4);
        const muslin_len side = draw_from(&state, 2000, 60000);
        const int floats = layout == OUTER && i % 2 == 0;
        p.wide = fixed_of(p.s.quilt, draw_from(&state, 100, 1900));
        for (int k = 0; k < BLOCKS_ROOM; k++)
            blocks[k] = square_of(&p, side);
        const muslin_id off = floats ? fixed_of(p.s.quilt, draw_from(&state, 1, 4 * side)) : 0;
        const muslin_id field = field_with(&p, layout, columns, rows, blocks, off);
        struct muslin_solution *solution = solved(p.s.quilt, field);
        const struct muslin_solution_total totals = totals_of(solution);
        const int64_t lost = totals.finished_area - totals.patch_area;
        ck_assert_int_le(llabs(lost), totals.area_error);
        ck_assert_int_lt(totals.area_error, totals.finished_area / 10);
        ck_assert_int_eq(totals.misfits, 0);
        muslin_solution_free(solution);
        end_sewing(&p.s);
    }
}
END_TEST

Suite *solution_point_suite(void)
{
    Suite *suite = suite_create("solution_point");
    TCase *tests = tcase_create("sashes on point");
    tcase_add_test(tests, each_layout_has_its_size);
    tcase_add_test(tests, a_sash_as_wide_as_the_blocks_leaves_no_triangle);
    tcase_add_test(tests, a_sash_of_no_width_is_named);
    tcase_add_test(tests, a_sash_that_is_too_large_is_told_as_a_measure);
    tcase_add_test(tests, blocks_are_held_against_the_sashes);
    tcase_add_test(tests, the_size_is_explained);
    tcase_add_test(tests, the_edge_cuts_cornerstones_in_half);
    tcase_add_test(tests, pieces_along_the_sides_are_those_drawn_there);
    tcase_add_test(tests, sashes_within_are_narrower_than_blocks);
    tcase_add_test(tests, the_edge_cuts_sashes_off);
    tcase_add_test(tests, a_triangle_lies_along_a_sash_and_a_cornerstone);
    tcase_add_test(tests, sashes_that_end_at_the_edge_are_cut_by_their_hand);
    tcase_add_test(tests, mirror_images_change_hands);
    tcase_add_test(tests, half_cornerstones_come_from_squares);
    tcase_add_test(tests, seams_have_their_length);
    tcase_add_test(tests, seams_are_as_long_as_raw_outlines_along_them);
    tcase_add_test(tests, seams_of_rows_of_sashes_meet);
    tcase_add_test(tests, children_are_what_the_layout_uses);
    tcase_add_test(tests, every_allocation_may_fail);
    tcase_add_test(tests, pieces_fill_fields_of_all_layouts);
    suite_add_tcase(suite, tests);
    return suite;
}
