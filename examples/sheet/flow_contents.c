/* flow_contents.c - where things are: pages of the sizes, in the cover's table of them; or of the parts, where there
 * is one size, as a list at the end of the cover.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "flow.h"

static char nothing[] = "", page_word[] = "Page", widest[] = "000";

static size_t count_of(const struct document *document, enum item_kind kind)
{
    size_t count = 0;
    for (size_t item = 0; item < document->used; item++)
        count += document->items[item].kind == kind;
    return count;
}

static size_t first_size(const struct document *document)
{
    size_t item = 0;
    while (item < document->used && document->items[item].kind != ITEM_SIZE)
        item++;
    return item;
}

/* ---- in the table of sizes --------------------------------------------------------------------------------------- */

size_t flow_size_named(const struct flow *flow, const char *name)
{
    for (size_t item = 0; item < flow->document->used; item++)
        if (flow->document->items[item].kind == ITEM_SIZE && strcmp(flow_name_of_size(flow, item), name) == 0)
            return item;
    return NO_ITEM;
}

static struct table *table_create(size_t columns, size_t rows)
{
    struct table *table = flow_need(1, sizeof *table);
    table->columns = columns;
    table->rows = rows;
    table->heads = flow_need(columns, sizeof *table->heads);
    table->is_number = flow_need(columns, sizeof *table->is_number);
    table->cells = flow_need(columns * rows, sizeof *table->cells);
    return table;
}

/* The cover's table whose columns are the sizes, with their pages as a row more. Cells are the document's own. */
const struct table *flow_with_pages(struct flow *flow, size_t item)
{
    const struct table *table = flow->document->items[item].table;
    size_t sizes = 0;
    if (flow->contents != NULL || item > first_size(flow->document) || count_of(flow->document, ITEM_SIZE) < 2)
        return table;
    for (size_t i = 0; i < table->columns; i++)
        sizes += flow_size_named(flow, table->heads[i]) != NO_ITEM;
    if (sizes < count_of(flow->document, ITEM_SIZE))
        return table;
    struct table *more = table_create(table->columns, table->rows + 1);
    flow->contents = more;
    flow->pages_in_row = table->rows;
    memcpy(more->heads, table->heads, table->columns * sizeof *more->heads);
    memcpy(more->is_number, table->is_number, table->columns * sizeof *more->is_number);
    memcpy(more->cells, table->cells, table->columns * table->rows * sizeof *more->cells);
    for (size_t i = 0; i < table->columns; i++)
        more->cells[table->rows * table->columns + i] =
            i == 0 ? page_word : flow_size_named(flow, table->heads[i]) != NO_ITEM ? widest : nothing;
    return more;
}

/* ---- as a list --------------------------------------------------------------------------------------------------- */

static void list_parts(struct flow *flow, size_t rows)
{
    const struct document *document = flow->document;
    struct table *table = table_create(2, rows);
    flow->contents_items = flow_need(rows, sizeof *flow->contents_items);
    table->heads[0] = nothing;
    table->heads[1] = page_word;
    table->is_number[1] = true;
    size_t row = 0;
    for (size_t item = 0; item < document->used; item++) {
        if (document->items[item].kind != ITEM_HEADING)
            continue;
        flow->contents_items[row] = item;
        table->cells[2 * row] = document->items[item].text;
        table->cells[2 * row + 1] = widest;
        row++;
    }
    flow->contents = table;
}

void flow_contents(struct flow *flow)
{
    enum { FEWEST = 3 };
    size_t headings = count_of(flow->document, ITEM_HEADING);
    if (count_of(flow->document, ITEM_SIZE) != 1 || headings < FEWEST)
        return;
    list_parts(flow, headings);
    flow_add(flow, STRIP_SPACE, NO_ITEM, 0, 14)->keep = true;
    flow_grid(flow, NO_ITEM, flow->contents, true);
}

/* ---- numbers ----------------------------------------------------------------------------------------------------- */

static int page_of_item(const struct flow *flow, size_t item)
{
    for (size_t i = 0; i < flow->marks_used; i++)
        if (flow->marks[i].item == item)
            return flow->strips[flow->marks[i].strip].page;
    return 0;
}

/* What a cell leads to whose text is a page's number, or NO_ITEM. */
size_t flow_numbered(const struct flow *flow, const struct grid *grid, size_t row, size_t column)
{
    size_t of = grid->column[column];
    if (grid->table != flow->contents || of == 0)
        return NO_ITEM;
    if (flow->contents_items != NULL)
        return row < grid->table->rows ? flow->contents_items[row] : NO_ITEM;
    return row == flow->pages_in_row ? flow_size_named(flow, grid->table->heads[of]) : NO_ITEM;
}

void flow_number_contents(struct flow *flow)
{
    for (size_t i = 0; i < flow->used && flow->contents != NULL; i++) {
        const struct strip *strip = &flow->strips[i];
        if (strip->grid == NULL || strip->grid->table != flow->contents)
            continue;
        for (size_t column = 0; column < strip->grid->columns; column++) {
            char number[16];
            size_t item = flow_numbered(flow, strip->grid, strip->count, column);
            if (item == NO_ITEM)
                continue;
            snprintf(number, sizeof number, "%d", page_of_item(flow, item));
            pango_layout_set_text(strip->grid->cells[strip->count * strip->grid->columns + column], number, -1);
        }
    }
}
