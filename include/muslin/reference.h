/* muslin/reference.h - tables to start from, each row with its source.
 *
 * SPDX-License-Identifier: MIT
 *
 * Makers differ and sizes change: these are starting points for a caller's own figures, never limits. Where published
 * lists disagree the commoner figure is here (full batting is also packed 84 x 96 in, king 124 x 120, craft 36 x 45).
 * Every call is constant time, allocates nothing and returns constants of the library.
 */
#ifndef MUSLIN_REFERENCE_H
#define MUSLIN_REFERENCE_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

enum muslin_table {
    MUSLIN_TABLE_BATTING = 1,       /* packaged batting, smallest first: width, length */
    MUSLIN_TABLE_PRECUT = 2,        /* usual pre-cuts: cut width across, cut length along, pieces sold together */
    MUSLIN_TABLE_FABRIC_WIDTH = 3   /* usable widths people plan with, smallest first: width */
};

struct muslin_reference {
    uint32_t size;
    uint32_t flags;
    muslin_len width;   /* ticks; as in muslin_stock_spec, the longer side of a strip or a fat quarter */
    muslin_len length;  /* ticks; 0 where the table has none */
    int64_t count;      /* pieces sold together, 1 for a single one; 0 where the table has none */
};

/* How many rows a table has. Rows are only ever added at the end, so an index keeps its meaning. MUSLIN_ERR_NULL: out
 * is null. MUSLIN_ERR_CHOICE: table is none of enum muslin_table. Example: muslin_reference_count(MUSLIN_TABLE_BATTING,
 * &n) gives 7 in this version. Since 0.1. */
MUSLIN_API muslin_status muslin_reference_count(int32_t table, int64_t *out);

/* Row `index`, from 0, of a table. MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE for *out; MUSLIN_ERR_CHOICE for an
 * unknown table; MUSLIN_ERR_INDEX for a row that does not exist (the problem's limit is the last one). Source: what
 * muslin_reference_source says of the row. Example: row 3 of MUSLIN_TABLE_BATTING is twin, 72 x 90 in. Since 0.1. */
MUSLIN_API muslin_status muslin_reference_row(int32_t table, int64_t index, struct muslin_reference *out,
                                              struct muslin_problem *problem);

/* A row's name in the trade's words, and where its figures come from: a title with the kind of publication, "common
 * practice, no source" or "from memory, no source". "" for a row that does not exist. Never null. Example: row 5 of
 * MUSLIN_TABLE_BATTING is named "queen". Since 0.1 both. */
MUSLIN_API const char *muslin_reference_name(int32_t table, int64_t index);
MUSLIN_API const char *muslin_reference_source(int32_t table, int64_t index);

#ifdef __cplusplus
}
#endif

#endif
