/* cmd_accuracy.c - accuracy: how far off a block and a top may be, and whether seams will meet.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"

/* 1/16 in apart still looks like a seam that meets: common practice, no source. */
#define MEETING_USUAL (MUSLIN_TICKS_PER_INCH / 16)

struct accuracy_request {
    struct muslin_accuracy_top_spec top;
    muslin_len within;
};

static void start_accuracy(void *request)
{
    struct accuracy_request *wanted = request;
    wanted->top = (struct muslin_accuracy_top_spec)MUSLIN_ACCURACY_TOP_SPEC_INIT;
    wanted->within = MEETING_USUAL;
}

/* Errors are said to the nearest 64th of an inch; below 1/16 in, where that would be coarse, in decimals. */
static void put_error(json_t *answer, const struct desk *desk, const char *name, muslin_len value)
{
    struct desk fine = *desk;
    if (fine.common.units == UNITS_INCH && value < MUSLIN_TICKS_PER_INCH / 16 &&
        value % (MUSLIN_TICKS_PER_INCH / 64) != 0)
        fine.common.units = UNITS_INCH_DECIMAL;
    put_length(answer, &fine, name, value);
}

/* One measure of a block or a top, from raw edge to raw edge. */
struct measure {
    const char *name;
    int64_t seams;
    muslin_len worst;
    muslin_len likely;
};

static void put_measure(json_t *list, const struct desk *desk, const struct measure *measure)
{
    json_t *put = append_object(list);
    put_text(put, "measure", measure->name);
    put_count(put, "seams", measure->seams);
    put_count(put, "cut_edges", 2 * (measure->seams + 1));
    put_error(put, desk, "off_at_worst", measure->worst);
    put_error(put, desk, "off_as_chance_has_it", measure->likely);
}

static void put_measures(json_t *answer, const struct desk *desk, const struct muslin_accuracy_top_spec *spec,
                         const struct muslin_accuracy_top_errors *top)
{
    const struct measure measures[] = {
        { "unfinished width of a block", top->block_seams_across, top->block_width_worst, top->block_width_likely },
        { "unfinished height of a block", top->block_seams_down, top->block_height_worst, top->block_height_likely },
        { "unfinished width of the top", top->top_seams_across, top->top_width_worst, top->top_width_likely },
        { "unfinished length of the top", top->top_seams_down, top->top_length_worst, top->top_length_likely }
    };
    bool one_block = spec->columns == 1 && spec->rows == 1;
    json_t *list = put_list(answer, "measures");
    for (size_t i = 0; i < (one_block ? 2 : 4); i++)
        put_measure(list, desk, &measures[i]);
}

/* What one seam may be off by, where the cuts alone leave room for it. */
static void put_allowed(json_t *rows, const struct desk *desk, const struct muslin_accuracy_meeting *met)
{
    put_truth(rows, "cuts_alone_meet_at_worst", met->cuts_meet == 1);
    put_truth(rows, "cuts_alone_let_nineteen_in_twenty_meet", met->twice_likely_cuts_meet == 1);
    put_truth(rows, "cuts_alone_let_two_in_three_meet", met->likely_cuts_meet == 1);
    if (met->cuts_meet)
        put_error(rows, desk, "seam_error_allowed_at_worst", met->largest_seam_error);
    if (met->twice_likely_cuts_meet)
        put_error(rows, desk, "seam_error_for_nineteen_in_twenty", met->twice_likely_largest_seam_error);
    if (met->likely_cuts_meet)
        put_error(rows, desk, "seam_error_for_two_in_three", met->likely_largest_seam_error);
}

/* Neighbouring rows, sewn across the whole top or the one block. */
static bool put_meeting(json_t *answer, struct desk *desk, const struct accuracy_request *wanted, int64_t seams)
{
    struct muslin_accuracy_meet_spec spec = MUSLIN_ACCURACY_MEET_SPEC_INIT;
    struct muslin_accuracy_meeting met = { .size = sizeof met };
    spec.seams = seams;
    spec.seam_error = wanted->top.seam_error;
    spec.cut_error = wanted->top.cut_error;
    spec.tolerance = wanted->within;
    if (!worked(desk, muslin_accuracy_meet(&spec, &met, &desk->problem)))
        return false;
    json_t *rows = put_object(answer, "neighbouring_rows");
    put_count(rows, "seams", seams);
    put_length(rows, desk, "meet_within", wanted->within);
    put_error(rows, desk, "apart_at_worst", met.worst);
    put_error(rows, desk, "apart_as_chance_has_it", met.likely);
    put_truth(rows, "all_meet_at_worst", met.meets == 1);
    put_truth(rows, "all_meet_as_chance_has_it", met.likely_meets == 1);
    if (!met.meets)
        put_count(rows, "first_seam_that_may_miss", met.first_missed);
    put_truth(rows, "nineteen_in_twenty_meet", met.twice_likely_meets == 1);
    if (!met.twice_likely_meets)
        put_count(rows, "one_in_twenty_misses_from_seam", met.twice_likely_first_missed);
    if (!met.likely_meets)
        put_count(rows, "one_in_three_misses_from_seam", met.likely_first_missed);
    put_allowed(rows, desk, &met);
    return true;
}

static json_t *answer_accuracy(const void *request, struct desk *desk)
{
    const struct accuracy_request *wanted = request;
    struct muslin_accuracy_top_spec spec = wanted->top;
    struct muslin_accuracy_top_errors top = { .size = sizeof top };
    if (!given(desk, "down"))
        spec.pieces_down = spec.pieces_across;
    if (!given(desk, "seam-error") && !given(desk, "cut-error")) {
        failure_say(desk->failure, "seam-error", "Give the error of a seam, of a cut, or of both.");
        return NULL;
    }
    if (!worked(desk, muslin_accuracy_top(&spec, &top, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_error(answer, desk, "error_of_a_seam", spec.seam_error);
    put_error(answer, desk, "error_of_a_cut", spec.cut_error);
    put_measures(answer, desk, &spec, &top);
    if (top.top_seams_across == 0 || put_meeting(answer, desk, wanted, top.top_seams_across))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row accuracy_options[] = {
    OPTION_HEADING("The block and the top"),
    { "across", KIND_COUNT, offsetof(struct accuracy_request, top.pieces_across), MUSLIN_ARG_PIECES, OPTION_REQUIRED,
      NULL, "pieces across a block" },
    { "down", KIND_COUNT, offsetof(struct accuracy_request, top.pieces_down), MUSLIN_ARG_PIECES, 0, NULL,
      "pieces down a block (as many)" },
    { "columns", KIND_COUNT, offsetof(struct accuracy_request, top.columns), MUSLIN_ARG_COLUMNS, 0, NULL,
      "blocks across the top (1)" },
    { "rows", KIND_COUNT, offsetof(struct accuracy_request, top.rows), MUSLIN_ARG_QUILT_ROWS, 0, NULL,
      "blocks down the top (1)" },
    OPTION_HEADING("How far off the work is, either way"),
    { "seam-error", KIND_LENGTH, offsetof(struct accuracy_request, top.seam_error), MUSLIN_ARG_SEAM_ERROR, 0, NULL,
      "what one seam takes too much or too little in all, half of it on each of its two allowances (none)" },
    { "cut-error", KIND_LENGTH, offsetof(struct accuracy_request, top.cut_error), MUSLIN_ARG_CUT_ERROR, 0, NULL,
      "how far one cut edge lies beside its line; a piece has two (none)" },
    { "within", KIND_LENGTH, offsetof(struct accuracy_request, within), MUSLIN_ARG_TOLERANCE, 0, NULL,
      "seams of neighbouring rows this far apart still meet (1/16 in)" },
    OPTION_END
};

const struct command accuracy_command = {
    .name = "accuracy",
    .about = "how far off a block and a top may be, and whether seams meet",
    .operands = "",
    .examples = "  muslin accuracy --across 3 --seam-error 1/64  # a nine-patch\n"
                "  muslin accuracy --across 3 --columns 4 --rows 5 --seam-error 1/64 \\\n"
                "      --cut-error 1/64 --within 1/8",
    .options = accuracy_options,
    .request_size = sizeof(struct accuracy_request),
    .start = start_accuracy,
    .answer = answer_accuracy,
    .show = show_accuracy
};
