/* test_stripquilt.c - a whole top from strips: against its parts, against dealing the segments one by one, and against
 * every way of pressing the sets.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

static struct muslin_stripquilt planned(const struct muslin_stripquilt_spec *spec)
{
    struct muslin_stripquilt quilt = { .size = (uint32_t)sizeof quilt };
    ck_ok(muslin_stripquilt_plan(spec, &quilt, NULL));
    return quilt;
}

/* 42 strips of 2 1/2 in, sets of 6, 1/2 in trimmed at each end, 3 x 3 blocks of two segments cut 6 1/2 in. */
static struct muslin_stripquilt_spec bundle(muslin_len usable)
{
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    spec.strips = 42;
    spec.columns = 3;
    spec.rows = 3;
    spec.strip_length = usable;
    spec.end_trim = IN(0, 1, 2);
    spec.segment_cut = IN(6, 1, 2);
    return spec;
}

/* ---- the plan --------------------------------------------------------------------------------------------------- */

/* Common practice, no source: 6 strips make a set 12 1/2 in unfinished; it gives six segments; two make a block 12 1/2
 * in unfinished; 42 strips hold two tops finishing 36 in with 6 strips left. */
START_TEST(forty_two_strips_make_two_tops_with_six_strips_left)
{
    const struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    struct muslin_stripquilt quilt = planned(&spec);
    ck_assert_int_eq(quilt.set_unfinished, IN(12, 1, 2));
    ck_assert_int_eq(quilt.set_finished, WHOLE_IN(12));
    ck_assert_int_eq(quilt.strip_finished, WHOLE_IN(2));
    ck_assert_int_eq(quilt.segments_per_set, 6);
    ck_assert_int_eq(quilt.segments_per_end, 3);
    ck_assert_int_eq(quilt.strip_shorter_by, WHOLE_IN(2));
    ck_assert_int_eq(quilt.block_unfinished_width, IN(12, 1, 2));
    ck_assert_int_eq(quilt.block_finished_height, WHOLE_IN(12));
    ck_assert_int_eq(quilt.block_square, 1);
    ck_assert_int_eq(quilt.top_finished_width, WHOLE_IN(36));
    ck_assert_int_eq(quilt.top_finished_length, WHOLE_IN(36));
    ck_assert_int_eq(quilt.sets_in_hand, 7);
    ck_assert_int_eq(quilt.tops_in_hand, 2);
    ck_assert_int_eq(quilt.tops, 2);
    ck_assert_int_eq(quilt.strips_left, 6);
    ck_assert_uint_eq(quilt.warnings, MUSLIN_WARN_SMALL_QUILT);
}
END_TEST

/* Common practice, no source: 3 sets of 6 strips give 18 segments, 9 blocks, one top finishing 36 in. */
START_TEST(one_top_takes_three_sets)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.tops = 1;
    struct muslin_stripquilt quilt = planned(&spec);
    ck_assert_int_eq(quilt.tops, 1);
    ck_assert_int_eq(quilt.tops_in_hand, 2);
    ck_assert_int_eq(quilt.sets, 3);
    ck_assert_int_eq(quilt.strips_used, 18);
    ck_assert_int_eq(quilt.strips_left, 24);
    ck_assert_int_eq(quilt.segments, 18);
    ck_assert_int_eq(quilt.segments_left, 0);
    ck_assert_int_eq(quilt.blocks, 9);
    ck_assert_int_eq(quilt.blocks_turned, 4);
    ck_assert_int_eq(quilt.stack_low, 6);
    ck_assert_int_eq(quilt.stack_high, 6);
    ck_assert_int_eq(quilt.stacks_high, 3);
}
END_TEST

START_TEST(a_yield_on_its_edge_is_warned_of)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(40));
    ck_assert_uint_eq(planned(&spec).warnings & MUSLIN_WARN_NO_SLACK, MUSLIN_WARN_NO_SLACK);
    ck_assert_int_eq(planned(&spec).segments_per_set, 6);
    ck_assert_int_eq(planned(&spec).strip_least, WHOLE_IN(40));
    spec.fold_clear = WHOLE_IN(1);
    ck_assert_uint_eq(planned(&spec).warnings & MUSLIN_WARN_NO_SLACK, 0);
    ck_assert_int_eq(planned(&spec).segments_per_set, 4);
}
END_TEST

/* Each figure again from the call of the module that answers for it. */
static void agrees_with_its_parts(const struct muslin_stripquilt_spec *s, const struct muslin_stripquilt *quilt)
{
    const struct muslin_seam_spec seam = { (uint32_t)sizeof seam, 0, s->allowance, s->take_up };
    const struct muslin_block_spec block_spec = { (uint32_t)sizeof block_spec, 0, quilt->segment_cut,
                                                  quilt->set_unfinished, s->segments_per_block, s->allowance,
                                                  s->take_up };
    const struct muslin_setting_spec top_spec = { (uint32_t)sizeof top_spec, 0, quilt->block_finished_width,
                                                  quilt->block_finished_height, s->columns, s->rows, s->allowance,
                                                  s->take_up, s->turning, 0, s->square_tolerance };
    const struct muslin_yield_spec yield_spec = { (uint32_t)sizeof yield_spec, s->flags, s->strip_length,
                                                  quilt->segment_cut, s->end_trim, s->resquare_loss,
                                                  s->resquare_every, s->fold_clear };
    const struct muslin_harvest_spec harvest_spec = { (uint32_t)sizeof harvest_spec, 0, s->strips, s->strips_per_set,
                                                      quilt->segments_per_set, s->segments_per_block,
                                                      quilt->blocks_per_top };
    struct muslin_sewn_row row = { .size = (uint32_t)sizeof row };
    struct muslin_block block = { .size = (uint32_t)sizeof block };
    struct muslin_setting top = { .size = (uint32_t)sizeof top };
    struct muslin_yield yield = { .size = (uint32_t)sizeof yield };
    struct muslin_harvest harvest = { .size = (uint32_t)sizeof harvest };
    ck_ok(muslin_seam_row_equal(s->strip_cut, s->strips_per_set, &seam, &row, NULL));
    ck_ok(muslin_block_from_segments(&block_spec, &block, NULL));
    ck_ok(muslin_setting_straight(&top_spec, &top, NULL));
    ck_ok(muslin_stripset_yield(&yield_spec, &yield, NULL));
    ck_ok(muslin_stripset_harvest(&harvest_spec, &harvest, NULL));
    ck_assert(quilt->set_unfinished == row.unfinished && quilt->set_finished == row.finished);
    ck_assert(quilt->block_unfinished_width == block.unfinished_width && quilt->block_square == block.square);
    ck_assert(quilt->block_unfinished_height == block.unfinished_height);
    ck_assert(quilt->block_finished_width == block.finished_width);
    ck_assert(quilt->block_finished_height == block.finished_height);
    ck_assert(quilt->segment_finished == block.segment_finished);
    ck_assert(quilt->blocks_per_top == top.blocks && quilt->blocks_turned == top.blocks_turned);
    ck_assert(quilt->top_finished_width == top.finished_width && quilt->top_finished_length == top.finished_length);
    ck_assert(quilt->top_unfinished_width == top.unfinished_width);
    ck_assert(quilt->top_unfinished_length == top.unfinished_length);
    ck_assert(quilt->segments_per_set == yield.segments && quilt->segments_per_end == yield.per_end);
    ck_assert(quilt->resquarings == yield.resquarings && quilt->strip_least == yield.least_length);
    ck_assert(quilt->strip_shorter_by == yield.shorter_by && quilt->strip_left_over == yield.left_over);
    ck_assert(quilt->strip_longer_for_more == yield.longer_for_more);
    ck_assert(quilt->sets_in_hand == harvest.sets && quilt->tops_in_hand == harvest.tops);
    ck_assert(quilt->strips_for_one_more_top == harvest.strips_for_one_more);
    if (s->tops == 0) {
        ck_assert(quilt->sets == harvest.sets_used && quilt->strips_used == harvest.strips_used);
        ck_assert(quilt->strips_left == harvest.strips_left && quilt->segments_left == harvest.segments_left);
    }
}

START_TEST(a_plan_says_what_its_parts_say)
{
    uint64_t state = 42;
    int plans = 0;
    for (int i = 0; i < 4000; i++) {
        struct muslin_stripquilt_spec spec = bundle(draw_from(&state, 30, 45) * 8128);
        struct muslin_stripquilt quilt = { .size = (uint32_t)sizeof quilt };
        spec.flags = draw(&state) % 4 ? 0 : MUSLIN_YIELD_FROM_ONE_END;
        spec.strips = draw_from(&state, 1, 200);
        spec.strips_per_set = draw_from(&state, 1, 8);
        spec.segments_per_block = draw_from(&state, 1, 5);
        spec.columns = draw_from(&state, 1, 5);
        spec.rows = draw_from(&state, 1, 5);
        spec.tops = draw_from(&state, 0, 3);
        spec.segment_cut = draw_from(&state, 0, 3) * 20320;
        spec.allowance = draw_from(&state, 0, 2032);
        spec.take_up = draw_from(&state, 0, 200);
        spec.resquare_loss = draw_from(&state, 0, 1016);
        spec.resquare_every = draw_from(&state, 0, 3);
        spec.fold_clear = spec.flags ? 0 : draw_from(&state, 0, 8128);
        spec.turning = (int32_t)draw_from(&state, 1, 3);
        if (muslin_stripquilt_plan(&spec, &quilt, NULL) != MUSLIN_OK)
            continue;
        agrees_with_its_parts(&spec, &quilt);
        plans++;
    }
    ck_assert_int_gt(plans, 400);
}
END_TEST

START_TEST(no_segment_cut_means_the_one_that_makes_the_block_square)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.segment_cut = 0;
    struct muslin_stripquilt quilt = planned(&spec);
    ck_assert_int_eq(quilt.segment_cut, IN(6, 1, 2));
    ck_assert_int_eq(quilt.block_square, 1);
}
END_TEST

/* What a failing plan says; its output must be left alone. */
static struct muslin_problem failing(const struct muslin_stripquilt_spec *spec, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    const uint32_t size = (uint32_t)sizeof(struct muslin_stripquilt);
    lay_out_output(&out, size);
    ck_status(muslin_stripquilt_plan(spec, (struct muslin_stripquilt *)&out, &problem), status);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

/* A set finishing at 12 in is no multiple of seven ticks. 97536 = 7 x 13933 + 5. */
START_TEST(where_no_whole_tick_makes_the_block_square_the_plan_says_so)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.segment_cut = 0;
    spec.segments_per_block = 7;
    spec.turning = MUSLIN_TURNING_NONE;
    spec.square_tolerance = 4;
    struct muslin_problem problem = failing(&spec, MUSLIN_ERR_NOT_SQUARE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.value, 97536 - 5);
    ck_assert_int_eq(problem.limit, 97536);
    spec.square_tolerance = 5;
    ck_assert_int_eq(planned(&spec).segment_finished, 13933);
    ck_assert_int_eq(planned(&spec).block_square, 0);
    spec.square_tolerance = 0;
    spec.strip_cut = 4065;
    spec.strips_per_set = 1;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_NOT_SQUARE).value, 0);
}
END_TEST

START_TEST(only_square_blocks_are_turned_a_quarter)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.segment_cut = IN(6, 1, 4);
    struct muslin_problem problem = failing(&spec, MUSLIN_ERR_NOT_SQUARE);
    ck_assert_int_eq(problem.value, IN(11, 1, 2));
    ck_assert_int_eq(problem.limit, WHOLE_IN(12));
    ck_assert_str_eq(problem.text, "Block width (finished) is 11 1/2 in, but to be square it must be 12 in.");
    spec.square_tolerance = IN(0, 1, 2);
    ck_assert_int_eq(planned(&spec).blocks_turned, planned(&spec).blocks_per_top / 2);
    spec.square_tolerance--;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_NOT_SQUARE).argument, problem.argument);
    spec.turning = MUSLIN_TURNING_HALF_ALTERNATE;
    ck_assert_int_eq(planned(&spec).block_square, 0);
}
END_TEST

START_TEST(strips_that_do_not_give_the_tops_wished_for_are_not_enough)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.tops = 3;
    struct muslin_problem problem = failing(&spec, MUSLIN_ERR_NOT_ENOUGH);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TOPS);
    ck_assert_int_eq(problem.value, 3);
    ck_assert_int_eq(problem.limit, 2);
    ck_assert_str_eq(problem.text, "Number of tops is 3, but what is in hand gives only 2.");
    spec.tops = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_NOT_ENOUGH).value, MUSLIN_COUNT_MAX);
    spec.tops = 0;
    spec.strips = 17;
    problem = failing(&spec, MUSLIN_ERR_NOT_ENOUGH);
    ck_assert_int_eq(problem.value, 1);
    ck_assert_int_eq(problem.limit, 0);
}
END_TEST

START_TEST(strips_for_one_more_top_are_just_enough_for_it)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    int64_t missing = planned(&spec).strips_for_one_more_top;
    spec.strips += missing;
    ck_assert_int_eq(planned(&spec).tops, 3);
    spec.strips--;
    ck_assert_int_eq(planned(&spec).tops, 2);
}
END_TEST

START_TEST(a_set_that_gives_no_segment_names_the_strip_that_would)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(10));
    spec.strips = 100;
    struct muslin_problem problem = failing(&spec, MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIP_LENGTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(10));
    ck_assert_int_eq(problem.limit, WHOLE_IN(14));
    ck_assert_str_eq(problem.text, "Usable strip length is 10 in, but what is needed here is at least 14 in.");
    spec.strip_length = problem.limit;
    ck_assert_int_eq(planned(&spec).segments_per_set, 2);
    spec.strip_length--;
    failing(&spec, MUSLIN_ERR_NO_YIELD);
}
END_TEST

START_TEST(a_top_within_sixty_inches_both_ways_is_a_small_quilt)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.strips = 1000;
    spec.tops = 1;
    spec.columns = 5;
    spec.rows = 5;
    ck_assert_uint_eq(planned(&spec).warnings & MUSLIN_WARN_SMALL_QUILT, MUSLIN_WARN_SMALL_QUILT);
    spec.columns = 6;
    ck_assert_uint_eq(planned(&spec).warnings & MUSLIN_WARN_SMALL_QUILT, 0);
    spec.columns = 5;
    spec.rows = 6;
    ck_assert_uint_eq(planned(&spec).warnings & MUSLIN_WARN_SMALL_QUILT, 0);
}
END_TEST

/* Example: that quilt, one top, takes 18 strips, and two take 36. */
START_TEST(the_fewest_strips_are_those_with_which_the_plan_comes_out)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    struct muslin_problem problem = PROBLEM;
    int64_t strips = 77;
    spec.strips = 0;
    ck_ok(muslin_stripquilt_strips_needed(&spec, &strips, NULL));
    ck_assert_int_eq(strips, 18);
    spec.tops = 2;
    ck_ok(muslin_stripquilt_strips_needed(&spec, &strips, NULL));
    ck_assert_int_eq(strips, 36);
    for (spec.tops = 1; spec.tops < 12; spec.tops++) {
        ck_ok(muslin_stripquilt_strips_needed(&spec, &strips, NULL));
        spec.strips = strips - 1;
        ck_status(muslin_stripquilt_plan(&spec, &(struct muslin_stripquilt){ .size = sizeof(struct muslin_stripquilt) },
                                         &problem),
                  MUSLIN_ERR_NOT_ENOUGH);
        spec.strips = strips;
        ck_assert_int_eq(planned(&spec).strips_used, strips);
    }
}
END_TEST

/* 18 segments a top, 6 a set of 6 strips: three sets. 2^31 - 1 strips are 357913941 sets, a third of them tops. */
START_TEST(more_strips_than_can_be_counted_are_too_many)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    struct muslin_problem problem = PROBLEM;
    int64_t strips = 77;
    spec.tops = 119304647;
    ck_ok(muslin_stripquilt_strips_needed(&spec, &strips, &problem));
    ck_assert_int_eq(strips, 119304647 * INT64_C(18));
    spec.tops++;
    ck_status(muslin_stripquilt_strips_needed(&spec, &strips, &problem), MUSLIN_ERR_TOO_MANY);
    ck_assert_int_eq(strips, 119304647 * INT64_C(18));
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TOPS);
    ck_assert_int_eq(problem.value, 119304648);
    ck_assert_int_eq(problem.limit, 119304647);
    ck_status(muslin_stripquilt_strips_needed(&spec, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    spec.strips = -1;
    ck_status(muslin_stripquilt_strips_needed(&spec, &strips, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIPS);
    spec.strips = 0;
    spec.strip_length = WHOLE_IN(6);
    ck_status(muslin_stripquilt_strips_needed(&spec, &strips, &problem), MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(strips, 119304647 * INT64_C(18));
}
END_TEST

static muslin_status call_plan(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_stripquilt_plan(spec, out, problem);
}
static const struct muslin_stripquilt_spec good_request = {
    (uint32_t)sizeof good_request, 0, 42, 6, 2, 3, 3, 0, IN(2, 1, 2), WHOLE_IN(42), IN(6, 1, 2), 2032, 0, IN(0, 1, 2),
    0, 0, 0, MUSLIN_TURNING_QUARTER_ALTERNATE, MUSLIN_NESTING_TURN, 127
};
static const struct ruled plan = RULED(call_plan, good_request, muslin_stripquilt);

START_TEST(plan_checks_its_structs)
{
    ck_struct_rules(&plan);
}
END_TEST

START_TEST(plan_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_stripquilt_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_stripquilt_spec, strips, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS),
        OUTSIDE(muslin_stripquilt_spec, strips_per_set, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS_PER_SET),
        OUTSIDE(muslin_stripquilt_spec, segments_per_block, 1, 32, MUSLIN_ARG_SEGMENTS_PER_BLOCK),
        OUTSIDE(muslin_stripquilt_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_stripquilt_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_stripquilt_spec, tops, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_TOPS),
        OUTSIDE(muslin_stripquilt_spec, strip_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),
        OUTSIDE(muslin_stripquilt_spec, strip_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_stripquilt_spec, segment_cut, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SEGMENT_CUT),
        OUTSIDE(muslin_stripquilt_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_stripquilt_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_stripquilt_spec, end_trim, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_END_TRIM),
        OUTSIDE(muslin_stripquilt_spec, resquare_loss, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_RESQUARE_LOSS),
        OUTSIDE(muslin_stripquilt_spec, resquare_every, 0, MUSLIN_COUNT_MAX, MUSLIN_ARG_RESQUARE_EVERY),
        OUTSIDE(muslin_stripquilt_spec, fold_clear, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FOLD_CLEAR),
        OUTSIDE(muslin_stripquilt_spec, square_tolerance, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SQUARE_TOLERANCE),
        NOT_A_CHOICE(muslin_stripquilt_spec, turning, 3, MUSLIN_ARG_TURNING),
        NOT_A_CHOICE(muslin_stripquilt_spec, nesting, 2, MUSLIN_ARG_PRESSING),
        REFUSAL(muslin_stripquilt_spec, strip_cut, 4064, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_STRIP_CUT),
        REFUSAL(muslin_stripquilt_spec, strip_cut, 1, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_STRIP_CUT),
        REFUSAL(muslin_stripquilt_spec, segment_cut, 4064, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_SEGMENT_CUT),
    };
    ck_refusals(&plan, refusals, COUNT_OF(refusals));
    /* A tolerance must be right where the block is square without it, too. */
    struct muslin_stripquilt_spec spec = good_request;
    spec.segment_cut = 0;
    spec.square_tolerance = -1;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_SQUARE_TOLERANCE);
}
END_TEST

START_TEST(cutting_from_one_end_keeps_nothing_clear)
{
    struct muslin_stripquilt_spec spec = good_request;
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    ck_assert_int_eq(planned(&spec).segments_per_end, planned(&spec).segments_per_set);
    spec.fold_clear = 1;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_FOLD_CLEAR);
}
END_TEST

START_TEST(sets_blocks_and_tops_end_at_the_largest_size)
{
    struct muslin_stripquilt_spec spec = good_request;
    spec.strips_per_set = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_UNFINISHED);
    spec.strip_cut = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_UNFINISHED);
    spec.segment_cut = 0;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_UNFINISHED);
    spec = good_request;
    spec.segment_cut = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_BLOCK_WIDTH);
    spec = good_request;
    spec.columns = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
    spec = good_request;
    spec.rows = MUSLIN_COUNT_MAX;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_LENGTH);
}
END_TEST

/* ---- plans by their dealing alone ------------------------------------------------------------------------------- */

/* One strip a set, no seams, segments of a tick: a set gives `per_set` segments, and a top is one row of blocks. */
static struct muslin_stripquilt_spec deal_of(int64_t per_block, int64_t blocks, int64_t per_set)
{
    struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    spec.flags = MUSLIN_YIELD_FROM_ONE_END;
    spec.strips = MUSLIN_COUNT_MAX;
    spec.strips_per_set = 1;
    spec.strip_cut = 1;
    spec.segment_cut = 1;
    spec.allowance = 0;
    spec.turning = MUSLIN_TURNING_NONE;
    spec.segments_per_block = per_block;
    spec.columns = blocks;
    spec.strip_length = per_set;
    spec.tops = 1;
    return spec;
}

START_TEST(a_top_has_at_most_the_largest_count_of_blocks)
{
    struct muslin_stripquilt_spec spec = deal_of(1, INT64_C(1) << 16, INT64_C(1) << 30);
    spec.rows = (INT64_C(1) << 15) - 1;
    ck_assert_int_eq(planned(&spec).blocks, (INT64_C(1) << 31) - (INT64_C(1) << 16));
    spec.rows++;
    ck_assert_int_eq(failing(&spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_BLOCKS);
}
END_TEST

/* 2^31 - 1 strips of one set each, 2^30 segments a set, one block of a segment a top: as many tops as segments. */
START_TEST(the_most_tops_are_still_a_right_number)
{
    struct muslin_stripquilt_spec spec = deal_of(1, 1, MUSLIN_SIZE_MAX);
    spec.tops = 0;
    struct muslin_stripquilt quilt = planned(&spec);
    ck_assert_int_eq(quilt.tops, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(quilt.blocks, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    ck_assert_int_eq(quilt.sets, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(quilt.stack_low, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(quilt.groups, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(quilt.segments_turned, 0);
    ck_assert_int_eq(quilt.strips_for_one_more_top, 1);
}
END_TEST

enum { MOST = 32 * 200 };

/* The groups of a deal, and all its segments laid out one by one. */
struct deal {
    struct muslin_stripquilt_spec spec;
    struct muslin_stripquilt quilt;
    struct muslin_block_group group[MOST];
    int64_t groups;
    int64_t set_at[MOST]; /* in line, stack after stack; from 1 */
    int32_t pressed[MOST + 1];
    int64_t height[MOST + 1];
};

static void lay_out_line(struct deal *deal)
{
    int64_t place = 0;
    memset(deal->height, 0, sizeof deal->height);
    for (int64_t i = 0; i < deal->quilt.segments; i++)
        deal->height[1 + i % deal->quilt.sets]++;
    for (int64_t set = 1; set <= deal->quilt.sets; set++)
        for (int64_t i = 0; i < deal->height[set]; i++)
            deal->set_at[place++] = set;
}

static void read_deal(struct deal *deal, struct muslin_stripquilt_spec spec)
{
    size_t count = 0;
    deal->spec = spec;
    deal->quilt = planned(&spec);
    lay_out_line(deal);
    ck_ok(muslin_stripquilt_groups(&spec, deal->group, sizeof deal->group[0], MOST, &count, NULL));
    deal->groups = (int64_t)count;
    int good = deal->groups == deal->quilt.groups;
    for (int64_t set = 1; set <= deal->quilt.sets; set++) {
        int64_t segments = 0;
        good &= muslin_stripquilt_pressing(&spec, set, &deal->pressed[set], &segments, NULL) == MUSLIN_OK;
        good &= segments == deal->height[set];
    }
    ck_assert(good);
}

static int64_t set_in(const struct deal *deal, int64_t block, int64_t position)
{
    return deal->set_at[block + position * deal->quilt.blocks];
}

/* One group against the blocks it stands for: the same sets, the last of them followed by a block with others. */
static int is_a_run(const struct deal *deal, const struct muslin_block_group *group)
{
    int64_t positions = deal->spec.segments_per_block;
    int good = group->segments == positions && group->blocks > 0 && group->size == sizeof *group && group->flags == 0;
    int64_t end = group->first_block - 1 + group->blocks;
    int followed = end == deal->quilt.blocks;
    int32_t repeats = 0;
    for (int64_t position = 0; position < MUSLIN_STRIPQUILT_SEGMENTS_MAX; position++) {
        int64_t set = group->sets[position];
        if (position >= positions) {
            good &= set == 0;
            continue;
        }
        for (int64_t block = group->first_block - 1; block < end; block++)
            good &= set_in(deal, block, position) == set;
        followed = followed || set_in(deal, end, position) != set;
        for (int64_t other = 0; other < position; other++)
            repeats |= group->sets[other] == set;
    }
    return good && followed && group->repeats == repeats;
}

/* As the first. */
static int64_t stacks_as_high(const struct deal *deal)
{
    int64_t stacks = 0;
    for (int64_t set = 1; set <= deal->quilt.sets; set++)
        stacks += deal->height[set] == deal->height[1];
    return stacks;
}

static int agrees_with_dealing(const struct deal *deal)
{
    int64_t next = 1;
    int good = 1;
    for (int64_t i = 0; i < deal->groups; i++) {
        good &= deal->group[i].first_block == next && is_a_run(deal, &deal->group[i]);
        good &= deal->group[i].repeats == (deal->quilt.sets < deal->spec.segments_per_block);
        next += deal->group[i].blocks;
    }
    uint32_t repeats = deal->quilt.sets < deal->spec.segments_per_block ? MUSLIN_WARN_SET_REPEATS : 0;
    good &= (deal->quilt.warnings & MUSLIN_WARN_SET_REPEATS) == repeats;
    good &= deal->quilt.stack_high == deal->height[1] && deal->quilt.stack_low == deal->height[deal->quilt.sets];
    good &= deal->quilt.stacks_high == stacks_as_high(deal);
    return good && next == deal->quilt.blocks + 1;
}

/* Every small deal, of 1 to `most_per_block` segments a block and 1 to `most_blocks` blocks. */
typedef int deal_check(const struct deal *deal);

static int all_deals(int64_t most_per_block, int64_t most_blocks, int32_t nesting, deal_check *check)
{
    static struct deal deal;
    int good = 1;
    for (int64_t per_block = 1; per_block <= most_per_block; per_block++)
        for (int64_t blocks = 1; blocks <= most_blocks; blocks++)
            for (int64_t per_set = 1; per_set <= per_block * blocks; per_set++) {
                struct muslin_stripquilt_spec spec = deal_of(per_block, blocks, per_set);
                spec.nesting = nesting;
                read_deal(&deal, spec);
                good &= check(&deal);
            }
    return good;
}

START_TEST(every_small_deal_is_what_dealing_the_segments_round_gives)
{
    ck_assert(all_deals(5, 14, MUSLIN_NESTING_TURN, agrees_with_dealing));
}
END_TEST

/* The three stacks of one top, dealt by hand. */
START_TEST(three_stacks_pair_each_with_each)
{
    static struct deal deal;
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    const int64_t pairs[][2] = { { 1, 2 }, { 1, 3 }, { 2, 3 } };
    spec.tops = 1;
    read_deal(&deal, spec);
    ck_assert_int_eq(deal.groups, 3);
    for (int i = 0; i < 3; i++) {
        ck_assert_int_eq(deal.group[i].first_block, 1 + 3 * i);
        ck_assert_int_eq(deal.group[i].blocks, 3);
        ck_assert_int_eq(deal.group[i].sets[0], pairs[i][0]);
        ck_assert_int_eq(deal.group[i].sets[1], pairs[i][1]);
        ck_assert_int_eq(deal.group[i].sets[2], 0);
    }
}
END_TEST

START_TEST(blocks_are_numbered_through_all_tops)
{
    static struct deal deal;
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    read_deal(&deal, spec);
    ck_assert_int_eq(deal.quilt.blocks, 18);
    ck_assert(agrees_with_dealing(&deal));
}
END_TEST

START_TEST(blocks_of_many_segments_are_dealt_too)
{
    static struct deal deal;
    uint64_t state = 16;
    int good = 1;
    for (int i = 0; i < 60; i++) {
        int64_t per_block = draw_from(&state, 6, 32);
        int64_t blocks = draw_from(&state, 1, 200);
        read_deal(&deal, deal_of(per_block, blocks, draw_from(&state, 1, blocks)));
        good &= agrees_with_dealing(&deal);
    }
    ck_assert(good);
}
END_TEST

/* ---- nesting ---------------------------------------------------------------------------------------------------- */

/* The way the segment at this position of a group ends up pressed: turned end for end, the other way. */
static int32_t way_of(const struct deal *deal, const struct muslin_block_group *group, int64_t position)
{
    int32_t pressed = deal->pressed[group->sets[position]];
    int32_t other = pressed == MUSLIN_SET_PRESSING_TO_TOP ? MUSLIN_SET_PRESSING_TO_BOTTOM : MUSLIN_SET_PRESSING_TO_TOP;
    return (group->turned >> position & 1) != 0 ? other : pressed;
}

static int64_t ones(uint32_t bits)
{
    int64_t count = 0;
    for (; bits != 0; bits >>= 1)
        count += bits & 1;
    return count;
}

/* The joins of a group whose two sides end up pressed the same way, one bit each. */
static uint32_t same_ways(const struct deal *deal, const struct muslin_block_group *group)
{
    uint32_t same = 0;
    for (int64_t position = 0; position + 1 < group->segments; position++)
        if (way_of(deal, group, position) == way_of(deal, group, position + 1))
            same |= UINT32_C(1) << position;
    return same;
}

static int nesting_is_told(const struct deal *deal)
{
    int turn = deal->spec.nesting == MUSLIN_NESTING_TURN;
    int64_t turned = 0;
    int64_t clashes = 0;
    int good = deal->pressed[1] == MUSLIN_SET_PRESSING_TO_TOP;
    for (int64_t set = 1; set <= deal->quilt.sets; set++)
        good &= deal->pressed[set] == MUSLIN_SET_PRESSING_TO_TOP || deal->pressed[set] == MUSLIN_SET_PRESSING_TO_BOTTOM;
    for (int64_t i = 0; i < deal->groups; i++) {
        const struct muslin_block_group *group = &deal->group[i];
        uint32_t same = same_ways(deal, group);
        good &= group->not_nesting == same && (turn ? same : group->turned) == 0;
        good &= (uint64_t)group->turned >> group->segments == 0;
        good &= group->first_pressing == way_of(deal, group, 0);
        turned += group->blocks * ones(group->turned);
        clashes += group->blocks * ones(same);
    }
    uint32_t warning = turned + clashes > 0 ? MUSLIN_WARN_NEST_CONFLICT : 0;
    return good && deal->quilt.segments_turned == turned && deal->quilt.places_not_nesting == clashes &&
           (deal->quilt.warnings & MUSLIN_WARN_NEST_CONFLICT) == warning;
}

START_TEST(with_turning_every_join_of_every_small_deal_nests)
{
    ck_assert(all_deals(5, 12, MUSLIN_NESTING_TURN, nesting_is_told));
}
END_TEST

START_TEST(without_turning_the_joins_that_do_not_nest_are_named)
{
    ck_assert(all_deals(5, 12, MUSLIN_NESTING_NAME, nesting_is_told));
}
END_TEST

START_TEST(in_blocks_of_many_segments_every_join_nests_or_is_named)
{
    static struct deal deal;
    uint64_t state = 1600;
    int good = 1;
    for (int i = 0; i < 60; i++) {
        int64_t blocks = draw_from(&state, 1, 200);
        struct muslin_stripquilt_spec spec = deal_of(draw_from(&state, 6, 32), blocks, draw_from(&state, 1, blocks));
        spec.nesting = 1 + i % 2;
        read_deal(&deal, spec);
        good &= nesting_is_told(&deal);
    }
    ck_assert(good);
}
END_TEST

/* The fewest segments of one block to turn when bit s of `ways` is how set s + 1 is pressed: those off the one order of
 * this way and that, or those off the other. */
static int64_t turned_in_block(const struct deal *deal, int64_t block, uint32_t ways)
{
    int64_t off = 0;
    int64_t positions = deal->spec.segments_per_block;
    for (int64_t position = 0; position < positions; position++)
        off += (ways >> (set_in(deal, block, position) - 1) & 1) != (uint32_t)(position & 1);
    return off < positions - off ? off : positions - off;
}

/* Over all ways of pressing the sets, and for each all choices of segments to turn. */
static int64_t fewest_turned(const struct deal *deal)
{
    int64_t fewest = INT64_MAX;
    for (uint32_t ways = 0; ways < UINT32_C(1) << (deal->quilt.sets - 1); ways++) {
        int64_t turned = 0;
        for (int64_t block = 0; block < deal->quilt.blocks; block++)
            turned += turned_in_block(deal, block, ways);
        fewest = turned < fewest ? turned : fewest;
    }
    return fewest;
}

static int turns_the_fewest(const struct deal *deal)
{
    return deal->quilt.sets > 9 || deal->quilt.segments_turned == fewest_turned(deal);
}

START_TEST(no_pressing_of_the_sets_of_a_small_deal_needs_fewer_segments_turned)
{
    ck_assert(all_deals(5, 10, MUSLIN_NESTING_TURN, turns_the_fewest));
}
END_TEST

/* With two segments a block a join that does not nest is a segment that would be turned. */
static int names_the_fewest(const struct deal *deal)
{
    return deal->quilt.sets > 11 || deal->quilt.places_not_nesting == fewest_turned(deal);
}

START_TEST(no_pressing_of_pairs_leaves_fewer_joins_to_name)
{
    ck_assert(all_deals(2, 14, MUSLIN_NESTING_NAME, names_the_fewest));
}
END_TEST

/* Sets in a circle, each meeting the next: one pair of an odd circle must be pressed the same way, so at least the
 * smallest group of blocks has a segment to turn. Common practice, no source, for three sets paired each with each. */
START_TEST(three_sets_paired_each_with_each_leave_one_pair_pressed_alike)
{
    static struct deal deal;
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.tops = 1;
    read_deal(&deal, spec);
    ck_assert_int_eq(deal.quilt.segments_turned, 3);
    ck_assert_int_eq(fewest_turned(&deal), 3);
    ck_assert_int_eq(deal.pressed[2], MUSLIN_SET_PRESSING_TO_TOP);
    ck_assert_int_eq(deal.pressed[3], MUSLIN_SET_PRESSING_TO_BOTTOM);
    ck_assert_int_eq(deal.group[0].turned, 2);
    ck_assert_uint_eq(deal.quilt.warnings, MUSLIN_WARN_NEST_CONFLICT | MUSLIN_WARN_SMALL_QUILT);
    spec.nesting = MUSLIN_NESTING_NAME;
    read_deal(&deal, spec);
    ck_assert_int_eq(deal.quilt.places_not_nesting, 3);
    ck_assert_int_eq(deal.quilt.segments_turned, 0);
}
END_TEST

/* Four segments from one set of four ticks, and one block: everything there is to warn of at once. */
START_TEST(one_warning_does_not_hide_another)
{
    struct muslin_stripquilt_spec spec = deal_of(4, 1, 4);
    const uint32_t all = MUSLIN_WARN_NO_SLACK | MUSLIN_WARN_SMALL_QUILT | MUSLIN_WARN_SET_REPEATS |
                         MUSLIN_WARN_NEST_CONFLICT;
    ck_assert_uint_eq(planned(&spec).warnings, all);
}
END_TEST

START_TEST(six_sets_in_pairs_nest_without_turning)
{
    static struct deal deal;
    read_deal(&deal, bundle(WHOLE_IN(42)));
    ck_assert_int_eq(deal.quilt.sets, 6);
    ck_assert_int_eq(deal.quilt.segments_turned, 0);
    ck_assert_uint_eq(deal.quilt.warnings & MUSLIN_WARN_NEST_CONFLICT, 0);
    for (int64_t set = 1; set <= 6; set++)
        ck_assert_int_eq(deal.pressed[set], set <= 3 ? MUSLIN_SET_PRESSING_TO_TOP : MUSLIN_SET_PRESSING_TO_BOTTOM);
}
END_TEST

/* An exact search for deals too large to try all pressings: block after block, with the ways of the sets at all
 * positions as the state. A set keeps its way while its stack lasts; the way at the end of one position is that at the
 * start of the next where a stack reaches over. */
struct search {
    const struct deal *deal;
    int64_t cost[32]; /* least so far for each state; NEVER where it cannot be */
};
enum { NEVER = 1000000 };

static int begins(const struct deal *deal, int64_t place)
{
    return place == 0 || deal->set_at[place] != deal->set_at[place - 1];
}

static int64_t turned_in_state(const struct deal *deal, uint32_t state)
{
    int64_t off = 0;
    int64_t positions = deal->spec.segments_per_block;
    for (int64_t position = 0; position < positions; position++)
        off += (state >> position & 1) != (uint32_t)(position & 1);
    return off < positions - off ? off : positions - off;
}

static void step_to(struct search *search, int64_t block)
{
    const struct deal *deal = search->deal;
    uint32_t states = UINT32_C(1) << deal->spec.segments_per_block;
    for (int64_t position = 0; position < deal->spec.segments_per_block; position++)
        for (uint32_t state = 0; state < states; state++) {
            uint32_t other = state ^ (UINT32_C(1) << position);
            if (begins(deal, block + position * deal->quilt.blocks) && search->cost[other] > search->cost[state])
                search->cost[other] = search->cost[state];
        }
    for (uint32_t state = 0; state < states; state++)
        search->cost[state] += turned_in_state(deal, state);
}

static int joins_on(const struct deal *deal, uint32_t first, uint32_t last)
{
    for (int64_t position = 1; position < deal->spec.segments_per_block; position++)
        if (!begins(deal, position * deal->quilt.blocks) && (first >> position & 1) != (last >> (position - 1) & 1))
            return 0;
    return 1;
}

static int64_t fewest_by_search(const struct deal *deal)
{
    uint32_t states = UINT32_C(1) << deal->spec.segments_per_block;
    int64_t fewest = NEVER;
    for (uint32_t first = 0; first < states; first++) {
        struct search search = { deal, { 0 } };
        for (uint32_t state = 0; state < states; state++)
            search.cost[state] = state == first ? turned_in_state(deal, state) : NEVER;
        for (int64_t block = 1; block < deal->quilt.blocks; block++)
            step_to(&search, block);
        for (uint32_t last = 0; last < states; last++)
            if (joins_on(deal, first, last) && search.cost[last] < fewest)
                fewest = search.cost[last];
    }
    return fewest;
}

START_TEST(no_pressing_of_a_larger_deal_needs_fewer_segments_turned)
{
    static struct deal deal;
    uint64_t state = 1952;
    int good = 1;
    for (int i = 0; i < 400; i++) {
        int64_t per_block = draw_from(&state, 2, 5);
        int64_t blocks = draw_from(&state, 1, 60);
        read_deal(&deal, deal_of(per_block, blocks, draw_from(&state, 1, blocks)));
        good &= deal.quilt.segments_turned == fewest_by_search(&deal);
    }
    ck_assert(good);
}
END_TEST

/* ---- many ------------------------------------------------------------------------------------------------------- */

static int64_t divisor_of_both(int64_t a, int64_t b)
{
    while (b != 0) {
        int64_t rest = a % b;
        a = b;
        b = rest;
    }
    return a;
}

/* Even stacks of h begin, in blocks, at the multiples of h modulo B, which are the multiples of their greatest common
 * divisor. Ten deals around 10^9 sets; nothing is laid out, so they answer at once. */
START_TEST(a_thousand_million_stacks_are_counted_without_being_dealt)
{
    uint64_t state = 1000000000;
    for (int i = 0; i < 10; i++) {
        int64_t height = draw_from(&state, 1, 4);
        int64_t sets = draw_from(&state, 990000000, 1000000000) / 2 * 2;
        struct muslin_stripquilt_spec spec = deal_of(2, 1, height);
        spec.tops = sets * height / 2;
        struct muslin_stripquilt quilt = planned(&spec);
        ck_assert_int_eq(quilt.sets, sets);
        ck_assert_int_eq(quilt.blocks, spec.tops);
        ck_assert_int_eq(quilt.groups, quilt.blocks / divisor_of_both(height, quilt.blocks));
        ck_assert_int_eq(quilt.segments_turned, 0);
    }
}
END_TEST

START_TEST(a_thousand_million_strips_are_planned_at_once)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    spec.strips = 1000000000;
    struct muslin_stripquilt quilt = planned(&spec);
    ck_assert_int_eq(quilt.tops, 1000000000 / 18);
    ck_assert_int_eq(quilt.strips_left, 1000000000 % 18);
    ck_assert_int_eq(quilt.stack_low, 6);
    size_t count = 0;
    ck_ok(muslin_stripquilt_groups(&spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, (size_t)quilt.groups);
    int32_t pressing = 0;
    int64_t segments = 0;
    ck_ok(muslin_stripquilt_pressing(&spec, quilt.sets, &pressing, &segments, NULL));
    ck_assert_int_eq(segments, 6);
}
END_TEST

/* Uneven deals of some hundreds of sets: the different blocks at which a stack begins, ticked off one by one. */
START_TEST(groups_are_as_many_as_the_blocks_at_which_a_stack_begins)
{
    static struct deal deal;
    static unsigned char ticked[MOST];
    uint64_t state = 77;
    int good = 1;
    for (int i = 0; i < 1500; i++) {
        int64_t per_block = draw_from(&state, 1, 32);
        int64_t blocks = draw_from(&state, 1, MOST / per_block);
        deal.spec = deal_of(per_block, blocks, draw_from(&state, 1, 1 + blocks / draw_from(&state, 1, 20)));
        deal.quilt = planned(&deal.spec);
        lay_out_line(&deal);
        memset(ticked, 0, sizeof ticked);
        int64_t groups = 0;
        for (int64_t place = 0; place < deal.quilt.segments; place++) {
            if (!begins(&deal, place) || ticked[place % blocks])
                continue;
            ticked[place % blocks] = 1;
            groups++;
        }
        good &= deal.quilt.groups == groups;
    }
    ck_assert(good);
}
END_TEST

/* ---- groups and pressing as calls ------------------------------------------------------------------------------- */

/* Wrapped so that the rules for specs can be tried on them; they have no sized output. */
static muslin_status call_groups(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count = 99;
    (void)out;
    muslin_status status = muslin_stripquilt_groups(spec, NULL, 0, 0, &count, problem);
    ck_assert(status == MUSLIN_OK || count == 99);
    return status;
}

static muslin_status call_pressing(const void *spec, void *out, struct muslin_problem *problem)
{
    int32_t pressing = 99;
    int64_t segments = 99;
    (void)out;
    muslin_status status = muslin_stripquilt_pressing(spec, 1, &pressing, &segments, problem);
    ck_assert(status == MUSLIN_OK || (pressing == 99 && segments == 99));
    return status;
}

START_TEST(groups_and_pressing_check_the_spec_as_the_plan_does)
{
    const struct ruled groups = RULED(call_groups, good_request, muslin_stripquilt);
    const struct ruled pressing = RULED(call_pressing, good_request, muslin_stripquilt);
    const struct refusal refusals[] = {
        OUTSIDE(muslin_stripquilt_spec, strips, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_STRIPS),
        NOT_A_CHOICE(muslin_stripquilt_spec, nesting, 2, MUSLIN_ARG_PRESSING),
        REFUSAL(muslin_stripquilt_spec, tops, 3, MUSLIN_ERR_NOT_ENOUGH, MUSLIN_ARG_TOPS),
        REFUSAL(muslin_stripquilt_spec, strip_length, WHOLE_IN(5), MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_STRIP_LENGTH),
        REFUSAL(muslin_stripquilt_spec, strip_cut, 4064, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_STRIP_CUT),
    };
    ck_spec_rules(&groups);
    ck_spec_rules(&pressing);
    ck_problem_rules(&groups);
    ck_problem_rules(&pressing);
    ck_refusals(&groups, refusals, COUNT_OF(refusals));
    ck_refusals(&pressing, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(groups_are_asked_for_then_filled)
{
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    struct muslin_block_group rows[3];
    struct muslin_block_group before[3];
    struct muslin_problem problem = PROBLEM;
    const size_t stride = sizeof rows[0];
    size_t count = 0;
    memset(rows, FILL, sizeof rows);
    memcpy(before, rows, sizeof rows);
    ck_ok(muslin_stripquilt_groups(&spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    count = 0;
    ck_status(muslin_stripquilt_groups(&spec, rows, stride, 2, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(problem.limit, 3);
    ck_assert_str_eq(problem.text, "Rows are 2, but must be at least 3.");
    count = 99;
    ck_status(muslin_stripquilt_groups(&spec, rows, stride - 1, 3, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_stripquilt_groups(&spec, rows, 4097, 3, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_str_eq(problem.text, "Row size is 4097, but must be the sizeof of its struct, at most 4096.");
    ck_status(muslin_stripquilt_groups(&spec, rows, 8, 3, &count, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_ptr_nonnull(strstr(problem.text, "is 8, but must be the sizeof of its struct, at least "));
    ck_status(muslin_stripquilt_groups(&spec, NULL, stride, 3, &count, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_ROWS);
    ck_status(muslin_stripquilt_groups(&spec, rows, stride, 3, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert_uint_eq(count, 99);
    ck_assert_mem_eq(rows, before, sizeof rows);
}
END_TEST

START_TEST(groups_lie_at_the_callers_stride)
{
    enum { STRIDE = 320, ROWS = 3 };
    struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    unsigned char bytes[STRIDE * ROWS + 8];
    size_t count = 0;
    memset(bytes, FILL, sizeof bytes);
    ck_ok(muslin_stripquilt_groups(&spec, (struct muslin_block_group *)(void *)bytes, STRIDE, ROWS + 1, &count, NULL));
    for (size_t i = 0; i < ROWS; i++) {
        struct muslin_block_group row;
        memcpy(&row, bytes + i * STRIDE, sizeof row);
        ck_assert_uint_eq(row.size, STRIDE);
        ck_assert_int_eq(row.first_block, (int64_t)(1 + 6 * i));
        for (size_t at = sizeof row; at < STRIDE; at++)
            ck_assert_uint_eq(bytes[i * STRIDE + at], 0);
    }
    ck_assert_uint_eq(bytes[STRIDE * ROWS], FILL);
}
END_TEST

START_TEST(a_set_that_is_not_planned_has_no_pressing)
{
    const struct muslin_stripquilt_spec spec = bundle(WHOLE_IN(42));
    const int64_t wrong[] = { 0, -1, 7, INT64_MIN, INT64_MAX };
    struct muslin_problem problem = PROBLEM;
    int32_t pressing = 9;
    int64_t segments = 9;
    for (size_t i = 0; i < COUNT_OF(wrong); i++) {
        ck_status(muslin_stripquilt_pressing(&spec, wrong[i], &pressing, &segments, &problem), MUSLIN_ERR_INDEX);
        ck_assert_int_eq(problem.value, wrong[i]);
        ck_assert_int_eq(problem.limit, 6);
    }
    ck_status(muslin_stripquilt_pressing(&spec, 1, NULL, &segments, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    ck_assert(pressing == 9 && segments == 9);
    ck_ok(muslin_stripquilt_pressing(&spec, 6, &pressing, NULL, NULL));
    ck_assert_int_eq(pressing, MUSLIN_SET_PRESSING_TO_BOTTOM);
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(stripquilt)

START_TEST(initial_values_are_those_of_the_macro)
{
    const struct muslin_stripquilt_spec spec = MUSLIN_STRIPQUILT_SPEC_INIT;
    ck_init_rules(init_stripquilt, &spec, (uint32_t)sizeof spec);
    ck_assert_int_eq(spec.strips_per_set, 6);
    ck_assert_int_eq(spec.segments_per_block, 2);
    ck_assert_int_eq(spec.strip_cut, IN(2, 1, 2));
    ck_assert_int_eq(spec.strip_length, WHOLE_IN(40));
    ck_assert_int_eq(spec.allowance, MUSLIN_QUARTER_INCH);
    ck_assert_int_eq(spec.turning, MUSLIN_TURNING_QUARTER_ALTERNATE);
    ck_assert_int_eq(spec.nesting, MUSLIN_NESTING_TURN);
}
END_TEST

static void add_plan(Suite *suite)
{
    TCase *tcase = tcase_create("plan");
    tcase_add_test(tcase, forty_two_strips_make_two_tops_with_six_strips_left);
    tcase_add_test(tcase, one_top_takes_three_sets);
    tcase_add_test(tcase, the_fewest_strips_are_those_with_which_the_plan_comes_out);
    tcase_add_test(tcase, more_strips_than_can_be_counted_are_too_many);
    tcase_add_test(tcase, a_yield_on_its_edge_is_warned_of);
    tcase_add_test(tcase, a_plan_says_what_its_parts_say);
    tcase_add_test(tcase, no_segment_cut_means_the_one_that_makes_the_block_square);
    tcase_add_test(tcase, where_no_whole_tick_makes_the_block_square_the_plan_says_so);
    tcase_add_test(tcase, only_square_blocks_are_turned_a_quarter);
    tcase_add_test(tcase, strips_that_do_not_give_the_tops_wished_for_are_not_enough);
    tcase_add_test(tcase, strips_for_one_more_top_are_just_enough_for_it);
    tcase_add_test(tcase, a_set_that_gives_no_segment_names_the_strip_that_would);
    tcase_add_test(tcase, a_top_within_sixty_inches_both_ways_is_a_small_quilt);
    tcase_add_test(tcase, plan_checks_its_structs);
    tcase_add_test(tcase, plan_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, cutting_from_one_end_keeps_nothing_clear);
    tcase_add_test(tcase, sets_blocks_and_tops_end_at_the_largest_size);
    tcase_add_test(tcase, a_top_has_at_most_the_largest_count_of_blocks);
    tcase_add_test(tcase, the_most_tops_are_still_a_right_number);
    suite_add_tcase(suite, tcase);
}

static void add_dealing(Suite *suite)
{
    TCase *tcase = tcase_create("dealing");
    tcase_add_test(tcase, every_small_deal_is_what_dealing_the_segments_round_gives);
    tcase_add_test(tcase, three_stacks_pair_each_with_each);
    tcase_add_test(tcase, blocks_are_numbered_through_all_tops);
    tcase_add_test(tcase, blocks_of_many_segments_are_dealt_too);
    tcase_add_test(tcase, a_thousand_million_stacks_are_counted_without_being_dealt);
    tcase_add_test(tcase, a_thousand_million_strips_are_planned_at_once);
    tcase_add_test(tcase, groups_are_as_many_as_the_blocks_at_which_a_stack_begins);
    tcase_add_test(tcase, groups_and_pressing_check_the_spec_as_the_plan_does);
    tcase_add_test(tcase, groups_are_asked_for_then_filled);
    tcase_add_test(tcase, groups_lie_at_the_callers_stride);
    tcase_add_test(tcase, a_set_that_is_not_planned_has_no_pressing);
    tcase_add_test(tcase, initial_values_are_those_of_the_macro);
    tcase_set_timeout(tcase, 60);
    suite_add_tcase(suite, tcase);
}

static void add_nesting(Suite *suite)
{
    TCase *tcase = tcase_create("nesting");
    tcase_add_test(tcase, with_turning_every_join_of_every_small_deal_nests);
    tcase_add_test(tcase, without_turning_the_joins_that_do_not_nest_are_named);
    tcase_add_test(tcase, in_blocks_of_many_segments_every_join_nests_or_is_named);
    tcase_add_test(tcase, no_pressing_of_the_sets_of_a_small_deal_needs_fewer_segments_turned);
    tcase_add_test(tcase, no_pressing_of_pairs_leaves_fewer_joins_to_name);
    tcase_add_test(tcase, three_sets_paired_each_with_each_leave_one_pair_pressed_alike);
    tcase_add_test(tcase, one_warning_does_not_hide_another);
    tcase_add_test(tcase, six_sets_in_pairs_nest_without_turning);
    tcase_add_test(tcase, no_pressing_of_a_larger_deal_needs_fewer_segments_turned);
    tcase_set_timeout(tcase, 60);
    suite_add_tcase(suite, tcase);
}

Suite *stripquilt_suite(void);

Suite *stripquilt_suite(void)
{
    Suite *suite = suite_create("stripquilt");
    add_plan(suite);
    add_dealing(suite);
    add_nesting(suite);
    return suite;
}
