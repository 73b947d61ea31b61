/* words.c - lengths and lines as the sheet writes them.
 *
 * SPDX-License-Identifier: MIT */
#include <ctype.h>
#include <stdarg.h>
#include <string.h>

#include "sheet.h"

enum { PAGE_WIDTH = 100, FINEST_MARK = 8 };

/* ---- lengths ---------------------------------------------------------------------------------------------------- */

static int write_inches(muslin_len length, char text[WORD])
{
    struct muslin_format_spec spec = MUSLIN_FORMAT_SPEC_INIT;
    int32_t exact;
    spec.denominator = FINEST_MARK;
    must(muslin_length_format(length, &spec, text, WORD, NULL, &exact, NULL), NULL);
    return exact;
}

int is_on_ruler(muslin_len length)
{
    char text[WORD];
    return write_inches(length, text);
}

const char *inches(muslin_len length, char text[WORD])
{
    char number[WORD];
    int exact = write_inches(length, number);
    snprintf(text, WORD, "%s%.60s", exact ? "" : "about ", number);
    return text;
}

const char *inches_by(muslin_len width, muslin_len height, char text[WORD])
{
    char across[WORD];
    char down[WORD];
    int exact = write_inches(width, across);
    exact &= write_inches(height, down);
    snprintf(text, WORD, "%s%.30s x %.30s", exact ? "" : "about ", across, down);
    return text;
}

/* ---- words ------------------------------------------------------------------------------------------------------ */

const char *plural(int64_t count)
{
    return count == 1 ? "" : "s";
}

const char *comma(size_t i, size_t count)
{
    if (i == 0)
        return "";
    return i + 1 == count ? " and " : ", ";
}

const char *turned(int32_t quarter_turns)
{
    static const char *const words[] = { "", " turned a quarter to the right", " turned upside down",
                                         " turned a quarter to the left" };
    return words[quarter_turns];
}

const char *unit_name(int32_t kind)
{
    static const char *const names[] = { "unit", "rectangle", "half-square triangles", "quarter-square triangles",
                                         "split quarters", "flying geese", "square in a square", "snowballs",
                                         "half-rectangle triangles", "60 degree triangles", "60 degree diamonds",
                                         "45 degree diamonds", "hexagons", "half-hexagons", "trapezoids", "octagons",
                                         "eight-pointed star", "kaleidoscopes", "slices" };
    return names[kind];
}

/* ---- lines ------------------------------------------------------------------------------------------------------ */

void add(struct line *line, const char *format, ...)
{
    va_list words;
    size_t room = sizeof line->text - line->used;
    va_start(words, format);
    int length = vsnprintf(line->text + line->used, room, format, words);
    va_end(words);
    if (length > 0)
        line->used += (size_t)length < room ? (size_t)length : room - 1;
}

static int begins(const char *text, const char *word)
{
    size_t length = strlen(word);
    return strncmp(text, word, length) == 0 && !isalnum((unsigned char)text[length]);
}

/* A size stays on one line: not before its fraction, its unit and its x, nor behind them. */
static int may_break(const char *text, size_t blank)
{
    const char *next = text + blank + 1;
    const char *slash = next + strspn(next, "0123456789");
    int fraction_next = slash > next && *slash == '/';
    int behind_x = blank >= 2 && text[blank - 1] == 'x' && text[blank - 2] == ' ';
    return !fraction_next && !behind_x && !begins(next, "in") && !begins(next, "x");
}

/* How much of the text fits into `room`. */
static size_t fitting(const char *text, size_t room)
{
    size_t most = strlen(text);
    size_t fits = 0;
    for (size_t i = 1; i < most && (i <= room || fits == 0); i++)
        if (text[i] == ' ' && may_break(text, i))
            fits = i;
    return most <= room || fits == 0 ? most : fits;
}

void print_line(struct line *line, int indent, int hang)
{
    const char *text = line->text;
    while (*text != '\0') {
        size_t fits = fitting(text, (size_t)(PAGE_WIDTH - indent));
        printf("%*s%.*s\n", indent, "", (int)fits, text);
        text += fits + (text[fits] == ' ');
        indent += hang;
        hang = 0;
    }
    line->text[0] = '\0';
    line->used = 0;
}
