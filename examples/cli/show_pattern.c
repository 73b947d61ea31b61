/* show_pattern.c - a worked pattern as plain text, and its tables as comma-separated values.
 *
 * SPDX-License-Identifier: MIT */
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

#include "memory.h"
#include "sheet.h"

enum { PAGE_WIDTH = 79 };

static const char *text_in(json_t *object, const char *member)
{
    const char *text = json_string_value(json_object_get(object, member));
    return text == NULL ? "" : text;
}

/* ---- tables ------------------------------------------------------------------------------------------------------ */

static size_t width_of(json_t *table, size_t column)
{
    json_t *row;
    size_t index;
    size_t width = sheet_columns(json_string_value(json_array_get(json_object_get(table, "heads"), column)));
    json_array_foreach(json_object_get(table, "rows"), index, row) {
        const size_t cell = sheet_columns(json_string_value(json_array_get(row, column)));
        width = cell > width ? cell : width;
    }
    return width;
}

static bool fits(json_t *table)
{
    const size_t columns = json_array_size(json_object_get(table, "heads"));
    size_t width = 2;
    for (size_t i = 0; i < columns; i++)
        width += width_of(table, i) + 2;
    return width <= PAGE_WIDTH + 2;
}

/* A no-break space is a blank here. */
static void write_plain(FILE *out, const char *text)
{
    for (; *text != '\0'; text++) {
        const bool no_break = strncmp(text, "\xC2\xA0", 2) == 0;
        fputc(no_break ? ' ' : *text, out);
        text += no_break;
    }
}

static void write_row(FILE *out, json_t *table, json_t *row)
{
    const size_t columns = json_array_size(row);
    fputs("  ", out);
    for (size_t i = 0; i < columns; i++) {
        const char *cell = json_string_value(json_array_get(row, i));
        const int blanks = (int)(width_of(table, i) - sheet_columns(cell));
        const bool right = json_is_true(json_array_get(json_object_get(table, "numbers"), i));
        if (right)
            fprintf(out, "%*s", blanks, "");
        write_plain(out, cell);
        if (i + 1 < columns)
            fprintf(out, "%*s", (right ? 0 : blanks) + 2, "");
    }
    fputc('\n', out);
}

/* "A, night. Needed: 12 in; buy: 3/8 yd" */
static void write_row_in_words(struct sheet *sheet, json_t *table, json_t *row)
{
    json_t *heads = json_object_get(table, "heads");
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_text(&text, &length);
    const char *between = ". ";
    fputs(json_string_value(json_array_get(row, 0)), out);
    for (size_t i = 1; i < json_array_size(row); i++) {
        const char *cell = json_string_value(json_array_get(row, i));
        if (cell[0] == '\0')
            continue;
        fprintf(out, "%s%s: %s", between, json_string_value(json_array_get(heads, i)), cell);
        between = "; ";
    }
    fclose(out);
    sheet_hanging(sheet, "  - ", 4, text);
    free(text);
}

static void show_item_table(struct sheet *sheet, json_t *item)
{
    json_t *table = json_object_get(item, "table");
    json_t *row;
    size_t index;
    sheet_gap(sheet);
    if (text_in(item, "text")[0] != '\0')
        sheet_hanging(sheet, "", 0, text_in(item, "text"));
    const bool as_table = fits(table);
    if (as_table)
        write_row(sheet->out, table, json_object_get(table, "heads"));
    json_array_foreach(json_object_get(table, "rows"), index, row) {
        if (as_table)
            write_row(sheet->out, table, row);
        else
            write_row_in_words(sheet, table, row);
    }
    sheet_gap(sheet);
}

/* ---- text -------------------------------------------------------------------------------------------------------- */

static void underline(struct sheet *sheet, const char *text, char mark)
{
    for (size_t i = sheet_columns(text); i > 0; i--)
        fputc(mark, sheet->out);
    sheet_gap(sheet);
}

/* `mark` stands before it, then what hangs before a point. */
static void show_point(struct sheet *sheet, json_t *item, const char *mark)
{
    char first[80];
    const char *lead = text_in(item, "lead");
    const int depth = (int)json_integer_value(json_object_get(item, "depth"));
    snprintf(first, sizeof first, "  %*s%.60s ", 4 * depth, "", lead[0] != '\0' ? lead : mark);
    sheet_hanging(sheet, first, sheet_columns(first), text_in(item, "text"));
}

static void show_step(struct sheet *sheet, json_t *item)
{
    char first[80];
    sheet_gap(sheet);
    snprintf(first, sizeof first, "%-3.60s ", text_in(item, "lead"));
    sheet_hanging(sheet, first, sheet_columns(first), text_in(item, "text"));
}

static void show_picture(struct sheet *sheet, json_t *item)
{
    if (text_in(item, "text")[0] != '\0')
        sheet_hanging(sheet, "  (drawing) ", 4, text_in(item, "text"));
}

static void show_item(struct sheet *sheet, json_t *item)
{
    const char *kind = text_in(item, "kind");
    const char *text = text_in(item, "text");
    if (strcmp(kind, "title") == 0 || strcmp(kind, "size") == 0) {
        if (strcmp(kind, "size") == 0)
            sheet_line(sheet, "\n");
        sheet_hanging(sheet, "", 0, text);
        underline(sheet, text, '=');
    } else if (strcmp(kind, "heading") == 0) {
        sheet_gap(sheet);
        sheet_hanging(sheet, "", 0, text);
        underline(sheet, text, '-');
    } else if (strcmp(kind, "subheading") == 0) {
        sheet_gap(sheet);
        sheet_hanging(sheet, "", 0, text);
    } else if (strcmp(kind, "step") == 0) {
        show_step(sheet, item);
    } else if (strcmp(kind, "point") == 0) {
        show_point(sheet, item, "-");
    } else if (strcmp(kind, "caution") == 0) {
        sheet_hanging(sheet, "  ! Caution: ", 4, text);
    } else if (strcmp(kind, "picture") == 0) {
        show_picture(sheet, item);
    } else if (strcmp(kind, "table") == 0) {
        show_item_table(sheet, item);
    } else {
        sheet_hanging(sheet, "", 0, text);
    }
}

/* ---- comma-separated values -------------------------------------------------------------------------------------- */

enum column { TABLE, SIZE, NUMBER, FABRIC, WHAT, CUT_AGAIN, COUNT, WIDTH, HEIGHT, NEEDED, BUY, COLUMNS };
static const char *const column_names[COLUMNS] = { "table", "size",  "number", "fabric", "what",
                                                   "cut again", "count", "width", "height", "needed", "buy" };

struct csv_row {
    json_t *cells[COLUMNS]; /* texts, counts, or lengths; borrowed; null: empty */
    const char *table;
    const char *what;
};

/* Quoted, quotes doubled; what a table program would take for a formula gets an apostrophe. */
static void write_quoted(FILE *out, const char *text)
{
    fputc('"', out);
    if (text[0] != '\0' && strchr("=+-@", text[0]) != NULL)
        fputc('\'', out);
    for (; *text != '\0'; text++) {
        if (*text == '"')
            fputc('"', out);
        fputc(*text, out);
    }
    fputc('"', out);
}

static void write_cell(FILE *out, json_t *cell)
{
    if (json_is_integer(cell))
        fprintf(out, "%" JSON_INTEGER_FORMAT, json_integer_value(cell));
    else if (json_is_object(cell))
        write_quoted(out, text_in(cell, "text"));
    else if (json_is_string(cell))
        write_quoted(out, json_string_value(cell));
}

static void write_csv_row(FILE *out, const struct csv_row *row)
{
    for (int i = 0; i < COLUMNS; i++) {
        if (i > 0)
            fputc(',', out);
        if (i == TABLE)
            fputs(row->table, out);
        else if (i == WHAT && row->what != NULL)
            write_quoted(out, row->what);
        else
            write_cell(out, row->cells[i]);
    }
    for (int i = WIDTH; i < COLUMNS; i++) {
        fputc(',', out);
        write_cell(out, json_object_get(row->cells[i], "ticks"));
    }
    fputc('\n', out);
}

static void set_wide(struct csv_row *row, json_t *size)
{
    row->cells[WIDTH] = json_object_get(size, "width");
    row->cells[HEIGHT] = json_object_get(size, "height");
}

static void write_csv_sizes(FILE *out, json_t *facts)
{
    static const char *const members[] = { "finished", "unfinished" };
    json_t *top = json_object_get(facts, "top");
    for (size_t i = 0; i < 2; i++) {
        struct csv_row row = { .table = "sizes", .what = i == 0 ? "top, finished" : "top, unfinished" };
        row.cells[SIZE] = json_object_get(facts, "size");
        row.cells[COUNT] = json_object_get(top, "tops");
        set_wide(&row, json_object_get(top, members[i]));
        write_csv_row(out, &row);
    }
}

static void write_csv_cuts(FILE *out, json_t *facts)
{
    json_t *cut;
    size_t index;
    json_array_foreach(json_object_get(facts, "cuts"), index, cut) {
        struct csv_row row = { .table = "cuts" };
        row.cells[SIZE] = json_object_get(facts, "size");
        row.cells[NUMBER] = json_object_get(cut, "piece");
        row.cells[FABRIC] = json_object_get(cut, "fabric");
        row.cells[WHAT] = json_object_get(cut, "source");
        row.cells[COUNT] = json_object_get(cut, "count");
        if (strcmp(text_in(cut, "cut_again"), "no") != 0)
            row.cells[CUT_AGAIN] = json_object_get(cut, "cut_again");
        set_wide(&row, json_object_get(cut, "cut"));
        write_csv_row(out, &row);
    }
}

static void write_csv_extra_cut(FILE *out, json_t *facts, const char *what, json_t *of, json_t *count, json_t *cut)
{
    struct csv_row row = { .table = "cuts", .what = what };
    row.cells[SIZE] = json_object_get(facts, "size");
    row.cells[FABRIC] = json_object_get(of, "fabric");
    row.cells[COUNT] = count;
    set_wide(&row, cut);
    write_csv_row(out, &row);
}

static void write_csv_extra_cuts(FILE *out, json_t *facts)
{
    json_t *binding = json_object_get(facts, "binding");
    json_t *sleeve = json_object_get(facts, "sleeve");
    json_t *strip;
    size_t index;
    json_array_foreach(json_object_get(binding, "strips"), index, strip)
        write_csv_extra_cut(out, facts, "binding", binding, json_object_get(strip, "count"),
                            json_object_get(strip, "cut"));
    if (json_is_object(sleeve))
        write_csv_extra_cut(out, facts, "sleeve", sleeve, json_object_get(sleeve, "sleeves_of_all_tops"),
                            json_object_get(sleeve, "cut"));
}

static void write_csv_purchase(FILE *out, json_t *facts)
{
    json_t *fabric;
    size_t index;
    json_array_foreach(json_object_get(facts, "fabrics"), index, fabric) {
        struct csv_row row = { .table = "purchase", .what = "cloth" };
        if (json_object_get(fabric, "strips_needed") != NULL)
            row.what = "strips";
        row.cells[SIZE] = json_object_get(facts, "size");
        row.cells[FABRIC] = json_object_get(fabric, "fabric");
        row.cells[COUNT] = json_object_get(fabric, "strips_needed");
        row.cells[WIDTH] = json_object_get(fabric, "usable_width");
        row.cells[NEEDED] = json_object_get(fabric, "needed");
        row.cells[BUY] = json_object_get(fabric, "buy");
        write_csv_row(out, &row);
    }
}

static void write_csv_rest(FILE *out, json_t *facts)
{
    json_t *backing = json_object_get(facts, "backing");
    json_t *batting = json_object_get(facts, "batting");
    struct csv_row row = { .table = "purchase", .what = "backing" };
    row.cells[SIZE] = json_object_get(facts, "size");
    row.cells[FABRIC] = json_object_get(backing, "fabric");
    set_wide(&row, json_object_get(backing, "at_least"));
    row.cells[NEEDED] = json_object_get(backing, "needed");
    row.cells[BUY] = json_object_get(backing, "buy");
    if (json_is_object(backing))
        write_csv_row(out, &row);
    struct csv_row inside = { .table = "purchase", .what = "batting, cut" };
    inside.cells[SIZE] = json_object_get(facts, "size");
    inside.cells[COUNT] = json_object_get(batting, "count");
    inside.cells[BUY] = json_object_get(batting, "buy");
    set_wide(&inside, json_object_get(batting, "cut"));
    if (json_is_object(batting))
        write_csv_row(out, &inside);
}

static void write_csv_misfits(FILE *out, json_t *facts)
{
    json_t *misfit;
    size_t index;
    json_array_foreach(json_object_get(facts, "misfits"), index, misfit) {
        json_t *what = json_sprintf("%s: first edge by second edge", text_in(misfit, "place"));
        struct csv_row row = { .table = strcmp(text_in(misfit, "kind"), "eased") == 0 ? "eased" : "misfits" };
        row.cells[SIZE] = json_object_get(facts, "size");
        row.cells[WHAT] = what;
        row.cells[COUNT] = json_object_get(misfit, "times");
        row.cells[WIDTH] = json_object_get(misfit, "first_size");
        row.cells[HEIGHT] = json_object_get(misfit, "second_size");
        write_csv_row(out, &row);
        json_decref(what);
    }
}

static void show_csv(FILE *out, json_t *answer)
{
    json_t *facts;
    size_t index;
    for (int i = 0; i < COLUMNS; i++)
        fprintf(out, "%s%s", i == 0 ? "" : ",", column_names[i]);
    for (int i = WIDTH; i < COLUMNS; i++)
        fprintf(out, ",%s ticks", column_names[i]);
    fputc('\n', out);
    json_array_foreach(json_object_get(answer, "sizes"), index, facts)
        write_csv_sizes(out, facts);
    json_array_foreach(json_object_get(answer, "sizes"), index, facts) {
        write_csv_cuts(out, facts);
        write_csv_extra_cuts(out, facts);
    }
    json_array_foreach(json_object_get(answer, "sizes"), index, facts) {
        write_csv_purchase(out, facts);
        write_csv_rest(out, facts);
    }
    json_array_foreach(json_object_get(answer, "sizes"), index, facts)
        write_csv_misfits(out, facts);
}

void show_pattern(struct sheet *sheet, json_t *answer)
{
    json_t *item;
    size_t index;
    if (json_is_true(json_object_get(answer, "csv"))) {
        show_csv(sheet->out, answer);
        return;
    }
    json_array_foreach(json_object_get(answer, "document"), index, item)
        show_item(sheet, item);
}
