/* solution_rows.c - the rows that solving made, read: the cut list and the strip sets.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_inside.h"

/* Copies rows of one type, all of them, to the caller's. */
static muslin_status give_rows(const struct msl_rows *rows, uint32_t known, void *out, size_t row_size,
                               size_t capacity, size_t *count, struct msl_check *check)
{
    if (!msl_rows_wanted(check, out, row_size, known, capacity, count, (size_t)rows->used))
        return check->status;
    const unsigned char *from = rows->rows;
    for (size_t i = 0; i < rows->used; i++)
        msl_write_row(out, row_size, i, from + i * known, known);
    return MUSLIN_OK;
}

muslin_status muslin_solution_cuts(const struct muslin_solution *solution, struct muslin_solution_cut *rows,
                                   size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    if (check.status != MUSLIN_OK)
        return check.status;
    return give_rows(&solution->cuts, sizeof *rows, rows, row_size, capacity, count, &check);
}

muslin_status muslin_solution_stripsets(const struct muslin_solution *solution, struct muslin_stripset *rows,
                                         size_t row_size, size_t capacity, size_t *count,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    if (check.status != MUSLIN_OK)
        return check.status;
    return give_rows(&solution->sets, sizeof *rows, rows, row_size, capacity, count, &check);
}

/* Needs are in the order of their rows: the first one of a row, by halving. */
static size_t first_need(const struct muslin_solution *solution, int64_t row)
{
    const struct msl_need *needs = solution->needs.rows;
    uint64_t low = 0;
    uint64_t high = solution->needs.used;
    while (low < high) {
        uint64_t middle = (low + high) / 2;
        if (needs[middle].row < row)
            low = middle + 1;
        else
            high = middle;
    }
    return (size_t)low;
}

muslin_status muslin_solution_cut_nodes(const struct muslin_solution *solution, int64_t row, muslin_id *ids,
                                        size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, count);
    if (check.status != MUSLIN_OK)
        return check.status;
    const int64_t rows = (int64_t)solution->cuts.used;
    if (row < 0 || row >= rows)
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, row, rows - 1);
    const struct muslin_solution_cut *cuts = solution->cuts.rows;
    const size_t n = (size_t)cuts[row].nodes;
    if (!msl_ids_wanted(&check, ids, capacity, count, n))
        return check.status;
    const struct msl_need *needs = (const struct msl_need *)solution->needs.rows + first_need(solution, row);
    for (size_t i = 0; i < n; i++)
        ids[i] = msl_id(solution->quilt, MUSLIN_SORT_NODE, needs[i].node);
    return MUSLIN_OK;
}
