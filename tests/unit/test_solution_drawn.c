/* test_solution_drawn.c - outlines, seams along edges and sums of nodes other than patches and joins: units, what
 * surrounds a centre, fields on point, 60 degree rows, and what trimming leaves of them.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *solution_drawn_suite(void);

enum { ROWS = 64, CORNERS = 8 * ROWS };

struct drawn {
    size_t count;
    struct muslin_outline rows[ROWS];
    struct muslin_outline_corner corners[CORNERS];
};

static void draw_all(const struct muslin_solution *solution, muslin_id node, struct drawn *drawn)
{
    size_t given = 0;
    memset(drawn, 0, sizeof *drawn);
    ck_ok(muslin_solution_outlines(solution, node, MUSLIN_STAGE_FINISHED, 0, drawn->rows, sizeof drawn->rows[0], ROWS,
                                   drawn->corners, sizeof drawn->corners[0], CORNERS, &drawn->count, &given, NULL));
    ck_assert_uint_eq(given, drawn->count);
}

static const struct muslin_outline_corner *corner_of(const struct drawn *drawn, size_t row, int64_t k)
{
    const struct muslin_outline *outline = &drawn->rows[row];
    return &drawn->corners[outline->first_corner + k % outline->corners];
}

/* Corners in inches, from any of them on, counter-clockwise. */
struct point {
    int x;
    int y;
};

static int is_ring_from(const struct drawn *drawn, size_t row, const struct point *points, int64_t n, int64_t first)
{
    for (int64_t k = 0; k < n; k++) {
        const struct muslin_outline_corner *corner = corner_of(drawn, row, first + k);
        if (corner->x != WHOLE_IN(points[k].x) || corner->y != WHOLE_IN(points[k].y))
            return 0;
    }
    return 1;
}

static void ck_ring(const struct drawn *drawn, size_t row, const struct point *points, int64_t n)
{
    int found = 0;
    ck_assert_int_eq(drawn->rows[row].corners, n);
    for (int64_t first = 0; first < n; first++)
        found += is_ring_from(drawn, row, points, n, first);
    ck_assert_int_eq(found, 1);
}
#define CK_RING(drawn, row, ...) \
    ck_ring(drawn, row, (const struct point[]){ __VA_ARGS__ }, \
            (int64_t)(sizeof((const struct point[]){ __VA_ARGS__ }) / sizeof(struct point)))

/* The number of the seam along the edge from one point to another, which lies in that node; -1: none does. */
static int64_t seam_along(const struct drawn *drawn, size_t row, muslin_id node, struct point from, struct point to)
{
    for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
        const struct muslin_outline_corner *a = corner_of(drawn, row, k);
        const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
        if (a->x == WHOLE_IN(from.x) && a->y == WHOLE_IN(from.y) && b->x == WHOLE_IN(to.x) && b->y == WHOLE_IN(to.y)) {
            ck_assert(a->seam_node == node || a->seam_node == 0);
            return a->seam_node == 0 ? -1 : a->seam;
        }
    }
    ck_abort_msg("no such edge");
    return -2;
}
#define SEAM(drawn, row, node, x, y, to_x, to_y) \
    seam_along(drawn, row, node, (struct point){ x, y }, (struct point){ to_x, to_y })

static muslin_id patch_in(struct sewn *sewn, int width, int height)
{
    return patch_of(sewn->quilt, sewn->blue, fixed_of(sewn->quilt, WHOLE_IN(width)),
                    fixed_of(sewn->quilt, WHOLE_IN(height)));
}

static muslin_id trim_in(struct sewn *sewn, muslin_id node, muslin_len left, muslin_len right, muslin_len top,
                         muslin_len bottom)
{
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id id = 0;
    spec.left = fixed_of(sewn->quilt, left);
    spec.right = fixed_of(sewn->quilt, right);
    spec.top = fixed_of(sewn->quilt, top);
    spec.bottom = fixed_of(sewn->quilt, bottom);
    ck_ok(muslin_quilt_trim(sewn->quilt, node, &spec, &id, NULL));
    return id;
}

static muslin_id unit_in(struct sewn *sewn, int32_t kind, muslin_id width, muslin_id height)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    spec.kind = kind;
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    spec.width = width;
    spec.height = height;
    return unit_of(sewn, &spec, 2);
}

/* ---- round a centre --------------------------------------------------------------------------------------------- */

static muslin_id pinwheel_of(struct sewn *sewn, const muslin_id *five)
{
    const struct muslin_quilt_pinwheel_spec spec = { sizeof spec, 0, five[0], five[1], five[2], five[3], five[4] };
    muslin_id id = 0;
    ck_ok(muslin_quilt_pinwheel(sewn->quilt, &spec, &id, NULL));
    return id;
}

/* A 2 in square, and 4 x 2 in round it. Seams are sewn to the top first, then right, bottom and left; each runs along
 * the centre and the end of the arm before. */
START_TEST(a_pinwheel_has_four_seams)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id level = patch_in(&sewn, 4, 2);
    const muslin_id upright = patch_in(&sewn, 2, 4);
    const muslin_id five[] = { patch_in(&sewn, 2, 2), level, upright, level, upright };
    muslin_id node = pinwheel_of(&sewn, five);
    struct muslin_solution *solution = solved(sewn.quilt, node);
    draw_all(solution, node, &drawn);
    ck_assert_uint_eq(drawn.count, 5);
    CK_RING(&drawn, 0, { 2, 2 }, { 4, 2 }, { 4, 4 }, { 2, 4 });
    CK_RING(&drawn, 1, { 0, 4 }, { 4, 4 }, { 4, 6 }, { 0, 6 });
    CK_RING(&drawn, 2, { 4, 2 }, { 6, 2 }, { 6, 6 }, { 4, 6 });
    CK_RING(&drawn, 3, { 2, 0 }, { 6, 0 }, { 6, 2 }, { 2, 2 });
    CK_RING(&drawn, 4, { 0, 0 }, { 2, 0 }, { 2, 4 }, { 0, 4 });
    ck_assert_int_eq(SEAM(&drawn, 0, node, 4, 4, 2, 4), 0);
    ck_assert_int_eq(SEAM(&drawn, 0, node, 4, 2, 4, 4), 1);
    ck_assert_int_eq(SEAM(&drawn, 0, node, 2, 2, 4, 2), 2);
    ck_assert_int_eq(SEAM(&drawn, 0, node, 2, 4, 2, 2), 3);
    ck_assert_int_eq(SEAM(&drawn, 1, node, 0, 4, 4, 4), 0);
    ck_assert_int_eq(SEAM(&drawn, 1, node, 4, 4, 4, 6), 1);
    ck_assert_int_eq(SEAM(&drawn, 1, node, 4, 6, 0, 6), -1);
    ck_assert_int_eq(SEAM(&drawn, 2, node, 4, 6, 4, 2), 1);
    ck_assert_int_eq(SEAM(&drawn, 2, node, 4, 2, 6, 2), 2);
    ck_assert_int_eq(SEAM(&drawn, 3, node, 6, 2, 2, 2), 2);
    ck_assert_int_eq(SEAM(&drawn, 3, node, 2, 2, 2, 0), 3);
    ck_assert_int_eq(SEAM(&drawn, 4, node, 2, 0, 2, 4), 3);
    ck_assert_int_eq(SEAM(&drawn, 4, node, 2, 4, 0, 4), 0);
    ck_assert_int_eq(SEAM(&drawn, 4, node, 0, 4, 0, 0), -1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Strips of 2 in at the left and below a 6 in square. The mitre is seam 2, after those to the centre. */
static muslin_id attic_window(struct sewn *sewn, muslin_id centre)
{
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id id = 0;
    spec.centre = centre;
    spec.left_width = spec.bottom_width = sewn->two;
    spec.left_fabric = spec.bottom_fabric = sewn->white;
    ck_ok(muslin_quilt_set_in(sewn->quilt, &spec, &id, NULL));
    return id;
}

START_TEST(strips_with_a_mitre)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id centre = patch_in(&sewn, 6, 6);
    muslin_id node = attic_window(&sewn, centre);
    struct muslin_solution *solution = solved(sewn.quilt, node);
    draw_all(solution, node, &drawn);
    ck_assert_uint_eq(drawn.count, 3);
    ck_assert_int_eq(drawn.rows[0].node, node);
    ck_assert_int_eq(drawn.rows[2].node, centre);
    CK_RING(&drawn, 0, { 0, 0 }, { 2, 2 }, { 2, 8 }, { 0, 8 });
    CK_RING(&drawn, 1, { 0, 0 }, { 8, 0 }, { 8, 2 }, { 2, 2 });
    CK_RING(&drawn, 2, { 2, 2 }, { 8, 2 }, { 8, 8 }, { 2, 8 });
    ck_assert_int_eq(SEAM(&drawn, 0, node, 0, 0, 2, 2), 2);
    ck_assert_int_eq(SEAM(&drawn, 0, node, 2, 2, 2, 8), 0);
    ck_assert_int_eq(SEAM(&drawn, 0, node, 2, 8, 0, 8), -1);
    ck_assert_int_eq(SEAM(&drawn, 1, node, 8, 2, 2, 2), 1);
    ck_assert_int_eq(SEAM(&drawn, 1, node, 2, 2, 0, 0), 2);
    ck_assert_int_eq(SEAM(&drawn, 2, node, 2, 8, 2, 2), 0);
    ck_assert_int_eq(SEAM(&drawn, 2, node, 2, 2, 8, 2), 1);
    ck_assert_int_eq(SEAM(&drawn, 2, node, 8, 2, 8, 8), -1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Sewn to something, a strip's outside and the centre's have that seam. */
START_TEST(what_surrounds_is_sewn_on)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { attic_window(&sewn, patch_in(&sewn, 6, 6)), patch_in(&sewn, 1, 8) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    struct muslin_solution *solution = solved(sewn.quilt, join);
    draw_all(solution, join, &drawn);
    ck_assert_int_eq(SEAM(&drawn, 1, join, 8, 0, 8, 2), 0);
    ck_assert_int_eq(SEAM(&drawn, 2, join, 8, 2, 8, 8), 0);
    ck_assert_int_eq(SEAM(&drawn, 3, join, 8, 8, 8, 0), 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- trimmed ---------------------------------------------------------------------------------------------------- */

/* A half-square of 4 in whose left inch is cut off: a triangle with a corner less, another with one more. */
START_TEST(a_half_square_is_trimmed)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id unit = unit_in(&sewn, MUSLIN_UNIT_HALF_SQUARE, fixed_of(sewn.quilt, WHOLE_IN(4)), 0);
    muslin_id trimmed = trim_in(&sewn, unit, WHOLE_IN(1), 0, 0, 0);
    muslin_id both = trim_in(&sewn, unit, WHOLE_IN(1), 0, WHOLE_IN(1), 0);
    muslin_id corner = trim_in(&sewn, unit, WHOLE_IN(2), 0, 0, WHOLE_IN(2));
    const muslin_id three[] = { trimmed, both, corner };
    muslin_id all = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    struct muslin_solution *solution = solved(sewn.quilt, all);
    draw_all(solution, trimmed, &drawn);
    CK_RING(&drawn, 0, { 0, 0 }, { 3, 0 }, { 3, 4 }, { 0, 1 });
    CK_RING(&drawn, 1, { 0, 1 }, { 3, 4 }, { 0, 4 });
    ck_assert_int_eq(SEAM(&drawn, 0, unit, 3, 4, 0, 1), 0);
    ck_assert_int_eq(SEAM(&drawn, 0, unit, 0, 1, 0, 0), -1);
    ck_assert_int_eq(SEAM(&drawn, 1, unit, 0, 1, 3, 4), 0);
    draw_all(solution, both, &drawn);
    CK_RING(&drawn, 0, { 0, 0 }, { 3, 0 }, { 3, 3 }, { 2, 3 }, { 0, 1 });
    CK_RING(&drawn, 1, { 0, 1 }, { 2, 3 }, { 0, 3 });
    draw_all(solution, corner, &drawn);
    CK_RING(&drawn, 0, { 0, 0 }, { 2, 0 }, { 2, 2 });
    CK_RING(&drawn, 1, { 0, 0 }, { 2, 2 }, { 0, 2 });
    draw_all(solution, all, &drawn);
    ck_assert_int_eq(SEAM(&drawn, 0, all, 3, 0, 3, 4), 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* What lies within a triangle has its four sides; what lies beyond it, none; only its corner touches. */
START_TEST(a_window_may_lie_within_a_piece)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id unit = unit_in(&sewn, MUSLIN_UNIT_HALF_SQUARE, fixed_of(sewn.quilt, WHOLE_IN(8)), 0);
    muslin_id low = trim_in(&sewn, unit, WHOLE_IN(4), WHOLE_IN(1), WHOLE_IN(5), WHOLE_IN(1));
    muslin_id touching = trim_in(&sewn, unit, WHOLE_IN(4), WHOLE_IN(1), WHOLE_IN(4), WHOLE_IN(1));
    const muslin_id pair[] = { low, touching };
    struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2));
    draw_all(solution, low, &drawn);
    CK_RING(&drawn, 0, { 0, 0 }, { 3, 0 }, { 3, 2 }, { 0, 2 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    draw_all(solution, touching, &drawn);
    CK_RING(&drawn, 0, { 0, 0 }, { 3, 0 }, { 3, 3 }, { 0, 3 });
    ck_assert_int_eq(drawn.rows[1].corners, 0);
    for (int64_t k = 0; k < 4; k++)
        ck_assert_int_eq(corner_of(&drawn, 0, k)->seam_node, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A half-rectangle of 7 x 3 ticks, 2 ticks cut off at the left and 1 at the top. Its seam is met at 2 3/7 -> 2 down
 * there: at x = 2 it lies at 6/7, nearest 1; at y = 2 at 14/3 = 4 2/3, nearest 5, 3 when the left is gone. Rounded once
 * each, though 1 and 2 would make it 4 2/3 - 1/6. */
START_TEST(slanted_edges_end_at_the_nearest_tick)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id unit = unit_in(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, fixed_of(sewn.quilt, 7), fixed_of(sewn.quilt, 3));
    muslin_id trimmed = trim_in(&sewn, unit, 2, 0, 1, 0);
    struct muslin_solution *solution = solved(sewn.quilt, trimmed);
    draw_all(solution, trimmed, &drawn);
    const muslin_len low[][2] = { { 0, 0 }, { 5, 0 }, { 5, 2 }, { 3, 2 }, { 0, 1 } };
    const muslin_len high[][2] = { { 3, 2 }, { 0, 2 }, { 0, 1 } };
    ck_assert_int_eq(drawn.rows[0].corners, 5);
    for (int64_t k = 0; k < 5; k++) {
        int64_t first = 0;
        while (corner_of(&drawn, 0, first)->x != 0 || corner_of(&drawn, 0, first)->y != 0)
            first++;
        ck_assert_int_eq(corner_of(&drawn, 0, first + k)->x, low[k][0]);
        ck_assert_int_eq(corner_of(&drawn, 0, first + k)->y, low[k][1]);
    }
    ck_assert_int_eq(drawn.rows[1].corners, 3);
    for (int64_t k = 0; k < 3; k++) {
        int64_t first = 0;
        while (corner_of(&drawn, 1, first)->x != 3)
            first++;
        ck_assert_int_eq(corner_of(&drawn, 1, first + k)->x, high[k][0]);
        ck_assert_int_eq(corner_of(&drawn, 1, first + k)->y, high[k][1]);
    }
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- on point --------------------------------------------------------------------------------------------------- */

static muslin_id field_of(struct sewn *sewn, int64_t columns, int64_t rows, muslin_id block)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id blocks[ROWS];
    muslin_id id = 0;
    const size_t n = (size_t)(columns * rows + (columns - 1) * (rows - 1));
    for (size_t i = 0; i < n; i++)
        blocks[i] = block;
    spec.columns = columns;
    spec.rows = rows;
    spec.side_fabric = sewn->blue;
    spec.corner_fabric = sewn->white;
    ck_ok(muslin_quilt_diagonal(sewn->quilt, &spec, blocks, n, &id, NULL));
    return id;
}

/* Each edge lies on the outside or is another's, the other way round, and both name one seam. Returns how many do. */
static int shared_edges(const struct drawn *drawn)
{
    const size_t n = (size_t)(drawn->rows[drawn->count - 1].first_corner + drawn->rows[drawn->count - 1].corners);
    int shared = 0;
    int outside = 0;
    for (size_t row = 0; row < drawn->count; row++)
        for (int64_t k = 0; k < drawn->rows[row].corners; k++)
            outside += corner_of(drawn, row, k)->seam_node == 0;
    for (size_t row = 0; row < drawn->count; row++)
        for (size_t other = 0; other < drawn->count; other++)
            for (int64_t k = 0; k < drawn->rows[row].corners; k++)
                for (int64_t m = 0; m < drawn->rows[other].corners; m++) {
                    const struct muslin_outline_corner *a = corner_of(drawn, row, k);
                    const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
                    const struct muslin_outline_corner *c = corner_of(drawn, other, m);
                    const struct muslin_outline_corner *d = corner_of(drawn, other, m + 1);
                    if (a->x != d->x || a->y != d->y || b->x != c->x || b->y != c->y)
                        continue;
                    ck_assert_int_ne(a->seam_node, 0);
                    ck_assert_int_eq(a->seam_node, c->seam_node);
                    ck_assert_int_eq(a->seam, c->seam);
                    shared++;
                }
    ck_assert_int_eq((int)n, shared + outside);
    return shared / 2;
}

/* c x r blocks and (c - 1)(r - 1) alternates have four edges each; so many of them are alternates' and main blocks' at
 * once, the others are triangles'. */
START_TEST(blocks_on_point_are_sewn_on_all_sides)
{
    struct sewn sewn;
    struct drawn drawn;
    static const int sizes[][2] = { { 1, 1 }, { 2, 2 }, { 3, 2 }, { 2, 4 }, { 3, 3 }, { 1, 3 }, { 4, 1 } };
    begin_sewing(&sewn);
    for (size_t i = 0; i < sizeof sizes / sizeof sizes[0]; i++) {
        const int c = sizes[i][0];
        const int r = sizes[i][1];
        muslin_id block = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
        muslin_id field = field_of(&sewn, c, r, block);
        struct muslin_solution *solution = solved(sewn.quilt, field);
        draw_all(solution, field, &drawn);
        ck_assert_uint_eq(drawn.count, (size_t)(c * r + (c - 1) * (r - 1) + 2 * c + 2 * r));
        ck_assert_int_eq(shared_edges(&drawn), 4 * c * r);
        const struct muslin_outline *last = &drawn.rows[drawn.count - 1];
        ck_assert_int_eq(last->node, block);
        ck_assert_int_eq(last->on_point, 1);
        ck_assert_int_eq(last->quarter_turns, 0);
        ck_assert_int_eq(drawn.rows[0].node, field);
        ck_assert_int_eq(drawn.rows[0].on_point, 0);
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* A square of 2 in on point: diagonal 2 sqrt 2 in = 22989.46 ticks, its half 11494.73. */
START_TEST(a_field_lies_in_every_way)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id field = field_of(&sewn, 1, 1, patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two));
    for (int32_t turn = 0; turn < 4; turn++)
        for (int32_t mirrored = 0; mirrored < 2; mirrored++) {
            muslin_id lying = turn_of(sewn.quilt, mirrored ? mirror_of(sewn.quilt, field) : field, turn);
            struct muslin_solution *solution = solved(sewn.quilt, lying);
            draw_all(solution, lying, &drawn);
            ck_assert_uint_eq(drawn.count, 5);
            /* mirrored, what was turned by an eighth clockwise is turned back by one: three quarters and an eighth */
            ck_assert_int_eq(drawn.rows[4].quarter_turns, (turn + (mirrored ? 3 : 0)) % 4);
            ck_assert_int_eq(drawn.rows[4].on_point, 1);
            ck_assert_int_eq(drawn.rows[4].mirrored, mirrored);
            ck_assert_int_eq(drawn.rows[0].quarter_turns, turn);
            ck_assert_int_eq(shared_edges(&drawn), 4);
            for (int64_t k = 0; k < 4; k++) {
                const struct muslin_outline_corner *corner = corner_of(&drawn, 4, k);
                const int64_t tips = (corner->x == 0) + (corner->y == 0) + (corner->x == 22989) + (corner->y == 22989);
                ck_assert_int_eq(tips, 1);
            }
            muslin_solution_free(solution);
        }
    end_sewing(&sewn);
}
END_TEST

/* A field trimmed to a block, on point again: two eighths are a quarter. A trimmed block is cut in its own frame. */
START_TEST(fields_within_fields)
{
    struct sewn sewn;
    struct drawn drawn;
    begin_sewing(&sewn);
    muslin_id patch = trim_in(&sewn, patch_in(&sewn, 3, 4), WHOLE_IN(1), 0, 0, WHOLE_IN(2)); /* 2 x 2 */
    muslin_id inner = field_of(&sewn, 1, 1, patch);                                          /* 22989 ticks */
    muslin_id block = trim_in(&sewn, inner, 0, 2989, 2989, 0);
    muslin_id outer = field_of(&sewn, 1, 1, block);
    struct muslin_solution *solution = solved(sewn.quilt, outer);
    draw_all(solution, outer, &drawn);
    ck_assert_uint_eq(drawn.count, 4 + 4 + 1);
    ck_assert_int_eq(drawn.rows[8].on_point, 0);
    ck_assert_int_eq(drawn.rows[8].quarter_turns, 1);
    ck_assert_int_eq(drawn.rows[4].on_point, 1);
    /* of its corners one is cut off at the right and one at the top: 4 + 2 */
    ck_assert_int_eq(drawn.rows[8].corners, 6);
    draw_all(solution, inner, &drawn);
    ck_assert_int_eq(shared_edges(&drawn), 4);
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    ck_assert_int_gt(totals.area_error, 0);
    ck_assert_int_le(llabs(totals.finished_area - totals.patch_area), totals.area_error);
    ck_assert_int_eq(totals.exact, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

static int64_t drawn_area(const struct muslin_solution *solution, muslin_id node)
{
    static struct drawn drawn;
    int64_t area = 0;
    draw_all(solution, node, &drawn);
    for (size_t row = 0; row < drawn.count; row++)
        for (int64_t k = 0; k < drawn.rows[row].corners; k++) {
            const struct muslin_outline_corner *from = corner_of(&drawn, row, k);
            const struct muslin_outline_corner *to = corner_of(&drawn, row, k + 1);
            area += from->x * to->y - to->x * from->y;
        }
    return area;
}

static struct muslin_solution_total totals_of(const struct muslin_solution *solution)
{
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    return totals;
}

/* What trimming takes away is the difference of what is drawn before and after, patch by patch, whether a block is cut
 * or not, also of blocks on point that are fields on point themselves, turned and mirrored. */
START_TEST(what_is_trimmed_from_a_field_is_what_is_no_longer_drawn)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id block = repeat_of(sewn.quilt, patch_in(&sewn, 1, 1), 2, 2);
    const muslin_id field = field_of(&sewn, 2, 2, block); /* 4 sqrt 2 = 5.66 in */
    const muslin_id nested = field_of(&sewn, 2, 1, field);
    const muslin_id whole[] = { field, nested, turn_of(sewn.quilt, nested, 1), mirror_of(sewn.quilt, nested) };
    const muslin_len trims[] = { 0, 1, 2, 3, 1000, WHOLE_IN(1), WHOLE_IN(1) + 3363, WHOLE_IN(2) };
    for (size_t i = 0; i < COUNT_OF(whole); i++)
        for (size_t k = 0; k < COUNT_OF(trims); k++)
            for (size_t m = 0; m < COUNT_OF(trims); m += 3) {
                const muslin_id trimmed = trim_in(&sewn, whole[i], trims[k], trims[m], 1, trims[k]);
                struct muslin_solution *before = solved(sewn.quilt, whole[i]);
                struct muslin_solution *after = solved(sewn.quilt, trimmed);
                ck_assert_int_eq(totals_of(before).patch_area - totals_of(after).patch_area,
                                 drawn_area(before, whole[i]) - drawn_area(after, trimmed));
                muslin_solution_free(before);
                muslin_solution_free(after);
            }
    end_sewing(&sewn);
}
END_TEST

/* ---- sums ------------------------------------------------------------------------------------------------------- */

struct term {
    int32_t kind;
    muslin_id id;
    int64_t times;
    muslin_len value;
};

enum { TERMS = 16 };

/* The terms of the finished size; then two allowances end it. */
static void ck_finished(const struct muslin_solution *solution, muslin_id node, int32_t axis, const struct term *terms,
                        size_t n)
{
    struct muslin_term rows[TERMS];
    struct muslin_node_size size = size_of(solution, node);
    size_t count = 0;
    ck_ok(muslin_solution_explain(solution, node, axis, rows, sizeof rows[0], TERMS, &count, NULL));
    ck_assert_uint_eq(count, n + 2);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].finished, 1);
        ck_assert_int_eq(rows[i].kind, terms[i].kind);
        ck_assert_int_eq(rows[i].id, terms[i].id);
        ck_assert_int_eq(rows[i].times, terms[i].times);
        ck_assert_int_eq(rows[i].value, terms[i].value);
    }
    ck_assert_int_eq(rows[n - 1].sum, axis == MUSLIN_AXIS_ACROSS ? size.finished_width : size.finished_height);
    ck_assert_int_eq(rows[n + 1].kind, MUSLIN_TERM_ALLOWANCE);
    ck_assert_int_eq(rows[n + 1].sum, axis == MUSLIN_AXIS_ACROSS ? size.unfinished_width : size.unfinished_height);
}
#define CK_FINISHED(solution, node, axis, ...) \
    ck_finished(solution, node, axis, (const struct term[]){ __VA_ARGS__ }, \
                sizeof((const struct term[]){ __VA_ARGS__ }) / sizeof(struct term))

START_TEST(units_explained)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id four = fixed_of(sewn.quilt, WHOLE_IN(4));
    muslin_id half = unit_in(&sewn, MUSLIN_UNIT_HALF_SQUARE, sewn.two, 0);
    muslin_id geese = unit_in(&sewn, MUSLIN_UNIT_FLYING_GEESE, four, 0);
    muslin_id slant = unit_in(&sewn, MUSLIN_UNIT_HALF_RECTANGLE, four, sewn.two);
    const muslin_id three[] = { half, geese, slant };
    struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3));
    CK_FINISHED(solution, half, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_MEASURE, sewn.two, 1, WHOLE_IN(2) });
    CK_FINISHED(solution, half, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_MEASURE, sewn.two, 1, WHOLE_IN(2) });
    CK_FINISHED(solution, geese, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_HALF, four, 1, WHOLE_IN(2) });
    CK_FINISHED(solution, slant, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_MEASURE, four, 1, WHOLE_IN(4) });
    CK_FINISHED(solution, slant, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_MEASURE, sewn.two, 1, WHOLE_IN(2) });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(shapes_explained)
{
    struct sewn sewn;
    muslin_id node = 0;
    begin_sewing(&sewn);
    const struct muslin_corner_spec corners[] = { CORNER(-1, 0, 0), CORNER(-1, 900, 0), CORNER(-1, 900, 700),
                                                  CORNER(-1, 0, 700), CORNER(0, 0, 0), CORNER(0, 900, 0),
                                                  CORNER(0, 900, 700), CORNER(0, 0, 700) };
    ck_ok(muslin_quilt_shape(sewn.quilt, corners, sizeof corners[0], 8, &sewn.blue, 1, sewn.two, 0, &node, NULL));
    struct muslin_solution *solution = solved(sewn.quilt, node);
    CK_FINISHED(solution, node, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_MEASURE, sewn.two, 1, WHOLE_IN(2) });
    CK_FINISHED(solution, node, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_DRAWN, 0, 1, 700 });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Each of the three rows and columns in its turn is the longest. */
START_TEST(pinwheels_explained)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len in = WHOLE_IN(1);
    const muslin_id small = patch_in(&sewn, 2, 2);
    const muslin_id level = patch_in(&sewn, 4, 2);
    const muslin_id upright = patch_in(&sewn, 2, 4);
    const muslin_id fits[] = { small, level, upright, level, upright };
    const muslin_id wide[] = { patch_in(&sewn, 5, 5), level, upright, level, upright };
    const muslin_id third[] = { small, level, patch_in(&sewn, 2, 9), patch_in(&sewn, 9, 2), upright };
    const muslin_id nodes[] = { pinwheel_of(&sewn, fits), pinwheel_of(&sewn, wide), pinwheel_of(&sewn, third) };
    struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, nodes, 3));
    enum { CHILD = MUSLIN_TERM_CHILD };
    CK_FINISHED(solution, nodes[0], MUSLIN_AXIS_ACROSS, { CHILD, level, 1, 4 * in }, { CHILD, upright, 1, 2 * in });
    CK_FINISHED(solution, nodes[0], MUSLIN_AXIS_DOWN, { CHILD, level, 1, 2 * in }, { CHILD, upright, 1, 4 * in });
    CK_FINISHED(solution, nodes[1], MUSLIN_AXIS_ACROSS, { CHILD, upright, 1, 2 * in }, { CHILD, wide[0], 1, 5 * in },
                { CHILD, upright, 1, 2 * in });
    CK_FINISHED(solution, nodes[1], MUSLIN_AXIS_DOWN, { CHILD, level, 1, 2 * in }, { CHILD, wide[0], 1, 5 * in },
                { CHILD, level, 1, 2 * in });
    CK_FINISHED(solution, nodes[2], MUSLIN_AXIS_ACROSS, { CHILD, upright, 1, 2 * in }, { CHILD, third[3], 1, 9 * in });
    CK_FINISHED(solution, nodes[2], MUSLIN_AXIS_DOWN, { CHILD, third[2], 1, 9 * in }, { CHILD, third[3], 1, 2 * in });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A side without a strip has the centre's own allowance. */
START_TEST(set_ins_explained)
{
    struct sewn sewn;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_quilt_set_in_spec strips = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    struct muslin_term rows[TERMS];
    muslin_id node = 0;
    size_t count = 0;
    begin_sewing(&sewn);
    const muslin_id wide = fixed_of(sewn.quilt, 4000);
    spec.fabric = sewn.blue;
    spec.width = spec.height = fixed_of(sewn.quilt, WHOLE_IN(6));
    spec.top = spec.bottom = wide;
    ck_ok(muslin_quilt_patch(sewn.quilt, &spec, &strips.centre, NULL));
    strips.left_width = sewn.two;
    strips.right_width = fixed_of(sewn.quilt, 77);
    strips.left_fabric = strips.right_fabric = sewn.white;
    ck_ok(muslin_quilt_set_in(sewn.quilt, &strips, &node, NULL));
    struct muslin_solution *solution = solved(sewn.quilt, node);
    CK_FINISHED(solution, node, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_MEASURE, sewn.two, 1, WHOLE_IN(2) },
                { MUSLIN_TERM_CHILD, strips.centre, 1, WHOLE_IN(6) },
                { MUSLIN_TERM_MEASURE, strips.right_width, 1, 77 });
    CK_FINISHED(solution, node, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_CHILD, strips.centre, 1, WHOLE_IN(6) });
    muslin_solution_free(solution);
    strips.right_width = strips.right_fabric = 0;
    strips.left_width = strips.left_fabric = 0;
    strips.top_width = sewn.two;
    strips.top_fabric = sewn.white;
    ck_ok(muslin_quilt_set_in(sewn.quilt, &strips, &node, NULL));
    solution = solved(sewn.quilt, node);
    ck_ok(muslin_solution_explain(solution, node, MUSLIN_AXIS_DOWN, rows, sizeof rows[0], TERMS, &count, NULL));
    ck_assert_uint_eq(count, 4);
    ck_assert_int_eq(rows[3].id, wide); /* the lower edge is the centre's */
    ck_assert_int_eq(rows[2].value, IN(0, 1, 4));
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* 3 x 6 in sqrt 2 = 206905.10 ticks, with 1 in set off at both ends; 5 triangles 3 in high and two halves: 6 half
 * sides, 6 sqrt 3 in = 84468.65 ticks. */
START_TEST(fields_and_rows_explained)
{
    struct sewn sewn;
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    struct muslin_quilt_sixty_spec sixty = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[10];
    muslin_id rows = 0;
    begin_sewing(&sewn);
    muslin_id block = patch_in(&sewn, 6, 6);
    muslin_id plain = field_of(&sewn, 3, 2, block);
    muslin_id set_off = 0;
    spec.columns = 3;
    spec.side_fabric = spec.corner_fabric = sewn.blue;
    spec.set_off = fixed_of(sewn.quilt, WHOLE_IN(1));
    const muslin_id blocks[] = { block, block, block };
    ck_ok(muslin_quilt_diagonal(sewn.quilt, &spec, blocks, 3, &set_off, NULL));
    sixty.cells = 5;
    sixty.rows = 2;
    sixty.height = fixed_of(sewn.quilt, WHOLE_IN(3));
    sixty.end_fabric = sewn.white;
    for (int i = 0; i < 10; i++)
        pieces[i] = (struct muslin_quilt_sixty_piece_spec){ sizeof pieces[0], 0, sewn.blue, 1 };
    ck_ok(muslin_quilt_sixty(sewn.quilt, &sixty, pieces, sizeof pieces[0], 10, &rows, NULL));
    const muslin_id three[] = { plain, set_off, rows };
    struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3));
    CK_FINISHED(solution, plain, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_DIAGONAL, block, 3, 206905 });
    CK_FINISHED(solution, plain, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_DIAGONAL, block, 2, 137937 });
    CK_FINISHED(solution, set_off, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_DIAGONAL, block, 3, 206905 },
                { MUSLIN_TERM_MEASURE, spec.set_off, 2, WHOLE_IN(2) });
    CK_FINISHED(solution, rows, MUSLIN_AXIS_ACROSS, { MUSLIN_TERM_SIXTY, sixty.height, 6, 84469 });
    CK_FINISHED(solution, rows, MUSLIN_AXIS_DOWN, { MUSLIN_TERM_MEASURE, sixty.height, 2, WHOLE_IN(6) });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

Suite *solution_drawn_suite(void)
{
    Suite *suite = suite_create("solution_drawn");
    TCase *tcase = tcase_create("drawn");
    tcase_add_test(tcase, a_pinwheel_has_four_seams);
    tcase_add_test(tcase, strips_with_a_mitre);
    tcase_add_test(tcase, what_surrounds_is_sewn_on);
    tcase_add_test(tcase, a_half_square_is_trimmed);
    tcase_add_test(tcase, a_window_may_lie_within_a_piece);
    tcase_add_test(tcase, slanted_edges_end_at_the_nearest_tick);
    tcase_add_test(tcase, blocks_on_point_are_sewn_on_all_sides);
    tcase_add_test(tcase, a_field_lies_in_every_way);
    tcase_add_test(tcase, fields_within_fields);
    tcase_add_test(tcase, what_is_trimmed_from_a_field_is_what_is_no_longer_drawn);
    tcase_add_test(tcase, units_explained);
    tcase_add_test(tcase, shapes_explained);
    tcase_add_test(tcase, pinwheels_explained);
    tcase_add_test(tcase, set_ins_explained);
    tcase_add_test(tcase, fields_and_rows_explained);
    suite_add_tcase(suite, tcase);
    return suite;
}
