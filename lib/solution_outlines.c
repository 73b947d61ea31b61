/* solution_outlines.c - the outlines of the patches under a node, a page at a time.
 *
 * SPDX-License-Identifier: MIT */
#include "solution_drawing.h"

enum { OUTLINE_LEAST = sizeof(struct muslin_outline), CORNER_LEAST = sizeof(struct muslin_outline_corner) };

/* Where the rows go. */
struct page {
    void *rows;
    size_t row_size;
    size_t capacity;
    void *corners;
    size_t corner_size;
    size_t corner_capacity;
    size_t written;
    size_t corners_written;
};

static void write_corners(const struct msl_drawing *drawing, const struct msl_drawn *drawn, struct page *page)
{
    for (int32_t i = 0; i < drawn->ring.corners; i++) {
        const struct msl_bound bound = msl_drawn_bound(drawing, drawn, i);
        struct muslin_outline_corner corner = { .x = drawn->ring.x[i], .y = drawn->ring.y[i], .seam = bound.seam };
        if (bound.node != 0)
            corner.seam_node = msl_id(drawing->solution->quilt, MUSLIN_SORT_NODE, bound.node);
        msl_write_row(page->corners, page->corner_size, page->corners_written++, &corner, sizeof corner);
    }
}

static void write_outline(const struct msl_drawing *drawing, const struct msl_drawn *drawn, struct page *page)
{
    const struct muslin_quilt *quilt = drawing->solution->quilt;
    const struct msl_print_lying lying = msl_drawn_lying(drawing, drawn->ring.turn);
    const struct muslin_outline row = { .size = sizeof row,
                                        .node = msl_id(quilt, MUSLIN_SORT_NODE, drawing->at.node),
                                        .fabric = msl_id(quilt, MUSLIN_SORT_FABRIC, drawn->ring.fabric),
                                        .first_corner = (int64_t)page->corners_written,
                                        .corners = drawn->ring.corners,
                                        .region = drawn->ring.region,
                                        .quarter_turns = lying.eighths / 2,
                                        .mirrored = lying.mirrored,
                                        .on_point = lying.eighths & 1 };
    write_corners(drawing, drawn, page);
    msl_write_row(page->rows, page->row_size, page->written++, &row, sizeof row);
}

/* Draws from outline `first` on, as many of `left` as there is room for. */
static void draw(struct msl_drawing *drawing, int64_t first, int64_t left, struct page *page)
{
    struct msl_drawn drawn;
    for (int64_t i = 0; i < left && page->written < page->capacity; i++) {
        msl_draw_patch(drawing, first + i, &drawn);
        if ((size_t)drawn.ring.corners > page->corner_capacity - page->corners_written)
            return;
        write_outline(drawing, &drawn, page);
    }
}

static void want_page(struct msl_check *check, const struct page *page)
{
    if (page->capacity == 0)
        return;
    msl_want_row_size(check, page->row_size, OUTLINE_LEAST);
    msl_want_pointer(check, MUSLIN_ARG_ROWS, page->rows);
    msl_want_row_size(check, page->corner_size, CORNER_LEAST);
    msl_want_pointer(check, MUSLIN_ARG_CORNER_ROW, page->corners);
}

muslin_status muslin_solution_outlines(const struct muslin_solution *solution, muslin_id node, int32_t stage,
                                       int64_t first, struct muslin_outline *rows, size_t row_size, size_t capacity,
                                       struct muslin_outline_corner *corners, size_t corner_size,
                                       size_t corner_capacity, size_t *count, size_t *written,
                                       struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct page page = { rows, row_size, capacity, corners, corner_size, corner_capacity, 0, 0 };
    msl_want_solution(&check, solution);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, count);
    msl_want_pointer(&check, MUSLIN_ARG_OUTPUT, written);
    want_page(&check, &page);
    uint32_t number = msl_want_node(&check, solution, node);
    msl_want_choice(&check, MUSLIN_ARG_STAGE, stage, MUSLIN_STAGE_FINISHED, MUSLIN_STAGE_RAW);
    if (check.status != MUSLIN_OK)
        return check.status;
    int64_t patches = msl_size_of(solution, number)->patches;
    msl_want_between(&check, MUSLIN_ARG_INDEX, first, 0, patches);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct msl_drawing drawing;
    msl_draw_start(&drawing, solution, number, stage);
    draw(&drawing, first, patches - first, &page);
    *count = (size_t)(patches - first);
    *written = page.written;
    return MUSLIN_OK;
}
