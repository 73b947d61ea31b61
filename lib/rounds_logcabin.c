/* rounds_logcabin.c - log cabins and courthouse steps, log by log.
 *
 * SPDX-License-Identifier: MIT
 *
 * A finished block is at most 2^30, so a log's cut length is below 2^31, and 4000 of them in 100000 blocks are below
 * 2^60. */
#include "rounds_logcabin.h"

muslin_status muslin_logcabin_spec_init(struct muslin_logcabin_spec *spec, uint32_t size)
{
    const struct muslin_logcabin_spec initial = MUSLIN_LOGCABIN_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* ---- one log ----------------------------------------------------------------------------------------------------- */

static int is_given_cut(const struct msl_cabin *cabin)
{
    return (cabin->spec.flags & MUSLIN_LOGCABIN_GIVEN_CUT) != 0;
}

/* As given: one for all, one for each round, or its own. */
static muslin_len width_given(const struct msl_cabin *cabin, int64_t log)
{
    if (cabin->n == 0)
        return cabin->spec.log_width;
    return cabin->widths[(int64_t)cabin->n == cabin->logs ? log : log / cabin->a_round];
}

muslin_len msl_log_width(const struct msl_cabin *cabin, int64_t log)
{
    return width_given(cabin, log) - (is_given_cut(cabin) ? cabin->taken : 0);
}

/* Steps from the start, in the direction of the turn, of a round's logs. */
int32_t msl_log_side(const struct msl_cabin *cabin, int64_t log)
{
    static const int32_t courthouse[] = { 0, 2, 1, 3 };
    static const int32_t clockwise[] = { MUSLIN_SIDE_TOP, MUSLIN_SIDE_RIGHT, MUSLIN_SIDE_BOTTOM, MUSLIN_SIDE_LEFT };
    int32_t place = (int32_t)(log % cabin->a_round);
    int32_t steps = cabin->spec.order == MUSLIN_LOG_ORDER_COURTHOUSE ? courthouse[place] : place;
    int32_t onward = cabin->spec.turn == MUSLIN_LOG_TURN_CLOCKWISE ? steps : 4 - steps;
    int32_t start = 0;
    while (clockwise[start] != cabin->spec.start)
        start++;
    return clockwise[(start + onward) % 4];
}

int32_t msl_log_half(const struct msl_cabin *cabin, int64_t log)
{
    return log % cabin->a_round < cabin->a_round / 2 ? MUSLIN_LOG_HALF_FIRST : MUSLIN_LOG_HALF_SECOND;
}

struct msl_grown msl_cabin_centre(const struct msl_cabin *cabin)
{
    struct msl_grown centre = { cabin->centre_width + cabin->taken, cabin->centre_height + cabin->taken };
    return centre;
}

static int lies_across(const struct msl_cabin *cabin, int64_t log)
{
    int32_t side = msl_log_side(cabin, log);
    return side == MUSLIN_SIDE_TOP || side == MUSLIN_SIDE_BOTTOM;
}

void msl_cabin_add(const struct msl_cabin *cabin, int64_t log, struct msl_grown *block, muslin_len *length)
{
    int across = lies_across(cabin, log);
    *length = across ? block->width : block->height;
    *(across ? &block->height : &block->width) += msl_log_width(cabin, log);
}

void msl_cabin_take(const struct msl_cabin *cabin, int64_t log, struct msl_grown *block, muslin_len *length)
{
    int across = lies_across(cabin, log);
    *(across ? &block->height : &block->width) -= msl_log_width(cabin, log);
    *length = across ? block->width : block->height;
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

/* A size given: some of it, and where it is given as cut, more than its seams. */
static void want_given(struct msl_check *check, const struct msl_cabin *cabin, int32_t argument, muslin_len given)
{
    msl_want_some_size(check, argument, given);
    if (is_given_cut(cabin) && given <= cabin->taken)
        msl_fail(check, MUSLIN_ERR_SEAM_TOO_WIDE, argument, given, cabin->taken);
}

static void read_spec(struct msl_check *check, struct muslin_logcabin_spec *spec,
                      const struct muslin_logcabin_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_LOGCABIN_GIVEN_CUT, from);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_WIDTH, spec->centre_width);
    msl_want_some_size(check, MUSLIN_ARG_CENTRE_HEIGHT, spec->centre_height);
    msl_want_size(check, MUSLIN_ARG_LOG_WIDTH, spec->log_width);
    msl_want_between(check, MUSLIN_ARG_ROUNDS, spec->rounds, 1, MUSLIN_ROUNDS_MAX);
    msl_want_between(check, MUSLIN_ARG_BLOCKS, spec->blocks, 1, MUSLIN_LOGCABIN_BLOCKS_MAX);
    msl_want_seams(check, spec->allowance, spec->take_up);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    msl_want_size(check, MUSLIN_ARG_END_LOSS, spec->end_loss);
    msl_want_choice(check, MUSLIN_ARG_LOG_ORDER, spec->order, MUSLIN_LOG_ORDER_ROUND, MUSLIN_LOG_ORDER_QUARTER);
    msl_want_choice(check, MUSLIN_ARG_LOG_SIDE, spec->start, MUSLIN_SIDE_LEFT, MUSLIN_SIDE_BOTTOM);
    msl_want_choice(check, MUSLIN_ARG_LOG_TURN, spec->turn, MUSLIN_LOG_TURN_CLOCKWISE, MUSLIN_LOG_TURN_ANTICLOCKWISE);
    msl_want_pad(check, spec->pad);
}

/* As many as rounds or as logs; a number past all counts is told as the largest. */
static void want_widths(struct msl_check *check, const struct msl_cabin *cabin)
{
    int64_t n = cabin->n > (size_t)MUSLIN_COUNT_MAX ? MUSLIN_COUNT_MAX : (int64_t)cabin->n;
    if (n == 0) {
        want_given(check, cabin, MUSLIN_ARG_LOG_WIDTH, cabin->spec.log_width);
        return;
    }
    if (n != cabin->spec.rounds && n != cabin->logs)
        msl_fail(check, MUSLIN_ERR_RANGE, MUSLIN_ARG_PIECES, n, n < cabin->logs ? cabin->spec.rounds : cabin->logs);
    msl_want_pointer(check, MUSLIN_ARG_LOG_WIDTH, cabin->widths);
    for (check->at = 0; check->status == MUSLIN_OK && check->at < n; check->at++)
        want_given(check, cabin, MUSLIN_ARG_LOG_WIDTH, cabin->widths[check->at]);
    check->at = 0;
}

static void want_block(struct msl_check *check, const struct msl_cabin *cabin)
{
    struct msl_grown block = msl_cabin_centre(cabin);
    muslin_len length;
    for (int64_t log = 0; log < cabin->logs; log++)
        msl_cabin_add(cabin, log, &block, &length);
    msl_want_size(check, MUSLIN_ARG_BLOCK_WIDTH, block.width - cabin->taken);
    msl_want_size(check, MUSLIN_ARG_BLOCK_HEIGHT, block.height - cabin->taken);
}

void msl_read_cabin(struct msl_check *check, struct msl_cabin *cabin, const struct muslin_logcabin_spec *spec,
                    const muslin_len *widths, size_t n)
{
    struct muslin_logcabin_spec *s = &cabin->spec;
    read_spec(check, s, spec);
    if (check->status != MUSLIN_OK)
        return;
    cabin->widths = widths;
    cabin->n = n;
    cabin->a_round = s->order == MUSLIN_LOG_ORDER_QUARTER ? 2 : 4;
    cabin->logs = s->rounds * cabin->a_round;
    cabin->taken = msl_taken(s->allowance, s->take_up);
    cabin->centre_width = s->centre_width - (is_given_cut(cabin) ? cabin->taken : 0);
    cabin->centre_height = s->centre_height - (is_given_cut(cabin) ? cabin->taken : 0);
    want_given(check, cabin, MUSLIN_ARG_CENTRE_WIDTH, s->centre_width);
    want_given(check, cabin, MUSLIN_ARG_CENTRE_HEIGHT, s->centre_height);
    want_widths(check, cabin);
    if (check->status == MUSLIN_OK)
        want_block(check, cabin);
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

/* The row of a log about to be sewn; `block` and `running` move on. */
static struct muslin_logcabin_log row_of(const struct msl_cabin *cabin, int64_t log, struct msl_grown *block,
                                         muslin_len *running)
{
    struct muslin_logcabin_log row = { 0 };
    msl_cabin_add(cabin, log, block, &row.cut_length);
    *running += row.cut_length;
    row.round = log / cabin->a_round + 1;
    row.finished_width = msl_log_width(cabin, log);
    row.cut_width = row.finished_width + cabin->taken;
    row.finished_length = row.cut_length - cabin->taken;
    row.running_length = *running;
    row.unfinished_width = block->width;
    row.unfinished_height = block->height;
    row.side = msl_log_side(cabin, log);
    row.half = msl_log_half(cabin, log);
    row.closes_round = (log + 1) % cabin->a_round == 0;
    return row;
}

muslin_status muslin_logcabin_logs(const struct muslin_logcabin_spec *spec, const muslin_len *widths, size_t n,
                                   struct muslin_logcabin_log *rows, size_t row_size, size_t capacity, size_t *count,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_cabin cabin = { 0 };
    msl_read_cabin(&check, &cabin, spec, widths, n);
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, (size_t)cabin.logs))
        return check.status;
    struct msl_grown block = msl_cabin_centre(&cabin);
    muslin_len running = 0;
    for (int64_t log = 0; log < cabin.logs; log++) {
        struct muslin_logcabin_log row = row_of(&cabin, log, &block, &running);
        msl_write_row(rows, row_size, (size_t)log, &row, (uint32_t)sizeof row);
    }
    return MUSLIN_OK;
}
