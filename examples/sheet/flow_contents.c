/* flow_contents.c - the list of contents at the end of the cover: the sizes, or the parts where there is one size.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "flow.h"

#define WIDEST_NUMBER "0000"

static size_t count_of(const struct document *document, enum item_kind kind, size_t from)
{
    size_t count = 0;
    for (size_t item = from; item < document->used; item++)
        count += document->items[item].kind == kind;
    return count;
}

static size_t first_size(const struct document *document)
{
    size_t item = 0;
    while (document->items[item].kind != ITEM_SIZE)
        item++;
    return item;
}

/* Cells of the table point to texts of the document, which nobody changes. */
static void list(struct flow *flow, enum item_kind kind, size_t rows)
{
    static char empty[] = "", page[] = "Page", widest[] = WIDEST_NUMBER;
    const struct document *document = flow->document;
    struct table *table = flow_need(1, sizeof *table);
    table->columns = 2;
    table->rows = rows;
    table->heads = flow_need(2, sizeof *table->heads);
    table->is_number = flow_need(2, sizeof *table->is_number);
    table->cells = flow_need(2 * rows, sizeof *table->cells);
    flow->contents_items = flow_need(rows, sizeof *flow->contents_items);
    table->heads[0] = empty;
    table->heads[1] = page;
    table->is_number[1] = true;
    size_t row = 0;
    for (size_t item = first_size(document); item < document->used; item++) {
        if (document->items[item].kind != kind)
            continue;
        flow->contents_items[row] = item;
        const char *name = kind == ITEM_SIZE ? flow_name_of_size(flow, item) : document->items[item].text;
        table->cells[2 * row] = (char *)(uintptr_t)name;
        table->cells[2 * row + 1] = widest;
        row++;
    }
    flow->contents = table;
}

void flow_contents(struct flow *flow)
{
    enum { FEWEST = 3 };
    size_t from = first_size(flow->document);
    size_t sizes = count_of(flow->document, ITEM_SIZE, from);
    size_t headings = count_of(flow->document, ITEM_HEADING, from);
    if (sizes > 1)
        list(flow, ITEM_SIZE, sizes);
    else if (headings >= FEWEST)
        list(flow, ITEM_HEADING, headings);
    else
        return;
    flow_add(flow, STRIP_SPACE, NO_ITEM, 0, 14)->keep = true;
    flow_grid(flow, NO_ITEM, flow->contents, true);
}

static int page_of_item(const struct flow *flow, size_t item)
{
    for (size_t i = 0; i < flow->marks_used; i++)
        if (flow->marks[i].item == item)
            return flow->strips[flow->marks[i].strip].page;
    return 0;
}

void flow_number_contents(struct flow *flow)
{
    if (flow->contents == NULL)
        return;
    for (size_t row = 0; row < flow->contents->rows; row++) {
        char number[16];
        snprintf(number, sizeof number, "%d", page_of_item(flow, flow->contents_items[row]));
        pango_layout_set_text(flow->contents_grid->cells[2 * row + 1], number, -1);
    }
}
