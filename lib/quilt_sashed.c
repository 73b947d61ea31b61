/* quilt_sashed.c - blocks with sashes between them, with or without cornerstones and a frame.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum { SASHED_SPEC_LEAST = sizeof(struct muslin_quilt_sashed_spec) };

muslin_status muslin_quilt_sashed_spec_init(struct muslin_quilt_sashed_spec *spec, uint32_t size)
{
    static const struct muslin_quilt_sashed_spec initial = MUSLIN_QUILT_SASHED_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, sizeof initial, SASHED_SPEC_LEAST);
}

/* A setting in the making. */
struct sashing {
    struct muslin_quilt *quilt;
    struct msl_check *check;
    const muslin_id *blocks;
    int64_t columns;
    int64_t rows;
    uint32_t frame;       /* 1 or 0 */
    uint32_t sash;        /* measure */
    uint32_t fabric;
    uint32_t cornerstone; /* fabric; 0: none */
    uint32_t *line;       /* one row, from the left: sashes and what lies between them */
    uint32_t *column;     /* all rows, from the top, with the rows of sashes between them */
};

/* Places in a row or column of n blocks, with the sashes between them and those of the frame. */
static uint32_t places(const struct sashing *s, int64_t n)
{
    return (uint32_t)n * 2 - 1 + 2 * s->frame;
}

static uint32_t block_at(const struct sashing *s, int64_t row, int64_t column)
{
    s->check->at = row * s->columns + column;
    uint32_t block = msl_want_id(s->check, s->quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, s->blocks[s->check->at]);
    s->check->at = 0;
    return block;
}

/* Joins the line: in it, every other place, the first too in a frame, is filled with `between`. */
static uint32_t join_line(const struct sashing *s, uint32_t between)
{
    uint32_t n = places(s, s->columns);
    for (uint32_t i = 1 - s->frame; i < n; i += 2)
        s->line[i] = between;
    return msl_add_join(s->check, s->quilt, MUSLIN_AXIS_ACROSS, s->line, n);
}

/* Blocks of one row, with sashes as long as the first of them is high. */
static uint32_t add_block_row(const struct sashing *s, int64_t row)
{
    for (int64_t column = 0; s->check->status == MUSLIN_OK && column < s->columns; column++)
        s->line[2 * column + s->frame] = block_at(s, row, column);
    if (places(s, s->columns) == 1)
        return s->line[0];
    uint32_t length = msl_add_extent(s->check, s->quilt, s->line[s->frame], MUSLIN_AXIS_DOWN);
    return join_line(s, msl_add_patch(s->check, s->quilt, s->fabric, s->sash, length));
}

/* A sash as long as a node is wide. */
static uint32_t add_level_sash(const struct sashing *s, uint32_t node)
{
    uint32_t length = msl_add_extent(s->check, s->quilt, node, MUSLIN_AXIS_ACROSS);
    return msl_add_patch(s->check, s->quilt, s->fabric, length, s->sash);
}

/* Sashes as long as the first blocks are wide, with cornerstones. */
static uint32_t add_sash_row(const struct sashing *s)
{
    for (int64_t column = 0; s->check->status == MUSLIN_OK && column < s->columns; column++)
        s->line[2 * column + s->frame] = add_level_sash(s, block_at(s, 0, column));
    return join_line(s, msl_add_patch(s->check, s->quilt, s->cornerstone, s->sash, s->sash));
}

/* The row of sashes under a row of blocks (of the frame's top: over it). */
static uint32_t add_between(const struct sashing *s, uint32_t row)
{
    return s->cornerstone != 0 ? add_sash_row(s) : add_level_sash(s, row);
}

static uint32_t add_rows(const struct sashing *s)
{
    uint32_t n = places(s, s->rows);
    for (int64_t row = 0; s->check->status == MUSLIN_OK && row < s->rows; row++) {
        uint32_t at = 2 * (uint32_t)row + s->frame;
        s->column[at] = add_block_row(s, row);
        if (row == 0 && s->frame != 0)
            s->column[0] = add_between(s, s->column[at]);
        if (at + 1 < n)
            s->column[at + 1] = add_between(s, s->column[at]);
    }
    return msl_add_join(s->check, s->quilt, MUSLIN_AXIS_DOWN, s->column, n);
}

static uint32_t add_sashed(struct sashing *s)
{
    const struct muslin_allocator *a = &s->quilt->allocator;
    s->line = msl_scratch(s->check, a, places(s, s->columns), sizeof s->line[0]);
    s->column = msl_scratch(s->check, a, places(s, s->rows), sizeof s->column[0]);
    uint32_t node = s->check->status == MUSLIN_OK ? add_rows(s) : 0;
    msl_scratch_free(a, s->column, places(s, s->rows), sizeof s->column[0]);
    msl_scratch_free(a, s->line, places(s, s->columns), sizeof s->line[0]);
    return node;
}

/* Without a fabric of their own cornerstones are as the sashes. */
static void want_cornerstone(struct msl_check *check, const struct muslin_quilt *quilt,
                             const struct muslin_quilt_sashed_spec *in, struct sashing *s)
{
    check->at = 1;
    if ((in->flags & MUSLIN_QUILT_SASHED_CORNERSTONES) != 0)
        s->cornerstone =
            msl_want_id_or(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in->cornerstone, s->fabric);
    else
        msl_want_between(check, MUSLIN_ARG_FABRIC, in->cornerstone, 0, 0);
    check->at = 0;
}

static void want_sashed(struct msl_check *check, const struct muslin_quilt *quilt,
                        const struct muslin_quilt_sashed_spec *in, size_t n, struct sashing *s)
{
    msl_want_some_count(check, MUSLIN_ARG_COLUMNS, in->columns);
    msl_want_some_count(check, MUSLIN_ARG_QUILT_ROWS, in->rows);
    s->sash = msl_want_id(check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, in->sash);
    s->fabric = msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, in->sash_fabric);
    want_cornerstone(check, quilt, in, s);
    if (check->status == MUSLIN_OK)
        msl_want_between(check, MUSLIN_ARG_CHILDREN, (int64_t)n, in->columns * in->rows, in->columns * in->rows);
}

muslin_status muslin_quilt_sashed(struct muslin_quilt *quilt, const struct muslin_quilt_sashed_spec *spec,
                                  const muslin_id *blocks, size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_quilt_sashed_spec in;
    msl_want_quilt(&check, quilt, out);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, sizeof in, SASHED_SPEC_LEAST,
                    MUSLIN_QUILT_SASHED_FRAME | MUSLIN_QUILT_SASHED_CORNERSTONES, spec);
    msl_want_children(&check, blocks, n);
    if (check.status != MUSLIN_OK)
        return check.status;
    const uint32_t frame = (in.flags & MUSLIN_QUILT_SASHED_FRAME) != 0;
    struct sashing sashing = {
        .quilt = quilt, .check = &check, .blocks = blocks, .columns = in.columns, .rows = in.rows, .frame = frame
    };
    want_sashed(&check, quilt, &in, n, &sashing);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_node(&check, quilt, mark, add_sashed(&sashing), out);
}
