/* cloth.c - fabrics as they are drawn: each in its colour and with a hatching of its own.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "ink.h"

/* ---- hatchings --------------------------------------------------------------------------------------------------- */

/* Lines at an angle, so far apart, solid or dashed: two of them make a mesh. */
struct hatch {
    double angle; /* degrees */
    double apart; /* points; 0: no lines */
    double dash;  /* 0: solid */
};

/* In the order of the fabrics; neighbours in it are far from each other. After the last they begin again. */
static const struct hatch hatches[][2] = {
    { { -45, 4, 0 }, { 0, 0, 0 } },     { { 0, 3.6, 0.1 }, { 0, 0, 0 } },  { { 0, 0, 0 }, { 0, 0, 0 } },
    { { 0, 4, 0 }, { 90, 4, 0 } },      { { 45, 4, 0 }, { 0, 0, 0 } },     { { 0, 3.4, 0 }, { 0, 0, 0 } },
    { { 45, 4.6, 0 }, { -45, 4.6, 0 } }, { { 90, 3.4, 0 }, { 0, 0, 0 } },  { { 0, 4, 4 }, { 0, 0, 0 } },
    { { -45, 7, 0 }, { 0, 0, 0 } },     { { 90, 5, 2.5 }, { 0, 0, 0 } },   { { 45, 5, 3 }, { 0, 0, 0 } },
};
enum { HATCHES = sizeof hatches / sizeof hatches[0] };

/* The lines over a stretch, from the `first` of them on, every `step`th: one stroke, for a clip is dear. */
static void stroke_lines(cairo_t *cairo, const struct hatch *hatch, double reach, double bottom, int first, int step)
{
    for (int number = first; number * hatch->apart <= bottom; number += step) {
        cairo_move_to(cairo, -reach, number * hatch->apart);
        cairo_line_to(cairo, reach, number * hatch->apart);
    }
    cairo_stroke(cairo);
}

/* Every second dashed line begins half a dash later. */
static void stroke_dashes(cairo_t *cairo, const struct hatch *hatch, double reach, double bottom, int first)
{
    const double round = hatch->dash < 1 ? hatch->apart : 2 * hatch->dash;
    const double dashes[] = { hatch->dash, round - hatch->dash };
    for (int number = first; number < first + 2; number++) {
        cairo_set_dash(cairo, dashes, 2, (number & 1) != 0 ? round / 2 : 0);
        stroke_lines(cairo, hatch, reach, bottom, number, 2);
    }
}

static const cairo_user_data_key_t only_measured;

void only_measure(cairo_surface_t *surface)
{
    static int said;
    cairo_surface_set_user_data(surface, &only_measured, &said, NULL);
}

static bool is_only_measured(cairo_t *cairo)
{
    return cairo_surface_get_user_data(cairo_get_target(cairo), &only_measured) != NULL;
}

/* Over the clip, in a grid that is the same for all of a picture, so that pieces of one fabric run into each other. */
static void draw_hatch(cairo_t *cairo, const struct hatch *hatch)
{
    double left, top, right, bottom;
    if (hatch->apart <= 0 || is_only_measured(cairo))
        return;
    cairo_save(cairo);
    cairo_rotate(cairo, hatch->angle * acos(-1) / 180);
    cairo_clip_extents(cairo, &left, &top, &right, &bottom);
    const double reach = 10 * hatch->apart + fmax(fabs(left), fabs(right));
    const int first = (int)floor(top / hatch->apart);
    if (cairo_surface_get_type(cairo_get_target(cairo)) != CAIRO_SURFACE_TYPE_IMAGE)
        cairo_set_tolerance(cairo, 1); /* strokes are written as such: this only spares the reckoning of their reach */
    cairo_set_line_width(cairo, hatch->dash > 0 && hatch->dash < 1 ? 1.2 : 0.6);
    cairo_set_line_cap(cairo, hatch->dash > 0 && hatch->dash < 1 ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    if (hatch->dash > 0)
        stroke_dashes(cairo, hatch, reach, bottom, first);
    else
        stroke_lines(cairo, hatch, reach, bottom, first, 1);
    cairo_restore(cairo);
}

/* ---- fabrics ----------------------------------------------------------------------------------------------------- */

static bool is_dark(const struct cloth *cloth)
{
    return cloth->colour[0] * 3 + cloth->colour[1] * 6 + cloth->colour[2] < 10 * 120;
}

void fill_cloth(cairo_t *cairo, const struct design *design, muslin_id fabric)
{
    const struct cloth *cloth = cloth_of(design, fabric);
    const size_t number = (size_t)(cloth - design->cloths) % HATCHES;
    cairo_save(cairo);
    cairo_set_source_rgb(cairo, cloth->colour[0] / 255.0, cloth->colour[1] / 255.0, cloth->colour[2] / 255.0);
    cairo_fill_preserve(cairo);
    cairo_clip(cairo);
    const double shade = is_dark(cloth) ? 1 : 0;
    cairo_set_source_rgba(cairo, shade, shade, shade, is_dark(cloth) ? 0.6 : 0.5);
    draw_hatch(cairo, &hatches[number][0]);
    draw_hatch(cairo, &hatches[number][1]);
    cairo_restore(cairo);
}

void fill_pale(cairo_t *cairo)
{
    cairo_set_source_rgb(cairo, 0.94, 0.94, 0.94);
    cairo_fill(cairo);
}

void fill_left_over(cairo_t *cairo)
{
    static const struct hatch wide = { -60, 9, 3 };
    cairo_save(cairo);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_fill_preserve(cairo);
    cairo_clip(cairo);
    cairo_set_source_rgb(cairo, 0.55, 0.55, 0.55);
    draw_hatch(cairo, &wide);
    cairo_restore(cairo);
}

void stroke_seam(cairo_t *cairo)
{
    cairo_save(cairo);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 1.3);
    cairo_stroke_preserve(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_set_line_width(cairo, 0.5);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}
