/* quilt_grid.c - straight settings: rows of unlike nodes, and one node over and over.
 *
 * SPDX-License-Identifier: MIT */
#include "quilt_store.h"

enum { REPEATS_MOST = 1048576 };

/* ---- unlike nodes ----------------------------------------------------------------------------------------------- */

/* One row of a grid joined across. */
static uint32_t add_row(struct msl_check *check, struct muslin_quilt *quilt, int64_t columns, const muslin_id *children,
                        int64_t first)
{
    int32_t *args = msl_begin_join(check, quilt, MUSLIN_AXIS_ACROSS, (uint32_t)columns);
    for (int64_t i = 0; args != NULL && i < columns; i++) {
        check->at = first + i;
        args[i] = (int32_t)msl_want_id(check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, children[first + i]);
    }
    if (check->status != MUSLIN_OK)
        return 0;
    check->at = 0;
    return msl_end_join(check, quilt, (uint32_t)columns);
}

/* All rows, joined down. */
static uint32_t add_grid(struct msl_check *check, struct muslin_quilt *quilt, int64_t columns, int64_t rows,
                         const muslin_id *children)
{
    uint32_t *made = msl_scratch(check, &quilt->allocator, (uint64_t)rows, sizeof *made);
    if (made == NULL)
        return 0;
    for (int64_t row = 0; check->status == MUSLIN_OK && row < rows; row++)
        made[row] = add_row(check, quilt, columns, children, row * columns);
    uint32_t node = check->status == MUSLIN_OK ? msl_add_join(check, quilt, MUSLIN_AXIS_DOWN, made, (uint32_t)rows) : 0;
    msl_scratch_free(&quilt->allocator, made, (uint64_t)rows, sizeof *made);
    return node;
}

muslin_status muslin_quilt_grid(struct muslin_quilt *quilt, int64_t columns, int64_t rows, const muslin_id *children,
                                size_t n, muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_children(&check, children, n);
    msl_want_some_count(&check, MUSLIN_ARG_COLUMNS, columns);
    msl_want_some_count(&check, MUSLIN_ARG_QUILT_ROWS, rows);
    if (check.status != MUSLIN_OK)
        return check.status;
    msl_want_between(&check, MUSLIN_ARG_CHILDREN, (int64_t)n, columns * rows, columns * rows);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_mark mark = msl_mark(quilt);
    return msl_give_node(&check, quilt, mark, add_grid(&check, quilt, columns, rows, children), out);
}

/* ---- one node over and over ------------------------------------------------------------------------------------- */

/* A pattern of turns that repeats, and the node as each of its turns makes it (0 where none does). */
struct pattern {
    const int32_t *turns;
    int64_t columns;
    int64_t rows;
    uint32_t turned[4];
};

static void read_pattern(struct msl_check *check, struct muslin_quilt *quilt, uint32_t node, struct pattern *pattern)
{
    int64_t n = pattern->columns * pattern->rows;
    for (int64_t i = 0; i < n; i++) {
        check->at = i;
        msl_want_between(check, MUSLIN_ARG_QUARTER_TURNS, pattern->turns[i], 0, 3);
        if (check->status != MUSLIN_OK)
            return;
        uint32_t *turned = &pattern->turned[pattern->turns[i]];
        if (*turned == 0)
            *turned = msl_add_turn(check, quilt, node, pattern->turns[i]);
    }
    check->at = 0;
}

static uint32_t add_pattern_row(struct msl_check *check, struct muslin_quilt *quilt, const struct pattern *pattern,
                                int64_t row, int64_t columns)
{
    int32_t *args = msl_begin_join(check, quilt, MUSLIN_AXIS_ACROSS, (uint32_t)columns);
    if (args == NULL)
        return 0;
    const int32_t *turns = pattern->turns + row * pattern->columns;
    for (int64_t i = 0; i < columns; i++)
        args[i] = (int32_t)pattern->turned[turns[i % pattern->columns]];
    return msl_end_join(check, quilt, (uint32_t)columns);
}

static uint32_t add_repeat(struct msl_check *check, struct muslin_quilt *quilt, const struct pattern *pattern,
                           int64_t columns, int64_t rows)
{
    uint64_t different = (uint64_t)(rows < pattern->rows ? rows : pattern->rows);
    uint32_t *made = msl_scratch(check, &quilt->allocator, different, sizeof *made);
    if (made == NULL)
        return 0;
    for (uint64_t row = 0; row < different; row++)
        made[row] = add_pattern_row(check, quilt, pattern, (int64_t)row, columns);
    int32_t *args = msl_begin_join(check, quilt, MUSLIN_AXIS_DOWN, (uint32_t)rows);
    for (int64_t row = 0; args != NULL && row < rows; row++)
        args[row] = (int32_t)made[(uint64_t)row % different];
    uint32_t node = args == NULL ? 0 : msl_end_join(check, quilt, (uint32_t)rows);
    msl_scratch_free(&quilt->allocator, made, different, sizeof *made);
    return node;
}

muslin_status muslin_quilt_repeat(struct muslin_quilt *quilt, muslin_id node, int64_t columns, int64_t rows,
                                  const int32_t *turns, size_t n, int64_t pattern_columns, int64_t pattern_rows,
                                  muslin_id *out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_quilt(&check, quilt, out);
    msl_want_pointer(&check, MUSLIN_ARG_TURNING, turns);
    uint32_t number = msl_want_id(&check, quilt, MUSLIN_SORT_NODE, MUSLIN_ARG_NODE, node);
    msl_want_between(&check, MUSLIN_ARG_COLUMNS, columns, 1, REPEATS_MOST);
    msl_want_between(&check, MUSLIN_ARG_QUILT_ROWS, rows, 1, REPEATS_MOST);
    check.at = 1;
    msl_want_between(&check, MUSLIN_ARG_COLUMNS, pattern_columns, 1, REPEATS_MOST);
    msl_want_between(&check, MUSLIN_ARG_QUILT_ROWS, pattern_rows, 1, REPEATS_MOST);
    check.at = 0;
    if (check.status != MUSLIN_OK)
        return check.status;
    int64_t given = n > MSL_CHILDREN_MOST ? -1 : (int64_t)n;
    msl_want_between(&check, MUSLIN_ARG_TURNING, given, pattern_columns * pattern_rows, pattern_columns * pattern_rows);
    struct pattern pattern = { .turns = turns, .columns = pattern_columns, .rows = pattern_rows };
    struct msl_mark mark = msl_mark(quilt);
    if (check.status == MUSLIN_OK)
        read_pattern(&check, quilt, number, &pattern);
    uint32_t made = check.status == MUSLIN_OK ? add_repeat(&check, quilt, &pattern, columns, rows) : 0;
    return msl_give_node(&check, quilt, mark, made, out);
}
