/* flow_pictures.c - pictures between texts: small ones side by side, templates part by part.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "draw.h"
#include "flow.h"

#define LEAST_CAPTION 130.0

/* ---- how large --------------------------------------------------------------------------------------------------- */

static bool is_true_size(enum picture_kind kind)
{
    return kind == PICTURE_CHECKS || kind == PICTURE_TEMPLATE;
}

/* How large a picture may be between texts, as shares of the measure and of the depth of a page. */
static void limits(const struct flow *flow, const struct picture *picture, double *width, double *height)
{
    double measure = page_measure(&flow->page), depth = page_depth(&flow->page);
    double indented = measure - PAGE_INDENT;
    switch (picture->kind) {
    case PICTURE_TOP:
        *width = indented;
        /* On the cover, of one size or of several; in its size. */
        *height = depth * (flow->sizes == 1 ? 0.42 : flow->marks_used == 0 ? 0.3 : 0.46);
        return;
    case PICTURE_TOP_BLANK:
        *width = measure;
        *height = depth * 0.84;
        return;
    case PICTURE_NODE:
        *width = indented * 0.4;
        *height = depth * 0.22;
        return;
    case PICTURE_STEP:
    case PICTURE_STRIP_SET:
        *width = indented;
        *height = depth * (flow_is_on_point(picture) ? 0.64 : 0.34);
        return;
    case PICTURE_BORDERS:
    case PICTURE_BACKING:
        *width = indented * 0.8;
        *height = depth * 0.38;
        return;
    case PICTURE_CHECKS:
    case PICTURE_TEMPLATE:
        *width = measure;
        *height = depth - 3 * type_leading(FACE_CAPTION);
        return;
    default:
        *width = indented;
        *height = depth * 0.8;
        return;
    }
}

/* ---- captions ---------------------------------------------------------------------------------------------------- */

static double caption_height(const struct shown *shown)
{
    if (shown->caption == NULL)
        return 0;
    return FLOW_CAPTION_GAP + type_lines(shown->caption) * type_leading(FACE_CAPTION);
}

static void add_caption(struct flow *flow, struct shown *shown, const char *text, int parts)
{
    char whole[600];
    if (text == NULL && parts == 1)
        return;
    int used = snprintf(whole, sizeof whole, "%.500s", text != NULL ? text : "");
    if (parts > 1)
        snprintf(whole + used, sizeof whole - (size_t)used, "%spart %d of %d", used > 0 ? " \u2013 " : "",
                 shown->part + 1, parts);
    double room = page_measure(&flow->page) - shown->x;
    double least = shown->most_width < LEAST_CAPTION ? shown->most_width : LEAST_CAPTION;
    double width = shown->width > least ? shown->width : least;
    shown->caption_x = shown->x;
    shown->caption = type_set(flow->letters, FACE_CAPTION, whole, width < room ? width : room);
}

void flow_shown_free(struct shown *shown, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (shown[i].caption != NULL)
            g_object_unref(shown[i].caption);
    free(shown);
}

/* ---- rows of pictures -------------------------------------------------------------------------------------------- */

/* A row that is being filled. */
struct filling {
    struct shown *shown;
    size_t used;
    size_t item;
    double x;
    double height;
    bool begun;
};

static void end_row(struct flow *flow, struct filling *filling)
{
    if (filling->used == 0)
        return;
    double before = filling->begun ? 12 : flow_before(flow, filling->item);
    struct strip *strip = flow_add(flow, STRIP_PICTURES, filling->item, before, filling->height);
    strip->shown = filling->shown;
    strip->count = filling->used;
    strip->first = true;
    strip->last = true;
    *filling = (struct filling){ .begun = true };
}

static double breadth(const struct shown *shown)
{
    double caption = shown->caption != NULL ? type_width(shown->caption) : 0;
    return shown->width > caption ? shown->width : caption;
}

/* Puts a picture into the row, or into a new one where it does not fit. */
static void put_shown(struct flow *flow, struct filling *filling, struct shown shown, size_t item, int parts)
{
    double measure = page_measure(&flow->page);
    bool wide = shown.width > measure - PAGE_INDENT;
    const char *caption = flow->document->items[item].text;
    shown.x = filling->used > 0 ? filling->x : wide ? 0 : PAGE_INDENT;
    if (filling->used > 0 && shown.x + shown.width > measure + 0.5) {
        end_row(flow, filling);
        shown.x = wide ? 0 : PAGE_INDENT;
    }
    if (filling->used == 0)
        filling->item = item;
    add_caption(flow, &shown, caption, parts);
    struct shown *more = realloc(filling->shown, (filling->used + 1) * sizeof *more);
    if (more == NULL)
        must(MUSLIN_ERR_NO_MEMORY);
    filling->shown = more;
    filling->shown[filling->used++] = shown;
    filling->x = shown.x + breadth(&shown) + PAGE_GUTTER;
    double height = shown.height + caption_height(&shown);
    filling->height = height > filling->height ? height : filling->height;
}

/* How many tops of sizes follow each other. */
static int count_tops(const struct document *document, size_t item)
{
    int count = 0;
    for (; item < document->used && document->items[item].kind == ITEM_PICTURE; item++)
        count += document->items[item].picture.kind == PICTURE_TOP;
    return count;
}

/* Tops of several sizes stand side by side, drawn to one scale. */
static void limit_tops(const struct flow *flow, size_t first, int count, struct shown *shown)
{
    enum { MOST = 4 };
    const struct item *items = flow->document->items;
    int columns = count < MOST ? count : MOST;
    double whole = page_measure(&flow->page) - PAGE_INDENT;
    double column = (whole - (columns - 1) * PAGE_GUTTER) / columns;
    muslin_len widest = 0, highest = 0;
    for (size_t item = first; item < flow->document->used && items[item].kind == ITEM_PICTURE; item++)
        if (items[item].picture.kind == PICTURE_TOP) {
            const struct muslin_node_size *top = &items[item].picture.worked->top;
            widest = top->finished_width > widest ? top->finished_width : widest;
            highest = top->finished_height > highest ? top->finished_height : highest;
        }
    const struct muslin_node_size *top = &shown->picture.worked->top;
    shown->most_width = (column < TOP_LABELLED ? column : TOP_LABELLED - 1) * (double)top->finished_width /
                        (double)widest;
    shown->most_height = page_depth(&flow->page) * 0.34 * (double)top->finished_height / (double)highest;
}

size_t flow_pictures(struct flow *flow, size_t item)
{
    const struct document *document = flow->document;
    struct filling filling = { .used = 0 };
    const size_t first = item;
    const int tops = count_tops(document, item);
    for (; item < document->used && document->items[item].kind == ITEM_PICTURE; item++) {
        if (flow->is_beside[item])
            continue;
        struct shown shown = { .picture = document->items[item].picture };
        limits(flow, &shown.picture, &shown.most_width, &shown.most_height);
        if (tops > 1 && shown.picture.kind == PICTURE_TOP)
            limit_tops(flow, first, tops, &shown);
        int parts = picture_pages(&shown.picture, shown.most_width, shown.most_height);
        for (shown.part = 0; shown.part < parts; shown.part++) {
            picture_size(&shown.picture, shown.part, shown.most_width, shown.most_height, &shown.width, &shown.height);
            put_shown(flow, &filling, shown, item, parts);
        }
    }
    end_row(flow, &filling);
    return item;
}

/* How much of its height a picture keeps at least: of one with many words beside it the drawing shrinks more. */
static double least_of(enum picture_kind kind)
{
    if (kind == PICTURE_TOP)
        return 0.42;
    return kind == PICTURE_BACKING || kind == PICTURE_BORDERS || kind == PICTURE_STEP || kind == PICTURE_CLOTH ? 0.85
                                                                                                                : 0.6;
}

/* Tops that are drawn to one scale stay as they are. */
static bool has_one_scale(const struct strip *strip)
{
    return strip->count > 1 && strip->shown[0].picture.kind == PICTURE_TOP;
}

static bool may_shrink(const struct strip *strip, double height)
{
    for (size_t i = 0; i < strip->count; i++) {
        const struct shown *shown = &strip->shown[i];
        const enum picture_kind kind = shown->picture.kind;
        if (is_true_size(kind) || height - caption_height(shown) < shown->height * least_of(kind))
            return false;
    }
    return strip->rise <= 0 && !has_one_scale(strip);
}

/* Smaller ones share a height. */
bool flow_shrink(struct strip *strip, double height)
{
    double highest = 0;
    if (!may_shrink(strip, height))
        return false;
    for (size_t i = 0; i < strip->count; i++) {
        struct shown *shown = &strip->shown[i];
        shown->most_height = height - caption_height(shown);
        picture_size(&shown->picture, shown->part, shown->most_width, shown->most_height, &shown->width,
                     &shown->height);
        double end = shown->height + caption_height(shown);
        highest = end > highest ? end : highest;
    }
    strip->height = highest;
    return strip->height <= height;
}
