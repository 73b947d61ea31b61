/* corpus_fit.c - the calls of fit.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* Mostly a drop or a tuck of some inches, often none. */
static muslin_len draw_drop(struct golden *g)
{
    return draw_rarely(g, 3) ? 0 : draw_size(g, 24);
}

static void beds(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_bed_spec, spec);
        OUT(muslin_bed, out);
        spec.flags = draw_flags(g, MUSLIN_BED_FOOT_GIVEN);
        spec.mattress_width = draw_size(g, 80);
        spec.mattress_length = draw_size(g, 90);
        spec.mattress_depth = draw_drop(g);
        spec.floor_height = draw_drop(g);
        spec.beyond_depth = draw_drop(g);
        spec.side_drop = draw_drop(g);
        spec.foot_drop = draw_drop(g);
        spec.head_drop = draw_drop(g);
        spec.pillow_tuck = draw_drop(g);
        spec.quilting_extra = draw_size(g, 3);
        spec.drop = draw_choice(g, MUSLIN_DROP_DEPTH, MUSLIN_DROP_GIVEN);
        spec.foot_corner = draw_choice(g, MUSLIN_FOOT_CORNER_SQUARE, MUSLIN_FOOT_CORNER_ROUNDED);
        told(g, muslin_bed_size(&spec, &out, ask(g)));
        TAKE(g, muslin_bed, out);
    }
}

static void covers(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_bed_covered_spec, spec);
        OUT(muslin_bed_cover, out);
        spec.flags = draw_flags(g, 0);
        spec.quilt_width = draw_size(g, 110);
        spec.quilt_length = draw_size(g, 110);
        spec.mattress_width = draw_size(g, 80);
        spec.mattress_length = draw_size(g, 90);
        spec.mattress_depth = draw_drop(g);
        spec.floor_height = draw_drop(g);
        spec.head_drop = draw_drop(g);
        spec.pillow_tuck = draw_drop(g);
        spec.foot_corner = draw_choice(g, MUSLIN_FOOT_CORNER_SQUARE, MUSLIN_FOOT_CORNER_ROUNDED);
        told(g, muslin_bed_covered(&spec, &out, ask(g)));
        TAKE(g, muslin_bed_cover, out);
    }
}

/* Ranges of a few steps, so that the work stays small. */
static struct muslin_fit_spec with_ranges(struct golden *g, struct muslin_fit_spec spec)
{
    spec.block_least = 8128 * draw_between(g, 4, 9);
    spec.block_step = draw_rarely(g, 9) ? draw_size(g, 2) : 1016 * draw_between(g, 2, 9);
    spec.block_most = spec.block_least + spec.block_step * draw_between(g, draw_rarely(g, 30) ? -1 : 0, 4);
    spec.sash_least = 1016 * draw_between(g, draw_rarely(g, 30) ? 0 : 1, 9);
    spec.sash_step = draw_rarely(g, 30) ? 0 : 1016;
    spec.sash_most = spec.sash_least + 1016 * draw_between(g, draw_rarely(g, 30) ? -1 : 0, 3);
    spec.border_least = 1016 * draw_between(g, draw_rarely(g, 30) ? -1 : 0, 9);
    spec.border_step = draw_rarely(g, 30) ? 0 : 4064;
    spec.border_most = spec.border_least + 4064 * draw_between(g, draw_rarely(g, 30) ? -1 : 0, 3);
    return spec;
}

static struct muslin_fit_spec draw_fit(struct golden *g)
{
    SPEC(muslin_fit_spec, spec);
    spec.flags = draw_rarely(g, 9) ? draw_flags(g, 15) : (uint32_t)draw_between(g, 1, 15);
    spec.wanted_width = draw_size(g, 110);
    spec.wanted_length = draw_size(g, 110);
    spec.width_under = draw_size(g, 3);
    spec.width_over = draw_size(g, 3);
    spec.length_under = draw_size(g, 3);
    spec.length_over = draw_size(g, 3);
    spec.columns_least = draw_between(g, 1, 4);
    spec.columns_most = draw_rarely(g, 4) ? draw_count(g, 40) : 40;
    spec.rows_least = draw_between(g, 1, 4);
    spec.rows_most = draw_rarely(g, 4) ? draw_count(g, 40) : 40;
    spec.best = draw_rarely(g, 3) ? draw_count(g, 6) : 0;
    spec.work_limit = draw_rarely(g, 6) ? draw_between(g, 0, 100) : 2000;
    spec.rank = draw_choice(g, MUSLIN_FIT_RANK_NEAREST, MUSLIN_FIT_RANK_LARGEST_BLOCK);
    spec.columns_parity = draw_choice(g, MUSLIN_PARITY_ANY, MUSLIN_PARITY_ODD);
    spec.rows_parity = draw_choice(g, MUSLIN_PARITY_ANY, MUSLIN_PARITY_ODD);
    return with_ranges(g, spec);
}

enum { FITS = 40 };

static void fits(struct golden *g)
{
    EACH_ROUND {
        struct muslin_fit_spec spec = draw_fit(g);
        struct muslin_fit rows[FITS] = { { 0 } };
        OUT(muslin_fit, nearest);
        size_t count = 77;
        size_t capacity = draw_rarely(g, 20) ? 0 : FITS;
        told(g, muslin_fit_settings(&spec, rows, sizeof rows[0], capacity, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (int32_t i = 0; i < FITS; i++)
            TAKE(g, muslin_fit, rows[i]);
        told(g, muslin_fit_nearest(&spec, &nearest, ask(g)));
        TAKE(g, muslin_fit, nearest);
    }
}

static void counts_across(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_fit_across_spec, spec);
        SPEC(muslin_fit_triangles_spec, triangles);
        OUT(muslin_fit_across_blocks, out);
        OUT(muslin_fit_triangle_rows, rows);
        spec.flags = draw_flags(g, MUSLIN_FIT_ACROSS_FRAME);
        spec.wanted = draw_size(g, 110);
        spec.border = draw_drop(g);
        spec.block = draw_size(g, 14);
        spec.sash = draw_size(g, 3);
        spec.direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        told(g, muslin_fit_across(&spec, &out, ask(g)));
        TAKE(g, muslin_fit_across_blocks, out);
        triangles.flags = draw_flags(g, 0);
        triangles.wanted_width = draw_size(g, 90);
        triangles.wanted_length = draw_size(g, 90);
        triangles.height = draw_size(g, 9);
        triangles.rows_direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        triangles.sides_direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        triangles.allowance = draw_seam(g);
        triangles.take_up = draw_rarely(g, 3) ? draw_seam(g) : 0;
        told(g, muslin_fit_triangles(&triangles, &rows, ask(g)));
        TAKE(g, muslin_fit_triangle_rows, rows);
    }
}

enum { PATTERN = 4 };

static void patterns(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_fit_rescale_spec, spec);
        OUT(muslin_fit_rescaled, out);
        struct muslin_fit_rescale_row rows[PATTERN];
        size_t n = (size_t)draw_between(g, draw_rarely(g, 20) ? 0 : 1, PATTERN);
        spec.flags = draw_flags(g, 0);
        spec.numerator = draw_rarely(g, 9) ? draw_length(g) : draw_between(g, 1, 12);
        spec.denominator = draw_rarely(g, 9) ? draw_length(g) : draw_between(g, 1, 12);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.grid = draw_rarely(g, 3) ? draw_size(g, 1) : 1016;
        for (int32_t i = 0; i < PATTERN; i++) {
            muslin_fit_rescale_row_init(&rows[i], (uint32_t)sizeof rows[i]);
            rows[i].size = draw_struct_size(g, sizeof rows[i]);
            rows[i].finished = draw_size(g, 14);
        }
        told(g, muslin_fit_rescale(&spec, rows, sizeof rows[0], n, &out, ask(g)));
        TAKE(g, muslin_fit_rescaled, out);
        for (int32_t i = 0; i < PATTERN; i++)
            TAKE(g, muslin_fit_rescale_row, rows[i]);
    }
}

void golden_fit(struct golden *g)
{
    beds(g);
    covers(g);
    fits(g);
    counts_across(g);
    patterns(g);
}
