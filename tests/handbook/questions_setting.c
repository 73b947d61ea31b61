/* questions_setting.c - what the handbook asks about sashes, borders and settings on point.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

/* ---- on point --------------------------------------------------------------------------------------------------- */

static struct muslin_setting_point_spec point_spec(struct figure *f)
{
    static const char *const layouts[] = { "plain", "outer", "cut", "inner", NULL };
    static const char *const policies[] = { "exact", "customary", "oversize", NULL };
    struct muslin_setting_point_spec spec = MUSLIN_SETTING_POINT_SPEC_INIT;
    spec.flags = count_or(f, "diagonal_first", 0) != 0 ? MUSLIN_SETTING_POINT_DIAGONAL_FIRST : 0;
    spec.block = length(f, "block");
    spec.columns = count_or(f, "columns", 4);
    spec.rows = count_or(f, "rows", 4);
    spec.sash = length_or(f, "sash", 0);
    spec.allowance = length_or(f, "allowance", MUSLIN_QUARTER_INCH);
    spec.trim_room = length_or(f, "trim_room", 0);
    spec.factor_numerator = count_or(f, "factor_above", 0);
    spec.factor_denominator = count_or(f, "factor_below", 0);
    spec.layout = given(f, "layout") != NULL ? choice(f, "layout", layouts) : MUSLIN_POINT_LAYOUT_PLAIN;
    spec.policy = choice(f, "policy", policies);
    return spec;
}

/* Cut and measured on the same grid. */
static void point(struct figure *f)
{
    struct muslin_setting_point_spec spec = point_spec(f);
    struct muslin_rounding_spec rounding = rounding_of(f);
    struct muslin_setting_point_plan made = { .size = sizeof made };
    must(f, muslin_setting_point(&spec, &rounding, &rounding, &made, NULL));
    answer_count(f, "alternates", made.alternates);
    answer_count(f, "side_triangles", made.side_triangles);
    answer_count(f, "side_squares", made.side_squares);
    answer_count(f, "corner_triangles", made.corner_triangles);
    answer_count(f, "corner_squares", made.corner_squares);
    answer_length(f, "alternate_cut", made.alternate_cut);
    answer_length(f, "side_square_cut", made.side_square_cut);
    answer_length(f, "side_need", made.side_need);
    answer_length(f, "corner_square_cut", made.corner_square_cut);
    answer_length(f, "corner_need", made.corner_need);
    answer_length(f, "diagonal", made.diagonal);
}

/* A square that stands on its corner and shows this diagonal. */
static void square_on_point(struct figure *f)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_rounding_spec rounding = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded side = { .size = sizeof side };
    muslin_len cut;
    seam.allowance = length(f, "allowance");
    must(f, muslin_length_over_root2(length(f, "diagonal"), &rounding, &side));
    must(f, muslin_seam_cut_from_finished(side.value, &seam, &cut, NULL));
    answer_length(f, "cut", cut);
}

/* ---- sashes ----------------------------------------------------------------------------------------------------- */

static struct muslin_setting_sashed_spec sashed_spec(struct figure *f)
{
    struct muslin_setting_sashed_spec spec = MUSLIN_SETTING_SASHED_SPEC_INIT;
    spec.flags = count(f, "frame") != 0 ? MUSLIN_SETTING_SASHED_FRAME | MUSLIN_SETTING_SASHED_CORNERSTONES
                                        : MUSLIN_SETTING_SASHED_CORNERSTONES;
    spec.block_width = length(f, "block");
    spec.block_height = spec.block_width;
    spec.columns = count(f, "columns");
    spec.rows = count_or(f, "rows", 1);
    spec.sash_width = length(f, "sash");
    spec.sash_height = spec.sash_width;
    spec.usable_width = length_or(f, "usable_width", spec.usable_width);
    return spec;
}

/* With a border all round where one is given. */
static void sashed(struct figure *f)
{
    struct muslin_setting_sashed_spec spec = sashed_spec(f);
    struct muslin_setting_sashed_plan made = { .size = sizeof made };
    muslin_len border = length_or(f, "border", 0);
    must(f, muslin_setting_sashed(&spec, &made, NULL));
    answer_length(f, "finished_width", made.finished_width + 2 * border);
    answer_length(f, "finished_length", made.finished_length + 2 * border);
    answer_count(f, "vertical_sashes", made.vertical_sashes);
    answer_count(f, "horizontal_sashes", made.horizontal_sashes);
    answer_count(f, "cornerstones", made.cornerstones);
}

/* The strips for the horizontal sashes, which are the second row of three. */
static void sash_strips(struct figure *f)
{
    struct muslin_setting_sashed_spec spec = sashed_spec(f);
    struct muslin_sash_piece rows[3];
    size_t found;
    must(f, muslin_setting_sashed_pieces(&spec, rows, sizeof rows[0], 3, &found, NULL));
    answer_count(f, "pieces", rows[1].pieces);
    answer_length(f, "cut_length", rows[1].cut_length);
    answer_length(f, "cut_width", rows[1].cut_width);
    answer_count(f, "per_strip", rows[1].per_strip);
    answer_count(f, "strips", rows[1].strips);
}

/* ---- borders ---------------------------------------------------------------------------------------------------- */

static struct muslin_border border_made(struct figure *f)
{
    static const char *const styles[] = { "sides first", "top first", "cornerstones", "mitred", NULL };
    static const char *const joins[] = { "butted", "straight", "diagonal", "bias ends", NULL };
    struct muslin_border_spec spec = MUSLIN_BORDER_SPEC_INIT;
    struct muslin_border made = { .size = sizeof made };
    spec.flags = count_or(f, "lengthwise", 0) != 0 ? MUSLIN_BORDER_LENGTHWISE : 0;
    spec.unfinished_width = length(f, "unfinished_width");
    spec.unfinished_length = length(f, "unfinished_length");
    spec.finished_border = length(f, "border");
    spec.allowance = length_or(f, "allowance", MUSLIN_QUARTER_INCH);
    spec.usable_width = length_or(f, "usable_width", spec.usable_width);
    spec.mitre_extra = length_or(f, "mitre_extra", 0);
    spec.style = choice(f, "style", styles);
    spec.join = given(f, "join") != NULL ? choice(f, "join", joins) : MUSLIN_JOIN_STRAIGHT;
    must(f, muslin_border_plan(&spec, &made, NULL));
    return made;
}

static void border(struct figure *f)
{
    struct muslin_border made = border_made(f);
    answer_length(f, "cut_width", made.cut_width);
    answer_length(f, "side_cut_length", made.side_cut_length);
    answer_length(f, "top_cut_length", made.top_cut_length);
    answer_length(f, "cornerstone_cut", made.cornerstone_cut);
    answer_length(f, "total_length", made.total_length);
    answer_length(f, "total_with_cornerstones", made.total_length + 4 * made.cornerstone_cut);
    answer_count(f, "strips", made.strips);
    answer_length(f, "cloth_length", made.cloth_length);
    answer_length(f, "new_unfinished_width", made.unfinished_width);
    answer_length(f, "new_unfinished_length", made.unfinished_length);
    answer_length(f, "finished_width", made.finished_width);
    answer_length(f, "finished_length", made.finished_length);
}

/* A border cut along the cloth, and what is bought for it. */
static void border_cloth(struct figure *f)
{
    struct muslin_border made = border_made(f);
    struct muslin_purchase_spec spec = MUSLIN_PURCHASE_SPEC_INIT;
    struct muslin_purchase bought = { .size = sizeof bought };
    spec.needed = made.cloth_length;
    spec.extra = length(f, "margin");
    must(f, muslin_fabric_purchase(&spec, &bought, NULL));
    answer_length(f, "cut_width", made.cut_width);
    answer_length(f, "with_margin", bought.with_extra);
    answer_length(f, "bought", bought.bought);
}

/* Two pieces joined end to end with a straight seam. */
static void joined_pair(struct figure *f)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    struct muslin_sewn_row made = { .size = sizeof made };
    const muslin_len pieces[] = { length(f, "a"), length(f, "b") };
    seam.allowance = length(f, "allowance");
    must(f, muslin_seam_row(pieces, 2, &seam, &made, NULL));
    answer_length(f, "joined", made.unfinished);
}

extern const struct question questions_setting[];

const struct question questions_setting[] = {
    { "point", point },
    { "square_on_point", square_on_point },
    { "sashed", sashed },
    { "sash_strips", sash_strips },
    { "border", border },
    { "border_cloth", border_cloth },
    { "joined_pair", joined_pair },
    { NULL, NULL },
};
