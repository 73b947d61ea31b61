/* test_quilt.h - what tests of the piecing tree share: short ways to make its parts.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_QUILT_H
#define MUSLIN_TEST_QUILT_H

#include "failing_allocator.h"
#include "struct_rules.h"

/* A quilt on an allocator that counts, with two fabrics and a measure of 2 in. */
struct sewn {
    struct failing_allocator memory;
    struct muslin_quilt *quilt;
    muslin_id blue;
    muslin_id white;
    muslin_id two;
};

static inline muslin_id fabric_of(struct muslin_quilt *quilt, const char *name)
{
    struct muslin_quilt_fabric_spec spec = MUSLIN_QUILT_FABRIC_SPEC_INIT;
    muslin_id id = 0;
    ck_ok(muslin_quilt_fabric(quilt, &spec, name, strlen(name), &id, NULL));
    return id;
}

static inline muslin_id measure_of(struct muslin_quilt *quilt, const char *name, muslin_len value)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_measure(quilt, name, strlen(name), value, &id, NULL));
    return id;
}

static inline muslin_id fixed_of(struct muslin_quilt *quilt, muslin_len value)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_fixed(quilt, value, &id, NULL));
    return id;
}

static inline muslin_id times_of(struct muslin_quilt *quilt, muslin_id measure, int64_t factor)
{
    struct muslin_quilt_sum_spec term = MUSLIN_QUILT_SUM_SPEC_INIT;
    muslin_id id = 0;
    term.measure = measure;
    term.factor = factor;
    ck_ok(muslin_quilt_sum(quilt, &term, sizeof term, 1, &id, NULL));
    return id;
}

static inline muslin_id extent_of(struct muslin_quilt *quilt, muslin_id node, int32_t axis)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_extent(quilt, node, axis, &id, NULL));
    return id;
}

static inline muslin_id patch_of(struct muslin_quilt *quilt, muslin_id fabric, muslin_id width, muslin_id height)
{
    struct muslin_quilt_patch_spec spec = MUSLIN_QUILT_PATCH_SPEC_INIT;
    muslin_id id = 0;
    spec.fabric = fabric;
    spec.width = width;
    spec.height = height;
    ck_ok(muslin_quilt_patch(quilt, &spec, &id, NULL));
    return id;
}

static inline muslin_id join_of(struct muslin_quilt *quilt, int32_t axis, const muslin_id *children, size_t n)
{
    struct muslin_quilt_join_spec spec = MUSLIN_QUILT_JOIN_SPEC_INIT;
    muslin_id id = 0;
    spec.axis = axis;
    ck_ok(muslin_quilt_join(quilt, &spec, children, n, &id, NULL));
    return id;
}

static inline muslin_id turn_of(struct muslin_quilt *quilt, muslin_id node, int32_t quarter_turns)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_turn(quilt, node, quarter_turns, &id, NULL));
    return id;
}

static inline muslin_id mirror_of(struct muslin_quilt *quilt, muslin_id node)
{
    muslin_id id = 0;
    ck_ok(muslin_quilt_mirror(quilt, node, &id, NULL));
    return id;
}

/* Columns x rows of one node, not turned. */
static inline muslin_id repeat_of(struct muslin_quilt *quilt, muslin_id node, int64_t columns, int64_t rows)
{
    const int32_t upright = 0;
    muslin_id id = 0;
    ck_ok(muslin_quilt_repeat(quilt, node, columns, rows, &upright, 1, 1, 1, &id, NULL));
    return id;
}

static inline struct muslin_solution *solved(struct muslin_quilt *quilt, muslin_id root)
{
    struct muslin_solution_spec spec = MUSLIN_SOLUTION_SPEC_INIT;
    struct muslin_solution *solution = NULL;
    ck_ok(muslin_solution_create(quilt, root, &spec, NULL, 0, 0, NULL, &solution, NULL));
    return solution;
}

static inline struct muslin_node_size size_of(const struct muslin_solution *solution, muslin_id node)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    ck_ok(muslin_solution_size(solution, node, &size, NULL));
    return size;
}

static inline struct muslin_part_counts counts_of(const struct muslin_quilt *quilt)
{
    struct muslin_part_counts counts = { .size = (uint32_t)sizeof counts };
    ck_ok(muslin_quilt_counts(quilt, &counts, NULL));
    return counts;
}

/* The same parts in the quilt as before, whatever memory it took meanwhile. */
static inline void ck_same_parts(const struct muslin_quilt *quilt, const struct muslin_part_counts *before)
{
    struct muslin_part_counts now = counts_of(quilt);
    ck_assert_int_eq(now.fabrics, before->fabrics);
    ck_assert_int_eq(now.measures, before->measures);
    ck_assert_int_eq(now.nodes, before->nodes);
}

static inline void begin_sewing(struct sewn *sewn)
{
    struct muslin_quilt_spec spec = MUSLIN_QUILT_SPEC_INIT;
    spec.tag = 1;
    failing_start(&sewn->memory, 0);
    ck_ok(muslin_quilt_create(&spec, &sewn->memory.allocator, &sewn->quilt, NULL));
    sewn->blue = fabric_of(sewn->quilt, "blue");
    sewn->white = fabric_of(sewn->quilt, "white");
    sewn->two = measure_of(sewn->quilt, "strip", WHOLE_IN(2));
}

static inline void end_sewing(struct sewn *sewn)
{
    muslin_quilt_free(sewn->quilt);
    ck_assert(failing_is_clean(&sewn->memory));
}

/* The next calls' allocation number `round` fails, counted from now; 0: none. */
static inline void fail_at(struct sewn *sewn, size_t round)
{
    sewn->memory.calls = 0;
    sewn->memory.round = round;
    sewn->memory.has_failed = 0;
}

#endif
