/* corpus_sewing.c - the calls of sewing.h: small trees solved and put in an order of sewing.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 200, ROWS = 96, LABEL = 12 };

static int64_t take_steps(struct golden *g, const struct muslin_solution *solution)
{
    static struct muslin_sewing_step rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_sewing_steps(solution, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_sewing_step, rows[i]);
    return (int64_t)count;
}

static void take_feeds(struct golden *g, const struct muslin_solution *solution, int64_t step)
{
    static struct muslin_sewing_feed rows[ROWS];
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n =
        told_rows(g, muslin_sewing_feeds(solution, step, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_sewing_feed, rows[i]);
}

static void take_totals(struct golden *g, const struct muslin_solution *solution)
{
    OUT(muslin_sewing_total, totals);
    muslin_len seam_error = draw_rarely(g, 4) ? draw_size(g, 1) : draw_below(g, 300);
    muslin_len cut_error = draw_rarely(g, 4) ? draw_size(g, 1) : draw_below(g, 300);
    told(g, muslin_sewing_totals(solution, seam_error, cut_error, &totals, ask(g)));
    TAKE(g, muslin_sewing_total, totals);
}

static void take_label(struct golden *g, int64_t number)
{
    char label[LABEL] = { 0 };
    size_t need = 99;
    size_t cap = draw_rarely(g, 20) ? (size_t)draw_below(g, 3) : LABEL;
    told(g, muslin_sewing_label(number, label, cap, &need, ask(g)));
    take_number(g, (int64_t)need);
    take_text(g, label, LABEL);
}

void golden_sewing(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 4, 40));
        struct muslin_solution *solution = tree_solve(g, &tree, draw_id(g, &tree.nodes));
        int64_t steps = take_steps(g, solution);
        for (int64_t step = draw_rarely(g, 10) ? -1 : 0; step < steps + draw_rarely(g, 4); step++)
            take_feeds(g, solution, step);
        take_totals(g, solution);
        muslin_solution_free(solution);
        tree_end(g, &tree);
    }
    for (int64_t number = -1; number < 800; number++)
        take_label(g, number);
    for (int32_t round = 0; round < TREES; round++)
        take_label(g, draw_count(g, 2000000));
}
