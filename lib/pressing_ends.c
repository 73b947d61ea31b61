/* pressing_ends.c - where seams end on the edges of every different node.
 *
 * SPDX-License-Identifier: MIT
 *
 * A node's ends are those of its own seams on its outside and those of its parts along the edges that lie there. Each
 * different node has them once; what is made of it takes them over. */
#include "pressing_inside.h"

/* ---- sorting ---------------------------------------------------------------------------------------------------- */

static int in_order(const struct msl_end *ends, uint64_t n)
{
    uint64_t i = 1;
    while (i < n && ends[i - 1].at <= ends[i].at)
        i++;
    return i >= n;
}

void msl_sort_ends(struct msl_nesting *nesting, struct msl_rows *rows, uint64_t first)
{
    const struct muslin_allocator *a = &nesting->plan->allocator;
    uint64_t n = rows->used - first;
    if (n < 2)
        return;
    struct msl_end *ends = (struct msl_end *)rows->rows + first;
    if (in_order(ends, n))
        return;
    struct msl_rank *ranks = msl_scratch(nesting->check, a, 2 * n, sizeof *ranks);
    struct msl_end *was = msl_scratch(nesting->check, a, n, sizeof *was);
    for (uint32_t i = 0; nesting->check->status == MUSLIN_OK && i < n; i++) {
        ranks[i] = (struct msl_rank){ .first = ends[i].at, .row = i };
        was[i] = ends[i];
    }
    if (nesting->check->status == MUSLIN_OK) {
        msl_sort(ranks, ranks + n, n, NULL, NULL);
        for (uint64_t i = 0; i < n; i++)
            ends[i] = was[ranks[i].row];
    }
    msl_scratch_free(a, was, n, sizeof *was);
    msl_scratch_free(a, ranks, 2 * n, sizeof *ranks);
}

/* ---- how a seam lies -------------------------------------------------------------------------------------------- */

/* Whether it rises from left to right: every seam that is not level runs upwards. */
static int is_rising(const struct msl_seam *seam)
{
    return seam->to_x > seam->from_x;
}

/* The first piece lies to the left of a seam, or above a level one. So it is above a rising seam and below a falling
 * one. */
struct msl_end msl_end_of(uint32_t number, const struct msl_seam *seam, int line_runs_up)
{
    const int is_level = seam->from_y == seam->to_y;
    struct msl_end end = { .seam = number, .slanted = seam->from_x != seam->to_x && !is_level };
    if (line_runs_up)
        end.first_high = is_level || is_rising(seam);
    if (!end.slanted)
        end.reach = seam->to_x - seam->from_x + seam->to_y - seam->from_y;
    return end;
}

/* ---- one edge --------------------------------------------------------------------------------------------------- */

/* Edges that run up, from bottom to top; the others run across, from left to right. */
static int runs_up(enum msl_edge edge)
{
    return edge == MSL_LEFT || edge == MSL_RIGHT;
}

/* A part's box, as it lies in its node. */
struct box {
    muslin_len x;
    muslin_len y;
    muslin_len width;
    muslin_len height;
};

static struct box box_of(const struct muslin_solution *solution, const struct msl_part *part)
{
    const struct msl_size *size = msl_size_of(solution, part->node);
    const int is_odd = (part->turn & 1) != 0;
    return (struct box){ part->x, part->y, is_odd ? size->height : size->width, is_odd ? size->width : size->height };
}

/* How far a part's edge stands out beyond its node's: 0 where it lies on it, more where it is trimmed away. */
static muslin_len beyond(const struct msl_size *size, const struct box *box, enum msl_edge edge)
{
    switch (edge) {
    case MSL_LEFT:
        return -box->x;
    case MSL_RIGHT:
        return box->x + box->width - size->width;
    case MSL_TOP:
        return box->y + box->height - size->height;
    default:
        return -box->y;
    }
}

int msl_is_reversed(int32_t turn, enum msl_edge edge, enum msl_edge after)
{
    muslin_len x = edge == MSL_RIGHT;
    muslin_len y = edge == MSL_TOP;
    msl_turn_point(turn, 1, 1, &x, &y);
    return runs_up(after) ? y == 1 : x == 1;
}

void msl_add_end(struct msl_nesting *nesting, struct msl_rows *into, const struct msl_end *end)
{
    struct msl_end *row = msl_add_row(nesting->check, &nesting->plan->allocator, into, sizeof *row);
    if (row != NULL)
        *row = *end;
}

/* The end as taken through a place. */
static uint32_t taken_through(struct msl_nesting *nesting, uint32_t bit, uint32_t taken)
{
    if (bit == 0)
        return taken;
    struct msl_taken *row = msl_add_row(nesting->check, &nesting->plan->allocator, &nesting->taken, sizeof *row);
    if (row != NULL)
        *row = (struct msl_taken){ bit, taken };
    return (uint32_t)nesting->taken.used;
}

void msl_take_ends(struct msl_nesting *nesting, struct msl_rows *into, uint32_t node, int64_t k, enum msl_edge edge,
                   muslin_len trimmed)
{
    const struct muslin_pressing *plan = nesting->plan;
    const struct msl_part part = msl_part(plan->solution, node, k);
    const struct msl_pressed_node *child = msl_pressed(plan, part.node);
    if (!child->carries)
        return;
    const struct box box = box_of(plan->solution, &part);
    const enum msl_edge before = msl_edge_before(part.turn, edge);
    const int reversed = msl_is_reversed(part.turn, before, edge);
    const uint32_t bit = plan->place_bit[msl_pressing_place(plan, node, k)];
    const uint32_t n = child->first_end[before + 1] - child->first_end[before];
    for (uint32_t i = 0; nesting->check->status == MUSLIN_OK && i < n; i++) {
        uint32_t which = child->first_end[before] + (reversed ? n - 1 - i : i);
        struct msl_end end = ((const struct msl_end *)nesting->ends.rows)[which];
        if (trimmed > 0 && end.reach <= trimmed)
            continue;
        end.reach -= trimmed;
        if (reversed) {
            end.at = (runs_up(edge) ? box.height : box.width) - end.at;
            end.first_high ^= 1;
        }
        end.at += runs_up(edge) ? box.y : box.x;
        end.taken = taken_through(nesting, bit, end.taken);
        msl_add_end(nesting, into, &end);
    }
}

/* ---- every edge ------------------------------------------------------------------------------------------------- */

static int lies_on(const struct msl_size *size, enum msl_edge edge, muslin_len x, muslin_len y)
{
    switch (edge) {
    case MSL_LEFT:
        return x == 0;
    case MSL_RIGHT:
        return x == size->width;
    case MSL_TOP:
        return y == size->height;
    default:
        return y == 0;
    }
}

/* A node's own seam, where it ends on the edge. */
static void add_own_ends(struct msl_nesting *nesting, uint32_t node, uint32_t k, enum msl_edge edge)
{
    const struct muslin_pressing *plan = nesting->plan;
    const struct msl_size *size = msl_size_of(plan->solution, node);
    const struct msl_seam seam = msl_seam(plan->solution, node, k);
    struct msl_end end = msl_end_of(msl_pressed(plan, node)->first_seam + k, &seam, runs_up(edge));
    if (lies_on(size, edge, seam.from_x, seam.from_y)) {
        end.at = runs_up(edge) ? seam.from_y : seam.from_x;
        msl_add_end(nesting, &nesting->ends, &end);
    }
    if (lies_on(size, edge, seam.to_x, seam.to_y)) {
        end.at = runs_up(edge) ? seam.to_y : seam.to_x;
        msl_add_end(nesting, &nesting->ends, &end);
    }
}

/* A part that has an edge on the node's, or did before it was trimmed. */
static void add_part_ends(struct msl_nesting *nesting, uint32_t node, int64_t k, enum msl_edge edge)
{
    const struct muslin_solution *s = nesting->plan->solution;
    const struct msl_part part = msl_part(s, node, k);
    const struct box box = box_of(s, &part);
    const muslin_len trimmed = beyond(msl_size_of(s, node), &box, edge);
    if (!part.on_point && trimmed >= 0)
        msl_take_ends(nesting, &nesting->ends, node, k, edge, trimmed);
}

/* Part 0, seam 0, part 1, seam 1 and so on, or all the other way round: in a join they come in their order along the
 * edge so. */
static void add_in_turn(struct msl_nesting *nesting, uint32_t node, int64_t k, enum msl_edge edge, int is_downwards)
{
    const int64_t parts = msl_parts(nesting->plan->solution, node);
    const uint32_t seams = msl_own_seams(nesting->plan, node);
    if (is_downwards && k < seams)
        add_own_ends(nesting, node, (uint32_t)k, edge);
    if (k < parts)
        add_part_ends(nesting, node, k, edge);
    if (!is_downwards && k < seams)
        add_own_ends(nesting, node, (uint32_t)k, edge);
}

/* What was taken over from beyond a trimmed corner goes again. */
static void drop_outside(struct msl_rows *ends, uint64_t first, muslin_len length)
{
    struct msl_end *rows = ends->rows;
    uint64_t kept = first;
    for (uint64_t i = first; i < ends->used; i++)
        if (rows[i].at >= 0 && rows[i].at <= length)
            rows[kept++] = rows[i];
    ends->used = kept;
}

static void find_on_edge(struct msl_nesting *nesting, uint32_t node, enum msl_edge edge)
{
    const struct muslin_pressing *plan = nesting->plan;
    const struct msl_size *size = msl_size_of(plan->solution, node);
    const int64_t parts = msl_parts(plan->solution, node);
    const int64_t seams = msl_own_seams(plan, node);
    const int64_t n = parts > seams ? parts : seams;
    const int is_join = msl_kind_of(plan, node) == MUSLIN_NODE_JOIN;
    const int is_downwards = is_join && msl_node_args(plan->solution->quilt, node)[JOIN_AXIS] == MUSLIN_AXIS_DOWN;
    const uint64_t first = nesting->ends.used;
    for (int64_t i = 0; nesting->check->status == MUSLIN_OK && i < n; i++)
        add_in_turn(nesting, node, is_downwards ? n - 1 - i : i, edge, is_downwards);
    if (nesting->check->status != MUSLIN_OK)
        return;
    drop_outside(&nesting->ends, first, runs_up(edge) ? size->height : size->width);
    msl_sort_ends(nesting, &nesting->ends, first);
}

/* Parts that cannot be taken the other way after all leave their places no choice. */
static void drop_choices(const struct muslin_pressing *plan, uint32_t node)
{
    const int64_t places = msl_own_places(plan, node);
    for (int64_t k = 0; k < places; k++)
        if (!msl_pressed(plan, msl_part(plan->solution, node, k).node)->flips)
            plan->place_bit[msl_pressing_place(plan, node, k)] = 0;
}

void msl_find_ends(struct msl_nesting *nesting)
{
    struct muslin_pressing *plan = nesting->plan;
    for (uint32_t node = 1; node <= plan->nodes; node++) {
        struct msl_pressed_node *pressed = msl_pressed(plan, node);
        drop_choices(plan, node);
        const int is_needed = pressed->carries && node != plan->nodes; /* nothing is sewn to the root */
        for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
            pressed->first_end[edge] = (uint32_t)nesting->ends.used;
            if (is_needed)
                find_on_edge(nesting, node, (enum msl_edge)edge);
        }
        pressed->first_end[MSL_EDGES] = (uint32_t)nesting->ends.used;
        pressed->first_turning = (uint32_t)nesting->turnings.used;
        if (is_needed && nesting->check->status == MUSLIN_OK)
            msl_find_turnings(nesting, node);
    }
}
