/* test_solution.c - a tree solved: sizes, copies, values of another size of the design.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt.h"

/* Rail fence: three strips of 2 in make a 6 in block. */
struct rail {
    struct sewn s;
    muslin_id three_strips; /* the block's height, a measure */
    muslin_id blue;         /* patches */
    muslin_id white;
    muslin_id block;
};

static void begin_rail(struct rail *rail)
{
    begin_sewing(&rail->s);
    struct muslin_quilt *quilt = rail->s.quilt;
    rail->three_strips = times_of(quilt, rail->s.two, 3);
    rail->blue = patch_of(quilt, rail->s.blue, rail->s.two, rail->three_strips);
    rail->white = patch_of(quilt, rail->s.white, rail->s.two, rail->three_strips);
    const muslin_id strips[] = { rail->blue, rail->white, rail->blue };
    rail->block = join_of(quilt, MUSLIN_AXIS_ACROSS, strips, 3);
}

static muslin_id chessboard(struct rail *rail, int64_t columns, int64_t rows)
{
    const int32_t turns[] = { 0, 1, 1, 0 };
    muslin_id top = 0;
    ck_ok(muslin_quilt_repeat(rail->s.quilt, rail->block, columns, rows, turns, 4, 2, 2, &top, NULL));
    return top;
}

INIT_CALL(solution)
INIT_CALL(solution_value)

START_TEST(specs_begin_as_stated)
{
    const struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_solution_value_spec value = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    ck_init_rules(init_solution, &solve, sizeof solve);
    ck_init_rules(init_solution_value, &value, sizeof value);
}
END_TEST

/* ---- sizes and copies ------------------------------------------------------------------------------------------- */

START_TEST(a_patch_is_cut_with_its_allowances)
{
    struct sewn s;
    begin_sewing(&s);
    /* Example: 2 x 2 in finished is cut 2 1/2 x 2 1/2 in with 1/4 in seams. */
    muslin_id plain = patch_of(s.quilt, s.blue, s.two, s.two);
    struct muslin_solution *solution = solved(s.quilt, plain);
    struct muslin_node_size size = size_of(solution, plain);
    ck_assert_int_eq(size.unfinished_width, IN(2, 1, 2));
    ck_assert_int_eq(size.unfinished_height, IN(2, 1, 2));
    ck_assert_int_eq(size.patches, 1);
    ck_assert_int_eq(size.exact, 1);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_PATCH);
    muslin_solution_free(solution);
    /* allowances of its own: left 1/2, right the quilt's 1/4, top raw, bottom 1 in */
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id odd = 0;
    spec.fabric = s.blue;
    spec.width = spec.height = s.two;
    spec.left = fixed_of(s.quilt, IN(0, 1, 2));
    spec.top = fixed_of(s.quilt, 0);
    spec.bottom = fixed_of(s.quilt, WHOLE_IN(1));
    ck_ok(muslin_quilt_patch(s.quilt, &spec, &odd, NULL));
    muslin_id take_up = 0;
    ck_ok(muslin_quilt_seam(s.quilt, NULL, &take_up, NULL));
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec value = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    value.id = take_up;
    value.value = 101; /* half a take-up for each edge that is sewn: 101 across, 50 1/2, up, down */
    ck_ok(muslin_solution_create(s.quilt, odd, &solve, &value, sizeof value, 1, NULL, &solution, NULL));
    size = size_of(solution, odd);
    ck_assert_int_eq(size.unfinished_width, IN(2, 3, 4) + 101);
    ck_assert_int_eq(size.unfinished_height, WHOLE_IN(3) + 51);
    ck_assert_int_eq(size.left, IN(0, 1, 2));
    ck_assert_int_eq(size.right, IN(0, 1, 4));
    ck_assert_int_eq(size.top, 0);
    ck_assert_int_eq(size.bottom, WHOLE_IN(1));
    /* muslin_seam_piece() knows the same sum */
    struct muslin_piece_spec piece_spec = { sizeof piece_spec, 0, WHOLE_IN(2), WHOLE_IN(2), IN(0, 1, 2), IN(0, 1, 4), 0,
                                            WHOLE_IN(1), 101 };
    struct muslin_piece piece = { .size = (uint32_t)sizeof piece };
    ck_ok(muslin_seam_piece(&piece_spec, &piece, NULL));
    ck_assert_int_eq(piece.cut_width, size.unfinished_width);
    ck_assert_int_eq(piece.cut_height, size.unfinished_height);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(copies_are_counted_as_they_lie)
{
    struct rail rail;
    begin_rail(&rail);
    /* Example: muslin_solution_create(quilt, top, &spec, NULL, 0, 0, NULL, &solution, NULL). */
    muslin_id top = chessboard(&rail, 3, 3);
    struct muslin_solution *solution = solved(rail.s.quilt, top);
    struct muslin_node_size size = size_of(solution, rail.block);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(6));
    ck_assert_int_eq(size.unfinished_height, IN(6, 1, 2));
    ck_assert_int_eq(size.count, 9);
    ck_assert_int_eq(size.upright, 5);
    ck_assert_int_eq(size.quarter, 4);
    ck_assert_int_eq(size.half, 0);
    ck_assert_int_eq(size.mirrored, 0);
    ck_assert_int_eq(size.seams_across, 2);
    ck_assert_int_eq(size.seams_down, 0);
    size = size_of(solution, rail.blue);
    ck_assert_int_eq(size.count, 18);
    ck_assert_int_eq(size.upright, 10);
    ck_assert_int_eq(size.quarter, 8);
    size = size_of(solution, top);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(18));
    ck_assert_int_eq(size.finished_height, WHOLE_IN(18));
    ck_assert_int_eq(size.patches, 27);
    /* a row of upright, turned, upright: 2 + 0 + 2 seams in blocks and 2 between; down, every row has a turned block */
    ck_assert_int_eq(size.seams_across, 6);
    ck_assert_int_eq(size.seams_down, 2 + 2 + 2 + 2);
    muslin_solution_free(solution);
    /* Example: a patch of 2 in, four times in a block of which there are nine: count 36, unfinished (cut) 2 1/2 in. */
    muslin_id square = patch_of(rail.s.quilt, rail.s.blue, rail.s.two, rail.s.two);
    muslin_id nine = repeat_of(rail.s.quilt, repeat_of(rail.s.quilt, square, 2, 2), 3, 3);
    solution = solved(rail.s.quilt, nine);
    ck_assert_int_eq(size_of(solution, square).count, 36);
    ck_assert_int_eq(size_of(solution, square).unfinished_width, IN(2, 1, 2));
    muslin_solution_free(solution);
    end_sewing(&rail.s);
}
END_TEST

START_TEST(mirrored_copies_are_counted)
{
    struct rail rail;
    begin_rail(&rail);
    muslin_id mirrored = mirror_of(rail.s.quilt, rail.block);
    const muslin_id two[] = { mirrored, turn_of(rail.s.quilt, mirrored, 3) };
    struct muslin_solution *solution = solved(rail.s.quilt, join_of(rail.s.quilt, MUSLIN_AXIS_ACROSS, two, 2));
    struct muslin_node_size size = size_of(solution, rail.block);
    ck_assert_int_eq(size.count, 2);
    ck_assert_int_eq(size.mirrored, 2);
    ck_assert_int_eq(size.upright, 1);
    ck_assert_int_eq(size.three_quarter, 1);
    muslin_solution_free(solution);
    end_sewing(&rail.s);
}
END_TEST

/* An L of three unlike patches, turned each way: its allowances and seams go round with it. */
START_TEST(a_turn_carries_the_edges_round)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id patch = 0;
    spec.fabric = s.blue;
    spec.width = s.two;
    spec.height = times_of(s.quilt, s.two, 2);
    spec.left = fixed_of(s.quilt, 1);
    spec.right = fixed_of(s.quilt, 2);
    spec.top = fixed_of(s.quilt, 3);
    spec.bottom = fixed_of(s.quilt, 4);
    ck_ok(muslin_quilt_patch(s.quilt, &spec, &patch, NULL));
    /* left, right, top, bottom after so many quarters clockwise: the top goes to the right */
    const muslin_len upright[4][4] = { { 1, 2, 3, 4 }, { 4, 3, 1, 2 }, { 2, 1, 4, 3 }, { 3, 4, 2, 1 } };
    for (int32_t q = 0; q < 4; q++)
        for (int mirrored = 0; mirrored < 2; mirrored++) {
            muslin_id lying = turn_of(s.quilt, mirrored ? mirror_of(s.quilt, patch) : patch, q);
            struct muslin_solution *solution = solved(s.quilt, lying);
            struct muslin_node_size size = size_of(solution, lying);
            muslin_len edges[4];
            for (int i = 0; i < 4; i++) { /* mirrored before it is turned, 1 and 2 change names */
                edges[i] = upright[q][i];
                if (mirrored && edges[i] <= 2)
                    edges[i] = 3 - edges[i];
            }
            ck_assert_int_eq(size.left, edges[0]);
            ck_assert_int_eq(size.right, edges[1]);
            ck_assert_int_eq(size.top, edges[2]);
            ck_assert_int_eq(size.bottom, edges[3]);
            ck_assert_int_eq(size.finished_width, q % 2 == 0 ? WHOLE_IN(2) : WHOLE_IN(4));
            ck_assert_int_eq(size.finished_height, q % 2 == 0 ? WHOLE_IN(4) : WHOLE_IN(2));
            muslin_solution_free(solution);
        }
    end_sewing(&s);
}
END_TEST

START_TEST(a_join_is_as_high_as_its_highest_child)
{
    struct sewn s;
    begin_sewing(&s);
    muslin_id low = patch_of(s.quilt, s.blue, s.two, s.two);
    muslin_id high = patch_of(s.quilt, s.blue, s.two, times_of(s.quilt, s.two, 2));
    const muslin_id two[] = { low, high };
    muslin_id across = join_of(s.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    const muslin_id both[] = { across, across };
    muslin_id down = join_of(s.quilt, MUSLIN_AXIS_DOWN, both, 2);
    struct muslin_solution *solution = solved(s.quilt, down);
    ck_assert_int_eq(size_of(solution, across).finished_height, WHOLE_IN(4));
    ck_assert_int_eq(size_of(solution, down).finished_height, WHOLE_IN(8));
    ck_assert_int_eq(size_of(solution, down).seams_down, 1);
    ck_assert_int_eq(size_of(solution, down).seams_across, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- values ----------------------------------------------------------------------------------------------------- */

static muslin_len value_of(const struct muslin_solution *solution, muslin_id measure)
{
    muslin_len value = -1;
    ck_ok(muslin_solution_value(solution, measure, &value, NULL));
    return value;
}

START_TEST(other_values_make_another_size_of_the_design)
{
    struct rail rail;
    begin_rail(&rail);
    muslin_id top = chessboard(&rail, 4, 5);
    muslin_id wide = extent_of(rail.s.quilt, top, MUSLIN_AXIS_ACROSS);
    muslin_id tall = extent_of(rail.s.quilt, top, MUSLIN_AXIS_DOWN);
    muslin_id one = fixed_of(rail.s.quilt, WHOLE_IN(1));
    muslin_id unused = measure_of(rail.s.quilt, "unused", WHOLE_IN(3));
    muslin_id border = patch_of(rail.s.quilt, rail.s.white, wide, one);
    const muslin_id three[] = { border, top, border };
    muslin_id whole = join_of(rail.s.quilt, MUSLIN_AXIS_DOWN, three, 3);
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec values[3] = { MUSLIN_SOLUTION_VALUE_SPEC_INIT, MUSLIN_SOLUTION_VALUE_SPEC_INIT,
                                                    MUSLIN_SOLUTION_VALUE_SPEC_INIT };
    struct muslin_solution *solution = NULL;
    values[0].id = rail.s.two;
    values[0].value = WHOLE_IN(7); /* the last one counts */
    values[1].id = rail.s.two;
    values[1].value = IN(1, 1, 2);
    ck_ok(muslin_quilt_seam(rail.s.quilt, &values[2].id, NULL, NULL));
    values[2].value = IN(0, 1, 2);
    spec.tops = 2;
    ck_ok(muslin_solution_create(rail.s.quilt, whole, &spec, values, sizeof values[0], 3, NULL, &solution, NULL));
    /* blocks of 4 1/2 in: 18 in wide, 22 1/2 + 2 in high */
    ck_assert_int_eq(size_of(solution, whole).finished_width, WHOLE_IN(18));
    ck_assert_int_eq(size_of(solution, whole).finished_height, IN(24, 1, 2));
    ck_assert_int_eq(size_of(solution, whole).unfinished_height, IN(25, 1, 2));
    ck_assert_int_eq(size_of(solution, rail.white).unfinished_width, IN(2, 1, 2));
    ck_assert_int_eq(size_of(solution, rail.white).count, 40);
    ck_assert_int_eq(size_of(solution, border).unfinished_width, WHOLE_IN(19));
    /* Example: the extent of a block. */
    ck_assert_int_eq(value_of(solution, wide), WHOLE_IN(18));
    ck_assert_int_eq(value_of(solution, rail.three_strips), IN(4, 1, 2));
    ck_assert_int_eq(value_of(solution, one), WHOLE_IN(1));
    muslin_len value = 5;
    ck_status(muslin_solution_value(solution, tall, &value, NULL), MUSLIN_ERR_FOREIGN); /* not needed */
    ck_status(muslin_solution_value(solution, unused, &value, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_value(solution, top, &value, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_value(solution, measure_of(rail.s.quilt, "later", 1), &value, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_value(solution, wide, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_value(NULL, wide, &value, NULL), MUSLIN_ERR_NULL);
    ck_assert_int_eq(value, 5);
    muslin_solution_free(solution);
    /* the tree still has its own values */
    solution = solved(rail.s.quilt, whole);
    ck_assert_int_eq(size_of(solution, whole).finished_width, WHOLE_IN(24));
    muslin_solution_free(solution);
    end_sewing(&rail.s);
}
END_TEST

static muslin_status solve_with(const struct muslin_quilt *quilt, muslin_id root, muslin_id id, muslin_len value,
                                struct muslin_problem *problem)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution_value_spec given = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    given.id = id;
    given.value = value;
    muslin_status status = muslin_solution_create(quilt, root, &spec, &given, sizeof given, 1, NULL, &solution,
                                                  problem);
    ck_assert(status == MUSLIN_OK || solution == NULL);
    muslin_solution_free(solution);
    return status;
}

START_TEST(values_have_their_rules)
{
    struct rail rail;
    struct muslin_problem problem = PROBLEM;
    muslin_id allowance = 0;
    muslin_id take_up = 0;
    begin_rail(&rail);
    const struct muslin_quilt *quilt = rail.s.quilt;
    ck_ok(muslin_quilt_seam(quilt, &allowance, &take_up, NULL));
    ck_ok(solve_with(quilt, rail.block, rail.s.blue, 1000000, NULL));
    ck_status(solve_with(quilt, rail.block, rail.s.blue, 0, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_status(solve_with(quilt, rail.block, rail.three_strips, 5, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_MEASURE);
    ck_status(solve_with(quilt, rail.block, rail.block, 5, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(solve_with(quilt, rail.block, rail.s.blue + 2, 5, &problem), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FABRIC);
    ck_status(solve_with(quilt, rail.block, rail.s.two, -1, NULL), MUSLIN_ERR_RANGE);
    ck_status(solve_with(quilt, rail.block, allowance, MUSLIN_SIZE_MAX / 8 + 1, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
    ck_status(solve_with(quilt, rail.block, take_up, -1, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TAKE_UP);
    /* a sum, a patch, a block that come out too large or too small: `at` is the number of the measure or node */
    ck_status(solve_with(quilt, rail.block, rail.s.two, MUSLIN_SIZE_MAX / 3 + 1, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SUM);
    ck_assert_int_eq(problem.at, muslin_id_number(rail.three_strips));
    ck_status(solve_with(quilt, rail.block, rail.s.two, 0, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_FINISHED);
    ck_assert_int_eq(problem.at, muslin_id_number(rail.blue));
    muslin_id row = repeat_of(rail.s.quilt, rail.block, 4, 1);
    ck_status(solve_with(quilt, row, rail.s.two, MUSLIN_SIZE_MAX / 3, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, muslin_id_number(row));
    muslin_id less = times_of(rail.s.quilt, rail.s.two, -1);
    muslin_id negative = patch_of(rail.s.quilt, rail.s.blue, less, rail.s.two);
    ck_status(solve_with(quilt, negative, rail.s.two, 5, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SUM);
    /* what the root does not need may be as wrong as it likes */
    ck_ok(solve_with(quilt, row, rail.s.two, 5, NULL));
    /* an allowance of a patch that no seam has */
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id patch = 0;
    spec.fabric = rail.s.blue;
    spec.width = spec.height = rail.s.two;
    spec.top = fixed_of(rail.s.quilt, MUSLIN_SIZE_MAX / 8 + 1);
    ck_ok(muslin_quilt_patch(rail.s.quilt, &spec, &patch, NULL));
    ck_status(solve_with(quilt, patch, rail.s.two, 5, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
    /* trimmed to nothing */
    struct muslin_quilt_trim_spec trim = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id trimmed = 0;
    trim.left = trim.right = fixed_of(rail.s.quilt, WHOLE_IN(1));
    ck_ok(muslin_quilt_trim(rail.s.quilt, rail.blue, &trim, &trimmed, NULL));
    ck_status(solve_with(quilt, trimmed, rail.s.two, WHOLE_IN(2), &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, muslin_id_number(trimmed));
    ck_ok(solve_with(quilt, trimmed, rail.s.two, WHOLE_IN(2) + 1, NULL));
    end_sewing(&rail.s);
}
END_TEST

/* 1 x 1 ticks, doubled to the right and downwards in turn: 2^30 patches can be counted, twice as many cannot. */
START_TEST(more_patches_than_can_be_counted)
{
    struct sewn s;
    struct muslin_problem problem = PROBLEM;
    begin_sewing(&s);
    const muslin_id tick = fixed_of(s.quilt, 1);
    muslin_id top = patch_of(s.quilt, s.blue, tick, tick);
    for (int i = 0; i < 30; i++) {
        const muslin_id twice[] = { top, top };
        top = join_of(s.quilt, i % 2 == 0 ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, twice, 2);
    }
    ck_ok(solve_with(s.quilt, top, s.two, 1, NULL));
    const muslin_id twice[] = { top, top };
    muslin_id more = join_of(s.quilt, MUSLIN_AXIS_ACROSS, twice, 2);
    ck_status(solve_with(s.quilt, more, s.two, 1, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.at, muslin_id_number(more));
    ck_assert_int_eq(problem.value, INT64_C(2147483648));
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
    end_sewing(&s);
}
END_TEST

static void ck_solve_range(const struct rail *rail, const struct muslin_solution_spec *spec, muslin_status status,
                           int32_t argument)
{
    struct muslin_solution *solution = NULL;
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_solution_create(rail->s.quilt, rail->block, spec, NULL, 0, 0, NULL, &solution, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_ptr_null(solution);
}

START_TEST(solving_has_its_ranges)
{
    struct rail rail;
    const struct muslin_solution_spec usual = MUSLIN_SOLUTION_SPEC_INIT;
    begin_rail(&rail);
    struct muslin_solution_spec spec = usual;
#define WRONG(member, wrong, status, argument)                 \
    spec = usual;                                              \
    spec.member = (wrong);                                     \
    ck_solve_range(&rail, &spec, MUSLIN_ERR_##status, MUSLIN_ARG_##argument)
    WRONG(tops, 0, RANGE, TOPS);
    WRONG(tops, MUSLIN_COUNT_MAX / 3 + 1, RANGE, TOPS); /* three patches a block */
    WRONG(ease, -1, RANGE, EASE);
    WRONG(grid, 0, RANGE, GRID);
    WRONG(grid, INT64_MIN, RANGE, GRID);
    WRONG(grid_tolerance, 1016, RANGE, TOLERANCE);
    WRONG(half_addition, -1, RANGE, HALF_ADDITION);
    WRONG(quarter_addition, -1, RANGE, QUARTER_ADDITION);
    WRONG(trim_room, -1, RANGE, TRIM);
    WRONG(end_trim, -1, RANGE, END_TRIM);
    WRONG(resquare_loss, -1, RANGE, RESQUARE_LOSS);
    WRONG(resquare_every, -1, RANGE, RESQUARE_EVERY);
    WRONG(fold_clear, -1, RANGE, FOLD_CLEAR);
    WRONG(fold_clear, 1, RANGE, FOLD_CLEAR); /* cut from one end */
    WRONG(policy, 0, CHOICE, POLICY);
    WRONG(tip, 3, CHOICE, TIP);
    WRONG(direction, 4, CHOICE, DIRECTION);
    WRONG(strip_piecing, MUSLIN_STRIP_PIECING_ALWAYS, CHOICE, STRIP_PIECING);
#undef WRONG
    struct muslin_solution *solution = NULL;
    ck_status(muslin_solution_create(NULL, rail.block, &usual, NULL, 0, 0, NULL, &solution, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_create(rail.s.quilt, rail.block, NULL, NULL, 0, 0, NULL, &solution,
                                     NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_create(rail.s.quilt, rail.block, &usual, NULL, 0, 1, NULL, &solution,
                                     NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_create(rail.s.quilt, rail.block, &usual, NULL, 0, 0, NULL, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_create(rail.s.quilt, rail.s.two, &usual, NULL, 0, 0, NULL, &solution, NULL),
              MUSLIN_ERR_FOREIGN);
    struct muslin_solution_value_spec value = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    ck_status(muslin_solution_create(rail.s.quilt, rail.block, &usual, &value, sizeof value - 1, 1, NULL, &solution,
                                     NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    value.size = 4;
    ck_status(muslin_solution_create(rail.s.quilt, rail.block, &usual, &value, sizeof value, 1, NULL, &solution, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(NULL);
    end_sewing(&rail.s);
}
END_TEST

START_TEST(only_nodes_of_the_root_have_a_size)
{
    struct rail rail;
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    begin_rail(&rail);
    muslin_id stranger = patch_of(rail.s.quilt, rail.s.blue, rail.s.two, rail.s.two);
    /* Example: muslin_solution_free(solution). */
    struct muslin_solution *solution = solved(rail.s.quilt, rail.block);
    ck_status(muslin_solution_size(solution, stranger, &size, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_size(solution, rail.s.two, &size, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_size(NULL, rail.block, &size, NULL), MUSLIN_ERR_NULL);
    size.size = 8;
    ck_status(muslin_solution_size(solution, rail.block, &size, NULL), MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(solution);
    /* a node that only lends its extent is not sewn */
    muslin_id like =
        patch_of(rail.s.quilt, rail.s.white, extent_of(rail.s.quilt, stranger, MUSLIN_AXIS_ACROSS), rail.s.two);
    solution = solved(rail.s.quilt, like);
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    ck_assert_int_eq(totals.different_nodes, 1);
    size.size = (uint32_t)sizeof size;
    ck_status(muslin_solution_size(solution, stranger, &size, NULL), MUSLIN_ERR_FOREIGN);
    ck_assert_int_eq(size_of(solution, like).finished_width, WHOLE_IN(2));
    muslin_solution_free(solution);
    end_sewing(&rail.s);
}
END_TEST

START_TEST(every_allocation_may_fail)
{
    struct rail rail;
    begin_rail(&rail);
    muslin_id top = chessboard(&rail, 30, 30);
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    size_t blocks = rail.s.memory.blocks;
    size_t round = 1;
    for (;; round++) {
        fail_at(&rail.s, round);
        struct muslin_problem said = PROBLEM;
        if (muslin_solution_create(rail.s.quilt, top, &spec, NULL, 0, 0, NULL, &solution, &said) == MUSLIN_OK)
            break;
        ck_says_no_memory(&said, said.at);
        ck_assert_ptr_null(solution);
        ck_assert_uint_eq(rail.s.memory.blocks, blocks);
    }
    fail_at(&rail.s, 0);
    ck_assert_uint_gt(round, 6);
    ck_assert_int_eq(size_of(solution, top).patches, 2700);
    muslin_solution_free(solution);
    end_sewing(&rail.s);
}
END_TEST

/* Nothing is allocated for each patch: ten thousand times as many take a few doublings more. */
START_TEST(allocations_do_not_grow_with_patches)
{
    struct rail rail;
    begin_rail(&rail);
    const int64_t side[] = { 10, 1000 };
    size_t calls[2];
    for (int i = 0; i < 2; i++) {
        rail.s.memory.calls = 0;
        struct muslin_solution *solution = solved(rail.s.quilt, chessboard(&rail, side[i], side[i]));
        calls[i] = rail.s.memory.calls;
        muslin_solution_free(solution);
    }
    ck_assert_uint_le(calls[1], calls[0] + 32);
    end_sewing(&rail.s);
}
END_TEST

Suite *solution_suite(void)
{
    Suite *suite = suite_create("solution");
    TCase *sizes = tcase_create("sizes");
    tcase_add_test(sizes, specs_begin_as_stated);
    tcase_add_test(sizes, a_patch_is_cut_with_its_allowances);
    tcase_add_test(sizes, copies_are_counted_as_they_lie);
    tcase_add_test(sizes, mirrored_copies_are_counted);
    tcase_add_test(sizes, a_turn_carries_the_edges_round);
    tcase_add_test(sizes, a_join_is_as_high_as_its_highest_child);
    tcase_add_test(sizes, other_values_make_another_size_of_the_design);
    tcase_add_test(sizes, values_have_their_rules);
    tcase_add_test(sizes, more_patches_than_can_be_counted);
    tcase_add_test(sizes, solving_has_its_ranges);
    tcase_add_test(sizes, only_nodes_of_the_root_have_a_size);
    tcase_add_test(sizes, every_allocation_may_fail);
    tcase_add_test(sizes, allocations_do_not_grow_with_patches);
    suite_add_tcase(suite, sizes);
    return suite;
}
