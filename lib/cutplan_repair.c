/* cutplan_repair.c - parts of a plan planned anew.
 *
 * SPDX-License-Identifier: MIT
 *
 * A part of a plan stays, and the same search plans what is left, with few cases: that is far smaller than the whole.
 * What stays is what the master says, in whole numbers, so that little and odd pieces are left; or the best plan but
 * for some strips, every second time such as are near each other in height. What comes out cheaper is kept. */
#include "cutplan_repair.h"

enum {
    LEAST_OUT = 5, /* strips taken out, */
    MORE_OUT = 16, /* ... up to so many more; */
    SHEET_PART = 4, /* so many strips within a sheet count as one more */
    CASES = 60,    /* for the part, */
    STEPS = 1000000, /* with sheets about so many steps at most, */
    WORK_PART = 16, /* ... and this part of what was done so far */
    NEAR = 2,      /* ways that count as near each other */
    PART_BITS = 10, /* of a level, for rounding by chance, */
    ROUNDINGS = 4  /* ... of strips by turns from all of it to an eighth */
};

static int64_t next_chance(struct msl_repair *repair, int64_t below)
{
    repair->chance = repair->chance * 6364136223846793005u + 1442695040888963407u;
    return (int64_t)((repair->chance >> 33) % (uint64_t)below);
}

/* ---- taken out --------------------------------------------------------------------------------------------------- */

/* The best plan becomes the one in the making. Returns how many things it has. */
static int64_t copy_best(struct msl_making *making)
{
    int64_t things = 0;
    msl_plan_begin(making);
    for (int32_t i = 0; i < making->best.count; i++) {
        msl_plan_put(making, making->best.rows[i].pattern, making->best.rows[i].times);
        things += making->best.rows[i].times;
    }
    return things;
}

/* The row of the thing of this number, in the order of the rows; -1: it has been taken out. */
static int32_t row_at(const struct msl_plan *plan, int64_t thing)
{
    int32_t row = 0;
    while (row < plan->count && thing >= plan->rows[row].times)
        thing -= plan->rows[row++].times;
    return row < plan->count ? row : -1;
}

/* 1 when a way is far from the first that was taken; which is remembered. */
static int is_far(struct msl_repair *repair, int32_t way, int32_t *centre)
{
    if (*centre < 0)
        *centre = way;
    const int32_t far = way > *centre ? way - *centre : *centre - way;
    return far > NEAR && next_chance(repair, 8) < far;
}

/* Some of the best plan is taken out. */
static void take_out(struct msl_search *search, struct msl_repair *repair)
{
    struct msl_making *making = &search->making;
    const int64_t things = copy_best(making);
    int64_t wanted = LEAST_OUT + repair->tries % MORE_OUT;
    const int near = repair->tries / MORE_OUT % 2 != 0;
    int32_t centre = -1;
    for (int64_t i = 4 * wanted; i > 0 && wanted > 0; i--) {
        const int32_t row = row_at(&making->plan, next_chance(repair, things));
        if (row < 0)
            continue;
        const int32_t pattern = making->plan.rows[row].pattern;
        if (near && is_far(repair, search->pool.patterns[pattern].way, &centre))
            continue;
        msl_plan_take_one(making, row);
        wanted -= 1 + search->pool.patterns[pattern].count / SHEET_PART;
    }
}

/* 1 where what the master says of a way is put into a plan: where there are sheets, strips are left to the rest. */
static int is_rounded(const struct msl_search *search, const struct msl_way *way)
{
    return way->sheet || !msl_has_sheets(search->cutting);
}

/* What the master has some of, each level rounded by chance: of sheets up or down, of strips mostly rather down, so
 * that the rest is a little more. */
static void round_levels(struct msl_search *search, struct msl_repair *repair)
{
    const struct msl_master *master = search->master;
    struct msl_making *making = &search->making;
    msl_plan_begin(making);
    for (int32_t i = 0; i < master->row_count; i++) {
        const int32_t column = master->basis[i].column;
        if (column < 0 || master->basis[i].against)
            continue;
        const struct msl_way *way = &search->cutting->ways[search->pool.patterns[column].way];
        const int64_t part = next_chance(repair, 1 << (way->sheet ? PART_BITS : PART_BITS - repair->tries % ROUNDINGS));
        const int64_t times = (master->level[i] + (part << (master->point - PART_BITS))) >> master->point;
        if (!is_rounded(search, way) || times <= 0 || (way->stock >= 0 && making->in_hand[way->stock] == 0))
            continue;
        const int64_t most = msl_plan_times(making, column);
        msl_plan_put(making, column, times < most ? times : most);
    }
}

/* ---- planned anew ------------------------------------------------------------------------------------------------ */

/* 1 when strips of this way are just as high as a size of the part, or it is no strip. */
static int is_useful(const struct msl_cutting *part, const struct msl_way *way)
{
    for (int32_t i = 0; i < part->size_count; i++)
        if (part->sizes[i].along == way->along || part->sizes[i].turned_along == way->along)
            return 1;
    return way->sheet;
}

/* Sizes that are wanted again, with their counts, and ways for them. */
static void cut_down(struct msl_search *search, struct msl_repair *repair)
{
    const struct msl_cutting *cutting = search->cutting;
    struct msl_cutting *part = &repair->cutting;
    part->size_count = part->way_count = 0;
    for (int32_t i = 0; i < cutting->stock_count; i++)
        part->available[i] = cutting->available[i] < INT64_MAX ? search->making.in_hand[i] : INT64_MAX;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        if (search->making.left[i] <= 0)
            continue;
        repair->part.making.wanted[part->size_count] = search->making.left[i];
        repair->size_of[part->size_count] = i;
        part->sizes[part->size_count] = cutting->sizes[i];
        part->sizes[part->size_count++].count = search->making.left[i];
    }
    for (int32_t i = 0; i < cutting->way_count; i++)
        if (is_useful(part, &cutting->ways[i])) {
            repair->way_of[part->way_count] = i;
            part->ways[part->way_count++] = cutting->ways[i];
        }
}

/* Searches for a plan of the part that costs less than `below`. Returns 1 when there is one. */
static int search_part(struct msl_search *part, int64_t below)
{
    part->pool.pattern_count = part->pool.strip_count = part->pool.laid_count = 0;
    part->making.best.cost = below;
    part->making.best.count = 0;
    msl_cases_begin(part);
    msl_plan_first(&part->making);
    const int64_t now = msl_work(part);
    const int64_t until = msl_has_sheets(part->cutting) ? now + STEPS + now / WORK_PART : INT64_MAX;
    while (part->solved < CASES && msl_work(part) < until && msl_cases_step(part))
        continue;
    return part->making.best.cost < below;
}

/* ---- put back ---------------------------------------------------------------------------------------------------- */

/* A strip of the part as a pattern of the whole, where its way may be a panel. */
static int32_t bring_strip_over(struct msl_search *search, const struct msl_repair *repair,
                                const struct msl_pattern *brought)
{
    const struct msl_pool *from = &repair->part.pool;
    const struct msl_strip *strip = &from->strips[brought->first];
    for (int32_t i = 0; i < strip->count; i++) {
        search->making.sizes[i] = repair->size_of[from->laid[strip->first + i].size];
        search->making.counts[i] = from->laid[strip->first + i].count;
    }
    return msl_plan_add_strip(&search->making, repair->way_of[brought->way], strip->count);
}

/* A pattern of the part as one of the whole; -1 where the pool is full. */
static int32_t bring_over(struct msl_search *search, const struct msl_repair *repair, int32_t pattern)
{
    const struct msl_pool *from = &repair->part.pool;
    const struct msl_pattern *brought = &from->patterns[pattern];
    struct msl_pool *to = &search->pool;
    if (!repair->cutting.ways[brought->way].sheet && !repair->cutting.stacked)
        return bring_strip_over(search, repair, brought);
    int room = msl_pool_begin(to, repair->way_of[brought->way]);
    for (int32_t s = 0; s < brought->count; s++) {
        const struct msl_strip *strip = &from->strips[brought->first + s];
        room = room && msl_pool_strip(to, strip->height);
        for (int32_t i = 0; i < strip->count; i++) {
            struct msl_laid laid = from->laid[strip->first + i];
            laid.size = repair->size_of[laid.size];
            room = room && msl_pool_lay(to, laid);
        }
    }
    return room ? to->pattern_count - 1 : -1;
}

static int put_back(struct msl_search *search, const struct msl_repair *repair)
{
    const struct msl_plan *better = &repair->part.making.best;
    for (int32_t i = 0; i < better->count; i++) {
        const int32_t pattern = bring_over(search, repair, better->rows[i].pattern);
        if (pattern < 0 || !msl_plan_put(&search->making, pattern, better->rows[i].times))
            return 0;
    }
    return 1;
}

/* Plans anew what has been cut down. */
static int plan_part(struct msl_search *search, struct msl_repair *repair)
{
    struct msl_making *making = &search->making;
    const int64_t below = making->best.cost - making->plan.cost;
    repair->tries++;
    const int better = below > 0 && search_part(&repair->part, below) && put_back(search, repair);
    msl_search_turn_to(search);
    return msl_plan_end(making, better);
}

int msl_repair_across(struct msl_search *search, struct msl_repair *repair)
{
    struct msl_cutting *part = &repair->cutting;
    msl_plan_begin(&search->making);
    cut_down(search, repair);
    for (int32_t i = 0; i < part->way_count; i++)
        part->ways[i].sheet = part->ways[i].panel = 0;
    return plan_part(search, repair);
}

int msl_repair(struct msl_search *search, struct msl_repair *repair)
{
    take_out(search, repair);
    cut_down(search, repair);
    return plan_part(search, repair);
}

int msl_repair_rounded(struct msl_search *search, struct msl_repair *repair)
{
    round_levels(search, repair);
    cut_down(search, repair);
    return plan_part(search, repair);
}
