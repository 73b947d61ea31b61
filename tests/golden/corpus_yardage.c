/* corpus_yardage.c - the calls of yardage.h.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 60, EXTRA = 3, ROWS = 96 };

static struct muslin_yardage_spec draw_wish(struct golden *g)
{
    SPEC(muslin_yardage_spec, spec);
    spec.size = draw_rarely(g, 60) ? spec.size : (uint32_t)sizeof spec;
    spec.flags = draw_rarely(g, 2) ? 0 : (uint32_t)draw_below(g, 16);
    if (draw_rarely(g, 5))
        spec.flags |= MUSLIN_CUTPLAN_FOLDED;
    spec.end_loss = draw_rarely(g, 2) ? draw_size(g, 1) : 0;
    spec.resquare_loss = draw_rarely(g, 4) ? draw_size(g, 1) : 0;
    spec.resquare_every = spec.resquare_loss == 0 ? 0 : draw_between(g, draw_rarely(g, 30) ? 0 : 1, 9);
    spec.straightening = draw_rarely(g, 2) ? draw_size(g, 2) : 0;
    spec.spare_pieces = draw_rarely(g, 3) ? draw_below(g, 4) : 0;
    spec.work_limit = draw_rarely(g, 60) ? -1 : draw_below(g, 5000);
    spec.join_loss = draw_rarely(g, 60) ? draw_length(g) : draw_size(g, 2);
    spec.mitre_extra = draw_rarely(g, 60) ? draw_length(g) : draw_size(g, 3);
    spec.least_part = draw_rarely(g, 60) ? draw_length(g) : draw_size(g, 12);
    spec.extra = draw_rarely(g, 4) ? draw_size(g, 6) : 0;
    spec.step = draw_rarely(g, 4) ? draw_size(g, 9) : 36576;
    spec.shrinkage = draw_rarely(g, 3) ? (int32_t)draw_between(g, draw_rarely(g, 30) ? -1 : 0, 90000) : 0;
    spec.extra_share = draw_rarely(g, 3) ? (int32_t)draw_between(g, draw_rarely(g, 30) ? -1 : 0, 200000) : 0;
    spec.long_pieces = draw_choice(g, MUSLIN_LONG_PIECES_LENGTHWISE, MUSLIN_LONG_PIECES_JOINED);
    return spec;
}

static void draw_extra(struct golden *g, const struct tree *tree, struct muslin_extra_cut_spec *rows, size_t n)
{
    for (size_t i = 0; i < n; i++) {
        SPEC(muslin_extra_cut_spec, cut);
        cut.size = draw_rarely(g, 200) ? cut.size : (uint32_t)sizeof cut;
        cut.kind = (int32_t)draw_between(g, 1, draw_rarely(g, 60) ? 5 : 4);
        cut.flags = cut.kind == MUSLIN_BLANK_PIECE ? (uint32_t)draw_below(g, 2) : 0;
        cut.fabric = draw_id(g, &tree->fabrics);
        cut.cut_width = draw_rarely(g, 90) ? draw_length(g) : draw_size(g, 20) + MUSLIN_TICKS_PER_INCH;
        cut.cut_length = draw_size(g, 8) + MUSLIN_TICKS_PER_INCH;
        cut.count = draw_below(g, 9);
        cut.run_in = cut.kind == MUSLIN_BLANK_SLOPED ? draw_size(g, 3) : 0;
        cut.join_loss = cut.kind == MUSLIN_BLANK_JOINED ? draw_size(g, 2) : 0;
        cut.least_part = cut.kind == MUSLIN_BLANK_JOINED ? draw_size(g, 12) : 0;
        rows[i] = cut;
    }
}

static int32_t tell(void *context, int64_t work, int64_t best, int64_t bound)
{
    struct golden *g = context;
    take_number(g, work);
    take_number(g, best);
    take_number(g, bound);
    return draw_rarely(g, 9);
}

static void take_pieces(struct golden *g, const struct muslin_solution *solution, const struct tree *tree,
                        const struct muslin_yardage_spec *spec)
{
    static struct muslin_blank_spec rows[ROWS];
    muslin_id fabric = draw_id(g, &tree->fabrics);
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    size_t n = told_rows(g, muslin_yardage_pieces(solution, fabric, spec, rows, sizeof rows[0], room, &count, ask(g)),
                         &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_blank_spec, rows[i]);
}

static void take_bill(struct golden *g, const struct muslin_yardage *yardage)
{
    static struct muslin_fabric_yardage rows[ROWS];
    const struct muslin_cutplan *plan = NULL;
    OUT(muslin_cutplan_total, totals);
    size_t count = 0;
    size_t room = draw_room(g, ROWS);
    int64_t row = draw_between(g, draw_rarely(g, 30) ? -1 : 0, 2);
    size_t n = told_rows(g, muslin_yardage_fabrics(yardage, rows, sizeof rows[0], room, &count, ask(g)), &count, room);
    for (size_t i = 0; i < n; i++)
        TAKE(g, muslin_fabric_yardage, rows[i]);
    told(g, muslin_yardage_plan(yardage, row, &plan, ask(g)));
    told(g, muslin_cutplan_totals(plan, &totals, ask(g)));
    TAKE(g, muslin_cutplan_total, totals);
}

static void take_yardage(struct golden *g, const struct muslin_solution *solution, const struct tree *tree)
{
    const struct muslin_yardage_spec spec = draw_wish(g);
    const size_t n = (size_t)draw_between(g, 0, EXTRA);
    const int tells = draw_rarely(g, 2);
    struct muslin_extra_cut_spec cuts[EXTRA];
    struct muslin_allocator memory = open_cells();
    struct muslin_yardage *yardage = NULL;
    draw_extra(g, tree, cuts, n);
    take_pieces(g, solution, tree, &spec);
    told(g, muslin_yardage_create(solution, &spec, cuts, sizeof cuts[0], n, &memory, tells ? tell : NULL, g, &yardage,
                                  ask(g)));
    take_bill(g, yardage);
    muslin_yardage_free(yardage);
}

void golden_yardage(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 4, 40));
        struct muslin_solution *solution = tree_solve(g, &tree, draw_id(g, &tree.nodes));
        if (solution != NULL)
            take_yardage(g, solution, &tree);
        muslin_solution_free(solution);
        tree_end(g, &tree);
    }
}
