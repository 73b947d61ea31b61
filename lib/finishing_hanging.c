/* finishing_hanging.c - what hangs on the back: sleeve, label, corner triangles.
 *
 * SPDX-License-Identifier: MIT */
#include "finishing_inside.h"

static const struct muslin_hanging_spec hanging_start = MUSLIN_HANGING_SPEC_INIT;

muslin_status muslin_hanging_spec_init(struct muslin_hanging_spec *spec, uint32_t size)
{
    return msl_init_struct(spec, size, &hanging_start, (uint32_t)sizeof hanging_start,
                           (uint32_t)sizeof hanging_start);
}

/* What the insets and the gap between two sleeves take off the quilt's width. */
static muslin_len bare_width(const struct muslin_hanging_spec *spec)
{
    return 2 * spec->inset + (spec->sleeves - 1) * spec->gap;
}

/* A sleeve needs a drop, and a tick of length at least. */
static void want_sleeves(struct msl_check *check, const struct muslin_hanging_spec *spec)
{
    msl_want_between(check, MUSLIN_ARG_SLEEVES, spec->sleeves, 0, 2);
    msl_want_size(check, MUSLIN_ARG_INSET, spec->inset);
    msl_want_size(check, MUSLIN_ARG_INSET, spec->gap);
    msl_want_size(check, MUSLIN_ARG_EXTRA, spec->ease);
    msl_want_size(check, MUSLIN_ARG_TURN_UNDER, spec->hem);
    msl_want_between(check, MUSLIN_ARG_SLEEVE_DROP, spec->drop, spec->sleeves == 0 ? 0 : 1, MUSLIN_SIZE_MAX);
    if (check->status != MUSLIN_OK || spec->sleeves == 0)
        return;
    msl_want_between(check, MUSLIN_ARG_QUILT_WIDTH, spec->quilt_width, bare_width(spec) + spec->sleeves,
                     MUSLIN_SIZE_MAX);
}

static void want_label(struct msl_check *check, const struct muslin_hanging_spec *spec)
{
    msl_want_size(check, MUSLIN_ARG_LABEL, spec->label_width);
    msl_want_between(check, MUSLIN_ARG_LABEL, spec->label_height, spec->label_width == 0 ? 0 : 1, MUSLIN_SIZE_MAX);
}

static void want_hanging_spec(struct msl_check *check, const struct muslin_hanging_spec *spec)
{
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->quilt_width);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    want_sleeves(check, spec);
    want_label(check, spec);
    msl_want_size(check, MUSLIN_ARG_CORNER_TRIANGLE, spec->corner_triangle);
    msl_want_between(check, MUSLIN_ARG_CORNERS, spec->corners, 0, 4);
}

static void plan_sleeves(const struct muslin_hanging_spec *spec, struct muslin_hanging *hanging)
{
    hanging->sleeves = spec->sleeves;
    hanging->sleeve_finished = (spec->quilt_width - bare_width(spec)) / spec->sleeves;
    hanging->sleeve_cut_length = hanging->sleeve_finished + 2 * spec->hem;
    hanging->sleeve_cut_width = 2 * spec->drop + spec->ease + 2 * spec->allowance;
}

static void plan_label(const struct muslin_hanging_spec *spec, struct muslin_hanging *hanging)
{
    hanging->label_cut_width = spec->label_width + 2 * spec->allowance;
    hanging->label_cut_height = spec->label_height + 2 * spec->allowance;
}

/* The square's two raw sides meet in the quilt's corner. Sewn s inside them, the seams bound a triangle whose short
 * sides are 2 s shorter than the square: s goes into the other seam at the corner, and s at the tip, because the fold
 * runs at 45 degrees. Geometry. */
static void plan_corners(const struct muslin_hanging_spec *spec, struct muslin_hanging *hanging)
{
    hanging->corner_squares = spec->corners;
    hanging->corner_square_cut = spec->corner_triangle + 2 * spec->allowance;
}

muslin_status muslin_hanging_plan(const struct muslin_hanging_spec *spec, struct muslin_hanging *out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_hanging_spec asked = { 0 };
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &asked, (uint32_t)sizeof asked, (uint32_t)sizeof asked, 0, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    want_hanging_spec(&check, &asked);
    if (check.status != MUSLIN_OK)
        return check.status;

    struct muslin_hanging hanging = { 0 };
    if (asked.sleeves != 0)
        plan_sleeves(&asked, &hanging);
    if (asked.label_width != 0)
        plan_label(&asked, &hanging);
    if (asked.corners != 0 && asked.corner_triangle != 0)
        plan_corners(&asked, &hanging);
    msl_write_struct(out, &hanging, (uint32_t)sizeof hanging);
    return MUSLIN_OK;
}
