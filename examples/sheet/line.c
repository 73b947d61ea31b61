/* line.c - lines of pictures: arrows, dimension lines, marks where something is left out.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>

#include "ink.h"

void set_black(cairo_t *cairo)
{
    cairo_set_source_rgb(cairo, 0, 0, 0);
}

void stroke_thin(cairo_t *cairo)
{
    set_black(cairo);
    cairo_set_line_width(cairo, 0.6);
    cairo_stroke(cairo);
}

void stroke_dashed(cairo_t *cairo, double dash, double gap)
{
    const double dashes[] = { dash, gap };
    cairo_save(cairo);
    cairo_set_dash(cairo, dashes, 2, 0);
    set_black(cairo);
    cairo_set_line_width(cairo, 0.9);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}

/* ---- arrows ------------------------------------------------------------------------------------------------------ */

static void trace_arrow(cairo_t *cairo, double from_x, double from_y, double to_x, double to_y)
{
    const double angle = atan2(to_y - from_y, to_x - from_x);
    const double head = 4.2;
    const double neck_x = to_x - head * cos(angle);
    const double neck_y = to_y - head * sin(angle);
    cairo_new_path(cairo);
    cairo_move_to(cairo, from_x - 0.6 * sin(angle), from_y + 0.6 * cos(angle));
    cairo_line_to(cairo, neck_x - 0.6 * sin(angle), neck_y + 0.6 * cos(angle));
    cairo_line_to(cairo, neck_x - 2.2 * sin(angle), neck_y + 2.2 * cos(angle));
    cairo_line_to(cairo, to_x, to_y);
    cairo_line_to(cairo, neck_x + 2.2 * sin(angle), neck_y - 2.2 * cos(angle));
    cairo_line_to(cairo, neck_x + 0.6 * sin(angle), neck_y - 0.6 * cos(angle));
    cairo_line_to(cairo, from_x + 0.6 * sin(angle), from_y - 0.6 * cos(angle));
    cairo_close_path(cairo);
}

void fill_in_relief(cairo_t *cairo)
{
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 2);
    cairo_stroke_preserve(cairo);
    set_black(cairo);
    cairo_fill(cairo);
}

void draw_arrow(cairo_t *cairo, double from_x, double from_y, double to_x, double to_y)
{
    cairo_save(cairo);
    trace_arrow(cairo, from_x, from_y, to_x, to_y);
    fill_in_relief(cairo);
    cairo_restore(cairo);
}

void draw_lead(cairo_t *cairo, double from_x, double from_y, double to_x, double to_y)
{
    cairo_save(cairo);
    cairo_new_path(cairo);
    cairo_move_to(cairo, from_x, from_y);
    cairo_line_to(cairo, to_x, to_y);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 2);
    cairo_stroke_preserve(cairo);
    stroke_thin(cairo);
    cairo_arc(cairo, to_x, to_y, 1.5, 0, 2 * acos(-1));
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 1);
    cairo_stroke_preserve(cairo);
    set_black(cairo);
    cairo_fill(cairo);
    cairo_restore(cairo);
}

/* `angle` is how the seam itself lies, in radians; arrows stand at right angles to it. */
void draw_pressed(cairo_t *cairo, double x, double y, int32_t press, double angle, double reach)
{
    double across_x = sin(angle);
    double across_y = -cos(angle);
    const bool to_left = press == MUSLIN_PRESS_LEFT || press == MUSLIN_PRESS_RIGHT;
    const bool is_least = press == MUSLIN_PRESS_LEFT || press == MUSLIN_PRESS_UP;
    if (((to_left ? across_x : across_y) > 0) == is_least) {
        across_x = -across_x;
        across_y = -across_y;
    }
    const double far_x = reach * across_x;
    const double far_y = reach * across_y;
    if (press == MUSLIN_PRESS_OPEN) {
        draw_arrow(cairo, x, y, x + far_x, y + far_y);
        draw_arrow(cairo, x, y, x - far_x, y - far_y);
    } else
        draw_arrow(cairo, x - far_x, y - far_y, x + far_x, y + far_y);
}

/* ---- dimension lines --------------------------------------------------------------------------------------------- */

static void draw_tick(cairo_t *cairo, double x, double y, bool is_down)
{
    cairo_move_to(cairo, x - (is_down ? 3.5 : 0), y - (is_down ? 0 : 3.5));
    cairo_line_to(cairo, x + (is_down ? 3.5 : 0), y + (is_down ? 0 : 3.5));
    cairo_move_to(cairo, x - 1.8, y + 1.8);
    cairo_line_to(cairo, x + 1.8, y - 1.8);
}

/* Words that are longer than the line stand below it. */
void dimension_across(cairo_t *cairo, double left, double right, double y, const char *words)
{
    const struct room room = words_room(words, SMALL_SIZE);
    const double middle = (left + right) / 2;
    const double gap = right - left > room.width + 14 ? room.width / 2 + 2 : 0;
    cairo_new_path(cairo);
    cairo_move_to(cairo, left, y);
    cairo_line_to(cairo, middle - gap, y);
    cairo_move_to(cairo, middle + gap, y);
    cairo_line_to(cairo, right, y);
    draw_tick(cairo, left, y, false);
    draw_tick(cairo, right, y, false);
    stroke_thin(cairo);
    write_words(cairo, middle, gap > 0 ? y : y + room.height / 2 + 3, words, SMALL_SIZE, PLATE_NONE);
}

/* Words stand at the right of the line. */
void dimension_down(cairo_t *cairo, double x, double top, double bottom, const char *words)
{
    cairo_new_path(cairo);
    cairo_move_to(cairo, x, top);
    cairo_line_to(cairo, x, bottom);
    draw_tick(cairo, x, top, true);
    draw_tick(cairo, x, bottom, true);
    stroke_thin(cairo);
    write_from(cairo, x + 5, (top + bottom) / 2, words, SMALL_SIZE);
}

/* ---- left out ---------------------------------------------------------------------------------------------------- */

static void trace_zigzag(cairo_t *cairo, double length)
{
    int count = (int)(length / 6) + 1;
    cairo_move_to(cairo, 0, 0);
    for (int i = 1; i <= 2 * count; i++)
        cairo_line_to(cairo, (i & 1) != 0 ? ((i & 2) != 0 ? -2.5 : 2.5) : 0, length * i / (2 * count));
}

static void draw_zigzag(cairo_t *cairo, double length)
{
    trace_zigzag(cairo, length);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 4);
    cairo_stroke(cairo);
    for (int side = -1; side <= 1; side += 2) {
        cairo_save(cairo);
        cairo_translate(cairo, 2 * side, 0);
        trace_zigzag(cairo, length);
        cairo_restore(cairo);
        stroke_thin(cairo);
    }
}

void draw_break(cairo_t *cairo, double x, double top, double bottom)
{
    cairo_save(cairo);
    cairo_translate(cairo, x, top);
    draw_zigzag(cairo, bottom - top);
    cairo_restore(cairo);
}

void draw_break_across(cairo_t *cairo, double left, double right, double y)
{
    cairo_save(cairo);
    cairo_translate(cairo, left, y);
    cairo_rotate(cairo, -acos(-1) / 2);
    draw_zigzag(cairo, right - left);
    cairo_restore(cairo);
}
