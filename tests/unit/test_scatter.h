/* test_scatter.h - the parts of the suite of scatter.h, one a file, and what they share: every arrangement tried.
 *
 * SPDX-License-Identifier: MIT */
#ifndef MUSLIN_TEST_SCATTER_H
#define MUSLIN_TEST_SCATTER_H

#include "failing_allocator.h"
#include "refusals.h"

void add_scatter_blocks(Suite *suite);
void add_scatter_bound(Suite *suite);
void add_scatter_search(Suite *suite);
void add_scatter_sets(Suite *suite);
void add_scatter_touches(Suite *suite);

enum { FEW_PLACES = 9, FEW_KINDS = 8, FEW_TOUCHES = 200 };

static inline struct muslin_allocator usual_memory(void)
{
    struct muslin_allocator allocator;
    ck_ok(muslin_allocator_libc(&allocator));
    return allocator;
}

/* Some places, what touches, what there is and what is given. */
struct arranging {
    int64_t places;
    size_t kinds;
    size_t n;
    int64_t stock[FEW_KINDS];
    int64_t given[FEW_PLACES];
    struct muslin_touch_spec touches[FEW_TOUCHES];
};

static inline void add_touch(struct arranging *a, int64_t first, int64_t second, int64_t weight)
{
    struct muslin_touch_spec touch = MUSLIN_TOUCH_SPEC_INIT;
    touch.first = first;
    touch.second = second;
    touch.weight = weight;
    ck_assert_uint_lt(a->n, FEW_TOUCHES);
    a->touches[a->n++] = touch;
}

static inline int64_t weight_of(const struct arranging *a, const int64_t *laid)
{
    int64_t weight = 0;
    for (size_t i = 0; i < a->n; i++)
        if (laid[a->touches[i].first] == laid[a->touches[i].second])
            weight += a->touches[i].weight;
    return weight;
}

static inline int is_allowed(const struct arranging *a, const int64_t *laid)
{
    int64_t left[FEW_KINDS];
    memcpy(left, a->stock, sizeof left);
    for (int64_t place = 0; place < a->places; place++) {
        if (laid[place] < 0 || laid[place] >= (int64_t)a->kinds || left[laid[place]]-- == 0)
            return 0;
        if (a->given[place] >= 0 && a->given[place] != laid[place])
            return 0;
    }
    return 1;
}

/* Every way to lay the places, as the numbers that count up in base `kinds`. */
static inline int64_t least_of_all(const struct arranging *a)
{
    int64_t laid[FEW_PLACES] = { 0 };
    int64_t least = INT64_MAX;
    for (;;) {
        int64_t weight = weight_of(a, laid);
        if (weight < least && is_allowed(a, laid))
            least = weight;
        int64_t place = 0;
        while (place < a->places && ++laid[place] == (int64_t)a->kinds)
            laid[place++] = 0;
        if (place == a->places)
            return least;
    }
}

#endif
