/* muslin/reference.h - tables to start from, each row with its source.
 *
 * SPDX-License-Identifier: MIT
 *
 * Makers differ and sizes change: these are starting points for a caller's own figures, never limits.
 */
#ifndef MUSLIN_REFERENCE_H
#define MUSLIN_REFERENCE_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

enum muslin_table {
    MUSLIN_TABLE_BATTING = 1,       /* packaged batting: width, length */
    MUSLIN_TABLE_PRECUT = 2,        /* usual pre-cuts: width, length, pieces in a bundle */
    MUSLIN_TABLE_FABRIC_WIDTH = 3   /* usable widths people plan with: width */
};

struct muslin_reference {
    uint32_t size;
    uint32_t flags;
    muslin_len width;
    muslin_len length;  /* 0 where the table has none */
    int64_t count;      /* pieces in a bundle; 0 where the table has none */
};

/* Rows of a table. MUSLIN_ERR_CHOICE for an unknown table. Rows are only ever added at the end. Since 0.1. */
MUSLIN_API muslin_status muslin_reference_count(int32_t table, int64_t *out);

/* One row. MUSLIN_ERR_CHOICE, MUSLIN_ERR_INDEX. Constant time. Since 0.1. */
MUSLIN_API muslin_status muslin_reference_row(int32_t table, int64_t index, struct muslin_reference *out,
                                              struct muslin_problem *problem);

/* A row's name in the trade's words ("queen"), and its source or "common practice, no source". "" for a row that does
 * not exist. Never null. Constant time. Since 0.1. */
MUSLIN_API const char *muslin_reference_name(int32_t table, int64_t index);
MUSLIN_API const char *muslin_reference_source(int32_t table, int64_t index);

#ifdef __cplusplus
}
#endif

#endif
