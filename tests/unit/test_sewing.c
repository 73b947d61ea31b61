/* test_sewing.c - the order of sewing, against tops sewn on paper.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt.h"
#include "test_rounds.h"

enum { STEPS_MOST = 40 };

/* The steps of a top. */
struct steps {
    struct muslin_sewing_step rows[STEPS_MOST];
    size_t count;
};

static struct steps steps_of(const struct muslin_solution *solution)
{
    struct steps steps;
    ck_ok(muslin_sewing_steps(solution, steps.rows, sizeof steps.rows[0], STEPS_MOST, &steps.count, NULL));
    return steps;
}

static void ck_step(const struct muslin_sewing_step *row, int32_t kind, muslin_id node, int64_t alike, int64_t pieces,
                    int64_t seams)
{
    ck_assert_int_eq(row->kind, kind);
    ck_assert_int_eq(row->node, node);
    ck_assert_int_eq(row->alike, alike);
    ck_assert_int_eq(row->pieces, pieces);
    ck_assert_int_eq(row->seams, seams);
    ck_assert_int_eq(row->chain, alike > 1 && seams > 0);
}

static void ck_sewn(const struct muslin_sewing_step *row, muslin_len longest, muslin_len sewn, muslin_len width,
                    muslin_len height)
{
    ck_assert_int_eq(row->seam_longest, longest);
    ck_assert_int_eq(row->sewn, sewn);
    ck_assert_int_eq(row->unfinished_width, width);
    ck_assert_int_eq(row->unfinished_height, height);
}

/* What goes into a step: node, step and how many of each, in threes. */
static void ck_feeds(const struct muslin_solution *solution, int64_t step, const int64_t (*expected)[3], size_t n)
{
    struct muslin_sewing_feed rows[8];
    size_t count = 0;
    ck_ok(muslin_sewing_feeds(solution, step, rows, sizeof rows[0], 8, &count, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++) {
        ck_assert_int_eq(rows[i].node, expected[i][0]);
        ck_assert_int_eq(rows[i].step, expected[i][1]);
        ck_assert_int_eq(rows[i].each, expected[i][2]);
    }
    ck_assert_int_eq(steps_of(solution).rows[step].feeds, (int64_t)n);
}

static struct muslin_sewing_total totals_of(const struct muslin_solution *solution)
{
    struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
    return totals;
}

static struct muslin_solution *solved_tops(struct muslin_quilt *quilt, muslin_id root, int64_t tops)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    spec.tops = tops;
    ck_ok(muslin_solution_create(quilt, root, &spec, NULL, 0, 0, NULL, &solution, NULL));
    return solution;
}

/* ---- strip-pieced ----------------------------------------------------------------------------------------------- */

/* Nine-patches of 2 in squares: two rows with the blue outside, one with the white. */
struct nine_patch {
    struct sewn s;
    muslin_id blue;
    muslin_id white;
    muslin_id outer;
    muslin_id inner;
    muslin_id block;
};

static void begin_nine_patch(struct nine_patch *nine)
{
    begin_sewing(&nine->s);
    struct muslin_quilt *quilt = nine->s.quilt;
    muslin_id b = patch_of(quilt, nine->s.blue, nine->s.two, nine->s.two);
    muslin_id w = patch_of(quilt, nine->s.white, nine->s.two, nine->s.two);
    const muslin_id outer[] = { b, w, b };
    const muslin_id inner[] = { w, b, w };
    nine->blue = b;
    nine->white = w;
    nine->outer = join_of(quilt, MUSLIN_AXIS_ACROSS, outer, 3);
    nine->inner = join_of(quilt, MUSLIN_AXIS_ACROSS, inner, 3);
    const muslin_id rows[] = { nine->outer, nine->inner, nine->outer };
    nine->block = join_of(quilt, MUSLIN_AXIS_DOWN, rows, 3);
}

/* Nine blocks need eighteen outer segments, and a set of 40 in gives sixteen. Example: nine-patches from two strip
 * sets: sets, segments, sets, segments, join. */
START_TEST(nine_patches_from_two_strip_sets)
{
    struct nine_patch nine;
    begin_nine_patch(&nine);
    struct muslin_solution *solution = solved_tops(nine.s.quilt, nine.block, 9);
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 5);
    ck_step(&steps.rows[0], MUSLIN_SEWING_SET, nine.outer, 2, 3, 2);
    ck_sewn(&steps.rows[0], WHOLE_IN(40), WHOLE_IN(160), IN(6, 1, 2), WHOLE_IN(40));
    ck_step(&steps.rows[1], MUSLIN_SEWING_SEGMENTS, nine.outer, 18, 1, 0);
    ck_sewn(&steps.rows[1], 0, 0, IN(6, 1, 2), IN(2, 1, 2));
    ck_step(&steps.rows[2], MUSLIN_SEWING_SET, nine.inner, 1, 3, 2);
    ck_sewn(&steps.rows[2], WHOLE_IN(40), WHOLE_IN(80), IN(6, 1, 2), WHOLE_IN(40));
    ck_step(&steps.rows[3], MUSLIN_SEWING_SEGMENTS, nine.inner, 9, 1, 0);
    ck_step(&steps.rows[4], MUSLIN_SEWING_JOIN, nine.block, 9, 3, 2);
    ck_sewn(&steps.rows[4], IN(6, 1, 2), WHOLE_IN(117), IN(6, 1, 2), IN(6, 1, 2));
    const int64_t stacks[] = { 0, 0, 1, 1, 2 };
    for (int i = 0; i < 5; i++)
        ck_assert_int_eq(steps.rows[i].stack, stacks[i]);
    const int64_t outer_set[][3] = { { nine.blue, -1, 2 }, { nine.white, -1, 1 } };
    const int64_t outer[][3] = { { nine.outer, 0, 1 } };
    const int64_t inner_set[][3] = { { nine.white, -1, 2 }, { nine.blue, -1, 1 } };
    const int64_t inner[][3] = { { nine.inner, 2, 1 } };
    /* Example: the join of a nine-patch needs two of one row and one of the other. */
    const int64_t block[][3] = { { nine.outer, 1, 2 }, { nine.inner, 3, 1 } };
    ck_feeds(solution, 0, outer_set, 2);
    ck_feeds(solution, 1, outer, 1);
    ck_feeds(solution, 2, inner_set, 2);
    ck_feeds(solution, 3, inner, 1);
    ck_feeds(solution, 4, block, 2);
    struct muslin_sewing_total totals = totals_of(solution);
    ck_assert_int_eq(totals.steps, 5);
    ck_assert_int_eq(totals.seams, 2 * 2 + 2 + 9 * 2);
    ck_assert_int_eq(totals.sewn, WHOLE_IN(160 + 80 + 117));
    ck_assert_int_eq(totals.in_sets, WHOLE_IN(240));
    ck_assert_int_eq(totals.width_seams, 2);
    ck_assert_int_eq(totals.height_seams, 2);
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* Piece by piece, the rows are joins like any other. */
START_TEST(nine_patches_piece_by_piece)
{
    struct nine_patch nine;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_nine_patch(&nine);
    spec.strip_piecing = MUSLIN_STRIP_PIECING_NEVER;
    ck_ok(muslin_solution_create(nine.s.quilt, nine.block, &spec, NULL, 0, 0, NULL, &solution, NULL));
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 3);
    ck_step(&steps.rows[0], MUSLIN_SEWING_JOIN, nine.outer, 2, 3, 2);
    ck_sewn(&steps.rows[0], IN(2, 1, 2), WHOLE_IN(10), IN(6, 1, 2), IN(2, 1, 2));
    ck_step(&steps.rows[1], MUSLIN_SEWING_JOIN, nine.inner, 1, 3, 2);
    ck_step(&steps.rows[2], MUSLIN_SEWING_JOIN, nine.block, 1, 3, 2);
    ck_assert_int_eq(steps.rows[2].stack, 2);
    const int64_t outer[][3] = { { nine.blue, -1, 2 }, { nine.white, -1, 1 } };
    ck_feeds(solution, 0, outer, 2);
    ck_assert_int_eq(totals_of(solution).in_sets, 0);
    ck_assert_int_eq(totals_of(solution).sewn, WHOLE_IN(10 + 5 + 13));
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* Rail fence: twenty blocks of three strips in a chessboard of turns, against the seams that supplies counts. */
START_TEST(a_rail_fence_has_the_seams_that_supplies_counts)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id six = times_of(s.quilt, s.two, 3);
    muslin_id blue = patch_of(s.quilt, s.blue, s.two, six);
    muslin_id white = patch_of(s.quilt, s.white, s.two, six);
    const muslin_id strips[] = { blue, white, blue };
    muslin_id block = join_of(s.quilt, MUSLIN_AXIS_ACROSS, strips, 3);
    const int32_t turns[] = { 0, 1, 1, 0 };
    muslin_id top = 0;
    ck_ok(muslin_quilt_repeat(s.quilt, block, 4, 5, turns, 4, 2, 2, &top, NULL));
    struct muslin_solution *solution = solved(s.quilt, top);
    struct muslin_piecing_spec spec = MUSLIN_PIECING_SPEC_INIT;
    struct muslin_piecing piecing = { .size = (uint32_t)sizeof piecing };
    spec.sets = 4; /* six segments of 6 1/2 in from 40 in, twenty blocks */
    spec.strips_per_set = 3;
    spec.tops = 1;
    spec.columns = 4;
    spec.rows = 5;
    spec.block_width = spec.block_height = WHOLE_IN(6);
    ck_ok(muslin_piecing_plan(&spec, &piecing, NULL));
    struct muslin_sewing_total totals = totals_of(solution);
    ck_assert_int_eq(totals.sewn, piecing.total);
    ck_assert_int_eq(totals.in_sets, piecing.in_sets);
    ck_assert_int_eq(totals.seams, piecing.seams);
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 5); /* set, segments, two kinds of rows, the top */
    ck_step(&steps.rows[0], MUSLIN_SEWING_SET, block, 4, 3, 2);
    ck_step(&steps.rows[1], MUSLIN_SEWING_SEGMENTS, block, 20, 1, 0);
    ck_assert_int_eq(steps.rows[2].alike, 3);
    ck_assert_int_eq(steps.rows[3].alike, 2);
    ck_step(&steps.rows[4], MUSLIN_SEWING_JOIN, top, 1, 5, 4);
    /* the block and the block turned are one thing that goes into a row */
    const int64_t row[][3] = { { block, 1, 4 } };
    ck_feeds(solution, 2, row, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- other kinds ------------------------------------------------------------------------------------------------ */

static muslin_id unit_of(struct sewn *s, int32_t kind, int32_t method, muslin_id width, muslin_id height)
{
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    const muslin_id fabrics[] = { s->blue, s->white };
    muslin_id id = 0;
    spec.width = width;
    spec.height = height;
    spec.kind = kind;
    spec.method = method;
    ck_ok(muslin_quilt_unit(s->quilt, &spec, fabrics, 2, &id, NULL));
    return id;
}

/* A star of a 4 in square, four geese of 4 x 2 in and four corners of 2 in: 8 in. The geese, four at a time, are sewn
 * along two slopes of 2 sqrt 2 in, 22989 ticks, each 1/4 in longer at both ends. */
START_TEST(a_star)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id four = times_of(s.quilt, s.two, 2);
    muslin_id square = patch_of(s.quilt, s.blue, four, four);
    muslin_id corner = patch_of(s.quilt, s.white, s.two, s.two);
    muslin_id goose = unit_of(&s, MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_FOUR_AT_A_TIME, four, s.two);
    const muslin_id ends[] = { corner, goose, corner };
    muslin_id end = join_of(s.quilt, MUSLIN_AXIS_ACROSS, ends, 3);
    const muslin_id middles[] = { turn_of(s.quilt, goose, 3), square, turn_of(s.quilt, goose, 1) };
    muslin_id middle = join_of(s.quilt, MUSLIN_AXIS_ACROSS, middles, 3);
    const muslin_id all[] = { end, middle, turn_of(s.quilt, end, 2) };
    muslin_id star = join_of(s.quilt, MUSLIN_AXIS_DOWN, all, 3);
    struct muslin_solution *solution = solved_tops(s.quilt, star, 3);
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 4);
    const muslin_len slope = 22989 + IN(0, 1, 2);
    ck_step(&steps.rows[0], MUSLIN_SEWING_UNIT, goose, 12, 3, 2);
    ck_sewn(&steps.rows[0], slope, 12 * 2 * slope, IN(4, 1, 2), IN(2, 1, 2));
    ck_assert_int_eq(steps.rows[0].feeds, 0);
    ck_step(&steps.rows[1], MUSLIN_SEWING_JOIN, end, 6, 3, 2);
    ck_sewn(&steps.rows[1], IN(2, 1, 2), WHOLE_IN(30), IN(8, 1, 2), IN(2, 1, 2));
    ck_step(&steps.rows[2], MUSLIN_SEWING_JOIN, middle, 3, 3, 2);
    ck_sewn(&steps.rows[2], IN(4, 1, 2), WHOLE_IN(27), IN(8, 1, 2), IN(4, 1, 2));
    ck_step(&steps.rows[3], MUSLIN_SEWING_JOIN, star, 3, 3, 2);
    ck_sewn(&steps.rows[3], IN(8, 1, 2), WHOLE_IN(51), IN(8, 1, 2), IN(8, 1, 2));
    const int64_t end_feeds[][3] = { { corner, -1, 2 }, { goose, 0, 1 } };
    const int64_t middle_feeds[][3] = { { goose, 0, 2 }, { square, -1, 1 } };
    const int64_t star_feeds[][3] = { { end, 1, 2 }, { middle, 2, 1 } };
    ck_feeds(solution, 0, NULL, 0);
    ck_feeds(solution, 1, end_feeds, 2);
    ck_feeds(solution, 2, middle_feeds, 2);
    ck_feeds(solution, 3, star_feeds, 2);
    ck_assert_int_eq(totals_of(solution).sewn, 24 * slope + WHOLE_IN(30 + 27 + 51));
    ck_assert_int_eq(totals_of(solution).seams, 24 + 12 + 6 + 6);
    muslin_solution_free(solution);
    /* a recipe makes four: with one goose three are sewn that nobody needs */
    solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, ends, 3));
    steps = steps_of(solution);
    ck_assert_int_eq(steps.rows[0].alike, 4);
    ck_assert_int_eq(steps.rows[0].sewn, 4 * 2 * slope);
    ck_assert_int_eq(steps.rows[1].alike, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Four 2 x 4 in rectangles round a 2 in square: four seams, each along a rectangle's raw side of 4 1/2 in. */
START_TEST(a_pinwheel)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id upright = patch_of(s.quilt, s.white, s.two, times_of(s.quilt, s.two, 2));
    muslin_id level = turn_of(s.quilt, upright, 1);
    const struct muslin_quilt_pinwheel_spec spec = { sizeof spec, 0, square, level, upright, level, upright };
    muslin_id node = 0;
    ck_ok(muslin_quilt_pinwheel(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved_tops(s.quilt, node, 2);
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 1);
    ck_step(&steps.rows[0], MUSLIN_SEWING_PINWHEEL, node, 2, 5, 4);
    ck_sewn(&steps.rows[0], IN(4, 1, 2), WHOLE_IN(36), IN(6, 1, 2), IN(6, 1, 2));
    const int64_t feeds[][3] = { { square, -1, 1 }, { upright, -1, 4 } };
    ck_feeds(solution, 0, feeds, 2);
    muslin_solution_free(solution);
    /* unequal arms round 5 x 6: 600, 1000, 700 and 900 ticks long, without allowance */
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec raw = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    ck_ok(muslin_quilt_seam(s.quilt, &raw.id, NULL, NULL));
    const muslin_len sizes[][2] = { { 500, 600 }, { 600, 400 }, { 200, 1000 }, { 700, 300 }, { 100, 900 } };
    muslin_id arms[5];
    for (int i = 0; i < 5; i++)
        arms[i] = patch_of(s.quilt, s.blue, fixed_of(s.quilt, sizes[i][0]), fixed_of(s.quilt, sizes[i][1]));
    const struct muslin_quilt_pinwheel_spec unequal = {
        sizeof unequal, 0, arms[0], arms[1], arms[2], arms[3], arms[4]
    };
    ck_ok(muslin_quilt_pinwheel(s.quilt, &unequal, &node, NULL));
    ck_ok(muslin_solution_create(s.quilt, node, &solve, &raw, sizeof raw, 1, NULL, &solution, NULL));
    steps = steps_of(solution);
    ck_sewn(&steps.rows[0], 1000, 600 + 1000 + 700 + 900, 800, 1300);
    muslin_solution_free(solution);
    /* a top that is 100 too short is eased along the longer side; one 100 too long is itself the longer */
    struct muslin_quilt_pinwheel_spec wrong = unequal;
    wrong.top = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 500), fixed_of(s.quilt, 400));
    ck_ok(muslin_quilt_pinwheel(s.quilt, &wrong, &node, NULL));
    ck_ok(muslin_solution_create(s.quilt, node, &solve, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_assert_int_eq(steps_of(solution).rows[0].sewn, 600 + 1000 + 700 + 900);
    muslin_solution_free(solution);
    wrong.top = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 700), fixed_of(s.quilt, 400));
    ck_ok(muslin_quilt_pinwheel(s.quilt, &wrong, &node, NULL));
    ck_ok(muslin_solution_create(s.quilt, node, &solve, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_assert_int_eq(steps_of(solution).rows[0].sewn, 700 + 1000 + 700 + 900);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* A 6 in square with strips of 2 in at left and bottom: two seams along 6 1/2 in, and a mitre of 2 sqrt 2 in with 1/4
 * in at both ends. */
START_TEST(an_attic_window)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id six = times_of(s.quilt, s.two, 3);
    muslin_id square = patch_of(s.quilt, s.blue, six, six);
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    muslin_id node = 0;
    spec.centre = square;
    spec.left_width = spec.bottom_width = s.two;
    spec.left_fabric = spec.bottom_fabric = s.white;
    ck_ok(muslin_quilt_set_in(s.quilt, &spec, &node, NULL));
    struct muslin_solution *solution = solved_tops(s.quilt, node, 4);
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 1);
    ck_step(&steps.rows[0], MUSLIN_SEWING_SET_IN, node, 4, 3, 3);
    ck_sewn(&steps.rows[0], IN(6, 1, 2), 4 * (WHOLE_IN(13) + 22989 + IN(0, 1, 2)), IN(8, 1, 2), IN(8, 1, 2));
    const int64_t feeds[][3] = { { square, -1, 1 } };
    ck_feeds(solution, 0, feeds, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* A top solved without seam allowance, and how much its first step sews. */
static muslin_len sewn_without_seam(const struct sewn *s, const struct muslin_quilt_set_in_spec *spec)
{
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec raw = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    muslin_id node = 0;
    ck_ok(muslin_quilt_seam(s->quilt, &raw.id, NULL, NULL));
    ck_ok(muslin_quilt_set_in(s->quilt, spec, &node, NULL));
    ck_ok(muslin_solution_create(s->quilt, node, &solve, &raw, sizeof raw, 1, NULL, &solution, NULL));
    const muslin_len sewn = steps_of(solution).rows[0].sewn;
    muslin_solution_free(solution);
    return sewn;
}

/* Mitres of 3 : 4, 5 : 12, 8 : 15 and 20 : 21 are whole, 5, 13, 17 and 29; sqrt 2 x 10^6 is not, nor sqrt 3 x 10^6. */
START_TEST(mitres_of_unequal_strips)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len cases[][3] = { { 3, 4, 5 },       { 12, 5, 13 },    { 8, 15, 17 }, { 20, 21, 29 },
                                    { 1000000, 1000000, 1414214 }, { 1, 1, 1 }, { 2, 2, 3 }, { 1, 2, 2 } };
    muslin_id square = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 100), fixed_of(s.quilt, 200));
    for (size_t i = 0; i < sizeof cases / sizeof cases[0]; i++) {
        struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
        spec.centre = square;
        spec.right_width = fixed_of(s.quilt, cases[i][0]);
        spec.top_width = fixed_of(s.quilt, cases[i][1]);
        spec.right_fabric = spec.top_fabric = s.white;
        ck_assert_int_eq(sewn_without_seam(&s, &spec), 200 + 100 + cases[i][2]);
    }
    end_sewing(&s);
}
END_TEST

/* Patches 5, 7, 6 3/4, 10 and 4 in long, one below the other and side by side, with 1/4 in at their ends, the middle
 * one with 1/2 in: before sewing it is 7 3/4 in long, longer than the 7 1/2 in of the one before. */
START_TEST(unequal_children_are_sewn_along_the_longer)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_len lengths[] = { WHOLE_IN(5), WHOLE_IN(7), IN(6, 3, 4), WHOLE_IN(10), WHOLE_IN(4) };
    const muslin_id half = fixed_of(s.quilt, IN(0, 1, 2));
    for (int axis = MUSLIN_AXIS_ACROSS; axis <= MUSLIN_AXIS_DOWN; axis++) {
        muslin_id children[5];
        for (int i = 0; i < 5; i++) {
            struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
            const muslin_id length = fixed_of(s.quilt, lengths[i]);
            spec.fabric = s.blue;
            spec.width = axis == MUSLIN_AXIS_DOWN ? length : s.two;
            spec.height = axis == MUSLIN_AXIS_DOWN ? s.two : length;
            if (i == 2 && axis == MUSLIN_AXIS_DOWN)
                spec.left = spec.right = half;
            else if (i == 2)
                spec.top = spec.bottom = half;
            ck_ok(muslin_quilt_patch(s.quilt, &spec, &children[i], NULL));
        }
        struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, axis, children, 5));
        struct steps steps = steps_of(solution);
        ck_assert_uint_eq(steps.count, 1);
        ck_assert_int_eq(steps.rows[0].seam_longest, IN(10, 1, 2));
        ck_assert_int_eq(steps.rows[0].sewn, IN(7, 1, 2) + IN(7, 3, 4) + IN(10, 1, 2) + IN(10, 1, 2));
        muslin_solution_free(solution);
    }
    end_sewing(&s);
}
END_TEST

/* Half-squares two at a time: one of 2 in, one by another measure that is 2 in as well, which share a recipe, and
 * between them one with its fabrics the other way, which has one to spare. */
START_TEST(units_of_one_size_and_the_same_fabrics_share_their_recipe)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id colours[][2] = { { s.blue, s.white }, { s.white, s.blue }, { s.blue, s.white } };
    const muslin_id widths[] = { s.two, s.two, fixed_of(s.quilt, WHOLE_IN(2)) };
    muslin_id units[3];
    for (int i = 0; i < 3; i++) {
        struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
        spec.width = widths[i];
        ck_ok(muslin_quilt_unit(s.quilt, &spec, colours[i], 2, &units[i], NULL));
    }
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, units, 3));
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 4);
    for (int i = 0; i < 3; i++)
        ck_step(&steps.rows[i], MUSLIN_SEWING_UNIT, units[i], i == 1 ? 2 : 1, 2, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* One strip at 100 x 200: as long as the side that it is sewn to. */
START_TEST(a_strip_is_sewn_along_its_side)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id patch = patch_of(s.quilt, s.blue, fixed_of(s.quilt, 100), fixed_of(s.quilt, 200));
    for (int side = 0; side < 4; side++) {
        struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
        muslin_id *const widths[] = { &spec.left_width, &spec.right_width, &spec.top_width, &spec.bottom_width };
        muslin_id *const fabrics[] = { &spec.left_fabric, &spec.right_fabric, &spec.top_fabric, &spec.bottom_fabric };
        spec.centre = patch;
        *widths[side] = s.two;
        *fabrics[side] = s.white;
        ck_assert_int_eq(sewn_without_seam(&s, &spec), side < 2 ? 200 : 100);
    }
    end_sewing(&s);
}
END_TEST

/* The very first node is a unit, and the first step; nothing goes into it. */
START_TEST(the_first_node_may_be_the_first_step)
{
    struct sewn s;
    begin_sewing(&s);
    const muslin_id unit = unit_of(&s, MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_TWO_AT_A_TIME, s.two, 0);
    const muslin_id pair[] = { unit, unit };
    struct muslin_solution *solution = solved(s.quilt, join_of(s.quilt, MUSLIN_AXIS_ACROSS, pair, 2));
    const int64_t feeds[][3] = { { unit, 0, 2 } };
    ck_feeds(solution, 0, NULL, 0);
    ck_feeds(solution, 1, feeds, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Joined, trimmed, joined again: a trim is a step in which nothing is sewn. */
START_TEST(a_trimmed_row)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id square = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id row = repeat_of(s.quilt, square, 3, 1);
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id trimmed = 0;
    spec.left = spec.right = fixed_of(s.quilt, WHOLE_IN(1));
    ck_ok(muslin_quilt_trim(s.quilt, row, &spec, &trimmed, NULL));
    muslin_id top = repeat_of(s.quilt, trimmed, 1, 4);
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    solve.strip_piecing = MUSLIN_STRIP_PIECING_NEVER;
    ck_ok(muslin_solution_create(s.quilt, top, &solve, NULL, 0, 0, NULL, &solution, NULL));
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 3);
    ck_step(&steps.rows[0], MUSLIN_SEWING_JOIN, row, 4, 3, 2);
    ck_step(&steps.rows[1], MUSLIN_SEWING_TRIM, trimmed, 4, 1, 0);
    ck_sewn(&steps.rows[1], 0, 0, IN(4, 1, 2), IN(2, 1, 2));
    ck_step(&steps.rows[2], MUSLIN_SEWING_JOIN, top, 1, 4, 3);
    ck_sewn(&steps.rows[2], IN(4, 1, 2), 3 * IN(4, 1, 2), IN(4, 1, 2), IN(8, 1, 2));
    ck_assert_int_eq(steps.rows[1].stack, 1);
    const int64_t feeds[][3] = { { row, 0, 1 } };
    ck_feeds(solution, 1, feeds, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Mirror images are sewn along with what they mirror; what is only measured is not sewn. */
START_TEST(mirrored_nodes_take_no_step_of_their_own)
{
    struct nine_patch nine;
    begin_nine_patch(&nine);
    struct muslin_quilt *quilt = nine.s.quilt;
    muslin_id only_measured = repeat_of(quilt, nine.block, 5, 1);
    muslin_id strip = patch_of(quilt, nine.s.white, extent_of(quilt, only_measured, MUSLIN_AXIS_ACROSS), nine.s.two);
    const muslin_id pair[] = { nine.block, mirror_of(quilt, nine.block) };
    const muslin_id all[] = { join_of(quilt, MUSLIN_AXIS_ACROSS, pair, 2), strip };
    muslin_id top = join_of(quilt, MUSLIN_AXIS_DOWN, all, 2);
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    solve.strip_piecing = MUSLIN_STRIP_PIECING_NEVER;
    ck_ok(muslin_solution_create(quilt, top, &solve, NULL, 0, 0, NULL, &solution, NULL));
    struct steps steps = steps_of(solution);
    ck_assert_uint_eq(steps.count, 5);
    ck_step(&steps.rows[2], MUSLIN_SEWING_JOIN, nine.block, 2, 3, 2);
    const int64_t feeds[][3] = { { nine.block, 2, 2 } };
    ck_feeds(solution, 3, feeds, 1);
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

START_TEST(a_patch_alone_is_not_sewn)
{
    struct sewn s;
    size_t count = 7;
    struct muslin_sewing_feed feed;
    begin_sewing(&s);
    muslin_id patch = patch_of(s.quilt, s.blue, s.two, s.two);
    struct muslin_solution *solution = solved(s.quilt, turn_of(s.quilt, patch, 1));
    ck_ok(muslin_sewing_steps(solution, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 0);
    ck_assert_int_eq(totals_of(solution).sewn, 0);
    ck_assert_int_eq(totals_of(solution).steps, 0);
    ck_status(muslin_sewing_feeds(solution, 0, &feed, sizeof feed, 1, &count, NULL), MUSLIN_ERR_INDEX);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- totals ----------------------------------------------------------------------------------------------------- */

/* 357 in of seam, by 5 : 2 and 15 %: 892 1/2 in of thread, 1026 3/8 in with waste. */
START_TEST(thread_for_nine_patches)
{
    struct nine_patch nine;
    begin_nine_patch(&nine);
    struct muslin_solution *solution = solved_tops(nine.s.quilt, nine.block, 9);
    struct muslin_thread_spec spec = MUSLIN_THREAD_SPEC_INIT;
    struct muslin_thread thread = { .size = (uint32_t)sizeof thread };
    spec.seam = totals_of(solution).sewn;
    ck_ok(muslin_thread_plan(&spec, &thread, NULL));
    ck_assert_int_eq(thread.thread, IN(892, 1, 2));
    ck_assert_int_eq(thread.with_waste, IN(1026, 3, 8));
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* Twelve strips side by side, one down. Example: eleven seams, each off by 1/32 in: 11/32 in at worst. */
START_TEST(errors_of_seams_add_up)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id row = repeat_of(s.quilt, patch_of(s.quilt, s.blue, s.two, s.two), 12, 1);
    struct muslin_solution *solution = solved(s.quilt, row);
    struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_sewing_totals(solution, IN(0, 1, 32), 0, &totals, NULL));
    ck_assert_int_eq(totals.width_seams, 11);
    ck_assert_int_eq(totals.height_seams, 0);
    ck_assert_int_eq(totals.width_worst, IN(0, 11, 32));
    /* sqrt 11 x 254 ticks = 842.4 */
    ck_assert_int_eq(totals.width_likely, 843);
    ck_assert_int_eq(totals.height_worst, 0);
    ck_assert_int_eq(totals.height_likely, 0);
    /* each of two cut edges off by 10 ticks: down, one piece; across, twelve */
    ck_ok(muslin_sewing_totals(solution, 0, 10, &totals, NULL));
    ck_assert_int_eq(totals.height_worst, 20);
    ck_assert_int_eq(totals.height_likely, 15); /* 14.1 */
    ck_assert_int_eq(totals.width_worst, 240);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* A square of two pieces with a zigzag of fifteen seams between them, each about as long as the square is wide. */
static muslin_id zigzag_of(struct sewn *s, muslin_id fabric, muslin_len size)
{
    enum { POINTS = 16, PIECE = POINTS + 2, ROWS = 4 + 2 * PIECE };
    struct muslin_corner_spec rows[ROWS];
    const muslin_len side = MUSLIN_SHAPE_SIZE_MAX;
    const muslin_len corner_x[] = { 0, side, side, 0 };
    const muslin_len corner_y[] = { 0, 0, side, side };
    const muslin_id fabrics[] = { fabric, fabric };
    muslin_id whole = fixed_of(s->quilt, size);
    muslin_id id = 0;
    for (int i = 0; i < ROWS; i++) {
        const struct muslin_corner_spec corner = MUSLIN_CORNER_SPEC_INIT;
        int piece = i < 4 ? MUSLIN_SHAPE_OUTLINE : (i - 4) / PIECE;
        int k = (i - 4) % PIECE;
        rows[i] = corner;
        rows[i].piece = piece;
        if (i < 4 || k < 2) {
            rows[i].x = corner_x[piece == 1 ? k + 2 : i < 4 ? i : k];
            rows[i].y = corner_y[piece == 1 ? k + 2 : i < 4 ? i : k];
        } else { /* the lower piece goes up along it, from the right, and the upper one down again */
            int point = piece == 0 ? k - 2 : POINTS - 1 - (k - 2);
            int inside = point > 0 && point < POINTS - 1 ? 1000 : 0;
            rows[i].x = point % 2 == 0 ? side - inside : inside;
            rows[i].y = 1000 + 60000 * point;
        }
    }
    ck_ok(muslin_quilt_shape(s->quilt, rows, sizeof rows[0], ROWS, fabrics, 2, whole, whole, &id, NULL));
    return id;
}

/* Fifteen times 2^30 ticks, in 2^28 tops, are not quite 2^62; in twice as many they are more. So are two pieces half as
 * large in each of 2^29 - 1 tops, of which one alone would not be. */
START_TEST(seams_longer_than_any_length_are_told)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec raw = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
    size_t count = 77;
    begin_sewing(&s);
    ck_ok(muslin_quilt_seam(s.quilt, &raw.id, NULL, NULL));
    muslin_id blue = zigzag_of(&s, s.blue, MUSLIN_SIZE_MAX);
    spec.tops = INT64_C(1) << 28;
    ck_ok(muslin_solution_create(s.quilt, blue, &spec, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
    ck_assert_int_gt(totals.sewn, MUSLIN_LENGTH_MAX / 16 * 14);
    muslin_solution_free(solution);
    spec.tops *= 2;
    ck_ok(muslin_solution_create(s.quilt, blue, &spec, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_status(muslin_sewing_totals(solution, 0, 0, &totals, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAMS);
    ck_assert_int_eq(problem.at, 0);
    ck_status(muslin_sewing_steps(solution, NULL, 0, 0, &count, NULL), MUSLIN_ERR_OVERFLOW);
    ck_assert_uint_eq(count, 77);
    muslin_solution_free(solution);
    spec.tops -= 1;
    const muslin_id half[] = { zigzag_of(&s, s.blue, MUSLIN_SIZE_MAX / 2),
                               zigzag_of(&s, s.white, MUSLIN_SIZE_MAX / 2) };
    ck_ok(muslin_solution_create(s.quilt, half[0], &spec, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_ok(muslin_sewing_totals(solution, 0, 0, &totals, NULL));
    muslin_solution_free(solution);
    muslin_id pair = join_of(s.quilt, MUSLIN_AXIS_ACROSS, half, 2);
    ck_ok(muslin_solution_create(s.quilt, pair, &spec, &raw, sizeof raw, 1, NULL, &solution, NULL));
    ck_status(muslin_sewing_totals(solution, 0, 0, &totals, &problem), MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.at, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- labels ----------------------------------------------------------------------------------------------------- */

START_TEST(stacks_have_labels)
{
    const struct {
        int64_t number;
        const char *label;
    } labels[] = { { 0, "A" },    { 1, "B" },   { 25, "Z" },   { 26, "AA" },  { 27, "AB" }, /* Example: 27 is AB. */
                   { 51, "AZ" },  { 52, "BA" }, { 701, "ZZ" }, { 702, "AAA" }, { 18277, "ZZZ" },
                   { 18278, "AAAA" }, { MUSLIN_COUNT_MAX, "FXSHRXX" } };
    for (size_t i = 0; i < sizeof labels / sizeof labels[0]; i++) {
        char buf[16];
        size_t need = 0;
        size_t length = strlen(labels[i].label) + 1;
        ck_ok(muslin_sewing_label(labels[i].number, NULL, 0, &need, NULL));
        ck_assert_uint_eq(need, length);
        memset(buf, '?', sizeof buf);
        ck_ok(muslin_sewing_label(labels[i].number, buf, length, &need, NULL));
        ck_assert_str_eq(buf, labels[i].label);
        ck_assert_int_eq(buf[length], '?');
        buf[0] = '?';
        need = 0;
        ck_status(muslin_sewing_label(labels[i].number, buf, length - 1, &need, NULL),
                  length == 1 ? MUSLIN_OK : MUSLIN_ERR_BUFFER);
        ck_assert_uint_eq(need, length);
        ck_assert_int_eq(buf[0], '?');
    }
    char buf[4];
    size_t need = 9;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_sewing_label(-1, buf, 4, &need, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LABEL);
    ck_status(muslin_sewing_label(MUSLIN_COUNT_MAX + 1, buf, 4, &need, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_sewing_label(0, NULL, 4, &need, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_sewing_label(0, buf, 4, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(need, 9);
}
END_TEST

/* ---- the rules -------------------------------------------------------------------------------------------------- */

static const struct muslin_solution *at_hand;
static int64_t step_at_hand;

static muslin_status give_steps(void *rows, size_t row_size, size_t capacity, size_t *count,
                                struct muslin_problem *problem)
{
    return muslin_sewing_steps(at_hand, rows, row_size, capacity, count, problem);
}

static muslin_status give_feeds(void *rows, size_t row_size, size_t capacity, size_t *count,
                                struct muslin_problem *problem)
{
    return muslin_sewing_feeds(at_hand, step_at_hand, rows, row_size, capacity, count, problem);
}

START_TEST(rows_and_totals_have_their_rules)
{
    struct nine_patch nine;
    struct muslin_problem problem = PROBLEM;
    struct muslin_sewing_total totals = { .size = (uint32_t)sizeof totals };
    struct muslin_sewing_feed feed;
    size_t count = 0;
    begin_nine_patch(&nine);
    struct muslin_solution *solution = solved_tops(nine.s.quilt, nine.block, 9);
    at_hand = solution;
    ck_rows_rules(give_steps, sizeof(struct muslin_sewing_step), 5);
    struct muslin_sewing_step row;
    ck_status(muslin_sewing_steps(solution, &row, sizeof row, 1, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_uint_eq(count, 5);
    step_at_hand = 4;
    ck_rows_rules(give_feeds, sizeof(struct muslin_sewing_feed), 2);
    ck_status(muslin_sewing_feeds(solution, 5, &feed, sizeof feed, 1, &count, &problem), MUSLIN_ERR_INDEX);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_INDEX);
    ck_assert_int_eq(problem.value, 5);
    ck_assert_int_eq(problem.limit, 4);
    ck_status(muslin_sewing_feeds(solution, -1, &feed, sizeof feed, 1, &count, NULL), MUSLIN_ERR_INDEX);
    ck_status(muslin_sewing_feeds(NULL, 0, &feed, sizeof feed, 1, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_sewing_steps(NULL, NULL, 0, 0, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_sewing_totals(NULL, 0, 0, &totals, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_sewing_totals(solution, 0, 0, NULL, NULL), MUSLIN_ERR_NULL);
    const muslin_len most = MUSLIN_SIZE_MAX / 8;
    const muslin_len wrong[] = { -1, most + 1 };
    for (int i = 0; i < 2; i++) {
        ck_status(muslin_sewing_totals(solution, wrong[i], 0, &totals, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ERROR);
        ck_status(muslin_sewing_totals(solution, 0, wrong[i], &totals, &problem), MUSLIN_ERR_RANGE);
        ck_assert_int_eq(problem.argument, MUSLIN_ARG_CUT_ERROR);
    }
    ck_ok(muslin_sewing_totals(solution, most, most, &totals, NULL));
    ck_assert_int_eq(totals.width_worst, (2 + 6) * most);
    totals.size = 8;
    ck_status(muslin_sewing_totals(solution, 0, 0, &totals, NULL), MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(solution);
    end_sewing(&nine.s);
}
END_TEST

/* A top of so many different rows that what goes into it outgrows its first room; each allocation fails once. */
START_TEST(every_allocation_may_fail)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id rows[40];
    for (int i = 0; i < 40; i++) {
        const muslin_id pair[] = { patch_of(s.quilt, s.blue, s.two, fixed_of(s.quilt, 100 + i)),
                                   patch_of(s.quilt, s.white, s.two, fixed_of(s.quilt, 100 + i)) };
        rows[i] = join_of(s.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    }
    muslin_id top = join_of(s.quilt, MUSLIN_AXIS_DOWN, rows, 40);
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    spec.strip_piecing = MUSLIN_STRIP_PIECING_NEVER;
    const size_t blocks = s.memory.blocks;
    size_t round = 1;
    for (;; round++) {
        fail_at(&s, round);
        muslin_status status = muslin_solution_create(s.quilt, top, &spec, NULL, 0, 0, NULL, &solution, NULL);
        if (status == MUSLIN_OK)
            break;
        ck_status(status, MUSLIN_ERR_NO_MEMORY);
        ck_assert_uint_eq(s.memory.blocks, blocks);
    }
    fail_at(&s, 0);
    ck_assert_uint_gt(round, 10);
    size_t count = 0;
    ck_ok(muslin_sewing_feeds(solution, 40, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 40);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

Suite *sewing_suite(void)
{
    Suite *suite = suite_create("sewing");
    TCase *steps = tcase_create("steps");
    tcase_add_test(steps, nine_patches_from_two_strip_sets);
    tcase_add_test(steps, nine_patches_piece_by_piece);
    tcase_add_test(steps, a_rail_fence_has_the_seams_that_supplies_counts);
    tcase_add_test(steps, a_star);
    tcase_add_test(steps, a_pinwheel);
    tcase_add_test(steps, an_attic_window);
    tcase_add_test(steps, mitres_of_unequal_strips);
    tcase_add_test(steps, unequal_children_are_sewn_along_the_longer);
    tcase_add_test(steps, units_of_one_size_and_the_same_fabrics_share_their_recipe);
    tcase_add_test(steps, a_strip_is_sewn_along_its_side);
    tcase_add_test(steps, the_first_node_may_be_the_first_step);
    tcase_add_test(steps, a_trimmed_row);
    tcase_add_test(steps, mirrored_nodes_take_no_step_of_their_own);
    tcase_add_test(steps, a_patch_alone_is_not_sewn);
    suite_add_tcase(suite, steps);
    TCase *totals = tcase_create("totals");
    tcase_add_test(totals, thread_for_nine_patches);
    tcase_add_test(totals, errors_of_seams_add_up);
    tcase_add_test(totals, seams_longer_than_any_length_are_told);
    tcase_add_test(totals, stacks_have_labels);
    suite_add_tcase(suite, totals);
    TCase *rules = tcase_create("rules");
    tcase_add_test(rules, rows_and_totals_have_their_rules);
    tcase_add_test(rules, every_allocation_may_fail);
    suite_add_tcase(suite, rules);
    return suite;
}
