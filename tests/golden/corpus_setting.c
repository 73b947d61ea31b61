/* corpus_setting.c - the calls of setting.h for sashes, blocks in turn, lines and settings on point.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

static void sashed(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_setting_sashed_spec, spec);
        OUT(muslin_setting_sashed_plan, out);
        struct muslin_sash_piece rows[3] = { { 0 } };
        size_t count = 0;
        spec.flags = draw_flags(g, MUSLIN_SETTING_SASHED_FRAME | MUSLIN_SETTING_SASHED_CORNERSTONES);
        spec.block_width = draw_size(g, 20);
        spec.block_height = draw_rarely(g, 3) ? draw_size(g, 20) : spec.block_width;
        spec.columns = draw_count(g, 9);
        spec.rows = draw_count(g, 9);
        spec.sash_width = draw_rarely(g, 8) ? 0 : draw_size(g, 4);
        spec.sash_height = draw_rarely(g, 3) ? draw_size(g, 4) : spec.sash_width;
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.usable_width = draw_size(g, 60);
        spec.end_loss = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        told(g, muslin_setting_sashed(&spec, &out, ask(g)));
        TAKE(g, muslin_setting_sashed_plan, out);
        told(g, muslin_setting_sashed_pieces(&spec, rows, sizeof rows[0], draw_rarely(g, 20) ? 1 : 3, &count, ask(g)));
        take_number(g, (int64_t)count);
        for (size_t i = 0; i < 3; i++)
            TAKE(g, muslin_sash_piece, rows[i]);
    }
}

static void alternates(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_setting_alternate_spec, spec);
        OUT(muslin_setting_alternate_plan, out);
        spec.flags = draw_flags(g, 0);
        spec.block_width = draw_size(g, 20);
        spec.block_height = draw_size(g, 20);
        spec.columns = draw_count(g, 12);
        spec.rows = draw_count(g, 12);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.first = draw_choice(g, MUSLIN_FIRST_BLOCK_PIECED, MUSLIN_FIRST_BLOCK_PLAIN);
        told(g, muslin_setting_alternate(&spec, &out, ask(g)));
        TAKE(g, muslin_setting_alternate_plan, out);
    }
}

static void lines(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_setting_line_spec, spec);
        OUT(muslin_setting_line_plan, out);
        muslin_len sizes[FEW] = { 0 };
        struct muslin_setting_line_place rows[FEW] = { { 0 } };
        size_t n = (size_t)draw_below(g, FEW + 1);
        size_t count = 0;
        for (size_t i = 0; i < n; i++)
            sizes[i] = draw_size(g, 20);
        spec.flags = draw_flags(g, MUSLIN_SETTING_LINE_FRAME);
        spec.sash = draw_rarely(g, 3) ? 0 : draw_size(g, 3);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        spec.wanted = draw_rarely(g, 2) ? 0 : draw_size(g, 80);
        told(g, muslin_setting_line(sizes, n, &spec, &out, ask(g)));
        TAKE(g, muslin_setting_line_plan, out);
        told(g, muslin_setting_line_places(sizes, n, &spec, rows, sizeof rows[0], draw_rarely(g, 20) ? 1 : FEW, &count,
                                           ask(g)));
        take_number(g, (int64_t)count);
        for (size_t i = 0; i < FEW; i++)
            TAKE(g, muslin_setting_line_place, rows[i]);
    }
}

/* A factor, mostly a usual one. */
static struct muslin_setting_point_spec with_factor(struct golden *g, struct muslin_setting_point_spec spec)
{
    if (draw_rarely(g, 3))
        return spec;
    spec.factor_numerator = draw_rarely(g, 3) ? 141 : 1414;
    spec.factor_denominator = spec.factor_numerator == 141 ? 100 : 1000;
    if (draw_rarely(g, 10))
        spec.factor_numerator = draw_count(g, 1000000);
    if (draw_rarely(g, 10))
        spec.factor_denominator = draw_count(g, 1000000);
    return spec;
}

/* Mostly what the layout and the policy allow. */
static struct muslin_setting_point_spec with_members(struct golden *g, struct muslin_setting_point_spec spec)
{
    spec.flags = draw_flags(g, MUSLIN_SETTING_POINT_DIAGONAL_FIRST);
    spec.block = draw_size(g, 20);
    spec.columns = draw_count(g, 9);
    spec.rows = draw_count(g, 9);
    spec.layout = draw_choice(g, MUSLIN_POINT_LAYOUT_PLAIN, MUSLIN_POINT_LAYOUT_SASH_INNER);
    spec.edge = draw_rarely(g, 5) ? draw_choice(g, MUSLIN_POINT_EDGE_TRIANGLES, MUSLIN_POINT_EDGE_HALF_BLOCKS) : 1;
    spec.policy = draw_choice(g, MUSLIN_ALLOWANCE_POLICY_EXACT, MUSLIN_ALLOWANCE_POLICY_OVERSIZE);
    spec.sash = (spec.layout == MUSLIN_POINT_LAYOUT_PLAIN) != draw_rarely(g, 30) ? 0 : draw_size(g, 3);
    spec.set_off = spec.layout <= MUSLIN_POINT_LAYOUT_SASH_OUTER && draw_rarely(g, 3) ? draw_size(g, 3) : 0;
    spec.allowance = draw_seam(g);
    spec.take_up = draw_take_up(g);
    spec.trim_room = spec.policy == MUSLIN_ALLOWANCE_POLICY_OVERSIZE ? draw_size(g, 1) : 0;
    spec.side_addition = draw_rarely(g, 8) ? draw_size(g, 3) : 0;
    spec.corner_addition = draw_rarely(g, 8) ? draw_size(g, 3) : 0;
    return with_factor(g, spec);
}

static void points(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec cutting = draw_rounding(g);
        struct muslin_rounding_spec measuring = draw_rounding(g);
        SPEC(muslin_setting_point_spec, spec);
        OUT(muslin_setting_point_plan, out);
        OUT(muslin_rounded, rounded);
        muslin_len block = 0;
        muslin_len wanted = draw_size(g, 120);
        muslin_len side = draw_size(g, 30);
        spec = with_members(g, spec);
        told(g, muslin_setting_point(&spec, &cutting, &measuring, &out, ask(g)));
        TAKE(g, muslin_setting_point_plan, out);
        told(g, muslin_setting_point_block_for_width(&spec, wanted, cutting.grid, &block, ask(g)));
        take_number(g, block);
        told(g, muslin_setting_point_block_from_side(&spec, side, &measuring, &rounded, ask(g)));
        TAKE(g, muslin_rounded, rounded);
    }
}

void golden_setting_more(struct golden *g)
{
    sashed(g);
    alternates(g);
    lines(g);
    points(g);
}
