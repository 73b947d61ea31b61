/* cmd_seam.c - cut, finished, piece, row, strip, resize, calibrate, drift: what seams take.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- cut and finished ------------------------------------------------------------------------------------------- */

struct pieces_request {
    struct lengths sizes;
    struct muslin_seam_spec seam;
};

static void start_pieces(void *request)
{
    struct pieces_request *pieces = request;
    pieces->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
}

static json_t *answer_cut(const void *request, struct desk *desk)
{
    const struct pieces_request *pieces = request;
    json_t *list = json_array();
    for (size_t i = 0; i < pieces->sizes.count; i++) {
        muslin_len cut = 0;
        muslin_len finished = pieces->sizes.values[i];
        if (!worked(desk, muslin_seam_cut_from_finished(finished, &pieces->seam, &cut, &desk->problem))) {
            json_decref(list);
            return NULL;
        }
        json_t *piece = append_object(list);
        put_length(piece, desk, "finished", finished);
        put_length(piece, desk, "cut", cut);
    }
    return json_pack("{s:o}", "pieces", list);
}

static json_t *answer_finished(const void *request, struct desk *desk)
{
    const struct pieces_request *pieces = request;
    json_t *list = json_array();
    for (size_t i = 0; i < pieces->sizes.count; i++) {
        muslin_len finished = 0;
        muslin_len cut = pieces->sizes.values[i];
        if (!worked(desk, muslin_seam_finished_from_cut(cut, &pieces->seam, &finished, &desk->problem))) {
            json_decref(list);
            return NULL;
        }
        json_t *piece = append_object(list);
        put_length(piece, desk, "cut", cut);
        put_length(piece, desk, "finished", finished);
    }
    return json_pack("{s:o}", "pieces", list);
}

static const struct option_row cut_options[] = {
    { "finished", KIND_LENGTHS, offsetof(struct pieces_request, sizes), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished size of a piece; may be repeated" },
    OPTION_SEAM(pieces_request, seam.allowance, seam.take_up),
    OPTION_END
};

const struct command cut_command = {
    .name = "cut",
    .about = "cut size of pieces from their finished size",
    .operands = "FINISHED...",
    .examples = "  muslin cut 6  # a 6 in finished square is cut 6 1/2 in\n"
                "  muslin cut 2 4 --seam 3/8\n"
                "  muslin cut \"15 cm\" --seam \"0.75 cm\" --units cm",
    .options = cut_options,
    .request_size = sizeof(struct pieces_request),
    .start = start_pieces,
    .answer = answer_cut,
    .show = show_cut
};

static const struct option_row finished_options[] = {
    { "cut", KIND_LENGTHS, offsetof(struct pieces_request, sizes), MUSLIN_ARG_CUT, OPTION_REQUIRED | OPTION_OPERAND,
      NULL, "cut size of a piece, or unfinished size of a sewn unit; may be repeated" },
    OPTION_SEAM(pieces_request, seam.allowance, seam.take_up),
    OPTION_END
};

const struct command finished_command = {
    .name = "finished",
    .about = "finished size of pieces from their cut size",
    .operands = "CUT...",
    .examples = "  muslin finished \"2 1/2\"  # a strip cut 2 1/2 in finishes at 2 in\n"
                "  muslin finished 6.5 12.5",
    .options = finished_options,
    .request_size = sizeof(struct pieces_request),
    .start = start_pieces,
    .answer = answer_finished,
    .show = show_finished
};

/* ---- a piece with its own allowance on each edge ---------------------------------------------------------------- */

struct piece_request {
    struct muslin_piece_spec piece;
};

static void start_piece(void *request)
{
    struct piece_request *piece = request;
    piece->piece = (struct muslin_piece_spec)MUSLIN_PIECE_SPEC_INIT;
}

static json_t *answer_piece(const void *request, struct desk *desk)
{
    const struct piece_request *wanted = request;
    struct muslin_piece piece = { .size = sizeof piece };
    if (!worked(desk, muslin_seam_piece(&wanted->piece, &piece, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "finished_width", wanted->piece.finished_width);
    put_length(answer, desk, "finished_height", wanted->piece.finished_height);
    put_length(answer, desk, "cut_width", piece.cut_width);
    put_length(answer, desk, "cut_height", piece.cut_height);
    put_share(answer, desk, "share_in_the_seams", piece.seam_share);
    return answer;
}

static const struct option_row piece_options[] = {
    { "width", KIND_LENGTH, offsetof(struct piece_request, piece.finished_width), MUSLIN_ARG_FINISHED, OPTION_REQUIRED,
      NULL, "finished width" },
    { "height", KIND_LENGTH, offsetof(struct piece_request, piece.finished_height), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED, NULL, "finished height" },
    { "left", KIND_LENGTH, offsetof(struct piece_request, piece.left), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance on the left edge (1/4 in); 0 where it is not sewn" },
    { "right", KIND_LENGTH, offsetof(struct piece_request, piece.right), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance on the right edge (1/4 in)" },
    { "top", KIND_LENGTH, offsetof(struct piece_request, piece.top), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance on the top edge (1/4 in)" },
    { "bottom", KIND_LENGTH, offsetof(struct piece_request, piece.bottom), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance on the bottom edge (1/4 in)" },
    { "take-up", KIND_LENGTH, offsetof(struct piece_request, piece.take_up), MUSLIN_ARG_TAKE_UP, 0, NULL,
      "what fold and thread of one pressed seam eat beyond its allowances (none)" },
    OPTION_END
};

const struct command piece_command = {
    .name = "piece",
    .about = "cut size of a rectangle with its own allowance on each edge",
    .operands = "",
    .examples = "  muslin piece --width 4 --height 2\n"
                "  muslin piece --width 4 --height 2 --left 1/2 --bottom 0",
    .options = piece_options,
    .request_size = sizeof(struct piece_request),
    .start = start_piece,
    .answer = answer_piece,
    .lead = "Cut {cut_width} wide and {cut_height} high, for {finished_width} by {finished_height} finished."
};

/* ---- rows ------------------------------------------------------------------------------------------------------- */

struct row_request {
    struct lengths cuts;
    int64_t pieces;
    struct muslin_seam_spec seam;
};

static void start_row(void *request)
{
    struct row_request *row = request;
    row->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
}

/* One size and a count, or each size by itself; both at once would leave open what is meant. */
static bool one_way_to_count(struct desk *desk, const struct lengths *cuts)
{
    if (!given(desk, "pieces") || cuts->count == 1)
        return true;
    failure_say(desk->failure, "pieces", "Give one cut size with a number of pieces, or every cut size by itself.");
    return false;
}

static json_t *answer_row(const void *request, struct desk *desk)
{
    const struct row_request *wanted = request;
    struct muslin_sewn_row row = { .size = sizeof row };
    const struct lengths *cuts = &wanted->cuts;
    if (!one_way_to_count(desk, cuts))
        return NULL;
    muslin_status status =
        given(desk, "pieces")
            ? muslin_seam_row_equal(cuts->values[0], wanted->pieces, &wanted->seam, &row, &desk->problem)
            : muslin_seam_row(cuts->values, cuts->count, &wanted->seam, &row, &desk->problem);
    if (!worked(desk, status))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "pieces", row.pieces);
    put_count(answer, "seams", row.seams);
    put_length(answer, desk, "cut_total", row.cut_total);
    put_length(answer, desk, "taken_by_inner_seams", row.eaten);
    put_length(answer, desk, "unfinished", row.unfinished);
    put_length(answer, desk, "finished", row.finished);
    put_share(answer, desk, "share_in_inner_and_outer_seams", row.seam_share);
    return answer;
}

static const struct option_row row_options[] = {
    { "cut", KIND_LENGTHS, offsetof(struct row_request, cuts), MUSLIN_ARG_CUT, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "cut width of a piece or strip; may be repeated" },
    { "pieces", KIND_COUNT, offsetof(struct row_request, pieces), MUSLIN_ARG_PIECES, 0, NULL,
      "how many pieces, all of the one cut width" },
    OPTION_SEAM(row_request, seam.allowance, seam.take_up),
    OPTION_END
};

const struct command row_command = {
    .name = "row",
    .about = "width of pieces or strips sewn side by side",
    .operands = "CUT...",
    .examples = "  muslin row \"2 1/2\" --pieces 6  # a set of six strips\n"
                "  muslin row \"2 1/2\" \"1 1/2\" \"2 1/2\"  # strips of unequal width",
    .options = row_options,
    .request_size = sizeof(struct row_request),
    .start = start_row,
    .answer = answer_row,
    .lead = "{pieces:piece} side by side measure {unfinished} unfinished and {finished} finished."
};

/* ---- the strip width for a finished size ------------------------------------------------------------------------ */

struct strip_request {
    muslin_len finished;
    int64_t across;
    struct muslin_seam_spec seam;
    struct muslin_rounding_spec rounding;
};

static void start_strip(void *request)
{
    struct strip_request *strip = request;
    strip->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    strip->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

static json_t *answer_strip(const void *request, struct desk *desk)
{
    const struct strip_request *wanted = request;
    struct muslin_rounded cut = { .size = sizeof cut };
    if (!worked(desk, muslin_seam_strip_for_finished(wanted->finished, wanted->across, &wanted->seam,
                                                     &wanted->rounding, &cut, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "finished", wanted->finished);
    put_count(answer, "across", wanted->across);
    put_length(answer, desk, "strip_cut", cut.value);
    put_rounding(answer, desk, &cut);
    return answer;
}

static const struct option_row strip_options[] = {
    { "finished", KIND_LENGTH, offsetof(struct strip_request, finished), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished size that the strips shall make together" },
    { "across", KIND_COUNT, offsetof(struct strip_request, across), MUSLIN_ARG_PIECES, OPTION_REQUIRED, NULL,
      "how many equal strips share it" },
    OPTION_SEAM(strip_request, seam.allowance, seam.take_up),
    OPTION_ROUNDING(strip_request, rounding),
    OPTION_END
};

const struct command strip_command = {
    .name = "strip",
    .about = "strip width that gives a wanted finished size",
    .operands = "FINISHED",
    .examples = "  muslin strip 6 --across 3  # a nine-patch that finishes at 6 in\n"
                "  muslin strip 7 --across 3 --to 1/8 --round up",
    .options = strip_options,
    .request_size = sizeof(struct strip_request),
    .start = start_strip,
    .answer = answer_strip,
    .lead = "{across:equal strip} cut {strip_cut} wide make {finished} finished."
};

/* ---- resizing --------------------------------------------------------------------------------------------------- */

struct resize_request {
    muslin_len cut;
    int64_t times;
    int64_t over;
    struct muslin_seam_spec seam;
    struct muslin_rounding_spec rounding;
};

static void start_resize(void *request)
{
    struct resize_request *resize = request;
    resize->times = 1;
    resize->over = 1;
    resize->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    resize->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

static json_t *answer_resize(const void *request, struct desk *desk)
{
    const struct resize_request *wanted = request;
    struct muslin_rounded cut = { .size = sizeof cut };
    if (!worked(desk, muslin_seam_resize_cut(wanted->cut, wanted->times, wanted->over, &wanted->seam,
                                             &wanted->rounding, &cut, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "cut_before", wanted->cut);
    put_length(answer, desk, "cut", cut.value);
    put_rounding(answer, desk, &cut);
    return answer;
}

static const struct option_row resize_options[] = {
    { "cut", KIND_LENGTH, offsetof(struct resize_request, cut), MUSLIN_ARG_CUT, OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "cut size of the piece in the block as it is" },
    { "times", KIND_COUNT, offsetof(struct resize_request, times), MUSLIN_ARG_RATIO, 0, NULL,
      "make the block this many times as large (1)" },
    { "over", KIND_COUNT, offsetof(struct resize_request, over), MUSLIN_ARG_RATIO, 0, NULL,
      "... divided by this (1); 3 over 2 is half as large again" },
    OPTION_SEAM(resize_request, seam.allowance, seam.take_up),
    OPTION_ROUNDING(resize_request, rounding),
    OPTION_END
};

const struct command resize_command = {
    .name = "resize",
    .about = "cut size of a piece when its block is made larger or smaller",
    .operands = "CUT",
    .examples = "  muslin resize \"3 1/2\" --times 2  # twice as large: 6 1/2 in, not 7\n"
                "  muslin resize \"4 1/2\" --times 3 --over 4 --to 1/8",
    .options = resize_options,
    .request_size = sizeof(struct resize_request),
    .start = start_resize,
    .answer = answer_resize,
    .lead = "A piece cut {cut_before} becomes a piece cut {cut}: the seams stay as wide as they were."
};

/* ---- the seam one really sews ----------------------------------------------------------------------------------- */

struct calibrate_request {
    struct lengths cuts;
    int64_t pieces;
    muslin_len measured;
    muslin_len later;
    struct muslin_seam_spec seam;
    struct muslin_rounding_spec rounding;
};

static void start_calibrate(void *request)
{
    struct calibrate_request *calibrate = request;
    calibrate->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
    calibrate->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

/* The cut widths one by one, also when they came as one width and a count. */
static bool list_cuts(struct desk *desk, const struct calibrate_request *wanted, struct lengths *cuts)
{
    *cuts = wanted->cuts;
    if (!one_way_to_count(desk, cuts))
        return false;
    if (!given(desk, "pieces"))
        return true;
    if (wanted->pieces < 1 || wanted->pieces > LIST_MAX) {
        failure_say(desk->failure, "pieces", "A set to be measured has 2 to %d strips.", LIST_MAX);
        return false;
    }
    for (cuts->count = 1; cuts->count < (size_t)wanted->pieces; cuts->count++)
        cuts->values[cuts->count] = cuts->values[0];
    return true;
}

static bool put_carry_on(json_t *answer, struct desk *desk, const struct calibrate_request *wanted,
                         const struct lengths *cuts)
{
    struct muslin_carry_on_spec spec = MUSLIN_CARRY_ON_SPEC_INIT;
    spec.strips = (int64_t)cuts->count;
    spec.measured = wanted->measured;
    spec.later_cut = wanted->later;
    spec.allowance = wanted->seam.allowance;
    spec.take_up = wanted->seam.take_up;
    struct muslin_rounded later = { .size = sizeof later };
    if (!sum_of(desk, cuts, &spec.cut_total) ||
        !worked(desk, muslin_seam_carry_on(&spec, &wanted->rounding, &later, &desk->problem)))
        return false;
    json_t *carry_on = put_object(answer, "if_you_keep_these_sets");
    put_length(carry_on, desk, "later_piece_cut_as_planned", wanted->later);
    put_length(carry_on, desk, "later_piece_cut_instead", later.value);
    put_rounding(carry_on, desk, &later);
    return true;
}

/* From the seam as it is sewn now to the cure, to the side that the shortfall says. */
static bool find_move(struct desk *desk, muslin_len now, const struct muslin_calibration *found, muslin_len *move)
{
    bool wide = found->shortfall < 0;
    return worked(desk, muslin_length_subtract(wide ? found->sew_at : now, wide ? now : found->sew_at, move));
}

static json_t *answer_calibrate(const void *request, struct desk *desk)
{
    const struct calibrate_request *wanted = request;
    struct lengths cuts;
    struct muslin_calibration found = { .size = sizeof found };
    muslin_len move = 0;
    if (!list_cuts(desk, wanted, &cuts) ||
        !worked(desk, muslin_seam_calibrate(cuts.values, cuts.count, wanted->measured, wanted->seam.allowance, &found,
                                            &desk->problem)) ||
        !find_move(desk, wanted->seam.allowance, &found, &move))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "seams", found.seams);
    put_length(answer, desk, "planned_unfinished", found.planned);
    put_length(answer, desk, "measured_unfinished", wanted->measured);
    put_length(answer, desk, "short_by", found.shortfall);
    put_length(answer, desk, "take_up_per_seam", found.take_up);
    put_length(answer, desk, "effective_allowance", found.effective_allowance);
    put_length(answer, desk, "sew_at", found.sew_at);
    put_length(answer, desk, found.shortfall < 0 ? "farther_from_the_raw_edge_by" : "nearer_the_raw_edge_by", move);
    if (given(desk, "later") && !put_carry_on(answer, desk, wanted, &cuts)) {
        json_decref(answer);
        return NULL;
    }
    return answer;
}

static const struct option_row calibrate_options[] = {
    { "cut", KIND_LENGTHS, offsetof(struct calibrate_request, cuts), MUSLIN_ARG_CUT, OPTION_REQUIRED | OPTION_OPERAND,
      NULL, "cut width of a strip in the set; may be repeated" },
    { "pieces", KIND_COUNT, offsetof(struct calibrate_request, pieces), MUSLIN_ARG_PIECES, 0, NULL,
      "how many strips, all of the one cut width" },
    { "measured", KIND_LENGTH, offsetof(struct calibrate_request, measured), MUSLIN_ARG_MEASURED, OPTION_REQUIRED,
      NULL, "unfinished width of the sewn and pressed set, from raw edge to raw edge" },
    { "seam", KIND_LENGTH, offsetof(struct calibrate_request, seam.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "the allowance you meant to sew (1/4 in)" },
    { "later", KIND_LENGTH, offsetof(struct calibrate_request, later), MUSLIN_ARG_CUT, 0, NULL,
      "a later piece, as the plan cuts it: what becomes of it if you keep these sets" },
    { "take-up", KIND_LENGTH, offsetof(struct calibrate_request, seam.take_up), MUSLIN_ARG_TAKE_UP, 0, NULL,
      "the take-up that the plan counted on, for the later piece (none)" },
    OPTION_ROUNDING(calibrate_request, rounding),
    OPTION_END
};

const struct command calibrate_command = {
    .name = "calibrate",
    .about = "the seam you really sew, from a test set you measured",
    .operands = "CUT...",
    .examples = "  muslin calibrate \"2 1/2\" --pieces 4 --measured \"8 3/8\"\n"
                "  muslin calibrate 1.5 1.5 1.5 --measured \"3 7/16\" --later 6.5 --to 1/16",
    .options = calibrate_options,
    .request_size = sizeof(struct calibrate_request),
    .start = start_calibrate,
    .answer = answer_calibrate,
    .lead = "Unfinished, the set should measure {planned_unfinished} and measures {measured_unfinished}.",
    .show = show_calibrate
};

/* ---- drift ------------------------------------------------------------------------------------------------------ */

struct drift_request {
    int64_t seams;
    muslin_len error;
    muslin_len within;
};

static void start_drift(void *request)
{
    (void)request;
}

static json_t *answer_drift(const void *request, struct desk *desk)
{
    const struct drift_request *wanted = request;
    muslin_len total = 0;
    muslin_len limit = 0;
    if (!given(desk, "error") && !given(desk, "within")) {
        failure_say(desk->failure, "error", "Give the error of one seam, or the total it shall stay within, or both.");
        return NULL;
    }
    if (!worked(desk, muslin_seam_error_total(wanted->error, wanted->seams, &total, &desk->problem)))
        return NULL;
    if (given(desk, "within") &&
        !worked(desk, muslin_seam_error_limit(wanted->within, wanted->seams, &limit, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "seams", wanted->seams);
    if (given(desk, "error")) {
        put_length(answer, desk, "error_per_seam", wanted->error);
        put_length(answer, desk, "error_of_the_row", total);
    }
    if (given(desk, "within")) {
        put_length(answer, desk, "row_shall_stay_within", wanted->within);
        put_slack(answer, desk, "largest_error_per_seam", limit);
    }
    return answer;
}

static const struct option_row drift_options[] = {
    { "seams", KIND_COUNT, offsetof(struct drift_request, seams), MUSLIN_ARG_SEAMS, OPTION_REQUIRED, NULL,
      "seams in the row" },
    { "error", KIND_LENGTH, offsetof(struct drift_request, error), MUSLIN_ARG_SEAM_ERROR, 0, NULL,
      "how far each seam is off" },
    { "within", KIND_LENGTH, offsetof(struct drift_request, within), MUSLIN_ARG_TOLERANCE, 0, NULL,
      "how far the whole row may be off" },
    OPTION_END
};

const struct command drift_command = {
    .name = "drift",
    .about = "how small errors add up over the seams of a row",
    .operands = "",
    .examples = "  muslin drift --seams 17 --error 1/32\n"
                "  muslin drift --seams 17 --within 1/4",
    .options = drift_options,
    .request_size = sizeof(struct drift_request),
    .start = start_drift,
    .answer = answer_drift
};
