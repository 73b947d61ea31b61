/* finishing_backing_panels.c - one layout of a backing, piece by piece.
 *
 * SPDX-License-Identifier: MIT */
#include "finishing_inside.h"

static struct muslin_panel whole_panel(const struct msl_backing *backing, const struct muslin_backing *row)
{
    struct muslin_panel panel = { 0 };
    panel.role = MUSLIN_PANEL_ROLE_WHOLE;
    panel.cut_width = backing->usable;
    panel.cut_length = row->panel_length;
    panel.count = 1;
    return panel;
}

/* Side, centre, side. */
static void make_centre(struct muslin_panel *panel, const struct muslin_backing *row, int64_t index)
{
    panel->role = MUSLIN_PANEL_ROLE_CENTRE;
    if (index == 1)
        return;
    panel->role = MUSLIN_PANEL_ROLE_SIDE;
    panel->cut_width = row->strip_cut;
}

/* Half, insert, half. Of an odd number of ticks the second half has one more. The insert's strips lie across the
 * cloth: they are as long as it is wide. */
static void make_insert(struct muslin_panel *panel, const struct muslin_backing *row, int64_t index)
{
    if (index == 1) {
        panel->role = MUSLIN_PANEL_ROLE_INSERT;
        panel->cut_length = row->strip_cut;
        panel->count = row->pieces - 2;
        return;
    }
    panel->role = MUSLIN_PANEL_ROLE_HALF;
    panel->cut_width = (panel->cut_width + index / 2) / 2;
}

static struct muslin_panel panel_at(const struct msl_backing *backing, const struct muslin_backing *row, int64_t index)
{
    struct muslin_panel panel = whole_panel(backing, row);
    panel.position = (int32_t)(index + 1);
    if (row->layout == MUSLIN_BACKING_LAYOUT_CENTRE_ALONG || row->layout == MUSLIN_BACKING_LAYOUT_CENTRE_ACROSS)
        make_centre(&panel, row, index);
    if (row->layout >= MUSLIN_BACKING_LAYOUT_INSERT_ALONG)
        make_insert(&panel, row, index);
    return panel;
}

/* An insert is one row, however many strips it is joined from. */
static size_t rows_for(const struct muslin_backing *row)
{
    return row->layout >= MUSLIN_BACKING_LAYOUT_INSERT_ALONG ? 3 : (size_t)row->pieces;
}

muslin_status muslin_backing_panels(const struct muslin_backing_spec *spec, int32_t layout, struct muslin_panel *rows,
                                    size_t row_size, size_t capacity, size_t *count, struct muslin_problem *problem)
{
    struct msl_check check = msl_check_start(problem);
    struct msl_backing backing = { 0 };
    msl_backing_read(&check, &backing, spec);
    msl_want_choice(&check, MUSLIN_ARG_LAYOUT, layout, MUSLIN_BACKING_LAYOUT_ONE_WIDTH,
                    MUSLIN_BACKING_LAYOUT_INSERT_ACROSS);
    if (check.status != MUSLIN_OK)
        return check.status;
    struct muslin_backing row;
    msl_backing_lay(&backing, layout, &row);
    if (row.possible == 0)
        return msl_fail(&check, MUSLIN_ERR_NO_FIT, MUSLIN_ARG_LAYOUT, layout, 0);
    size_t pieces = rows_for(&row);
    if (msl_rows_wanted(&check, rows, row_size, (uint32_t)sizeof *rows, capacity, count, pieces) == 0)
        return check.status;
    for (size_t i = 0; i < pieces; i++) {
        struct muslin_panel panel = panel_at(&backing, &row, (int64_t)i);
        msl_write_row(rows, row_size, i, &panel, (uint32_t)sizeof panel);
    }
    return MUSLIN_OK;
}
