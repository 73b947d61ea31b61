/* setting_border.c - one border round a top: its pieces, its strips, and the size it leaves.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/setting.h"

#include "root.h"

muslin_status muslin_border_spec_init(struct muslin_border_spec *spec, uint32_t size)
{
    const struct muslin_border_spec initial = MUSLIN_BORDER_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* A mitred piece along an unfinished edge L: its outer raw edge lies W + s beyond the seam, and each mitre needs s
 * beside it, s sqrt 2 along the edge: L + 2 W + 2 sqrt 2 s, up to a tick (geometry). */
static muslin_len mitred_length(muslin_len edge, const struct muslin_border_spec *in)
{
    const struct muslin_rounding_spec up = { (uint32_t)sizeof up, 0, 1, 0, MUSLIN_ROUND_UP, 0 };
    struct muslin_rounded length = { 0 };
    uint64_t allowance = (uint64_t)in->allowance;
    msl_root_round(8 * allowance * allowance, 1, edge + 2 * in->finished_border, &up, &length);
    return length.value + in->mitre_extra;
}

/* The pieces' cut lengths. A butted or cornerstoned piece is as long as the raw edge it is sewn to. */
static void set_lengths(struct muslin_border *result, const struct muslin_border_spec *in)
{
    result->side_cut_length = in->unfinished_length;
    result->top_cut_length = in->unfinished_width;
    switch (in->style) {
    case MUSLIN_BORDER_SIDES_FIRST:
        result->top_cut_length += 2 * in->finished_border;
        return;
    case MUSLIN_BORDER_TOP_FIRST:
        result->side_cut_length += 2 * in->finished_border;
        return;
    case MUSLIN_BORDER_CORNERSTONES:
        result->cornerstone_cut = result->cut_width;
        return;
    default:
        result->side_cut_length = mitred_length(in->unfinished_length, in);
        result->top_cut_length = mitred_length(in->unfinished_width, in);
    }
}

static void set_sizes(struct muslin_border *result, const struct muslin_border_spec *in)
{
    muslin_len seam = 2 * in->allowance + in->take_up;
    result->cut_width = in->finished_border + seam;
    result->unfinished_width = in->unfinished_width + 2 * in->finished_border;
    result->unfinished_length = in->unfinished_length + 2 * in->finished_border;
    result->finished_width = result->unfinished_width - seam;
    result->finished_length = result->unfinished_length - seam;
    set_lengths(result, in);
    result->total_length = 2 * result->side_cut_length + 2 * result->top_cut_length;
}

/* Strips across the width, joined in one run from which the four pieces are cut. */
static void set_strips_across(struct msl_check *check, struct muslin_border *result,
                              const struct muslin_border_spec *in, struct muslin_problem *problem)
{
    struct muslin_run_spec wanted = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run run = { 0 };
    run.size = (uint32_t)sizeof run;
    wanted.length = result->total_length;
    wanted.strip_length = in->usable_width;
    wanted.strip_cut = result->cut_width;
    wanted.allowance = in->allowance;
    wanted.join = in->join;
    check->status = muslin_run_plan(&wanted, &run, problem);
    result->strips = run.strips;
    result->joins = run.joins;
    result->loss_per_join = run.loss_per_join;
    result->cloth_length = run.cloth_length;
    result->spare = run.spare;
    result->warnings = (uint32_t)run.warnings;
    if (run.joins > 0 && in->join == MUSLIN_JOIN_DIAGONAL)
        result->warnings |= MUSLIN_WARN_DIAGONAL_STRETCH;
}

/* Whole pieces along the cloth, side by side, longest first: the longer pair and the shorter pair fill panels of `held`
 * pieces. The first piece of each panel is its longest. */
static muslin_len panels_length(muslin_len longer, muslin_len shorter, int64_t held)
{
    muslin_len length = 0;
    for (int64_t piece = 0; piece < 4; piece += held)
        length += piece < 2 ? longer : shorter;
    return length;
}

static void set_lengthwise(struct msl_check *check, struct muslin_border *result, const struct muslin_border_spec *in)
{
    int64_t held = in->usable_width / result->cut_width;
    if (held == 0) {
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_USABLE_WIDTH, in->usable_width, result->cut_width);
        return;
    }
    int sides_longer = result->side_cut_length >= result->top_cut_length;
    muslin_len longer = sides_longer ? result->side_cut_length : result->top_cut_length;
    muslin_len shorter = sides_longer ? result->top_cut_length : result->side_cut_length;
    result->strips = held < 4 ? held : 4;
    result->cloth_length = panels_length(longer, shorter, result->strips);
    result->spare = in->usable_width - result->strips * result->cut_width;
}

static void want_border(struct msl_check *check, const struct muslin_border_spec *in)
{
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, in->unfinished_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, in->unfinished_length);
    msl_want_some_size(check, MUSLIN_ARG_BORDER_WIDTH, in->finished_border);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, in->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, in->take_up);
    msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, in->usable_width);
    msl_want_size(check, MUSLIN_ARG_MITRE_EXTRA, in->mitre_extra);
    msl_want_choice(check, MUSLIN_ARG_BORDER_STYLE, in->style, MUSLIN_BORDER_SIDES_FIRST, MUSLIN_BORDER_MITRED);
    msl_want_choice(check, MUSLIN_ARG_JOIN, in->join, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
    if (check->status != MUSLIN_OK)
        return;
    muslin_len seam = 2 * in->allowance + in->take_up;
    muslin_len shorter = in->unfinished_width < in->unfinished_length ? in->unfinished_width : in->unfinished_length;
    if (shorter < seam)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, MUSLIN_ARG_UNFINISHED, shorter, seam);
    msl_want_between(check, MUSLIN_ARG_BORDER_WIDTH, in->finished_border + seam, 0, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_QUILT_WIDTH, in->unfinished_width + 2 * in->finished_border, 0, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_QUILT_LENGTH, in->unfinished_length + 2 * in->finished_border, 0,
                     MUSLIN_SIZE_MAX);
}

muslin_status muslin_border_plan(const struct muslin_border_spec *spec, struct muslin_border *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_border_spec in;
    struct muslin_border result = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, MUSLIN_BORDER_LENGTHWISE,
                    spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    want_border(&check, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    set_sizes(&result, &in);
    if ((in.flags & MUSLIN_BORDER_LENGTHWISE) != 0)
        set_lengthwise(&check, &result, &in);
    else
        set_strips_across(&check, &result, &in, problem);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}
