/* page.c - letter and A4.
 *
 * SPDX-License-Identifier: MIT */
#include "page.h"

struct page page_of(enum pattern_paper paper)
{
    struct page page = { .left = 60, .right = 60, .top = 68, .bottom = 66 };
    page.width = paper == PAPER_A4 ? 210 / 25.4 * 72 : 612;
    page.height = paper == PAPER_A4 ? 297 / 25.4 * 72 : 792;
    return page;
}

double page_measure(const struct page *page)
{
    return page->width - page->left - page->right;
}

double page_depth(const struct page *page)
{
    return page->height - page->top - page->bottom;
}
