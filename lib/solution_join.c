/* solution_join.c - a join, solved: children side by side or one below the other.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

struct msl_edges msl_edges_along(int32_t axis)
{
    const struct msl_edges across = { MSL_LEFT, MSL_RIGHT, MSL_TOP, MSL_BOTTOM };
    const struct msl_edges down = { MSL_TOP, MSL_BOTTOM, MSL_LEFT, MSL_RIGHT };
    return axis == MUSLIN_AXIS_ACROSS ? across : down;
}

/* A size seen along an axis: how far it reaches along it and across it, and the seams so. */
struct along {
    muslin_len length;
    muslin_len breadth;
    int64_t seams;
    int64_t seams_across;
};

static struct along seen(const struct msl_size *size, int32_t axis)
{
    const struct along across = { size->width, size->height, size->across, size->down };
    const struct along down = { size->height, size->width, size->down, size->across };
    return axis == MUSLIN_AXIS_ACROSS ? across : down;
}

/* Whether the child meets the one before it. */
static void check_pair(struct msl_solving *solving, uint32_t node, int64_t k, const struct msl_size *before,
                       const struct msl_size *child)
{
    int32_t axis = msl_node_args(solving->solution->quilt, node)[JOIN_AXIS];
    struct msl_edges edges = msl_edges_along(axis);
    struct msl_meeting meeting = { k - 1, k, seen(before, axis).breadth, seen(child, axis).breadth,
                                   before->edge[edges.last], child->edge[edges.first], before->along[edges.last],
                                   child->along[edges.first] };
    msl_check_edges(solving, node, &meeting);
}

/* Adds a child to what the join has so far. */
static void append(struct msl_size *size, const struct msl_size *child, const struct msl_edges *edges,
                   struct along *sum, const struct along *more)
{
    sum->length += more->length;
    sum->breadth = msl_greater(sum->breadth, more->breadth);
    sum->seams += more->seams + 1;
    sum->seams_across = msl_greater(sum->seams_across, more->seams_across);
    size->patches += child->patches;
    size->exact = size->exact && child->exact;
    size->edge[edges->last] = child->edge[edges->last];
    size->along[edges->last] = child->along[edges->last];
    size->edge[edges->side] = msl_edge_with(size->edge[edges->side], child->edge[edges->side]);
    size->edge[edges->other_side] = msl_edge_with(size->edge[edges->other_side], child->edge[edges->other_side]);
    size->along[edges->side] += child->along[edges->side];
    size->along[edges->other_side] += child->along[edges->other_side];
}

void msl_add_slot(struct msl_solving *solving, muslin_len offset, int64_t patches)
{
    struct muslin_solution *s = solving->solution;
    struct msl_slot *slot = msl_add_row(solving->check, &s->allocator, &s->slots, sizeof *slot);
    if (slot != NULL)
        *slot = (struct msl_slot){ offset, patches };
}

void msl_join_size(struct msl_solving *solving, uint32_t node)
{
    struct muslin_solution *s = solving->solution;
    const int32_t *args = msl_node_args(s->quilt, node);
    const int32_t axis = args[JOIN_AXIS];
    const struct msl_edges edges = msl_edges_along(axis);
    const int64_t n = msl_parts(s, node);
    struct msl_size *size = msl_size_of(s, node);
    const struct msl_size *before = msl_size_of(s, (uint32_t)args[JOIN_CHILDREN]);
    const uint32_t slots = (uint32_t)s->slots.used;
    *size = *before;
    size->slots = slots;
    struct along sum = seen(before, axis);
    msl_add_slot(solving, 0, 0);
    for (int64_t k = 1; solving->check->status == MUSLIN_OK && k < n; k++) {
        const struct msl_size *child = msl_size_of(s, (uint32_t)args[JOIN_CHILDREN + k]);
        const struct along more = seen(child, axis);
        check_pair(solving, node, k, before, child);
        msl_add_slot(solving, sum.length, size->patches);
        append(size, child, &edges, &sum, &more);
        before = child;
    }
    size->width = axis == MUSLIN_AXIS_ACROSS ? sum.length : sum.breadth;
    size->height = axis == MUSLIN_AXIS_ACROSS ? sum.breadth : sum.length;
    size->across = axis == MUSLIN_AXIS_ACROSS ? sum.seams : sum.seams_across;
    size->down = axis == MUSLIN_AXIS_ACROSS ? sum.seams_across : sum.seams;
}

static muslin_len offset_of(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const struct msl_slot *slots = solution->slots.rows;
    return slots[msl_size_of(solution, node)->slots + (uint64_t)k].offset;
}

/* A child that is lower or narrower than the join lies at its top or left. */
struct msl_part msl_join_part(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    uint32_t number = (uint32_t)args[JOIN_CHILDREN + k];
    muslin_len offset = offset_of(solution, node, k);
    muslin_len room = msl_size_of(solution, node)->height - msl_size_of(solution, number)->height;
    struct msl_part part = { .node = number, .x = offset, .y = room };
    if (args[JOIN_AXIS] == MUSLIN_AXIS_DOWN) {
        part.x = 0;
        part.y = room - offset;
    }
    return part;
}

/* Between children k and k + 1, as long as the longer of the two edges; sewn from raw edge to raw edge of the longer
 * one as it is before sewing. */
struct msl_seam msl_join_seam(const struct muslin_solution *solution, uint32_t node, int64_t k)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    const int32_t axis = args[JOIN_AXIS];
    const struct msl_edges edges = msl_edges_along(axis);
    const struct msl_size *size = msl_size_of(solution, node);
    const struct msl_size *first = msl_size_of(solution, (uint32_t)args[JOIN_CHILDREN + k]);
    const struct msl_size *second = msl_size_of(solution, (uint32_t)args[JOIN_CHILDREN + k + 1]);
    const muslin_len one = seen(first, axis).breadth;
    const muslin_len other = seen(second, axis).breadth;
    const muslin_len breadth = msl_greater(one, other);
    const muslin_len sewn =
        msl_greater(one + msl_allowances(solution, first->edge[edges.side], first->edge[edges.other_side]),
                    other + msl_allowances(solution, second->edge[edges.side], second->edge[edges.other_side]));
    const muslin_len offset = offset_of(solution, node, k + 1);
    if (axis == MUSLIN_AXIS_ACROSS)
        return (struct msl_seam){ offset, size->height - breadth, offset, size->height, sewn, k, k + 1 };
    return (struct msl_seam){ 0, size->height - offset, breadth, size->height - offset, sewn, k, k + 1 };
}

int64_t msl_join_beside(const struct muslin_solution *solution, uint32_t node, int64_t k, enum msl_edge edge)
{
    struct msl_edges edges = msl_edges_along(msl_node_args(solution->quilt, node)[JOIN_AXIS]);
    if (edge == edges.first)
        return k - 1;
    return edge == edges.last && k + 1 < msl_parts(solution, node) ? k : -1;
}
