/* muslin/reference.h - tables to start from, each row with its source.
 *
 * SPDX-License-Identifier: MIT
 *
 * Makers differ and sizes change: these are starting points for a caller's own figures, never limits, and no row says
 * that anything meets a safety standard. Where published lists disagree either both figures are here, under names that
 * say whose they are, or the commoner one is, and muslin_reference_note() says what the others are.
 *
 * Every call
 *   Cost        Constant time. Nothing allocates; texts are constants of the library.
 */
#ifndef MUSLIN_REFERENCE_H
#define MUSLIN_REFERENCE_H

#include "fabric.h"

#ifdef __cplusplus
extern "C" {
#endif

/* What `width`, `length` and `count` are in each table. The numbers stay for ever; new tables come behind the last. */
enum muslin_table {
    MUSLIN_TABLE_BATTING = 1,       /* packaged batting, in this version smallest first: width, length */
    MUSLIN_TABLE_PRECUT = 2,        /* usual pre-cuts: cut width across, cut length along, pieces sold together */
    MUSLIN_TABLE_FABRIC_WIDTH = 3,  /* usable widths people plan with, in this version smallest first: width */
    MUSLIN_TABLE_MATTRESS = 4,      /* mattresses: width, length */
    MUSLIN_TABLE_CRIB = 5,          /* what the law fixes for a full-size crib: width, length; a thickness as width */
    MUSLIN_TABLE_PILLOW_TUCK = 6,   /* what a quilt is longer for tucking under pillows: width */
    MUSLIN_TABLE_DROP = 7,          /* depths of mattresses, least as width and greatest as length; what a drop adds */
    MUSLIN_TABLE_YARD_FRACTION = 8, /* fractions of a yard and of a metre, in this version smallest first: width */
    MUSLIN_TABLE_STITCH = 9,        /* usual lengths of a stitch: width */
    MUSLIN_TABLE_CAUTION = 10,      /* behind cautions: sizes, or an age in months as count; see each row's note */
    MUSLIN_TABLE_BATTING_OTHER = 11 /* packaged batting where other lists disagree with MUSLIN_TABLE_BATTING; never
                                     * chosen by muslin_batting_plan() */
};

struct muslin_reference {
    uint32_t size;
    uint32_t flags;
    muslin_len width;   /* ticks; as in muslin_stock_spec, the longer side of a strip or a fat quarter; 0 where there
                         * is none */
    muslin_len length;  /* ticks; 0 where there is none */
    int64_t count;      /* pieces sold together, 1 for a single one; months in a caution; 0 where there is none */
};

/* How many rows a table has. Rows are only ever added at the end, whatever their size, so an index keeps its meaning.
 * MUSLIN_ERR_NULL: out is null. MUSLIN_ERR_CHOICE: table is none of enum muslin_table. The problem is optional (null).
 * Example: muslin_reference_count(MUSLIN_TABLE_BATTING, &n, NULL) gives 7 in this version. Since 1.0. */
MUSLIN_API muslin_status muslin_reference_count(int32_t table, int64_t *out, struct muslin_problem *problem);

/* Row `index`, from 0, of a table. MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE for *out; MUSLIN_ERR_CHOICE for an
 * unknown table; MUSLIN_ERR_INDEX for a row that does not exist (the problem's limit is the last one). Source: what
 * muslin_reference_source says of the row. Example: row 3 of MUSLIN_TABLE_BATTING is twin, 72 x 90 in. Since 1.0. */
MUSLIN_API muslin_status muslin_reference_row(int32_t table, int64_t index, struct muslin_reference *out,
                                              struct muslin_problem *problem);

/* A row's name in the trade's words; where its figures come from: a title with the kind of publication and its year
 * where it has one, "common practice, no source" or "from memory, no source"; and a note on what else to know, above
 * all where other lists disagree, or "" where there is nothing to say. All three are "" for a row that does not exist,
 * and never null. Their wording may improve. Example: row 5 of MUSLIN_TABLE_BATTING is named "queen". Since 1.0. */
MUSLIN_API const char *muslin_reference_name(int32_t table, int64_t index);
MUSLIN_API const char *muslin_reference_source(int32_t table, int64_t index);
MUSLIN_API const char *muslin_reference_note(int32_t table, int64_t index);

#ifdef __cplusplus
}
#endif

#endif
