/* cutplan_split.c - on what a case is split, and what becomes of one in which all is whole.
 *
 * SPDX-License-Identifier: MIT
 *
 * First on how many things there are of the ways down to one, the dearest first: of a bolt, how many strips are at
 * least so high. What is near one half, and where the next way is much cheaper, moves the bound most, and where both
 * parts have been proved to cost much more before. Then on how many pieces of a size lie in strips of a way. When all
 * of these are whole, what is left is to pack each way for itself. */
#include "cutplan_split.h"

enum {
    ONE = 1 << MSL_PART_BITS,
    GAIN_BITS = 10,
    MOST_GAIN = 1 << 20,
    EXPECTED = 4 /* so many splits on each way are taken to have proved just a step, before any has */
};

/* ---- levels ------------------------------------------------------------------------------------------------------ */

void msl_levels_find(struct msl_search *search)
{
    struct msl_master *master = search->master;
    const struct msl_pool *pool = &search->pool;
    const int32_t sizes = search->cutting->size_count;
    msl_master_levels(master);
    for (int32_t i = 0; i < search->cutting->way_count; i++)
        search->way_level[i] = 0;
    for (int32_t i = 0; i < search->cutting->way_count * sizes; i++)
        search->copies_level[i] = 0;
    for (int32_t row = 0; row < master->row_count; row++) {
        if (master->basis[row].column < 0 || master->basis[row].against)
            continue;
        const struct msl_pattern *pattern = &pool->patterns[master->basis[row].column];
        search->way_level[pattern->way] += master->level[row];
        for (int32_t s = 0; s < pattern->count; s++) {
            const struct msl_strip *strip = &pool->strips[pattern->first + s];
            for (int32_t i = 0; i < strip->count; i++) {
                const struct msl_laid *laid = &pool->laid[strip->first + i];
                search->copies_level[pattern->way * sizes + laid->size] += master->level[row] * laid->count;
            }
        }
    }
}

/* The whole part of a level, and *part of 2^MSL_PART_BITS besides; what is whole within a hair is whole. */
static int64_t whole_of(const struct msl_search *search, int64_t level, int64_t *part)
{
    const int32_t point = search->master->point;
    const int64_t hair = (int64_t)1 << (point - 11);
    const int64_t moved = level + hair;
    const int64_t beyond = moved & (((int64_t)1 << point) - 1);
    *part = beyond < 2 * hair ? 0 : beyond >> (point - MSL_PART_BITS);
    return moved >> point;
}

/* ---- what is not whole ------------------------------------------------------------------------------------------- */

/* By how much the cost goes down from a way to the next, with no more than 17 bits. */
static int64_t step_at(const struct msl_cutting *cutting, int32_t way)
{
    const struct msl_way *ways = cutting->ways;
    const int64_t next = way + 1 < cutting->way_count ? ways[way + 1].cost : 0;
    const int64_t step = (ways[way].cost - next) / (1 + (ways[0].cost >> 16));
    return step > 0 ? step : 1;
}

/* What to expect of one part of a split, which is so far from the level: steps, with no more than 56 bits. */
static int64_t expected(const struct msl_search *search, int32_t way, int32_t upper, int64_t away)
{
    const struct msl_gain *gain = &search->gains[2 * way + upper];
    const int64_t each = (((int64_t)EXPECTED << GAIN_BITS) + gain->sum) / (EXPECTED + gain->count);
    return (1 + each) * away * step_at(search->cutting, way);
}

/* The number of things of ways down to one of which both parts are expected to prove most. Returns 0 when all are
 * whole. */
static int choose_way(const struct msl_search *search, struct msl_split *split)
{
    struct msl_wide most = msl_wide_from(0);
    int64_t level = 0;
    split->part = 0;
    for (int32_t way = 0; way < search->cutting->way_count; way++) {
        struct msl_limit limit = { .kind = MSL_LIMIT_WAYS, .last_way = way };
        int64_t part = 0;
        level += search->way_level[way];
        limit.wanted = whole_of(search, level, &part);
        const struct msl_wide value =
            msl_wide_multiply(expected(search, way, 0, part), expected(search, way, 1, ONE - part));
        if (msl_wide_compare(value, most) <= 0)
            continue;
        most = value;
        split->limit = limit;
        split->upper = part >= ONE / 2;
        split->part = (int32_t)part;
    }
    return split->part > 0;
}

/* The number of pieces of a size that is nearest to one half, the first of such, in the dearest way in which some is
 * not whole. Returns 0 when all are whole. */
static int choose_copies(const struct msl_search *search, struct msl_split *split)
{
    const struct msl_cutting *cutting = search->cutting;
    int64_t most = 0;
    for (int32_t way = 0; way < cutting->way_count && most == 0; way++)
        for (int32_t size = 0; size < cutting->size_count; size++) {
            struct msl_limit limit = { .kind = MSL_LIMIT_COPIES, .first_way = way, .last_way = way, .size = size };
            int64_t part = 0;
            limit.wanted = whole_of(search, search->copies_level[way * cutting->size_count + size], &part);
            const int64_t value = msl_lesser(part, ONE - part);
            if (value <= most)
                continue;
            most = value;
            split->limit = limit;
            split->upper = part >= ONE / 2;
        }
    return most > 0;
}

int msl_split_choose(const struct msl_search *search, struct msl_split *split)
{
    return choose_way(search, split) || choose_copies(search, split);
}

/* What the worths say that the case costs, no more than the best plan does. */
static int64_t value_of(const struct msl_search *search)
{
    const int64_t most = search->making.best.cost * ((int64_t)1 << search->master->bits);
    int64_t value = most;
    int64_t rest;
    msl_wide_floor(msl_worth_of_all(search->master), 1, &value, &rest);
    return msl_lesser(value, most);
}

/* 2^GAIN_BITS times the steps from a way to the next that are `more`, for each whole thing where that is proved by so
 * much of one. */
static int64_t gain_of(const struct msl_search *search, int32_t way, int64_t more, int64_t away)
{
    const int64_t step = step_at(search->cutting, way) * (1 + (search->cutting->ways[0].cost >> 16));
    int64_t gain = MOST_GAIN;
    int64_t rest;
    msl_wide_floor(msl_wide_multiply(more, ((int64_t)ONE << GAIN_BITS) / away),
                   step * ((int64_t)1 << search->master->bits), &gain, &rest);
    return msl_lesser(gain, MOST_GAIN);
}

void msl_split_learn(struct msl_search *search, int32_t number)
{
    const struct msl_limit *limit = &search->cases[number].limit;
    const int32_t parent = search->cases[number].parent;
    const int64_t value = value_of(search);
    search->open[number].value = value;
    if (limit->kind != MSL_LIMIT_WAYS || search->open[parent].part == 0)
        return;
    const int64_t away = limit->at_least ? ONE - search->open[parent].part : search->open[parent].part;
    const int64_t more = value - search->open[parent].value;
    struct msl_gain *gain = &search->gains[2 * limit->last_way + limit->at_least];
    gain->sum += gain_of(search, limit->last_way, msl_greater(more, 0), away);
    gain->count++;
}

/* ---- all is whole ------------------------------------------------------------------------------------------------ */

/* Puts patterns of a way as often as the master says. Returns 0 where that is not whole. */
static int put_levels(struct msl_search *search, int32_t way)
{
    const struct msl_master *master = search->master;
    for (int32_t row = 0; row < master->row_count; row++) {
        const int32_t pattern = master->basis[row].column;
        int64_t part = 0;
        if (pattern < 0 || master->basis[row].against || search->pool.patterns[pattern].way != way)
            continue;
        const int64_t times = whole_of(search, master->level[row], &part);
        if (part > 0 || !msl_plan_put(&search->making, pattern, times))
            return 0;
    }
    return 1;
}

/* Puts a packing into the plan, a pattern for each strip; what there is no room for is left out. */
static void put_packing(struct msl_search *search, int32_t way)
{
    struct msl_making *making = &search->making;
    const struct msl_packing *packing = search->packing;
    for (int32_t i = 0; i < packing->size_count; i++)
        making->sizes[i] = packing->sizes[i].size;
    for (int32_t strip = 0; strip < packing->used; strip++) {
        const int32_t *counts = packing->counts + strip * packing->size_count;
        const int32_t made = msl_pool_add(&search->pool, way, search->cutting->ways[way].along, making->sizes, counts,
                                          packing->size_count);
        if (made >= 0)
            msl_plan_put(making, made, 1);
    }
}

/* What lies in a strip is taken off what is offered, as often as it goes and strips allow. Returns how often. */
static int64_t lay_out(struct msl_search *search, int32_t pattern, int64_t strips)
{
    const struct msl_strip *strip = &search->pool.strips[search->pool.patterns[pattern].first];
    const struct msl_laid *laid = &search->pool.laid[strip->first];
    int64_t *offered = search->making.offered;
    int64_t times = strips;
    for (int32_t i = 0; i < strip->count; i++)
        if (offered[laid[i].size] / laid[i].count < times)
            times = offered[laid[i].size] / laid[i].count;
    for (int32_t i = 0; i < strip->count; i++)
        offered[laid[i].size] -= times * laid[i].count;
    return times;
}

/* Fills strip after strip as full as can be, rather with long pieces. Returns 1 when all pieces lie in them. */
static int pack_fullest(struct msl_search *search, int32_t way)
{
    const struct msl_cutting *cutting = search->cutting;
    struct msl_making *making = &search->making;
    int64_t part = 0;
    int64_t strips = whole_of(search, search->way_level[way], &part);
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const int64_t taken = msl_taken_in(&cutting->sizes[i], cutting->ways[way].along, NULL);
        making->offered[i] = whole_of(search, search->copies_level[way * cutting->size_count + i], &part);
        making->worth[i] = 25 * taken + taken * taken / cutting->ways[way].across;
    }
    while (strips > 0) {
        int64_t bound;
        int32_t made;
        msl_price(search->pricing, way, making->worth, making->offered, 0, &search->pool, &made, &bound);
        if (made < 0)
            break;
        const int64_t times = lay_out(search, made, strips);
        if (!msl_plan_put(making, made, times))
            return 0;
        strips -= times;
    }
    for (int32_t i = 0; i < cutting->size_count; i++)
        if (making->offered[i] > 0)
            return 0;
    return 1;
}

/* What packing says of a way's pieces and strips; yes also puts them into the plan. */
static int pack_way(struct msl_search *search, int32_t way)
{
    const struct msl_cutting *cutting = search->cutting;
    const int64_t *copies = search->copies_level + (int64_t)way * cutting->size_count;
    const int32_t rows = search->making.plan.count;
    int64_t part = 0;
    if (put_levels(search, way))
        return MSL_PACK_YES;
    msl_plan_cut_back(&search->making, rows);
    if (cutting->ways[way].sheet)
        return MSL_PACK_UNKNOWN;
    if (!cutting->stacked && pack_fullest(search, way))
        return MSL_PACK_YES;
    msl_plan_cut_back(&search->making, rows);
    msl_pack_begin(search->packing);
    for (int32_t size = 0; size < cutting->size_count; size++)
        msl_pack_add(search->packing, cutting, way, size, whole_of(search, copies[size], &part));
    const int found = msl_pack(search->packing, cutting, way, whole_of(search, search->way_level[way], &part));
    if (found == MSL_PACK_YES) {
        put_packing(search, way);
        return found;
    }
    return cutting->stacked ? MSL_PACK_UNKNOWN : found;
}

/* 1 when no row asks for as much already; then the split is on it, so that the part that is looked at first has it. */
static int is_missing(const struct msl_search *search, struct msl_limit limit, struct msl_split *split)
{
    const struct msl_master *master = search->master;
    for (int32_t row = search->cutting->size_count; row < master->row_count; row++) {
        const struct msl_limit *there = &master->limits[row];
        if (there->kind == limit.kind && there->first_way == limit.first_way && there->last_way == limit.last_way &&
            there->size == limit.size && there->at_least == limit.at_least &&
            (limit.at_least ? there->wanted >= limit.wanted : there->wanted <= limit.wanted))
            return 0;
    }
    split->upper = limit.at_least;
    split->part = 0;
    split->limit = limit;
    split->limit.wanted -= limit.at_least;
    return 1;
}

/* A split towards a case that has just these numbers of a way; `proof`: at most so many strips, at least so many
 * pieces, more is not needed. Returns 0 when the case has them already. */
static int set_way(const struct msl_search *search, int32_t way, int proof, struct msl_split *split)
{
    const int32_t sizes = search->cutting->size_count;
    int64_t part = 0;
    struct msl_limit limit = { .kind = MSL_LIMIT_WAYS, .first_way = way, .last_way = way };
    limit.wanted = whole_of(search, search->way_level[way], &part);
    if (is_missing(search, limit, split))
        return 1;
    limit.at_least = 1;
    if (!proof && limit.wanted > 0 && is_missing(search, limit, split))
        return 1;
    limit.kind = MSL_LIMIT_COPIES;
    for (limit.size = 0; limit.size < sizes; limit.size++) {
        limit.wanted = whole_of(search, search->copies_level[way * sizes + limit.size], &part);
        limit.at_least = 1;
        if (limit.wanted > 0 && is_missing(search, limit, split))
            return 1;
        limit.at_least = 0;
        if (!proof && is_missing(search, limit, split))
            return 1;
    }
    return 0;
}

int msl_split_pack(struct msl_search *search, struct msl_case *solved, struct msl_split *split)
{
    const int32_t ways = search->cutting->way_count;
    int complete = 1;
    msl_plan_begin(&search->making);
    for (int32_t way = 0; way < ways; way++) {
        int64_t part = 0;
        if (whole_of(search, search->way_level[way], &part) == 0)
            continue;
        const int found = pack_way(search, way);
        complete = complete && found == MSL_PACK_YES;
        if (found != MSL_PACK_NO)
            continue;
        msl_plan_end(&search->making, 0);
        if (set_way(search, way, 1, split))
            return 1;
        solved->packed = 1 + way;
        return 0;
    }
    msl_plan_end(&search->making, complete && msl_plan_fill(&search->making, search->master->worth));
    for (int32_t way = 0; way < ways; way++)
        if (set_way(search, way, 0, split))
            return 1;
    return 0;
}
