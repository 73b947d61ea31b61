/* page.h - the paper, its margins, and how far apart things stand on it. All in points.
 *
 * SPDX-License-Identifier: MIT */
#ifndef PAGE_H
#define PAGE_H

#include "pattern.h"

struct page {
    double width;
    double height;
    double left; /* margins */
    double right;
    double top; /* from the paper's edge to the text; the running head stands in it */
    double bottom;
};

struct page page_of(enum pattern_paper paper);
/* The room for text. */
double page_measure(const struct page *page);
double page_depth(const struct page *page);

/* Body text stands in by this; letters of steps and headings hang before it. */
#define PAGE_INDENT 32.0
/* Pictures beside text: how wide at most as a share of the measure, and what is kept clear of them. */
#define PAGE_BESIDE 0.36
#define PAGE_GUTTER 16.0

#endif
