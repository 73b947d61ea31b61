/* questions_fit.c - what the handbook asks about fit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static void bed_size(struct figure *f)
{
    static const char *const rules[] = { "depth", "over the joint", "floor", "given", NULL };
    struct muslin_bed_spec spec = MUSLIN_BED_SPEC_INIT;
    struct muslin_bed bed = { .size = sizeof bed };
    spec.mattress_width = length(f, "mattress_width");
    spec.mattress_length = length(f, "mattress_length");
    spec.mattress_depth = length_or(f, "depth", 0);
    spec.side_drop = length_or(f, "drop", 0);
    spec.foot_drop = spec.side_drop;
    spec.pillow_tuck = length_or(f, "tuck", 0);
    spec.drop = choice(f, "rule", rules);
    must(f, muslin_bed_size(&spec, &bed, NULL));
    answer_length(f, "width", bed.finished_width);
    answer_length(f, "length", bed.finished_length);
}

/* What a quilt of a published size is long enough for. */
static void bed_cover(struct figure *f)
{
    struct muslin_bed_covered_spec spec = MUSLIN_BED_COVERED_SPEC_INIT;
    struct muslin_bed_cover cover = { .size = sizeof cover };
    spec.quilt_width = length(f, "quilt_width");
    spec.quilt_length = length(f, "quilt_length");
    spec.mattress_width = length(f, "mattress_width");
    spec.mattress_length = length(f, "mattress_length");
    spec.mattress_depth = length_or(f, "depth", 0);
    spec.pillow_tuck = length_or(f, "tuck", 0);
    must(f, muslin_bed_covered(&spec, &cover, NULL));
    answer_length(f, "side_drop", cover.side_drop);
    answer_length(f, "foot_drop", cover.foot_drop);
    answer_count(f, "reaches_depth", cover.reaches_depth);
}

static void blocks_across(struct figure *f)
{
    static const char *const directions[] = { "up", "down", "nearest", NULL };
    struct muslin_fit_across_spec spec = MUSLIN_FIT_ACROSS_SPEC_INIT;
    struct muslin_fit_across_blocks across = { .size = sizeof across };
    spec.wanted = length(f, "wanted");
    spec.border = length(f, "border");
    spec.block = length(f, "block");
    spec.sash = length(f, "sash");
    spec.direction = choice(f, "direction", directions);
    must(f, muslin_fit_across(&spec, &across, NULL));
    answer_count(f, "blocks", across.blocks);
    answer_length(f, "width", across.finished_width);
    answer_count(f, "hundredths", across.room * 100 / across.pitch);
}

/* The setting that comes nearest, of one size of block, sash and border. */
static void fit_nearest(struct figure *f)
{
    struct muslin_fit_spec spec = MUSLIN_FIT_SPEC_INIT;
    struct muslin_fit fit = { .size = sizeof fit };
    spec.flags = MUSLIN_FIT_ALLOW_SASHED;
    spec.wanted_width = length(f, "wanted");
    spec.wanted_length = spec.wanted_width;
    spec.block_least = spec.block_most = length(f, "block");
    spec.sash_least = spec.sash_most = length(f, "sash");
    spec.border_least = spec.border_most = length(f, "border");
    must(f, muslin_fit_nearest(&spec, &fit, NULL));
    answer_count(f, "blocks", fit.columns);
    answer_length(f, "width", fit.finished_width);
}

static void triangle_rows(struct figure *f)
{
    static const char *const directions[] = { "up", "down", "nearest", NULL };
    struct muslin_fit_triangles_spec spec = MUSLIN_FIT_TRIANGLES_SPEC_INIT;
    struct muslin_fit_triangle_rows rows = { .size = sizeof rows };
    spec.wanted_width = length(f, "width");
    spec.wanted_length = length(f, "length");
    spec.height = length(f, "height");
    spec.rows_direction = choice(f, "rows_direction", directions);
    spec.sides_direction = choice(f, "sides_direction", directions);
    must(f, muslin_fit_triangles(&spec, &rows, NULL));
    answer_count(f, "rows", rows.rows);
    answer_count(f, "sides", rows.sides);
    answer_length(f, "made_length", rows.finished_length);
    answer_length(f, "strip_cut", rows.strip_cut);
}

/* A cut piece: its seams come off before the call and are put back by it. */
static void rescale(struct figure *f)
{
    struct muslin_fit_rescale_spec spec = MUSLIN_FIT_RESCALE_SPEC_INIT;
    struct muslin_fit_rescale_row rows[2] = { { .size = sizeof rows[0] }, { .size = sizeof rows[1] } };
    struct muslin_fit_rescaled rescaled = { .size = sizeof rescaled };
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    spec.numerator = count(f, "numerator");
    spec.denominator = count(f, "denominator");
    spec.allowance = seam.allowance = length(f, "allowance");
    must(f, muslin_seam_finished_from_cut(length(f, "width"), &seam, &rows[0].finished, NULL));
    must(f, muslin_seam_finished_from_cut(length(f, "height"), &seam, &rows[1].finished, NULL));
    must(f, muslin_fit_rescale(&spec, rows, sizeof rows[0], 2, &rescaled, NULL));
    answer_length(f, "new_width", rows[0].new_cut);
    answer_length(f, "new_height", rows[1].new_cut);
    answer_count(f, "off_grid", rescaled.off_grid);
}

extern const struct question questions_fit[];

const struct question questions_fit[] = {
    { "bed_size", bed_size },
    { "bed_cover", bed_cover },
    { "blocks_across", blocks_across },
    { "fit_nearest", fit_nearest },
    { "triangle_rows", triangle_rows },
    { "rescale", rescale },
    { NULL, NULL },
};
