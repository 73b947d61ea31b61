/* solution_diagonal.h - a field on point in its turned frame: lines, cells, pieces and parts by number.
 *
 * SPDX-License-Identifier: MIT
 *
 * The turned frame. Its origin is the left tip of the first row's first block; u runs down to the right along that
 * block's lower left edge, v up to the right along its upper left one. In it everything is upright. With P = B + w, w
 * being 0 without sashes, block i, j of the c x r (column i from the left, row j from the top) lies at u = (i + j) P,
 * v = (i - j) P, alternate i, j at u = (i + j + 1) P, v = (i - j) P.
 *
 * Lines and cells. Along u and along v line 2 k lies at k P - w and line 2 k + 1 at k P. So a cell, from one line to
 * the next, is B long where its first line is odd and w where it is even; it is named by its first lines. Cells that
 * are B both ways are blocks, w both ways cornerstones, others sashes: standing ones, w along u, and lying ones.
 * Without sashes lines 2 k and 2 k + 1 are one, and all cells are blocks.
 *
 * Rows. Row b of blocks lies between v = b P and b P + B, from b = c - 1 in the upper right to b = 1 - r; below it row
 * b of sashes, between b P - w and b P. Where sashes lie outside of the corner blocks too (SASH_OUTER, SASH_CUT), there
 * is one above the first row of blocks and one below the last.
 *
 * The edge. Beyond the outermost tips of blocks lies what is outside them: a cornerstone (SASH_OUTER), half of one
 * (SASH_CUT) or nothing, o = 2 w, w or 0 along u + v. In the field, f the set-off,
 *
 *     x = f + (u + v + o) / sqrt 2        y = f + (v - u + 2 (r - 1) P + B + o) / sqrt 2
 *
 * Half a turn of the field takes u to (c + r - 2) P + B - u and v to (c - r) P + B - v, right to left, bottom to top.
 */
#ifndef MUSLIN_SOLUTION_DIAGONAL_H
#define MUSLIN_SOLUTION_DIAGONAL_H

#include "solution_inside.h"

/* ---- the field -------------------------------------------------------------------------------------------------- */

struct msl_field {
    int64_t columns;
    int64_t rows;
    muslin_len block;     /* B */
    muslin_len sash;      /* w */
    muslin_len pitch;     /* P */
    muslin_len outside;   /* o */
    muslin_len set_off;   /* f */
    int64_t reach;        /* g: see solution_diagonal_pieces.c; -1 where nothing floats */
    muslin_len seam;      /* E, twice what a raw edge stands out */
    int32_t layout;
    int32_t has_frame;    /* 1: sashes lie outside the corner blocks too */
    const int32_t *args;  /* of the node */
    const int32_t *nodes; /* blocks, then what the layout has whole: a lying sash, a standing one, a
                             cornerstone */
};

struct msl_field msl_field_of(const struct muslin_solution *solution, uint32_t node);

static inline int msl_is_sashed(const struct msl_field *field)
{
    return field->layout != MUSLIN_POINT_LAYOUT_PLAIN;
}

/* The block at the left tip of the turned frame's column i and row j, by its number; alternates come last. */
static inline int64_t msl_block_at(const struct msl_field *field, int64_t column, int64_t row)
{
    return column + row * field->columns;
}

/* Blocks, alternates included. */
static inline int64_t msl_blocks_in(const struct msl_field *field)
{
    return field->columns * field->rows + (field->columns - 1) * (field->rows - 1);
}

/* Nearest tick to (whole + root sqrt 2) / divisor. */
muslin_len msl_nearest_point(int64_t whole, int64_t root, int64_t divisor);
/* Finished width of so many columns, or height of so many rows, as (whole + root sqrt 2): the root. */
int64_t msl_field_straight(const struct msl_field *field, int64_t blocks);

/* ---- lines ------------------------------------------------------------------------------------------------------ */

/* Where a line lies, in ticks along u or v. */
muslin_len msl_line_at(const struct msl_field *field, int64_t line);
/* The k of lines 2 k and 2 k + 1, also below 0. */
static inline int64_t msl_line_pair(int64_t line)
{
    return (line - (line & 1)) / 2;
}
/* Half a turn on. */
int64_t msl_turned_u(const struct msl_field *field, int64_t line);
int64_t msl_turned_v(const struct msl_field *field, int64_t line);
/* The line at which the upper left corner begins along u, the upper right one along v; the others half a turn on. */
int64_t msl_corner_u(const struct msl_field *field);
int64_t msl_corner_v(const struct msl_field *field);

/* ---- own pieces ------------------------------------------------------------------------------------------------- */

/* What lies at the edge, by its form and its side; triangles and corners are numbered from the left or from the top,
 * corners one by one in the order in which they are sewn on. */
enum msl_form { MSL_TRIANGLE, MSL_CORNER, MSL_STANDING, MSL_LYING, MSL_EDGE_STONE };
enum msl_side { MSL_AT_TOP, MSL_AT_RIGHT, MSL_AT_BOTTOM, MSL_AT_LEFT };
enum msl_corner { MSL_TOP_LEFT, MSL_BOTTOM_RIGHT, MSL_TOP_RIGHT, MSL_BOTTOM_LEFT };

struct msl_own {
    int32_t form;
    int32_t side; /* of a corner enum msl_corner */
    int64_t number;
};
int64_t msl_own_pieces(const struct msl_field *field);
struct msl_own msl_own_piece(const struct msl_field *field, int64_t piece);
int64_t msl_piece_number(const struct msl_field *field, int32_t form, int32_t side, int64_t number);
/* The same piece seen half a turn on. */
struct msl_own msl_turned_piece(const struct msl_field *field, struct msl_own own);
/* 1 for pieces in the right and lower half, which are those of the other half turned. */
int msl_is_turned(const struct msl_own *own);
/* The row in which it lies, as the first line of a cell; not of corners. */
int64_t msl_row_of(const struct msl_field *field, struct msl_own own);

/* ---- parts ------------------------------------------------------------------------------------------------------ */

/* Parts are blocks as they were given; then sashes, four at each main block or, where there is no frame, at each
 * alternate, left, right, above, below; then cornerstones at the left of main blocks, of those above them, and at last
 * those of the frame. */
struct msl_cell {
    int64_t m; /* first line along u */
    int64_t n; /* ... and along v */
};
int64_t msl_field_parts(const struct msl_field *field);
int64_t msl_first_stone(const struct msl_field *field);
/* Cornerstones that are no frame's: those before the first of them. */
int64_t msl_first_frame_stone(const struct msl_field *field);
struct msl_cell msl_cell_of(const struct msl_field *field, int64_t part);
/* The sash at this side of a main block, where the layout has one, else the block itself: a part. */
int64_t msl_part_beside_block(const struct msl_field *field, int64_t block, enum msl_edge edge);
/* The block in a cell that is one's, by its number; -1: none. */
int64_t msl_block_in(const struct msl_field *field, struct msl_cell cell);
/* What lies in a cell, or, beyond a row of blocks, what closes it: own pieces, then parts. */
int64_t msl_item_at(const struct msl_field *field, struct msl_cell cell);
/* The next cell in its row, to the left (-1) or to the right (1). */
struct msl_cell msl_next_cell(const struct msl_field *field, struct msl_cell cell, int64_t step);

#endif
