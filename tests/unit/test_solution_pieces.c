/* test_solution_pieces.c - the patches of units and of the caller's own shapes, drawn: corners by hand and by
 * muslin_unit_outlines(), areas, seams along edges, raw points.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *solution_pieces_suite(void);

enum { PIECES_ROOM = 20, CORNERS_ROOM = 128 };

struct drawn {
    size_t count;
    struct muslin_outline rows[PIECES_ROOM];
    struct muslin_outline_corner corners[CORNERS_ROOM];
};

static void draw_node(const struct muslin_solution *solution, muslin_id node, int32_t stage, struct drawn *drawn)
{
    size_t given = 0;
    memset(drawn, 0, sizeof *drawn);
    ck_ok(muslin_solution_outlines(solution, node, stage, 0, drawn->rows, sizeof drawn->rows[0], PIECES_ROOM,
                                   drawn->corners, sizeof drawn->corners[0], CORNERS_ROOM, &drawn->count, &given,
                                   NULL));
    ck_assert_uint_eq(given, drawn->count);
}

static const struct muslin_outline_corner *corner_of(const struct drawn *drawn, size_t row, int64_t k)
{
    const struct muslin_outline *outline = &drawn->rows[row];
    return &drawn->corners[outline->first_corner + k % outline->corners];
}

static int64_t doubled_area(const struct drawn *drawn, size_t row)
{
    int64_t sum = 0;
    for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
        const struct muslin_outline_corner *a = corner_of(drawn, row, k);
        const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
        sum += a->x * b->y - b->x * a->y;
    }
    return sum;
}

static int64_t doubled_areas(const struct drawn *drawn)
{
    int64_t sum = 0;
    for (size_t row = 0; row < drawn->count; row++) {
        ck_assert_int_gt(doubled_area(drawn, row), 0); /* counter-clockwise */
        sum += doubled_area(drawn, row);
    }
    return sum;
}

/* One patch: its corners in order, in ticks, with the seam along each edge. */
struct wanted {
    muslin_len x;
    muslin_len y;
    int64_t seam; /* -1: the outside */
};

static void ck_patch(const struct drawn *drawn, size_t row, muslin_id node, const struct wanted *wanted, int64_t corners)
{
    ck_assert_int_eq(drawn->rows[row].corners, corners);
    for (int64_t k = 0; k < corners; k++) {
        const struct muslin_outline_corner *corner = corner_of(drawn, row, k);
        ck_assert_msg(corner->x == wanted[k].x && corner->y == wanted[k].y, "patch %zu, corner %lld: %lld, %lld", row,
                      (long long)k, (long long)corner->x, (long long)corner->y);
        ck_assert_int_eq(corner->seam_node, wanted[k].seam < 0 ? 0 : node);
        if (wanted[k].seam >= 0)
            ck_assert_int_eq(corner->seam, wanted[k].seam);
    }
}
#define CK_PATCH(row, ...)                                                            \
    do {                                                                              \
        const struct wanted wanted_[] = { __VA_ARGS__ };                              \
        ck_patch(&drawn, row, node, wanted_, (int64_t)(COUNT_OF(wanted_)));           \
    } while (0)

/* ---- units ------------------------------------------------------------------------------------------------------ */

START_TEST(a_half_square_is_drawn_with_its_seam)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    muslin_id node = unit_case_of(&s, &unit_cases[0], 3000, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    ck_assert_uint_eq(drawn.count, 2);
    CK_PATCH(0, { 0, 0, -1 }, { 3000, 0, -1 }, { 3000, 3000, 0 });
    CK_PATCH(1, { 3000, 3000, -1 }, { 0, 3000, -1 }, { 0, 0, 0 });
    ck_assert_int_eq(drawn.rows[0].fabric, s.blue);
    ck_assert_int_eq(drawn.rows[1].fabric, s.white);
    ck_assert_int_eq(drawn.rows[1].region, 2);
    ck_assert_int_eq(drawn.rows[1].node, node);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* By strips the sharp raw point at the upper right is cut off level: the edge across it has no seam. */
START_TEST(a_point_cut_off_has_no_seam)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    muslin_id node = unit_case_of(&s, &unit_cases[1], 3000, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_RAW, &drawn);
    /* e = 2032; (1 + sqrt 2) e = 4905.68, (sqrt 2 - 1) e = 841.68 */
    CK_PATCH(0, { -4906, -2032, -1 }, { 5032, -2032, -1 }, { 5032, 5032, -1 }, { 2158, 5032, 0 });
    CK_PATCH(1, { 5032, 2158, -1 }, { 5032, 5032, -1 }, { -2032, 5032, -1 }, { -2032, -4906, 0 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(a_split_quarter_has_hands)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    muslin_id node = unit_case_of(&s, &unit_cases[3], 3000, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 0, -1 }, { 3000, 0, -1 }, { 3000, 3000, 0 }); /* one seam to both small ones */
    CK_PATCH(1, { 0, 3000, -1 }, { 0, 0, 0 }, { 1500, 1500, 1 });
    CK_PATCH(2, { 3000, 3000, -1 }, { 0, 3000, 1 }, { 1500, 1500, 0 });
    muslin_solution_free(solution);
    node = unit_case_of(&s, &unit_cases[4], 3000, 0, 0);
    solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 3000, -1 }, { 0, 0, -1 }, { 3000, 0, 0 });
    CK_PATCH(1, { 1500, 1500, 0 }, { 3000, 0, -1 }, { 3000, 3000, 1 });
    CK_PATCH(2, { 1500, 1500, 1 }, { 3000, 3000, -1 }, { 0, 3000, 0 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Seam 0 from the lower right to the upper left, 1 up to the right, 2 up from the lower left. */
START_TEST(a_quarter_square_is_sewn_in_halves)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    muslin_id node = unit_case_of(&s, &unit_cases[2], 3000, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 0, -1 }, { 3000, 0, 0 }, { 1500, 1500, 2 });
    CK_PATCH(1, { 3000, 0, -1 }, { 3000, 3000, 1 }, { 1500, 1500, 0 });
    CK_PATCH(2, { 3000, 3000, -1 }, { 0, 3000, 0 }, { 1500, 1500, 1 });
    CK_PATCH(3, { 0, 3000, -1 }, { 0, 0, 2 }, { 1500, 1500, 0 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(a_half_rectangle_leans_either_way)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    muslin_id node = unit_case_of(&s, &unit_cases[8], 4000, 3000, 0);
    muslin_id other = unit_case_of(&s, &unit_cases[9], 4000, 3000, 0);
    muslin_id mirrored = mirror_of(s.quilt, node);
    const muslin_id all[] = { node, other, mirrored };
    muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, all, 3);
    struct muslin_solution *solution = solved(s.quilt, row);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 0, -1 }, { 4000, 0, -1 }, { 4000, 3000, 0 });
    CK_PATCH(1, { 4000, 3000, -1 }, { 0, 3000, -1 }, { 0, 0, 0 });
    /* 3 : 4 : 5, e = 2032: raw legs stand out e and e (1 + (b + 5) / a) */
    draw_node(solution, node, MUSLIN_STAGE_RAW, &drawn);
    CK_PATCH(0, { -6096, -2032, -1 }, { 6032, -2032, -1 }, { 6032, 7064, 0 });
    /* the second hand is the first one's mirror image */
    draw_node(solution, mirrored, MUSLIN_STAGE_FINISHED, &drawn);
    int64_t area = doubled_areas(&drawn);
    struct drawn second;
    draw_node(solution, other, MUSLIN_STAGE_FINISHED, &second);
    ck_assert_int_eq(area, doubled_areas(&second));
    for (size_t i = 0; i < 2; i++)
        for (int64_t k = 0; k < 3; k++) {
            int found = 0;
            for (int64_t m = 0; m < 3; m++)
                found |= corner_of(&drawn, i, k)->x == corner_of(&second, i, m)->x &&
                         corner_of(&drawn, i, k)->y == corner_of(&second, i, m)->y;
            ck_assert(found);
        }
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Every corner of every kind, finished and raw, as muslin_unit_outlines() has it. */
START_TEST(units_are_drawn_as_unit_outlines_draws_them)
{
    for (size_t i = 0; i < UNIT_CASES; i++) {
        const struct unit_case *unit = &unit_cases[i];
        struct sewn s;
        struct drawn drawn;
        struct muslin_unit_corner rows[CORNERS_ROOM];
        struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
        size_t n = 0;
        size_t at = 0;
        begin_sewing(&s);
        muslin_id node = unit_case_of(&s, unit, 30000, 20000, 7001);
        struct muslin_solution *solution = solved(s.quilt, node);
        spec.kind = unit->kind;
        spec.method = unit->method;
        spec.finished_width = 30000;
        if (unit->kind == MUSLIN_UNIT_HALF_RECTANGLE || unit->kind == MUSLIN_UNIT_SNOWBALL)
            spec.finished_height = 20000;
        if (unit->kind == MUSLIN_UNIT_SNOWBALL)
            spec.corner = 7001;
        ck_ok(muslin_unit_outlines(&spec, unit->hand, rows, sizeof rows[0], CORNERS_ROOM, &n, NULL));
        for (int32_t stage = MUSLIN_STAGE_FINISHED; stage <= MUSLIN_STAGE_RAW; stage++) {
            draw_node(solution, node, stage, &drawn);
            ck_assert_uint_eq(drawn.count, (size_t)unit->patches);
            for (size_t row = 0; row < drawn.count; row++)
                for (int64_t k = 0; k < drawn.rows[row].corners; k++, at++) {
                    ck_assert_int_eq(rows[at].patch, (int32_t)row + 1);
                    ck_assert_int_eq(rows[at].region, drawn.rows[row].region);
                    ck_assert_int_eq(rows[at].x, corner_of(&drawn, row, k)->x);
                    ck_assert_int_eq(rows[at].y, corner_of(&drawn, row, k)->y);
                }
        }
        ck_assert_uint_eq(at, n);
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

/* ---- laws ------------------------------------------------------------------------------------------------------- */

/* How often a level line at y, half a tick above a whole one, crosses a patch's outline: twice a patch that it
 * meets. */
static int64_t patches_met(const struct drawn *drawn, int64_t level, int upright)
{
    int64_t crossings = 0;
    for (size_t row = 0; row < drawn->count; row++)
        for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
            const struct muslin_outline_corner *a = corner_of(drawn, row, k);
            const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
            int below = (upright ? a->x : a->y) <= level;
            crossings += below != ((upright ? b->x : b->y) <= level);
        }
    return crossings / 2;
}

static int64_t most_met(const struct drawn *drawn, muslin_len size, int upright)
{
    int64_t most = 0;
    for (int64_t level = 0; level < size; level += 7) {
        int64_t met = patches_met(drawn, level, upright);
        most = met > most ? met : most;
    }
    return most;
}

/* Each edge inside is answered by an edge of another patch that runs back, and both lie along one seam; those on the
 * outside run along the box. Of a split quarter two edges answer one. */
static void ck_edges(const struct drawn *drawn, muslin_len width, muslin_len height)
{
    for (size_t row = 0; row < drawn->count; row++)
        for (int64_t k = 0; k < drawn->rows[row].corners; k++) {
            const struct muslin_outline_corner *a = corner_of(drawn, row, k);
            const struct muslin_outline_corner *b = corner_of(drawn, row, k + 1);
            int outside = (a->x == b->x && (a->x == 0 || a->x == width)) ||
                          (a->y == b->y && (a->y == 0 || a->y == height));
            ck_assert_int_eq(outside, a->seam_node == 0);
            int answers = 0;
            for (size_t other = 0; other < drawn->count && !outside; other++)
                for (int64_t m = 0; m < drawn->rows[other].corners; m++) {
                    const struct muslin_outline_corner *c = corner_of(drawn, other, m);
                    const struct muslin_outline_corner *d = corner_of(drawn, other, m + 1);
                    answers += c->x == b->x && c->y == b->y && d->x == a->x && d->y == a->y && c->seam == a->seam;
                }
            ck_assert(outside || answers == 1);
        }
}

START_TEST(patches_fill_their_unit_and_meet_at_seams)
{
    for (size_t i = 0; i < UNIT_CASES; i++) {
        const struct unit_case *unit = &unit_cases[i];
        struct sewn s;
        struct drawn drawn;
        begin_sewing(&s);
        muslin_id node = unit_case_of(&s, unit, 30000, 20000, 7001);
        struct muslin_solution *solution = solved(s.quilt, node);
        struct muslin_node_size size = size_of(solution, node);
        draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
        /* corners that two patches share are rounded alike, so even rounded patches leave no gap */
        ck_assert_int_eq(doubled_areas(&drawn), 2 * size.finished_width * size.finished_height);
        ck_assert_int_eq(most_met(&drawn, size.finished_height, 0) - 1, size.seams_across);
        ck_assert_int_eq(most_met(&drawn, size.finished_width, 1) - 1, size.seams_down);
        if (unit->kind != MUSLIN_UNIT_SPLIT_QUARTER)
            ck_edges(&drawn, size.finished_width, size.finished_height);
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

/* What an outside edge is made of shows where it is eased: a goose's upper edge has two patches, its lower edge one. */
START_TEST(patches_along_an_edge_are_counted)
{
    struct sewn s;
    begin_sewing(&s);
    const struct unit_case goose = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 3, 2, 1 };
    muslin_id node = unit_case_of(&s, &goose, WHOLE_IN(6), 0, 0);
    muslin_id sash = patch_of(s.quilt, s.blue, fixed_of(s.quilt, IN(6, 1, 8)), s.two);
    const muslin_id rows[] = { sash, node, sash };
    muslin_id top = join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_misfit misfits[2];
    size_t count = 0;
    ck_ok(muslin_solution_misfits(solution, misfits, sizeof misfits[0], 2, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(misfits[0].pieces, 2);
    ck_assert_int_eq(misfits[1].pieces, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- own shapes ------------------------------------------------------------------------------------------------- */

START_TEST(a_shape_is_drawn_as_drawn)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 0, -1 }, { 48768, 0, -1 }, { 48768, 24384, 0 }, { 24384, 48768, -1 }, { 0, 48768, -1 });
    CK_PATCH(1, { 48768, 24384, -1 }, { 48768, 48768, -1 }, { 24384, 48768, 0 });
    ck_assert_int_eq(drawn.rows[0].region, 1);
    ck_assert_int_eq(drawn.rows[1].region, 2);
    ck_assert_int_eq(drawn.rows[1].fabric, s.white);
    /* e = 2032: at 135 degrees (sqrt 2 - 1) e = 841.68 along the edge, at 45 (1 + sqrt 2) e = 4905.68 */
    draw_node(solution, node, MUSLIN_STAGE_RAW, &drawn);
    CK_PATCH(0, { -2032, -2032, -1 }, { 50800, -2032, -1 }, { 50800, 25226, 0 }, { 25226, 50800, -1 },
             { -2032, 50800, -1 });
    CK_PATCH(1, { 50800, 19478, -1 }, { 50800, 50800, -1 }, { 19478, 50800, 0 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* The slant begins at half the size, 15000 1/2 ticks across: rounded, with a half up. */
START_TEST(a_shape_of_another_size_keeps_its_seam)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, 30001), fixed_of(s.quilt, 40000));
    struct muslin_solution *solution = solved(s.quilt, node);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    CK_PATCH(0, { 0, 0, -1 }, { 30001, 0, -1 }, { 30001, 20000, 0 }, { 15001, 40000, -1 }, { 0, 40000, -1 });
    CK_PATCH(1, { 30001, 20000, -1 }, { 30001, 40000, -1 }, { 15001, 40000, 0 });
    /* legs of 15000 and 20000 and a side of 25000: the raw points lie e (20 + 25) / 15 and e (15 + 25) / 20 beyond */
    draw_node(solution, node, MUSLIN_STAGE_RAW, &drawn);
    CK_PATCH(1, { 32033, 20000 - 6096, -1 }, { 32033, 42032, -1 }, { 15001 - 4064, 42032, 0 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Corners of five and three: where one is rounded, in its width or its height, each outline is off by its box twice,
 * two ticks a corner and half a one, up to a whole. */
START_TEST(only_rounded_corners_make_areas_inexact)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    const muslin_len sizes[][2] = { { 30000, 40000 }, { 30001, 40000 }, { 30000, 40001 }, { 48768, 48768 } };
    for (size_t i = 0; i < COUNT_OF(sizes); i++) {
        struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
        muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, sizes[i][0]),
                                  fixed_of(s.quilt, sizes[i][1]));
        struct muslin_solution *solution = solved(s.quilt, node);
        ck_ok(muslin_solution_totals(solution, &totals, NULL));
        const int64_t boxes = sizes[i][0] + sizes[i][1] + 15000 + 20000;
        ck_assert_int_eq(totals.area_error, i == 1 || i == 2 ? 2 * boxes + (10 + 3) + (6 + 2) : 0);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* Three bricks: the long one meets two above it, which meet each other within its upper side; it and its right
 * neighbour have a corner more within a straight side, which changes nothing. */
START_TEST(an_edge_with_several_neighbours_has_the_first_seam)
{
    struct sewn s;
    struct drawn drawn;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 900, 0), CORNER(OUTLINE, 900, 600), CORNER(OUTLINE, 0, 600),
        CORNER(0, 0, 0), CORNER(0, 900, 0), CORNER(0, 900, 300), CORNER(0, 700, 300), CORNER(0, 0, 300),
        CORNER(1, 0, 300), CORNER(1, 400, 300), CORNER(1, 400, 600), CORNER(1, 0, 600),
        CORNER(2, 600, 300), CORNER(2, 900, 300), CORNER(2, 900, 600), CORNER(2, 600, 600), CORNER(2, 400, 600),
        CORNER(2, 400, 300)
    };
    muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 3, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_assert_int_eq(size.seams_across, 1);
    ck_assert_int_eq(size.seams_down, 1);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &drawn);
    /* Seams are numbered by the piece to the left of them, or above, and its corners: 0: pieces 1 and 0, 1: 1 and 2,
     * 2: 2 and 0. The corner at 700 lies within the side that begins at 900. */
    CK_PATCH(0, { 0, 0, -1 }, { 900, 0, -1 }, { 900, 300, 2 }, { 700, 300, 0 }, { 0, 300, -1 });
    CK_PATCH(1, { 0, 300, 0 }, { 400, 300, 1 }, { 400, 600, -1 }, { 0, 600, -1 });
    CK_PATCH(2, { 600, 300, 2 }, { 900, 300, -1 }, { 900, 600, -1 }, { 600, 600, -1 }, { 400, 600, 1 },
             { 400, 300, 2 });
    /* corners in one line move straight out */
    draw_node(solution, node, MUSLIN_STAGE_RAW, &drawn);
    CK_PATCH(0, { -2032, -2032, -1 }, { 2932, -2032, -1 }, { 2932, 2332, 2 }, { 700, 2332, 0 }, { -2032, 2332, -1 });
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(without_a_seam_raw_is_finished)
{
    struct sewn s;
    struct drawn raw;
    struct drawn finished;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    const struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0);
    muslin_id allowance = 0;
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_quilt_seam(s.quilt, &allowance, NULL, NULL));
    const struct muslin_solution_value_spec none = { sizeof none, 0, allowance, 0 };
    ck_ok(muslin_solution_create(s.quilt, node, &solve, &none, sizeof none, 1, NULL, &solution, NULL));
    draw_node(solution, node, MUSLIN_STAGE_RAW, &raw);
    draw_node(solution, node, MUSLIN_STAGE_FINISHED, &finished);
    ck_assert_int_eq(memcmp(&raw, &finished, sizeof raw), 0);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

Suite *solution_pieces_suite(void)
{
    Suite *suite = suite_create("solution_pieces");
    TCase *tests = tcase_create("patches of units and own shapes");
    tcase_add_test(tests, a_half_square_is_drawn_with_its_seam);
    tcase_add_test(tests, a_point_cut_off_has_no_seam);
    tcase_add_test(tests, a_split_quarter_has_hands);
    tcase_add_test(tests, a_quarter_square_is_sewn_in_halves);
    tcase_add_test(tests, a_half_rectangle_leans_either_way);
    tcase_add_test(tests, units_are_drawn_as_unit_outlines_draws_them);
    tcase_add_test(tests, patches_fill_their_unit_and_meet_at_seams);
    tcase_add_test(tests, patches_along_an_edge_are_counted);
    tcase_add_test(tests, a_shape_is_drawn_as_drawn);
    tcase_add_test(tests, a_shape_of_another_size_keeps_its_seam);
    tcase_add_test(tests, only_rounded_corners_make_areas_inexact);
    tcase_add_test(tests, an_edge_with_several_neighbours_has_the_first_seam);
    tcase_add_test(tests, without_a_seam_raw_is_finished);
    suite_add_tcase(suite, tests);
    return suite;
}
