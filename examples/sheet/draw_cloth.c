/* draw_cloth.c - the cutting plan of a fabric: strips across the cloth, pieces with numbers and sizes, what is left.
 *
 * SPDX-License-Identifier: MIT
 *
 * The straightened end is at the top. Strips that are alike are drawn once. Words lie within their pieces and are never
 * tiny: what has no room for them has them below its strip, at the end of a line. */
#include <inttypes.h>
#include <math.h>
#include <stdlib.h>

#include "leads.h"
#include "picture.h"

enum { SIDE = 62, OTHER_SIDE = 34, STRIP_HIGH = 150, STRIP_LOW = 13, STRIP_LEAST = 10, STRIPS_APART = 4, AROUND = 64 };

struct plan {
    const struct canvas *canvas;
    const struct muslin_fabric_yardage *bill;
    const struct bolt *bolt;
    const struct cloth *cloth;
    bool is_folded;
    double across; /* points a tick across the cloth */
    double along;  /* ... along it, within the strip that is being drawn */
    double low;    /* no strip is drawn lower */
    double least;  /* no words on the cloth are smaller */
    const struct muslin_cutplan_strip *strip; /* that is being drawn */
    struct leads *leads; /* what has no room in that strip and those within it */
};

/* ---- pieces ------------------------------------------------------------------------------------------------------ */

static const struct muslin_solution_cut *cut_of_place(const struct plan *plan, const struct muslin_cutplan_place *place)
{
    const size_t label = (size_t)plan->bolt->pieces[place->piece].label;
    return label < plan->canvas->worked->cuts_count ? &plan->canvas->worked->cuts[label] : NULL;
}

static const char *name_of_place(const struct plan *plan, const struct muslin_cutplan_place *place, char text[32])
{
    return label_name(plan->canvas->worked, plan->bolt->pieces[place->piece].label, text);
}

/* Whether it is told by its number alone: strips taken whole, and what is no rectangle. */
static bool has_size(const struct plan *plan, const struct muslin_cutplan_place *place)
{
    const struct muslin_solution_cut *cut = cut_of_place(plan, place);
    return cut != NULL && cut->pitch == 0 && cut->source != MUSLIN_CUT_SOURCE_SET_STRIP;
}

/* Whether words lie within a piece, whose ends slant by so much. */
static bool fits(const char *words, double size, double width, double height, double slant)
{
    const struct room room = plate_room(words, size, PLATE_BOX);
    return room.width <= width - slant * (1 + room.height / height) - 1.5 && room.height <= height - 1;
}

/* Strips that are sewn end to end are not as large as what is sewn from them. */
static bool is_to_join(const struct plan *plan, const struct muslin_cutplan_place *place)
{
    const size_t label = (size_t)plan->bolt->pieces[place->piece].label;
    return cut_of_place(plan, place) != NULL && is_joined(plan->canvas->worked, label);
}

/* Of pieces side by side, the box of one of them. */
static struct box box_of_piece(const struct plan *plan, const struct muslin_cutplan_place *place, int64_t number,
                               double left, double top, double right)
{
    const double x = left + (double)(place->x + number * place->pitch) * plan->across;
    const double y = top + (double)place->y * plan->along;
    return (struct box){ x, x + fmin((double)place->width * plan->across, right - x), y,
                         y + (double)place->height * plan->along };
}

enum { WAYS = 5 };

/* Number and size on two lines, one, three; number and length, where its width is that of the strip; the number. */
static void word_piece(const struct plan *plan, const struct muslin_cutplan_place *place,
                       char words[WAYS][3 * WORD_ROOM])
{
    const struct worked *worked = plan->canvas->worked;
    const char *what = is_to_join(plan, place) ? " to join" : "";
    const size_t room = 3 * WORD_ROOM;
    char name[32];
    char text[2][WORD_ROOM];
    const char *number = name_of_place(plan, place, name);
    const char *size = measured_by(worked, place->width, place->height, text[0]);
    snprintf(words[0], room, "%s%s\n%s", number, what, size);
    snprintf(words[1], room, "%s%s  %s", number, what, size);
    measured(worked, place->width, text[0]);
    measured(worked, place->height, text[1]);
    snprintf(words[2], room, "%s%s\n%s\nx %s", number, what, text[0], text[1]);
    snprintf(words[3], room, "%s%s  %s", number, what, place->height == plan->strip->height ? text[0] : size);
    snprintf(words[4], room, "%s", number);
}

/* The first of the ways from `first` on that has room, as large as it has; false where none has. */
static bool write_way(const struct plan *plan, char words[WAYS][3 * WORD_ROOM], int first, int end,
                      const struct box *box, double slant)
{
    for (double size = fmax(TEXT_SIZE, plan->least); size >= plan->least; size -= 0.5)
        for (int i = first; i < end; i++)
            if (fits(words[i], size, box->right - box->left, box->bottom - box->top, slant)) {
                write_words(plan->canvas->cairo, (box->left + box->right) / 2, (box->top + box->bottom) / 2, words[i],
                            size, PLATE_BOX);
                return true;
            }
    return false;
}

/* Of pieces side by side the first one has its size, the others have their number, if there is room. */
static void write_place(const struct plan *plan, const struct muslin_cutplan_place *place, double left, double top,
                        double right)
{
    const struct muslin_solution_cut *cut = cut_of_place(plan, place);
    const double slant = cut != NULL && cut->pitch > 0 ? (double)(place->width - place->pitch) * plan->across : 0;
    char words[WAYS][3 * WORD_ROOM];
    word_piece(plan, place, words);
    for (int64_t i = 0; i < place->count; i++) {
        const struct box box = box_of_piece(plan, place, i, left, top, right);
        const bool is_sized = i == 0 && has_size(plan, place);
        if (is_sized && write_way(plan, words, 0, WAYS - 1, &box, slant))
            continue;
        if (!write_way(plan, words, WAYS - 1, WAYS, &box, slant) && i == 0)
            add_lead(plan->leads, &box, words[WAYS - 1], words[has_size(plan, place) ? 1 : WAYS - 1]);
    }
}

/* Adds a piece to the path: slanted ones lie one against the other, diamonds all alike, others alternately up and
 * down. */
static void trace_piece(const struct plan *plan, const struct muslin_solution_cut *cut, double x, double y,
                        double width, double height, double pitch, bool is_down)
{
    cairo_t *cairo = plan->canvas->cairo;
    const double slant = width - pitch;
    if (cut == NULL || cut->pitch == 0 || slant <= 0)
        cairo_rectangle(cairo, x, y, width, height);
    else if (cut->shape == MUSLIN_CUT_SHAPE_DIAMONDS) {
        cairo_move_to(cairo, x + slant, y);
        cairo_line_to(cairo, x + width, y);
        cairo_line_to(cairo, x + pitch, y + height);
        cairo_line_to(cairo, x, y + height);
        cairo_close_path(cairo);
    } else {
        const double wide = is_down ? y : y + height;
        const double narrow = is_down ? y + height : y;
        cairo_move_to(cairo, x, wide);
        cairo_line_to(cairo, x + width, wide);
        cairo_line_to(cairo, x + fmin(width, pitch), narrow);
        cairo_line_to(cairo, x + fmax(0, slant), narrow);
        cairo_close_path(cairo);
    }
}

static void trace_place(const struct plan *plan, const struct muslin_cutplan_place *place, double left, double top,
                        double right)
{
    const struct muslin_solution_cut *cut = cut_of_place(plan, place);
    const bool is_sloped = cut != NULL && cut->pitch > 0;
    cairo_new_path(plan->canvas->cairo);
    for (int64_t i = 0; i < place->count; i++) {
        const struct box box = box_of_piece(plan, place, i, left, top, right);
        const double width = box.right - box.left;
        trace_piece(plan, cut, box.left, box.top, width, box.bottom - box.top,
                    is_sloped ? (double)place->pitch * plan->across : width, (i & 1) != 0);
    }
}

static void draw_place(const struct plan *plan, const struct muslin_cutplan_place *place, double left, double top,
                       double right)
{
    trace_place(plan, place, left, top, right);
    fill_cloth(plan->canvas->cairo, plan->canvas->worked->design, plan->cloth->id);
    trace_place(plan, place, left, top, right);
    stroke_seam(plan->canvas->cairo);
    write_place(plan, place, left, top, right);
}

/* ---- strips ------------------------------------------------------------------------------------------------------ */

/* That it is left, and its size: below each other or in a line, or without the size, as it has room. */
static void write_left_over(const struct plan *plan, const char *size, const struct box *box)
{
    static const char *const between[] = { "\n", "  " };
    char words[WORD_ROOM + 8];
    for (size_t i = 0; i < 3; i++) {
        snprintf(words, sizeof words, "left%s%s", i < 2 ? between[i] : "", i < 2 ? size : "");
        if (!fits(words, plan->least, box->right - box->left, box->bottom - box->top, 0))
            continue;
        write_words(plan->canvas->cairo, (box->left + box->right) / 2, (box->top + box->bottom) / 2, words, plan->least,
                    PLATE_BOX);
        return;
    }
}

static void draw_left_over(const struct plan *plan, size_t strip, double left, double top)
{
    char text[WORD_ROOM];
    for (size_t i = 0; i < plan->bolt->left_over_count; i++) {
        const struct muslin_cutplan_left_over *rest = &plan->bolt->left_over[i];
        if (rest->strip != (int64_t)strip)
            continue;
        struct box box = { .left = left + (double)rest->x * plan->across, .top = top + (double)rest->y * plan->along };
        box.right = box.left + (double)rest->width * plan->across / (plan->is_folded ? 2 : 1);
        box.bottom = box.top + (double)rest->height * plan->along;
        write_left_over(plan, measured_by(plan->canvas->worked, rest->width, rest->height, text), &box);
    }
}

static void draw_ground(const struct plan *plan, const struct muslin_cutplan_strip *strip, double left, double top)
{
    cairo_t *cairo = plan->canvas->cairo;
    const double width = (double)strip->width * plan->across;
    const double height = (double)strip->height * plan->along;
    cairo_new_path(cairo);
    cairo_rectangle(cairo, left, top, width, height);
    fill_left_over(cairo);
    cairo_rectangle(cairo, left, top, width, height);
    stroke_thin(cairo);
}

static void draw_strip(struct plan *plan, size_t number, double left, double top)
{
    const struct muslin_cutplan_strip *strip = &plan->bolt->strips[number];
    plan->strip = strip;
    const double right = left + (double)strip->width * plan->across;
    if (strip->kind != MUSLIN_CUTPLAN_STRIP_SLIT)
        draw_ground(plan, strip, left, top);
    for (int64_t i = 0; i < strip->places; i++)
        draw_place(plan, &plan->bolt->places[strip->first_place + i], left, top, right);
    draw_left_over(plan, number, left, top);
}

/* What is slit from a panel, and strips across its rest. */
static void draw_within(struct plan *plan, size_t holder, double top)
{
    for (size_t i = 0; i < plan->bolt->strips_count; i++) {
        const struct muslin_cutplan_strip *strip = &plan->bolt->strips[i];
        if (strip->holder != (int64_t)holder)
            continue;
        for (int64_t k = 0; k < strip->times; k++)
            draw_strip(plan, i, (double)strip->x * plan->across,
                       top + (double)(strip->y + k * strip->height) * plan->along);
    }
}

static bool is_outermost(const struct muslin_cutplan_strip *strip)
{
    return strip->kind != MUSLIN_CUTPLAN_STRIP_SLIT && strip->kind != MUSLIN_CUTPLAN_STRIP_WITHIN;
}

/* High enough for words, and low enough for a page; what holds strips of its own may be higher. */
static double height_of(const struct plan *plan, size_t number)
{
    const struct muslin_cutplan_strip *strip = &plan->bolt->strips[number];
    double most = STRIP_HIGH;
    for (size_t i = 0; i < plan->bolt->strips_count; i++)
        if (plan->bolt->strips[i].holder == (int64_t)number &&
            plan->bolt->strips[i].kind == MUSLIN_CUTPLAN_STRIP_WITHIN)
            most = fmax(STRIP_HIGH, plan->canvas->height * 0.6);
    return fmin(most, fmax(plan->low, (double)strip->height * plan->across));
}

static bool is_lower(const struct plan *plan, size_t number)
{
    return height_of(plan, number) < (double)plan->bolt->strips[number].height * plan->across - 1;
}

/* At the edges of a strip that is drawn lower than it is. */
static void mark_lower(const struct plan *plan, double width, double y)
{
    draw_break_across(plan->canvas->cairo, -6, 6, y);
    draw_break_across(plan->canvas->cairo, width - 6, width + 6, y);
}

/* How high a strip is cut, to the left of it; how many of them, to the right. */
static void label_strip(const struct plan *plan, const struct muslin_cutplan_strip *strip, double top, double height,
                        double width)
{
    char text[WORD_ROOM];
    char words[WORD_ROOM + 24];
    const bool is_panel = strip->kind == MUSLIN_CUTPLAN_STRIP_PANEL;
    const char *size = measured(plan->canvas->worked, strip->height, text);
    const char *what = is_panel ? "panel" : strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK ? "strip" : "cut";
    snprintf(words, sizeof words, height > 26 ? "%s\n%s" : "%s %s", what, size);
    write_up_to(plan->canvas->cairo, -6, top + height / 2, words, SMALL_SIZE);
    if (strip->times == 1)
        return;
    snprintf(words, sizeof words, "x %" PRId64, strip->times);
    write_from(plan->canvas->cairo, width + 6, top + height / 2, words, LETTER_SIZE);
}

static double gap_after(const struct muslin_cutplan_strip *strip)
{
    return strip->times > 1 || strip->kind == MUSLIN_CUTPLAN_STRIP_STOCK ? STRIPS_APART : 0;
}

static double draw_strips(struct plan *plan, double width)
{
    double top = 0;
    for (size_t i = 0; i < plan->bolt->strips_count; i++) {
        const struct muslin_cutplan_strip *strip = &plan->bolt->strips[i];
        if (!is_outermost(strip))
            continue;
        const double height = height_of(plan, i);
        plan->along = height / (double)strip->height;
        plan->leads->count = 0;
        draw_strip(plan, i, 0, top);
        draw_within(plan, i, top);
        label_strip(plan, strip, top, height, width);
        if (is_lower(plan, i))
            mark_lower(plan, width, top + height * 0.75);
        top += height;
        top += write_leads(plan->canvas->cairo, plan->leads, top, width, plan->least) + gap_after(strip);
    }
    return top;
}

/* ---- how large --------------------------------------------------------------------------------------------------- */

static double highest_strip(const struct plan *plan)
{
    muslin_len highest = 1;
    for (size_t i = 0; i < plan->bolt->strips_count; i++)
        if (is_outermost(&plan->bolt->strips[i]) && plan->bolt->strips[i].height > highest)
            highest = plan->bolt->strips[i].height;
    return (double)highest;
}

static double height_of_all(const struct plan *plan)
{
    double all = AROUND;
    for (size_t i = 0; i < plan->bolt->strips_count; i++)
        if (is_outermost(&plan->bolt->strips[i]))
            all += height_of(plan, i) + gap_after(&plan->bolt->strips[i]);
    return all;
}

/* As wide as there is room, but narrower where strips would be too high; those that are higher all the same are drawn
 * lower than they are. What is too high even so is made smaller as a whole, but not its words. */
static void choose_scale(struct plan *plan, muslin_len width)
{
    const double most = (plan->canvas->width - SIDE - OTHER_SIDE) * (plan->is_folded ? 0.6 : 1) / (double)width;
    const double least = most * 0.6;
    plan->low = STRIP_LOW;
    plan->across = fmax(least, fmin(most, STRIP_HIGH / highest_strip(plan)));
    while (height_of_all(plan) > plan->canvas->height && plan->low > STRIP_LEAST)
        plan->low -= 0.5;
    while (height_of_all(plan) > plan->canvas->height && plan->across > least)
        plan->across *= 0.97;
    plan->least = SMALL_SIZE * fmax(1, height_of_all(plan) / plan->canvas->height);
}

/* ---- the cloth --------------------------------------------------------------------------------------------------- */

/* The end that is straightened; selvages, or selvages and fold, at the sides. */
static void draw_edges(const struct plan *plan, double width, double bottom)
{
    cairo_t *cairo = plan->canvas->cairo;
    char text[WORD_ROOM];
    char words[WORD_ROOM + 24];
    const muslin_len end = plan->canvas->worked->design->buying.straightening;
    if (end > 0) {
        cairo_new_path(cairo);
        cairo_rectangle(cairo, 0, -6, width, 5);
        fill_left_over(cairo);
        cairo_rectangle(cairo, 0, -6, width, 5);
        stroke_thin(cairo);
        snprintf(words, sizeof words, "%s straightened", measured(plan->canvas->worked, end, text));
        write_up_to(cairo, -6, -4, words, plan->least);
    }
    for (int side = 0; side < 2; side++) {
        cairo_move_to(cairo, side * width, -16);
        cairo_line_to(cairo, side * width, bottom + 8);
        stroke_dashed(cairo, 6, 3);
    }
    write_words(cairo, 0, -22, plan->is_folded ? "selvages" : "selvage", SMALL_SIZE, PLATE_NONE);
    write_words(cairo, width, -22, plan->is_folded ? "fold" : "selvage", SMALL_SIZE, PLATE_NONE);
}

static bool is_from_bolt(const struct plan *plan)
{
    return plan->bolt->strips_count == 0 || plan->bolt->strips[0].kind != MUSLIN_CUTPLAN_STRIP_STOCK;
}

static muslin_len width_of(const struct plan *plan)
{
    muslin_len width = plan->bill->usable_width;
    if (plan->is_folded && plan->bolt->strips_count > 0)
        width = plan->bolt->strips[0].width;
    return width;
}

/* How wide the cloth is; what marks mean that occur. */
static void say_below(const struct plan *plan, double width, double bottom)
{
    char text[WORD_ROOM];
    char words[WORD_ROOM + 24];
    const char *what = is_from_bolt(plan) ? "usable width" : "usable length";
    what = plan->is_folded ? "from selvages to fold" : what;
    snprintf(words, sizeof words, "%s %s", measured(plan->canvas->worked, width_of(plan), text), what);
    dimension_across(plan->canvas->cairo, 0, width, bottom + 16, words);
    for (size_t i = 0; i < plan->bolt->strips_count; i++)
        if (is_outermost(&plan->bolt->strips[i]) && is_lower(plan, i)) {
            write_from(plan->canvas->cairo, 0, bottom + 29, "zigzag: drawn lower than it is", SMALL_SIZE);
            return;
        }
}

void draw_cloth(const struct canvas *canvas)
{
    const struct worked *worked = canvas->worked;
    struct leads leads = { .count = 0 };
    struct plan plan = { .canvas = canvas, .bill = &worked->bill[canvas->which],
                         .bolt = &worked->bolts[canvas->which], .leads = &leads };
    plan.cloth = cloth_of(worked->design, plan.bill->fabric);
    plan.is_folded = (worked->design->buying.flags & MUSLIN_CUTPLAN_FOLDED) != 0;
    choose_scale(&plan, width_of(&plan));
    const double width = (double)width_of(&plan) * plan.across;
    const double bottom = draw_strips(&plan, width);
    if (is_from_bolt(&plan))
        draw_edges(&plan, width, bottom);
    say_below(&plan, width, bottom);
    write_words(canvas->cairo, -SIDE + 10, -22, plan.cloth->letter, LETTER_SIZE, PLATE_RING);
}
