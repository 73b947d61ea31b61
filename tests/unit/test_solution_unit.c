/* test_solution_unit.c - units and the caller's own shapes, solved: sizes, seams crossed, what sizes do not suit.
 *
 * SPDX-License-Identifier: MIT */
#include "test_quilt_pieced.h"

#include "refusals.h"

Suite *solution_unit_suite(void);

/* ---- sizes ------------------------------------------------------------------------------------------------------ */

START_TEST(a_unit_finishes_as_its_measures_say)
{
    for (size_t i = 0; i < UNIT_CASES; i++) {
        const struct unit_case *unit = &unit_cases[i];
        struct sewn s;
        begin_sewing(&s);
        muslin_id node = unit_case_of(&s, unit, WHOLE_IN(6), WHOLE_IN(4), WHOLE_IN(1));
        struct muslin_solution *solution = solved(s.quilt, node);
        struct muslin_node_size size = size_of(solution, node);
        muslin_len height = WHOLE_IN(6);
        if (unit->kind == MUSLIN_UNIT_FLYING_GEESE)
            height = WHOLE_IN(3);
        if (unit->kind == MUSLIN_UNIT_HALF_RECTANGLE || unit->kind == MUSLIN_UNIT_SNOWBALL)
            height = WHOLE_IN(4);
        ck_assert_int_eq(size.finished_width, WHOLE_IN(6));
        ck_assert_int_eq(size.finished_height, height);
        ck_assert_int_eq(size.unfinished_width, IN(6, 1, 2));
        ck_assert_int_eq(size.unfinished_height, height + IN(0, 1, 2));
        ck_assert_int_eq(size.left, IN(0, 1, 4));
        ck_assert_int_eq(size.right, IN(0, 1, 4));
        ck_assert_int_eq(size.top, IN(0, 1, 4));
        ck_assert_int_eq(size.bottom, IN(0, 1, 4));
        ck_assert_int_eq(size.count, 1);
        ck_assert_int_eq(size.patches, unit->patches);
        ck_assert_msg(size.seams_across == unit->across && size.seams_down == unit->down, "kind %d: %lld, %lld",
                      unit->kind, (long long)size.seams_across, (long long)size.seams_down);
        ck_assert_int_eq(size.kind, MUSLIN_NODE_UNIT);
        ck_assert_int_eq(size.exact, 1);
        muslin_solution_free(solution);
        end_sewing(&s);
    }
}
END_TEST

START_TEST(a_turned_goose_is_half_as_wide_as_high)
{
    struct sewn s;
    begin_sewing(&s);
    const struct unit_case goose = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 3, 2, 1 };
    muslin_id node = unit_case_of(&s, &goose, WHOLE_IN(6), 0, 0);
    muslin_id turned = turn_of(s.quilt, node, 1);
    const muslin_id pair[] = { turned, mirror_of(s.quilt, turned), turned };
    muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, pair, 3);
    struct muslin_solution *solution = solved(s.quilt, row);
    struct muslin_node_size size = size_of(solution, turned);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(3));
    ck_assert_int_eq(size.finished_height, WHOLE_IN(6));
    ck_assert_int_eq(size.seams_across, 1);
    ck_assert_int_eq(size.seams_down, 2);
    size = size_of(solution, row);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(9));
    ck_assert_int_eq(size.patches, 9);
    ck_assert_int_eq(size.seams_across, 5);
    size = size_of(solution, node);
    ck_assert_int_eq(size.count, 3);
    ck_assert_int_eq(size.mirrored, 1);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(one_tree_serves_units_of_another_size)
{
    struct sewn s;
    begin_sewing(&s);
    struct muslin_quilt_unit_spec spec = MUSLIN_QUILT_UNIT_SPEC_INIT;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    spec.width = s.two;
    muslin_id node = unit_of(&s, &spec, 2);
    muslin_id take_up = 0;
    ck_ok(muslin_quilt_seam(s.quilt, NULL, &take_up, NULL));
    const struct muslin_solution_value_spec values[] = { { sizeof values[0], 0, s.two, WHOLE_IN(5) },
                                                { sizeof values[0], 0, take_up, 64 } };
    ck_ok(muslin_solution_create(s.quilt, node, &solve, values, sizeof values[0], 2, NULL, &solution, NULL));
    struct muslin_node_size size = size_of(solution, node);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(5));
    ck_assert_int_eq(size.unfinished_height, IN(5, 1, 2) + 64);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* ---- sizes that do not suit ------------------------------------------------------------------------------------- */

static void ck_unsolved(struct sewn *s, muslin_id node, const struct muslin_solution_spec *spec, muslin_status status,
                        int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution *solution = NULL;
    ck_status(muslin_solution_create(s->quilt, node, spec, NULL, 0, 0, NULL, &solution, &problem), status);
    ck_assert_msg(problem.argument == argument, "%s", problem.text);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    if (status == MUSLIN_ERR_SHAPE || status == MUSLIN_ERR_OVERFLOW)
        ck_assert_int_eq(problem.limit, 0);
    ck_assert_ptr_null(solution);
}

START_TEST(sizes_must_suit_the_kind)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct unit_case half = { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 2, 1, 1 };
    const struct unit_case snowball = { MUSLIN_UNIT_SNOWBALL, MUSLIN_UNIT_METHOD_FLIPPED_CORNERS, 1, 2, 5, 2, 2 };
    const struct unit_case goose = { MUSLIN_UNIT_FLYING_GEESE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 3, 2, 1 };
    const struct unit_case leaning = { MUSLIN_UNIT_HALF_RECTANGLE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 2, 1, 1 };
    ck_unsolved(&s, unit_case_of(&s, &half, 0, 0, 0), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FINISHED);
    ck_unsolved(&s, unit_case_of(&s, &half, MUSLIN_UNIT_SIZE_MAX + 1, 0, 0), &spec, MUSLIN_ERR_RANGE,
                MUSLIN_ARG_FINISHED);
    ck_unsolved(&s, unit_case_of(&s, &goose, 10001, 0, 0), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FINISHED);
    ck_unsolved(&s, unit_case_of(&s, &leaning, 8128, 0, 0), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_HEIGHT);
    /* a slim one would be cut far longer than anything can be */
    ck_unsolved(&s, unit_case_of(&s, &leaning, MUSLIN_UNIT_SIZE_MAX, 1, 0), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_CUT);
    /* corners that meet in the middle of the shorter side are the largest */
    muslin_id largest = unit_case_of(&s, &snowball, 8000, 6000, 3000);
    muslin_solution_free(solved(s.quilt, largest));
    ck_unsolved(&s, unit_case_of(&s, &snowball, 8000, 6000, 3001), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_CORNER);
    /* a goose of stated height must be half as high as wide */
    struct muslin_quilt_unit_spec tall = unit_spec_of(&goose, fixed_of(s.quilt, 8000), 0, 0);
    tall.height = fixed_of(s.quilt, 4000);
    muslin_id node = unit_of(&s, &tall, 2);
    muslin_solution_free(solved(s.quilt, node));
    tall.height = fixed_of(s.quilt, 4001);
    ck_unsolved(&s, unit_of(&s, &tall, 2), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_HEIGHT);
    end_sewing(&s);
}
END_TEST

START_TEST(recipes_must_suit_the_solving)
{
    struct sewn s;
    begin_sewing(&s);
    const struct unit_case half = { MUSLIN_UNIT_HALF_SQUARE, MUSLIN_UNIT_METHOD_PIECES, 1, 2, 2, 1, 1 };
    muslin_id node = unit_case_of(&s, &half, WHOLE_IN(3), 0, 0);
    /* 7/8 in is enough for 1/4 in seams, 3/4 is not */
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.policy = MUSLIN_ALLOWANCE_POLICY_CUSTOMARY;
    spec.half_addition = IN(0, 3, 4);
    ck_unsolved(&s, node, &spec, MUSLIN_ERR_CUSTOMARY, MUSLIN_ARG_HALF_ADDITION);
    spec.half_addition = 0;
    spec.trim_room = IN(0, 1, 8); /* room to trim goes with OVERSIZE alone */
    ck_unsolved(&s, node, &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_TRIM);
    spec.policy = MUSLIN_ALLOWANCE_POLICY_OVERSIZE;
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_solution_create(s.quilt, node, &spec, NULL, 0, 0, NULL, &solution, NULL));
    muslin_solution_free(solution);
    /* seams wider than a unit's may be */
    muslin_id allowance = 0;
    ck_ok(muslin_quilt_seam(s.quilt, &allowance, NULL, NULL));
    const struct muslin_solution_value_spec value = { sizeof value, 0, allowance, MUSLIN_UNIT_SIZE_MAX / 8 + 1 };
    struct muslin_problem problem = PROBLEM;
    spec.policy = MUSLIN_ALLOWANCE_POLICY_EXACT;
    spec.trim_room = 0;
    solution = NULL;
    ck_status(muslin_solution_create(s.quilt, node, &spec, &value, sizeof value, 1, NULL, &solution, &problem),
              MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEAM_ALLOWANCE);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    ck_assert_ptr_null(solution);
    end_sewing(&s);
}
END_TEST

/* ---- own shapes ------------------------------------------------------------------------------------------------- */

START_TEST(a_shape_is_as_drawn_or_as_large_as_asked)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    muslin_id drawn = shape_of(&s, rows, COUNT_OF(rows), 2, 0, 0);
    muslin_id wider = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, WHOLE_IN(9)), 0);
    muslin_id small = shape_of(&s, rows, COUNT_OF(rows), 2, s.two, fixed_of(s.quilt, 8129));
    const muslin_id all[] = { drawn, wider, small };
    muslin_id row = join_of(s.quilt, MUSLIN_AXIS_ACROSS, all, 3);
    struct muslin_solution *solution = solved(s.quilt, row);
    struct muslin_node_size size = size_of(solution, drawn);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(6));
    ck_assert_int_eq(size.finished_height, WHOLE_IN(6));
    ck_assert_int_eq(size.unfinished_width, IN(6, 1, 2));
    ck_assert_int_eq(size.patches, 2);
    ck_assert_int_eq(size.seams_across, 1);
    ck_assert_int_eq(size.seams_down, 1);
    ck_assert_int_eq(size.left, IN(0, 1, 4));
    ck_assert_int_eq(size.exact, 1);
    ck_assert_int_eq(size.kind, MUSLIN_NODE_SHAPE);
    size = size_of(solution, wider);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(9));
    ck_assert_int_eq(size.finished_height, WHOLE_IN(6));
    size = size_of(solution, small);
    ck_assert_int_eq(size.finished_width, WHOLE_IN(2));
    ck_assert_int_eq(size.finished_height, 8129);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

/* Two columns, of two pieces and of three, and a bar below: a level line meets the one seam between the columns, an
 * upright one two seams in the right column and the bar's. */
#define COLUMNS                                                                                                     \
    {                                                                                                               \
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 600, 0), CORNER(OUTLINE, 600, 700), CORNER(OUTLINE, 0, 700),         \
            CORNER(0, 0, 0), CORNER(0, 600, 0), CORNER(0, 600, 100), CORNER(0, 0, 100),                             \
            CORNER(1, 0, 100), CORNER(1, 300, 100), CORNER(1, 300, 400), CORNER(1, 0, 400),                         \
            CORNER(2, 0, 400), CORNER(2, 300, 400), CORNER(2, 300, 700), CORNER(2, 0, 700),                         \
            CORNER(3, 300, 100), CORNER(3, 600, 100), CORNER(3, 600, 300), CORNER(3, 300, 300),                     \
            CORNER(4, 300, 300), CORNER(4, 600, 300), CORNER(4, 600, 500), CORNER(4, 300, 500),                     \
            CORNER(5, 300, 500), CORNER(5, 600, 500), CORNER(5, 600, 700), CORNER(5, 300, 700)                      \
    }

START_TEST(seams_crossed_in_a_shape_are_counted)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_corner_spec rows[] = COLUMNS;
    muslin_id node = shape_of(&s, rows, COUNT_OF(rows), 6, 0, 0);
    struct muslin_solution *solution = solved(s.quilt, node);
    struct muslin_node_size size = size_of(solution, node);
    ck_assert_int_eq(size.patches, 6);
    ck_assert_int_eq(size.seams_across, 1);
    ck_assert_int_eq(size.seams_down, 3);
    muslin_solution_free(solution);
    end_sewing(&s);
}
END_TEST

START_TEST(a_shape_must_not_vanish)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_corner_spec rows[] = SLANT_CORNER;
    const size_t n = COUNT_OF(rows);
    ck_unsolved(&s, shape_of(&s, rows, n, 2, fixed_of(s.quilt, 0), 0), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FINISHED);
    ck_unsolved(&s, shape_of(&s, rows, n, 2, 0, fixed_of(s.quilt, 0)), &spec, MUSLIN_ERR_RANGE, MUSLIN_ARG_FINISHED);
    /* two ticks wide it still has its half, one tick wide it has not */
    muslin_id two = shape_of(&s, rows, n, 2, fixed_of(s.quilt, 2), fixed_of(s.quilt, 2));
    muslin_solution_free(solved(s.quilt, two));
    muslin_id one = shape_of(&s, rows, n, 2, fixed_of(s.quilt, 1), fixed_of(s.quilt, 1));
    ck_unsolved(&s, one, &spec, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE);
    end_sewing(&s);
}
END_TEST

/* A half square 1 x 2^20 ticks: with 1/4 in seams its raw point would lie 2^20 x 2032 ticks away. */
START_TEST(a_raw_point_must_stay_within_reach)
{
    struct sewn s;
    begin_sewing(&s);
    const struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_corner_spec rows[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 1000, 0), CORNER(OUTLINE, 1000, 1000), CORNER(OUTLINE, 0, 1000),
        CORNER(0, 0, 0), CORNER(0, 1000, 0), CORNER(0, 1000, 1000),
        CORNER(1, 0, 0), CORNER(1, 1000, 1000), CORNER(1, 0, 1000)
    };
    muslin_id slim = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, 1), fixed_of(s.quilt, 1048576));
    ck_unsolved(&s, slim, &spec, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECE);
    /* the point lies 2032 (L + H) / W away: 1000 ticks wide it may be a million high */
    muslin_id fair = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, 1000), fixed_of(s.quilt, 1000000));
    muslin_solution_free(solved(s.quilt, fair));
    muslin_id long_one = shape_of(&s, rows, COUNT_OF(rows), 2, fixed_of(s.quilt, 1000), fixed_of(s.quilt, 1100000));
    ck_unsolved(&s, long_one, &spec, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECE);
    /* seams that pass it even at a right angle */
    const struct muslin_corner_spec plain[] = {
        CORNER(OUTLINE, 0, 0), CORNER(OUTLINE, 1000, 0), CORNER(OUTLINE, 1000, 1000), CORNER(OUTLINE, 0, 1000),
        CORNER(0, 0, 0), CORNER(0, 1000, 0), CORNER(0, 1000, 1000), CORNER(0, 0, 1000)
    };
    muslin_id square = shape_of(&s, plain, COUNT_OF(plain), 1, 0, 0);
    muslin_id allowance = 0;
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_quilt_seam(s.quilt, &allowance, NULL, NULL));
    struct muslin_solution_value_spec value = { sizeof value, 0, allowance, MUSLIN_TEMPLATE_REACH_MAX / 2 };
    ck_ok(muslin_solution_create(s.quilt, square, &spec, &value, sizeof value, 1, NULL, &solution, NULL));
    muslin_solution_free(solution);
    value.value++;
    ck_status(muslin_solution_create(s.quilt, square, &spec, &value, sizeof value, 1, NULL, &solution, NULL),
              MUSLIN_ERR_OVERFLOW);
    end_sewing(&s);
}
END_TEST

Suite *solution_unit_suite(void)
{
    Suite *suite = suite_create("solution_unit");
    TCase *tests = tcase_create("units and own shapes, solved");
    tcase_add_test(tests, a_unit_finishes_as_its_measures_say);
    tcase_add_test(tests, a_turned_goose_is_half_as_wide_as_high);
    tcase_add_test(tests, one_tree_serves_units_of_another_size);
    tcase_add_test(tests, sizes_must_suit_the_kind);
    tcase_add_test(tests, recipes_must_suit_the_solving);
    tcase_add_test(tests, a_shape_is_as_drawn_or_as_large_as_asked);
    tcase_add_test(tests, seams_crossed_in_a_shape_are_counted);
    tcase_add_test(tests, a_shape_must_not_vanish);
    tcase_add_test(tests, a_raw_point_must_stay_within_reach);
    suite_add_tcase(suite, tests);
    return suite;
}
