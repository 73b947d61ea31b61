/* pressing_lines.c - where seams meet in nodes that are no joins: round a centre, on point, in 60 degree rows.
 *
 * SPDX-License-Identifier: MIT
 *
 * What ends on each side of a line is brought together from the parts beside it and from the node's own seams. */
#include "pressing_inside.h"

static struct msl_line line_of(const struct msl_nesting *nesting, uint32_t node, uint32_t number)
{
    const struct muslin_pressing *plan = nesting->plan;
    return (struct msl_line){ .seam = msl_seam(plan->solution, node, number),
                              .node = node,
                              .number = number,
                              .count = msl_copies_of(plan, node) };
}

/* ---- round a centre --------------------------------------------------------------------------------------------- */

/* Whether a part's edge lies along a seam's line. */
static int lies_along(const struct muslin_solution *s, const struct msl_part *part, const struct msl_seam *seam,
                      enum msl_edge edge)
{
    const struct msl_size *size = msl_size_of(s, part->node);
    const int is_level = seam->from_y == seam->to_y;
    switch (edge) {
    case MSL_LEFT:
        return !is_level && part->x == seam->from_x;
    case MSL_RIGHT:
        return !is_level && part->x + size->width == seam->from_x;
    case MSL_TOP:
        return is_level && part->y + size->height == seam->from_y;
    default:
        return is_level && part->y == seam->from_y;
    }
}

/* Where another seam of the pinwheel ends within this one: at the side on which it lies. */
static void add_crossing(struct msl_nesting *nesting, uint32_t node, uint32_t number, const struct msl_seam *seam)
{
    const struct muslin_pressing *plan = nesting->plan;
    const struct msl_seam other = msl_seam(plan->solution, node, number);
    const int runs_up = seam->from_x == seam->to_x;
    const muslin_len from = runs_up ? other.from_x - seam->from_x : other.from_y - seam->from_y;
    const muslin_len to = runs_up ? other.to_x - seam->from_x : other.to_y - seam->from_y;
    struct msl_end end = msl_end_of(msl_pressed(plan, node)->first_seam + number, &other, runs_up);
    end.at = runs_up ? other.from_y : other.from_x;
    if (from == 0 && to > 0)
        msl_add_end(nesting, &nesting->high, &end);
    if (to == 0 && from < 0)
        msl_add_end(nesting, &nesting->low, &end);
}

/* Ends beyond a seam's own have nothing on its other side to meet. */
void msl_meet_in_pinwheel(struct msl_nesting *nesting, uint32_t node)
{
    const struct muslin_pressing *plan = nesting->plan;
    const uint32_t seams = msl_own_seams(plan, node);
    const int64_t parts = msl_own_places(plan, node);
    for (uint32_t number = 0; nesting->check->status == MUSLIN_OK && number < seams; number++) {
        const struct msl_line line = line_of(nesting, node, number);
        for (int64_t k = 0; k < parts; k++) {
            const struct msl_part part = msl_part(plan->solution, node, k);
            for (int edge = MSL_LEFT; edge < MSL_EDGES; edge++) {
                struct msl_rows *side = edge == MSL_LEFT || edge == MSL_BOTTOM ? &nesting->high : &nesting->low;
                if (lies_along(plan->solution, &part, &line.seam, (enum msl_edge)edge))
                    msl_take_ends(nesting, side, node, k, (enum msl_edge)edge, 0);
            }
        }
        for (uint32_t k = 0; k < seams; k++)
            add_crossing(nesting, node, k, &line.seam);
        msl_meet_gathered(nesting, &line);
    }
}

/* ---- on point --------------------------------------------------------------------------------------------------- */

/* A field in its turned frame, where all is upright: u to the right, v up. */
struct field {
    uint32_t node;
    uint32_t uprights;      /* seams within rows, which come first */
    uint64_t n;
    struct msl_rank *ranks; /* its seams within rows and its parts by row, then from the left, a seam before the part at
                               its right: seams by their numbers, then parts */
};

static int is_upright(const struct field *field, const struct msl_rank *rank)
{
    return rank->row < field->uprights;
}

static int64_t part_of(const struct field *field, const struct msl_rank *rank)
{
    return (int64_t)rank->row - field->uprights;
}

/* Between a part and the one at its left in its row. */
static void meet_neighbours(struct msl_nesting *nesting, const struct field *field, const struct msl_rank *upright)
{
    const struct msl_upright at = msl_diagonal_upright(nesting->plan->solution, field->node, upright->row);
    struct msl_line line = line_of(nesting, field->node, upright->row);
    line.seam = (struct msl_seam){ .from_x = at.u, .from_y = at.from, .to_x = at.u, .to_y = at.to };
    line.on_point = 1;
    msl_take_ends(nesting, &nesting->low, field->node, part_of(field, upright - 1), MSL_RIGHT, 0);
    msl_take_ends(nesting, &nesting->high, field->node, part_of(field, upright + 1), MSL_LEFT, 0);
    msl_meet_gathered(nesting, &line);
}

/* A seam within a row, where it ends on the line above the row or the one below. */
static void add_upright(struct msl_nesting *nesting, struct msl_rows *into, const struct field *field, int64_t number,
                        muslin_len v)
{
    const struct msl_upright at = msl_diagonal_upright(nesting->plan->solution, field->node, number);
    const struct msl_end end = { .at = at.u,
                                 .seam = msl_pressed(nesting->plan, field->node)->first_seam + (uint32_t)number };
    if (at.from == v || at.to == v)
        msl_add_end(nesting, into, &end);
}

/* Ends on one side of a row, at v: those of its parts and of the seams between its pieces. */
static void gather_row(struct msl_nesting *nesting, const struct field *field, uint64_t first, uint64_t end,
                       enum msl_edge edge, muslin_len v)
{
    struct msl_rows *into = edge == MSL_BOTTOM ? &nesting->high : &nesting->low;
    for (uint64_t i = first; i < end; i++) {
        if (is_upright(field, &field->ranks[i]))
            add_upright(nesting, into, field, field->ranks[i].row, v);
        else
            msl_take_ends(nesting, into, field->node, part_of(field, &field->ranks[i]), edge, 0);
    }
}

/* Between the row from `high` on and the one below it, from `low` on, by their seam of this number. */
static void meet_rows(struct msl_nesting *nesting, const struct field *field, uint64_t low, uint64_t high,
                      uint64_t end, uint32_t number)
{
    const muslin_len v = field->ranks[high].first;
    struct msl_line line = line_of(nesting, field->node, number);
    line.seam = (struct msl_seam){ .from_y = v, .to_x = 1, .to_y = v };
    line.on_point = 1;
    gather_row(nesting, field, low, high, MSL_TOP, v);
    gather_row(nesting, field, high, end, MSL_BOTTOM, v);
    msl_meet_gathered(nesting, &line);
}

static uint64_t end_of_row(const struct field *field, uint64_t first)
{
    uint64_t end = first + 1;
    while (end < field->n && field->ranks[end].first == field->ranks[first].first)
        end++;
    return end;
}

/* Rows from the lower left: the last seam between rows is the first that is met, before the four of the corners. */
static void meet_in_field(struct msl_nesting *nesting, const struct field *field)
{
    uint32_t number = msl_own_seams(nesting->plan, field->node) - 4;
    uint64_t before = 0;
    for (uint64_t first = 0; nesting->check->status == MUSLIN_OK && first < field->n; number--) {
        const uint64_t end = end_of_row(field, first);
        for (uint64_t i = first + 1; i + 1 < end; i++)
            if (is_upright(field, &field->ranks[i]) && !is_upright(field, &field->ranks[i - 1]) &&
                !is_upright(field, &field->ranks[i + 1]))
                meet_neighbours(nesting, field, &field->ranks[i]);
        if (first > 0)
            meet_rows(nesting, field, before, first, end, number);
        before = first;
        first = end;
    }
}

void msl_meet_on_point(struct msl_nesting *nesting, uint32_t node)
{
    const struct muslin_pressing *plan = nesting->plan;
    const uint32_t uprights = (uint32_t)msl_diagonal_uprights(plan->solution, node);
    struct field field = { node, uprights, uprights + (uint64_t)msl_parts(plan->solution, node), NULL };
    field.ranks = msl_scratch(nesting->check, &plan->allocator, 2 * field.n, sizeof field.ranks[0]);
    if (field.ranks == NULL)
        return;
    for (uint32_t k = 0; k < uprights; k++) {
        const struct msl_upright at = msl_diagonal_upright(plan->solution, node, k);
        field.ranks[k] = (struct msl_rank){ .first = at.row, .second = at.u, .row = k };
    }
    for (uint32_t k = uprights; k < field.n; k++) {
        const struct msl_part part = msl_part(plan->solution, node, k - uprights);
        field.ranks[k] = (struct msl_rank){ .first = part.y, .second = part.x, .row = k };
    }
    msl_sort(field.ranks, field.ranks + field.n, field.n, NULL, NULL);
    meet_in_field(nesting, &field);
    msl_scratch_free(&plan->allocator, field.ranks, 2 * field.n, sizeof field.ranks[0]);
}

/* ---- 60 degree rows --------------------------------------------------------------------------------------------- */

/* Slanted seams of a row are those that begin at its lower side: ranks are by that, then by where. */
static uint64_t first_from(const struct msl_rank *ranks, uint64_t n, muslin_len y)
{
    uint64_t low = 0;
    uint64_t high = n;
    while (low < high) {
        const uint64_t middle = (low + high) / 2;
        if (ranks[middle].first < y)
            low = middle + 1;
        else
            high = middle;
    }
    return low;
}

/* Brings together the slanted seams of the row above a line, or of the one below it. */
static void gather_slanted(struct msl_nesting *nesting, uint32_t node, const struct msl_rank *ranks, uint64_t n,
                           muslin_len y, int is_below)
{
    const struct muslin_pressing *plan = nesting->plan;
    const muslin_len height = msl_seam(plan->solution, node, 0).to_y - msl_seam(plan->solution, node, 0).from_y;
    const muslin_len from = is_below ? y - height : y;
    const uint64_t end_of_row = first_from(ranks, n, from + 1);
    for (uint64_t i = first_from(ranks, n, from); i < end_of_row; i++) {
        const struct msl_seam seam = msl_seam(plan->solution, node, ranks[i].row);
        struct msl_end end = msl_end_of(msl_pressed(plan, node)->first_seam + ranks[i].row, &seam, 0);
        end.at = is_below ? seam.to_x : seam.from_x;
        msl_add_end(nesting, is_below ? &nesting->low : &nesting->high, &end);
    }
}

/* The level seams between rows come last, one fewer than there are rows. */
static void meet_between_rows(struct msl_nesting *nesting, uint32_t node, struct msl_rank *ranks)
{
    const struct muslin_pressing *plan = nesting->plan;
    const uint32_t seams = msl_own_seams(plan, node);
    const uint32_t rows = (uint32_t)msl_node_args(plan->solution->quilt, node)[SIXTY_ROWS];
    const uint32_t slanted = seams - (rows - 1);
    for (uint32_t k = 0; k < slanted; k++)
        ranks[k] = (struct msl_rank){ .first = msl_seam(plan->solution, node, k).from_y, .row = k };
    msl_sort(ranks, ranks + seams, slanted, NULL, NULL);
    for (uint32_t k = slanted; nesting->check->status == MUSLIN_OK && k < seams; k++) {
        const struct msl_line line = line_of(nesting, node, k);
        gather_slanted(nesting, node, ranks, slanted, line.seam.from_y, 0);
        gather_slanted(nesting, node, ranks, slanted, line.seam.from_y, 1);
        msl_meet_gathered(nesting, &line);
    }
}

void msl_meet_in_sixty(struct msl_nesting *nesting, uint32_t node)
{
    const struct muslin_allocator *a = &nesting->plan->allocator;
    const uint64_t room = 2 * (uint64_t)msl_own_seams(nesting->plan, node);
    struct msl_rank *ranks = msl_scratch(nesting->check, a, room, sizeof *ranks);
    if (ranks != NULL)
        meet_between_rows(nesting, node, ranks);
    msl_scratch_free(a, ranks, room, sizeof *ranks);
}
