/* draw_cutplan.c - a cutting plan drawn: the cloth with its strips, every piece with its letter.
 *
 * SPDX-License-Identifier: MIT
 *
 * Drawn from the answer, in ticks; only the page is in millimetres. All lies as in the cloth, across it from left to
 * right, along it downwards: strips of a bolt one below the other in the order of cutting, from the straightened end;
 * pieces of stock one below the other, with strips that stand upright where first cuts run along the cloth. White is
 * left over, grey is squared off. */
#include <inttypes.h>
#include <muslin/length.h>
#include <stdbool.h>
#include <stdlib.h>
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

/* A piece of cloth on the page: its upper left corner, and whether its strips stand upright. */
struct cloth {
    FILE *out;
    int64_t x;
    int64_t y;
    bool upright;
    int64_t *drawn;
};

struct box {
    int64_t x;
    int64_t y;
    int64_t width;
    int64_t height;
};

static void draw_box(FILE *out, struct box box, const char *colour)
{
    fprintf(out, "<rect x=\"%" PRId64 "\" y=\"%" PRId64 "\" width=\"%" PRId64 "\" height=\"%" PRId64
                 "\" fill=\"%s\"/>\n", box.x, box.y, box.width, box.height, colour);
}

/* A box of the cloth, along its strips and down them, as it lies on the page. */
static struct box on_page(const struct cloth *cloth, int64_t x, int64_t y, int64_t width, int64_t height)
{
    if (cloth->upright)
        return (struct box){ cloth->x + y, cloth->y + x, height, width };
    return (struct box){ cloth->x + x, cloth->y + y, width, height };
}

/* Markup's own letters are written out. */
static void write_escaped(FILE *out, const char *words)
{
    for (; *words != '\0'; words++) {
        if (*words == '<' || *words == '&')
            fputs(*words == '<' ? "&lt;" : "&amp;", out);
        else
            fputc(*words, out);
    }
}

/* As large as the box lets it be. */
static void draw_words(FILE *out, struct box box, const char *words)
{
    const int64_t letters = (int64_t)strlen(words);
    int64_t size = box.height * 6 / 10;
    size = size * letters * 6 / 10 > box.width * 9 / 10 ? box.width * 9 / 10 * 10 / (6 * letters) : size;
    size = size > 14000 ? 14000 : size;
    fprintf(out, "<text x=\"%" PRId64 "\" y=\"%" PRId64 "\" font-size=\"%" PRId64 "\">", box.x + box.width / 2,
            box.y + box.height / 2 + size / 3, size);
    write_escaped(out, words);
    fputs("</text>\n", out);
}

/* From the left edge of the box on. */
static void draw_line(FILE *out, struct box box, const char *words)
{
    const int64_t letters = (int64_t)strlen(words);
    const int64_t fitting = box.width * 10 / (6 * (letters > 0 ? letters : 1));
    fprintf(out, "<text x=\"%" PRId64 "\" y=\"%" PRId64 "\" font-size=\"%" PRId64 "\" text-anchor=\"start\">", box.x,
            box.y, fitting < 12000 ? fitting : 12000);
    write_escaped(out, words);
    fputs("</text>\n", out);
}

/* Words that run along the cloth. */
static void draw_upright(FILE *out, int64_t x, int64_t y, const char *words)
{
    fprintf(out, "<text transform=\"translate(%" PRId64 " %" PRId64 ") rotate(-90)\" font-size=\"8000\">%s</text>\n", x,
            y, words);
}

static bool may_be_drawn(const struct cloth *cloth)
{
    return *cloth->drawn < 20000; /* more than a page shows */
}

/* ---- strips ----------------------------------------------------------------------------------------------------- */

/* Words along the selvages stand between the cloth and the numbers. */
enum { INCH = MUSLIN_TICKS_PER_INCH, MARGIN = 6 * INCH, BESIDE = INCH * 3 / 2, LINE = 2 * INCH };

/* The pieces of a strip whose corner lies at x, y of its cloth. */
static void draw_places(const struct cloth *cloth, json_t *strip, int64_t x, int64_t y)
{
    json_t *places = json_object_get(strip, "places");
    for (size_t i = 0; i < json_array_size(places); i++) {
        json_t *place = json_array_get(places, i);
        const char *label = text_of(place, "label");
        int64_t width = number(place, "cut_across");
        if (json_is_true(json_object_get(place, "round_the_fold"))) /* half of it is seen */
            width = number(strip, "long") - number(place, "x");
        for (int64_t k = 0; k < number(place, "pieces") && may_be_drawn(cloth); k++, ++*cloth->drawn) {
            const struct box box = on_page(cloth, x + number(place, "x") + k * number(place, "pitch"),
                                           y + number(place, "y"), width, number(place, "cut_along"));
            draw_box(cloth->out, box, colour_of(label[0]));
            draw_words(cloth->out, box, label);
        }
    }
}

/* The strip's own cloth, grey where its ends are squared. */
static void draw_strip(const struct cloth *cloth, json_t *answer, json_t *strip, int64_t x, int64_t y)
{
    const int64_t width = number(strip, "long");
    const int64_t height = number(strip, "strip_cut");
    const bool beside_slit = says(strip, "kind", "within") && number(strip, "x") > 0;
    const int64_t left = beside_slit ? 0 : number(answer, "left_end");
    const int64_t right = number(answer, "right_end");
    draw_box(cloth->out, on_page(cloth, x, y, width, height), "#ffffff");
    if (left > 0)
        draw_box(cloth->out, on_page(cloth, x, y, left, height), "#c9c9c9");
    if (right > 0)
        draw_box(cloth->out, on_page(cloth, x + width - right, y, right, height), "#c9c9c9");
    draw_places(cloth, strip, x, y);
}

/* The number of a strip and how wide it is cut, at the end of a strip that lies across, below one that stands. */
static void draw_number(const struct cloth *cloth, json_t *strip, struct box end)
{
    char words[120];
    snprintf(words, sizeof words, "%" PRId64 ": %.60s", number(strip, "number"), text_of(strip, "strip_cut"));
    if (cloth->upright)
        draw_words(cloth->out, (struct box){ end.x, end.y, end.width, LINE }, words);
    else
        draw_words(cloth->out, (struct box){ end.x + BESIDE, end.y, MARGIN - BESIDE, end.height }, words);
}

/* Under the panel's own number, to the left of it. */
static void draw_slit_number(const struct cloth *cloth, json_t *strip)
{
    char words[40];
    snprintf(words, sizeof words, "%" PRId64 ": slit", number(strip, "number"));
    const int64_t middle = cloth->y + number(strip, "strip_cut") / 2;
    draw_words(cloth->out, (struct box){ 0, middle + LINE / 2, MARGIN - BESIDE, LINE }, words);
}

/* What lies within a panel or a piece of stock; slit pieces have the panel's own cloth. */
static void draw_within(const struct cloth *cloth, json_t *answer, json_t *holder)
{
    json_t *strips = json_object_get(answer, "strips_in_order");
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        const int64_t x = number(strip, "x");
        const int64_t height = number(strip, "strip_cut");
        if (json_object_get(strip, "within_number") == NULL ||
            number(strip, "within_number") != number(holder, "number"))
            continue;
        for (int64_t k = 0; k < number(strip, "times") && may_be_drawn(cloth); k++, ++*cloth->drawn) {
            const int64_t y = number(strip, "y") + k * height;
            if (says(strip, "kind", "slit")) {
                draw_places(cloth, strip, x, y);
                draw_slit_number(cloth, strip);
                continue;
            }
            draw_strip(cloth, answer, strip, x, y);
            draw_number(cloth, strip, on_page(cloth, x + number(strip, "long"), y, 0, height));
        }
    }
}

/* ---- the page --------------------------------------------------------------------------------------------------- */

static bool is_stock(json_t *answer)
{
    return says(answer, "from", "stock");
}

/* Pieces of stock lie one below the other with room between them for words. */
static int64_t gap_of(json_t *answer)
{
    return is_stock(answer) ? 2 * LINE : 0;
}

/* How large a strip, a panel or a piece of stock is as it lies, before its end is straightened. */
static struct box size_of(json_t *answer, json_t *strip)
{
    if (!is_stock(answer))
        return (struct box){ 0, 0, number(strip, "long"), number(strip, "strip_cut") };
    return (struct box){ 0, 0, number(strip, "stock_across"), number(strip, "stock_along") };
}

static struct box size_of_all(json_t *answer, json_t *strips)
{
    struct box all = { 0, 0, json_is_true(json_object_get(answer, "folded")) ? 0 : number(answer, "usable_width"), 0 };
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        if (json_object_get(strip, "within_number") != NULL)
            continue;
        const struct box size = size_of(answer, strip);
        all.height += number(strip, "times") * (size.height + gap_of(answer));
        all.width = size.width > all.width ? size.width : all.width;
    }
    all.height += is_stock(answer) ? 0 : number(answer, "straightening");
    return all;
}

static void draw_list(FILE *out, json_t *rows, int64_t x, int64_t y, int64_t width)
{
    for (size_t i = 0; i < json_array_size(rows); i++) {
        char *words = cutplan_piece_in_words(json_array_get(rows, i));
        draw_line(out, (struct box){ x, y + (int64_t)i * LINE, width, LINE }, words);
        free(words);
    }
}

static void draw_panel(const struct cloth *cloth, json_t *answer, struct box whole)
{
    draw_box(cloth->out, whole, "#ffffff");
    if (number(answer, "left_end") > 0)
        draw_box(cloth->out, (struct box){ whole.x, whole.y, number(answer, "left_end"), whole.height }, "#c9c9c9");
}

/* A strip of the bolt, a panel or a piece of stock, and what it holds. */
static void draw_one(struct cloth *cloth, json_t *answer, json_t *strip)
{
    char words[160];
    const struct box size = size_of(answer, strip);
    const struct box whole = { cloth->x, cloth->y, size.width, size.height };
    if (is_stock(answer)) {
        snprintf(words, sizeof words, "%" PRId64 ": %.60s x %.60s", number(strip, "number"),
                 text_of(strip, "stock_across"), text_of(strip, "stock_along"));
        draw_words(cloth->out, (struct box){ cloth->x, cloth->y - LINE, size.width, LINE }, words);
        draw_box(cloth->out, whole, "#ffffff");
        draw_box(cloth->out, (struct box){ whole.x, whole.y, whole.width, number(answer, "straightening") }, "#c9c9c9");
        cloth->y += number(answer, "straightening");
    } else {
        snprintf(words, sizeof words, "%" PRId64 ": %.60s", number(strip, "number"), text_of(strip, "strip_cut"));
        draw_words(cloth->out, (struct box){ 0, cloth->y, MARGIN - BESIDE, size.height }, words);
        if (says(strip, "kind", "panel"))
            draw_panel(cloth, answer, whole);
        else
            draw_strip(cloth, answer, strip, 0, 0);
    }
    cloth->upright = json_is_true(json_object_get(strip, "cut_along_the_length"));
    draw_within(cloth, answer, strip);
    cloth->y = whole.y + size.height + gap_of(answer);
    cloth->upright = false;
}

static void draw_strips(FILE *out, json_t *answer, json_t *strips)
{
    int64_t drawn = 0;
    struct cloth cloth = { out, MARGIN, MARGIN, false, &drawn };
    if (!is_stock(answer) && number(answer, "straightening") > 0) {
        struct box end = size_of_all(answer, strips);
        end = (struct box){ MARGIN, MARGIN, end.width, number(answer, "straightening") };
        draw_box(out, end, "#c9c9c9");
        cloth.y += end.height;
    }
    for (size_t i = 0; i < json_array_size(strips); i++) {
        json_t *strip = json_array_get(strips, i);
        if (json_object_get(strip, "within_number") != NULL)
            continue;
        for (int64_t k = 0; k < number(strip, "times") && may_be_drawn(&cloth); k++, drawn++)
            draw_one(&cloth, answer, strip);
    }
}

/* Selvages, or selvages and fold, at the sides of a bolt; which way the grain runs. */
static void draw_edges(FILE *out, json_t *answer, struct box all)
{
    const bool folded = json_is_true(json_object_get(answer, "folded"));
    const int64_t middle = MARGIN + all.height / 2;
    const int64_t right = MARGIN + all.width;
    if (!is_stock(answer)) {
        draw_upright(out, MARGIN - INCH / 3, middle, folded ? "both selvages" : "selvage");
        draw_upright(out, right + INCH, middle, folded ? "fold" : "selvage");
        fprintf(out, "<path d=\"M%d %d V%" PRId64 " M%" PRId64 " %d V%" PRId64 "\" stroke-width=\"900\" "
                     "stroke-dasharray=\"3000 2000\"/>\n", MARGIN, MARGIN - INCH, MARGIN + all.height + INCH, right,
                MARGIN - INCH, MARGIN + all.height + INCH);
    }
    fprintf(out, "<path d=\"M%d %d v%d m%d %d l%d %d l%d %d\" fill=\"none\" stroke-width=\"900\"/>\n", MARGIN / 3,
            5 * INCH, -4 * INCH, -INCH / 2, INCH, INCH / 2, -INCH, INCH / 2, INCH);
    fprintf(out, "<text x=\"%d\" y=\"%d\" font-size=\"8000\" text-anchor=\"start\">lengthwise grain</text>\n",
            MARGIN / 3 + INCH, 3 * INCH);
}

static void draw_footer(FILE *out, json_t *answer, struct box box)
{
    const bool losses = number(answer, "end_loss") > 0 || number(answer, "straightening") > 0;
    const bool folded = json_is_true(json_object_get(answer, "folded"));
    char words[200];
    snprintf(words, sizeof words, "cut sizes; white is left over%s; %s", losses ? ", grey is squared off" : "",
             is_stock(answer) ? "across the cloth from left to right"
             : folded ? "two layers, the straightened end at the top, the fold at the right"
                      : "the straightened end at the top, selvages trimmed off");
    draw_words(out, box, words);
}

void draw_cutplan(FILE *out, json_t *answer)
{
    enum { PAGE_MM = 260 };
    json_t *strips = json_object_get(answer, "strips_in_order");
    json_t *rows = json_object_get(answer, "list");
    const struct box all = size_of_all(answer, strips);
    const int64_t below = MARGIN + all.height;
    const struct box page = { 0, 0, all.width + 2 * MARGIN,
                              below + MARGIN + (int64_t)json_array_size(rows) * LINE };
    fprintf(out, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%dmm\" height=\"%" PRId64 "mm\" viewBox=\"0 0 %"
                 PRId64 " %" PRId64 "\" stroke=\"#333333\" stroke-width=\"400\" font-family=\"sans-serif\" "
                 "text-anchor=\"middle\">\n", PAGE_MM, PAGE_MM * page.height / page.width + 1, page.width, page.height);
    fputs("<style>text { stroke: none; fill: #222222 }</style>\n", out);
    draw_box(out, page, "#f7f5f0");
    draw_strips(out, answer, strips);
    draw_edges(out, answer, all);
    draw_list(out, rows, MARGIN, below + MARGIN, page.width - MARGIN - INCH);
    draw_footer(out, answer, (struct box){ 0, below + INCH, page.width, MARGIN / 2 });
    fputs("</svg>\n", out);
}
