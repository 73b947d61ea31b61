/* muslin/shape.h - a unit of the caller's own: polygons and arcs, their templates with allowances.
 *
 * SPDX-License-Identifier: MIT
 *
 * A unit is drawn as finished: an outline, and pieces that fill it. Each corner of the drawing is one row. x grows to
 * the right and y upwards, the right side of the cloth faces you, and every piece and the outline run
 * counter-clockwise, so that the cloth of a piece lies on the left hand. A template laid on the wrong side of the cloth
 * is mirrored.
 *
 * Rows        All corners of the outline first, with piece MUSLIN_SHAPE_OUTLINE, then all of piece 0, of piece 1 and
 *             so on, without gaps; the outline may be missing where a comment says so. At most MUSLIN_SHAPE_CORNERS_MAX
 *             rows. A row speaks of its corner and of the edge that starts there and runs to the piece's next corner,
 *             the last one's to the first. Where a piece's corner lies on a neighbour's straight edge, the neighbour
 *             needs no corner there.
 * Ranges      x and y 0 .. MUSLIN_SHAPE_SIZE_MAX ticks; the centre of an arc -MUSLIN_SHAPE_SIZE_MAX ..
 *             2 x MUSLIN_SHAPE_SIZE_MAX, its radius 1 .. MUSLIN_SHAPE_SIZE_MAX; allowance and take-up of an edge
 *             0 .. MUSLIN_SHAPE_SEAM_MAX.
 * Arcs        Centre and radius are whole ticks, both corners lie within 1 tick of the circle, and the arc turns by at
 *             most half a circle. A convex arc bulges out of its piece, a concave one into it. Centre and radius of a
 *             straight edge are 0.
 * Allowance   An edge is cut e = allowance + take-up / 2 outside its seam, its effective allowance. Those of the
 *             outline's edges must be in range and mean nothing.
 *
 * Every call
 *   Statuses    MUSLIN_ERR_NULL, _STRUCT_SIZE, _STRUCT_TAIL, _FLAGS: an input or output breaks the rules of base.h.
 *               MUSLIN_ERR_CHOICE, MUSLIN_ERR_RANGE: a member outside its choices or range; fewer than 1 row or too
 *               many. MUSLIN_ERR_SHAPE: pieces not in the order above, or no such shape. In the problem `at` is the row
 *               at which it was found; for the outline and a piece as a whole its first row. The ..._init calls return
 *               MUSLIN_ERR_NULL and MUSLIN_ERR_STRUCT_SIZE.
 *   Rounding    Values with roots in them are found exactly and rounded once.
 */
#ifndef MUSLIN_SHAPE_H
#define MUSLIN_SHAPE_H

#include "seam.h"

#ifdef __cplusplus
extern "C" {
#endif

/* ---- a unit, drawn ---------------------------------------------------------------------------------------------- */

/* The largest coordinate and radius of a finished corner: 2^20 ticks, 129 in. */
#define MUSLIN_SHAPE_SIZE_MAX INT64_C(1048576)
/* The largest allowance and take-up of an edge: 2^17 ticks, 16 in. */
#define MUSLIN_SHAPE_SEAM_MAX INT64_C(131072)
/* The most corners of a unit, outline and pieces together. */
#define MUSLIN_SHAPE_CORNERS_MAX 1024
/* The piece number of the outline. */
#define MUSLIN_SHAPE_OUTLINE (-1)

/* How an edge runs. */
enum muslin_curve {
    MUSLIN_CURVE_STRAIGHT = 1, /* no arc */
    MUSLIN_CURVE_CONVEX = 2, /* an arc that bulges out of its piece: counter-clockwise round its centre */
    MUSLIN_CURVE_CONCAVE = 3 /* an arc that bulges into its piece: clockwise round its centre */
};

/* How the allowances of two straight edges meet at a corner whose angle is below a right angle; at any other corner all
 * of them are as SHARP. Geometry; what the trade calls them differs. */
enum muslin_corner_tip {
    /* the raw edges run on until they meet */
    MUSLIN_CORNER_TIP_SHARP = 1,
    /* each raw edge runs past the corner, measured along its seam, by the effective allowance of the other edge; the
     * tip is cut off straight between the two ends. With equal allowances that cut is square to the line that halves
     * the corner, and 1 to 1.41 allowances beyond it */
    MUSLIN_CORNER_TIP_BLUNT = 2,
    /* without the dog-ear that would peep out when the seam of the edge that ends at the corner is sewn and its
     * allowance folded under the piece: the raw edge of the other edge, mirrored in that seam, cuts it off */
    MUSLIN_CORNER_TIP_TRIM_ARRIVING = 3,
    /* the same for the seam of the edge that starts at the corner */
    MUSLIN_CORNER_TIP_TRIM_LEAVING = 4
};

/* One corner, and the edge that starts at it. */
struct muslin_corner_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    int32_t piece;        /* MUSLIN_SHAPE_OUTLINE, 0, 1, ... */
    int32_t tip;          /* enum muslin_corner_tip; SHARP where an arc ends or starts */
    muslin_len x;         /* finished corner */
    muslin_len y;
    muslin_len allowance; /* of the edge, as stitched */
    muslin_len take_up;   /* of its seam, when pressed */
    muslin_len centre_x;  /* of the edge's arc; 0 for a straight edge */
    muslin_len centre_y;
    muslin_len radius;    /* of the arc; 0 for a straight edge */
    int32_t curve;        /* enum muslin_curve */
    int32_t pad;          /* 0 */
};
/* A sharp corner of piece 0 with a straight edge and an allowance of 1/4 in; the place is still to be given. */
#define MUSLIN_CORNER_SPEC_INIT { sizeof(struct muslin_corner_spec), 0, 0, 1, 0, 0, 2032, 0, 0, 0, 0, 1, 0 }
/* Writes the values above to the first `size` bytes of *spec. Example: muslin_corner_spec_init(&corner, sizeof corner)
 * gives a straight edge with a 1/4 in allowance. Since 1.0. */
MUSLIN_API muslin_status muslin_corner_spec_init(struct muslin_corner_spec *spec, uint32_t size);

/* ---- do the pieces fill the outline? ---------------------------------------------------------------------------- */

struct muslin_shape {
    uint32_t size;
    uint32_t flags;
    int64_t pieces;             /* without the outline */
    int64_t corners;            /* of the pieces together */
    int64_t outside_edges;      /* edges of pieces that lie on the outline */
    int64_t inside_edges;       /* the others: each is sewn to a neighbour */
    muslin_len finished_width;  /* of the outline along x, arcs included, up to a tick */
    muslin_len finished_height;
    int64_t finished_area;      /* of the polygon of the outline's corners, doubled square ticks */
    int32_t has_arcs;           /* 1 when some edge is an arc, so that the area is not the polygon's */
    int32_t pad;
};
/* Whether the drawing is a unit: outline and pieces are simple shapes that run counter-clockwise, and the pieces cover
 * the outline exactly once. The outline and at least one piece must be given. MUSLIN_ERR_SHAPE, with the row in the
 * problem: fewer than three corners (two where an edge is an arc), an edge without length, a corner that is not within
 * a tick of its arc's circle, an arc of more than half a turn, edges of one piece that cross, touch or lie on each
 * other, a piece that runs clockwise. MUSLIN_ERR_NOT_TILED, with the row of the edge: a stretch of that edge is
 * answered by no neighbour and not by the outline, or by too many. A straight edge may meet several neighbours; an arc
 * must be the same arc on both sides, from corner to corner. Source: geometry: where every piece and the outline go
 * round once, and their boundaries cancel, stretch by stretch, the pieces' winding numbers add up to the outline's,
 * which is 1 at each point inside. Exact, but for one thing: as corners may lie a tick off their arcs, an arc of radius
 * r and its neighbour may meet a second time within 6 sqrt(r) ticks of their common corner, and are then taken to touch
 * there. Time grows with the square of the rows, times the corners that lie on one edge; nothing is allocated. Example:
 * a 6 in square of two triangles: 2 pieces, 4 edges outside and 2 inside, 6 by 6 in finished. Since 1.0. */
MUSLIN_API muslin_status muslin_shape_check(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                            struct muslin_shape *out, struct muslin_problem *problem);

/* ---- templates -------------------------------------------------------------------------------------------------- */

/* The farthest a cut corner may lie from the origin in x or y: 2^22 ticks, 516 in. */
#define MUSLIN_TEMPLATE_REACH_MAX INT64_C(4194304)

/* One corner of a template, and the cut edge that starts at it. */
struct muslin_template_corner {
    uint32_t size;
    uint32_t flags;
    int32_t corner;      /* row of the finished corner that it belongs to */
    int32_t curve;       /* enum muslin_curve: of the cut edge */
    muslin_len x;        /* cut corner, on the grid; may be negative */
    muslin_len y;
    muslin_len centre_x; /* of a cut arc, else 0 */
    muslin_len centre_y;
    muslin_len radius;   /* of a cut arc, to the nearest tick, a half up: r + e of a convex, r - e of a concave one */
    int32_t has_seam;    /* 1 when the edge runs along a seam, 0 for the short cut across a tip or a step */
    int32_t pad;
};
/* The template of one piece as cut: each edge moved out by its effective allowance, each corner where the moved edges
 * meet, x and y rounded on their own to the grid. Rows come in the order of the piece, counter-clockwise. Two rows
 * share a finished corner where a tip is cut off, and where edges in one line have unequal allowances. The outline may
 * be missing. Only this piece is checked, as muslin_shape_check() does it. MUSLIN_ERR_INDEX: no such piece, or the
 * outline. MUSLIN_ERR_CHOICE: a tip other than SHARP where an arc ends or starts. MUSLIN_ERR_SEAM_TOO_WIDE, with the
 * row: a concave arc of radius e or less, moved edges that do not meet, or an edge that the allowances of its
 * neighbours eat. MUSLIN_ERR_OVERFLOW: a sharp tip beyond MUSLIN_TEMPLATE_REACH_MAX. MUSLIN_ERR_SHAPE also where a
 * straight edge meets an arc and is neither parallel to x or y nor radial (its line passes the centre within a tick; it
 * is then taken to run from the centre through the corner): that corner has a root within a root and is not worked out;
 * and where arc and edge touch at the corner and no longer do when moved. MUSLIN_ERR_BUFFER: more rows are needed;
 * *count says how many. Whether allowances far apart overlap, as in a deep narrow notch, is not checked. Source:
 * geometry; for arcs also common practice (convex r + s, concave r - s). Time grows with the square of the piece's
 * corners. Example: a 3 in finished half square as a triangle (0, 0) (3, 0) (0, 3) with 1/4 in allowances, to the
 * nearest 1/8 in: (-1/4, -1/4) (3 5/8, -1/4) (-1/4, 3 5/8), the well-known 7/8 in more than finished. Since 1.0. */
MUSLIN_API muslin_status muslin_shape_template(const struct muslin_corner_spec *corners, size_t corner_size, size_t n,
                                               int32_t piece, const struct muslin_rounding_spec *rounding,
                                               struct muslin_template_corner *rows, size_t row_size, size_t capacity,
                                               size_t *count, struct muslin_problem *problem);

struct muslin_shape_piece_spec {
    uint32_t size;
    uint32_t flags;      /* 0 */
    int32_t piece;       /* 0, 1, ... */
    int32_t pad;         /* 0 */
    muslin_len grain_x;  /* where the straight grain runs on the piece, a direction: -MUSLIN_SHAPE_SIZE_MAX ..
                            MUSLIN_SHAPE_SIZE_MAX; both 0: say where it should run */
    muslin_len grain_y;
    muslin_len margin;   /* added all round the rectangles, 0 .. MUSLIN_SHAPE_SIZE_MAX: for a foundation, or for
                            safety */
};
/* Piece 0, grain to be chosen, no margin. */
#define MUSLIN_SHAPE_PIECE_SPEC_INIT { sizeof(struct muslin_shape_piece_spec), 0, 0, 0, 0, 0, 0 }
/* Writes the values above to the first `size` bytes of *spec. Example: muslin_shape_piece_spec_init(&spec, sizeof spec)
 * gives piece 0 without a margin. Since 1.0. */
MUSLIN_API muslin_status muslin_shape_piece_spec_init(struct muslin_shape_piece_spec *spec, uint32_t size);

struct muslin_shape_piece {
    uint32_t size;
    uint32_t flags;
    int64_t finished_area;     /* of the polygon of its corners, doubled square ticks */
    int64_t cut_area;          /* of the polygon of the template's rounded corners, doubled square ticks */
    muslin_len cut_width;      /* of the template along x, arcs included, up to a tick, without margin */
    muslin_len cut_height;     /* along y */
    muslin_len longest;        /* finished length of its longest straight edge, to the nearest tick; 0: it has none */
    muslin_len grain_x;        /* the straight grain: as given, or as recommended */
    muslin_len grain_y;
    muslin_len rectangle_along; /* cut size that holds template and margin, along the straight grain, up to a tick */
    muslin_len rectangle_across; /* across it: the cut width of a strip that holds them */
    int32_t longest_corner;    /* row of the corner where the longest straight edge starts (the first of equals); -1 */
    int32_t grain_corner;      /* row of the edge that the recommended grain follows; -1 when it was given, or none */
    int32_t outside_edges;     /* edges that lie on the outline, wholly or in part; 0 without an outline */
    int32_t bias_edges;        /* of them: arcs, and straight ones neither along nor across the grain */
    int32_t has_arcs;          /* 1 when some edge is an arc, so that areas are not the polygons' */
    uint32_t warnings;         /* MUSLIN_WARN_BIAS_EDGE when there are bias edges */
};
/* What one needs to know before cutting a piece: areas, the rectangle to cut it from, grain. Recommended is the
 * straight grain along the longest straight edge on the outline, else along the longest straight edge, else along x;
 * the first of equals. The template is the one that muslin_shape_template() gives with the same rounding, and so are
 * the statuses, without MUSLIN_ERR_BUFFER. The rectangle with a margin is the cut size of a foundation or of the cloth
 * for a piece sewn onto one. Straight grain on the outside edges is common practice, no source; the rest is geometry.
 * Time grows with the square of the rows. Example: the half square of 3 in, its two short edges outside: grain along x,
 * no bias edge, and a rectangle of about 3.86 in square (3.8536). Since 1.0. */
MUSLIN_API muslin_status muslin_shape_measure(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                              const struct muslin_shape_piece_spec *spec,
                                              const struct muslin_rounding_spec *rounding,
                                              struct muslin_shape_piece *out, struct muslin_problem *problem);

/* The rectangle that holds a piece's template plus `margin` (0 .. MUSLIN_SHAPE_SIZE_MAX) all round when one of its
 * straight edges lies along a strip, or along the sewing line of a foundation: `corner` is the row where that edge
 * starts (a row of the outline or no row at all: MUSLIN_ERR_INDEX; of an arc: MUSLIN_ERR_SHAPE). *along gets the size
 * along the edge, *across the size across it, both up to a tick. Other statuses and time: as muslin_shape_measure().
 * Source: geometry; that a foundation piece is cut with a margin all round is common practice, no source. Example: the
 * half square of 3 in laid with its long edge along the strip: 5.45 in along and 2.725 in across. Since 1.0. */
MUSLIN_API muslin_status muslin_shape_foundation(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                                 int32_t corner, muslin_len margin,
                                                 const struct muslin_rounding_spec *rounding, muslin_len *along,
                                                 muslin_len *across, struct muslin_problem *problem);

/* ---- quarter circles -------------------------------------------------------------------------------------------- */

struct muslin_quarter_circle_spec {
    uint32_t size;
    uint32_t flags;       /* 0 */
    muslin_len finished;  /* F, side of the finished square, 2 .. MUSLIN_SIZE_MAX / 4 */
    muslin_len radius;    /* r, of the seam, 1 .. F - 1 */
    muslin_len allowance; /* of every edge */
    muslin_len take_up;
};
/* Allowances of 1/4 in; square and radius are still to be given. */
#define MUSLIN_QUARTER_CIRCLE_SPEC_INIT { sizeof(struct muslin_quarter_circle_spec), 0, 0, 0, 2032, 0 }
/* Writes the values above to the first `size` bytes of *spec. Example: muslin_quarter_circle_spec_init(&spec, sizeof
 * spec) gives allowances of 1/4 in. Since 1.0. */
MUSLIN_API muslin_status muslin_quarter_circle_spec_init(struct muslin_quarter_circle_spec *spec, uint32_t size);

struct muslin_quarter_circle {
    uint32_t size;
    uint32_t flags;
    muslin_len convex_cut_square;   /* r + 2 e: square that holds the convex piece, exact */
    muslin_len convex_cut_radius;   /* r + e, from the finished corner of the square, rounded */
    muslin_len convex_cut_leg;      /* straight edge from the cut corner to the cut arc, rounded */
    muslin_len concave_cut_square;  /* F + 2 e: square that the concave piece is cut from, exact */
    muslin_len concave_cut_radius;  /* r - e, from the same point, rounded */
    muslin_len concave_cut_leg;     /* straight edge from the cut corner that is left of the square to the cut arc,
                                       rounded: the shorter of the two kinds that the piece has */
    muslin_len centre_inset;        /* e, from two cut edges of the square to the centre of the arcs, rounded */
    muslin_len seam_length;         /* r x pi / 2, the curved seam, rounded */
};
/* The two pieces of a square with a quarter circle about one corner: the convex one (a slice of the disc) and the
 * concave one (the background). With e = allowance + take-up / 2 the legs are e + sqrt((r + e)^2 - e^2) and F + e -
 * sqrt((r - e)^2 - e^2). MUSLIN_ERR_RANGE: also a radius of F or more. MUSLIN_ERR_SEAM_TOO_WIDE: r below 2 e, so that
 * the concave cut arc does not reach the cut edges. Source: geometry; convex r + s, concave r - s is common practice,
 * no source. Constant time. Example: a 7 in square with r 5 in: radii 5 1/4 and 4 3/4 in, squares 5 1/2 and 7 1/2 in.
 * Since 1.0. */
MUSLIN_API muslin_status muslin_shape_quarter_circle(const struct muslin_quarter_circle_spec *spec,
                                                     const struct muslin_rounding_spec *rounding,
                                                     struct muslin_quarter_circle *out, struct muslin_problem *problem);

/* The length of an arc of so many quarter turns (1 .. 4) of a circle: radius x pi / 2 x quarter_turns. radius
 * 0 .. MUSLIN_SIZE_MAX. Source: geometry. Constant time. Example: half a circle of
 * 5 in radius, to the nearest 1/8 in: 15 3/4 in (15.708). Since 1.0. */
MUSLIN_API muslin_status muslin_arc_length(muslin_len radius, int32_t quarter_turns,
                                           const struct muslin_rounding_spec *rounding, struct muslin_rounded *out,
                                           struct muslin_problem *problem);

/* ---- regular polygons ------------------------------------------------------------------------------------------- */

/* By which of its measures a regular polygon is named. */
enum muslin_polygon_measure {
    MUSLIN_POLYGON_MEASURE_SIDE = 1,    /* one side */
    MUSLIN_POLYGON_MEASURE_FLATS = 2,   /* from a side straight across to the opposite side, of a triangle to the
                                           corner */
    MUSLIN_POLYGON_MEASURE_CORNERS = 3, /* between the two corners farthest apart; of a triangle its side */
    MUSLIN_POLYGON_MEASURE_CENTRE = 4   /* from the centre to a corner */
};

struct muslin_regular_polygon {
    uint32_t size;
    uint32_t flags;
    muslin_len side;    /* each rounded on its own from the exact value */
    muslin_len flats;   /* straight across */
    muslin_len corners; /* between the farthest two */
    muslin_len centre;  /* from there to a corner */
    int64_t area;       /* doubled square ticks, nearest */
};
/* The measures of a regular triangle, square, hexagon or octagon (sides 3, 4, 6 or 8, else MUSLIN_ERR_CHOICE) from one
 * of them (1 .. MUSLIN_SIZE_MAX), all finished or all cut as the caller means it. MUSLIN_ERR_OVERFLOW when the area
 * passes MUSLIN_LENGTH_MAX. Source: geometry. Constant time. Example: a hexagon 2 3/4 in from flat to flat, to the
 * nearest 1/16 in: side 1 9/16 in (1.588), 3 3/16 in from corner to corner (3.175). Since 1.0. */
MUSLIN_API muslin_status muslin_shape_regular_polygon(int32_t sides, int32_t measure, muslin_len length,
                                                      const struct muslin_rounding_spec *rounding,
                                                      struct muslin_regular_polygon *out,
                                                      struct muslin_problem *problem);

#ifdef __cplusplus
}
#endif

#endif
