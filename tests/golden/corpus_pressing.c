/* corpus_pressing.c - the calls of pressing.h: small trees solved and pressed.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 200, ROWS = 200 };

static struct muslin_pressing *press(struct golden *g, struct tree *tree, const struct muslin_solution *solution)
{
    SPEC(muslin_pressing_spec, spec);
    struct muslin_pressing *plan = NULL;
    spec.flags = draw_flags(g, 0);
    spec.work_limit = draw_rarely(g, 60) ? draw_between(g, -1, 1) : draw_below(g, 5000);
    spec.prefer = draw_choice(g, 0, 1);
    shelf_refuse(g, &tree->shelf, 20, 12);
    told(g, muslin_pressing_create(draw_rarely(g, 200) ? NULL : solution, &spec, NULL, NULL, NULL, &plan, ask(g)));
    tree->shelf.refused = 0;
    take_number(g, plan != NULL);
    return plan;
}

static void take_seams(struct golden *g, const struct muslin_pressing *plan)
{
    static struct muslin_pressing_seam rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_pressing_seams(plan, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_pressing_seam, rows[i]);
}

static void take_children(struct golden *g, const struct muslin_pressing *plan)
{
    static struct muslin_pressing_child rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_pressing_children(plan, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_pressing_child, rows[i]);
}

static void take_exceptions(struct golden *g, const struct muslin_pressing *plan)
{
    static struct muslin_pressing_exception rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_pressing_exceptions(plan, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_pressing_exception, rows[i]);
}

void golden_pressing(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 4, 40));
        struct muslin_solution *solution = tree_solve(g, &tree, draw_id(g, &tree.nodes));
        struct muslin_pressing *plan = press(g, &tree, solution);
        OUT(muslin_pressing_total, totals);
        told(g, muslin_pressing_totals(plan, &totals, ask(g)));
        TAKE(g, muslin_pressing_total, totals);
        take_seams(g, plan);
        take_children(g, plan);
        take_exceptions(g, plan);
        muslin_pressing_free(plan);
        muslin_solution_free(solution);
        tree_end(g, &tree);
    }
}
