/* draw.h - pictures of a pattern, drawn with cairo from what the library says of it.
 *
 * SPDX-License-Identifier: MIT
 *
 * Lengths become points here and nowhere else, for drawing only. All must be readable in black and white and by those
 * who tell few colours apart: each fabric has a letter (in a ring) and a hatching besides its colour. */
#ifndef DRAW_H
#define DRAW_H

#include <cairo.h>
#include <pango/pangocairo.h>

#include "document.h"

/* Tops that have less room than this have no letters, and take all of their room. */
enum { TOP_LABELLED = 160 };

/* How large it is drawn, in points, where it may be so wide and high at most. Templates and check squares have their
 * true size whatever is given; templates that are larger than a page are divided: `picture_pages` tells into how many,
 * `part` which of them (0 for pictures of one). In columns below 230 points steps leave out what words say. */
int picture_pages(const struct picture *picture, double most_width, double most_height);
void picture_size(const struct picture *picture, int part, double most_width, double most_height, double *width,
                  double *height);

/* Draws it with its upper left corner at the origin. Cairo's state is as before. */
void picture_draw(cairo_t *cairo, const struct picture *picture, int part, double most_width, double most_height);

/* What it shows, in a sentence, for readers who do not see it (PDF's alternative text). The caller frees it. */
char *picture_said(const struct picture *picture);

#endif
