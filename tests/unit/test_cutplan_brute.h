/* test_cutplan_brute.h - every plan and every pattern of few pieces, and a proof gone through case by case.
 *
 * SPDX-License-Identifier: MIT
 *
 * So many of each size are a number in a mixed base, its state. */
#ifndef MUSLIN_TEST_CUTPLAN_BRUTE_H
#define MUSLIN_TEST_CUTPLAN_BRUTE_H

#include "test_cutplan.h"

struct brute {
    const struct msl_cutting *cutting;
    int32_t states;
    int32_t base[TINY_SIZES];
    uint8_t holds[TINY_WAYS][TINY_STATES]; /* a thing of a way can hold just this */
};

static inline int32_t brute_digit(const struct brute *b, int32_t state, int32_t size)
{
    for (int32_t i = 0; i < size; i++)
        state /= b->base[i];
    return state % b->base[size];
}

/* part is in state, of each size. */
static inline int brute_within(const struct brute *b, int32_t part, int32_t state)
{
    for (int32_t i = 0; i < b->cutting->size_count; i++)
        if (brute_digit(b, part, i) > brute_digit(b, state, i))
            return 0;
    return 1;
}

/* The room a strip needs for a state; -1: it is too low for it. */
static inline int64_t brute_room(const struct brute *b, int32_t state, int64_t height)
{
    int64_t room = 0;
    int32_t kinds = 0;
    for (int32_t i = 0; i < b->cutting->size_count; i++) {
        const struct msl_piece_size *size = &b->cutting->sizes[i];
        int64_t taken = INT64_MAX;
        int32_t count = brute_digit(b, state, i);
        if (count == 0)
            continue;
        if (size->level ? size->along == height : size->along <= height)
            taken = size->across;
        if (size->turned_along > 0 && (size->level ? size->turned_along == height : size->turned_along <= height) &&
            size->turned_across < taken)
            taken = size->turned_across;
        if (taken == INT64_MAX)
            return -1;
        room += size->run_in + count * taken;
        kinds++;
    }
    return b->cutting->one_size && kinds > 1 ? -1 : room;
}

/* The least height that strips of a sheet need in all for each state. */
static inline void brute_sheet(struct brute *b, int32_t way)
{
    const struct msl_cutting *cutting = b->cutting;
    static int64_t least[TINY_STATES];
    least[0] = 0;
    for (int32_t state = 1; state < b->states; state++) {
        least[state] = INT64_MAX / 2;
        for (int32_t part = 1; part <= state; part++)
            for (int32_t h = 0; brute_within(b, part, state) && h < cutting->height_count; h++) {
                int64_t room = brute_room(b, part, cutting->heights[h]);
                if (room >= 0 && room <= cutting->ways[way].across &&
                    cutting->heights[h] + least[state - part] < least[state])
                    least[state] = cutting->heights[h] + least[state - part];
            }
    }
    for (int32_t state = 0; state < b->states; state++)
        b->holds[way][state] = least[state] <= cutting->ways[way].along;
}

static inline void brute_start(struct brute *b, const struct msl_cutting *cutting)
{
    b->cutting = cutting;
    b->states = 1;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        b->base[i] = (int32_t)cutting->sizes[i].count + 1;
        b->states *= b->base[i];
    }
    for (int32_t way = 0; way < cutting->way_count; way++) {
        if (cutting->ways[way].sheet) {
            brute_sheet(b, way);
            continue;
        }
        for (int32_t state = 0; state < b->states; state++) {
            int64_t room = brute_room(b, state, cutting->ways[way].along);
            b->holds[way][state] = room >= 0 && room <= cutting->ways[way].across;
        }
    }
}

/* The least cost of all plans; -1: the stock gives none. At most two stocks, of 7 pieces at most. */
static inline int64_t brute_cost(const struct brute *b)
{
    const struct msl_cutting *cutting = b->cutting;
    enum { MANY = 8 };
    static int64_t least[MANY][MANY][TINY_STATES];
    int64_t have[2] = { 0, 0 };
    for (int32_t i = 0; i < cutting->stock_count; i++)
        have[i] = cutting->available[i] < MANY ? cutting->available[i] : MANY - 1;
    for (int64_t one = 0; one <= have[0]; one++)
        for (int64_t two = 0; two <= have[1]; two++)
            for (int32_t state = 0; state < b->states; state++) {
                int64_t *here = &least[one][two][state];
                *here = state == 0 ? 0 : INT64_MAX / 2;
                for (int32_t way = 0; way < cutting->way_count; way++) {
                    int32_t stock = cutting->ways[way].stock;
                    int64_t left_one = one - (stock == 0);
                    int64_t left_two = two - (stock == 1);
                    if (left_one < 0 || left_two < 0)
                        continue;
                    for (int32_t part = 1; part <= state; part++)
                        if (b->holds[way][part] && brute_within(b, part, state) &&
                            cutting->ways[way].cost + least[left_one][left_two][state - part] < *here)
                            *here = cutting->ways[way].cost + least[left_one][left_two][state - part];
                }
            }
    int64_t best = least[have[0]][have[1]][b->states - 1];
    return best == INT64_MAX / 2 ? -1 : best;
}

/* Strips of a way that are needed for at least these pieces. */
static inline int64_t brute_strips(const struct brute *b, int32_t way, int32_t wanted)
{
    static int64_t least[TINY_STATES];
    least[0] = 0;
    for (int32_t state = 1; state <= wanted; state++) {
        least[state] = INT64_MAX / 2;
        for (int32_t part = 1; part <= state; part++)
            if (b->holds[way][part] && brute_within(b, part, state) && least[state - part] + 1 < least[state])
                least[state] = least[state - part] + 1;
    }
    return least[wanted];
}

/* ---- a plan and a proof gone through ----------------------------------------------------------------------------- */

/* Cuts what is wanted, from what there is, each pattern within its way; costs what is said. */
static inline void ck_plan(const struct msl_cutting *cutting, const struct msl_found *found)
{
    int64_t left[TINY_SIZES];
    int64_t in_hand[4];
    int64_t cost = 0;
    for (int32_t i = 0; i < cutting->size_count; i++)
        left[i] = cutting->sizes[i].count;
    for (int32_t i = 0; i < cutting->stock_count; i++)
        in_hand[i] = cutting->available[i];
    for (int32_t p = 0; p < found->plan.pattern_count; p++) {
        const struct msl_pattern *pattern = &found->plan.patterns[p];
        const struct msl_way *way = &cutting->ways[pattern->way];
        int64_t high = 0;
        ck_assert_int_gt(pattern->times, 0);
        cost += pattern->times * way->cost;
        if (way->stock >= 0)
            in_hand[way->stock] -= pattern->times;
        for (int32_t s = 0; s < pattern->count; s++) {
            const struct msl_strip *strip = &found->plan.strips[pattern->first + s];
            int64_t room = way->across;
            high += strip->height;
            for (int32_t i = 0; i < strip->count; i++) {
                const struct msl_laid *laid = &found->plan.laid[strip->first + i];
                const struct msl_piece_size *size = &cutting->sizes[laid->size];
                int64_t taken = msl_taken_in(size, strip->height, NULL);
                ck_assert(taken > 0);
                ck_assert(laid->count > 0 || strip->count > 0);
                room -= laid->count * taken + (laid->count > 0 ? size->run_in : 0);
                left[laid->size] -= pattern->times * laid->count;
                ck_assert(!cutting->one_size || strip->count == 1);
            }
            ck_assert_int_ge(room, 0);
        }
        ck_assert_int_le(high, way->along);
    }
    for (int32_t i = 0; i < cutting->size_count; i++)
        ck_assert_int_le(left[i], 0);
    for (int32_t i = 0; i < cutting->stock_count; i++)
        ck_assert_int_ge(in_hand[i], 0);
    ck_assert_int_eq(cost, found->cost);
    ck_assert_int_le(found->least, found->cost);
}

/* What a thing of a way with these pieces is worth by a case's worths, and by its limits. */
static inline int64_t brute_worth(const struct brute *b, const struct msl_found *found, int32_t number, int32_t way,
                                  int32_t state)
{
    const struct msl_cutting *cutting = b->cutting;
    const struct msl_case *proved = &found->cases[number];
    const int64_t *worths = found->worths + proved->first_worth;
    int64_t sum = 0;
    for (int32_t i = 0; i < cutting->size_count; i++)
        sum += worths[i] * brute_digit(b, state, i);
    if (cutting->ways[way].stock >= 0)
        sum += worths[cutting->size_count + cutting->ways[way].stock];
    int32_t at = proved->worth_count;
    for (int32_t c = number; found->cases[c].parent >= 0; c = found->cases[c].parent) {
        const struct msl_limit *limit = &found->cases[c].limit;
        int64_t worth = worths[--at];
        ck_assert(limit->at_least ? worth >= 0 : worth <= 0);
        if (limit->kind == MSL_LIMIT_WAYS)
            sum += way >= limit->first_way && way <= limit->last_way ? worth : 0;
        else if (limit->first_way == way)
            sum += worth * brute_digit(b, state, limit->size);
    }
    ck_assert_int_eq(at, cutting->size_count + cutting->stock_count);
    return sum;
}

/* Proves a case's bound anew: by every pattern there is. */
static inline int64_t brute_bound(const struct brute *b, const struct msl_found *found, int32_t number)
{
    const struct msl_cutting *cutting = b->cutting;
    const struct msl_case *proved = &found->cases[number];
    const int64_t *worths = found->worths + proved->first_worth;
    int64_t total = 0;
    int64_t lost = 0;
    int32_t at = proved->worth_count;
    for (int32_t i = 0; i < cutting->size_count; i++)
        total += worths[i] * cutting->sizes[i].count;
    for (int32_t i = 0; i < cutting->stock_count; i++)
        total += worths[cutting->size_count + i] == 0 ? 0 : worths[cutting->size_count + i] * cutting->available[i];
    for (int32_t c = number; found->cases[c].parent >= 0; c = found->cases[c].parent)
        total += worths[--at] * found->cases[c].limit.wanted;
    for (int32_t way = 0; way < cutting->way_count; way++)
        for (int32_t state = 0; state < b->states; state++) {
            int64_t cost = cutting->ways[way].cost;
            int64_t excess = brute_worth(b, found, number, way, state) - cost * ((int64_t)1 << found->bits);
            if (b->holds[way][state] && excess > 0 && (excess * (found->cost - 1) + cost - 1) / cost > lost)
                lost = (excess * (found->cost - 1) + cost - 1) / cost;
        }
    total -= lost;
    int64_t bound = total <= 0 ? 0 : (total + ((int64_t)1 << found->bits) - 1) >> found->bits;
    if (bound > found->cost)
        return found->cost;
    for (;; bound++) { /* up to a sum of costs */
        static uint8_t reach[1 << 16];
        reach[0] = 1;
        for (int64_t sum = 1; sum <= bound; sum++) {
            reach[sum] = 0;
            for (int32_t way = 0; way < cutting->way_count; way++)
                if (cutting->ways[way].cost <= sum)
                    reach[sum] |= reach[sum - cutting->ways[way].cost];
        }
        if (reach[bound])
            return bound;
    }
}

/* No plan keeps to the limits that the case is closed with. */
static inline void ck_packed(const struct brute *b, const struct msl_found *found, int32_t number)
{
    int32_t way = found->cases[number].packed - 1;
    int64_t strips = INT64_MAX;
    int64_t pieces[TINY_SIZES] = { 0 };
    int32_t state = 0;
    for (int32_t c = number; found->cases[c].parent >= 0; c = found->cases[c].parent) {
        const struct msl_limit *limit = &found->cases[c].limit;
        if (limit->first_way != way || limit->last_way != way)
            continue;
        if (limit->kind == MSL_LIMIT_WAYS && !limit->at_least && limit->wanted < strips)
            strips = limit->wanted;
        if (limit->kind == MSL_LIMIT_COPIES && limit->at_least && limit->wanted > pieces[limit->size])
            pieces[limit->size] = limit->wanted;
    }
    for (int32_t i = b->cutting->size_count - 1; i >= 0; i--) {
        ck_assert_int_lt(pieces[i], b->base[i]);
        state = state * b->base[i] + (int32_t)pieces[i];
    }
    ck_assert_int_gt(brute_strips(b, way, state), strips);
}

static inline void ck_proof(const struct brute *b, const struct msl_found *found)
{
    int64_t least = found->cost;
    ck_assert_int_eq(found->cases[0].parent, -1);
    for (int32_t i = 0; i < found->case_count; i++) {
        const struct msl_case *one = &found->cases[i];
        if (one->worth_count > 0)
            ck_assert_int_le(one->least, brute_bound(b, found, i));
        else
            ck_assert_int_eq(one->least, found->cases[one->parent].least);
        if (one->packed)
            ck_packed(b, found, i);
        else if (one->split == 0 && one->least < least)
            least = one->least;
        if (one->split == 0)
            continue;
        const struct msl_limit *lower = &found->cases[one->split].limit;
        const struct msl_limit *upper = &found->cases[one->split + 1].limit;
        ck_assert_int_eq(found->cases[one->split].parent, i);
        ck_assert_int_eq(found->cases[one->split + 1].parent, i);
        ck_assert(lower->at_least == 0 && upper->at_least == 1 && upper->wanted == lower->wanted + 1);
        ck_assert(lower->kind == upper->kind && lower->first_way == upper->first_way &&
                  lower->last_way == upper->last_way && lower->size == upper->size);
    }
    ck_assert_int_eq(least, found->least);
}

#endif
