/* cutplan_deal.h - few pieces dealt out to pieces of stock in every way.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_DEAL_H
#define MUSLIN_CUTPLAN_DEAL_H

#include "cutplan_first.h"

enum { MSL_DEALT_MAX = 16 }; /* pieces */

/* A piece, and where it lies. */
struct msl_dealt {
    int64_t taken;     /* of its strip, or of its blank's height */
    int64_t opened;    /* height of the strip that it began; else 0 */
    int32_t size;
    int32_t choice;    /* which of all it might have */
    int32_t strip;
    int32_t blank;     /* -1: not of a stack */
    int32_t on;        /* 1: above others in its blank */
    int32_t sheet_too; /* 1: it began a sheet */
    int32_t turned;
    int32_t pad;
};

struct msl_dealt_strip {
    int64_t height;
    int64_t room;
    int32_t sheet;
    int32_t pad;
};

struct msl_dealt_sheet {
    int64_t along;     /* left, for strips */
    int32_t way;
    int32_t pad;
};

struct msl_dealt_blank {
    int64_t across;
    int64_t along;     /* left */
    int32_t strip;
    int32_t pad;
};

struct msl_stock_deal {
    struct msl_making *making;
    struct msl_dealt pieces[MSL_DEALT_MAX];
    struct msl_dealt_strip strips[MSL_DEALT_MAX];
    struct msl_dealt_sheet sheets[MSL_DEALT_MAX];
    struct msl_dealt_blank blanks[MSL_DEALT_MAX];
    int32_t piece_count;
    int32_t strip_count;
    int32_t sheet_count;
    int32_t blank_count;
};

enum { MSL_DEAL_UNKNOWN = 0, MSL_DEAL_NO = 1, MSL_DEAL_YES = 2 };

/* Looks at all ways to cut the pieces wanted from stock: yes, with a plan, which is kept as the best; no, there is
 * none; or unknown, where pieces are too many or `most_steps` steps are not enough. There is no plan yet. */
int msl_deal(struct msl_stock_deal *deal, struct msl_making *making, int64_t most_steps);

#endif
