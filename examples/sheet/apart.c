/* apart.c - the parts of a sewing step: told from each other, and moved apart.
 *
 * SPDX-License-Identifier: MIT
 *
 * What is joined is moved along the join, rows of a field across their seams, and whatever lies round a middle away
 * from it: parts without hollows do not come to lie on each other so. */
#include <math.h>
#include <stdlib.h>

#include "apart.h"

static bool is_field(const struct apart *apart)
{
    return apart->kind.kind == MUSLIN_NODE_DIAGONAL || apart->kind.kind == MUSLIN_NODE_SIXTY;
}

/* ---- rows of a field --------------------------------------------------------------------------------------------- */

/* Which way a field's rows follow each other: on point from the upper right to the lower left, else downwards. */
static double down_rows(const struct apart *apart, struct spot spot)
{
    return apart->kind.kind == MUSLIN_NODE_DIAGONAL ? spot.y - spot.x : spot.y;
}

static bool runs_with_rows(const struct apart *apart, const struct muslin_pressing_seam *seam)
{
    if (apart->kind.kind == MUSLIN_NODE_SIXTY)
        return seam->from_y == seam->to_y;
    return (seam->to_x > seam->from_x) != (seam->to_y > seam->from_y);
}

/* Seams between rows: on point those before the four of the corners, back to the first that runs otherwise. */
static const struct muslin_pressing_seam *row_seams(const struct apart *apart, size_t *count)
{
    size_t all;
    const struct muslin_pressing_seam *seams = seams_of(apart->canvas->worked, apart->node, &all);
    const size_t corners = apart->kind.kind == MUSLIN_NODE_DIAGONAL ? 4 : 0;
    *count = 0;
    if (all <= corners)
        return seams;
    size_t end = all - corners;
    while (end > *count && runs_with_rows(apart, &seams[end - *count - 1]))
        ++*count;
    return seams + end - *count;
}

/* Of a triangle the middle of its longest side lies in its row; of all else its middle. */
static struct spot heart_of(const struct apart *apart, size_t row, const struct view *view)
{
    const struct muslin_outline *patch = &apart->patches.rows[row];
    const struct muslin_outline_corner *corners = apart->patches.corners + patch->first_corner;
    struct spot best = middle_of(&apart->patches, row, view);
    double longest = 0;
    if (patch->node != apart->node || patch->corners != 3 || apart->kind.kind != MUSLIN_NODE_DIAGONAL)
        return best;
    for (int64_t i = 0; i < 3; i++) {
        const struct spot a = { view_x(view, corners[i].x), view_y(view, corners[i].y) };
        const struct spot b = { view_x(view, corners[(i + 1) % 3].x), view_y(view, corners[(i + 1) % 3].y) };
        if (hypot(b.x - a.x, b.y - a.y) > longest) {
            longest = hypot(b.x - a.x, b.y - a.y);
            best = (struct spot){ (a.x + b.x) / 2, (a.y + b.y) / 2 };
        }
    }
    return best;
}

static void part_rows(struct apart *apart)
{
    const struct view view = { 0, 0, 1 };
    size_t count;
    const struct muslin_pressing_seam *seams = row_seams(apart, &count);
    for (size_t row = 0; row < apart->patches.count; row++) {
        const double at = down_rows(apart, heart_of(apart, row, &view));
        int part = 0;
        for (size_t i = 0; i < count; i++) {
            const struct spot end = { view_x(&view, seams[i].from_x), view_y(&view, seams[i].from_y) };
            part += down_rows(apart, end) < at;
        }
        apart->part_of[row] = part;
    }
    apart->parts_count = (int)count + 1;
    apart->parts = rows_for(count + 5, sizeof *apart->parts);
}

int rows_of_field(const struct apart *apart)
{
    return is_field(apart) ? apart->parts_count - (apart->kind.kind == MUSLIN_NODE_DIAGONAL ? 4 : 0) : 0;
}

/* Corner triangles, which are sewn on last: upper left, lower right, upper right, lower left. */
static void part_corners(struct apart *apart)
{
    struct muslin_quilt_diagonal_spec spec = MUSLIN_QUILT_DIAGONAL_SPEC_INIT;
    must(muslin_quilt_read_diagonal(apart->canvas->worked->design->quilt, apart->node, &spec, NULL));
    const int64_t sides = 2 * (spec.columns - 1) + 2 * (spec.rows - 1);
    for (size_t row = 0; row < apart->patches.count; row++) {
        const struct muslin_outline *patch = &apart->patches.rows[row];
        if (patch->node == apart->node && patch->region > sides && patch->region <= sides + 4)
            apart->part_of[row] = apart->parts_count + (int)(patch->region - sides) - 1;
    }
    apart->parts_count += 4;
}

/* ---- parts ------------------------------------------------------------------------------------------------------- */

/* Pieces of the node itself, each a part. */
static size_t part_own(struct apart *apart)
{
    const size_t own = own_patches(apart->node, &apart->patches, 0, apart->patches.count);
    for (size_t row = 0; row < own; row++) {
        apart->parts[apart->parts_count] = (struct part){ .first = row, .end = row + 1 };
        apart->part_of[row] = apart->parts_count++;
    }
    return own;
}

static void part_children(struct apart *apart)
{
    const struct worked *worked = apart->canvas->worked;
    size_t count;
    muslin_id *children = children_of(worked, apart->node, &count);
    apart->parts = rows_for(count + apart->patches.count, sizeof *apart->parts);
    size_t first = part_own(apart);
    for (size_t i = 0; i < count; i++) {
        struct part *part = &apart->parts[apart->parts_count];
        part->lying = lying_at(worked, apart->node, i, children[i]);
        part->node = part->lying.node;
        part->first = first;
        part->end = first = first + patches_in(worked, children[i]);
        for (size_t row = part->first; row < part->end; row++)
            apart->part_of[row] = apart->parts_count;
        apart->parts_count++;
    }
    free(children);
}

struct apart apart_of(const struct canvas *canvas, muslin_id node)
{
    struct apart apart = { .canvas = canvas, .node = node };
    apart.kind = node_of(canvas->worked, node);
    apart.patches = patches_of(canvas->worked, node, MUSLIN_STAGE_FINISHED);
    apart.part_of = rows_for(apart.patches.count, sizeof *apart.part_of);
    apart.moved = rows_for(apart.patches.count, sizeof *apart.moved);
    if (is_field(&apart))
        part_rows(&apart);
    else
        part_children(&apart);
    if (apart.kind.kind == MUSLIN_NODE_DIAGONAL)
        part_corners(&apart);
    return apart;
}

void apart_free(struct apart *apart)
{
    free(apart->part_of);
    free(apart->moved);
    free(apart->parts);
    patches_free(&apart->patches);
}

/* ---- moved ------------------------------------------------------------------------------------------------------- */

enum { GAP_WIDE = 17, GAP_NARROW = 13, SHOWN_LEAST = 4, ALL_SHOWN = 6, SHOWN_MOST = 14, SHOWN_OF_MANY = 9 };
enum { PART_LEAST = 12 };

static bool is_shown(const struct apart *apart, int part)
{
    return part < apart->shown_first || part >= apart->parts_count - apart->shown_last;
}

/* As many as have room to be seen, few in any case; of more the first and the last ones. */
static void choose_shown(struct apart *apart, double along)
{
    apart->gap = along < 200 ? GAP_NARROW : GAP_WIDE;
    int most = (int)fmax(SHOWN_LEAST, fmin(SHOWN_MOST, along / (apart->gap + PART_LEAST)));
    apart->shown_first = apart->parts_count;
    if (apart->parts_count <= fmax(ALL_SHOWN, most + 1))
        return;
    most = most > SHOWN_OF_MANY ? SHOWN_OF_MANY : most;
    apart->shown_last = most / 3;
    apart->shown_first = most - apart->shown_last;
}

static double extent_of(const struct apart *apart, int part, const struct view *view)
{
    const struct box box = box_of(&apart->patches, apart->parts[part].first, apart->parts[part].end, view);
    return apart->kind.axis == MUSLIN_AXIS_ACROSS ? box.right - box.left : box.bottom - box.top;
}

static double scale_for_join(const struct apart *apart, double width, double height)
{
    const struct view ticks = { 0, 0, 1 };
    const struct box all = box_of(&apart->patches, 0, apart->patches.count, &ticks);
    const bool is_across = apart->kind.axis == MUSLIN_AXIS_ACROSS;
    double along = 0;
    double gaps = 0;
    for (int i = 0; i < apart->parts_count; i++)
        if (is_shown(apart, i)) {
            along += extent_of(apart, i, &ticks);
            gaps += i > 0 ? apart->gap : 0;
        }
    if (is_across)
        return fmin(fmax(40, width - gaps) / along, height / (all.bottom - all.top));
    return fmin(fmax(40, height - gaps) / along, width / (all.right - all.left));
}

/* One after the other along the join. */
static void move_join(struct apart *apart)
{
    const bool is_across = apart->kind.axis == MUSLIN_AXIS_ACROSS;
    double shift = 0;
    for (int i = 0; i < apart->parts_count; i++) {
        struct part *part = &apart->parts[i];
        part->moved = is_across ? (struct spot){ shift, 0 } : (struct spot){ 0, shift };
        shift += is_shown(apart, i) ? apart->gap : -extent_of(apart, i, &apart->view);
        if (is_shown(apart, i))
            continue;
        for (size_t row = part->first; row < part->end; row++)
            apart->part_of[row] = PART_LEFT_OUT;
        apart->is_shortened = true;
    }
}

static void move_rows(struct apart *apart)
{
    const bool is_diagonal = apart->kind.kind == MUSLIN_NODE_DIAGONAL;
    const int rows = rows_of_field(apart);
    const double step = apart->step;
    for (int i = 0; i < rows; i++)
        apart->parts[i].moved = (struct spot){ is_diagonal ? -i * step : 0, i * step };
    if (!is_diagonal)
        return;
    const double longest = -step * (rows - 1) / 2;
    apart->parts[rows].moved = (struct spot){ longest - step, -longest - step };
    apart->parts[rows + 1].moved = (struct spot){ longest + step, -longest + step };
    apart->parts[rows + 2].moved = (struct spot){ step, -step };
    apart->parts[rows + 3].moved = (struct spot){ -rows * step, rows * step };
}

static struct spot middle_of_part(const struct apart *apart, const struct part *part)
{
    if (part->end == part->first + 1)
        return middle_of(&apart->patches, part->first, &apart->view);
    const struct box box = box_of(&apart->patches, part->first, part->end, &apart->view);
    return (struct spot){ (box.left + box.right) / 2, (box.top + box.bottom) / 2 };
}

/* Away from the middle of all. */
static void move_away(struct apart *apart, double share)
{
    const struct box all = box_of(&apart->patches, 0, apart->patches.count, &apart->view);
    for (int i = 0; i < apart->parts_count; i++) {
        const struct spot middle = middle_of_part(apart, &apart->parts[i]);
        apart->parts[i].moved.x = share * (middle.x - (all.left + all.right) / 2);
        apart->parts[i].moved.y = share * (middle.y - (all.top + all.bottom) / 2);
    }
}

void move_apart(struct apart *apart, double width, double height)
{
    const struct muslin_node_size size = size_of(apart->canvas->worked, apart->node);
    const bool is_join = apart->kind.kind == MUSLIN_NODE_JOIN;
    const int rows = rows_of_field(apart) + 1;
    choose_shown(apart, apart->kind.axis == MUSLIN_AXIS_ACROSS ? width : height);
    apart->step = fmin(apart->kind.kind == MUSLIN_NODE_SIXTY ? 12 : 9, fmin(width, height) / (4 * rows));
    const double steps = apart->step * rows;
    apart->view.unit = is_join ? scale_for_join(apart, width, height)
                     : is_field(apart) ? unit_for(&size, width - steps, height - steps)
                                       : unit_for(&size, width / 1.3, height / 1.3);
    if (is_join)
        move_join(apart);
    else if (is_field(apart))
        move_rows(apart);
    else
        move_away(apart, apart->kind.kind == MUSLIN_NODE_UNIT || apart->kind.kind == MUSLIN_NODE_SHAPE ? 0.3 : 0.2);
    for (size_t row = 0; row < apart->patches.count; row++)
        if (apart->part_of[row] >= 0)
            apart->moved[row] = apart->parts[apart->part_of[row]].moved;
}
