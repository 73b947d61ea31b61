/* test_cutplan_sets.h - whether few pieces come from stock, by all ways to make sets of them.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_CUTPLAN_SETS_H
#define MUSLIN_TEST_CUTPLAN_SETS_H

#include "test_cutplan.h"

enum { SETS_PIECES = 6, SETS_MOST = 1 << SETS_PIECES };

/* Pieces one by one, and what sets of them need. */
struct sets {
    const struct tiny *t;
    int32_t sizes[SETS_PIECES];
    int32_t count;
    uint8_t stacks[16][SETS_MOST];   /* of one width: lie in one blank */
    int64_t room[SETS_MOST];         /* of a strip of one height */
    int64_t high[4][SETS_MOST];      /* of each way: strips in all */
};

static inline const struct msl_piece_size *size_in(const struct sets *s, int32_t piece)
{
    return &s->t->sizes[s->sizes[piece]];
}

/* How high the pieces are, one above the other, in a blank so wide; -1: not all are so wide. */
static inline int64_t stack_height(const struct sets *s, int32_t set, int64_t width)
{
    int64_t high = 0;
    for (int32_t i = 0; i < s->count; i++) {
        const struct msl_piece_size *size = size_in(s, i);
        int64_t least = INT64_MAX;
        if (!(set >> i & 1))
            continue;
        if (size->across == width)
            least = size->along;
        if (size->turned_across == width && size->turned_along < least)
            least = size->turned_along;
        if (least == INT64_MAX || size->run_in > 0 || size->level)
            return -1;
        high += least;
    }
    return high;
}

/* The least room that one blank with the set needs; -1: it is none. */
static inline int64_t blank_room(const struct sets *s, int32_t set, int64_t height)
{
    for (int32_t i = 0; i < s->count; i++)
        if (set == 1 << i) {
            const int64_t taken = msl_taken_in(size_in(s, i), height, NULL);
            return taken > 0 ? taken : -1;
        }
    for (int64_t width = 1; s->t->cutting.stacked && width < 16; width++) {
        const int64_t high = stack_height(s, set, width);
        if (high >= 0 && high <= height)
            return width;
    }
    return -1;
}

/* Run-ins of the sizes in a set, each of them once. */
static inline int64_t run_ins(const struct sets *s, int32_t set)
{
    int64_t all = 0;
    int32_t last = -1; /* equal ones follow each other */
    for (int32_t i = 0; i < s->count; i++)
        if ((set >> i & 1) && s->sizes[i] != last) {
            all += size_in(s, i)->run_in;
            last = s->sizes[i];
        }
    return all;
}

static inline int is_of_one_size(const struct sets *s, int32_t set)
{
    int32_t one = -1;
    for (int32_t i = 0; i < s->count; i++)
        if (set >> i & 1) {
            if (one >= 0 && s->sizes[i] != one)
                return 0;
            one = s->sizes[i];
        }
    return 1;
}

static inline void find_rooms(struct sets *s, int64_t height)
{
    for (int32_t set = 1; set < 1 << s->count; set++) {
        s->room[set] = INT64_MAX / 2;
        for (int32_t part = set; part > 0; part = (part - 1) & set) {
            const int64_t room = blank_room(s, part, height);
            if (room > 0 && room + s->room[set ^ part] < s->room[set])
                s->room[set] = room + s->room[set ^ part];
        }
    }
}

static inline void find_heights(struct sets *s, int32_t way)
{
    const struct msl_cutting *cutting = &s->t->cutting;
    for (int32_t set = 1; set < 1 << s->count; set++)
        s->high[way][set] = INT64_MAX / 2;
    s->high[way][0] = 0;
    for (int32_t again = 0; again < s->count; again++)
        for (int32_t h = 0; h < cutting->height_count; h++) {
            find_rooms(s, cutting->heights[h]);
            for (int32_t set = 1; set < 1 << s->count; set++)
                for (int32_t part = set; part > 0; part = (part - 1) & set) {
                    const int64_t high = cutting->heights[h] + s->high[way][set ^ part];
                    if (cutting->one_size && !is_of_one_size(s, part))
                        continue;
                    if (s->room[part] + run_ins(s, part) <= cutting->ways[way].across &&
                        high < s->high[way][set])
                        s->high[way][set] = high;
                }
        }
}

/* Whether the stock gives the set. */
static inline int suffices(const struct sets *s, int32_t set, int64_t one, int64_t two)
{
    if (set == 0)
        return 1;
    for (int32_t way = 0; way < s->t->cutting.way_count; way++) {
        const int32_t stock = s->t->ways[way].stock;
        if ((stock == 0 ? one : two) == 0)
            continue;
        for (int32_t part = set; part > 0; part = (part - 1) & set)
            if (s->high[way][part] <= s->t->ways[way].along &&
                suffices(s, set ^ part, one - (stock == 0), two - (stock == 1)))
                return 1;
    }
    return 0;
}

static inline int can_be_dealt(const struct tiny *t)
{
    static struct sets s;
    s.t = t;
    s.count = 0;
    for (int32_t i = 0; i < t->cutting.size_count; i++)
        for (int64_t n = 0; n < t->sizes[i].count; n++)
            s.sizes[s.count++] = i;
    ck_assert_int_le(s.count, SETS_PIECES);
    for (int32_t way = 0; way < t->cutting.way_count; way++)
        find_heights(&s, way);
    return suffices(&s, (1 << s.count) - 1, t->available[0], t->available[1]);
}

/* Few or many widths, and stock that just suffices or does not. */
static inline void chance_pieces(struct tiny *t, uint64_t *seed)
{
    const int64_t side = 3 + 2 * tiny_chance(seed, 2);
    int64_t left = SETS_PIECES - tiny_chance(seed, 3);
    tiny_start(t);
    while (left > 0) { /* drawn in an order that no compiler changes */
        const int64_t count = 1 + tiny_chance(seed, left < 3 ? left : 3);
        const int64_t along = 1 + tiny_chance(seed, side);
        const int64_t across = 1 + tiny_chance(seed, side);
        struct msl_piece_size *size = tiny_size(t, across, along, count, 0);
        if (tiny_chance(seed, 3) == 0 && across != along) {
            size->turned_across = along;
            size->turned_along = across;
        } else if (tiny_chance(seed, 4) == 0) {
            size->run_in = tiny_chance(seed, 3);
            size->level = 1;
        }
        left -= count;
    }
    const int64_t sheets = 1 + tiny_chance(seed, 2);
    const int64_t length = side + tiny_chance(seed, 5);
    const int64_t width = side + tiny_chance(seed, 5);
    tiny_heights(t);
    tiny_stock(t, width, length, sheets, 1);
    if (tiny_chance(seed, 2) == 0) {
        const int64_t other_length = 2 + tiny_chance(seed, 4);
        tiny_stock(t, 2 + tiny_chance(seed, 4), other_length, 1, 1);
    }
    const struct msl_way tempting = { 0, 100, 100, 1, 0, 0, 0 };
    t->ways[t->cutting.way_count] = tempting; /* behind them */
    t->heights[t->cutting.height_count] = 1;
}

#endif
