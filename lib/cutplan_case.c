/* cutplan_case.c - cases are solved, the one with the least bound first, and closed or split in two.
 *
 * SPDX-License-Identifier: MIT */
#include "muslin/cutplan.h"

#include "cutplan_clear.h"
#include "cutplan_split.h"

enum {
    STUCK = 4,        /* rounds in which the master came to no end, until the case is taken as it is */
    PLUNGE = 8,       /* so many cases of ... */
    PLUNGE_EVERY = 64,/* ... each are solved straight down */
    ROUND_EVERY = 16  /* cases between plans made from levels */
};

int64_t msl_work(const struct msl_search *search)
{
    return search->master->steps + search->pricing->sack.steps + search->packing->steps;
}

void msl_search_turn_to(struct msl_search *search)
{
    search->master->cutting = search->cutting;
    search->master->pool = &search->pool;
    search->master->scan_from = 0;
    search->pricing->cutting = search->cutting;
}

/* ---- which is next ----------------------------------------------------------------------------------------------- */

/* The least bound first, then the deeper, then the older. */
static int before(const struct msl_search *search, int32_t one, int32_t other)
{
    const struct msl_case *a = &search->cases[one];
    const struct msl_case *b = &search->cases[other];
    if (a->least != b->least)
        return a->least < b->least;
    if (search->open[one].depth != search->open[other].depth)
        return search->open[one].depth > search->open[other].depth;
    return one < other;
}

static void put_into_heap(struct msl_search *search, int32_t number)
{
    int32_t at = search->heap_count++;
    for (; at > 0 && before(search, number, search->heap[(at - 1) / 2]); at = (at - 1) / 2)
        search->heap[at] = search->heap[(at - 1) / 2];
    search->heap[at] = number;
}

static int32_t take_from_heap(struct msl_search *search)
{
    const int32_t top = search->heap[0];
    const int32_t last = search->heap[--search->heap_count];
    int32_t at = 0;
    for (;;) {
        int32_t down = 2 * at + 1;
        if (down + 1 < search->heap_count && before(search, search->heap[down + 1], search->heap[down]))
            down++;
        if (down >= search->heap_count || !before(search, search->heap[down], last))
            break;
        search->heap[at] = search->heap[down];
        at = down;
    }
    search->heap[at] = last;
    return top;
}

/* The case that comes next was made with another one, which is in the heap and bounded alike. */
int64_t msl_cases_least(const struct msl_search *search)
{
    const int64_t least = msl_lesser(search->making.best.cost, search->aside);
    return search->heap_count == 0 ? least : msl_lesser(least, search->cases[search->heap[0]].least);
}

/* ---- a case made ------------------------------------------------------------------------------------------------- */

static void add_case(struct msl_search *search, int32_t parent, const struct msl_limit *limit, int64_t least)
{
    const int depth = parent < 0 ? 0 : search->open[parent].depth + 1;
    const struct msl_case made = { .limit = *limit, .least = least, .parent = parent };
    const struct msl_open open = { .first_basic = search->basic_count,
                                   .basic_count = (int16_t)search->master->row_count,
                                   .depth = (int16_t)depth };
    search->cases[search->case_count] = made;
    search->open[search->case_count++] = open;
}

static void keep_basis(struct msl_search *search)
{
    for (int32_t i = 0; i < search->master->row_count; i++) {
        const struct msl_basic *basic = &search->master->basis[i];
        const int32_t column = basic->column < 0 ? MSL_FIRST_SLACK - 1 - basic->column : basic->column;
        search->bases[search->basic_count++] = (uint16_t)(2 * column + basic->against);
    }
}

/* 1 when a case with one limit more is still within what master and search hold. */
static int may_be_split(const struct msl_search *search, int32_t number)
{
    return !search->full && search->master->row_count < search->most_rows &&
           search->open[number].depth < search->most_depth;
}

/* 1 when there is room for two parts of a case. */
static int has_room(struct msl_search *search)
{
    if (search->case_count + 2 > search->most_cases ||
        search->basic_count + search->master->row_count > search->most_basics)
        search->full = 1;
    return !search->full;
}

static void leave_aside(struct msl_search *search, const struct msl_case *solved)
{
    if (solved->least < search->aside)
        search->aside = solved->least;
}

/* Two parts of a case. */
static void split_case(struct msl_search *search, int32_t number, const struct msl_split *split)
{
    const int64_t least = search->cases[number].least;
    const int32_t lower = search->case_count;
    struct msl_limit limit = split->limit;
    limit.at_least = 0;
    add_case(search, number, &limit, least);
    limit.at_least = 1;
    limit.wanted++;
    add_case(search, number, &limit, least);
    search->open[number].part = split->part;
    keep_basis(search);
    search->cases[number].split = lower;
    if (search->solved % PLUNGE_EVERY >= PLUNGE) {
        put_into_heap(search, lower);
        put_into_heap(search, lower + 1);
    } else { /* straight down for a while: that is how plans are found */
        put_into_heap(search, split->upper ? lower : lower + 1);
        search->next = split->upper ? lower + 1 : lower;
    }
}

/* ---- a case loaded ----------------------------------------------------------------------------------------------- */

static int same_row(const struct msl_limit *a, const struct msl_limit *b)
{
    return a->kind == b->kind && a->first_way == b->first_way && a->last_way == b->last_way && a->size == b->size &&
           a->at_least == b->at_least;
}

/* Rows of sizes and of stock. */
static void set_first_rows(struct msl_search *search)
{
    const struct msl_cutting *cutting = search->cutting;
    struct msl_master *master = search->master;
    for (int32_t i = 0; i < cutting->size_count; i++) {
        const struct msl_limit limit = {
            .wanted = search->making.wanted[i], .kind = MSL_LIMIT_SIZE, .size = i, .at_least = 1
        };
        master->limits[i] = limit;
    }
    master->row_count = cutting->size_count;
    for (int32_t i = 0; i < cutting->stock_count; i++) {
        const struct msl_limit limit = { .wanted = cutting->available[i], .kind = MSL_LIMIT_STOCK, .first_way = i };
        if (cutting->available[i] < INT64_MAX)
            master->limits[master->row_count++] = limit;
    }
}

/* Rows of the case's limits: one that is stricter takes the place of the one before it. */
static void set_rows(struct msl_search *search, int32_t number)
{
    struct msl_master *master = search->master;
    int32_t count = 0;
    set_first_rows(search);
    const int32_t first = master->row_count;
    for (int32_t at = number; at > 0; at = search->cases[at].parent)
        search->chain[count++] = at;
    search->chain_count = count;
    for (int32_t i = 0; i < count; i++) {
        const struct msl_limit *limit = &search->cases[search->chain[count - 1 - i]].limit;
        int32_t row = first;
        while (row < master->row_count && !same_row(&master->limits[row], limit))
            row++;
        for (int32_t k = 0; k < i; k++)
            if (search->row_of[k] == row)
                search->row_of[k] = -1;
        search->row_of[i] = row;
        master->limits[row] = *limit;
        master->row_count += row == master->row_count;
    }
}

/* Slack in all rows, from a row on. */
static void set_slacks(struct msl_master *master, int32_t from)
{
    for (int32_t row = from; row < master->row_count; row++) {
        master->basis[row].column = -1 - row;
        master->basis[row].against = 0;
    }
}

/* A basis of slacks, of which those of the sizes are against what is wanted. */
static void start_anew(struct msl_master *master)
{
    set_slacks(master, 0);
    for (int32_t row = 0; row < master->cutting->size_count; row++)
        master->basis[row].against = 1;
    msl_master_load(master);
}

static void load(struct msl_master *master)
{
    if (!msl_master_load(master))
        start_anew(master);
}

static void load_case(struct msl_search *search, int32_t number)
{
    const struct msl_open *open = &search->open[number];
    struct msl_master *master = search->master;
    set_rows(search, number);
    for (int32_t i = 0; i < open->basic_count; i++) {
        const int32_t column = search->bases[open->first_basic + i] / 2;
        master->basis[i].against = search->bases[open->first_basic + i] % 2;
        master->basis[i].column = column < MSL_FIRST_SLACK ? column : MSL_FIRST_SLACK - 1 - column;
    }
    set_slacks(master, open->basic_count);
    load(master);
}

/* ---- a case solved ----------------------------------------------------------------------------------------------- */

/* 1 when two patterns hold the same pieces in the same strips. */
static int are_equal(const struct msl_pool *pool, const struct msl_pattern *a, const struct msl_pattern *b)
{
    if (a->way != b->way || a->count != b->count)
        return 0;
    for (int32_t s = 0; s < a->count; s++) {
        const struct msl_strip *of_a = &pool->strips[a->first + s];
        const struct msl_strip *of_b = &pool->strips[b->first + s];
        if (of_a->height != of_b->height || of_a->count != of_b->count)
            return 0;
        for (int32_t i = 0; i < of_a->count; i++) {
            const struct msl_laid *in_a = &pool->laid[of_a->first + i];
            const struct msl_laid *in_b = &pool->laid[of_b->first + i];
            if (in_a->size != in_b->size || in_a->count != in_b->count)
                return 0;
        }
    }
    return 1;
}

/* 1 when the last pattern of the pool is there already: what it seemed to be worth more is rounding. */
static int is_known(struct msl_search *search)
{
    const struct msl_pool *pool = &search->pool;
    const struct msl_pattern *last = &pool->patterns[pool->pattern_count - 1];
    search->master->steps += pool->pattern_count / 4;
    for (int32_t i = 0; i < pool->pattern_count - 1; i++)
        if (are_equal(pool, &pool->patterns[i], last))
            return 1;
    return 0;
}

/* A pattern of each way that is worth more than it costs. Returns how many; -1 where the pool is full. */
static int32_t price_all(struct msl_search *search)
{
    struct msl_master *master = search->master;
    const int64_t hair = 1 + ((int64_t)1 << master->bits >> 13);
    int32_t found = 0;
    for (int32_t way = 0; way < search->cutting->way_count; way++) {
        const int64_t *worth = master->way_worth + (int64_t)way * search->cutting->size_count;
        const int64_t beat = master->way_fixed[way] + hair;
        int32_t made = -1;
        if (!msl_price(search->pricing, way, worth, search->making.wanted, beat > 0 ? beat : 0, &search->pool, &made,
                       &search->most_of[way]))
            return -1;
        if (made >= 0 && is_known(search))
            msl_pool_undo(&search->pool);
        else
            found += made >= 0;
    }
    return found;
}

/* Keeps the worths of the case that is being solved. Returns 0 where there is no room. */
static int keep_worths(struct msl_search *search, struct msl_case *kept)
{
    const struct msl_cutting *cutting = search->cutting;
    const int64_t *worth = search->master->worth;
    const int32_t count = cutting->size_count + cutting->stock_count + search->chain_count;
    int32_t row = cutting->size_count;
    if (search->worths == NULL)
        return 1;
    if (kept->worth_count == 0) {
        if (search->worth_count + count > search->most_worths)
            return 0;
        kept->first_worth = search->worth_count;
        kept->worth_count = count;
        search->worth_count += count;
    }
    int64_t *worths = search->worths + kept->first_worth;
    for (int32_t i = 0; i < cutting->size_count; i++)
        *worths++ = worth[i];
    for (int32_t i = 0; i < cutting->stock_count; i++)
        *worths++ = cutting->available[i] < INT64_MAX ? worth[row++] : 0;
    for (int32_t i = 0; i < search->chain_count; i++)
        *worths++ = search->row_of[i] < 0 ? 0 : worth[search->row_of[i]];
    return 1;
}

static void prove(struct msl_search *search, struct msl_case *proved)
{
    const int64_t bound = msl_bound(search->master, search->most_of, search->pricing->most_worth,
                                    search->making.best.cost, search->reach);
    if (bound <= proved->least)
        return;
    if (keep_worths(search, proved))
        proved->least = bound;
    else
        search->full = 1;
}

int msl_cases_tell(struct msl_search *whole)
{
    const struct msl_watch *watch = whole->watch;
    const int64_t best = whole->making.best.count > 0 ? whole->making.best.cost : INT64_MAX;
    whole->told_work = msl_work(whole);
    if (watch->step == NULL || watch->step(watch->context, whole->told_work, best, whole->told_least) == 0)
        return 1;
    whole->stopped = MUSLIN_CUTPLAN_STOPPED_PROGRESS;
    return 0;
}

/* Within a case, whose bound is not known yet, the last one is told again. Returns 0 when that ends the search. */
static int go_on_within(struct msl_search *search)
{
    struct msl_search *whole = search->whole;
    const int64_t every = whole->watch->every;
    if (every == 0 || msl_work(whole) - whole->told_work < every || msl_cases_tell(whole))
        return 1;
    search->stopped = MUSLIN_CUTPLAN_STOPPED_PROGRESS;
    return 0;
}

static void raise_price(struct msl_search *search)
{
    int64_t *price = &search->master->price_against;
    *price = *price < search->last_price / 8 ? *price * 8 : search->last_price;
}

/* Patterns are added until none pays, or the case is closed. Returns 0 when the search is stopped. */
static int solve(struct msl_search *search, struct msl_case *solved)
{
    struct msl_master *master = search->master;
    const int64_t nothing = (int64_t)1 << (master->point - 12);
    int32_t stuck = 0;
    master->price_against = search->first_price;
    while (solved->least < search->making.best.cost) {
        if (msl_work(search) >= search->watch->work_limit) {
            search->stopped = MUSLIN_CUTPLAN_STOPPED_WORK;
            return 0;
        }
        if (!go_on_within(search))
            return 0;
        const int precise = msl_master_improve(master);
        const int32_t found = price_all(search);
        if (found < 0) {
            search->stopped = MUSLIN_CUTPLAN_STOPPED_MEMORY;
            return 0;
        }
        prove(search, solved);
        if (found == 0 && (master->price_against >= search->last_price || msl_master_against(master) < nothing))
            break;
        if (found == 0)
            raise_price(search);
        if (precise)
            continue;
        start_anew(master);
        if (++stuck == STUCK)
            break;
    }
    return 1;
}

/* Plans from what the master says, while there is none at all every time: of the whole several. */
static void round_levels(struct msl_search *search)
{
    if (search->solved % ROUND_EVERY != 1 && search->making.best.count > 0)
        return;
    msl_plan_round(&search->making, search->master, 0);
    if (search->solved > 1 || search->worths == NULL)
        return;
    msl_plan_round(&search->making, search->master, 16);
    msl_plan_round(&search->making, search->master, 32);
}

/* Closes the case, splits it, or leaves it aside. */
static void go_on_from(struct msl_search *search, int32_t number)
{
    struct msl_case *solved = &search->cases[number];
    struct msl_split split;
    round_levels(search);
    if (solved->least >= search->making.best.cost)
        return;
    msl_levels_find(search);
    if (!msl_split_choose(search, &split)) {
        const int found = msl_split_pack(search, solved, &split);
        if (solved->least >= search->making.best.cost || solved->packed)
            return;
        if (!found) {
            leave_aside(search, solved);
            return;
        }
    }
    if (may_be_split(search, number) && has_room(search))
        split_case(search, number, &split);
    else
        leave_aside(search, solved);
}

void msl_cases_begin(struct msl_search *search)
{
    const struct msl_limit none = { 0 };
    msl_search_turn_to(search);
    search->case_count = search->heap_count = search->worth_count = search->basic_count = 0;
    search->solved = 0;
    search->stopped = search->full = 0;
    search->aside = INT64_MAX;
    search->next = -1;
    for (int32_t i = 0; i < 2 * search->cutting->way_count; i++)
        search->gains[i].sum = search->gains[i].count = 0;
    for (int32_t way = 0; way < search->cutting->way_count; way++)
        msl_pool_add(&search->pool, way, search->cutting->ways[way].along, NULL, NULL, 0);
    set_first_rows(search);
    start_anew(search->master);
    add_case(search, -1, &none, 0);
    keep_basis(search);
    put_into_heap(search, 0);
}

/* The case to be solved next, taken from where it waits; -1: none can hold a better plan. */
static int32_t take_next(struct msl_search *search)
{
    const int64_t best = search->making.best.cost;
    const int32_t next = search->next;
    search->next = -1;
    if (next >= 0 && search->cases[next].least < best)
        return next;
    if (search->heap_count == 0 || search->cases[search->heap[0]].least >= best)
        return -1;
    return take_from_heap(search);
}

int msl_cases_step(struct msl_search *search)
{
    const int32_t number = take_next(search);
    if (number < 0)
        return 0;
    msl_search_clear(search);
    load_case(search, number);
    search->solved++;
    if (!solve(search, &search->cases[number])) {
        put_into_heap(search, number);
        return 0;
    }
    msl_split_learn(search, number);
    if (search->cases[number].least < search->making.best.cost)
        go_on_from(search, number);
    return search->stopped == 0;
}
