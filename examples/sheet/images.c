/* images.c - pages and pictures drawn one to a file.
 *
 * SPDX-License-Identifier: MIT */
#include "images.h"

#include <cairo-svg.h>
#include <math.h>

#include "paint.h"

#define AROUND 12.0 /* white around a picture alone */

/* What is drawn: a page, or a picture. */
struct drawn {
    struct flow *flow;
    int page;
    const struct picture *picture;
    int part;
    double most_width;
    double most_height;
};

static void draw(const struct drawn *drawn, cairo_t *cairo)
{
    struct tags tags;
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_paint(cairo);
    cairo_set_source_rgb(cairo, 0, 0, 0);
    if (drawn->flow == NULL) {
        cairo_translate(cairo, AROUND, AROUND);
        picture_draw(cairo, drawn->picture, drawn->part, drawn->most_width, drawn->most_height);
        return;
    }
    tags_begin(&tags, cairo);
    paint_page(drawn->flow, drawn->page, cairo, &tags);
    tags_end(&tags);
    tags_free(&tags);
}

static cairo_status_t end(cairo_surface_t *surface, cairo_t *cairo)
{
    cairo_status_t status = cairo_status(cairo);
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    return status != CAIRO_STATUS_SUCCESS ? status : cairo_surface_status(surface);
}

static cairo_status_t to_svg(const struct drawn *drawn, double width, double height, struct bytes *bytes)
{
    cairo_surface_t *surface = cairo_svg_surface_create_for_stream(bytes_take, bytes, width, height);
    cairo_t *cairo = cairo_create(surface);
    draw(drawn, cairo);
    cairo_status_t status = end(surface, cairo);
    cairo_surface_destroy(surface);
    return status;
}

static cairo_status_t to_png(const struct drawn *drawn, double width, double height, long dpi, struct bytes *bytes)
{
    double scale = (double)dpi / 72;
    cairo_surface_t *surface = cairo_image_surface_create(CAIRO_FORMAT_RGB24, (int)ceil(width * scale),
                                                          (int)ceil(height * scale));
    cairo_t *cairo = cairo_create(surface);
    cairo_scale(cairo, scale, scale);
    draw(drawn, cairo);
    cairo_status_t status = cairo_status(cairo);
    if (status == CAIRO_STATUS_SUCCESS)
        status = cairo_surface_write_to_png_stream(surface, bytes_take, bytes);
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
    return status;
}

static cairo_status_t to(enum form form, const struct drawn *drawn, double width, double height, long dpi,
                         struct bytes *bytes)
{
    return form == FORM_PNG ? to_png(drawn, width, height, dpi, bytes) : to_svg(drawn, width, height, bytes);
}

cairo_status_t image_of_page(struct flow *flow, int page, enum form form, long dpi, struct bytes *bytes)
{
    struct drawn drawn = { .flow = flow, .page = page };
    return to(form, &drawn, flow->page.width, flow->page.height, dpi, bytes);
}

int image_parts(const struct page *page, const struct picture *picture)
{
    return picture_pages(picture, page_measure(page), page_depth(page));
}

cairo_status_t image_of_picture(const struct page *page, const struct picture *picture, int part, enum form form,
                                long dpi, struct bytes *bytes)
{
    struct drawn drawn = { .picture = picture, .part = part };
    double width = 0, height = 0;
    drawn.most_width = page_measure(page);
    drawn.most_height = page_depth(page);
    picture_size(picture, part, drawn.most_width, drawn.most_height, &width, &height);
    return to(form, &drawn, width + 2 * AROUND, height + 2 * AROUND, dpi, bytes);
}
