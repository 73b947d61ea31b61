/* flow.h - a document as one long column of strips that are never divided: lines, rows of tables, pictures.
 *
 * SPDX-License-Identifier: MIT
 *
 * flow_create() lays the strips out in reading order, flow_break() (flow_break.c) gives each its page, paint_page()
 * (paint.h) draws a page. */
#ifndef FLOW_H
#define FLOW_H

#include "document.h"
#include "page.h"
#include "type.h"

enum strip_kind { STRIP_SPACE = 1, STRIP_LINE, STRIP_ROW, STRIP_PICTURES };

/* A text with what hangs before it. */
struct lines {
    enum face face;
    PangoLayout *layout;
    double x;
    PangoLayout *lead; /* may be null */
    enum face lead_face;
    double lead_x;
};

/* A table, or some of its columns. */
struct grid {
    const struct table *table;
    enum face face;
    enum face head_face;
    size_t columns;
    size_t *column;        /* of the table, of each of these */
    double *x;
    double *widths;
    PangoLayout **heads;
    double head_height;
    PangoLayout **cells;   /* row by row */
    double *row_heights;
    double left;
    double right;
};

/* A picture in its place, with its caption so far below it. */
#define FLOW_CAPTION_GAP 3.0
struct shown {
    struct picture picture;
    int part;
    double x;
    double y; /* from the top of the strip */
    double most_width;
    double most_height;
    double width;
    double height;
    PangoLayout *caption; /* below; may be null */
    double caption_x;
};

struct strip {
    enum strip_kind kind;
    size_t item;    /* of the document; NO_ITEM: the list of contents */
    bool in_step;
    bool first;     /* of its item */
    bool last;
    double before;  /* white above it, but at the top of a page */
    double height;
    double rise;    /* drawn so much higher: it stands beside what came before */
    bool keep;      /* on one page with the next one */
    bool new_page;
    struct lines *lines;
    struct grid *grid;
    struct shown *shown;
    size_t count;   /* of lines: which; of a grid: which row; of pictures: how many */
    int page;       /* from 1: flow_break() */
    double y;
};
#define NO_ITEM SIZE_MAX

/* A place one can go to: a size or a heading. */
struct mark {
    size_t strip;
    size_t item;
    bool is_size;
};

struct flow {
    const struct document *document;
    struct page page;
    struct type_case *letters;
    struct strip *strips;
    size_t used;
    size_t room;
    struct mark *marks;
    size_t marks_used;
    size_t marks_room;
    int pages;
    struct table *contents;  /* the table that has the pages; null: none */
    size_t *contents_items;  /* of a list: its headings, column by column */
    size_t pages_in_row;     /* of the table of sizes */
    size_t sizes;            /* in the document */
    /* While it is made: the step that is being set, and the pictures beside it. */
    bool in_step;
    size_t step_begins; /* its first strip */
    double down;     /* from the top of the step */
    double beside;   /* pictures beside the step reach so far down */
    double beside_width; /* ... and are so wide */
    bool *is_beside; /* of each item: it stands beside its step */
    struct shown *waiting;
    size_t waiting_used;
};

struct flow *flow_create(const struct document *document, struct type_case *letters, enum pattern_paper paper);
void flow_free(struct flow *flow);

/* What a size is called without the pattern's title before it. */
const char *flow_name_of_size(const struct flow *flow, size_t item);

/* ---- for those who write it -------------------------------------------------------------------------------------- */

void *flow_need(size_t count, size_t size); /* cleared memory, or an end */
struct strip *flow_add(struct flow *flow, enum strip_kind kind, size_t item, double before, double height);
/* How wide text may be that begins at x. */
double flow_width(const struct flow *flow, double x);
/* How many items are of a kind. */
size_t flow_count(const struct document *document, enum item_kind kind);
/* The white above an item. */
double flow_before(const struct flow *flow, size_t item);
/* Whether an item belongs to the step before it. */
bool flow_is_of_step(const struct item *item);

void flow_lines(struct flow *flow, size_t item);                               /* flow_lines.c */
/* A text whose letters and place are known, line by line; with `keep` all of it stays with what follows. */
void flow_put_lines(struct flow *flow, size_t item, struct lines *lines, const char *text, bool keep);
void flow_table(struct flow *flow, size_t item);                               /* flow_table.c */
void flow_grid(struct flow *flow, size_t item, const struct table *table, bool is_contents);
void flow_grid_free(struct grid *grid);
size_t flow_pictures(struct flow *flow, size_t item); /* flow_pictures.c: a run of them; tells the item after it */
bool flow_shrink(struct strip *strip, double height); /* false: that would be too small */
void flow_shown_free(struct shown *shown, size_t count);
/* Blocks in diagonal rows are told apart only on a large drawing. */
bool flow_is_on_point(const struct picture *picture);
void flow_choose_beside(struct flow *flow, size_t step);                       /* flow_beside.c */
void flow_put_beside(struct flow *flow, size_t step);
void flow_contents(struct flow *flow);                                         /* flow_contents.c */
const struct table *flow_with_pages(struct flow *flow, size_t item);
size_t flow_size_named(const struct flow *flow, const char *name);
size_t flow_leads_to(const struct flow *flow, const struct grid *grid, size_t row, size_t column);
void flow_number_contents(struct flow *flow);
void flow_break(struct flow *flow);                                            /* flow_break.c */

#endif
