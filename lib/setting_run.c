/* setting_run.c - strips joined end to end into one run.
 *
 * SPDX-License-Identifier: MIT */
#include "setting_run.h"

#include "root.h"

/* ---- what a join takes ------------------------------------------------------------------------------------------- */

/* sqrt(8 s s), below 2^62 under the root. */
muslin_len msl_diagonal_allowances(muslin_len allowance)
{
    uint64_t rest = 0;
    uint64_t root = msl_root(8 * (uint64_t)allowance * (uint64_t)allowance, &rest);
    return (muslin_len)root + (rest != 0);
}

static muslin_len loss_of(int32_t join, muslin_len strip_cut, muslin_len allowance)
{
    switch (join) {
    case MUSLIN_JOIN_STRAIGHT:
        return 2 * allowance;
    case MUSLIN_JOIN_DIAGONAL:
        return strip_cut;
    case MUSLIN_JOIN_BIAS_ENDS:
        return msl_diagonal_allowances(allowance);
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
    if (check.status == MUSLIN_OK)
        *out = loss_of(join, strip_cut, allowance);
    return check.status;
}

/* ---- the run ----------------------------------------------------------------------------------------------------- */

muslin_status muslin_run_spec_init(struct muslin_run_spec *spec, uint32_t size)
{
    const struct muslin_run_spec initial = MUSLIN_RUN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The least n >= 1 with n L - (n - 1) loss >= length: the first strip gives L, each further one L - loss more. One
 * strip, if it is enough, needs no join, however much a join would lose; if it is not, loss must be below L. */
/*@ requires 1 <= length <= 2305843009213693951 && 0 <= strip <= 1073741824 && 0 <= loss <= 2147483648;
    requires length <= strip || loss < strip;
    assigns \nothing;
    ensures 1 <= \result <= length;
    ensures \result * strip - (\result - 1) * loss >= length;
    ensures \result > 1 ==> (\result - 1) * strip - (\result - 2) * loss < length; */
static int64_t strips_for(muslin_len length, muslin_len strip, muslin_len loss)
{
    if (length <= strip)
        return 1;
    return (length - strip - 1) / (strip - loss) + 2;
}

/* The spare is shared out among the strips: each may be floor(spare / n) shorter. */
void msl_run(struct msl_check *check, int32_t argument, const struct muslin_run_spec *spec, struct muslin_run *run)
{
    muslin_len loss = loss_of(spec->join, spec->strip_cut, spec->allowance);
    run->loss_per_join = loss;
    if (spec->length == 0)
        return;
    if (spec->length > spec->strip_length && spec->strip_length <= loss) {
        msl_fail(check, MUSLIN_ERR_NO_YIELD, argument, spec->strip_length, loss + 1);
        return;
    }
    run->strips = strips_for(spec->length, spec->strip_length, loss);
    if (run->strips > MUSLIN_COUNT_MAX) {
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_STRIPS, run->strips, MUSLIN_COUNT_MAX);
        return;
    }
    run->joins = run->strips - 1;
    run->joined = spec->strip_length + run->joins * (spec->strip_length - loss);
    run->spare = run->joined - spec->length;
    run->cloth_length = run->strips * spec->strip_cut;
    run->narrower_by = run->spare / run->strips;
    run->warnings = run->spare == 0 ? MUSLIN_WARN_NO_SLACK : 0;
}

static void read_run(struct msl_check *check, struct muslin_run_spec *spec, const struct muslin_run_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_between(check, MUSLIN_ARG_LENGTH, spec->length, 0, MUSLIN_LENGTH_MAX / 2);
    msl_want_size(check, MUSLIN_ARG_STRIP_LENGTH, spec->strip_length);
    msl_want_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_choice(check, MUSLIN_ARG_JOIN, spec->join, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
    msl_want_pad(check, spec->pad);
}

muslin_status muslin_run_plan(const struct muslin_run_spec *spec, struct muslin_run *out,
                              struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_run_spec s = { 0 };
    struct muslin_run run = { 0 };
    read_run(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status == MUSLIN_OK)
        msl_run(&check, MUSLIN_ARG_STRIP_LENGTH, &s, &run);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &run, (uint32_t)sizeof run);
    return check.status;
}
