/* setting.c - blocks from segments, and a top from blocks in a straight setting.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30 and a count below 2^31, so a product of two of them fits 64 bits. */
#include "muslin/setting.h"

#include "inside.h"

/* ---- straight setting -------------------------------------------------------------------------------------------- */

muslin_status muslin_setting_spec_init(struct muslin_setting_spec *spec, uint32_t size)
{
    const struct muslin_setting_spec initial = MUSLIN_SETTING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Sides that differ by more than the tolerance; both are sizes, so the difference fits. */
static int is_not_square(const struct muslin_setting_spec *spec)
{
    muslin_len wider_by = spec->block_width - spec->block_height;
    return wider_by > spec->square_tolerance || -wider_by > spec->square_tolerance;
}

static void read_setting(struct msl_check *check, struct muslin_setting_spec *spec,
                         const struct muslin_setting_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_WIDTH, spec->block_width);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_HEIGHT, spec->block_height);
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, spec->columns);
    msl_want_some_count(check, MUSLIN_ARG_QUILT_ROWS, spec->rows);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_choice(check, MUSLIN_ARG_TURNING, spec->turning, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
    msl_want_pad(check, spec->pad);
    msl_want_size(check, MUSLIN_ARG_SQUARE_TOLERANCE, spec->square_tolerance);
    if (check->status != MUSLIN_OK)
        return;
    if (spec->turning == MUSLIN_TURNING_QUARTER_ALTERNATE && is_not_square(spec))
        msl_fail(check, MUSLIN_ERR_NOT_SQUARE, MUSLIN_ARG_BLOCK_WIDTH, spec->block_width, spec->block_height);
}

/* As on a chessboard with the first field white, the turned blocks are the black ones: half of them all, down. */
static struct muslin_setting setting_of(const struct muslin_setting_spec *spec)
{
    struct muslin_setting top = { 0 };
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    top.blocks = spec->columns * spec->rows;
    top.blocks_turned = spec->turning == MUSLIN_TURNING_NONE ? 0 : top.blocks / 2;
    top.finished_width = spec->columns * spec->block_width;
    top.finished_length = spec->rows * spec->block_height;
    top.unfinished_width = top.finished_width + seam;
    top.unfinished_length = top.finished_length + seam;
    top.block_seams = spec->rows * (spec->columns - 1);
    top.row_seams = spec->rows - 1;
    return top;
}

muslin_status muslin_setting_straight(const struct muslin_setting_spec *spec, struct muslin_setting *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_spec s = { 0 };
    read_setting(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_setting top = setting_of(&s);
    msl_want_size(&check, MUSLIN_ARG_QUILT_WIDTH, top.finished_width);
    msl_want_size(&check, MUSLIN_ARG_QUILT_LENGTH, top.finished_length);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &top, (uint32_t)sizeof top);
    return check.status;
}

static int32_t quarters_of(int32_t turning)
{
    switch (turning) {
    case MUSLIN_TURNING_QUARTER_ALTERNATE:
        return 1;
    case MUSLIN_TURNING_HALF_ALTERNATE:
        return 2;
    default:
        return 0;
    }
}

muslin_status muslin_setting_turn(int32_t turning, int64_t column, int64_t row, int32_t *quarter_turns,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_choice(&check, MUSLIN_ARG_TURNING, turning, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
    msl_want_count(&check, MUSLIN_ARG_COLUMNS, column);
    msl_want_count(&check, MUSLIN_ARG_QUILT_ROWS, row);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, quarter_turns);
    if (check.status == MUSLIN_OK)
        *quarter_turns = (column + row) % 2 == 0 ? 0 : quarters_of(turning);
    return check.status;
}

/* ---- blocks from segments ---------------------------------------------------------------------------------------- */

muslin_status muslin_block_spec_init(struct muslin_block_spec *spec, uint32_t size)
{
    const struct muslin_block_spec initial = MUSLIN_BLOCK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* A tick of it must be seen. */
static void want_seen(struct msl_check *check, int32_t argument, muslin_len size, muslin_len seam)
{
    if (size <= seam)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, argument, size, seam);
}

static void read_block(struct msl_check *check, struct muslin_block_spec *spec, const struct muslin_block_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_SEGMENT_CUT, spec->segment_cut);
    msl_want_some_size(check, MUSLIN_ARG_UNFINISHED, spec->set_unfinished);
    msl_want_some_count(check, MUSLIN_ARG_SEGMENTS, spec->segments);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    if (check->status != MUSLIN_OK)
        return;
    want_seen(check, MUSLIN_ARG_SEGMENT_CUT, spec->segment_cut, 2 * spec->allowance + spec->take_up);
    want_seen(check, MUSLIN_ARG_UNFINISHED, spec->set_unfinished, 2 * spec->allowance + spec->take_up);
}

/* The block is square when its segments, as seen, together are as wide as the set, as seen. */
static struct muslin_block block_of(const struct muslin_block_spec *spec)
{
    struct muslin_block block = { 0 };
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    block.segment_finished = spec->segment_cut - seam;
    block.finished_width = spec->segments * block.segment_finished;
    block.finished_height = spec->set_unfinished - seam;
    block.unfinished_width = block.finished_width + seam;
    block.unfinished_height = spec->set_unfinished;
    block.square = block.finished_width == block.finished_height;
    if (block.finished_height < spec->segments)
        return block;
    block.square_segment_cut = block.finished_height / spec->segments + seam;
    block.square_exact = block.finished_height % spec->segments == 0;
    return block;
}

muslin_status muslin_block_from_segments(const struct muslin_block_spec *spec, struct muslin_block *out,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_block_spec s = { 0 };
    read_block(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_block block = block_of(&s);
    msl_want_size(&check, MUSLIN_ARG_BLOCK_WIDTH, block.unfinished_width);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &block, (uint32_t)sizeof block);
    return check.status;
}
