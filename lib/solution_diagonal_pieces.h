/* solution_diagonal_pieces.h - the lines round the pieces of a field on point, and the seams along them.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SOLUTION_DIAGONAL_PIECES_H
#define MUSLIN_SOLUTION_DIAGONAL_PIECES_H

#include "solution_diagonal.h"

/* (whole + root sqrt 2) / 4. */
struct msl_number {
    int64_t whole;
    int64_t root;
};

/* A line that bounds a piece: one along which u or v is the same, or an edge of the field; the piece lies below it (1),
 * to smaller u, v, x or y, or above it (-1). */
enum msl_line_kind { MSL_LINE_U, MSL_LINE_V, MSL_LINE_X, MSL_LINE_Y };

struct msl_line_on {
    int32_t kind; /* enum msl_line_kind */
    int32_t side;
    int64_t at;   /* number of the line; of an edge how many blocks there are along x or y, 0 for the left one and the
                     lower one */
};
/* The same half a turn on. */
struct msl_line_on msl_line_turned(const struct msl_field *field, struct msl_line_on line);

struct msl_meets {
    struct msl_number x;
    struct msl_number y;
};
/* Where two lines of different kinds meet, each moved outwards by half of `seam`. */
struct msl_meets msl_where_meet(const struct msl_field *field, const struct msl_line_on *a,
                                const struct msl_line_on *b, muslin_len seam);

/* The lines round a piece, counter-clockwise. */
struct msl_bounds {
    struct msl_line_on lines[5];
    int32_t count;
    int32_t pad;
};
void msl_bound_piece(const struct msl_field *field, int64_t piece, struct msl_bounds *bounds);

/* The seam along one of them, by its number; -1: the outside. */
int64_t msl_seam_along(const struct msl_field *field, int64_t piece, const struct msl_line_on *line);

#endif
