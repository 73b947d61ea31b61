/* solution_drawing.h - going down a tree to one outline after another, and what is remembered on the way.
 *
 * SPDX-License-Identifier: MIT
 *
 * What is drawn lies in a frame: the node asked for, upright. A field on point begins a frame of its own, in which its
 * blocks lie upright again, so that everything within a frame is whole ticks; corners pass from frame to frame at the
 * end, rounded once each. */
#ifndef MUSLIN_SOLUTION_DRAWING_H
#define MUSLIN_SOLUTION_DRAWING_H

#include "solution_inside.h"

/* The seam along one side of a box: of which node, and its number. 0: the outside of what is drawn. */
struct msl_bound {
    uint32_t node;
    int32_t seam;
};

/* What is left of a frame after trimming, and the seams to which its sides are sewn. Where nothing is trimmed it has no
 * end. */
struct msl_window {
    muslin_len at[MSL_EDGES];
    struct msl_bound bound[MSL_EDGES];
    int32_t trimmed;
    int32_t pad;
};

/* A node where it lies. */
struct msl_placed {
    uint32_t node;
    int32_t turn;
    muslin_len x; /* lower left of its box in its frame */
    muslin_len y;
};

struct msl_frame {
    struct msl_placed field; /* whose frame it is, as it lies in the frame before */
    struct msl_window window;
};

struct msl_drawing {
    const struct muslin_solution *solution;
    uint32_t root;
    int32_t stage;
    int32_t level;                    /* of the frame reached */
    int32_t pad;
    struct msl_frame frames[MUSLIN_QUILT_POINT_DEPTH_MAX + 1];
    struct msl_placed at;             /* the node reached, in the last frame */
    struct msl_bound side[MSL_EDGES]; /* the seams along its box, by how its sides lie in the frame */
};

/* Begins at a node, alone. Stage as in unit.h. */
void msl_draw_start(struct msl_drawing *drawing, const struct muslin_solution *solution, uint32_t node, int32_t stage);
/* Back to that node. */
void msl_draw_again(struct msl_drawing *drawing);
/* Down to a part of the node reached. */
void msl_draw_enter(struct msl_drawing *drawing, int64_t part);
/* Width and height of the node reached, as it lies. */
muslin_len msl_drawn_width(const struct msl_drawing *drawing);
muslin_len msl_drawn_height(const struct msl_drawing *drawing);

/* One piece as it is drawn. `line` tells on which line the edge lies that starts at a corner: on one of the piece's own
 * edges by its number (ring.seam has their seams), from MSL_LINE_SIDE on along the node's box, from MSL_LINE_WINDOW on
 * along the window of a frame, four for each. */
struct msl_drawn {
    struct msl_ring ring;
    uint8_t line[MSL_RING_ROOM];
};
enum { MSL_LINE_SIDE = MSL_RING_MOST, MSL_LINE_WINDOW = MSL_LINE_SIDE + MSL_EDGES };
/* The seam along the edge that starts at a corner of the piece just drawn. */
struct msl_bound msl_drawn_bound(const struct msl_drawing *drawing, const struct msl_drawn *drawn, int32_t corner);
/* Trims it to the window of a frame, in which it lies. */
void msl_trim_drawn(const struct msl_drawing *drawing, int32_t level, struct msl_drawn *drawn);
/* Own piece of the node reached. One that is trimmed away has no corners. */
void msl_draw_piece(const struct msl_drawing *drawing, int64_t piece, struct msl_drawn *drawn);
/* A point of the frame reached, in that of the start. */
void msl_draw_point(const struct msl_drawing *drawing, muslin_len *x, muslin_len *y);
/* Goes down from the start to outline number `patch` and draws it. */
void msl_draw_patch(struct msl_drawing *drawing, int64_t patch, struct msl_drawn *drawn);

/* How a print lies after all frames, in eighths of a turn, clockwise, and whether it is mirrored first. A field turns
 * by one eighth; what is mirrored turns the other way. */
struct msl_print_lying {
    int32_t eighths;
    int32_t mirrored;
};
/* Of a piece of the node reached, whose print lies so in it. */
struct msl_print_lying msl_drawn_lying(const struct msl_drawing *drawing, int32_t print);

#endif
