/* draw_top.c - the top: in its fabrics, with letters of blocks and rows, numbers of diagonal rows; or outlines alone.
 *
 * SPDX-License-Identifier: MIT
 *
 * A small one has no letters: they would hide it. */
#include <math.h>
#include <stdlib.h>

#include "picture.h"

enum { BESIDE = 30, BELOW = 24, DEEPEST = 40 };

struct labels {
    const struct canvas *canvas;
    const struct patches *patches;
    const struct view *view;
    double half;        /* of the top's width: rows are wider */
    struct place *rows; /* in the order in which they are met: those within others after them */
    size_t rows_count;
};

double unit_for(const struct muslin_node_size *size, double width, double height)
{
    return fmin(width / (double)size->finished_width, height / (double)size->finished_height);
}

/* ---- blocks and rows --------------------------------------------------------------------------------------------- */

/* In the middle of a block; smaller where the block is. */
static void label_block(const struct labels *labels, const struct place *place, const struct box *box)
{
    char text[WORD_ROOM];
    double size = LETTER_SIZE + 1;
    part_name(labels->canvas->worked, place->node, place->other_way, text);
    while (size > SMALL_SIZE &&
           plate_room(text, size, PLATE_BOX).width > (box->right - box->left) * 0.8)
        size -= 0.5;
    if (text[0] != '\0')
        write_words(labels->canvas->cairo, (box->left + box->right) / 2, (box->top + box->bottom) / 2, text, size,
                    PLATE_BOX);
}

/* Rows that hold other rows have none: a border's long rows hold the whole top. */
static bool holds_rows(const struct labels *labels, size_t row)
{
    for (size_t i = row + 1; i < labels->rows_count; i++)
        if (labels->rows[i].first < labels->rows[row].end)
            return true;
    return false;
}

/* Beside the top, where they are not too close to each other. */
static void label_rows(const struct labels *labels)
{
    char text[WORD_ROOM];
    double end = -HUGE_VAL;
    cairo_t *cairo = labels->canvas->cairo;
    for (size_t i = 0; i < labels->rows_count; i++) {
        const struct place *row = &labels->rows[i];
        const struct box box = box_of(labels->patches, row->first, row->end, labels->view);
        part_name(labels->canvas->worked, row->node, row->other_way, text);
        const struct room room = words_room(text, LETTER_SIZE);
        const double y = (box.top + box.bottom) / 2;
        if (text[0] == '\0' || holds_rows(labels, i) || y - room.height / 2 < end)
            continue;
        end = y + room.height / 2;
        write_up_to(cairo, labels->view->x - 5, y, text, LETTER_SIZE);
    }
}

static bool is_row(const struct labels *labels, const struct place *place, const struct box *box)
{
    const struct muslin_node node = node_of(labels->canvas->worked, place->node);
    return node.kind == MUSLIN_NODE_JOIN && named_of(labels->canvas->worked->design, place->node) == NULL &&
           box->right - box->left > labels->half &&
           node.axis == (place->turns % 2 == 0 ? MUSLIN_AXIS_ACROSS : MUSLIN_AXIS_DOWN);
}

/* ---- on point ---------------------------------------------------------------------------------------------------- */

/* The first block of a diagonal row, from the upper right: of the top row of blocks from the right, then of the left
 * column downwards. */
static size_t block_that_begins(const struct point_field *field, int64_t row)
{
    const int64_t line = field->columns - 1 - row;
    return (size_t)(line >= 0 ? line : -line * field->columns);
}

/* Each row has its number at the edge of its first block. */
static void number_rows(const struct labels *labels, const struct place *place, const struct point_field *field)
{
    const struct worked *worked = labels->canvas->worked;
    size_t count;
    muslin_id *blocks = children_of(worked, place->node, &count);
    const size_t start = place->first + own_patches(place->node, labels->patches, place->first, place->end);
    for (int64_t row = 0; row + 1 < field->columns + field->rows; row++) {
        const size_t begins = block_that_begins(field, row);
        size_t first = start;
        char text[24];
        for (size_t i = 0; i < begins; i++)
            first += patches_in(worked, blocks[i]);
        const size_t end = first + patches_in(worked, blocks[begins]);
        const struct box box = box_of(labels->patches, first, end, labels->view);
        snprintf(text, sizeof text, "%d", (int)row + 1);
        write_words(labels->canvas->cairo, (3 * box.left + box.right) / 4, (3 * box.top + box.bottom) / 4, text,
                    SMALL_SIZE, PLATE_RING);
    }
    free(blocks);
}

/* ---- all --------------------------------------------------------------------------------------------------------- */

static bool label_place(void *with, const struct place *place)
{
    struct labels *labels = with;
    const struct design *design = labels->canvas->worked->design;
    const struct named *named = named_of(design, place->node);
    const struct box box = box_of(labels->patches, place->first, place->end, labels->view);
    if (named != NULL && named->is_block) {
        label_block(labels, place, &box);
        return false;
    }
    for (size_t i = 0; i < design->fields_used; i++)
        if (design->fields[i].id == place->node && place->turns == 0)
            number_rows(labels, place, &design->fields[i]);
    if (is_row(labels, place, &box))
        labels->rows[labels->rows_count++] = *place;
    return place->depth < DEEPEST;
}

/* A small one is drawn larger and made smaller, so that its seams and hatchings do not hide its pieces. */
static void draw_cloths(const struct canvas *canvas, const struct patches *patches, const struct view *view,
                        bool is_small_top)
{
    const double share = is_small_top ? 0.4 : 1;
    const struct view larger = { view->x / share, view->y / share, view->unit / share };
    cairo_save(canvas->cairo);
    cairo_scale(canvas->cairo, share, share);
    draw_patches(canvas->cairo, canvas->worked, patches, 0, patches->count, &larger, NULL);
    cairo_restore(canvas->cairo);
}

void draw_top(const struct canvas *canvas, bool is_blank)
{
    const struct worked *worked = canvas->worked;
    const bool is_labelled = canvas->width >= TOP_LABELLED;
    const double unit = unit_for(&worked->top, canvas->width - (is_labelled ? BESIDE : 0),
                                 canvas->height - (is_labelled ? BELOW : 0));
    const struct view view = { 0, 0, unit };
    struct patches patches = patches_of(worked, worked->design->top, MUSLIN_STAGE_FINISHED);
    struct labels labels = { canvas, &patches, &view, (double)worked->top.finished_width * unit / 2, NULL, 0 };
    if (is_blank)
        outline_patches(canvas->cairo, &patches, &view);
    else
        draw_cloths(canvas, &patches, &view, !is_labelled);
    if (!is_blank && is_labelled) {
        labels.rows = rows_for(DEEPEST * patches.count, sizeof *labels.rows);
        visit_places(worked, worked->design->top, &patches, label_place, &labels);
        label_rows(&labels);
        free(labels.rows);
    }
    patches_free(&patches);
}
