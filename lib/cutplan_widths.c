/* cutplan_widths.c - the same request at other usable widths, and how narrow the bolt may be for this plan.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"

enum { WIDTHS_MOST = 1000 };

static void want_bolt(struct msl_check *check, const struct muslin_cutplan *plan)
{
    if (check->status == MUSLIN_OK && plan->stock_count != 0)
        msl_fail(check, MUSLIN_ERR_CHOICE, MUSLIN_ARG_STOCK_ROWS, plan->stock_count, 0);
}

/* One width is asked for by itself. */
static void want_widths(struct msl_check *check, muslin_len least, muslin_len most, int64_t widths)
{
    msl_want_some_size(check, MUSLIN_ARG_USABLE_WIDTH, least);
    msl_want_between(check, MUSLIN_ARG_USABLE_WIDTH, most, least, MUSLIN_SIZE_MAX);
    msl_want_between(check, MUSLIN_ARG_WIDTHS, widths, least == most ? 1 : 2, least == most ? 1 : WIDTHS_MOST);
}

static int does_not_fit(const struct msl_check *check)
{
    return check->status == MUSLIN_ERR_NO_YIELD || check->status == MUSLIN_ERR_RANGE;
}

/* The request searched at another width. What is made, asked and in hand is the plan's own. */
static struct muslin_cutplan_width plan_at(struct msl_check *check, const struct muslin_cutplan *plan, muslin_len width,
                                           struct msl_tellings *tellings)
{
    static const struct msl_found nothing;
    struct msl_check tried = msl_check_start(NULL);
    struct muslin_cutplan_width row = { .size = (uint32_t)sizeof row, .usable_width = width };
    struct muslin_cutplan other = *plan;
    other.spec.usable_width = width;
    other.found = nothing;
    msl_lay_out(&tried, &other); /* in memory of its own */
    msl_search_all(&tried, &other, msl_progress_of(tellings), tellings);
    if (tried.status == MUSLIN_OK && other.found.cost > 0) {
        row.cloth_length = other.found.cost * other.cost_unit + other.spec.straightening;
        row.least = other.found.least * other.cost_unit;
    } else if (tried.status != MUSLIN_OK && !does_not_fit(&tried)) {
        msl_fail(check, tried.status, MUSLIN_ARG_ALLOCATOR, 0, 0);
    }
    msl_free_found(&other);
    msl_free_cutting(&other);
    return row;
}

/* A plan of a narrower bolt is one of this, too. */
static void keep_shorter(const struct muslin_cutplan *plan, struct muslin_cutplan_width *row, muslin_len narrower)
{
    if (narrower > 0)
        row->cloth_length = msl_lesser(row->cloth_length, narrower);
    row->proven = row->cloth_length > 0 && row->cloth_length - plan->spec.straightening == row->least;
}

/* What is asked of a plan. */
struct widths {
    muslin_len least;
    muslin_len most;
    int64_t count;
    struct msl_tellings tellings;
};

static void write_widths(struct msl_check *check, const struct muslin_cutplan *plan, struct widths *asked,
                         struct muslin_cutplan_width *rows, size_t row_size)
{
    const struct muslin_allocator *a = &plan->allocator;
    const uint64_t n = (uint64_t)asked->count;
    const int64_t steps = msl_greater(asked->count - 1, 1);
    struct muslin_cutplan_width *found = msl_scratch(check, a, n, sizeof *found);
    muslin_len narrower = 0;
    for (int64_t i = 0; check->status == MUSLIN_OK && i < asked->count; i++) {
        found[i] = plan_at(check, plan, asked->least + (asked->most - asked->least) * i / steps, &asked->tellings);
        keep_shorter(plan, &found[i], narrower);
        narrower = found[i].cloth_length;
    }
    for (int64_t i = 0; check->status == MUSLIN_OK && i < asked->count; i++)
        msl_write_row(rows, row_size, (size_t)i, &found[i], (uint32_t)sizeof found[i]);
    msl_scratch_free(a, found, n, sizeof *found);
}

muslin_status muslin_cutplan_widths(const struct muslin_cutplan *plan, muslin_len least_width, muslin_len most_width,
                                    int64_t widths, muslin_progress progress, void *context,
                                    struct muslin_cutplan_width *rows, size_t row_size, size_t capacity,
                                    size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct widths asked = {
        least_width, most_width, widths, { .progress = progress, .context = context }
    };
    msl_want_plan(&check, plan);
    want_bolt(&check, plan);
    want_widths(&check, least_width, most_width, widths);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_to_fill(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, (size_t)widths))
        return check.status;
    write_widths(&check, plan, &asked, rows, row_size);
    if (check.status == MUSLIN_OK)
        *count = (size_t)widths;
    return check.status;
}

/* ---- this plan -------------------------------------------------------------------------------------------------- */

/* How far pieces reach: of a strip within a panel, behind the slit ones. */
static int64_t reach_of(const struct muslin_cutplan *plan, const struct muslin_cutplan_strip *strip)
{
    const int64_t slit = strip->kind == MUSLIN_CUTPLAN_STRIP_WITHIN ? strip->x - plan->spec.end_loss / 2 : 0;
    return slit + strip->used;
}

muslin_status muslin_cutplan_narrowest(const struct muslin_cutplan *plan, muslin_len *width,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    int64_t most = 0;
    msl_want_plan(&check, plan);
    want_bolt(&check, plan);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, width);
    if (check.status != MUSLIN_OK)
        return check.status;
    for (uint64_t i = 0; i < plan->strips.used; i++) {
        const int64_t reach = reach_of(plan, msl_strip_of(plan, i));
        most = reach > most ? reach : most;
    }
    *width = most == 0 ? 0 : most * plan->layers + plan->spec.end_loss;
    return check.status;
}
