/* solution_check.c - the assembly check, and the way to a node.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

enum { MISFIT_LEAST = sizeof(struct muslin_misfit) };

muslin_status muslin_solution_misfits(const struct muslin_solution *solution, struct muslin_misfit *rows,
                                      size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    if (check.status != MUSLIN_OK)
        return check.status;
    size_t n = (size_t)solution->misfits.used;
    const struct muslin_misfit *misfits = solution->misfits.rows;
    if (msl_rows_wanted(&check, rows, row_size, MISFIT_LEAST, capacity, count, n))
        for (size_t i = 0; i < n; i++)
            msl_write_row(rows, row_size, i, &misfits[i], sizeof misfits[i]);
    return check.status;
}

/* ---- the way to a node ------------------------------------------------------------------------------------------ */

/* A node and the number of the child through which the way goes on downwards. */
struct step {
    uint32_t node;
    int64_t child;
};

/* The child number under which `parent` first has `node`; -1: not at all. */
static int64_t child_number(const struct muslin_quilt *quilt, uint32_t parent, uint32_t node)
{
    const struct msl_row *row = msl_node_row(quilt, parent);
    const int32_t *args = msl_node_args(quilt, parent);
    struct msl_children children = msl_children_of(row->kind, row->count);
    for (uint32_t k = 0; k < children.count; k++)
        if ((uint32_t)args[children.first + k] == node)
            return k;
    return -1;
}

/* The first node made of this one that is in the top; there is one for every node but the root. */
static struct step step_up(const struct muslin_solution *solution, uint32_t node)
{
    struct step step = { node, -1 };
    while (step.child < 0) {
        step.node++;
        if (msl_copies(&solution->counts[step.node - 1]) > 0)
            step.child = child_number(solution->quilt, step.node, node);
    }
    return step;
}

/* Nodes are made after those they are made of: going up, each is looked at once. */
muslin_status muslin_solution_path(const struct muslin_solution *solution, muslin_id node, int64_t *steps,
                                   size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, count);
    uint32_t number = msl_want_node(&check, solution, node);
    if (check.status != MUSLIN_OK)
        return check.status;
    size_t n = 0;
    for (uint32_t at = number; at != solution->root; n++)
        at = step_up(solution, at).node;
    if (!msl_ids_wanted(&check, steps, capacity, count, n))
        return check.status;
    for (uint32_t at = number; n > 0; n--) {
        struct step step = step_up(solution, at);
        steps[n - 1] = step.child;
        at = step.node;
    }
    return MUSLIN_OK;
}
