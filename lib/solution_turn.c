/* solution_turn.c - turned, mirrored and trimmed nodes, solved.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

/* ---- turned and mirrored ---------------------------------------------------------------------------------------- */

void msl_turn_size(struct msl_solving *solving, uint32_t node)
{
    const int32_t *args = msl_node_args(solving->solution->quilt, node);
    const struct msl_size *child = msl_size_of(solving->solution, (uint32_t)args[TURN_CHILD]);
    struct msl_size *size = msl_size_of(solving->solution, node);
    const int32_t turn = args[TURN_HOW];
    *size = *child;
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
        enum msl_edge before = msl_edge_before(turn, (enum msl_edge)edge);
        size->edge[edge] = child->edge[before];
        size->along[edge] = child->along[before];
    }
    if ((turn & 1) != 0) {
        size->width = child->height;
        size->height = child->width;
        size->across = child->down;
        size->down = child->across;
    }
}

struct msl_part msl_turn_part(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    return (struct msl_part){ (uint32_t)args[TURN_CHILD], args[TURN_HOW], 0, 0, 0 };
}

/* ---- trimmed ---------------------------------------------------------------------------------------------------- */

/* A trimmed edge has the quilt's allowance, whatever it had before. */
void msl_trim_size(struct msl_solving *solving, uint32_t node)
{
    const struct muslin_solution *s = solving->solution;
    const int32_t *args = msl_node_args(s->quilt, node);
    struct msl_size *size = msl_size_of(s, node);
    *size = *msl_size_of(s, (uint32_t)args[TRIM_CHILD]);
    size->exact &= msl_measures_exact(s, node);
    size->width -= msl_value_or_none(s, args[TRIM_LEFT]) + msl_value_or_none(s, args[TRIM_RIGHT]);
    size->height -= msl_value_or_none(s, args[TRIM_TOP]) + msl_value_or_none(s, args[TRIM_BOTTOM]);
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        if (msl_value_or_none(s, args[TRIM_LEFT + edge]) != 0)
            size->edge[edge] = msl_value_of(s, MSL_ALLOWANCE);
}

/* The child reaches beyond the node to the left and below by what is trimmed there. */
struct msl_part msl_trim_part(const struct muslin_solution *solution, uint32_t node)
{
    const int32_t *args = msl_node_args(solution->quilt, node);
    return (struct msl_part){ (uint32_t)args[TRIM_CHILD], 0, -msl_value_or_none(solution, args[TRIM_LEFT]),
                              -msl_value_or_none(solution, args[TRIM_BOTTOM]), 0 };
}
