/* draw_checks.c - two squares to measure after printing: everything that has its true size is right when they are.
 *
 * SPDX-License-Identifier: MIT */
#include "picture.h"

static void draw_square(const struct canvas *canvas, double x, double side, const char *name)
{
    cairo_new_path(canvas->cairo);
    cairo_rectangle(canvas->cairo, x, 0, side, side);
    stroke_thin(canvas->cairo);
    write_words(canvas->cairo, x + side / 2, side / 2, name, TEXT_SIZE, PLATE_NONE);
}

void draw_checks(const struct canvas *canvas)
{
    const double inch = 72;
    const double mm = inch / 25.4;
    draw_square(canvas, 0, inch, "measures\n1 in\nafter printing\nat 100 %");
    draw_square(canvas, inch + 24, 25 * mm, "measures\n25 mm\nafter printing\nat 100 %");
}
