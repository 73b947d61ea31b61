/* document.h - what is printed of a pattern: headings, sentences, tables and pictures in reading order, for any printer.
 *
 * SPDX-License-Identifier: MIT */
#ifndef DOCUMENT_H
#define DOCUMENT_H

#include "worked.h"

enum item_kind {
    ITEM_TITLE = 1,  /* of the whole */
    ITEM_SIZE,       /* begins the instructions for one size: a new page */
    ITEM_HEADING,    /* of a part: "Cutting" */
    ITEM_SUBHEADING, /* "Fabric A, night" */
    ITEM_SAY,        /* a paragraph */
    ITEM_POINT,      /* one of a list; `lead` hangs before it: "[4]", "2)", or a dash where it is null */
    ITEM_STEP,       /* a sewing step: `lead` is its letter; what belongs to it follows as points and pictures */
    ITEM_CAUTION,    /* where work can hurt, or cloth be lost */
    ITEM_TABLE,
    ITEM_PICTURE
};

struct table {
    size_t columns;
    char **heads;        /* of each column */
    bool *is_number;     /* right-aligned */
    size_t rows;
    char **cells;        /* row by row */
    size_t used;         /* cells */
};

enum picture_kind {
    PICTURE_TOP = 1,      /* in its fabrics' colours, with the letters of blocks and rows */
    PICTURE_TOP_BLANK,    /* outlines to colour */
    PICTURE_KEY,          /* fabrics: letter, name, swatch with pattern, a box to glue one's own in */
    PICTURE_NODE,         /* `which`: node; a finished block or unit, its pieces numbered as in the cut list */
    PICTURE_STEP,         /* `which`: step; its parts drawn apart in the order they are sewn, with pressing arrows */
    PICTURE_STRIP_SET,    /* `which`: step; strips with fabrics, pressing arrows, the label at the top, segments */
    PICTURE_CLOTH,        /* `which`: row of the bill; the cutting plan, strip by strip, left-overs marked */
    PICTURE_BORDERS,      /* in the order they are sewn, with lengths */
    PICTURE_BACKING,      /* panel by panel, with seams and the quilt's outline */
    PICTURE_CHECKS,       /* a 1 in and a 25 mm square to measure after printing: true size */
    PICTURE_TEMPLATE      /* `which`: row of the cut list; true size: cut line, seam line, grain, reversed where needed */
};

struct picture {
    enum picture_kind kind;
    const struct worked *worked;
    int64_t which;
};

struct item {
    enum item_kind kind;
    int depth;   /* of points: 0 for the outermost */
    char *lead;  /* may be null */
    char *text;  /* a picture's caption; may be null */
    struct table *table;
    struct picture picture;
};

struct document {
    const struct pattern *pattern;
    struct item *items;
    size_t used;
    size_t room;
};

/* In all texts a no-break space (U+00A0) stands within what should not be broken over two lines: "12 1/2 in". */

/* Everything: title, cover with all sizes side by side, then each of `sizes` in full. */
struct document *document_create(const struct pattern *pattern, struct worked *const *sizes, size_t count);
void document_free(struct document *document);

/* The same as facts, for programs: the sums as they are, lengths in ticks and words. */
json_t *facts_of(const struct worked *worked);

/* ---- for those who write it ------------------------------------------------------------------------------------- */

/* Words gathered piece by piece. */
struct line {
    char *text;
    size_t used;
    size_t room;
};
void add(struct line *line, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* Ends a line as an item of the document, and empties it. */
void put(struct document *document, enum item_kind kind, int depth, const char *lead, struct line *line);
/* The same of a text that is whole. */
void say(struct document *document, enum item_kind kind, int depth, const char *lead, const char *format, ...)
    __attribute__((format(printf, 5, 6)));
void put_picture(struct document *document, enum picture_kind kind, const struct worked *worked, int64_t which,
                 const char *caption);
/* A table begins with its heads ("#Strips": a number) and gets its cells one after the other. */
struct table *put_table(struct document *document, const char *caption, const char *const *heads, size_t columns);
void add_cell(struct table *table, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* The parts of it, in reading order. */
void write_cover(struct document *document, struct worked *const *sizes, size_t count); /* write_cover.c */
void write_notes(struct document *document, const struct worked *worked);              /* write_notes.c: read first */
void write_buying(struct document *document, const struct worked *worked);             /* write_buying.c */
void write_cuts(struct document *document, const struct worked *worked);               /* write_cuts.c */
void write_layout(struct document *document, const struct worked *worked);             /* write_layout.c: on the cloth */
void write_steps(struct document *document, const struct worked *worked);              /* write_steps.c, recipe, field */
void write_pressing(struct document *document, const struct worked *worked);           /* write_pressing.c */
void write_borders(struct document *document, const struct worked *worked);            /* write_borders.c: of the top */
void write_finishing(struct document *document, const struct worked *worked);          /* write_finishing.c */
void write_templates(struct document *document, const struct worked *worked);          /* write_templates.c */
void write_before(struct document *document, const struct worked *worked);             /* write_cautions.c: cutting */
void write_cautions(struct document *document, const struct worked *worked);           /* the rest of them */
/* Words that the items from this one on use. */
void write_glossary(struct document *document, const struct worked *worked, size_t from);

/* The steps first .. last - 1, and the first one that is of a border round the top, or the number of steps. */
void write_some_steps(struct document *document, const struct worked *worked, size_t first, size_t last);
size_t first_border_step(const struct worked *worked);

#endif
