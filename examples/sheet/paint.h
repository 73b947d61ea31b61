/* paint.h - a page drawn: its strips, its running head and its foot.
 *
 * SPDX-License-Identifier: MIT */
#ifndef PAINT_H
#define PAINT_H

#include "flow.h"
#include "tags.h"

/* The page's upper left corner stands at the origin. Pages of one document are painted in their order, with the same
 * tags. */
void paint_page(struct flow *flow, int page, cairo_t *cairo, struct tags *tags);
/* What a place is called that one can go to. */
void paint_destination(size_t item, char name[32]);

#endif
