/* pressing_turn.c - nodes that look the same when they are turned, and when that is as good as pressing them the other
 * way.
 *
 * SPDX-License-Identifier: MIT
 *
 * Seen from outside, a node is its ends on its edges. Turned by g, an end comes to lie where another one lay. All is as
 * if it were pressed the other way when each lies at one that is pressed the opposite way: one sum of bits for each. A
 * turn by three quarters says the same as one by a quarter: what comes to lie where is the same, read backwards. */
#include "pressing_inside.h"
#include "solution_drawing.h"

/* Patches of a node that is turned: more are not looked at. */
enum { PATCHES_MOST = 4096 };

/* Steps that looking at a patch is worth. */
enum { EFFORT_EACH = 16 };

/* ---- what it looks like ----------------------------------------------------------------------------------------- */

struct look {
    struct msl_nesting *nesting;
    uint32_t node;
    int32_t turn;
    struct msl_rows as_it_is; /* struct msl_rank: edges of all patches, by their ends, with fabric and print */
    struct msl_rows turned;
    struct msl_drawing drawing;
    struct msl_drawn drawn;
};

/* After how many eighths of a turn a print looks the same. */
static int32_t repeats_after(const struct muslin_solution *s, uint32_t fabric)
{
    if (msl_print_shows(s, fabric, 2))
        return 8;
    return msl_print_shows(s, fabric, 1) ? 4 : 1;
}

/* How a print lies, told apart as far as one sees it. */
static uint32_t seen_lying(int32_t repeat, int32_t eighths, int32_t mirrored)
{
    return (uint32_t)(eighths % repeat * 2 + (repeat > 1 && mirrored));
}

static int64_t point_of(const struct look *look, int32_t turn, int32_t corner)
{
    const struct msl_size *size = msl_size_of(look->nesting->plan->solution, look->node);
    muslin_len x = look->drawn.ring.x[corner];
    muslin_len y = look->drawn.ring.y[corner];
    msl_turn_point(turn, size->width, size->height, &x, &y);
    return x * (INT64_C(1) << 31) + y;
}

/* Adds a patch's edges, as the node is turned. Counter-clockwise, each edge is one patch's alone. */
static void add_edges(struct look *look, struct msl_rows *into, int32_t turn, uint32_t lying)
{
    const struct msl_ring *ring = &look->drawn.ring;
    for (int32_t i = 0; i < ring->corners; i++) {
        struct msl_rank *row = msl_add_row(look->nesting->check, &look->nesting->plan->allocator, into, sizeof *row);
        if (row != NULL)
            *row = (struct msl_rank){ point_of(look, turn, i), point_of(look, turn, (i + 1) % ring->corners),
                                      ring->fabric, lying };
    }
}

static void draw_edges(struct look *look)
{
    const struct muslin_solution *s = look->nesting->plan->solution;
    const int64_t patches = msl_size_of(s, look->node)->patches;
    look->nesting->plan->effort += EFFORT_EACH * patches;
    msl_draw_start(&look->drawing, s, look->node, MUSLIN_STAGE_FINISHED);
    for (int64_t i = 0; look->nesting->check->status == MUSLIN_OK && i < patches; i++) {
        msl_draw_patch(&look->drawing, i, &look->drawn);
        const int32_t repeat = repeats_after(s, look->drawn.ring.fabric);
        const struct msl_print_lying lying = msl_drawn_lying(&look->drawing, look->drawn.ring.turn);
        add_edges(look, &look->as_it_is, 0, seen_lying(repeat, lying.eighths, lying.mirrored));
        add_edges(look, &look->turned, look->turn,
                  seen_lying(repeat, lying.eighths + 2 * look->turn, lying.mirrored));
    }
}

/* Of each fabric there are as many: it is how they lie that can differ. */
static int are_equal(const struct msl_rank *a, const struct msl_rank *b, uint64_t n)
{
    for (uint64_t i = 0; i < n; i++)
        if (a[i].first != b[i].first || a[i].second != b[i].second || a[i].row != b[i].row)
            return 0;
    return 1;
}

static int compare_edges(struct look *look)
{
    const struct muslin_allocator *a = &look->nesting->plan->allocator;
    const uint64_t n = look->as_it_is.used;
    struct msl_rank *spare = msl_scratch(look->nesting->check, a, n, sizeof *spare);
    if (spare == NULL)
        return 0;
    msl_sort(look->as_it_is.rows, spare, n, NULL, NULL);
    msl_sort(look->turned.rows, spare, n, NULL, NULL);
    msl_scratch_free(a, spare, n, sizeof *spare);
    return are_equal(look->as_it_is.rows, look->turned.rows, n);
}

static int looks_alike(struct msl_nesting *nesting, uint32_t node, int32_t turn)
{
    const struct muslin_allocator *a = &nesting->plan->allocator;
    const struct msl_rows none = { 0 };
    struct look *look = msl_scratch(nesting->check, a, 1, sizeof *look);
    if (look == NULL)
        return 0;
    look->nesting = nesting;
    look->node = node;
    look->turn = turn;
    look->as_it_is = none;
    look->turned = none;
    draw_edges(look);
    const int is_alike = nesting->check->status == MUSLIN_OK && compare_edges(look);
    msl_free_rows(a, &look->as_it_is, sizeof(struct msl_rank));
    msl_free_rows(a, &look->turned, sizeof(struct msl_rank));
    msl_scratch_free(a, look, 1, sizeof *look);
    return is_alike;
}

int msl_is_alike(struct msl_nesting *nesting, struct msl_turning *turning)
{
    if (turning->alike == MSL_ALIKE_UNKNOWN)
        turning->alike = looks_alike(nesting, turning->node, turning->turn) ? MSL_ALIKE : MSL_NOT_ALIKE;
    return turning->alike == MSL_ALIKE;
}

/* ---- what can be turned ----------------------------------------------------------------------------------------- */

/* Allowances that stay. */
static int fits_turned(const struct msl_size *size, int32_t turn)
{
    for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++)
        if (size->edge[edge] < 0 || size->edge[edge] != size->edge[msl_edge_before(turn, (enum msl_edge)edge)])
            return 0;
    return 1;
}

/* ---- ends ------------------------------------------------------------------------------------------------------- */

/* The ends on an edge, one place after the other, from either end. */
struct row_of_ends {
    const struct msl_end *ends;
    uint32_t count;
    uint32_t next;
    int backwards;
};

static struct row_of_ends ends_on(const struct msl_nesting *nesting, uint32_t node, enum msl_edge edge, int backwards)
{
    const struct msl_pressed_node *pressed = msl_pressed(nesting->plan, node);
    return (struct row_of_ends){ msl_rows_from(&nesting->ends, pressed->first_end[edge], sizeof(struct msl_end)),
                                 pressed->first_end[edge + 1] - pressed->first_end[edge], 0, backwards };
}

static const struct msl_end *end_at(const struct row_of_ends *row, uint32_t i)
{
    return &row->ends[row->backwards ? row->count - 1 - i : i];
}

/* The end that counts at the next place: the upright one, or without such the only one. Null where several do, or there
 * is no more. */
static const struct msl_end *next_end(struct row_of_ends *row)
{
    if (row->next == row->count)
        return NULL;
    const struct msl_end *counts = end_at(row, row->next);
    const muslin_len at = counts->at;
    int several = 0;
    for (row->next++; row->next < row->count && end_at(row, row->next)->at == at; row->next++) {
        const struct msl_end *end = end_at(row, row->next);
        if (counts->slanted == end->slanted) {
            several = 1;
        } else if (counts->slanted) {
            counts = end;
            several = 0;
        }
    }
    return several ? NULL : counts;
}

static int is_open(const struct msl_nesting *nesting, const struct msl_end *end)
{
    return nesting->plan->seam[end->seam].held == MSL_HELD_OPEN;
}

/* Adds what it takes that an end, when `from` comes to lie there, is pressed the opposite way. Returns 0 when it
 * cannot be so. */
static int add_turned_end(struct msl_nesting *nesting, const struct msl_end *end, const struct msl_end *from,
                          int reversed)
{
    if (is_open(nesting, end) || is_open(nesting, from))
        return is_open(nesting, end) == is_open(nesting, from);
    nesting->sum.used = 0;
    const uint32_t odd = 1 ^ msl_take_end(nesting, end, 0) ^ msl_take_end(nesting, from, 0) ^ (uint32_t)reversed;
    msl_cancel_sum(nesting);
    if (nesting->sum.used == 0)
        return odd == 0;
    const uint32_t first = msl_put_sum(nesting, &nesting->turned_bits);
    struct msl_turned_end *row = msl_add_row(nesting->check, &nesting->plan->allocator, &nesting->turned_ends,
                                             sizeof *row);
    if (row != NULL)
        *row = (struct msl_turned_end){ .first = first, .count = (uint32_t)nesting->sum.used, .odd = odd };
    return 1;
}

/* The ends that come to lie on an edge, against those that lie there. */
static int add_turned_edge(struct msl_nesting *nesting, uint32_t node, int32_t turn, enum msl_edge edge)
{
    const struct msl_size *size = msl_size_of(nesting->plan->solution, node);
    const enum msl_edge before = msl_edge_before(turn, edge);
    const int reversed = msl_is_reversed(turn, before, edge);
    const muslin_len length = edge == MSL_LEFT || edge == MSL_RIGHT ? size->height : size->width;
    struct row_of_ends here = ends_on(nesting, node, edge, 0);
    struct row_of_ends there = ends_on(nesting, node, before, reversed);
    while (here.next < here.count) {
        const struct msl_end *end = next_end(&here);
        const struct msl_end *from = next_end(&there);
        if (end == NULL || from == NULL || end->at != (reversed ? length - from->at : from->at))
            return 0;
        if (msl_pressed(nesting->plan, node)->trimmed && end->reach != from->reach)
            return 0;
        if (!add_turned_end(nesting, end, from, reversed))
            return 0;
    }
    return there.next == there.count;
}

/* ---- turnings --------------------------------------------------------------------------------------------------- */

static void add_turning(struct msl_nesting *nesting, uint32_t node, int32_t turn)
{
    struct msl_turning turning = {
        .node = node, .first = (uint32_t)nesting->turned_ends.used, .turn = (uint8_t)turn, .alike = MSL_ALIKE_UNKNOWN
    };
    int can_be = fits_turned(msl_size_of(nesting->plan->solution, node), turn);
    for (int edge = MSL_LEFT; can_be && nesting->check->status == MUSLIN_OK && edge < MSL_EDGES; edge++)
        can_be = add_turned_edge(nesting, node, turn, (enum msl_edge)edge);
    turning.count = (uint32_t)nesting->turned_ends.used - turning.first;
    if (!can_be || (msl_pressed(nesting->plan, node)->stiff && !msl_is_alike(nesting, &turning)))
        return;
    struct msl_turning *row = msl_add_row(nesting->check, &nesting->plan->allocator, &nesting->turnings, sizeof *row);
    if (row != NULL)
        *row = turning;
}

/* Pressed the other way, all that is in it is the other way. */
int msl_can_be_pressed(const struct muslin_pressing *plan, uint32_t node)
{
    const int64_t places = msl_own_places(plan, node);
    int can = !msl_pressed(plan, node)->asks;
    for (int64_t k = 0; k < places; k++) {
        const struct msl_pressed_node *part = msl_pressed(plan, msl_part(plan->solution, node, k).node);
        can &= part->flips || !part->carries;
    }
    return can;
}

/* Nodes without seams of their own leave it to their parts. */
void msl_find_turnings(struct msl_nesting *nesting, uint32_t node)
{
    struct muslin_pressing *plan = nesting->plan;
    struct msl_pressed_node *pressed = msl_pressed(plan, node);
    const int can_turn = msl_own_seams(plan, node) > 0 && !pressed->ordered && pressed->choice != MSL_CHOICE_KEPT &&
                         msl_size_of(plan->solution, node)->patches <= PATCHES_MOST &&
                         (pressed->stiff ? plan->turnings != MSL_TURN_NO_HELD : msl_copies_of(plan, node) > 1);
    for (int32_t turn = 1; can_turn && turn <= 2; turn++)
        add_turning(nesting, node, turn);
    const int has_turning = nesting->turnings.used > pressed->first_turning;
    const int is_free = plan->turnings != MSL_TURN_NO_HELD && msl_can_be_pressed(plan, node);
    pressed->flips = (uint8_t)(!pressed->stiff || has_turning || is_free);
    plan->has_turned |= pressed->stiff && has_turning;
}

/* There are rules already: without any, no plan but the first would be made. */
static void hold(struct msl_nesting *nesting, const struct msl_turning *turning, int64_t weight)
{
    for (uint32_t i = 0; i < turning->count; i++) {
        const struct msl_turned_end *sum = msl_turned_end_at(nesting, turning->first + i);
        nesting->sum.used = 0;
        for (uint32_t k = 0; k < sum->count; k++)
            msl_add_to_sum(nesting, ((const uint32_t *)nesting->turned_bits.rows)[sum->first + k]);
        const uint32_t rule = msl_rule_of_sum(nesting);
        ((struct msl_rule *)nesting->rules.rows)[rule].weight[sum->odd] += weight;
    }
}

/* Of two turnings of a node the last one, by half a turn, or the one that is chosen. What can be pressed the other way
 * needs none. */
static int is_to_hold(const struct muslin_pressing *plan, uint32_t node, const struct msl_turning *turning, int is_last)
{
    const struct msl_pressed_node *pressed = msl_pressed(plan, node);
    if (plan->turnings == MSL_TURN_HELD_ALIKE)
        return is_last && pressed->stiff && !msl_can_be_pressed(plan, node);
    return turning->turn == pressed->choice;
}

/* Patches of all tops are below 2^31, few meetings come to each, and there are fewer sums than 2^26, so that all
 * weights together stay in range. */
void msl_hold_turnings(struct msl_nesting *nesting)
{
    const struct muslin_pressing *plan = nesting->plan;
    for (uint64_t i = 0; nesting->check->status == MUSLIN_OK && i < nesting->turnings.used; i++) {
        const struct msl_turning *turning = msl_turning_at(nesting, i);
        const int is_last = i + 1 == plan->node[turning->node].first_turning;
        if (is_to_hold(plan, turning->node, turning, is_last))
            hold(nesting, turning, plan->totals.meetings + 1);
    }
}
