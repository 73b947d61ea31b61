/* test_setting_sashed.c - sashes, blocks in turn, lines of unequal blocks: published figures, and laying them out.
 *
 * SPDX-License-Identifier: MIT */
#include "refusals.h"

enum { INCH = 8128, BOTH = MUSLIN_SETTING_SASHED_FRAME | MUSLIN_SETTING_SASHED_CORNERSTONES };

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

/* ---- sashed settings -------------------------------------------------------------------------------------------- */

static struct muslin_setting_sashed_spec sashed_of(int64_t columns, int64_t rows, muslin_len block, muslin_len sash,
                                                   uint32_t flags)
{
    struct muslin_setting_sashed_spec spec = MUSLIN_SETTING_SASHED_SPEC_INIT;
    spec.flags = flags;
    spec.block_width = block;
    spec.block_height = block;
    spec.columns = columns;
    spec.rows = rows;
    spec.sash_width = sash;
    spec.sash_height = sash;
    return spec;
}

static struct muslin_setting_sashed_plan plan(const struct muslin_setting_sashed_spec *spec)
{
    struct muslin_setting_sashed_plan top = { .size = (uint32_t)sizeof top };
    ck_ok(muslin_setting_sashed(spec, &top, NULL));
    return top;
}

/* How much fabric do I need for quilt sashing? (tutorial site): 4 x 12 + 5 x 4 by 5 x 12 + 6 x 4; counts by Quilt math:
 * algorithms for cornerstones and sashes (blog, 2009): (r + 1)(c + 1) cornerstones, (r + 1) c + (c + 1) r sashes. */
START_TEST(a_frame_of_four_inches_round_four_by_five_blocks)
{
    /* Example: 4 x 5 blocks of 12 in with sashes of 4 in, cornerstones and a frame: 25 vertical and 24 horizontal
     * sashes cut 4 1/2 x 12 1/2 in, 30 cornerstones; 68 x 84 in finished. */
    struct muslin_setting_sashed_spec spec = sashed_of(4, 5, WHOLE_IN(12), WHOLE_IN(4), BOTH);
    struct muslin_setting_sashed_plan top = plan(&spec);
    ck_assert_int_eq(top.blocks, 20);
    ck_assert_int_eq(top.vertical_sashes, 25);
    ck_assert_int_eq(top.horizontal_sashes, 24);
    ck_assert_int_eq(top.cornerstones, 30);
    ck_assert_int_eq(top.vertical_cut_width, IN(4, 1, 2));
    ck_assert_int_eq(top.vertical_cut_length, IN(12, 1, 2));
    ck_assert_int_eq(top.horizontal_cut_width, IN(4, 1, 2));
    ck_assert_int_eq(top.horizontal_cut_length, IN(12, 1, 2));
    ck_assert_int_eq(top.cornerstone_cut_width, IN(4, 1, 2));
    ck_assert_int_eq(top.cornerstone_cut_height, IN(4, 1, 2));
    ck_assert_int_eq(top.finished_width, WHOLE_IN(68));
    ck_assert_int_eq(top.finished_length, WHOLE_IN(84));
    ck_assert_int_eq(top.unfinished_width, IN(68, 1, 2));
    ck_assert_int_eq(top.unfinished_length, IN(84, 1, 2));
    ck_assert_int_eq(top.block_unfinished_width, IN(12, 1, 2));
    ck_assert_int_eq(top.block_unfinished_height, IN(12, 1, 2));
}
END_TEST

/* 3 columns of 10 in and 2 sashes of 2 in are 34 in: long sashes as long as that row is unfinished. */
START_TEST(without_cornerstones_long_sashes_join_the_rows)
{
    struct muslin_setting_sashed_spec spec = sashed_of(3, 4, WHOLE_IN(10), WHOLE_IN(2), 0);
    struct muslin_setting_sashed_plan top = plan(&spec);
    ck_assert_int_eq(top.vertical_sashes, 2 * 4);
    ck_assert_int_eq(top.horizontal_sashes, 3);
    ck_assert_int_eq(top.horizontal_cut_length, IN(34, 1, 2));
    ck_assert_int_eq(top.cornerstones, 0);
    ck_assert_int_eq(top.cornerstone_cut_width, 0);
    ck_assert_int_eq(top.finished_length, WHOLE_IN(46));
    spec.flags = MUSLIN_SETTING_SASHED_FRAME;
    top = plan(&spec);
    ck_assert_int_eq(top.vertical_sashes, 4 * 4);
    ck_assert_int_eq(top.horizontal_sashes, 5);
    ck_assert_int_eq(top.horizontal_cut_length, IN(38, 1, 2));
}
END_TEST

/* A strippy top: sashes between the columns only, or between the rows only. */
START_TEST(a_kind_of_sash_may_be_missing)
{
    struct muslin_setting_sashed_spec spec = sashed_of(3, 2, WHOLE_IN(10), WHOLE_IN(2), 0);
    spec.sash_height = 0;
    struct muslin_setting_sashed_plan top = plan(&spec);
    ck_assert_int_eq(top.vertical_sashes, 4);
    ck_assert_int_eq(top.horizontal_sashes, 0);
    ck_assert_int_eq(top.horizontal_cut_width, 0);
    ck_assert_int_eq(top.horizontal_cut_length, 0);
    ck_assert_int_eq(top.finished_length, WHOLE_IN(20));
    spec.sash_width = 0;
    spec.sash_height = WHOLE_IN(1);
    top = plan(&spec);
    ck_assert_int_eq(top.vertical_sashes, 0);
    ck_assert_int_eq(top.vertical_cut_width, 0);
    ck_assert_int_eq(top.vertical_cut_length, 0);
    ck_assert_int_eq(top.horizontal_cut_length, IN(30, 1, 2));
}
END_TEST

/* Laid out cell by cell on a grid of lines: odd lines are blocks, even ones sashes, the outermost only with a frame. */
static int agrees_with_layout(const struct muslin_setting_sashed_spec *spec)
{
    struct muslin_setting_sashed_plan top = { .size = (uint32_t)sizeof top };
    int frame = (spec->flags & MUSLIN_SETTING_SASHED_FRAME) != 0;
    int64_t counts[2][2] = { { 0, 0 }, { 0, 0 } };
    muslin_len area = 0;
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    for (int64_t y = frame ? 0 : 1; y <= 2 * spec->rows - (frame ? 0 : 1); y++)
        for (int64_t x = frame ? 0 : 1; x <= 2 * spec->columns - (frame ? 0 : 1); x++) {
            counts[y % 2][x % 2]++;
            area += (x % 2 != 0 ? spec->block_width : spec->sash_width) *
                    (y % 2 != 0 ? spec->block_height : spec->sash_height);
        }
    if (muslin_setting_sashed(spec, &top, NULL) != MUSLIN_OK)
        return 0;
    return top.blocks == counts[1][1] && top.vertical_sashes == counts[1][0] && top.horizontal_sashes == counts[0][1] &&
           top.cornerstones == counts[0][0] && top.finished_width * top.finished_length == area &&
           top.unfinished_width == top.finished_width + seam;
}

START_TEST(every_small_sashed_top_is_what_laying_it_out_gives)
{
    struct muslin_setting_sashed_spec spec = sashed_of(1, 1, 7, 3, 0);
    int good = 1;
    spec.block_height = 5;
    spec.sash_height = 2;
    spec.allowance = 2;
    spec.take_up = 1;
    for (spec.columns = 1; spec.columns <= 5; spec.columns++)
        for (spec.rows = 1; spec.rows <= 5; spec.rows++) {
            spec.flags = BOTH;
            good &= agrees_with_layout(&spec);
            spec.flags = MUSLIN_SETTING_SASHED_CORNERSTONES;
            good &= agrees_with_layout(&spec);
        }
    ck_assert(good);
}
END_TEST

static muslin_status call_sashed(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_sashed(spec, out, problem);
}
static const struct muslin_setting_sashed_spec good_sashed = {
    (uint32_t)sizeof good_sashed, BOTH, WHOLE_IN(12), WHOLE_IN(12), 4, 5, WHOLE_IN(4), WHOLE_IN(4), 2032, 100,
    WHOLE_IN(44), 2032
};
static const struct ruled sashed = RULED(call_sashed, good_sashed, muslin_setting_sashed_plan);

START_TEST(sashed_checks_its_structs)
{
    ck_struct_rules(&sashed);
}
END_TEST

START_TEST(sashed_refuses_what_lies_outside_its_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_setting_sashed_spec, flags, 4, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_setting_sashed_spec, block_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_setting_sashed_spec, block_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_HEIGHT),
        OUTSIDE(muslin_setting_sashed_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_setting_sashed_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_setting_sashed_spec, sash_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_setting_sashed_spec, sash_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_setting_sashed_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_setting_sashed_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_setting_sashed_spec, usable_width, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_USABLE_WIDTH),
        OUTSIDE(muslin_setting_sashed_spec, end_loss, 0, WHOLE_IN(44), MUSLIN_ARG_END_LOSS),
    };
    ck_refusals(&sashed, refusals, COUNT_OF(refusals));
}
END_TEST

START_TEST(a_sash_that_is_missing_is_told_by_its_place)
{
    struct muslin_setting_sashed_spec spec = good_sashed;
    spec.sash_height = 0;
    struct muslin_problem problem = failing(&sashed, &spec, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.limit, 1);
    spec.sash_width = 0;
    ck_assert_int_eq(failing(&sashed, &spec, MUSLIN_ERR_RANGE).at, 0);
    spec.sash_width = 1;
    spec.sash_height = 1;
    ck_assert_int_eq(plan(&spec).cornerstones, 30);
}
END_TEST

START_TEST(a_sashed_side_ends_at_the_largest_size)
{
    struct muslin_setting_sashed_spec spec = sashed_of(2, 2, MUSLIN_SIZE_MAX / 2 - 1, 2, 0);
    ck_assert_int_eq(plan(&spec).finished_width, MUSLIN_SIZE_MAX);
    spec.sash_width = 3;
    ck_assert_int_eq(failing(&sashed, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
    spec.sash_width = 2;
    spec.sash_height = 3;
    ck_assert_int_eq(failing(&sashed, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_LENGTH);
    spec = sashed_of(MUSLIN_COUNT_MAX, MUSLIN_COUNT_MAX, MUSLIN_SIZE_MAX, MUSLIN_SIZE_MAX, BOTH);
    ck_assert_int_eq(failing(&sashed, &spec, MUSLIN_ERR_RANGE).value,
                     MUSLIN_SIZE_MAX * (2 * MUSLIN_COUNT_MAX + 1));
}
END_TEST

/* ---- strips for sashes ------------------------------------------------------------------------------------------ */

struct pieces {
    struct muslin_sash_piece row[4];
    size_t count;
};

static struct pieces pieces_of(const struct muslin_setting_sashed_spec *spec)
{
    struct pieces pieces;
    memset(&pieces, FILL, sizeof pieces);
    ck_ok(muslin_setting_sashed_pieces(spec, pieces.row, sizeof pieces.row[0], 4, &pieces.count, NULL));
    return pieces;
}

/* How much fabric do I need for quilt sashing? (tutorial site): 4 a row, 6 rows, cut 12 1/2 x 4 1/2 in, 44 in wide:
 * 44 / 12 1/2 = 3.52, so 3 a strip. Cornerstones by geometry: 44 / 4 1/2 = 9.78, 30 / 9 = 3.33. */
START_TEST(sashes_come_from_strips_across_the_cloth)
{
    /* Example: 24 horizontal sashes cut 12 1/2 x 4 1/2 in from cloth 44 in usable: 3 a strip, 8 strips, 36 in of cloth,
     * which may be 6 1/2 in narrower. */
    struct muslin_setting_sashed_spec spec = sashed_of(4, 5, WHOLE_IN(12), WHOLE_IN(4), BOTH);
    spec.usable_width = WHOLE_IN(44);
    struct pieces pieces = pieces_of(&spec);
    ck_assert_uint_eq(pieces.count, 3);
    ck_assert_int_eq(pieces.row[0].kind, MUSLIN_SASH_VERTICAL);
    ck_assert_int_eq(pieces.row[0].strips, 9);
    ck_assert_int_eq(pieces.row[0].spare_pieces, 2);
    ck_assert_int_eq(pieces.row[1].kind, MUSLIN_SASH_HORIZONTAL);
    ck_assert_int_eq(pieces.row[1].pieces, 24);
    ck_assert_int_eq(pieces.row[1].cut_length, IN(12, 1, 2));
    ck_assert_int_eq(pieces.row[1].cut_width, IN(4, 1, 2));
    ck_assert_int_eq(pieces.row[1].per_strip, 3);
    ck_assert_int_eq(pieces.row[1].strips, 8);
    ck_assert_int_eq(pieces.row[1].spare_pieces, 0);
    ck_assert_int_eq(pieces.row[1].joins, 0);
    ck_assert_int_eq(pieces.row[1].cloth_length, WHOLE_IN(36));
    ck_assert_int_eq(pieces.row[1].narrower_by, IN(6, 1, 2));
    ck_assert_uint_eq(pieces.row[1].warnings, 0);
    ck_assert_int_eq(pieces.row[2].kind, MUSLIN_SASH_CORNERSTONE);
    ck_assert_int_eq(pieces.row[2].per_strip, 9);
    ck_assert_int_eq(pieces.row[2].strips, 4);
    ck_assert_int_eq(pieces.row[2].spare_pieces, 6);
}
END_TEST

/* 5 sashes 68 1/2 in long from strips of 40 in: 342 1/2 in in one run, n strips give 40 n - (n - 1) / 2, so 9 give
 * 356 in, 13 1/2 in more, 1 1/2 in a strip. */
START_TEST(long_sashes_are_cut_from_a_joined_run)
{
    struct muslin_setting_sashed_spec spec = sashed_of(5, 6, WHOLE_IN(12), WHOLE_IN(2), 0);
    struct pieces pieces = pieces_of(&spec);
    ck_assert_uint_eq(pieces.count, 2);
    ck_assert_int_eq(pieces.row[1].pieces, 5);
    ck_assert_int_eq(pieces.row[1].cut_length, IN(68, 1, 2));
    ck_assert_int_eq(pieces.row[1].per_strip, 0);
    ck_assert_int_eq(pieces.row[1].spare_pieces, 0);
    ck_assert_int_eq(pieces.row[1].strips, 9);
    ck_assert_int_eq(pieces.row[1].joins, 8);
    ck_assert_int_eq(pieces.row[1].narrower_by, IN(1, 1, 2));
    ck_assert_int_eq(pieces.row[1].cloth_length, 9 * IN(2, 1, 2));
    /* with 3/8 in seams: 343 3/4 of 354 in, 1 5/36 in a strip, 9256.9 ticks */
    spec.allowance = IN(0, 3, 8);
    ck_assert_int_eq(pieces_of(&spec).row[1].narrower_by, 9256);
}
END_TEST

/* The same from cloth of 40 in of which 2 are lost at the ends: n strips give 38 n - (n - 1) / 2, so 9 give 338 in,
 * which is too little, and 10 give 375 1/2 in: 33 in more, 3 3/10 a strip, or 26822 ticks. */
START_TEST(what_is_lost_at_the_ends_is_lost_to_a_joined_run)
{
    struct muslin_setting_sashed_spec spec = sashed_of(5, 6, WHOLE_IN(12), WHOLE_IN(2), 0);
    spec.end_loss = WHOLE_IN(2);
    struct pieces pieces = pieces_of(&spec);
    ck_assert_int_eq(pieces.row[1].pieces, 5);
    ck_assert_int_eq(pieces.row[1].strips, 10);
    ck_assert_int_eq(pieces.row[1].joins, 9);
    ck_assert_int_eq(pieces.row[1].narrower_by, 26822);
    ck_assert_int_eq(pieces.row[1].cloth_length, 10 * IN(2, 1, 2));
}
END_TEST

/* 3 x 12 1/2 = 37 1/2 in: with 1/2 in lost at the ends, 38 in of cloth stand exactly on the edge. */
START_TEST(a_strip_that_is_used_up_has_no_slack)
{
    struct muslin_setting_sashed_spec spec = sashed_of(2, 1, WHOLE_IN(12), WHOLE_IN(2), 0);
    spec.usable_width = WHOLE_IN(38);
    spec.end_loss = IN(0, 1, 2);
    struct pieces pieces = pieces_of(&spec);
    ck_assert_uint_eq(pieces.count, 1);
    ck_assert_int_eq(pieces.row[0].per_strip, 3);
    ck_assert_int_eq(pieces.row[0].narrower_by, 0);
    ck_assert_uint_eq(pieces.row[0].warnings, MUSLIN_WARN_NO_SLACK);
    spec.end_loss++;
    ck_assert_int_eq(pieces_of(&spec).row[0].per_strip, 2);
}
END_TEST

START_TEST(a_piece_as_long_as_a_strip_is_not_joined)
{
    struct muslin_setting_sashed_spec spec = sashed_of(2, 1, WHOLE_IN(12), WHOLE_IN(2), 0);
    spec.usable_width = IN(12, 1, 2);
    ck_assert_int_eq(pieces_of(&spec).row[0].per_strip, 1);
    spec.usable_width--;
    struct pieces pieces = pieces_of(&spec);
    ck_assert_int_eq(pieces.row[0].per_strip, 0);
    ck_assert_int_eq(pieces.row[0].strips, 2);
}
END_TEST

START_TEST(a_top_without_sashes_has_no_pieces)
{
    struct muslin_setting_sashed_spec spec = sashed_of(3, 3, WHOLE_IN(12), 0, MUSLIN_SETTING_SASHED_FRAME);
    ck_assert_uint_eq(pieces_of(&spec).count, 0);
    spec = sashed_of(1, 1, WHOLE_IN(12), WHOLE_IN(2), MUSLIN_SETTING_SASHED_CORNERSTONES);
    ck_assert_uint_eq(pieces_of(&spec).count, 0);
}
END_TEST

static muslin_status call_pieces(const void *spec, void *out, struct muslin_problem *problem)
{
    size_t count;
    (void)out;
    return muslin_setting_sashed_pieces(spec, NULL, 0, 0, &count, problem);
}
static const struct ruled asking_pieces = RULED(call_pieces, good_sashed, muslin_sash_piece);

START_TEST(pieces_fail_as_the_plan_does_and_where_strips_end)
{
    struct muslin_setting_sashed_spec spec = good_sashed;
    ck_spec_rules(&asking_pieces);
    ck_problem_rules(&asking_pieces);
    spec.sash_width = -1;
    ck_assert_int_eq(failing(&asking_pieces, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_SASH_WIDTH);
    spec = sashed_of(2, 1, MUSLIN_SIZE_MAX, 1, 0);
    ck_assert_int_eq(failing(&asking_pieces, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
    spec = sashed_of(2, 2, WHOLE_IN(12), WHOLE_IN(2), 0);
    spec.usable_width = 4064; /* what a join of 1/4 in allowances takes */
    struct muslin_problem problem = failing(&asking_pieces, &spec, MUSLIN_ERR_NO_YIELD);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_USABLE_WIDTH);
    ck_assert_int_eq(problem.limit, 4065);
    spec = sashed_of(1 << 16, 1 << 15, 1, 1, 0);
    spec.allowance = 0;
    ck_assert_int_eq(pieces_of(&spec).row[0].pieces, 2147450880); /* (2^16 - 1) 2^15 */
    spec.rows++;
    problem = failing(&asking_pieces, &spec, MUSLIN_ERR_OVERFLOW);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_PIECES);
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
}
END_TEST

START_TEST(pieces_are_asked_for_and_then_filled)
{
    struct muslin_sash_piece rows[3];
    size_t count = 77;
    struct muslin_problem problem = PROBLEM;
    memset(rows, FILL, sizeof rows);
    ck_ok(muslin_setting_sashed_pieces(&good_sashed, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_status(muslin_setting_sashed_pieces(&good_sashed, rows, sizeof rows[0], 2, &count, &problem), MUSLIN_ERR_BUFFER);
    ck_assert_int_eq(problem.limit, 3);
    ck_status(muslin_setting_sashed_pieces(&good_sashed, NULL, sizeof rows[0], 3, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_sashed_pieces(&good_sashed, rows, sizeof rows[0], 3, NULL, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_sashed_pieces(&good_sashed, rows, sizeof rows[0] - 1, 3, &count, NULL),
              MUSLIN_ERR_STRUCT_SIZE);
    for (size_t i = 0; i < sizeof rows; i++)
        ck_assert_uint_eq(((unsigned char *)rows)[i], FILL);
    ck_ok(muslin_setting_sashed_pieces(&good_sashed, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_uint_eq(rows[2].size, sizeof rows[0]);
    ck_assert_uint_eq(rows[2].flags, 0);
}
END_TEST

/* ---- pieced and plain blocks in turn ---------------------------------------------------------------------------- */

static struct muslin_setting_alternate_plan alternate(const struct muslin_setting_alternate_spec *spec)
{
    struct muslin_setting_alternate_plan top = { .size = (uint32_t)sizeof top };
    ck_ok(muslin_setting_alternate(spec, &top, NULL));
    return top;
}

START_TEST(a_chessboard_of_five_by_five_blocks)
{
    /* Example: 5 x 5 blocks of 8 in, a pieced one first: 13 pieced, 12 plain cut 8 1/2 in square. */
    struct muslin_setting_alternate_spec spec = MUSLIN_SETTING_ALTERNATE_SPEC_INIT;
    spec.block_width = WHOLE_IN(8);
    spec.block_height = WHOLE_IN(8);
    spec.columns = 5;
    spec.rows = 5;
    struct muslin_setting_alternate_plan top = alternate(&spec);
    ck_assert_int_eq(top.pieced, 13);
    ck_assert_int_eq(top.plain, 12);
    ck_assert_int_eq(top.plain_cut_width, IN(8, 1, 2));
    ck_assert_int_eq(top.plain_cut_height, IN(8, 1, 2));
    ck_assert_int_eq(top.finished_width, WHOLE_IN(40));
    ck_assert_int_eq(top.unfinished_length, IN(40, 1, 2));
    spec.first = MUSLIN_FIRST_BLOCK_PLAIN;
    top = alternate(&spec);
    ck_assert_int_eq(top.pieced, 12);
    ck_assert_int_eq(top.plain, 13);
}
END_TEST

START_TEST(blocks_that_are_no_squares_are_counted_as_a_board_is)
{
    struct muslin_setting_alternate_spec spec = MUSLIN_SETTING_ALTERNATE_SPEC_INIT;
    spec.block_width = 30;
    spec.block_height = 20;
    spec.allowance = 4;
    spec.take_up = 1;
    for (spec.first = 1; spec.first <= 2; spec.first++)
        for (spec.columns = 1; spec.columns <= 4; spec.columns++)
            for (spec.rows = 1; spec.rows <= 4; spec.rows++) {
                int64_t kinds[2] = { 0, 0 };
                for (int64_t i = 0; i < spec.columns * spec.rows; i++)
                    kinds[(i % spec.columns + i / spec.columns + spec.first - 1) % 2]++;
                struct muslin_setting_alternate_plan top = alternate(&spec);
                ck_assert_int_eq(top.pieced, kinds[0]);
                ck_assert_int_eq(top.plain, kinds[1]);
                ck_assert_int_eq(top.plain_cut_width, 39);
                ck_assert_int_eq(top.plain_cut_height, 29);
                ck_assert_int_eq(top.finished_length, 20 * spec.rows);
                ck_assert_int_eq(top.unfinished_width, 30 * spec.columns + 9);
            }
}
END_TEST

static muslin_status call_alternate(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_alternate(spec, out, problem);
}
static const struct muslin_setting_alternate_spec good_alternate = {
    (uint32_t)sizeof good_alternate, 0, WHOLE_IN(8), WHOLE_IN(8), 3, 3, 2032, 0, MUSLIN_FIRST_BLOCK_PLAIN, 0
};
static const struct ruled alternates = RULED(call_alternate, good_alternate, muslin_setting_alternate_plan);

START_TEST(alternate_checks_structs_and_ranges)
{
    const struct refusal refusals[] = {
        OUTSIDE(muslin_setting_alternate_spec, block_width, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_WIDTH),
        OUTSIDE(muslin_setting_alternate_spec, block_height, 1, MUSLIN_SIZE_MAX, MUSLIN_ARG_BLOCK_HEIGHT),
        OUTSIDE(muslin_setting_alternate_spec, columns, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_COLUMNS),
        OUTSIDE(muslin_setting_alternate_spec, rows, 1, MUSLIN_COUNT_MAX, MUSLIN_ARG_QUILT_ROWS),
        OUTSIDE(muslin_setting_alternate_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_setting_alternate_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        NOT_A_CHOICE(muslin_setting_alternate_spec, first, 2, MUSLIN_ARG_FIRST_BLOCK),
        REFUSAL(muslin_setting_alternate_spec, pad, 1, MUSLIN_ERR_STRUCT_TAIL, MUSLIN_ARG_SPEC),
    };
    struct muslin_setting_alternate_spec spec = good_alternate;
    ck_struct_rules(&alternates);
    ck_no_flag_known(&alternates);
    ck_refusals(&alternates, refusals, COUNT_OF(refusals));
    spec.block_width = MUSLIN_SIZE_MAX / 2;
    ck_assert_int_eq(failing(&alternates, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_WIDTH);
    spec.block_width = MUSLIN_SIZE_MAX / 3;
    spec.block_height = MUSLIN_SIZE_MAX / 3 + 1;
    ck_assert_int_eq(failing(&alternates, &spec, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_QUILT_LENGTH);
    spec.block_height--;
    ck_assert_int_eq(alternate(&spec).finished_length, MUSLIN_SIZE_MAX - MUSLIN_SIZE_MAX % 3);
}
END_TEST

/* ---- lines of unequal blocks ------------------------------------------------------------------------------------ */

static const muslin_len three[] = { WHOLE_IN(6), WHOLE_IN(12), WHOLE_IN(6) };

static struct muslin_setting_line_spec one_inch_sash(uint32_t flags)
{
    struct muslin_setting_line_spec spec = MUSLIN_SETTING_LINE_SPEC_INIT;
    spec.flags = flags;
    spec.sash = WHOLE_IN(1);
    return spec;
}

static struct muslin_setting_line_plan line_of(const struct muslin_setting_line_spec *spec)
{
    struct muslin_setting_line_plan line = { .size = (uint32_t)sizeof line };
    ck_ok(muslin_setting_line(three, 3, spec, &line, NULL));
    return line;
}

START_TEST(a_line_of_three_columns)
{
    /* Example: columns of 6, 12 and 6 in with a sash of 1 in between: 26 in finished, 26 1/2 in unfinished. */
    struct muslin_setting_line_spec spec = one_inch_sash(0);
    struct muslin_setting_line_plan line = line_of(&spec);
    ck_assert_int_eq(line.sashes, 2);
    ck_assert_int_eq(line.finished, WHOLE_IN(26));
    ck_assert_int_eq(line.unfinished, IN(26, 1, 2));
    ck_assert_int_eq(line.longer_by, 0);
    spec.flags = MUSLIN_SETTING_LINE_FRAME;
    line = line_of(&spec);
    ck_assert_int_eq(line.sashes, 4);
    ck_assert_int_eq(line.finished, WHOLE_IN(28));
    spec.take_up = 64;
    ck_assert_int_eq(line_of(&spec).unfinished, IN(28, 1, 2) + 64);
    spec.sash = 0;
    line = line_of(&spec);
    ck_assert_int_eq(line.sashes, 0);
    ck_assert_int_eq(line.finished, WHOLE_IN(24));
}
END_TEST

START_TEST(a_line_is_checked_against_the_size_wanted)
{
    struct muslin_setting_line_spec spec = one_inch_sash(0);
    spec.wanted = WHOLE_IN(26);
    ck_assert_int_eq(line_of(&spec).longer_by, 0);
    spec.wanted = WHOLE_IN(30);
    ck_assert_int_eq(line_of(&spec).longer_by, -WHOLE_IN(4));
    spec.wanted = WHOLE_IN(25);
    ck_assert_int_eq(line_of(&spec).longer_by, WHOLE_IN(1));
}
END_TEST

START_TEST(each_column_starts_where_the_one_before_and_its_sash_end)
{
    /* Example: columns of 6, 12 and 6 in with a sash of 1 in between start at 0, 7 and 20 in. */
    struct muslin_setting_line_spec spec = one_inch_sash(0);
    struct muslin_setting_line_place rows[3];
    size_t count;
    ck_ok(muslin_setting_line_places(three, 3, &spec, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_assert_int_eq(rows[0].start, 0);
    ck_assert_int_eq(rows[1].start, WHOLE_IN(7));
    ck_assert_int_eq(rows[2].start, WHOLE_IN(20));
    ck_assert_int_eq(rows[1].finished, WHOLE_IN(12));
    ck_assert_int_eq(rows[1].unfinished, IN(12, 1, 2));
    spec.flags = MUSLIN_SETTING_LINE_FRAME;
    ck_ok(muslin_setting_line_places(three, 3, &spec, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_int_eq(rows[0].start, WHOLE_IN(1));
    ck_assert_int_eq(rows[2].start, WHOLE_IN(21));
    spec.take_up = 64;
    rows[2].finished = 77;
    ck_ok(muslin_setting_line_places(three, 2, &spec, rows, sizeof rows[0], 3, &count, NULL));
    ck_assert_int_eq(rows[1].unfinished, IN(12, 1, 2) + 64);
    ck_assert_int_eq(rows[2].finished, 77);
}
END_TEST

static muslin_status call_line(const void *spec, void *out, struct muslin_problem *problem)
{
    return muslin_setting_line(three, 3, spec, out, problem);
}
static const struct muslin_setting_line_spec good_line = {
    (uint32_t)sizeof good_line, MUSLIN_SETTING_LINE_FRAME, INCH, 2032, 0, 5
};
static const struct ruled lines = RULED(call_line, good_line, muslin_setting_line_plan);

START_TEST(a_line_checks_structs_and_ranges)
{
    const struct refusal refusals[] = {
        REFUSAL(muslin_setting_line_spec, flags, 2, MUSLIN_ERR_FLAGS, MUSLIN_ARG_SPEC),
        OUTSIDE(muslin_setting_line_spec, sash, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_SASH_WIDTH),
        OUTSIDE(muslin_setting_line_spec, allowance, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_SEAM_ALLOWANCE),
        OUTSIDE(muslin_setting_line_spec, take_up, 0, MUSLIN_SIZE_MAX / 8, MUSLIN_ARG_TAKE_UP),
        OUTSIDE(muslin_setting_line_spec, wanted, 0, MUSLIN_SIZE_MAX, MUSLIN_ARG_FINISHED),
    };
    ck_struct_rules(&lines);
    ck_refusals(&lines, refusals, COUNT_OF(refusals));
}
END_TEST

static struct muslin_problem line_fails(const muslin_len *sizes, size_t n, muslin_len sash, muslin_status status)
{
    struct muslin_setting_line_spec spec = MUSLIN_SETTING_LINE_SPEC_INIT;
    struct muslin_setting_line_plan line = { .size = (uint32_t)sizeof line };
    struct muslin_problem problem = PROBLEM;
    size_t count = 77;
    spec.sash = sash;
    line.finished = 77;
    ck_status(muslin_setting_line(sizes, n, &spec, &line, &problem), status);
    ck_assert_int_eq(line.finished, 77);
    ck_status(muslin_setting_line_places(sizes, n, &spec, NULL, 0, 0, &count, NULL), status);
    ck_assert_uint_eq(count, 77);
    return problem;
}

START_TEST(a_line_refuses_bad_sizes_by_their_place)
{
    const muslin_len bad[] = { 5, 0, MUSLIN_SIZE_MAX + 1 };
    const muslin_len whole[] = { MUSLIN_SIZE_MAX - 1, 1 };
    struct muslin_problem problem = line_fails(bad, 3, 0, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.at, 1);
    ck_assert_int_eq(problem.limit, 1);
    ck_assert_int_eq(line_fails(bad + 2, 1, 0, MUSLIN_ERR_RANGE).value, MUSLIN_SIZE_MAX + 1);
    problem = line_fails(whole, 2, 1, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_LENGTH);
    ck_assert_int_eq(problem.value, MUSLIN_SIZE_MAX + 1);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(line_fails(three, 0, 0, MUSLIN_ERR_RANGE).argument, MUSLIN_ARG_BLOCKS);
    problem = line_fails(three, (size_t)MUSLIN_COUNT_MAX + 1, 0, MUSLIN_ERR_RANGE);
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCKS);
    ck_assert_int_eq(problem.value, MUSLIN_COUNT_MAX + 1);
    ck_assert_int_eq(problem.limit, MUSLIN_COUNT_MAX);
    problem = line_fails(bad + 1, MUSLIN_COUNT_MAX, 0, MUSLIN_ERR_RANGE); /* as many as there may be */
    ck_assert_int_eq(problem.argument, MUSLIN_ARG_BLOCK_WIDTH);
    ck_assert_int_eq(problem.at, 0);
    ck_assert_int_eq(line_fails(NULL, 2, 0, MUSLIN_ERR_NULL).argument, MUSLIN_ARG_BLOCK_WIDTH);
}
END_TEST

START_TEST(places_are_asked_for_and_then_filled)
{
    struct muslin_setting_line_spec spec = one_inch_sash(0);
    struct muslin_setting_line_place rows[3];
    size_t count = 77;
    memset(rows, FILL, sizeof rows);
    ck_ok(muslin_setting_line_places(three, 3, &spec, NULL, 0, 0, &count, NULL));
    ck_assert_uint_eq(count, 3);
    ck_status(muslin_setting_line_places(three, 3, &spec, rows, sizeof rows[0], 2, &count, NULL), MUSLIN_ERR_BUFFER);
    ck_status(muslin_setting_line_places(three, 3, &spec, rows, 4097, 3, &count, NULL), MUSLIN_ERR_STRUCT_SIZE);
    ck_status(muslin_setting_line_places(three, 3, NULL, rows, sizeof rows[0], 3, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_line_places(three, 3, &spec, NULL, sizeof rows[0], 3, &count, NULL), MUSLIN_ERR_NULL);
    ck_status(muslin_setting_line_places(three, 3, &spec, rows, sizeof rows[0], 3, NULL, NULL), MUSLIN_ERR_NULL);
    ck_assert_uint_eq(rows[0].size, (uint32_t)FILL * 0x01010101u);
}
END_TEST

/* ---- initial values --------------------------------------------------------------------------------------------- */

INIT_CALL(setting_sashed)
INIT_CALL(setting_alternate)
INIT_CALL(setting_line)

START_TEST(initial_values_are_the_macros)
{
    const struct muslin_setting_sashed_spec sashed_spec = MUSLIN_SETTING_SASHED_SPEC_INIT;
    const struct muslin_setting_alternate_spec alternate_spec = MUSLIN_SETTING_ALTERNATE_SPEC_INIT;
    const struct muslin_setting_line_spec line_spec = MUSLIN_SETTING_LINE_SPEC_INIT;
    ck_init_rules(init_setting_sashed, &sashed_spec, sizeof sashed_spec);
    ck_init_rules(init_setting_alternate, &alternate_spec, sizeof alternate_spec);
    ck_init_rules(init_setting_line, &line_spec, sizeof line_spec);
}
END_TEST

static void add_sashed(Suite *suite)
{
    TCase *tcase = tcase_create("sashed");
    tcase_add_test(tcase, a_frame_of_four_inches_round_four_by_five_blocks);
    tcase_add_test(tcase, without_cornerstones_long_sashes_join_the_rows);
    tcase_add_test(tcase, a_kind_of_sash_may_be_missing);
    tcase_add_test(tcase, every_small_sashed_top_is_what_laying_it_out_gives);
    tcase_add_test(tcase, sashed_checks_its_structs);
    tcase_add_test(tcase, sashed_refuses_what_lies_outside_its_ranges);
    tcase_add_test(tcase, a_sash_that_is_missing_is_told_by_its_place);
    tcase_add_test(tcase, a_sashed_side_ends_at_the_largest_size);
    tcase_add_test(tcase, sashes_come_from_strips_across_the_cloth);
    tcase_add_test(tcase, long_sashes_are_cut_from_a_joined_run);
    tcase_add_test(tcase, what_is_lost_at_the_ends_is_lost_to_a_joined_run);
    tcase_add_test(tcase, a_strip_that_is_used_up_has_no_slack);
    tcase_add_test(tcase, a_piece_as_long_as_a_strip_is_not_joined);
    tcase_add_test(tcase, a_top_without_sashes_has_no_pieces);
    tcase_add_test(tcase, pieces_fail_as_the_plan_does_and_where_strips_end);
    tcase_add_test(tcase, pieces_are_asked_for_and_then_filled);
    suite_add_tcase(suite, tcase);
}

Suite *setting_sashed_suite(void);

Suite *setting_sashed_suite(void)
{
    Suite *suite = suite_create("setting_sashed");
    TCase *tcase = tcase_create("in turn and in lines");
    add_sashed(suite);
    tcase_add_test(tcase, a_chessboard_of_five_by_five_blocks);
    tcase_add_test(tcase, blocks_that_are_no_squares_are_counted_as_a_board_is);
    tcase_add_test(tcase, alternate_checks_structs_and_ranges);
    tcase_add_test(tcase, a_line_of_three_columns);
    tcase_add_test(tcase, a_line_is_checked_against_the_size_wanted);
    tcase_add_test(tcase, each_column_starts_where_the_one_before_and_its_sash_end);
    tcase_add_test(tcase, a_line_checks_structs_and_ranges);
    tcase_add_test(tcase, a_line_refuses_bad_sizes_by_their_place);
    tcase_add_test(tcase, places_are_asked_for_and_then_filled);
    tcase_add_test(tcase, initial_values_are_the_macros);
    suite_add_tcase(suite, tcase);
    return suite;
}
