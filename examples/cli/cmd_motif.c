/* cmd_motif.c - motif, stack: windows on a printed repeat, and stacks of identical layers.
 *
 * SPDX-License-Identifier: MIT */
#include <stdio.h>
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"

/* ---- windows ---------------------------------------------------------------------------------------------------- */

struct motif_request {
    struct muslin_motif_spec motif;
    struct muslin_seam_spec seam;
    muslin_len cloth_length;
    int32_t whole_repeats;
};

static void start_motif(void *request)
{
    struct motif_request *wanted = request;
    wanted->motif = (struct muslin_motif_spec)MUSLIN_MOTIF_SPEC_INIT;
    wanted->seam = (struct muslin_seam_spec)MUSLIN_SEAM_SPEC_INIT;
}

/* Is the cloth in hand enough, for certain or with luck, and if not, how much more would be? */
static void put_enough(json_t *answer, const struct desk *desk, const struct muslin_motif_yield *yield,
                       int64_t pieces, muslin_len more)
{
    bool certain = yield->pieces_certain >= pieces;
    put_truth(answer, "enough_for_certain", certain);
    put_truth(answer, "enough_with_luck", yield->pieces_lucky >= pieces);
    if (!certain)
        put_least(answer, desk, "longer_to_be_certain_by", more);
}

static bool put_from_cloth(json_t *answer, struct desk *desk, const struct motif_request *wanted,
                           const struct muslin_motif_spec *spec, muslin_len cloth_least)
{
    struct muslin_motif_yield yield = { .size = sizeof yield };
    muslin_len more = 0;
    if (!worked(desk, muslin_motif_from_cloth(spec, wanted->cloth_length, &yield, &desk->problem)) ||
        !worked(desk, muslin_length_subtract(cloth_least, wanted->cloth_length, &more)))
        return false;
    put_length(answer, desk, "cloth_in_hand", wanted->cloth_length);
    put_count(answer, "pieces_from_it", yield.pieces);
    put_count(answer, "pieces_from_it_for_certain", yield.pieces_certain);
    put_count(answer, "pieces_from_it_at_most", yield.pieces_lucky);
    put_count(answer, "rows_from_it", yield.rows);
    put_slack(answer, desk, "left_over_of_it", yield.left_over);
    put_least(answer, desk, "longer_for_one_more_row_by", yield.longer_for_one);
    put_enough(answer, desk, &yield, spec->pieces, more);
    return true;
}

/* What shows of a window once its seams are sewn, where anything does. */
static void put_window(json_t *answer, const struct desk *desk, const struct muslin_motif_spec *spec,
                       const struct muslin_seam_spec *seam)
{
    muslin_len width = 0;
    muslin_len length = 0;
    put_length(answer, desk, "seam_allowance", seam->allowance);
    if (muslin_seam_finished_from_cut(spec->cut_width, seam, &width, NULL) != MUSLIN_OK ||
        muslin_seam_finished_from_cut(spec->cut_length, seam, &length, NULL) != MUSLIN_OK || width == 0 ||
        length == 0)
        return;
    put_length(answer, desk, "finished_width", width);
    put_length(answer, desk, "finished_length", length);
}

/* Where not one piece is certain, the complaint says whether there may be some. */
static bool plan_motif(struct desk *desk, const struct muslin_motif_spec *spec, struct muslin_motif *motif)
{
    muslin_status status = muslin_motif_plan(spec, motif, &desk->problem);
    if (worked(desk, status))
        return true;
    struct muslin_motif_spec whole = *spec;
    struct failure *failure = desk->failure;
    size_t used = strlen(failure->sentence);
    whole.flags = 0;
    if (status == MUSLIN_ERR_NO_YIELD && spec->flags != 0 && muslin_motif_plan(&whole, motif, NULL) == MUSLIN_OK)
        snprintf(failure->sentence + used, sizeof failure->sentence - used,
                 " That is for a print that may begin anywhere between the selvages. Do you see whole motifs there? "
                 "Then count them, and give --motifs and no --repeat-width.");
    return false;
}

/* What is certain, and what there may be with luck. */
static void put_chances(json_t *answer, const struct desk *desk, const struct muslin_motif *motif)
{
    put_count(answer, "from_each_row_for_certain", motif->per_row_certain);
    put_count(answer, "rows_for_certain", motif->rows_certain);
    put_cloth(answer, desk, "cloth_for_certain", motif->cloth_certain);
    put_count(answer, "from_each_row_at_most", motif->per_row_lucky);
    put_count(answer, "rows_with_luck", motif->rows_lucky);
    put_cloth(answer, desk, "cloth_with_luck", motif->cloth_lucky);
    put_slack(answer, desk, "first_must_begin_within", motif->lucky_within);
}

static json_t *answer_motif(const void *request, struct desk *desk)
{
    const struct motif_request *wanted = request;
    struct muslin_motif_spec spec = wanted->motif;
    struct muslin_motif motif = { .size = sizeof motif };
    spec.flags = wanted->whole_repeats ? MUSLIN_MOTIF_ANY_ACROSS : MUSLIN_MOTIF_ANY_START;
    if (!given(desk, "height"))
        spec.cut_length = spec.cut_width;
    if (!plan_motif(desk, &spec, &motif))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "pieces_wanted", spec.pieces);
    put_length(answer, desk, "cut_width", spec.cut_width);
    put_length(answer, desk, "cut_length", spec.cut_length);
    put_window(answer, desk, &spec, &wanted->seam);
    put_count(answer, "repeats_across_for_each", motif.repeats_across_each);
    put_count(answer, "repeats_along_for_each", motif.repeats_along_each);
    put_length(answer, desk, "usable_width", spec.usable_width);
    if (spec.repeat_width != 0)
        put_length(answer, desk, "repeat_width", spec.repeat_width);
    put_count(answer, "from_each_row", motif.per_row);
    put_count(answer, "rows", motif.rows);
    put_count(answer, "repeats_of_the_print", motif.repeats);
    put_count(answer, "repeats_to_buy", motif.repeats_bought);
    put_length(answer, desk, "length_of_a_row", motif.row_length);
    put_length(answer, desk, "wasted_in_each_row", motif.waste_per_row);
    put_length(answer, desk, "repeat_for_choosing_the_start", motif.shift);
    put_cloth(answer, desk, "cloth_length", motif.cloth_length);
    put_cloth(answer, desk, "least_cloth_length", motif.cloth_least);
    put_truth(answer, "less_than_whole_repeats_will_do", motif.cloth_least < motif.cloth_length);
    put_shop_length(answer, desk, motif.cloth_least);
    put_chances(answer, desk, &motif);
    put_count(answer, "pieces_to_spare", motif.spare_pieces);
    if (spec.repeat_width != 0)
        put_slack(answer, desk, "cloth_may_be_narrower_by", motif.narrower_by);
    if (motif.wider_for_less != 0) {
        put_least(answer, desk, "fewer_rows_if_wider_by", motif.wider_for_less);
        put_count(answer, "rows_if_wider", motif.wider_rows);
    }
    put_warnings(answer, motif.warnings);
    if (!given(desk, "cloth") || put_from_cloth(answer, desk, wanted, &spec, motif.cloth_least))
        return answer;
    json_decref(answer);
    return NULL;
}

static const struct option_row motif_options[] = {
    OPTION_HEADING("The pieces"),
    { "width", KIND_LENGTH, offsetof(struct motif_request, motif.cut_width), MUSLIN_ARG_CUT,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "cut size of the window across the cloth, or of a square" },
    { "height", KIND_LENGTH, offsetof(struct motif_request, motif.cut_length), MUSLIN_ARG_CUT, 0, NULL,
      "cut size along the cloth (the same)" },
    { "pieces", KIND_COUNT, offsetof(struct motif_request, motif.pieces), MUSLIN_ARG_PIECES, OPTION_REQUIRED, NULL,
      "windows wanted" },
    OPTION_HEADING("The print"),
    { "repeat", KIND_LENGTH, offsetof(struct motif_request, motif.repeat_length), MUSLIN_ARG_REPEAT, OPTION_REQUIRED,
      NULL, "of the print along the cloth" },
    { "repeat-width", KIND_LENGTH, offsetof(struct motif_request, motif.repeat_width), MUSLIN_ARG_REPEAT, 0, NULL,
      "of the print across it (the whole usable width is one repeat)" },
    { "motifs", KIND_COUNT, offsetof(struct motif_request, motif.motifs), MUSLIN_ARG_MOTIFS, 0, NULL,
      "windows that one repeat gives, of two that overlap only one (1)" },
    OPTION_HEADING("The cloth"),
    { "usable", KIND_LENGTH, offsetof(struct motif_request, motif.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "its usable width (40 in)" },
    { "cloth", KIND_LENGTH, offsetof(struct motif_request, cloth_length), MUSLIN_ARG_CLOTH_LENGTH, 0, NULL,
      "a length in hand: says what it gives" },
    { "whole-repeats", KIND_SWITCH, offsetof(struct motif_request, whole_repeats), MUSLIN_ARG_NONE, 0, NULL,
      "it is cut where a repeat begins along the cloth: no repeat more to choose the start" },
    OPTION_HEADING("The seam round each piece, for what shows of it"),
    OPTION_SEAM(motif_request, seam.allowance, seam.take_up),
    OPTION_END
};

const struct command motif_command = {
    .name = "motif",
    .about = "pieces that show a certain motif: repeats of the print, cloth",
    .operands = "CUT",
    .examples = "  muslin motif 6 --pieces 20 --repeat 12 --repeat-width 12\n"
                "  muslin motif 40 --height 96 --pieces 3 --repeat 27\n"
                "  muslin motif 6 --pieces 20 --repeat 12 --repeat-width 12 --cloth \"3 yd\" \\\n"
                "      --whole-repeats",
    .options = motif_options,
    .request_size = sizeof(struct motif_request),
    .start = start_motif,
    .answer = answer_motif,
    .show = show_motif
};

/* ---- identical layers ------------------------------------------------------------------------------------------- */

struct stack_request {
    struct muslin_stack_spec stack;
    int32_t whole_repeats;
};

static void start_stack(void *request)
{
    struct stack_request *wanted = request;
    wanted->stack = (struct muslin_stack_spec)MUSLIN_STACK_SPEC_INIT;
}

static json_t *answer_stack(const void *request, struct desk *desk)
{
    const struct stack_request *wanted = request;
    struct muslin_stack_spec spec = wanted->stack;
    struct muslin_stack stack = { .size = sizeof stack };
    spec.flags = wanted->whole_repeats ? 0 : MUSLIN_STACK_ANY_START;
    if (!worked(desk, muslin_stack_plan(&spec, &stack, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "stacks_wanted", spec.stacks);
    put_count(answer, "layers", spec.layers);
    put_count(answer, "identical_pieces_in_all", stack.pieces);
    put_count(answer, "repeats_in_each_layer", stack.repeats_per_layer);
    put_length(answer, desk, "length_of_each_layer", stack.layer_length);
    put_length(answer, desk, "used_of_each_layer", stack.used_length);
    put_slack(answer, desk, "not_used_of_each_layer", stack.shorter_by);
    put_count(answer, "repeats_of_the_print", stack.repeats);
    put_count(answer, "repeats_to_buy", stack.repeats_bought);
    put_length(answer, desk, "repeat_for_choosing_the_start", stack.shift);
    put_cloth(answer, desk, "cloth_length", stack.cloth_length);
    put_cloth(answer, desk, "least_cloth_length", stack.cloth_least);
    put_truth(answer, "less_than_whole_repeats_will_do", stack.cloth_least < stack.cloth_length);
    put_shop_length(answer, desk, stack.cloth_least);
    put_length(answer, desk, "taken_off_once", spec.straightening);
    put_length(answer, desk, "strip_cut", spec.strip_cut);
    put_count(answer, "stacks_from_each_strip", spec.per_strip);
    put_count(answer, "strips_to_cut_through_all_layers", stack.strips);
    put_count(answer, "strips_that_the_layers_give", stack.strips_in_layers);
    put_count(answer, "stacks_to_spare", stack.spare_stacks);
    put_slack(answer, desk, "left_over_of_each_layer", stack.left_over);
    put_warnings(answer, stack.warnings);
    return answer;
}

static const struct option_row stack_options[] = {
    OPTION_HEADING("The stacks"),
    { "stacks", KIND_COUNT, offsetof(struct stack_request, stack.stacks), MUSLIN_ARG_STACKS, OPTION_REQUIRED, NULL,
      "wanted: one for each block of identical pieces" },
    { "layers", KIND_COUNT, offsetof(struct stack_request, stack.layers), MUSLIN_ARG_LAYERS, 0, NULL,
      "identical pieces in a stack (6)" },
    { "strip", KIND_LENGTH, offsetof(struct stack_request, stack.strip_cut), MUSLIN_ARG_STRIP_CUT,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "cut width of the strips, cut through all layers" },
    { "per-strip", KIND_COUNT, offsetof(struct stack_request, stack.per_strip), MUSLIN_ARG_STACKS_PER_STRIP,
      OPTION_REQUIRED, NULL, "stacks from one strip: as many as pieces from a single strip" },
    OPTION_HEADING("The print"),
    { "repeat", KIND_LENGTH, offsetof(struct stack_request, stack.repeat_length), MUSLIN_ARG_REPEAT, OPTION_REQUIRED,
      NULL, "of the print along the cloth" },
    { "straighten", KIND_LENGTH, offsetof(struct stack_request, stack.straightening), MUSLIN_ARG_END_LOSS, 0, NULL,
      "taken off the aligned layers once (none)" },
    { "whole-repeats", KIND_SWITCH, offsetof(struct stack_request, whole_repeats), MUSLIN_ARG_NONE, 0, NULL,
      "the cloth begins at the place chosen in the print: no repeat more to choose the start" },
    OPTION_END
};

const struct command stack_command = {
    .name = "stack",
    .about = "stacks of identical pieces from aligned layers of a print",
    .operands = "STRIP",
    .examples = "  muslin stack 3 --stacks 40 --per-strip 10 --repeat 24",
    .options = stack_options,
    .request_size = sizeof(struct stack_request),
    .start = start_stack,
    .answer = answer_stack,
    .show = show_stack
};
