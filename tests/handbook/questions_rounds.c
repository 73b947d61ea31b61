/* questions_rounds.c - what the handbook asks about rounds.h, and about borders.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static void point_border(struct figure *f)
{
    struct muslin_point_border_spec spec = MUSLIN_POINT_BORDER_SPEC_INIT;
    struct muslin_point_border border = { .size = sizeof border };
    struct muslin_rounding_spec rounding = rounding_of(f);
    spec.side_finished = length(f, "side");
    spec.diagonal_finished = length(f, "diagonal");
    spec.allowance = length(f, "allowance");
    must(f, muslin_point_border_plan(&spec, &rounding, &rounding, &border, NULL));
    answer_length(f, "square_cut", border.square_cut);
    answer_length(f, "setting_cut", border.setting_cut);
    answer_length(f, "end_cut", border.end_cut);
    answer_count(f, "squares", border.squares);
    answer_count(f, "setting_triangles", border.setting_triangles);
    answer_count(f, "end_triangles", border.end_triangles);
}

/* A medallion of one plain round. */
static void plain_round(struct figure *f)
{
    static const char *const corners[] = { "squares", "through", NULL };
    struct muslin_medallion_spec spec = MUSLIN_MEDALLION_SPEC_INIT;
    struct muslin_medallion quilt = { .size = sizeof quilt };
    struct muslin_medallion_row row = { .size = sizeof row, .kind = MUSLIN_ROUND_PLAIN };
    spec.centre_width = length(f, "width");
    spec.centre_height = length(f, "height");
    spec.allowance = length(f, "allowance");
    row.width = length(f, "border");
    row.corner = choice(f, "corner", corners);
    must(f, muslin_medallion_plan(&spec, &row, sizeof row, 1, &quilt, NULL));
    answer_length(f, "cut_width", row.side_cut);
    answer_length(f, "side_length", row.side_length);
    answer_length(f, "top_length", row.top_length);
    answer_length(f, "total_length", 2 * (row.side_length + row.top_length));
    answer_count(f, "corner_squares", row.corner_squares);
    answer_length(f, "finished_width", quilt.finished_width);
    answer_length(f, "finished_height", quilt.finished_height);
    answer_length(f, "unfinished_width", quilt.unfinished_width);
    answer_length(f, "unfinished_height", quilt.unfinished_height);
}

static void frame(struct figure *f)
{
    struct muslin_frame_spec spec = MUSLIN_FRAME_SPEC_INIT;
    struct muslin_frame pieces = { .size = sizeof pieces };
    struct muslin_rounding_spec rounding = rounding_of(f);
    spec.opening_width = length(f, "width");
    spec.opening_height = length(f, "height");
    spec.frame_width = length(f, "frame");
    spec.allowance = length(f, "allowance");
    must(f, muslin_frame_pieces(&spec, &rounding, &pieces, NULL));
    answer_length(f, "cut_width", pieces.cut_width);
    answer_length(f, "top_long", pieces.top_long);
    answer_length(f, "side_long", pieces.side_long);
}

/* A border cut along the cloth in whole pieces, and the cloth bought for it, in eighths of a yard. */
static void lengthwise_border(struct figure *f)
{
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border border = { .size = sizeof border };
    struct muslin_purchase_spec wanted = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase bought = { .size = sizeof bought };
    spec.flags = MUSLIN_BORDER_LENGTHWISE;
    spec.unfinished_width = length(f, "width");
    spec.unfinished_length = length(f, "length");
    spec.finished_border = length(f, "border");
    spec.allowance = length(f, "allowance");
    spec.usable_width = length(f, "usable");
    must(f, muslin_border_plan(&spec, &border, NULL));
    wanted.needed = border.cloth_length;
    wanted.extra = length(f, "margin");
    must(f, muslin_fabric_purchase(&wanted, &bought, NULL));
    answer_length(f, "cloth_length", border.cloth_length);
    answer_length(f, "with_margin", bought.with_extra);
    answer_length(f, "bought", bought.bought);
}

extern const struct question questions_rounds[];

const struct question questions_rounds[] = {
    { "point_border", point_border },
    { "plain_round", plain_round },
    { "frame", frame },
    { "lengthwise_border", lengthwise_border },
    { NULL, NULL },
};
