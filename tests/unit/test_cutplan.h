/* test_cutplan.h - what the tests of the cutting plan's inside share: requests made by hand or by chance.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTPLAN_H
#define MUSLIN_TEST_CUTPLAN_H

#include "testing.h"

#include "cutplan_search.h"
#include "failing_allocator.h"

enum { TINY_SIZES = 80, TINY_WAYS = 160, TINY_STATES = 4096 };

/* A request with its arrays. */
struct tiny {
    struct msl_cutting cutting;
    struct msl_piece_size sizes[TINY_SIZES];
    struct msl_way ways[TINY_WAYS];
    int64_t heights[TINY_WAYS];
    int64_t available[4];
    int64_t across; /* of the bolt */
};

static inline void tiny_start(struct tiny *t)
{
    memset(t, 0, sizeof *t);
    t->cutting.sizes = t->sizes;
    t->cutting.ways = t->ways;
    t->cutting.heights = t->heights;
    t->cutting.available = t->available;
}

static inline struct msl_piece_size *tiny_size(struct tiny *t, int64_t across, int64_t along, int64_t count, int turns)
{
    struct msl_piece_size *size = &t->sizes[t->cutting.size_count++];
    size->across = across;
    size->along = along;
    size->count = count;
    if (turns) {
        size->turned_across = along;
        size->turned_along = across;
    }
    return size;
}

/* All heights that a piece may have, from the highest. */
static inline void tiny_heights(struct tiny *t)
{
    int32_t count = 0;
    for (int32_t i = 0; i < 2 * t->cutting.size_count; i++) {
        const struct msl_piece_size *size = &t->sizes[i / 2];
        int64_t height = i % 2 == 0 ? size->along : size->turned_along;
        int32_t at = count;
        int known = height == 0;
        for (int32_t k = 0; k < count; k++)
            known |= t->heights[k] == height;
        if (known)
            continue;
        for (; at > 0 && t->heights[at - 1] < height; at--)
            t->heights[at] = t->heights[at - 1];
        t->heights[at] = height;
        count++;
    }
    t->cutting.height_count = count;
}

/* Strips of a bolt so wide, as high as a piece. */
static inline void tiny_bolt(struct tiny *t, int64_t across)
{
    tiny_heights(t);
    t->across = across;
    for (int32_t i = 0; i < t->cutting.height_count; i++) {
        struct msl_way way = { t->heights[i], across, t->heights[i], 0, 0, -1, 0 };
        int fits = 0;
        for (int32_t k = 0; k < t->cutting.size_count; k++) {
            int64_t taken = msl_taken_in(&t->sizes[k], way.along, NULL);
            fits |= taken > 0 && taken + t->sizes[k].run_in <= across;
        }
        if (fits)
            t->ways[t->cutting.way_count++] = way;
    }
}

/* Pieces of stock, cut along either side; the dearest are to come first. */
static inline void tiny_stock(struct tiny *t, int64_t across, int64_t along, int64_t available, int64_t cost)
{
    int32_t stock = t->cutting.stock_count++;
    struct msl_way upright = { cost, across, along, 1, 0, stock, 0 };
    struct msl_way turned = { cost, along, across, 1, 0, stock, 1 };
    t->available[stock] = available;
    t->ways[t->cutting.way_count++] = upright;
    t->ways[t->cutting.way_count++] = turned;
}

/* The search's memory, before its first plan. */
static inline struct msl_workshop *tiny_open(const struct tiny *t, const struct msl_watch *watch)
{
    static struct muslin_allocator memory;
    muslin_allocator_libc(&memory);
    struct msl_workshop *workshop = msl_workshop_open(&t->cutting, watch, &memory);
    ck_assert_ptr_nonnull(workshop);
    struct msl_making *making = &workshop->whole.making;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        making->wanted[i] = t->sizes[i].count;
    making->best.cost = 1000000;
    return workshop;
}

/* The best plan gives what is wanted, of stock from what there is; its strips and their pieces have room. */
static inline void ck_best_plan(const struct tiny *t, const struct msl_making *making)
{
    int64_t left[TINY_SIZES];
    int64_t in_hand[4];
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        left[i] = t->sizes[i].count;
    for (int32_t i = 0; i < t->cutting.stock_count; i++)
        in_hand[i] = t->available[i];
    for (int32_t row = 0; row < making->best.count; row++) {
        const struct msl_pattern *pattern = &making->pool->patterns[making->best.rows[row].pattern];
        const struct msl_way *way = &t->ways[pattern->way];
        int64_t along = way->along;
        if (way->stock >= 0)
            in_hand[way->stock] -= making->best.rows[row].times;
        for (int32_t s = pattern->first; s < pattern->first + pattern->count; s++) {
            const struct msl_strip *strip = &making->pool->strips[s];
            int64_t room = way->across;
            along -= strip->height;
            for (int32_t k = strip->first; k < strip->first + strip->count; k++) {
                const struct msl_laid *laid = &making->pool->laid[k];
                const int64_t taken = msl_taken_in(&t->sizes[laid->size], strip->height, NULL);
                ck_assert_int_gt(taken, 0);
                room -= t->sizes[laid->size].run_in + laid->count * taken;
                left[laid->size] -= laid->count * making->best.rows[row].times;
                ck_assert(!t->cutting.one_size || strip->count == 1);
            }
            ck_assert_int_ge(room, 0);
        }
        ck_assert_int_ge(along, 0);
    }
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        ck_assert_int_le(left[i], 0);
    for (int32_t i = 0; i < t->cutting.stock_count; i++)
        ck_assert_int_ge(in_hand[i], 0);
}

static inline int64_t tiny_chance(uint64_t *seed, int64_t below)
{
    *seed = *seed * 6364136223846793005u + 1442695040888963407u;
    return (int64_t)((*seed >> 33) % (uint64_t)below);
}

static inline muslin_status tiny_search(const struct tiny *t, int64_t work_limit, struct msl_found *found)
{
    struct muslin_allocator memory;
    struct msl_watch watch = { NULL, NULL, work_limit, 0 };
    muslin_allocator_libc(&memory);
    return msl_cutplan_search(&t->cutting, &watch, &memory, found);
}

static inline void tiny_free(struct msl_found *found)
{
    struct muslin_allocator memory;
    muslin_allocator_libc(&memory);
    msl_found_free(&memory, found);
}

#endif
