/* cutplan_knapsack.c - the pieces that are worth most in one strip.
 *
 * SPDX-License-Identifier: MIT
 *
 * States are what is taken of the strip and what it is worth, for the pieces looked at so far; of two states the one
 * that takes more and is not worth more is dropped. So time follows the sums that occur, not the ticks of the width.
 * A size's pieces are offered in lots of 1, 2, 4 and so on, whose sums are all counts up to the most. A state also goes
 * when filling the rest with the next best worth per length would not bring it above what is to be beaten, or above
 * what another state has reached already. */
#include "cutplan_knapsack.h"

enum { LOT_MAX = 16384 };

/* What is worth most for its length first, then the longer. Parts of the worth per length below 1 are compared
 * crosswise: they are less than a length. */
static int denser(const struct msl_item *a, const struct msl_item *b)
{
    if (a->dense != b->dense)
        return a->dense > b->dense;
    const int64_t left = (a->worth - a->dense * a->taken) * b->taken;
    const int64_t right = (b->worth - b->dense * b->taken) * a->taken;
    return left > right || (left == right && a->taken > b->taken);
}

static void sort_items(struct msl_item *items, int32_t count)
{
    for (int32_t i = 0; i < count; i++) {
        struct msl_item item = items[i];
        int32_t at = i;
        item.dense = item.worth / item.taken;
        for (; at > 0 && denser(&item, &items[at - 1]); at--)
            items[at] = items[at - 1];
        items[at] = item;
    }
}

struct fill {
    struct msl_knapsack *sack;
    int64_t room;
    int64_t least;      /* a state that can't come to be worth this is not kept */
    int64_t next_dense; /* of what may still come, the best worth per length, up */
    int64_t lost;       /* what states that were lost could have been worth */
    int32_t for_all;    /* 1: states are kept whatever others are worth */
};

/* Adds a state to the stage at the end of the arena, whose others take no more. */
static void push(struct fill *fill, int32_t first, const struct msl_state *state)
{
    struct msl_knapsack *sack = fill->sack;
    const int alone = sack->used == first;
    const struct msl_state *last = sack->states + sack->used - 1;
    if (!alone && last->worth >= state->worth)
        return;
    const int64_t reach = state->worth + (fill->room - state->taken) * fill->next_dense;
    if (reach < fill->least)
        return;
    if (!alone && last->taken == state->taken)
        sack->used--;
    if (sack->used == sack->most_states) {
        fill->lost = msl_greater(reach, fill->lost);
        return;
    }
    sack->states[sack->used++] = *state;
    if (!fill->for_all)
        fill->least = msl_greater(state->worth, fill->least);
}

/* The states `without` beside those `with` and one lot of an item more, in one order. */
static struct msl_stage offer(struct fill *fill, struct msl_stage without, struct msl_stage with,
                              const struct msl_state *lot)
{
    const struct msl_state *states = fill->sack->states;
    struct msl_stage made = { fill->sack->used, 0 };
    int32_t i = without.first;
    fill->sack->steps += without.end - without.first + with.end - with.first;
    for (int32_t j = with.first; j < with.end; j++) {
        const struct msl_state more = { states[j].taken + lot->taken, states[j].worth + lot->worth, j, lot->item,
                                        lot->copies };
        if (more.taken > fill->room)
            break;
        for (; i < without.end && states[i].taken <= more.taken; i++)
            push(fill, made.first, &states[i]);
        push(fill, made.first, &more);
    }
    for (; i < without.end; i++)
        push(fill, made.first, &states[i]);
    made.end = fill->sack->used;
    return made;
}

/* From here on items `at` and later come. */
static void next_is(struct fill *fill, const struct msl_item *items, int32_t at, int32_t count)
{
    fill->next_dense = at < count ? items[at].dense + 1 : 0;
}

/* Lots of an item, over states that have its run-in. */
static struct msl_stage add_lots(struct fill *fill, const struct msl_item *items, int32_t at, int32_t count,
                                 struct msl_stage with)
{
    const struct msl_item *item = &items[at];
    int32_t left = item->most;
    for (int32_t lot = 1; left > 0; lot = lot < LOT_MAX ? 2 * lot : lot) {
        const int32_t copies = lot < left ? lot : left;
        const struct msl_state more = { .taken = copies * item->taken, .worth = copies * item->worth,
                                        .item = (int16_t)at, .copies = (int16_t)copies };
        left -= copies;
        next_is(fill, items, left > 0 ? at : at + 1, count);
        with = offer(fill, with, with, &more);
    }
    return with;
}

static struct msl_stage add_item(struct fill *fill, const struct msl_item *items, int32_t at, int32_t count,
                                 struct msl_stage before)
{
    if (items[at].run_in == 0)
        return add_lots(fill, items, at, count, before);
    const struct msl_state run_in = { .taken = items[at].run_in, .item = (int16_t)at };
    const struct msl_state nothing = { .item = (int16_t)at };
    const struct msl_stage none = { 0 };
    next_is(fill, items, at, count);
    const struct msl_stage with = add_lots(fill, items, at, count, offer(fill, none, before, &run_in));
    return offer(fill, before, with, &nothing);
}

/* The first so many items of all. */
static struct msl_stage fill_with(struct fill *fill, struct msl_item *items, int32_t first, int32_t count)
{
    const struct msl_state empty = { .from = -1 };
    struct msl_stage stage = { 0, 1 };
    sort_items(items, count);
    fill->sack->states[0] = empty;
    fill->sack->used = 1;
    for (int32_t at = 0; at < first; at++)
        stage = add_item(fill, items, at, count, stage);
    return stage;
}

void msl_knapsack_counts(const struct msl_knapsack *sack, int32_t state, int32_t count, int32_t *counts)
{
    for (int32_t i = 0; i < count; i++)
        counts[i] = 0;
    for (int32_t at = state; sack->states[at].from >= 0; at = sack->states[at].from)
        counts[sack->states[at].item] += sack->states[at].copies;
}

/* How many pieces of an item fit in what is left of the room. */
static int32_t fit_in(const struct msl_item *item, int64_t room)
{
    const int64_t fit = (room - item->run_in) / item->taken;
    return fit <= 0 ? 0 : (int32_t)msl_lesser(fit, item->most);
}

/* Fills the room with as much of each item as fits, in their order; where that is worth more than `beat` their counts
 * are written. Returns what is worth more. */
static int64_t fill_in_order(const struct msl_item *items, int32_t count, int64_t room, int64_t beat, int32_t *counts)
{
    int64_t left = room;
    int64_t worth = 0;
    for (int32_t i = 0; i < count; i++) {
        const int32_t fit = fit_in(&items[i], left);
        left -= fit > 0 ? items[i].run_in + fit * items[i].taken : 0;
        worth += fit * items[i].worth;
    }
    if (worth <= beat)
        return beat;
    for (int32_t i = 0; i < count; i++) {
        counts[i] = fit_in(&items[i], room);
        room -= counts[i] > 0 ? items[i].run_in + counts[i] * items[i].taken : 0;
    }
    return worth;
}

int64_t msl_knapsack(struct msl_knapsack *sack, struct msl_item *items, int32_t count, int64_t room, int64_t beat,
                     int32_t *counts, int64_t *bound)
{
    struct fill fill = { .sack = sack, .room = room, .least = beat + 1, .lost = beat };
    int64_t best = beat;
    int32_t chosen = -1;
    *bound = beat;
    if (count == 0)
        return beat;
    /* of the last item every state simply gets what fits */
    const struct msl_stage stage = fill_with(&fill, items, count - 1, count);
    const struct msl_item *last = &items[count - 1];
    for (int32_t k = stage.first; k < stage.end; k++) {
        const int64_t worth = sack->states[k].worth + fit_in(last, room - sack->states[k].taken) * last->worth;
        if (worth <= best)
            continue;
        best = worth;
        chosen = k;
    }
    sack->steps += stage.end - stage.first;
    if (chosen >= 0) {
        msl_knapsack_counts(sack, chosen, count, counts);
        counts[count - 1] += fit_in(last, room - sack->states[chosen].taken);
    }
    if (fill.lost > best)
        best = fill_in_order(items, count, room, best, counts);
    *bound = msl_greater(fill.lost, best);
    return best;
}

struct msl_stage msl_knapsack_all(struct msl_knapsack *sack, struct msl_item *items, int32_t count, int64_t room,
                                  int *complete)
{
    struct fill fill = { .sack = sack, .room = room, .lost = -1, .for_all = 1 };
    const struct msl_stage stage = fill_with(&fill, items, count, count);
    const struct msl_stage empty = { 0, 1 };
    *complete = fill.lost < 0;
    return stage.first < stage.end ? stage : empty;
}
