/* pressing_solve.c - which rules can hold together: each is solved for one of its bits, in order of weight.
 *
 * SPDX-License-Identifier: MIT
 *
 * A rule whose bits are not all settled by heavier ones settles one more of them, and can always hold. One that others
 * settle already either holds with them or stands against them; then one of all these must give way. After the rules
 * come wishes, which settle what is left: places that take their child as it is, seams towards the darker side, seams
 * towards their second piece. */
#include "pressing_solve.h"

/* Terms that may be looked at for each term there is, before the work limit is touched. */
enum { TERMS_EACH = 3 };

/* Rules, and sorts of wishes, each behind all of the one before. */
enum { RANK_RULE, RANK_PLACE, RANK_DARKER, RANK_SECOND };

/* ---- a heap of numbers, the least first ------------------------------------------------------------------------- */

void msl_heap_push(struct msl_heap *heap, uint32_t number)
{
    uint64_t at = heap->used++;
    while (at > 0 && heap->numbers[(at - 1) / 2] > number) {
        heap->numbers[at] = heap->numbers[(at - 1) / 2];
        at = (at - 1) / 2;
    }
    heap->numbers[at] = number;
}

uint32_t msl_heap_pop(struct msl_heap *heap)
{
    const uint32_t least = heap->numbers[0];
    const uint32_t last = heap->numbers[--heap->used];
    uint64_t at = 0;
    uint64_t child = 1;
    while (child < heap->used) {
        if (child + 1 < heap->used && heap->numbers[child + 1] < heap->numbers[child])
            child++;
        if (heap->numbers[child] >= last)
            break;
        heap->numbers[at] = heap->numbers[child];
        at = child;
        child = 2 * at + 1;
    }
    heap->numbers[at] = last;
    return least;
}

/* ---- one sum of rules ------------------------------------------------------------------------------------------- */

enum { IN_SUM = 1, LISTED = 2 };

static void toggle(struct msl_solver *solver, uint32_t bit)
{
    solver->steps++;
    solver->marks[bit] ^= IN_SUM;
    if ((solver->marks[bit] & LISTED) != 0)
        return;
    solver->marks[bit] |= LISTED;
    solver->list[solver->listed++] = bit;
    if (solver->settled_by[bit] != 0)
        msl_heap_push(&solver->heap, solver->settled_by[bit] - 1);
}

static void add_use(struct msl_solver *solver, uint32_t settled)
{
    uint32_t *row = msl_add_row(solver->check, solver->allocator, &solver->uses, sizeof *row);
    if (row != NULL)
        *row = settled;
}

/* Replaces every bit that is settled already by what settles it. Rules are taken in the order in which they came, as
 * each brings in only bits that were not settled before it. Returns what they add up to. */
static uint8_t replace_settled(struct msl_solver *solver)
{
    uint8_t odd = 0;
    while (solver->check->status == MUSLIN_OK && solver->heap.used > 0) {
        const uint32_t number = msl_heap_pop(&solver->heap);
        const struct msl_settled *settled = msl_settled_at(solver, number);
        if ((solver->marks[settled->bit] & IN_SUM) == 0)
            continue;
        const uint32_t *terms = (const uint32_t *)solver->terms.rows + settled->first;
        for (uint32_t i = 0; i < settled->count; i++)
            toggle(solver, terms[i]);
        odd ^= settled->odd;
        add_use(solver, number);
    }
    return odd;
}

/* The bit that the fewest others hang on, so that chains stay short; *count gets how many there are. */
static uint32_t lightest_bit(const struct msl_solver *solver, uint32_t *count)
{
    uint32_t lightest = 0;
    *count = 0;
    for (uint64_t i = 0; i < solver->listed; i++) {
        const uint32_t bit = solver->list[i];
        if ((solver->marks[bit] & IN_SUM) == 0)
            continue;
        if (*count == 0 || solver->load[bit] < solver->load[lightest])
            lightest = bit;
        ++*count;
    }
    return lightest;
}

static void clear_list(struct msl_solver *solver)
{
    for (uint64_t i = 0; i < solver->listed; i++)
        solver->marks[solver->list[i]] = 0;
    solver->listed = 0;
    solver->heap.used = 0;
}

/* ---- settling --------------------------------------------------------------------------------------------------- */

static void settle(struct msl_solver *solver, const struct msl_settled *row)
{
    struct msl_settled settled = *row;
    settled.first = (uint32_t)solver->terms.used;
    for (uint64_t i = 0; i < solver->listed; i++) {
        const uint32_t bit = solver->list[i];
        if ((solver->marks[bit] & IN_SUM) == 0)
            continue;
        if (bit != settled.bit)
            solver->load[bit] += solver->load[settled.bit]; /* may wrap: it is a hint */
        uint32_t *term = msl_add_row(solver->check, solver->allocator, &solver->terms, sizeof *term);
        if (term != NULL)
            *term = bit;
    }
    struct msl_settled *into = msl_add_row(solver->check, solver->allocator, &solver->settled, sizeof *into);
    if (into == NULL)
        return;
    *into = settled;
    solver->settled_by[settled.bit] = (uint32_t)solver->settled.used;
}

/* A rule that others settle: kept for the search, with those it follows from. Of wishes that is of no interest. */
static void add_surplus(struct msl_solver *solver, const struct msl_settled *row)
{
    if (row->source >= solver->rules)
        return;
    struct msl_surplus *into = msl_add_row(solver->check, solver->allocator, &solver->surplus, sizeof *into);
    if (into != NULL)
        *into = (struct msl_surplus){ row->source, row->first_use, row->uses, 0, 0, 0, row->odd };
}

static void take_terms(struct msl_solver *solver, uint32_t source)
{
    if (source >= solver->rules) {
        toggle(solver, source - solver->rules);
        return;
    }
    const struct msl_rule *rule = msl_rule_at(solver->nesting, source);
    const uint32_t *terms = msl_terms_of(solver->nesting, rule);
    for (uint32_t i = 0; i < rule->count; i++)
        toggle(solver, terms[i]);
}

uint8_t msl_wanted(const struct msl_solver *solver, uint32_t source)
{
    if (source < solver->rules)
        return msl_rule_odd(msl_rule_at(solver->nesting, source));
    const uint32_t bit = source - solver->rules;
    const struct muslin_pressing_plan *plan = solver->nesting->plan;
    return bit < plan->seams && plan->seam[bit].wish != 1;
}

static void take_source(struct msl_solver *solver, uint32_t source)
{
    struct msl_settled row = { source, 0, 0, 0, (uint32_t)solver->uses.used, 0, msl_wanted(solver, source), { 0 } };
    take_terms(solver, source);
    row.odd ^= replace_settled(solver);
    row.uses = (uint32_t)solver->uses.used - row.first_use;
    row.bit = lightest_bit(solver, &row.count);
    if (row.count > 0)
        settle(solver, &row);
    else
        add_surplus(solver, &row);
    clear_list(solver);
}

/* ---- the order -------------------------------------------------------------------------------------------------- */

/* Rules by falling weight; those as many meetings want either way are left out. */
static uint64_t order_rules(const struct msl_solver *solver, struct msl_rank *order)
{
    uint64_t n = 0;
    for (uint32_t rule = 0; rule < solver->rules; rule++) {
        const struct msl_rule *row = msl_rule_at(solver->nesting, rule);
        if (row->count > 0 && msl_rule_gain(row) > 0)
            order[n++] = (struct msl_rank){ -msl_rule_gain(row), 0, RANK_RULE, rule };
    }
    return n;
}

/* Wishes by their sort, and then by the copies that have them. */
static uint64_t order_wishes(const struct msl_solver *solver, struct msl_rank *order)
{
    const struct muslin_pressing_plan *plan = solver->nesting->plan;
    uint64_t n = 0;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const int64_t copies = msl_copies_of(plan, node);
        const uint32_t last_seam = plan->node[node].first_seam;
        const uint32_t last_place = plan->node[node].first_place;
        for (uint32_t k = msl_pressed(plan, node)->first_seam; k < last_seam; k++) {
            const uint32_t sort = plan->seam[k].wish == 0 ? RANK_SECOND : RANK_DARKER;
            if (plan->seam[k].held == MSL_HELD_FREE)
                order[n++] = (struct msl_rank){ -copies, 0, sort, solver->rules + k };
        }
        for (uint32_t k = msl_pressed(plan, node)->first_place; k < last_place; k++)
            if (plan->place_bit[k] != 0)
                order[n++] = (struct msl_rank){ -copies, 0, RANK_PLACE, solver->rules + plan->place_bit[k] };
    }
    return n;
}

static void weigh_bits(const struct msl_solver *solver)
{
    const uint32_t *terms = solver->nesting->terms.rows;
    for (uint32_t bit = 0; bit < solver->bits; bit++)
        solver->load[bit] = 1;
    for (uint64_t i = 0; i < solver->nesting->terms.used; i++)
        solver->load[terms[i]]++;
}

void msl_settle_all(struct msl_solver *solver)
{
    const uint64_t most = (uint64_t)solver->rules + solver->bits;
    struct msl_rank *order = msl_scratch(solver->check, solver->allocator, 2 * most, sizeof *order);
    if (order == NULL)
        return;
    const uint64_t rules = order_rules(solver, order);
    const uint64_t n = rules + order_wishes(solver, order + rules);
    msl_sort(order, order + most, n, NULL, NULL);
    weigh_bits(solver);
    const int64_t most_steps = TERMS_EACH * (int64_t)(solver->nesting->terms.used + n) + solver->work_left;
    uint64_t i = 0;
    for (; solver->check->status == MUSLIN_OK && i < n && solver->steps < most_steps; i++)
        take_source(solver, order[i].row);
    solver->is_complete = i >= rules;
    msl_scratch_free(solver->allocator, order, 2 * most, sizeof *order);
}

/* ---- ways from what is settled ---------------------------------------------------------------------------------- */

void msl_set_ways(struct msl_solver *solver, const uint8_t *broken, uint8_t *ways)
{
    struct msl_settled *settled = solver->settled.rows;
    const uint32_t *uses = solver->uses.rows;
    const uint32_t *terms = solver->terms.rows;
    for (uint64_t i = 0; i < solver->settled.used; i++) {
        settled[i].odd = msl_wanted(solver, settled[i].source) ^ broken[i];
        for (uint32_t k = 0; k < settled[i].uses; k++)
            settled[i].odd ^= settled[uses[settled[i].first_use + k]].odd;
    }
    for (uint32_t bit = 0; bit < solver->bits; bit++)
        ways[bit] = 0;
    for (uint64_t i = solver->settled.used; i-- > 0;) {
        uint8_t way = settled[i].odd;
        for (uint32_t k = 0; k < settled[i].count; k++)
            way ^= ways[terms[settled[i].first + k]];
        ways[settled[i].bit] = way;
    }
}
