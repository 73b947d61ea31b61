/* test_unit.c - recipes for pieced shapes: published sizes, geometry, refusals. The comparison with drawn polygons is
 * in tests/property.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

enum { ROWS_MOST = 6, MAKES_MOST = 40 };

static struct muslin_unit_spec unit_of(int32_t kind, int32_t method, muslin_len width, muslin_len height)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    spec.kind = kind;
    spec.method = method;
    spec.finished_width = width;
    spec.finished_height = height;
    return spec;
}

static struct muslin_unit_plan plan_of(const struct muslin_unit_spec *spec)
{
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    ck_ok(muslin_unit_recipe(spec, &plan, NULL));
    return plan;
}

struct rows {
    struct muslin_unit_piece row[ROWS_MOST];
    size_t count;
};

/* The rows of a recipe; what there is room for behind them is left alone. */
static struct rows rows_of(const struct muslin_unit_spec *spec)
{
    struct rows rows;
    memset(rows.row, FILL, sizeof rows.row);
    ck_ok(muslin_unit_pieces(spec, rows.row, sizeof rows.row[0], ROWS_MOST, &rows.count, NULL));
    const unsigned char *behind = (const unsigned char *)&rows.row[rows.count];
    for (size_t i = 0; i < (ROWS_MOST - rows.count) * sizeof rows.row[0]; i++)
        ck_assert_uint_eq(behind[i], FILL);
    return rows;
}

/* ---- forwards ---------------------------------------------------------------------------------------------------- */

/* How to measure and cut triangles (blog from a guild newsletter, 2018): finished + 7/8. */
START_TEST(a_half_square_of_three_inches_takes_squares_of_three_and_seven_eighths)
{
    /* Example: a half-square of 3 in, two at a time, takes one row for each of two fabrics: pieces = 2,
     * units_per_recipe = 2, unfinished 3 1/2 in. */
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(3), 0);
    spec.units = 25;
    struct muslin_unit_plan plan = plan_of(&spec);
    ck_assert_int_eq(plan.pieces, 2);
    ck_assert_int_eq(plan.units_per_recipe, 2);
    ck_assert_int_eq(plan.unfinished_width, IN(3, 1, 2));
    ck_assert_int_eq(plan.unfinished_height, IN(3, 1, 2));
    ck_assert_int_eq(plan.recipes, 13);
    ck_assert_int_eq(plan.spare_units, 1);
    ck_assert_uint_eq(plan.warnings, 0);
    /* Example: half-squares of 3 in, two at a time: squares cut 3 7/8 in, one of each fabric for two units. */
    struct rows rows = rows_of(&spec);
    ck_assert_uint_eq(rows.count, 2);
    for (int32_t i = 0; i < 2; i++) {
        ck_assert_int_eq(rows.row[i].cut_width, IN(3, 7, 8));
        ck_assert_int_eq(rows.row[i].cut_height, IN(3, 7, 8));
        ck_assert_int_eq(rows.row[i].region, i + 1);
        ck_assert_int_eq(rows.row[i].count, 1);
        ck_assert_int_eq(rows.row[i].total, 13);
        ck_assert_int_eq(rows.row[i].shape, MUSLIN_CUT_SHAPE_RECTANGLE);
        ck_assert_int_eq(rows.row[i].again, MUSLIN_CUT_AGAIN_NO);
        ck_assert_int_eq(rows.row[i].grain, MUSLIN_GRAIN_SHORT_EDGES);
        ck_assert_int_eq(rows.row[i].hand, 1);
        ck_assert_uint_eq(rows.row[i].size, sizeof rows.row[i]);
    }
}
END_TEST

/* By hand: two squares of 3 7/8 in are 2 x 15.015625 sq in; two units 2 x 9; the allowances run along two triangles of
 * legs 3 in each: 2 x 2 x (6 + 4.24264) in, a quarter inch wide: 10.24264. What remains is 1.78861 sq in. */
START_TEST(what_is_wasted_is_what_remains)
{
    const int64_t square_inch = 2 * WHOLE_IN(1) * WHOLE_IN(1);
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(3), 0);
    struct muslin_unit_plan plan = plan_of(&spec);
    ck_assert_int_eq(plan.cut_area, 2 * IN(3, 7, 8) * IN(3, 7, 8) * 2);
    ck_assert_int_eq(plan.finished_area, 18 * square_inch);
    ck_assert_int_eq(plan.allowance_area * 10000 / square_inch, 102426);
    ck_assert_int_eq(plan.waste_area, plan.cut_area - plan.finished_area - plan.allowance_area);
    ck_assert_int_eq(plan.waste_area * 10000 / square_inch, 17886);
    /* Geese of 4 x 2 in: a square of 4 + 1 1/4 in and four of 2 + 7/8 in. */
    spec = unit_of(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, WHOLE_IN(4), 0);
    ck_assert_int_eq(plan_of(&spec).cut_area, 2 * (IN(5, 1, 4) * IN(5, 1, 4) + 4 * IN(2, 7, 8) * IN(2, 7, 8)));
}
END_TEST

/* Geometry: legs 4 and 2 in have the inner radius (6 - sqrt 20) / 2 = 0.7639, so the raw legs are 1 + 0.25 / 0.7639
 * times as long: 5.3090 and 2.6545; to the eighth, up, 5 3/8 and 2 3/4. The seam climbs 1 in 2, so it misses the raw
 * corner by half of 1/4 in. */
START_TEST(left_and_right_leaning_half_rectangles_are_different_cuts)
{
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), WHOLE_IN(2));
    spec.units = 5;
    spec.mirrored = 4;
    struct muslin_unit_plan plan = plan_of(&spec);
    ck_assert_int_eq(plan.recipes, 3);
    ck_assert_int_eq(plan.mirrored_recipes, 2);
    ck_assert_int_eq(plan.spare_units, 1);
    ck_assert_int_eq(plan.pieces, 4);
    ck_assert_int_eq(plan.seam_offset, IN(0, 1, 8));
    struct rows rows = rows_of(&spec);
    ck_assert_uint_eq(rows.count, 4);
    for (size_t i = 0; i < 4; i++) {
        ck_assert_int_eq(rows.row[i].cut_width, IN(5, 3, 8));
        ck_assert_int_eq(rows.row[i].cut_height, IN(2, 3, 4));
        ck_assert_int_eq(rows.row[i].hand, i < 2 ? 1 : 2);
        ck_assert_int_eq(rows.row[i].total, i < 2 ? 3 : 2);
        ck_assert_int_eq(rows.row[i].region, (int32_t)(i % 2) + 1);
    }
    spec = unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(2), WHOLE_IN(4));
    ck_assert_int_eq(plan_of(&spec).seam_offset, IN(0, 1, 8));
    /* two thirds of 1/4 in are 1354 2/3 ticks */
    spec = unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(1), WHOLE_IN(3));
    ck_assert_int_eq(plan_of(&spec).seam_offset, 1355);
}
END_TEST

/* Geometry: from a corner cut 2 1/2 in, a second line half an inch from the first leaves 2.5 - 0.7071 = 1.7929 in: trim
 * to 1 3/4. From one of half an inch nothing is left. */
START_TEST(corners_cut_off_give_bonus_half_squares)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, WHOLE_IN(6), 0);
    spec.corner = WHOLE_IN(2);
    struct muslin_unit_plan plan = plan_of(&spec);
    ck_assert_int_eq(plan.bonus_units, 4);
    ck_assert_int_eq(plan.bonus_unfinished, 14572); /* 1.7929 x 8128 = 14572.6 */
    spec.corner = IN(0, 1, 8);
    ck_assert_int_eq(plan_of(&spec).bonus_unfinished, 0);
    spec.grid = 1;
    spec.corner = 1684; /* 1684 + 4064 - 4064 sqrt 2 = 0.64 tick */
    ck_assert_int_eq(plan_of(&spec).bonus_unfinished, 0);
    spec.corner++;
    ck_assert_int_eq(plan_of(&spec).bonus_unfinished, 1);
    spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(6), 0); /* cuts no corner off */
    ck_assert_int_eq(plan_of(&spec).bonus_units, 0);
    ck_assert_int_eq(plan_of(&spec).bonus_unfinished, 0);
}
END_TEST

/* Geometry: the diamonds of a 12 in star are 6 (sqrt 2 - 1) + 1/2 = 2.9853 in high, cut 3 in. So they finish 2 1/2 in
 * high and 3.5355 in along each side, and the star 3.5355 (2 + sqrt 2) = 12.0711 in. Beside them squares need 4.0355 in
 * and triangles a square of 3.5355 sqrt 2 + 1.2071 = 6.2071 in; they are cut 4 1/8 and 6 1/4. */
START_TEST(a_star_follows_its_diamonds_as_cut)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(12), 0);
    ck_assert_int_eq(plan_of(&spec).star_wider_by, 578); /* 12.0710678 - 12, x 8128 = 577.6 */
    struct rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].star_excess, 0);
    ck_assert_int_eq(rows.row[1].star_excess, 727); /* 4 1/8 - 4.0355339, x 8128 = 727.2 */
    ck_assert_int_eq(rows.row[2].star_excess, 348); /* 6 1/4 - 6.2071068, x 8128 = 348.6 */
    spec.direction = MUSLIN_DIRECTION_DOWN; /* 2 7/8 in: (2 + 2 sqrt 2) 2.375 = 11.467514 in */
    ck_assert_int_eq(plan_of(&spec).star_wider_by, -4328);
    spec = unit_of(MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    ck_assert_int_eq(plan_of(&spec).star_wider_by, 0);
    ck_assert_int_eq(rows_of(&spec).row[1].star_excess, 0);
}
END_TEST

/* Equilateral triangles from a strip: sharp 3 allowances more than the finished height, blunt 2. */
START_TEST(a_blunt_tip_saves_an_allowance_of_strip)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(4));
    ck_assert_int_eq(rows_of(&spec).row[0].cut_height, IN(4, 1, 2));
    spec.tip = MUSLIN_TIP_SHARP;
    ck_assert_int_eq(rows_of(&spec).row[0].cut_height, IN(4, 3, 4));
    struct muslin_unit_plan plan = plan_of(&spec);
    ck_assert_int_eq(plan.unfinished_width, 0);
    ck_assert_int_eq(plan.unfinished_height, IN(4, 1, 2));
    ck_assert_int_eq(plan.finished_width, 37542); /* 8 / sqrt 3 = 4.618802 in = 37541.6 */
    ck_assert_uint_eq(plan.warnings, MUSLIN_WARN_BIAS_EDGE);
}
END_TEST

static void ck_about(muslin_len found, double inches)
{
    double ticks = (double)found;
    ck_assert_msg(ticks >= inches * 8128 && ticks < inches * 8128 + 3, "%lld ticks are not %f in", (long long)found,
                  inches);
}

static void ck_along(const struct muslin_unit_piece *row, double first, double pitch, double wide, double narrow,
                     int32_t angle)
{
    ck_about(row->cut_width, first);
    ck_about(row->pitch, pitch);
    ck_about(row->wide_edge, wide);
    ck_about(row->narrow_edge, narrow);
    ck_assert_int_eq(row->angle, angle);
    ck_assert_int_eq(row->pad, 0);
}

/* By hand. A 12 in star's diamonds need 6 (sqrt 2 - 1) + 1/2 = 2.985 in, cut 3 in: by cuts 3 in apart at 45 degrees
 * each takes 3 sqrt 2 = 4.2426 in of the strip, the first 3 in more. A trapezoid of 6 by 2 in: 1/4 in allowance makes
 * the long edge 6 + 2 (1 + sqrt 2) / 4 = 7.2071, the short one 2 + 2 (sqrt 2 - 1) / 4 = 2.2071; cut from 3 in instead
 * of 2 1/2 the long one gains 2 x 1/2. A half-hexagon 2 in high: 8 / sqrt 3 + sqrt 3 / 2 = 5.4848 and 4 / sqrt 3 + 1 /
 * (2 sqrt 3) = 2.5981. A hexagon 2 3/4 in high is cut 3 1/4 in, and 3.25 / sqrt 3 = 1.8764 along each edge. */
START_TEST(what_lies_along_a_strip_follows_from_the_strip_as_cut)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(12), 0);
    struct rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_height, WHOLE_IN(3));
    ck_along(&rows.row[0], 7.242640687, 4.242640687, 4.242640687, 4.242640687, 45);
    ck_along(&rows.row[1], 4.125, 0, 0, 0, 0);
    spec = unit_of(MUSLIN_UNIT_TRAPEZOID, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(6), WHOLE_IN(2));
    rows = rows_of(&spec);
    ck_along(&rows.row[0], 7.207106781, 4.707106781, 7.207106781, 2.207106781, 45);
    spec.grid = WHOLE_IN(1);
    rows = rows_of(&spec);
    ck_along(&rows.row[0], 8.207106781, 5.207106781, 8.207106781, 2.207106781, 45);
    spec = unit_of(MUSLIN_UNIT_HALF_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(2));
    rows = rows_of(&spec);
    ck_along(&rows.row[0], 5.484827557, 4.041451884, 5.484827557, 2.598076211, 60);
    spec = unit_of(MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 0, IN(2, 3, 4));
    rows = rows_of(&spec);
    ck_along(&rows.row[0], 3.752776750, 3.752776750, 1.876388375, 1.876388375, 60);
}
END_TEST

/* By hand. The wedges of an 8 in kaleidoscope are cut 4 1/2 in high; tan(22 1/2) = 0.4142136, and the raw point lies
 * 0.25 / sin(22 1/2) = 0.6532815 in above the finished one, so that 1/4 in above this they are 2 x 0.4142136 x
 * 0.4032815 = 0.3340899 in wide, and 2 x 0.4142136 x 4.9032815 = 4.0620121 at the other end. Half the squares' side cut
 * off an octagon of 6 1/2 in leaves edges of 6.5 x 0.4142136 = 2.6923881. */
START_TEST(wedges_have_a_wide_and_a_narrow_end)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(8), 0);
    struct rows rows = rows_of(&spec);
    ck_assert_uint_eq(rows.count, 3);
    for (int32_t i = 0; i < 2; i++) {
        ck_assert_int_eq(rows.row[i].region, i + 1);
        ck_assert_int_eq(rows.row[i].count, 4);
        ck_assert_int_eq(rows.row[i].cut_height, IN(4, 1, 2));
        ck_along(&rows.row[i], 4.0620121, 2.1980510, 4.0620121, 0.3340899, 45);
    }
    ck_assert_int_eq(rows.row[2].region, 3);
    spec.tip = MUSLIN_TIP_SHARP; /* 4.9032815 high: 5 in, to the eighth */
    rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_height, WHOLE_IN(5));
    ck_along(&rows.row[0], 4.142135623, 2.071067811, 4.142135623, 0, 45);
    spec = unit_of(MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_width, IN(6, 1, 2));
    ck_along(&rows.row[0], 6.5, 0, 2.692388155, 2.692388155, 45);
}
END_TEST

static void ck_recipes(const struct muslin_unit_spec *spec, int64_t recipes, int64_t mirrored, int64_t spare)
{
    struct muslin_unit_plan plan = plan_of(spec);
    struct rows rows = rows_of(spec);
    ck_assert_int_eq(plan.recipes, recipes);
    ck_assert_int_eq(plan.mirrored_recipes, mirrored);
    ck_assert_int_eq(plan.spare_units, spare);
    ck_assert_int_eq(plan.pieces, (int64_t)rows.count);
    for (size_t i = 0; i < rows.count; i++)
        ck_assert_int_eq(rows.row[i].total, rows.row[i].count * (rows.row[i].hand == 2 ? mirrored : recipes));
}

/* The half of a split quarter lies left of the seam in two of four: common practice, no source. So four of one hand
 * take two recipes, and so do four of each; with three and five it is the five that decide. By pieces all are sewn as
 * they are wanted, four from a recipe. */
START_TEST(two_at_a_time_makes_mirror_images_of_split_quarters)
{
    /* Example: 4 split quarters of one hand, two at a time, take 2 recipes, and 4 of the other hand are spare. */
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(6), 0);
    spec.units = 4;
    ck_assert_int_eq(plan_of(&spec).units_per_recipe, 4);
    ck_assert_int_eq(plan_of(&spec).mirrored_per_recipe, 2);
    ck_recipes(&spec, 2, 0, 4);
    spec.mirrored = 4;
    ck_recipes(&spec, 2, 0, 0);
    spec.units = 3;
    spec.mirrored = 5;
    ck_recipes(&spec, 3, 0, 4);
    spec.units = 0;
    ck_recipes(&spec, 3, 0, 7);
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    spec.units = 3;
    ck_assert_int_eq(plan_of(&spec).mirrored_per_recipe, 0);
    ck_recipes(&spec, 2, 0, 0);
    spec.mirrored = 6;
    ck_recipes(&spec, 3, 0, 3);
    ck_assert_uint_eq(rows_of(&spec).count, 3);
}
END_TEST

/* A slice that leans to the right, turned half round, still leans to the right: the other hand is cut the other way. */
START_TEST(slices_that_lean_the_other_way_are_cut_apart)
{
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(2), WHOLE_IN(6));
    spec.units = 5;
    spec.mirrored = 3;
    ck_recipes(&spec, 5, 3, 0);
    struct rows rows = rows_of(&spec);
    ck_assert_uint_eq(rows.count, 2);
    ck_assert_int_eq(rows.row[1].hand, 2);
    ck_assert_int_eq(rows.row[1].pitch, rows.row[0].pitch);
}
END_TEST

/* 8 (sqrt 2 - 1) + 1.2071 = 4.521 in, nearest 1/8: 4 1/2, as Eight-pointed star blocks (quilting magazine) print it. */
START_TEST(rounding_below_the_need_is_said)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(8), 0);
    ck_assert_uint_eq(plan_of(&spec).warnings, 0);
    spec.direction = MUSLIN_DIRECTION_NEAREST;
    ck_assert_uint_eq(plan_of(&spec).warnings, MUSLIN_WARN_BELOW_EXACT);
    struct rows rows = rows_of(&spec);
    ck_assert_uint_eq(rows.count, 3);
    ck_assert_int_eq(rows.row[2].cut_width, IN(4, 1, 2));
    ck_assert_int_eq(rows.row[2].surplus_width, -170); /* 0.0208 in = 169.3, down */
    spec.grid = MUSLIN_UNIT_SIZE_MAX;
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(rows_of(&spec).row[2].cut_width, MUSLIN_UNIT_SIZE_MAX);
    /* By 50 digits: legs of 5 and 3 in have raw legs of a whole number of ticks and 0.165 and 0.899. */
    spec = unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(5), WHOLE_IN(3));
    spec.grid = 1;
    spec.direction = MUSLIN_DIRECTION_NEAREST;
    ck_assert_int_eq(rows_of(&spec).row[0].surplus_width, -1);
    ck_assert_int_eq(rows_of(&spec).row[0].surplus_height, 0);
    ck_assert_uint_eq(plan_of(&spec).warnings & MUSLIN_WARN_BELOW_EXACT, MUSLIN_WARN_BELOW_EXACT);
    spec.finished_width = WHOLE_IN(3);
    spec.finished_height = WHOLE_IN(5);
    ck_assert_int_eq(rows_of(&spec).row[0].surplus_width, 0);
    ck_assert_int_eq(rows_of(&spec).row[0].surplus_height, -1);
    ck_assert_uint_eq(plan_of(&spec).warnings & MUSLIN_WARN_BELOW_EXACT, MUSLIN_WARN_BELOW_EXACT);
}
END_TEST

/* 3.5 s is 2.625 cm at 0.75 cm; print's + 2.5 cm (from memory) is below the exact 2.5607 cm: 8194.02 ticks. */
START_TEST(a_customary_addition_that_is_too_small_is_refused)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 32000, 0);
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    struct muslin_problem problem = PROBLEM;
    spec.allowance = 2400;
    spec.half_addition = 8000;
    ck_ok(muslin_unit_recipe(&spec, &plan, &problem));
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_CUSTOMARY);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_HALF_ADDITION);
    ck_assert_int_eq(problem.value, 8000);
    ck_assert_int_eq(problem.limit, 8195);
    ck_assert_str_eq(problem.text, "Addition for a half-square is 25 mm, but the geometry needs at least about 25.61 mm.");
    spec.half_addition = 8195;
    ck_ok(muslin_unit_recipe(&spec, &plan, &problem));
    spec.kind = MUSLIN_UNIT_QUARTER_SQUARE;
    spec.quarter_addition = 11200; /* (1 + sqrt 2) x 4800 = 11588.2 */
    ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_CUSTOMARY);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUARTER_ADDITION);
    ck_assert_int_eq(problem.limit, 11589);
    spec.kind = MUSLIN_UNIT_HALF_SQUARE;
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.half_addition = 0;
    spec.quarter_addition = 0;
    spec.trim_room = 320;
    spec.grid = 1;
    ck_ok(muslin_unit_recipe(&spec, &plan, &problem));
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, 32000 + 8400 + 320);
}
END_TEST

/* Whose pieces no addition makes larger, nobody is refused for. */
START_TEST(an_addition_that_a_recipe_does_not_use_is_not_judged)
{
    const struct muslin_unit_spec least = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(3), 0);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    spec.quarter_addition = 1;
    ck_ok(muslin_unit_recipe(&spec, &plan, NULL));
    spec.half_addition = 1;
    ck_status(muslin_unit_recipe(&spec, &plan, NULL), MUSLIN_ERR_CUSTOMARY);
    spec.kind = MUSLIN_UNIT_RECTANGLE;
    spec.method = MUSLIN_UNIT_METHOD_PIECES;
    ck_ok(muslin_unit_recipe(&spec, &plan, NULL));
    spec.kind = MUSLIN_UNIT_QUARTER_SQUARE;
    ck_status(muslin_unit_recipe(&spec, &plan, NULL), MUSLIN_ERR_CUSTOMARY);
    spec.quarter_addition = least.quarter_addition;
    ck_ok(muslin_unit_recipe(&spec, &plan, NULL));
    spec.kind = MUSLIN_UNIT_SPLIT_QUARTER; /* it has both */
    ck_status(muslin_unit_recipe(&spec, &plan, NULL), MUSLIN_ERR_CUSTOMARY);
}
END_TEST

/* Squares for units of 6 in as the published rules say: + 7/8 in where they are cut once, + 1 1/4 in where twice, 2 x 6 +
 * 1 3/4 in for eight at a time; geese are 3 in high, and corners of a square in a square half of 6 in. With seams of
 * 1/4 in the exact sizes, to eighths, are the same. Four all round: 6 1/2 sqrt 2 + 1/2 = 9.692 in; the square in the
 * middle: 6 / sqrt 2 + 1/2 = 4.743 in. Room to trim of 1/8 in is added as often as `times` says. */
START_TEST(squares_are_as_large_as_the_published_rules_say)
{
    enum { HALF_7_8 = 7 * 1016, QUARTER_10_8 = 10 * 1016 };
    static const struct {
        int32_t kind, method, row;
        muslin_len cut;
        int32_t times;
    } squares[] = {
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, WHOLE_IN(6) + HALF_7_8, 1 },
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 0, WHOLE_IN(6) + HALF_7_8, 1 },
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME, 1, 2 * (WHOLE_IN(6) + HALF_7_8), 2 },
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND, 0, IN(9, 3, 4), 1 },
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS, 0, WHOLE_IN(13), 2 },
        { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 0, WHOLE_IN(6) + QUARTER_10_8, 1 },
        { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 1, WHOLE_IN(6) + QUARTER_10_8, 1 },
        { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 0, WHOLE_IN(6) + HALF_7_8, 1 },
        { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 1, WHOLE_IN(6) + QUARTER_10_8, 1 },
        { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 2, WHOLE_IN(6) + QUARTER_10_8, 1 },
        { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 0, WHOLE_IN(6) + QUARTER_10_8, 1 },
        { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, WHOLE_IN(3) + HALF_7_8, 1 },
        { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, 0, WHOLE_IN(6) + QUARTER_10_8, 0 },
        { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, 1, WHOLE_IN(3) + HALF_7_8, 1 },
        { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 0, IN(4, 3, 4), 0 },
        { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, WHOLE_IN(3) + HALF_7_8, 1 },
    };
    for (size_t i = 0; i < COUNT_OF(squares); i++) {
        struct muslin_unit_spec spec = unit_of(squares[i].kind, squares[i].method, WHOLE_IN(6), 0);
        const int32_t row = squares[i].row;
        ck_assert_int_eq(rows_of(&spec).row[row].cut_width, squares[i].cut);
        spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
        ck_assert_int_eq(rows_of(&spec).row[row].cut_width, squares[i].cut);
        ck_assert_int_eq(rows_of(&spec).row[row].cut_height, squares[i].cut);
        spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
        spec.trim_room = IN(0, 1, 8);
        ck_assert_int_eq(rows_of(&spec).row[row].cut_height, squares[i].cut + squares[i].times * IN(0, 1, 8));
    }
}
END_TEST

/* Geometry: a half-square of 3 in has raw legs of 3 + (2 + sqrt 2) / 4 = 3.8536 in. With its tip cut off at 1/4 in beyond
 * the finished one the strip is 3 1/2 in, which leaves sqrt 2 / 4 in there: 2873.7 ticks; a pair takes both edges. Sharp
 * ones come from a strip as wide as a leg, to the eighth 3 7/8 in, and a pair takes a square of it. */
START_TEST(half_squares_lie_in_pairs_along_a_strip)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_STRIPS, WHOLE_IN(3), 0);
    const muslin_len legs[] = { 31322, IN(3, 7, 8) }, pairs[] = { 34196, IN(3, 7, 8) }, tips[] = { 2874, 0 };
    const muslin_len strips[] = { IN(3, 1, 2), IN(3, 7, 8) };
    for (int is_sharp = 0; is_sharp < 2; is_sharp++) {
        spec.tip = is_sharp ? MUSLIN_TIP_SHARP : MUSLIN_TIP_BLUNT;
        const struct rows rows = rows_of(&spec);
        ck_assert_uint_eq(rows.count, 2);
        for (size_t i = 0; i < rows.count; i++) {
            ck_assert_int_eq(rows.row[i].cut_height, strips[is_sharp]);
            ck_assert_int_eq(rows.row[i].cut_width, pairs[is_sharp]);
            ck_assert_int_eq(rows.row[i].pitch, pairs[is_sharp]);
            ck_assert_int_eq(rows.row[i].wide_edge, legs[is_sharp]);
            ck_assert_int_eq(rows.row[i].narrow_edge, tips[is_sharp]);
            ck_assert_int_eq(rows.row[i].angle, 45);
            ck_assert_int_eq(rows.row[i].gives, 2);
        }
    }
}
END_TEST

/* A regular octagon 6 in wide cuts corners of 6 (1 - 1 / sqrt 2) = 1.7574 in off: as triangles of squares, and 0.8536 for
 * seams, 2.611 in; as a star's corner squares, and 1/2, 2.257 in. Between them a star has triangles with a long side of
 * 6 (sqrt 2 - 1), and 1.2071: 3.692 in. */
START_TEST(corners_of_eight_sided_units_follow_from_the_octagon)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_OCTAGON, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(6), 0);
    ck_assert_int_eq(rows_of(&spec).row[1].cut_width, IN(2, 5, 8));
    spec.kind = MUSLIN_UNIT_KALEIDOSCOPE;
    ck_assert_int_eq(rows_of(&spec).row[2].cut_width, IN(2, 5, 8));
    spec.kind = MUSLIN_UNIT_EIGHT_POINTED_STAR;
    ck_assert_int_eq(rows_of(&spec).row[1].cut_width, IN(2, 3, 8));
    ck_assert_int_eq(rows_of(&spec).row[2].cut_width, IN(3, 3, 4));
}
END_TEST

/* Of 3 in, 24384 ticks: 2 / sqrt 3 of it are 28156.2, sqrt 2 of it 34484.2, 4 / sqrt 3 of it 56312.4. */
START_TEST(kinds_that_take_a_height_tell_their_width)
{
    const int32_t kinds[] = { MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_DIAMOND_60, MUSLIN_UNIT_DIAMOND_45,
                              MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_HALF_HEXAGON };
    const muslin_len widths[] = { 28156, 28156, 34484, 28156, 56312 };
    for (size_t i = 0; i < COUNT_OF(kinds); i++) {
        struct muslin_unit_spec spec = unit_of(kinds[i], MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(3));
        ck_assert_int_eq(plan_of(&spec).finished_width, widths[i]);
    }
}
END_TEST

/* Squares of 3 1/2 in lie on point with their diagonal, 4.950 in, on the seam of two bias strips, each half of that and an
 * allowance wide: 2.725 in; to the eighth, and with room. */
START_TEST(half_squares_lie_on_point_on_a_seam_of_bias_strips)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_BIAS_STRIPS, WHOLE_IN(3), 0);
    ck_assert_int_eq(rows_of(&spec).row[1].cut_width, WHOLE_IN(5));
    ck_assert_int_eq(rows_of(&spec).row[1].cut_height, IN(2, 3, 4));
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.trim_room = IN(0, 1, 8);
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, IN(5, 1, 8));
    ck_assert_int_eq(rows_of(&spec).row[0].cut_height, IN(2, 7, 8));
}
END_TEST

/* Room of 1/4 in: once to a half-rectangle's sides (5 3/8 by 2 3/4 in, see above), twice to squares sewn from middle to
 * middle, 2 x (3 + 1/2), not at all to corners that are folded back. */
START_TEST(room_to_trim_is_added_where_something_is_trimmed)
{
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), WHOLE_IN(2));
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.trim_room = IN(0, 1, 4);
    struct rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_width, IN(5, 5, 8));
    ck_assert_int_eq(rows.row[0].cut_height, WHOLE_IN(3));
    ck_assert_int_eq(rows.row[1].cut_width, IN(5, 5, 8));
    spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_MIDPOINTS, WHOLE_IN(3), 0);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.trim_room = IN(0, 1, 4);
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, IN(7, 1, 2));
    spec.kind = MUSLIN_UNIT_FLYING_GEESE;
    spec.method = MUSLIN_UNIT_METHOD_FLIPPED_CORNERS;
    spec.finished_width = WHOLE_IN(4);
    rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_width, IN(4, 1, 2));
    ck_assert_int_eq(rows.row[1].cut_width, IN(2, 1, 2));
}
END_TEST

/* By hand: the middle of 4 in is 4 / sqrt 2 + 1/2 = 3.3284 in wide, 27053.5 ticks, cut 3 3/8 in; the squares for its
 * corners are 2 + 7/8 in. */
START_TEST(a_square_in_a_square_of_four_inches)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(4), 0);
    struct rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[0].cut_width, IN(3, 3, 8));
    ck_assert_int_eq(rows.row[1].cut_width, IN(2, 7, 8));
    spec.grid = 1;
    spec.tolerance = 0;
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, 27054);
}
END_TEST

/* By hand: a corner of half 8129 ticks and 4064 is 8128 1/2 ticks; up to a tick 8129, and nothing less would do. */
START_TEST(half_a_tick_is_rounded_too)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 8129, 0);
    spec.grid = 1;
    struct rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.row[1].cut_width, 8129);
    ck_assert_int_eq(rows.row[1].surplus_width, 0);
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(rows_of(&spec).row[1].cut_width, 8128);
    ck_assert_int_eq(rows_of(&spec).row[1].surplus_width, -1);
}
END_TEST

/* ---- the list ---------------------------------------------------------------------------------------------------- */

START_TEST(every_method_of_the_list_makes_its_kind)
{
    int32_t kind;
    int32_t method;
    /* Example: muslin_unit_recipe_at(0, &kind, &method, NULL) gives MUSLIN_UNIT_RECTANGLE and
     * MUSLIN_UNIT_METHOD_PIECES. */
    ck_ok(muslin_unit_recipe_at(0, &kind, &method, NULL));
    ck_assert_int_eq(kind, MUSLIN_UNIT_RECTANGLE);
    ck_assert_int_eq(method, MUSLIN_UNIT_METHOD_PIECES);
    int kinds_seen = 0;
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
        kinds_seen |= 1 << kind;
        for (int32_t tip = MUSLIN_TIP_SHARP; tip <= MUSLIN_TIP_BLUNT; tip++) {
            int only_height = kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON;
            int has_height = only_height || kind == MUSLIN_UNIT_HALF_RECTANGLE || kind == MUSLIN_UNIT_TRAPEZOID ||
                             kind == MUSLIN_UNIT_SLANTED_SLICE;
            struct muslin_unit_spec spec =
                unit_of(kind, method, only_height ? 0 : WHOLE_IN(6), has_height ? WHOLE_IN(2) : 0);
            spec.corner = kind == MUSLIN_UNIT_SNOWBALL ? WHOLE_IN(2) : 0;
            spec.tip = tip;
            struct muslin_unit_plan plan = plan_of(&spec);
            ck_assert_int_eq(plan.bias_outside, (plan.warnings & MUSLIN_WARN_BIAS_EDGE) != 0);
        }
    }
    ck_assert_int_eq(kinds_seen, (1 << 19) - 2);
}
END_TEST

START_TEST(the_list_has_an_end)
{
    int32_t kind = -7;
    int32_t method = -7;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_unit_recipe_at(-1, &kind, &method, NULL), MUSLIN_ERR_INDEX);
    ck_status(muslin_unit_recipe_at(muslin_unit_recipe_count(), &kind, &method, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_INDEX);
    ck_assert_int_eq(problem.value, muslin_unit_recipe_count());
    ck_assert_int_eq(problem.limit, muslin_unit_recipe_count() - 1);
    ck_assert_int_eq(problem.at, 0);
    char sentence[64];
    snprintf(sentence, sizeof sentence, "Index is %lld, but the last one is %lld.", (long long)problem.value,
             (long long)problem.limit);
    ck_assert_str_eq(problem.text, sentence);
    ck_status(muslin_unit_recipe_at(0, NULL, &method, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_unit_recipe_at(0, &kind, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 1);
    problem.size = 1;
    ck_status(muslin_unit_recipe_at(0, &kind, &method, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(kind, -7);
    ck_assert_int_eq(method, -7);
}
END_TEST

/* ---- backwards --------------------------------------------------------------------------------------------------- */

static struct muslin_unit_stock_spec squares_of(muslin_len side, int64_t per_region)
{
    struct muslin_unit_stock_spec stock = MUSLIN_UNIT_STOCK_SPEC_INIT;
    stock.width = side;
    stock.height = side;
    stock.per_region = per_region;
    return stock;
}

START_TEST(ten_squares_of_five_inches_a_fabric_give_twenty_half_squares)
{
    /* Example: 10 squares of 5 in a region and half-squares of 4 in, two at a time: 20 units. */
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(4), 0);
    struct muslin_unit_stock_spec stock = squares_of(WHOLE_IN(5), 10);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.recipes, 10);
    ck_assert_int_eq(yield.units, 20);
    ck_assert_int_eq(yield.units_of_one, 2);
    ck_assert_int_eq(yield.cut_spare, IN(0, 1, 8));
    spec.finished_width = IN(4, 1, 4);
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.recipes, 0);
}
END_TEST

/* Squares of 5 1/4 in and four of 2 7/8 in for four geese of 4 x 2 in: a rectangle of 6 x 9 in holds one of the large
 * ones and two by three of the small ones, one of 5 1/2 in only one of either. */
START_TEST(what_a_recipe_needs_more_of_takes_more_rectangles)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, WHOLE_IN(4), 0);
    struct muslin_unit_stock_spec stock = squares_of(IN(5, 1, 2), 8);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.recipes, 2);
    ck_assert_int_eq(yield.units, 8);
    ck_assert_int_eq(yield.units_of_one, 0);
    stock.width = WHOLE_IN(9);
    stock.height = WHOLE_IN(6);
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.recipes, 8);
    ck_assert_int_eq(yield.units_of_one, 4);
    spec = unit_of(MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, IN(2, 3, 8), IN(2, 3, 8));
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.units_of_one, 6);
}
END_TEST

/* By hand, strips 40 x 2 1/2 in: blunt triangles finished 2 in high have raw sides 2 (2 + 3/4) / sqrt 3 = 3.1754 in and
 * a pitch of 3 / sqrt 3 = 1.7321: 1 + floor(36.8246 / 1.7321) = 22 from a strip. With half an inch lost still 21. */
START_TEST(triangles_lie_up_and_down_along_a_strip)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_TRIANGLE_60, MUSLIN_UNIT_METHOD_STRIPS, 0, WHOLE_IN(2));
    struct muslin_unit_stock_spec stock = squares_of(IN(2, 1, 2), 3);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    stock.width = WHOLE_IN(40);
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.units, 66);
    ck_assert_int_eq(yield.units_of_one, 22);
    stock.end_loss = IN(0, 1, 2);
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.units, 63);
    stock.end_loss = WHOLE_IN(40);
    ck_ok(muslin_unit_from_stock(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.units, 0);
}
END_TEST

/* The 0.64 shortcut (The real maths for four-at-a-time half-square triangles, public forum) would give 3.2. */
START_TEST(the_largest_unit_of_two_five_inch_squares_sewn_all_round)
{
    /* Example: two 5 in squares sewn all round and cut on both diagonals finish 2 5/8 in, to the eighth. */
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND, WHOLE_IN(1), 0);
    struct muslin_unit_stock_spec stock = squares_of(WHOLE_IN(5), 1);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    ck_ok(muslin_unit_largest(&spec, &stock, &yield, NULL));
    ck_assert_int_eq(yield.finished_width, IN(2, 5, 8));
    ck_assert_int_eq(yield.units, 4);
    ck_assert_int_eq(yield.kind, MUSLIN_UNIT_HALF_SQUARE);
    ck_assert_int_eq(yield.method, MUSLIN_UNIT_METHOD_FOUR_ALL_ROUND);
}
END_TEST

START_TEST(stock_too_small_for_any_unit_is_no_fit)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, WHOLE_IN(1), 0);
    struct muslin_unit_stock_spec stock = squares_of(IN(0, 7, 8), 1);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_unit_largest(&spec, &stock, &yield, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.value, IN(0, 7, 8));
    ck_assert_int_eq(problem.limit, WHOLE_IN(1)); /* 1/8 + 7/8 */
    size_t count = 9;
    stock = squares_of(IN(0, 1, 2), 1);
    ck_ok(muslin_unit_makes(&spec, &stock, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 0);
}
END_TEST

/* 1 1/8 in squares: a patch of 5/8 in can be cut, eight half-squares at a time (2 F + 1 3/4) cannot. */
START_TEST(only_what_fits_is_offered)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_stock_spec stock = squares_of(IN(1, 1, 8), 1);
    struct muslin_unit_yield rows[MAKES_MOST];
    size_t count;
    ck_ok(muslin_unit_makes(&spec, &stock, rows, sizeof rows[0], MAKES_MOST, &count, NULL));
    ck_assert_int_eq(rows[0].finished_width, IN(0, 5, 8));
    for (size_t i = 0; i < count; i++)
        ck_assert_int_ne(rows[i].method, MUSLIN_UNIT_METHOD_EIGHT_AT_A_TIME);
}
END_TEST

/* An addition of next to nothing is only missed by what is cut with it. */
START_TEST(what_an_addition_is_too_small_for_is_not_offered)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_stock_spec stock = squares_of(WHOLE_IN(10), 4);
    struct muslin_unit_yield rows[MAKES_MOST];
    size_t all;
    size_t count;
    int quarters = 0;
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    ck_ok(muslin_unit_makes(&spec, &stock, NULL, 0, 0, &all, NULL));
    spec.quarter_addition = 1;
    ck_ok(muslin_unit_makes(&spec, &stock, rows, sizeof rows[0], MAKES_MOST, &count, NULL));
    for (size_t i = 0; i < count; i++)
        quarters += rows[i].kind == MUSLIN_UNIT_QUARTER_SQUARE || rows[i].kind == MUSLIN_UNIT_SPLIT_QUARTER ||
                    rows[i].kind == MUSLIN_UNIT_EIGHT_POINTED_STAR;
    ck_assert_int_eq(quarters, 0);
    ck_assert_uint_eq(count, all - 7); /* two ways each of the first two, two of geese, the star */
}
END_TEST

/* W : H : corner in which a kind is offered. */
struct proportion {
    int64_t w, h, c;
};

static struct proportion usual_of(int32_t kind)
{
    switch (kind) {
    case MUSLIN_UNIT_FLYING_GEESE:
    case MUSLIN_UNIT_HALF_RECTANGLE:
        return (struct proportion){ 2, 1, 0 };
    case MUSLIN_UNIT_TRAPEZOID:
        return (struct proportion){ 3, 1, 0 };
    case MUSLIN_UNIT_SNOWBALL:
        return (struct proportion){ 3, 3, 1 };
    case MUSLIN_UNIT_TRIANGLE_60:
    case MUSLIN_UNIT_DIAMOND_60:
    case MUSLIN_UNIT_DIAMOND_45:
    case MUSLIN_UNIT_HEXAGON:
    case MUSLIN_UNIT_HALF_HEXAGON:
        return (struct proportion){ 0, 1, 0 };
    default:
        return (struct proportion){ 1, 1, 0 };
    }
}

static void grow(struct muslin_unit_spec *spec, struct proportion proportion, int64_t times)
{
    spec->finished_width = proportion.w * times;
    spec->finished_height = proportion.h * times;
    spec->corner = proportion.c * times;
}

/* What the stock gives of the greatest number of times a proportion that is on the grid and of which a recipe can be
 * cut, all tried from far above; 0 where there is none. */
static int largest_tried(struct muslin_unit_spec spec, struct proportion proportion,
                         const struct muslin_unit_stock_spec *stock, struct muslin_unit_yield *yield)
{
    struct muslin_unit_stock_spec plenty = *stock;
    plenty.per_region = MUSLIN_COUNT_MAX;
    for (int64_t times = 2 * stock->width; times > 0; times--) {
        if ((proportion.w != 0 ? proportion.w : proportion.h) * times % stock->finished_grid != 0)
            continue;
        grow(&spec, proportion, times);
        ck_ok(muslin_unit_from_stock(&spec, &plenty, yield, NULL));
        if (yield->recipes == 0)
            continue;
        ck_ok(muslin_unit_from_stock(&spec, stock, yield, NULL));
        return 1;
    }
    return 0;
}

/* A yield beside the recipe of its size. */
static void ck_as_its_recipe(const struct muslin_unit_yield *yield, const struct muslin_unit_spec *spec,
                             const struct muslin_unit_stock_spec *stock)
{
    const struct muslin_unit_plan plan = plan_of(spec);
    const struct rows rows = rows_of(spec);
    muslin_len highest = 0;
    for (size_t i = 0; i < rows.count; i++)
        highest = rows.row[i].cut_height > highest ? rows.row[i].cut_height : highest;
    ck_assert_int_eq(yield->finished_width, plan.finished_width);
    ck_assert_int_eq(yield->finished_height, plan.finished_height);
    ck_assert_int_eq(yield->unfinished_width, plan.unfinished_width);
    ck_assert_int_eq(yield->unfinished_height, plan.unfinished_height);
    ck_assert_int_eq(yield->units, yield->recipes * plan.units_per_recipe);
    ck_assert_int_eq(yield->cut_spare, stock->height - highest);
    ck_assert(yield->kind == spec->kind && yield->method == spec->method);
}

/* Every recipe, each in its usual proportion, on three grids: an odd one, and one that halves and thirds lie on. From
 * small squares the corners of a snowball come one by one. */
START_TEST(what_is_offered_is_the_largest_of_all_that_fits)
{
    const muslin_len grids[] = { 889, 1016, 3048 };
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_stock_spec stock = MUSLIN_UNIT_STOCK_SPEC_INIT;
    struct muslin_unit_yield rows[MAKES_MOST], largest = { .size = (uint32_t)sizeof largest };
    size_t count, row = 0;
    const int is_small = _i >= 3;
    stock.width = is_small ? IN(1, 7, 8) : IN(12, 1, 4);
    stock.height = is_small ? IN(1, 7, 8) : IN(7, 1, 8);
    stock.per_region = is_small ? 8 : 3;
    stock.end_loss = is_small ? 0 : IN(0, 1, 4);
    stock.finished_grid = grids[_i % 3];
    spec.take_up = 40;
    ck_ok(muslin_unit_makes(&spec, &stock, rows, sizeof rows[0], MAKES_MOST, &count, NULL));
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++) {
        struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
        ck_ok(muslin_unit_recipe_at(i, &spec.kind, &spec.method, NULL));
        const struct proportion usual = usual_of(spec.kind);
        if (!largest_tried(spec, usual, &stock, &yield))
            continue;
        ck_assert_mem_eq(&rows[row], &yield, sizeof yield);
        row++;
        grow(&spec, usual, 8);
        ck_ok(muslin_unit_largest(&spec, &stock, &largest, NULL));
        ck_assert_mem_eq(&largest, &yield, sizeof yield);
        grow(&spec, usual, usual.w != 0 ? yield.finished_width / usual.w : yield.finished_height);
        ck_as_its_recipe(&yield, &spec, &stock);
    }
    ck_assert_uint_eq(row, count);
    ck_assert_uint_gt(count, is_small ? 5 : 20);
}
END_TEST

/* A half-rectangle of 1 : 3, whose width alone lies on the grid. */
START_TEST(the_largest_keeps_the_proportion_of_the_spec)
{
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 100, 300);
    struct muslin_unit_stock_spec stock = squares_of(WHOLE_IN(10), 1);
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield }, tried = yield;
    stock.finished_grid = 3048;
    ck_assert(largest_tried(spec, (struct proportion){ 1, 3, 0 }, &stock, &tried));
    ck_ok(muslin_unit_largest(&spec, &stock, &yield, NULL));
    ck_assert_mem_eq(&yield, &tried, sizeof yield);
    ck_assert_int_eq(yield.finished_height, 3 * yield.finished_width);
}
END_TEST

START_TEST(all_that_a_two_and_a_half_inch_square_makes)
{
    struct muslin_unit_spec spec = MUSLIN_UNIT_SPEC_INIT;
    struct muslin_unit_stock_spec stock = squares_of(IN(2, 1, 2), 2);
    struct muslin_unit_yield rows[MAKES_MOST];
    size_t count;
    int found = 0;
    ck_ok(muslin_unit_makes(&spec, &stock, rows, sizeof rows[0], MAKES_MOST, &count, NULL));
    for (size_t i = 0; i < count; i++) {
        if (rows[i].kind != MUSLIN_UNIT_HALF_SQUARE || rows[i].method != MUSLIN_UNIT_METHOD_TWO_AT_A_TIME)
            continue;
        /* Example: from a 2 1/2 in square, two at a time, half-squares finish 1 5/8 in. */
        ck_assert_int_eq(rows[i].finished_width, IN(1, 5, 8));
        ck_assert_int_eq(rows[i].units, 4);
        found = 1;
    }
    ck_assert(found);
}
END_TEST

/* ---- rules and refusals ------------------------------------------------------------------------------------------ */

static muslin_status ruled_recipe(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_unit_recipe(spec, out, problem);
}

static const struct muslin_unit_stock_spec five_inch_squares = MUSLIN_UNIT_STOCK_SPEC_INIT;
static const struct muslin_unit_spec two_inch_half_squares = {
    sizeof two_inch_half_squares, 0, 16256, 0, 0, 2032, 0, 0, 0, 0, 1016, 0, 1, 0, 2, 2, 1, 2, 1, 0
};

static muslin_status ruled_yield(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_unit_from_stock(spec, &five_inch_squares, out, problem);
}

static muslin_status ruled_largest(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_unit_largest(spec, &five_inch_squares, out, problem);
}

static muslin_status ruled_stock(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_unit_from_stock(&two_inch_half_squares, spec, out, problem);
}

static muslin_status ruled_stock_largest(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_unit_largest(&two_inch_half_squares, spec, out, problem);
}

START_TEST(structs_keep_the_rules)
{
    const struct ruled calls[] = {
        RULED(ruled_recipe, two_inch_half_squares, muslin_unit_plan),
        RULED(ruled_yield, two_inch_half_squares, muslin_unit_yield),
        RULED(ruled_largest, two_inch_half_squares, muslin_unit_yield),
        RULED_SECOND(ruled_stock, five_inch_squares, muslin_unit_yield),
        RULED_SECOND(ruled_stock_largest, five_inch_squares, muslin_unit_yield),
    };
    ck_struct_rules(&calls[_i]);
    ck_no_flag_known(&calls[_i]);
}
END_TEST

START_TEST(members_out_of_range_are_refused)
{
    const struct ruled ruled = RULED(ruled_recipe, two_inch_half_squares, muslin_unit_plan);
    const muslin_len part_most = MUSLIN_UNIT_SIZE_MAX / 8;
    const struct refusal refusals[] = {
        OUTSIDE(muslin_unit_spec, finished_width, 1, MUSLIN_UNIT_SIZE_MAX, MUSLIN_ARG_FINISHED),
        BEYOND(muslin_unit_spec, finished_height, -1, 1, MUSLIN_ARG_HEIGHT),
        BEYOND(muslin_unit_spec, finished_height, 16255, 16256, MUSLIN_ARG_HEIGHT),
        BEYOND(muslin_unit_spec, finished_height, 16257, 16256, MUSLIN_ARG_HEIGHT),
        OUTSIDE(muslin_unit_spec, corner, 0, 0, MUSLIN_ARG_CORNER),
        REFUSAL(muslin_unit_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_unit_spec, allowance, 0, part_most, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_unit_spec, take_up, 0, part_most, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_unit_spec, half_addition, 0, part_most, MUSLIN_ARG_HALF_ADDITION),
        OUTSIDE(muslin_unit_spec, quarter_addition, 0, part_most, MUSLIN_ARG_QUARTER_ADDITION),
        OUTSIDE(muslin_unit_spec, trim_room, 0, 0, MUSLIN_ARG_TRIM),
        OUTSIDE(muslin_unit_spec, grid, 1, MUSLIN_UNIT_SIZE_MAX, MUSLIN_ARG_GRID),
        OUTSIDE(muslin_unit_spec, tolerance, 0, 1015, MUSLIN_ARG_TOLERANCE),
        OUTSIDE(muslin_unit_spec, units, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_UNITS),
        OUTSIDE(muslin_unit_spec, mirrored, 0, 0, MUSLIN_ARG_UNITS),
        NOT_A_CHOICE(muslin_unit_spec, kind, MUSLIN_UNIT_SLANTED_SLICE, MUSLIN_ARG_UNIT_KIND),
        NOT_A_CHOICE(muslin_unit_spec, method, MUSLIN_UNIT_METHOD_BIAS_STRIPS, MUSLIN_ARG_METHOD),
        REFUSAL(muslin_unit_spec, method, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, MUSLIN_ERR_METHOD, MUSLIN_ARG_METHOD),
        NOT_A_CHOICE(muslin_unit_spec, policy, MUSLIN_ALLOWANCE_POLICY_OVERSIZE, MUSLIN_ARG_POLICY),
        NOT_A_CHOICE(muslin_unit_spec, tip, MUSLIN_TIP_BLUNT, MUSLIN_ARG_TIP),
        NOT_A_CHOICE(muslin_unit_spec, direction, MUSLIN_DIRECTION_NEAREST, MUSLIN_ARG_DIRECTION),
    };
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    struct muslin_unit_spec oversize = two_inch_half_squares;
    const struct ruled with_room = RULED(ruled_recipe, oversize, muslin_unit_plan);
    const struct refusal room = BEYOND(muslin_unit_spec, trim_room, part_most + 1, part_most, MUSLIN_ARG_TRIM);
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    oversize.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    ck_refusal(&with_room, &room, 0);
    oversize.trim_room = part_most;
    ck_ok(muslin_unit_recipe(&oversize, &plan, NULL));
    oversize.method = MUSLIN_UNIT_METHOD_FLIPPED_CORNERS;
    ck_status(muslin_unit_recipe(&oversize, &plan, NULL), MUSLIN_ERR_METHOD);
}
END_TEST

START_TEST(stock_out_of_range_is_refused)
{
    const struct ruled ruled = RULED_SECOND(ruled_stock, five_inch_squares, muslin_unit_yield);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_unit_stock_spec, width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_unit_stock_spec, height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),
        OUTSIDE(muslin_unit_stock_spec, per_region, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_IN_HAND),
        OUTSIDE(muslin_unit_stock_spec, end_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_LOSS),
        OUTSIDE(muslin_unit_stock_spec, finished_grid, 1, MUSLIN_UNIT_SIZE_MAX, MUSLIN_ARG_GRID),
    };
    ck_refusals_at(&ruled, 1, refusals, COUNT_OF(refusals));
}
END_TEST

/* Two wishes share a name, and so do two grids and two specs. */
START_TEST(what_shares_a_name_is_told_apart_by_its_place)
{
    struct muslin_unit_spec spec = two_inch_half_squares;
    struct muslin_unit_stock_spec stock = MUSLIN_UNIT_STOCK_SPEC_INIT;
    struct muslin_unit_yield yield = { .size = (uint32_t)sizeof yield };
    struct muslin_problem problem = PROBLEM;
    spec.units = -1;
    ck_status(muslin_unit_from_stock(&spec, &stock, &yield, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 0);
    spec.units = 1;
    spec.mirrored = 1;
    ck_status(muslin_unit_from_stock(&spec, &stock, &yield, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_UNITS);
    ck_assert_int_eq(problem.at, 1);
    spec.mirrored = 0;
    stock.finished_grid = 0;
    ck_status(muslin_unit_from_stock(&spec, &stock, &yield, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_unit_from_stock(&spec, NULL, &yield, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SPEC);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_unit_from_stock(&spec, &five_inch_squares, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 0);
}
END_TEST

/* By hand: legs of 2^26 and 1, seams of 3 x 2^23, so e = 3 x 2^22: the long raw leg is 2^26 + e (2^26 + 1 + D), with D
 * a hair above 2^26, and so beyond 2^49. At 2^26 by 2^25 it is below 2^26 + e (1 + sqrt 5 + 2) < 2^27. */
START_TEST(a_half_rectangle_too_narrow_for_its_seams_is_refused)
{
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, MUSLIN_UNIT_SIZE_MAX, 1);
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    struct muslin_problem problem = PROBLEM;
    spec.allowance = spec.take_up = MUSLIN_UNIT_SIZE_MAX / 8;
    ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_eq(problem.limit, MUSLIN_SIZE_MAX);
    ck_assert_int_gt(problem.value, INT64_C(1) << 49);
    spec.finished_width = 1;
    spec.finished_height = MUSLIN_UNIT_SIZE_MAX;
    ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_gt(problem.value, INT64_C(1) << 49);
    spec.finished_width = MUSLIN_UNIT_SIZE_MAX / 2;
    ck_ok(muslin_unit_recipe(&spec, &plan, &problem));
    ck_assert_int_ge(plan.waste_area, 0);
    spec.finished_width = spec.finished_height = 1;
    spec.allowance = spec.take_up = 0;
    spec.grid = 1;
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, 1);
    ck_assert_int_eq(rows_of(&spec).row[0].cut_height, 1);
}
END_TEST

/* 2 1/2 in and 5 ticks, to eighths. */
START_TEST(a_size_within_the_tolerance_of_a_step_is_not_brought_to_the_next)
{
    struct muslin_unit_spec spec =
        unit_of(MUSLIN_UNIT_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, WHOLE_IN(2) + 5, WHOLE_IN(3));
    spec.grid = IN(0, 1, 8);
    spec.tolerance = 5;
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, IN(2, 1, 2));
    spec.tolerance = 4;
    ck_assert_int_eq(rows_of(&spec).row[0].cut_width, IN(2, 5, 8));
}
END_TEST

static void ck_shape_refused(int32_t kind, int32_t method, muslin_len width, muslin_len height, int32_t argument,
                             int64_t limit)
{
    struct muslin_unit_spec spec = unit_of(kind, method, width, height);
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.limit, limit);
}

START_TEST(sizes_that_do_not_suit_the_kind_are_refused)
{
    ck_shape_refused(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, WHOLE_IN(4), WHOLE_IN(3),
                     MUSLIN_ARG_HEIGHT, WHOLE_IN(2));
    ck_shape_refused(MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 8129, 0, MUSLIN_ARG_FINISHED, 8130);
    ck_shape_refused(MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 5, 5, MUSLIN_ARG_FINISHED, 0);
    ck_shape_refused(MUSLIN_UNIT_HEXAGON, MUSLIN_UNIT_METHOD_STRIPS, 0, 0, MUSLIN_ARG_HEIGHT, 1);
    ck_shape_refused(MUSLIN_UNIT_TRAPEZOID, MUSLIN_UNIT_METHOD_STRIPS, 199, 100, MUSLIN_ARG_FINISHED, 200);
    ck_shape_refused(MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 200, 0, MUSLIN_ARG_HEIGHT, 1);
    ck_shape_refused(MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 200, 0, MUSLIN_ARG_CORNER, 1);
    struct muslin_unit_spec spec = unit_of(MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 200, 100);
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    spec.corner = 51;
    ck_status(muslin_unit_recipe(&spec, &plan, NULL), MUSLIN_ERR_RANGE);
    spec.corner = 50;
    ck_ok(muslin_unit_recipe(&spec, &plan, NULL));
}
END_TEST

/* No kind has a side or a corner that is below nothing or far beyond all sizes, and none is reckoned with before it is
 * looked at. */
START_TEST(sizes_beyond_all_bounds_are_refused_of_every_kind)
{
    const muslin_len beyond[] = { INT64_MIN, -1, 2 * MUSLIN_UNIT_SIZE_MAX + 2, INT64_MAX };
    for (int64_t i = 0; i < muslin_unit_recipe_count(); i++)
        for (int32_t way = 0; way < 3 * 4; way++) {
            struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
            struct muslin_problem problem = PROBLEM;
            int32_t kind = 0;
            int32_t method = 0;
            ck_ok(muslin_unit_recipe_at(i, &kind, &method, NULL));
            struct muslin_unit_spec spec = unit_of(kind, method, WHOLE_IN(6), WHOLE_IN(2));
            if (kind >= MUSLIN_UNIT_TRIANGLE_60 && kind <= MUSLIN_UNIT_HALF_HEXAGON)
                spec.finished_width = 0;
            *(way < 4 ? &spec.finished_width : way < 8 ? &spec.finished_height : &spec.corner) = beyond[way % 4];
            ck_status(muslin_unit_recipe(&spec, &plan, &problem), MUSLIN_ERR_RANGE);
            ck_assert_int_eq(problem.at, 0);
        }
}
END_TEST

START_TEST(a_pad_that_is_not_zero_is_refused)
{
    struct muslin_unit_spec spec = two_inch_half_squares;
    struct muslin_unit_plan plan = { .size = (uint32_t)sizeof plan };
    spec.pad = 1;
    ck_status(muslin_unit_recipe(&spec, &plan, NULL), MUSLIN_ERR_STRUCT_TAIL);
}
END_TEST

START_TEST(rows_are_asked_for_and_filled)
{
    struct muslin_unit_piece rows[2] = { { 0 } };
    struct muslin_unit_yield made[MAKES_MOST];
    size_t count = 77;
    ck_ok(muslin_unit_pieces(&two_inch_half_squares, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 2);
    ck_status(muslin_unit_pieces(&two_inch_half_squares, rows, sizeof rows[0], 1, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(rows[0].size, 0);
    ck_status(muslin_unit_pieces(NULL, rows, sizeof rows[0], 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_unit_makes(NULL, &five_inch_squares, made, sizeof made[0], 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_unit_makes(&two_inch_half_squares, &five_inch_squares, made, sizeof made[0], 2, &count, NULL),
              MUSLIN_ERR_BUFFER);
    ck_assert_uint_le(count, MAKES_MOST);
}
END_TEST

INIT_CALL(unit)
INIT_CALL(unit_stock)

START_TEST(specs_start_from_their_initial_values)
{
    const struct muslin_unit_spec initial = MUSLIN_UNIT_SPEC_INIT;
    ck_init_rules(init_unit, &initial, (uint32_t)sizeof initial);
    ck_init_rules(init_unit_stock, &five_inch_squares, (uint32_t)sizeof five_inch_squares);
    /* Example: muslin_unit_spec_init(&unit, sizeof unit). */
    struct muslin_unit_spec unit;
    ck_ok(muslin_unit_spec_init(&unit, sizeof unit));
    ck_assert_int_eq(unit.allowance, MUSLIN_QUARTER_INCH);
    /* Example: muslin_unit_stock_spec_init(&stock, sizeof stock). */
    struct muslin_unit_stock_spec stock;
    ck_ok(muslin_unit_stock_spec_init(&stock, sizeof stock));
    ck_assert_int_eq(stock.height, WHOLE_IN(5));
}
END_TEST

Suite *unit_suite(void);

Suite *unit_suite(void)
{
    Suite *suite = suite_create("unit");
    TCase *forwards = tcase_create("forwards");
    tcase_add_test(forwards, a_half_square_of_three_inches_takes_squares_of_three_and_seven_eighths);
    tcase_add_test(forwards, what_is_wasted_is_what_remains);
    tcase_add_test(forwards, left_and_right_leaning_half_rectangles_are_different_cuts);
    tcase_add_test(forwards, corners_cut_off_give_bonus_half_squares);
    tcase_add_test(forwards, a_square_in_a_square_of_four_inches);
    tcase_add_test(forwards, a_star_follows_its_diamonds_as_cut);
    tcase_add_test(forwards, a_blunt_tip_saves_an_allowance_of_strip);
    tcase_add_test(forwards, what_lies_along_a_strip_follows_from_the_strip_as_cut);
    tcase_add_test(forwards, wedges_have_a_wide_and_a_narrow_end);
    tcase_add_test(forwards, two_at_a_time_makes_mirror_images_of_split_quarters);
    tcase_add_test(forwards, slices_that_lean_the_other_way_are_cut_apart);
    tcase_add_test(forwards, rounding_below_the_need_is_said);
    tcase_add_test(forwards, a_customary_addition_that_is_too_small_is_refused);
    tcase_add_test(forwards, an_addition_that_a_recipe_does_not_use_is_not_judged);
    tcase_add_test(forwards, squares_are_as_large_as_the_published_rules_say);
    tcase_add_test(forwards, corners_of_eight_sided_units_follow_from_the_octagon);
    tcase_add_test(forwards, kinds_that_take_a_height_tell_their_width);
    tcase_add_test(forwards, half_squares_lie_in_pairs_along_a_strip);
    tcase_add_test(forwards, half_squares_lie_on_point_on_a_seam_of_bias_strips);
    tcase_add_test(forwards, room_to_trim_is_added_where_something_is_trimmed);
    tcase_add_test(forwards, half_a_tick_is_rounded_too);
    suite_add_tcase(suite, forwards);
    TCase *list = tcase_create("the list");
    tcase_add_test(list, every_method_of_the_list_makes_its_kind);
    tcase_add_test(list, the_list_has_an_end);
    suite_add_tcase(suite, list);
    TCase *backwards = tcase_create("backwards");
    tcase_add_test(backwards, ten_squares_of_five_inches_a_fabric_give_twenty_half_squares);
    tcase_add_test(backwards, what_a_recipe_needs_more_of_takes_more_rectangles);
    tcase_add_test(backwards, triangles_lie_up_and_down_along_a_strip);
    tcase_add_test(backwards, the_largest_unit_of_two_five_inch_squares_sewn_all_round);
    tcase_add_test(backwards, stock_too_small_for_any_unit_is_no_fit);
    tcase_add_test(backwards, only_what_fits_is_offered);
    tcase_add_test(backwards, what_an_addition_is_too_small_for_is_not_offered);
    tcase_add_test(backwards, all_that_a_two_and_a_half_inch_square_makes);
    tcase_add_loop_test(backwards, what_is_offered_is_the_largest_of_all_that_fits, 0, 6);
    tcase_add_test(backwards, the_largest_keeps_the_proportion_of_the_spec);
    suite_add_tcase(suite, backwards);
    TCase *rules = tcase_create("rules and refusals");
    tcase_add_loop_test(rules, structs_keep_the_rules, 0, 5);
    tcase_add_test(rules, members_out_of_range_are_refused);
    tcase_add_test(rules, stock_out_of_range_is_refused);
    tcase_add_test(rules, what_shares_a_name_is_told_apart_by_its_place);
    tcase_add_test(rules, a_half_rectangle_too_narrow_for_its_seams_is_refused);
    tcase_add_test(rules, a_size_within_the_tolerance_of_a_step_is_not_brought_to_the_next);
    tcase_add_test(rules, sizes_that_do_not_suit_the_kind_are_refused);
    tcase_add_test(rules, sizes_beyond_all_bounds_are_refused_of_every_kind);
    tcase_add_test(rules, a_pad_that_is_not_zero_is_refused);
    tcase_add_test(rules, rows_are_asked_for_and_filled);
    tcase_add_test(rules, specs_start_from_their_initial_values);
    suite_add_tcase(suite, rules);
    return suite;
}
