/* shape_reach.c - how far a shape reaches along a direction and across it.
 *
 * SPDX-License-Identifier: MIT */
#include "shape_inside.h"

struct msl_shape_reach msl_reach_start(int64_t gx, int64_t gy)
{
    return (struct msl_shape_reach){ .gx = gx, .gy = gy };
}

/* The four directions: 0: g, 1: -g, 2: g turned left, 3: that turned back. */
static void direction_of(const struct msl_shape_reach *reach, int32_t which, int64_t *dx, int64_t *dy)
{
    int32_t sign = which % 2 == 0 ? 1 : -1;
    *dx = sign * (which < 2 ? reach->gx : -reach->gy);
    *dy = sign * (which < 2 ? reach->gy : reach->gx);
}

static int64_t square_of(const struct msl_shape_reach *reach)
{
    return reach->gx * reach->gx + reach->gy * reach->gy;
}

/* dot / |g| + radius against the farthest yet, both times |g|. */
static void offer(struct msl_shape_reach *reach, int32_t which, int64_t dot, int64_t radius)
{
    struct msl_wide more = msl_wide_from(dot - reach->dot[which]);
    struct msl_root root = { msl_wide_from(radius - reach->radius[which]), msl_wide_from(square_of(reach)) };
    if (reach->begun && msl_root_sign(more, &root) <= 0)
        return;
    reach->dot[which] = dot;
    reach->radius[which] = radius;
}

void msl_reach_point(struct msl_shape_reach *reach, int64_t x, int64_t y)
{
    for (int32_t which = 0; which < 4; which++) {
        int64_t dx, dy;
        direction_of(reach, which, &dx, &dy);
        offer(reach, which, x * dx + y * dy, 0);
    }
    reach->begun = 1;
}

/* The circle's farthest point, centre + r d / |d|, is on the arc where it lies on the chord's outer side: there
 * chord x (centre - p) |d| + r (chord x d) is below 0. A concave arc reaches no farther than its corners. */
void msl_reach_arc(struct msl_shape_reach *reach, const struct msl_shape_edge *arc)
{
    int64_t chord_x = arc->qx - arc->px, chord_y = arc->qy - arc->py;
    int64_t centre = msl_cross(chord_x, chord_y, arc->cx - arc->px, arc->cy - arc->py);
    if (arc->curve != MUSLIN_CURVE_CONVEX)
        return;
    for (int32_t which = 0; which < 4; which++) {
        int64_t dx, dy;
        direction_of(reach, which, &dx, &dy);
        struct msl_wide whole = msl_wide_multiply(arc->radius, msl_cross(chord_x, chord_y, dx, dy));
        struct msl_root root = { msl_wide_from(centre), msl_wide_from(square_of(reach)) };
        if (msl_root_sign(whole, &root) < 0)
            offer(reach, which, arc->cx * dx + arc->cy * dy, arc->radius);
    }
}

/* (dot + dot) / |g| + radius + radius, with |g| squared below the line. */
muslin_len msl_reach_size(const struct msl_shape_reach *reach, int32_t across)
{
    int32_t which = 2 * across;
    struct msl_wide square = msl_wide_from(square_of(reach));
    struct msl_root_sum sum = { .whole = reach->radius[which] + reach->radius[which + 1],
                                .first = { msl_wide_from(reach->dot[which] + reach->dot[which + 1]), square },
                                .divisor = square };
    struct msl_exact size = msl_sum_exact(&sum);
    return size.floor + (size.on_tick ? 0 : 1);
}
