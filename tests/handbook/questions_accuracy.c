/* questions_accuracy.c - what the handbook asks about accuracy.h.
 *
 * SPDX-License-Identifier: MIT */
#include "handbook.h"

static void row_accuracy(struct figure *f)
{
    struct muslin_accuracy_row_spec spec = MUSLIN_ACCURACY_ROW_SPEC_INIT;
    struct muslin_accuracy_row_errors row = { .size = sizeof row };
    spec.pieces = count(f, "pieces");
    spec.seams = count_or(f, "seams", spec.pieces - 1);
    spec.seam_error = length(f, "seam_error");
    spec.cut_error = length_or(f, "cut_error", 0);
    must(f, muslin_accuracy_row(&spec, &row, NULL));
    answer_length(f, "from_seams", row.from_seams);
    answer_length(f, "worst", row.worst);
    answer_length(f, "likely", row.likely);
}

static void top_accuracy(struct figure *f)
{
    struct muslin_accuracy_top_spec spec = MUSLIN_ACCURACY_TOP_SPEC_INIT;
    struct muslin_accuracy_top_errors top = { .size = sizeof top };
    spec.pieces_across = count(f, "pieces_across");
    spec.pieces_down = count(f, "pieces_down");
    spec.columns = count(f, "columns");
    spec.rows = count(f, "rows");
    spec.seam_error = length(f, "seam_error");
    must(f, muslin_accuracy_top(&spec, &top, NULL));
    answer_length(f, "block_width", top.block_width_worst);
    answer_length(f, "block_height", top.block_height_worst);
    answer_length(f, "top_width", top.top_width_worst);
    answer_length(f, "top_length", top.top_length_worst);
}

static void seams_meet(struct figure *f)
{
    struct muslin_accuracy_meet_spec spec = MUSLIN_ACCURACY_MEET_SPEC_INIT;
    struct muslin_accuracy_meeting met = { .size = sizeof met };
    spec.seams = count(f, "seams");
    spec.seam_error = length(f, "seam_error");
    spec.tolerance = length(f, "tolerance");
    must(f, muslin_accuracy_meet(&spec, &met, NULL));
    answer_length(f, "worst", met.worst);
    answer_count(f, "first_missed", met.first_missed);
    answer_count(f, "meets", met.meets);
}

extern const struct question questions_accuracy[];

const struct question questions_accuracy[] = {
    { "row_accuracy", row_accuracy },
    { "top_accuracy", top_accuracy },
    { "seams_meet", seams_meet },
    { NULL, NULL },
};
