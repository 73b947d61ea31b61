/* cmd_rounds.c - log-cabin, frame: what grows from the middle outwards, log by log and piece by piece.
 *
 * SPDX-License-Identifier: MIT */
#include <stdlib.h>

#include "answer.h"
#include "cmd.h"
#include "memory.h"
#include "sheet.h"
#include "words.h"

static const struct word order_words[] = { { "round", MUSLIN_LOG_ORDER_ROUND },
                                           { "courthouse", MUSLIN_LOG_ORDER_COURTHOUSE },
                                           { "quarter", MUSLIN_LOG_ORDER_QUARTER },
                                           { NULL, 0 } };
static const struct word side_words[] = {
    { "top", MUSLIN_SIDE_TOP }, { "right", MUSLIN_SIDE_RIGHT }, { "bottom", MUSLIN_SIDE_BOTTOM },
    { "left", MUSLIN_SIDE_LEFT }, { NULL, 0 }
};
static const struct word turn_words[] = {
    { "clockwise", MUSLIN_LOG_TURN_CLOCKWISE }, { "anticlockwise", MUSLIN_LOG_TURN_ANTICLOCKWISE }, { NULL, 0 }
};
static const struct word half_words[] = {
    { "first", MUSLIN_LOG_HALF_FIRST }, { "second", MUSLIN_LOG_HALF_SECOND }, { NULL, 0 }
};

void put_difference(json_t *answer, const struct desk *desk, const char *missing, const char *too_much,
                    muslin_len difference)
{
    muslin_len turned = 0;
    if (difference > 0)
        put_length(answer, desk, missing, difference);
    else if (difference < 0 && muslin_length_subtract(0, difference, &turned) == MUSLIN_OK)
        put_length(answer, desk, too_much, turned);
}

bool put_unfinished(json_t *answer, struct desk *desk, const char *name, muslin_len finished, muslin_len allowance,
                    muslin_len take_up)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    muslin_len unfinished = 0;
    seam.allowance = allowance;
    seam.take_up = take_up;
    if (!worked(desk, muslin_seam_cut_from_finished(finished, &seam, &unfinished, &desk->problem)))
        return false;
    put_length(answer, desk, name, unfinished);
    return true;
}

/* ---- log cabin: the request -------------------------------------------------------------------------------------- */

struct cabin_request {
    struct muslin_logcabin_spec cabin;
    struct muslin_rounding_spec rounding;
    struct lengths widths;
    muslin_len wanted;
    int32_t given_cut;
};

static void start_cabin(void *request)
{
    struct cabin_request *wanted = request;
    wanted->cabin = (struct muslin_logcabin_spec)MUSLIN_LOGCABIN_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
}

/* Sizes given as cut, made finished. */
static bool make_finished(struct desk *desk, const struct muslin_logcabin_spec *spec, muslin_len *size)
{
    struct muslin_seam_spec seam = MUSLIN_SEAM_SPEC_INIT;
    seam.allowance = spec->allowance;
    seam.take_up = spec->take_up;
    return worked(desk, muslin_seam_finished_from_cut(*size, &seam, size, &desk->problem));
}

static bool make_all_finished(struct desk *desk, struct muslin_logcabin_spec *spec)
{
    bool log = given(desk, "log");
    if ((spec->flags & MUSLIN_LOGCABIN_GIVEN_CUT) == 0)
        return true;
    spec->flags = 0;
    return make_finished(desk, spec, &spec->centre_width) && make_finished(desk, spec, &spec->centre_height) &&
           (!log || make_finished(desk, spec, &spec->log_width));
}

/* The log, or the rounds, that a wanted block asks for: whichever was not given. */
static bool fit_block(struct desk *desk, const struct cabin_request *wanted, struct muslin_logcabin_spec *spec,
                      struct muslin_logcabin_fit *fit)
{
    struct muslin_logcabin_fit_spec fit_spec = MUSLIN_LOGCABIN_FIT_SPEC_INIT;
    if (given(desk, "log") == given(desk, "rounds") || wanted->widths.count > 0) {
        failure_say(desk->failure, "finish", "With a wanted block, give either the rounds, to find the log, or the "
                                             "log, to find the rounds.");
        return false;
    }
    if (!make_all_finished(desk, spec))
        return false;
    fit_spec.wanted = wanted->wanted;
    fit_spec.centre = spec->centre_width;
    fit_spec.rounds = spec->rounds;
    fit_spec.log_finished = spec->log_width;
    fit_spec.allowance = spec->allowance;
    fit_spec.take_up = spec->take_up;
    fit_spec.order = spec->order;
    if (given(desk, "rounds")) {
        if (!worked(desk, muslin_logcabin_log_for(&fit_spec, &wanted->rounding, fit, &desk->problem)))
            return false;
    } else if (!worked(desk, muslin_logcabin_rounds_for(&fit_spec, fit, &desk->problem)))
        return false;
    spec->log_width = fit->log_finished;
    spec->rounds = fit->rounds;
    if (fit->rounds > 0)
        return true;
    failure_say(desk->failure, "finish", "Not one round of such logs fits round this centre within the block wanted.");
    desk->failure->exit_code = EXIT_NO_ANSWER;
    return false;
}

/* ---- log cabin: the answer --------------------------------------------------------------------------------------- */

static void put_fit(json_t *answer, const struct desk *desk, const struct muslin_logcabin_fit *fit, muslin_len wanted)
{
    json_t *found = put_object(answer, "to_finish_as_wanted");
    put_length(found, desk, "block_wanted_finished", wanted);
    put_text(found, "found", given(desk, "rounds") ? "log" : "rounds");
    put_length(found, desk, "log_finished", fit->log_finished);
    put_count(found, "rounds", fit->rounds);
    put_length(found, desk, "block_becomes_finished", fit->block_finished);
    put_difference(found, desk, "short_of_wanted_by", "larger_than_wanted_by", fit->rest);
    if (fit->centre_to_fit > 0)
        put_length(found, desk, "centre_that_would_come_out_finished", fit->centre_to_fit);
    put_length(found, desk, "with_one_round_more_finished", fit->next_finished);
}

static void put_plan(json_t *answer, const struct desk *desk, const struct muslin_logcabin_spec *spec,
                     const struct muslin_logcabin *plan)
{
    put_text(answer, "order", word_of(order_words, spec->order));
    put_text(answer, "start", word_of(side_words, spec->start));
    put_text(answer, "turn", word_of(turn_words, spec->turn));
    put_count(answer, "rounds", spec->rounds);
    put_count(answer, "blocks", spec->blocks);
    put_length(answer, desk, "seam_allowance", spec->allowance);
    put_length(answer, desk, "cloth_usable_width", spec->usable_width);
    put_length(answer, desk, "centre_cut_width", plan->centre_cut_width);
    put_length(answer, desk, "centre_cut_height", plan->centre_cut_height);
    put_count(answer, "logs_in_a_block", plan->logs);
    put_length(answer, desk, "finished_width", plan->finished_width);
    put_length(answer, desk, "finished_height", plan->finished_height);
    put_length(answer, desk, "unfinished_width", plan->unfinished_width);
    put_length(answer, desk, "unfinished_height", plan->unfinished_height);
    if (spec->usable_width == 0)
        return;
    json_t *centres = put_object(answer, "centres");
    put_length(centres, desk, "strip_cut_width", plan->centre_strip_cut);
    put_count(centres, "from_each_strip", plan->centres_per_strip);
    put_count(centres, "strips", plan->centre_strips);
    put_cloth(centres, desk, "cloth_length", plan->centre_cloth_length);
    put_to_buy(centres, desk, "cloth_to_buy", plan->centre_cloth_length);
}

static void put_strips(json_t *list, const struct desk *desk, const struct muslin_logcabin_strip *row)
{
    json_t *one = append_object(list);
    put_text(one, "fabric", word_of(half_words, row->half));
    put_length(one, desk, "strip_cut_width", row->cut_width);
    put_count(one, "logs", row->pieces);
    put_length(one, desk, "longest_cut_length", row->longest);
    put_length(one, desk, "running_length", row->length);
    put_count(one, "strips_by_length_alone", row->strips_least);
    put_count(one, "strips", row->strips);
    put_cloth(one, desk, "cloth_length", row->cloth_length);
    put_to_buy(one, desk, "cloth_to_buy", row->cloth_length);
}

static void put_log(json_t *list, const struct desk *desk, const struct muslin_logcabin_log *row)
{
    json_t *one = append_object(list);
    put_count(one, "round", row->round);
    put_text(one, "side", word_of(side_words, row->side));
    put_text(one, "fabric", word_of(half_words, row->half));
    put_length(one, desk, "cut_length", row->cut_length);
    put_length(one, desk, "cut_width", row->cut_width);
    put_length(one, desk, "finished_length", row->finished_length);
    put_length(one, desk, "running_length", row->running_length);
    put_length(one, desk, "unfinished_width_now", row->unfinished_width);
    put_length(one, desk, "unfinished_height_now", row->unfinished_height);
    put_truth(one, "closes_round", row->closes_round == 1);
}

static bool put_rows(json_t *answer, struct desk *desk, const struct muslin_logcabin_spec *spec,
                     const struct lengths *widths, const struct muslin_logcabin *plan)
{
    size_t kinds = (size_t)plan->kinds;
    size_t logs = (size_t)plan->logs;
    struct muslin_logcabin_strip *strips = need_memory(kinds * sizeof *strips);
    struct muslin_logcabin_log *rows = need_memory(logs * sizeof *rows);
    bool fine = worked(desk, muslin_logcabin_strips(spec, widths->values, widths->count, strips, sizeof *strips, kinds,
                                                    &kinds, &desk->problem)) &&
                worked(desk, muslin_logcabin_logs(spec, widths->values, widths->count, rows, sizeof *rows, logs, &logs,
                                                  &desk->problem));
    json_t *cutting = put_list(answer, "strips");
    json_t *sewing = put_list(answer, "logs");
    for (size_t i = 0; fine && i < kinds; i++)
        put_strips(cutting, desk, &strips[i]);
    for (size_t i = 0; fine && i < logs; i++)
        put_log(sewing, desk, &rows[i]);
    free(strips);
    free(rows);
    return fine;
}

static json_t *answer_cabin(const void *request, struct desk *desk)
{
    const struct cabin_request *wanted = request;
    struct muslin_logcabin_spec spec = wanted->cabin;
    struct muslin_logcabin_fit fit = { .size = sizeof fit };
    struct muslin_logcabin plan = { .size = sizeof plan };
    if (!given(desk, "height"))
        spec.centre_height = spec.centre_width;
    spec.flags = wanted->given_cut ? MUSLIN_LOGCABIN_GIVEN_CUT : 0;
    if (given(desk, "finish") && !fit_block(desk, wanted, &spec, &fit))
        return NULL;
    if (!worked(desk, muslin_logcabin_plan(&spec, wanted->widths.values, wanted->widths.count, &plan, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_plan(answer, desk, &spec, &plan);
    if (given(desk, "finish"))
        put_fit(answer, desk, &fit, wanted->wanted);
    if (put_rows(answer, desk, &spec, &wanted->widths, &plan))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row cabin_options[] = {
    { "centre", KIND_LENGTH, offsetof(struct cabin_request, cabin.centre_width), MUSLIN_ARG_CENTRE_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished width of the centre" },
    { "height", KIND_LENGTH, offsetof(struct cabin_request, cabin.centre_height), MUSLIN_ARG_CENTRE_HEIGHT, 0, NULL,
      "finished height of the centre (the same)" },
    { "log", KIND_LENGTH, offsetof(struct cabin_request, cabin.log_width), MUSLIN_ARG_LOG_WIDTH, 0, NULL,
      "finished width of every log" },
    { "widths", KIND_LENGTHS, offsetof(struct cabin_request, widths), MUSLIN_ARG_PIECES, 0, NULL,
      "instead, a width for each round, or one for each log in sewing order; repeat it" },
    { "rounds", KIND_COUNT, offsetof(struct cabin_request, cabin.rounds), MUSLIN_ARG_ROUNDS, 0, NULL,
      "rounds of logs" },
    { "cut", KIND_SWITCH, offsetof(struct cabin_request, given_cut), 0, 0, NULL,
      "centre and logs are given as cut, not finished" },
    { "finish", KIND_LENGTH, offsetof(struct cabin_request, wanted), MUSLIN_ARG_FINISHED, 0, NULL,
      "finished width of the block wanted: with the rounds, finds the log; with the log, the rounds" },
    OPTION_HEADING("How it is sewn"),
    { "order", KIND_CHOICE, offsetof(struct cabin_request, cabin.order), MUSLIN_ARG_LOG_ORDER, 0, order_words,
      "round and round (the usual), courthouse steps, or quarter: two neighbouring sides only" },
    { "start", KIND_CHOICE, offsetof(struct cabin_request, cabin.start), MUSLIN_ARG_LOG_SIDE, 0, side_words,
      "side of the first log: top (the usual), right, bottom or left" },
    { "turn", KIND_CHOICE, offsetof(struct cabin_request, cabin.turn), MUSLIN_ARG_LOG_TURN, 0, turn_words,
      "clockwise (the usual) or anticlockwise" },
    OPTION_HEADING("Cloth, seams and rounding"),
    { "blocks", KIND_COUNT, offsetof(struct cabin_request, cabin.blocks), MUSLIN_ARG_BLOCKS, 0, NULL,
      "blocks alike, cut together (1)" },
    { "usable", KIND_LENGTH, offsetof(struct cabin_request, cabin.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth (40 in); 0 counts no strips" },
    { "end-loss", KIND_LENGTH, offsetof(struct cabin_request, cabin.end_loss), MUSLIN_ARG_END_LOSS, 0, NULL,
      "of each strip, where its ends are squared (none)" },
    OPTION_SEAM(cabin_request, cabin.allowance, cabin.take_up),
    OPTION_ROUNDING(cabin_request, rounding),
    OPTION_END
};

const struct command log_cabin_command = {
    .name = "log-cabin",
    .about = "log cabins and courthouse steps: every log in sewing order, strips",
    .operands = "FINISHED-CENTRE",
    .examples = "  muslin log-cabin 2 --log 1 --rounds 3 --blocks 20\n"
                "  muslin log-cabin 2 --finish 12 --rounds 3 --to 1/8\n"
                "  muslin log-cabin \"2 1/2\" --log \"1 1/2\" --cut --finish 10 --order courthouse",
    .options = cabin_options,
    .request_size = sizeof(struct cabin_request),
    .start = start_cabin,
    .answer = answer_cabin,
    .show = show_log_cabin
};

/* ---- mitred frames ----------------------------------------------------------------------------------------------- */

enum { CORNERS = 16, PIECE_CORNERS = 4, UP_TO = MUSLIN_TICKS_PER_INCH / 8 };

struct frame_request {
    struct muslin_frame_spec frame;
    struct muslin_rounding_spec rounding;
};

static void start_frame(void *request)
{
    struct frame_request *wanted = request;
    wanted->frame = (struct muslin_frame_spec)MUSLIN_FRAME_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
    wanted->rounding.grid = UP_TO;
    wanted->rounding.direction = MUSLIN_DIRECTION_UP;
}

/* Four corners of a line, in order. */
static void put_line(json_t *template, const struct desk *desk, const char *name, const struct muslin_frame_corner *at)
{
    json_t *list = put_list(template, name);
    for (int i = 0; i < PIECE_CORNERS; i++) {
        json_t *corner = append_object(list);
        put_length(corner, desk, "x", at[i].x);
        put_length(corner, desk, "y", at[i].y);
    }
}

static bool put_templates(json_t *answer, struct desk *desk, const struct frame_request *wanted)
{
    struct muslin_frame_corner rows[CORNERS];
    struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    size_t count = 0;
    if (!worked(desk, muslin_frame_outline(&wanted->frame, &nearest, rows, sizeof *rows, CORNERS, &count,
                                           &desk->problem)))
        return false;
    json_t *top = put_object(answer, "top_template");
    json_t *side = put_object(answer, "side_template");
    put_line(top, desk, "cut_corners", rows);
    put_line(top, desk, "finished_corners", rows + PIECE_CORNERS);
    put_line(side, desk, "cut_corners", rows + 2 * PIECE_CORNERS);
    put_line(side, desk, "finished_corners", rows + 3 * PIECE_CORNERS);
    return true;
}

/* More than a tick: less is what a root leaves. */
static bool is_off(muslin_len error)
{
    return error > 0 || error < -1;
}

static void put_frame_strips(json_t *answer, const struct desk *desk, const struct muslin_frame_spec *spec,
                             const struct muslin_frame *frame)
{
    put_length(answer, desk, "cloth_usable_width", spec->usable_width);
    if (spec->usable_width == 0)
        return;
    json_t *strips = put_object(answer, "across_the_cloth");
    put_count(strips, "strips", frame->strips);
    put_cloth(strips, desk, "cloth_length", frame->cloth_length);
    put_to_buy(strips, desk, "cloth_to_buy", frame->cloth_length);
}

/* What the piece inside the frame must measure when it is sewn in. */
static bool put_opening(json_t *answer, struct desk *desk, const struct muslin_frame_spec *frame)
{
    return put_unfinished(answer, desk, "opening_unfinished_width", frame->opening_width, frame->allowance,
                          frame->take_up) &&
           put_unfinished(answer, desk, "opening_unfinished_height", frame->opening_height, frame->allowance,
                          frame->take_up);
}

static json_t *answer_frame(const void *request, struct desk *desk)
{
    const struct frame_request *wanted = request;
    struct frame_request made = *wanted;
    struct muslin_frame frame = { .size = sizeof frame };
    if (!given(desk, "height"))
        made.frame.opening_height = made.frame.opening_width;
    if (!worked(desk, muslin_frame_pieces(&made.frame, &made.rounding, &frame, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "opening_finished_width", made.frame.opening_width);
    put_length(answer, desk, "opening_finished_height", made.frame.opening_height);
    put_length(answer, desk, "frame_finished_width", made.frame.frame_width);
    put_length(answer, desk, "seam_allowance", made.frame.allowance);
    put_length(answer, desk, "strip_cut_width", frame.cut_width);
    put_length(answer, desk, "top_cut_long_edge", frame.top_long);
    put_length(answer, desk, "top_cut_short_edge", frame.top_short);
    put_length(answer, desk, "side_cut_long_edge", frame.side_long);
    put_length(answer, desk, "side_cut_short_edge", frame.side_short);
    put_length(answer, desk, "strip_length_for_all_four", frame.strip_length);
    put_truth(answer, "all_four_alike", made.frame.opening_width == made.frame.opening_height);
    put_truth(answer, "cut_edges_are_rounded", is_off(frame.top_long_error) || is_off(frame.side_long_error));
    put_frame_strips(answer, desk, &made.frame, &frame);
    put_length(answer, desk, "finished_width", frame.finished_width);
    put_length(answer, desk, "finished_height", frame.finished_height);
    put_length(answer, desk, "unfinished_width", frame.unfinished_width);
    put_length(answer, desk, "unfinished_height", frame.unfinished_height);
    if (put_opening(answer, desk, &made.frame) && put_templates(answer, desk, &made))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row frame_options[] = {
    { "width", KIND_LENGTH, offsetof(struct frame_request, frame.opening_width), MUSLIN_ARG_CENTRE_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished width of what is framed" },
    { "height", KIND_LENGTH, offsetof(struct frame_request, frame.opening_height), MUSLIN_ARG_CENTRE_HEIGHT, 0, NULL,
      "finished height of it (the same)" },
    { "frame", KIND_LENGTH, offsetof(struct frame_request, frame.frame_width), MUSLIN_ARG_BORDER_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the frame" },
    { "usable", KIND_LENGTH, offsetof(struct frame_request, frame.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the cloth (40 in); 0 counts no strips" },
    OPTION_SEAM(frame_request, frame.allowance, frame.take_up),
    { "to", KIND_LENGTH, offsetof(struct frame_request, rounding.grid), MUSLIN_ARG_GRID, 0, NULL,
      "round lengths to this grid (1/8 in)" },
    { "round", KIND_CHOICE, offsetof(struct frame_request, rounding.direction), MUSLIN_ARG_DIRECTION, 0,
      rounding_words, "up (the usual), down or nearest" },
    OPTION_END
};

const struct command frame_command = {
    .name = "frame",
    .about = "a mitred frame cut by template: edges, strip, outlines",
    .operands = "FINISHED-WIDTH",
    .examples = "  muslin frame 6 --frame 2\n"
                "  muslin frame 8 --height 12 --frame \"1 1/2\" --to 1/16",
    .options = frame_options,
    .request_size = sizeof(struct frame_request),
    .start = start_frame,
    .answer = answer_frame,
    .show = show_frame
};
