/* cmd_setting.c - block, top, border, join: blocks put together and what goes round them.
 *
 * SPDX-License-Identifier: MIT */
#include <string.h>

#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- a block from segments -------------------------------------------------------------------------------------- */

struct block_request {
    struct muslin_block_spec block;
};

static void start_block(void *request)
{
    struct block_request *wanted = request;
    wanted->block = (struct muslin_block_spec)MUSLIN_BLOCK_SPEC_INIT;
}

static json_t *answer_block(const void *request, struct desk *desk)
{
    const struct block_request *wanted = request;
    struct muslin_block block = { .size = sizeof block };
    if (!worked(desk, muslin_block_from_segments(&wanted->block, &block, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "segments", wanted->block.segments);
    put_length(answer, desk, "segment_cut", wanted->block.segment_cut);
    put_length(answer, desk, "segment_finished", block.segment_finished);
    put_length(answer, desk, "unfinished_width", block.unfinished_width);
    put_length(answer, desk, "unfinished_height", block.unfinished_height);
    put_length(answer, desk, "finished_width", block.finished_width);
    put_length(answer, desk, "finished_height", block.finished_height);
    put_truth(answer, "square", block.square == 1);
    put_length(answer, desk, "segment_cut_for_a_square_block", block.square_segment_cut);
    return answer;
}

static const struct option_row block_options[] = {
    { "segment", KIND_LENGTH, offsetof(struct block_request, block.segment_cut), MUSLIN_ARG_SEGMENT_CUT,
      OPTION_REQUIRED, NULL, "cut size of a segment, across the block" },
    { "set-width", KIND_LENGTH, offsetof(struct block_request, block.set_unfinished), MUSLIN_ARG_UNFINISHED,
      OPTION_REQUIRED, NULL, "unfinished width of the strip set; see muslin row" },
    { "segments", KIND_COUNT, offsetof(struct block_request, block.segments), MUSLIN_ARG_SEGMENTS, 0, NULL,
      "segments side by side in a block (2)" },
    OPTION_SEAM(block_request, block.allowance, block.take_up),
    OPTION_END
};

const struct command block_command = {
    .name = "block",
    .about = "a block of segments joined along their long sides",
    .operands = "",
    .examples = "  muslin block --segment \"6 1/2\" --set-width \"12 1/2\" --segments 2",
    .options = block_options,
    .request_size = sizeof(struct block_request),
    .start = start_block,
    .answer = answer_block,
    .lead = "{segments:segment} make a block {unfinished_width} by {unfinished_height} unfinished."
};

/* ---- a top of blocks -------------------------------------------------------------------------------------------- */

struct top_request {
    struct muslin_setting_spec setting;
};

static void start_top(void *request)
{
    struct top_request *wanted = request;
    wanted->setting = (struct muslin_setting_spec)MUSLIN_SETTING_SPEC_INIT;
}

static json_t *answer_top(const void *request, struct desk *desk)
{
    const struct top_request *wanted = request;
    struct muslin_setting_spec spec = wanted->setting;
    if (!given(desk, "height"))
        spec.block_height = spec.block_width;
    struct muslin_setting top = { .size = sizeof top };
    if (!worked(desk, muslin_setting_straight(&spec, &top, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "blocks", top.blocks);
    put_count(answer, "blocks_turned", top.blocks_turned);
    put_length(answer, desk, "finished_width", top.finished_width);
    put_length(answer, desk, "finished_length", top.finished_length);
    put_length(answer, desk, "unfinished_width", top.unfinished_width);
    put_length(answer, desk, "unfinished_length", top.unfinished_length);
    put_count(answer, "seams_within_rows", top.block_seams);
    put_count(answer, "seams_between_rows", top.row_seams);
    return answer;
}

static const struct option_row top_options[] = {
    { "block", KIND_LENGTH, offsetof(struct top_request, setting.block_width), MUSLIN_ARG_BLOCK_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "finished width of a block" },
    { "height", KIND_LENGTH, offsetof(struct top_request, setting.block_height), MUSLIN_ARG_BLOCK_HEIGHT, 0, NULL,
      "finished height of a block (the same)" },
    { "columns", KIND_COUNT, offsetof(struct top_request, setting.columns), MUSLIN_ARG_COLUMNS, OPTION_REQUIRED, NULL,
      "blocks across" },
    { "rows", KIND_COUNT, offsetof(struct top_request, setting.rows), MUSLIN_ARG_QUILT_ROWS, OPTION_REQUIRED, NULL,
      "blocks down" },
    { "turn", KIND_CHOICE, offsetof(struct top_request, setting.turning), MUSLIN_ARG_TURNING, 0, turning_words,
      "turn every other block: none (the usual), quarter (square blocks only) or half" },
    { "square", KIND_LENGTH, offsetof(struct top_request, setting.square_tolerance), MUSLIN_ARG_SQUARE_TOLERANCE, 0,
      NULL, "a block may be this far from square and still be turned a quarter (1/64 in)" },
    OPTION_SEAM(top_request, setting.allowance, setting.take_up),
    OPTION_END
};

const struct command top_command = {
    .name = "top",
    .about = "size of a top of blocks in a straight setting",
    .operands = "FINISHED-BLOCK",
    .examples = "  muslin top 12 --columns 3 --rows 4 --turn quarter",
    .options = top_options,
    .request_size = sizeof(struct top_request),
    .start = start_top,
    .answer = answer_top,
    .lead = "{blocks:block} make a top {finished_width} by {finished_length} finished."
};

/* ---- borders ---------------------------------------------------------------------------------------------------- */

/* The words behind the width; true when `word` is one of them. */
static bool read_border_word(const char *word, struct muslin_border_spec *spec)
{
    const struct word *style = find_word(border_words, word);
    const struct word *join = find_word(join_words, word);
    if (style != NULL)
        spec->style = style->value;
    else if (join != NULL)
        spec->join = join->value;
    else if (strcmp(word, "lengthwise") == 0)
        spec->flags = MUSLIN_BORDER_LENGTHWISE;
    else
        return false;
    return true;
}

/* Words are taken from the end while they are known; what is left is the width. */
bool read_border(struct desk *desk, const char *text, struct muslin_border_spec *spec)
{
    size_t length = strlen(text);
    spec->flags = 0;
    spec->style = MUSLIN_BORDER_STYLE_SIDES_FIRST;
    spec->join = MUSLIN_JOIN_STRAIGHT;
    for (;;) {
        char word[16];
        size_t start = length;
        while (start > 0 && text[start - 1] != ' ')
            start--;
        snprintf(word, sizeof word, "%.*s", (int)(length - start), text + start);
        if (length - start >= sizeof word || !read_border_word(word, spec))
            break;
        length = start;
        while (length > 0 && text[length - 1] == ' ')
            length--;
    }
    if (read_length(desk, "border", text, length, &spec->finished_border))
        return true;
    struct failure *failure = desk->failure;
    size_t used = strlen(failure->sentence);
    snprintf(failure->sentence + used, sizeof failure->sentence - used,
             " Behind the width may stand sides-first, top-first, cornerstones or mitred; straight, diagonal or "
             "butted; lengthwise.");
    return false;
}

/* Least lengths of mitred pieces, without what is added for handling. */
struct least_lengths {
    muslin_len side;
    muslin_len top;
};

/* How much shorter each strip across the cloth may be; strips cut along it are as long as they are cut. */
static bool find_slack(struct desk *desk, const struct muslin_border_spec *spec, const struct muslin_border *border,
                       muslin_len *slack)
{
    struct muslin_run_spec run_spec = MUSLIN_RUN_SPEC_INIT;
    struct muslin_run run = { .size = sizeof run };
    run_spec.length = border->total_length;
    run_spec.strip_length = spec->usable_width;
    run_spec.strip_cut = border->cut_width;
    run_spec.allowance = spec->allowance;
    run_spec.join = spec->join;
    if (!worked(desk, muslin_run_plan(&run_spec, &run, &desk->problem)))
        return false;
    *slack = run.narrower_by;
    return true;
}

static bool find_least_lengths(struct desk *desk, const struct muslin_border_spec *spec,
                               const struct muslin_border *border, struct least_lengths *least)
{
    return worked(desk, muslin_length_subtract(border->side_cut_length, spec->mitre_extra, &least->side)) &&
           worked(desk, muslin_length_subtract(border->top_cut_length, spec->mitre_extra, &least->top));
}

/* A butted piece is as long as the edge it is sewn to; a mitred one is trimmed, so that it may be a little longer. */
static void put_border_length(json_t *answer, const struct desk *desk, const char *name, muslin_len value, bool mitred)
{
    if (mitred)
        put_ample(answer, desk, name, value);
    else
        put_least(answer, desk, name, value);
}

static bool put_border(json_t *answer, struct desk *desk, const struct muslin_border_spec *spec,
                       const struct muslin_border *border)
{
    bool mitred = spec->style == MUSLIN_BORDER_STYLE_MITRED;
    struct least_lengths least;
    muslin_len slack = 0;
    bool lengthwise = (spec->flags & MUSLIN_BORDER_LENGTHWISE) != 0;
    if ((mitred && !find_least_lengths(desk, spec, border, &least)) ||
        (!lengthwise && !find_slack(desk, spec, border, &slack)))
        return false;
    put_text(answer, "style", word_of(border_words, spec->style));
    put_text(answer, "join", word_of(join_words, spec->join));
    put_truth(answer, "lengthwise", lengthwise);
    put_length(answer, desk, "finished_width_of_border", spec->finished_border);
    put_length(answer, desk, "cut_width", border->cut_width);
    put_border_length(answer, desk, "side_cut_length", border->side_cut_length, mitred);
    put_border_length(answer, desk, "top_cut_length", border->top_cut_length, mitred);
    if (mitred) {
        put_length(answer, desk, "mitre_extra", spec->mitre_extra);
        put_ample(answer, desk, "side_least_length", least.side);
        put_ample(answer, desk, "top_least_length", least.top);
    }
    if (border->cornerstone_cut != 0)
        put_length(answer, desk, "cornerstone_cut", border->cornerstone_cut);
    put_count(answer, "strips", border->strips);
    put_count(answer, "joins", border->joins);
    put_length(answer, desk, "loss_per_join", border->loss_per_join);
    put_spare(answer, desk, "spare", border->spare);
    if (!lengthwise)
        put_spare(answer, desk, "strips_may_be_shorter_by", slack);
    put_cloth(answer, desk, "cloth_length", border->cloth_length);
    put_length(answer, desk, "unfinished_width", border->unfinished_width);
    put_length(answer, desk, "unfinished_length", border->unfinished_length);
    put_length(answer, desk, "finished_width", border->finished_width);
    put_length(answer, desk, "finished_length", border->finished_length);
    return true;
}

bool put_borders(json_t *list, struct desk *desk, const struct texts *texts, struct muslin_border_spec *spec,
                 struct muslin_border *borders, uint32_t *warnings)
{
    for (size_t i = 0; i < texts->count; i++) {
        struct muslin_border *border = &borders[i];
        *border = (struct muslin_border){ .size = sizeof *border };
        if (!read_border(desk, texts->texts[i], spec) ||
            !worked(desk, muslin_border_plan(spec, border, &desk->problem)))
            return false;
        json_t *answer = append_object(list);
        put_count(answer, "number", (int64_t)i + 1);
        if (!put_border(answer, desk, spec, border))
            return false;
        *warnings |= border->warnings;
        spec->unfinished_width = border->unfinished_width;
        spec->unfinished_length = border->unfinished_length;
    }
    return true;
}

struct border_request {
    struct muslin_border_spec border;
    struct texts borders;
};

static void start_border(void *request)
{
    struct border_request *wanted = request;
    wanted->border = (struct muslin_border_spec)MUSLIN_BORDER_SPEC_INIT;
    wanted->border.mitre_extra = MITRE_EXTRA_USUAL;
}

static json_t *answer_border(const void *request, struct desk *desk)
{
    const struct border_request *wanted = request;
    struct muslin_border_spec spec = wanted->border;
    struct muslin_border borders[TEXTS_MAX];
    uint32_t warnings = 0;
    json_t *answer = json_object();
    put_length(answer, desk, "cloth_usable_width", spec.usable_width);
    put_length(answer, desk, "unfinished_width_before", spec.unfinished_width);
    put_length(answer, desk, "unfinished_length_before", spec.unfinished_length);
    if (!put_borders(put_list(answer, "borders"), desk, &wanted->borders, &spec, borders, &warnings)) {
        json_decref(answer);
        return NULL;
    }
    put_warnings(answer, warnings);
    return answer;
}

static const struct option_row border_options[] = {
    { "border", KIND_TEXTS, offsetof(struct border_request, borders), MUSLIN_ARG_BORDER_WIDTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL,
      "finished width, then words as wanted: sides-first (the usual), top-first, cornerstones or mitred; straight (the "
      "usual), diagonal or butted joins; lengthwise. From the inside outwards, may be repeated" },
    OPTION_HEADING("What the border is sewn to"),
    { "width", KIND_LENGTH, offsetof(struct border_request, border.unfinished_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "unfinished width, measured through the middle" },
    { "length", KIND_LENGTH, offsetof(struct border_request, border.unfinished_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "unfinished length, measured through the middle" },
    OPTION_HEADING("Cloth and seams"),
    { "usable", KIND_LENGTH, offsetof(struct border_request, border.usable_width), MUSLIN_ARG_USABLE_WIDTH, 0, NULL,
      "usable width of the border cloth (40 in)" },
    { "mitre-extra", KIND_LENGTH, offsetof(struct border_request, border.mitre_extra), MUSLIN_ARG_MITRE_EXTRA, 0, NULL,
      "for handling, added to the least length of each mitred piece (2 in)" },
    OPTION_SEAM(border_request, border.allowance, border.take_up),
    OPTION_END
};

const struct command border_command = {
    .name = "border",
    .about = "borders, one after the other: cut sizes, strips, size of the top",
    .operands = "BORDER...",
    .examples = "  muslin border \"4 in cornerstones\" --width \"38 1/2\" --length 50\n"
                "  muslin border 1 \"5 in mitred diagonal\" --width \"36 1/2\" --length \"48 1/2\"",
    .options = border_options,
    .request_size = sizeof(struct border_request),
    .start = start_border,
    .answer = answer_border,
    .show = show_border_answer
};

/* ---- strips joined end to end ----------------------------------------------------------------------------------- */

struct join_request {
    struct muslin_run_spec run;
};

static void start_join(void *request)
{
    struct join_request *wanted = request;
    wanted->run = (struct muslin_run_spec)MUSLIN_RUN_SPEC_INIT;
}

static json_t *answer_join(const void *request, struct desk *desk)
{
    const struct join_request *wanted = request;
    struct muslin_run run = { .size = sizeof run };
    if (!worked(desk, muslin_run_plan(&wanted->run, &run, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_length(answer, desk, "length_wanted", wanted->run.length);
    put_length(answer, desk, "strip_cut", wanted->run.strip_cut);
    put_count(answer, "strips", run.strips);
    put_count(answer, "joins", run.joins);
    put_length(answer, desk, "loss_per_join", run.loss_per_join);
    put_length(answer, desk, "joined_length", run.joined);
    put_slack(answer, desk, "spare", run.spare);
    put_cloth(answer, desk, "cloth_length", run.cloth_length);
    put_slack(answer, desk, "strips_may_be_shorter_by", run.narrower_by);
    put_warnings(answer, (uint32_t)run.warnings);
    return answer;
}

static const struct option_row join_options[] = {
    { "length", KIND_LENGTH, offsetof(struct join_request, run.length), MUSLIN_ARG_LENGTH,
      OPTION_REQUIRED | OPTION_OPERAND, NULL, "length wanted in one run" },
    { "strip", KIND_LENGTH, offsetof(struct join_request, run.strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "cut width of the strips (2 1/2 in)" },
    { "usable", KIND_LENGTH, offsetof(struct join_request, run.strip_length), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "usable length of each strip (40 in)" },
    { "join", KIND_CHOICE, offsetof(struct join_request, run.join), MUSLIN_ARG_JOIN, 0, join_words,
      "straight (the usual), diagonal, butted (nothing lost) or bias-ends" },
    { "seam", KIND_LENGTH, offsetof(struct join_request, run.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance of the joins (1/4 in)" },
    OPTION_END
};

const struct command join_command = {
    .name = "join",
    .about = "strips joined end to end into one run",
    .operands = "LENGTH",
    .examples = "  muslin join \"294 in\" --strip \"2 1/4\" --join diagonal",
    .options = join_options,
    .request_size = sizeof(struct join_request),
    .start = start_join,
    .answer = answer_join,
    .lead = "{strips:strip} joined end to end give {joined_length}, {spare} more than wanted."
};
