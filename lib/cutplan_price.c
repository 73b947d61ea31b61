/* cutplan_price.c - the pattern that is worth most of one way.
 *
 * SPDX-License-Identifier: MIT
 *
 * A strip is filled by one knapsack over what pieces take of it. Where blanks may be stacks, each width that occurs
 * gets its best stack first, by a knapsack over heights, and the stack is what the strip is filled with. */
#include "cutplan_price.h"

#include "cutplan_sheet.h"
#include "quilt_store.h"

static const int64_t PLENTY = INT64_MAX / 2;

/* ---- pieces ----------------------------------------------------------------------------------------------------- */

static int suits(const struct msl_piece_size *size, int64_t along, int64_t height)
{
    return size->level ? along == height : along <= height;
}

int64_t msl_taken_in(const struct msl_piece_size *size, int64_t height, int32_t *turned)
{
    const int listed = suits(size, size->along, height);
    const int turns = size->turned_across > 0 && suits(size, size->turned_along, height);
    const int turn = turns && (!listed || size->turned_across < size->across);
    if (turned != NULL)
        *turned = turn;
    if (turn)
        return size->turned_across;
    return listed ? size->across : 0;
}

int64_t msl_worth_within(const struct msl_pricing *pricing, const int64_t *worth, int32_t size)
{
    return msl_lesser(worth[size], pricing->most_worth);
}

/* ---- patterns --------------------------------------------------------------------------------------------------- */

int msl_pool_begin(struct msl_pool *pool, int32_t way)
{
    const struct msl_pattern pattern = { .way = way, .first = pool->strip_count };
    if (pool->pattern_count == pool->most_patterns)
        return 0;
    pool->patterns[pool->pattern_count++] = pattern;
    return 1;
}

int msl_pool_strip(struct msl_pool *pool, int64_t height)
{
    const struct msl_strip strip = { height, pool->laid_count, 0 };
    if (pool->strip_count == pool->most_strips)
        return 0;
    pool->strips[pool->strip_count++] = strip;
    pool->patterns[pool->pattern_count - 1].count++;
    return 1;
}

int msl_pool_lay(struct msl_pool *pool, struct msl_laid laid)
{
    if (pool->laid_count == pool->most_laid)
        return 0;
    pool->laid[pool->laid_count++] = laid;
    pool->strips[pool->strip_count - 1].count++;
    return 1;
}

void msl_pool_undo(struct msl_pool *pool)
{
    const struct msl_pattern *pattern = &pool->patterns[--pool->pattern_count];
    if (pattern->count > 0)
        pool->laid_count = pool->strips[pattern->first].first;
    pool->strip_count = pattern->first;
}

int32_t msl_pool_add(struct msl_pool *pool, int32_t way, int64_t height, const int32_t *sizes, const int32_t *counts,
                     int32_t count)
{
    if (!msl_pool_begin(pool, way))
        return -1;
    int fits = msl_pool_strip(pool, height);
    for (int32_t i = 0; fits && i < count; i++) {
        const struct msl_laid laid = { .size = sizes[i], .count = counts[i] };
        if (counts[i] > 0)
            fits = msl_pool_lay(pool, laid);
    }
    if (fits)
        return pool->pattern_count - 1;
    msl_pool_undo(pool);
    return -1;
}

/* ---- stacks ----------------------------------------------------------------------------------------------------- */

static int is_stacked(const struct msl_cutting *cutting, const struct msl_piece_size *size)
{
    return cutting->stacked && size->run_in == 0 && !size->level;
}

static int is_offered(const struct msl_filling *filling, const struct msl_piece_size *size, int32_t at)
{
    return filling->worth[at] > 0 && filling->most[at] > 0 && (!filling->within || !size->slit);
}

static int64_t way_along(const struct msl_piece_size *size, int32_t turned)
{
    return turned ? size->turned_along : size->along;
}

/* How wide the piece of number 2 x size + turned is in a stack; 0 where it can't be in one. */
static int64_t width_of(const struct msl_pricing *pricing, int32_t number)
{
    const struct msl_filling *filling = &pricing->filling;
    const struct msl_piece_size *size = &pricing->cutting->sizes[number / 2];
    const int32_t turned = number % 2;
    const int64_t width = turned ? size->turned_across : size->across;
    if (!is_stacked(pricing->cutting, size) || !is_offered(filling, size, number / 2))
        return 0;
    if (turned && size->turned_across == size->across)
        return 0;
    return way_along(size, turned) <= filling->height && width <= filling->room ? width : 0;
}

/* What the stack of this width that is worth most is worth, of each size no more than is left (null: any number). No
 * stack passes *bound; *pieces is how many pieces of this width are wanted. */
static int64_t best_stack(struct msl_pricing *pricing, int64_t width, const int64_t *left, int64_t *bound,
                          int64_t *pieces)
{
    const struct msl_filling *filling = &pricing->filling;
    int32_t count = 0;
    *pieces = 0;
    for (int32_t k = 2 * filling->first; k < 2 * filling->end; k++) {
        const int64_t along = way_along(&pricing->cutting->sizes[k / 2], k % 2);
        if (width_of(pricing, k) != width)
            continue;
        pricing->seen[k] = 1;
        const int64_t most = left == NULL ? filling->most[k / 2] : msl_lesser(filling->most[k / 2], left[k / 2]);
        const struct msl_item item = { .taken = along,
                                       .worth = msl_worth_within(pricing, filling->worth, k / 2),
                                       .most = (int32_t)msl_lesser(most, filling->height / along),
                                       .size = k };
        *pieces += most;
        if (most > 0)
            pricing->stacked[count++] = item;
    }
    pricing->stacked_count = count;
    return msl_knapsack(&pricing->sack, pricing->stacked, count, filling->height, 0, pricing->stacked_counts, bound);
}

static void offer_stacks(struct msl_pricing *pricing)
{
    const struct msl_filling *filling = &pricing->filling;
    for (int32_t k = 2 * filling->first; k < 2 * filling->end; k++)
        pricing->seen[k] = 0;
    for (int32_t k = 2 * filling->first; k < 2 * filling->end; k++) {
        const int64_t width = width_of(pricing, k);
        int64_t pieces;
        int64_t worth;
        if (pricing->seen[k] || width == 0)
            continue;
        best_stack(pricing, width, NULL, &worth, &pieces);
        const struct msl_item item = { .taken = width,
                                       .worth = worth,
                                       .most = (int32_t)msl_lesser(pieces, filling->room / width),
                                       .size = pricing->cutting->size_count + k };
        pricing->items[pricing->item_count++] = item;
    }
}

/* Lays the pieces of so many equal stacks, whose counts are in the scratch. */
static int lay_stack(struct msl_pricing *pricing, int32_t stacks, struct msl_pool *pool, int64_t *worth)
{
    int32_t above = 0;
    int fits = 1;
    for (int32_t i = 0; i < pricing->stacked_count; i++) {
        const int32_t size = pricing->stacked[i].size / 2;
        int32_t turned;
        msl_taken_in(&pricing->cutting->sizes[size], pricing->filling.height, &turned);
        const struct msl_laid laid = { size, stacks, above, turned != pricing->stacked[i].size % 2 };
        const struct msl_laid more = { size, stacks, 1, laid.other_way };
        for (int32_t n = 0; fits && n < pricing->stacked_counts[i]; n++) {
            fits = msl_pool_lay(pool, above ? more : laid);
            above = 1;
        }
        const int64_t pieces = (int64_t)stacks * pricing->stacked_counts[i];
        pricing->left[size] -= pieces;
        *worth += pieces * pricing->stacked[i].worth;
    }
    return fits;
}

/* Stacks of one width: the best, as often as there are pieces for it, then the best of what is left. */
static int lay_stacks(struct msl_pricing *pricing, int64_t width, int32_t blanks, struct msl_pool *pool,
                      int64_t *worth)
{
    int64_t pieces;
    int64_t bound;
    while (blanks > 0 && best_stack(pricing, width, pricing->left, &bound, &pieces) > 0) {
        int64_t stacks = blanks;
        for (int32_t i = 0; i < pricing->stacked_count; i++)
            if (pricing->stacked_counts[i] > 0)
                stacks = msl_lesser(stacks, pricing->left[pricing->stacked[i].size / 2] / pricing->stacked_counts[i]);
        if (!lay_stack(pricing, (int32_t)stacks, pool, worth))
            return 0;
        blanks -= (int32_t)stacks;
    }
    return 1;
}

/* ---- strips ----------------------------------------------------------------------------------------------------- */

static void offer_sizes(struct msl_pricing *pricing)
{
    const struct msl_filling *filling = &pricing->filling;
    pricing->item_count = 0;
    pricing->sack.steps += filling->end - filling->first;
    for (int32_t s = filling->first; s < filling->end; s++) {
        const struct msl_piece_size *size = &pricing->cutting->sizes[s];
        const int64_t taken = msl_taken_in(size, filling->height, NULL);
        const int64_t fit = taken == 0 ? 0 : (filling->room - size->run_in) / taken;
        if (fit <= 0 || !is_offered(filling, size, s) || is_stacked(pricing->cutting, size))
            continue;
        const struct msl_item item = { .taken = taken,
                                       .run_in = size->run_in,
                                       .worth = msl_worth_within(pricing, filling->worth, s),
                                       .most = (int32_t)msl_lesser(filling->most[s], fit),
                                       .size = s };
        pricing->items[pricing->item_count++] = item;
    }
}

/* Fills a strip with what `filling` in the scratch says. */
static int64_t fill(struct msl_pricing *pricing, int64_t beat, int64_t *bound)
{
    offer_sizes(pricing);
    if (pricing->cutting->stacked)
        offer_stacks(pricing);
    const int64_t worth = msl_knapsack(&pricing->sack, pricing->items, pricing->item_count, pricing->filling.room,
                                       beat, pricing->counts, bound);
    if (worth == beat)
        pricing->item_count = 0;
    return worth;
}

int64_t msl_strip_worth(struct msl_pricing *pricing, const struct msl_filling *filling, int64_t beat, int64_t *bound)
{
    int64_t best = beat;
    int64_t most = beat;
    pricing->filling = *filling;
    if (!pricing->cutting->one_size)
        return fill(pricing, beat, bound);
    int32_t only = filling->first;
    for (int32_t s = filling->first; s < filling->end; s++) {
        pricing->filling.first = s;
        pricing->filling.end = s + 1;
        const int64_t worth = fill(pricing, best, bound);
        only = worth > best ? s : only;
        best = worth;
        most = *bound > most ? *bound : most;
    }
    pricing->filling.first = only;
    pricing->filling.end = only + 1;
    fill(pricing, beat, bound);
    *bound = most;
    return best;
}

int msl_strip_lay(struct msl_pricing *pricing, struct msl_pool *pool, int64_t *worth)
{
    int fits = msl_pool_strip(pool, pricing->filling.height);
    for (int32_t i = 0; fits && i < pricing->item_count; i++) {
        const struct msl_item *item = &pricing->items[i];
        const struct msl_laid laid = { .size = item->size, .count = pricing->counts[i] };
        if (item->size >= pricing->cutting->size_count) {
            fits = lay_stacks(pricing, item->taken, laid.count, pool, worth);
        } else if (laid.count > 0) {
            fits = msl_pool_lay(pool, laid);
            pricing->left[laid.size] -= laid.count;
            *worth += laid.count * item->worth;
        }
    }
    return fits;
}

/* ---- ways ------------------------------------------------------------------------------------------------------- */

/* Adds a pattern of what was found, of each size no more than is left; and to *sum what it is worth. */
static int lay(struct msl_pricing *pricing, int32_t number, const int64_t *worth, const int64_t *most,
               struct msl_pool *pool, int64_t *sum)
{
    const struct msl_way *way = &pricing->cutting->ways[number];
    if (!msl_pool_begin(pool, number))
        return 0;
    const int fits = way->sheet ? msl_sheet_lay(pricing, way, worth, most, pool, sum)
                                : msl_strip_lay(pricing, pool, sum);
    if (!fits)
        msl_pool_undo(pool);
    return fits;
}

/* As msl_price(); `passes` 1: of no more than is wanted. */
static int price(struct msl_pricing *pricing, int32_t number, const int64_t *worth, const int64_t *most, int64_t beat,
                 int32_t passes, struct msl_pool *pool, int32_t *made, int64_t *bound)
{
    const struct msl_way *way = &pricing->cutting->ways[number];
    const int32_t sizes = pricing->cutting->size_count;
    const struct msl_filling filling = {
        .height = way->along, .room = way->across, .worth = worth, .most = most, .end = sizes
    };
    const int64_t best = way->sheet ? msl_sheet_worth(pricing, way, worth, most, beat, bound)
                                    : msl_strip_worth(pricing, &filling, beat, bound);
    *made = -1;
    /* first no more than is wanted; where that does not pay, what was found */
    for (int32_t all = 0; best > beat && all < passes; all++) {
        int64_t sum = 0;
        for (int32_t s = 0; s < sizes; s++)
            pricing->left[s] = all ? PLENTY : most[s];
        if (!lay(pricing, number, worth, all ? most : pricing->left, pool, &sum))
            return 0;
        if (sum > beat) {
            *made = pool->pattern_count - 1;
            return 1;
        }
        msl_pool_undo(pool);
    }
    return 1;
}

int msl_price(struct msl_pricing *pricing, int32_t way, const int64_t *worth, const int64_t *most, int64_t beat,
              struct msl_pool *pool, int32_t *made, int64_t *bound)
{
    return price(pricing, way, worth, most, beat, 2, pool, made, bound);
}

void msl_price_within(struct msl_pricing *pricing, int32_t way, const int64_t *worth, const int64_t *most, int64_t beat,
                      struct msl_pool *pool, int32_t *made)
{
    int64_t bound;
    price(pricing, way, worth, most, beat, 1, pool, made, &bound);
}

/* ---- room ------------------------------------------------------------------------------------------------------- */

/* At most so many pieces lie in a way. */
static int64_t pieces_in(const struct msl_cutting *cutting, const struct msl_way *way)
{
    int64_t pieces = 1;
    for (int32_t s = 0; s < cutting->size_count; s++) {
        const struct msl_piece_size *size = &cutting->sizes[s];
        const int64_t across = size->turned_across > 0 ? msl_lesser(size->across, size->turned_across) : size->across;
        const int64_t along = size->turned_across > 0 ? msl_lesser(size->along, size->turned_along) : size->along;
        const int64_t high = way->sheet || cutting->stacked ? way->along / along + 1 : 1;
        pieces = msl_greater((way->across / across + 1) * high, pieces);
    }
    return pieces;
}

int64_t msl_pieces_within(const struct msl_cutting *cutting)
{
    int64_t pieces = 1;
    for (int32_t w = 0; w < cutting->way_count; w++)
        pieces = msl_greater(pieces_in(cutting, &cutting->ways[w]), pieces);
    return pieces;
}

int msl_pricing_make(struct msl_pricing *pricing, const struct msl_cutting *cutting, int32_t states,
                     const struct muslin_allocator *allocator)
{
    const uint64_t sizes = (uint64_t)cutting->size_count;
    const uint64_t heights = (uint64_t)cutting->height_count;
    struct msl_check check = msl_check_start(NULL);
    const int64_t most_worth = ((int64_t)1 << 58) / msl_pieces_within(cutting) + 1;
    const struct msl_pricing none = { .cutting = cutting, .most_worth = most_worth };
    *pricing = none;
    pricing->sack.most_states = states;
    pricing->sack.states = msl_scratch(&check, allocator, (uint64_t)states, sizeof *pricing->sack.states);
    pricing->items = msl_scratch(&check, allocator, 3 * sizes, sizeof *pricing->items);
    pricing->counts = msl_scratch(&check, allocator, 3 * sizes, sizeof *pricing->counts);
    pricing->stacked = msl_scratch(&check, allocator, 2 * sizes, sizeof *pricing->stacked);
    pricing->stacked_counts = msl_scratch(&check, allocator, 2 * sizes, sizeof *pricing->stacked_counts);
    pricing->seen = msl_scratch(&check, allocator, 2 * sizes, sizeof *pricing->seen);
    pricing->heights = msl_scratch(&check, allocator, heights, sizeof *pricing->heights);
    pricing->height_counts = msl_scratch(&check, allocator, heights, sizeof *pricing->height_counts);
    pricing->slits = msl_scratch(&check, allocator, sizes, sizeof *pricing->slits);
    pricing->slit_counts = msl_scratch(&check, allocator, sizes, sizeof *pricing->slit_counts);
    pricing->left = msl_scratch(&check, allocator, sizes, sizeof *pricing->left);
    if (check.status == MUSLIN_OK)
        return 1;
    msl_pricing_free(pricing, allocator);
    return 0;
}

void msl_pricing_free(struct msl_pricing *pricing, const struct muslin_allocator *allocator)
{
    const uint64_t sizes = (uint64_t)pricing->cutting->size_count;
    const uint64_t heights = (uint64_t)pricing->cutting->height_count;
    msl_scratch_free(allocator, pricing->sack.states, (uint64_t)pricing->sack.most_states,
                     sizeof *pricing->sack.states);
    msl_scratch_free(allocator, pricing->items, 3 * sizes, sizeof *pricing->items);
    msl_scratch_free(allocator, pricing->counts, 3 * sizes, sizeof *pricing->counts);
    msl_scratch_free(allocator, pricing->stacked, 2 * sizes, sizeof *pricing->stacked);
    msl_scratch_free(allocator, pricing->stacked_counts, 2 * sizes, sizeof *pricing->stacked_counts);
    msl_scratch_free(allocator, pricing->seen, 2 * sizes, sizeof *pricing->seen);
    msl_scratch_free(allocator, pricing->heights, heights, sizeof *pricing->heights);
    msl_scratch_free(allocator, pricing->height_counts, heights, sizeof *pricing->height_counts);
    msl_scratch_free(allocator, pricing->slits, sizes, sizeof *pricing->slits);
    msl_scratch_free(allocator, pricing->slit_counts, sizes, sizeof *pricing->slit_counts);
    msl_scratch_free(allocator, pricing->left, sizes, sizeof *pricing->left);
}
