/* flow_break.c - strips onto pages: what is kept together stays so, and no page is left with much white if a picture
 * may be made a little smaller.
 *
 * SPDX-License-Identifier: MIT */
#include "flow.h"

/* A table that goes on has its heads again. */
static double head_again(const struct strip *strip)
{
    bool goes_on = strip->kind == STRIP_ROW && strip->count > 0;
    return goes_on ? strip->grid->head_height : 0;
}

/* The first of the strips that go to the next page together with this one. What hangs together and is more than a page
 * is divided here all the same, and so is all that a page holds. */
static size_t begin_of_next(const struct flow *flow, size_t top, size_t strip)
{
    size_t first = strip;
    while (first > top && flow->strips[first - 1].keep)
        first--;
    double end = flow->strips[strip].y + flow->strips[strip].height;
    bool fits = end - flow->strips[first].y <= page_depth(&flow->page);
    return first > top && fits ? first : strip;
}

/* Whether a picture that does not fit can be made to. */
static bool made_to_fit(const struct flow *flow, struct strip *strip, double y)
{
    double room = page_depth(&flow->page) - y - strip->before;
    return strip->kind == STRIP_PICTURES && room < strip->height && flow_shrink(strip, room);
}

static double place(struct strip *strip, int page, double y, bool at_top)
{
    strip->page = page;
    strip->y = y + (at_top ? head_again(strip) : strip->before);
    return strip->y + strip->height;
}

static void set_pages(struct flow *flow)
{
    const double hair = 0.01;
    size_t top = 0; /* first strip of the page */
    double y = 0;
    flow->pages = 1;
    for (size_t i = 0; i < flow->used; i++) {
        struct strip *strip = &flow->strips[i];
        double end = place(strip, flow->pages, y, i == top);
        bool full = end > page_depth(&flow->page) + hair;
        if (i > top && full && made_to_fit(flow, strip, y)) {
            end = place(strip, flow->pages, y, false);
            full = false;
        }
        if (i > top && (full || strip->new_page)) {
            i = strip->new_page ? i : begin_of_next(flow, top, i);
            top = i;
            flow->pages++;
            end = place(&flow->strips[i], flow->pages, 0, true);
        }
        y = end;
    }
}

/* Whether the cover ends before a strip: with the first size, or with the list of contents. */
static bool is_behind_cover(const struct flow *flow, const struct strip *strip)
{
    return strip->item == NO_ITEM || flow->document->items[strip->item].kind == ITEM_SIZE;
}

/* What the cover lacks to be one page, where it has just two; else 0. */
static double lacking_on_cover(const struct flow *flow)
{
    double down = 0, second = 0;
    for (size_t i = 0; i < flow->used && !is_behind_cover(flow, &flow->strips[i]); i++) {
        const struct strip *strip = &flow->strips[i];
        if (strip->page > 2)
            return 0;
        if (strip->page == 1)
            down = strip->y + strip->height;
        else
            second = strip->y + strip->height + strip->before;
    }
    return second > 0 ? second + down - page_depth(&flow->page) : 0;
}

/* A cover that is a little too long for one page gets smaller pictures. */
static bool squeeze_cover(struct flow *flow)
{
    const double spare = 8;
    double over = lacking_on_cover(flow);
    for (size_t i = 0; over > 0 && i < flow->used && flow->strips[i].page == 1; i++)
        if (flow->strips[i].kind == STRIP_PICTURES &&
            flow_shrink(&flow->strips[i], flow->strips[i].height - over - spare))
            return true;
    return false;
}

void flow_break(struct flow *flow)
{
    set_pages(flow);
    if (squeeze_cover(flow))
        set_pages(flow);
}
