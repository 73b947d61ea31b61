/* draw_borders.c - the top with its borders, numbered in the order in which they are sewn on, and what each is cut.
 *
 * SPDX-License-Identifier: MIT */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "picture.h"

enum { LIST = 190, LINES_MOST = 3, WORDS = 400, NUMBER_OUT = 11, AROUND = 20 };

/* What is sewn on: a strip, or a row with its corners. */
struct strip {
    muslin_id node; /* 0: a piece of the node itself, set in */
    size_t first;
    size_t end;
    int level;      /* how far in */
};

struct borders {
    const struct canvas *canvas;
    struct patches patches;
    int64_t *cuts;
    struct strip *strips;
    size_t count;
    size_t centre_first;
    size_t centre_end;
};

/* ---- found ------------------------------------------------------------------------------------------------------- */

static void add_strip(struct borders *borders, muslin_id node, size_t first, size_t end, int level)
{
    borders->strips[borders->count++] = (struct strip){ node, first, end, level };
}

/* What lies beside the way to the centre in one node; the way then goes on in its child. */
static muslin_id go_inwards(struct borders *borders, muslin_id node, size_t step, int level)
{
    const struct worked *worked = borders->canvas->worked;
    size_t count;
    muslin_id *children = children_of(worked, node, &count);
    size_t first = borders->centre_first;
    const size_t own = own_patches(node, &borders->patches, first, borders->centre_end);
    for (size_t i = 0; i < own; i++, first++)
        add_strip(borders, 0, first, first + 1, level);
    for (size_t i = 0; i < count; i++) {
        const size_t end = first + patches_in(worked, children[i]);
        if (i != step)
            add_strip(borders, lying_at(worked, node, i, children[i]).node, first, end, level);
        else {
            borders->centre_first = first;
            borders->centre_end = end;
        }
        first = end;
    }
    const muslin_id inwards = children[step];
    free(children);
    return inwards;
}

static void find_strips(struct borders *borders)
{
    const struct worked *worked = borders->canvas->worked;
    size_t count;
    must(muslin_solution_path(worked->solution, worked->design->centre, NULL, 0, &count, NULL));
    int64_t *path = rows_for(count, sizeof *path);
    borders->strips = rows_for(borders->patches.count, sizeof *borders->strips);
    must(muslin_solution_path(worked->solution, worked->design->centre, path, count, &count, NULL));
    muslin_id node = worked->design->top;
    borders->centre_end = borders->patches.count;
    for (size_t i = 0; i < count; i++)
        node = go_inwards(borders, node, (size_t)path[i], (int)i);
    free(path);
}

/* The innermost is sewn first; of those that are sewn on alike, in their order. */
static void put_in_order(struct borders *borders)
{
    for (size_t i = 1; i < borders->count; i++)
        for (size_t k = i; k > 0 && borders->strips[k].level > borders->strips[k - 1].level; k--) {
            const struct strip swapped = borders->strips[k];
            borders->strips[k] = borders->strips[k - 1];
            borders->strips[k - 1] = swapped;
        }
}

/* ---- listed ------------------------------------------------------------------------------------------------------ */

static bool is_told(const struct borders *borders, const struct strip *strip, size_t row)
{
    for (size_t i = strip->first; i < row; i++)
        if (borders->cuts[i] == borders->cuts[row])
            return true;
    return false;
}

/* What it is cut from; of a strip that is pieced of many pieces its letter. */
static void describe(const struct borders *borders, const struct strip *strip, char words[WORDS])
{
    const struct worked *worked = borders->canvas->worked;
    char text[WORD_ROOM];
    size_t used = 0;
    int told = 0;
    words[0] = '\0';
    for (size_t row = strip->first; row < strip->end; row++) {
        if (borders->cuts[row] < 0 || is_told(borders, strip, row))
            continue;
        const struct muslin_solution_cut *cut = &worked->cuts[borders->cuts[row]];
        const struct cloth *cloth = cloth_of(worked->design, cut->fabric);
        if (++told > LINES_MOST)
            break;
        measured_by(worked, cut_length(worked, (size_t)borders->cuts[row]), cut->cut_height, text);
        used += (size_t)snprintf(words + used, WORDS - used, "%s[%d] %s %s, cut %s", used > 0 ? "; " : "",
                                 worked->piece[borders->cuts[row]], worked->design->pattern->words[WORD_FABRIC],
                                 cloth->letter, text);
    }
    if (told > LINES_MOST || told == 0)
        snprintf(words, WORDS, "pieced: %s", part_name(worked, strip->node, false, text));
}

static void list_strips(const struct borders *borders, double x, double y, double width)
{
    for (size_t i = 0, next; i < borders->count; i = next) {
        char words[WORDS];
        char other[WORDS];
        char line[WORDS + 160];
        size_t used = (size_t)snprintf(line, sizeof line, "%zu", i + 1);
        describe(borders, &borders->strips[i], words);
        for (next = i + 1; next < borders->count; next++) {
            describe(borders, &borders->strips[next], other);
            if (strcmp(words, other) != 0 || used > 100)
                break;
            used += (size_t)snprintf(line + used, sizeof line - used, ", %zu", next + 1);
        }
        snprintf(line + used, sizeof line - used, ":  %s", words);
        y += write_wrapped(borders->canvas->cairo, x, y, width, line, SMALL_SIZE) + 4;
    }
}

/* ---- drawn ------------------------------------------------------------------------------------------------------- */

/* The middle is there, and not looked at. */
static void draw_middle(const struct borders *borders, const struct view *view)
{
    cairo_t *cairo = borders->canvas->cairo;
    const struct box box = box_of(&borders->patches, borders->centre_first, borders->centre_end, view);
    draw_patches(cairo, borders->canvas->worked, &borders->patches, borders->centre_first, borders->centre_end, view,
                 NULL);
    cairo_rectangle(cairo, box.left, box.top, box.right - box.left, box.bottom - box.top);
    cairo_set_source_rgba(cairo, 1, 1, 1, 0.7);
    cairo_fill_preserve(cairo);
    stroke_thin(cairo);
}

enum side { SIDE_LEFT, SIDE_RIGHT, SIDE_TOP, SIDE_BOTTOM };

static enum side side_of(const struct box *strip, const struct box *all)
{
    const double x = (strip->left + strip->right - all->left - all->right) / (all->right - all->left);
    const double y = (strip->top + strip->bottom - all->top - all->bottom) / (all->bottom - all->top);
    if (fabs(x) > fabs(y))
        return x < 0 ? SIDE_LEFT : SIDE_RIGHT;
    return y < 0 ? SIDE_TOP : SIDE_BOTTOM;
}

/* Outside, with a line to the strip; beside the numbers that stand at this side already. */
static void lead_out(const struct borders *borders, const struct box *strip, const struct box *all, int *numbers,
                     const char *text)
{
    static const double out[][2] = { { -1, 0 }, { 1, 0 }, { 0, -1 }, { 0, 1 } };
    const enum side side = side_of(strip, all);
    const double aside = 16 * numbers[side]++;
    const bool is_beside = side == SIDE_LEFT || side == SIDE_RIGHT;
    const double x = (strip->left + strip->right) / 2 + (is_beside ? 0 : aside);
    const double y = (strip->top + strip->bottom) / 2 + (is_beside ? aside : 0);
    const double edge_x = side == SIDE_LEFT ? all->left : side == SIDE_RIGHT ? all->right : x;
    const double edge_y = side == SIDE_TOP ? all->top : side == SIDE_BOTTOM ? all->bottom : y;
    draw_lead(borders->canvas->cairo, edge_x + 6 * out[side][0], edge_y + 6 * out[side][1], x, y);
    write_words(borders->canvas->cairo, edge_x + NUMBER_OUT * out[side][0], edge_y + NUMBER_OUT * out[side][1], text,
                TEXT_SIZE, PLATE_BOX);
}

/* Its number on a strip that is wide enough. */
static void draw_strips(const struct borders *borders, const struct view *view)
{
    const struct box all = box_of(&borders->patches, 0, borders->patches.count, view);
    int numbers[4] = { 0, 0, 0, 0 };
    for (size_t i = 0; i < borders->count; i++) {
        const struct strip *strip = &borders->strips[i];
        draw_patches(borders->canvas->cairo, borders->canvas->worked, &borders->patches, strip->first, strip->end, view,
                     NULL);
    }
    for (size_t i = 0; i < borders->count; i++) {
        const struct box box = box_of(&borders->patches, borders->strips[i].first, borders->strips[i].end, view);
        char text[24];
        snprintf(text, sizeof text, "%zu", i + 1);
        const struct room room = plate_room(text, TEXT_SIZE, PLATE_BOX);
        if (room.width + 2 <= box.right - box.left && room.height + 2 <= box.bottom - box.top)
            write_words(borders->canvas->cairo, (box.left + box.right) / 2, (box.top + box.bottom) / 2, text, TEXT_SIZE,
                        PLATE_BOX);
        else
            lead_out(borders, &box, &all, numbers, text);
    }
}

void draw_borders(const struct canvas *canvas)
{
    struct borders borders = { .canvas = canvas };
    const struct worked *worked = canvas->worked;
    const bool is_beside = canvas->width > 2 * LIST;
    const double room = canvas->width - 2 * AROUND - (is_beside ? LIST : 0);
    const struct view view = { 0, 0, unit_for(&worked->top, fmin(room, 300), fmin(canvas->height * 0.7, 300)) };
    borders.patches = patches_of(worked, worked->design->top, MUSLIN_STAGE_FINISHED);
    borders.cuts = cuts_of_patches(worked, worked->design->top, &borders.patches);
    find_strips(&borders);
    put_in_order(&borders);
    draw_middle(&borders, &view);
    draw_strips(&borders, &view);
    const struct box all = box_of(&borders.patches, 0, borders.patches.count, &view);
    if (is_beside)
        list_strips(&borders, all.right + AROUND, all.top, LIST);
    else
        list_strips(&borders, all.left, all.bottom + AROUND, canvas->width - AROUND);
    free(borders.strips);
    free(borders.cuts);
    patches_free(&borders.patches);
}
