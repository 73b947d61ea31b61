/* label.c - words in pictures: measured, set upright, with a plate behind them where they stand on cloth.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "ink.h"

/* No letters are drawn as one, so that words can be searched for. */
static void part_letters(PangoLayout *layout)
{
    PangoAttrList *attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes, pango_attr_font_features_new("liga=0, clig=0"));
    pango_layout_set_attributes(layout, attributes);
    pango_attr_list_unref(attributes);
}

/* Sizes are points whatever is drawn on, and letters take the same room on every kind of page. */
static PangoLayout *layout_of(cairo_t *cairo, const char *words, double size)
{
    PangoLayout *layout = pango_cairo_create_layout(cairo);
    PangoContext *context = pango_layout_get_context(layout);
    PangoFontDescription *font = pango_font_description_from_string("sans-serif");
    cairo_font_options_t *options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    pango_cairo_context_set_font_options(context, options);
    pango_cairo_context_set_resolution(context, 72);
    pango_font_description_set_absolute_size(font, size * PANGO_SCALE);
    pango_layout_set_font_description(layout, font);
    pango_layout_set_text(layout, words, -1);
    part_letters(layout);
    cairo_font_options_destroy(options);
    pango_font_description_free(font);
    return layout;
}

static struct room room_of(PangoLayout *layout)
{
    PangoRectangle logical;
    pango_layout_get_extents(layout, NULL, &logical);
    return (struct room){ (double)logical.width / PANGO_SCALE, (double)logical.height / PANGO_SCALE };
}

static struct room measured_room(cairo_t *cairo, const char *words, double size)
{
    PangoLayout *layout = layout_of(cairo, words, size);
    struct room room = room_of(layout);
    g_object_unref(layout);
    return room;
}

/* "[4]" stands on many pieces, and each is asked for its room before it is written: what was found last is kept, short
 * words by a number made of their bytes. */
struct room words_room(cairo_t *cairo, const char *words, double size)
{
    enum { KEPT = 256, WORDS_ROOM = 40 };
    static _Thread_local struct {
        char words[WORDS_ROOM];
        double size;
        struct room room;
    } kept_rooms[KEPT];
    unsigned number = (unsigned)(size * 2);
    const size_t length = strlen(words);
    if (length >= WORDS_ROOM)
        return measured_room(cairo, words, size);
    for (size_t i = 0; i < length; i++)
        number = 31 * number + (unsigned char)words[i];
    number %= KEPT;
    if (kept_rooms[number].size != size || strcmp(kept_rooms[number].words, words) != 0) {
        memcpy(kept_rooms[number].words, words, length + 1);
        kept_rooms[number].size = size;
        kept_rooms[number].room = measured_room(cairo, words, size);
    }
    return kept_rooms[number].room;
}

struct room plate_room(cairo_t *cairo, const char *words, double size, enum plate plate)
{
    struct room room = words_room(cairo, words, size);
    if (plate == PLATE_BOX)
        return (struct room){ room.width + size / 2, room.height };
    const double across = fmax(room.width, room.height) + size / 5;
    return plate == PLATE_RING ? (struct room){ across, across } : room;
}

static void draw_plate(cairo_t *cairo, double x, double y, struct room room, enum plate plate)
{
    cairo_new_path(cairo);
    if (plate == PLATE_RING)
        cairo_arc(cairo, x, y, room.width / 2, 0, 2 * acos(-1));
    else
        cairo_rectangle(cairo, x - room.width / 2, y - room.height / 2, room.width, room.height);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_set_line_width(cairo, plate == PLATE_RING ? 0.7 : 0.3);
    cairo_stroke(cairo);
}

void write_words(cairo_t *cairo, double x, double y, const char *words, double size, enum plate plate)
{
    PangoLayout *layout = layout_of(cairo, words, size);
    struct room room = room_of(layout);
    cairo_save(cairo);
    pango_layout_set_width(layout, (int)ceil(room.width * PANGO_SCALE) + 2);
    pango_layout_set_alignment(layout, PANGO_ALIGN_CENTER);
    if (plate != PLATE_NONE)
        draw_plate(cairo, x, y, plate_room(cairo, words, size, plate), plate);
    set_black(cairo);
    cairo_move_to(cairo, x - room.width / 2, y - room.height / 2);
    pango_cairo_show_layout(cairo, layout);
    cairo_new_path(cairo);
    cairo_restore(cairo);
    g_object_unref(layout);
}

void write_from(cairo_t *cairo, double x, double y, const char *words, double size)
{
    struct room room = words_room(cairo, words, size);
    write_words(cairo, x + room.width / 2, y, words, size, PLATE_NONE);
}

void write_up_to(cairo_t *cairo, double x, double y, const char *words, double size)
{
    struct room room = words_room(cairo, words, size);
    write_words(cairo, x - room.width / 2, y, words, size, PLATE_NONE);
}

double write_wrapped(cairo_t *cairo, double x, double y, double width, const char *words, double size)
{
    PangoLayout *layout = layout_of(cairo, words, size);
    pango_layout_set_width(layout, (int)(width * PANGO_SCALE));
    struct room room = room_of(layout);
    set_black(cairo);
    cairo_move_to(cairo, x, y);
    pango_cairo_show_layout(cairo, layout);
    cairo_new_path(cairo);
    g_object_unref(layout);
    return room.height;
}
