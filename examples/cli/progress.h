/* progress.h - how far a batch is: a line on the terminal with the rate and the time left.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_PROGRESS_H
#define CLI_PROGRESS_H

#include <stdbool.h>
#include <stdint.h>

struct progress {
    bool shown;
    int64_t total_bytes;   /* of the input; 0 when not known */
    int64_t bytes_before;  /* an earlier run's share, which says nothing of the rate */
    int64_t lines_before;
    int64_t start_ms;
    int64_t last_ms;
};

enum when { WHEN_AUTO = 1, WHEN_ALWAYS, WHEN_NEVER }; /* auto: when standard error is a terminal */

/* What an earlier run has done is set in *progress before the first step. */
void progress_start(struct progress *progress, int32_t when, int64_t total_bytes);
/* After each line; draws ten times a second at most. */
void progress_step(struct progress *progress, int64_t bytes, int64_t lines, int64_t failed);
/* Draws the last state and leaves the line. */
void progress_end(struct progress *progress, int64_t bytes, int64_t lines, int64_t failed);

#endif
