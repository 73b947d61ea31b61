/* cutlist_substitute.c - the same list from other stock, to compare.
 *
 * SPDX-License-Identifier: MIT */
#include "cutlist_inside.h"

static void from_yardage(struct msl_check *check, struct muslin_substitution *instead, const struct msl_job *job)
{
    struct muslin_cutlist_spec spec = MUSLIN_CUTLIST_SPEC_INIT;
    spec.usable_width = job->stock.width;
    spec.print = job->stock.print;
    struct muslin_cutlist_yardage yardage = msl_yardage_of(check, &job->cuts, &spec);
    muslin_len in_hand = job->stock.count * job->stock.length;
    instead->cloth_length = yardage.cloth_length;
    instead->cloth_missing = msl_greater(yardage.cloth_length - in_hand, 0);
    instead->fabrics = yardage.pieces != 0;
    instead->narrower_by = yardage.narrower_by;
    instead->shorter_by = msl_greater(in_hand - yardage.cloth_length, 0);
    instead->enough = instead->cloth_missing == 0;
    instead->spare_pieces = yardage.spare_pieces;
    instead->turned = yardage.turned;
    instead->warnings = yardage.warnings;
    if (yardage.pieces != 0 && in_hand == yardage.cloth_length)
        instead->warnings = MUSLIN_WARN_NO_SLACK;
}

static void from_pieces(struct muslin_substitution *instead, struct msl_job *job, int64_t prints)
{
    struct muslin_cutlist_stock all = msl_stock_of(job);
    instead->stock_needed = all.stock_needed;
    instead->stock_missing = all.stock_missing;
    instead->enough = all.stock_missing == 0;
    instead->narrower_by = all.narrower_by;
    instead->shorter_by = all.shorter_by;
    instead->spare_pieces = all.spare_pieces;
    instead->rest_pieces = all.rest_pieces;
    instead->turned = all.turned;
    instead->warnings = all.warnings;
    instead->fabrics = prints < all.stock_needed ? prints : all.stock_needed;
    if (instead->fabrics == 0)
        return;
    instead->per_fabric_least = all.stock_needed / instead->fabrics;
    instead->per_fabric_most = msl_divided_up(all.stock_needed, instead->fabrics);
}

/* A length of yardage has no end that a row could be too long for, unless it lies across. */
static size_t unfit_row_of(const struct msl_job *job)
{
    struct msl_job endless = *job;
    if (job->stock.kind == MUSLIN_STOCK_YARDAGE)
        endless.stock.length = MUSLIN_SIZE_MAX;
    return msl_first_unfit(&endless);
}

muslin_status muslin_cutlist_substitute(const struct muslin_cutlist_piece_spec *pieces, size_t piece_size, size_t n,
                                        const struct muslin_stock_spec *stock, int64_t prints,
                                        struct muslin_substitution *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_job job = msl_read_job(&check, pieces, piece_size, n, stock);
    int is_yardage = job.stock.kind == MUSLIN_STOCK_YARDAGE;
    msl_want_between(&check, MUSLIN_ARG_PRINTS, prints, 1, is_yardage ? 1 : MUSLIN_COUNT_MAX);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_substitution instead = { 0 };
    size_t unfit = unfit_row_of(&job);
    instead.possible = unfit == n;
    instead.unfit_row = unfit == n ? -1 : (int64_t)unfit;
    if (instead.possible && is_yardage)
        from_yardage(&check, &instead, &job);
    else if (instead.possible)
        from_pieces(&instead, &job, prints);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &instead, (uint32_t)sizeof instead);
    return check.status;
}
