/* test_pressing.h - what the tests of pressing plans share.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_PRESSING_H
#define MUSLIN_TEST_PRESSING_H

#include "test_quilt.h"

static inline struct muslin_pressing *pressed_with(const struct muslin_solution *solution, int64_t work_limit,
                                                   int32_t prefer)
{
    struct muslin_pressing_spec spec = MUSLIN_PRESSING_SPEC_INIT;
    struct muslin_pressing *plan = NULL;
    spec.work_limit = work_limit;
    spec.prefer = prefer;
    ck_ok(muslin_pressing_create(solution, &spec, NULL, NULL, NULL, &plan, NULL));
    return plan;
}

static inline struct muslin_pressing *pressed(const struct muslin_solution *solution)
{
    return pressed_with(solution, 2000000, 1);
}

static inline struct muslin_pressing_total totals_of(const struct muslin_pressing *plan)
{
    struct muslin_pressing_total totals = { .size = (uint32_t)sizeof totals };
    ck_ok(muslin_pressing_totals(plan, &totals, NULL));
    return totals;
}

static inline void put_away(struct muslin_pressing *plan, struct muslin_solution *solution)
{
    muslin_pressing_free(plan);
    muslin_solution_free(solution);
}

/* Totals of a tree, asked for and forgotten. */
static inline struct muslin_pressing_total totals_pressed(struct muslin_quilt *quilt, muslin_id root)
{
    struct muslin_solution *solution = solved(quilt, root);
    struct muslin_pressing *plan = pressed(solution);
    struct muslin_pressing_total totals = totals_of(plan);
    put_away(plan, solution);
    return totals;
}

/* All rows, to be freed by the caller. */
static inline struct muslin_pressing_seam *seams_of(const struct muslin_pressing *plan, size_t *count)
{
    ck_ok(muslin_pressing_seams(plan, NULL, sizeof(struct muslin_pressing_seam), 0, count, NULL));
    struct muslin_pressing_seam *rows = calloc(*count + 1, sizeof *rows);
    ck_ok(muslin_pressing_seams(plan, rows, sizeof *rows, *count, count, NULL));
    ck_assert_uint_eq(rows[*count].size, 0); /* not written */
    return rows;
}

static inline struct muslin_pressing_child *children_of(const struct muslin_pressing *plan, size_t *count)
{
    ck_ok(muslin_pressing_children(plan, NULL, sizeof(struct muslin_pressing_child), 0, count, NULL));
    struct muslin_pressing_child *rows = calloc(*count + 1, sizeof *rows);
    ck_ok(muslin_pressing_children(plan, rows, sizeof *rows, *count, count, NULL));
    ck_assert_uint_eq(rows[*count].size, 0); /* not written */
    return rows;
}

static inline struct muslin_pressing_exception *exceptions_of(const struct muslin_pressing *plan, size_t *count)
{
    ck_ok(muslin_pressing_exceptions(plan, NULL, sizeof(struct muslin_pressing_exception), 0, count, NULL));
    struct muslin_pressing_exception *rows = calloc(*count + 1, sizeof *rows);
    ck_ok(muslin_pressing_exceptions(plan, rows, sizeof *rows, *count, count, NULL));
    ck_assert_uint_eq(rows[*count].size, 0); /* not written */
    return rows;
}

/* Every exception lies on the seam that is told with it, between its ends, to the nearest ticks. Returns how many there
 * are in this node. */
static inline int64_t exceptions_on_seams(const struct muslin_pressing *plan, muslin_id node)
{
    size_t n;
    size_t seams_count;
    int64_t count = 0;
    struct muslin_pressing_exception *rows = exceptions_of(plan, &n);
    struct muslin_pressing_seam *seams = seams_of(plan, &seams_count);
    for (size_t i = 0; i < n; i++) {
        const struct muslin_pressing_seam *seam = seams;
        while (seam < seams + seams_count && (seam->node != rows[i].node || seam->seam != rows[i].seam))
            seam++;
        ck_assert(seam < seams + seams_count);
        const muslin_len right = seam->to_x - seam->from_x;
        const muslin_len up = seam->to_y - seam->from_y;
        const muslin_len x = rows[i].x - seam->from_x;
        const muslin_len y = rows[i].y - seam->from_y;
        ck_assert_int_le(llabs(right * y - up * x), 2 * (llabs(right) + llabs(up)));
        ck_assert_int_ge(right * x + up * y, 0);
        ck_assert_int_le(right * x + up * y, right * right + up * up);
        count += rows[i].node == node ? rows[i].count : 0;
    }
    free(seams);
    free(rows);
    return count;
}

static inline muslin_id fabric_so_dark(struct muslin_quilt *quilt, int32_t darkness)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    muslin_id id = 0;
    spec.darkness = darkness;
    ck_ok(muslin_quilt_fabric(quilt, &spec, "cloth", 5, &id, NULL));
    return id;
}

static inline muslin_id join_pressed(struct muslin_quilt *quilt, int32_t axis, int32_t press,
                                     const muslin_id *children, size_t n)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id id = 0;
    spec.axis = axis;
    spec.press = press;
    ck_ok(muslin_quilt_join(quilt, &spec, children, n, &id, NULL));
    return id;
}

/* Columns x rows of one node, turned as this pattern says. */
static inline muslin_id turned_repeat_of(struct muslin_quilt *quilt, muslin_id node, int64_t columns, int64_t rows,
                                         const int32_t *turns, int64_t turn_columns, int64_t turn_rows)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_repeat(quilt, node, columns, rows, turns, (size_t)(turn_columns * turn_rows), turn_columns,
                              turn_rows, &id, NULL));
    return id;
}

#endif
