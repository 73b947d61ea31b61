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

/* The numbers from one on; of rows that never grew, none, for which a null pointer must not be added to. */
static inline const uint32_t *msl_numbers_from(const struct msl_rows *numbers, uint64_t first)
{
    return numbers->rows == NULL ? NULL : (const uint32_t *)numbers->rows + first;
}

#endif
