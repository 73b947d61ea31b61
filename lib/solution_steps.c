/* solution_steps.c - the steps of sewing: their numbers, and what goes into each.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every node that is sewn takes a step, in the order of the nodes, a strip-pieced join two: its set comes before its
 * segments. Patches are cut as they are, and turned nodes are what they turn. */
#include "solution_inside.h"

static int32_t kind_of(const struct muslin_solution *s, uint32_t node)
{
    return msl_node_row(s->quilt, node)->kind;
}

static uint32_t not_turned(const struct muslin_solution *s, uint32_t node)
{
    return kind_of(s, node) == MUSLIN_NODE_TURN ? (uint32_t)msl_node_args(s->quilt, node)[TURN_CHILD] : node;
}

static int is_sewn(const struct muslin_solution *s, uint32_t node)
{
    int32_t kind = kind_of(s, node);
    return kind != MUSLIN_NODE_PATCH && kind != MUSLIN_NODE_TURN && msl_copies(&s->counts[node - 1]) > 0;
}

/* One child more: `last` has for every node the last row of feeds that it has, from 1; rows before the first of this
 * step are of others. */
static void feed(struct msl_solving *solving, const struct msl_size *size, uint32_t child, uint32_t *last)
{
    struct muslin_solution *s = solving->solution;
    struct msl_feed *rows = s->feeds.rows;
    if (last[child - 1] > size->feeds) {
        rows[last[child - 1] - 1].each++;
        return;
    }
    struct msl_feed *row = msl_add_row(solving->check, &s->allocator, &s->feeds, sizeof *row);
    if (row == NULL)
        return;
    *row = (struct msl_feed){ .node = child, .each = 1 };
    last[child - 1] = (uint32_t)s->feeds.used;
}

static void find_step(struct msl_solving *solving, uint32_t node, uint32_t *last)
{
    struct muslin_solution *s = solving->solution;
    struct msl_size *size = msl_size_of(s, node);
    const int64_t parts = msl_parts(s, node);
    s->steps += size->as_set ? 2 : 1;
    size->step = s->steps;
    size->feeds = (uint32_t)s->feeds.used;
    for (int64_t k = 0; k < parts; k++)
        feed(solving, size, not_turned(s, msl_part(s, node, k).node), last);
    size->fed = (uint32_t)s->feeds.used - size->feeds;
}

void msl_find_steps(struct msl_solving *solving)
{
    struct muslin_solution *s = solving->solution;
    uint32_t *last = msl_scratch(solving->check, &s->allocator, s->root, sizeof *last);
    if (last == NULL)
        return;
    for (uint32_t node = 1; node <= s->root; node++)
        last[node - 1] = 0;
    for (uint32_t node = 1; node <= s->root; node++)
        if (is_sewn(s, node))
            find_step(solving, node, last);
    msl_scratch_free(&s->allocator, last, s->root, sizeof *last);
}
