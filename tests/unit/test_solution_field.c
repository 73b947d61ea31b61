/* test_solution_field.c - fields on point and rows of 60 degree pieces, solved and drawn.
 *
 * SPDX-License-Identifier: MIT
 *
 * Corners were worked out with 60 decimal digits (Python's decimal) from the geometry beside them, in ticks. With
 * B = 6 in = 48768: B / sqrt 2 = 34484.1835049; with H = 3 in = 24384: H / sqrt 3 = 14078.1089639. */
#include "test_solution_along.h"

Suite *solution_field_suite(void);

enum { ROW_ROOM = 400, CORNER_ROOM = 5 * ROW_ROOM, BLOCKS_ROOM = 200 };

struct drawn {
    size_t count;
    struct muslin_outline rows[ROW_ROOM];
    struct muslin_outline_corner corners[CORNER_ROOM];
};
static struct drawn drawn;

static void draw_all(const struct muslin_solution *solution, muslin_id node, int32_t stage)
{
    size_t given = 0;
    memset(&drawn, 0, sizeof drawn);
    ck_ok(muslin_solution_outlines(solution, node, stage, 0, drawn.rows, sizeof drawn.rows[0], ROW_ROOM, drawn.corners,
                                   sizeof drawn.corners[0], CORNER_ROOM, &drawn.count, &given, NULL));
    ck_assert_uint_eq(given, drawn.count);
}

/* x and y in turn, from the corner with which the outline begins. */
static void ck_corners(size_t row, int64_t n, const muslin_len *expected)
{
    ck_assert_int_eq(drawn.rows[row].corners, n);
    for (int64_t i = 0; i < n; i++) {
        const struct muslin_outline_corner *corner = &drawn.corners[drawn.rows[row].first_corner + i];
        const int same = corner->x == expected[2 * i] && corner->y == expected[2 * i + 1];
        ck_assert_msg(same, "outline %zu corner %d: %d %d", row, (int)i, (int)corner->x, (int)corner->y);
    }
}

static void ck_seams(size_t row, muslin_id node, const int64_t *expected)
{
    for (int64_t i = 0; i < drawn.rows[row].corners; i++) {
        const struct muslin_outline_corner *corner = &drawn.corners[drawn.rows[row].first_corner + i];
        ck_assert_int_eq(corner->seam_node, expected[i] < 0 ? 0 : node);
        if (expected[i] >= 0)
            ck_assert_int_eq(corner->seam, expected[i]);
    }
}

/* Doubled, of all that is drawn, each counter-clockwise. */
static int64_t area_drawn(void)
{
    int64_t all = 0;
    for (size_t row = 0; row < drawn.count; row++) {
        const struct muslin_outline_corner *corners = &drawn.corners[drawn.rows[row].first_corner];
        int64_t area = 0;
        for (int64_t i = 0; i < drawn.rows[row].corners; i++) {
            const struct muslin_outline_corner *next = &corners[(i + 1) % drawn.rows[row].corners];
            area += corners[i].x * next->y - next->x * corners[i].y;
        }
        ck_assert_int_gt(area, 0);
        all += area;
    }
    return all;
}

static struct muslin_solution_total totals_of(const struct muslin_solution *solution)
{
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    return totals;
}

/* ---- blocks on point -------------------------------------------------------------------------------------------- */

static muslin_id field_of(struct sewn *s, int64_t columns, int64_t rows, muslin_id block, muslin_id set_off)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id blocks[BLOCKS_ROOM];
    const size_t n = (size_t)(columns * rows + (columns - 1) * (rows - 1));
    muslin_id field = 0;
    for (size_t i = 0; i < n; i++)
        blocks[i] = block;
    spec.columns = columns;
    spec.rows = rows;
    spec.side_fabric = s->blue;
    spec.corner_fabric = s->white;
    spec.set_off = set_off;
    ck_ok(muslin_quilt_diagonal(s->quilt, &spec, blocks, n, &field, NULL));
    return field;
}

static muslin_id square_of(struct sewn *s, muslin_len side)
{
    muslin_id measure = fixed_of(s->quilt, side);
    return patch_of(s->quilt, s->blue, measure, measure);
}

START_TEST(a_field_on_point_has_its_size)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 3, 3, square_of(&s, WHOLE_IN(6)), 0);
    struct muslin_solution *solution = solved(s.quilt, field);
    struct muslin_node_size size = size_of(solution, field);
    /* 18 sqrt 2 in is 206905.10 ticks. Example: 3 x 3 blocks and 4 alternates of 6 in: 25.456 in square. */
    ck_assert_int_eq(size.finished_width, 206905);
    ck_assert_int_eq(size.finished_height, 206905);
    ck_assert_int_eq(size.unfinished_width, 206905 + IN(0, 1, 2));
    ck_assert_int_eq(size.patches, 9 + 4 + 8 + 4);
    ck_assert_int_eq(size.exact, 0);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_DIAGONAL);
    ck_assert_int_eq(size.left, MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(size.bottom, MUSLIN_QUARTER_INCH);
    /* through the middle: triangle, block, block, block, triangle, two seams from block to block */
    ck_assert_int_eq(size.seams_across, 6);
    ck_assert_int_eq(size.seams_down, 6);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* A border as long as a field is as rounded as the field; sums of it, and what is made of them, too. */
START_TEST(what_hangs_on_a_field_is_not_exact)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 1, 1, square_of(&s, WHOLE_IN(6)), 0);
    muslin_id wide = extent_of(s.quilt, field, MUSLIN_AXIS_ACROSS);
    const muslin_id widths[] = { wide, times_of(s.quilt, wide, 2), s.two };
    for (size_t i = 0; i < 3; i++) {
        muslin_id patch = patch_of(s.quilt, s.blue, widths[i], s.two);
        struct muslin_solution *solution = solved(s.quilt, patch);
        struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
        ck_ok(muslin_solution_totals(solution, &totals, NULL));
        ck_assert_int_eq(size_of(solution, patch).exact, i == 2);
        ck_assert_int_eq(totals.exact, i == 2);
        ck_assert_int_eq(totals.area_error, 0);
        muslin_solution_free(solution);
    }
    /* whichever edge is trimmed by it */
    muslin_id large = square_of(&s, WHOLE_IN(40));
    for (int edge = 0; edge < 4; edge++) {
        struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
        muslin_id trimmed = 0;
        trim.left = edge == 0 ? wide : s.two;
        trim.right = edge == 1 ? wide : s.two;
        trim.top = edge == 2 ? wide : s.two;
        trim.bottom = edge == 3 ? wide : s.two;
        ck_ok(muslin_quilt_trim(s.quilt, large, &trim, &trimmed, NULL));
        struct muslin_solution *solution = solved(s.quilt, trimmed);
        ck_assert_int_eq(size_of(solution, trimmed).exact, 0);
        muslin_solution_free(solution);
        /* or has a strip so wide */
        struct muslin_quilt_set_in_spec border = MUSLIN_QUILT_SET_IN_SPEC_INIT;
        muslin_id bordered = 0;
        border.centre = large;
        border.left_width = trim.left;
        border.right_width = trim.right;
        border.top_width = trim.top;
        border.bottom_width = trim.bottom;
        border.left_fabric = border.right_fabric = border.top_fabric = border.bottom_fabric = s.white;
        ck_ok(muslin_quilt_set_in(s.quilt, &border, &bordered, NULL));
        solution = solved(s.quilt, bordered);
        ck_assert_int_eq(size_of(solution, bordered).exact, 0);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

static muslin_len width_on_point(int64_t blocks, muslin_len block, muslin_len set_off)
{
    struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
    struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_setting_point_plan point = { .size = (uint32_t)sizeof point };
    nearest.grid = 1;
    nearest.direction = MUSLIN_DIRECTION_NEAREST;
    spec.block = block;
    spec.columns = blocks;
    spec.set_off = set_off;
    ck_ok(muslin_setting_point(&spec, &nearest, &nearest, &point, NULL));
    return point.finished_width;
}

START_TEST(sizes_are_those_of_a_setting_on_point)
{
    uint64_t state = 1;
    for (int i = 0; i < 300; i++) {
        struct sewn s;
        const int64_t columns = draw_from(&state, 1, 9);
        const int64_t rows = draw_from(&state, 1, 9);
        const muslin_len block = draw_from(&state, 1, i % 2 == 0 ? 100000 : 1000);
        const muslin_len set_off = draw_from(&state, 0, i % 3 == 0 ? 0 : 20000);
        begin_sewing(&s);
        muslin_id field = field_of(&s, columns, rows, square_of(&s, block), fixed_of(s.quilt, set_off));
        struct muslin_solution *solution = solved(s.quilt, field);
        const struct muslin_node_size size = size_of(solution, field);
        ck_assert_int_eq(size.finished_width, width_on_point(columns, block, set_off));
        ck_assert_int_eq(size.finished_height, width_on_point(rows, block, set_off));
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

START_TEST(the_widest_field_is_solved)
{
    struct sewn s;
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    static muslin_id blocks[32768];
    muslin_id field = 0;
    begin_sewing(&s);
    blocks[0] = square_of(&s, 23170);
    for (int i = 1; i < 32768; i++)
        blocks[i] = blocks[0];
    spec.columns = 32768;
    spec.side_fabric = spec.corner_fabric = s.blue;
    ck_ok(muslin_quilt_diagonal(s.quilt, &spec, blocks, 32768, &field, NULL));
    struct muslin_solution *solution = solved(s.quilt, field);
    const struct muslin_node_size size = size_of(solution, field);
    /* 32768 x 23170 sqrt 2 = 1073719811.5..., and one of them 32767.33 */
    ck_assert_int_eq(size.finished_width, 1073719812);
    ck_assert_int_eq(size.finished_height, 32767);
    ck_assert_int_eq(size.patches, 32768 + 2 * 32767 + 4);
    ck_assert_int_eq(size.seams_across, 2 * 32768);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(a_field_too_large_is_refused)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_sewing(&s);
    /* 759250124 sqrt 2 = 1073741822.94, the next one is beyond 2^30 = 1073741824 */
    muslin_id field = field_of(&s, 1, 1, square_of(&s, 759250124), 0);
    solution = solved(s.quilt, field);
    ck_assert_int_eq(size_of(solution, field).finished_width, 1073741823);
    muslin_solution_free(solution);
    field = field_of(&s, 1, 1, square_of(&s, 759250126), 0);
    solution = NULL;
    ck_status(muslin_solution_create(s.quilt, field, &spec, NULL, 0, 0, NULL, &solution, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.at, muslin_id_number(field));
    ck_assert_int_eq(problem.limit, MUSLIN_SIZE_MAX);
    ck_assert_ptr_null(solution);
    end_sewing(&s);
}
END_TEST

/* A nine-patch has two seams across and two down: six where a line goes through from tip to tip. */
START_TEST(seams_are_counted_through_the_tips)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id nine = repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 3, 3);
    muslin_id field = field_of(&s, 4, 2, nine, fixed_of(s.quilt, 1));
    struct muslin_solution *solution = solved(s.quilt, field);
    const struct muslin_node_size size = size_of(solution, field);
    /* 2 n of the field's own, one more at each end where the seam of two triangles runs on, 4 in each block */
    ck_assert_int_eq(size.seams_across, 2 * 4 + 2 + 4 * 4);
    ck_assert_int_eq(size.seams_down, 2 * 2 + 2 + 2 * 4);
    ck_assert_int_eq(size.patches, (8 + 3) * 9 + 12);
    muslin_solution_free(solution);
    /* 2 in blocks that float 7 in: what runs on is 9.9 in long, so that 5 would meet; of 2 rows, 2 */
    field = field_of(&s, 3, 2, patch_of(s.quilt, s.blue, s.two, s.two), fixed_of(s.quilt, WHOLE_IN(7)));
    solution = solved(s.quilt, field);
    ck_assert_int_eq(size_of(solution, field).seams_across, 2 * 3 + 2 * 2);
    ck_assert_int_eq(size_of(solution, field).seams_down, 2 * 2 + 2 * 3);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* 2 x 2 blocks of 6 in that touch the edge: tips at 1, 2, 3 times B / sqrt 2 = 34484.18, the edge at 137936.73. */
START_TEST(triangles_touch_the_edge)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 2, 2, square_of(&s, WHOLE_IN(6)), 0);
    struct muslin_solution *solution = solved(s.quilt, field);
    draw_all(solution, field, MUSLIN_STAGE_FINISHED);
    ck_assert_uint_eq(drawn.count, 8 + 5);
    const muslin_len top[] = { 68968, 103453, 103453, 137937, 34484, 137937 };
    const muslin_len right[] = { 137937, 103453, 103453, 68968, 137937, 34484 };
    const muslin_len bottom[] = { 68968, 34484, 34484, 0, 103453, 0 };
    const muslin_len left[] = { 0, 34484, 34484, 68968, 0, 103453 };
    const muslin_len corner[] = { 0, 103453, 34484, 137937, 0, 137937 };
    ck_corners(0, 3, top);
    ck_corners(1, 3, right);
    ck_corners(2, 3, bottom);
    ck_corners(3, 3, left);
    ck_corners(4, 3, corner);
    /* seams: 0 .. 3 left of blocks 1 .. 4, 4 and 5 left of the triangles at the right and the bottom, 6 and 7 below the
       rows, then the corners' */
    const int64_t seams[][3] = { { 0, -1, 6 }, { 4, 6, -1 }, { 5, -1, 7 }, { 1, 7, -1 }, { 8, -1, -1 }, { 9, -1, -1 },
                                 { 10, -1, -1 }, { 11, -1, -1 } };
    for (size_t piece = 0; piece < 8; piece++) {
        ck_assert_int_eq(drawn.rows[piece].fabric, piece < 4 ? s.blue : s.white);
        ck_assert_int_eq(drawn.rows[piece].region, (int)piece + 1);
        ck_assert_int_eq(drawn.rows[piece].node, field);
        ck_assert_int_eq(drawn.rows[piece].on_point, 0);
        ck_seams(piece, field, seams[piece]);
    }
    /* the first block, from its left tip, which lay lower left; and the alternate in the middle */
    const muslin_len first[] = { 0, 103453, 34484, 68968, 68968, 103453, 34484, 137937 };
    const muslin_len middle[] = { 34484, 68968, 68968, 34484, 103453, 68968, 68968, 103453 };
    ck_corners(8, 4, first);
    ck_corners(12, 4, middle);
    ck_assert_int_eq(drawn.rows[8].on_point, 1);
    ck_assert_int_eq(area_drawn(), 2 * INT64_C(137937) * 137937);
    /* raw: corners of 45 degrees move (1 + sqrt 2) e along a leg's direction outwards, e = 1/4 in = 2032 */
    draw_all(solution, field, MUSLIN_STAGE_RAW);
    const muslin_len raw_top[] = { 68968, 100579, 108358, 139969, 29579, 139969 };
    const muslin_len raw_corner[] = { -2032, 98547, 39390, 139969, -2032, 139969 };
    ck_corners(0, 3, raw_top);
    ck_corners(4, 3, raw_corner);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The same, floating 1 in. The seam below row 1, v = B, runs on to the corner's seam; the one that sews the upper right
 * corner on, v = 2 B, to the edge. */
START_TEST(set_off_triangles_meet_beyond_the_tips)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 2, 2, square_of(&s, WHOLE_IN(6)), fixed_of(s.quilt, WHOLE_IN(1)));
    struct muslin_solution *solution = solved(s.quilt, field);
    draw_all(solution, field, MUSLIN_STAGE_FINISHED);
    const muslin_len top[] = { 77096, 111581, 111581, 146065, 103453, 154193, 50740, 154193, 42612, 146065 };
    const int64_t top_seams[] = { 0, 10, -1, 8, 6 };
    ck_corners(0, 5, top);
    ck_seams(0, field, top_seams);
    const muslin_len top_left[] = { 0, 103453, 50740, 154193, 0, 154193 };
    const muslin_len top_right[] = { 103453, 154193, 154193, 103453, 154193, 154193 };
    ck_corners(4, 3, top_left);
    ck_corners(6, 3, top_right);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Corners of equal outlines fall together exactly where no seam runs on beyond a tip, so the areas add up to the tick;
 * else within the bound. */
START_TEST(pieces_fill_the_field)
{
    uint64_t state = 2;
    for (int i = 0; i < 200; i++) {
        struct sewn s;
        const int64_t columns = draw_from(&state, 1, 5);
        const int64_t rows = draw_from(&state, 1, 5);
        const muslin_len block = draw_from(&state, 20, i % 2 == 0 ? 60000 : 300);
        const muslin_len set_off = i % 3 == 0 ? 0 : draw_from(&state, 1, 6 * block);
        begin_sewing(&s);
        muslin_id field = field_of(&s, columns, rows, square_of(&s, block), fixed_of(s.quilt, set_off));
        struct muslin_solution *solution = solved(s.quilt, field);
        const struct muslin_node_size size = size_of(solution, field);
        const struct muslin_solution_total totals = totals_of(solution);
        const int64_t area = 2 * size.finished_width * size.finished_height;
        draw_all(solution, field, MUSLIN_STAGE_FINISHED);
        ck_assert_uint_eq(drawn.count, (size_t)size.patches);
        if (set_off == 0)
            ck_assert_int_eq(area_drawn(), area);
        ck_assert_int_le(llabs(area_drawn() - area), totals.area_error);
        ck_assert_int_eq(totals.exact, 0);
        ck_assert_int_eq(totals.finished_area, area);
        ck_assert_int_gt(totals.area_error, 0);
        ck_assert_int_le(llabs(totals.patch_area - area), totals.area_error);
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

/* ---- blocks that do not fit ------------------------------------------------------------------------------------- */

struct misfits {
    struct muslin_misfit rows[64];
    size_t count;
};

static struct misfits misfits_of(struct sewn *s, const muslin_id *blocks, muslin_len ease)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    struct misfits misfits = { .count = 0 };
    muslin_id field = 0;
    spec.columns = spec.rows = 2;
    spec.side_fabric = spec.corner_fabric = s->white;
    solve.ease = ease;
    ck_ok(muslin_quilt_diagonal(s->quilt, &spec, blocks, 5, &field, NULL));
    ck_ok(muslin_solution_create(s->quilt, field, &solve, NULL, 0, 0, NULL, &solution, NULL));
    ck_ok(muslin_solution_misfits(solution, misfits.rows, sizeof misfits.rows[0], 64, &misfits.count, NULL));
    for (size_t i = 0; i < misfits.count; i++)
        ck_assert_int_eq(misfits.rows[i].node, field);
    muslin_solution_free(solution);
    return misfits;
}

static void ck_misfit(const struct muslin_misfit *row, int32_t kind, int64_t first, int64_t second, muslin_len sizes[2])
{
    ck_assert_int_eq(row->kind, kind);
    ck_assert_int_eq(row->first, first);
    ck_assert_int_eq(row->second, second);
    ck_assert_int_eq(row->first_size, sizes[0]);
    ck_assert_int_eq(row->second_size, sizes[1]);
    ck_assert_int_eq(row->difference, sizes[0] - sizes[1]);
    ck_assert_int_eq(row->count, 1);
}

START_TEST(blocks_that_are_not_square_are_told)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id four = fixed_of(s.quilt, WHOLE_IN(4));
    muslin_id more = fixed_of(s.quilt, IN(4, 1, 8));
    muslin_id good = patch_of(s.quilt, s.blue, four, four);
    muslin_id wide = patch_of(s.quilt, s.blue, more, four);
    muslin_id high = patch_of(s.quilt, s.blue, four, s.two);
    muslin_len wide_sizes[] = { WHOLE_IN(4), IN(4, 1, 8) };
    muslin_len high_sizes[] = { WHOLE_IN(4), WHOLE_IN(2) };
    const muslin_id blocks[] = { good, wide, good, high, good };
    struct misfits found = misfits_of(&s, blocks, 0);
    ck_assert_uint_eq(found.count, 2);
    ck_misfit(&found.rows[0], MUSLIN_MISFIT_NOT_SQUARE, 0, 1, wide_sizes);
    ck_misfit(&found.rows[1], MUSLIN_MISFIT_NOT_SQUARE, 0, 3, high_sizes);
    found = misfits_of(&s, blocks, IN(0, 1, 8));
    ck_assert_uint_eq(found.count, 2);
    ck_misfit(&found.rows[0], MUSLIN_MISFIT_EASED, 0, 1, wide_sizes);
    ck_assert_int_eq(found.rows[0].ease_each, IN(0, 1, 8));
    ck_assert_int_eq(found.rows[1].kind, MUSLIN_MISFIT_NOT_SQUARE);
    /* the first one alone not square: itself */
    const muslin_id first[] = { high, good, good, good, good };
    found = misfits_of(&s, first, 0);
    ck_assert_uint_eq(found.count, 1);
    ck_misfit(&found.rows[0], MUSLIN_MISFIT_NOT_SQUARE, 0, 0, high_sizes);
    end_sewing(&s);
}
END_TEST

/* Every block's four edges meet another block's or a setting triangle's, whose allowance is the quilt's. */
START_TEST(allowances_that_differ_are_told)
{
    struct sewn s;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id wider = 0;
    begin_sewing(&s);
    spec.fabric = s.blue;
    spec.width = spec.height = s.two;
    muslin_id usual = patch_of(s.quilt, s.blue, s.two, s.two);
    spec.left = spec.right = spec.top = spec.bottom = fixed_of(s.quilt, IN(0, 1, 2));
    ck_ok(muslin_quilt_patch(s.quilt, &spec, &wider, NULL));
    muslin_len to_triangle[] = { MUSLIN_QUARTER_INCH, IN(0, 1, 2) };
    muslin_len from_triangle[] = { IN(0, 1, 2), MUSLIN_QUARTER_INCH };
    /* the alternate: 0 at its left, 1 above, 3 at its right, 2 below */
    const muslin_id middle[] = { usual, usual, usual, usual, wider };
    struct misfits found = misfits_of(&s, middle, 0);
    ck_assert_uint_eq(found.count, 4);
    ck_misfit(&found.rows[0], MUSLIN_MISFIT_ALLOWANCE, 4, 2, from_triangle);
    ck_misfit(&found.rows[1], MUSLIN_MISFIT_ALLOWANCE, 4, 3, from_triangle);
    ck_misfit(&found.rows[2], MUSLIN_MISFIT_ALLOWANCE, 0, 4, to_triangle);
    ck_misfit(&found.rows[3], MUSLIN_MISFIT_ALLOWANCE, 1, 4, to_triangle);
    /* the first block: triangles at its left, above and below, the alternate at its right */
    const muslin_id corner[] = { wider, usual, usual, usual, usual };
    found = misfits_of(&s, corner, 0);
    ck_assert_uint_eq(found.count, 4);
    ck_misfit(&found.rows[0], MUSLIN_MISFIT_ALLOWANCE, -1, 0, to_triangle);
    ck_misfit(&found.rows[1], MUSLIN_MISFIT_ALLOWANCE, -1, 0, to_triangle);
    ck_misfit(&found.rows[2], MUSLIN_MISFIT_ALLOWANCE, 0, -1, from_triangle);
    ck_misfit(&found.rows[3], MUSLIN_MISFIT_ALLOWANCE, 0, 4, from_triangle);
    /* all of them: where they meet each other they agree; ten edges face triangles, each of the corners' and 8 more */
    const muslin_id all[] = { wider, wider, wider, wider, wider };
    ck_assert_uint_eq(misfits_of(&s, all, 0).count, 12);
    end_sewing(&s);
}
END_TEST

/* Each field is a block of the next, 1 x 1: its side is the last one's times sqrt 2, rounded each time. */
START_TEST(fields_lie_within_each_other)
{
    struct sewn s;
    const muslin_len sides[] = { 16256, 22989, 32511, 45977, 65021 };
    muslin_id nodes[5];
    begin_sewing(&s);
    nodes[0] = patch_of(s.quilt, s.blue, s.two, s.two);
    for (int i = 1; i < 5; i++)
        nodes[i] = field_of(&s, 1, 1, nodes[i - 1], 0);
    struct muslin_solution *solution = solved(s.quilt, nodes[4]);
    for (int i = 0; i < 5; i++)
        ck_assert_int_eq(size_of(solution, nodes[i]).finished_width, sides[i]);
    ck_assert_int_eq(size_of(solution, nodes[4]).patches, 17);
    draw_all(solution, nodes[4], MUSLIN_STAGE_FINISHED);
    ck_assert_uint_eq(drawn.count, 17);
    const struct muslin_solution_total totals = totals_of(solution);
    ck_assert_int_le(llabs(totals.patch_area - totals.finished_area), totals.area_error);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- rows of 60 degree pieces ----------------------------------------------------------------------------------- */

/* `cells` has a figure for each piece. */
static muslin_id rows_of(struct sewn *s, int64_t rows, int32_t first, muslin_id height, const char *cells)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[ROW_ROOM];
    const size_t n = strlen(cells);
    int64_t sum = 0;
    muslin_id id = 0;
    for (size_t i = 0; i < n; i++) {
        const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
        pieces[i] = piece;
        pieces[i].fabric = i % 2 == 0 ? s->blue : s->white;
        pieces[i].cells = cells[i] - '0';
        sum += pieces[i].cells;
    }
    spec.cells = sum / rows;
    spec.rows = rows;
    spec.height = height;
    spec.end_fabric = s->white;
    spec.first = first;
    ck_ok(muslin_quilt_sixty(s->quilt, &spec, pieces, sizeof pieces[0], n, &id, NULL));
    return id;
}

START_TEST(rows_of_triangles_have_their_size)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id three = fixed_of(s.quilt, WHOLE_IN(3));
    muslin_id row = rows_of(&s, 1, 1, three, "11111");
    struct muslin_solution *solution = solved(s.quilt, row);
    struct muslin_node_size size = size_of(solution, row);
    /* 6 H / sqrt 3 is 84468.65 ticks. Example: 5 triangles of 3 in: 10.392 in wide. */
    ck_assert_int_eq(size.finished_width, 84469);
    ck_assert_int_eq(size.finished_height, WHOLE_IN(3));
    ck_assert_int_eq(size.unfinished_width, 84469 + IN(0, 1, 2));
    ck_assert_int_eq(size.patches, 7);
    ck_assert_int_eq(size.exact, 0);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_SIXTY);
    ck_assert_int_eq(size.top, MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(size.seams_across, 6);
    ck_assert_int_eq(size.seams_down, 1);
    muslin_solution_free(solution);
    /* beside a patch, which is exact, they make a width that is rounded, whichever comes first */
    const muslin_id patch = patch_of(s.quilt, s.blue, s.two, three);
    const muslin_id beside[2][2] = { { patch, row }, { row, patch } };
    for (int i = 0; i < 2; i++) {
        const muslin_id both = join_of(s.quilt, MUSLIN_AXIS_ACROSS, beside[i], 2);
        solution = solved(s.quilt, both);
        ck_assert_int_eq(size_of(solution, patch).exact, 1);
        ck_assert_int_eq(size_of(solution, both).exact, 0);
        muslin_solution_free(solution);
    }
    /* three rows, at most four pieces in one: five seams; down, two between rows and one in each near a side */
    row = rows_of(&s, 3, 2, three, "23111232");
    solution = solved(s.quilt, row);
    size = size_of(solution, row);
    ck_assert_int_eq(size.finished_height, WHOLE_IN(9));
    ck_assert_int_eq(size.seams_across, 5);
    ck_assert_int_eq(size.seams_down, 5);
    ck_assert_int_eq(size.patches, 8 + 6);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(pieces_along_the_sides_are_those_drawn_there)
{
    const char *const cells[] = { "11111", "1112", "2111", "213", "31113", "121121", "1111111111", "22", "112211" };
    const int64_t rows[] = { 1, 1, 1, 1, 3, 2, 2, 1, 2 };
    struct sewn s;
    begin_sewing(&s);
    for (size_t i = 0; i < sizeof rows / sizeof rows[0]; i++)
        for (int32_t first = 1; first <= 2; first++)
            ck_along(&s, rows_of(&s, rows[i], first, fixed_of(s.quilt, 24384), cells[i]));
    const muslin_id square = square_of(&s, WHOLE_IN(6));
    for (int64_t columns = 1; columns <= 3; columns++)
        for (int64_t down = 1; down <= 3; down++) {
            ck_along(&s, field_of(&s, columns, down, square, 0));
            for (int set_off = 1; set_off <= 16; set_off += 3)
                ck_along(&s, field_of(&s, columns, down, square, fixed_of(s.quilt, WHOLE_IN(set_off))));
        }
    end_sewing(&s);
}
END_TEST

/* A row that is the same from both ends: raw, its right half-triangle is the mirror image of the left one, but for what
 * is rounded. */
START_TEST(raw_half_triangles_are_mirror_images)
{
    struct sewn s;
    begin_sewing(&s);
    for (int32_t first = MUSLIN_SIXTY_FIRST_ON_SIDE; first <= MUSLIN_SIXTY_FIRST_ON_POINT; first++) {
        const muslin_id row = rows_of(&s, 1, first, fixed_of(s.quilt, 24384), "11111");
        struct muslin_solution *solution = solved(s.quilt, row);
        const muslin_len width = size_of(solution, row).finished_width;
        draw_all(solution, row, MUSLIN_STAGE_RAW);
        ck_assert_uint_eq(drawn.count, 7);
        ck_assert_int_eq(drawn.rows[5].corners, 3);
        ck_assert_int_eq(drawn.rows[6].corners, 3);
        for (int64_t k = 0; k < 3; k++) {
            const struct muslin_outline_corner *left = &drawn.corners[drawn.rows[5].first_corner + k];
            int found = 0;
            for (int64_t j = 0; j < 3; j++) {
                const struct muslin_outline_corner *right = &drawn.corners[drawn.rows[6].first_corner + j];
                found += llabs(left->x + right->x - width) <= 1 && llabs(left->y - right->y) <= 1;
            }
            ck_assert_int_eq(found, 1);
        }
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* How far areas can be off. Each corner of an outline is within half a tick: twice its area is, along all its edges,
 * within the ways to the right and upwards, which for a convex one are twice its box, with two ticks a corner, as
 * differences of what is rounded pass those of what is exact by one at most, and half a tick where two moved corners
 * meet. The size is rounded too: width, height, and one. Bounds of rows 3 in high, 24384 ticks, lie at multiples of
 * 14078.109. */
static void ck_area_error(const char *cells, muslin_len width, muslin_len boxes, int64_t outlines, int64_t ends)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id rows = rows_of(&s, 1, 1, fixed_of(s.quilt, 24384), cells);
    struct muslin_solution *solution = solved(s.quilt, rows);
    const int64_t size = width + 24384 + 1;
    const int64_t error = size + 2 * (boxes + outlines * 24384) + ends;
    ck_assert_int_eq(totals_of(solution).area_error, error);
    muslin_solution_free(solution);
    const muslin_id twice[] = { rows, rows };
    solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, twice, 2));
    ck_assert_int_eq(totals_of(solution).area_error, 2 * error);
    muslin_solution_free(solution);
    end_sewing(&s);
}

START_TEST(areas_are_off_by_no_more_than_corners_let_them)
{
    /* five triangles, two cells wide, and two halves of one: each 3 x 2 and 3 / 2 more, up to a whole */
    ck_area_error("11111", 84469, 28156 + 28156 + 28156 + 28157 + 28157 + 14078 + 14078, 7, 7 * (6 + 2));
    /* one piece with four corners, three cells wide, between two halves */
    ck_area_error("2", 42234, 42234 + 14078 + 14078, 3, 2 * (6 + 2) + 8 + 2);
}
END_TEST

START_TEST(rows_too_low_or_too_wide_are_refused)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_sewing(&s);
    const muslin_len wrong[] = { 0, MUSLIN_SIZE_MAX };
    for (int i = 0; i < 2; i++) {
        muslin_id row = rows_of(&s, 1, 1, fixed_of(s.quilt, wrong[i]), "11111");
        ck_status(muslin_solution_create(s.quilt, row, &spec, NULL, 0, 0, NULL, &solution, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.at, muslin_id_number(row));
    }
    ck_assert_ptr_null(solution);
    end_sewing(&s);
}
END_TEST

/* One row, its first triangle on its side: corners at 0, 1, 2 .. times 14078.109. */
START_TEST(rows_of_triangles_are_drawn)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id row = rows_of(&s, 1, 1, fixed_of(s.quilt, WHOLE_IN(3)), "11111");
    struct muslin_solution *solution = solved(s.quilt, row);
    draw_all(solution, row, MUSLIN_STAGE_FINISHED);
    ck_assert_uint_eq(drawn.count, 7);
    const muslin_len up[] = { 0, 0, 28156, 0, 14078, 24384 };
    const muslin_len point[] = { 28156, 0, 42234, 24384, 14078, 24384 };
    const muslin_len left[] = { 0, 0, 14078, 24384, 0, 24384 };
    const muslin_len right[] = { 84469, 0, 84469, 24384, 70391, 24384 };
    const int64_t seams[][3] = { { -1, 1, 0 }, { 2, -1, 1 }, { 0, -1, -1 }, { -1, -1, 5 } };
    ck_corners(0, 3, up);
    ck_corners(1, 3, point);
    ck_corners(5, 3, left);
    ck_corners(6, 3, right);
    ck_seams(0, row, seams[0]);
    ck_seams(1, row, seams[1]);
    ck_seams(5, row, seams[2]);
    ck_seams(6, row, seams[3]);
    ck_assert_int_eq(drawn.rows[1].fabric, s.white);
    ck_assert_int_eq(drawn.rows[6].region, 7);
    /* raw, e = 1/4 in = 2032: sqrt 3 e = 3519.53 along the side, tips cut off level with it, e / sqrt 3 = 1173.18 to
       either side; the half-triangle's tip (2 + sqrt 3) e = 7583.53 below */
    draw_all(solution, row, MUSLIN_STAGE_RAW);
    const muslin_len raw_up[] = { -3520, -2032, 31676, -2032, 15251, 26416, 12905, 26416 };
    const muslin_len raw_left[] = { -2032, -7584, 17598, 26416, -2032, 26416 };
    ck_corners(0, 4, raw_up);
    ck_corners(5, 3, raw_left);
    muslin_solution_free(solution);
    /* a row that begins on its point is the same upside down: from the width, 84468.71, and the height */
    row = rows_of(&s, 1, 2, fixed_of(s.quilt, WHOLE_IN(3)), "11111");
    solution = solved(s.quilt, row);
    draw_all(solution, row, MUSLIN_STAGE_RAW);
    const muslin_len down_left[] = { -2032, -2032, 17598, -2032, -2032, 31968 };
    const muslin_len down_right[] = { 66871, -2032, 86501, -2032, 86501, 31968 };
    ck_corners(5, 3, down_left);
    ck_corners(6, 3, down_right);
    muslin_solution_free(solution);
    /* a sharp tip lies 2 e beyond */
    row = rows_of(&s, 1, 1, fixed_of(s.quilt, WHOLE_IN(3)), "11111");
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.tip = MUSLIN_TIP_SHARP;
    ck_ok(muslin_solution_create(s.quilt, row, &spec, NULL, 0, 0, NULL, &solution, NULL));
    draw_all(solution, row, MUSLIN_STAGE_RAW);
    const muslin_len sharp_up[] = { -3520, -2032, 31676, -2032, 14078, 28448 };
    const muslin_len sharp_point[] = { 28156, -4064, 45754, 26416, 10559, 26416 };
    ck_corners(0, 3, sharp_up);
    ck_corners(1, 3, sharp_point);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Two rows of four cells: two diamonds, the first on its point, above a half-hexagon and a triangle. */
START_TEST(diamonds_and_half_hexagons_are_drawn)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id rows = rows_of(&s, 2, 2, fixed_of(s.quilt, WHOLE_IN(3)), "2231");
    struct muslin_solution *solution = solved(s.quilt, rows);
    draw_all(solution, rows, MUSLIN_STAGE_FINISHED);
    ck_assert_uint_eq(drawn.count, 8);
    const muslin_len diamond[] = { 14078, 24384, 42234, 24384, 28156, 48768, 0, 48768 };
    const muslin_len half_hexagon[] = { 0, 0, 56312, 0, 42234, 24384, 14078, 24384 };
    const muslin_len triangle[] = { 56312, 0, 70391, 24384, 42234, 24384 };
    const muslin_len upper_left[] = { 0, 24384, 14078, 24384, 0, 48768 };
    const muslin_len upper_right[] = { 70391, 24384, 70391, 48768, 56312, 48768 };
    /* seams: 0 .. 3 left of the pieces, 4 and 5 at the right ends, 6 between the rows */
    const int64_t of_diamond[] = { 6, 1, -1, 0 };
    const int64_t of_half_hexagon[] = { -1, 3, 6, 2 };
    const int64_t of_triangle[] = { 5, 6, 3 };
    const int64_t of_upper_right[] = { -1, -1, 4 };
    ck_corners(0, 4, diamond);
    ck_corners(2, 4, half_hexagon);
    ck_corners(3, 3, triangle);
    ck_corners(4, 3, upper_left);
    ck_seams(0, rows, of_diamond);
    ck_seams(2, rows, of_half_hexagon);
    ck_seams(3, rows, of_triangle);
    ck_corners(5, 3, upper_right);
    ck_seams(5, rows, of_upper_right);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(pieces_fill_the_rows)
{
    uint64_t state = 3;
    for (int i = 0; i < 200; i++) {
        struct sewn s;
        char cells[ROW_ROOM] = { 0 };
        size_t n = 0;
        const int64_t rows = draw_from(&state, 1, 5);
        const int64_t width = draw_from(&state, 1, 9);
        for (int64_t row = 0; row < rows; row++)
            for (int64_t left = width; left > 0;) {
                const int64_t next = draw_from(&state, 1, left < 3 ? left : 3);
                cells[n++] = (char)('0' + next);
                left -= next;
            }
        begin_sewing(&s);
        muslin_id height = fixed_of(s.quilt, draw_from(&state, 10, i % 2 == 0 ? 60000 : 300));
        muslin_id node = rows_of(&s, rows, 1 + i % 2, height, cells);
        struct muslin_solution *solution = solved(s.quilt, node);
        const struct muslin_node_size size = size_of(solution, node);
        const struct muslin_solution_total totals = totals_of(solution);
        draw_all(solution, node, MUSLIN_STAGE_FINISHED);
        /* rows share their level sides, and all else shares corners: nothing is lost at all */
        ck_assert_int_eq(area_drawn(), 2 * size.finished_width * size.finished_height);
        ck_assert_int_eq(totals.patch_area, totals.finished_area);
        ck_assert_int_gt(totals.area_error, 0);
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

/* ---- seams ------------------------------------------------------------------------------------------------------ */

/* Ends of a node's own seams, in their order: from x and y to x and y. */
static void ck_ends(const struct muslin_solution *solution, muslin_id node, int64_t n, const muslin_len (*expected)[4])
{
    const struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    struct muslin_pressing_seam rows[64];
    size_t count = 0;
    int64_t found = 0;
    ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], 64, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        if (rows[i].node != node)
            continue;
        ck_assert_int_lt(found, n);
        ck_assert_int_eq(rows[i].seam, found);
        const muslin_len ends[] = { rows[i].from_x, rows[i].from_y, rows[i].to_x, rows[i].to_y };
        for (int k = 0; k < 4; k++)
            ck_assert_msg(ends[k] == expected[found][k], "seam %d: %d", (int)found, (int)ends[k]);
        found++;
    }
    ck_assert_int_eq(found, n);
    muslin_pressing_free(plan);
}

/* How much a node takes to sew: its seams, all together, the longest. */
static void ck_sewn(const struct muslin_solution *solution, muslin_id node, int64_t seams, muslin_len sewn,
                    muslin_len longest)
{
    struct muslin_sewing_step rows[64];
    size_t count = 0;
    ck_ok(muslin_sewing_steps(solution, rows, sizeof rows[0], 64, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        if (rows[i].node != node)
            continue;
        ck_assert_int_eq(rows[i].seams, seams);
        ck_assert_int_eq(rows[i].sewn, sewn);
        ck_assert_int_eq(rows[i].seam_longest, longest);
        return;
    }
    ck_abort_msg("no step makes the node");
}

START_TEST(seams_on_point_have_their_ends)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 2, 2, square_of(&s, WHOLE_IN(6)), 0);
    struct muslin_solution *solution = solved(s.quilt, field);
    const muslin_len touching[][4] = {
        { 68968, 103453, 103453, 137937 }, { 0, 34484, 34484, 68968 }, { 68968, 34484, 103453, 68968 },
        { 34484, 68968, 68968, 103453 }, { 103453, 68968, 137937, 103453 }, { 34484, 0, 68968, 34484 },
        { 137937, 34484, 34484, 137937 }, { 103453, 0, 0, 103453 }, /* below rows, upwards */
        { 0, 103453, 34484, 137937 }, { 103453, 0, 137937, 34484 }, { 137937, 103453, 103453, 137937 },
        { 34484, 0, 0, 34484 }
    };
    ck_ends(solution, field, 12, touching);
    muslin_solution_free(solution);
    /* 1 x 1 of 2 in that floats 3 in, B = 16256, f = 24384: the upper left corner's seam, u = 0, ends on v = B and 0;
       tips at f and f + 22989.46, where the others' seams cross the edge at 11494.73 and 2 f + 11494.73 */
    field = field_of(&s, 1, 1, square_of(&s, WHOLE_IN(2)), fixed_of(s.quilt, WHOLE_IN(3)));
    solution = solved(s.quilt, field);
    const muslin_len floating[][4] = { { 24384, 35879, 35879, 47373 },
                                       { 35879, 24384, 47373, 35879 },
                                       { 71757, 11495, 11495, 71757 },
                                       { 60263, 0, 0, 60263 } };
    ck_ends(solution, field, 4, floating);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* e = 2032, 2 e = 4064: B + 2 e = 52832 between blocks. A corner is sewn on along a block and, beyond it, f sqrt 2 and
 * e sqrt 2 to either side: 48768 + 4064 sqrt 2 = 54515.36. */
START_TEST(seams_on_point_have_their_length)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id six = square_of(&s, WHOLE_IN(6));
    muslin_id touching = field_of(&s, 2, 2, six, 0);
    struct muslin_solution *solution = solved(s.quilt, touching);
    /* along triangles, which are cut at 45 degrees at the edge, B + e + e sqrt 2 = 53673.68; two row seams from edge to
     * edge, 3 B + 2 e sqrt 2 = 152051.36 */
    ck_sewn(solution, touching, 12, 4 * 53674 + 2 * 52832 + 2 * 152051 + 4 * 54515, 152051);
    muslin_solution_free(solution);
    /* 3 x 3: the outer row seams as above, the inner ones 5 B + 2 e sqrt 2 = 249587.36 */
    muslin_id larger = field_of(&s, 3, 3, six, 0);
    solution = solved(s.quilt, larger);
    ck_sewn(solution, larger, 24, 8 * 53674 + 8 * 52832 + 2 * 152051 + 2 * 249587 + 4 * 54515, 249587);
    muslin_solution_free(solution);
    /* floating 1 in, seams between rows end at the corners' seams: 3 B + 2 e = 150368; corners 48768 + (2 f + 2 e) sqrt
     * 2 = 77504.82 */
    muslin_id floating = field_of(&s, 2, 2, six, fixed_of(s.quilt, WHOLE_IN(1)));
    solution = solved(s.quilt, floating);
    ck_sewn(solution, floating, 12, 6 * 52832 + 2 * 150368 + 4 * 77505, 150368);
    muslin_solution_free(solution);
    /* one block: all corners from outside to outside */
    muslin_id one = field_of(&s, 1, 1, six, 0);
    solution = solved(s.quilt, one);
    ck_sewn(solution, one, 4, 4 * 54515, 54515);
    muslin_solution_free(solution);
    /* two blocks side by side, and one above the other */
    muslin_id across = field_of(&s, 2, 1, six, 0);
    muslin_id down = field_of(&s, 1, 2, six, 0);
    const muslin_id both[] = { across, down };
    muslin_id top = join_of(s.quilt, MUSLIN_AXIS_ACROSS, both, 2);
    solution = solved(s.quilt, top);
    /* at the two triangles, one row seam 2 B + 2 e sqrt 2 = 103283.36, corners */
    ck_sewn(solution, across, 2 + 1 + 4, 2 * 53674 + 103283 + 4 * 54515, 103283);
    ck_sewn(solution, down, 2 + 1 + 4, 2 * 53674 + 103283 + 4 * 54515, 103283);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(seams_of_60_degree_rows_have_ends_and_length)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id rows = rows_of(&s, 2, 2, fixed_of(s.quilt, WHOLE_IN(3)), "2231");
    struct muslin_solution *solution = solved(s.quilt, rows);
    const muslin_len ends[][4] = {
        { 14078, 24384, 0, 48768 }, { 42234, 24384, 28156, 48768 }, { 0, 0, 14078, 24384 }, { 56312, 0, 42234, 24384 },
        { 70391, 24384, 56312, 48768 }, { 56312, 0, 70391, 24384 }, { 0, 24384, 70391, 24384 }
    };
    ck_ends(solution, rows, 7, ends);
    /* slanted ones 2 (H + 2 e) / sqrt 3 = 32848.92, the level one 5 H / sqrt 3 + 2 e = 74454.54 */
    ck_sewn(solution, rows, 7, 6 * 32849 + 74455, 74455);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- memory ----------------------------------------------------------------------------------------------------- */

static void ck_every_allocation(struct sewn *s, muslin_id root)
{
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    const size_t blocks = s->memory.blocks;
    for (size_t round = 1; solution == NULL; round++) {
        fail_at(s, round);
        muslin_status status = muslin_solution_create(s->quilt, root, &spec, NULL, 0, 0, NULL, &solution, NULL);
        ck_status(status, s->memory.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        if (status != MUSLIN_OK)
            ck_assert_uint_eq(s->memory.blocks, blocks);
    }
    fail_at(s, 0);
    muslin_solution_free(solution);
}

START_TEST(every_allocation_may_fail)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id field = field_of(&s, 4, 4, square_of(&s, 1000), s.two);
    ck_every_allocation(&s, field);
    ck_every_allocation(&s, rows_of(&s, 5, 1, s.two, "11111111111111111111"));
    muslin_id nodes[] = { patch_of(s.quilt, s.blue, s.two, extent_of(s.quilt, field, MUSLIN_AXIS_DOWN)), field };
    ck_every_allocation(&s, join_of(s.quilt, MUSLIN_AXIS_ACROSS, nodes, 2));
    end_sewing(&s);
}
END_TEST

Suite *solution_field_suite(void)
{
    Suite *suite = suite_create("solution_field");
    TCase *on_point = tcase_create("on point");
    tcase_add_test(on_point, a_field_on_point_has_its_size);
    tcase_add_test(on_point, what_hangs_on_a_field_is_not_exact);
    tcase_add_test(on_point, sizes_are_those_of_a_setting_on_point);
    tcase_add_test(on_point, the_widest_field_is_solved);
    tcase_add_test(on_point, a_field_too_large_is_refused);
    tcase_add_test(on_point, seams_are_counted_through_the_tips);
    tcase_add_test(on_point, triangles_touch_the_edge);
    tcase_add_test(on_point, set_off_triangles_meet_beyond_the_tips);
    tcase_add_test(on_point, pieces_fill_the_field);
    tcase_add_test(on_point, blocks_that_are_not_square_are_told);
    tcase_add_test(on_point, allowances_that_differ_are_told);
    tcase_add_test(on_point, fields_lie_within_each_other);
    suite_add_tcase(suite, on_point);
    TCase *sixty = tcase_create("60 degrees");
    tcase_add_test(sixty, rows_of_triangles_have_their_size);
    tcase_add_test(sixty, pieces_along_the_sides_are_those_drawn_there);
    tcase_add_test(sixty, raw_half_triangles_are_mirror_images);
    tcase_add_test(sixty, areas_are_off_by_no_more_than_corners_let_them);
    tcase_add_test(sixty, rows_too_low_or_too_wide_are_refused);
    tcase_add_test(sixty, rows_of_triangles_are_drawn);
    tcase_add_test(sixty, diamonds_and_half_hexagons_are_drawn);
    tcase_add_test(sixty, pieces_fill_the_rows);
    suite_add_tcase(suite, sixty);
    TCase *seams = tcase_create("seams");
    tcase_add_test(seams, seams_on_point_have_their_ends);
    tcase_add_test(seams, seams_on_point_have_their_length);
    tcase_add_test(seams, seams_of_60_degree_rows_have_ends_and_length);
    suite_add_tcase(suite, seams);
    TCase *memory = tcase_create("memory");
    tcase_add_test(memory, every_allocation_may_fail);
    suite_add_tcase(suite, memory);
    return suite;
}
