/* rounds_repeat.c - pieced borders: repeats that must divide a side, and squares on point.
 *
 * SPDX-License-Identifier: MIT */
#include "rounds_inside.h"

/* ---- a side ------------------------------------------------------------------------------------------------------ */

muslin_status muslin_repeat_spec_init(struct muslin_repeat_spec *spec, uint32_t size)
{
    const struct muslin_repeat_spec initial = MUSLIN_REPEAT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_repeat(struct msl_check *check, struct muslin_repeat_spec *spec,
                        const struct muslin_repeat_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_FINISHED, spec->side_finished);
    msl_want_some_size(check, MUSLIN_ARG_UNIT_REPEAT, spec->repeat_finished);
    msl_want_count(check, MUSLIN_ARG_SPACERS, spec->spacers);
    msl_want_size(check, MUSLIN_ARG_SPACER_LEAST, spec->spacer_least);
    msl_want_seams(check, spec->allowance, spec->take_up);
    if (check->status != MUSLIN_OK)
        return;
    if (spec->spacers * spec->spacer_least > spec->side_finished)
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_FINISHED, spec->side_finished,
                 spec->spacers * spec->spacer_least);
}

/* The whole numbers of units on both sides of the run, and the repeats that would come out. */
static void find_neighbours(struct muslin_repeat *found, const struct muslin_repeat_spec *s,
                            const struct muslin_rounding_spec *how)
{
    found->units_below = s->side_finished / s->repeat_finished;
    found->rest_below = s->side_finished % s->repeat_finished;
    found->divides = found->rest_below == 0;
    found->units_above = found->units_below + !found->divides;
    found->over_above = found->units_above * s->repeat_finished - s->side_finished;
    found->units_nearest = found->over_above <= found->rest_below ? found->units_above : found->units_below;
    found->repeat_above = msl_divide_once(s->side_finished, found->units_above, how, &found->repeat_above_error);
    found->above_left_over = s->side_finished - found->units_above * found->repeat_above;
    if (found->units_below == 0)
        return;
    found->repeat_below = msl_divide_once(s->side_finished, found->units_below, how, &found->repeat_below_error);
    found->below_left_over = s->side_finished - found->units_below * found->repeat_below;
}

static void find_spacers(struct muslin_repeat *found, const struct muslin_repeat_spec *s,
                         const struct muslin_rounding_spec *how)
{
    muslin_len error;
    muslin_len taken = msl_taken(s->allowance, s->take_up);
    found->unit_unfinished = s->repeat_finished + taken;
    found->units = (s->side_finished - s->spacers * s->spacer_least) / s->repeat_finished;
    found->shared = s->side_finished - found->units * s->repeat_finished;
    found->left_over = found->shared;
    if (s->spacers == 0)
        return;
    found->spacer_finished = msl_divide_once(found->shared, s->spacers, how, &error);
    found->spacer_cut = found->spacer_finished + taken;
    found->left_over -= s->spacers * found->spacer_finished;
}

muslin_status muslin_repeat_plan(const struct muslin_repeat_spec *spec, const struct muslin_rounding_spec *rounding,
                                 struct muslin_repeat *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_repeat_spec s = { 0 };
    struct muslin_rounding_spec how = { 0 };
    struct muslin_repeat found = { 0 };
    read_repeat(&check, &s, spec);
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_neighbours(&found, &s, &how);
    find_spacers(&found, &s, &how);
    msl_write_struct(out, &found, (uint32_t)sizeof found);
    return MUSLIN_OK;
}

/* ---- both sides -------------------------------------------------------------------------------------------------- */

muslin_status muslin_repeat_common(muslin_len width, muslin_len height, muslin_len least, muslin_len most,
                                   const struct muslin_rounding_spec *rounding, struct muslin_common_repeat *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec how = { 0 };
    struct muslin_common_repeat found = { 0 };
    msl_want_some_size(&check, MUSLIN_ARG_QUILT_WIDTH, width);
    msl_want_some_size(&check, MUSLIN_ARG_QUILT_LENGTH, height);
    msl_want_size(&check, MUSLIN_ARG_UNIT_REPEAT, least);
    check.at = 1;
    msl_want_between(&check, MUSLIN_ARG_UNIT_REPEAT, most, msl_greater(least, 1), MUSLIN_SIZE_MAX);
    check.at = 0;
    msl_read_rounding(&check, &how, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    found.common = msl_common_divisor(width, height);
    found.parts = (found.common - 1) / most + 1;
    if (found.common < found.parts * least)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_UNIT_REPEAT, most, 0);
    found.repeat = msl_divide_once(found.common, found.parts, &how, &found.repeat_error);
    found.across = width / found.common * found.parts;
    found.down = height / found.common * found.parts;
    msl_write_struct(out, &found, (uint32_t)sizeof found);
    return MUSLIN_OK;
}
