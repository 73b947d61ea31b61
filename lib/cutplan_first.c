/* cutplan_first.c - first plans.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_first.h"

/* ---- strip by strip ---------------------------------------------------------------------------------------------- */

/* How many of a size still fit into the room of a strip as high as this way's. */
static int64_t fitting(const struct msl_size *size, const struct msl_way *way, int64_t room)
{
    const int64_t taken = msl_taken_in(size, way->along, NULL);
    if (taken == 0 || taken + size->run_in > room)
        return 0;
    return (room - size->run_in) / taken;
}

/* The lowest strips, at least so high, that a size fits in; -1: none. */
static int32_t strips_for(const struct msl_cutting *cutting, const struct msl_size *size, int64_t height)
{
    int32_t best = -1;
    for (int32_t i = 0; i < cutting->way_count; i++) {
        const struct msl_way *way = &cutting->ways[i];
        if (!way->sheet && way->along >= height && fitting(size, way, way->across) > 0)
            best = i;
    }
    return best;
}

/* How high a piece lies: as low as it can, or turned the other way. */
static int64_t height_of(const struct msl_size *size, int high)
{
    const int64_t turned = size->turned_along > 0 ? size->turned_along : size->along;
    if (high)
        return turned > size->along ? turned : size->along;
    return turned < size->along ? turned : size->along;
}

/* The sizes from the highest to the lowest. */
static void order_by_height(struct msl_making *making, int high)
{
    const struct msl_size *sizes = making->cutting->sizes;
    for (int32_t i = 0; i < making->cutting->size_count; i++) {
        const int64_t height = height_of(&sizes[i], high);
        int32_t at = i;
        for (; at > 0 && height_of(&sizes[making->order[at - 1]], high) < height; at--)
            making->order[at] = making->order[at - 1];
        making->order[at] = i;
    }
}

/* A strip begun with the size at `from` of the order and filled in that order; `own`: with that size alone. */
static int lay_strip(struct msl_making *making, int32_t from, int32_t way, int own)
{
    const struct msl_cutting *cutting = making->cutting;
    const int32_t end = own || cutting->one_size ? from + 1 : cutting->size_count;
    int64_t room = cutting->ways[way].across;
    int32_t count = 0;
    for (int32_t at = from; at < end; at++) {
        const int32_t i = making->order[at];
        const struct msl_size *size = &cutting->sizes[i];
        const int64_t fits = fitting(size, &cutting->ways[way], room);
        const int64_t take = fits < making->left[i] ? fits : making->left[i];
        if (take <= 0)
            continue;
        making->sizes[count] = i;
        making->counts[count++] = (int32_t)take;
        room -= size->run_in + take * msl_taken_in(size, cutting->ways[way].along, NULL);
    }
    const int32_t made =
        msl_pool_add(making->pool, way, cutting->ways[way].along, making->sizes, making->counts, count);
    return made >= 0 && msl_plan_put(making, made, msl_plan_times(making, made));
}

/* The highest piece that is left begins a strip. Returns 0 where one fits no strip, or room gives out. */
static int lay_strips(struct msl_making *making, int high, int own)
{
    const struct msl_cutting *cutting = making->cutting;
    order_by_height(making, high);
    for (int32_t at = 0; at < cutting->size_count; at++) {
        const struct msl_size *size = &cutting->sizes[making->order[at]];
        int32_t way = strips_for(cutting, size, height_of(size, high));
        if (way < 0)
            way = strips_for(cutting, size, 0);
        while (making->left[making->order[at]] > 0)
            if (way < 0 || !lay_strip(making, at, way, own))
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

void msl_plan_first(struct msl_making *making)
{
    msl_plan_begin(making);
    msl_plan_end(making, lay_strips(making, 0, 1));
    for (int high = 0; high < 2; high++) {
        msl_plan_begin(making);
        msl_plan_end(making, lay_strips(making, high, 0));
    }
    if (making->best.count > 0)
        return;
    worths_by_area(making);
    msl_plan_begin(making);
    msl_plan_end(making, msl_plan_fill(making, making->worth));
}
