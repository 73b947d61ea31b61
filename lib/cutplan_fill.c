/* cutplan_fill.c - a plan in the making: put together, filled in, tidied, kept.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_first.h"

#include "wide.h"

enum { OFFERED = 40, FEW_OFFERED = 16, WINDOW = 64 }; /* sizes */

/* ---- the pool ---------------------------------------------------------------------------------------------------- */

static void drop_from(struct msl_pool *pool, const int32_t *mark)
{
    pool->pattern_count = mark[0];
    pool->strip_count = mark[1];
    pool->laid_count = mark[2];
}

static void set_mark(const struct msl_pool *pool, int32_t *mark)
{
    mark[0] = pool->pattern_count;
    mark[1] = pool->strip_count;
    mark[2] = pool->laid_count;
}

/* Of the patterns made since the mark only this one stays, as the first of them. */
static void keep_only(struct msl_pool *pool, const int32_t *mark, int32_t pattern)
{
    const struct msl_pattern kept = pool->patterns[pattern];
    drop_from(pool, mark);
    pool->patterns[pool->pattern_count] = kept;
    pool->patterns[pool->pattern_count++].first = pool->strip_count;
    for (int32_t s = 0; s < kept.count; s++) {
        const struct msl_strip strip = pool->strips[kept.first + s];
        pool->strips[pool->strip_count] = strip;
        pool->strips[pool->strip_count++].first = pool->laid_count;
        for (int32_t i = 0; i < strip.count; i++)
            pool->laid[pool->laid_count++] = pool->laid[strip.first + i];
    }
}

/* ---- put together ------------------------------------------------------------------------------------------------ */

void msl_plan_begin(struct msl_making *making)
{
    const struct msl_cutting *cutting = making->cutting;
    for (int32_t i = 0; i < cutting->size_count; i++)
        making->left[i] = making->wanted[i];
    for (int32_t i = 0; i < cutting->stock_count; i++)
        making->in_hand[i] = cutting->available[i];
    making->plan.count = 0;
    making->plan.cost = 0;
    set_mark(making->pool, making->mark);
}

/* So many more of a pattern, or less. */
static void change(struct msl_making *making, int32_t pattern, int64_t times)
{
    const struct msl_pool *pool = making->pool;
    const struct msl_pattern *changed = &pool->patterns[pattern];
    const struct msl_way *way = &making->cutting->ways[changed->way];
    making->plan.cost += times * way->cost;
    if (way->stock >= 0)
        making->in_hand[way->stock] -= times;
    for (int32_t s = 0; s < changed->count; s++) {
        const struct msl_strip *strip = &pool->strips[changed->first + s];
        for (int32_t i = 0; i < strip->count; i++)
            making->left[pool->laid[strip->first + i].size] -= times * pool->laid[strip->first + i].count;
    }
}

int msl_plan_put(struct msl_making *making, int32_t pattern, int64_t times)
{
    const struct msl_plan_row row = { .times = times, .pattern = pattern };
    if (making->plan.count == making->plan.most)
        return 0;
    making->plan.rows[making->plan.count++] = row;
    change(making, pattern, times);
    return 1;
}

/* How many of each size a pattern holds, into making->counts. */
static void count_pieces(struct msl_making *making, int32_t pattern)
{
    const struct msl_pool *pool = making->pool;
    const struct msl_pattern *cut = &pool->patterns[pattern];
    for (int32_t i = 0; i < making->cutting->size_count; i++)
        making->counts[i] = 0;
    for (int32_t s = 0; s < cut->count; s++) {
        const struct msl_strip *strip = &pool->strips[cut->first + s];
        for (int32_t i = 0; i < strip->count; i++)
            making->counts[pool->laid[strip->first + i].size] += pool->laid[strip->first + i].count;
    }
}

int64_t msl_plan_times(struct msl_making *making, int32_t pattern)
{
    const int32_t stock = making->cutting->ways[making->pool->patterns[pattern].way].stock;
    int64_t times = stock < 0 ? INT64_MAX : making->in_hand[stock];
    count_pieces(making, pattern);
    for (int32_t i = 0; i < making->cutting->size_count; i++)
        if (making->counts[i] > 0 && making->left[i] / making->counts[i] < times)
            times = making->left[i] / making->counts[i];
    return times > 0 ? times : 1;
}

void msl_plan_take_one(struct msl_making *making, int32_t row)
{
    making->plan.rows[row].times--;
    change(making, making->plan.rows[row].pattern, -1);
}

void msl_plan_cut_back(struct msl_making *making, int32_t rows)
{
    while (making->plan.count > rows) {
        const struct msl_plan_row *last = &making->plan.rows[--making->plan.count];
        change(making, last->pattern, -last->times);
    }
}

/* ---- lower strips ------------------------------------------------------------------------------------------------ */

/* 1 when a strip of this way holds what is in making->sizes and counts. */
static int holds(const struct msl_making *making, const struct msl_way *way, int32_t count)
{
    int64_t room = way->across;
    if (way->sheet)
        return 0;
    for (int32_t i = 0; i < count; i++) {
        const struct msl_piece_size *size = &making->cutting->sizes[making->sizes[i]];
        const int64_t taken = msl_taken_in(size, way->along, NULL);
        if (making->counts[i] == 0)
            continue;
        if (taken == 0)
            return 0;
        room -= size->run_in + taken * making->counts[i];
    }
    return room >= 0;
}

/* The cheapest way that holds as much; `way` where none is cheaper. */
static int32_t cheapest_for(const struct msl_making *making, int32_t count, int32_t way)
{
    const struct msl_way *ways = making->cutting->ways;
    for (int32_t i = 0; i < making->cutting->way_count; i++)
        if (ways[i].cost < ways[way].cost && holds(making, &ways[i], count))
            way = i;
    return way;
}

/* What a pattern of one plain strip holds, into sizes and counts, less what is surplus; nothing is left to be cut.
 * Returns how many sizes; 0: it is not of that kind. */
static int32_t look_into(struct msl_making *making, int32_t pattern)
{
    const struct msl_pool *pool = making->pool;
    const struct msl_pattern *of = &pool->patterns[pattern];
    if (making->cutting->ways[of->way].sheet || making->cutting->stacked)
        return 0;
    const struct msl_strip *strip = &pool->strips[of->first];
    for (int32_t i = 0; i < strip->count; i++) {
        const struct msl_laid *laid = &pool->laid[strip->first + i];
        making->sizes[i] = laid->size;
        making->counts[i] = laid->count - (int32_t)msl_lesser(-making->left[laid->size], laid->count);
    }
    return strip->count;
}

/* 1 when all that a pattern holds is surplus, or it holds nothing; nothing is left to be cut. */
static int is_surplus(struct msl_making *making, int32_t pattern)
{
    count_pieces(making, pattern);
    for (int32_t i = 0; i < making->cutting->size_count; i++)
        if (making->counts[i] > -making->left[i])
            return 0;
    return 1;
}

/* One strip of the row less high, where surplus allows that; a row of its own. Returns 0 where nothing is won. */
static int lower_one(struct msl_making *making, int32_t row)
{
    struct msl_plan *plan = &making->plan;
    const int32_t pattern = plan->rows[row].pattern;
    const int32_t old_way = making->pool->patterns[pattern].way;
    if (plan->rows[row].times == 0)
        return 0;
    if (is_surplus(making, pattern)) {
        msl_plan_take_one(making, row);
        return 1;
    }
    const int32_t count = look_into(making, pattern);
    if (count == 0)
        return 0;
    const int32_t way = cheapest_for(making, count, old_way);
    if (way == old_way || plan->count == plan->most)
        return 0;
    const int32_t made = msl_pool_add(making->pool, way, making->cutting->ways[way].along, making->sizes,
                                      making->counts, count);
    if (made < 0)
        return 0;
    msl_plan_take_one(making, row);
    return msl_plan_put(making, made, 1);
}

static void tidy(struct msl_making *making)
{
    for (int32_t row = 0; row < making->plan.count;)
        row += !lower_one(making, row);
}

/* ---- filled in and kept ------------------------------------------------------------------------------------------ */

/* What pricing may take: what is left, of some sizes at a time, of fewer where there are too many for a search. Returns
 * 0 when nothing is left. */
static int offer(struct msl_making *making)
{
    const int32_t most = making->cutting->size_count > MSL_SIZES_MAX ? FEW_OFFERED : OFFERED;
    int32_t offered = 0;
    for (int32_t i = 0; i < making->cutting->size_count; i++) {
        const int take = making->left[i] > 0 && offered < most;
        making->offered[i] = take ? making->left[i] : 0;
        offered += take;
    }
    return offered > 0;
}

/* What a pattern is worth, no piece more than pricing says. */
static int64_t worth_of(const struct msl_making *making, int32_t pattern, const int64_t *worth)
{
    const struct msl_pool *pool = making->pool;
    const struct msl_pattern *of = &pool->patterns[pattern];
    const int64_t most = making->pricing->most_worth;
    int64_t sum = 0;
    for (int32_t s = 0; s < of->count; s++) {
        const struct msl_strip *strip = &pool->strips[of->first + s];
        for (int32_t i = 0; i < strip->count; i++) {
            const struct msl_laid *laid = &pool->laid[strip->first + i];
            sum += laid->count * msl_lesser(worth[laid->size], most);
        }
    }
    return sum;
}

/* The pattern that is worth most for its cost, new in the pool; -1: there is none. */
static int32_t best_worth(struct msl_making *making, const int64_t *worth)
{
    const struct msl_cutting *cutting = making->cutting;
    int32_t mark[3];
    int32_t best = -1;
    int64_t best_value = 0;
    int64_t best_cost = cutting->ways[0].cost;
    set_mark(making->pool, mark);
    for (int32_t i = 0; i < cutting->way_count; i++) {
        const struct msl_way *way = &cutting->ways[i];
        int32_t made;
        int64_t beat;
        int64_t rest;
        if (way->stock >= 0 && making->in_hand[way->stock] == 0)
            continue;
        msl_wide_floor(msl_wide_multiply(best_value, way->cost), best_cost, &beat, &rest);
        msl_price_within(making->pricing, i, worth, making->offered, beat, making->pool, &made);
        if (made < 0)
            continue;
        keep_only(making->pool, mark, made);
        best = mark[0];
        best_value = worth_of(making, best, worth);
        best_cost = way->cost;
    }
    return best;
}

/* A strip so high, 0 if there is none, fits in a piece of stock, and a piece of the size in that. */
static int opens(const struct msl_piece_size *size, const struct msl_way *way, int64_t height, int64_t along)
{
    return height <= along && msl_taken_in(size, height, NULL) + size->run_in <= way->across;
}

/* The height of strip that a size opens: as it is listed or turned; 0: none. */
static int64_t height_opened(const struct msl_piece_size *size, const struct msl_way *way, int64_t along)
{
    if (opens(size, way, size->along, along))
        return size->along;
    return opens(size, way, size->turned_along, along) ? size->turned_along : 0;
}

/* Of the stock in hand the way that has most room for its cost, where a size fits; -1: none. */
static int32_t plain_way(const struct msl_making *making, const struct msl_piece_size *size)
{
    const struct msl_way *ways = making->cutting->ways;
    int32_t best = -1;
    for (int32_t i = 0; i < making->cutting->way_count; i++) {
        if (making->in_hand[ways[i].stock] == 0 || height_opened(size, &ways[i], ways[i].along) == 0)
            continue;
        if (best < 0 || msl_wide_compare(msl_wide_multiply(ways[i].cost, ways[best].across * ways[best].along),
                                         msl_wide_multiply(ways[best].cost, ways[i].across * ways[i].along)) < 0)
            best = i;
    }
    return best;
}

/* Fills a strip with the sizes offered, one after the other, from the one that opened it on. Returns 0 where the pool
 * is full. */
static int fill_plainly(struct msl_making *making, const struct msl_way *way, int32_t first, int32_t end,
                        int64_t height)
{
    int64_t room = way->across;
    int fits = msl_pool_strip(making->pool, height);
    making->pricing->sack.steps += end - first;
    for (int32_t i = first; i < (making->cutting->one_size ? first + 1 : end) && fits; i++) {
        const struct msl_piece_size *size = &making->cutting->sizes[i];
        const int64_t taken = msl_taken_in(size, height, NULL);
        const int64_t most = taken == 0 ? 0 : msl_greater((room - size->run_in) / taken, 0);
        const int64_t count = msl_lesser(most, making->offered[i]);
        const struct msl_laid laid = { .size = i, .count = (int32_t)count };
        if (count == 0)
            continue;
        room -= size->run_in + count * taken;
        making->offered[i] -= count;
        fits = msl_pool_lay(making->pool, laid);
    }
    return fits;
}

/* The end of the sizes that go together: a size of which there is more than goes in by area is alone, and so few other
 * patterns are needed. */
static int32_t last_offered(const struct msl_making *making, const struct msl_way *way, int32_t first)
{
    const struct msl_piece_size *size = &making->cutting->sizes[first];
    const int32_t count = making->cutting->size_count;
    if (making->left[first] > way->across * way->along / (size->across * size->along))
        return first + 1;
    return (int32_t)msl_lesser(first + WINDOW, count);
}

/* A piece of stock filled strip by strip with the first sizes that are left; -1: not of a bolt, or stock runs out, or
 * room in the pool. */
static int32_t plain_pattern(struct msl_making *making)
{
    const struct msl_cutting *cutting = making->cutting;
    int32_t first = 0;
    if (cutting->stock_count == 0)
        return -1;
    while (making->left[first] <= 0)
        first++;
    const int32_t number = plain_way(making, &cutting->sizes[first]);
    making->pricing->sack.steps += cutting->way_count + first;
    if (number < 0 || !msl_pool_begin(making->pool, number))
        return -1;
    const struct msl_way *way = &cutting->ways[number];
    const int32_t end = last_offered(making, way, first);
    int64_t along = way->along;
    for (int32_t i = first; i < end; i++)
        making->offered[i] = msl_greater(making->left[i], 0);
    for (int32_t i = first; i < end; i++) {
        int64_t height = height_opened(&cutting->sizes[i], way, along);
        for (; making->offered[i] > 0 && height > 0; height = height_opened(&cutting->sizes[i], way, along)) {
            if (!fill_plainly(making, way, i, end, height)) {
                msl_pool_undo(making->pool);
                return -1;
            }
            along -= height;
        }
    }
    return making->pool->pattern_count - 1;
}

int msl_plan_fill(struct msl_making *making, const int64_t *worth)
{
    while (offer(making)) {
        const int plain = making->plain_from > 0 && making->pricing->sack.steps >= making->plain_from;
        const int32_t pattern = plain ? plain_pattern(making) : best_worth(making, worth);
        if (pattern < 0)
            return 0;
        if (!msl_plan_put(making, pattern, msl_plan_times(making, pattern)) ||
            making->plan.cost >= making->best.cost)
            return 0;
    }
    return 1;
}

/* Rows that are cut at all become the best plan. */
static void keep(struct msl_making *making)
{
    struct msl_plan *best = &making->best;
    best->count = 0;
    best->cost = making->plan.cost;
    for (int32_t i = 0; i < making->plan.count; i++)
        if (making->plan.rows[i].times > 0)
            best->rows[best->count++] = making->plan.rows[i];
}

int msl_plan_end(struct msl_making *making, int complete)
{
    if (complete)
        tidy(making);
    if (complete && making->plan.cost < making->best.cost) {
        keep(making);
        return 1;
    }
    drop_from(making->pool, making->mark);
    return 0;
}

int msl_plan_round(struct msl_making *making, const struct msl_master *master, int64_t more)
{
    int complete = 1;
    msl_plan_begin(making);
    for (int32_t i = 0; i < master->row_count && complete; i++) {
        const struct msl_basic *basic = &master->basis[i];
        if (basic->column < 0 || basic->against)
            continue;
        const int32_t stock = making->cutting->ways[making->pool->patterns[basic->column].way].stock;
        int64_t times = (master->level[i] + more * ((int64_t)1 << (master->point - 6))) >> master->point;
        if (stock >= 0 && times > making->in_hand[stock])
            times = making->in_hand[stock];
        if (times > 0)
            complete = msl_plan_put(making, basic->column, times);
    }
    return msl_plan_end(making, complete && msl_plan_fill(making, master->worth));
}
