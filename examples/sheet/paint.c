/* paint.c - pages drawn.
 *
 * SPDX-License-Identifier: MIT */
#include "paint.h"

#include <stdio.h>
#include <string.h>

#include "draw.h"

/* Where one stands. */
struct at {
    struct flow *flow;
    cairo_t *cairo;
    struct tags *tags;
    int page;
};

static void ink(cairo_t *cairo, double grey)
{
    cairo_set_source_rgb(cairo, grey, grey, grey);
}

static void rule(cairo_t *cairo, double left, double right, double y, double width, double grey)
{
    cairo_save(cairo);
    ink(cairo, grey);
    cairo_set_line_width(cairo, width);
    cairo_move_to(cairo, left, y);
    cairo_line_to(cairo, right, y);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}

void paint_destination(size_t item, char name[32])
{
    snprintf(name, 32, "item-%zu", item);
}

/* ---- lines ------------------------------------------------------------------------------------------------------- */

static bool is_marked(const struct flow *flow, size_t item)
{
    for (size_t i = 0; i < flow->marks_used; i++)
        if (flow->marks[i].item == item)
            return true;
    return false;
}

/* Whether an item has lines on more than one page, so that each page's have a tag of their own inside the item's. */
static bool is_divided(const struct strip *strip)
{
    const struct strip *first = strip, *last = strip;
    while (!first->first)
        first--;
    while (!last->last)
        last++;
    return first->page != last->page;
}

static bool ends_here(const struct strip *strip)
{
    return strip->last || strip[1].page != strip->page;
}

static bool begins_here(const struct strip *strip)
{
    return strip->first || strip[-1].page != strip->page;
}

static void paint_lead(const struct at *at, const struct strip *strip, double y)
{
    const struct lines *lines = strip->lines;
    bool is_point = lines->lead != NULL;
    if (is_point) {
        tags_leaf(at->tags, "Lbl");
        type_draw(at->cairo, at->flow->letters, lines->lead_face, lines->lead, at->flow->page.left + lines->lead_x, y);
        tags_leaf_end(at->tags, "Lbl");
    }
}

static void begin_words(const struct at *at, const struct strip *strip, double y)
{
    const struct item *item = &at->flow->document->items[strip->item];
    const char *tag = tags_of(at->tags, at->flow, strip);
    bool listed = item->kind == ITEM_STEP || item->kind == ITEM_POINT;
    if (strip->first) {
        int level = listed ? at->tags->level[at->tags->used - 1] : 0;
        paint_lead(at, strip, y);
        if (listed)
            tags_open(at->tags, "LBody", level);
        if (is_divided(strip))
            tags_open(at->tags, tag, 1000);
    }
    if (begins_here(strip))
        tags_leaf(at->tags, is_divided(strip) ? "Span" : tag);
}

static void end_words(const struct at *at, const struct strip *strip)
{
    bool divided = is_divided(strip);
    if (ends_here(strip))
        tags_leaf_end(at->tags, divided ? "Span" : tags_of(at->tags, at->flow, strip));
    if (strip->last && divided)
        tags_close(at->tags);
}

static void paint_marks(const struct at *at, const struct strip *strip, double y)
{
    const struct item *item = &at->flow->document->items[strip->item];
    const struct page *page = &at->flow->page;
    double left = page->left, right = page->width - page->right;
    if (item->kind == ITEM_CAUTION) {
        cairo_save(at->cairo);
        ink(at->cairo, 0);
        cairo_rectangle(at->cairo, left + PAGE_INDENT, y, 2.4, strip->height);
        cairo_fill(at->cairo);
        cairo_restore(at->cairo);
    } else if (item->kind == ITEM_SIZE && strip->last) {
        rule(at->cairo, left, right, y + strip->height + 3, 1.2, 0);
    }
}

static void paint_words(const struct at *at, const struct strip *strip, double y)
{
    char name[80], destination[32];
    bool marked = strip->first && is_marked(at->flow, strip->item);
    begin_words(at, strip, y);
    if (marked) {
        paint_destination(strip->item, destination);
        snprintf(name, sizeof name, "name='%s'", destination);
        cairo_tag_begin(at->cairo, CAIRO_TAG_DEST, name);
    }
    type_draw_line(at->cairo, at->flow->letters, strip->lines->face, strip->lines->layout, (int)strip->count,
                   at->flow->page.left + strip->lines->x, y);
    if (marked)
        cairo_tag_end(at->cairo, CAIRO_TAG_DEST);
    end_words(at, strip);
    paint_marks(at, strip, y);
}

/* ---- tables ------------------------------------------------------------------------------------------------------ */

static void paint_cell(const struct at *at, PangoLayout *cell, enum face face, double x, double y, size_t leads_to)
{
    char link[80], destination[32];
    if (leads_to != NO_ITEM) {
        paint_destination(leads_to, destination);
        snprintf(link, sizeof link, "dest='%s'", destination);
        cairo_tag_begin(at->cairo, CAIRO_TAG_LINK, link);
    }
    type_draw(at->cairo, at->flow->letters, face, cell, x, y);
    if (leads_to != NO_ITEM)
        cairo_tag_end(at->cairo, CAIRO_TAG_LINK);
}

/* Names of sizes on the cover and page numbers lead there. */
static size_t leads_to(const struct at *at, const struct strip *strip, size_t row, size_t column)
{
    const struct grid *grid = strip->grid;
    size_t numbered = flow_leads_to(at->flow, grid, row, column);
    if (numbered != NO_ITEM || strip->item == NO_ITEM)
        return numbered;
    size_t of = grid->column[column];
    const struct table *table = grid->table;
    char *const *cells = row == table->rows ? table->heads : table->cells + row * table->columns;
    const char *text = cells[of];
    size_t size = flow_size_named(at->flow, text != NULL ? text : "");
    return size != NO_ITEM && size > strip->item ? size : NO_ITEM;
}

/* The row after the last one are the heads; `tagged`: no heads that stand there again. */
static void paint_cells(const struct at *at, const struct strip *strip, size_t row, double y, bool tagged)
{
    const double pad = 4;
    const struct grid *grid = strip->grid;
    bool is_head = row == grid->table->rows;
    if (tagged)
        tags_open(at->tags, "TR", 1000);
    for (size_t i = 0; i < grid->columns; i++) {
        PangoLayout *cell = is_head ? grid->heads[i] : grid->cells[row * grid->columns + i];
        const char *tag = is_head || i == 0 ? "TH" : "TD";
        if (tagged && tag[1] == 'H')
            tags_head(at->tags, !is_head);
        else if (tagged)
            tags_leaf(at->tags, tag);
        paint_cell(at, cell, is_head ? grid->head_face : grid->face, at->flow->page.left + grid->x[i] + pad,
                   y + pad / 2, tagged && !at->tags->is_alone ? leads_to(at, strip, row, i) : NO_ITEM);
        if (tagged)
            tags_leaf_end(at->tags, tag);
    }
    if (tagged)
        tags_close(at->tags);
}

static void paint_row(const struct at *at, const struct strip *strip, double y)
{
    const struct grid *grid = strip->grid;
    double left = at->flow->page.left + grid->left, right = at->flow->page.left + grid->right;
    size_t rows = grid->table->rows;
    bool again = strip->count > 0 && begins_here(strip) && grid->head_height > 0;
    if (strip->count == 0)
        tags_open(at->tags, "Table", 1000);
    if (strip->count == 0 && grid->head_height > 0) {
        paint_cells(at, strip, rows, y, true);
        y += grid->head_height;
        rule(at->cairo, left, right, y, 0.9, 0);
    }
    if (again) {
        paint_cells(at, strip, rows, y - grid->head_height, false);
        rule(at->cairo, left, right, y, 0.9, 0);
    }
    paint_cells(at, strip, strip->count, y, true);
    double bottom = y + grid->row_heights[strip->count];
    bool ends = strip->count + 1 == rows;
    rule(at->cairo, left, right, bottom, ends ? 0.6 : 0.3, ends ? 0 : 0.6);
    if (ends)
        tags_close(at->tags);
}

/* ---- pictures ---------------------------------------------------------------------------------------------------- */

static void paint_shown(const struct at *at, const struct shown *shown, double y)
{
    const double left = at->flow->page.left;
    tags_figure(at->tags, picture_said(&shown->picture));
    cairo_save(at->cairo);
    cairo_translate(at->cairo, left + shown->x, y);
    picture_draw(at->cairo, &shown->picture, shown->part, shown->most_width, shown->most_height);
    cairo_restore(at->cairo);
    cairo_new_path(at->cairo);
    tags_leaf_end(at->tags, "Figure");
    if (shown->caption == NULL)
        return;
    tags_leaf(at->tags, "P");
    ink(at->cairo, 0);
    type_draw(at->cairo, at->flow->letters, FACE_CAPTION, shown->caption, left + shown->caption_x,
              y + shown->height + FLOW_CAPTION_GAP);
    tags_leaf_end(at->tags, "P");
}

/* ---- head and foot ----------------------------------------------------------------------------------------------- */

/* At a share of the measure; what is longer than `most` ends in dots. Returns its width. */
static double put_foot(const struct at *at, const char *text, double y, double share, double most)
{
    const struct page *page = &at->flow->page;
    PangoLayout *layout = type_set(at->flow->letters, FACE_FOOT, text, 0);
    if (type_width(layout) > most) {
        pango_layout_set_ellipsize(layout, PANGO_ELLIPSIZE_END);
        pango_layout_set_width(layout, pango_units_from_double(most));
    }
    double width = type_width(layout), x = page->left + (page_measure(page) - width) * share;
    type_draw(at->cairo, at->flow->letters, FACE_FOOT, layout, x, y);
    g_object_unref(layout);
    return width;
}

/* The size that is told of on a page: the last one begun before it or at its top. */
static const char *size_of_page(const struct flow *flow, int page)
{
    const char *name = "";
    for (size_t i = 0; i < flow->marks_used; i++)
        if (flow->marks[i].is_size && flow->strips[flow->marks[i].strip].page <= page)
            name = flow_name_of_size(flow, flow->marks[i].item);
    return strcmp(name, flow->document->pattern->title) != 0 ? name : "";
}

static void paint_head(const struct at *at)
{
    const struct page *page = &at->flow->page;
    const double y = page->top - 34;
    if (at->page == 1)
        return;
    ink(at->cairo, 0.25);
    double taken = put_foot(at, size_of_page(at->flow, at->page), y, 1, page_measure(page) / 2);
    put_foot(at, at->flow->document->pattern->title, y, 0, page_measure(page) - taken - 2 * PAGE_GUTTER);
    rule(at->cairo, page->left, page->width - page->right, y + 14, 0.4, 0.5);
}

static void paint_foot(const struct at *at)
{
    const struct pattern *pattern = at->flow->document->pattern;
    const struct page *page = &at->flow->page;
    const double y = page->height - page->bottom + 22;
    char text[200];
    ink(at->cairo, 0.25);
    int used = 0;
    if (pattern->version != NULL)
        used = snprintf(text, sizeof text, "Version %.40s", pattern->version);
    if (pattern->date != NULL)
        used += snprintf(text + used, sizeof text - (size_t)used, "%s%.40s", used > 0 ? ", " : "", pattern->date);
    double taken = put_foot(at, "Print at 100 %; check the square.", y, 0.5, page_measure(page));
    if (used > 0)
        put_foot(at, text, y, 0, (page_measure(page) - taken) / 2 - PAGE_GUTTER);
    snprintf(text, sizeof text, "Page %d of %d", at->page, at->flow->pages);
    put_foot(at, text, y, 1, page_measure(page));
}

/* ---- a page ------------------------------------------------------------------------------------------------------ */

static void paint_strip(const struct at *at, const struct strip *strip)
{
    double y = at->flow->page.top + strip->y - strip->rise;
    tags_place(at->tags, at->flow, strip);
    if (strip->kind == STRIP_LINE)
        paint_words(at, strip, y);
    else if (strip->kind == STRIP_ROW)
        paint_row(at, strip, y);
    for (size_t i = 0; strip->kind == STRIP_PICTURES && i < strip->count; i++)
        paint_shown(at, &strip->shown[i], y + strip->shown[i].y);
}

void paint_page(struct flow *flow, int page, cairo_t *cairo, struct tags *tags)
{
    struct at at = { flow, cairo, tags, page };
    paint_head(&at);
    ink(cairo, 0);
    for (size_t i = 0; i < flow->used; i++) {
        if (flow->strips[i].page != page)
            continue;
        if (flow->strips[i].item != NO_ITEM && flow->document->items[flow->strips[i].item].kind == ITEM_SIZE)
            tags->by_size = true;
        ink(cairo, 0);
        paint_strip(&at, &flow->strips[i]);
    }
    paint_foot(&at);
}
