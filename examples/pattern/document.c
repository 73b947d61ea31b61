/* document.c - items of what is printed, gathered one after the other, and the order of its parts.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include <ctype.h>
#include <stdarg.h>
#include <stdlib.h>
#include <string.h>

#include "document.h"

/* ---- lines ------------------------------------------------------------------------------------------------------- */

static void add_list(struct line *line, const char *format, va_list words)
{
    va_list again;
    va_copy(again, words);
    const int length = vsnprintf(NULL, 0, format, again);
    va_end(again);
    const size_t room = line->used + (size_t)length + 1;
    if (room > line->room) {
        line->room = 2 * room;
        line->text = kept(realloc(line->text, line->room));
    }
    vsnprintf(line->text + line->used, (size_t)length + 1, format, words);
    line->used += (size_t)length;
}

void add(struct line *line, const char *format, ...)
{
    va_list words;
    va_start(words, format);
    add_list(line, format, words);
    va_end(words);
}

/* ---- figures that stay together ---------------------------------------------------------------------------------- */

static bool begins_with_word(const char *text, const char *word)
{
    const size_t length = strlen(word);
    return strncmp(text, word, length) == 0 && !isalnum((unsigned char)text[length]);
}

static bool begins_with_fraction(const char *text)
{
    const char *slash = text + strspn(text, "0123456789");
    return slash > text && *slash == '/';
}

/* A size stays together: its number and fraction, its unit, the x between two sizes; and "about" before it. */
static bool ties(const char *text, size_t blank)
{
    static const char *const units[] = { "in", "cm", "mm", "m", "yd", "x" };
    const char *next = text + blank + 1;
    const bool number_before = blank > 0 && isdigit((unsigned char)text[blank - 1]);
    const bool number_next = isdigit((unsigned char)*next);
    if (number_before && begins_with_fraction(next))
        return true;
    for (size_t i = 0; number_before && i < sizeof units / sizeof units[0]; i++)
        if (begins_with_word(next, units[i]))
            return true;
    if (begins_with_word(next, "x") && blank > 0)
        return true;
    return number_next && ((blank >= 2 && strncmp(text + blank - 2, " x", 2) == 0) ||
                           (blank >= 5 && strncmp(text + blank - 5, "about", 5) == 0));
}

/* The text with no-break spaces where a size must not be broken. The caller frees it. */
static char *tied(const char *text)
{
    static const char no_break[] = "\xC2\xA0";
    char *copy = kept(malloc(2 * strlen(text) + 1));
    size_t used = 0;
    for (size_t i = 0; text[i] != '\0'; i++) {
        if (text[i] == ' ' && ties(text, i)) {
            copy[used++] = no_break[0];
            copy[used++] = no_break[1];
        } else {
            copy[used++] = text[i];
        }
    }
    copy[used] = '\0';
    return copy;
}

/* ---- items ------------------------------------------------------------------------------------------------------- */

static struct item *add_item(struct document *document, enum item_kind kind)
{
    if (document->used == document->room) {
        document->room = 2 * document->room + 64;
        document->items = kept(realloc(document->items, document->room * sizeof *document->items));
    }
    struct item *item = &document->items[document->used++];
    *item = (struct item){ .kind = kind };
    return item;
}

void put(struct document *document, enum item_kind kind, int depth, const char *lead, struct line *line)
{
    struct item *item = add_item(document, kind);
    item->depth = depth;
    item->lead = lead == NULL ? NULL : kept(strdup(lead));
    item->text = tied(line->text == NULL ? "" : line->text);
    free(line->text);
    *line = (struct line){ NULL, 0, 0 };
}

void say(struct document *document, enum item_kind kind, int depth, const char *lead, const char *format, ...)
{
    struct line line = { NULL, 0, 0 };
    va_list words;
    va_start(words, format);
    add_list(&line, format, words);
    va_end(words);
    put(document, kind, depth, lead, &line);
}

void put_picture(struct document *document, enum picture_kind kind, const struct worked *worked, int64_t which,
                 const char *caption)
{
    struct item *item = add_item(document, ITEM_PICTURE);
    item->picture = (struct picture){ kind, worked, which };
    item->text = caption == NULL ? NULL : tied(caption);
}

/* ---- tables ------------------------------------------------------------------------------------------------------ */

struct table *put_table(struct document *document, const char *caption, const char *const *heads, size_t columns)
{
    struct item *item = add_item(document, ITEM_TABLE);
    struct table *table = rows_for(1, sizeof *table);
    item->text = caption == NULL ? NULL : tied(caption);
    item->table = table;
    table->columns = columns;
    table->heads = rows_for(columns, sizeof *table->heads);
    table->is_number = rows_for(columns, sizeof *table->is_number);
    for (size_t i = 0; i < columns; i++) {
        table->is_number[i] = heads[i][0] == '#';
        table->heads[i] = tied(heads[i] + table->is_number[i]);
    }
    return table;
}

void add_cell(struct table *table, const char *format, ...)
{
    struct line line = { NULL, 0, 0 };
    va_list words;
    va_start(words, format);
    add_list(&line, format, words);
    va_end(words);
    table->cells = kept(realloc(table->cells, (table->used + 1) * sizeof *table->cells));
    table->cells[table->used++] = tied(line.text);
    table->rows = table->used / table->columns;
    free(line.text);
}

static void table_free(struct table *table)
{
    if (table == NULL)
        return;
    for (size_t i = 0; i < table->columns; i++)
        free(table->heads[i]);
    for (size_t i = 0; i < table->used; i++)
        free(table->cells[i]);
    free(table->heads);
    free(table->is_number);
    free(table->cells);
    free(table);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static void write_size(struct document *document, const struct worked *worked)
{
    const struct pattern *pattern = worked->design->pattern;
    const size_t first = document->used;
    if (pattern->sizes_count > 1)
        say(document, ITEM_SIZE, 0, NULL, "%s: %s", pattern->title, pattern->sizes[worked->design->size].name);
    else
        say(document, ITEM_SIZE, 0, NULL, "%s", pattern->title);
    write_notes(document, worked);
    write_buying(document, worked);
    write_before(document, worked);
    write_cuts(document, worked);
    write_layout(document, worked);
    write_steps(document, worked);
    write_pressing(document, worked);
    write_borders(document, worked);
    write_finishing(document, worked);
    write_cautions(document, worked);
    write_glossary(document, worked, first);
    write_templates(document, worked);
}

struct document *document_create(const struct pattern *pattern, struct worked *const *sizes, size_t count)
{
    struct document *document = rows_for(1, sizeof *document);
    document->pattern = pattern;
    write_cover(document, sizes, count);
    for (size_t i = 0; i < count; i++)
        write_size(document, sizes[i]);
    return document;
}

void document_free(struct document *document)
{
    if (document == NULL)
        return;
    for (size_t i = 0; i < document->used; i++) {
        free(document->items[i].lead);
        free(document->items[i].text);
        table_free(document->items[i].table);
    }
    free(document->items);
    free(document);
}
