/* quilt_shape.c - units of the caller's own, drawn as polygons.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_piecing.h"

enum { CORNER_LEAST = sizeof(struct muslin_corner_spec) };

/* The caller's drawing, which muslin_shape_check() has found good, and where it goes. */
struct drawing {
    const void *rows;
    size_t row_size;
    int32_t n;
    int32_t outline; /* rows of it, which come first */
    int32_t *first;  /* of each piece its first corner, and one more */
    int32_t *places; /* x and y of each corner of the pieces */
};

/* One row; after a failure it is no longer the outline's. */
static struct muslin_corner_spec corner_at(struct msl_check *check, const struct drawing *drawing, int32_t row)
{
    struct muslin_corner_spec corner;
    const void *from = msl_row_to_read(check, drawing->rows, drawing->row_size, (size_t)row);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &corner, sizeof corner, CORNER_LEAST, 0, from);
    if (check->status == MUSLIN_OK && corner.curve != MUSLIN_CURVE_STRAIGHT)
        msl_fail(check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_CURVE, corner.curve, MUSLIN_CURVE_STRAIGHT);
    return corner;
}

/* With straight edges it is an upright rectangle when its area is that of the smallest one round it, and begins at
 * (0, 0) when it has a corner there. */
static void read_outline(struct msl_check *check, struct drawing *drawing, const struct muslin_shape *shape)
{
    int has_origin = 0;
    struct muslin_corner_spec corner = corner_at(check, drawing, 0);
    for (; corner.piece == MUSLIN_SHAPE_OUTLINE; corner = corner_at(check, drawing, drawing->outline)) {
        has_origin |= corner.x == 0 && corner.y == 0;
        drawing->outline++;
    }
    check->at = 0;
    if (!has_origin || shape->finished_area != 2 * shape->finished_width * shape->finished_height)
        msl_fail(check, MUSLIN_ERR_SHAPE, MUSLIN_ARG_PIECE, MUSLIN_SHAPE_OUTLINE, 0);
}

static void read_pieces(struct msl_check *check, const struct drawing *drawing)
{
    int32_t piece = MUSLIN_SHAPE_OUTLINE;
    int32_t corner = 0;
    for (int32_t row = drawing->outline; check->status == MUSLIN_OK && row < drawing->n; row++, corner++) {
        struct muslin_corner_spec at = corner_at(check, drawing, row);
        if (at.piece != piece) {
            drawing->first[at.piece] = corner;
            piece = at.piece;
        }
        msl_want_between(check, MUSLIN_ARG_CORNERS, corner + 1 - drawing->first[piece], 1, MUSLIN_QUILT_CORNERS_MAX);
        drawing->places[2 * corner] = (int32_t)at.x;
        drawing->places[2 * corner + 1] = (int32_t)at.y;
    }
    drawing->first[piece + 1] = corner;
}

/* Checks the rows; the shape has no pieces after a failure. */
static struct muslin_shape shape_of(struct msl_check *check, const struct muslin_corner_spec *corners, size_t row_size,
                                    size_t n)
{
    struct muslin_shape shape = { .size = sizeof shape };
    if (check->status == MUSLIN_OK)
        check->status = muslin_shape_check(corners, row_size, n, &shape, check->problem);
    return shape;
}

static void want_fabrics(struct msl_check *check, const struct muslin_quilt *quilt, const muslin_id *fabrics,
                         int32_t pieces, int32_t *args)
{
    for (int32_t i = 0; i < pieces; i++) {
        check->at = i;
        args[i] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, fabrics[i]);
    }
}

/* All arguments, when the places for them are begun; returns how many they are. */
static uint32_t put_args(struct msl_check *check, struct drawing *drawing, const struct muslin_shape *shape,
                         int32_t *args)
{
    const int32_t pieces = (int32_t)shape->pieces;
    args[SHAPE_DRAWN_WIDTH] = (int32_t)shape->finished_width;
    args[SHAPE_DRAWN_HEIGHT] = (int32_t)shape->finished_height;
    args[SHAPE_PIECES] = pieces;
    args[SHAPE_CORNERS] = (int32_t)shape->corners;
    drawing->places = args + SHAPE_FABRICS + pieces;
    int32_t *piecing = drawing->places + 2 * shape->corners;
    drawing->first = piecing + PIECING_FIRST;
    read_outline(check, drawing, shape);
    read_pieces(check, drawing);
    if (check->status != MUSLIN_OK)
        return 0;
    const struct msl_piecing_pattern pattern = { pieces, args[SHAPE_DRAWN_WIDTH], args[SHAPE_DRAWN_HEIGHT], 0,
                                         drawing->first, drawing->places };
    return (uint32_t)(piecing - args) + msl_find_piecing(&pattern, piecing);
}

muslin_status muslin_quilt_shape(struct muslin_quilt *quilt, const struct muslin_corner_spec *corners, size_t row_size,
                                 size_t n, const muslin_id *fabrics, size_t pieces, muslin_id width, muslin_id height,
                                 muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_pointer(&check, MUSLIN_ARG_FABRIC, fabrics);
    struct muslin_shape shape = shape_of(&check, corners, row_size, n);
    msl_want_between(&check, MUSLIN_ARG_PIECES, pieces > MSL_CHILDREN_MOST ? MSL_CHILDREN_MOST : (int64_t)pieces,
                     shape.pieces, shape.pieces);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    int32_t *args = msl_begin(&check, quilt, SHAPE_FABRICS + (uint32_t)(shape.pieces + 2 * shape.corners) +
                                                 msl_piecing_room((uint32_t)shape.pieces, (uint32_t)shape.corners));
    if (args == NULL)
        return check.status;
    struct drawing drawing = { .rows = corners, .row_size = row_size, .n = (int32_t)n };
    uint32_t count = put_args(&check, &drawing, &shape, args);
    want_fabrics(&check, quilt, fabrics, (int32_t)shape.pieces, args + SHAPE_FABRICS);
    check.at = 0;
    args[SHAPE_WIDTH] = (int32_t)msl_want_id_or(&check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, width, 0);
    check.at = 1;
    args[SHAPE_HEIGHT] = (int32_t)msl_want_id_or(&check, quilt, MUSLIN_SORT_MEASURE, MUSLIN_ARG_MEASURE, height, 0);
    if (check.status != MUSLIN_OK)
        return check.status;
    check.at = 0;
    return msl_give_node(&check, quilt, mark, msl_end_node(&check, quilt, MUSLIN_NODE_SHAPE, count), out);
}
