/* rounds_strips.c - the strips that the logs of a log cabin are cut from, and the plan of the whole block.
 *
 * SPDX-License-Identifier: MIT */
#include "rounds_logcabin.h"

/* ---- kinds: a half and a cut width ------------------------------------------------------------------------------- */

static int is_of_kind(const struct msl_cabin *cabin, int64_t log, int64_t first)
{
    return msl_log_half(cabin, log) == msl_log_half(cabin, first) &&
           msl_log_width(cabin, log) == msl_log_width(cabin, first);
}

/* Whether no log before this one is of its kind. With equal widths the search ends within the first round. */
static int is_first(const struct msl_cabin *cabin, int64_t log)
{
    for (int64_t before = 0; before < log; before++)
        if (is_of_kind(cabin, before, log))
            return 0;
    return 1;
}

/* The first log of the next kind of this half, from `log` on; cabin->logs when there is none. */
static int64_t next_kind(const struct msl_cabin *cabin, int32_t half, int64_t log)
{
    while (log < cabin->logs && (msl_log_half(cabin, log) != half || !is_first(cabin, log)))
        log++;
    return log;
}

/* ---- cutting ----------------------------------------------------------------------------------------------------- */

/* Strips begun, and what is left of the last. */
struct cutting {
    muslin_len room; /* of a strip, at least the longest log */
    int64_t strips;
    muslin_len left;
};

static void cut_pieces(struct cutting *cutting, muslin_len length, int64_t pieces)
{
    int64_t from_left = cutting->left / length;
    int64_t taken = from_left < pieces ? from_left : pieces;
    int64_t per_strip = cutting->room / length;
    cutting->left -= taken * length;
    pieces -= taken;
    if (pieces == 0)
        return;
    int64_t strips = (pieces - 1) / per_strip + 1;
    cutting->strips += strips;
    cutting->left = cutting->room - (pieces - (strips - 1) * per_strip) * length;
}

/* The usable width without its end loss; 0 when nothing is counted. */
static muslin_len room_of(const struct msl_cabin *cabin)
{
    return cabin->spec.usable_width - cabin->spec.end_loss;
}

static int is_counted(const struct msl_cabin *cabin)
{
    return cabin->spec.usable_width != 0;
}

/* All logs of a kind, the last sewn first. The block is taken apart for it. */
static void cut_kind(const struct msl_cabin *cabin, int64_t first, struct msl_grown block,
                     struct muslin_logcabin_strip *row)
{
    struct cutting cutting = { .room = room_of(cabin) };
    for (int64_t log = cabin->logs - 1; log >= first; log--) {
        muslin_len length;
        msl_cabin_take(cabin, log, &block, &length);
        if (!is_of_kind(cabin, log, first))
            continue;
        row->pieces += cabin->spec.blocks;
        row->length += cabin->spec.blocks * length;
        row->longest = length > row->longest ? length : row->longest;
        if (cutting.room >= length)
            cut_pieces(&cutting, length, cabin->spec.blocks);
    }
    row->strips = cutting.strips;
}

static struct muslin_logcabin_strip strips_of(struct msl_check *check, const struct msl_cabin *cabin, int64_t first,
                                              struct msl_grown block)
{
    struct muslin_logcabin_strip row = { 0 };
    row.half = msl_log_half(cabin, first);
    row.cut_width = msl_log_width(cabin, first) + cabin->taken;
    cut_kind(cabin, first, block, &row);
    if (!is_counted(cabin))
        return row;
    if (row.longest > room_of(cabin)) {
        msl_fail(check, MUSLIN_ERR_NO_YIELD, MUSLIN_ARG_USABLE_WIDTH, cabin->spec.usable_width,
                 cabin->spec.end_loss + row.longest);
        return row;
    }
    row.strips_least = (row.length - 1) / room_of(cabin) + 1;
    row.cloth_length = row.strips * row.cut_width;
    return row;
}

/* ---- centres ----------------------------------------------------------------------------------------------------- */

/* Strips `width` wide for the centres of all blocks, each `length` along the strip: which is no longer than a log. */
struct centres {
    muslin_len width;
    int64_t per_strip;
    int64_t strips;
    muslin_len cloth;
};

static struct centres cut_centres(const struct msl_cabin *cabin, muslin_len width, muslin_len length)
{
    struct centres centres = { .width = width, .per_strip = room_of(cabin) / length };
    centres.strips = (cabin->spec.blocks - 1) / centres.per_strip + 1;
    centres.cloth = centres.strips * width;
    return centres;
}

static void find_centres(struct muslin_logcabin *plan, const struct msl_cabin *cabin)
{
    plan->centre_cut_width = cabin->centre_width + cabin->taken;
    plan->centre_cut_height = cabin->centre_height + cabin->taken;
    if (!is_counted(cabin))
        return;
    struct centres best = cut_centres(cabin, plan->centre_cut_height, plan->centre_cut_width);
    struct centres turned = cut_centres(cabin, plan->centre_cut_width, plan->centre_cut_height);
    if (turned.cloth < best.cloth || (turned.cloth == best.cloth && turned.width < best.width))
        best = turned;
    plan->centre_strip_cut = best.width;
    plan->centres_per_strip = best.per_strip;
    plan->centre_strips = best.strips;
    plan->centre_cloth_length = best.cloth;
}

/* ---- the block --------------------------------------------------------------------------------------------------- */

static struct msl_grown grow_whole(const struct msl_cabin *cabin)
{
    struct msl_grown block = msl_cabin_centre(cabin);
    muslin_len length;
    for (int64_t log = 0; log < cabin->logs; log++)
        msl_cabin_add(cabin, log, &block, &length);
    return block;
}

/* Adds a kind's strips to the plan. */
static void add_strips(struct muslin_logcabin *plan, const struct muslin_logcabin_strip *row)
{
    plan->kinds++;
    *(row->half == MUSLIN_LOG_HALF_FIRST ? &plan->first_length : &plan->second_length) += row->length;
    plan->longest_log = row->longest > plan->longest_log ? row->longest : plan->longest_log;
    plan->strips_least += row->strips_least;
    plan->strips += row->strips;
    plan->cloth_length += row->cloth_length;
}

/* Calls for each kind, the first half first: into the plan always, into rows where some are given. */
static void find_strips(struct msl_check *check, const struct msl_cabin *cabin, struct muslin_logcabin *plan,
                        void *rows, size_t row_size)
{
    struct msl_grown block = grow_whole(cabin);
    for (int32_t half = MUSLIN_LOG_HALF_FIRST; half <= MUSLIN_LOG_HALF_SECOND; half++)
        for (int64_t log = next_kind(cabin, half, 0); log < cabin->logs && check->status == MUSLIN_OK;
             log = next_kind(cabin, half, log + 1)) {
            struct muslin_logcabin_strip row = strips_of(check, cabin, log, block);
            if (rows != NULL)
                msl_write_row(rows, row_size, (size_t)plan->kinds, &row, (uint32_t)sizeof row);
            add_strips(plan, &row);
        }
}

muslin_status muslin_logcabin_plan(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n,
                                   struct muslin_logcabin *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_cabin cabin = { 0 };
    struct muslin_logcabin plan = { 0 };
    msl_read_cabin(&check, &cabin, spec, widths, n);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_strips(&check, &cabin, &plan, NULL, 0);
    if (check.status != MUSLIN_OK)
        return check.status;
    find_centres(&plan, &cabin);
    struct msl_grown block = grow_whole(&cabin);
    plan.unfinished_width = block.width;
    plan.unfinished_height = block.height;
    plan.finished_width = block.width - cabin.taken;
    plan.finished_height = block.height - cabin.taken;
    plan.logs = cabin.logs;
    plan.square = block.width == block.height;
    msl_write_struct(out, &plan, (uint32_t)sizeof plan);
    return MUSLIN_OK;
}

muslin_status muslin_logcabin_strips(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n,
                                     struct muslin_logcabin_strip *rows, size_t row_size, size_t capacity,
                                     size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_cabin cabin = { 0 };
    struct muslin_logcabin plan = { 0 };
    struct muslin_logcabin again = { 0 };
    msl_read_cabin(&check, &cabin, spec, widths, n);
    if (check.status == MUSLIN_OK)
        find_strips(&check, &cabin, &plan, NULL, 0);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, (size_t)plan.kinds))
        find_strips(&check, &cabin, &again, rows, row_size);
    return check.status;
}
