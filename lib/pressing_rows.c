/* pressing_rows.c - what a pressing plan says: totals, seams, places, exceptions.
 *
 * SPDX-License-Identifier: MIT */
#include "pressing_inside.h"

enum {
    TOTALS_LEAST = sizeof(struct muslin_pressing_total),
    SEAM_LEAST = sizeof(struct muslin_pressing_seam),
    CHILD_LEAST = sizeof(struct muslin_pressing_child),
    EXCEPTION_LEAST = sizeof(struct muslin_pressing_exception)
};

static void want_plan(struct msl_check *check, const struct muslin_pressing *pressing)
{
    msl_want_pointer(check, MUSLIN_ARG_PRESSING, pressing);
}

muslin_status muslin_pressing_totals(const struct muslin_pressing *pressing, struct muslin_pressing_total *out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_plan(&check, pressing);
    msl_want_output(&check, out, TOTALS_LEAST);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_write_struct(out, &pressing->totals, sizeof pressing->totals);
    return MUSLIN_OK;
}

static muslin_id id_of(const struct muslin_pressing *plan, uint32_t node)
{
    return msl_id(plan->solution->quilt, MUSLIN_SORT_NODE, node);
}

/* ---- seams ------------------------------------------------------------------------------------------------------ */

/* How the copies that are taken the other way come about. */
static int32_t other_of(const struct muslin_pressing *plan, uint32_t node)
{
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    if (pressed->other_way == 0)
        return MUSLIN_OTHER_WAY_NONE;
    if (pressed->turn != 0)
        return MUSLIN_OTHER_WAY_TURNED;
    return msl_size_of(plan->solution, node)->as_set ? MUSLIN_OTHER_WAY_SETS : MUSLIN_OTHER_WAY_PRESSED;
}

static int32_t press_of(const struct msl_seam *seam, uint8_t way)
{
    if (seam->from_y == seam->to_y)
        return way == 0 ? MUSLIN_PRESS_UP : MUSLIN_PRESS_DOWN;
    return way == 0 ? MUSLIN_PRESS_LEFT : MUSLIN_PRESS_RIGHT;
}

static struct muslin_pressing_seam seam_row(const struct muslin_pressing *plan, uint32_t node, uint32_t k,
                                            int32_t other)
{
    const struct msl_seam seam = msl_seam(plan->solution, node, k);
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    const struct msl_seam_way way = plan->seam[pressed->first_seam + k];
    struct muslin_pressing_seam row = { .size = sizeof row,
                                        .node = id_of(plan, node),
                                        .seam = k,
                                        .as_shown = pressed->as_shown,
                                        .other_way = pressed->other_way,
                                        .from_x = seam.from_x,
                                        .from_y = seam.from_y,
                                        .to_x = seam.to_x,
                                        .to_y = seam.to_y,
                                        .press = press_of(&seam, way.way),
                                        .towards = way.way + 1,
                                        .other = other,
                                        .turn = pressed->turn };
    if (way.wish != 0)
        row.preferred = way.wish == way.way + 1 ? MUSLIN_PREFERRED_KEPT : MUSLIN_PREFERRED_AGAINST;
    if (way.held != MSL_HELD_OPEN)
        return row;
    row.press = MUSLIN_PRESS_OPEN;
    row.towards = MUSLIN_TOWARDS_NEITHER;
    if (pressed->turn == 0) { /* pressed the other way it is the same */
        row.as_shown += row.other_way;
        row.other_way = 0;
        row.other = MUSLIN_OTHER_WAY_NONE;
    }
    return row;
}

muslin_status muslin_pressing_seams(const struct muslin_pressing *pressing, struct muslin_pressing_seam *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_plan(&check, pressing);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, SEAM_LEAST, capacity, count, pressing->seams))
        return check.status;
    for (uint32_t node = 1; node <= pressing->nodes; node++) {
        const int32_t other = other_of(pressing, node);
        const uint32_t seams = msl_own_seams(pressing, node);
        for (uint32_t k = 0; k < seams; k++) {
            const struct muslin_pressing_seam row = seam_row(pressing, node, k, other);
            msl_write_row(rows, row_size, msl_pressed(pressing, node)->first_seam + k, &row, sizeof row);
        }
    }
    return MUSLIN_OK;
}

/* ---- places ----------------------------------------------------------------------------------------------------- */

/* A node's parts, when some carry seams. */
static int64_t parts_of(const struct muslin_pressing *plan, uint32_t node)
{
    return msl_own_places(plan, node) > 0 ? msl_parts(plan->solution, node) : 0;
}

static size_t count_children(const struct muslin_pressing *plan)
{
    size_t children = 0;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const int64_t parts = parts_of(plan, node);
        for (int64_t k = 0; k < parts; k++)
            children += msl_pressed(plan, msl_part(plan->solution, node, k).node)->carries;
    }
    return children;
}

muslin_status muslin_pressing_children(const struct muslin_pressing *pressing, struct muslin_pressing_child *rows,
                                       size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_plan(&check, pressing);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, CHILD_LEAST, capacity, count, count_children(pressing)))
        return check.status;
    size_t at = 0;
    for (uint32_t node = 1; node <= pressing->nodes; node++) {
        const int64_t parts = parts_of(pressing, node);
        for (int64_t k = 0; k < parts; k++) {
            const uint32_t part = msl_part(pressing->solution, node, k).node;
            if (!msl_pressed(pressing, part)->carries)
                continue;
            const struct muslin_pressing_child row = { sizeof row, 0, id_of(pressing, node), id_of(pressing, part), k,
                                                      pressing->place_way[msl_pressing_place(pressing, node, k)],
                                                      msl_pressed(pressing, part)->turn };
            msl_write_row(rows, row_size, at++, &row, sizeof row);
        }
    }
    return MUSLIN_OK;
}

/* ---- exceptions ------------------------------------------------------------------------------------------------- */

/* The node of a seam, by its number in the plan: the last one that begins at or before it and has seams. */
static uint32_t node_of_seam(const struct muslin_pressing *plan, uint32_t seam)
{
    uint32_t low = 1;
    uint32_t high = plan->nodes;
    while (low < high) {
        const uint32_t middle = low + (high - low) / 2;
        if (plan->node[middle].first_seam > seam)
            high = middle;
        else
            low = middle + 1;
    }
    return low;
}

muslin_status muslin_pressing_exceptions(const struct muslin_pressing *pressing, struct muslin_pressing_exception *rows,
                                         size_t row_size, size_t capacity, size_t *count,
                                         struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    want_plan(&check, pressing);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, EXCEPTION_LEAST, capacity, count, (size_t)pressing->met.used))
        return check.status;
    const struct msl_met *met = pressing->met.rows;
    for (size_t i = 0; i < pressing->met.used; i++) {
        const uint32_t first = node_of_seam(pressing, met[i].first);
        const uint32_t second = node_of_seam(pressing, met[i].second);
        const struct muslin_pressing_exception row = {
            sizeof row, 0, id_of(pressing, met[i].node), met[i].line, met[i].x, met[i].y, id_of(pressing, first),
            met[i].first - msl_pressed(pressing, first)->first_seam, id_of(pressing, second),
            met[i].second - msl_pressed(pressing, second)->first_seam, met[i].count
        };
        msl_write_row(rows, row_size, i, &row, sizeof row);
    }
    return MUSLIN_OK;
}
