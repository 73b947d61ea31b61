/* hatch.h - lines of a hatching over cloth of any shape.
 *
 * SPDX-License-Identifier: MIT */
#ifndef HATCH_H
#define HATCH_H

#include "ink.h"

/* Lines at an angle, so far apart, solid or dashed: two of them make a mesh. */
struct hatch {
    double angle; /* degrees */
    double apart; /* points; 0: no lines */
    double dash;  /* 0: solid; below 1: dots */
};

struct hatch_spot {
    double x;
    double y;
};

/* Adds the lines over the cloth, whose outlines are straight, to the path; and strokes what was added. */
void hatch_trace(cairo_t *cairo, const struct hatch *hatch, const cairo_path_t *cloth);
void hatch_stroke(cairo_t *cairo, const struct hatch *hatch);

#endif
