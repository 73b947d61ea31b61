/* cutlist_inside.h - the list of pieces read and checked, and one row laid one way.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTLIST_INSIDE_H
#define MUSLIN_CUTLIST_INSIDE_H

#include "muslin/cutlist.h"

#include "fabric_stock.h"
#include "wide.h"

/* The caller's rows. */
struct msl_cuts {
    const void *rows;
    size_t row_size;
    size_t n;
};

/* Checks the list row by row; check->at is 0 again behind it. */
void msl_want_cuts(struct msl_check *check, const struct msl_cuts *cuts);
/* Row `index` of a list that has been checked. */
struct muslin_cutlist_piece_spec msl_cut_at(const struct msl_cuts *cuts, size_t index);

/* Whether the pieces of a row may lie turned a quarter on this print. */
int msl_may_turn(const struct muslin_cutlist_piece_spec *cut, int32_t print);

/* One way of laying the pieces of a row: so far across and along each, so many from a strip, so many strips. Where not
 * one piece fits, per_strip and strips are 0. */
struct msl_cut_way {
    muslin_len across;
    muslin_len along;
    int64_t per_strip;
    int64_t strips;
    int32_t turned;
};
struct msl_cut_way msl_way_of(const struct muslin_cutlist_piece_spec *cut, muslin_len room_across, int32_t turned);
/* The least length of a strip with which the same strips, one or more, still give so many pieces. */
muslin_len msl_room_as_cut(const struct msl_cut_way *way, int64_t pieces);

/* The pieces' area over `side` x `other_side`, both 1 or more, up; the caller knows that the result fits, because so
 * much is needed by some plan. */
int64_t msl_cuts_area_over(const struct msl_cuts *cuts, muslin_len side, muslin_len other_side);

/* The whole list from yardage; the problem names the row that has no yield, or the length that is too large. Answers 0
 * after a failure. `spec` has been checked. */
struct muslin_cutlist_yardage msl_yardage_of(struct msl_check *check, const struct msl_cuts *cuts,
                                             const struct muslin_cutlist_spec *spec);

/* What is cut, and from what. */
struct msl_job {
    struct msl_cuts cuts;
    struct muslin_stock_spec stock;
    int64_t times; /* each row's count is taken so many times */
};
/* The job once, of a list and a stock that are both right. */
struct msl_job msl_read_job(struct msl_check *check, const void *rows, size_t row_size, size_t n,
                            const struct muslin_stock_spec *stock);
/* The first row that does not fit, or n. */
size_t msl_first_unfit(const struct msl_job *job);
/* The whole list from pieces of stock; every row fits. */
struct muslin_cutlist_stock msl_stock_of(struct msl_job *job);

#endif
