/* test_setting.c - settings, blocks, runs and borders: published figures, and drawing or laying them out.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

/* ---- straight setting ------------------------------------------------------------------------------------------- */

static struct muslin_setting_spec blocks_of(muslin_len width, muslin_len height, int64_t columns, int64_t rows)
{
    struct muslin_setting_spec spec = MUSLIN_SETTING_SPEC_INIT;
    spec.block_width = width;
    spec.block_height = height;
    spec.columns = columns;
    spec.rows = rows;
    return spec;
}

static struct muslin_setting set_straight(const struct muslin_setting_spec *spec)
{
    struct muslin_setting top = { .size = (uint32_t)sizeof top };
    ck_ok(muslin_setting_straight(spec, &top, NULL));
    return top;
}

/* Common practice, no source: nine blocks finishing 12 in make a top finishing 36 in. */
START_TEST(nine_blocks_of_twelve_inches_finish_at_thirty_six)
{
    struct muslin_setting_spec spec = blocks_of(WHOLE_IN(12), WHOLE_IN(12), 3, 3);
    spec.turning = MUSLIN_TURNING_QUARTER_ALTERNATE;
    struct muslin_setting top = set_straight(&spec);
    ck_assert_int_eq(top.blocks, 9);
    ck_assert_int_eq(top.blocks_turned, 4);
    ck_assert_int_eq(top.finished_width, WHOLE_IN(36));
    ck_assert_int_eq(top.finished_length, WHOLE_IN(36));
    ck_assert_int_eq(top.unfinished_width, IN(36, 1, 2));
    ck_assert_int_eq(top.unfinished_length, IN(36, 1, 2));
    ck_assert_int_eq(top.block_seams, 6);
    ck_assert_int_eq(top.row_seams, 2);
}
END_TEST

/* "Quick rail fence from 2.5 inch strips" (handout): 6 x 7 blocks of 10 1/2 in, 10 in finished: a top 60 x 70 in. */
START_TEST(a_rail_fence_of_forty_two_blocks_finishes_at_sixty_by_seventy)
{
    const struct muslin_setting_spec spec = blocks_of(WHOLE_IN(10), WHOLE_IN(10), 6, 7);
    struct muslin_setting top = set_straight(&spec);
    ck_assert_int_eq(top.blocks, 42);
    ck_assert_int_eq(top.blocks_turned, 0);
    ck_assert_int_eq(top.finished_width, WHOLE_IN(60));
    ck_assert_int_eq(top.finished_length, WHOLE_IN(70));
}
END_TEST

static int is_turned(const struct muslin_setting_spec *spec, int64_t column, int64_t row)
{
    int32_t quarters = -1;
    ck_ok(muslin_setting_turn(spec->turning, column, row, &quarters, NULL));
    return quarters != 0;
}

/* Laid out block by block: each is turned as muslin_setting_turn() says and has a seam on its left unless it is the
 * first of its row; unfinished blocks side by side, less a seam for each join. */
static int agrees_with_layout(const struct muslin_setting_spec *spec)
{
    struct muslin_setting top = { .size = (uint32_t)sizeof top };
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    int64_t turned = 0;
    int64_t seams = 0;
    muslin_len width = spec->columns * (spec->block_width + seam) - (spec->columns - 1) * seam;
    muslin_len length = spec->rows * (spec->block_height + seam) - (spec->rows - 1) * seam;
    if (muslin_setting_straight(spec, &top, NULL) != MUSLIN_OK)
        return 0;
    for (int64_t row = 0; row < spec->rows; row++)
        for (int64_t column = 0; column < spec->columns; column++) {
            turned += is_turned(spec, column, row);
            seams += column > 0;
        }
    return top.blocks == spec->rows * spec->columns && top.blocks_turned == turned && top.block_seams == seams &&
           top.row_seams == spec->rows - 1 && top.unfinished_width == width && top.unfinished_length == length &&
           top.finished_width == width - seam && top.finished_length == length - seam;
}

START_TEST(every_small_top_is_what_laying_out_its_blocks_gives)
{
    struct muslin_setting_spec spec = blocks_of(7, 7, 1, 1);
    int good = 1;
    spec.allowance = 2;
    spec.take_up = 1;
    for (spec.columns = 1; spec.columns <= 5; spec.columns++)
        for (spec.rows = 1; spec.rows <= 5; spec.rows++)
            for (spec.turning = 1; spec.turning <= 3; spec.turning++)
                good &= agrees_with_layout(&spec);
    ck_assert(good);
}
END_TEST

START_TEST(neighbours_are_turned_differently_and_the_first_block_is_not)
{
    const int32_t quarters_of[] = { 0, 0, 1, 2 };
    for (int32_t turning = 1; turning <= 3; turning++)
        for (int64_t column = 0; column < 4; column++)
            for (int64_t row = 0; row < 4; row++) {
                int32_t quarters = -1;
                ck_ok(muslin_setting_turn(turning, column, row, &quarters, NULL));
                ck_assert_int_eq(quarters, (column % 2) != (row % 2) ? quarters_of[turning] : 0);
            }
}
END_TEST

START_TEST(turn_refuses_what_is_no_place_or_no_turning)
{
    int32_t quarters = 7;
    ck_ok(muslin_setting_turn(MUSLIN_TURNING_HALF_ALTERNATE, MUSLIN_COUNT_MAX, MUSLIN_COUNT_MAX, &quarters, NULL));
    ck_assert_int_eq(quarters, 0);
    quarters = 7;
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, 0, 0, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_turn(0, 0, 0, &quarters, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_setting_turn(4, 0, 0, &quarters, NULL), MUSLIN_ERR_CHOICE);
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, -1, 0, &quarters, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, 0, -1, &quarters, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, MUSLIN_COUNT_MAX + 1, 0, &quarters, NULL), MUSLIN_ERR_RANGE);
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, 0, INT64_MAX, &quarters, NULL), MUSLIN_ERR_RANGE);
    struct muslin_problem problem = PROBLEM;
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, 0, -1, &quarters, &problem), MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_QUILT_ROWS);
    ck_assert_int_eq(problem.value, -1);
    ck_status(muslin_setting_turn(4, 0, 0, &quarters, &problem), MUSLIN_ERR_CHOICE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_TURNING);
    problem.size = 1;
    ck_status(muslin_setting_turn(MUSLIN_TURNING_NONE, 0, 0, &quarters, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(quarters, 7);
}
END_TEST

static muslin_status call_straight(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_straight(spec, out, problem);
}
static const struct muslin_setting_spec good_setting = {
    (uint32_t)sizeof good_setting, 0, WHOLE_IN(12), WHOLE_IN(12), 3, 4, 2032, 100, MUSLIN_TURNING_QUARTER_ALTERNATE, 0,
    127
};
static const struct ruled straight = RULED(call_straight, good_setting, muslin_setting);

START_TEST(setting_checks_its_structs)
{
    ck_struct_rules(&straight);
}
END_TEST

START_TEST(setting_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_setting_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_setting_spec, block_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_setting_spec, block_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_HEIGHT),
        OUTSIDE(muslin_setting_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_setting_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_setting_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_setting_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_setting_spec, square_tolerance, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SQUARE_TOLERANCE),
        NOT_A_CHOICE(muslin_setting_spec, turning, 3, MUSLIN_ARG_TURNING),
        REFUSAL(muslin_setting_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    ck_refusals(&straight, refusals, COUNT_OF(refusals));
}
END_TEST

/* What a failing call says; its output must be left alone. */
static struct muslin_problem failing(const struct ruled *ruled, const void *spec, muslin_status status)
{
    union roomy out;
    struct muslin_problem problem = PROBLEM;
    lay_out_output(&out, ruled->out_size);
    ck_status(ruled->call(spec, &out, &problem), status);
    ck_assert(is_untouched_from(&out, sizeof out.head[0]));
    return problem;
}

START_TEST(only_square_blocks_are_turned_a_quarter)
{
    struct muslin_setting_spec spec = blocks_of(WHOLE_IN(12), WHOLE_IN(12) + 1, 1, 1);
    spec.turning = MUSLIN_TURNING_QUARTER_ALTERNATE;
    spec.square_tolerance = 0;
    struct muslin_problem problem = failing(&straight, &spec, MUSLIN_ERR_NOT_SQUARE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.value, WHOLE_IN(12));
    ck_assert_int_eq(problem.limit, WHOLE_IN(12) + 1);
    spec.turning = MUSLIN_TURNING_HALF_ALTERNATE;
    ck_assert_int_eq(set_straight(&spec).blocks_turned, 0);
}
END_TEST

/* 1/64 in is 127 ticks. */
START_TEST(a_block_within_the_tolerance_either_way_is_square_enough)
{
    struct muslin_setting_spec spec = blocks_of(WHOLE_IN(12), WHOLE_IN(12) + 127, 2, 2);
    spec.turning = MUSLIN_TURNING_QUARTER_ALTERNATE;
    ck_assert_int_eq(set_straight(&spec).blocks_turned, 2);
    spec.block_height++;
    failing(&straight, &spec, MUSLIN_ERR_NOT_SQUARE);
    spec.block_height = WHOLE_IN(12) - 127;
    ck_assert_int_eq(set_straight(&spec).blocks_turned, 2);
    spec.block_height--;
    failing(&straight, &spec, MUSLIN_ERR_NOT_SQUARE);
    spec.square_tolerance = -1;
    ck_assert_int_eq(failing(&straight, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_SQUARE_TOLERANCE);
}
END_TEST

START_TEST(a_side_ends_at_the_largest_size)
{
    struct muslin_setting_spec spec = blocks_of(MUSLIN_SIZE_MAX / 4, 1, 4, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(set_straight(&spec).finished_width, MUSLIN_SIZE_MAX);
    ck_assert_int_eq(set_straight(&spec).unfinished_length, MUSLIN_SIZE_MAX + 4064);
    ck_assert_int_eq(set_straight(&spec).blocks, 4 * MUSLIN_SIZE_MAX);
    spec.columns = 5;
    ck_assert_int_eq(failing(&straight, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
    spec.columns = 4;
    spec.rows = MUSLIN_SIZE_MAX + 1;
    ck_assert_int_eq(failing(&straight, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_LENGTH);
    spec = blocks_of(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_COUNT_MAX, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(failing(&straight, &spec, MUSLIN_ERR_RANGE).value, MUSLIN_SIZE_MAX * MUSLIN_COUNT_MAX);
}
END_TEST

/* ---- blocks from segments --------------------------------------------------------------------------------------- */

static struct muslin_block block_of(const struct muslin_block_spec *spec)
{
    struct muslin_block block = { .size = (uint32_t)sizeof block };
    ck_ok(muslin_block_from_segments(spec, &block, NULL));
    return block;
}

/* Common practice, no source: two segments of 6 1/2 in, joined, make a block 12 1/2 in unfinished, 12 in finished. */
START_TEST(two_segments_make_a_block_of_twelve_inches)
{
    struct muslin_block_spec spec = MUSLIN_BLOCK_SPEC_INIT;
    spec.segment_cut = IN(6, 1, 2);
    spec.set_unfinished = IN(12, 1, 2);
    struct muslin_block block = block_of(&spec);
    ck_assert_int_eq(block.unfinished_width, IN(12, 1, 2));
    ck_assert_int_eq(block.unfinished_height, IN(12, 1, 2));
    ck_assert_int_eq(block.finished_width, WHOLE_IN(12));
    ck_assert_int_eq(block.finished_height, WHOLE_IN(12));
    ck_assert_int_eq(block.segment_finished, WHOLE_IN(6));
    ck_assert_int_eq(block.square_segment_cut, IN(6, 1, 2));
    ck_assert(block.square == 1 && block.square_exact == 1);
    spec.segment_cut++;
    ck_assert_int_eq(block_of(&spec).square, 0);
    ck_assert_int_eq(block_of(&spec).square_exact, 1);
}
END_TEST

/* Cut sizes less what each seam between them takes, added up piece by piece. */
static muslin_len joined_width(const struct muslin_block_spec *spec, muslin_len cut)
{
    muslin_len width = cut;
    for (int64_t i = 1; i < spec->segments; i++)
        width += cut - 2 * spec->allowance - spec->take_up;
    return width;
}

/* Whether the squaring cut is the widest whose block is not wider than high. */
static int agrees_with_joining(const struct muslin_block_spec *spec)
{
    struct muslin_block block = { .size = (uint32_t)sizeof block };
    muslin_len widest = 2 * spec->allowance + spec->take_up;
    if (muslin_block_from_segments(spec, &block, NULL) != MUSLIN_OK)
        return 0;
    muslin_len nothing = widest;
    while (joined_width(spec, widest + 1) <= spec->set_unfinished)
        widest++;
    int exact = widest > nothing && joined_width(spec, widest) == spec->set_unfinished;
    return block.unfinished_width == joined_width(spec, spec->segment_cut) &&
           block.finished_width == block.unfinished_width - nothing &&
           block.finished_height == block.unfinished_height - nothing &&
           block.square == (block.unfinished_width == block.unfinished_height) && block.square_exact == exact &&
           block.square_segment_cut == (widest > nothing ? widest : 0);
}

START_TEST(every_small_block_is_what_joining_its_segments_gives)
{
    struct muslin_block_spec spec = MUSLIN_BLOCK_SPEC_INIT;
    int good = 1;
    for (spec.allowance = 0; spec.allowance <= 2; spec.allowance++)
        for (spec.take_up = 0; spec.take_up <= 1; spec.take_up++)
            for (spec.segments = 1; spec.segments <= 4; spec.segments++)
                for (spec.segment_cut = 6; spec.segment_cut <= 12; spec.segment_cut++)
                    for (spec.set_unfinished = 6; spec.set_unfinished <= 30; spec.set_unfinished++)
                        good &= agrees_with_joining(&spec);
    ck_assert(good);
}
END_TEST

static muslin_status call_block(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_block_from_segments(spec, out, problem);
}
static const struct muslin_block_spec good_block = {
    (uint32_t)sizeof good_block, 0, IN(6, 1, 2), IN(12, 1, 2), 2, 2032, 0
};
static const struct ruled block = RULED(call_block, good_block, muslin_block);

START_TEST(block_checks_its_structs)
{
    ck_struct_rules(&block);
}
END_TEST

START_TEST(block_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_block_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_block_spec, segment_cut, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SEGMENT_CUT),
        OUTSIDE(muslin_block_spec, set_unfinished, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_UNFINISHED),
        OUTSIDE(muslin_block_spec, segments, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_SEGMENTS),
        OUTSIDE(muslin_block_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_block_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        REFUSAL(muslin_block_spec, segment_cut, 4064, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_SEGMENT_CUT),
        REFUSAL(muslin_block_spec, segment_cut, 1, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_SEGMENT_CUT),
        REFUSAL(muslin_block_spec, set_unfinished, 4064, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_UNFINISHED),
    };
    ck_refusals(&block, refusals, COUNT_OF(refusals));
    /* two allowances and the take-up show nothing, a tick more shows a tick */
    struct muslin_block_spec spec = MUSLIN_BLOCK_SPEC_INIT;
    struct muslin_block out = { .size = (uint32_t)sizeof out };
    struct muslin_problem problem = PROBLEM;
    spec.take_up = 30;
    spec.segment_cut = spec.set_unfinished = 4064 + 31;
    ck_ok(muslin_block_from_segments(&spec, &out, NULL));
    ck_assert_int_eq(out.segment_finished, 1);
    spec.segment_cut--;
    ck_status(muslin_block_from_segments(&spec, &out, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_SEGMENT_CUT);
    ck_assert_int_eq(problem.limit, 4064 + 30);
    spec.segment_cut++;
    spec.set_unfinished--;
    ck_status(muslin_block_from_segments(&spec, &out, &problem), MUSLIN_ERR_SEAM_TOO_WIDE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_UNFINISHED);
    ck_assert_int_eq(problem.limit, 4064 + 30);
}
END_TEST

START_TEST(one_tick_of_segment_and_set_is_enough_to_be_seen)
{
    struct muslin_block_spec spec = good_block;
    spec.segment_cut = 4065;
    spec.set_unfinished = 4065;
    ck_assert_int_eq(block_of(&spec).finished_width, 2);
    ck_assert_int_eq(block_of(&spec).finished_height, 1);
    ck_assert_int_eq(block_of(&spec).square_segment_cut, 0);
    ck_assert_int_eq(block_of(&spec).square_exact, 0);
}
END_TEST

START_TEST(a_block_ends_at_the_largest_size)
{
    struct muslin_block_spec spec = { (uint32_t)sizeof spec, 0, MUSLIN_SIZE_MAX / 2, 8128, 2, 0, 0 };
    ck_assert_int_eq(block_of(&spec).unfinished_width, MUSLIN_SIZE_MAX);
    spec.segments = 3;
    ck_assert_int_eq(failing(&block, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_BLOCK_WIDTH);
    spec.segments = MUSLIN_COUNT_MAX;
    spec.segment_cut = MUSLIN_SIZE_MAX;
    ck_assert_int_eq(failing(&block, &spec, MUSLIN_ERR_RANGE).value, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
}
END_TEST

/* ---- joins ------------------------------------------------------------------------------------------------------ */

static muslin_len loss_of(int32_t join, muslin_len strip_cut, muslin_len allowance)
{
    muslin_len loss = -1;
    ck_ok(muslin_join_loss(join, strip_cut, allowance, &loss, NULL));
    return loss;
}

/* "What is lost? (diagonal joins)" (tutorial, 2012): two strips 3 x 10 in joined give 17 in, two of 1 1/2 x 20 in give
 * 38 1/2 in. "45 degree border math" (forum thread): each join of 8 in strips uses 8 in. */
START_TEST(published_diagonal_joins_lose_the_width_of_the_strip)
{
    ck_assert_int_eq(2 * WHOLE_IN(10) - loss_of(MUSLIN_JOIN_DIAGONAL, WHOLE_IN(3), 2032), WHOLE_IN(17));
    ck_assert_int_eq(2 * WHOLE_IN(20) - loss_of(MUSLIN_JOIN_DIAGONAL, IN(1, 1, 2), 2032), IN(38, 1, 2));
    ck_assert_int_eq(loss_of(MUSLIN_JOIN_DIAGONAL, WHOLE_IN(8), 2032), WHOLE_IN(8));
}
END_TEST

START_TEST(straight_joins_lose_two_allowances_and_butted_ones_nothing)
{
    ck_assert_int_eq(loss_of(MUSLIN_JOIN_STRAIGHT, WHOLE_IN(3), 2032), IN(0, 1, 2));
    ck_assert_int_eq(loss_of(MUSLIN_JOIN_BUTTED, WHOLE_IN(3), 2032), 0);
}
END_TEST

/* Ends at 45 degrees: a seam s from each edge is s sqrt 2 along the strip, twice. The least whole number of ticks whose
 * square is not below 8 s s. */
static int is_least_root(muslin_len loss, muslin_len allowance)
{
    uint64_t square = 8 * (uint64_t)allowance * (uint64_t)allowance;
    uint64_t root = (uint64_t)loss;
    return root * root >= square && (root == 0 || (root - 1) * (root - 1) < square);
}

START_TEST(bias_ends_lose_the_allowance_along_the_diagonal_up_to_a_tick)
{
    int good = 1;
    for (muslin_len s = 0; s <= 3000; s++)
        good &= is_least_root(loss_of(MUSLIN_JOIN_BIAS_ENDS, 0, s), s);
    ck_assert(good);
    ck_assert(is_least_root(loss_of(MUSLIN_JOIN_BIAS_ENDS, 0, MUSLIN_SIZE_MAX / 8), MUSLIN_SIZE_MAX / 8));
    ck_assert_int_eq(loss_of(MUSLIN_JOIN_BIAS_ENDS, 0, 2032) * 100 / 8128, 70);
}
END_TEST

static void join_fails(int32_t join, muslin_len strip_cut, muslin_len allowance, muslin_status status,
                       int32_t argument)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len loss = 7;
    ck_status(muslin_join_loss(join, strip_cut, allowance, &loss, &problem), status);
    ck_assert_int_eq(problem.argument, argument);
    ck_assert_int_eq(loss, 7);
}

START_TEST(join_loss_refuses_what_lies_outside_its_ranges)
{
    struct muslin_problem problem = PROBLEM;
    muslin_len loss = 7;
    join_fails(0, 1, 1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_JOIN);
    join_fails(5, 1, 1, MUSLIN_ERR_CHOICE, MUSLIN_ARG_JOIN);
    join_fails(1, -1, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIP_CUT);
    join_fails(1, MUSLIN_SIZE_MAX + 1, 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_STRIP_CUT);
    join_fails(1, 1, -1, MUSLIN_ERR_RANGE, MUSLIN_ARG_SEAM_ALLOWANCE);
    join_fails(1, 1, MUSLIN_SIZE_MAX / 8 + 1, MUSLIN_ERR_RANGE, MUSLIN_ARG_SEAM_ALLOWANCE);
    ck_status(muslin_join_loss(1, 1, 1, NULL, &problem), MUSLIN_ERR_NULL);
    ck_assert_int_eq(problem.limit, 0);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_OUTPUT);
    problem.size = 0;
    ck_status(muslin_join_loss(1, 1, 1, &loss, &problem), MUSLIN_ERR_STRUCT_SIZE);
    ck_assert_int_eq(loss, 7);
}
END_TEST

/* ---- runs ------------------------------------------------------------------------------------------------------- */

static struct muslin_run run_of(const struct muslin_run_spec *spec)
{
    struct muslin_run run = { .size = (uint32_t)sizeof run };
    ck_ok(muslin_run_plan(spec, &run, NULL));
    return run;
}

static int64_t strips_for(muslin_len length, muslin_len strip, int32_t join)
{
    struct muslin_run_spec spec = MUSLIN_RUN_SPEC_INIT;
    spec.length = length;
    spec.strip_length = strip;
    spec.join = join;
    return run_of(&spec).strips;
}

/* "Applying borders to your quilt" (lesson): 294 in of border from 40 in strips, 8. "Math is my nemesis" (forum thread,
 * 2019): 288 in from 60 in cloth, 5 before joins. "Binding math" (forum thread): 424 in, 11. "Quick rail fence from 2.5
 * inch strips" (handout): 260 in of binding, 7. */
START_TEST(published_counts_of_strips)
{
    ck_assert_int_eq(strips_for(WHOLE_IN(294), WHOLE_IN(40), MUSLIN_JOIN_STRAIGHT), 8);
    ck_assert_int_eq(strips_for(WHOLE_IN(288), WHOLE_IN(60), MUSLIN_JOIN_BUTTED), 5);
    ck_assert_int_eq(strips_for(WHOLE_IN(424), WHOLE_IN(40), MUSLIN_JOIN_BUTTED), 11);
    ck_assert_int_eq(strips_for(WHOLE_IN(260), WHOLE_IN(40), MUSLIN_JOIN_BUTTED), 7);
}
END_TEST

/* "1600 race" (tutorial): 40 strips of 40 in, 39 diagonal joins of 2 1/2 in: 1502 1/2 in. A tick more needs a
 * strip more. */
START_TEST(forty_strips_joined_diagonally_lose_thirty_nine_widths)
{
    struct muslin_run_spec spec = MUSLIN_RUN_SPEC_INIT;
    spec.length = IN(1502, 1, 2);
    spec.join = MUSLIN_JOIN_DIAGONAL;
    struct muslin_run run = run_of(&spec);
    ck_assert_int_eq(run.strips, 40);
    ck_assert_int_eq(run.joins, 39);
    ck_assert_int_eq(run.loss_per_join, IN(2, 1, 2));
    ck_assert_int_eq(run.joined, IN(1502, 1, 2));
    ck_assert_int_eq(run.spare, 0);
    ck_assert_int_eq(run.cloth_length, WHOLE_IN(100));
    ck_assert_int_eq(run.narrower_by, 0);
    ck_assert_int_eq(run.warnings, MUSLIN_WARN_NO_SLACK);
    spec.length++;
    ck_assert_int_eq(run_of(&spec).strips, 41);
    ck_assert_int_eq(run_of(&spec).warnings, 0);
}
END_TEST

/* Strips sewn on until the run is long enough; -1 when it stops growing. */
static int64_t strips_sewn(muslin_len length, muslin_len strip, muslin_len loss)
{
    muslin_len run = 0;
    int64_t strips = 0;
    while (run < length) {
        muslin_len before = run;
        run = strips == 0 ? strip : run + strip - loss;
        strips++;
        if (run <= before)
            return -1;
    }
    return strips;
}

/* Diagonal joins, so that the loss is the strip's cut width. */
static int agrees_with_sewing(const struct muslin_run_spec *spec)
{
    struct muslin_run run = { .size = (uint32_t)sizeof run };
    muslin_len strip = spec->strip_length;
    muslin_len loss = spec->strip_cut;
    int64_t strips = strips_sewn(spec->length, strip, loss);
    muslin_status status = muslin_run_plan(spec, &run, NULL);
    if (strips < 0)
        return status == MUSLIN_ERR_NO_YIELD;
    int good = status == MUSLIN_OK && run.strips == strips && run.joins == (strips > 0 ? strips - 1 : 0);
    good &= run.joined == strips * strip - run.joins * loss && run.spare == run.joined - spec->length;
    good &= run.cloth_length == strips * loss && run.loss_per_join == loss;
    good &= run.warnings == (strips > 0 && run.spare == 0 ? MUSLIN_WARN_NO_SLACK : 0);
    if (strips == 0)
        return good && run.narrower_by == 0;
    good &= strips_sewn(spec->length, strip - run.narrower_by, loss) == strips;
    return good && strips_sewn(spec->length, strip - run.narrower_by - 1, loss) != strips;
}

START_TEST(every_small_run_is_what_sewing_strip_to_strip_gives)
{
    struct muslin_run_spec spec = MUSLIN_RUN_SPEC_INIT;
    int good = 1;
    spec.join = MUSLIN_JOIN_DIAGONAL;
    for (spec.length = 0; spec.length <= 60; spec.length++)
        for (spec.strip_length = 0; spec.strip_length <= 25; spec.strip_length++)
            for (spec.strip_cut = 0; spec.strip_cut <= 12; spec.strip_cut++)
                good &= agrees_with_sewing(&spec);
    ck_assert(good);
}
END_TEST

static muslin_status call_run(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_run_plan(spec, out, problem);
}
static const struct muslin_run_spec good_run = {
    (uint32_t)sizeof good_run, 0, WHOLE_IN(294), WHOLE_IN(40), IN(4, 1, 2), 2032, MUSLIN_JOIN_STRAIGHT, 0
};
static const struct ruled run = RULED(call_run, good_run, muslin_run);

START_TEST(run_checks_its_structs)
{
    ck_struct_rules(&run);
}
END_TEST

START_TEST(run_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_run_spec, flags, 1, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_run_spec, length, 0, MUSLIN_LENGTH_MAX / 2, MUSLIN_ARG_LENGTH),
        OUTSIDE(muslin_run_spec, strip_length, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_LENGTH),
        OUTSIDE(muslin_run_spec, strip_cut, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_STRIP_CUT),
        OUTSIDE(muslin_run_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        NOT_A_CHOICE(muslin_run_spec, join, 4, MUSLIN_ARG_JOIN),
        REFUSAL(muslin_run_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
        REFUSAL(muslin_run_spec, strip_length, 4064, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_STRIP_LENGTH),
        REFUSAL(muslin_run_spec, strip_length, 0, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_STRIP_LENGTH),
    };
    ck_refusals(&run, refusals, COUNT_OF(refusals));
    ck_assert_int_eq(strips_for(WHOLE_IN(1), 4065, MUSLIN_JOIN_STRAIGHT), 8128 - 4065 + 1);
}
END_TEST

/* The largest count of the longest strips, butted: a product. */
START_TEST(the_longest_run_needs_as_many_strips_as_division_says)
{
    struct muslin_run_spec spec = { (uint32_t)sizeof spec, 0, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX - 1, MUSLIN_SIZE_MAX,
                                    MUSLIN_SIZE_MAX, 0, MUSLIN_JOIN_BUTTED, 0 };
    struct muslin_run longest = run_of(&spec);
    ck_assert_int_eq(longest.strips, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(longest.spare, 1);
    ck_assert_int_eq(longest.narrower_by, 0);
    ck_assert_int_eq(longest.cloth_length, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    spec.length += 2;
    ck_assert_int_eq(failing(&run, &spec, MUSLIN_ERR_OVERFLOW).limit, MUSLIN_COUNT_MAX);
}
END_TEST

START_TEST(more_strips_than_the_largest_count_overflow)
{
    struct muslin_run_spec spec = { (uint32_t)sizeof spec, 0, MUSLIN_COUNT_MAX, 1, MUSLIN_SIZE_MAX, 0,
                                    MUSLIN_JOIN_BUTTED, 0 };
    ck_assert_int_eq(run_of(&spec).strips, MUSLIN_COUNT_MAX);
    ck_assert_int_eq(run_of(&spec).cloth_length, MUSLIN_COUNT_MAX * MUSLIN_SIZE_MAX);
    spec.length++;
    struct muslin_problem problem = failing(&run, &spec, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_STRIPS);
    ck_assert_int_eq(problem.value, MUSLIN_COUNT_MAX + 1);
    spec.length = MUSLIN_LENGTH_MAX / 2;
    ck_assert_int_eq(failing(&run, &spec, MUSLIN_ERR_OVERFLOW).value, MUSLIN_LENGTH_MAX / 2);
}
END_TEST

/* ---- borders ---------------------------------------------------------------------------------------------------- */

static struct muslin_border_spec border_on(muslin_len width, muslin_len length, muslin_len finished, int32_t style)
{
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    spec.unfinished_width = width;
    spec.unfinished_length = length;
    spec.finished_border = finished;
    spec.style = style;
    return spec;
}

static struct muslin_border border_of(const struct muslin_border_spec *spec)
{
    struct muslin_border border = { .size = (uint32_t)sizeof border };
    ck_ok(muslin_border_plan(spec, &border, NULL));
    return border;
}

/* "4Bs: borders" (group sampler lesson): 38 1/2 x 50 in, 4 in finished, cornerstones. The strips by hand: 177 in of run
 * from 40 in strips with 1/2 in lost at each join: 4 give 158 1/2, 5 give 198 in. */
START_TEST(a_published_border_with_cornerstones)
{
    const struct muslin_border_spec spec =
        border_on(IN(38, 1, 2), WHOLE_IN(50), WHOLE_IN(4), MUSLIN_BORDER_STYLE_CORNERSTONES);
    struct muslin_border border = border_of(&spec);
    ck_assert_int_eq(border.cut_width, IN(4, 1, 2));
    ck_assert_int_eq(border.side_cut_length, WHOLE_IN(50));
    ck_assert_int_eq(border.top_cut_length, IN(38, 1, 2));
    ck_assert_int_eq(border.cornerstone_cut, IN(4, 1, 2));
    ck_assert_int_eq(border.total_length, WHOLE_IN(177));
    ck_assert_int_eq(border.strips, 5);
    ck_assert_int_eq(border.joins, 4);
    ck_assert_int_eq(border.loss_per_join, IN(0, 1, 2));
    ck_assert_int_eq(border.cloth_length, IN(22, 1, 2));
    ck_assert_int_eq(border.spare, WHOLE_IN(21));
    ck_assert_int_eq(border.unfinished_width, IN(46, 1, 2));
    ck_assert_int_eq(border.unfinished_length, WHOLE_IN(58));
    ck_assert_int_eq(border.finished_width, WHOLE_IN(46));
    ck_assert_int_eq(border.finished_length, IN(57, 1, 2));
    ck_assert_uint_eq(border.warnings, 0);
    struct muslin_border_spec wider = spec; /* two allowances are lost at a straight join */
    wider.allowance = IN(0, 3, 8);
    ck_assert_int_eq(border_of(&wider).loss_per_join, IN(0, 3, 4));
}
END_TEST

/* "Applying borders to your quilt" (lesson): strips cut 4 in on 60 x 80 in. The perimeter rule there gives 7 strips and
 * forgets the corners; butted, the four pieces are 2 x 80 + 2 x 67 in (by drawing), 8 strips. */
START_TEST(corners_need_an_eighth_strip)
{
    const struct muslin_border_spec spec =
        border_on(WHOLE_IN(60), WHOLE_IN(80), IN(3, 1, 2), MUSLIN_BORDER_STYLE_SIDES_FIRST);
    struct muslin_border border = border_of(&spec);
    ck_assert_int_eq(border.cut_width, WHOLE_IN(4));
    ck_assert_int_eq(border.total_length, WHOLE_IN(294));
    ck_assert_int_eq(border.strips, 8);
    ck_assert_int_eq(border.cloth_length, WHOLE_IN(32));
}
END_TEST

/* "Can you figure the amount of yardage to buy?" (class slides): a top 70 x 86 in finished, border cut 6 1/2 in: 82 x
 * 98 in finished, 338 in of border, whichever pair is sewn first. */
START_TEST(a_published_border_is_as_long_whichever_pair_comes_first)
{
    struct muslin_border_spec spec =
        border_on(IN(70, 1, 2), IN(86, 1, 2), WHOLE_IN(6), MUSLIN_BORDER_STYLE_SIDES_FIRST);
    struct muslin_border border = border_of(&spec);
    ck_assert_int_eq(border.cut_width, IN(6, 1, 2));
    ck_assert_int_eq(border.finished_width, WHOLE_IN(82));
    ck_assert_int_eq(border.finished_length, WHOLE_IN(98));
    ck_assert_int_eq(border.total_length, WHOLE_IN(338));
    ck_assert_int_eq(border.side_cut_length, IN(86, 1, 2));
    spec.style = MUSLIN_BORDER_STYLE_TOP_FIRST;
    border = border_of(&spec);
    ck_assert_int_eq(border.total_length, WHOLE_IN(338));
    ck_assert_int_eq(border.top_cut_length, IN(70, 1, 2));
}
END_TEST

/* "How to miter borders on a quilt" (magazine): a side of 40 in, border 5 in, 56 in cut. "Five steps to mitered
 * corners" (tutorial, 2021): 11 x 14 in, border cut 3 1/2 in, 19 and 22 in cut. Both are habits with room to trim; the
 * exact least, L + 2 W + 0.707 in, must be within them, and an extra is added to it. */
START_TEST(published_mitred_lengths_leave_room_to_trim)
{
    struct muslin_border_spec spec = border_on(WHOLE_IN(40), WHOLE_IN(40), WHOLE_IN(5), MUSLIN_BORDER_STYLE_MITRED);
    struct muslin_border border = border_of(&spec);
    ck_assert_int_eq(border.side_cut_length * 1000 / 8128, 50707);
    ck_assert_int_le(border.side_cut_length, WHOLE_IN(56));
    spec.mitre_extra = WHOLE_IN(2);
    ck_assert_int_eq(border_of(&spec).side_cut_length, border.side_cut_length + WHOLE_IN(2));
    spec = border_on(WHOLE_IN(11), WHOLE_IN(14), WHOLE_IN(3), MUSLIN_BORDER_STYLE_MITRED);
    ck_assert_int_le(border_of(&spec).top_cut_length, WHOLE_IN(19));
    ck_assert_int_le(border_of(&spec).side_cut_length, WHOLE_IN(22));
}
END_TEST

/* Drawn with the inner finished corner at 0, the border upwards, its outer raw edge at W + e, where e = s + u/2, and
 * the raw edge of the top ending e to the right of 0. The mitre seam is y = x; its allowance reaches to y = x - sqrt 2
 * s, so the outer raw edge must reach x = W + e + sqrt 2 s: W + sqrt 2 s beyond the top's own end, at both ends. So
 * the least length X has (X - L - 2 W)^2 >= 8 s s. */
START_TEST(a_mitred_piece_reaches_to_the_allowance_of_its_mitre)
{
    int good = 1;
    for (muslin_len s = 0; s <= 40; s++)
        for (muslin_len u = 0; u <= 3; u++) {
            struct muslin_border_spec spec = border_on(100, 140, 9, MUSLIN_BORDER_STYLE_MITRED);
            spec.allowance = s;
            spec.take_up = u;
            struct muslin_border border = border_of(&spec);
            good &= is_least_root(border.side_cut_length - 140 - 18, s);
            good &= is_least_root(border.top_cut_length - 100 - 18, s);
            good &= border.cornerstone_cut == 0;
        }
    ck_assert(good);
}
END_TEST

/* Areas of what is seen: the pieces of a butted or cornerstoned border fill exactly the ring round the top. */
static int fills_the_ring(const struct muslin_border_spec *spec)
{
    struct muslin_border b = { .size = (uint32_t)sizeof b };
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    if (muslin_border_plan(spec, &b, NULL) != MUSLIN_OK)
        return 0;
    int64_t outer = b.finished_width * b.finished_length;
    int64_t inner = (spec->unfinished_width - seam) * (spec->unfinished_length - seam);
    int64_t pieces = 2 * (b.side_cut_length - seam + b.top_cut_length - seam) * (b.cut_width - seam);
    muslin_len square = b.cornerstone_cut > 0 ? b.cornerstone_cut - seam : 0;
    return outer - inner == pieces + 4 * square * square && b.unfinished_width == b.finished_width + seam &&
           b.unfinished_length == b.finished_length + seam &&
           b.total_length == 2 * (b.side_cut_length + b.top_cut_length);
}

START_TEST(the_pieces_of_a_border_fill_the_ring_round_the_top)
{
    int good = 1;
    for (int32_t style = MUSLIN_BORDER_STYLE_SIDES_FIRST; style <= MUSLIN_BORDER_STYLE_CORNERSTONES; style++)
        for (muslin_len width = 9; width <= 30; width++)
            for (muslin_len length = 9; length <= 30; length += 3)
                for (muslin_len finished = 1; finished <= 9; finished++) {
                    struct muslin_border_spec spec = border_on(width, length, finished, style);
                    spec.allowance = finished % 4;
                    spec.take_up = width % 3;
                    good &= fills_the_ring(&spec);
                }
    ck_assert(good);
}
END_TEST

START_TEST(a_second_border_is_sewn_to_the_first)
{
    struct muslin_border_spec spec =
        border_on(IN(36, 1, 2), IN(36, 1, 2), WHOLE_IN(2), MUSLIN_BORDER_STYLE_SIDES_FIRST);
    struct muslin_border inner = border_of(&spec);
    spec.unfinished_width = inner.unfinished_width;
    spec.unfinished_length = inner.unfinished_length;
    spec.finished_border = WHOLE_IN(5);
    struct muslin_border outer = border_of(&spec);
    ck_assert_int_eq(outer.side_cut_length, IN(40, 1, 2));
    ck_assert_int_eq(outer.top_cut_length, IN(50, 1, 2));
    ck_assert_int_eq(outer.finished_width, WHOLE_IN(50));
}
END_TEST

/* All ways to lay four pieces in panels of so many side by side; a panel is as long as its longest piece. */
static muslin_len shortest_cloth(const muslin_len *pieces, int64_t side_by_side)
{
    muslin_len shortest = 0;
    for (int panels_of = 0; panels_of < 256; panels_of++) {
        int64_t held[4] = { 0 };
        muslin_len longest[4] = { 0 };
        int fits = 1;
        for (int piece = 0; piece < 4; piece++) {
            int panel = panels_of >> 2 * piece & 3;
            held[panel]++;
            longest[panel] = pieces[piece] > longest[panel] ? pieces[piece] : longest[panel];
            fits &= held[panel] <= side_by_side;
        }
        muslin_len cloth = longest[0] + longest[1] + longest[2] + longest[3];
        if (fits && (shortest == 0 || cloth < shortest))
            shortest = cloth;
    }
    return shortest;
}

START_TEST(lengthwise_pieces_take_the_shortest_cloth_that_any_layout_takes)
{
    struct muslin_border_spec spec = border_on(50, 50, 6, MUSLIN_BORDER_STYLE_CORNERSTONES);
    int good = 1;
    spec.flags = MUSLIN_BORDER_LENGTHWISE;
    spec.allowance = 2;
    for (spec.unfinished_width = 48; spec.unfinished_width <= 52; spec.unfinished_width++)
        for (spec.usable_width = 10; spec.usable_width <= 75; spec.usable_width++) {
            struct muslin_border border = { .size = (uint32_t)sizeof border };
            const muslin_len pieces[] = { 50, 50, spec.unfinished_width, spec.unfinished_width };
            int64_t side_by_side = spec.usable_width / 10;
            int64_t strips = side_by_side < 4 ? side_by_side : 4;
            good &= muslin_border_plan(&spec, &border, NULL) == MUSLIN_OK;
            good &= border.cloth_length == shortest_cloth(pieces, side_by_side);
            good &= border.strips == strips && border.joins == 0 && border.loss_per_join == 0;
            good &= border.spare == spec.usable_width - 10 * strips;
            good &= border.warnings == (border.spare == 0 ? (uint32_t)MUSLIN_WARN_NO_SLACK : 0);
        }
    ck_assert(good);
}
END_TEST

/* "Post on border yardage" (forum, 2009): four lengths lie side by side when the border is under 10 in
 * wide on 40 in. */
START_TEST(four_pieces_side_by_side_must_fit_the_width)
{
    struct muslin_border_spec spec =
        border_on(WHOLE_IN(60), WHOLE_IN(80), IN(9, 1, 2), MUSLIN_BORDER_STYLE_CORNERSTONES);
    spec.flags = MUSLIN_BORDER_LENGTHWISE;
    ck_assert_int_eq(border_of(&spec).cloth_length, WHOLE_IN(80));
    spec.finished_border++;
    ck_assert_int_eq(border_of(&spec).cloth_length, WHOLE_IN(140));
    spec.finished_border = IN(39, 1, 2);
    ck_assert_int_eq(border_of(&spec).cloth_length, WHOLE_IN(280));
}
END_TEST

START_TEST(diagonal_joins_are_warned_of_where_there_are_joins)
{
    struct muslin_border_spec spec =
        border_on(WHOLE_IN(40), WHOLE_IN(40), WHOLE_IN(3), MUSLIN_BORDER_STYLE_SIDES_FIRST);
    spec.join = MUSLIN_JOIN_DIAGONAL;
    ck_assert_uint_eq(border_of(&spec).warnings, MUSLIN_WARN_DIAGONAL_STRETCH);
    spec.join = MUSLIN_JOIN_BIAS_ENDS;
    ck_assert_uint_eq(border_of(&spec).warnings, MUSLIN_WARN_DIAGONAL_STRETCH);
    spec.join = MUSLIN_JOIN_STRAIGHT;
    ck_assert_uint_eq(border_of(&spec).warnings, 0);
    spec.join = MUSLIN_JOIN_DIAGONAL;
    spec.usable_width = WHOLE_IN(172);
    struct muslin_border border = border_of(&spec);
    ck_assert_int_eq(border.strips, 1);
    ck_assert_int_eq(border.spare, 0);
    ck_assert_uint_eq(border.warnings, MUSLIN_WARN_NO_SLACK);
    spec.usable_width = WHOLE_IN(88);
    spec.allowance = WHOLE_IN(1) / 2;
    border = border_of(&spec);
    ck_assert_int_eq(border.cut_width, WHOLE_IN(4));
    ck_assert_int_eq(border.strips, 2);
    ck_assert_int_eq(border.spare, 0);
    ck_assert_uint_eq(border.warnings, MUSLIN_WARN_NO_SLACK | MUSLIN_WARN_DIAGONAL_STRETCH);
}
END_TEST

static muslin_status call_border(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_border_plan(spec, out, problem);
}
static const struct muslin_border_spec good_border = {
    (uint32_t)sizeof good_border, 0, WHOLE_IN(40), WHOLE_IN(50), WHOLE_IN(4), 2032, 0, WHOLE_IN(40), WHOLE_IN(1),
    MUSLIN_BORDER_STYLE_MITRED, MUSLIN_JOIN_STRAIGHT
};
static const struct ruled border = RULED(call_border, good_border, muslin_border);

START_TEST(border_checks_its_structs)
{
    ck_struct_rules(&border);
}
END_TEST

START_TEST(border_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_border_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_border_spec, unfinished_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_WIDTH),
        OUTSIDE(muslin_border_spec, unfinished_length, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_QUILT_LENGTH),
        OUTSIDE(muslin_border_spec, finished_border, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BORDER_WIDTH),
        OUTSIDE(muslin_border_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_border_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_border_spec, usable_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
        OUTSIDE(muslin_border_spec, mitre_extra, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_MITRE_EXTRA),
        NOT_A_CHOICE(muslin_border_spec, style, 4, MUSLIN_ARG_BORDER_STYLE),
        NOT_A_CHOICE(muslin_border_spec, join, 4, MUSLIN_ARG_JOIN),
        REFUSAL(muslin_border_spec, unfinished_width, 4063, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_QUILT_WIDTH),
        REFUSAL(muslin_border_spec, unfinished_length, 4063, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_QUILT_LENGTH),
        REFUSAL(muslin_border_spec, usable_width, 4064, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH),
        REFUSAL(muslin_border_spec, usable_width, 0, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH),
    };
    ck_refusals(&border, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(a_top_as_wide_as_its_seams_finishes_at_nothing_but_its_border)
{
    const struct muslin_border_spec spec = border_on(4064, 4064, WHOLE_IN(4), MUSLIN_BORDER_STYLE_SIDES_FIRST);
    ck_assert_int_eq(border_of(&spec).finished_width, WHOLE_IN(8));
}
END_TEST

START_TEST(cloth_narrower_than_a_lengthwise_piece_does_not_fit)
{
    struct muslin_border_spec spec = good_border;
    spec.flags = MUSLIN_BORDER_LENGTHWISE;
    spec.usable_width = IN(4, 1, 2);
    ck_assert_int_eq(border_of(&spec).strips, 1);
    spec.usable_width--;
    struct muslin_problem problem = failing(&border, &spec, MUSLIN_ERR_NO_FIT);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.limit, IN(4, 1, 2));
}
END_TEST

/* The largest border on the largest top, by hand: 2^30 each, and seams of 3 x 2^27. */
START_TEST(the_largest_border_is_still_a_right_number)
{
    struct muslin_border_spec spec =
        border_on(MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, MUSLIN_BORDER_STYLE_MITRED);
    spec.allowance = MUSLIN_SIZE_MAX / 8;
    spec.take_up = MUSLIN_SIZE_MAX / 8;
    spec.mitre_extra = MUSLIN_SIZE_MAX;
    spec.usable_width = MUSLIN_SIZE_MAX;
    struct muslin_border largest = border_of(&spec);
    ck_assert_int_eq(largest.cut_width, MUSLIN_SIZE_MAX + 3 * (MUSLIN_SIZE_MAX / 8));
    ck_assert_int_eq(largest.unfinished_width, 3 * MUSLIN_SIZE_MAX);
    ck_assert(is_least_root(largest.side_cut_length - 4 * MUSLIN_SIZE_MAX, spec.allowance));
    ck_assert_int_eq(largest.cloth_length, largest.strips * largest.cut_width);
    ck_assert_int_ge(largest.spare, 0);
    spec.join = MUSLIN_JOIN_BUTTED;
    spec.usable_width = 1;
    ck_assert_int_eq(failing(&border, &spec, MUSLIN_ERR_OVERFLOW).argument, MUSLIN_ARG_STRIPS);
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(setting)
INIT_CALL(block)
INIT_CALL(run)
INIT_CALL(border)

START_TEST(initial_values_are_those_of_the_macros)
{
    const struct muslin_setting_spec setting_spec = MUSLIN_SETTING_SPEC_INIT;
    const struct muslin_block_spec block_spec = MUSLIN_BLOCK_SPEC_INIT;
    const struct muslin_run_spec run_spec = MUSLIN_RUN_SPEC_INIT;
    const struct muslin_border_spec border_spec = MUSLIN_BORDER_SPEC_INIT;
    ck_init_rules(init_setting, &setting_spec, (uint32_t)sizeof setting_spec);
    ck_init_rules(init_block, &block_spec, (uint32_t)sizeof block_spec);
    ck_init_rules(init_run, &run_spec, (uint32_t)sizeof run_spec);
    ck_init_rules(init_border, &border_spec, (uint32_t)sizeof border_spec);
    ck_assert_int_eq(setting_spec.turning, MUSLIN_TURNING_NONE);
    ck_assert_int_eq(run_spec.join, MUSLIN_JOIN_STRAIGHT);
    ck_assert_int_eq(border_spec.style, MUSLIN_BORDER_STYLE_SIDES_FIRST);
}
END_TEST

static void add_settings(Suite *suite)
{
    TCase *tcase = tcase_create("settings and blocks");
    tcase_add_test(tcase, nine_blocks_of_twelve_inches_finish_at_thirty_six);
    tcase_add_test(tcase, a_rail_fence_of_forty_two_blocks_finishes_at_sixty_by_seventy);
    tcase_add_test(tcase, every_small_top_is_what_laying_out_its_blocks_gives);
    tcase_add_test(tcase, neighbours_are_turned_differently_and_the_first_block_is_not);
    tcase_add_test(tcase, turn_refuses_what_is_no_place_or_no_turning);
    tcase_add_test(tcase, setting_checks_its_structs);
    tcase_add_test(tcase, setting_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, only_square_blocks_are_turned_a_quarter);
    tcase_add_test(tcase, a_block_within_the_tolerance_either_way_is_square_enough);
    tcase_add_test(tcase, a_side_ends_at_the_largest_size);
    tcase_add_test(tcase, two_segments_make_a_block_of_twelve_inches);
    tcase_add_test(tcase, every_small_block_is_what_joining_its_segments_gives);
    tcase_add_test(tcase, block_checks_its_structs);
    tcase_add_test(tcase, block_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, one_tick_of_segment_and_set_is_enough_to_be_seen);
    tcase_add_test(tcase, a_block_ends_at_the_largest_size);
    suite_add_tcase(suite, tcase);
}

static void add_runs(Suite *suite)
{
    TCase *tcase = tcase_create("joins and runs");
    tcase_add_test(tcase, published_diagonal_joins_lose_the_width_of_the_strip);
    tcase_add_test(tcase, straight_joins_lose_two_allowances_and_butted_ones_nothing);
    tcase_add_test(tcase, bias_ends_lose_the_allowance_along_the_diagonal_up_to_a_tick);
    tcase_add_test(tcase, join_loss_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, published_counts_of_strips);
    tcase_add_test(tcase, forty_strips_joined_diagonally_lose_thirty_nine_widths);
    tcase_add_test(tcase, every_small_run_is_what_sewing_strip_to_strip_gives);
    tcase_add_test(tcase, run_checks_its_structs);
    tcase_add_test(tcase, run_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, the_longest_run_needs_as_many_strips_as_division_says);
    tcase_add_test(tcase, more_strips_than_the_largest_count_overflow);
    suite_add_tcase(suite, tcase);
}

static void add_borders(Suite *suite)
{
    TCase *tcase = tcase_create("borders");
    tcase_add_test(tcase, a_published_border_with_cornerstones);
    tcase_add_test(tcase, corners_need_an_eighth_strip);
    tcase_add_test(tcase, a_published_border_is_as_long_whichever_pair_comes_first);
    tcase_add_test(tcase, published_mitred_lengths_leave_room_to_trim);
    tcase_add_test(tcase, a_mitred_piece_reaches_to_the_allowance_of_its_mitre);
    tcase_add_test(tcase, the_pieces_of_a_border_fill_the_ring_round_the_top);
    tcase_add_test(tcase, a_second_border_is_sewn_to_the_first);
    tcase_add_test(tcase, lengthwise_pieces_take_the_shortest_cloth_that_any_layout_takes);
    tcase_add_test(tcase, four_pieces_side_by_side_must_fit_the_width);
    tcase_add_test(tcase, diagonal_joins_are_warned_of_where_there_are_joins);
    tcase_add_test(tcase, border_checks_its_structs);
    tcase_add_test(tcase, border_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, a_top_as_wide_as_its_seams_finishes_at_nothing_but_its_border);
    tcase_add_test(tcase, cloth_narrower_than_a_lengthwise_piece_does_not_fit);
    tcase_add_test(tcase, the_largest_border_is_still_a_right_number);
    tcase_add_test(tcase, initial_values_are_those_of_the_macros);
    suite_add_tcase(suite, tcase);
}

Suite *setting_suite(void);

Suite *setting_suite(void)
{
    Suite *suite = suite_create("setting");
    add_settings(suite);
    add_runs(suite);
    add_borders(suite);
    return suite;
}
