/* cloth.c - fabrics as they are drawn: each in its colour and with a hatching of its own.
 *
 * SPDX-License-Identifier: MIT */
#include "hatch.h"

/* ---- hatchings --------------------------------------------------------------------------------------------------- */

/* In the order of the fabrics; neighbours in it are far from each other. After the last they begin again. */
static const struct hatch hatches[][2] = {
    { { -45, 4, 0 }, { 0, 0, 0 } },     { { 0, 3.6, 0.1 }, { 0, 0, 0 } },  { { 0, 0, 0 }, { 0, 0, 0 } },
    { { 0, 4, 0 }, { 90, 4, 0 } },      { { 45, 4, 0 }, { 0, 0, 0 } },     { { 0, 3.4, 0 }, { 0, 0, 0 } },
    { { 45, 4.6, 0 }, { -45, 4.6, 0 } }, { { 90, 3.4, 0 }, { 0, 0, 0 } },  { { 0, 4, 4 }, { 0, 0, 0 } },
    { { -45, 7, 0 }, { 0, 0, 0 } },     { { 90, 5, 2.5 }, { 0, 0, 0 } },   { { 45, 5, 3 }, { 0, 0, 0 } },
};
enum { HATCHES = sizeof hatches / sizeof hatches[0] };

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

/* Over the cloth in the path, which is used up, two hatchings in the colour that is set. */
static void draw_mesh(cairo_t *cairo, const struct hatch mesh[2])
{
    cairo_path_t *cloth = cairo_copy_path_flat(cairo);
    cairo_new_path(cairo);
    for (int i = 0; i < 2 && !is_only_measured(cairo); i++)
        hatch_trace(cairo, &mesh[i], cloth);
    hatch_stroke(cairo, &mesh[0]);
    cairo_path_destroy(cloth);
}

/* ---- fabrics ----------------------------------------------------------------------------------------------------- */

static bool is_dark(const struct cloth *cloth)
{
    return cloth->colour[0] * 3 + cloth->colour[1] * 6 + cloth->colour[2] < 10 * 120;
}

static void set_colour(cairo_t *cairo, const struct cloth *cloth)
{
    cairo_set_source_rgb(cairo, cloth->colour[0] / 255.0, cloth->colour[1] / 255.0, cloth->colour[2] / 255.0);
}

void fill_plain(cairo_t *cairo, const struct design *design, muslin_id fabric)
{
    set_colour(cairo, cloth_of(design, fabric));
    cairo_fill(cairo);
}

void fill_cloth(cairo_t *cairo, const struct design *design, muslin_id fabric)
{
    const struct cloth *cloth = cloth_of(design, fabric);
    const size_t number = (size_t)(cloth - design->cloths) % HATCHES;
    const double shade = is_dark(cloth) ? 1 : 0;
    cairo_save(cairo);
    set_colour(cairo, cloth);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgba(cairo, shade, shade, shade, is_dark(cloth) ? 0.6 : 0.5);
    draw_mesh(cairo, hatches[number]);
    cairo_restore(cairo);
}

void fill_pale(cairo_t *cairo)
{
    cairo_set_source_rgb(cairo, 0.94, 0.94, 0.94);
    cairo_fill(cairo);
}

void fill_left_over(cairo_t *cairo)
{
    static const struct hatch wide[2] = { { -60, 9, 3 }, { 0, 0, 0 } };
    cairo_save(cairo);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_fill_preserve(cairo);
    cairo_set_source_rgb(cairo, 0.55, 0.55, 0.55);
    draw_mesh(cairo, wide);
    cairo_restore(cairo);
}

void stroke_seam(cairo_t *cairo)
{
    cairo_save(cairo);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 1.3);
    cairo_stroke_preserve(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    cairo_set_line_width(cairo, 0.5);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}

void stroke_fine_seam(cairo_t *cairo)
{
    cairo_save(cairo);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
    set_black(cairo);
    cairo_set_line_width(cairo, 0.25);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}
