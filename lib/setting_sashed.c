/* setting_sashed.c - blocks with sashes between them, and pieced blocks with plain ones in turn.
 *
 * SPDX-License-Identifier: MIT
 *
 * A size is at most 2^30 and a count below 2^31, so a sum of two products of them is at most 2^62. Once the finished
 * sides are known to be sizes too, columns and rows are at most 2^30 each. */
#include "setting_run.h"

static muslin_len seam_of(const struct muslin_setting_sashed_spec *spec)
{
    return 2 * spec->allowance + spec->take_up;
}

/* ---- the request ------------------------------------------------------------------------------------------------- */

muslin_status muslin_setting_sashed_spec_init(struct muslin_setting_sashed_spec *spec, uint32_t size)
{
    const struct muslin_setting_sashed_spec initial = MUSLIN_SETTING_SASHED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* Cornerstones stand where two sashes cross, so they need both. */
static void want_sashes(struct msl_check *check, const struct muslin_setting_sashed_spec *spec)
{
    int64_t least = (spec->flags & MUSLIN_SETTING_SASHED_CORNERSTONES) != 0;
    msl_want_between(check, MUSLIN_ARG_SASH_WIDTH, spec->sash_width, least, MUSLIN_SIZE_MAX);
    check->at = 1;
    msl_want_between(check, MUSLIN_ARG_SASH_WIDTH, spec->sash_height, least, MUSLIN_SIZE_MAX);
    check->at = 0;
}

static void read_sashed(struct msl_check *check, struct muslin_setting_sashed_spec *spec,
                        const struct muslin_setting_sashed_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec,
                    MUSLIN_SETTING_SASHED_FRAME | MUSLIN_SETTING_SASHED_CORNERSTONES, from);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_WIDTH, spec->block_width);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_HEIGHT, spec->block_height);
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, spec->columns);
    msl_want_some_count(check, MUSLIN_ARG_QUILT_ROWS, spec->rows);
    want_sashes(check, spec);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_size(check, MUSLIN_ARG_USABLE_WIDTH, spec->usable_width);
    msl_want_between(check, MUSLIN_ARG_END_LOSS, spec->end_loss, 0, spec->usable_width);
}

/* ---- counts and sizes -------------------------------------------------------------------------------------------- */

/* Sashes in a line of n blocks: one fewer than the blocks, with a frame one more. */
static int64_t sashes_in_line(const struct muslin_setting_sashed_spec *spec, int64_t blocks)
{
    return (spec->flags & MUSLIN_SETTING_SASHED_FRAME) != 0 ? blocks + 1 : blocks - 1;
}

static void find_top(struct msl_check *check, struct muslin_setting_sashed_plan *top,
                     const struct muslin_setting_sashed_spec *spec)
{
    top->finished_width = spec->columns * spec->block_width + sashes_in_line(spec, spec->columns) * spec->sash_width;
    top->finished_length = spec->rows * spec->block_height + sashes_in_line(spec, spec->rows) * spec->sash_height;
    top->unfinished_width = top->finished_width + seam_of(spec);
    top->unfinished_length = top->finished_length + seam_of(spec);
    top->block_unfinished_width = spec->block_width + seam_of(spec);
    top->block_unfinished_height = spec->block_height + seam_of(spec);
    msl_want_size(check, MUSLIN_ARG_QUILT_WIDTH, top->finished_width);
    msl_want_size(check, MUSLIN_ARG_QUILT_LENGTH, top->finished_length);
}

/* Without cornerstones a horizontal sash is as long as a sewn row. */
static void find_counts(struct muslin_setting_sashed_plan *top, const struct muslin_setting_sashed_spec *spec)
{
    int64_t beside = sashes_in_line(spec, spec->columns);
    int64_t between = sashes_in_line(spec, spec->rows);
    int cornerstones = (spec->flags & MUSLIN_SETTING_SASHED_CORNERSTONES) != 0;
    top->blocks = spec->columns * spec->rows;
    top->vertical_sashes = spec->sash_width == 0 ? 0 : beside * spec->rows;
    top->horizontal_sashes = spec->sash_height == 0 ? 0 : between * (cornerstones ? spec->columns : 1);
    top->cornerstones = cornerstones ? beside * between : 0;
}

static void find_cuts(struct muslin_setting_sashed_plan *top, const struct muslin_setting_sashed_spec *spec)
{
    muslin_len seam = seam_of(spec);
    int cornerstones = (spec->flags & MUSLIN_SETTING_SASHED_CORNERSTONES) != 0;
    if (top->vertical_sashes > 0) {
        top->vertical_cut_width = spec->sash_width + seam;
        top->vertical_cut_length = spec->block_height + seam;
    }
    if (top->horizontal_sashes > 0) {
        top->horizontal_cut_width = spec->sash_height + seam;
        top->horizontal_cut_length = cornerstones ? spec->block_width + seam : top->unfinished_width;
    }
    if (top->cornerstones > 0) {
        top->cornerstone_cut_width = spec->sash_width + seam;
        top->cornerstone_cut_height = spec->sash_height + seam;
    }
}

static void plan(struct msl_check *check, struct muslin_setting_sashed_plan *top,
                 const struct muslin_setting_sashed_spec *spec)
{
    if (check->status != MUSLIN_OK)
        return;
    find_top(check, top, spec);
    find_counts(top, spec);
    find_cuts(top, spec);
}

muslin_status muslin_setting_sashed(const struct muslin_setting_sashed_spec *spec,
                                    struct muslin_setting_sashed_plan *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_sashed_spec s = { 0 };
    struct muslin_setting_sashed_plan top = { 0 };
    read_sashed(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    plan(&check, &top, &s);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &top, (uint32_t)sizeof top);
    return check.status;
}

/* ---- strips ------------------------------------------------------------------------------------------------------ */

/* One kind of piece: how many, how long and how wide as cut. */
static struct muslin_sash_piece piece_of(int32_t kind, int64_t pieces, muslin_len cut_length, muslin_len cut_width)
{
    struct muslin_sash_piece piece = { 0 };
    piece.kind = kind;
    piece.pieces = pieces;
    piece.cut_length = cut_length;
    piece.cut_width = cut_width;
    return piece;
}

static void cut_from_single_strips(struct muslin_sash_piece *piece, muslin_len strip_length)
{
    piece->per_strip = strip_length / piece->cut_length;
    piece->strips = (piece->pieces - 1) / piece->per_strip + 1;
    piece->spare_pieces = piece->strips * piece->per_strip - piece->pieces;
    piece->narrower_by = strip_length - piece->per_strip * piece->cut_length;
}

/* Pieces longer than a strip: all strips joined into one run, from which the pieces are cut. */
static void cut_from_a_run(struct msl_check *check, struct muslin_sash_piece *piece, muslin_len strip_length,
                           muslin_len allowance)
{
    struct muslin_run_spec wanted = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run run = { 0 };
    wanted.length = piece->pieces * piece->cut_length;
    wanted.strip_length = strip_length;
    wanted.allowance = allowance;
    wanted.join = MUSLIN_JOIN_STRAIGHT;
    msl_run(check, MUSLIN_ARG_USABLE_WIDTH, &wanted, &run);
    piece->strips = run.strips;
    piece->joins = run.joins;
    piece->narrower_by = run.narrower_by;
}

static void find_strips(struct msl_check *check, struct muslin_sash_piece *piece,
                        const struct muslin_setting_sashed_spec *spec)
{
    muslin_len strip_length = spec->usable_width - spec->end_loss;
    if (piece->pieces > MUSLIN_COUNT_MAX)
        msl_fail(check, MUSLIN_ERR_OVERFLOW, MUSLIN_ARG_PIECES, piece->pieces, MUSLIN_COUNT_MAX);
    if (check->status != MUSLIN_OK)
        return;
    if (piece->cut_length <= strip_length)
        cut_from_single_strips(piece, strip_length);
    else
        cut_from_a_run(check, piece, strip_length, spec->allowance);
    piece->cloth_length = piece->strips * piece->cut_width;
    piece->warnings = piece->narrower_by == 0 ? MUSLIN_WARN_NO_SLACK : 0;
}

enum { KINDS = 3 };

/* The kinds there are, in their order; returns how many. */
static size_t find_pieces(struct msl_check *check, struct muslin_sash_piece *pieces,
                          const struct muslin_setting_sashed_plan *top, const struct muslin_setting_sashed_spec *spec)
{
    const struct muslin_sash_piece all[KINDS] = {
        piece_of(MUSLIN_SASH_VERTICAL, top->vertical_sashes, top->vertical_cut_length, top->vertical_cut_width),
        piece_of(MUSLIN_SASH_HORIZONTAL, top->horizontal_sashes, top->horizontal_cut_length, top->horizontal_cut_width),
        piece_of(MUSLIN_SASH_CORNERSTONE, top->cornerstones, top->cornerstone_cut_width, top->cornerstone_cut_height)
    };
    size_t found = 0;
    for (size_t i = 0; i < KINDS; i++)
        if (all[i].pieces > 0) {
            pieces[found] = all[i];
            find_strips(check, &pieces[found], spec);
            found++;
        }
    return found;
}

muslin_status muslin_setting_sashed_pieces(const struct muslin_setting_sashed_spec *spec,
                                           struct muslin_sash_piece *rows, size_t row_size, size_t capacity,
                                           size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_sashed_spec s = { 0 };
    struct muslin_setting_sashed_plan top = { 0 };
    struct muslin_sash_piece pieces[KINDS];
    read_sashed(&check, &s, spec);
    plan(&check, &top, &s);
    size_t found = find_pieces(&check, pieces, &top, &s);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, found))
        for (size_t i = 0; i < found; i++)
            msl_write_row(rows, row_size, i, &pieces[i], (uint32_t)sizeof pieces[i]);
    return check.status;
}

/* ---- pieced and plain blocks in turn ----------------------------------------------------------------------------- */

muslin_status muslin_setting_alternate_spec_init(struct muslin_setting_alternate_spec *spec, uint32_t size)
{
    const struct muslin_setting_alternate_spec initial = MUSLIN_SETTING_ALTERNATE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static void read_alternate(struct msl_check *check, struct muslin_setting_alternate_spec *spec,
                           const struct muslin_setting_alternate_spec *from)
{
    msl_read_struct(check, MUSLIN_ARG_SPEC, spec, (uint32_t)sizeof *spec, (uint32_t)sizeof *spec, 0, from);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_WIDTH, spec->block_width);
    msl_want_some_size(check, MUSLIN_ARG_BLOCK_HEIGHT, spec->block_height);
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, spec->columns);
    msl_want_some_count(check, MUSLIN_ARG_QUILT_ROWS, spec->rows);
    msl_want_seam(check, MUSLIN_ARG_SEAM_ALLOWANCE, spec->allowance);
    msl_want_seam(check, MUSLIN_ARG_TAKE_UP, spec->take_up);
    msl_want_choice(check, MUSLIN_ARG_FIRST_BLOCK, spec->first, MUSLIN_FIRST_BLOCK_PIECED, MUSLIN_FIRST_BLOCK_PLAIN);
    msl_want_pad(check, spec->pad);
}

/* The kind in the first corner has the larger half of the fields. */
static struct muslin_setting_alternate_plan alternate_of(const struct muslin_setting_alternate_spec *spec)
{
    struct muslin_setting_alternate_plan top = { 0 };
    muslin_len seam = 2 * spec->allowance + spec->take_up;
    int64_t blocks = spec->columns * spec->rows;
    top.plain = spec->first == MUSLIN_FIRST_BLOCK_PLAIN ? blocks - blocks / 2 : blocks / 2;
    top.pieced = blocks - top.plain;
    top.plain_cut_width = spec->block_width + seam;
    top.plain_cut_height = spec->block_height + seam;
    top.finished_width = spec->columns * spec->block_width;
    top.finished_length = spec->rows * spec->block_height;
    top.unfinished_width = top.finished_width + seam;
    top.unfinished_length = top.finished_length + seam;
    return top;
}

muslin_status muslin_setting_alternate(const struct muslin_setting_alternate_spec *spec,
                                       struct muslin_setting_alternate_plan *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_setting_alternate_spec s = { 0 };
    read_alternate(&check, &s, spec);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_setting_alternate_plan top = alternate_of(&s);
    msl_want_size(&check, MUSLIN_ARG_QUILT_WIDTH, top.finished_width);
    msl_want_size(&check, MUSLIN_ARG_QUILT_LENGTH, top.finished_length);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &top, (uint32_t)sizeof top);
    return check.status;
}
