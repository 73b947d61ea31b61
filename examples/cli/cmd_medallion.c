/* cmd_medallion.c - medallion, pieced-border: rounds that must come out.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

static const struct word kind_words[] = {
    { "plain", MUSLIN_ROUND_PLAIN }, { "pieced", MUSLIN_ROUND_PIECED }, { "coping", MUSLIN_ROUND_COPING }, { NULL, 0 }
};
static const struct word corner_words[] = {
    { "squares", MUSLIN_ROUND_CORNER_SQUARES }, { "through", MUSLIN_ROUND_CORNER_THROUGH }, { NULL, 0 }
};

/* ---- a round as people write it ---------------------------------------------------------------------------------- */

/* Text of which parts have been taken: `from` up to `to`. */
struct span {
    const char *from;
    size_t length;
};

static struct span trimmed(struct span text)
{
    while (text.length > 0 && text.from[0] == ' ') {
        text.from++;
        text.length--;
    }
    while (text.length > 0 && text.from[text.length - 1] == ' ')
        text.length--;
    return text;
}

/* The word before the first blank, or behind the last one. */
static struct span first_word(struct span text)
{
    size_t length = 0;
    while (length < text.length && text.from[length] != ' ')
        length++;
    return (struct span){ text.from, length };
}

static struct span last_word(struct span text)
{
    size_t start = text.length;
    while (start > 0 && text.from[start - 1] != ' ')
        start--;
    return (struct span){ text.from + start, text.length - start };
}

static const struct word *word_in(const struct word *words, struct span word)
{
    for (; words->word != NULL; words++)
        if (strlen(words->word) == word.length && strncmp(words->word, word.from, word.length) == 0)
            return words;
    return NULL;
}

/* Splits at " between ", once; false when it is not there. */
static bool split(struct span text, const char *between, struct span *before, struct span *behind)
{
    size_t length = strlen(between);
    for (size_t at = 0; at + length <= text.length; at++)
        if (strncmp(text.from + at, between, length) == 0) {
            *before = trimmed((struct span){ text.from, at });
            *behind = trimmed((struct span){ text.from + at + length, text.length - at - length });
            return true;
        }
    return false;
}

static bool complain_of_round(struct desk *desk, const char *text)
{
    failure_say(desk->failure, "round", "\"%.60s\" is no round. Write plain WIDTH, pieced DEPTH by REPEAT, or coping "
                                        "LEAST to MOST; behind it may stand squares or through, for the corners.",
                text);
    return false;
}

/* "pieced 4 by 2 1/2 squares", "coping 1/2 to 3", "plain 2". Squares stand in the corners of pieced rounds, plain ones
 * run through them, unless told otherwise; without "by", units are as long as deep. */
static bool read_round(struct desk *desk, const char *text, struct muslin_medallion_row *row)
{
    struct span rest = trimmed((struct span){ text, strlen(text) });
    const struct word *kind = word_in(kind_words, first_word(rest));
    const struct word *corner = word_in(corner_words, last_word(rest));
    if (kind == NULL)
        return complain_of_round(desk, text);
    bool pieced = kind->value == MUSLIN_ROUND_PIECED;
    bool coping = kind->value == MUSLIN_ROUND_COPING;
    *row = (struct muslin_medallion_row){ .size = sizeof *row, .kind = kind->value };
    row->corner = corner != NULL ? corner->value : pieced ? MUSLIN_ROUND_CORNER_SQUARES : MUSLIN_ROUND_CORNER_THROUGH;
    rest = trimmed((struct span){ rest.from + strlen(kind->word), rest.length - strlen(kind->word) });
    if (corner != NULL)
        rest = trimmed((struct span){ rest.from, rest.length - strlen(corner->word) });
    struct span width = rest;
    struct span other = rest;
    bool two = split(rest, coping ? " to " : " by ", &width, &other);
    if (rest.length == 0 || (coping && !two) || (!coping && !pieced && two))
        return complain_of_round(desk, text);
    muslin_len second = 0;
    if (!read_length(desk, "round", width.from, width.length, &row->width) ||
        !read_length(desk, "round", other.from, other.length, &second))
        return false;
    row->repeat = pieced ? second : 0;
    row->most = coping ? second : 0;
    return true;
}

/* ---- medallion --------------------------------------------------------------------------------------------------- */

struct medallion_request {
    struct muslin_medallion_spec medallion;
    struct texts rounds;
    int32_t equal;
    muslin_len coping_extra;
};

static void start_medallion(void *request)
{
    struct medallion_request *wanted = request;
    wanted->medallion = (struct muslin_medallion_spec)MUSLIN_MEDALLION_SPEC_INIT;
}

enum { HALF_AN_INCH = MUSLIN_TICKS_PER_INCH / 2, A_CENTIMETRE = MUSLIN_TICKS_PER_MM * 10 };

/* What coping strips are cut wider than they must be (common practice, no source), in the units of the answer. */
static muslin_len coping_extra(const struct medallion_request *wanted, const struct desk *desk)
{
    if (given(desk, "coping-extra"))
        return wanted->coping_extra;
    return desk->common.units == UNITS_INCH || desk->common.units == UNITS_INCH_DECIMAL ? HALF_AN_INCH : A_CENTIMETRE;
}

static bool put_wider(json_t *one, struct desk *desk, const char *name, muslin_len cut, muslin_len extra)
{
    muslin_len wider = 0;
    if (cut == 0)
        return true;
    if (!worked(desk, muslin_length_add(cut, extra, &wider)))
        return false;
    put_length(one, desk, name, wider);
    return true;
}

static void put_strips(json_t *one, const struct desk *desk, const struct muslin_medallion_row *row)
{
    put_length(one, desk, "side_finished_width", row->side_finished);
    put_length(one, desk, "top_finished_width", row->top_finished);
    put_length(one, desk, "side_cut_width", row->side_cut);
    put_length(one, desk, "top_cut_width", row->top_cut);
    put_length(one, desk, "side_cut_length", row->side_length);
    put_length(one, desk, "top_cut_length", row->top_length);
}

static void put_units(json_t *one, const struct desk *desk, const struct muslin_medallion_row *row)
{
    put_length(one, desk, "unit_finished_depth", row->width);
    put_length(one, desk, "unit_finished_repeat", row->repeat);
    put_length(one, desk, "unit_unfinished_depth", row->side_cut);
    put_length(one, desk, "unit_unfinished_repeat", row->unit_unfinished);
    put_count(one, "units_in_each_side", row->side_units);
    put_count(one, "units_in_top_and_bottom_each", row->top_units);
    put_count(one, "units", row->units);
    put_length(one, desk, "left_over_in_each_side", row->side_rest);
    put_length(one, desk, "left_over_in_top_and_bottom", row->top_rest);
    put_truth(one, "comes_out", row->divides == 1);
    put_length(one, desk, "side_unfinished_length", row->side_length);
    put_length(one, desk, "top_unfinished_length", row->top_length);
}

static bool put_round(json_t *list, struct desk *desk, const struct muslin_medallion_row *row, size_t number,
                      muslin_len extra)
{
    json_t *one = append_object(list);
    bool coping = row->kind == MUSLIN_ROUND_COPING;
    muslin_len wider = coping ? extra : 0;
    put_count(one, "number", (int64_t)number);
    put_text(one, "kind", word_of(kind_words, row->kind));
    put_text(one, "corners", word_of(corner_words, row->corner));
    put_length(one, desk, "finished_width_before", row->before_width);
    put_length(one, desk, "finished_height_before", row->before_height);
    if (row->kind == MUSLIN_ROUND_PIECED)
        put_units(one, desk, row);
    else
        put_strips(one, desk, row);
    put_count(one, "corner_squares", row->corner_squares);
    if (row->corner_squares > 0 && (!put_wider(one, desk, "corner_cut_width", row->side_cut, wider) ||
                                    !put_wider(one, desk, "corner_cut_height", row->top_cut, wider)))
        return false;
    put_truth(one, "sides_differ_from_top", row->unequal == 1);
    put_length(one, desk, "finished_width_after", row->after_width);
    put_length(one, desk, "finished_height_after", row->after_height);
    put_length(one, desk, "unfinished_width_after", row->after_unfinished_width);
    put_length(one, desk, "unfinished_height_after", row->after_unfinished_height);
    return !coping || (put_wider(one, desk, "side_cut_width_to_trim", row->side_cut, wider) &&
                       put_wider(one, desk, "top_cut_width_to_trim", row->top_cut, wider));
}

static bool is_about_a_round(int32_t argument)
{
    switch (argument) {
    case MUSLIN_ARG_ROUND_KIND:
    case MUSLIN_ARG_UNIT_REPEAT:
    case MUSLIN_ARG_COPING_MOST:
    case MUSLIN_ARG_BORDER_WIDTH:
    case MUSLIN_ARG_QUILT_WIDTH:
    case MUSLIN_ARG_QUILT_LENGTH:
        return true;
    default:
        return false;
    }
}

/* A round that the library refuses is named by its number, in words of its own where there are better ones. */
static void complain_with_number(struct desk *desk)
{
    char said[400];
    struct failure *failure = desk->failure;
    const struct muslin_problem *problem = &desk->problem;
    if (!is_about_a_round(problem->argument))
        return;
    snprintf(said, sizeof said, "%.390s", failure->sentence);
    if (problem->status == MUSLIN_ERR_CHOICE)
        snprintf(said, sizeof said, "a coping round stands directly before a pieced one.");
    if (problem->status == MUSLIN_ERR_NO_FIT && problem->limit == 0)
        snprintf(said, sizeof said, "no strips of one width make both sides and top come out; let them differ, or "
                                    "choose another repeat.");
    snprintf(failure->sentence, sizeof failure->sentence, "Round %d: %s", (int)problem->at + 1, said);
    snprintf(failure->option, sizeof failure->option, "round");
}

static json_t *answer_medallion(const void *request, struct desk *desk)
{
    const struct medallion_request *wanted = request;
    struct muslin_medallion_spec spec = wanted->medallion;
    struct muslin_medallion_row rows[TEXTS_MAX];
    struct muslin_medallion quilt = { .size = sizeof quilt };
    size_t n = wanted->rounds.count;
    if (!given(desk, "height"))
        spec.centre_height = spec.centre_width;
    spec.flags = wanted->equal ? MUSLIN_MEDALLION_EQUAL_COPING : 0;
    for (size_t i = 0; i < n; i++)
        if (!read_round(desk, wanted->rounds.texts[i], &rows[i]))
            return NULL;
    if (!worked(desk, muslin_medallion_plan(&spec, rows, sizeof *rows, n, &quilt, &desk->problem))) {
        complain_with_number(desk);
        return NULL;
    }
    json_t *answer = json_object();
    put_length(answer, desk, "centre_finished_width", spec.centre_width);
    put_length(answer, desk, "centre_finished_height", spec.centre_height);
    put_length(answer, desk, "seam_allowance", spec.allowance);
    json_t *list = put_list(answer, "rounds");
    for (size_t i = 0; i < n; i++)
        if (!put_round(list, desk, &rows[i], i + 1, coping_extra(wanted, desk))) {
            json_decref(answer);
            return NULL;
        }
    put_count(answer, "units", quilt.units);
    put_count(answer, "rounds_that_leave_a_rest", quilt.undivided);
    put_length(answer, desk, "finished_width", quilt.finished_width);
    put_length(answer, desk, "finished_height", quilt.finished_height);
    put_length(answer, desk, "unfinished_width", quilt.unfinished_width);
    put_length(answer, desk, "unfinished_height", quilt.unfinished_height);
    return answer;
}

static const struct option_row medallion_options[] = {
    { "round", KIND_TEXTS, offsetof(struct medallion_request, rounds), MUSLIN_ARG_ROUNDS,
      OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "from the inside outwards, repeated: plain WIDTH, a border; pieced DEPTH by REPEAT, a border of units (without "
      "by, squares); coping LEAST to MOST, plain strips just wide enough that the pieced round behind them comes out. "
      "All finished. Behind it: squares, in the corners (the usual when pieced), or through, when top and bottom run "
      "through the corners" },
    OPTION_HEADING("The centre"),
    { "centre", KIND_LENGTH, offsetof(struct medallion_request, medallion.centre_width), MUSLIN_ARG_CENTRE_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the centre" },
    { "height", KIND_LENGTH, offsetof(struct medallion_request, medallion.centre_height), MUSLIN_ARG_CENTRE_HEIGHT, 0,
      NULL, "finished height of the centre (the same)" },
    OPTION_HEADING("Coping and seams"),
    { "equal", KIND_SWITCH, offsetof(struct medallion_request, equal), 0, 0, NULL,
      "coping strips must be equally wide on all four sides" },
    { "coping-extra", KIND_LENGTH, offsetof(struct medallion_request, coping_extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "what coping strips are cut wider, to be trimmed away (1/2 in, or 1 cm)" },
    OPTION_SEAM(medallion_request, medallion.allowance, medallion.take_up),
    OPTION_END
};

const struct command medallion_command = {
    .name = "medallion",
    .about = "a centre and rounds about it: sizes, units, coping strips",
    .operands = "ROUND...",
    .examples = "  muslin medallion --centre 20 \"coping 1/2 to 3\" \"pieced 4\" \"plain 2 1/2\"\n"
                "  muslin medallion --centre 18 --height 24 \"coping 1 to 3\" \"pieced 3 by 4\"",
    .options = medallion_options,
    .request_size = sizeof(struct medallion_request),
    .start = start_medallion,
    .answer = answer_medallion,
    .show = show_medallion
};

/* ---- pieced borders ---------------------------------------------------------------------------------------------- */

struct pieced_request {
    struct muslin_repeat_spec repeat;
    struct muslin_rounding_spec rounding;
    muslin_len other_side;
    muslin_len most;
    muslin_len diagonal;
    int64_t squares;
    int64_t runs;
};

static void start_pieced(void *request)
{
    struct pieced_request *wanted = request;
    wanted->repeat = (struct muslin_repeat_spec)MUSLIN_REPEAT_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
    wanted->runs = 1;
}

/* What rounding changed, unless it is less than a tick. */
static void put_off(json_t *answer, const struct desk *desk, const char *name, muslin_len error)
{
    if (error > 0 || error < -1)
        put_length(answer, desk, name, error);
}

/* Another repeat, with which so many units come out, but for what rounding leaves over. */
static bool put_other_repeat(json_t *other, struct desk *desk, muslin_len side, int64_t units, muslin_len repeat,
                             muslin_len left_over)
{
    const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded exact = { .size = sizeof exact };
    if (!worked(desk, muslin_length_divide(side, units, &nearest, &exact)))
        return false;
    put_count(other, "units", units);
    put_length(other, desk, "side_finished", side);
    put_length(other, desk, "repeat_finished", repeat);
    put_length(other, desk, "repeat_exactly_finished", exact.value);
    put_truth(other, "rounded", repeat != exact.value);
    put_difference(other, desk, "short_by", "too_long_by", left_over);
    return true;
}

static bool put_other_repeats(json_t *answer, struct desk *desk, muslin_len side, const struct muslin_repeat *found)
{
    return (found->units_below == 0 ||
            put_other_repeat(put_object(answer, "with_the_units_that_fit"), desk, side, found->units_below,
                             found->repeat_below, found->below_left_over)) &&
           put_other_repeat(put_object(answer, "with_the_units_that_reach"), desk, side, found->units_above,
                            found->repeat_above, found->above_left_over);
}

static json_t *answer_repeat(const struct pieced_request *wanted, struct desk *desk)
{
    struct muslin_repeat found = { .size = sizeof found };
    if (!worked(desk, muslin_repeat_plan(&wanted->repeat, &wanted->rounding, &found, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "way", "units");
    put_length(answer, desk, "side_finished", wanted->repeat.side_finished);
    put_length(answer, desk, "repeat_finished", wanted->repeat.repeat_finished);
    put_length(answer, desk, "unit_unfinished", found.unit_unfinished);
    put_truth(answer, "comes_out", found.divides == 1);
    put_count(answer, "units_that_fit", found.units_below);
    put_length(answer, desk, "they_leave", found.rest_below);
    put_count(answer, "units_that_reach", found.units_above);
    put_length(answer, desk, "they_pass_it_by", found.over_above);
    if (!put_other_repeats(answer, desk, wanted->repeat.side_finished, &found)) {
        json_decref(answer);
        return NULL;
    }
    put_count(answer, "spacers", wanted->repeat.spacers);
    if (wanted->repeat.spacers == 0)
        return answer;
    put_count(answer, "units", found.units);
    put_length(answer, desk, "spacers_share", found.shared);
    put_length(answer, desk, "spacer_finished", found.spacer_finished);
    put_length(answer, desk, "spacer_cut", found.spacer_cut);
    put_difference(answer, desk, "left_over", "too_long_by", found.left_over);
    return answer;
}

static json_t *answer_common(const struct pieced_request *wanted, struct desk *desk)
{
    struct muslin_common_repeat found = { .size = sizeof found };
    if (!worked(desk, muslin_repeat_common(wanted->repeat.side_finished, wanted->other_side,
                                           wanted->repeat.spacer_least, wanted->most, &wanted->rounding, &found,
                                           &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "way", "both sides");
    put_length(answer, desk, "side_finished", wanted->repeat.side_finished);
    put_length(answer, desk, "other_side_finished", wanted->other_side);
    put_length(answer, desk, "largest_common_length", found.common);
    put_count(answer, "parts_of_it", found.parts);
    put_length(answer, desk, "repeat_finished", found.repeat);
    put_off(answer, desk, "repeat_rounded_by", found.repeat_error);
    put_count(answer, "units_in_the_side", found.across);
    put_count(answer, "units_in_the_other_side", found.down);
    if (put_unfinished(answer, desk, "unit_unfinished", found.repeat, wanted->repeat.allowance,
                       wanted->repeat.take_up))
        return answer;
    json_decref(answer);
    return NULL;
}

/* What rounding makes of a run, where one can measure it, and what each seam of a square must make good: half of what
 * the square is too large or too small by. */
static void put_run(json_t *answer, const struct desk *desk, muslin_len longer, muslin_len square_error)
{
    const struct muslin_rounding_spec nearest = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_rounded half = { .size = sizeof half };
    muslin_len shorter = 0;
    if (muslin_length_divide(square_error < 0 ? -square_error : square_error, 2, &nearest, &half) == MUSLIN_OK)
        put_length(answer, desk, "each_seam_by", half.value);
    if (longer >= MUSLIN_TICKS_PER_INCH / 16)
        put_about(answer, desk, "run_as_cut_longer_by", longer);
    else if (longer <= -MUSLIN_TICKS_PER_INCH / 16 && muslin_length_subtract(0, longer, &shorter) == MUSLIN_OK)
        put_about(answer, desk, "run_as_cut_shorter_by", shorter);
}

static void put_point_border(json_t *answer, const struct desk *desk, const struct muslin_point_border *found)
{
    put_about(answer, desk, "diagonal_finished", found->diagonal_finished);
    put_about(answer, desk, "border_unfinished_depth", found->border_unfinished);
    put_count(answer, "squares_in_a_run", found->squares_per_run);
    put_length(answer, desk, "left_over", found->rest);
    put_about(answer, desk, "square_finished", found->square_finished);
    put_length(answer, desk, "square_cut", found->square_cut);
    put_off(answer, desk, "square_cut_rounded_by", found->square_cut_error);
    put_length(answer, desk, "setting_square_cut", found->setting_cut);
    put_off(answer, desk, "setting_square_cut_rounded_by", found->setting_cut_error);
    put_length(answer, desk, "end_square_cut", found->end_cut);
    put_off(answer, desk, "end_square_cut_rounded_by", found->end_cut_error);
    put_run(answer, desk, found->run_longer_by, found->square_cut_error);
    put_count(answer, "squares", found->squares);
    put_count(answer, "setting_triangles", found->setting_triangles);
    put_count(answer, "setting_squares_to_cut", found->setting_squares);
    put_count(answer, "end_triangles", found->end_triangles);
    put_count(answer, "end_squares_to_cut", found->end_squares);
}

static json_t *answer_point_border(const struct pieced_request *wanted, struct desk *desk)
{
    const struct muslin_rounding_spec to_a_tick = MUSLIN_ROUNDING_SPEC_INIT;
    struct muslin_point_border_spec spec = MUSLIN_POINT_BORDER_SPEC_INIT;
    struct muslin_rounding_spec cutting = wanted->rounding;
    struct muslin_point_border found = { .size = sizeof found };
    spec.side_finished = wanted->repeat.side_finished;
    spec.diagonal_finished = wanted->diagonal;
    spec.squares = wanted->squares;
    spec.runs = wanted->runs;
    spec.allowance = wanted->repeat.allowance;
    spec.take_up = wanted->repeat.take_up;
    if (!given(desk, "to"))
        cutting.grid = MUSLIN_TICKS_PER_INCH / 16;
    if (!given(desk, "round"))
        cutting.direction = MUSLIN_DIRECTION_UP;
    if (!worked(desk, muslin_point_border_plan(&spec, &cutting, &to_a_tick, &found, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    muslin_len run = 0;
    put_text(answer, "way", "squares on point");
    put_length(answer, desk, "side_finished", spec.side_finished);
    put_length(answer, desk, "seam_allowance", spec.allowance);
    if (muslin_length_subtract(spec.side_finished, found.rest, &run) == MUSLIN_OK)
        put_length(answer, desk, "run_finished", run);
    put_count(answer, "runs", spec.runs);
    put_point_border(answer, desk, &found);
    return answer;
}

static json_t *answer_pieced(const void *request, struct desk *desk)
{
    const struct pieced_request *wanted = request;
    if (given(desk, "diagonal") || given(desk, "squares"))
        return answer_point_border(wanted, desk);
    if (given(desk, "other-side") && given(desk, "most"))
        return answer_common(wanted, desk);
    if (given(desk, "repeat"))
        return answer_repeat(wanted, desk);
    failure_say(desk->failure, "repeat", "Give the repeat of the units; or the other side and the longest repeat, to "
                                         "find one for both; or the diagonal or the number of squares on point.");
    return NULL;
}

static const struct option_row pieced_options[] = {
    { "side", KIND_LENGTH, offsetof(struct pieced_request, repeat.side_finished), MUSLIN_ARG_FINISHED,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished side that the units shall fill" },
    OPTION_HEADING("Units side by side"),
    { "repeat", KIND_LENGTH, offsetof(struct pieced_request, repeat.repeat_finished), MUSLIN_ARG_UNIT_REPEAT, 0, NULL,
      "finished length of a unit along the side" },
    { "spacers", KIND_COUNT, offsetof(struct pieced_request, repeat.spacers), MUSLIN_ARG_SPACERS, 0, NULL,
      "plain strips between units that share what these leave (none)" },
    { "least", KIND_LENGTH, offsetof(struct pieced_request, repeat.spacer_least), MUSLIN_ARG_SPACER_LEAST, 0, NULL,
      "least finished width of a spacer, or of a repeat for both sides (none)" },
    OPTION_HEADING("A repeat that divides both sides"),
    { "other-side", KIND_LENGTH, offsetof(struct pieced_request, other_side), MUSLIN_ARG_QUILT_LENGTH, 0, NULL,
      "the other finished side; give the longest repeat with it" },
    { "most", KIND_LENGTH, offsetof(struct pieced_request, most), MUSLIN_ARG_UNIT_REPEAT, 0, NULL,
      "the longest finished repeat allowed" },
    OPTION_HEADING("Squares on point"),
    { "diagonal", KIND_LENGTH, offsetof(struct pieced_request, diagonal), MUSLIN_ARG_DIAGONAL, 0, NULL,
      "finished diagonal of a square, tip to tip: the depth of the border" },
    { "squares", KIND_COUNT, offsetof(struct pieced_request, squares), MUSLIN_ARG_PIECES, 0, NULL,
      "instead, squares that shall fill the side" },
    { "runs", KIND_COUNT, offsetof(struct pieced_request, runs), MUSLIN_ARG_RUNS, 0, NULL,
      "runs alike, counted together (1)" },
    OPTION_HEADING("Seams and rounding"),
    OPTION_SEAM(pieced_request, repeat.allowance, repeat.take_up),
    { "to", KIND_LENGTH, offsetof(struct pieced_request, rounding.grid), MUSLIN_ARG_GRID, 0, NULL,
      "round to this grid, for instance 1/8 in (for squares on point, 1/16 in)" },
    { "round", KIND_CHOICE, offsetof(struct pieced_request, rounding.direction), MUSLIN_ARG_DIRECTION, 0,
      rounding_words, "up (the usual for squares on point), down or nearest (the usual else)" },
    { "tolerance", KIND_LENGTH, offsetof(struct pieced_request, rounding.tolerance), MUSLIN_ARG_TOLERANCE, 0, NULL,
      "what rounding up or down may overlook (none)" },
    OPTION_END
};

const struct command pieced_border_command = {
    .name = "pieced-border",
    .about = "units, spacers or squares on point that must fill a side",
    .operands = "FINISHED-SIDE",
    .examples = "  muslin pieced-border 50 --repeat 4 --spacers 2 --to 1/8\n"
                "  muslin pieced-border 42 --other-side 48 --most 4\n"
                "  muslin pieced-border 40 --diagonal 2 --runs 2",
    .options = pieced_options,
    .request_size = sizeof(struct pieced_request),
    .start = start_pieced,
    .answer = answer_pieced,
    .show = show_pieced_border
};
