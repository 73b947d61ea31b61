/* corpus_shrinkage.c - the calls of shrinkage.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* A share lost: mostly some per cent, now and then anything up to all of it, rarely more or less than there is. */
static int32_t draw_loss(struct golden *g)
{
    if (draw_rarely(g, 80))
        return (int32_t)draw_between(g, -2, 0);
    if (draw_rarely(g, 80))
        return (int32_t)draw_between(g, MUSLIN_PPM - 2, MUSLIN_PPM);
    if (draw_rarely(g, 8))
        return (int32_t)draw_below(g, MUSLIN_PPM);
    return (int32_t)draw_below(g, 120000);
}

/* Something of that size measured again: mostly a little smaller. */
static muslin_len draw_after(struct golden *g, muslin_len before)
{
    if (before < 0 || before > MUSLIN_SIZE_MAX || draw_rarely(g, 10))
        return draw_size(g, 120);
    return before - draw_between(g, -100, 4000);
}

static void changes(struct golden *g)
{
    EACH_ROUND {
        muslin_len before = draw_size(g, 120);
        muslin_len after = draw_after(g, before);
        int32_t ppm = -77;
        told(g, muslin_shrinkage_change(before, after, &ppm, ask(g)));
        take_number(g, ppm);
    }
}

static void washes(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_wash_spec, spec);
        OUT(muslin_wash_change, out);
        spec.flags = draw_flags(g, 0);
        spec.before_width = draw_size(g, 120);
        spec.before_length = draw_size(g, 120);
        spec.after_width = draw_after(g, spec.before_width);
        spec.after_length = draw_after(g, spec.before_length);
        told(g, muslin_shrinkage_measure(&spec, &out, ask(g)));
        TAKE(g, muslin_wash_change, out);
    }
}

static struct muslin_shrinkage_spec draw_quilt(struct golden *g)
{
    SPEC(muslin_shrinkage_spec, spec);
    spec.flags = draw_flags(g, 0);
    spec.width = draw_size(g, 110);
    spec.length = draw_size(g, 110);
    spec.quilting_across = draw_loss(g);
    spec.quilting_along = draw_loss(g);
    spec.washing_across = draw_loss(g);
    spec.washing_along = draw_loss(g);
    return spec;
}

static void sizes_to_make(struct golden *g)
{
    EACH_ROUND {
        struct muslin_shrinkage_spec spec = draw_quilt(g);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        OUT(muslin_size_to_make, out);
        told(g, muslin_shrinkage_size_to_make(&spec, &rounding, &out, ask(g)));
        TAKE(g, muslin_size_to_make, out);
    }
}

static void washed_sizes(struct golden *g)
{
    EACH_ROUND {
        struct muslin_shrinkage_spec spec = draw_quilt(g);
        struct muslin_rounding_spec rounding = draw_rounding(g);
        OUT(muslin_washed_size, out);
        told(g, muslin_shrinkage_becomes(&spec, &rounding, &out, ask(g)));
        TAKE(g, muslin_washed_size, out);
    }
}

static void samples(struct golden *g)
{
    EACH_ROUND {
        struct muslin_rounding_spec rounding = draw_rounding(g);
        muslin_len before = draw_size(g, 30);
        muslin_len after = draw_size(g, 30);
        muslin_len target = draw_size(g, 110);
        OUT(muslin_rounded, out);
        muslin_status status = muslin_shrinkage_from_sample(before, after, target, &rounding, &out, ask(g));
        told_problem_rounded(g, status, &out);
    }
}

static void governing(struct golden *g)
{
    EACH_ROUND {
        int32_t fabric = draw_loss(g);
        int32_t batting = draw_rarely(g, 5) ? fabric : draw_loss(g);
        int32_t rule = draw_choice(g, MUSLIN_GOVERNING_RULE_BATTING, MUSLIN_GOVERNING_RULE_SMALLER);
        OUT(muslin_governing, out);
        told(g, muslin_shrinkage_governs(fabric, batting, rule, &out, ask(g)));
        TAKE(g, muslin_governing, out);
    }
}

static void prewashes(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_prewash_spec, spec);
        OUT(muslin_prewash, out);
        spec.flags = draw_flags(g, 0);
        spec.needed_length = draw_size(g, 400);
        spec.usable_width = draw_size(g, 60);
        spec.across = draw_loss(g);
        spec.along = draw_loss(g);
        told(g, muslin_shrinkage_prewash(&spec, &out, ask(g)));
        TAKE(g, muslin_prewash, out);
    }
}

void golden_shrinkage(struct golden *g)
{
    changes(g);
    washes(g);
    sizes_to_make(g);
    washed_sizes(g);
    samples(g);
    governing(g);
    prewashes(g);
}
