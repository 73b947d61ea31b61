/* type.c - texts set with pango.
 *
 * SPDX-License-Identifier: MIT */
#include "type.h"

/* Points; the family is what fontconfig calls sans here. */
static const struct {
    double size;
    double leading;
    PangoWeight weight;
} looks[FACES] = {
    [FACE_TITLE] = { 24, 30, PANGO_WEIGHT_BOLD },        [FACE_SIZE] = { 19, 25, PANGO_WEIGHT_BOLD },
    [FACE_HEADING] = { 13.5, 18, PANGO_WEIGHT_BOLD },    [FACE_SUBHEADING] = { 10.5, 14, PANGO_WEIGHT_BOLD },
    [FACE_LETTER] = { 13.5, 14, PANGO_WEIGHT_BOLD },     [FACE_BODY] = { 9.8, 13.6, PANGO_WEIGHT_NORMAL },
    [FACE_STRONG] = { 9.8, 13.6, PANGO_WEIGHT_BOLD },    [FACE_CELL] = { 8.8, 12, PANGO_WEIGHT_NORMAL },
    [FACE_COLUMN] = { 8.8, 12, PANGO_WEIGHT_BOLD },      [FACE_CAPTION] = { 8.2, 11, PANGO_WEIGHT_NORMAL },
    [FACE_FINE] = { 7.4, 10, PANGO_WEIGHT_NORMAL },      [FACE_FINE_COLUMN] = { 7.4, 10, PANGO_WEIGHT_BOLD },
    [FACE_FOOT] = { 7.6, 10, PANGO_WEIGHT_NORMAL },
};

/* ---- the case ---------------------------------------------------------------------------------------------------- */

/* Lines stand where they stand on every device. */
static void unhint(PangoContext *context)
{
    cairo_font_options_t *options = cairo_font_options_create();
    cairo_font_options_set_hint_style(options, CAIRO_HINT_STYLE_NONE);
    cairo_font_options_set_hint_metrics(options, CAIRO_HINT_METRICS_OFF);
    cairo_font_options_set_antialias(options, CAIRO_ANTIALIAS_GRAY);
    pango_cairo_context_set_font_options(context, options);
    cairo_font_options_destroy(options);
    pango_context_set_round_glyph_positions(context, FALSE);
    pango_cairo_context_set_resolution(context, 72);
}

/* Letters stand in the middle of their leading. */
static double baseline_of(const struct type_case *letters, enum face face)
{
    PangoFontMetrics *metrics = pango_context_get_metrics(letters->context, letters->faces[face], NULL);
    double ascent = pango_units_to_double(pango_font_metrics_get_ascent(metrics));
    double descent = pango_units_to_double(pango_font_metrics_get_descent(metrics));
    pango_font_metrics_unref(metrics);
    return (looks[face].leading - ascent - descent) / 2 + ascent;
}

/* Families are listed even where there is no file of any: plain letters tell. */
static bool has_fonts(struct type_case *letters)
{
    g_object_unref(type_set(letters, FACE_BODY, "Ag 1/2", 0));
    return letters->missing == 0;
}

bool type_case_open(struct type_case *letters)
{
    *letters = (struct type_case){ .fonts = g_object_ref(pango_cairo_font_map_get_default()) };
    letters->context = pango_font_map_create_context(letters->fonts);
    unhint(letters->context);
    for (int face = 0; face < FACES; face++) {
        PangoFontDescription *description = pango_font_description_new();
        pango_font_description_set_family_static(description, "sans");
        pango_font_description_set_weight(description, looks[face].weight);
        pango_font_description_set_absolute_size(description, looks[face].size * PANGO_SCALE);
        letters->faces[face] = description;
        letters->baseline[face] = baseline_of(letters, (enum face)face);
    }
    if (has_fonts(letters))
        return true;
    type_case_close(letters);
    return false;
}

void type_case_close(struct type_case *letters)
{
    for (int face = 0; face < FACES; face++)
        pango_font_description_free(letters->faces[face]);
    g_object_unref(letters->context);
    g_object_unref(letters->fonts);
}

/* ---- setting ----------------------------------------------------------------------------------------------------- */

/* Remembers the first character that would come out as an empty box. */
static void note_missing(struct type_case *letters, PangoLayout *layout)
{
    if (letters->missing != 0 || pango_layout_get_unknown_glyphs_count(layout) == 0)
        return;
    PangoLayoutIter *iter = pango_layout_get_iter(layout);
    const char *text = pango_layout_get_text(layout);
    do {
        PangoLayoutRun *run = pango_layout_iter_get_run_readonly(iter);
        for (int i = 0; run != NULL && i < run->glyphs->num_glyphs && letters->missing == 0; i++)
            if (run->glyphs->glyphs[i].glyph & PANGO_GLYPH_UNKNOWN_FLAG)
                letters->missing = g_utf8_get_char(text + run->item->offset + run->glyphs->log_clusters[i]);
    } while (pango_layout_iter_next_run(iter));
    pango_layout_iter_free(iter);
}

PangoLayout *type_set(struct type_case *letters, enum face face, const char *text, double width)
{
    PangoLayout *layout = pango_layout_new(letters->context);
    PangoAttrList *attributes = pango_attr_list_new();
    pango_attr_list_insert(attributes, pango_attr_font_features_new("liga=0, clig=0"));
    pango_layout_set_attributes(layout, attributes);
    pango_attr_list_unref(attributes);
    pango_layout_set_font_description(layout, letters->faces[face]);
    pango_layout_set_text(layout, text, -1);
    if (width > 0) {
        pango_layout_set_width(layout, pango_units_from_double(width));
        pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    }
    note_missing(letters, layout);
    return layout;
}

PangoLayout *type_set_right(struct type_case *letters, enum face face, const char *text, double width)
{
    PangoLayout *layout = type_set(letters, face, text, width);
    pango_layout_set_alignment(layout, PANGO_ALIGN_RIGHT);
    return layout;
}

/* ---- measuring and drawing --------------------------------------------------------------------------------------- */

double type_leading(enum face face)
{
    return looks[face].leading;
}

int type_lines(PangoLayout *layout)
{
    return pango_layout_get_line_count(layout);
}

double type_width(PangoLayout *layout)
{
    PangoRectangle extents;
    pango_layout_get_extents(layout, NULL, &extents);
    return pango_units_to_double(extents.width);
}

double type_least_width(PangoLayout *layout)
{
    int before = pango_layout_get_width(layout);
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD);
    pango_layout_set_width(layout, 0);
    double least = type_width(layout);
    pango_layout_set_width(layout, before);
    pango_layout_set_wrap(layout, PANGO_WRAP_WORD_CHAR);
    return least;
}

void type_draw_line(cairo_t *cairo, const struct type_case *letters, enum face face, PangoLayout *layout, int line,
                    double x, double y)
{
    PangoLayoutLine *drawn = pango_layout_get_line_readonly(layout, line);
    PangoRectangle extents;
    pango_layout_line_get_extents(drawn, NULL, &extents);
    double width = pango_units_to_double(pango_layout_get_width(layout));
    bool right = pango_layout_get_alignment(layout) == PANGO_ALIGN_RIGHT && width > 0;
    cairo_move_to(cairo, x + (right ? width - pango_units_to_double(extents.width) : 0), y + letters->baseline[face]);
    pango_cairo_show_layout_line(cairo, drawn);
}

void type_draw(cairo_t *cairo, const struct type_case *letters, enum face face, PangoLayout *layout, double x, double y)
{
    for (int line = 0; line < type_lines(layout); line++)
        type_draw_line(cairo, letters, face, layout, line, x, y + line * looks[face].leading);
}
