/* rounds.c - what grows from the middle outwards: what its files share, and log cabins backwards.
 *
 * SPDX-License-Identifier: MIT */
#include "rounds_inside.h"

void msl_want_seams(struct msl_check *check, muslin_len allowance, muslin_len take_up)
{
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, take_up);
}

muslin_len msl_round_once(const struct msl_surd *exact, const struct muslin_rounding_spec *how, muslin_len *error)
{
    struct muslin_rounded rounded = { 0 };
    msl_surd_round(exact, how, &rounded);
    *error = rounded.error;
    return rounded.value;
}

muslin_len msl_divide_once(muslin_len whole, int64_t divisor, const struct muslin_rounding_spec *how,
                           muslin_len *error)
{
    struct muslin_rounded rounded = { 0 };
    (void)msl_wide_round(msl_wide_from(whole), divisor, how, &rounded);
    *error = rounded.error;
    return rounded.value;
}

/* ---- log cabins, backwards --------------------------------------------------------------------------------------- */

muslin_status muslin_logcabin_fit_spec_init(struct muslin_logcabin_fit_spec *spec, uint32_t size)
{
    const struct muslin_logcabin_fit_spec initial = MUSLIN_LOGCABIN_FIT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* What the two directions do not share is checked by each. */
static void read_fit(struct msl_check *check, struct muslin_logcabin_fit_spec *spec,
                     const struct muslin_logcabin_fit_spec *from, int64_t least_rounds, muslin_len least_log)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_FINISHED, spec->wanted);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_WIDTH, spec->centre);
    msl_want_between(check, MUSLIN_ARG_ROUNDS, spec->rounds, least_rounds, MUSLIN_ROUNDS_MAX);
    msl_want_between(check, MUSLIN_ARG_LOG_WIDTH, spec->log_finished, least_log, MUSLIN_SIZE_MAX);
    msl_want_seams(check, spec->allowance, spec->take_up);
    msl_want_choice(check, MUSLIN_ARG_LOG_ORDER, spec->order, MUSLIN_LOG_ORDER_ROUND, MUSLIN_LOG_ORDER_QUARTER);
    msl_want_pad(check, spec->pad);
    if (check->status == MUSLIN_OK)
        msl_want_between(check, MUSLIN_ARG_CENTRE_WIDTH, spec->centre, 1, spec->wanted - 1);
}

static int64_t logs_a_round(const struct muslin_logcabin_fit_spec *spec)
{
    return spec->order == MUSLIN_LOG_ORDER_QUARTER ? 1 : 2;
}

/* Rounds and log are known. */
static void find_block(struct muslin_logcabin_fit *fit, const struct muslin_logcabin_fit_spec *spec)
{
    fit->logs_across = fit->rounds * logs_a_round(spec);
    fit->log_cut = fit->log_finished + msl_taken(spec->allowance, spec->take_up);
    fit->block_finished = spec->centre + fit->logs_across * fit->log_finished;
    fit->rest = spec->wanted - fit->block_finished;
    fit->centre_to_fit = spec->centre + fit->rest;
    fit->next_finished = fit->block_finished + logs_a_round(spec) * fit->log_finished;
}

muslin_status muslin_logcabin_log_for(const struct muslin_logcabin_fit_spec *spec,
                                      const struct muslin_rounding_spec *rounding, struct muslin_logcabin_fit *out,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_logcabin_fit_spec s = { 0 };
    struct muslin_rounding_spec how = { 0 };
    struct muslin_logcabin_fit fit = { 0 };
    muslin_len error;
    read_fit(&check, &s, spec, 1, 0);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    fit.rounds = s.rounds;
    fit.exact_numerator = s.wanted - s.centre;
    fit.exact_denominator = s.rounds * logs_a_round(&s);
    fit.log_finished = msl_divide_once(fit.exact_numerator, fit.exact_denominator, &how, &error);
    if (fit.log_finished <= 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_LOG_WIDTH, fit.log_finished, 1);
    find_block(&fit, &s);
    msl_write_struct(out, &fit, (uint32_t)sizeof fit);
    return MUSLIN_OK;
}

muslin_status muslin_logcabin_rounds_for(const struct muslin_logcabin_fit_spec *spec, struct muslin_logcabin_fit *out,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_logcabin_fit_spec s = { 0 };
    struct muslin_logcabin_fit fit = { 0 };
    read_fit(&check, &s, spec, 0, 1);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    fit.log_finished = s.log_finished;
    fit.rounds = (s.wanted - s.centre) / (logs_a_round(&s) * s.log_finished);
    find_block(&fit, &s);
    msl_write_struct(out, &fit, (uint32_t)sizeof fit);
    return MUSLIN_OK;
}
