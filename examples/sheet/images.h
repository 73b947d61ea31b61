/* images.h - pages and pictures alone, as SVG or PNG.
 *
 * SPDX-License-Identifier: MIT */
#ifndef IMAGES_H
#define IMAGES_H

#include "bytes.h"
#include "draw.h"
#include "flow.h"
#include "options.h"

/* Dots per inch are of a PNG. */
cairo_status_t image_of_page(struct flow *flow, int page, enum form form, long dpi, struct bytes *bytes);
cairo_status_t image_of_picture(const struct page *page, const struct picture *picture, int part, enum form form,
                                long dpi, struct bytes *bytes);
/* How many images a picture alone makes. */
int image_parts(const struct page *page, const struct picture *picture);

#endif
