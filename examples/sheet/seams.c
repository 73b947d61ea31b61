/* seams.c - edges of patches as few lines: what two patches share is one, and what goes on from patch to patch too.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>

#include "patches.h"

/* An edge on its line: how that lies, how far from the origin, and from where to where on it, left to right. */
struct edge {
    int64_t angle;  /* of 1/10000 */
    int64_t beside; /* of 1/100 pt */
    double from;
    double to;
    struct spot start;
    struct spot end;
};

static struct edge edge_between(struct spot a, struct spot b)
{
    const bool is_back = fabs(a.x - b.x) < 1e-6 ? b.y < a.y : b.x < a.x;
    struct edge edge = { .start = is_back ? b : a, .end = is_back ? a : b };
    const double angle = atan2(edge.end.y - edge.start.y, edge.end.x - edge.start.x);
    edge.angle = llround(angle * 1e4);
    edge.beside = llround((edge.start.y * cos(angle) - edge.start.x * sin(angle)) * 100);
    edge.from = edge.start.x * cos(angle) + edge.start.y * sin(angle);
    edge.to = edge.end.x * cos(angle) + edge.end.y * sin(angle);
    return edge;
}

static int compare(const void *left, const void *right)
{
    const struct edge *a = left, *b = right;
    if (a->angle != b->angle)
        return a->angle < b->angle ? -1 : 1;
    if (a->beside != b->beside)
        return a->beside < b->beside ? -1 : 1;
    return a->from < b->from ? -1 : a->from > b->from;
}

static size_t read_edges(const struct patches *patches, size_t first, size_t end, const struct view *view,
                         const struct spot *moved, struct edge *edges)
{
    size_t used = 0;
    for (size_t row = first; row < end; row++)
        for (int64_t i = 0; i < patches->rows[row].corners; i++) {
            struct spot a = corner_of(patches, row, i, view), b = corner_of(patches, row, i + 1, view);
            if (moved != NULL) {
                a = (struct spot){ a.x + moved[row].x, a.y + moved[row].y };
                b = (struct spot){ b.x + moved[row].x, b.y + moved[row].y };
            }
            edges[used++] = edge_between(a, b);
        }
    return used;
}

/* Makes whole lines of edges that follow each other on one; tells how many there are then. */
static size_t join_edges(struct edge *edges, size_t count)
{
    const double hair = 0.01;
    size_t used = 0;
    qsort(edges, count, sizeof *edges, compare);
    for (size_t i = 0; i < count; i++) {
        struct edge *last = used > 0 ? &edges[used - 1] : NULL;
        if (last == NULL || edges[i].angle != last->angle || edges[i].beside != last->beside ||
            edges[i].from > last->to + hair)
            edges[used++] = edges[i];
        else if (edges[i].to > last->to) {
            last->to = edges[i].to;
            last->end = edges[i].end;
        }
    }
    return used;
}

bool trace_seams(cairo_t *cairo, const struct patches *patches, size_t first, size_t end, const struct view *view,
                 const struct spot *moved)
{
    struct edge *edges = rows_for(patches->corners_count, sizeof *edges);
    const size_t count = read_edges(patches, first, end, view, moved, edges);
    const size_t lines = join_edges(edges, count);
    const bool is_shorter = 2 * lines < count;
    for (size_t i = 0; i < lines && is_shorter; i++) {
        cairo_move_to(cairo, edges[i].start.x, edges[i].start.y);
        cairo_line_to(cairo, edges[i].end.x, edges[i].end.y);
    }
    free(edges);
    return is_shorter;
}
