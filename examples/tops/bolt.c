/* bolt.c - the cloth of a top as SVG: the bolt of each fabric with its strips and the numbers of its pieces.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "sheet.h"
#include "svg.h"

enum { WIDTH = 820, MARGIN = 28, LEFT = 92, RIGHT = 32, LINE = 18, ROOM = 58 };

/* Ticks become units of the drawing. */
static double scaled(const struct sheet *sheet, size_t fabric, muslin_len length)
{
    return (double)length * (WIDTH - LEFT - RIGHT) / (double)sheet->bill[fabric].usable_width;
}

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

/* As large as there is room for, in the middle. */
static void write_in(cairo_t *cairo, double x, double y, double width, double height, const char *words)
{
    cairo_text_extents_t extents;
    cairo_set_font_size(cairo, 14);
    cairo_text_extents(cairo, words, &extents);
    double share = 1;
    share = extents.width > 0.9 * width ? 0.9 * width / extents.width : share;
    share = 14 * share > 0.8 * height ? 0.8 * height / 14 : share;
    cairo_set_font_size(cairo, 14 * share);
    cairo_text_extents(cairo, words, &extents);
    cairo_move_to(cairo, x + (width - extents.width) / 2 - extents.x_bearing, y + (height + extents.height) / 2);
    cairo_show_text(cairo, words);
}

static void set_shade(cairo_t *cairo, const struct cloth *cloth, double share)
{
    const double red = cloth->colour[0] / 255.0;
    const double green = cloth->colour[1] / 255.0;
    const double blue = cloth->colour[2] / 255.0;
    cairo_set_source_rgb(cairo, 1 - share * (1 - red), 1 - share * (1 - green), 1 - share * (1 - blue));
}

static void set_ink(cairo_t *cairo, const struct cloth *cloth)
{
    const double ink = cloth->colour[0] + 2 * cloth->colour[1] + cloth->colour[2] < 4 * 110 ? 1 : 0.1;
    cairo_set_source_rgb(cairo, ink, ink, ink);
}

/* Diamonds lie slanted, one against the other; other slanted pieces are drawn as the stretch of the strip they take. */
static int is_diamond(const struct sheet *sheet, const struct bolt *bolt, size_t place)
{
    const int64_t label = bolt->pieces[bolt->places[place].piece].label;
    return (size_t)label < sheet->cuts_count && sheet->cuts[label].shape == MUSLIN_CUT_DIAMONDS;
}

static void trace_piece(cairo_t *cairo, double x, double y, double width, double height, double slant)
{
    cairo_move_to(cairo, x + slant, y);
    cairo_line_to(cairo, x + slant + width, y);
    cairo_line_to(cairo, x + width, y + height);
    cairo_line_to(cairo, x, y + height);
    cairo_close_path(cairo);
}

static void draw_place(cairo_t *cairo, const struct sheet *sheet, size_t fabric, const struct bolt *bolt, size_t place,
                       double top)
{
    const struct cloth *cloth = cloth_of(sheet->design, sheet->bill[fabric].fabric);
    const struct muslin_plan_place *row = &bolt->places[place];
    char text[WORD];
    for (int64_t i = 0; i < row->count; i++) {
        const double x = LEFT + scaled(sheet, fabric, row->x) + (double)i * scaled(sheet, fabric, row->pitch);
        const double y = top + scaled(sheet, fabric, row->y);
        const double height = scaled(sheet, fabric, row->height);
        const double width = scaled(sheet, fabric, row->width < row->pitch ? row->width : row->pitch);
        const double slant = is_diamond(sheet, bolt, place) ? scaled(sheet, fabric, row->width - row->pitch) : 0;
        trace_piece(cairo, x, y, width, height, slant);
        set_shade(cairo, cloth, 1);
        cairo_fill_preserve(cairo);
        set_ink(cairo, cloth);
        cairo_stroke(cairo);
        write_in(cairo, x + slant / 2, y, width, height, place_name(sheet, bolt, place, text));
    }
}

static void draw_cloth_of(cairo_t *cairo, double y, double width, double height)
{
    cairo_rectangle(cairo, LEFT, y, width, height);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgb(cairo, 0.4, 0.4, 0.4);
    cairo_stroke(cairo);
}

/* How wide a strip is cut, to the left of it. */
static void draw_width(cairo_t *cairo, double y, double height, muslin_len width)
{
    char text[WORD];
    cairo_set_source_rgb(cairo, 0.1, 0.1, 0.1);
    write_in(cairo, MARGIN / 2.0, y, LEFT - MARGIN, height, inches(width, text));
}

/* Returns where the cloth ends. */
static double draw_strips(cairo_t *cairo, const struct sheet *sheet, size_t fabric, double y)
{
    const struct cloth *cloth = cloth_of(sheet->design, sheet->bill[fabric].fabric);
    struct bolt bolt = read_bolt(sheet, fabric);
    for (size_t i = 0; i < bolt.strips_count; i++)
        for (int64_t k = 0; k < bolt.strips[i].times; k++) {
            const struct muslin_plan_strip *strip = &bolt.strips[i];
            const double height = scaled(sheet, fabric, strip->height);
            draw_width(cairo, y, height, strip->height);
            set_shade(cairo, cloth, 0.3);
            draw_cloth_of(cairo, y, scaled(sheet, fabric, strip->width), height);
            for (int64_t place = 0; place < strip->places; place++)
                draw_place(cairo, sheet, fabric, &bolt, (size_t)(strip->first_place + place), y);
            y += height;
        }
    free_bolt(&bolt);
    return y;
}

/* The end that is straightened, half an inch of grey, and the selvages beside all of it. */
static double draw_bolt(cairo_t *cairo, const struct sheet *sheet, size_t fabric, double y)
{
    static const double dashes[] = { 6, 4 };
    const double width = scaled(sheet, fabric, sheet->bill[fabric].usable_width);
    const double end = scaled(sheet, fabric, STRAIGHTENING);
    cairo_set_source_rgb(cairo, 0.75, 0.75, 0.75);
    draw_cloth_of(cairo, y, width, end);
    draw_width(cairo, y, end, STRAIGHTENING);
    const double bottom = draw_strips(cairo, sheet, fabric, y + end);
    cairo_save(cairo);
    cairo_set_dash(cairo, dashes, 2, 0);
    cairo_set_line_width(cairo, 1.5);
    cairo_set_source_rgb(cairo, 0.1, 0.1, 0.1);
    for (int side = 0; side < 2; side++) {
        cairo_move_to(cairo, LEFT + side * width, y - LINE / 2.0);
        cairo_line_to(cairo, LEFT + side * width, bottom + LINE / 2.0);
    }
    cairo_stroke(cairo);
    cairo_restore(cairo);
    return bottom;
}

/* ---- the page ---------------------------------------------------------------------------------------------------- */

static void write_at(cairo_t *cairo, double y, const char *words)
{
    cairo_set_source_rgb(cairo, 0.1, 0.1, 0.1);
    cairo_set_font_size(cairo, 14);
    cairo_move_to(cairo, MARGIN, y);
    cairo_show_text(cairo, words);
}

/* Along the cloth, with the selvages. */
static void draw_grain(cairo_t *cairo, double x, double y)
{
    cairo_set_source_rgb(cairo, 0.1, 0.1, 0.1);
    cairo_move_to(cairo, x, y + 24);
    cairo_line_to(cairo, x, y);
    cairo_move_to(cairo, x - 5, y + 7);
    cairo_line_to(cairo, x, y);
    cairo_line_to(cairo, x + 5, y + 7);
    cairo_set_line_width(cairo, 1.2);
    cairo_stroke(cairo);
    cairo_set_line_width(cairo, 0.7);
}

static void draw_page(cairo_t *cairo, const struct sheet *sheet, const char *title)
{
    double y = MARGIN;
    char words[3 * WORD];
    char text[WORD];
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_paint(cairo);
    cairo_set_line_width(cairo, 0.7);
    cairo_select_font_face(cairo, "sans-serif", CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
    snprintf(words, sizeof words, "%s: the cloth, strip by strip, cut sizes", title);
    write_at(cairo, y, words);
    y += LINE + 4;
    write_at(cairo, y, "dashed: selvages, trimmed off; pale: left over; grey: straightened off; arrow: lengthwise "
                       "grain");
    draw_grain(cairo, WIDTH - RIGHT / 2.0, y - LINE);
    for (size_t i = 0; i < sheet->bill_count; i++) {
        y += ROOM;
        snprintf(words, sizeof words, "%s: %s needed", fabric_name(sheet, sheet->bill[i].fabric),
                 inches(sheet->bill[i].cloth_length, text));
        write_at(cairo, y, words);
        y = draw_bolt(cairo, sheet, i, y + LINE);
    }
}

static double height_of(const struct sheet *sheet)
{
    double height = 2 * MARGIN + LINE + 4;
    for (size_t i = 0; i < sheet->bill_count; i++)
        height += ROOM + LINE + scaled(sheet, i, sheet->bill[i].cloth_length);
    return height;
}

int draw_cloth(const struct sheet *sheet, const char *title, FILE *file)
{
    cairo_t *cairo = start_svg(file, WIDTH, height_of(sheet));
    draw_page(cairo, sheet, title);
    return end_svg(cairo);
}
