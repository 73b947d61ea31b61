/* corpus_motif.c - the calls of motif.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

static void windows(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_motif_spec, spec);
        OUT(muslin_motif, plan);
        OUT(muslin_motif_yield, yield);
        spec.flags = draw_flags(g, MUSLIN_MOTIF_ANY_START | MUSLIN_MOTIF_ANY_ACROSS);
        spec.repeat_length = draw_size(g, 30);
        spec.repeat_width = draw_rarely(g, 3) ? 0 : draw_size(g, 24);
        spec.usable_width = draw_size(g, 60);
        spec.cut_width = draw_size(g, 10);
        spec.cut_length = draw_size(g, 20);
        spec.motifs = draw_rarely(g, 3) ? draw_count(g, 4) : 1;
        spec.pieces = draw_count(g, 200);
        muslin_len cloth_length = draw_size(g, 200);
        told(g, muslin_motif_plan(&spec, &plan, ask(g)));
        TAKE(g, muslin_motif, plan);
        told(g, muslin_motif_from_cloth(&spec, cloth_length, &yield, ask(g)));
        TAKE(g, muslin_motif_yield, yield);
    }
}

static void stacks(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_stack_spec, spec);
        OUT(muslin_stack, out);
        spec.flags = draw_flags(g, MUSLIN_STACK_ANY_START);
        spec.repeat_length = draw_size(g, 30);
        spec.strip_cut = draw_size(g, 8);
        spec.straightening = draw_rarely(g, 2) ? 0 : draw_size(g, 1);
        spec.per_strip = draw_count(g, 20);
        spec.layers = draw_count(g, 8);
        spec.stacks = draw_count(g, 200);
        told(g, muslin_stack_plan(&spec, &out, ask(g)));
        TAKE(g, muslin_stack, out);
    }
}

void golden_motif(struct golden *g)
{
    windows(g);
    stacks(g);
}
