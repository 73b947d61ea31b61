/* cutplan_search.c - first plans, then cases and repairs by turns, and what is handed out.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_search.h"

enum {
    FIRST_REPAIRS = 20, /* when the whole is solved; then as much work as the cases take */
    SUMS = 32           /* worths may be sums of so many prices of what must not be */
};

/* ---- begun ------------------------------------------------------------------------------------------------------- */

/* What any plan that matters costs less than: each piece in the dearest thing of its own. */
static int64_t more_than_all(const struct msl_cutting *cutting)
{
    const int64_t most = (int64_t)1 << 60;
    const int64_t cost = cutting->ways[0].cost;
    int64_t pieces = 0;
    for (int32_t i = 0; i < cutting->size_count; i++)
        pieces += cutting->sizes[i].count;
    return pieces < most / cost ? pieces * cost + 1 : most;
}

/* Prices of what must not be, and as many bits for worths as stay in range with them. */
static void set_prices(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    const int64_t most = (int64_t)1 << 50;
    const int64_t cost = whole->cutting->ways[0].cost;
    const int64_t most_worth = workshop->pricing.most_worth / 2 < 8 * most ? workshop->pricing.most_worth / 2 : 8 * most;
    int32_t bits = 30;
    whole->first_price = 4 * cost;
    whole->last_price = whole->making.best.cost < most / 16 ? whole->making.best.cost * 16 : most;
    while (bits > 0 && (whole->last_price > most_worth / SUMS >> bits || cost > most_worth >> bits))
        bits--;
    workshop->master.bits = bits;
}

/* First plans, and the whole as a case with the worths of area. */
static void begin(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    const struct msl_cutting *cutting = whole->cutting;
    for (int32_t i = 0; i < cutting->size_count; i++)
        whole->making.wanted[i] = cutting->sizes[i].count;
    whole->making.best.cost = more_than_all(cutting);
    msl_plan_first(&whole->making);
    set_prices(workshop);
}

/* Without a master there is only that one case. */
static void begin_cases(struct msl_workshop *workshop)
{
    const struct msl_case all = { { 0, 0, 0, 0, 0, 0, 0 }, 0, -1, 0, 0, 0, 0, 0 };
    struct msl_search *whole = &workshop->whole;
    whole->cases[0] = all;
    whole->case_count = 1;
    whole->stopped = 0;
    if (workshop->has_master)
        msl_cases_begin(whole);
}

static void area_worths(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    const struct msl_cutting *cutting = whole->cutting;
    struct msl_case *all = &whole->cases[0];
    all->worth_count = whole->worth_count = cutting->size_count + cutting->stock_count;
    all->least = msl_plain_bound(cutting, workshop->master.bits, whole->worths);
    for (int32_t i = 0; i < cutting->stock_count; i++)
        whole->worths[cutting->size_count + i] = 0;
}

/* ---- searched ---------------------------------------------------------------------------------------------------- */

/* As much work on repairs as on cases. */
static void repair_some(struct msl_workshop *workshop, int64_t *repairing)
{
    struct msl_search *whole = &workshop->whole;
    while (msl_work(whole) < whole->watch->work_limit && msl_cases_least(whole) < whole->making.best.cost &&
           (workshop->repair.tries < FIRST_REPAIRS || 2 * *repairing < msl_work(whole))) {
        const int64_t before = msl_work(whole);
        msl_repair(whole, &workshop->repair);
        *repairing += msl_work(whole) - before;
    }
}

static int64_t told_best(const struct msl_search *search)
{
    return search->making.best.count > 0 ? search->making.best.cost : INT64_MAX;
}

static void search_cases(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    const struct msl_watch *watch = whole->watch;
    struct msl_search *part = &workshop->repair.part;
    int64_t repairing = 0;
    part->first_price = whole->first_price;
    part->last_price = whole->last_price;
    part->master->steps += msl_reach_make(whole->reach, whole->cutting, whole->making.best.cost);
    while (msl_cases_step(whole)) {
        if (watch->step != NULL &&
            watch->step(watch->context, msl_work(whole), told_best(whole), msl_cases_least(whole)) != 0) {
            whole->stopped = 1;
            return;
        }
        if (whole->making.best.count > 0)
            repair_some(workshop, &repairing);
    }
}

/* ---- handed out -------------------------------------------------------------------------------------------------- */

static void free_some(const struct muslin_allocator *allocator, void *block, int32_t count, size_t size)
{
    if (block != NULL)
        allocator->free(allocator->context, block, (size_t)count * size);
}

void msl_found_free(const struct muslin_allocator *allocator, struct msl_found *found)
{
    struct msl_pool *plan = &found->plan;
    free_some(allocator, plan->patterns, plan->most_patterns, sizeof *plan->patterns);
    free_some(allocator, plan->strips, plan->most_strips, sizeof *plan->strips);
    free_some(allocator, plan->laid, plan->most_laid, sizeof *plan->laid);
    free_some(allocator, found->cases, found->case_count, sizeof *found->cases);
    free_some(allocator, found->worths, found->worth_count, sizeof *found->worths);
}

static void *take_some(const struct muslin_allocator *allocator, int32_t count, size_t size)
{
    return allocator->alloc(allocator->context, (size_t)count * size);
}

/* Takes the arrays of the answer. Returns 0, and gives back what it has, where memory is not had. */
static int take_arrays(const struct muslin_allocator *allocator, struct msl_found *found)
{
    struct msl_pool *plan = &found->plan;
    plan->patterns = take_some(allocator, plan->most_patterns, sizeof *plan->patterns);
    plan->strips = take_some(allocator, plan->most_strips, sizeof *plan->strips);
    plan->laid = take_some(allocator, plan->most_laid, sizeof *plan->laid);
    found->cases = take_some(allocator, found->case_count, sizeof *found->cases);
    found->worths = take_some(allocator, found->worth_count, sizeof *found->worths);
    if (plan->patterns != NULL && plan->strips != NULL && plan->laid != NULL && found->cases != NULL &&
        found->worths != NULL)
        return 1;
    msl_found_free(allocator, found);
    return 0;
}

/* How much the plan needs. */
static void measure(const struct msl_search *whole, struct msl_pool *plan)
{
    const struct msl_plan *best = &whole->making.best;
    plan->pattern_count = plan->strip_count = plan->laid_count = 0;
    plan->most_patterns = best->count;
    plan->most_strips = plan->most_laid = 0;
    for (int32_t i = 0; i < best->count; i++) {
        const struct msl_pattern *pattern = &whole->pool.patterns[best->rows[i].pattern];
        plan->most_strips += pattern->count;
        for (int32_t s = 0; s < pattern->count; s++)
            plan->most_laid += whole->pool.strips[pattern->first + s].count;
    }
}

static void copy_plan(const struct msl_search *whole, struct msl_pool *plan)
{
    const struct msl_plan *best = &whole->making.best;
    for (int32_t i = 0; i < best->count; i++) {
        const struct msl_pattern *from = &whole->pool.patterns[best->rows[i].pattern];
        const struct msl_pattern pattern = { best->rows[i].times, from->way, plan->strip_count, from->count, 0 };
        plan->patterns[plan->pattern_count++] = pattern;
        for (int32_t s = 0; s < from->count; s++) {
            const struct msl_strip *strip = &whole->pool.strips[from->first + s];
            const struct msl_strip copied = { strip->height, plan->laid_count, strip->count };
            plan->strips[plan->strip_count++] = copied;
            for (int32_t k = 0; k < strip->count; k++)
                plan->laid[plan->laid_count++] = whole->pool.laid[strip->first + k];
        }
    }
}

/* No case needs to be proved to cost more than the plan does. */
static void copy_cases(const struct msl_search *whole, struct msl_found *found)
{
    found->least = found->cost;
    for (int32_t i = 0; i < found->case_count; i++) {
        struct msl_case *copied = &found->cases[i];
        *copied = whole->cases[i];
        if (copied->least > found->cost)
            copied->least = found->cost;
        if (copied->split == 0 && copied->packed == 0 && copied->least < found->least)
            found->least = copied->least;
    }
    for (int32_t i = 0; i < found->worth_count; i++)
        found->worths[i] = whole->worths[i];
}

muslin_status msl_hand_out(const struct msl_workshop *workshop, struct msl_found *out)
{
    const struct msl_search *whole = &workshop->whole;
    struct msl_found found;
    if (whole->making.best.count == 0)
        return MUSLIN_ERR_NOT_ENOUGH;
    measure(whole, &found.plan);
    found.case_count = whole->case_count;
    found.worth_count = whole->worth_count;
    found.cost = whole->making.best.cost;
    found.work = msl_work(whole);
    found.bits = workshop->master.bits;
    found.stopped = whole->stopped;
    if (!take_arrays(workshop->allocator, &found))
        return MUSLIN_ERR_NO_MEMORY;
    copy_plan(whole, &found.plan);
    copy_cases(whole, &found);
    *out = found;
    return MUSLIN_OK;
}

void msl_workshop_search(struct msl_workshop *workshop)
{
    begin(workshop);
    begin_cases(workshop);
    area_worths(workshop);
    if (workshop->has_master)
        search_cases(workshop);
}

muslin_status msl_cutplan_search(const struct msl_cutting *cutting, const struct msl_watch *watch,
                                 const struct muslin_allocator *allocator, struct msl_found *out)
{
    struct msl_workshop *workshop = msl_workshop_open(cutting, watch, allocator);
    if (workshop == NULL)
        return MUSLIN_ERR_NO_MEMORY;
    msl_workshop_search(workshop);
    const muslin_status status = msl_hand_out(workshop, out);
    msl_workshop_close(workshop);
    return status;
}
