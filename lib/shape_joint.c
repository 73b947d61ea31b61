/* shape_joint.c - where two edges meet when both are moved out by their allowances.
 *
 * SPDX-License-Identifier: MIT
 *
 * Everything is in half ticks, in which an effective allowance s = 2 x allowance + take-up is whole. A straight edge
 * along (a, b) with length L = sqrt(a^2 + b^2) and the piece on its left has the outward normal (b, -a) / L. */
#include "shape_inside.h"
#include "shape_moved.h"

/* (2 vx + (px sqrt(m) + qx sqrt(n)) / d, the same in y), d not 0. */
struct terms {
    int64_t vx, vy; /* in ticks */
    struct msl_wide px, py, m;
    struct msl_wide qx, qy, n;
    struct msl_wide d;
};

/* Terms with one root only: v + (px, py) sqrt(under) / divisor. */
static struct terms one_root(int64_t vx, int64_t vy, int64_t px, int64_t py, int64_t under, int64_t divisor)
{
    struct terms t = { 0 };
    t.vx = vx;
    t.vy = vy;
    t.px = msl_wide_from(px);
    t.py = msl_wide_from(py);
    t.m = msl_wide_from(under);
    t.d = msl_wide_from(divisor);
    return t;
}

static struct msl_root_sum x_of(const struct terms *t)
{
    struct msl_root_sum sum = { 2 * t->vx, { t->px, t->m }, { t->qx, t->n }, t->d };
    return sum;
}

static struct msl_root_sum y_of(const struct terms *t)
{
    struct msl_root_sum sum = { 2 * t->vy, { t->py, t->m }, { t->qy, t->n }, t->d };
    return sum;
}

static int64_t rounded(const struct msl_root_sum *sum, const struct muslin_rounding_spec *rounding)
{
    struct muslin_rounded result = { 0 };
    (void)msl_grid_round(msl_sum_exact(sum), rounding, &result); /* cannot overflow: the reach is below 2^26 */
    return result.value;
}

static void add_place(struct msl_joint *joint, const struct terms *t, const struct muslin_rounding_spec *rounding)
{
    struct msl_root_sum sum = x_of(t);
    joint->x[joint->count] = rounded(&sum, rounding);
    sum = y_of(t);
    joint->y[joint->count] = rounded(&sum, rounding);
    joint->count++;
}

/* ---- two straight edges ----------------------------------------------------------------------------------------- */

/* The corner between direction (a, b), square of length m, allowance s, and (c, d), n, t. */
struct corner {
    int64_t vx, vy;
    int64_t a, b, m, s;
    int64_t c, d, n, t;
    int64_t cross;
    int64_t dot;
};

static struct corner corner_of(int64_t a, int64_t b, int64_t c, int64_t d)
{
    struct corner v = { 0, 0, a, b, a * a + b * b, 0, c, d, c * c + d * d, 0, msl_cross(a, b, c, d), a * c + b * d };
    return v;
}

static struct corner corner_between(const struct msl_shape_edge *in, const struct msl_shape_edge *out)
{
    struct corner v = corner_of(in->qx - in->px, in->qy - in->py, out->qx - out->px, out->qy - out->py);
    v.vx = out->px;
    v.vy = out->py;
    v.s = in->seam;
    v.t = out->seam;
    return v;
}

/* Terms with one root, seen from the corner. */
static struct terms from_corner(const struct corner *v, int64_t px, int64_t py, int64_t under, int64_t divisor)
{
    return one_root(v->vx, v->vy, px, py, under, divisor);
}

/* The moved lines b x - a y = s L1 and d x - c y = t L2, seen from the corner, meet at (a t L2 - c s L1, b t L2 - d s
 * L1) / cross. */
static struct terms sharp(const struct corner *v)
{
    struct terms t = from_corner(v, -v->c * v->s, -v->d * v->s, v->m, v->cross);
    t.qx = msl_wide_from(v->a * v->t);
    t.qy = msl_wide_from(v->b * v->t);
    t.n = msl_wide_from(v->n);
    return t;
}

/* On the raw edge that arrives, `past` beyond the corner along its seam: (s (b, -a) + past (a, b)) / L1. */
static struct terms past_arriving(const struct corner *v, int64_t past)
{
    return from_corner(v, v->s * v->b + past * v->a, -v->s * v->a + past * v->b, v->m, v->m);
}

/* On the raw edge that leaves, `past` before the corner: (t (d, -c) - past (c, d)) / L2. */
static struct terms past_leaving(const struct corner *v, int64_t past)
{
    return from_corner(v, v->t * v->d - past * v->c, -v->t * v->c - past * v->d, v->n, v->n);
}

/* The raw edge that leaves, mirrored in the arriving seam, crosses the arriving raw edge x = (t + s cos) / sin beyond
 * the corner, where cos = dot / (L1 L2), sin = cross / (L1 L2): s (b, -a) / L1 + (a, b) (t L2 + s dot L1 / m) / cross,
 * here over m cross. */
static struct terms ear_arriving(const struct corner *v)
{
    struct terms t = { .vx = v->vx, .vy = v->vy, .m = msl_wide_from(v->m) };
    t.px = msl_wide_cross(v->s * v->b, v->cross, -v->s * v->a, v->dot);
    t.py = msl_wide_cross(v->s * v->b, v->dot, v->s * v->a, v->cross);
    t.qx = msl_wide_multiply(v->a * v->t, v->m);
    t.qy = msl_wide_multiply(v->b * v->t, v->m);
    t.n = msl_wide_from(v->n);
    t.d = msl_wide_multiply(v->m, v->cross);
    return t;
}

/* The same for the raw edge that leaves: t (d, -c) / L2 - (c, d) (s L1 + t dot L2 / n) / cross, over n cross. */
static struct terms ear_leaving(const struct corner *v)
{
    struct terms t = { .vx = v->vx, .vy = v->vy, .m = msl_wide_from(v->n) };
    t.px = msl_wide_cross(v->t * v->d, v->cross, v->t * v->c, v->dot);
    t.py = msl_wide_cross(-v->t * v->c, v->cross, v->t * v->d, v->dot);
    t.qx = msl_wide_multiply(-v->c * v->s, v->n);
    t.qy = msl_wide_multiply(-v->d * v->s, v->n);
    t.n = msl_wide_from(v->m);
    t.d = msl_wide_multiply(v->n, v->cross);
    return t;
}

/* A corner with an angle below a right angle, its tip cut off. The mirrored raw edge meets its own original on the line
 * of the seam, (a, b) t L2 / cross beyond the corner. */
static void add_cut_tip(struct msl_joint *joint, const struct corner *v, int32_t tip,
                        const struct muslin_rounding_spec *rounding)
{
    struct terms first, second;
    switch (tip) {
    case MUSLIN_CORNER_TIP_BLUNT:
        first = past_arriving(v, v->t);
        second = past_leaving(v, v->s);
        break;
    case MUSLIN_CORNER_TIP_TRIM_ARRIVING:
        first = ear_arriving(v);
        second = from_corner(v, v->a * v->t, v->b * v->t, v->n, v->cross);
        break;
    default:
        first = from_corner(v, -v->c * v->s, -v->d * v->s, v->m, v->cross);
        second = ear_leaving(v);
    }
    add_place(joint, &first, rounding);
    add_place(joint, &second, rounding);
}

/* Edges in one line: one place, or two where the allowances make a step. */
static void add_step(struct msl_joint *joint, const struct corner *v, const struct muslin_rounding_spec *rounding)
{
    struct terms first = past_arriving(v, 0);
    struct terms second = past_leaving(v, 0);
    add_place(joint, &first, rounding);
    if (v->s != v->t)
        add_place(joint, &second, rounding);
}

static void add_lines(struct msl_joint *joint, const struct msl_shape_edge *in, const struct msl_shape_edge *out,
                      const struct muslin_rounding_spec *rounding)
{
    struct corner v = corner_between(in, out);
    if (v.cross == 0) {
        add_step(joint, &v, rounding);
        return;
    }
    if (v.cross > 0 && v.dot < 0 && out->tip != MUSLIN_CORNER_TIP_SHARP) {
        add_cut_tip(joint, &v, out->tip, rounding);
        return;
    }
    struct terms tip = sharp(&v);
    add_place(joint, &tip, rounding);
}

static int64_t nearest(const struct msl_root_sum *sum, int32_t *exact)
{
    struct msl_exact value = msl_sum_exact(sum);
    *exact &= value.on_tick;
    return value.floor + value.upper_half;
}

struct msl_moved msl_corner_moved(int64_t a, int64_t b, int64_t c, int64_t d, int64_t seam)
{
    struct msl_moved moved = { 0, 0, 1 };
    struct corner v = corner_of(a, b, c, d);
    v.s = v.t = seam;
    struct terms t = v.cross == 0 ? past_arriving(&v, 0) : sharp(&v);
    struct msl_root_sum sum = x_of(&t);
    moved.x = nearest(&sum, &moved.exact);
    sum = y_of(&t);
    moved.y = nearest(&sum, &moved.exact);
    return moved;
}

/* ---- an arc and a straight edge --------------------------------------------------------------------------------- */

int64_t msl_cut_diameter(const struct msl_shape_edge *arc)
{
    return 2 * arc->radius + msl_bulge(arc) * arc->seam;
}

/* Terms with one root, seen from the centre of an arc. */
static struct terms from_centre(const struct msl_shape_edge *arc, int64_t px, int64_t py, int64_t under,
                                int64_t divisor)
{
    return one_root(arc->cx, arc->cy, px, py, under, divisor);
}

/* An edge along (dx, dy), one of the axes, stands `off` from the centre when moved; the corner lies on `side` of the
 * foot of that distance, the root of R^2 - off^2 along the edge. (vx, vy) is the finished corner from the centre. */
static muslin_status add_parallel(struct msl_joint *joint, const struct msl_shape_edge *arc,
                                  const struct msl_shape_edge *line, int64_t vx, int64_t vy,
                                  const struct muslin_rounding_spec *rounding)
{
    int64_t dx = msl_sign(line->qx - line->px), dy = msl_sign(line->qy - line->py);
    int64_t radius = msl_cut_diameter(arc);
    int64_t off = 2 * msl_cross(vx, vy, dx, dy) + line->seam;
    int64_t square = radius * radius - off * off;
    int64_t side = msl_sign(vx * dx + vy * dy);
    if (square < 0)
        return MUSLIN_ERR_SEAM_TOO_WIDE;
    if (side == 0 && square != 0)
        return MUSLIN_ERR_SHAPE;
    struct terms t = from_centre(arc, off * dy, -off * dx, 1, 1);
    t.qx = msl_wide_from(side * dx);
    t.qy = msl_wide_from(side * dy);
    t.n = msl_wide_from(square);
    add_place(joint, &t, rounding);
    return MUSLIN_OK;
}

/* An edge on the line from the centre through the corner (vx, vy): `way` is 1 where it runs outwards, -1 inwards.
 * Moved, it stands s off the centre: s x way (vy, -vx) / |v| + v / |v| x sqrt(R^2 - s^2). */
static muslin_status add_radial(struct msl_joint *joint, const struct msl_shape_edge *arc,
                                const struct msl_shape_edge *line, int64_t vx, int64_t vy,
                                const struct muslin_rounding_spec *rounding)
{
    int64_t way = msl_sign(vx * (line->qx - line->px) + vy * (line->qy - line->py));
    int64_t radius = msl_cut_diameter(arc);
    int64_t square = radius * radius - line->seam * line->seam;
    int64_t length2 = vx * vx + vy * vy;
    if (square < 0)
        return MUSLIN_ERR_SEAM_TOO_WIDE;
    struct terms t = from_centre(arc, line->seam * way * vy, -line->seam * way * vx, length2, length2);
    t.qx = msl_wide_from(vx);
    t.qy = msl_wide_from(vy);
    t.n = msl_wide_multiply(length2, square);
    add_place(joint, &t, rounding);
    return MUSLIN_OK;
}

/* Does the edge's line pass the centre within a tick? */
static int is_radial(const struct msl_shape_edge *line, int64_t vx, int64_t vy)
{
    int64_t ex = line->qx - line->px, ey = line->qy - line->py;
    int64_t beside = msl_cross(vx, vy, ex, ey);
    return msl_wide_compare(msl_wide_multiply(beside, beside), msl_wide_from(ex * ex + ey * ey)) <= 0;
}

static muslin_status add_arc_and_line(struct msl_joint *joint, const struct msl_shape_edge *arc,
                                      const struct msl_shape_edge *line, const struct msl_shape_edge *out,
                                      const struct muslin_rounding_spec *rounding)
{
    int64_t vx = out->px - arc->cx, vy = out->py - arc->cy;
    if (line->px == line->qx || line->py == line->qy)
        return add_parallel(joint, arc, line, vx, vy, rounding);
    if (is_radial(line, vx, vy))
        return add_radial(joint, arc, line, vx, vy, rounding);
    return MUSLIN_ERR_SHAPE;
}

/* ---- two arcs --------------------------------------------------------------------------------------------------- */

/* Two arcs of one circle: the corner moves along its radius, with a step where the allowances differ. */
static void add_along_radius(struct msl_joint *joint, const struct msl_shape_edge *in, const struct msl_shape_edge *out,
                             const struct muslin_rounding_spec *rounding)
{
    int64_t vx = out->px - in->cx, vy = out->py - in->cy;
    int64_t length2 = vx * vx + vy * vy;
    int64_t r = msl_cut_diameter(in), q = msl_cut_diameter(out);
    struct terms first = from_centre(in, r * vx, r * vy, length2, length2);
    struct terms second = from_centre(in, q * vx, q * vy, length2, length2);
    add_place(joint, &first, rounding);
    if (r != q)
        add_place(joint, &second, rounding);
}

/* Circles of radius R and Q whose centres are d apart meet at (s d +- sqrt(m) d') / (2 d^2) from the first centre, d'
 * being d turned left, s = R^2 - Q^2 + d^2, m = 4 d^2 R^2 - s^2; the corner says on which side. */
static muslin_status add_arcs(struct msl_joint *joint, const struct msl_shape_edge *in,
                              const struct msl_shape_edge *out, const struct muslin_rounding_spec *rounding)
{
    int64_t dx = 2 * (out->cx - in->cx), dy = 2 * (out->cy - in->cy);
    int64_t r = msl_cut_diameter(in), q = msl_cut_diameter(out);
    int64_t d2 = dx * dx + dy * dy;
    int64_t s = r * r - q * q + d2;
    int64_t side = msl_sign(msl_cross(dx, dy, out->px - in->cx, out->py - in->cy));
    struct msl_wide square = msl_wide_cross(4 * d2, r * r, s, s);
    int32_t places = msl_wide_compare(square, msl_wide_from(0));
    if (d2 == 0) {
        add_along_radius(joint, in, out, rounding);
        return MUSLIN_OK;
    }
    if (places < 0)
        return MUSLIN_ERR_SEAM_TOO_WIDE;
    if (side == 0 && places > 0)
        return MUSLIN_ERR_SHAPE;
    struct terms t = { .vx = in->cx, .vy = in->cy, .m = msl_wide_from(1), .d = msl_wide_from(2 * d2) };
    t.px = msl_wide_multiply(s, dx);
    t.py = msl_wide_multiply(s, dy);
    t.qx = msl_wide_from(-side * dy);
    t.qy = msl_wide_from(side * dx);
    t.n = square;
    add_place(joint, &t, rounding);
    return MUSLIN_OK;
}

/* ---- any joint -------------------------------------------------------------------------------------------------- */

static int is_too_tight(const struct msl_shape_edge *edge)
{
    return edge->curve == MUSLIN_CURVE_CONCAVE && msl_cut_diameter(edge) <= 0;
}

static muslin_status add_with_arc(struct msl_joint *joint, const struct msl_shape_edge *in,
                                  const struct msl_shape_edge *out, const struct muslin_rounding_spec *rounding)
{
    if (is_too_tight(in) || is_too_tight(out))
        return MUSLIN_ERR_SEAM_TOO_WIDE;
    if (msl_bulge(in) == 0)
        return add_arc_and_line(joint, out, in, out, rounding);
    if (msl_bulge(out) == 0)
        return add_arc_and_line(joint, in, out, out, rounding);
    return add_arcs(joint, in, out, rounding);
}

static int is_far(int64_t coordinate)
{
    return coordinate > MUSLIN_TEMPLATE_REACH_MAX || coordinate < -MUSLIN_TEMPLATE_REACH_MAX;
}

struct msl_joint msl_joint_of(struct msl_check *check, const struct msl_shape_edge *in,
                              const struct msl_shape_edge *out, const struct muslin_rounding_spec *rounding)
{
    struct msl_joint joint = { 0 };
    if (msl_bulge(in) == 0 && msl_bulge(out) == 0) {
        add_lines(&joint, in, out, rounding);
    } else if (out->tip != MUSLIN_CORNER_TIP_SHARP) {
        check->at = out->row;
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_CORNER_TIP, out->tip, MUSLIN_CORNER_TIP_SHARP);
    } else {
        muslin_status status = add_with_arc(&joint, in, out, rounding);
        if (status != MUSLIN_OK)
            msl_fail_at(check, status, out->row);
    }
    for (int32_t i = 0; i < joint.count; i++)
        if (is_far(joint.x[i]) || is_far(joint.y[i]))
            msl_fail_at(check, MUSLIN_ERR_OVERFLOW, out->row);
    return joint;
}

void msl_want_cut_edge(struct msl_check *check, const struct msl_shape_edge *edge, const struct msl_joint *from,
                       const struct msl_joint *to)
{
    int32_t last = from->count - 1;
    int64_t along = (to->x[0] - from->x[last]) * (edge->qx - edge->px) +
                    (to->y[0] - from->y[last]) * (edge->qy - edge->py);
    if (along <= 0)
        msl_fail_at(check, MUSLIN_ERR_SEAM_TOO_WIDE, edge->row);
}
