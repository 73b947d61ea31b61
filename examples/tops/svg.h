/* svg.h - what all drawings need: SVG into a file that is open, and the cloth of a fabric.
 *
 * SPDX-License-Identifier: MIT */
#ifndef TOPS_SVG_H
#define TOPS_SVG_H

#include <stdio.h>

#include <cairo-svg.h>

#include "tops.h"

/* A page so wide and high, in points. */
cairo_t *start_svg(FILE *file, double width, double height);

/* Writes what is left and gives the page back. Returns 0, or -1 with errno where something could not be written. */
int end_svg(cairo_t *cairo);

const struct cloth *cloth_of(const struct design *design, muslin_id fabric);

#endif
