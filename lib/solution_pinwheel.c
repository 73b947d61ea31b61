/* solution_pinwheel.c - four nodes round a centre, solved.
 *
 * SPDX-License-Identifier: MIT
 *
 *     top  top  right
 *     left  C   right
 *     left bottom bottom
 *
 * Each of the four lies in its corner, the centre against left and top. Where sizes do not meet, the pinwheel is as
 * large as the largest of its rows and columns. */
#include "solution_inside.h"

/* The solved children. */
struct pinwheel {
    const struct msl_size *of[PINWHEEL_ARGS];
};

static struct pinwheel read_pinwheel(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    struct pinwheel p;
    for (int k = 0; k < PINWHEEL_ARGS; k++)
        p.of[k] = msl_size_of(solution, (uint32_t)args[k]);
    return p;
}

static int64_t greatest(int64_t a, int64_t b, int64_t c)
{
    int64_t ab = a > b ? a : b;
    return ab > c ? ab : c;
}

/* ---- size ------------------------------------------------------------------------------------------------------- */

/* How an arm is sewn to the centre: its edge, the centre's, and the arm whose end prolongs the centre's edge by its
 * own edge there. */
struct arm {
    uint8_t arm;
    uint8_t edge;
    uint8_t centre_edge;
    uint8_t before;
    uint8_t before_edge;
};

static const struct arm arms[PINWHEEL_ARGS - 1] = {
    { PINWHEEL_TOP, MSL_BOTTOM, MSL_TOP, PINWHEEL_LEFT, MSL_TOP },
    { PINWHEEL_RIGHT, MSL_LEFT, MSL_RIGHT, PINWHEEL_TOP, MSL_RIGHT },
    { PINWHEEL_BOTTOM, MSL_TOP, MSL_BOTTOM, PINWHEEL_RIGHT, MSL_BOTTOM },
    { PINWHEEL_LEFT, MSL_RIGHT, MSL_LEFT, PINWHEEL_BOTTOM, MSL_LEFT },
};

/* Top and bottom are as long as they are wide, left and right as they are high. */
static muslin_len length_along(const struct arm *arm, const struct msl_size *size)
{
    return arm->edge == MSL_BOTTOM || arm->edge == MSL_TOP ? size->width : size->height;
}

/* What an arm must be as long as: the centre and the end of the arm before. */
static muslin_len length_there(const struct pinwheel *p, const struct arm *arm)
{
    return length_along(arm, p->of[PINWHEEL_CENTRE]) + length_along(arm, p->of[arm->before]);
}

static void check_arm(struct msl_solving *solving, uint32_t node, const struct pinwheel *p, const struct arm *arm)
{
    const struct msl_size *centre = p->of[PINWHEEL_CENTRE];
    const struct msl_size *before = p->of[arm->before];
    const struct msl_size *size = p->of[arm->arm];
    struct msl_meeting meeting = { PINWHEEL_CENTRE, arm->arm, length_there(p, arm), length_along(arm, size),
                                   msl_edge_with(centre->edge[arm->centre_edge], before->edge[arm->before_edge]),
                                   size->edge[arm->edge],
                                   centre->along[arm->centre_edge] + before->along[arm->before_edge],
                                   size->along[arm->edge] };
    msl_check_edges(solving, node, &meeting);
}

/* An outer edge is one arm's side and the end of the next. */
static void find_edge(struct msl_size *size, enum msl_edge edge, const struct msl_size *one,
                      const struct msl_size *other)
{
    size->edge[edge] = msl_edge_with(one->edge[edge], other->edge[edge]);
    size->along[edge] = one->along[edge] + other->along[edge];
}

void msl_pinwheel_size(struct msl_solving *solving, uint32_t node)
{
    const struct pinwheel p = read_pinwheel(solving->solution, node);
    struct msl_size *size = msl_size_of(solving->solution, node);
    const struct msl_size *centre = p.of[PINWHEEL_CENTRE];
    const struct msl_size *top = p.of[PINWHEEL_TOP];
    const struct msl_size *right = p.of[PINWHEEL_RIGHT];
    const struct msl_size *bottom = p.of[PINWHEEL_BOTTOM];
    const struct msl_size *left = p.of[PINWHEEL_LEFT];
    size->width = greatest(top->width + right->width, left->width + centre->width + right->width,
                           left->width + bottom->width);
    size->height = greatest(top->height + left->height, top->height + centre->height + bottom->height,
                            right->height + bottom->height);
    size->across = greatest(top->across + 1 + right->across, left->across + 1 + centre->across + 1 + right->across,
                            left->across + 1 + bottom->across);
    size->down = greatest(top->down + 1 + left->down, top->down + 1 + centre->down + 1 + bottom->down,
                          right->down + 1 + bottom->down);
    find_edge(size, MSL_LEFT, top, left);
    find_edge(size, MSL_RIGHT, right, bottom);
    find_edge(size, MSL_TOP, top, right);
    find_edge(size, MSL_BOTTOM, bottom, left);
    size->exact = 1;
    for (int k = 0; k < PINWHEEL_ARGS; k++) {
        size->patches += p.of[k]->patches;
        size->exact = size->exact && p.of[k]->exact;
    }
    for (int k = 0; k < PINWHEEL_ARGS - 1; k++)
        check_arm(solving, node, &p, &arms[k]);
}

/* ---- parts ------------------------------------------------------------------------------------------------------ */

struct msl_part msl_pinwheel_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct pinwheel p = read_pinwheel(solution, node);
    const struct msl_size *size = msl_size_of(solution, node);
    muslin_len right = size->width - p.of[k]->width;
    muslin_len top = size->height - p.of[k]->height;
    struct msl_part part = { .node = (uint32_t)msl_node_args(solution->quilt, node)[k] };
    if (k == PINWHEEL_CENTRE)
        part.x = p.of[PINWHEEL_LEFT]->width;
    if (k == PINWHEEL_RIGHT || k == PINWHEEL_BOTTOM)
        part.x = right;
    if (k == PINWHEEL_CENTRE)
        part.y = top - p.of[PINWHEEL_TOP]->height;
    if (k == PINWHEEL_TOP || k == PINWHEEL_RIGHT)
        part.y = top;
    return part;
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

/* One for each arm, along the centre and the end of the arm before, in the order of sewing: the first, top to centre,
 * stops short of the end where left will come, and is finished when left is sewn on. Its length is the longer of the
 * two sides, from raw edge to raw edge. */
struct msl_seam msl_pinwheel_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct pinwheel p = read_pinwheel(solution, node);
    const struct msl_size *whole = msl_size_of(solution, node);
    const struct arm *arm = &arms[k];
    const struct msl_size *size = p.of[arm->arm];
    muslin_len own = length_along(arm, size);
    muslin_len there = length_there(&p, arm);
    muslin_len length = own > there ? own : there;
    muslin_len level = length + msl_allowances(solution, size->edge[MSL_LEFT], size->edge[MSL_RIGHT]);
    muslin_len upright = length + msl_allowances(solution, size->edge[MSL_TOP], size->edge[MSL_BOTTOM]);
    muslin_len x = arm->arm == PINWHEEL_LEFT ? size->width : whole->width - size->width;
    muslin_len y = arm->arm == PINWHEEL_BOTTOM ? size->height : whole->height - size->height;
    switch (arm->arm) {
    case PINWHEEL_TOP:
        return (struct msl_seam){ 0, y, length, y, level, PINWHEEL_TOP, PINWHEEL_CENTRE };
    case PINWHEEL_RIGHT:
        return (struct msl_seam){ x, whole->height - length, x, whole->height, upright, PINWHEEL_CENTRE,
                                  PINWHEEL_RIGHT };
    case PINWHEEL_BOTTOM:
        return (struct msl_seam){ whole->width - length, y, whole->width, y, level, PINWHEEL_CENTRE, PINWHEEL_BOTTOM };
    default:
        return (struct msl_seam){ x, 0, x, length, upright, PINWHEEL_LEFT, PINWHEEL_CENTRE };
    }
}

int64_t msl_pinwheel_beside(int64_t k, enum msl_edge edge)
{
    for (int64_t seam = 0; seam < PINWHEEL_ARGS - 1; seam++) {
        const struct arm *arm = &arms[seam];
        int along_arm = k == arm->arm && edge == (enum msl_edge)arm->edge;
        int along_centre = k == PINWHEEL_CENTRE && edge == (enum msl_edge)arm->centre_edge;
        int along_end = k == arm->before && edge == (enum msl_edge)arm->before_edge;
        if (along_arm || along_centre || along_end)
            return seam;
    }
    return -1;
}
