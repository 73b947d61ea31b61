/* flow_lines.c - headings, paragraphs, points and steps as lines.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "flow.h"

static enum face face_of(const struct flow *flow, size_t item)
{
    enum { SHORT = 90 }; /* a step that names what is made, not one that tells how */
    const struct item *asked = &flow->document->items[item];
    switch (asked->kind) {
    case ITEM_TITLE:
        return FACE_TITLE;
    case ITEM_SIZE:
        return FACE_SIZE;
    case ITEM_HEADING:
        return FACE_HEADING;
    case ITEM_SUBHEADING:
        return FACE_SUBHEADING;
    case ITEM_STEP:
        return strlen(asked->text) <= SHORT ? FACE_STRONG : FACE_BODY;
    default:
        return FACE_BODY;
    }
}

static bool is_heading(enum item_kind kind)
{
    return kind == ITEM_TITLE || kind == ITEM_SIZE || kind == ITEM_HEADING;
}

/* ---- what hangs before a text ------------------------------------------------------------------------------------ */

static const char *lead_of(const struct item *item)
{
    if (item->lead != NULL)
        return item->lead;
    return item->kind == ITEM_POINT ? "\u2013" : item->kind == ITEM_CAUTION ? "!" : NULL;
}

/* Points of one list stand in equally: as far as the widest of what hangs before them wants. */
static double widest_lead(struct flow *flow, size_t item)
{
    const struct item *items = flow->document->items;
    size_t first = item;
    double widest = 0;
    while (first > 0 && items[first - 1].kind == ITEM_POINT && items[first - 1].depth >= items[item].depth)
        first--;
    for (size_t i = first; i < flow->document->used && items[i].kind == ITEM_POINT; i++) {
        if (items[i].depth < items[item].depth)
            break;
        if (items[i].depth > items[item].depth)
            continue;
        PangoLayout *lead = type_set(flow->letters, FACE_BODY, lead_of(&items[i]), 0);
        widest = type_width(lead) > widest ? type_width(lead) : widest;
        g_object_unref(lead);
    }
    return widest;
}

/* Where the text of an item begins, and what hangs before it. */
static void hang(struct flow *flow, size_t item, struct lines *lines)
{
    const double gap = 5, deeper = 16;
    const struct item *asked = &flow->document->items[item];
    lines->x = is_heading(asked->kind) ? 0 : PAGE_INDENT;
    if (asked->kind == ITEM_POINT) {
        lines->lead_x = PAGE_INDENT + asked->depth * deeper;
        lines->x = lines->lead_x + widest_lead(flow, item) + gap;
        lines->lead_face = FACE_BODY;
    } else if (asked->kind == ITEM_STEP) {
        lines->lead_face = FACE_LETTER;
    } else if (asked->kind == ITEM_CAUTION) {
        lines->x = PAGE_INDENT + 10;
        lines->lead_x = PAGE_INDENT + 10;
        lines->lead_face = FACE_STRONG;
    } else {
        return;
    }
    const char *lead = lead_of(asked);
    if (lead == NULL)
        return;
    lines->lead = type_set(flow->letters, lines->lead_face, lead, 0);
    double least = lines->lead_x + type_width(lines->lead) + gap;
    lines->x = lines->x > least ? lines->x : least;
}

/* ---- lines ------------------------------------------------------------------------------------------------------- */

/* No line of a paragraph stands alone at the top or the foot of a page; short ones are not divided. */
static bool is_kept(int line, int count)
{
    return count <= 3 || line == 0 || line == count - 2;
}

static bool is_point(const struct flow *flow, size_t item)
{
    return item < flow->document->used && flow->document->items[item].kind == ITEM_POINT;
}

/* No point of a list stands alone at the foot or the top of a page. */
static bool is_at_end_of_list(const struct flow *flow, size_t item)
{
    bool first = item == 0 || !is_point(flow, item - 1);
    return is_point(flow, item) && is_point(flow, item + 1) && (first || !is_point(flow, item + 2));
}

/* Whether a text goes on in what follows it. */
static bool leads_on(const struct flow *flow, size_t item)
{
    const struct item *asked = &flow->document->items[item];
    size_t length = strlen(asked->text);
    bool colon = length > 0 && asked->text[length - 1] == ':';
    bool to_picture = asked->kind == ITEM_SAY && item + 1 < flow->document->used && asked[1].kind == ITEM_PICTURE;
    bool heads = is_heading(asked->kind) || asked->kind == ITEM_SUBHEADING || asked->kind == ITEM_STEP;
    return heads || colon || to_picture || is_at_end_of_list(flow, item);
}

void flow_put_lines(struct flow *flow, size_t item, struct lines *lines, const char *text, bool keep)
{
    lines->layout = type_set(flow->letters, lines->face, text, flow_width(flow, lines->x));
    int count = type_lines(lines->layout);
    for (int line = 0; line < count; line++) {
        double before = line == 0 ? flow_before(flow, item) : 0;
        struct strip *strip = flow_add(flow, STRIP_LINE, item, before, type_leading(lines->face));
        strip->lines = lines;
        strip->count = (size_t)line;
        strip->first = line == 0;
        strip->last = line == count - 1;
        strip->keep = keep || (strip->last ? leads_on(flow, item) : is_kept(line, count));
    }
}

void flow_lines(struct flow *flow, size_t item)
{
    const struct item *asked = &flow->document->items[item];
    const size_t first = flow->used;
    struct lines *lines = flow_need(1, sizeof *lines);
    lines->face = face_of(flow, item);
    hang(flow, item, lines);
    flow_put_lines(flow, item, lines, asked->text, false);
    flow->strips[first].new_page = asked->kind == ITEM_SIZE && flow->sizes > 1;
}
