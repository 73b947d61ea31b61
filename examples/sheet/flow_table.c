/* flow_table.c - tables: columns as wide as they need, rows that are not divided, heads again on every page.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "flow.h"

#define CELL_PAD 4.0 /* at either side of a cell, and half of it above and below */

/* ---- columns ----------------------------------------------------------------------------------------------------- */

/* The row after the last one are the heads. */
static const char *text_of(const struct table *table, size_t row, size_t column)
{
    const char *text = row == table->rows ? table->heads[column] : table->cells[row * table->columns + column];
    return text != NULL ? text : "";
}

static PangoLayout *set_cell(struct flow *flow, const struct grid *grid, size_t column, enum face face,
                             const char *text, double width)
{
    bool number = grid->table->is_number[grid->column[column]];
    return number ? type_set_right(flow->letters, face, text, width) : type_set(flow->letters, face, text, width);
}

/* How wide a column would be in one line, and how wide it must be at least. */
static void measure(struct flow *flow, const struct grid *grid, size_t column, double *wish, double *least)
{
    const struct table *table = grid->table;
    size_t of = grid->column[column];
    *wish = 0;
    *least = 0;
    for (size_t row = 0; row <= table->rows; row++) {
        enum face face = row == table->rows ? grid->head_face : grid->face;
        PangoLayout *cell = type_set(flow->letters, face, text_of(table, row, of), 0);
        double wide = type_width(cell), narrow = type_least_width(cell);
        *wish = wide > *wish ? wide : *wish;
        *least = narrow > *least ? narrow : *least;
        g_object_unref(cell);
    }
    *wish += 2 * CELL_PAD + 0.5;
    *least += 2 * CELL_PAD + 0.5;
}

/* How columns have room: each in one line, or broken at blanks, or not even so. */
enum room { NOT, HARDLY, EASILY };

/* Columns that want no more than an equal share of what is left have what they want; true if there was one. */
static bool content(const double *wish, const double *least, size_t count, double *left, size_t *open, double *widths)
{
    bool found = false;
    for (size_t i = 0; i < count; i++) {
        double share = *left / (double)*open;
        if (widths[i] > 0 || (wish[i] > share && least[i] < share))
            continue;
        widths[i] = wish[i] > share ? least[i] : wish[i];
        *left -= widths[i];
        (*open)--;
        found = true;
        if (*open == 0)
            return false;
    }
    return found;
}

/* What is wanted where it fits; else narrow columns are not broken, and wide ones share what they leave. */
static enum room share_out(const double *wish, const double *least, size_t count, double room, double *widths)
{
    double wished = 0, needed = 0, left = room;
    size_t open = count;
    for (size_t i = 0; i < count; i++) {
        wished += wish[i];
        needed += least[i];
        widths[i] = 0;
    }
    while (wished > room && content(wish, least, count, &left, &open, widths))
        continue;
    for (size_t i = 0; i < count; i++)
        if (widths[i] <= 0)
            widths[i] = wished <= room ? wish[i] : left / (double)open;
    return wished <= room ? EASILY : needed <= room ? HARDLY : NOT;
}

static enum room set_widths(struct flow *flow, struct grid *grid, double room)
{
    double *wish = flow_need(grid->columns, sizeof *wish);
    double *least = flow_need(grid->columns, sizeof *least);
    for (size_t i = 0; i < grid->columns; i++)
        measure(flow, grid, i, &wish[i], &least[i]);
    enum room fits = share_out(wish, least, grid->columns, room, grid->widths);
    for (size_t i = 0; i < grid->columns; i++)
        grid->x[i] = i == 0 ? grid->left : grid->x[i - 1] + grid->widths[i - 1];
    grid->right = grid->x[grid->columns - 1] + grid->widths[grid->columns - 1];
    free(wish);
    free(least);
    return fits;
}

/* ---- rows -------------------------------------------------------------------------------------------------------- */

static double row_of(struct flow *flow, struct grid *grid, size_t row, PangoLayout **cells)
{
    const struct table *table = grid->table;
    bool is_head = row == table->rows;
    enum face face = is_head ? grid->head_face : grid->face;
    int most = 1;
    for (size_t i = 0; i < grid->columns; i++) {
        const char *text = text_of(table, row, grid->column[i]);
        cells[i] = set_cell(flow, grid, i, face, text, grid->widths[i] - 2 * CELL_PAD);
        int lines = type_lines(cells[i]);
        most = lines > most ? lines : most;
    }
    return most * type_leading(face) + CELL_PAD;
}

static bool has_heads(const struct table *table)
{
    for (size_t i = 0; i < table->columns; i++)
        if (text_of(table, table->rows, i)[0] != '\0')
            return true;
    return false;
}

static void fill(struct flow *flow, struct grid *grid)
{
    const struct table *table = grid->table;
    grid->heads = flow_need(grid->columns, sizeof *grid->heads);
    grid->cells = flow_need(grid->columns * table->rows, sizeof *grid->cells);
    grid->row_heights = flow_need(table->rows, sizeof *grid->row_heights);
    double height = row_of(flow, grid, table->rows, grid->heads);
    grid->head_height = has_heads(table) ? height : 0;
    for (size_t row = 0; row < table->rows; row++)
        grid->row_heights[row] = row_of(flow, grid, row, grid->cells + row * grid->columns);
}

/* Two rows at least stand at either end of a page; a short table stays whole. */
static bool is_kept(size_t row, size_t rows)
{
    enum { SHORT = 7 };
    return row + 1 < rows && (rows <= SHORT || row == 0 || row + 2 == rows);
}

static void put_rows(struct flow *flow, size_t item, struct grid *grid, double before, bool first, bool last)
{
    size_t rows = grid->table->rows;
    for (size_t row = 0; row < rows; row++) {
        bool top = row == 0;
        double height = grid->row_heights[row] + (top ? grid->head_height : 0);
        struct strip *strip = flow_add(flow, STRIP_ROW, item, top ? before : 0, height);
        strip->grid = grid;
        strip->count = row;
        strip->first = first && top;
        strip->last = last && row + 1 == rows;
        strip->keep = is_kept(row, rows);
    }
}

/* ---- a table ----------------------------------------------------------------------------------------------------- */

static struct grid *grid_create(const struct table *table, size_t columns)
{
    struct grid *grid = flow_need(1, sizeof *grid);
    grid->table = table;
    grid->face = FACE_CELL;
    grid->head_face = FACE_COLUMN;
    grid->columns = columns;
    grid->column = flow_need(columns, sizeof *grid->column);
    grid->x = flow_need(columns, sizeof *grid->x);
    grid->widths = flow_need(columns, sizeof *grid->widths);
    return grid;
}

void flow_grid_free(struct grid *grid)
{
    for (size_t i = 0; i < grid->columns; i++)
        g_object_unref(grid->heads[i]);
    for (size_t i = 0; i < grid->columns * grid->table->rows; i++)
        g_object_unref(grid->cells[i]);
    free(grid->heads);
    free(grid->cells);
    free(grid->row_heights);
    free(grid->column);
    free(grid->x);
    free(grid->widths);
    free(grid);
}

/* Where a table stands, and in which letters: the first of these in which it has room. */
static bool fit_grid(struct flow *flow, struct grid *grid)
{
    const double indented = flow_width(flow, PAGE_INDENT), whole = flow_width(flow, 0);
    grid->left = PAGE_INDENT;
    if (set_widths(flow, grid, indented) == EASILY)
        return true;
    grid->left = 0;
    if (set_widths(flow, grid, whole) != NOT)
        return true;
    grid->face = FACE_FINE;
    grid->head_face = FACE_FINE_COLUMN;
    return set_widths(flow, grid, whole) != NOT;
}

/* The first column and, beside it, those from `from`, as many as `count`. */
static struct grid *try_columns(struct flow *flow, const struct table *table, size_t from, size_t count, bool *fits)
{
    struct grid *grid = grid_create(table, count + 1);
    for (size_t i = 0; i < count; i++)
        grid->column[i + 1] = from + i;
    *fits = fit_grid(flow, grid);
    return grid;
}

static void drop_unfilled(struct grid *grid)
{
    free(grid->column);
    free(grid->x);
    free(grid->widths);
    free(grid);
}

/* Columns that do not fit beside the others stand below them, with the first one again. */
void flow_grid(struct flow *flow, size_t item, const struct table *table, bool is_contents)
{
    bool has_caption = !is_contents && flow->document->items[item].text != NULL;
    double before = is_contents || has_caption ? 4 : flow_before(flow, item);
    if (table->rows == 0)
        return;
    size_t from = 1;
    do {
        bool fits = false;
        size_t count = table->columns - from;
        struct grid *grid = try_columns(flow, table, from, count, &fits);
        while (!fits && count > 1) {
            drop_unfilled(grid);
            grid = try_columns(flow, table, from, --count, &fits);
        }
        fill(flow, grid);
        put_rows(flow, item, grid, before, from == 1, from + count == table->columns);
        from += count;
        before = 10;
    } while (from < table->columns);
}

static struct lines *put_caption(struct flow *flow, size_t item, const char *text)
{
    struct lines *lines = flow_need(1, sizeof *lines);
    lines->face = FACE_STRONG;
    lines->x = PAGE_INDENT;
    flow_put_lines(flow, item, lines, text, true);
    return lines;
}

void flow_table(struct flow *flow, size_t item)
{
    const struct item *asked = &flow->document->items[item];
    struct lines *caption = NULL;
    if (asked->text != NULL && asked->text[0] != '\0')
        caption = put_caption(flow, item, asked->text);
    flow_grid(flow, item, flow_with_pages(flow, item), false);
    const struct grid *grid = flow->strips[flow->used - 1].grid;
    if (caption != NULL && grid != NULL)
        caption->x = grid->left + CELL_PAD;
}
