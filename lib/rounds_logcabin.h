/* rounds_logcabin.h - a log cabin as its request describes it, log by log.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_ROUNDS_LOGCABIN_H
#define MUSLIN_ROUNDS_LOGCABIN_H

#include "rounds_inside.h"

/* A request that has been read: widths are finished from here on. */
struct msl_cabin {
    struct muslin_logcabin_spec spec;
    const muslin_len *widths; /* as the caller gave them */
    size_t n;
    int64_t a_round;          /* logs in a round: 4 or 2 */
    int64_t logs;             /* in a block, at most 4000 */
    muslin_len taken;         /* m */
    muslin_len centre_width;  /* finished */
    muslin_len centre_height;
};

/* A block that grows: its unfinished size. */
struct msl_grown {
    muslin_len width;
    muslin_len height;
};

/* Reads and checks a request, widths and size of the block included. */
void msl_read_cabin(struct msl_check *check, struct msl_cabin *cabin, const struct muslin_logcabin_spec *spec,
                    const muslin_len *widths, size_t n);

/* Logs are numbered from 0 in sewing order. */
muslin_len msl_log_width(const struct msl_cabin *cabin, int64_t log);
int32_t msl_log_side(const struct msl_cabin *cabin, int64_t log);
int32_t msl_log_half(const struct msl_cabin *cabin, int64_t log);

/* The block before its first log, with a log more (which leaves the log's cut length in *length), and with that log
 * taken off again. */
struct msl_grown msl_cabin_centre(const struct msl_cabin *cabin);
void msl_cabin_add(const struct msl_cabin *cabin, int64_t log, struct msl_grown *block, muslin_len *length);
void msl_cabin_take(const struct msl_cabin *cabin, int64_t log, struct msl_grown *block, muslin_len *length);

#endif
