/* cutplan_bound.c - what worths prove.
 *
 * SPDX-License-Identifier: MIT
 *
 * Let every piece, and every limit for each thing that it counts, be worth something. In a plan that keeps to the
 * limits all that is wanted is worth no more than what is cut; where no thing of a way is worth more than it costs, the
 * plan costs no less than that. Where some are, by no more than the part rho of their cost, the whole plan is by no
 * more than rho of its cost, and only plans that cost less than the best one matter. */
#include "cutplan_bound.h"

/* ---- sums of costs ----------------------------------------------------------------------------------------------- */

/* All sums, each with `by` more. */
static void add_shifted(uint64_t *bits, int64_t words, int64_t by)
{
    const int64_t whole = by / 64;
    const int64_t part = by % 64;
    for (int64_t i = words - 1; i >= whole; i--) {
        bits[i] |= bits[i - whole] << part;
        if (part > 0 && i > whole)
            bits[i] |= bits[i - whole - 1] >> (64 - part);
    }
}

int64_t msl_reach_make(struct msl_reach *reach, const struct msl_cutting *cutting, int64_t most)
{
    const int64_t words = most / 64 + 1;
    int64_t steps = 0;
    reach->most = -1;
    if (most >= MSL_REACH_BITS)
        return 0;
    reach->most = most;
    reach->bits[0] = 1;
    for (int64_t i = 1; i < words; i++)
        reach->bits[i] = 0;
    /* once, twice, four times ... more: together any number of times */
    for (int32_t way = 0; way < cutting->way_count; way++)
        for (int64_t cost = cutting->ways[way].cost; cost <= most; cost *= 2) {
            add_shifted(reach->bits, words, cost);
            steps += words;
        }
    return steps;
}

int64_t msl_reach_up(const struct msl_reach *reach, int64_t cost)
{
    while (cost < reach->most && (reach->bits[cost / 64] >> (cost % 64) & 1) == 0)
        cost++;
    return cost;
}

/* ---- bounds ------------------------------------------------------------------------------------------------------ */

/* a b / c up, none below 0; INT64_MAX where that is out of range. */
static int64_t part_up(int64_t a, int64_t b, int64_t c)
{
    int64_t whole;
    int64_t rest;
    if (!msl_wide_floor(msl_wide_multiply(a, b), c, &whole, &rest))
        return INT64_MAX;
    return whole + (rest > 0);
}

/* Pricing looked at each piece as worth most_worth at most: what is above that is not proved. */
static int worth_too_much(const struct msl_master *master, int64_t most_worth)
{
    const int64_t count = (int64_t)master->cutting->way_count * master->cutting->size_count;
    for (int64_t i = 0; i < count; i++)
        if (master->way_worth[i] > most_worth)
            return 1;
    return 0;
}

struct msl_wide msl_worth_of_all(const struct msl_master *master)
{
    struct msl_wide total = msl_wide_from(0);
    for (int32_t row = 0; row < master->row_count; row++)
        total = msl_wide_add(total, msl_wide_multiply(master->worth[row], master->limits[row].wanted));
    return total;
}

int64_t msl_bound(const struct msl_master *master, const int64_t *most_of, int64_t most_worth, int64_t below,
                  const struct msl_reach *reach)
{
    const struct msl_cutting *cutting = master->cutting;
    int64_t lost = 0;
    int64_t bound;
    int64_t rest;
    if (worth_too_much(master, most_worth))
        return 0;
    for (int32_t way = 0; way < cutting->way_count; way++) {
        const int64_t excess = msl_greater(most_of[way] - master->way_fixed[way], 0);
        lost = msl_greater(lost, part_up(excess, below - 1, cutting->ways[way].cost));
    }
    const struct msl_wide total = msl_wide_add(msl_worth_of_all(master), msl_wide_from(-lost));
    if (lost == INT64_MAX || total.high < 0)
        return 0;
    if (!msl_wide_floor(total, (int64_t)1 << master->bits, &bound, &rest))
        return below;
    return msl_lesser(msl_reach_up(reach, bound + (rest > 0)), below);
}

/* The way that gives most area for its cost. */
static const struct msl_way *cheapest_way(const struct msl_cutting *cutting)
{
    const struct msl_way *best = &cutting->ways[0];
    for (int32_t i = 1; i < cutting->way_count; i++) {
        const struct msl_way *way = &cutting->ways[i];
        if (msl_wide_compare(msl_wide_multiply(way->cost, best->across * best->along),
                             msl_wide_multiply(best->cost, way->across * way->along)) < 0)
            best = way;
    }
    return best;
}

/* What a piece takes at least of the cloth. */
static int64_t least_area(const struct msl_piece_size *size)
{
    const int64_t listed = size->across * size->along;
    const int64_t turned = size->turned_across * size->turned_along;
    return turned > 0 ? msl_lesser(turned, listed) : listed;
}

/* What pieces of this stock give together at most. */
static struct msl_wide area_of_stock(const struct msl_cutting *cutting, int32_t stock)
{
    int64_t most = 0;
    for (int32_t i = 0; i < cutting->way_count; i++)
        if (cutting->ways[i].stock == stock)
            most = msl_greater(most, cutting->ways[i].across * cutting->ways[i].along);
    return msl_wide_multiply(most, cutting->available[stock]);
}

int msl_area_suffices(const struct msl_cutting *cutting)
{
    struct msl_wide left = msl_wide_from(0);
    int32_t endless = cutting->stock_count == 0;
    for (int32_t i = 0; i < cutting->stock_count; i++) {
        endless |= cutting->available[i] == INT64_MAX;
        left = msl_wide_add(left, area_of_stock(cutting, i));
    }
    for (int32_t i = 0; i < cutting->size_count; i++)
        left = msl_wide_add(left, msl_wide_multiply(-least_area(&cutting->sizes[i]), cutting->sizes[i].count));
    return endless || msl_wide_compare(left, msl_wide_from(0)) >= 0;
}

int64_t msl_plain_bound(const struct msl_cutting *cutting, int32_t bits, int64_t *worths)
{
    const struct msl_way *way = cheapest_way(cutting);
    struct msl_wide total = msl_wide_from(0);
    int64_t bound;
    int64_t rest;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_piece_size *size = &cutting->sizes[i];
        int64_t cost;
        /* the part of the cloth in two steps, down both times */
        msl_wide_floor(msl_wide_multiply(least_area(size), way->cost), way->across * way->along, &cost, &rest);
        worths[i] = cost * ((int64_t)1 << bits);
        msl_wide_floor(msl_wide_multiply(rest, (int64_t)1 << bits), way->across * way->along, &cost, &rest);
        worths[i] += cost;
        total = msl_wide_add(total, msl_wide_multiply(worths[i], size->count));
    }
    msl_wide_floor(total, (int64_t)1 << bits, &bound, &rest);
    return bound + (rest > 0);
}
