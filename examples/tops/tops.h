/* tops.h - six invented quilts built as piecing trees, and what is made of them: a drawing and a working sheet.
 *
 * SPDX-License-Identifier: MIT */
#ifndef TOPS_H
#define TOPS_H

#include <stdio.h>

#include <muslin/muslin.h>

enum { INCH = MUSLIN_TICKS_PER_INCH, USABLE = 40 * INCH };
enum { FABRICS_MOST = 8, UNITS_MOST = 4, NAMES_MOST = 16, WORD = 80 };

/* A fabric as it is drawn: red, green and blue from 0 to 255. */
struct cloth {
    muslin_id id;
    const char *name;
    unsigned char colour[3];
};

/* A unit as it was asked for: its recipe is asked for again when it is written down. */
struct unit {
    muslin_id id;
    struct muslin_quilt_unit_spec spec;
    muslin_id fabrics[2];
};

/* What a node is called. */
struct named {
    muslin_id id;
    const char *name;
    int32_t side; /* enum muslin_side, of the strip that a border has got last; else 0 */
    int log;      /* number of the log that a cabin has got last; else 0 */
    int is_block;
};

/* A quilt under construction: the tree, its fabrics, units and names, its top. */
struct design {
    struct muslin_quilt *quilt;
    struct cloth cloths[FABRICS_MOST];
    int cloths_used;
    struct unit units[UNITS_MOST];
    int units_used;
    struct named names[NAMES_MOST];
    int names_used;
    int64_t columns; /* of a field on point */
    int64_t rows;
    muslin_id top;
};

/* One of the six. */
struct pattern {
    const char *name;  /* for the command line */
    const char *title;
    const char *story; /* invented */
    void (*piece)(struct design *design);
};

extern const struct pattern patterns[];
extern const int patterns_count;

/* Stops the program with the library's sentence when a call failed. */
void must(muslin_status status, const struct muslin_problem *problem);

/* A length as a quilter measures it, to the nearest 1/8 in; one that is not exact begins with "about". */
const char *inches(muslin_len length, char text[WORD]);

/* Width and height, so. */
const char *inches_by(muslin_len width, muslin_len height, char text[WORD]);

/* A solved quilt with everything that its sheet is written from. */
struct sheet;
struct sheet *sheet_create(const struct design *design, const struct muslin_solution *solution,
                           const struct muslin_solve_spec *spec);
void sheet_free(struct sheet *sheet);

/* Draws the finished top as SVG, every patch in its fabric's colour, with the letters of the sheet. Returns 0, or -1
 * with errno set. */
int draw_top(const struct sheet *sheet, const char *title, FILE *file);

/* Draws the cloth that it is cut from in the same way, strip by strip. */
int draw_cloth(const struct sheet *sheet, const char *title, FILE *file);

/* Prints sizes, cut list, what to buy, sewing steps with their pressing, and cautions. */
void print_sheet(const struct sheet *sheet, const struct pattern *pattern);

#endif
