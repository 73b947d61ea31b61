/* test_unit_outline.c - corners of patches and steps of sewing: geometry worked out beside each test, and laws.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "refusals.h"

Suite *unit_outline_suite(void);

enum { MANY = 128 };

static struct muslin_unit_spec unit_of(int32_t kind, int32_t method, muslin_len width, muslin_len height)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.kind = kind;
    spec.method = method;
    spec.finished_width = width;
    spec.finished_height = height;
    return spec;
}

static size_t draw_unit(const struct muslin_unit_spec *spec, int32_t hand, struct muslin_unit_corner *rows)
{
    size_t count = 0;
    size_t asked = 0;
    ck_ok(muslin_unit_outlines(spec, hand, NULL, 0, 0, &asked, NULL));
    ck_assert_uint_le(asked, MANY);
    memset(rows, 0, MANY * sizeof *rows);
    ck_ok(muslin_unit_outlines(spec, hand, rows, sizeof *rows, MANY, &count, NULL));
    ck_assert_uint_eq(count, asked);
    ck_assert_uint_eq(rows[count].size, 0); /* left alone */
    return count;
}

/* Ticks, from inches with as many digits as a double holds. */
static muslin_len inches(double value)
{
    double ticks = value * 8128;
    return (muslin_len)(ticks < 0 ? ticks - 0.5 : ticks + 0.5);
}

#define ROOT_2 1.4142135623730951
#define ROOT_3 1.7320508075688772

/* The corners of one patch of one stage, in inches. */
static void ck_patch(const struct muslin_unit_corner *rows, size_t count, int32_t stage, int32_t patch,
                     const double (*corners)[2], int32_t corners_wanted)
{
    int32_t seen = 0;
    for (size_t i = 0; i < count; i++) {
        if (rows[i].stage != stage || rows[i].patch != patch)
            continue;
        ck_assert_int_eq(rows[i].corner, seen);
        ck_assert_int_lt(seen, corners_wanted);
        ck_assert_msg(rows[i].x == inches(corners[seen][0]) && rows[i].y == inches(corners[seen][1]),
                      "stage %d, patch %d, corner %d lies at %lld, %lld", stage, patch, seen, (long long)rows[i].x,
                      (long long)rows[i].y);
        seen++;
    }
    ck_assert_int_eq(seen, corners_wanted);
}
#define CK_PATCH(stage, patch, ...)                                                              \
    do {                                                                                         \
        const double wanted[][2] = { __VA_ARGS__ };                                              \
        ck_patch(rows, count, stage, patch, wanted, (int32_t)(sizeof wanted / sizeof wanted[0])); \
    } while (0)

/* Example: the first finished patch of a half-square of 3 in has corners at (0, 0), (3, 0) and (3, 3) in; its raw patch
 * begins at (-(1 + sqrt 2)/4, -1/4) in. */
START_TEST(a_half_square_has_two_triangles)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(3), 0);
    size_t count = draw_unit(&spec, 1, rows);
    ck_assert_uint_eq(count, 12);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 0, 0 }, { 3, 0 }, { 3, 3 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 2, { 3, 3 }, { 0, 3 }, { 0, 0 });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -(1 + ROOT_2) / 4, -0.25 }, { 3.25, -0.25 }, { 3.25, 3 + (1 + ROOT_2) / 4 });
    ck_assert_int_eq(rows[0].region, 1);
    ck_assert_int_eq(rows[3].region, 2);
    ck_assert_int_eq(rows[6].stage, MUSLIN_STAGE_RAW);
}
END_TEST

/* Turned over left for right; still counterclockwise. */
START_TEST(the_second_hand_is_the_mirror_image)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    size_t count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 0, 0 }, { 4, 0 }, { 4, 4 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 2, { 0, 4 }, { 0, 0 }, { 2, 2 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 3, { 4, 4 }, { 0, 4 }, { 2, 2 });
    count = draw_unit(&spec, 2, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 0, 4 }, { 0, 0 }, { 4, 0 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 2, { 2, 2 }, { 4, 0 }, { 4, 4 });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -0.25, 4 + (1 + ROOT_2) / 4 }, { -0.25, -0.25 }, { 4 + (1 + ROOT_2) / 4, -0.25 });
    for (size_t i = 0; i < count; i++)
        ck_assert_int_eq(rows[i].region, rows[i].patch);
    spec = unit_of(MUSLIN_UNIT_DIAMOND_45, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(2));
    count = draw_unit(&spec, 2, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 2 * ROOT_2, 2 }, { 0, 2 }, { 2, 0 }, { 2 + 2 * ROOT_2, 0 });
}
END_TEST

/* A half-rectangle 3 x 4 in has a seam of 5 in: its points are longer by e (3 + 5) / 4 = 1/2 in along the width and by
 * e (4 + 5) / 3 = 3/4 in along the height. */
START_TEST(the_points_of_a_half_rectangle_differ)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(3), WHOLE_IN(4));
    size_t count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -0.5, -0.25 }, { 3.25, -0.25 }, { 3.25, 4.75 });
    CK_PATCH(MUSLIN_STAGE_RAW, 2, { 3.5, 4.25 }, { -0.25, 4.25 }, { -0.25, -0.75 });
    count = draw_unit(&spec, 2, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 0, 4 }, { 0, 0 }, { 3, 0 });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -0.25, 4.75 }, { -0.25, -0.25 }, { 3.5, -0.25 });
}
END_TEST

/* Raw, the height grows by e below and 2 e above, and the side by 2 sqrt 3 e; blunt, the top is 2 e / sqrt 3 wide. */
START_TEST(a_blunt_tip_is_level_with_the_allowance)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    const double side = 2 * 3 / ROOT_3;
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(3));
    size_t count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 0, 0 }, { side, 0 }, { side / 2, 3 });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -ROOT_3 / 4, -0.25 }, { side + ROOT_3 / 4, -0.25 },
             { side / 2 + 0.25 / ROOT_3, 3.25 }, { side / 2 - 0.25 / ROOT_3, 3.25 });
    spec.tip = MUSLIN_TIP_SHARP;
    count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -ROOT_3 / 4, -0.25 }, { side + ROOT_3 / 4, -0.25 }, { side / 2, 3.5 });
    spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(2), 0);
    count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { -(1 + ROOT_2) / 4, -0.25 }, { 2.25, -0.25 }, { 2.25, 2.25 },
             { 2.25 - ROOT_2 / 4, 2.25 });
    CK_PATCH(MUSLIN_STAGE_RAW, 2, { 2.25, 2.25 - ROOT_2 / 4 }, { 2.25, 2.25 }, { -0.25, 2.25 },
             { -0.25, -(1 + ROOT_2) / 4 });
}
END_TEST

/* A corner triangle of a kaleidoscope has legs of 0.2929 of the side, a wedge a base of 0.4142 of it. The raw point in
 * the middle lies e / sin(22 1/2) = 2.6131259 e beyond the middle, the raw base is 1.0823922 e (its secant) and
 * 0.4142136 e wider at each end. */
START_TEST(a_kaleidoscope_has_eight_wedges)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    const double leg = 4 * (1 - ROOT_2 / 2);
    const double wider = 0.25 * (1.0823922002923938 + ROOT_2 - 1);
    const double along = 0.25 * (1 + 0.7653668647301796); /* the same corner in the turned wedge */
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    spec.tip = MUSLIN_TIP_SHARP;
    size_t count = draw_unit(&spec, 1, rows);
    ck_assert_uint_eq(count, 72);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { leg, 0 }, { 4 - leg, 0 }, { 2, 2 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 8, { 0, leg }, { leg, 0 }, { 2, 2 });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 9, { 0, 0 }, { leg, 0 }, { 0, leg });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { leg - wider, -0.25 }, { 4 - leg + wider, -0.25 },
             { 2, 2 + 0.25 * 2.613125929752753 });
    CK_PATCH(MUSLIN_STAGE_RAW, 8, { -along, leg + 0.25 * (0.7653668647301796 + 1 - ROOT_2) },
             { leg + 0.25 * (0.7653668647301796 + 1 - ROOT_2), -along },
             { 2 + 0.25 * 1.8477590650225735, 2 + 0.25 * 1.8477590650225735 });
    spec.tip = MUSLIN_TIP_BLUNT;
    count = draw_unit(&spec, 1, rows);
    ck_assert_uint_eq(count, 80);
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { leg - wider, -0.25 }, { 4 - leg + wider, -0.25 },
             { 2 + 0.25 * (1.0823922002923938 - ROOT_2 + 1), 2.25 },
             { 2 - 0.25 * (1.0823922002923938 - ROOT_2 + 1), 2.25 });
}
END_TEST

/* The side of the star's diamonds is W / (2 + sqrt 2). */
START_TEST(a_star_has_diamonds_squares_and_triangles)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    const double side = 6 / (2 + ROOT_2);
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    size_t count = draw_unit(&spec, 1, rows);
    ck_assert_uint_eq(count, 2 * (8 * 4 + 4 * 4 + 4 * 3));
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { side, 0 }, { 3, 3 - side }, { 3, 3 }, { side, side });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 9, { 0, 0 }, { side, 0 }, { side, side }, { 0, side });
    CK_PATCH(MUSLIN_STAGE_FINISHED, 13, { side, 0 }, { 6 - side, 0 }, { 3, 3 - side });
    CK_PATCH(MUSLIN_STAGE_RAW, 9, { -0.25, -0.25 }, { side + 0.25, -0.25 }, { side + 0.25, side + 0.25 },
             { -0.25, side + 0.25 });
}
END_TEST

/* Where the corners meet, the sides between them have no length, and the raw patch is cut level there. */
START_TEST(the_corners_of_a_snowball_may_meet)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, WHOLE_IN(2), 0);
    const double cut = 0.25 * (ROOT_2 - 1);
    spec.corner = WHOLE_IN(1);
    size_t count = draw_unit(&spec, 1, rows);
    CK_PATCH(MUSLIN_STAGE_FINISHED, 1, { 1, 0 }, { 1, 0 }, { 2, 1 }, { 2, 1 }, { 1, 2 }, { 1, 2 }, { 0, 1 }, { 0, 1 });
    CK_PATCH(MUSLIN_STAGE_RAW, 1, { 1 - cut, -0.25 }, { 1 + cut, -0.25 }, { 2.25, 1 - cut }, { 2.25, 1 + cut },
             { 1 + cut, 2.25 }, { 1 - cut, 2.25 }, { -0.25, 1 + cut }, { -0.25, 1 - cut });
    CK_PATCH(MUSLIN_STAGE_RAW, 3, { 2.25, 1 + (1 + ROOT_2) / 4 }, { 1 - (1 + ROOT_2) / 4, -0.25 }, { 2.25, -0.25 });
}
END_TEST

/* Of each recipe of the list: corners of all finished patches, and of all raw ones with blunt tips. */
static const struct {
    int32_t kind;
    size_t finished;
    size_t raw;
} corners_of_kind[] = {
    { MUSLIN_UNIT_RECTANGLE, 4, 4 },
    { MUSLIN_UNIT_HALF_SQUARE, 6, 6 },
    { MUSLIN_UNIT_QUARTER_SQUARE, 12, 12 },
    { MUSLIN_UNIT_SPLIT_QUARTER, 9, 9 },
    { MUSLIN_UNIT_FLYING_GEESE, 9, 9 },
    { MUSLIN_UNIT_SQUARE_IN_SQUARE, 16, 16 },
    { MUSLIN_UNIT_SNOWBALL, 20, 20 },
    { MUSLIN_UNIT_HALF_RECTANGLE, 6, 6 },
    { MUSLIN_UNIT_TRIANGLE_60, 3, 4 },
    { MUSLIN_UNIT_DIAMOND_60, 4, 4 },
    { MUSLIN_UNIT_DIAMOND_45, 4, 4 },
    { MUSLIN_UNIT_HEXAGON, 6, 6 },
    { MUSLIN_UNIT_HALF_HEXAGON, 4, 4 },
    { MUSLIN_UNIT_TRAPEZOID, 4, 4 },
    { MUSLIN_UNIT_OCTAGON, 20, 20 },
    { MUSLIN_UNIT_EIGHT_POINTED_STAR, 60, 60 },
    { MUSLIN_UNIT_KALEIDOSCOPE, 36, 44 },
    { MUSLIN_UNIT_SLANTED_SLICE, 4, 4 },
};

/* A spec that the kind takes, of about so many ticks. */
static struct muslin_unit_spec any_unit(int32_t kind, int32_t method, muslin_len size)
{
    struct muslin_unit_spec spec = unit_of(kind, method, size, 0);
    if (kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON) {
        spec.finished_width = 0;
        spec.finished_height = size;
    }
    if (kind == MUSLIN_UNIT_HALF_RECTANGLE || kind == MUSLIN_UNIT_SLANTED_SLICE || kind == MUSLIN_UNIT_TRAPEZOID)
        spec.finished_height = size / 2;
    if (kind == MUSLIN_UNIT_SNOWBALL)
        spec.corner = size / 4;
    return spec;
}

/* Twice the area of one patch; rows of a patch lie together. */
static int64_t area_of(const struct muslin_unit_corner *rows, size_t first, size_t count)
{
    int64_t area = 0;
    for (size_t i = 0; i < count; i++) {
        const struct muslin_unit_corner *a = &rows[first + i];
        const struct muslin_unit_corner *b = &rows[first + (i + 1) % count];
        area += a->x * b->y - a->y * b->x;
    }
    return area;
}

/* Every patch runs counterclockwise, and its raw form is larger. */
static void ck_areas(const struct muslin_unit_corner *rows, size_t count)
{
    int64_t finished[MANY] = { 0 };
    for (size_t first = 0, next = 0; first < count; first = next) {
        for (next = first + 1; next < count && rows[next].corner != 0; next++)
            ck_assert_int_eq(rows[next].patch, rows[first].patch);
        int64_t area = area_of(rows, first, next - first);
        ck_assert_int_gt(area, rows[first].stage == MUSLIN_STAGE_RAW ? finished[rows[first].patch] : 0);
        if (rows[first].stage == MUSLIN_STAGE_FINISHED)
            finished[rows[first].patch] = area;
    }
}

START_TEST(every_recipe_is_drawn_with_all_its_corners)
{
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        int32_t kind = 0;
        int32_t method = 0;
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        size_t blunt = kind == MUSLIN_UNIT_HALF_SQUARE && method == MUSLIN_UNIT_METHOD_STRIPS ? 2 : 0;
        struct muslin_unit_spec spec = any_unit(kind, method, WHOLE_IN(4));
        for (int32_t hand = 1; hand <= 2; hand++) {
            struct muslin_unit_corner rows[MANY] = { { 0 } };
            size_t count = draw_unit(&spec, hand, rows);
            ck_assert_int_eq(corners_of_kind[kind - 1].kind, kind);
            ck_assert_uint_eq(count, corners_of_kind[kind - 1].finished + corners_of_kind[kind - 1].raw + blunt);
            ck_areas(rows, count);
        }
    }
}
END_TEST

/* The length of all edges of all finished patches, in ticks; in large units the ticks that corners are rounded to do not
 * matter. */
static double edges_of(const struct muslin_unit_corner *rows, size_t count)
{
    double sum = 0;
    size_t first = 0;
    for (size_t i = 0; i < count && rows[i].stage == MUSLIN_STAGE_FINISHED; i++) {
        const int is_last = i + 1 == count || rows[i + 1].corner == 0;
        const struct muslin_unit_corner *next = is_last ? &rows[first] : &rows[i + 1];
        sum += hypot((double)(next->x - rows[i].x), (double)(next->y - rows[i].y));
        first = is_last ? i + 1 : first;
    }
    return sum;
}

/* Allowances run along every edge of every patch, E / 2 wide; areas are doubled. Widths, heights and corners differ. */
START_TEST(allowances_are_as_long_as_the_edges_that_are_drawn)
{
    int32_t told = 0;
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        struct muslin_unit_corner rows[MANY] = { { 0 } };
        struct muslin_unit_plan unit = { .size = (uint32_t)sizeof unit };
        int32_t kind = 0;
        int32_t method = 0;
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        struct muslin_unit_spec spec = any_unit(kind, method, WHOLE_IN(400));
        if (kind == MUSLIN_UNIT_RECTANGLE || kind == MUSLIN_UNIT_SNOWBALL || kind == MUSLIN_UNIT_HALF_RECTANGLE)
            spec.finished_height = WHOLE_IN(300);
        ck_ok(muslin_unit_recipe(&spec, &unit, NULL));
        if (unit.cut_area == 0)
            continue;
        const double edges = edges_of(rows, draw_unit(&spec, 1, rows)) * (double)unit.units_per_recipe;
        ck_assert_double_eq_tol((double)unit.allowance_area / (edges * 4064), 1, 1e-6);
        ck_assert_int_eq(unit.waste_area, unit.cut_area - unit.finished_area - unit.allowance_area);
        told++;
    }
    ck_assert_int_gt(told, 10);
}
END_TEST

/* The widest seam round the least unit and the largest; without any seam, raw is finished. */
START_TEST(outlines_reach_the_ends_of_their_ranges)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        int32_t kind = 0;
        int32_t method = 0;
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        struct muslin_unit_spec spec = any_unit(kind, method, MUSLIN_UNIT_SIZE_MAX);
        spec.allowance = MUSLIN_UNIT_SIZE_MAX / 8;
        spec.take_up = MUSLIN_UNIT_SIZE_MAX / 8;
        ck_areas(rows, draw_unit(&spec, 1, rows));
        spec = any_unit(kind, method, 4);
        spec.allowance = MUSLIN_UNIT_SIZE_MAX / 8;
        spec.take_up = MUSLIN_UNIT_SIZE_MAX / 8;
        draw_unit(&spec, 2, rows);
        spec.allowance = 0;
        spec.take_up = 0;
        spec.tip = MUSLIN_TIP_SHARP;
        size_t count = draw_unit(&spec, 1, rows);
        for (size_t k = 0; k < count / 2; k++) {
            ck_assert_int_eq(rows[k].x, rows[k + count / 2].x);
            ck_assert_int_eq(rows[k].y, rows[k + count / 2].y);
        }
    }
}
END_TEST

/* e = 1/2 tick: -e lies between two ticks and goes up; W + e goes up too. */
START_TEST(half_a_tick_goes_up)
{
    struct muslin_unit_corner rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 10, 7);
    spec.allowance = 0;
    spec.take_up = 1;
    ck_assert_uint_eq(draw_unit(&spec, 1, rows), 8);
    ck_assert_int_eq(rows[4].x, 0);
    ck_assert_int_eq(rows[6].x, 11);
    ck_assert_int_eq(rows[6].y, 8);
}
END_TEST

/* ---- rules ------------------------------------------------------------------------------------------------------- */

/* One row as the output of a call: the struct rules hold for rows too, but their size is an argument. */
static const struct muslin_unit_spec good = {
    (uint32_t)sizeof good, 0, WHOLE_IN(3), 0, 0, 2032, 0, 0, 0, 0, 1016, 0, 1, 0, 2, 2, 1, 2, 1, 0
};

START_TEST(outlines_refuse_what_is_wrong)
{
    struct muslin_unit_corner rows[MANY];
    struct muslin_problem problem = PROBLEM;
    struct muslin_unit_spec spec = good;
    size_t count = 77;
    memset(rows, FILL, sizeof rows);
    ck_status(muslin_unit_outlines(NULL, 1, rows, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SPEC);
    for (int32_t hand = -1; hand <= 3; hand++) {
        if (hand == 1 || hand == 2)
            continue;
        ck_status(muslin_unit_outlines(&good, hand, rows, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_CHOICE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_HAND);
        ck_assert_int_eq(problem.value, hand);
        ck_assert_int_eq(problem.limit, 2);
        ck_assert_ptr_nonnull(strstr(problem.text, "Hand"));
    }
    spec.method = MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME;
    ck_status(muslin_unit_outlines(&spec, 1, rows, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_METHOD);
    ck_status(muslin_unit_outlines(&good, 1, rows, sizeof rows[0] - 1, MANY, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_unit_outlines(&good, 1, NULL, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_unit_outlines(&good, 1, rows, sizeof rows[0], MANY, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(count, 77);
    ck_status(muslin_unit_outlines(&good, 1, rows, sizeof rows[0], 11, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 12);
    ck_assert_int_eq(problem.limit, 12);
    for (size_t i = 0; i < sizeof rows; i++)
        ck_assert_uint_eq(((const unsigned char *)rows)[i], FILL);
}
END_TEST

START_TEST(steps_refuse_what_is_wrong)
{
    struct muslin_unit_step rows[MANY];
    struct muslin_problem problem = PROBLEM;
    struct muslin_unit_spec spec = good;
    size_t count = 77;
    memset(rows, FILL, sizeof rows);
    ck_status(muslin_unit_steps(NULL, rows, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_NULL);
    spec.finished_width = 0;
    ck_status(muslin_unit_steps(&spec, rows, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_status(muslin_unit_steps(&good, rows, sizeof rows[0] - 1, MANY, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_unit_steps(&good, NULL, sizeof rows[0], MANY, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_unit_steps(&good, rows, sizeof rows[0], MANY, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(count, 77);
    ck_status(muslin_unit_steps(&good, rows, sizeof rows[0], 5, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 6);
    for (size_t i = 0; i < sizeof rows; i++)
        ck_assert_uint_eq(((const unsigned char *)rows)[i], FILL);
}
END_TEST

/* A larger row of a newer caller: its size is kept, what the library does not know is zero. */
START_TEST(rows_may_be_larger_than_known)
{
    struct {
        struct muslin_unit_corner known;
        int64_t beyond;
    } corners[12];
    struct {
        struct muslin_unit_step known;
        int64_t beyond;
    } steps[6];
    size_t count = 0;
    memset(corners, FILL, sizeof corners);
    memset(steps, FILL, sizeof steps);
    ck_ok(muslin_unit_outlines(&good, 1, &corners[0].known, sizeof corners[0], 12, &count, NULL));
    ck_ok(muslin_unit_steps(&good, &steps[0].known, sizeof steps[0], 6, &count, NULL));
    ck_assert_uint_eq(corners[11].known.size, sizeof corners[0]);
    ck_assert_int_eq(corners[11].beyond, 0);
    ck_assert_int_eq(corners[11].known.corner, 2);
    ck_assert_uint_eq(steps[5].known.size, sizeof steps[0]);
    ck_assert_int_eq(steps[5].beyond, 0);
    ck_assert_int_eq(steps[5].known.step, MUSLIN_UNIT_STEP_TRIM_TO);
}
END_TEST

/* ---- steps ------------------------------------------------------------------------------------------------------- */

static size_t sew_unit(const struct muslin_unit_spec *spec, struct muslin_unit_step *rows)
{
    size_t count = 0;
    size_t asked = 0;
    ck_ok(muslin_unit_steps(spec, NULL, 0, 0, &asked, NULL));
    memset(rows, 0, MANY * sizeof *rows);
    ck_ok(muslin_unit_steps(spec, rows, sizeof *rows, MANY, &count, NULL));
    ck_assert_uint_eq(count, asked);
    ck_assert_uint_eq(rows[count].size, 0); /* left alone */
    return count;
}

/* Example: half-squares of 3 in, two at a time: draw a line, pair, sew beside it at 1/4 in, cut apart, press twice,
 * trim twice to 3 1/2 in. */
START_TEST(half_squares_are_sewn_beside_a_line)
{
    struct muslin_unit_step rows[MANY] = { { 0 } };
    const int32_t wanted[] = { MUSLIN_UNIT_STEP_MARK_LINE, MUSLIN_UNIT_STEP_PAIR,     MUSLIN_UNIT_STEP_BESIDE,
                               MUSLIN_UNIT_STEP_CUT_APART, MUSLIN_UNIT_STEP_PRESS_TO, MUSLIN_UNIT_STEP_TRIM_TO };
    ck_assert_uint_eq(sew_unit(&good, rows), COUNT_OF(wanted));
    for (size_t i = 0; i < COUNT_OF(wanted); i++)
        ck_assert_int_eq(rows[i].step, wanted[i]);
    ck_assert_int_eq(rows[1].piece, 2);
    ck_assert_int_eq(rows[1].other, 1);
    ck_assert_int_eq(rows[2].measure, 2032);
    ck_assert_int_eq(rows[4].times, 2);
    ck_assert_int_eq(rows[4].region, 1);
    ck_assert_int_eq(rows[5].times, 2);
    ck_assert_int_eq(rows[5].measure, IN(3, 1, 2));
    ck_assert_int_eq(rows[5].measure_height, IN(3, 1, 2));
    ck_assert_int_eq(rows[0].measure_height, 0);
}
END_TEST

/* Geese of 4 x 2 in are trimmed to 4 1/2 x 2 1/2. The diamonds of a 6 in star are 3 (sqrt 2 - 1) = 1.2426 in high, with
 * seams 1.7426 in: their strip is cut 1 3/4 in, up to 1/8, and so are they, to stay diamonds. */
START_TEST(steps_measure_what_is_cut_and_trimmed)
{
    struct muslin_unit_step rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, WHOLE_IN(4), 0);
    size_t count = sew_unit(&spec, rows);
    ck_assert_int_eq(rows[count - 1].step, MUSLIN_UNIT_STEP_TRIM_GEESE);
    ck_assert_int_eq(rows[count - 1].measure, IN(4, 1, 2));
    ck_assert_int_eq(rows[count - 1].measure_height, IN(2, 1, 2));
    spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[0].step, MUSLIN_UNIT_STEP_CUT_SLANTED);
    ck_assert_int_eq(rows[0].measure, IN(1, 3, 4));
    spec = unit_of(MUSLIN_UNIT_DIAMOND_60, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(2));
    ck_assert_uint_eq(sew_unit(&spec, rows), 1);
    ck_assert_int_eq(rows[0].measure, IN(2, 1, 2));
    spec = unit_of(MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(3), WHOLE_IN(2));
    ck_assert_uint_eq(sew_unit(&spec, rows), 1);
    ck_assert_int_eq(rows[0].measure, IN(3, 1, 2));
    spec = unit_of(MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(3), WHOLE_IN(2));
    ck_assert_uint_eq(sew_unit(&spec, rows), 0);
}
END_TEST

/* How often a step is done in all. */
static int32_t times_of(const struct muslin_unit_step *rows, size_t count, int32_t step)
{
    int32_t times = 0;
    for (size_t i = 0; i < count; i++)
        times += rows[i].step == step ? rows[i].times : 0;
    return times;
}

static int cuts_at_an_angle(int32_t step)
{
    return step == MUSLIN_UNIT_STEP_CUT_SLANTED || step == MUSLIN_UNIT_STEP_CUT_TURNING ||
           step == MUSLIN_UNIT_STEP_CUT_TO_SHAPE || step == MUSLIN_UNIT_STEP_CUT_POINTS ||
           step == MUSLIN_UNIT_STEP_CUT_WEDGES || step == MUSLIN_UNIT_STEP_CUT_PAIRS;
}

static struct muslin_unit_step last_step_of(const struct muslin_unit_spec *spec)
{
    struct muslin_unit_step rows[MANY] = { { 0 } };
    return rows[sew_unit(spec, rows) - 1];
}

static void ck_trim(const struct muslin_unit_spec *spec, int32_t step, muslin_len from_corner)
{
    struct muslin_unit_step last = last_step_of(spec);
    ck_assert_int_eq(last.step, step);
    ck_assert_int_eq(last.from_corner, from_corner);
}

/* Geometry, with 1/4 in seams: the seam of a 2 in corner runs at 45 degrees past the finished edge 2 in from the corner
 * to the raw one 2 1/4 in from it, and the raw corner lies 1/4 in farther out: 2 1/2 in. An octagon's corner, and that
 * of a kaleidoscope, is (1 - sqrt 1/2) W; a star's points lie so far along the finished edge. A half-rectangle of 4 by
 * 2 in misses the raw corner by 1/4 (4 - 2) / 4. */
START_TEST(trimming_says_where_seams_meet_the_edge)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, WHOLE_IN(6), 0);
    spec.corner = WHOLE_IN(2);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_CORNERS, IN(2, 1, 2));
    spec = unit_of(MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_CORNERS, inches(6 - 3 * ROOT_2 + 0.5));
    spec = unit_of(MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(8), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_CORNERS, inches(8 - 4 * ROOT_2 + 0.5));
    spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(12), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_STAR, inches(12 - 6 * ROOT_2 + 0.25));
    spec = unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), WHOLE_IN(2));
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_LEANING, IN(0, 1, 8));
    spec.finished_height = WHOLE_IN(4);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_TO, 0);
    spec = unit_of(MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_POINTS, 0);
    spec = unit_of(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_GEESE, 0);
    spec = unit_of(MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    ck_trim(&spec, MUSLIN_UNIT_STEP_TRIM_CROSSED, 0);
}
END_TEST

/* A star is set in from its marks outwards; a split quarter's half-square meets a square of 6 7/8 in (6 + 7/8, as
 * published); the edges of a hexagon 2 3/4 in high are 3.25 / sqrt 3 in as cut. */
START_TEST(steps_measure_pieces_as_cut)
{
    struct muslin_unit_step rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(12), 0);
    size_t count = sew_unit(&spec, rows);
    ck_assert_int_eq(rows[0].measure, WHOLE_IN(3));
    ck_assert_int_eq(rows[0].angle, 45);
    ck_assert_int_eq(times_of(rows, count, MUSLIN_UNIT_STEP_MARK_WIDE), 8);
    ck_assert_int_eq(times_of(rows, count, MUSLIN_UNIT_STEP_MARK_INNER), 8);
    ck_assert_int_eq(times_of(rows, count, MUSLIN_UNIT_STEP_MARK_CORNERS), 0);
    ck_assert_int_eq(times_of(rows, count, MUSLIN_UNIT_STEP_JOIN_THROUGH), 1);
    spec = unit_of(MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(6), 0);
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[6].step, MUSLIN_UNIT_STEP_PAIR_EACH_HALF);
    ck_assert_int_eq(rows[6].measure, IN(6, 7, 8));
    spec = unit_of(MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 0, IN(2, 3, 4));
    ck_assert_uint_eq(sew_unit(&spec, rows), 2);
    ck_assert_int_eq(rows[0].step, MUSLIN_UNIT_STEP_CUT_LENGTHS);
    ck_assert_int_eq(rows[0].measure, inches(6.5 / ROOT_3 + 0.5 / 8128)); /* from point to point, up to a tick */
    ck_assert_int_eq(rows[0].from_corner, 0);
    ck_assert_int_eq(rows[1].step, MUSLIN_UNIT_STEP_CUT_POINTS);
    ck_assert_int_eq(rows[1].measure, inches(3.25 / ROOT_3 + 0.5 / 8128)); /* up to a tick */
    ck_assert_int_eq(rows[1].from_corner, inches(3.25 / 2 / ROOT_3));      /* half across, at 60 degrees */
    ck_assert_int_eq(rows[1].angle, 60);
    spec.finished_height = 8131; /* 12195 / (2 sqrt 3) = 3520.39 */
    spec.grid = 1;
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[1].from_corner, 3520);
    spec = unit_of(MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[0].step, MUSLIN_UNIT_STEP_CUT_TO_SHAPE);
    ck_assert_int_eq(rows[0].from_corner, inches(6.5 * (1 - ROOT_2 / 2)));
    ck_assert_int_eq(rows[0].angle, 45);
}
END_TEST

/* Pieces that turn along a strip lean by the ruler's line, wedges by its tip; half-squares have one straight end. */
START_TEST(each_shape_is_cut_from_its_strip_in_its_own_way)
{
    struct muslin_unit_step rows[MANY] = { { 0 } };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(8), 0);
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[0].step, MUSLIN_UNIT_STEP_CUT_WEDGES);
    ck_assert_int_eq(rows[1].step, MUSLIN_UNIT_STEP_CUT_WEDGES);
    ck_assert_int_eq(rows[1].angle, 45);
    const char *of_wedges = muslin_unit_step_sentence(MUSLIN_UNIT_STEP_CUT_WEDGES);
    ck_assert_ptr_nonnull(strstr(of_wedges, "67 1/2 degrees")); /* (180 - 45) / 2 */
    spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(3), 0);
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[1].step, MUSLIN_UNIT_STEP_CUT_PAIRS);
    ck_assert_int_eq(rows[1].other, 2);
    spec = unit_of(MUSLIN_UNIT_HALF_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(2));
    sew_unit(&spec, rows);
    ck_assert_int_eq(rows[0].step, MUSLIN_UNIT_STEP_CUT_TURNING);
    ck_assert_int_eq(rows[0].angle, 60);
}
END_TEST

/* Steps name rows and regions that the recipe has; as many units are trimmed as it makes; each square that is laid on a
 * corner is sewn on its line, folded back or sewn beside its line. */
START_TEST(the_steps_of_every_recipe_agree_with_its_pieces)
{
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        struct muslin_unit_step rows[MANY] = { { 0 } };
        struct muslin_unit_plan unit = { .size = (uint32_t)sizeof unit };
        int32_t kind = 0;
        int32_t method = 0;
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        struct muslin_unit_spec spec = any_unit(kind, method, WHOLE_IN(4));
        size_t count = sew_unit(&spec, rows);
        ck_ok(muslin_unit_recipe(&spec, &unit, NULL));
        for (size_t k = 0; k < count; k++) {
            ck_assert(rows[k].step >= MUSLIN_UNIT_STEP_MARK_LINE && rows[k].step <= MUSLIN_UNIT_STEP_CUT_PAIRS);
            ck_assert(rows[k].piece >= 0 && rows[k].piece <= unit.pieces);
            ck_assert(rows[k].other >= 0 && rows[k].other <= unit.pieces);
            ck_assert(rows[k].times >= 1 && rows[k].times <= 8);
            ck_assert_int_eq(rows[k].region != 0, rows[k].step == MUSLIN_UNIT_STEP_PRESS_TO);
            ck_assert_int_eq(rows[k].angle != 0, cuts_at_an_angle(rows[k].step));
            ck_assert_int_eq(rows[k].measure > 0,
                             strstr(muslin_unit_step_sentence(rows[k].step), "{measure}") != NULL);
            ck_assert_int_ge(rows[k].measure, 0);
        }
        int32_t trims = times_of(rows, count, MUSLIN_UNIT_STEP_TRIM_TO);
        for (int32_t step = MUSLIN_UNIT_STEP_TRIM_CROSSED; step <= MUSLIN_UNIT_STEP_TRIM_LEANING; step++)
            trims += times_of(rows, count, step);
        int is_trimmed = unit.unfinished_width != 0 && kind != MUSLIN_UNIT_RECTANGLE &&
                         method != MUSLIN_UNIT_METHOD_BIAS_STRIPS;
        ck_assert_int_eq(trims, is_trimmed ? unit.units_per_recipe : 0);
        if (method == MUSLIN_UNIT_METHOD_FLIPPED_CORNERS) {
            int32_t corners = times_of(rows, count, MUSLIN_UNIT_STEP_PAIR_CORNER) +
                              times_of(rows, count, MUSLIN_UNIT_STEP_PAIR_CORNER_LEFT) +
                              times_of(rows, count, MUSLIN_UNIT_STEP_PAIR_END) +
                              times_of(rows, count, MUSLIN_UNIT_STEP_PAIR_OTHER_END);
            ck_assert_int_eq(corners, times_of(rows, count, MUSLIN_UNIT_STEP_ON_LINE));
            ck_assert_int_eq(corners, times_of(rows, count, MUSLIN_UNIT_STEP_TRIM_CORNER));
            ck_assert_int_eq(corners, times_of(rows, count, MUSLIN_UNIT_STEP_FOLD_BACK));
            ck_assert_int_eq(corners, times_of(rows, count, MUSLIN_UNIT_STEP_MARK_LINE));
        }
    }
}
END_TEST

/* Every place of a sentence is one that the header names. */
static void ck_places(const char *sentence)
{
    const char *const known[] = { "{piece}", "{other}", "{measure}", "{measure_height}", "{from_corner}", "{region}",
                                  "{angle}" };
    for (const char *at = strchr(sentence, '{'); at != NULL; at = strchr(at + 1, '{')) {
        int found = 0;
        for (size_t i = 0; i < COUNT_OF(known); i++)
            found |= strncmp(at, known[i], strlen(known[i])) == 0;
        ck_assert_msg(found, "%s", sentence);
    }
}

/* Example: puts(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_ON_LINE)). */
START_TEST(every_step_has_its_sentence)
{
    const char *none = muslin_unit_step_sentence(0);
    ck_assert_str_eq(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_ON_LINE), "Sew on the drawn line.");
    ck_assert_ptr_nonnull(strstr(none, "no sewing step"));
    ck_assert_str_eq(muslin_unit_step_sentence(-1), none);
    for (int32_t beyond = 1; beyond < 100; beyond++)
        ck_assert_str_eq(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_CUT_PAIRS + beyond), none);
    ck_assert_str_eq(muslin_unit_step_sentence(INT32_MIN), none);
    ck_assert_str_eq(muslin_unit_step_sentence(INT32_MAX), none);
    for (int32_t step = MUSLIN_UNIT_STEP_MARK_LINE; step <= MUSLIN_UNIT_STEP_CUT_PAIRS; step++) {
        const char *sentence = muslin_unit_step_sentence(step);
        ck_assert_str_ne(sentence, none);
        ck_assert(sentence[strlen(sentence) - 1] == '.');
        ck_places(sentence);
    }
    ck_assert_ptr_nonnull(strstr(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_TRIM_TO), "unfinished"));
    ck_assert_ptr_nonnull(strstr(muslin_unit_step_sentence(MUSLIN_UNIT_STEP_SET_IN), "inner corner"));
}
END_TEST

Suite *unit_outline_suite(void)
{
    Suite *suite = suite_create("unit outlines and steps");
    TCase *outlines = tcase_create("outlines");
    tcase_add_test(outlines, a_half_square_has_two_triangles);
    tcase_add_test(outlines, the_second_hand_is_the_mirror_image);
    tcase_add_test(outlines, the_points_of_a_half_rectangle_differ);
    tcase_add_test(outlines, a_blunt_tip_is_level_with_the_allowance);
    tcase_add_test(outlines, a_kaleidoscope_has_eight_wedges);
    tcase_add_test(outlines, a_star_has_diamonds_squares_and_triangles);
    tcase_add_test(outlines, the_corners_of_a_snowball_may_meet);
    tcase_add_test(outlines, every_recipe_is_drawn_with_all_its_corners);
    tcase_add_test(outlines, allowances_are_as_long_as_the_edges_that_are_drawn);
    tcase_add_test(outlines, outlines_reach_the_ends_of_their_ranges);
    tcase_add_test(outlines, half_a_tick_goes_up);
    tcase_add_test(outlines, outlines_refuse_what_is_wrong);
    suite_add_tcase(suite, outlines);
    TCase *steps = tcase_create("steps");
    tcase_add_test(steps, steps_refuse_what_is_wrong);
    tcase_add_test(steps, rows_may_be_larger_than_known);
    tcase_add_test(steps, half_squares_are_sewn_beside_a_line);
    tcase_add_test(steps, steps_measure_what_is_cut_and_trimmed);
    tcase_add_test(steps, trimming_says_where_seams_meet_the_edge);
    tcase_add_test(steps, steps_measure_pieces_as_cut);
    tcase_add_test(steps, each_shape_is_cut_from_its_strip_in_its_own_way);
    tcase_add_test(steps, the_steps_of_every_recipe_agree_with_its_pieces);
    tcase_add_test(steps, every_step_has_its_sentence);
    suite_add_tcase(suite, steps);
    return suite;
}
