/* tops.h - six invented quilts built as piecing trees, and what is made of them: a drawing and a working sheet.
 *
 * SPDX-License-Identifier: MIT */
#ifndef TOPS_H
#define TOPS_H

#include <stdio.h>

#include <muslin/muslin.h>

enum { FABRICS_MOST = 8, WORD = 66 };

/* A fabric as it is drawn: red, green and blue from 0 to 255. */
struct cloth {
    muslin_id id;
    const char *name;
    unsigned char colour[3];
};

/* A quilt under construction: the tree, its fabrics, its top. */
struct design {
    struct muslin_quilt *quilt;
    struct cloth cloths[FABRICS_MOST];
    int cloths_used;
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

/* A length as a quilter reads it, to the nearest 64th; one that is not exact begins with ~. */
const char *inches(muslin_len length, char text[WORD]);

/* Draws the finished top as SVG, every patch in its fabric's colour. Returns 0, or -1 with errno set. */
int draw_top(const struct design *design, const struct muslin_solution *solution, const char *title, FILE *file);

/* Prints sizes, cut list, strip sets, sewing steps and pressing. */
void print_sheet(const struct design *design, const struct muslin_solution *solution, const struct pattern *pattern);

#endif
