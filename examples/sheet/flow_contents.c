/* flow_contents.c - where things are: pages of the sizes, in the cover's table of them; or of the parts, where there
 * is one size, as a list at the end of the cover.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "flow.h"

static char nothing[] = "", page_word[] = "Page", print_words[] = "pages to print", widest[] = "000",
            widest_range[] = "000 to 000";

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
    if (flow->contents != NULL || item > first_size(flow->document) || flow->sizes < 2)
        return table;
    for (size_t i = 0; i < table->columns; i++)
        sizes += flow_size_named(flow, table->heads[i]) != NO_ITEM;
    if (sizes < flow->sizes)
        return table;
    struct table *more = table_create(table->columns, table->rows + 1);
    flow->contents = more;
    flow->pages_in_row = table->rows;
    memcpy(more->heads, table->heads, table->columns * sizeof *more->heads);
    memcpy(more->is_number, table->is_number, table->columns * sizeof *more->is_number);
    memcpy(more->cells, table->cells, table->columns * table->rows * sizeof *more->cells);
    for (size_t i = 0; i < table->columns; i++)
        more->cells[table->rows * table->columns + i] =
            i == 0 ? print_words : flow_size_named(flow, table->heads[i]) != NO_ITEM ? widest_range : nothing;
    return more;
}

/* ---- as a list --------------------------------------------------------------------------------------------------- */

/* In two columns, so that the cover stays one page. */
static void list_parts(struct flow *flow, size_t count)
{
    const struct document *document = flow->document;
    size_t rows = (count + 1) / 2;
    struct table *table = table_create(2 * 2, rows);
    flow->contents_items = flow_need(2 * rows, sizeof *flow->contents_items);
    for (size_t i = 0; i < 2 * rows; i++) {
        flow->contents_items[i] = NO_ITEM;
        table->cells[2 * i] = nothing;
        table->cells[2 * i + 1] = nothing;
    }
    for (size_t i = 0; i < table->columns; i++) {
        table->is_number[i] = i % 2 != 0;
        table->heads[i] = i % 2 != 0 ? page_word : nothing;
    }
    size_t found = 0;
    for (size_t item = 0; item < document->used; item++) {
        if (document->items[item].kind != ITEM_HEADING)
            continue;
        char **cells = table->cells + (found % rows) * table->columns + found / rows * 2;
        cells[0] = document->items[item].text;
        cells[1] = widest;
        flow->contents_items[found++] = item;
    }
    flow->contents = table;
}

void flow_contents(struct flow *flow)
{
    enum { FEWEST = 3 };
    size_t headings = flow_count(flow->document, ITEM_HEADING);
    if (flow->sizes != 1 || headings < FEWEST)
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

/* A size ends where the next one begins, or with the last page. */
static int last_page_of_size(const struct flow *flow, size_t item)
{
    for (size_t next = item + 1; next < flow->document->used; next++)
        if (flow->document->items[next].kind == ITEM_SIZE)
            return page_of_item(flow, next) - 1;
    int last = 0;
    for (size_t i = 0; i < flow->used; i++)
        if (flow->strips[i].page > last)
            last = flow->strips[i].page;
    return last;
}

/* What a cell of the table that has the pages leads to, or NO_ITEM. */
size_t flow_leads_to(const struct flow *flow, const struct grid *grid, size_t row, size_t column)
{
    size_t of = grid->column[column];
    if (grid->table != flow->contents || row == grid->table->rows)
        return NO_ITEM;
    if (flow->contents_items != NULL)
        return flow->contents_items[of / 2 * grid->table->rows + row];
    return of > 0 && row == flow->pages_in_row ? flow_size_named(flow, grid->table->heads[of]) : NO_ITEM;
}

/* Whether it is a page's number. */
static bool is_number(const struct flow *flow, const struct grid *grid, size_t column)
{
    return flow->contents_items == NULL || grid->column[column] % 2 != 0;
}

void flow_number_contents(struct flow *flow)
{
    for (size_t i = 0; i < flow->used && flow->contents != NULL; i++) {
        const struct strip *strip = &flow->strips[i];
        if (strip->grid == NULL || strip->grid->table != flow->contents)
            continue;
        for (size_t column = 0; column < strip->grid->columns; column++) {
            char number[32];
            size_t item = flow_leads_to(flow, strip->grid, strip->count, column);
            if (item == NO_ITEM || !is_number(flow, strip->grid, column))
                continue;
            if (flow->contents_items != NULL)
                snprintf(number, sizeof number, "%d", page_of_item(flow, item));
            else
                snprintf(number, sizeof number, "%d to %d", page_of_item(flow, item), last_page_of_size(flow, item));
            pango_layout_set_text(strip->grid->cells[strip->count * strip->grid->columns + column], number, -1);
        }
    }
}
