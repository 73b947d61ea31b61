/* setting_run.c - strips joined end to end into one run.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/setting.h"

#include "root.h"

/* Pieces laid at right angles and sewn corner to corner lose the strip's width (public handouts); ends already at 45
 * degrees lose s sqrt 2 on each side of the seam: 2 sqrt 2 s = sqrt(8 s s) (geometry). */
static muslin_len loss_of(int32_t join, muslin_len strip_cut, muslin_len allowance)
{
    const struct muslin_rounding_spec up = { (uint32_t)sizeof up, 0, 1, 0, MUSLIN_ROUND_UP, 0 };
    struct muslin_rounded diagonal = { 0 };
    switch (join) {
    case MUSLIN_JOIN_STRAIGHT:
        return 2 * allowance;
    case MUSLIN_JOIN_DIAGONAL:
        return strip_cut;
    case MUSLIN_JOIN_BIAS_ENDS:
        msl_root_round(8 * (uint64_t)allowance * (uint64_t)allowance, 1, 0, &up, &diagonal);
        return diagonal.value;
    default:
        return 0;
    }
}

muslin_status muslin_join_loss(int32_t join, muslin_len strip_cut, muslin_len allowance, muslin_len *out,
                               struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_choice(&check, MUSLIN_ARG_JOIN, join, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
    msl_want_size(&check, MUSLIN_ARG_STRIP_CUT, strip_cut);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, allowance);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    *out = loss_of(join, strip_cut, allowance);
    return MUSLIN_OK;
}

muslin_status muslin_run_spec_init(struct muslin_run_spec *spec, uint32_t size)
{
    const struct muslin_run_spec initial = MUSLIN_RUN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The least n >= 1 with n L - (n - 1) loss >= length, that is n >= (length - loss) / (L - loss). One strip, if it is
 * enough, needs no join, however much a join would lose. */
static int64_t strips_for(muslin_len length, muslin_len strip, muslin_len loss)
{
    if (length <= strip)
        return 1;
    return (length - loss + (strip - loss) - 1) / (strip - loss);
}

/* The spare is shared out among the strips: each may be narrower_by = floor(spare / n) shorter. */
static struct muslin_run run_of(struct msl_check *check, const struct muslin_run_spec *in)
{
    struct muslin_run result = { 0 };
    result.loss_per_join = loss_of(in->join, in->strip_cut, in->allowance);
    if (in->length == 0)
        return result;
    if (in->length > in->strip_length && result.loss_per_join >= in->strip_length) {
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_STRIP_LENGTH, in->strip_length, result.loss_per_join + 1);
        return result;
    }
    result.strips = strips_for(in->length, in->strip_length, result.loss_per_join);
    if (result.strips > MUSLIN_COUNT_MAX) {
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_STRIPS, result.strips, MUSLIN_COUNT_MAX);
        return result;
    }
    result.joins = result.strips - 1;
    result.joined = result.strips * in->strip_length - result.joins * result.loss_per_join;
    result.spare = result.joined - in->length;
    result.cloth_length = result.strips * in->strip_cut;
    result.narrower_by = result.spare / result.strips;
    result.warnings = result.spare == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return result;
}

muslin_status muslin_run_plan(const struct muslin_run_spec *spec, struct muslin_run *out,
                              struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_run_spec in;
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_between(&check, MUSLIN_ARG_LENGTH, in.length, 0, MUSLIN_LENGTH_MAX / 2);
    msl_want_some_size(&check, MUSLIN_ARG_STRIP_LENGTH, in.strip_length);
    msl_want_size(&check, MUSLIN_ARG_STRIP_CUT, in.strip_cut);
    msl_want_seam(&check, MUSLIN_ARG_SEAM_ALLOWANCE, in.allowance);
    msl_want_choice(&check, MUSLIN_ARG_JOIN, in.join, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
    msl_want_pad(&check, in.pad);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_run result = run_of(&check, &in);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &result, (uint32_t)sizeof result);
    return MUSLIN_OK;
}
