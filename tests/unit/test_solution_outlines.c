/* test_solution_outlines.c - outlines of whole trees: corners by hand, seams along edges, pages, trims, depth.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"
#include "test_quilt_pieced.h"

Suite *solution_outlines_suite(void);

enum { ROW_ROOM = 64, CORNER_ROOM = 8 * ROW_ROOM };

/* Outlines of a node, all of them. */
struct drawn {
    size_t count;
    struct muslin_outline rows[ROW_ROOM];
    struct muslin_outline_corner corners[CORNER_ROOM];
};

static void draw_all(const struct muslin_solution *solution, muslin_id node, int32_t stage, struct drawn *drawn)
{
    size_t given = 0;
    memset(drawn, 0, sizeof *drawn);
    ck_ok(muslin_solution_outlines(solution, node, stage, 0, drawn->rows, sizeof drawn->rows[0], ROW_ROOM, drawn->corners,
                                   sizeof drawn->corners[0], CORNER_ROOM, &drawn->count, &given, NULL));
    ck_assert_uint_eq(given, drawn->count);
}

static const struct muslin_outline_corner *corner_of(const struct drawn *drawn, size_t row, int64_t k)
{
    const struct muslin_outline *outline = &drawn->rows[row];
    return &drawn->corners[outline->first_corner + k % outline->corners];
}

/* Doubled, above 0 when it runs counter-clockwise. */
static int64_t area_of(const struct drawn *drawn, size_t row)
{
    int64_t sum = 0;
    for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
        const struct muslin_outline_corner *from = corner_of(drawn, row, k);
        const struct muslin_outline_corner *to = corner_of(drawn, row, k + 1);
        sum += from->x * to->y - to->x * from->y;
    }
    return sum;
}

/* A rectangle, in inches, that begins at corner 0 wherever that lies. */
struct box {
    int left;
    int bottom;
    int right;
    int top;
};

static void ck_box(const struct drawn *drawn, size_t row, struct box box)
{
    muslin_len left = INT64_MAX;
    muslin_len bottom = INT64_MAX;
    muslin_len right = INT64_MIN;
    muslin_len top = INT64_MIN;
    ck_assert_int_eq(drawn->rows[row].corners, 4);
    for (int64_t k = 0; k < 4; k++) {
        const struct muslin_outline_corner *corner = corner_of(drawn, row, k);
        left = corner->x < left ? corner->x : left;
        right = corner->x > right ? corner->x : right;
        bottom = corner->y < bottom ? corner->y : bottom;
        top = corner->y > top ? corner->y : top;
    }
    ck_assert_int_eq(left, WHOLE_IN(box.left));
    ck_assert_int_eq(bottom, WHOLE_IN(box.bottom));
    ck_assert_int_eq(right, WHOLE_IN(box.right));
    ck_assert_int_eq(top, WHOLE_IN(box.top));
    ck_assert_int_eq(area_of(drawn, row), 2 * (right - left) * (top - bottom));
}

static void ck_corner(const struct muslin_outline_corner *corner, int x, int y, muslin_id seam_node, int64_t seam)
{
    ck_assert_int_eq(corner->x, WHOLE_IN(x));
    ck_assert_int_eq(corner->y, WHOLE_IN(y));
    ck_assert_int_eq(corner->seam_node, seam_node);
    ck_assert_int_eq(corner->seam, seam);
}

/* Patches of whole inches. */
static muslin_id patch_in(struct sewn *sewn, muslin_id fabric, int width, int height)
{
    return patch_of(sewn->quilt, fabric, fixed_of(sewn->quilt, WHOLE_IN(width)), fixed_of(sewn->quilt, WHOLE_IN(height)));
}

/* ---- corners and seams ------------------------------------------------------------------------------------------ */

/* Blue and white squares of 2 in; the first and the last row are the same node. */
struct nine_patch {
    muslin_id blue;
    muslin_id white;
    muslin_id rows[3];
    muslin_id top;
};

static struct nine_patch make_nine_patch(struct sewn *sewn)
{
    struct nine_patch nine;
    nine.blue = patch_of(sewn->quilt, sewn->blue, sewn->two, sewn->two);
    nine.white = patch_of(sewn->quilt, sewn->white, sewn->two, sewn->two);
    const muslin_id outer[] = { nine.blue, nine.white, nine.blue };
    const muslin_id middle[] = { nine.white, nine.blue, nine.white };
    nine.rows[0] = nine.rows[2] = join_of(sewn->quilt, MUSLIN_AXIS_ACROSS, outer, 3);
    nine.rows[1] = join_of(sewn->quilt, MUSLIN_AXIS_ACROSS, middle, 3);
    nine.top = join_of(sewn->quilt, MUSLIN_AXIS_DOWN, nine.rows, 3);
    return nine;
}

START_TEST(a_nine_patch_has_nine_outlines)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    draw_all(solution, nine.top, MUSLIN_STAGE_FINISHED, &drawn);
    /* Example: a nine-patch has nine outlines of four corners. */
    ck_assert_uint_eq(drawn.count, 9);
    for (int i = 0; i < 9; i++) {
        int row = i / 3;
        int column = i % 3;
        const struct muslin_outline *outline = &drawn.rows[i];
        ck_assert_uint_eq(outline->size, sizeof *outline);
        ck_assert_int_eq(outline->node, i % 2 == 0 ? nine.blue : nine.white);
        ck_assert_int_eq(outline->fabric, i % 2 == 0 ? sewn.blue : sewn.white);
        ck_assert_int_eq(outline->first_corner, 4 * i);
        ck_assert_int_eq(outline->corners, 4);
        ck_assert_int_eq(outline->region, 1);
        ck_assert_int_eq(outline->quarter_turns, 0);
        ck_assert_int_eq(outline->mirrored, 0);
        ck_assert_int_eq(outline->on_point, 0);
        int x = 2 * column;
        int y = 4 - 2 * row;
        ck_corner(corner_of(&drawn, (size_t)i, 0), x, y, row < 2 ? nine.top : 0, row < 2 ? row : 0);
        ck_corner(corner_of(&drawn, (size_t)i, 1), x + 2, y, column < 2 ? nine.rows[row] : 0, column < 2 ? column : 0);
        ck_corner(corner_of(&drawn, (size_t)i, 2), x + 2, y + 2, row > 0 ? nine.top : 0, row > 0 ? row - 1 : 0);
        ck_corner(corner_of(&drawn, (size_t)i, 3), x, y + 2, column > 0 ? nine.rows[row] : 0,
                  column > 0 ? column - 1 : 0);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(a_part_alone_has_no_seams_outside)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    draw_all(solution, nine.rows[1], MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 3);
    ck_corner(corner_of(&drawn, 1, 0), 2, 0, 0, 0);
    ck_corner(corner_of(&drawn, 1, 1), 4, 0, nine.rows[1], 1);
    ck_corner(corner_of(&drawn, 1, 2), 4, 2, 0, 0);
    ck_corner(corner_of(&drawn, 1, 3), 2, 2, nine.rows[1], 0);
    draw_all(solution, nine.blue, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 1);
    for (int64_t k = 0; k < 4; k++)
        ck_assert_int_eq(corner_of(&drawn, 0, k)->seam_node, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* An L lies in eight ways. Upright, a 3 x 5 in patch has a 1 x 2 in one beside it, at the top; in all it is 4 in wide
 * and 5 in high. Worked out on squared paper: both boxes, where the larger one's lower left corner comes to lie, and
 * the line of the seam between them. */
static const struct {
    int mirrored;
    int quarters;
    struct box tall;
    struct box small;
    int corner_x;
    int corner_y;
    int seam_x; /* -1: the seam lies at seam_y */
    int seam_y;
} ways[] = {
    { 0, 0, { 0, 0, 3, 5 }, { 3, 3, 4, 5 }, 0, 0, 3, -1 },
    { 0, 1, { 0, 1, 5, 4 }, { 3, 0, 5, 1 }, 0, 4, -1, 1 },
    { 0, 2, { 1, 0, 4, 5 }, { 0, 0, 1, 2 }, 4, 5, 1, -1 },
    { 0, 3, { 0, 0, 5, 3 }, { 0, 3, 2, 4 }, 5, 0, -1, 3 },
    { 1, 0, { 1, 0, 4, 5 }, { 0, 3, 1, 5 }, 4, 0, 1, -1 },
    { 1, 1, { 0, 0, 5, 3 }, { 3, 3, 5, 4 }, 0, 0, -1, 3 },
    { 1, 2, { 0, 0, 3, 5 }, { 3, 0, 4, 2 }, 0, 5, 3, -1 },
    { 1, 3, { 0, 1, 5, 4 }, { 0, 0, 2, 1 }, 5, 4, -1, 1 },
};

/* One edge of the patch, and only one, has the join's seam, and it lies on its line. */
static void ck_seam_line(const struct drawn *drawn, size_t row, muslin_id join, int x, int y)
{
    int seams = 0;
    for (int64_t k = 0; k < 4; k++) {
        const struct muslin_outline_corner *from = corner_of(drawn, row, k);
        const struct muslin_outline_corner *to = corner_of(drawn, row, k + 1);
        if (from->seam_node == 0)
            continue;
        seams++;
        ck_assert_int_eq(from->seam_node, join);
        ck_assert_int_eq(from->seam, 0);
        ck_assert_int_eq(x < 0 ? from->y : from->x, WHOLE_IN(x < 0 ? y : x));
        ck_assert_int_eq(x < 0 ? to->y : to->x, WHOLE_IN(x < 0 ? y : x));
    }
    ck_assert_int_eq(seams, 1);
}

START_TEST(an_l_lies_in_eight_ways)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, 3, 5), patch_in(&sewn, sewn.white, 1, 2) };
    muslin_id l = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id way = ways[_i].mirrored ? mirror_of(sewn.quilt, l) : l;
    way = turn_of(sewn.quilt, way, ways[_i].quarters);
    struct muslin_solution *solution = solved(sewn.quilt, way);
    draw_all(solution, way, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 2);
    ck_box(&drawn, 0, ways[_i].tall);
    ck_box(&drawn, 1, ways[_i].small);
    ck_assert_int_eq(corner_of(&drawn, 0, 0)->x, WHOLE_IN(ways[_i].corner_x));
    ck_assert_int_eq(corner_of(&drawn, 0, 0)->y, WHOLE_IN(ways[_i].corner_y));
    for (size_t row = 0; row < 2; row++) {
        ck_assert_int_eq(drawn.rows[row].quarter_turns, ways[_i].quarters);
        ck_assert_int_eq(drawn.rows[row].mirrored, ways[_i].mirrored);
        ck_seam_line(&drawn, row, l, ways[_i].seam_x, ways[_i].seam_y);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Turned within turned: a pair turned by a quarter, beside itself mirrored, all turned by three quarters. */
START_TEST(turns_within_turns_add_up)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, 3, 2), patch_in(&sewn, sewn.white, 1, 2) };
    muslin_id side = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id quarter = turn_of(sewn.quilt, side, 1); /* 2 x 4, blue above */
    const muslin_id two[] = { quarter, mirror_of(sewn.quilt, quarter) };
    muslin_id both = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    muslin_id all = turn_of(sewn.quilt, both, 3); /* the top lies at the left, what was left at the bottom */
    struct muslin_solution *solution = solved(sewn.quilt, all);
    draw_all(solution, all, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 4);
    ck_box(&drawn, 0, (struct box){ 0, 0, 3, 2 });
    ck_box(&drawn, 1, (struct box){ 3, 0, 4, 2 });
    ck_box(&drawn, 2, (struct box){ 0, 2, 3, 4 });
    ck_box(&drawn, 3, (struct box){ 3, 2, 4, 4 });
    ck_assert_int_eq(drawn.rows[0].quarter_turns, 0);
    ck_assert_int_eq(drawn.rows[0].mirrored, 0);
    ck_assert_int_eq(drawn.rows[2].mirrored, 1);
    ck_assert_int_eq(drawn.rows[2].quarter_turns, 2); /* a mirror with the level line as axis: left for right, and half
                                                         a turn */
    ck_corner(corner_of(&drawn, 0, 2), 3, 2, both, 0);
    ck_corner(corner_of(&drawn, 0, 1), 3, 0, side, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Where a corner of a node so large lies when that is mirrored, left for right, and then turned clockwise. */
static struct muslin_outline_corner carried(const struct muslin_outline_corner *from, muslin_len width,
                                            muslin_len height, int mirrored, int quarters)
{
    struct muslin_outline_corner corner = *from;
    if (mirrored)
        corner.x = width - corner.x;
    for (int i = 0; i < quarters; i++) {
        const muslin_len x = corner.x;
        corner.x = corner.y;
        corner.y = (i % 2 == 0 ? width : height) - x;
    }
    return corner;
}

static int has_edge(const struct drawn *drawn, size_t row, const struct muslin_outline_corner *from,
                    const struct muslin_outline_corner *to)
{
    for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
        const struct muslin_outline_corner *a = corner_of(drawn, row, k);
        const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
        if (a->x == from->x && a->y == from->y && b->x == to->x && b->y == to->y)
            return a->seam_node == from->seam_node && a->seam == from->seam;
    }
    return 0;
}

/* Every seam lies along the edges that it lay along, in all eight ways to lay a node. */
START_TEST(seams_are_carried_along)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const struct nine_patch nine = make_nine_patch(&sewn);
    const struct unit_case split = { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 1, 3, 3, 2, 2 };
    const struct unit_case goose = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 3, 2, 1 };
    const struct muslin_quilt_unit_spec quarter = unit_spec_of(&split, fixed_of(sewn.quilt, WHOLE_IN(6)), 0, 0);
    const struct muslin_quilt_unit_spec flying = unit_spec_of(&goose, fixed_of(sewn.quilt, WHOLE_IN(6)), 0, 0);
    const muslin_id across[] = { nine.top, unit_of(&sewn, &quarter, 3) };
    const muslin_id geese[] = { unit_of(&sewn, &flying, 2), patch_in(&sewn, sewn.blue, 6, 3) };
    const muslin_id down[] = { join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, across, 2),
                               join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, geese, 2) };
    const muslin_id node = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, down, 2);
    for (int way = 1; way < 8; way++) {
        struct drawn plain;
        struct drawn laid;
        const muslin_id first = way >= 4 ? mirror_of(sewn.quilt, node) : node;
        const muslin_id lying = way % 4 != 0 ? turn_of(sewn.quilt, first, way % 4) : first;
        struct muslin_solution *solution = solved(sewn.quilt, lying);
        draw_all(solution, node, MUSLIN_STAGE_FINISHED, &plain);
        draw_all(solution, lying, MUSLIN_STAGE_FINISHED, &laid);
        ck_assert_uint_eq(laid.count, plain.count);
        for (size_t row = 0; row < plain.count; row++)
            for (int64_t k = 0; k < plain.rows[row].corners; k++) {
                const struct muslin_outline_corner *at = corner_of(&plain, row, k);
                struct muslin_outline_corner from = carried(at, WHOLE_IN(12), WHOLE_IN(9), way >= 4, way % 4);
                struct muslin_outline_corner to =
                    carried(corner_of(&plain, row, k + 1), WHOLE_IN(12), WHOLE_IN(9), way >= 4, way % 4);
                to.seam_node = at->seam_node;
                to.seam = at->seam;
                ck_assert(way >= 4 ? has_edge(&laid, row, &to, &from) : has_edge(&laid, row, &from, &to));
            }
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(raw_outlines_reach_beyond)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    draw_all(solution, nine.top, MUSLIN_STAGE_RAW, &drawn);
    const muslin_len quarter = IN(0, 1, 4);
    const struct muslin_outline_corner *low = corner_of(&drawn, 6, 0); /* lower left patch */
    const struct muslin_outline_corner *high = corner_of(&drawn, 6, 2);
    ck_assert_int_eq(low->x, -quarter);
    ck_assert_int_eq(low->y, -quarter);
    ck_assert_int_eq(high->x, WHOLE_IN(2) + quarter);
    ck_assert_int_eq(high->y, WHOLE_IN(2) + quarter);
    ck_assert_int_eq(corner_of(&drawn, 6, 1)->seam_node, nine.rows[2]);
    ck_assert_int_eq(corner_of(&drawn, 6, 2)->seam_node, nine.top);
    ck_assert_int_eq(corner_of(&drawn, 6, 2)->seam, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- pages ------------------------------------------------------------------------------------------------------ */

static void ck_filled(const void *bytes, size_t first, size_t end)
{
    const unsigned char *all = bytes;
    size_t touched = 0;
    for (size_t i = first; i < end; i++)
        touched += all[i] != FILL;
    ck_assert_uint_eq(touched, 0);
}

START_TEST(pages_make_up_the_whole)
{
    struct sewn sewn;
    struct drawn whole;
    struct drawn page;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    draw_all(solution, nine.top, MUSLIN_STAGE_FINISHED, &whole);
    for (size_t first = 0; first <= 9; first++)
        for (size_t capacity = 1; capacity <= 10; capacity++) {
            size_t given = 99;
            size_t expected = capacity < 9 - first ? capacity : 9 - first;
            memset(&page, FILL, sizeof page);
            ck_ok(muslin_solution_outlines(solution, nine.top, MUSLIN_STAGE_FINISHED, (int64_t)first, page.rows,
                                           sizeof page.rows[0], capacity, page.corners, sizeof page.corners[0],
                                           CORNER_ROOM, &page.count, &given, NULL));
            ck_assert_uint_eq(page.count, 9 - first);
            ck_assert_uint_eq(given, expected);
            for (size_t i = 0; i < given; i++)
                ck_assert_int_eq(page.rows[i].first_corner, (int64_t)(4 * i));
            for (size_t i = 0; i < given; i++)
                page.rows[i].first_corner += (int64_t)(4 * first);
            ck_assert_mem_eq(page.rows, whole.rows + first, given * sizeof page.rows[0]);
            ck_assert_mem_eq(page.corners, whole.corners + 4 * first, given * 4 * sizeof page.corners[0]);
            ck_filled(page.rows, given * sizeof page.rows[0], sizeof page.rows);
            ck_filled(page.corners, given * 4 * sizeof page.corners[0], sizeof page.corners);
        }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(corners_end_a_page_too)
{
    struct sewn sewn;
    struct drawn page;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    for (size_t room = 0; room <= 40; room++) {
        size_t given = 99;
        memset(&page, FILL, sizeof page);
        ck_ok(muslin_solution_outlines(solution, nine.top, MUSLIN_STAGE_FINISHED, 0, page.rows, sizeof page.rows[0],
                                       ROW_ROOM, page.corners, sizeof page.corners[0], room, &page.count, &given, NULL));
        ck_assert_uint_eq(page.count, 9);
        ck_assert_uint_eq(given, room / 4 < 9 ? room / 4 : 9);
        ck_filled(page.rows, given * sizeof page.rows[0], sizeof page.rows);
        ck_filled(page.corners, given * 4 * sizeof page.corners[0], sizeof page.corners);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(without_room_it_only_counts)
{
    struct sewn sewn;
    size_t count = 99;
    size_t given = 99;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    for (int64_t first = 0; first <= 9; first++) {
        ck_ok(muslin_solution_outlines(solution, nine.top, MUSLIN_STAGE_RAW, first, NULL, 0, 0, NULL, 0, 0, &count,
                                       &given, NULL));
        ck_assert_uint_eq(count, (size_t)(9 - first));
        ck_assert_uint_eq(given, 0);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Rows and corners of a later version: larger, the rest zero. */
START_TEST(rows_may_be_larger)
{
    struct sewn sewn;
    struct drawn plain;
    struct {
        struct muslin_outline row;
        int64_t later;
    } rows[9];
    struct {
        struct muslin_outline_corner corner;
        int64_t later[2];
    } corners[36];
    size_t count;
    size_t given;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    draw_all(solution, nine.top, MUSLIN_STAGE_FINISHED, &plain);
    memset(rows, FILL, sizeof rows);
    memset(corners, FILL, sizeof corners);
    ck_ok(muslin_solution_outlines(solution, nine.top, MUSLIN_STAGE_FINISHED, 0, &rows[0].row, sizeof rows[0], 9,
                                   &corners[0].corner, sizeof corners[0], 36, &count, &given, NULL));
    for (size_t i = 0; i < 9; i++) {
        ck_assert_uint_eq(rows[i].row.size, sizeof rows[0]);
        ck_assert_int_eq(rows[i].row.node, plain.rows[i].node);
        ck_assert_int_eq(rows[i].later, 0);
    }
    for (size_t i = 0; i < 36; i++) {
        ck_assert_uint_eq(corners[i].corner.size, sizeof corners[0]);
        ck_assert_int_eq(corners[i].corner.x, plain.corners[i].x);
        ck_assert_int_eq(corners[i].later[1], 0);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* What a call is given. */
struct asked {
    const struct muslin_solution *solution;
    muslin_id node;
    int64_t first;
    int32_t stage;
    size_t row_size;
    size_t corner_size;
    int rows;
    int corners;
    int count;
    int given;
};

static void ck_refused_outlines(const struct asked *a, muslin_status status, int32_t argument, int64_t value)
{
    struct drawn drawn;
    size_t given;
    struct muslin_problem problem = PROBLEM;
    memset(&drawn, FILL, sizeof drawn);
    memset(&given, FILL, sizeof given);
    ck_status(muslin_solution_outlines(a->solution, a->node, a->stage, a->first, a->rows ? drawn.rows : NULL,
                                       a->row_size, ROW_ROOM, a->corners ? drawn.corners : NULL, a->corner_size,
                                       CORNER_ROOM, a->count ? &drawn.count : NULL, a->given ? &given : NULL,
                                       &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.value, value);
    ck_filled(&drawn, 0, sizeof drawn);
    ck_filled(&given, 0, sizeof given);
}

START_TEST(what_is_wrong_is_said)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    muslin_id other = patch_of(sewn.quilt, sewn.blue, fixed_of(sewn.quilt, 7), sewn.two);
    struct muslin_solution *solution = solved(sewn.quilt, nine.top);
    const struct asked good = { solution, nine.top, 0, MUSLIN_STAGE_FINISHED, sizeof(struct muslin_outline),
                                sizeof(struct muslin_outline_corner), 1, 1, 1, 1 };
    struct asked a = good;
    a.solution = NULL;
    ck_refused_outlines(&a, MUSLIN_ERR_NULL, MUSLIN_ARG_QUILT, 0);
    a = good;
    a.count = 0;
    ck_refused_outlines(&a, MUSLIN_ERR_NULL, MUSLIN_ARG_OUTPUT, 0);
    a = good;
    a.given = 0;
    ck_refused_outlines(&a, MUSLIN_ERR_NULL, MUSLIN_ARG_OUTPUT, 0);
    a = good;
    a.rows = 0;
    ck_refused_outlines(&a, MUSLIN_ERR_NULL, MUSLIN_ARG_ROWS, 0);
    a = good;
    a.corners = 0;
    ck_refused_outlines(&a, MUSLIN_ERR_NULL, MUSLIN_ARG_CORNER_ROW, 0);
    a = good;
    a.row_size--;
    ck_refused_outlines(&a, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, (int64_t)a.row_size);
    a = good;
    a.corner_size = 4097;
    ck_refused_outlines(&a, MUSLIN_ERR_STRUCT_SIZE, MUSLIN_ARG_ROW_SIZE, 4097);
    a = good;
    a.node = other;
    ck_refused_outlines(&a, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_NODE, other);
    a = good;
    a.node = sewn.two;
    ck_refused_outlines(&a, MUSLIN_ERR_FOREIGN, MUSLIN_ARG_NODE, sewn.two);
    for (int32_t stage = 0; stage <= 3; stage += 3) {
        a = good;
        a.stage = stage;
        ck_refused_outlines(&a, MUSLIN_ERR_CHOICE, MUSLIN_ARG_STAGE, stage);
    }
    for (int64_t first = -1; first <= 10; first += 11) {
        a = good;
        a.first = first;
        ck_refused_outlines(&a, MUSLIN_ERR_RANGE, MUSLIN_ARG_INDEX, first);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- trims ------------------------------------------------------------------------------------------------------ */

static muslin_id trim_in(struct sewn *sewn, muslin_id node, int left, int right, int top, int bottom)
{
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id id = 0;
    spec.left = left == 0 ? 0 : fixed_of(sewn->quilt, WHOLE_IN(left));
    spec.right = right == 0 ? 0 : fixed_of(sewn->quilt, WHOLE_IN(right));
    spec.top = top == 0 ? 0 : fixed_of(sewn->quilt, WHOLE_IN(top));
    spec.bottom = bottom == 0 ? 0 : fixed_of(sewn->quilt, WHOLE_IN(bottom));
    ck_ok(muslin_quilt_trim(sewn->quilt, node, &spec, &id, NULL));
    return id;
}

/* A nine-patch that loses 1 in at the left and 3 in at the top: the first row is gone, the second half. */
START_TEST(a_trimmed_node_is_drawn_as_it_is_left)
{
    struct sewn sewn;
    struct drawn drawn;
    static const struct box boxes[] = { { 0, 2, 1, 3 }, { 1, 2, 3, 3 }, { 3, 2, 5, 3 },
                                        { 0, 0, 1, 2 }, { 1, 0, 3, 2 }, { 3, 0, 5, 2 } };
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    muslin_id trimmed = trim_in(&sewn, nine.top, 1, 0, 3, 0);
    struct muslin_solution *solution = solved(sewn.quilt, trimmed);
    draw_all(solution, trimmed, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 9);
    for (size_t i = 0; i < 3; i++)
        ck_assert_int_eq(drawn.rows[i].corners, 0);
    for (size_t i = 0; i < 6; i++)
        ck_box(&drawn, 3 + i, boxes[i]);
    ck_corner(corner_of(&drawn, 4, 0), 1, 2, nine.top, 1);
    ck_corner(corner_of(&drawn, 4, 1), 3, 2, nine.rows[1], 1);
    ck_corner(corner_of(&drawn, 4, 2), 3, 3, 0, 0); /* the trimmed edge */
    ck_corner(corner_of(&drawn, 4, 3), 1, 3, nine.rows[1], 0);
    draw_all(solution, trimmed, MUSLIN_STAGE_RAW, &drawn);
    ck_assert_int_eq(drawn.rows[0].corners, 4);
    ck_assert_int_eq(corner_of(&drawn, 0, 0)->x, WHOLE_IN(-1) - IN(0, 1, 4));
    ck_assert_int_eq(corner_of(&drawn, 0, 2)->y, WHOLE_IN(6) + IN(0, 1, 4));
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* What is sewn to a trimmed edge: the join's seam lies along it. Turned, so that sides change places. */
START_TEST(a_trimmed_edge_is_sewn_on)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { trim_in(&sewn, patch_in(&sewn, sewn.blue, 4, 3), 1, 1, 0, 0),
                               patch_in(&sewn, sewn.white, 1, 3) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id turned = turn_of(sewn.quilt, join, 1);
    struct muslin_solution *solution = solved(sewn.quilt, turned);
    draw_all(solution, join, MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 0, 2, 3 });
    ck_box(&drawn, 1, (struct box){ 2, 0, 3, 3 });
    ck_seam_line(&drawn, 0, join, 2, -1);
    ck_seam_line(&drawn, 1, join, 2, -1);
    draw_all(solution, turned, MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 1, 3, 3 });
    ck_box(&drawn, 1, (struct box){ 0, 0, 3, 1 });
    ck_seam_line(&drawn, 0, join, -1, 1);
    ck_seam_line(&drawn, 1, join, -1, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A patch of one tick, in the middle of nine: its edges lie along the four seams round it. */
START_TEST(edges_of_a_tick_have_their_seams)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id sizes[] = { fixed_of(sewn.quilt, 5), fixed_of(sewn.quilt, 1), fixed_of(sewn.quilt, 7) };
    muslin_id rows[3];
    for (int row = 0; row < 3; row++) {
        muslin_id across[3];
        for (int column = 0; column < 3; column++)
            across[column] = patch_of(sewn.quilt, sewn.blue, sizes[column], sizes[row]);
        rows[row] = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, across, 3);
    }
    const muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    draw_all(solution, top, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 9);
    ck_assert_int_eq(drawn.rows[4].corners, 4);
    for (int64_t k = 0; k < 4; k++) {
        const struct muslin_outline_corner *from = corner_of(&drawn, 4, k);
        const muslin_len right = corner_of(&drawn, 4, k + 1)->x - from->x;
        const muslin_len up = corner_of(&drawn, 4, k + 1)->y - from->y;
        ck_assert_int_eq(right * right + up * up, 1);
        /* along the bottom to the right, then up: seam 1 of the rows below, of the row to the right */
        ck_assert_int_eq(from->seam_node, right != 0 ? top : rows[1]);
        ck_assert_int_eq(from->seam, right + up == 1);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A patch 1 x 3 in, turned by a quarter, beside one of 2 x 1 in: 5 x 1 in. All that turned again, and mirrored first.
 * */
START_TEST(turned_within_turned)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { turn_of(sewn.quilt, patch_in(&sewn, sewn.blue, 1, 3), 1),
                               patch_in(&sewn, sewn.white, 2, 1) };
    const muslin_id row = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    const struct box blue[] = { { 0, 0, 3, 1 }, { 0, 2, 1, 5 }, { 2, 0, 5, 1 }, { 0, 0, 1, 3 } };
    const struct box white[] = { { 3, 0, 5, 1 }, { 0, 0, 1, 2 }, { 0, 0, 2, 1 }, { 0, 3, 1, 5 } };
    for (int mirrored = 0; mirrored <= 1; mirrored++)
        for (int32_t turn = 0; turn < 4; turn++) {
            muslin_id node = 0;
            ck_ok(muslin_quilt_lay(sewn.quilt, row, turn, mirrored, &node, NULL));
            struct muslin_solution *solution = solved(sewn.quilt, node);
            draw_all(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
            /* left for right of such a row is as if it were turned end for end */
            ck_box(&drawn, 0, blue[(turn + 2 * mirrored) % 4]);
            ck_box(&drawn, 1, white[(turn + 2 * mirrored) % 4]);
            muslin_solution_free(solution);
        }
    end_sewing(&sewn);
}
END_TEST

/* Trims within trims, and one exactly along a seam: what lay beyond is gone, and the seam with it. */
START_TEST(trims_within_trims)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id inner = trim_in(&sewn, patch_in(&sewn, sewn.blue, 4, 4), 0, 1, 1, 0); /* 3 x 3 */
    const muslin_id pair[] = { inner, patch_in(&sewn, sewn.white, 2, 3) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id along = trim_in(&sewn, join, 1, 2, 0, 0);  /* white is gone */
    muslin_id within = trim_in(&sewn, join, 0, 3, 0, 2); /* so it is, and some of the blue */
    const muslin_id both[] = { along, turn_of(sewn.quilt, within, 2) };
    muslin_id all = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, both, 2);
    struct muslin_solution *solution = solved(sewn.quilt, all);
    draw_all(solution, along, MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 0, 2, 3 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    for (int64_t k = 0; k < 4; k++)
        ck_assert_int_eq(corner_of(&drawn, 0, k)->seam_node, 0);
    draw_all(solution, within, MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 0, 2, 1 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    draw_all(solution, all, MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 1, 2, 4 });
    ck_box(&drawn, 2, (struct box){ 0, 0, 2, 1 });
    ck_seam_line(&drawn, 0, all, -1, 1);
    ck_seam_line(&drawn, 2, all, -1, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A trimmed part that lies beyond an outer trim, beside it and above it. */
START_TEST(what_is_trimmed_may_be_trimmed_away)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id patch = patch_in(&sewn, sewn.blue, 2, 2);
    const muslin_id pair[] = { patch, trim_in(&sewn, patch_in(&sewn, sewn.white, 4, 4), 1, 1, 1, 1) };
    muslin_id row = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id column = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, pair, 2);
    const muslin_id both[] = { trim_in(&sewn, row, 0, 3, 0, 0), trim_in(&sewn, column, 0, 0, 0, 3) };
    struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, both, 2));
    draw_all(solution, both[0], MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 0, 1, 2 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    draw_all(solution, both[1], MUSLIN_STAGE_FINISHED, &drawn);
    ck_box(&drawn, 0, (struct box){ 0, 0, 2, 1 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- large trees ------------------------------------------------------------------------------------------------ */

/* Strips round and round, each as long as what there is: a chain as deep as trees may be. Strips of 1 tick, the first
 * patch 1 tick square: strip k is sewn on the right (k odd) or below (k even). */
START_TEST(a_tree_may_be_as_deep_as_can_be)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id tick = fixed_of(sewn.quilt, 1);
    muslin_id chain = patch_of(sewn.quilt, sewn.blue, tick, tick);
    for (int k = 1; k < MUSLIN_QUILT_DEPTH_MAX; k++) {
        int across = k % 2;
        muslin_id along = extent_of(sewn.quilt, chain, across ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS);
        muslin_id pair[] = { chain, patch_of(sewn.quilt, sewn.white, across ? tick : along, across ? along : tick) };
        chain = join_of(sewn.quilt, across ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, pair, 2);
    }
    struct muslin_solution *solution = solved(sewn.quilt, chain);
    struct muslin_node_size all = size_of(solution, chain);
    ck_assert_int_eq(all.finished_width, 1 + MUSLIN_QUILT_DEPTH_MAX / 2);
    ck_assert_int_eq(all.finished_height, MUSLIN_QUILT_DEPTH_MAX / 2);
    for (int64_t k = 0; k < MUSLIN_QUILT_DEPTH_MAX; k += 91) {
        struct drawn drawn;
        size_t given;
        ck_ok(muslin_solution_outlines(solution, chain, MUSLIN_STAGE_FINISHED, k, drawn.rows, sizeof drawn.rows[0], 1,
                                       drawn.corners, sizeof drawn.corners[0], 4, &drawn.count, &given, NULL));
        ck_assert_uint_eq(given, 1);
        muslin_len x = k % 2 == 1 ? (k + 1) / 2 : 0;
        muslin_len height = k % 2 == 1 ? (k + 1) / 2 : 1;
        muslin_len y = all.finished_height - (k % 2 == 1 ? height : k / 2 + 1);
        ck_assert_int_eq(drawn.corners[0].x, x);
        ck_assert_int_eq(drawn.corners[0].y, y);
        ck_assert_int_eq(drawn.corners[2].y, y + height);
        ck_assert_int_eq(area_of(&drawn, 0), 2 * (k == 0 ? 1 : k % 2 == 1 ? height : k / 2 + 1));
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A hundred thousand patches, page by page: all there is is covered once. */
START_TEST(areas_add_up)
{
    struct sewn sewn;
    struct drawn page;
    begin_sewing(&sewn);
    struct nine_patch nine = make_nine_patch(&sewn);
    muslin_id quarter = turn_of(sewn.quilt, nine.top, 1);
    const muslin_id pair[] = { nine.top, quarter };
    muslin_id top = repeat_of(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), 70, 80);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    struct muslin_node_size all = size_of(solution, top);
    int64_t area = 0;
    int64_t first = 0;
    size_t given;
    do {
        ck_ok(muslin_solution_outlines(solution, top, MUSLIN_STAGE_FINISHED, first, page.rows, sizeof page.rows[0], ROW_ROOM,
                                       page.corners, sizeof page.corners[0], CORNER_ROOM, &page.count, &given, NULL));
        for (size_t i = 0; i < given; i++)
            area += area_of(&page, i);
        first += (int64_t)given;
    } while (given != 0);
    ck_assert_int_eq(first, 2 * 9 * 70 * 80);
    ck_assert_int_eq(area, 2 * all.finished_width * all.finished_height);
    ck_assert_int_eq(all.finished_width, WHOLE_IN(2 * 6 * 70));
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

Suite *solution_outlines_suite(void)
{
    Suite *suite = suite_create("solution_outlines");
    TCase *tcase = tcase_create("outlines");
    tcase_add_test(tcase, a_nine_patch_has_nine_outlines);
    tcase_add_test(tcase, a_part_alone_has_no_seams_outside);
    tcase_add_loop_test(tcase, an_l_lies_in_eight_ways, 0, (int)COUNT_OF(ways));
    tcase_add_test(tcase, turns_within_turns_add_up);
    tcase_add_test(tcase, seams_are_carried_along);
    tcase_add_test(tcase, raw_outlines_reach_beyond);
    tcase_add_test(tcase, pages_make_up_the_whole);
    tcase_add_test(tcase, corners_end_a_page_too);
    tcase_add_test(tcase, without_room_it_only_counts);
    tcase_add_test(tcase, rows_may_be_larger);
    tcase_add_test(tcase, what_is_wrong_is_said);
    tcase_add_test(tcase, a_trimmed_node_is_drawn_as_it_is_left);
    tcase_add_test(tcase, a_trimmed_edge_is_sewn_on);
    tcase_add_test(tcase, edges_of_a_tick_have_their_seams);
    tcase_add_test(tcase, turned_within_turned);
    tcase_add_test(tcase, trims_within_trims);
    tcase_add_test(tcase, what_is_trimmed_may_be_trimmed_away);
    tcase_add_test(tcase, a_tree_may_be_as_deep_as_can_be);
    tcase_add_test(tcase, areas_add_up);
    suite_add_tcase(suite, tcase);
    return suite;
}
