/* test_cutplan_parts.h - small cuttings for the tests of the parts of the cutting plan.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTPLAN_PARTS_H
#define MUSLIN_TEST_CUTPLAN_PARTS_H

#include "cutplan_price.h"
#include "failing_allocator.h"
#include "testing.h"

enum { FEW_SIZES = 12, FEW_WAYS = 40, FEW_PATTERNS = 600, FEW_STRIPS = 4000, FEW_LAID = 20000 };

/* The same numbers on every machine. */
static inline int64_t pick(uint64_t *seed, int64_t below)
{
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    return (int64_t)((*seed >> 33) % (uint64_t)below);
}

static inline int64_t larger(int64_t a, int64_t b)
{
    return a > b ? a : b;
}

static inline int64_t lesser(int64_t a, int64_t b)
{
    return a < b ? a : b;
}

static inline struct muslin_allocator parts_memory(void)
{
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    return allocator;
}

struct parts {
    struct msl_cutting cutting;
    struct msl_piece_size sizes[FEW_SIZES];
    struct msl_way ways[FEW_WAYS];
    int64_t heights[FEW_WAYS];
    struct msl_pool pool;
    struct msl_pattern patterns[FEW_PATTERNS];
    struct msl_strip strips[FEW_STRIPS];
    struct msl_laid laid[FEW_LAID];
};

static inline void parts_begin(struct parts *parts)
{
    memset(parts, 0, sizeof *parts);
    parts->cutting.sizes = parts->sizes;
    parts->cutting.ways = parts->ways;
    parts->cutting.heights = parts->heights;
    parts->pool.patterns = parts->patterns;
    parts->pool.strips = parts->strips;
    parts->pool.laid = parts->laid;
    parts->pool.most_patterns = FEW_PATTERNS;
    parts->pool.most_strips = FEW_STRIPS;
    parts->pool.most_laid = FEW_LAID;
}

static inline struct msl_piece_size *parts_size(struct parts *parts, int64_t across, int64_t along, int turns, int64_t count)
{
    const struct msl_piece_size size = { across, along, turns ? along : 0, turns ? across : 0, 0, count, 0, 0 };
    ck_assert_int_lt(parts->cutting.size_count, FEW_SIZES);
    parts->sizes[parts->cutting.size_count] = size;
    return &parts->sizes[parts->cutting.size_count++];
}

static inline struct msl_way *parts_way(struct parts *parts, int64_t across, int64_t along)
{
    const struct msl_way way = { along, across, along, 0, 0, -1, 0 };
    ck_assert_int_lt(parts->cutting.way_count, FEW_WAYS);
    parts->ways[parts->cutting.way_count] = way;
    return &parts->ways[parts->cutting.way_count++];
}

/* Heights at which pieces can lie, from the highest. */
static inline int32_t parts_heights(const struct parts *parts, int64_t *heights)
{
    int32_t count = 0;
    for (int64_t last = INT64_MAX;;) {
        int64_t next = 0;
        for (int32_t s = 0; s < parts->cutting.size_count; s++) {
            const struct msl_piece_size *size = &parts->sizes[s];
            if (size->along < last)
                next = larger(next, size->along);
            if (size->turned_across > 0 && size->turned_along < last)
                next = larger(next, size->turned_along);
        }
        if (next == 0)
            return count;
        ck_assert_int_lt(count, FEW_WAYS);
        heights[count++] = last = next;
    }
}

/* What of this size takes of a strip of this height, said another way than msl_taken_in(); 0: nothing can. */
static inline int64_t plainly_taken(const struct msl_piece_size *size, int64_t height)
{
    int64_t best = INT64_MAX;
    if (size->along == height || (size->along < height && !size->level))
        best = size->across;
    if (size->turned_across > 0 && size->turned_across < best &&
        (size->turned_along == height || (size->turned_along < height && !size->level)))
        best = size->turned_across;
    return best == INT64_MAX ? 0 : best;
}

#endif
