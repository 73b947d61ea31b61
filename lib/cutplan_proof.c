/* cutplan_proof.c - why no plan costs less: the sizes and ways, the cases, and the worths that prove them.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

#include "cutplan_check.h"

/* ---- sizes ------------------------------------------------------------------------------------------------------ */

/* The first row of the request that wants it. */
static int64_t first_row_of(const struct muslin_cutplan *plan, const struct msl_cut_size *rows)
{
    int64_t first = INT64_MAX;
    for (uint32_t i = rows->first; i < rows->first + rows->count; i++)
        if (plan->blanks[i].row < first)
            first = plan->blanks[i].row;
    return first;
}

muslin_status muslin_cutplan_sizes(const struct muslin_cutplan *plan, struct muslin_cutplan_size *rows, size_t row_size,
                                   size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    const size_t needed = (size_t)plan->cutting.size_count;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    for (size_t i = 0; i < needed; i++) {
        const struct msl_piece_size *size = &plan->cutting.sizes[i];
        const struct muslin_cutplan_size row = {
            .size = (uint32_t)sizeof row, .piece = first_row_of(plan, &plan->sizes[i]), .count = size->count,
            .taken = size->across * plan->unit, .height = size->along * plan->unit,
            .turned_taken = size->turned_across * plan->unit, .turned_height = size->turned_along * plan->unit,
            .run_in = size->run_in * plan->unit, .may_turn = size->turned_across != 0,
            .slit = size->slit, .level = size->level
        };
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

/* ---- ways ------------------------------------------------------------------------------------------------------- */

static struct muslin_cutplan_way way_of(const struct muslin_cutplan *plan, const struct msl_way *way)
{
    const struct muslin_cutplan_way row = { .size = (uint32_t)sizeof row,
                                            .cost = way->cost * plan->cost_unit,
                                            .stock = way->stock < 0 ? -1 : (int64_t)plan->stock_rows[way->stock],
                                            .width = way->across * plan->unit,
                                            .height = way->along * plan->unit,
                                            .kind = way->panel   ? MUSLIN_CUTPLAN_STRIP_PANEL
                                                    : way->sheet ? MUSLIN_CUTPLAN_STRIP_STOCK
                                                                 : MUSLIN_CUTPLAN_STRIP_STRIP,
                                            .turned = way->turned };
    return row;
}

muslin_status muslin_cutplan_ways(const struct muslin_cutplan *plan, struct muslin_cutplan_way *rows, size_t row_size,
                                  size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    const size_t needed = (size_t)plan->cutting.way_count;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    for (size_t i = 0; i < needed; i++) {
        const struct muslin_cutplan_way row = way_of(plan, &plan->cutting.ways[i]);
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

/* ---- cases ------------------------------------------------------------------------------------------------------ */

/* The case whose worths prove this one. */
static int32_t worths_of(const struct muslin_cutplan *plan, int32_t of_case)
{
    while (plan->found.cases[of_case].worth_count == 0)
        of_case = plan->found.cases[of_case].parent;
    return of_case;
}

static struct muslin_cutplan_case case_of(const struct muslin_cutplan *plan, int32_t number)
{
    const struct msl_case *of = &plan->found.cases[number];
    const struct msl_limit *limit = &of->limit; /* of the whole all 0 */
    const struct muslin_cutplan_case row = { .size = (uint32_t)sizeof row,
                                             .parent = of->parent,
                                             .split = of->split,
                                             .worths = worths_of(plan, number),
                                             .least = of->least * plan->cost_unit,
                                             .wanted = limit->wanted,
                                             .first_way = limit->first_way,
                                             .last_way = limit->last_way,
                                             .plan_size = limit->kind == MSL_LIMIT_COPIES ? limit->size : -1,
                                             .packed_way = (int64_t)of->packed - 1,
                                             .at_least = limit->at_least };
    return row;
}

muslin_status muslin_cutplan_cases(const struct muslin_cutplan *plan, struct muslin_cutplan_case *rows, size_t row_size,
                                   size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    if (check.status != MUSLIN_OK)
        return check.status;
    const size_t needed = (size_t)plan->found.case_count;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed))
        return check.status;
    for (size_t i = 0; i < needed; i++) {
        const struct muslin_cutplan_case row = case_of(plan, (int32_t)i);
        msl_write_row(rows, row_size, i, &row, (uint32_t)sizeof row);
    }
    return check.status;
}

/* ---- worths ----------------------------------------------------------------------------------------------------- */

/* Worths stand in the order of sizes, stock, then the conditions from the whole down to the case. A worth is of the
 * cost in units: in ticks it is so many times more. */
static void write_worths(const struct muslin_cutplan *plan, int64_t of_case, struct muslin_cutplan_worth *rows,
                         size_t row_size)
{
    const struct msl_case *of = &plan->found.cases[of_case];
    const int64_t *worths = plan->found.worths + of->first_worth;
    const int32_t sizes = plan->cutting.size_count;
    const int32_t stocks = plan->cutting.stock_count;
    int64_t condition = of_case;
    for (int32_t i = of->worth_count; i-- > 0;) {
        struct muslin_cutplan_worth row = { (uint32_t)sizeof row, 0, -1, -1, -1, worths[i] * plan->cost_unit };
        if (i < sizes) {
            row.plan_size = i;
        } else if (i < sizes + stocks) {
            row.stock = plan->stock_rows[i - sizes];
        } else {
            row.of_case = condition;
            condition = plan->found.cases[condition].parent;
        }
        msl_write_row(rows, row_size, (size_t)i, &row, (uint32_t)sizeof row);
    }
}

muslin_status muslin_cutplan_worths(const struct muslin_cutplan *plan, int64_t of_case,
                                    struct muslin_cutplan_worth *rows, size_t row_size, size_t capacity, size_t *count,
                                    int64_t *scale, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, scale);
    if (check.status != MUSLIN_OK)
        return check.status;
    const int64_t cases = plan->found.case_count;
    if (of_case < 0 || of_case >= cases || plan->found.cases[of_case].worth_count == 0) {
        msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_PROOF_CASE, of_case, cases - 1);
        return check.status;
    }
    const size_t needed = (size_t)plan->found.cases[of_case].worth_count;
    const int wanted = msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, needed);
    if (check.status == MUSLIN_OK)
        *scale = INT64_C(1) << plan->found.bits;
    if (wanted)
        write_worths(plan, of_case, rows, row_size);
    return check.status;
}
