/* draw_key.c - the fabrics: letter, name, a swatch with its hatching, a box to glue one's own in.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "picture.h"

enum { COLUMN = 170, ROW = 44, SWATCH = 36, OWN = 36 };

void draw_swatch(const struct canvas *canvas, const struct cloth *cloth, double x, double y, double width,
                 double height)
{
    cairo_new_path(canvas->cairo);
    cairo_rectangle(canvas->cairo, x, y, width, height);
    fill_cloth(canvas->cairo, canvas->worked->design, cloth->id);
    cairo_rectangle(canvas->cairo, x, y, width, height);
    stroke_thin(canvas->cairo);
    write_words(canvas->cairo, x + width / 2, y + height / 2, cloth->letter, SMALL_SIZE, PLATE_RING);
}

static void draw_own(cairo_t *cairo, double x, double y)
{
    cairo_new_path(cairo);
    cairo_rectangle(cairo, x, y, OWN, SWATCH);
    stroke_dashed(cairo, 2, 2);
    write_words(cairo, x + OWN / 2.0, y + SWATCH / 2.0, "glue\nyours", SMALL_SIZE, PLATE_NONE);
}

void draw_key(const struct canvas *canvas)
{
    const struct design *design = canvas->worked->design;
    const int columns = (int)fmax(1, floor(canvas->width / COLUMN));
    for (size_t i = 0; i < design->cloths_used; i++) {
        const struct cloth *cloth = &design->cloths[i];
        const double x = (double)(i % (size_t)columns) * COLUMN;
        const double y = (double)(i / (size_t)columns) * ROW;
        draw_swatch(canvas, cloth, x, y, SWATCH, SWATCH);
        draw_own(canvas->cairo, x + SWATCH + 4, y);
        write_wrapped(canvas->cairo, x + SWATCH + OWN + 10, y + 2, COLUMN - SWATCH - OWN - 16, cloth->name, TEXT_SIZE);
    }
}
