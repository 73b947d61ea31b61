/* draw_strip_set.c - strips sewn into a set and cut across: widths, pressing, ends trimmed, fold kept clear, segments.
 *
 * SPDX-License-Identifier: MIT
 *
 * Strips lie as their patches do in the top: side by side from the left, or one below the other. Of many segments the
 * first are shown, to the scale of the strips if there is room, then a break. */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "picture.h"

enum { STRIP_LEAST = 22, WIDE = 85, LONG = 230, SMALL_LONG = 60, STRETCHES = 16, NOTES = 184 };

/* What follows what along the strips. */
enum stretch_kind {
    STRETCH_TRIMMED,
    STRETCH_SEGMENT,
    STRETCH_BREAK, /* more segments */
    STRETCH_FOLD,
    STRETCH_REST
};
struct stretch {
    enum stretch_kind kind;
    double length;
};

struct set {
    const struct canvas *canvas;
    muslin_id node;
    const struct muslin_stripset *row;
    bool is_standing; /* strips stand side by side */
    muslin_id *strips;
    size_t count;
    double across;    /* points a tick across the strips */
    double along;     /* points a tick of segments; less where they have no room */
    struct stretch stretches[STRETCHES];
    size_t stretches_count;
    double length;    /* of all of them */
};

static const struct muslin_stripset *row_of_set(const struct worked *worked, muslin_id node)
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
        words = set->is_standing ? fmax(words, words_room(size, SMALL_SIZE).width + 3) : words;
        least = width < least ? width : least;
        all += (double)width;
    }
    const double room = set->is_standing ? set->canvas->width - 56 : set->canvas->height * 0.6;
    return fmin(fmax(words / (double)least, WIDE / all), room / all);
}

/* ---- laid out along the strips ----------------------------------------------------------------------------------- */

static void add_stretch(struct set *set, enum stretch_kind kind, double length)
{
    if (length <= 0 || set->stretches_count == STRETCHES)
        return;
    set->stretches[set->stretches_count++] = (struct stretch){ kind, length };
    set->length += length;
}

static void add_segments(struct set *set, int64_t count)
{
    for (int64_t i = 0; i < count; i++)
        add_stretch(set, STRETCH_SEGMENT, (double)set->row->segment_cut * set->along);
}

/* Square with the strips, unless that is longer than there is room. */
static void choose_along(struct set *set, int64_t shown)
{
    const double most = (is_small(set->canvas) ? SMALL_LONG : LONG) - 24;
    set->along = fmin(set->across, most / ((double)set->row->segment_cut * (double)shown));
}

/* From one end; or half of them from each end towards the fold, where fewer are shown beyond it. */
static void lay_out(struct set *set)
{
    enum { BREAK = 11, REST = 9, FOLD = 12, TRIM_LEAST = 4, TRIM_MOST = 10 };
    const struct muslin_solution_spec *solve = &set->canvas->worked->design->solve;
    const bool is_folded = solve->fold_clear > 0;
    const int64_t here = is_folded ? set->row->segments_per_set / 2 : set->row->segments_per_set;
    const int64_t most = is_small(set->canvas) ? 2 : 3;
    const int64_t shown = here < most ? here : most;
    const int64_t beyond = !is_folded ? 0 : here <= most ? here : 1;
    choose_along(set, shown + beyond);
    const double trim = solve->end_trim == 0 ? 0
                      : fmax(TRIM_LEAST, fmin(TRIM_MOST, (double)solve->end_trim * set->along));
    add_stretch(set, STRETCH_TRIMMED, trim);
    add_segments(set, shown);
    add_stretch(set, STRETCH_BREAK, shown < here ? BREAK : 0);
    add_stretch(set, STRETCH_FOLD, is_folded ? FOLD : 0);
    add_stretch(set, STRETCH_BREAK, is_folded && beyond < here ? BREAK : 0);
    add_segments(set, beyond);
    add_stretch(set, STRETCH_REST, is_folded ? 0 : REST);
    add_stretch(set, STRETCH_TRIMMED, trim);
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

/* On more lines where the strip is too narrow for fewer. */
static void word_strip(const struct set *set, size_t cut, double width, char words[2 * WORD_ROOM])
{
    const struct worked *worked = set->canvas->worked;
    char text[WORD_ROOM];
    const char *size = measured(worked, worked->cuts[cut].cut_height, text);
    if (!set->is_standing)
        snprintf(words, 2 * WORD_ROOM, "[%d]  %s cut", worked->piece[cut], size);
    else if (words_room(size, SMALL_SIZE).width <= width - 2)
        snprintf(words, 2 * WORD_ROOM, "[%d]\n%s\ncut", worked->piece[cut], size);
    else {
        char *unit = strrchr(text, ' ');
        *unit++ = '\0';
        const double room = words_room(unit, SMALL_SIZE).width + words_room(" cut", SMALL_SIZE).width;
        snprintf(words, 2 * WORD_ROOM, "[%d]\n%s\n%s%scut", worked->piece[cut], text, unit,
                 room <= width - 2 ? " " : "\n");
    }
}

/* Before the end of the strip: fabric, number, cut width. */
static void label_strip(const struct set *set, size_t i, double across, double width)
{
    const struct worked *worked = set->canvas->worked;
    cairo_t *cairo = set->canvas->cairo;
    const int64_t cut = cut_of_strip(worked, set->node, strip_of(set, i).node);
    const double middle = across + width / 2;
    char words[2 * WORD_ROOM];
    if (cut < 0)
        return;
    const char *letter = cloth_of(worked->design, worked->cuts[cut].fabric)->letter;
    const double ring = plate_room(letter, SMALL_SIZE, PLATE_RING).width;
    word_strip(set, (size_t)cut, width, words);
    if (set->is_standing) {
        const struct room room = words_room(words, SMALL_SIZE);
        write_words(cairo, middle, -3 - room.height / 2, words, SMALL_SIZE, PLATE_NONE);
        write_words(cairo, middle, -4 - room.height - ring / 2, letter, SMALL_SIZE, PLATE_RING);
    } else {
        write_words(cairo, -4 - ring / 2, middle, letter, SMALL_SIZE, PLATE_RING);
        write_up_to(cairo, -8 - ring, middle, words, SMALL_SIZE);
    }
}

/* Beyond the far end, so that it is not lost in the cloth. */
static void draw_pressing(const struct set *set, size_t seam, double across)
{
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(set->canvas->worked, set->node, &count);
    const double end = set->length + 9;
    if (seam >= count)
        return;
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

/* Kept clear: white, with the fold as a line in its middle and its name beside it. */
static void draw_fold(const struct set *set, double along, double length, double width)
{
    cairo_t *cairo = set->canvas->cairo;
    const double fold = along + length / 2;
    strike_end(set, along, length, width);
    trace_across(set, fold, width);
    stroke_thin(cairo);
    if (set->is_standing)
        write_from(cairo, width + 5, fold, "fold", SMALL_SIZE);
    else
        write_words(cairo, fold, width + 7, "fold", SMALL_SIZE, PLATE_NONE);
}

static void leave_out(const struct set *set, double along, double length, double width)
{
    if (set->is_standing)
        draw_break_across(set->canvas->cairo, -3, width + 3, along + length / 2);
    else
        draw_break(set->canvas->cairo, along + length / 2, -3, width + 3);
}

static void draw_stretches(const struct set *set, double width)
{
    double along = 0;
    for (size_t i = 0; i < set->stretches_count; along += set->stretches[i].length, i++) {
        const struct stretch *stretch = &set->stretches[i];
        if (stretch->kind == STRETCH_TRIMMED)
            strike_end(set, along, stretch->length, width);
        if (stretch->kind == STRETCH_FOLD)
            draw_fold(set, along, stretch->length, width);
        if (stretch->kind == STRETCH_BREAK)
            leave_out(set, along, stretch->length, width);
    }
    along = 0;
    for (size_t i = 0; i < set->stretches_count; along += set->stretches[i].length, i++)
        if (set->stretches[i].kind == STRETCH_SEGMENT) {
            draw_cut(set, along, width);
            draw_cut(set, along + set->stretches[i].length, width);
        }
}

/* Beside standing strips, below lying ones: how wide the first segment is. */
static void say_segment(const struct set *set, double width)
{
    double begin = 0;
    char text[WORD_ROOM];
    char words[WORD_ROOM + 8];
    for (size_t i = 0; i < set->stretches_count; begin += set->stretches[i].length, i++)
        if (set->stretches[i].kind == STRETCH_SEGMENT) {
            const double end = begin + set->stretches[i].length;
            snprintf(words, sizeof words, "%s cut", segment_measured(set->canvas->worked, set->row, text));
            if (set->is_standing)
                dimension_down(set->canvas->cairo, width + 10, begin, end, words);
            else
                dimension_across(set->canvas->cairo, begin, end, width + 18, words);
            return;
        }
}

static bool has_break(const struct set *set)
{
    for (size_t i = 0; i < set->stretches_count; i++)
        if (set->stretches[i].kind == STRETCH_BREAK)
            return true;
    return false;
}

/* What the marks mean; and how many segments there are, where there is room. */
static void say_notes(const struct set *set, double x, double y)
{
    const struct worked *worked = set->canvas->worked;
    const struct muslin_solution_spec *solve = &worked->design->solve;
    struct line line = { .text = NULL };
    char text[WORD_ROOM];
    if (has_break(set))
        add(&line, "zigzag: more of the same");
    if (set->along < set->across * 0.95)
        add(&line, "%snot to scale along the strips", line.used > 0 ? "; " : "");
    if (!is_small(set->canvas)) {
        add(&line, "%sa set gives %" PRId64 " segments\n%" PRId64 " set%s, %" PRId64 " needed",
            line.used > 0 ? "\n" : "", set->row->segments_per_set, set->row->sets, set->row->sets == 1 ? "" : "s",
            set->row->segments);
        if (solve->end_trim > 0)
            add(&line, "\nshaded ends: trimmed, %s each", measured(worked, solve->end_trim, text));
        if (solve->fold_clear > 0)
            add(&line, "\nshaded at the fold: %s kept clear", measured(worked, solve->fold_clear, text));
    }
    if (line.used > 0)
        write_wrapped(set->canvas->cairo, x, y, fmin(NOTES, set->canvas->width), line.text, SMALL_SIZE);
    free(line.text);
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
    struct set set = { .canvas = canvas, .node = node, .row = row_of_set(canvas->worked, node) };
    if (set.row == NULL)
        return;
    set.is_standing = node_of(canvas->worked, node).axis == MUSLIN_AXIS_ACROSS;
    set.strips = children_of(canvas->worked, node, &set.count);
    set.across = scale_across(&set);
    lay_out(&set);
    const double width = draw_strips(&set);
    draw_stretches(&set, width);
    say_segment(&set, width);
    if (!is_small(canvas))
        say_width(&set, width);
    say_notes(&set, 0, set.is_standing ? set.length + (is_small(canvas) ? 16 : 42) : width + 40);
    free(set.strips);
}
