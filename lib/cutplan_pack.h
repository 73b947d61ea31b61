/* cutplan_pack.h - are so many strips of a way enough for so many pieces of each size?
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_CUTPLAN_PACK_H
#define MUSLIN_CUTPLAN_PACK_H

#include "cutplan_inside.h"

enum { MSL_PACK_ROOM = 8192 }; /* strips times sizes, at most */

enum { MSL_PACK_UNKNOWN = 0, MSL_PACK_NO = 1, MSL_PACK_YES = 2 };

/* A size in these strips. */
struct msl_packed {
    int64_t taken;
    int64_t run_in;
    int64_t wanted; /* pieces, so many that wanted x taken stays below 2^55; msl_pack() uses it up */
    int32_t size;
    int32_t pad;
};

struct msl_packing {
    struct msl_packed *sizes; /* of each size that is wanted */
    int32_t *counts;          /* MSL_PACK_ROOM: of each strip, of each size, when the answer is yes */
    int64_t *rooms;           /* MSL_PACK_ROOM: what is left of each strip */
    int64_t steps;            /* work done, ever */
    int64_t most_steps;       /* of one search */
    int32_t size_count;
    int32_t used;             /* strips, when the answer is yes */
};

/* Begins with no sizes. */
void msl_pack_begin(struct msl_packing *packing);

/* So many pieces more (0 or less: none), each of which fits a strip of this way. */
void msl_pack_add(struct msl_packing *packing, const struct msl_cutting *cutting, int32_t way, int32_t size,
                  int64_t wanted);

/* Yes with what lies in each strip; no, proven by looking at all there is; or unknown within the steps and the room. */
int msl_pack(struct msl_packing *packing, const struct msl_cutting *cutting, int32_t way, int64_t strips);

#endif
