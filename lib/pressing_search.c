/* pressing_search.c - the fewest exceptions: candidates, what must give way at least, a search where the two differ.
 *
 * SPDX-License-Identifier: MIT
 *
 * A rule that stands against those that settle it is, together with them, a set of which at least one must be broken.
 * Sets without a rule in common add up to a bound. Rules hang together in groups where such sets overlap, and each
 * group is searched by itself: which of its settled rules to break, with all others following. */
#include "pressing_solve.h"

/* Bits that are reversed anyhow at one time. */
enum { SHAKEN = 3 };

struct search {
    struct msl_solver *solver;
    uint8_t *ways;          /* of each bit: the best so far */
    uint8_t *trial;
    uint8_t *broken;        /* of each rule, by the ways looked at last */
    uint8_t *given_up;      /* of each settled one: broken in the best so far */
    uint32_t *first_rule;   /* of each bit: the rules that hold it ... */
    uint32_t *rules_of_bit; /* ... one bit after the other */
    int64_t exceptions;     /* of the best so far */
    int64_t unavoidable;    /* where as many or more meetings want a rule the other way */
    int64_t work_left;
};

/* What the search for groups needs besides. */
struct groups {
    struct search *search;
    struct msl_rank *order;  /* surplus rules, one group after the other */
    int64_t *left;           /* of each rule: weight that is in no set of the bound yet */
    int64_t *bound;          /* of each surplus rule: what its set adds to the bound */
    uint32_t *joined;        /* of each settled rule: one of its group */
    uint32_t *position;      /* of each settled rule: in the search, counted from 1 */
    uint32_t *settled;       /* at each position */
    uint32_t *first;         /* at each position: of the surplus rules that follow from it */
    uint32_t *follow;
    int64_t *spent;          /* at each position: before it */
    uint8_t *tried;          /* at each position */
    uint8_t *chosen;
    uint8_t *odd;            /* of each surplus rule: causes broken so far */
    int64_t least;           /* exceptions that no ways have fewer of, as far as is known */
};

static int64_t gain_of(const struct search *search, uint32_t rule)
{
    return msl_rule_gain(msl_rule_at(search->solver->nesting, rule));
}

/* ---- candidates ------------------------------------------------------------------------------------------------- */

static uint8_t parity_of(const struct msl_nesting *nesting, const struct msl_rule *rule, const uint8_t *ways)
{
    const uint32_t *terms = msl_terms_of(nesting, rule);
    uint8_t odd = 0;
    for (uint32_t i = 0; i < rule->count; i++)
        odd ^= ways[terms[i]];
    return odd;
}

/* Exceptions with these ways. */
static int64_t exceptions_with(const struct msl_nesting *nesting, const uint8_t *ways)
{
    int64_t exceptions = 0;
    for (uint64_t rule = 0; rule < nesting->rules.used; rule++) {
        const struct msl_rule *row = msl_rule_at(nesting, rule);
        exceptions += row->weight[parity_of(nesting, row, ways) ^ 1];
    }
    return exceptions;
}

/* The same; marks the rules that are broken. */
static int64_t look_at(struct search *search, const uint8_t *ways)
{
    const struct msl_nesting *nesting = search->solver->nesting;
    for (uint32_t rule = 0; rule < search->solver->rules; rule++) {
        const struct msl_rule *row = msl_rule_at(nesting, rule);
        search->broken[rule] = parity_of(nesting, row, ways) != msl_rule_odd(row);
    }
    return exceptions_with(nesting, ways);
}

static void count_unavoidable(struct search *search)
{
    for (uint32_t rule = 0; rule < search->solver->rules; rule++) {
        const struct msl_rule *row = msl_rule_at(search->solver->nesting, rule);
        search->unavoidable += row->count == 0 ? row->weight[1] : msl_lesser(row->weight[0], row->weight[1]);
    }
}

/* Steps of the search for this plan, so far. */
static int64_t steps_of(const struct search *search)
{
    return search->solver->steps + search->solver->work_left - search->work_left;
}

/* Whether work is left, and the search was not ended when it told how it stands. What it has found is no plan before it
 * is known whether turnings hold. */
static int has_work(const struct search *search)
{
    const struct msl_nesting *nesting = search->solver->nesting;
    if (!nesting->plan->has_turned && search->exceptions < nesting->told->best)
        nesting->told->best = search->exceptions;
    return msl_goes_on(nesting->told, steps_of(search)) && search->work_left > 0;
}

static void tell_bound(const struct search *search, int64_t least)
{
    const struct msl_nesting *nesting = search->solver->nesting;
    if (nesting->bounds_all)
        nesting->told->bound = least;
}

/* For every bit the rules that hold it. */
static void index_rules(struct search *search)
{
    const struct msl_solver *solver = search->solver;
    const uint32_t *terms = solver->nesting->terms.rows;
    for (uint32_t bit = 0; bit <= solver->bits; bit++)
        search->first_rule[bit] = 0;
    for (uint64_t i = 0; i < solver->nesting->terms.used; i++)
        search->first_rule[terms[i]]++;
    for (uint32_t bit = 1; bit <= solver->bits; bit++)
        search->first_rule[bit] += search->first_rule[bit - 1];
    for (uint32_t rule = solver->rules; rule-- > 0;) {
        const struct msl_rule *row = msl_rule_at(solver->nesting, rule);
        for (uint32_t i = 0; i < row->count; i++)
            search->rules_of_bit[--search->first_rule[terms[row->first + i]]] = rule;
    }
}

/* Reverses a bit where that mends more than it breaks. */
static int64_t improve_bit(struct search *search, uint8_t *ways, uint32_t bit)
{
    int64_t mended = 0;
    for (uint32_t i = search->first_rule[bit]; i < search->first_rule[bit + 1]; i++) {
        const uint32_t rule = search->rules_of_bit[i];
        mended += search->broken[rule] ? gain_of(search, rule) : -gain_of(search, rule);
    }
    if (mended <= 0)
        return 0;
    ways[bit] ^= 1;
    for (uint32_t i = search->first_rule[bit]; i < search->first_rule[bit + 1]; i++)
        search->broken[search->rules_of_bit[i]] ^= 1;
    return mended;
}

/* Reverses single bits as long as that helps. Returns the exceptions that are left. */
static int64_t improve(struct search *search, uint8_t *ways)
{
    const struct msl_solver *solver = search->solver;
    int64_t exceptions = look_at(search, ways);
    int64_t mended = 1;
    while (mended > 0 && has_work(search)) {
        mended = 0;
        search->work_left -= (int64_t)(solver->nesting->terms.used + solver->bits);
        for (uint32_t bit = 0; bit < solver->bits; bit++)
            mended += improve_bit(search, ways, bit);
        exceptions -= mended;
    }
    return exceptions;
}

static void copy_ways(const struct search *search, const uint8_t *from, uint8_t *into)
{
    for (uint32_t bit = 0; bit < search->solver->bits; bit++)
        into[bit] = from[bit];
}

/* Improves the trial. Ways that are as good are kept, too: from there others are near. */
static void improve_trial(struct search *search)
{
    const int64_t exceptions = improve(search, search->trial);
    if (exceptions > search->exceptions)
        return;
    search->exceptions = exceptions;
    copy_ways(search, search->trial, search->ways);
}

/* One bit after another, spread over all as evenly as multiples of the golden section. */
static uint32_t next_bit(uint64_t *state, uint32_t bits)
{
    *state += UINT64_C(0x9E3779B97F4A7C15);
    return (uint32_t)((*state >> 32) * bits >> 32);
}

/* Reverses a few bits of the best ways anyhow and improves again, until there are as few exceptions as there can be, or
 * half of the work is used up. */
static void shake(struct search *search, int64_t fewest)
{
    const int64_t half = search->work_left / 2;
    uint64_t state = 0;
    while (has_work(search) && search->work_left > half && search->exceptions > fewest) {
        copy_ways(search, search->ways, search->trial);
        for (int i = 0; i < SHAKEN; i++)
            search->trial[next_bit(&state, search->solver->bits)] ^= 1;
        improve_trial(search);
    }
}

/* ---- what a surplus rule follows from --------------------------------------------------------------------------- */

/* Marks are of settled rules now; the heap gives the latest first. */
static void toggle_cause(struct search *search, uint32_t settled)
{
    struct msl_solver *solver = search->solver;
    search->work_left--;
    if (solver->marks[settled] == 0)
        msl_heap_push(&solver->heap, UINT32_MAX - settled);
    solver->marks[settled] = solver->marks[settled] == 1 ? 2 : 1;
}

static void toggle_uses(struct search *search, uint32_t first, uint32_t count)
{
    const uint32_t *uses = search->solver->uses.rows;
    for (uint32_t i = 0; i < count; i++)
        toggle_cause(search, uses[first + i]);
}

/* A settled rule is itself and those that were added to it, which came before it. */
static void trace(struct search *search, struct msl_surplus *surplus)
{
    struct msl_solver *solver = search->solver;
    surplus->first_cause = (uint32_t)solver->causes.used;
    toggle_uses(search, surplus->first_use, surplus->uses);
    while (solver->heap.used > 0) {
        const uint32_t number = UINT32_MAX - msl_heap_pop(&solver->heap);
        const int is_cause = solver->marks[number] == 1;
        solver->marks[number] = 0;
        if (!is_cause)
            continue;
        const struct msl_settled *settled = msl_settled_at(solver, number);
        uint32_t *row = msl_add_row(solver->check, solver->allocator, &solver->causes, sizeof *row);
        if (row != NULL)
            *row = number;
        toggle_uses(search, settled->first_use, settled->uses);
    }
    surplus->causes = (uint32_t)solver->causes.used - surplus->first_cause;
}

static const uint32_t *causes_of(const struct search *search, const struct msl_surplus *surplus)
{
    return msl_rows_from(&search->solver->causes, surplus->first_cause, sizeof(uint32_t));
}

/* Traces those that are, or are not, against the others, as far as the work goes. */
static void trace_all(struct search *search, uint32_t against)
{
    struct msl_solver *solver = search->solver;
    for (uint64_t i = 0; solver->check->status == MUSLIN_OK && i < solver->surplus.used && has_work(search); i++)
        if (msl_surplus_at(solver, i)->against == against)
            trace(search, msl_surplus_at(solver, i));
}

/* ---- the bound -------------------------------------------------------------------------------------------------- */

/* One of a settled rule's group, the same for all of it. */
static uint32_t group_of(const struct groups *groups, uint32_t settled)
{
    uint32_t *joined = groups->joined;
    while (joined[settled] != settled) {
        joined[settled] = joined[joined[settled]];
        settled = joined[settled];
    }
    return settled;
}

/* Surplus rules in the order of the bound and of the search: by their groups, where those are known; small sets
 * first. */
static void order_surplus(const struct groups *groups, int by_groups)
{
    const struct msl_solver *solver = groups->search->solver;
    const uint64_t n = solver->surplus.used;
    for (uint32_t i = 0; i < n; i++) {
        const struct msl_surplus *surplus = msl_surplus_at(solver, i);
        groups->order[i] = (struct msl_rank){ .first = surplus->causes, .row = i };
        if (by_groups)
            groups->order[i].group = group_of(groups, causes_of(groups->search, surplus)[0]);
    }
    msl_sort(groups->order, groups->order + n, n, NULL, NULL);
}

/* Takes from the set of one surplus rule the most that all its rules still have; it is in no other set itself. */
static int64_t bound_of(struct groups *groups, const struct msl_surplus *surplus)
{
    const struct search *search = groups->search;
    const uint32_t *causes = causes_of(search, surplus);
    int64_t most = gain_of(search, surplus->rule);
    for (uint32_t i = 0; i < surplus->causes; i++)
        most = msl_lesser(most, groups->left[msl_settled_at(search->solver, causes[i])->source]);
    for (uint32_t i = 0; i < surplus->causes; i++)
        groups->left[msl_settled_at(search->solver, causes[i])->source] -= most;
    return most;
}

static void find_bound(struct groups *groups)
{
    const struct search *search = groups->search;
    const struct msl_solver *solver = search->solver;
    order_surplus(groups, 0);
    for (uint32_t rule = 0; rule < solver->rules; rule++)
        groups->left[rule] = gain_of(search, rule);
    for (uint64_t i = 0; i < solver->surplus.used; i++) {
        const uint32_t number = groups->order[i].row;
        const struct msl_surplus *surplus = msl_surplus_at(solver, number);
        groups->bound[number] = surplus->against && surplus->causes > 0 ? bound_of(groups, surplus) : 0;
        groups->least += groups->bound[number];
    }
}

/* ---- groups ----------------------------------------------------------------------------------------------------- */

/* Puts the surplus rules of each group next to each other. */
static void find_groups(struct groups *groups)
{
    const struct search *search = groups->search;
    const struct msl_solver *solver = search->solver;
    const uint64_t n = solver->surplus.used;
    for (uint32_t i = 0; i < solver->settled.used; i++) {
        groups->joined[i] = i;
        groups->position[i] = 0;
    }
    for (uint64_t i = 0; i < n; i++) {
        const struct msl_surplus *surplus = msl_surplus_at(solver, i);
        const uint32_t *causes = causes_of(search, surplus);
        for (uint32_t k = 1; k < surplus->causes; k++)
            groups->joined[group_of(groups, causes[k])] = group_of(groups, causes[0]);
    }
    order_surplus(groups, 1);
}

/* One of them: a run of the order, with so many settled rules. */
struct group {
    struct groups *of;
    uint64_t first;
    uint64_t end;
    uint32_t positions;
    uint32_t pad;
    int64_t cost;  /* of the best so far */
    int64_t bound;
};

static struct msl_surplus *surplus_in(const struct groups *groups, uint64_t i)
{
    return msl_surplus_at(groups->search->solver, groups->order[i].row);
}

/* Settled rules in the order in which the surplus rules need them, so that these are decided soon. */
static void place_settled(struct group *group)
{
    struct groups *groups = group->of;
    for (uint64_t i = group->first; i < group->end; i++) {
        struct msl_surplus *surplus = surplus_in(groups, i);
        const uint32_t *causes = causes_of(groups->search, surplus);
        for (uint32_t k = 0; k < surplus->causes; k++) {
            uint32_t *position = &groups->position[causes[k]];
            if (*position == 0) {
                groups->settled[group->positions++] = causes[k];
                *position = group->positions;
            }
            surplus->last = (uint32_t)msl_greater(surplus->last, *position - 1);
        }
    }
}

/* For every position the surplus rules that follow from it. */
static void list_followers(const struct group *group)
{
    const struct groups *groups = group->of;
    for (uint32_t p = 0; p <= group->positions; p++)
        groups->first[p] = 0;
    for (uint64_t i = group->first; i < group->end; i++) {
        const struct msl_surplus *surplus = surplus_in(groups, i);
        for (uint32_t k = 0; k < surplus->causes; k++)
            groups->first[groups->position[causes_of(groups->search, surplus)[k]] - 1]++;
    }
    for (uint32_t p = 1; p <= group->positions; p++)
        groups->first[p] += groups->first[p - 1];
    for (uint64_t i = group->first; i < group->end; i++) {
        const struct msl_surplus *surplus = surplus_in(groups, i);
        for (uint32_t k = 0; k < surplus->causes; k++) {
            const uint32_t p = groups->position[causes_of(groups->search, surplus)[k]] - 1;
            groups->follow[--groups->first[p]] = groups->order[i].row;
        }
        groups->odd[groups->order[i].row] = 0;
    }
}

static int64_t cost_of(const struct search *search, uint32_t rule)
{
    return search->broken[rule] ? gain_of(search, rule) : 0;
}

/* What the group costs so far, and at least. */
static void weigh_group(struct group *group)
{
    const struct groups *groups = group->of;
    const struct search *search = groups->search;
    for (uint64_t i = group->first; i < group->end; i++) {
        group->bound += groups->bound[groups->order[i].row];
        group->cost += cost_of(search, surplus_in(groups, i)->rule);
    }
    for (uint32_t p = 0; p < group->positions; p++)
        group->cost += cost_of(search, msl_settled_at(search->solver, groups->settled[p])->source);
}

/* ---- the search ------------------------------------------------------------------------------------------------- */

/* Breaks the rule at a position, or mends it again. */
static void toggle_position(const struct group *group, uint32_t p)
{
    const struct groups *groups = group->of;
    for (uint32_t i = groups->first[p]; i < groups->first[p + 1]; i++)
        groups->odd[groups->follow[i]] ^= 1;
}

/* Makes a choice at a position. Returns what it costs, with the surplus rules that are decided by it. */
static int64_t choose(const struct group *group, uint32_t p, uint8_t broken)
{
    const struct groups *groups = group->of;
    struct search *search = groups->search;
    int64_t cost = 0;
    groups->chosen[p] = broken;
    if (broken) {
        toggle_position(group, p);
        cost = gain_of(search, msl_settled_at(search->solver, groups->settled[p])->source);
    }
    for (uint32_t i = groups->first[p]; i < groups->first[p + 1]; i++) {
        const struct msl_surplus *surplus = msl_surplus_at(search->solver, groups->follow[i]);
        search->work_left--;
        if (surplus->last == p && groups->odd[groups->follow[i]] != surplus->against)
            cost += gain_of(search, surplus->rule);
    }
    return cost;
}

static void take_back(const struct group *group, uint32_t p)
{
    if (group->of->chosen[p])
        toggle_position(group, p);
}

static void keep_choices(const struct group *group)
{
    const struct groups *groups = group->of;
    for (uint32_t p = 0; p < group->positions; p++)
        groups->search->given_up[groups->settled[p]] = groups->chosen[p];
}

/* Depth first, the rule kept before it is broken. Returns whether nothing better is left, before `reserve` of the work
 * is all that is. */
static int search_group(struct group *group, int64_t reserve)
{
    const struct groups *groups = group->of;
    uint32_t p = 0;
    groups->tried[0] = 0;
    groups->spent[0] = 0;
    while (has_work(groups->search) && groups->search->work_left > reserve) {
        if (group->cost == group->bound || (p == 0 && groups->tried[0] == 2))
            return 1;
        if (groups->tried[p] == 2) {
            take_back(group, --p);
            continue;
        }
        const int64_t cost = groups->spent[p] + choose(group, p, groups->tried[p]++);
        if (cost < group->cost && p + 1 < group->positions) {
            groups->tried[++p] = 0;
            groups->spent[p] = cost;
            continue;
        }
        if (cost < group->cost) {
            group->cost = cost;
            keep_choices(group);
        }
        take_back(group, p);
    }
    return 0;
}

/* Of what work is left each group gets a share by its rules. */
static void search_groups(struct groups *groups)
{
    const uint64_t n = groups->search->solver->surplus.used;
    for (uint64_t first = 0; first < n;) {
        struct group group = { .of = groups, .first = first, .end = first };
        while (group.end < n && groups->order[group.end].group == groups->order[first].group)
            group.end++;
        place_settled(&group);
        list_followers(&group);
        weigh_group(&group);
        const int64_t left = groups->search->work_left;
        const int64_t share = left / (int64_t)(n - first) * (int64_t)(group.end - first);
        if (search_group(&group, left - share))
            groups->least += group.cost - group.bound;
        first = group.end;
    }
}

/* ---- all of it -------------------------------------------------------------------------------------------------- */

/* What the best ways so far break of what is settled. */
static void find_given_up(struct search *search)
{
    const struct msl_solver *solver = search->solver;
    search->exceptions = look_at(search, search->ways);
    for (uint64_t i = 0; i < solver->settled.used; i++) {
        const uint32_t source = msl_settled_at(solver, i)->source;
        search->given_up[i] = search->broken[source];
    }
}

static struct groups begin_groups(struct search *search)
{
    struct msl_check *check = search->solver->check;
    const struct muslin_allocator *a = search->solver->allocator;
    const uint64_t surplus = search->solver->surplus.used;
    const uint64_t settled = search->solver->settled.used;
    struct groups groups = { .search = search, .least = search->unavoidable };
    groups.order = msl_scratch(check, a, 2 * surplus, sizeof groups.order[0]);
    groups.left = msl_scratch(check, a, search->solver->rules, sizeof groups.left[0]);
    groups.bound = msl_scratch(check, a, surplus, sizeof groups.bound[0]);
    groups.joined = msl_scratch(check, a, settled, sizeof groups.joined[0]);
    groups.position = msl_scratch(check, a, settled, sizeof groups.position[0]);
    groups.settled = msl_scratch(check, a, settled, sizeof groups.settled[0]);
    groups.first = msl_scratch(check, a, settled + 1, sizeof groups.first[0]);
    groups.spent = msl_scratch(check, a, settled, sizeof groups.spent[0]);
    groups.tried = msl_scratch(check, a, settled, 1);
    groups.chosen = msl_scratch(check, a, settled, 1);
    groups.odd = msl_scratch(check, a, surplus, 1);
    return groups;
}

static void end_groups(struct groups *groups)
{
    const struct msl_solver *solver = groups->search->solver;
    const struct muslin_allocator *a = solver->allocator;
    const uint64_t surplus = solver->surplus.used;
    const uint64_t settled = solver->settled.used;
    msl_scratch_free(a, groups->order, 2 * surplus, sizeof groups->order[0]);
    msl_scratch_free(a, groups->left, solver->rules, sizeof groups->left[0]);
    msl_scratch_free(a, groups->bound, surplus, sizeof groups->bound[0]);
    msl_scratch_free(a, groups->joined, settled, sizeof groups->joined[0]);
    msl_scratch_free(a, groups->position, settled, sizeof groups->position[0]);
    msl_scratch_free(a, groups->settled, settled, sizeof groups->settled[0]);
    msl_scratch_free(a, groups->first, settled + 1, sizeof groups->first[0]);
    msl_scratch_free(a, groups->spent, settled, sizeof groups->spent[0]);
    msl_scratch_free(a, groups->tried, settled, 1);
    msl_scratch_free(a, groups->chosen, settled, 1);
    msl_scratch_free(a, groups->odd, surplus, 1);
}

/* Searches group by group, when all surplus rules are traced and work is left. */
static void search_traced(struct groups *groups)
{
    struct msl_solver *solver = groups->search->solver;
    trace_all(groups->search, 0);
    const uint64_t causes = solver->causes.used;
    groups->follow = msl_scratch(solver->check, solver->allocator, causes, sizeof groups->follow[0]);
    if (groups->follow != NULL && has_work(groups->search)) {
        find_groups(groups);
        search_groups(groups);
    }
    msl_scratch_free(solver->allocator, groups->follow, causes, sizeof groups->follow[0]);
}

/* Looks for better choices where the bound leaves room. Returns the fewest exceptions there can be. */
static int64_t search_all(struct search *search)
{
    struct msl_solver *solver = search->solver;
    struct groups groups = begin_groups(search);
    if (solver->check->status == MUSLIN_OK) {
        trace_all(search, 1);
        find_bound(&groups);
        tell_bound(search, groups.least);
        shake(search, groups.least);
        find_given_up(search);
        if (solver->is_complete && search->exceptions > groups.least)
            search_traced(&groups);
        msl_give_up(solver, search->given_up);
    }
    end_groups(&groups);
    return groups.least;
}

/* The best ways there are, to search->ways. */
static void find_ways(struct search *search, const uint8_t *alternating)
{
    struct msl_solver *solver = search->solver;
    struct muslin_pressing_total *totals = &solver->nesting->plan->totals;
    count_unavoidable(search);
    tell_bound(search, search->unavoidable);
    index_rules(search);
    msl_set_ways(solver, search->ways);
    search->exceptions = look_at(search, search->ways);
    totals->least = search->exceptions;
    if (search->exceptions == search->unavoidable)
        return;
    search->exceptions = improve(search, search->ways);
    copy_ways(search, alternating, search->trial);
    improve_trial(search);
    totals->least = search_all(search);
}

/* Turnings whose sums come out by these ways. */
static void look_at_turnings(const struct search *search)
{
    const struct msl_nesting *nesting = search->solver->nesting;
    const uint32_t *bits = nesting->turned_bits.rows;
    for (uint64_t i = 0; i < nesting->turnings.used; i++) {
        struct msl_turning *turning = msl_turning_at(nesting, i);
        turning->holds = 1;
        for (uint32_t k = 0; k < turning->count; k++) {
            const struct msl_turned_end *sum = msl_turned_end_at(nesting, turning->first + k);
            uint32_t odd = sum->odd;
            for (uint32_t b = 0; b < sum->count; b++)
                odd ^= search->ways[bits[sum->first + b]];
            turning->holds &= odd == 0;
        }
    }
}

/* Gives the ways to seams and places, and keeps those meetings that do not nest. */
static void give_ways(struct search *search)
{
    struct muslin_pressing *plan = search->solver->nesting->plan;
    struct msl_met *met = plan->met.rows;
    uint64_t kept = 0;
    plan->totals.exceptions = look_at(search, search->ways);
    for (uint64_t i = 0; i < plan->met.used; i++) {
        const struct msl_rule *rule = msl_rule_at(search->solver->nesting, met[i].rule);
        if ((search->broken[met[i].rule] ^ msl_rule_odd(rule)) != met[i].odd)
            met[kept++] = met[i];
    }
    plan->met.used = kept;
    for (uint32_t k = 0; k < plan->seams; k++)
        if (plan->seam[k].held == MSL_HELD_FREE)
            plan->seam[k].way = search->ways[k];
    for (uint32_t k = 0; k < plan->places; k++)
        plan->place_way[k] = plan->place_bit[k] == 0 ? 0 : search->ways[plan->place_bit[k]];
    look_at_turnings(search);
}

static void search_ways(struct msl_solver *solver, const uint8_t *alternating)
{
    const struct muslin_allocator *a = solver->allocator;
    const uint64_t terms = solver->nesting->terms.used;
    struct search search = { .solver = solver, .work_left = solver->work_left };
    search.ways = msl_scratch(solver->check, a, solver->bits, 1);
    search.trial = msl_scratch(solver->check, a, solver->bits, 1);
    search.broken = msl_scratch(solver->check, a, solver->rules, 1);
    search.given_up = msl_scratch(solver->check, a, solver->bits, 1);
    search.first_rule = msl_scratch(solver->check, a, (uint64_t)solver->bits + 1, sizeof search.first_rule[0]);
    search.rules_of_bit = msl_scratch(solver->check, a, terms, sizeof search.rules_of_bit[0]);
    if (solver->check->status == MUSLIN_OK)
        find_ways(&search, alternating);
    if (solver->check->status == MUSLIN_OK && solver->is_complete)
        msl_settle_wishes(solver, search.ways);
    if (solver->check->status == MUSLIN_OK)
        give_ways(&search);
    solver->nesting->plan->totals.work = steps_of(&search);
    msl_scratch_free(a, search.ways, solver->bits, 1);
    msl_scratch_free(a, search.trial, solver->bits, 1);
    msl_scratch_free(a, search.broken, solver->rules, 1);
    msl_scratch_free(a, search.given_up, solver->bits, 1);
    msl_scratch_free(a, search.first_rule, (uint64_t)solver->bits + 1, sizeof search.first_rule[0]);
    msl_scratch_free(a, search.rules_of_bit, terms, sizeof search.rules_of_bit[0]);
}

/* A plan that there is before any is searched for. */
static void look_at_alternating(struct msl_nesting *nesting, const uint8_t *alternating)
{
    const int64_t exceptions = exceptions_with(nesting, alternating);
    nesting->plan->totals.alternating = exceptions;
    if (exceptions < nesting->told->best)
        nesting->told->best = exceptions;
}

void msl_solve_rules(struct msl_nesting *nesting, const uint8_t *alternating)
{
    struct msl_check *check = nesting->check;
    const struct muslin_allocator *a = &nesting->plan->allocator;
    const uint32_t bits = nesting->plan->bits;
    struct msl_solver solver = { .nesting = nesting,
                                 .check = check,
                                 .allocator = a,
                                 .rules = (uint32_t)nesting->rules.used,
                                 .bits = bits,
                                 .work_left = nesting->plan->spec.work_limit };
    solver.marks = msl_scratch(check, a, bits, 1);
    solver.settled_by = msl_scratch(check, a, bits, sizeof solver.settled_by[0]);
    solver.load = msl_scratch(check, a, bits, sizeof solver.load[0]);
    solver.list = msl_scratch(check, a, bits, sizeof solver.list[0]);
    solver.heap.numbers = msl_scratch(check, a, bits, sizeof solver.heap.numbers[0]);
    for (uint32_t bit = 0; check->status == MUSLIN_OK && bit < bits; bit++)
        solver.marks[bit] = 0;
    for (uint32_t bit = 0; check->status == MUSLIN_OK && bit < bits; bit++)
        solver.settled_by[bit] = 0;
    if (check->status == MUSLIN_OK) {
        look_at_alternating(nesting, alternating);
        msl_settle_rules(&solver);
    }
    if (check->status == MUSLIN_OK)
        search_ways(&solver, alternating);
    msl_scratch_free(a, solver.marks, bits, 1);
    msl_scratch_free(a, solver.settled_by, bits, sizeof solver.settled_by[0]);
    msl_scratch_free(a, solver.load, bits, sizeof solver.load[0]);
    msl_scratch_free(a, solver.list, bits, sizeof solver.list[0]);
    msl_scratch_free(a, solver.heap.numbers, bits, sizeof solver.heap.numbers[0]);
    msl_free_rows(a, &solver.settled, sizeof(struct msl_settled));
    msl_free_rows(a, &solver.surplus, sizeof(struct msl_surplus));
    msl_free_rows(a, &solver.terms, sizeof(uint32_t));
    msl_free_rows(a, &solver.uses, sizeof(uint32_t));
    msl_free_rows(a, &solver.causes, sizeof(uint32_t));
}
