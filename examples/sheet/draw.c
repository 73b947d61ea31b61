/* draw.c - pictures of all kinds: which is drawn by whom, how large it comes out, what is said of it.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "picture.h"

static bool has_true_size(const struct picture *picture)
{
    return picture->kind == PICTURE_CHECKS || picture->kind == PICTURE_TEMPLATE;
}

static void draw_kind(const struct canvas *canvas, enum picture_kind kind)
{
    switch (kind) {
    case PICTURE_TOP:
    case PICTURE_TOP_BLANK:
        draw_top(canvas, kind == PICTURE_TOP_BLANK);
        return;
    case PICTURE_KEY:
        draw_key(canvas);
        return;
    case PICTURE_NODE:
        draw_node(canvas);
        return;
    case PICTURE_STEP:
        draw_step(canvas);
        return;
    case PICTURE_STRIP_SET:
        draw_strip_set(canvas, canvas->worked->steps[canvas->which].node);
        return;
    case PICTURE_CLOTH:
        draw_cloth(canvas);
        return;
    case PICTURE_BORDERS:
        draw_borders(canvas);
        return;
    case PICTURE_BACKING:
        draw_backing(canvas);
        return;
    case PICTURE_CHECKS:
        draw_checks(canvas);
        return;
    case PICTURE_TEMPLATE:
        draw_template(canvas);
        return;
    }
}

static struct canvas canvas_of(cairo_t *cairo, const struct picture *picture, int part, double width, double height)
{
    return (struct canvas){ cairo, picture->worked, picture->which, part, width, height };
}

/* How far it reaches, found by drawing it where nobody looks. */
static cairo_rectangle_t measure(const struct picture *picture, int part, double most_width, double most_height)
{
    cairo_rectangle_t reach;
    cairo_surface_t *surface = cairo_recording_surface_create(CAIRO_CONTENT_COLOR_ALPHA, NULL);
    only_measure(surface);
    cairo_t *cairo = cairo_create(surface);
    const struct canvas canvas = canvas_of(cairo, picture, part, most_width, most_height);
    draw_kind(&canvas, picture->kind);
    cairo_destroy(cairo);
    cairo_recording_surface_ink_extents(surface, &reach.x, &reach.y, &reach.width, &reach.height);
    cairo_surface_destroy(surface);
    return reach;
}

/* A picture's size is asked for several times before it is drawn: what was found last is kept. */
struct reach {
    struct whose whose;
    enum picture_kind kind;
    int64_t which;
    int part;
    double most_width;
    double most_height;
    cairo_rectangle_t reach;
};

static bool is_of(const struct reach *reach, const struct picture *picture, int part, double most_width,
                  double most_height)
{
    return reach->kind == picture->kind && reach->which == picture->which && reach->part == part &&
           reach->most_width == most_width && reach->most_height == most_height &&
           is_whose(&reach->whose, picture->worked);
}

static cairo_rectangle_t reach_of(const struct picture *picture, int part, double most_width, double most_height)
{
    enum { KEPT = 512 };
    static _Thread_local struct reach kept_reaches[KEPT];
    static _Thread_local size_t next;
    for (size_t i = 0; i < KEPT; i++)
        if (is_of(&kept_reaches[i], picture, part, most_width, most_height))
            return kept_reaches[i].reach;
    struct reach *place = &kept_reaches[next];
    *place = (struct reach){ whose(picture->worked), picture->kind, picture->which, part, most_width, most_height,
                             measure(picture, part, most_width, most_height) };
    next = (next + 1) % KEPT;
    return place->reach;
}

/* What comes out too large for its words is made smaller as a whole. */
static double scale_of(const struct picture *picture, const cairo_rectangle_t *reach, double most_width,
                       double most_height)
{
    if (has_true_size(picture))
        return 1;
    return fmin(1, fmin(most_width / fmax(1, reach->width), most_height / fmax(1, reach->height)));
}

int picture_pages(const struct picture *picture, double most_width, double most_height)
{
    const struct canvas canvas = canvas_of(NULL, picture, 0, most_width, most_height);
    return picture->kind == PICTURE_TEMPLATE ? template_pages(&canvas) : 1;
}

void picture_size(const struct picture *picture, int part, double most_width, double most_height, double *width,
                  double *height)
{
    const cairo_rectangle_t reach = reach_of(picture, part, most_width, most_height);
    const double scale = scale_of(picture, &reach, most_width, most_height);
    *width = reach.width * scale;
    *height = reach.height * scale;
}

void picture_draw(cairo_t *cairo, const struct picture *picture, int part, double most_width, double most_height)
{
    const cairo_rectangle_t reach = reach_of(picture, part, most_width, most_height);
    const double scale = scale_of(picture, &reach, most_width, most_height);
    const struct canvas canvas = canvas_of(cairo, picture, part, most_width, most_height);
    cairo_save(cairo);
    cairo_new_path(cairo);
    cairo_scale(cairo, scale, scale);
    cairo_translate(cairo, -reach.x, -reach.y);
    draw_kind(&canvas, picture->kind);
    cairo_restore(cairo);
}

/* ---- said -------------------------------------------------------------------------------------------------------- */

static void say_node(struct line *line, const struct worked *worked, muslin_id node)
{
    const struct named *named = named_of(worked->design, node);
    char letter[16];
    letter_of(worked, node, letter);
    add(line, "%s%s%s", letter, letter[0] != '\0' && named != NULL ? ", " : "", named != NULL ? named->name : "");
}

static void say_cloth(struct line *line, const struct worked *worked, int64_t which)
{
    const struct cloth *cloth = cloth_of(worked->design, worked->bill[which].fabric);
    char text[WORD_ROOM];
    add(line, "Cutting plan of fabric %s, %s: ", cloth->letter, cloth->name);
    add(line, "%zu different strips from %s of cloth.", worked->bolts[which].strips_count,
        measured(worked, worked->bill[which].cloth_length, text));
}

static void say_step(struct line *line, const struct picture *picture)
{
    const struct muslin_sewing_step *step = &picture->worked->steps[picture->which];
    char text[WORD_ROOM];
    add(line, picture->kind == PICTURE_STRIP_SET ? "Strip set " : "Step %" PRId64 ": the parts of ",
        picture->which + 1);
    say_node(line, picture->worked, step->node);
    add(line, picture->kind == PICTURE_STRIP_SET ? " with its segments" : ", apart, with pressing arrows");
    add(line, "; %s unfinished.", measured_by(picture->worked, step->unfinished_width, step->unfinished_height, text));
}

static void say_size(struct line *line, const struct worked *worked, muslin_id node)
{
    const struct muslin_node_size size = size_of(worked, node);
    char text[WORD_ROOM];
    add(line, ", %s finished.", measured_by(worked, size.finished_width, size.finished_height, text));
}

/* What those have in common that need no more than a sentence. */
static const char *sentence_of(enum picture_kind kind)
{
    switch (kind) {
    case PICTURE_TOP:
        return "The top in its fabrics, with the letters of blocks and rows";
    case PICTURE_TOP_BLANK:
        return "The top in outlines, to color";
    case PICTURE_KEY:
        return "The fabrics: letter, name, a swatch, and a box for one's own.";
    case PICTURE_BORDERS:
        return "The borders in the order in which they are sewn, with their cut sizes.";
    case PICTURE_BACKING:
        return "The backing: its panels with their cut sizes, seams, and where quilt and batting lie.";
    case PICTURE_CHECKS:
        return "Two squares to measure after printing: one is 1 in wide, the other 25 mm.";
    default:
        return "";
    }
}

char *picture_said(const struct picture *picture)
{
    const struct worked *worked = picture->worked;
    struct line line = { .text = NULL };
    add(&line, "%s", sentence_of(picture->kind));
    if (picture->kind == PICTURE_TOP || picture->kind == PICTURE_TOP_BLANK)
        say_size(&line, worked, worked->design->top);
    if (picture->kind == PICTURE_NODE) {
        add(&line, "Finished, with the numbers of its pieces: ");
        say_node(&line, worked, picture->which);
        say_size(&line, worked, picture->which);
    }
    if (picture->kind == PICTURE_STEP || picture->kind == PICTURE_STRIP_SET)
        say_step(&line, picture);
    if (picture->kind == PICTURE_CLOTH)
        say_cloth(&line, worked, picture->which);
    if (picture->kind == PICTURE_TEMPLATE)
        add(&line, "Template of piece [%d], true size.", worked->piece[picture->which]);
    return line.text;
}
