/* svg.c - what all drawings need: SVG into a file that is open, and the cloth of a fabric.
 *
 * SPDX-License-Identifier: MIT */
#include "svg.h"

#include <errno.h>

static cairo_status_t write_some(void *file, const unsigned char *bytes, unsigned int length)
{
    return fwrite(bytes, 1, length, file) == length ? CAIRO_STATUS_SUCCESS : CAIRO_STATUS_WRITE_ERROR;
}

cairo_t *start_svg(FILE *file, double width, double height)
{
    cairo_surface_t *surface = cairo_svg_surface_create_for_stream(write_some, file, width, height);
    cairo_t *cairo = cairo_create(surface);
    cairo_surface_destroy(surface); /* the drawing holds it now */
    return cairo;
}

int end_svg(cairo_t *cairo)
{
    cairo_surface_t *surface = cairo_surface_reference(cairo_get_target(cairo));
    cairo_destroy(cairo);
    cairo_surface_finish(surface);
    cairo_status_t status = cairo_surface_status(surface);
    cairo_surface_destroy(surface);
    if (status == CAIRO_STATUS_SUCCESS)
        return 0;
    errno = status == CAIRO_STATUS_NO_MEMORY ? ENOMEM : EIO;
    return -1;
}

const struct cloth *cloth_of(const struct design *design, muslin_id fabric)
{
    for (int i = 0; i < design->cloths_used; i++)
        if (design->cloths[i].id == fabric)
            return &design->cloths[i];
    return NULL;
}
