/* table_backing.c - muslin_backing(): ways to lay out a backing, side by side.
 *
 * SPDX-License-Identifier: MIT */
#include "sql.h"
#include "words.h"

SQLITE_EXTENSION_INIT3

static bool read_wish(struct trouble *trouble, sqlite3_value **arguments, struct muslin_backing_spec *spec)
{
    muslin_len beyond = spec->margin_left;
    if (!length_from(trouble, "quilt's width", arguments[0], &spec->quilt_width) ||
        !length_from(trouble, "quilt's length", arguments[1], &spec->quilt_length) ||
        !length_if(trouble, "width of the cloth", arguments[2], &spec->fabric_width) ||
        !length_if(trouble, "length beyond the quilt", arguments[3], &beyond) ||
        !length_if(trouble, "seam of the backing", arguments[4], &spec->allowance) ||
        !length_if(trouble, "selvage", arguments[5], &spec->selvage) ||
        !length_if(trouble, "step", arguments[6], &spec->step))
        return false;
    spec->margin_left = spec->margin_right = spec->margin_top = spec->margin_bottom = beyond;
    return true;
}

static void put_layout(struct answer *answer, const struct muslin_backing *layout)
{
    put_text(answer, word_of(layout_words, layout->layout));
    put_number(answer, layout->best);
    put_number(answer, layout->needed_width);
    put_number(answer, layout->needed_length);
    put_number(answer, layout->panels);
    put_number(answer, layout->panel_length);
    put_number(answer, layout->seams);
    put_number(answer, layout->joined_width);
    put_number(answer, layout->joined_length);
    put_number(answer, layout->cloth_length);
    put_number(answer, layout->bought);
    put_number(answer, layout->narrower_by);
}

static bool fill_backing(struct trouble *trouble, sqlite3_value **arguments, struct answer *answer)
{
    enum { LAYOUTS_MOST = 16 };
    struct muslin_problem problem = MUSLIN_PROBLEM_INIT;
    struct muslin_backing_spec spec = MUSLIN_BACKING_SPEC_INIT;
    struct muslin_backing layouts[LAYOUTS_MOST];
    size_t count = 0;
    if (!read_wish(trouble, arguments, &spec))
        return false;
    muslin_status status = muslin_backing_layouts(&spec, layouts, sizeof layouts[0], LAYOUTS_MOST, &count, &problem);
    if (!was_answered(trouble, status, &problem))
        return false;
    for (size_t i = 0; i < count; i++)
        if (layouts[i].possible)
            put_layout(answer, &layouts[i]);
    return true;
}

const struct table_function backing_table = {
    .name = "muslin_backing",
    .columns = "CREATE TABLE backing(layout TEXT, best INTEGER, needed_width INTEGER, needed_length INTEGER, "
               "panels INTEGER, panel_length INTEGER, seams INTEGER, joined_width INTEGER, joined_length INTEGER, "
               "cloth_length INTEGER, bought INTEGER, narrower_by INTEGER, quilt_width HIDDEN, quilt_length HIDDEN, "
               "fabric_width HIDDEN, beyond HIDDEN, seam HIDDEN, selvage HIDDEN, step HIDDEN)",
    .usage = "muslin_backing('60 in', '72 in', '42 in')",
    .shown = 12,
    .arguments = 7,
    .required = 2,
    .innocuous = true,
    .fill = fill_backing
};
