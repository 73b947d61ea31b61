/* test_fit_across.c - blocks across a width and rows of triangles: published figures, and trying count after count.
 *
 * SPDX-License-Identifier: MIT */
#include "test_fit.h"

static struct muslin_fit_across_spec blocks_for(muslin_len wanted, muslin_len border, muslin_len block, muslin_len sash)
{
    struct muslin_fit_across_spec spec = MUSLIN_FIT_ACROSS_SPEC_INIT;
    spec.wanted = wanted;
    spec.border = border;
    spec.block = block;
    spec.sash = sash;
    return spec;
}

static struct muslin_fit_across_blocks across_of(const struct muslin_fit_across_spec *spec)
{
    struct muslin_fit_across_blocks across = { .size = (uint32_t)sizeof across };
    ck_ok(muslin_fit_across(spec, &across, NULL));
    return across;
}

/* "How-to article on fitting sashed squares to a quilt width": (88 - 8 + 2) / 14 = 5.86, 6 blocks, 90 in wide. */
START_TEST(six_sashed_blocks_come_nearest_to_eighty_eight_inches)
{
    /* Example: 88 in wide, borders of 4 in, blocks of 12 in, sashes of 2 in: 5.86, so 6 blocks and a width of 90 in. */
    struct muslin_fit_across_spec spec = blocks_for(WHOLE_IN(88), WHOLE_IN(4), WHOLE_IN(12), WHOLE_IN(2));
    struct muslin_fit_across_blocks across = across_of(&spec);
    ck_assert_int_eq(across.blocks, 6);
    ck_assert_int_eq(across.finished_width, WHOLE_IN(90));
    ck_assert_int_eq(across.off, WHOLE_IN(2));
    ck_assert_int_eq(across.room, WHOLE_IN(82));
    ck_assert_int_eq(across.pitch, WHOLE_IN(14));
    ck_assert_int_eq(across.exact, 0);
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(across_of(&spec).blocks, 5);
    ck_assert_int_eq(across_of(&spec).off, -WHOLE_IN(12));
    spec.direction = MUSLIN_DIRECTION_UP;
    ck_assert_int_eq(across_of(&spec).blocks, 6);
    spec.wanted = WHOLE_IN(90);
    ck_assert_int_eq(across_of(&spec).blocks, 6);
    ck_assert_int_eq(across_of(&spec).exact, 1);
}
END_TEST

/* By adding up: 4 blocks of 9 in, 5 sashes of 1 in and two borders of 3 in are 47 in. */
START_TEST(a_framed_row_has_one_sash_more_than_blocks)
{
    struct muslin_fit_across_spec spec = blocks_for(WHOLE_IN(47), WHOLE_IN(3), WHOLE_IN(9), WHOLE_IN(1));
    spec.flags = MUSLIN_FIT_ACROSS_FRAME;
    ck_assert_int_eq(across_of(&spec).blocks, 4);
    ck_assert_int_eq(across_of(&spec).exact, 1);
    ck_assert_int_eq(across_of(&spec).room, WHOLE_IN(40));
}
END_TEST

static muslin_len width_by_adding(const struct muslin_fit_across_spec *spec, int64_t blocks)
{
    muslin_len width = 2 * spec->border + blocks * spec->block + (blocks - 1) * spec->sash;
    return spec->flags == 0 ? width : width + 2 * spec->sash;
}

/* Count after count is tried: the last that fits, the first that fills, or the nearer of the two. */
static int agrees_with_trying(const struct muslin_fit_across_spec *spec)
{
    struct muslin_fit_across_blocks across = { .size = (uint32_t)sizeof across };
    int64_t down = 0;
    while (width_by_adding(spec, down + 1) <= spec->wanted)
        down++;
    int64_t up = down > 0 && width_by_adding(spec, down) == spec->wanted ? down : down + 1;
    muslin_len below = spec->wanted - width_by_adding(spec, down);
    muslin_len above = width_by_adding(spec, up) - spec->wanted;
    int64_t nearest = down == 0 || above <= below ? up : down;
    int64_t expected = spec->direction == MUSLIN_DIRECTION_UP     ? up
                       : spec->direction == MUSLIN_DIRECTION_DOWN ? down
                                                                  : nearest;
    muslin_status status = muslin_fit_across(spec, &across, NULL);
    if (expected == 0)
        return status == MUSLIN_ERR_NO_FIT;
    return status == MUSLIN_OK && across.blocks == expected &&
           across.finished_width == width_by_adding(spec, expected) &&
           across.off == across.finished_width - spec->wanted && across.exact == (across.off == 0);
}

START_TEST(every_small_width_holds_what_trying_gives)
{
    struct muslin_fit_across_spec spec = blocks_for(1, 0, 1, 0);
    int good = 1;
    for (spec.flags = 0; spec.flags <= 1; spec.flags++)
        for (spec.direction = 1; spec.direction <= 3; spec.direction++)
            for (spec.wanted = 1; spec.wanted <= 40; spec.wanted++)
                for (spec.border = 0; spec.border <= 6; spec.border += 2)
                    for (spec.block = 1; spec.block <= 9; spec.block++)
                        for (spec.sash = 0; spec.sash <= 4; spec.sash++)
                            good &= agrees_with_trying(&spec);
    ck_assert(good);
}
END_TEST

START_TEST(what_not_even_one_block_fits_is_no_fit)
{
    struct muslin_fit_across_spec spec = blocks_for(WHOLE_IN(19), WHOLE_IN(4), WHOLE_IN(12), WHOLE_IN(2));
    struct muslin_fit_across_blocks out = { .size = (uint32_t)sizeof out, .blocks = 77 };
    struct muslin_problem problem = PROBLEM;
    spec.direction = MUSLIN_DIRECTION_DOWN;
    ck_status(muslin_fit_across(&spec, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_WIDTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(19));
    ck_assert_int_eq(problem.limit, WHOLE_IN(20));
    ck_assert_int_eq(out.blocks, 77);
    spec.wanted = WHOLE_IN(20);
    ck_assert_int_eq(across_of(&spec).blocks, 1);
}
END_TEST

static muslin_status call_across(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fit_across(spec, out, problem);
}
static const struct muslin_fit_across_spec good_across = {
    (uint32_t)sizeof good_across, MUSLIN_FIT_ACROSS_FRAME, WHOLE_IN(88), WHOLE_IN(4), WHOLE_IN(12), WHOLE_IN(2),
    MUSLIN_DIRECTION_UP, 0
};
static const struct ruled across = RULED(call_across, good_across, muslin_fit_across_blocks);

START_TEST(across_checks_its_structs)
{
    ck_struct_rules(&across);
}
END_TEST

START_TEST(across_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_fit_across_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_fit_across_spec, wanted, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_fit_across_spec, border, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_BORDER_WIDTH),
        OUTSIDE(muslin_fit_across_spec, block, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_fit_across_spec, sash, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        NOT_A_CHOICE(muslin_fit_across_spec, direction, 3, MUSLIN_ARG_DIRECTION),
        REFUSAL(muslin_fit_across_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_refusals(&across, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(the_largest_widths_are_still_right)
{
    const muslin_len most = MUSLIN_SIZE_MAX;
    struct muslin_fit_across_spec spec = blocks_for(1, most, most, most);
    spec.flags = MUSLIN_FIT_ACROSS_FRAME;
    ck_assert_int_eq(across_of(&spec).blocks, 1);
    ck_assert_int_eq(across_of(&spec).finished_width, 5 * most);
    spec = blocks_for(most, 0, 1, 0);
    ck_assert_int_eq(across_of(&spec).blocks, most);
}
END_TEST

/* ---- rows of triangles ------------------------------------------------------------------------------------------- */

static struct muslin_fit_triangles_spec triangles_for(muslin_len width, muslin_len length, muslin_len height)
{
    struct muslin_fit_triangles_spec spec = MUSLIN_FIT_TRIANGLES_SPEC_INIT;
    spec.wanted_width = width;
    spec.wanted_length = length;
    spec.height = height;
    return spec;
}

static struct muslin_fit_triangle_rows rows_of(const struct muslin_fit_triangles_spec *spec)
{
    struct muslin_fit_triangle_rows rows = { .size = (uint32_t)sizeof rows };
    ck_ok(muslin_fit_triangles(spec, &rows, NULL));
    return rows;
}

/* "How to cut equilateral triangles" (blog): 50 / 4.25 = 11.77, 12 rows, 51 in; 8.15, 8 sides across. A row with
 * squared ends has two triangles a side, one of which is in two halves. */
START_TEST(twelve_rows_of_triangles_make_fifty_one_inches)
{
    /* Example: 40 x 50 in with a height of 4 1/4 in: 12 rows, 51 in long, and 8 sides across; strips cut 5 in for sharp
     * tips, 4 3/4 in for blunt ones. */
    struct muslin_fit_triangles_spec spec = triangles_for(WHOLE_IN(40), WHOLE_IN(50), IN(4, 1, 4));
    struct muslin_fit_triangle_rows rows = rows_of(&spec);
    ck_assert_int_eq(rows.rows, 12);
    ck_assert_int_eq(rows.sides, 8);
    ck_assert_int_eq(rows.finished_length, WHOLE_IN(51));
    ck_assert_int_eq(rows.off_length, WHOLE_IN(1));
    ck_assert_int_eq(rows.triangles, 12 * 15);
    ck_assert_int_eq(rows.half_triangles, 24);
    ck_assert_int_eq(rows.off_width, rows.finished_width - WHOLE_IN(40));
    ck_assert_int_eq(rows.halves_each_hand, 12);
    ck_assert_int_eq(rows.strip_cut, WHOLE_IN(5)); /* the same blog: height + 3/4 in */
    ck_assert_int_eq(rows.strip_cut_blunt, IN(4, 3, 4));
    ck_assert_int_eq(rows.unfinished_length, IN(51, 1, 2));
    ck_assert_int_eq(rows.unfinished_width, rows.finished_width + IN(0, 1, 2));
    spec.rows_direction = MUSLIN_DIRECTION_DOWN;
    spec.sides_direction = MUSLIN_DIRECTION_UP;
    ck_assert_int_eq(rows_of(&spec).rows, 11);
    ck_assert_int_eq(rows_of(&spec).sides, 9);
    spec.rows_direction = MUSLIN_DIRECTION_UP;
    spec.wanted_length = WHOLE_IN(51);
    ck_assert_int_eq(rows_of(&spec).rows, 12);
}
END_TEST

/* a is the nearest whole number to n h 2 / sqrt 3 when (2 a - 1)^2 3 < (4 n h)^2 < (2 a + 1)^2 3. */
static int is_nearest_width(muslin_len a, int64_t n, muslin_len height)
{
    int64_t square = 16 * n * n * height * height;
    return 3 * (2 * a - 1) * (2 * a - 1) < square && square < 3 * (2 * a + 1) * (2 * a + 1);
}

/* Sides are tried one after the other: n sides are n 2 h / sqrt 3 wide, so 4 n^2 h^2 is compared with 3 w^2; the nearer
 * of n and n + 1 by their middle, (2 n + 1)^2 h^2 against 3 w^2. */
static int agrees_with_laying(const struct muslin_fit_triangles_spec *spec)
{
    struct muslin_fit_triangle_rows rows = { .size = (uint32_t)sizeof rows };
    int64_t w3 = 3 * spec->wanted_width * spec->wanted_width;
    int64_t h2 = spec->height * spec->height;
    int64_t down = 0;
    while (4 * (down + 1) * (down + 1) * h2 <= w3)
        down++;
    int64_t nearest = down == 0 || (2 * down + 1) * (2 * down + 1) * h2 <= w3 ? down + 1 : down;
    int64_t expected = spec->sides_direction == MUSLIN_DIRECTION_UP     ? down + 1
                       : spec->sides_direction == MUSLIN_DIRECTION_DOWN ? down
                                                                    : nearest;
    muslin_status status = muslin_fit_triangles(spec, &rows, NULL);
    if (expected == 0)
        return status == MUSLIN_ERR_NO_FIT;
    return status == MUSLIN_OK && rows.sides == expected &&
           is_nearest_width(rows.finished_width, expected, spec->height) &&
           is_nearest_width(rows.side, 1, spec->height);
}

START_TEST(every_small_width_holds_the_sides_that_laying_them_gives)
{
    struct muslin_fit_triangles_spec spec = triangles_for(1, 30, 1);
    int good = 1;
    for (spec.sides_direction = 1; spec.sides_direction <= 3; spec.sides_direction++)
        for (spec.wanted_width = 1; spec.wanted_width <= 120; spec.wanted_width++)
            for (spec.height = 1; spec.height <= 30; spec.height++)
                good &= agrees_with_laying(&spec);
    ck_assert(good);
}
END_TEST

/* a is the least whole number of at least (p + q sqrt 3) / d, which is no whole number, when a d - p is above q sqrt 3
 * and (a - 1) d - p is not. */
static int is_ceiling(muslin_len a, int64_t p, int64_t q, int64_t d)
{
    int64_t above = a * d - p;
    int64_t below = above - d;
    return above * above > 3 * q * q && (below < 0 || below * below < 3 * q * q);
}

/* The raw triangle's sides lie E / 2 outside the finished ones: its height is E / 2 more below and E more at the tip,
 * and its base 2 / sqrt 3 of that height. A half base is half of it, and E / 2 beside the straight side. */
START_TEST(raw_triangles_are_the_finished_ones_with_a_seam_all_round)
{
    struct muslin_fit_triangles_spec spec = triangles_for(900, 900, 1);
    int good = 1;
    for (spec.height = 1; spec.height <= 30; spec.height++)
        for (spec.allowance = 0; spec.allowance <= 9; spec.allowance++)
            for (spec.take_up = 0; spec.take_up <= 3; spec.take_up++) {
                struct muslin_fit_triangle_rows cut = rows_of(&spec);
                muslin_len seam = 2 * spec.allowance + spec.take_up;
                int64_t raw = 2 * spec.height + 3 * seam;
                good &= cut.strip_cut == spec.height + seam + (seam + 1) / 2;
                good &= cut.strip_cut_blunt == spec.height + seam;
                good &= cut.unfinished_width == cut.finished_width + seam;
                good &= cut.unfinished_length == cut.finished_length + seam;
                good &= is_ceiling(cut.cut_base, 0, raw, 3);
                good &= is_ceiling(cut.half_cut_base, 3 * seam, raw, 6);
            }
    ck_assert(good);
}
END_TEST

START_TEST(a_quilt_smaller_than_its_triangles_is_no_fit)
{
    struct muslin_fit_triangles_spec spec = triangles_for(10, 10, 9);
    struct muslin_fit_triangle_rows out = { .size = (uint32_t)sizeof out, .rows = 77 };
    struct muslin_problem problem = PROBLEM;
    spec.rows_direction = MUSLIN_DIRECTION_DOWN;
    spec.sides_direction = MUSLIN_DIRECTION_DOWN;
    ck_status(muslin_fit_triangles(&spec, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_WIDTH); /* a side of 10.4 */
    ck_assert_int_eq(problem.limit, 10);
    spec.height = 11;
    ck_status(muslin_fit_triangles(&spec, &out, &problem), MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_LENGTH);
    ck_assert_int_eq(problem.limit, 11);
    ck_assert_int_eq(out.rows, 77);
}
END_TEST

static muslin_status call_rows(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_fit_triangles(spec, out, problem);
}
static const struct muslin_fit_triangles_spec good_rows = { (uint32_t)sizeof good_rows,
                                                            0,
                                                            WHOLE_IN(40),
                                                            WHOLE_IN(50),
                                                            IN(4, 1, 4),
                                                            MUSLIN_DIRECTION_UP,
                                                            MUSLIN_DIRECTION_DOWN,
                                                            2032,
                                                            8 };
static const struct ruled rows = RULED(call_rows, good_rows, muslin_fit_triangle_rows);

START_TEST(triangle_rows_check_their_structs)
{
    ck_struct_rules(&rows);
    ck_no_flag_known(&rows);
}
END_TEST

START_TEST(triangle_rows_refuse_what_lies_outside_their_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_fit_triangles_spec, wanted_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_fit_triangles_spec, wanted_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_fit_triangles_spec, height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_TRIANGLE_HEIGHT),
        NOT_A_CHOICE(muslin_fit_triangles_spec, rows_direction, 3, MUSLIN_ARG_DIRECTION),
        NOT_A_CHOICE(muslin_fit_triangles_spec, sides_direction, 3, MUSLIN_ARG_DIRECTION),
        OUTSIDE(muslin_fit_triangles_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_fit_triangles_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
    };
    ck_refusals(&rows, refusals, COUNT_OF(refusals));
}
END_TEST

/* sqrt 3 / 2 x 2^30 = 929887696.69 sides of 2 / sqrt 3 ticks. */
START_TEST(the_largest_rows_of_triangles_are_still_right)
{
    struct muslin_fit_triangles_spec spec = triangles_for(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, 1);
    ck_assert_int_eq(rows_of(&spec).sides, 929887697);
    ck_assert_int_eq(rows_of(&spec).rows, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(rows_of(&spec).finished_width, MUSLIN_SIZE_MAX);
    spec.sides_direction = MUSLIN_DIRECTION_DOWN;
    ck_assert_int_eq(rows_of(&spec).sides, 929887696);
    spec = triangles_for(1, 1, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(rows_of(&spec).sides, 1);
    ck_assert_int_eq(rows_of(&spec).rows, 1);
    spec.wanted_width = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(rows_of(&spec).sides, 1);
    spec.allowance = spec.take_up = MUSLIN_SIZE_MAX / 8;
    struct muslin_fit_triangle_rows cut = rows_of(&spec);
    ck_assert_int_eq(cut.strip_cut, MUSLIN_SIZE_MAX / 16 * 25); /* 1 + 9 / 16 */
    ck_assert(is_ceiling(cut.cut_base / 2 + 1, 0, MUSLIN_SIZE_MAX / 16 * 25, 3) ||
              is_ceiling((cut.cut_base + 1) / 2, 0, MUSLIN_SIZE_MAX / 16 * 25, 3));
}
END_TEST

INIT_CALL(fit_across)
INIT_CALL(fit_triangles)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_fit_across_spec first = MUSLIN_FIT_ACROSS_SPEC_INIT;
    const struct muslin_fit_triangles_spec second = MUSLIN_FIT_TRIANGLES_SPEC_INIT;
    ck_init_rules(init_fit_across, &first, (uint32_t)sizeof first);
    ck_init_rules(init_fit_triangles, &second, (uint32_t)sizeof second);
}
END_TEST

void add_fit_across(Suite *suite)
{
    TCase *counts = tcase_create("across");
    tcase_add_test(counts, six_sashed_blocks_come_nearest_to_eighty_eight_inches);
    tcase_add_test(counts, a_framed_row_has_one_sash_more_than_blocks);
    tcase_add_test(counts, every_small_width_holds_what_trying_gives);
    tcase_add_test(counts, what_not_even_one_block_fits_is_no_fit);
    tcase_add_test(counts, across_checks_its_structs);
    tcase_add_test(counts, across_refuses_what_lies_outside_its_ranges);
    tcase_add_test(counts, the_largest_widths_are_still_right);
    tcase_add_test(counts, twelve_rows_of_triangles_make_fifty_one_inches);
    tcase_add_test(counts, every_small_width_holds_the_sides_that_laying_them_gives);
    tcase_add_test(counts, raw_triangles_are_the_finished_ones_with_a_seam_all_round);
    tcase_add_test(counts, a_quilt_smaller_than_its_triangles_is_no_fit);
    tcase_add_test(counts, triangle_rows_check_their_structs);
    tcase_add_test(counts, triangle_rows_refuse_what_lies_outside_their_ranges);
    tcase_add_test(counts, the_largest_rows_of_triangles_are_still_right);
    tcase_add_test(counts, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, counts);
}
