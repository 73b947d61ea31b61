/* picture.h - one of the pictures as those who draw it see it, and all of them.
 *
 * SPDX-License-Identifier: MIT
 *
 * Each draws where it likes: draw.c finds out how far that reaches, and moves it. */
#ifndef PICTURE_H
#define PICTURE_H

#include "patches.h"

struct canvas {
    cairo_t *cairo;
    const struct worked *worked;
    int64_t which;
    int part;
    double width; /* at most */
    double height;
};

void draw_top(const struct canvas *canvas, bool is_blank);
void draw_key(const struct canvas *canvas);
void draw_node(const struct canvas *canvas);
void draw_step(const struct canvas *canvas);
void draw_strip_set(const struct canvas *canvas, muslin_id node);
void draw_cloth(const struct canvas *canvas);
void draw_borders(const struct canvas *canvas);
void draw_backing(const struct canvas *canvas);
void draw_checks(const struct canvas *canvas);
void draw_template(const struct canvas *canvas);
int template_pages(const struct canvas *canvas);

/* In a column beside words there is only room for what words do not say. */
static inline bool is_small(const struct canvas *canvas)
{
    return canvas->width < 230 || canvas->height < 230;
}

/* A node at this scale, finished, its pieces numbered; the lower left corner at x, y. Seams have their arrows where it
 * is wanted. */
void draw_numbered(const struct canvas *canvas, muslin_id node, const struct view *view, bool has_arrows);
/* Its sizes as dimension lines at the right and below, finished or unfinished. */
void draw_sizes(const struct canvas *canvas, muslin_id node, const struct view *view, bool is_finished);
/* A scale at which a node is so wide and high at most. */
double unit_for(const struct muslin_node_size *size, double width, double height);

/* A list of fabrics or pieces: a swatch with the fabric's letter; returns how far it reaches to the right. */
void draw_swatch(const struct canvas *canvas, const struct cloth *cloth, double x, double y, double width,
                 double height);

#endif
