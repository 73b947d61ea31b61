/* draw.c - a top as SVG: every patch in its fabric's colour, seams as thin lines, a legend below.
 *
 * SPDX-License-Identifier: MIT */
#include <cairo-svg.h>
#include <errno.h>
#include <inttypes.h>
#include <stdlib.h>

#include "tops.h"

enum { PAGE = 64, CORNERS_MOST = PAGE * 40, WIDTH = 640, MARGIN = 24, LINE = 18 };

static cairo_status_t write_some(void *file, const unsigned char *bytes, unsigned int length)
{
    return fwrite(bytes, 1, length, file) == length ? CAIRO_STATUS_SUCCESS : CAIRO_STATUS_WRITE_ERROR;
}

static const struct cloth *cloth_of(const struct design *design, muslin_id fabric)
{
    for (int i = 0; i < design->cloths_used; i++)
        if (design->cloths[i].id == fabric)
            return &design->cloths[i];
    return NULL;
}

static void set_colour(cairo_t *cairo, const struct cloth *cloth)
{
    cairo_set_source_rgb(cairo, cloth->colour[0] / 255.0, cloth->colour[1] / 255.0, cloth->colour[2] / 255.0);
}

/* Lengths become units of the drawing; y runs downwards there. */
struct scale {
    double unit;
    muslin_len height;
};

static void draw_patch(cairo_t *cairo, const struct scale *scale, const struct muslin_outline_corner *corners,
                       int64_t count)
{
    for (int64_t i = 0; i < count; i++)
        cairo_line_to(cairo, (double)corners[i].x * scale->unit, (double)(scale->height - corners[i].y) * scale->unit);
    cairo_close_path(cairo);
}

static void draw_patches(cairo_t *cairo, const struct scale *scale, const struct design *design,
                         const struct muslin_solution *solution)
{
    static struct muslin_outline rows[PAGE];
    static struct muslin_outline_corner corners[CORNERS_MOST];
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    size_t left = 1;
    size_t given = 0;
    for (int64_t first = 0; left > 0; first += (int64_t)given, left -= given) {
        must(muslin_solution_outlines(solution, design->top, MUSLIN_STAGE_FINISHED, first, rows, sizeof rows[0], PAGE,
                                      corners, sizeof corners[0], CORNERS_MOST, &left, &given, &problem),
             &problem);
        for (size_t i = 0; i < given; i++) {
            draw_patch(cairo, scale, corners + rows[i].first_corner, rows[i].corners);
            set_colour(cairo, cloth_of(design, rows[i].fabric));
            cairo_fill_preserve(cairo);
            cairo_set_source_rgba(cairo, 0, 0, 0, 0.55);
            cairo_stroke(cairo);
        }
    }
}

static void show_line(cairo_t *cairo, double y, const char *line)
{
    cairo_move_to(cairo, 0, y);
    cairo_show_text(cairo, line);
}

static void draw_legend(cairo_t *cairo, const struct design *design, const struct muslin_node_size *size,
                        const char *title, double top)
{
    char line[4 * WORD + 64];
    char words[4][WORD];
    cairo_select_font_face(cairo, "sans-serif", CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
    cairo_set_font_size(cairo, 11);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    snprintf(line, sizeof line, "%s (invented), %" PRId64 " patches", title, size->patches);
    show_line(cairo, top + LINE, line);
    snprintf(line, sizeof line, "%s x %s finished, %s x %s unfinished", inches(size->finished_width, words[0]),
             inches(size->finished_height, words[1]), inches(size->unfinished_width, words[2]),
             inches(size->unfinished_height, words[3]));
    show_line(cairo, top + 2 * LINE, line);
    for (int i = 0; i < design->cloths_used; i++) {
        double x = (i % 4) * WIDTH / 4.0;
        double y = top + LINE * (2.5 + i / 4);
        cairo_rectangle(cairo, x, y, 12, 12);
        set_colour(cairo, &design->cloths[i]);
        cairo_fill_preserve(cairo);
        cairo_set_source_rgb(cairo, 0, 0, 0);
        cairo_stroke(cairo);
        cairo_move_to(cairo, x + 18, y + 10);
        cairo_show_text(cairo, design->cloths[i].name);
    }
}

int draw_top(const struct design *design, const struct muslin_solution *solution, const char *title, FILE *file)
{
    struct muslin_node_size size = { .size = (uint32_t)sizeof size };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    must(muslin_solution_size(solution, design->top, &size, &problem), &problem);
    struct scale scale = { (double)WIDTH / (double)size.finished_width, size.finished_height };
    double height = (double)size.finished_height * scale.unit;
    cairo_surface_t *surface =
        cairo_svg_surface_create_for_stream(write_some, file, WIDTH + 2 * MARGIN, height + 2 * MARGIN + 4 * LINE);
    cairo_t *cairo = cairo_create(surface);
    cairo_translate(cairo, MARGIN, MARGIN);
    cairo_set_line_width(cairo, 0.6);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    draw_patches(cairo, &scale, design, solution);
    draw_legend(cairo, design, &size, title, height);
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    cairo_status_t status = cairo_surface_status(surface);
    cairo_surface_destroy(surface);
    if (status == CAIRO_STATUS_SUCCESS)
        return 0;
    errno = status == CAIRO_STATUS_NO_MEMORY ? ENOMEM : EIO;
    return -1;
}
