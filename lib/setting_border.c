/* setting_border.c - one border round a top: its pieces, its strips, and the size it leaves.
 *
 * SPDX-License-Identifier: MIT */
#include "setting_run.h"

enum { PIECES = 4 };

muslin_status muslin_border_spec_init(struct muslin_border_spec *spec, uint32_t size)
{
    const struct muslin_border_spec initial = MUSLIN_BORDER_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

static muslin_len seam_of(const struct muslin_border_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* A top must be at least as wide as the seams that will take its raw edges. */
static void want_room(struct msl_check *check, int32_t argument, muslin_len side, muslin_len seam)
{
    if (side < seam)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, argument, side, seam);
}

static void read_border(struct msl_check *check, struct muslin_border_spec *spec, const struct muslin_border_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_BORDER_LENGTHWISE, from);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_WIDTH, spec->unfinished_width);
    msl_want_some_size(check, MUSLIN_ARG_QUILT_LENGTH, spec->unfinished_length);
    msl_want_some_size(check, MUSLIN_ARG_BORDER_WIDTH, spec->finished_border);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    msl_want_size(check, MUSLIN_ARG_MITRE_EXTRA, spec->mitre_extra);
    msl_want_choice(check, MUSLIN_ARG_BORDER_STYLE, spec->style, MUSLIN_BORDER_STYLE_SIDES_FIRST,
                    MUSLIN_BORDER_STYLE_MITRED);
    msl_want_choice(check, MUSLIN_ARG_JOIN, spec->join, MUSLIN_JOIN_BUTTED, MUSLIN_JOIN_BIAS_ENDS);
    if (check->status != MUSLIN_OK)
        return;
    want_room(check, MUSLIN_ARG_QUILT_WIDTH, spec->unfinished_width, seam_of(spec));
    want_room(check, MUSLIN_ARG_QUILT_LENGTH, spec->unfinished_length, seam_of(spec));
}

/* ---- sizes ------------------------------------------------------------------------------------------------------- */

/* What a mitred piece needs beyond the raw edge it is sewn to: the border's finished width at both ends, and beside
 * each 45 degree seam its allowance, sqrt 2 s along the piece. The allowances of edge and border cancel out. */
static muslin_len mitre_beyond_edge(const struct muslin_border_spec *spec)
{
    return 2 * spec->finished_border + msl_diagonal_allowances(spec->allowance) + spec->mitre_extra;
}

static void find_lengths(struct muslin_border *border, const struct muslin_border_spec *spec)
{
    border->side_cut_length = spec->unfinished_length;
    border->top_cut_length = spec->unfinished_width;
    switch (spec->style) {
    case MUSLIN_BORDER_STYLE_SIDES_FIRST:
        border->top_cut_length += 2 * spec->finished_border;
        break;
    case MUSLIN_BORDER_STYLE_TOP_FIRST:
        border->side_cut_length += 2 * spec->finished_border;
        break;
    case MUSLIN_BORDER_STYLE_CORNERSTONES:
        border->cornerstone_cut = border->cut_width;
        break;
    default:
        border->side_cut_length += mitre_beyond_edge(spec);
        border->top_cut_length += mitre_beyond_edge(spec);
    }
    border->total_length = 2 * border->side_cut_length + 2 * border->top_cut_length;
}

static void find_sizes(struct muslin_border *border, const struct muslin_border_spec *spec)
{
    border->cut_width = spec->finished_border + seam_of(spec);
    border->unfinished_width = spec->unfinished_width + 2 * spec->finished_border;
    border->unfinished_length = spec->unfinished_length + 2 * spec->finished_border;
    border->finished_width = border->unfinished_width - seam_of(spec);
    border->finished_length = border->unfinished_length - seam_of(spec);
}

/* ---- cloth ------------------------------------------------------------------------------------------------------- */

static int is_diagonal(int32_t join)
{
    return join == MUSLIN_JOIN_DIAGONAL || join == MUSLIN_JOIN_BIAS_ENDS;
}

/* Strips across the width, joined in one run from which the four pieces are cut. */
static void cut_across(struct msl_check *check, struct muslin_border *border, const struct muslin_border_spec *spec)
{
    struct muslin_run_spec wanted = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run run = { 0 };
    wanted.length = border->total_length;
    wanted.strip_length = spec->usable_width;
    wanted.strip_cut = border->cut_width;
    wanted.allowance = spec->allowance;
    wanted.join = spec->join;
    msl_run(check, MUSLIN_ARG_USABLE_WIDTH, &wanted, &run);
    border->strips = run.strips;
    border->joins = run.joins;
    border->loss_per_join = run.loss_per_join;
    border->cloth_length = run.cloth_length;
    border->spare = run.spare;
    border->warnings = (uint32_t)run.warnings;
    if (run.joins > 0 && is_diagonal(spec->join))
        border->warnings |= MUSLIN_WARN_DIAGONAL_STRETCH;
}

/* Whole pieces, the longer pair first, in panels of so many side by side: each panel is as long as its first piece. */
static muslin_len panels_length(muslin_len longer, muslin_len shorter, int64_t side_by_side)
{
    muslin_len length = 0;
    for (int64_t piece = 0; piece < PIECES; piece += side_by_side)
        length += piece < 2 ? longer : shorter;
    return length;
}

static void cut_along(struct msl_check *check, struct muslin_border *border, const struct muslin_border_spec *spec)
{
    muslin_len side = border->side_cut_length;
    muslin_len top = border->top_cut_length;
    int64_t side_by_side = spec->usable_width / border->cut_width;
    if (side_by_side == 0) {
        msl_fail(check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width, border->cut_width);
        return;
    }
    border->strips = side_by_side < PIECES ? side_by_side : PIECES;
    border->cloth_length = panels_length(side > top ? side : top, side > top ? top : side, border->strips);
    border->spare = spec->usable_width - border->strips * border->cut_width;
    border->warnings = border->spare == 0 ? MUSLIN_WARN_NO_SLACK : 0;
}

muslin_status muslin_border_plan(const struct muslin_border_spec *spec, struct muslin_border *out,
                                 struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_border_spec s = { 0 };
    struct muslin_border border = { 0 };
    read_border(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_sizes(&border, &s);
    find_lengths(&border, &s);
    if ((s.flags & MUSLIN_BORDER_LENGTHWISE) != 0)
        cut_along(&check, &border, &s);
    else
        cut_across(&check, &border, &s);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &border, (uint32_t)sizeof border);
    return check.status;
}
