/* test_setting_point.c - settings on point: published figures, areas of whole tops, and comparison by squares.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

enum { EIGHTH = 1016, QUARTER_GRID = 2032 };

static const struct muslin_rounding_spec eighths_up = {
    (uint32_t)sizeof eighths_up, 0, EIGHTH, 0, MUSLIN_DIRECTION_UP, 0
};
static const struct muslin_rounding_spec ticks_up = { (uint32_t)sizeof ticks_up, 0, 1, 0, MUSLIN_DIRECTION_UP, 0 };
static const struct muslin_rounding_spec nearest = { (uint32_t)sizeof nearest, 0, 1, 0, MUSLIN_DIRECTION_NEAREST, 0 };

static struct muslin_setting_point_spec point_of(muslin_len block, int64_t columns, int64_t rows)
{
    struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
    spec.block = block;
    spec.columns = columns;
    spec.rows = rows;
    return spec;
}

static struct muslin_setting_point_spec customary(muslin_len block, int64_t above, int64_t below)
{
    struct muslin_setting_point_spec spec = point_of(block, 4, 4);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    spec.factor_numerator = above;
    spec.factor_denominator = below;
    return spec;
}

static struct muslin_setting_point_plan plan(const struct muslin_setting_point_spec *spec,
                                             const struct muslin_rounding_spec *cutting)
{
    struct muslin_setting_point_plan made = { .size = (uint32_t)sizeof made };
    struct muslin_problem problem = PROBLEM;
    muslin_status status = muslin_setting_point(spec, cutting, &nearest, &made, &problem);
    ck_assert_msg(status == MUSLIN_OK, "%s", problem.text);
    return made;
}

/* ---- published figures ------------------------------------------------------------------------------------------ */

/* Setting and corner triangle chart (Tani): B x 1.414 + 1 1/4 and B / 1.414 + 7/8 up to 1/8 in; 4 x 4 on point by Quilt
 * math made easy (teacher's blog): 9 alternates, 12 side triangles, 4 corners. */
START_TEST(six_inch_blocks_four_by_four)
{
    /* Example: 4 x 4 blocks of 6 in, customary with 1414 / 1000, up to 1/8 in: 9 alternates, 12 side triangles from 3
     * squares cut 9 3/4 in, 4 corners from 2 squares cut 5 1/8 in. */
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(6), 1414, 1000);
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.blocks, 16);
    ck_assert_int_eq(made.alternates, 9);
    ck_assert_int_eq(made.side_triangles, 12);
    ck_assert_int_eq(made.side_squares, 3);
    ck_assert_int_eq(made.spare_side_triangles, 0);
    ck_assert_int_eq(made.side_square_cut, IN(9, 3, 4));
    ck_assert_int_eq(made.corner_triangles, 4);
    ck_assert_int_eq(made.corner_squares, 2);
    ck_assert_int_eq(made.corner_square_cut, IN(5, 1, 8));
    ck_assert_int_eq(made.alternate_cut, IN(6, 1, 2));
    ck_assert_int_eq(made.half_blocks, 0);
    ck_assert_int_eq(made.half_block_beyond, 0);
    ck_assert_int_eq(made.sashes + made.edge_sashes + made.cornerstones + made.edge_cornerstones, 0);
    ck_assert_int_eq(made.sash_cut_width + made.sash_cut_length + made.edge_sash_cut_length + made.cornerstone_cut, 0);
    ck_assert_int_eq(made.straight_grain, 1);
    ck_assert_uint_eq(made.warnings, 0);
}
END_TEST

/* The same chart for 16 in: 23 7/8 by 1.414; with the root 22.6274 + 1.25 = 23.8774 in, up to 24, unless two
 * thousandths may be overlooked. */
START_TEST(the_constant_decides_for_sixteen_inches)
{
    struct muslin_rounding_spec tolerant = eighths_up;
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(16), 1414, 1000);
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(23, 7, 8));
    ck_assert_int_eq(plan(&spec, &eighths_up).corner_square_cut, IN(12, 1, 4));
    spec = customary(WHOLE_IN(16), 0, 0);
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, WHOLE_IN(24));
    tolerant.tolerance = 127;
    ck_assert_int_eq(plan(&spec, &tolerant).side_square_cut, IN(23, 7, 8));
}
END_TEST

/* Tip - On Point Settings (Moonlight Quilters Guild): 6 x 1.41 = 8.46, up to 8 1/2; + 1 1/4; half of it + 7/8. */
START_TEST(a_guild_rounds_the_diagonal_first)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(6), 141, 100);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, IN(9, 3, 4));
    ck_assert_int_eq(made.corner_square_cut, IN(5, 1, 8));
    ck_assert_uint_eq(made.warnings, 0);
    spec.factor_numerator = 0;
    spec.factor_denominator = 0;
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(9, 3, 4));
}
END_TEST

/* 8 1/2 in + 2 1/2 seams of 12 mm on a grid of eighths: 30 mm are no eighths of an inch. */
START_TEST(an_addition_off_the_grid_is_flagged)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(6), 1414, 1000);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    spec.allowance = 6 * MUSLIN_TICKS_PER_MM;
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, IN(8, 1, 2) + 30 * MUSLIN_TICKS_PER_MM);
    ck_assert_int_eq(made.corner_square_cut, IN(4, 1, 4) + 21 * MUSLIN_TICKS_PER_MM);
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_OFF_GRID);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_EXACT;
    ck_assert_uint_eq(plan(&spec, &eighths_up).warnings, 0);
    /* the corner square alone: 14 x 1.414 = 19.796, up to 19 7/8, of which half is 9 15/16 */
    spec = customary(WHOLE_IN(14), 1414, 1000);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, IN(21, 1, 8));
    ck_assert_int_eq(made.corner_square_cut, IN(10, 13, 16));
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_OFF_GRID);
    /* and the side square alone: its addition is a 16th more */
    spec = customary(WHOLE_IN(6), 1414, 1000);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    spec.side_addition = IN(1, 5, 16);
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.corner_square_cut, IN(5, 1, 8));
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_OFF_GRID);
}
END_TEST

START_TEST(edge_cornerstones_off_the_grid_are_flagged)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(6), 1414, 1000);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    /* half-blocks and sashes cut off: corners get 1 in, edge cornerstones alone 1 3/16, which is no eighth */
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    spec.sash = WHOLE_IN(2);
    spec.corner_addition = WHOLE_IN(1);
    spec.side_addition = IN(1, 3, 16);
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, 0);
    ck_assert_int_eq(made.corner_square_cut % IN(0, 1, 8), 0);
    ck_assert_int_eq(made.edge_cornerstone_cut % IN(0, 1, 8), IN(0, 1, 16));
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_BIAS_EDGE | MUSLIN_WARN_OFF_GRID);
    spec.side_addition = IN(1, 1, 4);
    ck_assert_uint_eq(plan(&spec, &eighths_up).warnings, MUSLIN_WARN_BIAS_EDGE);
}
END_TEST

/* Quilt math made easy: cut 10 1/2 in for 6 in blocks, 3/4 in of it to trim (8.484 + 1.25 + 0.75 = 10.484). */
START_TEST(oversize_adds_room_to_trim)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(6), 1414, 1000);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.trim_room = IN(0, 3, 4);
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(10, 1, 2));
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(10, 1, 2));
    spec.side_addition = IN(1, 3, 8);
    spec.corner_addition = WHOLE_IN(1);
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, IN(10, 5, 8));
    ck_assert_int_eq(made.corner_square_cut, WHOLE_IN(6)); /* 4 1/4 + 1 + 3/4 */
    ck_assert_int_lt(made.side_need, IN(9, 45, 64));  /* 9.6924 */
    ck_assert_int_gt(made.side_need, IN(9, 44, 64));
    ck_assert_int_eq(made.side_surplus, made.side_square_cut - made.side_need);
}
END_TEST

/* Geometry: 12 in blocks, squares of 20 3/4 and 11 7/8 in. With the seams to the blocks where they must be, a side
 * triangle's raw right angle lies still, and its long edge, the side of the square, lies half of that from it. A corner
 * triangle's long edge lies still, and its corner is side / sqrt 2 from it, as far from both edges of the quilt. */
START_TEST(half_of_the_surplus_stands_out_at_the_edge)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(12), 0, 0);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.set_off = WHOLE_IN(1);
    spec.trim_room = IN(0, 1, 2);
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_square_cut, IN(20, 3, 4));
    ck_assert_int_eq(made.corner_square_cut, IN(11, 7, 8));
    double side_needs = 12 * 1.41421356237 + 2 + 0.5 * 2.41421356237;
    double corner_needs = 12 * 0.70710678119 + 2 + 0.5 * 1.70710678119;
    double corner_moves = (11.875 - corner_needs) / 1.41421356237;
    ck_assert_double_eq_tol((double)made.side_room / 8128, 20.75 / 2 - side_needs / 2, 1.0 / 8128);
    ck_assert_double_eq_tol((double)made.corner_room / 8128, corner_moves / 1.41421356237, 1.0 / 8128);
}
END_TEST

/* Piecing a quilt on point (chart): 14 in, 21 in printed; the exact need is 21.006 in. */
START_TEST(a_square_rounded_down_says_so)
{
    struct muslin_rounding_spec quarters = { sizeof quarters, 0, QUARTER_GRID, 0, MUSLIN_DIRECTION_NEAREST, 0 };
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(14), 1414, 1000);
    struct muslin_setting_point_plan made = plan(&spec, &quarters);
    ck_assert_int_eq(made.side_square_cut, WHOLE_IN(21));
    ck_assert_int_lt(made.side_surplus, -48); /* 0.006 in are 49 ticks */
    ck_assert_int_gt(made.side_surplus, -53);
    ck_assert_int_eq(made.side_surplus, -50); /* 170688 less 21.0060967 x 8128 = 170737.6, up */
    ck_assert_int_eq(made.side_room, -25);
    /* for blocks a tick larger it needs 1.4 ticks more, 170739 up; half of 51 too few is 25 1/2, which is 26 down */
    spec.block++;
    made = plan(&spec, &quarters);
    ck_assert_int_eq(made.side_square_cut, WHOLE_IN(21));
    ck_assert_int_eq(made.side_surplus, -51);
    ck_assert_int_eq(made.side_room, -26);
}
END_TEST

/* ---- exact by squares ------------------------------------------------------------------------------------------- */

/* x = a sqrt 2 + w up to a tick: x - w is the least whole number whose square is not below 2 a a. */
static int is_ceiling(muslin_len x, muslin_len a, muslin_len w)
{
    muslin_len root = x - w;
    return root * root >= 2 * a * a && (root - 1) * (root - 1) < 2 * a * a;
}

/* The same with a / sqrt 2, whose square is a a / 2. */
static int is_half_ceiling(muslin_len x, muslin_len a, muslin_len w)
{
    muslin_len root = x - w;
    return 2 * root * root >= a * a && 2 * (root - 1) * (root - 1) < a * a;
}

/* Doubled areas: the centre is a sqrt 2 by b sqrt 2, a triangle over a long side h sqrt 2 has h h / 2, a corner one
 * over h has h h / 4, a sash cut at 45 degrees lacks w w / 2. */
static int areas_add_up(const struct muslin_setting_point_spec *spec, const struct muslin_setting_point_plan *made,
                        muslin_len leg, muslin_len corner, muslin_len a, muslin_len b)
{
    muslin_len block = spec->block;
    muslin_len sash = spec->sash;
    muslin_len pieces = 2 * (made->blocks + made->alternates) * block * block;
    pieces += 2 * (made->sashes + made->edge_sashes) * block * sash - made->edge_sashes * sash * sash;
    pieces += (2 * made->cornerstones + made->edge_cornerstones) * sash * sash;
    pieces += made->side_triangles * leg * leg + made->corner_triangles * corner * corner / 2;
    return pieces == 4 * a * b;
}

static int agrees_with_geometry(const struct muslin_setting_point_spec *spec)
{
    struct muslin_setting_point_plan made = plan(spec, &ticks_up);
    const int64_t more[] = { 0, -1, 1, 0, -1 };
    int64_t k = more[spec->layout];
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    muslin_len leg = spec->block + k * spec->sash;
    muslin_len corner = spec->block + (k == 1 ? 2 * spec->sash : 0);
    muslin_len a = spec->columns * spec->block + (spec->columns + k) * spec->sash;
    muslin_len b = spec->rows * spec->block + (spec->rows + k) * spec->sash;
    int sides = made.side_triangles > 0;
    return areas_add_up(spec, &made, leg, corner, a, b) &&
           (sides ? is_ceiling(made.side_square_cut, leg + seam, seam) : made.side_square_cut == 0) &&
           made.side_need == made.side_square_cut && made.side_surplus == 0 &&
           is_half_ceiling(made.corner_square_cut, corner + seam, seam) &&
           made.corner_need == made.corner_square_cut && made.corner_surplus == 0 &&
           made.unfinished_width == made.finished_width + seam && made.unfinished_length == made.finished_length + seam;
}

START_TEST(every_small_setting_fills_its_top_and_cuts_exactly)
{
    struct muslin_setting_point_spec spec = point_of(1000, 1, 1);
    int good = 1;
    spec.allowance = 25;
    spec.take_up = 3;
    for (spec.layout = MUSLIN_POINT_LAYOUT_PLAIN; spec.layout <= MUSLIN_POINT_LAYOUT_SASH_INNER; spec.layout++)
        for (spec.columns = 1; spec.columns <= 4; spec.columns++)
            for (spec.rows = 1; spec.rows <= 4; spec.rows++)
                for (spec.block = 1000; spec.block < 1010; spec.block++) {
                    spec.sash = spec.layout == MUSLIN_POINT_LAYOUT_PLAIN ? 0 : 120;
                    good &= agrees_with_geometry(&spec);
                }
    ck_assert(good);
}
END_TEST

/* Set-off on each side: 2 f on the long side of a side triangle, on each leg of a corner one, on the centre. */
START_TEST(a_set_off_stays_in_the_quilt)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(12), 3, 5);
    struct muslin_setting_point_plan tight = plan(&spec, &ticks_up);
    spec.set_off = IN(1, 1, 2);
    struct muslin_setting_point_plan floating = plan(&spec, &ticks_up);
    ck_assert_int_eq(floating.side_square_cut, tight.side_square_cut + WHOLE_IN(3));
    ck_assert_int_eq(floating.corner_square_cut, tight.corner_square_cut + WHOLE_IN(3));
    ck_assert_int_eq(floating.finished_width, tight.finished_width + WHOLE_IN(3));
    ck_assert_int_eq(floating.finished_length, tight.finished_length + WHOLE_IN(3));
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    struct muslin_setting_point_plan customary_floating = plan(&spec, &ticks_up);
    spec.set_off = 0;
    ck_assert_int_eq(customary_floating.side_square_cut, plan(&spec, &ticks_up).side_square_cut + WHOLE_IN(3));
    ck_assert_int_eq(customary_floating.corner_square_cut, plan(&spec, &ticks_up).corner_square_cut + WHOLE_IN(3));
}
END_TEST

/* Laid out by hand: 2 x 1 blocks and no alternate; the middle tip is shared. */
START_TEST(sashes_of_a_pair_of_blocks)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(8), 2, 1);
    spec.sash = WHOLE_IN(2);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_OUTER;
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.sashes, 8);
    ck_assert_int_eq(made.cornerstones, 7);
    ck_assert_int_eq(made.sash_cut_width, IN(2, 1, 2));
    ck_assert_int_eq(made.sash_cut_length, IN(8, 1, 2));
    ck_assert_int_eq(made.cornerstone_cut, IN(2, 1, 2));
    ck_assert_int_eq(made.straight_grain, 1);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.sashes, 8);
    ck_assert_int_eq(made.cornerstones, 1);
    ck_assert_int_eq(made.edge_cornerstones, 6);
    ck_assert_int_eq(made.edge_cornerstone_squares, 2);
    ck_assert_int_eq(made.edge_cornerstone_cut, IN(4, 1, 8)); /* 2 x 1.4142 + 1.2071 = 4.0355 */
    ck_assert_int_eq(made.edge_cornerstone_need, 32801);      /* 4.035534 x 8128 = 32800.8, up */
    ck_assert_int_eq(made.edge_cornerstone_surplus, 727);     /* 33528 less that */
    ck_assert_int_eq(made.edge_cornerstone_room, 363);
    ck_assert_int_eq(made.straight_grain, 1);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_INNER;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.sashes, 0);
    ck_assert_int_eq(made.edge_cornerstone_need, 0);
    ck_assert_int_eq(made.edge_sashes, 4);
    ck_assert_int_eq(made.cornerstones, 1);
    ck_assert_int_eq(made.edge_sash_cut_length, IN(8, 7, 8)); /* 8 + 1.7071 / 2 = 8.8536 */
    ck_assert_int_eq(made.straight_grain, 0);
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_BIAS_EDGE);
    spec.columns = 1;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.sashes + made.edge_sashes + made.cornerstones, 0);
    ck_assert_int_eq(made.edge_sash_cut_length, 0);
    ck_assert_int_eq(made.straight_grain, 1);
}
END_TEST

/* A runner: no alternates, sides 2 (c - 1), four corners. */
START_TEST(one_row_on_point_is_a_runner)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(10), 5, 1);
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.alternates, 0);
    ck_assert_int_eq(made.side_triangles, 8);
    ck_assert_int_eq(made.side_squares, 2);
    spec.columns = 4;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_triangles, 6);
    ck_assert_int_eq(made.side_squares, 2);
    ck_assert_int_eq(made.spare_side_triangles, 2);
    spec.columns = 1;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.side_triangles, 0);
    ck_assert_int_eq(made.side_squares, 0);
    ck_assert_int_eq(made.side_square_cut, 0);
    ck_assert_int_gt(made.corner_square_cut, 0);
}
END_TEST

/* Half-blocks: one block a half, cut s + u / 2 beyond the diagonal. */
START_TEST(half_blocks_put_bias_on_the_edge)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(10), 3, 2);
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    spec.take_up = 101;
    struct muslin_setting_point_plan made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.half_blocks, 6);
    ck_assert_int_eq(made.side_triangles, 0);
    ck_assert_int_eq(made.side_squares, 0);
    ck_assert_int_eq(made.half_block_beyond, 2032 + 51);
    ck_assert_int_eq(made.corner_squares, 2);
    ck_assert_int_eq(made.straight_grain, 0);
    ck_assert_uint_eq(made.warnings, MUSLIN_WARN_BIAS_EDGE);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    spec.sash = WHOLE_IN(1);
    ck_assert_int_eq(plan(&spec, &eighths_up).half_blocks, 6);
    spec = point_of(WHOLE_IN(10), 1, 1);
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    made = plan(&spec, &eighths_up);
    ck_assert_int_eq(made.half_block_beyond, 0);
    ck_assert_int_eq(made.straight_grain, 1);
}
END_TEST

/* Math charts page (M. Hohn, 2002): the diagonal of 12 in is 17 in to the nearest 1/8; 3 of them 50.91. */
START_TEST(the_centre_is_rounded_once)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(12), 3, 5);
    struct muslin_rounding_spec measuring = eighths_up;
    struct muslin_setting_point_plan made = { .size = (uint32_t)sizeof made };
    measuring.direction = MUSLIN_DIRECTION_NEAREST;
    ck_ok(muslin_setting_point(&spec, &eighths_up, &measuring, &made, NULL));
    ck_assert_int_eq(made.diagonal, WHOLE_IN(17));
    ck_assert_int_eq(made.finished_width, IN(50, 7, 8));
    ck_assert_int_eq(made.finished_length, IN(84, 7, 8)); /* 84.8528 */
    ck_assert_int_eq(made.unfinished_width, IN(51, 3, 8));
    ck_assert_int_eq(made.diagonal_error, 239);  /* 17 - 16.970563 in = 239.27 ticks */
    ck_assert_int_eq(made.width_error, -299);    /* 50.875 - 50.911688 in = -298.2 ticks */
    ck_assert_int_eq(made.length_error, 180);    /* 84.875 - 84.852814 in = 180.3 ticks */
}
END_TEST

/* ---- refusals --------------------------------------------------------------------------------------------------- */

static muslin_status call_point(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_point(spec, &eighths_up, &nearest, out, problem);
}
static const struct muslin_setting_point_spec good_point = {
    (uint32_t)sizeof good_point, 0, WHOLE_IN(12), 3, 4, WHOLE_IN(2), 0, 2032, 100, 0, 0, 0, 1414, 1000,
    MUSLIN_POINT_LAYOUT_SASH_OUTER, MUSLIN_POINT_EDGE_TRIANGLES, MUSLIN_ALLOWANCE_POLICY_CUSTOMARY, 0
};
static const struct ruled point = RULED(call_point, good_point, muslin_setting_point_plan);

START_TEST(point_checks_structs_and_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_setting_point_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_setting_point_spec, block, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_setting_point_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_setting_point_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_setting_point_spec, sash, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_setting_point_spec, set_off, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SET_OFF),
        OUTSIDE(muslin_setting_point_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_setting_point_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_setting_point_spec, trim_room, 0, 0, MUSLIN_ARG_TRIM_ROOM),
        OUTSIDE(muslin_setting_point_spec, side_addition, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_setting_point_spec, corner_addition, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_EXTRA),
        OUTSIDE(muslin_setting_point_spec, factor_numerator, 0, 1000000, MUSLIN_ARG_FACTOR),
        REFUSAL(muslin_setting_point_spec, factor_denominator, 0, MUSLIN_ERR_DIVIDE_BY_ZERO, MUSLIN_ARG_DENOMINATOR),
        REFUSAL(muslin_setting_point_spec, factor_denominator, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR),
        REFUSAL(muslin_setting_point_spec, factor_denominator, 1000001, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR),
        NOT_A_CHOICE(muslin_setting_point_spec, layout, 4, MUSLIN_ARG_SETTING_LAYOUT),
        NOT_A_CHOICE(muslin_setting_point_spec, edge, 2, MUSLIN_ARG_EDGE_STYLE),
        NOT_A_CHOICE(muslin_setting_point_spec, policy, 3, MUSLIN_ARG_POLICY),
        REFUSAL(muslin_setting_point_spec, edge, 2, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_EDGE_STYLE),
        REFUSAL(muslin_setting_point_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_struct_rules(&point);
    ck_refusals(&point, refusals, COUNT_OF(refusals));
}
END_TEST

static struct muslin_problem fails(const struct muslin_setting_point_spec *spec, muslin_status status, int32_t argument)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, (uint32_t)sizeof(struct muslin_setting_point_plan));
    ck_status(muslin_setting_point(spec, &eighths_up, &nearest, (void *)&out, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

START_TEST(a_layout_bounds_sash_set_off_and_block)
{
    struct muslin_setting_point_spec spec = good_point;
    spec.factor_numerator = 1414;
    spec.factor_denominator = 0;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_DIVIDE_BY_ZERO, MUSLIN_ARG_DENOMINATOR).limit, 1);
    spec = good_point;
    spec.layout = MUSLIN_POINT_LAYOUT_PLAIN;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_SASH_WIDTH).limit, 0);
    spec = good_point;
    spec.set_off = 1;
    ck_assert_int_eq(plan(&spec, &eighths_up).blocks, 12);
    for (spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT; spec.layout <= MUSLIN_POINT_LAYOUT_SASH_INNER; spec.layout++)
        ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_SET_OFF).limit, 0);
    spec = point_of(WHOLE_IN(12), 3, 3);
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    spec.set_off = 1;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_SET_OFF).limit, 0);
    spec = good_point;
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_INNER;
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_EDGE_STYLE).limit, 0);
    spec.edge = MUSLIN_POINT_EDGE_TRIANGLES;
    spec.block = spec.sash;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_BLOCK_WIDTH).limit, spec.sash + 1);
    spec.block++;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_triangles, 10);
}
END_TEST

START_TEST(a_factor_needs_both_its_parts)
{
    struct muslin_setting_point_spec spec = good_point;
    spec.factor_numerator = 0;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR).limit, 0);
    spec.factor_denominator = -1;
    fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_DENOMINATOR);
    spec = good_point;
    spec.corner_addition = -1;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_EXTRA).at, 1);
    spec.side_addition = -1;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_EXTRA).at, 0);
}
END_TEST

/* 1.41 x 20 + 1 1/4 = 29.45 in, below the exact 29.4914; 20 / 1.41 is larger than it need be. */
START_TEST(a_factor_that_is_too_small_is_refused)
{
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(20), 141, 100);
    struct muslin_problem problem = fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(problem.value, 239369); /* 29.45 x 8128 = 239369.6 */
    ck_assert_int_eq(problem.limit, 239706); /* 29.491342 x 8128 = 239705.6 */
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    spec.trim_room = WHOLE_IN(1);
    fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_EXACT;
    spec.trim_room = 0;
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(29, 1, 2));
}
END_TEST

/* Metric additions from memory, 3.5 and 2.5 cm at 0.75 cm: below the exact 3.621 and 2.561 cm. */
START_TEST(additions_that_are_too_small_are_refused)
{
    struct muslin_setting_point_spec spec = customary(300 * MUSLIN_TICKS_PER_MM, 0, 0);
    spec.allowance = 2400;
    spec.side_addition = 35 * MUSLIN_TICKS_PER_MM;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT).at, 0);
    spec.side_addition = 11589; /* 2 (1 + sqrt 2) x 2400 = 11588.2 */
    ck_assert_int_gt(plan(&spec, &eighths_up).side_square_cut, 0);
    spec.side_addition = 11588;
    fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT);
    spec.side_addition = 0;
    spec.corner_addition = 25 * MUSLIN_TICKS_PER_MM;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT).at, 1);
    spec.corner_addition = 8195; /* (2 + sqrt 2) x 2400 = 8194.1 */
    ck_assert_int_gt(plan(&spec, &eighths_up).side_square_cut, 0);
    spec.corner_addition = 8194;
    fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT);
}
END_TEST

/* 1.41 with 1.21 in added does for a side of 1/2 in, 0.705 + 1.21 against 0.7071 + 1.2071, but not for an edge
 * cornerstone of 2 in, 2.82 + 1.21 against 2.8284 + 1.2071. */
START_TEST(edge_cornerstones_are_checked_too)
{
    struct muslin_setting_point_spec spec = customary(IN(0, 1, 2), 141, 100);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    spec.sash = WHOLE_IN(2);
    spec.side_addition = 9835; /* 1.21 in, and a little */
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT).at, 2);
    spec.sash = IN(0, 1, 2);
    ck_assert_int_gt(plan(&spec, &eighths_up).edge_cornerstone_cut, 0);
}
END_TEST

/* Setting triangles for 5 inch blocks (blog): the maker rounded 7.07 down to 7 and cut 8 1/4; 8.278 in are needed. */
START_TEST(a_diagonal_rounded_down_is_refused)
{
    struct muslin_rounding_spec down = eighths_up;
    struct muslin_setting_point_spec spec = customary(WHOLE_IN(5), 0, 0);
    struct muslin_setting_point_plan made = { .size = (uint32_t)sizeof made };
    struct muslin_problem problem = PROBLEM;
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    down.direction = MUSLIN_DIRECTION_DOWN;
    ck_status(muslin_setting_point(&spec, &down, &nearest, &made, &problem), MUSLIN_ERR_CUSTOMARY);
    ck_assert_int_eq(problem.value, IN(8, 1, 4));
    ck_assert_int_eq(plan(&spec, &eighths_up).side_square_cut, IN(8, 3, 8));
}
END_TEST

START_TEST(both_roundings_are_read_and_told_apart)
{
    struct muslin_rounding_spec bad = eighths_up;
    struct muslin_setting_point_plan made = { .size = (uint32_t)sizeof made };
    struct muslin_problem problem = PROBLEM;
    bad.grid = 0;
    ck_status(muslin_setting_point(&good_point, &bad, &nearest, &made, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_setting_point(&good_point, &eighths_up, &bad, &made, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_GRID);
    ck_assert_int_eq(problem.at, 1);
    ck_status(muslin_setting_point(&good_point, NULL, &nearest, &made, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_point(&good_point, &eighths_up, NULL, &made, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(made.blocks, 0);
}
END_TEST

/* 2^30 / sqrt 2 = 759250124.99: the largest block whose diagonal is a size. */
START_TEST(a_centre_ends_at_the_largest_size)
{
    struct muslin_setting_point_spec spec = point_of(759250124, 1, 1);
    ck_assert_int_eq(plan(&spec, &ticks_up).finished_width, MUSLIN_SIZE_MAX - 1);
    spec.block++;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH).value, MUSLIN_SIZE_MAX + 1);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH).at, 0);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_EXACT;
    spec.block = 1;
    spec.rows = 759250125;
    fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_LENGTH);
    spec.rows--;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_triangles, 2 * 759250123);
    spec.rows = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_LENGTH).value, MUSLIN_COUNT_MAX);
    spec = good_point;
    spec.block = MUSLIN_SIZE_MAX;
    spec.sash = MUSLIN_SIZE_MAX;
    spec.columns = MUSLIN_COUNT_MAX;
    fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH);
    spec = point_of(1, 1, 1);
    spec.set_off = MUSLIN_SIZE_MAX / 2;
    fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH);
}
END_TEST

/* ---- backwards -------------------------------------------------------------------------------------------------- */

static muslin_len widest(const struct muslin_setting_point_spec *spec, muslin_len width, muslin_len grid)
{
    muslin_len block = -1;
    ck_ok(muslin_setting_point_block_for_width(spec, width, grid, &block, NULL));
    return block;
}

/* Geometry: 5 x 12.5 x 1.41421 = 88.39 in, 5 x 12.75 x 1.41421 = 90.16 in. */
START_TEST(the_largest_block_for_a_width)
{
    /* Example: 5 columns within 90 in, in steps of 1/4 in: blocks of 12 1/2 in finished. */
    struct muslin_setting_point_spec spec = point_of(0, 5, 1);
    ck_assert_int_eq(widest(&spec, WHOLE_IN(90), IN(0, 1, 4)), IN(12, 1, 2));
    spec.set_off = IN(0, 7, 8); /* 88.39 + 1.75 > 90 */
    ck_assert_int_eq(widest(&spec, WHOLE_IN(90), IN(0, 1, 4)), IN(12, 1, 4));
}
END_TEST

/* (c B + (c + k) w) sqrt 2 <= W by trying: both squared. */
START_TEST(the_largest_block_is_what_trying_finds)
{
    const int64_t more[] = { 0, 0, 1, 0, -1 };
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    for (spec.layout = MUSLIN_POINT_LAYOUT_PLAIN; spec.layout <= MUSLIN_POINT_LAYOUT_SASH_INNER; spec.layout++)
        for (spec.columns = 1; spec.columns <= 3; spec.columns++)
            for (muslin_len wanted = 60; wanted <= 90; wanted++) {
                spec.sash = spec.layout == MUSLIN_POINT_LAYOUT_PLAIN ? 0 : 3;
                muslin_len best = 0;
                for (muslin_len block = 1; block < 90; block++) {
                    muslin_len line = spec.columns * block + (spec.columns + more[spec.layout]) * spec.sash;
                    if (2 * line * line <= wanted * wanted)
                        best = block;
                }
                ck_assert_int_eq(widest(&spec, wanted, 1), best);
            }
}
END_TEST

static struct muslin_problem no_block(const struct muslin_setting_point_spec *spec, muslin_len width, muslin_len grid,
                                      muslin_status status, int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len block = 77;
    ck_status(muslin_setting_point_block_for_width(spec, width, grid, &block, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(block, 77);
    return problem;
}

START_TEST(a_width_that_holds_no_block_says_the_least)
{
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    ck_assert_int_eq(widest(&spec, 2, 1), 1);
    ck_assert_int_eq(no_block(&spec, 1, 1, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 2);
    spec.set_off = 2000;
    ck_assert_int_eq(no_block(&spec, 1000, 1000, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 5415);
    spec.set_off = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(no_block(&spec, 1000, 1000, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 0);
    spec.set_off = 0;
    ck_assert_int_eq(no_block(&spec, 10, MUSLIN_SIZE_MAX, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 0);
    spec.columns = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(no_block(&spec, 10, MUSLIN_SIZE_MAX, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 0);
    spec.columns = 2;
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_INNER;
    spec.sash = 100; /* 2 x 101 + 100 = 302, x 1.41421 = 427.09 */
    ck_assert_int_eq(no_block(&spec, 427, 1, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, 428);
    ck_assert_int_eq(widest(&spec, 428, 1), 101);
}
END_TEST

START_TEST(the_largest_block_checks_what_it_reads)
{
    struct muslin_setting_point_spec spec = point_of(-5, 1, -5); /* neither is read */
    ck_assert_int_eq(widest(&spec, WHOLE_IN(17), WHOLE_IN(1)), WHOLE_IN(12));
    no_block(&spec, 0, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH);
    no_block(&spec, MUSLIN_SIZE_MAX + 1, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_QUILT_WIDTH);
    no_block(&spec, 5, 0, MUSLIN_ERR_RANGE, MUSLIN_ARG_GRID);
    no_block(&spec, 5, MUSLIN_SIZE_MAX + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_GRID);
    no_block(NULL, 5, 1, MUSLIN_ERR_NULL, MUSLIN_ARG_SPEC);
    ck_status(muslin_setting_point_block_for_width(&spec, 5, 1, NULL, NULL), MUSLIN_ERR_NULL);
    spec.columns = 0;
    no_block(&spec, 5, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_COLUMNS);
}
END_TEST

/* (12 3/4 - 1/2) / 1.41421 - 1/2 = 8.162 in; a layout with a sash shifts that by the sash. */
START_TEST(the_block_that_a_side_square_frames)
{
    /* Example: a side square cut 12 3/4 in, down to 1/8 in: blocks up to 8 1/8 in finished. */
    struct muslin_rounding_spec down = eighths_up;
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    struct muslin_rounded block = { .size = (uint32_t)sizeof block };
    down.direction = MUSLIN_DIRECTION_DOWN;
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(12, 3, 4), &down, &block, NULL));
    ck_assert_int_eq(block.value, IN(8, 1, 8));
    ck_assert_int_eq(block.exact, 0);
    spec.sash = WHOLE_IN(1);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_OUTER;
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(12, 3, 4), &down, &block, NULL));
    ck_assert_int_eq(block.value, IN(7, 1, 8));
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_INNER;
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(12, 3, 4), &down, &block, NULL));
    ck_assert_int_eq(block.value, IN(9, 1, 8));
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(12, 3, 4), &down, &block, NULL));
    ck_assert_int_eq(block.value, IN(8, 1, 8));
    spec = point_of(0, 1, 1);
    spec.set_off = WHOLE_IN(2); /* stays in the quilt on both sides */
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(16, 3, 4), &down, &block, NULL));
    ck_assert_int_eq(block.value, IN(8, 1, 8));
}
END_TEST

/* Blocks of 1000 ticks: their diagonal is 1414.2, or 1500 by a factor of 3 / 2, before 5 and 3 1/2 allowances are added. */
START_TEST(a_diagonal_is_rounded_first)
{
    struct muslin_setting_point_spec spec = customary(1000, 0, 0);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_square_cut, 1415 + 10160);
    ck_assert_int_eq(plan(&spec, &ticks_up).corner_square_cut, 708 + 7112);
    spec = customary(1000, 3, 2);
    spec.flags = MUSLIN_SETTING_POINT_DIAGONAL_FIRST;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_square_cut, 1500 + 10160);
    ck_assert_int_eq(plan(&spec, &ticks_up).corner_square_cut, 750 + 7112);
}
END_TEST

/* 5 s + 5 u / 2 of s 2032 and u 1 is 10162.5, and 7 s / 2 + 7 u / 4 of u 3 is 7117.25. 500000 x 1.41422 is 707110. */
START_TEST(additions_are_rounded_up)
{
    struct muslin_setting_point_spec spec = customary(500000, 141422, 100000);
    spec.take_up = 1;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_square_cut, 707110 + 10163);
    spec = customary(500000, 1, 1);
    spec.columns = spec.rows = 1; /* no side triangles */
    spec.take_up = 3;
    ck_assert_int_eq(plan(&spec, &ticks_up).corner_square_cut, 500000 + 7118);
}
END_TEST

/* The triangle needs (1000 + 4064) x 1.414214 + 4064 = 11225.6 ticks: what is just as much will do. */
START_TEST(an_addition_that_is_just_enough_will_do)
{
    struct muslin_setting_point_spec spec = customary(1000, 1, 1);
    spec.side_addition = 10226;
    ck_assert_int_eq(plan(&spec, &ticks_up).side_square_cut, 11226);
    spec.side_addition--;
    fails(&spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_CUT);
}
END_TEST

/* Four to a square: of 5 and 6 columns and rows together 10 and 12 lie at the edge. */
START_TEST(cornerstones_at_the_edge_come_four_from_a_square)
{
    struct muslin_setting_point_spec spec = point_of(WHOLE_IN(6), 2, 3);
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_CUT;
    spec.sash = WHOLE_IN(1);
    ck_assert_int_eq(plan(&spec, &ticks_up).edge_cornerstones, 10);
    ck_assert_int_eq(plan(&spec, &ticks_up).edge_cornerstone_squares, 3);
    spec.rows = 4;
    ck_assert_int_eq(plan(&spec, &ticks_up).edge_cornerstones, 12);
    ck_assert_int_eq(plan(&spec, &ticks_up).edge_cornerstone_squares, 3);
    spec.layout = MUSLIN_POINT_LAYOUT_PLAIN;
    spec.sash = -1;
    ck_assert_int_eq(fails(&spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_SASH_WIDTH).limit, 0);
    spec.sash = 0;
    spec.edge = MUSLIN_POINT_EDGE_HALF_BLOCKS;
    ck_assert_int_eq(plan(&spec, &ticks_up).half_block_beyond, 2032);
    spec.take_up = 1;
    ck_assert_int_eq(plan(&spec, &ticks_up).half_block_beyond, 2033);
}
END_TEST

/* A set-off lies on both sides: of 3415 ticks 1415 are left, and 1000 x 1.41421 = 1414.2; of the largest size 2, for a
 * block of a tick. */
START_TEST(a_block_stays_clear_of_both_set_offs)
{
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    struct muslin_rounded block = { .size = (uint32_t)sizeof block };
    struct muslin_problem problem = PROBLEM;
    spec.set_off = 1000;
    ck_assert_int_eq(widest(&spec, 3415, 1), 1000);
    ck_assert_int_eq(widest(&spec, 3414, 1), 999);
    ck_status(muslin_setting_point_block_from_side(&spec, 9812, &nearest, &block, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.limit, 9813 + 2000);
    spec.set_off = MUSLIN_SIZE_MAX / 2 - 1;
    ck_assert_int_eq(no_block(&spec, 10, 1, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_QUILT_WIDTH).limit, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(widest(&spec, MUSLIN_SIZE_MAX, 1), 1);
}
END_TEST

static muslin_status call_from_side(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_point_block_from_side(spec, WHOLE_IN(20), &nearest, out, problem);
}
static const struct ruled from_side = RULED(call_from_side, good_point, muslin_rounded);

START_TEST(a_side_square_must_leave_something_of_the_block)
{
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    struct muslin_rounded block = { .size = (uint32_t)sizeof block };
    struct muslin_problem problem = PROBLEM;
    /* 4064 + 4065 x 1.414214 = 9812.8 ticks for a block of one tick */
    ck_status(muslin_setting_point_block_from_side(&spec, 9812, &nearest, &block, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_assert_int_eq(problem.limit, 9813);
    ck_assert_int_eq(block.value, 0);
    ck_ok(muslin_setting_point_block_from_side(&spec, 9813, &nearest, &block, NULL));
    ck_assert_int_eq(block.value, 1);
    ck_status(muslin_setting_point_block_from_side(&spec, 0, &nearest, &block, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT);
    ck_status(muslin_setting_point_block_from_side(&spec, WHOLE_IN(9), NULL, &block, NULL), MUSLIN_ERR_NULL);
    ck_struct_rules(&from_side);
}
END_TEST

/* (12000 - 4064) / sqrt 2 - 4064 = 1547.6 ticks, 0.19 in: down to a grid of 1 in nothing. With a sash of 1 in inside,
 * 1 1/2 in as cut leaves (12192 - 4064) / sqrt 2 - 4064 + 8128 = 9811.4: down to 1 in the sash itself, which leaves no
 * side triangle; 2 in is the least. Up to 1 in both are blocks. */
START_TEST(a_block_that_rounding_takes_away_is_no_fit)
{
    struct muslin_rounding_spec how = { (uint32_t)sizeof how, 0, WHOLE_IN(1), 0, MUSLIN_DIRECTION_DOWN, 0 };
    struct muslin_setting_point_spec spec = point_of(0, 1, 1);
    struct muslin_rounded block = { .size = (uint32_t)sizeof block };
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_setting_point_block_from_side(&spec, 12000, &how, &block, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.value, 0);
    ck_assert_int_eq(problem.limit, WHOLE_IN(1));
    spec.layout = MUSLIN_POINT_LAYOUT_SASH_INNER;
    spec.sash = WHOLE_IN(1);
    ck_status(muslin_setting_point_block_from_side(&spec, IN(1, 1, 2), &how, &block, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.value, WHOLE_IN(1));
    ck_assert_int_eq(problem.limit, WHOLE_IN(2));
    ck_assert_int_eq(block.value, 0);
    how.direction = MUSLIN_DIRECTION_UP;
    ck_ok(muslin_setting_point_block_from_side(&spec, IN(1, 1, 2), &how, &block, NULL));
    ck_assert_int_eq(block.value, WHOLE_IN(2));
    spec.layout = MUSLIN_POINT_LAYOUT_PLAIN;
    spec.sash = 0;
    ck_ok(muslin_setting_point_block_from_side(&spec, 12000, &how, &block, NULL));
    ck_assert_int_eq(block.value, WHOLE_IN(1));
}
END_TEST

INIT_CALL(setting_point)

START_TEST(initial_values_are_the_macro)
{
    const struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
    ck_init_rules(init_setting_point, &spec, sizeof spec);
}
END_TEST

static void add_figures(Suite *suite)
{
    TCase *tcase = tcase_create("figures");
    tcase_add_test(tcase, six_inch_blocks_four_by_four);
    tcase_add_test(tcase, the_constant_decides_for_sixteen_inches);
    tcase_add_test(tcase, a_guild_rounds_the_diagonal_first);
    tcase_add_test(tcase, an_addition_off_the_grid_is_flagged);
    tcase_add_test(tcase, edge_cornerstones_off_the_grid_are_flagged);
    tcase_add_test(tcase, oversize_adds_room_to_trim);
    tcase_add_test(tcase, half_of_the_surplus_stands_out_at_the_edge);
    tcase_add_test(tcase, a_square_rounded_down_says_so);
    tcase_add_test(tcase, every_small_setting_fills_its_top_and_cuts_exactly);
    tcase_add_test(tcase, a_set_off_stays_in_the_quilt);
    tcase_add_test(tcase, sashes_of_a_pair_of_blocks);
    tcase_add_test(tcase, one_row_on_point_is_a_runner);
    tcase_add_test(tcase, half_blocks_put_bias_on_the_edge);
    tcase_add_test(tcase, the_centre_is_rounded_once);
    suite_add_tcase(suite, tcase);
}

static void add_refusals(Suite *suite)
{
    TCase *tcase = tcase_create("refusals");
    tcase_add_test(tcase, point_checks_structs_and_ranges);
    tcase_add_test(tcase, a_layout_bounds_sash_set_off_and_block);
    tcase_add_test(tcase, a_factor_needs_both_its_parts);
    tcase_add_test(tcase, a_factor_that_is_too_small_is_refused);
    tcase_add_test(tcase, additions_that_are_too_small_are_refused);
    tcase_add_test(tcase, edge_cornerstones_are_checked_too);
    tcase_add_test(tcase, a_diagonal_rounded_down_is_refused);
    tcase_add_test(tcase, both_roundings_are_read_and_told_apart);
    tcase_add_test(tcase, a_centre_ends_at_the_largest_size);
    suite_add_tcase(suite, tcase);
}

Suite *setting_point_suite(void);

Suite *setting_point_suite(void)
{
    Suite *suite = suite_create("setting_point");
    TCase *tcase = tcase_create("backwards");
    add_figures(suite);
    add_refusals(suite);
    tcase_add_test(tcase, the_largest_block_for_a_width);
    tcase_add_test(tcase, the_largest_block_is_what_trying_finds);
    tcase_add_test(tcase, a_width_that_holds_no_block_says_the_least);
    tcase_add_test(tcase, the_largest_block_checks_what_it_reads);
    tcase_add_test(tcase, the_block_that_a_side_square_frames);
    tcase_add_test(tcase, a_side_square_must_leave_something_of_the_block);
    tcase_add_test(tcase, a_diagonal_is_rounded_first);
    tcase_add_test(tcase, additions_are_rounded_up);
    tcase_add_test(tcase, an_addition_that_is_just_enough_will_do);
    tcase_add_test(tcase, cornerstones_at_the_edge_come_four_from_a_square);
    tcase_add_test(tcase, a_block_stays_clear_of_both_set_offs);
    tcase_add_test(tcase, a_block_that_rounding_takes_away_is_no_fit);
    tcase_add_test(tcase, initial_values_are_the_macro);
    suite_add_tcase(suite, tcase);
    return suite;
}
