/* layouts.c - layouts of blocks in columns and rows.
 *
 * SPDX-License-Identifier: MIT */
#include "layouts.h"

/* Neither broader than long nor longer than half as much again. */
static bool is_sensible(muslin_len block_width, muslin_len block_height, int64_t columns, int64_t rows)
{
    muslin_len width = 0;
    muslin_len length = 0;
    muslin_len thrice = 0;
    muslin_len twice = 0;
    return muslin_length_multiply(block_width, columns, &width) == MUSLIN_OK &&
           muslin_length_multiply(block_height, rows, &length) == MUSLIN_OK &&
           muslin_length_multiply(width, 3, &thrice) == MUSLIN_OK &&
           muslin_length_multiply(length, 2, &twice) == MUSLIN_OK && muslin_length_compare(width, length) <= 0 &&
           muslin_length_compare(twice, thrice) <= 0;
}

/* Goes through all sensible layouts of least .. most blocks, more columns later, so that the last of equal ones is the
 * nearest to a square. */
static struct layout search(muslin_len block_width, muslin_len block_height, int64_t least, int64_t most, bool largest)
{
    struct layout best = { 0, 0 };
    for (int64_t columns = 1; columns <= COLUMNS_MOST; columns++)
        for (int64_t rows = 1; rows <= ROWS_MOST && columns * rows <= most; rows++) {
            const int64_t blocks = columns * rows;
            const int64_t so_far = best.columns * best.rows;
            const bool better = so_far == 0 || (largest ? blocks >= so_far : blocks <= so_far);
            if (blocks >= least && better && is_sensible(block_width, block_height, columns, rows))
                best = (struct layout){ columns, rows };
        }
    return best;
}

struct layout largest_layout(muslin_len block_width, muslin_len block_height, int64_t blocks)
{
    return search(block_width, block_height, 1, blocks, true);
}

struct layout smallest_layout(muslin_len block_width, muslin_len block_height, int64_t blocks)
{
    return search(block_width, block_height, blocks, COLUMNS_MOST * ROWS_MOST, false);
}
