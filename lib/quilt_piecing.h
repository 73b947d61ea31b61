/* quilt_piecing.h - how the pieces of a unit or of the caller's own shape are sewn together.
 *
 * SPDX-License-Identifier: MIT
 *
 * Which edges meet does not depend on the size. So it is found once, when the node is made, in a drawing of it in whole
 * numbers, and kept among the node's arguments: a solved node only has to look its seams up. Corners are numbered
 * through all pieces, each piece's counter-clockwise; the edge that starts at a corner has its number. */
#ifndef MUSLIN_QUILT_PIECING_H
#define MUSLIN_QUILT_PIECING_H

#include "quilt_store.h"

/* A pattern in whole numbers: of each piece its first corner, and one more; then x and y of each corner. */
struct msl_piecing_pattern {
    int32_t pieces;
    int32_t width;
    int32_t height;
    int32_t in_halves; /* 1: the first two seams that follow each other in a line are sewn as one */
    const int32_t *first;
    const int32_t *places;
};

/* What the arguments hold, from `args` on:
 *     pieces, seams, seams across, seams down
 *     pieces along the left, right, top and bottom edge
 *     first corner of each piece, and how many there are in all
 *     of each edge the first seam along it; -1 on the outside
 *     of each seam: first and second piece, first and last corner */
enum { PIECING_PIECES, PIECING_SEAMS, PIECING_ACROSS, PIECING_DOWN, PIECING_ALONG, PIECING_FIRST = PIECING_ALONG + 4 };

/* A straight line along which one piece is sewn to one other. Its ends are corners of pieces that it joins; it runs
 * upwards, a level one to the right, with the first piece on its left hand. Where it joins two halves, the first piece
 * is the one at its beginning, and the second the one at its end: of a point at which pieces of two fabrics take turns,
 * both are of one, so neither half is the darker. */
enum { SEAM_FIRST, SEAM_SECOND, SEAM_FROM, SEAM_TO, SEAM_ARGS };

/* The most arguments that it takes. There are no more seams than edges. */
static inline uint32_t msl_piecing_room(uint32_t pieces, uint32_t corners)
{
    return PIECING_FIRST + pieces + 1 + (1 + SEAM_ARGS) * corners;
}

/* Writes it from the pattern, whose `first` lies where it belongs: at args + PIECING_FIRST. Returns how many arguments
 * it takes. */
uint32_t msl_find_piecing(const struct msl_piecing_pattern *pattern, int32_t *args);

static inline int32_t msl_first_corner(const int32_t *piecing, int64_t piece)
{
    return piecing[PIECING_FIRST + piece];
}

/* The first seam along an edge of a piece; -1 on the outside. */
static inline int32_t msl_piecing_along(const int32_t *piecing, int32_t corner)
{
    return piecing[PIECING_FIRST + piecing[PIECING_PIECES] + 1 + corner];
}

static inline const int32_t *msl_piecing_seam(const int32_t *piecing, int64_t seam)
{
    int32_t pieces = piecing[PIECING_PIECES];
    return piecing + PIECING_FIRST + pieces + 1 + msl_first_corner(piecing, pieces) + SEAM_ARGS * seam;
}

#endif
