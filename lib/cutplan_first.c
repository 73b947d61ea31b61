/* cutplan_first.c - first plans.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_first.h"

enum { OWN = 1, LEVEL, MIXED }; /* strips of one size, of sizes of just one height, of any */

/* ---- strip by strip ---------------------------------------------------------------------------------------------- */

/* How high the strip is in which a size lies: of a panel that is cut like one strip, what is not slit lies in the
 * highest strip that fits it. */
static int64_t height_in(const struct msl_cutting *cutting, const struct msl_way *way,
                         const struct msl_piece_size *size)
{
    int32_t at = 0;
    if (!way->panel || size->slit)
        return way->along;
    while (at < cutting->height_count && cutting->heights[at] > way->along)
        at++;
    return at < cutting->height_count ? cutting->heights[at] : 0;
}

/* How many of a size still fit into the room of a strip of this way; 0 or less: none. */
static int64_t fitting(const struct msl_cutting *cutting, const struct msl_piece_size *size, const struct msl_way *way,
                       int64_t room)
{
    const int64_t taken = msl_taken_in(size, height_in(cutting, way, size), NULL);
    return taken == 0 ? 0 : (room - size->run_in) / taken;
}

static int is_strip(const struct msl_way *way)
{
    return !way->sheet || way->panel;
}

/* The lowest strips, at least so high, that a size fits in; -1: none. */
static int32_t strips_for(const struct msl_cutting *cutting, const struct msl_piece_size *size, int64_t height)
{
    int32_t best = -1;
    for (int32_t i = 0; i < cutting->way_count; i++) {
        const struct msl_way *way = &cutting->ways[i];
        if (is_strip(way) && way->along >= height && fitting(cutting, size, way, way->across) > 0)
            best = i;
    }
    return best;
}

/* The strips of one size alone that cost least; -1: it fits none. */
static int32_t own_strips_for(const struct msl_cutting *cutting, const struct msl_piece_size *size)
{
    int32_t best = -1;
    int64_t least = INT64_MAX;
    for (int32_t i = 0; i < cutting->way_count; i++) {
        const struct msl_way *way = &cutting->ways[i];
        const int64_t fits = is_strip(way) ? fitting(cutting, size, way, way->across) : 0;
        const int64_t cost = fits > 0 ? (size->count + fits - 1) / fits * way->cost : INT64_MAX;
        if (cost < least) {
            least = cost;
            best = i;
        }
    }
    return best;
}

/* How high a piece lies: as low as it can, or turned the other way. */
static int64_t height_of(const struct msl_piece_size *size, int high)
{
    const int64_t turned = size->turned_along > 0 ? size->turned_along : size->along;
    if (high)
        return turned > size->along ? turned : size->along;
    return turned < size->along ? turned : size->along;
}

/* The sizes from the highest to the lowest. */
static void order_by_height(struct msl_making *making, int high)
{
    const struct msl_piece_size *sizes = making->cutting->sizes;
    for (int32_t i = 0; i < making->cutting->size_count; i++) {
        const int64_t height = height_of(&sizes[i], high);
        int32_t at = i;
        for (; at > 0 && height_of(&sizes[making->order[at - 1]], high) < height; at--)
            making->order[at] = making->order[at - 1];
        making->order[at] = i;
    }
}

int32_t msl_plan_add_strip(struct msl_making *making, int32_t way, int32_t count)
{
    const struct msl_cutting *cutting = making->cutting;
    const struct msl_way *of = &cutting->ways[way];
    struct msl_pool *pool = making->pool;
    if (!of->panel)
        return msl_pool_add(pool, way, of->along, making->sizes, making->counts, count);
    if (!msl_pool_begin(pool, way))
        return -1;
    int fits = 1;
    for (int32_t beside = 0; beside < 2; beside++) {
        int32_t laid = 0;
        for (int32_t i = 0; i < count; i++) {
            const struct msl_piece_size *size = &cutting->sizes[making->sizes[i]];
            const struct msl_laid pieces = { .size = making->sizes[i], .count = making->counts[i] };
            if (size->slit == beside)
                continue;
            if (laid++ == 0)
                fits = fits && msl_pool_strip(pool, beside ? height_in(cutting, of, size) : 0);
            fits = fits && msl_pool_lay(pool, pieces);
        }
    }
    if (fits)
        return pool->pattern_count - 1;
    msl_pool_undo(pool);
    return -1;
}

/* 1 where a size lies in a strip so high without being trimmed. */
static int is_level(const struct msl_piece_size *size, int64_t height)
{
    return size->along == height || size->turned_along == height;
}

/* A strip begun with the size at `from` of the order and filled in that order. */
static int lay_strip(struct msl_making *making, int32_t from, int32_t way, int kind)
{
    const struct msl_cutting *cutting = making->cutting;
    const struct msl_way *of = &cutting->ways[way];
    const int32_t end = kind == OWN || cutting->one_size ? from + 1 : cutting->size_count;
    int64_t room = of->across;
    int32_t count = 0;
    making->pricing->sack.steps += end - from;
    for (int32_t at = from; at < end; at++) {
        const int32_t i = making->order[at];
        const struct msl_piece_size *size = &cutting->sizes[i];
        const int64_t fits = fitting(cutting, size, of, room);
        const int64_t take = fits < making->left[i] ? fits : making->left[i];
        if (take <= 0 || (kind == LEVEL && at > from && !is_level(size, of->along)))
            continue;
        making->sizes[count] = i;
        making->counts[count++] = (int32_t)take;
        room -= size->run_in + take * msl_taken_in(size, height_in(cutting, of, size), NULL);
    }
    const int32_t made = msl_plan_add_strip(making, way, count);
    return made >= 0 && msl_plan_put(making, made, msl_plan_times(making, made));
}

/* The highest piece that is left begins a strip. Returns 0 where one fits no strip, or room gives out. */
static int lay_strips(struct msl_making *making, int high, int kind)
{
    const struct msl_cutting *cutting = making->cutting;
    order_by_height(making, high);
    for (int32_t at = 0; at < cutting->size_count; at++) {
        const struct msl_piece_size *size = &cutting->sizes[making->order[at]];
        const int32_t way = kind == OWN ? own_strips_for(cutting, size)
                                        : strips_for(cutting, size, height_of(size, high));
        making->pricing->sack.steps += cutting->way_count;
        while (making->left[making->order[at]] > 0)
            if (way < 0 || !lay_strip(making, at, way, kind))
                return 0;
    }
    return 1;
}

/* ---- by area ----------------------------------------------------------------------------------------------------- */

/* Worths by area, scaled so that pricing takes them as they are. */
static void worths_by_area(struct msl_making *making)
{
    const struct msl_cutting *cutting = making->cutting;
    int32_t shift = 0;
    for (int32_t i = 0; i < cutting->size_count; i++)
        while (cutting->sizes[i].across * cutting->sizes[i].along >> shift >= making->pricing->most_worth)
            shift++;
    for (int32_t i = 0; i < cutting->size_count; i++)
        making->worth[i] = 1 + (cutting->sizes[i].across * cutting->sizes[i].along >> shift);
}

int msl_has_sheets(const struct msl_cutting *cutting)
{
    for (int32_t i = 0; i < cutting->way_count; i++)
        if (cutting->ways[i].sheet)
            return 1;
    return 0;
}

void msl_plan_first(struct msl_making *making)
{
    msl_plan_begin(making);
    msl_plan_end(making, lay_strips(making, 0, OWN));
    for (int high = 0; high < 2; high++)
        for (int kind = LEVEL; kind <= MIXED; kind++) {
            msl_plan_begin(making);
            msl_plan_end(making, lay_strips(making, high, kind));
        }
    if (making->best.count > 0 && !msl_has_sheets(making->cutting))
        return;
    worths_by_area(making);
    making->plain_from = making->pricing->sack.steps + making->first_steps;
    msl_plan_begin(making);
    msl_plan_end(making, msl_plan_fill(making, making->worth));
    making->plain_from = 0;
}
