/* solution_explain.c - the sum that leads to a node's size.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_diagonal.h"

enum { TERM_LEAST = sizeof(struct muslin_term) };

/* A sum being written down: term after term, into rows once they are there. */
struct working {
    const struct muslin_solution *solution;
    const int32_t *args; /* of the node */
    uint32_t node;
    int32_t axis;
    int32_t finished;
    int32_t pad;
    void *rows; /* null: only counted */
    size_t row_size;
    size_t used;
    muslin_len sum;
};

static void add_term(struct working *w, int32_t kind, muslin_id id, int64_t times, muslin_len value)
{
    w->sum += value;
    const struct muslin_term term = {
        .id = id, .times = times, .value = value, .sum = w->sum, .kind = kind, .finished = w->finished
    };
    if (w->rows != NULL)
        msl_write_row(w->rows, w->row_size, w->used, &term, sizeof term);
    w->used++;
}

static muslin_len size_along(const struct working *w, uint32_t node)
{
    const struct msl_size *size = msl_size_of(w->solution, node);
    return w->axis == MUSLIN_AXIS_ACROSS ? size->width : size->height;
}

static muslin_id node_id(const struct working *w, uint32_t node)
{
    return msl_id(w->solution->quilt, MUSLIN_SORT_NODE, node);
}

static void add_measure(struct working *w, int32_t kind, int32_t measure, int64_t times, muslin_len value)
{
    add_term(w, kind, msl_id(w->solution->quilt, MUSLIN_SORT_MEASURE, (uint32_t)measure), times, value);
}

static void add_times(struct working *w, int32_t measure, int64_t times)
{
    add_measure(w, MUSLIN_TERM_MEASURE, measure, times, times * msl_value_of(w->solution, measure));
}

static void add_children(struct working *w, int32_t child, int64_t times)
{
    add_term(w, MUSLIN_TERM_CHILD, node_id(w, (uint32_t)child), times, times * size_along(w, (uint32_t)child));
}

/* Of two arguments that stand side by side, the one for the width and the one for the height. */
static int32_t argument_along(const struct working *w, uint32_t across, uint32_t down)
{
    return w->args[w->axis == MUSLIN_AXIS_ACROSS ? across : down];
}

/* ---- the finished size of each kind ----------------------------------------------------------------------------- */

static void explain_unit(struct working *w)
{
    int32_t measure = argument_along(w, UNIT_WIDTH, UNIT_HEIGHT);
    muslin_len size = size_along(w, w->node);
    if (measure != 0)
        add_times(w, measure, 1);
    else if (size == msl_value_of(w->solution, w->args[UNIT_WIDTH]))
        add_times(w, w->args[UNIT_WIDTH], 1);
    else
        add_measure(w, MUSLIN_TERM_HALF, w->args[UNIT_WIDTH], 1, size);
}

static void explain_shape(struct working *w)
{
    int32_t measure = argument_along(w, SHAPE_WIDTH, SHAPE_HEIGHT);
    if (measure != 0)
        add_times(w, measure, 1);
    else
        add_term(w, MUSLIN_TERM_DRAWN, 0, 1, size_along(w, w->node));
}

/* Along the join runs of equal children, else the first of the greatest. */
static void explain_join(struct working *w)
{
    const int32_t *children = w->args + JOIN_CHILDREN;
    const int64_t n = msl_parts(w->solution, w->node);
    int64_t first = 0;
    if (w->axis != w->args[JOIN_AXIS]) {
        while (size_along(w, (uint32_t)children[first]) != size_along(w, w->node))
            first++;
        add_term(w, MUSLIN_TERM_GREATEST, node_id(w, (uint32_t)children[first]), 1, size_along(w, w->node));
        return;
    }
    for (int64_t end = 1; end <= n; end++)
        if (end == n || children[end] != children[first]) {
            add_children(w, children[first], end - first);
            first = end;
        }
}

static void explain_turn(struct working *w)
{
    add_term(w, MUSLIN_TERM_CHILD, node_id(w, (uint32_t)w->args[TURN_CHILD]), 1, size_along(w, w->node));
}

static void explain_trim(struct working *w)
{
    const int32_t sides[] = { argument_along(w, TRIM_LEFT, TRIM_TOP), argument_along(w, TRIM_RIGHT, TRIM_BOTTOM) };
    add_children(w, w->args[TRIM_CHILD], 1);
    for (int i = 0; i < 2; i++)
        if (sides[i] != 0)
            add_measure(w, MUSLIN_TERM_TRIMMED, sides[i], 1, -msl_value_of(w->solution, sides[i]));
}

/* The children that make up a row or a column of a pinwheel, two or three of them; its size is one of the three sums.
 * */
enum { RUN_MOST = 3, NO_CHILD = PINWHEEL_ARGS };
static const uint8_t pinwheel_runs[2][3][RUN_MOST] = {
    { { PINWHEEL_TOP, PINWHEEL_RIGHT, NO_CHILD },
      { PINWHEEL_LEFT, PINWHEEL_CENTRE, PINWHEEL_RIGHT },
      { PINWHEEL_LEFT, PINWHEEL_BOTTOM, NO_CHILD } },
    { { PINWHEEL_TOP, PINWHEEL_LEFT, NO_CHILD },
      { PINWHEEL_TOP, PINWHEEL_CENTRE, PINWHEEL_BOTTOM },
      { PINWHEEL_RIGHT, PINWHEEL_BOTTOM, NO_CHILD } }
};

static muslin_len length_of_run(const struct working *w, const uint8_t *run)
{
    muslin_len length = 0;
    for (int i = 0; i < RUN_MOST && run[i] != NO_CHILD; i++)
        length += size_along(w, (uint32_t)w->args[run[i]]);
    return length;
}

static void explain_pinwheel(struct working *w)
{
    const uint8_t *run = pinwheel_runs[w->axis - MUSLIN_AXIS_ACROSS][0];
    while (length_of_run(w, run) != size_along(w, w->node))
        run += RUN_MOST;
    for (int i = 0; i < RUN_MOST && run[i] != NO_CHILD; i++)
        add_children(w, w->args[run[i]], 1);
}

static void explain_set_in(struct working *w)
{
    const int32_t *widths = w->args + SET_IN_WIDTHS;
    const struct msl_edges along = msl_edges_along(w->axis);
    if (widths[along.first] != 0)
        add_times(w, widths[along.first], 1);
    add_children(w, w->args[SET_IN_CENTRE], 1);
    if (widths[along.last] != 0)
        add_times(w, widths[along.last], 1);
}

/* All is rounded once, as a whole; of that the sashes are told what the blocks' diagonals leave. */
static void explain_diagonal(struct working *w)
{
    const struct msl_field field = msl_field_of(w->solution, w->node);
    const int32_t set_off = w->args[DIAGONAL_SET_OFF];
    const int64_t blocks = argument_along(w, DIAGONAL_COLUMNS, DIAGONAL_ROWS);
    const muslin_len all = size_along(w, w->node) - 2 * field.set_off;
    const int64_t sashes = msl_is_sashed(&field) ? blocks - 1 + field.outside / field.sash : 0;
    const muslin_len of_blocks = sashes > 0 ? msl_nearest_point(0, blocks * field.block, 1) : all;
    add_term(w, MUSLIN_TERM_DIAGONAL, node_id(w, (uint32_t)w->args[DIAGONAL_BLOCKS]), blocks, of_blocks);
    if (sashes > 0)
        add_measure(w, MUSLIN_TERM_DIAGONAL, w->args[DIAGONAL_SASH], sashes, all - of_blocks);
    if (set_off != 0)
        add_times(w, set_off, 2);
}

static void explain_sixty(struct working *w)
{
    if (w->axis == MUSLIN_AXIS_DOWN)
        add_times(w, w->args[SIXTY_HEIGHT], w->args[SIXTY_ROWS]);
    else
        add_measure(w, MUSLIN_TERM_SIXTY, w->args[SIXTY_HEIGHT], w->args[SIXTY_CELLS] + 1, size_along(w, w->node));
}

static void explain_finished(struct working *w)
{
    w->finished = 1;
    switch (msl_node_row(w->solution->quilt, w->node)->kind) {
    case MUSLIN_NODE_PATCH:
        add_times(w, argument_along(w, PATCH_WIDTH, PATCH_HEIGHT), 1);
        break;
    case MUSLIN_NODE_UNIT:
        explain_unit(w);
        break;
    case MUSLIN_NODE_SHAPE:
        explain_shape(w);
        break;
    case MUSLIN_NODE_JOIN:
        explain_join(w);
        break;
    case MUSLIN_NODE_TURN:
        explain_turn(w);
        break;
    case MUSLIN_NODE_TRIM:
        explain_trim(w);
        break;
    case MUSLIN_NODE_PINWHEEL:
        explain_pinwheel(w);
        break;
    case MUSLIN_NODE_SET_IN:
        explain_set_in(w);
        break;
    case MUSLIN_NODE_DIAGONAL:
        explain_diagonal(w);
        break;
    default:
        explain_sixty(w);
        break;
    }
}

/* ---- allowances ------------------------------------------------------------------------------------------------- */

/* A node whose edge is also its own at that place, and which of its edges that is. */
struct edge_of {
    uint32_t node;
    enum msl_edge edge;
};

/* The first child of a join, or at its end the last. */
static int64_t child_at(const struct muslin_solution *solution, struct edge_of at)
{
    const struct msl_edges edges = msl_edges_along(msl_node_args(solution->quilt, at.node)[JOIN_AXIS]);
    return at.edge == edges.last ? msl_parts(solution, at.node) - 1 : 0;
}

/* From a node to the child that has its edge; the same node where the edge is made by itself. */
static struct edge_of edge_below(const struct muslin_solution *solution, struct edge_of at)
{
    const int32_t *args = msl_node_args(solution->quilt, at.node);
    static const uint8_t arms[MSL_EDGES] = { PINWHEEL_LEFT, PINWHEEL_RIGHT, PINWHEEL_TOP, PINWHEEL_BOTTOM };
    switch (msl_node_row(solution->quilt, at.node)->kind) {
    case MUSLIN_NODE_JOIN:
        at.node = (uint32_t)args[JOIN_CHILDREN + child_at(solution, at)];
        break;
    case MUSLIN_NODE_TURN:
        at.node = (uint32_t)args[TURN_CHILD];
        at.edge = msl_edge_before(args[TURN_HOW], at.edge);
        break;
    case MUSLIN_NODE_TRIM:
        if (args[TRIM_LEFT + at.edge] == 0 || msl_value_of(solution, args[TRIM_LEFT + at.edge]) == 0)
            at.node = (uint32_t)args[TRIM_CHILD];
        break;
    case MUSLIN_NODE_PINWHEEL:
        at.node = (uint32_t)args[arms[at.edge]];
        break;
    case MUSLIN_NODE_SET_IN:
        if (args[SET_IN_WIDTHS + at.edge] == 0)
            at.node = (uint32_t)args[SET_IN_CENTRE];
        break;
    default:
        break;
    }
    return at;
}

/* The measure of an edge's allowance: a patch may have its own, all else has the quilt's. */
static int32_t allowance_measure(const struct muslin_solution *solution, struct edge_of at)
{
    struct edge_of below = edge_below(solution, at);
    while (below.node != at.node) {
        at = below;
        below = edge_below(solution, at);
    }
    int is_patch = msl_node_row(solution->quilt, at.node)->kind == MUSLIN_NODE_PATCH;
    return is_patch ? msl_node_args(solution->quilt, at.node)[PATCH_LEFT + at.edge] : MSL_ALLOWANCE;
}

/* Where pieces along an edge differ, the quilt's allowance is taken. */
static void add_allowance(struct working *w, enum msl_edge edge)
{
    const struct msl_size *size = msl_size_of(w->solution, w->node);
    const struct edge_of at = { w->node, edge };
    int32_t measure = size->edge[edge] < 0 ? MSL_ALLOWANCE : allowance_measure(w->solution, at);
    add_measure(w, MUSLIN_TERM_ALLOWANCE, measure, 1, msl_value_of(w->solution, measure));
}

static void explain_unfinished(struct working *w)
{
    const struct msl_size *size = msl_size_of(w->solution, w->node);
    const struct msl_edges along = msl_edges_along(w->axis);
    const muslin_len first = size->edge[along.first];
    const muslin_len last = size->edge[along.last];
    const muslin_len unfinished = w->sum + msl_allowances(w->solution, first, last);
    w->finished = 0;
    add_allowance(w, along.first);
    add_allowance(w, along.last);
    if (w->sum != unfinished)
        add_measure(w, MUSLIN_TERM_TAKE_UP, MSL_TAKE_UP, (first != 0) + (last != 0), unfinished - w->sum);
}

static void explain(struct working *w)
{
    w->used = 0;
    w->sum = 0;
    explain_finished(w);
    explain_unfinished(w);
}

muslin_status muslin_solution_explain(const struct muslin_solution *solution, muslin_id node, int32_t axis,
                                      struct muslin_term *rows, size_t row_size, size_t capacity, size_t *count,
                                      struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    uint32_t number = msl_want_node(&check, solution, node);
    msl_want_choice(&check, MUSLIN_ARG_AXIS, axis, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct working w = { .solution = solution,
                         .args = msl_node_args(solution->quilt, number),
                         .node = number,
                         .axis = axis,
                         .row_size = row_size };
    explain(&w);
    if (msl_rows_wanted(&check, rows, row_size, TERM_LEAST, capacity, count, w.used)) {
        w.rows = rows;
        explain(&w);
    }
    return check.status;
}
