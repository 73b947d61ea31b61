/* motif.c - pieces that need a window on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT
 *
 * After the checks a size is at most 2^30 and a count below 2^31. A size rounded up to whole repeats is below 2^31,
 * and so every product of two of them, or of one and a count, stays within MUSLIN_LENGTH_MAX. */
#include "muslin/motif.h"

#include "inside.h"

/* ---- windows -----------------------------------------------------------------------------------------------------
 * */

muslin_status muslin_motif_spec_init(struct muslin_motif_spec *spec, uint32_t size)
{
    const struct muslin_motif_spec initial = MUSLIN_MOTIF_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_motif(struct msl_check *check, struct muslin_motif_spec *spec, const struct muslin_motif_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_MOTIF_ANY_START | MUSLIN_MOTIF_ANY_ACROSS, from);
    msl_want_some_size(check, MUSLIN_ARG_REPEAT, spec->repeat_length);
    msl_want_some_size(check, MUSLIN_ARG_CUT, spec->cut_width);
    check->at = 1;
    msl_want_size(check, MUSLIN_ARG_REPEAT, spec->repeat_width);
    msl_want_some_size(check, MUSLIN_ARG_CUT, spec->cut_length);
    check->at = 0;
    msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    msl_want_some_count(check, MUSLIN_ARG_MOTIFS, spec->motifs);
    msl_want_count(check, MUSLIN_ARG_PIECES, spec->pieces);
}

static int is_any_start(const struct muslin_motif_spec *spec)
{
    return (spec->flags & MUSLIN_MOTIF_ANY_START) != 0;
}

static int is_any_across(const struct muslin_motif_spec *spec)
{
    return (spec->flags & (MUSLIN_MOTIF_ANY_START | MUSLIN_MOTIF_ANY_ACROSS)) != 0;
}

/* How windows lie from selvage to selvage. The first column takes `first` of the width, each further one `step`. */
struct across {
    int64_t repeats; /* that one window takes */
    muslin_len step;
    muslin_len first;
    int64_t columns;
};

/* Windows side by side when the first begins at `first_ends` less a window, each further one a step behind. */
static int64_t columns_from(const struct muslin_motif_spec *spec, muslin_len first_ends, muslin_len step)
{
    return spec->usable_width < first_ends ? 0 : 1 + (spec->usable_width - first_ends) / step;
}

/* Where the print may begin anywhere, the first window begins up to a repeat from the selvage. */
static struct across across_of(const struct muslin_motif_spec *spec)
{
    struct across across = { 1, spec->usable_width, spec->cut_width, 0 };
    if (spec->repeat_width == 0) {
        across.columns = spec->usable_width >= spec->cut_width;
        return across;
    }
    across.repeats = msl_divided_up(spec->cut_width, spec->repeat_width);
    across.step = across.repeats * spec->repeat_width;
    across.first = is_any_across(spec) ? spec->repeat_width + spec->cut_width : across.step;
    across.columns = columns_from(spec, across.first, across.step);
    return across;
}

/* As large as the windows are together, so large must be the print they are cut from. */
static void want_room(struct msl_check *check, const struct muslin_motif_spec *spec, const struct across *across,
                      muslin_len row_length)
{
    int64_t print = across->step * row_length;
    int64_t window = spec->cut_width * spec->cut_length;
    if (across->columns == 0)
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width, across->first);
    msl_want_between(check, MUSLIN_ARG_MOTIFS, spec->motifs, 1, print / window);
}

/* The least and the most that a row gives, wherever the print begins across. Where the width is one repeat, it is said
 * how many are seen. */
static void find_chances(struct muslin_motif *motif, const struct muslin_motif_spec *spec,
                         const struct across *across)
{
    motif->per_row_certain = motif->per_row;
    motif->per_row_lucky = motif->per_row;
    if (spec->repeat_width == 0)
        return;
    int64_t lucky = columns_from(spec, spec->cut_width, across->step);
    motif->per_row_certain = columns_from(spec, spec->repeat_width + spec->cut_width, across->step) * spec->motifs;
    motif->per_row_lucky = lucky * spec->motifs;
    motif->lucky_within = (spec->usable_width - spec->cut_width) % across->step;
}

/* What does not depend on how many are wanted. */
static struct muslin_motif row_of(const struct muslin_motif_spec *spec, const struct across *across)
{
    struct muslin_motif motif = { 0 };
    motif.repeats_across_each = across->repeats;
    motif.repeats_along_each = msl_divided_up(spec->cut_length, spec->repeat_length);
    motif.per_row = across->columns * spec->motifs;
    motif.row_length = motif.repeats_along_each * spec->repeat_length;
    motif.waste_per_row = motif.row_length - spec->cut_length;
    return motif;
}

/* What the last row need not have. The start is shifted to where a window begins; else, and where a repeat gives
 * several windows, they may lie anywhere in it. */
static muslin_len tail_of(const struct muslin_motif_spec *spec, const struct muslin_motif *row)
{
    return is_any_start(spec) && spec->motifs == 1 ? row->waste_per_row : 0;
}

static void find_rows(struct muslin_motif *motif, const struct muslin_motif_spec *spec)
{
    motif->rows = msl_divided_up(spec->pieces, motif->per_row);
    motif->repeats = motif->rows * motif->repeats_along_each;
    motif->spare_pieces = motif->rows * motif->per_row - spec->pieces;
    if (motif->rows > 0 && is_any_start(spec))
        motif->shift = spec->repeat_length;
    motif->cloth_length = motif->rows * motif->row_length + motif->shift;
    motif->cloth_least = motif->cloth_length - (motif->rows > 0 ? tail_of(spec, motif) : 0);
    motif->repeats_bought = motif->repeats + (motif->shift != 0);
    motif->rows_lucky = msl_divided_up(spec->pieces, motif->per_row_lucky);
    motif->cloth_lucky = motif->rows_lucky * motif->row_length + motif->shift;
    if (motif->per_row_certain == 0)
        return;
    motif->rows_certain = msl_divided_up(spec->pieces, motif->per_row_certain);
    motif->cloth_certain = motif->rows_certain * motif->row_length + motif->shift;
}

/* The width in which the pieces come from so many rows. */
static muslin_len width_for(const struct muslin_motif_spec *spec, const struct across *across, int64_t rows)
{
    int64_t columns = msl_divided_up(spec->pieces, rows * spec->motifs);
    return across->first + (columns - 1) * across->step;
}

static void find_slack(struct muslin_motif *motif, const struct muslin_motif_spec *spec, const struct across *across)
{
    if (motif->rows == 0)
        return;
    if (spec->repeat_width == 0) {
        motif->warnings = spec->cut_width == spec->usable_width ? MUSLIN_WARN_NO_SLACK : 0;
        return;
    }
    motif->narrower_by = spec->usable_width - width_for(spec, across, motif->rows);
    if (motif->rows > 1) {
        muslin_len width = width_for(spec, across, motif->rows - 1);
        int64_t columns = 1 + (width - across->first) / across->step;
        motif->wider_for_less = width - spec->usable_width;
        motif->wider_rows = msl_divided_up(spec->pieces, columns * spec->motifs);
    }
    motif->warnings = motif->narrower_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
}

muslin_status muslin_motif_plan(const struct muslin_motif_spec *spec, struct muslin_motif *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_motif_spec s = { 0 };
    read_motif(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct across across = across_of(&s);
    struct muslin_motif motif = row_of(&s, &across);
    want_room(&check, &s, &across, motif.row_length);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_chances(&motif, &s, &across);
    find_rows(&motif, &s);
    find_slack(&motif, &s, &across);
    msl_write_struct(out, &motif, (uint32_t)sizeof motif);
    return MUSLIN_OK;
}

/* Rows for a length from which the shift is taken already, the last without its tail. Windows that fit are hardly more
 * than the cloth by area, so their count stays below 2^63. */
static struct muslin_motif_yield yield_of(const struct muslin_motif *row, muslin_len tail, muslin_len room)
{
    struct muslin_motif_yield yield = { 0 };
    muslin_len usable = msl_greater(room, 0);
    yield.rows = (usable + tail) / row->row_length;
    yield.repeats = yield.rows * row->repeats_along_each;
    yield.pieces = yield.rows * row->per_row;
    yield.pieces_certain = yield.rows * row->per_row_certain;
    yield.pieces_lucky = yield.rows * row->per_row_lucky;
    yield.left_over = yield.rows == 0 ? usable : (usable + tail) % row->row_length;
    yield.longer_for_one = (yield.rows + 1) * row->row_length - tail - room;
    if (yield.rows == 0)
        return yield;
    yield.shorter_by = yield.left_over;
    yield.warnings = yield.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return yield;
}

muslin_status muslin_motif_from_cloth(const struct muslin_motif_spec *spec, muslin_len cloth_length,
                                      struct muslin_motif_yield *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_motif_spec s = { 0 };
    read_motif(&check, &s, spec);
    msl_want_size(&check, MUSLIN_ARG_CLOTH_LENGTH, cloth_length);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct across across = across_of(&s);
    struct muslin_motif row = row_of(&s, &across);
    want_room(&check, &s, &across, row.row_length);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_chances(&row, &s, &across);
    muslin_len room = cloth_length - (is_any_start(&s) ? s.repeat_length : 0);
    struct muslin_motif_yield yield = yield_of(&row, tail_of(&s, &row), room);
    msl_write_struct(out, &yield, (uint32_t)sizeof yield);
    return MUSLIN_OK;
}

/* ---- identical layers --------------------------------------------------------------------------------------------
 * */

muslin_status muslin_stack_spec_init(struct muslin_stack_spec *spec, uint32_t size)
{
    const struct muslin_stack_spec initial = MUSLIN_STACK_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_stack(struct msl_check *check, struct muslin_stack_spec *spec, const struct muslin_stack_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_STACK_ANY_START, from);
    msl_want_some_size(check, MUSLIN_ARG_REPEAT, spec->repeat_length);
    msl_want_some_size(check, MUSLIN_ARG_STRIP_CUT, spec->strip_cut);
    msl_want_size(check, MUSLIN_ARG_END_LOSS, spec->straightening);
    msl_want_some_count(check, MUSLIN_ARG_STACKS_PER_STRIP, spec->per_strip);
    msl_want_some_count(check, MUSLIN_ARG_LAYERS, spec->layers);
    msl_want_count(check, MUSLIN_ARG_STACKS, spec->stacks);
}

/* One layer: whole repeats for the strips wanted, and what they give. The strips given are fewer than 2^32, so that
 * their stacks fit 64 bits. */
static struct muslin_stack layer_of(const struct muslin_stack_spec *spec)
{
    struct muslin_stack stack = { 0 };
    stack.strips = msl_divided_up(spec->stacks, spec->per_strip);
    if (stack.strips == 0)
        return stack;
    muslin_len wanted = stack.strips * spec->strip_cut + spec->straightening;
    stack.repeats_per_layer = msl_divided_up(wanted, spec->repeat_length);
    stack.layer_length = stack.repeats_per_layer * spec->repeat_length;
    stack.strips_in_layers = (stack.layer_length - spec->straightening) / spec->strip_cut;
    stack.left_over = (stack.layer_length - spec->straightening) % spec->strip_cut;
    stack.spare_stacks = stack.strips_in_layers * spec->per_strip - spec->stacks;
    stack.used_length = wanted;
    stack.shorter_by = stack.layer_length - wanted;
    stack.shift = (spec->flags & MUSLIN_STACK_ANY_START) != 0 ? spec->repeat_length : 0;
    stack.warnings = stack.shorter_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
    return stack;
}

muslin_status muslin_stack_plan(const struct muslin_stack_spec *spec, struct muslin_stack *out,
                                struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_stack_spec s = { 0 };
    read_stack(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_stack stack = layer_of(&s);
    if (stack.layer_length > (MUSLIN_LENGTH_MAX - stack.shift) / s.layers)
        return msl_fail(&check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_LAYERS, s.layers, 0);
    stack.repeats = s.layers * stack.repeats_per_layer;
    stack.repeats_bought = stack.repeats + (stack.shift != 0);
    stack.pieces = s.stacks * s.layers;
    stack.cloth_length = s.layers * stack.layer_length + stack.shift;
    stack.cloth_least = stack.cloth_length - stack.shorter_by;
    msl_write_struct(out, &stack, (uint32_t)sizeof stack);
    return MUSLIN_OK;
}
