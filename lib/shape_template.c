/* shape_template.c - a piece as it is cut: its template, the rectangle that holds it, its grain.
 *
 * SPDX-License-Identifier: MIT */
#include "root.h"
#include "shape_inside.h"

/* ---- a template, corner by corner ------------------------------------------------------------------------------- */

/* One cut edge with the joints at both ends. */
struct cut {
    struct msl_shape_edge edge;
    struct msl_joint from;
    struct msl_joint to;
};

static struct cut cut_at(struct msl_check *check, const struct msl_shape_drawing *drawing, struct msl_shape_ring ring,
                         int32_t place, const struct muslin_rounding_spec *rounding)
{
    struct cut cut;
    struct msl_shape_edge before = msl_edge_of(drawing, ring, place + ring.count - 1);
    struct msl_shape_edge after = msl_edge_of(drawing, ring, place + 1);
    cut.edge = msl_edge_of(drawing, ring, place);
    cut.from = msl_joint_of(check, &before, &cut.edge, rounding);
    cut.to = msl_joint_of(check, &cut.edge, &after, rounding);
    if (check->status == MUSLIN_OK)
        msl_want_cut_edge(check, &cut.edge, &cut.from, &cut.to);
    return cut;
}

/* The ring of a piece, checked. */
static struct msl_shape_ring read_piece(struct msl_check *check, const struct msl_shape_drawing *drawing, int32_t piece)
{
    struct msl_shape_ring ring = { 0, 0 };
    if (check->status != MUSLIN_OK)
        return ring;
    if (piece >= 0)
        ring = msl_ring_of(drawing, piece);
    if (ring.count == 0) {
        struct msl_shape_ring last = { drawing->n - 1, 1 };
        msl_fail(check, MUSLIN_ERR_INDEX, MUSLIN_ARG_PIECE, piece, msl_edge_of(drawing, last, 0).piece);
        return ring;
    }
    msl_want_ring(check, drawing, ring);
    return ring;
}

/* Every corner of the template can be found; how many rows it has. */
static size_t count_corners(struct msl_check *check, const struct msl_shape_drawing *drawing,
                            struct msl_shape_ring ring, const struct muslin_rounding_spec *rounding)
{
    size_t count = 0;
    for (int32_t i = 0; check->status == MUSLIN_OK && i < ring.count; i++)
        count += (size_t)cut_at(check, drawing, ring, i, rounding).from.count;
    return count;
}

static struct muslin_template_corner corner_of(const struct cut *cut, int32_t which)
{
    struct muslin_template_corner corner = { 0 };
    corner.corner = cut->edge.row;
    corner.curve = MUSLIN_CURVE_STRAIGHT;
    corner.x = cut->from.x[which];
    corner.y = cut->from.y[which];
    corner.has_seam = which == cut->from.count - 1;
    if (corner.has_seam == 0 || cut->edge.curve == MUSLIN_CURVE_STRAIGHT)
        return corner;
    corner.curve = cut->edge.curve;
    corner.centre_x = cut->edge.cx;
    corner.centre_y = cut->edge.cy;
    corner.radius = (msl_cut_diameter(&cut->edge) + 1) / 2;
    return corner;
}

muslin_status muslin_shape_template(const struct muslin_corner_spec *corners, size_t corner_size, size_t n,
                                    int32_t piece, const struct muslin_rounding_spec *rounding,
                                    struct muslin_template_corner *rows, size_t row_size, size_t capacity,
                                    size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec to = { 0 };
    struct msl_shape_drawing drawing = msl_shape_read(&check, corners, corner_size, n);
    msl_read_rounding(&check, &to, rounding);
    struct msl_shape_ring ring = read_piece(&check, &drawing, piece);
    size_t needed = count_corners(&check, &drawing, ring, &to);
    size_t row = 0;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    for (int32_t i = 0; i < ring.count; i++) {
        struct cut cut = cut_at(&check, &drawing, ring, i, &to);
        for (int32_t which = 0; which < cut.from.count; which++) {
            struct muslin_template_corner corner = corner_of(&cut, which);
            msl_write_row(rows, row_size, row, &corner, (uint32_t)sizeof corner);
            row++;
        }
    }
    return MUSLIN_OK;
}

/* ---- the rectangle that holds it -------------------------------------------------------------------------------- */

/* The cut arc from its rounded ends, in half ticks. */
static struct msl_shape_edge cut_arc(const struct cut *cut)
{
    struct msl_shape_edge arc = cut->edge;
    int32_t last = cut->from.count - 1;
    arc.px = 2 * cut->from.x[last];
    arc.py = 2 * cut->from.y[last];
    arc.qx = 2 * cut->to.x[0];
    arc.qy = 2 * cut->to.y[0];
    arc.cx *= 2;
    arc.cy *= 2;
    arc.radius = msl_cut_diameter(&cut->edge);
    return arc;
}

/* How far the template reaches along (gx, gy) and across, and the area of its corners' polygon. */
static struct msl_shape_reach reach_of(struct msl_check *check, const struct msl_shape_drawing *drawing,
                                       struct msl_shape_ring ring, const struct muslin_rounding_spec *to, int64_t gx,
                                       int64_t gy, int64_t *area)
{
    struct msl_shape_reach reach = msl_reach_start(gx, gy);
    *area = 0;
    for (int32_t i = 0; check->status == MUSLIN_OK && i < ring.count; i++) {
        struct cut cut = cut_at(check, drawing, ring, i, to);
        if (check->status != MUSLIN_OK)
            return reach;
        int32_t last = cut.from.count - 1;
        struct msl_shape_edge arc = cut_arc(&cut);
        for (int32_t which = 0; which <= last; which++)
            msl_reach_point(&reach, 2 * cut.from.x[which], 2 * cut.from.y[which]);
        msl_reach_arc(&reach, &arc);
        *area += msl_cross(cut.from.x[0], cut.from.y[0], cut.from.x[last], cut.from.y[last]);
        *area += msl_cross(cut.from.x[last], cut.from.y[last], cut.to.x[0], cut.to.y[0]);
    }
    return reach;
}

muslin_status muslin_shape_foundation(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                      int32_t corner, muslin_len margin, const struct muslin_rounding_spec *rounding,
                                      muslin_len *along, muslin_len *across, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_rounding_spec to = { 0 };
    struct msl_shape_drawing drawing = msl_shape_read(&check, corners, row_size, n);
    struct msl_shape_ring row = { corner, 1 };
    int64_t area;
    msl_want_between(&check, MUSLIN_ARG_MARGIN, margin, 0, MUSLIN_SHAPE_SIZE_MAX);
    msl_read_rounding(&check, &to, rounding);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, along);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, across);
    if (check.status == MUSLIN_OK && (corner < 0 || corner >= drawing.n))
        msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_CORNER_ROW, corner, drawing.n - 1);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_shape_edge laid = msl_edge_of(&drawing, row, 0);
    struct msl_shape_ring ring = read_piece(&check, &drawing, laid.piece);
    if (check.status == MUSLIN_OK && laid.curve != MUSLIN_CURVE_STRAIGHT)
        msl_fail_at(&check, MUSLIN_ERR_SHAPE, corner);
    if (check.status != MUSLIN_OK)
        return check.status;
    laid = msl_edge_of(&drawing, ring, corner - ring.first);
    struct msl_shape_reach reach = reach_of(&check, &drawing, ring, &to, laid.qx - laid.px, laid.qy - laid.py, &area);
    if (check.status != MUSLIN_OK)
        return check.status;
    *along = msl_reach_size(&reach, 0) + 2 * margin;
    *across = msl_reach_size(&reach, 1) + 2 * margin;
    return MUSLIN_OK;
}

/* ---- grain ------------------------------------------------------------------------------------------------------ */

muslin_status muslin_shape_piece_spec_init(struct muslin_shape_piece_spec *spec, uint32_t size)
{
    const struct muslin_shape_piece_spec initial = MUSLIN_SHAPE_PIECE_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

/* The longest straight edge, and the longest on the outline; the first of equals. */
struct longest {
    int64_t x, y;
    int64_t length2; /* 0: there is none */
    int32_t row;
    int32_t pad;
};

static void offer(struct longest *longest, const struct msl_shape_edge *edge)
{
    int64_t x = edge->qx - edge->px, y = edge->qy - edge->py;
    const struct longest offered = { .x = x, .y = y, .length2 = x * x + y * y, .row = edge->row };
    if (offered.length2 > longest->length2)
        *longest = offered;
}

static void look_at_edges(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring,
                          struct muslin_shape_piece *piece, struct longest *longest, struct longest *outside)
{
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        int is_arc = edge.curve != MUSLIN_CURVE_STRAIGHT;
        int is_outside = msl_is_outside(drawing, &edge);
        piece->has_arcs |= is_arc;
        piece->outside_edges += is_outside;
        if (is_arc)
            continue;
        offer(longest, &edge);
        if (is_outside)
            offer(outside, &edge);
    }
}

static void find_grain(const struct muslin_shape_piece_spec *spec, const struct longest *chosen,
                       struct muslin_shape_piece *piece)
{
    piece->grain_corner = -1;
    piece->grain_x = spec->grain_x;
    piece->grain_y = spec->grain_y;
    if (spec->grain_x != 0 || spec->grain_y != 0)
        return;
    piece->grain_x = 1;
    if (chosen->length2 == 0)
        return;
    piece->grain_corner = chosen->row;
    piece->grain_x = chosen->x;
    piece->grain_y = chosen->y;
}

/* Neither along nor across the straight grain. */
static int is_bias(const struct msl_shape_edge *edge, const struct muslin_shape_piece *piece)
{
    int64_t x = edge->qx - edge->px, y = edge->qy - edge->py;
    if (edge->curve != MUSLIN_CURVE_STRAIGHT)
        return 1;
    return msl_cross(x, y, piece->grain_x, piece->grain_y) != 0 && x * piece->grain_x + y * piece->grain_y != 0;
}

static void count_bias(const struct msl_shape_drawing *drawing, struct msl_shape_ring ring,
                       struct muslin_shape_piece *piece)
{
    for (int32_t i = 0; i < ring.count; i++) {
        struct msl_shape_edge edge = msl_edge_of(drawing, ring, i);
        piece->bias_edges += msl_is_outside(drawing, &edge) && is_bias(&edge, piece);
    }
    piece->warnings = piece->bias_edges != 0 ? MUSLIN_WARN_BIAS_EDGE : 0;
}

static muslin_len length_of(int64_t length2)
{
    uint64_t rest;
    uint64_t root = msl_root((uint64_t)length2, &rest);
    return (muslin_len)(root + (rest > root ? 1 : 0));
}

static struct muslin_shape_piece piece_of(struct msl_check *check, const struct msl_shape_drawing *drawing,
                                          struct msl_shape_ring ring, const struct muslin_shape_piece_spec *spec,
                                          const struct muslin_rounding_spec *to)
{
    struct muslin_shape_piece piece = { 0 };
    struct longest longest = { 0 };
    struct longest outside = { 0 };
    look_at_edges(drawing, ring, &piece, &longest, &outside);
    find_grain(spec, outside.length2 != 0 ? &outside : &longest, &piece);
    count_bias(drawing, ring, &piece);
    piece.longest = length_of(longest.length2);
    piece.longest_corner = longest.length2 != 0 ? longest.row : -1;
    piece.finished_area = msl_finished_area(drawing, ring);
    struct msl_shape_reach upright = reach_of(check, drawing, ring, to, 1, 0, &piece.cut_area);
    struct msl_shape_reach laid = reach_of(check, drawing, ring, to, piece.grain_x, piece.grain_y, &piece.cut_area);
    piece.cut_width = msl_reach_size(&upright, 0);
    piece.cut_height = msl_reach_size(&upright, 1);
    piece.rectangle_along = msl_reach_size(&laid, 0) + 2 * spec->margin;
    piece.rectangle_across = msl_reach_size(&laid, 1) + 2 * spec->margin;
    return piece;
}

muslin_status muslin_shape_measure(const struct muslin_corner_spec *corners, size_t row_size, size_t n,
                                   const struct muslin_shape_piece_spec *spec,
                                   const struct muslin_rounding_spec *rounding, struct muslin_shape_piece *out,
                                   struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct muslin_shape_piece_spec in = { 0 };
    struct muslin_rounding_spec to = { 0 };
    struct msl_shape_drawing drawing = msl_shape_read(&check, corners, row_size, n);
    msl_read_struct(&check, MUSLIN_ARG_SPEC, &in, (uint32_t)sizeof in, (uint32_t)sizeof in, 0, spec);
    msl_want_pad(&check, in.pad);
    msl_want_between(&check, MUSLIN_ARG_GRAIN, in.grain_x, -MUSLIN_SHAPE_SIZE_MAX, MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(&check, MUSLIN_ARG_GRAIN, in.grain_y, -MUSLIN_SHAPE_SIZE_MAX, MUSLIN_SHAPE_SIZE_MAX);
    msl_want_between(&check, MUSLIN_ARG_MARGIN, in.margin, 0, MUSLIN_SHAPE_SIZE_MAX);
    msl_read_rounding(&check, &to, rounding);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    struct msl_shape_ring ring = read_piece(&check, &drawing, in.piece);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_shape_piece piece = piece_of(&check, &drawing, ring, &in, &to);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &piece, (uint32_t)sizeof piece);
    return check.status;
}
