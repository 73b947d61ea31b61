/* cutplan.c - a cutting plan made: the request laid out, searched, brought down to what stock suffices for; its totals.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

/* Of the work limit each look at whether stock suffices for a part of the request may take this part, and there are
 * three times as many of them at most; finding the first row that is not made whole takes about one part of these. */
enum { LOOKS = 32, MOST_LOOKS = 3 * LOOKS };

/* ---- the search ------------------------------------------------------------------------------------------------- */

/* What the search tells, put into lengths; there is nothing to tell before the first plan. */
struct telling {
    muslin_progress progress;
    void *context;
    int64_t work_limit;
    int64_t work_before;   /* of searches before this one, */
    int64_t best_before;   /* and the plan that they found */
    int64_t parts;         /* of what is left of the limit, one goes to each search for other lengths */
    int64_t cost_unit;
    int32_t one_is_enough; /* 1: any plan ends the search */
    int32_t ended;         /* by the progress call */
};

/* Steps: a few milliseconds. */
enum { TELL_EVERY = 1000000 };

static int32_t tell(void *context, int64_t work, int64_t best, int64_t least)
{
    struct telling *telling = context;
    if (best == INT64_MAX)
        return 0;
    if (telling->one_is_enough)
        return 1;
    if (telling->progress != NULL) {
        const int64_t told = msl_lesser(best * telling->cost_unit, telling->best_before);
        telling->ended = telling->progress(telling->context, telling->work_before + work, told,
                                           msl_lesser(least * telling->cost_unit, told)) != 0;
    }
    return telling->ended;
}

/* What is made of each row is searched for; what was found before is given back. */
static muslin_status search(struct muslin_cutplan *plan, struct telling *telling)
{
    const struct msl_watch watch = { tell, telling, telling->work_limit,
                                     telling->progress == NULL ? 0 : TELL_EVERY };
    msl_free_found(plan);
    msl_fill_cutting(plan);
    if (plan->cutting.size_count == 0)
        return MUSLIN_OK;
    telling->cost_unit = plan->cost_unit;
    return msl_cutplan_search(&plan->cutting, &watch, &plan->allocator, &plan->found);
}

/* A search that ends so: for want of memory, where stock suffices. */
static void fail_as(struct msl_check *check, muslin_status status)
{
    msl_fail(check, status, MUSLIN_ARG_ALLOCATOR, 0, 0);
}

/* Nothing was found. */
static const struct msl_found nothing;

void msl_free_found(struct muslin_cutplan *plan)
{
    msl_found_free(&plan->allocator, &plan->found);
    plan->found = nothing;
}

/* ---- joined from what is left ----------------------------------------------------------------------------------- */

/* Searches with other lengths. Returns 1, and keeps what it found, where that is shorter. */
static int is_shorter(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling)
{
    struct msl_found before = plan->found;
    const int64_t cost = plan->found.cost * plan->cost_unit;
    plan->found = nothing; /* `before` is kept */
    plan->work_besides += before.work;
    telling->work_before = plan->work_besides;
    telling->best_before = cost;
    telling->work_limit =
        (plan->spec.work_limit - msl_lesser(plan->work_besides, plan->spec.work_limit)) / telling->parts;
    const muslin_status status = search(plan, telling);
    const int shorter = status == MUSLIN_OK && plan->found.cost * plan->cost_unit < cost;
    if (status == MUSLIN_OK)
        msl_found_free(&plan->allocator, shorter ? &before : &plan->found);
    else
        fail_as(check, status);
    if (!shorter) {
        plan->work_besides += plan->found.work - before.work;
        plan->found = before;
    }
    return shorter;
}

/* The piece of a row joined from what the plan leaves over. Returns 1 where that makes the plan shorter; else it stays
 * as it is. */
static int join_row(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling, uint32_t row)
{
    const uint32_t n = plan->blank_count;
    struct msl_blank *before = msl_join_anew(check, plan, row);
    if (before == NULL)
        return 0;
    const int shorter = check->status == MUSLIN_OK && is_shorter(check, plan, telling);
    if (!shorter) {
        for (uint32_t i = 0; i < n; i++)
            plan->blanks[i] = before[i];
        plan->blank_count = n;
        msl_fill_cutting(plan);
    }
    msl_scratch_free(&plan->allocator, before, n, sizeof *before);
    return shorter;
}

/* Rows whose strips may be given other lengths, the highest first, and of those the longest. */
static uint32_t rows_to_join(const struct muslin_cutplan *plan, struct msl_rank *rows, struct msl_rank *spare)
{
    uint32_t count = 0;
    for (uint32_t i = 0; i < plan->piece_count; i++) {
        const struct msl_rank rank = {
            .first = -plan->pieces[i].cut_length, .second = -plan->pieces[i].cut_width, .row = i
        };
        if (msl_may_join_anew(plan, i))
            rows[count++] = rank;
    }
    msl_sort(rows, spare, count, NULL, NULL);
    return count;
}

/* Every row in turn, until none makes the plan shorter. */
static void join_from_left_over(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t n = plan->piece_count;
    struct msl_rank *rows = msl_scratch(check, a, n, sizeof *rows);
    struct msl_rank *spare = msl_scratch(check, a, n, sizeof *spare);
    const uint32_t count = check->status == MUSLIN_OK ? rows_to_join(plan, rows, spare) : 0;
    telling->parts = count + 1;
    uint32_t since = 0; /* rows since the plan got shorter */
    for (uint32_t i = 0; since < count && !telling->ended && check->status == MUSLIN_OK; i++)
        since = join_row(check, plan, telling, rows[i % count].row) ? 0 : since + 1;
    msl_scratch_free(a, rows, n, sizeof *rows);
    msl_scratch_free(a, spare, n, sizeof *spare);
}

/* Searches for all that is made, and joins pieces from what that leaves over. */
static muslin_status search_all(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling)
{
    int may_join = 0;
    for (uint32_t i = 0; i < plan->piece_count; i++)
        may_join |= msl_may_join_anew(plan, i);
    plan->work_besides = 0;
    telling->work_limit = may_join ? plan->spec.work_limit / 2 : plan->spec.work_limit;
    const muslin_status status = search(plan, telling);
    if (status != MUSLIN_OK)
        return status;
    msl_add_up_beside(plan);
    if (may_join)
        join_from_left_over(check, plan, telling);
    return MUSLIN_OK;
}

int32_t msl_tell_in_turn(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct msl_tellings *tellings = context;
    if (tellings->ended == 0)
        tellings->ended = tellings->progress(tellings->context, work, best, bound);
    return tellings->ended;
}

void msl_search_all(struct msl_check *check, struct muslin_cutplan *plan, muslin_progress progress, void *context)
{
    struct telling telling = { .progress = progress, .context = context, .best_before = INT64_MAX };
    const muslin_status status = check->status == MUSLIN_OK ? search_all(check, plan, &telling) : MUSLIN_OK;
    if (status != MUSLIN_OK)
        fail_as(check, status);
}

/* ---- what stock suffices for ------------------------------------------------------------------------------------ */

/* Rows in the order in which they get pieces: by priority, then from the highest size down. */
static uint32_t order_rows(const struct muslin_cutplan *plan, struct msl_rank *rows, struct msl_rank *spare)
{
    uint32_t count = 0;
    for (uint32_t i = 0; i < plan->piece_count; i++)
        plan->made[i] = 0;
    for (uint32_t i = 0; i < plan->blank_count; i++) {
        const uint32_t row = plan->blanks[i].row;
        const struct msl_rank rank = { .first = msl_priority_of(plan, row), .row = row };
        if (plan->made[row] == 0)
            rows[count++] = rank;
        plan->made[row] = plan->pieces[row].count;
    }
    msl_sort(rows, spare, count, NULL, NULL);
    return count;
}

/* Rows being given pieces in their order. */
struct giving {
    const struct msl_rank *rows;
    uint32_t count;
    int32_t looks; /* that may still be taken */
};

/* Of the rows from `from` on those before `whole` are made whole, and `part` of the next one. Those before `from` stay
 * as they are. */
static void make(const struct muslin_cutplan *plan, const struct giving *giving, uint32_t from, uint32_t whole,
                 int64_t part)
{
    for (uint32_t i = from; i < giving->count; i++) {
        const uint32_t row = giving->rows[i].row;
        plan->made[row] = i < whole ? plan->pieces[row].count : i == whole ? part : 0;
    }
}

/* Without looks, no; there are none either after a failure. */
static int suffices(struct msl_check *check, struct muslin_cutplan *plan, struct giving *giving)
{
    struct telling telling = { .work_limit = plan->spec.work_limit / LOOKS, .one_is_enough = 1 };
    if (giving->looks == 0)
        return 0;
    giving->looks--;
    const muslin_status status = search(plan, &telling);
    if (status == MUSLIN_ERR_NO_MEMORY) {
        giving->looks = 0;
        fail_as(check, status);
    }
    return status == MUSLIN_OK;
}

/* By halving: up to which row, of those below `too_many`, stock was seen to suffice for whole rows. */
static uint32_t make_whole_rows(struct msl_check *check, struct muslin_cutplan *plan, struct giving *giving,
                                uint32_t from, uint32_t too_many)
{
    uint32_t whole = from;
    while (too_many - whole > 1) {
        const uint32_t middle = whole + (too_many - whole) / 2;
        make(plan, giving, from, middle, 0);
        if (suffices(check, plan, giving))
            whole = middle;
        else
            too_many = middle;
    }
    make(plan, giving, from, whole, 0);
    return whole;
}

/* By halving: as many pieces of one row as stock was seen to suffice for beside those of the rows before it. */
static void make_part(struct msl_check *check, struct muslin_cutplan *plan, struct giving *giving, uint32_t at)
{
    int64_t part = 0;
    for (int64_t too_many = plan->pieces[giving->rows[at].row].count; too_many - part > 1;) {
        const int64_t middle = part + (too_many - part) / 2;
        make(plan, giving, at, at, middle);
        if (suffices(check, plan, giving))
            part = middle;
        else
            too_many = middle;
    }
    make(plan, giving, at, at, part);
}

/* Each row in turn gets as many pieces as stock was seen to suffice for beside those before it; it does not suffice
 * for all. Returns the first row that is not made whole; where rows are not left out by priority, those after it do
 * not matter. */
static uint32_t make_what_suffices(struct msl_check *check, struct muslin_cutplan *plan, struct giving *giving)
{
    const int goes_on = (plan->spec.flags & MUSLIN_CUTPLAN_BY_PRIORITY) != 0;
    const uint32_t first = make_whole_rows(check, plan, giving, 0, giving->count);
    make_part(check, plan, giving, first);
    for (uint32_t from = first + 1; goes_on && giving->looks > 0 && from < giving->count;) {
        const uint32_t whole = make_whole_rows(check, plan, giving, from, giving->count + 1);
        if (whole < giving->count)
            make_part(check, plan, giving, whole);
        from = whole + 1;
    }
    return giving->rows[first].row;
}

/* Leaves out what stock does not suffice for, where that is asked; else the problem says what is missing. */
static void leave_out(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling,
                      muslin_status why)
{
    const uint32_t n = plan->blank_count;
    struct msl_rank *rows = msl_scratch(check, &plan->allocator, n, sizeof *rows);
    struct msl_rank *spare = msl_scratch(check, &plan->allocator, n, sizeof *spare);
    uint32_t row = 0;
    if (check->status == MUSLIN_OK) {
        struct giving giving = { rows, order_rows(plan, rows, spare), MOST_LOOKS };
        row = make_what_suffices(check, plan, &giving);
    }
    msl_scratch_free(&plan->allocator, rows, n, sizeof *rows);
    msl_scratch_free(&plan->allocator, spare, n, sizeof *spare);
    check->at = row;
    if (check->status == MUSLIN_OK && (plan->spec.flags & MUSLIN_CUTPLAN_BY_PRIORITY) == 0)
        msl_fail(check, why, MUSLIN_ARG_PIECES, plan->pieces[row].count, plan->made[row]);
    check->at = 0;
    const muslin_status status = check->status == MUSLIN_OK ? search(plan, telling) : MUSLIN_OK;
    if (status != MUSLIN_OK)
        fail_as(check, status);
}

static void find_plan(struct msl_check *check, struct muslin_cutplan *plan, struct telling *telling)
{
    const muslin_status status = search_all(check, plan, telling);
    if (status == MUSLIN_ERR_NOT_ENOUGH || status == MUSLIN_ERR_WORK_LIMIT)
        leave_out(check, plan, telling, status);
    else if (status != MUSLIN_OK)
        fail_as(check, status);
}

/* ---- made ------------------------------------------------------------------------------------------------------- */

void muslin_cutplan_free(struct muslin_cutplan *plan)
{
    if (plan == NULL)
        return;
    const struct muslin_allocator a = plan->allocator;
    msl_free_found(plan);
    msl_free_cutting(plan);
    msl_free_rows(&a, &plan->strips, sizeof(struct muslin_cutplan_strip));
    msl_free_rows(&a, &plan->places, sizeof(struct muslin_cutplan_place));
    msl_scratch_free(&a, plan->pieces, plan->piece_count, sizeof plan->pieces[0]);
    msl_scratch_free(&a, plan->made, plan->piece_count, sizeof plan->made[0]);
    msl_scratch_free(&a, plan->stock, plan->stock_count, sizeof plan->stock[0]);
    msl_scratch_free(&a, plan->stock_rows, plan->stock_count, sizeof plan->stock_rows[0]);
    msl_scratch_free(&a, plan, 1, sizeof *plan);
}

muslin_status muslin_cutplan_create(const struct muslin_cutplan_spec *spec, const struct muslin_blank_spec *pieces,
                                    size_t row_size, size_t n, const struct muslin_cutplan_stock_spec *stock,
                                    size_t stock_size, size_t stock_n, const struct muslin_allocator *allocator,
                                    muslin_progress progress, void *context, struct muslin_cutplan **out,
                                    struct muslin_problem *problem)
{
    static const struct muslin_cutplan none;
    struct msl_check check = msl_check_start(problem);
    struct msl_plan_request request = { .pieces = pieces, .stock = stock, .piece_size = row_size, .piece_count = n,
                                        .stock_size = stock_size, .stock_count = stock_n };
    struct telling telling = { .progress = progress, .context = context, .best_before = INT64_MAX };
    msl_read_request(&check, &request, spec);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_cutplan *plan = msl_scratch(&check, allocator, 1, sizeof *plan);
    if (plan == NULL)
        return check.status;
    *plan = none;
    plan->allocator = *allocator;
    msl_keep_request(&check, plan, &request);
    if (check.status == MUSLIN_OK)
        msl_lay_out(&check, plan);
    if (check.status == MUSLIN_OK)
        find_plan(&check, plan, &telling);
    if (check.status == MUSLIN_OK)
        msl_lay_strips(&check, plan);
    if (check.status == MUSLIN_OK)
        msl_add_up(&check, plan);
    if (check.status == MUSLIN_OK)
        *out = plan;
    else
        muslin_cutplan_free(plan);
    return check.status;
}

/* ---- totals ----------------------------------------------------------------------------------------------------- */

void msl_want_plan(struct msl_check *check, const struct muslin_cutplan *plan)
{
    msl_want_pointer(check, MUSLIN_ARG_CUTPLAN, plan);
}

muslin_status muslin_cutplan_totals(const struct muslin_cutplan *plan, struct muslin_cutplan_total *out,
                                    struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_plan(&check, plan);
    msl_want_output(&check, out, (uint32_t)sizeof *out);
    if (check.status == MUSLIN_OK)
        msl_write_struct(out, &plan->totals, (uint32_t)sizeof *out);
    return check.status;
}
