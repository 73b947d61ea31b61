/* tags.h - what a page shows, said to those who do not see it: a tree of headings, paragraphs, lists, tables and
 * figures in reading order. Surfaces that know no tags pass them over.
 *
 * SPDX-License-Identifier: MIT */
#ifndef TAGS_H
#define TAGS_H

#include "flow.h"

enum { TAGS_DEEPEST = 64 };

/* What the surface cannot be told of a tag. */
struct told {
    char *said;   /* of a figure: what it shows */
    bool is_head; /* of a cell: it heads a column, or a row */
    bool of_row;
};

struct tags {
    cairo_t *cairo;
    const char *open[TAGS_DEEPEST]; /* those that hold others, the outermost first */
    int level[TAGS_DEEPEST];        /* of lists: 1 for steps, 2 and more for points */
    int used;
    bool by_size;                   /* headings come under sizes */
    bool is_alone;                  /* the page is the only one: nothing leads to others */
    struct told *told; /* in their order, for pdf_mend() */
    size_t told_used;
    size_t told_room;
};

void tags_begin(struct tags *tags, cairo_t *cairo);
void tags_end(struct tags *tags);
void tags_free(struct tags *tags);

/* Opens and closes lists so that the item stands where it belongs. */
void tags_place(struct tags *tags, const struct flow *flow, const struct strip *strip);
/* The tag of an item's own words. */
const char *tags_of(const struct tags *tags, const struct flow *flow, const struct strip *strip);
/* One that holds others. */
void tags_open(struct tags *tags, const char *tag, int level);
void tags_close(struct tags *tags);
/* One that holds words or a picture. */
void tags_leaf(struct tags *tags, const char *tag);
void tags_leaf_end(struct tags *tags, const char *tag);
/* A figure, with what is said of it; the words are the tags' own from here on. */
void tags_figure(struct tags *tags, char *said);
/* A cell that heads a row or a column. */
void tags_head(struct tags *tags, bool of_row);

#endif
