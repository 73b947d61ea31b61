/* solution_growing.h - rows that grow one by one.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SOLUTION_GROWING_H
#define MUSLIN_SOLUTION_GROWING_H

#include "inside.h"

struct msl_rows {
    void *rows;
    uint64_t used;
    uint64_t capacity;
};

/* Adds one row; a null pointer after a failure. */
void *msl_add_row(struct msl_check *check, const struct muslin_allocator *allocator, struct msl_rows *rows,
                  size_t row_size);
void msl_free_rows(const struct muslin_allocator *allocator, struct msl_rows *rows, size_t row_size);

/* The rows from one on, which may be none; of rows that never grew, a null pointer, which must not be added to. */
static inline const void *msl_rows_from(const struct msl_rows *rows, uint64_t first, size_t row_size)
{
    return rows->rows == NULL ? NULL : (const unsigned char *)rows->rows + first * row_size;
}

#endif
