/* cutplan_search.c - first plans, then cases and repairs by turns, and what is handed out.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_search.h"

#include "muslin/cutplan.h"

#include "quilt_store.h"

enum {
    FIRST_REPAIRS = 20, /* when the whole is solved; then as much work as the cases take */
    LAST_REPAIRS = 400, /* when no case is left */
    FEWEST_STEPS = 1 << 24, /* for first plans, at least, */
    MOST_STEPS = 1 << 28,   /* ... and at most: about a second */
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
    const int64_t half = workshop->pricing.most_worth / 2;
    const int64_t most_worth = msl_lesser(half, 8 * most);
    int32_t bits = 30;
    whole->first_price = 4 * cost;
    whole->last_price = msl_lesser(whole->making.best.cost, most / 16) * 16;
    while (bits > 0 && whole->last_price + cost > most_worth / SUMS >> bits)
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
    const int64_t limit = whole->watch->work_limit;
    whole->making.first_steps = limit < FEWEST_STEPS ? FEWEST_STEPS : limit < MOST_STEPS ? limit : MOST_STEPS;
    whole->making.best.cost = more_than_all(cutting);
    msl_plan_first(&whole->making);
    set_prices(workshop);
}

/* Without a master there is only that one case. */
static void begin_cases(struct msl_workshop *workshop)
{
    static const struct msl_case all = { .parent = -1 };
    struct msl_search *whole = &workshop->whole;
    whole->cases[0] = all;
    whole->case_count = 1;
    whole->stopped = whole->full = 0;
    if (workshop->has_master)
        msl_cases_begin(whole);
}

static void area_worths(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    const struct msl_cutting *cutting = whole->cutting;
    struct msl_case *all = &whole->cases[0];
    all->worth_count = whole->worth_count = cutting->size_count + cutting->stock_count;
    all->least = whole->told_least = msl_plain_bound(cutting, workshop->master.bits, whole->worths);
    whole->told_work = 0;
    for (int32_t i = 0; i < cutting->stock_count; i++)
        whole->worths[cutting->size_count + i] = 0;
}

/* ---- searched ---------------------------------------------------------------------------------------------------- */

/* 1 when repairs may still go on beside the cases: as much work on them. */
static int is_their_turn(const struct msl_workshop *workshop, int64_t repairing)
{
    const struct msl_search *whole = &workshop->whole;
    return whole->stopped == 0 && msl_work(whole) < whole->watch->work_limit &&
           msl_cases_least(whole) < whole->making.best.cost &&
           (workshop->repair.tries < FIRST_REPAIRS || 2 * repairing < msl_work(whole));
}

/* The levels of the case just solved make a plan, then the best plan is repaired. */
static void repair_some(struct msl_workshop *workshop, int64_t *repairing)
{
    struct msl_search *whole = &workshop->whole;
    const int64_t on_cases = msl_work(whole) - *repairing;
    if (is_their_turn(workshop, *repairing))
        msl_repair_rounded(whole, &workshop->repair);
    while (whole->making.best.count > 0 && is_their_turn(workshop, msl_work(whole) - on_cases))
        msl_repair(whole, &workshop->repair);
    *repairing = msl_work(whole) - on_cases;
}

/* Between two cases the bound is known. Returns 0 when the search ends here, or was ended within a repair. */
static int go_on(struct msl_search *whole)
{
    whole->told_least = msl_cases_least(whole);
    return whole->stopped == 0 && msl_cases_tell(whole);
}

/* No case can be split any more, and the plan is not proven: so many repairs more. */
static void repair_on(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    int32_t tries = 0;
    for (; tries < LAST_REPAIRS && msl_work(whole) < whole->watch->work_limit &&
           msl_cases_least(whole) < whole->making.best.cost; tries++) {
        msl_repair(whole, &workshop->repair);
        if (!go_on(whole))
            return;
    }
    if (msl_cases_least(whole) >= whole->making.best.cost || whole->stopped != 0)
        return;
    if (tries < LAST_REPAIRS)
        whole->stopped = MUSLIN_CUTPLAN_STOPPED_WORK;
    else
        whole->stopped = whole->full ? MUSLIN_CUTPLAN_STOPPED_MEMORY : MUSLIN_CUTPLAN_STOPPED_NO_MORE;
}

static void search_cases(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    struct msl_search *part = &workshop->repair.part;
    int64_t repairing = 0;
    workshop->has_sheets = msl_has_sheets(whole->cutting);
    part->first_price = whole->first_price;
    part->last_price = whole->last_price;
    part->master->steps += msl_reach_make(whole->reach, whole->cutting, whole->making.best.cost);
    if (workshop->has_sheets && whole->cutting->stock_count == 0 && !whole->cutting->stacked)
        msl_repair_across(whole, &workshop->repair);
    while (msl_cases_step(whole)) {
        if (!go_on(whole))
            return;
        repair_some(workshop, &repairing);
        if (whole->stopped != 0)
            return;
    }
    if (whole->making.best.count > 0)
        repair_on(workshop);
}

/* ---- handed out -------------------------------------------------------------------------------------------------- */

void msl_found_free(const struct muslin_allocator *allocator, struct msl_found *found)
{
    struct msl_pool *plan = &found->plan;
    msl_scratch_free(allocator, plan->patterns, (uint64_t)plan->most_patterns, sizeof *plan->patterns);
    msl_scratch_free(allocator, plan->strips, (uint64_t)plan->most_strips, sizeof *plan->strips);
    msl_scratch_free(allocator, plan->laid, (uint64_t)plan->most_laid, sizeof *plan->laid);
    msl_scratch_free(allocator, found->cases, (uint64_t)found->case_count, sizeof *found->cases);
    msl_scratch_free(allocator, found->worths, (uint64_t)found->worth_count, sizeof *found->worths);
}

/* Takes the arrays of the plan. Returns 0, and gives back what it has, where memory is not had. */
static int take_plan(const struct muslin_allocator *allocator, struct msl_found *found)
{
    struct msl_check check = msl_check_start(NULL);
    struct msl_pool *plan = &found->plan;
    plan->patterns = msl_scratch(&check, allocator, (uint64_t)plan->most_patterns, sizeof *plan->patterns);
    plan->strips = msl_scratch(&check, allocator, (uint64_t)plan->most_strips, sizeof *plan->strips);
    plan->laid = msl_scratch(&check, allocator, (uint64_t)plan->most_laid, sizeof *plan->laid);
    if (check.status == MUSLIN_OK)
        return 1;
    msl_found_free(allocator, found);
    return 0;
}

/* How much the plan needs, into what is empty. */
static void measure(const struct msl_search *whole, struct msl_pool *plan)
{
    const struct msl_plan *best = &whole->making.best;
    plan->most_patterns = best->count;
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
        const struct msl_pattern pattern = {
            .times = best->rows[i].times, .way = from->way, .first = plan->strip_count, .count = from->count
        };
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
static void bound_cases(struct msl_found *found)
{
    found->least = found->cost;
    for (int32_t i = 0; i < found->case_count; i++) {
        struct msl_case *of = &found->cases[i];
        of->least = msl_lesser(of->least, found->cost);
        if (of->split == 0 && of->packed == 0)
            found->least = msl_lesser(found->least, of->least);
    }
}

/* `count` of the `most` things in an array, in one just as large, which takes its place. Returns 0 where memory is not
 * had; then there is neither. */
static void *shrunk(const struct muslin_allocator *allocator, void *from, int32_t count, int32_t most, size_t size)
{
    struct msl_check check = msl_check_start(NULL);
    char *to = msl_scratch(&check, allocator, (uint64_t)count, size);
    for (size_t i = 0; to != NULL && i < (size_t)count * size; i++)
        to[i] = ((char *)from)[i];
    msl_scratch_free(allocator, from, (uint64_t)most, size);
    return to;
}

/* The search gives its memory back before its proof is copied: so all of it never needs more than the search did. */
static muslin_status hand_out_proof(struct msl_workshop *workshop, struct msl_found *found)
{
    const struct muslin_allocator *allocator = workshop->allocator;
    struct msl_search *whole = &workshop->whole;
    struct msl_case *cases = whole->cases;
    int64_t *worths = whole->worths;
    const int32_t most_cases = whole->most_cases;
    const int32_t most_worths = whole->most_worths;
    whole->cases = NULL;
    whole->worths = NULL;
    msl_workshop_close(workshop);
    found->cases = shrunk(allocator, cases, found->case_count, most_cases, sizeof *cases);
    found->worths = shrunk(allocator, worths, found->worth_count, most_worths, sizeof *worths);
    if (found->cases != NULL && found->worths != NULL)
        return MUSLIN_OK;
    msl_found_free(allocator, found);
    return MUSLIN_ERR_NO_MEMORY;
}

muslin_status msl_hand_out(struct msl_workshop *workshop, struct msl_found *out)
{
    static const struct msl_found nothing;
    const struct msl_search *whole = &workshop->whole;
    struct msl_found found = nothing;
    if (whole->making.best.count == 0) {
        const muslin_status none = workshop->none ? MUSLIN_ERR_NOT_ENOUGH : MUSLIN_ERR_WORK_LIMIT;
        msl_workshop_close(workshop);
        return none;
    }
    found.case_count = whole->case_count;
    found.worth_count = whole->worth_count;
    found.cost = whole->making.best.cost;
    found.work = msl_work(whole);
    found.bits = workshop->master.bits;
    found.stopped = whole->stopped;
    measure(whole, &found.plan);
    if (!take_plan(workshop->allocator, &found)) {
        msl_workshop_close(workshop);
        return MUSLIN_ERR_NO_MEMORY;
    }
    copy_plan(whole, &found.plan);
    const muslin_status status = hand_out_proof(workshop, &found);
    if (status != MUSLIN_OK)
        return status;
    bound_cases(&found);
    *out = found;
    return MUSLIN_OK;
}

/* All cases, from the first plans on. */
static void search_all(struct msl_workshop *workshop)
{
    begin_cases(workshop);
    area_worths(workshop);
    if (workshop->has_master)
        search_cases(workshop);
    else if (workshop->whole.cases[0].least < workshop->whole.making.best.cost)
        workshop->whole.stopped = MUSLIN_CUTPLAN_STOPPED_SIZES;
}

/* 1 where every case is closed, and none has a plan. */
static int are_all_empty(const struct msl_workshop *workshop)
{
    const struct msl_search *whole = &workshop->whole;
    return workshop->has_master && whole->stopped == 0 && whole->aside == INT64_MAX;
}

void msl_workshop_search(struct msl_workshop *workshop)
{
    struct msl_search *whole = &workshop->whole;
    workshop->none = !msl_area_suffices(whole->cutting);
    if (workshop->none)
        return;
    begin(workshop);
    search_all(workshop);
    if (whole->making.best.count > 0)
        return;
    workshop->none = are_all_empty(workshop);
    if (!workshop->has_master || workshop->none || whole->cutting->stock_count == 0)
        return;
    const int dealt = msl_deal(&workshop->deal, &whole->making, whole->watch->work_limit / 2);
    workshop->none = dealt == MSL_DEAL_NO;
    if (dealt == MSL_DEAL_YES) {
        set_prices(workshop);
        search_all(workshop);
    }
}

muslin_status msl_cutplan_search(const struct msl_cutting *cutting, const struct msl_watch *watch,
                                 const struct muslin_allocator *allocator, struct msl_found *out)
{
    struct msl_workshop *workshop = msl_workshop_open(cutting, watch, allocator);
    if (workshop == NULL)
        return MUSLIN_ERR_NO_MEMORY;
    msl_workshop_search(workshop);
    return msl_hand_out(workshop, out);
}
