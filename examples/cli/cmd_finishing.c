/* cmd_finishing.c - binding, bias, batting, backing, sleeve: what turns a top into a quilt.
 *
 * SPDX-License-Identifier: MIT */
#include "answer.h"
#include "cmd.h"
#include "sheet.h"
#include "words.h"

/* ---- binding ---------------------------------------------------------------------------------------------------- */

struct binding_request {
    struct muslin_binding_spec binding;
    struct muslin_binding_width_spec width;
    muslin_len cut;
    int32_t rounded;
};

static void start_binding(void *request)
{
    struct binding_request *wanted = request;
    wanted->binding = (struct muslin_binding_spec)MUSLIN_BINDING_SPEC_INIT;
    wanted->width = (struct muslin_binding_width_spec)MUSLIN_BINDING_WIDTH_SPEC_INIT;
    wanted->cut = wanted->binding.binding_cut;
}

bool put_binding_width(json_t *answer, struct desk *desk, const struct muslin_binding_width_spec *spec,
                       struct muslin_binding_width *width)
{
    if (!worked(desk, muslin_binding_measure(spec, width, &desk->problem)))
        return false;
    put_text(answer, "fold", word_of(fold_words, spec->fold));
    put_length(answer, desk, "cut_width", width->cut_width);
    put_length(answer, desk, "folded_before_sewing", width->folded);
    put_length(answer, desk, "front_finished", spec->front);
    put_length(answer, desk, "back_finished", width->back);
    return true;
}

bool put_binding(json_t *answer, struct desk *desk, const struct muslin_binding_spec *spec,
                 struct muslin_binding *binding)
{
    if (!worked(desk, muslin_binding_plan(spec, binding, &desk->problem)))
        return false;
    if (spec->perimeter == 0) {
        put_length(answer, desk, "quilt_finished_width", spec->quilt_width);
        put_length(answer, desk, "quilt_finished_length", spec->quilt_length);
    }
    put_length(answer, desk, "strip_cut_width", spec->binding_cut);
    put_length(answer, desk, "strip_usable_length", spec->strip_length);
    put_length(answer, desk, "finished_perimeter", binding->perimeter);
    put_length(answer, desk, "for_the_ends", spec->extra);
    put_length(answer, desk, "length_wanted", binding->length);
    put_count(answer, "strips", binding->strips);
    put_count(answer, "joins", binding->joins);
    put_text(answer, "join", word_of(join_words, spec->join));
    put_length(answer, desk, "loss_per_join", binding->loss_per_join);
    put_length(answer, desk, "joined_length", binding->joined);
    put_spare(answer, desk, "spare", binding->spare);
    put_spare(answer, desk, "strips_may_be_shorter_by", binding->narrower_by);
    put_cloth(answer, desk, "cloth_length", binding->cloth_length);
    put_cloth(answer, desk, "bought", binding->bought);
    return true;
}

static bool asks_for_width(const struct desk *desk)
{
    return given(desk, "front") || given(desk, "back") || given(desk, "thickness") || given(desk, "fold") ||
           given(desk, "turn-under") || given(desk, "edge-seam");
}

/* The width is worked out when something is said about how the binding lies and no cut width is given; with a cut
 * width, what it shows on the back. */
static json_t *answer_binding(const void *request, struct desk *desk)
{
    const struct binding_request *wanted = request;
    struct muslin_binding_spec spec = wanted->binding;
    struct muslin_binding_width width = { .size = sizeof width };
    struct muslin_binding binding = { .size = sizeof binding };
    bool fine = true;
    if (!given(desk, "perimeter") && (!given(desk, "width") || !given(desk, "length"))) {
        failure_say(desk->failure, "width", "Give width and length of the quilt, or its perimeter.");
        return NULL;
    }
    json_t *answer = json_object();
    spec.binding_cut = wanted->cut;
    if (asks_for_width(desk)) {
        struct muslin_binding_width_spec across = wanted->width;
        across.binding_cut = given(desk, "cut") ? wanted->cut : 0;
        fine = put_binding_width(put_object(answer, "across"), desk, &across, &width);
        spec.binding_cut = width.cut_width;
    }
    if (wanted->rounded)
        spec.corners = 0;
    if (!fine || !put_binding(put_object(answer, "binding"), desk, &spec, &binding)) {
        json_decref(answer);
        return NULL;
    }
    put_warnings(answer, width.warnings | binding.warnings);
    return answer;
}

static const struct option_row binding_options[] = {
    OPTION_HEADING("The outline"),
    { "width", KIND_LENGTH, offsetof(struct binding_request, binding.quilt_width), MUSLIN_ARG_QUILT_WIDTH, 0, NULL,
      "finished width of the quilt" },
    { "length", KIND_LENGTH, offsetof(struct binding_request, binding.quilt_length), MUSLIN_ARG_QUILT_LENGTH, 0, NULL,
      "finished length of the quilt" },
    { "perimeter", KIND_LENGTH, offsetof(struct binding_request, binding.perimeter), MUSLIN_ARG_PERIMETER, 0, NULL,
      "once round any outline, instead of width and length" },
    { "corners", KIND_COUNT, offsetof(struct binding_request, binding.corners), MUSLIN_ARG_CORNERS, 0, NULL,
      "corners of the outline (4)" },
    { "rounded", KIND_SWITCH, offsetof(struct binding_request, rounded), MUSLIN_ARG_NONE, 0, NULL,
      "a rounded outline, without corners" },
    { "corner-extra", KIND_LENGTH, offsetof(struct binding_request, binding.corner_extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "added for each corner (none)" },
    { "extra", KIND_LENGTH, offsetof(struct binding_request, binding.extra), MUSLIN_ARG_EXTRA, 0, NULL,
      "for the ends and the last join (12 in)" },
    OPTION_HEADING("The strips"),
    { "cut", KIND_LENGTH, offsetof(struct binding_request, cut), MUSLIN_ARG_BINDING_CUT, 0, NULL,
      "cut width of the strips (2 1/2 in, or what the width below asks for)" },
    { "usable", KIND_LENGTH, offsetof(struct binding_request, binding.strip_length), MUSLIN_ARG_STRIP_LENGTH, 0, NULL,
      "usable length of each strip (40 in)" },
    { "join", KIND_CHOICE, offsetof(struct binding_request, binding.join), MUSLIN_ARG_JOIN, 0, join_words,
      "diagonal (the usual), straight, butted (the loss ignored) or bias-ends" },
    { "seam", KIND_LENGTH, offsetof(struct binding_request, binding.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance of the joins (1/4 in)" },
    { "spare-strips", KIND_COUNT, offsetof(struct binding_request, binding.spare_strips), MUSLIN_ARG_SPARE, 0, NULL,
      "cut on top of the need (none)" },
    { "step", KIND_LENGTH, offsetof(struct binding_request, binding.step), MUSLIN_ARG_STEP, 0, NULL,
      "what the shop sells in (1/8 yd)" },
    OPTION_HEADING("How it lies across the edge; give any of these to have its width worked out"),
    { "fold", KIND_CHOICE, offsetof(struct binding_request, width.fold), MUSLIN_ARG_FOLD, 0, fold_words,
      "double (the usual) or single" },
    { "front", KIND_LENGTH, offsetof(struct binding_request, width.front), MUSLIN_ARG_BINDING_FRONT, 0, NULL,
      "finished width on the front (1/4 in)" },
    { "back", KIND_LENGTH, offsetof(struct binding_request, width.back), MUSLIN_ARG_BINDING_BACK, 0, NULL,
      "finished width wanted on the back (1/4 in)" },
    { "edge-seam", KIND_LENGTH, offsetof(struct binding_request, width.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "from the raw edge of the binding to its seam (1/4 in)" },
    { "thickness", KIND_LENGTH, offsetof(struct binding_request, width.thickness), MUSLIN_ARG_THICKNESS, 0, NULL,
      "of the quilt at its edge (none)" },
    { "turn-under", KIND_LENGTH, offsetof(struct binding_request, width.turn_under), MUSLIN_ARG_TURN_UNDER, 0, NULL,
      "of a single fold, on the back (1/4 in)" },
    OPTION_END
};

const struct command binding_command = {
    .name = "binding",
    .about = "cut width, strips, joins and cloth of a binding",
    .operands = "",
    .examples = "  muslin binding --width 96 --length 110\n"
                "  muslin binding --width 96 --length 110 --front 3/8 --back 3/8\n"
                "  muslin binding --perimeter 300 --rounded --join bias-ends",
    .options = binding_options,
    .request_size = sizeof(struct binding_request),
    .start = start_binding,
    .answer = answer_binding
};

/* ---- bias ------------------------------------------------------------------------------------------------------- */

enum bias_way { BIAS_TUBE = 1, BIAS_STRIPS, BIAS_SQUARE };

static const struct word bias_words[] = {
    { "tube", BIAS_TUBE }, { "strips", BIAS_STRIPS }, { "square", BIAS_SQUARE }, { NULL, 0 }
};

struct bias_request {
    struct muslin_bias_spec bias;
    struct muslin_rounding_spec rounding;
    int32_t way;
    int32_t blunt;
};

static void start_bias(void *request)
{
    struct bias_request *wanted = request;
    wanted->bias = (struct muslin_bias_spec)MUSLIN_BIAS_SPEC_INIT;
    wanted->rounding = (struct muslin_rounding_spec)MUSLIN_ROUNDING_SPEC_INIT;
    wanted->rounding.grid = MUSLIN_TICKS_PER_INCH / 8; /* a ruler's eighths */
    wanted->rounding.direction = MUSLIN_DIRECTION_UP;
    wanted->way = BIAS_TUBE;
}

/* The least square is found from the length wanted; the other ways start from the cloth. */
static bool bias_is_settled(struct desk *desk, int32_t way)
{
    const char *needed = way == BIAS_SQUARE ? "wanted" : "width";
    if (given(desk, needed))
        return true;
    failure_say(desk->failure, needed, "This must be given when \"from\" is %s.", word_of(bias_words, way));
    return false;
}

static json_t *answer_bias(const void *request, struct desk *desk)
{
    const struct bias_request *wanted = request;
    struct muslin_bias_spec spec = wanted->bias;
    struct muslin_bias bias = { .size = sizeof bias };
    muslin_status status = MUSLIN_OK;
    if (!bias_is_settled(desk, wanted->way))
        return NULL;
    spec.flags = wanted->blunt ? MUSLIN_BIAS_BLUNT_ENDS : 0;
    if (wanted->way != BIAS_STRIPS && !given(desk, "length"))
        spec.length = spec.width;
    if (wanted->way == BIAS_TUBE)
        status = muslin_bias_tube(&spec, &bias, &desk->problem);
    else if (wanted->way == BIAS_STRIPS)
        status = muslin_bias_strips(&spec, &bias, &desk->problem);
    else
        status = muslin_bias_least_square(&spec, &wanted->rounding, &bias, &desk->problem);
    if (!worked(desk, status))
        return NULL;
    json_t *answer = json_object();
    put_text(answer, "way", word_of(bias_words, wanted->way));
    put_length(answer, desk, "strip_cut", spec.strip_cut);
    put_length(answer, desk, "seam_allowance", spec.allowance);
    if (wanted->way != BIAS_SQUARE)
        put_length(answer, desk, "cloth_width", spec.width);
    if (wanted->way == BIAS_TUBE)
        put_length(answer, desk, "cloth_length", spec.length);
    put_count(answer, wanted->way == BIAS_STRIPS ? "strips" : "rounds", bias.rounds);
    put_count(answer, "joins", bias.joins);
    put_spare(answer, desk, "bias_length", bias.length);
    if (wanted->way != BIAS_SQUARE)
        return answer;
    put_length(answer, desk, "length_wanted", spec.wanted);
    put_length(answer, desk, "square_cut", bias.square_cut);
    put_length(answer, desk, "area_rule_would_say", bias.area_rule);
    put_spare(answer, desk, "spare", bias.spare);
    return answer;
}

static const struct option_row bias_options[] = {
    { "from", KIND_CHOICE, offsetof(struct bias_request, way), MUSLIN_ARG_NONE, 0, bias_words,
      "tube: what a continuous tube from this cloth gives (the usual); strips: separate strips from a square; square: "
      "the least square whose tube gives the length wanted" },
    { "width", KIND_LENGTH, offsetof(struct bias_request, bias.width), MUSLIN_ARG_FABRIC_WIDTH, 0, NULL,
      "one side of the cloth, as cut" },
    { "length", KIND_LENGTH, offsetof(struct bias_request, bias.length), MUSLIN_ARG_CLOTH_LENGTH, 0, NULL,
      "its other side (the same)" },
    { "wanted", KIND_LENGTH, offsetof(struct bias_request, bias.wanted), MUSLIN_ARG_BIAS_LENGTH, 0, NULL,
      "length of bias wanted, for the least square" },
    { "strip", KIND_LENGTH, offsetof(struct bias_request, bias.strip_cut), MUSLIN_ARG_STRIP_CUT, 0, NULL,
      "cut width of the bias strip (2 1/2 in)" },
    { "seam", KIND_LENGTH, offsetof(struct bias_request, bias.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance of the seams (1/4 in)" },
    { "blunt-ends", KIND_SWITCH, offsetof(struct bias_request, blunt), MUSLIN_ARG_NONE, 0, NULL,
      "both ends are cut square, which takes off one strip width" },
    { "to", KIND_LENGTH, offsetof(struct bias_request, rounding.grid), MUSLIN_ARG_GRID, 0, NULL,
      "grid of the least square (1/8 in)" },
    OPTION_END
};

const struct command bias_command = {
    .name = "bias",
    .about = "bias strip from a square or rectangle",
    .operands = "",
    .examples = "  muslin bias --width 30  # a tube from a 30 in square\n"
                "  muslin bias --from square --wanted 300 --strip \"2 1/4\"\n"
                "  muslin bias --from strips --width 24",
    .options = bias_options,
    .request_size = sizeof(struct bias_request),
    .start = start_bias,
    .answer = answer_bias,
    .show = show_bias
};

/* ---- batting ---------------------------------------------------------------------------------------------------- */

struct batting_request {
    struct muslin_batting_spec batting;
    muslin_len margin;
    int32_t fixed;
};

static void start_batting(void *request)
{
    struct batting_request *wanted = request;
    wanted->batting = (struct muslin_batting_spec)MUSLIN_BATTING_SPEC_INIT;
}

bool put_batting(json_t *answer, struct desk *desk, const struct muslin_batting_spec *spec,
                 struct muslin_batting *batting)
{
    if (!worked(desk, muslin_batting_plan(spec, batting, &desk->problem)))
        return false;
    put_length(answer, desk, "cut_width", batting->width);
    put_length(answer, desk, "cut_length", batting->length);
    if (batting->package >= 0) {
        json_t *package = put_object(answer, "package");
        put_text(package, "name", muslin_reference_name(MUSLIN_TABLE_BATTING, batting->package));
        put_length(package, desk, "package_width", batting->package_width);
        put_length(package, desk, "package_length", batting->package_length);
        put_truth(package, "lies_turned", batting->turned == 1);
        put_slack(package, desk, "spare_width", batting->spare_width);
        put_slack(package, desk, "spare_length", batting->spare_length);
    }
    if (spec->roll_width != 0) {
        json_t *roll = put_object(answer, "from_a_roll");
        put_length(roll, desk, "roll_width", spec->roll_width);
        put_count(roll, "pieces", batting->joined_pieces);
        put_count(roll, "joins", batting->joined_joins);
        put_truth(roll, "pieces_run_across", batting->joined_turned == 1);
        put_cloth(roll, desk, "bought", batting->joined_length);
    }
    return true;
}

static json_t *answer_batting(const void *request, struct desk *desk)
{
    const struct batting_request *wanted = request;
    struct muslin_batting_spec spec = wanted->batting;
    struct muslin_batting batting = { .size = sizeof batting };
    spec.flags = wanted->fixed ? MUSLIN_BATTING_FIXED : 0;
    if (given(desk, "margin"))
        spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = wanted->margin;
    json_t *answer = json_object();
    if (!put_batting(answer, desk, &spec, &batting)) {
        json_decref(answer);
        return NULL;
    }
    return answer;
}

#define MARGINS(request, spec) \
    { "margin-left", KIND_LENGTH, offsetof(struct request, spec.margin_left), MUSLIN_ARG_MARGIN, 0, NULL, \
      "on the left alone" }, \
    { "margin-right", KIND_LENGTH, offsetof(struct request, spec.margin_right), MUSLIN_ARG_MARGIN, 0, NULL, \
      "on the right alone" }, \
    { "margin-top", KIND_LENGTH, offsetof(struct request, spec.margin_top), MUSLIN_ARG_MARGIN, 0, NULL, \
      "at the top alone" }, \
    { "margin-bottom", KIND_LENGTH, offsetof(struct request, spec.margin_bottom), MUSLIN_ARG_MARGIN, 0, NULL, \
      "at the bottom alone" }

static const struct option_row batting_options[] = {
    { "width", KIND_LENGTH, offsetof(struct batting_request, batting.quilt_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the quilt" },
    { "length", KIND_LENGTH, offsetof(struct batting_request, batting.quilt_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "finished length of the quilt" },
    { "roll", KIND_LENGTH, offsetof(struct batting_request, batting.roll_width), MUSLIN_ARG_FABRIC_WIDTH, 0, NULL,
      "width of batting sold by length, to see pieces joined" },
    { "fixed", KIND_SWITCH, offsetof(struct batting_request, fixed), MUSLIN_ARG_NONE, 0, NULL,
      "the package may not be turned" },
    OPTION_HEADING("Margins beyond the quilt"),
    { "margin", KIND_LENGTH, offsetof(struct batting_request, margin), MUSLIN_ARG_MARGIN, 0, NULL,
      "on every side (3 in); instead of those below" },
    MARGINS(batting_request, batting),
    OPTION_END
};

const struct command batting_command = {
    .name = "batting",
    .about = "batting to cut, the package that covers, pieces joined",
    .operands = "",
    .examples = "  muslin batting --width 60 --length 80\n"
                "  muslin batting --width 60 --length 80 --margin 2 --roll 48",
    .options = batting_options,
    .request_size = sizeof(struct batting_request),
    .start = start_batting,
    .answer = answer_batting,
    .lead = "Cut the batting {cut_width} by {cut_length}."
};

/* ---- backing ---------------------------------------------------------------------------------------------------- */

struct backing_request {
    struct muslin_backing_spec backing;
    muslin_len margin;
    int32_t layout;
    int32_t round_panels;
};

static void start_backing(void *request)
{
    struct backing_request *wanted = request;
    wanted->backing = (struct muslin_backing_spec)MUSLIN_BACKING_SPEC_INIT;
}

static const struct word panel_words[] = {
    { "panel", MUSLIN_PANEL_ROLE_WHOLE },         { "centre panel", MUSLIN_PANEL_ROLE_CENTRE },
    { "side panel", MUSLIN_PANEL_ROLE_SIDE },     { "half panel", MUSLIN_PANEL_ROLE_HALF },
    { "insert strip", MUSLIN_PANEL_ROLE_INSERT }, { NULL, 0 }
};

static void put_layout(json_t *answer, const struct desk *desk, const struct muslin_backing *row)
{
    put_text(answer, "layout", word_of(layout_words, row->layout));
    put_truth(answer, "possible", row->possible == 1);
    if (row->possible == 0)
        return;
    put_truth(answer, "best", row->best == 1);
    put_count(answer, "panels", row->panels);
    put_length(answer, desk, "panel_cut_length", row->panel_length);
    put_count(answer, "pieces", row->pieces);
    put_count(answer, "seams", row->seams);
    put_length(answer, desk, "sewn_width_unfinished", row->joined_width);
    put_length(answer, desk, "sewn_length_unfinished", row->joined_length);
    put_cloth(answer, desk, "cloth_length", row->cloth_length);
    put_cloth(answer, desk, "bought", row->bought);
    put_cloth(answer, desk, "bought_by_the_other_rounding", row->other_rounding);
    put_spare(answer, desk, "cloth_may_be_narrower_by", row->narrower_by);
}

static void put_panel(json_t *answer, const struct desk *desk, const struct muslin_panel *panel)
{
    put_text(answer, "piece", word_of(panel_words, panel->role));
    put_count(answer, "position", panel->position);
    put_count(answer, "count", panel->count);
    put_length(answer, desk, "cut_width", panel->cut_width);
    put_length(answer, desk, "cut_length", panel->cut_length);
}

/* Panels beyond this many are not listed one by one; such a backing is no longer a quilt's. */
#define PANELS_MAX 200

static bool put_panels(json_t *answer, struct desk *desk, const struct muslin_backing_spec *spec, int32_t layout)
{
    struct muslin_panel panels[PANELS_MAX];
    size_t count = 0;
    if (!worked(desk, muslin_backing_panels(spec, layout, NULL, sizeof panels[0], 0, &count, &desk->problem)))
        return false;
    json_t *list = put_list(answer, "panels");
    if (count > PANELS_MAX)
        return true;
    if (!worked(desk, muslin_backing_panels(spec, layout, panels, sizeof panels[0], PANELS_MAX, &count,
                                            &desk->problem)))
        return false;
    for (size_t i = 0; i < count; i++)
        put_panel(append_object(list), desk, &panels[i]);
    return true;
}

/* The row to use: the one asked for, or the best. Null leaves a failure. */
static const struct muslin_backing *choose_layout(struct desk *desk, const struct muslin_backing *rows, size_t count,
                                                  int32_t layout)
{
    for (size_t i = 0; i < count; i++)
        if (rows[i].possible == 1 && (layout != 0 ? rows[i].layout == layout : rows[i].best == 1))
            return &rows[i];
    failure_say(desk->failure, "layout", "This backing cannot be laid out so; leave the layout open to see which can.");
    desk->failure->exit_code = EXIT_NO_ANSWER;
    return NULL;
}

#define LAYOUTS_MAX 32

bool put_backing(json_t *answer, struct desk *desk, const struct muslin_backing_spec *spec, int32_t layout,
                 struct muslin_backing *chosen)
{
    struct muslin_backing rows[LAYOUTS_MAX];
    size_t count = 0;
    muslin_len usable = 0;
    muslin_len narrowest = 0;
    if (!worked(desk, muslin_backing_layouts(spec, rows, sizeof rows[0], LAYOUTS_MAX, &count, &desk->problem)))
        return false;
    const struct muslin_backing *row = choose_layout(desk, rows, count, layout);
    if (row == NULL)
        return false;
    *chosen = *row;
    if (!worked(desk, muslin_fabric_usable_width(spec->fabric_width, spec->selvage, 0, &usable, &desk->problem)) ||
        !worked(desk, muslin_length_subtract(spec->fabric_width, row->narrower_by, &narrowest)))
        return false;
    put_length(answer, desk, "cloth_width", spec->fabric_width);
    put_length(answer, desk, "selvage", spec->selvage);
    put_length(answer, desk, "cloth_usable_width", usable);
    put_ample(answer, desk, "cloth_must_be_at_least", narrowest);
    put_length(answer, desk, "seam_allowance", spec->allowance);
    put_least(answer, desk, "cut_width_needed", row->needed_width);
    put_least(answer, desk, "cut_length_needed", row->needed_length);
    put_layout(put_object(answer, "chosen"), desk, row);
    if (!put_panels(answer, desk, spec, row->layout))
        return false;
    json_t *list = put_list(answer, "layouts");
    for (size_t i = 0; i < count; i++)
        put_layout(append_object(list), desk, &rows[i]);
    return true;
}

static json_t *answer_backing(const void *request, struct desk *desk)
{
    const struct backing_request *wanted = request;
    struct muslin_backing_spec spec = wanted->backing;
    struct muslin_backing chosen = { .size = sizeof chosen };
    spec.flags = wanted->round_panels ? MUSLIN_BACKING_ROUND_PANELS : 0;
    if (given(desk, "margin"))
        spec.margin_left = spec.margin_right = spec.margin_top = spec.margin_bottom = wanted->margin;
    json_t *answer = json_object();
    if (!put_backing(answer, desk, &spec, wanted->layout, &chosen)) {
        json_decref(answer);
        return NULL;
    }
    put_warnings(answer, chosen.warnings);
    return answer;
}

static const struct option_row backing_options[] = {
    { "width", KIND_LENGTH, offsetof(struct backing_request, backing.quilt_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the quilt" },
    { "length", KIND_LENGTH, offsetof(struct backing_request, backing.quilt_length), MUSLIN_ARG_QUILT_LENGTH,
      OPTION_REQUIRED, NULL, "finished length of the quilt" },
    { "layout", KIND_CHOICE, offsetof(struct backing_request, layout), MUSLIN_ARG_LAYOUT, 0, layout_words,
      "the one to describe piece by piece (the one that buys least)" },
    OPTION_HEADING("The cloth"),
    { "fabric-width", KIND_LENGTH, offsetof(struct backing_request, backing.fabric_width), MUSLIN_ARG_FABRIC_WIDTH, 0,
      NULL, "from edge to edge (40 in)" },
    { "selvage", KIND_LENGTH, offsetof(struct backing_request, backing.selvage), MUSLIN_ARG_SELVAGE, 0, NULL,
      "cut off each edge (none)" },
    { "seam", KIND_LENGTH, offsetof(struct backing_request, backing.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance of the backing's seams (1/2 in)" },
    { "trim", KIND_LENGTH, offsetof(struct backing_request, backing.end_loss), MUSLIN_ARG_END_TRIM, 0, NULL,
      "added to each panel's length, for squaring (none)" },
    { "repeat", KIND_LENGTH, offsetof(struct backing_request, backing.repeat), MUSLIN_ARG_REPEAT, 0, NULL,
      "pattern repeat along the cloth (none)" },
    { "print", KIND_CHOICE, offsetof(struct backing_request, backing.print), MUSLIN_ARG_PRINT_DIRECTION, 0,
      print_words, "direction of the print (none); one with a direction forbids panels turned a quarter" },
    { "step", KIND_LENGTH, offsetof(struct backing_request, backing.step), MUSLIN_ARG_STEP, 0, NULL,
      "what the shop sells in (1/8 yd)" },
    { "round-panels", KIND_SWITCH, offsetof(struct backing_request, round_panels), MUSLIN_ARG_NONE, 0, NULL,
      "round each panel up to the step, not only the total" },
    OPTION_HEADING("Margins beyond the quilt"),
    { "margin", KIND_LENGTH, offsetof(struct backing_request, margin), MUSLIN_ARG_MARGIN, 0, NULL,
      "on every side (4 in); instead of those below" },
    MARGINS(backing_request, backing),
    OPTION_END
};

const struct command backing_command = {
    .name = "backing",
    .about = "layouts of a backing compared, the chosen one panel by panel",
    .operands = "",
    .examples = "  muslin backing --width 72 --length 48\n"
                "  muslin backing --width 59 --length 75 --fabric-width 44 \\\n"
                "      --selvage 1/2 --repeat 24 --print one-way",
    .options = backing_options,
    .request_size = sizeof(struct backing_request),
    .start = start_backing,
    .answer = answer_backing,
    .lead = "Backing: buy {chosen.bought}.",
    .show = show_backing_answer
};

/* ---- sleeve ----------------------------------------------------------------------------------------------------- */

struct sleeve_request {
    struct muslin_hanging_spec hanging;
};

static void start_sleeve(void *request)
{
    struct sleeve_request *wanted = request;
    wanted->hanging = (struct muslin_hanging_spec)MUSLIN_HANGING_SPEC_INIT;
}

static json_t *answer_sleeve(const void *request, struct desk *desk)
{
    const struct sleeve_request *wanted = request;
    struct muslin_hanging hanging = { .size = sizeof hanging };
    if (!worked(desk, muslin_hanging_plan(&wanted->hanging, &hanging, &desk->problem)))
        return NULL;
    json_t *answer = json_object();
    put_count(answer, "sleeves", hanging.sleeves);
    if (hanging.sleeves > 0) {
        put_length(answer, desk, "sleeve_finished_length", hanging.sleeve_finished);
        put_length(answer, desk, "sleeve_finished_depth", wanted->hanging.drop);
        put_length(answer, desk, "ease_in_the_front", wanted->hanging.ease);
        put_length(answer, desk, "hem_at_each_end", wanted->hanging.hem);
        put_length(answer, desk, "seam_allowance", wanted->hanging.allowance);
        put_length(answer, desk, "sleeve_cut_length", hanging.sleeve_cut_length);
        put_length(answer, desk, "sleeve_cut_width", hanging.sleeve_cut_width);
    }
    if (given(desk, "label-width")) {
        put_length(answer, desk, "label_cut_width", hanging.label_cut_width);
        put_length(answer, desk, "label_cut_height", hanging.label_cut_height);
    }
    if (hanging.corner_squares > 0) {
        put_count(answer, "corner_squares", hanging.corner_squares);
        put_length(answer, desk, "corner_square_cut", hanging.corner_square_cut);
    }
    return answer;
}

static const struct option_row sleeve_options[] = {
    { "width", KIND_LENGTH, offsetof(struct sleeve_request, hanging.quilt_width), MUSLIN_ARG_QUILT_WIDTH,
      OPTION_REQUIRED, NULL, "finished width of the quilt" },
    OPTION_HEADING("Sleeve"),
    { "sleeves", KIND_COUNT, offsetof(struct sleeve_request, hanging.sleeves), MUSLIN_ARG_SLEEVES, 0, NULL,
      "one, two with a gap for a middle hook, or 0 (1)" },
    { "inset", KIND_LENGTH, offsetof(struct sleeve_request, hanging.inset), MUSLIN_ARG_INSET, 0, NULL,
      "from each side edge of the quilt (1 in)" },
    { "gap", KIND_LENGTH, offsetof(struct sleeve_request, hanging.gap), MUSLIN_ARG_INSET, 0, NULL,
      "between two sleeves (2 in)" },
    { "drop", KIND_LENGTH, offsetof(struct sleeve_request, hanging.drop), MUSLIN_ARG_SLEEVE_DROP, 0, NULL,
      "finished depth, lying flat (4 in)" },
    { "ease", KIND_LENGTH, offsetof(struct sleeve_request, hanging.ease), MUSLIN_ARG_EXTRA, 0, NULL,
      "extra in the front, so that the rod does not bulge the quilt (1/2 in)" },
    { "hem", KIND_LENGTH, offsetof(struct sleeve_request, hanging.hem), MUSLIN_ARG_TURN_UNDER, 0, NULL,
      "turned under at each end (1 in)" },
    { "seam", KIND_LENGTH, offsetof(struct sleeve_request, hanging.allowance), MUSLIN_ARG_SEAM_ALLOWANCE, 0, NULL,
      "allowance of the long seam and of the label (1/4 in)" },
    OPTION_HEADING("Label and corner triangles"),
    { "label-width", KIND_LENGTH, offsetof(struct sleeve_request, hanging.label_width), MUSLIN_ARG_LABEL, 0, NULL,
      "finished" },
    { "label-height", KIND_LENGTH, offsetof(struct sleeve_request, hanging.label_height), MUSLIN_ARG_LABEL, 0, NULL,
      "finished" },
    { "triangle", KIND_LENGTH, offsetof(struct sleeve_request, hanging.corner_triangle), MUSLIN_ARG_CORNER_TRIANGLE, 0,
      NULL, "finished short side of corner triangles that hold a rod or a label" },
    { "triangles", KIND_COUNT, offsetof(struct sleeve_request, hanging.corners), MUSLIN_ARG_CORNERS, 0, NULL,
      "how many of them, 0 to 4" },
    OPTION_END
};

const struct command sleeve_command = {
    .name = "sleeve",
    .about = "hanging sleeve, label, corner triangles",
    .operands = "",
    .examples = "  muslin sleeve --width 60\n"
                "  muslin sleeve --width 84 --sleeves 2 --label-width 5 --label-height 3\n"
                "  muslin sleeve --width 24 --sleeves 0 --triangle 4 --triangles 2",
    .options = sleeve_options,
    .request_size = sizeof(struct sleeve_request),
    .start = start_sleeve,
    .answer = answer_sleeve
};
