/* pressing_meet.c - where seams meet, and what that asks of their ways.
 *
 * SPDX-License-Identifier: MIT
 *
 * Along every line that is sewn, the ends on one side are held against those on the other. Ends at one place, up to two
 * ticks of rounding, meet. Where several seams of one side end at one place, those that stand upright on the line count
 * and slanted ones beside them do not; without upright ones all do. */
#include "pressing_inside.h"

enum { ROUNDING = 2, FIRST_PLACES = 64 };

/* ---- rules ------------------------------------------------------------------------------------------------------ */

void msl_add_to_sum(struct msl_nesting *nesting, uint32_t bit)
{
    uint32_t *row = msl_add_row(nesting->check, &nesting->plan->allocator, &nesting->sum, sizeof *row);
    if (row == NULL)
        return;
    uint32_t *sum = nesting->sum.rows;
    uint64_t at = nesting->sum.used - 1;
    for (; at > 0 && sum[at - 1] > bit; at--)
        sum[at] = sum[at - 1];
    sum[at] = bit;
}

void msl_cancel_sum(struct msl_nesting *nesting)
{
    uint32_t *sum = nesting->sum.rows;
    uint64_t kept = 0;
    for (uint64_t i = 0; i < nesting->sum.used; i++) {
        if (kept > 0 && sum[kept - 1] == sum[i])
            kept--;
        else
            sum[kept++] = sum[i];
    }
    nesting->sum.used = kept;
}

static uint32_t hash_of(const uint32_t *bits, uint64_t n)
{
    uint64_t hash = n;
    for (uint64_t i = 0; i < n; i++)
        hash = (hash ^ bits[i]) * UINT64_C(0x9E3779B97F4A7C15);
    return (uint32_t)(hash >> 16);
}

static int is_rule(const struct msl_nesting *nesting, const struct msl_rule *rule)
{
    const uint32_t *sum = nesting->sum.rows;
    if (rule->count != nesting->sum.used)
        return 0;
    const uint32_t *terms = msl_terms_of(nesting, rule);
    uint32_t i = 0;
    while (i < rule->count && terms[i] == sum[i])
        i++;
    return i == rule->count;
}

static void enter_rules(const struct msl_nesting *nesting, uint32_t *table, uint64_t places)
{
    for (uint64_t i = 0; i < places; i++)
        table[i] = 0;
    for (uint64_t rule = 0; rule < nesting->rules.used; rule++) {
        uint64_t at = msl_rule_at(nesting, rule)->hash & (places - 1);
        while (table[at] != 0)
            at = (at + 1) & (places - 1);
        table[at] = (uint32_t)rule + 1;
    }
}

/* Keeps the table at most half full. */
static void widen_table(struct msl_nesting *nesting)
{
    const struct muslin_allocator *a = &nesting->plan->allocator;
    if (2 * (nesting->rules.used + 1) <= nesting->places)
        return;
    uint64_t places = nesting->places == 0 ? FIRST_PLACES : 2 * nesting->places;
    uint32_t *table = msl_scratch(nesting->check, a, places, sizeof *table);
    if (table == NULL)
        return;
    enter_rules(nesting, table, places);
    msl_scratch_free(a, nesting->table, nesting->places, sizeof *table);
    nesting->table = table;
    nesting->places = places;
}

uint32_t msl_put_sum(struct msl_nesting *nesting, struct msl_rows *into)
{
    const uint32_t *sum = nesting->sum.rows;
    const uint32_t first = (uint32_t)into->used;
    for (uint64_t i = 0; i < nesting->sum.used; i++) {
        uint32_t *term = msl_add_row(nesting->check, &nesting->plan->allocator, into, sizeof *term);
        if (term != NULL)
            *term = sum[i];
    }
    return first;
}

static uint32_t add_rule(struct msl_nesting *nesting, uint32_t hash)
{
    const uint32_t first = msl_put_sum(nesting, &nesting->terms);
    struct msl_rule *row = msl_add_row(nesting->check, &nesting->plan->allocator, &nesting->rules, sizeof *row);
    if (row != NULL)
        *row = (struct msl_rule){ .first = first, .count = (uint32_t)nesting->sum.used, .hash = hash };
    return (uint32_t)nesting->rules.used - 1;
}

uint32_t msl_rule_of_sum(struct msl_nesting *nesting)
{
    msl_cancel_sum(nesting);
    widen_table(nesting);
    if (nesting->check->status != MUSLIN_OK)
        return 0;
    const uint32_t hash = hash_of(nesting->sum.rows, nesting->sum.used);
    uint64_t at = hash & (nesting->places - 1);
    for (; nesting->table[at] != 0; at = (at + 1) & (nesting->places - 1))
        if (is_rule(nesting, msl_rule_at(nesting, nesting->table[at] - 1)))
            return nesting->table[at] - 1;
    uint32_t rule = add_rule(nesting, hash);
    nesting->table[at] = rule + 1;
    return rule;
}

/* ---- two ends --------------------------------------------------------------------------------------------------- */

/* A stretch of ends on one side of a line, so far along it, taken through a place with this bit, or 0. */
struct side {
    const struct msl_end *ends;
    uint64_t count;
    muslin_len shift;
    uint32_t bit;
    uint32_t pad;
};

uint32_t msl_take_end(struct msl_nesting *nesting, const struct msl_end *end, uint32_t bit)
{
    const struct msl_seam_way *seam = &nesting->plan->seam[end->seam];
    uint32_t odd = end->first_high;
    if (seam->held == MSL_HELD_ASKED)
        odd ^= seam->way;
    else
        msl_add_to_sum(nesting, end->seam);
    for (uint32_t taken = end->taken; taken != 0;) {
        const struct msl_taken through = ((const struct msl_taken *)nesting->taken.rows)[taken - 1];
        msl_add_to_sum(nesting, through.bit);
        taken = through.next;
    }
    if (bit != 0)
        msl_add_to_sum(nesting, bit);
    return odd;
}

/* The point of a line at this place along it: by x, unless it runs straight up. */
static void find_point(const struct msl_nesting *nesting, const struct msl_line *line, muslin_len at,
                       struct msl_met *met)
{
    const int runs_up = line->seam.from_x == line->seam.to_x;
    met->x = runs_up ? line->seam.from_x : at;
    met->y = runs_up ? at : line->seam.from_y;
    if (line->on_point)
        msl_diagonal_point(nesting->plan->solution, line->node, met->x, met->y, &met->x, &met->y);
}

static void add_meeting(struct msl_nesting *nesting, const struct msl_line *line, const struct side *a,
                        const struct msl_end *first, const struct side *b, const struct msl_end *second)
{
    struct muslin_pressing *plan = nesting->plan;
    if (plan->seam[first->seam].held == MSL_HELD_OPEN || plan->seam[second->seam].held == MSL_HELD_OPEN) {
        plan->totals.open += line->count;
        return;
    }
    plan->totals.meetings += line->count;
    nesting->sum.used = 0;
    uint32_t odd = 1 ^ msl_take_end(nesting, first, a->bit) ^ msl_take_end(nesting, second, b->bit);
    uint32_t rule = msl_rule_of_sum(nesting);
    struct msl_met *met = msl_add_row(nesting->check, &plan->allocator, &plan->met, sizeof *met);
    if (met == NULL)
        return;
    *met = (struct msl_met){ .count = line->count,
                             .node = line->node,
                             .line = line->number,
                             .first = first->seam,
                             .second = second->seam,
                             .rule = rule,
                             .odd = odd };
    find_point(nesting, line, first->at + a->shift, met);
    ((struct msl_rule *)nesting->rules.rows)[rule].weight[odd] += line->count;
}

/* ---- two sides -------------------------------------------------------------------------------------------------- */

static muslin_len place_on(const struct side *side, uint64_t i)
{
    return side->ends[i].at + side->shift;
}

/* Ends of one side at one place. */
struct bunch {
    uint64_t first;
    uint64_t end;
    int has_upright;
};

static struct bunch bunch_at(const struct side *side, uint64_t first, muslin_len place)
{
    struct bunch bunch = { first, first, 0 };
    while (bunch.end < side->count && place_on(side, bunch.end) <= place + ROUNDING) {
        if (!side->ends[bunch.end].slanted)
            bunch.has_upright = 1;
        bunch.end++;
    }
    return bunch;
}

static int counts_in(const struct bunch *bunch, const struct msl_end *end)
{
    return !bunch->has_upright || !end->slanted;
}

static void meet_bunches(struct msl_nesting *nesting, const struct msl_line *line, const struct side *a,
                         const struct bunch *of_a, const struct side *b, const struct bunch *of_b)
{
    for (uint64_t i = of_a->first; i < of_a->end; i++)
        for (uint64_t j = of_b->first; j < of_b->end; j++)
            if (counts_in(of_a, &a->ends[i]) && counts_in(of_b, &b->ends[j]))
                add_meeting(nesting, line, a, &a->ends[i], b, &b->ends[j]);
}

static void meet_sides(struct msl_nesting *nesting, const struct msl_line *line, const struct side *a,
                       const struct side *b)
{
    uint64_t i = 0;
    uint64_t j = 0;
    while (nesting->check->status == MUSLIN_OK && i < a->count && j < b->count) {
        const muslin_len at_a = place_on(a, i);
        const muslin_len at_b = place_on(b, j);
        const muslin_len place = at_a < at_b ? at_a : at_b;
        const struct bunch of_a = bunch_at(a, i, place);
        const struct bunch of_b = bunch_at(b, j, place);
        meet_bunches(nesting, line, a, &of_a, b, &of_b);
        i = of_a.end;
        j = of_b.end;
    }
}

void msl_meet_gathered(struct msl_nesting *nesting, const struct msl_line *line)
{
    msl_sort_ends(nesting, &nesting->low, 0);
    msl_sort_ends(nesting, &nesting->high, 0);
    const struct side low = { .ends = nesting->low.rows, .count = nesting->low.used };
    const struct side high = { .ends = nesting->high.rows, .count = nesting->high.used };
    meet_sides(nesting, line, &high, &low);
    nesting->low.used = 0;
    nesting->high.used = 0;
}

/* ---- joins ------------------------------------------------------------------------------------------------------ */

/* The side of a part that faces the next one or the one before. */
static struct side side_of(const struct msl_nesting *nesting, uint32_t node, int64_t k, enum msl_edge edge)
{
    const struct muslin_pressing *plan = nesting->plan;
    const struct msl_part part = msl_part(plan->solution, node, k);
    const struct msl_pressed_node *child = msl_pressed(plan, part.node);
    struct side side = { 0 };
    if (!child->carries)
        return side;
    const struct msl_end *ends = nesting->ends.rows;
    side.ends = ends + child->first_end[edge];
    side.count = child->first_end[edge + 1] - child->first_end[edge];
    side.shift = edge == MSL_LEFT || edge == MSL_RIGHT ? part.y : part.x;
    side.bit = plan->place_bit[msl_pressing_place(plan, node, k)];
    return side;
}

/* Seams between places that are alike count together. */
static void meet_in_join(struct msl_nesting *nesting, uint32_t node)
{
    const struct muslin_pressing *plan = nesting->plan;
    const int64_t seams = msl_own_seams(plan, node);
    const int64_t places = msl_own_places(plan, node);
    const int is_across = msl_node_args(plan->solution->quilt, node)[JOIN_AXIS] == MUSLIN_AXIS_ACROSS;
    for (int64_t k = 0; k < seams && k < places; k++) {
        const int64_t alike = (seams - 1 - k) / places + 1;
        const struct msl_line line = { .seam = msl_seam(plan->solution, node, k),
                                       .node = node,
                                       .number = (uint32_t)k,
                                       .count = alike * msl_copies_of(plan, node) };
        const struct side a = side_of(nesting, node, k, is_across ? MSL_RIGHT : MSL_BOTTOM);
        const struct side b = side_of(nesting, node, k + 1, is_across ? MSL_LEFT : MSL_TOP);
        meet_sides(nesting, &line, &a, &b);
    }
}

static void meet_in(struct msl_nesting *nesting, uint32_t node)
{
    switch (msl_kind_of(nesting->plan, node)) {
    case MUSLIN_NODE_JOIN:
        meet_in_join(nesting, node);
        break;
    case MUSLIN_NODE_PINWHEEL:
        msl_meet_in_pinwheel(nesting, node);
        break;
    case MUSLIN_NODE_DIAGONAL:
        msl_meet_on_point(nesting, node);
        break;
    case MUSLIN_NODE_SIXTY:
        msl_meet_in_sixty(nesting, node);
        break;
    default:
        break;
    }
}

void msl_find_meetings(struct msl_nesting *nesting)
{
    const struct muslin_pressing *plan = nesting->plan;
    for (uint32_t node = 1; nesting->check->status == MUSLIN_OK && node <= plan->nodes; node++)
        if (msl_own_seams(plan, node) > 0)
            meet_in(nesting, node);
}
