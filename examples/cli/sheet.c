/* sheet.c - templates filled and text wrapped.
 *
 * SPDX-License-Identifier: MIT */
#define _POSIX_C_SOURCE 200809L
#include "sheet.h"

#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

#include "memory.h"

#define PAGE_WIDTH 79
/* Stands for a space inside a figure, where a line must not break. */
#define TIED '\x01'

/* ---- figures ---------------------------------------------------------------------------------------------------- */

static void write_tied(FILE *out, const char *text)
{
    for (; *text != '\0'; text++)
        fputc(*text == ' ' ? TIED : *text, out);
}

/* The end of the run of consecutive numbers that begins at `from`. */
static size_t run_end(json_t *numbers, size_t from)
{
    size_t end = from + 1;
    while (end < json_array_size(numbers) && json_integer_value(json_array_get(numbers, end)) ==
                                                 json_integer_value(json_array_get(numbers, end - 1)) + 1)
        end++;
    return end;
}

/* Numbers as people list them: "1 to 4, 7 and 9". */
static void write_numbers(FILE *out, json_t *numbers)
{
    size_t count = json_array_size(numbers);
    for (size_t i = 0, end = 0; i < count; i = end) {
        end = run_end(numbers, i);
        if (end == i + 2)
            end = i + 1; /* two in a row are listed singly */
        if (i > 0)
            fputs(end == count ? " and " : ", ", out);
        fprintf(out, "%" JSON_INTEGER_FORMAT, json_integer_value(json_array_get(numbers, i)));
        if (end > i + 1)
            fprintf(out, "%cto%c%" JSON_INTEGER_FORMAT, TIED, TIED,
                    json_integer_value(json_array_get(numbers, end - 1)));
    }
}

static void write_value(FILE *out, json_t *value)
{
    if (json_is_integer(value))
        fprintf(out, "%" JSON_INTEGER_FORMAT, json_integer_value(value));
    else if (json_is_boolean(value))
        fputs(json_is_true(value) ? "yes" : "no", out);
    else if (json_is_string(value))
        fputs(json_string_value(value), out);
    else if (json_is_array(value))
        write_numbers(out, value);
    else if (json_is_object(value)) {
        if (json_is_false(json_object_get(value, "exact")))
            fprintf(out, "about%c", TIED);
        write_tied(out, json_string_value(json_object_get(value, "text")));
    }
}

static char *untied(char *text)
{
    for (char *c = text; *c != '\0'; c++)
        *c = *c == TIED ? ' ' : *c;
    return text;
}

char *sheet_text_of(json_t *value)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_text(&text, &length);
    write_value(out, value);
    fclose(out);
    return untied(text);
}

/* "sets.count" from the answer; null when it is not there. */
static json_t *member_at(json_t *answer, const char *path, size_t length)
{
    char name[80];
    snprintf(name, sizeof name, "%.*s", (int)length, path);
    char *rest = NULL;
    for (char *part = strtok_r(name, ".", &rest); part != NULL; part = strtok_r(NULL, ".", &rest))
        answer = json_object_get(answer, part);
    return answer;
}

/* "1 set", "3 sets"; of a list "set 4", "sets 1 to 3". */
static void write_with_noun(FILE *out, json_t *value, const char *noun, int length)
{
    bool list = json_is_array(value);
    bool one = list ? json_array_size(value) == 1 : json_integer_value(value) == 1;
    const char *plural = one ? "" : "s";
    if (list) {
        fprintf(out, "%.*s%s%c", length, noun, plural, TIED);
        write_value(out, value);
    } else {
        write_value(out, value);
        fprintf(out, "%c%.*s%s", TIED, length, noun, plural);
    }
}

/* One {placeholder}, without its braces. One that is not in the answer is left as it is, for a test to find. */
static void write_placeholder(FILE *out, json_t *answer, const char *placeholder, size_t length)
{
    const char *colon = memchr(placeholder, ':', length);
    size_t path = colon != NULL ? (size_t)(colon - placeholder) : length;
    json_t *value = member_at(answer, placeholder, path);
    if (value == NULL)
        fprintf(out, "{%.*s}", (int)length, placeholder);
    else if (colon == NULL)
        write_value(out, value);
    else
        write_with_noun(out, value, colon + 1, (int)(length - path) - 1);
}

static char *fill(json_t *answer, const char *template)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_text(&text, &length);
    while (*template != '\0') {
        const char *close = *template == '{' ? strchr(template, '}') : NULL;
        if (close == NULL) {
            fputc(*template++, out);
            continue;
        }
        write_placeholder(out, answer, template + 1, (size_t)(close - template - 1));
        template = close + 1;
    }
    fclose(out);
    return text;
}

char *sheet_sentence(json_t *answer, const char *template)
{
    return untied(fill(answer, template));
}

/* ---- wrapping --------------------------------------------------------------------------------------------------- */

static size_t columns_of(const char *text, size_t bytes)
{
    size_t columns = 0;
    for (size_t i = 0; i < bytes; i++)
        columns += ((unsigned char)text[i] & 0xC0) != 0x80;
    return columns;
}

static void write_word(FILE *out, const char *word, size_t bytes)
{
    for (size_t i = 0; i < bytes; i++)
        fputc(word[i] == TIED ? ' ' : word[i], out);
}

/* `first` begins the first line, `indent` blanks the others. */
static void write_wrapped(FILE *out, const char *text, const char *first, size_t indent)
{
    fputs(first, out);
    size_t column = strlen(first);
    bool fresh = true;
    while (*text != '\0') {
        text += strspn(text, " ");
        size_t bytes = strcspn(text, " ");
        size_t columns = columns_of(text, bytes);
        if (bytes == 0)
            break;
        if (!fresh && column + 1 + columns > PAGE_WIDTH) {
            fprintf(out, "\n%*s", (int)indent, "");
            column = indent;
        } else if (!fresh) {
            fputc(' ', out);
            column++;
        }
        write_word(out, text, bytes);
        column += columns;
        text += bytes;
        fresh = false;
    }
    fputc('\n', out);
}

static void say(struct sheet *sheet, json_t *answer, const char *template, const char *first, size_t indent)
{
    char *text = fill(answer, template);
    write_wrapped(sheet->out, text, first, indent);
    free(text);
}

/* ---- the sheet -------------------------------------------------------------------------------------------------- */

void sheet_title(struct sheet *sheet, json_t *answer, const char *template)
{
    say(sheet, answer, template, "", 0);
    sheet_gap(sheet);
}

void sheet_heading(struct sheet *sheet, const char *words)
{
    fprintf(sheet->out, "\n%s\n", words);
}

void sheet_step(struct sheet *sheet, const char *words)
{
    sheet->steps++;
    fprintf(sheet->out, "\n%d. %s\n", sheet->steps, words);
}

void sheet_say(struct sheet *sheet, json_t *answer, const char *template)
{
    say(sheet, answer, template, "", 0);
}

void sheet_point(struct sheet *sheet, json_t *answer, const char *template)
{
    say(sheet, answer, template, "  - ", 4);
}

void sheet_under(struct sheet *sheet, json_t *answer, const char *template)
{
    say(sheet, answer, template, "      ", 8);
}

void sheet_hanging(struct sheet *sheet, const char *first, size_t indent, const char *text)
{
    char *copy = need_memory(strlen(text) + 1);
    size_t used = 0;
    for (size_t i = 0; text[i] != '\0'; i++) {
        const bool no_break = strncmp(text + i, "\xC2\xA0", 2) == 0;
        copy[used++] = no_break ? TIED : text[i];
        i += no_break;
    }
    write_wrapped(sheet->out, copy, first, indent);
    free(copy);
}

size_t sheet_columns(const char *text)
{
    return columns_of(text, strlen(text));
}

void sheet_line(struct sheet *sheet, const char *text)
{
    fprintf(sheet->out, "%s\n", text);
}

void sheet_gap(struct sheet *sheet)
{
    fputc('\n', sheet->out);
}
