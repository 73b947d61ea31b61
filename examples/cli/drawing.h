/* drawing.h - a unit of one's own shape as people write it: the corners of its outline and pieces.
 *
 * SPDX-License-Identifier: MIT */
#ifndef CLI_DRAWING_H
#define CLI_DRAWING_H

#include "command.h"

/* How an edge runs. */
extern const struct word curve_words[];

/* Shape 0 is the outline, which may have no rows; shape 1 is the first piece, as the user counts. Shape k has the rows
 * from start[k] up to start[k + 1]. */
#define OUTLINE 0
struct drawing {
    struct muslin_corner_spec *rows; /* MUSLIN_SHAPE_CORNERS_MAX of them */
    size_t n;
    size_t pieces;
    size_t start[TEXTS_MAX + 2];
};

#define ROWS_OF(drawing) (drawing)->rows, sizeof(drawing)->rows[0], (drawing)->n

size_t corners_of(const struct drawing *drawing, size_t shape);

/* A row as the user counts: the corner of which shape. */
struct place {
    size_t shape;
    size_t corner; /* from 1 */
    size_t next;   /* the corner behind it */
};
struct place place_of(const struct drawing *drawing, int64_t row);

/* Reads the next shape, a text such as "0 0, 6 0 convex 0 0 6, 0 6", in order from the outline on. Its corners get the
 * seam and, between straight edges, the tip of `model`. False leaves a failure. */
bool read_shape(struct desk *desk, const char *text, size_t shape, const struct muslin_corner_spec *model,
                struct drawing *drawing);

/* As worked(), but a complaint about a row names piece and corner as the user counts. */
bool worked_on(struct desk *desk, const struct drawing *drawing, muslin_status status);

#endif
