/* test_pressing.c - pressing plans: settings whose pressing every quilter knows, what joins ask for, what is preferred,
 * and how calls are refused.
 *
 * SPDX-License-Identifier: MIT */
#include "test_pressing.h"

#include "pressing_solve.h"
#include "refusals.h"

enum { A_STRIP = 16256, MANY_ROWS = 100 };

/* A nine-patch of 2 in squares and what it is made of: rows dark, light, dark, and light, dark, light. */
struct nine {
    struct sewn s;
    muslin_id dark;
    muslin_id light;
    muslin_id outer;
    muslin_id inner;
    muslin_id block;
};

static void sew_nine(struct nine *nine, uint32_t flags, int32_t outer_press, int32_t inner_press)
{
    struct muslin_quilt *quilt = nine->s.quilt;
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    const muslin_id outer[] = { nine->dark, nine->light, nine->dark };
    const muslin_id inner[] = { nine->light, nine->dark, nine->light };
    spec.flags = flags;
    spec.press = outer_press;
    ck_ok(muslin_quilt_join(quilt, &spec, outer, 3, &nine->outer, NULL));
    spec.press = inner_press;
    ck_ok(muslin_quilt_join(quilt, &spec, inner, 3, &nine->inner, NULL));
    const muslin_id rows[] = { nine->outer, nine->inner, nine->outer };
    nine->block = join_of(quilt, MUSLIN_AXIS_DOWN, rows, 3);
}

static void begin_nine(struct nine *nine, int32_t outer_press, int32_t inner_press)
{
    begin_sewing(&nine->s);
    struct muslin_quilt *quilt = nine->s.quilt;
    nine->dark = patch_of(quilt, fabric_so_dark(quilt, 80), nine->s.two, nine->s.two);
    nine->light = patch_of(quilt, fabric_so_dark(quilt, 20), nine->s.two, nine->s.two);
    sew_nine(nine, 0, outer_press, inner_press);
}

/* Rows whose pieces are labelled: none is turned. */
static void begin_in_order(struct nine *nine, int32_t outer_press, int32_t inner_press)
{
    begin_nine(nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    sew_nine(nine, MUSLIN_QUILT_JOIN_KEEPS_ORDER, outer_press, inner_press);
}

/* A row of three patches of one fabric. */
static muslin_id plain_row(struct sewn *s)
{
    muslin_id square = patch_of(s->quilt, s->blue, s->two, s->two);
    const muslin_id three[] = { square, square, square };
    return join_of(s->quilt, MUSLIN_AXIS_ACROSS, three, 3);
}

/* ---- straight settings ------------------------------------------------------------------------------------------- */

START_TEST(every_other_of_equal_rows_is_pressed_the_other_way)
{
    /* Example: rows of equal blocks: every other row the other way, no exception. */
    struct sewn s;
    begin_sewing(&s);
    const muslin_id row = plain_row(&s);
    const muslin_id five[] = { row, row, row, row, row };
    const muslin_id top = join_of(s.quilt, MUSLIN_AXIS_DOWN, five, 5);
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.meetings, 8);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.least, 0);
    ck_assert_int_eq(totals.alternating, 0);
    ck_assert_int_eq(totals.open, 0);
    ck_assert_int_eq(totals.other_way, 2);
    ck_assert_int_eq(totals.proven, 1);
    ck_assert_int_gt(totals.work, 0);
    /* Example: a row of three patches has two, both to the right, and for every other row to the left. */
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 6);
    for (size_t k = 0; k < 2; k++) {
        ck_assert_int_eq(seams[k].node, row);
        ck_assert_int_eq(seams[k].seam, (int64_t)k);
        ck_assert_int_eq(seams[k].press, MUSLIN_PRESS_RIGHT);
        ck_assert_int_eq(seams[k].towards, 2);
        ck_assert_int_eq(seams[k].as_shown, 3);
        ck_assert_int_eq(seams[k].other_way, 2);
        ck_assert_int_eq(seams[k].other, MUSLIN_OTHER_WAY_TURNED); /* end for end it looks the same */
        ck_assert_int_eq(seams[k].turn, 2);
        ck_assert_int_eq(seams[k].preferred, 0);
        ck_assert_int_eq(seams[k].from_x, (int64_t)(k + 1) * A_STRIP);
        ck_assert_int_eq(seams[k].to_x, (int64_t)(k + 1) * A_STRIP);
        ck_assert_int_eq(seams[k].from_y, 0);
        ck_assert_int_eq(seams[k].to_y, A_STRIP);
    }
    ck_assert_int_eq(seams[2].node, top);
    ck_assert_int_eq(seams[2].press, MUSLIN_PRESS_DOWN);
    ck_assert_int_eq(seams[2].other, MUSLIN_OTHER_WAY_NONE);
    free(seams);
    /* Example: a top of five equal rows: 0, 1, 0, 1, 0. */
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_uint_eq(n, 5);
    for (size_t k = 0; k < n; k++) {
        ck_assert_int_eq(children[k].node, top);
        ck_assert_int_eq(children[k].child, row);
        ck_assert_int_eq(children[k].place, (int64_t)k);
        ck_assert_int_eq(children[k].other_way, (int64_t)(k % 2));
    }
    free(children);
    /* Example: muslin_pressing_free(pressing). */
    muslin_pressing_free(plan);
    muslin_pressing_free(NULL);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(nine_patches_nest_everywhere)
{
    /* Example: 3 x 3 nine-patches: 64 meetings, four within each block, two along every edge between two of them and
     * one wherever four come together; no exception. */
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const struct muslin_pressing_total totals = totals_pressed(nine.s.quilt, repeat_of(nine.s.quilt, nine.block, 3, 3));
    ck_assert_int_eq(totals.meetings, 9 * 4 + 12 * 2 + 4);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.proven, 1);
    /* Example: none in a straight setting of equal blocks. */
    struct muslin_solution *solution = solved(nine.s.quilt, repeat_of(nine.s.quilt, nine.block, 4, 5));
    struct muslin_pressing *plan = pressed(solution);
    size_t n = 99;
    ck_ok(muslin_pressing_exceptions(plan, NULL, sizeof(struct muslin_pressing_exception), 0, &n, NULL));
    ck_assert_uint_eq(n, 0);
    put_away(plan, solution);
    /* Turned by quarters in turn, the seams of equal edges still can be told apart. */
    const int32_t turns[] = { 0, 1, 1, 0 };
    const struct muslin_pressing_total turned =
        totals_pressed(nine.s.quilt, turned_repeat_of(nine.s.quilt, nine.block, 3, 3, turns, 2, 2));
    ck_assert_int_eq(turned.meetings, totals.meetings);
    ck_assert_int_eq(turned.exceptions, 0);
    end_sewing(&nine.s);
}
END_TEST

/* Three strips each, by turns upright and level: no strip's seam ends where another's does, so only corners meet. */
START_TEST(rails_meet_at_the_corners_of_blocks_alone)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id strip = patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 3 * A_STRIP));
    const muslin_id three[] = { strip, strip, strip };
    const int32_t turns[] = { 0, 1, 1, 0 };
    const muslin_id rail = join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id top = turned_repeat_of(s.quilt, rail, 4, 3, turns, 2, 2);
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, top);
    ck_assert_int_eq(totals.meetings, 3 * 2);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.other_way, 0);
    end_sewing(&s);
}
END_TEST

/* A long row is pressed in turn over its whole length, whether or not it says so place by place. */
START_TEST(places_two_repeats_apart_are_alike_in_long_joins)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id row = plain_row(&s);
    const muslin_id turned = turn_of(s.quilt, row, 2);
    const muslin_id sash = patch_of(s.quilt, s.white, fixed_of(s.quilt, 3 * A_STRIP), s.two);
    muslin_id rows[MANY_ROWS];
    for (int i = 0; i < MANY_ROWS; i++)
        rows[i] = i % 2 == 0 ? row : turned;
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, MANY_ROWS));
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.meetings, (MANY_ROWS - 1) * 2);
    ck_assert_int_eq(totals.exceptions, 0);
    size_t n;
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_uint_eq(n, MANY_ROWS + 1); /* and the turn's own child */
    for (size_t k = 1; k + 4 < n; k++)
        ck_assert_int_eq(children[k].other_way, children[k + 4].other_way);
    free(children);
    put_away(plan, solution);
    /* Another row in the middle, and nothing repeats. */
    rows[MANY_ROWS / 2] = sash;
    const struct muslin_pressing_total apart =
        totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, MANY_ROWS));
    ck_assert_int_eq(apart.meetings, (MANY_ROWS - 3) * 2);
    ck_assert_int_eq(apart.exceptions, 0);
    end_sewing(&s);
}
END_TEST

/* So many rows of two squares, all held to the left, so that nothing nests: the first of every few of another fabric.
 * Tells at how many seams exceptions are told, and how many there are. */
static size_t told_of_rows(int64_t rows, int64_t repeat, int64_t *in_all)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id kinds[2];
    muslin_id *all = calloc((size_t)rows, sizeof *all);
    spec.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
    spec.press = MUSLIN_SEAM_PRESS_TO_FIRST;
    for (int i = 0; i < 2; i++) {
        const muslin_id squares[] = { nine.dark, i == 0 ? nine.light : nine.dark };
        ck_ok(muslin_quilt_join(nine.s.quilt, &spec, squares, 2, &kinds[i], NULL));
    }
    for (int64_t i = 0; i < rows; i++)
        all[i] = kinds[i % repeat == 0];
    struct muslin_solution *solution =
        solved(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, all, (size_t)rows));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_exception *told = exceptions_of(plan, &n);
    *in_all = 0;
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(told[i].seam, (int64_t)i);
        *in_all += told[i].count;
    }
    free(told);
    free(all);
    put_away(plan, solution);
    end_sewing(&nine.s);
    return n;
}

/* In joins of more than 64 children that repeat after 32 or fewer: once for two repeats. */
START_TEST(exceptions_of_long_joins_are_told_at_the_first_two_repeats)
{
    static const struct {
        int64_t rows;
        int64_t repeat;
        size_t told;
    } cases[] = { { 64, 1, 63 },   { 65, 1, 2 },     { 66, 1, 2 },     { 64, 3, 63 },    { 65, 3, 6 },
                  { 130, 32, 64 }, { 130, 33, 129 }, { 130, 31, 62 }, { 70, 69, 69 } };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        int64_t in_all = 0;
        ck_assert_uint_eq(told_of_rows(cases[i].rows, cases[i].repeat, &in_all), cases[i].told);
        ck_assert_int_eq(in_all, cases[i].rows - 1);
    }
}
END_TEST

/* ---- joins that ask ---------------------------------------------------------------------------------------------- */

START_TEST(joins_that_ask_are_pressed_so_and_what_then_does_not_nest_is_told)
{
    struct nine nine;
    begin_in_order(&nine, MUSLIN_SEAM_PRESS_TO_FIRST, MUSLIN_SEAM_PRESS_TO_FIRST);
    struct muslin_solution *solution = solved(nine.s.quilt, nine.block);
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.exceptions, 4);
    ck_assert_int_eq(totals.least, 4);
    ck_assert_int_eq(totals.alternating, 4);
    ck_assert_int_eq(totals.other_way, 0);
    size_t n;
    struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
    ck_assert_uint_eq(n, 4);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].node, nine.block);
        ck_assert_int_eq(rows[i].seam, (int64_t)(i / 2));
        ck_assert_int_eq(rows[i].x, (int64_t)(1 + i % 2) * A_STRIP);
        ck_assert_int_eq(rows[i].y, (int64_t)(2 - i / 2) * A_STRIP);
        ck_assert_int_eq(rows[i].first_node, i < 2 ? nine.outer : nine.inner);
        ck_assert_int_eq(rows[i].second_node, i < 2 ? nine.inner : nine.outer);
        ck_assert_int_eq(rows[i].first_seam, (int64_t)(i % 2));
        ck_assert_int_eq(rows[i].second_seam, (int64_t)(i % 2));
        ck_assert_int_eq(rows[i].count, 1);
    }
    free(rows);
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    for (size_t i = 0; i < 4; i++)
        ck_assert_int_eq(seams[i].press, MUSLIN_PRESS_LEFT);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
    begin_in_order(&nine, MUSLIN_SEAM_PRESS_TO_LAST, MUSLIN_SEAM_PRESS_FREE);
    solution = solved(nine.s.quilt, repeat_of(nine.s.quilt, nine.block, 2, 1));
    plan = pressed(solution);
    ck_assert_int_eq(totals_of(plan).exceptions, 2); /* between the blocks: neither can be taken the other way */
    ck_assert_int_eq(totals_of(plan).proven, 1);
    seams = seams_of(plan, &n);
    ck_assert_int_eq(seams[0].press, MUSLIN_PRESS_RIGHT);
    ck_assert_int_eq(seams[0].other_way, 0);
    ck_assert_int_eq(seams[2].press, MUSLIN_PRESS_LEFT);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

START_TEST(seams_pressed_open_meet_nothing)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_OPEN);
    const muslin_id rows[] = { nine.block, nine.block };
    struct muslin_solution *solution = solved(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.open, 8);
    ck_assert_int_eq(totals.meetings, 2); /* where the blocks meet */
    ck_assert_int_eq(totals.exceptions, 0);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(seams[2].node, nine.inner);
    ck_assert_int_eq(seams[2].press, MUSLIN_PRESS_OPEN);
    ck_assert_int_eq(seams[2].towards, 0);
    ck_assert_int_eq(seams[2].as_shown, 2);
    ck_assert_int_eq(seams[2].other_way, 0);
    ck_assert_int_eq(seams[2].other, MUSLIN_OTHER_WAY_NONE);
    ck_assert_int_eq(seams[2].preferred, 0);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* ---- what is preferred ------------------------------------------------------------------------------------------- */

START_TEST(seams_go_towards_the_darker_side_where_they_may)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    for (int32_t prefer = 0; prefer <= 1; prefer++) {
        struct muslin_solution *solution = solved(nine.s.quilt, nine.inner);
        struct muslin_pressing *plan = pressed_with(solution, 1000, prefer);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_uint_eq(n, 2);
        ck_assert_int_eq(seams[0].towards, 2);
        ck_assert_int_eq(seams[1].towards, prefer ? 1 : 2);
        ck_assert_int_eq(seams[0].preferred, prefer);
        ck_assert_int_eq(seams[1].preferred, prefer);
        free(seams);
        put_away(plan, solution);
    }
    /* The dark squares of a nine-patch lie where all its seams nest. */
    struct muslin_solution *solution = solved(nine.s.quilt, nine.block);
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    for (size_t i = 0; i < 4; i++)
        ck_assert_int_eq(seams[i].preferred, 1);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(totals_of(plan).other_way, 0);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* Strips round a square, mitred: a seam between both is pressed to the strip where that is darker, else to the square.
 * Its first piece is the left or upper one: the strip at the left and above. */
START_TEST(seams_round_a_set_in_square_go_towards_the_darker_side)
{
    const int32_t outwards[] = { MUSLIN_PRESS_LEFT, MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_UP, MUSLIN_PRESS_DOWN };
    const int32_t inwards[] = { MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_LEFT, MUSLIN_PRESS_DOWN, MUSLIN_PRESS_UP };
    for (int dark = 0; dark <= 1; dark++) {
        struct nine nine;
        begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
        struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
        muslin_id frame = 0;
        size_t count = 0;
        spec.centre = nine.light;
        spec.left_width = spec.right_width = spec.top_width = spec.bottom_width = nine.s.two;
        spec.left_fabric = spec.right_fabric = spec.top_fabric = spec.bottom_fabric =
            fabric_so_dark(nine.s.quilt, dark ? 80 : 10);
        ck_ok(muslin_quilt_set_in(nine.s.quilt, &spec, &frame, NULL));
        struct muslin_solution *solution = solved(nine.s.quilt, frame);
        struct muslin_pressing *plan = pressed(solution);
        struct muslin_pressing_seam *seams = seams_of(plan, &count);
        ck_assert_uint_eq(count, 8);
        for (int side = 0; side < 4; side++) {
            ck_assert_int_eq(seams[side].press, dark ? outwards[side] : inwards[side]);
            ck_assert_int_eq(seams[side].towards,
                             dark == (side % 2 == 0) ? MUSLIN_TOWARDS_FIRST : MUSLIN_TOWARDS_SECOND);
        }
        free(seams);
        put_away(plan, solution);
        end_sewing(&nine.s);
    }
}
END_TEST

/* A turned patch and a trimmed one are as dark as the patch; against what is preferred where nesting comes first. */
START_TEST(nesting_comes_before_the_darker_side)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id trimmed = 0;
    const muslin_id square = patch_of(quilt, fabric_so_dark(quilt, 20), nine.s.two, fixed_of(quilt, A_STRIP + 100));
    trim.top = fixed_of(quilt, 100);
    ck_ok(muslin_quilt_trim(quilt, square, &trim, &trimmed, NULL));
    const muslin_id first[] = { nine.dark, trimmed, turn_of(quilt, nine.dark, 1) };
    const muslin_id rows[] = { nine.outer, join_of(quilt, MUSLIN_AXIS_ACROSS, first, 3) };
    struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(seams[0].preferred + seams[2].preferred, 3);
    ck_assert_int_eq(seams[1].preferred + seams[3].preferred, 3);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* A row in two copies, one each way: shown is the one that goes to the dark. The first pair of rows is the heavier and
 * has its way first. */
START_TEST(of_equally_many_copies_the_preferred_way_is_shown)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    const muslin_id other = patch_of(quilt, fabric_so_dark(quilt, 70), nine.s.two, nine.s.two);
    const muslin_id sash = patch_of(quilt, nine.s.blue, fixed_of(quilt, 2 * A_STRIP), nine.s.two);
    const muslin_id first[] = { nine.dark, nine.light };
    const muslin_id second[] = { other, nine.light };
    const muslin_id many = join_of(quilt, MUSLIN_AXIS_ACROSS, first, 2);
    const muslin_id few = join_of(quilt, MUSLIN_AXIS_ACROSS, second, 2);
    const muslin_id rows[] = { many, sash, many, sash, many, few, few };
    struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, rows, 7));
    struct muslin_pressing *plan = pressed(solution);
    ck_assert_int_eq(totals_of(plan).meetings, 2);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(totals_of(plan).other_way, 1);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    for (size_t i = 0; i < 2; i++) {
        ck_assert_int_eq(seams[i].towards, 1);
        ck_assert_int_eq(seams[i].preferred, 1);
        ck_assert_int_eq(seams[i].as_shown, i == 0 ? 3 : 1);
        ck_assert_int_eq(seams[i].other_way, (int64_t)i);
    }
    free(seams);
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_uint_eq(n, 5);
    for (size_t i = 0; i < n; i++)
        ck_assert_int_eq(children[i].other_way, i == 3);
    free(children);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* A row of four squares over itself, below one that is held to the left: it is pressed to the right there and to the
 * left below, and being labelled it is not turned. Shown is the way that more of its three seams prefer. */
START_TEST(of_both_ways_the_one_that_more_seams_prefer_is_shown)
{
    for (int pattern = 0; pattern < 8; pattern++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
        const muslin_id plain = patch_of(s.quilt, s.white, s.two, s.two);
        const muslin_id plains[] = { plain, plain, plain, plain };
        muslin_id squares[4];
        muslin_id held = 0;
        muslin_id row = 0;
        int32_t darkness = 50;
        int left = 0;
        for (int i = 0; i < 4; i++) {
            squares[i] = patch_of(s.quilt, fabric_so_dark(s.quilt, darkness), s.two, s.two);
            darkness += (pattern >> i & 1) != 0 ? -10 : 10;
            left += i < 3 && (pattern >> i & 1) != 0;
        }
        spec.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
        ck_ok(muslin_quilt_join(s.quilt, &spec, squares, 4, &row, NULL));
        spec.press = MUSLIN_SEAM_PRESS_TO_FIRST;
        ck_ok(muslin_quilt_join(s.quilt, &spec, plains, 4, &held, NULL));
        const muslin_id rows[] = { held, row, row };
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 3));
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_int_eq(totals_of(plan).exceptions, 0);
        ck_assert_uint_eq(n, 3 + 3 + 2);
        for (size_t k = 0; k < n; k++) {
            if (seams[k].node != row)
                continue;
            const int is_left = (pattern >> seams[k].seam & 1) != 0;
            ck_assert_int_eq(seams[k].press, left >= 2 ? MUSLIN_PRESS_LEFT : MUSLIN_PRESS_RIGHT);
            ck_assert_int_eq(seams[k].preferred,
                             is_left == (left >= 2) ? MUSLIN_PREFERRED_KEPT : MUSLIN_PREFERRED_AGAINST);
            ck_assert_int_eq(seams[k].other_way, 1);
            ck_assert_int_eq(seams[k].other, MUSLIN_OTHER_WAY_PRESSED);
        }
        free(seams);
        put_away(plan, solution);
        end_sewing(&s);
    }
}
END_TEST

/* ---- blocks that are turned -------------------------------------------------------------------------------------- */

/* By hand, the seams of a block being a and b of the first and third row, c and d of the second, and the long ones e
 * (upper) and f. Within the block a and c, b and d go opposite ways. A quarter clockwise brings the left edge to the
 * top, f's end to a's and e's to b's, up becoming right and down left. There they are to lie opposite to what was
 * pressed there: where a goes left, f goes up; where b goes right, e goes down. It brings the top to the right edge,
 * a's end to e's and b's to f's, left becoming up: where a goes left, e goes down. So e and f go opposite ways, a and
 * b, too, and c and d. */
START_TEST(nine_patches_are_all_pressed_alike_and_every_other_one_is_turned)
{
    /* Example: of 3 x 3 nine-patches four are turned by a quarter, all pressed alike: the seams of the first and third
     * row away from the middle of the block, those of the second row and the long ones towards it. */
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const muslin_id three[] = { nine.block, nine.block, nine.block };
    const muslin_id row = join_of(nine.s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id rows[] = { row, row, row };
    const muslin_id top = join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    struct muslin_solution *solution = solved(nine.s.quilt, top);
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    const int32_t presses[] = { MUSLIN_PRESS_LEFT, MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_RIGHT, MUSLIN_PRESS_LEFT,
                                MUSLIN_PRESS_DOWN, MUSLIN_PRESS_UP };
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_uint_eq(n, 10);
    for (size_t i = 0; i < 6; i++) {
        ck_assert_int_eq(seams[i].press, presses[i]);
        ck_assert_int_eq(seams[i].as_shown, i < 2 ? 18 : i < 4 ? 9 : 5);
        ck_assert_int_eq(seams[i].other_way, i < 4 ? 0 : 4); /* turned as a whole, nothing in it is the other way */
        ck_assert_int_eq(seams[i].other, i < 4 ? MUSLIN_OTHER_WAY_NONE : MUSLIN_OTHER_WAY_TURNED);
        ck_assert_int_eq(seams[i].turn, i < 4 ? 0 : 1);
        ck_assert_int_eq(seams[i].preferred, i < 4 ? 1 : 0);
    }
    /* The middle row cannot be turned itself: by a half, a would come to lie at b. */
    ck_assert_int_eq(seams[6].node, row);
    ck_assert_int_eq(seams[6].other, MUSLIN_OTHER_WAY_PRESSED);
    ck_assert_int_eq(seams[6].other_way, 1);
    ck_assert_int_eq(totals_of(plan).copies_turned, 4);
    ck_assert_int_eq(totals_of(plan).other_way, 5);
    free(seams);
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_uint_eq(n, 3 + 3 + 3);
    for (size_t i = 3; i < 6; i++) {
        ck_assert_int_eq(children[i].child, nine.block);
        ck_assert_int_eq(children[i].other_way, i == 4);
        ck_assert_int_eq(children[i].turn, 1);
    }
    for (size_t i = 6; i < 9; i++) {
        ck_assert_int_eq(children[i].child, row);
        ck_assert_int_eq(children[i].other_way, i == 7);
        ck_assert_int_eq(children[i].turn, 0);
    }
    free(children);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* How the other copies of a block in rows of two by two come about: a row of three squares of a print, whatever it is.
 * Asked for or not, it can be turned end for end unless one would see it. */
static struct muslin_pressing_total of_print(int32_t print, uint32_t flags, int32_t press, int32_t turned)
{
    struct sewn s;
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id cloth = 0;
    muslin_id row = 0;
    begin_sewing(&s);
    spec.print = print;
    ck_ok(muslin_quilt_fabric(s.quilt, &spec, "cloth", 5, &cloth, NULL));
    const muslin_id square = patch_of(s.quilt, cloth, s.two, s.two);
    const muslin_id three[] = { square, turned < 0 ? mirror_of(s.quilt, square) : turn_of(s.quilt, square, turned),
                                square };
    join.flags = flags;
    join.press = press;
    ck_ok(muslin_quilt_join(s.quilt, &join, three, 3, &row, NULL));
    const muslin_id two[] = { row, row };
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, two, 2));
    end_sewing(&s);
    return totals;
}

START_TEST(prints_and_labels_forbid_to_turn_what_looks_otherwise)
{
    static const int32_t prints[] = { MUSLIN_PRINT_NONE, MUSLIN_PRINT_TWO_WAY, MUSLIN_PRINT_ONE_WAY,
                                      MUSLIN_PRINT_STRIPE_ALONG, MUSLIN_PRINT_STRIPE_ACROSS };
    for (size_t i = 0; i < COUNT_OF(prints); i++)
        for (int32_t turned = -1; turned < 4; turned++)
            for (uint32_t flags = 0; flags <= MUSLIN_QUILT_JOIN_KEEPS_ORDER; flags++) {
                const int may = flags == 0 && prints[i] != MUSLIN_PRINT_ONE_WAY;
                const struct muslin_pressing_total is_free = of_print(prints[i], flags, MUSLIN_SEAM_PRESS_FREE, turned);
                const struct muslin_pressing_total asked =
                    of_print(prints[i], flags, MUSLIN_SEAM_PRESS_TO_LAST, turned);
                ck_assert_int_eq(is_free.exceptions, 0);
                ck_assert_int_eq(is_free.other_way, 1);
                ck_assert_int_eq(is_free.copies_turned, may);
                ck_assert_int_eq(asked.exceptions, may ? 0 : 2);
                ck_assert_int_eq(asked.copies_turned, may);
                ck_assert_int_eq(asked.proven, 1);
            }
}
END_TEST

/* A square of a print, mirrored for 4 and more, then turned by quarters. */
static muslin_id lying(struct sewn *s, muslin_id cloth, int32_t how)
{
    const muslin_id square = patch_of(s->quilt, cloth, s->two, s->two);
    const muslin_id mirrored = how < 4 ? square : mirror_of(s->quilt, square);
    return how % 4 == 0 ? mirrored : turn_of(s->quilt, mirrored, how % 4);
}

static muslin_id cloth_of(struct sewn *s, int32_t print)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    muslin_id cloth = 0;
    spec.print = print;
    ck_ok(muslin_quilt_fabric(s->quilt, &spec, "cloth", 5, &cloth, NULL));
    return cloth;
}

/* Prints, and after how many quarters each looks the same. */
static const struct {
    int32_t print;
    int32_t same_after;
} prints_lying[] = { { MUSLIN_PRINT_NONE, 1 },
                     { MUSLIN_PRINT_TWO_WAY, 2 },
                     { MUSLIN_PRINT_STRIPE_ALONG, 2 },
                     { MUSLIN_PRINT_STRIPE_ACROSS, 2 },
                     { MUSLIN_PRINT_ONE_WAY, 4 } };

/* Two squares side by side, and the same below: the lower two are turned end for end where each then lies as the other
 * did, so far as one sees it. */
START_TEST(a_print_that_comes_to_lie_as_the_other_did_is_turned)
{
    for (size_t i = 0; i < COUNT_OF(prints_lying); i++)
        for (int32_t left = 0; left < 8; left++)
            for (int32_t right = 0; right < 8; right++) {
                struct sewn s;
                begin_sewing(&s);
                const muslin_id cloth = cloth_of(&s, prints_lying[i].print);
                const muslin_id two[] = { lying(&s, cloth, left), lying(&s, cloth, right) };
                const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
                const muslin_id rows[] = { row, row };
                const struct muslin_pressing_total totals =
                    totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
                const int32_t same = prints_lying[i].same_after;
                const int is_same = same == 1 || ((left + 2 - right) % same == 0 && left / 4 == right / 4);
                ck_assert_int_eq(totals.other_way, 1);
                ck_assert_int_eq(totals.copies_turned, is_same);
                end_sewing(&s);
            }
}
END_TEST

/* A nine-patch with a plain middle, the print of its other squares turned by so many quarters more from one corner to
 * the next and from one side to the next. */
static muslin_id ring_of_prints(struct sewn *s, int32_t print, int32_t more)
{
    static const int32_t quarters[] = { 0, 0, 1, 3, 0, 1, 3, 2, 2 };
    const muslin_id cloth = cloth_of(s, print);
    muslin_id squares[9];
    muslin_id block = 0;
    for (int i = 0; i < 9; i++)
        squares[i] = i == 4 ? patch_of(s->quilt, s->white, s->two, s->two) : lying(s, cloth, quarters[i] * more % 4);
    ck_ok(muslin_quilt_grid(s->quilt, 3, 3, squares, 9, &block, NULL));
    return block;
}

/* Two such blocks, the second one the other way: turned by a quarter where the print turns with the squares or one does
 * not see it, else by a half where it then lies the same, else pressed so. */
START_TEST(blocks_are_turned_by_as_much_as_their_prints_allow)
{
    for (size_t i = 0; i < COUNT_OF(prints_lying); i++)
        for (int32_t more = 0; more < 4; more++) {
            struct sewn s;
            begin_sewing(&s);
            const muslin_id block = ring_of_prints(&s, prints_lying[i].print, more);
            const muslin_id two[] = { block, block };
            struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
            struct muslin_pressing *plan = pressed(solution);
            const int32_t same = prints_lying[i].same_after;
            const int32_t turn = (more - 1) % same == 0 ? 1 : 2 * (more - 1) % same == 0 ? 2 : 0;
            size_t n;
            struct muslin_pressing_child *children = children_of(plan, &n);
            ck_assert_int_eq(totals_of(plan).exceptions, 0);
            ck_assert_int_eq(children[n - 1].child, block);
            ck_assert_int_eq(children[n - 1].other_way, 1);
            ck_assert_int_eq(children[n - 1].turn, turn);
            free(children);
            put_away(plan, solution);
            end_sewing(&s);
        }
}
END_TEST

/* Two rows of two equal squares with these allowances at the top and bottom of the first and of the second one. */
static int64_t turned_of_edges(const muslin_len *first, const muslin_len *second)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id two[2];
    for (int i = 0; i < 2; i++) {
        struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
        spec.fabric = s.blue;
        spec.width = s.two;
        spec.height = s.two;
        spec.top = fixed_of(s.quilt, (i == 0 ? first : second)[0]);
        spec.bottom = fixed_of(s.quilt, (i == 0 ? first : second)[1]);
        ck_ok(muslin_quilt_patch(s.quilt, &spec, &two[i], NULL));
    }
    const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    const muslin_id rows[] = { row, row };
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    ck_assert_int_eq(totals.other_way, 1);
    end_sewing(&s);
    return totals.copies_turned;
}

/* Above and below as much, however little, and along an edge the same. */
START_TEST(edges_that_are_turned_have_the_same_allowances)
{
    const muslin_len narrow[] = { 2032, 2032 };
    const muslin_len wide[] = { 4064, 4064 };
    const muslin_len uneven[] = { 4064, 2032 };
    const muslin_len none[] = { 0, 0 };
    ck_assert_int_eq(turned_of_edges(narrow, narrow), 1);
    ck_assert_int_eq(turned_of_edges(wide, wide), 1);
    ck_assert_int_eq(turned_of_edges(none, none), 1);
    ck_assert_int_eq(turned_of_edges(uneven, uneven), 0);
    ck_assert_int_eq(turned_of_edges(narrow, uneven), 0);
    ck_assert_int_eq(turned_of_edges(narrow, wide), 0);
}
END_TEST

/* By how many quarters nine-patches are turned, of two side by side, each trimmed by so much at its sides. */
static int32_t turn_of_trimmed(muslin_len by)
{
    struct nine nine;
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    trim.left = trim.right = fixed_of(nine.s.quilt, by);
    muslin_id trimmed = 0;
    ck_ok(muslin_quilt_trim(nine.s.quilt, nine.block, &trim, &trimmed, NULL));
    const muslin_id two[] = { trimmed, trimmed };
    struct muslin_solution *solution = solved(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(seams[4].node, nine.block);
    ck_assert_int_eq(seams[4].other_way, 1);
    const int32_t turn = seams[4].turn;
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
    return turn;
}

/* Long seams are left where the ends of short ones are cut away: only what is as long may take their place. */
START_TEST(what_is_trimmed_later_is_turned_when_its_seams_go_as_far_in)
{
    ck_assert_int_eq(turn_of_trimmed(1000), 2);
    ck_assert_int_eq(turn_of_trimmed(A_STRIP + 1000), 2);
}
END_TEST

/* Two squares and two, in turn dark and light: by a half turn the same. The upper seam is asked for, the lower one goes
 * the opposite way, to nest with it. Turned, the long seam would lie the other way, to nest with the next block's; but
 * then the short ones would have to go the same way, in both blocks. None would be if turning took nothing; one
 * exception is the fewest, and when all that can be turned was looked through, the plan says so. */
static muslin_id two_held_blocks(struct nine *nine)
{
    struct muslin_quilt *quilt = nine->s.quilt;
    const muslin_id first[] = { nine->dark, nine->light };
    const muslin_id second[] = { nine->light, nine->dark };
    const muslin_id rows[] = { join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, first, 2),
                               join_of(quilt, MUSLIN_AXIS_ACROSS, second, 2) };
    const muslin_id block = join_of(quilt, MUSLIN_AXIS_DOWN, rows, 2);
    const muslin_id blocks[] = { block, block };
    return join_of(quilt, MUSLIN_AXIS_ACROSS, blocks, 2);
}

START_TEST(a_plan_that_turns_what_is_asked_for_is_proven_only_when_it_is)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const muslin_id top = two_held_blocks(&nine);
    struct muslin_solution *solution = solved(nine.s.quilt, top);
    for (int64_t work = 0; work <= 100000; work += 100000) {
        struct muslin_pressing *plan = pressed_with(solution, work, 1);
        const struct muslin_pressing_total totals = totals_of(plan);
        ck_assert_int_eq(totals.meetings, 3);
        ck_assert_int_eq(totals.exceptions, 1);
        ck_assert_int_eq(totals.least, work > 0);
        ck_assert_int_eq(totals.proven, work > 0);
        ck_assert_int_eq(totals.copies_turned, 0);
        muslin_pressing_free(plan);
    }
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* Two rows of two equal squares below each other, all pressed to the right, and the seam between them open. */
static muslin_id open_block(struct muslin_quilt *quilt, muslin_id square)
{
    const muslin_id squares[] = { square, square };
    const muslin_id row = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, squares, 2);
    const muslin_id rows[] = { row, row };
    return join_pressed(quilt, MUSLIN_AXIS_DOWN, MUSLIN_SEAM_PRESS_OPEN, rows, 2);
}

/* Two such blocks beside each other, their seam to the right, over two of another fabric. In every block one of the
 * rows is turned end for end, so that both nest; a block is taken the other way by turning its other row instead. It
 * cannot be turned itself: its lower row, opposite to the upper one, would come to lie as the upper one did. One pair
 * is to be turned, so that both long seams nest: its blocks are taken opposite ways, then all its ends are the other
 * way. Those of the other pair are taken so that they nest with them. So none of the seven meetings is an exception,
 * also where there is no work to look for it. */
static muslin_id open_pairs(struct nine *nine)
{
    struct muslin_quilt *quilt = nine->s.quilt;
    const muslin_id squares[] = { nine->dark, nine->light };
    muslin_id pairs[2];
    for (int i = 0; i < 2; i++) {
        const muslin_id block = open_block(quilt, squares[i]);
        const muslin_id two[] = { block, block };
        pairs[i] = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, two, 2);
    }
    return join_of(quilt, MUSLIN_AXIS_DOWN, pairs, 2);
}

START_TEST(what_can_be_pressed_the_other_way_need_not_be_turned)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_solution *solution = solved(nine.s.quilt, open_pairs(&nine));
    for (int64_t work = 0; work <= 100000; work += 100000) {
        struct muslin_pressing *plan = pressed_with(solution, work, 1);
        ck_assert_int_eq(totals_of(plan).meetings, 4 + 3);
        ck_assert_int_eq(totals_of(plan).exceptions, 0);
        muslin_pressing_free(plan);
    }
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* Both beside each other, apart: the pairs, one of which is to be turned, and the blocks that had better not be.
 * Neither all that can be turned nor nothing of it is best: one exception is. */
START_TEST(what_is_turned_is_chosen_one_by_one)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    const muslin_id all[] = { open_pairs(&nine),
                              patch_of(quilt, nine.s.white, fixed_of(quilt, 4 * A_STRIP), nine.s.two),
                              two_held_blocks(&nine) };
    const struct muslin_pressing_total totals = totals_pressed(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, all, 3));
    ck_assert_int_eq(totals.meetings, 7 + 3);
    ck_assert_int_eq(totals.exceptions, 1);
    ck_assert_int_eq(totals.proven, 1);
    end_sewing(&nine.s);
}
END_TEST

/* Nine-patches with every seam asked for: the long ones upwards, in the first and third row to the left, in the second
 * to the right. By a half turn they look the same, and all ends are the other way. Two by two of them, the second row
 * asked for as well, to the left. Were no block turned, all twelve ends on both sides of the seams between them would
 * lie the same way. By hand: the first row's right block and the second row's left one are turned by a half, and the
 * first row's seam goes to the right; then all meetings nest. */
START_TEST(blocks_that_are_asked_for_are_turned_one_by_one)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    const muslin_id first[] = { nine.dark, nine.light, nine.dark };
    const muslin_id second[] = { nine.light, nine.dark, nine.light };
    const muslin_id odd = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, first, 3);
    const muslin_id rows[] = { odd, join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, second, 3),
                               odd };
    const muslin_id block = join_pressed(quilt, MUSLIN_AXIS_DOWN, MUSLIN_SEAM_PRESS_TO_FIRST, rows, 3);
    const muslin_id blocks[] = { block, block };
    const muslin_id down[] = { join_of(quilt, MUSLIN_AXIS_ACROSS, blocks, 2),
                               join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, blocks, 2) };
    const struct muslin_pressing_total totals = totals_pressed(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, down, 2));
    ck_assert_int_eq(totals.meetings, 4 * 4 + 2 * 2 + 4 + 1);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.proven, 1);
    ck_assert_int_eq(totals.copies_turned, 2);
    end_sewing(&nine.s);
}
END_TEST

/* A low dark piece over a high light one, beside it the high one over the low one: the same by a half turn, when the
 * seam of either column comes to lie where the other's was. Two such blocks with a piece between them in a row that
 * keeps its order, and the row once more below it: that one is pressed the other way, and the blocks in it are turned.
 * For that both columns are pressed alike, one of them not to the dark. */
START_TEST(blocks_of_a_row_that_is_pressed_the_other_way_are_turned)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id row = 0;
    const muslin_id high = patch_of(quilt, fabric_so_dark(quilt, 20), nine.s.two, fixed_of(quilt, 2 * A_STRIP));
    const muslin_id left[] = { nine.dark, high };
    const muslin_id right[] = { high, nine.dark };
    const muslin_id columns[] = { join_of(quilt, MUSLIN_AXIS_DOWN, left, 2),
                                  join_of(quilt, MUSLIN_AXIS_DOWN, right, 2) };
    const muslin_id block = join_of(quilt, MUSLIN_AXIS_ACROSS, columns, 2);
    const muslin_id pieces[] = {
        block, patch_of(quilt, nine.s.white, nine.s.two, fixed_of(quilt, 3 * A_STRIP)), block
    };
    spec.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
    ck_ok(muslin_quilt_join(quilt, &spec, pieces, 3, &row, NULL));
    const muslin_id rows[] = { row, row };
    struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).meetings, 2 + 2);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(totals_of(plan).other_way, 1 + 2);
    ck_assert_int_eq(totals_of(plan).copies_turned, 2);
    ck_assert_int_eq(seams[2].node, block);
    ck_assert_int_eq(seams[2].turn, 2);
    ck_assert_int_eq(seams[0].press, seams[1].press);
    ck_assert_int_eq(seams[0].preferred + seams[1].preferred,
                     MUSLIN_PREFERRED_KEPT + MUSLIN_PREFERRED_AGAINST);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* A light piece over a dark one, a high piece, a dark one over a light one: the same by a half turn. The first
 * column's seam is asked for, whichever way; of two blocks below each other, whose upright seams meet, the second one
 * is turned, as the other column's seam goes where it must for that: opposite to the first one's, turned. */
START_TEST(what_is_asked_for_in_part_is_turned)
{
    for (int32_t press = MUSLIN_SEAM_PRESS_TO_FIRST; press <= MUSLIN_SEAM_PRESS_TO_LAST; press++) {
        struct nine nine;
        begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
        struct muslin_quilt *quilt = nine.s.quilt;
        const muslin_id two = fixed_of(quilt, 2 * A_STRIP);
        const muslin_id dark = patch_of(quilt, fabric_so_dark(quilt, 80), two, nine.s.two);
        const muslin_id light = patch_of(quilt, fabric_so_dark(quilt, 20), two, nine.s.two);
        const muslin_id left[] = { light, dark };
        const muslin_id right[] = { dark, light };
        const muslin_id columns[] = { join_pressed(quilt, MUSLIN_AXIS_DOWN, press, left, 2),
                                      patch_of(quilt, nine.s.white, nine.s.two, two),
                                      join_of(quilt, MUSLIN_AXIS_DOWN, right, 2) };
        const muslin_id block = join_of(quilt, MUSLIN_AXIS_ACROSS, columns, 3);
        const muslin_id blocks[] = { block, block };
        struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, blocks, 2));
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_int_eq(totals_of(plan).meetings, 2);
        ck_assert_int_eq(totals_of(plan).exceptions, 0);
        ck_assert_int_eq(totals_of(plan).copies_turned, 1);
        ck_assert_int_eq(seams[0].press, press == MUSLIN_SEAM_PRESS_TO_FIRST ? MUSLIN_PRESS_UP : MUSLIN_PRESS_DOWN);
        ck_assert_int_eq(seams[1].press, seams[0].press);
        free(seams);
        put_away(plan, solution);
        end_sewing(&nine.s);
    }
}
END_TEST

/* Three squares, a wide piece, three squares; all short seams are asked for, to the right, and the long ones pressed
 * open. One block below the other: the second one is turned by a half, or two seams meet two that lie alike. */
START_TEST(open_seams_are_told_when_they_are_turned)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    const muslin_id squares[] = { nine.dark, nine.light, nine.dark };
    const muslin_id row = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, squares, 3);
    const muslin_id wide = patch_of(quilt, nine.s.white, extent_of(quilt, row, MUSLIN_AXIS_ACROSS), nine.s.two);
    const muslin_id rows[] = { row, wide, row };
    const muslin_id block = join_pressed(quilt, MUSLIN_AXIS_DOWN, MUSLIN_SEAM_PRESS_OPEN, rows, 3);
    const muslin_id blocks[] = { block, block };
    struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_DOWN, blocks, 2));
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.meetings, 2);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.other_way, 1);
    ck_assert_int_eq(totals.copies_turned, 1);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 5);
    ck_assert_int_eq(seams[0].as_shown, 4);
    ck_assert_int_eq(seams[0].turn, 0);
    for (size_t i = 2; i < 4; i++) {
        ck_assert_int_eq(seams[i].node, block);
        ck_assert_int_eq(seams[i].press, MUSLIN_PRESS_OPEN);
        ck_assert_int_eq(seams[i].towards, 0);
        ck_assert_int_eq(seams[i].as_shown, 1);
        ck_assert_int_eq(seams[i].other_way, 1);
        ck_assert_int_eq(seams[i].other, MUSLIN_OTHER_WAY_TURNED);
        ck_assert_int_eq(seams[i].turn, 2);
    }
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* Three squares, two wider pieces, three squares: all edges look the same, and by a half turn so does the rest. */
START_TEST(what_is_inside_must_look_the_same_as_well)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id wide = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 3 * A_STRIP / 2), s.two);
    const muslin_id three[] = { square, square, square };
    const muslin_id two[] = { wide, wide };
    const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id rows[] = { row, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2), row };
    const muslin_id block = join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    const muslin_id blocks[] = { block, block };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, blocks, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).copies_turned, 1);
    ck_assert_int_eq(children[n - 1].child, block);
    ck_assert_int_eq(children[n - 1].turn, 2);
    free(children);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* A goose that flies down on the lower edge of a block, two slanted seams in its middle; and a snowball whose slanted
 * seams end as far from the top as the seam below it from the bottom: neither block is turned. */
START_TEST(slanted_seams_take_the_place_of_slanted_ones_alone)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id four = fixed_of(s.quilt, WHOLE_IN(4));
    const muslin_id wide = patch_of(s.quilt, s.blue, four, s.two);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s.blue, s.blue };
    muslin_id goose = 0;
    spec.kind = MUSLIN_UNIT_FLYING_GEESE;
    spec.method = MUSLIN_UNIT_METHOD_FLIPPED_CORNERS;
    spec.width = four;
    ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &goose, NULL));
    const muslin_id down[] = { wide, turn_of(s.quilt, goose, 2) };
    const muslin_id two[] = { join_of(s.quilt, MUSLIN_AXIS_DOWN, down, 2),
                              join_of(s.quilt, MUSLIN_AXIS_DOWN, down, 2) };
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.other_way, 2);
    ck_assert_int_eq(totals.copies_turned, 0);
    const muslin_len corner = 700;
    muslin_id ball = 0;
    spec.kind = MUSLIN_UNIT_SNOWBALL;
    spec.height = fixed_of(s.quilt, 3 * corner);
    spec.corner = fixed_of(s.quilt, corner);
    ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &ball, NULL));
    const muslin_id low[] = { ball, patch_of(s.quilt, s.blue, four, spec.corner) };
    const muslin_id both[] = { join_of(s.quilt, MUSLIN_AXIS_DOWN, low, 2), join_of(s.quilt, MUSLIN_AXIS_DOWN, low, 2) };
    const struct muslin_pressing_total balls = totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, both, 2));
    ck_assert_int_eq(balls.exceptions, 0);
    ck_assert_int_eq(balls.other_way, 2);
    ck_assert_int_eq(balls.copies_turned, 1); /* the ball, in the block that is pressed the other way */
    end_sewing(&s);
}
END_TEST

/* Two geese that fly apart, made by two methods, are a block that looks the same by a half turn. In the middle of its
 * top and of its bottom end two slanted seams at one place, so it is not turned: of two side by side, whose long seams
 * meet, one is pressed the other way. */
START_TEST(where_two_slanted_seams_end_at_one_place_nothing_is_turned)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s.blue, s.white };
    muslin_id goose = 0;
    muslin_id other = 0;
    spec.kind = MUSLIN_UNIT_FLYING_GEESE;
    spec.method = MUSLIN_UNIT_METHOD_FLIPPED_CORNERS;
    spec.width = fixed_of(s.quilt, 2 * A_STRIP);
    ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &goose, NULL));
    spec.method = MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME;
    ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &other, NULL));
    ck_assert_int_ne(goose, other);
    const muslin_id apart[] = { goose, turn_of(s.quilt, other, 2) };
    const muslin_id block = join_of(s.quilt, MUSLIN_AXIS_DOWN, apart, 2);
    const muslin_id two[] = { block, block };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(children[n - 1].child, block);
    ck_assert_int_eq(children[n - 1].other_way, 1);
    ck_assert_int_eq(children[n - 1].turn, 0);
    free(children);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Two rows of a dark and a light square in turn, asked for to the left and to the right, so that they nest; the long
 * seam upwards. By a half turn it looks the same, and its long seam lies the other way, but the short ones lie as
 * before. So no work is needed to know that where two of them meet, one meeting is an exception. */
START_TEST(what_can_never_be_turned_takes_no_search)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct muslin_quilt *quilt = nine.s.quilt;
    const muslin_id first[] = { nine.dark, nine.light };
    const muslin_id second[] = { nine.light, nine.dark };
    const muslin_id rows[] = { join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, first, 2),
                               join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, second, 2) };
    const muslin_id block = join_pressed(quilt, MUSLIN_AXIS_DOWN, MUSLIN_SEAM_PRESS_TO_FIRST, rows, 2);
    const muslin_id two[] = { block, block };
    struct muslin_solution *solution = solved(quilt, join_of(quilt, MUSLIN_AXIS_ACROSS, two, 2));
    struct muslin_pressing *plan = pressed_with(solution, 0, 1);
    ck_assert_int_eq(totals_of(plan).meetings, 3);
    ck_assert_int_eq(totals_of(plan).exceptions, 1);
    ck_assert_int_eq(totals_of(plan).proven, 1);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* The second of two rows is turned end for end, when it has no more than 4096 squares. */
START_TEST(what_has_very_many_patches_is_not_turned)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    for (int64_t squares = 4096; squares <= 4097; squares++) {
        const muslin_id row = repeat_of(s.quilt, square, squares, 1);
        const muslin_id two[] = { row, row };
        const struct muslin_pressing_total totals =
            totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, two, 2));
        ck_assert_int_eq(totals.exceptions, 0);
        ck_assert_int_eq(totals.other_way, 1);
        ck_assert_int_eq(totals.copies_turned, squares == 4096);
    }
    end_sewing(&s);
}
END_TEST

/* ---- strip sets -------------------------------------------------------------------------------------------------- */

/* Five rows cut from sets, of which two are taken the other way. */
static int32_t other_of_sets(uint32_t flags, int32_t prefer)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const muslin_id three[] = { nine.light, nine.dark, nine.light };
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id row = 0;
    spec.piecing = MUSLIN_STRIP_PIECING_ALWAYS;
    spec.flags = flags;
    ck_ok(muslin_quilt_join(nine.s.quilt, &spec, three, 3, &row, NULL));
    const muslin_id five[] = { row, row, row, row, row };
    struct muslin_solution *solution = solved(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, five, 5));
    struct muslin_pressing *plan = pressed_with(solution, 1000, prefer);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    const int32_t other = seams[0].other;
    ck_assert_int_eq(seams[0].other_way, 2);
    ck_assert_int_eq(seams[1].other, other);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
    return other;
}

START_TEST(segments_are_turned_end_for_end_where_that_is_the_same_and_else_cut_from_other_sets)
{
    ck_assert_int_eq(other_of_sets(0, 0), MUSLIN_OTHER_WAY_TURNED);
    ck_assert_int_eq(other_of_sets(MUSLIN_QUILT_JOIN_KEEPS_ORDER, 0), MUSLIN_OTHER_WAY_SETS);
    ck_assert_int_eq(other_of_sets(MUSLIN_QUILT_JOIN_KEEPS_ORDER, 1), MUSLIN_OTHER_WAY_SETS);
    ck_assert_int_eq(other_of_sets(0, 1), MUSLIN_OTHER_WAY_TURNED); /* before it matters where it is darker */
}
END_TEST

/* ---- slanted seams ----------------------------------------------------------------------------------------------- */

static muslin_id half_square(struct sewn *s)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s->blue, s->white };
    muslin_id id = 0;
    spec.width = s->two;
    ck_ok(muslin_quilt_unit(s->quilt, &spec, fabrics, 2, &id, NULL));
    return id;
}

/* Half-squares with their points together in the middle of an edge, a wide piece, and the same turned by a half: by a
 * half turn the block looks the same. Where points end at its edges, a seam at right angles ends, too, and counts
 * alone. So of two blocks side by side, whose long seams meet, one is turned. */
START_TEST(beside_seams_at_right_angles_slanted_ones_do_not_count)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id points[] = { half, mirror_of(s.quilt, half) };
    const muslin_id turned[] = { turn_of(s.quilt, points[1], 2), turn_of(s.quilt, half, 2) };
    const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, points, 2),
                               patch_of(s.quilt, s.blue, fixed_of(s.quilt, 2 * A_STRIP), s.two),
                               join_of(s.quilt, MUSLIN_AXIS_ACROSS, turned, 2) };
    const muslin_id block = join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    const muslin_id two[] = { block, block };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_child *children = children_of(plan, &n);
    ck_assert_int_eq(totals_of(plan).meetings, 2 * 2 + 2); /* points in each row, and the long seams */
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(children[n - 1].child, block);
    ck_assert_int_eq(children[n - 1].other_way, 1);
    ck_assert_int_eq(children[n - 1].turn, 2);
    free(children);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Every quarter looks the same, so dark lies against light along each seam: all pressed to the dark, all nests. */
START_TEST(a_pinwheel_of_half_squares_spins)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id upper[] = { turn_of(s.quilt, half, 3), half };
    const muslin_id lower[] = { turn_of(s.quilt, half, 2), turn_of(s.quilt, half, 1) };
    const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, upper, 2),
                               join_of(s.quilt, MUSLIN_AXIS_ACROSS, lower, 2) };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    ck_assert_int_eq(totals.meetings, 3); /* points in each row, and the rows' seams */
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.alternating, 2); /* the second half-square of a row, reversed, lies against the first */
    ck_assert_int_eq(totals.other_way, 0);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(seams[0].node, half);
    ck_assert_int_eq(seams[0].as_shown, 4);
    ck_assert_int_eq(seams[0].towards, 2); /* region 1 lies below the rising seam: right of it */
    ck_assert_int_eq(seams[0].press, MUSLIN_PRESS_RIGHT);
    ck_assert_int_eq(seams[0].preferred, 1);
    free(seams);
    put_away(plan, solution);
    /* Two equal half-squares side by side: the seam of one ends at the foot of their edge, of the other at its head. */
    const muslin_id equal[] = { half, half };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, equal, 2)).meetings, 0);
    /* One mirrored: both end at the head, with like fabrics along the edge, so that one must be pressed to the
     * light. */
    const muslin_id mirrored[] = { half, mirror_of(s.quilt, half) };
    const struct muslin_pressing_total roof =
        totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, mirrored, 2));
    ck_assert_int_eq(roof.meetings, 1);
    ck_assert_int_eq(roof.exceptions, 0);
    ck_assert_int_eq(roof.other_way, 1);
    end_sewing(&s);
}
END_TEST

/* A half-square between two mirror images: at its head it meets one, at its foot the other, and both are pressed
 * otherwise. So it is shown as the two are, though it comes first of all nodes. */
START_TEST(a_unit_is_shown_as_most_of_its_copies_are)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id mirrored = mirror_of(s.quilt, half);
    const muslin_id row[] = { mirrored, half, mirrored };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, row, 3));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_int_eq(muslin_id_number(half), 1);
    ck_assert_int_eq(totals_of(plan).meetings, 2);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    ck_assert_int_eq(seams[0].node, half);
    ck_assert_int_eq(seams[0].as_shown, 2);
    ck_assert_int_eq(seams[0].other_way, 1);
    free(seams);
    struct muslin_pressing_child *children = children_of(plan, &n);
    for (size_t i = 0; i < n; i++)
        if (children[i].child == half)
            ck_assert_int_eq(children[i].other_way, children[i].node != mirrored);
    free(children);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Half-squares and their mirror images in turn, 80 of them: each two meet, at the head or the foot of the edge between
 * them. A plain square in place of one meets neither of its neighbours, and nothing repeats. */
START_TEST(a_plain_piece_is_no_half_square)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id row[80];
    row[0] = half_square(&s);
    ck_assert_int_eq(muslin_id_number(row[0]), 1);
    for (int i = 1; i < 80; i++)
        row[i] = i == 1 ? mirror_of(s.quilt, row[0]) : row[i - 2];
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, row, 80)).meetings, 79);
    row[40] = patch_of(s.quilt, s.blue, s.two, s.two);
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, row, 80)).meetings, 77);
    end_sewing(&s);
}
END_TEST

/* A centre of 6 x 4 with strips of 1, 2, 3 and 1 at the left, right, top and bottom: 9 x 8, the centre from 1, 1
 * to 7, 5. Strips' seams run along the centre, mitres from its corners to those of the whole, all upwards or to the
 * right. Each of the four mitres lies between an upright and a level strip, and goes to the darker of them. */
START_TEST(the_seams_of_a_mitred_border_have_their_ends)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id widths[4];
    const int64_t strips[] = { 1, 2, 3 };
    for (int i = 0; i < 3; i++)
        widths[i] = fixed_of(s.quilt, strips[i] * A_STRIP);
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    spec.centre = patch_of(s.quilt, fabric_so_dark(s.quilt, 25), fixed_of(s.quilt, 6 * A_STRIP),
                           fixed_of(s.quilt, 4 * A_STRIP));
    spec.left_width = spec.bottom_width = widths[0];
    spec.right_width = widths[1];
    spec.top_width = widths[2];
    spec.left_fabric = fabric_so_dark(s.quilt, 10);
    spec.right_fabric = fabric_so_dark(s.quilt, 20);
    spec.top_fabric = fabric_so_dark(s.quilt, 30);
    spec.bottom_fabric = fabric_so_dark(s.quilt, 40);
    muslin_id node = 0;
    ck_ok(muslin_quilt_set_in(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_pressing *plan = pressed(solution);
    /* left, right, top, bottom; then from and to of the mitres; last the side that is darker */
    const int64_t expected[][5] = { { 1, 1, 1, 5, 2 }, { 7, 1, 7, 5, 1 }, { 1, 5, 7, 5, 1 }, { 1, 1, 7, 1, 2 },
                                    { 1, 5, 0, 8, 2 }, { 7, 5, 9, 8, 1 }, { 0, 0, 1, 1, 2 }, { 9, 0, 7, 1, 1 } };
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 8);
    for (size_t k = 0; k < n; k++) {
        ck_assert_int_eq(seams[k].from_x, expected[k][0] * A_STRIP);
        ck_assert_int_eq(seams[k].from_y, expected[k][1] * A_STRIP);
        ck_assert_int_eq(seams[k].to_x, expected[k][2] * A_STRIP);
        ck_assert_int_eq(seams[k].to_y, expected[k][3] * A_STRIP);
        ck_assert_int_eq(seams[k].towards, expected[k][4]);
        ck_assert_int_eq(seams[k].preferred, 1);
    }
    free(seams);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Four 2 x 4 rectangles round a square of 2: the seams of top, right, bottom and left, each along the square and an
 * arm's end. */
START_TEST(the_seams_of_a_pinwheel_have_their_ends)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id upright = patch_of(s.quilt, s.white, s.two, fixed_of(s.quilt, 2 * A_STRIP));
    const muslin_id level = turn_of(s.quilt, upright, 1);
    const struct muslin_quilt_pinwheel_spec spec = { sizeof spec, 0, square, level, upright, level, upright };
    const int64_t ends[][4] = { { 0, 2, 2, 2 }, { 2, 1, 2, 3 }, { 1, 1, 3, 1 }, { 1, 0, 1, 2 } };
    muslin_id node = 0;
    ck_ok(muslin_quilt_pinwheel(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 4);
    for (size_t k = 0; k < n; k++) {
        ck_assert_int_eq(seams[k].from_x, ends[k][0] * A_STRIP);
        ck_assert_int_eq(seams[k].from_y, ends[k][1] * A_STRIP);
        ck_assert_int_eq(seams[k].to_x, ends[k][2] * A_STRIP);
        ck_assert_int_eq(seams[k].to_y, ends[k][3] * A_STRIP);
    }
    free(seams);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Two squares side by side, so dark: 0 is not stated. The seam goes to the darker one, where both are stated and
 * differ. */
START_TEST(the_darker_of_two_is_the_one_that_is_stated_so)
{
    static const int32_t darkness[] = { 0, 1, 2, 50, 100 };
    for (size_t i = 0; i < COUNT_OF(darkness); i++)
        for (size_t k = 0; k < COUNT_OF(darkness); k++) {
            struct sewn s;
            begin_sewing(&s);
            const muslin_id two[] = { patch_of(s.quilt, fabric_so_dark(s.quilt, darkness[i]), s.two, s.two),
                                      patch_of(s.quilt, fabric_so_dark(s.quilt, darkness[k]), s.two, s.two) };
            struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
            struct muslin_pressing *plan = pressed(solution);
            const int is_told = i > 0 && k > 0 && i != k;
            size_t n;
            struct muslin_pressing_seam *seams = seams_of(plan, &n);
            ck_assert_int_eq(seams[0].preferred, is_told ? MUSLIN_PREFERRED_KEPT : MUSLIN_PREFERRED_NEITHER);
            if (is_told)
                ck_assert_int_eq(seams[0].press, i > k ? MUSLIN_PRESS_LEFT : MUSLIN_PRESS_RIGHT);
            free(seams);
            put_away(plan, solution);
            end_sewing(&s);
        }
}
END_TEST

/* Several fabrics are neither darker nor lighter than one. */
START_TEST(what_is_of_several_fabrics_is_as_dark_as_nothing)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const muslin_id wide = patch_of(nine.s.quilt, fabric_so_dark(nine.s.quilt, 80), fixed_of(nine.s.quilt, 3 * A_STRIP),
                                    nine.s.two);
    const muslin_id rows[] = { nine.outer, wide };
    struct muslin_solution *solution = solved(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 3);
    ck_assert_int_eq(seams[2].preferred, MUSLIN_PREFERRED_NEITHER);
    free(seams);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* Of a light patch over a dark one the seam goes down, of a dark one over a light one up. */
START_TEST(below_is_as_dark_as_beside)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id light = patch_of(s.quilt, fabric_so_dark(s.quilt, 20), s.two, s.two);
    const muslin_id dark = patch_of(s.quilt, fabric_so_dark(s.quilt, 80), s.two, s.two);
    for (int32_t axis = MUSLIN_AXIS_ACROSS; axis <= MUSLIN_AXIS_DOWN; axis++) {
        const muslin_id three[] = { light, dark, light };
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, axis, three, 3));
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_uint_eq(n, 2);
        ck_assert_int_eq(seams[0].towards, 2);
        ck_assert_int_eq(seams[1].towards, 1);
        ck_assert_int_eq(seams[0].preferred + seams[1].preferred, 2);
        free(seams);
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

/* Three rows of three pieces, of 1, 1, 2, then 2, 1, 1, then 1, 1, 2 cells, each of its own darkness, between
 * half-triangles that are neither light nor dark. */
static muslin_id rows_of_nine(struct sewn *s, int32_t first)
{
    static const int32_t darkness[] = { 10, 70, 30, 90, 20, 80, 15, 65, 35 };
    static const int64_t cells[] = { 1, 1, 2, 2, 1, 1, 1, 1, 2 };
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[9];
    muslin_id rows = 0;
    for (int i = 0; i < 9; i++) {
        const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
        pieces[i] = piece;
        pieces[i].fabric = fabric_so_dark(s->quilt, darkness[i]);
        pieces[i].cells = cells[i];
    }
    spec.height = s->two;
    spec.cells = 4;
    spec.rows = 3;
    spec.first = first;
    spec.end_fabric = fabric_so_dark(s->quilt, 50);
    ck_ok(muslin_quilt_sixty(s->quilt, &spec, pieces, sizeof pieces[0], 9, &rows, NULL));
    return rows;
}

/* At the left of each piece: to the darker of it and the one before, 50 at the ends. Then at the right end of each row.
 * Between rows are two half-triangles of one fabric. What is preferred gives way where seams nest. */
START_TEST(each_piece_of_a_row_is_compared_with_its_neighbours)
{
    const int32_t wish[] = { 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 1, 2, 0, 0 };
    struct sewn s;
    begin_sewing(&s);
    for (int32_t first = MUSLIN_SIXTY_FIRST_ON_SIDE; first <= MUSLIN_SIXTY_FIRST_ON_POINT; first++) {
        struct muslin_solution *solution = solved(s.quilt, rows_of_nine(&s, first));
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_uint_eq(n, 14);
        for (size_t k = 0; k < n; k++) {
            const int32_t kept = seams[k].preferred == MUSLIN_PREFERRED_KEPT;
            ck_assert_int_eq(seams[k].preferred == MUSLIN_PREFERRED_NEITHER, wish[k] == 0);
            if (wish[k] != 0)
                ck_assert_int_eq(kept ? seams[k].towards : 3 - seams[k].towards, wish[k]);
        }
        free(seams);
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

/* Every edge of a piece is part of the line of the seam that is told along it, or of the outside of all. A point that is
 * rounded is within a tick of the line. */
START_TEST(edges_lie_along_the_seams_they_name)
{
    struct sewn s;
    begin_sewing(&s);
    for (int32_t first = MUSLIN_SIXTY_FIRST_ON_SIDE; first <= MUSLIN_SIXTY_FIRST_ON_POINT; first++) {
        const muslin_id rows = rows_of_nine(&s, first);
        struct muslin_solution *solution = solved(s.quilt, rows);
        const struct muslin_node_size size = size_of(solution, rows);
        struct muslin_pressing *plan = pressed(solution);
        static struct muslin_outline outlines[15];
        static struct muslin_outline_corner corners[64];
        size_t count = 0;
        size_t given = 0;
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_ok(muslin_solution_outlines(solution, rows, MUSLIN_STAGE_FINISHED, 0, outlines, sizeof outlines[0], 15,
                                       corners, sizeof corners[0], 64, &count, &given, NULL));
        ck_assert_uint_eq(given, 15);
        for (size_t i = 0; i < given; i++)
            for (int64_t k = 0; k < outlines[i].corners; k++) {
                const struct muslin_outline_corner *from = &corners[outlines[i].first_corner + k];
                const struct muslin_outline_corner *to =
                    &corners[outlines[i].first_corner + (k + 1) % outlines[i].corners];
                const int outside = (from->x == to->x && (from->x == 0 || from->x == size.finished_width)) ||
                                    (from->y == to->y && (from->y == 0 || from->y == size.finished_height));
                ck_assert_int_eq(from->seam_node, outside ? 0 : rows);
                if (outside)
                    continue;
                ck_assert_int_lt(from->seam, (int64_t)n);
                const struct muslin_pressing_seam *seam = &seams[from->seam];
                const muslin_len right = seam->to_x - seam->from_x;
                const muslin_len up = seam->to_y - seam->from_y;
                const int64_t near = 2 * (llabs(right) + llabs(up));
                ck_assert_int_le(llabs(right * (from->y - seam->from_y) - up * (from->x - seam->from_x)), near);
                ck_assert_int_le(llabs(right * (to->y - seam->from_y) - up * (to->x - seam->from_x)), near);
            }
        free(seams);
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

START_TEST(the_first_region_of_a_unit_is_preferred_unless_darkness_says_otherwise)
{
    struct sewn s;
    begin_sewing(&s);
    const int32_t darkness[][2] = { { 0, 0 }, { 50, 50 }, { 0, 50 }, { 60, 50 }, { 40, 50 } };
    const int32_t towards[] = { 2, 2, 2, 2, 1 };
    for (int i = 0; i < 5; i++) {
        struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
        const muslin_id fabrics[] = { fabric_so_dark(s.quilt, darkness[i][0]), fabric_so_dark(s.quilt, darkness[i][1]) };
        muslin_id half = 0;
        spec.width = s.two;
        ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &half, NULL));
        struct muslin_solution *solution = solved(s.quilt, half);
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        ck_assert_uint_eq(n, 1);
        ck_assert_int_eq(seams[0].towards, towards[i]);
        ck_assert_int_eq(seams[0].preferred, 1);
        free(seams);
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

static muslin_id unit_of(struct sewn *s, int32_t kind, int32_t method, muslin_id height, size_t regions)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s->blue, s->white, s->blue };
    muslin_id id = 0;
    spec.width = fixed_of(s->quilt, 2 * A_STRIP);
    spec.height = height;
    spec.kind = kind;
    spec.method = method;
    ck_ok(muslin_quilt_unit(s->quilt, &spec, fabrics, regions, &id, NULL));
    return id;
}

/* Both seams of a flying goose go to its triangles, as its recipe says. At its point both meet the upright seam
 * above. */
START_TEST(two_slanted_seams_at_one_point_both_meet_what_is_there)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id goose = unit_of(&s, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, s.two, 2);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id two[] = { square, square };
    const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2), goose };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
    struct muslin_pressing *plan = pressed(solution);
    ck_assert_int_eq(totals_of(plan).meetings, 2);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    put_away(plan, solution);
    solution = solved(s.quilt, goose);
    plan = pressed(solution);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    ck_assert_uint_eq(n, 2);
    ck_assert_int_ne(seams[0].towards, seams[1].towards);
    for (size_t i = 0; i < n; i++) {
        const int is_left = seams[i].from_x < A_STRIP || seams[i].to_x < A_STRIP;
        ck_assert_int_eq(seams[i].press, is_left ? MUSLIN_PRESS_LEFT : MUSLIN_PRESS_RIGHT);
        ck_assert_int_eq(seams[i].preferred, 1);
    }
    free(seams);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Two ends on every edge of a star, at thirds that the corners leave; a star and its mirror image have them alike. */
START_TEST(stars_meet_stars_and_regions_that_are_not_the_first_have_no_preference)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id star = unit_of(&s, MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, 0, 2);
    const muslin_id two[] = { star, mirror_of(s.quilt, star) };
    const muslin_id pair = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    struct muslin_solution *solution = solved(s.quilt, pair);
    struct muslin_pressing *plan = pressed(solution);
    ck_assert_int_eq(totals_of(plan).meetings, 2);
    ck_assert_int_eq(totals_of(plan).exceptions, 0);
    size_t n;
    struct muslin_pressing_seam *seams = seams_of(plan, &n);
    int64_t without = 0;
    for (size_t i = 0; i < n; i++)
        without += seams[i].preferred == 0;
    ck_assert_int_eq(without, 7 + 1); /* between the eight points, one straight through; and between the two stars */
    free(seams);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* ---- trimmed nodes ----------------------------------------------------------------------------------------------- */

START_TEST(seams_that_stand_upright_on_a_trimmed_edge_meet_there_and_others_do_not)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id mixed[] = { square, half, mirror_of(s.quilt, half), square };
    const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, mixed, 4);
    const muslin_id whole[] = { row, row };
    /* Between the rows the upright seams: beside them points of half-squares do not count. In each row, at the head of
     * the middle seam, two points. */
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, whole, 2)).meetings, 3 + 2);
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id trimmed = 0;
    trim.top = fixed_of(s.quilt, 1000);
    trim.left = fixed_of(s.quilt, A_STRIP + 1000); /* the first seam is cut away */
    ck_ok(muslin_quilt_trim(s.quilt, row, &trim, &trimmed, NULL));
    const muslin_id two[] = { trimmed, trimmed };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, two, 2)).meetings, 2 + 2);
    /* A point that is trimmed away meets nothing. */
    const muslin_id points[] = { mirror_of(s.quilt, half), half };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, points, 2)).meetings, 1);
    trim.left = 0;
    ck_ok(muslin_quilt_trim(s.quilt, half, &trim, &trimmed, NULL));
    const muslin_id cut[] = { points[0], trimmed };
    /* Nor does a seam that is trimmed away whole: two rows, of which the upper one goes. */
    const muslin_id four = join_of(s.quilt, MUSLIN_AXIS_DOWN, whole, 2);
    struct muslin_quilt_trim_spec deep = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id halved = 0;
    deep.top = s.two;
    ck_ok(muslin_quilt_trim(s.quilt, four, &deep, &halved, NULL));
    const muslin_id below[] = { row, halved };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, below, 2)).meetings, 3 + 2 + 1);
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, cut, 2)).meetings, 0);
    end_sewing(&s);
}
END_TEST

static muslin_id trimmed_by(struct sewn *s, muslin_id node, muslin_len top, muslin_len bottom)
{
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id id = 0;
    trim.top = top == 0 ? 0 : fixed_of(s->quilt, top);
    trim.bottom = bottom == 0 ? 0 : fixed_of(s->quilt, bottom);
    ck_ok(muslin_quilt_trim(s->quilt, node, &trim, &id, NULL));
    return id;
}

/* Three squares, two wide pieces, three squares: trimmed at once or bit by bit, above or below, two seams end there
 * until a whole square is gone; those of the middle row, laid bare, are not looked at. */
START_TEST(what_is_trimmed_bit_by_bit_is_trimmed_by_all_of_it)
{
    static const muslin_len bits[] = { 1, 8000, A_STRIP - 8001, A_STRIP - 8000, A_STRIP - 1, A_STRIP };
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id wide = patch_of(s.quilt, s.white, fixed_of(s.quilt, 3 * A_STRIP / 2), s.two);
    const muslin_id three[] = { square, square, square };
    const muslin_id two[] = { wide, wide };
    const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id rows[] = { row, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2), row };
    const muslin_id block = join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    for (size_t i = 0; i < COUNT_OF(bits); i++)
        for (size_t k = 0; k < COUNT_OF(bits); k++)
            for (int below = 0; below < 2; below++) {
                const muslin_id once = trimmed_by(&s, block, below ? 0 : bits[i], below ? bits[i] : 0);
                const muslin_id twice = trimmed_by(&s, once, below ? 0 : bits[k], below ? bits[k] : 0);
                const muslin_id all[] = { below ? once : row, below ? row : once };
                const muslin_id again[] = { below ? twice : row, below ? row : twice };
                ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, all, 2)).meetings,
                                 bits[i] < A_STRIP ? 2 : 0);
                ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, again, 2)).meetings,
                                 bits[i] + bits[k] < A_STRIP ? 2 : 0);
            }
    end_sewing(&s);
}
END_TEST

/* Points of half-squares meet at the head of the edge between them, until a tick of it is trimmed away. */
START_TEST(a_point_is_trimmed_away_by_a_tick)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id mirrored = mirror_of(s.quilt, half);
    const muslin_id points[] = { half, mirrored };
    const muslin_id cut[] = { trimmed_by(&s, half, 1, 0), trimmed_by(&s, mirrored, 1, 0) };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, points, 2)).meetings, 1);
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, cut, 2)).meetings, 0);
    end_sewing(&s);
}
END_TEST

/* A row of three squares turned by a quarter, either way, and mirrored as well, is a column of three. */
START_TEST(a_row_on_end_meets_a_column)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id three[] = { square, square, square };
    const muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id column = join_of(s.quilt, MUSLIN_AXIS_DOWN, three, 3);
    for (int32_t turn = 1; turn < 4; turn += 2)
        for (int mirrored = 0; mirrored < 2; mirrored++) {
            const muslin_id on_end = turn_of(s.quilt, mirrored ? mirror_of(s.quilt, row) : row, turn);
            const muslin_id both[] = { column, on_end, column };
            const struct muslin_pressing_total totals =
                totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, both, 3));
            ck_assert_int_eq(totals.meetings, 2 + 2);
            ck_assert_int_eq(totals.exceptions, 0);
        }
    end_sewing(&s);
}
END_TEST

/* ---- round a centre, on point, in 60 degree rows ----------------------------------------------------------------- */

static muslin_id pinwheel_of(struct muslin_quilt *quilt, muslin_id centre, muslin_id top, muslin_id right,
                             muslin_id bottom, muslin_id left)
{
    struct muslin_quilt_pinwheel_spec spec = MUSLIN_QUILT_PINWHEEL_SPEC_INIT;
    muslin_id id = 0;
    spec.centre = centre;
    spec.top = top;
    spec.right = right;
    spec.bottom = bottom;
    spec.left = left;
    ck_ok(muslin_quilt_pinwheel(quilt, &spec, &id, NULL));
    return id;
}

/* Two squares to each side. The seam of an arm in the middle of its length ends where the next arm's seam does. */
START_TEST(what_is_sewn_round_a_centre_meets_along_its_four_seams)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id two[] = { square, square };
    const muslin_id level = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    const muslin_id upright = join_of(s.quilt, MUSLIN_AXIS_DOWN, two, 2);
    const muslin_id wheel = pinwheel_of(s.quilt, square, level, upright, level, upright);
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, wheel);
    ck_assert_int_eq(totals.meetings, 4);
    ck_assert_int_eq(totals.exceptions, 0);
    /* Nothing but patches: seams end at each other, and none from both sides of one. */
    const muslin_id wide = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 2 * A_STRIP), s.two);
    const muslin_id high = patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 2 * A_STRIP));
    const muslin_id plain = pinwheel_of(s.quilt, square, wide, high, wide, high);
    ck_assert_int_eq(totals_pressed(s.quilt, plain).meetings, 0);
    /* Side by side: on the outside, an arm's seam ends where the arm at the side ends. */
    const muslin_id pair[] = { plain, mirror_of(s.quilt, plain) };
    ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, pair, 2)).meetings, 1);
    end_sewing(&s);
}
END_TEST

/* Of small squares, four by two an arm and two by two the centre: along each of the four seams three end on the arm's
 * side, and on the other one of the centre, one of the next arm, and the seam that closes that. Within an arm three
 * meet, and one within the centre. */
START_TEST(small_squares_round_a_centre_meet_all_along_its_seams)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id level = repeat_of(s.quilt, square, 4, 2);
    const muslin_id upright = repeat_of(s.quilt, square, 2, 4);
    const muslin_id centre = repeat_of(s.quilt, square, 2, 2);
    const muslin_id wheel = pinwheel_of(s.quilt, centre, level, upright, level, upright);
    ck_assert_int_eq(totals_pressed(s.quilt, wheel).meetings, 4 * 3 + 4 * 3 + 1);
    ck_assert_int_eq(totals_pressed(s.quilt, mirror_of(s.quilt, wheel)).meetings, 4 * 3 + 4 * 3 + 1);
    end_sewing(&s);
}
END_TEST

/* Squares in a line that keeps its order, held to the first. */
static muslin_id held_line(struct sewn *s, int32_t axis, size_t n)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    const muslin_id square = patch_of(s->quilt, s->blue, s->two, s->two);
    const muslin_id squares[] = { square, square, square };
    muslin_id id = 0;
    spec.axis = axis;
    spec.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
    spec.press = MUSLIN_SEAM_PRESS_TO_FIRST;
    ck_ok(muslin_quilt_join(s->quilt, &spec, squares, n, &id, NULL));
    return id;
}

/* The same wheel beside, above, below or at the other side of three squares: on each side two seams end, an arm's in
 * its middle and the one that closes the next arm, and meet those of the squares. Arms and squares are all held to the
 * first: so the arm's seam and what it meets do not nest. At the left and above it is the first third of the side, at
 * the right and below the second, from the left or from below. */
START_TEST(on_every_side_of_a_pinwheel_two_seams_end)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id level = held_line(&s, MUSLIN_AXIS_ACROSS, 2);
    const muslin_id upright = held_line(&s, MUSLIN_AXIS_DOWN, 2);
    const muslin_id wheel = pinwheel_of(s.quilt, square, level, upright, level, upright);
    for (int32_t axis = MUSLIN_AXIS_ACROSS; axis <= MUSLIN_AXIS_DOWN; axis++)
        for (int wheel_first = 0; wheel_first < 2; wheel_first++) {
            const int is_across = axis == MUSLIN_AXIS_ACROSS;
            const muslin_id squares = held_line(&s, is_across ? MUSLIN_AXIS_DOWN : MUSLIN_AXIS_ACROSS, 3);
            const muslin_id two[] = { wheel_first ? wheel : squares, wheel_first ? squares : wheel };
            const muslin_id top = join_of(s.quilt, axis, two, 2);
            struct muslin_solution *solution = solved(s.quilt, top);
            struct muslin_pressing *plan = pressed(solution);
            size_t n;
            struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
            const muslin_len along = (wheel_first + 1) * A_STRIP;
            ck_assert_int_eq(totals_of(plan).meetings, 4 + 2);
            ck_assert_uint_eq(n, 1);
            ck_assert_int_eq(rows[0].node, top);
            ck_assert_int_eq(rows[0].x, is_across ? (wheel_first ? 3 : 1) * A_STRIP : along);
            ck_assert_int_eq(rows[0].y, is_across ? along : (wheel_first ? 1 : 3) * A_STRIP);
            ck_assert_int_eq(exceptions_on_seams(plan, top), 1);
            free(rows);
            put_away(plan, solution);
        }
    end_sewing(&s);
}
END_TEST

/* A column of two squares beside one of three lies at its top, so that its seam meets the upper one of the other. */
START_TEST(what_is_lower_lies_at_the_top)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id high = held_line(&s, MUSLIN_AXIS_DOWN, 3);
    const muslin_id low = held_line(&s, MUSLIN_AXIS_DOWN, 2);
    const muslin_id all[] = { high, low, high };
    for (int first = 0; first < 2; first++) {
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, all + first, 2));
        struct muslin_pressing *plan = pressed(solution);
        size_t n;
        struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
        ck_assert_int_eq(totals_of(plan).meetings, 1);
        ck_assert_uint_eq(n, 1);
        ck_assert_int_eq(rows[0].x, A_STRIP);
        ck_assert_int_eq(rows[0].y, 2 * A_STRIP);
        free(rows);
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

/* Seams that end no more than two ticks apart meet. */
START_TEST(two_ticks_apart_is_one_place)
{
    for (muslin_len apart = -4; apart <= 4; apart++) {
        struct sewn s;
        begin_sewing(&s);
        const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
        const muslin_id even[] = { square, square };
        const muslin_id uneven[] = { patch_of(s.quilt, s.blue, fixed_of(s.quilt, A_STRIP + apart), s.two),
                                     patch_of(s.quilt, s.blue, fixed_of(s.quilt, A_STRIP - apart), s.two) };
        const muslin_id rows[] = { join_of(s.quilt, MUSLIN_AXIS_ACROSS, even, 2),
                                   join_of(s.quilt, MUSLIN_AXIS_ACROSS, uneven, 2) };
        ck_assert_int_eq(totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2)).meetings,
                         llabs(apart) <= 2);
        end_sewing(&s);
    }
}
END_TEST

static muslin_id field_of(struct sewn *s, int64_t columns, int64_t rows, const muslin_id *blocks)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    muslin_id id = 0;
    spec.columns = columns;
    spec.rows = rows;
    spec.side_fabric = s->white;
    spec.corner_fabric = s->white;
    const size_t n = (size_t)(columns * rows + (columns - 1) * (rows - 1));
    ck_ok(muslin_quilt_diagonal(s->quilt, &spec, blocks, n, &id, NULL));
    return id;
}

/* c x r nine-patches on point and plain squares between them: each plain one meets nothing but at its corners. Where
 * four pieces come together, triangles among them, seams across a row's seam meet. Within the field these are the tips
 * that four blocks or triangles share. */
START_TEST(blocks_on_point_meet_as_in_a_straight_setting)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    muslin_id blocks[13];
    for (int i = 0; i < 13; i++)
        blocks[i] = nine.block;
    struct muslin_solution *solution = solved(nine.s.quilt, field_of(&nine.s, 3, 3, blocks));
    struct muslin_pressing *plan = pressed(solution);
    const struct muslin_pressing_total totals = totals_of(plan);
    /* 13 blocks with 4 each; 16 edges between blocks, with 2 each; and 8 inner tips, where four pieces meet, of which
     * each has a seam of a row and one on both of its sides; at the 4 tips in the corners of the middle row as well. */
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.meetings, 13 * 4 + 16 * 2 + 12);
    ck_assert_int_eq(totals.proven, 1);
    put_away(plan, solution);
    /* The blocks of a field do not reach its outside: what is sewn to it meets its triangles' seams alone. */
    const muslin_id field = field_of(&nine.s, 3, 3, blocks);
    const muslin_id fields[] = { field, field };
    const struct muslin_pressing_total two =
        totals_pressed(nine.s.quilt, join_of(nine.s.quilt, MUSLIN_AXIS_ACROSS, fields, 2));
    ck_assert_int_eq(two.exceptions, 0);
    ck_assert_int_gt(two.meetings, 2 * totals.meetings);
    ck_assert_int_le(two.meetings, 2 * totals.meetings + 2 * 4 * 4);
    for (int i = 0; i < 13; i++)
        blocks[i] = nine.light;
    ck_assert_int_eq(totals_pressed(nine.s.quilt, field_of(&nine.s, 1, 1, blocks)).meetings, 0);
    end_sewing(&nine.s);
}
END_TEST

/* Nine-patches whose rows are all held to the left and keep their order: none of them is taken the other way, so that
 * none of the two seams on the edges between them nests. Where is told on the seam there, which is another one for each
 * row and for each two neighbours. */
START_TEST(exceptions_on_point_lie_on_the_seams_between_blocks)
{
    for (int64_t columns = 1; columns <= 3; columns++)
        for (int64_t rows = 1; rows <= 3; rows++) {
            struct nine nine;
            begin_in_order(&nine, MUSLIN_SEAM_PRESS_TO_FIRST, MUSLIN_SEAM_PRESS_TO_FIRST);
            muslin_id blocks[13];
            for (int i = 0; i < 13; i++)
                blocks[i] = nine.block;
            const muslin_id field = field_of(&nine.s, columns, rows, blocks);
            struct muslin_solution *solution = solved(nine.s.quilt, field);
            struct muslin_pressing *plan = pressed(solution);
            /* every block between four others shares an edge with each */
            const int64_t edges = 4 * (columns - 1) * (rows - 1);
            ck_assert_int_eq(exceptions_on_seams(plan, field), 2 * edges);
            ck_assert_int_eq(totals_of(plan).exceptions, 2 * edges + 4 * (columns * rows + (columns - 1) * (rows - 1)));
            put_away(plan, solution);
            end_sewing(&nine.s);
        }
}
END_TEST

/* Half-squares and their mirror images in turn: points meet at an end of each edge between two of them, as on any grid.
 * But along the seams between rows those within the rows end there, too, and count alone: so it is one more meeting
 * than of plain squares for each two neighbours of a row. */
START_TEST(points_on_point_meet_within_rows)
{
    for (int64_t columns = 1; columns <= 3; columns++)
        for (int64_t rows = 1; rows <= 3; rows++) {
            struct sewn s;
            begin_sewing(&s);
            const muslin_id half = half_square(&s);
            const muslin_id mirrored = mirror_of(s.quilt, half);
            const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
            muslin_id blocks[13];
            muslin_id plain[13];
            for (int i = 0; i < 13; i++) {
                blocks[i] = i < columns * rows ? half : mirrored;
                plain[i] = square;
            }
            const int64_t more = totals_pressed(s.quilt, field_of(&s, columns, rows, blocks)).meetings -
                                 totals_pressed(s.quilt, field_of(&s, columns, rows, plain)).meetings;
            ck_assert_int_eq(more, 2 * (columns - 1) * (rows - 1));
            end_sewing(&s);
        }
}
END_TEST

/* Four geese that fly to the middle of a pinwheel: the point of each, of two slanted seams, meets the end of the seam
 * that closes the next arm. */
START_TEST(points_round_a_centre_meet_the_seams_between_arms)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id goose = unit_of(&s, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, s.two, 2);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id wheel = pinwheel_of(s.quilt, square, turn_of(s.quilt, goose, 2), turn_of(s.quilt, goose, 3), goose,
                                        turn_of(s.quilt, goose, 1));
    ck_assert_int_eq(totals_pressed(s.quilt, wheel).meetings, 4 * 2);
    end_sewing(&s);
}
END_TEST

/* One half-square in the outer corner of an arm, its point at the end of the seam along it: nothing is there on the other
 * side. Where the arm's own seam ends, the one that closes the next arm does, too. */
START_TEST(no_seam_meets_what_ends_at_its_own_end)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id level = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 2 * A_STRIP), s.two);
    const muslin_id upright = patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 2 * A_STRIP));
    const muslin_id above[] = { half, square };
    const muslin_id left[] = { mirror_of(s.quilt, half), square };
    ck_assert_int_eq(totals_pressed(s.quilt, pinwheel_of(s.quilt, square, join_of(s.quilt, MUSLIN_AXIS_ACROSS, above, 2),
                                                         upright, level, upright))
                         .meetings,
                     1);
    ck_assert_int_eq(totals_pressed(s.quilt, pinwheel_of(s.quilt, square, level, upright, level,
                                                         join_of(s.quilt, MUSLIN_AXIS_DOWN, left, 2)))
                         .meetings,
                     1);
    end_sewing(&s);
}
END_TEST

/* Two geese that fly apart as blocks on point: within each, points meet at both ends of the seam between them; next to
 * each other in a row those seams meet, and from row to row two slanted seams meet two. */
START_TEST(geese_on_point_meet_from_row_to_row)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id goose = unit_of(&s, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, s.two, 2);
    const muslin_id apart[] = { goose, turn_of(s.quilt, goose, 2) };
    const muslin_id block = join_of(s.quilt, MUSLIN_AXIS_DOWN, apart, 2);
    const muslin_id square = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 2 * A_STRIP), fixed_of(s.quilt, 2 * A_STRIP));
    muslin_id blocks[13];
    muslin_id plain[13];
    for (int i = 0; i < 13; i++) {
        blocks[i] = block;
        plain[i] = square;
    }
    for (int64_t columns = 1; columns <= 3; columns++)
        for (int64_t rows = 1; rows <= 3; rows++) {
            const int64_t between = (columns - 1) * (rows - 1);
            const int64_t more = totals_pressed(s.quilt, field_of(&s, columns, rows, blocks)).meetings -
                                 totals_pressed(s.quilt, field_of(&s, columns, rows, plain)).meetings;
            ck_assert_int_eq(more, 2 * (columns * rows + between) + 2 * between + 4 * 2 * between);
        }
    end_sewing(&s);
}
END_TEST

/* A join that asks can make blocks on point clash: where, is told in the field. */
START_TEST(exceptions_on_point_are_told_where_they_lie_in_the_field)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id high = patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 2 * A_STRIP));
    const muslin_id white = patch_of(s.quilt, s.white, s.two, fixed_of(s.quilt, 2 * A_STRIP));
    const muslin_id two[] = { high, white };
    const muslin_id block = join_pressed(s.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, two, 2);
    muslin_id blocks[2] = { block, block };
    struct muslin_solution *solution = solved(s.quilt, field_of(&s, 2, 1, blocks));
    struct muslin_pressing *plan = pressed(solution);
    ck_assert_int_eq(totals_of(plan).exceptions, 0); /* they touch at a tip alone */
    put_away(plan, solution);
    muslin_id five[5] = { block, block, block, block, block };
    solution = solved(s.quilt, field_of(&s, 2, 2, five));
    plan = pressed(solution);
    /* The alternate lies under one of the four and over another, along their seams' ends. */
    ck_assert_int_eq(totals_of(plan).exceptions, 2);
    size_t n;
    struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
    const struct muslin_node_size size = size_of(solution, muslin_id_number(rows[0].node) > 0 ? rows[0].node : 0);
    ck_assert_uint_eq(n, 2);
    /* Half a turn about the middle of the field brings one to the other; each to the nearest tick. */
    ck_assert_int_le(llabs(rows[0].x + rows[1].x - size.finished_width), 2);
    ck_assert_int_le(llabs(rows[0].y + rows[1].y - size.finished_height), 2);
    /* From the middle, half a block (2 in) up to the right along the turned frame: sqrt 2 in each way. */
    const muslin_len away = 11495;
    ck_assert_int_le(llabs(llabs(rows[0].x - size.finished_width / 2) - away), 2);
    ck_assert_int_le(llabs(llabs(rows[0].y - size.finished_height / 2) - away), 2);
    free(rows);
    put_away(plan, solution);
    end_sewing(&s);
}
END_TEST

/* Rows of triangles: at every point between two rows two slanted seams come from each side. All of a row to the right,
 * the next to the left: all nest. */
START_TEST(sixty_degree_rows_are_pressed_in_turn)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[15];
    muslin_id rows = 0;
    spec.cells = 5;
    spec.rows = 3;
    spec.height = s.two;
    spec.end_fabric = s.white;
    for (int i = 0; i < 15; i++) {
        const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
        pieces[i] = piece;
        pieces[i].fabric = s.blue;
    }
    ck_ok(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], 15, &rows, NULL));
    const struct muslin_pressing_total totals = totals_pressed(s.quilt, rows);
    /* Six slanted seams in a row, from points 0, 2, 2, 4, 4, 6 of its lower side to 1, 1, 3, 3, 5, 5 of its upper one;
     * in the next row the other way round. */
    ck_assert_int_eq(totals.meetings, 1 + 4 + 4 + 1 + 4 + 4 + 4);
    ck_assert_int_eq(totals.exceptions, 0);
    ck_assert_int_eq(totals.alternating, totals.meetings);
    spec.rows = 1;
    ck_ok(muslin_quilt_sixty(s.quilt, &spec, pieces, sizeof pieces[0], 5, &rows, NULL));
    ck_assert_int_eq(totals_pressed(s.quilt, rows).meetings, 0);
    end_sewing(&s);
}
END_TEST

/* Rows of pieces by chance, one to three cells each. */
static muslin_id any_sixty(struct sewn *s, uint64_t seed)
{
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec pieces[64];
    size_t n = 0;
    muslin_id id = 0;
    spec.cells = draw_from(&seed, 3, 8);
    spec.rows = draw_from(&seed, 1, 5);
    spec.first = (int32_t)draw_from(&seed, MUSLIN_SIXTY_FIRST_ON_SIDE, MUSLIN_SIXTY_FIRST_ON_POINT);
    spec.height = s->two;
    spec.end_fabric = s->white;
    for (int64_t row = 0; row < spec.rows; row++)
        for (int64_t left = spec.cells; left > 0; left -= pieces[n++].cells) {
            const struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
            pieces[n] = piece;
            pieces[n].fabric = s->blue;
            pieces[n].cells = draw_from(&seed, 1, left < 3 ? left : 3);
        }
    ck_ok(muslin_quilt_sixty(s->quilt, &spec, pieces, sizeof pieces[0], n, &id, NULL));
    return id;
}

/* Every slanted seam of a row meets those that begin, above it, where it ends. */
START_TEST(slanted_seams_meet_where_one_goes_on_from_another)
{
    for (uint64_t seed = 1; seed <= 60; seed++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_solution *solution = solved(s.quilt, any_sixty(&s, seed));
        struct muslin_pressing *plan = pressed(solution);
        int64_t meetings = 0;
        size_t n;
        struct muslin_pressing_seam *seams = seams_of(plan, &n);
        for (size_t i = 0; i < n; i++)
            for (size_t k = 0; k < n; k++)
                meetings += seams[i].from_y != seams[i].to_y && seams[k].from_y != seams[k].to_y &&
                            seams[i].to_y == seams[k].from_y && llabs(seams[i].to_x - seams[k].from_x) <= 2;
        ck_assert_int_eq(totals_of(plan).meetings, meetings);
        ck_assert_int_eq(totals_of(plan).exceptions, 0);
        free(seams);
        put_away(plan, solution);
        end_sewing(&s);
    }
}
END_TEST

/* ---- large and hard ---------------------------------------------------------------------------------------------- */

static muslin_id four_patch(struct sewn *s)
{
    const muslin_id blue = patch_of(s->quilt, s->blue, s->two, s->two);
    const muslin_id white = patch_of(s->quilt, s->white, s->two, s->two);
    const muslin_id four[] = { blue, white, white, blue };
    muslin_id id = 0;
    ck_ok(muslin_quilt_grid(s->quilt, 2, 2, four, 4, &id, NULL));
    return id;
}

/* Blocks thrown down anyhow. */
static muslin_id thrown_of(struct sewn *s, muslin_id block, int64_t side, uint64_t seed)
{
    muslin_id *blocks = calloc((size_t)(side * side), sizeof *blocks);
    muslin_id id = 0;
    for (int64_t i = 0; i < side * side; i++) {
        const muslin_id lying = draw(&seed) % 2 == 0 ? block : mirror_of(s->quilt, block);
        blocks[i] = turn_of(s->quilt, lying, (int32_t)draw_from(&seed, 0, 3));
    }
    ck_ok(muslin_quilt_grid(s->quilt, side, side, blocks, (size_t)(side * side), &id, NULL));
    free(blocks);
    return id;
}

/* Four-patches thrown down anyhow do not nest everywhere. */
static muslin_id thrown(struct sewn *s, int64_t side, uint64_t seed)
{
    return thrown_of(s, four_patch(s), side, seed);
}

/* Nine-patches do, as they look the same from all sides. What can nest everywhere is found without any search. */
START_TEST(nine_patches_nest_wherever_they_fall)
{
    for (uint64_t seed = 1; seed <= 4; seed++) {
        struct nine nine;
        begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
        const muslin_id top = thrown_of(&nine.s, nine.block, seed % 2 == 0 ? 10 : 30, seed);
        struct muslin_solution *solution = solved(nine.s.quilt, top);
        struct muslin_pressing *plan = pressed_with(solution, 0, 1);
        ck_assert_int_eq(totals_of(plan).exceptions, 0);
        ck_assert_int_eq(totals_of(plan).proven, 1);
        put_away(plan, solution);
        end_sewing(&nine.s);
    }
}
END_TEST

START_TEST(more_work_never_makes_it_worse_and_the_bound_holds)
{
    struct sewn s;
    begin_sewing(&s);
    for (int64_t side = 2; side <= 12; side += 2) {
        struct muslin_solution *solution = solved(s.quilt, thrown(&s, side, (uint64_t)side));
        int64_t fewest = INT64_MAX;
        int64_t most_of_all = 0;
        for (int64_t work = 0; work <= 3000000; work = 10 * work + 30) {
            struct muslin_pressing *plan = pressed_with(solution, work, 1);
            const struct muslin_pressing_total totals = totals_of(plan);
            ck_assert_int_le(totals.exceptions, totals.alternating);
            ck_assert_int_le(totals.least, totals.exceptions);
            ck_assert_int_eq(totals.proven, totals.least == totals.exceptions);
            fewest = totals.exceptions < fewest ? totals.exceptions : fewest;
            most_of_all = totals.least > most_of_all ? totals.least : most_of_all;
            muslin_pressing_free(plan);
        }
        ck_assert_int_le(most_of_all, fewest);
        if (side <= 4)
            ck_assert_int_eq(most_of_all, fewest);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* Rows made of halves that are made of halves, 2^12 pieces long, so that a meeting hangs on many places; and then,
 * apart from it, blocks thrown down. Without work there is too little to settle all, and the plan still holds. */
START_TEST(what_hangs_together_in_many_places_takes_work)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id other = patch_of(s.quilt, s.white, s.two, s.two);
    const muslin_id ends[][2] = { { square, other }, { other, square } };
    muslin_id row[2];
    for (int side = 0; side < 2; side++) {
        row[side] = join_of(s.quilt, MUSLIN_AXIS_ACROSS, ends[side], 2);
        for (int i = 0; i < 11; i++) {
            const muslin_id two[] = { row[side], row[side] };
            row[side] = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
        }
        row[side] = turn_of(s.quilt, row[side], 2);
    }
    const muslin_id pair = join_of(s.quilt, MUSLIN_AXIS_DOWN, row, 2);
    const muslin_id all[] = { pair, square, thrown(&s, 6, 11) };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, all, 3));
    for (int64_t work = 0; work <= 1000000; work = 10 * work + 1) {
        struct muslin_pressing *plan = pressed_with(solution, work, 0);
        const struct muslin_pressing_total totals = totals_of(plan);
        ck_assert_int_le(totals.exceptions, totals.alternating);
        ck_assert_int_le(totals.least, totals.exceptions);
        muslin_pressing_free(plan);
    }
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Lots of blocks thrown down apart from each other are searched each by itself: two that take a search, and one of four
 * blocks in which one meeting cannot nest, as its bound tells already. */
START_TEST(what_does_not_hang_together_adds_up)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id strip = patch_of(s.quilt, s.blue, s.two, s.two);
    const muslin_id first = thrown(&s, 4, 4);
    s.two = fixed_of(s.quilt, 2 * A_STRIP);
    const muslin_id second = thrown(&s, 4, 9);
    s.two = fixed_of(s.quilt, 3 * A_STRIP);
    uint64_t seed = 1;
    while (totals_pressed(s.quilt, thrown(&s, 2, seed)).exceptions == 0)
        seed++;
    const muslin_id third = thrown(&s, 2, seed);
    const muslin_id rows[] = { first, strip, second, strip, third };
    const struct muslin_pressing_total a = totals_pressed(s.quilt, first);
    const struct muslin_pressing_total b = totals_pressed(s.quilt, second);
    const struct muslin_pressing_total c = totals_pressed(s.quilt, third);
    const struct muslin_pressing_total all = totals_pressed(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 5));
    ck_assert_int_gt(a.exceptions, 0);
    ck_assert_int_gt(b.exceptions, 0);
    ck_assert_int_eq(c.exceptions, 1);
    ck_assert_int_eq(all.exceptions, a.exceptions + b.exceptions + c.exceptions);
    ck_assert_int_eq(all.least, a.least + b.least + c.least);
    ck_assert_int_eq(all.proven, 1);
    end_sewing(&s);
}
END_TEST

START_TEST(the_same_request_gives_the_same_plan)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_solution *solution = solved(s.quilt, thrown(&s, 6, 7));
    struct muslin_pressing *plans[] = { pressed(solution), pressed(solution) };
    size_t n;
    size_t again;
    struct muslin_pressing_child *first = children_of(plans[0], &n);
    struct muslin_pressing_child *second = children_of(plans[1], &again);
    ck_assert_uint_eq(n, again);
    ck_assert_int_eq(memcmp(first, second, n * sizeof *first), 0);
    free(first);
    free(second);
    muslin_pressing_free(plans[0]);
    muslin_pressing_free(plans[1]);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Doubled again and again, an edge has more pieces than anyone sews. A row of 2^k has 2^k pieces above, as many below,
 * and two at its ends; its halves, which are held against each other, have 2^k + 2 each, but for those of the first
 * row, in which no seams end. That is 2^(k + 2) + 6, less 8 once; from the first to the m-th row 2^(m + 3) - 16 + 6 m,
 * which is more than 2^26 from m = 23 on: 2^26 + 122. */
START_TEST(edges_of_too_many_pieces_are_refused)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id row = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 1), fixed_of(s.quilt, 1));
    for (int doubled = 1; doubled <= 25; doubled++) {
        const muslin_id two[] = { row, row };
        row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
        if (doubled < 23)
            continue;
        struct muslin_solution *solution = solved(s.quilt, row);
        struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        struct muslin_problem problem = PROBLEM;
        ck_status(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, &problem), MUSLIN_ERR_WORK_LIMIT);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAMS);
        ck_assert_int_eq(problem.limit, 67108864);
        ck_assert_int_eq(problem.at, 0);
        ck_assert_int_eq(problem.value, 67108864 + 122);
        ck_assert_ptr_null(plan);
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* ---- calls ------------------------------------------------------------------------------------------------------- */

static struct muslin_solution *ruled_solution;

static muslin_status create_and_total(const void *spec, void *out, struct muslin_problem *problem)
{
    struct muslin_pressing *plan = NULL;
    muslin_status status = muslin_pressing_create(ruled_solution, spec, NULL, NULL, NULL, &plan, problem);
    if (status == MUSLIN_OK)
        status = muslin_pressing_totals(plan, out, problem);
    muslin_pressing_free(plan);
    return status;
}

INIT_CALL(pressing)

START_TEST(specs_and_outputs_keep_the_rules_of_structs)
{
    static const struct muslin_pressing_spec initial = MUSLIN_PRESSING_SPEC_INIT;
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    ruled_solution = solved(nine.s.quilt, nine.block);
    const struct ruled ruled = RULED(create_and_total, initial, muslin_pressing_total);
    ck_struct_rules(&ruled);
    ck_no_flag_known(&ruled);
    ck_init_rules(init_pressing, &initial, sizeof initial);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_pressing_spec, work_limit, 0, INT64_C(1) << 40, MUSLIN_ARG_WORK_LIMIT),
        REFUSAL(muslin_pressing_spec, prefer, -1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_PREFER),
        REFUSAL(muslin_pressing_spec, prefer, 2, MUSLIN_ERR_CHOICE, MUSLIN_ARG_PREFER),
        REFUSAL(muslin_pressing_spec, units, -1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_PREFER),
        REFUSAL(muslin_pressing_spec, units, 2, MUSLIN_ERR_CHOICE, MUSLIN_ARG_PREFER),
    };
    ck_refusals(&ruled, refusals, COUNT_OF(refusals));
    struct muslin_pressing *plan = NULL;
    ck_status(muslin_pressing_create(NULL, &initial, NULL, NULL, NULL, &plan, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_pressing_create(ruled_solution, &initial, NULL, NULL, NULL, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_ptr_null(plan);
    muslin_solution_free(ruled_solution);
    end_sewing(&nine.s);
}
END_TEST

/* A call that gives rows: without a plan, with too little room, with rows of a wrong size. */
#define CK_ROWS(call, row)                                                                     \
    do {                                                                                       \
        struct row rows[64];                                                                   \
        size_t count = 99;                                                                     \
        ck_status(call(NULL, rows, sizeof rows[0], 64, &count, NULL), MUSLIN_ERR_NULL);        \
        ck_status(call(plan, rows, sizeof rows[0], 64, NULL, NULL), MUSLIN_ERR_NULL);          \
        ck_status(call(plan, NULL, sizeof rows[0], 64, &count, NULL), MUSLIN_ERR_NULL);        \
        ck_status(call(plan, rows, sizeof rows[0] - 1, 64, &count, NULL), MUSLIN_ERR_STRUCT_SIZE); \
        ck_status(call(plan, rows, 4097, 64, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);           \
        ck_assert_uint_eq(count, 99);                                                          \
        ck_status(call(plan, rows, sizeof rows[0], 1, &count, NULL), MUSLIN_ERR_BUFFER);       \
        ck_assert_uint_gt(count, 1);                                                           \
        ck_ok(call(plan, rows, sizeof rows[0], 64, &count, NULL));                             \
        ck_assert_uint_eq(rows[0].size, sizeof rows[0]);                                       \
        ck_assert_uint_eq(rows[count - 1].flags, 0);                                           \
    } while (0)

START_TEST(rows_are_asked_for_and_filled)
{
    struct nine nine;
    begin_in_order(&nine, MUSLIN_SEAM_PRESS_TO_FIRST, MUSLIN_SEAM_PRESS_TO_FIRST);
    struct muslin_solution *solution = solved(nine.s.quilt, nine.block);
    struct muslin_pressing *plan = pressed(solution);
    struct muslin_pressing_total totals = { .size = (uint32_t)sizeof totals };
    CK_ROWS(muslin_pressing_seams, muslin_pressing_seam);
    CK_ROWS(muslin_pressing_children, muslin_pressing_child);
    CK_ROWS(muslin_pressing_exceptions, muslin_pressing_exception);
    ck_status(muslin_pressing_totals(NULL, &totals, NULL), MUSLIN_ERR_NULL);
    put_away(plan, solution);
    end_sewing(&nine.s);
}
END_TEST

/* Whatever allocation fails: the status, and nothing left behind. */
static void ck_allocations(struct sewn *s, muslin_id root, int64_t work)
{
    struct muslin_solution *solution = solved(s->quilt, root);
    const size_t blocks = s->memory.blocks;
    muslin_status status = MUSLIN_ERR_NO_MEMORY;
    for (size_t round = 1; status == MUSLIN_ERR_NO_MEMORY; round++) {
        struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        spec.work_limit = work;
        fail_at(s, round);
        status = muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL);
        ck_status(status, s->memory.has_failed ? MUSLIN_ERR_NO_MEMORY : MUSLIN_OK);
        ck_assert(status == MUSLIN_OK || plan == NULL);
        muslin_pressing_free(plan);
        ck_assert_uint_eq(s->memory.blocks, blocks);
        ck_assert_uint_eq(s->memory.mistakes, 0);
    }
    fail_at(s, 0);
    muslin_solution_free(solution);
}

/* Two by two of nine-patches that ask for every seam, the second row asks too, beside blocks that take much work. */
static muslin_id asked_beside_much_work(struct nine *nine)
{
    struct muslin_quilt *quilt = nine->s.quilt;
    const muslin_id first[] = { nine->dark, nine->light, nine->dark };
    const muslin_id second[] = { nine->light, nine->dark, nine->light };
    const muslin_id odd = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, first, 3);
    const muslin_id rows[] = { odd, join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_LAST, second, 3),
                               odd };
    const muslin_id block = join_pressed(quilt, MUSLIN_AXIS_DOWN, MUSLIN_SEAM_PRESS_TO_FIRST, rows, 3);
    const muslin_id blocks[] = { block, block, block, block };
    const muslin_id free_row = join_of(quilt, MUSLIN_AXIS_ACROSS, blocks, 4);
    const muslin_id asked_row = join_pressed(quilt, MUSLIN_AXIS_ACROSS, MUSLIN_SEAM_PRESS_TO_FIRST, blocks, 4);
    const muslin_id down[] = { free_row, asked_row, free_row, asked_row };
    const muslin_id beside[] = { join_of(quilt, MUSLIN_AXIS_DOWN, down, 4), thrown(&nine->s, 8, 8) };
    return join_of(quilt, MUSLIN_AXIS_ACROSS, beside, 2);
}

/* What was told, and when to end it: at the call that brings `calls` above 0. */
struct heard {
    int64_t calls;
    int64_t work;
    int64_t first; /* of what was told as best; -1: nothing yet */
    int64_t best;  /* the last of it */
    int64_t bound; /* the most that was told */
};

static int32_t end_it(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct heard *heard = context;
    ck_assert_int_ge(work, heard->work);
    ck_assert_int_le(bound, best);
    ck_assert(heard->first < 0 || best <= heard->best);
    heard->work = work;
    heard->first = heard->first < 0 ? best : heard->first;
    heard->best = best;
    heard->bound = bound > heard->bound ? bound : heard->bound;
    return ++heard->calls > 0;
}

/* Told from below zero it goes on for so many calls. What it is ended with is a plan, and without an end nothing
 * changes. Where nothing can be turned and all is searched, a call tells of a plan as good as the one with which the
 * last could be ended; where not, of the bound that the plan has in the end. There is no more work than for four plans.
 * */
static void ck_progress(const struct muslin_solution *solution, struct failing_allocator *own, int turns)
{
    int64_t before = INT64_MAX;
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    spec.work_limit = 2000000;
    struct muslin_pressing *whole = pressed(solution);
    const struct muslin_pressing_total best = totals_of(whole);
    ck_assert_int_lt(best.work, 5 * spec.work_limit);
    for (int64_t more = 0; more < 12; more++) {
        struct heard heard = { .calls = -more, .first = -1 };
        ck_ok(muslin_pressing_create(solution, &spec, &own->allocator, end_it, &heard, &plan, NULL));
        const struct muslin_pressing_total totals = totals_of(plan);
        ck_assert_int_le(heard.calls, 1);
        ck_assert_int_gt(heard.calls, -more);
        ck_assert_int_eq(heard.first, totals.alternating);
        ck_assert_int_ge(heard.best, totals.exceptions);
        ck_assert(turns || heard.calls < 1 || heard.best <= before);
        before = totals.exceptions;
        ck_assert_int_le(heard.work, totals.work);
        ck_assert(turns || heard.calls < 1 || totals.work < heard.work + MSL_TOLD_EACH);
        ck_assert_int_le(totals.work, heard.work + 2 * MSL_TOLD_EACH);
        ck_assert_int_le(heard.bound, best.exceptions);
        ck_assert(more < 2 || best.proven || heard.bound == best.least);
        ck_assert_int_ge(totals.exceptions, best.least);
        ck_assert_int_le(totals.exceptions, totals.alternating);
        ck_assert_int_eq(totals.alternating, best.alternating);
        ck_assert(heard.calls > 0 || memcmp(&totals, &best, sizeof best) == 0);
        muslin_pressing_free(plan);
        ck_assert(failing_is_clean(own));
    }
    muslin_pressing_free(whole);
}

START_TEST(progress_ends_the_search_with_a_plan)
{
    struct nine nine;
    struct failing_allocator own;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    const muslin_id too_much_work = thrown(&nine.s, 8, 8);
    const muslin_id much_work = thrown(&nine.s, 6, 11);
    const muslin_id little_work = thrown(&nine.s, 4, 3);
    const muslin_id roots[] = { two_held_blocks(&nine), too_much_work, much_work, little_work,
                                repeat_of(nine.s.quilt, nine.block, 3, 3), asked_beside_much_work(&nine) };
    for (size_t i = 0; i < sizeof roots / sizeof roots[0]; i++) {
        struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
        struct muslin_solution *solution = NULL;
        const size_t blocks = nine.s.memory.blocks;
        failing_start(&own, 0);
        ck_ok(muslin_solution_create(nine.s.quilt, roots[i], &spec, NULL, 0, 0, &own.allocator, &solution, NULL));
        ck_assert_uint_gt(own.blocks, 0);
        ck_assert_uint_eq(nine.s.memory.blocks, blocks);
        muslin_solution_free(solution);
        ck_assert(failing_is_clean(&own));
        solution = solved(nine.s.quilt, roots[i]);
        ck_progress(solution, &own, roots[i] != much_work && roots[i] != little_work);
        own.allocator.free = NULL;
        struct muslin_pressing_spec press = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        ck_status(muslin_pressing_create(solution, &press, &own.allocator, NULL, NULL, &plan, NULL), MUSLIN_ERR_NULL);
        muslin_solution_free(solution);
    }
    end_sewing(&nine.s);
}
END_TEST

START_TEST(a_failed_allocation_leaves_nothing_behind)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    ck_allocations(&nine.s, two_held_blocks(&nine), 1000);
    ck_allocations(&nine.s, thrown(&nine.s, 4, 3), 20000);
    ck_allocations(&nine.s, repeat_of(nine.s.quilt, nine.block, 3, 3), 1000);
    muslin_id blocks[13];
    for (int i = 0; i < 13; i++)
        blocks[i] = nine.block;
    ck_allocations(&nine.s, field_of(&nine.s, 3, 3, blocks), 1000);
    struct muslin_quilt_sixty_spec spec = MUSLIN_QUILT_SIXTY_SPEC_INIT;
    struct muslin_quilt_sixty_piece_spec piece = MUSLIN_QUILT_SIXTY_PIECE_SPEC_INIT;
    muslin_id rows = 0;
    spec.rows = 2;
    spec.height = nine.s.two;
    spec.end_fabric = nine.s.white;
    piece.fabric = nine.s.blue;
    const struct muslin_quilt_sixty_piece_spec pieces[] = { piece, piece };
    ck_ok(muslin_quilt_sixty(nine.s.quilt, &spec, pieces, sizeof piece, 2, &rows, NULL));
    const muslin_id star = unit_of(&nine.s, MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, 0, 2);
    const muslin_id round = pinwheel_of(nine.s.quilt, nine.light, nine.outer, nine.outer, nine.inner, star);
    const muslin_id two[] = { rows, turn_of(nine.s.quilt, rows, 2) };
    const muslin_id odd[] = { round, star, round };
    ck_allocations(&nine.s, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, odd, 3), 1000);
    ck_allocations(&nine.s, join_of(nine.s.quilt, MUSLIN_AXIS_DOWN, two, 2), 1000);
    end_sewing(&nine.s);
}
END_TEST

/* Memory as it may be found, whatever was in it. */
struct dirty {
    struct muslin_allocator allocator; /* its context is this struct */
    struct muslin_allocator usual;
    int with;
};

static void *dirty_alloc(void *context, size_t size)
{
    const struct dirty *dirty = context;
    void *block = dirty->usual.alloc(dirty->usual.context, size);
    return block == NULL ? NULL : memset(block, dirty->with, size);
}

static void *dirty_realloc(void *context, void *block, size_t old_size, size_t size)
{
    const struct dirty *dirty = context;
    unsigned char *grown = dirty->usual.realloc(dirty->usual.context, block, old_size, size);
    if (grown != NULL && size > old_size)
        memset(grown + old_size, dirty->with, size - old_size);
    return grown;
}

static void dirty_free(void *context, void *block, size_t size)
{
    const struct dirty *dirty = context;
    dirty->usual.free(dirty->usual.context, block, size);
}

static struct muslin_pressing *pressed_dirty(const struct muslin_solution *solution, int64_t work, int with)
{
    static struct dirty dirty;
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    spec.work_limit = work;
    ck_ok(muslin_allocator_libc(&dirty.usual));
    dirty.with = with;
    dirty.allocator = (struct muslin_allocator){ dirty_alloc, dirty_realloc, dirty_free, &dirty };
    ck_ok(muslin_pressing_create(solution, &spec, &dirty.allocator, NULL, NULL, &plan, NULL));
    return plan;
}

/* Two plans that say the same. */
static void ck_same_plan(const struct muslin_pressing *one, const struct muslin_pressing *other)
{
    size_t n;
    size_t m;
    const struct muslin_pressing_total totals = totals_of(one);
    const struct muslin_pressing_total others = totals_of(other);
    ck_assert(memcmp(&totals, &others, sizeof totals) == 0);
    struct muslin_pressing_seam *seams = seams_of(one, &n);
    struct muslin_pressing_seam *other_seams = seams_of(other, &m);
    ck_assert(n == m && memcmp(seams, other_seams, n * sizeof *seams) == 0);
    struct muslin_pressing_child *children = children_of(one, &n);
    struct muslin_pressing_child *other_children = children_of(other, &m);
    ck_assert(n == m && memcmp(children, other_children, n * sizeof *children) == 0);
    free(seams);
    free(other_seams);
    free(children);
    free(other_children);
}

START_TEST(plans_do_not_hang_on_what_memory_held_before)
{
    struct nine nine;
    begin_nine(&nine, MUSLIN_SEAM_PRESS_FREE, MUSLIN_SEAM_PRESS_FREE);
    struct sewn s;
    begin_sewing(&s);
    const muslin_id half = half_square(&s);
    const muslin_id halves[] = { half, mirror_of(s.quilt, half), half, turn_of(s.quilt, half, 1) };
    muslin_id blocks[13];
    for (int i = 0; i < 13; i++)
        blocks[i] = nine.block;
    const struct {
        struct muslin_quilt *quilt;
        muslin_id root;
    } tops[] = { { s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, halves, 4) },
                 { nine.s.quilt, two_held_blocks(&nine) },
                 { nine.s.quilt, thrown(&nine.s, 6, 11) },
                 { nine.s.quilt, thrown(&nine.s, 3, 2) },
                 { nine.s.quilt, repeat_of(nine.s.quilt, nine.block, 3, 3) },
                 { nine.s.quilt, field_of(&nine.s, 3, 3, blocks) },
                 { nine.s.quilt, asked_beside_much_work(&nine) } };
    for (size_t i = 0; i < COUNT_OF(tops); i++)
        for (int64_t work = 0; work <= 20000; work = 10 * work + 20) {
            struct muslin_solution *solution = solved(tops[i].quilt, tops[i].root);
            struct muslin_pressing *plans[] = { pressed_dirty(solution, work, 0), pressed_dirty(solution, work, 1),
                                                pressed_dirty(solution, work, 0xA5) };
            ck_same_plan(plans[0], plans[1]);
            ck_same_plan(plans[0], plans[2]);
            for (size_t k = 0; k < COUNT_OF(plans); k++)
                muslin_pressing_free(plans[k]);
            muslin_solution_free(solution);
        }
    end_sewing(&s);
    end_sewing(&nine.s);
}
END_TEST

/* Numbers pushed and popped by chance; each that comes is the least there is, by looking at all. */
START_TEST(a_heap_gives_the_least_first)
{
    enum { MOST_HELD = 50 };
    uint32_t numbers[MOST_HELD];
    uint32_t held[MOST_HELD];
    struct msl_heap heap = { numbers, 0 };
    uint64_t random = 7;
    for (int step = 0; step < 100000; step++) {
        const uint64_t used = heap.used;
        if (used < MOST_HELD && (used == 0 || draw(&random) % 5 < (step / 1000 % 2 == 0 ? 3u : 2u))) {
            held[used] = (uint32_t)(draw(&random) % 100);
            msl_heap_push(&heap, held[used]);
            ck_assert_uint_eq(heap.used, used + 1);
        } else {
            uint64_t least = 0;
            for (uint64_t i = 1; i < used; i++)
                least = held[i] < held[least] ? i : least;
            ck_assert_uint_eq(msl_heap_pop(&heap), held[least]);
            ck_assert_uint_eq(heap.used, used - 1);
            held[least] = held[used - 1];
        }
    }
}
END_TEST

/* ---- units held to their recipes -------------------------------------------------------------------------------- */

/* Seams of a unit by the regions between which they lie, as muslin_unit_steps() presses them; `open` counts those that
 * are opened, `first` and `second` those that go towards the piece of the region named. */
struct held_case {
    int32_t kind;
    int32_t method;
    size_t fabrics;
    int open;
    int closed;
};

START_TEST(units_can_be_held_to_their_recipes)
{
    static const struct held_case cases[] = {
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, 2, 0, 1 },
        { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_BIAS_STRIPS, 2, 1, 0 },
        { MUSLIN_UNIT_QUARTER_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 2, 1, 2 },      /* the long seam is opened */
        { MUSLIN_UNIT_SPLIT_QUARTER, MUSLIN_UNIT_METHOD_PIECES, 3, 0, 2 },
        { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 2, 0, 2 },
        { MUSLIN_UNIT_SQUARE_IN_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 2, 0, 4 },
        { MUSLIN_UNIT_EIGHT_POINTED_STAR, MUSLIN_UNIT_METHOD_PIECES, 2, 7, 16 }, /* diamonds open, what is set in to
                                                                                    them */
        { MUSLIN_UNIT_KALEIDOSCOPE, MUSLIN_UNIT_METHOD_PIECES, 3, 7, 4 },
    };
    for (size_t i = 0; i < COUNT_OF(cases); i++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
        struct muslin_pressing_spec pressing = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        struct muslin_pressing_seam rows[64];
        const muslin_id fabrics[] = { s.blue, s.white, s.white };
        muslin_id unit = 0;
        size_t count = 0;
        int open = 0;
        spec.kind = cases[i].kind;
        spec.method = cases[i].method;
        spec.width = fixed_of(s.quilt, WHOLE_IN(6));
        ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, cases[i].fabrics, &unit, NULL));
        const muslin_id two[] = { unit, turn_of(s.quilt, unit, 1) };
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
        pressing.units = 1;
        ck_ok(muslin_pressing_create(solution, &pressing, NULL, NULL, NULL, &plan, NULL));
        ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], COUNT_OF(rows), &count, NULL));
        for (size_t k = 0; k + 1 < count; k++) { /* the last is the join's */
            ck_assert_int_eq(rows[k].node, unit);
            ck_assert_int_eq(rows[k].other_way, 0);
            open += rows[k].towards == 0;
            if (rows[k].towards != 0)
                ck_assert_int_eq(rows[k].preferred, 1);
        }
        ck_assert_int_eq(open, cases[i].open);
        ck_assert_int_eq((int)count - 1 - open, cases[i].closed);
        put_away(plan, solution);
        end_sewing(&s);
    }
}
END_TEST

/* Half-squares of bias strips are opened, and so ask for nothing: a row of a square and one of them, which keeps its
 * order, is pressed the other way below itself. Of two at a time they are pressed, and it cannot be. */
START_TEST(open_units_are_in_nobodys_way)
{
    for (int32_t is_open = 0; is_open <= 1; is_open++) {
        struct sewn s;
        begin_sewing(&s);
        struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
        struct muslin_quilt_join_spec join = MUSLIN_QUILT_JOIN_SPEC_INIT;
        struct muslin_pressing_spec pressing = MUSLIN_PRESSING_SPEC_INIT;
        struct muslin_pressing *plan = NULL;
        const muslin_id fabrics[] = { s.blue, s.white };
        muslin_id pieces[] = { patch_of(s.quilt, s.blue, s.two, s.two), 0 };
        muslin_id row = 0;
        spec.method = is_open ? MUSLIN_UNIT_METHOD_BIAS_STRIPS : MUSLIN_UNIT_METHOD_TWO_AT_A_TIME;
        spec.width = s.two;
        ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &pieces[1], NULL));
        join.flags = MUSLIN_QUILT_JOIN_KEEPS_ORDER;
        ck_ok(muslin_quilt_join(s.quilt, &join, pieces, 2, &row, NULL));
        const muslin_id rows[] = { row, row };
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 2));
        pressing.units = 1;
        ck_ok(muslin_pressing_create(solution, &pressing, NULL, NULL, NULL, &plan, NULL));
        ck_assert_int_eq(totals_of(plan).meetings, 1);
        ck_assert_int_eq(totals_of(plan).exceptions, !is_open);
        put_away(plan, solution);
        end_sewing(&s);
    }
}
END_TEST

/* A goose points up between two triangles; its recipe presses both seams towards them: the left one left, the right one
 * right. A half-square goes towards its first region, below its rising seam: right. */
START_TEST(a_goose_is_pressed_outwards)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    struct muslin_pressing_spec pressing = MUSLIN_PRESSING_SPEC_INIT;
    const muslin_id fabrics[] = { s.blue, s.white };
    const int32_t kinds[] = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_HALF_SQUARE };
    for (int i = 0; i < 2; i++) {
        struct muslin_pressing *plan = NULL;
        struct muslin_pressing_seam rows[2];
        muslin_id unit = 0;
        size_t count = 0;
        spec.kind = kinds[i];
        spec.method = i == 0 ? MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME : MUSLIN_UNIT_METHOD_TWO_AT_A_TIME;
        spec.width = fixed_of(s.quilt, WHOLE_IN(4));
        ck_ok(muslin_quilt_unit(s.quilt, &spec, fabrics, 2, &unit, NULL));
        struct muslin_solution *solution = solved(s.quilt, unit);
        pressing.units = 1;
        ck_ok(muslin_pressing_create(solution, &pressing, NULL, NULL, NULL, &plan, NULL));
        ck_ok(muslin_pressing_seams(plan, rows, sizeof rows[0], 2, &count, NULL));
        ck_assert_uint_eq(count, i == 0 ? 2 : 1);
        for (size_t k = 0; k < count; k++) {
            int left = i == 0 && rows[k].from_x + rows[k].to_x < WHOLE_IN(4);
            ck_assert_int_eq(rows[k].press, left ? MUSLIN_PRESS_LEFT : MUSLIN_PRESS_RIGHT);
        }
        put_away(plan, solution);
    }
    end_sewing(&s);
}
END_TEST

Suite *pressing_suite(void);
Suite *pressing_suite(void)
{
    Suite *suite = suite_create("pressing");
    TCase *tests = tcase_create("pressing");
    tcase_set_timeout(tests, 60);
    tcase_add_test(tests, every_other_of_equal_rows_is_pressed_the_other_way);
    tcase_add_test(tests, nine_patches_nest_everywhere);
    tcase_add_test(tests, rails_meet_at_the_corners_of_blocks_alone);
    tcase_add_test(tests, places_two_repeats_apart_are_alike_in_long_joins);
    tcase_add_test(tests, exceptions_of_long_joins_are_told_at_the_first_two_repeats);
    tcase_add_test(tests, joins_that_ask_are_pressed_so_and_what_then_does_not_nest_is_told);
    tcase_add_test(tests, seams_pressed_open_meet_nothing);
    tcase_add_test(tests, seams_go_towards_the_darker_side_where_they_may);
    tcase_add_test(tests, seams_round_a_set_in_square_go_towards_the_darker_side);
    tcase_add_test(tests, nesting_comes_before_the_darker_side);
    tcase_add_test(tests, of_equally_many_copies_the_preferred_way_is_shown);
    tcase_add_test(tests, of_both_ways_the_one_that_more_seams_prefer_is_shown);
    tcase_add_test(tests, nine_patches_are_all_pressed_alike_and_every_other_one_is_turned);
    tcase_add_test(tests, prints_and_labels_forbid_to_turn_what_looks_otherwise);
    tcase_add_test(tests, a_print_that_comes_to_lie_as_the_other_did_is_turned);
    tcase_add_test(tests, blocks_are_turned_by_as_much_as_their_prints_allow);
    tcase_add_test(tests, edges_that_are_turned_have_the_same_allowances);
    tcase_add_test(tests, what_is_trimmed_later_is_turned_when_its_seams_go_as_far_in);
    tcase_add_test(tests, a_plan_that_turns_what_is_asked_for_is_proven_only_when_it_is);
    tcase_add_test(tests, what_can_be_pressed_the_other_way_need_not_be_turned);
    tcase_add_test(tests, what_is_turned_is_chosen_one_by_one);
    tcase_add_test(tests, blocks_that_are_asked_for_are_turned_one_by_one);
    tcase_add_test(tests, blocks_of_a_row_that_is_pressed_the_other_way_are_turned);
    tcase_add_test(tests, what_is_asked_for_in_part_is_turned);
    tcase_add_test(tests, open_seams_are_told_when_they_are_turned);
    tcase_add_test(tests, what_is_inside_must_look_the_same_as_well);
    tcase_add_test(tests, slanted_seams_take_the_place_of_slanted_ones_alone);
    tcase_add_test(tests, where_two_slanted_seams_end_at_one_place_nothing_is_turned);
    tcase_add_test(tests, what_can_never_be_turned_takes_no_search);
    tcase_add_test(tests, what_has_very_many_patches_is_not_turned);
    tcase_add_test(tests, segments_are_turned_end_for_end_where_that_is_the_same_and_else_cut_from_other_sets);
    tcase_add_test(tests, beside_seams_at_right_angles_slanted_ones_do_not_count);
    tcase_add_test(tests, a_pinwheel_of_half_squares_spins);
    tcase_add_test(tests, a_unit_is_shown_as_most_of_its_copies_are);
    tcase_add_test(tests, a_plain_piece_is_no_half_square);
    tcase_add_test(tests, the_seams_of_a_pinwheel_have_their_ends);
    tcase_add_test(tests, the_darker_of_two_is_the_one_that_is_stated_so);
    tcase_add_test(tests, what_is_of_several_fabrics_is_as_dark_as_nothing);
    tcase_add_test(tests, below_is_as_dark_as_beside);
    tcase_add_test(tests, the_seams_of_a_mitred_border_have_their_ends);
    tcase_add_test(tests, each_piece_of_a_row_is_compared_with_its_neighbours);
    tcase_add_test(tests, edges_lie_along_the_seams_they_name);
    tcase_add_test(tests, the_first_region_of_a_unit_is_preferred_unless_darkness_says_otherwise);
    tcase_add_test(tests, two_slanted_seams_at_one_point_both_meet_what_is_there);
    tcase_add_test(tests, stars_meet_stars_and_regions_that_are_not_the_first_have_no_preference);
    tcase_add_test(tests, seams_that_stand_upright_on_a_trimmed_edge_meet_there_and_others_do_not);
    tcase_add_test(tests, what_is_trimmed_bit_by_bit_is_trimmed_by_all_of_it);
    tcase_add_test(tests, a_point_is_trimmed_away_by_a_tick);
    tcase_add_test(tests, a_row_on_end_meets_a_column);
    tcase_add_test(tests, what_is_sewn_round_a_centre_meets_along_its_four_seams);
    tcase_add_test(tests, on_every_side_of_a_pinwheel_two_seams_end);
    tcase_add_test(tests, small_squares_round_a_centre_meet_all_along_its_seams);
    tcase_add_test(tests, what_is_lower_lies_at_the_top);
    tcase_add_test(tests, two_ticks_apart_is_one_place);
    tcase_add_test(tests, blocks_on_point_meet_as_in_a_straight_setting);
    tcase_add_test(tests, exceptions_on_point_lie_on_the_seams_between_blocks);
    tcase_add_test(tests, points_on_point_meet_within_rows);
    tcase_add_test(tests, points_round_a_centre_meet_the_seams_between_arms);
    tcase_add_test(tests, no_seam_meets_what_ends_at_its_own_end);
    tcase_add_test(tests, geese_on_point_meet_from_row_to_row);
    tcase_add_test(tests, exceptions_on_point_are_told_where_they_lie_in_the_field);
    tcase_add_test(tests, sixty_degree_rows_are_pressed_in_turn);
    tcase_add_test(tests, slanted_seams_meet_where_one_goes_on_from_another);
    tcase_add_test(tests, nine_patches_nest_wherever_they_fall);
    tcase_add_test(tests, more_work_never_makes_it_worse_and_the_bound_holds);
    tcase_add_test(tests, what_hangs_together_in_many_places_takes_work);
    tcase_add_test(tests, what_does_not_hang_together_adds_up);
    tcase_add_test(tests, the_same_request_gives_the_same_plan);
    tcase_add_test(tests, edges_of_too_many_pieces_are_refused);
    tcase_add_test(tests, specs_and_outputs_keep_the_rules_of_structs);
    tcase_add_test(tests, rows_are_asked_for_and_filled);
    tcase_add_test(tests, progress_ends_the_search_with_a_plan);
    tcase_add_test(tests, a_failed_allocation_leaves_nothing_behind);
    tcase_add_test(tests, plans_do_not_hang_on_what_memory_held_before);
    tcase_add_test(tests, a_heap_gives_the_least_first);
    tcase_add_test(tests, units_can_be_held_to_their_recipes);
    tcase_add_test(tests, open_units_are_in_nobodys_way);
    tcase_add_test(tests, a_goose_is_pressed_outwards);
    suite_add_tcase(suite, tests);
    return suite;
}
