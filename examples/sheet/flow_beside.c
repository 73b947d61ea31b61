/* flow_beside.c - pictures that stand beside the text of their step.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>
#include <string.h>

#include "draw.h"
#include "flow.h"

/* Wide ones would be too small in a narrow column. */
static bool is_too_wide(const struct shown *shown)
{
    return shown->height < shown->width * 0.3;
}

/* Blocks in diagonal rows are told apart only on a large drawing. */
bool flow_is_on_point(const struct picture *picture)
{
    return picture->kind == PICTURE_STEP &&
           picture->worked->steps[picture->which].kind == MUSLIN_SEWING_DIAGONAL;
}

/* How high, as a share of the page: strips on a top are simple to see, and so is what is finished. */
static double highest(const struct picture *picture)
{
    if (picture->kind == PICTURE_NODE)
        return 0.17;
    return (size_t)picture->which >= first_border_step(picture->worked) ? 0.16 : 0.21;
}

static bool measure(const struct flow *flow, struct shown *shown, double column)
{
    if (flow_is_on_point(&shown->picture) || picture_pages(&shown->picture, column, page_depth(&flow->page)) > 1)
        return false;
    shown->most_width = column;
    shown->most_height = page_depth(&flow->page) * highest(&shown->picture);
    picture_size(&shown->picture, 0, shown->most_width, shown->most_height, &shown->width, &shown->height);
    return shown->width <= column && !is_too_wide(shown);
}

static double set_caption(struct flow *flow, struct shown *shown, const char *text)
{
    if (text == NULL)
        return 0;
    shown->caption = type_set(flow->letters, FACE_CAPTION, text, shown->most_width);
    shown->caption_x = shown->x;
    return FLOW_CAPTION_GAP + type_lines(shown->caption) * type_leading(FACE_CAPTION);
}

/* False where it would come too far down. */
static bool put_beside(struct flow *flow, struct shown shown, const char *caption)
{
    const double gap = 8;
    shown.y = flow->beside;
    double end = shown.y + shown.height + set_caption(flow, &shown, caption) + gap;
    if (end > page_depth(&flow->page) / 2) {
        if (shown.caption != NULL)
            g_object_unref(shown.caption);
        return false;
    }
    struct shown *more = realloc(flow->waiting, (flow->waiting_used + 1) * sizeof *more);
    if (more == NULL)
        must(MUSLIN_ERR_NO_MEMORY);
    flow->waiting = more;
    flow->waiting[flow->waiting_used++] = shown;
    flow->beside = end;
    return true;
}

/* About how high the words of a step are in a narrow column. */
static double height_of_words(const struct document *document, size_t step)
{
    const double letters_in_line = 36;
    size_t letters = strlen(document->items[step].text);
    for (size_t item = step + 1; item < document->used && flow_is_of_step(&document->items[item]); item++)
        letters += document->items[item].kind != ITEM_PICTURE ? strlen(document->items[item].text) : 0;
    return (double)letters / letters_in_line * type_leading(FACE_BODY);
}

/* Two narrow pictures beside few words stand side by side: the step, and what comes of it. */
static void put_side_by_side(struct flow *flow, size_t step)
{
    const double most = 0.52, whole = page_measure(&flow->page);
    if (flow->waiting_used != 2 || flow->waiting[0].caption != NULL)
        return;
    struct shown *left = &flow->waiting[0], *right = &flow->waiting[1];
    double caption = right->caption != NULL ? type_width(right->caption) : 0;
    double width = right->width > caption ? right->width : caption;
    double higher = right->y > flow->beside - right->y ? right->y : flow->beside - right->y;
    if (left->width + PAGE_GUTTER + width > most * whole || height_of_words(flow->document, step) > higher)
        return;
    right->x = right->caption_x = whole - width;
    right->y = 0;
    left->x = right->x - PAGE_GUTTER - left->width;
    flow->beside = higher;
    flow->beside_width = whole - left->x;
}

/* The pictures of a step that go beside it, one above the other, while they take no more than half a page. */
void flow_choose_beside(struct flow *flow, size_t step)
{
    const struct document *document = flow->document;
    const double whole = page_measure(&flow->page), column = whole * PAGE_BESIDE;
    flow->beside_width = column;
    for (size_t item = step + 1; item < document->used && flow_is_of_step(&document->items[item]); item++) {
        struct shown shown = { .picture = document->items[item].picture, .x = whole - column };
        if (document->items[item].kind == ITEM_PICTURE && measure(flow, &shown, column))
            flow->is_beside[item] = put_beside(flow, shown, document->items[item].text);
    }
    put_side_by_side(flow, step);
}

/* After the step's own words, beside them. */
void flow_put_beside(struct flow *flow, size_t step)
{
    if (flow->waiting_used == 0)
        return;
    double rise = flow->down;
    struct strip *strip = flow_add(flow, STRIP_PICTURES, step, 0, 0);
    strip->rise = rise;
    strip->shown = flow->waiting;
    strip->count = flow->waiting_used;
    strip->first = true;
    strip->last = true;
    strip->keep = true;
    flow->waiting = NULL;
    flow->waiting_used = 0;
}
