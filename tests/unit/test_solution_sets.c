/* test_solution_sets.c - strip sets: which joins, what they give, when they are used, how prints lie in them.
 *
 * SPDX-License-Identifier: MIT
 *
 * Figures are worked by hand: a 2 1/2 in segment comes 16 times from 40 in, a 10 1/2 in one 3 times. */
#include "test_solution_cuts.h"

/* ---- a set, all its figures ------------------------------------------------------------------------------------- */

/* blue white blue, each 2 in square. */
static muslin_id three_squares(struct sewn *sewn)
{
    muslin_id blue = patch_of(sewn->quilt, sewn->blue, sewn->two, sewn->two);
    muslin_id white = patch_of(sewn->quilt, sewn->white, sewn->two, sewn->two);
    const muslin_id row[] = { blue, white, blue };
    return join_of(sewn->quilt, MUSLIN_AXIS_ACROSS, row, 3);
}

START_TEST(nine_rows_of_three_squares_are_one_set)
{
    /* Example: nine rows of three 2 in squares: segments of 2 1/2 in, sixteen from a 40 in set, one set. */
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id row = three_squares(&sewn);
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, row, 1, 9));
    ck_assert_uint_eq(listed.set_count, 1);
    const struct muslin_stripset *set = &listed.sets[0];
    ck_assert_int_eq(set->node, row);
    ck_assert_int_eq(set->strips, 3);
    ck_assert_int_eq(set->set_unfinished, IN(6, 1, 2));
    ck_assert_int_eq(set->segment_cut, IN(2, 1, 2));
    ck_assert_int_eq(set->strip_length, WHOLE_IN(40));
    ck_assert_int_eq(set->segments, 9);
    ck_assert_int_eq(set->segments_per_set, 16);
    ck_assert_int_eq(set->sets, 1);
    ck_assert_int_eq(set->spare, 7);
    /* apart: 18 blue squares from 2 strips, 9 white ones from 1; in sets: 3 strips, 9 cross-cuts */
    ck_assert_int_eq(set->cuts_apart, 2 + 18 + 1 + 9);
    ck_assert_int_eq(set->cuts_in_sets, 3 + 9);
    ck_assert_int_eq(set->shorter_by, 0);
    ck_assert_int_eq(set->used, 1);
    ck_assert_int_eq(set->turns, 1);
    ck_assert_uint_eq(set->warnings, MUSLIN_WARN_NO_SLACK);
    /* the cut list then has strips alone */
    ck_assert_uint_eq(listed.cut_count, 2);
    const struct muslin_solution_cut *blue = &listed.cuts[0];
    ck_assert_int_eq(blue->source, MUSLIN_CUT_SOURCE_SET_STRIP);
    ck_assert_int_eq(blue->fabric, sewn.blue);
    ck_assert_int_eq(blue->cut_width, WHOLE_IN(40));
    ck_assert_int_eq(blue->cut_height, IN(2, 1, 2));
    ck_assert_int_eq(blue->gives, 16);
    ck_counts(blue, 2, 32, 14);
    ck_turns(blue, 0, 18, 0, 0, 0); /* they lie upright in the set, a quarter from how they were cut */
    ck_assert_int_eq(blue->first_node, row);
    ck_assert_uint_eq(blue->warnings, 0);
    ck_counts(&listed.cuts[1], 1, 16, 7);
    ck_assert_int_eq(listed.cuts[1].fabric, sewn.white);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Trade: Quick rail fence from 2.5 inch strips (handout): five strips of 2 1/2 in make sets 10 1/2 in wide, cut into
 * blocks 10 1/2 in square, three from 40 in and four from 42 in with nothing to spare; 42 blocks (6 x 7, turned in
 * turn) take 14 sets, 70 strips, and finish 60 x 70 in. */
START_TEST(the_rail_fence_of_the_handout)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id ten = times_of(sewn.quilt, sewn.two, 5);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, ten);
    muslin_id white = patch_of(sewn.quilt, sewn.white, sewn.two, ten);
    const muslin_id rails[] = { blue, blue, white, blue, blue };
    const int32_t turns[] = { 0, 1, 1, 0 };
    muslin_id block = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, rails, 5);
    muslin_id top = 0;
    ck_ok(muslin_quilt_repeat(sewn.quilt, block, 6, 7, turns, 4, 2, 2, &top, NULL));
    list_of(&listed, sewn.quilt, top);
    ck_assert_uint_eq(listed.set_count, 1);
    ck_assert_int_eq(listed.sets[0].set_unfinished, IN(10, 1, 2));
    ck_assert_int_eq(listed.sets[0].segments_per_set, 3);
    ck_assert_int_eq(listed.sets[0].sets, 14);
    ck_assert_int_eq(listed.sets[0].shorter_by, WHOLE_IN(40) - 3 * IN(10, 1, 2));
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_assert_int_eq(listed.cuts[0].count, 56);
    ck_assert_int_eq(listed.cuts[1].count, 14);
    ck_turns(&listed.cuts[1], 0, 21, 21, 0, 0);
    ck_assert_int_eq(size_of(listed.solution, top).finished_width, WHOLE_IN(60));
    ck_assert_int_eq(size_of(listed.solution, top).finished_height, WHOLE_IN(70));
    end_list(&listed);
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    const struct muslin_solution_value_spec wider[] = { { sizeof wider[0], 0, sewn.blue, WHOLE_IN(42) },
                                               { sizeof wider[0], 0, sewn.white, WHOLE_IN(42) } };
    ck_ok(muslin_solution_create(sewn.quilt, top, &spec, wider, sizeof wider[0], 2, NULL, &listed.solution, NULL));
    list_all(&listed);
    ck_assert_int_eq(listed.sets[0].segments_per_set, 4);
    ck_assert_uint_eq(listed.sets[0].warnings, MUSLIN_WARN_NO_SLACK);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* Twenty nine-patches: rows blue white blue twice in each, white blue white once. 40 segments of the one take 3 sets of
 * 16, 20 of the other 2. Blue strips 3 x 2 + 2 x 1, white ones 3 x 1 + 2 x 2. */
START_TEST(a_nine_patch_top_takes_two_kinds_of_sets)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id outer = three_squares(&sewn);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id white = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    const muslin_id middle[] = { white, blue, white };
    const muslin_id rows[] = { outer, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, middle, 3), outer };
    muslin_id block = join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows, 3);
    list_of(&listed, sewn.quilt, repeat_of(sewn.quilt, block, 4, 5));
    ck_assert_uint_eq(listed.set_count, 2);
    ck_assert_int_eq(listed.sets[0].segments, 40);
    ck_assert_int_eq(listed.sets[0].sets, 3);
    ck_assert_int_eq(listed.sets[0].spare, 8);
    ck_assert_int_eq(listed.sets[1].segments, 20);
    ck_assert_int_eq(listed.sets[1].sets, 2);
    ck_assert_int_eq(listed.sets[1].spare, 12);
    ck_assert_uint_eq(listed.cut_count, 2);
    ck_counts(&listed.cuts[0], 8, 128, 2 * 8 + 12);
    ck_counts(&listed.cuts[1], 7, 112, 8 + 2 * 12);
    ck_assert_int_eq(listed.cuts[0].nodes, 2);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- used or not ------------------------------------------------------------------------------------------------ */

/* The first set of rows x the node, solved with this wish. */
static struct muslin_stripset set_in(struct sewn *sewn, muslin_id node, int64_t rows, int32_t wish)
{
    static struct listed listed;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.strip_piecing = wish;
    spec.tops = rows;
    list_with(&listed, sewn->quilt, node, &spec);
    ck_assert_uint_eq(listed.set_count, 1);
    end_list(&listed);
    return listed.sets[0];
}

START_TEST(at_least_half_of_a_set_must_be_needed)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id row = three_squares(&sewn);
    ck_assert_int_eq(set_in(&sewn, row, 7, MUSLIN_STRIP_PIECING_WHERE_FEWER).used, 0);
    ck_assert_int_eq(set_in(&sewn, row, 8, MUSLIN_STRIP_PIECING_WHERE_FEWER).used, 1);
    ck_assert_int_eq(set_in(&sewn, row, 17, MUSLIN_STRIP_PIECING_WHERE_FEWER).used, 1);
    ck_assert_int_eq(set_in(&sewn, row, 8, MUSLIN_STRIP_PIECING_NEVER).used, 0);
    end_sewing(&sewn);
}
END_TEST

START_TEST(a_set_that_saves_no_cut_is_not_used)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    /* patches 1 1/2 x 19 1/2 in as cut, two from a strip: one pair takes 1 strip and 2 cuts, as a set 2 strips and 1
     * cut; three pairs 3 strips and 6 cuts, as two sets 4 strips and 3 cuts */
    muslin_id narrow = fixed_of(sewn.quilt, WHOLE_IN(1));
    muslin_id patch = patch_of(sewn.quilt, sewn.blue, narrow, fixed_of(sewn.quilt, WHOLE_IN(19)));
    const muslin_id pair[] = { patch, patch };
    muslin_id join = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    struct muslin_stripset set = set_in(&sewn, join, 1, MUSLIN_STRIP_PIECING_WHERE_FEWER);
    ck_assert_int_eq(set.cuts_apart, 1 + 2);
    ck_assert_int_eq(set.cuts_in_sets, 2 + 1);
    ck_assert_int_eq(set.spare, 1);
    ck_assert_int_eq(set.used, 0);
    set = set_in(&sewn, join, 3, MUSLIN_STRIP_PIECING_WHERE_FEWER);
    ck_assert_int_eq(set.cuts_apart, 3 + 6);
    ck_assert_int_eq(set.cuts_in_sets, 4 + 3);
    ck_assert_int_eq(set.used, 1);
    /* squares 9 1/2 in as cut, four from a strip: two pairs take 1 + 4, as a set 2 + 2 */
    muslin_id nine = fixed_of(sewn.quilt, WHOLE_IN(9));
    muslin_id square = patch_of(sewn.quilt, sewn.blue, nine, nine);
    const muslin_id squares[] = { square, square };
    set = set_in(&sewn, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, squares, 2), 2, MUSLIN_STRIP_PIECING_WHERE_FEWER);
    ck_assert_int_eq(set.cuts_apart, 1 + 4);
    ck_assert_int_eq(set.cuts_in_sets, 2 + 2);
    ck_assert_int_eq(set.used, 1);
    end_sewing(&sewn);
}
END_TEST

START_TEST(always_and_never_are_obeyed)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    const muslin_id row[] = { blue, blue };
    muslin_id always = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, row, 2);
    muslin_id never = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_NEVER, 0, row, 2);
    ck_assert_int_eq(set_in(&sewn, always, 1, MUSLIN_STRIP_PIECING_WHERE_FEWER).used, 1);
    ck_assert_int_eq(set_in(&sewn, always, 1, MUSLIN_STRIP_PIECING_NEVER).used, 1);
    ck_assert_int_eq(set_in(&sewn, never, 16, MUSLIN_STRIP_PIECING_WHERE_FEWER).used, 0);
    end_sewing(&sewn);
}
END_TEST

static void ck_not_solved(struct sewn *sewn, muslin_id node, muslin_status status, int32_t argument)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution *solution = NULL;
    ck_status(muslin_solution_create(sewn->quilt, node, &spec, NULL, 0, 0, NULL, &solution, &problem), status);
    ck_assert_ptr_null(solution);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
    /* so does a top that holds it */
    ck_status(muslin_solution_create(sewn->quilt, repeat_of(sewn->quilt, node, 1, 2), &spec, NULL, 0, 0, NULL,
                                     &solution, &problem), status);
    ck_assert_int_eq(problem.at, muslin_id_number(node));
}

START_TEST(what_must_be_strip_pieced_and_cannot_be_fails)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id three = fixed_of(sewn.quilt, WHOLE_IN(3));
    muslin_id square = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id higher = patch_of(sewn.quilt, sewn.blue, sewn.two, three);
    muslin_id row = three_squares(&sewn);
    struct muslin_quilt_patch_spec bare = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id top_bare = 0;
    muslin_id bottom_bare = 0;
    bare.fabric = sewn.blue;
    bare.width = bare.height = sewn.two;
    bare.top = fixed_of(sewn.quilt, 0);
    ck_ok(muslin_quilt_patch(sewn.quilt, &bare, &top_bare, NULL));
    bare.bottom = bare.top;
    bare.top = 0;
    ck_ok(muslin_quilt_patch(sewn.quilt, &bare, &bottom_bare, NULL));
    const muslin_id others[] = { higher, row, turn_of(sewn.quilt, row, 1), top_bare, bottom_bare };
    for (size_t i = 0; i < COUNT_OF(others); i++) {
        const muslin_id pair[] = { square, others[i] };
        muslin_id must = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, pair, 2);
        ck_not_solved(&sewn, must, MUSLIN_ERR_METHOD, MUSLIN_ARG_STRIP_PIECING);
        muslin_id may = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
        struct muslin_solution *solution = solved(sewn.quilt, may);
        size_t count = 9;
        ck_ok(muslin_solution_stripsets(solution, NULL, 0, 0, &count, NULL));
        ck_assert_uint_eq(count, i == 1 || i == 2); /* the row itself can be a set, if not what it lies in */
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(a_segment_longer_than_the_cloth_is_wide_gives_none)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_len lengths[] = { IN(39, 1, 2), IN(39, 1, 2) + 1, MUSLIN_SIZE_MAX / 2 };
    for (size_t i = 0; i < COUNT_OF(lengths); i++) {
        muslin_id patch = patch_of(sewn.quilt, sewn.blue, sewn.two, fixed_of(sewn.quilt, lengths[i]));
        const muslin_id pair[] = { patch, patch };
        muslin_id must = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, pair, 2);
        if (i > 0)
            ck_not_solved(&sewn, must, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_SEGMENT_CUT);
        list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2));
        ck_assert_uint_eq(listed.set_count, i == 0);
        end_list(&listed);
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(what_cannot_be_a_set_is_told_in_words)
{
    struct sewn sewn;
    struct muslin_problem problem = PROBLEM;
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    begin_sewing(&sewn);
    muslin_id square = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id tall = patch_of(sewn.quilt, sewn.blue, sewn.two, fixed_of(sewn.quilt, WHOLE_IN(60)));
    const muslin_id unlike[] = { square, tall };
    const muslin_id long_ones[] = { tall, tall };
    muslin_id must = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, unlike, 2);
    ck_status(muslin_solution_create(sewn.quilt, must, &spec, NULL, 0, 0, NULL, &solution,
                                     &problem), MUSLIN_ERR_METHOD);
    ck_assert_str_eq(problem.text, "Strip piecing is 2, but its pieces are not all patches of one length: no strip set "
                                   "makes them.");
    must = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, long_ones, 2);
    ck_status(muslin_solution_create(sewn.quilt, must, &spec, NULL, 0, 0, NULL, &solution,
                                     &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_str_eq(problem.text, "Cut size of a segment is 60 1/2 in, but there is room for at most 40 in.");
    end_sewing(&sewn);
}
END_TEST

/* A patch that is longer along the join than the cloth is wide is cut from strips the other way. */
START_TEST(a_patch_wider_than_the_cloth_is_cut_the_other_way)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id patch = patch_of(sewn.quilt, sewn.blue, fixed_of(sewn.quilt, WHOLE_IN(45)), sewn.two);
    muslin_id square = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    const muslin_id pair[] = { patch, square };
    struct muslin_stripset set =
        set_in(&sewn, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), 20, MUSLIN_STRIP_PIECING_WHERE_FEWER);
    ck_assert_int_eq(set.cuts_apart, 2 + 20 + 2 + 20);
    ck_assert_int_eq(set.cuts_in_sets, 4 + 20);
    end_sewing(&sewn);
}
END_TEST

START_TEST(trims_and_the_fold_lower_the_yield)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id patch = patch_of(sewn.quilt, sewn.blue, sewn.two, fixed_of(sewn.quilt, WHOLE_IN(6)));
    const muslin_id pair[] = { patch, patch };
    muslin_id row = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2);
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.end_trim = IN(0, 1, 2);
    spec.tops = 6;
    list_with(&listed, sewn.quilt, row, &spec); /* 40 - 1 = 6 x 6 1/2 */
    ck_assert_int_eq(listed.sets[0].segments_per_set, 6);
    ck_assert_uint_eq(listed.sets[0].warnings, MUSLIN_WARN_NO_SLACK);
    end_list(&listed);
    spec.flags = 0; /* 20 in from each end: 1/2 and three of 6 1/2, as muslin_stripset_yield() has it of the same members */
    list_with(&listed, sewn.quilt, row, &spec);
    ck_assert_int_eq(listed.sets[0].segments_per_set, 6);
    end_list(&listed);
    spec.fold_clear = WHOLE_IN(1); /* from both ends 19 1/2 in each: 1/2 and two of 6 1/2 */
    list_with(&listed, sewn.quilt, row, &spec);
    ck_assert_int_eq(listed.sets[0].segments_per_set, 4);
    ck_assert_int_eq(listed.sets[0].sets, 2);
    end_list(&listed);
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    spec.fold_clear = 0;
    spec.resquare_loss = IN(0, 1, 4);
    spec.resquare_every = 3;
    list_with(&listed, sewn.quilt, row, &spec);
    ck_assert_int_eq(listed.sets[0].segments_per_set, 5);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

START_TEST(the_narrowest_fabric_rules)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const struct muslin_solution_value_spec widths[] = { { sizeof widths[0], 0, sewn.white, WHOLE_IN(36) } };
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    spec.tops = 14;
    ck_ok(muslin_solution_create(sewn.quilt, three_squares(&sewn), &spec, widths, sizeof widths[0], 1, NULL,
                                 &listed.solution, NULL));
    list_all(&listed);
    ck_assert_int_eq(listed.sets[0].strip_length, WHOLE_IN(36));
    ck_assert_int_eq(listed.sets[0].segments_per_set, 14);
    ck_assert_int_eq(listed.sets[0].shorter_by, WHOLE_IN(1));
    ck_assert_uint_eq(listed.sets[0].warnings, MUSLIN_WARN_MIXED_WIDTHS);
    ck_assert_int_eq(listed.cuts[0].cut_width, WHOLE_IN(40)); /* each strip as long as its own fabric is wide */
    ck_assert_int_eq(listed.cuts[1].cut_width, WHOLE_IN(36));
    end_list(&listed);
    /* also where the narrower one comes first and the wider one last */
    const struct muslin_solution_value_spec first[] = { { sizeof first[0], 0, sewn.blue, WHOLE_IN(36) } };
    const muslin_id pair[] = { patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two),
                               patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two) };
    ck_ok(muslin_solution_create(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, pair, 2), &spec, first,
                                 sizeof first[0], 1, NULL, &listed.solution, NULL));
    list_all(&listed);
    ck_assert_int_eq(listed.sets[0].strip_length, WHOLE_IN(36));
    ck_assert_uint_eq(listed.sets[0].warnings, MUSLIN_WARN_MIXED_WIDTHS);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- prints ----------------------------------------------------------------------------------------------------- */

/* Sixteen joins of two squares 2 in, the first turned by so many quarters, the second plain white. */
static void list_printed(struct listed *listed, struct sewn *sewn, muslin_id fabric, int32_t turn, int32_t axis,
                         int32_t piecing)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    muslin_id first = turn_of(sewn->quilt, patch_of(sewn->quilt, fabric, sewn->two, sewn->two), turn);
    const muslin_id pair[] = { first, patch_of(sewn->quilt, sewn->white, sewn->two, sewn->two) };
    spec.tops = 16;
    list_with(listed, sewn->quilt, pieced_join(sewn->quilt, axis, piecing, 0, pair, 2), &spec);
    ck_assert_uint_eq(listed->set_count, 1);
}

/* Cut across the cloth, a strip has its print's top at one long side. Joined down, strips lie as they are cut, or
 * turned by a half: a patch's print comes out as it should. Joined across they lie on end, and it cannot. */
START_TEST(prints_that_would_lie_turned_are_not_put_into_sets)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    for (int32_t print = MUSLIN_PRINT_NONE; print <= MUSLIN_PRINT_STRIPE_ACROSS; print++) {
        muslin_id fabric = printed_fabric(sewn.quilt, "print", print);
        for (int32_t turn = 0; turn < 4; turn++) {
            int shows = print != MUSLIN_PRINT_NONE;
            list_printed(&listed, &sewn, fabric, turn, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_WHERE_FEWER);
            ck_assert_int_eq(listed.sets[0].used, !shows || turn % 2 == 1);
            ck_assert_int_eq((listed.sets[0].warnings & MUSLIN_WARN_PRINT_TURNED) != 0, shows && turn % 2 == 0);
            end_list(&listed);
            list_printed(&listed, &sewn, fabric, turn, MUSLIN_AXIS_DOWN, MUSLIN_STRIP_PIECING_WHERE_FEWER);
            ck_assert_int_eq(listed.sets[0].used, !shows || turn % 2 == 0);
            ck_assert_int_eq((listed.sets[0].warnings & MUSLIN_WARN_PRINT_TURNED) != 0, shows && turn % 2 == 1);
            end_list(&listed);
        }
    }
    end_sewing(&sewn);
}
END_TEST

START_TEST(prints_in_sets_are_counted_as_they_lie)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_ONE_WAY);
    const int64_t across[4] = { 1, 1, 3, 3 }; /* as the patch lies, or a quarter further */
    const int64_t down[4] = { 0, 2, 2, 0 };
    for (int32_t turn = 0; turn < 4; turn++) {
        for (int32_t axis = MUSLIN_AXIS_ACROSS; axis <= MUSLIN_AXIS_DOWN; axis++) {
            int64_t lies = axis == MUSLIN_AXIS_ACROSS ? across[turn] : down[turn];
            list_printed(&listed, &sewn, flowers, turn, axis, MUSLIN_STRIP_PIECING_ALWAYS);
            const struct muslin_solution_cut *strip =
                cut_sized(&listed, MUSLIN_CUT_SOURCE_SET_STRIP, flowers, WHOLE_IN(40), IN(2, 1, 2));
            ck_turns(strip, lies == 0 ? 16 : 0, lies == 1 ? 16 : 0, lies == 2 ? 16 : 0, lies == 3 ? 16 : 0, 0);
            ck_assert_uint_eq(strip->warnings, lies == 0 ? 0 : MUSLIN_WARN_PRINT_TURNED);
            end_list(&listed);
        }
    }
    end_sewing(&sewn);
}
END_TEST

/* A segment of a mirrored join is the same one, turned end for end when it is joined across: a print that points to the
 * right points to the left then. */
START_TEST(a_mirrored_segment_is_one_turned_end_for_end)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id flowers = printed_fabric(sewn.quilt, "flowers", MUSLIN_PRINT_ONE_WAY);
    muslin_id right = turn_of(sewn.quilt, patch_of(sewn.quilt, flowers, sewn.two, sewn.two), 1);
    const muslin_id pair[] = { right, patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two) };
    muslin_id row = pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, pair, 2);
    const muslin_id rows[] = { row, mirror_of(sewn.quilt, row), turn_of(sewn.quilt, row, 2) };
    list_of(&listed, sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, rows, 3));
    ck_turns(cut_sized(&listed, MUSLIN_CUT_SOURCE_SET_STRIP, flowers, WHOLE_IN(40), IN(2, 1, 2)), 0, 1, 0, 2, 0);
    ck_assert_int_eq(listed.sets[0].segments, 3);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- turned end for end ----------------------------------------------------------------------------------------- */

static int32_t turns_of(struct sewn *sewn, int32_t axis, uint32_t flags, const muslin_id *children, size_t n)
{
    return set_in(sewn, pieced_join(sewn->quilt, axis, MUSLIN_STRIP_PIECING_NEVER, flags, children, n), 1,
                  MUSLIN_STRIP_PIECING_WHERE_FEWER)
        .turns;
}

static muslin_id edged_patch(struct sewn *sewn, muslin_id left, muslin_id right, muslin_id top, muslin_id bottom)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id id = 0;
    spec.fabric = sewn->blue;
    spec.width = spec.height = sewn->two;
    spec.left = left;
    spec.right = right;
    spec.top = top;
    spec.bottom = bottom;
    ck_ok(muslin_quilt_patch(sewn->quilt, &spec, &id, NULL));
    return id;
}

START_TEST(a_segment_turns_where_nobody_can_tell)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id blue = patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two);
    muslin_id white = patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two);
    muslin_id wide = patch_of(sewn.quilt, sewn.blue, fixed_of(sewn.quilt, WHOLE_IN(3)), sewn.two);
    const muslin_id symmetric[] = { blue, white, white, blue };
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, symmetric, 4), 1);
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_DOWN, 0, symmetric, 4), 1);
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, MUSLIN_QUILT_JOIN_KEEPS_ORDER, symmetric, 4), 0);
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, symmetric, 3), 0);
    const muslin_id unequal[] = { blue, white, wide };
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, unequal, 3), 0);
    const int32_t prints[] = { MUSLIN_PRINT_ONE_WAY, MUSLIN_PRINT_TWO_WAY, MUSLIN_PRINT_STRIPE_ALONG };
    for (size_t i = 0; i < COUNT_OF(prints); i++) {
        muslin_id fabric = printed_fabric(sewn.quilt, "print", prints[i]);
        muslin_id patch = patch_of(sewn.quilt, fabric, sewn.two, sewn.two);
        const muslin_id row[] = { blue, patch, blue };
        ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_DOWN, 0, row, 3), prints[i] != MUSLIN_PRINT_ONE_WAY);
    }
    muslin_id none = fixed_of(sewn.quilt, 0);
    muslin_id first = edged_patch(&sewn, none, 0, 0, 0);
    muslin_id last = edged_patch(&sewn, 0, none, 0, 0);
    const muslin_id bare_ends[] = { first, blue, last };
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, bare_ends, 3), 1);
    const muslin_id bare_start[] = { first, blue, first };
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, bare_start, 3), 0);
    muslin_id bare_top = edged_patch(&sewn, 0, 0, none, 0);
    const muslin_id bare_tops[] = { bare_top, bare_top };
    ck_assert_int_eq(turns_of(&sewn, MUSLIN_AXIS_ACROSS, 0, bare_tops, 2), 0);
    end_sewing(&sewn);
}
END_TEST

/* A strip whose long edges have unlike allowances lies either way up: turned by a half it is the same strip. */
START_TEST(strips_with_unlike_edges_are_one_row_either_way_up)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    muslin_id none = fixed_of(sewn.quilt, 0);
    muslin_id first = edged_patch(&sewn, none, 0, 0, 0);
    muslin_id last = edged_patch(&sewn, 0, none, 0, 0);
    const muslin_id pair[] = { first, last };
    list_of(&listed, sewn.quilt, pieced_join(sewn.quilt, MUSLIN_AXIS_ACROSS, MUSLIN_STRIP_PIECING_ALWAYS, 0, pair, 2));
    ck_assert_uint_eq(listed.cut_count, 1);
    ck_assert_int_eq(listed.cuts[0].cut_height, IN(2, 1, 4));
    ck_assert_int_eq(listed.cuts[0].top, 0);
    ck_assert_int_eq(listed.cuts[0].bottom, MUSLIN_QUARTER_INCH);
    ck_turns(&listed.cuts[0], 0, 1, 0, 1, 0);
    end_list(&listed);
    end_sewing(&sewn);
}
END_TEST

/* ---- rows read back --------------------------------------------------------------------------------------------- */

START_TEST(strip_sets_are_rows_asked_for_and_filled)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    struct muslin_solution *solution = solved(sewn.quilt, three_squares(&sewn));
    struct muslin_stripset row = { .size = sizeof row };
    struct muslin_problem problem = PROBLEM;
    size_t count = 7;
    ck_ok(muslin_solution_stripsets(solution, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 1);
    ck_ok(muslin_solution_stripsets(solution, &row, sizeof row, 1, &count, NULL));
    ck_assert_uint_eq(row.size, sizeof row);
    ck_status(muslin_solution_stripsets(NULL, &row, sizeof row, 1, &count, &problem), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_stripsets(solution, &row, sizeof row, 1, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_stripsets(solution, NULL, sizeof row, 1, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_solution_stripsets(solution, &row, 8, 1, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    muslin_solution_free(solution);
    end_sewing(&sewn);
}
END_TEST

/* Segments of 3 1/2 in come 11 times from 40 in, which leaves 1 1/2 in; those of 2 1/2 in 16 times, with no slack: the
 * second set tells it, and so does the whole. */
START_TEST(all_sets_are_counted_and_warn)
{
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id three = fixed_of(sewn.quilt, WHOLE_IN(3));
    muslin_id pairs[2];
    for (int i = 0; i < 2; i++) {
        const muslin_id two[] = { patch_of(sewn.quilt, sewn.blue, sewn.two, i == 0 ? three : sewn.two),
                                  patch_of(sewn.quilt, sewn.white, sewn.two, i == 0 ? three : sewn.two) };
        pairs[i] = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    }
    for (int n = 1; n <= 2; n++) {
        struct muslin_solution_total totals = { .size = sizeof totals };
        const muslin_id both[] = { repeat_of(sewn.quilt, pairs[0], 4, 4), repeat_of(sewn.quilt, pairs[n - 1], 4, 4) };
        struct muslin_solution *solution = solved(sewn.quilt, join_of(sewn.quilt, MUSLIN_AXIS_DOWN, both, 2));
        ck_ok(muslin_solution_totals(solution, &totals, NULL));
        ck_assert_int_eq(totals.stripsets, n);
        ck_assert_uint_eq(totals.warnings, n == 2 ? MUSLIN_WARN_NO_SLACK : 0);
        muslin_solution_free(solution);
    }
    end_sewing(&sewn);
}
END_TEST

/* A segment of 2 1/2 in: 16 from 40 in, on the edge. One pair alone is cut by itself, so that is no matter; 16 are a
 * whole set. */
START_TEST(sets_that_are_not_used_give_no_warning_of_the_whole)
{
    static struct listed listed;
    struct sewn sewn;
    begin_sewing(&sewn);
    const muslin_id two[] = { patch_of(sewn.quilt, sewn.blue, sewn.two, sewn.two),
                              patch_of(sewn.quilt, sewn.white, sewn.two, sewn.two) };
    const muslin_id pair = join_of(sewn.quilt, MUSLIN_AXIS_ACROSS, two, 2);
    for (int used = 0; used <= 1; used++) {
        struct muslin_solution_total totals = { .size = sizeof totals };
        list_of(&listed, sewn.quilt, used ? repeat_of(sewn.quilt, pair, 4, 4) : pair);
        ck_assert_uint_eq(listed.set_count, 1);
        ck_assert_int_eq(listed.sets[0].used, used);
        ck_assert_uint_eq(listed.sets[0].warnings, MUSLIN_WARN_NO_SLACK);
        ck_ok(muslin_solution_totals(listed.solution, &totals, NULL));
        ck_assert_uint_eq(totals.warnings, used ? MUSLIN_WARN_NO_SLACK : 0);
        end_list(&listed);
    }
    end_sewing(&sewn);
}
END_TEST

Suite *solution_sets_suite(void)
{
    Suite *suite = suite_create("strip sets of a solved tree");
    TCase *found = tcase_create("found");
    tcase_add_test(found, nine_rows_of_three_squares_are_one_set);
    tcase_add_test(found, the_rail_fence_of_the_handout);
    tcase_add_test(found, a_nine_patch_top_takes_two_kinds_of_sets);
    tcase_add_test(found, what_must_be_strip_pieced_and_cannot_be_fails);
    tcase_add_test(found, a_segment_longer_than_the_cloth_is_wide_gives_none);
    tcase_add_test(found, what_cannot_be_a_set_is_told_in_words);
    tcase_add_test(found, a_patch_wider_than_the_cloth_is_cut_the_other_way);
    tcase_add_test(found, trims_and_the_fold_lower_the_yield);
    tcase_add_test(found, the_narrowest_fabric_rules);
    tcase_add_test(found, all_sets_are_counted_and_warn);
    tcase_add_test(found, sets_that_are_not_used_give_no_warning_of_the_whole);
    suite_add_tcase(suite, found);
    TCase *used = tcase_create("used");
    tcase_add_test(used, at_least_half_of_a_set_must_be_needed);
    tcase_add_test(used, a_set_that_saves_no_cut_is_not_used);
    tcase_add_test(used, always_and_never_are_obeyed);
    tcase_add_test(used, prints_that_would_lie_turned_are_not_put_into_sets);
    tcase_add_test(used, prints_in_sets_are_counted_as_they_lie);
    tcase_add_test(used, a_mirrored_segment_is_one_turned_end_for_end);
    tcase_add_test(used, a_segment_turns_where_nobody_can_tell);
    tcase_add_test(used, strips_with_unlike_edges_are_one_row_either_way_up);
    tcase_add_test(used, strip_sets_are_rows_asked_for_and_filled);
    suite_add_tcase(suite, used);
    return suite;
}
