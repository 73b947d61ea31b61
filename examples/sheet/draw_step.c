/* draw_step.c - a sewing step: its parts apart in their order, pressing arrows at each seam, what comes out.
 *
 * SPDX-License-Identifier: MIT */
#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "apart.h"

enum { PART_WIDE = 34, ROW_LEAST = 200, RESULT = 96, APART_HIGH = 250, APART_SMALL = 150, ROW_HIGH = 90, ASIDE = 30 };

/* ---- parts ------------------------------------------------------------------------------------------------------- */

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

/* A wedge at the edge that is the part's upper one when it is not turned; beside the middle, where arrows are. */
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
    fill_in_relief(cairo);
    cairo_restore(cairo);
}

static void mark_turned(const struct apart *apart, const struct part *part)
{
    static const double sides[4][2] = { { 0.2, 0 }, { 1, 0.2 }, { 0.8, 1 }, { 0, 0.8 } };
    static const double inwards[4][2] = { { 0, 3 }, { -3, 0 }, { 0, -3 }, { 3, 0 } };
    const struct box box = box_of_part(apart, part);
    const int32_t turns = part->lying.quarter_turns;
    draw_upper_edge(apart->canvas->cairo, box.left + sides[turns][0] * (box.right - box.left) + inwards[turns][0],
                    box.top + sides[turns][1] * (box.bottom - box.top) + inwards[turns][1], turns);
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
    const struct room room = words_room(text, LETTER_SIZE);
    if (text[0] == '\0')
        return;
    if (apart->kind.kind != MUSLIN_NODE_JOIN)
        write_words(cairo, (box.left + box.right) / 2, (box.top + box.bottom) / 2, text, LETTER_SIZE, PLATE_BOX);
    else if (apart->kind.axis == MUSLIN_AXIS_ACROSS)
        write_words(cairo, (box.left + box.right) / 2, box.bottom + 4 + room.height / 2, text, LETTER_SIZE, PLATE_NONE);
    else
        write_up_to(cairo, box.left - 5, (box.top + box.bottom) / 2, text, LETTER_SIZE);
}

/* ---- fields ------------------------------------------------------------------------------------------------------ */

/* Blocks of a field have their names on them. */
static bool name_place(void *with, const struct place *place)
{
    const struct apart *apart = with;
    char text[WORD_ROOM];
    if (place->depth == 0)
        return true;
    const struct box box = box_of(&apart->patches, place->first, place->end, &apart->view);
    const struct spot moved = apart->moved[place->first];
    part_name(apart->canvas->worked, place->node, place->other_way, text);
    if (text[0] != '\0' && box.right - box.left > 18)
        write_words(apart->canvas->cairo, (box.left + box.right) / 2 + moved.x, (box.top + box.bottom) / 2 + moved.y,
                    text, SMALL_SIZE, PLATE_BOX);
    return false;
}

/* Sashes on point have rows of their own, which are not counted. */
static bool has_blocks(const struct apart *apart, int part)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    if (apart->kind.kind != MUSLIN_NODE_DIAGONAL)
        return true;
    must(muslin_quilt_read_diagonal(apart->canvas->worked->design->quilt, apart->node, &spec, NULL));
    return spec.sash == 0 || part % 2 == (spec.layout == MUSLIN_POINT_LAYOUT_SASH_INNER ? 0 : 1);
}

/* Where a row begins: the upper left one of its pieces, or the leftmost. */
static size_t first_of_row(const struct apart *apart, int part, bool is_leftmost)
{
    size_t first = 0;
    double least = HUGE_VAL;
    for (size_t row = 0; row < apart->patches.count; row++) {
        const struct box box = box_of(&apart->patches, row, row + 1, &apart->view);
        const double at = box.left + (is_leftmost ? 0 : box.top);
        if (apart->part_of[row] != part || at >= least)
            continue;
        least = at;
        first = row;
    }
    return first;
}

/* A triangle that has its long side at the top of the field. */
static bool is_at_top(const struct apart *apart, size_t row)
{
    const struct muslin_outline *outline = &apart->patches.rows[row];
    const struct muslin_outline_corner *corners = apart->patches.corners + outline->first_corner;
    const struct box box = box_of(&apart->patches, row, row + 1, &apart->view);
    int at_top = 0;
    for (int64_t i = 0; i < outline->corners; i++)
        at_top += view_y(&apart->view, corners[i].y) < box.top + 1;
    return outline->node == apart->node && at_top > 1 && apart->kind.kind == MUSLIN_NODE_DIAGONAL;
}

/* Before the first piece of a row; above it where that lies at the top. The longest row begins below a corner. */
static void number_row(const struct apart *apart, int part, int number)
{
    const bool is_above = is_at_top(apart, first_of_row(apart, part, false));
    const size_t first = first_of_row(apart, part, !is_above);
    const struct box box = box_of(&apart->patches, first, first + 1, &apart->view);
    const double x = apart->moved[first].x + box.left + (is_above ? 7 : -8);
    const double lower = apart->patches.rows[first].node == apart->node ? 0 : 9;
    const double y = apart->moved[first].y + (is_above ? box.top - 8 : (box.top + box.bottom) / 2 + lower);
    char text[24];
    snprintf(text, sizeof text, "%d", number);
    write_words(apart->canvas->cairo, x, y, text, SMALL_SIZE, PLATE_RING);
}

static void number_rows(const struct apart *apart)
{
    int number = 0;
    for (int part = 0; part < rows_of_field(apart); part++)
        if (has_blocks(apart, part))
            number_row(apart, part, ++number);
}

/* Whether a patch is a child of the field: a plain square, a sash. */
static bool is_child(const struct apart *apart, size_t row)
{
    size_t count;
    bool found = false;
    muslin_id *children = children_of(apart->canvas->worked, apart->node, &count);
    for (size_t i = 0; i < count && !found; i++)
        found = lying_at(apart->canvas->worked, apart->node, i, children[i]).node == apart->patches.rows[row].node;
    free(children);
    return found;
}

static bool is_first_of(const int64_t *cuts, size_t row)
{
    for (size_t i = 0; i < row; i++)
        if (cuts[i] == cuts[row])
            return false;
    return true;
}

/* Beside a piece, on the side that looks away from the middle. */
static void write_beside(const struct apart *apart, size_t row, const char *text)
{
    const struct box all = box_of(&apart->patches, 0, apart->patches.count, &apart->view);
    const struct box box = box_of(&apart->patches, row, row + 1, &apart->view);
    const double y = middle_of(&apart->patches, row, &apart->view).y + apart->moved[row].y;
    if (box.left + box.right < all.left + all.right)
        write_up_to(apart->canvas->cairo, box.left + apart->moved[row].x - 2, y, text, SMALL_SIZE);
    else
        write_from(apart->canvas->cairo, box.right + apart->moved[row].x + 2, y, text, SMALL_SIZE);
}

/* Pieces of the node itself (of units, shapes, strips set in, triangles), and of a field what is no block. Where the
 * number fits into none of them, it stands on the first; at the corners of a field beside each. */
static void number_pieces(const struct apart *apart)
{
    char text[WORD_ROOM];
    const bool is_field = rows_of_field(apart) > 0;
    int64_t *cuts = cuts_of_patches(apart->canvas->worked, apart->node, &apart->patches);
    const size_t own = own_patches(apart->node, &apart->patches, 0, apart->patches.count);
    for (size_t row = 0; row < apart->patches.count; row++) {
        const int64_t cut = row < own || (is_field && is_child(apart, row)) ? cuts[row] : -1;
        if (cut < 0 || write_in_patch(apart->canvas->cairo, &apart->patches, row, &apart->view, apart->moved[row],
                                      piece_name(apart->canvas->worked, cut, text), TEXT_SIZE))
            continue;
        const struct spot at = middle_of(&apart->patches, row, &apart->view);
        if (is_field && apart->part_of[row] >= rows_of_field(apart))
            write_beside(apart, row, text);
        else if (is_first_of(cuts, row))
            write_words(apart->canvas->cairo, at.x + apart->moved[row].x, at.y + apart->moved[row].y, text, SMALL_SIZE,
                        PLATE_BOX);
    }
    free(cuts);
}

static void name_parts(const struct apart *apart)
{
    number_pieces(apart);
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

/* ---- seams ------------------------------------------------------------------------------------------------------- */

/* Midway between the parts on both sides of a seam; false where one of them is left out. */
static bool find_gap(const struct apart *apart, const struct muslin_pressing_seam *seam, struct spot *gap)
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

/* Round a pinwheel seams are sewn in their order, the first one in part. */
static void number_seam(const struct apart *apart, int number, double x, double y)
{
    char text[24];
    snprintf(text, sizeof text, "%d", number);
    write_words(apart->canvas->cairo, x + (number % 2 == 1 ? 13 : 0), y + (number % 2 == 1 ? 0 : 11), text, SMALL_SIZE,
                PLATE_NONE);
}

static void draw_arrows(const struct apart *apart)
{
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(apart->canvas->worked, apart->node, &count);
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
        if (apart->kind.kind == MUSLIN_NODE_PINWHEEL)
            number_seam(apart, (int)i + 1, (from_x + to_x) / 2 + gap.x, (from_y + to_y) / 2 + gap.y);
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
        if (apart->kind.axis == MUSLIN_AXIS_ACROSS)
            draw_break(apart->canvas->cairo, box.right + apart->gap / 2, box.top - 2, box.bottom + 2);
        else
            draw_break_across(apart->canvas->cairo, box.left - 2, box.right + 2, box.bottom + apart->gap / 2);
    }
}

/* ---- notes ------------------------------------------------------------------------------------------------------- */

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

/* Many parts that are joined are not all drawn. */
static double note_left_out(const struct apart *apart, double y, double width)
{
    char text[WORD_ROOM];
    const int count = apart->parts_count - apart->shown_first - apart->shown_last;
    snprintf(text, sizeof text, "zigzag: %d parts more, not drawn", count);
    return write_wrapped(apart->canvas->cairo, 0, y, width, text, SMALL_SIZE);
}

static void note_copies(const struct apart *apart, double y, double width)
{
    size_t count;
    const struct muslin_pressing_seam *seams = seams_of(apart->canvas->worked, apart->node, &count);
    char letter[16];
    char text[WORD_ROOM];
    letter_of(apart->canvas->worked, apart->node, letter);
    if (count == 0 || seams->other_way == 0 || letter[0] == '\0')
        return;
    if (seams->other != MUSLIN_OTHER_WAY_TURNED)
        snprintf(text, sizeof text, "%s*: every arrow the other way", letter);
    else
        snprintf(text, sizeof text, "%s*: sewn and pressed the same, then turned by a %s", letter,
                 seams->turn == 1 ? "quarter" : "half");
    write_wrapped(apart->canvas->cairo, 0, y, width, text, SMALL_SIZE);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

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

static double say_result(const struct apart *apart, const struct box *reach)
{
    const struct muslin_node_size size = size_of(apart->canvas->worked, apart->node);
    const double names = apart->kind.kind == MUSLIN_NODE_JOIN && apart->kind.axis == MUSLIN_AXIS_ACROSS ? 16 : 4;
    char text[WORD_ROOM];
    char words[WORD_ROOM + 24];
    snprintf(words, sizeof words, "= %s unfinished",
             measured_by(apart->canvas->worked, size.unfinished_width, size.unfinished_height, text));
    const double y = reach->bottom + names;
    return y + write_wrapped(apart->canvas->cairo, reach->left, y, apart->canvas->width, words, SMALL_SIZE) + 2;
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
    write_words(cairo, is_beside ? reach->right + 18 : reach->left + 24, is_beside ? middle : view.y - height / 2, "=",
                2 * LETTER_SIZE, PLATE_NONE);
    draw_patches(cairo, apart->canvas->worked, &apart->patches, 0, apart->patches.count, &view, NULL);
    draw_sizes(apart->canvas, apart->node, &view, false);
    return fmax(reach->bottom + 16, view.y + 26);
}

/* Parts that are joined take the room they need for their names, and few in a row no more than that: so rows of a sheet
 * are drawn about alike, in a column and across the page. Others are kept small. */
static struct room room_for(const struct apart *apart)
{
    const struct canvas *canvas = apart->canvas;
    const bool is_field = rows_of_field(apart) > 0;
    const bool is_row = apart->kind.axis == MUSLIN_AXIS_ACROSS;
    const double row = fmax(ROW_LEAST, PART_WIDE * apart->parts_count);
    const double beside = canvas->width > 380 && apart->kind.axis == MUSLIN_AXIS_DOWN ? 120 : 0;
    const double words = 26 + (has_turned(apart) ? 10 : 0) + (apart->parts_count > 6 && !is_field ? 9 : 0);
    if (is_field && !is_small(canvas))
        return (struct room){ canvas->width - 2 * ASIDE, canvas->height - 3 * ASIDE };
    if (is_small(canvas))
        return (struct room){ is_row ? fmin(canvas->width - 4, row) : canvas->width - 20,
                              canvas->height - words - (is_row ? 12 : 0) };
    if (apart->kind.kind != MUSLIN_NODE_JOIN)
        return (struct room){ fmin(canvas->width - ASIDE, APART_SMALL * 1.3), APART_SMALL };
    const double width = canvas->width - 2 * ASIDE - beside;
    return (struct room){ is_row ? fmin(width, row) : width,
                          fmin(canvas->height * 0.6, is_row && apart->patches.count <= 40 ? ROW_HIGH : APART_HIGH) };
}

static void draw_made(const struct canvas *canvas, muslin_id node)
{
    struct apart apart = apart_of(canvas, node);
    const struct room room = room_for(&apart);
    move_apart(&apart, room.width, room.height);
    draw_parts(&apart);
    draw_arrows(&apart);
    name_parts(&apart);
    if (apart.is_shortened)
        mark_left_out(&apart);
    const struct box reach = reach_of(&apart);
    double y = is_small(canvas) || rows_of_field(&apart) > 0 ? say_result(&apart, &reach)
                                                              : draw_result(&apart, &reach);
    cairo_save(canvas->cairo);
    cairo_translate(canvas->cairo, reach.left, 0);
    if (apart.is_shortened)
        y += note_left_out(&apart, y, canvas->width);
    if (has_turned(&apart))
        y += note_turned(&apart, y, canvas->width);
    note_copies(&apart, y, canvas->width);
    cairo_restore(canvas->cairo);
    apart_free(&apart);
}

/* Cut down to size: what is cut away lies outside the dashed line. */
static void draw_trimmed(const struct canvas *canvas, muslin_id node)
{
    struct muslin_quilt_trim_spec spec = MUSLIN_QUILT_TRIM_SPEC_INIT;
    const struct worked *worked = canvas->worked;
    size_t count;
    muslin_len left = 0;
    muslin_len bottom = 0;
    char text[WORD_ROOM];
    char words[WORD_ROOM + 16];
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
    cairo_new_path(canvas->cairo);
    cairo_rectangle(canvas->cairo, inner.x, view_y(&inner, size.finished_height),
                    (double)size.finished_width * view.unit, (double)size.finished_height * view.unit);
    stroke_dashed(canvas->cairo, 4, 3);
    /* Beyond what is trimmed off. */
    const double top = view_y(&inner, size.finished_height);
    snprintf(words, sizeof words, "%s\nunfinished", measured(worked, size.unfinished_width, text));
    dimension_across(canvas->cairo, inner.x, view_x(&inner, size.finished_width), view.y + 11, words);
    snprintf(words, sizeof words, "%s\nunfinished", measured(worked, size.unfinished_height, text));
    dimension_down(canvas->cairo, view_x(&view, whole.finished_width) + 8, top, inner.y, words);
    free(child);
}

void draw_step(const struct canvas *canvas)
{
    const struct muslin_sewing_step *step = &canvas->worked->steps[canvas->which];
    if (step->kind == MUSLIN_SEWING_SET || step->kind == MUSLIN_SEWING_SEGMENTS)
        draw_strip_set(canvas, step->node);
    else if (step->kind == MUSLIN_SEWING_TRIM)
        draw_trimmed(canvas, step->node);
    else
        draw_made(canvas, step->node);
}
