/* label.c - words in pictures: measured, set upright, with a plate behind them where they stand on cloth.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <string.h>

#include "ink.h"

/* ---- set --------------------------------------------------------------------------------------------------------- */

/* Letters take the same room on every kind of page, and stand where they stand at every size. */
static PangoContext *context_for_all(void)
{
    static _Thread_local PangoContext *context;
    if (context != NULL)
        return context;
    cairo_font_options_t *options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    context = pango_font_map_create_context(pango_cairo_font_map_get_default());
    pango_cairo_context_set_font_options(context, options);
    pango_cairo_context_set_resolution(context, 72);
    pango_context_set_round_glyph_positions(context, FALSE);
    cairo_font_options_destroy(options);
    return context;
}

/* Sizes are points whatever is drawn on. No letters are drawn as one, so that words can be searched for. */
static PangoLayout *layout_of(const char *words, double size)
{
    PangoLayout *layout = pango_layout_new(context_for_all());
    PangoFontDescription *font = pango_font_description_new();
    PangoAttrList *attributes = pango_attr_list_new();
    pango_font_description_set_family_static(font, "sans");
    pango_font_description_set_absolute_size(font, size * PANGO_SCALE);
    pango_layout_set_font_description(layout, font);
    pango_attr_list_insert(attributes, pango_attr_font_features_new("liga=0, clig=0"));
    pango_layout_set_attributes(layout, attributes);
    pango_layout_set_text(layout, words, -1);
    pango_attr_list_unref(attributes);
    pango_font_description_free(font);
    return layout;
}

static struct room room_of(PangoLayout *layout)
{
    PangoRectangle logical;
    pango_layout_get_extents(layout, NULL, &logical);
    return (struct room){ (double)logical.width / PANGO_SCALE, (double)logical.height / PANGO_SCALE };
}

/* The room that words take grows as they do: it is found once, for words 1 pt high, and kept. */
struct kept_room {
    char words[40];
    struct room room;
};

static struct room measure(const char *words)
{
    enum { LARGE = 64 };
    PangoLayout *layout = layout_of(words, LARGE);
    const struct room room = room_of(layout);
    g_object_unref(layout);
    return (struct room){ room.width / LARGE, room.height / LARGE };
}

static struct room room_of_one_point(const char *words)
{
    enum { KEPT = 256 };
    static _Thread_local struct kept_room kept_rooms[KEPT];
    struct kept_room *place = &kept_rooms[g_str_hash(words) % KEPT];
    if (strlen(words) >= sizeof place->words)
        return measure(words);
    if (strcmp(place->words, words) != 0) {
        strcpy(place->words, words);
        place->room = measure(words);
    }
    return place->room;
}

struct room words_room(const char *words, double size)
{
    const struct room room = room_of_one_point(words);
    return (struct room){ room.width * size, room.height * size };
}

struct room plate_room(const char *words, double size, enum plate plate)
{
    struct room room = words_room(words, size);
    if (plate == PLATE_BOX)
        return (struct room){ room.width + size / 2, room.height };
    const double across = fmax(room.height, hypot(room.width, 0.7 * room.height)) + size / 5;
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
    PangoLayout *layout = layout_of(words, size);
    struct room room = room_of(layout);
    cairo_save(cairo);
    pango_layout_set_width(layout, (int)ceil(room.width * PANGO_SCALE) + 2);
    pango_layout_set_alignment(layout, PANGO_ALIGN_CENTER);
    if (plate != PLATE_NONE)
        draw_plate(cairo, x, y, plate_room(words, size, plate), plate);
    set_black(cairo);
    cairo_move_to(cairo, x - room.width / 2, y - room.height / 2);
    pango_cairo_show_layout(cairo, layout);
    cairo_new_path(cairo);
    cairo_restore(cairo);
    g_object_unref(layout);
}

void write_from(cairo_t *cairo, double x, double y, const char *words, double size)
{
    struct room room = words_room(words, size);
    write_words(cairo, x + room.width / 2, y, words, size, PLATE_NONE);
}

void write_up_to(cairo_t *cairo, double x, double y, const char *words, double size)
{
    struct room room = words_room(words, size);
    write_words(cairo, x - room.width / 2, y, words, size, PLATE_NONE);
}

double wrapped_height(double width, const char *words, double size)
{
    PangoLayout *layout = layout_of(words, size);
    pango_layout_set_width(layout, (int)(width * PANGO_SCALE));
    struct room room = room_of(layout);
    g_object_unref(layout);
    return room.height;
}

double write_wrapped(cairo_t *cairo, double x, double y, double width, const char *words, double size)
{
    PangoLayout *layout = layout_of(words, size);
    pango_layout_set_width(layout, (int)(width * PANGO_SCALE));
    struct room room = room_of(layout);
    set_black(cairo);
    cairo_move_to(cairo, x, y);
    pango_cairo_show_layout(cairo, layout);
    cairo_new_path(cairo);
    g_object_unref(layout);
    return room.height;
}
