/* corpus_accuracy.c - the calls of accuracy.h.
 *
 * SPDX-License-Identifier: MIT */
#include "golden.h"

/* Mostly a few sixty-fourths or odd ticks, rarely an edge of the range. */
static muslin_len draw_error(struct golden *g)
{
    return draw_rarely(g, 3) ? draw_seam(g) : draw_below(g, 400);
}

static void rows_of_pieces(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_accuracy_row_spec, spec);
        OUT(muslin_accuracy_row_errors, out);
        spec.flags = draw_flags(g, 0);
        spec.pieces = draw_count(g, 200);
        spec.seams = draw_count(g, 200);
        spec.seam_error = draw_error(g);
        spec.cut_error = draw_error(g);
        told(g, muslin_accuracy_row(&spec, &out, ask(g)));
        TAKE(g, muslin_accuracy_row_errors, out);
    }
}

static void blocks_and_tops(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_accuracy_top_spec, spec);
        OUT(muslin_accuracy_top_errors, out);
        spec.flags = draw_flags(g, 0);
        spec.pieces_across = draw_count(g, 12);
        spec.pieces_down = draw_count(g, 12);
        spec.columns = draw_count(g, 20);
        spec.rows = draw_count(g, 20);
        spec.seam_error = draw_error(g);
        spec.cut_error = draw_error(g);
        told(g, muslin_accuracy_top(&spec, &out, ask(g)));
        TAKE(g, muslin_accuracy_top_errors, out);
    }
}

static void meetings(struct golden *g)
{
    EACH_ROUND {
        SPEC(muslin_accuracy_meet_spec, spec);
        OUT(muslin_accuracy_meeting, out);
        spec.flags = draw_flags(g, 0);
        spec.seams = draw_count(g, 60);
        spec.seam_error = draw_error(g);
        spec.cut_error = draw_rarely(g, 2) ? 0 : draw_error(g);
        spec.tolerance = draw_rarely(g, 3) ? draw_size(g, 3) : draw_below(g, 1500);
        told(g, muslin_accuracy_meet(&spec, &out, ask(g)));
        TAKE(g, muslin_accuracy_meeting, out);
    }
}

void golden_accuracy(struct golden *g)
{
    rows_of_pieces(g);
    blocks_and_tops(g);
    meetings(g);
}
