/* patches.h - the patches of a node on paper: where they lie, what they are cut as, where parts lie among them.
 *
 * SPDX-License-Identifier: MIT */
#ifndef PATCHES_H
#define PATCHES_H

#include "ink.h"

/* A size of a pattern, to know it again: another one may lie where it lay, whose totals differ. */
struct whose {
    const struct worked *worked;
    struct muslin_solution_total totals;
    struct muslin_node_size top;
};
struct whose whose(const struct worked *worked);
bool is_whose(const struct whose *whose, const struct worked *worked);

/* The outlines under a node, in the order of the tree; give them back with patches_free(). */
struct patches {
    struct muslin_outline *rows;
    struct muslin_outline_corner *corners;
    size_t count;
    size_t corners_count;
};
struct patches patches_of(const struct worked *worked, muslin_id node, int32_t stage);
void patches_free(struct patches *patches);

/* From the library's ticks to points: the lower left corner of what is drawn lies at x, y. */
struct view {
    double x;
    double y;
    double unit;
};
double view_x(const struct view *view, muslin_len x);
double view_y(const struct view *view, muslin_len y);

struct spot {
    double x;
    double y;
};
struct box {
    double left;
    double right;
    double top;
    double bottom;
};
/* Counted round the patch: the one after the last is the first. */
struct spot corner_of(const struct patches *patches, size_t row, int64_t corner, const struct view *view);
/* Round patches `first` to `end`, the latter not included. */
struct box box_of(const struct patches *patches, size_t first, size_t end, const struct view *view);
/* The middle of a patch's area. */
struct spot middle_of(const struct patches *patches, size_t row, const struct view *view);

/* Adds a patch to the path. */
void trace_patch(cairo_t *cairo, const struct patches *patches, size_t row, const struct view *view);
/* Patches in their fabrics' colours, each moved by its place in `moved`, which may be null. */
void draw_patches(cairo_t *cairo, const struct worked *worked, const struct patches *patches, size_t first, size_t end,
                  const struct view *view, const struct spot *moved);
/* Adds all their edges to the path as lines: seams.c. False, and nothing is added, where outlines are shorter. */
bool trace_seams(cairo_t *cairo, const struct patches *patches, size_t first, size_t end, const struct view *view,
                 const struct spot *moved);
/* Outlines only. */
void outline_patches(cairo_t *cairo, const struct patches *patches, const struct view *view);

/* Words in a patch, as large as fits, `size` at most; false, and nothing is written, where they fit nowhere. */
bool write_in_patch(cairo_t *cairo, const struct patches *patches, size_t row, const struct view *view,
                    struct spot moved, const char *words, double size);

/* ---- what lies where: places.c ----------------------------------------------------------------------------------- */

/* The row of the cut list that each patch under a node comes from, or -1: give it back with free(). */
int64_t *cuts_of_patches(const struct worked *worked, muslin_id node, const struct patches *patches);

/* A node among the patches of another, as it is met on the way down. */
struct place {
    muslin_id node;      /* without what only turns it */
    size_t first;        /* of its patches */
    size_t end;
    muslin_id parent;    /* 0 for the outermost */
    int depth;
    int32_t turns;       /* quarter turns, all those above it counted */
    bool mirrored;
    bool is_whole;       /* being turned as a whole, not pressed, where it is the other way */
    bool other_way;      /* pressed the other way, or turned so, as lying_at() has it, but for all that it lies in */
};
/* Asked at each node from the outermost down: false does not go into it. */
typedef bool visitor(void *with, const struct place *place);
void visit_places(const struct worked *worked, muslin_id node, const struct patches *patches, visitor *visit,
                  void *with);

/* Where a child begins among its parent's patches: own pieces of the parent come first. */
size_t own_patches(muslin_id node, const struct patches *patches, size_t first, size_t end);
size_t patches_in(const struct worked *worked, muslin_id node);

/* "[4]" of a row of the cut list; "C" or "C*" of what is sewn. */
const char *piece_name(const struct worked *worked, int64_t cut, char text[WORD_ROOM]);
const char *part_name(const struct worked *worked, muslin_id node, bool other_way, char text[WORD_ROOM]);

#endif
