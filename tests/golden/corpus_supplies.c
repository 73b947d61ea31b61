/* corpus_supplies.c - the calls of supplies.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

static void seams_to_sew(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_piecing_spec, spec);
        OUT(muslin_piecing, out);
        spec.flags = draw_flags(g, 0);
        spec.sets = draw_count(g, 20);
        spec.strips_per_set = draw_count(g, 8);
        spec.strip_length = draw_size(g, 44);
        spec.tops = draw_count(g, 4);
        spec.columns = draw_count(g, 8);
        spec.rows = draw_count(g, 8);
        spec.segments_per_block = draw_count(g, 4);
        spec.block_width = draw_size(g, 20);
        spec.block_height = draw_size(g, 20);
        spec.allowance = draw_seam(g);
        spec.take_up = draw_take_up(g);
        told(g, muslin_piecing_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_piecing, out);
    }
}

/* Mostly of a few hundred yards, now and then far longer. */
static muslin_len draw_thread(struct golden *g)
{
    return draw_rarely(g, 8) ? draw_length(g) : draw_size(g, 20000);
}

static void threads(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_thread_spec, spec);
        OUT(muslin_thread, out);
        spec.flags = draw_flags(g, MUSLIN_THREAD_READY_BOBBINS);
        spec.seam = draw_thread(g);
        spec.ratio_above = draw_count(g, 12);
        spec.ratio_below = draw_count(g, 5);
        spec.thickness = draw_size(g, 1);
        spec.stitch_length = draw_rarely(g, 6) ? draw_size(g, 1) : draw_between(g, 300, 1500);
        spec.bobbin = draw_rarely(g, 4) ? 0 : draw_thread(g);
        spec.spool = draw_rarely(g, 4) ? 0 : draw_thread(g);
        spec.method = draw_choice(g, MUSLIN_THREAD_METHOD_RATIO, MUSLIN_THREAD_METHOD_FORMULA);
        spec.waste = (int32_t)draw_count(g, 300000);
        told(g, muslin_thread_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_thread, out);
    }
}

static void stitches(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        OUT(muslin_rounded, rounded);
        muslin_len length = draw_rarely(g, 2) ? MUSLIN_TICKS_PER_INCH : draw_size(g, 40);
        muslin_len stitch = draw_rarely(g, 6) ? draw_size(g, 1) : draw_between(g, 300, 1500);
        int32_t decimals = (int32_t)draw_between(g, -1, 4);
        int32_t direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        int64_t wanted = draw_count(g, 30000);
        int64_t thousandths = -77;
        int32_t exact = -77;
        told(g, muslin_stitch_count(length, stitch, decimals, direction, &thousandths, &exact, ask(g)));
        take_number(g, thousandths);
        take_number(g, exact);
        told(g, muslin_stitch_length(length, wanted, draw_rarely(g, 3) ? NULL : &rounding, &rounded, ask(g)));
        TAKE(g, muslin_rounded, rounded);
    }
}

static void lines_of_quilting(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_quilting_spec, spec);
        OUT(muslin_quilting, out);
        spec.flags = draw_flags(g, 0);
        spec.width = draw_size(g, 100);
        spec.length = draw_size(g, 110);
        spec.spacing = draw_size(g, 6);
        spec.offset = draw_rarely(g, 3) ? 0 : draw_size(g, 3);
        spec.outline = draw_thread(g);
        spec.passes = draw_count(g, 3);
        spec.pattern = draw_choice(g, MUSLIN_QUILTING_PATTERN_ACROSS, MUSLIN_QUILTING_PATTERN_OUTLINE);
        spec.start = draw_choice(g, MUSLIN_QUILTING_START_AT_OFFSET, MUSLIN_QUILTING_START_FROM_CORNER);
        told(g, muslin_quilting_lines(&spec, &out, ask(g)));
        TAKE(g, muslin_quilting, out);
    }
}

static void weights(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_weight_spec, spec);
        OUT(muslin_weight, out);
        int64_t density = -77;
        int64_t ounces = -77;
        int32_t decimals = (int32_t)draw_between(g, -1, 4);
        spec.flags = draw_flags(g, 0);
        spec.width = draw_size(g, 100);
        spec.length = draw_size(g, 110);
        spec.binding_length = draw_size(g, 450);
        spec.binding_cut = draw_size(g, 3);
        spec.top_density = draw_count(g, 300000);
        spec.batting_density = draw_count(g, 300000);
        spec.backing_density = draw_count(g, 300000);
        spec.binding_density = draw_count(g, 300000);
        spec.step = draw_rarely(g, 2) ? 1000 : draw_count(g, 5000);
        spec.seam_share = (int32_t)draw_count(g, 300000);
        spec.direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
        told(g, muslin_weight_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_weight, out);
        told(g, muslin_density_from_ounces(spec.step, spec.direction, &density, ask(g)));
        take_number(g, density);
        told(g, muslin_mass_in_ounces(out.total, decimals, spec.direction, &ounces, ask(g)));
        take_number(g, ounces);
    }
}

static struct muslin_cost_spec draw_cost(struct golden *g)
{
    SPEC(muslin_cost_spec, spec);
    spec.flags = draw_flags(g, 0);
    spec.sold = draw_choice(g, MUSLIN_COST_LENGTH, MUSLIN_COST_BUNDLES);
    spec.amount = spec.sold == MUSLIN_COST_LENGTH ? draw_thread(g) : draw_count(g, 200);
    spec.price = draw_rarely(g, 10) ? draw_length(g) : draw_between(g, 0, 20000);
    spec.per = spec.sold == MUSLIN_COST_LENGTH ? 292608 : draw_count(g, 44);
    spec.direction = draw_choice(g, MUSLIN_DIRECTION_UP, MUSLIN_DIRECTION_NEAREST);
    return spec;
}

static void costs(struct golden *g)
{
    EACH_ROUND {
        struct muslin_cost_spec rows[FEW];
        OUT(muslin_cost, out);
        int64_t total = -77;
        for (int32_t i = 0; i < FEW; i++)
            rows[i] = draw_cost(g);
        size_t n = (size_t)draw_below(g, FEW + 1);
        told(g, muslin_cost_plan(&rows[0], &out, ask(g)));
        TAKE(g, muslin_cost, out);
        told(g, muslin_cost_total(rows, sizeof rows[0], n, &total, ask(g)));
        take_number(g, total);
    }
}

void golden_supplies(struct golden *g)
{
    seams_to_sew(g);
    threads(g);
    stitches(g);
    lines_of_quilting(g);
    weights(g);
    costs(g);
}
