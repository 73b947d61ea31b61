/* test_solution_check.c - what is said of a whole solution: misfits, ways to a node, totals, sums explained.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"
#include "test_quilt.h"

Suite *solution_check_suite(void);

enum { MANY = 32 };

static muslin_id patch_in(struct sewn *sewn, muslin_id fabric, muslin_len width, muslin_len height)
{
    return patch_of(sewn->quilt, fabric, fixed_of(sewn->quilt, width), fixed_of(sewn->quilt, height));
}

static struct muslin_solution *solved_as(struct muslin_quilt *quilt, muslin_id root,
                                         const struct muslin_solution_spec *spec)
{
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_solution_create(quilt, root, spec, NULL, 0, 0, NULL, &solution, NULL));
    return solution;
}

static muslin_id trim_of(struct sewn *sewn, muslin_id node, muslin_len left, muslin_len right, muslin_len top,
                         muslin_len bottom)
{
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    muslin_id id = 0;
    spec.left = left < 0 ? 0 : fixed_of(sewn->quilt, left);
    spec.right = right < 0 ? 0 : fixed_of(sewn->quilt, right);
    spec.top = top < 0 ? 0 : fixed_of(sewn->quilt, top);
    spec.bottom = bottom < 0 ? 0 : fixed_of(sewn->quilt, bottom);
    ck_ok(muslin_quilt_trim(sewn->quilt, node, &spec, &id, NULL));
    return id;
}

/* ---- misfits ---------------------------------------------------------------------------------------------------- */

static size_t misfits_of(const struct muslin_solution *solution, struct muslin_misfit *rows)
{
    size_t asked = 0;
    size_t count = 0;
    ck_ok(muslin_solution_misfits(solution, NULL, 0, 0, &asked, NULL));
    ck_ok(muslin_solution_misfits(solution, rows, sizeof rows[0], MANY, &count, NULL));
    ck_assert_uint_eq(count, asked);
    return count;
}

static void ck_misfit(const struct muslin_misfit *row, const struct muslin_misfit *expected)
{
    struct muslin_misfit e = *expected;
    e.size = (uint32_t)sizeof e;
    ck_assert_mem_eq(row, &e, sizeof e);
}

START_TEST(patches_that_differ_do_not_meet)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, WHOLE_IN(4), WHOLE_IN(6)),
                               patch_in(&sewn, sewn.white, WHOLE_IN(4), IN(6, 1, 4)) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    struct muslin_solution *solution = solved(sewn.quilt, join);
    ck_assert_uint_eq(misfits_of(solution, rows), 1);
    /* Example: patches of 6 and 6 1/4 in side by side: difference -1/4 in. */
    ck_misfit(rows, &(struct muslin_misfit){ .node = join, .first = 0, .second = 1, .first_size = WHOLE_IN(6),
                                             .second_size = IN(6, 1, 4), .difference = -IN(0, 1, 4), .pieces = 1,
                                             .count = 1, .kind = MUSLIN_MISFIT_LENGTH });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Three 2 in squares are eased to 6 1/4 in: 2032 ticks, a third of them 677 1/3. Four blocks, two tops. */
START_TEST(edges_are_eased_over_their_pieces)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    muslin_id square = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    const muslin_id three[] = { square, square, square };
    const muslin_id rows_of_it[] = { join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3),
                                     patch_in(&sewn, sewn.white, IN(6, 1, 4), WHOLE_IN(2)) };
    muslin_id block = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows_of_it, 2);
    muslin_id top = repeat_of(sewn.quilt, block, 2, 2);
    spec.ease = IN(0, 1, 4);
    spec.tops = 2;
    struct muslin_solution *solution = solved_as(sewn.quilt, top, &spec);
    ck_assert_uint_eq(misfits_of(solution, rows), 1);
    ck_misfit(rows, &(struct muslin_misfit){ .node = block, .first = 0, .second = 1, .first_size = WHOLE_IN(6),
                                             .second_size = IN(6, 1, 4), .difference = -IN(0, 1, 4), .pieces = 3,
                                             .ease_each = 678, .count = 8, .kind = MUSLIN_MISFIT_EASED });
    muslin_solution_free(solution);
    spec.ease--;
    solution = solved_as(sewn.quilt, top, &spec);
    ck_assert_uint_eq(misfits_of(solution, rows), 1);
    ck_assert_int_eq(rows[0].kind, MUSLIN_MISFIT_LENGTH);
    ck_assert_int_eq(rows[0].ease_each, 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A 3/8 in allowance meets 1/4 in; and an edge along which both lie meets nothing well. */
START_TEST(allowances_must_meet_too)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_quilt_patch_spec wide = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id pair[2];
    begin_sewing(&sewn);
    wide.fabric = sewn.blue;
    wide.width = wide.height = sewn.two;
    wide.right = wide.bottom = fixed_of(sewn.quilt, IN(0, 3, 8));
    ck_ok(muslin_quilt_patch(sewn.quilt, &wide, &pair[0], NULL));
    pair[1] = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    muslin_id across = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    const muslin_id rows_of_it[] = { across, patch_in(&sewn, sewn.white, WHOLE_IN(4), WHOLE_IN(2)) };
    muslin_id down = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows_of_it, 2);
    struct muslin_solution *solution = solved(sewn.quilt, down);
    ck_assert_uint_eq(misfits_of(solution, rows), 2);
    ck_misfit(&rows[0], &(struct muslin_misfit){ .node = across, .first = 0, .second = 1, .first_size = IN(0, 3, 8),
                                                 .second_size = IN(0, 1, 4), .difference = IN(0, 1, 8), .count = 1,
                                                 .kind = MUSLIN_MISFIT_ALLOWANCE });
    ck_misfit(&rows[1], &(struct muslin_misfit){ .node = down, .first = 0, .second = 1, .first_size = -1,
                                                 .second_size = IN(0, 1, 4), .difference = 0,
                                                 .count = 1, .kind = MUSLIN_MISFIT_ALLOWANCE });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* A raw edge meets a usual one, from either side; and what has both along one edge is named on either side, too. */
START_TEST(raw_and_mixed_edges_meet_from_either_side)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_quilt_patch_spec raw = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id bare;
    begin_sewing(&sewn);
    raw.fabric = sewn.blue;
    raw.width = raw.height = sewn.two;
    raw.left = raw.right = raw.top = raw.bottom = fixed_of(sewn.quilt, 0);
    ck_ok(muslin_quilt_patch(sewn.quilt, &raw, &bare, NULL));
    muslin_id usual = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    const muslin_id three[] = { usual, bare, usual };
    muslin_id across = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    const muslin_id pair[] = { patch_in(&sewn, sewn.white, WHOLE_IN(6), WHOLE_IN(2)), across };
    muslin_id down = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, pair, 2);
    struct muslin_solution *solution = solved(sewn.quilt, down);
    ck_assert_uint_eq(misfits_of(solution, rows), 3);
    ck_misfit(&rows[0], &(struct muslin_misfit){ .node = across, .first = 0, .second = 1, .first_size = IN(0, 1, 4),
                                                 .second_size = 0, .difference = IN(0, 1, 4), .count = 1,
                                                 .kind = MUSLIN_MISFIT_ALLOWANCE });
    ck_misfit(&rows[1], &(struct muslin_misfit){ .node = across, .first = 1, .second = 2, .first_size = 0,
                                                 .second_size = IN(0, 1, 4), .difference = -IN(0, 1, 4), .count = 1,
                                                 .kind = MUSLIN_MISFIT_ALLOWANCE });
    ck_misfit(&rows[2], &(struct muslin_misfit){ .node = down, .first = 0, .second = 1, .first_size = IN(0, 1, 4),
                                                 .second_size = -1, .count = 1, .kind = MUSLIN_MISFIT_ALLOWANCE });
    muslin_solution_free(solution);
    /* two such edges are equal, and do not meet either */
    const muslin_id twice[] = { across, across };
    muslin_id again = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, twice, 2);
    solution = solved(sewn.quilt, again);
    ck_assert_uint_eq(misfits_of(solution, rows), 3);
    ck_misfit(&rows[2], &(struct muslin_misfit){ .node = again, .first = 0, .second = 1, .first_size = -1,
                                                 .second_size = -1, .count = 1, .kind = MUSLIN_MISFIT_ALLOWANCE });
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* One tick is eased or not like any other length: 100, 101 and 100 ticks high. */
START_TEST(a_tick_is_a_difference)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    const muslin_id low = patch_in(&sewn, sewn.blue, 100, 100);
    const muslin_id three[] = { low, patch_in(&sewn, sewn.white, 100, 101), low };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    for (spec.ease = 0; spec.ease <= 1; spec.ease++) {
        struct muslin_solution *solution = solved_as(sewn.quilt, join, &spec);
        ck_assert_uint_eq(misfits_of(solution, rows), 2);
        for (int i = 0; i < 2; i++) {
            ck_assert_int_eq(rows[i].kind, spec.ease == 0 ? MUSLIN_MISFIT_LENGTH : MUSLIN_MISFIT_EASED);
            ck_assert_int_eq(rows[i].difference, i == 0 ? -1 : 1);
            ck_assert_int_eq(rows[i].ease_each, spec.ease);
        }
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* Of a row only what lies at its end is along its right side: three squares beside a patch, 6 in, are eased to 6 1/4
 * in; and one patch beside three is one piece. */
START_TEST(the_last_of_a_row_is_its_edge)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    const muslin_id three = repeat_of(sewn.quilt, patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two), 1, 3);
    const muslin_id six = patch_in(&sewn, sewn.white, WHOLE_IN(2), WHOLE_IN(6));
    const muslin_id higher = patch_in(&sewn, sewn.white, WHOLE_IN(2), IN(6, 1, 4));
    const muslin_id ends_in_three[] = { six, three };
    const muslin_id ends_in_one[] = { three, six };
    spec.ease = IN(0, 1, 4);
    for (int i = 0; i < 2; i++) {
        const muslin_id pair[] = { join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, i == 0 ? ends_in_three : ends_in_one, 2),
                                   higher };
        struct muslin_solution *solution =
            solved_as(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), &spec);
        ck_assert_uint_eq(misfits_of(solution, rows), 1);
        ck_assert_int_eq(rows[0].pieces, i == 0 ? 3 : 1);
        ck_assert_int_eq(rows[0].ease_each, i == 0 ? 678 : IN(0, 1, 4));
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* A block that only lends its height is not in the top, and neither are its misfits. */
START_TEST(what_is_only_measured_has_no_misfits)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, 100, 200), patch_in(&sewn, sewn.blue, 100, 300) };
    muslin_id measured = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id height = extent_of(sewn.quilt, measured, MUSLIN_AXIS_DOWN);
    const muslin_id other[] = { patch_of(sewn.quilt, sewn.blue, sewn.two, height), pair[0] };
    muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, other, 2);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    ck_assert_uint_eq(misfits_of(solution, rows), 1);
    ck_assert_int_eq(rows[0].node, top);
    ck_assert_int_eq(rows[0].first_size, 300);
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    ck_assert_int_eq(totals.different_nodes, 3);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Three squares, one below the other, turned by a quarter lie side by side: then they are along the bottom, and one of
 * them along the left. */
START_TEST(pieces_along_an_edge_turn_with_it)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    begin_sewing(&sewn);
    const muslin_id three = repeat_of(sewn.quilt, patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two), 1, 3);
    const muslin_id other = patch_in(&sewn, sewn.white, WHOLE_IN(7), WHOLE_IN(7));
    for (int32_t turn = 0; turn < 4; turn++)
        for (int32_t axis = MUSLIN_AXIS_ACROSS; axis <= MUSLIN_AXIS_DOWN; axis++) {
            const muslin_id pair[] = { turn_of(sewn.quilt, three, turn), other };
            struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, axis, pair, 2));
            ck_assert_uint_eq(misfits_of(solution, rows), 1);
            ck_assert_int_eq(rows[0].pieces, (turn % 2 == 0) == (axis == MUSLIN_AXIS_ACROSS) ? 3 : 1);
            muslin_solution_free(solution);
        }
    end_sewing(&sewn);
}
END_TEST

/* A patch with 3/8 in all round: a trimmed edge has the quilt's 1/4 in, the others what they had. */
START_TEST(a_trimmed_edge_has_the_usual_allowance)
{
    struct sewn sewn;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id patch = 0;
    begin_sewing(&sewn);
    spec.fabric = sewn.blue;
    spec.width = spec.height = sewn.two;
    spec.left = spec.right = spec.top = spec.bottom = fixed_of(sewn.quilt, IN(0, 3, 8));
    ck_ok(muslin_quilt_patch(sewn.quilt, &spec, &patch, NULL));
    for (int side = 0; side < 4; side++) {
        muslin_len trims[] = { -1, -1, -1, -1 };
        trims[side] = 100;
        trims[(side + 1) % 4] = 0; /* nothing is trimmed there */
        const muslin_id node = trim_of(&sewn, patch, trims[0], trims[1], trims[2], trims[3]);
        struct muslin_solution *solution = solved(sewn.quilt, node);
        const struct muslin_node_size size = size_of(solution, node);
        ck_assert_int_eq(size.left, side == 0 ? IN(0, 1, 4) : IN(0, 3, 8));
        ck_assert_int_eq(size.right, side == 1 ? IN(0, 1, 4) : IN(0, 3, 8));
        ck_assert_int_eq(size.top, side == 2 ? IN(0, 1, 4) : IN(0, 3, 8));
        ck_assert_int_eq(size.bottom, side == 3 ? IN(0, 1, 4) : IN(0, 3, 8));
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* Two windows, one below the other, have two strips along their left, and nothing rounded; beside what is 1/4 in too
 * high both strips take up half of it. */
START_TEST(a_strip_is_one_piece_along_its_edge)
{
    struct sewn sewn;
    struct muslin_misfit rows[MANY];
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_quilt_set_in_spec spec = MUSLIN_QUILT_SET_IN_SPEC_INIT;
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    muslin_id node = 0;
    begin_sewing(&sewn);
    spec.centre = patch_in(&sewn, sewn.blue, WHOLE_IN(6), WHOLE_IN(6));
    spec.left_width = spec.bottom_width = sewn.two;
    spec.left_fabric = spec.bottom_fabric = sewn.white;
    ck_ok(muslin_quilt_set_in(sewn.quilt, &spec, &node, NULL));
    const muslin_id twice[] = { node, node };
    const muslin_id pair[] = { patch_in(&sewn, sewn.white, WHOLE_IN(1), IN(16, 1, 4)),
                               join_of(sewn.quilt, MUSLIN_AXIS_DOWN, twice, 2) };
    solve.ease = IN(0, 1, 4);
    struct muslin_solution *solution =
        solved_as(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), &solve);
    ck_assert_uint_eq(misfits_of(solution, rows), 1);
    ck_assert_int_eq(rows[0].pieces, 2);
    ck_assert_int_eq(rows[0].ease_each, IN(0, 1, 8));
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    ck_assert_int_eq(totals.area_error, 0);
    ck_assert_int_eq(totals.exact, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(misfits_are_asked_for_and_filled)
{
    struct sewn sewn;
    struct muslin_misfit rows[2] = { { .node = 7 } };
    struct muslin_problem problem = PROBLEM;
    size_t count = 99;
    begin_sewing(&sewn);
    const muslin_id three[] = { patch_in(&sewn, sewn.blue, 100, 200), patch_in(&sewn, sewn.blue, 100, 300),
                                patch_in(&sewn, sewn.blue, 100, 400) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, three, 3);
    struct muslin_solution *solution = solved(sewn.quilt, join);
    ck_status(muslin_solution_misfits(NULL, rows, sizeof rows[0], 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_misfits(solution, rows, sizeof rows[0], 2, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_misfits(solution, rows, 8, 2, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_solution_misfits(solution, NULL, sizeof rows[0], 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(count, 99);
    ck_status(muslin_solution_misfits(solution, rows, sizeof rows[0], 1, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(problem.limit, 2);
    ck_assert_int_eq(rows[0].node, 7);
    ck_ok(muslin_solution_misfits(solution, rows, sizeof rows[0], 2, &count, NULL));
    ck_assert_int_eq(rows[1].first, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- ways to a node --------------------------------------------------------------------------------------------- */

static void ck_path(const struct muslin_solution *solution, muslin_id node, const int64_t *steps, size_t n)
{
    int64_t found[8] = { -9, -9, -9, -9, -9, -9, -9, -9 };
    size_t count = 99;
    ck_ok(muslin_solution_path(solution, node, NULL, 0, &count, NULL));
    ck_assert_uint_eq(count, n);
    ck_ok(muslin_solution_path(solution, node, found, 8, &count, NULL));
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++)
        ck_assert_int_eq(found[i], steps[i]);
    ck_assert_int_eq(found[n], -9);
}

START_TEST(every_node_has_a_way)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id white = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    muslin_id long_one = patch_in(&sewn, sewn.white, WHOLE_IN(4), WHOLE_IN(2));
    const muslin_id plain[] = { white, white };
    const muslin_id mixed[] = { blue, white };
    const muslin_id apart[] = { blue, blue };
    join_of(sewn.quilt, MUSLIN_AXIS_DOWN, apart, 2); /* not in the top */
    muslin_id turned = turn_of(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, mixed, 2), 1);
    const muslin_id rows[] = { long_one, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, plain, 2),
                               join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, mixed, 2), turned };
    muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows, 4);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    ck_path(solution, top, NULL, 0);
    /* Example: 2, 0: the first child of the root's third. */
    ck_path(solution, rows[2], (const int64_t[]){ 2 }, 1);
    ck_path(solution, long_one, (const int64_t[]){ 0 }, 1);
    ck_path(solution, turned, (const int64_t[]){ 3 }, 1);
    /* blue and white first became part of the pair that is turned */
    ck_path(solution, blue, (const int64_t[]){ 3, 0, 0 }, 3);
    ck_path(solution, white, (const int64_t[]){ 3, 0, 1 }, 3);
    muslin_solution_free(solution);
    solution = solved(sewn.quilt, rows[2]);
    ck_path(solution, blue, (const int64_t[]){ 0 }, 1);
    ck_path(solution, white, (const int64_t[]){ 1 }, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(a_way_needs_room)
{
    struct sewn sewn;
    int64_t steps[2] = { 7, 7 };
    size_t count = 99;
    struct muslin_problem problem = PROBLEM;
    begin_sewing(&sewn);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id top = repeat_of(sewn.quilt, blue, 2, 2);
    muslin_id outside = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    ck_status(muslin_solution_path(NULL, blue, steps, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_path(solution, blue, steps, 2, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_path(solution, blue, NULL, 2, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_path(solution, outside, steps, 2, &count, NULL), MUSLIN_ERR_FOREIGN);
    ck_assert_uint_eq(count, 99);
    ck_status(muslin_solution_path(solution, blue, steps, 1, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 2);
    ck_assert_int_eq(steps[0], 7);
    ck_ok(muslin_solution_path(solution, blue, steps, 2, &count, NULL));
    ck_assert_int_eq(steps[0] + steps[1], 0);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- totals ----------------------------------------------------------------------------------------------------- */

static struct muslin_solution_total totals_of(const struct muslin_solution *solution)
{
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_solution_totals(solution, &totals, NULL));
    return totals;
}

/* 81 squares of 4 in, of two fabrics like a chessboard: five unlike nodes. */
START_TEST(the_whole_at_a_glance)
{
    struct sewn sewn;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    muslin_id squares[81];
    muslin_id top;
    begin_sewing(&sewn);
    const muslin_id two[] = { patch_in(&sewn, sewn.blue, WHOLE_IN(4), WHOLE_IN(4)),
                              patch_in(&sewn, sewn.white, WHOLE_IN(4), WHOLE_IN(4)) };
    for (int i = 0; i < 81; i++)
        squares[i] = two[i % 2];
    ck_ok(muslin_quilt_grid(sewn.quilt, 9, 9, squares, 81, &top, NULL));
    spec.tops = 3;
    struct muslin_solution *solution = solved_as(sewn.quilt, top, &spec);
    struct muslin_solution_total totals = totals_of(solution);
    /* Example: a 36 in square top of 81 patches. */
    ck_assert_int_eq(totals.patches, 3 * 81);
    ck_assert_int_eq(totals.different_nodes, 5);
    ck_assert_int_eq(totals.finished_area, 2 * WHOLE_IN(36) * WHOLE_IN(36));
    ck_assert_int_eq(totals.patch_area, totals.finished_area);
    ck_assert_int_eq(totals.area_error, 0);
    ck_assert_int_eq(totals.misfits, 0);
    ck_assert_int_eq(totals.eased, 0);
    ck_assert_int_eq(totals.exact, 1);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* 3 x 4 in beside 2 x 3 in: 20 square inches, of which 18 are covered; below it 4 x 1 in, and 1 x 1 in are not. */
START_TEST(gaps_are_not_covered)
{
    struct sewn sewn;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, WHOLE_IN(3), WHOLE_IN(4)),
                               patch_in(&sewn, sewn.blue, WHOLE_IN(2), WHOLE_IN(3)) };
    const muslin_id rows[] = { join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2),
                               patch_in(&sewn, sewn.white, WHOLE_IN(4), WHOLE_IN(1)) };
    muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows, 2);
    spec.ease = WHOLE_IN(1);
    struct muslin_solution *solution = solved_as(sewn.quilt, top, &spec);
    struct muslin_solution_total totals = totals_of(solution);
    ck_assert_int_eq(totals.finished_area, 2 * 25 * WHOLE_IN(1) * WHOLE_IN(1));
    ck_assert_int_eq(totals.patch_area, 2 * 22 * WHOLE_IN(1) * WHOLE_IN(1));
    ck_assert_int_eq(totals.misfits, 0);
    ck_assert_int_eq(totals.eased, 2);
    muslin_solution_free(solution);
    spec.ease = 0;
    solution = solved_as(sewn.quilt, top, &spec);
    ck_assert_int_eq(totals_of(solution).misfits, 2);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* One tick of a pair of patches, 100 x 60 and 200 x 60, is trimmed away at each side in turn. */
START_TEST(a_tick_trimmed_away_is_not_covered)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, 100, 60), patch_in(&sewn, sewn.white, 200, 60) };
    const muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    for (int side = 0; side < 4; side++) {
        struct muslin_solution *solution =
            solved(sewn.quilt, trim_of(&sewn, join, side == 0, side == 1, side == 2, side == 3));
        const int64_t area = side < 2 ? 2 * 299 * 60 : 2 * 300 * 59;
        ck_assert_int_eq(totals_of(solution).finished_area, area);
        ck_assert_int_eq(totals_of(solution).patch_area, area);
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* 2^14 x 2^14 patches of a tick beside one as high, of which 3 of 5 ticks are trimmed away, at the left or at the
 * right: what is not cut is passed over, though it lies along three edges, or this takes hours. */
START_TEST(what_is_not_cut_is_passed_over)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id many = patch_in(&sewn, sewn.blue, 1, 1);
    for (int i = 0; i < 28; i++) {
        const muslin_id twice[] = { many, many };
        many = join_of(sewn.quilt, i % 2 == 0 ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN, twice, 2);
    }
    const muslin_id beside = patch_in(&sewn, sewn.white, 5, 16384);
    const muslin_id pairs[][2] = { { beside, many }, { many, beside } };
    for (int i = 0; i < 2; i++) {
        const muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pairs[i], 2);
        const muslin_id trimmed = trim_of(&sewn, join, i == 0 ? 3 : 0, i == 1 ? 3 : 0, 0, 0);
        struct muslin_solution *solution = solved(sewn.quilt, trimmed);
        ck_assert_int_eq(totals_of(solution).patch_area, 2 * 16386 * 16384);
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* Trimmed in whole patches and parts of them, twice, and twice used; whatever is cut away, what is left is all covered.
 * Nothing of the work passes over what is not cut. */
START_TEST(what_is_trimmed_away_is_not_covered)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id pair[] = { patch_in(&sewn, sewn.blue, WHOLE_IN(3), WHOLE_IN(2)),
                               patch_in(&sewn, sewn.white, WHOLE_IN(1), WHOLE_IN(2)) };
    muslin_id block = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    muslin_id field = repeat_of(sewn.quilt, block, 5, 6);                                  /* 20 x 12 */
    muslin_id once = trim_of(&sewn, field, WHOLE_IN(1), WHOLE_IN(5), -1, IN(0, 1, 2));     /* 14 x 11 1/2 */
    muslin_id twice = trim_of(&sewn, turn_of(sewn.quilt, once, 1), 0, -1, WHOLE_IN(3), 9); /* 11 1/2 x 11 less 9 */
    const muslin_id both[] = { twice, mirror_of(sewn.quilt, twice) };
    muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, both, 2);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    struct muslin_solution_total totals = totals_of(solution);
    ck_assert_int_eq(totals.finished_area, 2 * WHOLE_IN(23) * (WHOLE_IN(11) - 9));
    ck_assert_int_eq(totals.patch_area, totals.finished_area);
    ck_assert_int_eq(totals.patches, 120);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

static muslin_status ask_totals(const void *solution, void *out, struct muslin_problem *problem)
{
    return muslin_solution_totals(solution, out, problem);
}

START_TEST(totals_follow_the_rules_of_outputs)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two));
    const uint32_t size = (uint32_t)sizeof(struct muslin_solution_total);
    const struct ruled ruled = { ask_totals, solution, 0, size, size, 0 };
    ck_out_rules(&ruled);
    ck_problem_rules(&ruled);
    struct muslin_solution_total totals = { .size = (uint32_t)sizeof totals };
    ck_status(muslin_solution_totals(NULL, &totals, NULL), MUSLIN_ERR_NULL);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* ---- sums ------------------------------------------------------------------------------------------------------- */

struct term {
    int32_t kind;
    int32_t finished;
    muslin_id id;
    int64_t times;
    muslin_len value;
};

static void ck_terms(const struct muslin_solution *solution, muslin_id node, int32_t axis, const struct term *terms,
                     size_t n)
{
    struct muslin_term rows[MANY];
    size_t asked = 0;
    size_t count = 0;
    muslin_len sum = 0;
    ck_ok(muslin_solution_explain(solution, node, axis, NULL, 0, 0, &asked, NULL));
    ck_ok(muslin_solution_explain(solution, node, axis, rows, sizeof rows[0], MANY, &count, NULL));
    ck_assert_uint_eq(asked, n);
    ck_assert_uint_eq(count, n);
    for (size_t i = 0; i < n; i++) {
        sum += terms[i].value;
        ck_assert_int_eq(rows[i].kind, terms[i].kind);
        ck_assert_int_eq(rows[i].finished, terms[i].finished);
        ck_assert_int_eq(rows[i].id, terms[i].id);
        ck_assert_int_eq(rows[i].times, terms[i].times);
        ck_assert_int_eq(rows[i].value, terms[i].value);
        ck_assert_int_eq(rows[i].sum, sum);
    }
    struct muslin_node_size size = size_of(solution, node);
    ck_assert_int_eq(sum, axis == MUSLIN_AXIS_ACROSS ? size.unfinished_width : size.unfinished_height);
}
#define CK_TERMS(solution, node, axis, terms) ck_terms(solution, node, axis, terms, COUNT_OF(terms))

static muslin_id seam_allowance(const struct sewn *sewn)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_seam(sewn->quilt, &id, NULL, NULL));
    return id;
}

static muslin_id take_up(const struct sewn *sewn)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_seam(sewn->quilt, NULL, &id, NULL));
    return id;
}

START_TEST(three_strips_of_two_inches)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_id s = seam_allowance(&sewn);
    muslin_id strip = patch_of(sewn.quilt, sewn.blue, sewn.two, fixed_of(sewn.quilt, WHOLE_IN(6)));
    const muslin_id strips[] = { strip, strip, strip };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, strips, 3);
    struct muslin_solution *solution = solved(sewn.quilt, join);
    /* Example: three strips of 2 in: 3 x 2 = 6 in finished, 1/4 and 1/4 make 6 1/2 in. */
    const struct term across[] = { { MUSLIN_TERM_CHILD, 1, strip, 3, WHOLE_IN(6) },
                                   { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                   { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter } };
    CK_TERMS(solution, join, MUSLIN_AXIS_ACROSS, across);
    const struct term down[] = { { MUSLIN_TERM_GREATEST, 1, strip, 1, WHOLE_IN(6) },
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter } };
    CK_TERMS(solution, join, MUSLIN_AXIS_DOWN, down);
    const struct term patch[] = { { MUSLIN_TERM_MEASURE, 1, sewn.two, 1, WHOLE_IN(2) },
                                  { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                  { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter } };
    CK_TERMS(solution, strip, MUSLIN_AXIS_ACROSS, patch);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Runs, the greatest of unlike children, edges with an allowance of their own or none, half the take-up of each edge
 * that is sewn: 5 ticks for one edge give 3. */
START_TEST(each_edge_has_its_allowance)
{
    struct sewn sewn;
    struct muslin_solution_value_spec value = MUSLIN_SOLUTION_VALUE_SPEC_INIT;
    struct muslin_solution_spec solve = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    muslin_id edge;
    begin_sewing(&sewn);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_id s = seam_allowance(&sewn);
    const muslin_id u = take_up(&sewn);
    const muslin_id none = fixed_of(sewn.quilt, 0);
    const muslin_id wide = measure_of(sewn.quilt, "wide", 4000);
    spec.fabric = sewn.blue;
    spec.width = fixed_of(sewn.quilt, 10000);
    spec.height = sewn.two;
    spec.left = none;
    spec.top = wide;
    ck_ok(muslin_quilt_patch(sewn.quilt, &spec, &edge, NULL));
    muslin_id square = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    const muslin_id four[] = { edge, square, square, patch_in(&sewn, sewn.white, 500, 20000) };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, four, 4);
    muslin_id turned = turn_of(sewn.quilt, join, 1); /* the left edge comes to lie on top */
    value.id = u;
    value.value = 5;
    ck_ok(muslin_solution_create(sewn.quilt, turned, &solve, &value, sizeof value, 1, NULL, &solution, NULL));
    const struct term across[] = { { MUSLIN_TERM_CHILD, 1, edge, 1, 10000 },
                                   { MUSLIN_TERM_CHILD, 1, square, 2, WHOLE_IN(4) },
                                   { MUSLIN_TERM_CHILD, 1, four[3], 1, 500 },
                                   { MUSLIN_TERM_ALLOWANCE, 0, none, 1, 0 },
                                   { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                   { MUSLIN_TERM_TAKE_UP, 0, u, 1, 3 } };
    CK_TERMS(solution, join, MUSLIN_AXIS_ACROSS, across);
    const struct term down[] = { { MUSLIN_TERM_GREATEST, 1, four[3], 1, 20000 },
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter }, /* mixed: the quilt's */
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                 { MUSLIN_TERM_TAKE_UP, 0, u, 2, 5 } };
    CK_TERMS(solution, join, MUSLIN_AXIS_DOWN, down);
    const struct term turned_down[] = { { MUSLIN_TERM_CHILD, 1, join, 1, 10000 + WHOLE_IN(4) + 500 },
                                        { MUSLIN_TERM_ALLOWANCE, 0, none, 1, 0 },
                                        { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                        { MUSLIN_TERM_TAKE_UP, 0, u, 1, 3 } };
    CK_TERMS(solution, turned, MUSLIN_AXIS_DOWN, turned_down);
    const struct term patch[] = { { MUSLIN_TERM_MEASURE, 1, sewn.two, 1, WHOLE_IN(2) },
                                  { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 },
                                  { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                  { MUSLIN_TERM_TAKE_UP, 0, u, 2, 5 } };
    CK_TERMS(solution, edge, MUSLIN_AXIS_DOWN, patch);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* The right edge of a column is that of its first row, its bottom edge the last row's. */
START_TEST(edges_are_found_at_their_end)
{
    struct sewn sewn;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id low;
    begin_sewing(&sewn);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_id s = seam_allowance(&sewn);
    const muslin_id wide = fixed_of(sewn.quilt, 4000);
    spec.fabric = sewn.blue;
    spec.width = spec.height = sewn.two;
    spec.bottom = spec.right = wide;
    ck_ok(muslin_quilt_patch(sewn.quilt, &spec, &low, NULL));
    const muslin_id pair[] = { patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two), low };
    muslin_id column = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, pair, 2);
    const muslin_id sides[] = { column, low };
    muslin_id top = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, sides, 2);
    struct muslin_solution *solution = solved(sewn.quilt, top);
    const struct term down[] = { { MUSLIN_TERM_CHILD, 1, pair[0], 1, WHOLE_IN(2) },
                                 { MUSLIN_TERM_CHILD, 1, low, 1, WHOLE_IN(2) },
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                 { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 } };
    CK_TERMS(solution, column, MUSLIN_AXIS_DOWN, down);
    const struct term across[] = { { MUSLIN_TERM_CHILD, 1, column, 1, WHOLE_IN(2) },
                                   { MUSLIN_TERM_CHILD, 1, low, 1, WHOLE_IN(2) },
                                   { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                   { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 } };
    CK_TERMS(solution, top, MUSLIN_AXIS_ACROSS, across);
    const struct term greatest[] = { { MUSLIN_TERM_GREATEST, 1, column, 1, WHOLE_IN(4) },
                                     { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                     { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 } };
    CK_TERMS(solution, top, MUSLIN_AXIS_DOWN, greatest);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* What is trimmed is taken off, and a trimmed edge has the quilt's allowance; one of which nothing is trimmed, its
 * own. */
START_TEST(trims_are_taken_off)
{
    struct sewn sewn;
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id patch;
    begin_sewing(&sewn);
    const muslin_len quarter = IN(0, 1, 4);
    const muslin_id s = seam_allowance(&sewn);
    const muslin_id wide = fixed_of(sewn.quilt, 4000);
    spec.fabric = sewn.blue;
    spec.width = spec.height = fixed_of(sewn.quilt, 20000);
    spec.left = spec.right = spec.top = spec.bottom = wide;
    ck_ok(muslin_quilt_patch(sewn.quilt, &spec, &patch, NULL));
    muslin_id trimmed = trim_of(&sewn, patch, 300, -1, 0, 5000);
    struct muslin_solution *solution = solved(sewn.quilt, trimmed);
    const struct term across[] = { { MUSLIN_TERM_CHILD, 1, patch, 1, 20000 },
                                   { MUSLIN_TERM_TRIMMED, 1, fixed_of(sewn.quilt, 300), 1, -300 },
                                   { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter },
                                   { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 } };
    CK_TERMS(solution, trimmed, MUSLIN_AXIS_ACROSS, across);
    const struct term down[] = { { MUSLIN_TERM_CHILD, 1, patch, 1, 20000 },
                                 { MUSLIN_TERM_TRIMMED, 1, fixed_of(sewn.quilt, 0), 1, 0 },
                                 { MUSLIN_TERM_TRIMMED, 1, fixed_of(sewn.quilt, 5000), 1, -5000 },
                                 { MUSLIN_TERM_ALLOWANCE, 0, wide, 1, 4000 },
                                 { MUSLIN_TERM_ALLOWANCE, 0, s, 1, quarter } };
    CK_TERMS(solution, trimmed, MUSLIN_AXIS_DOWN, down);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

START_TEST(explaining_has_its_rules)
{
    struct sewn sewn;
    struct muslin_term rows[4] = { { .id = 7 } };
    size_t count = 99;
    begin_sewing(&sewn);
    muslin_id patch = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id outside = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    struct muslin_solution *solution = solved(sewn.quilt, patch);
    const uint32_t size = (uint32_t)sizeof rows[0];
    ck_status(muslin_solution_explain(NULL, patch, 1, rows, size, 4, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_explain(solution, patch, 1, rows, size, 4, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_explain(solution, patch, 1, NULL, size, 4, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_explain(solution, outside, 1, rows, size, 4, &count, NULL), MUSLIN_ERR_FOREIGN);
    ck_status(muslin_solution_explain(solution, patch, 0, rows, size, 4, &count, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_solution_explain(solution, patch, 3, rows, size, 4, &count, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_solution_explain(solution, patch, 1, rows, size - 1, 4, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_uint_eq(count, 99);
    ck_status(muslin_solution_explain(solution, patch, 1, rows, size, 2, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(rows[0].id, 7);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

Suite *solution_check_suite(void)
{
    Suite *suite = suite_create("solution_check");
    TCase *tcase = tcase_create("check");
    tcase_add_test(tcase, patches_that_differ_do_not_meet);
    tcase_add_test(tcase, edges_are_eased_over_their_pieces);
    tcase_add_test(tcase, allowances_must_meet_too);
    tcase_add_test(tcase, raw_and_mixed_edges_meet_from_either_side);
    tcase_add_test(tcase, a_tick_is_a_difference);
    tcase_add_test(tcase, the_last_of_a_row_is_its_edge);
    tcase_add_test(tcase, what_is_only_measured_has_no_misfits);
    tcase_add_test(tcase, pieces_along_an_edge_turn_with_it);
    tcase_add_test(tcase, a_trimmed_edge_has_the_usual_allowance);
    tcase_add_test(tcase, a_strip_is_one_piece_along_its_edge);
    tcase_add_test(tcase, misfits_are_asked_for_and_filled);
    tcase_add_test(tcase, every_node_has_a_way);
    tcase_add_test(tcase, a_way_needs_room);
    tcase_add_test(tcase, the_whole_at_a_glance);
    tcase_add_test(tcase, gaps_are_not_covered);
    tcase_add_test(tcase, a_tick_trimmed_away_is_not_covered);
    tcase_add_test(tcase, what_is_not_cut_is_passed_over);
    tcase_add_test(tcase, what_is_trimmed_away_is_not_covered);
    tcase_add_test(tcase, totals_follow_the_rules_of_outputs);
    tcase_add_test(tcase, three_strips_of_two_inches);
    tcase_add_test(tcase, each_edge_has_its_allowance);
    tcase_add_test(tcase, edges_are_found_at_their_end);
    tcase_add_test(tcase, trims_are_taken_off);
    tcase_add_test(tcase, explaining_has_its_rules);
    suite_add_tcase(suite, tcase);
    return suite;
}
