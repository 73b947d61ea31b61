/* told.h - a search that tells how it stands, now and then, by its steps.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TOLD_H
#define MUSLIN_TOLD_H

#include "muslin/base.h"

/* About a millisecond's work. */
#define MSL_TOLD_EACH (INT64_C(1) << 18)

/* Whom a search tells. Its answer and bound are the search's own to keep up to date. */
struct msl_told {
    muslin_progress progress; /* null: nobody */
    void *context;
    int64_t before;           /* steps of searches before this one */
    int64_t next;             /* steps in all at which it is due */
    int64_t best;
    int64_t bound;
    int32_t ended;            /* by what was answered: all goes on as if the work limit were reached */
};

static inline struct msl_told msl_told_by(muslin_progress progress, void *context)
{
    return (struct msl_told){ .progress = progress, .context = context, .next = progress == NULL ? INT64_MAX : 0 };
}

/* Tells, where it is due after so many steps. Returns whether the search goes on. */
static inline int msl_goes_on(struct msl_told *told, int64_t steps)
{
    const int64_t work = told->before + steps;
    if (work >= told->next) {
        told->ended = told->progress(told->context, work, told->best, told->bound) != 0;
        told->next = told->ended ? INT64_MAX : work + MSL_TOLD_EACH;
    }
    return !told->ended;
}

#endif
