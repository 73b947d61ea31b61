// muslin/shape.hpp - a unit of the caller's own: polygons and arcs, their templates with allowances.
// Written by generate.py from lib/abi/api.json: change that, not this file.
//
// SPDX-License-Identifier: MIT
#ifndef MUSLIN_SHAPE_HPP
#define MUSLIN_SHAPE_HPP

#include <muslin/shape.h>
#include <muslin/seam.hpp>

namespace muslin {

/** enum muslin_curve */
enum class curve : std::int32_t {
    /** no arc */
    straight = MUSLIN_CURVE_STRAIGHT,
    /** an arc that bulges out of its piece: counter-clockwise round its centre */
    convex = MUSLIN_CURVE_CONVEX,
    /** an arc that bulges into its piece: clockwise round its centre */
    concave = MUSLIN_CURVE_CONCAVE,
};

/** enum muslin_corner_tip */
enum class corner_tip : std::int32_t {
    sharp = MUSLIN_CORNER_TIP_SHARP,
    blunt = MUSLIN_CORNER_TIP_BLUNT,
    trim_arriving = MUSLIN_CORNER_TIP_TRIM_ARRIVING,
    trim_leaving = MUSLIN_CORNER_TIP_TRIM_LEAVING,
};

/** enum muslin_polygon_measure */
enum class polygon_measure : std::int32_t {
    /** one side */
    side = MUSLIN_POLYGON_MEASURE_SIDE,
    /** from a side straight across to the opposite side, of a triangle to the corner */
    flats = MUSLIN_POLYGON_MEASURE_FLATS,
    /** between the two corners farthest apart; of a triangle its side */
    corners = MUSLIN_POLYGON_MEASURE_CORNERS,
    /** from the centre to a corner */
    centre = MUSLIN_POLYGON_MEASURE_CENTRE,
};

/** struct muslin_corner_spec. One corner, and the edge that starts at it. */
struct MUSLIN_CPP_TWIN corner_spec {
    using c_type = muslin_corner_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** MUSLIN_SHAPE_OUTLINE, 0, 1, ... */
    std::int32_t piece = 0;
    /** enum corner_tip; SHARP where an arc ends or starts */
    muslin::corner_tip tip = muslin::corner_tip::sharp;
    /** finished corner */
    muslin::length x{};
    muslin::length y{};
    /** of the edge, as stitched */
    muslin::length allowance = muslin::length::of_ticks(2032);
    /** of its seam, when pressed */
    muslin::length take_up{};
    /** of the edge's arc; 0 for a straight edge */
    muslin::length centre_x{};
    muslin::length centre_y{};
    /** of the arc; 0 for a straight edge */
    muslin::length radius{};
    /** enum curve */
    muslin::curve curve = muslin::curve::straight;
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<corner_spec>);

/** struct muslin_shape. */
struct MUSLIN_CPP_TWIN shape {
    using c_type = muslin_shape;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** without the outline */
    std::int64_t pieces = 0;
    /** of the pieces together */
    std::int64_t corners = 0;
    /** edges of pieces that lie on the outline */
    std::int64_t outside_edges = 0;
    /** the others: each is sewn to a neighbour */
    std::int64_t inside_edges = 0;
    /** of the outline along x, arcs included, up to a tick */
    muslin::length finished_width{};
    muslin::length finished_height{};
    /** of the polygon of the outline's corners, doubled square ticks */
    std::int64_t finished_area = 0;
    /** 1 when some edge is an arc, so that the area is not the polygon's */
    muslin::truth has_arcs{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<shape>);

/** struct muslin_template_corner. One corner of a template, and the cut edge that starts at it. */
struct MUSLIN_CPP_TWIN template_corner {
    using c_type = muslin_template_corner;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** row of the finished corner that it belongs to */
    std::int32_t corner = 0;
    /** enum curve: of the cut edge */
    muslin::curve curve{};
    /** cut corner, on the grid; may be negative */
    muslin::length x{};
    muslin::length y{};
    /** of a cut arc, else 0 */
    muslin::length centre_x{};
    muslin::length centre_y{};
    /** of a cut arc, to the nearest tick, a half up: r + e of a convex, r - e of a concave one */
    muslin::length radius{};
    /** 1 when the edge runs along a seam, 0 for the short cut across a tip or a step */
    muslin::truth has_seam{};
    std::int32_t pad = 0;
};
static_assert(detail::is_twin<template_corner>);

/** struct muslin_shape_piece_spec. */
struct MUSLIN_CPP_TWIN shape_piece_spec {
    using c_type = muslin_shape_piece_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** 0, 1, ... */
    std::int32_t piece = 0;
    std::int32_t pad = 0;
    /** where the straight grain runs on the piece, a direction: -MUSLIN_SHAPE_SIZE_MAX .. MUSLIN_SHAPE_SIZE_MAX;
     * both 0: say where it should run */
    muslin::length grain_x{};
    muslin::length grain_y{};
    /** added all round the rectangles, 0 .. MUSLIN_SHAPE_SIZE_MAX: for a foundation, or for safety */
    muslin::length margin{};
};
static_assert(detail::is_twin<shape_piece_spec>);

/** struct muslin_shape_piece. */
struct MUSLIN_CPP_TWIN shape_piece {
    using c_type = muslin_shape_piece;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** of the polygon of its corners, doubled square ticks */
    std::int64_t finished_area = 0;
    /** of the polygon of the template's rounded corners, doubled square ticks */
    std::int64_t cut_area = 0;
    /** of the template along x, arcs included, up to a tick, without margin */
    muslin::length cut_width{};
    /** along y */
    muslin::length cut_height{};
    /** finished length of its longest straight edge, to the nearest tick; 0: it has none */
    muslin::length longest{};
    /** the straight grain: as given, or as recommended */
    muslin::length grain_x{};
    muslin::length grain_y{};
    /** cut size that holds template and margin, along the straight grain, up to a tick */
    muslin::length rectangle_along{};
    /** across it: the cut width of a strip that holds them */
    muslin::length rectangle_across{};
    /** row of the corner where the longest straight edge starts (the first of equals); -1 */
    std::int32_t longest_corner = 0;
    /** row of the edge that the recommended grain follows; -1 when it was given, or none */
    std::int32_t grain_corner = 0;
    /** edges that lie on the outline, wholly or in part; 0 without an outline */
    std::int32_t outside_edges = 0;
    /** of them: arcs, and straight ones neither along nor across the grain */
    std::int32_t bias_edges = 0;
    /** 1 when some edge is an arc, so that areas are not the polygons' */
    muslin::truth has_arcs{};
    /** warning::bias_edge when there are bias edges */
    std::uint32_t warnings = 0;
};
static_assert(detail::is_twin<shape_piece>);

/** struct muslin_quarter_circle_spec. */
struct MUSLIN_CPP_TWIN quarter_circle_spec {
    using c_type = muslin_quarter_circle_spec;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** F, side of the finished square, 2 .. MUSLIN_SIZE_MAX / 4 */
    muslin::length finished{};
    /** r, of the seam, 1 .. F - 1 */
    muslin::length radius{};
    /** of every edge */
    muslin::length allowance = muslin::length::of_ticks(2032);
    muslin::length take_up{};
};
static_assert(detail::is_twin<quarter_circle_spec>);

/** struct muslin_quarter_circle. */
struct MUSLIN_CPP_TWIN quarter_circle {
    using c_type = muslin_quarter_circle;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** r + 2 e: square that holds the convex piece, exact */
    muslin::length convex_cut_square{};
    /** r + e, from the finished corner of the square, rounded */
    muslin::length convex_cut_radius{};
    /** straight edge from the cut corner to the cut arc, rounded */
    muslin::length convex_cut_leg{};
    /** F + 2 e: square that the concave piece is cut from, exact */
    muslin::length concave_cut_square{};
    /** r - e, from the same point, rounded */
    muslin::length concave_cut_radius{};
    /** straight edge from the cut corner that is left of the square to the cut arc, rounded: the shorter of the two
     * kinds that the piece has */
    muslin::length concave_cut_leg{};
    /** e, from two cut edges of the square to the centre of the arcs, rounded */
    muslin::length centre_inset{};
    /** r x pi / 2, the curved seam, rounded */
    muslin::length seam_length{};
};
static_assert(detail::is_twin<quarter_circle>);

/** struct muslin_regular_polygon. */
struct MUSLIN_CPP_TWIN regular_polygon {
    using c_type = muslin_regular_polygon;

    std::uint32_t size = sizeof(c_type);
    std::uint32_t flags = 0;
    /** each rounded on its own from the exact value */
    muslin::length side{};
    /** straight across */
    muslin::length flats{};
    /** between the farthest two */
    muslin::length corners{};
    /** from there to a corner */
    muslin::length centre{};
    /** doubled square ticks, nearest */
    std::int64_t area = 0;
};
static_assert(detail::is_twin<regular_polygon>);

/** What shape_foundation() answers. */
struct shape_foundation_answer {
    muslin::length along{};
    muslin::length across{};
};

inline namespace MUSLIN_CPP_FORM {

/** Whether the drawing is a unit: outline and pieces are simple shapes that run counter-clockwise, and the pieces
 * cover the outline exactly once. The outline and at least one piece must be given. status::shape, with the row in
 * the problem: fewer than three corners (two where an edge is an arc), an edge without length, a corner that is
 * not within a tick of its arc's circle, an arc of more than half a turn, edges of one piece that cross, touch or
 * lie on each other, a piece that runs clockwise. status::not_tiled, with the row of the edge: a stretch of that
 * edge is answered by no neighbour and not by the outline, or by too many. A straight edge may meet several
 * neighbours; an arc must be the same arc on both sides, from corner to corner. Source: geometry: where every
 * piece and the outline go round once, and their boundaries cancel, stretch by stretch, the pieces' winding
 * numbers add up to the outline's, which is 1 at each point inside. Exact, but for one thing: as corners may lie a
 * tick off their arcs, an arc of radius r and its neighbour may meet a second time within 6 sqrt(r) ticks of their
 * common corner, and are then taken to touch there. Time grows with the square of the rows, times the corners that
 * lie on one edge; nothing is allocated.
 * muslin_shape_check() in muslin/shape.h. Since 1.0. */
inline answer<muslin::shape> shape_check(muslin::span<const muslin::corner_spec> corners)
{
    muslin::shape out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shape_check(detail::in_c(corners.data()), sizeof(muslin::corner_spec), corners.size(),
                                  detail::in_c(&out), problem);
    });
}

/** The template of one piece as cut: each edge moved out by its effective allowance, each corner where the moved
 * edges meet, x and y rounded on their own to the grid. Rows come in the order of the piece, counter-clockwise.
 * Two rows share a finished corner where a tip is cut off, and where edges in one line have unequal allowances.
 * The outline may be missing. Only this piece is checked, as shape_check() does it. status::index: no such piece,
 * or the outline. status::choice: a tip other than SHARP where an arc ends or starts. status::seam_too_wide, with
 * the row: a concave arc of radius e or less, moved edges that do not meet, or an edge that the allowances of its
 * neighbours eat. status::overflow: a sharp tip beyond MUSLIN_TEMPLATE_REACH_MAX. status::shape also where a
 * straight edge meets an arc and is neither parallel to x or y nor radial (its line passes the centre within a
 * tick; it is then taken to run from the centre through the corner): that corner has a root within a root and is
 * not worked out; and where arc and edge touch at the corner and no longer do when moved. status::buffer: more
 * rows are needed; count says how many. Whether allowances far apart overlap, as in a deep narrow notch, is not
 * checked. Source: geometry; for arcs also common practice (convex r + s, concave r - s). Time grows with the
 * square of the piece's corners.
 * muslin_shape_template() in muslin/shape.h. Since 1.0. */
inline answer<std::vector<muslin::template_corner>> shape_template(muslin::span<const muslin::corner_spec> corners,
                                                                   std::int32_t piece,
                                                                   const muslin::rounding_spec &rounding = {})
{
    std::vector<muslin::template_corner> rows;
    return asking::ask_rows(rows, rows, [&](auto to, muslin_problem *problem) {
        return muslin_shape_template(detail::in_c(corners.data()), sizeof(muslin::corner_spec), corners.size(), piece,
                                     detail::in_c(&rounding), to.rows, sizeof(muslin::template_corner), to.capacity,
                                     to.count, problem);
    });
}

/** What one needs to know before cutting a piece: areas, the rectangle to cut it from, grain. Recommended is the
 * straight grain along the longest straight edge on the outline, else along the longest straight edge, else along
 * x; the first of equals. The template is the one that shape_template() gives with the same rounding, and so are
 * the statuses, without status::buffer. The rectangle with a margin is the cut size of a foundation or of the
 * cloth for a piece sewn onto one. Straight grain on the outside edges is common practice, no source; the rest is
 * geometry. Time grows with the square of the rows.
 * muslin_shape_measure() in muslin/shape.h. Since 1.0. */
inline answer<muslin::shape_piece> shape_measure(muslin::span<const muslin::corner_spec> corners,
                                                 const muslin::shape_piece_spec &spec = {},
                                                 const muslin::rounding_spec &rounding = {})
{
    muslin::shape_piece out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shape_measure(detail::in_c(corners.data()), sizeof(muslin::corner_spec), corners.size(),
                                    detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The rectangle that holds a piece's template plus `margin` (0 .. MUSLIN_SHAPE_SIZE_MAX) all round when one of its
 * straight edges lies along a strip, or along the sewing line of a foundation: `corner` is the row where that edge
 * starts (a row of the outline or no row at all: status::index; of an arc: status::shape). along gets the size
 * along the edge, across the size across it, both up to a tick. Other statuses and time: as shape_measure().
 * Source: geometry; that a foundation piece is cut with a margin all round is common practice, no source.
 * muslin_shape_foundation() in muslin/shape.h. Since 1.0. */
inline answer<muslin::shape_foundation_answer> shape_foundation(muslin::span<const muslin::corner_spec> corners,
                                                                std::int32_t corner, muslin::length margin,
                                                                const muslin::rounding_spec &rounding = {})
{
    muslin::shape_foundation_answer answer;
    return asking::ask(answer, [&](muslin_problem *problem) {
        return muslin_shape_foundation(detail::in_c(corners.data()), sizeof(muslin::corner_spec), corners.size(),
                                       corner, detail::in_c(margin), detail::in_c(&rounding),
                                       detail::in_c(&answer.along), detail::in_c(&answer.across), problem);
    });
}

/** The two pieces of a square with a quarter circle about one corner: the convex one (a slice of the disc) and the
 * concave one (the background). With e = allowance + take-up / 2 the legs are e + sqrt((r + e)^2 - e^2) and F + e
 * - sqrt((r - e)^2 - e^2). status::range: also a radius of F or more. status::seam_too_wide: r below 2 e, so that
 * the concave cut arc does not reach the cut edges. Source: geometry; convex r + s, concave r - s is common
 * practice, no source. Constant time.
 * muslin_shape_quarter_circle() in muslin/shape.h. Since 1.0. */
inline answer<muslin::quarter_circle> shape_quarter_circle(const muslin::quarter_circle_spec &spec = {},
                                                           const muslin::rounding_spec &rounding = {})
{
    muslin::quarter_circle out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shape_quarter_circle(detail::in_c(&spec), detail::in_c(&rounding), detail::in_c(&out), problem);
    });
}

/** The length of an arc of so many quarter turns (1 .. 4) of a circle: radius x pi / 2 x quarter_turns. radius 0 ..
 * MUSLIN_SIZE_MAX. Source: geometry. Constant time.
 * muslin_arc_length() in muslin/shape.h. Since 1.0. */
inline answer<muslin::rounded> arc_length(muslin::length radius, std::int32_t quarter_turns,
                                          const muslin::rounding_spec &rounding = {})
{
    muslin::rounded out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_arc_length(detail::in_c(radius), quarter_turns, detail::in_c(&rounding), detail::in_c(&out),
                                 problem);
    });
}

/** The measures of a regular triangle, square, hexagon or octagon (sides 3, 4, 6 or 8, else status::choice) from
 * one of them (1 .. MUSLIN_SIZE_MAX), all finished or all cut as the caller means it. status::overflow when the
 * area passes MUSLIN_LENGTH_MAX. Source: geometry. Constant time.
 * muslin_shape_regular_polygon() in muslin/shape.h. Since 1.0. */
inline answer<muslin::regular_polygon> shape_regular_polygon(std::int32_t sides, muslin::polygon_measure measure,
                                                             muslin::length length,
                                                             const muslin::rounding_spec &rounding = {})
{
    muslin::regular_polygon out;
    return asking::ask(out, [&](muslin_problem *problem) {
        return muslin_shape_regular_polygon(sides, detail::in_c(measure), detail::in_c(length), detail::in_c(&rounding),
                                            detail::in_c(&out), problem);
    });
}

} // namespace MUSLIN_CPP_FORM

} // namespace muslin

#endif
