/* scatter_bound.c - what no arrangement of prints can do without.
 *
 * SPDX-License-Identifier: MIT
 *
 * Three parts, which no touch shares, are added: touches between given places are what they are; a loose place that
 * touches given ones of every kind touches the lightest of them; and for touches between loose places the largest of
 * these holds:
 *
 *   Few kinds    Places that all touch each other, a clique, cannot all differ when the kinds are fewer than they.
 *   Quantities   Of a kind that must be laid n times, where loose places are parted into c cliques, c may lie alone;
 *                each further one touches another, or two where every clique has two, and so on (pigeonhole).
 *                For these two, places are parted several times, each time by touches that were not used before, and
 *                what each parting finds is added: a kind that fills too much of a grid touches across and down.
 *   Two kinds    Around a ring of an odd number of places two kinds cannot take turns: each ring that shares no touch
 *                with an earlier one has two equal that touch. One kind alone touches itself everywhere. */
#include "scatter_inside.h"

/* Borrows what the search does not use yet. */
struct bound {
    struct msl_scatter *s;
    int64_t kinds;    /* of which some are left */
    int64_t left;     /* of all kinds together */
    uint32_t *marks;  /* numbers of places, for whatever is to be marked */
    uint32_t *above;
    uint32_t *row;
    uint32_t *up;
    int64_t *of_kind;
};

static int is_loose(const struct msl_scatter *s, uint32_t place)
{
    return s->laid[place] < 0;
}

/* ---- touches of given places ------------------------------------------------------------------------------------- */

static int64_t of_given_pairs(struct msl_scatter *s)
{
    int64_t twice = 0;
    for (uint32_t place = 0; place < s->places; place++)
        if (!is_loose(s, place))
            twice += msl_scatter_weight(s, place, s->laid[place]);
    return twice / 2;
}

/* What is heard of given kinds around a place, added to (or, with -1, taken back from) each kind's sum. */
static void add_given_around(struct bound *b, uint32_t place, int64_t sign)
{
    struct msl_scatter *s = b->s;
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
        uint32_t other = s->touches[t].place;
        if (!is_loose(s, other))
            b->of_kind[s->laid[other] / 4] += sign * (s->touches[t].weight / 4);
    }
}

/* Only where as many given places touch it as there are kinds can none be free of touches. */
static int64_t of_given_around(struct bound *b, uint32_t place)
{
    struct msl_scatter *s = b->s;
    if ((int64_t)(s->first[place + 1] - s->first[place]) < b->kinds)
        return 0;
    int64_t least = INT64_MAX;
    add_given_around(b, place, 1);
    for (uint32_t i = 0; i < b->kinds; i++)
        least = msl_lesser(least, b->of_kind[s->next_kinds.items[i]]);
    add_given_around(b, place, -1);
    return least;
}

/* ---- cliques ----------------------------------------------------------------------------------------------------- */

enum { PARTINGS = 8 };

/* A bit of a touch's weight, set while a parting has used it. */
#define USED (UINT32_C(1) << 31)

static int is_used(struct msl_touch touch)
{
    return (touch.weight & USED) != 0;
}

struct cliques {
    int64_t few_kinds;  /* weight that those have which are larger than the number of kinds */
    int64_t lightest;   /* touch in any */
    uint32_t *at_least; /* how many have 1, 2, 3 ... places or more */
};

/* The least equal pairs among n places of so many kinds, none where there are enough: as even as can be. */
static int64_t equal_pairs(int64_t n, int64_t kinds)
{
    int64_t each = n / kinds;
    int64_t more = n % kinds;
    return (kinds - more) * (each * (each - 1) / 2) + more * (each * (each + 1) / 2);
}

/* A place joins the clique: those that touch it count one more of its places; each other place stands in the row once.
 * The heap forgets a touch of each. */
static void join(struct bound *b, uint32_t place, uint32_t size, uint32_t *n_row)
{
    struct msl_scatter *s = b->s;
    struct msl_scatter_heap *heap = &s->next_places;
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
        uint32_t other = s->touches[t].place;
        if (heap->where[other] == MSL_NOWHERE || is_used(s->touches[t]))
            continue;
        msl_heap_change(heap, other, heap->keys[other] + 1);
        if (b->marks[other] == size) { /* a second touch of one pair is not counted again */
            b->marks[other] = size + 1;
            if (size == 0)
                b->row[(*n_row)++] = other;
        }
    }
}

/* The lightest touch between a place and those of the clique, which are marked. None of these is used: all touches of a
 * pair are used together. */
static int64_t lightest_to(const struct bound *b, uint32_t place, uint32_t clique)
{
    const struct msl_scatter *s = b->s;
    int64_t lightest = INT64_MAX;
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++)
        if (b->above[s->touches[t].place] == clique)
            lightest = msl_lesser(lightest, s->touches[t].weight / 4);
    return lightest;
}

/* Of the row the place with the fewest free touches that touches all `size` of the clique; MSL_NOWHERE: none does. */
static uint32_t next_of_clique(const struct bound *b, uint32_t size, uint32_t n_row)
{
    const struct msl_scatter_heap *heap = &b->s->next_places;
    uint32_t next = MSL_NOWHERE;
    for (uint32_t i = 0; i < n_row; i++) {
        uint32_t place = b->row[i];
        if (heap->where[place] != MSL_NOWHERE && b->marks[place] == size)
            if (next == MSL_NOWHERE || heap->keys[place] > heap->keys[next])
                next = place;
    }
    return next;
}

static void leave_heap(struct msl_scatter_heap *heap, uint32_t place)
{
    msl_heap_change(heap, place, INT64_MAX);
    msl_heap_pull(heap);
}

/* A clique grown from the place with the fewest free touches. */
static void grow_clique(struct bound *b, uint32_t number, struct cliques *found)
{
    uint32_t place = msl_heap_pull(&b->s->next_places);
    int64_t lightest = INT64_MAX;
    uint32_t n_row = 0;
    uint32_t size = 0;
    while (place != MSL_NOWHERE) {
        lightest = msl_lesser(lightest, lightest_to(b, place, number));
        b->above[place] = number;
        join(b, place, size, &n_row);
        found->at_least[size]++;
        size++;
        place = next_of_clique(b, size, n_row);
        if (place != MSL_NOWHERE)
            leave_heap(&b->s->next_places, place);
    }
    for (uint32_t i = 0; i < n_row; i++)
        b->marks[b->row[i]] = 0;
    found->lightest = msl_lesser(found->lightest, lightest);
    found->few_kinds += lightest * equal_pairs(size, b->kinds);
}

static struct cliques part_into_cliques(struct bound *b)
{
    struct msl_scatter *s = b->s;
    struct cliques found = { .lightest = INT64_MAX, .at_least = b->up };
    uint32_t number = 0;
    msl_heap_clear(&s->next_places, s->places);
    for (uint32_t place = 0; place < s->places; place++) {
        b->marks[place] = 0;
        b->above[place] = MSL_NOWHERE;
        found.at_least[place] = 0;
        int64_t touches = 0;
        for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++)
            touches += is_loose(s, s->touches[t].place) && !is_used(s->touches[t]);
        if (is_loose(s, place))
            msl_heap_add(&s->next_places, place, -touches);
    }
    while (s->next_places.held > 0)
        grow_clique(b, number++, &found);
    return found;
}

/* Each kind by itself, as often as the others together leave no choice. */
static int64_t of_quantities(const struct bound *b, const struct cliques *cliques)
{
    int64_t pairs = 0;
    for (int64_t i = 0; i < b->kinds; i++) {
        int64_t left = b->s->left[b->s->next_kinds.items[i]];
        int64_t rest = (int64_t)b->s->n_loose - (b->left - left);
        for (uint32_t depth = 0; rest > 0; depth++) {
            int64_t here = msl_lesser(rest, cliques->at_least[depth]);
            pairs += depth * here;
            rest -= here;
        }
    }
    return cliques->lightest * pairs; /* without a touch there are no pairs */
}

/* The touches within cliques are used, or with 0 all of them are free again. */
static void use_up_cliques(const struct bound *b, uint32_t used)
{
    const struct msl_scatter *s = b->s;
    for (uint32_t i = 0; i < s->n_loose; i++)
        for (uint32_t t = s->first[s->loose[i]]; t < s->first[s->loose[i] + 1]; t++) {
            if (used == 0)
                s->touches[t].weight &= ~USED;
            else if (b->above[s->loose[i]] == b->above[s->touches[t].place])
                s->touches[t].weight |= USED;
        }
}

/* Parted again as long as that finds something. */
static int64_t of_partings(struct bound *b)
{
    int64_t least = 0;
    int64_t found = 1;
    for (int32_t i = 0; i < PARTINGS && found > 0; i++) {
        struct cliques cliques = part_into_cliques(b);
        found = msl_greater(cliques.few_kinds, of_quantities(b, &cliques));
        least += found;
        use_up_cliques(b, USED);
    }
    use_up_cliques(b, 0);
    return least;
}

/* ---- two kinds --------------------------------------------------------------------------------------------------- */

/* Trees over the loose places, each from its root on: `row` in the order of reaching, `marks` the depth, `above` the
 * place that led there and `up` the weight of the touch between. */
static void grow_tree(struct bound *b, uint32_t root)
{
    struct msl_scatter *s = b->s;
    uint32_t reached = 1;
    b->row[0] = root;
    b->marks[root] = 0;
    for (uint32_t at = 0; at < reached; at++) {
        uint32_t place = b->row[at];
        for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
            uint32_t other = s->touches[t].place;
            if (!is_loose(s, other) || b->marks[other] != MSL_NOWHERE)
                continue;
            b->marks[other] = b->marks[place] + 1;
            b->above[other] = place;
            b->up[other] = s->touches[t].weight / 4;
            b->row[reached++] = other;
        }
    }
}

/* The lightest touch of the ring that a touch closes with the ways up from its ends, which lie equally deep; 0 where
 * one was used up before, or no more steps may be walked. */
static int64_t lightest_of_ring(const struct bound *b, uint32_t one, uint32_t other, int64_t lightest, int64_t *steps)
{
    while (one != other && lightest > 0 && *steps > 0) {
        lightest = msl_lesser(lightest, msl_lesser(b->up[one], b->up[other]));
        one = b->above[one];
        other = b->above[other];
        (*steps)--;
    }
    return one == other ? lightest : 0;
}

static void use_up_ring(struct bound *b, uint32_t one, uint32_t other)
{
    while (one != other) {
        b->up[one] = 0;
        b->up[other] = 0;
        one = b->above[one];
        other = b->above[other];
    }
}

/* A touch leads a step down at most, so what closes a ring of an odd number has both ends equally deep. From its other
 * end a ring is used up already. */
static int64_t of_odd_rings(struct bound *b)
{
    struct msl_scatter *s = b->s;
    int64_t steps = 16 * ((int64_t)s->places + s->first[s->places]);
    int64_t weight = 0;
    for (uint32_t place = 0; place < s->places; place++)
        b->marks[place] = MSL_NOWHERE;
    for (uint32_t i = 0; i < s->n_loose; i++)
        if (b->marks[s->loose[i]] == MSL_NOWHERE)
            grow_tree(b, s->loose[i]);
    for (uint32_t i = 0; i < s->n_loose; i++) {
        uint32_t place = s->loose[i];
        for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
            uint32_t other = s->touches[t].place;
            if (b->marks[place] != b->marks[other])
                continue;
            int64_t lightest = lightest_of_ring(b, place, other, s->touches[t].weight / 4, &steps);
            if (lightest > 0)
                use_up_ring(b, place, other);
            weight += lightest;
        }
    }
    return weight;
}

/* Every touch between loose places. */
static int64_t of_one_kind(const struct msl_scatter *s)
{
    int64_t twice = 0;
    for (uint32_t i = 0; i < s->n_loose; i++)
        for (uint32_t t = s->first[s->loose[i]]; t < s->first[s->loose[i] + 1]; t++)
            if (is_loose(s, s->touches[t].place))
                twice += s->touches[t].weight / 4;
    return twice / 2;
}

/* ---- all together ------------------------------------------------------------------------------------------------ */

static int64_t of_loose_pairs(struct bound *b)
{
    if (b->kinds == 1)
        return of_one_kind(b->s);
    int64_t least = of_partings(b);
    return b->kinds == 2 ? msl_greater(least, of_odd_rings(b)) : least;
}

/* The kinds of which some are left, in the items of their heap. */
static void list_kinds(struct bound *b)
{
    struct msl_scatter *s = b->s;
    for (uint32_t kind = 0; kind < s->kinds; kind++) {
        b->of_kind[kind] = 0;
        b->left += s->left[kind];
        if (s->left[kind] > 0)
            s->next_kinds.items[b->kinds++] = kind;
    }
}

int64_t msl_scatter_least(struct msl_scatter *s)
{
    struct bound b = { .s = s,
                       .marks = s->troubled,
                       .above = s->trouble_of,
                       .row = (uint32_t *)s->best,
                       .up = s->marks,
                       .of_kind = s->next_kinds.keys };
    msl_scatter_clear(s);
    list_kinds(&b);
    int64_t least = of_given_pairs(s);
    for (uint32_t i = 0; i < s->n_loose; i++)
        least += of_given_around(&b, s->loose[i]);
    return least + of_loose_pairs(&b);
}
