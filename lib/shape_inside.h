/* shape_inside.h - what the files of shape.h share: the drawing, its pieces, and how far a piece reaches.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_SHAPE_INSIDE_H
#define MUSLIN_SHAPE_INSIDE_H

#include "muslin/shape.h"
#include "shape_roots.h"

/* ---- the drawing ------------------------------------------------------------------------------------------------ */

/* The caller's rows, all checked by msl_shape_read(). */
struct msl_shape_drawing {
    const void *rows;
    size_t row_size;
    int32_t n;
};

/* A run of rows that make one shape: rows first .. first + count - 1. count 0: there is none. */
struct msl_shape_ring {
    int32_t first;
    int32_t count;
};

/* The edge that starts at a row: from (px, py) to (qx, qy). */
struct msl_shape_edge {
    int32_t row;
    int32_t next; /* row of the corner at its end */
    int32_t piece;
    int32_t curve;
    int32_t tip;
    int32_t spare;
    int64_t px, py, qx, qy;
    int64_t cx, cy, radius;
    int64_t seam; /* twice the effective allowance: 2 x allowance + take-up, in half ticks therefore the allowance */
};

/* Checks and keeps the rows: each row, and their order. */
struct msl_shape_drawing msl_shape_read(struct msl_check *check, const void *rows, size_t row_size, size_t n);

/* The ring of the outline (-1) or a piece. */
struct msl_shape_ring msl_ring_of(const struct msl_shape_drawing *drawing, int32_t piece);
/* The ring that starts at a row; none behind the last row. */
struct msl_shape_ring msl_ring_at(const struct msl_shape_drawing *drawing, int32_t first);
struct msl_shape_edge msl_edge_of(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring, int32_t place);

/* A ring must be a simple shape that runs counter-clockwise: else MUSLIN_ERR_SHAPE. */
void msl_want_ring(struct msl_check *check, const struct msl_shape_drawing *drawing, struct msl_shape_ring ring);

/* Records a failure at a row. */
void msl_fail_at(struct msl_check *check, muslin_status status, int32_t row);

/* ---- sides and crossings ---------------------------------------------------------------------------------------- */

/* (ax, ay) x (bx, by); both within +-2^30. */
int64_t msl_cross(int64_t ax, int64_t ay, int64_t bx, int64_t by);
int32_t msl_sign(int64_t number);

/* 1 for a convex arc, -1 for a concave one, 0 for a straight edge. */
int32_t msl_bulge(const struct msl_shape_edge *edge);

/* Is the point on the closed straight edge? */
int msl_on_edge(const struct msl_shape_edge *edge, int64_t x, int64_t y);

/* Do two edges of a ring cross, touch or lie on each other, beyond the corners they share? */
int msl_edges_meet(const struct msl_shape_edge *a, const struct msl_shape_edge *b);

/* The same for an arc and a straight edge, and for two arcs. */
int msl_arc_meets_line(const struct msl_shape_edge *arc, const struct msl_shape_edge *line);
int msl_arcs_meet(const struct msl_shape_edge *a, const struct msl_shape_edge *b);

/* Does a straight edge lie on another one, wholly or in part, both running the same way? Arcs: are they the same? */
int msl_edge_lies_on(const struct msl_shape_edge *edge, const struct msl_shape_edge *other);

/* Does an edge lie on the outline, wholly or in part? */
int msl_is_outside(const struct msl_shape_drawing *drawing, const struct msl_shape_edge *edge);

/* Of the polygon of a ring's corners, in doubled square ticks. */
int64_t msl_finished_area(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring);

/* ---- how far a shape reaches ------------------------------------------------------------------------------------ */

/* A shape seen along (gx, gy) and across it: the farthest points in the directions g, -g, g turned left, and that
 * turned back. Each is dot / |g| + radius, in half ticks. */
struct msl_shape_reach {
    int64_t gx, gy;
    int64_t dot[4];
    int64_t radius[4];
    int32_t begun;
    int32_t pad;
};

struct msl_shape_reach msl_reach_start(int64_t gx, int64_t gy);
/* Takes in a point, in half ticks. */
void msl_reach_point(struct msl_shape_reach *reach, int64_t x, int64_t y);
/* Takes in a convex arc: centre, radius and ends in half ticks. */
void msl_reach_arc(struct msl_shape_reach *reach, const struct msl_shape_edge *arc);
/* Size along (0) or across (1), up to a tick. */
muslin_len msl_reach_size(const struct msl_shape_reach *reach, int32_t across);

/* ---- templates -------------------------------------------------------------------------------------------------- */

/* The one or two cut corners at a finished one. */
struct msl_joint {
    int32_t count;
    int32_t pad;
    int64_t x[2];
    int64_t y[2];
};

/* Where the edge `in` meets the edge `out`, both moved out, rounded. Failures are recorded. */
struct msl_joint msl_joint_of(struct msl_check *check, const struct msl_shape_edge *in,
                              const struct msl_shape_edge *out, const struct muslin_rounding_spec *rounding);

/* Twice the radius of the arc as cut. */
int64_t msl_cut_diameter(const struct msl_shape_edge *arc);

/* The cut edge from the last point of one joint to the first of the next, which must still run the same way: else
 * MUSLIN_ERR_SEAM_TOO_WIDE. */
void msl_want_cut_edge(struct msl_check *check, const struct msl_shape_edge *edge, const struct msl_joint *from,
                       const struct msl_joint *to);

#endif
