/* scatter_fill.c - places laid one after the other, the most constrained first.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"

enum {
    LOOKED_AT = 32, /* kinds, for one place */
    TIES = 64       /* keys are so many times larger, so that chance decides between equals */
};

/* The more of a kind are left, or the larger a share of it, the sooner it is laid. */
static int64_t kind_key(struct msl_scatter *s, uint32_t kind, enum msl_scatter_way way)
{
    int64_t left = s->left[kind];
    if (way == MSL_SCATTER_EVENLY) {
        int64_t there_are = s->stock[kind] < s->places ? s->stock[kind] : s->places;
        left = left * MSL_PLACES_MAX / there_are;
    }
    return left * TIES + msl_chance(&s->chance, TIES);
}

static void line_up_kinds(struct msl_scatter *s, enum msl_scatter_way way)
{
    msl_heap_clear(&s->next_kinds, s->kinds);
    for (uint32_t kind = 0; kind < s->kinds; kind++)
        if (s->left[kind] > 0)
            msl_heap_add(&s->next_kinds, kind, kind_key(s, kind, way));
}

/* The heavier what is laid around a place, the sooner it is laid. */
static void count_around(struct msl_scatter *s, uint32_t place)
{
    struct msl_scatter_heap *heap = &s->next_places;
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
        uint32_t other = s->touches[t].place;
        if (heap->where[other] != MSL_NOWHERE)
            msl_heap_change(heap, other, heap->keys[other] + (int64_t)(s->touches[t].weight / 4) * TIES);
    }
    s->work += s->first[place + 1] - s->first[place];
}

static void line_up_places(struct msl_scatter *s)
{
    msl_heap_clear(&s->next_places, s->places);
    for (uint32_t i = 0; i < s->n_loose; i++)
        msl_heap_add(&s->next_places, s->loose[i], msl_chance(&s->chance, TIES));
    for (uint32_t place = 0; place < s->places; place++)
        if (msl_scatter_is_given(s, place))
            count_around(s, place);
}

/* The first in line that touches no equal, or of those looked at the one that touches least. */
static void lay_next_kind(struct msl_scatter *s, uint32_t place, enum msl_scatter_way way)
{
    uint32_t seen[LOOKED_AT];
    uint32_t n = 0;
    uint32_t chosen = 0;
    int64_t least = INT64_MAX;
    while (least > 0 && n < LOOKED_AT && s->next_kinds.held > 0) {
        uint32_t kind = msl_heap_pull(&s->next_kinds);
        int64_t weight = msl_scatter_lay(s, place, kind);
        if (weight < least) {
            least = weight;
            chosen = kind;
        }
        seen[n++] = kind;
    }
    msl_scatter_lay(s, place, chosen);
    s->left[chosen]--;
    for (uint32_t i = 0; i < n; i++)
        if (s->left[seen[i]] > 0)
            msl_heap_add(&s->next_kinds, seen[i],
                         seen[i] == chosen ? kind_key(s, chosen, way) : s->next_kinds.keys[seen[i]]);
}

int msl_scatter_fill(struct msl_scatter *s, enum msl_scatter_way way)
{
    msl_scatter_clear(s);
    line_up_kinds(s, way);
    line_up_places(s);
    while (s->next_places.held > 0 && !msl_scatter_is_up(s)) {
        uint32_t place = msl_heap_pull(&s->next_places);
        lay_next_kind(s, place, way);
        count_around(s, place);
    }
    return s->next_places.held == 0;
}
