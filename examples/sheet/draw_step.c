/* draw_step.c - a sewing step: its parts apart in the order they are sewn, pressing arrows at each seam, what comes out.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "apart.h"

enum { RESULT = 96, APART_HIGH = 250, APART_SMALL = 150, ASIDE = 30 };

/* ---- parts -------------------------------------------------------------------------------------------------------- */

static void draw_parts(const struct apart *apart)
{
    size_t first = 0;
    while (first < apart->patches.count) {
        size_t end = first;
        const bool is_seen = apart->part_of[first] != PART_LEFT_OUT;
        while (end < apart->patches.count && (apart->part_of[end] != PART_LEFT_OUT) == is_seen)
            end++;
        if (is_seen)
            draw_patches(apart->canvas->cairo, apart->canvas->worked, &apart->patches, first, end, &apart->view,
                         apart->moved);
        first = end;
    }
}

static struct box box_of_part(const struct apart *apart, const struct part *part)
{
    struct box box = box_of(&apart->patches, part->first, part->end, &apart->view);
    box.left += part->moved.x;
    box.right += part->moved.x;
    box.top += part->moved.y;
    box.bottom += part->moved.y;
    return box;
}

/* A wedge at the edge that is the part's upper one when it is not turned. */
static void draw_upper_edge(cairo_t *cairo, double x, double y, int32_t quarter_turns)
{
    cairo_save(cairo);
    cairo_translate(cairo, x, y);
    cairo_rotate(cairo, quarter_turns * acos(-1) / 2);
    cairo_new_path(cairo);
    cairo_move_to(cairo, 0, 0);
    cairo_line_to(cairo, 4, 6.5);
    cairo_line_to(cairo, -4, 6.5);
    cairo_close_path(cairo);
    cairo_set_source_rgb(cairo, 1, 1, 1);
    cairo_set_line_width(cairo, 2);
    cairo_stroke_preserve(cairo);
    set_black(cairo);
    cairo_fill(cairo);
    cairo_restore(cairo);
}

static void mark_turned(const struct apart *apart, const struct part *part)
{
    static const double sides[4][2] = { { 0.5, 0 }, { 1, 0.5 }, { 0.5, 1 }, { 0, 0.5 } };
    const struct box box = box_of_part(apart, part);
    const int32_t turns = part->lying.quarter_turns;
    draw_upper_edge(apart->canvas->cairo, box.left + sides[turns][0] * (box.right - box.left),
                    box.top + sides[turns][1] * (box.bottom - box.top), turns);
}

static const char *name_of_part(const struct apart *apart, const struct part *part, char text[WORD_ROOM])
{
    const int64_t cut = cut_of_patch(apart->canvas->worked, part->node);
    if (cut >= 0)
        return piece_name(apart->canvas->worked, cut, text);
    part_name(apart->canvas->worked, part->node, part->lying.other_way, text);
    if (part->lying.mirrored && text[0] != '\0')
        snprintf(text + strlen(text), WORD_ROOM - strlen(text), "\nmirrored");
    return text;
}

/* Of a join the names stand beside the parts, else on them. */
static void name_part(const struct apart *apart, const struct part *part)
{
    cairo_t *cairo = apart->canvas->cairo;
    const struct box box = box_of_part(apart, part);
    char text[WORD_ROOM];
    name_of_part(apart, part, text);
    const struct room room = words_room(cairo, text, LETTER_SIZE);
    if (text[0] == '\0')
        return;
    if (apart->kind.kind != MUSLIN_NODE_JOIN)
        write_words(cairo, (box.left + box.right) / 2, (box.top + box.bottom) / 2, text, LETTER_SIZE, PLATE_BOX);
    else if (apart->kind.axis == MUSLIN_ACROSS)
        write_words(cairo, (box.left + box.right) / 2, box.bottom + 4 + room.height / 2, text, LETTER_SIZE, PLATE_NONE);
    else
        write_up_to(cairo, box.left - 5, (box.top + box.bottom) / 2, text, LETTER_SIZE);
}

/* ---- fields ------------------------------------------------------------------------------------------------------- */

/* Blocks and pieces of a field have their names on them. */
static bool name_place(void *with, const struct place *place)
{
    const struct apart *apart = with;
    char text[WORD_ROOM];
    if (place->depth == 0)
        return true;
    const struct box box = box_of(&apart->patches, place->first, place->end, &apart->view);
    const struct spot moved = apart->moved[place->first];
    const int64_t cut = cut_of_patch(apart->canvas->worked, place->node);
    if (cut >= 0)
        piece_name(apart->canvas->worked, cut, text);
    else
        part_name(apart->canvas->worked, place->node, place->other_way, text);
    if (text[0] != '\0' && box.right - box.left > 18)
        write_words(apart->canvas->cairo, (box.left + box.right) / 2 + moved.x, (box.top + box.bottom) / 2 + moved.y,
                    text, SMALL_SIZE, PLATE_BOX);
    return false;
}

/* Each row has its number before its first piece. */
static void number_rows(const struct apart *apart)
{
    for (int part = 0; part < rows_of_field(apart); part++) {
        struct spot first = { HUGE_VAL, 0 };
        char text[24];
        for (size_t row = 0; row < apart->patches.count; row++) {
            const struct box box = box_of(&apart->patches, row, row + 1, &apart->view);
            const double x = box.left + apart->moved[row].x;
            if (apart->part_of[row] == part && x < first.x)
                first = (struct spot){ x, (box.top + box.bottom) / 2 + apart->moved[row].y };
        }
        snprintf(text, sizeof text, "%d", part + 1);
        write_words(apart->canvas->cairo, first.x - 8, first.y - 4, text, SMALL_SIZE, PLATE_RING);
    }
}

/* Pieces of the node itself: of units, shapes, strips set in, triangles. */
static void number_own(const struct apart *apart)
{
    char text[WORD_ROOM];
    int64_t *cuts = cuts_of_patches(apart->canvas->worked, apart->node, &apart->patches);
    const size_t own = own_patches(apart->node, &apart->patches, 0, apart->patches.count);
    for (size_t row = 0; row < own; row++)
        if (cuts[row] >= 0)
            write_in_patch(apart->canvas->cairo, &apart->patches, row, &apart->view, apart->moved[row],
                           piece_name(apart->canvas->worked, cuts[row], text), TEXT_SIZE);
    free(cuts);
}

static void name_parts(const struct apart *apart)
{
    number_own(apart);
    if (rows_of_field(apart) > 0) {
        number_rows(apart);
        visit_places(apart->canvas->worked, apart->node, &apart->patches, name_place, (void *)apart);
        return;
    }
    for (int i = 0; i < apart->parts_count; i++) {
        const struct part *part = &apart->parts[i];
        if (part->node == 0 || apart->part_of[part->first] == PART_LEFT_OUT)
            continue;
        name_part(apart, part);
        if (part->lying.quarter_turns != 0 && node_of(apart->canvas->worked, part->node).kind != MUSLIN_NODE_PATCH)
            mark_turned(apart, part);
    }
}

/* ---- seams -------------------------------------------------------------------------------------------------------- */

/* Midway between the parts on both sides of a seam; false where one of them is left out. */
static bool find_gap(const struct apart *apart, const struct muslin_pressed_seam *seam, struct spot *gap)
{
    struct box span = { HUGE_VAL, -HUGE_VAL, HUGE_VAL, -HUGE_VAL };
    for (size_t row = 0; row < apart->patches.count; row++) {
        const struct muslin_outline *patch = &apart->patches.rows[row];
        const struct muslin_outline_corner *corners = apart->patches.corners + patch->first_corner;
        for (int64_t i = 0; i < patch->corners; i++) {
            if (corners[i].seam_node != apart->node || corners[i].seam != seam->seam)
                continue;
            if (apart->part_of[row] == PART_LEFT_OUT)
                return false;
            span.left = fmin(span.left, apart->moved[row].x);
            span.right = fmax(span.right, apart->moved[row].x);
            span.top = fmin(span.top, apart->moved[row].y);
            span.bottom = fmax(span.bottom, apart->moved[row].y);
        }
    }
    *gap = (struct spot){ (span.left + span.right) / 2, (span.top + span.bottom) / 2 };
    return span.left <= span.right;
}

static void draw_arrows(const struct apart *apart)
{
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(apart->canvas->worked, apart->node, &count);
    for (size_t i = 0; i < count; i++) {
        struct spot gap;
        const double from_x = view_x(&apart->view, seams[i].from_x);
        const double from_y = view_y(&apart->view, seams[i].from_y);
        const double to_x = view_x(&apart->view, seams[i].to_x);
        const double to_y = view_y(&apart->view, seams[i].to_y);
        if (hypot(to_x - from_x, to_y - from_y) < 10 || !find_gap(apart, &seams[i], &gap))
            continue;
        draw_pressed(apart->canvas->cairo, (from_x + to_x) / 2 + gap.x, (from_y + to_y) / 2 + gap.y, seams[i].press,
                     atan2(to_y - from_y, to_x - from_x), 6.5);
    }
}

/* Between the last part before those that are left out and the first one after them. */
static void mark_left_out(const struct apart *apart)
{
    for (int i = 0; i + 1 < apart->parts_count; i++) {
        const struct part *part = &apart->parts[i];
        if (apart->part_of[part->first] == PART_LEFT_OUT || apart->part_of[part[1].first] != PART_LEFT_OUT)
            continue;
        const struct box box = box_of_part(apart, part);
        if (apart->kind.axis == MUSLIN_ACROSS)
            draw_break(apart->canvas->cairo, box.right + GAP / 2.0, box.top - 2, box.bottom + 2);
        else
            draw_break_across(apart->canvas->cairo, box.left - 2, box.right + 2, box.bottom + GAP / 2.0);
    }
}

/* ---- notes -------------------------------------------------------------------------------------------------------- */

static bool has_turned(const struct apart *apart)
{
    for (int i = 0; i < apart->parts_count; i++)
        if (apart->parts[i].node != 0 && apart->parts[i].lying.quarter_turns != 0 &&
            node_of(apart->canvas->worked, apart->parts[i].node).kind != MUSLIN_NODE_PATCH)
            return true;
    return false;
}

static double note_turned(const struct apart *apart, double y, double width)
{
    draw_upper_edge(apart->canvas->cairo, 4, y + 1, 0);
    return write_wrapped(apart->canvas->cairo, 12, y, width - 12, "upper edge of a part that lies turned", SMALL_SIZE);
}

static void note_copies(const struct apart *apart, double y, double width)
{
    size_t count;
    const struct muslin_pressed_seam *seams = seams_of(apart->canvas->worked, apart->node, &count);
    char letter[16];
    char text[WORD_ROOM];
    letter_of(apart->canvas->worked, apart->node, letter);
    if (count == 0 || seams->other_way == 0 || letter[0] == '\0')
        return;
    if (seams->other != MUSLIN_OTHER_TURNED)
        snprintf(text, sizeof text, "%s*: every arrow the other way", letter);
    else
        snprintf(text, sizeof text, "%s*: sewn and pressed the same, then turned by a %s", letter,
                 seams->turn == 1 ? "quarter" : "half");
    write_wrapped(apart->canvas->cairo, 0, y, width, text, SMALL_SIZE);
}

/* ---- all ---------------------------------------------------------------------------------------------------------- */

static struct box reach_of(const struct apart *apart)
{
    struct box all = { HUGE_VAL, -HUGE_VAL, HUGE_VAL, -HUGE_VAL };
    for (size_t row = 0; row < apart->patches.count; row++) {
        const struct box box = box_of(&apart->patches, row, row + 1, &apart->view);
        if (apart->part_of[row] == PART_LEFT_OUT)
            continue;
        all.left = fmin(all.left, box.left + apart->moved[row].x);
        all.right = fmax(all.right, box.right + apart->moved[row].x);
        all.top = fmin(all.top, box.top + apart->moved[row].y);
        all.bottom = fmax(all.bottom, box.bottom + apart->moved[row].y);
    }
    return all;
}

/* What comes out of it, with its unfinished size: at the right where there is room, else below. */
static double draw_result(const struct apart *apart, const struct box *reach)
{
    const struct muslin_node_size size = size_of(apart->canvas->worked, apart->node);
    cairo_t *cairo = apart->canvas->cairo;
    struct view view = { 0, 0, fmin(apart->view.unit, unit_for(&size, RESULT, RESULT)) };
    const double width = (double)size.finished_width * view.unit;
    const double height = (double)size.finished_height * view.unit;
    const bool is_beside = reach->right - reach->left + width + 120 < apart->canvas->width;
    const double middle = (reach->top + reach->bottom) / 2;
    view.x = is_beside ? reach->right + 36 : reach->left + 40;
    view.y = is_beside ? middle + height / 2 : reach->bottom + 26 + height;
    if (is_beside)
        draw_arrow(cairo, reach->right + 10, middle, reach->right + 28, middle);
    else
        draw_arrow(cairo, reach->left + 18, reach->bottom + 22, reach->left + 18, reach->bottom + 42);
    draw_patches(cairo, apart->canvas->worked, &apart->patches, 0, apart->patches.count, &view, NULL);
    draw_sizes(apart->canvas, apart->node, &view, false);
    return fmax(reach->bottom + 16, view.y + 26);
}

static void draw_made(const struct canvas *canvas, muslin_id node)
{
    struct apart apart = apart_of(canvas, node);
    const bool is_large = rows_of_field(&apart) > 0 || apart.kind.kind == MUSLIN_NODE_JOIN;
    const double most = fmin(canvas->height * 0.6, is_large ? (rows_of_field(&apart) > 0 ? 420 : APART_HIGH)
                                                            : APART_SMALL);
    const bool is_row = apart.kind.axis == MUSLIN_ACROSS;
    const double high = is_row && apart.patches.count <= 40 ? 90 : most;
    move_apart(&apart, is_large ? canvas->width - 2 * ASIDE - (is_row ? 0 : 120) : APART_SMALL * 1.3, high);
    draw_parts(&apart);
    draw_arrows(&apart);
    name_parts(&apart);
    if (apart.is_shortened)
        mark_left_out(&apart);
    const struct box reach = reach_of(&apart);
    double y = draw_result(&apart, &reach);
    cairo_translate(canvas->cairo, reach.left, 0);
    if (has_turned(&apart))
        y += note_turned(&apart, y, canvas->width);
    note_copies(&apart, y, canvas->width);
    cairo_translate(canvas->cairo, -reach.left, 0);
    apart_free(&apart);
}

/* Cut down to size: what is cut away lies outside the dashed line. */
static void draw_trimmed(const struct canvas *canvas, muslin_id node)
{
    struct muslin_trim_spec spec = MUSLIN_TRIM_SPEC_INIT;
    const struct worked *worked = canvas->worked;
    size_t count;
    muslin_len left = 0;
    muslin_len bottom = 0;
    muslin_id *child = children_of(worked, node, &count);
    const struct muslin_node_size whole = size_of(worked, child[0]);
    const struct muslin_node_size size = size_of(worked, node);
    const struct view view = { 0, 0, unit_for(&whole, APART_SMALL, APART_SMALL) };
    must(muslin_quilt_read_trim(worked->design->quilt, node, &spec, NULL));
    if (spec.left != 0)
        must(muslin_solution_value(worked->solution, spec.left, &left, NULL));
    if (spec.bottom != 0)
        must(muslin_solution_value(worked->solution, spec.bottom, &bottom, NULL));
    draw_numbered(canvas, child[0], &view, false);
    const struct view inner = { view_x(&view, left), view_y(&view, bottom), view.unit };
    cairo_rectangle(canvas->cairo, inner.x, view_y(&inner, size.finished_height),
                    (double)size.finished_width * view.unit, (double)size.finished_height * view.unit);
    stroke_dashed(canvas->cairo, 4, 3);
    draw_sizes(canvas, node, &inner, false);
    free(child);
}

void draw_step(const struct canvas *canvas)
{
    const struct muslin_sewing_row *step = &canvas->worked->steps[canvas->which];
    if (step->kind == MUSLIN_SEWING_SET || step->kind == MUSLIN_SEWING_SEGMENTS)
        draw_strip_set(canvas, step->node);
    else if (step->kind == MUSLIN_SEWING_TRIM)
        draw_trimmed(canvas, step->node);
    else
        draw_made(canvas, step->node);
}
