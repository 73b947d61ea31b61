/* corpus_quilt.c - the calls of quilt.h: trees made and read back.
 *
 * SPDX-License-Identifier: MIT */
#include "corpus_tree.h"

enum { TREES = 150, CHILDREN = 40, NAME = 48 };

static void take_node(struct golden *g, const struct tree *tree, muslin_id id)
{
    OUT(muslin_node, node);
    muslin_id children[CHILDREN] = { 0 };
    size_t count = 99;
    size_t capacity = draw_rarely(g, 20) ? (size_t)draw_below(g, 3) : CHILDREN;
    told(g, muslin_quilt_node(draw_quilt(g, tree), id, &node, ask(g)));
    TAKE(g, muslin_node, node);
    told(g, muslin_quilt_children(draw_quilt(g, tree), id, children, capacity, &count, ask(g)));
    take_number(g, (int64_t)count);
    for (size_t i = 0; i < CHILDREN; i++)
        take_number(g, children[i]);
}

static void take_name(struct golden *g, const struct tree *tree, muslin_id id)
{
    char name[NAME] = { 0 };
    size_t need = 99;
    size_t cap = draw_rarely(g, 10) ? (size_t)draw_below(g, 6) : NAME;
    told(g, muslin_quilt_name(draw_quilt(g, tree), id, name, cap, &need, ask(g)));
    take_number(g, (int64_t)need);
    take_text(g, name, NAME);
}

/* Without `bytes`, which follows the target's words. */
static void take_counts(struct golden *g, const struct tree *tree)
{
    OUT(muslin_part_counts, counts);
    told(g, muslin_quilt_counts(draw_quilt(g, tree), &counts, ask(g)));
    counts.bytes = 0;
    TAKE(g, muslin_part_counts, counts);
}

static void take_ids(struct golden *g, const struct ids *ids)
{
    for (size_t i = 0; i < ids->used; i++) {
        take_number(g, muslin_id_sort(ids->of[i]));
        take_number(g, muslin_id_number(ids->of[i]));
    }
}

void golden_quilt(struct golden *g)
{
    static struct tree tree;
    for (int32_t round = 0; round < TREES; round++) {
        if (!tree_begin(g, &tree))
            continue;
        tree_grow(g, &tree, draw_between(g, 10, 60));
        take_counts(g, &tree);
        for (size_t i = 0; i < tree.nodes.used; i++)
            take_node(g, &tree, draw_rarely(g, 40) ? draw_id(g, &tree.fabrics) : tree.nodes.of[i]);
        for (size_t i = 0; i < tree.measures.used; i++)
            take_name(g, &tree, draw_rarely(g, 40) ? draw_id(g, &tree.nodes) : tree.measures.of[i]);
        for (size_t i = 0; i < tree.fabrics.used; i++)
            take_name(g, &tree, tree.fabrics.of[i]);
        take_ids(g, &tree.fabrics);
        take_ids(g, &tree.measures);
        take_ids(g, &tree.nodes);
        take_number(g, muslin_id_sort(draw_length(g)));
        take_number(g, muslin_id_number(draw_length(g)));
        tree_end(g, &tree);
    }
    muslin_quilt_free(NULL);
}
