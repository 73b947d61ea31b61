/* hatch.c - lines of a hatching over cloth of any shape.
 *
 * SPDX-License-Identifier: MIT
 *
 * Each line is drawn only where it lies on the cloth, found by its crossings with the outlines: a clip would take far
 * longer to draw and to print. All lines lie in a grid that is the same for all of a picture, so that pieces of one
 * fabric run into each other. */
#include <math.h>
#include <stdlib.h>

#include "hatch.h"

/* Where a line of the hatching enters the cloth, or leaves it. */
struct crossing {
    int line;
    int turn; /* +1 or -1 */
    double at;
};

struct crossings {
    struct crossing *rows;
    size_t used;
    size_t room;
};

/* A hatching that lies level: the drawing is turned by its angle. */
struct level {
    const struct hatch *hatch;
    double cosine;
    double sine;
};

/* ---- crossings --------------------------------------------------------------------------------------------------- */

static struct hatch_spot turned(const struct level *level, double x, double y)
{
    return (struct hatch_spot){ x * level->cosine + y * level->sine, y * level->cosine - x * level->sine };
}

static void add_crossing(struct crossings *crossings, struct crossing crossing)
{
    if (crossings->used == crossings->room) {
        crossings->room = 2 * crossings->room + 256;
        crossings->rows = kept(realloc(crossings->rows, crossings->room * sizeof *crossings->rows));
    }
    crossings->rows[crossings->used++] = crossing;
}

/* The lines from the upper end of an edge on, but not one through its lower end. */
static void cross_edge(struct crossings *crossings, const struct hatch *hatch, struct hatch_spot a, struct hatch_spot b)
{
    const int turn = a.y < b.y ? 1 : -1;
    const double top = fmin(a.y, b.y), bottom = fmax(a.y, b.y);
    for (int line = (int)ceil(top / hatch->apart); line * hatch->apart < bottom; line++) {
        const double share = (line * hatch->apart - a.y) / (b.y - a.y);
        add_crossing(crossings, (struct crossing){ line, turn, a.x + share * (b.x - a.x) });
    }
}

static void cross_path(struct crossings *crossings, const struct level *level, const cairo_path_t *path)
{
    struct hatch_spot begin = { 0, 0 }, at = { 0, 0 };
    for (int i = 0; i < path->num_data; i += path->data[i].header.length) {
        const cairo_path_data_t *data = &path->data[i];
        struct hatch_spot next = begin;
        if (data->header.type != CAIRO_PATH_CLOSE_PATH)
            next = turned(level, data[1].point.x, data[1].point.y);
        if (data->header.type == CAIRO_PATH_MOVE_TO)
            begin = next;
        else
            cross_edge(crossings, level->hatch, at, next);
        at = next;
    }
}

static int compare(const void *left, const void *right)
{
    const struct crossing *a = left, *b = right;
    if (a->line != b->line)
        return a->line < b->line ? -1 : 1;
    return a->at < b->at ? -1 : a->at > b->at;
}

/* ---- lines ------------------------------------------------------------------------------------------------------- */

static bool has_dots(const struct hatch *hatch)
{
    return hatch->dash > 0 && hatch->dash < 1;
}

static double turn_of(const struct hatch *hatch)
{
    return has_dots(hatch) ? hatch->apart : 2 * hatch->dash;
}

static void trace_stretch(cairo_t *cairo, const struct level *level, double y, double from, double to)
{
    const struct level back = { level->hatch, level->cosine, -level->sine };
    const struct hatch_spot a = turned(&back, from, y), b = turned(&back, to, y);
    cairo_move_to(cairo, a.x, a.y);
    cairo_line_to(cairo, b.x, b.y);
}

/* Dashes lie in the grid too, those of every second line half a turn later: what begins within a dash has the rest of
 * it before the others. */
static void trace_line(cairo_t *cairo, const struct level *level, int line, double from, double to)
{
    const double y = line * level->hatch->apart;
    if (level->hatch->dash <= 0) {
        trace_stretch(cairo, level, y, from, to);
        return;
    }
    const double turn = turn_of(level->hatch);
    const double later = (line & 1) != 0 ? turn / 2 : 0;
    const double first = ceil((from - later) / turn) * turn + later;
    const double last = floor((to - later) / turn) * turn + later;
    const double before = first - turn + level->hatch->dash;
    if (before > from && !has_dots(level->hatch))
        trace_stretch(cairo, level, y, from, fmin(before, to));
    if (first < to)
        trace_stretch(cairo, level, y, first, fmin(to, last + level->hatch->dash));
}

/* Ends lie below seams, which are wider than this. In a grid there are fewer numbers to print: files are smaller. */
static double snapped(double at)
{
    const double steps = 2; /* a point */
    return round(at * steps) / steps;
}

/* From where the cloth begins to where it ends: pieces side by side are one stretch. What is hardly seen between two
 * seams is left out. */
static void trace_crossings(cairo_t *cairo, const struct level *level, const struct crossings *crossings)
{
    const double hair = 0.05, least = 1.3;
    const struct crossing *rows = crossings->rows;
    for (size_t i = 0; i < crossings->used;) {
        const size_t first = i;
        int inside = 0;
        do
            inside += rows[i++].turn;
        while (i < crossings->used && rows[i].line == rows[first].line &&
               (inside != 0 || rows[i].at < rows[i - 1].at + hair));
        if (rows[i - 1].at > rows[first].at + least)
            trace_line(cairo, level, rows[first].line, snapped(rows[first].at), snapped(rows[i - 1].at));
    }
}

void hatch_trace(cairo_t *cairo, const struct hatch *hatch, const cairo_path_t *cloth)
{
    const double angle = hatch->angle * acos(-1) / 180;
    const struct level level = { hatch, cos(angle), sin(angle) };
    struct crossings crossings = { NULL, 0, 0 };
    if (hatch->apart <= 0)
        return;
    cross_path(&crossings, &level, cloth);
    if (crossings.used > 0)
        qsort(crossings.rows, crossings.used, sizeof *crossings.rows, compare);
    trace_crossings(cairo, &level, &crossings);
    free(crossings.rows);
}

void hatch_stroke(cairo_t *cairo, const struct hatch *hatch)
{
    const double dashes[] = { hatch->dash, turn_of(hatch) - hatch->dash };
    cairo_save(cairo);
    cairo_set_line_width(cairo, has_dots(hatch) ? 1.2 : 0.6);
    cairo_set_line_cap(cairo, has_dots(hatch) ? CAIRO_LINE_CAP_ROUND : CAIRO_LINE_CAP_BUTT);
    if (hatch->dash > 0)
        cairo_set_dash(cairo, dashes, 2, 0);
    cairo_stroke(cairo);
    cairo_restore(cairo);
}
