/* draw_strip_set.c - strips sewn into a set and cut across: widths, pressing, ends trimmed, fold kept clear, segments.
 *
 * SPDX-License-Identifier: MIT
 *
 * Strips lie as their patches do in the top: side by side from the left, or one below the other. Along the strips it is
 * drawn to one scale, across them to a larger one, so that there is room for words. */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>

#include "picture.h"

enum { LONG = 230, STRIP_LEAST = 22, WIDE = 170 };

struct set {
    const struct canvas *canvas;
    muslin_id node;
    const struct muslin_strip_set *row;
    bool is_standing; /* strips stand side by side */
    muslin_id *strips;
    size_t count;
    double along;     /* points a tick along the strips */
    double across;
    double length;
};

static const struct muslin_strip_set *row_of_set(const struct worked *worked, muslin_id node)
{
    for (size_t i = 0; i < worked->sets_count; i++)
        if (worked->sets[i].node == node)
            return &worked->sets[i];
    return NULL;
}

static struct lying strip_of(const struct set *set, size_t i)
{
    return lying_at(set->canvas->worked, set->node, i, set->strips[i]);
}

static muslin_len cut_across(const struct set *set, size_t i)
{
    const int64_t cut = cut_of_strip(set->canvas->worked, set->node, strip_of(set, i).node);
    return cut < 0 ? set->row->segment_cut : set->canvas->worked->cuts[cut].cut_height;
}

/* Wide enough for words, and no wider. */
static double scale_across(const struct set *set)
{
    muslin_len least = MUSLIN_LENGTH_MAX;
    double all = 0;
    double words = STRIP_LEAST;
    char text[WORD_ROOM];
    for (size_t i = 0; i < set->count; i++) {
        const muslin_len width = cut_across(set, i);
        const char *size = measured(set->canvas->worked, width, text);
        words = set->is_standing ? fmax(words, words_room(size, SMALL_SIZE).width + 5) : words;
        least = width < least ? width : least;
        all += (double)width;
    }
    const double room = set->is_standing ? set->canvas->width - 60 : set->canvas->height * 0.6;
    return fmin(fmax(words / (double)least, WIDE / all * 0.5), room / all);
}

/* A box along the strips and across them. */
static void trace_box(const struct set *set, double along, double across, double length, double width)
{
    if (set->is_standing)
        cairo_rectangle(set->canvas->cairo, across, along, width, length);
    else
        cairo_rectangle(set->canvas->cairo, along, across, length, width);
}

static void trace_across(const struct set *set, double along, double width)
{
    cairo_move_to(set->canvas->cairo, set->is_standing ? 0 : along, set->is_standing ? along : 0);
    cairo_line_to(set->canvas->cairo, set->is_standing ? width : along, set->is_standing ? along : width);
}

/* ---- strips ------------------------------------------------------------------------------------------------------ */

/* Before the end of the strip: fabric, number, cut width. */
static void label_strip(const struct set *set, size_t i, double across, double width)
{
    const struct worked *worked = set->canvas->worked;
    const int64_t cut = cut_of_strip(worked, set->node, strip_of(set, i).node);
    const double middle = across + width / 2;
    char text[WORD_ROOM];
    char words[2 * WORD_ROOM];
    if (cut < 0)
        return;
    const char *letter = cloth_of(worked->design, worked->cuts[cut].fabric)->letter;
    const char *size = measured(worked, worked->cuts[cut].cut_height, text);
    snprintf(words, sizeof words, set->is_standing ? "[%d]\n%s\ncut" : "[%d]  %s cut", worked->piece[cut], size);
    if (set->is_standing) {
        double size_of_words = SMALL_SIZE;
        while (size_of_words > 4 && words_room(words, size_of_words).width > width - 2)
            size_of_words -= 0.5;
        const struct room room = words_room(words, size_of_words);
        write_words(set->canvas->cairo, middle, -4 - room.height / 2, words, size_of_words, PLATE_NONE);
        write_words(set->canvas->cairo, middle, -12 - room.height, letter, SMALL_SIZE, PLATE_RING);
    } else {
        write_words(set->canvas->cairo, -10, middle, letter, SMALL_SIZE, PLATE_RING);
        write_up_to(set->canvas->cairo, -19, middle, words, SMALL_SIZE);
    }
}

/* Beyond the far end, so that it is not lost in the cloth. */
static void draw_pressing(const struct set *set, size_t seam, double across)
{
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(set->canvas->worked, set->node, &count);
    const double end = set->length + 9;
    if (seam >= count)
        return;
    trace_across(set, set->length, 0);
    cairo_new_path(set->canvas->cairo);
    if (set->is_standing)
        draw_pressed(set->canvas->cairo, across, end, seams[seam].press, acos(-1) / 2, 8);
    else
        draw_pressed(set->canvas->cairo, end, across, seams[seam].press, 0, 8);
}

static double draw_strips(const struct set *set)
{
    double across = 0;
    for (size_t i = 0; i < set->count; i++) {
        const double width = (double)cut_across(set, i) * set->across;
        const int64_t cut = cut_of_strip(set->canvas->worked, set->node, strip_of(set, i).node);
        cairo_new_path(set->canvas->cairo);
        trace_box(set, 0, across, set->length, width);
        if (cut >= 0)
            fill_cloth(set->canvas->cairo, set->canvas->worked->design, set->canvas->worked->cuts[cut].fabric);
        trace_box(set, 0, across, set->length, width);
        stroke_seam(set->canvas->cairo);
        label_strip(set, i, across, width);
        if (i > 0)
            draw_pressing(set, i - 1, across);
        across += width;
    }
    return across;
}

/* ---- segments ---------------------------------------------------------------------------------------------------- */

static void strike_end(const struct set *set, double along, double length, double width)
{
    trace_box(set, along, 0, length, width);
    fill_left_over(set->canvas->cairo);
    trace_box(set, along, 0, length, width);
    stroke_thin(set->canvas->cairo);
}

/* Cuts are white with a black core, so that they are seen on any cloth. */
static void draw_cut(const struct set *set, double along, double width)
{
    cairo_t *cairo = set->canvas->cairo;
    trace_across(set, along, width);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 2.4);
    cairo_stroke_preserve(cairo);
    stroke_dashed(cairo, 3, 2);
}

/* From one end, or half of them from each end towards the fold. */
static double draw_segments(const struct set *set, double width)
{
    const struct muslin_solve_spec *solve = &set->canvas->worked->design->solve;
    const double trim = (double)solve->end_trim * set->along;
    const double segment = (double)set->row->segment_cut * set->along;
    const bool from_both = solve->fold_clear > 0;
    const int64_t here = from_both ? set->row->segments_per_set / 2 : set->row->segments_per_set;
    const double clear = (double)solve->fold_clear * set->along;
    if (from_both)
        strike_end(set, (set->length - clear) / 2, clear, width);
    if (trim > 0) {
        strike_end(set, 0, trim, width);
        strike_end(set, set->length - trim, trim, width);
    }
    for (int64_t i = 0; i <= here; i++)
        draw_cut(set, trim + (double)i * segment, width);
    for (int64_t i = 0; from_both && i <= here; i++)
        draw_cut(set, set->length - trim - (double)i * segment, width);
    return trim;
}

/* Beside standing strips, below lying ones: how wide a segment is cut, how many a set gives. */
static void say_segments(const struct set *set, double trim, double width)
{
    const struct worked *worked = set->canvas->worked;
    const double end = trim + (double)set->row->segment_cut * set->along;
    char text[WORD_ROOM];
    char words[4 * WORD_ROOM];
    snprintf(words, sizeof words, "%s cut", measured(worked, set->row->segment_cut, text));
    if (set->is_standing)
        dimension_down(set->canvas->cairo, width + 10, trim, end, words);
    else
        dimension_across(set->canvas->cairo, trim, end, width + 10, words);
    if (is_small(set->canvas))
        return;
    size_t used = (size_t)snprintf(words, sizeof words, "a set gives %" PRId64 " segments\n%" PRId64 " set%s, %" PRId64
                                   " needed", set->row->segments_per_set, set->row->sets,
                                   set->row->sets == 1 ? "" : "s", set->row->segments);
    if (worked->design->solve.fold_clear > 0)
        used += (size_t)snprintf(words + used, sizeof words - used, "\nshaded in the middle: fold, kept clear");
    if (worked->design->solve.end_trim > 0)
        snprintf(words + used, sizeof words - used, "\nshaded ends: trimmed, %s each",
                 measured(worked, worked->design->solve.end_trim, text));
    if (set->is_standing)
        write_wrapped(set->canvas->cairo, 0, set->length + 40, fmax(180, width), words, SMALL_SIZE);
    else
        write_wrapped(set->canvas->cairo, 0, width + 32, 260, words, SMALL_SIZE);
}

/* Over standing strips, beside lying ones: how wide the set is. */
static void say_width(const struct set *set, double width)
{
    char text[WORD_ROOM];
    char words[WORD_ROOM + 24];
    snprintf(words, sizeof words, "set %s unfinished", measured(set->canvas->worked, set->row->set_unfinished, text));
    if (set->is_standing)
        dimension_across(set->canvas->cairo, 0, width, set->length + 24, words);
    else
        dimension_down(set->canvas->cairo, set->length + 24, 0, width, words);
}

void draw_strip_set(const struct canvas *canvas, muslin_id node)
{
    struct set set = { canvas, node, row_of_set(canvas->worked, node), false, NULL, 0, 0, 0, 0 };
    if (set.row == NULL)
        return;
    set.is_standing = node_of(canvas->worked, node).axis == MUSLIN_ACROSS;
    set.strips = children_of(canvas->worked, node, &set.count);
    set.across = scale_across(&set);
    set.length = set.is_standing ? fmax(60, fmin(LONG, canvas->height - (is_small(canvas) ? 85 : 130)))
                                 : fmax(60, fmin(300, canvas->width - (is_small(canvas) ? 110 : 190)));
    set.along = set.length / (double)set.row->strip_length;
    const double width = draw_strips(&set);
    const double trim = draw_segments(&set, width);
    say_segments(&set, trim, width);
    say_width(&set, width);
    free(set.strips);
}
