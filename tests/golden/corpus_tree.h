/* corpus_tree.h - small piecing trees drawn at random, for the corpora of what is done with them.
 *
 * SPDX-License-Identifier: MIT
 *
 * Every quilt has the tag 1, so that ids are the same numbers everywhere. */
#ifndef MUSLIN_CORPUS_TREE_H
#define MUSLIN_CORPUS_TREE_H

#include "golden.h"

enum { IDS = 48 };

struct ids {
    size_t used;
    muslin_id of[IDS];
};

/* A quilt and what was made in it. */
struct tree {
    struct shelf shelf;
    struct muslin_quilt *quilt;
    int32_t metric; /* 1: measures are whole centimetres, else inches */
    struct ids fabrics;
    struct ids measures;
    struct ids nodes;
};

/* A quilt with some fabrics, measures and patches; 0 when not even that came about. */
int tree_begin(struct golden *g, struct tree *tree);
/* Makes so many nodes of any kind, of those there are. */
void tree_grow(struct golden *g, struct tree *tree, int64_t steps);
/* Gives it back; whether the shelf is empty then goes into the digest. */
void tree_end(struct golden *g, struct tree *tree);

/* One of them, the newest most often; rarely what is none of them. */
muslin_id draw_id(struct golden *g, const struct ids *ids);
/* The same, or mostly 0. */
muslin_id draw_id_rarely(struct golden *g, const struct ids *ids, int64_t n);
/* The quilt, rarely null. */
struct muslin_quilt *draw_quilt(struct golden *g, const struct tree *tree);

/* Status and id of what was to be made, which is kept where it was. */
void told_id(struct golden *g, struct ids *ids, muslin_status status, const muslin_id *id);

/* Solves the tree under a root with a request and values of all sorts; null after a failure. In corpus_solution.c. */
struct muslin_solution *tree_solve(struct golden *g, struct tree *tree, muslin_id root);

/* An allocator of its own, empty again, with room for the search of a cutting plan. In corpus_cutplan.c. */
struct muslin_allocator open_cells(void);

/* Room for all rows, rarely for none or few. */
size_t draw_room(struct golden *g, size_t most);
/* Status and count of rows that were asked for; how many were written: none after a failure, and none when it was only
 * asked how many there are. */
size_t told_rows(struct golden *g, muslin_status status, const size_t *count, size_t room);

/* The makers of corpus_tree_round.c: round a centre, and fields. */
void tree_pinwheel(struct golden *g, struct tree *tree);
void tree_set_in(struct golden *g, struct tree *tree);
void tree_logs(struct golden *g, struct tree *tree);
void tree_surround(struct golden *g, struct tree *tree);
void tree_sashed(struct golden *g, struct tree *tree);
void tree_diagonal(struct golden *g, struct tree *tree);
void tree_sixty(struct golden *g, struct tree *tree);

/* What they are made of. */
muslin_id tree_measure(struct golden *g, struct tree *tree, const muslin_len *size);
muslin_id tree_extent(struct golden *g, struct tree *tree, muslin_id node, int32_t axis);
muslin_id tree_patch_of(struct golden *g, struct tree *tree, muslin_id width, muslin_id height);
muslin_id tree_turned(struct golden *g, struct tree *tree, muslin_id node, int32_t quarter_turns);

#endif
