/* patches.c - patches of a node on paper: read from the library, scaled, filled, written in.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "patches.h"

/* ---- read -------------------------------------------------------------------------------------------------------- */

enum { PAGE = 64, PAGE_CORNERS = PAGE * 80 };

static void *more(void *rows, size_t count, size_t size)
{
    return kept(realloc(rows, (count + 1) * size));
}

/* Adds as many outlines as a page holds; returns how many are left after them. */
static size_t read_page(const struct worked *worked, muslin_id node, int32_t stage, struct patches *patches)
{
    size_t left;
    size_t given;
    patches->rows = more(patches->rows, patches->count + PAGE, sizeof *patches->rows);
    patches->corners = more(patches->corners, patches->corners_count + PAGE_CORNERS, sizeof *patches->corners);
    struct muslin_outline *rows = patches->rows + patches->count;
    must(muslin_solution_outlines(worked->solution, node, stage, (int64_t)patches->count, rows, sizeof *rows, PAGE,
                                  patches->corners + patches->corners_count, sizeof *patches->corners, PAGE_CORNERS,
                                  &left, &given, NULL));
    const size_t before = patches->corners_count;
    for (size_t i = 0; i < given; i++) {
        rows[i].first_corner += (int64_t)before;
        patches->corners_count += (size_t)rows[i].corners;
    }
    patches->count += given;
    return left - given;
}

static struct patches read_all(const struct worked *worked, muslin_id node, int32_t stage)
{
    struct patches patches = { .rows = NULL };
    while (read_page(worked, node, stage, &patches) > 0) {
    }
    return patches;
}

/* ---- kept -------------------------------------------------------------------------------------------------------- */

struct whose whose(const struct worked *worked)
{
    return (struct whose){ worked, worked->totals, worked->top };
}

bool is_whose(const struct whose *whose, const struct worked *worked)
{
    return whose->worked == worked && memcmp(&whose->totals, &worked->totals, sizeof worked->totals) == 0 &&
           memcmp(&whose->top, &worked->top, sizeof worked->top) == 0;
}

/* What was read last: each picture is drawn twice at least, once to see how far it reaches. */
struct kept_patches {
    struct whose whose;
    muslin_id node;
    int32_t stage;
    struct patches patches;
};

static void *copy(const void *rows, size_t count, size_t size)
{
    void *made = rows_for(count, size);
    if (count > 0)
        memcpy(made, rows, count * size);
    return made;
}

static struct patches copy_of(const struct patches *patches)
{
    return (struct patches){ copy(patches->rows, patches->count, sizeof *patches->rows),
                             copy(patches->corners, patches->corners_count, sizeof *patches->corners), patches->count,
                             patches->corners_count };
}

struct patches patches_of(const struct worked *worked, muslin_id node, int32_t stage)
{
    enum { KEPT = 64 };
    static _Thread_local struct kept_patches all_kept[KEPT];
    static _Thread_local size_t next;
    for (size_t i = 0; i < KEPT; i++)
        if (all_kept[i].node == node && all_kept[i].stage == stage && is_whose(&all_kept[i].whose, worked))
            return copy_of(&all_kept[i].patches);
    struct patches patches = read_all(worked, node, stage);
    struct kept_patches *place = &all_kept[next];
    patches_free(&place->patches);
    *place = (struct kept_patches){ whose(worked), node, stage, copy_of(&patches) };
    next = (next + 1) % KEPT;
    return patches;
}

void patches_free(struct patches *patches)
{
    free(patches->rows);
    free(patches->corners);
}

/* ---- where they lie ---------------------------------------------------------------------------------------------- */

double view_x(const struct view *view, muslin_len x)
{
    return view->x + (double)x * view->unit;
}

double view_y(const struct view *view, muslin_len y)
{
    return view->y - (double)y * view->unit;
}

struct spot corner_of(const struct patches *patches, size_t row, int64_t corner, const struct view *view)
{
    const struct muslin_outline *patch = &patches->rows[row];
    const struct muslin_outline_corner *at = patches->corners + patch->first_corner + corner % patch->corners;
    return (struct spot){ view_x(view, at->x), view_y(view, at->y) };
}

struct box box_of(const struct patches *patches, size_t first, size_t end, const struct view *view)
{
    struct box box = { HUGE_VAL, -HUGE_VAL, HUGE_VAL, -HUGE_VAL };
    for (size_t row = first; row < end; row++)
        for (int64_t i = 0; i < patches->rows[row].corners; i++) {
            const struct spot spot = corner_of(patches, row, i, view);
            box.left = fmin(box.left, spot.x);
            box.right = fmax(box.right, spot.x);
            box.top = fmin(box.top, spot.y);
            box.bottom = fmax(box.bottom, spot.y);
        }
    return box;
}

struct spot middle_of(const struct patches *patches, size_t row, const struct view *view)
{
    double area = 0;
    struct spot sum = { 0, 0 };
    if (patches->rows[row].corners == 0)
        return sum;
    const struct spot origin = corner_of(patches, row, 0, view);
    for (int64_t i = 1; i + 1 < patches->rows[row].corners; i++) {
        const struct spot a = corner_of(patches, row, i, view);
        const struct spot b = corner_of(patches, row, i + 1, view);
        const double part = (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
        sum.x += part * (a.x + b.x + origin.x) / 3;
        sum.y += part * (a.y + b.y + origin.y) / 3;
        area += part;
    }
    return area == 0 ? origin : (struct spot){ sum.x / area, sum.y / area };
}

/* ---- drawn ------------------------------------------------------------------------------------------------------- */

static void trace_moved(cairo_t *cairo, const struct patches *patches, size_t row, const struct view *view,
                        struct spot moved)
{
    for (int64_t i = 0; i < patches->rows[row].corners; i++) {
        const struct spot spot = corner_of(patches, row, i, view);
        if (i == 0)
            cairo_move_to(cairo, spot.x + moved.x, spot.y + moved.y);
        else
            cairo_line_to(cairo, spot.x + moved.x, spot.y + moved.y);
    }
    cairo_close_path(cairo);
}

void trace_patch(cairo_t *cairo, const struct patches *patches, size_t row, const struct view *view)
{
    if (patches->rows[row].corners > 0)
        trace_moved(cairo, patches, row, view, (struct spot){ 0, 0 });
}

/* All patches of a fabric at once, so that its hatching runs on from one to the next; or of all. */
static void trace_some(cairo_t *cairo, const struct patches *patches, size_t first, size_t end,
                       const struct view *view, const struct spot *moved, muslin_id fabric)
{
    cairo_new_path(cairo);
    for (size_t row = first; row < end; row++)
        if (patches->rows[row].corners > 0 && (fabric == 0 || patches->rows[row].fabric == fabric))
            trace_moved(cairo, patches, row, view, moved == NULL ? (struct spot){ 0, 0 } : moved[row]);
}

static void trace_edges(cairo_t *cairo, const struct patches *patches, size_t first, size_t end,
                        const struct view *view, const struct spot *moved)
{
    cairo_new_path(cairo);
    if (!trace_seams(cairo, patches, first, end, view, moved))
        trace_some(cairo, patches, first, end, view, moved, 0);
}

/* Whether patches are so small, one with the other, that hatchings and plain seams would blacken them. */
static bool are_tiny(const struct patches *patches, size_t first, size_t end, const struct view *view)
{
    const double least = 6;
    const struct box box = box_of(patches, first, end, view);
    return (box.right - box.left) * (box.bottom - box.top) < least * least * (double)(end - first);
}

void draw_patches(cairo_t *cairo, const struct worked *worked, const struct patches *patches, size_t first, size_t end,
                  const struct view *view, const struct spot *moved)
{
    const bool tiny = are_tiny(patches, first, end, view);
    for (size_t i = 0; i < worked->design->cloths_used; i++) {
        trace_some(cairo, patches, first, end, view, moved, worked->design->cloths[i].id);
        (tiny ? fill_plain : fill_cloth)(cairo, worked->design, worked->design->cloths[i].id);
    }
    trace_edges(cairo, patches, first, end, view, moved);
    (tiny ? stroke_fine_seam : stroke_seam)(cairo);
}

void outline_patches(cairo_t *cairo, const struct patches *patches, const struct view *view)
{
    trace_edges(cairo, patches, 0, patches->count, view, NULL);
    cairo_save(cairo);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_ROUND);
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_ROUND);
    stroke_thin(cairo);
    cairo_restore(cairo);
}

/* ---- words in them ----------------------------------------------------------------------------------------------- */

/* Whether a spot lies within a patch, whose corners run the same way round. */
static bool holds(const struct patches *patches, size_t row, const struct view *view, double x, double y)
{
    bool is_inside = false;
    const int64_t count = patches->rows[row].corners;
    for (int64_t i = 0; i < count; i++) {
        const struct spot a = corner_of(patches, row, i, view);
        const struct spot b = corner_of(patches, row, i + 1, view);
        if ((a.y > y) != (b.y > y) && x < (b.x - a.x) * (y - a.y) / (b.y - a.y) + a.x)
            is_inside = !is_inside;
    }
    return is_inside;
}

static bool has_room(const struct patches *patches, size_t row, const struct view *view, struct spot at,
                     struct room room)
{
    const double x = room.width / 2 + 0.5;
    const double y = room.height / 2 - 0.5;
    return holds(patches, row, view, at.x - x, at.y - y) && holds(patches, row, view, at.x + x, at.y - y) &&
           holds(patches, row, view, at.x - x, at.y + y) && holds(patches, row, view, at.x + x, at.y + y);
}

bool write_in_patch(cairo_t *cairo, const struct patches *patches, size_t row, const struct view *view,
                    struct spot moved, const char *words, double size)
{
    const struct spot at = middle_of(patches, row, view);
    for (; size >= SMALL_SIZE; size -= 0.5)
        if (has_room(patches, row, view, at, plate_room(words, size, PLATE_BOX))) {
            write_words(cairo, at.x + moved.x, at.y + moved.y, words, size, PLATE_BOX);
            return true;
        }
    return false;
}
