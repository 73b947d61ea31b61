/* corpus_solution.c - the calls of solution.h: trees solved with values of all sorts, and everything asked.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 250, ROWS = 96, CORNERS = 400, STEPS = 64, VALUES = 4 };

/* ---- solving --------------------------------------------------------------------------------------------------- */

static int64_t draw_or_none(struct golden *g, muslin_len size, int64_t n)
{
    return draw_rarely(g, n) ? size : 0;
}

/* Mostly a usual request: each of its fourteen figures is off now and then. */
static struct muslin_solution_spec draw_request(struct golden *g)
{
    SPEC(muslin_solution_spec, spec);
    spec.flags = draw_flags(g, 0);
    spec.tops = draw_rarely(g, 3) ? draw_between(g, 1, 12) : 1;
    if (draw_rarely(g, 60))
        spec.tops = draw_count(g, 3);
    spec.ease = draw_or_none(g, draw_below(g, 2000), 3);
    if (draw_rarely(g, 4)) {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        spec.grid = rounding.grid;
        spec.grid_tolerance = rounding.tolerance;
        spec.direction = rounding.direction;
    }
    spec.policy = draw_rarely(g, 3) ? draw_choice(g, MUSLIN_ALLOWANCE_POLICY_EXACT, MUSLIN_ALLOWANCE_POLICY_OVERSIZE)
                                    : MUSLIN_ALLOWANCE_POLICY_EXACT;
    spec.half_addition = draw_or_none(g, 7112, 6);
    spec.quarter_addition = draw_or_none(g, 10160, 6);
    spec.trim_room = spec.policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? draw_size(g, 1) : 0;
    spec.end_trim = draw_or_none(g, draw_size(g, 1), 4);
    spec.resquare_every = draw_rarely(g, 4) ? draw_between(g, 1, 6) : 0;
    spec.resquare_loss = spec.resquare_every > 0 ? draw_size(g, 1) : 0;
    spec.fold_clear = draw_or_none(g, draw_size(g, 2), 6);
    spec.flags = spec.fold_clear > 0 ? 0 : MUSLIN_YIELD_FROM_ONE_END;
    spec.tip = draw_choice(g, MUSLIN_TIP_SHARP, MUSLIN_TIP_BLUNT);
    spec.strip_piecing = draw_rarely(g, 6)
                             ? draw_choice(g, MUSLIN_STRIP_PIECING_WHERE_FEWER, MUSLIN_STRIP_PIECING_NEVER)
                             : MUSLIN_STRIP_PIECING_WHERE_FEWER;
    return spec;
}

/* Another size for a measure, another width for a fabric. */
static struct muslin_solution_value_spec draw_value(struct golden *g, const struct tree *tree)
{
    SPEC(muslin_solution_value_spec, value);
    value.flags = draw_flags(g, 0);
    if (draw_rarely(g, 3)) {
        value.id = draw_id(g, &tree->fabrics);
        value.value = draw_size(g, 60);
    } else {
        value.id = tree->measures.of[draw_below(g, tree->measures.used < 4 ? 1 : 4)];
        value.value = draw_rarely(g, 8) ? draw_seam(g) : draw_size(g, 4);
    }
    if (draw_rarely(g, 30))
        value.id = draw_id(g, draw_rarely(g, 2) ? &tree->nodes : &tree->measures);
    return value;
}

struct muslin_solution *tree_solve(struct golden *g, struct tree *tree, muslin_id root)
{
    struct muslin_solution_value_spec values[VALUES];
    struct muslin_solution *solution = NULL;
    struct muslin_solution_spec spec = draw_request(g);
    size_t n = draw_rarely(g, 2) ? (size_t)draw_below(g, VALUES + 1) : 0;
    for (size_t i = 0; i < VALUES; i++)
        values[i] = draw_value(g, tree);
    shelf_refuse(g, &tree->shelf, 20, 12);
    told(g, muslin_solution_create(draw_quilt(g, tree), root, &spec, values, sizeof values[0], n, NULL, &solution,
                                   ask(g)));
    tree->shelf.refused = 0;
    take_number(g, solution != NULL);
    return solution;
}

/* ---- rows ------------------------------------------------------------------------------------------------------ */

static void take_misfits(struct golden *g, const struct muslin_solution *solution)
{
    static struct muslin_misfit rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n =
        told_rows(g, muslin_solution_misfits(solution, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_misfit, rows[i]);
}

static void take_sets(struct golden *g, const struct muslin_solution *solution)
{
    static struct muslin_stripset rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n =
        told_rows(g, muslin_solution_stripsets(solution, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_stripset, rows[i]);
}

static void take_steps(struct golden *g, muslin_status status, const int64_t *steps, const size_t *count, size_t room)
{
    size_t n = told_rows(g, status, count, room);
    for (size_t i = 0; i < n; i++)
        take_number(g, steps[i]);
}

static void take_cuts(struct golden *g, const struct muslin_solution *solution)
{
    static struct muslin_solution_cut rows[ROWS];
    muslin_id nodes[STEPS];
    size_t cuts = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_solution_cuts(solution, rows, sizeof rows[0], room, &cuts, ask(g)), &cuts, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_solution_cut, rows[i]);
    for (int64_t row = draw_rarely(g, 10) ? -1 : 0; row < (int64_t)cuts + draw_rarely(g, 4); row++) {
        size_t count = 0;
        take_steps(g, muslin_solution_cut_nodes(solution, row, nodes, STEPS, &count, ask(g)), nodes, &count, STEPS);
    }
}

static void take_sum(struct golden *g, const struct muslin_solution *solution, muslin_id node, int32_t axis)
{
    static struct muslin_term rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_solution_explain(solution, node, axis, rows, sizeof rows[0], room, &count, ask(g)),
                         &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_term, rows[i]);
}

/* ---- drawn ----------------------------------------------------------------------------------------------------- */

static struct muslin_outline outlines[ROWS];
static struct muslin_outline_corner corners[CORNERS];

/* One page of outlines; how many there were in it. */
static size_t take_page(struct golden *g, const struct muslin_solution *solution, muslin_id node, int32_t stage,
                        int64_t first)
{
    size_t count = 0;
    size_t given = 0;
    size_t room = draw_room(g, ROWS);
    size_t corner_room = draw_rarely(g, 12) ? (size_t)draw_below(g, 9) : CORNERS;
    told(g, muslin_solution_outlines(solution, node, stage, first, outlines, sizeof outlines[0], room, corners,
                                     sizeof corners[0], corner_room, &count, &given, ask(g)));
    take_number(g, (int64_t)count);
    take_number(g, (int64_t)given);
    for (size_t i = 0; i < given; i++) {
        TAKE(g, muslin_outline, outlines[i]);
        for (int64_t k = 0; k < outlines[i].corners; k++)
            TAKE(g, muslin_outline_corner, corners[outlines[i].first_corner + k]);
    }
    return given;
}

/* Two pages from the beginning, and one from anywhere. */
static void take_drawing(struct golden *g, const struct muslin_solution *solution, muslin_id node, int32_t stage)
{
    size_t given = take_page(g, solution, node, stage, 0);
    if (given > 0)
        take_page(g, solution, node, stage, (int64_t)given);
    take_page(g, solution, node, stage, draw_count(g, 60));
}

/* ---- all of it ------------------------------------------------------------------------------------------------- */

static void take_node(struct golden *g, const struct muslin_solution *solution, muslin_id node)
{
    OUT(muslin_node_size, size);
    int64_t steps[STEPS];
    size_t count = 0;
    told(g, muslin_solution_size(solution, node, &size, ask(g)));
    TAKE(g, muslin_node_size, size);
    take_steps(g, muslin_solution_path(solution, node, steps, STEPS, &count, ask(g)), steps, &count, STEPS);
    take_sum(g, solution, node, draw_choice(g, MUSLIN_AXIS_ACROSS, MUSLIN_AXIS_DOWN));
}

static void take_values(struct golden *g, const struct muslin_solution *solution, const struct tree *tree)
{
    for (size_t i = 0; i < tree->measures.used; i++) {
        muslin_len value = -77;
        muslin_id id = draw_rarely(g, 40) ? draw_id(g, &tree->nodes) : tree->measures.of[i];
        told(g, muslin_solution_value(solution, id, &value, ask(g)));
        take_number(g, value);
    }
}

static void take_solution(struct golden *g, const struct muslin_solution *solution, const struct tree *tree,
                          muslin_id root)
{
    OUT(muslin_solution_total, totals);
    told(g, muslin_solution_totals(solution, &totals, ask(g)));
    TAKE(g, muslin_solution_total, totals);
    take_misfits(g, solution);
    take_sets(g, solution);
    take_cuts(g, solution);
    take_values(g, solution, tree);
    for (size_t i = 0; i < tree->nodes.used; i++)
        take_node(g, solution, draw_rarely(g, 40) ? draw_id(g, &tree->fabrics) : tree->nodes.of[i]);
    take_sum(g, solution, root, MUSLIN_AXIS_ACROSS);
    take_sum(g, solution, root, MUSLIN_AXIS_DOWN);
    take_drawing(g, solution, root, MUSLIN_STAGE_FINISHED);
    int32_t stage = draw_choice(g, MUSLIN_STAGE_FINISHED, MUSLIN_STAGE_RAW);
    take_drawing(g, solution, draw_id(g, &tree->nodes), stage);
}

void golden_solution(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 4, 40));
        for (int32_t times = 0; times < 2; times++) {
            muslin_id root = draw_id(g, &tree.nodes);
            struct muslin_solution *solution = tree_solve(g, &tree, root);
            if (solution != NULL)
                take_solution(g, solution, &tree, root);
            muslin_solution_free(solution);
        }
        tree_end(g, &tree);
    }
}
