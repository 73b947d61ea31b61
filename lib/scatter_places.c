/* scatter_places.c - places that touch, what lies in them, and the memory and the chance that a search needs.
 *
 * SPDX-License-Identifier: MIT */
#include "scatter_inside.h"

/* ---- memory ------------------------------------------------------------------------------------------------------ */

void *msl_scatter_take(struct msl_scatter_room *room, int64_t count, size_t each)
{
    void *block = msl_scratch(room->check, room->allocator, (uint64_t)count, each);
    if (block != NULL) {
        room->block[room->blocks] = block;
        room->count[room->blocks] = (uint64_t)count;
        room->each[room->blocks] = each;
        room->blocks++;
    }
    return block;
}

void msl_scatter_give_back(struct msl_scatter_room *room)
{
    while (room->blocks > 0) {
        room->blocks--;
        msl_scratch_free(room->allocator, room->block[room->blocks], room->count[room->blocks],
                         room->each[room->blocks]);
    }
}

/* ---- chance ------------------------------------------------------------------------------------------------------ */

/* splitmix64: Steele, Lea, Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014. */
static uint64_t next_chance(uint64_t *state)
{
    *state += UINT64_C(0x9E3779B97F4A7C15);
    uint64_t z = *state;
    z = (z ^ (z >> 30)) * UINT64_C(0xBF58476D1CE4E5B9);
    z = (z ^ (z >> 27)) * UINT64_C(0x94D049BB133111EB);
    return z ^ (z >> 31);
}

uint32_t msl_chance(uint64_t *state, uint32_t n)
{
    return (uint32_t)((next_chance(state) >> 32) * n >> 32);
}

/* ---- a heap ------------------------------------------------------------------------------------------------------ */

void msl_heap_take(struct msl_scatter_heap *heap, struct msl_scatter_room *room, uint32_t n)
{
    heap->items = msl_scatter_take(room, n, sizeof *heap->items);
    heap->where = msl_scatter_take(room, n, sizeof *heap->where);
    heap->keys = msl_scatter_take(room, n, sizeof *heap->keys);
}

void msl_heap_clear(struct msl_scatter_heap *heap, uint32_t n)
{
    heap->held = 0;
    for (uint32_t item = 0; item < n; item++)
        heap->where[item] = MSL_NOWHERE;
}

static void set_at(struct msl_scatter_heap *heap, uint32_t at, uint32_t item)
{
    heap->items[at] = item;
    heap->where[item] = at;
}

static void rise(struct msl_scatter_heap *heap, uint32_t at, uint32_t item)
{
    while (at > 0 && heap->keys[heap->items[(at - 1) / 2]] < heap->keys[item]) {
        set_at(heap, at, heap->items[(at - 1) / 2]);
        at = (at - 1) / 2;
    }
    set_at(heap, at, item);
}

/* From the top: behind those that are held the item still stands, so that there is always a second one below. */
static void sink(struct msl_scatter_heap *heap, uint32_t item)
{
    uint32_t at = 0;
    uint32_t below = 1;
    while (below < heap->held) {
        if (heap->keys[heap->items[below]] < heap->keys[heap->items[below + 1]])
            below++;
        if (heap->keys[heap->items[below]] <= heap->keys[item])
            break;
        set_at(heap, at, heap->items[below]);
        at = below;
        below = 2 * at + 1;
    }
    set_at(heap, at, item);
}

void msl_heap_add(struct msl_scatter_heap *heap, uint32_t item, int64_t key)
{
    heap->keys[item] = key;
    rise(heap, heap->held++, item);
}

uint32_t msl_heap_pull(struct msl_scatter_heap *heap)
{
    uint32_t first = heap->items[0];
    uint32_t last = heap->items[--heap->held];
    sink(heap, last);
    heap->where[first] = MSL_NOWHERE;
    return first;
}

void msl_heap_change(struct msl_scatter_heap *heap, uint32_t item, int64_t key)
{
    heap->keys[item] = key;
    rise(heap, heap->where[item], item);
}

/* ---- places that touch ------------------------------------------------------------------------------------------- */

void msl_scatter_start(struct msl_scatter *s, struct msl_scatter_room *room)
{
    s->first = msl_scatter_take(room, (int64_t)s->places + 2, sizeof *s->first);
    s->left = msl_scatter_take(room, s->kinds, sizeof *s->left);
    s->laid = msl_scatter_take(room, s->places, sizeof *s->laid);
    s->best = msl_scatter_take(room, s->places, sizeof *s->best);
    s->loose = msl_scatter_take(room, s->places, sizeof *s->loose);
    s->troubled = msl_scatter_take(room, s->places, sizeof *s->troubled);
    s->trouble_of = msl_scatter_take(room, s->places, sizeof *s->trouble_of);
    s->marks = msl_scatter_take(room, s->places, sizeof *s->marks);
    msl_heap_take(&s->next_places, room, s->places);
    msl_heap_take(&s->next_kinds, room, s->kinds);
    if (room->check->status != MUSLIN_OK)
        return;
    for (uint32_t place = 0; place <= s->places + 1; place++)
        s->first[place] = 0;
    for (uint32_t place = 0; place < s->places; place++)
        if (!msl_scatter_is_given(s, place))
            s->loose[s->n_loose++] = place;
}

/* Counts stand two entries behind their place, so that putting, which counts up the entry before that, leaves each
 * place's first touch in its own. */
void msl_scatter_count(struct msl_scatter *s, uint32_t a, uint32_t b)
{
    s->first[a + 2]++;
    s->first[b + 2]++;
}

void msl_scatter_counted(struct msl_scatter *s, struct msl_scatter_room *room)
{
    for (uint32_t place = 0; place < s->places; place++)
        s->first[place + 2] += s->first[place + 1];
    s->touches = msl_scatter_take(room, s->first[s->places + 1], sizeof *s->touches);
}

static void put_end(struct msl_scatter *s, uint32_t place, uint32_t other, uint32_t weight)
{
    struct msl_touch *touch = &s->touches[s->first[place + 1]++];
    touch->place = other;
    touch->weight = weight;
}

void msl_scatter_put(struct msl_scatter *s, uint32_t a, uint32_t b, uint32_t weight, uint32_t edge_of_a)
{
    put_end(s, a, b, 4 * weight + edge_of_a);
    put_end(s, b, a, 4 * weight + (edge_of_a ^ 2));
}

/* ---- what lies in them ------------------------------------------------------------------------------------------- */

int msl_scatter_is_given(const struct msl_scatter *s, uint32_t place)
{
    return s->given != NULL && s->given[place] >= 0;
}

void msl_scatter_clear(struct msl_scatter *s)
{
    for (uint32_t kind = 0; kind < s->kinds; kind++)
        s->left[kind] = s->stock[kind] < s->places ? s->stock[kind] : s->places;
    for (uint32_t place = 0; place < s->places; place++) {
        s->laid[place] = -1;
        if (msl_scatter_is_given(s, place)) {
            s->laid[place] = (int32_t)(4 * s->given[place]);
            s->left[s->given[place]]--;
        }
    }
}

/* The print at an edge of a block that lies turned clockwise. */
static int32_t print_at(const struct msl_scatter *s, int32_t one, uint32_t edge)
{
    uint32_t lies = (uint32_t)one;
    return s->edges[(lies & ~UINT32_C(3)) + ((edge - lies) & 3)];
}

int msl_scatter_meets(const struct msl_scatter *s, int32_t one, int32_t other, uint32_t edge_of_one)
{
    if (s->edges == NULL)
        return one == other;
    if (other < 0)
        return 0;
    int32_t print = print_at(s, one, edge_of_one);
    return print >= 0 && print == print_at(s, other, edge_of_one ^ 2);
}

int64_t msl_scatter_weight(struct msl_scatter *s, uint32_t place, int32_t one)
{
    int64_t weight = 0;
    for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++)
        if (msl_scatter_meets(s, one, s->laid[s->touches[t].place], s->touches[t].weight & 3))
            weight += s->touches[t].weight / 4;
    s->work += 1 + (int64_t)(s->first[place + 1] - s->first[place]);
    return weight;
}

int64_t msl_scatter_lay(struct msl_scatter *s, uint32_t place, uint32_t kind)
{
    uint32_t step = s->edges == NULL ? 4 : s->turn_step[kind];
    uint32_t start = step == 4 ? 0 : msl_chance(&s->chance, 4 / step) * step;
    int64_t least = INT64_MAX;
    for (uint32_t turned = 0; turned < 4; turned += step) {
        int32_t one = (int32_t)(4 * kind + (start + turned) % 4);
        int64_t weight = msl_scatter_weight(s, place, one);
        if (weight < least) {
            least = weight;
            s->laid[place] = one;
        }
    }
    return least;
}

int64_t msl_scatter_lift(struct msl_scatter *s, uint32_t place)
{
    int64_t weight = msl_scatter_weight(s, place, s->laid[place]);
    s->laid[place] = -1;
    return weight;
}

/* ---- the answer -------------------------------------------------------------------------------------------------- */

void msl_scatter_result(struct msl_scatter *s, struct muslin_scattered *result)
{
    for (uint32_t place = 0; place < s->places; place++)
        for (uint32_t t = s->first[place]; t < s->first[place + 1]; t++) {
            struct msl_touch touch = s->touches[t];
            if (place < touch.place && msl_scatter_meets(s, s->best[place], s->best[touch.place], touch.weight & 3)) {
                result->touching += touch.weight / 4;
                result->pairs++;
            }
        }
    result->least = s->least;
    result->work = s->work;
    result->proven = result->touching == result->least;
}
