/* layouts.h - how so many blocks are laid out as a top that is not too long for its width.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_LAYOUTS_H
#define CLI_LAYOUTS_H

#include <muslin/muslin.h>
#include <stdbool.h>

/* No larger layouts are looked at. */
enum { COLUMNS_MOST = 100, ROWS_MOST = 200 };

struct layout {
    int64_t columns; /* 0: there is none */
    int64_t rows;
};

/* A top is as long as it is wide, or longer by half at most. Of layouts with as many blocks the one nearest to a
 * square is taken. The first has at most `blocks`, and as many as can be; the second at least `blocks`, and as few as
 * can be. */
struct layout largest_layout(muslin_len block_width, muslin_len block_height, int64_t blocks);
struct layout smallest_layout(muslin_len block_width, muslin_len block_height, int64_t blocks);

#endif
