/* cutplan_sheet.c - the pattern that is worth most of a panel or a piece of stock.
 *
 * SPDX-License-Identifier: MIT
 *
 * For a room along its strips, every height of strip has its best filling, and a knapsack over heights says which
 * strips lie one behind the other. Of a panel that is done for every width that slit pieces can leave beside them, as
 * far as it may still pay: the narrower the rest, the less it is worth. */
#include "cutplan_sheet.h"

/* A sheet, what pieces are worth in it, and how many there may be in a strip. */
struct sheet {
    const struct msl_way *way;
    const int64_t *worth;
    const int64_t *most;
    int32_t first; /* only sizes first .. end - 1 are on offer */
    int32_t end;
    int32_t first_height; /* and only heights first_height .. end_height - 1 may be worth it */
    int32_t end_height;
};

/* 1 when strips so high may be worth it: some piece on offer needs just that height; a lower strip holds any others. Of
 * stacks it takes a look. */
static int is_useful(const struct msl_pricing *pricing, const struct sheet *sheet, int64_t height)
{
    const struct msl_cutting *cutting = pricing->cutting;
    for (int32_t s = sheet->first; s < sheet->end; s++) {
        const struct msl_piece_size *size = &cutting->sizes[s];
        if (sheet->most[s] > 0 && (size->along == height || size->turned_along == height))
            return 1;
    }
    return cutting->stacked;
}

static struct sheet sheet_of(struct msl_pricing *pricing, const struct msl_way *way, const int64_t *worth,
                             const int64_t *most)
{
    const struct msl_cutting *cutting = pricing->cutting;
    struct sheet sheet = {
        .way = way, .worth = worth, .most = most, .end = cutting->size_count, .end_height = cutting->height_count
    };
    while (sheet.end > 0 && most[sheet.end - 1] <= 0)
        sheet.end--;
    while (sheet.first < sheet.end && most[sheet.first] <= 0)
        sheet.first++;
    pricing->sack.steps += cutting->height_count;
    while (sheet.end_height > 0 && !is_useful(pricing, &sheet, cutting->heights[sheet.end_height - 1]))
        sheet.end_height--;
    while (sheet.first_height < sheet.end_height && !is_useful(pricing, &sheet, cutting->heights[sheet.first_height]))
        sheet.first_height++;
    return sheet;
}

static struct msl_filling strip_in(const struct sheet *sheet, int64_t height, int64_t room)
{
    const struct msl_filling filling = { height, room, sheet->worth, sheet->most, sheet->first, sheet->end, 1, 0 };
    return filling;
}

/* The most that strips can be worth, with so much room in each, and for so much along all of them. */
static int64_t rest_worth(struct msl_pricing *pricing, const struct sheet *sheet, int64_t room, int64_t along,
                          int64_t *bound)
{
    const struct msl_cutting *cutting = pricing->cutting;
    int32_t count = 0;
    for (int32_t k = sheet->first_height; k < sheet->end_height; k++) {
        const int64_t height = cutting->heights[k];
        const struct msl_filling filling = strip_in(sheet, height, room);
        int64_t worth = 0;
        if (height <= along && is_useful(pricing, sheet, height))
            msl_strip_worth(pricing, &filling, 0, &worth);
        const struct msl_item item = { .taken = height, .worth = worth, .most = (int32_t)(along / height), .size = k };
        if (worth > 0)
            pricing->heights[count++] = item;
    }
    pricing->sack.steps += sheet->end_height - sheet->first_height;
    for (int32_t i = 0; i < count; i++)
        pricing->height_counts[i] = 0;
    pricing->height_count = count;
    return msl_knapsack(&pricing->sack, pricing->heights, count, along, 0, pricing->height_counts, bound);
}

/* Sizes that may be slit; returns what all that fit are worth. */
static int64_t offer_slits(struct msl_pricing *pricing, const struct sheet *sheet)
{
    int64_t all = 0;
    pricing->slit_count = 0;
    for (int32_t s = 0; sheet->way->panel && s < pricing->cutting->size_count; s++) {
        const struct msl_piece_size *size = &pricing->cutting->sizes[s];
        const int64_t taken = msl_taken_in(size, sheet->way->along, NULL);
        const int64_t fit = taken == 0 ? 0 : sheet->way->across / taken;
        const int64_t most = fit < sheet->most[s] ? fit : sheet->most[s];
        const struct msl_item item = {
            .taken = taken, .worth = msl_worth_within(pricing, sheet->worth, s), .most = (int32_t)most, .size = s
        };
        if (!size->slit || most <= 0 || item.worth <= 0)
            continue;
        pricing->slits[pricing->slit_count++] = item;
        all += most * item.worth;
    }
    return all;
}

/* The best of what is slit and what the rest beside it is worth. The fillings of slit pieces lie in `slit`. Returns its
 * state. */
static int32_t best_beside(struct msl_pricing *pricing, const struct sheet *sheet, const struct msl_knapsack *slit,
                           struct msl_stage stage, int64_t *best, int64_t *bound)
{
    int32_t chosen = -1;
    int64_t rest = INT64_MAX / 2; /* no rest to come passes it */
    for (int32_t k = stage.first; k < stage.end; k++) {
        const struct msl_state *state = &slit->states[k];
        if (state->worth + rest <= *best)
            continue;
        const int64_t worth = state->worth + rest_worth(pricing, sheet, sheet->way->across - state->taken,
                                                        sheet->way->along, &rest);
        chosen = worth > *best ? k : chosen;
        *best = worth > *best ? worth : *best;
        *bound = state->worth + rest > *bound ? state->worth + rest : *bound;
    }
    return chosen;
}

int64_t msl_sheet_worth(struct msl_pricing *pricing, const struct msl_way *way, const int64_t *worth,
                        const int64_t *most, int64_t beat, int64_t *bound)
{
    const struct sheet sheet = sheet_of(pricing, way, worth, most);
    const int64_t all = offer_slits(pricing, &sheet);
    struct msl_knapsack slit = pricing->sack;
    int64_t best = beat;
    int complete;
    /* one half of the states for what is slit, the other for strips */
    slit.most_states /= 2;
    const struct msl_stage stage = msl_knapsack_all(&slit, pricing->slits, pricing->slit_count, way->across, &complete);
    pricing->sack.states += slit.most_states;
    pricing->sack.most_states -= slit.most_states;
    pricing->sack.steps = slit.steps;
    *bound = beat;
    const int32_t chosen = best_beside(pricing, &sheet, &slit, stage, &best, bound);
    int64_t rest;
    if (!complete) {
        rest_worth(pricing, &sheet, way->across, way->along, &rest);
        *bound = all + rest > best ? all + rest : best;
    }
    if (chosen >= 0) {
        msl_knapsack_counts(&slit, chosen, pricing->slit_count, pricing->slit_counts);
        pricing->rest = way->across - slit.states[chosen].taken;
    }
    pricing->sack.states = slit.states;
    pricing->sack.most_states += slit.most_states;
    return best;
}

/* The pieces slit from a panel, where there are any. */
static int lay_slits(struct msl_pricing *pricing, const struct msl_way *way, struct msl_pool *pool, int64_t *sum)
{
    int fits = pricing->rest == way->across || msl_pool_strip(pool, 0);
    for (int32_t i = 0; fits && i < pricing->slit_count; i++) {
        const struct msl_laid laid = { .size = pricing->slits[i].size, .count = pricing->slit_counts[i] };
        if (laid.count > 0)
            fits = msl_pool_lay(pool, laid);
        pricing->left[laid.size] -= laid.count;
        *sum += laid.count * pricing->slits[i].worth;
    }
    return fits;
}

/* Lays strips as they were found, along what is left of the sheet, until one after the first is no more worth what it
 * was found to be: pieces for it run out. Returns 0 where the pool is full. */
static int lay_found(struct msl_pricing *pricing, const struct sheet *sheet, struct msl_pool *pool, int64_t *along,
                     int64_t *sum)
{
    const int64_t whole = *along;
    for (int32_t i = 0; i < pricing->height_count; i++) {
        const struct msl_item *height = &pricing->heights[i];
        const struct msl_filling filling = strip_in(sheet, height->taken, pricing->rest);
        for (int32_t n = 0; n < pricing->height_counts[i]; n++) {
            int64_t bound;
            const int64_t found = msl_strip_worth(pricing, &filling, 0, &bound);
            if (found < height->worth && *along < whole)
                return 1;
            if (!msl_strip_lay(pricing, pool, sum))
                return 0;
            *along -= height->taken;
        }
    }
    return 1;
}

int msl_sheet_lay(struct msl_pricing *pricing, const struct msl_way *way, const int64_t *worth, const int64_t *most,
                  struct msl_pool *pool, int64_t *sum)
{
    const struct sheet sheet = sheet_of(pricing, way, worth, most);
    int64_t along = way->along;
    int64_t bound;
    int fits = lay_slits(pricing, way, pool, sum);
    /* what can be had along the sheet, and then along its rest of the pieces that are left */
    while (fits && rest_worth(pricing, &sheet, pricing->rest, along, &bound) > 0)
        fits = lay_found(pricing, &sheet, pool, &along, sum);
    return fits;
}
