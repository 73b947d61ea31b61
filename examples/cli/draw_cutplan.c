/* draw_cutplan.c - a cutting plan drawn: the cloth with its strips, every piece with its letter.
 *
 * SPDX-License-Identifier: MIT
 *
 * Drawn from the answer, in ticks; only the page is in millimetres. Strips lie one below the other in the order of
 * cutting, as the cutter sees them: the cloth's straightened end is at the top. */
#include <inttypes.h>
#include <muslin/length.h>
#include <stdbool.h>
#include <string.h>

#include "look.h"
#include "sheet.h"

static int64_t number(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    json_t *ticks = json_object_get(value, "ticks");
    return (int64_t)json_integer_value(ticks != NULL ? ticks : value);
}

static const char *text_of(json_t *object, const char *member)
{
    json_t *value = json_object_get(object, member);
    const char *text = json_string_value(json_object_get(value, "text"));
    return text != NULL ? text : json_string_value(value);
}

/* Light colours that stay apart in print as well: letters say the rest. */
static const char *colour_of(char letter)
{
    static const char *const colours[] = { "#cfe0f3", "#f6dfb8", "#d5ead0", "#f3cfd6", "#e0d6ee", "#efe9c9",
                                           "#cfeae8", "#ead9cb" };
    return colours[(unsigned char)letter % (sizeof colours / sizeof colours[0])];
}

/* ---- shapes ----------------------------------------------------------------------------------------------------- */

static void draw_box(FILE *out, int64_t x, int64_t y, int64_t width, int64_t height, const char *colour)
{
    fprintf(out, "<rect x=\"%" PRId64 "\" y=\"%" PRId64 "\" width=\"%" PRId64 "\" height=\"%" PRId64
                 "\" fill=\"%s\"/>\n", x, y, width, height, colour);
}

/* As large as the box lets it be. */
static void draw_words(FILE *out, int64_t x, int64_t y, int64_t width, int64_t height, const char *words)
{
    const int64_t letters = (int64_t)strlen(words);
    int64_t size = height * 6 / 10;
    size = size * letters * 6 / 10 > width * 9 / 10 ? width * 9 / 10 * 10 / (6 * letters) : size;
    size = size > 14000 ? 14000 : size;
    fprintf(out, "<text x=\"%" PRId64 "\" y=\"%" PRId64 "\" font-size=\"%" PRId64 "\">%s</text>\n", x + width / 2,
            y + height / 2 + size / 3, size, words);
}

static bool may_be_drawn(int64_t drawn)
{
    return drawn < 20000; /* more than a page shows */
}

/* The pieces of a strip whose upper left corner lies at x, y. What lies below in a strip is drawn at its top. */
static void draw_places(FILE *out, json_t *strip, int64_t x, int64_t y, int64_t *drawn)
{
    json_t *places = json_object_get(strip, "places");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_array_get(places, i);
        const char *label = text_of(place, "label");
        int64_t width = number(place, "cut_across");
        if (json_is_true(json_object_get(place, "round_the_fold"))) /* half of it is seen */
            width = number(strip, "long") - number(place, "x");
        for (int64_t k = 0; k < number(place, "pieces") && may_be_drawn(*drawn); k++, ++*drawn) {
            const int64_t left = x + number(place, "x") + k * number(place, "pitch");
            const int64_t top = y + number(place, "y");
            draw_box(out, left, top, width, number(place, "cut_along"), colour_of(label[0]));
            draw_words(out, left, top, width, number(place, "cut_along"), label);
        }
    }
}

/* What lies within a panel or a piece of stock. */
static void draw_within(FILE *out, json_t *strips, json_t *holder, int64_t x, int64_t y, int64_t *drawn)
{
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        if (json_object_get(strip, "within_number") == NULL ||
            number(strip, "within_number") != number(holder, "number"))
            continue;
        for (int64_t k = 0; k < number(strip, "times") && may_be_drawn(*drawn); k++, ++*drawn) {
            const int64_t left = x + number(strip, "x");
            const int64_t top = y + number(strip, "y") + k * number(strip, "strip_cut");
            draw_box(out, left, top, number(strip, "long"), number(strip, "strip_cut"), "none");
            draw_places(out, strip, left, top, drawn);
        }
    }
}

/* ---- the page --------------------------------------------------------------------------------------------------- */

/* Pieces of stock lie one below the other with some room between them. */
static int64_t gap_of(json_t *answer)
{
    return says(answer, "from", "stock") ? 2 * MUSLIN_TICKS_PER_INCH : 0;
}

static int64_t height_of(json_t *answer, json_t *strips, int64_t *width)
{
    int64_t height = 0;
    *width = json_is_true(json_object_get(answer, "folded")) ? 0 : number(answer, "usable_width");
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        if (json_object_get(strip, "within_number") != NULL)
            continue;
        height += number(strip, "times") * (number(strip, "strip_cut") + gap_of(answer));
        *width = number(strip, "long") > *width ? number(strip, "long") : *width;
    }
    return height;
}

/* What people wrote, as a line of text. */
static void draw_line(FILE *out, int64_t x, int64_t y, const char *label, const char *words)
{
    fprintf(out, "<text x=\"%" PRId64 "\" y=\"%" PRId64 "\" font-size=\"12000\" text-anchor=\"start\">%s: ", x, y,
            label);
    for (; *words != '\0'; words++) {
        if (*words == '<' || *words == '&')
            fputs(*words == '<' ? "&lt;" : "&amp;", out);
        else
            fputc(*words, out);
    }
    fputs("</text>\n", out);
}

enum { LINE = 2 * MUSLIN_TICKS_PER_INCH };

static void draw_list(FILE *out, json_t *rows, int64_t x, int64_t y)
{
    for (size_t i = 0; i < json_array_size(rows); i++) {
        json_t *row = json_array_get(rows, i);
        draw_line(out, x, y + (int64_t)i * LINE, text_of(row, "label"), text_of(row, "as_written"));
    }
}

static void draw_strips(FILE *out, json_t *answer, json_t *strips, int64_t margin)
{
    int64_t y = margin;
    int64_t drawn = 0;
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        if (json_object_get(strip, "within_number") != NULL)
            continue;
        for (int64_t k = 0; k < number(strip, "times") && may_be_drawn(drawn); k++, drawn++) {
            char words[120];
            draw_box(out, margin, y, number(strip, "long"), number(strip, "strip_cut"), "#ffffff");
            draw_places(out, strip, margin, y, &drawn);
            draw_within(out, strips, strip, margin, y, &drawn);
            snprintf(words, sizeof words, "%" PRId64 ": %.60s", number(strip, "number"), text_of(strip, "strip_cut"));
            draw_words(out, 0, y, margin, number(strip, "strip_cut"), words);
            y += number(strip, "strip_cut") + gap_of(answer);
        }
    }
}

static const char *footer_of(json_t *answer)
{
    if (says(answer, "from", "stock"))
        return "cut sizes; stock in the order of the plan";
    if (json_is_true(json_object_get(answer, "folded")))
        return "cut sizes; two layers, the straightened end at the top, the fold at the right";
    return "cut sizes; the straightened end of the cloth is at the top, selvages at the sides";
}

void draw_cutplan(FILE *out, json_t *answer)
{
    enum { PAGE_MM = 260 };
    json_t *strips = json_object_get(answer, "strips_in_order");
    const int64_t margin = 6 * MUSLIN_TICKS_PER_INCH;
    int64_t width = 0;
    json_t *rows = json_object_get(answer, "list");
    const int64_t below = margin + height_of(answer, strips, &width);
    const int64_t height = below + margin + (int64_t)json_array_size(rows) * LINE;
    width += 2 * margin;
    fprintf(out, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%dmm\" height=\"%" PRId64 "mm\" viewBox=\"0 0 %"
                 PRId64 " %" PRId64 "\" stroke=\"#333333\" stroke-width=\"400\" font-family=\"sans-serif\" "
                 "text-anchor=\"middle\">\n", PAGE_MM, PAGE_MM * height / width + 1, width, height);
    fputs("<style>text { stroke: none; fill: #222222 }</style>\n", out);
    draw_box(out, 0, 0, width, height, "#f7f5f0");
    draw_strips(out, answer, strips, margin);
    draw_list(out, rows, margin, below + margin);
    draw_words(out, 0, below, width, margin / 2, footer_of(answer));
    fputs("</svg>\n", out);
}
