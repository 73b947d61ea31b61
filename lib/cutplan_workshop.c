/* cutplan_workshop.c - the memory of a search, taken in one block beside those of master and pricing.
 *
 * SPDX-License-Identifier: MIT
 *
 * All together stays below 16 MiB for as many sizes and ways as are searched; with more only first plans are made, and
 * the memory follows the sizes. */
#include "cutplan_search.h"

#include "quilt_store.h"

enum {
    STATES = 1 << 16,  /* of the knapsack */
    PATTERNS = 8192,
    STRIPS = 24576,
    LAID = 65536,
    CASES = 40960,
    WORTHS = 600 * 1024,
    BASICS = 768 * 1024,
    PACK_STEPS = 40000
};

/* Counts of one search. */
struct rooms {
    size_t patterns;
    size_t strips;
    size_t laid;
    size_t cases;
    size_t worths; /* 0: none are kept */
    size_t basics;
    size_t rows; /* of a plan */
};

/* A block that is handed out part by part; with no block yet the parts are only added up. */
struct block {
    char *bytes;
    size_t used;
};

static void *part_of(struct block *block, size_t count, size_t size)
{
    void *part = block->bytes == NULL ? NULL : block->bytes + block->used;
    block->used += (count * size + 15) / 16 * 16;
    return part;
}

static void lay_out_pool(struct block *block, struct msl_pool *pool, const struct rooms *rooms)
{
    pool->patterns = part_of(block, rooms->patterns, sizeof *pool->patterns);
    pool->strips = part_of(block, rooms->strips, sizeof *pool->strips);
    pool->laid = part_of(block, rooms->laid, sizeof *pool->laid);
    pool->most_patterns = (int32_t)rooms->patterns;
    pool->most_strips = (int32_t)rooms->strips;
    pool->most_laid = (int32_t)rooms->laid;
    pool->pattern_count = pool->strip_count = pool->laid_count = 0;
}

static void lay_out_plan(struct block *block, struct msl_plan *plan, const struct rooms *rooms)
{
    plan->rows = part_of(block, rooms->rows, sizeof *plan->rows);
    plan->most = (int32_t)rooms->rows;
    plan->count = 0;
    plan->cost = 0;
}

static void lay_out_making(struct block *block, struct msl_search *search, const struct rooms *rooms)
{
    struct msl_making *making = &search->making;
    const size_t sizes = (size_t)search->cutting->size_count;
    making->cutting = search->cutting;
    making->pool = &search->pool;
    making->pricing = search->pricing;
    making->first_steps = INT64_MAX / 2;
    making->plain_from = 0;
    making->wanted = part_of(block, sizes, sizeof *making->wanted);
    making->left = part_of(block, sizes, sizeof *making->left);
    making->offered = part_of(block, sizes, sizeof *making->offered);
    making->worth = part_of(block, sizes, sizeof *making->worth);
    making->sizes = part_of(block, sizes, sizeof *making->sizes);
    making->counts = part_of(block, sizes, sizeof *making->counts);
    making->order = part_of(block, sizes, sizeof *making->order);
    making->in_hand = part_of(block, (size_t)search->cutting->stock_count, sizeof *making->in_hand);
    lay_out_plan(block, &making->plan, rooms);
    lay_out_plan(block, &making->best, rooms);
}

static void lay_out_search(struct block *block, struct msl_search *search, const struct rooms *rooms)
{
    lay_out_pool(block, &search->pool, rooms);
    lay_out_making(block, search, rooms);
    search->open = part_of(block, rooms->cases, sizeof *search->open);
    search->heap = part_of(block, rooms->cases, sizeof *search->heap);
    search->bases = part_of(block, rooms->basics, sizeof *search->bases);
    search->gains = part_of(block, 2 * (size_t)search->cutting->way_count, sizeof *search->gains);
    search->most_rows = MSL_LIMITS_MAX - 1;
    search->most_depth = MSL_DEPTH_MAX - 1;
    search->most_cases = (int32_t)rooms->cases;
    search->most_worths = (int32_t)rooms->worths;
    search->most_basics = (int32_t)rooms->basics;
}

/* What both searches may use, one after the other. */
static void lay_out_shared(struct block *block, struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    struct msl_packing *packing = &workshop->packing;
    const size_t sizes = (size_t)whole->cutting->size_count;
    const size_t ways = (size_t)whole->cutting->way_count;
    whole->chain = part_of(block, MSL_DEPTH_MAX, sizeof *whole->chain);
    whole->row_of = part_of(block, MSL_DEPTH_MAX, sizeof *whole->row_of);
    whole->most_of = part_of(block, ways, sizeof *whole->most_of);
    whole->way_level = part_of(block, ways, sizeof *whole->way_level);
    whole->copies_level = part_of(block, ways * sizes, sizeof *whole->copies_level);
    packing->sizes = part_of(block, sizes, sizeof *packing->sizes);
    packing->counts = part_of(block, MSL_PACK_ROOM, sizeof *packing->counts);
    packing->rooms = part_of(block, MSL_PACK_ROOM, sizeof *packing->rooms);
    packing->most_steps = PACK_STEPS;
    workshop->reach.bits = part_of(block, MSL_REACH_WORDS, sizeof *workshop->reach.bits);
}

/* The part's own cutting, and a search like the whole's. */
static void lay_out_part(struct block *block, struct msl_workshop *workshop)
{
    static const struct rooms rooms = { 2048, 4096, 16384, 256, 0, 16384, 1024 };
    struct msl_repair *repair = &workshop->repair;
    const struct msl_cutting *cutting = workshop->whole.cutting;
    const size_t sizes = (size_t)cutting->size_count;
    const size_t ways = (size_t)cutting->way_count;
    repair->cutting = *cutting;
    repair->cutting.sizes = part_of(block, sizes, sizeof *repair->cutting.sizes);
    repair->cutting.ways = part_of(block, ways, sizeof *repair->cutting.ways);
    repair->cutting.available = part_of(block, (size_t)cutting->stock_count, sizeof *repair->cutting.available);
    repair->size_of = part_of(block, sizes, sizeof *repair->size_of);
    repair->way_of = part_of(block, ways, sizeof *repair->way_of);
    repair->chance = 1;
    repair->tries = 0;
    repair->part = workshop->whole;
    lay_out_search(block, &repair->part, &rooms);
    repair->part.cases = part_of(block, rooms.cases, sizeof *repair->part.cases);
    repair->part.worths = NULL;
    repair->part.cutting = repair->part.making.cutting = &repair->cutting;
}

static int is_small(const struct msl_cutting *cutting)
{
    return cutting->size_count <= MSL_SIZES_MAX && cutting->way_count <= MSL_WAYS_MAX &&
           cutting->size_count + cutting->stock_count <= MSL_LIMITS_MAX / 2 + MSL_LIMITS_MAX / 4;
}

static size_t lay_out(struct msl_workshop *workshop, char *bytes)
{
    static const struct rooms searched = { PATTERNS, STRIPS, LAID, CASES, WORTHS, BASICS, 4096 };
    const struct msl_cutting *cutting = workshop->whole.cutting;
    const size_t sizes = (size_t)cutting->size_count;
    const struct rooms first = { 8 * sizes, 28 * sizes, 48 * sizes, 1, sizes + (size_t)cutting->stock_count, 1,
                                 8 * sizes };
    struct block block = { bytes, 0 };
    part_of(&block, 1, sizeof *workshop);
    lay_out_search(&block, &workshop->whole, workshop->has_master ? &searched : &first);
    if (workshop->has_master) {
        lay_out_shared(&block, workshop);
        lay_out_part(&block, workshop);
    }
    return block.used;
}

/* Cases and worths lie apart, for they outlast the rest. */
static int take_proof(struct msl_search *whole, const struct muslin_allocator *allocator)
{
    struct msl_check check = msl_check_start(NULL);
    whole->cases = msl_scratch(&check, allocator, (uint64_t)whole->most_cases, sizeof *whole->cases);
    whole->worths = msl_scratch(&check, allocator, (uint64_t)whole->most_worths, sizeof *whole->worths);
    return check.status == MUSLIN_OK;
}

/* Room for all of it in one piece, laid out once without an address to learn how much that is. */
static struct msl_workshop *take_room(const struct msl_cutting *cutting, const struct muslin_allocator *allocator)
{
    struct msl_workshop *plan = allocator->alloc(allocator->context, sizeof *plan);
    if (plan == NULL)
        return NULL;
    plan->allocator = allocator;
    plan->has_master = is_small(cutting);
    plan->whole.cutting = cutting;
    plan->bytes = lay_out(plan, NULL);
    struct msl_workshop *workshop = allocator->realloc(allocator->context, plan, sizeof *plan, plan->bytes);
    if (workshop == NULL)
        allocator->free(allocator->context, plan, sizeof *plan);
    return workshop;
}

struct msl_workshop *msl_workshop_open(const struct msl_cutting *cutting, const struct msl_watch *watch,
                                       const struct muslin_allocator *allocator)
{
    struct msl_workshop *workshop = take_room(cutting, allocator);
    if (workshop == NULL)
        return NULL;
    workshop->whole.cases = NULL;
    workshop->whole.worths = NULL;
    workshop->master.steps = workshop->packing.steps = 0;
    workshop->whole.master = &workshop->master;
    workshop->whole.pricing = &workshop->pricing;
    workshop->whole.reach = &workshop->reach;
    workshop->whole.packing = &workshop->packing;
    workshop->whole.watch = watch;
    workshop->whole.whole = &workshop->whole;
    lay_out(workshop, (char *)workshop);
    if (msl_pricing_make(&workshop->pricing, cutting, STATES, allocator)) {
        if (!workshop->has_master || msl_master_make(&workshop->master, cutting, &workshop->whole.pool, allocator)) {
            if (take_proof(&workshop->whole, allocator))
                return workshop;
            msl_workshop_close(workshop);
            return NULL;
        }
        msl_pricing_free(&workshop->pricing, allocator);
    }
    allocator->free(allocator->context, workshop, workshop->bytes);
    return NULL;
}

void msl_workshop_close(struct msl_workshop *workshop)
{
    const struct muslin_allocator *allocator = workshop->allocator;
    struct msl_search *whole = &workshop->whole;
    msl_scratch_free(allocator, whole->cases, (uint64_t)whole->most_cases, sizeof *whole->cases);
    msl_scratch_free(allocator, whole->worths, (uint64_t)whole->most_worths, sizeof *whole->worths);
    if (workshop->has_master)
        msl_master_free(&workshop->master, allocator);
    msl_pricing_free(&workshop->pricing, allocator);
    allocator->free(allocator->context, workshop, workshop->bytes);
}
