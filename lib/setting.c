/* setting.c - the straight setting, and blocks from segments.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/setting.h"

#include "inside.h"

/* ---- the straight setting ---------------------------------------------------------------------------------------- */

muslin_status muslin_setting_spec_init(struct muslin_setting_spec *spec, uint32_t size)
{
    const struct muslin_setting_spec initial = MUSLIN_SETTING_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* One side of the top, seams still raw: the finished blocks and one allowance at each end. Fails where it would pass
 * MUSLIN_SIZE_MAX; the factors are below 2^31, so the product fits. */
static muslin_len unfinished_side(struct msl_check *check, int32_t argument, muslin_len block, int64_t blocks,
                                  muslin_len seam)
{
    muslin_len side = block * blocks + seam;
    msl_want_between(check, argument, side, 0, MUSLIN_SIZE_MAX);
    return side;
}

static struct muslin_setting setting_of(struct msl_check *check, const struct muslin_setting_spec *in)
{
    struct muslin_setting result = { 0 };
    muslin_len seam = 2 * in->allowance + in->take_up;
    result.unfinished_width = unfinished_side(check, MUSLIN_ARG_QUILT_WIDTH, in->block_width, in->columns, seam);
    result.unfinished_length = unfinished_side(check, MUSLIN_ARG_QUILT_LENGTH, in->block_height, in->rows, seam);
    result.finished_width = result.unfinished_width - seam;
    result.finished_length = result.unfinished_length - seam;
    result.blocks = in->columns * in->rows;
    result.turned = in->turning == MUSLIN_TURNING_NONE ? 0 : result.blocks / 2;
    result.block_seams = in->rows * (in->columns - 1);
    result.row_seams = in->rows - 1;
    return result;
}

muslin_status muslin_setting_straight(const struct muslin_setting_spec *spec, struct muslin_setting *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_some_size(&check, MUSLIN_ARG_BLOCK_WIDTH, in.block_width);
    msl_want_some_size(&check, MUSLIN_ARG_BLOCK_HEIGHT, in.block_height);
    msl_want_some_count(&check, MUSLIN_ARG_COLUMNS, in.columns);
    msl_want_some_count(&check, MUSLIN_ARG_QUILT_ROWS, in.rows);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, in.allowance);
    msl_want_seam(&check, MUSLIN_ARG_TAKE_UP, in.take_up);
    msl_want_choice(&check, MUSLIN_ARG_TURNING, in.turning, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
    msl_want_pad(&check, in.pad);
    if (check.status == MUSLIN_OK && in.turning == MUSLIN_TURNING_QUARTER_ALTERNATE && in.block_width != in.block_height)
        msl_fail(&check, MUSLIN_ERR_NOT_SQUARE, MUSLIN_ARG_BLOCK_WIDTH, in.block_width, in.block_height);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_setting result = setting_of(&check, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}

muslin_status muslin_setting_turn(int32_t turning, int64_t column, int64_t row, int32_t *quarter_turns)
{
    struct msl_check check = msl_check_start(NULL);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, quarter_turns);
    msl_want_choice(&check, MUSLIN_ARG_TURNING, turning, MUSLIN_TURNING_NONE, MUSLIN_TURNING_HALF_ALTERNATE);
    msl_want_count(&check, MUSLIN_ARG_COLUMNS, column);
    msl_want_count(&check, MUSLIN_ARG_QUILT_ROWS, row);
    if (check.status != MUSLIN_OK)
        return check.status;
    int odd = (column + row) % 2 != 0;
    int32_t turns = turning == MUSLIN_TURNING_HALF_ALTERNATE ? 2 : turning == MUSLIN_TURNING_QUARTER_ALTERNATE ? 1 : 0;
    *quarter_turns = odd ? turns : 0;
    return MUSLIN_OK;
}

/* ---- blocks from segments ---------------------------------------------------------------------------------------- */

muslin_status muslin_block_spec_init(struct muslin_block_spec *spec, uint32_t size)
{
    const struct muslin_block_spec initial = MUSLIN_BLOCK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static struct muslin_block block_of(const struct muslin_block_spec *in)
{
    struct muslin_block result = { 0 };
    muslin_len seam = 2 * in->allowance + in->take_up;
    result.segment_finished = in->segment_cut - seam;
    result.finished_width = in->segments * result.segment_finished;
    result.finished_height = in->set_unfinished - seam;
    result.unfinished_width = result.finished_width + seam;
    result.unfinished_height = in->set_unfinished;
    result.square = result.finished_width == result.finished_height;
    if (result.finished_height < in->segments)
        return result;
    result.square_segment_cut = result.finished_height / in->segments + seam;
    result.square_exact = result.finished_height % in->segments == 0;
    return result;
}

muslin_status muslin_block_from_segments(const struct muslin_block_spec *spec, struct muslin_block *out,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_block_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_some_size(&check, MUSLIN_ARG_SEGMENT_CUT, in.segment_cut);
    msl_want_some_size(&check, MUSLIN_ARG_UNFINISHED, in.set_unfinished);
    msl_want_some_count(&check, MUSLIN_ARG_SEGMENTS, in.segments);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, in.allowance);
    msl_want_seam(&check, MUSLIN_ARG_TAKE_UP, in.take_up);
    if (check.status != MUSLIN_OK)
        return check.status;
    muslin_len least = 2 * in.allowance + in.take_up + 1;
    if (in.segment_cut < least)
        return msl_fail(&check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_SEGMENT_CUT, in.segment_cut, least);
    if (in.set_unfinished < least)
        return msl_fail(&check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_UNFINISHED, in.set_unfinished, least);
    struct muslin_block result = block_of(&in);
    msl_want_between(&check, MUSLIN_ARG_BLOCK_WIDTH, result.unfinished_width, 0, MUSLIN_SIZE_MAX);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}
