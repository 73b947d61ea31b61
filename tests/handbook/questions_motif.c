/* questions_motif.c - what the handbook asks about motif.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static void motif(struct figure *f)
{
    struct muslin_motif_spec spec = MUSLIN_MOTIF_SPEC_INIT;
    struct muslin_motif made = { .size = sizeof made };
    spec.flags = count_or(f, "any_start", 0) != 0 ? MUSLIN_MOTIF_ANY_START : 0;
    spec.repeat_length = length(f, "repeat_length");
    spec.repeat_width = length_or(f, "repeat_width", 0);
    spec.usable_width = length_or(f, "usable_width", spec.usable_width);
    spec.cut_width = length_or(f, "cut_width", spec.usable_width);
    spec.cut_length = length(f, "cut_length");
    spec.motifs = count_or(f, "motifs", 1);
    spec.pieces = count(f, "pieces");
    must(f, muslin_motif_plan(&spec, &made, NULL));
    answer_count(f, "repeats_along_each", made.repeats_along_each);
    answer_count(f, "repeats", made.repeats);
    answer_length(f, "row_length", made.row_length);
    answer_length(f, "waste_per_row", made.waste_per_row);
    answer_length(f, "cloth_length", made.cloth_length);
}

extern const struct question questions_motif[];

const struct question questions_motif[] = {
    { "motif", motif },
    { NULL, NULL },
};
