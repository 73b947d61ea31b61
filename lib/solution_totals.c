/* solution_totals.c - a solution at a glance.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

enum { TOTALS_LEAST = sizeof(struct muslin_solution_total) };

/* ---- areas ------------------------------------------------------------------------------------------------------ */

/* How much of one patch of a node is drawn. */
static int64_t area_drawn(struct msl_drawing *drawing, const struct muslin_solution *solution, uint32_t node,
                          int64_t patch)
{
    struct msl_drawn drawn;
    msl_draw_start(drawing, solution, node, MUSLIN_STAGE_FINISHED);
    msl_draw_patch(drawing, patch, &drawn);
    return msl_ring_area(&drawn.ring);
}

/* Whether all of the node reached lies inside of the one at which the drawing began. In a turned frame its corners and
 * those of its pieces are rounded apart, by less than a tick each, once for every frame. */
static int lies_inside(const struct msl_drawing *drawing)
{
    const struct msl_size *all = msl_size_of(drawing->solution, drawing->root);
    const muslin_len margin = 2 * drawing->level;
    for (int corner = 0; corner < 4; corner++) {
        muslin_len x = drawing->at.x + ((corner & 1) != 0 ? msl_drawn_width(drawing) : 0);
        muslin_len y = drawing->at.y + ((corner & 2) != 0 ? msl_drawn_height(drawing) : 0);
        msl_draw_point(drawing, &x, &y);
        if (x < margin || y < margin || x > all->width - margin || y > all->height - margin)
            return 0;
    }
    return 1;
}

/* On the way down to a patch of a trimmed node: how many patches lie in the first part that is not cut, 0 where there
 * is no such part. */
static int64_t patches_uncut(struct msl_drawing *drawing, const struct muslin_solution *solution, uint32_t node,
                             int64_t patch)
{
    msl_draw_start(drawing, solution, node, MUSLIN_STAGE_FINISHED);
    while (patch >= msl_pieces(solution, drawing->at.node)) {
        int64_t before;
        int64_t part = msl_part_with(solution, drawing->at.node, patch, &before);
        patch -= before;
        msl_draw_enter(drawing, part);
        if (lies_inside(drawing))
            return msl_size_of(solution, drawing->at.node)->patches;
    }
    return 0;
}

/* What a trimmed node loses of what its child shows. Parts that are not cut are passed over. */
static int64_t area_trimmed(const struct muslin_solution *solution, uint32_t node)
{
    const uint32_t child = msl_part(solution, node, 0).node;
    const int64_t patches = msl_size_of(solution, node)->patches;
    struct msl_drawing drawing;
    int64_t sum = 0;
    int64_t patch = 0;
    while (patch < patches) {
        int64_t uncut = patches_uncut(&drawing, solution, node, patch);
        if (uncut == 0)
            sum += area_drawn(&drawing, solution, child, patch) - area_drawn(&drawing, solution, node, patch);
        patch += uncut == 0 ? 1 : uncut;
    }
    return sum;
}

/* ---- everything ------------------------------------------------------------------------------------------------- */

/* Sums over the nodes of one top. Before trimming the area may pass 64 bits; what is left fits again. */
struct sums {
    int64_t nodes;
    int64_t bound;
    uint64_t area;
};

static struct sums sum_nodes(const struct muslin_solution *solution)
{
    struct sums sums = { 0, 0, 0 };
    for (uint32_t node = 1; node <= solution->root; node++) {
        int64_t copies = msl_copies(&solution->counts[node - 1]) / solution->spec.tops;
        if (copies == 0)
            continue;
        struct msl_own_area own = msl_own_area(solution, node);
        if (msl_node_row(solution->quilt, node)->kind == MUSLIN_NODE_TRIM)
            own.area -= area_trimmed(solution, node);
        sums.nodes++;
        sums.bound += own.bound * copies;
        sums.area += (uint64_t)own.area * (uint64_t)copies;
    }
    return sums;
}

static void count_rows(const struct muslin_solution *solution, struct muslin_solution_total *totals)
{
    const struct muslin_misfit *misfits = solution->misfits.rows;
    const struct muslin_solution_cut *cuts = solution->cuts.rows;
    const struct muslin_stripset *sets = solution->sets.rows;
    totals->cuts = (int64_t)solution->cuts.used;
    totals->stripsets = (int64_t)solution->sets.used;
    for (uint64_t i = 0; i < solution->misfits.used; i++)
        totals->eased += misfits[i].kind == MUSLIN_MISFIT_EASED;
    totals->misfits = (int64_t)solution->misfits.used - totals->eased;
    for (uint64_t i = 0; i < solution->cuts.used; i++)
        totals->warnings |= cuts[i].warnings;
    for (uint64_t i = 0; i < solution->sets.used; i++)
        totals->warnings |= sets[i].used ? sets[i].warnings : 0;
}

muslin_status muslin_solution_totals(const struct muslin_solution *solution, struct muslin_solution_total *out,
                                     struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    msl_want_solution(&check, solution);
    msl_want_output(&check, out, TOTALS_LEAST);
    if (check.status != MUSLIN_OK)
        return check.status;
    const struct msl_size *root = msl_size_of(solution, solution->root);
    const struct sums sums = sum_nodes(solution);
    struct muslin_solution_total totals = {
        .patches = root->patches * solution->spec.tops, .different_nodes = sums.nodes,
        .finished_area = 2 * root->width * root->height, .patch_area = (int64_t)sums.area, .area_error = sums.bound,
        .exact = sums.bound == 0 && root->exact
    };
    count_rows(solution, &totals);
    msl_write_struct(out, &totals, sizeof totals);
    return MUSLIN_OK;
}
