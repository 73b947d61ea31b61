/* flow.c - a document laid out as one long column.
 *
 * SPDX-License-Identifier: MIT */
#include "flow.h"

#include <stdlib.h>
#include <string.h>

void *flow_need(size_t count, size_t size)
{
    void *memory = calloc(count != 0 ? count : 1, size);
    if (memory == NULL)
        must(MUSLIN_ERR_NO_MEMORY);
    return memory;
}

/* ---- strips ------------------------------------------------------------------------------------------------------ */

/* What stands beside the pictures of a step stays on their page. */
static void go_down(struct flow *flow, const struct strip *strip)
{
    if (!flow->in_step)
        return;
    bool at_top = flow->down <= 0;
    if (!at_top && flow->down < flow->beside)
        flow->strips[flow->used - 2].keep = true;
    flow->down += (at_top ? 0 : strip->before) + strip->height;
}

struct strip *flow_add(struct flow *flow, enum strip_kind kind, size_t item, double before, double height)
{
    if (flow->used == flow->room) {
        flow->room = 2 * flow->room + 64;
        flow->strips = realloc(flow->strips, flow->room * sizeof *flow->strips);
        if (flow->strips == NULL)
            must(MUSLIN_ERR_NO_MEMORY);
    }
    struct strip *strip = &flow->strips[flow->used++];
    *strip = (struct strip){ .kind = kind, .item = item, .before = before, .height = height };
    strip->in_step = flow->in_step;
    go_down(flow, strip);
    return strip;
}

size_t flow_count(const struct document *document, enum item_kind kind)
{
    size_t count = 0;
    for (size_t item = 0; item < document->used; item++)
        count += document->items[item].kind == kind;
    return count;
}

double flow_width(const struct flow *flow, double x)
{
    double whole = page_measure(&flow->page);
    bool beside = flow->in_step && flow->down < flow->beside;
    return whole - x - (beside ? flow->beside_width + PAGE_GUTTER : 0);
}

double flow_before(const struct flow *flow, size_t item)
{
    const struct item *items = flow->document->items;
    bool after_heading = item > 0 && items[item - 1].kind <= ITEM_SUBHEADING;
    bool after_size = item > 0 && items[item - 1].kind == ITEM_SIZE;
    bool after_box = item > 0 && (items[item - 1].kind == ITEM_PICTURE || items[item - 1].kind == ITEM_TABLE);
    bool in_list = item > 0 && items[item - 1].kind == ITEM_POINT;
    if (after_size)
        return 18;
    switch (items[item].kind) {
    case ITEM_TITLE:
        return 0;
    case ITEM_SIZE:
        return 36;
    case ITEM_HEADING:
        return after_heading ? 10 : 22;
    case ITEM_SUBHEADING:
        return after_heading ? 6 : 13;
    case ITEM_STEP:
        return after_heading ? 8 : 15;
    case ITEM_POINT:
        return in_list ? 2.5 : after_box ? 9 : 4;
    case ITEM_SAY:
        return after_heading ? 5 : after_box ? 9 : 6;
    default:
        return 9;
    }
}

const char *flow_name_of_size(const struct flow *flow, size_t item)
{
    const char *title = flow->document->pattern->title, *text = flow->document->items[item].text;
    size_t length = strlen(title);
    bool titled = strncmp(text, title, length) == 0 && strncmp(text + length, ": ", 2) == 0;
    return titled ? text + length + 2 : text;
}

/* ---- items ------------------------------------------------------------------------------------------------------- */

bool flow_is_of_step(const struct item *item)
{
    return item->kind == ITEM_SAY || item->kind == ITEM_POINT || item->kind == ITEM_CAUTION ||
           item->kind == ITEM_PICTURE;
}

/* A step that is not long stays on one page with its pictures. */
static void keep_step(struct flow *flow)
{
    const double most = 0.42;
    if (flow->down > most * page_depth(&flow->page))
        return;
    for (size_t i = flow->step_begins; i + 1 < flow->used; i++)
        flow->strips[i].keep = true;
}

/* The next step does not begin before the pictures of this one end. */
static void leave_step(struct flow *flow)
{
    if (flow->in_step && flow->down < flow->beside) {
        double lacks = flow->beside - flow->down;
        flow_add(flow, STRIP_SPACE, NO_ITEM, 0, lacks);
    }
    if (flow->in_step)
        keep_step(flow);
    flow->in_step = false;
    flow->beside = 0;
    flow->down = 0;
}

static void mark(struct flow *flow, size_t item)
{
    if (flow->marks_used == flow->marks_room) {
        flow->marks_room = 2 * flow->marks_room + 16;
        flow->marks = realloc(flow->marks, flow->marks_room * sizeof *flow->marks);
        if (flow->marks == NULL)
            must(MUSLIN_ERR_NO_MEMORY);
    }
    bool is_size = flow->document->items[item].kind == ITEM_SIZE;
    flow->marks[flow->marks_used++] = (struct mark){ flow->used, item, is_size };
}

static void set_step(struct flow *flow, size_t item)
{
    flow->in_step = true;
    flow->step_begins = flow->used;
    flow_choose_beside(flow, item);
    flow_lines(flow, item);
    flow_put_beside(flow, item);
}

/* Sets an item, or a run of pictures; tells which comes next. */
static size_t set_item(struct flow *flow, size_t item)
{
    const struct item *asked = &flow->document->items[item];
    if (!flow_is_of_step(asked))
        leave_step(flow);
    if (asked->kind == ITEM_SIZE || asked->kind == ITEM_HEADING)
        mark(flow, item);
    if (asked->kind == ITEM_PICTURE)
        return flow_pictures(flow, item);
    if (asked->kind == ITEM_STEP)
        set_step(flow, item);
    else if (asked->kind == ITEM_TABLE)
        flow_table(flow, item);
    else
        flow_lines(flow, item);
    return item + 1;
}

struct flow *flow_create(const struct document *document, struct type_case *letters, enum pattern_paper paper)
{
    struct flow *flow = flow_need(1, sizeof *flow);
    flow->document = document;
    flow->letters = letters;
    flow->page = page_of(paper);
    flow->sizes = flow_count(document, ITEM_SIZE);
    flow->is_beside = flow_need(document->used, sizeof *flow->is_beside);
    bool listed = false;
    for (size_t item = 0; item < document->used;) {
        if (document->items[item].kind == ITEM_SIZE && !listed) {
            leave_step(flow);
            flow_contents(flow);
            listed = true;
        }
        item = set_item(flow, item);
    }
    leave_step(flow);
    flow_break(flow);
    flow_number_contents(flow);
    return flow;
}

/* ---- the end ----------------------------------------------------------------------------------------------------- */

static void lines_free(struct lines *lines)
{
    g_object_unref(lines->layout);
    if (lines->lead != NULL)
        g_object_unref(lines->lead);
    free(lines);
}

/* What several strips share goes with the last of them. */
static void strip_free(const struct flow *flow, size_t i)
{
    const struct strip *strip = &flow->strips[i];
    const struct strip *next = i + 1 < flow->used ? strip + 1 : NULL;
    if (strip->lines != NULL && (next == NULL || next->lines != strip->lines))
        lines_free(strip->lines);
    if (strip->grid != NULL && (next == NULL || next->grid != strip->grid))
        flow_grid_free(strip->grid);
    if (strip->shown != NULL)
        flow_shown_free(strip->shown, strip->count);
}

void flow_free(struct flow *flow)
{
    if (flow == NULL)
        return;
    for (size_t i = 0; i < flow->used; i++)
        strip_free(flow, i);
    if (flow->contents != NULL) {
        free(flow->contents->heads);
        free(flow->contents->cells);
        free(flow->contents->is_number);
        free(flow->contents);
    }
    free(flow->contents_items);
    free(flow->is_beside);
    free(flow->marks);
    free(flow->strips);
    free(flow);
}
