/* draw_backing.c - the backing: its panels with their cut sizes, its seams, and how quilt and batting lie on it.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <math.h>
#include <string.h>

#include "picture.h"

struct backing {
    const struct canvas *canvas;
    const struct muslin_backing *row;
    bool is_along; /* seams run along the quilt's length: panels lie side by side */
    double width;
    double height;
    double unit;
};

/* How far a panel extends across the seams. */
static double depth_of(const struct muslin_panel *panel)
{
    return (double)(panel->role == MUSLIN_PANEL_ROLE_INSERT ? panel->cut_length : panel->cut_width);
}

/* Panels as they are cut are a little more than the backing that is sewn from them: their share of it is drawn. */
static double share_of(const struct backing *backing)
{
    double all = 0;
    for (size_t i = 0; i < backing->canvas->worked->panels_count; i++)
        all += depth_of(&backing->canvas->worked->panels[i]);
    return (backing->is_along ? backing->width : backing->height) / all;
}

/* Strips of an insert are joined end to end. */
static void draw_joins(const struct backing *backing, const struct muslin_panel *panel, double at, double depth)
{
    cairo_t *cairo = backing->canvas->cairo;
    const double length = backing->is_along ? backing->height : backing->width;
    for (int64_t i = 1; i < panel->count; i++) {
        const double join = length * (double)i / (double)panel->count;
        cairo_move_to(cairo, backing->is_along ? at : join, backing->is_along ? join : at);
        cairo_line_to(cairo, backing->is_along ? at + depth : join, backing->is_along ? join : at + depth);
        stroke_thin(cairo);
    }
}

static const char *role_of(const struct muslin_panel *panel)
{
    switch (panel->role) {
    case MUSLIN_PANEL_ROLE_SIDE:
        return "side";
    case MUSLIN_PANEL_ROLE_HALF:
        return "half";
    case MUSLIN_PANEL_ROLE_INSERT:
        return "insert";
    default:
        return "panel";
    }
}

static void label_panel(const struct backing *backing, const struct muslin_panel *panel, double at, double depth)
{
    const struct worked *worked = backing->canvas->worked;
    char text[WORD_ROOM];
    char count[40] = "";
    char words[3 * WORD_ROOM];
    const bool is_flat = depth < 34 && !backing->is_along;
    if (panel->count > 1)
        snprintf(count, sizeof count, is_flat ? "%" PRId64 " pieces, each " : "%" PRId64 " pieces,\neach ",
                 panel->count);
    if (backing->row->pieces == 1) {
        snprintf(words, sizeof words, "in one piece, cut %s", panel_size(worked, panel, text));
        write_words(backing->canvas->cairo, backing->width / 2, backing->height * 0.28, words, SMALL_SIZE, PLATE_BOX);
        return;
    }
    panel_size(worked, panel, text);
    if (!is_flat)
        *strstr(text, " x ") = '\n';
    snprintf(words, sizeof words, is_flat ? "%s %d: %scut %s" : "%s %d\n%scut\n%s", role_of(panel), panel->position,
             count, text);
    /* What is wider than its panel does not stand beside the next one's words, but below them. */
    const bool is_wide = plate_room(words, SMALL_SIZE, PLATE_BOX).width > depth;
    const double down = backing->height * (is_wide && panel->position % 2 == 0 ? 0.62 : 0.28);
    write_words(backing->canvas->cairo, backing->is_along ? at + depth / 2 : backing->width / 2,
                backing->is_along ? down : at + depth / 2, words, SMALL_SIZE, PLATE_BOX);
}

static void draw_panels(const struct backing *backing)
{
    const struct worked *worked = backing->canvas->worked;
    cairo_t *cairo = backing->canvas->cairo;
    const double share = share_of(backing);
    double at = 0;
    for (size_t i = 0; i < worked->panels_count; i++) {
        const struct muslin_panel *panel = &worked->panels[i];
        const double depth = depth_of(panel) * share;
        cairo_new_path(cairo);
        cairo_rectangle(cairo, backing->is_along ? at : 0, backing->is_along ? 0 : at,
                        backing->is_along ? depth : backing->width, backing->is_along ? backing->height : depth);
        cairo_path_t *path = cairo_copy_path(cairo);
        fill_pale(cairo);
        cairo_append_path(cairo, path);
        cairo_path_destroy(path);
        stroke_thin(cairo);
        draw_joins(backing, panel, at, depth);
        at += depth;
    }
}

static void label_panels(const struct backing *backing)
{
    const struct worked *worked = backing->canvas->worked;
    const double share = share_of(backing);
    double at = 0;
    for (size_t i = 0; i < worked->panels_count; i++) {
        const double depth = depth_of(&worked->panels[i]) * share;
        label_panel(backing, &worked->panels[i], at, depth);
        at += depth;
    }
}

/* In the middle of the backing. */
static void draw_laid(const struct backing *backing, muslin_len width, muslin_len length, double dash, double gap)
{
    const double across = (double)width * backing->unit;
    const double down = (double)length * backing->unit;
    cairo_new_path(backing->canvas->cairo);
    cairo_rectangle(backing->canvas->cairo, (backing->width - across) / 2, (backing->height - down) / 2, across, down);
    stroke_dashed(backing->canvas->cairo, dash, gap);
}

static void draw_sample(cairo_t *cairo, double y, double dash, double gap)
{
    cairo_move_to(cairo, 0, y + 5);
    cairo_line_to(cairo, 24, y + 5);
    stroke_dashed(cairo, dash, gap);
}

static void say_lines(const struct backing *backing)
{
    const struct worked *worked = backing->canvas->worked;
    cairo_t *cairo = backing->canvas->cairo;
    char text[WORD_ROOM];
    char words[2 * WORD_ROOM];
    double y = backing->height + 30;
    draw_sample(cairo, y, 5, 3);
    snprintf(words, sizeof words, "quilt, finished: %s",
             measured_by(worked, worked->top.finished_width, worked->top.finished_height, text));
    y += write_wrapped(cairo, 30, y, 250, words, SMALL_SIZE) + 2;
    if (worked->design->has_batting) {
        draw_sample(cairo, y, 1, 2);
        snprintf(words, sizeof words, "%s, cut: %s", worked->design->pattern->words[WORD_BATTING],
                 at_least_by(worked, worked->batting.width, worked->batting.length, text));
        y += write_wrapped(cairo, 30, y, 250, words, SMALL_SIZE) + 2;
    }
    snprintf(words, sizeof words, "backing needed: %s at least; trim what is more",
             at_least_by(worked, backing->row->needed_width, backing->row->needed_length, text));
    write_wrapped(cairo, 30, y, 250, words, SMALL_SIZE);
}

void draw_backing(const struct canvas *canvas)
{
    const struct worked *worked = canvas->worked;
    struct backing backing = { .canvas = canvas };
    char text[WORD_ROOM];
    char words[WORD_ROOM + 16];
    if (worked->backings_count == 0)
        return;
    backing.row = &worked->backings[0];
    backing.is_along = backing.row->layout % 2 == 1;
    backing.unit = fmin(fmin(300, canvas->width - 70) / (double)backing.row->joined_width,
                        fmin(320, canvas->height - 90) / (double)backing.row->joined_length);
    backing.width = (double)backing.row->joined_width * backing.unit;
    backing.height = (double)backing.row->joined_length * backing.unit;
    draw_panels(&backing);
    if (worked->design->has_batting)
        draw_laid(&backing, worked->batting.width, worked->batting.length, 1, 2);
    draw_laid(&backing, worked->top.finished_width, worked->top.finished_height, 5, 3);
    label_panels(&backing);
    snprintf(words, sizeof words, "%s as sewn", at_least(worked, backing.row->joined_width, text));
    dimension_across(canvas->cairo, 0, backing.width, backing.height + 12, words);
    snprintf(words, sizeof words, "%s\nas sewn", at_least(worked, backing.row->joined_length, text));
    dimension_down(canvas->cairo, backing.width + 10, 0, backing.height, words);
    say_lines(&backing);
}
