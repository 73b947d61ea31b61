/* pressing_solve.c - which rules can hold together: each is solved for one of its bits, in order of weight.
 *
 * SPDX-License-Identifier: MIT
 *
 * A rule whose bits are not all settled by heavier ones settles one more of them, and can always hold. One that others
 * settle already either holds with them or stands against them; then one of all these must give way. After the rules,
 * and the search for those that give way, come wishes, which settle what is left. */
#include "pressing_solve.h"

/* Terms that may be looked at for each term there is, before the work limit is touched. */
enum { TERMS_EACH = 3 };

/* Sorts of wishes of seams, the second behind all of the first. */
enum { RANK_DARKER, RANK_SECOND };

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

/* Behind the last child lies the number that is to be put in: it is not less than itself. */
uint32_t msl_heap_pop(struct msl_heap *heap)
{
    const uint32_t least = heap->numbers[0];
    const uint32_t last = heap->numbers[--heap->used];
    uint64_t at = 0;
    uint64_t child = 1;
    while (child < heap->used) {
        if (heap->numbers[child + 1] < heap->numbers[child])
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
        const uint32_t *terms = msl_rows_from(&solver->terms, settled->first, sizeof *terms);
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

/* A rule that others settle: kept for the search, with those it follows from. Wishes come after that. */
static void add_surplus(struct msl_solver *solver, const struct msl_settled *row)
{
    struct msl_surplus *into = msl_add_row(solver->check, solver->allocator, &solver->surplus, sizeof *into);
    if (into != NULL)
        *into = (struct msl_surplus){
            .rule = row->source, .first_use = row->first_use, .uses = row->uses, .against = row->odd
        };
}

static void toggle_all(struct msl_solver *solver, const uint32_t *terms, uint32_t count)
{
    for (uint32_t i = 0; i < count; i++)
        toggle(solver, terms[i]);
}

static void take_terms(struct msl_solver *solver, uint32_t source)
{
    if (source >= solver->rules + solver->bits) {
        const uint32_t number = source - solver->rules - solver->bits;
        const struct msl_turned_end *sum = msl_turned_end_at(solver->nesting, number);
        toggle_all(solver, msl_rows_from(&solver->nesting->turned_bits, sum->first, sizeof(uint32_t)), sum->count);
    } else if (source >= solver->rules) {
        toggle(solver, source - solver->rules);
    } else {
        const struct msl_rule *rule = msl_rule_at(solver->nesting, source);
        toggle_all(solver, msl_terms_of(solver->nesting, rule), rule->count);
    }
}

uint8_t msl_wanted(const struct msl_solver *solver, uint32_t source)
{
    if (source < solver->rules)
        return msl_rule_odd(msl_rule_at(solver->nesting, source));
    if (source >= solver->rules + solver->bits)
        return (uint8_t)msl_turned_end_at(solver->nesting, source - solver->rules - solver->bits)->odd;
    const uint32_t bit = source - solver->rules;
    const struct muslin_pressing *plan = solver->nesting->plan;
    return bit < plan->seams && plan->seam[bit].wish != 1;
}

/* Returns whether the source can hold with all that is settled before it. */
static int take_source(struct msl_solver *solver, uint32_t source)
{
    struct msl_settled row = { .source = source,
                               .first_use = (uint32_t)solver->uses.used,
                               .odd = msl_wanted(solver, source) };
    take_terms(solver, source);
    row.odd ^= replace_settled(solver);
    row.uses = (uint32_t)solver->uses.used - row.first_use;
    row.bit = lightest_bit(solver, &row.count);
    if (row.count > 0)
        settle(solver, &row);
    else
        add_surplus(solver, &row);
    clear_list(solver);
    return row.count > 0 || row.odd == 0;
}

/* ---- the order -------------------------------------------------------------------------------------------------- */

/* Rules by falling weight; those as many meetings want either way are left out. */
static uint64_t order_rules(const struct msl_solver *solver, struct msl_rank *order)
{
    uint64_t n = 0;
    for (uint32_t rule = 0; rule < solver->rules; rule++) {
        const struct msl_rule *row = msl_rule_at(solver->nesting, rule);
        if (row->count > 0 && msl_rule_gain(row) > 0)
            order[n++] = (struct msl_rank){ .first = -msl_rule_gain(row), .row = rule };
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

void msl_settle_rules(struct msl_solver *solver)
{
    const uint64_t room = 2 * (uint64_t)solver->rules;
    struct msl_rank *order = msl_scratch(solver->check, solver->allocator, room, sizeof *order);
    if (order == NULL)
        return;
    const uint64_t n = order_rules(solver, order);
    msl_sort(order, order + solver->rules, n, NULL, NULL);
    weigh_bits(solver);
    solver->most_steps = TERMS_EACH * (int64_t)(solver->nesting->terms.used + n + solver->bits) + solver->work_left;
    uint64_t i = 0;
    for (; solver->check->status == MUSLIN_OK && i < n && solver->steps < solver->most_steps &&
           msl_goes_on(solver->nesting->told, solver->steps); i++)
        (void)take_source(solver, order[i].row);
    solver->is_complete = i >= n;
    msl_scratch_free(solver->allocator, order, room, sizeof *order);
}

/* ---- ways from what is settled ---------------------------------------------------------------------------------- */

void msl_give_up(const struct msl_solver *solver, const uint8_t *broken)
{
    struct msl_settled *settled = solver->settled.rows;
    const uint32_t *uses = solver->uses.rows;
    for (uint64_t i = 0; i < solver->settled.used; i++) {
        settled[i].odd = msl_wanted(solver, settled[i].source) ^ broken[i];
        for (uint32_t k = 0; k < settled[i].uses; k++)
            settled[i].odd ^= settled[uses[settled[i].first_use + k]].odd;
    }
}

void msl_set_ways(const struct msl_solver *solver, uint8_t *ways)
{
    const struct msl_settled *settled = solver->settled.rows;
    const uint32_t *terms = solver->terms.rows;
    for (uint32_t bit = 0; bit < solver->bits; bit++)
        ways[bit] = 0;
    for (uint64_t i = solver->settled.used; i-- > 0;) {
        uint8_t way = settled[i].odd;
        for (uint32_t k = 0; k < settled[i].count; k++)
            way ^= ways[terms[settled[i].first + k]];
        ways[settled[i].bit] = way;
    }
}

/* ---- wishes ----------------------------------------------------------------------------------------------------- */

/* Places that take their child as it is, to `order`. */
static uint64_t order_places(const struct msl_solver *solver, struct msl_rank *order)
{
    const struct muslin_pressing *plan = solver->nesting->plan;
    uint64_t n = 0;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const uint32_t last = plan->node[node].first_place;
        for (uint32_t k = msl_pressed(plan, node)->first_place; k < last; k++)
            if (plan->place_bit[k] != 0)
                order[n++] = (struct msl_rank){ .first = -msl_copies_of(plan, node),
                                                .row = solver->rules + plan->place_bit[k] };
    }
    return n;
}

/* Ways of seams by their sort, to `order`. */
static uint64_t order_seams(const struct msl_solver *solver, struct msl_rank *order)
{
    const struct muslin_pressing *plan = solver->nesting->plan;
    uint64_t n = 0;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        const uint32_t last = plan->node[node].first_seam;
        for (uint32_t k = msl_pressed(plan, node)->first_seam; k < last; k++)
            if (plan->seam[k].held == MSL_HELD_FREE)
                order[n++] = (struct msl_rank){ .first = -msl_copies_of(plan, node),
                                                .group = plan->seam[k].wish == 0 ? RANK_SECOND : RANK_DARKER,
                                                .row = solver->rules + k };
    }
    return n;
}

/* Takes wishes, those first that the most copies have. */
static void take_wishes(struct msl_solver *solver, struct msl_rank *order, uint64_t n)
{
    msl_sort(order, order + n, n, NULL, NULL);
    for (uint64_t i = 0; i < n; i++)
        if (solver->check->status == MUSLIN_OK && solver->steps < solver->most_steps)
            (void)take_source(solver, order[i].row);
}

/* All that a turning needs, or nothing of it. Returns whether it can hold. */
static int take_turning(struct msl_solver *solver, const struct msl_turning *turning)
{
    const uint64_t settled = solver->settled.used;
    const uint32_t first = solver->rules + solver->bits + turning->first;
    int can_hold = 1;
    for (uint32_t i = 0; can_hold && solver->check->status == MUSLIN_OK && i < turning->count; i++)
        can_hold = take_source(solver, first + i);
    if (can_hold)
        return 1;
    for (uint64_t i = settled; i < solver->settled.used; i++)
        solver->settled_by[msl_settled_at(solver, i)->bit] = 0;
    solver->settled.used = settled;
    return 0;
}

/* While turnings are sought: a node that would be turned, if need be. */
enum { WOULD_BE_TURNED = 4 };

static int is_used_both_ways(const struct msl_pressed_node *pressed)
{
    return pressed->other_way > 0 && (pressed->as_shown > 0 || pressed->stiff);
}

/* By how many quarters a node is to be turned; 0 when it cannot be. */
static uint8_t turn_that_holds(struct msl_solver *solver, uint32_t node)
{
    struct msl_nesting *nesting = solver->nesting;
    const struct muslin_pressing *plan = nesting->plan;
    for (uint32_t i = msl_pressed(plan, node)->first_turning; i < plan->node[node].first_turning; i++) {
        struct msl_turning *turning = msl_turning_at(nesting, i);
        if (solver->check->status == MUSLIN_OK && msl_is_alike(nesting, turning) && take_turning(solver, turning))
            return turning->turn;
    }
    return 0;
}

/* First those nodes that are used both ways by what they are part of, were that turned itself: blocks before rows of
 * them. Then, from the root down, those that are used both ways because that is pressed. */
static void take_turnings(struct msl_solver *solver)
{
    const struct muslin_pressing *plan = solver->nesting->plan;
    msl_begin_count(plan);
    for (uint32_t node = plan->nodes; node > 0; node--) {
        msl_pressed(plan, node)->turn = msl_own_seams(plan, node) > 0 ? WOULD_BE_TURNED : 0;
        msl_count_parts_of(plan, node);
    }
    for (uint32_t node = 1; node <= plan->nodes; node++)
        if (is_used_both_ways(msl_pressed(plan, node)))
            msl_pressed(plan, node)->turn = turn_that_holds(solver, node);
    msl_begin_count(plan);
    for (uint32_t node = plan->nodes; node > 0; node--) {
        struct msl_pressed_node *pressed = msl_pressed(plan, node);
        if (pressed->turn == WOULD_BE_TURNED && is_used_both_ways(pressed))
            pressed->turn = turn_that_holds(solver, node);
        msl_count_parts_of(plan, node);
    }
}

static void set_places(const struct msl_solver *solver, const uint8_t *ways)
{
    const struct muslin_pressing *plan = solver->nesting->plan;
    for (uint32_t k = 0; k < plan->places; k++)
        plan->place_way[k] = plan->place_bit[k] == 0 ? 0 : ways[plan->place_bit[k]];
}

void msl_settle_wishes(struct msl_solver *solver, uint8_t *ways)
{
    const uint64_t room = 2 * (uint64_t)solver->bits;
    struct msl_rank *order = msl_scratch(solver->check, solver->allocator, room, sizeof *order);
    if (order == NULL)
        return;
    take_wishes(solver, order, order_places(solver, order));
    msl_set_ways(solver, ways);
    set_places(solver, ways);
    take_turnings(solver);
    take_wishes(solver, order, order_seams(solver, order));
    msl_set_ways(solver, ways);
    msl_scratch_free(solver->allocator, order, room, sizeof *order);
}
