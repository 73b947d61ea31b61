/* yardage.c - a plan and a length to buy for every fabric of a solved quilt.
 *
 * SPDX-License-Identifier: MIT */
#include "cutplan_plan.h"
#include "yardage_inside.h"

/* What a fabric came to. */
struct fabric_plan {
    struct muslin_fabric_yardage row;
    struct muslin_cutplan *plan;
};

struct muslin_yardage {
    struct muslin_allocator allocator;
    struct msl_rows fabrics; /* struct fabric_plan */
};

/* ---- what is asked ---------------------------------------------------------------------------------------------- */

struct request {
    const struct muslin_solution *solution;
    struct muslin_yardage_spec spec;
    const struct muslin_extra_cut_spec *cuts;
    size_t row_size;
    size_t count;
};

muslin_status muslin_extra_cut_spec_init(struct muslin_extra_cut_spec *spec, uint32_t size)
{
    static const struct muslin_extra_cut_spec initial = MUSLIN_EXTRA_CUT_SPEC_INIT;
    return msl_init_struct(spec, size, &initial, (uint32_t)sizeof initial, (uint32_t)sizeof initial);
}

static struct muslin_extra_cut_spec read_extra(struct msl_check *check, const struct request *request, size_t i)
{
    struct muslin_extra_cut_spec extra;
    const void *row = msl_row_to_read(check, request->cuts, request->row_size, i);
    msl_read_struct(check, MUSLIN_ARG_ROWS, &extra, (uint32_t)sizeof extra, (uint32_t)sizeof extra,
                    MUSLIN_BLANK_MAY_TURN, row);
    return extra;
}

/* Extra cuts are labelled behind the last row of the cut list. */
static struct muslin_blank_spec blank_of_extra(const struct request *request, const struct muslin_extra_cut_spec *extra,
                                               size_t i)
{
    struct muslin_blank_spec blank = MUSLIN_BLANK_SPEC_INIT;
    blank.flags = extra->flags;
    blank.cut_width = extra->cut_width;
    blank.cut_length = extra->cut_length;
    blank.count = extra->count;
    blank.run_in = extra->run_in;
    blank.join_loss = extra->join_loss;
    blank.least_part = extra->least_part;
    blank.label = (int64_t)(request->solution->cuts.used + i);
    blank.kind = extra->kind;
    return blank;
}

static void want_extra(struct msl_check *check, const struct request *request)
{
    msl_want_between(check, MUSLIN_ARG_ROWS,
                     request->count > MUSLIN_CUTPLAN_ROWS_MAX ? MUSLIN_CUTPLAN_ROWS_MAX + 1 : (int64_t)request->count,
                     0, MUSLIN_CUTPLAN_ROWS_MAX);
    if (request->count > 0) {
        msl_want_row_size(check, request->row_size, (uint32_t)sizeof *request->cuts);
        msl_want_pointer(check, MUSLIN_ARG_ROWS, request->cuts);
    }
    for (size_t i = 0; check->status == MUSLIN_OK && i < request->count; i++) {
        const struct muslin_extra_cut_spec extra = read_extra(check, request, i);
        const struct muslin_blank_spec blank = blank_of_extra(request, &extra, i);
        (void)msl_want_id(check, request->solution->quilt, MUSLIN_SORT_FABRIC, MUSLIN_ARG_FABRIC, extra.fabric);
        if (check->status == MUSLIN_OK) {
            msl_want_blank(check, &blank);
            msl_want_pad(check, extra.pad);
        }
    }
    check->at = 0;
}

/* ---- one fabric ------------------------------------------------------------------------------------------------- */

/* A fabric may be newer than the solution; then it is as wide as the quilt says. */
static muslin_len width_of(const struct muslin_solution *solution, uint32_t fabric)
{
    return fabric <= solution->fabrics ? solution->widths[fabric - 1]
                                       : solution->quilt->fabrics[fabric - 1].usable_width;
}

/* Rows of the cut list, then extra cuts, as far as they are of this fabric. Returns how many of them ask for anything;
 * with no array it only counts. */
static size_t gather(struct msl_check *check, const struct request *request, uint32_t fabric,
                     struct muslin_blank_spec *blanks)
{
    const struct msl_span span = msl_cuts_of(request->solution, fabric);
    size_t used = 0;
    for (uint64_t i = 0; i < span.count; i++, used++)
        if (blanks != NULL)
            blanks[used] = msl_blank_of_cut(request->solution, span.first + i, &request->spec);
    for (size_t i = 0; i < request->count; i++) {
        const struct muslin_extra_cut_spec extra = read_extra(check, request, i);
        if ((uint32_t)muslin_id_number(extra.fabric) != fabric || extra.count == 0)
            continue;
        if (blanks != NULL)
            blanks[used] = blank_of_extra(request, &extra, i);
        used++;
    }
    return used;
}

static void fail_fabric(struct msl_check *check, uint32_t fabric, const struct muslin_problem *problem)
{
    check->at = fabric;
    msl_fail(check, problem->status, problem->argument, problem->value, problem->limit);
}

/* What the plan of a fabric comes to, and what is to be bought for it. */
static void add_up(struct msl_check *check, const struct request *request, uint32_t fabric, struct fabric_plan *made)
{
    const struct muslin_cutplan_total *totals = &made->plan->totals;
    const struct muslin_purchase_spec spec = msl_purchase_spec_of(&request->spec, totals->cloth_length);
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_purchase bought = { .size = sizeof bought };
    struct muslin_fabric_yardage *row = &made->row;
    if (muslin_fabric_purchase(&spec, &bought, &problem) != MUSLIN_OK)
        fail_fabric(check, fabric, &problem);
    row->fabric = msl_id(request->solution->quilt, MUSLIN_SORT_FABRIC, fabric);
    row->usable_width = width_of(request->solution, fabric);
    row->pieces = totals->pieces;
    row->cloth_length = totals->cloth_length;
    row->least = totals->least + request->spec.straightening;
    row->own_strips_length = totals->own_strips_length;
    row->with_extra = bought.with_extra;
    row->bought = bought.bought;
    row->spare = bought.spare;
    (void)muslin_cutplan_narrowest(made->plan, &row->narrowest_width, NULL); /* a plan from a bolt */
    row->proven = totals->proven;
    row->turned = msl_some_are_turned(made->plan);
}

/* Null after a failure, and where nothing is cut of the fabric. */
static struct fabric_plan *plan_fabric(struct msl_check *check, const struct request *request, uint32_t fabric,
                                       struct msl_tellings *tellings, struct muslin_yardage *yardage)
{
    const struct muslin_allocator *a = &yardage->allocator;
    const size_t n = gather(check, request, fabric, NULL);
    struct fabric_plan *made = n > 0 ? msl_add_row(check, a, &yardage->fabrics, sizeof *made) : NULL;
    if (made == NULL)
        return NULL;
    *made = (struct fabric_plan){ .row = { .size = sizeof made->row } };
    struct muslin_blank_spec *blanks = msl_scratch(check, a, n, sizeof *blanks);
    if (blanks == NULL)
        return NULL;
    (void)gather(check, request, fabric, blanks);
    const struct muslin_cutplan_spec spec =
        msl_plan_spec_of(&request->spec, width_of(request->solution, fabric),
                         request->solution->quilt->fabrics[fabric - 1].print);
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    if (muslin_cutplan_create(&spec, blanks, sizeof *blanks, n, NULL, 0, 0, a, msl_progress_of(tellings), tellings,
                              &made->plan, &problem) != MUSLIN_OK)
        fail_fabric(check, fabric, &problem);
    msl_scratch_free(a, blanks, n, sizeof *blanks);
    return check->status == MUSLIN_OK ? made : NULL;
}

/* ---- all of them ------------------------------------------------------------------------------------------------ */

static const struct fabric_plan *fabric_at(const struct muslin_yardage *yardage, uint64_t row)
{
    return (const struct fabric_plan *)yardage->fabrics.rows + row;
}

void muslin_yardage_free(struct muslin_yardage *yardage)
{
    if (yardage == NULL)
        return;
    const struct muslin_allocator a = yardage->allocator;
    for (uint64_t i = 0; i < yardage->fabrics.used; i++)
        muslin_cutplan_free(fabric_at(yardage, i)->plan);
    msl_free_rows(&a, &yardage->fabrics, sizeof(struct fabric_plan));
    msl_scratch_free(&a, yardage, 1, sizeof *yardage);
}

muslin_status muslin_yardage_create(const struct muslin_solution *solution, const struct muslin_yardage_spec *spec,
                                    const struct muslin_extra_cut_spec *cuts, size_t row_size, size_t n,
                                    const struct muslin_allocator *allocator, muslin_progress progress,
                                    void *context, struct muslin_yardage **out, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct request request = { .solution = solution, .cuts = cuts, .row_size = row_size, .count = n };
    struct msl_tellings tellings = { progress, context, 0 };
    msl_want_solution(&check, solution);
    msl_read_yardage_spec(&check, &request.spec, spec);
    if (check.status == MUSLIN_OK)
        want_extra(&check, &request);
    msl_want_allocator(&check, allocator);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_yardage *yardage = msl_scratch(&check, allocator, 1, sizeof *yardage);
    if (yardage == NULL)
        return check.status;
    *yardage = (struct muslin_yardage){ .allocator = *allocator };
    for (uint32_t fabric = 1; check.status == MUSLIN_OK && fabric <= solution->quilt->fabrics_used; fabric++) {
        struct fabric_plan *made = plan_fabric(&check, &request, fabric, &tellings, yardage);
        if (made != NULL)
            add_up(&check, &request, fabric, made);
    }
    if (check.status == MUSLIN_OK)
        *out = yardage;
    else
        muslin_yardage_free(yardage);
    return check.status;
}

/* ---- read ------------------------------------------------------------------------------------------------------- */

muslin_status muslin_yardage_fabrics(const struct muslin_yardage *yardage, struct muslin_fabric_yardage *rows,
                                     size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_YARDAGE, yardage);
    if (check.status != MUSLIN_OK)
        return check.status;
    if (!msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count,
                         (size_t)yardage->fabrics.used))
        return check.status;
    for (uint64_t i = 0; i < yardage->fabrics.used; i++)
        msl_write_row(rows, row_size, (size_t)i, &fabric_at(yardage, i)->row, (uint32_t)sizeof *rows);
    return MUSLIN_OK;
}

muslin_status muslin_yardage_plan(const struct muslin_yardage *yardage, int64_t row, const struct muslin_cutplan **out,
                                  struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_pointer(&check, MUSLIN_ARG_YARDAGE, yardage);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, out);
    if (check.status != MUSLIN_OK)
        return check.status;
    const int64_t used = (int64_t)yardage->fabrics.used;
    if (row < 0 || row >= used)
        return msl_fail(&check, MUSLIN_ERR_INDEX, MUSLIN_ARG_INDEX, row, used - 1);
    *out = fabric_at(yardage, (uint64_t)row)->plan;
    return MUSLIN_OK;
}
