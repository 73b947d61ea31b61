/* finishing_binding.c - binding: its cut width, its length, its strips.
 *
 * SPDX-License-Identifier: MIT */
#include "finishing_inside.h"

static const struct muslin_binding_width_spec width_start = MUSLIN_BINDING_WIDTH_SPEC_INIT;
static const struct muslin_binding_spec binding_start = MUSLIN_BINDING_SPEC_INIT;

/* ---- the width ------------------------------------------------------------------------------------------------- */

muslin_status muslin_binding_width_spec_init(struct muslin_binding_width_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &width_start, (uint32_t)sizeof width_start, (uint32_t)sizeof width_start);
}

static void want_width_spec(struct msl_check *check, const struct muslin_binding_width_spec *spec)
{
    msl_want_choice(check, MUSLIN_ARG_FOLD, spec->fold, MUSLIN_FOLD_DOUBLE, MUSLIN_FOLD_SINGLE);
    msl_want_pad(check, spec->pad);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_size(check, MUSLIN_ARG_BINDING_FRONT, spec->front);
    msl_want_size(check, MUSLIN_ARG_THICKNESS, spec->thickness);
    msl_want_size(check, MUSLIN_ARG_BINDING_BACK, spec->back);
    msl_want_size(check, MUSLIN_ARG_TURN_UNDER, spec->turn_under);
    msl_want_size(check, MUSLIN_ARG_BINDING_CUT, spec->binding_cut);
    msl_want_size(check, MUSLIN_ARG_TOLERANCE, spec->uneven_limit);
}

/* Twice the cut width that a binding takes up before it shows anything on the back: doubled, so that half a tick of
 * a double fold stays whole. */
static muslin_len doubled_before_back(const struct muslin_binding_width_spec *spec)
{
    muslin_len layer = 2 * (spec->allowance + spec->front + spec->thickness);
    return spec->fold == MUSLIN_FOLD_DOUBLE ? layer : layer + 2 * spec->turn_under;
}

/* Twice what a strip of this cut width shows on the back. A double fold shares the cut width between two layers. */
static muslin_len doubled_back(const struct muslin_binding_width_spec *spec, muslin_len cut)
{
    return (spec->fold == MUSLIN_FOLD_DOUBLE ? cut : 2 * cut) - doubled_before_back(spec);
}

static muslin_len cut_for_back(const struct muslin_binding_width_spec *spec)
{
    muslin_len doubled = doubled_before_back(spec) + 2 * spec->back;
    return spec->fold == MUSLIN_FOLD_DOUBLE ? doubled : doubled / 2;
}

static muslin_len half_down(muslin_len doubled)
{
    return (doubled - (doubled < 0)) / 2;
}

static uint32_t width_warnings(muslin_len doubled_beyond_front, muslin_len uneven_limit)
{
    uint32_t warnings = 0;
    if (doubled_beyond_front > 2 * uneven_limit || doubled_beyond_front < -2 * uneven_limit)
        warnings |= MUSLIN_WARN_BINDING_UNEVEN;
    if (doubled_beyond_front < 0)
        warnings |= MUSLIN_WARN_BACK_TOO_NARROW;
    return warnings;
}

muslin_status muslin_binding_measure(const struct muslin_binding_width_spec *spec, struct muslin_binding_width *out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_binding_width_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_width_spec(&check, &asked);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_binding_width width = { 0 };
    width.cut_width = asked.binding_cut != 0 ? asked.binding_cut : cut_for_back(&asked);
    muslin_len doubled = doubled_back(&asked, width.cut_width);
    width.back = half_down(doubled);
    width.folded = asked.fold == MUSLIN_FOLD_DOUBLE ? msl_divided_up(width.cut_width, 2) : width.cut_width;
    width.warnings = width_warnings(doubled - 2 * asked.front, asked.uneven_limit);
    msl_write_struct(out, &width, (uint32_t)sizeof width);
    return MUSLIN_OK;
}

/* ---- the length ------------------------------------------------------------------------------------------------ */

muslin_status muslin_binding_spec_init(struct muslin_binding_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &binding_start, (uint32_t)sizeof binding_start,
                           (uint32_t)sizeof binding_start);
}

static void want_outline(struct msl_check *check, const struct muslin_binding_spec *spec)
{
    msl_want_between(check, MUSLIN_ARG_PERIMETER, spec->perimeter, 0, 4 * MUSLIN_SIZE_MAX);
    if (spec->perimeter != 0)
        return;
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->quilt_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->quilt_length);
}

/* The run looks at allowance and join. */
static void want_binding_spec(struct msl_check *check, const struct muslin_binding_spec *spec)
{
    want_outline(check, spec);
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->extra);
    msl_want_count(check, MUSLIN_ARG_CORNERS, spec->corners);
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->corner_extra);
    msl_want_some_size(check, MUSLIN_ARG_BINDING_CUT, spec->binding_cut);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_LENGTH, spec->strip_length);
    msl_want_some_size(check, MUSLIN_ARG_STEP, spec->step);
    msl_want_count(check, MUSLIN_ARG_SPARE, spec->spare_strips);
    msl_want_pad(check, spec->pad);
}

static muslin_len perimeter_of(const struct muslin_binding_spec *spec)
{
    return spec->perimeter != 0 ? spec->perimeter : 2 * (spec->quilt_width + spec->quilt_length);
}

static struct muslin_run_spec run_for(const struct muslin_binding_spec *spec, muslin_len length)
{
    struct muslin_run_spec run = MUSLIN_RUN_SPEC_INIT;
    run.length = length;
    run.strip_length = spec->strip_length;
    run.strip_cut = spec->binding_cut;
    run.allowance = spec->allowance;
    run.join = spec->join;
    return run;
}

static void take_run(struct muslin_binding *binding, const struct muslin_run *run)
{
    binding->strips_needed = run->strips;
    binding->joins = run->joins;
    binding->loss_per_join = run->loss_per_join;
    binding->joined = run->joined;
    binding->spare = run->spare;
    binding->narrower_by = run->narrower_by;
    binding->warnings = (uint32_t)run->warnings;
}

muslin_status muslin_binding_plan(const struct muslin_binding_spec *spec, struct muslin_binding *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_binding_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_binding_spec(&check, &asked);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_binding binding = { 0 };
    binding.perimeter = perimeter_of(&asked);
    binding.length = binding.perimeter + asked.corners * asked.corner_extra + asked.extra;
    struct muslin_run_spec wanted = run_for(&asked, binding.length);
    struct muslin_run run = { .size = (uint32_t)sizeof run };
    muslin_status status = muslin_run_plan(&wanted, &run, problem);
    if (status != MUSLIN_OK)
        return status;
    take_run(&binding, &run);
    /* A run has at most MUSLIN_COUNT_MAX strips, so that twice as many, 2^30 wide each, are within a length. */
    binding.strips = binding.strips_needed + asked.spare_strips;
    binding.cloth_length = binding.strips * asked.binding_cut;
    binding.bought = msl_up_to_step(binding.cloth_length, asked.step);
    msl_write_struct(out, &binding, (uint32_t)sizeof binding);
    return MUSLIN_OK;
}
